//! The options side by side, and the price of the chosen one.

mod crew;
mod days;
mod materials;
mod options;
mod payers;
mod price;
mod risk_plot;
mod sealing;
mod tasks;

use eframe::egui::{Align, CollapsingHeader, Label, Layout, RichText, Ui, vec2};

use crate::app::context::WindowContext;
use crate::app::widgets::{heading, remark};
use crate::assess::{EntryPlace, RepairOption};
use crate::measure::{Money, parse_money};
use crate::repair::{Outcome, Plan};
use crate::words::{Say as _, Words, say};

/// The room of the options: which repair, and its bead.
pub(super) fn options(ui: &mut Ui, context: &mut WindowContext<'_>) {
    if context.assessment.options.is_empty() {
        remark(ui, context.palette, "Draw the boards first: then the ways to mend them are worked out here.");
        return;
    }
    context.scroll_if_requested(ui, EntryPlace::Options);
    heading(ui, "The ways");
    options::options(ui, context);
    let Some(option) = planned(context) else { return };
    if matches!(option.outcome, Outcome::Bead { .. }) {
        heading(ui, "Sealing");
        sealing::sealing(ui, context);
    }
    heading(ui, "Cautions");
    for caution in &context.assessment.cautions {
        let text = RichText::new(format!("{}. {}", caution.title, caution.text)).small();
        let label = ui.add(Label::new(text).wrap());
        if !caution.source.is_empty() {
            label.on_hover_text(format!("{} ({})", caution.source, caution.kind.say(context.words)));
        }
    }
}

/// The option of the plan as it is now.
fn planned<'a>(context: &WindowContext<'a>) -> Option<&'a RepairOption> {
    context.assessment.options.iter().find(|option| option.method == context.job.plan.chosen)
}

/// The main pane of the price: days, crew, tasks, materials.
pub(super) fn price(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some(option) = planned(context) else {
        remark(ui, context.palette, "Draw the boards first: then the ways to mend them are worked out here.");
        return;
    };
    let schedule = &option.schedule;
    let days = format!("Days: {} of work over {}", schedule.crew_days, schedule.calendar_days);
    section(ui, &days, true, |ui| days::days(ui, context, option));
    section(ui, "The room and the crew", true, |ui| crew::crew(ui, context));
    section(ui, &format!("Tasks: {}", option.hours.show()), true, |ui| tasks::tasks(ui, context, option));
    section(ui, "Materials", true, |ui| materials::materials(ui, context, option));
}

/// The pane of the money: price, spread, who pays, rates.
pub(in crate::app) fn money(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some(option) = planned(context) else { return };
    heading(ui, &format!("Price: {}", option.price.total.show(&context.job.plan.prices.currency)));
    price::price(ui, context, option);
    section(ui, "What it may turn out to cost", true, |ui| price::spread(ui, context, option));
    section(ui, "Who pays", true, |ui| payers::payers(ui, context, option));
    section(ui, "Rates of money", true, |ui| crew::money(ui, context));
}

/// A part of the leaf that folds away.
fn section(ui: &mut Ui, title: &str, open: bool, show: impl FnOnce(&mut Ui)) {
    // The title carries figures that change; the fold must not depend on them.
    let name = title.split(':').next().unwrap_or(title);
    CollapsingHeader::new(title).id_salt(name).default_open(open).show(ui, show);
}

pub(super) fn edit_plan(
    context: &mut WindowContext<'_>,
    name: &str,
    change: impl FnOnce(&mut Plan) + 'static,
) {
    context.edit(name, move |job| change(&mut job.plan));
}

/// An amount of money, so that cents stand under cents.
fn amount_label(ui: &mut Ui, text: String) {
    let layout = Layout::right_to_left(Align::Center);
    ui.allocate_ui_with_layout(vec2(84.0, 18.0), layout, |ui| ui.label(text));
}

/// Reads an amount that is not negative.
pub(super) fn read_money(text: &str, words: &Words) -> Result<Money, String> {
    let amount = parse_money(text).map_err(|error| error.say(words))?;
    if amount < Money::ZERO {
        return Err(say!(words, "entry-negative-amount", text = &text.trim().to_owned()));
    }
    Ok(amount)
}
