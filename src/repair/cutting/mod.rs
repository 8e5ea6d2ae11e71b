//! A carpenter's cutting list: which boards to buy, and what to cut each into.
//!
//! One-dimensional cutting stock with several stock lengths, any number of each, at the lowest total
//! price; of lists at the same price that it comes across, the one that buys the least length.
//!
//! * Pieces are cut to whole millimeters, a length in between to the next longer. Sums are exact, in
//!   whole micrometers, the kerf rounded up and usable lengths down.
//! * The usable length of a board is its length × (1 − defects) − end trim. Pieces fit it if their
//!   lengths and a kerf between each two do: the last cut may fall on the end.
//! * Method: column generation (`master`, priced by `knapsack`), rounded to whole boards (`solver`),
//!   and a local search that recuts the worst boards, on small jobs often exhaustive (`local_search`,
//!   `bin_completion`). With more than 240 lengths, similar ones are planned as one (`groups`).
//! * The price is mostly within 1 % of the bound. With fewer than about eight boards the bound can be
//!   further below what is possible.
//! * Work is counted and ends at fixed counts; nothing is random or timed. The same input gives the
//!   same list, in about a millisecond for a room and mostly less than twenty for thousands of pieces.

mod bin_completion;
mod groups;
mod knapsack;
mod local_search;
mod master;
mod problem;
mod solver;
#[cfg(test)]
mod tests;

use std::cmp::Ordering;

use groups::{Groups, Lengths, whole_millimeters};
use problem::{Board, cheapest_board, to_count, to_number};
use solver::Solver;

/// A length of board that can be bought, any number of times.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StockLength {
    /// Length, meters.
    pub length: f64,
    /// Price of one, cents. Boards without a price above zero, or without a length, are not bought.
    pub price: i64,
}

/// What is lost besides offcuts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CuttingRules {
    /// Width lost with each cut, meters. Like the other two, counts as 0 if negative or not a number.
    pub kerf: f64,
    /// Length cut off the two ends of every board together, meters.
    pub end_trim: f64,
    /// Share of the length of every board lost to defects, 0 to 1. It only shortens the usable length.
    pub defects: f64,
}

/// Boards cut alike.
#[derive(Debug, Clone, PartialEq)]
pub struct CutPattern {
    /// Index of the stock length in the list given.
    pub stock: usize,
    /// Lengths in meters, of whole millimeters, longest first, and how many of each a board gives.
    pub pieces: Vec<(f64, usize)>,
    /// How many boards are cut this way.
    pub times: usize,
    /// What is left of the usable length of each board after the last cut, meters.
    pub offcut: f64,
}

/// What to buy and how to cut it.
#[derive(Debug, Clone, PartialEq)]
pub struct CuttingList {
    /// How to cut the boards.
    pub patterns: Vec<CutPattern>,
    /// How many of each stock length to buy.
    pub buy: Vec<usize>,
    /// Price of all boards, cents.
    pub price: i64,
    /// No list costs less, cents. Equal to the price where the list is known to be the cheapest.
    pub bound: f64,
    /// Share of the length bought that does not become pieces, 0 to 1.
    pub waste: f64,
}

impl CuttingList {
    /// The share of its price that a cheaper list could save at most, 0 to 1.
    #[expect(clippy::cast_precision_loss, reason = "cents of a job")]
    pub fn could_save(&self) -> f64 {
        (1.0 - self.bound / (self.price as f64).max(1.0)).max(0.0)
    }
}

/// Why there is no cutting list.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
pub enum CannotCut {
    /// No stock has both a length and a price.
    #[error("no stock has a length and a price")]
    NoStock,
    /// A piece is longer than the usable length of every board.
    #[error("a {piece:.3} m piece is longer than the {usable:.3} m usable of the longest board")]
    TooLong {
        /// The longest piece, meters.
        piece: f64,
        /// The longest usable length, meters.
        usable: f64,
    },
}

/// Micrometers in a meter.
const MICRO: f64 = 1e6;
/// Longer lengths, in meters, count as this.
const LONGEST: f64 = 1e6;

/// The stock that can be bought.
struct Stock {
    boards: Vec<Board>,
    /// Index of each board in the list given.
    indices: Vec<usize>,
    /// Micrometers.
    kerf: f64,
    /// The greatest amount of which all prices are whole multiples, cents.
    price_step: f64,
}

impl Stock {
    fn new(stock: &[StockLength], rules: &CuttingRules) -> Self {
        let clean = |meters: f64| if meters.is_finite() { meters.clamp(0.0, LONGEST) } else { 0.0 };
        let kerf = (clean(rules.kerf) * MICRO - 1e-3).ceil().max(0.0);
        let sound = 1.0 - clean(rules.defects).min(1.0);
        let (mut boards, mut indices, mut price_step) = (Vec::new(), Vec::new(), 0);
        for (index, &StockLength { length, price }) in stock.iter().enumerate() {
            if clean(length) > 0.0 && price > 0 {
                let usable = ((clean(length) * sound - clean(rules.end_trim)) * MICRO + 1e-3).floor();
                boards.push(Board { capacity: usable.max(0.0) + kerf, price: from_cents(price) });
                indices.push(index);
                price_step = greatest_common_divisor(price_step, price);
            }
        }
        Self { boards, indices, kerf, price_step: from_cents(price_step) }
    }
}

fn greatest_common_divisor(a: i64, b: i64) -> i64 {
    if b == 0 { a } else { greatest_common_divisor(b, a % b) }
}

/// Finds a cheap cutting list for pieces, each a length in meters and how many are wanted.
///
/// Pieces whose length is not a number above zero, or that are wanted zero times, are ignored; without
/// any others the list is empty. Exact up to 2^53 pieces and cents.
///
/// # Errors
/// If there is no stock, or a piece fits none of it.
pub fn cutting_list(
    pieces: &[(f64, usize)],
    stock: &[StockLength],
    rules: &CuttingRules,
) -> Result<CuttingList, CannotCut> {
    let lengths = whole_millimeters(pieces);
    let Some(&(longest, _)) = lengths.first() else { return Ok(empty(stock)) };
    let available = Stock::new(stock, rules);
    let Stock { boards, kerf, price_step, .. } = &available;
    let usable = boards.iter().map(|board| board.capacity - kerf).max_by(f64::total_cmp);
    let usable = usable.ok_or(CannotCut::NoStock)?;
    if longest * 1e3 > usable {
        return Err(CannotCut::TooLong { piece: longest / 1e3, usable: usable / MICRO });
    }
    let mut groups = Groups::new(&lengths, *kerf);
    let items = groups.as_longest();
    let solved = Solver::solve(&items, boards, *price_step);
    let bound = match groups.as_shortest() {
        Some(items) => Solver::lower_bound(&items, boards, *price_step),
        None => solved.bound,
    };
    let mut list = empty(stock);
    for run in &solved.runs {
        for (pieces, times) in groups.take(&run.pattern, run.times) {
            list.patterns.push(cut_pattern(&available, pieces, times));
        }
    }
    merge_and_total(&mut list, stock, bound);
    Ok(list)
}

/// A list that buys nothing.
fn empty(stock: &[StockLength]) -> CuttingList {
    CuttingList { patterns: vec![], buy: vec![0; stock.len()], price: 0, bound: 0.0, waste: 0.0 }
}

/// The cheapest board for pieces in millimeters, and what is left of it.
fn cut_pattern(stock: &Stock, pieces: Lengths, times: f64) -> CutPattern {
    let width = |&(length, count): &(f64, f64)| (length * 1e3 + stock.kerf) * count;
    let width: f64 = pieces.iter().map(width).sum();
    let board = cheapest_board(&stock.boards, width).unwrap_or_default();
    CutPattern {
        stock: stock.indices[board],
        pieces: pieces.into_iter().map(|(length, count)| (length / 1e3, to_count(count))).collect(),
        times: to_count(times),
        offcut: (stock.boards[board].capacity - stock.kerf - width).max(0.0) / MICRO,
    }
}

/// Merges equal patterns and adds up the list.
fn merge_and_total(list: &mut CuttingList, stock: &[StockLength], bound: f64) {
    let longest_first = |a: &CutPattern, b: &CutPattern| {
        a.stock.cmp(&b.stock).then(b.pieces.partial_cmp(&a.pieces).unwrap_or(Ordering::Equal))
    };
    list.patterns.sort_by(longest_first);
    list.patterns.dedup_by(|next, pattern| {
        let same = next.stock == pattern.stock && next.pieces == pattern.pieces;
        pattern.times += if same { next.times } else { 0 };
        same
    });
    let (mut bought, mut used, mut price) = (0.0, 0.0, 0.0);
    for pattern in &list.patterns {
        let times = to_number(pattern.times);
        let pieces = pattern.pieces.iter().map(|&(length, count)| length * to_number(count));
        list.buy[pattern.stock] += pattern.times;
        used += times * pieces.sum::<f64>();
        bought += times * stock[pattern.stock].length.min(LONGEST);
        price += times * from_cents(stock[pattern.stock].price);
    }
    list.price = to_cents(price);
    list.bound = bound.min(price);
    list.waste = (1.0 - used / bought).clamp(0.0, 1.0);
}

#[expect(clippy::cast_precision_loss, reason = "exact up to 2^53 cents")]
fn from_cents(cents: i64) -> f64 {
    cents as f64
}

#[expect(clippy::cast_possible_truncation, reason = "whole cents; saturates")]
fn to_cents(cents: f64) -> i64 {
    cents as i64
}
