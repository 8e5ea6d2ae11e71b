//! Common sizes of boards, by the name the yard sells them by.

use serde::Deserialize;

use super::BoardSpec;
use crate::measure::Length;
use crate::wood::Kind;

/// A common size.
#[derive(Debug, Clone, PartialEq, Deserialize)]
pub struct BoardSize {
    /// Its nominal size, such as `1x6`.
    pub name: String,
    /// Thickness.
    pub thickness: Length,
    /// Width that shows.
    pub face: Length,
    /// Width over the tongue.
    pub overall: Length,
    /// Where it is from.
    pub source: String,
    /// How far to trust that.
    pub kind: Kind,
}

impl BoardSize {
    /// Whether boards are of this size.
    pub fn is_of(&self, board: &BoardSpec) -> bool {
        (self.thickness, self.face, self.overall) == (board.thickness, board.face_width, board.overall_width)
    }

    /// Gives boards this size.
    pub const fn set(&self, board: &mut BoardSpec) {
        (board.thickness, board.face_width, board.overall_width) = (self.thickness, self.face, self.overall);
    }
}
