//! The bead as it is laid: across the V, on its flanks, down to the tongue or short of it.
//!
//! A [`Section`] is meshed and strained in plane strain: an incompressible neo-Hookean solid, bonded
//! to the boards, through large deformation. Out come the stretch along its face, at the edge that is
//! seen, at the slot's corners and at the tongue, and the force. The class of a sealant was earned by
//! a test bead; the same method strains that bead at the class's movement, and what it shows there is
//! what the laid bead may be asked.
//!
//! Conventions: y points to the room from the bottom of the V; meters, and shear modulus 1, inside.
//!
//! Sources: element Q2/P1 and its stability: Boffi, Brezzi, Fortin, Mixed Finite Element Methods and
//! Applications (2013), ch. 8 (from memory). Neo-Hookean solids: Ogden, Non-Linear Elastic
//! Deformations (1984) (from memory). Test bead: ASTM C719 (see `class`).

mod class;
mod contact;
mod curves;
mod design;
mod element;
mod endurance;
mod first_place;
mod grid;
mod hollow;
mod limits;
mod mesh;
mod model;
mod newton;
mod report;
mod section;
mod shape;
mod slide;
mod sparse;
mod stencil;
mod strain;
mod stretch;
mod table;
#[cfg(test)]
mod tests;

pub use class::{CLASSES, ClassUse, SealantClass, class_uses, test_bead, test_bead_strains, test_stretch};
pub use design::BeadDesign;
pub use endurance::{Endurance, MovementLimits};
pub use first_place::goes_first;
pub use grid::QuickStrain;
pub use limits::{
    FINGER, Finding, GUIDE_BOND, GUIDE_THICKNESS, GUIDE_WIDTH, LEAST_ROD, LEAST_TAPE, NOZZLE, Reason,
    Severity,
};
pub use report::{BeadReport, ClassReport, FindingReport, MovementReport, SectionReport, StrainReport};
pub use section::{Behind, BoardEdge, CuredBead, Section, Tooling};
pub use strain::{Areas, BeadStrain, Movement, Place, PlaceStretch, StrainError, strain, strain_path};
pub use table::{Table, quick_strain};
