//! From fractions of boards to whole boards: the whole boards of the relaxed list, and for the rest
//! board after board the longest pieces that still fit.

use super::mixes::Mixes;
use super::pattern::{Board, Item, Pieces, times_in, to_count};
use super::relaxation::Relaxation;

/// Boards cut alike.
#[derive(Clone)]
pub(super) struct Cut {
    /// Number of the board.
    pub(super) board: usize,
    /// What is cut from each.
    pub(super) pieces: Pieces,
    /// How many of these boards.
    pub(super) times: f64,
}

/// Work for the relaxed list, about in nanoseconds: for any, for each piece, for each two kinds.
const EFFORT: (usize, usize, usize) = (300_000, 2_000, 40);
/// Pieces that count towards it at most.
const MOST: usize = 2_000;
/// The share within which the relaxed price and its bound are to meet: for at most so many kinds, and
/// for more.
const SLACK: (f64, usize, f64) = (1e-6, 60, 1e-3);

/// The search for the cheapest list.
pub(super) struct Rounding<'a> {
    /// From the widest on.
    pub(super) items: &'a [Item],
    pub(super) boards: &'a [Board],
    /// All prices are whole multiples of this, cents.
    pub(super) grain: f64,
    pub(super) mixes: Mixes,
    /// No list is cheaper, cents.
    pub(super) bound: f64,
    /// The cheapest list so far.
    pub(super) cuts: Vec<Cut>,
    /// Its price, cents, and the room bought.
    pub(super) price: (f64, f64),
}

impl<'a> Rounding<'a> {
    /// Finds the list. Every item must fit some board.
    pub(super) fn run(items: &'a [Item], boards: &'a [Board], grain: f64) -> Self {
        let mut rounding = Self::new(items, boards, grain);
        let relaxation = rounding.relax();
        rounding.round(&relaxation);
        rounding.try_mixes();
        rounding.repair(&relaxation.bounding);
        rounding
    }

    /// No list for these items is cheaper, cents.
    pub(super) fn bound_of(items: &'a [Item], boards: &'a [Board], grain: f64) -> f64 {
        let mut rounding = Self::new(items, boards, grain);
        rounding.relax();
        rounding.bound
    }

    fn new(items: &'a [Item], boards: &'a [Board], grain: f64) -> Self {
        let (mixes, price) = (Mixes::new(items, boards), (f64::INFINITY, f64::INFINITY));
        Self { items, boards, grain, bound: mixes.bound(), mixes, cuts: vec![], price }
    }

    /// The greedy list, and the relaxed one that starts from its patterns.
    fn relax(&mut self) -> Relaxation<'a> {
        self.complete(vec![]);
        let mut relaxation = Relaxation::new(self.items, self.boards);
        for cut in &self.cuts {
            relaxation.offer(self.boards[cut.board].price, cut.pieces.clone());
        }
        let pieces: f64 = self.items.iter().map(|item| item.wanted).sum();
        let kinds = self.items.len();
        let effort = EFFORT.0 + EFFORT.1 * to_count(pieces).min(MOST) + EFFORT.2 * kinds * kinds;
        relaxation.improve(if kinds > SLACK.1 { SLACK.2 } else { SLACK.0 }, effort);
        self.bound = self.bound.max((relaxation.bound / self.grain - 1e-6).ceil() * self.grain);
        relaxation
    }

    /// Whether no list that costs `least` or more is cheaper than the one at hand.
    pub(super) fn is_best(&self, least: f64) -> bool {
        least > self.price.0 - self.grain + 1e-3
    }

    /// Buys the whole boards of the relaxed list, as far as their pieces are wanted, and completes them.
    fn round(&mut self, relaxation: &Relaxation<'_>) {
        let mut left: Vec<f64> = self.items.iter().map(|item| item.wanted).collect();
        let mut cuts = Vec::new();
        for (pieces, times) in relaxation.patterns() {
            let times = (times + 1e-6).floor().min(enough(pieces, &left));
            cuts.extend(self.buy(&mut left, pieces.clone(), times));
        }
        self.complete(cuts);
    }

    /// Boards for some pieces, the cheapest that do.
    pub(super) fn buy(&self, left: &mut [f64], pieces: Pieces, times: f64) -> Option<Cut> {
        let board =
            cheapest(self.boards, self.width(&pieces)).filter(|_| times > 0.0 && !pieces.is_empty())?;
        pieces.iter().for_each(|&(item, count)| left[item] -= count * times);
        Some(Cut { board, pieces, times })
    }

    fn width(&self, pieces: &Pieces) -> f64 {
        pieces.iter().map(|&(item, count)| count * self.items[item].width).sum()
    }

    /// Buys boards for all that a list lacks: each time the longest item with the longest that still
    /// fit, on the board that gives most width for its price. Keeps the list if it is cheaper than the
    /// one at hand, or as cheap with less room bought, and says whether it is.
    pub(super) fn complete(&mut self, mut cuts: Vec<Cut>) -> bool {
        let mut left: Vec<f64> = self.items.iter().map(|item| item.wanted).collect();
        for cut in &cuts {
            cut.pieces.iter().for_each(|&(item, count)| left[item] -= count * cut.times);
        }
        while let Some(longest) = left.iter().position(|&left| left > 0.0) {
            let boards = self.boards.iter().filter(|board| board.room >= self.items[longest].width);
            let filled = boards.map(|board| {
                let pieces = self.fill(&left, board.room);
                (self.width(&pieces) / board.price, pieces)
            });
            let Some((_, pieces)) = filled.max_by(|a, b| a.0.total_cmp(&b.0)) else { return false };
            let times = enough(&pieces, &left);
            cuts.extend(self.buy(&mut left, pieces, times));
        }
        let sum = |each: fn(&Board) -> f64| -> f64 {
            cuts.iter().map(|cut| cut.times * each(&self.boards[cut.board])).sum()
        };
        let price = (sum(|board| board.price), sum(|board| board.room));
        let better = price < self.price;
        if better {
            (self.price, self.cuts) = (price, cuts);
        }
        better
    }

    /// The longest pieces that fit some room.
    fn fill(&self, left: &[f64], mut room: f64) -> Pieces {
        let mut pieces = Vec::new();
        for (item, (Item { width, .. }, left)) in self.items.iter().zip(left).enumerate() {
            let count = times_in(*width, room).min(*left);
            if count > 0.0 {
                pieces.push((item, count));
                room -= count * width;
            }
        }
        pieces
    }
}

/// The cheapest board with room for some width, the shortest of equals.
pub(super) fn cheapest(boards: &[Board], width: f64) -> Option<usize> {
    let boards = boards.iter().enumerate().filter(|(_, board)| board.room >= width);
    let cheapest =
        boards.min_by(|(_, a), (_, b)| a.price.total_cmp(&b.price).then(a.room.total_cmp(&b.room)));
    cheapest.map(|(index, _)| index)
}

/// How many boards of a pattern what is left calls for.
fn enough(pieces: &Pieces, left: &[f64]) -> f64 {
    pieces.iter().map(|&(item, count)| times_in(count, left[item])).fold(f64::MAX, f64::min)
}
