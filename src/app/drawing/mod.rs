//! The drawing: the surface to scale, every joint at its place, its gap by colour and thickness.

use std::sync::Arc;

use eframe::egui::{
    Align2, Button, Color32, FontId, Galley, Id, Painter, Pos2, Rect, Response, Role, Sense, Shape, Stroke,
    Ui, Vec2, WidgetInfo, vec2,
};
use geo::{
    Area as _, BoundingRect as _, Coord, Distance as _, Euclidean, InteriorPoint as _, Intersects as _, Line,
};

mod boards;
mod pins;
mod shape;
mod sheet;
mod snap;
mod stripes;

use self::sheet::Sheet;
use super::command::Command;
use super::context::WindowContext;
use super::icon::Icon;
use super::theme;
use super::view::{Camera, Selected, Tool};
use super::widgets::{fitted, working};
use crate::assess::JointState;
use crate::measure::{Length, Units};
use crate::surface::SurfaceLayout;
use crate::words::{Arg, say};

/// Gaps are drawn this many times as wide as they are.
pub(super) const MAGNIFIED: f32 = 10.0;
/// A gap of this width has the far end of the colour scale.
const WIDE: Length = Length::mm(4.0);
/// Room that the scale takes beside the legend, in points.
const BESIDE_SCALE: f32 = 240.0;
/// Size of the button of a surface.
const SURFACE_TAB: [f32; 2] = [104.0, 26.0];
/// How close to a joint a click must be, in points.
const REACH: f32 = 10.0;
/// Past this number of joints each one no longer gets a name of its own for screen readers.
const MOST_NAMED: usize = 600;

pub(super) fn drawing(ui: &mut Ui, context: &mut WindowContext<'_>) {
    surface_tabs(ui, context);
    let (response, painter) = ui.allocate_painter(ui.available_size(), Sense::click_and_drag());
    response.widget_info(|| WidgetInfo::labeled(Role::Canvas, true, context.words.text("drawing")));
    let surface = context.view.surface;
    let bounds = context.assessment.layouts.get(surface).and_then(|laid| laid.face.bounding_rect());
    let (Some(laid), Some(bounds)) = (context.assessment.layouts.get(surface), bounds) else {
        empty(&painter, response.rect, context);
        return;
    };
    let sheet = look_around(ui, context, &response, bounds, surface);
    boards::boards(&painter, context, &sheet, laid, surface);
    paint_window_walls(&painter, context, &sheet, surface);
    paint_names(&painter, context, &sheet, laid, surface);
    paint_scale(&painter, context, &sheet, response.rect, bounds.width());
    paint_north(&painter, context, response.rect, surface);
    working(&painter, context, response.rect.right_top() + vec2(-14.0, 6.0));
    if context.view.canvas.tool == Tool::Measure {
        paint_legend(&painter, context, response.rect);
    }
    if context.view.canvas.tool == Tool::Measure {
        name_joints(ui, context, &sheet, laid, surface);
        pick(ui, context, &response, &sheet, laid, surface);
    } else {
        shape::shape(ui, context, &response, &painter, &sheet, surface);
    }
    pins::pins(ui, context, &sheet, surface);
}

/// The surface shown, all of it, to look at only.
pub(super) fn still(ui: &mut Ui, context: &WindowContext<'_>, surface: usize) {
    let (response, painter) = ui.allocate_painter(ui.available_size(), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, context.words.text("drawing")));
    let Some(laid) = context.assessment.layouts.get(surface) else { return };
    let Some(bounds) = laid.face.bounding_rect() else { return };
    let sheet = Sheet::fit(over_the_legend(&painter, context, response.rect), bounds, Camera::default());
    boards::boards(&painter, context, &sheet, laid, surface);
    paint_names(&painter, context, &sheet, laid, surface);
    paint_scale(&painter, context, &sheet, response.rect, bounds.width());
    paint_legend(&painter, context, response.rect);
}

fn surface_tabs(ui: &mut Ui, context: &mut WindowContext<'_>) {
    ui.add_space(6.0);
    ui.horizontal_wrapped(|ui| {
        ui.add_space(8.0);
        for (index, surface) in context.assessment.job.surfaces.iter().enumerate() {
            let on = context.view.surface == index;
            // Of one width whatever it is called: the tools beside it stay where they are.
            let name = Button::selectable(on, &surface.name).truncate();
            if ui.add_sized(SURFACE_TAB, name).clicked() {
                context.commands.push(Command::Surface(index));
            }
        }
        if !context.assessment.job.surfaces.is_empty()
            && Icon::Fit.button(ui, &context.words.text("cmd-fit"), true).clicked()
        {
            context.push(Command::Fit);
        }
        if !context.assessment.job.surfaces.is_empty() {
            ui.separator();
            for tool in Tool::ALL {
                let on = context.view.canvas.tool == tool;
                let label = ui.selectable_label(on, context.words.text(tool.message()));
                let hint = context.words.text(&format!("{}.hint", tool.message()));
                if label.on_hover_text(hint).clicked() && !on {
                    context.push(Command::Tool(tool));
                }
            }
        }
    });
}

fn empty(painter: &Painter, rect: Rect, context: &WindowContext<'_>) {
    let font = FontId::proportional(15.0);
    let words = context.words.text("drawing-empty");
    let words = fitted(painter, words, font, context.palette.soft, (rect.width() - 24.0, 4));
    let corner = Align2::CENTER_CENTER.anchor_size(rect.center(), words.size()).min;
    painter.galley(corner, words, context.palette.soft);
}

/// Pans by dragging, zooms by scrolling about the pointer, and says where things lie.
fn look_around(
    ui: &Ui,
    context: &mut WindowContext<'_>,
    response: &Response,
    bounds: geo::Rect,
    surface: usize,
) -> Sheet {
    let room = over_the_legend(ui.painter(), context, response.rect);
    let centre = room.center();
    let camera: &mut Camera = context.view.canvas.cameras.entry(surface).or_default();
    // Where the pointer draws, the other buttons look around.
    let draws = matches!(context.view.canvas.tool, Tool::Divider | Tool::Opening);
    let ropes = context.view.selection.marquee.is_some() || ui.input(|input| input.modifiers.shift);
    if response.dragged() && !ropes && !(draws && response.dragged_by(eframe::egui::PointerButton::Primary)) {
        camera.shift += response.drag_delta();
    }
    if let Some(pointer) = response.hover_pos() {
        let (scroll, pinch) = ui.input(|input| (input.smooth_scroll_delta().y, input.zoom_delta()));
        let factor = pinch * (scroll * 0.004).exp();
        if (factor - 1.0).abs() > 1e-4 {
            *camera = camera.zoomed(factor, pointer - centre);
        }
    }
    *camera = sheet::in_sight(*camera, room, bounds);
    Sheet::fit(room, bounds, *camera)
}

/// What the surface is fitted into: the scale and the legend have the lower edge for themselves.
fn over_the_legend(painter: &Painter, context: &WindowContext<'_>, rect: Rect) -> Rect {
    /// Least distance of what is drawn from the edge, which the legend may reach into.
    const MARGIN: f32 = 26.0;
    let (_, legend) = legend(painter, context, rect);
    rect.with_max_y((legend.top() + MARGIN).clamp(rect.center().y, rect.bottom()))
}

/// The colour of a gap.
fn gap_color(context: &WindowContext<'_>, gap: Length) -> Color32 {
    let part = (gap.to_m() / WIDE.to_m()).clamp(0.0, 1.0) as f32;
    context.palette.gap_low.lerp_to_gamma(context.palette.gap_high, part)
}

fn paint_names(
    painter: &Painter,
    context: &WindowContext<'_>,
    sheet: &Sheet,
    laid: &SurfaceLayout,
    surface: usize,
) {
    let Some(job_surface) = context.assessment.job.surfaces.get(surface) else { return };
    for (section, part) in job_surface.sections.iter().zip(&laid.sections) {
        let Some(bounds) = part.clear.bounding_rect() else { continue };
        let corner = Coord { x: bounds.min().x, y: bounds.max().y };
        let offset = vec2(7.0, 6.0);
        let inset = Coord { x: corner.x + 0.05 * bounds.width(), y: corner.y - 0.05 * bounds.height() };
        // In the corner where there is wood; amid a section that is no rectangle: triangles share their corners.
        let rectangle = part.clear.unsigned_area() > 0.8 * bounds.width() * bounds.height();
        let place = match part.clear.interior_point() {
            Some(inside) if !rectangle || !part.clear.intersects(&inset) => inside.0,
            _ => corner,
        };
        let corner = sheet.at(place) + offset;
        let font = FontId::new(13.0, theme::strong_family());
        let words = painter.layout_no_wrap(section.name.clone(), font, context.palette.ink);
        let rect = Align2::LEFT_TOP.anchor_size(corner, words.size()).expand2(vec2(5.0, 2.0));
        painter.rect_filled(rect, 4, context.palette.raised.gamma_multiply(0.9));
        painter.galley(rect.min + vec2(5.0, 2.0), words, context.palette.ink);
    }
}

fn paint_scale(painter: &Painter, context: &WindowContext<'_>, sheet: &Sheet, rect: Rect, width_m: f64) {
    let part = (width_m / 4.0).min(f64::from(rect.width() / sheet.scale) / 4.0);
    let steps = [0.1, 0.2, 0.5, 1.0, 2.0, 3.0, 5.0, 10.0, 20.0];
    let nice = |value: f64| steps.into_iter().rfind(|step| *step <= value).unwrap_or(0.1);
    let (meters, words) = match context.units() {
        Units::Inches => {
            let feet = Length::m(part).to_feet();
            if feet >= 1.0 {
                (Length::feet(nice(feet)).to_m(), context.words.figures().run(Length::feet(nice(feet))))
            } else {
                let inches = nice(feet * 12.0).max(0.5);
                (Length::inches(inches).to_m(), context.words.figures().length(Length::inches(inches)))
            }
        }
        Units::Millimeters => (nice(part), context.words.figures().run(Length::m(nice(part)))),
    };
    let start = rect.left_bottom() + vec2(16.0, -12.0);
    let end = start + vec2(meters as f32 * sheet.scale, 0.0);
    let stroke = Stroke::new(1.5, context.palette.ink);
    painter.add(Shape::line(vec![start - vec2(0.0, 5.0), start, end, end - vec2(0.0, 5.0)], stroke));
    painter.text(end + vec2(6.0, 3.0), Align2::LEFT_BOTTOM, words, theme::note(), context.palette.ink);
}

/// A pair of lines outside the edges whose walls have windows, as plans show glass.
fn paint_window_walls(painter: &Painter, context: &WindowContext<'_>, sheet: &Sheet, surface: usize) {
    let Some(surface) = context.assessment.job.surfaces.get(surface) else { return };
    let edges = surface.edges();
    let corners = edges.iter().map(|[from, _]| sheet.at(from.coord()).to_vec2());
    let middle = corners.fold(Vec2::ZERO, |sum, at| sum + at) / edges.len().max(1) as f32;
    for [from, to] in surface.window_edges().into_iter().filter_map(|edge| edges.get(edge)) {
        let (from, to) = (sheet.at(from.coord()), sheet.at(to.coord()));
        let out = (to - from).normalized().rot90();
        let out = if out.dot((from + (to - from) / 2.0).to_vec2() - middle) < 0.0 { -out } else { out };
        let (start, end) = (from.lerp(to, 0.15), from.lerp(to, 0.85));
        for off in [4.0, 8.0] {
            painter.line_segment([start + out * off, end + out * off], Stroke::new(1.2, context.palette.air));
        }
        let at = start.lerp(end, 0.5) + out * 17.0;
        let (words, font) = (context.words.text("drawing-windows"), theme::note());
        painter.text(at, Align2::CENTER_CENTER, words, font, context.palette.air);
    }
}

/// An arrow to the north, where it was noted.
fn paint_north(painter: &Painter, context: &WindowContext<'_>, rect: Rect, surface: usize) {
    let Some(north) = context.assessment.job.surfaces.get(surface).and_then(|surface| surface.north) else {
        return;
    };
    let centre = rect.right_top() + vec2(-30.0, 30.0);
    let (sin, cos) = (north.to_radians() as f32).sin_cos();
    let way = vec2(cos, -sin);
    let stroke = Stroke::new(1.6, context.palette.ink);
    painter.arrow(centre - way * 12.0, way * 24.0, stroke);
    let font = FontId::new(12.0, theme::strong_family());
    painter.text(
        centre + way * 22.0,
        Align2::CENTER_CENTER,
        context.words.text("drawing-north"),
        font,
        context.palette.ink,
    );
}

/// What the drawing shows of which day, and where that is written: beside the scale, or over it where there
/// is no room.
fn legend(painter: &Painter, context: &WindowContext<'_>, rect: Rect) -> (Arc<Galley>, Rect) {
    let day = crate::assess::date_on(&context.assessment.job, context.day());
    let times = Arg::Number(MAGNIFIED.into(), 0);
    let words = say!(context.words, "drawing-legend", date = day, times = times);
    let room = (rect.width() - BESIDE_SCALE).max(0.6 * rect.width());
    let words = fitted(painter, words, theme::note(), context.palette.ink, (room, 3));
    let up = if rect.width() < words.size().x + BESIDE_SCALE { -30.0 } else { -9.0 };
    let at = rect.right_bottom() + vec2(-14.0, up);
    let place = Align2::RIGHT_BOTTOM.anchor_size(at, words.size()).expand2(vec2(5.0, 2.0));
    (words, place)
}

fn paint_legend(painter: &Painter, context: &WindowContext<'_>, rect: Rect) {
    let (words, place) = legend(painter, context, rect);
    painter.rect_filled(place, 4, context.palette.ground.gamma_multiply(0.85));
    painter.galley(place.min + vec2(5.0, 2.0), words, context.palette.ink);
}

/// What a joint is called to those who do not see it.
pub(super) fn joint_name(context: &WindowContext<'_>, label: &str, state: Option<&JointState>) -> String {
    let (words, joint) = (context.words, Arg::Joint(label));
    match state.and_then(|state| state.gap) {
        Some(gap) if gap.measured => {
            say!(words, "drawing-joint-measured", joint = joint, gap = gap.gap.mean)
        }
        Some(gap) => say!(words, "drawing-joint-estimated", joint = joint, gap = gap.gap.mean),
        None => say!(words, "drawing-joint-unknown", joint = joint),
    }
}

/// A small target at the middle of each joint, for screen readers and tests. Tab passes them by:
/// the list of joints is gone through with its own command.
fn name_joints(
    ui: &Ui,
    context: &mut WindowContext<'_>,
    sheet: &Sheet,
    laid: &SurfaceLayout,
    surface: usize,
) {
    if laid.joints.len() > MOST_NAMED {
        return;
    }
    for (index, joint) in laid.joints.iter().enumerate() {
        let target = Rect::from_center_size(sheet.at(joint.middle()), Vec2::splat(7.0));
        if !ui.clip_rect().contains_rect(target) {
            continue;
        }
        let id = Id::unique(("joint", surface, index));
        let response = ui.interact(target, id, Sense::CLICK);
        let name = joint_name(context, &joint.label, context.assessment.joint(surface, index));
        let on = context
            .view
            .selection
            .joint
            .as_ref()
            .is_some_and(|s| s.surface == surface && s.joint == joint.label);
        response.widget_info(|| WidgetInfo::selected(Role::Button, true, on, &name));
        if response.clicked() {
            context.commands.push(Command::Select(Some(Selected { surface, joint: joint.label.clone() })));
        }
    }
}

/// Selects by clicking near a joint, and tells a joint's story when hovered.
fn pick(
    ui: &Ui,
    context: &mut WindowContext<'_>,
    response: &Response,
    sheet: &Sheet,
    laid: &SurfaceLayout,
    surface: usize,
) {
    let pointer = ui.input(|input| input.pointer.latest_pos()).filter(|at| response.rect.contains(*at));
    let Some(pointer) = pointer else { return };
    let distance = |index: usize| {
        let joint = &laid.joints[index];
        to_segment(pointer, sheet.at(joint.from), sheet.at(joint.to))
    };
    let nearest = (0..laid.joints.len()).min_by(|&a, &b| distance(a).total_cmp(&distance(b)));
    let near = nearest.filter(|&index| distance(index) <= REACH);
    let more = ui.input(|input| input.modifiers.shift);
    marquee(ui, context, response, sheet, laid);
    if response.clicked() && more {
        if let Some(index) = near {
            context.push(Command::SelectMore(vec![laid.joints[index].label.clone()]));
        }
    } else if response.clicked() {
        let selected = near.map(|index| Selected { surface, joint: laid.joints[index].label.clone() });
        context.push(Command::Select(selected));
    }
    if let Some(index) = near
        && response.hovered()
        && !response.dragged()
    {
        let story = story(context, laid, surface, index);
        response.clone().on_hover_text_at_pointer(story);
    }
}

/// With Shift held, a rectangle takes in every joint whose middle it holds.
fn marquee(
    ui: &Ui,
    context: &mut WindowContext<'_>,
    response: &Response,
    sheet: &Sheet,
    laid: &SurfaceLayout,
) {
    let shift = ui.input(|input| input.modifiers.shift);
    if shift && response.drag_started() {
        context.view.selection.marquee = ui.input(|input| input.pointer.press_origin());
    }
    let (Some(start), Some(now)) =
        (context.view.selection.marquee, ui.input(|input| input.pointer.latest_pos()))
    else {
        return;
    };
    let rect = Rect::from_two_pos(start, now);
    let painter = ui.painter_at(response.rect);
    painter.rect(
        rect,
        0,
        context.palette.select.gamma_multiply(0.12),
        Stroke::new(1.0, context.palette.select),
        eframe::egui::StrokeKind::Inside,
    );
    if !response.dragged() {
        context.view.selection.marquee = None;
        let inside = laid.joints.iter().filter(|joint| rect.contains(sheet.at(joint.middle())));
        let labels: Vec<String> = inside.map(|joint| joint.label.clone()).collect();
        if !labels.is_empty() {
            context.push(Command::SelectMarquee(labels));
        }
    }
}

fn to_segment(point: Pos2, from: Pos2, to: Pos2) -> f32 {
    let at = |at: Pos2| Coord { x: at.x, y: at.y };
    Euclidean.distance(&Line::new(at(from), at(to)), &geo::Point::from(at(point)))
}

/// A joint in two or three lines.
fn story(context: &WindowContext<'_>, laid: &SurfaceLayout, surface: usize, index: usize) -> String {
    let joint = &laid.joints[index];
    let state = context.assessment.joint(surface, index);
    let mut lines = vec![
        joint_name(context, &joint.label, state),
        say!(context.words, "drawing-joint-kind", kind = Arg::Id(joint.kind.key()), length = joint.length()),
    ];
    if let Some((low, high)) = state.and_then(|state| state.extremes) {
        lines.push(say!(context.words, "drawing-joint-range", low = low, high = high));
    }
    lines.join("\n")
}
