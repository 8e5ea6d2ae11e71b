//! The boards that divide a surface: trim breaks, and the ridge where two slopes meet.

use eframe::egui::{Grid, Ui};

use super::corners::point_entry;
use crate::app::context::WindowContext;
use crate::app::entry::text_entry;
use crate::app::icon::Icon;
use crate::app::widgets::choose;
use crate::job::fields::{self, At};
use crate::surface::{Divider, DividerKind, Point};
use crate::words::boards::divider_name;
use crate::words::{Arg, Say as _, say};

/// Width of a name, in points.
const NAME_WIDTH: f32 = 90.0;

/// One of the two ends: the id that messages select by, and the end of a divider.
type End = (&'static str, fn(&mut Divider) -> &mut Point);

const ENDS: [End; 2] = [("from", |divider| &mut divider.from), ("to", |divider| &mut divider.to)];

pub(super) fn dividers(ui: &mut Ui, context: &mut WindowContext<'_>, on: usize) {
    let (surface, words) = (&context.job.surfaces[on], context.words);
    for index in 0..surface.dividers.len() {
        ui.push_id(index, |ui| divider(ui, context, At(on, index)));
        ui.separator();
    }
    if ui.button(words.text("boards-add-divider")).clicked() {
        let words = words.clone();
        context.edit("boards-add-divider", move |job| {
            if let Some(surface) = job.surfaces.get_mut(on) {
                surface.add_divider(divider_name(&words, surface.dividers.len()));
            }
        });
    }
}

fn divider(ui: &mut Ui, context: &mut WindowContext<'_>, at: At) {
    let (words, At(on, index)) = (context.words, at);
    let divider = &context.job.surfaces[on].dividers[index];
    ui.horizontal_wrapped(|ui| {
        let label = fields::DIVIDER_NAME.label(words);
        context.reach(ui, &fields::DIVIDER_NAME, at, None);
        if let Some(name) = text_entry(ui, &label, &divider.name, NAME_WIDTH) {
            edit(context, "field-divider-name", at, move |divider| divider.name = name);
        }
        let kinds = DividerKind::ALL.map(|kind| (kind, kind.say(words)));
        let label = fields::DIVIDER_KIND.label(words);
        context.reach(ui, &fields::DIVIDER_KIND, at, None);
        if let Some(kind) = choose(ui, &label, divider.kind, &kinds) {
            edit(context, "field-divider-kind", at, move |divider| divider.kind = kind);
        }
        let said = say!(words, "boards-remove-divider", name = &divider.name);
        if Icon::Remove.button(ui, &said, true).clicked() {
            context.edit("undo-remove-divider", move |job| {
                if let Some(surface) = job.surfaces.get_mut(on)
                    && index < surface.dividers.len()
                {
                    surface.dividers.remove(index);
                }
            });
        }
    });
    for field in [&fields::DIVIDER_NAME, &fields::DIVIDER_KIND] {
        context.field_problems(ui, field, at);
    }
    Grid::new("ends").num_columns(3).show(ui, |ui| {
        let mut divider = divider.clone();
        for (number, (end, point)) in ENDS.into_iter().enumerate() {
            ui.label(say!(words, "boards-divider-end", end = Arg::Id(end)));
            let right = say!(words, "boards-divider-end-right", end = Arg::Id(end));
            let up = say!(words, "boards-divider-end-up", end = Arg::Id(end));
            let now = *point(&mut divider);
            if let Some(moved) =
                point_entry(ui, context, (&fields::DIVIDER, at, number + 1), now, [&right, &up])
            {
                edit(context, "field-divider", at, move |divider| *point(divider) = moved);
            }
            ui.end_row();
        }
    });
    Grid::new("width").num_columns(2).show(ui, |ui| context.field(ui, &fields::DIVIDER_WIDTH, at));
    // Under the width, which may be what is wrong.
    context.field_problems(ui, &fields::DIVIDER, at);
}

fn edit(
    context: &mut WindowContext<'_>,
    step: &'static str,
    At(on, index): At,
    change: impl FnOnce(&mut Divider) + 'static,
) {
    context.edit(step, move |job| {
        if let Some(divider) = job.surfaces.get_mut(on).and_then(|surface| surface.dividers.get_mut(index)) {
            change(divider);
        }
    });
}
