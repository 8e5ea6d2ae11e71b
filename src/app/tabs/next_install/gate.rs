//! The delivery, how its stack lies, and its readings, typed one after the other.

use eframe::egui::{Button, Color32, Grid, Id, Key, RichText, Ui, vec2};
use jiff::civil::Date;

use super::boards::choice;
use super::day::{date_cell, date_row};
use crate::app::context::WindowContext;
use crate::app::entry::{Entered, entry_for, select_all, text_entry};
use crate::app::fold::fold;
use crate::app::icon::Icon;
use crate::app::theme::Palette;
use crate::app::widgets::{columns, remark};
use crate::job::fields::{self, At, Each, Field};
use crate::measure::{Length, Moisture, Quantity, Units, YearMeant};
use crate::ready::{BoardReading, Kept, NextInstall, Piling, USUAL_READINGS, Verdict};
use crate::survey::MeterSetting;
use crate::words::{Say as _, next_install as words_of, say};

/// Widths of the columns, in points: all of them fit half of a small screen.
const BOARD_WIDTH: f32 = 44.0;
const READING_WIDTH: f32 = 62.0;
const WOOD_WIDTH: f32 = 48.0;
const PINS_WIDTH: f32 = 70.0;
const DATE_WIDTH: f32 = 106.0;

/// The delivery, its stack and its readings.
pub(super) fn gate(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (job, words) = (context.job, context.words);
    let Some(next) = &job.next_install else { return };
    Grid::new("delivery").num_columns(2).show(ui, |ui| {
        let year = YearMeant::NearestTo(job.visited);
        date_row(ui, context, &fields::DELIVERY_DATE, next.delivered, year, |next, date| {
            next.delivered = date;
        });
        let pilings = Piling::ALL.map(|piling| (piling, piling.say(words)));
        choice(ui, context, &fields::PILING, next.stack.piling, &pilings, |next, piling| {
            next.stack.piling = piling;
        });
        date_row(ui, context, &fields::STACK_OPENED, next.opened, year, |next, date| next.opened = date);
        let kept = Kept::ALL.map(|kept| (kept, kept.say(words)));
        choice(ui, context, &fields::STACK_KEPT, next.stack.kept, &kept, |next, kept| next.stack.kept = kept);
    });
    readings(ui, context, next);
    remark(ui, context.palette, words_of::assumed_of_delivery(next, words));
    fold(ui, "next-gate-more", words.text("next-gate-more"), false, |ui| more(ui, context, next));
}

/// What is usually as it is assumed, and who delivered.
fn more(ui: &mut Ui, context: &mut WindowContext<'_>, next: &NextInstall) {
    Grid::new("more of delivery").num_columns(2).show(ui, |ui| {
        let settings = MeterSetting::ALL.map(|setting| (setting, setting.say(context.words)));
        choice(ui, context, &fields::GATE_SETTING, next.setting, &settings, |next, setting| {
            next.setting = setting;
        });
        context.field(ui, &fields::PROMISED, At::ONCE);
        context.line(ui, &fields::SUPPLIER, &next.supplier, |job, name| {
            if let Some(next) = &mut job.next_install {
                next.supplier = name;
            }
        });
    });
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
    // Close together, so that the rows fit beside the room on a small screen in longer words too.
    let spacing = vec2(0.5, 1.0) * ui.spacing().item_spacing;
    Grid::new("stack readings").num_columns(6).spacing(spacing).striped(true).show(ui, |ui| {
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
            row(ui, context, next, (index, reading));
            ui.end_row();
        }
        let height = fresh(ui, context, next);
        // Rows of boards still to come: what stands under them stays where it is until they are full.
        for number in next.readings.len() + 2..=USUAL_READINGS as usize {
            ui.label(RichText::new(number.to_string()).color(context.palette.soft));
            ui.allocate_space(vec2(BOARD_WIDTH, height));
            ui.end_row();
        }
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
        days_of_readings(ui, context, next);
    });
}

/// Of which day the readings are that come next, and that the last ones were of the day the boards came.
fn days_of_readings(ui: &mut Ui, context: &mut WindowContext<'_>, next: &NextInstall) {
    let (words, today, visited) = (context.words, today(), context.job.visited);
    let (came, day) = (next.came(visited), fresh_day(ui, next, visited));
    let start = ui.add_enabled(day != today && today >= came, Button::new(words.text("next-today")));
    if start.on_hover_text(words.text("next-today.hint")).clicked() {
        set_fresh_day(ui, next.readings.len(), today);
        ui.memory_mut(|memory| memory.request_focus(fresh_id()));
    }
    let last = next.readings.last().map(|reading| next.day_of(reading, visited));
    let moves = day != came || last.is_some_and(|last| last != came);
    let at_delivery = ui.add_enabled(moves, Button::new(words.text("next-at-delivery")));
    if at_delivery.on_hover_text(words.text("next-at-delivery.hint")).clicked() {
        set_fresh_day(ui, next.readings.len(), came);
        if last.is_some_and(|last| last != came) {
            context.edit("next-at-delivery", last_round_at_delivery);
        }
    }
}

/// The field for the next board: one for all boards to come, so that it keeps the keyboard.
fn fresh_id() -> Id {
    Id::unique("next stack reading")
}

fn today() -> Date {
    jiff::ZonedDateTime::now().date()
}

/// The day of the next reading: the one that was said for it, or for the reading before it; else today.
fn fresh_day(ui: &Ui, next: &NextInstall, visited: Date) -> Date {
    let said: Option<(usize, Date)> = ui.data(|data| data.get_temp(fresh_id().with("day")));
    match said {
        Some((from, day)) if from == next.readings.len() => day,
        _ => next.day_of_next(visited, today()),
    }
}

/// Says of which day the reading is that comes after so many.
fn set_fresh_day(ui: &Ui, readings: usize, day: Date) {
    ui.data_mut(|data| data.insert_temp(fresh_id().with("day"), (readings, day)));
}

/// Makes the readings of the last one's day readings of the delivery.
fn last_round_at_delivery(job: &mut crate::job::Job) {
    let visited = job.visited;
    let Some(next) = &mut job.next_install else { return };
    let days: Vec<Date> = next.readings.iter().map(|reading| next.day_of(reading, visited)).collect();
    let came = next.came(visited);
    for (reading, day) in next.readings.iter_mut().zip(&days) {
        if Some(day) == days.last() {
            reading.date = Some(came);
        }
    }
}

/// Gives all readings of the first one's day its wood temperature and pin depth.
fn same_for_all(job: &mut crate::job::Job) {
    let visited = job.visited;
    let Some(next) = &mut job.next_install else { return };
    let Some(first) = next.readings.first().cloned() else { return };
    let day = next.day_of(&first, visited);
    let same: Vec<bool> = next.readings.iter().map(|reading| next.day_of(reading, visited) == day).collect();
    for (reading, _) in next.readings.iter_mut().zip(same).filter(|(_, same)| *same) {
        (reading.wood, reading.pins) = (first.wood, first.pins);
    }
}

fn row(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    next: &NextInstall,
    (index, reading): (usize, &BoardReading),
) {
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
    let visited = context.job.visited;
    let (near, counts) = (YearMeant::NearestTo(visited), next.day_of(reading, visited));
    if let Some(date) = date_cell(ui, context, &said, (reading.date, Some(counts)), DATE_WIDTH, near) {
        // The next one is of the day of the last one typed.
        if number == next.readings.len() {
            set_fresh_day(ui, number, date.unwrap_or_else(|| next.came(visited)));
        }
        edit(context, "field-stack-date", index, move |reading| reading.date = date);
    }
    if Icon::Remove.button(ui, &say!(words, "next-reading-remove", number = number), true).clicked() {
        // The next reading is of the day it was of before.
        let day = fresh_day(ui, next, visited);
        set_fresh_day(ui, next.readings.len() - 1, day);
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
    let field =
        entry_for(ui, (id, id), name, (&shown, ""), READING_WIDTH, |text| read_moisture(text, context));
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
/// for the next, in sight. Its height.
fn fresh(ui: &mut Ui, context: &mut WindowContext<'_>, next: &NextInstall) -> f32 {
    let words = context.words;
    let mut like = next.readings.last().cloned().unwrap_or_else(|| first_like(next, context.units()));
    let (visited, count) = (context.job.visited, next.readings.len());
    let day = fresh_day(ui, next, visited);
    like.date = Some(day);
    ui.label((next.readings.len() + 1).to_string());
    ui.label("");
    let id = fresh_id();
    let slot = id.with(next.readings.len());
    let field =
        entry_for(ui, (id, slot), &words.text("next-reading-fresh"), ("", ""), READING_WIDTH, |text| {
            read_moisture(text, context)
        });
    let left = field.response.lost_focus();
    let reading = field.value.flatten();
    // Tab goes on to the next board as Enter does, if there is a reading to go on from.
    let tabbed = reading.is_some() && ui.input(|input| input.key_pressed(Key::Tab));
    let entered = left && (tabbed || ui.input(|input| input.key_pressed(Key::Enter)));
    let (wood, pins) = (like.wood, like.pins);
    if let Some(reading) = reading {
        set_fresh_day(ui, count + 1, day);
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
    let (said, near) = (words.text("next-reading-fresh-date"), YearMeant::NearestTo(visited));
    if let Some(date) = date_cell(ui, context, &said, (Some(day), None), DATE_WIDTH, near) {
        set_fresh_day(ui, count, date.unwrap_or_else(|| next.came(visited)));
    }
    ui.end_row();
    field.response.rect.height()
}

/// A board before any was measured: the wood at a round figure near 70 °F, the pins as deep as the card asks for.
fn first_like(next: &NextInstall, units: Units) -> BoardReading {
    let deep = next.deep_enough();
    let pins = match units {
        Units::Inches => deep,
        // As it is read aloud, and not to the micrometer.
        Units::Millimeters => Length::mm((10.0 * deep.to_mm()).round() / 10.0),
    };
    BoardReading { wood: NextInstall::preset_wood(units), pins, ..BoardReading::default() }
}

/// Reads what a meter shows; nothing where nothing was typed.
fn read_moisture(text: &str, context: &WindowContext<'_>) -> Result<Option<Moisture>, String> {
    let read = context.read_figure(&fields::STACK_READING, text)?;
    Ok(match read {
        Some(Quantity::Moisture(moisture)) => Some(moisture),
        _ => None,
    })
}
