//! What each kind of reading argues for: by how much the odds change when it is left out.

use super::weigh::{Counts, Gaps, Scale};
use super::{Odds, Reweighed, Weighed};

/// What a clue is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum ClueKind {
    /// How wide the gaps are on the whole.
    MeanGap,
    /// How they are spread over the joints: even, sporadic, one line, one part.
    Pattern,
    /// How wet the boards are, against what the room makes them.
    Moisture,
    /// How the beads failed.
    Failures,
    /// What the room's hygrometer says.
    Room,
}

/// One clue and what it argues for.
#[derive(Debug, Clone, PartialEq)]
pub struct Clue {
    /// What it is.
    pub kind: ClueKind,
    /// By what factor it changes each cause's odds, in the order of [`super::Cause::ALL`].
    pub factors: [f64; 6],
}

pub(super) fn clues(scale: &Scale<'_>, weighed: &Weighed) -> Vec<Clue> {
    let all = Counts::ALL;
    let causes = |counts: Counts| Odds::new(weighed, &Reweighed::sample(scale, weighed, counts)).causes;
    let with = causes(all);
    let mean = causes(Counts { gaps: Gaps::Mean, ..all });
    let mut found = vec![
        Clue {
            kind: ClueKind::MeanGap,
            factors: factors(mean, causes(Counts { gaps: Gaps::Nothing, ..all })),
        },
        Clue { kind: ClueKind::Pattern, factors: factors(with, mean) },
    ];
    let mut without = |kind, is_there: bool, counts| {
        if is_there {
            found.push(Clue { kind, factors: factors(with, causes(counts)) });
        }
    };
    without(ClueKind::Moisture, scale.has_meter(), Counts { meter: false, ..all });
    without(ClueKind::Failures, scale.has_failures(), Counts { failures: false, ..all });
    without(ClueKind::Room, scale.knows_room(), Counts { room: false, ..all });
    found
}

/// By what factors the odds differ.
fn factors(with: [f64; 6], without: [f64; 6]) -> [f64; 6] {
    let odds = |p: f64| p.max(1e-6) / (1.0 - p).max(1e-6);
    std::array::from_fn(|at| odds(with[at]) / odds(without[at]))
}
