//! The rates that finished jobs teach.

use std::collections::BTreeMap;

use super::catalog::Catalog;
use super::price_book::PriceBook;
use crate::measure::ThreePoint;
use crate::repair::{Learned, Task, learn};
use crate::wood::Kind;

/// What finished jobs teach of one task.
#[derive(Debug, Clone, PartialEq)]
pub struct RateLearned {
    /// Id of the task.
    pub id: String,
    /// Its name.
    pub name: String,
    /// Minutes for a batch by the catalog.
    pub start: ThreePoint,
    /// What comes of the jobs.
    pub learned: Learned,
}

/// Weighs the catalog's rates against what each job's tasks took: minutes for a batch by task id.
pub fn learn_rates(catalog: &Catalog, jobs: &[Vec<(String, f64)>]) -> Vec<RateLearned> {
    let mut taken: BTreeMap<&str, Vec<f64>> = BTreeMap::new();
    for (id, minutes) in jobs.iter().flatten() {
        taken.entry(id).or_default().push(*minutes);
    }
    let learned = |task: &Task| {
        let minutes = taken.get(task.id.as_str())?;
        Some(RateLearned {
            id: task.id.clone(),
            name: task.name.clone(),
            start: task.minutes,
            learned: learn(task.minutes, task.kind, minutes)?,
        })
    };
    catalog.tasks.iter().filter_map(learned).collect()
}

impl PriceBook {
    /// Puts learned rates in place of the tasks' own. `source` says where a rate is from that so many
    /// finished jobs teach.
    pub fn take_rates(&mut self, rates: &[RateLearned], source: impl Fn(usize) -> String) {
        for rate in rates {
            if let Some(task) = self.tasks.iter_mut().find(|task| task.id == rate.id) {
                task.minutes = rate.learned.minutes;
                task.kind = Kind::CommonPractice;
                task.source = source(rate.learned.jobs);
            }
        }
    }
}
