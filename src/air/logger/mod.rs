//! A room logger's readings, out of the CSV file that its maker's program writes.
//!
//! No two makers write the same file. [`guess_logger`] works out how one is laid out, for the user
//! to confirm or put right; [`read_logger`] reads it that way and gives the mean air of each day.

mod error;
mod guess;
mod moment;
mod read;

pub use error::{LoggerDoubt, LoggerError, LoggerRemark};
pub use guess::guess_logger;
pub use moment::DateOrder;
pub use read::read_logger;

use std::borrow::Cow;

use jiff::civil::Date;
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::{Air, DAYS};
use crate::measure::{Humidity, Temperature, day_of_year, parse_number};

/// How a logger's file is laid out. Rows and columns count from 0, empty lines not at all.
///
/// Numbers may have a decimal point or a decimal comma and their unit behind them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LoggerFormat {
    /// What parts the cells: a comma, semicolon, tab or bar.
    pub delimiter: char,
    /// The first row of readings; those before are headings and remarks.
    pub first_row: usize,
    /// The column with the date, and the time unless that has its own.
    pub date: usize,
    /// The column with the time alone.
    pub time: Option<usize>,
    /// How dates are written.
    pub order: DateOrder,
    /// Whether temperatures are in degrees Fahrenheit rather than Celsius.
    pub fahrenheit: bool,
    /// Where the readings of the wanted room stand.
    pub room: Room,
}

/// Where one room's readings stand in a file.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Room {
    /// The room; empty if the file names none.
    pub name: String,
    /// The column with the temperature, if there is one.
    pub temperature: Option<usize>,
    /// The column with the relative humidity in percent.
    pub humidity: usize,
    /// The column that holds the room's name in every one of its rows, if rooms are told apart so.
    pub label: Option<usize>,
}

/// How a file seems to be laid out, to be shown to the user.
#[derive(Debug, Clone, PartialEq)]
pub struct LoggerGuess {
    /// The layout, with the first of the rooms.
    pub format: LoggerFormat,
    /// The columns' headings; empty where there is none.
    pub columns: Vec<String>,
    /// The first rows of readings, at most five.
    pub preview: Vec<Vec<String>>,
    /// What the user had better look at.
    pub doubts: Vec<LoggerDoubt>,
    /// The rooms in the file, at least one: put another into `format.room` to read that.
    pub rooms: Vec<Room>,
}

/// Daily means of a room's air, as stored in the job.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(try_from = "Stored")]
pub struct LoggedAir {
    /// The room; empty if the file names none.
    pub name: String,
    /// The days with enough readings, in order of time; there may be gaps.
    pub days: Vec<LoggedDay>,
}

/// The mean air of a day. In files a line of text: date, °C, percent, hours with readings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LoggedDay {
    /// The day.
    pub date: Date,
    /// Mean temperature, to a tenth of a degree; and the humidity that brings wood to the same
    /// moisture as the day's readings do on average, to a tenth of a percent.
    pub air: Air,
    /// How many hours of the day have readings, 6 to 24.
    pub hours: u8,
}

/// A file that was read, and what was found odd about it.
#[derive(Debug, Clone, PartialEq)]
pub struct LoggerRead {
    /// The days.
    pub logged: LoggedAir,
    /// What was put right or is worth knowing.
    pub remarks: Vec<LoggerRemark>,
}

/// Why stored days are no log.
#[derive(Debug, thiserror::Error)]
enum StoredError {
    #[error("“{0}” is not a logged day, such as 2026-01-05 20.3 41.5 24: date, °C, percent, hours")]
    Day(String),
    #[error("the logged day {0} does not come after the one before it")]
    Order(Date),
}

/// The log before its days were looked at together.
#[derive(Deserialize, JsonSchema)]
#[serde(rename = "LoggedAir", deny_unknown_fields)]
struct Stored {
    name: String,
    days: Vec<LoggedDay>,
}

impl TryFrom<Stored> for LoggedAir {
    type Error = StoredError;

    fn try_from(Stored { name, days }: Stored) -> Result<Self, StoredError> {
        match days.windows(2).find(|pair| pair[1].date <= pair[0].date) {
            Some(pair) => Err(StoredError::Order(pair[1].date)),
            None => Ok(Self { name, days }),
        }
    }
}

impl LoggedAir {
    /// For each of the model's 365 days the mean of what was logged on it in any year, if anything
    /// was; 29 February counts with 28.
    pub fn by_day_of_year(&self) -> Vec<Option<Air>> {
        let mut sums = [(0.0, 0.0, 0.0); DAYS];
        for day in &self.days {
            let (temperature, humidity, count) = &mut sums[day_of_year(day.date)];
            *temperature += day.air.temperature.to_celsius();
            *humidity += day.air.humidity.to_fraction();
            *count += 1.0;
        }
        let mean = |(temperature, humidity, count): (f64, f64, f64)| {
            (count > 0.0).then(|| Air {
                temperature: Temperature::celsius(temperature / count),
                humidity: Humidity::fraction(humidity / count),
            })
        };
        sums.map(mean).to_vec()
    }
}

impl LoggedDay {
    /// A day to the precision in which it is stored.
    fn kept(date: Date, temperature: Temperature, humidity: Humidity, hours: u8) -> Self {
        // Adding zero turns −0 into 0, which would be written differently.
        let tenth = |value: f64| (value * 10.0).round() / 10.0 + 0.0;
        let temperature = Temperature::celsius(tenth(temperature.to_celsius()));
        Self { date, air: Air { temperature, humidity: Humidity::pct(tenth(humidity.to_pct())) }, hours }
    }

    fn from_text(text: &str) -> Option<Self> {
        let mut words = text.split_whitespace();
        let date = words.next()?.parse().ok()?;
        let mut number = || parse_number(words.next()?).ok();
        let (temperature, humidity) = (number()?, number()?);
        let hours = words.next()?.parse().ok()?;
        let sensible = (-40.0..=60.0).contains(&temperature) && humidity > 0.0 && humidity <= 100.0;
        if !sensible || !(1..=24).contains(&hours) || words.next().is_some() {
            return None;
        }
        Some(Self::kept(date, Temperature::celsius(temperature), Humidity::pct(humidity), hours))
    }
}

impl Serialize for LoggedDay {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let Air { temperature, humidity } = self.air;
        // Per cents come back from their fraction a hair off.
        let humidity = (humidity.to_pct() * 10.0).round() / 10.0;
        serializer.collect_str(&format_args!(
            "{} {} {humidity} {}",
            self.date,
            temperature.to_celsius(),
            self.hours
        ))
    }
}

impl<'de> Deserialize<'de> for LoggedDay {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        let error = || StoredError::Day(text.chars().take(60).collect());
        Self::from_text(&text).ok_or_else(error).map_err(de::Error::custom)
    }
}

impl JsonSchema for LoggedDay {
    fn schema_name() -> Cow<'static, str> {
        "LoggedDay".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "type": "string",
            "description": "A day of a logger: date, degrees Celsius, percent, and hours with readings, such as 2026-01-05 20.3 41.5 24",
        })
    }
}

/// The file's rows. Quotes, rows of unequal length and any end of line are taken as they come.
fn rows(text: &str, delimiter: char) -> impl Iterator<Item = csv::StringRecord> {
    csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(u8::try_from(delimiter).unwrap_or(b','))
        .from_reader(text.as_bytes())
        .into_records()
        .flatten()
}

/// The number in a cell, which may have its unit behind it.
fn number(cell: &str) -> Option<f64> {
    let bare =
        cell.trim().trim_end_matches(|c: char| c.is_alphabetic() || c.is_whitespace() || "°%℃℉".contains(c));
    // Asked first, because most cells that are no number are empty or words.
    bare.ends_with(|c: char| c.is_ascii_digit()).then(|| parse_number(bare).ok())?
}

/// The text of a row's time: of one column, or of date and time.
fn when(row: &csv::StringRecord, date: usize, time: Option<usize>) -> Option<Cow<'_, str>> {
    let day = row.get(date)?;
    match time {
        None => Some(Cow::Borrowed(day)),
        Some(time) => Some(Cow::Owned(format!("{day} {}", row.get(time)?))),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    #[test]
    fn a_day_is_stored_as_a_line() {
        let day = LoggedDay::kept(date(2026, 1, 5), Temperature::celsius(20.27), Humidity::pct(57.04), 24);
        assert_eq!(ron::to_string(&day).unwrap(), "\"2026-01-05 20.3 57 24\"");
        assert_eq!(ron::from_str::<LoggedDay>("\"2026-01-05 20.3 57 24\"").unwrap(), day);
        for wrong in ["", "2026-01-05", "2026-02-30 20 50 24", "2026-01-05 20 0 24", "2026-01-05 99 50 24"] {
            let said = ron::from_str::<LoggedDay>(&format!("{wrong:?}")).unwrap_err().to_string();
            assert!(said.contains("is not a logged day"), "{said}");
        }
    }

    #[test]
    fn days_are_stored_in_order() {
        let text = "(name: \"Hall\", days: [\"2026-01-06 20 50 24\", \"2026-01-05 20 50 24\"])";
        let said = ron::from_str::<LoggedAir>(text).unwrap_err().to_string();
        assert!(said.contains("2026-01-05 does not come after"), "{said}");
    }

    #[test]
    fn numbers_may_have_units() {
        for cell in ["20.5", " 20,5 °C", "20.5%", "20.5 %RH"] {
            assert_eq!(number(cell), Some(20.5), "{cell}");
        }
        for cell in ["", "NaN", "-", "Error 5", "5 January 2026"] {
            assert_eq!(number(cell), None, "{cell}");
        }
    }
}
