//! What was measured and noted: the job's names and dates, the boards, the readings, the room.

use eframe::egui::{Grid, Ui};

use super::{boards, readings, room};
use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::entry::entry;
use crate::app::fold::fold;
use crate::app::pick::Purpose;
use crate::app::widgets::{heading, multiline, remark, term};
use crate::assess::EntryPlace;
use crate::job::Place;
use crate::job::fields::{self, At};
use crate::measure::parse_month_or_date;
use crate::words::{Arg, Say as _, say};

pub(super) fn measure(ui: &mut Ui, context: &mut WindowContext<'_>) {
    for problem in &context.session.document.unread {
        context.problem(ui, problem.severity, &problem.line(context.job, context.words));
    }
    context.scroll_if_requested(ui, EntryPlace::Surfaces);
    boards::boards(ui, context);
    context.scroll_if_requested(ui, EntryPlace::Failures);
    heading(ui, &context.words.text("measure-gaps"));
    readings::gaps(ui, context);
    context.scroll_if_requested(ui, EntryPlace::Moisture);
    heading(ui, &context.words.text("measure-moisture"));
    readings::moistures(ui, context);
    received(ui, context);
    heading(ui, &context.words.text("measure-room"));
    room::room(ui, context);
    context.scroll_if_requested(ui, EntryPlace::Dates);
    heading(ui, &context.words.text("measure-job"));
    job(ui, context);
}

/// Names, addresses, dates.
fn job(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let job = context.job;
    Grid::new("job").num_columns(2).show(ui, |ui| {
        context.line(ui, &fields::TITLE, &job.title, |job, text| job.title = text);
        context.line(ui, &fields::OWNER, &job.owner, |job, text| job.owner = text);
        context.line(ui, &fields::ADDRESS, &job.address, |job, text| job.address = text);
        context.line(ui, &fields::FIRM, &job.contractor.name, |job, text| job.contractor.name = text);
        context.line(ui, &fields::FIRM_SIGNS, &job.contractor.signs, |job, text| job.contractor.signs = text);
        installed(ui, context);
        let visited = job.visited;
        context.date(ui, &fields::VISITED, Some(visited), Ok, move |job, date| {
            job.visited = date.unwrap_or(visited);
        });
        year_built(ui, context);
    });
    for field in [&fields::PRECISION, &fields::UNITS] {
        context.field_problems(ui, field, At::ONCE);
    }
    context.problems(ui, |place| *place == Place::WholeFile);
    fold(ui, "job-more", context.words.text("job-more"), false, |ui| {
        let details = context.words.text("field-firm-details");
        remark(ui, context.palette, details.as_ref());
        context.reach(ui, &fields::FIRM_DETAILS, At::ONCE, None);
        if let Some(text) = multiline(ui, &details, &job.contractor.details) {
            context.edit("field-firm-details", |job| job.contractor.details = text);
        }
        on_papers(ui, context);
        logo(ui, context);
        let notes = context.words.text("field-notes");
        remark(ui, context.palette, notes.as_ref());
        context.reach(ui, &fields::NOTES, At::ONCE, None);
        if let Some(text) = multiline(ui, &notes, &job.notes) {
            context.edit("field-notes", |job| job.notes = text);
        }
    });
}

/// What stands on the papers and nothing is computed from.
fn on_papers(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let job = context.job;
    Grid::new("on papers").num_columns(2).show(ui, |ui| {
        context.line(ui, &fields::LICENSE, &job.contractor.license, |job, text| {
            job.contractor.license = text;
        });
        context.line(ui, &fields::INSURANCE, &job.contractor.insurance, |job, text| {
            job.contractor.insurance = text;
        });
        context.line(ui, &fields::OWNER_PHONE, &job.phone, |job, text| job.phone = text);
        context.line(ui, &fields::GETTING_IN, &job.getting_in, |job, text| job.getting_in = text);
    });
}

/// How the boards came, and what they were metered with.
fn received(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let job = context.job;
    Grid::new("received").num_columns(2).show(ui, |ui| {
        context.line(ui, &fields::METER, &job.survey.meter, |job, text| job.survey.meter = text);
        context.line(ui, &fields::BOARDS_DELIVERY, &job.received.delivery, |job, text| {
            job.received.delivery = text;
        });
        context.line(ui, &fields::GRADE_STAMP, &job.received.stamp, |job, text| job.received.stamp = text);
        context.line(ui, &fields::STORAGE, &job.received.storage, |job, text| job.received.storage = text);
    });
}

/// When the boards were installed; the month alone will do.
fn installed(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (units, words) = (context.units(), context.words);
    context.row(ui, &fields::INSTALLED, |context, ui, label| {
        let shown = context
            .job
            .installed
            .map_or_else(String::new, |installed| context.words.figures().day_or_month(installed));
        let date = entry(ui, label, &shown, 120.0, |text| match text.trim() {
            "" => Ok(None),
            text => parse_month_or_date(text, units).map(Some).map_err(|error| error.say(words)),
        });
        if let Some(date) = date {
            context.edit("field-installed", move |job| job.installed = date);
        }
    });
}

/// The year in which the house was built: it decides which cautions apply.
fn year_built(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (words, last) = (context.words, context.job.visited.year());
    context.row(ui, &fields::YEAR_BUILT, |context, ui, label| {
        let shown = context.job.built.map_or_else(String::new, |year| year.to_string());
        let year = entry(ui, label, &shown, 90.0, |text| match text.trim() {
            "" => Ok(None),
            text => match text.parse::<i16>() {
                Ok(year) if (1600..=last).contains(&year) => Ok(Some(year)),
                _ => {
                    let last = last.to_string();
                    Err(say!(
                        words,
                        "entry-year-built",
                        text = Arg::Name(text),
                        first = &"1600".to_owned(),
                        last = &last
                    ))
                }
            },
        });
        if let Some(year) = year {
            context.edit("field-year-built", move |job| job.built = year);
        }
    });
}

/// The logo on the papers.
fn logo(ui: &mut Ui, context: &mut WindowContext<'_>) {
    ui.horizontal_wrapped(|ui| {
        term(ui, &context.words.text("job-logo"), &context.words.text("job-logo.hint"));
        let there = context.job.contractor.logo.is_some();
        if ui.button(context.words.text(if there { "job-logo-another" } else { "job-logo-choose" })).clicked()
        {
            context.push(Command::Pick(Purpose::Logo));
        }
        if there && ui.button(context.words.text("job-logo-remove")).clicked() {
            context.edit("job-logo-remove", |job| job.contractor.logo = None);
        }
    });
}
