//! Prices and movements worked out by hand, so that a slip in the build-up shows.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

use gapwright::app::demo_job;
use gapwright::assess::assess;
use gapwright::job::Shelf;
use gapwright::joint::demand;
use gapwright::measure::{Estimate, Hours, Length, Money, Percent, ThreePoint};
use gapwright::repair::{Payers, Plan, PriceInputs, Prices, TaskHours, TaxOn, price};
use gapwright::surface::{Fixing, JointKind, layout};

/// 10 h at 50.00 are 500.00; 20 % overhead 100.00; 10 % profit on 600.00 is 60.00; 5 % tax on
/// 660.00 is 33.00; 693.00 in all, of which a quarter and a third are 173.25 and 231.00.
#[test]
fn a_price_is_built_up_as_on_paper() {
    let task = TaskHours {
        id: "bead".into(),
        name: "bead".into(),
        batches: 1.0,
        minutes: ThreePoint::exactly(600.0),
        hours: Estimate { mean: Hours::h(10.0), sd: Hours::h(1.0) },
        basis: String::new(),
    };
    let plan = Plan {
        prices: Prices {
            currency: "$".into(),
            labour: Money::cents(5_000),
            overhead: Percent::pct(20.0),
            profit: Percent::pct(10.0),
            tax: Percent::pct(5.0),
            tax_on: TaxOn::Everything,
        },
        payers: Payers { contractor: Percent::pct(25.0), supplier: Percent::pct(100.0 / 3.0) },
        ..Plan::default()
    };
    let found = price(&PriceInputs { tasks: &[task], materials: &[], plan: &plan });
    let cents = [found.labour, found.overhead, found.profit, found.tax, found.total].map(Money::to_cents);
    assert_eq!(cents, [50_000, 10_000, 6_000, 3_300, 69_300]);
    let shares = [found.contractor, found.supplier, found.owner].map(Money::to_cents);
    assert_eq!(shares, [17_325, 23_100, 28_875]);
    // The 90th percentile of the normal is 1.2816 deviations up: 64.08 of labour, 88.81 with the rest.
    assert!((found.spread.high.to_cents() - 78_181).abs() <= 2, "{:?}", found.spread);
}

/// Each joint gets its share from the board on either side: both boards move one way, or half each.
#[test]
fn a_joint_takes_its_share_by_how_the_boards_are_nailed() {
    let mut surface = demo_job().surfaces.remove(0);
    for (fixing, boards) in
        [(Fixing::Tongue, 1.0), (Fixing::Middle, 1.0), (Fixing::Groove, 1.0), (Fixing::BothEdges, 0.0)]
    {
        surface.sections[0].board.fixing = fixing;
        let laid = layout(&surface);
        let joint = laid.joints.iter().find(|joint| joint.label == "A 5").unwrap();
        let expected = Length::inches(5.125) * boards;
        assert!((joint.moves_across.to_m() - expected.to_m()).abs() < 1e-6, "{fixing:?}");
    }
    // The starter course is ripped to 2 in: nailed at the tongue, joint 1 shows the full board over
    // it; nailed at the groove, the narrow one under it; nailed in the middle, half of each.
    surface.sections[0].start = Length::inches(2.0);
    for (fixing, inches) in [(Fixing::Tongue, 5.125), (Fixing::Groove, 2.0), (Fixing::Middle, 3.5625)] {
        surface.sections[0].board.fixing = fixing;
        let laid = layout(&surface);
        let joint = laid.joints.iter().find(|joint| joint.label == "A 1").unwrap();
        assert_eq!(joint.kind, JointKind::BoardEdge);
        assert!((joint.moves_across.to_inches() - inches).abs() < 1e-5, "{fixing:?}");
    }
}

/// Sealed at 4 mm, then between 3 and 5 mm: a quarter either way. A closed joint is squeezed flat.
#[test]
fn a_bead_is_asked_in_per_cent_of_its_width_at_sealing() {
    let asked = demand(Length::mm(4.0), Length::mm(3.0), Length::mm(5.0), Length::ZERO).unwrap();
    assert!((asked.stretch.to_pct() - 25.0).abs() < 1e-9 && (asked.squeeze.to_pct() - 25.0).abs() < 1e-9);
    let class_25 = Shelf::built_in().sealants.iter().find(|s| s.stretch == Percent::pct(25.0)).unwrap();
    let just_over = demand(Length::mm(4.0), Length::mm(3.0), Length::mm(5.01), Length::ZERO).unwrap();
    assert!(!class_25.takes(just_over));
    let shut = demand(Length::mm(4.0), Length::ZERO, Length::mm(4.0), Length::ZERO).unwrap();
    assert!((shut.squeeze.to_pct() - 100.0).abs() < 1e-9);
    assert_eq!(demand(Length::ZERO, Length::ZERO, Length::mm(1.0), Length::ZERO), None);
}

/// The gap on a day is today's gap plus width × coefficient × the fall in moisture (Wood Handbook
/// eq. 13-2, both moistures within 6 to 14 %).
#[test]
fn a_measured_gap_follows_the_boards_moisture() {
    let job = demo_job();
    let found = assess(&job, Shelf::built_in());
    let state = found.section(0, 0).unwrap();
    let board = &job.surfaces[0].sections[0].board;
    let species = Shelf::built_in().species(&board.species).unwrap();
    let index = found.layouts[0].joints.iter().position(|joint| joint.label == "A 5").unwrap();
    let joint = found.joint(0, index).unwrap();
    for day in [30, 120, 220] {
        let fall = (state.now.moisture.mean - state.motion.moisture[day]).to_pct();
        let expected = 3.175 + 130.175 * species.coefficient(board.ring_angle) * fall;
        let gap = found.gap_on(joint, day).unwrap().to_mm();
        assert!((gap - expected).abs() < 1e-6, "day {day}: {gap} against {expected}");
    }
}

/// In the porch room the wet quarter's joints open past the tongue as they dry: no bead holds there,
/// on the planned day or in the best week, though each would be within its class.
#[test]
fn no_bead_holds_where_the_boards_come_apart() {
    let job = gapwright::job::file::read(include_str!("../examples/porch_room.ron")).unwrap().job;
    let found = assess(&job, Shelf::built_in());
    let tongue = job.surfaces[0].sections[2].board.tongue().unwrap();
    let apart = found.joints.iter().filter(|joint| {
        let laid = &found.layouts[0].joints[joint.joint];
        laid.kind == JointKind::BoardEdge && joint.extremes.is_some_and(|(_, widest)| widest > tongue)
    });
    let apart: Vec<_> = apart.collect();
    assert!(!apart.is_empty() && apart.iter().all(|joint| !joint.holds));
    let season = found.season.as_ref().unwrap();
    let lost: Length = apart.iter().map(|joint| found.layouts[0].joints[joint.joint].length()).sum();
    let most = 1.0 - lost.to_m() / season.total.to_m();
    assert!(season.weeks.iter().all(|week| season.share(week) <= most + 1e-9));
}
