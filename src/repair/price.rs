//! From hours and materials to a price and who pays it.

use super::cost::CostSpread;
use super::plan::{Plan, PriceLine, Shares};
use super::prices::{Charging, TaxOn};
use super::takeoff::MaterialLine;
use super::task_kinds::Trade;
use super::tasks::TaskHours;
use crate::measure::{Hours, Money, Percent, Span};

/// What a price is made of.
#[derive(Debug, Clone, Copy)]
pub struct PriceInputs<'a> {
    /// The tasks.
    pub tasks: &'a [TaskHours],
    /// The buying list.
    pub materials: &'a [MaterialLine],
    /// Days on which the crew works.
    pub crew_days: u32,
    /// How labor and materials may turn out.
    pub cost: &'a CostSpread,
    /// What is put in for callbacks.
    pub callbacks: Money,
    /// Rates and shares.
    pub plan: &'a Plan,
}

/// What a line of the build-up is made of: the figures that give its amount.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LineBasis {
    /// Hours of all people together, at one figure with everything in it.
    ChargeOut {
        /// Hours of all people together.
        hours: Hours,
        /// What an hour is charged at.
        rate: Money,
    },
    /// Hours of one trade, at what an hour costs.
    Labor {
        /// Hours of all people together.
        hours: Hours,
        /// What an hour of one person costs the firm: the wage with the labor burden.
        rate: Money,
        /// The hourly wage.
        wage: Money,
        /// What comes on top of the wage, as a share of it; zero where the wage is the whole cost.
        burden: Percent,
    },
    /// Hours of both trades, at what an hour of each costs with the labor burden.
    Trades {
        /// The painters' hours, and what one costs.
        painter: (Hours, Money),
        /// The carpenters'.
        carpenter: (Hours, Money),
    },
    /// The buying list added up.
    Materials,
    /// Days of the crew's work at a day's equipment.
    Equipment {
        /// Days on which the crew works.
        days: u32,
        /// Equipment for one day.
        per_day: Money,
    },
    /// This share of labor, materials and equipment.
    Overhead(Percent),
    /// So that the cost is covered with this chance.
    Contingency(Percent),
    /// Callbacks to be expected in so many years of warranty.
    Callbacks {
        /// Years of warranty.
        years: u32,
    },
    /// This markup on all lines above.
    Profit(Percent),
    /// This markup on materials and equipment.
    Markup(Percent),
    /// What is missing to this minimum charge.
    Minimum(Money),
    /// Sales tax.
    Tax {
        /// The rate.
        rate: Percent,
        /// What it falls on.
        on: TaxOn,
    },
    /// Rounding to the nearest multiple of this step.
    Rounding(Money),
}

/// One line of the build-up.
#[derive(Debug, Clone, PartialEq)]
pub struct Priced {
    /// Which.
    pub line: PriceLine,
    /// What it is made of.
    pub basis: LineBasis,
    /// Its amount.
    pub amount: Money,
    /// The contractor's part of it.
    pub contractor: Money,
    /// The supplier's part of it.
    pub supplier: Money,
}

/// A price with its build-up. Every line is rounded to the cent and the total is their sum.
#[derive(Debug, Clone, PartialEq)]
pub struct Price {
    /// The lines, in the order of [`PriceLine::ALL`], those that are nothing left out.
    pub lines: Vec<Priced>,
    /// Everything.
    pub total: Money,
    /// Profit, top-up and rounding as a share of the price before tax: the margin, which is less than
    /// the markup.
    pub margin: Percent,
    /// What the owner pays before work starts: the plan's share of their part.
    pub deposit: Money,
    /// Between these the total lies in 80 % of the trials: what it would be at the 10th and the 90th
    /// percentile of the cost.
    pub spread: Span<Money>,
    /// What the contractor absorbs.
    pub contractor: Money,
    /// What the supplier owes.
    pub supplier: Money,
    /// What the owner pays.
    pub owner: Money,
}

impl Price {
    /// What the work costs the firm: everything but profit, what tops it up, and tax. Where an hour is one
    /// figure, profit on labor is in it.
    pub fn cost(&self) -> Money {
        let gained = [PriceLine::Profit, PriceLine::Minimum, PriceLine::Tax, PriceLine::Rounding];
        self.lines.iter().filter(|priced| !gained.contains(&priced.line)).map(|priced| priced.amount).sum()
    }

    /// What homeowner and supplier pay together, tax not included.
    pub fn collected(&self) -> Money {
        self.owner + self.supplier - self.of(PriceLine::Tax)
    }

    /// What the owner pays when the work is finished.
    pub fn balance(&self) -> Money {
        self.owner - self.deposit
    }

    /// The amount of a line.
    pub fn of(&self, line: PriceLine) -> Money {
        self.lines.iter().filter(|priced| priced.line == line).map(|priced| priced.amount).sum()
    }
}

/// Amounts by line, for one turn of labour and materials.
struct Amounts([Money; PriceLine::ALL.len()]);

impl Amounts {
    fn total(&self) -> Money {
        self.0.iter().copied().sum()
    }
}

/// Works the price out.
///
/// Overhead falls on labor, materials and equipment; contingency is what the cost comes to at the
/// plan's percentile less what it is expected to be, with its overhead; profit is a markup on all
/// before it. The minimum charge tops up what is short before tax. The spread is what the total would be
/// at the 10th and 90th percentile of the cost, with the same contingency.
pub fn price(inputs: &PriceInputs<'_>) -> Price {
    let plan = inputs.plan;
    let labor: Money = match plan.prices.charging {
        Charging::ChargeOut => plan.prices.charge_out.times(all_hours(inputs).to_h()),
        Charging::BuildUp => {
            let trades = Trade::ALL.into_iter();
            trades.map(|trade| plan.prices.hour(trade).times(hours_of(inputs, trade).to_h())).sum()
        }
    };
    let materials: Money = inputs.materials.iter().map(|line| line.amount).sum();
    let contingency = plan.prices.contingency.map_or(Money::ZERO, |share| {
        let more = inputs.cost.at(share.to_fraction()) - inputs.cost.mean;
        if more > Money::ZERO { more } else { Money::ZERO }
    });
    let amounts = build(labor, materials, contingency, inputs);
    let total = amounts.total();
    let at = |share: f64| {
        let more = inputs.cost.at(share) - inputs.cost.mean;
        build(labor + more, materials, contingency, inputs).total()
    };
    let taxed = total - amounts.0[PriceLine::Tax as usize];
    // What tops a small job up is the firm's as well.
    let gained = [PriceLine::Profit, PriceLine::Minimum, PriceLine::Rounding];
    let profit: Money = gained.iter().map(|line| amounts.0[*line as usize]).sum();
    let profit = profit.to_units();
    let lines = PriceLine::ALL.into_iter().map(|line| Priced {
        line,
        basis: basis(line, inputs),
        amount: amounts.0[line as usize],
        contractor: Money::ZERO,
        supplier: Money::ZERO,
    });
    let kept = |priced: &Priced| priced.amount != Money::ZERO || priced.line == PriceLine::Labor;
    let lines = shared(lines.filter(kept).collect(), plan);
    let contractor = lines.iter().map(|priced| priced.contractor).sum();
    let supplier = lines.iter().map(|priced| priced.supplier).sum();
    // The owner's part is the rest, so that the three add up to the cent.
    let owner = total - contractor - supplier;
    Price {
        total,
        margin: Percent::pct(if taxed > Money::ZERO { 100.0 * profit / taxed.to_units() } else { 0.0 }),
        // It is asked of the owner: of what they pay.
        deposit: owner.times(plan.prices.deposit.to_fraction()),
        spread: Span { low: at(0.1), high: at(0.9) },
        contractor,
        supplier,
        owner,
        lines,
    }
}

/// The lines with what contractor and supplier bear of each. Lines that are shared alike are shared as one
/// amount, so that 60 % of their sum is 60 % of it to the cent; what rounding leaves falls on the largest.
fn shared(mut lines: Vec<Priced>, plan: &Plan) -> Vec<Priced> {
    let mut groups: Vec<(Shares, Vec<usize>)> = Vec::new();
    for (at, priced) in lines.iter().enumerate() {
        let shares = plan.payers.of(priced.line);
        match groups.iter_mut().find(|(known, _)| *known == shares) {
            Some((_, members)) => members.push(at),
            None => groups.push((shares, vec![at])),
        }
    }
    for (shares, members) in groups {
        let amounts: Vec<Money> = members.iter().map(|at| lines[*at].amount).collect();
        let contractor = parts(&amounts, shares.contractor);
        let supplier = parts(&amounts, shares.supplier);
        for ((at, contractor), supplier) in members.into_iter().zip(contractor).zip(supplier) {
            (lines[at].contractor, lines[at].supplier) = (contractor, supplier);
        }
    }
    lines
}

/// A share of each amount, which add up to that share of their sum.
fn parts(amounts: &[Money], share: Percent) -> Vec<Money> {
    let share = share.to_fraction();
    let mut parts: Vec<Money> = amounts.iter().map(|amount| amount.times(share)).collect();
    let left = amounts.iter().copied().sum::<Money>().times(share) - parts.iter().copied().sum();
    let largest = (0..amounts.len()).max_by_key(|at| (amounts[*at], std::cmp::Reverse(*at)));
    if let Some(at) = largest {
        parts[at] = parts[at] + left;
    }
    parts
}

fn build(labor: Money, materials: Money, contingency: Money, inputs: &PriceInputs<'_>) -> Amounts {
    let prices = &inputs.plan.prices;
    let equipment = prices.equipment.times(f64::from(inputs.crew_days));
    let cost = labor + materials + equipment;
    let (overhead, contingency, profit) = match prices.charging {
        Charging::BuildUp => {
            let overhead = cost.times(prices.overhead.to_fraction());
            let contingency = contingency + contingency.times(prices.overhead.to_fraction());
            let profit = (cost + overhead + contingency).times(prices.profit.to_fraction());
            (overhead, contingency, profit)
        }
        // The hour holds them; only what is bought or hired is marked up.
        Charging::ChargeOut => {
            (Money::ZERO, contingency, (materials + equipment).times(prices.material_markup.to_fraction()))
        }
    };
    let before_tax = cost + overhead + contingency + profit + inputs.callbacks;
    // Where there is nothing to do, nobody comes and nothing is charged.
    let short = if cost > Money::ZERO { prices.minimum - before_tax } else { Money::ZERO };
    let minimum = if short > Money::ZERO { short } else { Money::ZERO };
    let taxed = match prices.tax_on {
        TaxOn::Nothing => Money::ZERO,
        TaxOn::Materials => materials,
        TaxOn::Everything => before_tax + minimum,
    };
    let tax = taxed.times(prices.tax.to_fraction());
    let exact = before_tax + minimum + tax;
    let rounding = exact.rounded_to(prices.round_to.cents()) - exact;
    Amounts([
        labor,
        materials,
        equipment,
        overhead,
        contingency,
        profit,
        inputs.callbacks,
        minimum,
        tax,
        rounding,
    ])
}

/// Hours of a trade, to the hundredth as they are told: what stands on the price multiplies out.
fn hours_of(inputs: &PriceInputs<'_>, trade: Trade) -> Hours {
    hundredths(inputs.tasks.iter().filter(|task| task.trade == trade).map(|task| task.hours.mean).sum())
}

/// Hours of both, likewise.
fn all_hours(inputs: &PriceInputs<'_>) -> Hours {
    hundredths(inputs.tasks.iter().map(|task| task.hours.mean).sum())
}

fn hundredths(hours: Hours) -> Hours {
    Hours::h((hours.to_h() * 100.0).round() / 100.0)
}

/// What the labor is made of.
fn labor_basis(inputs: &PriceInputs<'_>) -> LineBasis {
    let prices = &inputs.plan.prices;
    let [painter, carpenter] = Trade::ALL.map(|trade| hours_of(inputs, trade));
    if prices.charging == Charging::ChargeOut {
        return LineBasis::ChargeOut { hours: all_hours(inputs), rate: prices.charge_out };
    }
    let of = |trade, hours| LineBasis::Labor {
        hours,
        rate: prices.hour(trade),
        wage: prices.wage(trade),
        burden: prices.burden,
    };
    if carpenter <= Hours::ZERO {
        return of(Trade::Painter, painter);
    }
    if painter <= Hours::ZERO {
        return of(Trade::Carpenter, carpenter);
    }
    let [at_painter, at_carpenter] = Trade::ALL.map(|trade| prices.hour(trade));
    LineBasis::Trades { painter: (painter, at_painter), carpenter: (carpenter, at_carpenter) }
}

/// What a line is made of.
fn basis(line: PriceLine, inputs: &PriceInputs<'_>) -> LineBasis {
    let prices = &inputs.plan.prices;
    match line {
        PriceLine::Labor => labor_basis(inputs),
        PriceLine::Materials => LineBasis::Materials,
        PriceLine::Equipment => LineBasis::Equipment { days: inputs.crew_days, per_day: prices.equipment },
        PriceLine::Overhead => LineBasis::Overhead(prices.overhead),
        PriceLine::Contingency => LineBasis::Contingency(prices.contingency.unwrap_or(Percent::ZERO)),
        PriceLine::Profit if prices.charging == Charging::ChargeOut => {
            LineBasis::Markup(prices.material_markup)
        }
        PriceLine::Profit => LineBasis::Profit(prices.profit),
        PriceLine::Callbacks => LineBasis::Callbacks { years: inputs.plan.warranty_years },
        PriceLine::Minimum => LineBasis::Minimum(prices.minimum),
        PriceLine::Tax => LineBasis::Tax { rate: prices.tax, on: prices.tax_on },
        PriceLine::Rounding => LineBasis::Rounding(Money::cents(prices.round_to.cents())),
    }
}

/// What an amount of 1 that falls due in `years` is worth today at a yearly `rate`: 1/(1 + rate)^years
/// (ASTM E917, single present value).
pub fn present_value(rate: f64, years: f64) -> f64 {
    (1.0 + rate).powf(-years)
}
