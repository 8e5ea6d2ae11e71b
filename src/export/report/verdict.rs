//! The verdict in the report.

use schemars::JsonSchema;
use serde::Serialize;

use super::round;
use crate::assess::{Assessment, Recommendation, SealTime};
use crate::words::{Say as _, Words, answer, verdict};

/// The answer in three lines.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct VerdictReport {
    /// The lines, in words.
    pub lines: Vec<String>,
    /// `not_yet`, `rough`, `fairly_sure` or `sure`.
    pub confidence: &'static str,
    /// What keeps it from being surer: a key.
    pub doubt: Option<&'static str>,
    /// The same in words.
    pub reason: String,
    /// What to do; null while there is not enough to go on.
    pub recommended: Option<RecommendationReport>,
    /// What would make it surer than anything else.
    pub helps_most: Option<String>,
    /// What must be entered before anything is recommended.
    pub missing: Vec<String>,
}

/// What to do, when, for how much and with what chance.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct RecommendationReport {
    /// The option's key.
    pub method: String,
    /// When to seal, in words.
    pub when: Option<String>,
    /// First day of that.
    pub when_from: Option<String>,
    /// Last day of that.
    pub when_to: Option<String>,
    /// The first day of work, as planned; null once it is finished.
    pub starts: Option<String>,
    /// Price.
    pub total: Option<String>,
    /// The price's 10th percentile.
    pub total_low: Option<String>,
    /// The price's 90th percentile.
    pub total_high: Option<String>,
    /// Days on which the crew works.
    pub crew_days: Option<u32>,
    /// Chance of no callback within the warranty.
    pub lasts_pct: Option<f64>,
    /// The same if paint never cracked over a sound bead.
    pub lasts_with_sound_paint_pct: Option<f64>,
    /// Low end of its 90% interval, by what is not known of the house and its boards.
    pub lasts_low_pct: Option<f64>,
    /// High end of its 90% interval.
    pub lasts_high_pct: Option<f64>,
    /// Last day of the warranty.
    pub lasts_through: Option<String>,
    /// Whether it will likely last.
    pub lasts: bool,
    /// Key of another option that costs less with callbacks.
    pub cheaper: Option<String>,
}

impl VerdictReport {
    /// The verdict on what was assessed.
    pub(super) fn new(assessment: &Assessment, words: &Words) -> Self {
        let found = assessment.verdict();
        let entry = |entry| answer::missing(assessment, entry, words);
        Self {
            lines: verdict::lines(assessment, &found, words),
            confidence: found.confidence.key(),
            doubt: found.confidence.doubt().map(crate::assess::Doubt::key),
            reason: verdict::reason(assessment, &found, words),
            recommended: found
                .recommended
                .as_ref()
                .map(|recommended| RecommendationReport::new(recommended, words)),
            helps_most: found.helps_most.map(entry),
            missing: found.missing.iter().copied().map(entry).collect(),
        }
    }
}

impl RecommendationReport {
    fn new(recommended: &Recommendation, words: &Words) -> Self {
        let (from, to) = match recommended.when {
            Some(SealTime::On(day)) => (Some(day), Some(day)),
            Some(SealTime::Between(from, to)) => (Some(from), Some(to)),
            Some(SealTime::AnyTime) | None => (None, None),
        };
        let (quote, lasting) = (recommended.quote, recommended.lasting);
        let percent = |chance: f64| round(100.0 * chance, 1);
        Self {
            method: recommended.method.key(),
            when: recommended.when.map(|when| when.say(words)),
            when_from: from.map(|day| day.to_string()),
            when_to: to.map(|day| day.to_string()),
            starts: recommended.finished.is_none().then(|| recommended.starts.to_string()),
            total: quote.map(|quote| quote.total.plain()),
            total_low: quote.map(|quote| quote.spread.low.plain()),
            total_high: quote.map(|quote| quote.spread.high.plain()),
            crew_days: quote.and_then(|quote| quote.crew_days),
            lasts_pct: lasting.map(|lasting| percent(lasting.chance)),
            lasts_with_sound_paint_pct: lasting.map(|lasting| percent(lasting.with_sound_paint)),
            lasts_low_pct: lasting.map(|lasting| percent(lasting.interval.low)),
            lasts_high_pct: lasting.map(|lasting| percent(lasting.interval.high)),
            lasts_through: lasting.map(|lasting| lasting.until.to_string()),
            lasts: recommended.lasts,
            cheaper: recommended.cheaper.map(|method| method.key()),
        }
    }
}
