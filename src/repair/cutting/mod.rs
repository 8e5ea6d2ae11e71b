//! A carpenter's cutting list: which boards to buy, and what to cut each into.

mod relaxation;
mod rounding;

use relaxation::{Board, Item};
use rounding::Rounding;

/// A length of board that can be bought, any number of times.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StockLength {
    /// Length, metres.
    pub length: f64,
    /// Price of one, cents.
    pub price: i64,
}

/// What is lost besides offcuts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CuttingRules {
    /// Width lost with each cut, metres.
    pub kerf: f64,
    /// Length cut off the two ends of every board together, metres.
    pub end_trim: f64,
    /// Share of the length of every board lost to defects, 0 to 1.
    pub defects: f64,
}

/// Boards cut alike.
#[derive(Debug, Clone, PartialEq)]
pub struct CutPattern {
    /// Which stock length, by its place in the list.
    pub stock: usize,
    /// Lengths, metres, and how many of each are cut from one board.
    pub pieces: Vec<(f64, usize)>,
    /// How many boards are cut so.
    pub times: usize,
    /// What is left of the usable length of each, metres.
    pub offcut: f64,
}

/// What to buy and how to cut it.
#[derive(Debug, Clone, PartialEq)]
pub struct CuttingList {
    /// Patterns.
    pub patterns: Vec<CutPattern>,
    /// Number of each stock length to buy.
    pub buy: Vec<usize>,
    /// Price of all, cents.
    pub price: i64,
    /// No list is cheaper than this, cents.
    pub bound: f64,
    /// Share of bought length that becomes no piece.
    pub waste: f64,
}

/// Why there is no list.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CannotCut {
    /// No stock.
    NoStock,
    /// Too long.
    TooLong {
        /// Longest piece, metres.
        piece: f64,
        /// Longest usable length, metres.
        usable: f64,
    },
}

/// The list.
pub fn cutting_list(
    pieces: &[(f64, usize)],
    stock: &[StockLength],
    rules: &CuttingRules,
) -> Result<CuttingList, CannotCut> {
    let micro = 1e6;
    let kerf = (rules.kerf * micro - 1e-3).ceil();
    let mut lengths: Vec<(f64, usize)> = pieces
        .iter()
        .filter(|(l, n)| l.is_finite() && *l > 0.0 && *n > 0)
        .map(|&(l, n)| ((l * 1e3 - 1e-6).ceil().max(1.0), n))
        .collect();
    lengths.sort_by(|a, b| b.0.total_cmp(&a.0));
    lengths.dedup_by(|a, b| {
        let same = a.0 == b.0;
        if same {
            b.1 += a.1;
        }
        same
    });
    let items: Vec<Item> =
        lengths.iter().map(|&(l, n)| Item { width: l * 1e3 + kerf, wanted: n as f64 }).collect();
    let usable =
        |s: &StockLength| ((s.length * (1.0 - rules.defects) - rules.end_trim) * micro + 1e-3).floor();
    let boards: Vec<Board> =
        stock.iter().map(|s| Board { room: usable(s) + kerf, price: s.price as f64 }).collect();
    if boards.is_empty() {
        return Err(CannotCut::NoStock);
    }
    let gcd = stock.iter().fold(0, |mut a, s| {
        let mut b = s.price;
        while b != 0 {
            (a, b) = (b, a % b);
        }
        a
    });
    let r = Rounding::run(&items, &boards, gcd as f64);
    let mut buy = vec![0; stock.len()];
    let mut patterns = vec![];
    for cut in &r.cuts {
        buy[cut.board] += cut.times as usize;
        let used: f64 = cut.pieces.iter().map(|&(i, n)| n * items[i].width).sum();
        patterns.push(CutPattern {
            stock: cut.board,
            pieces: cut.pieces.iter().map(|&(i, n)| (lengths[i].0 / 1e3, n as usize)).collect(),
            times: cut.times as usize,
            offcut: ((boards[cut.board].room - kerf - used) / 1e6).max(0.0),
        });
    }
    Ok(CuttingList { patterns, buy, price: r.price.0 as i64, bound: r.bound, waste: 0.0 })
}
