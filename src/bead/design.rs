//! A bead as it is planned, for any gap.

use super::section::{Behind, BoardEdge, Section, Tooling};
use crate::measure::{Length, Percent};

/// A bead but for the gap it is laid in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BeadDesign {
    /// The boards' edges. A V of another slope, or filled higher than 1/4 in or lower than 1/80 in, is taken as the
    /// nearest that is tabulated until it is solved ([`Self::solve`]).
    pub edge: BoardEdge,
    /// Share of the V's depth that is filled.
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
