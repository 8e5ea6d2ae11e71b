//! Layouts against an independent polygon library.
//!
//! `layout/oracle.py` says what follows from each surface by the definitions; `layout/oracle.json`
//! is what it printed. Areas agree to 1e-6 m², lengths to 1e-6 m; totals over 500 m to two parts
//! in a billion.

use std::collections::BTreeMap;

use gapwright::measure::{Angle, Length};
use gapwright::surface::pattern::Pattern;
use gapwright::surface::{Divider, Joint, JointKind, Point, Section, Surface, SurfaceLayout, layout};
use geo::Area as _;
use serde::Deserialize;

/// Metres and square metres.
const TOLERANCE: f64 = 1e-6;
/// Share of a large total. Each joint ends on the polygon library's grid, and a hall has hundreds.
const SHARE: f64 = 2e-9;

#[derive(Deserialize)]
struct Case {
    surface: Surface,
    expected: CausePriors,
}

#[derive(Deserialize)]
struct CausePriors {
    plan_area: f64,
    painted_area: f64,
    outline_length: f64,
    sections: Vec<ExpectedSection>,
    lengths: ByKind,
    /// Every joint between courses, by its label.
    edges: BTreeMap<String, f64>,
    /// Boundary against a divider, an opening or a later section, by label without its letter.
    against: BTreeMap<String, f64>,
}

#[derive(Deserialize)]
struct ExpectedSection {
    area: f64,
    courses: usize,
    boards: usize,
    boards_area: f64,
}

#[derive(Deserialize)]
#[serde(rename_all = "PascalCase")]
struct ByKind {
    board_edge: f64,
    board_end: f64,
    divider: f64,
    perimeter: f64,
}

fn case(name: &str) -> Case {
    let cases: Vec<Case> = serde_json::from_str(include_str!("layout/oracle.json")).unwrap();
    cases.into_iter().find(|case| case.surface.name == name).unwrap()
}

/// Differences found in one layout, so that a failure shows all of them and not the first.
#[derive(Default)]
struct Differences {
    told: Vec<String>,
    largest: f64,
}

impl Differences {
    fn number(&mut self, what: &str, found: f64, expected: f64) {
        let off = (found - expected).abs();
        self.largest = self.largest.max(off);
        if off > TOLERANCE.max(SHARE * expected) {
            self.told.push(format!("{what}: laid {found}, expected {expected}"));
        }
    }

    fn same<T: PartialEq + std::fmt::Debug>(&mut self, what: &str, found: &T, expected: &T) {
        if found != expected {
            self.told.push(format!("{what}: laid {found:?}, expected {expected:?}"));
        }
    }
}

fn check(name: &str) {
    let Case { surface, expected } = case(name);
    let laid = layout(&surface);
    let mut differences = Differences::default();
    differences.number("plan area", laid.plan_area.to_m2(), expected.plan_area);
    differences.number("painted area", laid.painted_area.to_m2(), expected.painted_area);
    differences.number("outline", laid.outline_length.to_m(), expected.outline_length);
    compare_sections(&laid, &expected.sections, &mut differences);
    compare_lengths(&laid, &expected.lengths, &mut differences);
    compare_edges(&laid, &expected.edges, &mut differences);
    compare_against(&laid, &expected.against, &mut differences);
    println!("{name}: off by {:.1e} at most", differences.largest);
    assert!(differences.told.is_empty(), "{name}:\n{}", differences.told.join("\n"));
}

fn compare_sections(laid: &SurfaceLayout, expected: &[ExpectedSection], to: &mut Differences) {
    to.same("number of sections", &laid.sections.len(), &expected.len());
    for (index, (section, expected)) in laid.sections.iter().zip(expected).enumerate() {
        let boards = || laid.boards.iter().filter(|board| board.section == index);
        let area = boards().map(|board| board.face.unsigned_area()).sum();
        to.number(&format!("area of section {index}"), section.area().to_m2(), expected.area);
        to.number(&format!("boards' area in section {index}"), area, expected.boards_area);
        to.same(&format!("courses of section {index}"), &section.courses, &expected.courses);
        to.same(&format!("boards of section {index}"), &boards().count(), &expected.boards);
    }
}

fn total<'a>(joints: impl Iterator<Item = &'a Joint>) -> f64 {
    joints.map(|joint| joint.length().to_m()).sum()
}

fn compare_lengths(laid: &SurfaceLayout, expected: &ByKind, to: &mut Differences) {
    for (kind, expected) in [
        (JointKind::BoardEdge, expected.board_edge),
        (JointKind::BoardEnd, expected.board_end),
        (JointKind::Divider, expected.divider),
        (JointKind::Perimeter, expected.perimeter),
    ] {
        let found = total(laid.joints.iter().filter(|joint| joint.kind == kind));
        to.number(&format!("length of {kind:?}"), found, expected);
    }
}

fn compare_edges(laid: &SurfaceLayout, expected: &BTreeMap<String, f64>, to: &mut Differences) {
    let edges = || laid.joints.iter().filter(|joint| joint.kind == JointKind::BoardEdge);
    to.same("number of board edges", &edges().count(), &expected.len());
    for joint in edges() {
        match expected.get(&joint.label) {
            Some(&length) => to.number(&joint.label, joint.length().to_m(), length),
            None => to.told.push(format!("{} is laid but not expected", joint.label)),
        }
    }
    let known = |label: &String| edges().any(|joint| joint.label == *label);
    for label in expected.keys().filter(|label| !known(label)) {
        to.told.push(format!("{label} is expected but not laid"));
    }
}

/// Whether `label` is `name`, or `name b` and so on for a further piece.
fn is_piece_of(label: &str, name: &str) -> bool {
    let piece = |rest: &str| rest.len() == 2 && rest.ends_with(|c: char| c.is_ascii_lowercase());
    label.strip_prefix(name).is_some_and(|rest| rest.is_empty() || piece(rest))
}

fn compare_against(laid: &SurfaceLayout, expected: &BTreeMap<String, f64>, to: &mut Differences) {
    for (name, &length) in expected {
        let pieces = laid.joints.iter().filter(|joint| is_piece_of(&joint.label, name));
        to.number(name, total(pieces), length);
    }
}

#[test]
fn a_straight_run() {
    check("straight run");
}

#[test]
fn a_ripped_starter() {
    check("ripped starter");
}

#[test]
fn a_diagonal() {
    check("diagonal");
}

#[test]
fn an_odd_angle() {
    check("odd angle");
}

#[test]
fn an_l_outline() {
    check("L outline");
}

#[test]
fn a_raked_wall_with_windows() {
    check("wall with windows");
}

#[test]
fn openings_that_overlap_and_reach_the_edge() {
    check("door and light");
}

#[test]
fn quarters_at_crossing_dividers() {
    check("quarters at dividers");
}

#[test]
fn quarters_that_meet_on_the_diagonals() {
    check("quarters on diagonals");
}

#[test]
fn a_chevron() {
    check("chevron");
}

#[test]
fn trim_around_an_l() {
    check("trim");
}

#[test]
fn trim_mitred_around_a_sharp_corner() {
    check("trim around a wedge");
}

#[test]
fn butt_joints() {
    check("butt joints");
}

#[test]
fn butt_joints_beside_an_opening() {
    check("butts by an opening");
}

#[test]
fn a_course_no_longer_than_a_board_has_no_butts() {
    check("nothing to butt");
}

#[test]
fn butt_joints_on_a_slant() {
    check("butts on a slant");
}

#[test]
fn a_divider_through_one_section() {
    check("divider through a section");
}

#[test]
fn an_edge_in_a_course_line_is_no_joint() {
    check("notch on a course line");
}

#[test]
fn an_upright_edge_in_a_course_line_is_no_joint() {
    check("upright notch on a course line");
}

#[test]
fn boards_parted_by_a_cut_down_to_a_course_line_are_two() {
    check("cut down to a course line");
}

#[test]
fn an_opening_in_line_with_a_butt_is_no_joint() {
    check("butts in line with an opening");
}

#[test]
fn a_hall_with_an_edge_in_a_course_line() {
    check("hall with a notch");
}

#[test]
fn a_hall_with_butt_joints() {
    check("hall with butts");
}

#[test]
fn a_hall() {
    check("hall");
}

#[test]
fn labels_are_unique() {
    let cases: Vec<Case> = serde_json::from_str(include_str!("layout/oracle.json")).unwrap();
    for case in cases {
        let mut labels: Vec<String> =
            layout(&case.surface).joints.into_iter().map(|joint| joint.label).collect();
        let count = labels.len();
        labels.sort();
        labels.dedup();
        assert_eq!(labels.len(), count, "{}", case.surface.name);
    }
}

fn same_point(a: Point, b: Point) -> bool {
    (a.0 - b.0).to_m().abs() < TOLERANCE && (a.1 - b.1).to_m().abs() < TOLERANCE
}

/// The same corners either way round, from whichever corner they start.
fn same_ring(a: &[Point], b: &[Point]) -> bool {
    let back: Vec<Point> = b.iter().rev().copied().collect();
    let from = |b: &[Point], turn: usize| {
        let mut turned = b.iter().cycle().skip(turn);
        a.iter().all(|&point| turned.next().is_some_and(|&other| same_point(point, other)))
    };
    a.len() == b.len() && (0..a.len()).any(|turn| from(b, turn) || from(&back, turn))
}

fn same_section(a: &Section, b: &Section) -> bool {
    let regions = match (&a.region, &b.region) {
        (Some(a), Some(b)) => same_ring(a, b),
        (a, b) => a == b,
    };
    let turn = (a.direction - b.direction).to_degrees();
    regions && a.name == b.name && turn.abs() < 1e-9 && a.start == b.start && a.board == b.board
}

fn same_divider(a: &Divider, b: &Divider) -> bool {
    let ends = same_point(a.from, b.from) && same_point(a.to, b.to);
    ends && a.name == b.name && (a.width - b.width).to_m().abs() < TOLERANCE
}

/// The pattern makers give the sections that the oracle was told of.
#[test]
fn the_makers_draw_the_patterns_of_the_oracle() {
    let straight = |degrees| Pattern::StraightRun { direction: Angle::degrees(degrees) };
    for (name, pattern) in [
        ("straight run", straight(0.0)),
        ("diagonal", straight(45.0)),
        ("wall with windows", Pattern::Wainscot),
        ("quarters at dividers", Pattern::QuartersAtDividers { divider: Length::inches(3.5) }),
        ("quarters on diagonals", Pattern::QuartersOnDiagonals),
        ("chevron", Pattern::Chevron { stripes: 3, rise: Angle::degrees(38.0) }),
    ] {
        let surface = case(name).surface;
        let names = |number: usize| ["upright", "level"][number].to_owned();
        let (sections, dividers) = pattern.fill(&surface.outline, &surface.sections[0].board, &names);
        assert_eq!(sections.len(), surface.sections.len(), "{name}");
        assert_eq!(dividers.len(), surface.dividers.len(), "{name}");
        for (made, stored) in sections.iter().zip(&surface.sections) {
            assert!(same_section(made, stored), "{name}: {made:?} is not {stored:?}");
        }
        for (made, stored) in dividers.iter().zip(&surface.dividers) {
            assert!(same_divider(made, stored), "{name}: {made:?} is not {stored:?}");
        }
    }
}
