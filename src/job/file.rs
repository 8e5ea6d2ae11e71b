//! Job files: loading what can be read, saving without ever losing the old file.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use serde::Deserialize;

use super::catalog::Catalog;
use super::document::{Job, VERSION};
use super::json_text::{self, JSON, is_json};
use super::lenient;
use super::line_ids;
use super::price_file::read_prices;
use super::problem::{FileFault, Place, Problem};
use super::ron_text::{self, RON, lenient};
use super::storage::{read_text, save_text};
use super::unknown;

pub use super::storage::{LoadError, SaveError, write_whole};

/// A job that was loaded, with what could not be.
#[derive(Debug, Clone, PartialEq)]
pub struct Loaded {
    /// The job.
    pub job: Job,
    /// What could not be read, with its place in the file. If there is any, saving over the file
    /// would lose it.
    pub problems: Vec<Problem>,
}

/// Loads a job.
///
/// A broken file gives what can be read of it and a list of what was left out.
///
/// # Errors
/// If nothing can be read: no such file, no text, too large, a price book, or from a newer program.
pub fn load(path: &Path) -> Result<Loaded, LoadError> {
    let text = read_text(path)?;
    if read_prices(&text).is_ok_and(|catalog| catalog.taken.is_some()) {
        return Err(LoadError::PriceBook { path: path.to_owned() });
    }
    read(&text).map_err(|found| LoadError::Newer { path: path.to_owned(), found })
}

/// Reads a job from text.
///
/// # Errors
/// The version, if it is newer than [`VERSION`].
pub fn read(text: &str) -> Result<Loaded, u32> {
    let found = version(text);
    if found > VERSION {
        return Err(found);
    }
    let format = if is_json(text) { &JSON } else { &RON };
    let (mut job, mut cuts) = lenient::read(text, format);
    // Whatever it was written by, in memory it is of the present form.
    job.version = VERSION;
    line_ids::renew(&mut job, Catalog::built_in());
    // What a newer program or a hand has added is kept, and written again.
    let kept = cuts.extract_if(.., |cut| cut.unknown.is_some()).filter_map(|cut| cut.unknown);
    job.unknown = kept.flat_map(|field| unknown::read(&field)).collect();
    let problem = |cut: lenient::Cut| {
        let place = Place::File { line: cut.line, column: cut.column };
        Problem::new(place, FileFault::LeftOut { reason: cut.reason, text: cut.text })
    };
    Ok(Loaded { job, problems: cuts.into_iter().map(problem).collect() })
}

/// The version a text says it is of; the present one if it does not say.
fn version(text: &str) -> u32 {
    #[derive(Deserialize)]
    #[serde(rename = "Job", default)]
    struct Head {
        version: u32,
    }
    impl Default for Head {
        fn default() -> Self {
            Self { version: VERSION }
        }
    }
    let head = if is_json(text) { serde_json::from_str(text).ok() } else { lenient().from_str(text).ok() };
    if let Some(Head { version }) = head {
        return version;
    }
    // A broken file may still say it, in the first line that starts with the word.
    let said = |line: &str| {
        let rest = line.trim().strip_prefix("version").or_else(|| line.trim().strip_prefix("\"version\""));
        rest.and_then(|rest| rest.trim_start().strip_prefix(':')).map(str::to_owned)
    };
    text.lines()
        .find_map(said)
        .and_then(|rest| rest.trim().trim_end_matches(',').parse().ok())
        .unwrap_or(VERSION)
}

/// The job as the text of its file, in RON.
///
/// # Errors
/// If the job cannot be serialized.
pub fn write(job: &Job) -> Result<String, SaveError> {
    let text = ron_text::write(&Job { version: VERSION, ..job.clone() })?;
    Ok(ron_text::with_fields(text, &unknown::as_ron(&job.unknown)?))
}

/// The job as the text of its file, in JSON.
///
/// # Errors
/// If the job cannot be put into words.
pub fn write_json(job: &Job) -> Result<String, SaveError> {
    let written = json_text::write(&Job { version: VERSION, ..job.clone() }, unknown::as_json(&job.unknown));
    written.map_err(|error| SaveError::Unserializable(ron::Error::Message(error.to_string())))
}

/// Saves a job. The text goes to a temporary file beside it, is forced to disk, and takes the
/// file's name in one step; the version before is kept beside it as `NAME.bak`. A name that ends in
/// `.json` is written as JSON, any other as RON.
///
/// # Errors
/// If the system refuses; the file is then as it was.
pub fn save(job: &Job, path: &Path) -> Result<(), SaveError> {
    let text = if has_ending(path, "json") { write_json(job)? } else { write(job)? };
    save_text(&text, path)
}

/// Whether a file's name ends so, in capitals or not.
fn has_ending(path: &Path, ending: &str) -> bool {
    path.extension().is_some_and(|extension| extension.eq_ignore_ascii_case(ending))
}

/// Jobs read at most from one folder.
const MOST_JOBS: usize = 2_000;

/// The jobs of a folder, RON and JSON, in the order of their files' names, with those that cannot be read left
/// out.
///
/// # Errors
/// If the folder itself cannot be read.
pub fn jobs_in(folder: &Path) -> io::Result<Vec<(PathBuf, Job)>> {
    let jobs = job_files_in(folder)?.into_iter().filter_map(|path| {
        let job = load(&path).ok()?.job;
        Some((path, job))
    });
    Ok(jobs.collect())
}

/// The files of a folder that are jobs by their ending, in the order of their names.
///
/// # Errors
/// If the folder itself cannot be read.
pub fn job_files_in(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut paths: Vec<PathBuf> = fs::read_dir(folder)?
        .filter_map(|entry| Some(entry.ok()?.path()))
        .filter(|path| has_ending(path, "ron") || has_ending(path, "json"))
        .collect();
    paths.sort();
    paths.truncate(MOST_JOBS);
    Ok(paths)
}
