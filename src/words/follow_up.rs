//! Later visits against what was forecast.

use super::causes::chance_as_percent;
use super::{Arg, Say, Words, say};
use crate::assess::{Assessment, VisitVerdict};
use crate::measure::Length;

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
            say!(
                words,
                "follow-up-told-lasts",
                until = lasts.until,
                chance = &chance,
                low = &low,
                high = &high
            )
        }));
    }
    lines.push(match job.done.finished {
        Some(finished) => say!(words, "follow-up-finished", on = finished),
        None => say!(words, "follow-up-not-finished"),
    });
    lines
}

impl Say for VisitVerdict {
    /// In a sentence or two.
    fn say(&self, words: &Words) -> String {
        match *self {
            Self::NothingMeasured => say!(words, "follow-up-nothing-measured"),
            Self::TooSoon => say!(words, "follow-up-too-soon"),
            Self::OutOfRange => say!(words, "follow-up-out-of-range"),
            Self::NoForecast => say!(words, "follow-up-no-forecast"),
            Self::Forecast { inside, of, wider, holds } => {
                let side = if wider < Length::ZERO { "narrower" } else { "wider" };
                let off = wider.max(-wider);
                let figures = say!(
                    words,
                    "follow-up-forecast",
                    inside = inside,
                    of = of,
                    off = off,
                    side = Arg::Id(side)
                );
                let verdict = match holds {
                    true => say!(words, "follow-up-forecast-holds"),
                    false => say!(words, "follow-up-forecast-fails"),
                };
                figures + " " + &verdict
            }
            Self::Opened { open, of, expected: None } => {
                say!(words, "follow-up-opened", open = open, of = of)
            }
            Self::Opened { open, of, expected: Some((expected, surprise)) } => {
                let expected = Arg::Number(expected, 1);
                let figures =
                    say!(words, "follow-up-opened-expected", open = open, of = of, expected = expected);
                figures + " " + &say!(words, "follow-up-surprise", surprise = Arg::Id(surprise.key()))
            }
        }
    }
}
