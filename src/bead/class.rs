//! What a sealant's class allows, as a local stretch.
//!
//! A class says how far a test bead was moved, in percent of its width: 1/2 in wide, 1/2 in deep,
//! two sides bonded (ASTM C719; the size read in its sister standard ASTM C1635-16, 5.3). Strained by
//! the same method at that movement, the test bead shows the local stretch that the sealant has stood
//! at its worst place. A laid bead may be asked as much.

use serde::Serialize;

use super::contact::Beyond;
use super::mesh::Fineness;
use super::section::{Behind, BoardEdge, Section};
use super::strain::{BeadStrain, Movement, StrainError, strain_with};
use crate::measure::{Length, Percent};

/// A movement class.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct SealantClass {
    /// A short name for data: standard and class.
    pub id: &'static str,
    /// How far the test bead was opened, percent of its width; not over 150.
    pub open: Percent,
    /// How far it was closed, percent of its width; not over 50.
    pub close: Percent,
}

const fn class(id: &'static str, open: f64, close: f64) -> SealantClass {
    SealantClass { id, open: Percent::pct(open), close: Percent::pct(close) }
}

/// The classes in use, the weakest first: ASTM C920, ISO 11600; for ASTM C834 latex, which has no
/// class, half of the 15 % total that UFGS 07920 allows it.
pub const CLASSES: [SealantClass; 8] = [
    class("c834", 7.5, 7.5),
    class("iso11600_7.5p", 7.5, 7.5),
    class("c920_12.5", 12.5, 12.5),
    class("iso11600_20", 20.0, 20.0),
    class("c920_25", 25.0, 25.0),
    class("c920_35", 35.0, 35.0),
    class("c920_50", 50.0, 50.0),
    class("c920_100_50", 100.0, 50.0),
];

/// How much of a class a bead uses.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct ClassUse {
    /// The class.
    pub class: SealantClass,
    /// The largest local stretch of the test bead at its movement.
    pub limit: f64,
    /// The bead's largest local strain (stretch less 1) over that of the test bead: 1 is all of it.
    pub used: f64,
}

/// The test bead's section.
pub fn test_bead() -> Section {
    let half_inch = Length::inches(0.5);
    Section::plain(half_inch, BoardEdge::Square, Percent::ZERO, half_inch, Behind::Free)
}

/// The test bead strained through these openings in turn, as shares of its width; all above or all
/// below zero.
///
/// # Errors
/// As for [`super::strain_path`].
pub fn test_bead_strains(openings: &[f64]) -> Result<Vec<BeadStrain>, StrainError> {
    let section = test_bead();
    let path: Vec<Movement> = openings.iter().map(|share| Movement::open(section.gap * *share)).collect();
    // Its plates go on beyond the bead on both sides.
    strain_with(&section, &path, Fineness::STANDARD, Some(Beyond::Bevel))
}

/// Largest local stretch of the test bead by how far it is opened, and closed, as shares of its width:
/// what [`test_bead_strains`] gives, kept so that nothing need be solved. A test solves them anew.
const PULLED: [(f64, f64); 11] = [
    (0.0, 1.0),
    (0.05, 1.17383),
    (0.075, 1.26458),
    (0.125, 1.44566),
    (0.2, 1.70147),
    (0.25, 1.85657),
    (0.35, 2.12976),
    (0.5, 2.46658),
    (0.75, 2.91127),
    (1.0, 3.28141),
    (1.5, 3.93296),
];
const SQUEEZED: [(f64, f64); 10] = [
    (0.0, 1.0),
    (0.05, 1.17990),
    (0.075, 1.27950),
    (0.125, 1.47936),
    (0.2, 1.52828),
    (0.25, 1.54667),
    (0.3, 1.71677),
    (0.35, 1.91852),
    (0.42, 2.27232),
    (0.5, 2.82571),
];

/// The largest local stretch of the test bead opened by this share of its width (closed, below zero);
/// −0.5 to 1.5, beyond which the end stands.
pub fn test_stretch(opening: f64) -> f64 {
    let curve: &[(f64, f64)] = if opening < 0.0 { &SQUEEZED } else { &PULLED };
    let size = opening.abs();
    let after = curve.partition_point(|&(at, _)| at < size).clamp(1, curve.len() - 1);
    let ((from, low), (to, high)) = (curve[after - 1], curve[after]);
    low + (high - low) * ((size - from) / (to - from)).min(1.0)
}

impl SealantClass {
    /// How much of the class a bead uses that was opened by `open` (closed, below zero) and whose
    /// largest local stretch is `stretch`.
    pub fn used(&self, open: Length, stretch: f64) -> ClassUse {
        let closing = open < Length::ZERO;
        let movement = if closing { -self.close.to_fraction() } else { self.open.to_fraction() };
        let limit = test_stretch(movement);
        ClassUse { class: *self, limit, used: (stretch - 1.0) / (limit - 1.0) }
    }
}

/// [`SealantClass::used`] for all of [`CLASSES`], in their order.
pub fn class_uses(open: Length, stretch: f64) -> Vec<ClassUse> {
    CLASSES.iter().map(|class| class.used(open, stretch)).collect()
}
