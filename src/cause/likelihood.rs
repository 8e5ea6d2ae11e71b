//! How likely the readings are if an account of what happened is true.
//!
//! Each account has parameters nobody knows (how wet the boards were, how much they scatter, how many
//! are bonded together, which part was wetted); its likelihood is the mean over their whole range, so
//! an account that could explain anything is not preferred for it (marginal likelihood; Kass and
//! Raftery, *Bayes factors*, 1995). The range is covered by a low-discrepancy sequence, the same for
//! every account, and the readings' density given the parameters is written down exactly: normal
//! about the opening that drying leaves, with a lump of probability for a closed joint.

use statrs::function::erf::erfc;

use super::evidence::{CLOSED, LaterGaps, SectionEvidence};
use super::hypothesis::{Hypothesis, OtherCause};

/// Parameter sets tried for each account.
pub(super) const SETS: u32 = 512;
/// How well a gap gauge reads, mm. Assumption.
const GAUGE: f64 = 0.2;
/// A moved line opens by something between these more than its neighbours, mm. Assumption.
const MOVED: (f64, f64) = (1.5, 25.0);
/// One reading in a thousand is a slip: anything up to two inches. Assumption.
const SLIP: f64 = 0.001;
const SLIPS_TO: f64 = 50.0;

/// One set of parameters.
#[derive(Debug, Clone, Copy)]
pub(super) struct Parameters {
    /// Moisture at install, as a quantile of what the account expects.
    install: f64,
    /// Present moisture over what the model says, per cent.
    wet_year: f64,
    /// Opening left when the boards were laid, mm.
    laid: f64,
    /// Scatter in proportion to the opening.
    relative: f64,
    /// Scatter whatever the opening, mm.
    fixed: f64,
    /// Boards in a bonded group.
    group: f64,
    /// Quantiles for what happened on top.
    other_cause: [f64; 4],
}

/// The additive-recurrence sequence of Roberts (2018) in ten dimensions: quantile `dimension` of
/// set `index`.
fn quantile(index: u32, dimension: i32) -> f64 {
    // The positive root of x^10 = x + 1.
    const ROOT: f64 = 1.075_766_066_086_837_1;
    (0.5 + f64::from(index + 1) * ROOT.powi(-(dimension + 1))).fract().clamp(1e-6, 1.0 - 1e-6)
}

impl Parameters {
    pub fn of_set(index: u32) -> Self {
        let q = |dimension| quantile(index, dimension);
        Self {
            install: q(0),
            // A normal of 0.9 % by its logistic stand-in: close enough for a prior.
            wet_year: 0.9 * (q(1) / (1.0 - q(1))).ln() / 1.702,
            laid: -0.15 * (1.0 - q(2)).ln(),
            relative: 0.08 + 0.3 * q(3),
            fixed: 0.1 + 0.5 * q(4) * q(4),
            group: 2.0 + 6.0 * q(5),
            other_cause: [q(6), q(7), q(8), quantile(index, 9)],
        }
    }
}

/// What one set of parameters expects of one section.
#[derive(Debug, Clone, Copy)]
pub(super) struct Expectation {
    /// Present moisture, per cent.
    pub now: f64,
    /// Opening of a joint, mm, and its scatter.
    pub opening: f64,
    pub scatter: f64,
    /// Of a joint that shows a whole group's movement; and how often a joint does.
    pub group: Option<(f64, f64, f64)>,
    /// Wetted part: from and to along the row, opening more there, moisture more there.
    pub wetted: Option<(f64, f64, f64, f64)>,
}

pub(super) fn expectation(
    account: &Hypothesis,
    set: &Parameters,
    section: &SectionEvidence,
    part_of_job: (f64, f64),
) -> Expectation {
    let (mean, wettest) = section.room;
    let install = if account.wet {
        let least = wettest + 1.0;
        least + (27.0 - least).max(1.0) * set.install.powf(1.5)
    } else {
        mean + 1.4 * (set.install / (1.0 - set.install)).ln() / 1.702
    };
    let (now, opened) = section.since_install(install);
    let opening = (opened - section.per_pct * set.wet_year + set.laid).max(0.0);
    let scatter = (set.relative * opening).hypot(set.fixed).hypot(GAUGE);
    let group = account.bonded.then(|| {
        let own = (scatter * scatter - GAUGE * GAUGE).max(0.0);
        (set.group * opening, (set.group * own + GAUGE * GAUGE).sqrt(), 1.0 / set.group)
    });
    // The wetted part lies in the section whose stretch of the job holds the quantile.
    let [place, size, more, damp] = set.other_cause;
    let wetted_section =
        account.other_cause == OtherCause::Wetted && part_of_job.0 <= place && place < part_of_job.1;
    let wetted = wetted_section.then(|| {
        let along = (place - part_of_job.0) / (part_of_job.1 - part_of_job.0);
        // Half of the wettings take the whole section.
        let (from, to) = if size < 0.5 { (0.0, 1.0) } else { (along - size / 3.0, along + size / 3.0) };
        // Half of them are not dry again.
        let surplus = if damp < 0.5 { 0.0 } else { 3.0 + 24.0 * (damp - 0.5) };
        (from, to, 0.5 + 5.5 * more, surplus)
    });
    Expectation { now: now + set.wet_year, opening, scatter, group, wetted }
}

/// Logarithms of the densities of a section's readings.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Terms {
    /// Of the gaps.
    pub gaps: f64,
    /// Of the moistures.
    pub moistures: f64,
    /// Mean and variance that the sum of the gaps is expected to have, mm.
    pub sum: (f64, f64),
    /// Sum over the open readings of the density of a moved line over that of an ordinary one.
    pub moved: f64,
}

fn normal(x: f64, mean: f64, sd: f64) -> f64 {
    const ROOT_TAU: f64 = 2.506_628_274_631_000_5;
    let z = (x - mean) / sd;
    (-0.5 * z * z).exp() / (sd * ROOT_TAU)
}

/// Probability that a normal variable is below [`CLOSED`].
fn closed(mean: f64, sd: f64) -> f64 {
    0.5 * erfc((mean - CLOSED) / (sd * std::f64::consts::SQRT_2))
}

/// Density of an open reading of `y` mm.
fn density(expected: &Expectation, inside: Option<f64>, y: f64) -> f64 {
    if let Some(more) = inside {
        return normal(y, expected.opening + more, expected.scatter.hypot(0.35 * more));
    }
    match expected.group {
        None => normal(y, expected.opening, expected.scatter),
        Some((wide, sd, share)) => {
            // A fifth of the joints inside a group show a hairline.
            let hairline = 0.2 * (-y / 0.3).exp() / 0.3;
            (1.0 - share) * hairline + share * normal(y, wide, sd)
        }
    }
}

/// Probability of a closed reading, and mean and variance of any.
fn whole(expected: &Expectation) -> (f64, f64, f64) {
    let (opening, scatter) = (expected.opening, expected.scatter);
    match expected.group {
        None => (closed(opening, scatter), opening, scatter * scatter),
        Some((wide, sd, share)) => {
            let mean = share * wide + (1.0 - share) * 0.06;
            let square = share * (wide * wide + sd * sd) + (1.0 - share) * 0.036;
            ((1.0 - share) * 0.8 + share * closed(wide, sd), mean, square - mean * mean)
        }
    }
}

/// Holds a section's readings against what is expected of it.
pub(super) fn section_terms(expected: &Expectation, section: &SectionEvidence) -> Terms {
    let mut terms = Terms::default();
    let (shut, mean, variance) = whole(expected);
    terms.gaps += section.closed * shut.max(SLIP).ln();
    #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
    let open = section.open.len() as f64;
    terms.sum = ((open + section.closed) * mean, (open + section.closed) * variance);
    for &(place, width) in &section.open {
        let inside =
            expected.wetted.and_then(|(from, to, more, _)| (from <= place && place <= to).then_some(more));
        let ordinary = (1.0 - SLIP) * density(expected, inside, width) + SLIP / SLIPS_TO;
        terms.gaps += ordinary.ln();
        terms.sum.0 += inside.unwrap_or(0.0);
        terms.sum.1 += inside.map_or(0.0, |more| (0.35 * more).powi(2));
        if width > expected.opening + MOVED.0 && width < expected.opening + MOVED.1 {
            terms.moved += 1.0 / (MOVED.1 - MOVED.0) / ordinary;
        }
    }
    for &(reading, sd) in &section.moistures {
        let usual = normal(reading, expected.now, sd);
        let density = match expected.wetted {
            Some((.., surplus)) if surplus > 0.0 => {
                0.5 * usual + 0.5 * normal(reading, expected.now + surplus, sd.hypot(2.0))
            }
            _ => usual,
        };
        terms.moistures += density.max(1e-12).ln();
    }
    for later in &section.later {
        terms.moistures += later_term(later, expected, section);
    }
    terms
}

/// Logarithm of the density of a later day's gaps: boards that are still drying go on opening, boards
/// that follow the season do as it says.
fn later_term(later: &LaterGaps, expected: &Expectation, section: &SectionEvidence) -> f64 {
    let settled = later.settled.to_pct();
    let change = |now: f64| {
        let then = settled + later.left * (now - section.settled);
        section.per_pct * (now - then)
    };
    #[expect(clippy::cast_precision_loss, reason = "a count of joints")]
    let joints = later.joints as f64;
    let usual = change(expected.now);
    // The gauge at both visits, and boards that move more or less than their species.
    let sd = |change: f64| (GAUGE * (2.0 / joints).sqrt()).hypot(0.2 * change).hypot(0.1);
    let seen = later.change.to_mm();
    let density = match expected.wetted {
        Some((.., surplus)) if surplus > 0.0 => {
            let wet = change(expected.now + surplus);
            0.5 * normal(seen, usual, sd(usual)) + 0.5 * normal(seen, wet, sd(wet))
        }
        _ => normal(seen, usual, sd(usual)),
    };
    density.max(1e-12).ln()
}

/// Logarithm of the probability that the beads failed as noted, given how far the joints opened.
///
/// A bead lets go past an opening that is not known: a sound one between 0.7 and 2.5 mm, a weak one
/// between 0.05 and 0.5 mm (assumptions); the kinds of failure share it as reported by the trade.
pub(super) fn failure_term(account: &Hypothesis, sections: &[SectionEvidence]) -> f64 {
    use crate::survey::Failure;
    const STEPS: u32 = 12;
    let (low, high) = if account.other_cause == OtherCause::WeakSealant { (0.05, 0.5) } else { (0.7, 2.5) };
    let of_limit = |limit: f64| {
        let one = |&(width, failed): &(f64, Failure)| {
            let past = 1.0 / (1.0 + ((limit - width) / (0.2 * limit + 0.05)).exp());
            let (if_failed, if_held) = match failed {
                Failure::LetGoOneSide => (0.5, 0.01),
                Failure::SplitInMiddle => (0.28, 0.01),
                Failure::PaintTorn => (0.2, if width > CLOSED { 0.5 } else { 0.1 }),
                Failure::Whole => (0.02, if width > CLOSED { 0.46 } else { 0.86 }),
                Failure::SqueezedOut => (0.01, 0.02),
                Failure::NotNoted => (1.0, 1.0),
            };
            (past * if_failed + (1.0 - past) * if_held).ln()
        };
        sections.iter().flat_map(|section| &section.failures).map(one).sum::<f64>()
    };
    let at = |step: u32| low + (high - low) * (f64::from(step) + 0.5) / f64::from(STEPS);
    log_mean((0..STEPS).map(|step| of_limit(at(step))))
}

/// Probability that a bead let go at `width` mm, sound or weak, for planning what to note.
pub(super) fn lets_go(account: &Hypothesis, width: f64) -> f64 {
    let limit = if account.other_cause == OtherCause::WeakSealant { 0.25 } else { 1.5 };
    1.0 / (1.0 + ((limit - width) / (0.4 * limit)).exp())
}

/// Logarithm of the mean of the exponentials.
pub(super) fn log_mean(logs: impl Iterator<Item = f64>) -> f64 {
    let (mut most, mut sum, mut count) = (f64::NEG_INFINITY, 0.0, 0.0);
    for log in logs {
        count += 1.0;
        if log > most {
            sum = sum * (most - log).exp() + 1.0;
            most = log;
        } else {
            sum += (log - most).exp();
        }
    }
    most + (sum / count).ln()
}
