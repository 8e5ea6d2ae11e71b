//! What came of repairs in 200 houses, against the chance of a callback that the program gives.
//!
//! `belief/after.py` follows the houses of `belief/houses.jsonl` for three years after a repair: joints move as their
//! boards and their air have it, beads are laid unevenly, cure, age and tear by strains of scikit-fem's
//! (`belief/bead_strains.py`). The comment at its top names the sources and what is assumption. It shares with the program
//! what the catalog says of sealants and the declared rates that nobody has measured in such joints: what half of the beads
//! take beyond their class, at what stretch half of the paint cracks, and how many tears come through. So this tells whether
//! the chances follow from these, and not whether these are true.

use std::fmt::Write as _;
use std::sync::Arc;

use gapwright::assess::assess;
use gapwright::job::{Catalog, file};
use rayon::prelude::*;
use serde_json::{Value, json};

const HOUSES: &str = include_str!("belief/houses.jsonl");
const REPAIRS: &str = include_str!("belief/repairs.jsonl");
/// Warranties that are tried, years.
const TERMS: [u32; 2] = [1, 2];
const OPTIONS: [&str; 6] = ["reseal", "reseal_on_tongue", "reveal", "shadow_line", "cover_strips", "nothing"];
/// Options that lay a bead, first in [`OPTIONS`]: only they have paint that cracks over it.
const WITH_BEAD: usize = 3;

/// A chance that was given, and whether the owner called.
#[derive(Clone, Copy)]
struct Told {
    option: usize,
    years: u32,
    with_paint: bool,
    chance: f64,
    called: bool,
}

fn house(house: &str, repair: &str, catalog: &Arc<Catalog>) -> Vec<Told> {
    let [house, repair]: [Value; 2] = [house, repair].map(|line| serde_json::from_str(line).unwrap());
    TERMS.into_iter().flat_map(|years| chances(&house["job"], &repair, years, catalog)).collect()
}

fn chances(job: &Value, repair: &Value, years: u32, catalog: &Arc<Catalog>) -> Vec<Told> {
    let mut job = job.clone();
    job["plan"] = repair["plan"].clone();
    job["plan"]["warranty_years"] = json!(years);
    let read = file::read(&job.to_string()).unwrap();
    assert!(read.problems.is_empty(), "{:?}", read.problems);
    let found = assess(read.job, catalog);
    let mut told = Vec::new();
    for (option, key) in OPTIONS.into_iter().enumerate() {
        let given = found.options.iter().find(|given| given.method.key() == key);
        let Some(risk) = given.and_then(|given| given.callback.as_ref()) else { continue };
        let weeks = repair["truth"]["weeks"][key].as_array().unwrap();
        let called =
            |at: usize| weeks[at].as_f64().is_some_and(|week| week * 7.0 <= 365.0 * f64::from(years));
        for (at, chance) in [risk.chance, risk.without_paint].into_iter().enumerate() {
            told.push(Told { option, years, with_paint: at == 0, chance, called: called(at) });
        }
    }
    told
}

/// Mean chance, share of callbacks, and the Brier scores of the chances and of that share.
#[expect(clippy::cast_precision_loss, reason = "hundreds of houses")]
fn scores(own: &[Told]) -> [f64; 4] {
    let mean = |of: &dyn Fn(&Told) -> f64| own.iter().map(of).sum::<f64>() / own.len().max(1) as f64;
    let truth = |told: &Told| f64::from(u8::from(told.called));
    let rate = mean(&truth);
    [mean(&|told| told.chance), rate, mean(&|told| (told.chance - truth(told)).powi(2)), rate * (1.0 - rate)]
}

#[test]
fn repairs_of_known_outcome_are_forecast_rightly() {
    let catalog = Arc::new(Catalog { trials: 2_000, ..(**Catalog::built_in()).clone() });
    let lines: Vec<(&str, &str)> = HOUSES.lines().zip(REPAIRS.lines()).collect();
    assert_eq!(lines.len(), REPAIRS.lines().count());
    let told: Vec<Told> =
        lines.par_iter().flat_map_iter(|(one, repair)| house(one, repair, &catalog)).collect();
    let tables = [by_option(&told), reliability(&told)].join("\n");
    println!("{tables}");
    crate::tables::write_tables("houses_repaired", &tables);
    for (at, option) in OPTIONS.into_iter().enumerate().take(WITH_BEAD) {
        for (years, with_paint) in TERMS.into_iter().flat_map(|years| [(years, true), (years, false)]) {
            let own = kept(&told, at, years, with_paint);
            held_against(&own, &format!("{option}, {years} years, paint {with_paint}"));
        }
    }
}

/// What was told of an option for a warranty, with the paint's part or without.
fn kept(told: &[Told], option: usize, years: u32, with_paint: bool) -> Vec<Told> {
    let wanted = (option, years, with_paint);
    told.iter().filter(|told| (told.option, told.years, told.with_paint) == wanted).copied().collect()
}

fn by_option(told: &[Told]) -> String {
    let mut table = String::from(
        "| repair | warranty, years | mean chance given | called | Brier score | of the bare rate | without cracked paint | called | Brier score | of the bare rate |\n|---|---|---|---|---|---|---|---|---|---|\n",
    );
    for (at, option) in OPTIONS.into_iter().enumerate() {
        for years in TERMS {
            write!(table, "| `{option}` | {years} |").unwrap();
            for with_paint in [true, false] {
                let [given, rate, brier, bare] = scores(&kept(told, at, years, with_paint));
                match with_paint || at < WITH_BEAD {
                    true => {
                        write!(
                            table,
                            " {:.0}% | {:.0}% | {brier:.3} | {bare:.3} |",
                            100.0 * given,
                            100.0 * rate
                        )
                    }
                    false => write!(table, " | | | |"),
                }
                .unwrap();
            }
            table.push('\n');
        }
    }
    table
}

/// Chances of a bead are to be no worse than the bare rate, and right on average within what 200 houses tell.
fn held_against(own: &[Told], name: &str) {
    let [given, rate, brier, bare] = scores(own);
    assert!((given - rate).abs() < 0.15, "{name}: {given} given, {rate} true");
    assert!(brier < bare.max(0.02), "{name}: Brier {brier} against {bare} of the bare rate");
}

/// How often the owner called where a bead was given such a chance, with the paint's part and without.
fn reliability(told: &[Told]) -> String {
    let mut table = String::from(
        "| chance given to a bead | times | mean of it | called | without cracked paint: times | mean of it | called |\n|---|---|---|---|---|---|---|\n",
    );
    for (low, high) in [(0.0, 0.1), (0.1, 0.3), (0.3, 0.5), (0.5, 0.7), (0.7, 0.9), (0.9, 1.01)] {
        write!(table, "| {:.0} to {:.0}% |", 100.0 * low, 100.0 * f64::min(high, 1.0)).unwrap();
        for with_paint in [true, false] {
            let kept = |told: &&Told| {
                told.option < WITH_BEAD && told.with_paint == with_paint && (low..high).contains(&told.chance)
            };
            let own: Vec<Told> = told.iter().filter(kept).copied().collect();
            let [given, rate, ..] = scores(&own);
            write!(table, " {} | {:.0}% | {:.0}% |", own.len(), 100.0 * given, 100.0 * rate).unwrap();
        }
        table.push('\n');
    }
    table
}
