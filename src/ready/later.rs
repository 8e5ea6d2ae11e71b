//! What readings say of a stack, those of the first day and those of later ones.
//!
//! Readings of the first day say nothing of the room: loads are drawn, weighed and put to rooms as they come. Later
//! ones speak of room, piling and pace as well. In each world what they show follows a straight line in the load's
//! moisture and the meter's offset, so these two are learned exactly; the rest is drawn where it fits, round after
//! round, each draw counting by how likely it is over how often it is drawn (population Monte Carlo: Cappé, Guillin,
//! Marin and Robert 2004, from memory).

use rand::{RngExt as _, SeedableRng as _};
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;

use super::boards::below;
use super::known::Known;
use super::lot::{Load, reading_variance};
use super::piled::{Draw, NUMBERS, Piled};
use super::unknowns::Shown;
use crate::belief::{effective, log_sum, resample};
use crate::measure::{Moisture, Span};

/// Loads that are drawn for the first day's readings.
const LOADS: usize = 4096;
/// Stacks that are drawn in a round, and that count in the end.
const DRAWN: usize = 2048;
const WORLDS: usize = 1024;
/// Rounds end when so many stacks count in effect, or after so many of them.
const ENOUGH: f64 = 500.0;
const ROUNDS: usize = 5;
/// Share of the draws that is as expected before any reading: so no draw counts for much more than all others.
const UNTOLD: f64 = 0.2;
/// Draws are a little wider than what they are drawn after.
const WIDER: f64 = 1.3;
/// Odd, so that it runs through all of a power of two.
const STRIDE: usize = 613;
/// Where the random sequence starts; any figure would do.
const SEED: u64 = 7_031_986;

/// Readings of the last day that don't fit what was read before: outside what 99 in 100 stacks would show.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Surprise {
    /// What they average.
    pub average: Moisture,
    /// What they would have averaged, 99 times in 100.
    pub expected: Span<Moisture>,
}

/// Stacks that all count alike, each with its load as well as it is known.
#[derive(Clone)]
pub(super) struct Believed {
    pub(super) draws: Vec<Draw>,
    pub(super) loads: Vec<Load>,
}

/// What all readings say, and what those of the first day said.
pub(super) struct Learned {
    pub(super) now: Believed,
    pub(super) at_first: Believed,
    pub(super) surprise: Option<Surprise>,
}

/// What the readings say. `None` where the stack lies in outdoor air that nothing is known of.
pub(super) fn learned(known: &Known<'_>) -> Option<Learned> {
    let mut random = Xoshiro256PlusPlus::seed_from_u64(SEED);
    let at_first = on_first_day(known, &mut random);
    let first = first_day(known);
    let mut days: Vec<i64> =
        known.readings.iter().map(|reading| reading.day).filter(|day| *day > first).collect();
    days.sort_unstable();
    days.dedup();
    let Some(last) = days.pop() else {
        let now = at_first.thinned(WORLDS);
        return Some(Learned { now, at_first, surprise: None });
    };
    let before = match days.last() {
        Some(&day) => fitted(known, &at_first, day, &mut random)?,
        None => at_first.clone(),
    };
    let surprise = surprise(known, &before, last)?;
    let now = fitted(known, &before, last, &mut random)?.thinned(WORLDS);
    Some(Learned { now, at_first, surprise })
}

fn first_day(known: &Known<'_>) -> i64 {
    known.readings.iter().map(|reading| reading.day).min().unwrap_or(0)
}

fn normals(random: &mut Xoshiro256PlusPlus) -> [f64; NUMBERS] {
    std::array::from_fn(|_| StandardNormal.sample(random))
}

/// The load of a draw, by the first day's readings.
fn load(known: &Known<'_>, draw: &Draw) -> Load {
    let first = first_day(known);
    let own: Vec<_> = known.readings.iter().filter(|reading| reading.day == first).copied().collect();
    let meter =
        if known.set_to_species { &known.priors.meter_offset } else { &known.priors.loose_meter_offset };
    let z = [draw.z[0], draw.z[1]];
    Load::drawn(z, &own, known.thickness, known.figures, (meter, known.priors))
}

/// Stacks that fit the first day's readings, one to each of the room's worlds.
fn on_first_day(known: &Known<'_>, random: &mut Xoshiro256PlusPlus) -> Believed {
    let rooms = known.rooms.count();
    let drawn: Vec<Draw> = (0..LOADS).map(|_| Draw { room: 0, z: normals(random) }).collect();
    let loads: Vec<Load> = drawn.iter().map(|draw| load(known, draw)).collect();
    let logs: Vec<f64> = loads.iter().map(|load| load.known.log_likelihood).collect();
    let chosen = resample(&logs, rooms);
    // Chosen loads stand in the order of their draws: mixed, nothing of them goes with the rooms.
    let mixed: Vec<usize> = (0..rooms).map(|room| chosen[(room * STRIDE) % rooms]).collect();
    let own = |(room, &at): (usize, &usize)| {
        // A load that is chosen twice lies in two stacks.
        let [_, _, pace @ ..] = normals(random);
        let [spread, core, ..] = drawn[at].z;
        Draw { room, z: [spread, core, pace[0], pace[1], pace[2]] }
    };
    let draws = mixed.iter().enumerate().map(own).collect();
    Believed { draws, loads: mixed.iter().map(|&at| loads[at]).collect() }
}

impl Believed {
    fn thinned(&self, to: usize) -> Self {
        let step = (self.draws.len() / to).max(1);
        Self {
            draws: self.draws.iter().step_by(step).copied().collect(),
            loads: self.loads.iter().step_by(step).copied().collect(),
        }
    }

    /// So many of them, in proportion to weights that are given by their logarithms.
    fn chosen(&self, logs: &[f64], count: usize) -> Self {
        let chosen = resample(logs, count);
        Self {
            draws: chosen.iter().map(|&at| self.draws[at]).collect(),
            loads: chosen.iter().map(|&at| self.loads[at]).collect(),
        }
    }
}

/// Stacks that fit all readings up to a day, from those that fit the ones before.
fn fitted(
    known: &Known<'_>,
    before: &Believed,
    day: i64,
    random: &mut Xoshiro256PlusPlus,
) -> Option<Believed> {
    let start = before.thinned(DRAWN);
    let mut found = Believed { loads: told(known, &start.draws, day)?, draws: start.draws };
    let mut logs: Vec<f64> = found
        .loads
        .iter()
        .zip(&start.loads)
        .map(|(now, then)| now.known.log_likelihood - then.known.log_likelihood)
        .collect();
    for _ in 0..ROUNDS {
        let all = log_sum(&logs);
        let weights: Vec<f64> = logs.iter().map(|log| (log - all).exp()).collect();
        if effective(&weights) >= ENOUGH {
            break;
        }
        let plan = Plan::after(&found.draws, &weights, known.rooms.count());
        let draws: Vec<Draw> = (0..DRAWN).map(|_| plan.draw(random)).collect();
        let loads = told(known, &draws, day)?;
        logs = draws
            .iter()
            .zip(&loads)
            .map(|(draw, load)| load.known.log_likelihood - plan.more_often(draw).ln())
            .collect();
        found = Believed { draws, loads };
    }
    Some(found.chosen(&logs, DRAWN))
}

/// The loads of these stacks, by all readings up to a day.
fn told(known: &Known<'_>, draws: &[Draw], day: i64) -> Option<Vec<Load>> {
    let first = first_day(known);
    let mut loads: Vec<Load> = draws.iter().map(|draw| load(known, draw)).collect();
    let showing = Showing::new(known, draws, &loads, day)?;
    let later: Vec<_> =
        known.readings.iter().filter(|reading| reading.day > first && reading.day <= day).collect();
    for (world, load) in loads.iter_mut().enumerate() {
        for reading in &later {
            let (shown, spread) = showing.on(reading.day, world, load.spread);
            let variance = spread * spread + reading_variance(reading.pct, known.priors);
            load.known.learn(shown, reading.pct, variance);
        }
    }
    Some(loads)
}

/// What meters show of stacks, day by day.
struct Showing<'a> {
    piled: Piled<'a>,
    moisture: Vec<f64>,
    as_expected: crate::belief::StackCourse,
    a_point_wetter: crate::belief::StackCourse,
}

impl<'a> Showing<'a> {
    fn new(known: &'a Known<'a>, draws: &[Draw], loads: &[Load], day: i64) -> Option<Self> {
        let piled = Piled::of(known, draws);
        let days = usize::try_from(day).unwrap_or(0);
        let moisture: Vec<f64> = loads.iter().map(|load| load.known.moisture().clamp(4.0, 50.0)).collect();
        let wetter: Vec<f64> = moisture.iter().map(|moisture| moisture + 1.0).collect();
        let core: Vec<f64> = loads.iter().map(|load| load.core).collect();
        let as_expected = piled.course((&moisture, &core), None, days)?;
        let a_point_wetter = piled.course((&wetter, &core), None, days)?;
        Some(Self { piled, moisture, as_expected, a_point_wetter })
    }

    /// What is shown on a day in one world, and how boards differ then whose spread was `spread` when they came.
    fn on(&self, day: i64, world: usize, spread: f64) -> (Shown, f64) {
        let at = usize::try_from(day).unwrap_or(0).min(self.as_expected.pins.len() - 1);
        let base = f64::from(self.as_expected.pins[at][world]);
        let slope = f64::from(self.a_point_wetter.pins[at][world]) - base;
        let spread = spread * self.piled.spread_left(&self.as_expected, at, world);
        (Shown { base, at: self.moisture[world], slope }, spread)
    }
}

/// Where stacks are drawn next: after those that fit, by room and number by number, and some as first expected.
struct Plan {
    /// Of each room's world, the chance of it and of those before it.
    rooms: Vec<f64>,
    middle: [f64; NUMBERS],
    sd: [f64; NUMBERS],
}

impl Plan {
    #[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
    fn after(draws: &[Draw], weights: &[f64], rooms: usize) -> Self {
        let mut chances = vec![UNTOLD / rooms as f64; rooms];
        let (mut middle, mut square) = ([0.0; NUMBERS], [0.0; NUMBERS]);
        for (draw, weight) in draws.iter().zip(weights) {
            chances[draw.room] += (1.0 - UNTOLD) * weight;
            for (number, z) in draw.z.iter().enumerate() {
                middle[number] += weight * z;
                square[number] += weight * z * z;
            }
        }
        /// Where few draws fit, they tell little of how far others may be from them.
        const LEAST: f64 = 0.15;
        let sd = std::array::from_fn(|number| {
            WIDER * (square[number] - middle[number].powi(2)).max(LEAST * LEAST).sqrt()
        });
        let rooms = chances.iter().scan(0.0, |sum, chance| {
            *sum += chance;
            Some(*sum)
        });
        Self { rooms: rooms.collect(), middle, sd }
    }

    fn draw(&self, random: &mut Xoshiro256PlusPlus) -> Draw {
        let at: f64 = random.random();
        let room = self.rooms.partition_point(|sum| *sum < at).min(self.rooms.len() - 1);
        let own = normals(random);
        let untold = random.random::<f64>() < UNTOLD;
        let placed = |number: usize| self.middle[number] + self.sd[number] * own[number];
        Draw { room, z: if untold { own } else { std::array::from_fn(placed) } }
    }

    /// How much more often this is drawn than as first expected.
    #[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
    fn more_often(&self, draw: &Draw) -> f64 {
        let before = if draw.room == 0 { 0.0 } else { self.rooms[draw.room - 1] };
        let room = (self.rooms[draw.room] - before) * self.rooms.len() as f64;
        let log = |number: usize| {
            let (z, sd) = (draw.z[number], self.sd[number]);
            0.5 * (z * z - ((z - self.middle[number]) / sd).powi(2)) - sd.ln()
        };
        let placed = (0..NUMBERS).map(log).sum::<f64>().exp();
        room * (UNTOLD + (1.0 - UNTOLD) * placed)
    }
}

/// Whether the readings of the last day fit those before.
#[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
fn surprise(known: &Known<'_>, before: &Believed, last: i64) -> Option<Option<Surprise>> {
    /// Of stacks like this, so many show less, and so many more.
    const RARE: f64 = 0.005;
    let own: Vec<f64> =
        known.readings.iter().filter(|reading| reading.day == last).map(|reading| reading.pct).collect();
    let average = own.iter().sum::<f64>() / own.len().max(1) as f64;
    let few = before.thinned(WORLDS);
    let showing = Showing::new(known, &few.draws, &few.loads, last)?;
    let foretold = |(world, load): (usize, &Load)| {
        let (shown, spread) = showing.on(last, world, load.spread);
        let (mean, doubt) = load.known.foretells(shown);
        let scatter = spread * spread + reading_variance(mean, known.priors);
        (mean, (doubt + scatter / own.len().max(1) as f64).sqrt())
    };
    let foretold: Vec<(f64, f64)> = few.loads.iter().enumerate().map(foretold).collect();
    let lower = |than: f64| {
        foretold.iter().map(|(mean, sd)| below((than - mean) / sd)).sum::<f64>() / foretold.len() as f64
    };
    let expected = Span {
        low: Moisture::pct(where_reached(RARE, &lower)),
        high: Moisture::pct(where_reached(1.0 - RARE, &lower)),
    };
    /// What is told in tenths of a point must show that it is outside.
    const CLEARLY: Moisture = Moisture::pct(0.1);
    let average = Moisture::pct(average);
    let fits = (expected.low - CLEARLY..=expected.high + CLEARLY).contains(&average);
    Some((!fits).then_some(Surprise { average, expected }))
}

/// Where a share that rises from 0 to 1 over all moistures reaches `at`, per cent.
pub(super) fn where_reached(at: f64, share: &impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (-20.0, 100.0);
    for _ in 0..40 {
        let middle = f64::midpoint(low, high);
        if share(middle) < at { low = middle } else { high = middle }
    }
    f64::midpoint(low, high)
}
