//! What would make an install easier, and whether to caulk its joints at all.

use super::boards::PlannedBoards;
use super::movement::Movement;
use super::stack::StackFigures;
use super::window::{Window, window};
use crate::joint::{LaidBead, demand};
use crate::measure::{Length, bisect};
use crate::surface::{Finish, Fixing};

/// One thing done otherwise.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Change {
    /// Narrower boards: the widest that keep the chance asked for.
    Width(Length),
    /// Another finish before the boards go up.
    Finish(Finish),
    /// Nailed otherwise.
    Fixing(Fixing),
}

/// What a change brings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Easier {
    /// The change.
    pub change: Change,
    /// The window with it.
    pub window: Window,
}

/// Narrowest boards that are considered.
const NARROWEST: Length = Length::inches(1.5);
/// A change must be worth this much of chance.
const WORTH: f64 = 0.01;

/// The changes that help, each by itself. `finishes` are other finishes with how boards move under them.
pub fn easier(
    boards: &PlannedBoards<'_>,
    worlds: &Movement,
    finishes: &[(Finish, Movement)],
    figures: &StackFigures,
    now: &Window,
) -> Vec<Easier> {
    let mut found = Vec::new();
    if now.chance < boards.asked {
        let holds = |width: f64| {
            let narrower = PlannedBoards { width: Length::mm(width), ..*boards };
            window(&narrower, worlds, figures, None).chance >= boards.asked
        };
        if holds(NARROWEST.to_mm()) {
            let widest = bisect(NARROWEST.to_mm(), boards.width.to_mm(), 2.0, holds);
            let width = Length::mm(widest);
            let window = window(&PlannedBoards { width, ..*boards }, worlds, figures, None);
            found.push(Easier { change: Change::Width(width), window });
        }
    }
    let mut try_out = |change: Change, boards: &PlannedBoards<'_>, worlds: &Movement| {
        let window = window(boards, worlds, figures, None);
        if window.chance > now.chance + WORTH {
            found.push(Easier { change, window });
        }
    };
    for (finish, moves) in finishes {
        try_out(Change::Finish(*finish), boards, moves);
    }
    for fixing in [Fixing::Middle, Fixing::Tongue].into_iter().filter(|fixing| *fixing != boards.fixing) {
        try_out(Change::Fixing(fixing), &PlannedBoards { fixing, ..*boards }, worlds);
    }
    found.sort_by(|a, b| b.window.chance.total_cmp(&a.window.chance));
    found
}

/// Whether joints can be caulked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Caulking {
    /// How much a joint moves over the years, opening and closing together: 19 joints in 20 stay below.
    pub moves: Length,
    /// The joint width that the plan's bead needs for that.
    pub needs: Length,
    /// Whether the gap to leave is that wide.
    pub possible: bool,
}

/// Widest joint that is considered for caulking, and how finely its width is told, mm.
const WIDEST_CAULKED: f64 = 25.0;
const FINENESS: f64 = 0.05;

/// Whether a bead can follow the joints of boards hung as the window says.
pub fn caulking(
    boards: &PlannedBoards<'_>,
    worlds: &Movement,
    bead: &LaidBead,
    figures: &StackFigures,
    window: &Window,
) -> Caulking {
    let point = boards.species.coefficient(boards.ring) * boards.width.to_mm();
    let hung = window.best.moisture.to_pct();
    let mut moves: Vec<(f64, f64)> = worlds
        .lot
        .iter()
        .zip(&worlds.extremes)
        .map(|(lot, (dry, damp))| {
            // A joint that moves more than its row by what pieces differ.
            let piece = lot * (1.0 + figures.piece_shrinkage.sd);
            (point * piece * (hung - dry).max(0.0), point * piece * (damp - hung).max(0.0))
        })
        .collect();
    moves.sort_by(|a, b| (a.0 + a.1).total_cmp(&(b.0 + b.1)));
    let (opens, closes) = moves.get(moves.len() * 19 / 20).copied().unwrap_or_default();
    let movement = Length::mm(opens + closes);
    let follows = |gap: f64| {
        let gap = Length::mm(gap);
        demand(gap, gap - Length::mm(closes), gap + Length::mm(opens), Length::ZERO)
            .is_some_and(|asked| bead.takes(&asked))
    };
    let needs = Length::mm(bisect(FINENESS, WIDEST_CAULKED, FINENESS, |gap| !follows(gap)));
    Caulking { moves: movement, needs, possible: needs <= window.best.gap }
}
