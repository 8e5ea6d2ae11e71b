//! What a delivery is, by its readings of the first day: one plausible load for each world.
//!
//! A reading is a board's moisture at the pins' depth, plus the meter's offset, which all readings share,
//! plus the reading's own error. Spread between boards and wetter core are drawn; given those, mean and offset are
//! normal, so what the readings say of them is exact ([`Unknowns`]).

use super::stack::StackFigures;
use super::unknowns::{Shown, Unknowns};
use crate::belief::{Prior, Priors};
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

/// How deep pins go to read a board's average: a quarter of its thickness, by the parabola of [`Lot::core`].
pub(super) fn deep_enough(thickness: Length) -> Length {
    thickness / 4.0
}

/// How far a reading with pins at this depth is from the board's mean, for a core wetter by one point:
/// the parabola of [`Lot::core`].
fn at_depth(pins: Length, thickness: Length) -> f64 {
    let from_middle = 1.0 - 2.0 * (pins.to_m() / thickness.to_m()).clamp(0.0, 0.5);
    1.0 / 3.0 - from_middle * from_middle
}

/// A load in one world, known as well as readings tell it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Load {
    pub(super) spread: f64,
    pub(super) core: f64,
    pub(super) known: Unknowns,
}

impl Load {
    /// The load that two standard normal numbers stand for, one of its spread and one of its core, as the readings of
    /// the first day tell it.
    pub(super) fn drawn(
        z: [f64; 2],
        readings: &[LotReading],
        thickness: Length,
        figures: &StackFigures,
        (meter, priors): (&Prior, &Priors),
    ) -> Self {
        let spread = figures.spread.middle * (figures.spread.sd * z[0]).exp();
        let core = (figures.core_excess.middle + figures.core_excess.sd * z[1]).abs();
        let mut known = Unknowns::expected(&figures.delivered, meter);
        for reading in readings {
            let shown = Shown { base: core * at_depth(reading.pins, thickness), at: 0.0, slope: 1.0 };
            known.learn(shown, reading.pct, spread * spread + reading_variance(reading.pct, priors));
        }
        Self { spread, core, known }
    }
}

/// Boards are no drier and no wetter than this, per cent.
const POSSIBLE: (f64, f64) = (2.0, 60.0);

impl Lot {
    /// These loads, mean and offset drawn from what is known of them by two standard normal numbers each.
    pub(super) fn of(loads: &[Load], z: impl Fn(usize) -> [f64; 2]) -> Self {
        let drawn: Vec<(f64, f64)> =
            loads.iter().enumerate().map(|(world, load)| load.known.drawn(z(world))).collect();
        Self {
            moisture: drawn.iter().map(|(moisture, _)| moisture.clamp(POSSIBLE.0, POSSIBLE.1)).collect(),
            spread: loads.iter().map(|load| load.spread).collect(),
            core: loads.iter().map(|load| load.core).collect(),
            offset: drawn.iter().map(|(_, offset)| *offset).collect(),
        }
    }
}
