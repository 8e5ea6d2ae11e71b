//! What the command line says besides the answer.

use super::{Arg, Words, say};
use crate::job::RateLearned;
use crate::measure::{Minutes, Percent};

/// Nothing is wrong with a job.
pub fn no_problems(words: &Words) -> String {
    say!(words, "command-line-no-problems")
}

/// How many jobs of a folder are done.
pub fn progress(words: &Words, done: usize, all: usize) -> String {
    say!(words, "command-line-progress", done = done, all = all)
}

/// How many jobs of a folder say what their work took.
pub fn finished_jobs(words: &Words, finished: usize, all: usize) -> String {
    say!(words, "command-line-finished-jobs", finished = finished, all = all)
}

/// What finished jobs teach of one task.
pub fn learned_rate(words: &Words, rate: &RateLearned) -> String {
    let learned = &rate.learned;
    say!(
        words,
        "command-line-learned-rate",
        task = &rate.name,
        minutes = Minutes::of(learned.minutes.likely),
        start = Minutes::of(rate.start.mean()),
        jobs = learned.jobs,
        weight = Percent::pct((100.0 * learned.weight).round())
    )
}

/// The window cannot be opened; `reason` is what the system says.
pub fn no_window(words: &Words, reason: &str) -> String {
    say!(words, "command-line-no-window", reason = Arg::Name(reason))
}

/// There is no display, so the answer is printed.
pub fn no_display(words: &Words) -> String {
    say!(words, "command-line-no-display")
}
