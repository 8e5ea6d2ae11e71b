//! Whole boards: a greedy start, the relaxation rounded down and completed, then a local search.

use super::master::Master;
use super::problem::{
    Board, Item, Pattern, PatternRun, cheapest_board, times_in, times_wanted, to_count, to_number, value,
};

/// Up to so many items the relaxation is solved exactly, with more to a relative gap of
/// [`ROUGH_TOLERANCE`].
const EXACT_ITEMS: usize = 60;
const EXACT_TOLERANCE: f64 = 1e-6;
const ROUGH_TOLERANCE: f64 = 1e-3;

/// Work allowed for the relaxation, about in nanoseconds.
fn max_work(items: &[Item]) -> usize {
    let pieces: f64 = items.iter().map(|item| item.demand).sum();
    300_000 + 2_000 * to_count(pieces.min(2_000.0)) + 40 * items.len() * items.len()
}

/// Cells into which the longest board is divided for [`capacity_bound`].
const CELLS: usize = 500;
/// Beyond so many of the longest boards, [`capacity_bound`] adds next to nothing to the relaxation.
const FEW_BOARDS: usize = 20;

/// The price of the cheapest whole boards with room for all items, if these could be split anywhere: a
/// lower bound, by dynamic programming with capacities rounded up to cells. 0 if that takes many boards.
fn capacity_bound(items: &[Item], boards: &[Board]) -> f64 {
    let width: f64 = items.iter().map(|item| item.width * item.demand).sum();
    let cell = boards.iter().map(|board| board.capacity).fold(0.0, f64::max) / to_number(CELLS);
    let needed = to_count(width / cell);
    if needed > FEW_BOARDS * CELLS {
        return 0.0;
    }
    let cells: Vec<usize> = boards.iter().map(|board| 1 + to_count(board.capacity / cell)).collect();
    let mut cheapest = vec![0.0];
    for room in 1..=needed {
        let with_board =
            boards.iter().zip(&cells).map(|(b, &cells)| b.price + cheapest[room.saturating_sub(cells)]);
        cheapest.push(with_board.fold(f64::MAX, f64::min));
    }
    cheapest[needed]
}

/// A cutting-stock problem with the cheapest solution found so far.
pub(super) struct Solver<'a> {
    /// From the widest on.
    pub(super) items: &'a [Item],
    pub(super) boards: &'a [Board],
    /// All prices are whole multiples of this, cents.
    pub(super) price_step: f64,
    /// No solution costs less, cents.
    pub(super) bound: f64,
    /// The cheapest solution so far.
    pub(super) runs: Vec<PatternRun>,
    /// Its price, cents, and the capacity bought.
    pub(super) cost: (f64, f64),
}

impl<'a> Solver<'a> {
    /// Solves a problem. Every item must fit some board.
    pub(super) fn solve(items: &'a [Item], boards: &'a [Board], price_step: f64) -> Self {
        let mut solver = Self::new(items, boards, price_step);
        let master = solver.relax();
        solver.round_down(&master);
        solver.local_search(&master.feasible_duals);
        solver
    }

    /// A price that no solution is below, cents.
    pub(super) fn lower_bound(items: &'a [Item], boards: &'a [Board], price_step: f64) -> f64 {
        let mut solver = Self::new(items, boards, price_step);
        solver.relax();
        solver.bound
    }

    fn new(items: &'a [Item], boards: &'a [Board], price_step: f64) -> Self {
        let bound = capacity_bound(items, boards);
        Self { items, boards, price_step, bound, runs: vec![], cost: (f64::INFINITY, f64::INFINITY) }
    }

    /// Solves the relaxation, from the patterns of a greedy solution on.
    fn relax(&mut self) -> Master<'a> {
        self.complete(vec![]);
        let mut master = Master::new(self.items, self.boards);
        for run in &self.runs {
            master.add_pattern(self.boards[run.board].price, run.pattern.clone());
        }
        let tolerance = if self.items.len() > EXACT_ITEMS { ROUGH_TOLERANCE } else { EXACT_TOLERANCE };
        master.generate_columns(tolerance, max_work(self.items));
        self.bound = self.bound.max((master.bound / self.price_step - 1e-6).ceil() * self.price_step);
        master
    }

    /// Whether the bound proves that there is nothing cheaper.
    pub(super) fn is_optimal(&self) -> bool {
        self.bound > self.cost.0 - self.price_step + 1e-3
    }

    /// Takes the whole boards of the relaxation, as far as they are wanted, and completes them.
    fn round_down(&mut self, master: &Master<'_>) {
        let mut left = self.demand();
        let mut runs = Vec::new();
        for (pattern, level) in master.solution() {
            let times = (level + 1e-6).floor().min(times_wanted(pattern, &left));
            runs.extend(self.run(&mut left, pattern.clone(), times));
        }
        self.complete(runs);
    }

    fn demand(&self) -> Vec<f64> {
        self.items.iter().map(|item| item.demand).collect()
    }

    /// The cheapest boards for a pattern, taken off what is `left` to cut.
    pub(super) fn run(&self, left: &mut [f64], pattern: Pattern, times: f64) -> Option<PatternRun> {
        let fits = cheapest_board(self.boards, self.width(&pattern));
        let board = fits.filter(|_| times > 0.0 && !pattern.is_empty())?;
        pattern.iter().for_each(|&(item, count)| left[item] -= count * times);
        Some(PatternRun { board, pattern, times })
    }

    fn width(&self, pattern: &Pattern) -> f64 {
        pattern.iter().map(|&(item, count)| count * self.items[item].width).sum()
    }

    /// Completes a partial solution by first fit decreasing, each time on the board that gives the most
    /// width for its price. Keeps the result if it is cheaper than the best so far, or costs the same
    /// with less capacity bought.
    pub(super) fn complete(&mut self, mut runs: Vec<PatternRun>) -> bool {
        let mut left = self.demand();
        for run in &runs {
            run.pattern.iter().for_each(|&(item, count)| left[item] -= count * run.times);
        }
        while let Some(longest) = left.iter().position(|&left| left > 0.0) {
            let fitting = self.boards.iter().filter(|board| board.capacity >= self.items[longest].width);
            let filled = fitting.map(|board| {
                let pattern = self.first_fit(&left, board.capacity);
                (self.width(&pattern) / board.price, pattern)
            });
            let Some((_, pattern)) = filled.max_by(|a, b| a.0.total_cmp(&b.0)) else { return false };
            let times = times_wanted(&pattern, &left);
            runs.extend(self.run(&mut left, pattern, times));
        }
        let sum = |of: fn(&Board) -> f64| -> f64 {
            runs.iter().map(|run| run.times * of(&self.boards[run.board])).sum()
        };
        let cost = (sum(|board| board.price), sum(|board| board.capacity));
        let better = cost < self.cost;
        if better {
            (self.cost, self.runs) = (cost, runs);
        }
        better
    }

    /// The longest pieces that fit a capacity.
    fn first_fit(&self, left: &[f64], mut capacity: f64) -> Pattern {
        let mut pattern = Vec::new();
        for (item, (Item { width, .. }, left)) in self.items.iter().zip(left).enumerate() {
            let count = times_in(*width, capacity).min(*left);
            if count > 0.0 {
                pattern.push((item, count));
                capacity -= count * width;
            }
        }
        pattern
    }

    /// What a board costs beyond the value of its pieces, cents.
    pub(super) fn reduced_cost(&self, run: &PatternRun, duals: &[f64]) -> f64 {
        self.boards[run.board].price - value(&run.pattern, duals)
    }
}
