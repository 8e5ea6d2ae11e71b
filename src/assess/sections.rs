//! The state of sections and joints: gap, moisture, motion, cause.

use std::sync::Arc;

use rayon::prelude::*;
use statrs::statistics::Statistics as _;

use super::beliefs::{Beliefs, KnownSection};
use super::laid::LaidBeads;
use super::section_worlds::{MeanGap, PastWeek, SectionWorlds, WEEK, week};
use super::treated::treated;
use crate::air::IndoorYear;
use crate::belief::{AgainstMarks, Cause, Course, against_marks};
use crate::job::fields::{self, At, Field};
use crate::job::{Catalog, Job, Place, Problem, SectionFault};
use crate::joint::{BoardMotion, BoardYears, Demand, HORIZON, JointMotion, demand};
use crate::measure::{Area, Estimate, Length, Moisture, Span, day_of_year};
use crate::ready::moisture_after;
use crate::surface::{BoardSpec, Joint, JointKind, SurfaceLayout};
use crate::survey::{GapEstimate, GapSurvey, MoistureNow, SectionGaps, moisture_readings, readings_behind};
use crate::wood::drying::Panel;
use crate::wood::{Species, shrinkage};

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
    /// Whether water got to them.
    wetted: bool,
    /// The moisture that the room's model expects them at today.
    pub expected_now: Moisture,
    /// What their build-up's moisture does in the room's air; shared by sections alike.
    pub settled: Arc<BoardYears>,
    /// Their motion from the visit on: the mean over the worlds.
    pub motion: BoardMotion,
    /// Their movement in every world.
    pub worlds: Arc<SectionWorlds>,
    /// Their mean gap by week from the visit.
    mean_gaps: Vec<MeanGap>,
    /// They on days before the visit, from the install on, at most one a week; empty where the day of the
    /// install is not known.
    pub past_weeks: Vec<PastWeek>,
    /// Their mean moisture on the days before the visit, from the install on; `None` where the day of
    /// the install is not known. Days are counted from the visit.
    past: Option<Vec<(i64, Moisture)>>,
    /// Width of wood whose movement shows at a joint between two full boards.
    pub across: Length,
    /// The moisture they had at install, if any gap was measured.
    pub origin: Option<InstallMoisture>,
    /// That moisture held against the lumber marks of the catalog; `None` where it is not known or there
    /// are no marks.
    pub against_marks: Option<AgainstMarks>,
    /// For each lumber mark of the catalog the chance, 0 to 1, that they were wetter than it allows; empty where
    /// their moisture at install is not known.
    pub over_marks: Vec<f64>,
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
    /// The widest mean gap of the coming year and the tongue, where the first is wider: there the boards come
    /// apart. `None` else, and for boards without a tongue.
    pub fn opens_past_tongue(&self, board: &BoardSpec) -> Option<(Length, Length)> {
        let gap = self.year_gap.1;
        board.tongue().filter(|tongue| gap > *tongue).map(|tongue| (gap, tongue))
    }

    /// Days from the visit on which to look again, at least two months after the day `from`: when the boards are
    /// widest and when they are narrowest in the year after it.
    pub fn look_again(&self, from: usize) -> (usize, usize) {
        let narrowing = |day: &usize| self.motion.narrowing[*day];
        let from = from.min(crate::joint::HORIZON - crate::air::DAYS);
        let year = || from + LOOK_AGAIN..from + crate::air::DAYS;
        let least = year().min_by(|a, b| narrowing(a).total_cmp(&narrowing(b)));
        let most = year().max_by(|a, b| narrowing(a).total_cmp(&narrowing(b)));
        (least.unwrap_or(from + LOOK_AGAIN), most.unwrap_or(from + LOOK_AGAIN))
    }

    /// Share of the present mean gap that closes by itself in the coming year, 0 to 1.
    pub fn closes_by_itself(&self) -> f64 {
        let now = self.gaps.mean.to_m();
        if now > 0.0 { ((now - self.year_gap.0.to_m()) / now).clamp(0.0, 1.0) } else { 0.0 }
    }

    /// The section's mean gap on a day counted from the visit: the mean over the worlds.
    pub fn mean_gap_on(&self, day: usize) -> Length {
        self.between_weeks(day, |gap| gap.expected)
    }

    /// Where that mean lies nine times in ten.
    pub fn mean_gap_band(&self, day: usize) -> Span<Length> {
        Span {
            low: self.between_weeks(day, |gap| gap.range.low),
            high: self.between_weeks(day, |gap| gap.range.high),
        }
    }

    fn between_weeks(&self, day: usize, of: fn(&MeanGap) -> Length) -> Length {
        let (at, share) = week(day, self.mean_gaps.len());
        let (before, after) = (&self.mean_gaps[at], &self.mean_gaps[(at + 1).min(self.mean_gaps.len() - 1)]);
        of(before) + (of(after) - of(before)) * share
    }

    /// Whether the boards were measured clearly wetter than drying since the install leaves them, and
    /// water is the likelier reason: it got to them.
    pub const fn is_wetted(&self) -> bool {
        self.wetted
    }

    /// Moisture of the boards on a day counted from the visit; before it, as they dried from the
    /// moisture at install, if that day is known.
    pub fn moisture_on(&self, visit: i64, day: i64) -> Moisture {
        if let Ok(day) = usize::try_from(day) {
            return self.motion.moisture[day.min(HORIZON - 1)];
        }
        let Some(past) = &self.past else { return self.settled.on(visit + day) };
        let next = past.partition_point(|(known, _)| *known <= day);
        match (next.checked_sub(1).and_then(|at| past.get(at)), past.get(next)) {
            (Some(&(from, before)), Some(&(to, after))) => {
                #[expect(clippy::cast_precision_loss, reason = "a few days")]
                let share = (day - from) as f64 / (to - from).max(1) as f64;
                before + (after - before) * share
            }
            (Some((_, only)), None) | (None, Some((_, only))) => *only,
            (None, None) => self.settled.on(visit + day),
        }
    }
}

/// The moisture of boards when they went up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InstallMoisture {
    /// The mean over all plausible worlds.
    pub moisture: Moisture,
    /// The interval it lies in nine times out of ten.
    pub interval: Span<Moisture>,
    /// Whether the gap is wider than any drying makes it.
    pub beyond_drying: bool,
}

/// New boards of a section.
#[derive(Debug, Clone, PartialEq)]
pub struct BeforeInstall {
    /// Moisture at which they are hung after the plan's days in the room, if delivered as planned.
    pub hung_at: Moisture,
}

fn before_install(
    job: &Job,
    catalog: &Catalog,
    board: &BoardSpec,
    species: &Species,
    year: &IndoorYear,
) -> BeforeInstall {
    let plan = &job.plan;
    let days = (day_of_year(job.visited), plan.acclimation_days);
    let (thickness, figures) = (board.thickness, &catalog.stacks);
    BeforeInstall { hung_at: moisture_after(species, thickness, figures, year, plan.delivered_at, days) }
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
    /// How wide the plan's bead is across it then, on average over its depth.
    pub bead_width: Option<Length>,
    /// The share of its class that the plan's bead then uses at its worst place, seen or not.
    pub used: Option<f64>,
    /// Index in the catalog of the lowest class that takes it, if any does and the joint is wide enough.
    pub smallest_class: Option<usize>,
    /// Whether any bead can hold there: the boards stay on their tongue.
    pub can_hold: bool,
    /// Whether the plan's sealant takes it.
    pub holds: bool,
}

/// States of all sections whose boards and year are known.
pub(super) fn section_states(
    job: &Job,
    catalog: &Catalog,
    year: Option<&IndoorYear>,
    beliefs: Option<&Beliefs>,
    gaps: &GapSurvey,
) -> Vec<SectionState> {
    let (Some(year), Some(beliefs)) = (year, beliefs) else { return vec![] };
    let visit = visit_day(job);
    let years: Vec<Arc<BoardYears>> = (beliefs.build_ups.par_iter().zip(&beliefs.belief.transfer))
        .map(|(build_up, transfer)| {
            let panel =
                Panel { thickness: build_up.thickness, density: build_up.density, transfer: *transfer };
            Arc::new(BoardYears::new(panel, year, visit))
        })
        .collect();
    let of = |(index, known): (usize, &KnownSection)| {
        let settled = Arc::clone(&years[known.build_up]);
        section_state(job, catalog, year, beliefs, (index, *known), settled, gaps)
    };
    beliefs.sections.par_iter().enumerate().filter_map(of).collect()
}

fn section_state(
    job: &Job,
    catalog: &Catalog,
    year: &IndoorYear,
    beliefs: &Beliefs,
    (index, known): (usize, KnownSection),
    settled: Arc<BoardYears>,
    survey: &GapSurvey,
) -> Option<SectionState> {
    let (surface, belief) = (&job.surfaces[known.surface], &beliefs.belief);
    let section = &surface.sections[known.section];
    let board = &section.board;
    let species = catalog.species(&board.species)?;
    let course = &belief.courses[known.build_up];
    let read = mean_reading(job, &surface.name, &section.name);
    let wetted =
        read.is_some_and(|read| belief.of(Cause::WettedAndDried) > 0.5 && read > course.on(0).mean + WETTER);
    let now = MoistureNow {
        // Water that got in is in no world's drying: there the meter is all that is known.
        moisture: match read.filter(|_| wetted) {
            Some(read) => Estimate { mean: read, sd: METER },
            None => course.on(0),
        },
        readings: readings_behind(&job.survey, &surface.name, &section.name),
    };
    let surplus = if wetted { now.moisture.mean - course.on(0).mean } else { Moisture::ZERO };
    let surplus_on = |day: usize| surplus * settled.wetness_left(day);
    let motion = mean_motion(species, board, course, belief.mean_lot(), &surplus_on);
    let across = board.face_width * (board.fixing.at_groove() + board.fixing.at_tongue());
    let worlds = SectionWorlds::new(belief, (index, known), (species, board.ring_angle), &surplus_on);
    let any_measured = survey.opening.is_some();
    let mean_gaps = worlds.mean_gaps(across, any_measured);
    let mut gaps = survey.sections[known.surface][known.section];
    if any_measured {
        let others = worlds.unmeasured();
        gaps = SectionGaps {
            mean: mean_gaps[0].expected,
            scatter: others.sd,
            error_of_mean: worlds.doubt_of_mean(),
            ..gaps
        };
    }
    let origin = (gaps.measured > 0 && across > Length::ZERO).then(|| {
        let (moisture, interval) = course.install();
        let most = across * shrinkage(species, board.ring_angle, WETTEST, now.moisture.mean);
        let beyond_drying = gaps.mean - gaps.error_of_mean * 2.0 > most * MOST_OVER_SPECIES;
        InstallMoisture { moisture, interval, beyond_drying }
    });
    let (year_gap, narrowest_day) = coming_year(&mean_gaps);
    let past = age(job).map(|_| {
        let before = course.days.iter().take_while(|day| **day <= 0);
        before.enumerate().map(|(at, day)| (*day, Moisture::pct(course.mean(at)))).collect()
    });
    let past_weeks = age(job).map_or_else(Vec::new, |_| {
        worlds.past_weeks(belief, course, (species, board.ring_angle), (across, any_measured))
    });
    // Stamps are those of softwood lumber.
    let stamped = origin.filter(|_| species.softwood);
    Some(SectionState {
        surface: known.surface,
        section: known.section,
        gaps,
        now,
        wetted,
        expected_now: settled.on(visit_day(job)),
        motion,
        mean_gaps,
        worlds: Arc::new(worlds),
        past_weeks,
        past,
        across,
        origin,
        against_marks: stamped
            .and_then(|o| against_marks(o.moisture, o.interval, &job.received.stamp, &catalog.marks)),
        over_marks: stamped.map_or_else(Vec::new, |_| {
            catalog.marks.iter().map(|mark| course.wetter_at_install(mark.most)).collect()
        }),
        before_install: before_install(job, catalog, board, species, year),
        settled,
        year_gap,
        narrowest_day,
    })
}

/// So much wetter than expected, boards have got wet.
const WETTER: Moisture = Moisture::pct(3.0);
/// How well a meter tells the moisture of boards that got wet, one standard deviation. Assumption.
const METER: Moisture = Moisture::pct(1.0);

/// Mean of a section's own meter readings.
fn mean_reading(job: &Job, surface: &str, section: &str) -> Option<Moisture> {
    let own = moisture_readings(&job.survey, surface, section);
    #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
    let mean = own.iter().map(|(pct, _)| pct).sum::<f64>() / own.len() as f64;
    (!own.is_empty()).then(|| Moisture::pct(mean))
}

/// No board is put up wetter than this: it shrinks no more for it.
const WETTEST: Moisture = Moisture::pct(30.0);
/// How much more than its species a lot shrinks at most, two standard deviations out.
const MOST_OVER_SPECIES: f64 = 1.3;

/// The mean over the worlds of how boards move from the visit on; those that got wet dry besides.
fn mean_motion(
    species: &Species,
    board: &BoardSpec,
    course: &Course,
    lot: f64,
    surplus_on: &impl Fn(usize) -> Moisture,
) -> BoardMotion {
    let days = (0..HORIZON).map(|day| {
        let dry = course.mean(course.index(i64::try_from(day).unwrap_or(0)));
        Moisture::pct(dry) + surplus_on(day)
    });
    BoardMotion::new(species, board.ring_angle, days.collect(), lot)
}

/// Narrowest and widest mean gap of the coming year, and the day of the narrowest.
fn coming_year(mean_gaps: &[MeanGap]) -> ((Length, Length), usize) {
    let year = mean_gaps.iter().take(crate::air::DAYS / WEEK + 1).enumerate();
    let by_width =
        |a: &(usize, &MeanGap), b: &(usize, &MeanGap)| a.1.expected.to_m().total_cmp(&b.1.expected.to_m());
    let least = year.clone().min_by(by_width);
    let most = year.max_by(by_width);
    let width = |at: Option<(usize, &MeanGap)>| at.map_or(Length::ZERO, |(_, gap)| gap.expected);
    ((width(least), width(most)), least.map_or(0, |(week, _)| week * WEEK))
}

/// What the readings say of all joints, with what is believed of those that nobody measured.
pub(super) fn believed_gaps(
    mut survey: GapSurvey,
    layouts: &[SurfaceLayout],
    sections: &[SectionState],
) -> GapSurvey {
    if survey.opening.is_none() {
        return survey;
    }
    let mut opening: Vec<f64> = Vec::new();
    for state in sections {
        survey.sections[state.surface][state.section] = state.gaps;
        let others = state.worlds.unmeasured();
        let joints = layouts[state.surface].joints.iter().zip(&mut survey.joints[state.surface]);
        let own =
            joints.filter(|(joint, _)| joint.section == state.section && joint.kind == JointKind::BoardEdge);
        let (mut measured, mut length) = (0.0, Length::ZERO);
        for (joint, gap) in own {
            match gap {
                Some(gap) if gap.measured => measured += gap.gap.mean.to_m() * joint.length().to_m(),
                _ => {
                    *gap = Some(GapEstimate { gap: others, measured: false });
                    length = length + joint.length();
                }
            }
        }
        let each = state.worlds.unmeasured_means().map(|mean| measured + mean.to_m() * length.to_m());
        if opening.is_empty() {
            opening = each.collect();
        } else {
            opening.iter_mut().zip(each).for_each(|(sum, own)| *sum += own);
        }
    }
    if !opening.is_empty() {
        let (mean, sd) = (opening.iter().mean(), opening.iter().population_std_dev());
        survey.opening = Some(Estimate { mean: Area::m2(mean), sd: Area::m2(sd) });
    }
    survey
}

/// States of all joints, without what depends on the day of sealing.
pub(super) fn joint_states(
    job: &Job,
    layouts: &[SurfaceLayout],
    sections: &[SectionState],
    estimates: &[Vec<Option<GapEstimate>>],
) -> Vec<JointState> {
    let mut states = Vec::new();
    let treated = treated(job, layouts, estimates);
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
                treated: treated[surface][index],
                extremes: None,
                push: Length::ZERO,
                at_sealing: Length::ZERO,
                demand: None,
                bead_width: None,
                smallest_class: None,
                can_hold: false,
                holds: false,
                used: None,
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

/// Fills in what a bead put in on `seal_day` would have to take.
pub(super) fn hold_against_class(
    job: &Job,
    catalog: &Catalog,
    sections: &[SectionState],
    joints: &mut [JointState],
    layouts: &[SurfaceLayout],
    seal_day: usize,
) {
    let lay = catalog.lay(&job.plan);
    let Some(beads) = LaidBeads::planned(job, catalog, sections, lay) else { return };
    // The lowest class first.
    let mut classes: Vec<usize> = (0..catalog.sealants.len()).collect();
    classes.sort_by(|a, b| catalog.sealants[*a].class_size().total_cmp(&catalog.sealants[*b].class_size()));
    let all: Vec<(usize, LaidBeads)> = classes
        .into_iter()
        .map(|at| (at, LaidBeads::new(job, catalog, sections, lay, &catalog.sealants[at])))
        .collect();
    for state in joints {
        let Some(bead) = state.section.and_then(|section| beads.of(section)) else { continue };
        let joint = &layouts[state.surface].joints[state.joint];
        let Some(motion) = motion(joint, state, sections) else { continue };
        let (across, along) = slides(job, joint, state.surface);
        let motion = motion.sliding(across, along);
        state.at_sealing = motion.gap_on(seal_day);
        let (least, most) = motion.extremes_from(seal_day);
        state.demand = demand(state.at_sealing, least, most, motion.slide_from(seal_day));
        let wide_enough = state.at_sealing >= job.plan.narrowest;
        state.bead_width = state.demand.map(|_| bead.mean_size(state.at_sealing).0);
        state.used = state.demand.map(|demand| bead.used(&demand));
        let takes = |beads: &LaidBeads, demand: &Demand| {
            state.section.and_then(|section| beads.of(section)).is_some_and(|bead| bead.takes(demand))
        };
        state.smallest_class = state
            .demand
            .filter(|_| wide_enough)
            .and_then(|demand| all.iter().find(|(_, beads)| takes(beads, &demand)).map(|(at, _)| *at));
        let together = tongue(job, state.surface, joint).is_none_or(|tongue| most < tongue);
        state.can_hold = together;
        state.holds = together && wide_enough && state.used.is_some_and(|used| used <= 1.0);
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
    if let Some((gap, tongue)) = state.opens_past_tongue(board) {
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
