//! The cheapest list for a few pieces, by trying one board after the other.
//!
//! The longest piece left goes on some board, together with pieces such that nothing left could be
//! added (bin completion: Martello and Toth 1990; Korf, AAAI 2002). Where no pattern is worth more
//! than its board, a list costs what its pieces are worth plus what each board costs over that; so
//! only boards are tried that keep the sum of the latter low enough.

use super::pattern::{Board, Item, Pieces, times_in};

/// Ways to fill one board that are tried.
const MOST: usize = 8;

/// What is tried.
pub(super) struct Completion<'a> {
    items: &'a [Item],
    boards: &'a [Board],
    worth: &'a [f64],
    /// The highest worth by width from each item on.
    rates: Vec<f64>,
    left: Vec<f64>,
    /// Width of the narrowest item left.
    narrowest: f64,
    /// Steps left.
    pub(super) steps: usize,
    /// Whether no way to fill a board was left out.
    pub(super) all: bool,
    /// What was found.
    pub(super) found: Vec<Pieces>,
}

/// A board being filled.
#[derive(Clone, Copy)]
struct Filling {
    /// Room left.
    room: f64,
    /// Price of the board less the worth of what is on it.
    cost: f64,
    /// Width of the narrowest item of which some were left out.
    left_out: f64,
}

impl<'a> Completion<'a> {
    /// `items` from the widest on, and their worths, in which no pattern is worth more than its board.
    pub(super) fn new(items: &'a [Item], boards: &'a [Board], worth: &'a [f64], steps: usize) -> Self {
        let mut rates: Vec<f64> = items.iter().zip(worth).map(|(item, worth)| worth / item.width).collect();
        rates.push(0.0);
        for index in (1..rates.len()).rev() {
            rates[index - 1] = rates[index - 1].max(rates[index]);
        }
        let left = items.iter().map(|item| item.wanted).collect();
        Self { items, boards, worth, rates, left, narrowest: 0.0, steps, all: true, found: vec![] }
    }

    /// Looks for a list that costs at most `over` more than its pieces are worth.
    pub(super) fn search(&mut self, over: f64) -> bool {
        let Some(longest) = self.left.iter().position(|&left| left > 0.0) else { return true };
        let last = self.left.iter().rposition(|&left| left > 0.0).unwrap_or(longest);
        self.narrowest = self.items[last].width;
        let mut fillings = Vec::new();
        for board in self.boards.iter().filter(|board| board.room >= self.items[longest].width) {
            let empty = Filling { room: board.room, cost: board.price, left_out: f64::MAX };
            let mut here = Vec::new();
            self.fill(longest, empty, over, &mut vec![], &mut here);
            fillings.append(&mut here);
        }
        fillings.sort_by(|a, b| a.0.total_cmp(&b.0));
        for (cost, pieces) in fillings {
            pieces.iter().for_each(|&(item, count)| self.left[item] -= count);
            self.found.push(pieces);
            if self.search(over - cost) {
                return true;
            }
            let pieces = self.found.pop().unwrap_or_default();
            pieces.iter().for_each(|&(item, count)| self.left[item] += count);
            if self.steps == 0 {
                break;
            }
        }
        false
    }

    /// Collects ways to fill a board from number `item` on, with what each costs over its worth.
    fn fill(&mut self, item: usize, board: Filling, over: f64, on: &mut Pieces, to: &mut Vec<(f64, Pieces)>) {
        if self.steps == 0 || board.cost - board.room * self.rates[item] > over {
            return;
        }
        if to.len() >= MOST {
            self.all = false;
            return;
        }
        self.steps -= 1;
        if item == self.items.len() || board.room < self.narrowest {
            if board.room < board.left_out && board.cost <= over {
                to.push((board.cost, on.clone()));
            }
            return;
        }
        let (Item { width, .. }, left) = (self.items[item], self.left[item]);
        let mut count = times_in(width, board.room).min(left);
        let least = if on.is_empty() { 1.0 } else { 0.0 };
        while count >= least && self.steps > 0 {
            let left_out = if count < left { width } else { board.left_out };
            let (room, cost) = (board.room - count * width, board.cost - count * self.worth[item]);
            if count > 0.0 {
                on.push((item, count));
            }
            self.fill(item + 1, Filling { room, cost, left_out }, over, on, to);
            if count > 0.0 {
                on.pop();
            }
            count -= 1.0;
        }
    }
}
