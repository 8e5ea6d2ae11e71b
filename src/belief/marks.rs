//! What the stamps on lumber allow.

use serde::{Deserialize, Serialize};

use crate::measure::{Moisture, Span};
use crate::wood::Kind;

/// A moisture mark.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Mark {
    /// As stamped, such as `KD 15`.
    pub name: String,
    /// The most moisture it allows.
    pub most: Moisture,
    /// Where it is defined.
    pub source: String,
    /// How far to trust that.
    pub kind: Kind,
}

/// Where the moisture at install stands against the lumber marks. Marks are named by their index in the
/// list, driest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AgainstMarks {
    /// As dry as the driest mark promises.
    Driest {
        /// The driest mark.
        meets: usize,
        /// Whether the whole interval is within it.
        surely: bool,
    },
    /// Within one mark and wetter than the next drier one.
    Between {
        /// The driest mark that allows it.
        meets: usize,
        /// The wettest mark that does not.
        misses: usize,
        /// Whether the whole interval is over that one.
        surely: bool,
    },
    /// Held against the mark that they were stamped with.
    Stamped {
        /// That mark.
        mark: usize,
        /// Whether they were as dry as it promises.
        meets: bool,
        /// Whether the whole interval says so.
        surely: bool,
    },
    /// Wetter than every mark allows: green.
    Green {
        /// The wettest mark.
        misses: usize,
        /// Whether the whole interval is over it.
        surely: bool,
    },
}

/// The mark that a stamp shows, as somebody noted it: `KD15`, `kd-15`, `S-DRY (19%)`.
fn stamped(stamp: &str, marks: &[Mark]) -> Option<usize> {
    let letters = |text: &str| -> String {
        // What stands in brackets explains the mark.
        let own = text.split('(').next().unwrap_or_default();
        own.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_lowercase).collect()
    };
    let noted = letters(stamp);
    marks.iter().position(|mark| !letters(&mark.name).is_empty() && noted.contains(&letters(&mark.name)))
}

/// Holds `moisture`, which likely lies within `interval`, against `marks`, driest first: against that of `stamp`
/// alone where it shows one of them. `None` without any marks.
pub fn against_marks(
    moisture: Moisture,
    interval: Span<Moisture>,
    stamp: &str,
    marks: &[Mark],
) -> Option<AgainstMarks> {
    if let Some(mark) = stamped(stamp, marks) {
        let most = marks[mark].most;
        let meets = moisture <= most;
        let surely = if meets { interval.high <= most } else { interval.low > most };
        return Some(AgainstMarks::Stamped { mark, meets, surely });
    }
    let meets = marks.iter().position(|mark| moisture <= mark.most);
    let misses = marks.iter().rposition(|mark| moisture > mark.most);
    let surely = misses.is_some_and(|mark| interval.low > marks[mark].most);
    match (meets, misses) {
        (Some(meets), None) => {
            Some(AgainstMarks::Driest { meets, surely: interval.high <= marks[meets].most })
        }
        (Some(meets), Some(misses)) => Some(AgainstMarks::Between { meets, misses, surely }),
        (None, Some(misses)) => Some(AgainstMarks::Green { misses, surely }),
        (None, None) => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn marks() -> Vec<Mark> {
        [12.0, 15.0, 19.0]
            .map(|most| Mark {
                name: String::new(),
                most: Moisture::pct(most),
                source: String::new(),
                kind: Kind::Published,
            })
            .to_vec()
    }

    fn at(pct: f64, low: f64) -> Option<AgainstMarks> {
        let interval = Span { low: Moisture::pct(low), high: Moisture::pct(2.0 * pct - low) };
        against_marks(Moisture::pct(pct), interval, "", &marks())
    }

    #[test]
    fn a_moisture_stands_between_the_mark_it_meets_and_the_one_it_misses() {
        assert_eq!(at(12.0, 10.0), Some(AgainstMarks::Driest { meets: 0, surely: false }));
        assert_eq!(at(10.0, 8.0), Some(AgainstMarks::Driest { meets: 0, surely: true }));
        assert_eq!(at(17.0, 14.0), Some(AgainstMarks::Between { meets: 2, misses: 1, surely: false }));
        assert_eq!(at(17.0, 15.5), Some(AgainstMarks::Between { meets: 2, misses: 1, surely: true }));
        assert_eq!(at(24.0, 18.0), Some(AgainstMarks::Green { misses: 2, surely: false }));
        assert_eq!(at(24.0, 20.0), Some(AgainstMarks::Green { misses: 2, surely: true }));
        assert_eq!(
            against_marks(
                Moisture::pct(9.0),
                Span { low: Moisture::ZERO, high: Moisture::pct(18.0) },
                "",
                &[]
            ),
            None
        );
    }

    /// Boards that were stamped are held against their own stamp, however it was written down.
    #[test]
    fn a_stamp_that_was_noted_is_the_one_that_counts() {
        let names = ["KD 12", "KD 15", "S-DRY (19%)"];
        let named: Vec<Mark> = marks()
            .into_iter()
            .zip(names)
            .map(|(mark, name)| Mark { name: name.to_owned(), ..mark })
            .collect();
        let held = |stamp: &str, pct: f64| {
            let interval = Span { low: Moisture::pct(pct - 1.0), high: Moisture::pct(pct + 1.0) };
            against_marks(Moisture::pct(pct), interval, stamp, &named)
        };
        for stamp in ["s-dry", "S DRY 19%", "Mill 12, S-DRY"] {
            let found = held(stamp, 14.0);
            assert_eq!(found, Some(AgainstMarks::Stamped { mark: 2, meets: true, surely: true }), "{stamp}");
        }
        let over = AgainstMarks::Stamped { mark: 1, meets: false, surely: false };
        assert_eq!(held("KD15", 15.5), Some(over));
        assert_eq!(held("no stamp", 14.0), held("", 14.0));
        assert_ne!(held("", 14.0), held("KD15", 14.0));
    }
}
