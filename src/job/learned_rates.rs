//! The rates and the waste that finished jobs teach.

use std::collections::BTreeMap;

use super::catalog::Catalog;
use super::price_book::PriceBook;
use crate::measure::{Minutes, Percent, ThreePoint};
use crate::repair::{AlsoPer, Learned, Material, Task, learn, learn_waste};
use crate::wood::Kind;

/// What one finished job took.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Taken {
    /// Minutes for a batch, by task id.
    pub minutes: Vec<(String, f64)>,
    /// Pieces used over those that the work came to, by material id.
    pub used: Vec<(String, f64)>,
}

impl Taken {
    /// Whether it teaches nothing.
    pub fn is_empty(&self) -> bool {
        self.minutes.is_empty() && self.used.is_empty()
    }
}

/// What finished jobs teach.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Lessons {
    /// Of tasks.
    pub rates: Vec<RateLearned>,
    /// Of materials.
    pub waste: Vec<WasteLearned>,
}

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

/// What finished jobs teach of one material.
#[derive(Debug, Clone, PartialEq)]
pub struct WasteLearned {
    /// Id of the material.
    pub id: String,
    /// Its name.
    pub name: String,
    /// What is lost of it by the catalog.
    pub start: Percent,
    /// What comes of the jobs.
    pub waste: Percent,
    /// How many jobs are behind it.
    pub jobs: usize,
}

impl Lessons {
    /// Weighs the catalog's figures against what each job took.
    pub fn of(catalog: &Catalog, jobs: &[Taken]) -> Self {
        let minutes = by_id(jobs.iter().flat_map(|job| &job.minutes));
        let used = by_id(jobs.iter().flat_map(|job| &job.used));
        let rate = |task: &Task| {
            let learned = learn(task.minutes, task.kind, minutes.get(task.id.as_str())?)?;
            let (id, name) = (task.id.clone(), task.name.clone());
            Some(RateLearned { id, name, start: task.minutes, learned })
        };
        let waste = |material: &Material| {
            let (jobs, start) = (used.get(material.id.as_str())?, material.waste.unwrap_or_default());
            let (id, name) = (material.id.clone(), material.name.clone());
            Some(WasteLearned { id, name, start, waste: learn_waste(start, jobs)?, jobs: jobs.len() })
        };
        Self {
            rates: catalog.tasks.iter().filter_map(rate).collect(),
            waste: catalog.materials.iter().filter_map(waste).collect(),
        }
    }

    /// Whether there is nothing in it.
    pub fn is_empty(&self) -> bool {
        self.rates.is_empty() && self.waste.is_empty()
    }
}

fn by_id<'a>(figures: impl Iterator<Item = &'a (String, f64)>) -> BTreeMap<&'a str, Vec<f64>> {
    let mut all: BTreeMap<&str, Vec<f64>> = BTreeMap::new();
    for (id, figure) in figures {
        all.entry(id).or_default().push(*figure);
    }
    all
}

impl PriceBook {
    /// Puts what was learned in place of the own figures. `source` says where a rate is from that so many
    /// finished jobs teach.
    pub fn take(&mut self, lessons: &Lessons, source: impl Fn(usize) -> String) {
        for rate in &lessons.rates {
            if let Some(task) = self.tasks.iter_mut().find(|task| task.id == rate.id) {
                // What it takes besides is slow or quick with it.
                let times = rate.learned.minutes.mean() / task.minutes.mean().max(1e-9);
                let scaled = |minutes: Minutes| Minutes::of(minutes.to_minutes() * times);
                task.fixed = task.fixed.map(scaled);
                task.also = task.also.map(|also| AlsoPer { minutes: scaled(also.minutes), ..also });
                task.minutes = rate.learned.minutes;
                task.kind = Kind::CommonPractice;
                task.source = source(rate.learned.jobs);
            }
        }
        for learned in &lessons.waste {
            if let Some(material) = self.materials.iter_mut().find(|material| material.id == learned.id) {
                material.waste = Some(learned.waste);
            }
        }
    }
}
