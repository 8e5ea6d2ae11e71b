//! The bead's strain against scikit-fem: other elements, another form of the material, another mesh.
//! `tests/numbers/bead/oracle.py` makes `tests/numbers/bead/oracle.json`.

use gapwright::bead::{Behind, BoardEdge, Movement, Section, Tooling, strain};
use gapwright::measure::{Length, Percent};
use serde_json::Value;

fn section(case: &Value) -> (Section, Movement) {
    let number = |name: &str| case[name].as_f64().unwrap();
    let behind = match case["behind"].as_str().unwrap() {
        "free" => Behind::Free,
        "breaker" => Behind::Breaker,
        _ => Behind::Tongue,
    };
    let edge = if number("leg") > 0.0 { Section::v(Length::mm(number("leg"))) } else { BoardEdge::Square };
    let gap = Length::mm(number("gap"));
    let plain =
        Section::plain(gap, edge, Percent::pct(100.0 * number("fill")), Length::mm(number("depth")), behind);
    let tooling = Tooling::Concave(Percent::pct(100.0 * number("sag")));
    (Section { tooling, ..plain }, Movement::open(gap * number("open")))
}

#[test]
fn beads_strain_as_in_scikit_fem() {
    let text = include_str!("oracle.json");
    let cases: Vec<Value> = serde_json::from_str(text).unwrap();
    assert!(cases.len() >= 6);
    for case in &cases {
        let (section, movement) = section(&case["section"]);
        let name = case["section"]["name"].as_str().unwrap();
        let start = std::time::Instant::now();
        let ours = strain(&section, movement).unwrap();
        let took = start.elapsed().as_secs_f64();
        let theirs = case["coarse_seconds"].as_f64().unwrap_or(f64::NAN);
        println!(
            "{name}: {:.1} ms, scikit-fem {:.0} ms on a mesh as coarse, {:.0} times",
            1e3 * took,
            1e3 * theirs,
            theirs / took
        );
        for at in &ours.places {
            let place = serde_json::to_value(at.place).unwrap();
            let Some(other) = case["places"][place.as_str().unwrap()].as_f64() else { continue };
            let off = at.stretch / other - 1.0;
            println!("  {:?} {:.4} {other:.4} {:+.2} %", at.place, at.stretch, 100.0 * off);
            assert!(off.abs() < 0.02, "{name}, {:?}: {} against {other}", at.place, at.stretch);
        }
        let force = ours.force_per_modulus.to_mm() / case["force_per_modulus_mm"].as_f64().unwrap() - 1.0;
        println!("  force {:+.2} %", 100.0 * force);
        assert!(force.abs() < 0.02, "{name}, force by {force}");
        let line = ours.face_middle / case["face_middle_line"].as_f64().unwrap() - 1.0;
        println!("  face line {:+.2} %", 100.0 * line);
        assert!(line.abs() < 0.02, "{name}, face by {line}");
    }
}
