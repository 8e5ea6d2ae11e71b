//! The year outdoors, hour by hour, from the two open formats of typical years.
//!
//! EPW: eight headed lines from LOCATION to DATA PERIODS, then an hour a line with its values in
//! fixed places. TMY3: a line for the station, a line of column names, then an hour a line. Both
//! number the hours 1 to 24 by their end. Formats as published with the *`EnergyPlus` Auxiliary
//! Programs* guide and with the *Users Manual for TMY3 Data Sets* (NREL/TP-581-43156).
//!
//! Every hour has its place in the calendar, so files may start in any month. Values are kept to
//! the tenth of a degree and the half percent, finer than they were measured, so that the job's
//! file holds exactly what is reckoned with.

mod error;

pub use error::{Gap, WeatherError, WeatherRemark};

use std::fmt::Write as _;
use std::sync::Arc;

use jiff::ToSpan as _;
use jiff::civil::{Date, date};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use statrs::statistics::Statistics as _;

use super::file_text::{Tally, plain_text};
use super::{Air, DAYS, MONTH_DAYS};
use crate::measure::{Humidity, Temperature, day_of_year, parse_number};

/// Hours in the model's year.
pub const HOURS: usize = DAYS * 24;
/// More missing hours than this leave too little of a year: a tenth.
const MOST_MISSING: usize = HOURS / 10;
/// A longer gap, in hours, is weather of its own, not to be bridged by a line: three days.
const LONGEST_GAP: usize = 72;
/// No station has measured beyond this, in °C either way.
const EXTREME: f64 = 60.0;
/// The columns of a TMY3 file that are needed.
const TMY3_COLUMNS: [&str; 4] = ["Date (MM/DD/YYYY)", "Time (HH:MM)", "Dry-bulb (C)", "RHum (%)"];
/// Where an EPW line has month, day, hour, dry bulb and relative humidity, from 0.
const EPW_PLACES: [usize; 5] = [1, 2, 3, 6, 8];

/// An outdoor year, hour by hour from 1 January, 8 760 hours. Cheap to clone.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(try_from = "Stored", into = "Stored")]
pub struct Weather {
    /// The place it is of; empty if the file names none.
    pub place: String,
    hours: Arc<[Air]>,
}

/// A file that was read, and what was found odd about it.
#[derive(Debug, Clone, PartialEq)]
pub struct WeatherRead {
    /// The year.
    pub weather: Weather,
    /// What was put right or is worth knowing.
    pub remarks: Vec<WeatherRemark>,
}

/// Reads an EPW or a TMY3 file, whichever it is.
///
/// Missing and impossible values are filled by straight lines. 29 February is left out.
///
/// # Errors
/// If the text is of neither format, or lacks more than a tenth of the year or three days in a row.
pub fn read_weather(text: &str) -> Result<WeatherRead, WeatherError> {
    let text = &*plain_text(text)?;
    let mut lines = text.split('\n').filter(|line| !line.trim().is_empty());
    let first = lines.next().unwrap_or_default();
    if starts_with(first, "LOCATION") {
        read_epw(text)
    } else if lines.next().is_some_and(|names| names.to_lowercase().contains("dry-bulb")) {
        read_tmy3(text)
    } else {
        Err(WeatherError::NeitherFormat(first.trim().chars().take(60).collect()))
    }
}

impl Weather {
    /// Makes a year from what `hour` gives for each hour from 0, held to −60..60 °C and to
    /// 0.5..100 %, kept to tenths of a degree and half percents.
    pub fn from_hours(place: impl Into<String>, hour: impl FnMut(usize) -> Air) -> Self {
        Self { place: place.into(), hours: (0..HOURS).map(hour).map(kept).collect() }
    }

    /// The 8 760 hours from 1 January.
    pub fn hours(&self) -> &[Air] {
        &self.hours
    }

    /// Means of the months from January.
    pub fn months(&self) -> [Air; 12] {
        let mut rest = &*self.hours;
        MONTH_DAYS.map(usize::from).map(|days| {
            let (month, later) = rest.split_at(days * 24);
            rest = later;
            let temperature = month.iter().map(|hour| hour.temperature.to_celsius()).mean();
            let humidity = month.iter().map(|hour| hour.humidity.to_fraction()).mean();
            Air { temperature: Temperature::celsius(temperature), humidity: Humidity::fraction(humidity) }
        })
    }
}

/// The air as it is kept: in sensible bounds, to the tenth of a degree and the half percent.
fn kept(air: Air) -> Air {
    let tenths = (air.temperature.to_celsius().clamp(-EXTREME, EXTREME) * 10.0).round();
    let halves = (air.humidity.to_pct().clamp(0.5, 100.0) * 2.0).round();
    // Adding zero turns −0 into 0, which would be written differently.
    Air { temperature: Temperature::celsius(tenths / 10.0 + 0.0), humidity: Humidity::pct(halves / 2.0) }
}

/// One line of a file: its hour, and what it gives.
struct Line {
    /// Day of the year from 0.
    day: usize,
    /// Hour as written, 0 to 24.
    hour: usize,
    /// Temperature in °C, if usable.
    temperature: Option<f64>,
    /// Relative humidity in percent, if usable.
    humidity: Option<f64>,
}

/// The lines of a file, and what was odd about them.
#[derive(Default)]
struct Lines {
    lines: Vec<Line>,
    unread: Tally,
    leap: Tally,
    extreme: Tally,
    dry: Tally,
    damp: Tally,
    wild: Tally,
}

impl Lines {
    /// Takes in a line whose month, day and hour are as written; `None` stands for a missing cell.
    fn take(&mut self, at: u64, when: Option<[&str; 3]>, values: [Option<&str>; 2]) {
        let when = when.and_then(|[month, day, hour]| {
            Some((month.trim().parse().ok()?, day.trim().parse().ok()?, hour.trim().parse().ok()?))
        });
        let Some((month, day, hour @ 0..=24)) = when else { return self.unread.add(at) };
        if (month, day) == (2, 29) {
            return self.leap.add(at);
        }
        // Any year without a 29 February will do.
        let Ok(day) = Date::new(2001, month, day) else { return self.unread.add(at) };
        let [temperature, humidity] = values.map(|cell| parse_number(cell?).ok());
        let line = Line {
            day: day_of_year(day),
            hour,
            temperature: temperature.and_then(|value| self.temperature(at, value)),
            humidity: humidity.and_then(|value| self.humidity(at, value)),
        };
        self.lines.push(line);
    }

    fn temperature(&mut self, at: u64, value: f64) -> Option<f64> {
        match value {
            // What the formats write for a missing value.
            99.9 | -9900.0 => None,
            _ if value.abs() > EXTREME => {
                self.extreme.add(at);
                None
            }
            _ => Some(value),
        }
    }

    fn humidity(&mut self, at: u64, value: f64) -> Option<f64> {
        let tally = match value {
            // What the formats write for a missing value.
            999.0 | -9900.0 => return None,
            _ if value <= 0.0 => &mut self.dry,
            _ if value <= 100.0 => return Some(value),
            // EPW allows up to 110 %: fog, as instruments give it.
            _ if value <= 110.0 => {
                self.damp.add(at);
                return Some(100.0);
            }
            _ => &mut self.wild,
        };
        tally.add(at);
        None
    }

    fn remarks(&self) -> Vec<WeatherRemark> {
        let extreme =
            |lines| WeatherRemark::ExtremeTemperatures { lines, limit: Temperature::celsius(EXTREME) };
        let remarks = [
            self.unread.any().map(WeatherRemark::LinesUnread),
            self.leap.any().map(WeatherRemark::LeapDay),
            self.extreme.any().map(extreme),
            self.dry.any().map(WeatherRemark::DryAir),
            self.wild.any().map(WeatherRemark::WildHumidity),
            self.damp.any().map(WeatherRemark::Fog),
        ];
        remarks.into_iter().flatten().collect()
    }
}

fn starts_with(line: &str, word: &str) -> bool {
    line.trim_start()
        .trim_start_matches('"')
        .get(..word.len())
        .is_some_and(|start| start.eq_ignore_ascii_case(word))
}

fn records(text: &str, quotes: bool) -> csv::Reader<&[u8]> {
    csv::ReaderBuilder::new().quoting(quotes).has_headers(false).flexible(true).from_reader(text.as_bytes())
}

fn read_epw(text: &str) -> Result<WeatherRead, WeatherError> {
    // Quotes mean nothing in this format, and its comments may hold a single one.
    let mut rows = records(text, false).into_records().flatten();
    let location = rows.next().unwrap_or_default();
    let header = |row: &csv::StringRecord| row.get(0).is_some_and(|name| starts_with(name, "DATA PERIODS"));
    let periods = rows.find(header).ok_or(WeatherError::NoDataPeriods)?;
    let an_hour = periods.get(2).unwrap_or("1").trim();
    if an_hour != "1" {
        return Err(WeatherError::RecordsAnHour(an_hour.chars().take(20).collect()));
    }
    let mut found = Lines::default();
    for record in rows {
        let [month, day, hour, temperature, humidity] = EPW_PLACES.map(|place| record.get(place));
        let when = month.zip(day).zip(hour).map(|((month, day), hour)| [month, day, hour]);
        found.take(line_of(&record), when, [temperature, humidity]);
    }
    let field = |place: usize| location.get(place).unwrap_or_default();
    assemble(place([field(1), field(2), field(3)]), field(6), &found)
}

fn read_tmy3(text: &str) -> Result<WeatherRead, WeatherError> {
    let mut rows = records(text, true).into_records().flatten();
    let station = rows.next().unwrap_or_default();
    let names = rows.next().unwrap_or_default();
    let column = |missing: &'static str| {
        let same = |name: &str| name.trim().eq_ignore_ascii_case(missing);
        let found = || names.iter().take(12).map(|name| name.trim().to_owned()).collect();
        names.iter().position(same).ok_or_else(|| WeatherError::NoColumn { missing, found: found() })
    };
    let [date, time, temperature, humidity] = TMY3_COLUMNS.map(column);
    let (date, time, temperature, humidity) = (date?, time?, temperature?, humidity?);
    let mut found = Lines::default();
    for record in rows {
        let day = record.get(date).and_then(|date| {
            let (month, rest) = date.split_once('/')?;
            Some((month, rest.split_once('/')?.0))
        });
        let hour = record.get(time).and_then(|time| Some(time.split_once(':')?.0));
        let when = day.zip(hour).map(|((month, day), hour)| [month, day, hour]);
        found.take(line_of(&record), when, [record.get(temperature), record.get(humidity)]);
    }
    let field = |place: usize| station.get(place).unwrap_or_default();
    assemble(place([field(1), field(2), ""]), field(4), &found)
}

fn line_of(record: &csv::StringRecord) -> u64 {
    record.position().map_or(0, csv::Position::line)
}

/// The place's name from its parts, without those that say nothing, and not in capitals only; empty if
/// none says anything.
fn place(parts: [&str; 3]) -> String {
    let said =
        parts.map(|part| part.trim_matches(['"', ' '])).into_iter().filter(|part| !["", "-"].contains(part));
    let mut words: Vec<String> = said.map(str::to_owned).collect();
    match words.first_mut() {
        Some(name) if !name.contains(char::is_lowercase) => *name = capitalized(name),
        _ => {}
    }
    words.join(", ")
}

fn capitalized(name: &str) -> String {
    let mut start = true;
    name.chars()
        .map(|c| {
            let shown = if start { c } else { c.to_lowercase().next().unwrap_or(c) };
            start = !c.is_alphanumeric();
            shown
        })
        .collect()
}

/// Puts the lines into the calendar and fills what is missing.
fn assemble(place: String, latitude: &str, found: &Lines) -> Result<WeatherRead, WeatherError> {
    let mut remarks = found.remarks();
    let mut temperatures = vec![None; HOURS];
    let mut humidities = vec![None; HOURS];
    for (slot, line) in slots(&found.lines, &mut remarks) {
        temperatures[slot] = line.temperature;
        humidities[slot] = line.humidity;
    }
    let missing: Vec<bool> =
        temperatures.iter().zip(&humidities).map(|(t, rh)| t.is_none() || rh.is_none()).collect();
    remarks.extend(remark_on_gaps(&missing, found.unread)?);
    if parse_number(latitude).is_ok_and(|degrees| degrees < 0.0) {
        remarks.push(WeatherRemark::South);
    }
    fill(&mut temperatures);
    fill(&mut humidities);
    let weather = Weather::from_hours(place, |hour| Air {
        temperature: Temperature::celsius(temperatures[hour].unwrap_or_default()),
        humidity: Humidity::pct(humidities[hour].unwrap_or_default()),
    });
    Ok(WeatherRead { weather, remarks })
}

/// The hour of the year, below [`HOURS`], that each line is for; the first line of those for the
/// same hour. Remarks on the order of the lines.
fn slots<'a>(lines: &'a [Line], remarks: &mut Vec<WeatherRemark>) -> Vec<(usize, &'a Line)> {
    // A file that numbers its hours from 0 to 23 numbers them by their start.
    let from_zero = lines.iter().any(|line| line.hour == 0) && lines.iter().all(|line| line.hour < 24);
    if from_zero {
        remarks.push(WeatherRemark::HoursFromZero);
    }
    let slot =
        |line: &Line| Some(line.day * 24 + if from_zero { line.hour } else { line.hour.checked_sub(1)? });
    let mut slots: Vec<_> = lines.iter().filter_map(|line| Some((slot(line)?, line))).collect();
    let falls = slots.windows(2).filter(|pair| pair[1].0 < pair[0].0).count();
    match (falls, slots.first(), slots.last()) {
        (0, ..) => {}
        (1, Some((first, _)), Some((last, _))) if last < first => {
            remarks.push(WeatherRemark::StartsWith(*first));
        }
        _ => remarks.push(WeatherRemark::Sorted),
    }
    let all = slots.len();
    slots.sort_by_key(|(slot, _)| *slot);
    slots.dedup_by_key(|(slot, _)| *slot);
    if slots.len() < all {
        remarks.push(WeatherRemark::RepeatedHours(all - slots.len()));
    }
    slots
}

/// What to say of the gaps, or why they are too many.
fn remark_on_gaps(missing: &[bool], unread: Tally) -> Result<Option<WeatherRemark>, WeatherError> {
    let hours = missing.iter().filter(|missing| **missing).count();
    if hours > MOST_MISSING {
        return Err(WeatherError::Incomplete { missing: hours, unread });
    }
    // Of equals the first.
    match gaps(missing).into_iter().rev().max_by_key(|gap| gap.hours) {
        Some(gap) if gap.hours > LONGEST_GAP => Err(WeatherError::Gap(gap)),
        longest => Ok(longest.map(|longest| WeatherRemark::Filled { hours, longest })),
    }
}

/// Each run of missing hours, the year's end joined to its start.
fn gaps(missing: &[bool]) -> Vec<Gap> {
    let start = missing.iter().position(|missing| !missing).unwrap_or(0);
    let mut gaps: Vec<Gap> = Vec::new();
    let mut inside = false;
    for hour in (start..missing.len()).chain(0..start) {
        match gaps.last_mut() {
            Some(gap) if inside && missing[hour] => gap.hours += 1,
            _ if missing[hour] => gaps.push(Gap { start: hour, hours: 1 }),
            _ => {}
        }
        inside = missing[hour];
    }
    gaps
}

/// Fills what is missing by straight lines, December running on into January. At least one value
/// must be there.
#[expect(clippy::cast_precision_loss, reason = "hours of a year")]
fn fill(values: &mut [Option<f64>]) {
    let known: Vec<(usize, f64)> =
        values.iter().enumerate().filter_map(|(hour, value)| Some((hour, (*value)?))).collect();
    let year = values.len();
    let again = known.first().map(|(hour, value)| (hour + year, *value));
    for (from, to) in known.iter().copied().zip(known.iter().copied().skip(1).chain(again)) {
        for hour in from.0 + 1..to.0 {
            let part = (hour - from.0) as f64 / (to.0 - from.0) as f64;
            values[hour % year] = Some(from.1 + (to.1 - from.1) * part);
        }
    }
}

/// The day of an hour of the year from 0, in a year of 365 days that stands for any.
pub fn date_of_hour(hour: usize) -> Date {
    let days = i32::try_from(hour / 24).unwrap_or_default();
    let first = date(2001, 1, 1);
    first.checked_add(days.days()).unwrap_or(first)
}

/// A year as it stands in a file: a line of text for each day, as `10 77, 10.2 80.5, …`, with the
/// temperature in °C and the humidity in percent of each hour.
#[derive(Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename = "Weather")]
struct Stored {
    place: String,
    days: Vec<String>,
}

/// Why stored days are no year.
#[derive(Debug, thiserror::Error)]
enum StoredError {
    #[error("the weather has {0} days, not 365")]
    Days(usize),
    #[error("day {day} of the weather has {hours} hours, not 24")]
    Hours { day: usize, hours: usize },
    #[error("day {day} of the weather has the hour “{text}”, not °C and percent such as 10.5 77")]
    Hour { day: usize, text: String },
}

impl From<Weather> for Stored {
    fn from(weather: Weather) -> Self {
        let day = |hours: &[Air]| {
            let mut line = String::with_capacity(24 * 9);
            for air in hours {
                let parted = if line.is_empty() { "" } else { ", " };
                // Per cents come back from their fraction a hair off.
                let humidity = (air.humidity.to_pct() * 2.0).round() / 2.0;
                // Writing to a string cannot fail.
                write!(line, "{parted}{} {humidity}", air.temperature.to_celsius()).ok();
            }
            line
        };
        Self { place: weather.place, days: weather.hours.chunks(24).map(day).collect() }
    }
}

impl TryFrom<Stored> for Weather {
    type Error = StoredError;

    fn try_from(stored: Stored) -> Result<Self, StoredError> {
        if stored.days.len() != DAYS {
            return Err(StoredError::Days(stored.days.len()));
        }
        let mut all = Vec::with_capacity(HOURS);
        for (day, line) in (1..).zip(&stored.days) {
            let hours = line.split(',').count();
            if hours != 24 {
                return Err(StoredError::Hours { day, hours });
            }
            for text in line.split(',') {
                let said = || StoredError::Hour { day, text: text.trim().chars().take(40).collect() };
                all.push(stored_hour(text).ok_or_else(said)?);
            }
        }
        Ok(Self { place: stored.place, hours: all.into_iter().map(kept).collect() })
    }
}

fn stored_hour(text: &str) -> Option<Air> {
    let (temperature, humidity) = text.trim().split_once(' ')?;
    let (temperature, humidity) = (parse_number(temperature).ok()?, parse_number(humidity).ok()?);
    let sensible = temperature.abs() <= EXTREME && humidity > 0.0 && humidity <= 100.0;
    let air = Air { temperature: Temperature::celsius(temperature), humidity: Humidity::pct(humidity) };
    sensible.then_some(air)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gaps_run_over_the_end_of_the_year() {
        let missing = [true, false, false, true, false, true, true];
        assert_eq!(gaps(&missing), [Gap { start: 3, hours: 1 }, Gap { start: 5, hours: 3 }]);
        let mut values = [None, Some(4.0), Some(5.0), None, Some(9.0), None, None, None];
        fill(&mut values);
        assert_eq!(values.map(Option::unwrap), [5.0, 4.0, 5.0, 7.0, 9.0, 8.0, 7.0, 6.0]);
    }

    #[test]
    fn places_are_named_readably() {
        assert_eq!(place(["SAND POINT", "AK", ""]), "Sand Point, AK");
        assert_eq!(place(["Oslo-Blindern", "-", "NOR"]), "Oslo-Blindern, NOR");
        assert_eq!(place(["", " - ", ""]), "");
        assert_eq!(date_of_hour(33 * 24 + 4).to_string(), "2001-02-03");
    }

    #[test]
    fn what_is_kept_is_what_is_written() {
        let air = |t, rh| Air { temperature: Temperature::celsius(t), humidity: Humidity::pct(rh) };
        assert_eq!(kept(air(-0.02, 57.1)), air(0.0, 57.0));
        assert_eq!(kept(air(-70.0, 0.0)), air(-60.0, 0.5));
        let weather = Weather::from_hours("A", |hour| {
            let part = f64::from(u32::try_from(hour).unwrap());
            air(part / 100.0 - 40.0, part % 100.0 + 0.5)
        });
        assert_eq!(Weather::try_from(Stored::from(weather.clone())).unwrap(), weather);
    }
}
