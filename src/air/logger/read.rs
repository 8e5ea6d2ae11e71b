//! From a logger's rows to the mean air of each day.

use std::collections::BTreeMap;

use jiff::SignedDuration;
use jiff::civil::{Date, DateTime, Time};

use super::moment::moment;
use super::{DateOrder, LoggedAir, LoggedDay, LoggerError, LoggerFormat, LoggerRead, number, rows, when};
use crate::air::file_text::{Tally, counted, first_few, plain_text};
use crate::measure::{Humidity, Moisture, Temperature, show_date, show_number};
use crate::wood::{emc, equilibrium_humidity};

/// A reading holds until the next, but no longer than this.
const LONGEST_HOLD: SignedDuration = SignedDuration::from_hours(2);
/// Hours with readings from which on a day counts.
const LEAST_HOURS: f64 = 6.0;
/// Rooms are within these: °C and per cent. Sensors that fail give 0, 100 or more.
const SENSIBLE_TEMPERATURE: std::ops::RangeInclusive<f64> = -40.0..=60.0;
const SENSIBLE_HUMIDITY: std::ops::RangeInclusive<f64> = 1.0..=99.9;
/// Readings on either side whose median a reading is held against, and how far off it may be, in
/// per cent and °C. A bath or an open window changes a room by less, or for longer.
const NEIGHBORS: usize = 3;
const FAR_HUMIDITY: f64 = 25.0;
const FAR_TEMPERATURE: f64 = 12.0;
/// Without a column for it, the room's temperature: it changes wood's moisture by little.
const ASSUMED_TEMPERATURE: f64 = 20.0;

/// Reads a logger's file in the given layout and gives the mean air of each day with at least 6
/// hours of readings.
///
/// A reading counts until the next one, for 2 hours at most, so that days are not biased by when
/// the logger wrote. A day's humidity is the one whose equilibrium moisture at the day's mean
/// temperature is the mean of that of its readings, because wood takes up water out of proportion
/// in damp air. Faulty readings are left out, and told of.
///
/// # Errors
/// If the text is none, no line can be read in this layout, or no day has enough readings.
pub fn read_logger(text: &str, format: &LoggerFormat) -> Result<LoggerRead, LoggerError> {
    let text = plain_text(text)?;
    let mut found = Found::default();
    for row in rows(text, format.delimiter).skip(format.first_row) {
        found.take(&row, format);
    }
    let mut remarks = Vec::new();
    found.remarks(&mut remarks);
    if found.readings.is_empty() {
        let said =
            remarks.first().map_or(String::new(), |remark| format!(": {}", remark.trim_end_matches('.')));
        return Err(LoggerError::WrongLayout(said));
    }
    found.remarks_on_layout(format, &mut remarks);
    let mut readings = found.readings;
    sort(&mut readings, &mut remarks);
    let readings = without_spikes(readings, &mut remarks);
    remark_on_gaps(&readings, &mut remarks);
    let days = days(&readings, &mut remarks)?;
    let name = if format.room.name.is_empty() { "Room" } else { &format.room.name };
    Ok(LoggerRead { logged: LoggedAir { name: name.to_owned(), days }, remarks })
}

/// One reading: the wall clock's time, °C and per cent.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Reading {
    at: DateTime,
    temperature: f64,
    humidity: f64,
}

/// The readings of a file, and what was odd about it.
#[derive(Default)]
struct Found {
    readings: Vec<Reading>,
    text_lines: Tally,
    no_value: Tally,
    humidity_faults: Tally,
    worst_humidity: f64,
    temperature_faults: Tally,
    worst_temperature: f64,
    utc: bool,
}

impl Found {
    fn take(&mut self, row: &csv::StringRecord, format: &LoggerFormat) {
        let room = &format.room;
        if room.label.is_some_and(|label| row.get(label).map(str::trim) != Some(room.name.as_str())) {
            return;
        }
        let line = row.position().map_or(0, csv::Position::line);
        let text = when(row, format.date, format.time);
        let Some(at) = text.as_deref().and_then(|text| moment(text, format.order)) else {
            return self.text_lines.add(line);
        };
        let value = |column: usize| row.get(column).and_then(number);
        let temperature = room.temperature.map_or(Some(ASSUMED_TEMPERATURE), |column| {
            let degrees = value(column)?;
            Some(if format.fahrenheit { Temperature::fahrenheit(degrees).to_celsius() } else { degrees })
        });
        let Some((temperature, humidity)) = temperature.zip(value(room.humidity)) else {
            return self.no_value.add(line);
        };
        self.utc |= text.is_some_and(|text| text.trim_end().ends_with(['Z', 'z']));
        if !SENSIBLE_HUMIDITY.contains(&humidity) {
            self.worst_humidity = farther(self.worst_humidity, humidity, 50.0, self.humidity_faults);
            self.humidity_faults.add(line);
        } else if !SENSIBLE_TEMPERATURE.contains(&temperature) {
            self.worst_temperature =
                farther(self.worst_temperature, temperature, 20.0, self.temperature_faults);
            self.temperature_faults.add(line);
        } else {
            self.readings.push(Reading { at, temperature, humidity });
        }
    }

    fn remarks(&self, remarks: &mut Vec<String>) {
        self.text_lines.remark(remarks, |Tally { count, first }| {
            format!("{} without a time left out, first line {first}.", counted(count, "line"))
        });
        self.no_value.remark(remarks, |Tally { count, first }| {
            format!("{} without a value left out, first line {first}.", counted(count, "line"))
        });
        self.humidity_faults.remark(remarks, |Tally { count, first }| {
            let (count, worst) = (counted(count, "humidity reading"), show_number(self.worst_humidity, 1));
            format!("{count} outside 1 to 99.9 % taken for faults and left out, such as {worst} %, first line {first}.")
        });
        self.temperature_faults.remark(remarks, |Tally { count, first }| {
            let (count, worst) = (counted(count, "temperature"), show_number(self.worst_temperature, 1));
            format!("{count} outside −40 to 60 °C taken for faults and left out, such as {worst} °C, first line {first}.")
        });
    }

    fn remarks_on_layout(&self, format: &LoggerFormat, remarks: &mut Vec<String>) {
        if format.room.temperature.is_none() {
            remarks.push(
                "There is no temperature: 20 °C was taken, on which wood's moisture hardly depends."
                    .to_owned(),
            );
        }
        if self.utc || matches!(format.order, DateOrder::EpochSeconds | DateOrder::EpochMilliseconds) {
            remarks.push("The times are in UTC: days run from midnight there.".to_owned());
        }
    }
}

/// The one of two faults that is farther from the usual; the new one if there was none before.
fn farther(before: f64, now: f64, usual: f64, faults: Tally) -> f64 {
    if faults.count == 0 || (now - usual).abs() > (before - usual).abs() { now } else { before }
}

/// Puts the readings in order of time. Of several with one time, the last that the file has counts.
fn sort(readings: &mut Vec<Reading>, remarks: &mut Vec<String>) {
    let backward = |pair: &[Reading]| {
        (pair[1].at < pair[0].at).then(|| (pair[0].at, pair[0].at.duration_since(pair[1].at)))
    };
    let falls: Vec<(DateTime, SignedDuration)> = readings.windows(2).filter_map(backward).collect();
    match falls.as_slice() {
        [] => {}
        [(at, back)] if *back <= SignedDuration::from_hours(1) => {
            let day = show_date(at.date());
            remarks.push(format!("The clock goes back within {day}, as at the end of summer time."));
        }
        _ => remarks.push("The lines were not in the order of time and were sorted.".to_owned()),
    }
    readings.sort_by_key(|reading| reading.at);
    let all = readings.len();
    readings.dedup_by(|next, kept| {
        let same = next.at == kept.at;
        if same {
            *kept = *next;
        }
        same
    });
    if readings.len() < all {
        let again = counted(all - readings.len(), "reading");
        remarks.push(format!("{again} with a time that comes again: the last of each was taken."));
    }
}

/// The readings that are not far off from what was read just before and just after.
fn without_spikes(readings: Vec<Reading>, remarks: &mut Vec<String>) -> Vec<Reading> {
    let far_off = |at: usize| {
        let before = &readings[at.saturating_sub(NEIGHBORS)..at];
        let after = &readings[at + 1..(at + 1 + NEIGHBORS).min(readings.len())];
        // Before and after each for itself, because a step has its like on one side.
        let off = |value: fn(&Reading) -> f64| {
            let from = |near| Some((value(&readings[at]) - median(near, value)?).abs());
            Some(from(before)?.min(from(after)?))
        };
        let (humidity, temperature) = (off(|near| near.humidity)?, off(|near| near.temperature)?);
        (humidity > FAR_HUMIDITY || temperature > FAR_TEMPERATURE).then_some(humidity + temperature)
    };
    let offs: Vec<Option<f64>> = (0..readings.len()).map(far_off).collect();
    let spikes = || offs.iter().zip(&readings).filter_map(|(off, reading)| Some(((*off)?, reading)));
    let Some((_, worst)) = spikes().max_by(|one, other| one.0.total_cmp(&other.0)) else { return readings };
    let (count, at) = (counted(spikes().count(), "reading"), worst.at.strftime("%-d %b %Y %H:%M"));
    let (temperature, humidity) = (show_number(worst.temperature, 1), show_number(worst.humidity, 1));
    remarks.push(format!(
        "{count} far from those around left out as spikes, the worst {humidity} % and {temperature} °C on {at}."
    ));
    readings.iter().zip(&offs).filter(|(_, off)| off.is_none()).map(|(reading, _)| *reading).collect()
}

/// The middle one of a few values; `None` of none, as before the first reading.
fn median(readings: &[Reading], value: fn(&Reading) -> f64) -> Option<f64> {
    let mut values: Vec<f64> = readings.iter().map(value).collect();
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied()
}

fn remark_on_gaps(readings: &[Reading], remarks: &mut Vec<String>) {
    let gap = |pair: &[Reading]| {
        let (from, to) = (pair[0].at, pair[1].at);
        let long = to.duration_since(from) > SignedDuration::from_hours(24);
        long.then(|| format!("{} to {}", show_date(from.date()), show_date(to.date())))
    };
    let gaps: Vec<String> = readings.windows(2).filter_map(gap).collect();
    if !gaps.is_empty() {
        remarks.push(format!("No readings for more than a day: {}.", first_few(&gaps)));
    }
}

/// A reading's part of a day: for how many seconds, °C and per cent.
type Part = (f64, f64, f64);

/// The days with enough readings.
fn days(readings: &[Reading], remarks: &mut Vec<String>) -> Result<Vec<LoggedDay>, LoggerError> {
    let mut parts: BTreeMap<Date, Vec<Part>> = BTreeMap::new();
    for (index, reading) in readings.iter().enumerate() {
        for (date, seconds) in held(reading.at, readings.get(index + 1).map(|next| next.at)) {
            parts.entry(date).or_default().push((seconds, reading.temperature, reading.humidity));
        }
    }
    let mut days = Vec::new();
    let mut short = Vec::new();
    let mut fullest: f64 = 0.0;
    for (date, parts) in &parts {
        let hours = parts.iter().map(|(seconds, ..)| seconds).sum::<f64>() / 3600.0;
        fullest = fullest.max(hours);
        match mean_air(parts).filter(|_| hours >= LEAST_HOURS) {
            Some((temperature, humidity)) => {
                days.push(LoggedDay::kept(*date, temperature, humidity, whole(hours)));
            }
            // A day that only the last reading of the day before reaches into is no day of the log.
            None if readings.binary_search_by_key(date, |reading| reading.at.date()).is_err() => {}
            None => short.push(show_date(*date)),
        }
    }
    if days.is_empty() {
        return Err(LoggerError::NoDays(show_number(fullest, 1)));
    }
    if !short.is_empty() {
        let count = counted(short.len(), "day");
        remarks.push(format!("{count} with less than 6 hours of readings left out: {}.", first_few(&short)));
    }
    Ok(days)
}

/// The days that a reading counts for, and for how many seconds.
fn held(from: DateTime, next: Option<DateTime>) -> impl Iterator<Item = (Date, f64)> {
    let longest = from.checked_add(LONGEST_HOLD).unwrap_or(from);
    let end = next.map_or(longest, |next| next.min(longest));
    let midnight = from.date().tomorrow().map_or(end, |day| day.to_datetime(Time::midnight()));
    let seconds = |from: DateTime, to: DateTime| to.duration_since(from).as_secs_f64();
    let today = (from.date(), seconds(from, end.min(midnight)));
    [today, (end.date(), seconds(midnight, end))].into_iter().filter(|(_, seconds)| *seconds > 0.0)
}

/// Mean temperature, and the humidity of the mean equilibrium moisture; `None` of no time at all.
fn mean_air(parts: &[Part]) -> Option<(Temperature, Humidity)> {
    let all: f64 = parts.iter().map(|(seconds, ..)| seconds).sum();
    if all <= 0.0 {
        return None;
    }
    let mean =
        |value: &dyn Fn(&Part) -> f64| parts.iter().map(|part| part.0 * value(part)).sum::<f64>() / all;
    let temperature = Temperature::celsius(mean(&|part| part.1));
    let moisture = Moisture::pct(mean(&|part| emc(temperature, Humidity::pct(part.2)).to_pct()));
    Some((temperature, equilibrium_humidity(temperature, moisture)))
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "hours of a day, held to 24")]
fn whole(hours: f64) -> u8 {
    hours.round().clamp(0.0, 24.0) as u8
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    fn reading(day: i8, hour: i8, humidity: f64) -> Reading {
        Reading { at: date(2026, 1, day).at(hour, 0, 0, 0), temperature: 20.0, humidity }
    }

    #[test]
    fn a_reading_holds_two_hours_and_over_midnight() {
        let at = date(2026, 1, 5).at(23, 30, 0, 0);
        let parts: Vec<_> = held(at, None).collect();
        assert_eq!(parts, [(date(2026, 1, 5), 1800.0), (date(2026, 1, 6), 5400.0)]);
        let soon = date(2026, 1, 5).at(23, 40, 0, 0);
        assert_eq!(held(at, Some(soon)).collect::<Vec<_>>(), [(date(2026, 1, 5), 600.0)]);
    }

    #[test]
    fn damp_hours_weigh_more_than_their_share() {
        let mean = |damp| mean_air(&[(1.0, 20.0, 30.0), (1.0, 20.0, damp)]).unwrap().1.to_pct();
        assert!((mean(30.0) - 30.0).abs() < 1e-6);
        assert!(mean(90.0) > 64.0, "{}", mean(90.0));
        assert_eq!(mean_air(&[]), None);
    }

    #[test]
    fn a_step_is_no_spike() {
        let steps: Vec<Reading> =
            (0..12).map(|hour| reading(5, hour, if hour < 6 { 30.0 } else { 70.0 })).collect();
        let mut remarks = Vec::new();
        assert_eq!(without_spikes(steps.clone(), &mut remarks), steps);
        assert!(remarks.is_empty());
        let mut spiked = steps;
        spiked[3].humidity = 80.0;
        assert_eq!(without_spikes(spiked, &mut remarks).len(), 11);
        assert!(remarks[0].contains("80 % and 20 °C on 5 Jan 2026 03:00"), "{remarks:?}");
    }
}
