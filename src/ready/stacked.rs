//! The delivery and its stack in the worlds that count.

use rand::SeedableRng as _;
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;

use super::boards::{Chances, below};
use super::gate::{Lever, Promise, SAFELY};
use super::known::{DryShell, HangDay, Known, LastRead, LotNow, USUAL_READINGS, WatchDay};
use super::later::{Surprise, learned, where_reached};
use super::lot::{Lot, deep_enough, reading_variance};
use super::movement::Movement;
use super::piled::Piled;
use super::window::{TRIED, edge, least_gap};
use crate::belief::{StackCourse, quantile};
use crate::measure::{Estimate, Length, Moisture, Span};

/// Averages of metered boards, 98 times in 100, per cent.
fn averages_in(metered: &[(f64, f64)]) -> [f64; 2] {
    const RARE: f64 = 0.01;
    #[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
    let share = |than: f64| {
        metered.iter().map(|(mean, variance)| below((than - mean) / variance.sqrt())).sum::<f64>()
            / metered.len().max(1) as f64
    };
    [RARE, 1.0 - RARE].map(|at| where_reached(at, &share))
}

/// Worlds that a day's gap is chosen over: every so many.
const EVERY: usize = 4;
/// A core this much wetter than the shell, points, is more than a meter's scatter.
const DRY_SHELL: f64 = 1.5;
/// Of a load that counts as bad one board in four is too wet; of a good one, one in twenty.
const BAD: f64 = 0.25;
const GOOD: f64 = 0.05;
/// What boards that wait must come down by at least, percent.
const LESS: f64 = 0.2;
/// Where the random sequence starts; any figure would do.
const SEED: u64 = 7_031_987;

/// The delivery and its stack in the worlds that count.
pub(super) struct Stacked<'a> {
    known: &'a Known<'a>,
    piled: Piled<'a>,
    lot: Lot,
    /// How wet the boards came and how they differed, by the first day's readings alone.
    came: Vec<(f64, f64)>,
    /// Readings that don't fit those before.
    pub(super) surprise: Option<Surprise>,
}

impl<'a> Stacked<'a> {
    /// Deliveries and stacks that the readings fit. `None` where the stack lies in outdoor air that nothing is known of.
    pub(super) fn weighed(known: &'a Known<'a>) -> Option<Self> {
        let learned = learned(known)?;
        let mut random = Xoshiro256PlusPlus::seed_from_u64(SEED);
        let z: Vec<[f64; 2]> = (0..learned.at_first.loads.len())
            .map(|_| std::array::from_fn(|_| StandardNormal.sample(&mut random)))
            .collect();
        let came = Lot::of(&learned.at_first.loads, |world| z[world]);
        Some(Stacked {
            known,
            piled: Piled::of(known, &learned.now.draws),
            lot: Lot::of(&learned.now.loads, |world| z[world]),
            came: came.moisture.into_iter().zip(came.spread).collect(),
            surprise: learned.surprise,
        })
    }

    /// The first workday from a day on.
    pub(super) fn workday(&self, day: i64) -> i64 {
        self.known.workday(day)
    }

    /// How boards differ after so many days.
    fn spread(&self, course: &StackCourse, day: usize, world: usize) -> f64 {
        self.lot.spread[world] * self.piled.spread_left(course, day, world)
    }

    pub(super) fn course(&self, lever: Option<Lever>, days: usize) -> Option<StackCourse> {
        self.piled.course((&self.lot.moisture, &self.lot.core), lever, days)
    }

    /// Mean and spread of a world's boards on a day, all of them `beyond` points wetter than the world has it.
    fn wet(&self, course: &StackCourse, (day, beyond): (usize, f64), world: usize) -> (f64, f64) {
        ((f64::from(course.mean[day][world]) + beyond).max(0.0), self.spread(course, day, world))
    }

    /// The gap to leave to boards as they are on a day, or so many points wetter, where worlds count as
    /// `weight(world)` says.
    fn gap(&self, course: &StackCourse, on: (usize, f64), weight: impl Fn(usize) -> f64) -> Length {
        self.known.gap.unwrap_or_else(|| {
            let few = Movement {
                lot: self.piled.movement.lot.iter().step_by(EVERY).copied().collect(),
                extremes: self.piled.movement.extremes.iter().step_by(EVERY).copied().collect(),
                seasons: self.piled.movement.seasons,
            };
            let wet: Vec<(f64, f64)> =
                (0..few.lot.len()).map(|world| self.wet(course, on, world * EVERY)).collect();
            let (boards, figures) = (self.known.boards, self.known.figures);
            least_gap(boards.asked, |gap| {
                boards.weighed(&few, gap, figures, |world| wet[world], |world| weight(world * EVERY)).holds
            })
        })
    }

    /// The gap to leave on a day, and the chances with it.
    pub(super) fn chances(&self, course: &StackCourse, day: usize) -> (Length, Chances) {
        let gap = self.gap(course, (day, 0.0), |_| 1.0);
        let wet = |world: usize| self.wet(course, (day, 0.0), world);
        (gap, self.known.boards.chances(&self.piled.movement, gap, self.known.figures, wet))
    }

    /// How to hang the boards on a day, by what those metered then average.
    pub(super) fn hang_day(&self, course: &StackCourse, (gap, chance): (Length, f64), day: i64) -> HangDay {
        let at = usize::try_from(day).unwrap_or(0).min(course.mean.len() - 1);
        let metered = self.metered(course, at);
        let expected = estimate(metered.iter().map(|(mean, _)| *mean)).mean.to_pct();
        // Farther off than any world has it, boards are told apart by no more than how wet they are.
        let mut means: Vec<f64> = metered.iter().map(|(mean, _)| *mean).collect();
        let [least, most] = [0.01, 0.99].map(|at| quantile(&mut means, at));
        let known_as = |average: f64| {
            let within = average.clamp(least, most);
            (weights(&metered, within), average - within)
        };
        let gap_if = |average: f64| {
            let (weights, beyond) = known_as(average);
            self.gap(course, (at, beyond), |world| weights[world])
        };
        let good = |average: f64| {
            let (weights, beyond) = known_as(average);
            let gap = self.gap(course, (at, beyond), |world| weights[world]);
            let wet = |world: usize| self.wet(course, (at, beyond), world);
            let (boards, figures) = (self.known.boards, self.known.figures);
            boards.weighed(&self.piled.movement, gap, figures, wet, |world| weights[world]).holds
                >= self.known.window.enough.to_hang + SAFELY
        };
        let [low, high] =
            [TRIED.0.min(expected), TRIED.1.max(expected)].map(|to| first_edge(expected, to, &good));
        // Averages that would be a surprise are called in: they are not hung by.
        let expected_in = averages_in(&metered);
        let (low, high) = (low.max(expected_in[0]).min(expected), high.min(expected_in[1]).max(expected));
        // What is told before a day is known holds on that day too: beyond it the program is asked.
        let told = self.known.window.range;
        let low = told.map_or(low, |told| low.max(told.low.to_pct()).min(expected));
        let high = told.map_or(high, |told| high.min(told.high.to_pct()).max(expected));
        // Boards that are too wet today are not dry enough by reading the same again.
        let read =
            LastRead::of(self.known).filter(|read| day > read.day).map(|read| read.average.to_pct() - LESS);
        let high = read.map_or(high, |read| high.min(read).max(expected));
        let range = Span { low: Moisture::pct(low), high: Moisture::pct(high) };
        HangDay {
            day,
            moisture: Moisture::pct(expected),
            range,
            // Today's boards are known as well as they will be; on a later day it goes by what they average then.
            gap: if day > self.known.today { gap_if(expected) } else { gap },
            gaps: HangDay::averages(range).map(|average| gap_if(average.to_pct())),
            chance,
        }
    }

    /// What boards metered on a day average in each world, and the variance about that.
    fn metered(&self, course: &StackCourse, day: usize) -> Vec<(f64, f64)> {
        let of = |world: usize| {
            let mean = f64::from(course.pins[day][world]) + self.lot.offset[world];
            let variance =
                self.spread(course, day, world).powi(2) + reading_variance(mean, self.known.priors);
            (mean, variance / f64::from(USUAL_READINGS))
        };
        (0..self.lot.offset.len()).map(of).collect()
    }

    pub(super) fn now(&self, course: &StackCourse, day: usize) -> LotNow {
        let spread = (0..self.lot.moisture.len()).map(|world| self.spread(course, day, world));
        LotNow {
            moisture: estimate(course.mean[day].iter().map(|m| f64::from(*m))),
            spread: estimate(spread).mean,
            shell: estimate(course.shell[day].iter().map(|m| f64::from(*m))).mean,
            core: estimate(course.core[day].iter().map(|m| f64::from(*m))).mean,
            offset: estimate(self.lot.offset.iter().copied()),
        }
    }

    pub(super) fn dry_shell(&self, course: &StackCourse, day: usize) -> DryShell {
        let deep_enough = deep_enough(self.known.thickness);
        let wetter = course.core[day].iter().zip(&course.shell[day]);
        let chance = share(wetter.map(|(core, shell)| f64::from(core - shell) > DRY_SHELL));
        let short = self.known.readings.iter().all(|reading| reading.pins < deep_enough * 0.9);
        DryShell { chance, deep_enough, short_pins: short }
    }

    /// Against what came, by what was read that day: how the boards dried since says nothing of a promise.
    pub(super) fn promise(&self, most: Moisture) -> Promise {
        let share_over = |&(mean, spread): &(f64, f64)| below((mean - most.to_pct()) / spread);
        let wetter: Vec<f64> = self.came.iter().map(share_over).collect();
        let over = |least: f64| share(wetter.iter().map(|share| *share > least));
        #[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
        let mean = wetter.iter().sum::<f64>() / wetter.len().max(1) as f64;
        Promise { most, wetter: mean, broken: over(GOOD), clearly: over(BAD) }
    }

    pub(super) fn days(&self, course: &StackCourse, chances: &[(Length, Chances)]) -> Vec<WatchDay> {
        (0..chances.len())
            .map(|day| {
                let mut all: Vec<f64> = course.mean[day].iter().map(|m| f64::from(*m)).collect();
                let [low, middle, high] = [0.05, 0.5, 0.95].map(|at| Moisture::pct(quantile(&mut all, at)));
                #[expect(clippy::cast_possible_wrap, reason = "days")]
                let number = day as i64;
                WatchDay {
                    day: number,
                    moisture: [middle, low, high],
                    shell: estimate(course.shell[day].iter().map(|m| f64::from(*m))).mean,
                    core: estimate(course.core[day].iter().map(|m| f64::from(*m))).mean,
                    gap: chances[day].0,
                    chance: chances[day].1.holds,
                }
            })
            .collect()
    }
}

/// Whether boards are wetter on the last day that is followed than on this one.
pub(super) fn gains(course: &StackCourse, day: usize) -> bool {
    let mean = |day: &[f32]| estimate(day.iter().map(|m| f64::from(*m))).mean;
    course.mean.last().is_some_and(|last| mean(last) > mean(&course.mean[day]))
}

/// How far from `inside` toward `to` it stays good without a break: a chance that hardly changes may fall short and
/// come back.
fn first_edge(inside: f64, to: f64, good: &impl Fn(f64) -> bool) -> f64 {
    const STEP: f64 = 0.5;
    let step = STEP.copysign(to - inside);
    let mut reached = inside;
    while (to - reached).abs() > STEP {
        let next = reached + step;
        if !good(next) {
            return edge(reached, next, good);
        }
        reached = next;
    }
    edge(reached, to, good)
}

/// How much each world counts if boards metered then average so much, the likeliest 1.
fn weights(metered: &[(f64, f64)], average: f64) -> Vec<f64> {
    let log = |(mean, variance): &(f64, f64)| -0.5 * ((average - mean).powi(2) / variance + variance.ln());
    let logs: Vec<f64> = metered.iter().map(log).collect();
    let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    // What counts for less than a thousandth of the likeliest is left out.
    logs.iter().map(|log| (log - most).exp()).map(|weight| if weight < 1e-3 { 0.0 } else { weight }).collect()
}

fn estimate(values: impl Iterator<Item = f64> + Clone) -> Estimate<Moisture> {
    #[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
    let count = values.clone().count().max(1) as f64;
    let mean = values.clone().sum::<f64>() / count;
    let square = values.map(|value| (value - mean).powi(2)).sum::<f64>() / count;
    Estimate { mean: Moisture::pct(mean), sd: Moisture::pct(square.sqrt()) }
}

#[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
fn share(of: impl Iterator<Item = bool>) -> f64 {
    let (mut yes, mut all) = (0_usize, 0_usize);
    for is in of {
        yes += usize::from(is);
        all += 1;
    }
    yes as f64 / all.max(1) as f64
}
