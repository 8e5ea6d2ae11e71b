//! The work: what a batch of a task is, and the section that was timed.

use super::{Arg, Say, Words, say};
use crate::assess::TimedWork;
use crate::measure::{Area, Dimension, Hours, Length};
use crate::repair::TaskHours;

/// What a batch of a task is, in a sentence.
pub fn batch(task: &TaskHours, words: &Words) -> String {
    let (per, amount) = task.batch;
    let (run, area) = match per.dimension() {
        Dimension::Length => (Length::m(amount), Area::ZERO),
        Dimension::Area => (Length::ZERO, Area::m2(amount)),
        Dimension::Number | Dimension::Volume => (Length::ZERO, Area::ZERO),
    };
    // A plural form is chosen by a count. Sections of a batch are a few.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "held to what fits")]
    let sections = amount.round().clamp(1.0, 1e6) as u32;
    let (per, run) = (Arg::Id(per.key()), Arg::Run(run));
    say!(words, "price-task-batch", per = per, run = run, area = area, sections = sections)
}

impl Say for TimedWork<'_> {
    /// In two sentences.
    fn say(&self, words: &Words) -> String {
        let all = self.task.hours.mean;
        let (low, high) = ((all - self.within).max(Hours::ZERO), all + self.within);
        say!(
            words,
            "price-timed-work",
            task = &self.task.name,
            all = all,
            left = self.left,
            low = low,
            high = high
        )
    }
}
