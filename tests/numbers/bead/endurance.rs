//! How far a bead may be moved before it fails: each limit is put to the solver, which must find the stretch
//! there that the class's test bead shows.

use gapwright::bead::{
    BeadDesign, Behind, BoardEdge, Endurance, Movement, MovementLimits, Place, SealantClass, Section,
    StrainError, Tooling, goes_first, strain, test_stretch,
};
use gapwright::measure::{Length, Percent};
use rand::{RngExt as _, SeedableRng as _};
use rand_xoshiro::Xoshiro256PlusPlus;

const CLASS: SealantClass =
    SealantClass { id: "c920_25", open: Percent::pct(25.0), close: Percent::pct(25.0) };

/// Largest stretch that is seen, and of all places, when moved by so much; `None` without an equilibrium.
fn solved(section: &Section, movement: Movement) -> Option<(f64, f64)> {
    match strain(section, movement) {
        Ok(strain) => {
            let seen = |place: &Place| matches!(place, Place::FaceMiddle | Place::VisibleEdge);
            let of_seen = strain.places.iter().filter(|at| seen(&at.place)).map(|at| at.stretch);
            Some((of_seen.fold(1.0, f64::max), strain.largest.stretch))
        }
        Err(StrainError::NoEquilibrium { .. }) => None,
        Err(error) => panic!("{error:?}"),
    }
}

fn any_design(random: &mut Xoshiro256PlusPlus, square: bool) -> (BeadDesign, Length) {
    let leg = Length::inches(random.random_range(0.0625..0.25));
    let gap = leg * random.random_range(0.2_f64..1.8);
    let (edge, depth) = if square {
        (BoardEdge::Square, gap * random.random_range(0.4..1.9))
    } else {
        (Section::v(leg), gap * random.random_range(0.0..1.9))
    };
    let fill = Percent::pct(random.random_range(25.0..95.0));
    let tooling = match random.random_range(0..3) {
        0 => Tooling::Flush,
        _ => Tooling::Concave(Percent::pct(random.random_range(2.0..8.0))),
    };
    let solids = Percent::pct([100.0, 94.0, 84.0][random.random_range(0..3)]);
    (BeadDesign { edge, fill, depth, behind: Behind::Free, tooling, solids }, gap)
}

#[test]
fn the_solver_finds_the_class_at_every_limit() {
    let mut random = Xoshiro256PlusPlus::seed_from_u64(5);
    let (wanted_open, wanted_close) = (test_stretch(0.25), test_stretch(-0.25));
    let mut off: Vec<(&str, f64)> = Vec::new();
    for at in 0..24 {
        let (design, gap) = any_design(&mut random, at % 2 == 0);
        let limits = Endurance::new(&design, &CLASS, Percent::pct(20.0)).at(gap, gap);
        let section = design.section(gap);
        if !section.is_valid() {
            continue;
        }
        let mut hold = |what, movement: Movement, wanted: f64, of: fn((f64, f64)) -> f64| {
            if let Some(found) = solved(&section, movement) {
                off.push((what, (of(found) - wanted) / (wanted - 1.0)));
            }
        };
        hold("open, seen", Movement::open(limits.open_seen), wanted_open, |found| found.0);
        hold("open, anywhere", Movement::open(limits.open_hidden), wanted_open, |found| found.1);
        hold("paint", Movement::open(limits.paint), 1.2, |found| found.0);
        hold("slid, seen", Movement::slide(limits.slide_seen), wanted_open, |found| found.0);
        hold("slid, anywhere", Movement::slide(limits.slide_hidden), wanted_open, |found| found.1);
        // What would be squeezed by more than half the gap is beyond the table.
        if limits.close_hidden < gap * 0.5 {
            hold("closed, anywhere", Movement::open(limits.close_hidden * -1.0), wanted_close, |found| {
                found.1
            });
        }
    }
    let mut errors: Vec<f64> = off.iter().map(|(_, off)| off.abs()).collect();
    errors.sort_by(f64::total_cmp);
    let at = |share: usize| errors[(errors.len() - 1) * share / 100];
    println!("{} limits: strain off by {:.3} (half), {:.3} (nine in ten)", errors.len(), at(50), at(90));
    assert!(errors.len() > 60 && at(50) < 0.04 && at(90) < 0.12, "{off:.3?}");
}

/// Opened and slid at once, by what is left of the opening while it slides, no place is strained by more than
/// the class allows, to within what the table is off and the rule is rough.
#[test]
fn sliding_leaves_what_the_solver_says() {
    let wanted = test_stretch(0.25);
    for (fill, depth, gap) in [(50.0, 0.0, 2.4), (80.0, 1.0, 2.0), (35.0, 0.0, 1.5)] {
        let edge = Section::v(Length::inches(0.125));
        let (fill, depth, gap) = (Percent::pct(fill), Length::mm(depth), Length::mm(gap));
        let flush = (Tooling::Flush, Percent::pct(100.0));
        let behind = Behind::Free;
        let design = BeadDesign { edge, fill, depth, behind, tooling: flush.0, solids: flush.1 };
        let limits = Endurance::new(&design, &CLASS, Percent::pct(35.0)).at(gap, gap);
        for share in [0.3, 0.6, 0.9] {
            let slide = limits.slide_hidden * share;
            let left = limits.sliding(slide);
            assert!(left.open_hidden < limits.open_hidden && left.close_hidden == limits.close_hidden);
            let moved = Movement { open: left.open_hidden, slide, lift: Length::ZERO };
            let found = strain(&design.section(gap), moved).unwrap().largest.stretch;
            let off = (found - wanted) / (wanted - 1.0);
            println!("fill {fill:?} slid {share}: {found:.3} for {wanted:.3}, {:+.1} %", 100.0 * off);
            assert!(off.abs() < 0.15, "{off}");
        }
    }
}

fn limits(behind: Behind, depth: f64, gap: f64) -> MovementLimits {
    let edge = Section::v(Length::inches(0.125));
    let flush = (Tooling::Flush, Percent::pct(100.0));
    let (fill, depth) = (Percent::pct(50.0), Length::mm(depth));
    let design = BeadDesign { edge, fill, depth, behind, tooling: flush.0, solids: flush.1 };
    Endurance::new(&design, &CLASS, Percent::pct(17.0)).at(Length::mm(gap), Length::mm(gap))
}

/// A wider gap never takes less, and what shows never fails before what is hidden begins to.
#[test]
fn limits_are_in_order_and_grow_with_the_gap() {
    for behind in [Behind::Free, Behind::Tongue] {
        let mut before = limits(behind, 3.0, 0.1);
        for step in 2..120 {
            let now = limits(behind, 3.0, f64::from(step) * 0.1);
            assert!(now.open_hidden <= now.open_seen && now.close_hidden <= now.close_seen, "{now:?}");
            // Between its points the table is off by some per cent.
            assert!(now.open_seen.to_m() >= 0.95 * before.open_seen.to_m(), "{behind:?} {step}");
            before = now;
        }
    }
}

/// USDA Forest Products Laboratory, lab notes on caulking: adhesion in the root of a joint concentrates
/// stress, and failure is likely even with a high-performance sealant. No measured factor was found.
#[test]
fn a_bead_on_the_tongue_begins_to_tear_long_before_one_across_the_v() {
    let (across, on_tongue) = (limits(Behind::Free, 0.0, 2.4), limits(Behind::Tongue, 3.6, 2.4));
    assert!(on_tongue.open_hidden < across.open_hidden * 0.25, "{on_tongue:?} {across:?}");
    // What is seen gives way much later, so it goes unnoticed at first.
    assert!(on_tongue.open_seen > on_tongue.open_hidden * 4.0, "{on_tongue:?}");
}

/// A bead in the V's edge of this leg, in inches, filled to this share.
fn in_v(leg: f64, fill: f64, behind: Behind, depth: f64) -> BeadDesign {
    BeadDesign {
        edge: Section::v(Length::inches(leg)),
        fill: Percent::pct(fill),
        depth: Length::mm(depth),
        behind,
        tooling: Tooling::Flush,
        solids: Percent::pct(100.0),
    }
}

/// How far strain at the limits of opening and closing is off what the class's test bead shows, at worst.
fn off_at_the_limits(design: &BeadDesign, gap: Length) -> f64 {
    let limits = Endurance::new(design, &CLASS, Percent::pct(20.0)).at(gap, gap);
    let section = design.section(gap);
    let (wanted_open, wanted_close) = (test_stretch(0.25), test_stretch(-0.25));
    let mut worst = 0.0_f64;
    let mut hold = |moved: Length, wanted: f64, of: fn((f64, f64)) -> f64| {
        if let Some(found) = solved(&section, Movement::open(moved)) {
            worst = worst.max(((of(found) - wanted) / (wanted - 1.0)).abs());
        }
    };
    hold(limits.open_seen, wanted_open, |found| found.0);
    hold(limits.open_hidden, wanted_open, |found| found.1);
    if limits.close_hidden < gap * 0.5 {
        hold(-limits.close_hidden, wanted_close, |found| found.1);
    }
    worst
}

/// Above its face a bead doesn't feel the V: one that is filled as high is the same bead, in a V of 3/8 in as in one
/// of 1/8 in, and needs no solving.
#[test]
fn a_v_may_go_on_beyond_the_face() {
    for (leg, fill, gap) in [(0.375, 20.0, 2.0), (0.5, 40.0, 4.0), (0.3, 30.0, 1.0), (0.05, 90.0, 1.2)] {
        let design = in_v(leg, fill, Behind::Free, 0.5);
        assert!(design.is_known(Length::mm(gap)), "{leg} {fill}");
        let off = off_at_the_limits(&design, Length::mm(gap));
        println!("V {leg} in, {fill} % filled, gap {gap} mm: strain off by {off:.3}");
        assert!(off < 0.15, "{leg} {fill}: {off}");
    }
}

/// What no table holds is the nearest bead's until it is solved, within a second or so, and its own from then on.
#[test]
fn a_bead_that_no_table_holds_is_solved() {
    let edge = BoardEdge::V { leg: Length::inches(0.125), angle: gapwright::measure::Angle::degrees(60.0) };
    let steep = BeadDesign { edge, ..in_v(0.125, 60.0, Behind::Free, 0.0) };
    let tall = in_v(0.5, 80.0, Behind::Free, 0.0);
    let wide = in_v(0.0625, 50.0, Behind::Free, 0.5);
    for (what, design, gap) in [("steep", steep, 2.0), ("tall", tall, 3.0), ("wide", wide, 9.0)] {
        let gap = Length::mm(gap);
        assert!(!design.is_known(gap), "{what}");
        let before = off_at_the_limits(&design, gap);
        let start = std::time::Instant::now();
        design.solve(gap);
        let took = start.elapsed();
        assert!(design.is_known(gap), "{what}");
        let after = off_at_the_limits(&design, gap);
        println!("{what}: strain off by {before:.3} before, {after:.3} after {took:?}");
        // As good as the table at its worst, where another place becomes the one strained most.
        assert!(after < 0.12 && after <= before + 0.01, "{what}: {after} after {before}");
    }
}

/// The place that is marked lies on the bead, out of sight where that goes first, and the solver finds the class there.
#[test]
fn the_place_that_goes_first_is_past_its_class_first() {
    let mut random = Xoshiro256PlusPlus::seed_from_u64(8);
    let mut unseen = 0;
    for at in 0..16 {
        let (design, gap) = any_design(&mut random, at % 2 == 0);
        let section = design.section(gap);
        if !section.is_valid() {
            continue;
        }
        let limits = Endurance::new(&design, &CLASS, Percent::pct(20.0)).at(gap, gap);
        let Some(first) = goes_first(&section, limits.open_hidden) else { continue };
        let all = strain(&section, Movement::open(limits.open_hidden)).unwrap();
        for place in &all.places {
            assert!(place.stretch <= first.stretch + 1e-9, "{place:?} {first:?}");
        }
        let off = (first.stretch - test_stretch(0.25)) / (test_stretch(0.25) - 1.0);
        // The table is up to 15 % off, and what is asked of the solver is rounded.
        assert!(off.abs() < 0.2, "{first:?}: {off}");
        unseen += usize::from(!matches!(first.place, Place::FaceMiddle | Place::VisibleEdge));
        let cured = section.cured();
        assert!(first.up <= cured.top && first.up >= -cured.depth, "{first:?} {cured:?}");
    }
    assert!(unseen > 8, "{unseen}");
}
