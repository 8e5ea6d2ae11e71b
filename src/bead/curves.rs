//! How a bead is strained at every gap and movement that the table holds, once for all sealants that cure to
//! the same share of their volume.

use std::collections::HashMap;
use std::sync::{Arc, Mutex, PoisonError};

use rayon::prelude::*;

use super::design::BeadDesign;
use super::grid::{
    DEPTHS, FILLS, Family, GAPS, LEGS, QuickStrain, SQUARE_DEPTHS, SQUARE_GAPS, solved_strains,
};
use super::section::{Behind, BoardEdge, Section, Tooling};
use super::table::Table;
use crate::measure::{Length, Percent};

/// Gaps at which the curves of a V are kept are so far apart at most, by their logarithms.
const STEP: f64 = 0.24;
/// Designs whose curves are kept; past these all are forgotten.
const MOST_KEPT: usize = 512;

/// Movements with the strains they bring, the smallest first.
pub(super) type Strains = [(Length, QuickStrain)];

/// The strains of a bead in one gap.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Curve {
    /// Logarithm of the gap, m.
    pub gap: f64,
    /// Mean width between the boards over the height that is filled, m.
    pub mean_width: f64,
    pub opened: Vec<(Length, QuickStrain)>,
    pub closed: Vec<(Length, QuickStrain)>,
    pub slid: Vec<(Length, QuickStrain)>,
    /// While it sticks to the tongue; empty where it does not.
    pub opened_on_tongue: Vec<(Length, QuickStrain)>,
    pub slid_on_tongue: Vec<(Length, QuickStrain)>,
}

/// What tells designs apart.
type Key = [u64; 7];

/// The curves of a design that are known.
#[derive(Clone)]
struct Known {
    curves: Arc<[Curve]>,
    /// The widest gap that was solved, m; `None` where they are read from the table.
    solved_to: Option<f64>,
}

/// They depend on nothing but the design, so those that are known are kept.
static KEPT: Mutex<Option<HashMap<Key, Known>>> = Mutex::new(None);

fn kept(key: &Key) -> Option<Known> {
    KEPT.lock().unwrap_or_else(PoisonError::into_inner).as_ref()?.get(key).cloned()
}

fn keep(key: Key, known: Known) {
    let mut kept = KEPT.lock().unwrap_or_else(PoisonError::into_inner);
    let kept = kept.get_or_insert_default();
    if kept.len() >= MOST_KEPT {
        // What took a second to solve outlives what is read in a blink.
        kept.retain(|_, known| known.solved_to.is_some());
    }
    if kept.len() >= MOST_KEPT {
        kept.clear();
    }
    kept.insert(key, known);
}

/// The curves of a design, by rising gap; none at gaps where it is no bead. Solved if they were, else those of the
/// nearest bead in the table.
pub(super) fn curves(design: &BeadDesign) -> Arc<[Curve]> {
    let key = key(design);
    if let Some(known) = kept(&key) {
        return known.curves;
    }
    let (shape, table) = (Tabulated::of(design), Table::shipped());
    let strains = |section: &Section, family| table.nearest_strains(section, family);
    let curve = |gap: f64| curve(&shape.at(gap.exp()), gap, &strains);
    let curves: Arc<[Curve]> = shape.gaps().into_iter().filter_map(curve).collect();
    keep(key, Known { curves: Arc::clone(&curves), solved_to: None });
    curves
}

impl BeadDesign {
    /// Whether what is said of this bead is its own in slots up to this width: it is in the table, or was solved.
    /// Else it is that of the nearest bead in the table.
    pub fn is_known(&self, widest: Length) -> bool {
        let within = |solved_to: f64| widest.to_m() <= solved_to;
        Tabulated::of(self).holds(self, widest)
            || kept(&key(self)).and_then(|known| known.solved_to).is_some_and(within)
    }

    /// Solves this bead in slots up to this width, on all cores, within about a second; from then on what is said of
    /// it is its own.
    pub fn solve(&self, widest: Length) {
        let widest = SPARE * widest.to_m().max(self.filled().to_m());
        let gaps = spaced((widest / SOLVED_SPAN).ln(), widest.ln());
        let solved = |gap: f64| curve(self, gap, &solved_strains);
        let curves: Vec<Curve> = gaps.into_par_iter().filter_map(solved).collect();
        keep(key(self), Known { curves: curves.into(), solved_to: Some(widest) });
    }

    /// Height of the V that is filled.
    fn filled(&self) -> Length {
        match self.edge {
            BoardEdge::V { leg, angle } => {
                leg * (angle.to_degrees().to_radians().tan() * self.fill.to_fraction())
            }
            BoardEdge::Square => Length::ZERO,
        }
    }

    /// What the V widens the face by on each side, m.
    fn flank(&self) -> f64 {
        match self.edge {
            BoardEdge::V { leg, .. } => leg.to_m() * self.fill.to_fraction(),
            BoardEdge::Square => 0.0,
        }
    }
}

/// Slots are solved somewhat beyond the widest that is asked for: the next reading makes it another one.
const SPARE: f64 = 1.5;
/// The widest slot that is solved, over the narrowest.
const SOLVED_SPAN: f64 = 20.0;

fn key(design: &BeadDesign) -> Key {
    let (leg, angle) = match design.edge {
        BoardEdge::V { leg, angle } => (leg.to_m(), angle.to_degrees()),
        BoardEdge::Square => (0.0, 0.0),
    };
    let hollow = match design.tooling {
        Tooling::Flush => 0.0,
        Tooling::Concave(share) => share.to_pct(),
    };
    let BeadDesign { fill, depth, behind, solids, .. } = *design;
    let figures = [leg, angle, fill.to_pct(), depth.to_m(), hollow, solids.to_pct()].map(f64::to_bits);
    let [leg, angle, fill, depth, hollow, solids] = figures;
    [leg, angle, fill, depth, hollow, solids, behind as u64]
}

/// Gaps from one logarithm to another, evenly spaced by theirs.
fn spaced(low: f64, high: f64) -> Vec<f64> {
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a dozen nodes")]
    let nodes = ((high - low) / STEP).ceil().max(1.0) as u32;
    (0..=nodes).map(|node| low + (high - low) * f64::from(node) / f64::from(nodes)).collect()
}

/// A design as it is tabulated.
struct Tabulated {
    design: BeadDesign,
    /// Legs of the V's in which it is tabulated: a bead doesn't feel how far a V goes on beyond its face.
    legs: (Length, Length),
}

impl Tabulated {
    fn of(design: &BeadDesign) -> Self {
        let (least, most) = (Length::inches(LEGS[0]), Length::inches(LEGS[LEGS.len() - 1]));
        let filled = design.filled();
        let low = filled.max(least).min(most);
        Self { design: *design, legs: (low, (filled * (1.0 / FILLS[0])).max(low).min(most)) }
    }

    /// Whether the table has this design itself, in slots up to this width.
    fn holds(&self, design: &BeadDesign, widest: Length) -> bool {
        /// Figures that were typed in millimeters miss the table's edge by a hair.
        const HAIR: f64 = 1e-6;
        match design.edge {
            BoardEdge::V { angle, .. } => {
                let fill = design.filled().to_m() / self.legs.0.to_m();
                (angle.to_degrees() - 45.0).abs() < HAIR
                    && (FILLS[0] - HAIR..=1.0 + HAIR).contains(&fill)
                    && widest <= self.legs.1 * GAPS[GAPS.len() - 1]
            }
            BoardEdge::Square => widest <= Length::inches(SQUARE_GAPS[SQUARE_GAPS.len() - 1]),
        }
    }

    /// The leg of the tabulated V that is nearest to this one.
    fn own_leg(&self, leg: Length) -> Length {
        leg.max(self.legs.0).min(self.legs.1)
    }

    /// Logarithms of the gaps to keep curves at, m.
    fn gaps(&self) -> Vec<f64> {
        match self.design.edge {
            BoardEdge::V { leg, .. } => {
                let high = self.legs.1 * GAPS[GAPS.len() - 1];
                let low = self.own_leg(leg) * GAPS[0];
                spaced(low.to_m().ln(), high.to_m().ln())
            }
            BoardEdge::Square => SQUARE_GAPS.iter().map(|gap| Length::inches(*gap).to_m().ln()).collect(),
        }
    }

    /// The same bead, or the nearest, in a V that the table has with this gap, m.
    fn at(&self, gap: f64) -> BeadDesign {
        let BoardEdge::V { leg, .. } = self.design.edge else {
            let shallowest = Length::m(gap * SQUARE_DEPTHS[0]);
            return BeadDesign { depth: self.design.depth.max(shallowest), ..self.design };
        };
        // A wide gap is in the table with a large V.
        let leg = self.own_leg(leg).max(Length::m(gap / GAPS[GAPS.len() - 1])).min(self.legs.1);
        let fill = (self.design.filled().to_m() / leg.to_m()).clamp(FILLS[0], 1.0);
        BeadDesign { edge: Section::v(leg), fill: Percent::pct(100.0 * fill), ..self.design }
    }
}

/// The curve of a design at a gap given by its logarithm, with what tells the strains of a section; `None` where there
/// is no bead.
fn curve(
    design: &BeadDesign,
    gap: f64,
    strains: &impl Fn(&Section, Family) -> Vec<(Length, QuickStrain)>,
) -> Option<Curve> {
    let slot = gap.exp();
    let section = |behind: Behind| {
        let depth = design.depth.min(Length::m(slot * DEPTHS[DEPTHS.len() - 1]));
        Section { depth, behind, ..design.section(Length::m(slot)) }
    };
    // A rod gives way and a breaker does not hold: while they are pulled, both are as nothing.
    let own = if design.behind == Behind::Rod { Behind::Free } else { design.behind };
    let (free, own) = (section(Behind::Free), section(own));
    let closed = match own.behind {
        Behind::Free | Behind::Rod => strains(&free, Family::SqueezedFree),
        Behind::Tongue | Behind::Breaker => strains(&own, Family::SqueezedOnTongue),
    };
    let bonded = own.behind == Behind::Tongue;
    let on_tongue = |family| if bonded { strains(&own, family) } else { vec![] };
    let curve = Curve {
        gap,
        mean_width: slot + design.flank(),
        opened: strains(&free, Family::PulledFree),
        slid: strains(&free, Family::SlidFree),
        closed,
        opened_on_tongue: on_tongue(Family::PulledOnTongue),
        slid_on_tongue: on_tongue(Family::SlidOnTongue),
    };
    let whole = !curve.opened.is_empty() && !curve.slid.is_empty() && !curve.closed.is_empty();
    whole.then_some(curve)
}
