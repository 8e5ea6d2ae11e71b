//! How likely each cause is, which readings say so, and the reading that would settle most.

use rayon::prelude::*;

use super::evidence::{SectionEvidence, SectionInputs};
use super::hypothesis::{Cause, CausePriors, Hypothesis};
use super::likelihood::{
    Expectation, Parameters, SETS, Terms, expectation, failure_term, lets_go, log_mean, section_terms,
};

/// What a clue is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum ClueKind {
    /// How wide the gaps are on the whole.
    MeanGap,
    /// How they are spread over the joints: even, sporadic, one line, one part.
    Pattern,
    /// How wet the boards are, against what the room makes them.
    Moisture,
    /// How the beads failed.
    Failures,
}

/// One clue and what it argues for.
#[derive(Debug, Clone, PartialEq)]
pub struct Clue {
    /// What it is.
    pub kind: ClueKind,
    /// By what factor it changes each cause's odds, in the order of [`Cause::ALL`].
    pub factors: [f64; 6],
}

/// Something that could be measured next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reading {
    /// One more gap in the section of this index among the inputs.
    Gap(usize),
    /// A moisture reading of the boards in that section.
    Moisture(usize),
    /// How the beads failed at the joints that were measured.
    Failures,
}

/// The odds of the causes.
#[derive(Debug, Clone, PartialEq)]
pub struct Odds {
    /// Probability that each cause plays a part, in the order of [`Cause::ALL`]: the first two add up
    /// to 1, the others may come with either.
    pub causes: [f64; 6],
    /// The likeliest account, and its probability.
    pub account: (Hypothesis, f64),
    /// The clues.
    pub clues: Vec<Clue>,
    /// The reading that would settle most, and the share of the doubt it is expected to remove.
    pub most_informative_reading: Option<(Reading, f64)>,
}

/// Probabilities of the accounts.
type Weights = Vec<f64>;

/// What an account makes of the readings.
#[derive(Debug, Clone)]
struct Scored {
    account: Hypothesis,
    /// Logarithms: of the prior, and of the likelihood of gaps and moistures together, of the gaps'
    /// sum and the moistures, of each alone, and of the failures.
    prior: f64,
    all: f64,
    sum_and_moistures: f64,
    moistures: f64,
    gaps: f64,
    failures: f64,
    /// Per section what a new reading is expected to be.
    foresight: Vec<Foresight>,
}

/// What an account, with the readings so far, expects of a new reading in a section.
#[derive(Debug, Clone, Copy, Default)]
struct Foresight {
    /// Moisture in per cent, mean and variance.
    moisture: (f64, f64),
    /// Probability that a joint is in the wide lot, its mean and variance, mm; others are closed.
    gap: (f64, f64, f64),
}

/// The odds of the causes, held against the readings of all sections. `None` while no gap is known.
pub fn odds(inputs: &[SectionInputs<'_>], expected: &CausePriors) -> Option<Odds> {
    let sections: Vec<SectionEvidence> = inputs.iter().map(SectionEvidence::new).collect();
    if sections.iter().all(|section| section.open.is_empty() && section.closed == 0.0) {
        return None;
    }
    let sets: Vec<Parameters> = (0..SETS).map(Parameters::of_set).collect();
    let scored: Vec<Scored> = Hypothesis::all()
        .into_par_iter()
        .map(|account| score(account, &sections, &sets, expected.of(&account).max(1e-9).ln()))
        .collect();
    let weights = weigh(&scored, |s| s.all + s.failures);
    let causes = of_causes(&scored, &weights);
    let best = (0..scored.len()).max_by(|&a, &b| weights[a].total_cmp(&weights[b]))?;
    Some(Odds {
        causes,
        account: (scored[best].account, weights[best]),
        clues: clues(&scored, &sections),
        most_informative_reading: most_informative_reading(&scored, &weights, &sections),
    })
}

/// The stretch of the job that each section takes, by its number of joints.
fn stretches(sections: &[SectionEvidence]) -> Vec<(f64, f64)> {
    let all: f64 = sections.iter().map(|section| section.joints).sum::<f64>().max(1.0);
    let mut from = 0.0;
    let mut stretch = |section: &SectionEvidence| {
        let to = from + section.joints / all;
        let own = (from, to);
        from = to;
        own
    };
    sections.iter().map(&mut stretch).collect()
}

fn score(account: Hypothesis, sections: &[SectionEvidence], sets: &[Parameters], prior: f64) -> Scored {
    let stretches = stretches(sections);
    let joints: f64 = sections.iter().map(|section| section.joints).sum();
    let readings: f64 = sections.iter().map(open_count).sum();
    let observed: f64 = sections.iter().map(|section| section.mean * open_count(section)).sum();
    let seen = readings + sections.iter().map(|section| section.closed).sum::<f64>();
    let mut logs = Vec::with_capacity(sets.len());
    let mut expectations: Vec<Expectation> = Vec::with_capacity(sets.len() * sections.len());
    for set in sets {
        let mut total = Terms::default();
        for (section, stretch) in sections.iter().zip(&stretches) {
            let expected = expectation(&account, set, section, *stretch);
            let terms = section_terms(&expected, section);
            total.gaps += terms.gaps;
            total.moistures += terms.moistures;
            total.moved += terms.moved;
            total.sum.0 += terms.sum.0;
            total.sum.1 += terms.sum.1;
            expectations.push(expected);
        }
        if account.other_cause == super::hypothesis::OtherCause::Framing && joints > 0.0 {
            // The moved line is one of the joints that were measured, or it is not.
            total.gaps += ((1.0 - seen / joints).max(0.0) + total.moved / joints).max(1e-12).ln();
        }
        let sd = total.sum.1.sqrt().max(0.1);
        let sum = -0.5 * ((observed - total.sum.0) / sd).powi(2) - sd.ln();
        logs.push((total.gaps, total.moistures, sum));
    }
    let all = log_mean(logs.iter().map(|(gaps, moistures, _)| gaps + moistures));
    #[expect(clippy::cast_precision_loss, reason = "a few hundred sets")]
    let weigh = |log: &(f64, f64, f64)| (log.0 + log.1 - all).exp() / logs.len() as f64;
    let weights: Weights = logs.iter().map(weigh).collect();
    Scored {
        account,
        prior,
        all,
        sum_and_moistures: log_mean(logs.iter().map(|(_, moistures, sum)| sum + moistures)),
        moistures: log_mean(logs.iter().map(|(_, moistures, _)| *moistures)),
        gaps: log_mean(logs.iter().map(|(gaps, ..)| *gaps)),
        failures: failure_term(&account, sections),
        foresight: (0..sections.len())
            .map(|at| foresight(&expectations, &weights, sections.len(), at))
            .collect(),
    }
}

#[expect(clippy::cast_precision_loss, reason = "a count of readings")]
fn open_count(section: &SectionEvidence) -> f64 {
    section.open.len() as f64
}

/// Mean and variance over the parameter sets of what a new reading would be.
fn foresight(expectations: &[Expectation], weights: &Weights, sections: usize, at: usize) -> Foresight {
    let own = || expectations.iter().skip(at).step_by(sections).zip(weights);
    let mean = |value: &dyn Fn(&Expectation) -> f64| own().map(|(e, w)| w * value(e)).sum::<f64>();
    let now = |e: &Expectation| e.now + e.wetted.map_or(0.0, |(.., surplus)| 0.5 * surplus);
    let wide = |e: &Expectation| {
        let (opening, sd, share) = e.group.unwrap_or((e.opening, e.scatter, 1.0));
        (opening + e.wetted.map_or(0.0, |(_, _, more, _)| more), sd, share)
    };
    let moisture = mean(&now);
    let gap = mean(&|e| wide(e).0);
    let spread = mean(&|e| {
        let (opening, sd, _) = wide(e);
        sd * sd + (opening - gap).powi(2)
    });
    Foresight {
        moisture: (moisture, 1.0 + mean(&|e| (now(e) - moisture).powi(2))),
        gap: (mean(&|e| wide(e).2), gap, spread),
    }
}

/// Probabilities of the accounts with this likelihood.
fn weigh(scored: &[Scored], likelihood: impl Fn(&Scored) -> f64) -> Weights {
    let logs: Vec<f64> = scored.iter().map(|s| s.prior + likelihood(s)).collect();
    let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let weights: Weights = logs.iter().map(|log| (log - most).exp()).collect();
    let sum: f64 = weights.iter().sum();
    weights.into_iter().map(|weight| weight / sum).collect()
}

fn of_causes(scored: &[Scored], weights: &Weights) -> [f64; 6] {
    Cause::ALL.map(|cause| {
        let parts = scored.iter().zip(weights).filter(|(s, _)| s.account.has(cause));
        parts.map(|(_, weight)| weight).sum()
    })
}

/// By what factor each cause's odds change when a clue is taken in last.
fn clues(scored: &[Scored], sections: &[SectionEvidence]) -> Vec<Clue> {
    let all = weigh(scored, |s| s.all + s.failures);
    let factors = |with: &Weights, without: &Weights| {
        let odds = |p: f64| p.max(1e-9) / (1.0 - p).max(1e-9);
        let (with, without) = (of_causes(scored, with), of_causes(scored, without));
        std::array::from_fn(|at| odds(with[at]) / odds(without[at]))
    };
    let sums = weigh(scored, |s| s.sum_and_moistures + s.failures);
    let mut clues = vec![
        Clue {
            kind: ClueKind::MeanGap,
            factors: factors(&sums, &weigh(scored, |s| s.moistures + s.failures)),
        },
        Clue { kind: ClueKind::Pattern, factors: factors(&all, &sums) },
    ];
    if sections.iter().any(|section| !section.moistures.is_empty()) {
        let without = weigh(scored, |s| s.gaps + s.failures);
        clues.push(Clue { kind: ClueKind::Moisture, factors: factors(&all, &without) });
    }
    if sections.iter().any(|section| !section.failures.is_empty()) {
        clues.push(Clue { kind: ClueKind::Failures, factors: factors(&all, &weigh(scored, |s| s.all)) });
    }
    clues
}

/// Doubt about the causes, in nats: the entropy of the accounts.
fn doubt(weights: &[f64]) -> f64 {
    weights.iter().filter(|weight| **weight > 0.0).map(|weight| -weight * weight.ln()).sum()
}

/// The reading whose outcome is expected to remove most of the doubt.
fn most_informative_reading(
    scored: &[Scored],
    weights: &Weights,
    sections: &[SectionEvidence],
) -> Option<(Reading, f64)> {
    let now = doubt(weights);
    if now < 0.02 {
        return None;
    }
    let normal =
        |x: f64, (mean, variance): (f64, f64)| (-0.5 * (x - mean).powi(2) / variance).exp() / variance.sqrt();
    let grid = |count: u32, step: f64| (0..count).map(move |at| f64::from(at) * step);
    let mut readings: Vec<(Reading, f64)> = Vec::new();
    for at in 0..sections.len() {
        let moisture = |x: f64| scored.iter().map(|s| normal(x, s.foresight[at].moisture)).collect();
        readings.push((Reading::Moisture(at), left(weights, grid(64, 0.5).map(moisture))));
        // The last outcome stands for a closed joint.
        let gap = |x: f64| -> Vec<f64> {
            let of = |s: &Scored| {
                let (share, mean, variance) = s.foresight[at].gap;
                if x > 0.0 { share * normal(x, (mean, variance)) * 0.4 * 0.25 } else { 1.0 - share }
            };
            scored.iter().map(of).collect()
        };
        readings.push((Reading::Gap(at), left(weights, grid(64, 0.25).map(gap))));
    }
    let unnoted: Vec<f64> = sections.iter().filter(|s| s.failures.is_empty()).map(|s| s.mean).collect();
    if !unnoted.is_empty() {
        let outcome = |failed: bool| -> Vec<f64> {
            let of = |s: &Scored| {
                unnoted
                    .iter()
                    .map(|&width| lets_go(&s.account, width))
                    .map(|p| if failed { p } else { 1.0 - p })
                    .product()
            };
            scored.iter().map(of).collect()
        };
        readings.push((Reading::Failures, left(weights, [true, false].into_iter().map(outcome))));
    }
    let (reading, left) = readings.into_iter().min_by(|a, b| a.1.total_cmp(&b.1))?;
    Some((reading, (1.0 - left / now).clamp(0.0, 1.0)))
}

/// Doubt expected to be left after a reading with these outcomes, each with the density that every
/// account gives it.
fn left(weights: &Weights, outcomes: impl Iterator<Item = Vec<f64>>) -> f64 {
    let (mut sum, mut expected) = (0.0, 0.0);
    for densities in outcomes {
        let joint: Vec<f64> = weights.iter().zip(&densities).map(|(w, d)| w * d).collect();
        let chance: f64 = joint.iter().sum();
        if chance > 0.0 {
            let posterior: Vec<f64> = joint.iter().map(|part| part / chance).collect();
            expected += chance * doubt(&posterior);
            sum += chance;
        }
    }
    if sum > 0.0 { expected / sum } else { doubt(weights) }
}
