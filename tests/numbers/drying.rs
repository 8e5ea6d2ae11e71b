//! Drying through the thickness against published solutions and a stiff solver.
//!
//! Crank, *The Mathematics of Diffusion* (2nd ed., 1975), plane sheet: the series of section 4.3.2
//! (step at the surface), 4.3.6 (surface resistance) and 4.3.5 (sine at the surface), in
//! `computed/diffusion_*.csv`. The two-year cases with wood's own diffusivity and isotherm are
//! solved by scipy in `drying/drying.py`, which says how; its results are `drying/drying.json`.

use std::f64::consts::{PI, TAU};
use std::sync::LazyLock;

use crate::checked::{self, Checked};
use crate::tables::cells;
use gapwright::air::psychrometrics::{saturation_pressure, vapor_pressure};
use gapwright::measure::{Humidity, Length, Temperature};
use gapwright::wood::drying::{Drying, Exposure, Material, Panel, Wood, transfer};
use proptest::prelude::*;
use serde::Deserialize;

/// A material with constant diffusivity 1 m²/s whose moisture is the vapour pressure: with it the
/// model is the linear one that Crank solves.
#[derive(Debug, Clone, Copy)]
struct Linear;

impl Material for Linear {
    fn diffusivity(&self, _: f64) -> impl Fn(f64) -> f64 {
        |_| 1.0
    }

    fn isotherm(&self, _: f64) -> impl Fn(f64) -> (f64, f64) {
        |h| (h, 1.0)
    }
}

/// Vapour pressure `p` of a saturation pressure of 1.
fn exposure(p: f64) -> Exposure {
    Exposure { celsius: 20.0, saturation: 1.0, vapour: p }
}

/// A sheet of half-thickness 1 with the surface coefficient `alpha` on both faces.
fn sheet(alpha: f64) -> Panel {
    Panel { thickness: Length::m(2.0), density: 1.0, transfer: [alpha; 2] }
}

/// A surface without resistance.
const NONE: f64 = 1e12;

fn number(text: &str) -> f64 {
    text.parse().unwrap()
}

/// Share of the way gone from moisture 1 to 0 after `time`, in the mean and at the centre.
fn step_change(alpha: f64, time: f64, cells: usize, steps: u32) -> (f64, f64) {
    let mut board = Drying::uniform(Linear, sheet(alpha), cells, 1.0);
    for _ in 0..steps {
        board.step(exposure(0.0), time / f64::from(steps));
    }
    let middle = f64::midpoint(board.cells()[cells / 2], board.cells()[(cells - 1) / 2]);
    (1.0 - board.mean(), 1.0 - middle)
}

/// Crank eq. 4.18. To 1e-3.
#[test]
fn a_step_at_the_surface_dries_as_crank_says() {
    step_at_surface().hold(26);
}

fn step_at_surface() -> Checked {
    let values = cells(include_str!("computed/diffusion_step.csv")).into_iter().flat_map(|row| {
        let (mean, centre) = step_change(NONE, number(&row[0]), 200, 4000);
        let at = |what: &str| format!("{what}, Dt/l² = {}", row[0]);
        [(at("mean"), number(&row[1]), mean), (at("centre"), number(&row[2]), centre)]
    });
    Checked::new("share dried after a step at the surface", "Crank, eq. 4.18", 1e-3, values)
}

/// Crank eq. 4.53. To 1e-3.
#[test]
fn surface_resistance_slows_it_as_crank_says() {
    surface_resistance().hold(32);
}

fn surface_resistance() -> Checked {
    let values = cells(include_str!("computed/diffusion_surface_resistance.csv")).into_iter().map(|row| {
        let (mean, _) = step_change(number(&row[0]), number(&row[1]), 100, 3000);
        (format!("L = {}, Dt/l² = {}", row[0], row[1]), number(&row[2]), mean)
    });
    Checked::new("share dried through a resisting surface", "Crank, eq. 4.53", 1e-3, values)
}

/// Amplitude ratio and phase lag in degrees of the mean, once it has settled into a sine at the
/// surface.
fn sine(xi: f64, alpha: f64, cells: usize, steps: u32) -> (f64, f64) {
    let omega = 2.0 * xi * xi;
    let mut board = Drying::uniform(Linear, sheet(alpha), cells, 0.5);
    let step = TAU / omega / f64::from(steps);
    // The start is forgotten at the rate of the slowest mode.
    let slowest = (PI * PI / 4.0).min(0.9 * alpha.min(1e3) / (1.0 + 0.4 * alpha.min(1e3)));
    let cycles = (12.0 / (slowest * TAU / omega)).ceil().max(1.0);
    let (mut sin, mut cos, mut now) = (0.0, 0.0, 0.0);
    while now < (cycles + 1.0) * TAU / omega - step / 2.0 {
        now += step;
        board.step(exposure(0.5 + 0.4 * (omega * now).sin()), step);
        if now > cycles * TAU / omega + step / 2.0 {
            let change = board.mean() - 0.5;
            sin += change * (omega * now).sin() * 2.0 / f64::from(steps);
            cos += change * (omega * now).cos() * 2.0 / f64::from(steps);
        }
    }
    (sin.hypot(cos) / 0.4, (-cos).atan2(sin).to_degrees())
}

/// Crank section 4.3.5. The amplitude to 1e-3, the phase to 0.15 degrees (a tenth of a day a year).
#[test]
fn a_yearly_wave_is_damped_and_delayed_as_crank_says() {
    YEARLY_WAVE.iter().for_each(|check| check.hold(35));
}

/// Worked out once: it takes seconds.
static YEARLY_WAVE: LazyLock<[Checked; 2]> = LazyLock::new(|| {
    let (mut ratios, mut lags) = (Vec::new(), Vec::new());
    for row in cells(include_str!("computed/diffusion_periodic.csv")) {
        let alpha = if row[1] == "inf" { NONE } else { number(&row[1]) };
        let (ratio, lag) = sine(number(&row[0]), alpha, 80, 3000);
        let at = format!("xi {}, Bi {}", row[0], row[1]);
        ratios.push((at.clone(), number(&row[2]), ratio));
        lags.push((at, number(&row[3]), lag));
    }
    [
        Checked::new("amplitude of a wave, as a share", "Crank, section 4.3.5", 1e-3, ratios),
        Checked::new("lag of a wave, degrees", "Crank, section 4.3.5", 0.15, lags),
    ]
});

#[test]
fn the_page_of_numbers_is_of_these_checks() {
    let [amplitude, lag] = YEARLY_WAVE.clone();
    checked::page("Drying through the thickness", &[step_at_surface(), surface_resistance(), amplitude, lag]);
}

/// Halving the cells divides the error by four, halving the step by two.
#[test]
fn the_error_goes_with_the_cell_squared_and_with_the_step() {
    // Crank eq. 4.53 at L = 2, Dt/l² = 0.5, from the table.
    let exact = 0.460_384_43;
    let error = |cells, steps| (step_change(2.0, 0.5, cells, steps).0 - exact).abs();
    let in_space = (error(8, 200_000) / error(16, 200_000)).log2();
    let in_time = (error(400, 50) / error(400, 100)).log2();
    assert!((in_space - 2.0).abs() < 0.1, "order in space {in_space}");
    assert!((in_time - 1.0).abs() < 0.1, "order in time {in_time}");
}

fn air(t: f64, rh: f64) -> Exposure {
    let (t, rh) = (Temperature::celsius(t), Humidity::fraction(rh));
    Exposure { celsius: t.to_celsius(), saturation: saturation_pressure(t), vapour: vapor_pressure(t, rh) }
}

#[derive(Deserialize)]
struct Oracle {
    cases: Vec<Case>,
}

#[derive(Deserialize)]
struct Case {
    name: String,
    #[serde(rename = "L")]
    thickness: f64,
    #[serde(rename = "rho0")]
    density: f64,
    u0: f64,
    #[serde(rename = "K_face")]
    face: f64,
    #[serde(rename = "K_back")]
    back: f64,
    out: Vec<Output>,
}

#[derive(Deserialize)]
struct Output {
    day: f64,
    mean: f64,
}

/// Largest difference of the mean from the stiff solver's in per cent moisture, from `from` days on.
fn deviation(case: &Case, cells: usize, steps_a_day: u32, from: f64) -> f64 {
    let panel = Panel {
        thickness: Length::m(case.thickness),
        density: case.density,
        transfer: [case.face, case.back],
    };
    let mut board = Drying::uniform(Wood, panel, cells, case.u0);
    let hours = 24.0 / f64::from(steps_a_day);
    let mut now = 0.0;
    let mut most: f64 = 0.0;
    for out in &case.out {
        while now < out.day - 1e-9 {
            // The oracle's air is held for 6 h at its middle.
            let middle = 240.0 + ((now + 1e-9) * 4.0).floor() / 4.0 + 0.125;
            let t = 20.0 + 2.5 * (TAU * (middle - 110.0) / 365.0).sin();
            let rh = 0.42 + 0.14 * (TAU * (middle - 130.0) / 365.0).sin();
            board.step(air(t, rh), hours * 3600.0);
            now += hours / 24.0;
        }
        if out.day >= from {
            most = most.max(100.0 * (board.mean() - out.mean).abs());
        }
    }
    most
}

/// The two-year cases of `drying/drying.py` (scipy): in fine steps to 0.01 % moisture, in steps of 6 h to
/// 0.03 % moisture if painted; as the program steps (12 cells, a day), to 0.13 % from the third day.
#[test]
fn two_years_in_a_room_are_those_of_a_stiff_solver() {
    let oracle: Oracle = serde_json::from_str(include_str!("drying/drying.json")).unwrap();
    assert_eq!(oracle.cases.len(), 5);
    for case in &oracle.cases {
        let fine = deviation(case, 120, 96, 1.0);
        let usual = deviation(case, 20, 4, 1.0);
        let program = deviation(case, 12, 1, 3.0);
        println!("{}: fine {fine:.5}, 6 h {usual:.4}, a day {program:.4} % moisture", case.name);
        assert!(fine < 0.01, "{}: {fine} % moisture", case.name);
        // A bare board loses most on its first day, when a step of 6 h is long.
        let bare = case.name.starts_with("bare");
        assert!(usual < if bare { 0.35 } else { 0.03 }, "{}: {usual} % moisture", case.name);
        assert!(program < if bare { 0.35 } else { 0.13 }, "{}: {program} % moisture", case.name);
    }
}

proptest! {
    /// What the board loses is what passes its faces, to rounding, whatever the air and the paint.
    #[test]
    fn no_water_is_lost(
        face in prop::option::of(0.0..30.0_f64),
        back in prop::option::of(0.0..30.0_f64),
        start in 0.02..0.28_f64,
        airs in prop::collection::vec((-5.0..35.0_f64, 0.02..0.98_f64), 1..40),
        hours in 0.5..48.0_f64,
    ) {
        let panel = Panel {
            thickness: Length::mm(19.0),
            density: 400.0,
            transfer: [transfer(2e-8, face), transfer(1e-8, back)],
        };
        let mut board = Drying::uniform(Wood, panel, 20, start);
        let mut gone = 0.0;
        for (t, rh) in airs {
            gone += board.step(air(t, rh), hours * 3600.0).iter().sum::<f64>();
            prop_assert!(board.cells().iter().all(|u| (0.0..0.35).contains(u)));
        }
        let held = 400.0 * 0.019 * (start - board.mean());
        prop_assert!((held - gone).abs() < 1e-11, "{held} against {gone}");
    }
}

/// Moisture-excluding effectiveness of finishes: Wood Handbook Table 16-3. The permeances of ours
/// are assumptions; the order of bare, latex and oil paint must come out as the table has it, and an
/// impermeable coat must exclude all.
#[test]
fn the_less_a_finish_lets_through_the_less_a_board_takes_up() {
    let table = cells(include_str!("published/moisture_excluding_effectiveness.csv"));
    let printed = |finish: &str, coats: &str| {
        let row = table.iter().find(|row| row[0].starts_with(finish) && row[1] == coats).unwrap();
        [number(&row[2]), number(&row[3]), number(&row[4])]
    };
    // The handbook's test: coated blocks of ponderosa pine in balance with 30 %, moved to 90 % at
    // 27 °C; effectiveness is 1 less the gain over the bare block's.
    let gain = |perms: Option<f64>, days: u32| {
        let k = transfer(2e-8, perms);
        let panel = Panel { thickness: Length::mm(15.9), density: 400.0, transfer: [k, k] };
        let mut board = Drying::uniform(Wood, panel, 20, 0.06);
        (0..days * 24).for_each(|_| {
            board.step(air(27.0, 0.9), 3600.0);
        });
        board.mean() - 0.06
    };
    let effectiveness =
        |perms: f64| [1, 7, 14].map(|days| 100.0 * (1.0 - gain(Some(perms), days) / gain(None, days)));
    let latex = printed("Acrylic latex flat house paint", "2");
    let oil = printed("Alkyd house primer paint", "2");
    let (ours_latex, ours_oil) = (effectiveness(5.0), effectiveness(0.8));
    println!("latex {ours_latex:.0?} printed {latex:?}; oil {ours_oil:.0?} printed {oil:?}");
    for day in 0..3 {
        assert!(ours_oil[day] > ours_latex[day] && oil[day] > latex[day]);
        assert!(day == 0 || ours_latex[day] < ours_latex[day - 1] && latex[day] < latex[day - 1]);
        assert!((ours_oil[day] - oil[day]).abs() < 35.0, "oil {}", ours_oil[day]);
        assert!((ours_latex[day] - latex[day]).abs() < 35.0, "latex {}", ours_latex[day]);
    }
    assert!(effectiveness(0.0).iter().all(|held| *held > 99.999));
}
