//! What the papers told, kept with the job.

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::measure::{DateText, Length, Money, Percent};
use crate::repair::MethodId;

/// Days between the forecast gaps that are kept.
pub const TOLD_EVERY: usize = 7;

/// What the papers told when they were written. Later visits are held against it, and not against what
/// a newer program, or later readings, would say of that day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Promise {
    /// The date on the papers, that of the visit they go by: the forecast is counted from it.
    #[schemars(with = "DateText")]
    pub told_on: Date,
    /// Version of the program that wrote them.
    pub program: String,
    /// The repair that was offered.
    pub option: MethodId,
    /// Its price.
    pub total: Money,
    /// The first day of sealing, where joints are sealed.
    #[serde(default)]
    #[schemars(with = "Option<DateText>")]
    pub seal_on: Option<Date>,
    /// How likely it is to last, where that was told.
    #[serde(default)]
    pub lasts: Option<ToldChance>,
    /// The joints that had been measured.
    #[serde(default)]
    pub joints: Vec<ToldJoint>,
}

/// A chance that was told, with the range that nine cases in ten should be in.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ToldChance {
    /// The chance of no callback.
    pub chance: Percent,
    /// The low end of its range.
    pub low: Percent,
    /// The high end.
    pub high: Percent,
    /// The last day it is told for.
    #[schemars(with = "DateText")]
    pub until: Date,
}

/// What was told of one joint.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ToldJoint {
    /// Name of the surface.
    pub surface: String,
    /// Label of the joint.
    pub joint: String,
    /// The chance that it opens again after the repair; `None` where no bead covers it.
    #[serde(default)]
    pub opens: Option<Percent>,
    /// Its forecast gap without a repair, every seven days from the visit, in hundredths of a millimeter;
    /// negative where the boards push.
    pub gaps: Vec<i32>,
    /// How far above and below that nine readings in ten should be, in hundredths of a millimeter.
    pub reach: Vec<i32>,
}

impl ToldJoint {
    /// The gap that was told for a day counted from the visit, and how far to either side nine readings in ten
    /// should be; `None` where nothing was told.
    pub fn on(&self, day: usize) -> Option<(Length, Length)> {
        let (at, share) = (day / TOLD_EVERY, to_f64(day % TOLD_EVERY) / to_f64(TOLD_EVERY));
        let between = |told: &[i32]| {
            let from = f64::from(*told.get(at)?);
            let to = told.get(at + 1).map_or(from, |to| f64::from(*to));
            Some(Length::mm((from + (to - from) * share) / 100.0))
        };
        Some((between(&self.gaps)?, between(&self.reach)?))
    }
}

#[expect(clippy::cast_precision_loss, reason = "days of a week")]
const fn to_f64(days: usize) -> f64 {
    days as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: three of seven days from 1.00 to 1.70 mm are 1.30 mm.
    #[test]
    fn between_two_weeks_the_gap_lies_on_a_line() {
        let told = ToldJoint {
            surface: "Wall".to_owned(),
            joint: "A 1".to_owned(),
            opens: None,
            gaps: vec![100, 170],
            reach: vec![20, 20],
        };
        let (gap, reach) = told.on(3).unwrap_or_default();
        assert!((gap.to_mm() - 1.3).abs() < 1e-9 && (reach.to_mm() - 0.2).abs() < 1e-9);
        assert_eq!(told.on(13).map(|(gap, _)| gap), Some(Length::mm(1.7)));
        assert_eq!(told.on(14), None, "nothing was told for a third week");
    }
}
