//! Repair: the ways side by side, then plan, tasks, materials and price of the chosen one.

mod crew;
mod days;
mod materials;
mod options;
mod payers;
mod price;
mod risk_plot;
mod sealing;
mod tasks;

use eframe::egui::{Align, CollapsingHeader, ComboBox, Label, Layout, RichText, Ui, vec2};

use crate::app::context::WindowContext;
use crate::app::entry::entry;
use crate::app::widgets::{heading, remark};
use crate::measure::{Money, parse_money};
use crate::repair::{Outcome, Plan};

pub(super) fn repair(ui: &mut Ui, context: &mut WindowContext<'_>) {
    if context.assessment.options.is_empty() {
        remark(ui, context.palette, "Draw the boards first: then the ways to mend them are worked out here.");
        return;
    }
    context.scroll_if_requested(ui, crate::assess::EntryPlace::Ways);
    heading(ui, "The ways");
    options::options(ui, context);
    let Some(option) =
        context.assessment.options.iter().find(|option| option.method == context.job.plan.chosen)
    else {
        return;
    };
    if matches!(option.outcome, Outcome::Bead { .. }) {
        heading(ui, "Sealing");
        sealing::sealing(ui, context);
    }
    heading(ui, &format!("Price: {}", option.price.total.show(&context.job.plan.prices.currency)));
    price::price(ui, context, option);
    section(ui, "What it may turn out to cost", false, |ui| price::spread(ui, context, option));
    section(ui, "Who pays", true, |ui| payers::payers(ui, context, option));
    section(ui, "The room and the crew", false, |ui| crew::crew(ui, context));
    section(ui, "Rates of money", false, |ui| crew::money(ui, context));
    section(ui, &format!("Tasks: {}", option.hours.show()), true, |ui| tasks::tasks(ui, context, option));
    section(ui, "Materials", false, |ui| materials::materials(ui, context, option));
    let schedule = &option.schedule;
    let days = format!("Days: {} of work over {}", schedule.crew_days, schedule.calendar_days);
    section(ui, &days, false, |ui| days::days(ui, context, option));
    heading(ui, "Cautions");
    for caution in &context.assessment.cautions {
        let text = RichText::new(format!("{}. {}", caution.title, caution.text)).small();
        let label = ui.add(Label::new(text).wrap());
        if !caution.source.is_empty() {
            label.on_hover_text(format!("{} ({})", caution.source, caution.kind.words()));
        }
    }
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

/// A drop-down of names of the shelf.
fn named(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    what: &'static str,
    now: &str,
    names: &[&str],
    set: fn(&mut Plan, String),
) {
    let combo = ComboBox::from_id_salt(what).selected_text(now).width(230.0);
    let response = combo.show_ui(ui, |ui| {
        for name in names {
            if ui.selectable_label(*name == now, *name).clicked() {
                let name = (*name).to_owned();
                edit_plan(context, what, move |plan| set(plan, name));
            }
        }
    });
    response.response.accessible_name(what);
}

/// An amount of money, so that cents stand under cents.
fn amount_label(ui: &mut Ui, text: String) {
    let layout = Layout::right_to_left(Align::Center);
    ui.allocate_ui_with_layout(vec2(84.0, 18.0), layout, |ui| ui.label(text));
}

/// An amount as it can be typed again.
fn plain_money(amount: Money) -> String {
    amount.show("").replace(',', "").replace('−', "-")
}

fn money_entry(ui: &mut Ui, name: &str, value: Money) -> Option<Money> {
    entry(ui, name, &plain_money(value), 66.0, read_money)
}

fn read_money(text: &str) -> Result<Money, String> {
    let amount = parse_money(text).map_err(|error| error.to_string())?;
    if amount < Money::ZERO {
        return Err(format!("“{}” is less than nothing. Type 0 if it costs nothing", text.trim()));
    }
    Ok(amount)
}
