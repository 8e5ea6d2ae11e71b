//! The relaxed cutting list: the cheapest mix of patterns if boards came in fractions.
//!
//! Column generation after Gilmore and Gomory, "A linear programming approach to the cutting-stock
//! problem", Operations Research 9 (1961) 849-859: a simplex method knows only the patterns in its
//! basis, and a knapsack search finds further ones that lower the price. Worths of the items in which
//! no pattern is worth more than its board bound the price from below; any worths do once divided by
//! the most that a pattern is worth over its board's price (Farley, Operations Research 38 (1990)
//! 922-923), so the bound holds however far the method came.
//!
//! An item may also be cut for the next shorter one, so that a longer item is never worth much less;
//! that spares most of the steps (Valério de Carvalho, INFORMS Journal on Computing 17 (2005) 175-182).

use super::pattern::{Board, Item, Pieces, Pricing, times_in};

/// Pattern searches of one board give up after so many steps, at first and at last.
const STEPS: (usize, usize) = (500, 32_000);
/// Share of the gap to the bound by which a pattern is to be worth more than its board.
const AIM: f64 = 0.1;
/// Share of the gap, times the price of a board, by which a shorter item may be worth more.
const UNEVEN: f64 = 0.5;
/// Smaller than anything that counts.
const TINY: f64 = 1e-9;

/// A pattern in the basis. At no price: an item cut for the next shorter one, or the last for nothing.
struct Column {
    price: f64,
    pieces: Pieces,
}

/// The relaxed problem on its way to the optimum.
pub(super) struct Relaxation<'a> {
    items: &'a [Item],
    boards: &'a [Board],
    basis: Vec<Column>,
    /// Inverse of the basis, column after column.
    inverse: Vec<f64>,
    /// How often each column of the basis is used.
    times: Vec<f64>,
    /// What the basis makes each item worth, cents.
    worth: Vec<f64>,
    /// The worths of the best bound: no pattern is worth more than its board.
    pub(super) bounding: Vec<f64>,
    /// No list is cheaper, cents.
    pub(super) bound: f64,
    /// Steps of a pattern search now.
    steps: usize,
    /// Work done, about in nanoseconds.
    pub(super) effort: usize,
}

impl<'a> Relaxation<'a> {
    /// Starts with each item cut from boards of its own. Every item must fit some board; the widest
    /// comes first.
    pub(super) fn new(items: &'a [Item], boards: &'a [Board]) -> Self {
        let size = items.len();
        let mut inverse = vec![0.0; size * size];
        let (mut basis, mut times, mut worth) = (Vec::new(), Vec::new(), Vec::new());
        for (index, item) in items.iter().enumerate() {
            let alone = |board: &Board| (board.price, times_in(item.width, board.room).min(item.wanted));
            let fitting = boards.iter().map(alone).filter(|&(_, count)| count > 0.0);
            let cheapest = fitting.min_by(|a, b| (a.0 / a.1).total_cmp(&(b.0 / b.1)));
            let (price, count) = cheapest.unwrap_or((f64::MAX, 1.0));
            inverse[index * size + index] = 1.0 / count;
            basis.push(Column { price, pieces: vec![(index, count)] });
            times.push(item.wanted / count);
            worth.push(price / count);
        }
        let by_width = boards.iter().map(|board| board.price / board.room).fold(f64::MAX, f64::min);
        let bounding: Vec<f64> = items.iter().map(|item| item.width * by_width).collect();
        let bound = total(items, &bounding);
        let (steps, effort) = (STEPS.0, size * size);
        Self { items, boards, basis, inverse, times, worth, bounding, bound, steps, effort }
    }

    /// The patterns used, with how often.
    pub(super) fn patterns(&self) -> impl Iterator<Item = (&Pieces, f64)> {
        let used = self.basis.iter().zip(&self.times);
        let used = used.filter(|(column, times)| column.price > 0.0 && **times > TINY);
        used.map(|(column, times)| (&column.pieces, *times))
    }

    /// Takes a pattern into the basis if that lowers the price.
    pub(super) fn offer(&mut self, price: f64, pieces: Pieces) -> bool {
        let worth: f64 = pieces.iter().map(|&(item, count)| count * self.worth[item]).sum();
        let gain = worth - price;
        gain > TINY * price && self.enter(Column { price, pieces }, gain)
    }

    /// Improves until the bound is within a share `slack` of the price, or all `effort` is spent.
    pub(super) fn improve(&mut self, slack: f64, effort: usize) {
        while self.effort < effort {
            let gap = total(self.items, &self.worth) / self.bound - 1.0;
            if gap < slack {
                break;
            }
            if self.cut_for_shorter(gap) || self.look_for_patterns((gap * AIM).max(slack * 0.5)) {
                continue;
            }
            if self.steps >= STEPS.1 {
                break;
            }
            self.steps *= 2;
        }
    }

    /// Lets an item be cut for the next shorter one where that one is worth more.
    fn cut_for_shorter(&mut self, gap: f64) -> bool {
        let next = |item: usize| self.worth.get(item + 1).copied().unwrap_or_default();
        let gains = self.worth.iter().enumerate().map(|(item, worth)| (item, next(item) - worth));
        let Some((item, gain)) = gains.max_by(|a, b| a.1.total_cmp(&b.1)) else { return false };
        if gain < (UNEVEN * gap * self.boards[0].price).max(TINY) {
            return false;
        }
        let mut pieces = vec![(item, -1.0), (item + 1, 1.0)];
        pieces.truncate(self.items.len() - item);
        self.enter(Column { price: 0.0, pieces }, gain)
    }

    /// Looks for patterns worth `1 + aim` times their board, and takes in those that lower the price.
    /// `true` if that, or the bound, is any better.
    fn look_for_patterns(&mut self, aim: f64) -> bool {
        let worth: Vec<f64> = self.worth.iter().map(|worth| worth.max(0.0)).collect();
        let pricing = Pricing::new(self.items, &worth, self.boards);
        self.effort += 80 * self.items.len();
        let (mut most, mut patterns) = (0.0_f64, Vec::new());
        for board in self.boards {
            let found = pricing.search(board.room, board.price * (1.0 + aim), self.steps);
            most = most.max(found.at_most / board.price);
            self.effort += 14 * found.steps;
            let by_price = |(worth, pieces)| (worth / board.price, board.price, pieces);
            patterns.extend(found.patterns.into_iter().map(by_price));
        }
        let bound = total(self.items, &worth) / most * (1.0 - TINY);
        let mut better = bound > self.bound * (1.0 + 0.1 * aim);
        if bound > self.bound {
            self.bound = bound;
            self.bounding = worth.into_iter().map(|worth| worth / most).collect();
        }
        patterns.sort_by(|a, b| b.0.total_cmp(&a.0));
        for (_, price, pieces) in patterns {
            better |= self.offer(price, pieces);
        }
        better
    }

    /// One step of the simplex method. `false` if nothing bounds the step, which is rounding error.
    fn enter(&mut self, column: Column, gain: f64) -> bool {
        let size = self.items.len();
        let mut change = vec![0.0; size];
        for &(item, count) in &column.pieces {
            let part = &self.inverse[item * size..(item + 1) * size];
            change.iter_mut().zip(part).for_each(|(change, entry)| *change += count * entry);
        }
        let Some((leaving, step)) = self.leaving(&change) else { return false };
        self.times.iter_mut().zip(&change).for_each(|(times, change)| *times -= step * change);
        self.times[leaving] = step;
        self.basis[leaving] = column;
        for (part, worth) in self.inverse.chunks_exact_mut(size).zip(&mut self.worth) {
            let share = part[leaving] / change[leaving];
            if share.abs() > 1e-13 {
                *worth -= gain * share;
                part.iter_mut().zip(&change).for_each(|(entry, change)| *entry -= share * change);
                self.effort += size / 4;
            }
            part[leaving] = share;
        }
        self.effort += 8 * size;
        true
    }

    /// The column that is used up first as a new one comes in, and how often the new one is then used.
    fn leaving(&self, change: &[f64]) -> Option<(usize, f64)> {
        let mut first: Option<(usize, f64)> = None;
        for (index, (&times, &change_here)) in self.times.iter().zip(change).enumerate() {
            if change_here > TINY {
                let step = times.max(0.0) / change_here;
                let sooner = first.is_none_or(|(other, least)| {
                    step < least - TINY || (step < least + TINY && change_here > change[other])
                });
                if sooner {
                    first = Some((index, step));
                }
            }
        }
        first
    }
}

/// What all wanted items are worth.
fn total(items: &[Item], worth: &[f64]) -> f64 {
    items.iter().zip(worth).map(|(item, worth)| item.wanted * worth).sum()
}
