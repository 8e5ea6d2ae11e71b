//! What there is to say of a next install, a sentence each.

use super::{Arg, Words, say};
use crate::assess::NextInstallFindings;
use crate::job::Job;
use crate::measure::{Length, Percent};
use crate::ready::{
    Change, Easier, FinishOrder, Gate, HORIZON, Joints, Kept, Lever, NextInstall, Outlook, Piling, Ready,
    Verdict, Window,
};
use crate::surface::Finish;

/// A chance in whole per cent, never quite nothing or certain.
pub fn chance(of: f64) -> Percent {
    Percent::pct((100.0 * of).round().clamp(1.0, 99.0))
}

/// What to do, in a line.
pub fn headline(found: &NextInstallFindings, words: &Words) -> String {
    match &found.outlook {
        Some(outlook) => say!(words, "next-headline", verdict = Arg::Id(outlook.gate.verdict.key())),
        None => say!(words, "next-outdoors-unknown"),
    }
}

/// The verdict in a word or two.
pub fn verdict(of: Verdict, words: &Words) -> String {
    say!(words, "next-verdict", verdict = Arg::Id(of.key()))
}

/// What to hang boards at.
pub fn window(of: &Window, next: &NextInstall, words: &Words) -> String {
    let best = of.best;
    match of.range {
        Some(range) => say!(
            words,
            "next-window",
            low = range.low.moisture,
            high = range.high.moisture,
            best = best.moisture,
            gap = best.gap
        ),
        None => say!(
            words,
            "next-window-none",
            asked = next.chance,
            best = best.moisture,
            gap = best.gap,
            chance = chance(of.chance)
        ),
    }
}

/// The window, how the gap goes with the moisture, what the best is worth, and the rule that is held to.
pub fn room(found: &NextInstallFindings, next: &NextInstall, words: &Words) -> Vec<String> {
    let window = &found.window;
    let mut lines = vec![self::window(window, next, words)];
    if let Some(range) = window.range {
        if range.low.gap != range.high.gap {
            let (low, high) = (range.low, range.high);
            lines.push(say!(
                words,
                "next-window-gaps",
                low = low.moisture,
                low_gap = low.gap,
                high = high.moisture,
                high_gap = high.gap
            ));
        }
        let best =
            say!(words, "next-window-best", best = window.best.moisture, chance = chance(window.chance));
        lines.push(best);
    }
    lines.push(say!(words, "next-rule", rule = found.rule));
    lines
}

/// Whether to caulk, when to paint, and what would make it easier.
pub fn boards(found: &NextInstallFindings, job: &Job, sealant: &str, words: &Words) -> Vec<String> {
    let Some(next) = &job.next_install else { return vec![] };
    let mut lines = Vec::new();
    if let Some(caulking) = &found.caulking {
        let (moves, needs, sealant) = (caulking.moves, caulking.needs, Arg::Called(sealant));
        lines.push(match caulking.possible {
            true => say!(words, "next-caulk-yes", moves = moves, needs = needs, sealant = sealant),
            false => say!(words, "next-caulk-no", moves = moves, needs = needs, sealant = sealant),
        });
        if next.joints == Joints::Sealed && !caulking.possible {
            lines.push(say!(words, "next-caulk-hides", chance = chance(found.otherwise.chance)));
        }
    }
    lines.push(match next.finished {
        FinishOrder::Before => say!(words, "next-finished-before"),
        FinishOrder::After => say!(words, "next-finished-after"),
    });
    lines
}

/// What makes it easier, a line each.
pub fn easier(found: &NextInstallFindings, words: &Words) -> Vec<String> {
    let wanted = found.window.chance < EASY;
    if found.easier.is_empty() {
        return if wanted { vec![say!(words, "next-easier-none")] } else { vec![] };
    }
    found.easier.iter().map(|easier| change(easier, words)).collect()
}

/// Above this chance nothing needs to be easier.
const EASY: f64 = 0.95;

fn change(easier: &Easier, words: &Words) -> String {
    let (change, width, name) = match easier.change {
        Change::Width(width) => ("width", width, String::new()),
        Change::Finish(Finish::OilFace) => ("finish_oil", Length::ZERO, String::new()),
        Change::Finish(_) => ("finish", Length::ZERO, String::new()),
        Change::Fixing(fixing) => ("fixing", Length::ZERO, super::Say::say(&fixing, words)),
    };
    let chance = chance(easier.window.chance);
    say!(words, "next-easier", change = Arg::Id(change), width = width, name = &name, chance = chance)
}

/// The chances behind the verdict.
pub fn chances(gate: &Gate, next: &NextInstall, rule: Length, words: &Words) -> Vec<String> {
    let mut lines = vec![say!(words, "next-now", holds = chance(gate.now.holds), asked = next.chance)];
    let (opens, buckles) = (chance(gate.now.opens), chance(gate.now.buckles));
    lines.push(say!(words, "next-risks", rule = rule, opens = opens, buckles = buckles));
    match gate.verdict {
        Verdict::Wait => lines.push(say!(words, "next-waiting", chance = chance(gate.waiting))),
        Verdict::SendBack => {
            lines.push(say!(words, "next-waiting", chance = chance(gate.waiting)));
            lines.push(say!(words, "next-send-back", chance = chance(1.0 - gate.waiting)));
        }
        Verdict::Hang => lines.push(say!(words, "next-leave", gap = gate.gap)),
        Verdict::Measure | Verdict::ChangePlan => {}
    }
    lines
}

/// What the readings say of the boards.
pub fn lot(outlook: &Outlook, next: &NextInstall, words: &Words) -> Vec<String> {
    let Some(lot) = &outlook.lot else { return vec![] };
    let mut lines = vec![say!(
        words,
        "next-lot",
        moisture = lot.moisture.mean,
        sd = lot.moisture.sd,
        spread = lot.spread
    )];
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
    if let Some(promise) = outlook.promise {
        let (most, wetter, broken) = (promise.most, chance(promise.wetter), chance(promise.broken));
        lines.push(match promise.broken > 0.5 {
            true => say!(words, "next-promise-broken", most = most, wetter = wetter, broken = broken),
            false => say!(words, "next-promise-kept", most = most, wetter = wetter),
        });
    }
    lines
}

/// How many boards to meter, and what it is worth.
pub fn sampling(found: &NextInstallFindings, words: &Words) -> Vec<String> {
    let Some(sampling) = &found.sampling else { return vec![] };
    let missed = chance(sampling.missed);
    let first = match sampling.measured {
        0 => say!(words, "next-sampling-first", count = sampling.of, missed = missed),
        _ => say!(words, "next-sampling", count = sampling.measured, missed = missed),
    };
    let plan = &sampling.plan;
    let agreed = say!(
        words,
        "next-sampling-plan",
        boards = plan.boards,
        may_fail = plan.may_fail,
        turned_away = chance(plan.turned_away),
        let_in = chance(plan.let_in)
    );
    vec![first, agreed]
}

/// When the stack is ready.
pub fn ready(found: &NextInstallFindings, outlook: &Outlook, words: &Words) -> Vec<String> {
    let mut lines = vec![match outlook.ready {
        Some(Ready { likely, sure, .. }) if likely <= found.today => {
            say!(words, "next-ready-even", sure = found.date(sure))
        }
        Some(Ready { early, likely, sure }) => {
            let [early, likely, sure] = [early, likely, sure].map(|day| found.date(day));
            say!(words, "next-ready", early = early, likely = likely, sure = sure)
        }
        None => say!(words, "next-not-ready", days = HORIZON),
    }];
    if outlook.gate.late {
        lines.push(say!(words, "next-late"));
    }
    lines
}

/// What each thing that can be done brings: its name, and when the boards are ready then.
pub fn levers(found: &NextInstallFindings, outlook: &Outlook, words: &Words) -> Vec<(String, String)> {
    let one = |(lever, ready): &(Lever, Option<Ready>)| {
        let name = say!(words, "next-lever", lever = Arg::Id(lever.key()));
        let value = match (ready, outlook.ready) {
            (None, _) => say!(words, "next-lever-never", days = HORIZON),
            (Some(ready), Some(now)) => {
                let sooner = u64::try_from(now.sure - ready.sure).unwrap_or(0);
                say!(words, "next-lever-ready", days = sooner, date = found.date(ready.sure))
            }
            (Some(ready), None) => say!(words, "next-lever-first", date = found.date(ready.sure)),
        };
        (name, value)
    };
    outlook.levers.iter().map(one).collect()
}

/// When to measure again.
pub fn next_reading(found: &NextInstallFindings, outlook: &Outlook, words: &Words) -> String {
    say!(words, "next-reading", date = found.date(outlook.next_reading))
}

/// Everything, a line each: as the command line prints it.
pub fn lines(found: &NextInstallFindings, job: &Job, sealant: &str, words: &Words) -> Vec<String> {
    let Some(next) = &job.next_install else { return vec![] };
    let mut lines = vec![headline(found, words)];
    if let Some(outlook) = found.outlook.as_ref().filter(|outlook| outlook.gate.verdict != Verdict::Measure) {
        lines.extend(chances(&outlook.gate, next, found.rule, words));
        lines.extend(lot(outlook, next, words));
    }
    lines.extend(room(found, next, words));
    lines.extend(boards(found, job, sealant, words));
    lines.extend(easier(found, words));
    lines.extend(sampling(found, words));
    if let Some(outlook) = &found.outlook {
        if matches!(outlook.gate.verdict, Verdict::Wait | Verdict::SendBack) {
            lines.extend(ready(found, outlook, words));
            let levers = levers(found, outlook, words);
            lines.extend(levers.into_iter().map(|(name, value)| format!("{name}: {value}")));
            lines.push(next_reading(found, outlook, words));
        }
        lines.push(say!(words, "next-known"));
    }
    lines
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

impl super::Say for FinishOrder {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        say!(words, "next-finish-order", order = Arg::Id(self.key()))
    }
}
