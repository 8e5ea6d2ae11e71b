//! The bead: sealant, day, which joints, its shape, and what becomes of it.

use eframe::egui::{Grid, Ui};

use crate::app::context::WindowContext;
use crate::app::widgets::remark;
use crate::assess::GUIDED_JOINT;
use crate::job::fields::{self, At};
use crate::repair::Scope;
use crate::words::{say, sealing as sentences};

pub(super) fn sealing(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let plan = &context.job.plan;
    Grid::new("sealing").num_columns(2).show(ui, |ui| {
        let sealants = &context.assessment.catalog.sealants;
        context.pick(ui, &fields::SEALANT, &plan.sealant, sealants, |job, id| job.plan.sealant = id);
        let (words, visited) = (context.words, context.job.visited);
        let not_before = |date| match date < visited {
            true => {
                Err(say!(words, "entry-before-visit", text = &words.figures().date(date), visited = visited))
            }
            false => Ok(date),
        };
        context.date(ui, &fields::SEALING_DATE, plan.seal_on, not_before, |job, date| {
            job.plan.seal_on = date;
        });
        let visits = [(false, "choice-visits-one"), (true, "choice-visits-two")];
        context.choice(ui, &fields::TWO_VISITS, plan.two_visits, &visits, |job, two| {
            job.plan.two_visits = two;
        });
        let scopes =
            [(Scope::OpenJoints, "choice-scope-open"), (Scope::EveryBoardJoint, "choice-scope-every")];
        context.choice(ui, &fields::SCOPE, plan.scope, &scopes, |job, scope| job.plan.scope = scope);
        for field in [
            &fields::OPEN_THRESHOLD,
            &fields::MIN_SEALABLE_GAP,
            &fields::V_FILL,
            &fields::BEAD_IN_SLOT,
            &fields::BEAD_HOLLOW,
            &fields::BEAD_DEPTH,
            &fields::SEALANT_WASTE,
        ] {
            context.field(ui, field, At::ONCE);
        }
    });
    let (assessment, words) = (context.assessment, context.words);
    for sentence in typical_findings(context) {
        remark(ui, context.palette, sentence);
    }
    for sentence in sentences::rows(assessment, words) {
        remark(ui, context.palette, sentence);
    }
    if let Some(outlook) = assessment.sealing_outlook() {
        let mut sentences = sentences::outlook(&outlook, words);
        sentences.extend(selected_joint(context));
        remark(ui, context.palette, sentences.join(" "));
    }
    remark(ui, context.palette, say!(words, "sealing-guide", least = GUIDED_JOINT));
}

/// What speaks against the bead in the section shown, at its mean gap on the planned day.
fn typical_findings(context: &WindowContext<'_>) -> Vec<String> {
    let Some(state) = context.shown_section() else { return vec![] };
    let Some(bead) = context.assessment.bead(state) else { return vec![] };
    let section = bead.section(state.mean_gap_on(context.assessment.seal_day));
    sentences::findings(&section.findings(), context.words)
}

/// What the selected joint asks of a bead laid on the planned day.
fn selected_joint(context: &WindowContext<'_>) -> Option<String> {
    let (_, state) = context.selected()?;
    let label = &context.view.selection.joint.as_ref()?.joint;
    sentences::joint(label, state, &context.assessment.catalog, context.words)
}
