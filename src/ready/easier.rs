//! What would make an install easier, and whether to caulk its joints at all.

use super::boards::{Joints, PlannedBoards};
use super::movement::Movement;
use super::stack::StackFigures;
use super::window::{Aim, Window, window};
use crate::joint::{LaidBead, demand};
use crate::measure::Length;
use crate::surface::{Finish, Fixing};

/// One thing done otherwise.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Change {
    /// Joints caulked, or left open.
    Joints(Joints),
    /// The gap that is worth leaving instead of the one that was settled.
    Gap(Length),
    /// Narrower boards: the widest of the usual ones that keep the chance asked for.
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

/// Boards are sold in widths an inch apart; narrower ones than this are no boards.
const NARROWER: Length = Length::inches(1.0);
const NARROWEST: Length = Length::inches(2.0);
/// A change must be worth this much of chance.
const WORTH: f64 = 0.01;

/// The changes that help, each by itself, best first: none where the boards can have the chance asked for as
/// they are planned. `gap` is one that is settled; `finishes` are other finishes with how boards move under
/// them; `bead` is the plan's.
pub fn easier(
    boards: &PlannedBoards<'_>,
    worlds: &Movement,
    (gap, finishes, bead): (Option<Length>, &[(Finish, Movement)], Option<&LaidBead>),
    figures: &StackFigures,
    now: &Window,
) -> Vec<Easier> {
    let mut found = Vec::new();
    if now.chance >= boards.asked {
        return found;
    }
    let mut try_out = |change: Change, boards: &PlannedBoards<'_>, worlds: &Movement, gap: Option<Length>| {
        let window = window(boards, worlds, figures, gap);
        let helps = window.chance > now.chance + WORTH;
        if helps {
            found.push(Easier { change, window });
        }
        helps && window.chance >= boards.asked
    };
    let joints = boards.joints.other();
    let other = PlannedBoards { joints, ..*boards };
    // Nobody caulks joints that no bead can follow.
    let can = joints == Joints::Open
        || bead.is_some_and(|bead| {
            let aim = window(&other, worlds, figures, gap).best;
            caulking(&other, worlds, bead, figures, aim).possible
        });
    if can {
        try_out(Change::Joints(joints), &other, worlds, gap);
    }
    if gap.is_some() {
        let free = window(boards, worlds, figures, None).best.gap;
        try_out(Change::Gap(free), boards, worlds, None);
    }
    for (finish, moves) in finishes {
        try_out(Change::Finish(*finish), boards, moves, gap);
    }
    for fixing in [Fixing::Middle, Fixing::Tongue].into_iter().filter(|fixing| *fixing != boards.fixing) {
        try_out(Change::Fixing(fixing), &PlannedBoards { fixing, ..*boards }, worlds, gap);
    }
    let mut width = boards.width - NARROWER;
    while width >= NARROWEST
        && !try_out(Change::Width(width), &PlannedBoards { width, ..*boards }, worlds, gap)
    {
        width = width - NARROWER;
    }
    // Of narrower boards only the widest that do.
    let enough = found.iter().any(|easier| is_width(easier) && easier.window.chance >= boards.asked);
    found.retain(|easier| !is_width(easier) || (enough && easier.window.chance >= boards.asked));
    found.sort_by(|a, b| b.window.chance.total_cmp(&a.window.chance));
    found
}

const fn is_width(easier: &Easier) -> bool {
    matches!(easier.change, Change::Width(_))
}

/// Whether joints can be caulked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Caulking {
    /// The gap that is left, in which the bead is laid.
    pub gap: Length,
    /// How much a joint moves over the years, opening and closing together: half of the joints stay below.
    pub usual: Length,
    /// How much it opens and closes, together: 19 joints in 20 stay below.
    pub moves: Length,
    /// How far the plan's bead in that gap can be opened at its worst place.
    pub takes: Length,
    /// How far such a joint opens: 19 in 20 stay below.
    pub opens: Length,
    /// Whether the bead can follow: opening and closing.
    pub possible: bool,
}

/// Whether a bead can follow the joints of boards hung at this moisture, with this gap.
pub fn caulking(
    boards: &PlannedBoards<'_>,
    worlds: &Movement,
    bead: &LaidBead,
    figures: &StackFigures,
    aim: Aim,
) -> Caulking {
    let point = boards.species.coefficient(boards.ring) * boards.width.to_mm();
    let hung = aim.moisture.to_pct();
    let mut moves: Vec<(f64, f64)> = worlds
        .lot
        .iter()
        .zip(&worlds.extremes)
        .map(|(lot, (dry, damp))| (point * lot * (hung - dry).max(0.0), point * lot * (damp - hung).max(0.0)))
        .collect();
    moves.sort_by(|a, b| (a.0 + a.1).total_cmp(&(b.0 + b.1)));
    let at = |part: usize| moves.get(moves.len() * part / 20).copied().unwrap_or_default();
    let (usual, most) = (at(10), at(19));
    // A joint that moves more than its row by what pieces differ.
    let piece = 1.0 + figures.piece_shrinkage.sd;
    let (opens, closes) = (Length::mm(most.0 * piece), Length::mm(most.1 * piece));
    // Boards that were hung tight leave a bead the V alone; it is taken as laid in the least that can be filled.
    let laid = aim.gap.max(LEAST_GAP);
    let asked = demand(laid, laid - closes, laid + opens, Length::ZERO);
    Caulking {
        gap: aim.gap,
        usual: Length::mm(usual.0 + usual.1),
        moves: opens + closes,
        takes: bead.limits(laid).open_hidden,
        opens,
        possible: asked.is_some_and(|asked| bead.takes(&asked)),
    }
}

/// The least gap that a bead reaches into.
const LEAST_GAP: Length = Length::mm(0.1);
