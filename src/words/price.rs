//! The build-up of a price.

use super::{Arg, Say, Words, say};
use crate::measure::Percent;
use crate::repair::{CostDriver, LineBasis, PriceLine};

impl Say for PriceLine {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        say!(words, "price-line", line = Arg::Id(self.key()))
    }
}

impl Say for LineBasis {
    /// How the amount comes about, to stand beside it.
    fn say(&self, words: &Words) -> String {
        match *self {
            Self::Labor { hours, rate, burden: Percent::ZERO, .. } => {
                say!(words, "price-basis-labor", hours = Arg::Number(hours.to_h(), 2), rate = rate)
            }
            Self::Labor { hours, rate, wage, burden } => say!(
                words,
                "price-basis-labor-burden",
                hours = Arg::Number(hours.to_h(), 2),
                rate = rate,
                wage = wage,
                burden = burden
            ),
            Self::Materials => say!(words, "price-basis-materials"),
            Self::Equipment { days, per_day } => {
                say!(words, "price-basis-equipment", days = days, per_day = per_day)
            }
            Self::Overhead(share) => say!(words, "price-basis-overhead", share = share),
            Self::Contingency(share) => say!(words, "price-basis-contingency", share = share),
            Self::Profit(share) => say!(words, "price-basis-profit", share = share),
            Self::Minimum(amount) => say!(words, "price-basis-minimum", amount = amount),
            Self::Tax { rate, on } => say!(words, "price-basis-tax", rate = rate, on = Arg::Id(on.key())),
            Self::Rounding(step) => say!(words, "price-basis-rounding", step = step),
        }
    }
}

impl Say for CostDriver {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Task(name) => name.clone(),
            Self::MaterialPrices => say!(words, "price-driver-material-prices"),
        }
    }
}
