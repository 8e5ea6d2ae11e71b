//! What there is to say of a next install, a sentence each.

mod hang_day;
mod to_do;

pub use to_do::{appointments, steps};

use hang_day::hang;

use super::{Arg, Words, say};
use crate::assess::{Assessment, NextInstallFindings};
use crate::job::{Catalog, Job};
use crate::measure::{Humidity, Length, Moisture, Percent, Units};
use crate::ready::{
    Can, Change, Easier, HORIZON, Joints, Kept, NextInstall, Outlook, Piling, Promise, Ready, Surprise,
    USUAL_READINGS, Verdict, Window,
};
use crate::surface::Finish;

/// A chance in whole per cent; what is nearly none or nearly certain says so.
pub fn chance(of: f64, words: &Words) -> String {
    let of = 100.0 * of;
    match of {
        ..0.995 => say!(words, "next-chance-under", chance = Percent::pct(1.0)),
        99.005.. => say!(words, "next-chance-over", chance = Percent::pct(99.0)),
        _ => words.figures().percent(of.round(), 0),
    }
}

/// A share of the boards, as an id to select by.
fn kind_of_share(share: f64) -> Arg<'static> {
    Arg::Id(match share {
        ..0.005 => "none",
        0.995.. => "all",
        _ => "some",
    })
}

/// Whether a day is the first one of a watch, as an id to select by.
fn kind_of_day(day: i64) -> Arg<'static> {
    Arg::Id(if day == 0 { "first" } else { "later" })
}

/// A day of the watch: its year goes without saying.
fn day(found: &NextInstallFindings, day: i64, words: &Words) -> String {
    words.figures().short_date(found.date(day))
}

/// The same with its day of the week: people plan by it.
fn weekday(found: &NextInstallFindings, day: i64, words: &Words) -> String {
    words.figures().weekday(found.date(day))
}

/// A length that is as round in millimeters as it is in inches.
fn round(inches: f64, mm: f64, words: &Words) -> Length {
    match words.units() {
        Units::Inches => Length::inches(inches),
        Units::Millimeters => Length::mm(mm),
    }
}

/// Whether a chance that is good enough is as good as what was asked for or short of it, as an id to select by.
///
/// `best` is as far as the boards get.
fn against_asked(chance: f64, best: f64, next: &NextInstall) -> Arg<'static> {
    Arg::Id(match (100.0 * chance).round() {
        _ if next.asks_more_than(best) => "short",
        _ if next.asks_more_than(chance) => "near",
        pct if pct < next.chance.to_pct().round() => "as_good",
        _ => "told",
    })
}

/// Whether a gap shows as nothing, as an id to select by.
fn kind_of_gap(gap: Length) -> Arg<'static> {
    Arg::Id(if gap < Length::inches(1.0 / 128.0) { "tight" } else { "gap" })
}

fn verdict_of(found: &NextInstallFindings) -> Verdict {
    found.outlook.as_ref().map_or(Verdict::Measure, |outlook| outlook.gate.verdict)
}

/// What is still to be entered before there is anything to say.
pub fn missing(assessment: &Assessment, words: &Words) -> String {
    let Some(next) = &assessment.job.next_install else { return say!(words, "next-incomplete") };
    let known = assessment.catalog.species(&next.boards.species).is_some();
    let few = u64::from(USUAL_READINGS).saturating_sub(u64::try_from(next.measured()).unwrap_or(u64::MAX));
    let part = |part: &'static str| say!(words, "next-missing-part", part = Arg::Id(part), count = few);
    let mut parts = vec![part(if known { "room" } else { "boards" })];
    if few > 0 {
        parts.push(part("readings"));
    }
    say!(words, "next-missing", what = &words.figures().list(&parts))
}

/// What of the boards is usually left as it is.
pub fn assumed_of_boards(next: &NextInstall, catalog: &Catalog, words: &Words) -> String {
    let boards = &next.boards;
    let finish = catalog.coating(boards.finish).map(|coating| words.called(&coating.name).into_owned());
    let all = [
        Some(super::Say::say(&boards.profile, words)),
        Some(super::Say::say(&boards.fixing, words)),
        finish,
        Some(super::Say::say(&boards.behind, words)),
    ];
    let what: Vec<String> = all.into_iter().flatten().collect();
    say!(words, "next-assumed-boards", what = &words.figures().list(&what), chance = next.chance)
}

/// What of the delivery is usually left as it is.
pub fn assumed_of_delivery(next: &NextInstall, words: &Words) -> String {
    let setting = super::Say::say(&next.setting, words);
    let most = next.promised.unwrap_or(Moisture::ZERO);
    let promised = Arg::Id(if next.promised.is_some() { "yes" } else { "no" });
    say!(words, "next-assumed-delivery", setting = &setting, promised = promised, most = most)
}

/// What to do, in a line.
pub fn headline(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> String {
    let Some(outlook) = &found.outlook else { return say!(words, "next-outdoors-unknown") };
    let gate = &outlook.gate;
    let ready = outlook.hang.map(|hang| weekday(found, hang.day, words)).unwrap_or_default();
    match gate.verdict {
        Verdict::Measure => say!(words, "next-headline-measure"),
        Verdict::MeterMore => say!(words, "next-headline-meter-more"),
        Verdict::Hang => {
            let gap = outlook.hang.map_or(Length::ZERO, |hang| hang.gap);
            let against = against_asked(gate.now.holds, gate.best, next);
            let now = chance(gate.now.holds, words);
            say!(
                words,
                "next-headline-hang",
                kind = kind_of_gap(gap),
                gap = gap,
                against = against,
                chance = &now,
                asked = next.chance
            )
        }
        Verdict::Wait => match gate.first {
            Some(lever) => {
                let (lever, units) = (Arg::Id(lever.key()), Arg::units(words.units()));
                say!(words, "next-headline-first", lever = lever, date = &ready, units = units)
            }
            None => {
                let now = Arg::Id(if gate.dry { "dry" } else { "wet" });
                say!(words, "next-headline-wait", now = now, date = &ready)
            }
        },
        Verdict::Sort => say!(words, "next-headline-sort"),
        Verdict::SendBack => match broken(outlook) {
            Some(promise) => say!(words, "next-headline-promise", most = promise.most),
            None => say!(words, "next-headline-send-back"),
        },
        Verdict::ChangePlan if gate.caulk_fails => say!(words, "next-headline-caulk-fails"),
        Verdict::ChangePlan => {
            let best = chance(gate.best, words);
            say!(words, "next-headline-change-plan", best = &best, asked = next.chance)
        }
    }
}

fn broken(outlook: &Outlook) -> Option<Promise> {
    outlook.promise.filter(Promise::is_broken)
}

/// The verdict in a word or two.
pub fn verdict(of: Verdict, words: &Words) -> String {
    say!(words, "next-verdict", verdict = Arg::Id(of.key()))
}

/// What boards for this room should be, before a day is known on which these are.
pub fn window(of: &Window, next: &NextInstall, words: &Words) -> String {
    let (best, kind) = (of.best, kind_of_gap(of.best.gap));
    match of.range {
        Some(range) => {
            let (low, high) = (range.low, range.high);
            say!(
                words,
                "next-window",
                low = low,
                high = high,
                best = best.moisture,
                kind = kind,
                gap = best.gap
            )
        }
        None => {
            let chance = chance(of.chance, words);
            say!(
                words,
                "next-window-none",
                asked = next.chance,
                best = best.moisture,
                kind = kind,
                gap = best.gap,
                chance = &chance
            )
        }
    }
}

/// What boards for this room should be, where that is not told with a day, and the rule that is held to.
pub fn room(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Vec<String> {
    let told = !matches!(verdict_of(found), Verdict::Hang | Verdict::Wait | Verdict::ChangePlan);
    let mut lines = if told { vec![window(&found.window, next, words)] } else { vec![] };
    lines.push(say!(words, "next-rule", joints = Arg::Id(next.joints.key()), rule = found.rule));
    lines
}

/// Whether to caulk, and when to paint.
pub fn boards(found: &NextInstallFindings, sealant: &str, words: &Words) -> Vec<String> {
    let mut lines = Vec::new();
    if let Some(caulking) = &found.caulking {
        lines.push(say!(
            words,
            "next-caulk",
            can = Arg::Id(if caulking.possible { "yes" } else { "no" }),
            usual = caulking.usual,
            way = Arg::Id(caulking.way.key()),
            moves = caulking.moves,
            takes = caulking.takes,
            gap = caulking.gap,
            kind = kind_of_gap(caulking.gap),
            sealant = Arg::Called(sealant)
        ));
    }
    lines.push(say!(words, "next-paint-first"));
    lines
}

/// What helps, where boards that were not measured yet can't do as they are planned.
pub fn helps(found: &NextInstallFindings, words: &Words) -> Option<String> {
    let told = verdict_of(found) == Verdict::Measure && found.window.range.is_none();
    told.then(|| changes(found, words))
}

fn change(easier: &Easier, words: &Words) -> String {
    let (change, length, name) = match easier.change {
        Change::Joints(Joints::Sealed) => ("caulk", Length::ZERO, String::new()),
        Change::Joints(Joints::Open) => ("open", Length::ZERO, String::new()),
        Change::Gap(gap) => ("gap", gap, String::new()),
        Change::Width(width) => ("width", width, String::new()),
        Change::Finish(Finish::OilFace) => ("finish_oil", Length::ZERO, String::new()),
        Change::Finish(_) => ("finish", Length::ZERO, String::new()),
        Change::Humidifier(_) => ("humidifier", Length::ZERO, String::new()),
        Change::Fixing(fixing) => ("fixing", Length::ZERO, super::Say::say(&fixing, words)),
    };
    let chance = chance(easier.window.chance, words);
    let kept = if let Change::Humidifier(kept) = easier.change { kept } else { Humidity::ZERO };
    say!(
        words,
        "next-easier",
        change = Arg::Id(change),
        length = length,
        name = &name,
        kept = kept,
        moisture = easier.window.best.moisture,
        chance = &chance
    )
}

/// So many changes stand in the banner.
const CHANGES: usize = 3;

/// Why the verdict is what it is, most telling first: the first two stand in the banner.
pub fn reasons(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Vec<String> {
    let mut lines = because(found, next, words);
    let surprise = found.outlook.as_ref().and_then(|outlook| outlook.surprise);
    if let Some(Surprise { average, expected }) = surprise {
        let (low, high) = (expected.low, expected.high);
        lines.insert(0, say!(words, "next-surprise", average = average, low = low, high = high));
    }
    // Caulk that can't follow keeps no joint closed, whatever the boards do.
    let fails = next.joints == Joints::Sealed && found.caulking.is_some_and(|caulking| !caulking.possible);
    if fails && !lines.is_empty() {
        lines.insert(0, say!(words, "next-caulk-fails"));
    }
    if let Some(answer) = by_wanted(found, next, words) {
        lines.insert(0, answer);
    }
    lines
}

/// Whether the boards can be hung on the day they are wanted, in a line; `None` where no day is named.
fn by_wanted(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Option<String> {
    let outlook = found.outlook.as_ref()?;
    let (wanted, gate) = (outlook.wanted?, &outlook.gate);
    let can = match (wanted.can, gate.verdict) {
        (Can::Yes, _) if gate.first.is_some() => "yes_first",
        (Can::Unknown, Verdict::Measure | Verdict::MeterMore) => "measure",
        (Can::Unknown, _) => "too_far",
        (Can::Past, _) if wanted.instead.is_some() => "past",
        (Can::Past, _) => "past_none",
        (Can::No, Verdict::SendBack) => "send_back",
        (Can::No, _) if gate.caulk_fails => "caulk",
        (Can::No, Verdict::Sort) => "sort",
        (Can::No, _) if wanted.instead.is_none() => "never",
        (can, _) => can.key(),
    };
    let on = words.figures().short_date(next.wanted?);
    let then = wanted.chance.map(|of| chance(of, words)).unwrap_or_default();
    let (date, instead) = match wanted.instead {
        Some((instead, of)) => (day(found, instead, words), chance(of, words)),
        None => (String::new(), String::new()),
    };
    let (measured, asked) = (found.sampling.map_or(0, |sampling| sampling.measured), next.chance);
    Some(say!(
        words,
        "next-wanted",
        can = Arg::Id(can),
        wanted = &on,
        chance = &then,
        asked = asked,
        date = &date,
        instead = &instead,
        more = USUAL_READINGS.saturating_sub(measured).max(1)
    ))
}

fn because(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Vec<String> {
    let Some(outlook) = &found.outlook else { return vec![] };
    let gate = &outlook.gate;
    let Some(lot) = &outlook.lot else { return vec![] };
    let (now, asked) = (chance(gate.now.holds, words), next.chance);
    let (waiting, best) = (chance(gate.waiting, words), chance(gate.best, words));
    let mean = lot.moisture.mean;
    let later = outlook.ready.map(|ready| day(found, ready.sure, words));
    let asked_is = match gate.verdict {
        Verdict::Hang if later.is_some() => against_asked(gate.now.holds, gate.best, next),
        Verdict::Hang => against_asked(gate.now.holds, gate.now.holds, next),
        _ => Arg::Id("told"),
    };
    let later = later.unwrap_or_default();
    let today =
        say!(words, "next-now", holds = &now, asked = asked, kind = asked_is, most = &best, date = &later);
    let risks = risks(found, next, outlook, words);
    match gate.verdict {
        Verdict::Measure => vec![],
        Verdict::Hang => {
            let mut lines = vec![today];
            lines.extend(falls_short(found, next, words));
            lines.extend(outlook.hang.iter().flat_map(|day| hang(found, day, words)));
            if lot.moisture.mean < found.window.best.moisture - Moisture::pct(DRIER) {
                lines.push(say!(words, "next-hang-dry", mean = mean, settled = found.window.best.moisture));
            }
            lines.push(risks);
            lines
        }
        Verdict::Wait => {
            let mut lines = ready(found, next, outlook, words);
            lines.splice(1..1, outlook.hang.iter().flat_map(|day| hang(found, day, words)));
            lines.push(today);
            lines.push(risks);
            lines.extend(falls_short(found, next, words));
            if gate.dry {
                lines.push(say!(words, "next-too-dry", mean = mean));
            }
            lines
        }
        Verdict::Sort => {
            let (spread, high) = (lot.spread, found.window.range.map(|range| range.high));
            let mut lines = vec![say!(words, "next-mixed", mean = mean, spread = spread)];
            lines.extend(high.map(|high| say!(words, "next-sort", high = high)));
            lines.extend(outlook.promise.map(|promise| self::promise(&promise, words)));
            lines.push(say!(words, "next-mixed-chance", holds = &now, waiting = &waiting));
            lines
        }
        Verdict::SendBack => match broken(outlook) {
            Some(promise) => {
                let mut lines = vec![self::promise(&promise, words), today];
                // Drier boards would come to the same.
                lines.extend(found.window.range.is_none().then(|| changes(found, words)));
                lines.extend(outlook.ready.map(|ready| {
                    let date = day(found, ready.sure, words);
                    say!(words, "next-if-kept", date = &date, stack = &stack(next, words))
                }));
                lines
            }
            None => {
                let not = chance(1.0 - gate.best, words);
                vec![say!(words, "next-never", not = &not, days = HORIZON, best = &best), today]
            }
        },
        Verdict::ChangePlan if gate.caulk_fails => vec![changes(found, words)],
        Verdict::ChangePlan => {
            vec![changes(found, words), say!(words, "next-at-best", holds = &now, best = &best), risks]
        }
        Verdict::MeterMore => {
            let measured = found.sampling.map_or(0, |sampling| sampling.measured);
            let more = USUAL_READINGS.saturating_sub(measured).max(1);
            vec![say!(words, "next-so-few", count = measured, more = more), today]
        }
    }
}

/// How the boards lie, and where.
pub fn stack(next: &NextInstall, words: &Words) -> String {
    // Out of the wrapper they go on stickers.
    let piling = match (next.stack.piling, next.opened) {
        (Piling::Wrapped, Some(_)) => Piling::Stickered,
        (piling, _) => piling,
    };
    let (piling, kept) = (super::Say::say(&piling, words), super::Say::say(&next.stack.kept, words));
    let lie = say!(words, "next-stack", piling = &piling, kept = &kept);
    match next.opened {
        Some(date) => say!(words, "next-stack-opened", stack = &lie, date = date),
        None => lie,
    }
}

/// What would bring a plan as far as was asked that falls a little short of it.
fn falls_short(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Option<String> {
    let short = next.asks_more_than(found.window.chance) && !found.easier.is_empty();
    short.then(|| changes(found, words))
}

/// The changes that help, in a sentence.
fn changes(found: &NextInstallFindings, words: &Words) -> String {
    let changes: Vec<String> =
        found.easier.iter().take(CHANGES).map(|easier| change(easier, words)).collect();
    match changes.is_empty() {
        true => say!(words, "next-easier-none"),
        false => {
            let changes = changes.iter().map(String::as_str).collect();
            say!(words, "next-changes", changes = Arg::Names(changes))
        }
    }
}

/// Boards that are drier by this much than the room will make them, points, are said to be dry.
const DRIER: f64 = 1.0;

fn risks(found: &NextInstallFindings, next: &NextInstall, outlook: &Outlook, words: &Words) -> String {
    let now = &outlook.gate.now;
    let (opens, buckles) = (chance(now.opens, words), chance(now.buckles, words));
    let joints = Arg::Id(next.joints.key());
    say!(words, "next-risks", joints = joints, rule = found.rule, opens = &opens, buckles = &buckles)
}

/// What was promised, and what came.
fn promise(promise: &Promise, words: &Words) -> String {
    let (share, wetter) = (kind_of_share(promise.wetter), chance(promise.wetter, words));
    let (most, broken, clearly) =
        (promise.most, chance(promise.broken, words), chance(promise.clearly, words));
    match promise.is_broken() {
        true => say!(
            words,
            "next-promise-broken",
            most = most,
            share = share,
            wetter = &wetter,
            clearly = &clearly
        ),
        false => {
            say!(
                words,
                "next-promise-open",
                most = most,
                share = share,
                wetter = &wetter,
                broken = &broken,
                clearly = &clearly,
                likely = Arg::Id(if promise.clearly > 0.5 { "yes" } else { "no" })
            )
        }
    }
}

/// What the readings say of the boards.
pub fn lot(outlook: &Outlook, next: &NextInstall, words: &Words) -> Vec<String> {
    let Some(lot) = &outlook.lot else { return vec![] };
    let (mean, sd, spread) = (lot.moisture.mean, lot.moisture.sd, lot.spread);
    let mut lines: Vec<String> = Vec::new();
    lines.extend(outlook.read.map(|read| {
        say!(words, "next-read", count = read.count, average = read.average, kind = kind_of_day(read.day))
    }));
    lines.push(say!(words, "next-lot", moisture = mean, sd = sd, spread = spread));
    // Where the meter's error is most of the doubt, more boards don't help.
    if lot.offset.sd.to_pct() > 0.75 * lot.moisture.sd.to_pct() {
        lines.push(say!(words, "next-offset"));
    }
    if let Some(dry) = outlook.dry_shell {
        let pins = next.readings.last().map_or(Length::ZERO, |reading| reading.pins);
        let hides = dry.short_pins && dry.chance > 0.25;
        lines.push(match hides {
            true => say!(
                words,
                "next-dry-shell",
                core = lot.core,
                shell = lot.shell,
                pins = pins,
                deep = dry.deep_enough
            ),
            false => say!(words, "next-core", shell = lot.shell, core = lot.core),
        });
    }
    // Where the verdict rests on it, it stands with the reasons.
    let told = matches!(outlook.gate.verdict, Verdict::Sort)
        || (outlook.gate.verdict == Verdict::SendBack && broken(outlook).is_some());
    if !told {
        lines.extend(outlook.promise.map(|promise| self::promise(&promise, words)));
    }
    lines
}

/// How many boards to meter, and what it is worth.
pub fn sampling(found: &NextInstallFindings, words: &Words) -> Vec<String> {
    let Some(sampling) = &found.sampling else { return vec![] };
    let missed = chance(sampling.missed, words);
    let first = match sampling.measured {
        0 => {
            let from_end = round(20.0, 500.0, words);
            say!(words, "next-sampling-first", count = sampling.of, missed = &missed, end = from_end)
        }
        _ => say!(words, "next-sampling", count = sampling.measured, missed = &missed),
    };
    let plan = &sampling.plan;
    let (turned_away, let_in) = (chance(plan.turned_away, words), chance(plan.let_in, words));
    let agreed = say!(
        words,
        "next-sampling-plan",
        boards = plan.boards,
        may_fail = plan.may_fail,
        turned_away = &turned_away,
        let_in = &let_in
    );
    vec![first, agreed]
}

/// When the stack is ready: the sure day first, then the day with even odds.
pub fn ready(
    found: &NextInstallFindings,
    next: &NextInstall,
    outlook: &Outlook,
    words: &Words,
) -> Vec<String> {
    let Some(Ready { even, sure }) = outlook.ready else {
        return vec![say!(words, "next-not-ready", days = HORIZON)];
    };
    let then = outlook.hang.map_or(outlook.gate.waiting, |hang| hang.chance);
    let date = day(found, sure, words);
    let kind = against_asked(then, outlook.gate.best, next);
    let (chance_then, asked) = (chance(then, words), next.chance);
    let most = chance(outlook.gate.best, words);
    let mut lines = vec![say!(
        words,
        "next-ready-sure",
        sure = &date,
        chance = &chance_then,
        asked = asked,
        kind = kind,
        most = &most
    )];
    if even > found.today && even < sure {
        let even = day(found, even, words);
        lines.push(say!(words, "next-ready-even", even = &even));
    }
    lines
}

/// What each thing that can be done brings: its name, and when the boards are ready then. Where something has
/// to be done first, that is told instead.
pub fn levers(found: &NextInstallFindings, outlook: &Outlook, words: &Words) -> Vec<(String, String)> {
    if outlook.gate.first.is_some() {
        return vec![];
    }
    let warmer = Arg::units(words.units());
    let one = |remedy: &crate::ready::Remedy| {
        let lever = Arg::Id(remedy.lever.key());
        let name = say!(words, "next-lever", lever = lever, units = warmer.clone());
        let value = match (remedy.ready, outlook.ready) {
            (None, _) => say!(words, "next-lever-never", days = HORIZON),
            (Some(ready), Some(now)) => {
                let sooner = u64::try_from(now.sure - ready.sure).unwrap_or(0);
                let date = day(found, ready.sure, words);
                say!(words, "next-lever-ready", days = sooner, date = &date)
            }
            (Some(ready), None) => {
                let date = day(found, ready.sure, words);
                say!(words, "next-lever-first", date = &date)
            }
        };
        (name, value)
    };
    // What brings the day no nearer helps nobody.
    let helps = |remedy: &&crate::ready::Remedy| {
        let sooner = |now: Ready| remedy.ready.is_none_or(|ready| ready.sure < now.sure);
        outlook.ready.is_none_or(sooner)
    };
    outlook.levers.iter().filter(helps).map(one).collect()
}

/// When to measure again.
pub fn next_reading(found: &NextInstallFindings, outlook: &Outlook, words: &Words) -> String {
    let date = day(found, outlook.next_reading, words);
    say!(words, "next-reading", date = &date)
}

/// Whether the stack is watched: boards that hang or go back are not, nor are those that are sorted.
pub fn is_watched(verdict: Verdict) -> bool {
    verdict == Verdict::Wait
}

/// Everything, a line each: as the command line prints it.
pub fn lines(found: &NextInstallFindings, job: &Job, sealant: &str, words: &Words) -> Vec<String> {
    let Some(next) = &job.next_install else { return vec![] };
    let mut lines = vec![headline(found, next, words)];
    lines.extend(reasons(found, next, words));
    if let Some(outlook) = &found.outlook {
        lines.extend(lot(outlook, next, words));
    }
    lines.extend(room(found, next, words));
    lines.extend(boards(found, sealant, words));
    lines.extend(helps(found, words));
    lines.extend(sampling(found, words));
    if let Some(outlook) = &found.outlook {
        if is_watched(outlook.gate.verdict) {
            let levers = levers(found, outlook, words);
            lines.extend(levers.into_iter().map(|(name, value)| format!("{name}: {value}")));
            lines.push(next_reading(found, outlook, words));
        }
        lines.push(say!(words, "next-known"));
    }
    lines
}

/// The title of a job, or what its papers are called without one.
pub fn title(job: &Job, words: &Words) -> String {
    match job.title.trim() {
        "" => say!(words, "next-paper-untitled"),
        title => title.to_owned(),
    }
}

impl super::Say for Piling {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        say!(words, "next-piling", piling = Arg::Id(self.key()))
    }
}

impl super::Say for Kept {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        say!(words, "next-kept", kept = Arg::Id(self.key()))
    }
}

impl super::Say for Joints {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        say!(words, "next-joints", joints = Arg::Id(self.key()))
    }
}
