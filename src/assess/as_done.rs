//! A repair as it is done in this room: which circumstances its rates meet, and which steps come and go.

use super::option_inputs::OptionInputs;
use super::sections::JointState;
use super::start::access;
use crate::job::Job;
use crate::joint::Sealant;
use crate::measure::{Area, Hours, Length};
use crate::repair::{
    Circumstance, Height, LeadPaint, OldSealant, Outcome, Painting, Quantities, RepairMethod, TaskInputs,
    task_hours,
};
use crate::surface::{Profile, SurfaceKind};

/// A joint finer than this slows the work down.
const FINE: Length = Length::inches(1.0 / 16.0);

/// What circumstances the rates meet here.
pub(super) fn circumstances(job: &Job, measure: &Quantities) -> Vec<Circumstance> {
    let site = &job.plan.site;
    let boards = || job.surfaces.iter().flat_map(|surface| &surface.sections);
    let mut gaps: Vec<Length> = measure.treated.iter().map(|joint| joint.gap).collect();
    gaps.sort_by(|a, b| a.to_m().total_cmp(&b.to_m()));
    let middle = gaps.get(gaps.len() / 2);
    let asked = [
        (Circumstance::Wall, job.surfaces.iter().all(|surface| surface.kind == SurfaceKind::Wall)),
        (Circumstance::Ladder, access(job) == Height::Ladder),
        (Circumstance::Scaffold, access(job) == Height::Scaffold),
        (Circumstance::Tight, site.tight),
        (Circumstance::HardSealant, site.old_sealant == OldSealant::Hard),
        (Circumstance::SoftSealant, site.old_sealant == OldSealant::Soft),
        (Circumstance::Furnished, site.furnished),
        (Circumstance::LeadSafe, may_have_lead(job)),
        (Circumstance::FineJoints, middle.is_some_and(|gap| *gap < FINE)),
        (Circumstance::NoV, !boards().any(|section| matches!(section.board.profile, Profile::VGroove(_)))),
    ];
    asked.into_iter().filter(|(_, here)| *here).map(|(circumstance, _)| circumstance).collect()
}

/// A method as it is done on this job: in two visits, without a second bead where nothing sinks, without scraping
/// where there is nothing to scrape out, lead-safe where that is due.
pub(super) fn as_done_here(
    method: &RepairMethod,
    measure: &Quantities,
    sealant: &Sealant,
    job: &Job,
) -> RepairMethod {
    let split = if job.plan.two_visits { method.in_two_visits() } else { None };
    let mut method = split.unwrap_or_else(|| method.clone());
    if !sealant.takes_second_bead() {
        method = method.without_second_bead();
    }
    if job.plan.site.old_sealant == OldSealant::Missing {
        method = method.without_scraping();
    }
    if lead_safe_due(&method, measure, job) {
        method = method.lead_safe();
    }
    if access(job) == Height::Scaffold {
        method = method.from_scaffold();
    }
    if job.plan.site.furnished { method.among_furniture() } else { method }
}

/// Where no more than this share of the joint length is sealed, nobody paints the whole for it. Judgment.
const FEW: f64 = 0.25;

/// Whether paint goes over the sealed joints alone: as the plan says, else where few of them are sealed.
pub(super) fn paints_joints_only(method: &RepairMethod, inputs: &OptionInputs<'_>) -> bool {
    let length = |state: &JointState| inputs.layouts[state.surface].joints[state.joint].length().to_m();
    let few = || {
        let all: f64 = inputs.joints.iter().map(length).sum();
        inputs.joints.iter().filter(|state| state.treated).map(length).sum::<f64>() <= FEW * all
    };
    matches!(method.outcome, Outcome::Bead { .. })
        && match inputs.job.plan.painting {
            Painting::JointsOnly => true,
            Painting::Quicker => few(),
            Painting::Sprayed | Painting::Brushed => false,
        }
}

/// A method with paint put on as the plan says, or as takes fewer hours here: masking for the sprayer, setting
/// it up and flushing it against the slower brush. At the joints alone it is always brushed.
pub(super) fn as_painted(of_tasks: &TaskInputs<'_>, joints_only: bool) -> RepairMethod {
    let sprayed = of_tasks.method;
    if joints_only {
        return sprayed.brushed();
    }
    if !sprayed.sprays() || of_tasks.plan.painting == Painting::Sprayed {
        return sprayed.clone();
    }
    let brushed = sprayed.brushed();
    let hours = |method: &RepairMethod| -> Hours {
        let tasks = task_hours(&TaskInputs { method, ..*of_tasks });
        tasks.iter().map(|(_, task)| task.hours.mean).sum()
    };
    let quicker = of_tasks.plan.painting == Painting::Brushed || hours(&brushed) < hours(sprayed);
    if quicker { brushed } else { sprayed.clone() }
}

/// The first year in which a house counts as free of lead paint (40 CFR 745.83).
const NO_LEAD_FROM: i16 = 1978;
/// Painted surface that may be disturbed in a room before the work must be lead-safe (40 CFR 745.83:
/// six square feet inside).
const MINOR: Area = Area::m2(6.0 * 0.092_903_04);
/// Width of the paint that scraping out a joint disturbs.
const SCRAPED_BAND: Length = Length::inches(0.5);

fn may_have_lead(job: &Job) -> bool {
    job.plan.site.lead == LeadPaint::ByAge && job.built.is_none_or(|year| year < NO_LEAD_FROM)
}

/// Whether the work must be lead-safe: the house may have lead paint, and more of it is disturbed than
/// counts as minor.
fn lead_safe_due(method: &RepairMethod, measure: &Quantities, job: &Job) -> bool {
    if !may_have_lead(job) || !method.disturbs_paint() {
        return false;
    }
    let scraped = Area::m2(measure.joint_run().to_m() * SCRAPED_BAND.to_m());
    let disturbed = if method.paints() { measure.painted } else { scraped };
    disturbed > MINOR
}
