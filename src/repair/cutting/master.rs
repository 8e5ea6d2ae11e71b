//! The linear relaxation: the cheapest mix of patterns if boards could be bought in fractions.
//!
//! Column generation after Gilmore and Gomory, "A linear programming approach to the cutting-stock
//! problem", Operations Research 9 (1961) 849-859: a revised simplex method holds only the patterns in
//! its basis, and a knapsack search prices out new ones. Any dual values divided by the most a pattern
//! is worth over its board's price are feasible and give a lower bound (Farley, Operations Research 38
//! (1990) 922-923), so the bound holds no matter where the method stops.
//!
//! Columns that cut an item down to the next shorter one (dual cuts: Valério de Carvalho, INFORMS
//! Journal on Computing 17 (2005) 175-182) keep the dual values in order of length and spare most pivots.

use super::knapsack::Knapsack;
use super::problem::{Board, Item, Pattern, times_in, value};

/// Knapsack steps for one board, at first and at most.
const KNAPSACK_STEPS: (usize, usize) = (500, 32_000);
/// Share of the relative gap by which a pattern must be worth more than its board.
const PRICING_MARGIN: f64 = 0.1;
/// Share of the relative gap, times a board's price, by which a dual cut must be violated.
const DUAL_CUT_MARGIN: f64 = 0.5;
/// Smaller than anything that counts.
const TINY: f64 = 1e-9;

/// A column of the basis: a pattern, or at no price a dual cut.
struct Column {
    price: f64,
    pattern: Pattern,
}

/// The restricted master problem.
pub(super) struct Master<'a> {
    items: &'a [Item],
    boards: &'a [Board],
    basis: Vec<Column>,
    /// Inverse of the basis, column after column.
    inverse: Vec<f64>,
    /// How many boards each column of the basis stands for.
    levels: Vec<f64>,
    /// Dual value of each item, cents.
    duals: Vec<f64>,
    /// The dual values of the best bound: no pattern is worth more than its board.
    pub(super) feasible_duals: Vec<f64>,
    /// No cutting list costs less, cents.
    pub(super) bound: f64,
    knapsack_steps: usize,
    /// Work done, about in nanoseconds. Counted, not timed, so that results do not depend on speed.
    work: usize,
}

impl<'a> Master<'a> {
    /// Starts with each item on boards of its own. Every item must fit some board; the widest comes
    /// first.
    pub(super) fn new(items: &'a [Item], boards: &'a [Board]) -> Self {
        let size = items.len();
        let mut inverse = vec![0.0; size * size];
        let (mut basis, mut levels, mut duals) = (Vec::new(), Vec::new(), Vec::new());
        for (index, item) in items.iter().enumerate() {
            let alone = |board: &Board| (board.price, times_in(item.width, board.capacity).min(item.demand));
            let fitting = boards.iter().map(alone).filter(|&(_, count)| count > 0.0);
            let cheapest = fitting.min_by(|a, b| (a.0 / a.1).total_cmp(&(b.0 / b.1)));
            let (price, count) = cheapest.unwrap_or((f64::MAX, 1.0));
            inverse[index * size + index] = 1.0 / count;
            basis.push(Column { price, pattern: vec![(index, count)] });
            levels.push(item.demand / count);
            duals.push(price / count);
        }
        let price_per_width =
            boards.iter().map(|board| board.price / board.capacity).fold(f64::MAX, f64::min);
        let feasible_duals: Vec<f64> = items.iter().map(|item| item.width * price_per_width).collect();
        let bound = total(items, &feasible_duals);
        let (knapsack_steps, work) = (KNAPSACK_STEPS.0, size * size);
        Self { items, boards, basis, inverse, levels, duals, feasible_duals, bound, knapsack_steps, work }
    }

    /// The patterns used, and how many boards of each, fractions included.
    pub(super) fn solution(&self) -> impl Iterator<Item = (&Pattern, f64)> {
        let columns = self.basis.iter().zip(&self.levels);
        let used = columns.filter(|(column, level)| column.price > 0.0 && **level > TINY);
        used.map(|(column, level)| (&column.pattern, *level))
    }

    /// Brings a pattern into the basis if that lowers the price.
    pub(super) fn add_pattern(&mut self, price: f64, pattern: Pattern) -> bool {
        let gain = value(&pattern, &self.duals) - price;
        gain > TINY * price && self.pivot(Column { price, pattern }, gain)
    }

    /// Generates columns until the relative gap to the bound is below `tolerance` or `max_work` is
    /// spent.
    pub(super) fn generate_columns(&mut self, tolerance: f64, max_work: usize) {
        while self.work < max_work {
            let gap = total(self.items, &self.duals) / self.bound - 1.0;
            if gap < tolerance {
                break;
            }
            let margin = (gap * PRICING_MARGIN).max(tolerance * 0.5);
            if self.add_dual_cut(gap) || self.price_out(margin) {
                continue;
            }
            if self.knapsack_steps >= KNAPSACK_STEPS.1 {
                break;
            }
            self.knapsack_steps *= 2;
        }
    }

    /// Adds the dual cut that is violated most: the last item may go to waste, any other be cut down to
    /// the next shorter one.
    fn add_dual_cut(&mut self, gap: f64) -> bool {
        let next = |item: usize| self.duals.get(item + 1).copied().unwrap_or_default();
        let violations = self.duals.iter().enumerate().map(|(item, dual)| (item, next(item) - dual));
        let Some((item, violation)) = violations.max_by(|a, b| a.1.total_cmp(&b.1)) else { return false };
        if violation < (DUAL_CUT_MARGIN * gap * self.boards[0].price).max(TINY) {
            return false;
        }
        let mut pattern = vec![(item, -1.0), (item + 1, 1.0)];
        pattern.truncate(self.items.len() - item);
        self.pivot(Column { price: 0.0, pattern }, violation)
    }

    /// Looks for patterns worth `1 + margin` times their board and adds those that lower the price.
    /// `true` if the price or the bound got better.
    fn price_out(&mut self, margin: f64) -> bool {
        let duals: Vec<f64> = self.duals.iter().map(|dual| dual.max(0.0)).collect();
        let knapsack = Knapsack::new(self.items, &duals, self.boards);
        self.work += 80 * self.items.len();
        let (mut most, mut patterns) = (0.0_f64, Vec::new());
        for &Board { capacity, price } in self.boards {
            let found = knapsack.search(capacity, price * (1.0 + margin), self.knapsack_steps);
            most = most.max(found.upper_bound / price);
            self.work += 14 * (self.knapsack_steps - found.steps);
            patterns
                .extend(found.patterns.into_iter().map(|(value, pattern)| (value / price, price, pattern)));
        }
        let bound = total(self.items, &duals) / most * (1.0 - TINY);
        let mut better = bound > self.bound * (1.0 + 0.1 * margin);
        if bound > self.bound {
            self.bound = bound;
            self.feasible_duals = duals.into_iter().map(|dual| dual / most).collect();
        }
        patterns.sort_by(|a, b| b.0.total_cmp(&a.0));
        for (_, price, pattern) in patterns {
            better |= self.add_pattern(price, pattern);
        }
        better
    }

    /// One pivot of the revised simplex method. `false` if rounding error leaves no pivot element.
    fn pivot(&mut self, column: Column, gain: f64) -> bool {
        let size = self.items.len();
        let mut direction = vec![0.0; size];
        for &(item, count) in &column.pattern {
            let part = &self.inverse[item * size..(item + 1) * size];
            direction.iter_mut().zip(part).for_each(|(change, entry)| *change += count * entry);
        }
        let Some((leaving, step)) = self.ratio_test(&direction) else { return false };
        self.levels.iter_mut().zip(&direction).for_each(|(level, change)| *level -= step * change);
        self.levels[leaving] = step;
        self.basis[leaving] = column;
        for (part, dual) in self.inverse.chunks_exact_mut(size).zip(&mut self.duals) {
            let share = part[leaving] / direction[leaving];
            if share.abs() > 1e-13 {
                *dual -= gain * share;
                part.iter_mut().zip(&direction).for_each(|(entry, change)| *entry -= share * change);
                self.work += size / 4;
            }
            part[leaving] = share;
        }
        self.work += 8 * size;
        true
    }

    /// The column that leaves the basis, and the level of the one that enters. Of near ties, the one
    /// with the larger pivot element, which loses less precision.
    fn ratio_test(&self, direction: &[f64]) -> Option<(usize, f64)> {
        let mut first: Option<(usize, f64)> = None;
        for (index, (&level, &change)) in self.levels.iter().zip(direction).enumerate() {
            if change > TINY {
                let step = level.max(0.0) / change;
                let sooner = first.is_none_or(|(other, least)| {
                    step < least - TINY || (step < least + TINY && change > direction[other])
                });
                if sooner {
                    first = Some((index, step));
                }
            }
        }
        first
    }
}

/// The value of all items together.
fn total(items: &[Item], duals: &[f64]) -> f64 {
    items.iter().zip(duals).map(|(item, dual)| item.demand * dual).sum()
}
