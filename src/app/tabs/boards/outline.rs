//! The outline of a surface with its trim, windows and doors.

use eframe::egui::{Grid, Ui};

use super::corners::{Ring, corners};
use crate::app::context::WindowContext;
use crate::app::entry::text_entry;
use crate::app::icon::Icon;
use crate::app::widgets::choose;
use crate::job::fields::{self, At};
use crate::surface::SurfaceKind;
use crate::words::boards::opening_name;
use crate::words::{Say as _, say};

/// Width of a name, in points.
const NAME_WIDTH: f32 = 150.0;

pub(super) fn outline(ui: &mut Ui, context: &mut WindowContext<'_>, on: usize) {
    let (surface, words, at) = (&context.job.surfaces[on], context.words, At::index(on));
    Grid::new("outline").num_columns(2).show(ui, |ui| {
        context.row_at(ui, &fields::SURFACE_NAME, at, |context, ui, label| {
            if let Some(name) = text_entry(ui, label, &surface.name, NAME_WIDTH) {
                context.edit("field-surface-name", move |job| job.rename_surface(on, &name));
            }
        });
        context.row_at(ui, &fields::SURFACE_KIND, at, |context, ui, label| {
            let kinds = SurfaceKind::ALL.map(|kind| (kind, kind.say(words)));
            if let Some(kind) = choose(ui, label, surface.kind, &kinds) {
                context.edit("field-surface-kind", move |job| {
                    if let Some(surface) = job.surfaces.get_mut(on) {
                        surface.kind = kind;
                    }
                });
            }
        });
        context.field(ui, &fields::TRIM, at);
        context.field(ui, &fields::NORTH, at);
        context.row_at(ui, &fields::WINDOW_WALLS, at, |context, ui, _| window_walls(ui, context, on));
    });
    corners(ui, context, &fields::OUTLINE, at, Ring::Outline, &surface.outline, move |job| {
        Some(&mut job.surfaces.get_mut(on)?.outline)
    });
    for index in 0..surface.openings.len() {
        ui.separator();
        ui.push_id(("opening", index), |ui| opening(ui, context, At(on, index)));
    }
    if ui.button(words.text("boards-add-opening")).clicked() {
        let words = words.clone();
        context.edit("boards-add-opening", move |job| {
            if let Some(surface) = job.surfaces.get_mut(on) {
                surface.add_opening(opening_name(&words, surface.openings.len()));
            }
        });
    }
}

/// Which walls have windows: boards near them dry and warm most.
fn window_walls(ui: &mut Ui, context: &mut WindowContext<'_>, on: usize) {
    let surface = &context.job.surfaces[on];
    let with = surface.window_edges();
    ui.horizontal_wrapped(|ui| {
        for edge in 0..surface.outline.len() {
            let mut windows = with.contains(&edge);
            let name = say!(context.words, "boards-edge", number = edge + 1);
            if ui.checkbox(&mut windows, name).changed() {
                context.edit("field-window-walls", move |job| {
                    if let Some(surface) = job.surfaces.get_mut(on) {
                        surface.set_window_edge(edge, windows);
                    }
                });
            }
        }
    });
}

/// A window, door or skylight.
fn opening(ui: &mut Ui, context: &mut WindowContext<'_>, at: At) {
    let (words, At(on, index)) = (context.words, at);
    let opening = &context.job.surfaces[on].openings[index];
    ui.horizontal_wrapped(|ui| {
        ui.label(words.text("field-opening"));
        let label = fields::OPENING_NAME.label(words);
        context.reach(ui, &fields::OPENING_NAME, at, None);
        if let Some(name) = text_entry(ui, &label, &opening.name, NAME_WIDTH) {
            context.edit("field-opening-name", move |job| {
                let surface = job.surfaces.get_mut(on);
                if let Some(opening) = surface.and_then(|surface| surface.openings.get_mut(index)) {
                    opening.name = name;
                }
            });
        }
        let said = say!(words, "boards-remove-opening", name = &opening.name);
        if Icon::Remove.button(ui, &said, true).clicked() {
            context.edit("undo-remove-opening", move |job| {
                if let Some(surface) = job.surfaces.get_mut(on)
                    && index < surface.openings.len()
                {
                    surface.openings.remove(index);
                }
            });
        }
    });
    context.field_problems(ui, &fields::OPENING_NAME, at);
    corners(ui, context, &fields::OPENING, at, Ring::Opening(&opening.name), &opening.corners, move |job| {
        Some(&mut job.surfaces.get_mut(on)?.openings.get_mut(index)?.corners)
    });
}
