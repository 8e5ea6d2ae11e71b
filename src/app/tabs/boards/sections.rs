//! The sections of a surface: each with one kind of board in one direction.

use eframe::egui::{Grid, Ui};

use super::corners::{Ring, corners};
use super::is_board;
use super::part::part;
use super::spec::{BoardsOf, spec};
use crate::app::context::WindowContext;
use crate::app::entry::text_entry;
use crate::job::Place;
use crate::job::fields::{self, At, Each};
use crate::words::say;

/// Width of a name, in points.
const NAME_WIDTH: f32 = 90.0;

/// The sections of surface `on`; `alike` if all have the same boards.
pub(super) fn sections(ui: &mut Ui, context: &mut WindowContext<'_>, on: usize, alike: bool) {
    let (job, words) = (context.job, context.words);
    for (index, section) in job.surfaces[on].sections.iter().enumerate() {
        let at = At(on, index);
        ui.push_id(index, |ui| {
            let title = say!(words, "boards-section", name = &section.name);
            let here = move |place: &Place| is_of(place, at) && !(alike && is_board(place));
            part(ui, context, "section", &title, false, here, |ui, context| one(ui, context, at, alike));
        });
    }
    if ui.button(words.text("boards-add-section")).clicked() {
        context.edit("boards-add-section", move |job| {
            if let Some(surface) = job.surfaces.get_mut(on) {
                surface.add_section();
            }
        });
    }
}

/// Whether a place is a field of this section.
fn is_of(place: &Place, section: At) -> bool {
    place.field().is_some_and(|(field, at)| field.each == Each::Section && at == section)
}

fn one(ui: &mut Ui, context: &mut WindowContext<'_>, at: At, alike: bool) {
    let (words, At(on, index)) = (context.words, at);
    let section = &context.job.surfaces[on].sections[index];
    Grid::new("section").num_columns(2).show(ui, |ui| {
        context.row_at(ui, &fields::SECTION_NAME, at, |context, ui, label| {
            if let Some(name) = text_entry(ui, label, &section.name, NAME_WIDTH) {
                context.edit("field-section-name", move |job| job.rename_section(on, index, &name));
            }
        });
        context.field(ui, &fields::DIRECTION, at);
        context.field(ui, &fields::STARTER_RIP, at);
    });
    if let Some(region) = &section.region {
        corners(ui, context, &fields::REGION, at, Ring::Section(&section.name), region, move |job| {
            job.surfaces.get_mut(on)?.sections.get_mut(index)?.region.as_mut()
        });
    }
    let title = words.text(if alike { "boards-different-here" } else { "boards-title" });
    let here = move |place: &Place| !alike && is_of(place, at) && is_board(place);
    part(ui, context, "boards", &title, false, here, |ui, context| {
        spec(ui, context, BoardsOf::Section(at), &section.board);
    });
    if ui.button(words.text("boards-remove-section")).clicked() {
        context.edit("boards-remove-section", move |job| {
            if let Some(surface) = job.surfaces.get_mut(on)
                && index < surface.sections.len()
            {
                surface.sections.remove(index);
            }
        });
    }
}
