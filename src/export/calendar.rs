//! The next reading of a stack as a calendar entry: iCalendar, RFC 5545.

use jiff::ToSpan as _;
use jiff::civil::Date;

use crate::assess::{Assessment, NextInstallFindings};
use crate::ready::NextInstall;
use crate::words::{Words, next_install};

/// A line is folded after so many octets.
const FOLD: usize = 74;

/// The entry, a whole day long; `None` where nothing is to be done on a day.
pub fn next_reading_calendar(assessment: &Assessment, words: &Words) -> Option<String> {
    let found = assessment.next_install.as_deref()?;
    let next = assessment.job.next_install.as_ref()?;
    let (day, summary) = next_install::appointment(found, next, &assessment.job, words)?;
    Some(entry(assessment, found, next, (day, &summary), words))
}

fn entry(
    assessment: &Assessment,
    found: &NextInstallFindings,
    next: &NextInstall,
    (day, summary): (Date, &str),
    words: &Words,
) -> String {
    let after = day.checked_add(1.day()).unwrap_or(day);
    let compact = |date: Date| date.to_string().replace('-', "");
    let mut told = vec![next_install::headline(found, next, words)];
    told.extend(next_install::reasons(found, next, words));
    let lines = [
        "BEGIN:VCALENDAR".to_owned(),
        "VERSION:2.0".to_owned(),
        "PRODID:-//Gapwright//next reading//EN".to_owned(),
        "BEGIN:VEVENT".to_owned(),
        format!("UID:{}-{}@gapwright", compact(found.first), compact(day)),
        format!("DTSTAMP:{}T000000Z", compact(found.date(found.today))),
        format!("DTSTART;VALUE=DATE:{}", compact(day)),
        format!("DTEND;VALUE=DATE:{}", compact(after)),
        format!("SUMMARY:{}", escaped(summary)),
        format!("LOCATION:{}", escaped(&assessment.job.address)),
        format!("DESCRIPTION:{}", escaped(&told.join("\n"))),
        "END:VEVENT".to_owned(),
        "END:VCALENDAR".to_owned(),
    ];
    lines.iter().map(|line| folded(line) + "\r\n").collect()
}

/// Text as a value: what has a meaning of its own there is escaped.
fn escaped(text: &str) -> String {
    let text = text.replace('\\', "\\\\").replace(';', "\\;").replace(',', "\\,");
    text.replace("\r\n", "\\n").replace('\n', "\\n")
}

/// A line in pieces of at most [`FOLD`] octets, a blank in front of each but the first.
fn folded(line: &str) -> String {
    let mut out = String::with_capacity(line.len() + 8);
    let mut length = 0;
    for letter in line.chars() {
        if length + letter.len_utf8() > FOLD {
            out.push_str("\r\n ");
            length = 1;
        }
        out.push(letter);
        length += letter.len_utf8();
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn long_lines_are_folded_between_letters_and_unfold_to_themselves() {
        let line = format!("SUMMARY:{}", "é".repeat(100));
        let folded = folded(&line);
        assert!(folded.split("\r\n").all(|piece| piece.len() <= 75), "{folded}");
        assert_eq!(folded.replace("\r\n ", ""), line);
    }

    #[test]
    fn what_has_a_meaning_is_escaped() {
        assert_eq!(escaped("a, b; c\\d\ne"), "a\\, b\\; c\\\\d\\ne");
    }
}
