//! The worlds that count, run on from the last reading.
//!
//! A few hundred worlds are taken in proportion to their weights (systematic resampling; Kitagawa 1996,
//! from memory), each with a lot's shrinkage and an account of its own, so that every one of them counts
//! alike from here on. Each gets weather of its own for the years to come.

use rand::SeedableRng as _;
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;
use rayon::prelude::*;

use super::air::{SPELL, single};
use super::ensemble::{AirLanes, Boards, LANES, Lanes, run};
use super::evidence::chosen;
use super::weigh::{ACCOUNTS, Counts, Prepared, Scale};
use super::world::{Maker, Worlds};

/// Worlds that are run on.
pub(super) const PARTICLES: usize = 512;

/// One world that counts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Particle {
    /// Its index among the worlds.
    pub(super) world: usize,
    /// How much its lot of boards shrinks against its species.
    pub lot: f64,
    /// Index of its account.
    pub(super) account: usize,
}

/// Chooses the worlds that count.
///
/// Those of right boards come before those of wet ones: drawn in turn, every sixth world would be of one kind.
#[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
pub(super) fn choose(
    scale: &Scale<'_>,
    worlds: &[Prepared],
    weights: &[f64],
    is_wet: impl Fn(usize) -> bool,
) -> Vec<Particle> {
    let all: f64 = weights.iter().sum();
    let step = all / PARTICLES as f64;
    let mut taken = Vec::with_capacity(PARTICLES);
    let mut sum = 0.0;
    let (wet, right): (Vec<usize>, Vec<usize>) = (0..weights.len()).partition(|world| is_wet(*world));
    for world in right.into_iter().chain(wet) {
        sum += weights[world];
        while taken.len() < PARTICLES && (taken.len() as f64 + 0.5) * step < sum {
            taken.push(world);
        }
    }
    while taken.len() < PARTICLES {
        taken.push(taken.last().copied().unwrap_or(0));
    }
    let golden = |at: usize| (0.5 + at as f64 * 0.618_033_988_749_895).fract();
    taken
        .par_iter()
        .enumerate()
        .map(|(at, &world)| {
            let by_lot = scale.by_lot(&worlds[world], Counts::ALL);
            let place = chosen(by_lot.as_flattened(), golden(at));
            Particle { world, lot: scale.lots[place / ACCOUNTS].0, account: place % ACCOUNTS }
        })
        .collect()
}

/// The moisture of one build-up in the worlds that count, per cent.
#[derive(Debug, Clone, PartialEq)]
pub struct Course {
    /// Days from the visit that are known; at first every few days, then every day.
    pub days: Vec<i64>,
    /// For each of them the moisture in every world that counts.
    pub moisture: Vec<Vec<f32>>,
    /// Moisture at install in every world that counts.
    pub installed: Vec<f64>,
}

impl Course {
    /// Index of the last known day that is not after `day`.
    pub fn index(&self, day: i64) -> usize {
        self.days.partition_point(|known| *known <= day).saturating_sub(1)
    }

    /// Mean moisture in per cent over the worlds, at the day of this index.
    #[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
    pub fn mean(&self, index: usize) -> f64 {
        let own = &self.moisture[index];
        own.iter().map(|m| f64::from(*m)).sum::<f64>() / own.len() as f64
    }
}

/// Runs the worlds that count on until `horizon` days after the visit. Gives the courses of the
/// build-ups, and the room's air of the particles by group.
pub(super) fn run_on(
    maker: &Maker<'_>,
    worlds: &Worlds,
    particles: &[Particle],
    horizon: i64,
    seed: u64,
) -> (Vec<Course>, Vec<AirLanes>) {
    let air = air(worlds, particles, horizon, seed);
    let steps = maker.steps_ahead(horizon);
    let courses = worlds
        .build_ups
        .iter()
        .map(|followed| {
            let mut boards: Vec<Boards> = particles
                .chunks(LANES)
                .map(|group| {
                    let mut own = followed.boards[group[0].world / LANES].clone();
                    for (lane, particle) in group.iter().enumerate() {
                        let from = &followed.boards[particle.world / LANES];
                        from.copy_lane(particle.world % LANES, &mut own, lane);
                    }
                    own
                })
                .collect();
            let ahead = run(&mut boards, &air, &steps);
            let mut days = worlds.days.clone();
            let mut moisture: Vec<Vec<f32>> = (0..days.len())
                .map(|day| particles.iter().map(|p| single(followed.at(p.world, day))).collect())
                .collect();
            for (step, day) in (maker.span.last + 1..).take(steps.len()).enumerate() {
                days.push(day);
                moisture.push(
                    (0..particles.len()).map(|at| 100.0 * ahead[at / LANES][step][at % LANES]).collect(),
                );
            }
            let installed = particles.iter().map(|p| followed.installed[p.world]).collect();
            Course { days, moisture, installed }
        })
        .collect();
    (courses, air)
}

/// The air of the worlds that count, with spells to come.
fn air(worlds: &Worlds, particles: &[Particle], horizon: i64, seed: u64) -> Vec<AirLanes> {
    let mut random = Xoshiro256PlusPlus::seed_from_u64(seed);
    let more = usize::try_from(horizon).unwrap_or(0) / SPELL + 2;
    particles
        .chunks(LANES)
        .map(|group| {
            let of = |value: &dyn Fn(&AirLanes) -> Lanes| -> Lanes {
                std::array::from_fn(|lane| {
                    let world = group.get(lane).unwrap_or(&group[0]).world;
                    value(&worlds.air[world / LANES])[world % LANES]
                })
            };
            let known = worlds.air[0].spells.len();
            let mut spells: Vec<Lanes> = (0..known).map(|at| of(&|air| air.spells[at])).collect();
            for _ in 0..more {
                let mut fresh = || -> f64 { StandardNormal.sample(&mut random) };
                spells.push(std::array::from_fn(|_| single(fresh())));
            }
            AirLanes {
                shifts: std::array::from_fn(|at| of(&|air| air.shifts[at])),
                limit: of(&|air| air.limit),
                spells,
            }
        })
        .collect()
}
