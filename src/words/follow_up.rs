//! Later visits against what was forecast.

use super::{Arg, Say, Words, say};
use crate::assess::VisitVerdict;
use crate::measure::Length;

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
