//! A table of all jobs in a folder, and rates learned from finished ones.

use std::path::Path;
use std::sync::atomic::{AtomicUsize, Ordering};

use rayon::prelude::*;

use super::opened::{Opened, file_name, job_files, plain_words};
use super::{Outcome, print};
use crate::assess::taken;
use crate::export::plain_text;
use crate::job::{Catalog, Lessons, PriceBook, Taken, jobs_in, save_prices};
use crate::words::{Arg, Say as _, answer, learned_rate_source, say, unreadable_file};

/// The heads of the table: keys, the same in every language.
const HEADS: [&str; 8] =
    ["file", "title", "cause", "chosen", "price", "least_with_callbacks", "errors", "answer"];

/// Assesses every job of a folder, side by side, and prints a table with a line for each. A file that
/// cannot be read is told on standard error and left out.
pub(super) fn assess_folder(folder: &Path) -> Result<Outcome, String> {
    let files = job_files(folder)?;
    let done = AtomicUsize::new(0);
    let line = |path: &std::path::PathBuf| {
        let opened = Opened::load(path);
        let count = done.fetch_add(1, Ordering::Relaxed) + 1;
        if count.is_multiple_of(10) || count == files.len() {
            eprintln!("{}", say!(plain_words(), "command-line-progress", count = count, all = files.len()));
        }
        opened.map(|opened| (row(path, &opened), opened.errors() > 0))
    };
    let lines: Vec<_> = files.par_iter().map(line).collect();
    let mut table = csv::Writer::from_writer(vec![]);
    let mut faulty = false;
    table.write_record(HEADS).map_err(|error| error.to_string())?;
    for line in lines {
        match line {
            Ok((record, wrong)) => {
                faulty |= wrong;
                table.write_record(record).map_err(|error| error.to_string())?;
            }
            Err(message) => {
                faulty = true;
                eprintln!("{message}");
            }
        }
    }
    let bytes = table.into_inner().map_err(|error| error.to_string())?;
    print(&String::from_utf8_lossy(&bytes))?;
    Ok(if faulty { Outcome::Faulty } else { Outcome::Good })
}

fn row(path: &Path, opened: &Opened) -> [String; 8] {
    let assessment = &opened.assessment;
    let chosen = assessment.chosen();
    [
        plain_text(&file_name(path)).into_owned(),
        plain_text(&assessment.job.title).into_owned(),
        assessment.causes.as_ref().map_or_else(String::new, |causes| causes.main().0.key().to_owned()),
        chosen.map_or_else(String::new, |option| option.method.key()),
        chosen.and_then(|option| option.price.as_ref()).map_or_else(String::new, |price| price.total.plain()),
        assessment.best().map_or_else(String::new, |option| option.method.key()),
        opened.errors().to_string(),
        plain_text(&answer::headline(assessment, &opened.words())).into_owned(),
    ]
}

/// Prints the rates that the finished jobs of a folder teach; writes them to a price file, if one is
/// named.
pub(super) fn rates(folder: &Path, out: Option<&Path>) -> Result<Outcome, String> {
    let (catalog, words) = (Catalog::built_in(), plain_words());
    let jobs = jobs_in(folder).map_err(|error| unreadable_file(&words, folder, &error))?;
    let taken: Vec<Taken> =
        jobs.iter().map(|(_, job)| taken(job, catalog)).filter(|taken| !taken.is_empty()).collect();
    let learned = Lessons::of(catalog, &taken);
    print(&format!("{}\n", say!(words, "command-line-finished", finished = taken.len(), all = jobs.len())))?;
    for rate in &learned.rates {
        let line = say!(
            words,
            "command-line-rate",
            task = &rate.id,
            minutes = Arg::Number(rate.learned.minutes.likely, 1),
            start = Arg::Number(rate.start.mean(), 1),
            jobs = rate.learned.jobs,
            weight = crate::measure::Percent::pct((100.0 * rate.learned.weight).round()),
        );
        print(&format!("{line}\n"))?;
    }
    for learned in &learned.waste {
        let line = say!(
            words,
            "command-line-waste",
            material = &learned.id,
            waste = learned.waste,
            start = learned.start,
            jobs = learned.jobs
        );
        print(&format!("{line}\n"))?;
    }
    if let Some(path) = out {
        let mut own = PriceBook::of(catalog, jiff::ZonedDateTime::now().date());
        own.take(&learned, |jobs| learned_rate_source(&words, jobs));
        save_prices(&own, path).map_err(|error| error.say(&words))?;
    }
    Ok(Outcome::Good)
}
