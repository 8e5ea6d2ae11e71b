//! What to check before the next install in this room.

use eframe::egui::{Grid, Label, RichText, Ui};

use crate::app::context::WindowContext;
use crate::app::widgets::{heading, remark, term};
use crate::measure::{Moisture, show_number};
use crate::survey::{Risks, sampling_plan};

pub(super) fn before_install(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some(state) = context.shown_section() else { return };
    let units = context.units();
    let before = state.before_install.clone();
    let target = before.target;
    heading(ui, "Before the next install");
    Grid::new("install").num_columns(2).show(ui, |ui| {
        let mut row = |name: &str, why: &str, value: String| {
            term(ui, name, why);
            ui.add(Label::new(RichText::new(value).strong()).wrap());
            ui.end_row();
        };
        row("Boards at", "The moisture that this room keeps such boards at over the year.", target.moisture.show());
        row(
            "Allowed",
            "Wetter, and joints open past what the eye forgives at the year's driest; drier, and they need more than 1/32 in of room at its dampest.",
            target.allowed.map_or_else(
                || "no moisture suits: boards this wide move too much for this room".to_owned(),
                |allowed| format!("{} to {}", allowed.low.show(), allowed.high.show()),
            ),
        );
        row("Gap to leave", "What boards at that moisture swell by at the year's dampest.", target.gap.show(units));
        if let Some(widest) = before.widest_board {
            row(
                "Widest board",
                "Whose joint, 1/8 in wide and sealed at the year's mean, stays within the chosen sealant's class all year.",
                format!("{} for {}", widest.show(units), context.assessment.sealant_name()),
            );
        }
        if let Some(plan) = sampling_plan(&Risks::default()) {
            row(
                "Measure",
                "A sampling plan: a delivery with 1 board in 20 out of limits is sent back, one with 1 in 4 taken, with the risks named.",
                format!(
                    "{} boards; take them if at most {} are out of limits (risks {} % and {} %)",
                    plan.boards,
                    plan.may_fail,
                    show_number(100.0 * plan.turned_away, 0),
                    show_number(100.0 * plan.let_in, 0)
                ),
            );
        }
    });
    ui.horizontal(|ui| {
        term(ui, "Delivered at, %", "What the meter shows when the boards come.");
        let delivered = context.job.plan.delivered_at.to_pct();
        if let Some(pct) = context.number_entry(ui, "Delivered at", delivered, 1, 2.0..=60.0, 50.0) {
            context.edit("Moisture at delivery", move |job| job.plan.delivered_at = Moisture::pct(pct));
        }
        let words = match before.acclimation {
            Some(0) => "they are there already".to_owned(),
            Some(1) => "1 day on stickers in the room".to_owned(),
            Some(days) => format!("{days} days on stickers in the room"),
            None => "the room does not bring them there within a year".to_owned(),
        };
        ui.label(words);
    });
    remark(
        ui,
        context.palette,
        "From the day of the visit, bare, open to the room on both faces, until they are within what is allowed. Measure before they go up: the days are a guide, the meter decides.",
    );
}
