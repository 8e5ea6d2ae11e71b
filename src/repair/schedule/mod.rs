//! The days of a repair as they are worked.
//!
//! Every day on site costs the drive, setting up and packing up of everyone who comes, and the
//! equipment. So waits are planned: a crew goes on with other sections while the first ones dry, waits
//! in the room where that is cheaper than another day, comes with fewer people for what little is left,
//! and stays somewhat late rather than come back. Of all ways to do that the cheapest is searched for.

mod chain;
mod lay_out;
mod search;

use super::methods::{RepairMethod, Wait};
use super::tasks::TaskHours;
use crate::measure::{Hours, Money, Span};

/// Length of each wait.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WaitTimes {
    /// The primer dries.
    pub primer: Hours,
    /// The sealant cures.
    pub sealant: Hours,
    /// The paint may be coated again.
    pub recoat: Hours,
    /// New boards come to the room's moisture.
    pub acclimation: Hours,
    /// Days from the day the work may begin to the first day of sealing, as hours.
    pub season: Hours,
}

impl WaitTimes {
    const fn of(&self, wait: Wait) -> Hours {
        match wait {
            Wait::Primer => self.primer,
            Wait::Sealant => self.sealant,
            Wait::Recoat => self.recoat,
            Wait::Acclimation => self.acclimation,
            Wait::Season => self.season,
        }
    }
}

/// What is done or waited for in a stretch of time.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum BarStep {
    /// The task of this name in the catalog is done.
    Task(String),
    /// A coat of paint is laid; the first is 1.
    Coat(u32),
    /// Nobody works.
    Wait(Wait),
}

/// One bar of the chart.
#[derive(Debug, Clone, PartialEq)]
pub struct Bar {
    /// What is done or waited for.
    pub step: BarStep,
    /// Which of the method's steps it belongs to, from 0: all coats of paint and the waits after them are
    /// one step.
    pub of_step: usize,
    /// Start, in days from the midnight before the first day of work: 0.33 is 8 in the morning.
    pub start: f64,
    /// End, likewise.
    pub end: f64,
}

impl Bar {
    /// Whether nobody works.
    pub const fn is_wait(&self) -> bool {
        matches!(self.step, BarStep::Wait(_))
    }

    /// The first and the last day that it touches; the first day of work is 1.
    pub fn days(&self) -> Span<u32> {
        let first = self.start.max(0.0).floor();
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a job lasts far fewer days"
        )]
        let low = first as u32 + 1;
        Span { low, high: low + days_touched(first, self.end).max(1) - 1 }
    }
}

/// A day on site.
#[derive(Debug, Clone, PartialEq)]
pub struct WorkDay {
    /// Which day it is; the first day of work is 0.
    pub day: u32,
    /// People who come.
    pub people: u32,
    /// When they are there, as hours since midnight, setting up and lunch included.
    pub from: f64,
    /// When they leave.
    pub to: f64,
    /// Hours of each that are paid: the drive included, lunch not.
    pub paid: Hours,
    /// Of these, hours in which each waits for something to dry.
    pub standby: Hours,
    /// What is done, in order.
    pub does: Vec<DayStep>,
}

/// What is done on a day, in short.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum DayStep {
    /// A task, in the catalog's word or two for it.
    Task(String),
    /// A coat of paint; the first is 1.
    Coat(u32),
}

/// The repair's days.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Schedule {
    /// Bars in order.
    pub bars: Vec<Bar>,
    /// The days on site, in order.
    pub days: Vec<WorkDay>,
    /// Days on which anyone is there.
    pub crew_days: u32,
    /// The same, for each of the people.
    pub person_days: u32,
    /// Hours that people wait in the room for something to dry, of all together.
    pub standby: Hours,
    /// Days from the first to the last, both counted.
    pub calendar_days: u32,
    /// Days on which the room cannot be used: from masking to clean-up of each visit. Where it is handed
    /// back in the evening, only the days on site among them.
    pub room_out: u32,
    /// Evenings on which the room is handed back: of every day but the last before the crew stays away.
    pub evenings: u32,
    /// Weeks begun in which the room is worked in: not those in which new boards lie or a season is waited for.
    pub weeks: u32,
    /// Days by which a weekend puts off the first day of work.
    pub put_off: u32,
}

impl Schedule {
    /// Whether more people are there on some day than the crew has.
    pub fn needs_helper(&self, crew: u32) -> bool {
        self.days.iter().any(|day| day.people > crew)
    }
}

/// When and how the crew works.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Crew {
    /// People.
    pub people: u32,
    /// Hours of a day for which each is paid, the drive included, lunch not.
    pub day: Hours,
    /// Hours by which they stay late rather than come back.
    pub late: Hours,
    /// Hour of the day at which they are there.
    pub starts: Hours,
    /// Length of the lunch break.
    pub lunch: Hours,
    /// Coats of paint.
    pub coats: u32,
    /// Whether they work on Saturdays and Sundays.
    pub weekends: bool,
    /// Day of the week of the first day: 0 is Monday. Without weekends the work then starts on the
    /// next working day.
    pub first: u32,
    /// Whether the room is handed back in the evening.
    pub handed_back: bool,
}

/// What a day on site takes and costs, whatever is done on it.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct DayCost {
    /// Hours of the drive there and back, of each person.
    pub drive: Hours,
    /// Hours of setting up and packing up, of each person.
    pub set_up: Hours,
    /// Hours of one person for what is done once a day.
    pub once: Hours,
    /// Hours of one person for handing the room back in the evening and closing it off again.
    pub evening: Hours,
    /// What an hour of one person costs.
    pub hour: Money,
    /// Equipment for a day.
    pub equipment: Money,
    /// Hours of one person that one day less on site is worth besides, though nobody is charged for them: the room
    /// is free sooner, and less can slip.
    pub another: Hours,
}

/// What the days follow from.
#[derive(Debug, Clone, Copy)]
pub struct ScheduleInputs<'a> {
    /// The method.
    pub method: &'a RepairMethod,
    /// Its tasks, each with the number of its step.
    pub tasks: &'a [(usize, TaskHours)],
    /// When and how the crew works.
    pub crew: &'a Crew,
    /// What a day costs.
    pub costs: &'a DayCost,
    /// How long there is to wait.
    pub waits: &'a WaitTimes,
    /// Sections that are worked one after the other: the first is dry before the last is done.
    pub sections: usize,
    /// Joints that are, likewise.
    pub joints: usize,
}

/// Lays the method's steps out in days, at the least cost. Waits run on through nights and weekends.
/// Needs a crew and a working day of half an hour, else it is empty.
pub fn schedule(inputs: &ScheduleInputs<'_>) -> Schedule {
    let crew = inputs.crew;
    let hours: f64 = inputs.tasks.iter().map(|(_, task)| task.hours.mean.to_h()).sum();
    let people = f64::from(crew.people);
    // Past ten years of work it is a slip in a rate, and would only keep everyone waiting.
    if crew.people == 0 || crew.day < Hours::h(0.5) || hours / people / crew.day.to_h() > 2600.0 {
        return Schedule::default();
    }
    let chain = chain::chain(inputs);
    let calendar = Calendar::new(crew);
    let found = search::cheapest(&chain, &search::Rules::new(inputs), &calendar);
    lay_out::lay_out(inputs, &chain, &calendar, &found)
}

/// Which days are worked.
#[derive(Debug, Clone, Copy)]
struct Calendar {
    /// Day of the week of the first day of work where weekends are free.
    first: Option<u32>,
    /// Days by which a weekend put the first day off.
    put_off: u32,
}

impl Calendar {
    const fn new(crew: &Crew) -> Self {
        let put_off = match crew.first % 7 {
            weekday if weekday > 4 && !crew.weekends => 7 - weekday,
            _ => 0,
        };
        let first = if crew.weekends { None } else { Some((crew.first + put_off) % 7) };
        Self { first, put_off }
    }

    fn is_worked(&self, day: u32) -> bool {
        self.first.is_none_or(|first| (first + day) % 7 < 5)
    }
}

/// Days that a stretch of time touches.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a job lasts far fewer days")]
fn days_touched(from: f64, to: f64) -> u32 {
    ((to - 1e-9).floor() - from.floor() + 1.0).max(0.0) as u32
}

#[cfg(test)]
mod tests;
