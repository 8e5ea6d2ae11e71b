//! The Price room: days, crew, tasks and materials; beside them the money.

mod build_up;
mod crew;
mod days;
mod materials;
mod payers;
mod tasks;

use eframe::egui::{Align, Color32, Label, Layout, RichText, Sense, Ui, UiBuilder, vec2};

use super::options::planned;
use crate::app::context::WindowContext;
use crate::app::fold::fold;
use crate::app::frame::NARROW;
use crate::app::widgets::{heading, remark};
use crate::assess::RepairOption;
use crate::measure::{Money, parse_money};
use crate::words::causes::chance_as_percent;
use crate::words::{Arg, Say as _, Words, options, say};

/// Room for an amount of money.
const AMOUNT: f32 = 84.0;

/// The main pane of the price: days, crew, tasks, materials.
pub(super) fn price(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    let Some(option) = planned(context) else {
        remark(ui, context.palette, words.text("options-none"));
        return;
    };
    let schedule = &option.schedule;
    let (crew, calendar) = (schedule.crew_days, schedule.calendar_days);
    let title = say!(words, "price-days-heading", crew = crew, calendar = calendar);
    section(ui, "days", &title, |ui| days::days(ui, context, option));
    section(ui, "crew", &words.text("price-crew-heading"), |ui| crew::crew(ui, context));
    let title = say!(words, "price-tasks-heading", hours = option.hours);
    section(ui, "tasks", &title, |ui| tasks::tasks(ui, context, option));
    let title = words.text("price-materials-heading");
    section(ui, "materials", &title, |ui| materials::materials(ui, context, option));
    if ui.ctx().content_rect().width() < NARROW {
        money(ui, context);
    }
}

/// The pane of the money: price, rates, who pays, spread.
pub(in crate::app) fn money(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some(option) = planned(context) else { return };
    let words = context.words;
    match &option.price {
        Some(price) => {
            heading(
                ui,
                &say!(words, "price-heading", option = Arg::Called(&option.name), total = price.total),
            );
            lasts(ui, context, option);
            build_up::price(ui, context, option, price);
        }
        None => {
            heading(ui, &words.text("price-none-heading"));
            let reason = option.not_possible.map(|reason| options::not_here(option, reason, words));
            remark(ui, context.palette, reason.unwrap_or_default());
        }
    }
    section(ui, "rates", &words.text("price-rates-heading"), |ui| crew::money(ui, context));
    let Some(price) = &option.price else { return };
    section(ui, "payers", &words.text("price-payers-heading"), |ui| payers::payers(ui, context, price));
    // What follows from entries stands under them: it may grow and shrink without moving them.
    section(ui, "spread", &words.text("price-spread-heading"), |ui| build_up::spread(ui, context, option));
}

/// Whether what is priced lasts, in one line whatever it says.
fn lasts(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let (words, palette) = (context.words, context.palette);
    let chance = option.callback.as_ref().map(|risk| chance_as_percent(1.0 - risk.chance, words));
    let chance = chance.map_or_else(String::new, |chance| say!(words, "options-lasts", chance = &chance));
    let best = context.assessment.best().filter(|best| best.method != option.method);
    let (said, color) = match best.filter(|_| context.assessment.advises_against(option)) {
        Some(best) => {
            let best = Arg::Called(&best.name);
            (say!(words, "price-against", chance = &chance, best = best), palette.warn)
        }
        None => (chance, palette.soft),
    };
    ui.add(Label::new(RichText::new(&said).color(color)).truncate()).on_hover_text(said);
}

/// A part of the tab that folds away. Its title may carry figures that change; the fold goes by `id`.
fn section(ui: &mut Ui, id: &str, title: &str, show: impl FnOnce(&mut Ui)) {
    fold(ui, id, title, true, show);
}

/// An amount of money in this ink, so that cents stand under cents.
fn amount(ui: &mut Ui, context: &WindowContext<'_>, amount: Money, ink: Color32) {
    // The cell is as wide as the table takes it to be, so that its stripes reach under the cents.
    let (cell, _) = ui.allocate_exact_size(vec2(AMOUNT, 18.0), Sense::hover());
    // A part of the cell, not a cell of its own: the next one stays under its heading.
    let layout = Layout::right_to_left(Align::Center);
    let mut inside = ui.new_child(UiBuilder::new().max_rect(cell).layout(layout));
    inside.label(RichText::new(context.words.figures().money(amount)).color(ink));
}

/// Reads an amount that is not negative.
pub(super) fn read_money(text: &str, words: &Words) -> Result<Money, String> {
    let amount = parse_money(text).map_err(|error| error.say(words))?;
    if amount < Money::ZERO {
        return Err(say!(words, "entry-negative-amount", text = &text.trim().to_owned()));
    }
    Ok(amount)
}
