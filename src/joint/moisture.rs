//! Board moisture following the air with a lag.
//!
//! One time constant per coating: dM/dt = (EMC(t) − M) / τ. Each day's EMC is held for the day, so
//! the daily step M ← E + (M − E)·e^(−1/τ) is exact.

use crate::air::DAYS;
use crate::measure::Moisture;

/// The moisture of boards that have long been in the room, through the year: it repeats.
#[derive(Debug, Clone, PartialEq)]
pub struct SettledYear {
    days: Vec<f64>,
    time_constant: f64,
}

impl SettledYear {
    /// From the year's daily equilibrium moistures and the coating's time constant in days, which
    /// must be above 0.
    ///
    /// The repeating solution is found directly: a year turns M into a·M + b with
    /// a = e^(−365/τ), so it starts at b / (1 − a).
    pub fn new(emc: &[Moisture], time_constant: f64) -> Self {
        debug_assert!(emc.len() == DAYS && time_constant > 0.0);
        let keep = (-1.0 / time_constant).exp();
        let step = |m: f64, e: &Moisture| e.to_pct() + (m - e.to_pct()) * keep;
        let after_a_year = emc.iter().fold(0.0, step);
        #[expect(clippy::cast_precision_loss, reason = "365 days")]
        let kept_of_start = (-(emc.len() as f64) / time_constant).exp();
        let mut moisture = after_a_year / (1.0 - kept_of_start);
        let mut day_moisture = |e: &Moisture| {
            let today = moisture;
            moisture = step(moisture, e);
            today
        };
        Self { days: emc.iter().map(&mut day_moisture).collect(), time_constant }
    }

    /// Moisture on the day of the year with this index; any whole number, the year repeats.
    pub fn on(&self, day: i64) -> Moisture {
        Moisture::pct(self.days[index(day)])
    }

    /// Mean over the year.
    #[expect(clippy::cast_precision_loss, reason = "365 days")]
    pub fn mean(&self) -> Moisture {
        Moisture::pct(self.days.iter().sum::<f64>() / self.days.len() as f64)
    }

    /// Driest and wettest moisture of the year.
    pub fn extremes(&self) -> (Moisture, Moisture) {
        let low = self.days.iter().copied().fold(f64::INFINITY, f64::min);
        let high = self.days.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        (Moisture::pct(low), Moisture::pct(high))
    }

    /// The part of a surplus of moisture that is left after `days`.
    #[expect(clippy::cast_precision_loss, reason = "day counts of a few years")]
    pub fn left_after(&self, days: i64) -> f64 {
        (-(days as f64) / self.time_constant).exp()
    }

    /// Moisture `days` after the day of the year `start` on which it was `then`.
    pub fn after(&self, start: i64, then: Moisture, days: i64) -> Moisture {
        let surplus = then - self.on(start);
        self.on(start + days) + surplus * self.left_after(days)
    }

    /// Time constant in days.
    pub const fn time_constant(&self) -> f64 {
        self.time_constant
    }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_possible_wrap,
    reason = "the remainder of 365 fits anything"
)]
fn index(day: i64) -> usize {
    day.rem_euclid(DAYS as i64) as usize
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use std::f64::consts::TAU;

    #[expect(clippy::cast_precision_loss, reason = "365 days")]
    fn sine(swing: f64) -> Vec<Moisture> {
        (0..DAYS).map(|d| Moisture::pct(9.0 + swing * (TAU * (d as f64 + 0.5) / 365.0).sin())).collect()
    }

    /// First-order lag: amplitude ratio 1/√(1 + (ωτ)²), the textbook result for a linear system.
    #[test]
    fn a_sine_is_damped_as_a_first_order_lag_must() {
        for tau in [5.0, 45.0, 150.0] {
            let year = SettledYear::new(&sine(2.0), tau);
            let (low, high) = year.extremes();
            let omega_tau = TAU / 365.0 * tau;
            let expected = 2.0 / (1.0 + omega_tau * omega_tau).sqrt();
            assert!(((high - low).to_pct() / 2.0 / expected - 1.0).abs() < 1e-3, "{tau}");
            assert!((year.mean().to_pct() - 9.0).abs() < 1e-9);
        }
    }

    proptest! {
        #[test]
        fn the_settled_year_repeats_and_stays_within_the_air(tau in 0.5..400.0_f64, swing in 0.0..4.0_f64) {
            let emc = sine(swing);
            let year = SettledYear::new(&emc, tau);
            let (low, high) = year.extremes();
            prop_assert!(low.to_pct() >= 9.0 - swing - 1e-9 && high.to_pct() <= 9.0 + swing + 1e-9);
            let keep = (-1.0 / tau).exp();
            let last = emc[DAYS - 1].to_pct();
            let next = last + (year.on(-1).to_pct() - last) * keep;
            prop_assert!((next - year.on(0).to_pct()).abs() < 1e-9);
        }

        #[test]
        fn a_surplus_decays_to_the_settled_year(start in 0..365_i64, then in 5.0..25.0_f64) {
            let year = SettledYear::new(&sine(2.0), 45.0);
            let then = Moisture::pct(then);
            prop_assert!((year.after(start, then, 0) - then).to_pct().abs() < 1e-9);
            let late = year.after(start, then, 3650) - year.on(start + 3650);
            prop_assert!(late.to_pct().abs() < 1e-9);
        }
    }
}
