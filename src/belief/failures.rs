//! How beads failed, and what that says of the sealant.

use super::evidence::{SectionEvidence, log_mean};
use crate::survey::Failure;

/// Opening under which a joint looks closed, mm.
const CLOSED: f64 = 0.1;

/// Logarithm of the probability that the beads failed as noted, given how far the joints opened.
///
/// A bead lets go past an opening that is not known: a sound one between 0.7 and 2.5 mm, a weak one
/// between 0.05 and 0.5 mm (assumptions); the kinds of failure share it as reported by the trade.
pub(super) fn log_likelihood(weak: bool, sections: &[SectionEvidence<'_>]) -> f64 {
    const STEPS: u32 = 12;
    let (low, high) = limits(weak);
    let of_limit = |limit: f64| {
        let gaps = sections.iter().flat_map(|section| &section.gaps);
        gaps.map(|gap| one(gap.width.to_mm(), gap.failed, limit).ln()).sum::<f64>()
    };
    let at = |step: u32| low + (high - low) * (f64::from(step) + 0.5) / f64::from(STEPS);
    log_mean((0..STEPS).map(|step| of_limit(at(step))))
}

/// Between which openings beads let go, mm.
pub(super) const fn limits(weak: bool) -> (f64, f64) {
    if weak { (0.05, 0.5) } else { (0.7, 2.5) }
}

/// How likely a bead that lets go at about `limit` mm looks like this in a joint of this width.
pub(super) fn one(width: f64, failed: Failure, limit: f64) -> f64 {
    let past = past(width, limit, 0.2 * limit + 0.05);
    // Paint tears and beads look whole the more the less a joint is open.
    let open = self::past(width, CLOSED, 0.05);
    let (if_failed, if_held) = match failed {
        Failure::LetGoOneSide => (0.5, 0.01),
        Failure::SplitInMiddle => (0.28, 0.01),
        Failure::PaintTorn => (0.2, 0.1 + 0.4 * open),
        Failure::Whole => (0.02, 0.86 - 0.4 * open),
        Failure::SqueezedOut => (0.01, 0.02),
        Failure::NotNoted => (1.0, 1.0),
    };
    past * if_failed + (1.0 - past) * if_held
}

/// Probability that `width` is past a limit known to within `doubt`.
fn past(width: f64, limit: f64, doubt: f64) -> f64 {
    1.0 / (1.0 + ((limit - width) / doubt).exp())
}

/// Probability that a bead let go at `width` mm, sound or weak, for planning what to note.
pub(super) fn lets_go(weak: bool, width: f64) -> f64 {
    let limit = if weak { 0.25 } else { 1.5 };
    past(width, limit, 0.4 * limit)
}
