//! Kinds of pieces: lengths that are planned as one.

use super::pattern::{Item, times_in, to_count, to_number};

/// So many kinds are planned at most; with more lengths, similar ones are one kind.
const MOST: usize = 240;
/// Steps to which lengths are rounded up to tell kinds, millimetres; then ten times these, and so on.
const STEPS: [f64; 3] = [1.0, 2.0, 5.0];

/// Lengths in whole millimetres, each with a number of pieces.
pub(super) type Lengths = Vec<(f64, f64)>;

/// The lengths of pieces, from the longest on, with neither lengths nor numbers of zero.
pub(super) fn whole_millimeters(pieces: &[(f64, usize)]) -> Lengths {
    let wanted = pieces.iter().filter(|(length, count)| length.is_finite() && *length > 0.0 && *count > 0);
    let whole = |&(length, count): &(f64, usize)| ((length * 1e3 - 1e-6).ceil().max(1.0), to_number(count));
    let mut lengths: Lengths = wanted.map(whole).collect();
    lengths.sort_by(|a, b| b.0.total_cmp(&a.0));
    lengths.dedup_by(|next, length| {
        let same = length.0 - next.0 < 0.5;
        length.1 += if same { next.1 } else { 0.0 };
        same
    });
    lengths
}

/// Lengths sorted into kinds.
pub(super) struct Kinds {
    /// The lengths of each kind with how many are still to be cut; the longest, cut next, is last.
    kinds: Vec<Lengths>,
    /// Micrometres.
    kerf: f64,
}

impl Kinds {
    /// Sorts lengths, given from the longest on.
    pub(super) fn new(lengths: &[(f64, f64)], kerf: f64) -> Self {
        let steps = (0..).flat_map(|power| STEPS.map(|step| step * 10_f64.powi(power)));
        let mut kinds: Vec<Lengths> = Vec::new();
        for step in steps {
            let rounded = |length: f64| to_count((length / step).ceil());
            let same = lengths.chunk_by(|a, b| rounded(a.0) == rounded(b.0));
            kinds = same.map(|kind| kind.iter().rev().copied().collect()).collect();
            if kinds.len() <= MOST {
                break;
            }
        }
        Self { kinds, kerf }
    }

    /// Every kind as its longest.
    pub(super) fn items(&self) -> Vec<Item> {
        self.kinds.iter().map(|kind| self.item(kind, kind.last())).collect()
    }

    /// Every kind as its shortest. `None` if all are of one length.
    pub(super) fn shortest(&self) -> Option<Vec<Item>> {
        let several = self.kinds.iter().any(|kind| kind.len() > 1);
        several.then(|| self.kinds.iter().map(|kind| self.item(kind, kind.first())).collect())
    }

    fn item(&self, kind: &Lengths, as_one: Option<&(f64, f64)>) -> Item {
        let length = as_one.map_or(0.0, |length| length.0);
        Item { width: length * 1e3 + self.kerf, wanted: kind.iter().map(|length| length.1).sum() }
    }

    /// Takes the pieces for boards cut to one pattern of kinds: those of a board, and for how many
    /// boards, until it is `times`.
    pub(super) fn take(&mut self, pattern: &[(usize, f64)], mut times: f64) -> Vec<(Lengths, f64)> {
        let mut boards = Vec::new();
        while times > 0.0 {
            let longest = |&(kind, count): &(usize, f64)| {
                self.kinds[kind].last().map_or(0.0, |length| times_in(count, length.1))
            };
            let alike = pattern.iter().map(longest).fold(times, f64::min).max(1.0);
            let mut lengths = Lengths::new();
            for &(kind, count) in pattern {
                self.take_kind(kind, count, alike, &mut lengths);
            }
            lengths.sort_by(|a, b| b.0.total_cmp(&a.0));
            boards.push((lengths, alike));
            times -= alike;
        }
        boards
    }

    /// Takes so many pieces of a kind for each of some boards cut alike.
    fn take_kind(&mut self, kind: usize, mut count: f64, boards: f64, to: &mut Lengths) {
        while let Some(length) = self.kinds[kind].last_mut().filter(|_| count > 0.0) {
            let taken = times_in(boards, length.1).min(count);
            to.push((length.0, taken));
            length.1 -= taken * boards;
            count -= taken;
            if length.1 < 1.0 {
                self.kinds[kind].pop();
            }
        }
    }
}
