//! Everything that is said of a delivery, over the same worlds: gate and watch.

use rayon::prelude::*;

use super::boards::Chances;
use super::gate::{Case, Enough, Gate, Lever, Promise, Ready, Verdict, gate};
use super::known::{DryShell, HangDay, Known, LastRead, LotNow, WatchDay};
use super::later::Surprise;
use super::stacked::{Stacked, gains};
use super::wanted::Wanted;
use crate::belief::StackCourse;
use crate::measure::Length;

/// Days that a stack is followed from the last reading. What nobody published cannot be told for longer.
pub const HORIZON: usize = 120;

/// Something that can be done to a stack from today on, and what comes of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Remedy {
    /// What is done.
    pub lever: Lever,
    /// When the stack is ready then; `None` if not within the days followed.
    pub ready: Option<Ready>,
}

/// Everything that is said of a delivery.
#[derive(Debug, Clone, PartialEq)]
pub struct Outlook {
    /// The gate.
    pub gate: Gate,
    /// Readings of the last day that don't fit those before.
    pub surprise: Option<Surprise>,
    /// The boards today; `None` before anything was measured.
    pub lot: Option<LotNow>,
    /// Whether a dry shell may hide a wet core.
    pub dry_shell: Option<DryShell>,
    /// The promise, where there is one.
    pub promise: Option<Promise>,
    /// The days from the delivery on, with what is to be done first; as the stack lies where that is nothing.
    pub days: Vec<WatchDay>,
    /// When the stack is ready, likewise; `None` if not within the days followed.
    pub ready: Option<Ready>,
    /// Where something is to be done first: the days and when the stack is ready if it is left as it lies.
    pub untouched: Option<(Vec<WatchDay>, Option<Ready>)>,
    /// What the meter showed on the last day it was used; `None` before anything was measured.
    pub read: Option<LastRead>,
    /// Whether they can be hung on the day they are wanted, if one is named.
    pub wanted: Option<Wanted>,
    /// How to hang the boards: today, or on the day they are ready; `None` where neither is.
    pub hang: Option<HangDay>,
    /// When it is if something is done from today on, for all that can be.
    pub levers: Vec<Remedy>,
    /// Days from the delivery on which to measure next.
    pub next_reading: i64,
}

impl Outlook {
    /// The days, and when the stack is ready, if it is left as it lies.
    pub fn as_it_lies(&self) -> (&[WatchDay], Option<Ready>) {
        self.untouched.as_ref().map_or((&self.days, self.ready), |(days, ready)| (days, *ready))
    }
}

/// A stack through the days it is followed.
struct Followed {
    course: StackCourse,
    /// By day the gap to leave, and the chances with it.
    chances: Vec<(Length, Chances)>,
    ready: Option<Ready>,
}

impl Followed {
    fn new(stacked: &Stacked<'_>, lever: Option<Lever>, (today, enough): (usize, Enough)) -> Option<Self> {
        let course = stacked.course(lever, today + HORIZON)?;
        let days = (0..=today + HORIZON).into_par_iter();
        let chances: Vec<(Length, Chances)> = days.map(|day| stacked.chances(&course, day)).collect();
        let most = chances[today..].iter().map(|(_, chance)| chance.holds).fold(0.0, f64::max);
        let ready = Ready::of(&chances, (today, enough.for_stack(most)), |day| stacked.workday(day));
        Some(Self { course, chances, ready })
    }

    fn best(&self, today: usize) -> f64 {
        self.chances[today..].iter().map(|(_, chance)| chance.holds).fold(0.0, f64::max)
    }
}

/// What is said of a delivery. `None` where the stack lies in outdoor air that nothing is known of.
pub fn look(known: &Known<'_>) -> Option<Outlook> {
    let stacked = Stacked::weighed(known)?;
    let today = known.today.max(0);
    let at = usize::try_from(today).unwrap_or(0);
    let enough = known.window.enough;
    let as_is = Followed::new(&stacked, None, (at, enough))?;
    let measured = !known.readings.is_empty();
    let with: Vec<(Lever, Followed)> = Lever::ALL
        .into_iter()
        .filter(|lever| measured && lever.applies_to(known.stack_on(today)))
        .filter_map(|lever| Some((lever, Followed::new(&stacked, Some(lever), (at, enough))?)))
        .collect();
    let lot = stacked.now(&as_is.course, at);
    let promise = known.promised.filter(|_| measured).map(|most| stacked.promise(most));
    let levers: Vec<(Lever, Option<Ready>, f64)> =
        with.iter().map(|(lever, followed)| (*lever, followed.ready, followed.best(at))).collect();
    let window = known.window;
    let gate = gate(&Case {
        enough: enough.to_hang,
        caulk_fails: known.caulk_fails,
        measured: known.readings.len(),
        surprised: stacked.surprise.is_some(),
        chances: &as_is.chances,
        today: at,
        wanted: known.wanted.and_then(|day| usize::try_from(day).ok()),
        ready: as_is.ready,
        levers: &levers,
        possible: window.chance,
        spread: lot.spread.to_pct(),
        mean: lot.moisture.mean.to_pct(),
        most: window.range.map_or(window.best.moisture, |range| range.high).to_pct(),
        gains: gains(&as_is.course, at),
        promise,
    });
    let shown = with.iter().find(|(lever, _)| gate.first == Some(*lever)).map_or(&as_is, |(_, with)| with);
    let hang_day = match gate.verdict {
        Verdict::Hang => Some(today),
        Verdict::Wait => shown.ready.map(|ready| ready.sure),
        _ => None,
    };
    let hang = hang_day.map(|day| {
        let (gap, chances) = shown.chances[usize::try_from(day).unwrap_or(0).min(shown.chances.len() - 1)];
        stacked.hang_day(&shown.course, (gap, chances.holds), day)
    });
    let wanted = known.wanted.map(|day| {
        let on = usize::try_from(day).ok().and_then(|day| shown.chances.get(day));
        let chance = on.map(|(_, chances)| chances.holds);
        Wanted::on(day, today, (&gate, enough.to_hang), chance, hang.as_ref())
    });
    Some(Outlook {
        gate,
        surprise: stacked.surprise,
        dry_shell: measured.then(|| stacked.dry_shell(&as_is.course, at)),
        promise,
        days: stacked.days(&shown.course, &shown.chances),
        untouched: gate.first.map(|_| (stacked.days(&as_is.course, &as_is.chances), as_is.ready)),
        read: LastRead::of(known),
        wanted,
        hang,
        next_reading: next_reading(known, shown.ready, gate.verdict),
        lot: measured.then_some(lot),
        ready: shown.ready,
        levers: levers.into_iter().map(|(lever, ready, _)| Remedy { lever, ready }).collect(),
    })
}

/// The day boards that were measured are hung on and the chance then, once they lie as they have to: today, or the
/// workday they are ready. `None` if not within the days followed, or where the stack's air is not known.
pub fn hung_on(known: &Known<'_>) -> Option<(i64, f64)> {
    let stacked = Stacked::weighed(known)?;
    let (today, enough) = (known.today.max(0), known.window.enough);
    let at = usize::try_from(today).ok()?;
    let lies = known.stack_on(today);
    let due = Lever::ALL.into_iter().find(|lever| lever.is_due() && lever.applies_to(lies));
    let followed = Followed::new(&stacked, due, (at, enough))?;
    let chance = |day: i64| {
        let day = usize::try_from(day).unwrap_or(0).min(followed.chances.len() - 1);
        followed.chances[day].1.holds
    };
    if chance(today) >= enough.to_hang {
        return Some((today, chance(today)));
    }
    let day = followed.ready?.sure;
    Some((day, chance(day)))
}

/// Halfway to the day they are ready, but within a week, and no sooner than two days on; by that day at the latest.
fn next_reading(known: &Known<'_>, ready: Option<Ready>, verdict: Verdict) -> i64 {
    /// A reading so close before the day they are ready is put off to that day.
    const CLOSE: i64 = 2;
    let today = known.today.max(0);
    match (verdict, ready) {
        (Verdict::Measure | Verdict::MeterMore, _) => today,
        (_, Some(ready)) => {
            let hang = ready.sure.max(today);
            let next = known.workday(today + ((ready.sure - today) / 2).clamp(2, 7));
            if next + CLOSE >= hang { hang } else { next }
        }
        (_, None) => known.workday(today + 7),
    }
}
