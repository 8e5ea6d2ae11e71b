//! Tasks with their rates, and the section that was timed.

use eframe::egui::{ComboBox, Grid, Label, RichText, Sense, Ui, UiBuilder, vec2};

use crate::app::context::WindowContext;
use crate::app::lead;
use crate::app::widgets::{columns, remark, term};
use crate::assess::{EntryPlace, RepairOption};
use crate::job::fields::{self, At, Item};
use crate::measure::{Minutes, Quantity};
use crate::repair::{TaskHours, Trial};
use crate::words::{Arg, Say as _, Words, say, work};

/// Room for how much of a task there is to do.
const QUANTITY: f32 = 196.0;

pub(super) fn tasks(ui: &mut Ui, context: &mut WindowContext<'_>, option: &RepairOption) {
    let words = context.words;
    timed_section(ui, context);
    Grid::new("tasks").num_columns(4).striped(true).show(ui, |ui| {
        columns(
            ui,
            context.palette,
            words,
            &[
                "price-tasks-column-task",
                "price-tasks-column-batches",
                "price-tasks-column-minutes",
                "price-tasks-column-hours",
            ],
        );
        for (index, task) in option.tasks.iter().enumerate() {
            // The same may be done on several days.
            let nth = option.tasks[..index].iter().filter(|other| other.id == task.id).count();
            row(ui, context, (index, nth), task);
            ui.end_row();
        }
    });
    context.field_problems(ui, &fields::OWN_MINUTES, At::ONCE);
    if let Some(timed) = context.assessment.timed_work(option) {
        // Under the table: it may come, go, or take another line when minutes are typed.
        remark(ui, context.palette, timed.say(words)).on_hover_text(timed.task.basis.say(words));
    }
    remark(ui, context.palette, words.text("price-tasks-remark"));
}

/// A task with its batches, minutes and hours: the one at `index`, the `nth` of its kind.
fn row(ui: &mut Ui, context: &mut WindowContext<'_>, (index, nth): (usize, usize), task: &TaskHours) {
    let (words, figures) = (context.words, context.words.figures());
    ui.push_id(index, |ui| {
        ui.set_max_width(190.0);
        let name = Label::new(RichText::new(work::name(task, words)).small()).wrap();
        ui.add(name).on_hover_text(work::batch(task, words) + " " + &work::basis(task, words));
    });
    quantity(ui, task, words);
    let name = say!(words, "price-task-minutes", task = Arg::Called(&task.name));
    let mean = Quantity::Minutes(Minutes::of(task.minutes.mean()));
    let typed = ui.push_id(("minutes", task.id.as_str(), nth), |ui| {
        let item = Item::Id(task.id.clone());
        context.listed_figure(ui, &fields::OWN_MINUTES, (At::ONCE, &item), Some(mean), &name)
    });
    if let Some(typed) = typed.inner {
        let (id, rate) = (task.id.clone(), task.minutes);
        let mean = match typed {
            Some(Quantity::Minutes(minutes)) => Some(minutes),
            _ => None,
        };
        context.edit("field-own-minutes", move |job| job.plan.set_own_minutes(&id, rate, mean));
    }
    ui.label(figures.number(task.hours.mean.to_h(), 1));
}

/// How much there is to do, in one line of one width whatever it is: no row grows by it. What does not fit
/// is told on hover, with what comes on top.
fn quantity(ui: &mut Ui, task: &TaskHours, words: &Words) {
    let (text, besides) = (work::quantity_and_besides(task, words), work::besides(task, words));
    let shown = Label::new(RichText::new(&text).small()).truncate();
    let (cell, _) = ui.allocate_exact_size(vec2(QUANTITY, 18.0), Sense::hover());
    // A part of the cell, not a cell of its own: what follows stays under its heading.
    let response = ui.new_child(UiBuilder::new().max_rect(cell)).add(shown);
    if !besides.is_empty() {
        response.on_hover_text(text + ". " + &besides);
    }
}

/// One section, scraped against the clock.
fn timed_section(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (job, words) = (context.job, context.words);
    let label = fields::TIMED_SECTION.label(words);
    context.scroll_if_requested(ui, EntryPlace::TimedSection);
    ui.horizontal_wrapped(|ui| {
        term(ui, &label, &fields::TIMED_SECTION.hint(words).unwrap_or_default());
        let shown = job.plan.trial.as_ref().map(|timed| format!("{} {}", timed.surface, timed.section));
        let shown = shown.unwrap_or_else(|| words.text("price-timed-none").into_owned());
        let combo = ComboBox::from_id_salt("timed section").selected_text(shown).width(130.0);
        let response = combo.show_ui(ui, |ui| section_choice(ui, context));
        context.reach(ui, &fields::TIMED_SECTION, At::ONCE, None);
        lead::take_focus(&response.response.accessible_name(&label));
        if job.plan.trial.is_some() {
            let label = fields::TIMED_MINUTES.label(words);
            context.figure(ui, &fields::TIMED_MINUTES, At::ONCE, &label);
            term(ui, &label, &fields::TIMED_MINUTES.hint(words).unwrap_or_default());
            let mut charged = job.plan.charge_timed;
            let box_label = fields::CHARGE_TIMED.label(words);
            let hint = fields::CHARGE_TIMED.hint(words).unwrap_or_default();
            if ui.checkbox(&mut charged, box_label).on_hover_text(hint).changed() {
                context.edit("field-charge-timed", move |job| job.plan.charge_timed = charged);
            }
            context.reach(ui, &fields::CHARGE_TIMED, At::ONCE, None);
        }
    });
    for field in [&fields::TIMED_SECTION, &fields::TIMED_MINUTES] {
        context.field_problems(ui, field, At::ONCE);
    }
}

/// The sections of all surfaces, to choose the timed one from.
fn section_choice(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let job = context.job;
    let now = job.plan.trial.as_ref();
    if ui.selectable_label(now.is_none(), context.words.text("price-timed-none")).clicked() {
        context.edit("field-timed-section", |job| job.plan.trial = None);
    }
    for surface in &job.surfaces {
        for section in &surface.sections {
            let on = now.is_some_and(|timed| timed.surface == surface.name && timed.section == section.name);
            if ui.selectable_label(on, format!("{} {}", surface.name, section.name)).clicked() {
                let (surface, section) = (surface.name.clone(), section.name.clone());
                let minutes = now.and_then(|timed| timed.minutes);
                let timed = Trial { surface, section, minutes };
                context.edit("field-timed-section", move |job| job.plan.trial = Some(timed));
            }
        }
    }
}
