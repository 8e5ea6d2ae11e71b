//! The outline of a surface with its trim and openings, and the boards that divide it.

use eframe::egui::{Grid, RichText, Ui};

use super::boards::{KINDS, LARGEST, choose};
use crate::app::context::WindowContext;
use crate::app::entry::text_entry;
use crate::app::icon::Icon;
use crate::app::widgets::term;
use crate::job::Job;
use crate::job::fields::{At, Each};
use crate::measure::Length;
use crate::surface::{Divider, DividerKind, Opening, Point, pattern::rectangle};

pub(super) fn outline(ui: &mut Ui, context: &mut WindowContext<'_>, on: usize) {
    let surface = &context.job.surfaces[on];
    Grid::new("outline").num_columns(2).show(ui, |ui| {
        ui.label("Name");
        if let Some(name) = text_entry(ui, "Surface name", &surface.name, 150.0) {
            context.edit("Surface name", move |job| job.rename_surface(on, &name));
        }
        ui.end_row();
        ui.label("Kind");
        choose(ui, "Kind", &KINDS, surface.kind, |kind| {
            context.edit("Kind", move |job| {
                if let Some(surface) = job.surfaces.get_mut(on) {
                    surface.kind = kind;
                }
            });
        });
        ui.end_row();
        term(ui, "Trim around", "Width of the trim board along the outline; 0 for none.");
        if let Some(trim) =
            context.length_entry(ui, "Trim around", surface.trim, Length::ZERO..=Length::m(1.0), 90.0)
        {
            context.edit("Trim", move |job| {
                if let Some(surface) = job.surfaces.get_mut(on) {
                    surface.trim = trim;
                }
            });
        }
        ui.end_row();
    });
    let north = surface.north.map(crate::measure::Angle::to_degrees);
    ui.horizontal(|ui| {
        term(
            ui,
            "North at, °",
            "Where north is on the drawing: 0 to the right, 90 up. Empty if it does not matter.",
        );
        if let Some(north) = context.optional_entry(ui, "North at", north, 0, 0.0..=360.0, 60.0) {
            context.edit("North", move |job| {
                if let Some(surface) = job.surfaces.get_mut(on) {
                    surface.north = north.map(crate::measure::Angle::degrees);
                }
            });
        }
    });
    window_walls(ui, context, on);
    corners(ui, context, "Outline", &surface.outline, move |job| {
        Some(&mut job.surfaces.get_mut(on)?.outline)
    });
    for (index, opening) in surface.openings.iter().enumerate() {
        ui.separator();
        ui.push_id(("opening", index), |ui| {
            ui.horizontal(|ui| {
                ui.label("Opening");
                if let Some(name) = text_entry(ui, "Opening name", &opening.name, 130.0) {
                    context.edit("Opening name", move |job| {
                        if let Some(opening) =
                            job.surfaces.get_mut(on).and_then(|s| s.openings.get_mut(index))
                        {
                            opening.name = name;
                        }
                    });
                }
                if Icon::Remove.button(ui, "Remove opening", true).clicked() {
                    context.edit("Remove opening", move |job| {
                        if let Some(surface) = job.surfaces.get_mut(on)
                            && index < surface.openings.len()
                        {
                            surface.openings.remove(index);
                        }
                    });
                }
            });
            corners(ui, context, "Opening", &opening.corners, move |job| {
                Some(&mut job.surfaces.get_mut(on)?.openings.get_mut(index)?.corners)
            });
            context.entry_problems(ui, Each::Opening, At(on, index));
        });
    }
    if ui.button("Add opening").clicked() {
        context.edit("Add opening", move |job| {
            let Some(surface) = job.surfaces.get_mut(on) else { return };
            let (w, h) = (Length::feet(2.0), Length::feet(3.0));
            let corners = rectangle(w, h).into_iter().map(|p| Point(p.0 + w, p.1 + w)).collect();
            let name = format!("window {}", surface.openings.len() + 1);
            surface.openings.push(Opening { name, corners });
        });
    }
}

/// Which walls have windows: boards near them dry and warm most.
fn window_walls(ui: &mut Ui, context: &mut WindowContext<'_>, on: usize) {
    let surface = &context.job.surfaces[on];
    let with = surface.window_edges();
    ui.horizontal_wrapped(|ui| {
        term(
            ui,
            "Windows along",
            "Walls with windows are marked on the drawing: boards near them dry and warm most.",
        );
        for edge in 0..surface.outline.len() {
            let mut windows = with.contains(&edge);
            let name = format!("edge {}", edge + 1);
            if ui.checkbox(&mut windows, name).changed() {
                context.edit("Windows in a wall", move |job| {
                    if let Some(surface) = job.surfaces.get_mut(on) {
                        surface.set_window_edge(edge, windows);
                    }
                });
            }
        }
    });
}

/// A list of corners, each to be typed, added after and removed.
pub(super) fn corners(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    name: &str,
    points: &[Point],
    reach: impl Fn(&mut Job) -> Option<&mut Vec<Point>> + Copy + 'static,
) {
    let anywhere = -LARGEST..=LARGEST;
    Grid::new((name, "corners")).num_columns(4).show(ui, |ui| {
        let hint = "Where lengths are in inches, a bare number is feet here: type 9\" for inches.";
        ui.label(RichText::new("corner").small()).on_hover_text(hint);
        ui.label(RichText::new("right").small());
        ui.label(RichText::new("up").small());
        ui.end_row();
        for (index, point) in points.iter().enumerate() {
            let number = index + 1;
            ui.label(number.to_string());
            let x =
                context.room_entry(ui, &format!("{name}, corner {number}, right"), point.0, anywhere.clone());
            let y =
                context.room_entry(ui, &format!("{name}, corner {number}, up"), point.1, anywhere.clone());
            if x.is_some() || y.is_some() {
                context.edit("Move corner", move |job| {
                    if let Some(corner) = reach(job).and_then(|points| points.get_mut(index)) {
                        *corner = Point(x.unwrap_or(corner.0), y.unwrap_or(corner.1));
                    }
                });
            }
            if Icon::Remove
                .button(ui, &format!("Remove corner {number} of {name}"), points.len() > 3)
                .clicked()
            {
                context.edit("Remove corner", move |job| {
                    if let Some(points) = reach(job)
                        && index < points.len()
                    {
                        points.remove(index);
                    }
                });
            }
            ui.end_row();
        }
    });
    if ui.button(format!("Add corner to {}", name.to_lowercase())).clicked() {
        context.edit("Add corner", move |job| {
            // Half-way between the last corner and the first: the outline stays as it was.
            if let Some(points) = reach(job)
                && let (Some(first), Some(last)) = (points.first().copied(), points.last().copied())
            {
                points.push(Point((first.0 + last.0) / 2.0, (first.1 + last.1) / 2.0));
            }
        });
    }
}

pub(super) fn dividers(ui: &mut Ui, context: &mut WindowContext<'_>, on: usize) {
    let job = context.job;
    let anywhere = -LARGEST..=LARGEST;
    for (index, divider) in job.surfaces[on].dividers.iter().enumerate() {
        ui.push_id(("divider", index), |ui| {
            ui.horizontal(|ui| {
                if let Some(name) = text_entry(ui, "Divider name", &divider.name, 90.0) {
                    edit_divider(context, on, index, move |divider| divider.name = name);
                }
                let kinds = [(DividerKind::Dividing, "dividing board"), (DividerKind::Ridge, "ridge board")];
                choose(ui, "Kind of divider", &kinds, divider.kind, |kind| {
                    edit_divider(context, on, index, move |divider| divider.kind = kind);
                });
                if Icon::Remove.button(ui, "Remove divider", true).clicked() {
                    context.edit("Remove divider", move |job| {
                        if let Some(surface) = job.surfaces.get_mut(on)
                            && index < surface.dividers.len()
                        {
                            surface.dividers.remove(index);
                        }
                    });
                }
            });
            Grid::new("ends").num_columns(3).show(ui, |ui| {
                for (name, point, set) in [
                    ("From", divider.from, (|d, p| d.from = p) as fn(&mut Divider, Point)),
                    ("To", divider.to, |d, p| d.to = p),
                ] {
                    ui.label(name);
                    let x = context.room_entry(ui, &format!("{name}, right"), point.0, anywhere.clone());
                    let y = context.room_entry(ui, &format!("{name}, up"), point.1, anywhere.clone());
                    if x.is_some() || y.is_some() {
                        let moved = Point(x.unwrap_or(point.0), y.unwrap_or(point.1));
                        edit_divider(context, on, index, move |divider| set(divider, moved));
                    }
                    ui.end_row();
                }
                ui.label("Width");
                if let Some(width) = context.length_entry(
                    ui,
                    "Divider width",
                    divider.width,
                    Length::mm(1.0)..=Length::m(2.0),
                    84.0,
                ) {
                    edit_divider(context, on, index, move |divider| divider.width = width);
                }
                ui.end_row();
            });
            context.entry_problems(ui, Each::Divider, At(on, index));
        });
        ui.separator();
    }
    if ui.button("Add divider").clicked() {
        context.edit("Add divider", move |job| {
            let Some(surface) = job.surfaces.get_mut(on) else { return };
            let xs = || surface.outline.iter().map(|point| point.0);
            let ys = || surface.outline.iter().map(|point| point.1);
            let top = ys().fold(Length::ZERO, Length::max);
            let middle = xs().fold(Length::ZERO, Length::max) / 2.0;
            let name = format!("divider {}", char::from(b'a' + (surface.dividers.len() % 26) as u8));
            let (from, to) = (Point(middle, Length::ZERO), Point(middle, top));
            let width = Length::inches(3.5);
            surface.dividers.push(Divider { name, kind: DividerKind::Dividing, from, to, width });
        });
    }
}

fn edit_divider(
    context: &mut WindowContext<'_>,
    on: usize,
    index: usize,
    change: impl FnOnce(&mut Divider) + 'static,
) {
    context.edit("Divider", move |job| {
        if let Some(divider) = job.surfaces.get_mut(on).and_then(|surface| surface.dividers.get_mut(index)) {
            change(divider);
        }
    });
}
