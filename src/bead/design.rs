//! A bead as it is planned, for any gap.

use super::section::{Behind, BoardEdge, Section, Tooling};
use crate::measure::{Length, Percent};

/// A bead but for the gap it is laid in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BeadDesign {
    /// The boards' edges. V's of another slope, or beyond 1/16 to 1/4 in, are taken as the nearest that
    /// are tabulated, filled as high.
    pub edge: BoardEdge,
    /// Share of the V's depth that is filled, 20 to 100 %; the nearest of these otherwise.
    pub fill: Percent,
    /// How far it reaches into the slot. More than twice the gap counts as twice: what is deeper is not
    /// felt at the face.
    pub depth: Length,
    /// What lies behind it.
    pub behind: Behind,
    /// How its face is tooled.
    pub tooling: Tooling,
    /// Volume that is left after cure, as a share of the wet volume.
    pub solids: Percent,
}

impl BeadDesign {
    /// The bead in a slot of this width.
    pub const fn section(&self, slot: Length) -> Section {
        let Self { edge, fill, depth, behind, tooling, solids } = *self;
        Section { gap: slot, edge, fill, depth, tooling, behind, solids }
    }
}
