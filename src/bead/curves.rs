//! How a bead is strained at every gap and movement that the table holds, once for all sealants that cure to
//! the same share of their volume.

use std::collections::HashMap;
use std::sync::{Arc, Mutex, PoisonError};

use super::design::BeadDesign;
use super::grid::{Family, GAPS, LEGS, QuickStrain, SQUARE_DEPTHS, SQUARE_GAPS};
use super::section::{Behind, BoardEdge, Section, Tooling};
use super::table::Table;
use crate::measure::{Length, Percent};

/// Gaps at which the curves of a V are kept.
const NODES: u32 = 12;
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

/// The curves of a design, by rising gap; none at gaps where it is no bead.
///
/// They depend on nothing but the design, so those that were read from the table are kept.
pub(super) fn curves(design: &BeadDesign) -> Arc<[Curve]> {
    static KEPT: Mutex<Option<HashMap<Key, Arc<[Curve]>>>> = Mutex::new(None);
    let key = key(design);
    let lock = || KEPT.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(known) = lock().as_ref().and_then(|kept| kept.get(&key)) {
        return Arc::clone(known);
    }
    let shape = Shape::of(design);
    let read: Arc<[Curve]> = shape.gaps().into_iter().filter_map(|gap| shape.curve(gap)).collect();
    let mut kept = lock();
    let kept = kept.get_or_insert_default();
    if kept.len() >= MOST_KEPT {
        kept.clear();
    }
    kept.insert(key, Arc::clone(&read));
    read
}

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

/// A design as it is tabulated.
#[derive(Debug, Clone, Copy)]
struct Shape {
    edge: BoardEdge,
    fill: Percent,
    depth: Length,
    behind: Behind,
    tooling: Tooling,
    solids: Percent,
}

impl Shape {
    fn of(design: &BeadDesign) -> Self {
        // A rod gives way and a breaker does not hold: while they are pulled, both are as nothing.
        let behind = if design.behind == Behind::Rod { Behind::Free } else { design.behind };
        let BeadDesign { depth, tooling, solids, .. } = *design;
        let BoardEdge::V { leg, angle } = design.edge else {
            return Self { edge: BoardEdge::Square, fill: Percent::ZERO, depth, behind, tooling, solids };
        };
        let slope = angle.to_degrees().to_radians().tan();
        let filled = leg.to_m() * slope * design.fill.to_fraction();
        let leg = leg.to_inches().clamp(LEGS[0], LEGS[LEGS.len() - 1]);
        let fill = (filled / Length::inches(leg).to_m()).clamp(0.2, 1.0);
        let edge = Section::v(Length::inches(leg));
        Self { edge, fill: Percent::pct(100.0 * fill), depth, behind, tooling, solids }
    }

    /// Logarithms of the gaps to keep curves at, m.
    fn gaps(&self) -> Vec<f64> {
        match self.edge {
            BoardEdge::V { leg, .. } => {
                let (low, high) = (GAPS[0].ln(), GAPS[GAPS.len() - 1].ln());
                let at = |node: u32| low + (high - low) * f64::from(node) / f64::from(NODES - 1);
                (0..NODES).map(|node| leg.to_m().ln() + at(node)).collect()
            }
            BoardEdge::Square => SQUARE_GAPS.iter().map(|gap| Length::inches(*gap).to_m().ln()).collect(),
        }
    }

    fn section(&self, gap: f64, behind: Behind) -> Section {
        let deepest = 2.0;
        let shallowest = if matches!(self.edge, BoardEdge::Square) { SQUARE_DEPTHS[0] } else { 0.0 };
        let depth = Length::m(self.depth.to_m().clamp(shallowest * gap, deepest * gap));
        let plain = Section::plain(Length::m(gap), self.edge, self.fill, depth, behind);
        Section { tooling: self.tooling, solids: self.solids, ..plain }
    }

    /// The curve at a gap given by its logarithm; `None` where there is no bead.
    fn curve(&self, gap: f64) -> Option<Curve> {
        let table = Table::shipped();
        let width = gap.exp();
        let (free, own) = (self.section(width, Behind::Free), self.section(width, self.behind));
        let closed = match self.behind {
            Behind::Free | Behind::Rod => table.nearest_strains(&free, Family::SqueezedFree),
            Behind::Tongue | Behind::Breaker => table.nearest_strains(&own, Family::SqueezedOnTongue),
        };
        let bonded = self.behind == Behind::Tongue;
        let on_tongue = |family| if bonded { table.nearest_strains(&own, family) } else { vec![] };
        let curve = Curve {
            gap,
            mean_width: self.mean_width(width),
            opened: table.nearest_strains(&free, Family::PulledFree),
            slid: table.nearest_strains(&free, Family::SlidFree),
            closed,
            opened_on_tongue: on_tongue(Family::PulledOnTongue),
            slid_on_tongue: on_tongue(Family::SlidOnTongue),
        };
        let whole = !curve.opened.is_empty() && !curve.slid.is_empty() && !curve.closed.is_empty();
        whole.then_some(curve)
    }

    fn mean_width(&self, gap: f64) -> f64 {
        match self.edge {
            BoardEdge::V { leg, .. } => gap + leg.to_m() * self.fill.to_fraction(),
            BoardEdge::Square => gap,
        }
    }
}
