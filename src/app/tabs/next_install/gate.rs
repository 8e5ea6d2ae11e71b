//! The gate: the delivery and its readings, typed one after the other.

use eframe::egui::{Color32, Grid, Id, Key, RichText, Ui};

use super::boards::choice;
use crate::app::context::WindowContext;
use crate::app::entry::{entry_for, select_all, text_entry};
use crate::app::icon::Icon;
use crate::app::theme::Palette;
use crate::app::widgets::columns;
use crate::job::fields::{self, At, Each};
use crate::measure::{Moisture, Quantity};
use crate::ready::{BoardReading, NextInstall, Verdict};
use crate::survey::MeterSetting;
use crate::words::{Say as _, say};

/// Width of the name of a board, and of a reading, in points.
const BOARD_WIDTH: f32 = 92.0;
const READING_WIDTH: f32 = 64.0;
const DATE_WIDTH: f32 = 92.0;

/// The delivery and its readings.
pub(super) fn gate(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (job, words) = (context.job, context.words);
    let Some(next) = &job.next_install else { return };
    Grid::new("delivery").num_columns(2).show(ui, |ui| {
        context.date(ui, &fields::DELIVERY_DATE, next.delivered, Ok, |job, date| {
            job.next_install.iter_mut().for_each(|next| next.delivered = date);
        });
        context.line(ui, &fields::SUPPLIER, &next.supplier, |job, name| {
            if let Some(next) = &mut job.next_install {
                next.supplier = name;
            }
        });
        context.field(ui, &fields::PROMISED, At::ONCE);
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
        Verdict::Wait => palette.warn,
        Verdict::SendBack | Verdict::ChangePlan => palette.error,
        Verdict::Measure => palette.ink,
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
    ui.horizontal_wrapped(|ui| {
        if next.readings.len() > 1 {
            let same = ui.button(words.text("next-same")).on_hover_text(words.text("next-same.hint"));
            if same.clicked() {
                context.edit("next-same", same_for_all);
            }
        }
        if !next.readings.is_empty() && ui.button(words.text("next-today")).clicked() {
            let today = jiff::ZonedDateTime::now().date();
            context.edit("next-today", move |job| {
                if let Some(next) = &mut job.next_install {
                    let like = next.readings.last().cloned().unwrap_or_default();
                    let date = Some(today);
                    next.readings.push(BoardReading { board: String::new(), reading: None, date, ..like });
                }
            });
        }
    });
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
    context.figure(ui, &fields::STACK_READING, at, &said);
    let said = say!(words, "next-reading-wood", number = number);
    context.figure(ui, &fields::STACK_WOOD, at, &said);
    let said = say!(words, "next-reading-pins", number = number);
    context.figure(ui, &fields::PIN_DEPTH, at, &said);
    let said = say!(words, "next-reading-date", number = number);
    context.reach(ui, &fields::STACK_DATE, at, None);
    if let Some(date) = context.date_entry(ui, &said, reading.date, DATE_WIDTH, Ok) {
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

/// The row for the next board: Enter takes the reading, with temperature, pins and day of the one before, and stays for the next.
fn fresh(ui: &mut Ui, context: &mut WindowContext<'_>, next: &NextInstall) {
    let words = context.words;
    let like = next.readings.last().cloned().unwrap_or_default();
    ui.label((next.readings.len() + 1).to_string());
    ui.label("");
    // One field for all boards to come, so that it keeps the keyboard.
    let id = Id::unique("next stack reading");
    let slot = id.with(next.readings.len());
    let field = entry_for(ui, id, slot, &words.text("next-reading-fresh"), "", READING_WIDTH, |text| {
        read_moisture(text, context)
    });
    let entered = field.response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
    if let Some(reading) = field.value.flatten() {
        context.edit("next-reading-add", move |job| {
            if let Some(next) = &mut job.next_install {
                next.readings.push(BoardReading { board: String::new(), reading: Some(reading), ..like });
            }
        });
    }
    if entered {
        field.response.request_focus();
        if !field.begun || !field.refused {
            select_all(ui.ctx(), id, &" ".repeat(64));
        }
    }
    let soft = context.palette.soft;
    let quiet = |ui: &mut Ui, text: String| ui.label(RichText::new(text).color(soft));
    quiet(ui, words.figures().temperature(like.wood));
    quiet(ui, words.figures().length(like.pins));
    quiet(ui, like.date.map_or_else(String::new, |date| context.words.figures().date(date)));
    ui.end_row();
}

/// Reads what a meter shows; nothing where nothing was typed.
fn read_moisture(text: &str, context: &WindowContext<'_>) -> Result<Option<Moisture>, String> {
    let read = context.read_figure(&fields::STACK_READING, text)?;
    Ok(match read {
        Some(Quantity::Moisture(moisture)) => Some(moisture),
        _ => None,
    })
}
