//! The boards and joints of a surface as shapes. Thousands of joints are laid out once, and kept from frame to frame
//! until what they show or how they are looked at changes.

use std::sync::Arc;

use eframe::egui::epaint::CircleShape;
use eframe::egui::{Color32, Id, Mesh, Painter, Pos2, Rect, Shape, Stroke};
use geo::{Coord, MultiPolygon, TriangulateEarcut as _};

use super::sheet::Sheet;
use super::stripes::Stripes;
use super::{MAGNIFIED, gap_color};
use crate::app::context::WindowContext;
use crate::app::theme::Palette;
use crate::assess::Assessment;
use crate::surface::SurfaceLayout;

/// What the shapes follow from.
#[derive(Clone)]
struct Seen {
    assessed: Arc<Assessment>,
    palette: &'static Palette,
    surface: usize,
    day: i64,
    sheet: Sheet,
    clip: Rect,
    pixels_per_point: f32,
    /// The selected joints of the surface, by label.
    selected: Vec<String>,
}

impl PartialEq for Seen {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.assessed, &other.assessed)
            && std::ptr::eq(self.palette, other.palette)
            && (self.surface, self.day) == (other.surface, other.day)
            && self.sheet == other.sheet
            && self.clip == other.clip
            && self.pixels_per_point.to_bits() == other.pixels_per_point.to_bits()
            && self.selected == other.selected
    }
}

/// Paints the wood of a surface and its joints.
pub(super) fn boards(
    painter: &Painter,
    context: &WindowContext<'_>,
    sheet: &Sheet,
    laid: &SurfaceLayout,
    surface: usize,
) {
    let selection = &context.view.selection;
    let here = selection.joint.as_ref().filter(|selected| selected.surface == surface);
    let selected = here.into_iter().flat_map(|one| std::iter::once(&one.joint).chain(&selection.more));
    let seen = Seen {
        assessed: Arc::clone(&context.session.assessed),
        palette: context.palette,
        surface,
        day: context.day(),
        sheet: *sheet,
        clip: painter.clip_rect(),
        pixels_per_point: painter.pixels_per_point(),
        selected: selected.cloned().collect(),
    };
    let id = Id::unique(("boards of a surface", surface));
    let kept: Option<Arc<(Seen, Vec<Shape>)>> = painter.ctx().data(|data| data.get_temp(id));
    let kept = kept.filter(|kept| kept.0 == seen).unwrap_or_else(|| {
        let mut shapes = Vec::new();
        wood(&mut shapes, context, sheet, laid);
        joints(&mut shapes, context, &seen, laid);
        let fresh = Arc::new((seen, shapes));
        painter.ctx().data_mut(|data| data.insert_temp(id, Arc::clone(&fresh)));
        fresh
    });
    // Its large parts are shared, not copied.
    painter.extend(kept.1.iter().cloned());
}

fn fill(shapes: &mut Vec<Shape>, sheet: &Sheet, region: &MultiPolygon, color: Color32) {
    let mut mesh = Mesh::default();
    for polygon in region {
        let triangles = polygon.earcut_triangles_raw();
        let start = mesh.vertices.len() as u32;
        for corner in &triangles.vertices {
            mesh.colored_vertex(sheet.at(Coord { x: corner[0], y: corner[1] }), color);
        }
        mesh.indices.extend(triangles.triangle_indices.iter().map(|&index| start + index as u32));
    }
    shapes.push(Shape::mesh(mesh));
}

fn outline(shapes: &mut Vec<Shape>, sheet: &Sheet, region: &MultiPolygon, stroke: Stroke) {
    for polygon in region {
        for ring in std::iter::once(polygon.exterior()).chain(polygon.interiors()) {
            let points = ring.coords().map(|&corner| sheet.at(corner)).collect();
            shapes.push(Shape::line(points, stroke));
        }
    }
}

fn wood(shapes: &mut Vec<Shape>, context: &WindowContext<'_>, sheet: &Sheet, laid: &SurfaceLayout) {
    fill(shapes, sheet, &laid.face, context.palette.trim);
    for section in &laid.sections {
        fill(shapes, sheet, &section.clear, context.palette.wood);
    }
    for divider in &laid.dividers {
        fill(shapes, sheet, divider, context.palette.trim);
        outline(shapes, sheet, divider, Stroke::new(1.0, context.palette.wood_line));
    }
    outline(shapes, sheet, &laid.face, Stroke::new(1.5, context.palette.soft));
}

fn joints(shapes: &mut Vec<Shape>, context: &WindowContext<'_>, seen: &Seen, laid: &SurfaceLayout) {
    let (assessment, sheet) = (context.assessment, &seen.sheet);
    let mut stripes = Stripes::for_lines(seen.pixels_per_point, laid.joints.len());
    let mut dots: Vec<Pos2> = Vec::new();
    let visible = seen.clip.expand(20.0);
    for (index, joint) in laid.joints.iter().enumerate() {
        let ends = [sheet.at(joint.from), sheet.at(joint.to)];
        if !visible.intersects(Rect::from_two_pos(ends[0], ends[1]).expand(2.0)) {
            continue;
        }
        if seen.selected.contains(&joint.label) {
            let halo = Stroke::new(9.0, context.palette.select.gamma_multiply(0.35));
            shapes.push(Shape::line_segment(ends, halo));
        }
        let state = assessment.joint(seen.surface, index);
        let section = state.and_then(|state| assessment.sections.get(state.section?));
        let gap = section.and_then(|section| assessment.gap_at(section, state, seen.day));
        let measured = state.is_some_and(|state| state.gap.is_some_and(|gap| gap.measured));
        match gap {
            Some(gap) if gap >= assessment.job.plan.open_from => {
                let width = (gap.to_m() as f32 * sheet.scale * MAGNIFIED).clamp(1.6, 26.0);
                let color = gap_color(context, gap);
                // Reckoned joints are lighter than measured ones.
                let color = if measured { color } else { color.gamma_multiply(0.55) };
                stripes.line(ends, width, color);
            }
            _ => stripes.line(ends, 1.0, context.palette.wood_line),
        }
        if measured {
            dots.push(ends[0].lerp(ends[1], 0.5));
        }
    }
    shapes.push(stripes.shape());
    let edge = Stroke::new(1.5, context.palette.ink);
    let fill = context.palette.raised;
    shapes.extend(
        dots.into_iter().map(|center| CircleShape { center, radius: 3.5, fill, stroke: edge }.into()),
    );
}
