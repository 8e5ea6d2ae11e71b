//! The verdict in three lines.

use jiff::civil::Date;

use super::answer::{days, missing, section_name};
use super::causes::{chance_as_percent, percent};
use super::{Arg, Say as _, Words, say};
use crate::assess::{
    Advice, Assessment, Confidence, Doubt, FirstStep, Instead, Recommendation, SealTime, Verdict,
};
use crate::measure::{Percent, Span};
use crate::repair::{MethodId, Risk};

/// What stands between the parts of a line.
const DOT: &str = " · ";

/// A chance that is known to within no better than this is said with its range.
pub(super) const WORTH_A_RANGE: f64 = 0.15;
/// From this width on a range leaves everything open; where paint makes it so, that is said instead.
pub(super) const SAYS_NOTHING: f64 = 0.85;

/// The first line: what to do, or what comes first.
pub fn first(assessment: &Assessment, verdict: &Verdict, words: &Words) -> String {
    match (&verdict.recommended, verdict.confidence) {
        (Some(recommended), _) if !recommended.wet_sections.is_empty() => {
            let wet = recommended.wet_sections.iter();
            let names: Vec<&str> =
                wet.filter_map(|&(surface, section)| section_name(assessment, surface, section)).collect();
            say!(words, "verdict-water-first", count = names.len(), sections = Arg::Names(names))
        }
        (Some(Recommendation { method, finished: Some(on), .. }), _) => done(assessment, *method, *on, words),
        (Some(recommended), _) => to_do(assessment, recommended, words),
        (None, Confidence::NotYet(FirstStep::DrawBoards)) => say!(words, "verdict-first-boards"),
        (None, Confidence::NotYet(FirstStep::MeasureGaps)) => say!(words, "verdict-first-gaps"),
        (None, _) => say!(words, "verdict-first-fixes"),
    }
}

/// That the work was done, and when.
pub(super) fn done(assessment: &Assessment, method: MethodId, on: Date, words: &Words) -> String {
    let option = Arg::Called(option_name(assessment, method));
    say!(words, "verdict-done", option = option, on = on)
}

/// The second line: days, price and chance, or why there are none; empty without a recommendation.
pub fn second(assessment: &Assessment, verdict: &Verdict, words: &Words) -> String {
    let Some(recommended) = &verdict.recommended else { return String::new() };
    if recommended.finished.is_some() {
        // What came says more than what was expected.
        let visits =
            assessment.follow_up.iter().filter(|visit| visit.after_work && !visit.readings.is_empty());
        return match visits.max_by_key(|visit| visit.on) {
            Some(visit) => {
                let found = super::follow_up::figures(visit.verdict, words);
                say!(words, "verdict-visit", on = visit.on, found = &found)
            }
            None => price_and_chance(recommended, words).join(DOT),
        };
    }
    let mut parts = Vec::new();
    if !recommended.wet_sections.is_empty() {
        let what_then = match recommended.advice {
            // What does not hold is not what comes then.
            Advice::ResealFails { .. } | Advice::NotPossible(_) | Advice::TooNarrow { .. } => {
                to_do(assessment, recommended, words)
            }
            _ => {
                let option = Arg::Called(option_name(assessment, recommended.method));
                say!(words, "verdict-then", option = option)
            }
        };
        parts.push(what_then);
    }
    match recommended.advice {
        Advice::NotPossible(reason) => parts.push(reason.say(words)),
        Advice::TooNarrow { .. } => parts.push(say!(words, "verdict-nothing-to-grip")),
        Advice::ResealFails { instead, .. } => parts.extend(instead_of(assessment, instead, words)),
        _ => parts.extend(price_and_chance(recommended, words)),
    }
    parts.join(DOT)
}

/// How sure: the word alone.
pub fn confidence(verdict: &Verdict, words: &Words) -> String {
    say!(words, "verdict-confidence", confidence = Arg::Id(verdict.confidence.key()))
}

/// Why it is not surer, as a sentence.
pub fn reason(assessment: &Assessment, verdict: &Verdict, words: &Words) -> String {
    let why = match verdict.confidence {
        Confidence::Sure => say!(words, "verdict-nothing-left"),
        Confidence::NotYet(_) => words.text("answer-not-yet").into_owned(),
        Confidence::Rough(doubt) | Confidence::FairlySure(doubt) => self::doubt(assessment, doubt, words),
    };
    let named = |recommended: &Recommendation| match recommended.advice {
        Advice::ResealFails { instead: Instead::Method(named), .. } => Some(named),
        _ => None,
    };
    let cheaper = verdict
        .recommended
        .as_ref()
        .and_then(|recommended| recommended.cheaper.filter(|cheaper| named(recommended) != Some(*cheaper)));
    match cheaper {
        // Somebody chose another one than this program would.
        Some(method) => {
            let option = Arg::Called(option_name(assessment, method));
            say!(words, "verdict-cheaper", option = option) + " " + &why
        }
        None => why,
    }
}

/// The verdict as lines of text, each of them something: what to do; cost and chance; how sure and what
/// would help most.
pub fn lines(assessment: &Assessment, verdict: &Verdict, words: &Words) -> Vec<String> {
    let sure = confidence(verdict, words) + ". " + &reason(assessment, verdict, words);
    let helps = verdict.helps_most.map(|entry| {
        " ".to_owned() + &words.text("verdict-helps-most") + " " + &missing(assessment, entry, words) + "."
    });
    let third = sure + &helps.unwrap_or_default();
    // What was done is told, not recommended.
    let third = if assessment.job.done.finished.is_some() { String::new() } else { third };
    let all = [first(assessment, verdict, words), second(assessment, verdict, words), third];
    all.into_iter().filter(|line| !line.is_empty()).collect()
}

fn option_name(assessment: &Assessment, method: MethodId) -> &str {
    assessment.option(method).map_or("", |option| &option.name)
}

fn to_do(assessment: &Assessment, recommended: &Recommendation, words: &Words) -> String {
    let sealant = Arg::Called(assessment.sealant_name());
    let option = Arg::Called(option_name(assessment, recommended.method));
    match recommended.advice {
        Advice::Reseal { .. } => {
            let (key, from, to) = days(recommended.when.unwrap_or(SealTime::AnyTime));
            say!(words, "verdict-reseal", when = Arg::Id(key), from = from, to = to, sealant = sealant)
        }
        Advice::ResealFails { holds, .. } => {
            say!(words, "verdict-reseal-fails", sealant = sealant, past = past(holds))
        }
        Advice::TooNarrow { narrowest } => say!(words, "verdict-too-narrow", narrowest = narrowest),
        Advice::Replace { dried_to, .. } => say!(words, "verdict-replace", moisture = dried_to),
        Advice::NotPossible(_) => say!(words, "verdict-not-possible", option = option),
        Advice::AsChosen | Advice::NothingYet(_) => say!(words, "verdict-as-chosen", option = option),
    }
}

/// The share of the joint length that is past a sealant's rating where so much is within it.
pub(super) fn past(holds: Percent) -> Percent {
    Percent::pct(100.0) - holds
}

fn instead_of(assessment: &Assessment, instead: Instead, words: &Words) -> Option<String> {
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
            let option = Arg::Called(option_name(assessment, method));
            Some(say!(words, "answer-instead-option", option = option))
        }
        Instead::Unknown => Some(say!(words, "answer-instead-unknown")),
    }
}

fn price_and_chance(recommended: &Recommendation, words: &Words) -> Vec<String> {
    let mut parts = Vec::new();
    if let Some(quote) = recommended.quote {
        let to_come = quote.crew_days.filter(|_| recommended.finished.is_none());
        parts.extend(to_come.map(|days| say!(words, "verdict-days", days = days, from = recommended.starts)));
        let [total, low, high] = [quote.total, quote.spread.low, quote.spread.high].map(Arg::RoughMoney);
        parts.push(say!(words, "verdict-price", total = total, low = low, high = high));
    }
    if let Some(lasting) = recommended.lasting {
        let (band, chance) = percent(lasting.chance);
        let until = Arg::Month(lasting.until);
        parts.push(say!(words, "verdict-lasts", band = band, percent = chance, until = until));
        let Span { low, high } = lasting.interval;
        let paint_matters = lasting.with_sound_paint - lasting.chance >= WORTH_A_RANGE;
        if paint_matters && high - low > SAYS_NOTHING {
            parts.push(say!(words, "verdict-lasts-paint-decides"));
        } else {
            parts.extend(lasting_range(lasting.interval, words));
        }
        if paint_matters {
            let (band, chance) = percent(lasting.with_sound_paint);
            parts.push(say!(words, "verdict-lasts-paint", band = band, chance = chance));
        }
    }
    parts
}

/// Where the chance that an option lasts may lie, where that is wide.
pub fn lasts_between(risk: &Risk, words: &Words) -> Option<String> {
    let Span { low, high } = risk.interval;
    lasting_range(Span { low: 1.0 - high, high: 1.0 - low }, words)
}

/// Where a chance to last may lie, where that is wide; a range that leaves everything open says nothing by
/// its figures.
fn lasting_range(range: Span<f64>, words: &Words) -> Option<String> {
    match range.high - range.low {
        width if width < WORTH_A_RANGE => None,
        width if width > SAYS_NOTHING => Some(say!(words, "verdict-lasts-either-way")),
        _ => {
            let [low, high] = [range.low, range.high].map(whole_percent);
            Some(say!(words, "verdict-lasts-range", low = low, high = high))
        }
    }
}

/// The chance of a callback if paint never cracked over a sound bead, with its range.
pub fn chance_with_sound_paint(risk: &Risk, words: &Words) -> String {
    let [low, high] = [risk.without_paint_interval.low, risk.without_paint_interval.high].map(whole_percent);
    let chance = chance_as_percent(risk.without_paint, words);
    if low == high {
        return chance;
    }
    say!(words, "options-chance-range", chance = &chance, low = low, high = high)
}

/// Why the range of a chance is so wide, where paint makes it so: what it is without paint, and that nobody
/// has measured how far paint stretches here.
pub fn paint_range(risk: &Risk, words: &Words) -> Option<String> {
    let width = |range: &Span<f64>| range.high - range.low;
    let wider = width(&risk.interval) - width(&risk.without_paint_interval);
    let without = &chance_with_sound_paint(risk, words);
    let matters = wider >= WORTH_A_RANGE || risk.chance - risk.without_paint >= WORTH_A_RANGE;
    matters.then(|| say!(words, "options-paint-range", without = without))
}

/// A chance, 0 to 1, in whole percent.
pub(super) fn whole_percent(chance: f64) -> Percent {
    Percent::pct((100.0 * chance).round())
}

fn doubt(assessment: &Assessment, doubt: Doubt, words: &Words) -> String {
    match doubt {
        Doubt::WrongEntries(count) => say!(words, "verdict-doubt-wrong-entries", count = count),
        Doubt::DoubtedGaps(count) => say!(words, "verdict-doubt-typed-gaps", count = count),
        Doubt::WaterGetsIn(count) => say!(words, "verdict-doubt-water", count = count),
        Doubt::FewGaps { surface, section, measured } => {
            let section = Arg::Name(section_name(assessment, surface, section).unwrap_or_default());
            say!(words, "verdict-doubt-few-gaps", count = measured, section = section)
        }
        Doubt::CauseOpen(chance) => {
            let (band, percent) = percent(chance);
            say!(words, "verdict-doubt-cause", band = band, percent = percent)
        }
        Doubt::ChanceWide(lasts) => {
            let [low, high] = [lasts.low, lasts.high].map(whole_percent);
            say!(words, "verdict-doubt-chance", low = low, high = high)
        }
        Doubt::PaintDecides => say!(words, "verdict-doubt-paint"),
        Doubt::NoPlace => say!(words, "verdict-doubt-place"),
        Doubt::NoMeterReading => say!(words, "verdict-doubt-meter"),
        Doubt::MeterUnlikeRoom => say!(words, "verdict-doubt-meter-room"),
        Doubt::NoInstallDate => say!(words, "verdict-doubt-install-date"),
        Doubt::HoursNotTimed => say!(words, "verdict-doubt-hours"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::{Catalog, Job, demo_job};

    #[test]
    fn the_demo_is_told_in_three_short_lines() {
        let found = crate::assess::assess(demo_job(), Catalog::built_in());
        let words = Words::of_job(&found.job);
        let lines = lines(&found, &found.verdict(), &words);
        assert_eq!(lines.len(), 3, "{lines:#?}");
        assert!(lines[0].starts_with("Reseal between "), "{lines:#?}");
        assert!(lines[1].contains(" on site") && lines[1].contains(" through "), "{lines:#?}");
        for line in &lines {
            assert!(!line.contains(['{', '}']) && !line.contains("  ") && !line.contains(".."), "{line}");
        }
    }

    #[test]
    fn an_empty_job_is_told_what_is_missing_and_nothing_else() {
        let found = crate::assess::assess(Job::default(), Catalog::built_in());
        let lines = lines(&found, &found.verdict(), &Words::of_job(&found.job));
        assert_eq!(lines.len(), 2, "{lines:#?}");
        assert!(!lines.iter().any(|line| line.contains('$')), "no price yet: {lines:#?}");
    }
}
