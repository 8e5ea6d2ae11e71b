//! What was seen, as the worlds are held against it.

use super::priors::Priors;
use crate::measure::{Angle, Humidity, Length};
use crate::survey::Failure;
use crate::wood::Species;

/// One joint that was measured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GapEvidence {
    /// Its place along the row of the section's joints, 0 to 1.
    pub place: f64,
    /// Its width.
    pub width: Length,
    /// How it failed.
    pub failed: Failure,
}

/// One reading with a pin meter, corrected for the wood's temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MeterEvidence {
    /// What it said, per cent moisture.
    pub pct: f64,
    /// Whether the meter was set to the species.
    pub set_to_species: bool,
    /// Days from the visit; negative before it.
    pub day: i64,
}

/// What the same joints showed on a later day, before anything was done to them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LaterGaps {
    /// Days from the visit.
    pub day: i64,
    /// Mean change of their gaps since the visit.
    pub change: Length,
    /// How many joints.
    pub joints: usize,
}

/// A reading of the room's hygrometer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoomEvidence {
    /// Days from the visit.
    pub day: i64,
    /// What it said.
    pub humidity: Humidity,
}

/// A section with what was seen in it.
#[derive(Debug, Clone)]
pub struct SectionEvidence<'a> {
    /// The boards' species.
    pub species: &'a Species,
    /// Their growth rings' angle to the face.
    pub ring: Angle,
    /// Width of wood whose movement shows at a joint.
    pub across: Length,
    /// Index of its build-up.
    pub build_up: usize,
    /// Number of its joints between boards.
    pub joints: usize,
    /// The readings of them.
    pub gaps: Vec<GapEvidence>,
    /// Meter readings of its boards.
    pub meter: Vec<MeterEvidence>,
    /// Later readings of the same joints.
    pub later: Vec<LaterGaps>,
}

impl SectionEvidence<'_> {
    /// Opening in mm of a joint whose boards went from `from` to `to`, per cent moisture.
    pub(super) fn opening(&self, from: f64, to: f64) -> f64 {
        use crate::measure::Moisture;
        let (from, to) = (Moisture::pct(from), Moisture::pct(to));
        self.across.to_mm() * crate::wood::shrinkage(self.species, self.ring, from, to)
    }
}

/// Natural logarithm of the density of a normal at `x`.
pub(super) fn log_normal(x: f64, mean: f64, sd: f64) -> f64 {
    let z = (x - mean) / sd;
    -0.5 * z * z - sd.ln() - 0.918_938_533_204_672_8
}

/// Probability that a standard normal is below `z`, to 1e-7 (statrs).
pub(super) fn below(z: f64) -> f64 {
    0.5 * statrs::function::erf::erfc(-z * std::f64::consts::FRAC_1_SQRT_2)
}

/// A reading below this many per cent says little more than that the wood is dry: pin meters lose the
/// current there (NT Build 302: 7 to 28 %).
const LOW: f64 = 7.0;
/// Half a step of a usual meter's display, per cent.
const STEP: f64 = 0.25;

/// How likely a meter shows this if boards are at `moisture` and the meter is `offset` off.
///
/// The chance of the interval that the display stands for. It widens downward, without a jump, the
/// farther the reading is below what meters can tell.
pub(super) fn meter_shows(reading: f64, moisture: f64, offset: f64, priors: &Priors) -> f64 {
    let sd = priors.meter_reading.sd.hypot(priors.piece_moisture.sd);
    let short = (LOW - reading).max(0.0);
    let (from, to) = (reading - STEP - 4.0 * short, reading + STEP + short);
    let at = |limit: f64| below((limit - moisture - offset) / sd);
    // One reading in two hundred is a slip.
    0.995 * (at(to) - at(from)).max(0.0) + 0.005 * 2.0 * STEP / 25.0
}

/// Logarithm of the mean of the exponentials.
pub(super) fn log_mean(logs: impl Iterator<Item = f64>) -> f64 {
    let (mut most, mut sum, mut count) = (f64::NEG_INFINITY, 0.0, 0.0);
    for log in logs {
        count += 1.0;
        if log > most {
            sum = sum * (most - log).exp() + 1.0;
            most = log;
        } else if log > f64::NEG_INFINITY {
            sum += (log - most).exp();
        }
    }
    most + (sum / count).ln()
}

/// Logarithm of the sum of the exponentials.
pub fn log_sum(logs: &[f64]) -> f64 {
    let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    if most == f64::NEG_INFINITY {
        most
    } else {
        // What is so much smaller changes no digit, and most of what is summed up is.
        let parts = logs.iter().map(|log| log - most).filter(|part| *part > -38.0);
        most + parts.map(f64::exp).sum::<f64>().ln()
    }
}

/// Index of the log weight in which a number from 0 to 1 falls.
pub(super) fn chosen(logs: &[f64], at: f64) -> usize {
    let all = log_sum(logs);
    let mut left = at;
    let place = logs.iter().position(|log| {
        left -= (log - all).exp();
        left <= 0.0
    });
    place.unwrap_or(0)
}
