//! A figure of the job as a field of the window: label, entry and problems, all by the table of fields.

use eframe::egui::{ComboBox, Ui};
use jiff::civil::Date;

use super::context::WindowContext;
use super::entry::{entry, text_entry};
use super::lead;
use super::widgets::{closes, names, term};
use crate::job::fields::{At, Each, Field, Figure, Figures, Item, Mending};
use crate::job::{Job, Place};
use crate::measure::{Quantity, Units, parse_date};
use crate::named::{Named, position};
use crate::words::{Say as _, Words, say};

/// Width of a field for a bare figure, and of one for a length, in points.
const FIGURE_WIDTH: f32 = 64.0;
const LENGTH_WIDTH: f32 = 90.0;
/// Width of a drop-down, and of a line of text.
pub(super) const PICK_WIDTH: f32 = 230.0;
const LINE_WIDTH: f32 = 270.0;
/// Width of a date.
const DATE_WIDTH: f32 = 120.0;

impl WindowContext<'_> {
    /// A row of a two-column grid: the label of a field, its entry, and what is wrong with it.
    pub fn field(&mut self, ui: &mut Ui, field: &'static Field, at: At) {
        let label = field.label(self.words);
        term(ui, &label, &field.hint(self.words).unwrap_or_default());
        ui.vertical(|ui| {
            ui.horizontal(|ui| {
                self.figure(ui, field, at, &label);
                if let Some(figure) = field.figure() {
                    // Beside an empty field stands the unit of many.
                    let now = (figure.read)(self.job, at).unwrap_or(figure.high);
                    ui.label(self.words.figures().unit(now));
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
        if let Some(value) = self.typed_figure(ui, field, at, name) {
            self.edit(format!("field-{}", field.id), move |job: &mut Job| (figure.write)(job, at, value));
        }
    }

    /// The entry alone, for whoever writes what was typed elsewhere than `at`. Comes to what was typed: a
    /// figure, or `None` in it where the entry was emptied.
    pub fn typed_figure(
        &self,
        ui: &mut Ui,
        field: &'static Field,
        at: At,
        name: &str,
    ) -> Option<Option<Quantity>> {
        let figure = field.figure()?;
        let (units, words) = (self.units(), self.words);
        let now = (figure.read)(self.job, at);
        let shown = now.map_or_else(String::new, |quantity| quantity.entry_text(units));
        self.reach(ui, field, at, None);
        entry(ui, name, &shown, entry_width(figure.low), |text| read(figure, text, units, words))
    }

    /// What was typed for a field whose entry stands elsewhere: a figure, or `None` where nothing was typed.
    pub fn read_figure(&self, field: &Field, text: &str) -> Result<Option<Quantity>, String> {
        field.figure().map_or(Ok(None), |figure| read(figure, text, self.units(), self.words))
    }

    /// An entry of the list of figures at `at`, such as the minutes of one task, by the name a screen reader
    /// says; `item` is what in the list it is of, and `now` its figure. Comes to what was typed: a figure, or `None` in it where the entry was emptied.
    /// Only where a figure that cannot be is left out may it be emptied.
    pub fn listed_figure(
        &self,
        ui: &mut Ui,
        field: &'static Field,
        (at, item): (At, &Item),
        now: Option<Quantity>,
        name: &str,
    ) -> Option<Option<Quantity>> {
        let figures = field.figures()?;
        let (units, words) = (self.units(), self.words);
        let shown = now.map_or_else(String::new, |quantity| quantity.entry_text(units));
        self.reach(ui, field, at, Some(item));
        entry(ui, name, &shown, entry_width(figures.low), |text| match text.trim() {
            "" if figures.mending == Mending::LeaveOut => Ok(None),
            text => read_listed(figures, text, units, words).map(Some),
        })
    }

    /// A row with a choice of a few, each with the message of its name.
    pub fn choice<T: Copy + PartialEq + 'static>(
        &mut self,
        ui: &mut Ui,
        field: &'static Field,
        now: T,
        all: &[(T, &'static str)],
        set: fn(&mut Job, T),
    ) {
        self.row(ui, field, |context, ui, _| {
            ui.horizontal_wrapped(|ui| {
                for &(choice, message) in all {
                    let radio = ui.radio(choice == now, context.words.text(message));
                    lead::take_focus(&radio);
                    if radio.clicked() && choice != now {
                        context.edit(format!("field-{}", field.id), move |job| set(job, choice));
                    }
                }
            });
        });
    }

    /// A row with a drop-down of entries of the catalog: shows their names, sets their ids. `now` is what
    /// the job calls the present one.
    pub fn pick<T: Named>(
        &mut self,
        ui: &mut Ui,
        field: &'static Field,
        now: &str,
        entries: &[T],
        set: impl Fn(&mut Job, String) + Copy + 'static,
    ) {
        self.row(ui, field, |context, ui, label| {
            let combo = ComboBox::from_id_salt(field.id)
                .selected_text(match now {
                    "" => context.words.text("list-choose"),
                    now => context.words.name_of(entries, now),
                })
                .width(PICK_WIDTH.min(ui.available_width()))
                .close_behavior(closes(entries.len()))
                .truncate();
            let present = position(entries, now);
            let response = combo.show_ui(ui, |ui| {
                let chosen = names(ui, context.words, entries, present);
                if let Some(found) = chosen.filter(|found| present != Some(found.place)) {
                    let key = entries[found.place].key().to_owned();
                    context.edit(format!("field-{}", field.id), move |job| set(job, key));
                }
            });
            lead::take_focus(&response.response.accessible_name(label));
        });
    }

    /// A row with a line of text.
    pub fn line(
        &mut self,
        ui: &mut Ui,
        field: &'static Field,
        now: &str,
        set: impl FnOnce(&mut Job, String) + 'static,
    ) {
        self.row(ui, field, |context, ui, label| {
            if let Some(text) = text_entry(ui, label, now, LINE_WIDTH.min(ui.available_width())) {
                context.edit(format!("field-{}", field.id), move |job| set(job, text));
            }
        });
    }

    /// A row with a date that may be left empty; `check` refuses days that cannot be, with the reason.
    pub fn date(
        &mut self,
        ui: &mut Ui,
        field: &'static Field,
        now: Option<Date>,
        check: impl Fn(Date) -> Result<Date, String>,
        set: impl FnOnce(&mut Job, Option<Date>) + 'static,
    ) {
        self.row(ui, field, |context, ui, label| {
            if let Some(date) = context.date_entry(ui, label, now, DATE_WIDTH, check) {
                context.edit(format!("field-{}", field.id), move |job| set(job, date));
            }
        });
    }

    /// An entry for a date that may be left empty, by the name a screen reader says.
    pub fn date_entry(
        &self,
        ui: &mut Ui,
        name: &str,
        now: Option<Date>,
        width: f32,
        check: impl Fn(Date) -> Result<Date, String>,
    ) -> Option<Option<Date>> {
        let (units, words) = (self.units(), self.words);
        let shown = now.map_or_else(String::new, |date| words.figures().date(date));
        entry(ui, name, &shown, width, |text| match text.trim() {
            "" => Ok(None),
            text => parse_date(text, units).map_err(|error| error.say(words)).and_then(check).map(Some),
        })
    }

    /// A row of a two-column grid: a field's label, what `add` draws, and what is wrong with the field.
    pub fn row(&mut self, ui: &mut Ui, field: &'static Field, add: impl FnOnce(&mut Self, &mut Ui, &str)) {
        self.row_where(ui, field, |place| place.field().is_some_and(|(of, _)| of == field), add);
    }

    /// [`Self::row`] for one entry of a field that stands more than once.
    pub fn row_at(
        &mut self,
        ui: &mut Ui,
        field: &'static Field,
        at: At,
        add: impl FnOnce(&mut Self, &mut Ui, &str),
    ) {
        self.row_where(ui, field, |place| place.is(field, at), add);
    }

    /// [`Self::row`] with what is wrong at the places for which `here` says so.
    pub fn row_where(
        &mut self,
        ui: &mut Ui,
        field: &'static Field,
        here: impl Fn(&Place) -> bool,
        add: impl FnOnce(&mut Self, &mut Ui, &str),
    ) {
        let label = field.label(self.words);
        term(ui, &label, &field.hint(self.words).unwrap_or_default());
        ui.vertical(|ui| {
            lead::reach(ui.ctx(), field, None, &here);
            add(self, ui, &label);
            lead::pass_by(ui.ctx());
            self.problems(ui, here);
        });
        ui.end_row();
    }
}

/// The width of an entry, by what it takes.
const fn entry_width(like: Quantity) -> f32 {
    match like {
        Quantity::Length(_) | Quantity::RoomLength(_) | Quantity::TimeOfDay(_) => LENGTH_WIDTH,
        _ => FIGURE_WIDTH,
    }
}

/// Reads what was typed for a figure of a list, within its range.
pub(super) fn read_listed(
    figures: &Figures,
    text: &str,
    units: Units,
    words: &Words,
) -> Result<Quantity, String> {
    let quantity = figures.low.read_alike(text, units).map_err(|error| error.say(words))?;
    if figures.holds(quantity) {
        return Ok(quantity);
    }
    let typed = text.trim().to_owned();
    Err(say!(words, "entry-out-of-range", text = &typed, low = figures.low, high = figures.high))
}

/// Reads what was typed for a figure, within its range.
fn read(figure: &Figure, text: &str, units: Units, words: &Words) -> Result<Option<Quantity>, String> {
    if figure.optional && text.trim().is_empty() {
        return Ok(None);
    }
    let quantity = figure.low.read_alike(text, units).map_err(|error| error.say(words))?;
    if figure.holds(quantity) {
        return Ok(Some(quantity));
    }
    let typed = text.trim().to_owned();
    Err(say!(words, "entry-out-of-range", text = &typed, low = figure.low, high = figure.high))
}
