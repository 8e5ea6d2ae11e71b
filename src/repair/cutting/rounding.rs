//! From fractions of boards to whole boards.
//!
//! A dive: relax what is still wanted, buy the whole boards of the relaxed list, round some fractions
//! up, relax again what then is left. Dives that take another fraction first follow while the effort
//! lasts and the bound leaves room for a cheaper list (limited discrepancy search, Harvey and
//! Ginsberg, IJCAI 1995).

use super::relaxation::{Board, Item, Pieces, Relaxation};

/// A pattern on a board, and how many boards are cut so.
#[derive(Debug, Clone)]
pub(super) struct Cut {
    pub(super) board: usize,
    pub(super) pieces: Pieces,
    pub(super) times: f64,
}

/// Effort for one list, in steps of a few nanoseconds.
const EFFORT: usize = 60_000_000;
/// Effort after which no further dive is begun.
const ENOUGH: usize = 3_000_000;

/// The search for the cheapest list.
#[derive(Debug)]
pub(super) struct Rounding<'a> {
    items: &'a [Item],
    boards: &'a [Board],
    /// Prices are whole multiples of this, cents.
    grain: f64,
    effort: usize,
    /// No list is cheaper, cents.
    pub(super) bound: f64,
    /// The cheapest list so far.
    pub(super) cuts: Vec<Cut>,
    /// Its price, cents, and the length bought.
    pub(super) price: (f64, f64),
}

impl<'a> Rounding<'a> {
    /// Finds the cheapest list. Every item must fit some board.
    pub(super) fn run(items: &'a [Item], boards: &'a [Board], grain: f64) -> Self {
        let wanted: Vec<f64> = items.iter().map(|item| item.wanted).collect();
        let price = (f64::INFINITY, f64::INFINITY);
        let mut rounding = Self { items, boards, grain, effort: EFFORT, bound: 0.0, cuts: vec![], price };
        let mut cuts = Vec::new();
        rounding.fill(&mut wanted.clone(), &mut cuts);
        let start: Vec<Pieces> = cuts.iter().map(|cut| cut.pieces.clone()).collect();
        rounding.keep_if_better(cuts);
        for allowance in 0..8 {
            rounding.dive(&mut wanted.clone(), &mut vec![], &start, allowance);
            if rounding.done(0.0, rounding.bound) || rounding.effort < EFFORT - ENOUGH {
                break;
            }
        }
        rounding
    }

    /// Whether a list that costs `spent` and at least `more` is no cheaper than the best one.
    fn done(&self, spent: f64, more: f64) -> bool {
        spent + more > self.price.0 - self.grain + 1e-3
    }

    fn dive(&mut self, left: &mut [f64], cuts: &mut Vec<Cut>, start: &[Pieces], allowance: usize) {
        let rows: Vec<usize> = (0..left.len()).filter(|&item| left[item] > 0.0).collect();
        if rows.is_empty() {
            self.keep_if_better(cuts.clone());
            return;
        }
        let (patterns, bound) = self.relax(left, &rows, start);
        let spent = cuts.iter().map(|cut| cut.times * self.boards[cut.board].price).sum();
        if cuts.is_empty() {
            self.bound = self.bound.max(bound);
        }
        if self.done(spent, bound) {
            return;
        }
        let mut fractions: Vec<(f64, &Pieces)> = Vec::new();
        for (pieces, times) in &patterns {
            let whole = (times + 1e-6).floor();
            self.cut(left, pieces, whole, cuts);
            if times - whole > 1e-6 {
                fractions.push((times - whole, pieces));
            }
        }
        fractions.sort_by(|a, b| b.0.total_cmp(&a.0));
        let next: Vec<Pieces> = patterns.iter().map(|(pieces, _)| pieces.clone()).collect();
        if fractions.is_empty() {
            self.dive(left, cuts, &next, allowance);
            return;
        }
        let at_once = (rows.len() / 12).max(1);
        for skip in 0..=allowance.min(fractions.len() - 1) {
            let (mut left, mut cuts) = (left.to_vec(), cuts.clone());
            let mut rounded = 0;
            for (fraction, pieces) in fractions.iter().skip(skip).take(at_once) {
                let fits = pieces.iter().all(|&(item, count)| left[item] >= count);
                if rounded == 0 || (fits && *fraction > 0.4) {
                    self.cut(&mut left, pieces, 1.0, &mut cuts);
                    rounded += 1;
                }
            }
            self.dive(&mut left, &mut cuts, &next, allowance - skip);
        }
    }

    /// The patterns of the relaxed list of what is left, and a bound of its price.
    fn relax(&mut self, left: &[f64], rows: &[usize], start: &[Pieces]) -> (Vec<(Pieces, f64)>, f64) {
        let mut place = vec![0; left.len()];
        rows.iter().enumerate().for_each(|(row, &item)| place[item] = row);
        let items: Vec<Item> =
            rows.iter().map(|&item| Item { width: self.items[item].width, wanted: left[item] }).collect();
        let mut relaxation = Relaxation::new(&items, self.boards);
        for pieces in start {
            let trimmed = trim(pieces, left);
            if let Some(board) = self.board_for(&trimmed) {
                let local = trimmed.into_iter().map(|(item, count)| (place[item], count)).collect();
                relaxation.offer(self.boards[board].price, local);
            }
        }
        let slack = if rows.len() > 60 { 1e-3 } else { 1e-6 };
        relaxation.improve(slack, &mut self.effort);
        let global = |pieces: &Pieces| pieces.iter().map(|&(row, count)| (rows[row], count)).collect();
        let patterns = relaxation.patterns().map(|(pieces, times)| (global(pieces), times)).collect();
        (patterns, (relaxation.bound / self.grain - 1e-6).ceil() * self.grain)
    }

    /// Buys boards for a pattern, no more than what is left calls for.
    fn cut(&self, left: &mut [f64], pieces: &Pieces, times: f64, cuts: &mut Vec<Cut>) {
        let enough = |&(item, count): &(usize, f64)| (left[item] / count).floor();
        let full = pieces.iter().map(enough).fold(times, f64::min);
        self.buy(left, pieces.clone(), full, cuts);
        if full < times {
            self.buy(left, trim(pieces, left), 1.0, cuts);
        }
    }

    fn buy(&self, left: &mut [f64], pieces: Pieces, times: f64, cuts: &mut Vec<Cut>) {
        if let Some(board) = self.board_for(&pieces).filter(|_| times > 0.0) {
            pieces.iter().for_each(|&(item, count)| left[item] -= count * times);
            cuts.push(Cut { board, pieces, times });
        }
    }

    /// The cheapest board for some pieces, the shortest of equals. `None` for no pieces.
    fn board_for(&self, pieces: &Pieces) -> Option<usize> {
        let width: f64 = pieces.iter().map(|&(item, count)| count * self.items[item].width).sum();
        let boards = self.boards.iter().enumerate().filter(|(_, board)| board.room >= width && width > 0.0);
        let cheapest =
            boards.min_by(|(_, a), (_, b)| a.price.total_cmp(&b.price).then(a.room.total_cmp(&b.room)));
        cheapest.map(|(index, _)| index)
    }

    /// Buys boards for all that is left: each time the longest item with the longest that still fit,
    /// on the board that gives most width for its price.
    fn fill(&self, left: &mut [f64], cuts: &mut Vec<Cut>) {
        while left.iter().any(|&left| left > 0.0) {
            let filled = self.boards.iter().map(|board| {
                let pieces = self.fill_board(left, board.room);
                let width: f64 = pieces.iter().map(|&(item, count)| count * self.items[item].width).sum();
                (width / board.price, pieces)
            });
            let longest = left.iter().position(|&left| left > 0.0);
            let holding = filled.filter(|(_, pieces)| pieces.first().map(|&(item, _)| item) == longest);
            let Some((_, pieces)) = holding.max_by(|a, b| a.0.total_cmp(&b.0)) else { return };
            self.cut(left, &pieces, f64::INFINITY, cuts);
        }
    }

    fn fill_board(&self, left: &[f64], mut room: f64) -> Pieces {
        let mut pieces = Vec::new();
        for (item, (Item { width, .. }, left)) in self.items.iter().zip(left).enumerate() {
            let count = (room / width).floor().min(*left);
            if count > 0.0 {
                pieces.push((item, count));
                room -= count * width;
            }
        }
        pieces
    }

    fn keep_if_better(&mut self, cuts: Vec<Cut>) {
        let total = |each: fn(&Board) -> f64| -> f64 {
            cuts.iter().map(|cut| cut.times * each(&self.boards[cut.board])).sum()
        };
        let price = (total(|board| board.price), total(|board| board.room));
        if price < self.price {
            (self.price, self.cuts) = (price, cuts);
        }
    }
}

/// The pieces of a pattern that are still wanted.
fn trim(pieces: &Pieces, left: &[f64]) -> Pieces {
    let trimmed = pieces.iter().map(|&(item, count)| (item, count.min(left[item])));
    trimmed.filter(|&(_, count)| count > 0.0).collect()
}
