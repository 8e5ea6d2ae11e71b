//! The answer in sentences: what to do, when, for how much; why it happened; what is missing.

use super::causes::{marks, percent};
use super::{Arg, Say, Words, say};
use crate::assess::{
    Advice, Assessment, CauseVerdict, FirstStep, InformativeReading, InstallFigures, InstallFinding, Instead,
    MissingEntry, Quote, RepairOption, SealTime,
};
use crate::measure::Percent;
use crate::repair::MethodId;
use crate::survey::DoubtedGap;

/// The answer in a few sentences: what to do, when, the price, the chance of another callback.
pub fn headline(assessment: &Assessment, words: &Words) -> String {
    let answer = &assessment.answer;
    // Of a job that is about boards to come alone, the answer is the gate's.
    if let (Some(found), Some(next), true) =
        (&assessment.next_install, &assessment.job.next_install, assessment.job.surfaces.is_empty())
    {
        return super::next_install::headline(found, next, words);
    }
    if let Advice::NothingYet(step) = answer.advice {
        return match step {
            FirstStep::DrawBoards => say!(words, "answer-draw-boards"),
            FirstStep::MeasureGaps => say!(words, "answer-measure-gaps"),
            FirstStep::FixProblems => say!(words, "answer-fix-problems"),
        };
    }
    let mut sentences = Vec::new();
    sentences.extend(water_first(assessment, words));
    if let (Some(chosen), Some(on)) = (assessment.chosen(), assessment.job.done.finished) {
        sentences.push(super::verdict::done(assessment, chosen.method, on, words));
        return sentences.join(" ");
    }
    sentences.extend(assessment.chosen().map(|chosen| advice(assessment, chosen, words)));
    if says_price(&answer.advice) {
        sentences.extend(answer.quote.map(|quote| price(&answer.advice, quote, words)));
        sentences.extend(answer.callback.map(|callback| {
            let (band, percent) = percent(callback.chance);
            say!(words, "answer-callback", years = callback.years, band = band, percent = percent)
        }));
        sentences.extend(instead(assessment, words));
    }
    if answer.cheaper.is_some_and(|cheaper| !names(&answer.advice, cheaper)) {
        sentences.push(say!(words, "answer-cheaper"));
    }
    sentences.join(" ")
}

/// What does not pay or cannot be done needs no price.
const fn says_price(advice: &Advice) -> bool {
    !matches!(advice, Advice::TooNarrow { .. } | Advice::NotPossible(_))
}

/// Whether the advice names this option as the one to take instead.
fn names(advice: &Advice, option: MethodId) -> bool {
    matches!(advice, Advice::ResealFails { instead: Instead::Method(method), .. } if *method == option)
}

/// What must come first where boards are wetter than the room makes them.
fn water_first(assessment: &Assessment, words: &Words) -> Option<String> {
    let wet = &assessment.answer.wet_sections;
    let names = wet.iter().filter_map(|&(surface, section)| section_name(assessment, surface, section));
    let names: Vec<&str> = names.collect();
    let count = names.len();
    (count > 0).then(|| say!(words, "answer-water-first", count = count, sections = Arg::Names(names)))
}

fn advice(assessment: &Assessment, chosen: &RepairOption, words: &Words) -> String {
    let answer = &assessment.answer;
    let when = answer.when.unwrap_or(SealTime::AnyTime);
    let (key, from, to) = days(when);
    let (key, sealant) = (Arg::Id(key), assessment.sealant_name());
    match answer.advice {
        Advice::Reseal { holds } => {
            let first = say!(
                words,
                "answer-reseal",
                when = key,
                from = from,
                to = to,
                sealant = Arg::Called(sealant)
            );
            first + " " + &say!(words, "answer-holds", share = holds)
        }
        Advice::ResealFails { holds, .. } => say!(
            words,
            "answer-reseal-fails",
            when = key,
            from = from,
            to = to,
            sealant = Arg::Called(sealant),
            past = super::verdict::past(holds)
        ),
        Advice::TooNarrow { narrowest } => {
            let best = assessment.season.as_ref().map(|season| SealTime::best(&assessment.job, season));
            let (key, from, to) = days(best.unwrap_or(SealTime::AnyTime));
            let key = Arg::Id(key);
            say!(words, "answer-too-narrow", when = key, from = from, to = to, narrowest = narrowest)
        }
        Advice::Replace { dried_to, opens_to, .. } => {
            say!(words, "answer-replace", moisture = dried_to, opens = opens_to)
        }
        Advice::NotPossible(reason) => {
            say!(words, "answer-not-possible", option = Arg::Called(&chosen.name)) + " " + &reason.say(words)
        }
        Advice::AsChosen | Advice::NothingYet(_) => {
            say!(
                words,
                "answer-as-chosen",
                option = Arg::Called(&chosen.name),
                look = Arg::Called(&chosen.look)
            )
        }
    }
}

/// What to do instead of a bead that does not hold.
fn instead(assessment: &Assessment, words: &Words) -> Option<String> {
    let Advice::ResealFails { instead, .. } = assessment.answer.advice else { return None };
    match instead {
        Instead::Sealant(rated) => {
            let sealant = assessment.catalog.sealants.get(rated.sealant)?;
            Some(say!(
                words,
                "answer-instead-sealant",
                sealant = Arg::Called(&sealant.name),
                share = rated.holds
            ))
        }
        Instead::Method(method) => {
            let option = assessment.option(method)?;
            Some(say!(words, "answer-instead-option", option = Arg::Called(&option.name)))
        }
        Instead::Unknown => Some(say!(words, "answer-instead-unknown")),
    }
}

fn price(advice: &Advice, quote: Quote, words: &Words) -> String {
    let [total, low, high] = [quote.total, quote.spread.low, quote.spread.high].map(Arg::RoughMoney);
    match (quote.crew_days, advice) {
        (None, _) => say!(words, "answer-price-without-days", total = total, low = low, high = high),
        (Some(days), &Advice::Replace { calendar_days, .. }) => say!(
            words,
            "answer-price-over",
            total = total,
            low = low,
            high = high,
            days = days,
            calendar_days = calendar_days
        ),
        (Some(days), _) => say!(words, "answer-price", total = total, low = low, high = high, days = days),
    }
}

/// A time of sealing as the key and the days that messages take.
pub(super) fn days(when: SealTime) -> (&'static str, Arg<'static>, Arg<'static>) {
    let (from, to) = match when {
        SealTime::On(day) => (Arg::Date(day), Arg::Name("")),
        SealTime::Between(from, to) => (Arg::Date(from), Arg::Date(to)),
        SealTime::AnyTime => (Arg::Name(""), Arg::Name("")),
    };
    (when.key(), from, to)
}

impl Say for SealTime {
    /// On a day, between two, or at any time of the year: to stand by itself.
    fn say(&self, words: &Words) -> String {
        let (key, from, to) = days(*self);
        say!(words, "answer-best-weeks", when = Arg::Id(key), from = from, to = to)
    }
}

/// Why the joints opened, in a few sentences; empty while that is not known.
pub fn cause(assessment: &Assessment, words: &Words) -> String {
    let Some(verdict) = &assessment.answer.cause else { return String::new() };
    let mut sentences = vec![main_cause(assessment, verdict, words)];
    if verdict.bonded {
        sentences.push(say!(words, "answer-cause-bonded"));
    }
    sentences.extend(verdict.install.map(|finding| install(assessment, finding, words)));
    sentences.join(" ")
}

fn main_cause(assessment: &Assessment, verdict: &CauseVerdict, words: &Words) -> String {
    let (band, percent) = percent(verdict.chance);
    let main = Arg::Id(verdict.main.key());
    let section = verdict.section.and_then(|(surface, section)| section_name(assessment, surface, section));
    match section {
        None => say!(words, "answer-cause", cause = main, band = band, percent = percent),
        Some(section) => {
            let section = Arg::Name(section);
            say!(
                words,
                "answer-cause-in-section",
                cause = main,
                band = band,
                percent = percent,
                section = section
            )
        }
    }
}

fn install(assessment: &Assessment, finding: InstallFinding, words: &Words) -> String {
    let figures = |of: InstallFigures| {
        let low = Arg::Percent(Percent::pct(of.interval.low.to_pct().round()));
        let high = Arg::Percent(Percent::pct(of.interval.high.to_pct().round()));
        (of.moisture, low, high, of.room)
    };
    match finding {
        InstallFinding::LineMoved => say!(words, "answer-install-line-moved"),
        InstallFinding::Contradicted(of) => {
            let (moisture, low, high, room) = figures(of);
            say!(
                words,
                "answer-install-contradicted",
                moisture = moisture,
                low = low,
                high = high,
                room = room
            )
        }
        InstallFinding::OtherBoards(of) => {
            let (moisture, low, high, room) = figures(of);
            say!(
                words,
                "answer-install-other-boards",
                moisture = moisture,
                low = low,
                high = high,
                room = room
            )
        }
        InstallFinding::Boards(of, against) => {
            let (moisture, low, high, room) = figures(of);
            let said = say!(
                words,
                "answer-install-boards",
                moisture = moisture,
                low = low,
                high = high,
                room = room
            );
            match against {
                Some(against) => said + " " + &marks(against, &assessment.catalog.marks, words),
                None => said,
            }
        }
    }
}

/// The name of the option that costs least with callbacks, where it is not the chosen one.
pub fn cheaper(assessment: &Assessment) -> Option<&str> {
    Some(assessment.option(assessment.answer.cheaper?)?.name.as_str())
}

/// What is missing, as a short order without a period.
pub fn missing(assessment: &Assessment, entry: MissingEntry, words: &Words) -> String {
    let names = |surface: usize, section: usize| {
        let named = assessment.job.surfaces.get(surface).map(|surface| surface.name.as_str());
        let section = section_name(assessment, surface, section);
        (Arg::Name(named.unwrap_or_default()), Arg::Name(section.unwrap_or_default()))
    };
    match entry {
        MissingEntry::Surface => say!(words, "answer-missing-surface"),
        MissingEntry::WrongEntries(count) => say!(words, "answer-missing-fixes", count = count),
        MissingEntry::DoubtedGap(DoubtedGap { index, typed, meant }) => {
            let joint = assessment.job.survey.gaps.get(index).map_or("", |gap| gap.joint.as_str());
            let joint = Arg::Joint(joint);
            say!(words, "answer-missing-typed-gap", joint = joint, typed = typed, meant = meant)
        }
        MissingEntry::Gaps { surface, section, more } => {
            let (surface, section) = names(surface, section);
            say!(words, "answer-missing-gaps", count = more, surface = surface, section = section)
        }
        MissingEntry::ForTheCause(InformativeReading::Gap { surface, section }) => {
            let (surface, section) = names(surface, section);
            say!(words, "answer-missing-gap-for-cause", surface = surface, section = section)
        }
        MissingEntry::ForTheCause(InformativeReading::Moisture { surface, section }) => {
            let (surface, section) = names(surface, section);
            say!(words, "answer-missing-moisture-for-cause", surface = surface, section = section)
        }
        MissingEntry::ForTheCause(InformativeReading::Failures) => {
            say!(words, "answer-missing-failures-for-cause")
        }
        MissingEntry::ForTheCause(InformativeReading::Room) => say!(words, "answer-missing-room-for-cause"),
        MissingEntry::Moisture => say!(words, "answer-missing-moisture"),
        MissingEntry::InstallDate => say!(words, "answer-missing-install-date"),
        MissingEntry::Place => say!(words, "answer-missing-place"),
        MissingEntry::YearBuilt => say!(words, "answer-missing-year-built"),
        MissingEntry::Payers => say!(words, "answer-missing-payers"),
        MissingEntry::TimedSection => say!(words, "answer-missing-timed-section"),
    }
}

pub(super) fn section_name(assessment: &Assessment, surface: usize, section: usize) -> Option<&str> {
    let surface = assessment.job.surfaces.get(surface)?;
    Some(surface.sections.get(section)?.name.as_str())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::{Catalog, demo_job};
    use crate::measure::Units;

    #[test]
    fn the_demo_is_answered_in_plain_sentences() {
        let found = crate::assess::assess(demo_job(), Catalog::built_in());
        let words = Words::us_english(Units::Inches, "$");
        let said = headline(&found, &words) + " " + &cause(&found, &words);
        for part in [
            "Reseal between ",
            " days on site.",
            "% of the joint length.",
            "Another callback within 2 years: ",
        ] {
            assert!(said.contains(part), "no “{part}” in: {said}");
        }
        // No argument was left out, and no sentence runs into the next.
        assert!(!said.contains(['{', '}']) && !said.contains("  ") && !said.contains(".."), "{said}");
        assert!(said.ends_with('.'), "{said}");
    }

    #[test]
    fn every_missing_entry_is_an_order_without_a_period() {
        let found = crate::assess::assess(demo_job(), Catalog::built_in());
        let words = Words::us_english(Units::Inches, "$");
        for entry in [
            MissingEntry::Surface,
            MissingEntry::WrongEntries(1),
            MissingEntry::Gaps { surface: 0, section: 0, more: 2 },
            MissingEntry::ForTheCause(InformativeReading::Gap { surface: 0, section: 0 }),
            MissingEntry::ForTheCause(InformativeReading::Failures),
            MissingEntry::Moisture,
            MissingEntry::InstallDate,
            MissingEntry::Place,
            MissingEntry::YearBuilt,
            MissingEntry::Payers,
            MissingEntry::TimedSection,
        ] {
            let said = missing(&found, entry, &words);
            assert!(said.starts_with(char::is_uppercase) && !said.ends_with('.'), "{said}");
        }
        let gaps = MissingEntry::Gaps { surface: 0, section: 0, more: 1 };
        assert_eq!(missing(&found, gaps, &words), "Measure 1 more gap in South slope, section A");
    }
}
