//! Weather files and loggers: choosing them, and confirming how a logger's file is read.

use eframe::egui::{ComboBox, Frame, Grid, Label, Margin, RichText, ScrollArea, Ui};

use crate::air::{DateOrder, LoggerFormat};
use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::pick::Purpose;
use crate::app::widgets::remark;

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
    for text in &context.view.drafts.air_remarks {
        remark(ui, context.palette, text);
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
        columns(ui, &mut import.guess.format, &import.guess.columns, &import.guess.rooms);
        for doubt in &import.guess.doubts {
            context.problem(ui, crate::job::Severity::Note, doubt);
        }
        ScrollArea::horizontal().id_salt("logger preview").show(ui, |ui| {
            Grid::new("logger rows").striped(true).show(ui, |ui| {
                for heading in &import.guess.columns {
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

fn columns(ui: &mut Ui, format: &mut LoggerFormat, columns: &[String], rooms: &[crate::air::Room]) {
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
        let orders = ComboBox::from_id_salt("date order").selected_text(format.order.words()).width(150.0);
        let response = orders.show_ui(ui, |ui| {
            for order in DateOrder::ALL {
                ui.selectable_value(&mut format.order, order, order.words());
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
            let combo = ComboBox::from_id_salt("logger room").selected_text(&format.room.name).width(150.0);
            let response = combo.show_ui(ui, |ui| {
                for room in rooms {
                    ui.selectable_value(&mut format.room, room.clone(), &room.name);
                }
            });
            response.response.accessible_name("Room of the logger");
            ui.end_row();
        }
    });
}
