//! The delivery, how its stack lies, and its readings, typed one after the other.

use eframe::egui::{Button, Color32, Grid, Id, Key, RichText, Ui, vec2};
use jiff::civil::Date;

use super::boards::choice;
use super::day::{date_cell, date_row};
use crate::app::context::WindowContext;
use crate::app::entry::{Entered, entry_for, select_all, text_entry};
use crate::app::icon::Icon;
use crate::app::theme::Palette;
use crate::app::widgets::columns;
use crate::job::fields::{self, At, Each, Field};
use crate::measure::{Moisture, Quantity, Temperature, Units, YearMeant};
use crate::ready::{BoardReading, Kept, NextInstall, Piling, Verdict};
use crate::survey::MeterSetting;
use crate::words::{Say as _, say};

/// Widths of the columns, in points: all of them fit half of a small screen.
const BOARD_WIDTH: f32 = 66.0;
const READING_WIDTH: f32 = 54.0;
const WOOD_WIDTH: f32 = 48.0;
const PINS_WIDTH: f32 = 64.0;
const DATE_WIDTH: f32 = 80.0;

/// The delivery, its stack and its readings.
pub(super) fn gate(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (job, words) = (context.job, context.words);
    let Some(next) = &job.next_install else { return };
    Grid::new("delivery").num_columns(2).show(ui, |ui| {
        let year = YearMeant::NearestTo(job.visited);
        date_row(ui, context, &fields::DELIVERY_DATE, next.delivered, year, |next, date| {
            next.delivered = date;
        });
        context.line(ui, &fields::SUPPLIER, &next.supplier, |job, name| {
            if let Some(next) = &mut job.next_install {
                next.supplier = name;
            }
        });
        context.field(ui, &fields::PROMISED, At::ONCE);
        let pilings = Piling::ALL.map(|piling| (piling, piling.say(words)));
        choice(ui, context, &fields::PILING, next.stack.piling, &pilings, |next, piling| {
            next.stack.piling = piling;
        });
        let kept = Kept::ALL.map(|kept| (kept, kept.say(words)));
        choice(ui, context, &fields::STACK_KEPT, next.stack.kept, &kept, |next, kept| next.stack.kept = kept);
        let settings = MeterSetting::ALL.map(|setting| (setting, setting.say(words)));
        choice(ui, context, &fields::GATE_SETTING, next.setting, &settings, |next, setting| {
            next.setting = setting;
        });
    });
    readings(ui, context, next);
}

/// The color of a verdict.
pub(super) const fn color(verdict: Verdict, palette: &Palette) -> Color32 {
    match verdict {
        Verdict::Hang => palette.good,
        Verdict::Wait | Verdict::Sort => palette.warn,
        Verdict::SendBack | Verdict::ChangePlan => palette.error,
        Verdict::Measure | Verdict::MeterMore => palette.ink,
    }
}

fn readings(ui: &mut Ui, context: &mut WindowContext<'_>, next: &NextInstall) {
    let words = context.words;
    Grid::new("stack readings").num_columns(6).striped(true).show(ui, |ui| {
        let titles = [
            "next-column-number",
            "next-column-board",
            "next-column-reading",
            context.degrees(),
            "next-column-pins",
            "next-column-date",
        ];
        columns(ui, context.palette, words, &titles);
        for (index, reading) in next.readings.iter().enumerate() {
            row(ui, context, index, reading);
            ui.end_row();
        }
        fresh(ui, context, next);
    });
    for index in 0..next.readings.len() {
        context.entry_problems(ui, Each::Stacked, At::index(index));
    }
    // They stand there from the start: nothing moves when the first board was measured.
    ui.horizontal_wrapped(|ui| {
        let several = next.readings.len() > 1;
        let same = ui.add_enabled(several, Button::new(words.text("next-same")));
        if same.on_hover_text(words.text("next-same.hint")).clicked() {
            context.edit("next-same", same_for_all);
        }
        let today = jiff::ZonedDateTime::now().date();
        let later = fresh_day(ui, next) != Some(today) && !next.readings.is_empty();
        let start = ui.add_enabled(later, Button::new(words.text("next-today")));
        if start.on_hover_text(words.text("next-today.hint")).clicked() {
            ui.data_mut(|data| data.insert_temp(fresh_id().with("day"), (next.readings.len(), today)));
            ui.memory_mut(|memory| memory.request_focus(fresh_id()));
        }
    });
}

/// The field for the next board: one for all boards to come, so that it keeps the keyboard.
fn fresh_id() -> Id {
    Id::unique("next stack reading")
}

/// The day of the next reading: that of the last one, or the day on which a new round was begun since.
fn fresh_day(ui: &Ui, next: &NextInstall) -> Option<Date> {
    let begun: Option<(usize, Date)> = ui.data(|data| data.get_temp(fresh_id().with("day")));
    match begun {
        Some((from, day)) if from == next.readings.len() => Some(day),
        _ => next.readings.last().and_then(|reading| reading.date),
    }
}

/// Gives all readings of the first one's day its wood temperature and pin depth.
fn same_for_all(job: &mut crate::job::Job) {
    let Some(next) = &mut job.next_install else { return };
    let Some(first) = next.readings.first().cloned() else { return };
    for reading in next.readings.iter_mut().filter(|reading| reading.date == first.date) {
        (reading.wood, reading.pins) = (first.wood, first.pins);
    }
}

fn row(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize, reading: &BoardReading) {
    let (words, number, at) = (context.words, index + 1, At::index(index));
    ui.label(number.to_string());
    let said = say!(words, "next-reading-board", number = number);
    context.reach(ui, &fields::STACK_BOARD, at, None);
    if let Some(board) = text_entry(ui, &said, &reading.board, BOARD_WIDTH) {
        edit(context, "field-stack-board", index, move |reading| reading.board = board);
    }
    let said = say!(words, "next-reading-reading", number = number);
    moisture(ui, context, index, reading, &said);
    let said = say!(words, "next-reading-wood", number = number);
    figure(ui, context, (&fields::STACK_WOOD, at), &said, WOOD_WIDTH);
    let said = say!(words, "next-reading-pins", number = number);
    figure(ui, context, (&fields::PIN_DEPTH, at), &said, PINS_WIDTH);
    let said = say!(words, "next-reading-date", number = number);
    context.reach(ui, &fields::STACK_DATE, at, None);
    let near = YearMeant::NearestTo(context.job.visited);
    if let Some(date) = date_cell(ui, context, &said, reading.date, DATE_WIDTH, near) {
        edit(context, "field-stack-date", index, move |reading| reading.date = date);
    }
    if Icon::Remove.button(ui, &say!(words, "next-reading-remove", number = number), true).clicked() {
        context.edit("next-undo-remove", move |job| {
            if let Some(next) = job.next_install.as_mut().filter(|next| index < next.readings.len()) {
                next.readings.remove(index);
            }
        });
    }
}

/// A figure of a reading in a narrow column.
fn figure(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    (field, at): (&'static Field, At),
    name: &str,
    width: f32,
) {
    let Some(figure) = field.figure() else { return };
    let shown =
        (figure.read)(context.job, at).map_or_else(String::new, |now| now.entry_text(context.units()));
    context.reach(ui, field, at, None);
    let typed = crate::app::entry::entry(ui, name, &shown, width, |text| context.read_figure(field, text));
    if let Some(value) = typed {
        context.edit(format!("field-{}", field.id), move |job| (figure.write)(job, at, value));
    }
}

/// What the meter showed for a board. Enter goes on to the next board; what can't be leaves no old reading
/// behind that counts.
fn moisture(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize, reading: &BoardReading, name: &str) {
    let shown =
        reading.reading.map_or_else(String::new, |now| Quantity::Moisture(now).entry_text(context.units()));
    context.reach(ui, &fields::STACK_READING, At::index(index), None);
    let id = reading_id(index);
    let field = entry_for(ui, id, id, name, &shown, READING_WIDTH, |text| read_moisture(text, context));
    if field.refused && reading.reading.is_some() {
        edit(context, "field-stack-reading", index, |reading| reading.reading = None);
    }
    stay_if_refused(ui, &field);
    if let Some(value) = field.value {
        edit(context, "field-stack-reading", index, move |reading| reading.reading = value);
    }
    if field.response.lost_focus() && !field.refused && ui.input(|input| input.key_pressed(Key::Enter)) {
        let last = context.job.next_install.as_ref().map_or(0, |next| next.readings.len());
        let to = if index + 1 < last { reading_id(index + 1) } else { fresh_id() };
        ui.memory_mut(|memory| memory.request_focus(to));
    }
}

fn reading_id(index: usize) -> Id {
    Id::unique(("stack reading", index))
}

/// What was just found unreadable keeps the keyboard once, so that its reason stays in sight; a second Tab goes on.
pub(super) fn stay_if_refused<T>(ui: &Ui, field: &Entered<T>) {
    let left_by_key = ui.input(|input| input.key_pressed(Key::Tab) || input.key_pressed(Key::Enter));
    if field.refused && field.begun && left_by_key {
        field.response.request_focus();
    }
}

fn edit(
    context: &mut WindowContext<'_>,
    step: &'static str,
    index: usize,
    change: impl FnOnce(&mut BoardReading) + 'static,
) {
    context.edit(step, move |job| {
        if let Some(reading) = job.next_install.as_mut().and_then(|next| next.readings.get_mut(index)) {
            change(reading);
        }
    });
}

/// The row for the next board: Enter takes the reading, with temperature and pins of the one before, and stays
/// for the next, in sight.
fn fresh(ui: &mut Ui, context: &mut WindowContext<'_>, next: &NextInstall) {
    let words = context.words;
    let mut like = next.readings.last().cloned().unwrap_or_else(|| first_like(context.units()));
    like.date = fresh_day(ui, next);
    ui.label((next.readings.len() + 1).to_string());
    ui.label("");
    let id = fresh_id();
    let slot = id.with(next.readings.len());
    let field = entry_for(ui, id, slot, &words.text("next-reading-fresh"), "", READING_WIDTH, |text| {
        read_moisture(text, context)
    });
    let left = field.response.lost_focus();
    let reading = field.value.flatten();
    // Tab goes on to the next board as Enter does, if there is a reading to go on from.
    let tabbed = reading.is_some() && ui.input(|input| input.key_pressed(Key::Tab));
    let entered = left && (tabbed || ui.input(|input| input.key_pressed(Key::Enter)));
    let (wood, pins, date) = (like.wood, like.pins, like.date);
    if let Some(reading) = reading {
        context.edit("next-reading-add", move |job| {
            if let Some(next) = &mut job.next_install {
                next.readings.push(BoardReading { board: String::new(), reading: Some(reading), ..like });
            }
        });
    }
    stay_if_refused(ui, &field);
    if entered {
        field.response.request_focus();
        if !field.begun || !field.refused {
            select_all(ui.ctx(), id, &" ".repeat(64));
        }
    }
    // A row more moves the field down: it stays in sight, with what stands under it.
    let rows: usize = ui.data(|data| data.get_temp(id.with("rows"))).unwrap_or(next.readings.len());
    ui.data_mut(|data| data.insert_temp(id.with("rows"), next.readings.len()));
    if rows != next.readings.len() && field.response.has_focus() {
        ui.scroll_to_rect(field.response.rect.expand2(vec2(0.0, 48.0)), None);
    }
    let soft = context.palette.soft;
    let quiet = |ui: &mut Ui, text: String| ui.label(RichText::new(text).color(soft));
    let units = context.units();
    quiet(ui, Quantity::Temperature(wood).entry_text(units));
    quiet(ui, Quantity::Length(pins).entry_text(units));
    quiet(ui, date.map_or_else(String::new, |date| words.figures().date(date)));
    ui.end_row();
}

/// A board before any was measured: the wood at a round figure near 70 °F.
fn first_like(units: Units) -> BoardReading {
    let wood = match units {
        Units::Inches => Temperature::fahrenheit(70.0),
        Units::Millimeters => Temperature::celsius(21.0),
    };
    BoardReading { wood, ..BoardReading::default() }
}

/// Reads what a meter shows; nothing where nothing was typed.
fn read_moisture(text: &str, context: &WindowContext<'_>) -> Result<Option<Moisture>, String> {
    let read = context.read_figure(&fields::STACK_READING, text)?;
    Ok(match read {
        Some(Quantity::Moisture(moisture)) => Some(moisture),
        _ => None,
    })
}
