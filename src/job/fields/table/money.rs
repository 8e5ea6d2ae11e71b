//! Fields of money: prices, rates, who pays, and the price book kept with the job.

use super::{by_id, fields, figure, optional};
use crate::job::fields::{Figures, Item, Kind, Mending};
use crate::measure::{Money, Percent, Quantity};

/// More than anyone charges for an hour, a day, or to come at all.
const DEAREST: Money = Money::cents(1_000_000);
/// More than any piece of material costs.
const DEAREST_PIECE: Money = Money::cents(100_000_000);
/// A whole.
const WHOLE: Percent = Percent::pct(100.0);

/// Shares of lines of the price, the contractor's and the supplier's of each.
const SHARES: Figures = Figures {
    low: Quantity::Percent(Percent::ZERO),
    high: Quantity::Percent(WHOLE),
    mending: Mending::Nearest,
    most: usize::MAX,
    read: |job, _| {
        let lines = job.plan.payers.lines.iter();
        let both = lines.flat_map(|(line, shares)| [(*line, shares.contractor), (*line, shares.supplier)]);
        both.map(|(line, share)| (Item::Line(line), Quantity::Percent(share))).collect()
    },
    mend: |job, _, _, mend| {
        for share in job.plan.payers.lines.values_mut().flat_map(|of| [&mut of.contractor, &mut of.supplier])
        {
            if let Some(Quantity::Percent(mended)) = mend(Quantity::Percent(*share)) {
                *share = mended;
            }
        }
    },
};

fields! {
    /// Sign of the currency.
    CURRENCY = "currency", "plan.prices.currency", Job, Kind::Text;
    /// How an hour is charged.
    CHARGING = "charging", "plan.prices.charging", Job, Kind::Choice;
    /// An hour with everything in it.
    CHARGE_OUT = "charge-out", "plan.prices.charge_out", Job,
        figure!(job, plan.prices.charge_out, Money, Money::ZERO, DEAREST, Nearest);
    /// Markup on what is bought, with such an hour.
    MATERIAL_MARKUP = "material-markup", "plan.prices.material_markup", Job,
        figure!(job, plan.prices.material_markup, Percent, Percent::ZERO, Percent::pct(200.0), Nearest);
    /// A painter's wage for an hour.
    WAGE = "wage", "plan.prices.labour", Job,
        figure!(job, plan.prices.labor, Money, Money::ZERO, DEAREST, Nearest);
    /// A carpenter's wage for an hour.
    CARPENTER_WAGE = "carpenter-wage", "plan.prices.carpenter", Job,
        figure!(job, plan.prices.carpenter, Money, Money::ZERO, DEAREST, Nearest);
    /// Taxes and insurance on wages.
    LABOR_BURDEN = "labor-burden", "plan.prices.burden", Job,
        figure!(job, plan.prices.burden, Percent, Percent::ZERO, Percent::pct(200.0), Nearest);
    /// Equipment for a day.
    EQUIPMENT = "equipment", "plan.prices.equipment", Job,
        figure!(job, plan.prices.equipment, Money, Money::ZERO, DEAREST, Nearest);
    /// Overhead on cost.
    OVERHEAD = "overhead", "plan.prices.overhead", Job,
        figure!(job, plan.prices.overhead, Percent, Percent::ZERO, Percent::pct(200.0), Nearest);
    /// Profit on cost.
    PROFIT = "profit", "plan.prices.profit", Job,
        figure!(job, plan.prices.profit, Percent, Percent::ZERO, Percent::pct(200.0), Nearest);
    /// Chance with which the contingency covers the cost.
    CONTINGENCY = "contingency", "plan.prices.contingency", Job,
        optional!(job, plan.prices.contingency, Percent, Percent::pct(50.0), Percent::pct(99.0), Nearest);
    /// Least charge of a job.
    MINIMUM_CHARGE = "minimum-charge", "plan.prices.minimum", Job,
        figure!(job, plan.prices.minimum, Money, Money::ZERO, DEAREST, Nearest);
    /// Sales tax.
    TAX = "tax", "plan.prices.tax", Job,
        figure!(job, plan.prices.tax, Percent, Percent::ZERO, Percent::pct(50.0), Nearest);
    /// What is taxed.
    TAX_ON = "tax-on", "plan.prices.tax_on", Job, Kind::Choice;
    /// What the total is rounded to.
    ROUND_TO = "round-to", "plan.prices.round_to", Job, Kind::Choice;
    /// Whether the price holds what callbacks are expected to cost.
    ADD_CALLBACKS = "add-callbacks", "plan.prices.add_callbacks", Job, Kind::Choice;
    /// Share due before work starts.
    DEPOSIT = "deposit", "plan.prices.deposit", Job,
        figure!(job, plan.prices.deposit, Percent, Percent::ZERO, WHOLE, Nearest);
    /// Discount rate of later expenses.
    DISCOUNT_RATE = "discount-rate", "plan.discount", Job,
        figure!(job, plan.discount, Percent, Percent::ZERO, Percent::pct(50.0), Nearest);
    /// The contractor's share of the price.
    CONTRACTOR_SHARE = "contractor-share", "plan.payers.contractor", Job,
        figure!(job, plan.payers.contractor, Percent, Percent::ZERO, WHOLE, Nearest);
    /// The supplier's share of the price.
    SUPPLIER_SHARE = "supplier-share", "plan.payers.supplier", Job,
        figure!(job, plan.payers.supplier, Percent, Percent::ZERO, WHOLE, Nearest);
    /// Whether it was said who pays.
    PAYERS_AGREED = "payers-agreed", "plan.payers.agreed", Job, Kind::Choice;
    /// Shares of single lines of the price.
    LINE_SPLIT = "line-split", "plan.payers.lines", Job, Kind::Figures(SHARES);
    /// Prices of materials for this job alone.
    OWN_PRICES = "own-prices", "plan.own_prices", Job, by_id!(plan.own_prices, Money, Money::ZERO, DEAREST_PIECE);
    /// Pieces that are there already.
    ON_HAND = "on-hand", "plan.on_hand", Job, by_id!(plan.on_hand, Count, 0, 1_000);
    /// Boards kept with the job.
    BOOK_BOARDS = "book-boards", "shelf.boards", Job, Kind::List;
    /// Sealants kept with the job, with their prices.
    BOOK_SEALANTS = "book-sealants", "shelf.sealants", Job, Kind::List;
    /// Paints kept with the job, with their prices.
    BOOK_PAINTS = "book-paints", "shelf.paints", Job, Kind::List;
    /// Other materials kept with the job, with their prices.
    BOOK_MATERIALS = "book-materials", "shelf.materials", Job, Kind::List;
    /// Tasks kept with the job, with their minutes.
    BOOK_TASKS = "book-tasks", "shelf.tasks", Job, Kind::List;
    /// Repair methods of the user's own.
    BOOK_METHODS = "book-methods", "shelf.methods", Job, Kind::List;
    /// All prices and rates kept with the job.
    PRICE_BOOK = "price-book", "shelf", Job, Kind::List;
}
