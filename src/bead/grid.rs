//! The grid of beads that the table holds, and how one of them is solved.

use serde::Serialize;

use super::mesh::Fineness;
use super::section::{Behind, BoardEdge, Section};
use super::strain::{Movement, Place, strain_until};
use crate::measure::{Length, Percent};

/// Strain read from the table.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct QuickStrain {
    /// Mean stretch within 0.25 mm of the middle of the face.
    pub face_middle: f64,
    /// The same at the edge that is seen.
    pub visible_edge: f64,
    /// The largest of all places.
    pub largest: f64,
    /// As in [`super::BeadStrain`].
    pub force_per_modulus: Length,
}

/// What moves and what is behind: each is a table of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Family {
    PulledFree,
    PulledOnTongue,
    SqueezedFree,
    SqueezedOnTongue,
}

pub(super) const FAMILIES: [Family; 4] =
    [Family::PulledFree, Family::PulledOnTongue, Family::SqueezedFree, Family::SqueezedOnTongue];

/// The V's leg, in inches.
pub(super) const LEGS: [f64; 4] = [0.0625, 0.125, 0.1875, 0.25];
/// Gap over leg.
pub(super) const GAPS: [f64; 7] = [0.15, 0.3, 0.5, 0.75, 1.0, 1.5, 2.0];
/// Share of the V's depth that is filled.
pub(super) const FILLS: [f64; 5] = [0.2, 0.35, 0.5, 0.75, 1.0];
/// Depth in the slot over gap.
pub(super) const DEPTHS: [f64; 6] = [0.0, 0.1, 0.25, 0.5, 1.0, 2.0];
/// Opening over the mean width between slot and face; on a tongue, where it is the corner's rip that
/// counts, in mm; closing over the gap.
const MOVES: [f64; 4] = [0.06, 0.2, 0.4, 0.7];
const TONGUE_MOVES: [f64; 4] = [0.1, 0.3, 0.6, 1.2];
const CLOSINGS: [f64; 4] = [0.08, 0.2, 0.35, 0.5];

/// Figures kept for each movement.
pub(super) const OUTPUTS: usize = 4;
/// Movements kept for each section.
pub(super) const MOVEMENTS: usize = 4;
/// Slots with square edges: their gap, in inches, and the depth of the bead over it.
pub(super) const SQUARE_GAPS: [f64; 8] = [0.015_625, 0.031_25, 0.0625, 0.093_75, 0.125, 0.1875, 0.25, 0.375];
pub(super) const SQUARE_DEPTHS: [f64; 4] = [0.35, 0.7, 1.0, 2.0];

/// Sections with a V.
const V_SECTIONS: usize = FAMILIES.len() * LEGS.len() * GAPS.len() * FILLS.len() * DEPTHS.len();
/// Sections of the grid.
pub(super) const SECTIONS: usize = V_SECTIONS + FAMILIES.len() * SQUARE_GAPS.len() * SQUARE_DEPTHS.len();

impl Family {
    pub(super) fn of(behind: Behind, open: Length) -> Self {
        match (behind, open < Length::ZERO) {
            (Behind::Tongue, false) => Self::PulledOnTongue,
            (_, false) => Self::PulledFree,
            (Behind::Tongue | Behind::Breaker, true) => Self::SqueezedOnTongue,
            (Behind::Free | Behind::Rod, true) => Self::SqueezedFree,
        }
    }

    fn behind(self) -> Behind {
        match self {
            Self::PulledFree | Self::SqueezedFree => Behind::Free,
            Self::PulledOnTongue | Self::SqueezedOnTongue => Behind::Tongue,
        }
    }

    pub(super) fn squeezed(self) -> bool {
        matches!(self, Self::SqueezedFree | Self::SqueezedOnTongue)
    }

    pub(super) fn moves(self) -> &'static [f64; 4] {
        match self {
            Self::PulledFree => &MOVES,
            Self::PulledOnTongue => &TONGUE_MOVES,
            Self::SqueezedFree | Self::SqueezedOnTongue => &CLOSINGS,
        }
    }
}

/// A point of the grid.
#[derive(Debug, Clone, Copy)]
pub(super) struct Point {
    pub family: usize,
    pub shape: PointShape,
}

/// Where in the grid a section lies: places on its axes.
#[derive(Debug, Clone, Copy)]
pub(super) enum PointShape {
    V { leg: usize, gap: usize, fill: usize, depth: usize },
    Square { gap: usize, depth: usize },
}

impl Point {
    pub(super) fn at(index: usize) -> Self {
        let Some(square) = index.checked_sub(V_SECTIONS) else {
            let (rest, depth) = (index / DEPTHS.len(), index % DEPTHS.len());
            let (rest, fill) = (rest / FILLS.len(), rest % FILLS.len());
            let (rest, gap) = (rest / GAPS.len(), rest % GAPS.len());
            let shape = PointShape::V { leg: rest % LEGS.len(), gap, fill, depth };
            return Self { family: rest / LEGS.len(), shape };
        };
        let (rest, depth) = (square / SQUARE_DEPTHS.len(), square % SQUARE_DEPTHS.len());
        let shape = PointShape::Square { gap: rest % SQUARE_GAPS.len(), depth };
        Self { family: rest / SQUARE_GAPS.len(), shape }
    }

    pub(super) fn index(self) -> usize {
        match self.shape {
            PointShape::V { leg, gap, fill, depth } => {
                let gap = (self.family * LEGS.len() + leg) * GAPS.len() + gap;
                (gap * FILLS.len() + fill) * DEPTHS.len() + depth
            }
            PointShape::Square { gap, depth } => {
                V_SECTIONS + (self.family * SQUARE_GAPS.len() + gap) * SQUARE_DEPTHS.len() + depth
            }
        }
    }

    fn section(self) -> Section {
        let behind = FAMILIES[self.family].behind();
        match self.shape {
            PointShape::V { leg, gap, fill, depth } => {
                let leg = Length::inches(LEGS[leg]);
                let gap = leg * GAPS[gap];
                let fill = Percent::pct(100.0 * FILLS[fill]);
                Section::plain(gap, Section::v(leg), fill, gap * DEPTHS[depth], behind)
            }
            PointShape::Square { gap, depth } => {
                let gap = Length::inches(SQUARE_GAPS[gap]);
                Section::plain(gap, BoardEdge::Square, Percent::ZERO, gap * SQUARE_DEPTHS[depth], behind)
            }
        }
    }

    /// The logarithms of strain over movement at all moves, each as [`QuickStrain`] has it.
    pub(super) fn solve(self) -> [[f64; OUTPUTS]; 4] {
        let section = self.section();
        let base = movement_base(&section, FAMILIES[self.family]);
        let sign = if FAMILIES[self.family].squeezed() { -1.0 } else { 1.0 };
        let path: Vec<Movement> =
            FAMILIES[self.family].moves().iter().map(|m| Movement::open(base * (sign * m))).collect();
        let mut found = [[f64::NAN; OUTPUTS]; 4];
        // Where the whole path cannot be gone, its begin can.
        if let Ok((strains, _)) = strain_until(&section, &path, Fineness::STANDARD, None) {
            for ((found, strain), movement) in found.iter_mut().zip(&strains).zip(&path) {
                let of = |place: Place| {
                    strain.places.iter().find(|at| at.place == place).map_or(1.0, |at| at.stretch)
                };
                let quick = QuickStrain {
                    face_middle: of(Place::FaceMiddle),
                    visible_edge: of(Place::VisibleEdge),
                    largest: strain.largest.stretch,
                    force_per_modulus: strain.force_per_modulus,
                };
                *found = quick.logarithms(movement.open, base);
            }
        }
        found
    }
}

/// What a movement is measured by in this family.
pub(super) fn movement_base(section: &Section, family: Family) -> Length {
    match (family, section.edge) {
        (Family::PulledFree, BoardEdge::V { leg, .. }) => section.gap + leg * section.fill.to_fraction(),
        (Family::PulledOnTongue, _) => Length::mm(1.0),
        _ => section.gap,
    }
}

impl QuickStrain {
    /// The larger of the stretches that are seen: in the middle of the face, and at its edges.
    pub fn seen(&self) -> f64 {
        self.face_middle.max(self.visible_edge)
    }

    pub(super) fn logarithms(&self, open: Length, base: Length) -> [f64; OUTPUTS] {
        let moved = (open.to_m() / base.to_m()).abs();
        let strain = |stretch: f64| ((stretch - 1.0).max(1e-6) / moved).ln();
        let force = (self.force_per_modulus.to_m() / open.to_m()).max(1e-6).ln();
        [strain(self.face_middle), strain(self.visible_edge), strain(self.largest), force]
    }

    pub(super) fn from_logarithms(logarithms: [f64; OUTPUTS], open: Length, base: Length) -> Self {
        let moved = (open.to_m() / base.to_m()).abs();
        let [face_middle, visible_edge, largest, force] = logarithms.map(f64::exp);
        let stretch = |ratio: f64| 1.0 + ratio * moved;
        Self {
            face_middle: stretch(face_middle),
            visible_edge: stretch(visible_edge),
            largest: stretch(largest),
            force_per_modulus: open * force,
        }
    }
}
