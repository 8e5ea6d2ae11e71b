//! The grid of beads that the table holds, and how one of them is solved.

use serde::Serialize;

use super::mesh::Fineness;
use super::section::{Behind, BoardEdge, Outline, Section};
use super::strain::{BeadStrain, Movement, Place, strain_outline};
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
    /// As in [`super::BeadStrain`]; along the joint where the boards slide.
    pub force_per_modulus: Length,
}

/// What moves and what is behind: each is a table of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Family {
    PulledFree,
    PulledOnTongue,
    SqueezedFree,
    SqueezedOnTongue,
    SlidFree,
    SlidOnTongue,
}

pub(super) const FAMILIES: [Family; 6] = [
    Family::PulledFree,
    Family::PulledOnTongue,
    Family::SqueezedFree,
    Family::SqueezedOnTongue,
    Family::SlidFree,
    Family::SlidOnTongue,
];

/// The V's leg, in inches.
pub(super) const LEGS: [f64; 4] = [0.0625, 0.125, 0.1875, 0.25];
/// Gap over leg.
pub(super) const GAPS: [f64; 7] = [0.15, 0.3, 0.5, 0.75, 1.0, 1.5, 2.0];
/// Share of the V's depth that is filled.
pub(super) const FILLS: [f64; 5] = [0.2, 0.35, 0.5, 0.75, 1.0];
/// Depth in the slot over gap.
pub(super) const DEPTHS: [f64; 6] = [0.0, 0.1, 0.25, 0.5, 1.0, 2.0];
/// Opening, or sliding, over the mean width between slot and face; on a tongue, where it is the corner's rip
/// that counts, in mm; closing over the gap.
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
    /// `None` for boards that do not move, lift, or do two things at once.
    pub(super) fn of(behind: Behind, movement: Movement) -> Option<Self> {
        let Movement { open, slide, lift } = movement;
        let bonded = behind == Behind::Tongue;
        if lift != Length::ZERO || (open != Length::ZERO) == (slide != Length::ZERO) {
            return None;
        }
        Some(match (slide != Length::ZERO, open < Length::ZERO) {
            (true, _) if bonded => Self::SlidOnTongue,
            (true, _) => Self::SlidFree,
            (false, false) if bonded => Self::PulledOnTongue,
            (false, false) => Self::PulledFree,
            (false, true) if bonded || behind == Behind::Breaker => Self::SqueezedOnTongue,
            (false, true) => Self::SqueezedFree,
        })
    }

    pub(super) const fn behind(self) -> Behind {
        match self {
            Self::PulledFree | Self::SqueezedFree | Self::SlidFree => Behind::Free,
            Self::PulledOnTongue | Self::SqueezedOnTongue | Self::SlidOnTongue => Behind::Tongue,
        }
    }

    /// The movement of this size.
    pub(super) fn movement(self, size: Length) -> Movement {
        match self {
            Self::PulledFree | Self::PulledOnTongue => Movement::open(size),
            Self::SqueezedFree | Self::SqueezedOnTongue => Movement::open(size * -1.0),
            Self::SlidFree | Self::SlidOnTongue => Movement::slide(size),
        }
    }

    pub(super) const fn moves(self) -> &'static [f64; MOVEMENTS] {
        match self {
            Self::PulledFree | Self::SlidFree => &MOVES,
            Self::PulledOnTongue | Self::SlidOnTongue => &TONGUE_MOVES,
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

    pub(super) fn section(self) -> Section {
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
    pub(super) fn solve(self) -> Logarithms {
        let section = self.section();
        logarithms(&section, &section.outline(), FAMILIES[self.family])
    }
}

/// Logarithms of figures over movement, of each movement of a family.
pub(super) type Logarithms = [[f64; OUTPUTS]; MOVEMENTS];

/// Those of a bead with this cured outline, NaN where there is no equilibrium. `section` tells what is around
/// it.
pub(super) fn logarithms(section: &Section, outline: &Outline, family: Family) -> Logarithms {
    let base = movement_base(section, family);
    let sizes = sizes(section, family);
    let path = sizes.map(|size| family.movement(size));
    let mut found = [[f64::NAN; OUTPUTS]; MOVEMENTS];
    // Where the whole path cannot be gone, its begin can.
    if let Ok((strains, _)) = strain_outline(section, *outline, &path, Fineness::STANDARD, None) {
        for ((found, strain), size) in found.iter_mut().zip(&strains).zip(sizes) {
            *found = QuickStrain::of(strain).logarithms(size, base);
        }
    }
    found
}

/// The strains of a section at the movements of a family, by the solver: the smallest first, up to where there is an
/// equilibrium, and on to where another place may be strained most. Empty where it is no bead.
pub(super) fn solved_strains(section: &Section, family: Family) -> Vec<(Length, QuickStrain)> {
    const ON: f64 = 1.7;
    if !section.is_valid() {
        return vec![];
    }
    let mut sizes = sizes(section, family).to_vec();
    if let Family::PulledFree | Family::SlidFree = family {
        sizes.extend(sizes.last().map(|last| *last * ON));
    }
    let path: Vec<Movement> = sizes.iter().map(|size| family.movement(*size)).collect();
    let found = strain_outline(section, section.outline(), &path, Fineness::STANDARD, None);
    let strains = found.map_or(vec![], |(strains, _)| strains);
    sizes.into_iter().zip(strains.iter().map(QuickStrain::of)).collect()
}

/// Sizes of the movements of a family.
fn sizes(section: &Section, family: Family) -> [Length; MOVEMENTS] {
    family.moves().map(|moved| movement_base(section, family) * moved)
}

/// What a movement is measured by in this family.
pub(super) fn movement_base(section: &Section, family: Family) -> Length {
    match (family, section.edge) {
        (Family::PulledFree | Family::SlidFree, BoardEdge::V { leg, .. }) => {
            section.gap + leg * section.fill.to_fraction()
        }
        (Family::PulledOnTongue | Family::SlidOnTongue, _) => Length::mm(1.0),
        _ => section.gap,
    }
}

impl QuickStrain {
    /// The larger of the stretches that are seen: in the middle of the face, and at its edges.
    pub fn seen(&self) -> f64 {
        self.face_middle.max(self.visible_edge)
    }

    pub(super) fn of(strain: &BeadStrain) -> Self {
        let of =
            |place: Place| strain.places.iter().find(|at| at.place == place).map_or(1.0, |at| at.stretch);
        let across = strain.force_per_modulus;
        Self {
            face_middle: of(Place::FaceMiddle),
            visible_edge: of(Place::VisibleEdge),
            largest: strain.largest.stretch,
            force_per_modulus: if across == Length::ZERO { strain.slide_force_per_modulus } else { across },
        }
    }

    /// Of a movement of this size, squeezed or not.
    fn logarithms(&self, size: Length, base: Length) -> [f64; OUTPUTS] {
        let moved = size.to_m() / base.to_m();
        let strain = |stretch: f64| ((stretch - 1.0).max(1e-6) / moved).ln();
        let force = (self.force_per_modulus.to_m().abs() / size.to_m()).max(1e-6).ln();
        [strain(self.face_middle), strain(self.visible_edge), strain(self.largest), force]
    }

    /// After a movement of this size; below zero the bead is squeezed.
    pub(super) fn from_logarithms(logarithms: [f64; OUTPUTS], size: Length, base: Length) -> Self {
        let moved = (size.to_m() / base.to_m()).abs();
        let [face_middle, visible_edge, largest, force] = logarithms.map(f64::exp);
        let stretch = |ratio: f64| 1.0 + ratio * moved;
        Self {
            face_middle: stretch(face_middle),
            visible_edge: stretch(visible_edge),
            largest: stretch(largest),
            force_per_modulus: size * force,
        }
    }
}
