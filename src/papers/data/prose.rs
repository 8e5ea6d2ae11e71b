//! What the assessment and the catalog say in their own words, in one place.

use crate::assess::{Assessment, ClueWords, Diagnosis, Missing, SectionState, odds_words, percent};
use crate::cause::Cause;
use crate::job::Problem;
use crate::repair::Priced;
use crate::survey::Failure;

/// What to do, when, for how much.
pub(super) fn headline(assessment: &Assessment) -> &str {
    &assessment.answer.headline
}

/// Why it happened.
pub(super) fn cause(assessment: &Assessment) -> &str {
    &assessment.answer.cause
}

/// What to enter or measure next.
pub(super) fn missing(missing: &Missing) -> String {
    missing.to_string()
}

/// What is wrong with an entry.
pub(super) fn problem(assessment: &Assessment, problem: &Problem) -> String {
    format!("{}: {}.", problem.place.words(&assessment.job), problem.what)
}

/// A chance as people say it.
pub(super) fn odds(chance: f64) -> String {
    odds_words(chance)
}

/// A chance in whole percent.
pub(super) fn chance(chance: f64) -> String {
    percent(chance)
}

/// The name of a cause.
pub(super) const fn cause_name(cause: Cause) -> &'static str {
    cause.words()
}

/// What a clue saw.
pub(super) fn clue(clue: &ClueWords) -> &str {
    &clue.seen
}

/// The reading that would tell most about the cause.
pub(super) fn next_reading(causes: &Diagnosis) -> Option<&String> {
    causes.most_informative_reading.as_ref().map(|(words, _)| words)
}

/// How the moisture at install compares with grade stamps.
pub(super) fn stamps(state: &SectionState) -> &str {
    &state.origin_words
}

/// How an old bead failed.
pub(super) const fn failure(failure: Failure) -> &'static str {
    failure.words()
}

/// A line of the price and how it comes about.
pub(super) fn price_line(priced: &Priced) -> (&'static str, &str) {
    (priced.line.words(), &priced.how)
}
