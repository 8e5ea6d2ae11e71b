//! Strain at once: a table of solved beads, and what lies between them.
//!
//! For thousands of joints a solve each is too slow, so flush beads over a 45-degree V, and in slots with
//! square edges, were solved on a grid, pulled, squeezed and slid. Kept is the logarithm of how much larger
//! strain is than movement over width, which varies slowly; cubic interpolation in all five directions. A
//! bead that was tooled hollow, or sank as it cured, adds what `hollow` keeps. The table is made by
//! [`Table::build`]; tests make parts of it anew, and hold it against solves between its points.
//!
//! Its largest stretch is within 1 % for half of all beads and within 5 % for 95 of 100; at worst it
//! was found 15 % off, where another place of the bead becomes the worst one.

use std::sync::OnceLock;

use rayon::prelude::*;

use super::grid::{
    DEPTHS, FAMILIES, FILLS, Family, GAPS, LEGS, Logarithms, MOVEMENTS, OUTPUTS, Point, PointShape,
    QuickStrain, SECTIONS, SQUARE_DEPTHS, SQUARE_GAPS, movement_base,
};
use super::hollow::{self, HOLLOW_SECTIONS, Hollow, HollowPoint, MOST_HOLLOW};
use super::section::{Behind, BoardEdge, Section};
use super::stencil::stencil;
use super::strain::{Movement, StrainError};
use crate::measure::{Length, Percent};

const SIZE: usize = (SECTIONS + HOLLOW_SECTIONS) * MOVEMENTS * OUTPUTS;
/// Logarithms from −8 to 8 are kept as whole numbers; the last one says that there is no equilibrium.
const SPAN: f64 = 8.0;
const STEPS: f64 = 65_534.0;
const NO_VALUE: u16 = u16::MAX;

/// The table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Table {
    values: Vec<u16>,
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "clamped to 0 to 65 534 before")]
fn packed(logarithm: f64) -> u16 {
    if !logarithm.is_finite() {
        return NO_VALUE;
    }
    ((logarithm + SPAN) / (2.0 * SPAN) * STEPS).round().clamp(0.0, STEPS) as u16
}

fn unpacked(value: u16) -> Option<f64> {
    (value != NO_VALUE).then(|| f64::from(value) / STEPS * 2.0 * SPAN - SPAN)
}

impl Table {
    /// The table that comes with the program.
    pub fn shipped() -> &'static Self {
        static TABLE: OnceLock<Table> = OnceLock::new();
        TABLE.get_or_init(|| {
            Self::from_bytes(include_bytes!("../../assets/bead_table.bin"))
                .unwrap_or(Self { values: Vec::new() })
        })
    }

    /// Solves every bead of the grid, which takes minutes; `solved_one` is called after each.
    #[must_use]
    pub fn build(solved_one: impl Fn() + Sync) -> Self {
        let flush = |index| {
            let solved = Point::at(index).solve();
            solved_one();
            solved
        };
        let mut all: Vec<Logarithms> = (0..SECTIONS).into_par_iter().map(flush).collect();
        let hollow = |index| {
            let point = HollowPoint::at(index);
            let solved = point.solve(&all[point.flush().index()]);
            solved_one();
            solved
        };
        let hollows: Vec<Logarithms> = (0..HOLLOW_SECTIONS).into_par_iter().map(hollow).collect();
        all.extend(hollows);
        Self { values: all.as_flattened().as_flattened().iter().map(|value| packed(*value)).collect() }
    }

    /// How many sections the grid has, flush and hollow.
    pub const fn sections() -> usize {
        SECTIONS + HOLLOW_SECTIONS
    }

    /// Solves one section of the grid anew. The largest difference to what is kept, as a share of
    /// strain or force; `None` where neither has an equilibrium, infinite where only one of them has.
    pub fn difference_at(&self, index: usize) -> Option<f64> {
        let solved = match index.checked_sub(SECTIONS) {
            None => Point::at(index).solve(),
            Some(hollow) => {
                let point = HollowPoint::at(hollow);
                point.solve(&point.flush().solve())
            }
        };
        let kept = &self.values[index * MOVEMENTS * OUTPUTS..][..MOVEMENTS * OUTPUTS];
        let differences = solved.as_flattened().iter().zip(kept).filter_map(|(solved, kept)| {
            match (solved.is_finite(), unpacked(*kept)) {
                (true, Some(kept)) => Some((solved.clamp(-SPAN, SPAN) - kept).exp_m1().abs()),
                (false, None) => None,
                _ => Some(f64::INFINITY),
            }
        });
        differences.reduce(f64::max)
    }

    /// The table as bytes, to be kept.
    pub fn to_bytes(&self) -> Vec<u8> {
        self.values.iter().flat_map(|value| value.to_le_bytes()).collect()
    }

    /// The table from bytes. `None` if they are not of its size.
    pub fn from_bytes(bytes: &[u8]) -> Option<Self> {
        let (pairs, rest) = bytes.as_chunks::<2>();
        let values: Vec<u16> = pairs.iter().map(|pair| u16::from_le_bytes(*pair)).collect();
        (rest.is_empty() && values.len() == SIZE).then_some(Self { values })
    }

    /// The strain of a bead over a 45-degree V or between square edges, pulled, squeezed or slid. `None` if it
    /// is another bead, is moved in two ways at once or lifted, lies outside of the table, or next to beads
    /// without an equilibrium: then it must be solved.
    pub fn strain(&self, section: &Section, movement: Movement) -> Option<QuickStrain> {
        let family = Family::of(section.behind, movement)?;
        let points = self.points(section, family)?;
        let base = movement_base(section, family);
        let size = if movement.open == Length::ZERO { movement.slide } else { movement.open };
        let moved = (size.to_m() / base.to_m()).abs();
        let moves = family.moves();
        // Next to beads without an equilibrium at the largest movements, the smaller ones must do.
        let logarithms = (2..=moves.len()).rev().find_map(|count| {
            // Strain over movement tends to a limit for small ones.
            let moved = stencil(&moves[..count], moved.max(moves[0]), |x| x)?;
            self.interpolate(&points, &moved)
        })?;
        Some(QuickStrain::from_logarithms(logarithms, size, base))
    }

    /// The strains of a section at the movements that the table keeps for this family, the smallest
    /// first, up to where there is an equilibrium. A bead that cures to a shape outside the table counts as
    /// the nearest in it. Empty where it is no bead, or its V or its gap is not in the table.
    pub(super) fn nearest_strains(&self, section: &Section, family: Family) -> Vec<(Length, QuickStrain)> {
        let Some(points) = self.nearest_points(section, family) else { return vec![] };
        let base = movement_base(section, family);
        let at = |(node, moved): (usize, &f64)| {
            let logarithms = self.interpolate(&points, &[(node, 1.0)])?;
            let size = base * *moved;
            Some((size, QuickStrain::from_logarithms(logarithms, size, base)))
        };
        family.moves().iter().enumerate().map_while(at).collect()
    }

    /// The sections of the grid around this one, flush and hollow, with their weights.
    fn points(&self, section: &Section, family: Family) -> Option<Vec<(usize, f64)>> {
        let (flush, hollow) = self.flush_and_hollow(section)?;
        if hollow.face > MOST_HOLLOW {
            return None;
        }
        points(&flush, hollow, family)
    }

    /// The same of the nearest bead in the table.
    fn nearest_points(&self, section: &Section, family: Family) -> Option<Vec<(usize, f64)>> {
        let (flush, hollow) = self.flush_and_hollow(section)?;
        let shallowest = if flush.edge == BoardEdge::Square { SQUARE_DEPTHS[0] } else { DEPTHS[0] };
        let deepest = DEPTHS[DEPTHS.len() - 1];
        let depth = (flush.depth.to_m() / flush.gap.to_m()).clamp(shallowest, deepest);
        let fill = Percent::pct(flush.fill.to_pct().clamp(100.0 * FILLS[0], 100.0));
        points(&Section { fill, depth: flush.gap * depth, ..flush }, hollow, family)
    }

    fn flush_and_hollow(&self, section: &Section) -> Option<(Section, Hollow)> {
        if section.behind == Behind::Rod || !section.is_valid() || self.values.is_empty() {
            return None;
        }
        section.flush_between_its_edges()
    }

    fn interpolate(&self, points: &[(usize, f64)], moves: &[(usize, f64)]) -> Option<[f64; OUTPUTS]> {
        let mut sums = [0.0; OUTPUTS];
        for (section, weight) in points.iter().filter(|(_, weight)| *weight != 0.0) {
            for (moved, share) in moves.iter().filter(|(_, share)| *share != 0.0) {
                let start = (section * MOVEMENTS + moved) * OUTPUTS;
                for (sum, value) in sums.iter_mut().zip(&self.values[start..]) {
                    *sum += weight * share * unpacked(*value)?;
                }
            }
        }
        Some(sums)
    }
}

/// The beads of the grid around one that is flush but for `hollow`, with their weights.
fn points(flush: &Section, hollow: Hollow, family: Family) -> Option<Vec<(usize, f64)>> {
    let mut points = flush_points(flush, family)?;
    let hollows = hollow::points(flush, family, hollow);
    points.extend(hollows.into_iter().map(|(at, weight)| (SECTIONS + at, weight)));
    Some(points)
}

/// The flush beads of the grid around a flush one, with their weights.
fn flush_points(section: &Section, family: Family) -> Option<Vec<(usize, f64)>> {
    let family = FAMILIES.iter().position(|of| *of == family)?;
    let depth_over_gap = section.depth.to_m() / section.gap.to_m();
    let point = |shape| Point { family, shape }.index();
    Some(match section.edge {
        BoardEdge::V { leg, .. } => {
            let legs = stencil(&LEGS, leg.to_inches(), f64::ln)?;
            let gaps = stencil(&GAPS, section.gap.to_m() / leg.to_m(), f64::ln)?;
            let fills = stencil(&FILLS, section.fill.to_fraction(), |x| x)?;
            let depths = stencil(&DEPTHS, depth_over_gap, |x| (x + 0.15).ln())?;
            let all = itertools::iproduct!(legs, gaps, fills, depths);
            all.map(|((leg, a), (gap, b), (fill, c), (depth, d))| {
                (point(PointShape::V { leg, gap, fill, depth }), a * b * c * d)
            })
            .collect()
        }
        BoardEdge::Square => {
            let gaps = stencil(&SQUARE_GAPS, section.gap.to_inches(), f64::ln)?;
            let depths = stencil(&SQUARE_DEPTHS, depth_over_gap, f64::ln)?;
            let all = itertools::iproduct!(gaps, depths);
            all.map(|((gap, a), (depth, b))| (point(PointShape::Square { gap, depth }), a * b)).collect()
        }
    })
}

impl Section {
    /// The flush bead between the edges that this one has when it is cured, and how hollow it is. `None`
    /// where the bevel does not slope by 45 degrees.
    fn flush_between_its_edges(&self) -> Option<(Self, Hollow)> {
        let outline = self.outline();
        let fill = match self.edge {
            BoardEdge::V { angle, .. } if (angle.to_degrees() - 45.0).abs() > 1e-9 => return None,
            BoardEdge::V { leg, .. } => Percent::pct(100.0 * outline.top / leg.to_m()),
            BoardEdge::Square => self.fill,
        };
        let flush = Self::plain(self.gap, self.edge, fill, Length::m(-outline.bottom), self.behind);
        Some((flush, Hollow::of(&outline)))
    }
}

/// The strain from the table, or solved where the table does not reach.
///
/// # Errors
/// As for [`super::strain`].
pub fn quick_strain(section: &Section, movement: Movement) -> Result<QuickStrain, StrainError> {
    if let Some(quick) = Table::shipped().strain(section, movement) {
        return Ok(quick);
    }
    Ok(QuickStrain::of(&super::strain(section, movement)?))
}
