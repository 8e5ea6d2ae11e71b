//! How long a bead takes: `cargo test --release --test numbers bead::speed -- --ignored --nocapture`.

use std::time::{Duration, Instant};

use gapwright::bead::{Behind, BoardEdge, Movement, Section, Table, strain};
use gapwright::measure::{Length, Percent};

fn fastest(times: u32, mut work: impl FnMut()) -> Duration {
    let once = |_| {
        let start = Instant::now();
        work();
        start.elapsed()
    };
    (0..times).map(once).min().unwrap()
}

#[test]
#[ignore = "measures time, for a machine that does nothing else"]
fn beads_are_strained_at_once() {
    let (gap, v) = (Length::inches(3.0 / 32.0), Section::v(Length::inches(0.125)));
    let bead =
        |fill: f64, depth: f64, behind| Section::plain(gap, v, Percent::pct(fill), gap * depth, behind);
    let test_bead = Section { edge: BoardEdge::Square, ..gapwright::bead::test_bead() };
    for (name, section, share) in [
        ("slot", bead(0.0, 1.0, Behind::Free), 0.5),
        ("half_v", bead(50.0, 0.0, Behind::Free), 0.5),
        ("half_v_slot", bead(50.0, 1.0, Behind::Free), 0.5),
        ("test_bead", test_bead, 0.25),
        ("half_v_closing", bead(50.0, 0.0, Behind::Free), -0.25),
        ("pressed", bead(50.0, 1.0, Behind::Breaker), -0.25),
        ("pressed to half", bead(50.0, 1.0, Behind::Breaker), -0.5),
        ("tongue", bead(50.0, 1.0, Behind::Tongue), 0.25),
    ] {
        let movement = Movement::open(section.gap * share);
        let solve = fastest(10, || {
            strain(&section, movement).unwrap();
        });
        let read = Table::shipped().strain(&section, movement).map(|_| {
            fastest(50, || {
                Table::shipped().strain(&section, movement).unwrap();
            })
        });
        println!("{name}: {:.1} ms; from the table {read:?}", 1e3 * solve.as_secs_f64());
        assert!(solve < Duration::from_millis(250));
    }
}
