//! Why an entry could not be read, as data. The sentence is made in `words`.

use super::{Length, Money};

/// How much of an entry an error keeps, in characters: enough to recognize it by.
const LONGEST_TEXT: usize = 60;

/// Why an entry could not be read: what was typed, and the rule it broke.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{text:?}: {rule}")]
pub struct EntryError {
    /// What was typed, trimmed, at most 60 characters of it.
    pub text: String,
    /// The rule it broke.
    pub rule: EntryRule,
}

impl EntryError {
    /// An error about `text`, which breaks `rule`.
    pub fn new(text: &str, rule: EntryRule) -> Self {
        Self { text: text.trim().chars().take(LONGEST_TEXT).collect(), rule }
    }
}

/// A rule that an entry can break.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum EntryRule {
    /// It is no length in any form that is read.
    #[error("not a length")]
    NotALength,
    /// A fraction has 0 under the line.
    #[error("a fraction over zero")]
    ZeroDenominator,
    /// A number without a unit follows one with a unit, as in `5 mm 3`.
    #[error("a number without a unit")]
    NumberWithoutUnit,
    /// Its terms do not add up to one length, as in `5 ft 2 ft`.
    #[error("not one length")]
    NotOneLength,
    /// The length is beyond this, which nothing in a house is.
    #[error("longer than {} m", limit.to_m())]
    LengthTooLong {
        /// The longest length that is read.
        limit: Length,
    },
    /// A length in a file without its unit.
    #[error("a length without a unit")]
    UnitMissing,
    /// It is no amount of money.
    #[error("not an amount of money")]
    NotAnAmount,
    /// The amount is this or more, which no job comes to.
    #[error("an amount of {} or more", limit.plain())]
    AmountTooLarge {
        /// The first amount that is not read.
        limit: Money,
    },
    /// It is no number.
    #[error("not a number")]
    NotANumber,
    /// It is no whole number from 0 up.
    #[error("not a whole number")]
    NotWhole,
    /// It is no date.
    #[error("not a date")]
    NotADate,
    /// It is a month where a day is needed.
    #[error("a month without a day")]
    DayMissing,
    /// It is neither a date nor a month.
    #[error("not a date or a month")]
    NotADateOrMonth,
    /// The year of the date is not one of these.
    #[error("a year not from {first} to {last}")]
    YearOutOfRange {
        /// The first year that is read.
        first: i16,
        /// The last year that is read.
        last: i16,
    },
}
