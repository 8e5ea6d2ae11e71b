//! What to check before the next install in this room.

use eframe::egui::{Grid, Label, RichText, Ui};

use crate::app::context::WindowContext;
use crate::app::widgets::{heading, remark, term};
use crate::assess::{BeforeInstall, SWELLING_ROOM, TYPICAL_SEALED_GAP};
use crate::job::fields::{self, At};
use crate::measure::Percent;
use crate::survey::SamplingPlan;
use crate::words::{Arg, Words, say};

pub(super) fn before_install(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some(state) = context.shown_section() else { return };
    let (words, before) = (context.words, &state.before_install);
    heading(ui, &words.text("install-heading"));
    Grid::new("install").num_columns(2).show(ui, |ui| {
        boards(ui, context, before);
        if let Some(plan) = &context.assessment.delivery_check {
            check(ui, words, plan);
        }
        context.field(ui, &fields::DELIVERED_AT, At::ONCE);
    });
    let acclimation = match before.acclimation {
        Some(days) => say!(words, "install-acclimation", days = days),
        None => say!(words, "install-acclimation-never"),
    };
    ui.add(Label::new(acclimation).wrap());
    remark(ui, context.palette, words.text("install-remark"));
}

/// What the boards must be.
fn boards(ui: &mut Ui, context: &WindowContext<'_>, before: &BeforeInstall) {
    let (words, target) = (context.words, &before.target);
    let moisture = words.figures().percent(target.moisture.to_pct(), 1);
    row(ui, &words.text("install-moisture"), &words.text("install-moisture.hint"), moisture);
    let hint = say!(words, "install-allowed.hint", room = SWELLING_ROOM);
    let allowed = match target.allowed {
        Some(allowed) => say!(words, "install-allowed-range", low = allowed.low, high = allowed.high),
        None => say!(words, "install-allowed-none"),
    };
    row(ui, &words.text("install-allowed"), &hint, allowed);
    let gap = words.figures().length(target.gap);
    row(ui, &words.text("install-gap"), &words.text("install-gap.hint"), gap);
    if let Some(widest) = before.widest_board {
        let hint = say!(words, "install-widest.hint", joint = TYPICAL_SEALED_GAP);
        let sealant = Arg::Name(context.assessment.sealant_name());
        let value = say!(words, "install-widest-value", width = widest, sealant = sealant);
        row(ui, &words.text("install-widest"), &hint, value);
    }
}

/// How many boards of a delivery to meter.
fn check(ui: &mut Ui, words: &Words, plan: &SamplingPlan) {
    let share = |share: f64| Percent::pct((100.0 * share).round());
    let (good, bad) = (share(plan.risks.good), share(plan.risks.bad));
    let hint = say!(words, "install-check.hint", good = good, bad = bad);
    let value = say!(
        words,
        "install-check-value",
        boards = plan.boards,
        may_fail = plan.may_fail,
        turned_away = share(plan.turned_away),
        let_in = share(plan.let_in)
    );
    row(ui, &words.text("install-check"), &hint, value);
}

fn row(ui: &mut Ui, label: &str, hint: &str, value: String) {
    term(ui, label, hint);
    ui.add(Label::new(RichText::new(value).strong()).wrap());
    ui.end_row();
}
