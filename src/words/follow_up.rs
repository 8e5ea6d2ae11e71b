//! Later visits against what was forecast.

use jiff::ToSpan as _;

use super::causes::chance_as_percent;
use super::{Arg, Say, Words, say};
use crate::assess::{Assessment, Surprise, VisitOutcome, VisitVerdict};
use crate::measure::Length;

/// A chance whose range spans more points than this is told as hardly known.
const WIDE: f64 = 60.0;

/// What later visits are held against, in sentences: what the papers told, and when the work was done.
pub fn told(assessment: &Assessment, words: &Words) -> Vec<String> {
    let job = &*assessment.job;
    let mut lines = match &job.promise {
        None => vec![say!(words, "follow-up-told-nothing")],
        Some(told) => {
            let name = assessment.catalog.method(told.option).map_or("", |method| method.name.as_str());
            let price = words.figures().money(told.total);
            vec![say!(words, "follow-up-told", on = told.told_on, option = Arg::Called(name), price = &price)]
        }
    };
    if let Some(told) = &job.promise {
        lines.extend(told.seal_on.map(|day| say!(words, "follow-up-told-sealing", day = day)));
        lines.extend(told.lasts.map(|lasts| {
            let [chance, low, high] = [lasts.chance, lasts.low, lasts.high]
                .map(|chance| chance_as_percent(chance.to_fraction(), words));
            let wide = (lasts.high - lasts.low).to_pct() > WIDE;
            say!(
                words,
                "follow-up-told-lasts",
                until = lasts.until,
                doubt = Arg::Id(if wide { "wide" } else { "known" }),
                chance = &chance,
                low = &low,
                high = &high
            )
        }));
    }
    // What was done in the end may be another repair than was offered.
    let done = job.done.finished.and(assessment.chosen());
    let other = done.filter(|done| job.promise.as_ref().is_some_and(|told| told.option != done.method));
    lines.extend(other.map(|done| say!(words, "follow-up-did-other", option = Arg::Called(&done.name))));
    lines.push(match job.done.finished {
        Some(finished) => say!(words, "follow-up-finished", on = finished),
        None => say!(words, "follow-up-not-finished"),
    });
    lines
}

/// What a later visit came to, for the owner: what was found against what was told, and what the warranty says of it.
pub fn for_owner(assessment: &Assessment, visit: &VisitOutcome, words: &Words) -> String {
    let said = match visit.verdict {
        VisitVerdict::Forecast { of, holds, .. } => {
            let verdict = match holds {
                _ if of < FEW => say!(words, "follow-up-forecast-few", count = of),
                true => say!(words, "follow-up-forecast-holds"),
                false => say!(words, "follow-up-forecast-missed"),
            };
            figures(visit.verdict, words) + " " + &verdict
        }
        VisitVerdict::Opened { of, expected: Some((_, surprise)), .. } => {
            let said = say!(words, "follow-up-surprise", surprise = Arg::Id(surprise.key()));
            let few = (of < FEW && matches!(surprise, Surprise::AsExpected | Surprise::More))
                .then(|| say!(words, "follow-up-forecast-few", count = of));
            let all = [Some(figures(visit.verdict, words)), Some(said), few];
            all.into_iter().flatten().collect::<Vec<_>>().join(" ")
        }
        verdict => verdict.say(words),
    };
    match warranty(assessment, visit, words) {
        Some(warranty) => said + " " + &warranty,
        None => said,
    }
}

/// So few joints say little of a forecast.
const FEW: usize = 4;

/// What the warranty says of the joints that were looked at after the work; `None` where nothing is warranted.
fn warranty(assessment: &Assessment, visit: &VisitOutcome, words: &Words) -> Option<String> {
    let plan = &assessment.job.plan;
    let finished = assessment.job.done.finished.filter(|_| visit.after_work && !visit.readings.is_empty())?;
    let until = finished.checked_add(i64::from(plan.warranty_years).years()).ok()?;
    let warranted = assessment.chosen().is_some_and(|option| !assessment.advises_against(option));
    if plan.warranty_years == 0 || visit.on > until || !warranted || !assessment.lays_beads() {
        return None;
    }
    let over = visit.readings.iter().filter(|reading| reading.width > plan.callback.widest).count();
    let beads = visit.beads?;
    let (share, limit) = (beads.open_share, plan.callback.open_share);
    let checked =
        say!(words, "follow-up-checked", checked = beads.checked, sealed = beads.sealed, share = share);
    let said = if over == 0 && share > limit {
        say!(words, "follow-up-warranty-share", limit = limit, until = until)
    } else {
        let widest = plan.callback.widest;
        say!(words, "follow-up-warranty", count = over, widest = widest, limit = limit, until = until)
    };
    Some(checked + " " + &said)
}

impl Say for VisitVerdict {
    /// In a sentence or two.
    fn say(&self, words: &Words) -> String {
        let figures = figures(*self, words);
        match *self {
            Self::Forecast { holds: true, .. } => figures + " " + &say!(words, "follow-up-forecast-holds"),
            Self::Forecast { holds: false, .. } => figures + " " + &say!(words, "follow-up-forecast-fails"),
            Self::Opened { expected: Some((_, surprise)), .. } => {
                let said = say!(words, "follow-up-surprise", surprise = Arg::Id(surprise.key()));
                let ask = (surprise == Surprise::TooMany).then(|| say!(words, "follow-up-find-out"));
                [Some(figures), Some(said), ask].into_iter().flatten().collect::<Vec<_>>().join(" ")
            }
            _ => figures,
        }
    }
}

/// What was found, in a sentence.
pub(super) fn figures(of: VisitVerdict, words: &Words) -> String {
    match of {
        VisitVerdict::NothingMeasured => say!(words, "follow-up-nothing-measured"),
        VisitVerdict::TooSoon => say!(words, "follow-up-too-soon"),
        VisitVerdict::OutOfRange => say!(words, "follow-up-out-of-range"),
        VisitVerdict::NoForecast => say!(words, "follow-up-no-forecast"),
        VisitVerdict::Covered => say!(words, "follow-up-covered"),
        VisitVerdict::Forecast { inside, of, wider, .. } => {
            let side = if wider < Length::ZERO { "narrower" } else { "wider" };
            let off = wider.max(-wider);
            say!(words, "follow-up-forecast", inside = inside, of = of, off = off, side = Arg::Id(side))
        }
        VisitVerdict::Lines { wider, of, widest } => {
            say!(words, "follow-up-lines", wider = wider, of = of, widest = widest)
        }
        VisitVerdict::Opened { open, of, expected: None } => {
            say!(words, "follow-up-opened", open = open, of = of)
        }
        VisitVerdict::Opened { open, of, expected: Some((expected, _)) } => {
            let expected = Arg::Number(expected.round(), 0);
            say!(words, "follow-up-opened-expected", open = open, of = of, expected = expected)
        }
    }
}
