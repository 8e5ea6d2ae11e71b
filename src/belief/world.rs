//! What a world's numbers stand for, and its boards from the install on.

use super::air::{ROOM, RoomAir, SPELL, single};
use super::draws::Draws;
use super::ensemble::{AirLanes, Boards, LANES, Lanes, StepAir, run};
use super::evidence::below;
use super::priors::{Prior, Priors};
use crate::joint::{Coating, Films};
use crate::measure::Length;
use crate::surface::Behind;
use crate::wood::drying::transfer;

/// Numbers of a build-up: install, face, back, diffusivity.
const OF_BUILD_UP: usize = 4;
/// Boards are followed from their install, but no longer than five years.
const MOST_DAYS: i64 = 1825;
/// Spells before the visit that still show in the boards.
const PAST_SPELLS: i64 = 6;
/// Days that are stepped one by one after the install and before the visit; four at a time between.
const FINE_AFTER: i64 = 40;
const FINE_BEFORE: i64 = 400;
const COARSE: i64 = 4;
const DAY: f64 = 86_400.0;
/// Boards come no drier and no wetter than this, per cent moisture.
const INSTALLED: (f64, f64) = (3.0, 28.0);

/// Boards that dry alike: one size, species, coating and back.
#[derive(Debug, Clone, PartialEq)]
pub struct BuildUp {
    /// Thickness; above zero.
    pub thickness: Length,
    /// Oven-dry density, kg/m³; above zero.
    pub density: f64,
    /// How far the coating lets moisture through, before what differs from house to house.
    pub coating: Coating,
    /// The films of air.
    pub films: Films,
    /// What the backs face.
    pub behind: Behind,
}

/// The time that worlds are followed through.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Span {
    /// The visit's day of the year.
    pub visit: i64,
    /// Days from the install to the visit.
    pub age: i64,
    /// Days from the visit to the last reading after it.
    pub last: i64,
}

impl Span {
    fn followed(self) -> i64 {
        self.age.min(MOST_DAYS)
    }

    /// The day of the year count on which the first spell's shift holds.
    fn spells_from(self) -> i64 {
        self.visit - PAST_SPELLS * spell_days()
    }

    /// Spells' shifts that a world draws to be weighed.
    pub fn spells(self) -> usize {
        let days = PAST_SPELLS * spell_days() + self.last;
        usize::try_from(days).unwrap_or(0).div_ceil(SPELL) + 1
    }
}

fn spell_days() -> i64 {
    i64::try_from(SPELL).unwrap_or(61)
}

/// Worlds of one batch or all, followed to the last reading.
#[derive(Debug, Clone)]
pub(super) struct Worlds {
    /// The room of each group of worlds.
    pub air: Vec<AirLanes>,
    /// By build-up, in the order given.
    pub build_ups: Vec<Followed>,
    /// Days from the visit at the end of each step; the first is the install.
    pub days: Vec<i64>,
}

/// One build-up in all worlds.
#[derive(Debug, Clone, Default)]
pub(super) struct Followed {
    /// Boards at the last reading.
    pub boards: Vec<Boards>,
    /// Moisture at install, per cent, by world.
    pub installed: Vec<f64>,
    /// By group the mean moisture at each of the days, kg/kg.
    course: Vec<Vec<Lanes>>,
}

impl Followed {
    /// Moisture in a world at the day of this index, per cent.
    pub fn at(&self, world: usize, day: usize) -> f64 {
        100.0 * f64::from(self.course[world / LANES][day][world % LANES])
    }
}

impl Worlds {
    /// The index of the last followed day that is not after `day`.
    pub fn day(&self, day: i64) -> usize {
        self.days.partition_point(|known| *known <= day).saturating_sub(1)
    }

    /// Puts the worlds of another batch after these.
    pub fn append(&mut self, mut other: Self) {
        self.air.append(&mut other.air);
        for (own, mut more) in self.build_ups.iter_mut().zip(other.build_ups) {
            own.boards.append(&mut more.boards);
            own.installed.append(&mut more.installed);
            own.course.append(&mut more.course);
        }
    }
}

/// Everything that makes worlds of numbers.
#[derive(Debug)]
pub(super) struct Maker<'a> {
    pub room: &'a RoomAir,
    pub build_ups: &'a [BuildUp],
    pub span: Span,
    pub priors: &'a Priors,
}

impl Maker<'_> {
    /// Numbers of each world.
    pub fn dims(&self) -> usize {
        ROOM + self.span.spells() + OF_BUILD_UP * self.build_ups.len()
    }

    /// Where a build-up's numbers begin.
    fn of_build_up(&self, index: usize) -> usize {
        ROOM + self.span.spells() + OF_BUILD_UP * index
    }

    /// Makes the worlds `from` and after, whole groups of them, and follows them.
    pub fn follow(&self, draws: &Draws, from: usize) -> Worlds {
        let groups: Vec<usize> = (from / LANES..draws.len() / LANES).collect();
        let air: Vec<AirLanes> = groups.iter().map(|&group| self.air(draws, group)).collect();
        let (steps, days) = self.steps();
        let build_ups = (0..self.build_ups.len())
            .map(|index| self.followed(index, draws, &groups, &air, &steps))
            .collect();
        Worlds { air, build_ups, days }
    }

    fn followed(
        &self,
        index: usize,
        draws: &Draws,
        groups: &[usize],
        air: &[AirLanes],
        steps: &[StepAir],
    ) -> Followed {
        let mut found = Followed::default();
        for (&group, air) in groups.iter().zip(air) {
            let installed = self.installed(index, draws, group, air);
            found.boards.push(self.boards(index, draws, group, &installed));
            found.installed.extend(installed);
        }
        let starts: Vec<Lanes> = found.boards.iter().map(Boards::mean).collect();
        found.course = run(&mut found.boards, air, steps);
        for (course, start) in found.course.iter_mut().zip(starts) {
            course.insert(0, start);
        }
        found
    }

    /// The room's air of a group.
    fn air(&self, draws: &Draws, group: usize) -> AirLanes {
        self.room.lanes(&|lane, at| draws.of(group * LANES + lane)[at], self.span.spells())
    }

    /// How wet a group's boards came, per cent.
    ///
    /// Right ones about the mean of their own room's year; wet ones wetter than that room ever makes
    /// boards, most of them by a little.
    fn installed(&self, index: usize, draws: &Draws, group: usize, air: &AirLanes) -> Vec<f64> {
        let at = self.of_build_up(index);
        (0..LANES)
            .map(|lane| {
                let world = group * LANES + lane;
                let z = draws.of(world)[at];
                let (mean, wettest) = self.settled(air, lane);
                let came = if draws.is_wet(world) {
                    let least = wettest + 1.0;
                    least + (27.0 - least).max(1.0) * below(z).powf(1.5)
                } else {
                    mean + self.priors.right_install.sd * z
                };
                came.clamp(INSTALLED.0, INSTALLED.1)
            })
            .collect()
    }

    /// Mean and wettest moisture in per cent of boards in a world's room, in a usual year.
    fn settled(&self, air: &AirLanes, lane: usize) -> (f64, f64) {
        // Boards do not follow the air all the way.
        const FOLLOW: f64 = 0.85;
        let months = (0..12).map(|month| {
            let mut day = *self.room.day(15 + month * 365 / 12);
            day.by_spell = 0.0;
            day.settles_at(air, lane)
        });
        let (sum, most) = months.fold((0.0, 0.0_f64), |(sum, most), m| (sum + m, most.max(m)));
        let mean = sum / 12.0;
        (mean, mean + FOLLOW * (most - mean))
    }

    fn boards(&self, index: usize, draws: &Draws, group: usize, installed: &[f64]) -> Boards {
        let (at, build_up) = (self.of_build_up(index), &self.build_ups[index]);
        let z = |lane: usize, number: usize| draws.of(group * LANES + lane)[at + number];
        let factor = |prior: &Prior, z: f64| prior.middle * (prior.sd * z).exp();
        let (coating, films, priors) = (&build_up.coating, &build_up.films, self.priors);
        let back = match build_up.behind {
            Behind::Cavity => &priors.unknown_back,
            Behind::Tight => &priors.tight_back,
        };
        let lanes =
            |value: &dyn Fn(usize) -> f64| -> Lanes { std::array::from_fn(|lane| single(value(lane))) };
        let perms = |coated: Option<f64>, lane: usize| {
            coated.map(|perms| perms * factor(&priors.permeance, z(lane, 1)))
        };
        let face = lanes(&|lane| transfer(films.face, perms(coating.face, lane)));
        let behind =
            lanes(&|lane| transfer(films.back * factor(back, z(lane, 2)), perms(coating.back, lane)));
        let diffusivity = lanes(&|lane| factor(&priors.diffusivity, z(lane, 3)));
        let start = lanes(&|lane| installed[lane] / 100.0);
        let thickness = single(build_up.thickness.to_m());
        Boards::new(thickness, single(build_up.density), [face, behind], diffusivity, start)
    }

    /// The steps from the install to the last reading, and the days at their ends after the first.
    fn steps(&self) -> (Vec<StepAir>, Vec<i64>) {
        let span = self.span;
        let mut day = -span.followed();
        let (mut steps, mut days) = (Vec::new(), vec![day]);
        while day < span.last {
            let coarse = day + span.followed() >= FINE_AFTER && day < -FINE_BEFORE;
            let length = if coarse { COARSE } else { 1 };
            #[expect(clippy::cast_precision_loss, reason = "one day or four")]
            steps.push(self.room.step(
                span.visit + day + length / 2,
                DAY * length as f64,
                span.spells_from(),
            ));
            day += length;
            days.push(day);
        }
        (steps, days)
    }

    /// The steps of a day each from the last reading to `days` after the visit.
    pub fn steps_ahead(&self, days: i64) -> Vec<StepAir> {
        let ahead = self.span.last..days;
        ahead.map(|day| self.room.step(self.span.visit + day, DAY, self.span.spells_from())).collect()
    }

    /// The step of a day counted from the visit.
    pub fn step_on(&self, day: i64) -> StepAir {
        self.room.step(self.span.visit + day, DAY, self.span.spells_from())
    }
}
