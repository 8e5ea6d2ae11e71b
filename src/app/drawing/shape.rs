//! Changing the drawing itself: corners are dragged, edges given their length, dividers and openings
//! drawn. A drag is one step in the history, put down when the button is let go.

use eframe::egui::{
    Align2, Area, Id, Key, Order, Painter, PointerButton, Pos2, Rect, Response, Role, Sense, Shape, Stroke,
    Ui, Vec2, WidgetInfo, vec2,
};
use geo::Coord;

use super::Sheet;
use super::snap::{Snapped, grid_step, snap};
use crate::app::command::Command;
use crate::app::context::{WindowContext, read_room};
use crate::app::theme;
use crate::app::view::{Drag, Tool};
use crate::measure::Length;
use crate::surface::{Divider, DividerKind, Opening, Point, Surface};
use crate::words::boards::{divider_name, opening_name};
use crate::words::{Words, say};

/// How close in points a corner catches.
const REACH: f32 = 9.0;
/// A step of the grid is at least this many points.
const STEP: f32 = 7.0;

pub(super) fn shape(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    response: &Response,
    painter: &Painter,
    sheet: &Sheet,
    on: usize,
) {
    let Some(surface) = context.job.surfaces.get(on) else { return };
    match context.view.canvas.tool {
        Tool::Measure => {}
        Tool::Shape => {
            edges(ui, context, painter, sheet, surface, on);
            handles(ui, context, painter, sheet, surface, on);
            insert(context, response, sheet, surface, on);
        }
        Tool::Photo => {
            if let Some(at) = response.interact_pointer_pos().filter(|_| response.clicked()) {
                context.push(Command::ChoosePhoto(point(sheet.meters(at))));
            }
        }
        Tool::Divider | Tool::Opening => draw_new(ui, context, response, painter, sheet, surface, on),
    }
}

fn snapped_at(
    ui: &Ui,
    context: &WindowContext<'_>,
    sheet: &Sheet,
    surface: &Surface,
    at: Pos2,
    start: Option<Coord>,
    own: Option<Point>,
) -> Snapped {
    let point = sheet.meters(at);
    // With the Alt key down, nothing snaps.
    if ui.input(|input| input.modifiers.alt) {
        return Snapped { at: point, guides: vec![] };
    }
    let others = surface.points().into_iter().filter(|other| Some(*other) != own);
    let others: Vec<Coord> = others.map(|point| point.coord()).collect();
    let meters = |points: f32| f64::from(points / sheet.scale);
    snap(point, &others, start, meters(REACH), grid_step(context.units(), meters(STEP)))
}

const fn point(at: Coord) -> Point {
    Point::m(at.x, at.y)
}

/// The corners and ends, each with what it is called.
fn corners(surface: &Surface, words: &Words) -> Vec<(String, Point)> {
    let mut named: Vec<(String, Point)> = Vec::new();
    let outline = surface.outline.iter().enumerate();
    let openings = surface.openings.iter().flat_map(|opening| {
        opening
            .corners
            .iter()
            .enumerate()
            .map(|(at, p)| (say!(words, "corner-of-opening", number = at + 1, name = &opening.name), *p))
    });
    let dividers = surface.dividers.iter().flat_map(|divider| {
        [
            (say!(words, "divider-start", name = &divider.name), divider.from),
            (say!(words, "divider-end", name = &divider.name), divider.to),
        ]
    });
    let regions = surface.sections.iter().flat_map(|section| {
        let corners = section.region.iter().flatten().enumerate();
        corners.map(|(at, p)| (say!(words, "corner-of-section", number = at + 1, name = &section.name), *p))
    });
    let all = outline.map(|(at, p)| (say!(words, "corner-of-outline", number = at + 1), *p));
    for (name, corner) in all.chain(openings).chain(dividers).chain(regions) {
        // One handle for corners that lie on each other.
        let apart = |other: &Point| {
            let run = other.coord() - corner.coord();
            run.x.hypot(run.y)
        };
        if named.iter().all(|(_, other)| apart(other) > 5e-4) {
            named.push((name, corner));
        }
    }
    named
}

fn handles(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    painter: &Painter,
    sheet: &Sheet,
    surface: &Surface,
    on: usize,
) {
    for (index, (name, corner)) in corners(surface, context.words).into_iter().enumerate() {
        let at = sheet.at(corner.coord());
        let rect = Rect::from_center_size(at, Vec2::splat(16.0));
        if !ui.clip_rect().contains(at) {
            continue;
        }
        let response = ui.interact(rect, Id::unique(("corner", on, index)), Sense::click_and_drag());
        let said = say!(context.words, "corner-at", name = &name, right = corner.0, up = corner.1);
        response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &said));
        if response.clicked() || response.drag_started() {
            response.request_focus();
        }
        let mut shown = at;
        if response.dragged()
            && let Some(pointer) = response.interact_pointer_pos()
        {
            let snapped = snapped_at(ui, context, sheet, surface, pointer, None, Some(corner));
            guides(painter, context, sheet, &snapped);
            shown = sheet.at(snapped.at);
            context.view.canvas.drag = Some(Drag { from: corner, to: point(snapped.at) });
            reference_curve(painter, context, sheet, surface, corner, point(snapped.at));
        }
        if response.drag_stopped()
            && let Some(drag) = context.view.canvas.drag.take()
            && drag.from != drag.to
        {
            move_corner(context, on, drag.from, drag.to);
        }
        keys(ui, context, &response, sheet, surface, on, corner);
        let lit = response.hovered() || response.has_focus() || response.dragged();
        let fill = if lit { context.palette.accent } else { context.palette.raised };
        let square = Rect::from_center_size(shown, Vec2::splat(if lit { 11.0 } else { 9.0 }));
        painter.rect(
            square,
            2,
            fill,
            Stroke::new(1.6, context.palette.accent),
            eframe::egui::StrokeKind::Inside,
        );
        response.on_hover_text(said).on_hover_cursor(eframe::egui::CursorIcon::Grab);
    }
}

fn move_corner(context: &mut WindowContext<'_>, on: usize, from: Point, to: Point) {
    context.edit("undo-move-corner", move |job| {
        job.redraw(on, |surface| {
            surface.move_point(from, to);
        });
    });
}

/// Arrow keys move a corner that has the focus; Delete takes one of the outline away.
fn keys(
    ui: &Ui,
    context: &mut WindowContext<'_>,
    response: &Response,
    sheet: &Sheet,
    surface: &Surface,
    on: usize,
    corner: Point,
) {
    if !response.has_focus() {
        return;
    }
    let step = grid_step(context.units(), f64::from(STEP / sheet.scale));
    let arrows = [
        (Key::ArrowLeft, (-step, 0.0)),
        (Key::ArrowRight, (step, 0.0)),
        (Key::ArrowUp, (0.0, step)),
        (Key::ArrowDown, (0.0, -step)),
    ];
    // The focus stays while arrows move the corner.
    ui.memory_mut(|memory| {
        memory.set_focus_lock_filter(
            response.id,
            eframe::egui::EventFilter {
                horizontal_arrows: true,
                vertical_arrows: true,
                ..Default::default()
            },
        );
    });
    for (key, (x, y)) in arrows {
        if ui.input(|input| input.key_pressed(key)) {
            let at = corner.coord();
            move_corner(context, on, corner, Point::m(at.x + x, at.y + y));
        }
    }
    let gone = ui.input(|input| input.key_pressed(Key::Delete) || input.key_pressed(Key::Backspace));
    if gone && surface.outline.len() > 3 && surface.outline.contains(&corner) {
        context.edit("undo-remove-corner", move |job| {
            job.redraw(on, |surface| {
                surface.outline.retain(|known| *known != corner);
            });
        });
    }
}

fn guides(painter: &Painter, context: &WindowContext<'_>, sheet: &Sheet, snapped: &Snapped) {
    let stroke = Stroke::new(1.0, context.palette.accent.gamma_multiply(0.7));
    for guide in &snapped.guides {
        painter.extend(Shape::dashed_line(&[sheet.at(*guide), sheet.at(snapped.at)], stroke, 4.0, 3.0));
    }
}

/// The outline as it will be, with the lengths that change.
fn reference_curve(
    painter: &Painter,
    context: &WindowContext<'_>,
    sheet: &Sheet,
    surface: &Surface,
    from: Point,
    to: Point,
) {
    let mut moved = surface.clone();
    moved.move_point(from, to);
    let stroke = Stroke::new(2.0, context.palette.accent);
    let rings = std::iter::once(&moved.outline).chain(moved.openings.iter().map(|opening| &opening.corners));
    for ring in rings {
        let points: Vec<Pos2> = ring.iter().map(|corner| sheet.at(corner.coord())).collect();
        painter.add(Shape::closed_line(points, stroke));
        for (at, corner) in ring.iter().enumerate() {
            let next = ring[(at + 1) % ring.len()];
            if *corner == to || next == to {
                length_label(painter, context, sheet, *corner, next);
            }
        }
    }
    for divider in &moved.dividers {
        painter.line_segment([sheet.at(divider.from.coord()), sheet.at(divider.to.coord())], stroke);
    }
}

fn length_between(a: Point, b: Point) -> Length {
    let run = b.coord() - a.coord();
    Length::m(run.x.hypot(run.y))
}

/// Where an edge's length stands: outside the outline, clear of corners and of what ends on the edge.
fn beside(sheet: &Sheet, surface: &Surface, a: Point, b: Point) -> Pos2 {
    let ends = [a, b].map(|corner| sheet.at(corner.coord()));
    let middle = ends[0] + (ends[1] - ends[0]) / 2.0;
    let aside = (ends[1] - ends[0]).normalized().rot90() * 17.0;
    let inside = |at: Pos2| {
        let at = geo::Point(sheet.meters(at));
        geo::Contains::contains(&crate::surface::outline_polygon(surface), &at)
    };
    if inside(middle + aside) { middle - aside } else { middle + aside }
}

fn length_label(painter: &Painter, context: &WindowContext<'_>, sheet: &Sheet, a: Point, b: Point) {
    label_at(painter, context, sheet.at((a.coord() + b.coord()) / 2.0), length_between(a, b));
}

fn label_at(painter: &Painter, context: &WindowContext<'_>, middle: Pos2, length: Length) {
    let words = length.show(context.units());
    let words = painter.layout_no_wrap(words, theme::note(), context.palette.ink);
    let rect = Align2::CENTER_CENTER.anchor_size(middle, words.size());
    painter.rect_filled(rect.expand2(vec2(5.0, 2.0)), 4, context.palette.raised);
    painter.galley(rect.min, words, context.palette.ink);
}

/// Every edge of the outline has its length as a button; pressed, the length can be typed.
fn edges(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    painter: &Painter,
    sheet: &Sheet,
    surface: &Surface,
    on: usize,
) {
    let points: Vec<Pos2> = surface.outline.iter().map(|corner| sheet.at(corner.coord())).collect();
    painter.add(Shape::closed_line(points, Stroke::new(1.5, context.palette.accent)));
    for (edge, corner) in surface.outline.iter().enumerate() {
        let next = surface.outline[(edge + 1) % surface.outline.len()];
        let length = length_between(*corner, next);
        let middle = beside(sheet, surface, *corner, next);
        if context.view.canvas.typed_edge == Some(edge) {
            type_length(ui, context, middle, length, edge, on);
            continue;
        }
        // While a corner is dragged its own lengths are shown.
        if context.view.canvas.drag.is_some() {
            continue;
        }
        label_at(painter, context, middle, length);
        let rect = Rect::from_center_size(middle, vec2(70.0, 20.0));
        if !ui.clip_rect().contains(middle) {
            continue;
        }
        let response = ui.interact(rect, Id::unique(("edge", on, edge)), Sense::CLICK);
        let words = say!(context.words, "edge-type-length", number = edge + 1, length = length);
        response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &words));
        if response.on_hover_text(&words).clicked() {
            context.view.canvas.typed_edge = Some(edge);
            context.view.canvas.focus_edge = true;
        }
    }
}

fn type_length(
    ui: &Ui,
    context: &mut WindowContext<'_>,
    middle: Pos2,
    length: Length,
    edge: usize,
    on: usize,
) {
    let area = Area::new(Id::unique(("edge length", on))).order(Order::Foreground);
    area.fixed_pos(middle - vec2(42.0, 12.0)).show(ui.ctx(), |ui| {
        let id = Id::unique(("edge length field", on, edge));
        let (units, words) = (context.units(), context.words);
        let name = say!(words, "edge-length", number = edge + 1);
        let entered = crate::app::entry::entry_with_id(ui, id, &name, &length.show(units), 84.0, |text| {
            read_room(text, units, &Surface::EDGES, words)
        });
        if context.view.canvas.focus_edge {
            // The area is measured before it is shown; only then can the field take the focus.
            context.view.canvas.focus_edge = !entered.response.has_focus();
            entered.response.request_focus();
            crate::app::entry::select_all(ui, id, &length.show(units));
        } else if entered.response.lost_focus() && !entered.refused {
            context.view.canvas.typed_edge = None;
        }
        if let Some(length) = entered.value {
            context.edit("undo-edge-length", move |job| {
                job.redraw(on, |surface| {
                    surface.stretch_edge(edge, length);
                });
            });
        }
    });
}

/// A double click on an edge puts a corner there.
fn insert(context: &mut WindowContext<'_>, response: &Response, sheet: &Sheet, surface: &Surface, on: usize) {
    let Some(pointer) = response.interact_pointer_pos().filter(|_| response.double_clicked()) else { return };
    let near = (0..surface.outline.len()).find(|&edge| {
        let next = surface.outline[(edge + 1) % surface.outline.len()];
        let ends = [surface.outline[edge], next].map(|corner| sheet.at(corner.coord()));
        super::to_segment(pointer, ends[0], ends[1]) < REACH
    });
    if let Some(edge) = near {
        let at = point(sheet.meters(pointer));
        context.edit("undo-add-corner", move |job| {
            job.redraw(on, |surface| {
                surface.insert_corner(edge, at);
            });
        });
    }
}

/// A divider or opening that is being drawn.
fn draw_new(
    ui: &Ui,
    context: &mut WindowContext<'_>,
    response: &Response,
    painter: &Painter,
    sheet: &Sheet,
    surface: &Surface,
    on: usize,
) {
    let Some(pointer) = response.interact_pointer_pos().or_else(|| response.hover_pos()) else { return };
    let start = context.view.canvas.drag.map(|drag| drag.from.coord());
    let line = context.view.canvas.tool == Tool::Divider;
    let snapped = snapped_at(ui, context, sheet, surface, pointer, start.filter(|_| line), None);
    guides(painter, context, sheet, &snapped);
    painter.circle_filled(sheet.at(snapped.at), 4.0, context.palette.accent);
    let at = point(snapped.at);
    if response.drag_started_by(PointerButton::Primary) {
        // The drag is noticed a few points after the press.
        let pressed = ui.input(|input| input.pointer.press_origin()).unwrap_or(pointer);
        let from = point(snapped_at(ui, context, sheet, surface, pressed, None, None).at);
        context.view.canvas.drag = Some(Drag { from, to: at });
    }
    let Some(drag) = context.view.canvas.drag.as_mut() else { return };
    drag.to = at;
    let drag = *drag;
    let stroke = Stroke::new(2.0, context.palette.accent);
    if line {
        painter.line_segment([sheet.at(drag.from.coord()), sheet.at(drag.to.coord())], stroke);
        length_label(painter, context, sheet, drag.from, drag.to);
    } else {
        let ring = rectangle_between(drag.from, drag.to);
        let points = ring.iter().map(|corner| sheet.at(corner.coord())).collect();
        painter.add(Shape::closed_line(points, stroke));
        length_label(painter, context, sheet, ring[0], ring[1]);
        length_label(painter, context, sheet, ring[1], ring[2]);
    }
    if response.drag_stopped() {
        context.view.canvas.drag = None;
        put_down(context, on, line, drag);
    }
}

fn rectangle_between(a: Point, b: Point) -> [Point; 4] {
    let (left, right) = (a.0.min(b.0), a.0.max(b.0));
    let (low, high) = (a.1.min(b.1), a.1.max(b.1));
    [Point(left, low), Point(right, low), Point(right, high), Point(left, high)]
}

fn put_down(context: &mut WindowContext<'_>, on: usize, line: bool, drag: Drag) {
    let (from, to, words) = (drag.from, drag.to, context.words.clone());
    if length_between(from, to) < Length::mm(50.0) {
        return;
    }
    if line {
        context.edit("undo-draw-divider", move |job| {
            job.redraw(on, |surface| {
                let name = divider_name(&words, surface.dividers.len());
                let (kind, width) = (DividerKind::Dividing, Divider::USUAL_WIDTH);
                surface.part_along(Divider { name, kind, from, to, width });
            });
        });
    } else {
        let corners = rectangle_between(from, to).to_vec();
        context.edit("undo-draw-opening", move |job| {
            job.redraw(on, |surface| {
                let name = opening_name(&words, surface.openings.len());
                surface.openings.push(Opening { name, corners });
            });
        });
    }
}
