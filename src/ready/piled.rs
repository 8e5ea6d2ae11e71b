//! A stack in every world: the room it lies in, and the pace of its boards there.

use super::gate::Lever;
use super::known::Known;
use super::movement::Movement;
use super::stack::{Kept, Piling, Stack};
use crate::belief::{Phase, RoomWorlds, Shelter, StackCourse, WorldBoards};
use crate::measure::Length;

/// Numbers that stand for what is not known of a stack.
pub(super) const NUMBERS: usize = 5;

/// One stack out of all plausible ones.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Draw {
    /// Which of the room's worlds it lies in.
    pub(super) room: usize,
    /// Standard normal numbers: of the boards' spread and their wetter core, of the piling, the air and the wood's
    /// pace.
    pub(super) z: [f64; NUMBERS],
}

/// A stack in every world.
pub(super) struct Piled<'a> {
    known: &'a Known<'a>,
    rooms: RoomWorlds,
    /// What the room does to boards on the wall.
    pub(super) movement: Movement,
    /// Standard normal numbers of the piling, the air and the wood's pace.
    pace: Vec<[f64; 3]>,
}

impl<'a> Piled<'a> {
    /// The stacks that were drawn; as many as a multiple of eight.
    pub(super) fn of(known: &'a Known<'a>, draws: &[Draw]) -> Self {
        let rooms: Vec<usize> = draws.iter().map(|draw| draw.room).collect();
        Self {
            known,
            rooms: known.rooms.pick(&rooms),
            movement: Movement {
                lot: rooms.iter().map(|&room| known.movement.lot[room]).collect(),
                extremes: rooms.iter().map(|&room| known.movement.extremes[room]).collect(),
                seasons: known.movement.seasons,
            },
            pace: draws.iter().map(|draw| [draw.z[2], draw.z[3], draw.z[4]]).collect(),
        }
    }

    /// What boards of this moisture and this wetter core do from the first day on, with something done to the stack
    /// from today on. `None` where it lies in outdoor air that nothing is known of.
    pub(super) fn course(
        &self,
        (moisture, core): (&[f64], &[f64]),
        lever: Option<Lever>,
        days: usize,
    ) -> Option<StackCourse> {
        let known = self.known;
        let pins = known.readings.last().map_or(0.25, |reading| reading.pins.to_m() / known.thickness.to_m());
        let phases = self.phases(lever, days);
        let diffusivity = &known.priors.diffusivity;
        let boards = WorldBoards {
            thickness: known.thickness.max(Length::mm(1.0)),
            density: known.boards.species.density(),
            diffusivity: self
                .pace
                .iter()
                .map(|z| diffusivity.middle * (diffusivity.sd * z[2]).exp())
                .collect(),
            moisture: moisture.to_vec(),
            core: core.to_vec(),
        };
        self.rooms.stack(&boards, &phases, pins)
    }

    /// How the stack lies from the first day on: it comes out of its wrapper, and something is done to it from today on.
    fn phases(&self, lever: Option<Lever>, days: usize) -> Vec<Phase> {
        let known = self.known;
        let at = |day: i64| usize::try_from(day.max(0)).unwrap_or(0);
        let done = lever.map(|_| at(known.today));
        let mut ends: Vec<usize> = [known.opened.map(at), done].into_iter().flatten().collect();
        ends.retain(|day| (1..days).contains(day));
        ends.push(days);
        ends.sort_unstable();
        ends.dedup();
        let mut from = 0;
        let mut phases = Vec::with_capacity(ends.len());
        for end in ends {
            let lies = known.stack_on(i64::try_from(from).unwrap_or(i64::MAX));
            let lever = lever.filter(|_| done.is_some_and(|done| from >= done));
            let stack = match lever {
                Some(Lever::Stickers | Lever::IntoRoom) => {
                    Stack { piling: Piling::Stickered, kept: Kept::Room }
                }
                _ => lies,
            };
            phases.push(self.phase(stack, lever, end - from));
            from = end;
        }
        phases
    }

    fn phase(&self, stack: Stack, lever: Option<Lever>, days: usize) -> Phase {
        let figures = self.known.figures;
        let dried = lever == Some(Lever::Dehumidifier);
        Phase {
            shelter: match stack.kept {
                Kept::Room => Shelter::Room,
                Kept::Garage => Shelter::Outdoor,
            },
            warmer: if lever == Some(Lever::Heat) { figures.warmer.middle } else { 0.0 },
            kept_below: dried.then_some(figures.dehumidified_to.middle / 100.0),
            transfer: self.pace.iter().map(|z| stack.transfer(figures, [z[0], z[1]], dried)).collect(),
            days,
        }
    }

    /// What is left of the spread between boards after so many days: as they near what the room makes of them, they
    /// draw together.
    pub(super) fn spread_left(&self, course: &StackCourse, day: usize, world: usize) -> f64 {
        let (dry, damp) = self.movement.extremes[world];
        let settled = f64::midpoint(dry, damp);
        let (start, now) = (f64::from(course.mean[0][world]), f64::from(course.mean[day][world]));
        ((now - settled).abs() / (start - settled).abs().max(1.0)).clamp(0.4, 1.0)
    }
}
