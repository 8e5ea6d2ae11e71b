//! Which way to choose, and what would change that.

use super::options::RepairOption;
use super::risk::{RiskInputs, YearlyShare, with_callbacks};
use crate::measure::{Hours, Money, show_number};
use crate::repair::{MethodId, TaxOn};

/// Warranties that are held against the plan's, years.
const TERMS: [u32; 4] = [1, 3, 5, 10];
/// By this share another way must be cheaper to be told.
const CLEARLY: f64 = 0.02;

/// What speaks for one way.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice {
    /// The way that costs least with callbacks included.
    pub best: MethodId,
    /// The next one, if there is another.
    pub next: Option<MethodId>,
    /// Ways that no other beats both in price and in chance of a callback, cheapest first.
    pub front: Vec<MethodId>,
    /// Which and why, in a sentence.
    pub why: String,
    /// What would change it, a sentence each.
    pub changes: Vec<String>,
}

/// Chooses among the options whose chances are known; `None` if there are none.
pub(super) fn choose(
    inputs: &RiskInputs<'_>,
    options: &[RepairOption],
    yearly: &[YearlyShare],
) -> Option<Choice> {
    let mut known: Vec<&RepairOption> = options.iter().filter(|option| option.expected.is_some()).collect();
    known.sort_by_key(|option| option.expected);
    let best = *known.first()?;
    let next = known.get(1).copied();
    let currency = &inputs.job.plan.prices.currency;
    let cost = |option: &RepairOption| option.expected.unwrap_or_default().show_rough(currency);
    let mut why = format!("“{}” costs least with callbacks included, about {}", best.name, cost(best));
    if let Some(next) = next {
        why.push_str(&format!("; next comes “{}” with {}", next.name, cost(next)));
    }
    why.push('.');
    let mut changes: Vec<String> = next.map(|next| price_change(inputs, best, next)).into_iter().collect();
    changes.extend(term_change(inputs, options, yearly, best));
    Some(Choice {
        best: best.method,
        next: next.map(|option| option.method),
        front: front(&known),
        why,
        changes,
    })
}

/// Ways that no other beats in both price and chance.
fn front(known: &[&RepairOption]) -> Vec<MethodId> {
    let at = |option: &RepairOption| Some((option.price.total, option.callback.as_ref()?.chance));
    let mut points: Vec<(MethodId, Money, f64)> = known
        .iter()
        .filter_map(|option| at(option).map(|(price, chance)| (option.method, price, chance)))
        .collect();
    points.sort_by(|a, b| (a.1, a.2).partial_cmp(&(b.1, b.2)).unwrap_or(std::cmp::Ordering::Equal));
    let mut least = f64::INFINITY;
    points.retain(|&(_, _, chance)| {
        let better = chance < least;
        least = least.min(chance);
        better
    });
    points.into_iter().map(|(method, ..)| method).collect()
}

/// How much dearer the best may become before the next is cheaper, and what that means for the time of
/// its longest task.
fn price_change(inputs: &RiskInputs<'_>, best: &RepairOption, next: &RepairOption) -> String {
    let prices = &inputs.job.plan.prices;
    let [low, high] = [best, next].map(|option| option.expected.unwrap_or_default());
    // What is expected grows with the price itself.
    let grows = low.to_units() / best.price.total.to_units().max(0.01);
    let room = (high - low).times(1.0 / grows.max(1.0));
    let share = 100.0 * room.to_units() / best.price.total.to_units().max(0.01);
    let mut words = format!(
        "“{}” would cost less if the first became dearer by {} ({} %)",
        next.name,
        room.show_rough(&prices.currency),
        show_number(share, 0)
    );
    let longest = best.tasks.iter().max_by(|a, b| a.hours.mean.to_h().total_cmp(&b.hours.mean.to_h()));
    let shared =
        |id: &str| next.tasks.iter().find(|task| task.id == id).map_or(Hours::ZERO, |t| t.hours.mean);
    if let Some(task) = longest {
        let taxed = if prices.tax_on == TaxOn::Everything { prices.tax.to_fraction() } else { 0.0 };
        let on_top =
            (1.0 + prices.overhead.to_fraction()) * (1.0 + prices.profit.to_fraction()) * (1.0 + taxed);
        let own = task.hours.mean - shared(&task.id);
        let more = room.to_units() / (prices.hour().to_units() * on_top * own.to_h()).max(1e-9);
        if own.to_h() > 0.1 && more < 4.0 {
            let times = show_number(1.0 + more * own.to_h() / task.hours.mean.to_h(), 1);
            words.push_str(&format!(", or if “{}” took {times} times as long", task.name.to_lowercase()));
        }
    }
    words.push('.');
    words
}

/// The nearest warranty with which another way would cost least.
fn term_change(
    inputs: &RiskInputs<'_>,
    options: &[RepairOption],
    yearly: &[YearlyShare],
    best: &RepairOption,
) -> Option<String> {
    let years = inputs.job.plan.warranty_years;
    let mut terms: Vec<u32> = TERMS.into_iter().filter(|term| *term != years).collect();
    terms.sort_by_key(|term| term.abs_diff(years));
    let cheaper = |term: u32| {
        let cost = |&(at, share): &YearlyShare| {
            (at, with_callbacks(inputs.job, options[at].price.total, share, term))
        };
        let costs: Vec<(usize, Money)> = yearly.iter().map(cost).collect();
        let of_best = costs.iter().find(|(at, _)| options[*at].method == best.method)?.1;
        let (at, least) = costs.into_iter().min_by_key(|(_, cost)| *cost)?;
        (least < of_best.times(1.0 - CLEARLY)).then_some(&options[at])
    };
    terms.into_iter().find_map(|term| {
        let other = cheaper(term)?;
        let span = if term > years { "years or more" } else { "years or less" };
        let term = if term == 1 { "one year".to_owned() } else { format!("{term} {span}") };
        Some(format!("With a warranty of {term} “{}” would cost least.", other.name))
    })
}
