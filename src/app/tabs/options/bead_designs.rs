//! The bead that lasts longest, by kind of joint and sealant.

use eframe::egui::{Grid, Label, RichText, Ui};

use crate::app::context::WindowContext;
use crate::app::fold::fold;
use crate::app::widgets::{columns, remark};
use crate::assess::{JointBeads, SealantBeads};
use crate::joint::BeadLay;
use crate::measure::Percent;
use crate::named::position;
use crate::repair::MethodId;
use crate::words::{bead_designs as sentences, say};

/// The columns.
const COLUMNS: [&str; 5] = [
    "bead-design-column-sealant",
    "bead-design-column-lasts",
    "bead-design-column-usual",
    "bead-design-column-cost",
    "bead-design-column-minutes",
];

/// What the columns of figures take of the width, in points; the names of sealants have the rest.
const FIGURES_WIDTH: f32 = 260.0;

pub(super) fn bead_designs(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    if context.assessment.bead_designs.is_empty() {
        return;
    }
    fold(ui, "bead-designs", words.text("bead-design-heading"), false, |ui| {
        for (at, beads) in context.assessment.bead_designs.iter().enumerate() {
            ui.strong(sentences::joints(beads, words));
            planned_sealant(ui, context, beads);
            let name_width = (ui.available_width() - FIGURES_WIDTH).clamp(70.0, 190.0);
            Grid::new(("bead-designs", at)).num_columns(COLUMNS.len()).striped(true).show(ui, |ui| {
                columns(ui, context.palette, words, &COLUMNS);
                for of in &beads.sealants {
                    row(ui, context, of, name_width);
                }
            });
            ui.add_space(6.0);
        }
        remark(ui, context.palette, words.text("bead-design-note"));
    });
}

/// The best bead of the plan's sealant in words, and a button to take it over.
fn planned_sealant(ui: &mut Ui, context: &mut WindowContext<'_>, beads: &JointBeads) {
    let (words, assessment) = (context.words, context.assessment);
    let planned = position(&assessment.catalog.sealants, &context.job.plan.sealant);
    let Some(of) = beads.sealants.iter().find(|of| Some(of.sealant) == planned) else { return };
    let said = sentences::advice(assessment, beads, of, words).join(" ");
    ui.add(Label::new(said).wrap());
    let (form, method) = (of.best.form, method(of.best.lay));
    let (plan, now) = (&context.job.plan, context.job.plan.bead.form());
    if now == form && plan.chosen == method {
        return;
    }
    let button = ui.button(words.text("bead-design-take"));
    if button.on_hover_text(words.text("bead-design-take.hint")).clicked() {
        context.edit("bead-design-take", move |job| {
            let bead = &mut job.plan.bead;
            (bead.v_filled, bead.in_slot) = (form.v_filled, form.in_slot);
            (bead.hollow, bead.least_depth) = (form.hollow, form.least_depth);
            job.plan.choose(method);
        });
    }
}

/// The method that lays a bead so and does nothing else.
const fn method(lay: BeadLay) -> MethodId {
    match lay {
        BeadLay::Bridge => MethodId::Reseal,
        BeadLay::OnTongue => MethodId::ResealOnTongue,
        BeadLay::Reveal => MethodId::Reveal,
    }
}

fn row(ui: &mut Ui, context: &WindowContext<'_>, of: &SealantBeads, name_width: f32) {
    let (words, catalog) = (context.words, &context.assessment.catalog);
    let Some(sealant) = catalog.sealants.get(of.sealant) else { return };
    let planned = position(&catalog.sealants, &context.job.plan.sealant) == Some(of.sealant);
    let text = |text: String| {
        if planned { RichText::new(text).small().strong() } else { RichText::new(text).small() }
    };
    let share = |share: Percent| words.figures().percent(share.to_pct(), 0);
    let name = words.called(&sealant.name);
    ui.vertical(|ui| {
        ui.set_width(name_width);
        ui.add(Label::new(text(name.into_owned())).wrap());
    });
    ui.label(text(share(of.best.lasts)));
    ui.label(text(share(of.usual.lasts)));
    ui.label(text(say!(words, "bead-design-cost", cost = of.best.cost)));
    ui.label(text(words.figures().number(of.best.minutes.to_minutes(), 0)));
    ui.end_row();
}
