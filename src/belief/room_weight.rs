//! What readings of a room's air weigh in a world.

use super::air::{RoomAir, SUMMER, WINTER};
use super::ensemble::{AirLanes, StepAir};
use super::evidence::log_normal;
use super::priors::Priors;
use crate::measure::Humidity;

/// Log likelihood of a hygrometer's reading on the day of a step.
pub(super) fn hygrometer_term(
    step: &StepAir,
    air: &AirLanes,
    lane: usize,
    read: Humidity,
    priors: &Priors,
) -> f64 {
    let sd = priors.hygrometer.sd.hypot(priors.day_humidity.sd);
    let humidity = 100.0 * f64::from(step.vapor_in(air, lane) / step.saturation);
    // A hygrometer that is off by far says little; it must not outvote the rest.
    let close = log_normal(read.to_pct(), humidity, sd).exp();
    (0.97 * close + 0.03 / 100.0).ln()
}

/// Log likelihood of a logger's days: in the mean of the cold and of the warm half of the year.
pub(super) fn logger_term(room: &RoomAir, air: &AirLanes, lane: usize) -> f64 {
    /// How far one year's half is from the usual, and the logger's own error, points of humidity.
    const HALF: f64 = 3.0;
    let warm = |step: &StepAir| step.by_shift[SUMMER] > step.by_shift[WINTER];
    let of_half = |half: bool| {
        let (mut sum, mut count) = (0.0, 0.0);
        for (step, read) in room.seen.iter().step_by(3).filter(|(step, _)| warm(step) == half) {
            sum += 100.0 * (f64::from(step.vapor_in(air, lane) / step.saturation) - read);
            count += 1.0;
        }
        if count > 0.0 { log_normal(sum / count, 0.0, HALF) } else { 0.0 }
    };
    of_half(false) + of_half(true)
}
