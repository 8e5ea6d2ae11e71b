//! Days to remember as calendar entries: iCalendar, RFC 5545. The weeks to seal in, the follow-up in the humid and in
//! the dry season, and the next reading of a stack.

use jiff::ToSpan as _;
use jiff::civil::Date;

use crate::assess::{Assessment, date_after};
use crate::words::{Words, next_install, say};

/// A line is folded after so many octets.
const FOLD: usize = 74;

/// One entry, whole days long.
struct Entry {
    /// What tells it from the other entries of the job.
    kind: &'static str,
    from: Date,
    /// The last day.
    to: Date,
    summary: String,
    told: String,
}

/// The next reading of a stack; `None` where nothing is to be measured next.
pub fn next_reading_calendar(assessment: &Assessment, words: &Words) -> Option<String> {
    let found = assessment.next_install.as_deref()?;
    let entries = next_steps(assessment, words);
    (!entries.is_empty()).then(|| calendar(assessment, found.date(found.today), &entries))
}

/// All days of a job to remember, in one calendar; `None` where there are none.
pub fn job_calendar(assessment: &Assessment, words: &Words) -> Option<String> {
    let mut entries: Vec<Entry> = sealing(assessment, words).into_iter().collect();
    entries.extend(work(assessment, words));
    entries.extend(follow_ups(assessment, words));
    entries.extend(next_steps(assessment, words));
    (!entries.is_empty()).then(|| calendar(assessment, assessment.job.visited, &entries))
}

/// The day set for sealing, or the best weeks, where the selected option seals joints.
fn sealing(assessment: &Assessment, words: &Words) -> Option<Entry> {
    let job = &*assessment.job;
    let chosen = assessment.chosen().filter(|_| assessment.lays_beads() && job.done.finished.is_none())?;
    let (title, seals) = (&job.title, assessment.season.as_ref()?);
    let (from, to) = match job.plan.seal_on.filter(|date| *date >= job.visited) {
        Some(day) => (day, day),
        None => (date_after(job, seals.best.low * 7), date_after(job, seals.best.high * 7 + 6)),
    };
    let summary = say!(words, "calendar-seal", title = title);
    Some(Entry { kind: "seal", from, to, summary, told: words.called(&chosen.name).into_owned() })
}

/// The days on site, as they are planned.
fn work(assessment: &Assessment, words: &Words) -> Option<Entry> {
    let done = assessment.job.done.finished.is_some();
    let option = assessment.chosen().filter(|option| !done && option.schedule.crew_days > 0)?;
    let days = option.schedule.days.iter().map(|day| day.day);
    let on = |day: u32| option.starts.checked_add(i64::from(day).days()).ok();
    let (from, to) = (on(days.clone().min()?)?, on(days.max()?)?);
    let summary = say!(words, "calendar-work", title = &assessment.job.title);
    Some(Entry { kind: "work", from, to, summary, told: words.called(&option.name).into_owned() })
}

/// The days on which to measure again.
fn follow_ups(assessment: &Assessment, words: &Words) -> Vec<Entry> {
    let job = &*assessment.job;
    let measured = assessment.typical_section().is_some_and(|state| state.gaps.measured > 0);
    let Some((humid, dry)) = assessment.look_again().filter(|_| measured) else { return Vec::new() };
    let title = &job.title;
    let told = say!(words, "calendar-follow-up-told");
    [
        (humid, "humid", say!(words, "calendar-humid", title = title)),
        (dry, "dry", say!(words, "calendar-dry", title = title)),
    ]
    .map(|(day, kind, summary)| {
        let on = date_after(job, day);
        Entry { kind, from: on, to: on, summary, told: told.clone() }
    })
    .into()
}

/// What is to be done next with a stack of boards.
fn next_steps(assessment: &Assessment, words: &Words) -> Vec<Entry> {
    let found = assessment.next_install.as_deref().zip(assessment.job.next_install.as_ref());
    let Some((found, next)) = found else { return vec![] };
    let mut told = vec![next_install::headline(found, next, words)];
    told.extend(next_install::reasons(found, next, words));
    let told = told.join("\n");
    let entry = |(kind, on, summary)| Entry { kind, from: on, to: on, summary, told: told.clone() };
    next_install::appointments(found, next, &assessment.job, words).into_iter().map(entry).collect()
}

/// Entries as a calendar, made on `stamp`: the same job gives the same bytes.
fn calendar(assessment: &Assessment, stamp: Date, entries: &[Entry]) -> String {
    let compact = |date: Date| date.to_string().replace('-', "");
    let mut lines = vec![
        "BEGIN:VCALENDAR".to_owned(),
        "VERSION:2.0".to_owned(),
        "PRODID:-//Gapwright//Gapwright//EN".to_owned(),
    ];
    for entry in entries {
        // The last day itself is within: the end is the day after.
        let after = entry.to.checked_add(1.day()).unwrap_or(entry.to);
        lines.extend([
            "BEGIN:VEVENT".to_owned(),
            format!("UID:{}-{}-{}@gapwright", compact(stamp), entry.kind, compact(entry.from)),
            format!("DTSTAMP:{}T000000Z", compact(stamp)),
            format!("DTSTART;VALUE=DATE:{}", compact(entry.from)),
            format!("DTEND;VALUE=DATE:{}", compact(after)),
            format!("SUMMARY:{}", escaped(&entry.summary)),
            format!("LOCATION:{}", escaped(&assessment.job.address)),
            format!("DESCRIPTION:{}", escaped(&entry.told)),
            "END:VEVENT".to_owned(),
        ]);
    }
    lines.push("END:VCALENDAR".to_owned());
    lines.iter().map(|line| folded(line) + "\r\n").collect()
}

/// Text as a value: what has a meaning of its own there is escaped.
fn escaped(text: &str) -> String {
    let text = text.replace('\\', "\\\\").replace(';', "\\;").replace(',', "\\,");
    // A return by itself ends a line for some readers; what follows it would be an entry of its own.
    text.replace("\r\n", "\\n").replace(['\n', '\r'], "\\n")
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
        assert_eq!(escaped("12 Lane\rBEGIN:VALARM\r\nACTION:X"), "12 Lane\\nBEGIN:VALARM\\nACTION:X");
    }
}
