//! The bead that lasts longest, put to what else the program knows: the trials of a callback, the buying list.

use gapwright::assess::{Assessment, JointBeads, SealantBeads, TriedBead, assess};
use gapwright::bead::NOZZLE;
use gapwright::job::{Catalog, Job, demo_job, file};
use gapwright::joint::BeadLay;
use gapwright::measure::Percent;
use gapwright::repair::MethodId;

use crate::EXAMPLES;

/// The bead of the plan's sealant in most of the joints.
fn planned(found: &Assessment) -> (&JointBeads, &SealantBeads) {
    let beads = &found.bead_designs[0];
    let name = found.sealant_name();
    let of = beads.sealants.iter().find(|of| found.catalog.sealants[of.sealant].name == name);
    (beads, of.unwrap())
}

/// The job with a bead laid on the middle day of its weeks.
fn with(job: &Job, bead: &TriedBead) -> Job {
    use jiff::ToSpan as _;
    let mut job = job.clone();
    let shape = &mut job.plan.bead;
    (shape.v_filled, shape.in_slot) = (bead.form.v_filled, bead.form.in_slot);
    (shape.hollow, shape.least_depth) = (bead.form.hollow, bead.form.least_depth);
    let day = i64::try_from(usize::midpoint(bead.days.low, bead.days.high)).unwrap();
    job.plan.seal_on = Some(job.visited.checked_add(day.days()).unwrap());
    job.plan.chosen = if bead.lay == BeadLay::OnTongue { MethodId::ResealOnTongue } else { MethodId::Reseal };
    job
}

fn jobs() -> Vec<Job> {
    let examples = EXAMPLES.iter().map(|(_, text)| file::read(text).unwrap().job);
    let jobs = examples.chain([demo_job()]);
    jobs.filter(|job| !assess(job.clone(), Catalog::built_in()).bead_designs.is_empty()).collect()
}

#[test]
fn the_best_bead_is_one_that_a_good_painter_lays() {
    for job in jobs() {
        let found = assess(job.clone(), Catalog::built_in());
        for beads in &found.bead_designs {
            for of in &beads.sealants {
                let (best, usual) = (&of.best, &of.usual);
                println!(
                    "{} {}: {:?} fill {:.0} in {:.2} mm hollow {:.0}, {} to {}: {:.1} %; usual {:.1} %; {:.0} mL {:?} {:.0} min",
                    job.title,
                    found.catalog.sealants[of.sealant].name,
                    best.lay,
                    best.form.v_filled.to_pct(),
                    best.form.in_slot.to_mm(),
                    best.form.hollow.to_pct(),
                    best.days.low,
                    best.days.high,
                    best.lasts.to_pct(),
                    usual.lasts.to_pct(),
                    best.sealant.to_ml(),
                    best.cost,
                    best.minutes.to_minutes(),
                );
                assert!(best.lasts >= usual.lasts - Percent::pct(1.0), "{best:?} {usual:?}");
                // The V shows, nothing is bonded behind, and a nozzle reaches.
                let has_v = beads.edges.v_leg.to_m() > 0.0;
                assert!(!has_v || best.form.v_filled <= Percent::pct(80.0));
                assert_eq!(best.lay, BeadLay::Bridge, "{}", job.title);
                assert!(!has_v || beads.gap >= NOZZLE || best.form.in_slot <= beads.gap * 2.0);
            }
        }
    }
}

/// The count of what lasts, which chooses the bead, and the trials of a callback, which do not, agree.
#[test]
fn trials_of_a_callback_favor_the_best_bead_over_the_usual_one() {
    for job in jobs() {
        let found = assess(job.clone(), Catalog::built_in());
        let (_, of) = planned(&found);
        let chance = |bead: &TriedBead| {
            let found = assess(with(&job, bead), Catalog::built_in());
            let callback = found.chosen().unwrap().callback.clone();
            callback.map(|callback| callback.chance)
        };
        // A bead that fills the V to the brim hides it: the best one must not, and pays for that.
        if of.usual.form.v_filled > Percent::pct(80.0) {
            continue;
        }
        let (best, usual) = (chance(&of.best), chance(&of.usual));
        println!("{}: callback {best:?}, of the usual bead {usual:?}", job.title);
        let (Some(best), Some(usual)) = (best, usual) else { continue };
        assert!(best <= usual + 0.02, "{}: {best} against {usual}", job.title);
    }
}

/// A sealant that takes more movement lasts on no less of the length.
#[test]
fn a_higher_class_lasts_on_no_less() {
    for job in jobs() {
        let found = assess(job, Catalog::built_in());
        for beads in &found.bead_designs {
            for pair in beads.sealants.windows(2) {
                let class = |of: &SealantBeads| found.catalog.sealants[of.sealant].class_size();
                assert!(class(&pair[0]) <= class(&pair[1]), "the catalog goes from weak to strong");
                assert!(pair[1].best.lasts >= pair[0].best.lasts - Percent::pct(1.5), "{pair:?}");
            }
        }
    }
}
