//! How wet boards may be when they go up, and the gap to leave.

use super::boards::PlannedBoards;
use super::gate::{Enough, SAFELY};
use super::movement::Movement;
use super::stack::StackFigures;
use crate::belief::quantile;
use crate::measure::{Length, Moisture, Span, bisect};

/// The moisture to hang boards at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    /// The mean moisture of boards that hold with a chance as good as the one asked for when the gap is left that
    /// goes with it; `None` if no moisture does.
    pub range: Option<Span<Moisture>>,
    /// The moisture to aim for: midway between the room's driest and wettest if that is good enough, else
    /// the one with the best chance.
    pub best: Aim,
    /// The chance there, 0 to 1.
    pub chance: f64,
    /// The chances that count for these boards in this room.
    pub enough: Enough,
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
pub(super) const TRIED: (f64, f64) = (5.0, 18.0);
/// The driest boards that are told of: rooms bring wood no lower.
pub const DRIEST: Moisture = Moisture::pct(TRIED.0);
const STEP: f64 = 0.25;
/// Boards that lay in the room differ by so much of what they differed by when they came. Assumption.
const LAIN: f64 = 0.6;
/// Chances that differ by less are alike.
const NEARLY: f64 = 0.02;
/// Worlds that a window is worked out over.
const WORLDS: usize = 256;
/// Gaps that are tried: from none to an eighth of an inch, first in so many steps, then between them.
const WIDEST: Length = Length::inches(0.125);
const STEPS: u32 = 8;
/// A gap is found to this part of a step.
const FINE: f64 = 1.0 / 32.0;
/// A wider gap must be worth this much of chance.
const WORTH: f64 = 0.005;

/// The least gap whose chance is as good as any, or good enough. It moves smoothly with the boards: rounding
/// is left to whoever tells it.
pub(super) fn least_gap(asked: f64, chance: impl Fn(Length) -> f64) -> Length {
    let gap = |step: f64| WIDEST * (step / f64::from(STEPS));
    let tried: Vec<f64> = (0..=STEPS).map(|step| chance(gap(f64::from(step)))).collect();
    let top = (0..tried.len()).max_by(|a, b| tried[*a].total_cmp(&tried[*b]).then(b.cmp(a))).unwrap_or(0);
    let step = |at: usize| f64::from(u32::try_from(at).unwrap_or(STEPS));
    let around = (step(top.saturating_sub(1)), step((top + 1).min(tried.len() - 1)));
    let (peak, most) = peak(around, |at| chance(gap(at)));
    let most = most.max(tried[top]);
    // Three quarters of the way from what is asked to certainty nothing is gained by a wider gap; but what is
    // asked is not given away for a narrower one.
    let enough = (most - WORTH).min(f64::midpoint(f64::midpoint(asked, 1.0), 1.0));
    let enough = if most >= asked { enough.max(asked) } else { enough };
    match tried.iter().position(|chance| *chance >= enough) {
        Some(0) => Length::ZERO,
        Some(first) => gap(bisect(step(first - 1), step(first), FINE, |at| chance(gap(at)) < enough)),
        // The top lies between two steps.
        None => gap(bisect(around.0, peak, FINE, |at| chance(gap(at)) < enough)),
    }
}

/// Where between these a chance that rises to one top and falls again is highest, and how high.
fn peak((mut low, mut high): (f64, f64), chance: impl Fn(f64) -> f64) -> (f64, f64) {
    const GOLDEN: f64 = 0.618_033_988_75;
    let (mut left, mut right) = (high - GOLDEN * (high - low), low + GOLDEN * (high - low));
    let (mut at_left, mut at_right) = (chance(left), chance(right));
    for _ in 0..6 {
        if at_left < at_right {
            (low, left, at_left) = (left, right, at_right);
            right = low + GOLDEN * (high - low);
            at_right = chance(right);
        } else {
            (high, right, at_right) = (right, left, at_left);
            left = high - GOLDEN * (high - low);
            at_left = chance(left);
        }
    }
    if at_left < at_right { (right, at_right) } else { (left, at_left) }
}

/// How far from `inside`, where it is `good`, it stays so toward `to`.
pub(super) fn edge(mut inside: f64, to: f64, good: impl Fn(f64) -> bool) -> f64 {
    if good(to) {
        return to;
    }
    let mut outside = to;
    while (outside - inside).abs() > 0.02 {
        let middle = f64::midpoint(inside, outside);
        if good(middle) { inside = middle } else { outside = middle }
    }
    inside
}

/// The window for boards that differ as those of deliveries do that lay in the room, with the gap that is
/// worth leaving, or with `gap`.
pub fn window(
    boards: &PlannedBoards<'_>,
    worlds: &Movement,
    figures: &StackFigures,
    gap: Option<Length>,
) -> Window {
    let few = worlds.thinned(WORLDS);
    let gap_at = |moisture: f64| gap_to_leave(boards, &few, figures, gap, moisture);
    let at = |moisture: f64| chance(boards, &few, figures, (moisture, gap_at(moisture)));
    let midpoint = worlds.midpoint();
    let at_midpoint = at(midpoint);
    let driest = driest(&few);
    let top = if at_midpoint >= boards.asked { (midpoint, at_midpoint) } else { best_moisture(at, driest) };
    let limits = Enough::of(boards.asked, top.1.max(at_midpoint));
    let enough = limits.to_hang + SAFELY;
    // What is hardly better elsewhere is no reason to leave the middle.
    let in_the_middle = at_midpoint >= limits.to_wait_for || (at_midpoint > top.1 - NEARLY && top.1 < enough);
    let (best, holds) = if in_the_middle { (midpoint, at_midpoint) } else { top };
    let aim = Aim { moisture: Moisture::pct(best), gap: gap_at(best) };
    // Drier boards get a wider gap.
    let good = |moisture: f64| at(moisture) >= enough;
    let range = (holds >= enough).then(|| {
        let [low, high] = [driest.min(best), TRIED.1.max(best)].map(|to| Moisture::pct(edge(best, to, good)));
        Span { low, high }
    });
    Window { range, best: aim, chance: holds, enough: limits }
}

/// What to aim for where boards are hung at this moisture.
pub fn aim_at(
    boards: &PlannedBoards<'_>,
    worlds: &Movement,
    figures: &StackFigures,
    gap: Option<Length>,
    moisture: Moisture,
) -> Aim {
    let few = worlds.thinned(WORLDS);
    Aim { moisture, gap: gap_to_leave(boards, &few, figures, gap, moisture.to_pct()) }
}

/// The gap that is worth leaving at this moisture, or the one that is settled.
fn gap_to_leave(
    boards: &PlannedBoards<'_>,
    worlds: &Movement,
    figures: &StackFigures,
    settled: Option<Length>,
    moisture: f64,
) -> Length {
    settled.unwrap_or_else(|| least_gap(boards.asked, |gap| chance(boards, worlds, figures, (moisture, gap))))
}

/// The chance of boards hung at this moisture with this gap.
fn chance(
    boards: &PlannedBoards<'_>,
    worlds: &Movement,
    figures: &StackFigures,
    (moisture, gap): (f64, Length),
) -> f64 {
    let spread = LAIN * figures.spread.middle;
    boards.chances(worlds, gap, figures, |_| (moisture, spread)).holds
}

/// The driest that boards come to in half of the worlds: to ask for drier ones would be idle.
fn driest(worlds: &Movement) -> f64 {
    let mut all: Vec<f64> = worlds.extremes.iter().map(|(dry, _)| *dry).collect();
    quantile(&mut all, 0.5).clamp(TRIED.0, TRIED.1)
}

/// The moisture with the best chance, from `driest` on: the chance rises to one top and falls again.
fn best_moisture(chance: impl Fn(f64) -> f64, driest: f64) -> (f64, f64) {
    let mut best = (driest, 0.0);
    let mut moisture = driest;
    while moisture <= TRIED.1 {
        let own = chance(moisture);
        if own > best.1 {
            best = (moisture, own);
        }
        moisture += 4.0 * STEP;
    }
    for step in -3..=3 {
        let moisture = (best.0 + STEP * f64::from(step)).max(driest);
        let own = chance(moisture);
        if own > best.1 {
            best = (moisture, own);
        }
    }
    best
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Worth of a gap that rises to a top and falls again, as opening and buckling make it.
    fn worth(top: f64, steepness: f64) -> impl Fn(Length) -> f64 {
        move |gap| {
            let away = (gap.to_mm() - top) * steepness;
            0.99 - 0.3 * away.tanh().powi(2)
        }
    }

    proptest! {
        /// Boards a little drier get a gap a little wider: it doesn't step in sixty-fourths, and neither does the chance.
        #[test]
        fn the_gap_moves_smoothly(top in 0.2_f64..2.8, steepness in 0.5_f64..3.0, asked in 0.8_f64..0.97) {
            let gap = |top: f64| least_gap(asked, worth(top, steepness)).to_mm();
            let moved = gap(top + 0.02) - gap(top);
            prop_assert!((-0.04..=0.06).contains(&moved), "{moved} mm");
            let chance = worth(top, steepness)(Length::mm(gap(top)));
            prop_assert!(chance >= f64::midpoint(asked, 1.0).min(0.98) - 0.01, "{chance}");
        }
    }
}
