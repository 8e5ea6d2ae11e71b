//! What is wrong with a drawing.

use super::{Part, part};
use crate::surface::FaultKind;
use crate::words::Words;

/// A part of the message of a fault of a drawing.
pub(super) fn say(fault: &FaultKind, which: Part, words: &Words) -> String {
    match fault {
        FaultKind::TooFewCorners { corners } => {
            part!(which, words, "drawing-too-few-corners", corners = *corners)
        }
        FaultKind::NoArea => part!(which, words, "drawing-no-area"),
        FaultKind::CrossesItself => part!(which, words, "drawing-crosses-itself"),
        FaultKind::OpeningOutside { name } => part!(which, words, "drawing-opening-outside", name = name),
        FaultKind::DividerOutside { name } => part!(which, words, "drawing-divider-outside", name = name),
        FaultKind::DividerEndsInside { name, section } => {
            part!(which, words, "drawing-divider-ends-inside", name = name, section = section)
        }
        FaultKind::Bare { area } => part!(which, words, "drawing-bare", area = *area),
        FaultKind::TwoJointsAlike { label } => part!(which, words, "drawing-two-joints-alike", label = label),
        FaultKind::NothingToBoard { section } => {
            part!(which, words, "drawing-nothing-to-board", section = section)
        }
        FaultKind::TooManyBoards { section } => {
            part!(which, words, "drawing-too-many-boards", section = section)
        }
        FaultKind::TooManyPieces { longest } => {
            part!(which, words, "drawing-too-many-pieces", longest = *longest)
        }
        FaultKind::NarrowerThanABoard { section, face, width } => part!(
            which,
            words,
            "drawing-narrower-than-a-board",
            section = section,
            face = *face,
            width = *width
        ),
        FaultKind::NoTongue { overall, face } => {
            part!(which, words, "drawing-no-tongue", overall = *overall, face = *face)
        }
        FaultKind::Overlap { section, other } => {
            part!(which, words, "drawing-overlap", section = section, other = other)
        }
    }
}
