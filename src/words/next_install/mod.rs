//! What there is to say of a next install, a sentence each.

mod hang_day;
mod reasons;
mod to_do;
mod ways;

pub use reasons::{card_reasons, reasons, reasons_in_short};
pub use to_do::{appointments, steps};
pub use ways::{changes_in_short, told as tells_ways, way, ways_heading};

use reasons::promise;

use super::{Arg, Words, say};
use crate::assess::{Assessment, NextInstallFindings};
use crate::job::{Catalog, Job};
use crate::measure::{Length, Moisture, Percent, Units};
use crate::ready::{
    Change, Easier, HORIZON, Joints, Kept, NextInstall, Outlook, Piling, Promise, Ready, USUAL_READINGS,
    Verdict, Way, Window,
};

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

/// A gap as it is marked on a tape.
fn marked(gap: Length, words: &Words) -> Length {
    let step = round(1.0 / 64.0, 0.5, words);
    step * (gap.to_m() / step.to_m()).round()
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
    let named = assessment.catalog.species(&next.boards.species).is_some();
    let placed = assessment.job.air.is_placed(&assessment.catalog.stations);
    let few = u64::from(USUAL_READINGS).saturating_sub(u64::try_from(next.measured()).unwrap_or(u64::MAX));
    let part = |part: &'static str| say!(words, "next-missing-part", part = Arg::Id(part), count = few);
    let asked = [("room", !placed), ("boards", !named), ("readings", few > 0)];
    let parts: Vec<String> =
        asked.into_iter().filter(|(_, asked)| *asked).map(|(what, _)| part(what)).collect();
    say!(words, "next-missing", what = &words.figures().list(&parts))
}

/// A species that stands for what is sold under a name.
pub fn sold_as(species: &str, sold_as: &str, words: &Words) -> String {
    say!(words, "list-sold-as", name = Arg::Name(species), sold_as = Arg::Name(sold_as))
}

/// How the boards are planned to go up.
pub fn planned(next: &NextInstall, catalog: &Catalog, words: &Words) -> String {
    let boards = &next.boards;
    let (profile, nailing) =
        (super::Say::say(&boards.profile, words), super::Say::say(&boards.fixing, words));
    let paint = catalog.coating(boards.finish).map_or("", |coating| coating.name.as_str());
    say!(
        words,
        "next-planned",
        profile = &profile,
        nailing = &nailing,
        backing = &super::Say::say(&boards.behind, words),
        paint = Arg::Called(paint)
    )
}

/// What of the boards is usually left as it is.
pub fn assumed_of_boards(next: &NextInstall, catalog: &Catalog, words: &Words) -> String {
    say!(words, "next-assumed-boards", what = &planned(next, catalog, words), chance = next.chance)
}

/// What of the readings nobody changed from what it was set to.
pub fn presets(next: &NextInstall, words: &Words) -> Vec<String> {
    let mut woods = next.readings.iter().filter(|reading| reading.reading.is_some()).map(|one| one.wood);
    let Some(first) = woods.next() else { return vec![] };
    let preset = NextInstall::preset_wood(words.units());
    let unchanged = first == preset && woods.all(|wood| wood == preset);
    unchanged.then(|| say!(words, "next-paper-presets", wood = first)).into_iter().collect()
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
        Verdict::MeterMore if outlook.surprise.is_some() => say!(words, "next-headline-check-meter"),
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
            let (best, joints) = (chance(gate.best, words), Arg::Id(next.joints.key()));
            say!(words, "next-headline-change-plan", best = &best, joints = joints, rule = found.rule)
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
    let told =
        matches!(verdict_of(found), Verdict::Measure | Verdict::Hang | Verdict::Wait | Verdict::ChangePlan);
    let mut lines = if told { vec![] } else { vec![window(&found.window, next, words)] };
    lines.push(say!(words, "next-rule", joints = Arg::Id(next.joints.key()), rule = found.rule));
    lines
}

/// Whether to caulk, and when to paint.
pub fn boards(found: &NextInstallFindings, next: &NextInstall, sealant: &str, words: &Words) -> Vec<String> {
    let mut lines = Vec::new();
    // Joints that stay open need no word of caulk.
    if let Some(caulking) = found.caulking.filter(|_| next.joints == Joints::Sealed) {
        let gap = marked(caulking.gap, words);
        // Boards that meet close no further than the gap that is told.
        let moves = if caulking.way == Way::Closes { caulking.moves.min(gap) } else { caulking.moves };
        lines.push(say!(
            words,
            "next-caulk",
            can = Arg::Id(if caulking.possible { "yes" } else { "no" }),
            open = Arg::Id(if holds_open(found, next) { "yes" } else { "no" }),
            usual = caulking.usual,
            way = Arg::Id(caulking.way.key()),
            moves = moves,
            takes = caulking.takes,
            gap = gap,
            kind = kind_of_gap(gap),
            hung = caulking.hung_at,
            sealant = Arg::Called(sealant)
        ));
    }
    lines.push(say!(words, "next-paint-first"));
    lines
}

/// Whether joints that were to be caulked would hold as they should if they were left open.
fn holds_open(found: &NextInstallFindings, next: &NextInstall) -> bool {
    let open = |easier: &&Easier| easier.change == Change::Joints(Joints::Open);
    found.easier.iter().find(open).is_some_and(|easier| !next.asks_more_than(easier.window.chance))
}

/// How the boards lie, and where.
pub fn stack(next: &NextInstall, words: &Words) -> String {
    let piling = if next.opened.is_some() { Piling::Stickered } else { next.stack.piling };
    let (piling, kept) = (super::Say::say(&piling, words), super::Say::say(&next.stack.kept, words));
    let lie = say!(words, "next-stack", piling = &piling, kept = &kept);
    let before = Arg::Id(if next.stack.piling == Piling::Solid { "solid" } else { "wrapped" });
    match next.opened {
        Some(date) => say!(words, "next-stack-opened", stack = &lie, date = date, before = before),
        None => lie,
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
        lines.extend(outlook.promise.map(|told| promise(&told, words)));
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
    lines.extend(boards(found, next, sealant, words));
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
