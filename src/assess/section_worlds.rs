//! A section's movement in every world that counts.

use std::sync::Arc;

use crate::belief::{Belief, HORIZON, quantile};
use crate::measure::{Angle, Length, Moisture, Span};
use crate::survey::SectionGaps;
use crate::wood::{Species, shrinkage};

use super::beliefs::KnownSection;

/// Days between the days that are kept.
const STEP: usize = 7;

/// How a section's boards move in every world.
#[derive(Debug, Clone, PartialEq)]
pub struct SectionWorlds {
    /// Narrowing since the visit as a fraction of the present width: by week, by world.
    narrowing: Vec<Vec<f64>>,
    /// Moisture likewise, per cent.
    moisture: Vec<Vec<f64>>,
    /// Mean gap of all joints today, by world.
    today: Vec<Length>,
    /// Number of worlds.
    count: usize,
}

/// How far boards narrow and widen in one world, as fractions of their width.
pub type Swing = (f64, f64);

impl SectionWorlds {
    /// Of a section, the one of this index in everything believed, with what its boards took up if they got wet, by day from the
    /// visit.
    pub(super) fn new(
        belief: &Belief,
        (index, known): (usize, KnownSection),
        (species, ring): (&Species, Angle),
        surplus_on: &impl Fn(usize) -> Moisture,
    ) -> Self {
        let course = &belief.courses[known.build_up];
        let weeks = (0..HORIZON).step_by(STEP);
        let moisture: Vec<Vec<f64>> = weeks
            .map(|day| {
                let on = &course.moisture[course.index(i64::try_from(day).unwrap_or(0))];
                let surplus = surplus_on(day).to_pct();
                on.iter().map(|m| f64::from(*m) + surplus).collect()
            })
            .collect();
        let narrowing = moisture
            .iter()
            .map(|on| {
                let each = on.iter().zip(&moisture[0]).zip(&belief.particles);
                each.map(|((then, now), particle)| {
                    let (now, then) = (Moisture::pct(*now), Moisture::pct(*then));
                    particle.lot * shrinkage(species, ring, now, then)
                })
                .collect()
            })
            .collect();
        let today = belief.mean_gaps[index].iter().map(|mm| Length::mm(*mm)).collect();
        Self { narrowing, moisture, today, count: belief.particles.len() }
    }

    /// Mean gap of all joints today: the mean over the worlds.
    #[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
    pub fn mean_gap_today(&self) -> Length {
        self.today.iter().copied().sum::<Length>() / self.count.max(1) as f64
    }

    /// Where the mean gap of all joints lies nine times in ten, by week from the visit; `gaps` is what is
    /// said of it.
    pub(super) fn mean_gap_bands(&self, gaps: &SectionGaps, across: Length) -> Vec<Span<Length>> {
        let today = Shut::new(gaps.mean, gaps.scatter);
        let doubt: Vec<Length> = self.today.iter().map(|own| *own - gaps.mean).collect();
        let of_week = |narrowing: &Vec<f64>| {
            let mut each: Vec<f64> = narrowing
                .iter()
                .zip(&doubt)
                .map(|(narrowing, doubt)| today.mean_after(across * *narrowing + *doubt).to_m())
                .collect();
            let expected = today.mean_after(across * mean(narrowing)).to_m();
            let (low, high) = (quantile(&mut each, 0.05), quantile(&mut each, 0.95));
            // The figure that is said of all joints lies in the range that is said of it.
            Span { low: Length::m(low.min(expected)), high: Length::m(high.max(expected)) }
        };
        self.narrowing.iter().map(of_week).collect()
    }

    /// Standard deviation over the worlds of the narrowing on a day counted from the visit.
    #[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
    pub fn narrowing_sd(&self, day: usize) -> f64 {
        let own = &self.narrowing[week(day, self.narrowing.len()).0];
        let mean = own.iter().sum::<f64>() / own.len() as f64;
        (own.iter().map(|n| (n - mean).powi(2)).sum::<f64>() / own.len() as f64).sqrt()
    }

    /// How far the boards narrow and widen at most in each world, against the day of sealing, until so
    /// many days later. `held` is the share of the movement that is left.
    pub fn swings(&self, seal_day: usize, days: usize, held: f64) -> Arc<[Swing]> {
        let from = week(seal_day, self.narrowing.len()).0;
        let to = (from + days / STEP + 1).min(self.narrowing.len());
        let weeks = &self.narrowing[from.min(self.narrowing.len() - 1)..to.max(from + 1)];
        (0..self.count)
            .map(|world| {
                let then = weeks[0][world];
                let (low, high) = range(weeks.iter().map(|week| week[world]));
                (held * (high - then), held * (then - low))
            })
            .collect()
    }

    /// The same of boards that start at the mean of their room's settled year, give or take `sd` per cent
    /// of moisture, and move by `per_pct`.
    #[expect(clippy::cast_precision_loss, reason = "a hundred weeks")]
    pub fn settled_swings(&self, days: usize, per_pct: f64, sd: f64) -> Arc<[Swing]> {
        // From the second year on little is left of what came before.
        let from = week(crate::air::DAYS, self.moisture.len()).0;
        let to = (from + days.max(crate::air::DAYS) / STEP + 1).min(self.moisture.len());
        let weeks = &self.moisture[from..to];
        (0..self.count)
            .map(|world| {
                let mean = weeks.iter().map(|week| week[world]).sum::<f64>() / weeks.len() as f64;
                let start = mean + sd * normal_of(world, self.count);
                let (driest, wettest) = range(weeks.iter().map(|week| week[world]));
                (per_pct * (start - driest).max(0.0), per_pct * (wettest - start).max(0.0))
            })
            .collect()
    }
}

/// The week that a day is in, of so many, and how far into it.
#[expect(clippy::cast_precision_loss, reason = "within a week")]
pub(super) fn week(day: usize, weeks: usize) -> (usize, f64) {
    let at = (day / STEP).min(weeks.saturating_sub(1));
    (at, ((day - at * STEP) as f64 / STEP as f64).min(1.0))
}

#[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len().max(1) as f64
}

fn range(values: impl Iterator<Item = f64>) -> (f64, f64) {
    values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| (low.min(value), high.max(value)))
}

/// A standard normal number for each world, evenly spread, in an order that has nothing to do with the
/// worlds'.
#[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
fn normal_of(world: usize, count: usize) -> f64 {
    use statrs::distribution::{ContinuousCDF as _, Normal};
    let shuffled = (world * 199 + 67) % count;
    Normal::standard().inverse_cdf((shuffled as f64 + 0.5) / count as f64)
}

/// The mean of gaps that scatter and cannot close past nothing.
pub(super) struct Shut {
    middle: f64,
    scatter: f64,
}

impl Shut {
    /// Gaps whose mean is `mean` today.
    pub fn new(mean: Length, scatter: Length) -> Self {
        let (mean, scatter) = (mean.to_m(), scatter.to_m().max(1e-9));
        // By Newton's method: how far open the joints would stand if they could also overlap.
        let mut middle = mean;
        for _ in 0..8 {
            let (value, slope) = clipped(middle, scatter);
            middle -= (value - mean) / slope.max(0.05);
        }
        Self { middle: middle.max(-4.0 * scatter), scatter }
    }

    /// Their mean when all have opened by `moved` more.
    pub fn mean_after(&self, moved: Length) -> Length {
        Length::m(clipped(self.middle + moved.to_m(), self.scatter).0)
    }
}

/// Mean of a normal of which what is below nothing counts as nothing, and how it goes with the middle.
fn clipped(middle: f64, scatter: f64) -> (f64, f64) {
    let z = middle / scatter;
    let above = 0.5 * statrs::function::erf::erfc(-z * std::f64::consts::FRAC_1_SQRT_2);
    let density = (-0.5 * z * z).exp() * 0.398_942_280_401_432_7;
    (middle * above + scatter * density, above)
}
