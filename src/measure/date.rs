//! Calendar dates as people type and read them, and months of which the day is not known.

use std::borrow::Cow;
use std::ops::RangeInclusive;

use jiff::civil::Date;
use jiff::fmt::strtime::{self, BrokenDownTime};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::{EntryError, EntryRule, Units};

/// The written forms of a day that cannot be mistaken for one another.
const DAYS: [&str; 7] =
    ["%Y-%m-%d", "%d %b %Y", "%b %d %Y", "%b %d, %Y", "%d %B %Y", "%B %d %Y", "%B %d, %Y"];

/// The written forms of a month.
const MONTHS: [&str; 5] = ["%Y-%m", "%b %Y", "%B %Y", "%b, %Y", "%B, %Y"];

/// Years outside these are slips of the finger.
const YEARS: RangeInclusive<i16> = 1900..=2199;

/// The day of a month that stands for a month whose day is not known: its middle.
const MIDDLE: i8 = 15;

/// Reads `2026-02-14`, `14 Feb 2026` or `Feb 14, 2026`, months in English or Spanish, from 1900 to 2199; and in figures as is usual
/// in the US: `2/14/2026` or `2/14/26`; with millimeters `14.2.2026` too, and `14/2/2026`, which can't be mistaken.
///
/// # Errors
/// If the text is not a date in one of these forms, is a month alone, or is out of that range.
pub fn parse_date(text: &str, units: Units) -> Result<Date, EntryError> {
    if parse_month(text, units).is_some() {
        return Err(EntryError::new(text, EntryRule::DayMissing));
    }
    let figures: &[&str] = match units {
        // Two digits of a year first: `%Y` would take them for a year of Rome.
        Units::Inches => &["%m/%d/%y", "%m/%d/%Y"],
        // Between slashes the month comes first with either units; there is no thirteenth month.
        Units::Millimeters => &["%d.%m.%Y", "%m/%d/%y", "%m/%d/%Y", "%d/%m/%Y"],
    };
    let day = |parsed: BrokenDownTime| parsed.to_date().ok();
    match read(text, DAYS.iter().chain(figures), day) {
        Some(date) if YEARS.contains(&date.year()) => Ok(date),
        Some(_) => {
            let (first, last) = (*YEARS.start(), *YEARS.end());
            Err(EntryError::new(text, EntryRule::YearOutOfRange { first, last }))
        }
        None => Err(EntryError::new(text, EntryRule::NotADate)),
    }
}

/// Which day a date without a year is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum YearMeant {
    /// The next such day from this one on.
    NextFrom(Date),
    /// The one nearest to this day.
    NearestTo(Date),
}

/// Reads a date as [`parse_date`] does, or one without its year: `12/11`, `Dec 11`; `11.12.` with millimeters.
///
/// # Errors
/// As [`parse_date`].
pub fn parse_day(text: &str, units: Units, year: YearMeant) -> Result<Date, EntryError> {
    let refused = match parse_date(text, units) {
        Ok(date) => return Ok(date),
        Err(refused) => refused,
    };
    let (YearMeant::NextFrom(day) | YearMeant::NearestTo(day)) = year;
    let bare = text.trim().trim_end_matches(['.', ',']);
    // What already has a year, or is a month alone, is no day without one.
    if refused.rule != EntryRule::NotADate {
        return Err(refused);
    }
    let in_year = |year: i16| {
        let forms = [format!("{bare}/{year}"), format!("{bare}.{year}"), format!("{bare} {year}")];
        forms.iter().find_map(|form| parse_date(form, units).ok())
    };
    let years = [day.year() - 1, day.year(), day.year() + 1].into_iter().filter_map(in_year);
    let meant = match year {
        YearMeant::NextFrom(from) => { years }.find(|date| *date >= from),
        YearMeant::NearestTo(day) => years.min_by_key(|date| (*date - day).get_days().abs()),
    };
    meant.ok_or(refused)
}

/// Reads a date as [`parse_date`] does, or a month alone: `August 2025`, `Aug 2025`, `2025-08`, and
/// `8/2025` with inches, `8.2025` or `8/2025` with millimeters.
///
/// # Errors
/// If the text is neither, or out of the range of years.
pub fn parse_month_or_date(text: &str, units: Units) -> Result<DayOrMonth, EntryError> {
    if let Some(month) = parse_month(text, units) {
        return Ok(month);
    }
    parse_date(text, units).map(DayOrMonth::day).map_err(|mut error| {
        if error.rule == EntryRule::NotADate {
            error.rule = EntryRule::NotADateOrMonth;
        }
        error
    })
}

/// A month from 1900 to 2199; `None` of anything else.
fn parse_month(text: &str, units: Units) -> Option<DayOrMonth> {
    let figures: &[&str] = match units {
        Units::Inches => &["%m/%Y"],
        Units::Millimeters => &["%m.%Y", "%m/%Y"],
    };
    // A day after the month reads as a year long ago: it is none of these years.
    let month = |parsed: BrokenDownTime| {
        let year = parsed.year().filter(|year| YEARS.contains(year))?;
        DayOrMonth::month(year, parsed.month()?)
    };
    read(text, MONTHS.iter().chain(figures), month)
}

/// Months in Spanish where they differ from English, each with what it is read as. Short forms are those of
/// CLDR for the US.
const SPANISH_MONTHS: [(&[&str], &str); 12] = [
    (&["ene", "enero"], "Jan"),
    (&["febrero"], "Feb"),
    (&["marzo"], "Mar"),
    (&["abr", "abril"], "Apr"),
    (&["mayo"], "May"),
    (&["junio"], "Jun"),
    (&["julio"], "Jul"),
    (&["ago", "agosto"], "Aug"),
    (&["sept", "septiembre", "setiembre"], "Sep"),
    (&["octubre"], "Oct"),
    (&["noviembre"], "Nov"),
    (&["dic", "diciembre"], "Dec"),
];

/// A date with the names of months in English: `14 de febrero de 2026` as `14 Feb 2026`.
fn with_english_months(text: &str) -> String {
    let words = text.split_whitespace().filter(|word| !word.eq_ignore_ascii_case("de"));
    let english = |word: &str| {
        let name = word.trim_end_matches(['.', ',']).to_lowercase();
        let known = SPANISH_MONTHS.iter().find(|(names, _)| names.contains(&name.as_str()));
        known.map_or_else(|| word.to_owned(), |(_, month)| (*month).to_owned())
    };
    words.map(english).collect::<Vec<_>>().join(" ")
}

/// What the first of these forms that fits makes of a text.
fn read<'a, T>(
    text: &str,
    mut forms: impl Iterator<Item = &'a &'a str>,
    take: impl Fn(BrokenDownTime) -> Option<T>,
) -> Option<T> {
    let text = with_english_months(text);
    forms.find_map(|form| take(strtime::parse(form, &text).ok()?))
}

/// A day, or a month of which the day is not known. In files `2025-08-14` or `2025-08`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DayOrMonth {
    date: Date,
    day_known: bool,
}

impl DayOrMonth {
    /// A day that is known.
    pub const fn day(date: Date) -> Self {
        Self { date, day_known: true }
    }

    /// A month from 1 to 12 of a year; `None` of any other.
    pub fn month(year: i16, month: i8) -> Option<Self> {
        let date = Date::new(year, month, MIDDLE).ok()?;
        Some(Self { date, day_known: false })
    }

    /// The day; of a month its middle, the 15th.
    pub const fn date(self) -> Date {
        self.date
    }

    /// Whether the day is known, not the month alone.
    pub const fn is_day_known(self) -> bool {
        self.day_known
    }

    /// The earliest day that it can be.
    pub fn earliest(self) -> Date {
        if self.day_known { self.date } else { self.date.first_of_month() }
    }

    /// As files have it: `2025-08-14` or `2025-08`.
    fn file_text(self) -> String {
        if self.day_known { self.date.to_string() } else { self.date.strftime("%Y-%m").to_string() }
    }
}

impl From<Date> for DayOrMonth {
    fn from(date: Date) -> Self {
        Self::day(date)
    }
}

impl Serialize for DayOrMonth {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.file_text())
    }
}

impl<'de> Deserialize<'de> for DayOrMonth {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        // A whole date first, of any year: files had them before there were months.
        let date = text.parse().ok().map(Self::day);
        let month = || {
            let parsed = strtime::parse("%Y-%m", &text).ok()?;
            Self::month(parsed.year()?, parsed.month()?)
        };
        let error = || de::Error::custom(EntryError::new(&text, EntryRule::NotADateOrMonth));
        date.or_else(month).ok_or_else(error)
    }
}

impl JsonSchema for DayOrMonth {
    fn schema_name() -> Cow<'static, str> {
        "DayOrMonth".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "type": "string",
            "description": "A day, or a month where the day is not known, such as 2025-08-25 or 2025-08",
            "pattern": "^-?[0-9]{4,6}-[0-9]{2}(-[0-9]{2})?$",
        })
    }
}

/// A date as the schema of files has it. Dates are of a library that does not know schemas.
pub struct DateText;

impl JsonSchema for DateText {
    fn schema_name() -> Cow<'static, str> {
        "Date".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "type": "string",
            "format": "date",
            "description": "A day, such as 2026-02-14",
        })
    }
}

/// Day of the year as an index from 0 (1 January) to 364. 29 February counts as the 28th, so that
/// every year has the same 365 days.
pub fn day_of_year(date: Date) -> usize {
    let day = usize::try_from(date.day_of_year() - 1).unwrap_or(0);
    if date.in_leap_year() && day >= 59 { day - 1 } else { day }
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    const BOTH: [Units; 2] = [Units::Inches, Units::Millimeters];

    fn rule(text: &str, units: Units) -> EntryRule {
        parse_date(text, units).unwrap_err().rule
    }

    #[test]
    fn dates_are_read_and_shown() {
        for text in [
            "2026-02-14",
            "14 Feb 2026",
            "Feb 14, 2026",
            "14 February 2026",
            "February 14 2026",
            " feb 14 2026 ",
            "14 feb 2026",
            "14 de febrero de 2026",
        ] {
            assert_eq!(parse_date(text, Units::Inches), Ok(date(2026, 2, 14)), "{text}");
        }
        assert_eq!(parse_date("2/4/2026", Units::Inches), Ok(date(2026, 2, 4)));
        assert_eq!(parse_date("2/4/26", Units::Inches), Ok(date(2026, 2, 4)));
        // Between slashes a date is the same with either units.
        for text in ["2/4/2026", "2/4/26", "4.2.2026"] {
            assert_eq!(parse_date(text, Units::Millimeters), Ok(date(2026, 2, 4)), "{text}");
        }
        for text in ["02/14/2026", "14/02/2026"] {
            assert_eq!(parse_date(text, Units::Millimeters), Ok(date(2026, 2, 14)), "{text}");
        }
        for text in ["", "2026-02-30", "14/14/2026", "soon", "Aug 20"] {
            assert_eq!(rule(text, Units::Millimeters), EntryRule::NotADate, "{text}");
        }
        let years = EntryRule::YearOutOfRange { first: 1900, last: 2199 };
        assert_eq!(rule("1066-10-14", Units::Inches), years);
    }

    #[test]
    fn a_month_alone_is_read_where_the_day_may_be_unknown() {
        let august = DayOrMonth::month(2025, 8).unwrap();
        assert_eq!((august.date(), august.earliest()), (date(2025, 8, 15), date(2025, 8, 1)));
        assert!(!august.is_day_known());
        for text in
            ["August 2025", "Aug 2025", "aug, 2025", "ago 2025", "agosto de 2025", "2025-08", "8/2025"]
        {
            for units in BOTH {
                assert_eq!(parse_month_or_date(text, units), Ok(august), "{text}");
                assert_eq!(rule(text, units), EntryRule::DayMissing, "{text}");
            }
        }
        for text in ["2025-08-14", "Aug 14, 2025", "August 14 2025"] {
            let day = DayOrMonth::day(date(2025, 8, 14));
            assert_eq!(parse_month_or_date(text, Units::Inches), Ok(day), "{text}");
        }
        for text in ["", "August", "2025", "2025-13", "summer 2025"] {
            let error = parse_month_or_date(text, Units::Inches).unwrap_err();
            assert_eq!(error.rule, EntryRule::NotADateOrMonth, "{text}");
        }
    }

    #[test]
    fn a_day_or_a_month_survives_its_file() {
        for (known, text) in [
            (DayOrMonth::day(date(2025, 8, 14)), "\"2025-08-14\""),
            (DayOrMonth::month(2025, 8).unwrap(), "\"2025-08\""),
        ] {
            assert_eq!(ron::to_string(&known).unwrap(), text);
            assert_eq!(ron::from_str::<DayOrMonth>(text).unwrap(), known);
            for units in BOTH {
                assert_eq!(parse_month_or_date(&known.file_text(), units), Ok(known));
            }
        }
        for text in ["\"\"", "\"2025-13\"", "\"2025-08-32\"", "\"soon\""] {
            assert!(ron::from_str::<DayOrMonth>(text).is_err(), "{text}");
        }
    }

    #[test]
    fn every_year_has_365_days() {
        assert_eq!(day_of_year(date(2026, 1, 1)), 0);
        assert_eq!(day_of_year(date(2026, 12, 31)), 364);
        assert_eq!(day_of_year(date(2028, 2, 28)), day_of_year(date(2028, 2, 29)));
        assert_eq!(day_of_year(date(2028, 12, 31)), 364);
        assert_eq!(day_of_year(date(2028, 3, 1)), day_of_year(date(2027, 3, 1)));
    }
}
