//! The bead that lasts longest, for each kind of joint and each sealant, beside the one that a crew lays without
//! thinking.
//!
//! Tried are beads that leave part of the V to be seen, as full, as deep and as hollow as they can be laid; each
//! in every week of the coming year, by the same count of what lasts as the best weeks follow from
//! ([`crate::joint::season`]). Joints of a kind are tried by a few of them, spread over their gaps.

use rayon::prelude::*;

use super::option_inputs::OptionInputs;
use super::sections::{JointState, motion, slides, tongue};
use crate::bead::{FINGER, NOZZLE};
use crate::job::{Catalog, Job};
use crate::joint::{
    BeadForm, BeadLay, JointEdges, JointMotion, LaidBead, REVEAL, Sealant, SealedJoint, sealed_on, season,
};
use crate::measure::{Length, Minutes, Money, Percent, Span, Volume};
use crate::repair::{BeadShape, TaskPer, TreatedJoint, wet_sealant};

/// Shares of the V that are filled. More would hide it: what is left open of the usual 1/8 in V is then less
/// than 1/32 in deep.
const FILLS: [f64; 4] = [35.0, 50.0, 65.0, 80.0];
/// How far the bead reaches into the slot, in inches.
const IN_SLOT: [f64; 3] = [0.0, 1.0 / 32.0, 1.0 / 16.0];
/// Depths of a bead between square edges, in inches.
const DEPTHS: [f64; 3] = [1.0 / 16.0, 1.0 / 8.0, 1.0 / 4.0];
/// How hollow a bead is tooled on purpose, per cent of its width.
const HOLLOW: f64 = 5.0;
/// Joints of a kind that stand for all of them.
const MOST_TRIED: usize = 12;
/// Beads that last on as much of the length, to within this share of it, are as good: then the paint decides,
/// and if that is as good too, the plainer bead.
const AS_GOOD: f64 = 0.01;

/// The beads of all joints of a kind.
#[derive(Debug, Clone, PartialEq)]
pub struct JointBeads {
    /// The boards' edges there.
    pub edges: JointEdges,
    /// Whether the boards also slide along the joint: against trim and dividers.
    pub slides: bool,
    /// How many joints there are.
    pub joints: usize,
    /// Their length.
    pub run: Length,
    /// The gap of half of them on the visit.
    pub gap: Length,
    /// The best bead of each sealant, in the catalog's order.
    pub sealants: Vec<SealantBeads>,
}

/// Two beads of one sealant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SealantBeads {
    /// Index in [`Catalog::sealants`].
    pub sealant: usize,
    /// The bead that lasts on most of the length.
    pub best: TriedBead,
    /// The one that a crew lays without thinking: on the day of the visit, nozzle pushed in, smoothed with a
    /// finger.
    pub usual: TriedBead,
}

/// A bead that was tried.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TriedBead {
    /// How it is laid.
    pub lay: BeadLay,
    /// Its form.
    pub form: BeadForm,
    /// Whether half of the joints or more get backer or tape.
    pub backed: bool,
    /// Days from the visit to the first day of the first and of the last week in which it lasts longest; both
    /// the same for one that is laid on a certain day.
    pub days: Span<usize>,
    /// Share of the length on which it is expected to last, with what boards and beads scatter by.
    pub lasts: Percent,
    /// Share of the length on which the paint over it is expected to stay whole, likewise.
    pub paint_lasts: Percent,
    /// Wet sealant for all joints, waste included.
    pub sealant: Volume,
    /// What that costs at the cheapest pack's price, broken packs included as they come.
    pub cost: Money,
    /// Minutes of one person to run it, tool it, back it, and go over it again where it sinks.
    pub minutes: Minutes,
}

/// Joints of one kind, some of which stand for all.
struct Kind<'a> {
    edges: JointEdges,
    slides: bool,
    joints: usize,
    run: Length,
    /// By rising gap.
    tried: Vec<TriedJoint<'a>>,
}

/// The beads of every kind of joint that is to be sealed.
pub(super) fn bead_designs(inputs: &OptionInputs<'_>) -> Vec<JointBeads> {
    let paint = inputs.catalog.paint(&inputs.job.plan.paint).map_or(Percent::pct(100.0), |p| p.cracks_at);
    let one = |kind: &Kind<'_>| {
        let trial = Trial { job: inputs.job, catalog: inputs.catalog, kind, paint };
        let gap = kind.median()?;
        let sealants = (0..inputs.catalog.sealants.len()).into_par_iter();
        let sealants = sealants.filter_map(|at| trial.beads_of(at)).collect();
        let Kind { edges, slides, joints, run, .. } = *kind;
        Some(JointBeads { edges, slides, joints, run, gap, sealants })
    };
    kinds(inputs).par_iter().filter_map(one).collect()
}

fn kinds<'a>(inputs: &OptionInputs<'a>) -> Vec<Kind<'a>> {
    let OptionInputs { job, layouts, sections, joints, .. } = *inputs;
    let mut kinds: Vec<Kind<'a>> = Vec::new();
    for state in joints.iter().filter(|state| state.treated) {
        let Some((edges, slides, one)) = known(job, layouts, sections, state) else { continue };
        let same = kinds.iter_mut().find(|kind| kind.edges == edges && kind.slides == slides);
        let kind = match same {
            Some(kind) => kind,
            None => {
                let (joints, run, tried) = (0, Length::ZERO, vec![]);
                kinds.push(Kind { edges, slides, joints, run, tried });
                let Some(kind) = kinds.last_mut() else { continue };
                kind
            }
        };
        kind.joints += 1;
        kind.run = kind.run + one.2;
        kind.tried.push(one);
    }
    for kind in &mut kinds {
        kind.thin_out();
    }
    kinds.sort_by(|a, b| b.run.to_m().total_cmp(&a.run.to_m()));
    kinds
}

/// A joint's motion, its tongue and its length.
type TriedJoint<'a> = (JointMotion<'a>, Option<Length>, Length);

/// A joint whose motion is known: its edges, whether it slides, and its motion with tongue and length.
fn known<'a>(
    job: &Job,
    layouts: &[crate::surface::SurfaceLayout],
    sections: &'a [super::SectionState],
    state: &JointState,
) -> Option<(JointEdges, bool, TriedJoint<'a>)> {
    let section = &sections[state.section?];
    let board = &job.surfaces[section.surface].sections[section.section].board;
    let joint = &layouts[state.surface].joints[state.joint];
    let (across, along) = slides(job, joint, state.surface);
    let motion = motion(joint, state, sections)?.sliding(across, along);
    let sliding = across > Length::ZERO || along > Length::ZERO;
    Some((JointEdges::of(board), sliding, (motion, tongue(job, state.surface, joint), joint.length())))
}

impl Kind<'_> {
    /// Leaves a few joints, spread over the gaps, each for as much length as all of them have.
    fn thin_out(&mut self) {
        self.tried.sort_by(|a, b| a.0.gap_now.to_m().total_cmp(&b.0.gap_now.to_m()));
        let all = self.tried.len();
        if all > MOST_TRIED {
            let place = |at: usize| (2 * at + 1) * all / (2 * MOST_TRIED);
            self.tried = (0..MOST_TRIED).map(|at| self.tried[place(at)]).collect();
        }
        let kept: Length = self.tried.iter().map(|(.., length)| *length).sum();
        let share = self.run.to_m() / kept.to_m().max(1e-9);
        for (.., length) in &mut self.tried {
            *length = *length * share;
        }
    }

    fn median(&self) -> Option<Length> {
        self.tried.get(self.tried.len() / 2).map(|(motion, ..)| motion.gap_now)
    }
}

/// What is tried on the joints of a kind.
struct Trial<'a> {
    job: &'a Job,
    catalog: &'a Catalog,
    kind: &'a Kind<'a>,
    paint: Percent,
}

impl Trial<'_> {
    fn beads_of(&self, at: usize) -> Option<SealantBeads> {
        let sealant = self.catalog.sealants.get(at)?;
        let usual = self.usual()?;
        Some(SealantBeads {
            sealant: at,
            best: self.best(sealant)?,
            usual: self.tried(sealant, usual, Some(0))?,
        })
    }

    fn has_v(&self) -> bool {
        self.kind.edges.v_leg > Length::ZERO
    }

    /// The bead that comes of not thinking: pushed as deep as a nozzle does, smoothed with a fingertip that
    /// rides on the edges of the boards.
    fn usual(&self) -> Option<(BeadLay, BeadForm)> {
        let gap = self.kind.median()?;
        let edges = self.kind.edges;
        let pushed = if gap < NOZZLE { gap * 2.0 } else { Length::m(1.0) }.min(edges.slot_to_tongue());
        let half = 0.5 * gap.to_m() + edges.v_leg.to_m();
        let (radius, most) = (FINGER.to_m(), BeadForm::MOST_HOLLOW);
        let dip = if half < radius { radius - (radius * radius - half * half).sqrt() } else { 0.0 };
        let hollow = Percent::pct(100.0 * dip / (2.0 * half).max(1e-9)).min(most);
        let form = BeadForm {
            v_filled: Percent::pct(100.0),
            in_slot: pushed,
            hollow,
            least_depth: pushed.max(Length::mm(1.0)),
        };
        Some((BeadLay::Bridge, form))
    }

    /// The best of all beads that are tried.
    fn best(&self, sealant: &Sealant) -> Option<TriedBead> {
        let form = self.job.plan.bead.form();
        let flush = BeadForm { hollow: Percent::ZERO, ..form };
        let gap = self.kind.median()?;
        // No deeper than a nozzle pushes, and off the tongue.
        let reach = if gap < NOZZLE { gap * 2.0 } else { REVEAL };
        let to_tongue = self.kind.edges.slot_to_tongue();
        let mut forms: Vec<(BeadLay, BeadForm)> = Vec::new();
        if self.has_v() {
            for fill in FILLS {
                let in_slot = IN_SLOT.map(Length::inches).into_iter();
                for in_slot in in_slot.filter(|depth| *depth < to_tongue && *depth <= reach) {
                    let v_filled = Percent::pct(fill);
                    forms.push((BeadLay::Bridge, BeadForm { v_filled, in_slot, ..flush }));
                }
            }
            forms.push((BeadLay::OnTongue, BeadForm { v_filled: Percent::pct(50.0), ..flush }));
        } else {
            let depths = DEPTHS.map(Length::inches).into_iter().filter(|depth| *depth < to_tongue);
            forms.extend(depths.map(|least_depth| (BeadLay::Bridge, BeadForm { least_depth, ..flush })));
        }
        let mut best: Option<TriedBead> = None;
        for form in forms {
            best = better(best, self.tried(sealant, form, None));
        }
        let found = best?;
        let hollow = BeadForm { hollow: Percent::pct(HOLLOW), ..found.form };
        better(best, self.tried(sealant, (found.lay, hollow), None))
    }

    /// A bead laid in its best weeks, or on a certain day. `None` where there is no bead in any week.
    fn tried(
        &self,
        sealant: &Sealant,
        (lay, form): (BeadLay, BeadForm),
        day: Option<usize>,
    ) -> Option<TriedBead> {
        let (edges, narrowest) = (self.kind.edges, self.job.plan.narrowest);
        let bead = LaidBead::new(lay, lay.design(edges, &form), sealant, self.paint);
        if !bead.section(self.kind.median()?.max(narrowest)).is_valid() {
            return None;
        }
        let one = |at: usize| {
            let (motion, tongue, length) = self.kind.tried[at];
            SealedJoint { motion, length, bead: &bead, tongue }
        };
        let joints: Vec<SealedJoint<'_>> = (0..self.kind.tried.len()).map(one).collect();
        let (week, days) = match day {
            Some(day) => (sealed_on(day, &joints, narrowest), Span { low: day, high: day }),
            None => {
                let season = season(&joints, narrowest)?;
                let first_day = |week: usize| season.weeks[week].day;
                let days = Span { low: first_day(season.best.low), high: first_day(season.best.high) };
                (season.best_week().clone(), days)
            }
        };
        let gaps = self.kind.tried.iter().map(|(motion, _, length)| (motion.gap_on(week.day), *length));
        let gaps: Vec<(Length, Length)> = gaps.filter(|(gap, _)| *gap >= narrowest).collect();
        let backed: Length =
            gaps.iter().filter(|(gap, _)| lay.is_backed(lay.slot(*gap))).map(|(_, length)| *length).sum();
        let sealed: Length = gaps.iter().map(|(_, length)| *length).sum();
        let volume = self.volume(&gaps, (lay, form), sealant);
        let share = |length: Length| Percent::pct(100.0 * length.to_m() / self.kind.run.to_m().max(1e-9));
        Some(TriedBead {
            lay,
            form,
            backed: backed.to_m() > 0.5 * sealed.to_m(),
            days,
            lasts: share(week.lasts),
            paint_lasts: share(week.paint_lasts),
            sealant: volume,
            cost: cost(volume, sealant),
            minutes: self.minutes(sealed, backed, sealant),
        })
    }

    fn volume(
        &self,
        gaps: &[(Length, Length)],
        (lay, form): (BeadLay, BeadForm),
        sealant: &Sealant,
    ) -> Volume {
        let edges = self.kind.edges;
        let joint = |&(gap, length): &(Length, Length)| TreatedJoint { length, gap, edges };
        let joints: Vec<TreatedJoint> = gaps.iter().map(joint).collect();
        let BeadForm { v_filled, in_slot, hollow, least_depth } = form;
        let shape = BeadShape { v_filled, in_slot, hollow, least_depth, ..self.job.plan.bead.clone() };
        wet_sealant(&joints, &shape, lay, sealant.second_bead())
    }

    /// Minutes by the job's own rates, else the catalog's; what the room adds to them is the same for all beads.
    fn minutes(&self, sealed: Length, backed: Length, sealant: &Sealant) -> Minutes {
        let of = |id: &str| {
            let Some(task) = self.catalog.tasks.iter().find(|task| task.id == id) else { return 0.0 };
            let rate = self.job.plan.own_minutes.get(id).copied().unwrap_or(task.minutes);
            let run = if task.per == TaskPer::BackedRun { backed } else { sealed };
            rate.mean() * run.to_m() / task.batch.max(1e-9)
        };
        let again = if sealant.takes_second_bead() { of("second_bead") } else { 0.0 };
        Minutes::of(of("breaker") + of("bead") + of("tool") + again)
    }
}

/// The better of two beads; of two as good, the first.
fn better(one: Option<TriedBead>, other: Option<TriedBead>) -> Option<TriedBead> {
    match (one, other) {
        (Some(one), Some(other)) => {
            let more = |of: fn(&TriedBead) -> Percent| of(&other).to_fraction() - of(&one).to_fraction();
            let (lasts, paint) = (more(|bead| bead.lasts), more(|bead| bead.paint_lasts));
            let other_wins = lasts > AS_GOOD || (lasts >= -AS_GOOD && paint > AS_GOOD);
            Some(if other_wins { other } else { one })
        }
        (one, other) => one.or(other),
    }
}

/// At the cheapest pack's price for what it holds.
fn cost(volume: Volume, sealant: &Sealant) -> Money {
    let packs = sealant.packs.iter().filter(|pack| pack.holds.to_m3() > 0.0);
    let price = |pack: &crate::joint::Pack| pack.price.times(volume.to_m3() / pack.holds.to_m3());
    packs.map(price).min().unwrap_or(Money::ZERO)
}
