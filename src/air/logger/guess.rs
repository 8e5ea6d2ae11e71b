//! How a logger's file seems to be laid out.
//!
//! A row of readings has a time and a number. Columns are told by the words of their headings, or
//! where there are none by their values; the order of the date by which one reads most lines, keeps
//! them in order, and covers the shortest time.

use std::collections::{BTreeMap, BTreeSet};

use csv::StringRecord;
use jiff::civil::{DateTime, Time};

use super::moment::{DateOrder, moment};
use super::read::ASSUMED_TEMPERATURE;
use super::{LoggerDoubt, LoggerError, LoggerFormat, LoggerGuess, Room, number, rows, when};
use crate::air::file_text::plain_text;
use crate::measure::Temperature;

const DELIMITERS: [char; 4] = [';', '\t', '|', ','];
/// Rows that are looked at to find the delimiter and the kinds of the columns.
const SAMPLE: usize = 400;
/// More names than this are remarks, not rooms.
const MOST_ROOMS: usize = 12;

/// Parts of words that say what a column is, in the languages that loggers are sold in.
const HUMIDITY: [&str; 7] = ["humid", "feucht", "humed", "umidit", "vochtig", "fuktig", "hygro"];
const TEMPERATURE: [&str; 7] = ["temp", "celsius", "fahrenheit", "degc", "degf", "°", "lämpötila"];
const TIME: [&str; 9] = ["time", "date", "datum", "zeit", "fecha", "hora", "heure", "dato", "uhr"];
const PLACE: [&str; 9] = ["room", "sensor", "device", "location", "zone", "channel", "raum", "probe", "name"];
/// Columns of these are neither temperature nor relative humidity of the room, nor its name.
const OTHER: [&str; 16] = [
    "dew", "taupunkt", "rosée", "rocío", "wet", "index", "abs", "vpd", "pressure", "batt", "status", "alarm",
    "event", "state", "co2", "g/m",
];

/// Works out how a logger's file is laid out, for the user to confirm.
///
/// # Errors
/// If the text is none, no line has a time and a number, or no column is the humidity.
pub fn guess_logger(text: &str) -> Result<LoggerGuess, LoggerError> {
    let text = &*plain_text(text)?;
    let count = |delimiter: &char| rows(text, *delimiter).take(SAMPLE).filter(is_reading).count();
    // Of equals the last is taken: a comma, which also stands inside other files' numbers, must win
    // outright.
    let (readings, delimiter) = DELIMITERS
        .iter()
        .rev()
        .map(|sign| (count(sign), *sign))
        .max_by_key(|(count, _)| *count)
        .unwrap_or((0, ','));
    if readings == 0 {
        let first = text.trim().lines().next().unwrap_or_default();
        return Err(LoggerError::NoReadings(first.chars().take(60).collect()));
    }
    let table: Vec<StringRecord> = rows(text, delimiter).collect();
    let (first_row, width) = first_reading(&table);
    let data = table.get(first_row..).unwrap_or_default();
    let columns = columns(&table, first_row, width);
    let (date, time) = time_columns(data, &columns);
    let mut doubts = Vec::new();
    let order = order(data, date, time, &mut doubts);
    let kinds = Kinds { date, time, numeric: numeric(data, width, [Some(date), time]), columns: &columns };
    let rooms = rooms(data, &kinds, order, &mut doubts)?;
    let room = rooms.first().cloned().ok_or_else(|| LoggerError::NoHumidity(Vec::new()))?;
    let fahrenheit = fahrenheit(data, &room, &columns, &mut doubts);
    let preview = data.iter().take(5).map(|row| row.iter().map(str::to_owned).collect()).collect();
    let format = LoggerFormat { delimiter, first_row, date, time, order, fahrenheit, room };
    let columns = columns.into_iter().map(|column| column.shown).collect();
    Ok(LoggerGuess { format, columns, preview, doubts, rooms })
}

/// A column's heading.
struct Column {
    shown: String,
    /// In small letters; empty if it has none.
    heading: String,
}

impl Column {
    /// Whether the heading has any of these parts of words.
    fn says(&self, parts: &[&str]) -> bool {
        parts.iter().any(|part| self.heading.contains(part))
    }

    fn words(&self) -> impl Iterator<Item = &str> {
        self.heading.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty())
    }

    fn is_humidity(&self) -> bool {
        let short = self.words().any(|word| ["rh", "rf", "hr", "hum"].contains(&word));
        (short || self.says(&HUMIDITY)) && !self.says(&OTHER)
    }

    fn is_temperature(&self) -> bool {
        let short = self.words().any(|word| ["t", "c", "f"].contains(&word));
        (short || self.says(&TEMPERATURE) || self.heading.contains(['℃', '℉'])) && !self.says(&OTHER)
    }
}

/// What is known of the columns.
struct Kinds<'a> {
    date: usize,
    time: Option<usize>,
    numeric: Vec<usize>,
    columns: &'a [Column],
}

impl Kinds<'_> {
    /// The columns of numbers whose heading is such.
    fn of(&self, is: impl Fn(&Column) -> bool) -> Vec<usize> {
        let said = |place: &&usize| self.columns.get(**place).is_some_and(&is);
        self.numeric.iter().filter(said).copied().collect()
    }

    fn has_headings(&self) -> bool {
        self.columns.iter().any(|column| !column.heading.is_empty())
    }
}

fn is_moment(cell: &str) -> bool {
    // Most cells have too few signs for a date; asked first because it is quick.
    cell.len() >= 6 && DateOrder::ALL.iter().any(|order| moment(cell, *order).is_some())
}

fn is_clock(cell: &str) -> bool {
    cell.contains(':')
        && !is_moment(cell)
        && moment(&format!("2000-01-01 {cell}"), DateOrder::YearFirst).is_some()
}

fn is_reading(row: &StringRecord) -> bool {
    let time = row.iter().position(is_moment);
    time.is_some_and(|time| {
        row.iter().enumerate().any(|(place, cell)| place != time && number(cell).is_some())
    })
}

/// The first row of readings as wide as most of them are, and that width.
fn first_reading(table: &[StringRecord]) -> (usize, usize) {
    let mut widths: BTreeMap<usize, usize> = BTreeMap::new();
    for row in table.iter().take(SAMPLE).filter(|row| is_reading(row)) {
        *widths.entry(row.len()).or_default() += 1;
    }
    let width = widths.into_iter().max_by_key(|(_, count)| *count).map_or(0, |(width, _)| width);
    let first = table.iter().position(|row| row.len() == width && is_reading(row)).unwrap_or(0);
    (first, width)
}

/// The headings: of the last row before the readings that has some words of headings, and of the
/// row of units that may stand below it.
fn columns(table: &[StringRecord], first_row: usize, width: usize) -> Vec<Column> {
    let column =
        |shown: &str| Column { shown: shown.trim().to_owned(), heading: shown.trim().to_lowercase() };
    let known = |row: &&StringRecord| {
        let telling = |cell: &str| {
            let cell = column(cell);
            cell.is_humidity() || cell.is_temperature() || cell.says(&TIME)
        };
        row.iter().filter(|cell| !cell.trim().is_empty()).count() > 1 && row.iter().any(telling)
    };
    let mut rows = table.get(..first_row).unwrap_or_default().iter().rev().filter(known).take(2);
    let mut lines: Vec<&StringRecord> = rows.next().into_iter().collect();
    let with_time = |row: &StringRecord| row.iter().any(|cell| column(cell).says(&TIME));
    if lines.first().is_some_and(|row| !with_time(row)) {
        lines.extend(rows.next().filter(|row| with_time(row)));
    }
    let heading = |place: usize| {
        let cells: Vec<&str> = lines.iter().rev().filter_map(|row| row.get(place)).map(str::trim).collect();
        column(&cells.join(" "))
    };
    (0..width).map(heading).collect()
}

/// The column of the date, and that of the time if it stands apart.
fn time_columns(data: &[StringRecord], columns: &[Column]) -> (usize, Option<usize>) {
    let share = |place: usize, is: fn(&str) -> bool| {
        data.iter().take(SAMPLE).filter(|row| row.get(place).is_some_and(is)).count()
    };
    let most = |is: fn(&str) -> bool| {
        let rank = |place: &usize| {
            let column = &columns[*place];
            // Of several, the one of the place the logger hung in.
            (share(*place, is), column.says(&["local"]), column.says(&TIME))
        };
        (0..columns.len()).rev().max_by_key(rank).filter(|place| share(*place, is) > 0)
    };
    let date = most(is_moment).unwrap_or(0);
    let bare = |row: &&StringRecord| {
        let at = |order: &DateOrder| moment(row.get(date)?, *order);
        DateOrder::ALL.iter().find_map(at).is_some_and(|at| at.time() == Time::midnight())
    };
    let sample = || data.iter().take(SAMPLE);
    let all_bare = sample().filter(bare).count() * 10 > sample().count() * 8;
    (date, most(is_clock).filter(|time| all_bare && *time != date))
}

/// The order of the date, and a doubt if another is as likely.
fn order(
    data: &[StringRecord],
    date: usize,
    time: Option<usize>,
    doubts: &mut Vec<LoggerDoubt>,
) -> DateOrder {
    use DateOrder::{DayFirst, EpochMilliseconds, EpochSeconds, MonthFirst, YearFirst};
    let texts: Vec<_> = data.iter().filter_map(|row| when(row, date, time)).collect();
    let dotted =
        texts.iter().filter(|text| text.contains('.') && !text.contains('/')).count() * 2 > texts.len();
    let [usual, other] = if dotted { [DayFirst, MonthFirst] } else { [MonthFirst, DayFirst] };
    let mut tried: Vec<_> = [YearFirst, usual, other, EpochSeconds, EpochMilliseconds]
        .into_iter()
        .map(|order| {
            let times: Vec<DateTime> = texts.iter().filter_map(|text| moment(text, order)).collect();
            let falls = times.windows(2).filter(|pair| pair[1] < pair[0]).count();
            let rises = times.windows(2).filter(|pair| pair[1] > pair[0]).count();
            let first = times.iter().min().copied().unwrap_or_default();
            let last = times.iter().max().copied().unwrap_or_default();
            // A file may have its latest reading first.
            (texts.len() - times.len(), falls.min(rises), last.duration_since(first).as_hours(), order, times)
        })
        .collect();
    tried.sort_by_key(|(unread, disorder, hours, ..)| (*unread, *disorder, *hours));
    if let [best, next, ..] = tried.as_slice() {
        // Twelve days of one order are a year of the other: only a short record leaves a doubt.
        let alike = (best.0, best.1) == (next.0, next.1) && next.2 < best.2.saturating_mul(3).max(48);
        let example = texts.first().map_or("", |text| text.as_ref());
        if alike && best.4 != next.4 && !dotted {
            let example = example.to_owned();
            doubts.push(LoggerDoubt::DateOrder { example, taken: best.3, other: next.3 });
        }
        if best.0 * 5 > texts.len() {
            doubts.push(LoggerDoubt::UnreadTimes { unread: best.0, lines: texts.len() });
        }
    }
    tried.first().map_or(YearFirst, |(.., order, _)| *order)
}

/// The columns that mostly hold numbers, without those of the time.
fn numeric(data: &[StringRecord], width: usize, times: [Option<usize>; 2]) -> Vec<usize> {
    let share = |place: usize| {
        let filled = |row: &&StringRecord| row.get(place).is_some_and(|cell| !cell.trim().is_empty());
        let filled = data.iter().take(SAMPLE).filter(filled);
        let numbers = filled.clone().filter(|row| row.get(place).and_then(number).is_some()).count();
        (numbers, filled.count())
    };
    (0..width)
        .filter(|place| !times.contains(&Some(*place)))
        .filter(|place| matches!(share(*place), (numbers, all) if numbers > 0 && numbers * 2 >= all))
        .collect()
}

/// The rooms of the file, at least one.
fn rooms(
    data: &[StringRecord],
    kinds: &Kinds<'_>,
    order: DateOrder,
    doubts: &mut Vec<LoggerDoubt>,
) -> Result<Vec<Room>, LoggerError> {
    let (temperatures, humidities) = roles(data, kinds, doubts);
    let names = || kinds.columns.iter().map(|column| column.shown.clone()).collect();
    let &humidity = humidities.first().ok_or_else(|| LoggerError::NoHumidity(names()))?;
    if temperatures.is_empty() {
        doubts.push(LoggerDoubt::NoTemperature(Temperature::celsius(ASSUMED_TEMPERATURE)));
    }
    let mut rooms = match label(data, kinds) {
        Some((label, names)) if humidities.len() == 1 => {
            let temperature = temperatures.first().copied();
            names.into_iter().map(|name| Room { name, temperature, humidity, label: Some(label) }).collect()
        }
        _ => paired(&temperatures, &humidities, kinds.columns),
    };
    if let [room, _, ..] = rooms.as_slice() {
        doubts.push(LoggerDoubt::SeveralRooms { count: rooms.len(), taken: room.name.clone() });
    } else if let Some(room) = rooms.first_mut() {
        room.name.clear();
        doubt_twins(data, kinds, order, doubts);
    }
    Ok(rooms)
}

/// The columns that may be temperature and humidity.
fn roles(
    data: &[StringRecord],
    kinds: &Kinds<'_>,
    doubts: &mut Vec<LoggerDoubt>,
) -> (Vec<usize>, Vec<usize>) {
    if kinds.has_headings() {
        let mut humidities = kinds.of(Column::is_humidity);
        if humidities.is_empty() {
            humidities = kinds.of(|column| column.heading.contains('%') && !column.says(&OTHER));
        }
        let mut temperatures = kinds.of(Column::is_temperature);
        temperatures.retain(|place| !humidities.contains(place));
        return (temperatures, humidities);
    }
    doubts.push(LoggerDoubt::NoHeadings);
    let counts = |place: usize| {
        let values: Vec<f64> = data.iter().take(SAMPLE).filter_map(|row| number(row.get(place)?)).collect();
        values.len() > 2 && values.windows(2).all(|pair| (pair[1] - pair[0] - 1.0).abs() < 1e-9)
    };
    let within = |place: usize, low: f64, high: f64| (low..=high).contains(&median(data, place));
    let mut free: Vec<usize> = kinds.numeric.iter().copied().filter(|place| !counts(*place)).collect();
    // Most loggers write the temperature first; the other way round only if that cannot be.
    if let [first, second] = free[..]
        && within(first, 30.0, 100.0)
        && within(second, 10.0, 30.0)
    {
        free.swap(0, 1);
    }
    let temperature = free.iter().copied().find(|place| free.len() > 1 && within(*place, -30.0, 110.0));
    let humidity =
        free.iter().copied().find(|place| Some(*place) != temperature && within(*place, 5.0, 100.0));
    (temperature.into_iter().collect(), humidity.into_iter().collect())
}

/// The middle one of a column's values; 0 of none.
fn median(data: &[StringRecord], place: usize) -> f64 {
    let mut values: Vec<f64> = data.iter().take(SAMPLE).filter_map(|row| number(row.get(place)?)).collect();
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied().unwrap_or_default()
}

/// The column that names each row's room, and the names, in the order in which they come.
fn label(data: &[StringRecord], kinds: &Kinds<'_>) -> Option<(usize, Vec<String>)> {
    let names = |place: &usize| {
        let mut seen = BTreeSet::new();
        let mut names = Vec::new();
        let mut empty = 0;
        for cell in data.iter().map(|row| row.get(*place).unwrap_or_default().trim()) {
            if cell.is_empty() {
                empty += 1;
            } else if seen.insert(cell) {
                names.push(cell.to_owned());
            }
            if names.len() > MOST_ROOMS {
                return None;
            }
        }
        let filled = empty * 10 <= data.len() && names.len() > 1 && names.len() * 2 <= data.len();
        filled.then_some((*place, names))
    };
    let times = [Some(kinds.date), kinds.time];
    let free = |place: &usize| {
        let column = &kinds.columns[*place];
        let value = column.says(&OTHER) || column.is_temperature() || column.is_humidity();
        !times.contains(&Some(*place)) && !value
    };
    let named = |place: &usize| kinds.columns[*place].says(&PLACE);
    let all = || (0..kinds.columns.len()).filter(free);
    all()
        .filter(named)
        .find_map(|place| names(&place))
        .or_else(|| all().filter(|place| !kinds.numeric.contains(place)).find_map(|place| names(&place)))
}

/// A room for each column of humidity, with the temperature whose heading names the same room.
fn paired(temperatures: &[usize], humidities: &[usize], columns: &[Column]) -> Vec<Room> {
    let room_name = |place: usize| {
        let role = |word: &&str| {
            let word = Column { shown: String::new(), heading: word.to_lowercase() };
            let bare = word.heading.chars().all(|c| !c.is_alphanumeric());
            bare || word.is_humidity() || word.is_temperature() || word.says(&["relativ"])
        };
        let words = columns[place].shown.split([' ', '_', '(', ')', '[', ']', ',', '%']);
        words.filter(|word| !role(word)).collect::<Vec<_>>().join(" ")
    };
    let room = |(index, &humidity): (usize, &usize)| {
        let name = room_name(humidity);
        let same = |place: &usize| !name.is_empty() && room_name(*place) == name;
        let by_place = || temperatures.get(index).or(temperatures.first()).copied();
        let temperature = temperatures.iter().copied().find(same).or_else(by_place);
        Room { name, temperature, humidity, label: None }
    };
    humidities.iter().enumerate().map(room).collect()
}

/// A doubt if many times come twice, as when two sensors write into one file.
fn doubt_twins(data: &[StringRecord], kinds: &Kinds<'_>, order: DateOrder, doubts: &mut Vec<LoggerDoubt>) {
    let at = |row: &StringRecord| moment(&when(row, kinds.date, kinds.time)?, order);
    let mut times: Vec<DateTime> = data.iter().filter_map(at).collect();
    let all = times.len();
    times.sort();
    times.dedup();
    if (all - times.len()) * 5 > all {
        doubts.push(LoggerDoubt::RepeatedTimes { repeated: all - times.len(), lines: all });
    }
}

/// Whether temperatures are in degrees Fahrenheit: by the heading, or else by the values.
fn fahrenheit(data: &[StringRecord], room: &Room, columns: &[Column], doubts: &mut Vec<LoggerDoubt>) -> bool {
    let Some((place, column)) = room.temperature.and_then(|place| Some((place, columns.get(place)?))) else {
        return false;
    };
    let unit = |letter: &str, long: &[&str]| column.words().any(|word| word == letter) || column.says(long);
    if unit("f", &["°f", "℉", "degf", "fahrenheit"]) {
        return true;
    }
    if unit("c", &["°c", "℃", "degc", "celsius"]) {
        return false;
    }
    let cell = |row: &StringRecord| row.get(place).map(str::to_lowercase);
    let units = || data.iter().take(SAMPLE).filter_map(cell);
    if units().any(|cell| cell.ends_with(['f', '℉'])) {
        return true;
    }
    let middle = median(data, place);
    // A cold cellar in °F looks like a hot attic in °C.
    if (32.0..50.0).contains(&middle) && !units().any(|cell| cell.ends_with(['c', '℃'])) {
        doubts.push(LoggerDoubt::TemperatureUnit { typical: middle });
    }
    middle >= 40.0
}
