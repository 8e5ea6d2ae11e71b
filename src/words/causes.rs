//! Why the joints opened: causes, chances, clues, lumber marks.

use super::{Arg, Say, Words, say};
use crate::assess::ClueEvidence;
use crate::cause::{AgainstMarks, Cause, Mark};
use crate::measure::Percent;

impl Say for Cause {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        say!(words, "cause-label", cause = Arg::Id(self.key()))
    }
}

/// What a cause does, in a sentence.
pub fn explained(cause: Cause, words: &Words) -> String {
    say!(words, "cause-explained", cause = Arg::Id(cause.key()))
}

/// A chance, 0 to 1, as people say it: `about 3 in 10`.
pub fn chance_as_odds(chance: f64, words: &Words) -> String {
    let (odds, tenths) = odds(chance);
    say!(words, "chance-odds", odds = odds, tenths = tenths)
}

/// What the message `chance-odds`, or one that refers to it, takes: `$odds` and `$tenths`.
pub fn odds(chance: f64) -> (Arg<'static>, Arg<'static>) {
    let id = match chance {
        c if c >= 0.985 => "certain",
        c if c >= 0.945 => "nineteen_in_twenty",
        c if c >= 0.55 => "tenths",
        c if c >= 0.45 => "even",
        c if c >= 0.075 => "tenths",
        c if c >= 0.035 => "one_in_twenty",
        _ => "unlikely",
    };
    (Arg::Id(id), Arg::Number((chance * 10.0).round(), 0))
}

/// A chance, 0 to 1, in whole percent; never more certain than a model can be.
pub fn chance_as_percent(chance: f64, words: &Words) -> String {
    let (band, percent) = percent(chance);
    say!(words, "chance-percent", band = band, percent = percent)
}

/// What messages with a chance in percent take: whether it is `over` or `under` a figure or `plain`, and
/// the figure.
pub fn percent(chance: f64) -> (Arg<'static>, Percent) {
    let (band, percent) = match 100.0 * chance {
        percent if percent > 99.0 => ("over", 99.0),
        percent if percent < 1.0 => ("under", 1.0),
        percent => ("plain", percent.round()),
    };
    (Arg::Id(band), Percent::pct(percent))
}

/// Where the moisture at install stands against these lumber marks, in a sentence.
pub fn marks(against: AgainstMarks, marks: &[Mark], words: &Words) -> String {
    let name = |mark: usize| Arg::Name(marks.get(mark).map(|mark| mark.name.as_str()).unwrap_or_default());
    let sure = |surely: bool| Arg::Id(if surely { "yes" } else { "no" });
    match against {
        AgainstMarks::Driest { meets } => say!(words, "cause-mark-driest", meets = name(meets)),
        AgainstMarks::Between { meets, misses, surely } => say!(
            words,
            "cause-mark-between",
            surely = sure(surely),
            meets = name(meets),
            misses = name(misses)
        ),
        AgainstMarks::Green { misses, surely } => {
            say!(words, "cause-mark-green", surely = sure(surely), misses = name(misses))
        }
    }
}

impl Say for ClueEvidence {
    /// In a sentence or two.
    fn say(&self, words: &Words) -> String {
        match self {
            &Self::MeanGap { mean, of_dry_boards } => {
                say!(words, "cause-clue-mean-gap", mean = mean, dry = of_dry_boards)
            }
            &Self::Pattern { measured, closed, widest } => {
                say!(words, "cause-clue-pattern", measured = measured, closed = closed, widest = widest)
            }
            &Self::Moisture { now, room: None } => say!(words, "cause-clue-moisture", now = now),
            &Self::Moisture { now, room: Some(room) } => {
                say!(words, "cause-clue-moisture-differs", now = now, room = room)
            }
            Self::Failures(counts) => {
                let sentence = |&(failure, count): &(crate::survey::Failure, usize)| {
                    say!(words, "cause-clue-failures", failure = Arg::Id(failure.key()), count = count)
                };
                counts.iter().map(sentence).collect::<Vec<_>>().join(" ")
            }
        }
    }
}
