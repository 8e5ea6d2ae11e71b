//! When to seal: the best weeks for the plan's sealant, and a sealant that would hold where that one
//! does not.

use jiff::civil::Date;

use super::Assessment;
use super::answer::{SealTime, date_after};
use super::options::RepairOption;
use super::sections::{JointState, SectionState, motion, slides, tongue};
use crate::job::{Catalog, Job};
use crate::joint::{Demand, HORIZON, SealedJoint, Season, season};
use crate::measure::{Length, Percent};
use crate::surface::SurfaceLayout;

/// With less than this share of the joint length within its class, a bead does not do.
pub(super) const ENOUGH_HOLDS: f64 = 0.9;

/// The narrowest joint that guides to sealing speak of (ASTM C1193, from memory): 1/4 in.
pub const GUIDED_JOINT: Length = Length::inches(0.25);

/// What there is to say of sealing with the plan's sealant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SealingOutlook {
    /// The best weeks.
    pub best: SealTime,
    /// The share of the joint length on which the bead then stays within its class, in whole per cents
    /// down.
    pub holds: Percent,
    /// What half of the sealed length is then asked at most; `None` if nothing can be sealed.
    pub typical: Option<Demand>,
    /// Length of joint that is too narrow to seal in any week.
    pub never: Length,
    /// The day of sealing that quantities and prices are worked out for.
    pub planned: Date,
}

impl Assessment {
    /// What there is to say of sealing; `None` where there is nothing to seal.
    pub fn sealing_outlook(&self) -> Option<SealingOutlook> {
        let season = self.season.as_ref()?;
        let week = season.best_week();
        Some(SealingOutlook {
            best: SealTime::best(&self.job, season),
            holds: Percent::pct((season.share(week) * 100.0).floor()),
            typical: week.typical,
            never: season.never,
            planned: date_after(&self.job, self.seal_day),
        })
    }
}

/// A sealant that would hold, by its index in the catalog.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RatedSealant {
    /// Index in [`Catalog::sealants`].
    pub sealant: usize,
    /// The share of the joint length on which it stays within its class in its best weeks, in whole per
    /// cents down; 90 % or more.
    pub holds: Percent,
}

/// The weeks of sealing, and the day that quantities are worked out for: the plan's, else in the best
/// week.
pub(super) fn plan_season(
    job: &Job,
    catalog: &Catalog,
    layouts: &[SurfaceLayout],
    sections: &[SectionState],
    joints: &[JointState],
) -> (Option<Season>, usize) {
    let sealed = sealed_joints(job, layouts, sections, joints);
    let season = catalog.bead(&job.plan).and_then(|sealant| season(&sealed, &sealant, job.plan.narrowest));
    let planned = job.plan.seal_on.and_then(|date| {
        let days = job.visited.until(date).ok()?.get_days();
        usize::try_from(days).ok()
    });
    let best = season.as_ref().map_or(0, |season| season.best_week().day);
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
    let sealed = sealed_joints(job, layouts, sections, joints);
    let breaker = catalog.breaker(&job.plan);
    catalog.sealants.iter().enumerate().find_map(|(at, sealant)| {
        let season = season(&sealed, &sealant.over(breaker), job.plan.narrowest)?;
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
