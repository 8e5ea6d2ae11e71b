//! The ways to mend the joints, side by side.

use eframe::egui::{Grid, Label, RichText, TextWrapMode, Ui};

use super::edit_plan;
use crate::app::context::WindowContext;
use crate::app::explain;
use crate::app::widgets::remark;
use crate::assess::RepairOption;
use crate::words::causes::chance_as_percent;
use crate::words::{self, Say as _};

/// The ways side by side, a line each; the one with the least expected cost is marked.
pub(super) fn options(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let least = context.assessment.cheapest_with_callbacks().map(|option| option.method);
    Grid::new("ways").num_columns(5).striped(true).spacing([10.0, 5.0]).show(ui, |ui| {
        for (title, why) in [
            ("way", ""),
            ("price", "With the range it lies in eight times out of ten on hover."),
            (
                "days",
                "Days of the crew's work / days from first to last / days on which the room cannot be used.",
            ),
            ("callback", "Chance that it brings the crew back within the warranty."),
            ("in all", "The price with callbacks over the warranty, at present value. Least is marked."),
        ] {
            ui.label(RichText::new(title).small().color(context.palette.soft)).on_hover_text(why);
        }
        ui.end_row();
        for (at, option) in context.assessment.options.iter().enumerate() {
            way(ui, context, at + 1, option, least == Some(option.method));
            ui.end_row();
        }
    });
    if let Some(option) =
        context.assessment.options.iter().find(|option| option.method == context.job.plan.chosen)
    {
        remark(ui, context.palette, "Days: of work / from first to last / with the room closed.");
        remark(ui, context.palette, format!("Afterwards: {}. Meanwhile: {}.", option.look, option.upset));
    }
    if let Some(choice) = &context.assessment.choice {
        ui.add(Label::new(words::options::best(context.assessment, choice, context.words)).wrap());
        for change in words::options::changes(context.assessment, choice, context.words) {
            remark(ui, context.palette, change);
        }
        super::risk_plot::risk_plot(ui, context, choice);
    }
}

fn way(ui: &mut Ui, context: &mut WindowContext<'_>, number: usize, option: &RepairOption, least: bool) {
    let currency = context.job.plan.prices.currency.clone();
    let (method, on) = (option.method, context.job.plan.chosen == option.method);
    let mut name = RichText::new(format!("{number}  {}", option.name));
    if on {
        name = name.strong();
    }
    if option.not_possible.is_some() {
        name = name.color(context.palette.soft);
    }
    ui.scope(|ui| {
        ui.set_max_width(205.0);
        ui.style_mut().wrap_mode = Some(TextWrapMode::Wrap);
        let radio = ui.radio(on, name).accessible_name(&option.name);
        if radio.clicked() && !on {
            edit_plan(context, "Choose the way", move |plan| plan.chosen = method);
        }
    });
    if let Some(reason) = &option.not_possible {
        ui.label(RichText::new("not here").small().color(context.palette.soft))
            .on_hover_text(reason.say(context.words));
        return;
    }
    let total = RichText::new(option.price.total.show_rough(&currency));
    let spread = &option.price.spread;
    ui.label(total).on_hover_text(format!(
        "{} to {}",
        spread.low.show_rough(&currency),
        spread.high.show_rough(&currency)
    ));
    let schedule = &option.schedule;
    ui.label(format!("{} / {} / {}", schedule.crew_days, schedule.calendar_days, schedule.room_out));
    match &option.callback {
        None => {
            ui.label("–").on_hover_text("Nothing is mended, so nothing can fail again.");
        }
        Some(risk) => {
            let shown = RichText::new(chance_as_percent(risk.chance, context.words));
            explain::number(ui, context, "Chance of a callback", shown, || explain::chance(context, option));
        }
    }
    let Some(expected) = option.expected else { return };
    let expected = RichText::new(expected.show_rough(&currency));
    // The mark besides the colour, for those who do not see it.
    let shown = if least { expected.strong().underline().color(context.palette.good) } else { expected };
    explain::number(ui, context, "Price with callbacks", shown, || explain::expected(context, option));
}
