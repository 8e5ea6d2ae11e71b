//! Sections, their limits, and the classes held against them.

use gapwright::bead::{
    Behind, BoardEdge, CLASSES, Movement, Place, Reason, Section, Severity, Tooling, class_uses, strain,
    test_stretch,
};
use gapwright::measure::{Angle, Length, Percent};

fn v_bead(gap_mm: f64, fill: f64, depth_mm: f64, behind: Behind) -> Section {
    let v = Section::v(Length::inches(0.125));
    Section::plain(Length::mm(gap_mm), v, Percent::pct(fill), Length::mm(depth_mm), behind)
}

fn area_mm2(section: &Section) -> f64 {
    1e6 * section.cured_area().to_m2()
}

#[test]
fn areas_are_those_of_plain_geometry() {
    // Slot 2 x 3 mm; a V filled to half of its 3.175 mm: a trapezoid between 2 and 5.175 mm.
    assert!((area_mm2(&v_bead(2.0, 0.0, 3.0, Behind::Free)) - 6.0).abs() < 1e-9);
    let half = v_bead(2.0, 50.0, 0.0, Behind::Free);
    assert!((area_mm2(&half) - 0.5 * (2.0 + 5.175) * 1.5875).abs() < 1e-9);
    // Its parabola of 10 % of the face's width takes two thirds of width times sag.
    let hollow = Section { tooling: Tooling::Concave(Percent::pct(10.0)), ..half };
    assert!((area_mm2(&half) - area_mm2(&hollow) - 2.0 / 3.0 * 5.175 * 0.5175).abs() < 1e-9);
    // A flat bevel of 30 degrees is less deep than wide.
    let flat = Section {
        edge: BoardEdge::V { leg: Length::mm(3.0), angle: Angle::degrees(30.0) },
        fill: Percent::pct(100.0),
        ..half
    };
    assert!((area_mm2(&flat) - 0.5 * (2.0 + 8.0) * 3.0 * 30.0_f64.to_radians().tan()).abs() < 1e-9);
}

#[test]
fn cure_takes_its_share_of_the_volume() {
    for behind in [Behind::Free, Behind::Tongue] {
        let wet = v_bead(2.4, 60.0, 1.5, behind);
        let cured = Section { solids: Percent::pct(75.0), ..wet };
        assert!((area_mm2(&cured) / area_mm2(&wet) - 0.75).abs() < 1e-9);
        assert_eq!(cured.wet_area(), wet.cured_area());
        assert!(cured.middle_thickness() < wet.middle_thickness());
    }
}

#[test]
fn reasons_are_found() {
    let reasons = |section: &Section, severity: Severity| -> Vec<Reason> {
        let all = section.findings().into_iter();
        all.filter(|finding| finding.severity == severity).map(|finding| finding.reason).collect()
    };
    let invalid = |section: &Section| reasons(section, Severity::Invalid);
    assert_eq!(invalid(&v_bead(0.0, 50.0, 0.0, Behind::Free)), [Reason::NoGap]);
    assert_eq!(invalid(&v_bead(2.0, 0.0, 0.0, Behind::Free)), [Reason::NoBead]);
    assert_eq!(invalid(&v_bead(2.0, 130.0, 0.0, Behind::Free)), [Reason::OutOfRange]);
    let thin = Section { solids: Percent::pct(30.0), ..v_bead(2.0, 15.0, 0.0, Behind::Free) };
    assert!(invalid(&thin).contains(&Reason::SinksThrough));
    let impractical = |section: &Section| reasons(section, Severity::Impractical);
    assert_eq!(impractical(&v_bead(2.4, 50.0, 1.0, Behind::Breaker)), [Reason::TapeNeedsWidth]);
    assert_eq!(impractical(&v_bead(3.2, 50.0, 1.0, Behind::Breaker)), []);
    assert_eq!(impractical(&v_bead(3.2, 50.0, 2.0, Behind::Rod)), [Reason::RodNeedsWidth]);
    assert_eq!(impractical(&v_bead(6.35, 50.0, 4.0, Behind::Rod)), []);
    let advice = |section: &Section| reasons(section, Severity::Advice);
    assert!(advice(&v_bead(2.4, 50.0, 1.0, Behind::Tongue)).contains(&Reason::ThirdSide));
    assert!(advice(&v_bead(2.4, 100.0, 1.0, Behind::Free)).contains(&Reason::HidesV));
    assert_eq!(advice(&v_bead(6.4, 90.0, 6.4, Behind::Free)), []);
}

#[test]
fn the_test_bead_uses_all_of_its_class() {
    let bead = gapwright::bead::test_bead();
    for class in CLASSES.iter().filter(|class| class.id.starts_with("c920")) {
        let open = bead.gap * class.open.to_fraction();
        let solved = gapwright::bead::test_bead_strains(&[class.open.to_fraction()]).unwrap().remove(0);
        let uses = class_uses(open, solved.largest.stretch);
        let own = uses.iter().find(|used| used.class == *class).unwrap();
        println!(
            "{}: opens to {:.3}, closes to {:?}",
            class.id,
            own.limit,
            test_stretch(-class.close.to_fraction())
        );
        assert!((own.used - 1.0).abs() < 0.01, "{} {}", class.id, own.used);
    }
    // A higher class stands more, pulled or squeezed.
    for openings in [[0.075, 0.125, 0.25, 0.5, 1.0], [-0.075, -0.125, -0.25, -0.35, -0.5]] {
        let limits = openings.map(test_stretch);
        assert!(limits.is_sorted_by(|low, high| low < high), "{limits:?}");
    }
}

#[test]
fn a_bead_across_the_v_asks_less_than_one_in_the_slot_and_a_tongue_most() {
    let open = Movement::open(Length::mm(0.6));
    let largest = |section: &Section| strain(section, open).unwrap().largest;
    let across = largest(&v_bead(2.4, 50.0, 0.0, Behind::Free));
    let slot = largest(&v_bead(2.4, 0.0, 2.4, Behind::Free));
    let tongue = largest(&v_bead(2.4, 50.0, 2.4, Behind::Tongue));
    assert!(across.stretch < slot.stretch && slot.stretch < tongue.stretch);
    assert_eq!(tongue.place, Place::TongueCorner);
}

#[test]
fn sliding_and_lifting_only_add() {
    let bead = v_bead(2.4, 50.0, 1.0, Behind::Free);
    let open = Movement::open(Length::mm(0.6));
    let plain = strain(&bead, open).unwrap();
    let slid = strain(&bead, Movement { slide: Length::mm(1.0), ..open }).unwrap();
    let lifted = strain(&bead, Movement { lift: Length::mm(0.8), ..open }).unwrap();
    assert!(slid.largest.stretch > plain.largest.stretch && lifted.largest.stretch > plain.largest.stretch);
    assert!((slid.force_per_modulus.to_mm() - plain.force_per_modulus.to_mm()).abs() < 1e-9);
    assert!(slid.slide_force_per_modulus > Length::ZERO);
}

/// What the command prints for these arguments, and whether it went well.
fn bead(arguments: &[&str]) -> (String, bool) {
    let program = env!("CARGO_BIN_EXE_gapwright");
    let output = std::process::Command::new(program).arg("bead").args(arguments).output().unwrap();
    (String::from_utf8(output.stdout).unwrap(), output.status.success())
}

#[test]
fn the_command_prints_the_bead_that_is_asked_about() {
    let typed = ["--gap", "3/32in", "--v", "1/8in", "--fill", "50", "--depth", "0", "--behind", "free"];
    let (printed, good) = bead(&[&typed[..], &["--open", "1.2mm", "--json"]].concat());
    let report: serde_json::Value = serde_json::from_str(&printed).unwrap();
    let largest = report["strain"]["largest"]["stretch"].as_f64().unwrap();
    let section = v_bead(Length::inches(3.0 / 32.0).to_mm(), 50.0, 0.0, Behind::Free);
    let solved = strain(&section, Movement::open(Length::mm(1.2))).unwrap();
    assert!(good && (largest - solved.largest.stretch).abs() < 1e-9, "{largest}");
    assert_eq!(report["classes"].as_array().unwrap().len(), CLASSES.len());
    assert!(!bead(&["--gap", "wide"]).1);
    let (printed, good) = bead(&["--gap", "1/8", "--close", "1/32", "--fill", "0"]);
    assert!(!good && printed.contains("error invalid_section") && printed.contains("no_bead"), "{printed}");
}
