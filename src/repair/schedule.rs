//! The days of a repair: work in working hours, waits around the clock.

use super::methods::{RepairMethod, Step, Wait};
use super::tasks::TaskHours;
use crate::measure::{Hours, Span};

/// Hour of the day at which work starts.
const STARTS_AT: f64 = 8.0;

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

/// The repair's days.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Schedule {
    /// Bars in order.
    pub bars: Vec<Bar>,
    /// Days on which the crew works.
    pub crew_days: u32,
    /// Days from the first to the last, both counted.
    pub calendar_days: u32,
    /// Days on which the room cannot be used: from masking to clean-up of each visit.
    pub room_out: u32,
    /// Days by which a weekend puts off the first day of work.
    pub put_off: u32,
}

/// The task with which the room is closed, and the one after which it can be used again.
const CLOSES: (&str, &str) = ("protect", "clean");

/// When and how the crew works.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Crew {
    /// People.
    pub people: u32,
    /// Hours they work in a day.
    pub day: Hours,
    /// Coats of paint.
    pub coats: u32,
    /// Whether they work on Saturdays and Sundays.
    pub weekends: bool,
    /// Day of the week of the first day: 0 is Monday. Without weekends the work then starts on the
    /// next working day.
    pub first: u32,
}

/// Lays the method's steps out in time. Work runs from 8 o'clock for the crew's day; waits run on
/// through nights and weekends. Needs a crew and a working day of half an hour, else it is empty.
pub fn schedule(method: &RepairMethod, tasks: &[TaskHours], crew: &Crew, waits: &WaitTimes) -> Schedule {
    let people = f64::from(crew.people);
    let day = crew.day.to_h().min(24.0 - STARTS_AT);
    let hours: f64 = tasks.iter().map(|task| task.hours.mean.to_h()).sum();
    // Past ten years of work it is a slip in a rate, and would only keep everyone waiting.
    if people < 1.0 || day < 0.5 || hours / people / day > 2600.0 {
        return Schedule::default();
    }
    let mut clock = Clock::new(day, crew);
    let mut bars = Vec::new();
    let mut closed = None;
    let mut room_out = Vec::new();
    let mut remaining = tasks.iter().peekable();
    for (number, step) in method.steps.iter().enumerate() {
        clock.step = number;
        match step {
            Step::Wait(wait) => {
                let hours = waits.of(*wait).to_h();
                bars.extend(match wait {
                    Wait::Season => clock.wait_until(*wait, hours),
                    Wait::Acclimation => clock.wait_days(*wait, hours),
                    _ => clock.wait(*wait, hours),
                });
            }
            Step::Do(id) => {
                // A step whose task is not in the catalog has none here.
                let Some(task) = remaining.next_if(|task| task.id == *id) else { continue };
                let bar = clock.work(BarStep::Task(task.name.clone()), task.hours.mean.to_h() / people);
                if id == CLOSES.0 {
                    closed = closed.or(bar.as_ref().map(|bar| bar.start));
                } else if id == CLOSES.1
                    && let Some(from) = closed.take()
                {
                    room_out.push((from, clock.now / 24.0));
                }
                bars.extend(bar);
            }
            Step::Coats(id) => {
                let Some(task) = remaining.next_if(|task| task.id == *id) else { continue };
                let coat = task.hours.mean.to_h() / people / f64::from(crew.coats.max(1));
                for number in 1..=crew.coats {
                    bars.extend(clock.work(BarStep::Coat(number), coat));
                    bars.extend(clock.wait(Wait::Recoat, waits.recoat.to_h()));
                }
            }
        }
    }
    room_out.extend(closed.map(|from| (from, clock.now / 24.0)));
    Schedule {
        bars,
        crew_days: clock.crew_days(),
        calendar_days: clock.calendar_days(),
        room_out: room_out.into_iter().map(|(from, to)| days_touched(from, to)).sum(),
        put_off: days_off(crew),
    }
}

/// Days until the crew works: up to two where the first day falls on a weekend that is free.
const fn days_off(crew: &Crew) -> u32 {
    match crew.first % 7 {
        weekday if weekday > 4 && !crew.weekends => 7 - weekday,
        _ => 0,
    }
}

/// Days that a stretch of time touches.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a job lasts far fewer days")]
fn days_touched(from: f64, to: f64) -> u32 {
    ((to - 1e-9).floor() - from.floor() + 1.0).max(0.0) as u32
}

/// Hours since the first midnight, and when people worked.
struct Clock {
    now: f64,
    /// The method's step that is being laid out.
    step: usize,
    day: f64,
    /// Day of the week of day 0 where weekends are free.
    first: Option<f64>,
    /// Days by which a weekend put the first day off.
    late: f64,
    worked: Vec<(f64, f64)>,
}

impl Clock {
    fn new(day: f64, crew: &Crew) -> Self {
        // Day 0 is the first day of work.
        let put_off = days_off(crew);
        let first = f64::from((crew.first + put_off) % 7);
        let late = f64::from(put_off);
        Self {
            now: STARTS_AT,
            step: 0,
            day,
            first: (!crew.weekends).then_some(first),
            late,
            worked: Vec::new(),
        }
    }

    /// Works for `hours` of the crew's time, over as many days as it takes.
    fn work(&mut self, step: BarStep, mut hours: f64) -> Option<Bar> {
        if hours <= 1e-9 {
            return None;
        }
        self.until_working_hours();
        let start = self.now;
        while hours > 1e-9 {
            self.until_working_hours();
            let left_today = self.day_start() + self.day - self.now;
            let now = hours.min(left_today);
            self.worked.push((self.now, self.now + now));
            self.now += now;
            hours -= now;
        }
        Some(self.bar(step, start))
    }

    fn wait(&mut self, wait: Wait, hours: f64) -> Option<Bar> {
        let start = self.now;
        self.now += hours;
        (hours > 0.0).then(|| self.bar(BarStep::Wait(wait), start))
    }

    /// A bar from an hour until now.
    fn bar(&self, step: BarStep, start: f64) -> Bar {
        Bar { step, of_step: self.step, start: start / 24.0, end: self.now / 24.0 }
    }

    /// Waits for the morning of a day counted in hours from the day the work might have begun.
    fn wait_until(&mut self, wait: Wait, hours: f64) -> Option<Bar> {
        self.wait(wait, (hours - 24.0 * self.late + STARTS_AT - self.now).max(0.0))
    }

    /// Waits for whole days, to a morning.
    fn wait_days(&mut self, wait: Wait, hours: f64) -> Option<Bar> {
        let morning = self.day_start() + hours;
        self.wait(wait, if hours > 0.0 { (morning - self.now).max(0.0) } else { 0.0 })
    }

    fn day_start(&self) -> f64 {
        (self.now / 24.0).floor() * 24.0 + STARTS_AT
    }

    /// Moves on to the next moment at which the crew is there.
    fn until_working_hours(&mut self) {
        let start = self.day_start();
        if self.now < start {
            self.now = start;
        } else if self.now > start + self.day - 1e-6 {
            self.now = start + 24.0;
        }
        if let Some(first) = self.first {
            while (first + (self.now / 24.0).floor()) % 7.0 > 4.5 {
                self.now = self.day_start() + 24.0;
            }
        }
    }

    #[expect(clippy::cast_possible_truncation, reason = "a job lasts far fewer than 2^31 days")]
    fn crew_days(&self) -> u32 {
        let mut days: Vec<i64> = self.worked.iter().map(|(from, _)| (from / 24.0).floor() as i64).collect();
        days.dedup();
        u32::try_from(days.len()).unwrap_or(u32::MAX)
    }

    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a job lasts far fewer than 2^31 days, and time runs forward"
    )]
    fn calendar_days(&self) -> u32 {
        self.worked.last().map_or(0, |(_, to)| (to / 24.0).ceil() as u32)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{Estimate, ThreePoint};
    use crate::repair::{MethodId, Outcome, RateBasis, TaskPer};

    fn task(id: &str, hours: f64) -> TaskHours {
        TaskHours {
            id: id.into(),
            name: id.into(),
            batch: (TaskPer::Visit, 1.0),
            batches: 1.0,
            minutes: ThreePoint::exactly(hours * 60.0),
            times: 1.0,
            hours: Estimate { mean: Hours::h(hours), sd: Hours::ZERO },
            basis: RateBasis::Own,
        }
    }

    /// Two people, 8 hours, two coats, begun on this day of the week.
    fn crew(first: u32) -> Crew {
        Crew { people: 2, day: Hours::h(8.0), coats: 2, weekends: false, first }
    }

    fn method(steps: Vec<Step>) -> RepairMethod {
        RepairMethod {
            id: MethodId::Reseal,
            name: String::new(),
            outcome: Outcome::Bead { held: false, breaker: true },
            look: String::new(),
            upset: String::new(),
            says: String::new(),
            materials: vec![],
            steps,
        }
    }

    /// Worked by hand: two people, 8 h a day. 6 h of bead is 3 h, 8 to 11. It cures 24 h, to 11 on
    /// day 2. Two coats of 8 h each are 4 h: 11 to 15 on day 2; dry 4 h to 19, so the second is on
    /// day 3 from 8 to 12; dry to 16, clean-up has no time left to it on a day that ends at 16.
    #[test]
    fn a_hand_worked_case() {
        let method = method(vec![
            Step::Do("bead".into()),
            Step::Wait(Wait::Sealant),
            Step::Coats("coat".into()),
            Step::Do("clean".into()),
        ]);
        let waits = WaitTimes {
            primer: Hours::ZERO,
            sealant: Hours::h(24.0),
            recoat: Hours::h(4.0),
            acclimation: Hours::ZERO,
            season: Hours::ZERO,
        };
        let tasks = [task("bead", 6.0), task("coat", 16.0), task("clean", 1.0)];
        let laid = schedule(&method, &tasks, &crew(0), &waits);
        let hours: Vec<(f64, f64)> = laid.bars.iter().map(|b| (b.start * 24.0, b.end * 24.0)).collect();
        let expected =
            [(8.0, 11.0), (11.0, 35.0), (35.0, 39.0), (39.0, 43.0), (56.0, 60.0), (60.0, 64.0), (80.0, 80.5)];
        assert_eq!(hours.len(), expected.len());
        for (found, expected) in hours.iter().zip(expected) {
            assert!((found.0 - expected.0).abs() < 1e-9 && (found.1 - expected.1).abs() < 1e-9);
        }
        assert_eq!((laid.crew_days, laid.calendar_days), (4, 4));
        let steps: Vec<usize> = laid.bars.iter().map(|bar| bar.of_step).collect();
        assert_eq!(steps, [0, 1, 2, 2, 2, 2, 3], "both coats, and the waits after them, are one step");
        let days: Vec<(u32, u32)> = laid.bars.iter().map(|bar| (bar.days().low, bar.days().high)).collect();
        assert_eq!(days, [(1, 1), (1, 2), (2, 2), (2, 2), (3, 3), (3, 3), (4, 4)]);
    }

    /// The same begun on a Thursday by a crew that rests on weekends: the second coat is on Monday, day
    /// 5, from 8 to 12, and clean-up on Tuesday, day 6. Masked first, the room is closed on all six.
    #[test]
    fn weekends_are_free_and_the_room_is_closed_from_masking_to_clean_up() {
        let steps = ["protect", "bead"].map(|id| Step::Do(id.into()));
        let mut steps = steps.to_vec();
        steps.extend([Step::Wait(Wait::Sealant), Step::Coats("coat".into()), Step::Do("clean".into())]);
        let waits = WaitTimes {
            primer: Hours::ZERO,
            sealant: Hours::h(24.0),
            recoat: Hours::h(4.0),
            acclimation: Hours::ZERO,
            season: Hours::ZERO,
        };
        let tasks = [task("protect", 0.001), task("bead", 6.0), task("coat", 16.0), task("clean", 1.0)];
        let laid = schedule(&method(steps.clone()), &tasks, &crew(3), &waits);
        assert_eq!((laid.crew_days, laid.calendar_days, laid.room_out), (4, 6, 6));
        let begun_on_saturday = schedule(&method(steps), &tasks, &crew(5), &waits);
        assert_eq!((begun_on_saturday.calendar_days, begun_on_saturday.put_off), (4, 2));
        assert_eq!(laid.put_off, 0);
    }

    #[test]
    fn no_crew_makes_no_schedule() {
        let method = method(vec![]);
        let waits = WaitTimes {
            primer: Hours::ZERO,
            sealant: Hours::ZERO,
            recoat: Hours::ZERO,
            acclimation: Hours::ZERO,
            season: Hours::ZERO,
        };
        assert_eq!(schedule(&method, &[], &Crew { people: 0, ..crew(0) }, &waits), Schedule::default());
    }
}
