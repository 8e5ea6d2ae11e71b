//! When to seal: the best weeks for the plan's sealant, and a sealant that would hold where that one
//! does not.

use super::laid::LaidBeads;
use super::options::RepairOption;
use super::sections::{JointState, SectionState, motion, slides, tongue};
use super::start::lead;
use crate::job::{Catalog, Job};
use crate::joint::{BeadLay, HORIZON, SealedJoint, Season, season};
use crate::measure::Percent;
use crate::surface::SurfaceLayout;

/// With less than this share of the joint length within its class, a bead does not do.
pub(super) const ENOUGH_HOLDS: f64 = 0.9;

/// A sealant that would hold, by its index in the catalog.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RatedSealant {
    /// Index in [`Catalog::sealants`].
    pub sealant: usize,
    /// The share of the joint length on which it stays within its class in its best weeks, in whole per
    /// cents down; 90 % or more.
    pub holds: Percent,
}

/// The weeks of sealing, and the day that quantities are worked out for: the plan's, else in the best week of the
/// usual bead. Every option is reckoned for that day: which one is chosen changes no figure of another.
pub(super) fn plan_season(
    job: &Job,
    catalog: &Catalog,
    layouts: &[SurfaceLayout],
    sections: &[SectionState],
    joints: &[JointState],
) -> (Option<Season>, usize) {
    let season_of = |lay| {
        let beads = LaidBeads::planned(job, catalog, sections, lay)?;
        season(&sealed_joints(job, layouts, sections, joints, &beads), job.plan.narrowest)
    };
    let (own, usual) = (catalog.lay(&job.plan), BeadLay::Bridge);
    let season = season_of(own);
    let of_usual = if own == usual { season.clone() } else { season_of(usual) };
    let planned = job.plan.seal_on.and_then(|date| {
        let days = job.visited.until(date).ok()?.get_days();
        usize::try_from(days).ok()
    });
    // Nobody seals before the crew can come.
    // Where any week is as good, they come as soon as they can.
    let best = of_usual.filter(|season| !season.is_any_time());
    let best = best.map_or(0, |season| season.best_week().day).max(lead(job));
    (season, planned.unwrap_or(best).min(HORIZON - 1))
}

/// The first sealant of the catalog that holds on enough of the joint length in its own best weeks.
/// `None` if the chosen option holds already, lays no bead, or if no sealant does.
pub(super) fn better_sealant(
    job: &Job,
    catalog: &Catalog,
    layouts: &[SurfaceLayout],
    sections: &[SectionState],
    joints: &[JointState],
    chosen: Option<&RepairOption>,
) -> Option<RatedSealant> {
    chosen?.holds.filter(|share| *share < ENOUGH_HOLDS)?;
    let lay = catalog.lay(&job.plan);
    catalog.sealants.iter().enumerate().find_map(|(at, sealant)| {
        let beads = LaidBeads::new(job, catalog, sections, lay, sealant);
        let season = season(&sealed_joints(job, layouts, sections, joints, &beads), job.plan.narrowest)?;
        let share = season.share(season.best_week());
        let holds = Percent::pct((share * 100.0).floor());
        (share >= ENOUGH_HOLDS).then_some(RatedSealant { sealant: at, holds })
    })
}

/// The joints to be sealed whose motion is known.
fn sealed_joints<'a>(
    job: &Job,
    layouts: &[SurfaceLayout],
    sections: &'a [SectionState],
    joints: &[JointState],
    beads: &'a LaidBeads,
) -> Vec<SealedJoint<'a>> {
    let treated = joints.iter().filter(|state| state.treated);
    treated
        .filter_map(|state| {
            let bead = beads.of(state.section?)?;
            let joint = &layouts[state.surface].joints[state.joint];
            let (across, along) = slides(job, joint, state.surface);
            let motion = motion(joint, state, sections)?.sliding(across, along);
            let tongue = tongue(job, state.surface, joint);
            Some(SealedJoint { motion, length: joint.length(), bead, tongue })
        })
        .collect()
}
