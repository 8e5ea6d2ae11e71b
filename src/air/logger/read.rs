//! From a logger's rows to the mean air of each day.

use std::collections::BTreeMap;

use jiff::SignedDuration;
use jiff::civil::{Date, DateTime, Time};

use super::moment::moment;
use super::{
    DateOrder, LoggedAir, LoggedDay, LoggerError, LoggerFormat, LoggerRead, LoggerRemark, number, rows, when,
};
use crate::air::file_text::{Tally, plain_text};
use crate::measure::{Hours, Humidity, Moisture, Span, Temperature};
use crate::wood::{emc, equilibrium_humidity};

/// A reading holds until the next, but no longer than this.
const LONGEST_HOLD: SignedDuration = SignedDuration::from_hours(2);
/// Hours with readings from which on a day counts.
const LEAST_HOURS: f64 = 6.0;
/// Rooms are within these: °C and percent. Sensors that fail give 0, 100 or more.
const SENSIBLE_TEMPERATURE: Span<f64> = Span { low: -40.0, high: 60.0 };
const SENSIBLE_HUMIDITY: Span<f64> = Span { low: 1.0, high: 99.9 };
/// Readings on either side whose median a reading is held against, and how far off it may be, in
/// percent and °C. A bath or an open window changes a room by less, or for longer.
const NEIGHBORS: usize = 3;
const FAR_HUMIDITY: f64 = 25.0;
const FAR_TEMPERATURE: f64 = 12.0;
/// Without a column for it, the room's temperature in °C: it changes wood's moisture by little.
pub(super) const ASSUMED_TEMPERATURE: f64 = 20.0;

/// Reads a logger's file in the given layout and gives the mean air of each day with at least 6
/// hours of readings.
///
/// A reading counts until the next one, for 2 hours at most, so that days are not biased by when
/// the logger wrote. A day's humidity is the one whose equilibrium moisture at the day's mean
/// temperature is the mean of that of its readings, because wood takes up water out of proportion
/// in damp air. Faulty readings are left out, with a remark.
///
/// # Errors
/// If the text is none, no line can be read in this layout, or no day has enough readings.
pub fn read_logger(text: &str, format: &LoggerFormat) -> Result<LoggerRead, LoggerError> {
    let text = &*plain_text(text)?;
    let mut found = Found::default();
    for row in rows(text, format.delimiter).skip(format.first_row) {
        found.take(&row, format);
    }
    let mut remarks = found.remarks();
    if found.readings.is_empty() {
        return Err(LoggerError::WrongLayout(remarks.into_iter().next()));
    }
    found.remarks_on_layout(format, &mut remarks);
    let mut readings = found.readings;
    sort(&mut readings, &mut remarks);
    let readings = without_spikes(readings, &mut remarks);
    remark_on_gaps(&readings, &mut remarks);
    let days = days(&readings, &mut remarks)?;
    Ok(LoggerRead { logged: LoggedAir { name: format.room.name.clone(), days }, remarks })
}

/// One reading: the wall clock's time, °C and percent.
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
        if !SENSIBLE_HUMIDITY.holds(humidity) {
            self.worst_humidity = farther(self.worst_humidity, humidity, 50.0, self.humidity_faults);
            self.humidity_faults.add(line);
        } else if !SENSIBLE_TEMPERATURE.holds(temperature) {
            self.worst_temperature =
                farther(self.worst_temperature, temperature, 20.0, self.temperature_faults);
            self.temperature_faults.add(line);
        } else {
            self.readings.push(Reading { at, temperature, humidity });
        }
    }

    fn remarks(&self) -> Vec<LoggerRemark> {
        let humidity_faults = |lines| {
            let Span { low, high } = SENSIBLE_HUMIDITY;
            let range = Span { low: Humidity::pct(low), high: Humidity::pct(high) };
            LoggerRemark::HumidityFaults { lines, range, worst: Humidity::pct(self.worst_humidity) }
        };
        let temperature_faults = |lines| {
            let Span { low, high } = SENSIBLE_TEMPERATURE;
            let range = Span { low: Temperature::celsius(low), high: Temperature::celsius(high) };
            let worst = Temperature::celsius(self.worst_temperature);
            LoggerRemark::TemperatureFaults { lines, range, worst }
        };
        let remarks = [
            self.text_lines.any().map(LoggerRemark::LinesWithoutTime),
            self.no_value.any().map(LoggerRemark::LinesWithoutValue),
            self.humidity_faults.any().map(humidity_faults),
            self.temperature_faults.any().map(temperature_faults),
        ];
        remarks.into_iter().flatten().collect()
    }

    fn remarks_on_layout(&self, format: &LoggerFormat, remarks: &mut Vec<LoggerRemark>) {
        if format.room.temperature.is_none() {
            remarks.push(LoggerRemark::NoTemperature(Temperature::celsius(ASSUMED_TEMPERATURE)));
        }
        if self.utc || matches!(format.order, DateOrder::EpochSeconds | DateOrder::EpochMilliseconds) {
            remarks.push(LoggerRemark::UtcTimes);
        }
    }
}

/// The one of two faults that is farther from the usual; the new one if there was none before.
fn farther(before: f64, now: f64, usual: f64, faults: Tally) -> f64 {
    if faults.count == 0 || (now - usual).abs() > (before - usual).abs() { now } else { before }
}

/// Puts the readings in order of time. Of several with one time, the last that the file has counts.
fn sort(readings: &mut Vec<Reading>, remarks: &mut Vec<LoggerRemark>) {
    let backward = |pair: &[Reading]| {
        (pair[1].at < pair[0].at).then(|| (pair[0].at, pair[0].at.duration_since(pair[1].at)))
    };
    let falls: Vec<(DateTime, SignedDuration)> = readings.windows(2).filter_map(backward).collect();
    match falls.as_slice() {
        [] => {}
        [(at, back)] if *back <= SignedDuration::from_hours(1) => {
            remarks.push(LoggerRemark::ClockBack(at.date()));
        }
        _ => remarks.push(LoggerRemark::Sorted),
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
        remarks.push(LoggerRemark::RepeatedTimes(all - readings.len()));
    }
}

/// The readings that are not far off from what was read just before and just after.
fn without_spikes(readings: Vec<Reading>, remarks: &mut Vec<LoggerRemark>) -> Vec<Reading> {
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
    remarks.push(LoggerRemark::Spikes {
        count: spikes().count(),
        at: worst.at,
        humidity: Humidity::pct(worst.humidity),
        temperature: Temperature::celsius(worst.temperature),
    });
    readings.iter().zip(&offs).filter(|(_, off)| off.is_none()).map(|(reading, _)| *reading).collect()
}

/// The middle one of a few values; `None` of none, as before the first reading.
fn median(readings: &[Reading], value: fn(&Reading) -> f64) -> Option<f64> {
    let mut values: Vec<f64> = readings.iter().map(value).collect();
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied()
}

fn remark_on_gaps(readings: &[Reading], remarks: &mut Vec<LoggerRemark>) {
    let gap = |pair: &[Reading]| {
        let (from, to) = (pair[0].at, pair[1].at);
        let length = to.duration_since(from);
        let days = Span { low: from.date(), high: to.date() };
        (length > SignedDuration::from_hours(24)).then_some((length, days))
    };
    let gaps = || readings.windows(2).filter_map(gap);
    if let Some((_, longest)) = gaps().max_by_key(|(length, _)| *length) {
        remarks.push(LoggerRemark::Gaps { count: gaps().count(), longest });
    }
}

/// A reading's part of a day: for how many seconds, °C and percent.
type Part = (f64, f64, f64);

/// The days with enough readings.
fn days(readings: &[Reading], remarks: &mut Vec<LoggerRemark>) -> Result<Vec<LoggedDay>, LoggerError> {
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
            None => short.push(*date),
        }
    }
    if days.is_empty() {
        return Err(LoggerError::NoDays(Hours::h(fullest)));
    }
    if !short.is_empty() {
        remarks.push(LoggerRemark::ShortDays(short));
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
        let spikes = LoggerRemark::Spikes {
            count: 1,
            at: date(2026, 1, 5).at(3, 0, 0, 0),
            humidity: Humidity::pct(80.0),
            temperature: Temperature::celsius(20.0),
        };
        assert_eq!(remarks, [spikes]);
    }
}
