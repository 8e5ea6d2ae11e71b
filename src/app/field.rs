//! A figure of the job as a field of the window: label, entry and problems, all by the table of fields.

use eframe::egui::Ui;

use super::context::WindowContext;
use super::entry::entry;
use super::widgets::term;
use crate::job::Job;
use crate::job::fields::{At, Each, Field, Figure};
use crate::measure::{Quantity, Units};
use crate::words::{Words, say};

/// Width of a field for a bare figure, and of one for a length, in points.
const FIGURE_WIDTH: f32 = 64.0;
const LENGTH_WIDTH: f32 = 90.0;

impl WindowContext<'_> {
    /// A row of a two-column grid: the label of a field, its entry, and what is wrong with it.
    pub fn field(&mut self, ui: &mut Ui, field: &'static Field, at: At) {
        let label = field.label(self.words);
        term(ui, &label, &field.hint(self.words).unwrap_or_default());
        ui.vertical(|ui| {
            ui.horizontal(|ui| {
                self.figure(ui, field, at, &label);
                if let Some(figure) = field.figure() {
                    ui.label(self.words.figures().unit(figure.low));
                }
            });
            self.field_problems(ui, field, at);
        });
        ui.end_row();
    }

    /// What is wrong with an entry of a field.
    pub fn field_problems(&self, ui: &mut Ui, field: &Field, at: At) {
        self.problems(ui, |place| place.is(field, at));
    }

    /// What is wrong with any field of one entry of a list, such as a gap reading.
    pub fn entry_problems(&self, ui: &mut Ui, each: Each, at: At) {
        self.problems(ui, |place| {
            place.field().is_some_and(|(field, here)| field.each == each && here == at)
        });
    }

    /// The entry alone, by the name a screen reader says.
    pub fn figure(&mut self, ui: &mut Ui, field: &'static Field, at: At, name: &str) {
        let Some(figure) = field.figure() else { return };
        let units = self.units();
        let now = (figure.read)(self.job, at);
        let shown = now.map_or_else(String::new, |quantity| quantity.entry_text(units));
        let width = match figure.low {
            Quantity::Length(_) | Quantity::RoomLength(_) => LENGTH_WIDTH,
            _ => FIGURE_WIDTH,
        };
        let words = self.words;
        if let Some(value) = entry(ui, name, &shown, width, |text| read(figure, text, units, words)) {
            self.edit(format!("field-{}", field.id), move |job: &mut Job| (figure.write)(job, at, value));
        }
    }
}

/// Reads what was typed for a figure, within its range.
fn read(figure: &Figure, text: &str, units: Units, words: &Words) -> Result<Option<Quantity>, String> {
    if figure.optional && text.trim().is_empty() {
        return Ok(None);
    }
    let quantity = figure.low.read_alike(text, units).map_err(|error| error.to_string())?;
    if figure.holds(quantity) {
        return Ok(Some(quantity));
    }
    let typed = text.trim().to_owned();
    Err(say!(words, "entry-out-of-range", text = &typed, low = figure.low, high = figure.high))
}
