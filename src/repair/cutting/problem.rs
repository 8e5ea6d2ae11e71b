//! The cutting-stock problem: items, boards, and patterns that cut one from the other.
//!
//! Widths, counts and prices are whole numbers kept as `f64`, so their sums are exact.

/// Pieces of one length.
#[derive(Debug, Clone, Copy)]
pub(super) struct Item {
    /// Length plus one kerf, micrometers.
    pub(super) width: f64,
    /// How many to cut.
    pub(super) demand: f64,
}

/// A stock length.
#[derive(Debug, Clone, Copy)]
pub(super) struct Board {
    /// Total width of the items that fit, micrometers.
    pub(super) capacity: f64,
    /// Price, cents.
    pub(super) price: f64,
}

/// What one board is cut into: items by index, and how many of each.
pub(super) type Pattern = Vec<(usize, f64)>;

/// Boards cut to one pattern.
#[derive(Clone)]
pub(super) struct PatternRun {
    /// Index of the board.
    pub(super) board: usize,
    pub(super) pattern: Pattern,
    /// How many boards.
    pub(super) times: f64,
}

/// Sum of a pattern's items, each at its value.
pub(super) fn value(pattern: &Pattern, values: &[f64]) -> f64 {
    pattern.iter().map(|&(item, count)| count * values[item]).sum()
}

/// How many boards can be cut to a pattern before it makes more than is `left` to cut.
pub(super) fn times_wanted(pattern: &Pattern, left: &[f64]) -> f64 {
    pattern.iter().map(|&(item, count)| times_in(count, left[item])).fold(f64::MAX, f64::min)
}

/// The cheapest board that holds `width`, the shorter of equals.
pub(super) fn cheapest_board(boards: &[Board], width: f64) -> Option<usize> {
    let fitting = boards.iter().enumerate().filter(|(_, board)| board.capacity >= width);
    let by_price = |a: &Board, b: &Board| a.price.total_cmp(&b.price).then(a.capacity.total_cmp(&b.capacity));
    fitting.min_by(|a, b| by_price(a.1, b.1)).map(|(index, _)| index)
}

/// How many whole times `part` goes into `whole`.
#[expect(clippy::cast_possible_truncation, clippy::cast_precision_loss, reason = "saturates far off")]
pub(super) fn times_in(part: f64, whole: f64) -> f64 {
    (whole / part) as i64 as f64
}

/// A count as a float.
#[expect(clippy::cast_precision_loss, reason = "exact up to 2^53")]
pub(super) fn to_number(count: usize) -> f64 {
    count as f64
}

/// The whole part of a float as a count.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "saturates")]
pub(super) fn to_count(number: f64) -> usize {
    number as usize
}
