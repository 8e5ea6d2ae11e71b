//! When the crew can come, and what it works from: as the user says, else as the drawing and the boards say.

use jiff::ToSpan as _;
use jiff::civil::{Date, Weekday};

use super::materials::windows;
use super::option_inputs::OptionInputs;
use super::sections::SectionState;
use super::{Assessment, date_after};
use crate::air::{IndoorAir, PRESUMED_STATION};
use crate::belief::Cause;
use crate::job::Job;
use crate::joint::HORIZON;
use crate::measure::Length;
use crate::named::name_of;
use crate::repair::{ASSUMED_FIXTURES, Height, Outcome, Plan, RepairMethod};
use crate::surface::{Surface, SurfaceKind};

/// A wall up to this height is worked from a step platform, one up to the next from a ladder. Common practice, no
/// source.
const FROM_STEPS: Length = Length::inches(9.0 * 12.0);
const FROM_A_LADDER: Length = Length::inches(12.0 * 12.0);

/// What the first day of work waits for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StartsAfter {
    /// The crew's other jobs: so many workdays.
    Lead(u32),
    /// Boards that are ordered: so many workdays.
    Order(u32),
    /// Wet boards to dry.
    Drying,
    /// The weeks in which joints are best sealed, or the day that was set for it.
    Season,
    /// The other end of the year, to measure again.
    OtherSeason,
}

/// The first day of work, weekends not counted off, and what it waits for.
pub(super) struct Start {
    pub first: Date,
    pub after: StartsAfter,
}

/// The day on which the work may begin. What is sealed begins on the day of sealing; all else when the crew
/// can come, boards have been ordered and wet boards are dry; what only looks again, at the other end of the year.
pub(super) fn start(method: &RepairMethod, inputs: &OptionInputs<'_>) -> Start {
    let (job, plan) = (inputs.job, &inputs.job.plan);
    let seals = matches!(method.outcome, Outcome::Bead { .. }) && !method.waits_for_season();
    if seals {
        return Start { first: date_after(job, inputs.seal_day), after: StartsAfter::Season };
    }
    let orders = matches!(method.outcome, Outcome::Boards { .. }) && plan.order_days > plan.lead_days;
    let (workdays, after) = match orders {
        true => (plan.order_days, StartsAfter::Order(plan.order_days)),
        false => (plan.lead_days, StartsAfter::Lead(plan.lead_days)),
    };
    let ready = date_after(job, days_of_workdays(job.visited, workdays, plan));
    if method.outcome == Outcome::Unchanged {
        let other = other_season(inputs.sections).map(|day| date_after(job, day)).filter(|day| *day > ready);
        return match other {
            Some(first) => Start { first, after: StartsAfter::OtherSeason },
            None => Start { first: ready, after },
        };
    }
    let dry = inputs.sections.iter().filter(|state| state.is_wetted()).map(dry_on).max();
    match dry.map(|day| date_after(job, day)).filter(|dry| *dry > ready) {
        Some(first) => Start { first, after: StartsAfter::Drying },
        None => Start { first: ready, after },
    }
}

/// Days from the visit to the other end of the year for the section that was measured most: the day on which its
/// boards are widest or narrowest, whichever comes first.
fn other_season(sections: &[SectionState]) -> Option<usize> {
    let measured = sections.iter().filter(|state| state.gaps.measured > 0);
    let (humid, dry) = measured.max_by_key(|state| state.gaps.measured)?.look_again(0);
    Some(humid.min(dry))
}

/// Days from the visit until the boards of a wetted section are no wetter than the room ever keeps them.
fn dry_on(state: &SectionState) -> usize {
    let wettest = state.settled.extremes().1;
    state.motion.moisture.iter().position(|moisture| *moisture <= wettest).unwrap_or(HORIZON - 1)
}

/// Days from the visit to the first day on which the crew can come.
pub(super) fn lead(job: &Job) -> usize {
    days_of_workdays(job.visited, job.plan.lead_days, &job.plan)
}

/// Days from a date on until so many workdays have passed.
fn days_of_workdays(from: Date, workdays: u32, plan: &Plan) -> usize {
    let (mut left, mut days) = (workdays, 0_usize);
    while left > 0 {
        days += 1;
        let day = i64::try_from(days).ok().and_then(|days| from.checked_add(days.days()).ok());
        let free = day.is_some_and(|day| matches!(day.weekday(), Weekday::Saturday | Weekday::Sunday));
        left -= u32::from(plan.weekends || !free);
    }
    days
}

/// What the crew works from: as the user says; else a ladder under a slope and on a high wall, a scaffold on a higher
/// one, and a step platform elsewhere.
pub(super) fn access(job: &Job) -> Height {
    let high = |surface: &Surface| match surface.kind {
        SurfaceKind::Slope => true,
        SurfaceKind::Wall => height(surface) > FROM_STEPS,
        SurfaceKind::Ceiling => false,
    };
    let higher = |surface: &Surface| surface.kind == SurfaceKind::Wall && height(surface) > FROM_A_LADDER;
    match job.plan.site.height {
        Height::ByDrawing if job.surfaces.iter().any(higher) => Height::Scaffold,
        Height::ByDrawing if job.surfaces.iter().any(high) => Height::Ladder,
        Height::ByDrawing => Height::Steps,
        said => said,
    }
}

/// How high a surface is on its drawing.
fn height(surface: &Surface) -> Length {
    let ups = || surface.outline.iter().map(|corner| corner.1);
    let low = ups().reduce(Length::min).unwrap_or(Length::ZERO);
    ups().reduce(Length::max).unwrap_or(Length::ZERO) - low
}

/// What a price takes for granted of the room because nobody said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Assumed {
    /// What the crew works from, where only the drawing says.
    pub access: Option<Height>,
    /// Windows and doors to mask, where neither the user nor the drawing says.
    pub windows: Option<u32>,
    /// Lights and vents to take down or mask, where the user does not say.
    pub fixtures: Option<u32>,
}

/// From this chance on that boards were too wet at install, whoever supplied or installed them may owe for it.
/// Judgment.
const MAY_OWE: f64 = 0.6;

impl Assessment {
    /// The place whose climate the room is taken to be in because nobody said where the house is.
    pub fn presumed_place(&self) -> Option<&str> {
        let unnamed = matches!(&self.job.air, IndoorAir::FromClimate { station, .. } if station.is_empty());
        unnamed.then(|| name_of(&self.catalog.stations, PRESUMED_STATION))
    }

    /// Whether it is still open who pays: nobody said, and boards that likely went up too wet may be somebody
    /// else's to pay for than the owner's.
    pub fn payers_open(&self) -> bool {
        let wet = self.causes.as_ref().map_or(0.0, |causes| causes.of(Cause::WetAtInstall));
        self.job.plan.payers.are_open() && wet >= MAY_OWE
    }

    /// What the prices take for granted of the room because nobody said.
    pub fn assumed(&self) -> Assumed {
        let site = &self.job.plan.site;
        let (count, assumed) = windows(&self.job);
        Assumed {
            access: (site.height == Height::ByDrawing).then(|| access(&self.job)),
            windows: assumed.then_some(count),
            fixtures: site.fixtures.is_none().then_some(ASSUMED_FIXTURES),
        }
    }
}
