//! The hours of a method's tasks.

use super::catalogue::{Method, Step, Task};
use super::plan::Plan;
use super::quantities::Quantities;
use crate::measure::{Estimate, Hours, Length, Minutes, ThreePoint};

/// A timed trial's spread when it is carried over to the other sections: 15 % less, 25 % more.
/// Assumption.
const TRIAL_SPREAD: (f64, f64) = (0.85, 1.25);

/// The task that a trial section times.
const TRIAL_TASK: &str = "scrape";

/// What the hours follow from.
#[derive(Debug, Clone, Copy)]
pub struct TaskInputs<'a> {
    /// The method.
    pub method: &'a Method,
    /// The shelf's tasks.
    pub tasks: &'a [Task],
    /// What the user decided.
    pub plan: &'a Plan,
    /// The measure of the job.
    pub quantities: &'a Quantities,
    /// Length of joint to be sealed in the trial section, if there was a trial.
    pub trial_run: Option<Length>,
}

/// One task with its hours.
#[derive(Debug, Clone, PartialEq)]
pub struct TaskHours {
    /// Id of the task.
    pub id: String,
    /// What is done.
    pub name: String,
    /// How many batches there are.
    pub batches: f64,
    /// Minutes for a batch.
    pub minutes: ThreePoint,
    /// Hours of one person.
    pub hours: Estimate<Hours>,
    /// Where the rate is from, in words.
    pub basis: String,
}

/// The method's tasks in the order of its steps, waits left out. A step whose task is not in the
/// shelf is left out too; the shelf's own test sees to it that there is none.
pub fn task_hours(inputs: &TaskInputs<'_>) -> Vec<TaskHours> {
    let ids = inputs.method.steps.iter().filter_map(|step| match step {
        Step::Do(id) | Step::Coats(id) => Some(id),
        Step::Wait(_) => None,
    });
    ids.filter_map(|id| inputs.tasks.iter().find(|task| task.id == *id))
        .map(|task| one_task(task, inputs))
        .collect()
}

fn one_task(task: &Task, inputs: &TaskInputs<'_>) -> TaskHours {
    let (plan, visits) = (inputs.plan, inputs.method.visits());
    let quantity = inputs.quantities.of_task(task.per, visits, plan.usable_coats());
    let batches = if task.batch > 0.0 { quantity / task.batch } else { 0.0 };
    let (minutes, basis) = rate(task, inputs);
    let hours = Estimate {
        mean: Hours::minutes(minutes.mean() * batches),
        sd: Hours::minutes(minutes.sd() * batches),
    };
    TaskHours { id: task.id.clone(), name: task.name.clone(), batches, minutes, hours, basis }
}

/// Minutes for a batch: the trial's, else the user's own, else the shelf's.
fn rate(task: &Task, inputs: &TaskInputs<'_>) -> (ThreePoint, String) {
    if task.id == TRIAL_TASK
        && let (Some(trial), Some(run)) = (&inputs.plan.trial, inputs.trial_run)
        && let Some(minutes) = trial.minutes.map(Minutes::to_minutes)
        && (0.1..1e5).contains(&minutes)
        && run > Length::ZERO
    {
        let likely = minutes / run.to_m() * task.batch;
        let (low, high) = (likely * TRIAL_SPREAD.0, likely * TRIAL_SPREAD.1);
        return (ThreePoint { low, likely, high }, format!("your timed section {}", trial.section));
    }
    match inputs.plan.own_minutes.get(&task.id) {
        Some(own) if own.is_in_order() => (*own, "your own rate".to_owned()),
        _ if task.source.is_empty() => (task.minutes, task.kind.words().to_owned()),
        _ => (task.minutes, format!("{} ({})", task.source, task.kind.words())),
    }
}
