//! Strain at once: a table of solved beads, and what lies between them.
//!
//! For thousands of joints a solve each is too slow, so flush beads of 100 % solids over a 45-degree
//! V were solved on a grid. Kept is the logarithm of how much larger strain is than movement over
//! width, which varies slowly; cubic interpolation in all five directions. The table is made by
//! [`Table::build`]; tests make parts of it anew, and hold it against solves between its points.
//!
//! Its largest stretch is within 1 % for half of all beads and within 5 % for 95 of 100; at worst it
//! was found 15 % off, where another place of the bead becomes the worst one.

use std::sync::OnceLock;

use rayon::prelude::*;

use super::grid::{
    DEPTHS, FAMILIES, FILLS, Family, GAPS, LEGS, MOVEMENTS, OUTPUTS, Point, QuickStrain, SECTIONS,
    movement_base,
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

    /// The strain of a flush bead of 100 % solids over a 45-degree V. `None` if it is another bead,
    /// slides or is lifted, lies outside of the table, or next to beads without an equilibrium: then
    /// it must be solved.
    pub fn strain(&self, section: &Section, movement: Movement) -> Option<QuickStrain> {
        let BoardEdge::V { leg, angle } = section.edge else { return None };
        let plain = (angle.to_degrees() - 45.0).abs() < 1e-9
            && section.tooling == Tooling::Flush
            && section.solids.to_pct() >= 100.0
            && movement.slide == Length::ZERO
            && movement.lift == Length::ZERO
            && section.behind != Behind::Rod
            && section.is_valid();
        if !plain || self.values.is_empty() || movement.open == Length::ZERO {
            return None;
        }
        let family = Family::of(section.behind, movement.open);
        let base = movement_base(section, family);
        let moved = (movement.open.to_m() / base.to_m()).abs();
        let moves = family.moves();
        let stencils = Stencils {
            family: FAMILIES.iter().position(|of| *of == family)?,
            leg: stencil(&LEGS, leg.to_inches(), f64::ln)?,
            gap: stencil(&GAPS, section.gap.to_m() / leg.to_m(), f64::ln)?,
            fill: stencil(&FILLS, section.fill.to_fraction(), |x| x)?,
            depth: stencil(&DEPTHS, section.depth.to_m() / section.gap.to_m(), |x| (x + 0.15).ln())?,
        };
        // Next to beads without an equilibrium at the largest movements, the smaller ones must do.
        let logarithms = (2..=moves.len()).rev().find_map(|count| {
            // Strain over movement tends to a limit for small ones.
            let moved = stencil(&moves[..count], moved.max(moves[0]), |x| x)?;
            self.interpolate(&stencils, moved)
        })?;
        Some(QuickStrain::from_logarithms(logarithms, movement.open, base))
    }

    fn interpolate(&self, stencils: &Stencils, moved: Stencil) -> Option<[f64; OUTPUTS]> {
        let mut sums = [0.0; OUTPUTS];
        for (leg, a) in stencils.leg {
            for (gap, b) in stencils.gap {
                for (fill, c) in stencils.fill {
                    for (depth, d) in stencils.depth {
                        let point = Point { family: stencils.family, leg, gap, fill, depth };
                        for (moved, e) in moved {
                            let weight = a * b * c * d * e;
                            if weight == 0.0 {
                                continue;
                            }
                            let start = (point.index() * MOVEMENTS + moved) * OUTPUTS;
                            for (sum, value) in sums.iter_mut().zip(&self.values[start..]) {
                                *sum += weight * unpacked(*value)?;
                            }
                        }
                    }
                }
            }
        }
        Some(sums)
    }
}

/// Nodes to interpolate between, with their weights.
type Stencil = [(usize, f64); 4];

struct Stencils {
    family: usize,
    leg: Stencil,
    gap: Stencil,
    fill: Stencil,
    depth: Stencil,
}

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
