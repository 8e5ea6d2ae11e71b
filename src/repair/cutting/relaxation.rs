//! The relaxed cutting list: the cheapest mix of patterns if boards came in fractions.
//!
//! Column generation after Gilmore and Gomory, "A linear programming approach to the cutting-stock
//! problem", Operations Research 9 (1961) 849-859: a simplex method knows only the patterns in its
//! basis, and a knapsack search finds the pattern that would lower the price most. A vector of
//! shadow prices, none below zero, also bounds the price from below once it is shrunk until no
//! pattern is worth more than its board (Farley, Operations Research 38 (1990) 922-923); so the
//! bound holds however far the method came.
//!
//! Widths, counts and prices are whole numbers kept as `f64`, so that their sums are exact.

/// Pieces of one length.
#[derive(Debug, Clone, Copy)]
pub(super) struct Item {
    /// Length with one cut, micrometres.
    pub(super) width: f64,
    /// How many are wanted.
    pub(super) wanted: f64,
}

/// A board that can be bought.
#[derive(Debug, Clone, Copy)]
pub(super) struct Board {
    /// What items of this width in total can be cut from, micrometres.
    pub(super) room: f64,
    /// Price, cents.
    pub(super) price: f64,
}

/// What one board is cut into: items by their number, and how many of each.
pub(super) type Pieces = Vec<(usize, f64)>;

/// A pattern in the basis, or the surplus of one item at no price.
#[derive(Debug, Clone)]
struct Column {
    price: f64,
    pieces: Pieces,
}

/// Pattern searches of one board give up after this many steps.
const MOST_STEPS: usize = 5_000;
/// Smaller than anything that counts.
const TINY: f64 = 1e-9;

/// The relaxed problem on its way to the optimum.
#[derive(Debug)]
pub(super) struct Relaxation<'a> {
    items: &'a [Item],
    boards: &'a [Board],
    basis: Vec<Column>,
    /// Inverse of the basis, column after column.
    inverse: Vec<f64>,
    /// How often each column of the basis is used.
    times: Vec<f64>,
    /// Shadow price of each item, cents.
    worth: Vec<f64>,
    /// No list of whole boards is cheaper, cents.
    pub(super) bound: f64,
}

impl<'a> Relaxation<'a> {
    /// Starts with each item cut from boards of its own. Every item must fit some board.
    pub(super) fn new(items: &'a [Item], boards: &'a [Board]) -> Self {
        let size = items.len();
        let mut inverse = vec![0.0; size * size];
        let (mut basis, mut times, mut worth) = (Vec::new(), Vec::new(), Vec::new());
        for (index, item) in items.iter().enumerate() {
            let alone = |board: &Board| (board.price, (board.room / item.width).floor().min(item.wanted));
            let fitting = boards.iter().map(alone).filter(|&(_, count)| count > 0.0);
            let (price, count) =
                fitting.min_by(|a, b| (a.0 / a.1).total_cmp(&(b.0 / b.1))).unwrap_or((f64::MAX, 1.0));
            inverse[index * size + index] = 1.0 / count;
            basis.push(Column { price, pieces: vec![(index, count)] });
            times.push(item.wanted / count);
            worth.push(price / count);
        }
        Self { items, boards, basis, inverse, times, worth, bound: 0.0 }
    }

    /// The patterns used, with how often.
    pub(super) fn patterns(&self) -> impl Iterator<Item = (&Pieces, f64)> {
        let used = self.basis.iter().zip(&self.times);
        used.filter(|(column, times)| column.price > 0.0 && **times > TINY)
            .map(|(column, times)| (&column.pieces, *times))
    }

    /// Takes a pattern into the basis if that lowers the price.
    pub(super) fn offer(&mut self, price: f64, pieces: Pieces) -> bool {
        let value: f64 = pieces.iter().map(|&(item, count)| count * self.worth[item]).sum();
        let gain = value - price;
        gain > TINY * price.max(1.0) && self.enter(Column { price, pieces }, gain)
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
            }
            part[leaving] = share;
        }
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

    /// Improves until no pattern is worth more than `1 + slack` of its board, or `effort` is used up.
    pub(super) fn improve(&mut self, slack: f64, effort: &mut usize) {
        let mut aim = 0.1_f64.max(slack);
        while *effort > 0 {
            if self.drop_surplus(effort) {
                continue;
            }
            let improved = self.pass(aim, effort);
            if !improved && aim <= slack {
                break;
            }
            if !improved {
                aim = (aim * 0.2).max(slack);
            }
        }
    }

    /// Lets an item with a negative shadow price be cut more often than wanted.
    fn drop_surplus(&mut self, effort: &mut usize) -> bool {
        let worth = self.worth.iter().copied().enumerate();
        match worth.min_by(|a, b| a.1.total_cmp(&b.1)) {
            Some((item, worth)) if worth < -1e-7 => {
                *effort = effort.saturating_sub(self.items.len() * self.items.len());
                self.enter(Column { price: 0.0, pieces: vec![(item, -1.0)] }, -worth)
            }
            _ => false,
        }
    }

    /// Looks for the best pattern of each board and takes in those that lower the price.
    fn pass(&mut self, aim: f64, effort: &mut usize) -> bool {
        let choices = self.choices();
        let mut most = 0.0_f64;
        let mut found = Vec::new();
        for board in self.boards {
            let mut search = Search::new(&choices, board.price * (1.0 + aim));
            search.go(0, board.room, 0.0);
            most = most.max(search.best.max(search.missed) / board.price);
            *effort = effort.saturating_sub(MOST_STEPS - search.steps + self.items.len());
            if !search.found.is_empty() {
                found.push((search.best / board.price, board.price, search.found));
            }
        }
        let total: f64 =
            self.items.iter().zip(&self.worth).map(|(item, worth)| item.wanted * worth.max(0.0)).sum();
        self.bound = self.bound.max(total / most * (1.0 - TINY));
        if std::env::var("TR").is_ok() {
            eprintln!(
                "m {} aim {aim:.2e} bound {:.0} total {:.0} most {:.5} found {} effort {}",
                self.items.len(),
                self.bound,
                total,
                most,
                found.len(),
                *effort
            );
        }
        found.sort_by(|a, b| b.0.total_cmp(&a.0));
        let mut improved = false;
        for (_, price, pieces) in found {
            *effort = effort.saturating_sub(self.items.len() * self.items.len());
            improved |= self.offer(price, pieces);
        }
        improved
    }

    /// The items worth cutting, those worth most by length first.
    fn choices(&self) -> Vec<Choice> {
        let rows = self.items.iter().zip(&self.worth).enumerate();
        let choice = |(index, (item, &worth)): (usize, (&Item, &f64))| Choice {
            item: index,
            width: item.width,
            worth,
            rate: worth / item.width,
            most: item.wanted,
        };
        let mut choices: Vec<Choice> = rows.map(choice).filter(|choice| choice.worth > TINY).collect();
        choices.sort_by(|a, b| b.rate.total_cmp(&a.rate));
        choices
    }
}

/// An item the pattern search may use.
#[derive(Debug)]
struct Choice {
    item: usize,
    width: f64,
    worth: f64,
    /// Worth by width.
    rate: f64,
    most: f64,
}

/// The search for the pattern of one board worth most, by branch and bound.
#[derive(Debug)]
struct Search<'a> {
    choices: &'a [Choice],
    /// Only a pattern worth more than this is of use.
    best: f64,
    /// No pattern left out for want of steps is worth more than this.
    missed: f64,
    steps: usize,
    narrowest: f64,
    taken: Pieces,
    found: Pieces,
}

impl<'a> Search<'a> {
    fn new(choices: &'a [Choice], best: f64) -> Self {
        let narrowest = choices.iter().map(|choice| choice.width).fold(f64::MAX, f64::min);
        let (taken, found) = (Vec::new(), Vec::new());
        Self { choices, best, missed: 0.0, steps: MOST_STEPS, narrowest, taken, found }
    }

    /// Tries all ways to fill `room` from the choices from number `from` on.
    fn go(&mut self, from: usize, room: f64, worth: f64) {
        if worth > self.best {
            self.best = worth;
            self.found.clone_from(&self.taken);
        }
        if room < self.narrowest {
            return;
        }
        for (index, choice) in self.choices.iter().enumerate().skip(from) {
            let bound = worth + room * choice.rate;
            if bound <= self.best {
                return;
            }
            let mut count = (room / choice.width).floor().min(choice.most);
            while count > 0.0 {
                if self.steps == 0 {
                    self.missed = self.missed.max(bound);
                    return;
                }
                self.steps -= 1;
                self.taken.push((choice.item, count));
                self.go(index + 1, room - count * choice.width, worth + count * choice.worth);
                self.taken.pop();
                count -= 1.0;
            }
        }
    }
}
