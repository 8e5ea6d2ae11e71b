//! Checks against published formulas that were evaluated elsewhere.
//!
//! Nobody printed the values in `computed/*.csv`: `computed/tables.py` works them out from the
//! published formulas it names, and shares no code with the program.

use gapwright::air::psychrometrics::{dew_point, saturation_pressure, vapor_pressure};
use gapwright::joint::{BeadLay, JointEdges};
use gapwright::measure::{Humidity, Length, Percent, Temperature, ThreePoint};
use gapwright::repair::{BeadShape, TreatedJoint, present_value, wet_sealant};

use crate::checked::{self, Checked};
use crate::tables::{number, rows};

/// The PERT formulas of Malcolm, Roseboom, Clark and Fazar (Operations Research 7, 1959; from
/// memory): worked rows, to half of the sixth decimal.
#[test]
fn three_points_have_the_mean_and_spread_of_the_table() {
    three_points().hold(8);
}

fn three_points() -> Checked {
    let values = rows(include_str!("computed/three_point.csv")).into_iter().flat_map(|row| {
        let [low, likely, high] = ["a", "m", "b"].map(|column| number(&row, column).unwrap());
        let points = ThreePoint { low, likely, high };
        let at = |what: &str| format!("{what} of {low}, {likely}, {high}");
        [
            (at("mean"), number(&row, "pert_mean").unwrap(), points.mean()),
            (at("spread"), number(&row, "pert_sd_(b-a)/6").unwrap(), points.sd()),
        ]
    });
    let source = "Malcolm, Roseboom, Clark and Fazar, Operations Research 7, 1959 (from memory)";
    Checked::new("three-point estimates", source, 5.1e-7, values)
}

/// Sealant coverage: length = volume / (width × depth), no waste (`sealant_coverage.csv`, computed from
/// the packages' contents; the table is printed to 0.1 mm or four digits, hence 1e-4).
#[test]
fn cartridges_run_as_far_as_the_coverage_table_says() {
    cartridges().hold(40);
}

fn cartridges() -> Checked {
    let mut reader = csv::Reader::from_reader(include_str!("computed/sealant_coverage.csv").as_bytes());
    let values: Vec<_> = reader
        .records()
        .map(Result::unwrap)
        .map(|row| {
            let number = |column: usize| row[column].parse::<f64>().unwrap();
            let (contents, width, depth, run) = (number(2), number(3), number(4), number(6));
            let bead = BeadShape {
                least_depth: Length::inches(depth),
                v_filled: Percent::ZERO,
                waste: Percent::ZERO,
                ..BeadShape::default()
            };
            let joint = TreatedJoint {
                length: Length::m(run),
                gap: Length::inches(width),
                edges: JointEdges { v_leg: Length::ZERO, tongue_below: Length::inches(2.0) },
            };
            let wet = wet_sealant(&[joint], &bead, BeadLay::Bridge, Percent::ZERO).to_ml();
            (format!("{} at {width} by {depth} in", &row[0]), contents, wet)
        })
        .collect();
    let source = "packages' contents, length = volume / (width × depth), printed to four figures";
    Checked::by_share("contents of a pack from its run, mL", source, 1e-4, values)
}

/// The forms of humidity against `PsychroLib`, a public-domain library of ASHRAE's relations.
#[test]
fn psychrometrics_are_those_of_a_reference_library() {
    for check in psychrometrics() {
        check.hold(36);
    }
}

fn psychrometrics() -> [Checked; 3] {
    let table = rows(include_str!("computed/psychrometrics.csv"));
    let values = |column: &'static str, ours: fn(Temperature, Humidity) -> f64| {
        table.iter().map(move |row| {
            let (t_c, rh) = (number(row, "t_c").unwrap(), number(row, "rh").unwrap());
            let ours = ours(Temperature::celsius(t_c), Humidity::fraction(rh));
            (format!("{t_c} °C, {} %", 100.0 * rh), number(row, column).unwrap(), ours)
        })
    };
    let source = "PsychroLib, a public-domain library of ASHRAE's relations";
    [
        Checked::by_share(
            "saturation pressure, Pa",
            source,
            1e-5,
            values("saturation_pa", |t, _| saturation_pressure(t)),
        ),
        Checked::by_share("vapour pressure, Pa", source, 1e-5, values("vapour_pa", vapor_pressure)),
        // The library iterates the dew point to 1e-3 K.
        Checked::new(
            "dew point, °C",
            source,
            1e-2,
            values("dew_point_c", |t, rh| dew_point(vapor_pressure(t, rh)).to_celsius()),
        ),
    ]
}

/// Single present value: ASTM E917, computed factors of NIST Handbook 135.
#[test]
fn present_values_are_those_of_the_factors() {
    present_values().hold(rows(include_str!("computed/present_value_factors.csv")).len());
}

fn present_values() -> Checked {
    let values = rows(include_str!("computed/present_value_factors.csv")).into_iter().map(|row| {
        let column = |name: &str| number(&row, name).unwrap();
        let at = format!("{}, {} years", row["i"], row["n"]);
        (at, column("SPV"), present_value(column("i"), column("n")))
    });
    Checked::new("single present value", "ASTM E917; computed factors of NIST Handbook 135", 6e-7, values)
}

#[test]
fn the_page_of_numbers_is_of_these_checks() {
    let mut checks = vec![three_points(), cartridges(), present_values()];
    checks.extend(psychrometrics());
    checked::page("Published formulas, computed", &checks);
}
