//! Days worked out by hand, and the search against one that tries everything.

use std::collections::HashMap;

use rand::{RngExt as _, SeedableRng as _};
use rand_xoshiro::Xoshiro256PlusPlus;

use super::chain::{Chain, Lag, Parts, Piece};
use super::*;
use crate::measure::{Estimate, Percent, ThreePoint};
use crate::repair::{Besides, MethodId, Outcome, RateBasis, Step, TaskPer, Trade};

fn task(number: usize, id: &str, hours: f64) -> (usize, TaskHours) {
    let task = TaskHours {
        id: id.to_owned(),
        name: id.to_owned(),
        short: id.to_owned(),
        trade: Trade::Painter,
        batch: (TaskPer::Visit, 1.0),
        batches: hours,
        minutes: ThreePoint::exactly(60.0),
        besides: Besides::default(),
        people: 1,
        times: 1.0,
        hours: Estimate { mean: Hours::h(hours), sd: Hours::ZERO },
        basis: RateBasis::Own,
    };
    (number, task)
}

fn method(steps: Vec<Step>) -> RepairMethod {
    RepairMethod {
        id: MethodId::Reseal,
        name: String::new(),
        outcome: Outcome::Line,
        look: String::new(),
        upset: String::new(),
        says: String::new(),
        lapses: Percent::ZERO,
        materials: vec![],
        steps,
    }
}

const WAITS: WaitTimes = WaitTimes {
    primer: Hours::h(1.0),
    sealant: Hours::h(24.0),
    recoat: Hours::h(4.0),
    acclimation: Hours::ZERO,
    season: Hours::ZERO,
};

const CREW: Crew = Crew {
    people: 2,
    day: Hours::h(8.0),
    late: Hours::h(1.0),
    starts: Hours::h(8.0),
    lunch: Hours::h(0.5),
    coats: 2,
    weekends: true,
    first: 0,
    handed_back: false,
};

/// Half an hour of driving and half an hour of setting up for each, 50 an hour, 35 of equipment a day.
const COSTS: DayCost = DayCost {
    drive: Hours::h(0.5),
    set_up: Hours::h(0.5),
    once: Hours::ZERO,
    evening: Hours::ZERO,
    hour: Money::cents(5_000),
    equipment: Money::cents(3_500),
    another: Hours::ZERO,
};

/// Mask 4 h, bead 6 h, cure a day, two coats of 8 h each, clean 1 h; hours of one person.
fn room(crew: &Crew, sections: usize) -> Schedule {
    let done = |id: &str| Step::Do(id.into());
    let steps = vec![
        done("protect"),
        done("bead"),
        Step::Wait(Wait::Sealant),
        Step::Coats("coat".into()),
        done("clean"),
    ];
    let tasks = [task(0, "protect", 4.0), task(1, "bead", 6.0), task(3, "coat", 16.0), task(4, "clean", 1.0)];
    let method = method(steps);
    schedule(&ScheduleInputs {
        method: &method,
        tasks: &tasks,
        crew,
        costs: &COSTS,
        waits: &WAITS,
        sections,
        joints: 1,
    })
}

/// By hand. Day 1: there at 8:00, a quarter of an hour of setting up, masked from 8:15 to 10:15; three hours
/// of beading with lunch after four hours there: to 13:45, packed up at 14:00. Paid are 5 h of work, the
/// drive and setting up: 6 h. The bead is cured at 13:45 on day 2. A coat takes the two 4 h, which that
/// day has no longer: to begin it then would cost one more day, so nobody comes. Day 3: the first coat is
/// 8 h, which one person does from 8:15 to 16:45 with an hour more than the day and lunch: cheaper than two
/// who drive. Day 4: the second coat and clean-up are 9 h, too much for one: two of them paint to 12:45,
/// clean to 13:15 and are gone at 13:30.
#[test]
fn a_hand_worked_case() {
    let laid = room(&CREW, 1);
    let hours: Vec<(f64, f64)> = laid.bars.iter().map(|b| (b.start * 24.0, b.end * 24.0)).collect();
    let expected = [
        (8.25, 10.25),
        (10.25, 13.75),
        (13.75, 37.75),
        (56.25, 64.75),
        (64.75, 68.75),
        (80.25, 84.75),
        (84.75, 85.25),
    ];
    assert_eq!(hours.len(), expected.len(), "{hours:?}");
    for (found, expected) in hours.iter().zip(expected) {
        assert!((found.0 - expected.0).abs() < 1e-6 && (found.1 - expected.1).abs() < 1e-6, "{hours:?}");
    }
    assert_eq!((laid.crew_days, laid.person_days, laid.calendar_days, laid.room_out), (3, 5, 4, 4));
    assert_eq!(laid.standby, Hours::ZERO);
    let days: Vec<(u32, u32, f64, f64)> = laid.days.iter().map(|d| (d.day, d.people, d.from, d.to)).collect();
    assert_eq!(days, [(0, 2, 8.0, 14.0), (2, 1, 8.0, 17.0), (3, 2, 8.0, 13.5)]);
    assert!((laid.days[0].paid.to_h() - 6.0).abs() < 1e-9);
    let steps: Vec<usize> = laid.bars.iter().map(|bar| bar.of_step).collect();
    assert_eq!(steps, [0, 1, 2, 3, 3, 3, 4], "both coats and the wait between them are one step");
}

/// The same begun on a Thursday by a crew that rests on weekends: the coats are on Monday and Tuesday,
/// days 5 and 6. Begun on a Saturday, it is put off by two days.
#[test]
fn weekends_are_free_and_the_room_is_closed_from_masking_to_clean_up() {
    let laid = room(&Crew { weekends: false, first: 3, ..CREW }, 1);
    assert_eq!((laid.crew_days, laid.calendar_days, laid.room_out), (3, 6, 6));
    let begun_on_saturday = room(&Crew { weekends: false, first: 5, ..CREW }, 1);
    assert_eq!((begun_on_saturday.calendar_days, begun_on_saturday.put_off), (4, 2));
    let handed_back = room(&Crew { weekends: false, first: 3, handed_back: true, ..CREW }, 1);
    assert_eq!(handed_back.room_out, 3);
}

/// Work on other sections while one dries: primed in 4 h by one person, dry in 1 h. Of one section the
/// bead waits the hour; of four, the first is dry before the last is primed.
#[test]
fn sections_dry_while_others_are_worked_on() {
    let steps = vec![Step::Do("prime".into()), Step::Wait(Wait::Primer), Step::Do("bead".into())];
    let method = method(steps);
    let tasks = [task(0, "prime", 4.0), task(2, "bead", 2.0)];
    let crew = Crew { people: 1, lunch: Hours::ZERO, ..CREW };
    let standby = |sections: usize| {
        let costs = &COSTS;
        let inputs = ScheduleInputs {
            method: &method,
            tasks: &tasks,
            crew: &crew,
            costs,
            waits: &WAITS,
            sections,
            joints: 1,
        };
        let laid = schedule(&inputs);
        assert_eq!(laid.crew_days, 1);
        laid.standby.to_h()
    };
    assert!((standby(1) - 1.0).abs() < 1e-6);
    // (n - 1) / n of the two hours of the shorter task.
    assert!((standby(2) - 0.0).abs() < 1e-6 && (standby(4) - 0.0).abs() < 1e-6);
}

#[test]
fn no_crew_makes_no_schedule() {
    assert_eq!(room(&Crew { people: 0, ..CREW }, 1), Schedule::default());
}

/// A small chain and the rules for it, all in hours.
struct Small {
    pieces: Vec<(f64, f64)>,
    people: u32,
    day: f64,
    drive: f64,
    equipment: f64,
}

impl Small {
    fn random(dice: &mut Xoshiro256PlusPlus) -> Self {
        let lags = [0.0, 0.0, 1.0, 2.0, 5.0, 16.0, 24.0];
        let mut piece = || (f64::from(dice.random_range(1..=4_u32)), lags[dice.random_range(0..lags.len())]);
        let pieces: Vec<(f64, f64)> = (0..8).map(|_| piece()).collect();
        let count = dice.random_range(3..=8_usize);
        Self {
            pieces: pieces[..count].to_vec(),
            people: dice.random_range(1..=2),
            day: f64::from(dice.random_range(5..=8_u32)),
            drive: [0.5, 1.0, 2.0][dice.random_range(0..3_usize)],
            equipment: [0.0, 40.0][dice.random_range(0..2_usize)],
        }
    }

    /// What the search finds it to cost.
    fn searched(&self) -> f64 {
        let piece = |(at, &(hours, lag)): (usize, &(f64, f64))| Piece {
            does: BarStep::Task(at.to_string()),
            short: at.to_string(),
            of_step: at,
            hours,
            lag: if lag > 0.0 && at > 0 { Lag::Hours(Wait::Primer, lag) } else { Lag::None },
            lag_of_step: at,
            parts: Parts { sections: 1, joints: 1 },
            overlap: 0.0,
            people: 1,
            closes: false,
            opens: false,
        };
        let chain = Chain { pieces: self.pieces.iter().enumerate().map(piece).collect() };
        let (method, tasks) = (method(vec![]), []);
        let crew = Crew {
            people: self.people,
            day: Hours::h(self.day),
            late: Hours::ZERO,
            lunch: Hours::ZERO,
            ..CREW
        };
        let costs = DayCost {
            drive: Hours::h(self.drive),
            set_up: Hours::ZERO,
            equipment: Money::cents(100).times(self.equipment),
            ..COSTS
        };
        let inputs = ScheduleInputs {
            method: &method,
            tasks: &tasks,
            crew: &crew,
            costs: &costs,
            waits: &WAITS,
            sections: 1,
            joints: 1,
        };
        let days =
            search::cheapest(&chain, &search::Rules::new(&inputs), &Calendar { first: None, put_off: 0 });
        let cost =
            |day: &search::Day| f64::from(day.people) * (self.drive + day.standby) * 50.0 + self.equipment;
        days.iter().map(cost).sum()
    }

    /// The least that it costs from here, trying for every day each number of people, each half hour to
    /// come and each quarter of an hour to leave. Time is in quarters of an hour.
    fn tried(&self, state: (i64, usize, i64, i64), known: &mut HashMap<(i64, usize, i64, i64), f64>) -> f64 {
        let (day, piece, left, ready) = state;
        if piece == self.pieces.len() {
            return 0.0;
        }
        if let Some(cost) = known.get(&state) {
            return *cost;
        }
        #[expect(clippy::cast_possible_truncation, reason = "quarters of a few hours")]
        let quarters = |hours: f64| (4.0 * hours).round() as i64;
        let (opens, closes) = (day * 96 + 32, day * 96 + 32 + quarters(self.day - self.drive));
        let mut best = f64::INFINITY;
        if ready > opens {
            best = self.tried((day + 1, piece, left, ready), known);
        }
        for people in 1..=i64::from(self.people) {
            for arrival in (opens..=(closes - 4).max(opens)).step_by(2).filter(|at| *at >= ready) {
                let (mut piece, mut left, mut ready, mut idle) = (piece, left, ready, 0_i64);
                for now in arrival..closes {
                    // One quarter of an hour of everyone.
                    let mut hands = people;
                    while hands > 0 && piece < self.pieces.len() && ready <= now {
                        let done = hands.min(left);
                        (left, hands) = (left - done, hands - done);
                        if left == 0 {
                            piece += 1;
                            let next = self.pieces.get(piece).copied().unwrap_or_default();
                            left = quarters(next.0);
                            let lag = quarters(next.1);
                            ready = if lag > 0 { now + 1 + lag } else { ready };
                        }
                    }
                    idle += hands;
                    if piece == self.pieces.len() {
                        idle -= hands;
                    }
                    #[expect(clippy::cast_precision_loss, reason = "small numbers")]
                    let spent = (people as f64 * self.drive + idle as f64 / 4.0) * 50.0 + self.equipment;
                    let rest =
                        if spent < best { self.tried((day + 1, piece, left, ready), known) } else { 0.0 };
                    best = best.min(spent + rest);
                    if piece == self.pieces.len() {
                        break;
                    }
                }
            }
        }
        known.insert(state, best);
        best
    }
}

/// Chains of up to 8 tasks: nothing that is tried costs less than what is searched for, and something
/// costs as much.
#[test]
fn nothing_that_can_be_tried_costs_less() {
    let mut dice = Xoshiro256PlusPlus::seed_from_u64(18);
    for number in 0..24 {
        let small = Small::random(&mut dice);
        #[expect(clippy::cast_possible_truncation, reason = "quarters of a few hours")]
        let left = (4.0 * small.pieces[0].0) as i64;
        let tried = small.tried((0, 0, left, 0), &mut HashMap::new());
        let searched = small.searched();
        // Quarters of an hour round what two people do.
        assert!((searched - tried).abs() < 26.0, "{number}: {searched} against {tried}: {:?}", small.pieces);
        assert!(
            searched < tried + 1e-6,
            "{number}: {searched} against {tried}: {:?} {}",
            small.pieces,
            small.people
        );
    }
}
