//! The cheapest boards for a few pieces, by bin completion (Martello and Toth 1990; Korf, AAAI 2002).
//!
//! The longest piece left goes on some board, with others such that no piece left out would still fit.
//! Where no pattern is worth more than its board, boards cost the value of their pieces plus their
//! reduced costs, so only boards that keep the sum of these within a budget are tried.

use super::problem::{Board, Item, Pattern, times_in};

/// Ways to fill one board that are tried.
const MAX_COMPLETIONS: usize = 8;

/// A depth-first search.
pub(super) struct BinCompletion<'a> {
    items: &'a [Item],
    boards: &'a [Board],
    duals: &'a [f64],
    /// The highest value per width from each item on.
    densities: Vec<f64>,
    left: Vec<f64>,
    /// Width of the narrowest item left.
    narrowest: f64,
    /// Steps left.
    pub(super) steps: usize,
    /// Whether no way to fill a board was left out.
    pub(super) exhaustive: bool,
    /// One pattern for each board.
    pub(super) solution: Vec<Pattern>,
}

/// A board partly filled.
#[derive(Clone, Copy)]
struct Bin {
    /// Capacity left.
    capacity: f64,
    /// Price less the value of what is on it.
    reduced_cost: f64,
    /// Width of the narrowest item of which some were left out.
    left_out: f64,
}

impl<'a> BinCompletion<'a> {
    /// `items` from the widest on, and dual values with which no pattern is worth more than its board.
    pub(super) fn new(items: &'a [Item], boards: &'a [Board], duals: &'a [f64], steps: usize) -> Self {
        let mut densities: Vec<f64> = items.iter().zip(duals).map(|(item, dual)| dual / item.width).collect();
        densities.push(0.0);
        for index in (1..densities.len()).rev() {
            densities[index - 1] = densities[index - 1].max(densities[index]);
        }
        let left = items.iter().map(|item| item.demand).collect();
        let (narrowest, solution) = (0.0, vec![]);
        Self { items, boards, duals, densities, left, narrowest, steps, exhaustive: true, solution }
    }

    /// Looks for boards whose reduced costs sum to at most `budget`.
    pub(super) fn search(&mut self, budget: f64) -> bool {
        let Some(longest) = self.left.iter().position(|&left| left > 0.0) else { return true };
        let last = self.left.iter().rposition(|&left| left > 0.0).unwrap_or(longest);
        self.narrowest = self.items[last].width;
        let mut completions = Vec::new();
        for board in self.boards.iter().filter(|board| board.capacity >= self.items[longest].width) {
            let empty = Bin { capacity: board.capacity, reduced_cost: board.price, left_out: f64::MAX };
            let mut here = Vec::new();
            self.fill(longest, empty, budget, &mut vec![], &mut here);
            completions.append(&mut here);
        }
        completions.sort_by(|a, b| a.0.total_cmp(&b.0));
        for (reduced_cost, pattern) in completions {
            pattern.iter().for_each(|&(item, count)| self.left[item] -= count);
            self.solution.push(pattern);
            if self.search(budget - reduced_cost) {
                return true;
            }
            let pattern = self.solution.pop().unwrap_or_default();
            pattern.iter().for_each(|&(item, count)| self.left[item] += count);
            if self.steps == 0 {
                break;
            }
        }
        false
    }

    /// Collects ways to fill a bin with the items from index `item` on, with the reduced cost of each.
    fn fill(
        &mut self,
        item: usize,
        bin: Bin,
        budget: f64,
        taken: &mut Pattern,
        completions: &mut Vec<(f64, Pattern)>,
    ) {
        if self.steps == 0 || bin.reduced_cost - bin.capacity * self.densities[item] > budget {
            return;
        }
        if completions.len() >= MAX_COMPLETIONS {
            self.exhaustive = false;
            return;
        }
        self.steps -= 1;
        if item == self.items.len() || bin.capacity < self.narrowest {
            if bin.capacity < bin.left_out && bin.reduced_cost <= budget {
                completions.push((bin.reduced_cost, taken.clone()));
            }
            return;
        }
        let (Item { width, .. }, left) = (self.items[item], self.left[item]);
        let mut count = times_in(width, bin.capacity).min(left);
        // The first item is the longest piece left, which must go on this board.
        let least = if taken.is_empty() { 1.0 } else { 0.0 };
        while count >= least && self.steps > 0 {
            let next = Bin {
                capacity: bin.capacity - count * width,
                reduced_cost: bin.reduced_cost - count * self.duals[item],
                left_out: if count < left { width } else { bin.left_out },
            };
            if count > 0.0 {
                taken.push((item, count));
            }
            self.fill(item + 1, next, budget, taken, completions);
            if count > 0.0 {
                taken.pop();
            }
            count -= 1.0;
        }
    }
}
