//! The last stage: the answer out of everything else that was worked out.

use super::Assessment;
use super::InformativeReading;
use super::answer::{
    Advice, Answer, CallbackChance, CauseVerdict, FirstStep, InstallFigures, InstallFinding, Instead,
    MissingEntry, Quote, SealTime, date_after,
};
use super::options::RepairOption;
use super::sealing::ENOUGH_HOLDS;
use crate::belief::Cause;
use crate::job::{Job, Severity};
use crate::measure::{Length, Moisture, Percent};
use crate::repair::{MethodId, Outcome, Step};

/// With at most this chance of another callback a repair likely lasts.
const LIKELY_LASTS: f64 = 0.25;

/// A cause this likely needs no further reading.
const SETTLED: f64 = 0.95;

/// Readings of gaps in a section below which its mean is shaky, and in the whole job below which nothing is
/// recommended.
const FEW_GAPS: usize = 3;

/// The answer; `job` is the sanitized one.
pub(super) fn answer(job: &Job, assessment: &Assessment) -> Answer {
    let missing = missing(job, assessment);
    let first =
        |step| Answer { advice: Advice::NothingYet(step), missing: missing.clone(), ..Answer::default() };
    if assessment.layouts.iter().all(|laid| laid.boards.is_empty()) {
        return first(FirstStep::DrawBoards);
    }
    if !measured_enough(assessment) {
        return first(FirstStep::MeasureGaps);
    }
    let Some(chosen) = assessment.chosen() else {
        return first(FirstStep::FixProblems);
    };
    let least = assessment.choice.as_ref().filter(|choice| !choice.equal.contains(&chosen.method));
    // The one that disrupts least is named as cheaper only if it is.
    let cheaper = |method: &MethodId| {
        let expected = |method| assessment.option(method).and_then(|option| option.expected);
        expected(chosen.method).is_none_or(|own| expected(*method).is_some_and(|least| least < own))
    };
    let least = least.map(|choice| choice.best).filter(cheaper);
    let wet = assessment.sections.iter().filter(|state| state.is_wetted());
    Answer {
        advice: advice(job, assessment, chosen),
        when: seals(chosen.method).then(|| assessment.seal_time()),
        quote: quote(chosen),
        callback: chosen
            .callback
            .as_ref()
            .map(|risk| CallbackChance { chance: risk.chance, years: job.plan.warranty_years.max(1) }),
        wet_sections: wet.map(|state| (state.surface, state.section)).collect(),
        cause: cause(assessment),
        cheaper: least.filter(|least| *least != chosen.method),
        missing,
        lasts: lasts(job, assessment, chosen),
    }
}

/// Whether so many gaps are known between them, over all sections, that they say something of the rest; in a
/// drawing of fewer joints, all of them.
pub(super) fn measured_enough(assessment: &Assessment) -> bool {
    let measured = assessment.joints.iter().filter(|joint| joint.gap.is_some_and(|gap| gap.measured)).count();
    measured > 0 && measured >= FEW_GAPS.min(assessment.joints.len())
}

/// Whether the time of sealing is the answer's to say.
const fn seals(method: MethodId) -> bool {
    matches!(method, MethodId::Reseal | MethodId::ResealOnTongue)
}

/// With at least this chance of another callback a repair is advised against.
const ADVISED_AGAINST: f64 = 0.5;

impl Assessment {
    /// When the joints are sealed: on the day of the plan, or in the best weeks of this bead; where the day that all
    /// options are reckoned for lies outside of those, on that day.
    pub fn seal_time(&self) -> SealTime {
        let (job, day) = (&self.job, self.seal_day);
        match (job.plan.seal_on, &self.season) {
            // A day that is past is no plan; then the best weeks count.
            (Some(date), _) if date >= job.visited => SealTime::On(date),
            (_, None) => SealTime::AnyTime,
            (_, Some(season)) => match SealTime::best(job, season) {
                SealTime::Between(..) if !(season.best.low * 7..season.best.high * 7 + 7).contains(&day) => {
                    SealTime::On(date_after(job, day))
                }
                best => best,
            },
        }
    }

    /// The reading that would settle the cause, where it is not settled.
    pub fn settling_reading(&self) -> Option<InformativeReading> {
        self.causes.as_ref().filter(|causes| causes.main().1 < SETTLED)?.most_informative
    }

    /// Whether an option is advised against: it can't be done here, or is more likely than not to bring the
    /// crew back. To leave the joints alone is nobody's repair, and is not.
    pub fn advises_against(&self, option: &RepairOption) -> bool {
        let mends = option.outcome != Outcome::Unchanged;
        let fails = option.callback.as_ref().is_some_and(|risk| risk.chance >= ADVISED_AGAINST);
        mends && (option.not_possible.is_some() || fails)
    }
}

fn lasts(job: &Job, assessment: &Assessment, chosen: &RepairOption) -> bool {
    chosen.not_possible.is_none()
        && chosen.holds.is_none_or(|share| share >= ENOUGH_HOLDS)
        && chosen.callback.as_ref().is_none_or(|risk| risk.chance <= LIKELY_LASTS)
        && !(chosen.holds.is_some() && assessment.opens_wider_than(job.plan.callback.widest))
}

/// The price of an option in short; what cannot be done has none.
fn quote(option: &RepairOption) -> Option<Quote> {
    let (price, days) = (option.price.as_ref()?, option.schedule.crew_days);
    Some(Quote { total: price.total, spread: price.spread, crew_days: (days > 0).then_some(days) })
}

fn advice(job: &Job, assessment: &Assessment, option: &RepairOption) -> Advice {
    if let Some(reason) = option.not_possible {
        return Advice::NotPossible(reason);
    }
    match option.method {
        method if seals(method) => reseal(job, assessment, option),
        MethodId::Replace => Advice::Replace {
            dried_to: room_mean(assessment),
            calendar_days: option.schedule.calendar_days,
            opens_to: option.opens_to,
        },
        _ => Advice::AsChosen,
    }
}

fn reseal(job: &Job, assessment: &Assessment, option: &RepairOption) -> Advice {
    let share = option.holds.unwrap_or(0.0);
    // Down to whole per cents: 89.9 % is not nine tenths.
    let holds = Percent::pct((share * 100.0).floor());
    if share >= ENOUGH_HOLDS {
        return Advice::Reseal { holds };
    }
    if assessment.most_too_narrow() {
        return Advice::TooNarrow { narrowest: job.plan.narrowest };
    }
    let least = assessment.best().map(|option| option.method);
    let instead = match (assessment.better_sealant, least.filter(|least| *least != MethodId::Reseal)) {
        (Some(better), _) => Instead::Sealant(better),
        (None, Some(least)) => Instead::Method(least),
        (None, None) => Instead::Unknown,
    };
    Advice::ResealFails { holds, instead }
}

/// Mean over the sections of the moisture that the room keeps.
fn room_mean(assessment: &Assessment) -> Moisture {
    let means: Vec<f64> = assessment.sections.iter().map(|state| state.settled.mean().to_pct()).collect();
    let count = f64::from(u32::try_from(means.len()).unwrap_or(1).max(1));
    Moisture::pct(means.iter().sum::<f64>() / count)
}

/// The likeliest account, then what the wood says of the install.
fn cause(assessment: &Assessment) -> Option<CauseVerdict> {
    let causes = assessment.causes.as_ref()?;
    let (main, chance) = causes.main();
    let section = causes.wetted_section.map(|at| &assessment.sections[at]);
    Some(CauseVerdict {
        main,
        chance,
        section: section.map(|state| (state.surface, state.section)),
        bonded: causes.of(Cause::BondedGroups) > 0.5,
        install: install(assessment, main, causes.of(Cause::WetAtInstall)),
    })
}

/// What the gaps say of the install, with the main cause and the chance that boards were wet.
fn install(assessment: &Assessment, main: Cause, wet: f64) -> Option<InstallFinding> {
    let state = assessment.speaking_section()?;
    let origin = state.origin?;
    let figures =
        InstallFigures { moisture: origin.moisture, interval: origin.interval, room: state.settled.mean() };
    let contradicted = wet < 0.5 && origin.interval.low > state.settled.extremes().1;
    Some(match main {
        Cause::FramingMoved => InstallFinding::LineMoved,
        _ if contradicted => InstallFinding::Contradicted(figures),
        Cause::WettedAndDried => InstallFinding::OtherBoards(figures),
        // What nobody noted a stamp of is held against none.
        _ => {
            let stamped = !assessment.job.received.stamp.trim().is_empty();
            InstallFinding::Boards(figures, state.against_marks.filter(|_| stamped))
        }
    })
}

/// What would make the answer firmer, most useful first.
fn missing(job: &Job, assessment: &Assessment) -> Vec<MissingEntry> {
    let mut wanted = Vec::new();
    if job.surfaces.is_empty() {
        wanted.push(MissingEntry::Surface);
    }
    let errors = assessment.problems.iter().filter(|p| p.severity == Severity::Error).count();
    if errors > 0 {
        wanted.push(MissingEntry::WrongEntries(errors));
    }
    wanted.extend(assessment.doubted_gaps().next().map(MissingEntry::DoubtedGap));
    // Once the work is done nothing is measured for it any more.
    if job.done.finished.is_some() {
        return wanted;
    }
    let placed = job.air.is_placed(&assessment.catalog.stations);
    if !job.surfaces.is_empty() && !placed {
        wanted.push(MissingEntry::Place);
    }
    for state in &assessment.sections {
        let enough = FEW_GAPS.min(state.gaps.joints);
        if state.gaps.measured < enough {
            let more = enough - state.gaps.measured;
            wanted.push(MissingEntry::Gaps { surface: state.surface, section: state.section, more });
        }
    }
    // A gap that settles the cause may be among those that are short anyway.
    let asked = |reading: &InformativeReading| {
        matches!(*reading, InformativeReading::Gap { surface, section } if wanted.iter().any(|entry| {
            matches!(entry, MissingEntry::Gaps { surface: s, section: t, .. } if (*s, *t) == (surface, section))
        }))
    };
    let settling = assessment.settling_reading().filter(|reading| !asked(reading));
    wanted.extend(settling.map(MissingEntry::ForTheCause));
    if !job.surfaces.is_empty() {
        if job.survey.moistures.iter().all(|reading| reading.reading.is_none()) {
            wanted.push(MissingEntry::Moisture);
        }
        if job.installed.is_none() {
            wanted.push(MissingEntry::InstallDate);
        }
    }
    let lead_safe = |option: &RepairOption| {
        option.steps.iter().any(|step| matches!(step, Step::Do(task) if task == "lead_contain"))
    };
    if job.built.is_none() && assessment.chosen().is_some_and(lead_safe) {
        wanted.push(MissingEntry::YearBuilt);
    }
    if assessment.payers_open() {
        wanted.push(MissingEntry::Payers);
    }
    let timed = job.plan.trial.as_ref().is_some_and(|trial| trial.minutes.is_some());
    if !timed && assessment.treated_run() > Length::ZERO {
        wanted.push(MissingEntry::TimedSection);
    }
    wanted
}
