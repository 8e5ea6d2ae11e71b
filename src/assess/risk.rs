//! The chance of a callback for each way to mend the joints.

use super::options::RepairOption;
use super::sections::{JointState, SectionState, motion, tongue};
use crate::job::{Job, Shelf};
use crate::joint::HORIZON;
use crate::measure::Moisture;
use crate::repair::{MethodId, RiskJoint, RiskOption, Swing, risks};
use crate::surface::{JointKind, SurfaceLayout};
use crate::survey::{GapEstimate, SectionGaps};
use crate::wood::Species;

/// Trials of every option.
const TRIALS: u32 = 10_000;
/// Where the random sequences start; any figure would do.
const SEED: u64 = 20_240_229;
/// How well boards dried for the room meet its mean, per cent moisture, one standard deviation.
/// Assumption.
const DRIED_TO: f64 = 0.7;
/// Scatter of ring angles adds about this much to that of species, relative. Assumption.
pub(super) const RING_SCATTER: f64 = 0.08;

/// Fills in the options' chances.
pub(super) fn chances(
    job: &Job,
    shelf: &Shelf,
    layouts: &[SurfaceLayout],
    sections: &[SectionState],
    joints: &[JointState],
    seal_day: usize,
    options: &mut [RepairOption],
) {
    let known = |option: &RepairOption| option.not_possible.is_none();
    let wanted: Vec<usize> = (0..options.len()).filter(|&at| known(&options[at])).collect();
    let of = |&at: &usize| match options[at].method {
        MethodId::Reseal => reseal(job, shelf, layouts, sections, joints, seal_day),
        MethodId::Replace => replace(job, shelf, layouts, sections, joints),
    };
    let inputs: Vec<RiskOption> = wanted.iter().map(of).collect();
    if inputs.iter().all(|option| option.joints.is_empty()) {
        return;
    }
    let plan = &job.plan;
    let found = risks(&inputs, &plan.callback, &shelf.capability, plan.warranty_years, TRIALS, SEED);
    for (at, risk) in wanted.into_iter().zip(found) {
        options[at].callback = (!risk.joints.is_empty()).then_some(risk);
    }
}

/// Movement per per cent of moisture of a section's boards, as a fraction of their width.
fn per_pct(job: &Job, shelf: &Shelf, state: &SectionState) -> f64 {
    let board = &job.surfaces[state.surface].sections[state.section].board;
    shelf.species(&board.species).map_or(0.0, |species| species.coefficient(board.ring_angle))
}

/// How much the driest and the dampest day of the year go with a damper year, per cent moisture.
fn weather(state: &SectionState) -> (f64, f64) {
    let days = 0_i64..365;
    let settled = |day: &i64| state.settled.on(*day).to_pct();
    let driest = days.clone().min_by(|a, b| settled(a).total_cmp(&settled(b))).unwrap_or(0);
    let dampest = days.max_by(|a, b| settled(a).total_cmp(&settled(b))).unwrap_or(0);
    (state.settled.damper_on(driest).to_pct(), state.settled.damper_on(dampest).to_pct())
}

/// Joints sealed again on `seal_day`.
fn reseal(
    job: &Job,
    shelf: &Shelf,
    layouts: &[SurfaceLayout],
    sections: &[SectionState],
    joints: &[JointState],
    seal_day: usize,
) -> RiskOption {
    let swing = |state: &SectionState| {
        let from = seal_day.min(HORIZON - 1);
        let then = state.motion.narrowing[from];
        let later = &state.motion.narrowing[from..];
        let most = later.iter().copied().fold(then, f64::max);
        let least = later.iter().copied().fold(then, f64::min);
        let (per_pct, (dry, damp)) = (per_pct(job, shelf, state), weather(state));
        // Of a wrong reading only what is still left on the day of sealing shows afterwards.
        let left = state.settled.left_after(seal_day, Moisture::pct(1.0));
        Swing {
            narrows: most - then,
            widens: then - least,
            weather: (per_pct * dry, per_pct * damp),
            reading: per_pct * state.now.moisture.sd.to_pct() * left,
        }
    };
    let treated = joints.iter().filter(|state| state.treated);
    let one = |state: &JointState| {
        let joint = &layouts[state.surface].joints[state.joint];
        let section = state.section?;
        let width = state.at_sealing;
        let bead = (width >= job.plan.narrowest).then_some(width);
        let (more, scatter) = moves_like_its_gap(&sections[section].gaps, state.gap?);
        let (_, most) = motion(joint, state, sections)?.extremes_from(seal_day);
        Some(RiskJoint {
            section,
            length: joint.length(),
            across: joint.moves_across * more,
            bead,
            open_from: job.plan.callback.seen_from,
            scatter,
            moves: scatter.min(Species::SCATTER.hypot(RING_SCATTER)),
            lost: tongue(job, state.surface, joint).is_some_and(|tongue| most >= tongue),
        })
    };
    let takes = shelf.sealant(&job.plan.sealant).map_or((0.0, 0.0), |sealant| {
        let sealant = sealant.keeping(job.plan.bead.keeps());
        (sealant.stretch.to_fraction(), sealant.squeeze.to_fraction())
    });
    RiskOption {
        swings: sections.iter().map(swing).collect(),
        joints: treated.filter_map(one).collect(),
        takes,
    }
}

/// By what factor the boards at a joint move more than their section's, and the scatter that is left
/// of the ratio of their movement to their gap (standard deviation of its logarithm).
///
/// Boards that have opened more do so because they move more, or because they were wetter. Of two
/// causes that add up, the first takes the part that its variance has.
pub(super) fn moves_like_its_gap(section: &SectionGaps, joint: GapEstimate) -> (f64, f64) {
    let mean = section.mean.to_m().max(1e-6);
    let boards = Species::SCATTER.hypot(RING_SCATTER);
    let all = (section.scatter.to_m() / mean).clamp(boards, 1.0);
    if !joint.measured {
        // Movement and gap share the boards' own factor: it drops out of their ratio.
        return (1.0, (all * all - boards * boards).max(0.0025).sqrt().min(0.5));
    }
    let part = (boards / all).powi(2);
    let wider = (joint.gap.mean.to_m().max(0.2 * mean) / mean).ln();
    ((part * wider).exp(), boards * (1.0 - part).max(0.1).sqrt())
}

/// New boards laid tight at the room's mean moisture, no bead between them.
fn replace(
    job: &Job,
    shelf: &Shelf,
    layouts: &[SurfaceLayout],
    sections: &[SectionState],
    joints: &[JointState],
) -> RiskOption {
    let swing = |state: &SectionState| {
        let (per_pct, (dry, damp)) = (per_pct(job, shelf, state), weather(state));
        let (driest, dampest) = state.settled.extremes();
        Swing {
            narrows: per_pct * (state.settled.mean() - driest).to_pct(),
            widens: per_pct * (dampest - state.settled.mean()).to_pct(),
            weather: (per_pct * dry, per_pct * damp),
            reading: per_pct * DRIED_TO,
        }
    };
    let edges = joints.iter().filter_map(|state| {
        let joint = &layouts[state.surface].joints[state.joint];
        let section = state.section.filter(|_| joint.kind == JointKind::BoardEdge)?;
        Some(RiskJoint {
            section,
            length: joint.length(),
            across: joint.moves_across,
            bead: None,
            open_from: job.plan.callback.widest,
            scatter: Species::SCATTER.hypot(RING_SCATTER),
            moves: Species::SCATTER.hypot(RING_SCATTER),
            lost: false,
        })
    });
    RiskOption { swings: sections.iter().map(swing).collect(), joints: edges.collect(), takes: (0.0, 0.0) }
}
