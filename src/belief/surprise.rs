//! Readings that do not fit the rest.
//!
//! Each is held against what the worlds expect of it when it is left out.

use super::ensemble::LANES;
use super::weigh::{Counts, Scale};
use super::{Evidence, Reweighed, Weighed, normalized};
use crate::measure::{Humidity, Moisture, Span};

/// A reading is told that is farther off than three in a hundred would be, in standard deviations.
const SURPRISING: f64 = 2.17;

/// What does not fit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Doubted {
    /// The meter, in the section of this index: what it says on average and what the rest expects.
    Meter {
        /// Index of the section.
        section: usize,
        /// Mean of the readings there.
        says: Moisture,
        /// Between what the rest expects it, but for three times in a hundred.
        expected: Span<Moisture>,
    },
    /// The hygrometer's reading of this index.
    Room {
        /// Index of the reading.
        reading: usize,
        /// What it says.
        says: Humidity,
        /// Between what the rest expects it, but for three times in a hundred.
        expected: Span<Humidity>,
    },
}

/// A reading that does not fit the rest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conflict {
    /// Which, with what it says.
    pub reading: Doubted,
    /// How far off it is, in standard deviations of what was expected.
    pub deviations: f64,
}

pub(super) fn conflicts(scale: &Scale<'_>, weighed: &Weighed, evidence: &Evidence<'_>) -> Vec<Conflict> {
    let mut found = Vec::new();
    if scale.has_meter() {
        let weights = without(scale, weighed, Counts { meter: false, ..Counts::ALL });
        let each = (0..evidence.sections.len()).filter_map(|at| meter(scale, weighed, &weights, at));
        // It is one meter: what is wrong with it is told where it shows most.
        found.extend(each.max_by(|a, b| a.deviations.abs().total_cmp(&b.deviations.abs())));
    }
    if scale.has_room() {
        let weights = without(scale, weighed, Counts { room: false, ..Counts::ALL });
        found.extend((0..evidence.rooms.len()).filter_map(|at| room(scale, weighed, &weights, evidence, at)));
    }
    found.sort_by(|a, b| b.deviations.abs().total_cmp(&a.deviations.abs()));
    found
}

/// Some worlds with their weights when some readings are left out.
fn without(scale: &Scale<'_>, weighed: &Weighed, counts: Counts) -> Vec<(usize, f64)> {
    let sample = Reweighed::sample(scale, weighed, counts);
    let weights = normalized(&sample.logs);
    sample.worlds.into_iter().zip(weights).collect()
}

/// Mean and standard deviation of a quantity over the worlds.
fn expected(weights: &[(usize, f64)], value: impl Fn(usize) -> f64) -> (f64, f64) {
    let mean: f64 = weights.iter().map(|(world, weight)| weight * value(*world)).sum();
    let square: f64 = weights.iter().map(|(world, weight)| weight * (value(*world) - mean).powi(2)).sum();
    (mean, square.sqrt())
}

#[expect(clippy::cast_precision_loss, reason = "a count of readings")]
fn meter(scale: &Scale<'_>, weighed: &Weighed, weights: &[(usize, f64)], section: usize) -> Option<Conflict> {
    let own = &scale.sections()[section];
    let set = own.meter.iter().all(|reading| reading.set_to_species);
    let (count, day) = (own.meter.len() as f64, own.meter.first()?.day);
    let says = own.meter.iter().map(|reading| reading.pct).sum::<f64>() / count;
    let priors = scale.priors();
    let (followed, day) = (&weighed.worlds.build_ups[own.build_up], weighed.worlds.day(day));
    let (mean, sd) = expected(weights, |world| followed.at(world, day));
    let offset = if set { priors.meter_offset.sd } else { priors.loose_meter_offset.sd };
    let scatter = priors.meter_reading.sd.hypot(priors.piece_moisture.sd) / count.sqrt();
    let doubt = sd.hypot(offset).hypot(scatter);
    let deviations = (says - mean) / doubt;
    // Where meters lose the current, too low is no surprise.
    let low = says < 7.0 && mean < 7.5;
    (deviations.abs() > SURPRISING && !low).then(|| Conflict {
        reading: Doubted::Meter {
            section,
            says: Moisture::pct(says),
            expected: Span {
                low: Moisture::pct((mean - SURPRISING * doubt).max(0.0)),
                high: Moisture::pct(mean + SURPRISING * doubt),
            },
        },
        deviations,
    })
}

fn room(
    scale: &Scale<'_>,
    weighed: &Weighed,
    weights: &[(usize, f64)],
    evidence: &Evidence<'_>,
    reading: usize,
) -> Option<Conflict> {
    let own = evidence.rooms[reading];
    let step = scale.step_on(own.day);
    let (mean, sd) = expected(weights, |world| {
        let vapor = step.vapor_in(&weighed.worlds.air[world / LANES], world % LANES);
        100.0 * f64::from(vapor / step.saturation)
    });
    let priors = scale.priors();
    let doubt = sd.hypot(priors.hygrometer.sd).hypot(priors.day_humidity.sd);
    let deviations = (own.humidity.to_pct() - mean) / doubt;
    (deviations.abs() > SURPRISING).then(|| Conflict {
        reading: Doubted::Room {
            reading,
            says: own.humidity,
            expected: Span {
                low: Humidity::pct((mean - SURPRISING * doubt).max(0.0)),
                high: Humidity::pct((mean + SURPRISING * doubt).min(100.0)),
            },
        },
        deviations,
    })
}
