//! The cheapest way to work a chain off: day by day, who comes, and whether they wait for something to
//! dry or go home.
//!
//! The state of the work on a morning is the piece in hand, what is left of it and when it may begin.
//! From each, every sensible day is tried: the whole crew as long as there is work for it, fewer people
//! where they finish what can be done before the next wait, and at each wait of the day both waiting and
//! leaving. What reaches the same state at a higher cost is dropped. To do more today, or the same
//! earlier, never costs more later, so the cheapest of what is left is the cheapest of all; the tests hold
//! that against a search that tries everything.

use std::collections::BTreeMap;

use super::chain::{Chain, Lag, Piece};
use super::{Calendar, ScheduleInputs};
use crate::measure::Hours;

/// Hours that are nothing.
const NOTHING: f64 = 1e-6;
/// Work in a day that the drive and setting up always leave, as a share of the day.
const LEAST_WORK: f64 = 0.5;
/// Hours of work before lunch.
const MORNING: f64 = 4.0;
/// They come on the half hour.
const ARRIVE: f64 = 0.5;
/// Nobody comes later than so many hours before the end of a day.
const LATEST: f64 = 1.0;
/// More states of a morning than this are not followed; the cheapest are.
const MOST_STATES: usize = 400;

/// How days are worked, in hours.
#[derive(Debug, Clone, Copy)]
pub(super) struct Rules {
    /// People in the crew.
    crew: u32,
    /// The most that are ever there: the crew, or more where a piece takes more at once.
    pub people: u32,
    day: f64,
    late: f64,
    pub starts: f64,
    lunch: f64,
    pub drive: f64,
    set_up: f64,
    once: f64,
    /// The part of `once` that the last day before the crew stays away does not take.
    pub evening: f64,
    hour: f64,
    equipment: f64,
    another: f64,
}

impl Rules {
    pub(super) fn new(inputs: &ScheduleInputs<'_>) -> Self {
        let (crew, costs) = (inputs.crew, inputs.costs);
        let at_once = inputs.tasks.iter().filter(|(_, task)| task.hours.mean > Hours::ZERO);
        Self {
            crew: crew.people,
            people: at_once.map(|(_, task)| task.people).fold(crew.people, u32::max),
            day: crew.day.to_h(),
            late: crew.late.to_h().max(0.0),
            starts: crew.starts.to_h(),
            lunch: crew.lunch.to_h(),
            drive: costs.drive.to_h(),
            set_up: costs.set_up.to_h(),
            once: (costs.once + costs.evening).to_h(),
            evening: costs.evening.to_h(),
            hour: costs.hour.to_units(),
            equipment: costs.equipment.to_units(),
            another: costs.another.to_h(),
        }
    }

    /// Hours from arriving until the work begins: half of what the day takes anyhow, the rest at its end.
    pub(super) fn before_work(&self, people: u32) -> f64 {
        0.5 * (self.set_up + self.once / f64::from(people))
    }

    /// Hour at which a day is over.
    fn closes(&self) -> f64 {
        self.starts + self.lunch + self.day - self.drive
    }

    /// Hours that `people` work and wait on a day from an arrival on.
    fn hours(&self, people: u32, arrival: f64) -> f64 {
        let before = self.before_work(people);
        let there = self.closes() - arrival - 2.0 * before;
        let lunch = if there + before > MORNING + NOTHING { self.lunch } else { 0.0 };
        let least = if arrival > self.starts { 0.0 } else { LEAST_WORK * self.day };
        (there - lunch).max(least)
    }

    /// What a day costs on which each of so many people waits for so long, and what it would be worth to spare it.
    fn cost(&self, people: u32, standby: f64) -> f64 {
        let each = self.drive + self.set_up + standby;
        self.hour * (f64::from(people) * each + self.once + self.another) + self.equipment
    }

    /// Hours since midnight at which so many hours of work and waiting are over, from an arrival on.
    pub(super) fn clock(&self, arrival: f64, people: u32, hours: f64) -> f64 {
        let there = self.before_work(people) + hours;
        arrival + there + if there > MORNING + NOTHING { self.lunch } else { 0.0 }
    }
}

/// The work on a morning.
#[derive(Debug, Clone, Copy, PartialEq)]
struct State {
    /// The piece in hand.
    piece: usize,
    /// Hours of one person that are left of it.
    left: f64,
    /// Hours since the first midnight at which the piece may begin, other sections not counted.
    ready: f64,
    /// Hours by which one person's work on the sections before shortens that wait.
    overlap: f64,
}

impl State {
    fn at(pieces: &[Piece], piece: usize, ended: f64, put_off: u32) -> Self {
        let Some(next) = pieces.get(piece) else {
            return Self { piece, left: 0.0, ready: ended, overlap: 0.0 };
        };
        let (ready, overlap) = match next.lag {
            Lag::None => (0.0, 0.0),
            Lag::Hours(_, hours) => (ended + hours, next.overlap),
            Lag::Morning(_, hours) => (24.0 * ((ended + hours) / 24.0 - 1e-9).ceil(), 0.0),
            Lag::Until(_, hours) => (hours - 24.0 * f64::from(put_off), 0.0),
        };
        Self { piece, left: next.hours, ready, overlap }
    }

    /// When so many people may begin.
    fn ready_for(&self, people: u32) -> f64 {
        self.ready - self.overlap / f64::from(people)
    }

    #[expect(clippy::cast_possible_truncation, reason = "seconds of a job")]
    fn key(&self) -> (usize, i64, i64) {
        let seconds = |hours: f64| (hours * 3600.0).round() as i64;
        (self.piece, seconds(self.left), seconds(self.ready.max(0.0)))
    }
}

/// A stretch of work of a day.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Stretch {
    /// The piece.
    pub piece: usize,
    /// Hours since the first midnight.
    pub from: f64,
    /// Likewise.
    pub to: f64,
}

/// A day of the plan.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Day {
    pub day: u32,
    pub people: u32,
    /// Hour at which they arrive.
    pub arrival: f64,
    /// Hours of each that are worked and waited.
    pub hours: f64,
    /// Of these waited.
    pub standby: f64,
    pub does: Vec<Stretch>,
}

/// What a morning may turn into.
struct Outcome {
    state: State,
    day: Option<Day>,
    cost: f64,
    /// Whether the day ended because there was nothing to go on with.
    at_a_wait: bool,
}

/// A day that was tried.
struct Node {
    state: State,
    cost: f64,
    day: Option<Day>,
    before: Option<usize>,
}

/// The days of the cheapest way; of equal ones the first to be done.
pub(super) fn cheapest(chain: &Chain, rules: &Rules, calendar: &Calendar) -> Vec<Day> {
    let pieces = &chain.pieces;
    if pieces.is_empty() {
        return vec![];
    }
    let first =
        Node { state: State::at(pieces, 0, 0.0, calendar.put_off), cost: 0.0, day: None, before: None };
    let (mut nodes, mut mornings, mut today) = (vec![first], vec![0_usize], 0_u32);
    let mut best: Option<usize> = None;
    while !mornings.is_empty() {
        let mut next: BTreeMap<(usize, i64, i64), usize> = BTreeMap::new();
        for at in mornings {
            let (state, cost) = (nodes[at].state, nodes[at].cost);
            for outcome in days_from(pieces, rules, calendar, &state, today) {
                let node = Node {
                    state: outcome.state,
                    cost: cost + outcome.cost,
                    day: outcome.day,
                    before: Some(at),
                };
                let less = |than: usize| node.cost < nodes[than].cost - 1e-6;
                if best.is_some_and(|best| !less(best)) {
                    continue;
                }
                let known = next.get(&node.state.key()).copied();
                if node.state.piece < pieces.len() && known.is_some_and(|known| !less(known)) {
                    continue;
                }
                nodes.push(node);
                let (place, state) = (nodes.len() - 1, nodes[nodes.len() - 1].state);
                if state.piece == pieces.len() {
                    best = Some(place);
                } else {
                    next.insert(state.key(), place);
                }
            }
        }
        mornings = next.into_values().collect();
        mornings.sort_by(|a, b| nodes[*a].cost.total_cmp(&nodes[*b].cost));
        mornings.truncate(MOST_STATES);
        today += 1;
        // Nothing happens before the first of them is ready: nobody looks at the days until then.
        let ready = mornings.iter().map(|at| nodes[*at].state.ready - nodes[*at].state.overlap);
        today = today.max(whole_days(ready.fold(f64::INFINITY, f64::min)));
    }
    let mut days: Vec<Day> = Vec::new();
    let mut at = best;
    while let Some(place) = at {
        days.extend(nodes[place].day.take());
        at = nodes[place].before;
    }
    days.reverse();
    days
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a job lasts far fewer days")]
fn whole_days(hours: f64) -> u32 {
    if hours.is_finite() { (hours / 24.0).floor().max(0.0) as u32 } else { 0 }
}

/// Every sensible way to spend a day.
fn days_from(pieces: &[Piece], rules: &Rules, calendar: &Calendar, state: &State, day: u32) -> Vec<Outcome> {
    let stay_away = || Outcome { state: *state, day: None, cost: 0.0, at_a_wait: true };
    if !calendar.is_worked(day) {
        return vec![stay_away()];
    }
    let midnight = 24.0 * f64::from(day);
    let mut outcomes = Vec::new();
    for people in 1..=rules.people {
        let worked = Worked { pieces, rules, calendar, day, people };
        let ways = worked.ways(state).into_iter().filter(|way| way.at_a_wait || people >= rules.crew);
        outcomes.extend(ways.filter(|way| way.day.as_ref().is_some_and(|day| worked.are_needed(day))));
    }
    // What is ready only in the course of the day may as well wait for the next.
    if outcomes.is_empty() || state.ready_for(1) > midnight + rules.starts {
        outcomes.push(stay_away());
    }
    outcomes
}

/// A day worked by so many people.
struct Worked<'a> {
    pieces: &'a [Piece],
    rules: &'a Rules,
    calendar: &'a Calendar,
    day: u32,
    people: u32,
}

impl Worked<'_> {
    fn midnight(&self) -> f64 {
        24.0 * f64::from(self.day)
    }

    /// Whether there is something to do, and no more of them than the crew but where a piece takes more.
    fn are_needed(&self, day: &Day) -> bool {
        let takes = day.does.iter().map(|stretch| self.pieces[stretch.piece].people).max();
        takes.is_some_and(|takes| self.people <= takes.max(self.rules.crew))
    }

    /// When they arrive so that they can begin at once; `None` if that is no longer today.
    fn arrival(&self, state: &State) -> Option<f64> {
        let begin = state.ready_for(self.people) - self.midnight() - self.rules.before_work(self.people);
        let arrival = self.rules.starts.max((begin / ARRIVE - NOTHING).ceil() * ARRIVE);
        // Nobody comes for the last hour of a day.
        (arrival <= (self.rules.closes() - LATEST).max(self.rules.starts)).then_some(arrival)
    }

    /// The day with none, one, two … of its waits waited out in the room.
    fn ways(&self, state: &State) -> Vec<Outcome> {
        let Some(arrival) = self.arrival(state) else { return vec![] };
        let hours = self.rules.hours(self.people, arrival);
        let mut ways = Vec::new();
        for waits in 0.. {
            // Somewhat longer, if that is all it takes.
            let longer = self.work(state, arrival, hours + self.rules.late, waits);
            let way = match longer.outcome.at_a_wait {
                true => longer,
                false => self.work(state, arrival, hours, waits),
            };
            let more = way.waits_left;
            ways.push(way.outcome);
            if !more {
                break;
            }
        }
        ways
    }

    /// Works on until the hours are over or there is a wait too many.
    fn work(&self, start: &State, arrival: f64, hours: f64, waits: usize) -> Way {
        let (mut state, mut spent, mut standby) = (*start, 0.0, 0.0);
        let (mut waited, mut does) = (0, Vec::new());
        let people = f64::from(self.people);
        let now = |spent: f64| self.midnight() + self.rules.clock(arrival, self.people, spent);
        let (at_a_wait, waits_left) = loop {
            let Some(piece) = self.pieces.get(state.piece) else { break (true, false) };
            if piece.people > self.people {
                break (true, false);
            }
            let wait = state.ready_for(self.people) - now(spent);
            // Lunch is taken in the wait where it falls in it.
            let lunch = now(spent + wait.max(0.0)) - now(spent) - wait.max(0.0);
            let wait = if wait > NOTHING { (wait - lunch).max(2.0 * NOTHING) } else { wait };
            if wait > NOTHING && !does.is_empty() {
                // Waited out today, there must be time left to go on.
                let worth = spent + wait < hours - NOTHING && matches!(piece.lag, Lag::Hours(..));
                if !worth || waited == waits {
                    break (true, worth);
                }
                (spent, standby, waited) = (spent + wait, standby + wait, waited + 1);
            }
            let takes = (state.left / people).min(hours - spent);
            if takes <= NOTHING {
                break (false, false);
            }
            let from = now(spent);
            spent += takes;
            does.push(Stretch { piece: state.piece, from, to: now(spent) });
            state.left -= takes * people;
            if state.left > NOTHING {
                // A piece that is begun goes on without a wait.
                (state.ready, state.overlap) = (0.0, 0.0);
                break (false, false);
            }
            state = State::at(self.pieces, state.piece + 1, now(spent), self.calendar.put_off);
        };
        let day = Day { day: self.day, people: self.people, arrival, hours: spent, standby, does };
        let cost = self.rules.cost(self.people, standby);
        Way { outcome: Outcome { state, day: Some(day), cost, at_a_wait }, waits_left }
    }
}

/// A way to spend a day, and whether another would wait once more.
struct Way {
    outcome: Outcome,
    waits_left: bool,
}
