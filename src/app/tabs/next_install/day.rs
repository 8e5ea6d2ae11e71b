//! Days of a delivery: one without its year is the one that is meant, and what can't be read keeps the keyboard.

use eframe::egui::Ui;
use jiff::civil::Date;

use super::gate::stay_if_refused;
use crate::app::context::WindowContext;
use crate::app::entry::entry_for;
use crate::job::fields::Field;
use crate::measure::{YearMeant, parse_day};
use crate::ready::NextInstall;
use crate::words::Say as _;

/// Width of a date in a form, in points.
const WIDTH: f32 = 120.0;

/// A row with a day that may be left empty.
pub(super) fn date_row(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    field: &'static Field,
    now: Option<Date>,
    year: YearMeant,
    set: impl FnOnce(&mut NextInstall, Option<Date>) + 'static,
) {
    context.row(ui, field, |context, ui, label| {
        if let Some(date) = date_cell(ui, context, label, (now, None), WIDTH, year) {
            context.edit(format!("field-{}", field.id), move |job| {
                if let Some(next) = &mut job.next_install {
                    set(next, date);
                }
            });
        }
    });
}

/// The entry alone: the day that was typed, and the one that counts while none is.
pub(super) fn date_cell(
    ui: &mut Ui,
    context: &WindowContext<'_>,
    name: &str,
    (now, counts): (Option<Date>, Option<Date>),
    width: f32,
    year: YearMeant,
) -> Option<Option<Date>> {
    let (units, words) = (context.units(), context.words);
    let written = |date: Option<Date>| date.map_or_else(String::new, |date| words.figures().date(date));
    let (shown, hint) = (written(now), written(counts));
    let id = ui.make_persistent_id(("day", name));
    let field = entry_for(ui, (id, id), name, (&shown, &hint), width, |text| match text.trim() {
        "" => Ok(None),
        text => parse_day(text, units, year).map(Some).map_err(|error| error.say(words)),
    });
    stay_if_refused(ui, &field);
    field.value
}
