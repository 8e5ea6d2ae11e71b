//! The answer in one plain sentence, and what is still missing to trust it.

use jiff::{ToSpan as _, civil::Date};

use super::Assessment;
use super::options::{RepairOption, sealed_joints};
use crate::cause::Cause;
use crate::job::{Catalog, Job, Severity};
use crate::joint::{Sealant, season};
use crate::measure::{Length, Span, show_date, show_number};
use crate::repair::MethodId;

/// Below this share of the joint length held, resealing is not advised.
const ENOUGH_HOLDS: f64 = 0.9;

/// With at most this chance of another callback a repair likely lasts.
const LIKELY_LASTS: f64 = 0.25;

/// A cause this likely needs no further reading.
const SETTLED: f64 = 0.95;

/// The weeks to seal in, where all are alike.
const ANY_TIME: &str = "at any time of the year";

/// Readings of gaps in a section below which its mean is shaky.
const FEW_GAPS: usize = 3;

/// The answer so far.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Answer {
    /// What to do, when, for how much: one or two sentences. What to enter next, while there is
    /// nothing to go on.
    pub headline: String,
    /// Why it happened, in a sentence; empty while unknown.
    pub cause: String,
    /// What to enter or measure next, most useful first.
    pub missing: Vec<Missing>,
    /// The way that costs least with callbacks, where it is not the chosen one.
    pub cheaper: Option<String>,
    /// Whether there is an answer at all.
    pub complete: bool,
    /// Whether what is chosen will likely last: it holds, and another callback is unlikely.
    pub lasts: bool,
}

/// Something that would make the answer firmer.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Missing {
    /// What, in a few words.
    pub words: String,
    /// Where it is entered.
    pub place: EntryPlace,
}

/// Where what is missing is entered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EntryPlace {
    /// Among the surfaces.
    Surfaces,
    /// At the entries marked as wrong.
    Problems,
    /// At the joints of this section: indices of surface and section.
    Gaps(usize, usize),
    /// With the readings of gaps, where it is noted how beads failed.
    Failures,
    /// Among the ways to mend it.
    Ways,
    /// With the readings of moisture.
    Moisture,
    /// With the dates.
    Dates,
    /// With the timed trial.
    Trial,
}

impl std::fmt::Display for Missing {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.words)
    }
}

/// The date `days` after the visit.
pub fn date_after(job: &Job, days: usize) -> Date {
    let days = i32::try_from(days).unwrap_or(i32::MAX);
    job.visited.checked_add(days.days()).unwrap_or(job.visited)
}

pub(super) fn answer(job: &Job, catalog: &Catalog, assessment: &Assessment) -> Answer {
    let missing = missing(assessment);
    let start = |headline: &str| Answer {
        headline: headline.to_owned(),
        missing: missing.clone(),
        ..Answer::default()
    };
    if assessment.layouts.iter().all(|laid| laid.boards.is_empty()) {
        return start("Start with the boards: add a surface, give its size and choose a pattern.");
    }
    if !assessment.joints.iter().any(|joint| joint.gap.is_some_and(|gap| gap.measured)) {
        return start("The boards are drawn. Measure a few gaps: click a joint and type its width.");
    }
    let Some(chosen) = assessment.chosen() else {
        return start("The repair cannot be worked out yet: see the problems listed.");
    };
    let headline = wet_words(assessment)
        + &match (chosen.method, &chosen.not_possible) {
            (MethodId::Reseal | MethodId::ResealOnTongue, _) => {
                reseal_words(job, catalog, assessment, chosen)
            }
            (_, Some(reason)) => format!("{}: not possible here, {reason}.", chosen.name),
            (MethodId::Replace, None) => replace_words(assessment, chosen) + &callback_words(job, chosen),
            (_, None) => other_words(job, chosen) + &callback_words(job, chosen),
        };
    let cheaper = assessment.cheapest_with_callbacks().filter(|least| least.method != chosen.method);
    let cheaper = cheaper.map(|least| least.name.clone());
    // A headline that names the cheaper way need not do so twice.
    let told = cheaper.as_ref().filter(|name| !names(&headline, name));
    let told = if told.is_some() { " With callbacks counted another way costs less." } else { "" };
    let lasts = chosen.holds.is_none_or(|share| share >= ENOUGH_HOLDS)
        && chosen.not_possible.is_none()
        && chosen.callback.as_ref().is_none_or(|risk| risk.chance <= LIKELY_LASTS);
    Answer {
        headline: headline + told,
        cause: cause_words(assessment),
        missing,
        cheaper,
        complete: true,
        lasts,
    }
}

fn names(headline: &str, way: &str) -> bool {
    headline.to_lowercase().contains(&way.to_lowercase())
}

fn price_words(job: &Job, option: &RepairOption) -> String {
    let currency = &job.plan.prices.currency;
    if option.schedule.crew_days == 0 {
        return format!("about {}, the days unknown", option.price.total.show_rough(currency));
    }
    format!(
        "{} crew {}, about {} ({} to {})",
        option.schedule.crew_days,
        if option.schedule.crew_days == 1 { "day" } else { "days" },
        option.price.total.show_rough(currency),
        option.price.spread.low.show_rough(currency),
        option.price.spread.high.show_rough(currency),
    )
}

/// What must come first where boards are wetter than the room makes them.
fn wet_words(assessment: &Assessment) -> String {
    let job = &*assessment.job;
    let names: Vec<&str> = assessment
        .sections
        .iter()
        .filter(|state| state.is_wetted())
        .map(|state| job.surfaces[state.surface].sections[state.section].name.as_str())
        .collect();
    match names.as_slice() {
        [] => String::new(),
        names => format!("First find the water over section {} and let it dry. ", names.join(", ")),
    }
}

/// A way without a season or a moisture of its own to tell.
fn other_words(job: &Job, option: &RepairOption) -> String {
    format!("{}: {}. Afterwards: {}.", option.name, price_words(job, option), option.look)
}

/// The chance of another callback, as a sentence of its own.
fn callback_words(job: &Job, option: &RepairOption) -> String {
    let Some(risk) = &option.callback else { return String::new() };
    let years = job.plan.warranty_years.max(1);
    let within = if years == 1 { "a year".to_owned() } else { format!("{years} years") };
    format!(" Another callback within {within}: {}.", odds_words(risk.chance))
}

fn reseal_words(job: &Job, catalog: &Catalog, assessment: &Assessment, option: &RepairOption) -> String {
    if let Some(reason) = &option.not_possible {
        return format!("Nothing to reseal: {reason}.");
    }
    let share = option.holds.unwrap_or(0.0);
    let per_cent = show_number((share * 100.0).floor(), 0);
    let when = when_words(assessment);
    let sealant = &job.plan.sealant;
    let price = price_words(job, option);
    if share >= ENOUGH_HOLDS {
        return format!(
            "Reseal {when} with {sealant}: {price}. The bead stays within its class on {per_cent} % of the joint length.{}",
            callback_words(job, option)
        );
    }
    if let Some(season) = assessment.season.as_ref().filter(|_| assessment.most_too_narrow()) {
        return format!(
            "Most open joints are narrower than {} even in their best weeks ({}): a bead has nothing to hold to. Leave them unsealed with the V painted, or open them first.",
            job.plan.narrowest.show(job.units),
            window_words(job, season.best, season.weeks.len()),
        );
    }
    // Where no week is any good, none is the best.
    let when = if when == ANY_TIME { ", whenever it is done,".to_owned() } else { format!(" {when}") };
    let way_out = match adequate_sealant(job, catalog, assessment) {
        Some((better, best)) => format!(
            "{} would hold {} % in its best weeks",
            better.name,
            show_number((best * 100.0).floor(), 0)
        ),
        None => match assessment.cheapest_with_callbacks().filter(|least| least.method != MethodId::Reseal) {
            Some(least) => format!("cheapest with callbacks: {}", least.name.to_lowercase()),
            None => "no sealant on the shelf holds nine tenths: compare replacing the boards".to_owned(),
        },
    };
    format!(
        "Resealing{when} with {sealant} would hold on only {per_cent} % of the joint length ({price}).{} {}.",
        callback_words(job, option),
        capitalized(&way_out)
    )
}

fn capitalized(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

fn when_words(assessment: &Assessment) -> String {
    let job = &*assessment.job;
    match (job.plan.seal_on, &assessment.season) {
        // A day that is past is no plan; then the best weeks are reckoned with.
        (Some(date), _) if date >= job.visited => format!("on {}", show_date(date)),
        (_, Some(season)) => window_words(job, season.best, season.weeks.len()),
        (_, None) => "at any time".to_owned(),
    }
}

/// `between 4 May and 6 Jul`, or `at any time of the year`.
pub fn window_words(job: &Job, best: Span<usize>, weeks: usize) -> String {
    if best.high - best.low + 2 >= weeks {
        return ANY_TIME.to_owned();
    }
    let from = date_after(job, best.low * 7);
    let to = date_after(job, best.high * 7 + 6);
    format!("between {} and {}", show_date(from), show_date(to))
}

/// The first sealant of the shelf that holds enough in its own best weeks, with its share.
fn adequate_sealant<'a>(
    job: &Job,
    catalog: &'a Catalog,
    assessment: &Assessment,
) -> Option<(&'a Sealant, f64)> {
    let joints = sealed_joints(job, &assessment.layouts, &assessment.sections, &assessment.joints);
    catalog.sealants.iter().find_map(|sealant| {
        let season = season(&joints, &sealant.over(catalog.breaker(&job.plan)), job.plan.narrowest)?;
        let share = season.share(season.best_week());
        (share >= ENOUGH_HOLDS).then_some((sealant, share))
    })
}

fn replace_words(assessment: &Assessment, option: &RepairOption) -> String {
    let job = &*assessment.job;
    let targets: Vec<f64> = assessment.sections.iter().map(|s| s.settled.mean().to_pct()).collect();
    let target = targets.iter().sum::<f64>() / f64::from(u32::try_from(targets.len()).unwrap_or(1).max(1));
    format!(
        "Replace the boards with boards dried to {} %: {} over {} days. At the driest of the year their joints open to {}.",
        show_number(target, 1),
        price_words(job, option),
        option.schedule.calendar_days,
        option.opens_to.show(job.units),
    )
}

/// The likeliest account with its odds, then what the wood says of the install.
fn cause_words(assessment: &Assessment) -> String {
    let job = &*assessment.job;
    let Some(causes) = &assessment.causes else { return String::new() };
    let (main, chance) = causes.main();
    let part = causes.wetted_section.map(|at| &assessment.sections[at]).map_or_else(String::new, |state| {
        let surface = &job.surfaces[state.surface];
        format!(" in section {}", surface.sections[state.section].name)
    });
    let bonded = causes.of(Cause::BondedGroups) > 0.5;
    let groups = if bonded { ", with boards bonded in groups" } else { "" };
    let headline = format!("{}{part}{groups}: {}. ", main.words(), odds_words(chance));
    headline + &install_words(assessment, main)
}

/// A chance in whole per cents; never more certain than a model can be.
pub fn percent(chance: f64) -> String {
    match 100.0 * chance {
        p if p > 99.0 => "over 99 %".to_owned(),
        p if p < 1.0 => "under 1 %".to_owned(),
        p => format!("{} %", show_number(p, 0)),
    }
}

/// A probability as people say it.
pub fn odds_words(chance: f64) -> String {
    match chance {
        c if c >= 0.985 => "as good as certain".to_owned(),
        c if c >= 0.945 => "19 in 20".to_owned(),
        c if c >= 0.55 => format!("about {} in 10", show_number((c * 10.0).round(), 0)),
        c if c >= 0.45 => "about even".to_owned(),
        c if c >= 0.075 => format!("about {} in 10", show_number((c * 10.0).round(), 0)),
        c if c >= 0.035 => "about 1 in 20".to_owned(),
        _ => "unlikely".to_owned(),
    }
}

/// What the gaps say of the moisture at install.
fn install_words(assessment: &Assessment, main: Cause) -> String {
    let Some(state) = assessment.speaking_section() else { return String::new() };
    let Some(origin) = state.origin else { return String::new() };
    let room = state.settled.mean().show();
    let range = format!(
        "{} ({} to {})",
        origin.moisture.show(),
        show_number(origin.interval.low.to_pct(), 0),
        show_number(origin.interval.high.to_pct(), 0)
    );
    if main == Cause::FramingMoved {
        return "The line that moved is in the mean of its section: its neighbours tell what the wood did."
            .to_owned();
    }
    let wet = assessment.causes.as_ref().map_or(1.0, |causes| causes.of(Cause::WetAtInstall));
    if wet < 0.5 && origin.interval.low > state.settled.extremes().1 {
        return format!(
            "By their width alone the gaps would want boards of {range} at install, which the rest speaks against. This room keeps them near {room}."
        );
    }
    if main == Cause::WettedAndDried {
        return format!("The other boards went up at about {range}; this room keeps them near {room}.");
    }
    format!("The boards went up at about {range}: {}. This room keeps them near {room}.", state.origin_words)
}

/// What would make the answer firmer, most useful first.
fn missing(assessment: &Assessment) -> Vec<Missing> {
    let job = &*assessment.job;
    let mut wanted = Vec::new();
    let mut want = |place, words: String| wanted.push(Missing { words, place });
    if job.surfaces.is_empty() {
        want(EntryPlace::Surfaces, "a surface with its size and pattern".to_owned());
    }
    let errors = assessment.problems.iter().filter(|p| p.severity == Severity::Error).count();
    match errors {
        0 => {}
        1 => want(EntryPlace::Problems, "1 entry to be put right, marked in red".to_owned()),
        _ => want(EntryPlace::Problems, format!("{errors} entries to be put right, marked in red")),
    }
    for state in &assessment.sections {
        let surface = &job.surfaces[state.surface];
        let name = format!("{} {}", surface.name, surface.sections[state.section].name);
        if state.gaps.joints > 0 && state.gaps.measured < FEW_GAPS.min(state.gaps.joints) {
            let more = FEW_GAPS.min(state.gaps.joints) - state.gaps.measured;
            let gaps = if more == 1 { "gap" } else { "gaps" };
            want(EntryPlace::Gaps(state.surface, state.section), format!("{more} more {gaps} in {name}"));
        }
    }
    let unsettled = assessment.causes.as_ref().filter(|causes| causes.main().1 < SETTLED);
    if let Some((most_informative_reading, place)) =
        unsettled.as_ref().and_then(|causes| causes.most_informative_reading.as_ref())
    {
        want(*place, format!("to settle the cause: {most_informative_reading}"));
    }
    if !job.surfaces.is_empty() && job.survey.moistures.iter().all(|reading| reading.reading.is_none()) {
        want(EntryPlace::Moisture, "a moisture reading of the boards".to_owned());
    }
    if job.installed.is_none() && !job.surfaces.is_empty() {
        want(EntryPlace::Dates, "the date the boards went up".to_owned());
    }
    let trial = job.plan.trial.as_ref().is_some_and(|trial| trial.minutes.is_some());
    if !trial && assessment.treated_run() > Length::ZERO {
        want(EntryPlace::Trial, "one timed trial section, for a firmer price".to_owned());
    }
    wanted
}
