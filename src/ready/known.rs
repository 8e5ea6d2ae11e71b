//! What is known of a delivery, and what is said of its boards and its days.

use statrs::statistics::Statistics as _;

use super::boards::PlannedBoards;
use super::lot::LotReading;
use super::movement::Movement;
use super::stack::{Piling, Stack, StackFigures};
use super::window::Window;
use crate::belief::{Priors, RoomWorlds};
use crate::measure::{Estimate, Length, Moisture, Span};

/// What is known.
#[derive(Debug, Clone, Copy)]
pub struct Known<'a> {
    /// The boards as their joints will see them.
    pub boards: &'a PlannedBoards<'a>,
    /// Their thickness.
    pub thickness: Length,
    /// How they lie.
    pub stack: Stack,
    /// Days from the delivery to the day they are put on stickers: before it they lie as `stack` says, or wrapped where
    /// that is on stickers.
    pub opened: Option<i64>,
    /// What was read, in any order; days from the delivery.
    pub readings: &'a [LotReading],
    /// Whether the meter was set to the species.
    pub set_to_species: bool,
    /// Days from the delivery to the day asked about: that of the last reading, or later.
    pub today: i64,
    /// Days from the delivery to the day the boards are wanted.
    pub wanted: Option<i64>,
    /// Whether the crew works on the first day and on each of the six after it; so it goes on by weeks.
    pub works: [bool; 7],
    /// Whether the joints are to be caulked and no bead can follow them.
    pub caulk_fails: bool,
    /// The gap that will be left, if that is settled; else what is best for the boards as they are.
    pub gap: Option<Length>,
    /// What these boards can be hung at in this room.
    pub window: &'a Window,
    /// The most moisture that stamp or note promised.
    pub promised: Option<Moisture>,
    /// The room, days from the delivery.
    pub rooms: &'a RoomWorlds,
    /// What the room does to boards, for the same worlds.
    pub movement: &'a Movement,
    /// What is expected of stacks.
    pub figures: &'a StackFigures,
    /// What is expected of meters and wood.
    pub priors: &'a Priors,
}

impl Known<'_> {
    /// How they lie on a day.
    pub(super) fn stack_on(&self, day: i64) -> Stack {
        let Some(opened) = self.opened else { return self.stack };
        let piling = match self.stack.piling {
            _ if day >= opened => Piling::Stickered,
            Piling::Solid => Piling::Solid,
            Piling::Wrapped | Piling::Stickered => Piling::Wrapped,
        };
        Stack { piling, ..self.stack }
    }

    /// The first day from `day` on which the crew works; on the day that was named it does.
    pub(super) fn workday(&self, day: i64) -> i64 {
        let works = |day: &i64| {
            self.wanted == Some(*day) || usize::try_from(day.rem_euclid(7)).is_ok_and(|at| self.works[at])
        };
        (day..day + 7).find(works).unwrap_or(day)
    }
}

/// Boards of the stack today.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LotNow {
    /// Mean moisture, and how well it is known.
    pub moisture: Estimate<Moisture>,
    /// Standard deviation between boards.
    pub spread: Moisture,
    /// Outer fifths and middle fifth.
    pub shell: Moisture,
    /// See `shell`.
    pub core: Moisture,
    /// The meter's offset, and how well it is known.
    pub offset: Estimate<Moisture>,
}

/// The readings of the last day, put right for the wood's temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LastRead {
    /// Days from the delivery.
    pub day: i64,
    /// How many there are.
    pub count: usize,
    /// What they average.
    pub average: Moisture,
}

impl LastRead {
    /// Of what is known; `None` before anything was measured.
    pub(super) fn of(known: &Known<'_>) -> Option<Self> {
        let day = known.readings.iter().map(|reading| reading.day).max()?;
        let own: Vec<f64> =
            known.readings.iter().filter(|reading| reading.day == day).map(|reading| reading.pct).collect();
        Some(Self { day, count: own.len(), average: Moisture::pct(own.mean()) })
    }
}

/// A shell that is drier than the core under it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DryShell {
    /// Of the worlds, how many have it.
    pub chance: f64,
    /// How deep pins must go to read the mean: a quarter of the thickness.
    pub deep_enough: Length,
    /// Whether the pins that were used don't.
    pub short_pins: bool,
}

/// A day of the watch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WatchDay {
    /// Days from the delivery.
    pub day: i64,
    /// Mean moisture: in the middle, and where it lies nine times in ten.
    pub moisture: [Moisture; 3],
    /// Outer fifths and middle fifth.
    pub shell: Moisture,
    /// See `shell`.
    pub core: Moisture,
    /// The gap to leave on that day.
    pub gap: Length,
    /// The chance of an install then.
    pub chance: f64,
}

/// Boards that are measured where nobody says how many: enough for a mean within a per cent.
pub const USUAL_READINGS: u32 = 8;

/// How boards are to be hung on a day, by what [`USUAL_READINGS`] boards metered then average: just what the verdict
/// would be with those readings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HangDay {
    /// Days from the delivery.
    pub day: i64,
    /// What the boards metered then are expected to average.
    pub moisture: Moisture,
    /// What they may average, so that boards hold with a chance as good as the one asked for.
    pub range: Span<Moisture>,
    /// The gap to leave at each joint if they average what is expected.
    pub gap: Length,
    /// The gap to leave at averages evenly spread from the low end of the range to its high end.
    pub gaps: [Length; GAPS],
    /// The chance then, whatever they turn out to average.
    pub chance: f64,
}

/// Averages for which a gap is told.
const GAPS: usize = 17;

impl HangDay {
    /// Averages evenly spread over a range, from its low end to its high end: one for each gap.
    #[expect(clippy::cast_precision_loss, reason = "a handful of averages")]
    pub(super) fn averages(range: Span<Moisture>) -> [Moisture; GAPS] {
        std::array::from_fn(|at| {
            let share = at as f64 / (GAPS - 1) as f64;
            Moisture::pct(range.low.to_pct() + (range.high - range.low).to_pct() * share)
        })
    }

    /// The gap to leave for each of some averages, from the low end of the range to its high end.
    pub fn by_average(&self) -> impl Iterator<Item = (Moisture, Length)> {
        Self::averages(self.range).into_iter().zip(self.gaps)
    }
}
