//! Names that are spelled much like one that does not exist.

use strsim::osa_distance;

use super::towns::Towns;
use crate::named::fold;

/// What quickly rules out most names: which letters each has, and how many.
#[derive(Debug)]
pub(super) struct Spellings {
    letters: Vec<(u32, usize)>,
}

impl Spellings {
    /// Looks at all towns once.
    pub fn of(towns: &Towns) -> Self {
        Self { letters: (0..towns.len()).map(|town| letters(&fold(towns.name(town)))).collect() }
    }

    /// The towns spelled most like `folded`, with the number of letters that differ, in no order.
    pub fn close(&self, folded: &str, towns: &Towns) -> Vec<(usize, usize)> {
        let most = match folded.len() {
            0..=3 => 1,
            4..=11 => 2,
            _ => 3,
        };
        let (set, length) = letters(folded);
        let mut close = Vec::new();
        for (town, &(other_set, other_length)) in self.letters.iter().enumerate() {
            // A letter changed takes at most one out of the set and puts at most one in.
            let beyond = |set: u32, other: u32| (set & !other).count_ones() as usize <= most;
            let may =
                length.abs_diff(other_length) <= most && beyond(set, other_set) && beyond(other_set, set);
            if may {
                let distance = osa_distance(folded, &fold(towns.name(town)));
                if distance <= most {
                    close.push((distance, town));
                }
            }
        }
        close
    }
}

/// The set of letters of a folded name, a bit each, and its length.
fn letters(folded: &str) -> (u32, usize) {
    let bit = |byte: u8| if byte.is_ascii_lowercase() { 1 << (byte - b'a') } else { 1 << 26 };
    (folded.bytes().fold(0, |set, byte| set | bit(byte)), folded.len())
}
