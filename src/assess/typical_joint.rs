//! The typical joint from the install to three years after the visit, week by week: as it is if nothing is
//! done, and as the chosen option leaves it.

use geo::Rect;
use jiff::ToSpan as _;
use jiff::civil::Date;

use super::laid::laid_bead;
use super::sections::{age, visit_day};
use super::{Assessment, RepairOption, SectionState};
use crate::job::{Job, sanitized};
use crate::joint::{BeadCut, BeadLay, BeadState, Cut, HORIZON, JointEdges, LaidBead, PlacedBead};
use crate::measure::{Length, Span};
use crate::repair::Outcome;
use crate::surface::BoardSpec;
use crate::wood::shrinkage;

use super::section_worlds::WEEK;

/// Boards are cut so far to either side of the joint, which is past every tongue.
const REACH: Length = Length::mm(60.0);

/// The typical joint of a job through time.
#[derive(Debug, Clone, PartialEq)]
pub struct TypicalJoint {
    /// Index of its surface.
    pub surface: usize,
    /// Index of its section on that surface.
    pub section: usize,
    /// Its boards.
    pub board: BoardSpec,
    /// The cut through the closed joint.
    pub cut: Cut,
    /// Whether the first of the weeks is the day of the install.
    pub from_install: bool,
    /// Days from the visit on which the chosen option is done; `None` without one that mends joints.
    pub repaired_on: Option<i64>,
    /// Its weeks, in order; that of the visit and the day of the repair are among them.
    pub weeks: Vec<JointWeek>,
}

/// The typical joint on a day.
#[derive(Debug, Clone, PartialEq)]
pub struct JointWeek {
    /// Days from the visit; negative before it.
    pub day: i64,
    /// Its gap if nothing is done.
    pub gap: Length,
    /// What it is after the repair; `None` before it.
    pub repaired: Option<RepairedJoint>,
}

/// A joint after the repair.
#[derive(Debug, Clone, PartialEq)]
pub struct RepairedJoint {
    /// How far the boards stand apart.
    pub gap: Length,
    /// How much of that is open to the eye.
    pub open: Length,
    /// What is there.
    pub look: RepairedLook,
}

/// What a repair leaves at a joint.
#[derive(Debug, Clone, PartialEq)]
pub enum RepairedLook {
    /// A bead. What has failed once does not mend by itself.
    Bead(BeadCut),
    /// Too narrow to be sealed on the day: left open and painted.
    TooNarrow,
    /// An open line, its tongue painted.
    Line,
    /// Hidden behind a strip of this width and thickness, if the catalog has its size.
    Covered(Option<(Length, Length)>),
    /// Glued to one with its neighbor.
    Glued,
    /// A joint between boards that were laid tight.
    NewBoards,
}

/// The typical joint on a day after an option is done, to be drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct Still {
    /// The day: in the middle of a January or an August.
    pub date: Date,
    /// What the option leaves there; `None` where it mends nothing.
    pub repaired: Option<RepairedJoint>,
    /// How far the boards stand apart.
    pub gap: Length,
    /// The cut through it, with the bead.
    pub cut: Cut,
    /// What lies over it or fills it with wood.
    pub cover: Option<Rect>,
}

impl RepairedJoint {
    /// What lies over the joint or fills it with wood, m: x from its middle, y from the face into the wood.
    pub fn cover(&self, board: &BoardSpec) -> Option<Rect> {
        let (width, top, bottom) = match self.look {
            RepairedLook::Covered(size) => {
                let (wide, thick) = size?;
                (wide, -thick.to_m(), 0.0)
            }
            RepairedLook::Glued => {
                let edges = JointEdges::of(board);
                (self.gap, edges.v_leg.to_m(), edges.tongue_below.max(edges.v_leg).to_m())
            }
            _ => return None,
        };
        let half = width.to_m() / 2.0;
        Some(Rect::new((-half, top), (half, bottom)))
    }

    /// How its bead fares, if it has one.
    pub const fn bead(&self) -> Option<BeadState> {
        match &self.look {
            RepairedLook::Bead(bead) => Some(bead.fares),
            _ => None,
        }
    }
}

impl TypicalJoint {
    /// The week in which a day falls, as an index.
    pub fn week(&self, day: i64) -> usize {
        self.weeks.partition_point(|week| week.day <= day).saturating_sub(1)
    }

    /// The week in which the boards stand farthest apart in the year after the repair, or after the visit if
    /// nothing is done.
    pub fn widest(&self) -> usize {
        let from = self.repaired_on.unwrap_or(0);
        let year = from..=from + i64::try_from(crate::air::DAYS).unwrap_or(365);
        let own = self.weeks.iter().enumerate().filter(|(_, week)| year.contains(&week.day));
        let gap = |week: &JointWeek| week.repaired.as_ref().map_or(week.gap, |repaired| repaired.gap).to_m();
        own.max_by(|(_, a), (_, b)| gap(a).total_cmp(&gap(b))).map_or(0, |(at, _)| at)
    }
}

impl Assessment {
    /// The typical joint in the January and the August that come next after an option is done; after the
    /// visit where it mends nothing.
    pub(super) fn stills(&self, job: &Job, option: &RepairOption) -> Vec<Still> {
        let Some(state) = self.typical_section() else { return vec![] };
        let board = &job.surfaces[state.surface].sections[state.section].board;
        let repair = Repair::new(self, job, state, option);
        let from = repair.as_ref().map_or(0, |repair| repair.from);
        let mut days: Vec<i64> =
            [1, 8].into_iter().filter_map(|month| next_middle(job, from, month)).collect();
        days.sort_unstable();
        let still = |day: i64| {
            let date = job.visited.checked_add(day.days()).ok()?;
            let gap = gap_on(state, day);
            let repaired = repair.as_ref().map(|repair| repair.on(day, gap));
            let gap = repaired.as_ref().map_or(gap, |repaired| repaired.gap);
            let mut cut = Cut::new(board, gap, REACH, None);
            if let Some(RepairedLook::Bead(bead)) = repaired.as_ref().map(|repaired| &repaired.look) {
                cut.bead = Some(bead.clone());
            }
            let cover = repaired.as_ref().and_then(|repaired| repaired.cover(board));
            Some(Still { date, repaired, gap, cut, cover })
        };
        days.into_iter().filter_map(still).collect()
    }

    /// The typical joint by week, if boards and room are known.
    pub fn typical_joint(&self) -> Option<TypicalJoint> {
        let job = sanitized(&self.job);
        let state = self.typical_section()?;
        let board = job.surfaces.get(state.surface)?.sections.get(state.section)?.board.clone();
        let repair = self.chosen().and_then(|option| Repair::new(self, &job, state, option));
        let repaired_on = repair.as_ref().map(|repair| repair.from);
        let ahead = (0..HORIZON).step_by(WEEK).filter_map(|day| i64::try_from(day).ok());
        let mut days: Vec<i64> = ahead.chain(repaired_on).collect();
        days.sort_unstable();
        days.dedup();
        let past = state.past_weeks.iter();
        let past = past.map(|week| JointWeek { day: week.day, gap: week.gap.expected, repaired: None });
        let mut weeks: Vec<JointWeek> = past.collect();
        for day in days {
            let gap = gap_on(state, day);
            let repaired = repair.as_ref().filter(|repair| day >= repair.from);
            let repaired = repaired.map(|repair| repair.on(day, gap));
            weeks.push(JointWeek { day, gap, repaired });
        }
        Some(TypicalJoint {
            surface: state.surface,
            section: state.section,
            cut: Cut::new(&board, Length::ZERO, REACH, None),
            board,
            from_install: age(&job).is_some_and(|age| weeks.first().is_some_and(|week| week.day == -age)),
            repaired_on,
            weeks,
        })
    }
}

/// Days from the visit to the 15th of the month that comes first from a day on, if it is forecast.
fn next_middle(job: &Job, from: i64, month: i8) -> Option<i64> {
    let first = job.visited.checked_add(from.days()).ok()?;
    let years = [first.year(), first.year().checked_add(1)?];
    let middles = years.map(|year| Date::new(year, month, 15));
    let day = middles.into_iter().flatten().find(|date| *date >= first)?;
    let days = i64::from((day - job.visited).get_days());
    (days < i64::try_from(HORIZON).ok()?).then_some(days)
}

/// The mean gap on a day from the visit on.
fn gap_on(state: &SectionState, day: i64) -> Length {
    state.mean_gap_on(usize::try_from(day).unwrap_or(0))
}

/// The chosen option at the typical joint.
struct Repair<'a> {
    assessment: &'a Assessment,
    state: &'a SectionState,
    board: BoardSpec,
    outcome: Outcome,
    /// Days from the visit to the day on which it is done.
    from: i64,
    /// Gap on that day.
    laid: Length,
    narrowest: Length,
    /// The visit's day of the year.
    visit: i64,
    strip: Option<(Length, Length)>,
    /// Its bead, if it lays one.
    bead: Option<LaidBead>,
}

impl<'a> Repair<'a> {
    /// `None` if the option leaves joints as they are, cannot be done, or is done later than is forecast.
    fn new(
        assessment: &'a Assessment,
        job: &Job,
        state: &'a SectionState,
        option: &RepairOption,
    ) -> Option<Self> {
        if option.outcome == Outcome::Unchanged || option.not_possible.is_some() {
            return None;
        }
        let from = match option.outcome {
            Outcome::Bead { .. } if option.method != job.plan.chosen => {
                i64::try_from(assessment.seal_day).ok()?
            }
            Outcome::Bead { .. } => i64::from((assessment.seals_on() - job.visited).get_days()).max(0),
            _ => {
                let days = i64::from(option.schedule.calendar_days.saturating_sub(1));
                let done = option.starts.checked_add(days.days()).ok()?;
                i64::from((done - job.visited).get_days()).max(0)
            }
        };
        let horizon = i64::try_from(HORIZON).ok()?;
        let method = assessment.catalog.method(option.method)?;
        let strip = assessment
            .catalog
            .materials
            .iter()
            .find(|material| material.section.is_some() && method.materials.contains(&material.id));
        let strip = strip.and_then(|material| material.section).map(|(thick, wide)| (wide, thick));
        let board = &job.surfaces[state.surface].sections[state.section].board;
        let bead = match option.outcome {
            Outcome::Bead { lay, .. } => laid_bead(job, &assessment.catalog, board, lay),
            _ => None,
        };
        (from < horizon).then(|| Self {
            bead,
            assessment,
            state,
            board: board.clone(),
            outcome: option.outcome,
            from,
            laid: gap_on(state, from),
            narrowest: job.plan.narrowest,
            visit: visit_day(job),
            strip,
        })
    }

    /// The joint on a day after the repair, where it would have this gap if nothing were done.
    fn on(&self, day: i64, gap: Length) -> RepairedJoint {
        let open = |look| RepairedJoint { gap, open: gap, look };
        match self.outcome {
            Outcome::Bead { held, lay } => self.sealed(self.held(gap, held), lay, self.been(day, held)),
            Outcome::Line | Outcome::Unchanged => open(RepairedLook::Line),
            Outcome::Covered => {
                RepairedJoint { gap, open: Length::ZERO, look: RepairedLook::Covered(self.strip) }
            }
            Outcome::Glued => RepairedJoint { gap: self.laid, open: Length::ZERO, look: RepairedLook::Glued },
            Outcome::Boards { moves } => {
                let gap = self.between_new_boards(day) * moves;
                RepairedJoint { gap, open: gap, look: RepairedLook::NewBoards }
            }
        }
    }

    /// The gap where the room's humidity is held, which leaves a share of the movement.
    fn held(&self, gap: Length, held: bool) -> Length {
        let year = self.assessment.year.as_ref().filter(|_| held);
        let share = year.map_or(1.0, crate::air::IndoorYear::humidity_control_share);
        (self.laid + (gap - self.laid) * share).max(Length::ZERO)
    }

    /// The least and the most that the boards have been apart from the repair to a day, looked at once a week.
    fn been(&self, day: i64, held: bool) -> Span<Length> {
        let weeks = (self.from..=day).step_by(WEEK).map(|day| self.held(gap_on(self.state, day), held));
        weeks.fold(Span { low: self.laid, high: self.laid }, |span, gap| Span {
            low: span.low.min(gap),
            high: span.high.max(gap),
        })
    }

    fn sealed(&self, gap: Length, lay: BeadLay, been: Span<Length>) -> RepairedJoint {
        let bead = self.bead.as_ref().filter(|_| lay.slot(self.laid) >= self.narrowest);
        let laid = bead.map(|bead| PlacedBead { bead, gap: self.laid, been });
        let Some(bead) = laid.and_then(|laid| Cut::new(&self.board, gap, REACH, Some(laid)).bead) else {
            return RepairedJoint { gap, open: gap, look: RepairedLook::TooNarrow };
        };
        // The boards stand as far apart as they were cut, where they were.
        let gap = gap + lay.slot(self.laid) - self.laid;
        RepairedJoint { gap, open: bead.open, look: RepairedLook::Bead(bead) }
    }

    /// The joint between boards that were laid tight at the room's mean moisture.
    fn between_new_boards(&self, day: i64) -> Length {
        let Some(species) = self.assessment.catalog.species(&self.board.species) else { return Length::ZERO };
        let settled = &self.state.settled;
        let dried = shrinkage(species, self.board.ring_angle, settled.mean(), settled.on(self.visit + day));
        (self.state.across * dried).max(Length::ZERO)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::{Catalog, demo_job};
    use crate::repair::MethodId;

    fn joint_of(method: MethodId) -> (Assessment, TypicalJoint) {
        let mut job = demo_job();
        job.plan.chosen = method;
        let found = crate::assess::assess(job, Catalog::built_in());
        let joint = found.typical_joint().expect("the demo has boards and a room");
        (found, joint)
    }

    #[test]
    fn weeks_run_from_the_install_over_the_visit_to_three_years_on() {
        let (found, joint) = joint_of(MethodId::Reseal);
        let state = found.typical_section().expect("one was measured");
        assert!(joint.from_install);
        assert_eq!(joint.weeks[0].day, -age(&found.job).expect("the install is known"));
        assert!(joint.weeks.windows(2).all(|two| two[0].day < two[1].day));
        let last = joint.weeks.last().expect("there are weeks").day;
        assert!(last > 3 * 365 - 8 && joint.weeks.len() < 200, "{last}, {}", joint.weeks.len());
        let today = &joint.weeks[joint.week(0)];
        assert_eq!((today.day, today.gap), (0, state.mean_gap_on(0)));
        // Boards that came wet had their joints shut; they opened as they dried.
        let first = joint.weeks[0].gap.to_mm();
        assert!(first < 0.35 * today.gap.to_mm(), "{first} mm at install, {:?} today", today.gap);
        // The days before the visit go over into those after it without a jump.
        let before = joint.weeks[joint.week(0) - 1].gap;
        assert!((before - today.gap).to_mm().abs() < 0.25, "{before:?} {:?}", today.gap);
    }

    #[test]
    fn a_bead_is_there_from_the_day_of_sealing_and_one_that_failed_stays_so() {
        let (found, joint) = joint_of(MethodId::Reseal);
        let sealed = i64::from((found.seals_on() - found.job.visited).get_days());
        let planned = i64::try_from(found.seal_day).expect("days");
        assert!((planned..planned + 7).contains(&sealed), "{sealed}, planned for {planned}");
        assert_eq!(joint.repaired_on, Some(sealed));
        assert!(joint.weeks.iter().all(|week| week.repaired.is_some() == (week.day >= sealed)));
        let tongue = joint_of(MethodId::ResealOnTongue).1;
        let holds: Vec<bool> = tongue
            .weeks
            .iter()
            .filter_map(|week| match &week.repaired.as_ref()?.look {
                RepairedLook::Bead(bead) => Some(bead.fares.holds()),
                _ => None,
            })
            .collect();
        let failed = holds.iter().position(|holds| !holds).expect("on the tongue few hold");
        assert!(holds[failed..].iter().all(|holds| !holds));
    }

    #[test]
    fn new_boards_open_no_wider_than_the_option_says_and_strips_hide_the_joint() {
        let (found, joint) = joint_of(MethodId::Replace);
        let opens_to = found.chosen().expect("one is chosen").opens_to;
        let widest = joint
            .weeks
            .iter()
            .filter_map(|week| Some(week.repaired.as_ref()?.gap))
            .fold(Length::ZERO, Length::max);
        assert!((widest - opens_to).to_mm().abs() < 0.05, "{widest:?} {opens_to:?}");
        let (_, covered) = joint_of(MethodId::CoverStrips);
        let last = covered.weeks.last().and_then(|week| week.repaired.clone()).expect("it is done");
        assert!(last.open == Length::ZERO && matches!(last.look, RepairedLook::Covered(Some(_))));
        assert!(joint_of(MethodId::Nothing).1.repaired_on.is_none());
    }
}
