//! What the papers told, as it is kept with the job.

use schemars::JsonSchema;
use serde::Serialize;

use super::{plain, round};
use crate::job::{Promise, ToldChance};

/// What the papers told.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct PromiseReport {
    /// The date on them.
    pub told_on: String,
    /// Version of the program that wrote them.
    pub program: String,
    /// Key of the option that was offered.
    pub option: String,
    /// Its price.
    pub total: String,
    /// The first day of sealing, where joints are sealed.
    pub seal_on: Option<String>,
    /// The chance of no callback that was told.
    pub lasts_pct: Option<f64>,
    /// Low end of its 90% interval.
    pub lasts_low_pct: Option<f64>,
    /// High end of its 90% interval.
    pub lasts_high_pct: Option<f64>,
    /// The last day it was told for.
    pub lasts_through: Option<String>,
    /// How many joints had been measured, whose forecasts are kept.
    pub joints: usize,
}

impl PromiseReport {
    pub(super) fn new(promise: &Promise) -> Self {
        let pct = |of: fn(&ToldChance) -> crate::measure::Percent| {
            promise.lasts.as_ref().map(|lasts| round(of(lasts).to_pct(), 1))
        };
        Self {
            told_on: promise.told_on.to_string(),
            program: promise.program.clone(),
            option: promise.option.key(),
            total: plain(promise.total),
            seal_on: promise.seal_on.map(|day| day.to_string()),
            lasts_pct: pct(|lasts| lasts.chance),
            lasts_low_pct: pct(|lasts| lasts.low),
            lasts_high_pct: pct(|lasts| lasts.high),
            lasts_through: promise.lasts.map(|lasts| lasts.until.to_string()),
            joints: promise.joints.len(),
        }
    }
}
