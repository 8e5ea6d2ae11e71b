//! The terms of the proposal.

use eframe::egui::{Grid, Ui};

use crate::app::context::WindowContext;
use crate::app::fold::fold;
use crate::app::widgets::{multiline, remark};
use crate::job::fields::{self, At};

pub(super) fn terms(ui: &mut Ui, context: &mut WindowContext<'_>) {
    fold(ui, "proposal-terms", context.words.text("papers-proposal-terms"), false, |ui| {
        let terms = &context.job.proposal;
        Grid::new("proposal terms").num_columns(2).show(ui, |ui| {
            context.line(ui, &fields::PROPOSAL_NUMBER, &terms.number, |job, text| job.proposal.number = text);
            context.field(ui, &fields::PROPOSAL_VALID, At::ONCE);
        });
        let payment = fields::PAYMENT_TERMS.label(context.words);
        remark(ui, context.palette, payment.as_str());
        context.reach(ui, &fields::PAYMENT_TERMS, At::ONCE, None);
        if let Some(text) = multiline(ui, &payment, &terms.payment) {
            context.edit("field-payment-terms", |job| job.proposal.payment = text);
        }
        let exclusions = fields::EXCLUSIONS.label(context.words);
        remark(ui, context.palette, exclusions.as_str());
        context.reach(ui, &fields::EXCLUSIONS, At::ONCE, None);
        if let Some(text) = multiline(ui, &exclusions, &terms.exclusions) {
            context.edit("field-exclusions", |job| job.proposal.exclusions = text);
        }
    });
}
