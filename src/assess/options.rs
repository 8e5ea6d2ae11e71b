//! The season of sealing and the ways to mend the joints, worked out side by side.

use super::sections::{JointState, SectionState, motion, slides, tongue};
use crate::job::{Job, Shelf};
use crate::joint::{SealedJoint, Season, season};
use crate::measure::{Area, Hours, Length, Money, Volume};
use crate::repair::{
    MaterialLine, Method, MethodId, Outcome, Price, PriceInputs, Quantities, Risk, Schedule, TakeoffInputs,
    TaskHours, TaskInputs, TreatedJoint, WaitTimes, price, schedule, takeoff, task_hours,
};
use crate::surface::SurfaceLayout;
use crate::wood::shrinkage;

/// The finest joint that takes a wood spline. Common practice, no source.
const SPLINE: Length = Length::inches(1.0 / 16.0);

/// One way to mend the joints, worked out.
#[derive(Debug, Clone, PartialEq)]
pub struct RepairOption {
    /// Which way.
    pub method: MethodId,
    /// Its name.
    pub name: String,
    /// What it leaves at the joints.
    pub outcome: Outcome,
    /// How it looks afterwards.
    pub look: String,
    /// What it means for those who live there.
    pub upset: String,
    /// What the letter says of it; empty where the letter says more.
    pub says: String,
    /// Why it cannot be done, if it cannot.
    pub not_possible: Option<String>,
    /// Tasks with hours.
    pub tasks: Vec<TaskHours>,
    /// The buying list.
    pub materials: Vec<MaterialLine>,
    /// Days.
    pub schedule: Schedule,
    /// Price.
    pub price: Price,
    /// Hours of all people together.
    pub hours: Hours,
    /// Widest a joint becomes after it, at the driest of the year.
    pub opens_to: Length,
    /// Share of the treated joint length whose bead stays inside its class, 0 to 1; `None` where
    /// the method leaves no bead.
    pub holds: Option<f64>,
    /// The chance that it brings the crew back within the warranty.
    pub callback: Option<Risk>,
    /// The price with callbacks over the warranty included, at present value.
    pub expected: Option<Money>,
}

/// What the options follow from.
#[derive(Clone, Copy)]
pub(super) struct OptionInputs<'a> {
    pub job: &'a Job,
    pub shelf: &'a Shelf,
    pub layouts: &'a [SurfaceLayout],
    pub sections: &'a [SectionState],
    pub joints: &'a [JointState],
}

/// The weeks of sealing, and the day that is reckoned with: the plan's, else in the best week.
pub(super) fn plan_season(
    job: &Job,
    shelf: &Shelf,
    layouts: &[SurfaceLayout],
    sections: &[SectionState],
    joints: &[JointState],
) -> (Option<Season>, usize) {
    let sealed = sealed_joints(job, layouts, sections, joints);
    let found = shelf
        .sealant(&job.plan.sealant)
        .and_then(|sealant| season(&sealed, &sealant.keeping(job.plan.bead.keeps()), job.plan.narrowest));
    let planned = job.plan.seal_on.and_then(|date| {
        let days = job.visited.until(date).ok()?.get_days();
        usize::try_from(days).ok()
    });
    let best = found.as_ref().map_or(0, |season| season.best_week().day);
    (found, planned.unwrap_or(best).min(crate::joint::HORIZON - 1))
}

/// The joints to be sealed whose motion is known.
pub(super) fn sealed_joints<'a>(
    job: &Job,
    layouts: &[SurfaceLayout],
    sections: &'a [SectionState],
    joints: &[JointState],
) -> Vec<SealedJoint<'a>> {
    let treated = joints.iter().filter(|state| state.treated);
    treated
        .filter_map(|state| {
            let joint = &layouts[state.surface].joints[state.joint];
            let (across, along) = slides(job, joint, state.surface);
            let motion = motion(joint, state, sections)?.sliding(across, along);
            Some(SealedJoint { motion, length: joint.length(), tongue: tongue(job, state.surface, joint) })
        })
        .collect()
}

/// Every method of the shelf, worked out.
pub(super) fn options(inputs: &OptionInputs<'_>) -> Vec<RepairOption> {
    let measure = quantities(inputs);
    if measure.boarded <= Area::ZERO {
        return vec![];
    }
    inputs.shelf.methods.iter().filter_map(|method| option(method, &measure, inputs)).collect()
}

fn option(method: &Method, measure: &Quantities, inputs: &OptionInputs<'_>) -> Option<RepairOption> {
    let (plan, shelf) = (&inputs.job.plan, inputs.shelf);
    let sealant = shelf.sealant(&plan.sealant)?;
    let (primer, paint) = (shelf.paint(&plan.primer)?, shelf.paint(&plan.paint)?);
    let tasks = task_hours(&TaskInputs {
        method,
        tasks: &shelf.tasks,
        plan,
        quantities: measure,
        trial_run: trial_run(inputs),
    });
    let materials = takeoff(&TakeoffInputs {
        method,
        plan,
        quantities: measure,
        sealant,
        primer,
        paint,
        materials: &shelf.materials,
    });
    let waits = WaitTimes {
        primer: primer.recoat,
        sealant: sealant.cure,
        recoat: paint.recoat,
        acclimation: Hours::h(24.0 * f64::from(plan.acclimation_days)),
    };
    let price = price(&PriceInputs { tasks: &tasks, materials: &materials, plan });
    let reseals = matches!(method.outcome, Outcome::Bead { .. });
    Some(RepairOption {
        method: method.id,
        name: method.name.clone(),
        outcome: method.outcome,
        look: method.look.clone(),
        upset: method.upset.clone(),
        says: method.says.clone(),
        not_possible: not_possible(method, measure, inputs),
        schedule: schedule(method, &tasks, plan, &waits),
        hours: tasks.iter().map(|task| task.hours.mean).sum(),
        price,
        tasks,
        materials,
        opens_to: match method.outcome {
            Outcome::Bead { .. } | Outcome::Line | Outcome::Unchanged => widest_left(inputs),
            Outcome::Covered | Outcome::Glued => Length::ZERO,
            Outcome::Boards { moves } => widest_of_dried_boards(inputs) * moves,
        },
        holds: reseals.then(|| held_share(inputs)),
        callback: None,
        expected: None,
    })
}

/// Why a method is out of the question here, if it is.
fn not_possible(method: &Method, measure: &Quantities, inputs: &OptionInputs<'_>) -> Option<String> {
    let mends_joints = !matches!(method.outcome, Outcome::Boards { .. } | Outcome::Unchanged);
    if mends_joints && measure.treated.is_empty() {
        return Some("no joint is known to be open".to_owned());
    }
    let board = |state: &SectionState| &inputs.job.surfaces[state.surface].sections[state.section].board;
    let widest = widest_left(inputs);
    let tongue = inputs.sections.iter().filter_map(|state| board(state).tongue()).reduce(Length::min);
    let wet = inputs.sections.iter().any(SectionState::is_wetted);
    let units = inputs.job.units;
    match method.outcome {
        Outcome::Line if tongue.is_some_and(|tongue| widest >= tongue) => Some(format!(
            "joints open to {}, past the tongue: there would be a hole behind the line",
            widest.show(units)
        )),
        Outcome::Glued if widest < SPLINE => {
            Some(format!("the widest joint, {}, is too fine for a spline", widest.show(units)))
        }
        Outcome::Glued if wet => Some("boards are wet: glued now, they tear apart as they dry".to_owned()),
        Outcome::Boards { .. } if method.id == MethodId::Relay && wet => {
            Some("boards are wet: laid tight now, they open again as they dry".to_owned())
        }
        _ => None,
    }
}

/// Widest gap of the treated joints in the three years to come.
fn widest_left(inputs: &OptionInputs<'_>) -> Length {
    let treated = inputs.joints.iter().filter(|joint| joint.treated);
    treated.filter_map(|joint| joint.extremes).map(|(_, widest)| widest).fold(Length::ZERO, Length::max)
}

/// Widest joint between new boards laid tight at the year's mean moisture, at the year's driest.
fn widest_of_dried_boards(inputs: &OptionInputs<'_>) -> Length {
    let one = |state: &SectionState| {
        let board = &inputs.job.surfaces[state.surface].sections[state.section].board;
        let species = inputs.shelf.species(&board.species)?;
        let (driest, _) = state.settled.extremes();
        Some(state.across * shrinkage(species, board.ring_angle, state.settled.mean(), driest))
    };
    inputs.sections.iter().filter_map(one).fold(Length::ZERO, Length::max)
}

/// Share of the treated length that holds if sealed on the plan's day.
fn held_share(inputs: &OptionInputs<'_>) -> f64 {
    let length = |joint: &JointState| inputs.layouts[joint.surface].joints[joint.joint].length().to_m();
    let treated = || inputs.joints.iter().filter(|joint| joint.treated);
    let all: f64 = treated().map(length).sum();
    let held: f64 = treated().filter(|joint| joint.holds).map(length).sum();
    if all > 0.0 { held / all } else { 0.0 }
}

/// The measure of the job on the day of sealing.
fn quantities(inputs: &OptionInputs<'_>) -> Quantities {
    let mut measure = Quantities::default();
    for (surface, laid) in inputs.job.surfaces.iter().zip(inputs.layouts) {
        let mut boarded = false;
        for (section, part) in surface.sections.iter().zip(&laid.sections) {
            let area = part.area();
            if area <= Area::ZERO {
                continue;
            }
            boarded = true;
            measure.sections += 1;
            measure.boarded = measure.boarded + area;
            let thickness = section.board.thickness.max(Length::ZERO);
            measure.board_volume = measure.board_volume + Volume::m3(area.to_m2() * thickness.to_m());
            measure.board_run = measure.board_run + Length::m(area.to_m2() / section.board.face_width.to_m());
        }
        if boarded {
            measure.painted = measure.painted + laid.painted_area;
            measure.outline = measure.outline + laid.outline_length;
        }
    }
    let treated = inputs.joints.iter().filter(|state| state.treated);
    measure.treated = treated.map(|state| treated_joint(state, inputs)).collect();
    measure
}

fn treated_joint(state: &JointState, inputs: &OptionInputs<'_>) -> TreatedJoint {
    let joint = &inputs.layouts[state.surface].joints[state.joint];
    let profile = inputs.job.surfaces[state.surface].sections[joint.section].board.profile;
    TreatedJoint { length: joint.length(), gap: state.at_sealing, v_leg: profile.v_leg() }
}

/// Length of joint to be sealed in the timed section.
fn trial_run(inputs: &OptionInputs<'_>) -> Option<Length> {
    let trial = inputs.job.plan.trial.as_ref()?;
    let surface = inputs.job.surfaces.iter().position(|s| s.name == trial.surface)?;
    let section = inputs.job.surfaces[surface].sections.iter().position(|s| s.name == trial.section)?;
    let joints = &inputs.layouts[surface].joints;
    let wanted = inputs
        .joints
        .iter()
        .filter(|state| state.treated && state.surface == surface && joints[state.joint].section == section);
    Some(wanted.map(|state| joints[state.joint].length()).sum())
}
