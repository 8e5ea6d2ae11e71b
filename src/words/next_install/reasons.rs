//! Why the verdict is what it is.

use super::hang_day::hang;
use super::ways::{changes, changes_in_short};
use super::{against_asked, broken, chance, day, kind_of_gap, kind_of_share, ready, stack, window};
use crate::assess::NextInstallFindings;
use crate::measure::Moisture;
use crate::ready::{
    Can, HORIZON, Joints, NextInstall, Outlook, Promise, Remedy, Surprise, USUAL_READINGS, Verdict,
};
use crate::words::{Arg, Words, say};

/// Why the verdict is what it is and what would help, most telling first.
pub fn reasons(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Vec<String> {
    with_changes(found, next, changes(found, next, words), words)
}

/// What the crew goes by: how to hang the boards where a day is told, else why they don't hang them.
pub fn card_reasons(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Vec<String> {
    match found.outlook.as_ref().and_then(|outlook| outlook.hang.as_ref()) {
        Some(day) => hang(found, day, words),
        None => reasons(found, next, words),
    }
}

/// The same where what would help is listed elsewhere: told in a line.
pub fn reasons_in_short(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Vec<String> {
    with_changes(found, next, changes_in_short(found, next, words), words)
}

/// Reasons, and what would help where it belongs among them: first where there is nothing else to do.
fn with_changes(
    found: &NextInstallFindings,
    next: &NextInstall,
    changes: Option<String>,
    words: &Words,
) -> Vec<String> {
    let mut lines = because(found, next, words);
    let Some(outlook) = &found.outlook else { return changes.into_iter().collect() };
    match (outlook.gate.verdict, changes) {
        (Verdict::ChangePlan, Some(changes)) => lines.insert(0, changes),
        (_, changes) => lines.extend(changes),
    }
    if let Some(Surprise { average, expected }) = outlook.surprise {
        let (low, high) = (expected.low, expected.high);
        lines.insert(0, say!(words, "next-surprise", average = average, low = low, high = high));
    }
    // Caulk that can't follow keeps no joint closed, whatever the boards do; the headline may have said so.
    let fails = next.joints == Joints::Sealed
        && found.caulking.is_some_and(|caulking| !caulking.possible)
        && !outlook.gate.caulk_fails;
    if fails && !lines.is_empty() {
        lines.insert(0, say!(words, "next-caulk-fails"));
    }
    if let Some(answer) = by_wanted(found, next, words) {
        lines.insert(0, answer);
        lines.splice(1..1, in_time(found, outlook, words));
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
    // What doesn't fit is measured anew.
    let measured =
        found.sampling.filter(|_| outlook.surprise.is_none()).map_or(0, |sampling| sampling.measured);
    let asked = next.chance;
    Some(say!(
        words,
        "next-wanted",
        can = Arg::Id(can),
        wanted = &on,
        chance = &then,
        asked = asked,
        date = &date,
        instead = &instead,
        days = HORIZON,
        more = USUAL_READINGS.saturating_sub(measured).max(1)
    ))
}

/// What would have boards ready by the day they are wanted that are not ready by then as they lie.
fn in_time(found: &NextInstallFindings, outlook: &Outlook, words: &Words) -> Option<String> {
    let wanted = outlook.wanted.filter(|wanted| matches!(wanted.can, Can::No | Can::Close))?;
    let before = |remedy: &&Remedy| remedy.ready.is_some_and(|ready| ready.sure <= wanted.on);
    let remedy = outlook.levers.iter().filter(|_| outlook.gate.verdict == Verdict::Wait).find(before)?;
    let lever =
        say!(words, "next-lever", lever = Arg::Id(remedy.lever.key()), units = Arg::units(words.units()));
    let date = day(found, remedy.ready?.sure, words);
    Some(say!(words, "next-in-time", lever = &lever, date = &date))
}

fn because(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Vec<String> {
    let Some(outlook) = &found.outlook else { return vec![] };
    let gate = &outlook.gate;
    let Some(lot) = &outlook.lot else { return vec![window(&found.window, next, words)] };
    let (now, asked) = (chance(gate.now.holds, words), next.chance);
    let (waiting, best) = (chance(gate.waiting, words), chance(gate.best, words));
    let mean = lot.moisture.mean;
    // For a few points of chance nobody waits longer.
    let soon = outlook.ready.filter(|ready| ready.sure <= found.today + SOON);
    let later = soon.map(|ready| day(found, ready.sure, words));
    let asked_is = match gate.verdict {
        Verdict::Hang if later.is_some() => against_asked(gate.now.holds, gate.best, next),
        Verdict::Hang if !next.asks_more_than(gate.now.holds) => {
            against_asked(gate.now.holds, gate.now.holds, next)
        }
        Verdict::Wait => Arg::Id("wait"),
        _ => Arg::Id("told"),
    };
    // Told so that it is more than what is not enough.
    let hung_from = (100.0 * found.window.enough.to_hang).ceil().max((100.0 * gate.now.holds).round() + 1.0);
    let from = words.figures().percent(hung_from, 0);
    let later = later.unwrap_or_default();
    let today = say!(
        words,
        "next-now",
        holds = &now,
        asked = asked,
        kind = asked_is,
        most = &best,
        date = &later,
        from = &from
    );
    let risks = risks(found, next, outlook, words);
    match gate.verdict {
        Verdict::Measure => vec![],
        Verdict::Hang => {
            let mut lines = vec![today];
            lines.extend(outlook.hang.iter().flat_map(|day| hang(found, day, words)));
            if lot.moisture.mean < found.window.best.moisture - Moisture::pct(DRIER) {
                lines.push(say!(words, "next-hang-dry", mean = mean, settled = found.window.best.moisture));
            }
            lines.extend(risks);
            lines
        }
        Verdict::Wait => {
            let mut lines = ready(found, next, outlook, words);
            lines.splice(1..1, outlook.hang.iter().flat_map(|day| hang(found, day, words)));
            lines.push(today);
            lines.extend(risks);
            if gate.dry {
                lines.push(say!(words, "next-too-dry", mean = mean));
            }
            lines
        }
        Verdict::Sort => {
            let (spread, high) = (lot.spread, found.window.range.map(|range| range.high));
            let mut lines = vec![say!(words, "next-mixed", mean = mean, spread = spread)];
            lines.extend(high.map(|high| say!(words, "next-sort", high = high)));
            lines.extend(outlook.promise.map(|told| promise(&told, words)));
            lines.push(say!(words, "next-mixed-chance", holds = &now, waiting = &waiting));
            lines
        }
        Verdict::SendBack => match broken(outlook) {
            Some(broken) => {
                let mut lines = vec![promise(&broken, words), today];
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
        Verdict::ChangePlan if gate.caulk_fails => vec![],
        Verdict::ChangePlan => {
            let mut lines = vec![say!(words, "next-at-best", holds = &now, best = &best, asked = asked)];
            lines.extend(risks);
            lines
        }
        // What doesn't fit is told first.
        Verdict::MeterMore if outlook.surprise.is_some() => vec![today],
        Verdict::MeterMore => {
            let measured = found.sampling.map_or(0, |sampling| sampling.measured);
            let more = USUAL_READINGS.saturating_sub(measured).max(1);
            vec![say!(words, "next-so-few", count = measured, more = more), today]
        }
    }
}

/// So many days boards that may be hung today are told to get better in.
const SOON: i64 = 30;

/// Boards that are drier by this much than the room will make them, points, are said to be dry.
const DRIER: f64 = 1.0;

/// What may become of boards that are hung today, and in which season it would show.
fn risks(found: &NextInstallFindings, next: &NextInstall, outlook: &Outlook, words: &Words) -> Vec<String> {
    /// A chance below this needs no season.
    const SMALL: f64 = 0.03;
    let now = &outlook.gate.now;
    let season = |chance: f64| Arg::Id(if chance < SMALL { "none" } else { "told" });
    let month = |day: i64| words.figures().month_alone(found.date(day));
    let today = usize::try_from(found.today).ok().and_then(|day| outlook.as_it_lies().0.get(day));
    let gap = today.map_or(found.window.best.gap, |day| day.gap);
    vec![
        say!(
            words,
            "next-risk-opens",
            joints = Arg::Id(next.joints.key()),
            // Where a day to hang them is told, its gap is.
            kind = if outlook.hang.is_some() { Arg::Id("told") } else { kind_of_gap(gap) },
            gap = gap,
            rule = found.rule,
            chance = &chance(now.opens, words),
            season = season(now.opens),
            month = &month(found.driest)
        ),
        say!(
            words,
            "next-risk-buckles",
            chance = &chance(now.buckles, words),
            season = season(now.buckles),
            month = &month(found.dampest)
        ),
    ]
}

/// What was promised, and what came.
pub(super) fn promise(promise: &Promise, words: &Words) -> String {
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
