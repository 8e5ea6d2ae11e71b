//! Cutting some boards of a list anew.
//!
//! The boards that cost most over the worth of their pieces are cut anew together, then some of the
//! next with the first. On a small job these are all boards, and if every way was tried the list is
//! known to be the cheapest.

use super::completion::Completion;
use super::pattern::{Item, times_in};
use super::rounding::{Cut, Rounding};

/// Steps for all repairs, of some twenty nanoseconds: of small jobs, and of others.
const STEPS: (usize, usize) = (80_000, 30_000);
/// Steps for one try.
const STEPS_EACH: usize = 6_000;
/// Jobs of at most so many pieces are small, and tried as a whole.
const WHOLE: f64 = 100.0;
/// Pieces that are cut anew together otherwise.
const SOME: f64 = 20.0;
/// Parts of what is to be undercut that are tried one after the other.
const PARTS: [f64; 4] = [0.125, 0.25, 0.5, 1.0];

/// Boards to be cut anew.
struct Anew {
    /// How many of each item are on them.
    wanted: Vec<f64>,
    /// What they cost over the worth of their pieces.
    over: f64,
    /// The boards of the list that stay.
    kept: Vec<Cut>,
    /// How many patterns they are from.
    patterns: usize,
}

impl Rounding<'_> {
    /// Cuts boards anew while that lowers the price. No pattern may be worth more than its board.
    pub(super) fn repair(&mut self, worth: &[f64]) {
        let pieces: f64 = self.items.iter().map(|item| item.wanted).sum();
        let small = pieces <= WHOLE;
        let (mut steps, mut skip) = (if small { STEPS.0 } else { STEPS.1 }, 0);
        while steps > 0 && skip < self.cuts.len() && !self.is_best(self.bound) {
            let anew = self.choose(worth, skip, if skip == 0 && small { WHOLE } else { SOME });
            skip += anew.patterns.max(2) - 1;
            if self.cut_anew(anew, worth, &mut steps) {
                skip = 0;
            }
            steps = steps.saturating_sub(4 * self.cuts.len());
        }
    }

    /// Chooses boards with at most so many pieces: of the pattern that costs most over its pieces'
    /// worth first, then of those from number `skip` on.
    fn choose(&mut self, worth: &[f64], skip: usize, most: f64) -> Anew {
        let over = |cut: &Cut| {
            let worth: f64 = cut.pieces.iter().map(|&(item, count)| count * worth[item]).sum();
            self.boards[cut.board].price - worth
        };
        self.cuts.sort_by(|a, b| over(b).total_cmp(&over(a)));
        let others = self.cuts.len() - 1;
        let order = std::iter::once(0).chain((0..others).map(|place| 1 + (place + skip) % others));
        let wanted = vec![0.0; self.items.len()];
        let mut anew = Anew { wanted, over: 0.0, kept: self.cuts.clone(), patterns: 0 };
        let mut room = most;
        for place in order {
            let cut = &self.cuts[place];
            let pieces: f64 = cut.pieces.iter().map(|piece| piece.1).sum();
            let times = times_in(pieces, room).min(cut.times);
            room -= times * pieces;
            anew.kept[place].times -= times;
            anew.over += times * over(cut);
            anew.patterns += usize::from(times > 0.0);
            cut.pieces.iter().for_each(|&(item, count)| anew.wanted[item] += times * count);
        }
        anew.kept.retain(|cut| cut.times > 0.0);
        anew
    }

    /// Looks for cheaper boards for the same pieces; `true` if there are.
    fn cut_anew(
        &mut self,
        Anew { mut wanted, over, kept, .. }: Anew,
        worth: &[f64],
        steps: &mut usize,
    ) -> bool {
        let rows: Vec<usize> = (0..wanted.len()).filter(|&item| wanted[item] > 0.0).collect();
        let item = |&row: &usize| Item { width: self.items[row].width, wanted: wanted[row] };
        let items: Vec<Item> = rows.iter().map(item).collect();
        let worth: Vec<f64> = rows.iter().map(|&row| worth[row]).collect();
        let over = over - self.grain + 1e-3;
        let mut all = false;
        for part in PARTS {
            let allowed = STEPS_EACH.min(*steps);
            let mut completion = Completion::new(&items, self.boards, &worth, allowed);
            let found = completion.search(over * part);
            *steps -= allowed - completion.steps;
            if found {
                let mut cuts = kept;
                for pieces in completion.found {
                    let pieces = pieces.into_iter().map(|(row, count)| (rows[row], count)).collect();
                    cuts.extend(self.buy(&mut wanted, pieces, 1.0));
                }
                return self.complete(cuts);
            }
            all = completion.all && completion.steps > 0;
        }
        if all && kept.is_empty() {
            self.bound = self.price.0;
        }
        false
    }
}
