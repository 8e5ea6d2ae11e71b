//! The sentences of the homeowner's letter, for someone who never heard of moisture content.

use jiff::ToSpan as _;

use super::causes::percent;
use super::verdict::{SAYS_NOTHING, WORTH_A_RANGE, whole_percent};
use super::{Arg, Say, Words, say};
use crate::assess::InstallMoisture;
use crate::assess::{Assessment, RepairOption, SealTime, SectionState, date_after};
use crate::belief::Cause;
use crate::job::LetterPart;
use crate::measure::{Humidity, Length, Moisture, Money, Percent};
use crate::repair::{MethodId, Outcome, Risk, Step};

/// Boards this much wetter at install than the room keeps them, in percent moisture, may well have been too wet,
/// whatever else speaks against it.
const TOO_WET: f64 = 4.0;

/// From this chance on a cause is said as a fact; from the next on as what is likely.
const SURE: f64 = 0.9;
const LIKELY: f64 = 0.6;

/// Of weeks to seal in that go on for more days than this, none is the best.
const LONG_SEASON: i32 = 120;

/// A gap below this is told as closed: no gauge shows it.
const CLOSED: Length = Length::inches(1.0 / 64.0);
/// What a homeowner has at hand to hold against a gap: the thickness of a credit card, by ISO/IEC 7810.
const CARD: Length = Length::mm(0.76);

/// The parts of the letter, each in sentences; the homeowner's pages of the window say the same.
#[derive(Debug, Clone, PartialEq)]
pub struct LetterText {
    /// What was seen in the room.
    pub saw: Vec<String>,
    /// Why it happened.
    pub why: Vec<String>,
    /// How the joints go on moving.
    pub moves: Vec<String>,
    /// What will be done, when, and why then; empty where nothing is chosen.
    pub plan: Vec<String>,
    /// What is asked of the homeowner.
    pub asks: Vec<String>,
    /// Anything else; empty in the draft.
    pub more: Vec<String>,
}

impl LetterText {
    /// The letter on this assessment, with the user's own wording where there is any.
    pub fn new(assessment: &Assessment, words: &Words) -> Self {
        let mut letter = Self::drafts(assessment, words);
        for own in &assessment.job.wording {
            *letter.part_mut(own.part) = own.text.lines().map(str::to_owned).collect();
        }
        letter
    }

    /// The letter as drafted.
    pub fn drafts(assessment: &Assessment, words: &Words) -> Self {
        let plan = assessment.chosen().map(|option| advised(assessment, option, words));
        Self {
            saw: saw(assessment, words),
            why: why(assessment, words),
            moves: moves(assessment, words),
            plan: plan.unwrap_or_default(),
            asks: asks(assessment, words),
            more: Vec::new(),
        }
    }

    /// A part of the letter, a line for each sentence.
    pub fn text(&self, part: LetterPart) -> String {
        self.part(part).join("\n")
    }

    const fn part(&self, part: LetterPart) -> &Vec<String> {
        match part {
            LetterPart::Saw => &self.saw,
            LetterPart::Why => &self.why,
            LetterPart::Moves => &self.moves,
            LetterPart::Plan => &self.plan,
            LetterPart::Asks => &self.asks,
            LetterPart::More => &self.more,
        }
    }

    const fn part_mut(&mut self, part: LetterPart) -> &mut Vec<String> {
        match part {
            LetterPart::Saw => &mut self.saw,
            LetterPart::Why => &mut self.why,
            LetterPart::Moves => &mut self.moves,
            LetterPart::Plan => &mut self.plan,
            LetterPart::Asks => &mut self.asks,
            LetterPart::More => &mut self.more,
        }
    }
}

impl Say for LetterPart {
    /// The heading it stands under.
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Saw => say!(words, "letter-heading-saw"),
            Self::Why => say!(words, "letter-heading-why"),
            Self::Moves => say!(words, "letter-heading-moves"),
            Self::Plan => say!(words, "letter-heading-plan"),
            Self::Asks => say!(words, "letter-heading-asks"),
            Self::More => say!(words, "letter-heading-more"),
        }
    }
}

/// What was seen in the room.
fn saw(assessment: &Assessment, words: &Words) -> Vec<String> {
    let job = &*assessment.job;
    let gaps = assessment.joints.iter().filter_map(|joint| joint.gap.filter(|gap| gap.measured));
    let measured: Vec<Length> = gaps.map(|gap| gap.gap.mean).collect();
    if measured.is_empty() {
        return vec![say!(words, "letter-no-gaps")];
    }
    let widest = measured.iter().copied().fold(Length::ZERO, Length::max);
    let open = measured.iter().filter(|gap| **gap >= job.plan.open_from).count();
    let mut sentences = vec![
        say!(words, "letter-measured", date = job.visited, joints = measured.len()),
        say!(words, "letter-open", open = open, joints = measured.len(), widest = widest),
    ];
    let readings = job.survey.moistures.iter().filter(|reading| reading.reading.is_some()).count();
    if readings > 0 && !assessment.sections.is_empty() {
        let tenths = |percent: f64| (10.0 * percent).round() / 10.0;
        let now = assessment.sections.iter().map(|state| tenths(state.now.moisture.mean.to_pct()));
        let (low, high) = now.fold((f64::INFINITY, 0.0_f64), |(low, high), m| (low.min(m), high.max(m)));
        let shown = |percent: f64| Arg::Number(percent, 1);
        sentences.push(if low < high {
            say!(words, "letter-moistures", low = shown(low), high = shown(high), readings = readings)
        } else {
            say!(words, "letter-moisture", moisture = shown(high), readings = readings)
        });
    }
    sentences
}

/// Why it happened.
fn why(assessment: &Assessment, words: &Words) -> Vec<String> {
    let mut sentences = Vec::new();
    let main = assessment.causes.as_ref().map(|causes| causes.main().0);
    match main {
        Some(Cause::WettedAndDried) => sentences.push(say!(words, "letter-wetted")),
        Some(Cause::FramingMoved) => sentences.push(say!(words, "letter-framing-moved")),
        Some(Cause::WeakSealant) => sentences.push(say!(words, "letter-weak-sealant")),
        // The rest is told by the moisture at install.
        Some(Cause::WetAtInstall | Cause::Seasonal | Cause::BondedGroups) | None => {}
    }
    if let Some(state) = assessment.speaking_section()
        && let Some(origin) = state.origin
    {
        let chance = |cause| assessment.causes.as_ref().map(|causes| causes.of(cause));
        let wet = chance(Cause::WetAtInstall);
        let rest = main == Some(Cause::WettedAndDried);
        sentences.extend(at_install(state, &origin, (wet, rest), words));
    }
    let wet = names_of(assessment, SectionState::is_wetted);
    if !wet.is_empty() {
        sentences.push(say!(words, "letter-wet-sections", count = wet.len(), sections = Arg::Names(wet)));
    }
    let board = |state: &SectionState| &assessment.job.surfaces[state.surface].sections[state.section].board;
    let apart = names_of(assessment, |state| state.opens_past_tongue(board(state)).is_some());
    if !apart.is_empty() {
        sentences.push(say!(words, "letter-past-tongue", count = apart.len(), sections = Arg::Names(apart)));
    }
    sentences
}

/// The names of the sections of which something is true.
fn names_of(assessment: &Assessment, which: impl Fn(&SectionState) -> bool) -> Vec<&str> {
    let those = assessment.sections.iter().filter(|state| which(state));
    those.map(|state| assessment.job.surfaces[state.surface].sections[state.section].name.as_str()).collect()
}

/// How wet the boards of a section were at install, and what came of it.
///
/// Whether that was too wet is said as surely as it is known: `wet` is the chance of it. `rest` tells that others
/// were told of before as the ones that got wet.
fn at_install(
    state: &SectionState,
    origin: &InstallMoisture,
    (wet, rest): (Option<f64>, bool),
    words: &Words,
) -> [String; 3] {
    let whole = |moisture: Moisture| Percent::pct(moisture.to_pct().round());
    let room = state.settled.mean();
    let wetter = (origin.moisture - room).to_pct() > TOO_WET;
    [
        say!(words, "letter-wood-moves"),
        say!(
            words,
            "letter-install-moisture",
            moisture = origin.moisture,
            low = whole(origin.interval.low),
            high = whole(origin.interval.high),
            room = room
        ),
        match wet.unwrap_or(if wetter { 1.0 } else { 0.0 }) {
            sure if sure >= SURE => say!(words, "letter-too-wet"),
            likely if likely >= LIKELY => {
                let (band, percent) = percent(likely);
                say!(words, "letter-too-wet-likely", band = band, percent = percent)
            }
            open if wetter || open > 1.0 - LIKELY => say!(words, "letter-too-wet-open"),
            _ if rest => say!(words, "letter-seasonal-rest"),
            likely if likely > 1.0 - SURE => say!(words, "letter-seasonal-likely"),
            _ => say!(words, "letter-seasonal"),
        },
    ]
}

/// How the joints go on moving.
fn moves(assessment: &Assessment, words: &Words) -> Vec<String> {
    let Some(state) = assessment.typical_section().filter(|state| state.gaps.measured > 0) else {
        return vec![];
    };
    let room = room_runs(assessment, words);
    let (now, (narrowest, widest)) = (state.gaps.mean, state.year_gap);
    let month = || Arg::Month(date_after(&assessment.job, state.narrowest_day));
    let joint = if state.narrowest_day == 0 {
        say!(words, "letter-keeps-opening", now = now, widest = widest)
    } else if narrowest < CLOSED {
        say!(words, "letter-closes", now = now, month = month(), widest = widest)
    } else {
        say!(words, "letter-moves", now = now, narrowest = narrowest, month = month(), widest = widest)
    };
    [joint].into_iter().chain(room).collect()
}

/// Between which humidities the room runs over the year.
fn room_runs(assessment: &Assessment, words: &Words) -> Option<String> {
    let read = assessment.job.survey.rooms.iter().map(|room| room.humidity);
    let days = assessment.year.as_ref()?.days.iter().map(|air| air.humidity).chain(read);
    let (low, high) = (days.clone().reduce(Humidity::min)?, days.reduce(Humidity::max)?);
    Some(say!(words, "letter-room-runs", low = low, high = high))
}

/// What will be done, when, and why then; first that it is advised against, if it is.
fn advised(assessment: &Assessment, option: &RepairOption, words: &Words) -> Vec<String> {
    if let Some(reason) = option.not_possible {
        return vec![super::options::not_here(option, reason, words)];
    }
    let against = assessment.advises_against(option).then(|| say!(words, "letter-advised-against"));
    let only = super::options::only_sections(assessment, option, words);
    let not_counted = not_counted(assessment, option, words);
    against.into_iter().chain(plan(assessment, option, words)).chain(only).chain(not_counted).collect()
}

/// What is done, in a sentence or two, for the proposal.
pub(super) fn work(assessment: &Assessment, option: &RepairOption, words: &Words) -> String {
    if !option.says.is_empty() {
        return words.called(&option.says).into_owned();
    }
    if option.method == MethodId::Replace {
        return say!(words, "letter-replace");
    }
    reseal(assessment, option, words)
}

/// That the joints are sealed, with what, and how often what is painted.
fn reseal(assessment: &Assessment, option: &RepairOption, words: &Words) -> String {
    let (run, coats) = (assessment.bead_run(), crate::job::sanitized(&assessment.job).plan.coats);
    let (run, sealant) = (Arg::Run(run), Arg::Called(assessment.sealant_name()));
    if option.paints_joints_only {
        say!(words, "letter-reseal-joints", run = run, sealant = sealant, coats = coats)
    } else {
        say!(words, "letter-reseal", run = run, sealant = sealant, coats = coats)
    }
}

/// The repair itself.
fn plan(assessment: &Assessment, option: &RepairOption, words: &Words) -> Vec<String> {
    if !option.says.is_empty() {
        let more = [paints_all(assessment, option, words), starts(option, words), days(option, words)];
        return [words.called(&option.says).into_owned()]
            .into_iter()
            .chain(more.into_iter().flatten())
            .collect();
    }
    if option.method == MethodId::Replace {
        let opens = say!(words, "letter-new-joints", widest = option.opens_to);
        let more = [paints_all(assessment, option, words), starts(option, words), days(option, words)];
        return [say!(words, "letter-replace")]
            .into_iter()
            .chain(more.into_iter().flatten())
            .chain([opens])
            .collect();
    }
    let plan = &assessment.job.plan;
    if assessment.most_too_narrow() {
        return vec![say!(words, "letter-too-narrow", narrowest = plan.narrowest)];
    }
    let mut sentences = vec![reseal(assessment, option, words)];
    sentences.extend(left_open(assessment, words));
    sentences.push(when(assessment, words));
    sentences.extend(planned_start(assessment, option, words));
    let years = plan.warranty_years.max(1);
    sentences.extend(option.callback.iter().flat_map(|risk| reopening(risk, years, words)));
    sentences.extend(days(option, words));
    sentences
}

/// That some of the joints that are cleaned out are too narrow for a bead on the day.
pub(super) fn left_open(assessment: &Assessment, words: &Words) -> Option<String> {
    let narrow = assessment.worked_on().filter(|state| !assessment.gets_bead(state)).count();
    (narrow > 0).then(|| say!(words, "letter-left-open", count = narrow))
}

/// That joints at board ends, miters and edges are no part of the work, where none of them was measured.
pub(super) fn not_counted(assessment: &Assessment, option: &RepairOption, words: &Words) -> Option<String> {
    let run = assessment.not_counted_run(option);
    (run > Length::ZERO).then(|| say!(words, "letter-not-counted", run = Arg::Run(run)))
}

/// That all is painted in the end, where an option does that and has not said it.
pub(super) fn paints_all(assessment: &Assessment, option: &RepairOption, words: &Words) -> Option<String> {
    let coats = crate::job::sanitized(&assessment.job).plan.coats;
    let paints = coats > 0 && option.steps.iter().any(|step| matches!(step, Step::Coats(_)));
    let said = matches!(option.outcome, Outcome::Bead { .. });
    (paints && !said).then(|| say!(words, "letter-paint-all", coats = coats))
}

/// When the crew can start at the earliest, or comes back to measure.
pub(super) fn starts(option: &RepairOption, words: &Words) -> Option<String> {
    match option.outcome {
        _ if option.total() <= Money::ZERO => None,
        // Beads have their season: that is a plan, and no promise.
        Outcome::Bead { .. } => Some(say!(words, "letter-planned", date = option.starts)),
        Outcome::Unchanged => Some(say!(words, "letter-comes-back", date = option.starts)),
        _ => Some(say!(words, "letter-starts", date = option.starts)),
    }
}

/// On which day of the best weeks the work is planned to start, where they are more than a day.
fn planned_start(assessment: &Assessment, option: &RepairOption, words: &Words) -> Option<String> {
    let weeks = matches!(assessment.answer.when, Some(SealTime::Between(..)));
    if weeks { starts(option, words) } else { None }
}

/// When the joints are sealed, and why then.
pub(super) fn when(assessment: &Assessment, words: &Words) -> String {
    match assessment.seal_time() {
        SealTime::On(date) => say!(words, "letter-seal-on", date = date),
        SealTime::AnyTime => say!(words, "letter-any-time"),
        SealTime::Between(from, to) if (to - from).get_days() > LONG_SEASON => {
            say!(words, "letter-most-weeks", from = from, to = to)
        }
        SealTime::Between(from, to) => say!(words, "letter-best-weeks", from = from, to = to),
    }
}

/// The chance that joints open again, and how far it is open where it is not known closely.
fn reopening(risk: &Risk, years: u32, words: &Words) -> Vec<String> {
    let (band, chance) = percent(risk.chance);
    let mut sentences = vec![say!(words, "letter-reopening", band = band, chance = chance, years = years)];
    if risk.interval.high - risk.interval.low > SAYS_NOTHING {
        sentences.push(say!(words, "letter-reopening-open", why = why_open(risk)));
    } else if risk.interval.high - risk.interval.low >= WORTH_A_RANGE {
        let [low, high] = [risk.interval.low, risk.interval.high].map(whole_percent);
        sentences.push(say!(words, "letter-reopening-range", low = low, high = high));
    }
    if risk.chance - risk.without_paint >= WORTH_A_RANGE {
        let (band, chance) = percent(risk.without_paint);
        sentences.push(say!(words, "letter-reopening-paint", band = band, chance = chance));
    }
    sentences
}

/// Why a chance is hardly known, as an id to select by: the paint, or the house.
pub(super) fn why_open(risk: &Risk) -> Arg<'static> {
    let of_paint = risk.without_paint_interval.high - risk.without_paint_interval.low <= SAYS_NOTHING;
    Arg::Id(if of_paint { "paint" } else { "house" })
}

/// How long the work takes, where that is known.
pub(super) fn days(option: &RepairOption, words: &Words) -> Option<String> {
    /// Days on which nobody works that are worth telling of: more than a weekend.
    const LONG: u32 = 5;
    let schedule = &option.schedule;
    let said = match (schedule.crew_days, schedule.room_out) {
        (0, _) => return None,
        (days, 0) => say!(words, "letter-days", days = days),
        (days, closed) => say!(words, "letter-days-closed", days = days, closed = closed),
    };
    let last = option.starts.checked_add(i64::from(schedule.calendar_days.saturating_sub(1)).days());
    let until = last.ok().filter(|_| schedule.calendar_days >= schedule.crew_days + LONG);
    Some(until.map_or(said.clone(), |until| said + " " + &say!(words, "letter-done-by", date = until)))
}

/// What is asked of the homeowner.
fn asks(assessment: &Assessment, words: &Words) -> Vec<String> {
    let job = &*assessment.job;
    let mut asks = Vec::new();
    asks.extend(
        assessment
            .humidity_to_keep()
            .map(|keep| say!(words, "letter-ask-humidity", low = keep.low, high = keep.high)),
    );
    let chosen = assessment.chosen();
    let against = chosen.is_some_and(|option| assessment.advises_against(option));
    let left = against || chosen.is_some_and(|option| option.outcome == Outcome::Unchanged);
    // The terms are in the proposal, once that can be written.
    let warranted = Arg::Id(match job.plan.warranty_years {
        0 => "no",
        _ if assessment.payers_open() => "later",
        _ => "yes",
    });
    let widest = job.plan.callback.widest;
    asks.push(match chosen.map(|option| option.outcome) {
        _ if left => say!(words, "letter-ask-call-left"),
        // What stays open on purpose is no reason to call.
        Some(Outcome::Line) => {
            let widest = chosen.map_or(Length::ZERO, |option| option.opens_to);
            say!(words, "letter-ask-call-open", widest = widest)
        }
        Some(Outcome::Covered | Outcome::Glued) => say!(words, "letter-ask-call-covered"),
        _ => say!(
            words,
            "letter-ask-call",
            widest = widest,
            cards = Arg::Number((widest.to_mm() / CARD.to_mm()).round().max(1.0), 0),
            warranted = warranted
        ),
    });
    // Where nothing is warranted, nothing is looked at for years.
    let years = if left { 0 } else { job.plan.warranty_years };
    asks.push(say!(words, "letter-ask-visit", years = years));
    asks
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::assess::assess;
    use crate::job::{Catalog, demo_job};
    use crate::measure::Units;

    /// What the homeowner reads of the cause is what the odds say, from boards that were dry to boards that were
    /// not: nobody is told the one while the contractor sees the other.
    #[test]
    fn the_letter_tells_the_cause_that_is_likelier() {
        let words = Words::us_english(Units::Inches, "$");
        let mut seen = std::collections::BTreeSet::new();
        for tenths in (1_u8..=12).chain([20]) {
            let mut job = demo_job();
            for gap in &mut job.survey.gaps {
                gap.width = gap.width * (f64::from(tenths) / 10.0);
            }
            let found = assess(job, Catalog::built_in());
            let causes = found.causes.as_ref().expect("gaps were measured");
            if causes.main().0 == Cause::WettedAndDried || found.speaking_section().is_none() {
                continue;
            }
            let wet = causes.of(Cause::WetAtInstall);
            let said = LetterText::drafts(&found, &words).why.join(" ");
            let dry = said.contains("as dry as they should have been");
            let too_wet = said.contains("were too wet for this room");
            let open = said.contains("can’t tell");
            assert_eq!(too_wet && !open, wet >= LIKELY, "{wet}: {said}");
            assert!(!dry || wet <= 1.0 - LIKELY, "{wet}: {said}");
            seen.insert((too_wet, open));
        }
        assert!(seen.len() > 1, "only {seen:?} was seen");
    }
}
