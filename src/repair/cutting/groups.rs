//! Groups of similar lengths, planned as one item each where a job has too many lengths.

use super::problem::{Item, times_in, to_count, to_number};

/// The most groups that are planned.
const MAX_GROUPS: usize = 240;
/// Millimeters to which lengths are rounded up to be grouped, the first that gives few enough groups;
/// then ten times these, and so on.
const ROUNDING: [f64; 3] = [1.0, 2.0, 5.0];

/// Lengths in whole millimeters, each with a number of pieces.
pub(super) type Lengths = Vec<(f64, f64)>;

/// The lengths of pieces, longest first, each once, without lengths or counts of zero.
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

/// Lengths in groups, and how many pieces of each are still to be cut.
pub(super) struct Groups {
    /// Of each group, the longest length is last; it is cut first.
    groups: Vec<Lengths>,
    /// Micrometers.
    kerf: f64,
}

impl Groups {
    /// Groups lengths, given longest first.
    pub(super) fn new(lengths: &[(f64, f64)], kerf: f64) -> Self {
        let steps = (0..).flat_map(|power| ROUNDING.map(|step| step * 10_f64.powi(power)));
        let mut groups: Vec<Lengths> = Vec::new();
        for step in steps {
            let rounded = |length: f64| to_count((length / step).ceil());
            let chunks = lengths.chunk_by(|a, b| rounded(a.0) == rounded(b.0));
            groups = chunks.map(|group| group.iter().rev().copied().collect()).collect();
            if groups.len() <= MAX_GROUPS {
                break;
            }
        }
        Self { groups, kerf }
    }

    /// Every group as if all its pieces had its longest length.
    pub(super) fn as_longest(&self) -> Vec<Item> {
        self.groups.iter().map(|group| self.item(group, group.last())).collect()
    }

    /// Every group as if all its pieces had its shortest length. `None` if each has only one length.
    pub(super) fn as_shortest(&self) -> Option<Vec<Item>> {
        let mixed = self.groups.iter().any(|group| group.len() > 1);
        mixed.then(|| self.groups.iter().map(|group| self.item(group, group.first())).collect())
    }

    fn item(&self, group: &Lengths, length: Option<&(f64, f64)>) -> Item {
        let millimeters = length.map_or(0.0, |length| length.0);
        Item { width: millimeters * 1e3 + self.kerf, demand: group.iter().map(|length| length.1).sum() }
    }

    /// Takes the pieces for boards cut to a pattern of groups: pieces of one board, and how many boards
    /// get these, until it is `times` boards.
    pub(super) fn take(&mut self, pattern: &[(usize, f64)], mut times: f64) -> Vec<(Lengths, f64)> {
        let mut boards = Vec::new();
        while times > 0.0 {
            let enough_for = |&(group, count): &(usize, f64)| {
                self.groups[group].last().map_or(0.0, |length| times_in(count, length.1))
            };
            let alike = pattern.iter().map(enough_for).fold(times, f64::min).max(1.0);
            let mut lengths = Lengths::new();
            for &(group, count) in pattern {
                self.take_group(group, count, alike, &mut lengths);
            }
            lengths.sort_by(|a, b| b.0.total_cmp(&a.0));
            boards.push((lengths, alike));
            times -= alike;
        }
        boards
    }

    /// Takes so many pieces of a group for each of some boards cut alike.
    fn take_group(&mut self, group: usize, mut count: f64, boards: f64, to: &mut Lengths) {
        while let Some(length) = self.groups[group].last_mut().filter(|_| count > 0.0) {
            let taken = times_in(boards, length.1).min(count);
            to.push((length.0, taken));
            length.1 -= taken * boards;
            count -= taken;
            if length.1 < 1.0 {
                self.groups[group].pop();
            }
        }
    }
}
