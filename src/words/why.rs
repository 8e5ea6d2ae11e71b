//! Why the joints opened: what the readings say of a section and of all joints.

use super::causes::percent;
use super::{Arg, Say, Words, say};
use crate::assess::{Closing, ClueFinding, DryingLeft, SectionState};
use crate::belief::Cause;
use crate::measure::Moisture;

/// Above this a factor on the odds is only known to be large.
const LARGE: f64 = 1000.0;

/// A cause with the chance that it plays a part.
pub fn cause_chance(cause: Cause, chance: f64, words: &Words) -> String {
    let (band, percent) = percent(chance);
    say!(words, "why-cause-chance", cause = Arg::Id(cause.key()), band = band, percent = percent)
}

/// What a clue argues for and against, a line each; one line where it argues for nothing.
pub fn argues(clue: &ClueFinding, words: &Words) -> Vec<String> {
    let mut lines = Vec::new();
    lines.extend(clue.argues_for.map(|(cause, times)| {
        let (size, factor) = factor(times);
        say!(words, "why-clue-for", size = size, cause = Arg::Id(cause.key()), factor = factor)
    }));
    lines.extend(clue.argues_against.map(|(cause, times)| {
        let (size, factor) = factor(times);
        say!(words, "why-clue-against", size = size, cause = Arg::Id(cause.key()), factor = factor)
    }));
    if lines.is_empty() {
        lines.push(say!(words, "why-clue-neither"));
    }
    lines
}

/// A factor on the odds without false precision.
fn factor(times: f64) -> (Arg<'static>, Arg<'static>) {
    match times {
        times if times >= LARGE => (Arg::Id("over"), Arg::Number(LARGE, 0)),
        times if times >= 10.0 => (Arg::Id("plain"), Arg::Number(times, 0)),
        times => (Arg::Id("plain"), Arg::Number(times, 1)),
    }
}

/// What is known of the boards' moisture today.
pub fn boards_today(state: &SectionState, words: &Words) -> String {
    let (now, readings) = (state.now.moisture, state.now.readings);
    say!(words, "why-boards-today-value", readings = readings, moisture = now.mean, error = now.sd)
}

/// The moisture the boards had at install; `None` where no gap was measured.
pub fn boards_at_install(state: &SectionState, words: &Words) -> Option<String> {
    let origin = state.origin?;
    let whole = |moisture: Moisture| Moisture::pct(moisture.to_pct().round());
    let (low, high) = (whole(origin.interval.low), whole(origin.interval.high));
    Some(match origin.beyond_drying {
        true => say!(words, "why-beyond-drying"),
        false => {
            say!(words, "why-boards-at-install-value", moisture = origin.moisture, low = low, high = high)
        }
    })
}

/// What is left of the boards' drying, and how long it takes.
pub fn drying(state: &SectionState, words: &Words) -> String {
    let (left, moisture) = match state.drying_left() {
        DryingLeft::Settled => ("settled", Moisture::ZERO),
        DryingLeft::Dries(moisture) => ("dries", moisture),
        DryingLeft::TakesUp(moisture) => ("takes_up", moisture),
    };
    let days = state.settled.days_to_settle();
    let within = Arg::Id(if days.is_some() { "known" } else { "long" });
    let (left, days) = (Arg::Id(left), days.unwrap_or_default());
    say!(words, "why-drying-value", left = left, within = within, moisture = moisture, days = days)
}

impl Say for Closing {
    /// How much closes, and by when.
    fn say(&self, words: &Words) -> String {
        match *self {
            Self::No => say!(words, "why-closes-none"),
            Self::Part { share, left, by } => {
                say!(words, "why-closes-part", share = share, left = left, by = by)
            }
            Self::Whole { by } => say!(words, "why-closes-whole", by = by),
        }
    }
}
