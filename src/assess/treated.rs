//! Which joints are worked on: those that are open, and of those nobody measured the ones that count as open.

use crate::job::Job;
use crate::repair::Scope;
use crate::surface::{Joint, JointKind, SurfaceLayout};
use crate::survey::GapEstimate;

/// Of every surface's joints in order, which the plan's scope takes in.
pub(super) fn treated(
    job: &Job,
    layouts: &[SurfaceLayout],
    estimates: &[Vec<Option<GapEstimate>>],
) -> Vec<Vec<bool>> {
    let of_all = layouts.iter().zip(estimates).fold((0, 0), |(open, all), (laid, own)| {
        let here = measured_open(job, laid, own, None);
        (open + here.0, all + here.1)
    });
    let of_surface = |(laid, own): (&SurfaceLayout, &Vec<Option<GapEstimate>>)| {
        let mostly = mostly_open(job, laid, own, of_all);
        let joints = laid.joints.iter().zip(own);
        let here = |joint: &Joint| mostly[joint.section.min(mostly.len() - 1)];
        joints.map(|(joint, gap)| is_treated(job, joint, *gap, here(joint))).collect()
    };
    layouts.iter().zip(estimates).map(of_surface).collect()
}

/// How many joints that were measured are open, and how many were measured.
type Measured = (usize, usize);

/// Of these joints, and of those in `section` alone if one is given.
fn measured_open(
    job: &Job,
    laid: &SurfaceLayout,
    estimates: &[Option<GapEstimate>],
    section: Option<usize>,
) -> Measured {
    let own =
        laid.joints.iter().zip(estimates).filter(|(joint, _)| section.is_none_or(|at| joint.section == at));
    let measured = own.filter_map(|(_, gap)| gap.filter(|gap| gap.measured));
    measured
        .fold((0, 0), |(open, all), gap| (open + usize::from(gap.gap.mean >= job.plan.open_from), all + 1))
}

/// For each section whether most of its joints that were measured are open: only then those that were not count as
/// open too. Where hardly any was measured, by those of the whole job.
fn mostly_open(
    job: &Job,
    laid: &SurfaceLayout,
    estimates: &[Option<GapEstimate>],
    of_all: Measured,
) -> Vec<bool> {
    /// Fewer joints say nothing of a section.
    const FEW: usize = 2;
    let of = |section: usize| {
        let own = measured_open(job, laid, estimates, Some(section));
        let (open, all) = if own.1 < FEW { of_all } else { own };
        2 * open >= all
    };
    (0..laid.sections.len().max(1)).map(of).collect()
}

fn is_treated(job: &Job, joint: &Joint, gap: Option<GapEstimate>, mostly_open: bool) -> bool {
    let told = gap.filter(|gap| gap.measured || mostly_open);
    let open = told.is_some_and(|gap| gap.gap.mean >= job.plan.open_from);
    match job.plan.scope {
        Scope::OpenJoints => open,
        Scope::EveryBoardJoint => open || joint.kind == JointKind::BoardEdge,
    }
}
