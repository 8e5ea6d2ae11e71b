//! Where the house stands: a town, a ZIP or coordinates, and what its climate is worth.

use eframe::egui::{Grid, TextEdit, Ui, vec2};

use crate::air::places::{self, Place};
use crate::air::{HouseModel, IndoorAir};
use crate::app::context::WindowContext;
use crate::app::entry::entry;
use crate::app::view::PlaceChoices;
use crate::app::widgets::remark;
use crate::job::Job;
use crate::job::fields::{self, At};
use crate::words::{places as words_of, say};

/// Width of the entry of an elevation, in points.
const ROOM_FOR_ELEVATION: f32 = 64.0;
/// Places offered at once.
const OFFERED: usize = 8;

/// The field for the place, and the places to choose from.
pub(super) fn place(ui: &mut Ui, context: &mut WindowContext<'_>, name: &str) {
    Grid::new("place").num_columns(2).show(ui, |ui| {
        field(ui, context, name);
        elevation(ui, context);
    });
    offers(ui, context);
}

/// The field alone, a row of a grid.
pub(super) fn field(ui: &mut Ui, context: &mut WindowContext<'_>, name: &str) {
    let mut typed = None;
    // What was typed stays while it is open which place it means.
    let open = context.view.drafts.places.as_ref().map(|choices| choices.typed.clone());
    let name = open.as_deref().unwrap_or(name);
    context.row(ui, &fields::PLACE, |_, ui, label| {
        typed =
            entry(ui, label, name, 196.0_f32.min(ui.available_width()), |text| Ok(text.trim().to_owned()));
    });
    if let Some(typed) = typed {
        look_up(context, &typed);
    }
}

/// The elevation, a row of a grid: empty until there is a place with coordinates, so that naming one moves nothing.
pub(super) fn elevation(ui: &mut Ui, context: &mut WindowContext<'_>) {
    if context.job.air.site().is_some() {
        context.field(ui, &fields::ELEVATION, At::ONCE);
    } else {
        context.row(ui, &fields::ELEVATION, |_, ui, label| {
            let (mut none, width) = (String::new(), ROOM_FOR_ELEVATION);
            let blank = TextEdit::singleline(&mut none).desired_width(width).min_size(vec2(width, 0.0));
            ui.add_enabled(false, blank).accessible_name(label);
        });
    }
}

/// Where the climate is from.
pub(super) fn provenance(ui: &mut Ui, context: &WindowContext<'_>) {
    if let Some(climate) = context.job.air.site().and_then(|site| site.climate().ok()) {
        for line in words_of::provenance(&climate, context.words) {
            remark(ui, context.palette, line);
        }
    }
}

/// Takes the place that is meant, or offers those that may be.
fn look_up(context: &mut WindowContext<'_>, typed: &str) {
    let words = context.words;
    context.view.drafts.places = match places::find(typed, OFFERED) {
        Ok(matches) => match matches.only() {
            Some(place) => {
                take(context, place);
                None
            }
            None => Some(PlaceChoices {
                typed: typed.to_owned(),
                lead: say!(words, "place-choose", total = matches.total),
                places: matches.places,
            }),
        },
        Err(error) => Some(PlaceChoices {
            typed: typed.to_owned(),
            lead: words_of::not_found(&error, typed, words),
            places: words_of::choices(error),
        }),
    };
}

/// The places to choose from, each a button.
pub(super) fn offers(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some(choices) = context.view.drafts.places.clone() else { return };
    remark(ui, context.palette, choices.lead);
    ui.horizontal_wrapped(|ui| {
        for place in &choices.places {
            if ui.button(words_of::choice(place, context.words)).clicked() {
                take(context, place);
                context.view.drafts.places = None;
            }
        }
    });
}

fn take(context: &mut WindowContext<'_>, place: &Place) {
    let site = place.site(None);
    context.edit("field-place", move |job: &mut Job| {
        let house: HouseModel = job.air.house().cloned().unwrap_or_default();
        job.air = IndoorAir::FromPlace { site, house };
    });
}
