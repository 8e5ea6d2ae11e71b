//! Readings of a later visit, to hold what was forecast against what came.

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::readings::{GapReading, Survey};
use crate::measure::{DateText, Length};

/// A later visit. Before the work its gaps are those between the boards; after it they are openings
/// of the new joint, nothing where it is whole.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LaterVisit {
    /// The day.
    #[schemars(with = "DateText")]
    pub on: Date,
    /// The readings.
    #[serde(default)]
    pub gaps: Vec<LaterGap>,
}

impl LaterVisit {
    /// The joints measured at the first visit that this one has not looked at yet, each by one of its
    /// readings.
    pub fn not_looked_at<'a>(&self, survey: &'a Survey) -> Vec<&'a GapReading> {
        let mut left: Vec<&GapReading> = Vec::new();
        for gap in &survey.gaps {
            let same = |surface: &str, joint: &str| surface == gap.surface && joint == gap.joint;
            let looked_at = self.gaps.iter().any(|other| same(&other.surface, &other.joint));
            if !looked_at && !left.iter().any(|other| same(&other.surface, &other.joint)) {
                left.push(gap);
            }
        }
        left
    }
}

/// One joint looked at again.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LaterGap {
    /// Name of the surface.
    pub surface: String,
    /// Label of the joint.
    pub joint: String,
    /// What was measured; `None` while it has not been.
    #[serde(default)]
    pub width: Option<Length>,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_joint_read_twice_is_looked_at_once() {
        let reading = |joint: &str| GapReading {
            surface: "Wall".to_owned(),
            joint: joint.to_owned(),
            ..GapReading::default()
        };
        let survey = Survey { gaps: ["A 1", "A 2", "A 2", "A 3"].map(reading).to_vec(), ..Survey::default() };
        let again = LaterGap { surface: "Wall".to_owned(), joint: "A 1".to_owned(), width: None };
        let visit = LaterVisit { on: jiff::civil::date(2026, 8, 1), gaps: vec![again] };
        let left = visit.not_looked_at(&survey);
        assert_eq!(left.iter().map(|gap| gap.joint.as_str()).collect::<Vec<_>>(), ["A 2", "A 3"]);
    }
}
