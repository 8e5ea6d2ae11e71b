//! Times as loggers write them.

use jiff::Timestamp;
use jiff::civil::{Date, DateTime, Time};
use jiff::tz::Offset;

/// The order in which a logger writes the parts of a date, or what it counts from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DateOrder {
    /// 2026-01-05.
    YearFirst,
    /// 1/5/2026 for 5 January.
    MonthFirst,
    /// 5.1.2026 for 5 January.
    DayFirst,
    /// Seconds since 1970, in UTC.
    EpochSeconds,
    /// Milliseconds since 1970, in UTC.
    EpochMilliseconds,
}

impl DateOrder {
    /// All of them.
    pub const ALL: [Self; 5] =
        [Self::YearFirst, Self::MonthFirst, Self::DayFirst, Self::EpochSeconds, Self::EpochMilliseconds];

    /// Its id for messages.
    pub const fn key(self) -> &'static str {
        match self {
            Self::YearFirst => "year-first",
            Self::MonthFirst => "month-first",
            Self::DayFirst => "day-first",
            Self::EpochSeconds => "seconds",
            Self::EpochMilliseconds => "milliseconds",
        }
    }
}

const MONTHS: [&str; 12] = [
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
];
const WEEKDAYS: [&str; 7] = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];

/// The time that a text stands for, as a clock on the wall at the logger shows it: a zone written
/// behind it is left aside. Without a clock time it is midnight. Years 1990 to 2099.
pub(super) fn moment(text: &str, order: DateOrder) -> Option<DateTime> {
    let at = match order {
        DateOrder::EpochSeconds => epoch(text, 1)?,
        DateOrder::EpochMilliseconds => epoch(text, 1000)?,
        _ => Parts::scan(text)?.moment(order)?,
    };
    (1990..2100).contains(&at.year()).then_some(at)
}

fn epoch(text: &str, a_second: i64) -> Option<DateTime> {
    let whole = text.trim().split('.').next()?;
    // Nothing before September 2001 has ten figures, which small numbers cannot be mistaken for.
    let seconds = whole.parse::<i64>().ok()? / a_second;
    let at = Timestamp::from_second(seconds).ok().filter(|_| seconds >= 1_000_000_000)?;
    Some(Offset::UTC.to_datetime(at))
}

/// The numbers and words of a written time.
#[derive(Default)]
struct Parts {
    numbers: [i16; 6],
    count: usize,
    month: Option<i16>,
    afternoon: Option<bool>,
}

impl Parts {
    fn scan(text: &str) -> Option<Self> {
        let mut parts = Self::default();
        let mut rest = text.trim();
        while let Some(first) = rest.chars().next() {
            let run = |keep: fn(char) -> bool| rest.find(|c| !keep(c)).unwrap_or(rest.len());
            let clock = parts.count.saturating_sub(parts.date_numbers());
            let used = match first {
                '0'..='9' => {
                    let end = run(|c| c.is_ascii_digit());
                    parts.number(&rest[..end])?;
                    end
                }
                c if c.is_alphabetic() => {
                    let end = run(char::is_alphabetic);
                    parts.word(&rest[..end].to_lowercase())?;
                    end
                }
                // What follows is the offset or the name of the zone.
                '+' | '-' | '−' | '[' | '(' if clock >= 2 => break,
                ':' if clock == 0 => return None,
                '-' | '/' | '.' | ',' | ':' => 1,
                c if c.is_whitespace() => c.len_utf8(),
                _ => return None,
            };
            rest = &rest[used..];
        }
        Some(parts)
    }

    /// How many of the numbers make up the date.
    fn date_numbers(&self) -> usize {
        if self.month.is_some() { 2 } else { 3 }
    }

    fn number(&mut self, digits: &str) -> Option<()> {
        if self.count < self.date_numbers() + 3 {
            *self.numbers.get_mut(self.count)? = digits.parse().ok().filter(|_| digits.len() <= 4)?;
        } else if self.count > self.date_numbers() + 3 {
            return None; // only parts of a second may follow the seconds
        }
        self.count += 1;
        Some(())
    }

    fn word(&mut self, word: &str) -> Option<()> {
        let among = |names: &[&str]| names.iter().position(|name| word.len() >= 3 && name.starts_with(word));
        match word {
            "a" | "am" => self.afternoon = Some(false),
            "p" | "pm" => self.afternoon = Some(true),
            // The m of a.m., the T between date and time, and the zone.
            "m" | "t" | "z" | "utc" | "gmt" => {}
            _ if among(&WEEKDAYS).is_some() => {}
            _ => self.month = Some(i16::try_from(among(&MONTHS)?).ok()? + 1),
        }
        Some(())
    }

    fn moment(&self, order: DateOrder) -> Option<DateTime> {
        let [one, two, three, ..] = self.numbers;
        let (year, month, day) = match (self.month, order) {
            (Some(month), _) if one > 31 => (one, month, two),
            (Some(month), _) => (two, month, one),
            (None, DateOrder::YearFirst) => (one, two, three),
            (None, DateOrder::MonthFirst) => (three, one, two),
            (None, _) => (three, two, one),
        };
        if self.count < self.date_numbers() {
            return None;
        }
        let year = if year < 100 { year + 2000 } else { year };
        let small = |value: i16| i8::try_from(value).ok();
        let date = Date::new(year, small(month)?, small(day)?).ok()?;
        let clock = |place: usize| self.numbers.get(self.date_numbers() + place).copied().and_then(small);
        let hour = match (clock(0)?, self.afternoon) {
            (hour, None) => hour,
            (0 | 13.., Some(_)) => return None,
            (12, Some(afternoon)) => i8::from(afternoon) * 12,
            (hour, Some(afternoon)) => hour + i8::from(afternoon) * 12,
        };
        Some(date.to_datetime(Time::new(hour, clock(1)?, clock(2)?, 0).ok()?))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use DateOrder::{DayFirst, EpochMilliseconds, EpochSeconds, MonthFirst, YearFirst};
    use jiff::civil::date;

    #[test]
    fn times_are_read_in_the_forms_of_loggers() {
        let at = date(2026, 1, 5).at(22, 30, 0, 0);
        for (text, order) in [
            ("2026-01-05T22:30:00Z", YearFirst),
            ("2026-01-05T22:30:00.125+01:00", YearFirst),
            ("2026/01/05 22:30", YearFirst),
            ("2026-01-05 22:30:00 [Europe/Oslo]", YearFirst),
            ("1/5/2026 10:30:00 PM", MonthFirst),
            ("01/05/26 10:30 p.m.", MonthFirst),
            ("5.1.2026 22:30:00", DayFirst),
            ("05/01/26, 22:30", DayFirst),
            ("5 Jan 2026 22:30", DayFirst),
            ("Mon, January 5, 2026 10:30 pm", MonthFirst),
            ("1767652200", EpochSeconds),
            ("1767652200000", EpochMilliseconds),
            ("1767652200.0", EpochSeconds),
        ] {
            assert_eq!(moment(text, order), Some(at), "{text}");
        }
        assert_eq!(moment("2026-01-05", YearFirst), Some(date(2026, 1, 5).at(0, 0, 0, 0)));
        assert_eq!(moment("1/5/26 12:00 AM", MonthFirst), Some(date(2026, 1, 5).at(0, 0, 0, 0)));
    }

    #[test]
    fn what_is_no_time_is_not_read_as_one() {
        for text in [
            "",
            "20.3",
            "10:30:00",
            "2026-13-05",
            "31/31/2026",
            "Serial 1-2-2026",
            "1-2-2026 13:00 PM",
            "1.2",
            "99999",
            "1/5/1066",
        ] {
            for order in DateOrder::ALL {
                assert_eq!(moment(text, order), None, "{text}");
            }
        }
    }
}
