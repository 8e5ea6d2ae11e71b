//! How the cost may turn out: Monte Carlo over the tasks' times and the materials' prices.
//!
//! A task's time is beta-distributed over its three points (the PERT distribution of project
//! planning). What makes one task slow often makes the next one slow: half of the variance of each is
//! the crew's and the room's, the same for all (a Gaussian copula). Prices that are not the user's own
//! scatter together. Rates that nobody has timed are one estimator's: they may all be too low or too high
//! together, which is a factor on all of them, the narrower the more rates are the user's own. All methods
//! meet the same draws, so that their difference is theirs.

use rand::SeedableRng as _;
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;
use rayon::prelude::*;
use statrs::distribution::{ContinuousCDF as _, Normal};
use statrs::statistics::Statistics as _;

use super::prices::Prices;
use super::takeoff::MaterialLine;
use super::task_kinds::Trade;
use super::tasks::{RateBasis, TaskHours};
use crate::measure::{Money, ThreePoint};
use crate::wood::Kind;

/// Share of a task's variance that all tasks have in common. Assumption.
const IN_COMMON: f64 = 0.5;
/// Standard deviation of prices that nobody has looked up, relative. Assumption.
const PRICES: f64 = 0.08;
/// How far one estimator's untimed rates may all be off together, as a standard deviation of the logarithm:
/// with it, eight prices in ten lie within a quarter of what is expected. Assumption.
const ESTIMATOR: f64 = 0.18;
/// How far what one timed rate tells of the others is off, likewise. Assumption.
const ONE_TELLS: f64 = 0.4;
/// How much of that doubt a rate from common practice or a published one has.
const KNOWN_TO_OTHERS: f64 = 0.5;

/// Trials that one random sequence serves.
const BATCH: u32 = 500;
/// Steps of a table of quantiles, over ±[`REACH`] standard deviations.
const STEPS: usize = 128;
const REACH: f64 = 4.0;

/// What one method costs to do: labor and materials, before overhead.
#[derive(Debug, Clone, Copy)]
pub struct CostInputs<'a> {
    /// Its tasks.
    pub tasks: &'a [TaskHours],
    /// Its buying list.
    pub materials: &'a [MaterialLine],
}

/// Something whose doubt makes the cost doubtful.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum CostDriver {
    /// The time of a task, which has this name in the catalog.
    Task(String),
    /// How far untimed rates are off together.
    Rates,
    /// What materials cost whose price nobody has looked up.
    MaterialPrices,
}

/// What the cost may turn out to be.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CostSpread {
    /// Expected: each task at its mean.
    pub mean: Money,
    /// The cost at every per cent of the trials, from least to most.
    percentiles: Vec<Money>,
    /// The cost in the first trials, in whose draws all methods share, in cents.
    first: Vec<f32>,
    /// What drives it, most first: by how much the cost rises when that goes from its 10th to its 90th
    /// percentile and all else stays.
    pub drivers: Vec<(CostDriver, Money)>,
}

impl CostSpread {
    /// The cost that is not passed in this share of the trials, 0 to 1.
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_precision_loss,
        clippy::cast_sign_loss,
        reason = "an index of a list"
    )]
    pub fn at(&self, share: f64) -> Money {
        let Some(last) = self.percentiles.len().checked_sub(1) else { return self.mean };
        let place = share.clamp(0.0, 1.0) * last as f64;
        let (below, part) = (place.floor() as usize, place.fract());
        let above = self.percentiles[(below + 1).min(last)];
        self.percentiles[below] + (above - self.percentiles[below]).times(part)
    }

    /// How far the difference of two costs of the same trials is open, one standard deviation: what makes
    /// one dear makes the other dear as well.
    pub fn doubt_of_difference(&self, other: &Self) -> Money {
        let differences = || self.first.iter().zip(&other.first).map(|(one, other)| f64::from(one - other));
        if differences().count() < 2 {
            return Money::ZERO;
        }
        Money::cents(1).times(differences().population_std_dev())
    }

    /// The cost at every per cent of the trials, from least to most: 101 amounts.
    pub fn percentiles(&self) -> &[Money] {
        &self.percentiles
    }
}

/// A task's time by standard normal number: quantiles of its beta distribution, in minutes a batch.
#[derive(Debug, Clone)]
struct Quantiles {
    minutes: Vec<f32>,
}

#[expect(clippy::cast_precision_loss, reason = "indices of short tables")]
impl Quantiles {
    /// Of the beta distribution on `[low, high]` whose shape follows from the likely value: 1 + 4 (m −
    /// a)/(b − a) and 1 + 4 (b − m)/(b − a), which has the PERT mean.
    fn new(points: ThreePoint) -> Self {
        let range = points.high - points.low;
        if range <= 0.0 {
            return Self { minutes: vec![single(points.likely); STEPS + 1] };
        }
        let lean = 4.0 * (points.likely - points.low) / range;
        // The density summed up over a fine grid; the constant drops out.
        let fine = LOGARITHMS.len();
        let density = |i: usize| (lean * LOGARITHMS[i] + (4.0 - lean) * LOGARITHMS[fine - 1 - i]).exp();
        let mut sum = 0.0;
        let sums: Vec<f64> = (0..fine)
            .map(|i| {
                sum += density(i);
                sum
            })
            .collect();
        let mut at = 0;
        let minutes = NORMALS.iter().map(|share| {
            while at + 1 < fine && sums[at] < share * sum {
                at += 1;
            }
            let before = if at == 0 { 0.0 } else { sums[at - 1] };
            let part = (share * sum - before) / (sums[at] - before).max(1e-300);
            single(points.low + range * (at as f64 + part.clamp(0.0, 1.0)) / fine as f64)
        });
        Self { minutes: minutes.collect() }
    }

    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "held inside the table")]
    fn at(&self, z: f32) -> f32 {
        let place =
            ((z + REACH as f32) * (STEPS as f32 / (2.0 * REACH as f32))).clamp(0.0, STEPS as f32 - 0.001);
        let index = place as usize;
        let part = place - index as f32;
        self.minutes[index] + part * (self.minutes[index + 1] - self.minutes[index])
    }
}

/// Logarithms of the middles of the fine grid over which the density is summed up.
static LOGARITHMS: std::sync::LazyLock<Vec<f64>> = std::sync::LazyLock::new(|| {
    let fine = 4 * u32::try_from(STEPS).unwrap_or(u32::MAX);
    (0..fine).map(|i| ((f64::from(i) + 0.5) / f64::from(fine)).ln()).collect()
});

/// The normal distribution at the steps of the tables.
static NORMALS: std::sync::LazyLock<Vec<f64>> = std::sync::LazyLock::new(|| {
    #[expect(clippy::cast_precision_loss, reason = "a short table")]
    let z = |step: usize| 2.0 * REACH * step as f64 / STEPS as f64 - REACH;
    (0..=STEPS).map(|step| Normal::standard().cdf(z(step))).collect()
});

#[expect(clippy::cast_possible_truncation, reason = "single precision is ample for a cost")]
const fn single(value: f64) -> f32 {
    value as f32
}

/// A method as the trials see it: cents for a minute of each task's batch, and materials.
struct Ready {
    /// Index of the task's quantiles, and the cents that a minute of its batches costs.
    tasks: Vec<(usize, f32)>,
    /// For each task the standard deviation of the logarithm of what its rate has in common with the others
    /// that nobody timed.
    off_together: Vec<f32>,
    /// Cents of materials whose price is sure, and of the others.
    materials: (f32, f32),
}

/// Puts every method through `trials` trials, with what an hour costs by these rates.
pub fn cost_spreads(methods: &[CostInputs<'_>], prices: &Prices, trials: u32, seed: u64) -> Vec<CostSpread> {
    let mut known: Vec<(&str, ThreePoint)> = Vec::new();
    let ready: Vec<Ready> = methods.iter().map(|method| make_ready(method, prices, &mut known)).collect();
    let tables: Vec<Quantiles> = known.iter().map(|(_, points)| Quantiles::new(*points)).collect();
    let batches: Vec<Vec<Vec<f32>>> = (0..trials.div_ceil(BATCH))
        .into_par_iter()
        .map(|batch| {
            let count = BATCH.min(trials - batch * BATCH);
            run_batch(&ready, &tables, count, seed.wrapping_add(u64::from(batch)))
        })
        .collect();
    methods
        .par_iter()
        .enumerate()
        .map(|(at, method)| {
            let mut costs: Vec<f32> = batches.iter().flat_map(|batch| batch[at].iter().copied()).collect();
            costs.sort_unstable_by(f32::total_cmp);
            let money = |cents: f32| Money::cents(1).times(f64::from(cents));
            CostSpread {
                mean: mean_cost(method, prices),
                percentiles: every_per_cent(&costs).map(money).collect(),
                first: batches.first().map(|batch| batch[at].clone()).unwrap_or_default(),
                drivers: drivers(method, &ready[at], &tables),
            }
        })
        .collect()
}

/// Of a sorted list, the values at 0, 1, 2 … 100 % of it.
fn every_per_cent(sorted: &[f32]) -> impl Iterator<Item = f32> {
    let last = sorted.len().saturating_sub(1);
    (0..=100_usize).filter_map(move |per_cent| sorted.get((per_cent * last + 50) / 100).copied())
}

fn mean_cost(method: &CostInputs<'_>, prices: &Prices) -> Money {
    let labor = |trade: Trade| {
        let tasks = method.tasks.iter().filter(|task| task.trade == trade);
        prices.hour(trade).times(tasks.map(|task| task.hours.mean.to_h()).sum())
    };
    let labor: Money = Trade::ALL.into_iter().map(labor).sum();
    labor + method.materials.iter().map(|line| line.amount).sum()
}

impl Ready {
    /// Cents of labor in a trial: at these minutes of each task, and with untimed rates off together by so
    /// many standard deviations.
    fn labor(&self, minutes: &[f32], estimator: f32) -> f32 {
        // The deviations are few: the factor of the last is most often that of the next.
        let (mut last, mut factor) = (0.0_f32, 1.0_f32);
        let tasks = self.tasks.iter().zip(&self.off_together);
        tasks
            .map(|(&(task, cents), &off)| {
                if off.to_bits() != last.to_bits() {
                    (last, factor) = (off, (off * estimator - 0.5 * off * off).exp());
                }
                cents * minutes[task] * factor
            })
            .sum()
    }
}

fn make_ready<'a>(method: &CostInputs<'a>, prices: &Prices, known: &mut Vec<(&'a str, ThreePoint)>) -> Ready {
    let minute = |trade: Trade| prices.hour(trade).to_units() * 100.0 / 60.0;
    let place = |task: &'a TaskHours, known: &mut Vec<(&'a str, ThreePoint)>| {
        let (id, points) = (task.id.as_str(), task.minutes);
        known.iter().position(|other| *other == (id, points)).unwrap_or_else(|| {
            known.push((id, points));
            known.len() - 1
        })
    };
    let tasks = method
        .tasks
        .iter()
        .map(|task| (place(task, known), single(minute(task.trade) * task.batches_in_all())));
    let cents = |own: bool| {
        let lines = method.materials.iter().filter(|line| line.own_price == own);
        single(lines.map(|line| line.amount).sum::<Money>().to_units() * 100.0)
    };
    let off_together = off_together(method.tasks);
    Ready { tasks: tasks.collect(), off_together, materials: (cents(true), cents(false)) }
}

/// How far each task's rate is off together with the others that nobody timed: a standard deviation of the
/// logarithm. What was timed, or is the user's own, tells of the rest: variances add inversely.
fn off_together(tasks: &[TaskHours]) -> Vec<f32> {
    let own = |task: &TaskHours| !matches!(task.basis, RateBasis::Catalog(_));
    let mut timed: Vec<&str> = tasks.iter().filter(|task| own(task)).map(|task| task.id.as_str()).collect();
    timed.sort_unstable();
    timed.dedup();
    let told = f64::from(u32::try_from(timed.len()).unwrap_or(u32::MAX)) / (ONE_TELLS * ONE_TELLS);
    let left = (1.0 / (1.0 / (ESTIMATOR * ESTIMATOR) + told)).sqrt();
    let one = |task: &TaskHours| match &task.basis {
        RateBasis::Catalog(_) if task.minutes.high <= task.minutes.low => 0.0,
        RateBasis::Catalog(rate) if rate.kind == Kind::Assumption => single(left),
        RateBasis::Catalog(_) => single(KNOWN_TO_OTHERS * left),
        _ => 0.0,
    };
    tasks.iter().map(one).collect()
}

fn run_batch(methods: &[Ready], tables: &[Quantiles], count: u32, seed: u64) -> Vec<Vec<f32>> {
    let mut random = Xoshiro256PlusPlus::seed_from_u64(seed);
    let (common, own) = (single(IN_COMMON.sqrt()), single((1.0 - IN_COMMON).sqrt()));
    let mut minutes = vec![0.0_f32; tables.len()];
    let mut costs = vec![Vec::with_capacity(count as usize); methods.len()];
    for _ in 0..count {
        let mut normal = || -> f32 { StandardNormal.sample(&mut random) };
        let (pace, dear, estimator) = (normal(), 1.0 + single(PRICES) * normal(), normal());
        for (table, minutes) in tables.iter().zip(&mut minutes) {
            *minutes = table.at(common * pace + own * normal());
        }
        for (method, costs) in methods.iter().zip(&mut costs) {
            let labor = method.labor(&minutes, estimator);
            costs.push(labor + method.materials.0 + method.materials.1 * dear.max(0.0));
        }
    }
    costs
}

/// By how much the cost goes up when one thing goes from its 10th to its 90th percentile.
fn drivers(method: &CostInputs<'_>, ready: &Ready, tables: &[Quantiles]) -> Vec<(CostDriver, Money)> {
    let z = single(Normal::standard().inverse_cdf(0.9));
    let money = |cents: f32| Money::cents(1).times(f64::from(cents));
    let mut drivers: Vec<(CostDriver, Money)> = Vec::new();
    for (task, &(table, cents)) in method.tasks.iter().zip(&ready.tasks) {
        let swing = money(cents * (tables[table].at(z) - tables[table].at(-z)));
        let of_task = |driver: &CostDriver| matches!(driver, CostDriver::Task(name) if *name == task.name);
        match drivers.iter_mut().find(|(driver, _)| of_task(driver)) {
            Some((_, known)) => *known = *known + swing,
            None => drivers.push((CostDriver::Task(task.name.clone()), swing)),
        }
    }
    let together: f32 = method
        .tasks
        .iter()
        .zip(&ready.tasks)
        .zip(&ready.off_together)
        .map(|((task, (_, cents)), off)| 2.0 * z * off * cents * single(task.minutes.mean()))
        .sum();
    drivers.push((CostDriver::Rates, money(together)));
    drivers.push((CostDriver::MaterialPrices, money(2.0 * z * single(PRICES) * ready.materials.1)));
    drivers.retain(|(_, swing)| *swing > Money::ZERO);
    drivers.sort_by_key(|(_, swing)| std::cmp::Reverse(*swing));
    drivers
}

#[cfg(test)]
mod tests {
    use statrs::distribution::Beta;

    use super::*;
    use crate::measure::{Estimate, Hours};
    use crate::repair::{Besides, CatalogRate, Charging, RateBasis, TaskPer};

    fn task(id: &str, points: ThreePoint, batches: f64) -> TaskHours {
        TaskHours {
            id: id.to_owned(),
            name: id.to_owned(),
            short: id.to_owned(),
            trade: Trade::Painter,
            batch: (TaskPer::Visit, 1.0),
            batches,
            minutes: points,
            besides: Besides::default(),
            people: 1,
            times: 1.0,
            hours: Estimate { mean: Hours::minutes(points.mean() * batches), sd: Hours::ZERO },
            basis: RateBasis::Own,
        }
    }

    fn a_hundred_an_hour() -> Prices {
        Prices { charging: Charging::ChargeOut, charge_out: Money::cents(10_000), ..Prices::default() }
    }

    /// One task alone: its percentiles are those of the beta distribution, which statrs knows.
    #[test]
    fn percentiles_of_one_task_are_those_of_the_beta_distribution() {
        let points = ThreePoint { low: 30.0, likely: 45.0, high: 80.0 };
        let tasks = [task("one", points, 60.0)];
        let inputs = CostInputs { tasks: &tasks, materials: &[] };
        let found = &cost_spreads(&[inputs], &a_hundred_an_hour(), 40_000, 5)[0];
        let lean = 4.0 * 15.0 / 50.0;
        let beta = Beta::new(1.0 + lean, 5.0 - lean).expect("a shape above zero");
        for share in [0.05, 0.1, 0.5, 0.8, 0.9, 0.95] {
            let exact = 100.0 * (30.0 + 50.0 * beta.inverse_cdf(share));
            let cost = found.at(share).to_units();
            assert!((cost / exact - 1.0).abs() < 0.006, "{share}: {cost} against {exact}");
        }
        // The mean of the three points is that of the distribution.
        assert_eq!(found.mean, Money::cents(10_000).times(points.mean()));
        assert_eq!(found.drivers.len(), 1);
    }

    /// Exact minutes but for the estimator: the cost is lognormal about the mean. By hand: σ 0.18, with one
    /// rate timed 1/√(1/0.0324 + 1/0.16) = 0.16415, and the timed half of the cost stays as it is.
    #[test]
    fn untimed_rates_are_off_together_and_a_timed_one_tells_of_them() {
        let nearly = ThreePoint { low: 59.999, likely: 60.0, high: 60.001 };
        let rate = CatalogRate {
            minutes: nearly,
            source: String::new(),
            kind: Kind::Assumption,
            conditions: Vec::new(),
        };
        let untimed =
            |id: &str| TaskHours { basis: RateBasis::Catalog(rate.clone()), ..task(id, nearly, 1.0) };
        let none = [untimed("one"), untimed("two")];
        let one = [untimed("one"), task("two", nearly, 1.0)];
        let inputs = [&none, &one].map(|tasks| CostInputs { tasks, materials: &[] });
        let found = cost_spreads(&inputs, &a_hundred_an_hour(), 40_000, 5);
        let ninth = |sigma: f64| (1.281_55 * sigma - 0.5 * sigma * sigma).exp();
        for (found, expected) in found.iter().zip([200.0 * ninth(0.18), 100.0 + 100.0 * ninth(0.164_15)]) {
            let cost = found.at(0.9).to_units();
            assert!((cost / expected - 1.0).abs() < 0.006, "{cost} against {expected}");
            assert_eq!(found.drivers[0].0, CostDriver::Rates);
        }
    }

    /// Two tasks of the same spread with half of their variance in common: the sum scatters √(2 (1 + ρ))
    /// times as much as one, ρ about a half. Apart they would √2 times, together twice.
    #[test]
    fn tasks_are_slow_together() {
        let points = ThreePoint { low: 30.0, likely: 50.0, high: 70.0 };
        let tasks = [task("one", points, 60.0), task("two", points, 60.0)];
        let both = CostInputs { tasks: &tasks, materials: &[] };
        let one = CostInputs { tasks: &tasks[..1], materials: &[] };
        let found = cost_spreads(&[both, one], &a_hundred_an_hour(), 40_000, 5);
        let [both, one] = [0, 1].map(|at| (found[at].at(0.84) - found[at].at(0.16)).to_units());
        assert!((both / one - 3.0_f64.sqrt()).abs() < 0.04, "{}", both / one);
    }
}
