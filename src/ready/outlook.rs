//! Everything that is said of a next install, over the same worlds: window, gate, watch.

use super::boards::{Chances, PlannedBoards};
use super::lot::{Lot, LotReading, reading_variance};
use super::movement::Movement;
use super::stack::{Kept, Piling, Stack, StackFigures};
use super::window::least_gap;
use crate::belief::{Phase, Priors, RoomWorlds, Shelter, StackCourse, WorldBoards, quantile, resample};
use crate::measure::{Estimate, Length, Moisture};
use rand::SeedableRng as _;
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;

/// Days that a stack is followed from the last reading. What nobody published cannot be told for longer.
pub const HORIZON: usize = 120;
/// Worlds that count after the readings.
const WORLDS: usize = 1024;
/// Boards whose best chance is below what is asked for are ready this near it.
const SHORT: f64 = 0.03;
/// Worlds that a day's gap is chosen over: every so many.
const EVERY: usize = 8;
/// A core this much wetter than the shell, points, is more than a meter's scatter.
const DRY_SHELL: f64 = 1.5;
/// Where the random sequences start; any figure would do.
const SEED: u64 = 7_031_986;

/// What is known.
#[derive(Debug, Clone, Copy)]
pub struct Known<'a> {
    /// The boards as their joints will see them.
    pub boards: &'a PlannedBoards<'a>,
    /// Their thickness.
    pub thickness: Length,
    /// How they lie.
    pub stack: Stack,
    /// What was read, in any order; days from the delivery.
    pub readings: &'a [LotReading],
    /// Whether the meter was set to the species.
    pub set_to_species: bool,
    /// Days from the delivery to the day asked about: that of the last reading, or later.
    pub today: i64,
    /// Days from the delivery to the day the boards are wanted.
    pub wanted: Option<i64>,
    /// The gap that will be left, if that is settled; else what is best for the boards as they are.
    pub gap: Option<Length>,
    /// The best chance that these boards have in this room at any moisture.
    pub best: f64,
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

/// What to do with a delivery.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// Nothing was measured yet.
    Measure,
    /// Hang the boards now.
    Hang,
    /// Let them lie.
    Wait,
    /// Send them back: they won't be ready.
    SendBack,
    /// Plan it otherwise: at no moisture do such boards hold in this room with the chance asked for.
    ChangePlan,
}

impl Verdict {
    /// Its key in messages and files.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Measure => "measure",
            Self::Hang => "hang",
            Self::Wait => "wait",
            Self::SendBack => "send_back",
            Self::ChangePlan => "change_plan",
        }
    }
}

/// The day a stack is ready, days from the delivery.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ready {
    /// In one world of ten the boards are ready by this day.
    pub early: i64,
    /// In half of the worlds they are.
    pub likely: i64,
    /// The first day on which the chance asked for is reached, or nearly the best there is.
    pub sure: i64,
}

/// The gate: what to do, with the chance behind each.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gate {
    /// What to do.
    pub verdict: Verdict,
    /// If the boards are hung today.
    pub now: Chances,
    /// The gap to leave then.
    pub gap: Length,
    /// The best chance on a later day, by the day they are wanted if that is known.
    pub waiting: f64,
    /// Whether they will be ready only after the day they are wanted.
    pub late: bool,
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

/// What was promised against what was read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Promise {
    /// The most that was promised.
    pub most: Moisture,
    /// Share of the delivery's boards that are wetter, by all that is known.
    pub wetter: f64,
    /// Chance that more than one board in twenty is.
    pub broken: f64,
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

    fn applies_to(self, stack: Stack) -> bool {
        match self {
            Self::Stickers => stack.piling != Piling::Stickered,
            Self::IntoRoom => stack.kept != Kept::Room,
            Self::Dehumidifier | Self::Heat => stack.piling != Piling::Wrapped && stack.kept == Kept::Room,
        }
    }
}

/// Everything that is said of a delivery.
#[derive(Debug, Clone, PartialEq)]
pub struct Outlook {
    /// The gate.
    pub gate: Gate,
    /// The boards today; `None` before anything was measured.
    pub lot: Option<LotNow>,
    /// Whether a dry shell may hide a wet core.
    pub dry_shell: Option<DryShell>,
    /// The promise, where there is one.
    pub promise: Option<Promise>,
    /// The days from the delivery on.
    pub days: Vec<WatchDay>,
    /// When the stack is ready as it lies; `None` if not within the days followed.
    pub ready: Option<Ready>,
    /// When it is if something is done from today on, for all that can be.
    pub levers: Vec<(Lever, Option<Ready>)>,
    /// Days from the delivery on which to measure next.
    pub next_reading: i64,
}

/// The delivery and its stack in the worlds that count.
struct Stacked<'a> {
    known: &'a Known<'a>,
    /// The chance to come to: what is asked for, or nearly the best there is.
    goal: f64,
    rooms: RoomWorlds,
    lot: Lot,
    movement: Movement,
    /// Standard normal numbers of the piling, the air and the wood's pace.
    pace: Vec<[f64; 3]>,
}

/// What is said of a delivery. `None` where the stack lies in outdoor air that nothing is known of.
pub fn look(known: &Known<'_>) -> Option<Outlook> {
    let stacked = Stacked::weighed(known)?;
    let today = known.today.max(0);
    let at = usize::try_from(today).unwrap_or(0);
    let course = stacked.course(None, at + HORIZON)?;
    let chances: Vec<Chances> = (0..=at + HORIZON).map(|day| stacked.chances(&course, day)).collect();
    let ready = stacked.ready(&course, &chances, at);
    let measured = !known.readings.is_empty();
    let levers: Vec<(Lever, Option<Ready>)> = Lever::ALL
        .into_iter()
        .filter(|lever| measured && lever.applies_to(known.stack))
        .filter_map(|lever| {
            let course = stacked.course(Some(lever), at + HORIZON)?;
            let chances: Vec<Chances> = (0..=at + HORIZON).map(|day| stacked.chances(&course, day)).collect();
            Some((lever, stacked.ready(&course, &chances, at)))
        })
        .collect();
    let gate = Gate { gap: stacked.gap(&course, at), ..gate(known, &chances, ready, &levers, at) };
    let lot = stacked.now(&course, at);
    Some(Outlook {
        gate,
        dry_shell: measured.then(|| stacked.dry_shell(&course, at)),
        promise: known.promised.filter(|_| measured).map(|most| stacked.promise(most)),
        days: stacked.days(&course, &chances),
        next_reading: next_reading(today, ready, gate.verdict),
        lot: measured.then_some(lot),
        ready,
        levers,
    })
}

fn gate(
    known: &Known<'_>,
    chances: &[Chances],
    ready: Option<Ready>,
    levers: &[(Lever, Option<Ready>)],
    today: usize,
) -> Gate {
    let asked = known.boards.asked;
    let now = chances[today];
    let until = known
        .wanted
        .and_then(|day| usize::try_from(day).ok())
        .map_or(chances.len() - 1, |day| day.clamp(today, chances.len() - 1));
    let waiting = chances[today..=until].iter().map(|chance| chance.holds).fold(0.0, f64::max);
    let some_day =
        ready.or_else(|| levers.iter().filter_map(|(_, ready)| *ready).min_by_key(|ready| ready.sure));
    let reached = chances.iter().map(|chance| chance.holds).fold(known.best, f64::max);
    let verdict = match some_day {
        _ if known.readings.is_empty() => Verdict::Measure,
        _ if now.holds >= asked => Verdict::Hang,
        _ if reached < asked => Verdict::ChangePlan,
        Some(_) => Verdict::Wait,
        None => Verdict::SendBack,
    };
    let late = known.wanted.zip(some_day).is_some_and(|(wanted, ready)| ready.sure > wanted);
    Gate { verdict, now, gap: Length::ZERO, waiting, late }
}

/// Halfway to the day, but within a week, and no sooner than two days on.
fn next_reading(today: i64, ready: Option<Ready>, verdict: Verdict) -> i64 {
    match (verdict, ready) {
        (Verdict::Measure, _) => today,
        (_, Some(ready)) => today + ((ready.likely - today) / 2).clamp(2, 7),
        (_, None) => today + 7,
    }
}

impl<'a> Stacked<'a> {
    /// Draws deliveries and stacks to the rooms, and keeps those that the later readings fit.
    fn weighed(known: &'a Known<'a>) -> Option<Self> {
        let count = known.rooms.count();
        let first = known.readings.iter().map(|reading| reading.day).min().unwrap_or(0);
        let of_first: Vec<LotReading> =
            known.readings.iter().filter(|reading| reading.day <= first).copied().collect();
        let lot = Lot::of_readings(
            &of_first,
            known.thickness,
            known.set_to_species,
            known.figures,
            known.priors,
            (count, SEED),
        );
        let mut random = Xoshiro256PlusPlus::seed_from_u64(SEED + 1);
        let pace: Vec<[f64; 3]> =
            (0..count).map(|_| std::array::from_fn(|_| StandardNormal.sample(&mut random))).collect();
        let asked = known.boards.asked;
        let goal = if known.best >= asked { asked } else { known.best - SHORT };
        let all =
            Stacked { known, goal, rooms: known.rooms.clone(), lot, movement: known.movement.clone(), pace };
        let last = known.readings.iter().map(|reading| reading.day).max().unwrap_or(0);
        let chosen: Vec<usize> = if last > first {
            let course = all.course(None, usize::try_from(last).unwrap_or(0))?;
            let logs: Vec<f64> = (0..count).map(|world| all.log_likelihood(&course, world, first)).collect();
            resample(&logs, WORLDS)
        } else {
            (0..count).step_by((count / WORLDS).max(1)).collect()
        };
        Some(Stacked {
            known,
            goal,
            rooms: all.rooms.pick(&chosen),
            lot: all.lot.pick(&chosen),
            movement: Movement {
                lot: chosen.iter().map(|&world| all.movement.lot[world]).collect(),
                extremes: chosen.iter().map(|&world| all.movement.extremes[world]).collect(),
            },
            pace: chosen.iter().map(|&world| all.pace[world]).collect(),
        })
    }

    /// How well a world fits the readings after the first day's.
    fn log_likelihood(&self, course: &StackCourse, world: usize, first: i64) -> f64 {
        let later = self.known.readings.iter().filter(|reading| reading.day > first);
        let one = |reading: &LotReading| {
            let day = usize::try_from(reading.day).unwrap_or(0).min(course.pins.len() - 1);
            let spread = self.spread(course, day, world);
            let sd = spread.powi(2) + reading_variance(reading.pct, self.known.priors);
            let expected = f64::from(course.pins[day][world]) + self.lot.offset[world];
            -0.5 * ((reading.pct - expected).powi(2) / sd + sd.ln())
        };
        later.map(one).sum()
    }

    /// How boards differ after so many days: as they near what the room makes of them, they draw together.
    fn spread(&self, course: &StackCourse, day: usize, world: usize) -> f64 {
        let settled = 0.5 * (self.movement.extremes[world].0 + self.movement.extremes[world].1);
        let (start, now) = (f64::from(course.mean[0][world]), f64::from(course.mean[day][world]));
        let left = ((now - settled).abs() / (start - settled).abs().max(1.0)).clamp(0.4, 1.0);
        self.lot.spread[world] * left
    }

    fn course(&self, lever: Option<Lever>, days: usize) -> Option<StackCourse> {
        let known = self.known;
        let count = self.lot.moisture.len();
        let pins = known.readings.last().map_or(0.25, |reading| reading.pins.to_m() / known.thickness.to_m());
        let phase = |stack: Stack, lever: Option<Lever>, days: usize| Phase {
            shelter: match stack.kept {
                Kept::Room => Shelter::Room,
                Kept::Garage => Shelter::Outdoor,
            },
            warmer: if lever == Some(Lever::Heat) { known.figures.warmer.middle } else { 0.0 },
            kept_below: (lever == Some(Lever::Dehumidifier))
                .then_some(known.figures.dehumidified_to.middle / 100.0),
            transfer: (0..count)
                .map(|world| {
                    let z = [self.pace[world][0], self.pace[world][1]];
                    stack.transfer(known.figures, z, lever == Some(Lever::Dehumidifier))
                })
                .collect(),
            days,
        };
        let before = usize::try_from(known.today.max(0)).unwrap_or(0).min(days);
        let after = match lever {
            Some(Lever::Stickers) => Stack { piling: Piling::Stickered, ..known.stack },
            Some(Lever::IntoRoom) => Stack { piling: Piling::Stickered, kept: Kept::Room },
            _ => known.stack,
        };
        let phases = match lever {
            None => vec![phase(known.stack, None, days)],
            Some(_) => vec![phase(known.stack, None, before), phase(after, lever, days - before)],
        };
        let diffusivity = &known.priors.diffusivity;
        let boards = WorldBoards {
            thickness: known.thickness.max(Length::mm(1.0)),
            density: known.boards.species.density(),
            diffusivity: self
                .pace
                .iter()
                .map(|z| diffusivity.middle * (diffusivity.sd * z[2]).exp())
                .collect(),
            moisture: self.lot.moisture.clone(),
            core: self.lot.core.clone(),
        };
        self.rooms.stack(&boards, &phases, pins)
    }

    fn wet(&self, course: &StackCourse, day: usize, world: usize) -> (f64, f64) {
        (f64::from(course.mean[day][world]), self.spread(course, day, world))
    }

    /// The gap to leave to boards as they are on a day.
    fn gap(&self, course: &StackCourse, day: usize) -> Length {
        self.known.gap.unwrap_or_else(|| {
            let few = Movement {
                lot: self.movement.lot.iter().step_by(EVERY).copied().collect(),
                extremes: self.movement.extremes.iter().step_by(EVERY).copied().collect(),
            };
            least_gap(self.known.boards.asked, |gap| {
                let wet = |world: usize| self.wet(course, day, world * EVERY);
                self.known.boards.chances(&few, gap, self.known.figures, wet).holds
            })
        })
    }

    fn chances(&self, course: &StackCourse, day: usize) -> Chances {
        let wet = |world: usize| self.wet(course, day, world);
        self.known.boards.chances(&self.movement, self.gap(course, day), self.known.figures, wet)
    }

    /// The first day of all worlds together, and of worlds by themselves.
    fn ready(&self, course: &StackCourse, chances: &[Chances], today: usize) -> Option<Ready> {
        let sure = (today..chances.len()).find(|&day| chances[day].holds >= self.goal)?;
        let (boards, figures) = (self.known.boards, self.known.figures);
        let gap = self.gap(course, sure);
        let mut days: Vec<f64> = (0..self.lot.moisture.len())
            .map(|world| {
                let holds = |day: usize| {
                    let wet = self.wet(course, day, world);
                    let (lot, extremes) = (self.movement.lot[world], self.movement.extremes[world]);
                    boards.in_world(wet, lot, extremes, gap, figures).holds >= 0.5
                };
                // Worlds in which they never are lie beyond the day on which the rest are.
                #[expect(clippy::cast_precision_loss, reason = "days")]
                let day = (today..=sure).find(|&day| holds(day)).unwrap_or(sure) as f64;
                day
            })
            .collect();
        #[expect(clippy::cast_possible_truncation, reason = "days")]
        let [early, likely] = [0.1, 0.5].map(|at| quantile(&mut days, at).round() as i64);
        let sure = i64::try_from(sure).unwrap_or(i64::MAX);
        Some(Ready { early, likely, sure })
    }

    fn now(&self, course: &StackCourse, day: usize) -> LotNow {
        let spread = (0..self.lot.moisture.len()).map(|world| self.spread(course, day, world));
        LotNow {
            moisture: estimate(course.mean[day].iter().map(|m| f64::from(*m))),
            spread: estimate(spread).mean,
            shell: estimate(course.shell[day].iter().map(|m| f64::from(*m))).mean,
            core: estimate(course.core[day].iter().map(|m| f64::from(*m))).mean,
            offset: estimate(self.lot.offset.iter().copied()),
        }
    }

    fn dry_shell(&self, course: &StackCourse, day: usize) -> DryShell {
        let deep_enough = self.known.thickness / 4.0;
        let wetter = course.core[day].iter().zip(&course.shell[day]);
        let chance = share(wetter.map(|(core, shell)| f64::from(core - shell) > DRY_SHELL));
        let short = self.known.readings.iter().all(|reading| reading.pins < deep_enough * 0.9);
        DryShell { chance, deep_enough, short_pins: short }
    }

    /// Against what came, not against what it has become since.
    fn promise(&self, most: Moisture) -> Promise {
        let wetter: Vec<f64> = (0..self.lot.moisture.len())
            .map(|world| {
                let over = (self.lot.moisture[world] - most.to_pct()) / self.lot.spread[world];
                super::boards::below(over)
            })
            .collect();
        let broken = share(wetter.iter().map(|share| *share > 0.05));
        #[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
        let mean = wetter.iter().sum::<f64>() / wetter.len().max(1) as f64;
        Promise { most, wetter: mean, broken }
    }

    fn days(&self, course: &StackCourse, chances: &[Chances]) -> Vec<WatchDay> {
        (0..chances.len())
            .map(|day| {
                let mut all: Vec<f64> = course.mean[day].iter().map(|m| f64::from(*m)).collect();
                let [low, middle, high] = [0.05, 0.5, 0.95].map(|at| Moisture::pct(quantile(&mut all, at)));
                #[expect(clippy::cast_possible_wrap, reason = "days")]
                let number = day as i64;
                WatchDay {
                    day: number,
                    moisture: [middle, low, high],
                    shell: estimate(course.shell[day].iter().map(|m| f64::from(*m))).mean,
                    core: estimate(course.core[day].iter().map(|m| f64::from(*m))).mean,
                    gap: self.gap(course, day),
                    chance: chances[day].holds,
                }
            })
            .collect()
    }
}

fn estimate(values: impl Iterator<Item = f64> + Clone) -> Estimate<Moisture> {
    #[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
    let count = values.clone().count().max(1) as f64;
    let mean = values.clone().sum::<f64>() / count;
    let square = values.map(|value| (value - mean).powi(2)).sum::<f64>() / count;
    Estimate { mean: Moisture::pct(mean), sd: Moisture::pct(square.sqrt()) }
}

#[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
fn share(of: impl Iterator<Item = bool>) -> f64 {
    let (mut yes, mut all) = (0_usize, 0_usize);
    for is in of {
        yes += usize::from(is);
        all += 1;
    }
    yes as f64 / all.max(1) as f64
}
