//! The hours of a method's tasks.

use super::methods::{RepairMethod, Step};
use super::plan::Plan;
use super::quantities::{OnSite, Quantities};
use super::task_kinds::{Circumstance, Condition, Task, TaskPer, Trade};
use crate::measure::{Estimate, Hours, Length, Minutes, ThreePoint};
use crate::wood::Kind;

/// The task that a trial section times.
const TRIAL_TASK: &str = "scrape";

/// How much the pace differs from one section of a job to the next, as a standard deviation of its
/// logarithm. Assumption.
const SECTION_TO_SECTION: f64 = 0.15;

/// What the hours follow from.
#[derive(Debug, Clone, Copy)]
pub struct TaskInputs<'a> {
    /// The method.
    pub method: &'a RepairMethod,
    /// The catalog's tasks.
    pub tasks: &'a [Task],
    /// What of the catalog's conditions there is here.
    pub conditions: &'a [&'a Condition],
    /// What the user decided.
    pub plan: &'a Plan,
    /// The measure of the job.
    pub quantities: &'a Quantities,
    /// Length of joint to be sealed in the trial section, if there was a trial.
    pub trial_run: Option<Length>,
}

/// A rate of the catalog as it applies here.
#[derive(Debug, Clone, PartialEq)]
pub struct CatalogRate {
    /// Minutes of one person for a batch in the conditions here.
    pub minutes: ThreePoint,
    /// Where the catalog's minutes are from; empty where only their kind is known.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
    /// The conditions that change them here: the catalog's name and the factor on the time.
    pub conditions: Vec<(String, f64)>,
}

/// Where the rate of a task is from.
#[derive(Debug, Clone, PartialEq)]
pub enum RateBasis {
    /// The user's own minutes.
    Own,
    /// The section that was timed: done, at what it took.
    Done {
        /// Its name.
        section: String,
    },
    /// The catalog's.
    Catalog(CatalogRate),
    /// The user's timed section, weighed against the catalog's rate.
    Timed {
        /// Name of the section that was timed.
        section: String,
        /// Minutes for a batch that it came to; above zero.
        minutes: f64,
        /// Its weight, 0 to 1; the catalog's rate has the rest.
        weight: f64,
        /// The catalog's rate.
        start: CatalogRate,
    },
}

impl RateBasis {
    /// Whether a timed section counts in it.
    pub const fn is_timed(&self) -> bool {
        matches!(self, Self::Timed { .. })
    }
}

/// What a task takes besides its rate, conditions included.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Besides {
    /// Expected minutes however much there is.
    pub fixed: Minutes,
    /// What its time goes with besides.
    pub also: Option<Also>,
}

/// A second rate of a task.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Also {
    /// What the time goes with, and how much of that, in its unit, makes a batch.
    pub batch: (TaskPer, f64),
    /// How many batches there are.
    pub batches: f64,
    /// Expected minutes for a batch.
    pub minutes: Minutes,
}

impl Besides {
    /// Expected minutes of both together.
    pub fn minutes(&self) -> f64 {
        self.fixed.to_minutes() + self.also.map_or(0.0, |also| also.batches * also.minutes.to_minutes())
    }
}

/// One task with its hours.
#[derive(Debug, Clone, PartialEq)]
pub struct TaskHours {
    /// Id of the task.
    pub id: String,
    /// What is done.
    pub name: String,
    /// The same in a word or two; empty where the plan of a day does not name it.
    pub short: String,
    /// Whose work it is.
    pub trade: Trade,
    /// What its time goes with, and how much of that, in its unit, makes a batch.
    pub batch: (TaskPer, f64),
    /// How many batches there are.
    pub batches: f64,
    /// Minutes for a batch, conditions included.
    pub minutes: ThreePoint,
    /// What it takes besides.
    pub besides: Besides,
    /// People it takes at once.
    pub people: u32,
    /// What the conditions multiply the catalog's minutes by.
    pub times: f64,
    /// Hours of one person.
    pub hours: Estimate<Hours>,
    /// Where the rate is from.
    pub basis: RateBasis,
}

impl TaskHours {
    /// Batches that would take as long at its rate alone: what it takes besides is slow or quick with it.
    pub fn batches_in_all(&self) -> f64 {
        let mean = self.minutes.mean();
        self.batches + if mean > 0.0 { self.besides.minutes() / mean } else { 0.0 }
    }
}

/// Boards overhead longer than this take two people. Common practice, no source.
const HELD_BY_TWO: Length = Length::inches(72.0);

/// The method's tasks in the order of its steps, waits left out, each with the number of its step. A step
/// whose task is not in the catalog is left out; the catalog's own test sees to it that there is none.
/// So is what goes with the days, which [`day_tasks`] adds.
pub fn task_hours(inputs: &TaskInputs<'_>) -> Vec<(usize, TaskHours)> {
    let ids = inputs.method.steps.iter().enumerate().filter_map(|(number, step)| match step {
        Step::Do(id) | Step::Coats(id) => Some((number, id)),
        Step::Wait(_) => None,
    });
    ids.filter_map(|(number, id)| Some((number, task_of(inputs.tasks, id)?)))
        .filter(|(_, task)| !task.per.follows_from_the_days())
        .map(|(number, task)| (number, one_task(task, inputs, &OnSite::default())))
        .collect()
}

/// The task of this id, or that had it.
pub fn task_of<'a>(tasks: &'a [Task], id: &str) -> Option<&'a Task> {
    let had = |task: &&Task| task.formerly.iter().any(|old| old == id);
    tasks.iter().find(|task| task.id == id).or_else(|| tasks.iter().find(had))
}

/// The task that is done in the evening only where the work is lead-safe.
const LEAD_EVENING: &str = "lead_evening";

/// What every method takes for the days it is done on: the drive, setting up, handing the room back, and
/// waiting in it.
pub fn day_tasks(inputs: &TaskInputs<'_>, on_site: &OnSite) -> Vec<TaskHours> {
    let lead_safe = inputs.method.does("lead_contain");
    let with_days = inputs.tasks.iter().filter(|task| task.per.follows_from_the_days());
    let here = with_days
        .filter(|task| inputs.plan.site.handed_back || task.per != TaskPer::Evening)
        .filter(|task| lead_safe || task.id != LEAD_EVENING);
    here.map(|task| one_task(task, inputs, on_site)).collect()
}

/// The catalog's conditions that these circumstances call up.
pub fn applying<'a>(conditions: &'a [Condition], here: &[Circumstance]) -> Vec<&'a Condition> {
    conditions.iter().filter(|condition| here.contains(&condition.when)).collect()
}

/// The section that was done against the clock, as a task at what it took; `None` where `task` was not timed.
pub fn done_already(task: &TaskHours, inputs: &TaskInputs<'_>) -> Option<TaskHours> {
    let timed = timed(task_of(inputs.tasks, &task.id)?, inputs)?;
    let batches = timed.run.to_m() / task.batch.1;
    let hours = Estimate { mean: Hours::minutes(timed.minutes * batches), sd: Hours::ZERO };
    Some(TaskHours {
        batches,
        minutes: ThreePoint::exactly(timed.minutes),
        besides: Besides::default(),
        hours,
        basis: RateBasis::Done { section: timed.section.to_owned() },
        ..task.clone()
    })
}

fn one_task(task: &Task, inputs: &TaskInputs<'_>, on_site: &OnSite) -> TaskHours {
    let whole = inputs.quantities.of_task(task.per, inputs.plan.coats, on_site);
    // What was done against the clock is done.
    let done = timed(task, inputs).map_or(0.0, |timed| timed.run.to_m());
    let quantity = (whole - done).max(0.0);
    let batches = if task.batch > 0.0 { quantity / task.batch } else { 0.0 };
    let Rate { minutes, times, basis } = rate(task, inputs);
    let besides = match basis {
        // What the user says it takes is all that it takes.
        RateBasis::Own | RateBasis::Done { .. } => Besides::default(),
        _ => besides(task, batches, times, inputs, on_site),
    };
    let long_overhead = inputs.quantities.longest_overhead > HELD_BY_TWO;
    let people = task.people.filter(|_| long_overhead).unwrap_or(1);
    let (id, name, batch) = (task.id.clone(), task.name.clone(), (task.per, task.batch));
    let short = task.short.clone().unwrap_or_else(|| name.clone());
    let trade = task.trade;
    let hours = Estimate { mean: Hours::ZERO, sd: Hours::ZERO };
    let one =
        TaskHours { id, name, short, trade, batch, batches, minutes, besides, people, times, hours, basis };
    let all = one.batches_in_all();
    let hours = |minutes: f64| Hours::minutes(minutes * all);
    TaskHours { hours: Estimate { mean: hours(minutes.mean()), sd: hours(minutes.sd()) }, ..one }
}

/// What a task takes besides its rate, in conditions that multiply its time.
fn besides(task: &Task, batches: f64, times: f64, inputs: &TaskInputs<'_>, on_site: &OnSite) -> Besides {
    let also = task.also.filter(|also| also.batch > 0.0).map(|also| Also {
        batch: (also.per, also.batch),
        batches: inputs.quantities.of_task(also.per, inputs.plan.coats, on_site) / also.batch,
        minutes: Minutes::of(also.minutes.to_minutes() * times),
    });
    let any = batches > 0.0 || also.is_some_and(|also| also.batches > 0.0);
    let fixed = task.fixed.filter(|_| any).map_or(0.0, Minutes::to_minutes);
    Besides { fixed: Minutes::of(fixed * times), also }
}

struct Rate {
    minutes: ThreePoint,
    times: f64,
    basis: RateBasis,
}

/// Minutes for a batch: the user's own as they stand, else the catalog's in these conditions, weighed
/// against the trial if this task was timed.
fn rate(task: &Task, inputs: &TaskInputs<'_>) -> Rate {
    let here: Vec<&Condition> =
        inputs.conditions.iter().copied().filter(|condition| condition.tasks.contains(&task.id)).collect();
    let times: f64 = here.iter().map(|condition| condition.times).product();
    if let Some(own) = inputs.plan.own_minutes.get(&task.id).filter(|own| own.is_in_order()) {
        return Rate { minutes: *own, times, basis: RateBasis::Own };
    }
    let minutes = task.minutes.times(times);
    let start = CatalogRate {
        minutes,
        source: task.source.clone(),
        kind: task.kind,
        conditions: here.iter().map(|condition| (condition.name.clone(), condition.times)).collect(),
    };
    if let Some(timed) = timed(task, inputs) {
        let weighed = weigh(minutes, task.kind, timed.minutes, timed.rest);
        let section = timed.section.to_owned();
        let basis = RateBasis::Timed { section, minutes: timed.minutes, weight: weighed.weight, start };
        return Rate { minutes: weighed.minutes, times, basis };
    }
    Rate { minutes, times, basis: RateBasis::Catalog(start) }
}

/// A trial of a task.
struct Timed<'a> {
    section: &'a str,
    /// Minutes for a batch.
    minutes: f64,
    /// What is left of the job, in sections like it.
    rest: f64,
    /// Length of joint that it took.
    run: Length,
}

fn timed<'a>(task: &Task, inputs: &TaskInputs<'a>) -> Option<Timed<'a>> {
    let (trial, run) = (inputs.plan.trial.as_ref()?, inputs.trial_run?);
    let minutes = trial.minutes.map(Minutes::to_minutes)?;
    let timed = task.id == TRIAL_TASK && minutes > 0.0 && run > Length::ZERO;
    let rest = inputs.quantities.joint_run().to_m() / run.to_m() - 1.0;
    timed.then(|| Timed { section: &trial.section, minutes: minutes / run.to_m() * task.batch, rest, run })
}

/// A start value put right by one trial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weighed {
    /// Minutes for a batch of the rest of the job.
    pub minutes: ThreePoint,
    /// The trial's weight, 0 to 1.
    pub weight: f64,
}

/// Weighs a start value of `start` minutes against one trial of `trial` minutes; `rest` sections are
/// still to come.
///
/// Both are taken as normal in the logarithm, and weighed by the inverse of their variances. The start
/// value's is that of its three points and of how far its kind can be trusted; the trial's is the
/// scatter from section to section, which the rest of the job shows once more.
pub fn weigh(start: ThreePoint, kind: Kind, trial: f64, rest: f64) -> Weighed {
    let (mean, scatter) = (start.mean().max(1e-6), SECTION_TO_SECTION * SECTION_TO_SECTION);
    let start_variance = (start.sd() / mean).powi(2).ln_1p() + doubt(kind).powi(2);
    let weight = start_variance / (start_variance + scatter);
    let likely = ((1.0 - weight) * mean.ln() + weight * trial.ln()).exp();
    let variance = weight * scatter + scatter / rest.max(1.0);
    // Three points that have this mean and standard deviation by the PERT formulas.
    let reach = 3.0 * likely * variance.exp_m1().sqrt();
    let low = (likely - reach).max(0.0);
    Weighed { minutes: ThreePoint { low, likely, high: likely + reach }, weight }
}

/// How far a start value of this kind may be off for one crew in one room, as a standard deviation of
/// its logarithm. Assumption.
pub(super) const fn doubt(kind: Kind) -> f64 {
    match kind {
        Kind::Published | Kind::FromMemory => 0.2,
        Kind::CommonPractice => 0.3,
        Kind::Assumption => 0.4,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: start 40 to 60 likely 50: mean 50, sd 3.333, so variance of the logarithm
    /// ln(1 + 0.0667²) = 0.004435, with 0.3² it is 0.094435. Against 0.0225 the trial weighs
    /// 0.094435 / 0.116935 = 0.80759, and 100 min against 50 gives 50 · 2^0.80759 = 87.51.
    #[test]
    fn a_trial_outweighs_a_start_value_and_does_not_drown_it() {
        let start = ThreePoint { low: 40.0, likely: 50.0, high: 60.0 };
        let found = weigh(start, Kind::CommonPractice, 100.0, 3.0);
        assert!((found.weight - 0.80759).abs() < 1e-4, "{}", found.weight);
        assert!((found.minutes.mean() - 87.51).abs() < 0.05, "{:?}", found.minutes);
        let variance: f64 = 0.80759 * 0.0225 + 0.0225 / 3.0;
        let sd = 87.51 * variance.exp_m1().sqrt();
        assert!((found.minutes.sd() - sd).abs() < 0.05);
        let trusted = weigh(start, Kind::Published, 100.0, 3.0);
        assert!(trusted.weight < found.weight);
    }
}
