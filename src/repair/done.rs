//! What the work took in the end, and the rates that follow from it over many jobs.

use std::collections::BTreeMap;

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::takeoff::MaterialLine;
use super::tasks::{TaskHours, doubt};
use crate::measure::{DateText, Hours, Percent, ThreePoint};
use crate::wood::Kind;

/// What the work took, as far as it was written down.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Done {
    /// The last day of the work.
    #[schemars(with = "Option<DateText>")]
    pub finished: Option<Date>,
    /// Hours of one person by task.
    pub hours: BTreeMap<String, Hours>,
    /// Pieces used, by the id of a line of the buying list.
    pub pieces: BTreeMap<String, u32>,
    /// What to remember.
    pub note: String,
}

/// How much the pace differs from one job to the next, as a standard deviation of its logarithm.
/// Assumption.
const JOB_TO_JOB: f64 = 0.25;

/// A rate learned from finished jobs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Learned {
    /// Minutes for a batch, to be expected of the next job.
    pub minutes: ThreePoint,
    /// How many jobs are behind it.
    pub jobs: usize,
    /// Their weight against the start value, 0 to 1.
    pub weight: f64,
}

/// Minutes for a batch that each task would have taken in ordinary conditions: `tasks` as they were
/// estimated, `done` as it came. What ladder, furniture and the like were estimated to add is taken out.
pub fn rates_of(tasks: &[TaskHours], done: &Done) -> Vec<(String, f64)> {
    let mut known: BTreeMap<&str, f64> = BTreeMap::new();
    for task in tasks {
        *known.entry(&task.id).or_default() += task.batches_in_all() * task.times;
    }
    let rate = |(id, hours): (&String, &Hours)| {
        let batches = known.get(id.as_str()).copied().filter(|batches| *batches > 0.0)?;
        let minutes = hours.to_h() * 60.0 / batches;
        (minutes > 0.0).then(|| (id.clone(), minutes))
    };
    done.hours.iter().filter_map(rate).collect()
}

/// Pieces used over those that the work came to, waste not included, for each material that is sold in one
/// size and of which the pieces used were written down, by id.
pub fn use_of(materials: &[MaterialLine], done: &Done) -> Vec<(String, f64)> {
    let one = |line: &MaterialLine| {
        let (exact, used) = (line.exact.filter(|exact| *exact > 0.0)?, done.pieces.get(&line.id)?);
        (*used > 0).then(|| (line.id.clone(), f64::from(*used) / exact))
    };
    materials.iter().filter_map(one).collect()
}

/// How far whole pieces and one job's chances put the use of a material off, as a standard deviation of its
/// logarithm; and how far a start value may be off. Assumptions.
const USE_OF_ONE_JOB: f64 = 0.25;
const USE_AT_START: f64 = 0.15;

/// Logarithms of figures above zero, how many they are, and their mean.
struct Logarithms {
    logs: Vec<f64>,
    count: f64,
    mean: f64,
}

fn logarithms(figures: &[f64]) -> Option<Logarithms> {
    let logs: Vec<f64> = figures.iter().filter(|figure| **figure > 0.0).map(|figure| figure.ln()).collect();
    #[expect(clippy::cast_precision_loss, reason = "a count of jobs")]
    let count = logs.len() as f64;
    let mean = logs.iter().sum::<f64>() / count;
    (!logs.is_empty()).then_some(Logarithms { logs, count, mean })
}

/// The waste of a material that is to be expected, by its start value and what it took on each job: pieces
/// used over those that the work came to. Weighed as in [`learn`]; not below zero. `None` without any.
pub fn learn_waste(start: Percent, jobs: &[f64]) -> Option<Percent> {
    let Logarithms { count, mean, .. } = logarithms(jobs)?;
    let (start_variance, variance) = (USE_AT_START.powi(2), USE_OF_ONE_JOB.powi(2) / count);
    let weight = start_variance / (start_variance + variance);
    let used = ((1.0 - weight) * start.to_fraction().ln_1p() + weight * mean).exp();
    Some(Percent::pct((100.0 * (used - 1.0)).max(0.0)))
}

/// Weighs a start value against what `jobs` took, minutes for a batch each. `None` without any.
///
/// All are taken as normal in the logarithm and weighed by the inverse of their variances: the start
/// value's is that of its three points and of how far its kind can be trusted, a job's the scatter from
/// job to job, or what these jobs themselves show once there are five of them. What is expected of the
/// next job scatters by that once more.
pub fn learn(start: ThreePoint, kind: Kind, jobs: &[f64]) -> Option<Learned> {
    let Logarithms { logs, count, mean } = logarithms(jobs)?;
    let own = logs.iter().map(|log| (log - mean).powi(2)).sum::<f64>() / (count - 1.0).max(1.0);
    let scatter = if logs.len() < 5 { JOB_TO_JOB * JOB_TO_JOB } else { own.max(1e-4) };
    let expected = start.mean().max(1e-6);
    let start_variance = (start.sd() / expected).powi(2).ln_1p() + doubt(kind).powi(2);
    let weight = start_variance / (start_variance + scatter / count);
    let likely = ((1.0 - weight) * expected.ln() + weight * mean).exp();
    let variance = weight * scatter / count + scatter;
    let reach = 3.0 * likely * variance.exp_m1().sqrt();
    let minutes = ThreePoint { low: (likely - reach).max(0.0), likely, high: likely + reach };
    Some(Learned { minutes, jobs: logs.len(), weight })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: start 10 %, four jobs that used 1.5 times what the work came to. 0.0225 against 0.0625 / 4 =
    /// 0.015625 weighs 0.59016; 1.1^0.40984 · 1.5^0.59016 = 1.3210.
    #[test]
    fn pieces_used_teach_what_is_lost() {
        let found = learn_waste(Percent::pct(10.0), &[1.5; 4]).expect("four jobs");
        assert!((found.to_pct() - 32.10).abs() < 0.05, "{found:?}");
        let less = learn_waste(Percent::pct(10.0), &[0.5]).expect("one job");
        assert_eq!(less, Percent::ZERO);
        assert_eq!(learn_waste(Percent::pct(10.0), &[]), None);
    }

    /// By hand: start 50 (40 to 60, an assumption): variance ln(1 + 0.0667²) + 0.4² = 0.164435. Four jobs
    /// of 80 min: 0.0625 / 4 = 0.015625; weight 0.164435 / 0.18006 = 0.91322; 50 · 1.6^0.91322 = 76.80.
    #[test]
    fn jobs_outweigh_the_start_value_the_more_of_them_there_are() {
        let start = ThreePoint { low: 40.0, likely: 50.0, high: 60.0 };
        let found = learn(start, Kind::Assumption, &[80.0; 4]).expect("four jobs");
        assert!((found.weight - 0.91322).abs() < 1e-4 && found.jobs == 4);
        assert!((found.minutes.likely - 76.80).abs() < 0.02, "{:?}", found.minutes);
        let one = learn(start, Kind::Assumption, &[80.0]).expect("one job");
        assert!(one.weight < found.weight && one.minutes.sd() > found.minutes.sd());
        assert_eq!(learn(start, Kind::Assumption, &[]), None);
    }
}
