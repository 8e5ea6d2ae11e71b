//! The state of sections and joints: gap, moisture, motion, cause.

use std::sync::Arc;

use rayon::prelude::*;

use crate::air::IndoorYear;
use crate::cause::{AgainstMarks, InstallMoisture, OriginInputs, against_marks, install_moisture};
use crate::job::fields::{self, At, Field};
use crate::job::{Catalog, Job, Place, Problem, SectionFault};
use crate::joint::{
    BoardMotion, BoardYears, Demand, JointMotion, Sealant, Target, acclimation, demand, panel,
    smallest_class, stack, target, widest_board,
};
use crate::measure::{Estimate, Length, Moisture, day_of_year};
use crate::repair::Scope;
use crate::surface::{BoardSpec, Joint, JointKind, SurfaceLayout};
use crate::survey::{GapEstimate, MoistureNow, SectionGaps, board_moisture};
use crate::wood::Species;
use crate::wood::drying::Panel;

/// What is known of one section.
#[derive(Debug, Clone, PartialEq)]
pub struct SectionState {
    /// Index of its surface.
    pub surface: usize,
    /// Index of the section on that surface.
    pub section: usize,
    /// Its board-to-board gaps.
    pub gaps: SectionGaps,
    /// The boards' present moisture.
    pub now: MoistureNow,
    /// The moisture that the room's model expects them at today.
    pub expected_now: Moisture,
    /// What their build-up's moisture does in the room's air; shared by sections alike.
    pub settled: Arc<BoardYears>,
    /// Their motion from the visit on.
    pub motion: BoardMotion,
    /// Width of wood whose movement shows at a joint between two full boards.
    pub across: Length,
    /// The moisture they had at install, if any gap was measured.
    pub origin: Option<InstallMoisture>,
    /// That moisture held against the lumber marks of the catalog; `None` where it is not known or there
    /// are no marks.
    pub against_marks: Option<AgainstMarks>,
    /// What boards for this section must be before they are installed.
    pub before_install: BeforeInstall,
    /// Narrowest and widest the mean gap becomes in the coming year.
    pub year_gap: (Length, Length),
    /// Days from the visit to the day on which the mean gap is narrowest in the coming year.
    pub narrowest_day: usize,
}

/// A visit sooner than this many days after the first tells little new.
const LOOK_AGAIN: usize = 60;

impl SectionState {
    /// Days from the visit on which to look again, at least two months ahead: when the boards are widest
    /// and when they are narrowest in the coming year.
    pub fn look_again(&self) -> (usize, usize) {
        let narrowing = |day: &usize| self.motion.narrowing[*day];
        let year = || LOOK_AGAIN..crate::air::DAYS;
        let least = year().min_by(|a, b| narrowing(a).total_cmp(&narrowing(b)));
        let most = year().max_by(|a, b| narrowing(a).total_cmp(&narrowing(b)));
        (least.unwrap_or(LOOK_AGAIN), most.unwrap_or(LOOK_AGAIN))
    }

    /// Share of the present mean gap that closes by itself in the coming year, 0 to 1.
    pub fn closes_by_itself(&self) -> f64 {
        let now = self.gaps.mean.to_m();
        if now > 0.0 { ((now - self.year_gap.0.to_m()) / now).clamp(0.0, 1.0) } else { 0.0 }
    }

    /// The section's mean gap on a day counted from the visit.
    pub fn mean_gap_on(&self, day: usize) -> Length {
        let day = day.min(crate::joint::HORIZON - 1);
        (self.gaps.mean + self.across * self.motion.narrowing[day]).max(Length::ZERO)
    }

    /// Whether the boards were measured clearly wetter than the room's air ever makes them: water
    /// got to them.
    pub fn is_wetted(&self) -> bool {
        let margin = Moisture::pct(3.0);
        self.now.readings > 0 && self.now.moisture.mean > self.settled.extremes().1 + margin
    }

    /// Moisture of the boards on a day counted from the visit; before it, as they dried from the
    /// moisture at install, if that is known.
    pub fn moisture_on(&self, visit: i64, day: i64) -> Moisture {
        let Ok(before) = usize::try_from(-day) else {
            return self.motion.moisture[usize::try_from(day).unwrap_or(0).min(crate::joint::HORIZON - 1)];
        };
        let origin = self.origin.map(|origin| origin.moisture);
        let dried = |before: usize| self.settled.since_install(origin?, before);
        match (dried(before), dried(0)) {
            (Some(then), Some(meets)) => {
                // The modelled past is drawn to the moisture that was measured, so that the two
                // meet at the visit; what they differ by fades into the past as surpluses fade.
                let differ = self.now.moisture.mean - meets;
                then + differ * self.settled.left_after(before, differ)
            }
            _ => self.settled.on(visit + day),
        }
    }
}

/// Most room that may be left at a joint of new boards for them to swell: 1/32 in. Common practice.
pub const SWELLING_ROOM: Length = Length::inches(1.0 / 32.0);
/// A sealed joint as it is usual between boards: 1/8 in. Common practice.
pub const TYPICAL_SEALED_GAP: Length = Length::inches(0.125);

/// What to check before the next install.
#[derive(Debug, Clone, PartialEq)]
pub struct BeforeInstall {
    /// How wet the boards may be, and the gap to leave.
    pub target: Target,
    /// Days that boards delivered as planned must lie in the room; `None` if it takes more than a year.
    pub acclimation: Option<u32>,
    /// The widest board that the plan's sealant can serve in a joint of an eighth of an inch.
    pub widest_board: Option<Length>,
}

fn before_install(
    job: &Job,
    catalog: &Catalog,
    board: &BoardSpec,
    species: &Species,
    years: &BoardYears,
    year: &IndoorYear,
) -> BeforeInstall {
    let plan = &job.plan;
    let target =
        target(species, board.ring_angle, board.face_width, years, plan.callback.widest, SWELLING_ROOM);
    let stack = stack(board, species, &catalog.films);
    let sealant = catalog.bead(plan);
    BeforeInstall {
        target,
        acclimation: acclimation(stack, year, plan.delivered_at, &target, day_of_year(job.visited)),
        widest_board: sealant
            .and_then(|sealant| widest_board(species, board.ring_angle, years, &sealant, TYPICAL_SEALED_GAP)),
    }
}

/// What is known of one joint.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointState {
    /// Index of its surface.
    pub surface: usize,
    /// Index in that surface's layout.
    pub joint: usize,
    /// Index of its section in [`super::Assessment::sections`], if the section could be assessed.
    pub section: Option<usize>,
    /// Its gap at the visit, if anything says.
    pub gap: Option<GapEstimate>,
    /// Whether it is sealed again.
    pub treated: bool,
    /// Narrowest and widest it becomes in the next three years, if nothing is done.
    pub extremes: Option<(Length, Length)>,
    /// How far the boards want into each other at the widest, if they do.
    pub push: Length,
    /// Gap on the day of sealing.
    pub at_sealing: Length,
    /// What a bead put in then would have to take.
    pub demand: Option<Demand>,
    /// Index in the catalog of the lowest class that takes it, if any does and the joint is wide enough.
    pub smallest_class: Option<usize>,
    /// Whether any bead can hold there: there is room for one, and the boards stay on their tongue.
    pub can_hold: bool,
    /// Whether the plan's sealant takes it.
    pub holds: bool,
}

/// The years of every section's build-up, `None` where species or coating are not in the catalog. One
/// run of the drying for each distinct build-up.
fn build_ups(job: &Job, catalog: &Catalog, year: &IndoorYear) -> Vec<Option<Arc<BoardYears>>> {
    let sections = job.surfaces.iter().flat_map(|surface| &surface.sections);
    let panels: Vec<Option<Panel>> = sections
        .map(|section| {
            let board = &section.board;
            Some(panel(
                board,
                catalog.species(&board.species)?,
                catalog.coating(board.finish)?,
                &catalog.films,
            ))
        })
        .collect();
    let mut distinct: Vec<Panel> = Vec::new();
    for panel in panels.iter().flatten() {
        if !distinct.contains(panel) {
            distinct.push(*panel);
        }
    }
    let (visit, age) = (visit_day(job), age(job));
    let years: Vec<Arc<BoardYears>> =
        distinct.par_iter().map(|panel| Arc::new(BoardYears::new(*panel, year, visit, age))).collect();
    let of =
        |panel: Panel| distinct.iter().position(|known| *known == panel).map(|at| Arc::clone(&years[at]));
    panels.into_iter().map(|panel| of(panel?)).collect()
}

/// States of all sections whose species, coating and year are known.
pub(super) fn section_states(
    job: &Job,
    catalog: &Catalog,
    year: Option<&IndoorYear>,
    gaps: &[Vec<SectionGaps>],
) -> Vec<SectionState> {
    let Some(year) = year else { return vec![] };
    let visit = visit_day(job);
    let mut build_ups = build_ups(job, catalog, year).into_iter();
    let mut states = Vec::new();
    for (surface_index, surface) in job.surfaces.iter().enumerate() {
        for (section_index, section) in surface.sections.iter().enumerate() {
            let board = &section.board;
            let (Some(species), Some(settled)) =
                (catalog.species(&board.species), build_ups.next().flatten())
            else {
                continue;
            };
            let now = board_moisture(&job.survey, &surface.name, &section.name, settled.on(visit));
            let motion = BoardMotion::new(species, board.ring_angle, &settled, now.moisture.mean);
            let gaps = gaps[surface_index][section_index];
            let across = board.face_width * (board.fixing.at_groove() + board.fixing.at_tongue());
            let measured = gaps.mean > Length::ZERO;
            let origin = measured.then(|| {
                install_moisture(&OriginInputs {
                    species,
                    ring: board.ring_angle,
                    gap: Estimate { mean: gaps.mean, sd: gaps.error_of_mean },
                    across,
                    now: now.moisture,
                })
            });
            let origin = origin.flatten();
            let (year_gap, narrowest_day) = coming_year(gaps.mean, across, &motion);
            states.push(SectionState {
                surface: surface_index,
                section: section_index,
                gaps,
                now,
                expected_now: settled.on(visit),
                motion,
                across,
                origin,
                against_marks: origin.and_then(|o| against_marks(o.moisture, o.interval, &catalog.marks)),
                before_install: before_install(job, catalog, board, species, &settled, year),
                settled,
                year_gap,
                narrowest_day,
            });
        }
    }
    states
}

/// Narrowest and widest mean gap of the coming year, and the day of the narrowest.
fn coming_year(mean: Length, across: Length, motion: &BoardMotion) -> ((Length, Length), usize) {
    let year = &motion.narrowing[..crate::air::DAYS];
    let gap = |narrowing: f64| (mean + across * narrowing).max(Length::ZERO);
    let (mut low, mut high, mut when) = (f64::INFINITY, f64::NEG_INFINITY, 0);
    for (day, &value) in year.iter().enumerate() {
        if value < low {
            (low, when) = (value, day);
        }
        high = high.max(value);
    }
    ((gap(low), gap(high)), when)
}

/// States of all joints, without what depends on the day of sealing.
pub(super) fn joint_states(
    job: &Job,
    layouts: &[SurfaceLayout],
    sections: &[SectionState],
    estimates: &[Vec<Option<GapEstimate>>],
) -> Vec<JointState> {
    let mut states = Vec::new();
    for (surface, laid) in layouts.iter().enumerate() {
        let first = sections.partition_point(|state| state.surface < surface);
        let of_surface = &sections[first..];
        for (index, joint) in laid.joints.iter().enumerate() {
            let gap = estimates[surface][index];
            let assessment = of_surface
                .iter()
                .take_while(|s| s.surface == surface)
                .position(|s| s.section == joint.section);
            let section = assessment.map(|at| first + at);
            let mut state = JointState {
                surface,
                joint: index,
                section,
                gap,
                treated: is_treated(job, joint, gap),
                extremes: None,
                push: Length::ZERO,
                at_sealing: Length::ZERO,
                demand: None,
                smallest_class: None,
                can_hold: false,
                holds: false,
            };
            if let Some(motion) = motion(joint, &state, sections) {
                let (least, _) = motion.rooms_from(0);
                state.extremes = Some(motion.extremes_from(0));
                state.push = (-least).max(Length::ZERO);
            }
            states.push(state);
        }
    }
    states
}

/// The motion of a joint whose gap and section are known.
pub(super) fn motion<'a>(
    joint: &Joint,
    state: &JointState,
    sections: &'a [SectionState],
) -> Option<JointMotion<'a>> {
    let boards = &sections.get(state.section?)?.motion;
    Some(JointMotion::new(joint, state.gap?.gap.mean, boards))
}

/// Width and length of wood whose movement slides a joint's sides along each other: none between
/// boards, which move alike. Against trim and dividers, which keep still, a board's end slides by
/// what its width moves, and its edge by what half its length does.
pub(super) fn slides(job: &Job, joint: &Joint, surface: usize) -> (Length, Length) {
    if !matches!(joint.kind, JointKind::Perimeter | JointKind::Divider) {
        return (Length::ZERO, Length::ZERO);
    }
    let section = &job.surfaces[surface].sections[joint.section];
    let run = joint.to - joint.from;
    let between = run.y.atan2(run.x) - section.direction.to_radians();
    (section.board.face_width * between.sin().abs(), joint.length() * (0.5 * between.cos().abs()))
}

/// The tongue of the boards at a joint between boards, past whose length they come apart.
pub(super) fn tongue(job: &Job, surface: usize, joint: &Joint) -> Option<Length> {
    let board = &job.surfaces[surface].sections[joint.section].board;
    board.tongue().filter(|_| joint.kind == JointKind::BoardEdge)
}

fn is_treated(job: &Job, joint: &Joint, gap: Option<GapEstimate>) -> bool {
    let open = gap.is_some_and(|gap| gap.gap.mean >= job.plan.open_from);
    match job.plan.scope {
        Scope::OpenJoints => open,
        Scope::EveryBoardJoint => open || joint.kind == JointKind::BoardEdge,
    }
}

/// Fills in what a bead put in on `seal_day` would have to take.
pub(super) fn hold_against_class(
    job: &Job,
    catalog: &Catalog,
    sections: &[SectionState],
    joints: &mut [JointState],
    layouts: &[SurfaceLayout],
    seal_day: usize,
) {
    let breaker = catalog.breaker(&job.plan);
    let Some(sealant) = catalog.bead(&job.plan) else {
        return;
    };
    let sealants: Vec<Sealant> = catalog.sealants.iter().map(|sealant| sealant.over(breaker)).collect();
    for state in joints {
        let joint = &layouts[state.surface].joints[state.joint];
        let Some(motion) = motion(joint, state, sections) else { continue };
        let (across, along) = slides(job, joint, state.surface);
        let motion = motion.sliding(across, along);
        state.at_sealing = motion.gap_on(seal_day);
        let (least, most) = motion.extremes_from(seal_day);
        state.demand = demand(state.at_sealing, least, most, motion.slide_from(seal_day));
        let wide_enough = state.at_sealing >= job.plan.narrowest;
        state.smallest_class =
            state.demand.filter(|_| wide_enough).and_then(|demand| smallest_class(&sealants, demand));
        let together = tongue(job, state.surface, joint).is_none_or(|tongue| most < tongue);
        state.can_hold = together && wide_enough;
        state.holds = state.can_hold && state.demand.is_some_and(|demand| sealant.takes(demand));
    }
}

/// What the physics finds wrong: gaps no drying explains, boards that will push.
pub(super) fn physical_problems(
    job: &Job,
    sections: &[SectionState],
    joints: &[JointState],
    layouts: &[SurfaceLayout],
) -> Vec<Problem> {
    let of_section = |(index, state): (usize, &SectionState)| {
        let at = At(state.surface, state.section);
        let found = section_problems(job, state).into_iter().chain(pushes(index, joints, layouts));
        found.map(move |(field, fault)| Problem::new(Place::Field(field, at), fault)).collect::<Vec<_>>()
    };
    sections.iter().enumerate().flat_map(of_section).collect()
}

fn section_problems(job: &Job, state: &SectionState) -> Vec<(&'static Field, SectionFault)> {
    let mut found = Vec::new();
    if state.origin.is_some_and(|origin| origin.beyond_drying) {
        found.push((&fields::SECTION_NAME, SectionFault::BeyondDrying { gap: state.gaps.mean }));
    }
    if state.settled.is_sealed_off() {
        found.push((&fields::FINISH, SectionFault::SealedOff));
    }
    let board = &job.surfaces[state.surface].sections[state.section].board;
    let gap = state.year_gap.1;
    if let Some(tongue) = board.tongue().filter(|tongue| gap > *tongue) {
        found.push((&fields::OVERALL_WIDTH, SectionFault::OpensPastTongue { gap, tongue }));
    }
    if state.is_wetted() {
        let (moisture, wettest) = (state.now.moisture.mean, state.settled.extremes().1);
        found.push((&fields::SECTION_NAME, SectionFault::Wetted { moisture, wettest }));
    }
    found
}

/// Measured joints of a section that close in the humid season and push.
fn pushes(
    section: usize,
    joints: &[JointState],
    layouts: &[SurfaceLayout],
) -> Option<(&'static Field, SectionFault)> {
    let pushing = |joint: &&JointState| {
        joint.section == Some(section)
            && joint.gap.is_some_and(|gap| gap.measured)
            && joint.push > Length::mm(0.5)
    };
    let pushing: Vec<&JointState> = joints.iter().filter(pushing).collect();
    let worst = pushing.iter().max_by(|a, b| a.push.to_m().total_cmp(&b.push.to_m()))?;
    let most = layouts[worst.surface].joints[worst.joint].label.clone();
    Some((&fields::SECTION_NAME, SectionFault::Pushes { joints: pushing.len(), most, push: worst.push }))
}

/// Days from the install to the visit, if it is known and not after it.
pub fn age(job: &Job) -> Option<i64> {
    let installed = job.installed.filter(|installed| installed.earliest() <= job.visited)?;
    // The middle of a month may lie after a visit in the same month.
    let span = installed.date().min(job.visited).until(job.visited).ok()?;
    Some(i64::from(span.get_days())).filter(|days| *days >= 0)
}

/// The visit's day of the year, from 0.
pub fn visit_day(job: &Job) -> i64 {
    i64::try_from(day_of_year(job.visited)).unwrap_or(0)
}
