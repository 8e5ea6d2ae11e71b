//! Worlds of a room whose boards are not up yet.
//!
//! The same room, drawn and weighed as for boards that hang; but the boards are still lying in a stack, and
//! what they do there and later on the wall is asked of every world. All worlds count alike: those that the
//! room's readings speak against have been left out in proportion (systematic resampling).

use rayon::prelude::*;

use super::RoomEvidence;
use super::air::{ROOM, RoomAir, SPELL, single};
use super::draws::Draws;
use super::ensemble::{AirLanes, Boards, LANES, Lanes, StepAir, run};
use super::evidence::log_sum;
use super::priors::Priors;
use super::room_weight::{hygrometer_term, logger_term};
use crate::air::{Air, DAYS, IndoorAir, LoggedAir, Station};
use crate::measure::Length;

/// Seconds in half a day, the step in a stack, and in a day, the step of boards that hang.
const HALF_DAY: f64 = 43_200.0;
const DAY: f64 = 86_400.0;

/// What is known of a room, days counted from a first day.
#[derive(Debug, Clone, Copy)]
pub struct RoomKnown<'a> {
    /// What the job says of its air.
    pub air: &'a IndoorAir,
    /// What a logger saw.
    pub logged: Option<&'a LoggedAir>,
    /// Places with their typical year.
    pub stations: &'a [Station],
    /// The first day's day of the year.
    pub start: i64,
    /// Hygrometer readings.
    pub readings: &'a [RoomEvidence],
    /// Days that can be asked for, from the first.
    pub horizon: usize,
}

/// The driest and the wettest that boards come to.
#[derive(Debug, Clone, PartialEq)]
pub struct Extremes {
    /// Per cent, by world.
    pub by_world: Vec<(f64, f64)>,
    /// Days to the driest and to the wettest of the last year, of the mean over all worlds.
    pub seasons: (i64, i64),
}

/// Days to the driest and the wettest of the last year of boards that were followed by groups of worlds.
fn seasons(course: &[Vec<Lanes>]) -> (i64, i64) {
    let days = course.first().map_or(0, Vec::len);
    let sum = |day: usize| course.iter().flat_map(|group| group[day]).sum::<f32>();
    let year: Vec<(f32, usize)> = (days.saturating_sub(DAYS)..days).map(|day| (sum(day), day)).collect();
    let day = |found: Option<&(f32, usize)>| found.map_or(0, |(_, day)| i64::try_from(*day).unwrap_or(0));
    let by = |a: &&(f32, usize), b: &&(f32, usize)| a.0.total_cmp(&b.0);
    (day(year.iter().min_by(by)), day(year.iter().max_by(by)))
}

/// Where boards lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shelter {
    /// In the room.
    Room,
    /// Under a roof in outdoor air, as in a garage.
    Outdoor,
}

/// Days in which nothing is changed about a stack.
#[derive(Debug, Clone, PartialEq)]
pub struct Phase {
    /// Where it lies.
    pub shelter: Shelter,
    /// How much warmer than usual it is kept, °C.
    pub warmer: f64,
    /// Relative humidity that a dehumidifier keeps it below, 0 to 1.
    pub kept_below: Option<f64>,
    /// Transfer at both faces in every world, kg/(s·m²·Pa).
    pub transfer: Vec<f64>,
    /// How many days.
    pub days: usize,
}

/// Boards of one kind, as they are on the first day in every world.
#[derive(Debug, Clone, PartialEq)]
pub struct WorldBoards {
    /// Thickness; above zero.
    pub thickness: Length,
    /// Oven-dry density, kg/m³; above zero.
    pub density: f64,
    /// Factor on the diffusivity.
    pub diffusivity: Vec<f64>,
    /// Mean moisture, per cent.
    pub moisture: Vec<f64>,
    /// How much wetter the core is than the faces, points of moisture.
    pub core: Vec<f64>,
}

/// What a stack's boards do: by day from the first, by world, per cent moisture.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct StackCourse {
    /// Mean through the thickness.
    pub mean: Vec<Vec<f32>>,
    /// Outer fifths.
    pub shell: Vec<Vec<f32>>,
    /// Middle fifth.
    pub core: Vec<Vec<f32>>,
    /// What bare pins of the depth asked for find.
    pub pins: Vec<Vec<f32>>,
}

/// Worlds of a room that all count alike.
#[derive(Debug, Clone, PartialEq)]
pub struct RoomWorlds {
    room: RoomAir,
    outdoor: Option<RoomAir>,
    air: Vec<AirLanes>,
    start: i64,
}

impl RoomWorlds {
    /// Draws `count` worlds, rounded up to whole groups, and weighs them by the room's readings. `None`
    /// if the room's air cannot be worked out.
    pub fn new(known: &RoomKnown<'_>, priors: &Priors, count: usize, seed: u64) -> Option<Self> {
        let room = RoomAir::new(known.air, known.logged, known.stations, priors)?;
        let outdoor = RoomAir::sheltered(known.air, known.stations, priors);
        let spells = known.horizon / SPELL + 3;
        let count = count.next_multiple_of(LANES);
        let draws = Draws::expected(ROOM + spells, count, 0.0, seed);
        let group = |group: usize| room.lanes(&|lane, at| draws.of(group * LANES + lane)[at], spells);
        let air = (0..count / LANES).into_par_iter().map(group).collect();
        let drawn = Self { room, outdoor, air, start: known.start };
        let weights: Vec<f64> = (0..count)
            .into_par_iter()
            .map(|world| {
                let (air, lane) = (&drawn.air[world / LANES], world % LANES);
                let read = known.readings.iter().map(|reading| {
                    let step = drawn.step(&drawn.room, reading.day, DAY);
                    hygrometer_term(&step, air, lane, reading.humidity, priors)
                });
                read.sum::<f64>() + logger_term(&drawn.room, air, lane)
            })
            .collect();
        let chosen = resample(&weights, count);
        Some(drawn.pick(&chosen))
    }

    /// Number of worlds.
    pub const fn count(&self) -> usize {
        self.air.len() * LANES
    }

    /// These worlds by their index, in this order; as many as a multiple of eight.
    pub fn pick(&self, worlds: &[usize]) -> Self {
        let groups = worlds.chunks_exact(LANES).map(|group| {
            let of = |value: &dyn Fn(&AirLanes) -> Lanes| -> Lanes {
                std::array::from_fn(|lane| value(&self.air[group[lane] / LANES])[group[lane] % LANES])
            };
            let spells = self.air.first().map_or(0, |air| air.spells.len());
            AirLanes {
                shifts: std::array::from_fn(|at| of(&|air| air.shifts[at])),
                limit: of(&|air| air.limit),
                spells: (0..spells).map(|at| of(&|air| air.spells[at])).collect(),
            }
        });
        let air = groups.collect();
        Self { room: self.room.clone(), outdoor: self.outdoor.clone(), air, start: self.start }
    }

    /// Whether the air outdoors is known.
    pub const fn knows_outdoors(&self) -> bool {
        self.outdoor.is_some()
    }

    /// The room's usual year.
    pub fn usual_year(&self) -> Vec<Air> {
        self.room.usual_year()
    }

    fn step(&self, room: &RoomAir, day: i64, seconds: f64) -> StepAir {
        // The first spell begins before any reading of the room counts.
        room.step(self.start + day, seconds, self.start - 30)
    }

    /// Follows a stack through its phases from the first day on; `pins` is the depth of the meter's pins
    /// as a share of the thickness. `None` where a phase lies in outdoor air that nothing is known of.
    pub fn stack(&self, boards: &WorldBoards, phases: &[Phase], pins: f64) -> Option<StackCourse> {
        let mut groups = self.groups(boards, &[0.0; LANES]);
        let mut course = StackCourse::default();
        course.note(&groups, pins);
        let mut day = 0;
        for phase in phases {
            let base = match phase.shelter {
                Shelter::Room => &self.room,
                Shelter::Outdoor => self.outdoor.as_ref()?,
            };
            let warmed = (phase.warmer != 0.0).then(|| base.warmed(phase.warmer));
            let room = warmed.as_ref().unwrap_or(base);
            let kept = phase.kept_below.map(|below| self.kept_below(below));
            let air = kept.as_ref().unwrap_or(&self.air);
            for (group, transfer) in groups.iter_mut().zip(phase.transfer.chunks_exact(LANES)) {
                let lanes: Lanes = std::array::from_fn(|lane| single(transfer[lane]));
                group.transfer = [lanes; 2];
            }
            for _ in 0..phase.days {
                let mut step = self.step(room, day, HALF_DAY);
                if phase.kept_below.is_some() {
                    step.limited = 1.0;
                    step.least = 0.0;
                }
                run(&mut groups, air, &[step, step]);
                course.note(&groups, pins);
                day += 1;
            }
        }
        Some(course)
    }

    /// Driest and wettest, per cent by world, that boards hang at within `days` from day `from` on, if they go up as
    /// wet as the room's air then asks for. `transfer` is that of face and back in every world.
    pub fn extremes(&self, boards: &WorldBoards, transfer: &[[f64; 2]], from: i64, days: i64) -> Extremes {
        let mut groups = self.groups(boards, &[0.0; LANES]);
        for (group, transfer) in groups.iter_mut().zip(transfer.chunks_exact(LANES)) {
            group.transfer = [0, 1].map(|side| std::array::from_fn(|lane| single(transfer[lane][side])));
        }
        let steps: Vec<StepAir> = (from..from + days).map(|day| self.step(&self.room, day, DAY)).collect();
        let course = run(&mut groups, &self.air, &steps);
        let of = |world: usize| {
            let own = course[world / LANES].iter().map(|day| 100.0 * f64::from(day[world % LANES]));
            own.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), m| (low.min(m), high.max(m)))
        };
        Extremes { by_world: (0..self.count()).map(of).collect(), seasons: seasons(&course) }
    }

    /// Mean moisture in per cent that wood comes to in each world's room over a usual year.
    pub fn settles_at(&self) -> Vec<f64> {
        let of = |world: usize| {
            let months = (0..12).map(|month| {
                let mut day = *self.room.day(15 + month * DAYS / 12);
                day.by_spell = 0.0;
                day.settles_at(&self.air[world / LANES], world % LANES)
            });
            months.sum::<f64>() / 12.0
        };
        (0..self.count()).map(of).collect()
    }

    fn kept_below(&self, below: f64) -> Vec<AirLanes> {
        let one = |air: &AirLanes| {
            let limit = air.limit.map(|limit| limit.min(single(below)));
            AirLanes { limit, ..air.clone() }
        };
        self.air.iter().map(one).collect()
    }

    fn groups(&self, boards: &WorldBoards, shut: &Lanes) -> Vec<Boards> {
        (0..self.air.len())
            .map(|group| {
                let lanes = |values: &[f64], scale: f64| -> Lanes {
                    std::array::from_fn(|lane| single(scale * values[group * LANES + lane]))
                };
                let start = lanes(&boards.moisture, 0.01);
                Boards::new(
                    single(boards.thickness.to_m()),
                    single(boards.density),
                    [*shut; 2],
                    lanes(&boards.diffusivity, 1.0),
                    start,
                )
                .with_core(&lanes(&boards.core, 0.01))
            })
            .collect()
    }
}

impl StackCourse {
    fn note(&mut self, groups: &[Boards], pins: f64) {
        let flat = |of: &dyn Fn(&Boards) -> Lanes| -> Vec<f32> {
            groups.iter().flat_map(|group| of(group).map(|moisture| 100.0 * moisture)).collect()
        };
        self.mean.push(flat(&Boards::mean));
        self.shell.push(flat(&|boards| boards.shell_and_core()[0]));
        self.core.push(flat(&|boards| boards.shell_and_core()[1]));
        self.pins.push(flat(&|boards| boards.wettest_within(single(pins))));
    }
}

/// `count` indices in proportion to weights that are given by their logarithms.
#[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
pub fn resample(logs: &[f64], count: usize) -> Vec<usize> {
    let all = log_sum(logs);
    let step = 1.0 / count.max(1) as f64;
    let (mut taken, mut sum) = (Vec::with_capacity(count), 0.0);
    for (world, log) in logs.iter().enumerate() {
        sum += (log - all).exp();
        while taken.len() < count && (taken.len() as f64 + 0.5) * step < sum {
            taken.push(world);
        }
    }
    while taken.len() < count {
        taken.push(taken.last().copied().unwrap_or(0));
    }
    taken
}
