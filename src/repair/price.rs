//! From hours and materials to a price and who pays it.

use statrs::distribution::{ContinuousCDF as _, Normal};

use super::plan::{Plan, TaxOn};
use super::takeoff::MaterialLine;
use super::tasks::TaskHours;
use crate::measure::{Hours, Money, Span};

/// What a price is made of.
#[derive(Debug, Clone, Copy)]
pub struct PriceInputs<'a> {
    /// The tasks.
    pub tasks: &'a [TaskHours],
    /// The buying list.
    pub materials: &'a [MaterialLine],
    /// Rates and shares.
    pub plan: &'a Plan,
}

/// A price with its build-up. Every part is rounded to the cent and the total is their sum.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Price {
    /// Labour.
    pub labour: Money,
    /// Materials.
    pub materials: Money,
    /// Overhead on both.
    pub overhead: Money,
    /// Profit on labour, materials and overhead.
    pub profit: Money,
    /// Tax.
    pub tax: Money,
    /// Everything.
    pub total: Money,
    /// The total stays between these four times out of five.
    pub spread: Span<Money>,
    /// What the contractor absorbs.
    pub contractor: Money,
    /// What the supplier owes.
    pub supplier: Money,
    /// What the owner pays.
    pub owner: Money,
}

/// Hours of all tasks.
fn total_hours(tasks: &[TaskHours]) -> Hours {
    tasks.iter().map(|task| task.hours.mean).sum()
}

/// Works the price out.
///
/// The spread takes the tasks' times as moving together (the same crew on the same boards), so
/// their standard deviations add, and the sum as normal; materials are bought whole and do not
/// spread. It is the 10th to the 90th percentile.
pub fn price(inputs: &PriceInputs<'_>) -> Price {
    let prices = &inputs.plan.prices;
    let labour = prices.labour.times(total_hours(inputs.tasks).to_h());
    let materials: Money = inputs.materials.iter().map(|line| line.amount).sum();
    let build = |labour: Money| {
        let cost = labour + materials;
        let overhead = cost.times(prices.overhead.to_fraction());
        let profit = (cost + overhead).times(prices.profit.to_fraction());
        let taxed = match prices.tax_on {
            TaxOn::Nothing => Money::ZERO,
            TaxOn::Materials => materials,
            TaxOn::Everything => cost + overhead + profit,
        };
        let tax = taxed.times(prices.tax.to_fraction());
        (overhead, profit, tax, cost + overhead + profit + tax)
    };
    let (overhead, profit, tax, total) = build(labour);
    let sd: Hours = inputs.tasks.iter().map(|task| task.hours.sd).sum();
    let reach = prices.labour.times(Normal::standard().inverse_cdf(0.9) * sd.to_h());
    let spread = Span { low: build(labour - reach).3, high: build(labour + reach).3 };

    let payers = &inputs.plan.payers;
    let contractor = total.times(payers.contractor.to_fraction());
    let supplier = total.times(payers.supplier.to_fraction());
    // The owner's part is the rest, so that the three add up to the cent.
    let owner = total - contractor - supplier;
    Price { labour, materials, overhead, profit, tax, total, spread, contractor, supplier, owner }
}

/// What an amount of 1 that falls due in `years` is worth today at a yearly `rate`: 1/(1 + rate)^years
/// (ASTM E917, single present value).
pub fn present_value(rate: f64, years: f64) -> f64 {
    (1.0 + rate).powf(-years)
}
