//! Survey: the job's names and dates, the boards, the readings, the room.

use eframe::egui::{CollapsingHeader, Grid, Ui};

use super::{boards, readings, room};
use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::entry::{entry, text_entry};
use crate::app::pick::Purpose;
use crate::app::widgets::{heading, multiline, remark, term};
use crate::assess::EntryPlace;
use crate::job::fields::{self, At};
use crate::job::{Job, Place};
use crate::measure::{parse_date, show_date};

pub(super) fn measure(ui: &mut Ui, context: &mut WindowContext<'_>) {
    for problem in &context.session.document.unread {
        context.problem(ui, problem.severity, &problem.line(context.job, context.words));
    }
    context.scroll_if_requested(ui, EntryPlace::Surfaces);
    boards::boards(ui, context);
    context.scroll_if_requested(ui, EntryPlace::Failures);
    heading(ui, "Gaps");
    readings::gaps(ui, context);
    context.scroll_if_requested(ui, EntryPlace::Moisture);
    heading(ui, "Moisture of the boards");
    readings::moistures(ui, context);
    heading(ui, "The room");
    room::room(ui, context);
    context.scroll_if_requested(ui, EntryPlace::Dates);
    heading(ui, "The job");
    job(ui, context);
}

/// A text field of the job: what it is called, its value, and how to reach it.
type TextField = (&'static str, fn(&Job) -> &String, fn(&mut Job) -> &mut String);

fn job(ui: &mut Ui, context: &mut WindowContext<'_>) {
    const FIELDS: [TextField; 5] = [
        ("Title", |job| &job.title, |job| &mut job.title),
        ("Homeowner", |job| &job.owner, |job| &mut job.owner),
        ("Address", |job| &job.address, |job| &mut job.address),
        ("Contractor", |job| &job.contractor.name, |job| &mut job.contractor.name),
        ("Signed by", |job| &job.contractor.signs, |job| &mut job.contractor.signs),
    ];
    Grid::new("job").num_columns(2).show(ui, |ui| {
        for (name, get, reach) in FIELDS {
            ui.label(name);
            if let Some(text) = text_entry(ui, name, get(context.job), 270.0) {
                context.edit(name, move |job| *reach(job) = text);
            }
            ui.end_row();
        }
        dates(ui, context);
        term(ui, "House built", "The year, if known: it decides which cautions apply.");
        let last = context.job.visited.year();
        let shown = context.job.built.map_or_else(String::new, |year| year.to_string());
        let year = entry(ui, "House built", &shown, 90.0, |text| match text.trim() {
            "" => Ok(None),
            text => match text.parse::<i16>() {
                Ok(year) if (1600..=last).contains(&year) => Ok(Some(year)),
                _ => Err(format!("“{text}” is not a year up to {last}. Type it as 1962, or leave it empty")),
            },
        });
        if let Some(year) = year {
            context.edit("Year built", move |job| job.built = year);
        }
        ui.end_row();
    });
    for field in [&fields::INSTALLED, &fields::VISITED, &fields::YEAR_BUILT, &fields::PRECISION] {
        context.field_problems(ui, field, At::ONCE);
    }
    context.problems(ui, |place| *place == Place::WholeFile);
    CollapsingHeader::new("Contractor's address and notes").show(ui, |ui| {
        remark(ui, context.palette, "Address and telephone, as they stand on the letter");
        if let Some(text) = multiline(ui, "Contractor's details", &context.job.contractor.details) {
            context.edit("Contractor's details", |job| job.contractor.details = text);
        }
        logo(ui, context);
        remark(ui, context.palette, "Notes, for yourself");
        if let Some(text) = multiline(ui, "Notes", &context.job.notes) {
            context.edit("Notes", |job| job.notes = text);
        }
    });
}

fn dates(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let units = context.units();
    term(ui, "Boards went up", "When the boards were fitted. It dates the past part of the year strip.");
    let shown = context.job.installed.map_or_else(String::new, show_date);
    let date = entry(ui, "Boards went up", &shown, 120.0, |text| match text.trim() {
        "" => Ok(None),
        text => parse_date(text, units).map(Some).map_err(|error| error.to_string()),
    });
    if let Some(date) = date {
        context.edit("Install date", move |job| job.installed = date);
    }
    ui.end_row();
    term(ui, "Visit", "The day on which the gaps and the moisture were measured.");
    let date = entry(ui, "Visit", &show_date(context.job.visited), 120.0, |text| {
        parse_date(text, units).map_err(|error| error.to_string())
    });
    if let Some(date) = date {
        context.edit("Visit date", move |job| job.visited = date);
    }
    ui.end_row();
}

/// The logo on the papers.
fn logo(ui: &mut Ui, context: &mut WindowContext<'_>) {
    ui.horizontal(|ui| {
        term(ui, "Logo", "It stands at the head of the papers; PNG, JPEG or SVG.");
        let there = context.job.contractor.logo.is_some();
        if ui.button(if there { "Another logo…" } else { "Choose a logo…" }).clicked() {
            context.push(Command::Pick(Purpose::Logo));
        }
        if there && ui.button("Remove the logo").clicked() {
            context.edit("Remove the logo", |job| job.contractor.logo = None);
        }
    });
}
