//! The work against the clock: the section that was timed, and the hours that the tasks took.

use super::Assessment;
use super::options::RepairOption;
use crate::measure::{Hours, Minutes, Percent};
use crate::repair::TaskHours;

/// Standard deviations to either side within which eight in ten lie.
const EIGHT_IN_TEN: f64 = 1.282;

/// A task of which a section was done against the clock.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TimedWork<'a> {
    /// The task, with the hours that are still to come.
    pub task: &'a TaskHours,
    /// What the timed section took, which is done.
    pub taken: Minutes,
    /// Whether it is in the price.
    pub charged: bool,
    /// Half of the range around the hours to come in which they lie 8 times in 10.
    pub within: Hours,
}

/// What a task of a finished job took.
#[derive(Debug, Clone, PartialEq)]
pub struct TaskOutcome {
    /// The task's id.
    pub id: String,
    /// Its name in the catalog.
    pub name: String,
    /// The hours that were expected, of all its steps together.
    pub estimated: Hours,
    /// The hours it took, where they are known.
    pub actual: Option<Hours>,
    /// By how much it took longer than expected, as a share of what was expected; negative where it took
    /// less. `None` where either is not known.
    pub over: Option<Percent>,
}

impl Assessment {
    /// The task of an option that was timed on one section; `None` where none was, or where the option
    /// does not have that task.
    pub fn timed_work<'a>(&self, option: &'a RepairOption) -> Option<TimedWork<'a>> {
        let taken: Minutes = self.job.plan.trial.as_ref()?.minutes?;
        let task = option.tasks.iter().find(|task| task.basis.is_timed())?;
        let charged = self.job.plan.charge_timed;
        Some(TimedWork { task, taken, charged, within: task.hours.sd * EIGHT_IN_TEN })
    }

    /// What each task of an option took, in the order of the work. A task that is done more than once
    /// stands once.
    pub fn task_outcomes(&self, option: &RepairOption) -> Vec<TaskOutcome> {
        let mut outcomes: Vec<TaskOutcome> = Vec::new();
        for task in &option.tasks {
            match outcomes.iter_mut().find(|known| known.id == task.id) {
                Some(known) => known.estimated = known.estimated + task.hours.mean,
                None => outcomes.push(TaskOutcome {
                    id: task.id.clone(),
                    name: task.name.clone(),
                    estimated: task.hours.mean,
                    actual: self.job.done.hours.get(&task.id).copied(),
                    over: None,
                }),
            }
        }
        for outcome in &mut outcomes {
            outcome.over = outcome.actual.and_then(|actual| over(outcome.estimated, actual));
        }
        outcomes
    }
}

fn over(estimated: Hours, actual: Hours) -> Option<Percent> {
    let expected = estimated.to_h();
    (expected > 0.0).then(|| Percent::pct(100.0 * (actual.to_h() / expected - 1.0)))
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use super::*;
    use crate::assess::assess;
    use crate::job::{Catalog, demo_job};
    use crate::repair::Trial;

    #[test]
    fn a_task_in_several_steps_is_one_outcome() {
        let mut job = demo_job();
        job.done.hours.insert("scrape".to_owned(), Hours::h(6.0));
        let assessment = assess(job, Catalog::built_in());
        let option = assessment.chosen().unwrap();
        let outcomes = assessment.task_outcomes(option);
        let all: f64 = outcomes.iter().map(|outcome| outcome.estimated.to_h()).sum();
        assert!((all - option.hours.to_h()).abs() < 1e-9);
        let mut ids: Vec<&str> = outcomes.iter().map(|outcome| outcome.id.as_str()).collect();
        ids.sort_unstable();
        ids.dedup();
        assert_eq!(ids.len(), outcomes.len());
        let scrape = outcomes.iter().find(|outcome| outcome.id == "scrape").unwrap();
        let estimated = scrape.estimated.to_h();
        assert!((estimated * (1.0 + scrape.over.unwrap().to_fraction()) - 6.0).abs() < 1e-9);
        assert!(outcomes.iter().filter(|outcome| outcome.over.is_some()).count() == 1);
    }

    #[test]
    fn what_was_timed_is_no_longer_to_come() {
        let mut job = demo_job();
        job.plan.trial = None;
        let whole = assess(Arc::new(job.clone()), Catalog::built_in());
        let (surface, section) = (job.surfaces[0].name.clone(), job.surfaces[0].sections[0].name.clone());
        job.plan.trial = Some(Trial { surface, section, minutes: Some(Minutes::of(90.0)) });
        let assessment = assess(Arc::new(job), Catalog::built_in());
        let timed = assessment.timed_work(assessment.chosen().unwrap()).unwrap();
        assert_eq!(timed.task.id, "scrape");
        let of_all = whole.chosen().unwrap().tasks.iter().find(|task| task.id == "scrape").unwrap();
        // One section of four alike.
        let left = timed.task.batches / of_all.batches;
        assert!((left - 0.75).abs() < 0.1, "{left}");
        assert!(timed.within > Hours::ZERO && timed.taken == Minutes::of(90.0));
    }
}
