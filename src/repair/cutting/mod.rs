//! A carpenter's cutting list: which boards to buy, and what to cut each into.
//!
//! One-dimensional cutting stock with several stock lengths, any number of each, at the least total
//! price; of lists at the same price, the one that buys least length of those come across.
//!
//! * Pieces are cut to whole millimetres, a length in between to the next longer. Sums are exact, in
//!   whole micrometres, the kerf rounded up and usable lengths down.
//! * The usable length of a board is its length × (1 − defects) − end trim. Pieces fit it if their
//!   lengths and a kerf between each two do: the last cut may fall on the end.
//! * Method: linear programming with patterns made as needed, of Gilmore and Gomory (Operations
//!   Research 9 (1961) 849-859), in `relaxation`; whole boards from it in `rounding`; and a search,
//!   on small jobs often exhaustive, for cheaper ways to cut the worst boards, in `refine`. Jobs of
//!   few boards are also looked at by mixes of boards, in `mixes`. With more than 240 lengths, similar
//!   ones are planned as the longest of them, in `kinds`.
//! * The price is mostly within 1 % of the bound. With fewer than about eight boards the bound can be
//!   further below what is possible.
//! * Work is counted and ends at fixed counts; nothing is random or timed. The same input gives the
//!   same list, in about a millisecond for a room and some ten for two thousand pieces.

mod completion;
mod kinds;
mod mixes;
mod pattern;
mod refine;
mod relaxation;
mod rounding;
#[cfg(test)]
mod tests;

use std::cmp::Ordering;
use std::fmt;

use kinds::{Kinds, Lengths, whole_millimeters};
use pattern::{Board, to_count, to_number};
use rounding::{Rounding, cheapest};

/// A length of board that can be bought, any number of times.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StockLength {
    /// Length, metres.
    pub length: f64,
    /// Price of one, cents. Boards without a price above zero, or without a length, are not bought.
    pub price: i64,
}

/// What is lost besides offcuts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CuttingRules {
    /// Width lost with each cut, metres. As all of these, 0 if below 0 or no number.
    pub kerf: f64,
    /// Length cut off the two ends of every board together, metres.
    pub end_trim: f64,
    /// Share of the length of every board lost to defects, 0 to 1. It only shortens the usable length.
    pub defects: f64,
}

/// Boards cut alike.
#[derive(Debug, Clone, PartialEq)]
pub struct CutPattern {
    /// Which stock length, by its place in the list given.
    pub stock: usize,
    /// Lengths in whole millimetres, as metres, from the longest on; and how many of each a board gives.
    pub pieces: Vec<(f64, usize)>,
    /// How many boards are cut so.
    pub times: usize,
    /// What is left of the usable length of each board after the last cut, metres.
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

/// Why there is no cutting list.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CannotCut {
    /// No stock has both a length and a price.
    NoStock,
    /// A piece is longer than the usable length of every board.
    TooLong {
        /// The longest piece, metres.
        piece: f64,
        /// The longest usable length, metres.
        sanitized: f64,
    },
}

impl fmt::Display for CannotCut {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoStock => write!(f, "no stock has a length and a price"),
            Self::TooLong { piece, sanitized } => {
                write!(f, "a piece of {piece:.3} m is longer than the {sanitized:.3} m a board gives at most")
            }
        }
    }
}

impl std::error::Error for CannotCut {}

/// Micrometres in a metre.
const MICRO: f64 = 1e6;
/// Longer lengths, in metres, count as this.
const LONGEST: f64 = 1e6;

/// The stock that can be bought, and where it is in the list given.
struct Stock {
    boards: Vec<Board>,
    places: Vec<usize>,
    /// Micrometres.
    kerf: f64,
}

impl Stock {
    fn new(stock: &[StockLength], rules: &CuttingRules) -> Self {
        let some = |meters: f64| if meters.is_finite() { meters.clamp(0.0, LONGEST) } else { 0.0 };
        let kerf = (some(rules.kerf) * MICRO - 1e-3).ceil().max(0.0);
        let share = 1.0 - some(rules.defects).min(1.0);
        let (mut boards, mut places) = (Vec::new(), Vec::new());
        for (place, &StockLength { length, price }) in stock.iter().enumerate() {
            if some(length) > 0.0 && price > 0 {
                let sanitized = ((some(length) * share - some(rules.end_trim)) * MICRO + 1e-3).floor();
                boards.push(Board { room: sanitized.max(0.0) + kerf, price: from_cents(price) });
                places.push(place);
            }
        }
        Self { boards, places, kerf }
    }

    /// The greatest amount that all prices are whole multiples of, cents.
    fn grain(&self, stock: &[StockLength]) -> f64 {
        let prices = self.places.iter().map(|&place| stock[place].price);
        let common = prices.fold(0, |mut common, mut price| {
            while price != 0 {
                (common, price) = (price, common % price);
            }
            common
        });
        from_cents(common)
    }
}

/// Finds a cheap cutting list for pieces of some lengths in metres, each with how many are wanted.
///
/// Pieces without a number above zero for their length, or that are wanted zero times, are ignored;
/// without any others the list is empty. Exact up to 2^53 pieces and cents.
///
/// # Errors
/// If there is no stock, or a piece that fits none of it.
pub fn cutting_list(
    pieces: &[(f64, usize)],
    stock: &[StockLength],
    rules: &CuttingRules,
) -> Result<CuttingList, CannotCut> {
    let lengths = whole_millimeters(pieces);
    let Some(&(longest, _)) = lengths.first() else { return Ok(empty(stock)) };
    let bought = Stock::new(stock, rules);
    let rooms = bought.boards.iter().map(|board| board.room - bought.kerf);
    let sanitized = rooms.max_by(f64::total_cmp).ok_or(CannotCut::NoStock)?;
    if longest * 1e3 > sanitized {
        return Err(CannotCut::TooLong { piece: longest / 1e3, sanitized: sanitized / MICRO });
    }
    let mut kinds = Kinds::new(&lengths, bought.kerf);
    let grain = bought.grain(stock);
    let items = kinds.items();
    let plan = Rounding::run(&items, &bought.boards, grain);
    let bound = match kinds.shortest() {
        Some(items) => Rounding::bound_of(&items, &bought.boards, grain),
        None => plan.bound,
    };
    let mut list = empty(stock);
    for cut in &plan.cuts {
        for (pieces, times) in kinds.take(&cut.pieces, cut.times) {
            list.patterns.push(pattern(&bought, pieces, times));
        }
    }
    sum_up(&mut list, stock, bound);
    Ok(list)
}

/// A list that buys nothing.
fn empty(stock: &[StockLength]) -> CuttingList {
    CuttingList { patterns: vec![], buy: vec![0; stock.len()], price: 0, bound: 0.0, waste: 0.0 }
}

/// The cheapest board for pieces in millimetres, and what is left of it.
fn pattern(stock: &Stock, pieces: Lengths, times: f64) -> CutPattern {
    let width = |&(length, count): &(f64, f64)| (length * 1e3 + stock.kerf) * count;
    let width: f64 = pieces.iter().map(width).sum();
    let board = cheapest(&stock.boards, width).unwrap_or_default();
    CutPattern {
        stock: stock.places[board],
        pieces: pieces.into_iter().map(|(length, count)| (length / 1e3, to_count(count))).collect(),
        times: to_count(times),
        offcut: (stock.boards[board].room - stock.kerf - width).max(0.0) / MICRO,
    }
}

/// Puts equal patterns together and adds up the list.
fn sum_up(list: &mut CuttingList, stock: &[StockLength], bound: f64) {
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
