//! The proposal for other programs.

use schemars::JsonSchema;
use serde::Serialize;

use super::plain;
use crate::assess::Assessment;

/// The terms of the proposal of the selected option.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct ProposalReport {
    /// Its number; empty where it is filled in by hand.
    pub number: String,
    /// Its day.
    pub dated: String,
    /// The last day on which it can be accepted; null where it is filled in by hand.
    pub valid_until: Option<String>,
    /// What the owner pays in all.
    pub owner: String,
    /// What of that is due before work starts.
    pub deposit: String,
    /// What of that is due when the work is finished.
    pub balance: String,
}

impl ProposalReport {
    pub(super) fn new(assessment: &Assessment) -> Option<Self> {
        let (job, price) = (&assessment.job, assessment.chosen()?.price.as_ref()?);
        Some(Self {
            number: job.proposal.number.clone(),
            dated: job.visited.to_string(),
            valid_until: job.proposal.valid_until(job.visited).map(|date| date.to_string()),
            owner: plain(price.owner),
            deposit: plain(price.deposit),
            balance: plain(price.balance()),
        })
    }
}
