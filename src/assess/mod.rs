//! From what was entered to the answer: one pure function.
//!
//! [`assess`] runs the stages one after the other: layout, the room's year, readings to joints,
//! boards' motion, cause, season, options, and last the answer that sums it up. It never fails:
//! what cannot be worked out is `None`, with a problem or a missing entry that says why. The
//! window, the papers and the command line all show its [`Assessment`] and compute nothing of
//! their own.

mod answer;
mod as_done;
mod bead_designs;
mod beliefs;
mod causes;
mod choice;
mod confidence;
mod conflicts;
mod cut;
mod follow_up;
mod laid;
mod materials;
mod next_install;
mod option_inputs;
mod options;
mod photographed;
mod pictures;
mod risk;
mod rows;
mod sealing;
mod sealing_outlook;
mod section_outlook;
mod section_worlds;
mod sections;
mod start;
mod through_time;
mod treated;
mod typical_joint;
mod verdict;
mod work;

pub use answer::{
    Advice, Answer, CallbackChance, CauseVerdict, EntryPlace, FirstStep, InstallFigures, InstallFinding,
    Instead, MissingEntry, Quote, SealTime, date_after, date_on,
};
pub use bead_designs::{JointBeads, SealantBeads, TriedBead};
pub use causes::{ClueEvidence, ClueFinding, Diagnosis, InformativeReading};
pub use choice::{Choice, OtherWarranty, PriceMargin};
pub use confidence::{Confidence, Doubt, LastingChance, Recommendation, Verdict};
pub use follow_up::{BeadsChecked, JointShows, LaterReading, Surprise, VisitOutcome, VisitVerdict};
pub use next_install::{DeliverySampling, NextInstallFindings};
pub use options::{NotPossible, RepairOption};
pub use risk::WarrantyYear;
pub use rows::RowForecast;
pub use sealing::RatedSealant;
pub use sealing_outlook::{GUIDED_JOINT, SealingOutlook};
pub use section_outlook::{Closing, DryingLeft};
pub use section_worlds::{MeanGap, PastWeek, SectionWorlds, Swing};
pub use sections::{BeforeInstall, InstallMoisture, JointState, SectionState, age, visit_day};
pub use start::{Assumed, StartsAfter};
pub use through_time::{MeasuredGap, Story};
pub use typical_joint::{JointWeek, RepairedJoint, RepairedLook, Still, TypicalJoint};
pub use work::{TaskOutcome, TimedWork};

use beliefs::Readings;
use option_inputs::OptionInputs;
use std::borrow::Cow;
use std::sync::Arc;

use jiff::ToSpan as _;
use jiff::civil::Date;

use self::laid::LaidBeads;
use self::materials::Extent;
use crate::air::IndoorYear;
use crate::bead::BeadDesign;
use crate::belief::Belief;
use crate::job::{Catalog, Checked, Job, Problem, Taken, check, fields, sanitized};
use crate::joint::{JointEdges, Sealant, Season};
use crate::measure::{Humidity, Length, Span, Volume};
use crate::repair::{
    Caution, CautionWhen, Done, Height, MethodId, Outcome, Step, TreatedJoint, rates_of, use_of, wet_sealant,
};
use crate::surface::{JointKind, SurfaceKind, SurfaceLayout, layout};
use crate::survey::{DoubtedGap, GapSurvey, joint_gaps, moisture_readings, reading_order};

/// Everything that follows from a job.
#[derive(Debug, Clone, PartialEq)]
pub struct Assessment {
    /// The job it was made from, as it was entered.
    pub job: Arc<Job>,
    /// The catalog it was made with, the job's own prices and rates in it.
    pub catalog: Arc<Catalog>,
    /// What to do, why it happened, and what is missing.
    pub answer: Answer,
    /// What is wrong with the entries.
    pub problems: Vec<Problem>,
    /// One layout for each surface.
    pub layouts: Vec<SurfaceLayout>,
    /// The room's year, if it could be worked out.
    pub year: Option<IndoorYear>,
    /// What the gap readings say of all joints.
    pub gaps: GapSurvey,
    /// The sections of all surfaces in order.
    pub sections: Vec<SectionState>,
    /// Each section as a row after its joints were sealed, in the order of the sections.
    pub rows: Vec<Option<RowForecast>>,
    /// What everything known says in plausible worlds; `None` without boards or a room.
    pub belief: Option<Arc<Belief>>,
    /// Why the joints opened, if any gap is known.
    pub causes: Option<Diagnosis>,
    /// The joints of all surfaces, in the order of the layouts.
    pub joints: Vec<JointState>,
    /// In which weeks to seal, if there is anything to seal.
    pub season: Option<Season>,
    /// The plan's sealant, if it is in the catalog.
    pub sealant: Option<Sealant>,
    /// A sealant that would hold on enough of the joint length, where the chosen option lays a bead that
    /// does not.
    pub better_sealant: Option<RatedSealant>,
    /// The bead that lasts longest in each kind of joint to be sealed, by sealant.
    pub bead_designs: Vec<JointBeads>,
    /// Beads that no table holds, with the widest slot they may be laid in: what is said of them is that of the
    /// nearest in the table until they are solved.
    pub unsolved: Vec<(BeadDesign, Length)>,
    /// The beads of the chosen option, by section; `None` where it lays none.
    beads: Option<LaidBeads>,
    /// Days from the visit to the first day of sealing: the plan's, else in the best week.
    pub seal_day: usize,
    /// The repair options, in the catalog's order.
    pub options: Vec<RepairOption>,
    /// Which of them costs least with callbacks, and what would change that.
    pub choice: Option<Choice>,
    /// What follows for boards that are to go up next, if there are any.
    pub next_install: Option<Arc<NextInstallFindings>>,
    /// Later visits, held against what was forecast.
    pub follow_up: Vec<VisitOutcome>,
    /// Cautions that apply.
    pub cautions: Vec<Caution>,
}

impl Assessment {
    /// Whether the job is about boards to come alone: none are drawn.
    pub fn is_delivery_only(&self) -> bool {
        self.job.surfaces.is_empty() && self.job.next_install.is_some()
    }

    /// Name of the plan's sealant; what the job says where the catalog has none that is called so.
    pub fn sealant_name(&self) -> &str {
        self.sealant.as_ref().map_or(&self.job.plan.sealant, |sealant| &sealant.name)
    }

    /// The answer in three lines, as data.
    pub fn verdict(&self) -> Verdict {
        Verdict::of(self)
    }

    /// The option the papers speak of.
    pub fn chosen(&self) -> Option<&RepairOption> {
        self.options.iter().find(|option| option.method == self.job.plan.chosen)
    }

    /// The option to choose, by what it costs with callbacks included, if any chance is known.
    pub fn best(&self) -> Option<&RepairOption> {
        let best = self.choice.as_ref()?.best;
        self.options.iter().find(|option| option.method == best)
    }

    /// The section that speaks for the job: of those with an explicable gap the one that was measured
    /// most, and not one that got wet.
    pub fn speaking_section(&self) -> Option<&SectionState> {
        let wetted_section = self.causes.as_ref().and_then(|causes| causes.wetted_section);
        let explicable = self.sections.iter().enumerate().filter(|(at, state)| {
            let origin = state.origin.filter(|origin| !origin.beyond_drying);
            Some(*at) != wetted_section && state.gaps.measured > 0 && origin.is_some()
        });
        explicable.map(|(_, state)| state).max_by_key(|state| state.gaps.measured)
    }

    /// The section whose mean joint is shown as typical: of those with a measured gap the one with the most open
    /// to work on, which is what the callback was about and what the chance of another hangs on; else the one
    /// that speaks for the job, else the one measured most.
    pub fn typical_section(&self) -> Option<&SectionState> {
        let open = |at: usize| self.open_to_work_on(at);
        let all = self.sections.iter().enumerate().filter(|(_, state)| state.gaps.measured > 0);
        let worked_on = all.max_by(|(a, _), (b, _)| open(*a).total_cmp(&open(*b)));
        let worked_on = worked_on.filter(|(at, _)| open(*at) > 0.0).map(|(_, state)| state);
        let measured = || self.sections.iter().max_by_key(|state| state.gaps.measured);
        worked_on.or_else(|| self.speaking_section()).or_else(measured)
    }

    /// Length times gap today of the joints of a section that are worked on, m².
    fn open_to_work_on(&self, section: usize) -> f64 {
        let treated = self.joints.iter().filter(|joint| joint.treated && joint.section == Some(section));
        let open = |joint: &JointState| {
            let gap = joint.gap.map_or(Length::ZERO, |gap| gap.gap.mean);
            gap.to_m() * self.layouts[joint.surface].joints[joint.joint].length().to_m()
        };
        treated.map(open).sum()
    }

    /// The joints of a section that are wide enough to be sealed on the day of sealing, narrowest first.
    pub fn sealed_joints(&self, section: usize) -> Vec<&JointState> {
        let sealed = |joint: &&JointState| {
            joint.treated && joint.section == Some(section) && joint.at_sealing >= self.job.plan.narrowest
        };
        let mut joints: Vec<&JointState> = self.joints.iter().filter(sealed).collect();
        joints.sort_by(|a, b| a.at_sealing.to_m().total_cmp(&b.at_sealing.to_m()));
        joints
    }

    /// The humidity between which the room has to stay for the chance told to hold: where a plan holds it, that;
    /// else from the driest the room is forecast to the dampest, and what was read in it, to the next 5 %. `None`
    /// without a room.
    pub fn humidity_to_keep(&self) -> Option<Span<Humidity>> {
        if self.chosen().is_some_and(|option| matches!(option.outcome, Outcome::Bead { held: true, .. })) {
            return Some(Span { low: Humidity::pct(40.0), high: Humidity::pct(50.0) });
        }
        let forecast = self.year.as_ref()?.range.iter().copied();
        let read = sanitized(&self.job);
        let read = read.survey.rooms.iter().map(|room| Span { low: room.humidity, high: room.humidity });
        let all = forecast
            .chain(read)
            .reduce(|all, day| Span { low: all.low.min(day.low), high: all.high.max(day.high) })?;
        let fives = |humidity: Humidity, round: fn(f64) -> f64| {
            Humidity::pct(5.0 * round((humidity.to_pct() / 5.0 * 1e6).round() / 1e6))
        };
        Some(Span { low: fives(all.low, f64::floor), high: fives(all.high, f64::ceil) })
    }

    /// The gaps of a section's sealed joints between which the day of sealing is as forecast: from the low end of
    /// the forecast of the narrowest to the high end of that of the widest, nine times in ten.
    pub fn gaps_to_seal_at(&self, section: usize) -> Option<Span<Length>> {
        let joints = self.sealed_joints(section);
        let measured = |joint: &&&JointState| joint.gap.is_some_and(|gap| gap.measured);
        let (narrowest, widest) = (joints.first()?.at_sealing, joints.last()?.at_sealing);
        // What a joint that nobody measured may be says nothing of the day.
        let bands = joints.iter().filter(measured).filter_map(|joint| self.gap_band_on(joint, self.seal_day));
        let all = bands.fold(Span { low: narrowest, high: widest }, |all, band| Span {
            low: all.low.min(band.low),
            high: all.high.max(band.high),
        });
        Some(Span { low: all.low.max(self.job.plan.narrowest), high: all.high })
    }

    /// The section of this index on the surface of this index.
    pub fn section(&self, surface: usize, section: usize) -> Option<&SectionState> {
        self.sections.iter().find(|state| state.surface == surface && state.section == section)
    }

    /// The state of a surface's joint by its index in the layout.
    pub fn joint(&self, surface: usize, joint: usize) -> Option<&JointState> {
        let start = self.joints.partition_point(|state| state.surface < surface);
        self.joints.get(start + joint).filter(|state| state.surface == surface)
    }

    /// Gap of a joint on a day counted from the visit, if anything says.
    pub fn gap_on(&self, state: &JointState, day: usize) -> Option<Length> {
        let joint = self.layouts.get(state.surface)?.joints.get(state.joint)?;
        Some(sections::motion(joint, state, &self.sections)?.gap_on(day))
    }

    /// Where a joint's gap lies nine times in ten on a day counted from the visit, if anything says.
    ///
    /// What is not known of the gap today and what plausible worlds differ by add up as variances.
    pub fn gap_band_on(&self, state: &JointState, day: usize) -> Option<Span<Length>> {
        let joint = self.layouts.get(state.surface)?.joints.get(state.joint)?;
        let section = self.sections.get(state.section?)?;
        let expected = sections::motion(joint, state, &self.sections)?.signed_gap_on(day);
        let worlds = joint.moves_across * section.worlds.narrowing_sd(day);
        let reach = Length::m(1.645 * worlds.to_m().hypot(state.gap?.gap.sd.to_m()));
        Some(Span { low: (expected - reach).max(Length::ZERO), high: (expected + reach).max(Length::ZERO) })
    }

    /// Whether most of the joint length to be sealed is too narrow to seal even in the best week.
    pub fn most_too_narrow(&self) -> bool {
        self.season
            .as_ref()
            .is_some_and(|season| season.best_week().too_narrow.to_m() > 0.5 * season.total.to_m())
    }

    /// The gap readings that were likely meant otherwise than they were typed, and count as typed.
    pub fn doubted_gaps(&self) -> impl Iterator<Item = DoubtedGap> {
        // Of one that cannot be, an error tells.
        let counts = |gap: &DoubtedGap| gap.typed <= fields::WIDEST_GAP;
        let units = self.job.units;
        let all = self.job.survey.gaps.iter().enumerate();
        all.filter_map(move |(index, reading)| DoubtedGap::of(index, reading, units)).filter(counts)
    }

    /// The option of this method.
    pub fn option(&self, method: MethodId) -> Option<&RepairOption> {
        self.options.iter().find(|option| option.method == method)
    }

    /// Whether some row of sealed boards is expected to open wider than this at its weakest joint.
    pub fn opens_wider_than(&self, width: Length) -> bool {
        self.rows.iter().flatten().any(|row| row.widest > width)
    }

    /// Wet sealant for the joints of a section that are sealed again, waste included; `None` without a
    /// sealant in the plan.
    pub fn wet_sealant(&self, section: usize) -> Option<Volume> {
        let state = self.sections.get(section)?;
        let board = &self.job.surfaces.get(state.surface)?.sections.get(state.section)?.board;
        let treated =
            self.joints.iter().filter(|joint| self.gets_bead(joint) && joint.section == Some(section));
        let lay = self.catalog.lay(&self.job.plan);
        let joints: Vec<TreatedJoint> = treated
            .map(|joint| TreatedJoint {
                length: self.layouts[joint.surface].joints[joint.joint].length(),
                gap: lay.slot(joint.at_sealing),
                edges: JointEdges::of(board),
            })
            .collect();
        let second = self.sealant.as_ref()?.second_bead();
        Some(wet_sealant(&joints, &self.job.plan.bead, lay, second))
    }

    /// How many meter readings were taken on the boards of this very section.
    pub fn meter_readings(&self, state: &SectionState) -> usize {
        let surface = self.job.surfaces.get(state.surface);
        let section = surface.and_then(|surface| Some((surface, surface.sections.get(state.section)?)));
        section.map_or(0, |(surface, section)| {
            moisture_readings(&self.job.survey, &surface.name, &section.name).len()
        })
    }

    /// The joints to read first, surface and joint by their indices; empty once the readings do.
    pub fn reading_order(&self) -> Vec<(usize, usize)> {
        let job = sanitized(&self.job);
        let mut order = reading_order(&job.surfaces, &self.layouts, &job.survey, self.gaps.next);
        // What the verdict asks for comes first on the ladder, too.
        if let Some(EntryPlace::Gaps(surface, section)) = self.next_reading().map(MissingEntry::place) {
            let asked = |&(of, joint): &(usize, usize)| {
                let section =
                    self.sections.iter().position(|at| (at.surface, at.section) == (surface, section));
                of == surface
                    && section.is_some()
                    && self.joint(of, joint).is_some_and(|at| at.section == section)
            };
            if !order.iter().any(asked) {
                let open = self.joints.iter().filter(|at| at.gap.is_none_or(|gap| !gap.measured));
                let open: Vec<(usize, usize)> = open.map(|at| (at.surface, at.joint)).filter(asked).collect();
                order.extend(open.get(open.len() / 2));
            }
            order.sort_by_key(|joint| !asked(joint));
        }
        order
    }

    /// Days from the visit on which to look at the typical joint again, when boards are widest and when they are
    /// narrowest: after the sealing where one is planned, on every paper the same.
    pub fn look_again(&self) -> Option<(usize, usize)> {
        Some(self.typical_section()?.look_again(self.look_again_from()))
    }

    /// Days from the visit to the day from which to look again: after the work, and after the last visit.
    pub fn look_again_from(&self) -> usize {
        let planned = if self.lays_beads() && self.job.done.finished.is_none() { self.seal_day } else { 0 };
        let came = self.job.later.iter().map(|visit| visit.on).chain(self.job.done.finished).max();
        let since = came.map_or(0, |day| (day - self.job.visited).get_days());
        planned.max(usize::try_from(since).unwrap_or(0))
    }

    /// What to read or enter next, on every paper the same: what the verdict asks for, else what would settle the
    /// cause.
    pub fn next_reading(&self) -> Option<MissingEntry> {
        self.verdict().helps_most.or_else(|| self.settling_reading().map(MissingEntry::ForTheCause))
    }

    /// The joints that the chosen option works on, as its price counts them; without one, those that would be
    /// sealed. Of boards that are taken down, the joints between them.
    pub fn worked_on(&self) -> impl Iterator<Item = &JointState> {
        let chosen = self.chosen();
        let extent = chosen.map_or(Extent::Sealed, |option| Extent::of(option.outcome));
        self.joints.iter().filter(move |state| {
            let joint = &self.layouts[state.surface].joints[state.joint];
            let here = |only: &Vec<(usize, usize)>| only.contains(&(state.surface, joint.section));
            let only = chosen.and_then(|option| option.only.as_ref());
            only.is_none_or(here) && extent.takes(state, joint)
        })
    }

    /// The day on which the chosen option seals the first joints, as it is scheduled; without beads the day on which
    /// they would be sealed.
    pub fn seals_on(&self) -> Date {
        let planned = date_after(&self.job, self.seal_day);
        let scheduled = || {
            let option = self.chosen().filter(|_| self.lays_beads())?;
            let step = option.steps.iter().position(|step| matches!(step, Step::Do(id) if id == "bead"))?;
            let bar = option.schedule.bars.iter().find(|bar| bar.of_step == step && !bar.is_wait())?;
            option.starts.checked_add(i64::from(bar.days().low.saturating_sub(1)).days()).ok()
        };
        scheduled().unwrap_or(planned)
    }

    /// Whether the chosen option works in a section.
    pub fn works_in(&self, surface: usize, section: usize) -> bool {
        let only = self.chosen().and_then(|option| option.only.as_ref());
        only.is_none_or(|only| only.contains(&(surface, section)))
    }

    /// Whether a joint is wide enough on the day of sealing for the bead of the plan.
    pub fn gets_bead(&self, state: &JointState) -> bool {
        state.treated && self.catalog.lay(&self.job.plan).slot(state.at_sealing) >= self.job.plan.narrowest
    }

    /// The option to choose where nobody chose one, if that is another: until the work is told or begun.
    fn to_follow(&self) -> Option<MethodId> {
        let Job { plan, done, later, promise, .. } = &*self.job;
        let open = plan.as_recommended && promise.is_none() && later.is_empty() && *done == Done::default();
        let best = self.choice.as_ref().filter(|_| open && verdict::measured_enough(self))?.best;
        Some(best).filter(|best| *best != plan.chosen)
    }

    /// Length of joint that gets a bead.
    pub fn bead_run(&self) -> Length {
        let beaded = self.joints.iter().filter(|state| self.gets_bead(state));
        beaded.map(|joint| self.layouts[joint.surface].joints[joint.joint].length()).sum()
    }

    /// Joints that nobody measured and that are counted as open all the same.
    pub fn counted_open(&self) -> usize {
        let seals = self.lays_beads();
        let counted = self.worked_on().filter(|state| state.treated && (!seals || self.gets_bead(state)));
        counted.filter(|state| !state.gap.is_some_and(|gap| gap.measured)).count()
    }

    /// Length of joint at board ends, miters and edges of which nobody measured any like it: an option that works
    /// on joints leaves those as they are.
    pub fn not_counted_run(&self, option: &RepairOption) -> Length {
        if matches!(option.outcome, Outcome::Boards { .. } | Outcome::Unchanged) {
            return Length::ZERO;
        }
        let unknown = self.joints.iter().filter(|state| state.gap.is_none());
        let joints = unknown.map(|state| &self.layouts[state.surface].joints[state.joint]);
        joints.filter(|joint| joint.kind != JointKind::BoardEdge).map(|joint| joint.length()).sum()
    }

    /// Length of joint that is treated.
    pub fn treated_run(&self) -> Length {
        let treated = self.joints.iter().filter(|joint| joint.treated);
        treated.map(|joint| self.layouts[joint.surface].joints[joint.joint].length()).sum()
    }
}

/// Assesses a job with the data of a catalog. Deterministic, the same on every machine; never panics.
///
/// What was entered is checked as it stands; what is worked out follows from the sanitized job, with
/// the job's own prices and rates before those of the catalog.
///
/// # Example
///
/// ```
/// use gapwright::assess::{Advice, MissingEntry, assess};
/// use gapwright::job::{Catalog, Job, demo_job};
/// use gapwright::words::{Words, answer};
///
/// // An empty job has no answer yet, and says what is missing.
/// let empty = assess(Job::default(), Catalog::built_in());
/// assert!(matches!(empty.answer.advice, Advice::NothingYet(_)));
/// assert_eq!(empty.answer.missing, [MissingEntry::Surface]);
///
/// // The demo's joints can be sealed again, with a price and the chance of another callback.
/// let found = assess(demo_job(), Catalog::built_in());
/// assert!(matches!(found.answer.advice, Advice::Reseal { .. }));
/// let quote = found.answer.quote.expect("a repair is chosen");
/// assert!(quote.spread.low < quote.total && quote.total < quote.spread.high);
/// assert!((0.0..=1.0).contains(&found.answer.callback.expect("beads can fail").chance));
///
/// // Sentences come last, from the words.
/// let words = Words::of_job(&found.job);
/// assert!(answer::headline(&found, &words).starts_with("Reseal "));
/// ```
pub fn assess(entered: impl Into<Arc<Job>>, catalog: &Arc<Catalog>) -> Assessment {
    let entered: Arc<Job> = entered.into();
    let found = assess_as_chosen(&entered, catalog);
    // No option's figures depend on which is chosen: what is recommended stays so once it is chosen.
    match found.to_follow() {
        Some(method) => {
            let mut followed = Job::clone(&entered);
            followed.plan.chosen = method;
            assess_as_chosen(&Arc::new(followed), catalog)
        }
        None => found,
    }
}

/// The same with the option that the job names.
fn assess_as_chosen(entered: &Arc<Job>, catalog: &Arc<Catalog>) -> Assessment {
    let merged = match catalog.with(entered.price_book.as_ref()) {
        Cow::Borrowed(_) => Arc::clone(catalog),
        Cow::Owned(own) => Arc::new(own),
    };
    let built_in = catalog;
    let catalog: &Catalog = &merged;
    let job = &sanitized(entered);
    let layouts: Vec<SurfaceLayout> = job.surfaces.iter().map(layout).collect();
    let mut problems = check(&Checked { entered, sanitized: job, catalog, layouts: &layouts });
    let gaps = joint_gaps(&job.surfaces, &layouts, &job.survey, job.survey.precision.to_fraction());
    let beliefs = beliefs::beliefs(job, built_in, &layouts);
    let beliefs = beliefs.as_deref();
    let year = beliefs::room_year(job, catalog, beliefs);
    let sections = sections::section_states(job, catalog, year.as_ref(), beliefs, &gaps);
    let gaps = sections::believed_gaps(gaps, &layouts, &sections);
    let mut joints = sections::joint_states(job, &layouts, &sections, &gaps.joints);
    let (season, seal_day) = sealing::plan_season(job, catalog, &layouts, &sections, &joints);
    sections::hold_against_class(job, catalog, &sections, &mut joints, &layouts, seal_day);
    problems.extend(sections::physical_problems(job, &sections, &joints, &layouts));
    problems.extend(conflicts::conflicts(job, beliefs));
    problems.sort_by_key(|problem| std::cmp::Reverse(problem.severity));

    let rows = sections
        .iter()
        .enumerate()
        .map(|(at, state)| {
            let own: Vec<&JointState> = joints.iter().filter(|joint| joint.section == Some(at)).collect();
            rows::row_after(job, catalog, &layouts[state.surface], state, &own, seal_day)
        })
        .collect();
    let causes = beliefs.and_then(|known| causes::diagnosis(job, catalog, known, &sections));
    let held = year.as_ref().map_or(1.0, IndoorYear::humidity_control_share);
    let inputs = OptionInputs {
        job,
        catalog,
        layouts: &layouts,
        sections: &sections,
        joints: &joints,
        seal_day,
        held,
    };
    let mut options = options::options(&inputs);
    let yearly = risk::chances(&inputs, &mut options);
    let choice = choice::choose(&inputs, &options, &yearly);
    let first = first_visit(job, catalog, &layouts, &gaps);
    let before = OptionInputs { sections: first.as_deref().unwrap_or(&sections), ..inputs };
    let follow_up = follow_up::follow_up(&before, &options);
    let chosen = options.iter().find(|option| option.method == job.plan.chosen);
    let beads = cut::planned_beads(job, catalog, &sections);
    let unsolved = laid::unsolved(job, catalog, &sections, seal_day);
    let bead_designs = bead_designs::bead_designs(&inputs);
    let better_sealant = sealing::better_sealant(job, catalog, &layouts, &sections, &joints, chosen);
    let mut assessment = Assessment {
        job: Arc::clone(entered),
        catalog: Arc::clone(&merged),
        answer: Answer::default(),
        problems,
        layouts,
        year,
        gaps,
        sections,
        rows,
        belief: beliefs.map(|known| Arc::clone(&known.belief)),
        causes,
        joints,
        season,
        sealant: catalog.sealant(&job.plan.sealant).cloned(),
        better_sealant,
        bead_designs,
        unsolved,
        beads,
        seal_day,
        options,
        choice,
        next_install: next_install::next_install(job, built_in),
        follow_up,
        cautions: Vec::new(),
    };
    assessment.cautions = cautions(job, catalog, &assessment.sections);
    let stills: Vec<Vec<Still>> =
        assessment.options.iter().map(|option| assessment.stills(job, option)).collect();
    for (option, stills) in assessment.options.iter_mut().zip(stills) {
        option.stills = stills;
    }
    assessment.answer = verdict::answer(job, &assessment);
    assessment
}

/// [`assess`] with all beads solved that no table holds, which takes about a second for each.
pub fn assess_solved(entered: impl Into<Arc<Job>>, catalog: &Arc<Catalog>) -> Assessment {
    let first = assess(entered, catalog);
    if first.unsolved.is_empty() {
        return first;
    }
    for (bead, widest) in &first.unsolved {
        bead.solve(*widest);
    }
    assess(first.job, catalog)
}

/// The sections by what was known on the first visit, where there were later ones: what was forecast
/// then must not know what came after. What the papers told needs none of it.
fn first_visit(
    job: &Job,
    catalog: &Catalog,
    layouts: &[SurfaceLayout],
    gaps: &GapSurvey,
) -> Option<Vec<SectionState>> {
    if job.later.is_empty() || job.promise.is_some() {
        return None;
    }
    let beliefs = beliefs::weighed(job, catalog, layouts, Readings::FirstVisit)?;
    let year = beliefs::room_year(job, catalog, Some(&beliefs));
    Some(sections::section_states(job, catalog, year.as_ref(), Some(&beliefs), gaps))
}

/// What a finished job teaches: minutes for a batch by task, and pieces used by material.
pub fn taken(job: &Job, catalog: &Arc<Catalog>) -> Taken {
    if job.done.hours.is_empty() && job.done.pieces.is_empty() {
        return Taken::default();
    }
    let assessment = assess(job.clone(), catalog);
    let of = |option: &RepairOption| Taken {
        minutes: rates_of(&option.tasks, &job.done),
        used: use_of(&option.materials, &job.done),
    };
    assessment.chosen().map(of).unwrap_or_default()
}

fn cautions(job: &Job, catalog: &Catalog, sections: &[SectionState]) -> Vec<Caution> {
    let built_before = |year: i16| job.built.is_none_or(|built| built < year);
    let overhead = job.surfaces.iter().any(|surface| surface.kind != SurfaceKind::Wall);
    let applies = |caution: &&Caution| match caution.when {
        CautionWhen::Always => true,
        CautionWhen::BuiltBefore(year) => built_before(year),
        CautionWhen::CaulkedBefore(year) => {
            let later = job.installed.is_some_and(|installed| installed.date().year() >= year);
            built_before(year) && !later
        }
        CautionWhen::Overhead => overhead,
        CautionWhen::Ladders => overhead || job.plan.site.height != Height::Steps,
        CautionWhen::Sealing => catalog
            .method(job.plan.chosen)
            .is_some_and(|method| matches!(method.outcome, Outcome::Bead { .. })),
        CautionWhen::Wet => sections.iter().any(SectionState::is_wetted),
    };
    catalog.cautions.iter().filter(applies).cloned().collect()
}
