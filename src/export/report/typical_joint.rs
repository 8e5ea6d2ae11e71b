//! The typical joint by week.

use schemars::JsonSchema;
use serde::Serialize;

use super::mm;
use crate::assess::{Assessment, JointWeek, RepairedJoint, date_after};

/// The typical joint by week: as it is if nothing is done, and as the chosen option leaves it.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct TypicalJointReport {
    /// Name of its surface.
    pub surface: String,
    /// Name of its section.
    pub section: String,
    /// Day on which the chosen option is done; null without one that mends joints.
    pub repaired_on: Option<String>,
    /// Days from the visit, negative before it: one a week, from the install on if that day is known.
    pub days_from_visit: Vec<i64>,
    /// On each of them the gap if nothing is done.
    pub gap_mm: Vec<f64>,
    /// How far the boards stand apart after the repair; null before it.
    pub repaired_gap_mm: Vec<Option<f64>>,
    /// How much of that is open to the eye; null before it.
    pub repaired_open_mm: Vec<Option<f64>>,
}

impl TypicalJointReport {
    pub(super) fn new(assessment: &Assessment) -> Option<Self> {
        let joint = assessment.typical_joint()?;
        let surface = assessment.job.surfaces.get(joint.surface)?;
        let of = |own: fn(&JointWeek) -> f64| joint.weeks.iter().map(own).collect();
        let repaired = |own: fn(&RepairedJoint) -> f64| {
            joint.weeks.iter().map(|week| week.repaired.as_ref().map(own)).collect::<Vec<_>>()
        };
        let day = joint.repaired_on.and_then(|day| usize::try_from(day).ok());
        Some(Self {
            surface: surface.name.clone(),
            section: surface.sections.get(joint.section)?.name.clone(),
            repaired_on: day.map(|day| date_after(&assessment.job, day).to_string()),
            days_from_visit: joint.weeks.iter().map(|week| week.day).collect(),
            gap_mm: of(|week| mm(week.gap)),
            repaired_gap_mm: repaired(|repaired| mm(repaired.gap)),
            repaired_open_mm: repaired(|repaired| mm(repaired.open)),
        })
    }
}
