//! Afterwards: what the work took, and later visits held against what was forecast.

use eframe::egui::{CollapsingHeader, ComboBox, Grid, Label, RichText, Ui};

use crate::app::context::WindowContext;
use crate::app::entry::{entry, text_entry};
use crate::app::icon::Icon;
use crate::app::joint_bar::read_gap;
use crate::app::widgets::{heading, remark, term};
use crate::assess::{LaterReading, RepairOption, VisitOutcome};
use crate::measure::{Hours, date_text, parse_date, show_number};
use crate::survey::{GapReading, LaterGap, LaterVisit};
use crate::words::Say as _;
use crate::words::causes::chance_as_percent;

pub(super) fn follow_up(ui: &mut Ui, context: &mut WindowContext<'_>) {
    heading(ui, "What the work took");
    done(ui, context);
    heading(ui, "Later visits");
    remark(
        ui,
        context.palette,
        "Measure some of the same joints again, before the work or after it. What was forecast stands beside, and readings from before the work put the odds of the causes right.",
    );
    for (index, visit) in context.job.later.iter().enumerate() {
        later(ui, context, index, visit);
    }
    let today = jiff::ZonedDateTime::now().date();
    if ui.button("Add a visit").clicked() {
        let on = today.max(context.job.visited);
        context.edit("Add a visit", move |job| job.later.push(LaterVisit { on, gaps: vec![] }));
    }
}

/// The day it was finished, hours and pieces.
fn done(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let done = &context.job.done;
    Grid::new("done").num_columns(2).show(ui, |ui| {
        term(ui, "Finished on", "The last day of the work. Visits after it are held against the new beads.");
        let (units, words) = (context.units(), context.words);
        let shown = done.finished.map_or_else(String::new, |date| date_text(date, units));
        let date = entry(ui, "Finished on", &shown, 110.0, |text| match text.trim() {
            "" => Ok(None),
            text => parse_date(text, units).map(Some).map_err(|error| error.say(words)),
        });
        if let Some(date) = date {
            context.edit("Finished on", move |job| job.done.finished = date);
        }
        ui.end_row();
        ui.label("Note");
        if let Some(note) = text_entry(ui, "Note on the work", &done.note, 280.0) {
            context.edit("Note on the work", move |job| job.done.note = note);
        }
        ui.end_row();
    });
    let Some(option) = context.assessment.chosen() else { return };
    CollapsingHeader::new("Hours").default_open(true).show(ui, |ui| hours(ui, context, option));
    CollapsingHeader::new("Pieces used").default_open(false).show(ui, |ui| pieces(ui, context, option));
    remark(
        ui,
        context.palette,
        "Hours of finished jobs become your own rates: under Shelf, learn from the folder they are in.",
    );
}

fn hours(ui: &mut Ui, context: &mut WindowContext<'_>, option: &RepairOption) {
    Grid::new("hours").num_columns(4).striped(true).show(ui, |ui| {
        for title in ["task", "reckoned, h", "took, h", ""] {
            ui.label(RichText::new(title).small().color(context.palette.soft));
        }
        ui.end_row();
        let mut seen: Vec<&str> = Vec::new();
        for task in &option.tasks {
            if seen.contains(&task.id.as_str()) {
                continue;
            }
            seen.push(&task.id);
            let all: Hours = option.tasks.iter().filter(|t| t.id == task.id).map(|t| t.hours.mean).sum();
            ui.scope(|ui| {
                ui.set_max_width(210.0);
                ui.add(Label::new(RichText::new(&task.name).small()).wrap());
            });
            ui.label(show_number(all.to_h(), 1));
            let taken = context.job.done.hours.get(&task.id).copied();
            let name = format!("Hours taken: {}", task.name);
            if let Some(hours) =
                context.optional_entry(ui, &name, taken.map(Hours::to_h), 2, 0.0..=10_000.0, 60.0)
            {
                let id = task.id.clone();
                context.edit("Hours taken", move |job| match hours {
                    Some(hours) => {
                        job.done.hours.insert(id, Hours::h(hours));
                    }
                    None => {
                        job.done.hours.remove(&id);
                    }
                });
            }
            let more =
                taken.filter(|_| all.to_h() > 0.0).map(|taken| 100.0 * (taken.to_h() / all.to_h() - 1.0));
            ui.label(more.map_or_else(String::new, |more| format!("{} %", signed(more))));
            ui.end_row();
        }
    });
}

fn signed(value: f64) -> String {
    let shown = show_number(value, 0);
    if value > 0.0 { format!("+{shown}") } else { shown }
}

fn pieces(ui: &mut Ui, context: &mut WindowContext<'_>, option: &RepairOption) {
    Grid::new("pieces").num_columns(3).striped(true).show(ui, |ui| {
        for title in ["what", "reckoned", "used"] {
            ui.label(RichText::new(title).small().color(context.palette.soft));
        }
        ui.end_row();
        for line in &option.materials {
            let label = line.say(context.words);
            ui.scope(|ui| {
                ui.set_max_width(250.0);
                ui.add(Label::new(RichText::new(&label).small()).wrap());
            });
            ui.label(line.pieces.to_string());
            let used = context.job.done.pieces.get(&line.id).map(|pieces| f64::from(*pieces));
            let name = format!("Pieces used: {label}");
            if let Some(used) = context.optional_entry(ui, &name, used, 0, 0.0..=1e6, 60.0) {
                let id = line.id.clone();
                context.edit("Pieces used", move |job| match used {
                    Some(used) => {
                        job.done.pieces.insert(id, used.round() as u32);
                    }
                    None => {
                        job.done.pieces.remove(&id);
                    }
                });
            }
            ui.end_row();
        }
    });
}

/// A later visit with its readings.
fn later(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize, visit: &LaterVisit) {
    ui.push_id(("later", index), |ui| {
        ui.add_space(6.0);
        ui.horizontal(|ui| {
            ui.label("Visit on");
            let (units, words) = (context.units(), context.words);
            let name = format!("Day of visit {}", index + 1);
            let date = entry(ui, &name, &date_text(visit.on, units), 110.0, |text| {
                parse_date(text, units).map_err(|error| error.say(words))
            });
            if let Some(on) = date {
                edit(context, index, "Day of a visit", move |visit| visit.on = on);
            }
            joint_to_add(ui, context, index, visit);
            if Icon::Remove.button(ui, &format!("Remove visit {}", index + 1), true).clicked() {
                context.edit("Remove a visit", move |job| {
                    if index < job.later.len() {
                        job.later.remove(index);
                    }
                });
            }
        });
        let assessment = context.assessment.follow_up.get(index);
        readings(ui, context, index, visit, assessment);
        if let Some(assessment) = assessment.filter(|assessment| !assessment.readings.is_empty()) {
            ui.add(Label::new(assessment.verdict.say(context.words)).wrap());
        }
    });
}

fn edit(
    context: &mut WindowContext<'_>,
    index: usize,
    name: &str,
    change: impl FnOnce(&mut LaterVisit) + 'static,
) {
    context.edit(name, move |job| {
        if let Some(visit) = job.later.get_mut(index) {
            change(visit);
        }
    });
}

/// The joints measured at the first visit, which are worth measuring again.
fn joint_to_add(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize, visit: &LaterVisit) {
    let job = context.job;
    let known = |gap: &&GapReading| {
        !visit.gaps.iter().any(|other| other.surface == gap.surface && other.joint == gap.joint)
    };
    let again: Vec<&GapReading> = job.survey.gaps.iter().filter(known).collect();
    let combo = ComboBox::from_id_salt("joint again").selected_text("measure again…").width(150.0);
    let response = combo.show_ui(ui, |ui| {
        for gap in &again {
            if ui.selectable_label(false, format!("{} {}", gap.surface, gap.joint)).clicked() {
                let (surface, joint) = (gap.surface.clone(), gap.joint.clone());
                edit(context, index, "Measure again", move |visit| {
                    visit.gaps.push(LaterGap { surface, joint, width: None });
                });
            }
        }
    });
    response.response.accessible_name("Joint to measure again");
    if ui.button("all").on_hover_text("Every joint of the first visit").clicked() {
        let blank = |gap: &GapReading| LaterGap {
            surface: gap.surface.clone(),
            joint: gap.joint.clone(),
            width: None,
        };
        let gaps: Vec<LaterGap> = again.into_iter().map(blank).collect();
        edit(context, index, "Measure all again", move |visit| visit.gaps.extend(gaps));
    }
}

fn readings(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    index: usize,
    visit: &LaterVisit,
    assessment: Option<&VisitOutcome>,
) {
    if visit.gaps.is_empty() {
        return;
    }
    let after = assessment.is_some_and(|assessment| assessment.after_work);
    Grid::new("later gaps").num_columns(4).striped(true).show(ui, |ui| {
        let forecast = if after { "chance it opens" } else { "forecast" };
        for title in ["joint", if after { "opening" } else { "gap" }, forecast, ""] {
            ui.label(RichText::new(title).small().color(context.palette.soft));
        }
        ui.end_row();
        for (at, gap) in visit.gaps.iter().enumerate() {
            let name = format!("{} {}", gap.surface, gap.joint);
            ui.label(RichText::new(&name).small());
            let (units, words) = (context.units(), context.words);
            let shown = gap.width.map_or_else(String::new, |width| width.show(units));
            let typed = ui.push_id(at, |ui| {
                entry(ui, &format!("Gap later: {name}"), &shown, 74.0, |text| match text.trim() {
                    "" => Ok(None),
                    text => read_gap(text, units, words).map(Some),
                })
            });
            if let Some(width) = typed.inner {
                edit(context, index, "Gap later", move |visit| {
                    if let Some(gap) = visit.gaps.get_mut(at) {
                        gap.width = width;
                    }
                });
            }
            let own = |r: &&LaterReading| r.surface == gap.surface && r.joint == gap.joint;
            let held = assessment.and_then(|assessment| assessment.readings.iter().find(own));
            verdict(ui, context, held);
            ui.end_row();
        }
    });
}

/// What was forecast of a reading, and whether it came so.
fn verdict(ui: &mut Ui, context: &WindowContext<'_>, reading: Option<&LaterReading>) {
    let units = context.units();
    let Some(reading) = reading else {
        ui.label("–");
        return;
    };
    if let Some((expected, band)) = reading.forecast {
        let words =
            format!("{} ({} to {})", expected.show(units), band.low.show(units), band.high.show(units));
        ui.label(RichText::new(words).small())
            .on_hover_text("Nine readings in ten should lie in this range.");
        match reading.inside() {
            Some(true) => ui.label(RichText::new("inside").small().color(context.palette.good)),
            _ => ui.label(RichText::new("outside").small().strong().color(context.palette.warn)),
        };
    } else if let Some(chance) = reading.chance {
        ui.label(chance_as_percent(chance, context.words));
    } else {
        ui.label("–");
    }
}
