//! Gap and moisture readings as lists.

use eframe::egui::{ComboBox, Grid, RichText, Ui};

use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::entry::{entry, text_entry};
use crate::app::icon::Icon;
use crate::app::view::Selected;
use crate::app::widgets::remark;
use crate::job::fields::{At, Each};
use crate::measure::{
    Length, Moisture, Temperature, Units, parse_date, parse_number, show_date, show_number,
};
use crate::survey::{MeterSetting, MoistureReading};

/// Gaps are typed at the joint, on the drawing; here they are listed.
pub(super) fn gaps(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let job = context.job;
    if job.survey.gaps.is_empty() {
        remark(
            ui,
            context.palette,
            "Click a joint on the drawing and type its gap; Enter goes on to the next one worth measuring. A closed joint is a reading too: type 0.",
        );
        return;
    }
    let open = job.survey.gaps.iter().filter(|gap| gap.width >= job.plan.open_from).count();
    remark(
        ui,
        context.palette,
        format!(
            "{} readings, {open} open. Type more by clicking joints on the drawing.",
            job.survey.gaps.len()
        ),
    );
    Grid::new("gaps").num_columns(5).striped(true).show(ui, |ui| {
        for title in ["joint", "gap", "sealant", "date, if not the visit", ""] {
            ui.label(RichText::new(title).small().color(context.palette.soft));
        }
        ui.end_row();
        for (index, gap) in job.survey.gaps.iter().enumerate() {
            ui.push_id(("gap", index), |ui| {
                let surface = job.surfaces.iter().position(|surface| surface.name == gap.surface);
                let name = format!("{} {}", gap.surface, gap.joint);
                let link = ui.add_enabled(
                    surface.is_some(),
                    eframe::egui::Button::new(RichText::new(&name).small()).frame(false),
                );
                if let (true, Some(surface)) = (link.on_hover_text("Show this joint").clicked(), surface) {
                    context.push(Command::Select(Some(Selected { surface, joint: gap.joint.clone() })));
                }
            });
            if let Some(width) = context.length_entry(
                ui,
                &format!("Gap reading {}", index + 1),
                gap.width,
                Length::ZERO..=Length::inches(6.0),
                70.0,
            ) {
                context.edit("Gap reading", move |job| {
                    if let Some(gap) = job.survey.gaps.get_mut(index) {
                        gap.width = width;
                    }
                });
            }
            ui.label(RichText::new(gap.failed.words()).small().color(context.palette.soft));
            let shown = gap.date.map_or_else(String::new, show_date);
            let date = entry(ui, &format!("Date of gap reading {}", index + 1), &shown, 76.0, |text| {
                match text.trim() {
                    "" => Ok(None),
                    text => parse_date(text, context.units()).map(Some).map_err(|error| error.to_string()),
                }
            });
            if let Some(date) = date {
                context.edit("Date of a gap", move |job| {
                    if let Some(gap) = job.survey.gaps.get_mut(index) {
                        gap.date = date;
                    }
                });
            }
            if Icon::Remove.button(ui, &format!("Remove gap reading {}", index + 1), true).clicked() {
                context.edit("Remove gap", move |job| {
                    if index < job.survey.gaps.len() {
                        job.survey.gaps.remove(index);
                    }
                });
            }
            ui.end_row();
        }
    });
    for index in 0..job.survey.gaps.len() {
        context.entry_problems(ui, Each::Gap, At::index(index));
    }
}

/// A temperature as it is typed in these units.
fn shown_temperature(t: Temperature, units: Units) -> String {
    match units {
        Units::Inches => show_number(t.to_fahrenheit(), 1),
        Units::Millimeters => show_number(t.to_celsius(), 1),
    }
    .replace('−', "-")
}

/// A field for a temperature in the job's units.
pub(super) fn temperature_entry(
    ui: &mut Ui,
    context: &WindowContext<'_>,
    name: &str,
    value: Temperature,
) -> Option<Temperature> {
    let units = context.units();
    entry(ui, name, &shown_temperature(value, units), 48.0, |text| {
        let number = parse_number(text).map_err(|error| error.to_string())?;
        let t = match units {
            Units::Inches => Temperature::fahrenheit(number),
            Units::Millimeters => Temperature::celsius(number),
        };
        let (low, high) = (Temperature::celsius(-30.0), Temperature::celsius(60.0));
        if t < low || t > high {
            return Err(format!(
                "“{}” is not between {} and {}",
                text.trim(),
                low.show(units),
                high.show(units)
            ));
        }
        Ok(t)
    })
}

/// The sign of a temperature in the job's units.
pub(super) const fn degrees(units: Units) -> &'static str {
    match units {
        Units::Inches => "°F",
        Units::Millimeters => "°C",
    }
}

pub(super) fn moistures(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let job = context.job;
    Grid::new("moistures").num_columns(6).striped(true).show(ui, |ui| {
        if !job.survey.moistures.is_empty() {
            for title in ["section", "board", "meter %", degrees(job.units), "set to", ""] {
                ui.label(RichText::new(title).small().color(context.palette.soft));
            }
            ui.end_row();
        }
        for (index, reading) in job.survey.moistures.iter().enumerate() {
            moisture(ui, context, index, reading);
            ui.end_row();
        }
    });
    for index in 0..job.survey.moistures.len() {
        context.entry_problems(ui, Each::Moisture, At::index(index));
    }
    let sections: Vec<(String, String)> = job
        .surfaces
        .iter()
        .flat_map(|surface| surface.sections.iter().map(|s| (surface.name.clone(), s.name.clone())))
        .collect();
    let add = ui.add_enabled(!sections.is_empty(), eframe::egui::Button::new("Add moisture reading"));
    if add.clicked() {
        let shown = job.surfaces.get(context.view.surface).map(|surface| surface.name.clone());
        let place = sections
            .iter()
            .find(|(surface, _)| Some(surface) == shown.as_ref())
            .or(sections.first())
            .cloned();
        context.edit("Add moisture reading", move |job| {
            let (surface, section) = place.unwrap_or_default();
            job.survey.moistures.push(MoistureReading { surface, section, ..MoistureReading::default() });
        });
    }
}

fn edit(context: &mut WindowContext<'_>, index: usize, change: impl FnOnce(&mut MoistureReading) + 'static) {
    context.edit("Moisture reading", move |job| {
        if let Some(reading) = job.survey.moistures.get_mut(index) {
            change(reading);
        }
    });
}

fn moisture(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize, reading: &MoistureReading) {
    let number = index + 1;
    section(ui, context, index, reading);
    if let Some(board) = text_entry(ui, &format!("Board of moisture reading {number}"), &reading.board, 84.0)
    {
        edit(context, index, move |reading| reading.board = board);
    }
    let name = format!("Moisture reading {number}");
    if let Some(pct) =
        context.optional_entry(ui, &name, reading.reading.map(Moisture::to_pct), 1, 0.0..=100.0, 42.0)
    {
        edit(context, index, move |reading| reading.reading = pct.map(Moisture::pct));
    }
    if let Some(wood) = temperature_entry(ui, context, &format!("Wood temperature {number}"), reading.wood) {
        edit(context, index, move |reading| reading.wood = wood);
    }
    let combo = ComboBox::from_id_salt(("setting", index)).selected_text(reading.setting.words()).width(86.0);
    let response = combo.show_ui(ui, |ui| {
        for setting in MeterSetting::ALL {
            if ui.selectable_label(setting == reading.setting, setting.words()).clicked() {
                edit(context, index, move |reading| reading.setting = setting);
            }
        }
    });
    response.response.accessible_name(format!("Meter set to {number}"));
    if Icon::Remove.button(ui, &format!("Remove moisture reading {number}"), true).clicked() {
        context.edit("Remove moisture reading", move |job| {
            if index < job.survey.moistures.len() {
                job.survey.moistures.remove(index);
            }
        });
    }
}

fn section(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize, reading: &MoistureReading) {
    let job = context.job;
    let combo =
        ComboBox::from_id_salt(("moisture section", index)).selected_text(&reading.section).width(44.0);
    let response = combo.show_ui(ui, |ui| {
        for surface in &job.surfaces {
            for section in &surface.sections {
                let on = surface.name == reading.surface && section.name == reading.section;
                if ui.selectable_label(on, format!("{} {}", surface.name, section.name)).clicked() {
                    let (surface, section) = (surface.name.clone(), section.name.clone());
                    edit(context, index, move |reading| {
                        reading.surface = surface;
                        reading.section = section;
                    });
                }
            }
        }
    });
    response.response.accessible_name(format!("Section of moisture reading {}", index + 1));
}
