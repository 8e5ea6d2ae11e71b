//! The repair options, worked out side by side.

use jiff::ToSpan as _;
use jiff::civil::Date;

use super::laid::LaidBeads;
use super::materials::{cutting, quantities, trial_run};
use super::option_inputs::OptionInputs;
use super::sections::{JointState, SectionState};
use super::typical_joint::Still;
use crate::job::Job;
use crate::joint::{BeadLay, REVEAL, Sealant};
use crate::measure::{Area, Hours, Length, Money, Percent, Span, Units};
use crate::repair::{
    Circumstance, Condition, CostInputs, CostSpread, Crew, CuttingList, DayCost, Height, LeadPaint,
    MaterialLine, MaterialPer, MethodId, OldSealant, OnSite, Outcome, Plan, Price, PriceInputs, PriceLine,
    Quantities, RepairMethod, Risk, Schedule, ScheduleInputs, Step, TakeoffInputs, TaskHours, TaskInputs,
    TaskPer, Trade, WaitTimes, applying, cost_spreads, day_tasks, done_already, price, schedule, takeoff,
    task_hours,
};
use crate::surface::{Profile, SurfaceKind};
use crate::wood::shrinkage;

/// The finest joint that takes a wood spline. Common practice, no source.
const SPLINE: Length = Length::inches(1.0 / 16.0);

/// A joint finer than this slows the work down.
const FINE: Length = Length::inches(1.0 / 16.0);

/// Why an option is out of the question here.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NotPossible {
    /// No joint is known to be open.
    NoOpenJoints,
    /// Joints open past the tongue: there would be a hole behind an open line.
    PastTongue {
        /// The widest they open.
        widest: Length,
    },
    /// The widest joint is too fine for a spline.
    TooFineForSpline {
        /// The widest joint.
        widest: Length,
    },
    /// Every joint is as wide as a reveal by itself.
    WideEnough,
    /// Boards are wet: glued now, they tear apart as they dry.
    GluedWet,
    /// Boards are wet: laid tight now, they open again as they dry.
    RelaidWet,
    /// No stock length is long enough for the longest board.
    StockTooShort,
}

/// A repair option, worked out.
#[derive(Debug, Clone, PartialEq)]
pub struct RepairOption {
    /// Which option.
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
    pub not_possible: Option<NotPossible>,
    /// Its steps as they are done here.
    pub steps: Vec<Step>,
    /// Tasks with hours.
    pub tasks: Vec<TaskHours>,
    /// The buying list.
    pub materials: Vec<MaterialLine>,
    /// The same with the sizes that are offered and not bought, at no pieces.
    pub offered: Vec<MaterialLine>,
    /// Days.
    pub schedule: Schedule,
    /// The first day of work.
    pub starts: Date,
    /// Price.
    pub price: Price,
    /// What labor and materials may turn out to cost.
    pub cost: CostSpread,
    /// Whether it buys boards by the length.
    pub buys_boards: bool,
    /// How new boards are cut, if there are any and the stock is long enough.
    pub cutting: Option<CuttingList>,
    /// Hours of all people together.
    pub hours: Hours,
    /// Widest a joint becomes after it, at the driest of the year.
    pub opens_to: Length,
    /// Share of the treated joint length whose bead stays inside its class, 0 to 1; `None` where
    /// the method leaves no bead.
    pub holds: Option<f64>,
    /// The chance that it brings the crew back within the warranty.
    pub callback: Option<Risk>,
    /// For one that lays beads, the chance of a callback without paint that cracks over sound beads, if tears
    /// that begin behind beads stay out of sight, and if all of them come through: the bounds of what nobody
    /// has measured.
    pub tears: Option<Span<f64>>,
    /// The typical joint in January and August once it is done.
    pub stills: Vec<Still>,
    /// The price with callbacks over the warranty included, at present value.
    pub expected: Option<Money>,
}

impl RepairOption {
    /// The price without what it holds for callbacks.
    pub fn price_of_work(&self) -> Money {
        self.price.total - self.price.of(PriceLine::Callbacks)
    }

    /// What callbacks within the warranty are expected to cost, at present value.
    pub fn expected_callbacks(&self) -> Option<Money> {
        self.expected.map(|expected| expected - self.price_of_work())
    }

    /// Puts what callbacks are expected to cost into the price.
    pub(super) fn hold_for_callbacks(&mut self, plan: &Plan) {
        let Some(callbacks) = self.expected_callbacks() else { return };
        self.price = price(&PriceInputs {
            tasks: &self.tasks,
            materials: &self.materials,
            crew_days: self.schedule.crew_days,
            cost: &self.cost,
            callbacks,
            plan,
        });
    }
}

/// Where the random sequences of the cost's trials start; any figure would do.
const COST_SEED: u64 = 19_720_613;

/// Every method of the catalog, worked out.
pub(super) fn options(inputs: &OptionInputs<'_>) -> Vec<RepairOption> {
    let measure = quantities(inputs);
    if measure.boarded <= Area::ZERO {
        return vec![];
    }
    let here = circumstances(inputs.job, &measure);
    let conditions = applying(&inputs.catalog.conditions, &here);
    let works: Vec<Work> = inputs
        .catalog
        .methods
        .iter()
        .filter_map(|method| work(method, &measure, &conditions, inputs))
        .collect();
    let costs: Vec<CostInputs<'_>> =
        works.iter().map(|work| CostInputs { tasks: &work.tasks, materials: &work.materials }).collect();
    let plan = &inputs.job.plan;
    let spreads = cost_spreads(&costs, &plan.prices, inputs.catalog.trials, COST_SEED);
    works.into_iter().zip(spreads).map(|(work, cost)| option(work, cost, &measure, inputs)).collect()
}

/// What circumstances the rates meet here.
fn circumstances(job: &Job, measure: &Quantities) -> Vec<Circumstance> {
    let site = &job.plan.site;
    let boards = || job.surfaces.iter().flat_map(|surface| &surface.sections);
    let mut gaps: Vec<Length> = measure.treated.iter().map(|joint| joint.gap).collect();
    gaps.sort_by(|a, b| a.to_m().total_cmp(&b.to_m()));
    let middle = gaps.get(gaps.len() / 2);
    let asked = [
        (Circumstance::Wall, job.surfaces.iter().all(|surface| surface.kind == SurfaceKind::Wall)),
        (Circumstance::Ladder, site.height == Height::Ladder),
        (Circumstance::Scaffold, site.height == Height::Scaffold),
        (Circumstance::Tight, site.tight),
        (Circumstance::HardSealant, site.old_sealant == OldSealant::Hard),
        (Circumstance::SoftSealant, site.old_sealant == OldSealant::Soft),
        (Circumstance::Furnished, site.furnished),
        (Circumstance::FineJoints, middle.is_some_and(|gap| *gap < FINE)),
        (Circumstance::NoV, !boards().any(|section| matches!(section.board.profile, Profile::VGroove(_)))),
    ];
    asked.into_iter().filter(|(_, here)| *here).map(|(circumstance, _)| circumstance).collect()
}

/// A method with its work laid out, before it has a price.
struct Work {
    method: RepairMethod,
    tasks: Vec<TaskHours>,
    materials: Vec<MaterialLine>,
    schedule: Schedule,
    starts: Date,
    buys_boards: bool,
    cutting: Option<CuttingList>,
}

/// A sealant with at least this share of solids does not sink as it cures. Assumption.
const DOES_NOT_SINK: Percent = Percent::pct(95.0);

fn work(
    method: &RepairMethod,
    measure: &Quantities,
    conditions: &[&Condition],
    inputs: &OptionInputs<'_>,
) -> Option<Work> {
    let (plan, catalog) = (&inputs.job.plan, inputs.catalog);
    let sealant = catalog.sealant(&plan.sealant)?;
    let (primer, paint) = (catalog.paint(&plan.primer)?, catalog.paint(&plan.paint)?);
    let method = as_done_here(method, measure, sealant, inputs.job);
    let cut = match method.outcome {
        Outcome::Bead { lay, .. } => measure.cut_for(lay),
        _ => measure.clone(),
    };
    let measure = &cut;
    let of_tasks = TaskInputs {
        method: &method,
        tasks: &catalog.tasks,
        conditions,
        plan,
        quantities: measure,
        trial_run: trial_run(inputs),
    };
    let tasks = task_hours(&of_tasks);
    let boards =
        catalog.materials.iter().find(|m| m.per == MaterialPer::BoardRun && method.materials.contains(&m.id));
    let cut = boards.and_then(|boards| cutting(measure, boards, plan).ok());
    let waits = WaitTimes {
        primer: primer.recoat,
        sealant: sealant.cure,
        recoat: paint.recoat,
        acclimation: Hours::h(24.0 * f64::from(plan.acclimation_days)),
        season: Hours::h(24.0 * days(inputs.seal_day)),
    };
    let first = first_day(&method, inputs);
    let schedule = schedule(&ScheduleInputs {
        method: &method,
        tasks: &tasks,
        crew: &crew(first, plan),
        costs: &day_cost(&of_tasks),
        waits: &waits,
        sections: measure.sections,
    });
    let on_site = OnSite {
        days: schedule.crew_days,
        person_days: schedule.person_days,
        evenings: schedule.evenings,
        standby: schedule.standby,
    };
    let materials = takeoff(&TakeoffInputs {
        method: &method,
        plan,
        quantities: measure,
        sealant,
        primer,
        paint,
        materials: &catalog.materials,
        weeks: schedule.weeks,
        cutting: cut.as_ref(),
    });
    let mut all = day_tasks(&of_tasks, &on_site);
    for (_, task) in tasks {
        let done = if plan.charge_timed { done_already(&task, &of_tasks) } else { None };
        all.push(task);
        all.extend(done);
    }
    let starts = first.checked_add(i64::from(schedule.put_off).days()).unwrap_or(first);
    let buys_boards = boards.is_some();
    Some(Work { starts, tasks: all, materials, schedule, buys_boards, cutting: cut, method })
}

/// A method as it is done on this job: in two visits, without a second bead where nothing sinks, lead-safe
/// where that is due.
fn as_done_here(method: &RepairMethod, measure: &Quantities, sealant: &Sealant, job: &Job) -> RepairMethod {
    let split = if job.plan.two_visits { method.in_two_visits() } else { None };
    let mut method = split.unwrap_or_else(|| method.clone());
    if sealant.solids >= DOES_NOT_SINK {
        method = method.without_second_bead();
    }
    if lead_safe_due(&method, measure, job) {
        method = method.lead_safe();
    }
    if job.plan.site.height == Height::Scaffold {
        method = method.from_scaffold();
    }
    if job.plan.site.furnished { method.among_furniture() } else { method }
}

/// The first year in which a house counts as free of lead paint (40 CFR 745.83).
const NO_LEAD_FROM: i16 = 1978;
/// Painted surface that may be disturbed in a room before the work must be lead-safe (40 CFR 745.83:
/// six square feet inside).
const MINOR: Area = Area::m2(6.0 * 0.092_903_04);
/// Width of the paint that scraping out a joint disturbs.
const SCRAPED_BAND: Length = Length::inches(0.5);

/// Whether the work must be lead-safe: the house may have lead paint, and more of it is disturbed than
/// counts as minor.
fn lead_safe_due(method: &RepairMethod, measure: &Quantities, job: &Job) -> bool {
    let may_have = job.plan.site.lead == LeadPaint::ByAge && job.built.is_none_or(|year| year < NO_LEAD_FROM);
    if !may_have || !method.disturbs_paint() {
        return false;
    }
    let scraped = Area::m2(measure.joint_run().to_m() * SCRAPED_BAND.to_m());
    let disturbed = if method.paints() { measure.painted } else { scraped };
    disturbed > MINOR
}

/// What a day on site takes, whatever is done on it: by the rates of the tasks that go with the days.
fn day_cost(of_tasks: &TaskInputs<'_>) -> DayCost {
    let one_day = OnSite { days: 1, person_days: 1, evenings: 1, standby: Hours::ZERO };
    let tasks = day_tasks(of_tasks, &one_day);
    let hours = |wanted: fn(&TaskHours) -> bool| -> Hours {
        tasks.iter().filter(|task| wanted(task)).map(|task| task.hours.mean).sum()
    };
    DayCost {
        drive: hours(|task| task.batch.0 == TaskPer::PersonDay && task.id == "drive"),
        set_up: hours(|task| task.batch.0 == TaskPer::PersonDay && task.id != "drive"),
        once: hours(|task| task.batch.0 == TaskPer::Day),
        evening: hours(|task| task.batch.0 == TaskPer::Evening),
        hour: of_tasks.plan.prices.hour(Trade::Painter),
        equipment: of_tasks.plan.prices.equipment,
    }
}

#[expect(clippy::cast_precision_loss, reason = "days of three years")]
const fn days(count: usize) -> f64 {
    count as f64
}

/// The day on which the work may begin: what is sealed begins on the day of sealing, all else after the
/// visit.
fn first_day(method: &RepairMethod, inputs: &OptionInputs<'_>) -> Date {
    let seals = matches!(method.outcome, Outcome::Bead { .. }) && !method.waits_for_season();
    super::date_after(inputs.job, if seals { inputs.seal_day } else { 0 })
}

/// The crew as the schedule needs it, for work that may begin on `first`.
fn crew(first: Date, plan: &Plan) -> Crew {
    Crew {
        people: plan.crew,
        day: plan.day,
        late: plan.stays_late,
        starts: plan.starts,
        lunch: Hours::minutes(plan.lunch.to_minutes()),
        coats: plan.coats,
        weekends: plan.weekends,
        first: first.weekday().to_monday_zero_offset().unsigned_abs().into(),
        handed_back: plan.site.handed_back,
    }
}

fn option(work: Work, cost: CostSpread, measure: &Quantities, inputs: &OptionInputs<'_>) -> RepairOption {
    let Work { method, tasks, materials, schedule, starts, buys_boards, cutting } = work;
    let price = price(&PriceInputs {
        tasks: &tasks,
        materials: &materials,
        crew_days: schedule.crew_days,
        cost: &cost,
        callbacks: Money::ZERO,
        plan: &inputs.job.plan,
    });
    RepairOption {
        method: method.id,
        not_possible: not_possible(&method, measure, buys_boards && cutting.is_none(), inputs),
        buys_boards,
        opens_to: match method.outcome {
            Outcome::Bead { .. } | Outcome::Line | Outcome::Unchanged => widest_left(inputs),
            Outcome::Covered | Outcome::Glued => Length::ZERO,
            Outcome::Boards { moves } => widest_of_dried_boards(inputs) * moves,
        },
        name: method.name,
        steps: method.steps,
        outcome: method.outcome,
        look: with_reveal(&method.look, inputs.job.units),
        upset: method.upset,
        says: with_reveal(&method.says, inputs.job.units),
        hours: tasks.iter().map(|task| task.hours.mean).sum(),
        schedule,
        starts,
        price,
        cost,
        cutting,
        tasks,
        materials: materials.iter().filter(|line| line.pieces + line.on_hand > 0).cloned().collect(),
        offered: materials,
        holds: share_that_holds(method.outcome, inputs),
        callback: None,
        tears: None,
        stills: vec![],
        expected: None,
    }
}

/// Why a method is out of the question here, if it is.
fn not_possible(
    method: &RepairMethod,
    measure: &Quantities,
    boards_too_short: bool,
    inputs: &OptionInputs<'_>,
) -> Option<NotPossible> {
    let mends_joints = !matches!(method.outcome, Outcome::Boards { .. } | Outcome::Unchanged);
    if mends_joints && measure.treated.is_empty() {
        return Some(NotPossible::NoOpenJoints);
    }
    let board = |state: &SectionState| &inputs.job.surfaces[state.surface].sections[state.section].board;
    let widest = widest_left(inputs);
    let tongue = inputs.sections.iter().filter_map(|state| board(state).tongue()).reduce(Length::min);
    let wet = inputs.sections.iter().any(SectionState::is_wetted);
    let finest = measure.treated.iter().map(|joint| joint.gap).fold(REVEAL, Length::min);
    match method.outcome {
        Outcome::Bead { lay: BeadLay::Reveal, .. } if finest >= REVEAL => Some(NotPossible::WideEnough),
        Outcome::Line if tongue.is_some_and(|tongue| widest >= tongue) => {
            Some(NotPossible::PastTongue { widest })
        }
        Outcome::Glued if widest < SPLINE => Some(NotPossible::TooFineForSpline { widest }),
        Outcome::Glued if wet => Some(NotPossible::GluedWet),
        Outcome::Boards { .. } if boards_too_short => Some(NotPossible::StockTooShort),
        Outcome::Boards { .. } if method.id == MethodId::Relay && wet => Some(NotPossible::RelaidWet),
        _ => None,
    }
}

/// A text of the catalog with the width of a reveal, where it names it.
fn with_reveal(text: &str, units: Units) -> String {
    text.replace("{reveal}", &REVEAL.show(units))
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
        let species = inputs.catalog.species(&board.species)?;
        let (driest, _) = state.settled.extremes();
        Some(state.across * shrinkage(species, board.ring_angle, state.settled.mean(), driest))
    };
    inputs.sections.iter().filter_map(one).fold(Length::ZERO, Length::max)
}

/// Share of the treated length that an option's bead holds on if laid on the plan's day; `None` for an option
/// without a bead.
fn share_that_holds(outcome: Outcome, inputs: &OptionInputs<'_>) -> Option<f64> {
    let Outcome::Bead { held, lay } = outcome else { return None };
    let beads = LaidBeads::planned(inputs.job, inputs.catalog, inputs.sections, lay)?;
    let moves = if held { inputs.held } else { 1.0 };
    let takes = |joint: &JointState| {
        let bead = joint.section.and_then(|section| beads.of(section));
        let fits = joint.can_hold && lay.slot(joint.at_sealing) >= inputs.job.plan.narrowest;
        let demand = joint.demand.filter(|_| fits);
        bead.zip(demand).is_some_and(|(bead, demand)| bead.takes(&demand.times(moves)))
    };
    let length = |joint: &JointState| inputs.layouts[joint.surface].joints[joint.joint].length().to_m();
    let treated = || inputs.joints.iter().filter(|joint| joint.treated);
    let all: f64 = treated().map(length).sum();
    let holds: f64 = treated().filter(|joint| takes(joint)).map(length).sum();
    Some(if all > 0.0 { holds / all } else { 0.0 })
}
