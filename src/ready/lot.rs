//! What a delivery is, by its readings: one plausible delivery for each world.
//!
//! A reading is a board's moisture at the pins' depth, plus the meter's offset, which all readings share,
//! plus the reading's own error. Spread between boards and wetter core are drawn as expected and weighed by
//! the readings; given those, mean and offset are normal, so they are drawn from their exact distribution.

use rand::SeedableRng as _;
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;

use super::stack::StackFigures;
use crate::belief::{Priors, resample};
use crate::measure::Length;

/// A reading of a board in the stack.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LotReading {
    /// Days from the delivery.
    pub day: i64,
    /// What the meter showed, put right for the wood's temperature, per cent.
    pub pct: f64,
    /// How deep the pins went.
    pub pins: Length,
}

/// A delivery in every world, on the day it came.
#[derive(Debug, Clone, PartialEq)]
pub struct Lot {
    /// Mean moisture, per cent.
    pub moisture: Vec<f64>,
    /// Standard deviation between boards, per cent.
    pub spread: Vec<f64>,
    /// How much wetter than the faces the core is, points.
    pub core: Vec<f64>,
    /// The meter's offset, points.
    pub offset: Vec<f64>,
}

/// Below this a meter shows little more than that the wood is dry (NT Build 302: 7 to 28 %).
const LOW: f64 = 7.0;

/// Variance of a reading about its board's moisture and the meter's offset, per cent squared.
pub(super) fn reading_variance(pct: f64, priors: &Priors) -> f64 {
    let low = 0.7 * (LOW - pct).max(0.0);
    priors.meter_reading.sd.powi(2) + low * low
}

/// How far a reading with pins at this depth is from the board's mean, for a core wetter by one point:
/// the parabola of [`Lot::core`].
fn at_depth(pins: Length, thickness: Length) -> f64 {
    let from_middle = 1.0 - 2.0 * (pins.to_m() / thickness.to_m()).clamp(0.0, 0.5);
    1.0 / 3.0 - from_middle * from_middle
}

/// Weighted sums of readings: of weights, of values, of squares about the mean, and of logarithms.
struct Sums {
    weight: f64,
    mean: f64,
    squares: f64,
    logs: f64,
}

impl Sums {
    fn of(readings: &[(f64, f64)]) -> Self {
        let weight: f64 = readings.iter().map(|(_, variance)| 1.0 / variance).sum();
        let mean = readings.iter().map(|(value, variance)| value / variance).sum::<f64>() / weight;
        let squares = readings.iter().map(|(value, variance)| (value - mean).powi(2) / variance).sum();
        Self { weight, mean, squares, logs: readings.iter().map(|(_, variance)| variance.ln()).sum() }
    }

    /// Log likelihood where the mean is expected at `expected` with this variance.
    fn log_likelihood(&self, expected: f64, variance: f64) -> f64 {
        let all = variance + 1.0 / self.weight;
        -0.5 * ((self.mean - expected).powi(2) / all + all.ln() + self.squares + self.logs + self.weight.ln())
    }
}

impl Lot {
    /// As expected before any reading, `count` worlds of it; then by `readings` of the first day.
    pub fn of_readings(
        readings: &[LotReading],
        thickness: Length,
        set_to_species: bool,
        figures: &StackFigures,
        priors: &Priors,
        (count, seed): (usize, u64),
    ) -> Self {
        let mut random = Xoshiro256PlusPlus::seed_from_u64(seed);
        let mut normal = || -> f64 { StandardNormal.sample(&mut random) };
        let meter = if set_to_species { &priors.meter_offset } else { &priors.loose_meter_offset };
        let delivered = &figures.delivered;
        let drawn: Vec<(f64, f64)> = (0..count)
            .map(|_| {
                let spread = figures.spread.middle * (figures.spread.sd * normal()).exp();
                (spread, (figures.core_excess.middle + figures.core_excess.sd * normal()).abs())
            })
            .collect();
        let sums = |&(spread, core): &(f64, f64)| {
            let own = readings.iter().map(|reading| {
                let variance = spread * spread + reading_variance(reading.pct, priors);
                (reading.pct - core * at_depth(reading.pins, thickness), variance)
            });
            Sums::of(&own.collect::<Vec<_>>())
        };
        let expected = delivered.middle + meter.middle;
        let variance = delivered.sd.powi(2) + meter.sd.powi(2);
        let weigh = |draw: &(f64, f64)| sums(draw).log_likelihood(expected, variance);
        let chosen: Vec<(f64, f64)> = if readings.is_empty() {
            drawn
        } else {
            let logs: Vec<f64> = drawn.iter().map(weigh).collect();
            resample(&logs, count).into_iter().map(|at| drawn[at]).collect()
        };
        let mut lot = Self { moisture: vec![], spread: vec![], core: vec![], offset: vec![] };
        for draw in &chosen {
            // The sum of mean and offset first, then how it is shared out between the two.
            let (sum, left) = if readings.is_empty() {
                (expected, variance)
            } else {
                let sums = sums(draw);
                let precision = 1.0 / variance + sums.weight;
                ((expected / variance + sums.mean * sums.weight) / precision, 1.0 / precision)
            };
            let sum = sum + left.sqrt() * normal();
            let share = meter.sd.powi(2) / variance;
            let within = (meter.sd.powi(2) * delivered.sd.powi(2) / variance).sqrt();
            let offset = meter.middle + share * (sum - expected) + within * normal();
            lot.moisture.push((sum - offset).clamp(2.0, 60.0));
            lot.spread.push(draw.0);
            lot.core.push(draw.1);
            lot.offset.push(offset);
        }
        // Chosen draws stand in order of their index: mix them, so that nothing goes with the rooms.
        lot.pick(&(0..count).map(|at| (at * STRIDE) % count).collect::<Vec<_>>())
    }

    /// These worlds, in this order.
    pub fn pick(&self, worlds: &[usize]) -> Self {
        let of = |values: &[f64]| worlds.iter().map(|world| values[*world]).collect();
        Self {
            moisture: of(&self.moisture),
            spread: of(&self.spread),
            core: of(&self.core),
            offset: of(&self.offset),
        }
    }
}

/// Odd, so that it runs through all of a power of two.
const STRIDE: usize = 613;
