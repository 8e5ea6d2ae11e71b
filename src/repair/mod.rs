//! The ways to mend the joints: what there is to do, what it takes, how long and how much.
//!
//! [`Plan`] is what the user decides. [`Quantities`] is the measure of the job; together they turn one
//! [`RepairMethod`] into tasks with hours, materials in whole pieces, a schedule with its waits, and a
//! price with who pays it. Rates and start prices come from the shelf and may be overridden in the
//! plan; one timed trial section re-rates the scraping of the whole job. [`risks`] says how likely each
//! way is to bring the crew back.

mod cost;
mod cutting;
mod done;
mod methods;
mod plan;
mod price;
mod quantities;
mod risk;
mod schedule;
mod takeoff;
mod tasks;
mod trials;

pub use cost::{CostInputs, CostSpread, cost_spreads};
pub use cutting::{CannotCut, CutPattern, CuttingList, CuttingRules, StockLength, cutting_list};
pub use done::{Done, Learned, learn, rates_of};
pub use methods::{
    Caution, CautionWhen, Circumstance, Condition, Material, MaterialPer, MethodId, Outcome, Paint,
    RepairMethod, Step, Task, TaskPer, Wait,
};
pub use plan::{
    BeadShape, Height, OldSealant, Payers, Plan, PriceLine, Prices, RoundTo, Scope, Shares, Site, Stock,
    TaxOn, Trial,
};
pub use price::{Price, PriceInputs, Priced, present_value, price};
pub use quantities::{Quantities, TreatedJoint};
pub use risk::{CallbackRule, Capability, CostDriver, Risk, RiskJoint, RiskOption, risks, wilson};
pub use schedule::{Bar, Crew, Schedule, WaitTimes, schedule};
pub use takeoff::{
    Cans, MaterialLine, Need, TakeoffInputs, board_price, cheapest_cans, spread_rate, takeoff, wet_sealant,
};
pub use tasks::{TaskHours, TaskInputs, Weighed, applying, task_hours, weigh};
