//! The Follow-up room: what the work took, and later visits held against what was forecast.

use eframe::egui::{ComboBox, Grid, Label, RichText, Ui};

use jiff::civil::Date;

use crate::app::context::WindowContext;
use crate::app::entry::entry;
use crate::app::fold::fold;
use crate::app::frame::NARROW;
use crate::app::icon::Icon;
use crate::app::lead;
use crate::app::widgets::{columns, heading, remark};
use crate::assess::{JointShows, LaterReading, RepairOption, TaskOutcome, VisitOutcome, VisitVerdict};
use crate::job::fields::{self, At, Each, Item};
use crate::measure::{Percent, Quantity, parse_date};
use crate::repair::MaterialLine;
use crate::survey::{GapReading, LaterGap, LaterVisit};
use crate::words::causes::chance_as_percent;
use crate::words::{Arg, Say as _, say};

pub(super) fn follow_up(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    heading(ui, &words.text("work-heading"));
    done(ui, context);
    if ui.ctx().content_rect().width() < NARROW {
        visits(ui, context);
    }
}

/// Later visits, each held against what was forecast.
pub(crate) fn visits(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    heading(ui, &words.text("visits-heading"));
    remark(ui, context.palette, words.text("visits-remark"));
    let told = match &context.job.promise {
        Some(told) => Some(say!(words, "visits-told", on = told.told_on)),
        None if context.job.later.is_empty() => None,
        None => Some(words.text("visits-not-told").into_owned()),
    };
    if let Some(told) = told {
        remark(ui, context.palette, told);
    }
    for (index, visit) in context.job.later.iter().enumerate() {
        later(ui, context, index, visit);
    }
    if ui.button(words.text("visit-add")).clicked() {
        // After the first visit, and after the work where that is done.
        let worked = context.job.done.finished.and_then(|finished| finished.tomorrow().ok());
        let on = jiff::ZonedDateTime::now().date().max(context.job.visited).max(worked.unwrap_or(Date::MIN));
        lead::expect(ui.ctx(), &fields::VISIT_DATE, At::index(context.job.later.len()));
        context.edit("visit-add", move |job| job.later.push(LaterVisit { on, gaps: vec![] }));
    }
}

/// The day it was finished, hours and pieces.
fn done(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (done, words) = (&context.job.done, context.words);
    Grid::new("done").num_columns(2).show(ui, |ui| {
        context.date(ui, &fields::FINISHED, done.finished, Ok, |job, date| job.done.finished = date);
        context.line(ui, &fields::WORK_NOTES, &done.note, |job, note| job.done.note = note);
    });
    let Some(option) = context.assessment.chosen() else { return };
    let title = words.text("work-hours");
    fold(ui, "work-hours", title, true, |ui| hours(ui, context, option));
    let title = words.text("work-pieces");
    fold(ui, "work-pieces", title, false, |ui| pieces(ui, context, option));
    remark(ui, context.palette, words.text("work-remark"));
}

/// A name in the first column that wraps.
fn small_name(ui: &mut Ui, name: &str, width: f32) {
    ui.scope(|ui| {
        ui.set_max_width(width);
        ui.add(Label::new(RichText::new(name).small()).wrap());
    });
}

fn hours(ui: &mut Ui, context: &mut WindowContext<'_>, option: &RepairOption) {
    Grid::new("hours").num_columns(4).striped(true).show(ui, |ui| {
        let titles = ["work-column-task", "work-column-estimated-hours", "work-column-actual-hours"];
        columns(ui, context.palette, context.words, &titles);
        for task in context.assessment.task_outcomes(option) {
            task_hours(ui, context, task);
            ui.end_row();
        }
    });
    context.field_problems(ui, &fields::ACTUAL_HOURS, At::ONCE);
}

/// What a task took, beside what was expected.
fn task_hours(ui: &mut Ui, context: &mut WindowContext<'_>, task: TaskOutcome) {
    let (words, figures) = (context.words, context.words.figures());
    small_name(ui, &words.called(&task.name), 210.0);
    ui.label(figures.number(task.estimated.to_h(), 1));
    let name = say!(words, "work-hours-of", task = Arg::Called(&task.name));
    let item = Item::Id(task.id.clone());
    let now = context.job.done.hours.get(&task.id).copied().map(Quantity::Hours);
    if let Some(typed) = context.listed_figure(ui, &fields::ACTUAL_HOURS, (At::ONCE, &item), now, &name) {
        let id = task.id;
        context.edit("field-actual-hours", move |job| match typed {
            Some(Quantity::Hours(hours)) => {
                job.done.hours.insert(id, hours);
            }
            _ => {
                job.done.hours.remove(&id);
            }
        });
    }
    let over = task.over.map(|over| {
        let sign = Arg::Id(if over > Percent::ZERO { "more" } else { "less" });
        let share = figures.percent(over.to_pct().abs(), 0);
        say!(words, "work-over", sign = sign, share = &share)
    });
    ui.label(over.unwrap_or_default());
}

fn pieces(ui: &mut Ui, context: &mut WindowContext<'_>, option: &RepairOption) {
    Grid::new("pieces").num_columns(3).striped(true).show(ui, |ui| {
        let titles = ["work-column-material", "work-column-estimated-pieces", "work-column-used-pieces"];
        columns(ui, context.palette, context.words, &titles);
        for line in &option.materials {
            pieces_used(ui, context, line);
            ui.end_row();
        }
    });
    context.field_problems(ui, &fields::PIECES_USED, At::ONCE);
}

/// How many pieces of a material were used, beside what was expected.
fn pieces_used(ui: &mut Ui, context: &mut WindowContext<'_>, line: &MaterialLine) {
    let words = context.words;
    let label = line.say(words);
    small_name(ui, &label, 250.0);
    ui.label(line.pieces.to_string());
    let name = say!(words, "work-pieces-of", material = &label);
    let item = Item::Id(line.id.clone());
    let now = context.job.done.pieces.get(&line.id).copied().map(Quantity::Count);
    if let Some(typed) = context.listed_figure(ui, &fields::PIECES_USED, (At::ONCE, &item), now, &name) {
        let id = line.id.clone();
        context.edit("field-pieces-used", move |job| match typed {
            Some(Quantity::Count(pieces)) => {
                job.done.pieces.insert(id, pieces);
            }
            _ => {
                job.done.pieces.remove(&id);
            }
        });
    }
}

/// A later visit with its readings.
fn later(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize, visit: &LaterVisit) {
    let (words, number) = (context.words, index + 1);
    ui.push_id(("later", index), |ui| {
        ui.add_space(6.0);
        ui.horizontal_wrapped(|ui| {
            ui.label(words.text("visit-on"));
            let units = context.units();
            let name = say!(words, "visit-day", number = number);
            context.reach(ui, &fields::VISIT_DATE, At::index(index), None);
            let date = entry(ui, &name, &context.words.figures().date(visit.on), 110.0, |text| {
                parse_date(text, units).map_err(|error| error.say(words))
            });
            if let Some(on) = date {
                edit(context, index, "field-visit-date", move |visit| visit.on = on);
            }
            joint_to_add(ui, context, index, visit);
            let remove = say!(words, "visit-remove", number = number);
            if Icon::Remove.button(ui, &remove, true).clicked() {
                context.edit("undo-remove-visit", move |job| {
                    if index < job.later.len() {
                        job.later.remove(index);
                    }
                });
            }
        });
        context.entry_problems(ui, Each::Visit, At::index(index));
        let outcome = context.assessment.follow_up.get(index);
        readings(ui, context, index, visit, outcome);
        let tells = |outcome: &&VisitOutcome| {
            !outcome.readings.is_empty() || outcome.verdict == VisitVerdict::Covered
        };
        if let Some(outcome) = outcome.filter(tells) {
            ui.add(Label::new(outcome.verdict.say(words)).wrap());
        }
    });
}

fn edit(
    context: &mut WindowContext<'_>,
    index: usize,
    step: &'static str,
    change: impl FnOnce(&mut LaterVisit) + 'static,
) {
    context.edit(step, move |job| {
        if let Some(visit) = job.later.get_mut(index) {
            change(visit);
        }
    });
}

/// The joints measured at the first visit, which are worth measuring again.
fn joint_to_add(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize, visit: &LaterVisit) {
    let words = context.words;
    let again = visit.not_looked_at(&context.job.survey);
    let blank =
        |gap: &GapReading| LaterGap { surface: gap.surface.clone(), joint: gap.joint.clone(), width: None };
    let combo = ComboBox::from_id_salt("joint again").width(150.0);
    let response = combo.selected_text(words.text("visit-measure-again")).show_ui(ui, |ui| {
        for gap in &again {
            if ui.selectable_label(false, format!("{} {}", gap.surface, words.joint(&gap.joint))).clicked() {
                let gap = blank(gap);
                lead::expect(ui.ctx(), &fields::LATER_GAP, At(index, visit.gaps.len()));
                edit(context, index, "visit-measure-again", move |visit| visit.gaps.push(gap));
            }
        }
    });
    response.response.accessible_name(words.text("visit-joint-again"));
    let all = ui.button(words.text("visit-measure-all"));
    if all.on_hover_text(words.text("visit-measure-all.hint")).clicked() {
        let gaps: Vec<LaterGap> = again.into_iter().map(blank).collect();
        edit(context, index, "undo-measure-all-again", move |visit| visit.gaps.extend(gaps));
    }
}

fn readings(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    index: usize,
    visit: &LaterVisit,
    outcome: Option<&VisitOutcome>,
) {
    if visit.gaps.is_empty() {
        return;
    }
    let shows = outcome.map_or(JointShows::Gap, |outcome| outcome.shows);
    Grid::new("later gaps").num_columns(4).striped(true).show(ui, |ui| {
        let titles = match shows {
            JointShows::Opening => ["visit-column-joint", "visit-column-opening", "visit-column-chance"],
            _ => ["visit-column-joint", "visit-column-gap", "visit-column-forecast"],
        };
        columns(ui, context.palette, context.words, &titles);
        for (at, gap) in visit.gaps.iter().enumerate() {
            let (surface, joint) = (&gap.surface, context.words.joint(&gap.joint));
            ui.label(RichText::new(format!("{surface} {joint}")).small());
            let name = say!(context.words, "visit-gap", surface = surface, joint = Arg::Name(&joint));
            context.reach(ui, &fields::LATER_JOINT, At(index, at), None);
            ui.push_id(at, |ui| context.figure(ui, &fields::LATER_GAP, At(index, at), &name));
            let own = |r: &&LaterReading| r.surface == gap.surface && r.joint == gap.joint;
            verdict(ui, context, outcome.and_then(|outcome| outcome.readings.iter().find(own)));
            ui.end_row();
        }
    });
    for at in 0..visit.gaps.len() {
        context.entry_problems(ui, Each::LaterGap, At(index, at));
    }
}

/// What was forecast of a reading, and whether it came so.
fn verdict(ui: &mut Ui, context: &WindowContext<'_>, reading: Option<&LaterReading>) {
    let words = context.words;
    let forecast = reading.and_then(|reading| Some((reading.forecast?, reading.inside())));
    if let Some(((expected, band), inside)) = forecast {
        let text = say!(words, "visit-forecast", expected = expected, low = band.low, high = band.high);
        ui.label(RichText::new(text).small()).on_hover_text(words.text("visit-forecast.hint"));
        let (text, color) = match inside {
            Some(true) => (words.text("visit-inside"), context.palette.good),
            _ => (words.text("visit-outside"), context.palette.warn),
        };
        ui.label(RichText::new(text).small().color(color));
    } else if let Some(chance) = reading.and_then(|reading| reading.chance) {
        ui.label(chance_as_percent(chance, words));
    } else {
        ui.label(words.text("no-figure"));
    }
}
