//! What to check before boards go up: how wet they may be, how long they must lie, the gap to leave,
//! and how wide they may be for a bead to serve them.

use super::bead::LaidBead;
use super::moisture::{BoardYears, exposure};
use crate::air::IndoorYear;
use crate::measure::{Angle, Length, Moisture, Span, bisect};
use crate::wood::drying::{Drying, Panel, Wood};
use crate::wood::{Species, shrinkage, width_change};

/// Steps of the acclimation in a day, and the days it is followed for.
const STEPS: u32 = 4;
const MOST_DAYS: u32 = 365;
/// Boards that are this near the target lie in the room long enough, per cent moisture. Assumption.
const NEAR: f64 = 0.5;

/// What boards must be for a room.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Target {
    /// The moisture that the room keeps them at over the year.
    pub moisture: Moisture,
    /// Wetter than this they open wider than allowed at the year's driest; drier than this they need
    /// more room than allowed at its dampest. `None` if boards this wide do one or the other at any
    /// moisture.
    pub allowed: Option<Span<Moisture>>,
    /// Gap to leave at each joint if they are at the target: what they swell at the dampest.
    pub gap: Length,
}

/// The target for boards `across` wide between fixings. A joint may open by `widest` at most, and
/// `room` may be left for swelling.
pub fn target(
    species: &Species,
    ring: Angle,
    across: Length,
    years: &BoardYears,
    widest: Length,
    room: Length,
) -> Target {
    let (driest, dampest) = years.extremes();
    let mean = years.mean();
    let opens = |at: f64| across.to_m() * shrinkage(species, ring, Moisture::pct(at), driest);
    let swells = |at: f64| across.to_m() * width_change(species, ring, Moisture::pct(at), dampest);
    let wettest = bisect(mean.to_pct(), 30.0_f64.max(mean.to_pct()), 1e-6, |at| opens(at) < widest.to_m());
    let least = bisect(0.0, mean.to_pct(), 1e-6, |at| swells(at) > room.to_m());
    let possible = opens(mean.to_pct()) < widest.to_m() && swells(mean.to_pct()) <= room.to_m();
    Target {
        moisture: mean,
        allowed: possible.then(|| Span { low: Moisture::pct(least), high: Moisture::pct(wettest) }),
        gap: Length::m(swells(mean.to_pct()).max(0.0)),
    }
}

/// Days that boards delivered at `delivered` must lie in the room on stickers, bare and open to the
/// air on both faces (`stack`), from the day of the year `from` on, until they are within what is
/// allowed or half a per cent of the target. `None` if the room does not bring them there within a
/// year.
pub fn acclimation(
    stack: Panel,
    year: &IndoorYear,
    delivered: Moisture,
    wanted: &Target,
    from: usize,
) -> Option<u32> {
    let is_there = |now: Moisture| {
        let allowed = wanted.allowed.is_some_and(|allowed| allowed.low <= now && now <= allowed.high);
        allowed || (now - wanted.moisture).to_pct().abs() <= NEAR
    };
    let mut days = (0..MOST_DAYS).zip(stacked(stack, year, delivered, from));
    days.find(|(_, now)| is_there(*now)).map(|(day, _)| day)
}

/// Mean moisture of boards that lie in the room on stickers as [`acclimation`] has them, after so many
/// days; at most a year of them.
pub fn moisture_after(
    stack: Panel,
    year: &IndoorYear,
    delivered: Moisture,
    from: usize,
    days: u32,
) -> Moisture {
    let at = usize::try_from(days.min(MOST_DAYS)).unwrap_or(0);
    stacked(stack, year, delivered, from).nth(at).unwrap_or(delivered)
}

/// Mean moisture of stacked boards, day by day without end.
fn stacked(
    stack: Panel,
    year: &IndoorYear,
    delivered: Moisture,
    from: usize,
) -> impl Iterator<Item = Moisture> {
    let mut board = Drying::uniform(Wood, stack, 12, delivered.to_pct() / 100.0);
    (0..).map(move |day: usize| {
        let now = board.moisture();
        let air = exposure(&year.days[(from + day) % year.days.len()]);
        for _ in 0..STEPS {
            board.step(air, 86_400.0 / f64::from(STEPS));
        }
        now
    })
}

/// The widest board whose joint, `joint` wide and sealed at the year's mean, stays within what `bead`
/// takes all year. `None` where boards do not move.
pub fn widest_board(
    species: &Species,
    ring: Angle,
    years: &BoardYears,
    bead: &LaidBead,
    joint: Length,
) -> Option<Length> {
    let (driest, dampest) = years.extremes();
    let opens = shrinkage(species, ring, years.mean(), driest);
    let closes = width_change(species, ring, years.mean(), dampest);
    let limits = bead.limits(joint);
    let widest = |takes: Length, moves: f64| takes.to_m() / moves.max(0.0);
    let width = widest(limits.open_hidden, opens).min(widest(limits.close_hidden, closes));
    width.is_finite().then(|| Length::m(width))
}
