//! Mixes of a few boards, by what room they give for their price.
//!
//! With many pieces on each board what counts is the room of the boards together: were pieces fluid,
//! the cheapest mix of whole boards with room for them all would do. Its price is a lower bound, and
//! such mixes, the cheapest first, are tried with the longest piece first, each on the fullest board
//! that still takes it.

use super::pattern::{Board, Item, Pieces, times_in, to_count, to_number};
use super::rounding::Rounding;

/// Parts of the longest board in which rooms are counted, rounded up.
const CELLS: usize = 500;
/// Only jobs of so many of the longest boards are looked at.
const MOST_BOARDS: usize = 30;
/// So many mixes are tried.
const MOST_MIXES: usize = 40;
/// Room looked at over that for fluid pieces, as a share of it.
const SPARE: f64 = 0.25;

/// The cheapest mix of boards for every room.
pub(super) struct Mixes {
    /// Cells needed by fluid pieces.
    needed: usize,
    /// Price of the cheapest boards of so many cells, and the last of these boards.
    cheapest: Vec<(f64, usize)>,
    /// Cells of each board.
    cells: Vec<usize>,
}

impl Mixes {
    /// Mixes for some items. None at all if these take many boards.
    pub(super) fn new(items: &[Item], boards: &[Board]) -> Self {
        let width: f64 = items.iter().map(|item| item.width * item.wanted).sum();
        let longest = boards.iter().map(|board| board.room).fold(0.0, f64::max);
        let cell = longest / to_number(CELLS);
        let cells: Vec<usize> = boards.iter().map(|board| 1 + to_count(board.room / cell)).collect();
        let needed = to_count(width / cell);
        let most = if needed > MOST_BOARDS * CELLS { 0 } else { to_count(width / cell * (1.0 + SPARE)) };
        let mut cheapest = vec![(0.0_f64, 0)];
        for room in 1..=most {
            let with = |(board, &cells): (usize, &usize)| {
                (boards[board].price + cheapest[room.saturating_sub(cells)].0, board)
            };
            let best = cells.iter().enumerate().map(with).min_by(|a, b| a.0.total_cmp(&b.0));
            cheapest.push(best.unwrap_or((f64::MAX, 0)));
        }
        Self { needed, cheapest, cells }
    }

    /// No list is cheaper, cents.
    pub(super) fn bound(&self) -> f64 {
        self.cheapest.get(self.needed).map_or(0.0, |mix| mix.0)
    }

    /// Mixes by price.
    fn by_price(&self) -> impl Iterator<Item = (f64, Vec<usize>)> {
        let rooms = self.needed..self.cheapest.len();
        let price = |room: usize| self.cheapest[room].0;
        let dearer = rooms.filter(move |&room| room == self.needed || price(room) > price(room - 1));
        dearer.map(|room| (self.cheapest[room].0, self.boards(room)))
    }

    fn boards(&self, mut room: usize) -> Vec<usize> {
        let mut boards = Vec::new();
        while room > 0 {
            let board = self.cheapest[room].1;
            boards.push(board);
            room = room.saturating_sub(self.cells[board]);
        }
        boards
    }
}

impl Rounding<'_> {
    /// Tries the mixes that are cheaper than the list at hand.
    pub(super) fn try_mixes(&mut self) {
        let mixes: Vec<(f64, Vec<usize>)> = self.mixes.by_price().take(MOST_MIXES).collect();
        for (price, boards) in mixes {
            if self.is_best(price) {
                return;
            }
            let mut left: Vec<f64> = self.items.iter().map(|item| item.wanted).collect();
            let filled = self.best_fit(&boards, &left);
            let cuts = filled.into_iter().filter_map(|pieces| self.buy(&mut left, pieces, 1.0));
            let cuts = cuts.collect();
            self.complete(cuts);
        }
    }

    /// The longest piece first, each on the fullest board that still takes it.
    fn best_fit(&self, boards: &[usize], wanted: &[f64]) -> Vec<Pieces> {
        let mut filled: Vec<(f64, Pieces)> =
            boards.iter().map(|&board| (self.boards[board].room, Pieces::new())).collect();
        for (item, &count) in wanted.iter().enumerate() {
            let width = self.items[item].width;
            let mut left = count;
            while left > 0.0 {
                let taking = filled.iter_mut().filter(|board| board.0 >= width);
                let Some(fullest) = taking.min_by(|a, b| a.0.total_cmp(&b.0)) else { break };
                let count = times_in(width, fullest.0).min(left);
                fullest.0 -= count * width;
                fullest.1.push((item, count));
                left -= count;
            }
        }
        filled.into_iter().map(|board| board.1).collect()
    }
}
