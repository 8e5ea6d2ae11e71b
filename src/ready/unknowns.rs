//! A load's mean moisture and its meter's offset: two unknowns that readings tell together.
//!
//! Jointly normal, and learned from one reading after the other by Kalman's update: exact where what a reading shows
//! follows a straight line in the two.

use crate::belief::Prior;

/// What is known of a load's mean moisture on the first day and of the meter's offset, both per cent moisture.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Unknowns {
    /// Means of the two.
    mean: [f64; 2],
    /// Variances of the two, and their covariance between them.
    variance: [f64; 2],
    covariance: f64,
    /// Log likelihood of the readings learned from.
    pub(super) log_likelihood: f64,
}

/// What the meter shows where a load's boards average `at` or so: its mean reading less the meter's offset is `base`
/// where the load's mean moisture on the first day is `at`, and rises by `slope` a point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Shown {
    pub(super) base: f64,
    pub(super) at: f64,
    pub(super) slope: f64,
}

impl Unknowns {
    /// As expected before any reading.
    pub(super) fn expected(delivered: &Prior, meter: &Prior) -> Self {
        Self {
            mean: [delivered.middle, meter.middle],
            variance: [delivered.sd.powi(2), meter.sd.powi(2)],
            covariance: 0.0,
            log_likelihood: 0.0,
        }
    }

    /// The load's expected mean moisture on the first day.
    pub(super) const fn moisture(&self) -> f64 {
        self.mean[0]
    }

    /// Mean and variance of what the meter will show, its own scatter and that of the boards left out.
    pub(super) fn foretells(&self, shown: Shown) -> (f64, f64) {
        let Shown { base, at, slope } = shown;
        let mean = base + slope * (self.mean[0] - at) + self.mean[1];
        let [moisture, offset] = self.variance;
        (mean, slope * slope * moisture + 2.0 * slope * self.covariance + offset)
    }

    /// Learns that a reading with this variance about what is shown was `reading`.
    pub(super) fn learn(&mut self, shown: Shown, reading: f64, variance: f64) {
        let (expected, doubt) = self.foretells(shown);
        let all = doubt + variance;
        let missed = reading - expected;
        let [moisture, offset] = self.variance;
        let with = [shown.slope * moisture + self.covariance, shown.slope * self.covariance + offset];
        for (mean, with) in self.mean.iter_mut().zip(with) {
            *mean += with * missed / all;
        }
        self.variance = [moisture - with[0] * with[0] / all, offset - with[1] * with[1] / all];
        self.covariance -= with[0] * with[1] / all;
        self.log_likelihood -= 0.5 * (missed * missed / all + (std::f64::consts::TAU * all).ln());
    }

    /// Moisture and offset for two standard normal numbers.
    pub(super) fn drawn(&self, z: [f64; 2]) -> (f64, f64) {
        let [moisture, offset] = self.variance;
        let share = self.covariance / moisture.max(f64::MIN_POSITIVE);
        let left = (offset - share * self.covariance).max(0.0);
        let away = moisture.sqrt() * z[0];
        (self.mean[0] + away, self.mean[1] + share * away + left.sqrt() * z[1])
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::wood::Kind;
    use proptest::prelude::*;

    fn prior(middle: f64, sd: f64) -> Prior {
        Prior { middle, sd, unit: String::new(), source: String::new(), kind: Kind::Assumption }
    }

    /// Moments of the two by adding up prior times likelihood over a fine lattice.
    fn by_lattice(
        (delivered, meter): (&Prior, &Prior),
        readings: &[(Shown, f64, f64)],
    ) -> ([f64; 2], [f64; 3], f64) {
        const STEPS: i32 = 400;
        let bell = |x: f64, sd: f64| (-0.5 * (x / sd).powi(2)).exp() / (sd * std::f64::consts::TAU.sqrt());
        let place = |prior: &Prior, step: i32| {
            prior.middle + 7.0 * prior.sd * (f64::from(2 * step) / f64::from(STEPS) - 1.0)
        };
        let mut sums = [0.0; 6];
        for (i, j) in (0..=STEPS).flat_map(|i| (0..=STEPS).map(move |j| (i, j))) {
            let (m, o) = (place(delivered, i), place(meter, j));
            let prior = bell(m - delivered.middle, delivered.sd) * bell(o - meter.middle, meter.sd);
            let fits = readings.iter().map(|(shown, reading, variance)| {
                let expected = shown.base + shown.slope * (m - shown.at) + o;
                bell(reading - expected, variance.sqrt())
            });
            let weight = prior * fits.product::<f64>();
            for (sum, of) in sums.iter_mut().zip([1.0, m, o, m * m, m * o, o * o]) {
                *sum += weight * of;
            }
        }
        let [all, m, o, mm, mo, oo] = sums;
        let (m, o) = (m / all, o / all);
        let cell = (14.0 / f64::from(STEPS)).powi(2) * delivered.sd * meter.sd;
        ([m, o], [mm / all - m * m, mo / all - m * o, oo / all - o * o], (all * cell).ln())
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(12))]

        /// What is learned is what Bayes' rule says, added up by brute force.
        #[test]
        fn readings_teach_what_bayes_says(
            middle in 8.0_f64..16.0, sd in 1.0_f64..4.0, loose in 0.5_f64..2.0,
            readings in prop::collection::vec((8.0_f64..14.0, 0.1_f64..1.2, -2.5_f64..2.5, 0.6_f64..3.0), 1..5),
        ) {
            let (delivered, meter) = (prior(middle, sd), prior(0.0, loose));
            let read: Vec<(Shown, f64, f64)> = readings
                .iter()
                // No farther off than a lattice of seven standard deviations reaches.
                .map(|&(base, slope, off, variance)| (Shown { base, at: middle, slope }, base + off, variance))
                .collect();
            let mut known = Unknowns::expected(&delivered, &meter);
            for &(shown, reading, variance) in &read {
                known.learn(shown, reading, variance);
            }
            let (mean, spread, log) = by_lattice((&delivered, &meter), &read);
            let (one, zero) = (known.drawn([0.0; 2]), known.drawn([1.0, 0.0]));
            prop_assert!((one.0 - mean[0]).abs() < 1e-3 && (one.1 - mean[1]).abs() < 1e-3);
            prop_assert!(((zero.0 - one.0).powi(2) - spread[0]).abs() < 2e-3);
            prop_assert!(((zero.0 - one.0) * (zero.1 - one.1) - spread[1]).abs() < 2e-3);
            let offset = (zero.1 - one.1).powi(2) + (known.drawn([0.0, 1.0]).1 - one.1).powi(2);
            prop_assert!((offset - spread[2]).abs() < 2e-3);
            prop_assert!((known.log_likelihood - log).abs() < 1e-3, "{} for {log}", known.log_likelihood);
        }
    }
}
