//! What is to be done: the crew's steps, and on which days.

use jiff::civil::Date;

use super::{round, stack, title, verdict_of};
use crate::assess::NextInstallFindings;
use crate::job::Job;
use crate::ready::{Can, Kept, NextInstall, Piling, Verdict};
use crate::words::{Arg, Words, say};

/// What the crew does, by the verdict: a step each.
pub fn steps(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Vec<String> {
    let (apart, end) = (round(16.0, 400.0, words), round(20.0, 500.0, words));
    // Where it is told what boards may average, nothing has to be typed first.
    let told = found.outlook.as_ref().is_some_and(|outlook| outlook.hang.is_some());
    let meter = || {
        let type_first = (!told).then(|| say!(words, "next-card-type"));
        let all = [
            Some(say!(words, "next-card-where", end = end)),
            Some(say!(words, "next-card-pins")),
            told.then(|| say!(words, "next-card-compare")),
            type_first,
        ];
        all.into_iter().flatten().collect::<Vec<String>>()
    };
    match verdict_of(found) {
        Verdict::Hang => {
            let mut steps = vec![say!(words, "next-card-hang"), say!(words, "next-card-hang-soon")];
            steps.push(say!(words, "next-card-single"));
            steps
        }
        Verdict::SendBack => vec![
            say!(words, "next-card-back"),
            say!(words, "next-card-cover", stack = &stack(next, words)),
            say!(words, "next-card-photos"),
        ],
        Verdict::ChangePlan => {
            let mut steps = vec![say!(words, "next-card-change")];
            steps.push(say!(words, "next-card-stickers", lie = lie(next), apart = apart));
            steps.extend(meter());
            steps
        }
        Verdict::Sort => {
            let mut steps = vec![say!(words, "next-card-sort"), say!(words, "next-card-piles")];
            steps.extend(meter());
            steps
        }
        Verdict::Measure | Verdict::MeterMore | Verdict::Wait => {
            let mut steps = vec![say!(words, "next-card-stickers", lie = lie(next), apart = apart)];
            steps.extend(meter());
            steps
        }
    }
}

/// What is to be done next and on which days, each with what tells it from the others; nothing where nothing is to be
/// done on a day.
pub fn appointments(
    found: &NextInstallFindings,
    next: &NextInstall,
    job: &Job,
    words: &Words,
) -> Vec<(&'static str, Date, String)> {
    let Some(outlook) = &found.outlook else { return vec![] };
    let title = title(job, words);
    let (today, name) = (found.date(found.today), || Arg::Name(&title));
    let soon = found.date(found.today + SOON);
    let refused = outlook.wanted.is_some_and(|wanted| wanted.can == Can::No);
    let hang = || say!(words, "next-calendar-hang", title = name());
    let meter = || say!(words, "next-calendar", title = name());
    let meter_then_hang = || say!(words, "next-calendar-meter-hang", title = name());
    match outlook.gate.verdict {
        // Later than within days they are not the boards that were metered.
        // A day on which they would no longer hold is none to wait for.
        Verdict::Hang => match next.wanted.filter(|day| *day > today && !refused) {
            Some(wanted) if wanted > soon => vec![("hang", wanted, meter_then_hang())],
            wanted => vec![("hang", wanted.unwrap_or(today), hang())],
        },
        Verdict::SendBack => vec![("reading", today, say!(words, "next-calendar-back", title = name()))],
        Verdict::ChangePlan => vec![],
        Verdict::Measure | Verdict::MeterMore | Verdict::Wait | Verdict::Sort => {
            let read_on = found.date(outlook.next_reading);
            let ready = outlook.hang.map(|hang| found.date(hang.day));
            let before = ready.is_none_or(|ready| read_on < ready).then(|| ("reading", read_on, meter()));
            let then = ready.map(|ready| ("hang", ready, meter_then_hang()));
            before.into_iter().chain(then).collect()
        }
    }
}

/// Whether boards lie already as they should, as an id to select by.
fn lie(next: &NextInstall) -> Arg<'static> {
    let stickered = next.opened.is_some() || next.stack.piling == Piling::Stickered;
    Arg::Id(if stickered && next.stack.kept == Kept::Room { "yes" } else { "no" })
}

/// Boards that were metered are hung within so many days.
const SOON: i64 = 7;
