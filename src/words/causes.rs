//! Why the joints opened: causes, chances, clues, lumber marks.

use super::{Arg, Say, Words, say};
use crate::assess::ClueEvidence;
use crate::belief::{AgainstMarks, Cause, Mark};
use crate::measure::Percent;
use crate::survey::Failure;

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
        AgainstMarks::Driest { meets, surely } => {
            say!(words, "cause-mark-driest", surely = sure(surely), meets = name(meets))
        }
        AgainstMarks::Between { meets, misses, surely } => say!(
            words,
            "cause-mark-between",
            surely = sure(surely),
            meets = name(meets),
            misses = name(misses)
        ),
        AgainstMarks::Stamped { mark, meets, surely } => {
            say!(words, "cause-mark-stamped", surely = sure(surely), meets = sure(meets), mark = name(mark))
        }
        AgainstMarks::Green { misses, surely } => {
            say!(words, "cause-mark-green", surely = sure(surely), misses = name(misses))
        }
    }
}

/// Whether a section is named, as an id to select by.
fn several(section: &str) -> Arg<'static> {
    Arg::Id(if section.is_empty() { "no" } else { "yes" })
}

impl Say for ClueEvidence {
    /// In a sentence or two.
    fn say(&self, words: &Words) -> String {
        match self {
            Self::MeanGap { section, mean, of_dry_boards } => {
                say!(
                    words,
                    "cause-clue-mean-gap",
                    section = section,
                    several = several(section),
                    mean = *mean,
                    dry = *of_dry_boards
                )
            }
            &Self::Pattern { measured, closed, widest } => {
                say!(words, "cause-clue-pattern", measured = measured, closed = closed, widest = widest)
            }
            Self::Moisture { section, now, room: None } => {
                say!(words, "cause-clue-moisture", section = section, several = several(section), now = *now)
            }
            Self::Moisture { section, now, room: Some(room) } => {
                say!(
                    words,
                    "cause-clue-moisture-differs",
                    section = section,
                    several = several(section),
                    now = *now,
                    room = *room
                )
            }
            &Self::Room { humidity } => say!(words, "cause-clue-room", humidity = humidity),
            Self::Failures(counts) => {
                let sentence = |&(failure, count): &(Failure, usize)| {
                    say!(words, "cause-clue-failures", failure = Arg::Id(failure.key()), count = count)
                };
                counts.iter().map(sentence).collect::<Vec<_>>().join(" ")
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{Length, Units};

    #[test]
    fn chances_are_no_more_certain_than_a_model_can_be() {
        let words = Words::us_english(Units::Inches, "$");
        let percent = [0.999, 0.437, 0.001].map(|chance| chance_as_percent(chance, &words));
        assert_eq!(percent, ["over 99%", "44%", "under 1%"]);
    }

    #[test]
    fn counted_beads_agree_in_number() {
        let words = Words::us_english(Units::Inches, "$");
        let noted = vec![(Failure::LetGoOneSide, 4), (Failure::PaintTorn, 1)];
        let said = ClueEvidence::Failures(noted).say(&words);
        assert_eq!(said, "4 beads lost adhesion on one side. The paint tore over 1 bead.");
        let pattern = ClueEvidence::Pattern { measured: 18, closed: 0, widest: Length::inches(7.0 / 64.0) };
        assert_eq!(
            pattern.say(&words),
            "Of 18 joints measured between boards, none is closed; the widest gap is 7/64\"."
        );
    }
}
