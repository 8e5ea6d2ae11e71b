//! Calendar dates as people type and read them.

use jiff::civil::Date;
use jiff::fmt::strtime;

use super::{EntryError, Units};

/// The written forms that cannot be mistaken for one another.
const FORMS: [&str; 6] = ["%Y-%m-%d", "%d %b %Y", "%b %d %Y", "%b %d, %Y", "%d %B %Y", "%B %d, %Y"];

/// Reads `2026-02-14`, `14 Feb 2026` or `Feb 14, 2026`, between 1900 and 2200; and in figures as is
/// usual where the units are: `2/14/2026` with inches, `14.2.2026` or `14/2/2026` with millimetres.
///
/// # Errors
/// If the text is not a date in one of these forms, or out of that range.
pub fn parse_date(text: &str, units: Units) -> Result<Date, EntryError> {
    let figures: &[&str] = match units {
        Units::Inches => &["%m/%d/%Y"],
        Units::Millimeters => &["%d.%m.%Y", "%d/%m/%Y"],
    };
    let found = FORMS
        .iter()
        .chain(figures)
        .find_map(|form| strtime::parse(form, text.trim()).and_then(|parsed| parsed.to_date()).ok());
    match found {
        Some(date) if (1900..2200).contains(&date.year()) => Ok(date),
        Some(_) => Err(EntryError::new(text, "is not in this age", "Type a year from 1900 to 2199")),
        None => Err(EntryError::new(text, "is not a date", "Type it as 2026-02-14 or 14 Feb 2026")),
    }
}

/// Shows `14 Feb 2026`.
pub fn show_date(date: Date) -> String {
    date.strftime("%-d %b %Y").to_string()
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

    #[test]
    fn dates_are_read_and_shown() {
        for text in ["2026-02-14", "14 Feb 2026", "Feb 14, 2026", "14 February 2026", " feb 14 2026 "] {
            assert_eq!(parse_date(text, Units::Inches), Ok(date(2026, 2, 14)), "{text}");
        }
        assert_eq!(parse_date("2/4/2026", Units::Inches), Ok(date(2026, 2, 4)));
        assert_eq!(parse_date("2/4/2026", Units::Millimeters), Ok(date(2026, 4, 2)));
        assert_eq!(show_date(date(2026, 2, 4)), "4 Feb 2026");
        for text in ["", "2026-02-30", "02/14/2026", "1066-10-14", "soon"] {
            assert!(parse_date(text, Units::Millimeters).is_err(), "{text}");
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
