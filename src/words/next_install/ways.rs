//! What helps boards that can't do as they are planned.

use super::{chance, day, verdict_of};
use crate::assess::NextInstallFindings;
use crate::measure::{Humidity, Length};
use crate::ready::{Change, Easier, HORIZON, Joints, NextInstall, Then, Verdict};
use crate::surface::Finish;
use crate::words::{Arg, Say as _, Words, say};

/// So many changes are told of in a sentence.
const CHANGES: usize = 4;

/// What helps, in a sentence; `None` where nothing has to.
pub fn changes(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Option<String> {
    told(found).then(|| {
        let changes: Vec<String> =
            found.easier.iter().take(CHANGES).map(|easier| way(found, next, easier, words)).collect();
        match changes.is_empty() {
            true => say!(words, "next-easier-none"),
            false => say!(words, "next-changes", kind = kind(found, next), changes = &changes.join("; ")),
        }
    })
}

/// The same in a line: the first change, and that there are others.
pub fn changes_in_short(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Option<String> {
    told(found).then(|| match &found.easier[..] {
        [] => say!(words, "next-easier-none"),
        [first, rest @ ..] => {
            let change = way(found, next, first, words);
            say!(words, "next-changes-short", kind = kind(found, next), change = &change, count = rest.len())
        }
    })
}

/// What a list of the changes is headed by.
pub fn ways_heading(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> String {
    say!(words, "next-ways", kind = kind(found, next))
}

/// Whether one of the changes gets the boards there or the best only come nearest, as an id to select by.
fn kind(found: &NextInstallFindings, next: &NextInstall) -> Arg<'static> {
    let reaches = |easier: &Easier| !next.asks_more_than(easier.window.chance);
    Arg::Id(if found.easier.iter().any(reaches) { "reaches" } else { "nearest" })
}

/// Whether it is told what helps: of boards that go back or are sorted it would lead nowhere.
pub fn told(found: &NextInstallFindings) -> bool {
    match verdict_of(found) {
        Verdict::ChangePlan => true,
        Verdict::Measure | Verdict::Hang | Verdict::Wait => !found.easier.is_empty(),
        // Drier boards would come to the same.
        Verdict::SendBack => !found.easier.is_empty() && found.window.range.is_none(),
        Verdict::MeterMore | Verdict::Sort => false,
    }
}

/// A change, the chance it brings, and when.
pub fn way(found: &NextInstallFindings, next: &NextInstall, easier: &Easier, words: &Words) -> String {
    let (change, chance) = (change(found, easier, next, words), chance(easier.chance(), words));
    let (kind, date) = match easier.then {
        Then::Unknown => ("unknown", String::new()),
        Then::Hung(on, _) if on <= found.today => ("today", String::new()),
        Then::Hung(on, _) => ("day", day(found, on, words)),
        Then::Never => ("never", String::new()),
    };
    say!(
        words,
        "next-way",
        change = &change,
        chance = &chance,
        then = Arg::Id(kind),
        moisture = easier.window.best.moisture,
        date = &date,
        days = HORIZON
    )
}

/// What is done otherwise.
fn change(found: &NextInstallFindings, easier: &Easier, next: &NextInstall, words: &Words) -> String {
    let (change, length, name) = match easier.change {
        Change::Joints(Joints::Sealed) => ("caulk", found.rule, String::new()),
        Change::Joints(Joints::Open) => ("open", Length::ZERO, String::new()),
        Change::Gap(gap) | Change::WiderGap(gap) => ("gap", gap, String::new()),
        Change::Width(width) => ("width", width, String::new()),
        Change::Finish(Finish::OilFace) => ("finish_oil", Length::ZERO, String::new()),
        Change::Finish(_) => ("finish", Length::ZERO, String::new()),
        Change::Humidifier(_) => ("humidifier", Length::ZERO, String::new()),
        Change::SummerAir(_) => ("summer", Length::ZERO, String::new()),
        Change::Fixing(fixing) => ("fixing", Length::ZERO, fixing.say(words)),
        Change::Rule(rule) if next.joints == Joints::Sealed => ("rule_sealed", rule, String::new()),
        Change::Rule(rule) => ("rule", rule, String::new()),
    };
    let kept = match easier.change {
        Change::Humidifier(kept) | Change::SummerAir(kept) => kept,
        _ => Humidity::ZERO,
    };
    say!(words, "next-easier", change = Arg::Id(change), length = length, name = &name, kept = kept)
}
