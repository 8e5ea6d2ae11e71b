//! How wet boards may be when they go up, and the gap to leave.

use super::boards::PlannedBoards;
use super::movement::Movement;
use super::stack::StackFigures;
use crate::measure::{Length, Moisture, Span};

/// The moisture to hang boards at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    /// The mean moisture of boards that hold with the chance asked for, each with its gap; `None` if no
    /// moisture does.
    pub range: Option<Span<Aim>>,
    /// The moisture to aim for: midway between the room's driest and wettest if that is good enough, else
    /// the one with the best chance.
    pub best: Aim,
    /// The chance there, 0 to 1.
    pub chance: f64,
}

/// A mean moisture to hang boards at, and the gap to leave at each joint: the drier they are, the wider.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Aim {
    /// The moisture.
    pub moisture: Moisture,
    /// The gap.
    pub gap: Length,
}

/// Moisture that is tried, per cent, and its step.
const TRIED: (f64, f64) = (5.0, 18.0);
const STEP: f64 = 0.25;
/// Boards that lay in the room differ by so much of what they differed by when they came. Assumption.
const LAIN: f64 = 0.6;
/// Chances that differ by less are alike.
const NEARLY: f64 = 0.02;
/// Worlds that a window is worked out over.
const WORLDS: usize = 256;
/// Gaps that are tried: steps of a sixty-fourth of an inch up to an eighth.
const GAPS: u32 = 8;
/// A wider gap must be worth this much of chance.
const WORTH: f64 = 0.01;

/// The gaps that are tried.
fn gaps() -> impl Iterator<Item = Length> {
    (0..=GAPS).map(|step| Length::inches(f64::from(step) / 64.0))
}

/// The least gap whose chance is as good as any, or good enough.
pub(super) fn least_gap(asked: f64, chance: impl Fn(Length) -> f64) -> Length {
    let tried: Vec<(Length, f64)> = gaps().map(|gap| (gap, chance(gap))).collect();
    let most = tried.iter().map(|(_, chance)| *chance).fold(0.0, f64::max);
    // Halfway from what is asked to certainty nothing is gained by a wider gap.
    let enough = (most - WORTH).min(f64::midpoint(asked, 1.0));
    tried.into_iter().find(|(_, chance)| *chance >= enough).map_or(Length::ZERO, |(gap, _)| gap)
}

/// The window for boards that differ as those of deliveries do that lay in the room, with the gap that is worth leaving at each moisture, or with
/// `gap`.
pub fn window(
    boards: &PlannedBoards<'_>,
    worlds: &Movement,
    figures: &StackFigures,
    gap: Option<Length>,
) -> Window {
    let few = worlds.thinned(WORLDS);
    let spread = LAIN * figures.spread.middle;
    let chance =
        |moisture: f64, gap: Length| boards.chances(&few, gap, figures, |_| (moisture, spread)).holds;
    let gap_at = |moisture: f64| gap.unwrap_or_else(|| least_gap(boards.asked, |gap| chance(moisture, gap)));
    let at = |moisture: f64| chance(moisture, gap_at(moisture));
    let midpoint = worlds.midpoint();
    let at_midpoint = at(midpoint);
    let (best, holds) = if at_midpoint >= boards.asked {
        (midpoint, at_midpoint)
    } else {
        let found = best_moisture(at);
        // What is hardly better elsewhere is no reason to leave the middle.
        if at_midpoint > found.1 - NEARLY && found.1 < boards.asked { (midpoint, at_midpoint) } else { found }
    };
    let aim = |moisture: f64| Aim { moisture: Moisture::pct(moisture), gap: gap_at(moisture) };
    let edge = |to: f64| {
        let (mut inside, mut outside) = (best, to);
        while (outside - inside).abs() > 0.05 {
            let middle = f64::midpoint(inside, outside);
            if at(middle) >= boards.asked { inside = middle } else { outside = middle }
        }
        aim(inside)
    };
    let range = (holds >= boards.asked).then(|| Span { low: edge(TRIED.0), high: edge(TRIED.1) });
    Window { range, best: aim(best), chance: holds }
}

/// The moisture with the best chance: the chance rises to one top and falls again.
fn best_moisture(chance: impl Fn(f64) -> f64) -> (f64, f64) {
    let mut best = (TRIED.0, 0.0);
    let mut moisture = TRIED.0;
    while moisture <= TRIED.1 {
        let own = chance(moisture);
        if own > best.1 {
            best = (moisture, own);
        }
        moisture += 4.0 * STEP;
    }
    for step in -3..=3 {
        let moisture = best.0 + STEP * f64::from(step);
        let own = chance(moisture);
        if own > best.1 {
            best = (moisture, own);
        }
    }
    best
}
