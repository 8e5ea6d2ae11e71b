//! Checks of the method itself: what only its insides show.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]
#![allow(clippy::cast_precision_loss, reason = "counts below 100")]

use super::class::{test_bead_strains, test_stretch};
use super::contact::Beyond;
use super::element::Element;
use super::mesh::{Extent, Fineness};
use super::model::{Model, Motion};
use super::section::{Behind, BoardEdge, Section, Tooling};
use super::slide::unit_slide;
use super::strain::{Movement, strain_with};
use super::stretch::{local_stretch, principal_stretch};
use crate::measure::{Length, Percent};

fn v_bead(fill: f64, depth_in_gaps: f64, behind: Behind) -> Section {
    let gap = Length::inches(3.0 / 32.0);
    let leg = Section::v(Length::inches(0.125));
    Section::plain(gap, leg, Percent::pct(fill), gap * depth_in_gaps, behind)
}

fn model(section: &Section, squeezed: bool, extent: Extent, fineness: Fineness) -> Model {
    let outline = section.outline();
    Model::new(outline, section.behind, Beyond::Bevel, squeezed, extent, fineness).ok().unwrap()
}

/// Places of a block of nine-node elements whose inner nodes are all shifted about.
fn distorted_block() -> (Vec<[f64; 2]>, Vec<[usize; 9]>) {
    let side = 7;
    let mut nodes = Vec::new();
    for j in 0..side {
        for i in 0..side {
            let inside = (1..side - 1).contains(&i) && (1..side - 1).contains(&j);
            let shake = |k: usize| if inside { 0.12 * ((k * 7919 % 13) as f64 / 6.5 - 1.0) } else { 0.0 };
            nodes.push([i as f64 + shake(3 * i + 5 * j), j as f64 + shake(11 * i + 2 * j + 1)]);
        }
    }
    let mut elements = Vec::new();
    for row in (0..side - 1).step_by(2) {
        for column in (0..side - 1).step_by(2) {
            elements.push(std::array::from_fn(|n| column + n % 3 + (row + n / 3) * side));
        }
    }
    (nodes, elements)
}

#[test]
fn a_uniform_stretch_is_in_balance_on_any_mesh() {
    // The patch test: Irons and Razzaque 1972 (from memory). Any uniform deformation of unit volume
    // with a uniform pressure is in equilibrium, whatever the elements' shapes.
    let (nodes, elements) = distorted_block();
    let f = [[1.5, 0.4], [0.2, (1.0 + 0.4 * 0.2) / 1.5]];
    let places: Vec<[f64; 2]> =
        nodes.iter().map(|x| [f[0][0] * x[0] + f[0][1] * x[1], f[1][0] * x[0] + f[1][1] * x[1]]).collect();
    let pressure = [0.7, 0.0, 0.0];
    let mut forces = vec![[0.0; 2]; nodes.len()];
    for element in &elements {
        let integrals = Element::new(&element.map(|node| nodes[node]));
        let out = integrals.condensed(&element.map(|node| places[node]), &pressure);
        for (i, force) in out.internal.iter().enumerate() {
            forces[element[i / 2]][i % 2] += force;
        }
    }
    for (node, force) in forces.iter().enumerate() {
        let inside = (1..6).contains(&(node % 7)) && (1..6).contains(&(node / 7));
        let size = force[0].hypot(force[1]);
        if inside {
            assert!(size < 1e-12, "node {node} is pulled by {size}");
        }
    }
    // And on the right edge they add up to P N = (F + (p - 1) cof F) N over its length of 6.
    let right: [f64; 2] =
        (0..7).map(|row| forces[7 * row + 6]).fold([0.0; 2], |sum, f| [sum[0] + f[0], sum[1] + f[1]]);
    let (cof_xx, cof_yx) = (f[1][1], -f[0][1]);
    let expected = [6.0 * (f[0][0] + (0.7 - 1.0) * cof_xx), 6.0 * (f[1][0] + (0.7 - 1.0) * cof_yx)];
    assert!((right[0] - expected[0]).abs() < 1e-12 && (right[1] - expected[1]).abs() < 1e-12);
}

#[test]
fn stiffness_is_the_slope_of_the_forces() {
    let (nodes, elements) = distorted_block();
    let element = Element::new(&elements[4].map(|node| nodes[node]));
    let mut places = elements[4].map(|node| nodes[node]);
    for (i, place) in places.iter_mut().enumerate() {
        *place = [1.2 * place[0] + 0.03 * (i as f64).sin(), place[1] / 1.2 + 0.02 * (2.0 * i as f64).cos()];
    }
    let pressure = [0.4, 0.3, -0.2];
    let out = element.condensed(&places, &pressure);
    let small = 1e-6;
    for j in 0..18 {
        let mut step = [[0.0; 2]; 9];
        step[j / 2][j % 2] = small;
        let shifted = |by: f64| {
            let moved: [[f64; 2]; 9] =
                std::array::from_fn(|n| [places[n][0] + by * step[n][0], places[n][1] + by * step[n][1]]);
            // Pressures go along as the condensed stiffness has them: by the step's share alone.
            let zero = element.pressure_step(&places, &pressure, &[[0.0; 2]; 9]);
            let whole = element.pressure_step(&places, &pressure, &step);
            let p: [f64; 3] = std::array::from_fn(|k| pressure[k] + by * (whole[k] - zero[k]));
            element.condensed(&moved, &p).internal
        };
        let (plus, minus) = (shifted(1.0), shifted(-1.0));
        for i in 0..18 {
            let slope = (plus[i] - minus[i]) / (2.0 * small);
            let scale = 1.0 + out.stiffness[i][j].abs();
            assert!(
                (slope - out.stiffness[i][j]).abs() < 1e-4 * scale,
                "{i} {j}: {slope} {}",
                out.stiffness[i][j]
            );
        }
    }
}

#[test]
fn finer_meshes_change_little() {
    let hollow = Section {
        tooling: Tooling::Concave(Percent::pct(8.0)),
        solids: Percent::pct(90.0),
        ..v_bead(60.0, 0.5, Behind::Free)
    };
    let cases = [
        (v_bead(0.0, 1.0, Behind::Free), 0.5, 0.01),
        (v_bead(50.0, 0.0, Behind::Free), 0.5, 0.01),
        (v_bead(50.0, 1.0, Behind::Free), 0.5, 0.01),
        (hollow, 0.4, 0.01),
        (v_bead(50.0, 1.0, Behind::Free), -0.25, 0.015),
        (v_bead(50.0, 0.5, Behind::Breaker), -0.3, 0.015),
        (v_bead(0.0, 1.0, Behind::Tongue), 0.2, 0.03),
    ];
    for (section, share, within) in cases {
        let path = [Movement::open(section.gap * share)];
        let solved =
            |by: f64| strain_with(&section, &path, Fineness::STANDARD.divided(by), None).unwrap().remove(0);
        let (coarse, fine) = (solved(1.0), solved(2.0));
        for (a, b) in coarse.places.iter().zip(&fine.places) {
            let off = a.stretch / b.stretch - 1.0;
            println!(
                "{:?} {share}: {:?} {:.4} {:.4} {:+.2} %",
                section.behind,
                a.place,
                a.stretch,
                b.stretch,
                100.0 * off
            );
            assert!(off.abs() < within, "{:?} by {off}", a.place);
        }
        let force = coarse.force_per_modulus.to_m() / fine.force_per_modulus.to_m() - 1.0;
        println!("force {:+.2} %", 100.0 * force);
        assert!(force.abs() < 2.0 * within, "force by {force}");
    }
}

#[test]
fn work_of_the_boards_is_the_energy_kept() {
    for (section, share) in [
        (v_bead(0.0, 1.0, Behind::Free), 0.8),
        (v_bead(50.0, 0.0, Behind::Free), -0.3),
        (v_bead(50.0, 0.5, Behind::Breaker), -0.3),
        (v_bead(50.0, 1.0, Behind::Tongue), 0.2),
    ] {
        let extent = if section.behind == Behind::Tongue { Extent::Whole } else { Extent::RightHalf };
        let mut model = model(&section, share < 0.0, extent, Fineness::STANDARD);
        let open = section.gap.to_m() * share;
        let steps = 20;
        let path: Vec<Motion> =
            (1..=steps).map(|i| Motion { open: open * f64::from(i) / f64::from(steps), lift: 0.0 }).collect();
        let states = model.follow(&path).0;
        let halves = if extent == Extent::Whole { 1.0 } else { 2.0 };
        let (mut work, mut last) = (0.0, 0.0);
        for state in &states {
            work += 0.5 * (last + state.force[0]) * open / f64::from(steps);
            last = state.force[0];
        }
        let energy = halves * model.energy(states.last().unwrap());
        println!("{:?} {share}: work {work:e} energy {energy:e}", section.behind);
        assert!((work / energy - 1.0).abs() < 0.01, "{:?}: work {work} energy {energy}", section.behind);
    }
}

#[test]
fn half_and_whole_bead_are_the_same() {
    let section = v_bead(50.0, 0.5, Behind::Free);
    let open = 0.4 * section.gap.to_m();
    let solve = |extent| {
        let mut model = model(&section, false, extent, Fineness::STANDARD);
        let state = model.follow(&[Motion { open, lift: 0.0 }]).0.remove(0);
        let corner = [model.outline.half_gap, 0.0];
        (state.force[0], local_stretch(&model, &state, corner, None))
    };
    let (half, whole) = (solve(Extent::RightHalf), solve(Extent::Whole));
    assert!((half.0 / whole.0 - 1.0).abs() < 1e-3, "{half:?} {whole:?}");
    assert!((half.1 / whole.1 - 1.0).abs() < 1e-3, "{half:?} {whole:?}");
}

#[test]
fn a_slot_that_slides_shears_evenly() {
    // Boards that slide along each other by s shear the sealant in a slot of width W everywhere by
    // s/W: the force is shear modulus x depth x s/W, the stretch that of simple shear.
    let gap = Length::mm(4.0);
    let section = Section::plain(gap, BoardEdge::Square, Percent::ZERO, Length::mm(3.0), Behind::Free);
    let slid = Movement { slide: gap * 1.2, ..Movement::default() };
    let strain = strain_with(&section, &[slid], Fineness::STANDARD, None).unwrap().remove(0);
    let expected = 0.6 + 1.36_f64.sqrt();
    for at in &strain.places {
        assert!((at.stretch - expected).abs() < 1e-6, "{:?} {}", at.place, at.stretch);
    }
    let force = strain.slide_force_per_modulus.to_mm();
    assert!((force - 1.2 * 3.0 / 3.0).abs() < 1e-9, "{force}");
    let model = model(&section, false, Extent::Whole, Fineness::STANDARD);
    assert!((unit_slide(&model).ok().unwrap().force - 3.0 / 4.0).abs() < 1e-9);
}

#[test]
fn principal_stretches_are_those_of_textbook_cases() {
    assert!((principal_stretch(&[[2.0, 0.0], [0.0, 0.5]], [0.0; 2]) - 2.0).abs() < 1e-12);
    // Simple shear by g has the largest stretch g/2 + sqrt(1 + g²/4), across or along the joint.
    let sheared = 0.5 + 1.25_f64.sqrt();
    assert!((principal_stretch(&[[1.0, 1.0], [0.0, 1.0]], [0.0; 2]) - sheared).abs() < 1e-12);
    assert!((principal_stretch(&[[1.0, 0.0], [0.0, 1.0]], [0.6, 0.8]) - sheared).abs() < 1e-12);
}

/// What is kept of the test bead is what the solver gives.
#[test]
fn the_test_bead_is_strained_as_is_kept() {
    for openings in [[0.05, 0.125, 0.25, 0.5, 1.0, 1.5], [-0.05, -0.125, -0.25, -0.3, -0.35, -0.5]] {
        for (opening, strain) in openings.iter().zip(test_bead_strains(&openings).unwrap()) {
            let (kept, solved) = (test_stretch(*opening), strain.largest.stretch);
            assert!((kept / solved - 1.0).abs() < 1e-3, "{opening}: {kept} against {solved}");
        }
    }
}

/// Meshes with the time their solve takes, for `tests/numbers/bead/speed.py`, which puts scikit-fem to the same
/// meshes in the same run.
#[test]
#[ignore = "measures time; run by a script"]
fn meshes_and_times_for_the_peer() {
    for (name, section, share) in [
        ("slot", v_bead(0.0, 1.0, Behind::Free), 0.5),
        ("half of the V", v_bead(50.0, 0.0, Behind::Free), 0.5),
        ("half of the V and the slot", v_bead(50.0, 1.0, Behind::Free), 0.5),
        ("half of the V, closing", v_bead(50.0, 0.0, Behind::Free), -0.25),
    ] {
        let path = [Movement::open(section.gap * share)];
        let solve = || strain_with(&section, &path, Fineness::STANDARD, None).unwrap().remove(0);
        let found = solve();
        let times = (0..20).map(|_| {
            let start = std::time::Instant::now();
            solve();
            start.elapsed().as_secs_f64()
        });
        let mesh = model(&section, share < 0.0, Extent::RightHalf, Fineness::STANDARD).mesh;
        let told = serde_json::json!({
            "name": name,
            "nodes_m": mesh.nodes,
            "elements": mesh.elements,
            "right": mesh.right().collect::<Vec<_>>(),
            "open_m": path[0].open.to_m(),
            "force_per_modulus_m": found.force_per_modulus.to_m(),
            "seconds": times.fold(f64::INFINITY, f64::min),
        });
        println!("BEAD {told}");
    }
}
