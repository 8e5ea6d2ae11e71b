//! Sealant, paint and cans against what the trade and plain arithmetic say.

use gapwright::joint::{BeadLay, JointEdges};
use gapwright::measure::{Hours, Length, Money, Percent, Volume};
use gapwright::repair::{BeadShape, Paint, TreatedJoint, cheapest_cans, spread_rate, wet_sealant};
use gapwright::wood::Kind;

use crate::checked::Checked;

/// A bead takes as much sealant as its section is large while it is wet, and waste comes on top. Across
/// half of a V with legs of 4 mm over a gap of 4 mm, which backer closes: a trapezoid 2 mm high, 4 mm wide below
/// and 8 mm above, 12 mm². Over a gap of 3 mm, too fine for backer, 10 mm² and what runs into the slot, 3 mm wide
/// and 1 mm deep to the tongue, 5 mm below the face. Pushed in to the tongue it is the same 13 mm². In a reveal of
/// 1/4 in: 6.35 x 5 mm.
#[test]
fn a_bead_takes_as_much_sealant_as_its_section_is_large() {
    let edges = JointEdges { v_leg: Length::mm(4.0), tongue_below: Length::mm(5.0) };
    let bead = BeadShape { least_depth: Length::mm(5.0), waste: Percent::pct(10.0), ..BeadShape::default() };
    let needs = [
        (BeadLay::Bridge, 4.0, 12.0),
        (BeadLay::Bridge, 3.0, 13.0),
        (BeadLay::OnTongue, 3.0, 13.0),
        (BeadLay::Reveal, 3.0, 31.75),
    ];
    for (lay, gap, section) in needs {
        let joint = TreatedJoint { length: Length::m(10.0), gap: Length::mm(gap), edges };
        let laid = |second| wet_sealant(&[joint], &bead, lay, Percent::pct(second)).to_ml();
        let wet = laid(0.0);
        // A second bead over one that lost 30 % takes as much again.
        assert!((laid(30.0) / wet - 1.3).abs() < 1e-12, "{lay:?}");
        assert!((wet - 10.0 * section * 1.1).abs() < 1e-6, "{lay:?}: {wet}");
    }
}

/// Paint: 1604 ft² a US gallon at one mil of solids, the trade's figure, from the gallon's 231 in³.
#[test]
fn paint_spreads_1604_square_feet_a_mil_and_gallon() {
    paint_spread().hold(2);
}

pub fn paint_spread() -> Checked {
    let paint = Paint {
        id: String::new(),
        aliases: Vec::new(),
        priced: None,
        name: String::new(),
        solids: Percent::pct(100.0),
        film: 25.4,
        transfer: Percent::pct(100.0),
        sprayed: None,
        recoat: Hours::ZERO,
        cracks_at: Percent::pct(20.0),
        cans: vec![],
        source: String::new(),
        kind: Kind::Published,
    };
    let square_feet_a_gallon = |paint: &Paint| spread_rate(paint, true) * 3.785_411_784 / 0.092_903_04;
    let real =
        Paint { solids: Percent::pct(40.0), film: 50.8, transfer: Percent::pct(75.0), ..paint.clone() };
    let values = [
        ("pure, 1 mil".to_owned(), 1604.0, square_feet_a_gallon(&paint)),
        (
            "40 % solids, 2 mil, 75 % on the wall".to_owned(),
            1604.17 * 0.4 / 2.0 * 0.75,
            square_feet_a_gallon(&real),
        ),
    ];
    let source = "the trade's 1604 ft² a gallon and mil, from the gallon's 231 in³";
    Checked::new("spread of paint, ft² a gallon", source, 0.5, values)
}

/// Cheapest cans against every mix tried one by one.
#[test]
fn the_cheapest_cans_are_the_cheapest_of_all_mixes() {
    let cans = [(0.946, Money::cents(2_400)), (3.785, Money::cents(6_200)), (18.927, Money::cents(27_000))];
    for need in [0.1, 0.9, 1.0, 2.8, 3.0, 3.785, 3.9, 7.6, 11.0, 16.0, 17.5, 19.0, 38.0] {
        let mut best = i64::MAX;
        for quarts in 0..50_i32 {
            for gallons in 0..14_i32 {
                for pails in 0..4_i32 {
                    let holds =
                        0.946 * f64::from(quarts) + 3.785 * f64::from(gallons) + 18.927 * f64::from(pails);
                    if holds >= need - 1e-9 {
                        best = best.min(i64::from(quarts * 2400 + gallons * 6200 + pails * 27_000));
                    }
                }
            }
        }
        let found = cheapest_cans(Volume::litres(need), &cans).unwrap();
        assert_eq!(found.amount.to_cents(), best, "{need} L: {found:?}");
    }
}
