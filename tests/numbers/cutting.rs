//! Cutting lists against exact optima and lower bounds from an independent solver.
//!
//! `cutting/cutting.py` says how `cutting/cutting.json` was computed.

use gapwright::repair::{CuttingRules, StockLength, cutting_list};
use serde::Deserialize;

/// How far a price may be above the optimum or the bound, as a share of it.
const ALLOWED: f64 = 0.02;
/// At least this many small sets must cost exactly the optimum.
const EXACT: usize = 28;

#[derive(Deserialize)]
struct Reference {
    small: Vec<Case>,
    large: Vec<Case>,
}

#[derive(Deserialize)]
struct Case {
    name: String,
    pieces: Vec<(f64, usize)>,
    stock: Vec<(f64, i64)>,
    kerf: f64,
    end_trim: f64,
    defects: f64,
    /// Exact optimum of a small set, lower bound of a large one; cents.
    #[serde(alias = "optimum", alias = "bound")]
    least: f64,
}

impl Case {
    /// By how much the price, and the bound, are above the least price there can be, as shares of it.
    fn gaps(&self) -> (f64, f64) {
        let stock = self.stock.iter().map(|&(length, price)| StockLength { length, price });
        let rules = CuttingRules { kerf: self.kerf, end_trim: self.end_trim, defects: self.defects };
        let list = cutting_list(&self.pieces, &stock.collect::<Vec<_>>(), &rules).unwrap();
        let price = f64::from(i32::try_from(list.price).unwrap());
        let (price, bound) = (price / self.least - 1.0, list.bound / self.least - 1.0);
        println!("{}: price {:+.3} %, bound {:+.3} %", self.name, 100.0 * price, 100.0 * bound);
        assert!(price < ALLOWED, "{}", self.name);
        (price, bound)
    }
}

fn reference() -> Reference {
    serde_json::from_str(include_str!("cutting/cutting.json")).unwrap()
}

#[test]
fn small_sets_cost_the_optimum() {
    let cases = reference().small;
    let mut equal = 0;
    for case in &cases {
        let (price, bound) = case.gaps();
        assert!(price > -1e-9 && bound < 1e-9, "{}: below the optimum, or its bound above", case.name);
        equal += usize::from(price < 1e-9);
    }
    println!("{equal} of {} have the optimum", cases.len());
    assert!(equal >= EXACT);
}

#[test]
fn large_sets_cost_little_more_than_the_bound() {
    for case in &reference().large {
        let (price, _) = case.gaps();
        assert!(price > -1e-9, "{}: below the bound", case.name);
    }
}
