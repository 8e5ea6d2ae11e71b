//! The build-up of a price.

use super::options::only_sections;
use super::{Arg, Say, Words, say};
use crate::assess::{Assessment, RepairOption, StartsAfter};
use crate::job::Job;
use crate::measure::{Hours, Length, Money, Percent};
use crate::repair::{
    Charging, CostDriver, Height, LineBasis, Painting, Price, PriceLine, Prices, Step, TaskHours,
};

impl Say for PriceLine {
    /// As a label.
    fn say(&self, words: &Words) -> String {
        say!(words, "price-line", line = Arg::Id(self.key()))
    }
}

/// A line's name where an hour is charged so: with one figure for the hour, what comes on top is the markup on
/// what is bought, not the profit.
pub fn line_name(line: PriceLine, charging: Charging, words: &Words) -> String {
    match (line, charging) {
        (PriceLine::Profit, Charging::ChargeOut) => say!(words, "price-line-markup"),
        _ => line.say(words),
    }
}

/// What of the price is profit, in a sentence; where an hour is one figure, that profit on labor is inside it.
pub fn margin(price: &Price, charging: Charging, words: &Words) -> String {
    match charging {
        Charging::BuildUp => say!(words, "paper-margin", margin = price.margin),
        Charging::ChargeOut => say!(words, "price-profit-inside"),
    }
}

/// The hours of each task at what an hour costs, tasks alike together.
pub fn labor(prices: &Prices, tasks: &[TaskHours], words: &Words) -> Vec<(String, String)> {
    let mut lines: Vec<(&TaskHours, Hours)> = Vec::new();
    for task in tasks.iter().filter(|task| task.hours.mean > Hours::ZERO) {
        match lines.iter_mut().find(|(known, _)| known.id == task.id) {
            Some((_, hours)) => *hours = *hours + task.hours.mean,
            None => lines.push((task, task.hours.mean)),
        }
    }
    let line = |(task, hours): (&TaskHours, Hours)| {
        let rate = prices.hour(task.trade);
        let amount = rate.times(hours.to_h());
        // To as many digits as it takes for the amount to multiply out.
        let hours = Arg::Number(hours.to_h(), 3);
        (
            words.called(&task.name).into_owned(),
            say!(words, "price-made-of-hours", hours = hours, rate = rate, amount = amount),
        )
    };
    lines.into_iter().map(line).collect()
}

/// What an option's price takes for granted, a sentence each: access and windows that nobody told, how paint
/// goes on, when the work starts, and days that are longer than a working day.
pub fn taken_for_granted(assessment: &Assessment, option: &RepairOption, words: &Words) -> Vec<String> {
    let (assumed, plan) = (assessment.assumed(), &assessment.job.plan);
    let mut notes: Vec<String> = only_sections(assessment, option, words).into_iter().collect();
    if let Some(height) = assumed.access {
        let access = match height {
            Height::Ladder => "ladder",
            Height::Scaffold => "scaffold",
            Height::Steps | Height::ByDrawing => "steps",
        };
        notes.push(say!(words, "price-assumes-access", access = Arg::Id(access)));
    }
    let not_counted = assessment.not_counted_run(option);
    if not_counted > Length::ZERO {
        notes.push(say!(words, "price-assumes-joints", run = Arg::Run(not_counted)));
    }
    if let Some(windows) = assumed.windows.filter(|_| option.sprays) {
        notes.push(say!(words, "price-assumes-windows", count = windows));
    }
    let lead_safe = option.steps.iter().any(|step| matches!(step, Step::Do(task) if task == "lead_contain"));
    if lead_safe && assessment.job.built.is_none() {
        notes.push(say!(words, "price-assumes-lead"));
    }
    if let Some(fixtures) = assumed.fixtures {
        notes.push(say!(words, "price-assumes-fixtures", count = fixtures));
    }
    let paints = option.steps.iter().any(|step| matches!(step, Step::Coats(_)));
    if paints && plan.coats > 0 {
        let way = match (option.sprays, plan.painting) {
            (_, Painting::Quicker) if option.paints_joints_only => "joints_few",
            _ if option.paints_joints_only => "joints",
            (true, Painting::Quicker) => "sprayed_quicker",
            (false, Painting::Quicker) => "brushed_quicker",
            (true, _) => "sprayed",
            (false, _) => "brushed",
        };
        notes.push(say!(words, "price-painting", way = Arg::Id(way)));
    }
    let long = option.schedule.days.iter().any(|day| day.paid.to_h() > plan.day.to_h() + 0.05);
    if long {
        notes.push(say!(words, "price-overtime", day = plan.day));
    }
    notes
}

/// What the first day of work waits for, in a sentence.
pub fn starts(option: &RepairOption, words: &Words) -> String {
    let (why, days) = match option.starts_after {
        StartsAfter::Lead(days) => ("lead", days),
        StartsAfter::Order(days) => ("order", days),
        StartsAfter::Drying => ("drying", 0),
        StartsAfter::Season => ("season", 0),
        StartsAfter::OtherSeason => ("other_season", 0),
    };
    say!(words, "price-starts", date = option.starts, why = Arg::Id(why), days = days)
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
    use crate::measure::Units;

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
