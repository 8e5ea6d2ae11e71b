//! What would make an install easier, and whether to caulk its joints at all.

use super::boards::{Joints, PlannedBoards};
use super::gate::good_enough;
use super::movement::Movement;
use super::stack::StackFigures;
use super::window::{Aim, Window, window};
use crate::belief::quantile;
use crate::joint::{LaidBead, demand};
use crate::measure::{Humidity, Length};
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
    /// The room kept no drier than this in winter.
    Humidifier(Humidity),
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
const WORTH: f64 = 0.03;

/// The changes that help, each by itself, best first: none where the boards can have the chance asked for as
/// they are planned; with the boards' `now` goes whether caulk that is planned can't follow. `gap` is one that is settled; `others` are finishes and ways to keep the room with how boards
/// move there; `bead` is the plan's.
pub fn easier(
    boards: &PlannedBoards<'_>,
    worlds: &Movement,
    (gap, others, bead): (Option<Length>, &[(Change, Movement)], Option<&LaidBead>),
    figures: &StackFigures,
    (now, caulk_fails): (&Window, bool),
) -> Vec<Easier> {
    let mut found = Vec::new();
    let enough = good_enough(boards.asked);
    if now.chance >= enough && !caulk_fails {
        return found;
    }
    // Where the caulk fails, the joints open whatever the boards do.
    let reached = if caulk_fails { 0.0 } else { now.chance };
    let mut try_out = |change: Change, boards: &PlannedBoards<'_>, worlds: &Movement, gap: Option<Length>| {
        let window = window(boards, worlds, figures, gap);
        let follows = |bead: &LaidBead| caulking(boards, worlds, bead, figures, window.best).possible;
        if caulk_fails && boards.joints == Joints::Sealed && !bead.is_some_and(follows) {
            return false;
        }
        let helps = window.chance > reached + WORTH;
        if helps {
            found.push(Easier { change, window });
        }
        helps && window.chance >= enough
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
    for (change, moves) in others {
        try_out(*change, boards, moves, gap);
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
    found.retain(|easier| !matches!(easier.change, Change::Width(_)) || easier.window.chance >= enough);
    // What does not bring the boards there is told only where nothing does.
    if found.iter().any(|easier| easier.window.chance >= enough) {
        found.retain(|easier| easier.window.chance >= enough);
    }
    found.sort_by(|a, b| b.window.chance.total_cmp(&a.window.chance));
    found
}

/// Whether joints can be caulked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Caulking {
    /// The gap that is left, in which the bead is laid.
    pub gap: Length,
    /// How much a joint moves over the years, opening and closing together: half of the joints stay below.
    pub usual: Length,
    /// Which way the bead is asked for the larger part of what it takes.
    pub way: Way,
    /// How far a joint moves that way: 19 in 20 stay below.
    pub moves: Length,
    /// How far the plan's bead in that gap can be moved that way, at its worst place.
    pub takes: Length,
    /// Whether the bead can follow: opening and closing.
    pub possible: bool,
}

/// A way that a joint moves.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Way {
    /// Apart.
    Opens,
    /// Together.
    Closes,
}

impl Way {
    /// Its key in messages and files.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Opens => "opens",
            Self::Closes => "closes",
        }
    }
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
    let moves: Vec<[f64; 2]> = worlds
        .lot
        .iter()
        .zip(&worlds.extremes)
        .map(|(lot, (dry, damp))| {
            [(hung - dry).max(0.0), (damp - hung).max(0.0)].map(|points| point * lot * points)
        })
        .collect();
    let at = |part: f64, of: &dyn Fn(&[f64; 2]) -> f64| {
        quantile(&mut moves.iter().map(of).collect::<Vec<f64>>(), part)
    };
    // A joint that moves more than its row by what pieces differ.
    let piece = 1.0 + figures.piece_shrinkage.sd;
    let [opens, closes] = [0, 1].map(|way| Length::mm(at(0.95, &|moves| moves[way]) * piece));
    // Boards that were hung tight leave a bead the V alone; it is taken as laid in the least that can be filled.
    let laid = aim.gap.max(LEAST_GAP);
    let limits = bead.limits(laid);
    let asked = demand(laid, laid - closes, laid + opens, Length::ZERO);
    let share = |moves: Length, takes: Length| moves.to_m() / takes.to_m().max(1e-9);
    let (way, moves_most, takes) = if share(opens, limits.open_hidden) >= share(closes, limits.close_hidden) {
        (Way::Opens, opens, limits.open_hidden)
    } else {
        (Way::Closes, closes, limits.close_hidden)
    };
    Caulking {
        gap: aim.gap,
        usual: Length::mm(at(0.5, &|moves| moves[0] + moves[1])),
        way,
        moves: moves_most,
        takes,
        possible: asked.is_some_and(|asked| bead.takes(&asked)),
    }
}

/// The least gap that a bead reaches into.
const LEAST_GAP: Length = Length::mm(0.1);
