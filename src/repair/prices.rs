//! Rates that make a price of hours and materials, and the start values they have.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::given::Given;
use super::task_kinds::Trade;
use crate::measure::{Money, Percent};

/// What tax falls on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum TaxOn {
    /// Nothing.
    Nothing,
    /// What is bought.
    #[default]
    Materials,
    /// The whole price.
    Everything,
}

impl TaxOn {
    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Nothing => "nothing",
            Self::Materials => "materials",
            Self::Everything => "everything",
        }
    }
}

/// To what step a price is rounded, in the customer's disfavour never by more than half of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum RoundTo {
    /// The cent.
    #[default]
    Cent,
    /// A whole unit of the currency.
    Unit,
    /// Five units.
    Five,
    /// Ten units.
    Ten,
}

impl RoundTo {
    /// Cents in a step.
    pub const fn cents(self) -> i64 {
        match self {
            Self::Cent => 1,
            Self::Unit => 100,
            Self::Five => 500,
            Self::Ten => 1000,
        }
    }
}

/// How an hour of work is charged.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum Charging {
    /// From the wage up: labor burden, overhead and profit come on top.
    #[default]
    BuildUp,
    /// At one figure with everything in it; what is bought has a markup of its own.
    ChargeOut,
}

impl Charging {
    /// Its key in files for other programs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::BuildUp => "build_up",
            Self::ChargeOut => "charge_out",
        }
    }
}

/// Rates that make a price of hours and materials.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(from = "PricesInFile")]
pub struct Prices {
    /// Sign or letters of the currency.
    pub currency: String,
    /// How an hour is charged.
    pub charging: Charging,
    /// What an hour of one person is charged at, where one figure holds everything.
    pub charge_out: Money,
    /// Markup on what is bought or hired, where an hour is charged so.
    pub material_markup: Percent,
    /// A painter's wage for an hour; with `burden` zero, everything an hour costs the firm.
    #[serde(rename = "labour")]
    pub labor: Money,
    /// A carpenter's wage for an hour. A file that names one wage only means both.
    pub carpenter: Money,
    /// What comes on top of the wage: taxes, insurance, holidays. A file that names a wage and no
    /// burden means the whole cost.
    pub burden: Percent,
    /// Sprayer, lights, platforms and the like, for a day of the crew's work.
    pub equipment: Money,
    /// Overhead on labour, materials and equipment.
    pub overhead: Percent,
    /// Profit on all of that: a markup on cost, not a margin of the price.
    pub profit: Percent,
    /// The chance in per cent that the price is to cover what the work turns out to cost; `None` for
    /// none beyond what is expected.
    pub contingency: Option<Percent>,
    /// Whether the price holds what callbacks within the warranty are expected to cost.
    pub add_callbacks: bool,
    /// The least the firm comes for, tax not included.
    pub minimum: Money,
    /// Sales tax.
    pub tax: Percent,
    /// What the tax falls on.
    pub tax_on: TaxOn,
    /// What the total is rounded to.
    pub round_to: RoundTo,
    /// Share of the total to be paid before work starts.
    pub deposit: Percent,
}

impl Prices {
    /// An hour of one person: what it costs the firm with everything on top of the wage, or what it is
    /// charged at where that is one figure.
    pub fn hour(&self, trade: Trade) -> Money {
        match self.charging {
            Charging::ChargeOut => self.charge_out,
            Charging::BuildUp => {
                let wage = self.wage(trade);
                wage + wage.times(self.burden.to_fraction())
            }
        }
    }

    /// The wage of a trade.
    pub const fn wage(&self, trade: Trade) -> Money {
        match trade {
            Trade::Painter => self.labor,
            Trade::Carpenter => self.carpenter,
        }
    }

    /// What a dollar more of labor adds to the price, tax included.
    pub fn labor_becomes(&self) -> f64 {
        let taxed = if self.tax_on == TaxOn::Everything { self.tax.to_fraction() } else { 0.0 };
        let on_top = match self.charging {
            Charging::ChargeOut => 1.0,
            Charging::BuildUp => (1.0 + self.overhead.to_fraction()) * (1.0 + self.profit.to_fraction()),
        };
        on_top * (1.0 + taxed)
    }
}

/// Start values of the United States. Wages: means of painters (47-2141) and carpenters (47-2031), May
/// 2025 (BLS, Occupational Employment and Wage Statistics). Burden: benefits over wages of construction
/// and maintenance occupations, March 2026, 45.9 % (BLS, Employer Costs for Employee Compensation, Table 4).
/// Overhead and profit: remodelers' operating expenses and net profit over their direct cost, 35.5 and
/// 7.4 % in 2018, which together make 1.43 times direct cost (a trade association's survey of 2020, press
/// text). The charge-out hour is what these make of a painter's. All else is an assumption.
impl Default for Prices {
    fn default() -> Self {
        Self {
            currency: "$".to_owned(),
            charging: Charging::BuildUp,
            charge_out: Money::cents(5_600),
            material_markup: Percent::pct(20.0),
            labor: Money::cents(2_664),
            carpenter: Money::cents(3_155),
            burden: Percent::pct(46.0),
            equipment: Money::cents(3_500),
            overhead: Percent::pct(35.0),
            profit: Percent::pct(6.0),
            contingency: None,
            add_callbacks: false,
            minimum: Money::cents(25_000),
            tax: Percent::pct(7.0),
            tax_on: TaxOn::Materials,
            round_to: RoundTo::Cent,
            deposit: Percent::ZERO,
        }
    }
}

/// Rates as a file gives them: what it does not name keeps its start value, but for what hangs together
/// with what it does name.
#[derive(Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields, rename = "Prices")]
struct PricesInFile {
    currency: String,
    charging: Charging,
    charge_out: Money,
    material_markup: Percent,
    labour: Given<Money>,
    carpenter: Given<Money>,
    burden: Given<Percent>,
    equipment: Money,
    overhead: Percent,
    profit: Percent,
    contingency: Option<Percent>,
    add_callbacks: bool,
    minimum: Money,
    tax: Percent,
    tax_on: TaxOn,
    round_to: RoundTo,
    deposit: Percent,
}

impl Default for PricesInFile {
    fn default() -> Self {
        let start = Prices::default();
        Self {
            currency: start.currency,
            charging: start.charging,
            charge_out: start.charge_out,
            material_markup: start.material_markup,
            labour: Given::NOT,
            carpenter: Given::NOT,
            burden: Given::NOT,
            equipment: start.equipment,
            overhead: start.overhead,
            profit: start.profit,
            contingency: start.contingency,
            add_callbacks: start.add_callbacks,
            minimum: start.minimum,
            tax: start.tax,
            tax_on: start.tax_on,
            round_to: start.round_to,
            deposit: start.deposit,
        }
    }
}

impl From<PricesInFile> for Prices {
    fn from(file: PricesInFile) -> Self {
        let start = Self::default();
        let whole_cost = if file.labour.is_given() { Percent::ZERO } else { start.burden };
        let carpenter = file.labour.or(start.carpenter);
        Self {
            currency: file.currency,
            charging: file.charging,
            charge_out: file.charge_out,
            material_markup: file.material_markup,
            labor: file.labour.or(start.labor),
            carpenter: file.carpenter.or(carpenter),
            burden: file.burden.or(whole_cost),
            equipment: file.equipment,
            overhead: file.overhead,
            profit: file.profit,
            contingency: file.contingency,
            add_callbacks: file.add_callbacks,
            minimum: file.minimum,
            tax: file.tax,
            tax_on: file.tax_on,
            round_to: file.round_to,
            deposit: file.deposit,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Prices {
        ron::from_str(text).expect("prices")
    }

    #[test]
    fn what_a_price_file_does_not_name_keeps_its_start_value() {
        let start = Prices::default();
        assert_eq!(read("(tax: 5.0)"), Prices { tax: Percent::pct(5.0), ..start.clone() });
        // A wage alone is what an hour costs, whoever works it.
        let wage = Money::cents(4_000);
        let alone = read("(labour: \"40.00\")");
        assert_eq!(alone, Prices { labor: wage, carpenter: wage, burden: Percent::ZERO, ..start.clone() });
        let both = read("(labour: \"40.00\", carpenter: \"50.00\", burden: 30.0)");
        assert_eq!((both.carpenter, both.burden), (Money::cents(5_000), Percent::pct(30.0)));
        let text = ron::to_string(&start).expect("text");
        assert_eq!(read(&text), start);
    }
}
