//! The repair options: what there is to do, what it takes, how long and how much.
//!
//! [`Plan`] is what the user decides. [`Quantities`] is the measure of the job; together they turn one
//! [`RepairMethod`] into tasks with hours, materials in whole pieces, a schedule with its waits, and a
//! price with who pays it. Rates and start prices come from the catalog and may be overridden in the
//! plan; one timed section re-rates the scraping of the whole job. [`risks`] says how likely each
//! option is to bring the crew back.

mod cost;
mod cutting;
mod done;
mod given;
mod methods;
mod own;
mod plan;
mod price;
mod prices;
mod quantities;
mod risk;
mod schedule;
mod supplies;
mod takeoff;
mod task_kinds;
mod tasks;
mod trials;

pub use cost::{CostDriver, CostInputs, CostSpread, cost_spreads};
pub use cutting::{CannotCut, CutPattern, CuttingList, CuttingRules, StockLength, cutting_list};
pub use done::{Done, Learned, learn, learn_waste, rates_of, use_of};
pub use methods::{MethodId, Outcome, RepairMethod, Step, Wait};
pub use own::Payer;
pub use plan::{
    ASSUMED_FIXTURES, ASSUMED_WINDOWS, BeadShape, Height, LeadPaint, OldSealant, Painting, Payers, Plan,
    PriceLine, Scope, Shares, Site, Stock, Trial,
};
pub use price::{LineBasis, Price, PriceInputs, Priced, present_value, price};
pub use prices::{Charging, Prices, RoundTo, TaxOn};
pub use quantities::{OnSite, Quantities, TreatedJoint};
pub use risk::{CallbackRule, Capability, Risk, RiskJoint, RiskOption, SectionMovement, risks, wilson};
pub use schedule::{
    Bar, BarStep, Crew, DayCost, DayStep, Schedule, ScheduleInputs, WaitTimes, WorkDay, schedule,
};
pub use supplies::{Caution, CautionWhen, ForWhom, Material, MaterialPer, Paint};
pub use takeoff::{
    Cans, MaterialLine, Need, OfferBasis, PieceSize, TakeoffInputs, board_price, cheapest_cans, spread_rate,
    takeoff, wet_sealant,
};
pub use task_kinds::{AlsoPer, Circumstance, Condition, Task, TaskPer, Trade};
pub use tasks::{
    Also, Besides, CatalogRate, RateBasis, TaskHours, TaskInputs, Weighed, applying, day_tasks, done_already,
    task_hours, task_of, weigh,
};
pub use trials::Tears;
