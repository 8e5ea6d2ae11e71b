//! Rows of bonded boards against a general-purpose solver.
//!
//! `rows/rows.json` is made by `rows/rows.py` with scipy, which says how: equilibrium as a quadratic
//! programme with contact constraints, tearing by bisection for each joint's turn.

use crate::checked::{self, Checked};
use gapwright::joint::{Row, RowBoard, RowJoint};
use proptest::prelude::*;
use serde::Deserialize;

#[derive(Deserialize)]
struct Oracle {
    rows: Vec<Case>,
    tearing: Vec<TearingCase>,
}

/// A row before anything moves, in the oracle's letters.
#[derive(Deserialize)]
struct Given {
    a: Vec<f64>,
    b: Vec<f64>,
    s: Vec<f64>,
    k_n: Vec<f64>,
    k_s: Vec<f64>,
    c: Vec<f64>,
    /// Without it no joint tears.
    reach: Option<Vec<f64>>,
    bonded: Vec<bool>,
}

impl Given {
    fn row(&self) -> Row {
        let board = |at: usize| RowBoard {
            narrows: self.s[at],
            at_groove: self.a[at],
            at_tongue: self.b[at],
            nails: self.k_n[at],
        };
        let joint = |at: usize| RowJoint {
            stiffness: self.k_s[at],
            reach: self.reach.as_ref().map_or(f64::INFINITY, |reach| reach[at]),
            room: self.c[at],
            bonded: self.bonded[at],
        };
        Row::new((0..self.s.len()).map(board).collect(), (0..self.c.len()).map(joint).collect())
    }
}

#[derive(Deserialize)]
struct Case {
    #[serde(flatten)]
    given: Given,
    d: Vec<f64>,
    delta: Vec<f64>,
    contact: Vec<f64>,
}

#[derive(Deserialize)]
struct TearingCase {
    #[serde(flatten)]
    given: Given,
    r#final: Final,
}

#[derive(Deserialize)]
struct Final {
    bonded: Vec<bool>,
    delta: Vec<f64>,
}

fn oracle() -> Oracle {
    serde_json::from_str(include_str!("rows/rows.json")).unwrap()
}

/// Openings of all rows against the oracle's, mm.
fn openings() -> Checked {
    let values =
        oracle().rows.into_iter().enumerate().flat_map(|(number, case)| {
            let state = case.given.row().balance();
            case.delta.into_iter().zip(state.opening).enumerate().map(move |(at, (theirs, ours))| {
                (format!("row {}, joint {}", number + 1, at + 1), theirs, ours)
            })
        });
    Checked::new("opening of a joint in a bonded row, mm", "scipy, a quadratic programme", 1e-8, values)
}

#[test]
fn the_page_of_numbers_is_of_these_checks() {
    checked::page("Rows of bonded boards", &[openings()]);
}

fn near(ours: &[f64], theirs: &[f64], within: f64) {
    assert_eq!(ours.len(), theirs.len());
    for (our, their) in ours.iter().zip(theirs) {
        assert!((our - their).abs() < within, "{ours:?} against {theirs:?}");
    }
}

/// To 1e-8 mm in slips and openings.
#[test]
fn rows_stand_as_a_quadratic_programme_says() {
    let cases = oracle().rows;
    assert_eq!(cases.len(), 37);
    assert!(cases.iter().filter(|case| case.contact.iter().any(|force| *force > 0.0)).count() > 10);
    for case in cases {
        let state = case.given.row().balance();
        near(&state.slip, &case.d, 1e-8);
        near(&state.opening, &case.delta, 1e-8);
        near(&state.contact, &case.contact, 1e-6);
    }
}

#[test]
fn joints_tear_as_movement_grows() {
    let cases = oracle().tearing;
    assert_eq!(cases.len(), 18);
    for case in cases {
        let mut row = case.given.row();
        row.tear();
        let bonded: Vec<bool> = row.joints().iter().map(|joint| joint.bonded).collect();
        assert_eq!(bonded, case.r#final.bonded);
        near(&row.balance().opening, &case.r#final.delta, 1e-8);
    }
}

fn even_row(count: usize, stiffness: f64, reach: impl Fn(usize) -> f64) -> Row {
    let board = RowBoard { narrows: 1.0, at_groove: 1.0, at_tongue: 0.0, nails: 1.0 };
    let joint = |at: usize| RowJoint { stiffness, reach: reach(at), room: 0.5, bonded: true };
    Row::new(vec![board; count], (0..count - 1).map(joint).collect())
}

/// Bonded for good, the boards move as one: the ends take it up and the middle joints stay shut.
/// Where one weak joint lets go it shows the movement of its neighbours too.
#[test]
fn bonded_boards_move_as_one_and_the_weak_joint_shows_it() {
    let state = even_row(21, 5e4, |_| f64::INFINITY).balance();
    assert!(state.opening[10] < 0.1, "{:?}", state.opening);
    let mut weak = even_row(21, 5e4, |at| if at == 10 { 1e-5 } else { 100.0 });
    assert_eq!(weak.tear(), [10]);
    assert!(weak.balance().opening[10] > 5.0);
    let loose = even_row(21, 1e-6, |_| f64::INFINITY).balance();
    assert!(loose.opening.iter().all(|open| (open - 1.0).abs() < 1e-4));
}

#[test]
fn thousands_of_boards_take_milliseconds() {
    let mut row = even_row(5000, 5.0, |at| 0.05 + 0.002 * f64::from(u8::try_from(at * 7919 % 101).unwrap()));
    let start = std::time::Instant::now();
    let torn = row.tear();
    let state = row.balance();
    let took = start.elapsed();
    println!("5000 boards, {} torn: {took:?}", torn.len());
    assert!(torn.len() > 100 && state.opening.len() == 4999);
    // Unoptimised; the benchmark has the figure that counts.
    assert!(took.as_millis() < 500, "{took:?}");
}

proptest! {
    /// No overlap, no pulling contact, and what boards give up is what joints show.
    #[test]
    fn a_row_keeps_its_width(
        boards in prop::collection::vec((-1.0..3.0_f64, 0.0..1.0_f64, 0.05..50.0_f64), 2..30),
        joints in prop::collection::vec((0.0..100.0_f64, 0.05..1.0_f64, 0.0..0.5_f64), 29),
    ) {
        let boards: Vec<RowBoard> = boards
            .into_iter()
            .map(|(narrows, at_groove, nails)| RowBoard { narrows, at_groove, at_tongue: 1.0 - at_groove, nails })
            .collect();
        let joints = joints
            .into_iter()
            .map(|(stiffness, reach, room)| RowJoint { stiffness, reach, room, bonded: true })
            .collect();
        let mut row = Row::new(boards.clone(), joints);
        row.tear();
        let state = row.balance();
        for (joint, open) in row.joints().iter().zip(&state.opening) {
            prop_assert!(*open >= -joint.room - 1e-9);
        }
        prop_assert!(state.contact.iter().all(|force| *force >= 0.0));
        let last = boards.len() - 1;
        let given: f64 = boards.iter().map(|board| board.narrows).sum::<f64>()
            - boards[0].at_groove * boards[0].narrows
            - boards[last].at_tongue * boards[last].narrows;
        let shown: f64 = state.opening.iter().sum::<f64>() - state.slip[last] + state.slip[0];
        prop_assert!((given - shown).abs() < 1e-9);
    }
}
