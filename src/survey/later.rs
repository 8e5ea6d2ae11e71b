//! Readings of a later visit, to hold what was forecast against what came.

use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use super::readings::GapReading;

/// A later visit. Before the work its gaps are those between the boards; after it they are openings
/// of the new joint, nothing where it is whole.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LaterVisit {
    /// The day.
    pub on: Date,
    /// The readings.
    #[serde(default)]
    pub gaps: Vec<GapReading>,
}
