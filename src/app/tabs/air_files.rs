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
    ui.horizontal_wrapped(|ui| {
        let weather = ui.button("Weather file…").on_hover_text("An hourly year of the place: EPW or TMY3.");
        if weather.clicked() {
            context.push(Command::Pick(Purpose::Weather));
        }
        let logger = ui.button("Logger's file…").on_hover_text("Readings of this room, as CSV.");
        if logger.clicked() {
            context.push(Command::Pick(Purpose::Logger));
        }
        if let Some(logged) = &context.job.logged {
            let days = logged.days.len();
            ui.label(format!("{days} day{} of {}", if days == 1 { "" } else { "s" }, logged.name));
            if ui.button("Forget the logger").clicked() {
                context.edit("Forget the logger", |job| job.logged = None);
            }
        }
    });
    for odd in &context.view.drafts.air_remarks {
        remark(ui, context.palette, odd.say(context.words));
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
        ui.add(Label::new(RichText::new(format!("Read {} like this?", import.name)).strong()).wrap());
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
        ui.horizontal(|ui| {
            if ui.button("Use these readings").clicked() {
                context.push(Command::TakeLogger(Box::new(import.clone())));
                keep = false;
            }
            if ui.button("Cancel the logger").clicked() {
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
    let name = |at: usize| columns.get(at).map_or("none", String::as_str).to_owned();
    Grid::new("logger columns").num_columns(2).show(ui, |ui| {
        let mut column = |label: &str, chosen: &mut usize| {
            ui.label(label);
            let combo = ComboBox::from_id_salt(label).selected_text(name(*chosen)).width(150.0);
            let response = combo.show_ui(ui, |ui| {
                for (at, heading) in columns.iter().enumerate() {
                    ui.selectable_value(chosen, at, heading);
                }
            });
            response.response.accessible_name(label);
            ui.end_row();
        };
        column("Date", &mut format.date);
        column("Humidity", &mut format.room.humidity);
        if let Some(temperature) = &mut format.room.temperature {
            column("Temperature", temperature);
        }
        ui.label("Dates are");
        let orders = ComboBox::from_id_salt("date order").selected_text(format.order.say(words)).width(150.0);
        let response = orders.show_ui(ui, |ui| {
            for order in DateOrder::ALL {
                ui.selectable_value(&mut format.order, order, order.say(words));
            }
        });
        response.response.accessible_name("Dates are");
        ui.end_row();
        ui.label("Temperatures in");
        ui.horizontal(|ui| {
            ui.radio_value(&mut format.fahrenheit, false, "°C");
            ui.radio_value(&mut format.fahrenheit, true, "°F");
        });
        ui.end_row();
        if rooms.len() > 1 {
            ui.label("Room");
            let names = room_names(rooms, words);
            let chosen = rooms.iter().zip(&names).find(|(room, _)| **room == format.room);
            let shown = chosen.map_or(format.room.name.as_str(), |(_, name)| name);
            let combo = ComboBox::from_id_salt("logger room").selected_text(shown).width(150.0);
            let response = combo.show_ui(ui, |ui| {
                for (room, name) in rooms.iter().zip(&names) {
                    ui.selectable_value(&mut format.room, room.clone(), name);
                }
            });
            response.response.accessible_name("Room of the logger");
            ui.end_row();
        }
    });
}
