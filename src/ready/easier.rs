//! What would make an install easier, and whether to caulk its joints at all.

use super::boards::{Joints, PlannedBoards};
use super::gate::good_enough;
use super::movement::Movement;
use super::stack::StackFigures;
use super::window::{Aim, Window, window};
use crate::belief::{RoomWorlds, quantile};
use crate::joint::{LaidBead, demand};
use crate::measure::{Humidity, Length, Moisture, Units};
use crate::surface::{Finish, Fixing};

/// One thing done otherwise.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Change {
    /// Joints caulked, or left open.
    Joints(Joints),
    /// The gap that is worth leaving instead of the one that was settled.
    Gap(Length),
    /// A wider gap, for a bead that can follow.
    WiderGap(Length),
    /// Narrower boards: the widest of the usual ones that keep the chance asked for.
    Width(Length),
    /// Another finish before the boards go up.
    Finish(Finish),
    /// Nailed otherwise.
    Fixing(Fixing),
    /// The room kept no drier than this in winter.
    Humidifier(Humidity),
    /// The room kept no damper than this in summer.
    SummerAir(Humidity),
    /// Joints that may open as wide as this.
    Rule(Length),
}

impl Change {
    /// The gap that is settled with it, where `gap` was.
    pub fn gap(self, gap: Option<Length>) -> Option<Length> {
        match self {
            Self::Gap(_) => None,
            Self::WiderGap(wider) => Some(wider),
            _ => gap,
        }
    }

    /// What costs nothing but a decision comes first, then what is done to the boards, then what is done to the room.
    const fn rank(self) -> u8 {
        match self {
            Self::Gap(_) => 0,
            Self::Rule(_) => 1,
            Self::WiderGap(_) => 2,
            Self::Joints(_) => 3,
            Self::Fixing(_) => 4,
            Self::Finish(_) => 5,
            Self::SummerAir(_) => 6,
            Self::Humidifier(_) => 7,
            Self::Width(_) => 8,
        }
    }
}

/// When boards that lie there can be hung with a change.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Then {
    /// Nothing was measured of them, or others would be bought.
    Unknown,
    /// On this day from the delivery, with this chance.
    Hung(i64, f64),
    /// Not within the days that are followed.
    Never,
}

/// What a change brings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Easier {
    /// The change.
    pub change: Change,
    /// The window with it.
    pub window: Window,
    /// When the boards that lie there can be hung with it.
    pub then: Then,
}

impl Easier {
    /// The chance with it: on the day that is told, or at the best moisture where none is.
    pub const fn chance(&self) -> f64 {
        match self.then {
            Then::Hung(_, chance) => chance,
            Then::Unknown | Then::Never => self.window.chance,
        }
    }
}

/// A room, or boards for it, otherwise than planned: the room's worlds where they differ, and how boards move there.
#[derive(Clone)]
pub struct Lived {
    /// What is done otherwise.
    pub change: Change,
    /// The room's worlds, if it is the room.
    pub rooms: Option<RoomWorlds>,
    /// How boards move in it.
    pub movement: Movement,
}

impl<'a> PlannedBoards<'a> {
    /// The same with this change, as far as it is one of the boards and their joints.
    #[must_use]
    pub fn planned(self, change: Change) -> Self {
        match change {
            Change::Joints(joints) => Self { joints, ..self },
            Change::Width(width) => Self { width, ..self },
            Change::Fixing(fixing) => Self { fixing, ..self },
            Change::Rule(rule) => Self { rule, ..self },
            Change::Gap(_)
            | Change::WiderGap(_)
            | Change::Finish(_)
            | Change::Humidifier(_)
            | Change::SummerAir(_) => self,
        }
    }
}

/// Steps in which boards and joints are planned otherwise, and how narrow boards and how wide joints may get.
struct Steps {
    /// Boards are sold in widths so far apart; in millimeters they are round figures.
    width: Length,
    narrowest: Length,
    /// Joints are told in such steps, up to the widest that is still a joint.
    rule: Length,
    widest: Length,
    /// Gaps that are left for the sake of the caulk.
    gaps: [Length; 2],
}

impl Steps {
    fn of(units: Units) -> Self {
        match units {
            Units::Inches => Self {
                width: Length::inches(1.0),
                narrowest: Length::inches(2.0),
                rule: Length::inches(1.0 / 32.0),
                widest: Length::inches(0.25),
                gaps: [3.0, 4.0].map(|sixteenths| Length::inches(sixteenths / 16.0)),
            },
            Units::Millimeters => Self {
                width: Length::mm(10.0),
                narrowest: Length::mm(50.0),
                rule: Length::mm(0.5),
                widest: Length::mm(6.0),
                gaps: [5.0, 6.0].map(Length::mm),
            },
        }
    }

    /// The next narrower width: inches are taken off what boards have, millimeters are round.
    fn narrower(&self, width: Length, units: Units) -> Length {
        match units {
            Units::Inches => width - self.width,
            Units::Millimeters => self.width * ((width.to_m() / self.width.to_m() - 1e-6).ceil() - 1.0),
        }
    }

    /// The next wider joint.
    fn wider(&self, rule: Length) -> Length {
        self.rule * ((rule.to_m() / self.rule.to_m() + 1e-6).floor() + 1.0)
    }
}

/// A change must be worth this much of chance.
const WORTH: f64 = 0.03;
/// The changes that help, each by itself: those that do, what costs least first; where none does, those that come
/// nearest, best first. None where the boards can have the chance asked for as they are planned; with the boards' `now`
/// goes whether caulk that is planned can't follow. `gap` is one that is settled; `others` are finishes and ways to keep
/// the room, with how boards move there; `bead` is the plan's.
/// Widths and gaps are round in `units`.
pub fn easier(
    boards: &PlannedBoards<'_>,
    worlds: &Movement,
    (gap, others, bead): (Option<Length>, &[Lived], Option<&LaidBead>),
    figures: &StackFigures,
    (now, caulk_fails): (&Window, bool),
    units: Units,
) -> Vec<Easier> {
    let mut found = Vec::new();
    let enough = good_enough(boards.asked);
    if now.chance >= enough && !caulk_fails {
        return found;
    }
    // Where the caulk fails, the joints open whatever the boards do.
    let reached = if caulk_fails { 0.0 } else { now.chance };
    let mut try_out = |change: Change, worlds: &Movement| {
        let boards = boards.planned(change);
        let gap = change.gap(gap);
        let window = window(&boards, worlds, figures, gap);
        // Nobody caulks joints that no bead can follow.
        let follows = |bead: &LaidBead| caulking(&boards, worlds, bead, figures, window.best).possible;
        let caulks = caulk_fails || change == Change::Joints(Joints::Sealed);
        if caulks && boards.joints == Joints::Sealed && !bead.is_some_and(follows) {
            return false;
        }
        let helps = window.chance > reached + WORTH;
        if helps {
            found.push(Easier { change, window, then: Then::Unknown });
        }
        helps && window.chance >= enough
    };
    try_out(Change::Joints(boards.joints.other()), worlds);
    if gap.is_some() {
        try_out(Change::Gap(window(boards, worlds, figures, None).best.gap), worlds);
    }
    for lived in others {
        try_out(lived.change, &lived.movement);
    }
    for fixing in [Fixing::Middle, Fixing::Tongue].into_iter().filter(|fixing| *fixing != boards.fixing) {
        try_out(Change::Fixing(fixing), worlds);
    }
    let steps = Steps::of(units);
    let mut width = steps.narrower(boards.width, units);
    while width >= steps.narrowest && !try_out(Change::Width(width), worlds) {
        width = steps.narrower(width, units);
    }
    if caulk_fails {
        let wider = steps.gaps.into_iter().filter(|wider| now.best.gap < *wider);
        for wider in wider {
            if try_out(Change::WiderGap(wider), worlds) {
                break;
            }
        }
    }
    // Caulk stretches no further because the owner accepts more.
    let widest = if caulk_fails { Length::ZERO } else { steps.widest };
    let mut rule = steps.wider(boards.rule);
    while rule <= widest && !try_out(Change::Rule(rule), worlds) {
        rule = steps.wider(rule);
    }
    // Of narrower boards, wider joints and wider gaps only the first that do.
    let by_steps =
        |change: Change| matches!(change, Change::Width(_) | Change::Rule(_) | Change::WiderGap(_));
    let reaches = |easier: &Easier| easier.window.chance >= enough;
    found.retain(|easier| !by_steps(easier.change) || reaches(easier));
    // What does not bring the boards there is told only where nothing does.
    if found.iter().any(reaches) {
        found.retain(reaches);
        found.sort_by_key(|easier| easier.change.rank());
    } else {
        found.sort_by(|a, b| b.window.chance.total_cmp(&a.window.chance));
    }
    found
}

/// Whether joints can be caulked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Caulking {
    /// The moisture the boards are hung at.
    pub hung_at: Moisture,
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
    // Boards that meet close no further.
    let (way, moves_most, takes) = if share(opens, limits.open_hidden) >= share(closes, limits.close_hidden) {
        (Way::Opens, opens, limits.open_hidden)
    } else {
        (Way::Closes, closes.min(laid), limits.close_hidden)
    };
    Caulking {
        hung_at: aim.moisture,
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
