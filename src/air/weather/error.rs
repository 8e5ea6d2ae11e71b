//! What was odd about a weather file, and why one gives no year. The sentences are made in `words`.

use super::super::file_text::{Tally, TextError};
use crate::measure::Temperature;

/// Why a file gives no year.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum WeatherError {
    /// It is no text.
    #[error(transparent)]
    Text(#[from] TextError),
    /// Neither EPW nor TMY3; the line it starts with, at most 60 characters of it.
    #[error("neither EPW nor TMY3; the first line is {0:?}")]
    NeitherFormat(String),
    /// An EPW file without the line DATA PERIODS before its hours.
    #[error("an EPW file without DATA PERIODS")]
    NoDataPeriods,
    /// An EPW file with this many records an hour, as it is written there.
    #[error("an EPW file with {0:?} records an hour")]
    RecordsAnHour(String),
    /// A TMY3 file without a column that is needed.
    #[error("a TMY3 file without the column {missing:?}")]
    NoColumn {
        /// The column's name.
        missing: &'static str,
        /// The names there are, at most twelve.
        found: Vec<String>,
    },
    /// More than a tenth of the year's 8760 hours have no usable values.
    #[error("{missing} hours missing")]
    Incomplete {
        /// How many hours.
        missing: usize,
        /// The lines that could not be read as an hour.
        unread: Tally,
    },
    /// More than three days in a row have no usable values.
    #[error("{} hours in a row missing", .0.hours)]
    Gap(Gap),
}

/// Hours in a row without usable values.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Gap {
    /// The first of them, as an hour of the year from 0.
    pub start: usize,
    /// How many; the gap may run over the end of the year.
    pub hours: usize,
}

/// What was odd about a file that was read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum WeatherRemark {
    /// Lines that are no hour of a year, left out.
    LinesUnread(Tally),
    /// Hours of 29 February, left out.
    LeapDay(Tally),
    /// Temperatures beyond what any station has measured, taken as missing.
    ExtremeTemperatures {
        /// The lines.
        lines: Tally,
        /// Farther from 0 °C than this, either way.
        limit: Temperature,
    },
    /// Humidities of 0 % or less, taken as missing.
    DryAir(Tally),
    /// Humidities above 110 %, taken as missing.
    WildHumidity(Tally),
    /// Humidities from 100 to 110 %, taken as 100 %.
    Fog(Tally),
    /// The hours are numbered from 0 to 23, by their start.
    HoursFromZero,
    /// The file starts with this hour of the year; its hours were put in calendar order.
    StartsWith(usize),
    /// The hours were not in order.
    Sorted,
    /// Hours that came again: the first of each was taken.
    RepeatedHours(usize),
    /// Hours without usable values, filled by straight lines.
    Filled {
        /// How many hours.
        hours: usize,
        /// The longest stretch of them.
        longest: Gap,
    },
    /// The place lies south of the equator, so that its winter is in July.
    South,
}
