//! Which place of a bead goes first: the solver is asked, once for each bead.

use std::collections::HashMap;
use std::sync::{Mutex, PoisonError};

use super::mesh::Fineness;
use super::section::{BoardEdge, Section, Tooling};
use super::strain::{Movement, PlaceStretch, strain_until};
use crate::measure::Length;

/// Beads whose first place is kept; past these all are forgotten.
const MOST_KEPT: usize = 256;
/// Shares of the movement that are gone one after the other: where its end has no equilibrium, what comes before it
/// tells.
const STRIDES: [f64; 4] = [0.25, 0.5, 0.75, 1.0];

/// What tells beads and movements apart, in hundredths of a millimeter, of a degree and of a per cent.
type Key = [i64; 9];

/// The place of a bead that is strained most when its joint is opened by `moved`, or closed where that is below zero.
/// `None` where the solver finds no way there. Takes some milliseconds the first time it is asked of a bead.
pub fn goes_first(section: &Section, moved: Length) -> Option<PlaceStretch> {
    static KEPT: Mutex<Option<HashMap<Key, Option<PlaceStretch>>>> = Mutex::new(None);
    let key = key(section, moved);
    let lock = || KEPT.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(known) = lock().as_ref().and_then(|kept| kept.get(&key)) {
        return *known;
    }
    let path = STRIDES.map(|share| Movement::open(moved * share));
    let gone = strain_until(section, &path, Fineness::STANDARD, None).ok();
    let first = gone.and_then(|(strains, _)| Some(strains.last()?.largest));
    let mut kept = lock();
    let kept = kept.get_or_insert_default();
    if kept.len() >= MOST_KEPT {
        kept.clear();
    }
    kept.insert(key, first);
    first
}

#[expect(clippy::cast_possible_truncation, reason = "hundredths of a millimeter")]
fn key(section: &Section, moved: Length) -> Key {
    let (leg, angle) = match section.edge {
        BoardEdge::V { leg, angle } => (leg.to_mm(), angle.to_degrees()),
        BoardEdge::Square => (0.0, 0.0),
    };
    let hollow = match section.tooling {
        Tooling::Flush => 0.0,
        Tooling::Concave(share) => share.to_pct(),
    };
    let Section { gap, fill, depth, behind, solids, .. } = *section;
    let figures =
        [gap.to_mm(), leg, angle, fill.to_pct(), depth.to_mm(), hollow, solids.to_pct(), moved.to_mm()];
    let [gap, leg, angle, fill, depth, hollow, solids, moved] =
        figures.map(|figure| (100.0 * figure).round() as i64);
    [gap, leg, angle, fill, depth, hollow, solids, moved, behind as i64]
}
