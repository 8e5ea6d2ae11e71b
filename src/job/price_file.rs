//! A user's own price book in a file, and the rates that a folder of finished jobs teaches.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use super::file::{LoadError, SaveError, read_text, write_whole};
use super::price_book::PriceBook;
use super::{Catalog, Job, file};

/// Why a price book cannot be read. The sentences for people are made in `words`.
#[derive(Debug, thiserror::Error)]
pub enum PriceFileError {
    /// The file cannot be read at all.
    #[error(transparent)]
    File(#[from] LoadError),
    /// It is no price book.
    #[error("{}: not a price book: {reason}", path.display())]
    NotAPriceBook {
        /// The file.
        path: PathBuf,
        /// Line, column and what the reader of the format says of it, in its own technical English.
        reason: String,
    },
}

/// Loads a price book.
///
/// # Errors
/// If the file cannot be read or is no price book.
pub fn load_prices(path: &Path) -> Result<PriceBook, PriceFileError> {
    let text = read_text(path)?;
    read_prices(&text).map_err(|reason| PriceFileError::NotAPriceBook { path: path.to_owned(), reason })
}

/// Reads a price book from text.
///
/// # Errors
/// Line, column and what is wrong.
pub fn read_prices(text: &str) -> Result<PriceBook, String> {
    super::ron_text::lenient().from_str(text).map_err(|error| error.to_string())
}

/// Saves a price book, whole or not at all.
///
/// # Errors
/// If the system refuses; the file is then as it was.
pub fn save_prices(prices: &PriceBook, path: &Path) -> Result<(), SaveError> {
    let style = ron::ser::PrettyConfig::new().depth_limit(2);
    let text = ron::ser::to_string_pretty(prices, style)? + "\n";
    write_whole(text.as_bytes(), path, true)
        .map_err(|source| SaveError::Unwritable { path: path.to_owned(), source })
}

/// Jobs read at most from one folder.
const MOST_JOBS: usize = 2_000;

/// The job files of a folder, in the order of their names, with those that cannot be read left out.
///
/// # Errors
/// If the folder itself cannot be read.
pub fn jobs_in(folder: &Path) -> std::io::Result<Vec<(PathBuf, Job)>> {
    let jobs = job_files_in(folder)?.into_iter().filter_map(|path| {
        let job = file::load(&path).ok()?.job;
        Some((path, job))
    });
    Ok(jobs.collect())
}

/// The files of a folder that are jobs by their ending, in the order of their names.
///
/// # Errors
/// If the folder itself cannot be read.
pub fn job_files_in(folder: &Path) -> std::io::Result<Vec<PathBuf>> {
    let mut paths: Vec<PathBuf> = fs::read_dir(folder)?
        .filter_map(|entry| Some(entry.ok()?.path()))
        .filter(|path| path.extension().is_some_and(|extension| extension == "ron"))
        .collect();
    paths.sort();
    paths.truncate(MOST_JOBS);
    Ok(paths)
}

/// What finished jobs teach of one task.
#[derive(Debug, Clone, PartialEq)]
pub struct RateLearned {
    /// Id of the task.
    pub id: String,
    /// Its name.
    pub name: String,
    /// Minutes for a batch by the catalog.
    pub start: crate::measure::ThreePoint,
    /// What comes of the jobs.
    pub learned: crate::repair::Learned,
}

/// Weighs the catalog's rates against what each job's tasks took: minutes for a batch by task id.
pub fn learn_rates(catalog: &Catalog, jobs: &[Vec<(String, f64)>]) -> Vec<RateLearned> {
    let mut taken: BTreeMap<&str, Vec<f64>> = BTreeMap::new();
    for (id, minutes) in jobs.iter().flatten() {
        taken.entry(id).or_default().push(*minutes);
    }
    let learned = |task: &crate::repair::Task| {
        let minutes = taken.get(task.id.as_str())?;
        Some(RateLearned {
            id: task.id.clone(),
            name: task.name.clone(),
            start: task.minutes,
            learned: crate::repair::learn(task.minutes, task.kind, minutes)?,
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
                task.kind = crate::wood::Kind::CommonPractice;
                task.source = source(rate.learned.jobs);
            }
        }
    }
}
