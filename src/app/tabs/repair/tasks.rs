//! Tasks with their rates, and the section that was timed.

use eframe::egui::{ComboBox, Grid, Label, RichText, Ui};

use super::edit_plan;
use crate::app::context::WindowContext;
use crate::app::entry::entry;
use crate::app::widgets::{remark, term};
use crate::assess::{EntryPlace, RepairOption};
use crate::job::fields::{self, At};
use crate::measure::{Minutes, Quantity, ThreePoint, parse_number, show_number};
use crate::repair::Trial;
use crate::words::{Say as _, say};

/// One section, scraped against the clock.
fn trial(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let job = context.job;
    let now = job.plan.trial.clone();
    context.scroll_if_requested(ui, EntryPlace::TimedSection);
    ui.horizontal(|ui| {
        term(
            ui,
            "Timed section",
            "Scrape one section against the clock: the rest of the job follows its pace.",
        );
        let shown = now.as_ref().map_or("none".to_owned(), |t| format!("{} {}", t.surface, t.section));
        let combo = ComboBox::from_id_salt("trial").selected_text(shown).width(130.0);
        let response = combo.show_ui(ui, |ui| {
            if ui.selectable_label(now.is_none(), "none").clicked() {
                edit_plan(context, "Timed section", |plan| plan.trial = None);
            }
            for surface in &job.surfaces {
                for section in &surface.sections {
                    let on =
                        now.as_ref().is_some_and(|t| t.surface == surface.name && t.section == section.name);
                    if ui.selectable_label(on, format!("{} {}", surface.name, section.name)).clicked() {
                        let (surface, section) = (surface.name.clone(), section.name.clone());
                        let minutes = now.as_ref().and_then(|t| t.minutes);
                        edit_plan(context, "Timed section", move |plan| {
                            plan.trial = Some(Trial { surface, section, minutes });
                        });
                    }
                }
            }
        });
        response.response.accessible_name("Timed section");
        if let Some(trial) = &now {
            if let Some(minutes) = context.optional_entry(
                ui,
                "Minutes it took",
                trial.minutes.map(Minutes::to_minutes),
                0,
                0.1..=10_000.0,
                50.0,
            ) {
                edit_plan(context, "Minutes of the timed section", move |plan| {
                    if let Some(trial) = &mut plan.trial {
                        trial.minutes = minutes.map(Minutes::of);
                    }
                });
            }
            ui.label("minutes of one person");
        }
    });
    context.field_problems(ui, &fields::TIMED_SECTION, At::ONCE);
    context.field_problems(ui, &fields::TIMED_MINUTES, At::ONCE);
}

pub(super) fn tasks(ui: &mut Ui, context: &mut WindowContext<'_>, option: &RepairOption) {
    trial(ui, context);
    trial_words(ui, context, option);
    Grid::new("tasks").num_columns(4).striped(true).show(ui, |ui| {
        for title in ["task", "batches", "likely min", "hours"] {
            ui.label(RichText::new(title).small().color(context.palette.soft));
        }
        ui.end_row();
        for (index, task) in option.tasks.iter().enumerate() {
            ui.push_id(index, |ui| {
                ui.set_max_width(190.0);
                ui.add(Label::new(RichText::new(&task.name).small()).wrap())
                    .on_hover_text(task.basis.say(context.words));
            });
            ui.label(show_number(task.batches, 1));
            let (id, words) = (task.id.clone(), context.words);
            let shown = show_number(task.minutes.likely, 1);
            let typed = ui.push_id(("minutes", index), |ui| {
                entry(ui, &format!("Minutes: {}", task.name), &shown, 48.0, |text| match text.trim() {
                    "" => Ok(None),
                    text => match parse_number(text).map_err(|error| error.say(words))? {
                        minutes if (0.01..=10_000.0).contains(&minutes) => Ok(Some(minutes)),
                        _ => {
                            let (low, high) = (Quantity::Number(0.01), Quantity::Number(10_000.0));
                            let text = text.to_owned();
                            Err(say!(
                                words,
                                "entry-minutes-out-of-range",
                                text = &text,
                                low = low,
                                high = high
                            ))
                        }
                    },
                })
            });
            if let Some(minutes) = typed.inner {
                let rate = task.minutes;
                edit_plan(context, "Own rate", move |plan| match minutes {
                    None => {
                        plan.own_minutes.remove(&id);
                    }
                    // The spread keeps its proportion to the likely time.
                    Some(likely) => {
                        let scale = if rate.likely > 0.0 { likely / rate.likely } else { 1.0 };
                        let own = ThreePoint { low: rate.low * scale, likely, high: rate.high * scale };
                        plan.own_minutes.insert(id, own);
                    }
                });
            }
            ui.label(show_number(task.hours.mean.to_h(), 1));
            ui.end_row();
        }
    });
    context.field_problems(ui, &fields::OWN_MINUTES, At::ONCE);
    remark(
        ui,
        context.palette,
        "A batch is 100 ft (30.5 m) of joint, 100 ft² (9.3 m²) of surface, 10 ft (3 m) of trim, a section or a visit, after the task. Hover a task for where its rate comes from; empty a field to go back to the shelf's rate.",
    );
}

/// What the trial does to the rate and to the rest of the job.
fn trial_words(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let timed = context.job.plan.trial.as_ref().and_then(|trial| trial.minutes);
    let Some(task) = option.tasks.iter().find(|task| task.basis.is_timed()) else {
        return;
    };
    let Some(timed) = timed.map(Minutes::to_minutes) else { return };
    let all = task.hours.mean.to_h();
    let rest = (all - timed / 60.0).max(0.0);
    let spread = 1.28 * task.hours.sd.to_h();
    remark(
        ui,
        context.palette,
        format!(
            "{} takes {} h in all, {} h of it still to come (± {} h four times in five). {}",
            task.name,
            show_number(all, 1),
            show_number(rest, 1),
            show_number(spread, 1),
            task.basis.say(context.words)
        ),
    );
}
