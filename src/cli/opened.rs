//! Jobs as the command line opens them: one, or all of a folder.

use std::path::{Path, PathBuf};

use crate::assess::{Assessment, assess_solved};
use crate::job::{Catalog, Job, Problem, Severity, file, job_files_in};
use crate::words::{Say as _, Words, answer, next_install, unreadable_file, verdict};

/// A job with its assessment and what could not be read of it.
pub(super) struct Opened {
    pub assessment: Assessment,
    pub unread: Vec<Problem>,
}

/// The words of the command line, where there is no job to say its units.
pub(super) fn plain_words() -> Words {
    Words::us_english(crate::measure::Units::default(), "$")
}

impl Opened {
    /// Opens a job and tells on standard error what could not be read of it.
    ///
    /// # Errors
    /// Why it cannot be read at all, in words.
    pub fn load(path: &Path) -> Result<Self, String> {
        let loaded = file::load(path).map_err(|error| error.say(&plain_words()))?;
        let opened = Self { unread: loaded.problems, ..Self::of(loaded.job) };
        for problem in &opened.unread {
            eprintln!("{}", opened.line(problem));
        }
        Ok(opened)
    }

    /// A job that is at hand.
    pub fn of(job: Job) -> Self {
        Self { assessment: assess_solved(job, Catalog::built_in()), unread: vec![] }
    }

    /// A problem in a line.
    pub fn line(&self, problem: &Problem) -> String {
        problem.line(&self.assessment.job, &self.words())
    }

    /// What could not be read, then what is wrong with the entries.
    pub fn problems(&self) -> impl Iterator<Item = &Problem> {
        self.unread.iter().chain(&self.assessment.problems)
    }

    /// How many entries could not be used.
    pub fn errors(&self) -> usize {
        self.problems().filter(|problem| problem.severity == Severity::Error).count()
    }

    /// US English in the job's units.
    pub fn words(&self) -> Words {
        Words::of_job(&self.assessment.job)
    }

    /// The verdict, why it happened, what is missing and what is wrong, a line each.
    pub fn answer(&self) -> String {
        let (assessment, words) = (&self.assessment, &self.words());
        let mut lines = vec![assessment.job.title.clone()];
        // Of a job that is about boards to come there is nothing else to say.
        if let Some(found) = assessment.next_install.as_deref().filter(|_| assessment.job.surfaces.is_empty())
        {
            lines.extend(next_install::lines(found, &assessment.job, assessment.sealant_name(), words));
            lines.extend(assessment.problems.iter().map(|problem| self.line(problem)));
            return lines.join("\n") + "\n";
        }
        lines.extend(verdict::lines(assessment, &assessment.verdict(), words));
        lines.push(answer::cause(assessment, words));
        let missing = assessment.answer.missing.iter();
        lines.extend(missing.map(|entry| format!("- {}", answer::missing(assessment, *entry, words))));
        lines.extend(assessment.problems.iter().map(|problem| self.line(problem)));
        lines.retain(|line| !line.is_empty());
        lines.join("\n") + "\n"
    }
}

/// The job files that are meant: the one named, or all of the folder named.
///
/// # Errors
/// Why the folder cannot be read, in words.
pub(super) fn job_files(path: &Path) -> Result<Vec<PathBuf>, String> {
    if !path.is_dir() {
        return Ok(vec![path.to_owned()]);
    }
    job_files_in(path).map_err(|error| unreadable_file(&plain_words(), path, &error))
}

/// The name of a job's file without its folder.
pub(super) fn file_name(path: &Path) -> String {
    path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default()
}
