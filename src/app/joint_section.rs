//! The cut through one joint on the day shown: boards, tongue, V and bead, to scale and enlarged.

use eframe::egui::{
    Align2, Color32, FontId, Mesh, Painter, Pos2, Role, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2,
};
use geo::{Polygon, TriangulateEarcut as _};

use super::context::Cx;
use super::look::{self, Palette};
use crate::joint::Cut;
use crate::measure::Length;

/// Points for a metre: a 3/4 in board is 80 points thick.
const SCALE: f64 = 4200.0;
/// Boards are drawn so far to either side.
const REACH: Length = Length::mm(72.0);

pub(super) fn joint_section(ui: &mut Ui, cx: &mut Cx<'_>) {
    let size = vec2(ui.available_width(), ui.available_height());
    let (response, painter) = ui.allocate_painter(size, Sense::hover());
    let rect = response.rect;
    painter.rect_filled(rect, 6, cx.palette.ground);
    let Some((cut, gap)) = cut(cx) else {
        response.widget_info(|| WidgetInfo::labeled(Role::Image, true, "Joint section"));
        return;
    };
    let painter = painter.with_clip_rect(rect);
    paint(&painter, cx.palette, &cut, pos2(rect.center().x, rect.top() + 46.0));
    let (words, colour) = match &cut.bead {
        Some(bead) => {
            (bead.fares.words(), if bead.fares.holds() { cx.palette.good } else { cx.palette.error })
        }
        None if cx.day() < cx.found.seal_day => ("before sealing".to_owned(), cx.palette.soft),
        None => ("not sealed".to_owned(), cx.palette.soft),
    };
    let gap = gap.show(cx.units());
    let text = |at, align, words: &str, font, colour| painter.text(at, align, words, font, colour);
    let strong = FontId::new(15.0, look::strong_family());
    text(rect.left_top() + vec2(10.0, 7.0), Align2::LEFT_TOP, &gap, strong, cx.palette.ink);
    let small = FontId::proportional(11.0);
    let title = "cut through the joint";
    text(rect.right_top() + vec2(-10.0, 9.0), Align2::RIGHT_TOP, title, small, cx.palette.soft);
    let font = FontId::proportional(12.0);
    text(rect.left_bottom() + vec2(10.0, -8.0), Align2::LEFT_BOTTOM, &words, font, colour);
    let name = format!("Joint section: gap {gap}, {words}");
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, &name));
    response.on_hover_text("The cut through the joint on the day shown in the year strip, to scale.");
}

/// The cut on the day shown, and the gap then.
fn cut(cx: &Cx<'_>) -> Option<(Cut, Length)> {
    let joint = cx.selected().map(|(_, joint)| joint);
    cx.found.cut(cx.assessed, cx.told_section()?, joint, cx.day(), REACH)
}

/// The face is up on screen: `top` is the middle of the joint on the face.
fn paint(painter: &Painter, palette: &Palette, cut: &Cut, top: Pos2) {
    let at = |[x, y]: [f64; 2]| top + vec2((x * SCALE) as f32, (y * SCALE) as f32);
    let fill = |shape: &Polygon, colour: Color32| {
        let triangles = shape.earcut_triangles_raw();
        let mut mesh = Mesh::default();
        for corner in triangles.vertices {
            mesh.colored_vertex(at(corner), colour);
        }
        mesh.indices.extend(triangles.triangle_indices.iter().map(|&index| index as u32));
        painter.add(Shape::mesh(mesh));
    };
    for board in [&cut.groove, &cut.tongue] {
        fill(board, palette.wood);
        let edge = board.exterior().coords().map(|corner| at([corner.x, corner.y])).collect();
        painter.add(Shape::line(edge, Stroke::new(1.2, palette.wood_line)));
    }
    if let Some(bead) = &cut.bead {
        if let Some(behind) = &bead.behind {
            fill(behind, palette.trim);
        }
        fill(&bead.section, if bead.fares.holds() { palette.bead } else { palette.error });
    }
}
