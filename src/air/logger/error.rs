//! What is unclear about a logger's file, what was odd about one that was read, and why one gives no
//! days. The sentences are made in `words`.

use jiff::civil::{Date, DateTime};

use super::super::file_text::{Tally, TextError};
use super::DateOrder;
use crate::measure::{Hours, Humidity, Span, Temperature};

/// Why a file gives no days.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum LoggerError {
    /// It is no text.
    #[error(transparent)]
    Text(#[from] TextError),
    /// No line has a time and a number; the line the file starts with, at most 60 characters of it.
    #[error("no line with a time and a number; the first is {0:?}")]
    NoReadings(String),
    /// No column is the humidity; the headings there are, empty where a column has none.
    #[error("no column of humidity among {0:?}")]
    NoHumidity(Vec<String>),
    /// No line can be read in this layout; what came of the lines instead, if there were any.
    #[error("no line in this layout: {0:?}")]
    WrongLayout(Option<LoggerRemark>),
    /// No day has readings for 6 hours; the hours of the fullest.
    #[error("no day of 6 hours, the fullest has {}", .0.to_h())]
    NoDays(Hours),
}

/// What had better be looked at before a file is read.
#[derive(Debug, Clone, PartialEq)]
pub enum LoggerDoubt {
    /// A date that two orders read, neither of which makes less sense of the file.
    DateOrder {
        /// The first date of the file, as it is written.
        example: String,
        /// The order that is taken.
        taken: DateOrder,
        /// The other one.
        other: DateOrder,
    },
    /// Many lines have no time that can be read.
    UnreadTimes {
        /// How many.
        unread: usize,
        /// Of how many.
        lines: usize,
    },
    /// No column seems to be the temperature: this one will be taken.
    NoTemperature(Temperature),
    /// There are several rooms: the first is taken.
    SeveralRooms {
        /// How many.
        count: usize,
        /// The one that is taken; empty if it has no name.
        taken: String,
    },
    /// There are no headings, so that the columns are told by their values.
    NoHeadings,
    /// Many lines have a time that others have, too, as if two sensors were in the file.
    RepeatedTimes {
        /// How many.
        repeated: usize,
        /// Of how many.
        lines: usize,
    },
    /// Temperatures may be in °C or in °F; their median, as a bare number.
    TemperatureUnit {
        /// The median of the column.
        typical: f64,
    },
}

/// What was odd about a file that was read.
#[derive(Debug, Clone, PartialEq)]
pub enum LoggerRemark {
    /// Lines without a time, left out.
    LinesWithoutTime(Tally),
    /// Lines without a value, left out.
    LinesWithoutValue(Tally),
    /// Humidities that no working sensor gives, left out.
    HumidityFaults {
        /// The lines.
        lines: Tally,
        /// Below and above these it is a fault.
        range: Span<Humidity>,
        /// The worst.
        worst: Humidity,
    },
    /// Temperatures that no room has, left out.
    TemperatureFaults {
        /// The lines.
        lines: Tally,
        /// Below and above these it is a fault.
        range: Span<Temperature>,
        /// The worst.
        worst: Temperature,
    },
    /// There is no temperature: this one was taken.
    NoTemperature(Temperature),
    /// The times are in UTC, so that days run from midnight there.
    UtcTimes,
    /// The clock goes back by an hour at most within this day, as at the end of daylight saving time.
    ClockBack(Date),
    /// The lines were not in the order of time.
    Sorted,
    /// Readings whose time comes again: the last of each time was taken.
    RepeatedTimes(usize),
    /// Readings far from those just before and after, left out.
    Spikes {
        /// How many.
        count: usize,
        /// When the worst was.
        at: DateTime,
        /// Its humidity.
        humidity: Humidity,
        /// Its temperature.
        temperature: Temperature,
    },
    /// Stretches of more than a day without readings: from the day of the last to that of the next.
    Gaps {
        /// How many.
        count: usize,
        /// The longest.
        longest: Span<Date>,
    },
    /// Days with fewer than 6 hours of readings, left out.
    ShortDays(Vec<Date>),
}
