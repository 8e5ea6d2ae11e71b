//! The build-up of a price.

use super::{Arg, Say, Words, say};
use crate::assess::RepairOption;
use crate::job::Job;
use crate::measure::{Money, Percent};
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
            Self::ChargeOut { hours, rate } => {
                say!(words, "price-basis-charge-out", hours = Arg::Number(hours.to_h(), 2), rate = rate)
            }
            Self::Trades { painter, carpenter } => say!(
                words,
                "price-basis-trades",
                painter = Arg::Number(painter.0.to_h(), 2),
                painter_rate = painter.1,
                carpenter = Arg::Number(carpenter.0.to_h(), 2),
                carpenter_rate = carpenter.1
            ),
            Self::Markup(share) => say!(words, "price-basis-markup", share = share),
            Self::Materials => say!(words, "price-basis-materials"),
            Self::Equipment { days, per_day } => {
                say!(words, "price-basis-equipment", days = days, per_day = per_day)
            }
            Self::Overhead(share) => say!(words, "price-basis-overhead", share = share),
            Self::Contingency(share) => say!(words, "price-basis-contingency", share = share),
            Self::Callbacks { years } => say!(words, "price-basis-callbacks", years = years),
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
            Self::Task(name) => words.called(name).into_owned(),
            Self::Rates => say!(words, "price-driver-rates"),
            Self::MaterialPrices => say!(words, "price-driver-material-prices"),
        }
    }
}

/// That a job is warranted and an option's price holds nothing for callbacks; `None` where that is not so.
pub fn no_reserve(job: &Job, option: &RepairOption, words: &Words) -> Option<String> {
    let expected = option.expected_callbacks().filter(|expected| *expected > Money::ZERO)?;
    let (years, held) = (job.plan.warranty_years, job.plan.prices.add_callbacks);
    let amount = Arg::RoughMoney(expected);
    (years > 0 && !held).then(|| say!(words, "price-no-reserve", years = years, amount = amount))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{Hours, Units};

    #[test]
    fn a_line_says_its_own_figures() {
        let words = Words::us_english(Units::Inches, "$");
        let labor = LineBasis::Labor {
            hours: Hours::h(41.276),
            rate: Money::cents(4_788),
            wage: Money::cents(3_600),
            burden: Percent::pct(33.0),
        };
        assert_eq!(labor.say(&words), "41.28 hours at $47.88 ($36.00 + 33% labor burden)");
        let days = [1, 2].map(|days| LineBasis::Equipment { days, per_day: Money::cents(3_500) }.say(&words));
        assert_eq!(days, ["1 day at $35.00", "2 days at $35.00"]);
        assert_eq!(PriceLine::ALL.map(|line| line.say(&words))[0], "Labor");
    }
}
