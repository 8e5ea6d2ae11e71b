//! What the user sets for this job alone: prices, times and shares of lines of the price.

use super::plan::{Payers, Plan, PriceLine, Shares};
use crate::measure::{Minutes, Money, Percent, ThreePoint};

impl Plan {
    /// Sets the price of a line of the buying list, by the line's id; `None` goes back to the catalog's.
    ///
    /// A board's id is its material and its length with a comma between. Going back also drops a price
    /// that was set for the material whatever its length, which would otherwise take its place.
    pub fn set_own_price(&mut self, line: &str, price: Option<Money>) {
        match price {
            Some(price) => {
                self.own_prices.insert(line.to_owned(), price);
            }
            None => {
                self.own_prices.remove(line);
                self.own_prices.remove(line.split(',').next().unwrap_or_default());
            }
        }
    }

    /// Sets the minutes that a batch of a task takes on average, by the task's id; `None` goes back to the
    /// catalog's rate. The three points keep their proportion to the average of `rate`, the rate until now;
    /// one without an average counts as exact.
    pub fn set_own_minutes(&mut self, task: &str, rate: ThreePoint, mean: Option<Minutes>) {
        let Some(mean) = mean.map(Minutes::to_minutes) else {
            self.own_minutes.remove(task);
            return;
        };
        let own = match rate.mean() > 0.0 {
            true => rate.times(mean / rate.mean()),
            false => ThreePoint::exactly(mean),
        };
        self.own_minutes.insert(task.to_owned(), own);
    }
}

/// One of the two payers whose share is set; the homeowner pays the rest.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Payer {
    /// The contractor, as a courtesy.
    Contractor,
    /// The supplier.
    Supplier,
}

impl Payer {
    /// Both of them.
    pub const ALL: [Self; 2] = [Self::Contractor, Self::Supplier];

    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Contractor => "contractor",
            Self::Supplier => "supplier",
        }
    }
}

impl Shares {
    /// The share of a payer.
    pub const fn of(&self, payer: Payer) -> Percent {
        match payer {
            Payer::Contractor => self.contractor,
            Payer::Supplier => self.supplier,
        }
    }

    const fn of_mut(&mut self, payer: Payer) -> &mut Percent {
        match payer {
            Payer::Contractor => &mut self.contractor,
            Payer::Supplier => &mut self.supplier,
        }
    }
}

impl Payers {
    /// Splits a line of the price by itself, at first like the whole.
    pub fn split(&mut self, line: PriceLine) {
        let overall = self.overall();
        self.lines.entry(line).or_insert(overall);
    }

    /// Sets what a payer pays of a line, which is then split by itself.
    pub fn set_share(&mut self, line: PriceLine, payer: Payer, share: Percent) {
        let overall = self.overall();
        *self.lines.entry(line).or_insert(overall).of_mut(payer) = share;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_average_time_carries_its_range_along() {
        let mut plan = Plan::default();
        let rate = ThreePoint { low: 20.0, likely: 40.0, high: 60.0 };
        plan.set_own_minutes("scrape", rate, Some(Minutes::of(20.0)));
        assert_eq!(plan.own_minutes["scrape"], ThreePoint { low: 10.0, likely: 20.0, high: 30.0 });
        // What is typed is the average, however the range leans.
        let leans = ThreePoint { low: 30.0, likely: 45.0, high: 80.0 };
        plan.set_own_minutes("scrape", leans, Some(Minutes::of(35.0)));
        assert!((plan.own_minutes["scrape"].mean() - 35.0).abs() < 1e-9);
        plan.set_own_minutes("new", ThreePoint::default(), Some(Minutes::of(7.0)));
        assert_eq!(plan.own_minutes["new"], ThreePoint { low: 7.0, likely: 7.0, high: 7.0 });
        plan.set_own_minutes("scrape", rate, None);
        assert!(!plan.own_minutes.contains_key("scrape"));
    }

    #[test]
    fn going_back_to_the_catalog_drops_the_price_by_the_run_too() {
        let mut plan = Plan::default();
        plan.set_own_price("pine", Some(Money::cents(300)));
        plan.set_own_price("pine,3.66", Some(Money::cents(900)));
        plan.set_own_price("film", Some(Money::cents(1800)));
        plan.set_own_price("pine,3.66", None);
        assert_eq!(plan.own_prices.keys().collect::<Vec<_>>(), ["film"]);
    }

    #[test]
    fn a_line_that_is_split_starts_from_the_whole() {
        let mut payers = Payers { contractor: Percent::pct(30.0), ..Payers::default() };
        payers.set_share(PriceLine::Labor, Payer::Supplier, Percent::pct(50.0));
        let labor = payers.of(PriceLine::Labor);
        assert_eq!((labor.contractor, labor.supplier), (Percent::pct(30.0), Percent::pct(50.0)));
        assert_eq!(payers.of(PriceLine::Materials), payers.overall());
        payers.split(PriceLine::Labor);
        assert_eq!(payers.of(PriceLine::Labor), labor);
    }
}
