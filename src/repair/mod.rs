//! The ways to mend the joints: what there is to do, what it takes, how long and how much.
//!
//! [`Plan`] is what the user decides. [`Quantities`] is the measure of the job; together they turn one
//! [`Method`] into tasks with hours, materials in whole pieces, a schedule with its waits, and a
//! price with who pays it. Rates and start prices come from the shelf and may be overridden in the
//! plan; one timed trial section re-rates the scraping of the whole job. [`risks`] says how likely each
//! way is to bring the crew back.

mod catalogue;
mod plan;
mod price;
mod quantities;
mod risk;
mod schedule;
mod takeoff;
mod tasks;

pub use catalogue::{
    Caution, CautionWhen, Material, MaterialPer, Method, MethodId, Outcome, Paint, Step, Task, TaskPer, Wait,
};
pub use plan::{BeadShape, Payers, Plan, Prices, Scope, TaxOn, Trial};
pub use price::{Price, PriceInputs, present_value, price};
pub use quantities::{Quantities, TreatedJoint};
pub use risk::{CallbackRule, Capability, Risk, RiskJoint, RiskOption, Swing, risks, wilson};
pub use schedule::{Bar, Schedule, WaitTimes, schedule};
pub use takeoff::{
    Cans, MaterialLine, Need, TakeoffInputs, cheapest_cans, spread_rate, takeoff, wet_sealant,
};
pub use tasks::{TaskHours, TaskInputs, task_hours};
