//! Readings of a later visit, to hold what was forecast against what came.

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

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
