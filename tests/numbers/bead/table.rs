//! The table of beads: that it is what the solver gives, and how far it may be trusted in between.

use gapwright::bead::{Behind, Movement, QuickStrain, Section, StrainError, Table, Tooling, strain};
use gapwright::measure::{Length, Percent};
use rand::{RngExt as _, SeedableRng as _};
use rand_xoshiro::Xoshiro256PlusPlus;

/// How many are tried: more with `GAPWRIGHT_BEADS`.
fn trials(usual: usize) -> usize {
    std::env::var("GAPWRIGHT_BEADS").ok().and_then(|count| count.parse().ok()).unwrap_or(usual)
}

#[test]
fn points_of_the_table_are_solved_anew() {
    let mut random = Xoshiro256PlusPlus::seed_from_u64(7);
    for _ in 0..trials(24) {
        let at = random.random_range(0..Table::sections());
        let off = Table::shipped().difference_at(at);
        assert!(off.is_none_or(|off| off < 0.01), "section {at} of the table is off by {off:?}");
    }
}

/// A bead and movement at random, within the table.
fn any_bead(random: &mut Xoshiro256PlusPlus, behind: Behind, closing: bool) -> (Section, Movement) {
    let leg = Length::inches(random.random_range(0.0625..0.25));
    let gap = leg * random.random_range(0.15_f64..2.0);
    let fill = Percent::pct(random.random_range(20.0..100.0));
    let depth = gap * random.random_range(0.0_f64..2.0);
    let open = match behind {
        _ if closing => gap * -random.random_range(0.02..0.5),
        Behind::Tongue => Length::mm(random.random_range(0.02..1.2)),
        _ => (gap + leg * fill.to_fraction()) * random.random_range(0.01..0.7),
    };
    (Section::plain(gap, Section::v(leg), fill, depth, behind), Movement::open(open))
}

/// By how much the table's largest stretch and force differ from those solved.
fn differences(section: &Section, movement: Movement, quick: &QuickStrain) -> Option<[f64; 2]> {
    match strain(section, movement) {
        Ok(solved) => Some([
            (quick.largest / solved.largest.stretch - 1.0).abs(),
            (quick.force_per_modulus.to_m() / solved.force_per_modulus.to_m() - 1.0).abs(),
        ]),
        Err(StrainError::NoEquilibrium { .. }) => None,
        Err(error) => panic!("{error:?}"),
    }
}

/// The value that half, and 95 of 100, stay under, in percent.
fn half_and_most(mut all: Vec<f64>) -> [f64; 2] {
    all.sort_by(f64::total_cmp);
    [50, 95].map(|share| 100.0 * all[(all.len() - 1) * share / 100])
}

#[test]
fn between_its_points_the_table_is_close() {
    let mut random = Xoshiro256PlusPlus::seed_from_u64(11);
    for (behind, closing) in
        [(Behind::Free, false), (Behind::Tongue, false), (Behind::Free, true), (Behind::Breaker, true)]
    {
        let (mut stretches, mut forces) = (Vec::new(), Vec::new());
        let (mut unread, mut lost) = (0, 0);
        while stretches.len() < trials(60) {
            let (section, movement) = any_bead(&mut random, behind, closing);
            let Some(quick) = Table::shipped().strain(&section, movement) else {
                unread += 1;
                continue;
            };
            let Some([stretch, force]) = differences(&section, movement, &quick) else {
                lost += 1;
                continue;
            };
            if stretch > 0.06 {
                println!("{:.1} %: {section:?} {movement:?}", 100.0 * stretch);
            }
            stretches.push(stretch);
            forces.push(force);
        }
        let worst = 100.0 * stretches.iter().copied().fold(0.0, f64::max);
        let (stretch, force) = (half_and_most(stretches), half_and_most(forces));
        println!(
            "{behind:?}, closing {closing}: stretch {stretch:.2?} %, at worst {worst:.2} %, force {force:.2?} %; \
             {unread} not in the table, {lost} without equilibrium"
        );
        assert!(stretch[0] < 1.2 && stretch[1] < 6.0 && worst < 20.0);
        assert!(force[0] < 2.0 && force[1] < 10.0);
    }
}

/// Beads tooled hollow, and sunk as they cure.
#[test]
fn hollow_beads_are_close_too() {
    let mut random = Xoshiro256PlusPlus::seed_from_u64(13);
    let (mut stretches, mut unread) = (Vec::new(), 0);
    while stretches.len() < trials(60) {
        let (behind, closing) =
            [(Behind::Free, false), (Behind::Free, true), (Behind::Tongue, false)][random.random_range(0..3)];
        let (flush, movement) = any_bead(&mut random, behind, closing);
        let tooling = match random.random_bool(0.5) {
            true => Tooling::Concave(Percent::pct(random.random_range(1.0..8.0))),
            false => Tooling::Flush,
        };
        let solids = Percent::pct(random.random_range(85.0..100.0));
        let section = Section { tooling, solids, ..flush };
        let Some(quick) = Table::shipped().strain(&section, movement) else {
            unread += 1;
            continue;
        };
        if let Some([stretch, _]) = differences(&section, movement, &quick) {
            if stretch > 0.06 {
                println!("{:.1} %: {section:?} {movement:?}", 100.0 * stretch);
            }
            stretches.push(stretch);
        }
    }
    let worst = 100.0 * stretches.iter().copied().fold(0.0, f64::max);
    let stretch = half_and_most(stretches);
    println!("hollow: stretch {stretch:.2?} %, at worst {worst:.2} %; {unread} not in the table");
    assert!(stretch[0] < 2.0 && stretch[1] < 8.0 && worst < 20.0);
}

/// After a change of the solver: `cargo test --release --test numbers bead::table -- --ignored`.
#[test]
#[ignore = "writes the table anew, which takes minutes"]
fn the_table_is_made_anew() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/assets/bead_table.bin");
    std::fs::write(path, Table::build(|| {}).to_bytes()).unwrap();
}
