//! The reading whose outcome is expected to settle most of the doubt about the causes.

use super::cause::{Cause, Hypothesis};
use super::ensemble::LANES;
use super::evidence::log_sum;
use super::failures::lets_go;
use super::weigh::{ACCOUNTS, Scale, accounts};
use super::{Odds, Weighed};

/// Something that could be measured next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reading {
    /// One more gap in the section of this index.
    Gap(usize),
    /// A moisture reading of the boards in that section.
    Moisture(usize),
    /// How the beads failed at the joints that were measured.
    Failures,
    /// The room's hygrometer.
    Room,
}

/// Doubt under which nothing is left to settle, nats.
const SETTLED: f64 = 0.02;
/// How joints scatter about their mean in proportion to the opening, and whatever it is, mm.
const SCATTER: (f64, f64) = (0.22, 0.35);
/// Boards in a bonded group, of which one joint shows.
const BONDED: f64 = 4.0;

/// A mean and variance, with a share for gaps that are not closed.
#[derive(Debug, Clone, Copy, Default)]
struct Foresight {
    share: f64,
    mean: f64,
    variance: f64,
}

/// An account with what it expects of a quantity.
struct Expected {
    account: Hypothesis,
    weight: f64,
    moisture: Vec<Foresight>,
    gap: Vec<Foresight>,
    humidity: Foresight,
}

pub(super) fn most_informative(scale: &Scale<'_>, weighed: &Weighed, odds: &Odds) -> Option<(Reading, f64)> {
    let weights = odds.of_accounts.as_flattened();
    let now = doubt(weights);
    if now < SETTLED {
        return None;
    }
    let expected: Vec<Expected> = expectations(scale, weighed, odds);
    let grid = |count: u32, step: f64| (0..count).map(move |at| f64::from(at) * step);
    let mut readings: Vec<(Reading, f64)> = Vec::new();
    for at in 0..scale.sections().len() {
        let moisture = |x: f64| -> Vec<f64> { expected.iter().map(|e| e.moisture[at].density(x)).collect() };
        readings.push((Reading::Moisture(at), left(&expected, grid(64, 0.5).map(moisture))));
        let gap = |x: f64| -> Vec<f64> {
            let of = |e: &Expected| {
                let gap = e.gap[at];
                // The first outcome stands for a closed joint.
                if x > 0.0 { gap.share * gap.density(x) * 0.25 } else { 1.0 - gap.share }
            };
            expected.iter().map(of).collect()
        };
        readings.push((Reading::Gap(at), left(&expected, grid(64, 0.25).map(gap))));
    }
    if !scale.knows_room() {
        let humidity = |x: f64| -> Vec<f64> { expected.iter().map(|e| e.humidity.density(x)).collect() };
        readings.push((Reading::Room, left(&expected, grid(50, 2.0).map(humidity))));
    }
    let unnoted = scale.widths_without_failures();
    if !unnoted.is_empty() {
        let outcome = |failed: bool| -> Vec<f64> {
            let of = |e: &Expected| {
                let chance = |width: &f64| lets_go(e.account.has(Cause::WeakSealant), *width);
                unnoted.iter().map(chance).map(|p| if failed { p } else { 1.0 - p }).product()
            };
            expected.iter().map(of).collect()
        };
        readings.push((Reading::Failures, left(&expected, [true, false].into_iter().map(outcome))));
    }
    let (reading, left) = readings.into_iter().min_by(|a, b| a.1.total_cmp(&b.1))?;
    Some((reading, (1.0 - left / now).clamp(0.0, 1.0)))
}

impl Foresight {
    /// Density of a reading at `x`, but for a constant.
    fn density(&self, x: f64) -> f64 {
        (-0.5 * (x - self.mean).powi(2) / self.variance.max(1e-6)).exp() / self.variance.max(1e-6).sqrt()
    }
}

/// What every account expects, by the worlds in which it holds.
fn expectations(scale: &Scale<'_>, weighed: &Weighed, odds: &Odds) -> Vec<Expected> {
    let all = log_sum(weighed.logs.as_flattened());
    let (worlds, visit) = (&weighed.worlds, weighed.worlds.day(0));
    let step = scale.step_on_visit();
    [false, true]
        .into_iter()
        .flat_map(|wet| (0..ACCOUNTS).map(move |account| (wet, account)))
        .map(|(wet, at)| {
            let account = Hypothesis { wet, ..accounts()[at] };
            let own: Vec<(usize, f64)> = (0..weighed.logs.len())
                .filter(|&world| weighed.draws.is_wet(world) == wet)
                .map(|world| (world, (weighed.logs[world][at] - all).exp()))
                .filter(|(_, weight)| *weight > 1e-8)
                .collect();
            let wetted = account.has(Cause::WettedAndDried);
            let sections = scale.sections();
            let moisture = sections.iter().map(|section| {
                let followed = &worlds.build_ups[section.build_up];
                let mut found = moments(&own, |world| followed.at(world, visit));
                found.variance += if wetted { 6.0 } else { 1.5 };
                found
            });
            let gap = sections.iter().map(|section| {
                let followed = &worlds.build_ups[section.build_up];
                let opened =
                    |world| section.opening(followed.installed[world], followed.at(world, visit)).max(0.0);
                let mut found = moments(&own, opened);
                let boards = if account.bonded { BONDED } else { 1.0 };
                let scatter = (SCATTER.0 * found.mean).hypot(SCATTER.1);
                found.mean *= boards;
                found.variance = boards * boards * found.variance + boards * scatter * scatter;
                if wetted {
                    found.mean += 1.5;
                    found.variance += 2.0;
                }
                found.share = 1.0 / boards;
                found
            });
            let humidity = {
                let of = |world: usize| {
                    let vapor = step.vapor_in(&worlds.air[world / LANES], world % LANES);
                    100.0 * f64::from(vapor / step.saturation)
                };
                let mut found = moments(&own, of);
                found.variance += 45.0;
                found
            };
            Expected {
                account,
                weight: odds.of_accounts[usize::from(wet)][at],
                moisture: moisture.collect(),
                gap: gap.collect(),
                humidity,
            }
        })
        .collect()
}

/// Mean and variance of a quantity over worlds.
fn moments(own: &[(usize, f64)], value: impl Fn(usize) -> f64) -> Foresight {
    let all: f64 = own.iter().map(|(_, weight)| weight).sum();
    if all <= 0.0 {
        return Foresight { share: 1.0, mean: 0.0, variance: 1.0 };
    }
    let mean = own.iter().map(|(world, weight)| weight / all * value(*world)).sum::<f64>();
    let variance = own.iter().map(|(world, weight)| weight / all * (value(*world) - mean).powi(2)).sum();
    Foresight { share: 1.0, mean, variance }
}

/// Doubt about the causes, in nats: the entropy of the accounts.
fn doubt(weights: &[f64]) -> f64 {
    weights.iter().filter(|weight| **weight > 0.0).map(|weight| -weight * weight.ln()).sum()
}

/// Doubt expected to be left after a reading with these outcomes, each with the density that every
/// account gives it.
fn left(expected: &[Expected], outcomes: impl Iterator<Item = Vec<f64>>) -> f64 {
    let (mut sum, mut left) = (0.0, 0.0);
    for densities in outcomes {
        let joint: Vec<f64> = expected.iter().zip(&densities).map(|(e, d)| e.weight * d).collect();
        let chance: f64 = joint.iter().sum();
        if chance > 0.0 {
            let posterior: Vec<f64> = joint.iter().map(|part| part / chance).collect();
            left += chance * doubt(&posterior);
            sum += chance;
        }
    }
    if sum > 0.0 { left / sum } else { doubt(&expected.iter().map(|e| e.weight).collect::<Vec<_>>()) }
}
