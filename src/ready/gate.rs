//! The gate: what to do with a delivery, and why.

use super::boards::Chances;
use super::stack::{Kept, Piling, Stack};
use crate::measure::{Length, Moisture};

/// What to do with a delivery.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// Nothing was measured yet.
    Measure,
    /// Too few were measured, or what was doesn't fit what was measured before: the boards may well be ready.
    MeterMore,
    /// Hang the boards now.
    Hang,
    /// Let them lie.
    Wait,
    /// Sort them: some are dry and some are wet.
    Sort,
    /// Send them back: they are wetter than was promised, or won't be ready.
    SendBack,
    /// Plan it otherwise: such boards don't reach the chance asked for in this room.
    ChangePlan,
}

impl Verdict {
    /// Its key in messages and files.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Measure => "measure",
            Self::MeterMore => "meter_more",
            Self::Hang => "hang",
            Self::Wait => "wait",
            Self::Sort => "sort",
            Self::SendBack => "send_back",
            Self::ChangePlan => "change_plan",
        }
    }
}

/// The day a stack is ready, days from the delivery.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ready {
    /// The first day with even odds.
    pub even: i64,
    /// The first workday from the day on which the chance is good enough.
    pub sure: i64,
}

impl Ready {
    /// From the chances of the days; `None` where nothing good enough is reached from `today` on. `workday` is the first
    /// workday from a day on.
    pub(super) fn of(
        chances: &[(Length, Chances)],
        (today, enough): (usize, f64),
        workday: impl Fn(i64) -> i64,
    ) -> Option<Self> {
        let first = |least: f64| (today..chances.len()).find(|&day| chances[day].1.holds >= least);
        let day = |day: usize| i64::try_from(day).unwrap_or(i64::MAX);
        let sure = first(enough)?;
        Some(Self { even: day(first(0.5)?), sure: workday(day(sure)) })
    }
}

/// The gate: what to do, with the chance behind each.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gate {
    /// What to do.
    pub verdict: Verdict,
    /// If the boards are hung today.
    pub now: Chances,
    /// The best chance on any day that is followed, as the boards lie.
    pub waiting: f64,
    /// The best chance at all: on any day, with whatever is done to the stack, or at any moisture.
    pub best: f64,
    /// Whether they will be ready only after the day they are wanted.
    pub late: bool,
    /// What the stack needs first.
    pub first: Option<Lever>,
    /// Whether it is that the caulk that is planned can't follow the joints.
    pub caulk_fails: bool,
    /// Whether it is that they are too dry and take up what they lack: hung now they would rather buckle than open.
    pub dry: bool,
}

/// What was promised against what was read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Promise {
    /// The most that was promised.
    pub most: Moisture,
    /// Share of the delivery's boards that are wetter, by all that is known.
    pub wetter: f64,
    /// Chance that more than one board in twenty is.
    pub broken: f64,
    /// Chance that more than one in four is, as in a load that counts as bad.
    pub clearly: f64,
}

/// A promise is broken for good from this chance on that more than one board in four is over it.
const CLEARLY: f64 = 0.95;

impl Promise {
    /// Whether it is clearly broken.
    pub fn is_broken(&self) -> bool {
        self.clearly >= CLEARLY
    }
}

/// Something that can be done to the stack.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lever {
    /// Put it on stickers where it is.
    Stickers,
    /// Bring it into the room, on stickers.
    IntoRoom,
    /// Run a dehumidifier beside it.
    Dehumidifier,
    /// Keep the room warmer.
    Heat,
}

impl Lever {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Stickers, Self::IntoRoom, Self::Dehumidifier, Self::Heat];

    /// Its key in messages and files.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Stickers => "stickers",
            Self::IntoRoom => "into_room",
            Self::Dehumidifier => "dehumidifier",
            Self::Heat => "heat",
        }
    }

    pub(super) fn applies_to(self, stack: Stack) -> bool {
        match self {
            Self::Stickers => stack.piling != Piling::Stickered && stack.kept == Kept::Room,
            Self::IntoRoom => stack.kept != Kept::Room,
            Self::Dehumidifier | Self::Heat => stack.piling != Piling::Wrapped && stack.kept == Kept::Room,
        }
    }

    /// Whether boards have to lie so anyway: in the room, with air between them.
    pub(super) const fn is_due(self) -> bool {
        matches!(self, Self::Stickers | Self::IntoRoom)
    }
}

/// What the verdict follows from.
pub(super) struct Case<'a> {
    /// The chance from which on boards are hung, and the one that a day is waited for.
    pub enough: f64,
    /// Whether no bead can follow the joints that are to be caulked.
    pub caulk_fails: bool,
    /// How many boards were measured.
    pub measured: usize,
    /// Whether the last readings don't fit those before.
    pub surprised: bool,
    /// Chances by day, as the boards lie.
    pub chances: &'a [(Length, Chances)],
    /// The day spoken of.
    pub today: usize,
    /// The day they are wanted.
    pub wanted: Option<usize>,
    /// When they are ready, as they lie and with what can be done.
    pub ready: Option<Ready>,
    /// See `ready`: with the best chance each.
    pub levers: &'a [(Lever, Option<Ready>, f64)],
    /// The best chance at any moisture.
    pub possible: f64,
    /// Standard deviation between boards, and mean, per cent.
    pub spread: f64,
    /// See `spread`.
    pub mean: f64,
    /// The most moisture that holds, per cent.
    pub most: f64,
    /// Whether the boards take up moisture as they lie.
    pub gains: bool,
    /// The promise, where there is one.
    pub promise: Option<Promise>,
}

/// Chances are known no better than this: what comes so near to what is asked is as good.
const AS_GOOD: f64 = 0.02;

/// The chance that is as good as the one asked for.
pub fn good_enough(asked: f64) -> f64 {
    asked - AS_GOOD
}

/// A plan that falls short of what is asked by no more than this is not turned down for it: what it falls short by
/// is told.
const SHORT: f64 = 0.04;
/// What a day is waited for may turn out worse by this much when its readings are in, and the boards are hung all the
/// same: else every reading would put the day off.
const LEEWAY: f64 = 0.04;
/// What is told beforehand of a day's readings holds by this much.
pub(super) const SAFELY: f64 = 0.01;

/// The chances that count for boards which at their best moisture reach `best`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Enough {
    /// What a day is waited for: what is asked, or as near as these boards get to it in this room. In a room that keeps
    /// boards just short of what is asked for weeks, tenths of a point would make the day otherwise.
    pub to_wait_for: f64,
    /// What boards are hung with, once they are there.
    pub to_hang: f64,
}

impl Enough {
    pub(super) fn of(asked: f64, best: f64) -> Self {
        let to_wait_for = (best - 0.25 * SHORT).clamp(asked - SHORT, asked);
        Self { to_wait_for, to_hang: to_wait_for - LEEWAY }
    }

    /// What a stack is waited for that gets to `most`. Where its chance stays nearly level for weeks, a point more is not
    /// worth them; but half of the leeway stays for what the day's readings may say.
    pub(super) fn for_stack(self, most: f64) -> f64 {
        /// So much more chance is not waited for.
        const LEVEL: f64 = 0.015;
        self.to_wait_for.min(most - LEVEL).max(self.to_hang + 0.5 * LEEWAY)
    }
}

/// Fewer boards than this say too little to wait for.
const FEW: usize = 4;
/// Boards of one delivery differ by little more than a per cent: these are two.
const MIXED: f64 = 2.2;
/// Boards that are to be kept have better than even odds to be ready.
const EVEN: f64 = 0.5;

/// What to do.
pub(super) fn gate(case: &Case<'_>) -> Gate {
    let now = case.chances[case.today].1;
    let enough = case.enough;
    let most = |of: &[(Length, Chances)]| of.iter().map(|(_, chance)| chance.holds).fold(0.0, f64::max);
    let waiting = most(&case.chances[case.today..]);
    let best = case.levers.iter().map(|(.., best)| *best).fold(waiting.max(case.possible), f64::max);
    // Stickers in the room are due in any case; the others where nothing else brings the boards there.
    let sooner = |than: Option<Ready>, lever: &(Lever, Option<Ready>, f64)| {
        lever.1.is_some_and(|with| than.is_none_or(|as_is| with.sure < as_is.sure))
    };
    let pick = |due: bool| {
        let fitting = case.levers.iter().filter(|lever| lever.0.is_due() == due && sooner(case.ready, lever));
        fitting.min_by_key(|lever| lever.1.map(|ready| ready.sure)).map(|lever| (lever.0, lever.1))
    };
    let first = pick(true).or_else(|| case.ready.is_none().then(|| pick(false)).flatten());
    let ready = first.map_or(case.ready, |(_, ready)| ready);
    let late = case
        .wanted
        .zip(ready)
        .is_some_and(|(wanted, ready)| usize::try_from(ready.sure).is_ok_and(|sure| sure > wanted));
    let mixed = case.measured >= FEW && case.spread > MIXED;
    let broken = case.promise.is_some_and(|promise| promise.is_broken());
    let verdict = match ready {
        _ if case.measured == 0 => Verdict::Measure,
        // Whatever the boards do, the joints would open.
        _ if case.caulk_fails && !broken => Verdict::ChangePlan,
        _ if now.holds >= enough && case.surprised => Verdict::MeterMore,
        _ if now.holds >= enough => Verdict::Hang,
        // The dry ones of a mixed load need not wait for the wet ones.
        _ if mixed => Verdict::Sort,
        _ if broken => Verdict::SendBack,
        _ if case.measured < FEW && case.mean < case.most && case.possible >= enough => Verdict::MeterMore,
        Some(_) => Verdict::Wait,
        None if best < enough || waiting >= EVEN => Verdict::ChangePlan,
        None => Verdict::SendBack,
    };
    Gate {
        verdict,
        now,
        waiting,
        best,
        late,
        first: first.map(|(lever, _)| lever).filter(|_| verdict == Verdict::Wait),
        caulk_fails: case.caulk_fails && verdict == Verdict::ChangePlan,
        dry: case.gains && now.buckles > now.opens,
    }
}
