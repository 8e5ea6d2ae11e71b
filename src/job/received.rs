//! How the boards came and what lay with them before they were installed, in the user's words.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What is known of the boards before they were installed. Nothing is computed from it: it stands on the evidence
/// sheet, for whoever rechecks it.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct BoardsReceived {
    /// The delivery: day, supplier's slip.
    pub delivery: String,
    /// The grade stamp on them.
    pub stamp: String,
    /// Where and how long they lay before they were installed.
    pub storage: String,
}
