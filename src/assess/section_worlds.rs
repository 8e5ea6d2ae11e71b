//! A section's movement in every world that counts.

use std::sync::Arc;

use rayon::prelude::*;
use statrs::statistics::Statistics as _;

use crate::belief::{Belief, Course, HORIZON, SectionToday, normal_of, quantile};
use crate::measure::{Angle, Estimate, Length, Moisture, Span};
use crate::wood::{Species, shrinkage};

use super::beliefs::KnownSection;

/// Days between the days that are kept.
pub(super) const WEEK: usize = 7;

/// How a section's boards move in every world.
#[derive(Debug, Clone, PartialEq)]
pub struct SectionWorlds {
    /// Narrowing since the visit as a fraction of the present width: by week, by world.
    narrowing: Vec<Vec<f64>>,
    /// Moisture likewise, per cent.
    moisture: Vec<Vec<f64>>,
    /// Its joints today, by world.
    today: Vec<SectionToday>,
    /// Number of worlds.
    count: usize,
}

/// A section's mean gap on a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MeanGap {
    /// The mean over the worlds.
    pub expected: Length,
    /// Where it lies nine times in ten.
    pub range: Span<Length>,
}

/// A section on a day before the visit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PastWeek {
    /// Days from the visit: negative.
    pub day: i64,
    /// Its mean gap then.
    pub gap: MeanGap,
    /// By how much its boards were narrower than at the visit, as a fraction of their width: the mean over
    /// the worlds. Negative where they were wider.
    pub narrowing: f64,
}

/// How wet boards are when they are fitted anew.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Start {
    /// So much above the mean of their room's settled year, in per cent of moisture, give or take a
    /// standard deviation.
    Above {
        /// Above the mean.
        mean: f64,
        /// Standard deviation.
        sd: f64,
    },
    /// As wet as they are today.
    AsToday,
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
        let weeks = (0..HORIZON).step_by(WEEK);
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
        let today = belief.sections[index].clone();
        Self { narrowing, moisture, today, count: belief.particles.len() }
    }

    /// The section's mean gap over all its joints by week from the visit: what is expected, and where it
    /// lies nine times in ten.
    pub(super) fn mean_gaps(&self, across: Length, any_measured: bool) -> Vec<MeanGap> {
        self.narrowing.par_iter().map(|narrowing| self.mean_gap(narrowing, across, any_measured)).collect()
    }

    /// The mean gap when the boards have narrowed so far since the visit, by world.
    ///
    /// Where nobody measured any gap of the job, none is made up: joints are taken to have been shut today.
    fn mean_gap(&self, narrowing: &[f64], across: Length, any_measured: bool) -> MeanGap {
        if !any_measured {
            let expected = (across * mean(narrowing)).max(Length::ZERO);
            return MeanGap { expected, range: Span { low: expected, high: expected } };
        }
        let each = narrowing.iter().zip(&self.today);
        let mut each: Vec<f64> =
            each.map(|(narrowing, today)| today.mean_after(across * *narrowing).to_m()).collect();
        let expected = mean(&each);
        let (low, high) = (quantile(&mut each, 0.05), quantile(&mut each, 0.95));
        // A few worlds far out can take the mean past the range.
        let expected = expected.clamp(low, high);
        MeanGap { expected: Length::m(expected), range: Span { low: Length::m(low), high: Length::m(high) } }
    }

    /// Weeks before the visit, from the install on, out of the same worlds.
    pub(super) fn past_weeks(
        &self,
        belief: &Belief,
        course: &Course,
        (species, ring): (&Species, Angle),
        (across, any_measured): (Length, bool),
    ) -> Vec<PastWeek> {
        let now = &course.moisture[course.index(0)];
        weekly_before(&course.days)
            .into_par_iter()
            .map(|at| {
                let each = course.moisture[at].iter().zip(now).zip(&belief.particles);
                let narrowing: Vec<f64> = each
                    .map(|((then, now), particle)| {
                        let (now, then) = (Moisture::pct(f64::from(*now)), Moisture::pct(f64::from(*then)));
                        particle.lot * shrinkage(species, ring, now, then)
                    })
                    .collect();
                let gap = self.mean_gap(&narrowing, across, any_measured);
                PastWeek { day: course.days[at], gap, narrowing: mean(&narrowing) }
            })
            .collect()
    }

    /// What is not known of today's mean gap, one standard deviation.
    pub(super) fn doubt_of_mean(&self) -> Length {
        Length::m(self.today.iter().map(|own| own.mean.to_m()).population_std_dev())
    }

    /// Mean gap of the joints that nobody measured, by world.
    pub(super) fn unmeasured_means(&self) -> impl Iterator<Item = Length> {
        self.today.iter().map(|own| own.others.mean)
    }

    /// The joints that nobody measured, as they are today: mean, and how far a single one may be off.
    pub(super) fn unmeasured(&self) -> Estimate<Length> {
        let means: Vec<f64> = self.today.iter().map(|own| own.others.mean.to_m()).collect();
        let middle = mean(&means);
        let square =
            |own: &SectionToday| own.others.sd.to_m().powi(2) + (own.others.mean.to_m() - middle).powi(2);
        let squares: Vec<f64> = self.today.iter().map(square).collect();
        Estimate { mean: Length::m(middle), sd: Length::m(mean(&squares).sqrt()) }
    }

    /// Its joints today, by world.
    pub(super) fn today(&self) -> &[SectionToday] {
        &self.today
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
        let to = (from + days / WEEK + 1).min(self.narrowing.len());
        let weeks = &self.narrowing[from.min(self.narrowing.len() - 1)..to.max(from + 1)];
        (0..self.count)
            .map(|world| {
                let then = weeks[0][world];
                let (low, high) = range(weeks.iter().map(|week| week[world]));
                (held * (high - then), held * (then - low))
            })
            .collect()
    }

    /// The same of boards without a bead that are fitted as `start` says and move by `per_pct`.
    #[expect(clippy::cast_precision_loss, reason = "a hundred weeks")]
    pub fn settled_swings(&self, days: usize, per_pct: f64, start: Start) -> Arc<[Swing]> {
        // From the second year on little is left of what came before.
        let from = week(crate::air::DAYS, self.moisture.len()).0;
        let to = (from + days.max(crate::air::DAYS) / WEEK + 1).min(self.moisture.len());
        let weeks = &self.moisture[from..to];
        (0..self.count)
            .map(|world| {
                let mean = weeks.iter().map(|week| week[world]).sum::<f64>() / weeks.len() as f64;
                let start = match start {
                    Start::Above { mean: above, sd } => mean + above + sd * normal_of(world, self.count),
                    Start::AsToday => self.moisture[0][world],
                };
                let (driest, wettest) = range(weeks.iter().map(|week| week[world]));
                (per_pct * (start - driest).max(0.0), per_pct * (wettest - start).max(0.0))
            })
            .collect()
    }
}

/// Which of these days, in order and counted from the visit, lie before it and a week or more apart, the
/// first of them included.
fn weekly_before(days: &[i64]) -> Vec<usize> {
    let week = i64::try_from(WEEK).unwrap_or(7);
    let mut taken: Vec<usize> = Vec::new();
    for (at, day) in days.iter().enumerate().take_while(|(_, day)| **day < 0) {
        if taken.last().is_none_or(|last| day - days[*last] >= week) {
            taken.push(at);
        }
    }
    taken
}

/// The week that a day is in, of so many, and how far into it.
#[expect(clippy::cast_precision_loss, reason = "within a week")]
pub(super) fn week(day: usize, weeks: usize) -> (usize, f64) {
    let at = (day / WEEK).min(weeks.saturating_sub(1));
    (at, ((day - at * WEEK) as f64 / WEEK as f64).min(1.0))
}

#[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len().max(1) as f64
}

fn range(values: impl Iterator<Item = f64>) -> (f64, f64) {
    values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| (low.min(value), high.max(value)))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: every fourth day at first, then daily; a week after day -30 is first reached on day -22.
    #[test]
    fn days_before_the_visit_are_thinned_to_weeks() {
        let days: Vec<i64> = [-30, -26, -22, -18].into_iter().chain(-14..3).collect();
        let kept: Vec<i64> = weekly_before(&days).into_iter().map(|at| days[at]).collect();
        assert_eq!(kept, [-30, -22, -14, -7]);
        assert!(weekly_before(&[0, 1, 2]).is_empty());
    }
}
