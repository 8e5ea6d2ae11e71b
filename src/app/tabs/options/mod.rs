//! The Options room: the repairs side by side; beside them what belongs to the chosen one, its bead above
//! all.

mod bead_designs;
mod comparison;
mod risk_plot;
mod sealing;

use eframe::egui::{Label, RichText, Ui};

use crate::app::context::WindowContext;
use crate::app::fold::fold;
use crate::app::frame::NARROW;
use crate::app::joint_section;
use crate::app::widgets::{heading, remark};
use crate::assess::{EntryPlace, RepairOption};
use crate::repair::{Caution, Outcome};
use crate::words::{Arg, say};

pub(super) fn options(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    if context.assessment.options.is_empty() {
        remark(ui, context.palette, words.text("options-none"));
        return;
    }
    context.scroll_if_requested(ui, EntryPlace::Options);
    heading(ui, &words.text("options-heading"));
    comparison::comparison(ui, context);
    if ui.ctx().content_rect().width() < NARROW {
        detail(ui, context);
    }
}

/// What belongs to the chosen option: how it looks, what it asks of those who live there, its bead, and
/// what to watch for.
pub(crate) fn detail(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    let Some(option) = planned(context) else { return };
    heading(ui, &option.name);
    let (look, disruption) = (&option.look, &option.upset);
    joint_section::season_stills(ui, context, option);
    let said = say!(words, "options-afterward", look = look, disruption = disruption);
    ui.add(Label::new(said).wrap());
    if matches!(option.outcome, Outcome::Bead { .. }) {
        heading(ui, &words.text("sealing-heading"));
        sealing::sealing(ui, context);
        bead_designs::bead_designs(ui, context);
        fold(ui, "bead-strip", words.text("options-beads"), false, |ui| {
            joint_section::bead_strip(ui, context)
        });
    }
    heading(ui, &words.text("options-cautions"));
    for one in &context.assessment.cautions {
        caution(ui, context, one);
    }
}

/// The option of the plan as it is now.
pub(super) fn planned<'a>(context: &WindowContext<'a>) -> Option<&'a RepairOption> {
    context.assessment.option(context.job.plan.chosen)
}

fn caution(ui: &mut Ui, context: &WindowContext<'_>, caution: &Caution) {
    let words = context.words;
    let text = say!(words, "options-caution", title = &caution.title, text = &caution.text);
    let label = ui.add(Label::new(RichText::new(text).small()).wrap());
    if !caution.source.is_empty() {
        let kind = Arg::Id(caution.kind.key());
        label.on_hover_text(say!(words, "options-caution-source", source = &caution.source, kind = kind));
    }
}
