//! Boards, the items cut from them, and the pattern of one board worth most.
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
    /// Total width of items that can be cut from it, micrometres.
    pub(super) room: f64,
    /// Price, cents.
    pub(super) price: f64,
}

/// What one board is cut into: items by their number, and how many of each.
pub(super) type Pieces = Vec<(usize, f64)>;

/// How often `width` goes into `room`.
#[expect(clippy::cast_possible_truncation, clippy::cast_precision_loss, reason = "saturates far off")]
pub(super) fn times_in(width: f64, room: f64) -> f64 {
    (room / width) as i64 as f64
}

/// A number of things as a float.
#[expect(clippy::cast_precision_loss, reason = "exact up to 2^53")]
pub(super) fn to_number(count: usize) -> f64 {
    count as f64
}

/// The whole part of a float as a number of things.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "saturates")]
pub(super) fn to_count(number: f64) -> usize {
    number as usize
}

/// An item that is worth something.
struct Choice {
    item: usize,
    width: f64,
    worth: f64,
    /// Worth by width.
    rate: f64,
    most: f64,
}

/// Parts into which the longest board is divided for [`Limits`].
const CELLS: usize = 512;

/// What any pattern of a given room is worth at most: the best one with widths rounded down to cells.
struct Limits {
    cell: f64,
    worth: Vec<f64>,
}

impl Limits {
    /// The limits up to `room`. `choices` come from the narrowest on.
    fn new<'a>(choices: impl Iterator<Item = &'a Choice>, room: f64) -> Self {
        let cell = room / to_number(CELLS - 1);
        let mut worth = vec![0.0_f64; CELLS];
        for choice in choices {
            let width = to_count(choice.width / cell);
            if width == 0 {
                return Self { cell, worth: vec![f64::MAX; CELLS] };
            }
            if width >= CELLS || worth[width] >= choice.worth {
                continue;
            }
            for start in (width..CELLS).step_by(width) {
                let (narrower, wider) = worth.split_at_mut(start);
                let with = narrower[start - width..].iter().map(|worth| worth + choice.worth);
                wider.iter_mut().zip(with).for_each(|(best, with)| *best = best.max(with));
            }
        }
        Self { cell, worth }
    }

    fn of(&self, room: f64) -> f64 {
        self.worth[to_count(room / self.cell).min(CELLS - 1)]
    }
}

/// The search for patterns worth much, given what each item is worth.
pub(super) struct Pricing {
    /// Those worth most by width first.
    choices: Vec<Choice>,
    limits: Limits,
    narrowest: f64,
}

impl Pricing {
    /// `items` from the widest on, and their worth.
    pub(super) fn new(items: &[Item], worth: &[f64], boards: &[Board]) -> Self {
        let choice = |(item, (&Item { width, wanted }, &worth)): (usize, (&Item, &f64))| Choice {
            item,
            width,
            worth,
            rate: worth / width,
            most: wanted,
        };
        let choices = items.iter().zip(worth).enumerate().map(choice);
        let mut choices: Vec<Choice> = choices.filter(|choice| choice.worth > 0.0).collect();
        let longest = boards.iter().map(|board| board.room).fold(0.0, f64::max);
        let limits = Limits::new(choices.iter().rev(), longest);
        let narrowest = choices.last().map_or(f64::MAX, |choice| choice.width);
        choices.sort_by(|a, b| b.rate.total_cmp(&a.rate));
        Self { choices, limits, narrowest }
    }

    /// Looks, for so many steps, for patterns of `room` worth more than `least`, each worth more than
    /// the one before.
    pub(super) fn search(&self, room: f64, least: f64, steps: usize) -> Found {
        let (taken, patterns) = (Vec::new(), Vec::new());
        let mut search = Search { pricing: self, best: least, missed: 0.0, steps, taken, patterns };
        search.go(0, room, 0.0);
        Found {
            at_most: search.best.max(search.missed),
            steps: steps - search.steps,
            patterns: search.patterns,
        }
    }
}

/// What a search found.
pub(super) struct Found {
    /// No pattern is worth more than this.
    pub(super) at_most: f64,
    /// Steps it took.
    pub(super) steps: usize,
    /// Patterns, with what each is worth.
    pub(super) patterns: Vec<(f64, Pieces)>,
}

/// A search by branch and bound.
struct Search<'a> {
    pricing: &'a Pricing,
    best: f64,
    /// No pattern left out for want of steps is worth more than this.
    missed: f64,
    steps: usize,
    taken: Pieces,
    patterns: Vec<(f64, Pieces)>,
}

impl Search<'_> {
    /// Tries all ways to fill `room` from the choices from number `from` on.
    fn go(&mut self, from: usize, room: f64, worth: f64) {
        if worth > self.best {
            self.best = worth;
            self.patterns.push((worth, self.taken.clone()));
        }
        let limit = worth + self.pricing.limits.of(room);
        if room < self.pricing.narrowest || limit <= self.best {
            return;
        }
        for (index, choice) in self.pricing.choices.iter().enumerate().skip(from) {
            let limit = limit.min(worth + room * choice.rate);
            if limit <= self.best {
                return;
            }
            let mut count = times_in(choice.width, room).min(choice.most);
            while count > 0.0 {
                if self.steps == 0 {
                    self.missed = self.missed.max(limit);
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
