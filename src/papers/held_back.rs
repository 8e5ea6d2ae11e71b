//! Which papers cannot be stood for, and why: those that depend on an entry that couldn't be used, and those of
//! which there is nothing to say yet. They are not written, or only as drafts, with the reason on every page.

use jiff::civil::Date;

use super::Paper;
use crate::assess::Assessment;
use crate::job::{Place, Problem, Severity};
use crate::words::{Arg, Words, say};

/// So many entries are named on a draft.
const NAMED: usize = 3;

/// Why a paper is held back.
#[derive(Debug, Clone, PartialEq)]
pub enum HeldBack {
    /// These problems are of entries that it depends on.
    Errors(Vec<Problem>),
    /// There is not enough to go on yet.
    Incomplete,
    /// No gap was measured.
    NothingMeasured,
    /// There are no boards up yet.
    NoBoards,
    /// The work was finished on this day: there is nothing to offer any more.
    Finished(Date),
    /// It is open who pays.
    PayersOpen,
    /// A joint was measured again on this day: what was offered counts from an older visit.
    MeasuredAgain(Date),
}

impl HeldBack {
    /// What marks the pages of a draft.
    pub(super) fn mark(&self, assessment: &Assessment, words: &Words) -> String {
        match self {
            Self::Errors(errors) => {
                let places: Vec<String> =
                    errors.iter().take(NAMED).map(|error| error.place(&assessment.job, words)).collect();
                let places = Arg::Names(places.iter().map(String::as_str).collect());
                say!(words, "paper-draft-errors", count = errors.len(), places = places)
            }
            Self::Incomplete => say!(words, "paper-draft-incomplete"),
            Self::NothingMeasured => say!(words, "paper-draft-nothing-measured"),
            Self::NoBoards => say!(words, "paper-draft-no-boards"),
            Self::PayersOpen => say!(words, "paper-draft-payers-open"),
            Self::Finished(on) => say!(words, "paper-draft-finished", on = *on),
            Self::MeasuredAgain(on) => say!(words, "paper-draft-measured-again", on = *on),
        }
    }

    /// Why it is not written, a line for each reason.
    pub fn reasons(&self, assessment: &Assessment, words: &Words) -> Vec<String> {
        match self {
            Self::Errors(errors) => errors.iter().map(|error| error.line(&assessment.job, words)).collect(),
            Self::Incomplete => vec![say!(words, "paper-held-incomplete")],
            Self::NothingMeasured => vec![say!(words, "paper-held-nothing-measured")],
            Self::NoBoards => vec![say!(words, "paper-held-no-boards")],
            Self::PayersOpen => vec![say!(words, "paper-held-payers-open")],
            Self::Finished(on) => vec![say!(words, "paper-held-finished", on = *on)],
            Self::MeasuredAgain(on) => vec![say!(words, "paper-held-measured-again", on = *on)],
        }
    }
}

/// Why `paper` is held back, if it is. `unread` is what could not be read of the job's file.
pub fn held_back(paper: Paper, assessment: &Assessment, unread: &[Problem]) -> Option<HeldBack> {
    let depends = |problem: &&Problem| problem.severity == Severity::Error && depends_on(paper, problem);
    let errors: Vec<Problem> = unread.iter().chain(&assessment.problems).filter(depends).cloned().collect();
    if !errors.is_empty() {
        return Some(HeldBack::Errors(errors));
    }
    if assessment.job.surfaces.is_empty() {
        return Some(HeldBack::NoBoards);
    }
    let measured = || assessment.joints.iter().any(|joint| joint.gap.is_some_and(|gap| gap.measured));
    match paper {
        Paper::Letter | Paper::Proposal if outdated(assessment).is_some() => outdated(assessment),
        Paper::MeasuringSheet => None,
        Paper::EvidenceSheet | Paper::FollowUpCard | Paper::FollowUpReport => {
            (!measured()).then_some(HeldBack::NothingMeasured)
        }
        _ if !assessment.answer.is_complete() => Some(HeldBack::Incomplete),
        // What is signed says who pays.
        Paper::Proposal => assessment.payers_open().then_some(HeldBack::PayersOpen),
        _ => None,
    }
}

/// Why an offer would be one of the past.
fn outdated(assessment: &Assessment) -> Option<HeldBack> {
    let again = assessment.follow_up.iter().filter(|visit| !visit.readings.is_empty()).map(|visit| visit.on);
    let finished = assessment.job.done.finished.map(HeldBack::Finished);
    finished.or_else(|| again.max().map(HeldBack::MeasuredAgain))
}

/// Whether anything on the paper follows from the entry that a problem is about. What is not an entry may be
/// anything.
fn depends_on(paper: Paper, problem: &Problem) -> bool {
    let field = match problem.place {
        Place::Field(field, _) => field,
        Place::File { .. } | Place::WholeFile => return true,
    };
    let part = field.path.split(['.', '[', '|']).next().unwrap_or_default();
    match part {
        "surfaces" => true,
        // The plan and its prices make the repair, its days and what it costs.
        "plan" | "shelf" => !matches!(
            paper,
            Paper::MeasuringSheet | Paper::EvidenceSheet | Paper::FollowUpCard | Paper::FollowUpReport
        ),
        "contractor" | "wording" | "proposal" => matches!(paper, Paper::Letter | Paper::Proposal),
        "done" | "later" => matches!(paper, Paper::FollowUpCard | Paper::FollowUpReport),
        "next_install" => false,
        // Readings, air and dates: everything but the sheet for reading anew.
        _ => paper != Paper::MeasuringSheet,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::assess::assess;
    use crate::job::{Catalog, Job, demo_job};
    use crate::measure::{Length, Percent};

    fn held(job: Job) -> Vec<Paper> {
        let found = assess(job, Catalog::built_in());
        Paper::ALL.into_iter().filter(|paper| held_back(*paper, &found, &[]).is_some()).collect()
    }

    #[test]
    fn an_error_holds_back_what_depends_on_it_and_nothing_else() {
        assert_eq!(held(demo_job()), []);
        let mut priced = demo_job();
        priced.plan.prices.overhead = Percent::pct(900.0);
        let of_plan = [
            Paper::Letter,
            Paper::Proposal,
            Paper::PriceSheet,
            Paper::WorkOrder,
            Paper::CrewCard,
            Paper::BuyingList,
        ];
        assert_eq!(held(priced), of_plan);
        let mut read = demo_job();
        read.survey.gaps[2].width = Length::inches(40.0);
        let all_but_reading: Vec<Paper> =
            Paper::ALL.into_iter().filter(|paper| *paper != Paper::MeasuringSheet).collect();
        assert_eq!(held(read), all_but_reading);
        let mut drawn = demo_job();
        drawn.surfaces[0].outline.truncate(2);
        assert_eq!(held(drawn), Paper::ALL);
        assert_eq!(held(Job::default()), Paper::ALL);
        let mut unread = demo_job();
        unread.survey.gaps.clear();
        assert!(held(unread).contains(&Paper::EvidenceSheet));
    }
}
