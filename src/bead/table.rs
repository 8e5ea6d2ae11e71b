//! Strain at once: a table of solved beads, and what lies between them.
//!
//! For thousands of joints a solve each is too slow, so flush beads of 100 % solids over a 45-degree
//! V, and in slots with square edges, were solved on a grid. Kept is the logarithm of how much larger strain is than movement over
//! width, which varies slowly; cubic interpolation in all five directions. The table is made by
//! [`Table::build`]; tests make parts of it anew, and hold it against solves between its points.
//!
//! Its largest stretch is within 1 % for half of all beads and within 5 % for 95 of 100; at worst it
//! was found 15 % off, where another place of the bead becomes the worst one.

use std::sync::OnceLock;

use rayon::prelude::*;

use super::grid::{
    DEPTHS, FAMILIES, FILLS, Family, GAPS, LEGS, MOVEMENTS, OUTPUTS, Point, PointShape, QuickStrain,
    SECTIONS, SQUARE_DEPTHS, SQUARE_GAPS, movement_base,
};
use super::section::{Behind, BoardEdge, Section, Tooling};
use super::strain::{Movement, Place, StrainError};
use crate::measure::Length;

const SIZE: usize = SECTIONS * MOVEMENTS * OUTPUTS;
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
        let solve = |index| {
            let solved = Point::at(index).solve();
            solved_one();
            solved
        };
        let solved: Vec<[[f64; OUTPUTS]; MOVEMENTS]> = (0..SECTIONS).into_par_iter().map(solve).collect();
        Self { values: solved.as_flattened().as_flattened().iter().map(|value| packed(*value)).collect() }
    }

    /// How many sections the grid has.
    pub const fn sections() -> usize {
        SECTIONS
    }

    /// Solves one section of the grid anew. The largest difference to what is kept, as a share of
    /// strain or force; `None` where neither has an equilibrium, infinite where only one of them has.
    pub fn difference_at(&self, index: usize) -> Option<f64> {
        let solved = Point::at(index).solve();
        let kept = &self.values[index * 4 * OUTPUTS..][..4 * OUTPUTS];
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

    /// The strain of a flush bead of 100 % solids over a 45-degree V or between square edges. `None` if
    /// it is another bead, slides or is lifted, lies outside of the table, or next to beads without an
    /// equilibrium: then it must be solved.
    pub fn strain(&self, section: &Section, movement: Movement) -> Option<QuickStrain> {
        let still = movement.slide == Length::ZERO && movement.lift == Length::ZERO;
        if !still || movement.open == Length::ZERO {
            return None;
        }
        let family = Family::of(section.behind, movement.open);
        let points = self.points(section, family)?;
        let base = movement_base(section, family);
        let moved = (movement.open.to_m() / base.to_m()).abs();
        let moves = family.moves();
        // Next to beads without an equilibrium at the largest movements, the smaller ones must do.
        let logarithms = (2..=moves.len()).rev().find_map(|count| {
            // Strain over movement tends to a limit for small ones.
            let moved = stencil(&moves[..count], moved.max(moves[0]), |x| x)?;
            self.interpolate(&points, &moved)
        })?;
        Some(QuickStrain::from_logarithms(logarithms, movement.open, base))
    }

    /// The strains of a section at the movements that the table keeps for this family, the smallest
    /// first, up to where there is an equilibrium. Empty where [`Self::strain`] is `None`.
    pub(super) fn strains(&self, section: &Section, family: Family) -> Vec<(Length, QuickStrain)> {
        let Some(points) = self.points(section, family) else { return vec![] };
        let base = movement_base(section, family);
        let sign = if family.squeezed() { -1.0 } else { 1.0 };
        let at = |(node, moved): (usize, &f64)| {
            let logarithms = self.interpolate(&points, &[(node, 1.0)])?;
            let open = base * (sign * moved);
            Some((open, QuickStrain::from_logarithms(logarithms, open, base)))
        };
        family.moves().iter().enumerate().map_while(at).collect()
    }

    /// The sections of the grid around this one, with their weights.
    fn points(&self, section: &Section, family: Family) -> Option<Vec<(usize, f64)>> {
        let plain = section.tooling == Tooling::Flush
            && section.solids.to_pct() >= 100.0
            && section.behind != Behind::Rod
            && section.is_valid();
        if !plain || self.values.is_empty() {
            return None;
        }
        let family = FAMILIES.iter().position(|of| *of == family)?;
        let depth_over_gap = section.depth.to_m() / section.gap.to_m();
        let point = |shape| Point { family, shape }.index();
        Some(match section.edge {
            BoardEdge::V { angle, .. } if (angle.to_degrees() - 45.0).abs() > 1e-9 => return None,
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

/// Nodes to interpolate between, with their weights.
type Stencil = [(usize, f64); 4];

/// The four nodes around `x` (or all, of fewer) and the weights of the polynomial through them, in the
/// measure `scale` of the axis. `None` outside of the nodes.
fn stencil(nodes: &[f64], x: f64, scale: impl Fn(f64) -> f64) -> Option<Stencil> {
    let (first, last) = (nodes.first()?, nodes.last()?);
    let slack = 1e-9 * last;
    if x < first - slack || x > last + slack {
        return None;
    }
    let after = nodes.partition_point(|node| *node < x);
    let count = nodes.len().min(4);
    let start = after.saturating_sub(2).min(nodes.len() - count);
    let at: Vec<f64> = nodes[start..start + count].iter().map(|node| scale(*node)).collect();
    let x = scale(x.clamp(*first, *last));
    Some(std::array::from_fn(|i| {
        if i >= count {
            return (start, 0.0);
        }
        let others = (0..count).filter(|&j| j != i);
        (start + i, others.map(|j| (x - at[j]) / (at[i] - at[j])).product())
    }))
}

/// The strain from the table, or solved where the table does not reach.
///
/// # Errors
/// As for [`super::strain`].
pub fn quick_strain(section: &Section, movement: Movement) -> Result<QuickStrain, StrainError> {
    if let Some(quick) = Table::shipped().strain(section, movement) {
        return Ok(quick);
    }
    let strain = super::strain(section, movement)?;
    let of = |place: Place| strain.places.iter().find(|at| at.place == place).map_or(1.0, |at| at.stretch);
    Ok(QuickStrain {
        face_middle: of(Place::FaceMiddle),
        visible_edge: of(Place::VisibleEdge),
        largest: strain.largest.stretch,
        force_per_modulus: strain.force_per_modulus,
    })
}
