//! Why the joints opened.
//!
//! The boards cannot be asked how wet they were, but the gap remembers: from the mean gap, the
//! width that shrank and the present moisture follows the moisture they had at install
//! ([`install_moisture`]), to be held against what the lumber stamps allow ([`Mark`]). That takes
//! drying for the cause; [`odds()`] holds drying and five other causes against all the readings and
//! says how likely each is, which clue argues for which, and which reading would settle most.

mod evidence;
mod hypothesis;
mod likelihood;
mod marks;
mod odds;
mod origin;

pub use evidence::{GapEvidence, LaterGaps, SectionInputs};
pub use hypothesis::{Cause, CausePriors, Hypothesis, OtherCause};
pub use marks::{AgainstMarks, Mark, against_marks};
pub use odds::{Clue, ClueKind, Odds, Reading, odds};
pub use origin::{InstallMoisture, OriginInputs, install_moisture};
