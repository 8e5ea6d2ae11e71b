//! The repair options, worked out side by side.

use jiff::ToSpan as _;
use jiff::civil::Date;

use super::as_done::{as_done_here, as_painted, circumstances, paints_joints_only};
use super::laid::LaidBeads;
use super::materials::{Extent, cutting, opened_sections, quantities, trial_run};
use super::option_inputs::OptionInputs;
use super::risk::WarrantyYear;
use super::sections::{JointState, SectionState};
use super::start::{Start, StartsAfter, start};
use super::typical_joint::Still;
use crate::joint::{BeadLay, REVEAL};
use crate::measure::{Area, Hours, Length, Money, Span};
use crate::repair::{
    Circumstance, Condition, CostInputs, CostSpread, Crew, CuttingList, DayCost, MaterialLine, MaterialPer,
    MethodId, OnSite, Outcome, Plan, Price, PriceInputs, PriceLine, Quantities, RepairMethod, Risk, Schedule,
    ScheduleInputs, Step, TakeoffInputs, TaskHours, TaskInputs, TaskPer, Trade, WaitTimes, applying,
    cost_spreads, day_tasks, done_already, price, schedule, takeoff, task_hours,
};
use crate::wood::shrinkage;

/// The finest joint that takes a wood spline. Common practice, no source.
const SPLINE: Length = Length::inches(1.0 / 16.0);

/// Strips closer together than this are no battens but a louver: each is 1-1/4 in wide itself. Common practice,
/// no source.
const STRIP_SPACING: Length = Length::inches(4.0);

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
    StockTooShort {
        /// The longest board.
        board: Length,
    },
    /// The joints are too close together for strips.
    StripsTooClose {
        /// How far apart they are.
        apart: Length,
    },
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
    /// What it has to wait for until then.
    pub starts_after: StartsAfter,
    /// The sections whose boards it handles, each by its surface and its number there, where those are not all.
    pub only: Option<Vec<(usize, usize)>>,
    /// Whether paint is sprayed; without, it is brushed and rolled, if there is any.
    pub sprays: bool,
    /// Whether paint goes over the sealed joints alone.
    pub paints_joints_only: bool,
    /// Price; what cannot be done has none.
    pub price: Option<Price>,
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
    /// What a year of warranty brings.
    pub warranty_year: Option<WarrantyYear>,
    /// The price with callbacks over the warranty included, at present value.
    pub expected: Option<Money>,
}

impl RepairOption {
    /// The price; nothing where it cannot be done.
    pub fn total(&self) -> Money {
        self.price.as_ref().map_or(Money::ZERO, |price| price.total)
    }

    /// The price without what it holds for callbacks; nothing where it cannot be done.
    pub fn price_of_work(&self) -> Money {
        self.price.as_ref().map_or(Money::ZERO, |price| price.total - price.of(PriceLine::Callbacks))
    }

    /// What callbacks within the warranty are expected to cost, at present value.
    pub fn expected_callbacks(&self) -> Option<Money> {
        self.expected.map(|expected| expected - self.price_of_work())
    }

    /// Puts what callbacks are expected to cost into the price.
    pub(super) fn hold_for_callbacks(&mut self, plan: &Plan) {
        let Some(callbacks) = self.expected_callbacks() else { return };
        self.price = Some(price(&PriceInputs {
            tasks: &self.tasks,
            materials: &self.materials,
            crew_days: self.schedule.crew_days,
            cost: &self.cost,
            callbacks,
            plan,
        }));
    }
}

/// A day more on site must save more work than this. Common practice, no source.
const ANOTHER_DAY: Hours = Hours::h(1.0);

/// Where the random sequences of the cost's trials start; any figure would do.
const COST_SEED: u64 = 19_720_613;

/// Every method of the catalog, worked out.
pub(super) fn options(inputs: &OptionInputs<'_>) -> Vec<RepairOption> {
    let sealed = quantities(inputs, Extent::Sealed);
    if sealed.boarded <= Area::ZERO {
        return vec![];
    }
    let [every_joint, boards] = [Extent::EveryJoint, Extent::Boards].map(|extent| quantities(inputs, extent));
    let measure = |method: &RepairMethod| match Extent::of(method.outcome) {
        Extent::Sealed => &sealed,
        Extent::EveryJoint => &every_joint,
        Extent::Boards => &boards,
    };
    let here = circumstances(inputs.job, &sealed);
    let conditions = applying(&inputs.catalog.conditions, &here);
    let works: Vec<Work> = inputs
        .catalog
        .methods
        .iter()
        .filter_map(|method| work(method, measure(method), &conditions, inputs))
        .collect();
    let costs: Vec<CostInputs<'_>> =
        works.iter().map(|work| CostInputs { tasks: &work.tasks, materials: &work.materials }).collect();
    let plan = &inputs.job.plan;
    let spreads = cost_spreads(&costs, &plan.prices, inputs.catalog.trials, COST_SEED);
    works
        .into_iter()
        .zip(spreads)
        .map(|(work, cost)| {
            let measure = measure(&work.method);
            option(work, cost, measure, inputs)
        })
        .collect()
}

/// A method with its work laid out, before it has a price.
struct Work {
    method: RepairMethod,
    joints_only: bool,
    tasks: Vec<TaskHours>,
    materials: Vec<MaterialLine>,
    schedule: Schedule,
    starts: Date,
    starts_after: StartsAfter,
    buys_boards: bool,
    cutting: Option<CuttingList>,
}

fn work(
    method: &RepairMethod,
    measure: &Quantities,
    conditions: &[&Condition],
    inputs: &OptionInputs<'_>,
) -> Option<Work> {
    let (plan, catalog) = (&inputs.job.plan, inputs.catalog);
    let sealant = catalog.sealant(&plan.sealant)?;
    let (primer, paint) = (catalog.paint(&plan.primer)?, catalog.paint(&plan.paint)?);
    let joints_only = paints_joints_only(method, inputs);
    let measure = match method.outcome {
        Outcome::Bead { lay, .. } if joints_only => measure.cut_for(lay).painted_at_joints(),
        Outcome::Bead { lay, .. } => measure.cut_for(lay),
        _ => measure.clone(),
    };
    let measure = &measure;
    let method = as_done_here(method, measure, sealant, inputs.job);
    // Where less paint is disturbed than counts, nothing slows the work down.
    let slows =
        |condition: &&&Condition| condition.when != Circumstance::LeadSafe || method.does("lead_contain");
    let conditions: Vec<&Condition> = conditions.iter().filter(slows).copied().collect();
    let of_tasks = TaskInputs {
        method: &method,
        tasks: &catalog.tasks,
        conditions: &conditions,
        plan,
        quantities: measure,
        trial_run: trial_run(inputs),
    };
    let method = as_painted(&of_tasks, joints_only);
    let of_tasks = TaskInputs { method: &method, ..of_tasks };
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
    let Start { first, after: starts_after } = start(&method, inputs);
    let schedule = schedule(&ScheduleInputs {
        method: &method,
        tasks: &tasks,
        crew: &crew(first, plan),
        costs: &day_cost(&of_tasks),
        waits: &waits,
        sections: measure.sections,
        joints: measure.treated.len(),
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
    Some(Work {
        joints_only,
        starts,
        starts_after,
        tasks: all,
        materials,
        schedule,
        buys_boards,
        cutting: cut,
        method,
    })
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
        another: ANOTHER_DAY,
    }
}

#[expect(clippy::cast_precision_loss, reason = "days of three years")]
const fn days(count: usize) -> f64 {
    count as f64
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
    let Work { method, joints_only, tasks, materials, schedule, starts, starts_after, buys_boards, cutting } =
        work;
    let not_possible = not_possible(&method, measure, buys_boards && cutting.is_none(), inputs);
    let price = not_possible.is_none().then(|| {
        price(&PriceInputs {
            tasks: &tasks,
            materials: &materials,
            crew_days: schedule.crew_days,
            cost: &cost,
            callbacks: Money::ZERO,
            plan: &inputs.job.plan,
        })
    });
    RepairOption {
        method: method.id,
        not_possible,
        only: (Extent::of(method.outcome) == Extent::Boards).then(|| opened_sections(inputs)).flatten(),
        sprays: method.sprays(),
        paints_joints_only: joints_only && method.paints(),
        starts_after,
        buys_boards,
        opens_to: match method.outcome {
            Outcome::Bead { .. } | Outcome::Line | Outcome::Unchanged => widest_left(inputs),
            Outcome::Covered | Outcome::Glued => Length::ZERO,
            Outcome::Boards { moves } => widest_of_dried_boards(inputs) * moves,
        },
        name: method.name,
        steps: method.steps,
        outcome: method.outcome,
        look: method.look,
        upset: method.upset,
        says: method.says,
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
        warranty_year: None,
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
    if mends_joints && !inputs.joints.iter().any(|state| state.treated) {
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
        Outcome::Covered if strips_too_close(inputs).is_some() => strips_too_close(inputs),
        Outcome::Boards { .. } if boards_too_short => {
            let longest = measure.pieces.first().map_or(0.0, |(length, _)| *length);
            Some(NotPossible::StockTooShort { board: Length::m(longest) })
        }
        Outcome::Boards { .. } if method.id == MethodId::Relay && wet => Some(NotPossible::RelaidWet),
        _ => None,
    }
}

/// That the boards are too narrow for a strip at every joint, if they are.
fn strips_too_close(inputs: &OptionInputs<'_>) -> Option<NotPossible> {
    let narrow =
        |state: &SectionState| inputs.job.surfaces[state.surface].sections[state.section].board.face_width;
    let apart = inputs.sections.iter().map(narrow).reduce(Length::min)?;
    (apart < STRIP_SPACING).then_some(NotPossible::StripsTooClose { apart })
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
