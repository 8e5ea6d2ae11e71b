//! The pricing problem: the most valuable patterns of a board, by branch and bound.

use super::problem::{Board, Item, Pattern, times_in, to_count, to_number};

/// Cells into which the longest board is divided for [`ValueBound`].
const CELLS: usize = 512;

/// An item with a value.
struct Candidate {
    item: usize,
    width: f64,
    value: f64,
    /// Value per width.
    density: f64,
    demand: f64,
}

/// The most that any pattern of a given width can be worth: an unbounded knapsack, solved by dynamic
/// programming with item widths rounded down to cells.
struct ValueBound {
    cell: f64,
    values: Vec<f64>,
}

impl ValueBound {
    /// Bounds up to `capacity`. `candidates` come from the narrowest on.
    fn new<'a>(candidates: impl Iterator<Item = &'a Candidate>, capacity: f64) -> Self {
        let cell = capacity / to_number(CELLS - 1);
        let mut values = vec![0.0_f64; CELLS];
        for candidate in candidates {
            let width = to_count(candidate.width / cell);
            if width == 0 {
                return Self { cell, values: vec![f64::MAX; CELLS] };
            }
            if width >= CELLS || values[width] >= candidate.value {
                continue;
            }
            // Stretches of one width do not depend on themselves, so each is one vector operation.
            for start in (width..CELLS).step_by(width) {
                let (before, after) = values.split_at_mut(start);
                let with = before[start - width..].iter().map(|value| value + candidate.value);
                after.iter_mut().zip(with).for_each(|(best, with)| *best = best.max(with));
            }
        }
        Self { cell, values }
    }

    fn at(&self, capacity: f64) -> f64 {
        self.values[to_count(capacity / self.cell).min(CELLS - 1)]
    }
}

/// A bounded knapsack problem, ready for boards of any capacity.
pub(super) struct Knapsack {
    /// The densest first.
    candidates: Vec<Candidate>,
    bound: ValueBound,
    narrowest: f64,
}

impl Knapsack {
    /// `items` from the widest on, and the value of each.
    pub(super) fn new(items: &[Item], values: &[f64], boards: &[Board]) -> Self {
        let all = items.iter().zip(values).enumerate();
        let mut candidates: Vec<Candidate> = all
            .filter(|&(_, (_, &value))| value > 0.0)
            .map(|(item, (&Item { width, demand }, &value))| Candidate {
                item,
                width,
                value,
                density: value / width,
                demand,
            })
            .collect();
        let longest = boards.iter().map(|board| board.capacity).fold(0.0, f64::max);
        let bound = ValueBound::new(candidates.iter().rev(), longest);
        let narrowest = candidates.last().map_or(f64::MAX, |candidate| candidate.width);
        candidates.sort_by(|a, b| b.density.total_cmp(&a.density));
        Self { candidates, bound, narrowest }
    }

    /// Collects patterns that fit `capacity` and are worth more than `threshold`, each worth more than
    /// the one before, for at most so many steps.
    pub(super) fn search(&self, capacity: f64, threshold: f64, steps: usize) -> Search<'_> {
        let (taken, patterns) = (Vec::new(), Vec::new());
        let mut search =
            Search { knapsack: self, upper_bound: threshold, steps, taken, patterns, missed: 0.0 };
        search.branch(0, capacity, 0.0);
        search.upper_bound = search.upper_bound.max(search.missed);
        search
    }
}

/// A search by branch and bound, and what it found.
pub(super) struct Search<'a> {
    knapsack: &'a Knapsack,
    /// Once the search is over, no pattern is worth more than this; before, the best value so far.
    pub(super) upper_bound: f64,
    /// Upper bound of the branches left out for want of steps.
    missed: f64,
    /// Steps left.
    pub(super) steps: usize,
    taken: Pattern,
    /// Patterns with their values.
    pub(super) patterns: Vec<(f64, Pattern)>,
}

impl Search<'_> {
    /// Tries every way to fill `capacity` with the candidates from index `from` on.
    fn branch(&mut self, from: usize, capacity: f64, value: f64) {
        if value > self.upper_bound {
            self.upper_bound = value;
            self.patterns.push((value, self.taken.clone()));
        }
        let limit = value + self.knapsack.bound.at(capacity);
        if capacity < self.knapsack.narrowest || limit <= self.upper_bound {
            return;
        }
        for (index, candidate) in self.knapsack.candidates.iter().enumerate().skip(from) {
            let limit = limit.min(value + capacity * candidate.density);
            if limit <= self.upper_bound {
                return;
            }
            let mut count = times_in(candidate.width, capacity).min(candidate.demand);
            while count > 0.0 {
                if self.steps == 0 {
                    self.missed = self.missed.max(limit);
                    return;
                }
                self.steps -= 1;
                self.taken.push((candidate.item, count));
                self.branch(index + 1, capacity - count * candidate.width, value + count * candidate.value);
                self.taken.pop();
                count -= 1.0;
            }
        }
    }
}
