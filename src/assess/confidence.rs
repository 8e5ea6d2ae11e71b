//! The verdict: the answer in three lines, as data. What to do, when, for how much and with what chance;
//! how sure that is, and why not surer; what would help most.
//!
//! It follows from what the stages before it found and computes nothing of its own, so that the window,
//! the command line and the JSON cannot tell different stories.

use jiff::ToSpan as _;
use jiff::civil::Date;

use super::answer::{Advice, FirstStep, MissingEntry, Quote, SealTime};
use super::{Assessment, RepairOption};
use crate::job::Severity;
use crate::measure::Span;
use crate::repair::MethodId;

/// Below this chance of its likeliest cause an answer is rough. Assumption.
const ROUGH_BELOW: f64 = 0.6;

/// From this chance of its likeliest cause on, the cause stands in no one's way. Assumption.
const SURE_FROM: f64 = 0.9;

/// An answer whose chance to last is known to within no better than this is rough, and one that is known
/// to within this is sure. Assumptions.
const ROUGH_OVER: f64 = 0.6;
const SURE_WITHIN: f64 = 0.25;

/// The answer in three lines.
#[derive(Debug, Clone, PartialEq)]
pub struct Verdict {
    /// What to do; `None` while there is not enough to go on.
    pub recommended: Option<Recommendation>,
    /// How sure that is.
    pub confidence: Confidence,
    /// What would make it surer than anything else; `None` where nothing is left.
    pub helps_most: Option<MissingEntry>,
    /// What must be there before there is a recommendation, first things first; empty with one.
    pub missing: Vec<MissingEntry>,
}

/// What to do, when, for how much, and the chance that it lasts.
#[derive(Debug, Clone, PartialEq)]
pub struct Recommendation {
    /// The repair option it speaks of.
    pub method: MethodId,
    /// What to do, with the figures that say so.
    pub advice: Advice,
    /// When to seal; `None` where nothing is sealed.
    pub when: Option<SealTime>,
    /// The first day of work, as planned.
    pub starts: Date,
    /// The day it was finished, once it was.
    pub finished: Option<Date>,
    /// What it costs and how many days it takes; `None` where it cannot be priced or done.
    pub quote: Option<Quote>,
    /// The chance that it lasts; `None` where nobody can tell.
    pub lasting: Option<LastingChance>,
    /// Sections into which water gets, as indices of surface and section: that comes first.
    pub wet_sections: Vec<(usize, usize)>,
    /// Another option that costs less with callbacks included.
    pub cheaper: Option<MethodId>,
    /// Whether it will likely last.
    pub lasts: bool,
}

/// The chance that a repair brings no callback within the warranty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LastingChance {
    /// The chance, 0 to 1.
    pub chance: f64,
    /// Where it lies nine times in ten, by what is not known of the house and its boards.
    pub interval: Span<f64>,
    /// The chance if paint never cracked over a sound bead.
    pub with_sound_paint: f64,
    /// The last day of the warranty.
    pub until: Date,
}

/// How sure an answer is, with the reason why it is not surer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Confidence {
    /// There is no recommendation yet.
    NotYet(FirstStep),
    /// It may well change.
    Rough(Doubt),
    /// It will hardly change.
    FairlySure(Doubt),
    /// Nothing that was left out would change it.
    Sure,
}

impl Confidence {
    /// Its key in message catalogs and in JSON.
    pub const fn key(self) -> &'static str {
        match self {
            Self::NotYet(_) => "not_yet",
            Self::Rough(_) => "rough",
            Self::FairlySure(_) => "fairly_sure",
            Self::Sure => "sure",
        }
    }

    /// What keeps it from being surer.
    pub const fn doubt(self) -> Option<Doubt> {
        match self {
            Self::Rough(doubt) | Self::FairlySure(doubt) => Some(doubt),
            Self::NotYet(_) | Self::Sure => None,
        }
    }
}

/// What keeps an answer from being sure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Doubt {
    /// So many entries could not be used.
    WrongEntries(usize),
    /// So many gaps were likely meant otherwise than they were typed, and count as typed.
    DoubtedGaps(usize),
    /// Boards are wetter than the room makes them, in so many sections.
    WaterGetsIn(usize),
    /// Few gaps were measured in this section: indices of surface and section, and how many.
    FewGaps {
        /// Index of its surface.
        surface: usize,
        /// Index of the section on it.
        section: usize,
        /// How many were measured.
        measured: usize,
    },
    /// The cause is open: the likeliest has this chance, 0 to 1.
    CauseOpen(f64),
    /// The chance that it lasts is known to within so much only, 0 to 1: from low to high.
    ChanceWide(Span<f64>),
    /// It hangs on how far paint stretches, which nobody has measured.
    PaintDecides,
    /// Nobody said where the house is.
    NoPlace,
    /// The moisture of the boards was not metered.
    NoMeterReading,
    /// Meter, hygrometer and what is known of the room do not go together, so one of them is off.
    MeterUnlikeRoom,
    /// Nobody said when the boards were installed.
    NoInstallDate,
    /// The hours are those of the book, not timed here.
    HoursNotTimed,
}

impl Doubt {
    /// Its key in message catalogs and in JSON.
    pub const fn key(self) -> &'static str {
        match self {
            Self::WrongEntries(_) => "wrong_entries",
            Self::DoubtedGaps(_) => "doubted_gaps",
            Self::WaterGetsIn(_) => "water_gets_in",
            Self::FewGaps { .. } => "few_gaps",
            Self::CauseOpen(_) => "cause_open",
            Self::ChanceWide(_) => "chance_wide",
            Self::PaintDecides => "paint_decides",
            Self::NoPlace => "no_place",
            Self::NoMeterReading => "no_meter_reading",
            Self::MeterUnlikeRoom => "meter_unlike_room",
            Self::NoInstallDate => "no_install_date",
            Self::HoursNotTimed => "hours_not_timed",
        }
    }
}

impl Verdict {
    /// The verdict on what was assessed.
    pub fn of(assessment: &Assessment) -> Self {
        let answer = &assessment.answer;
        let chosen = assessment.chosen();
        let step = match (answer.advice, chosen) {
            (Advice::NothingYet(step), _) => Some(step),
            // Without the room's year nothing says where the boards go from here.
            (_, None) => Some(FirstStep::FixProblems),
            _ if assessment.year.is_none() => Some(FirstStep::FixProblems),
            _ => None,
        };
        if let (None, Some(chosen)) = (step, chosen) {
            let confidence = confidence(assessment);
            // No entry helps where water has to be found first, nor against what nobody knows of paint.
            let leak = matches!(confidence, Confidence::Rough(Doubt::WaterGetsIn(_) | Doubt::PaintDecides));
            return Self {
                recommended: Some(recommendation(assessment, chosen)),
                confidence,
                helps_most: answer.missing.first().copied().filter(|_| !leak),
                missing: vec![],
            };
        }
        let step = step.unwrap_or(FirstStep::FixProblems);
        let missing = wanted_for(step, &answer.missing);
        Self {
            recommended: None,
            confidence: Confidence::NotYet(step),
            helps_most: missing.first().copied(),
            missing,
        }
    }
}

/// What of the missing entries a first step takes.
fn wanted_for(step: FirstStep, missing: &[MissingEntry]) -> Vec<MissingEntry> {
    let wanted = |entry: &&MissingEntry| match step {
        FirstStep::DrawBoards => matches!(entry, MissingEntry::Surface | MissingEntry::WrongEntries(_)),
        FirstStep::MeasureGaps => matches!(
            entry,
            MissingEntry::Gaps { .. } | MissingEntry::DoubtedGap(_) | MissingEntry::WrongEntries(_)
        ),
        FirstStep::FixProblems => matches!(entry, MissingEntry::WrongEntries(_)),
    };
    missing.iter().filter(wanted).copied().collect()
}

fn recommendation(assessment: &Assessment, chosen: &RepairOption) -> Recommendation {
    let answer = &assessment.answer;
    // What cannot be done, or has nothing to grip, needs no price and no chance.
    let done = !matches!(answer.advice, Advice::NotPossible(_) | Advice::TooNarrow { .. });
    let years = i64::from(assessment.job.plan.warranty_years.max(1));
    let ends = chosen.starts.checked_add(i64::from(chosen.schedule.calendar_days).days());
    let until = ends.and_then(|day| day.checked_add(years.years())).unwrap_or(chosen.starts);
    let lasting = chosen.callback.as_ref().map(|risk| LastingChance {
        chance: 1.0 - risk.chance,
        interval: Span { low: 1.0 - risk.interval.high, high: 1.0 - risk.interval.low },
        with_sound_paint: 1.0 - risk.without_paint,
        until,
    });
    Recommendation {
        method: chosen.method,
        advice: answer.advice,
        when: answer.when,
        starts: chosen.starts,
        finished: assessment.job.done.finished,
        quote: answer.quote.filter(|_| done),
        lasting: lasting.filter(|_| done),
        wet_sections: answer.wet_sections.clone(),
        cheaper: answer.cheaper.filter(|_| assessment.job.done.finished.is_none()),
        lasts: answer.lasts,
    }
}

/// How sure the answer is: the gravest doubt says.
fn confidence(assessment: &Assessment) -> Confidence {
    let answer = &assessment.answer;
    let errors = assessment.problems.iter().filter(|problem| problem.severity == Severity::Error).count();
    if errors > 0 {
        return Confidence::Rough(Doubt::WrongEntries(errors));
    }
    let doubted = assessment.doubted_gaps().count();
    if doubted > 0 {
        return Confidence::Rough(Doubt::DoubtedGaps(doubted));
    }
    if !answer.wet_sections.is_empty() {
        return Confidence::Rough(Doubt::WaterGetsIn(answer.wet_sections.len()));
    }
    let of_gaps = answer.missing.iter().filter_map(|entry| match *entry {
        MissingEntry::Gaps { surface, section, .. } => {
            let measured = assessment.section(surface, section).map_or(0, |state| state.gaps.measured);
            Some((measured, Doubt::FewGaps { surface, section, measured }))
        }
        _ => None,
    });
    // What few gaps leave open is in the range of the chance; a section nobody measured is a guess.
    let few = of_gaps.min_by_key(|(measured, _)| *measured).map(|(_, doubt)| doubt);
    if let Some(none @ Doubt::FewGaps { measured: 0, .. }) = few {
        return Confidence::Rough(none);
    }
    let likeliest = assessment.causes.as_ref().map_or(0.0, |causes| causes.main().1);
    if likeliest < ROUGH_BELOW {
        return Confidence::Rough(Doubt::CauseOpen(likeliest));
    }
    let lacks = |wanted: MissingEntry| answer.missing.contains(&wanted);
    if lacks(MissingEntry::Place) {
        return Confidence::Rough(Doubt::NoPlace);
    }
    let risk = assessment.chosen().and_then(|option| option.callback.as_ref());
    let without_paint =
        risk.map_or(0.0, |risk| risk.without_paint_interval.high - risk.without_paint_interval.low);
    let lasting = assessment.chosen().and_then(|option| option.callback.as_ref());
    let lasting = lasting.map(|risk| Span { low: 1.0 - risk.interval.high, high: 1.0 - risk.interval.low });
    let width = lasting.map_or(0.0, |lasting| lasting.high - lasting.low);
    let wide = match without_paint <= 0.5 * width {
        true => Doubt::PaintDecides,
        false => Doubt::ChanceWide(lasting.unwrap_or(Span { low: 0.0, high: 1.0 })),
    };
    let conflicts = assessment.belief.as_ref().is_some_and(|belief| !belief.conflicts.is_empty());
    if width > ROUGH_OVER {
        // A contradiction can be looked into; that much is open cannot.
        return Confidence::Rough(if conflicts { Doubt::MeterUnlikeRoom } else { wide });
    }
    let doubts = [
        (conflicts, Doubt::MeterUnlikeRoom),
        (width > SURE_WITHIN, wide),
        (likeliest < SURE_FROM, Doubt::CauseOpen(likeliest)),
        (few.is_some(), few.unwrap_or(wide)),
        (lacks(MissingEntry::Moisture), Doubt::NoMeterReading),
        (lacks(MissingEntry::InstallDate), Doubt::NoInstallDate),
        (lacks(MissingEntry::TimedSection), Doubt::HoursNotTimed),
    ];
    let doubt = doubts.into_iter().find_map(|(here, doubt)| here.then_some(doubt));
    doubt.map_or(Confidence::Sure, Confidence::FairlySure)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::assess::assess;
    use crate::job::{Catalog, Job, demo_job};
    use crate::measure::Length;

    /// The least number of gaps that a recommendation rests on.
    const FEW_GAPS_OF_A_JOB: usize = 3;

    fn of(job: Job) -> Verdict {
        Verdict::of(&assess(job, Catalog::built_in()))
    }

    #[test]
    fn an_empty_job_gets_no_recommendation_and_is_told_what_is_missing() {
        let verdict = of(Job::default());
        assert_eq!(verdict.recommended, None);
        assert_eq!(verdict.confidence, Confidence::NotYet(FirstStep::DrawBoards));
        assert_eq!(verdict.missing, [MissingEntry::Surface]);
    }

    #[test]
    fn one_gap_is_not_enough_and_three_are() {
        let mut job = demo_job();
        let (surface, joints) = (job.survey.gaps[0].surface.clone(), job.survey.gaps.clone());
        job.survey.gaps.truncate(1);
        let verdict = of(job.clone());
        assert_eq!(verdict.recommended, None, "one gap says nothing of the rest");
        assert!(matches!(verdict.helps_most, Some(MissingEntry::Gaps { .. })), "{verdict:?}");
        job.survey.gaps = joints.into_iter().filter(|gap| gap.surface == surface).collect();
        let verdict = of(job);
        assert!(verdict.recommended.is_some() && verdict.missing.is_empty());
        assert!(matches!(verdict.confidence, Confidence::Rough(Doubt::FewGaps { .. })), "{verdict:?}");
    }

    /// As many gaps as are enough may be spread over sections that each have too few for a mean of their own.
    #[test]
    fn gaps_spread_over_sections_are_worth_as_much_as_in_one() {
        let mut job = demo_job();
        let mut seen = std::collections::BTreeMap::<(String, char), usize>::new();
        job.survey.gaps.retain(|gap| {
            let section = gap.joint.chars().next().unwrap_or_default();
            let count = seen.entry((gap.surface.clone(), section)).or_default();
            *count += 1;
            *count <= 1
        });
        let sections = job.survey.gaps.len();
        assert!(sections >= FEW_GAPS_OF_A_JOB, "{sections}");
        let verdict = of(job.clone());
        assert!(verdict.recommended.is_some(), "{verdict:?}");
        job.survey.gaps.truncate(FEW_GAPS_OF_A_JOB - 1);
        let found = assess(job, Catalog::built_in());
        assert_eq!(Verdict::of(&found).recommended, None);
        // What has no recommendation is no answer to write papers of either.
        assert!(!found.answer.is_complete());
    }

    #[test]
    fn a_gap_that_was_likely_meant_otherwise_keeps_the_answer_rough_until_somebody_says_so() {
        let mut job = demo_job();
        job.survey.gaps[0].width = Length::inches(1.0);
        let verdict = of(job.clone());
        assert_eq!(verdict.confidence, Confidence::Rough(Doubt::DoubtedGaps(1)));
        let Some(MissingEntry::DoubtedGap(doubted)) = verdict.helps_most else { panic!("{verdict:?}") };
        assert_eq!((doubted.index, doubted.meant), (0, Length::inches(0.125)));
        // It never stops: there is an answer all the same.
        assert!(verdict.recommended.is_some());
        job.survey.gaps[0].confirmed = Some(Length::inches(1.0));
        assert_ne!(of(job).confidence, Confidence::Rough(Doubt::DoubtedGaps(1)));
    }

    #[test]
    fn what_is_lacking_lowers_the_confidence_and_never_raises_it() {
        let rank = |confidence: Confidence| match confidence {
            Confidence::NotYet(_) => 0,
            Confidence::Rough(_) => 1,
            Confidence::FairlySure(_) => 2,
            Confidence::Sure => 3,
        };
        let whole = rank(of(demo_job()).confidence);
        assert!(whole >= 1, "the demo is measured");
        let lesser: [fn(&mut Job); 4] = [
            |job| job.survey.moistures.clear(),
            |job| job.installed = None,
            |job| job.plan.trial = None,
            |job| job.survey.gaps.clear(),
        ];
        for (at, take) in lesser.into_iter().enumerate() {
            let mut job = demo_job();
            take(&mut job);
            assert!(rank(of(job).confidence) <= whole, "{at}");
        }
    }

    #[test]
    fn the_price_and_the_chance_are_those_of_the_chosen_option() {
        let found = assess(demo_job(), Catalog::built_in());
        let recommended = Verdict::of(&found).recommended.expect("the demo has an answer");
        let chosen = found.chosen().expect("an option is chosen");
        assert_eq!(recommended.method, chosen.method);
        assert_eq!(recommended.quote.map(|quote| quote.total), Some(chosen.total()));
        let lasting = recommended.lasting.expect("beads can fail");
        assert!((lasting.chance + chosen.callback.as_ref().expect("so").chance - 1.0).abs() < 1e-12);
        assert!(lasting.interval.low <= lasting.chance && lasting.chance <= lasting.interval.high);
        assert!(lasting.until > chosen.starts);
    }
}
