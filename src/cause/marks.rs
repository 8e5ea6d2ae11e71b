//! What the stamps on lumber allow.

use serde::{Deserialize, Serialize};

use crate::measure::{Moisture, Span};
use crate::wood::Kind;

/// A moisture mark.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Mark {
    /// As stamped, such as `KD 15`.
    pub name: String,
    /// The most moisture it allows.
    pub most: Moisture,
    /// Where it is defined.
    pub source: String,
    /// How far to trust that.
    pub kind: Kind,
}

/// Says in words where `moisture`, likely within `interval`, stands against `marks`, driest mark
/// first. The words end a sentence that begins "The boards went up …".
pub fn against_marks(moisture: Moisture, interval: Span<Moisture>, marks: &[Mark]) -> String {
    let met = marks.iter().find(|mark| moisture <= mark.most);
    let missed = marks.iter().rfind(|mark| moisture > mark.most);
    let sure_missed = marks.iter().rfind(|mark| interval.low > mark.most);
    match (met, missed) {
        (Some(met), None) => format!("as dry as the {} stamp promises", met.name),
        (Some(met), Some(missed)) => {
            let surely =
                if sure_missed.is_some_and(|sure| sure.name == missed.name) { "" } else { " probably" };
            format!("within what the {} stamp allows, but{surely} wetter than {}", met.name, missed.name)
        }
        (None, Some(missed)) if sure_missed.is_some_and(|sure| sure.name == missed.name) => {
            format!("green: wetter than {} allows", missed.name)
        }
        (None, Some(missed)) => format!("probably green: wetter than {} allows", missed.name),
        (None, None) => "at a moisture no mark can be held against".to_owned(),
    }
}
