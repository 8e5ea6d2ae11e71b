//! Weather files and loggers: what was odd about one, and why one could not be used.

use jiff::civil::Date;

use super::{Arg, Say, Words, say};
use crate::air::{
    DateOrder, LoggerDoubt, LoggerError, LoggerRemark, Tally, TextError, WeatherError, WeatherRemark,
    date_of_hour,
};
use crate::measure::Span;

/// Days that are listed one by one; of more the first ones stand for all.
const LISTED: usize = 3;

impl Say for TextError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Empty => say!(words, "air-file-empty"),
            Self::TooLarge(megabytes) => say!(words, "air-file-too-large", megabytes = *megabytes),
            Self::Binary => say!(words, "air-file-binary"),
        }
    }
}

impl Say for WeatherError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Text(error) => error.say(words),
            Self::NeitherFormat(line) => say!(words, "weather-neither-format", line = line),
            Self::NoDataPeriods => say!(words, "weather-no-data-periods"),
            Self::RecordsAnHour(records) => say!(words, "weather-records-an-hour", records = records),
            Self::NoColumn { missing, found } => {
                let found = Arg::Names(found.iter().map(String::as_str).collect());
                say!(words, "weather-no-column", missing = Arg::Name(missing), found = found)
            }
            Self::Incomplete { missing, unread } => {
                let said = say!(words, "weather-incomplete", missing = *missing);
                let Tally { count, first } = *unread;
                match count {
                    0 => said,
                    _ => said + " " + &say!(words, "weather-incomplete-unread", count = count, first = first),
                }
            }
            Self::Gap(gap) => {
                let date = day_of_hour(words, gap.start);
                say!(words, "weather-gap", hours = gap.hours, date = &date)
            }
        }
    }
}

/// The day of an hour of the year, which is of no year.
fn day_of_hour(words: &Words, hour: usize) -> String {
    words.figures().short_date(date_of_hour(hour))
}

impl Say for WeatherRemark {
    fn say(&self, words: &Words) -> String {
        match *self {
            Self::LinesUnread(Tally { count, first }) => {
                say!(words, "weather-lines-unread", count = count, first = first)
            }
            Self::LeapDay(Tally { count, first }) => {
                say!(words, "weather-leap-day", count = count, first = first)
            }
            Self::ExtremeTemperatures { lines: Tally { count, first }, limit } => {
                let (low, high) = (-limit, limit);
                say!(
                    words,
                    "weather-extreme-temperatures",
                    count = count,
                    first = first,
                    low = low,
                    high = high
                )
            }
            Self::DryAir(Tally { count, first }) => {
                say!(words, "weather-dry-air", count = count, first = first)
            }
            Self::WildHumidity(Tally { count, first }) => {
                say!(words, "weather-wild-humidity", count = count, first = first)
            }
            Self::Fog(Tally { count, first }) => say!(words, "weather-fog", count = count, first = first),
            Self::HoursFromZero => say!(words, "weather-hours-from-zero"),
            Self::StartsWith(hour) => {
                say!(words, "weather-starts-with", date = &day_of_hour(words, hour))
            }
            Self::Sorted => say!(words, "weather-sorted"),
            Self::RepeatedHours(count) => say!(words, "weather-repeated-hours", count = count),
            Self::Filled { hours, longest } => {
                let date = day_of_hour(words, longest.start);
                say!(words, "weather-filled", count = hours, longest = longest.hours, date = &date)
            }
            Self::South => say!(words, "weather-south"),
        }
    }
}

impl Say for DateOrder {
    fn say(&self, words: &Words) -> String {
        say!(words, "logger-date-order", order = Arg::Id(self.key()))
    }
}

impl Say for LoggerDoubt {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::DateOrder { example, taken, other } => {
                let (taken, other) = (Arg::Id(taken.key()), Arg::Id(other.key()));
                say!(words, "logger-doubt-date-order", example = example, taken = taken, other = other)
            }
            Self::UnreadTimes { unread, lines } => {
                say!(words, "logger-doubt-unread-times", unread = *unread, lines = *lines)
            }
            Self::NoTemperature(assumed) => {
                say!(words, "logger-doubt-no-temperature", assumed = *assumed)
            }
            Self::SeveralRooms { count, taken } => {
                let named = Arg::Id(if taken.is_empty() { "no" } else { "yes" });
                say!(words, "logger-doubt-several-rooms", named = named, count = *count, room = taken)
            }
            Self::NoHeadings => say!(words, "logger-doubt-no-headings"),
            Self::RepeatedTimes { repeated, lines } => {
                say!(words, "logger-doubt-repeated-times", repeated = *repeated, lines = *lines)
            }
            Self::TemperatureUnit { typical } => {
                say!(words, "logger-doubt-temperature-unit", typical = Arg::Number(*typical, 0))
            }
        }
    }
}

impl Say for LoggerError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Text(error) => error.say(words),
            Self::NoReadings(line) => say!(words, "logger-no-readings", line = line),
            Self::NoHumidity(columns) => {
                let named: Vec<&str> =
                    columns.iter().map(String::as_str).filter(|name| !name.is_empty()).collect();
                if named.is_empty() {
                    return say!(words, "logger-no-humidity-unnamed");
                }
                say!(words, "logger-no-humidity", columns = Arg::Names(named))
            }
            Self::WrongLayout(remark) => {
                let said = say!(words, "logger-wrong-layout");
                match remark {
                    Some(remark) => said + " " + &remark.say(words),
                    None => said,
                }
            }
            Self::NoDays(fullest) => say!(words, "logger-no-days", fullest = *fullest),
        }
    }
}

impl Say for LoggerRemark {
    fn say(&self, words: &Words) -> String {
        match *self {
            Self::LinesWithoutTime(Tally { count, first }) => {
                say!(words, "logger-lines-without-time", count = count, first = first)
            }
            Self::LinesWithoutValue(Tally { count, first }) => {
                say!(words, "logger-lines-without-value", count = count, first = first)
            }
            Self::HumidityFaults { lines: Tally { count, first }, range: Span { low, high }, worst } => {
                // The limits are finer than a whole percent.
                let percent =
                    |humidity: crate::measure::Humidity| words.figures().percent(humidity.to_pct(), 1);
                let (low, high, worst) = (percent(low), percent(high), percent(worst));
                say!(
                    words,
                    "logger-humidity-faults",
                    count = count,
                    first = first,
                    low = &low,
                    high = &high,
                    worst = &worst
                )
            }
            Self::TemperatureFaults { lines: Tally { count, first }, range: Span { low, high }, worst } => {
                say!(
                    words,
                    "logger-temperature-faults",
                    count = count,
                    first = first,
                    low = low,
                    high = high,
                    worst = worst
                )
            }
            Self::NoTemperature(assumed) => say!(words, "logger-no-temperature", assumed = assumed),
            Self::UtcTimes => say!(words, "logger-utc-times"),
            Self::ClockBack(date) => say!(words, "logger-clock-back", date = date),
            Self::Sorted => say!(words, "logger-sorted"),
            Self::RepeatedTimes(count) => say!(words, "logger-repeated-times", count = count),
            Self::Spikes { count, at, humidity, temperature } => {
                let date = at.date();
                say!(
                    words,
                    "logger-spikes",
                    count = count,
                    humidity = humidity,
                    temperature = temperature,
                    date = date
                )
            }
            Self::Gaps { count, longest } => {
                say!(words, "logger-gaps", count = count, from = longest.low, to = longest.high)
            }
            Self::ShortDays(ref days) => short_days(words, days),
        }
    }
}

fn short_days(words: &Words, days: &[Date]) -> String {
    let shown: Vec<String> = days.iter().take(LISTED).map(|day| words.figures().date(*day)).collect();
    let shown = Arg::Names(shown.iter().map(String::as_str).collect());
    if days.len() > LISTED {
        return say!(words, "logger-short-days-more", count = days.len(), days = shown);
    }
    say!(words, "logger-short-days", count = days.len(), days = shown)
}
