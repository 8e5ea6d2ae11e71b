//! Weather files and loggers: choosing them, and confirming how a logger's file is read.

use eframe::egui::{ComboBox, Frame, Grid, Label, Margin, RichText, ScrollArea, Ui};

use crate::air::{DateOrder, LoggerFormat, LoggerGuess, Room};
use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::pick::Purpose;
use crate::app::widgets::remark;
use crate::words::{Say as _, Words, say};

/// Buttons for both kinds of file, what was odd about the last, and the logger to be confirmed.
pub(super) fn air_files(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    ui.horizontal_wrapped(|ui| {
        let weather = ui.button(words.text("air-weather")).on_hover_text(words.text("air-weather.hint"));
        if weather.clicked() {
            context.push(Command::Pick(Purpose::Weather));
        }
        let logger = ui.button(words.text("air-logger")).on_hover_text(words.text("air-logger.hint"));
        if logger.clicked() {
            context.push(Command::Pick(Purpose::Logger));
        }
        if let Some(logged) = &context.job.logged {
            let days = logged.days.len();
            ui.label(say!(words, "air-logged", days = days, name = &logged.name));
            if ui.button(words.text("air-logger-remove")).clicked() {
                context.edit("air-logger-remove", |job| job.logged = None);
            }
        }
    });
    for odd in &context.view.drafts.air_remarks {
        remark(ui, context.palette, odd.say(words));
    }
    if context.view.drafts.logger.is_some() {
        confirm(ui, context);
    }
}

/// How the file will be read, to be put right before it is.
fn confirm(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some(mut import) = context.view.drafts.logger.take() else { return };
    let mut keep = true;
    Frame::new().fill(context.palette.raised).corner_radius(6).inner_margin(Margin::same(9)).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.add(
            Label::new(RichText::new(say!(context.words, "air-confirm", name = &import.name)).strong())
                .wrap(),
        );
        let headings = headings(&import.guess.columns, context.words);
        let LoggerGuess { format, rooms, .. } = &mut import.guess;
        columns(ui, context.words, format, &headings, rooms);
        for doubt in &import.guess.doubts {
            context.problem(ui, crate::job::Severity::Note, &doubt.say(context.words));
        }
        ScrollArea::horizontal().id_salt("logger preview").show(ui, |ui| {
            Grid::new("logger rows").striped(true).show(ui, |ui| {
                for heading in &headings {
                    ui.label(RichText::new(heading).small().strong());
                }
                ui.end_row();
                for row in &import.guess.preview {
                    for cell in row {
                        ui.label(RichText::new(cell).small());
                    }
                    ui.end_row();
                }
            });
        });
        ui.horizontal_wrapped(|ui| {
            if ui.button(context.words.text("air-confirm-use")).clicked() {
                context.push(Command::TakeLogger(Box::new(import.clone())));
                keep = false;
            }
            if ui.button(context.words.text("air-confirm-cancel")).clicked() {
                keep = false;
            }
        });
    });
    if keep {
        context.view.drafts.logger = Some(import);
    }
}

/// The columns' headings, with their numbers where they have none.
fn headings(columns: &[String], words: &Words) -> Vec<String> {
    let heading = |(index, heading): (usize, &String)| match heading.as_str() {
        "" => say!(words, "logger-column", number = index + 1),
        heading => heading.to_owned(),
    };
    columns.iter().enumerate().map(heading).collect()
}

/// The rooms' names, with their numbers where they have none.
fn room_names(rooms: &[Room], words: &Words) -> Vec<String> {
    let name = |(index, room): (usize, &Room)| match room.name.as_str() {
        "" => say!(words, "logger-room", number = index + 1),
        name => name.to_owned(),
    };
    rooms.iter().enumerate().map(name).collect()
}

fn columns(ui: &mut Ui, words: &Words, format: &mut LoggerFormat, columns: &[String], rooms: &[Room]) {
    let none = words.text("air-column-none");
    let name = |at: usize| columns.get(at).map_or_else(|| none.to_string(), Clone::clone);
    Grid::new("logger columns").num_columns(2).show(ui, |ui| {
        let mut column = |message: &str, chosen: &mut usize| {
            let label = words.text(message);
            ui.label(label.as_ref());
            let combo = ComboBox::from_id_salt(message).selected_text(name(*chosen)).width(150.0);
            let response = combo.show_ui(ui, |ui| {
                for (at, heading) in columns.iter().enumerate() {
                    ui.selectable_value(chosen, at, heading);
                }
            });
            response.response.accessible_name(label);
            ui.end_row();
        };
        column("air-column-date", &mut format.date);
        column("air-column-humidity", &mut format.room.humidity);
        if let Some(temperature) = &mut format.room.temperature {
            column("air-column-temperature", temperature);
        }
        let dates = words.text("air-dates");
        ui.label(dates.as_ref());
        let orders = ComboBox::from_id_salt("date order").selected_text(format.order.say(words)).width(150.0);
        let response = orders.show_ui(ui, |ui| {
            for order in DateOrder::ALL {
                ui.selectable_value(&mut format.order, order, order.say(words));
            }
        });
        response.response.accessible_name(dates);
        ui.end_row();
        ui.label(words.text("air-temperatures"));
        ui.horizontal(|ui| {
            ui.radio_value(&mut format.fahrenheit, false, words.text("degrees-celsius"));
            ui.radio_value(&mut format.fahrenheit, true, words.text("degrees-fahrenheit"));
        });
        ui.end_row();
        if rooms.len() > 1 {
            ui.label(words.text("air-room"));
            let names = room_names(rooms, words);
            let chosen = rooms.iter().zip(&names).find(|(room, _)| **room == format.room);
            let shown = chosen.map_or(format.room.name.as_str(), |(_, name)| name);
            let combo = ComboBox::from_id_salt("logger room").selected_text(shown).width(150.0);
            let response = combo.show_ui(ui, |ui| {
                for (room, name) in rooms.iter().zip(&names) {
                    ui.selectable_value(&mut format.room, room.clone(), name);
                }
            });
            response.response.accessible_name(words.text("air-room"));
            ui.end_row();
        }
    });
}
