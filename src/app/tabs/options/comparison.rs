//! The repair options side by side.

use eframe::egui::{Grid, Label, RichText, TextStyle, TextWrapMode, Ui};

use crate::app::context::WindowContext;
use crate::app::explain;
use crate::app::widgets::{columns, remark, text_width};
use crate::assess::RepairOption;
use crate::measure::{Money, Percent};
use crate::repair::{CostDriver, Outcome};
use crate::words::causes::chance_as_percent;
use crate::words::verdict::chance_with_range;
use crate::words::{self, Arg, Say as _, Words, say};

/// Width of the columns with figures, and of the space between them: with the ranges beside them, and
/// without.
const FIGURES: (f32, f32) = (540.0, 380.0);
/// Least width of the names.
const NAMES: f32 = 150.0;

/// The columns.
const COLUMNS: [&str; 5] = [
    "options-column-option",
    "options-column-price",
    "options-column-days",
    "options-column-callback",
    "options-column-total",
];

/// The options, a line each; the one with the least expected cost is marked.
pub(super) fn comparison(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (words, assessment) = (context.words, context.assessment);
    // Names take what the figures leave.
    let with_ranges = ui.available_width() >= FIGURES.0 + NAMES;
    let figures_width = if with_ranges { FIGURES.0 } else { FIGURES.1 };
    let names = (ui.available_width() - figures_width).clamp(NAMES, 420.0);
    let least = assessment.best().map(|option| option.method);
    Grid::new("options").num_columns(5).striped(true).spacing([10.0, 5.0]).show(ui, |ui| {
        columns(ui, context.palette, words, &COLUMNS);
        for (at, option) in assessment.options.iter().enumerate() {
            let least = least == Some(option.method);
            name(ui, context, at + 1, option, names);
            figures(ui, context, option, (least, with_ranges));
            ui.end_row();
        }
    });
    if super::planned(context).is_some() {
        remark(ui, context.palette, words.text("options-days-legend"));
    }
    let bead = super::planned(context).filter(|option| matches!(option.outcome, Outcome::Bead { .. }));
    let risk = bead.and_then(|option| option.callback.as_ref());
    if let Some(range) = risk.and_then(|risk| words::verdict::paint_range(risk, words)) {
        remark(ui, context.palette, range);
    }
    if let Some(choice) = &assessment.choice {
        ui.add(Label::new(words::options::best(assessment, choice, words)).wrap());
        for change in words::options::changes(assessment, choice, words) {
            remark(ui, context.palette, change);
        }
        super::risk_plot::risk_plot(ui, context, choice);
    }
}

/// An option's price, days, chance and cost with callbacks.
fn figures(
    ui: &mut Ui,
    context: &WindowContext<'_>,
    option: &RepairOption,
    (least, with_ranges): (bool, bool),
) {
    let words = context.words;
    if let Some(reason) = &option.not_possible {
        ui.label(RichText::new(words.text("options-not-here")).small().color(context.palette.soft))
            .on_hover_text(reason.say(words));
        return;
    }
    let figures = words.figures();
    let (low, high) = (option.price.spread.low, option.price.spread.high);
    let total = option.price.total;
    if low == high {
        ui.label(figures.rough_money(total));
    } else {
        let (total, low, high) = (Arg::RoughMoney(total), Arg::RoughMoney(low), Arg::RoughMoney(high));
        let range = say!(words, "options-price", total = total, low = low, high = high);
        let (shown, more) = if with_ranges {
            (range, drivers(option, words))
        } else {
            (figures.rough_money(option.price.total), range)
        };
        ui.label(shown).on_hover_text(more);
    }
    let days = &option.schedule;
    let (crew, calendar, out) = (days.crew_days, days.calendar_days, days.room_out);
    ui.label(say!(words, "options-days", crew = crew, calendar = calendar, out = out));
    match &option.callback {
        None => {
            ui.label(words.text("no-figure")).on_hover_text(words.text("options-no-callback"));
        }
        Some(risk) => {
            let chance = if with_ranges {
                chance_with_range(risk, words)
            } else {
                chance_as_percent(risk.chance, words)
            };
            let shown = RichText::new(chance);
            let what = words.text("options-chance");
            // As wide as the widest: what stands beside it stays where it is.
            let widest = if with_ranges {
                let sure = Percent::pct(100.0);
                say!(
                    words,
                    "options-chance-range",
                    chance = &chance_as_percent(1.0, words),
                    low = sure,
                    high = sure
                )
            } else {
                chance_as_percent(1.0, words)
            };
            let width = text_width(ui, &widest, &TextStyle::Body);
            ui.horizontal(|ui| {
                ui.set_min_width(width);
                explain::number(ui, context, &what, shown, || explain::chance(context, option));
            });
        }
    }
    let Some(expected) = option.expected else { return };
    let expected = RichText::new(figures.rough_money(expected));
    // The underline stands beside the color, for those who do not see it.
    let shown = if least { expected.strong().underline().color(context.palette.good) } else { expected };
    let what = words.text("options-total");
    explain::number(ui, context, &what, shown, || explain::expected(context, option));
}

/// What moves a price most: the two inputs, and by how much.
fn drivers(option: &RepairOption, words: &Words) -> String {
    let one = |(driver, swing): &(CostDriver, Money)| {
        say!(words, "options-price-driver", what = &driver.say(words), swing = Arg::RoughMoney(*swing))
    };
    let most: Vec<String> = option.cost.drivers.iter().take(2).map(one).collect();
    say!(words, "options-price-drivers", drivers = &words.figures().list(&most))
}

/// The option's name, with which it is chosen.
fn name(ui: &mut Ui, context: &mut WindowContext<'_>, number: usize, option: &RepairOption, width: f32) {
    let (method, chosen) = (option.method, context.job.plan.chosen == option.method);
    let shown = say!(context.words, "options-name", number = number, option = &option.name);
    let mut shown = RichText::new(shown);
    if chosen {
        shown = shown.strong();
    }
    if option.not_possible.is_some() {
        shown = shown.color(context.palette.soft);
    }
    ui.scope(|ui| {
        ui.set_max_width(width);
        ui.style_mut().wrap_mode = Some(TextWrapMode::Wrap);
        let radio = ui.radio(chosen, shown).accessible_name(&option.name);
        if radio.clicked() && !chosen {
            context.edit("field-option", move |job| job.plan.chosen = method);
        }
    });
}
