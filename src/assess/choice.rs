//! Which option to choose, and what would change that.

use super::follow_up::NINE_IN_TEN;
use super::option_inputs::OptionInputs;
use super::options::RepairOption;
use super::risk::{YearlyShare, with_callbacks};
use crate::measure::{Hours, Money, Percent};
use crate::repair::MethodId;

/// Warranties that are held against the plan's, years.
const TERMS: [u32; 4] = [1, 3, 5, 10];

/// Options whose costs differ by more than this share of the lesser cost nobody would call equal, however
/// doubtful they are. Judgment.
const EQUAL_WITHIN: f64 = 0.1;

/// An option is clearly surer to last than another from this difference of their chances on. Judgment.
const SURER: f64 = 0.1;

/// Which option costs least with callbacks, and what would change that.
#[derive(Debug, Clone, PartialEq)]
pub struct Choice {
    /// The option to choose: of those that cost the same with callbacks included, as far as anyone can
    /// tell, and are about as sure to last as the surest, the one that disrupts the house least.
    pub best: MethodId,
    /// Whether one that costs the same would disrupt the house less, and is clearly less sure to last.
    pub surer: bool,
    /// How much more than the cheapest of those it is expected to cost; nothing where it is the cheapest.
    pub costs_more: Money,
    /// The others whose cost with callbacks cannot be told from the least, cheapest first.
    pub equal: Vec<MethodId>,
    /// The next one that clearly costs more, if there is one.
    pub next: Option<MethodId>,
    /// Options that no other beats both in price and in chance of a callback, cheapest first.
    pub front: Vec<MethodId>,
    /// How much dearer the best may become before the next costs less; `None` without a next.
    pub margin: Option<PriceMargin>,
    /// The nearest warranty with which another option would cost least, if there is one.
    pub other_warranty: Option<OtherWarranty>,
}

/// How much dearer the best option may become before the next costs less.
#[derive(Debug, Clone, PartialEq)]
pub struct PriceMargin {
    /// That much.
    pub amount: Money,
    /// As a share of its price.
    pub share: Percent,
    /// Its longest task, by name, and how many times as long that would have to take; `None` where it
    /// would be more than about four times.
    pub slower: Option<(String, f64)>,
}

/// A warranty with which another option would cost least.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct OtherWarranty {
    /// Its years.
    pub years: u32,
    /// Whether it is longer than the plan's; if not, it is shorter.
    pub longer: bool,
    /// The option that would cost least.
    pub method: MethodId,
}

/// Chooses among the options whose chances are known; `None` if there are none.
pub(super) fn choose(
    inputs: &OptionInputs<'_>,
    options: &[RepairOption],
    yearly: &[YearlyShare],
) -> Option<Choice> {
    let mut known: Vec<&RepairOption> = options.iter().filter(|option| option.expected.is_some()).collect();
    known.sort_by_key(|option| option.expected);
    let least = *known.first()?;
    let (equal, more): (Vec<&RepairOption>, Vec<&RepairOption>) = known.iter().partition(|option| {
        let more = option.expected.unwrap_or_default() - least.expected.unwrap_or_default();
        more <= noise(inputs, option, least).min(least.expected.unwrap_or_default().times(EQUAL_WITHIN))
    });
    let surest = equal.iter().map(|option| chance(option)).fold(1.0, f64::min);
    let calmest = *equal.iter().min_by_key(|option| disruption(option))?;
    // What is as cheap and clearly surer is worth more of a mess.
    let sure = equal.iter().filter(|option| chance(option) < surest + SURER);
    let best = *sure.min_by_key(|option| disruption(option))?;
    let next = more.first().copied();
    Some(Choice {
        best: best.method,
        surer: best.method != calmest.method,
        costs_more: best.expected.unwrap_or_default() - least.expected.unwrap_or_default(),
        equal: equal.iter().map(|option| option.method).filter(|method| *method != best.method).collect(),
        next: next.map(|option| option.method),
        front: front(&known),
        margin: next.map(|next| margin(inputs, best, next)),
        other_warranty: other_warranty(inputs, options, yearly, best),
    })
}

/// How much the difference between two options with callbacks may be off, nine times in ten: by what the
/// work of each takes, and by what is not known of the house, which moves the callbacks of both together.
fn noise(inputs: &OptionInputs<'_>, one: &RepairOption, other: &RepairOption) -> Money {
    let prices = &inputs.job.plan.prices;
    let work = one.cost.doubt_of_difference(&other.cost).to_units() * prices.labor_becomes() * NINE_IN_TEN;
    let callbacks = half_range(one) - half_range(other);
    Money::cents(100).times(work.hypot(callbacks))
}

/// Half of the nine-in-ten range of what an option's callbacks are expected to cost, in units of the
/// currency: the range of its chance carried over.
fn half_range(option: &RepairOption) -> f64 {
    let (Some(callbacks), Some(risk)) = (option.expected_callbacks(), &option.callback) else { return 0.0 };
    let callbacks = callbacks.to_units();
    callbacks * (risk.interval.high - risk.interval.low) / (2.0 * risk.chance.max(0.01))
}

/// The chance of another callback, 0 to 1.
fn chance(option: &RepairOption) -> f64 {
    option.callback.as_ref().map_or(0.0, |risk| risk.chance)
}

/// What an option asks of those who live there, for comparison: days without the room, then days of work.
fn disruption(option: &RepairOption) -> (u32, u32, Option<Money>) {
    (option.schedule.room_out, option.schedule.crew_days, option.expected)
}

/// Options that no other beats in both price and chance.
fn front(known: &[&RepairOption]) -> Vec<MethodId> {
    let at = |option: &RepairOption| Some((option.price.as_ref()?.total, option.callback.as_ref()?.chance));
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

/// How much dearer the best may become, and what that means for the time of its longest task.
fn margin(inputs: &OptionInputs<'_>, best: &RepairOption, next: &RepairOption) -> PriceMargin {
    let prices = &inputs.job.plan.prices;
    let [low, high] = [best, next].map(|option| option.expected.unwrap_or_default());
    // What is expected grows with the price itself.
    let grows = low.to_units() / best.price_of_work().to_units().max(0.01);
    let amount = (high - low).times(1.0 / grows.max(1.0)).max(Money::ZERO);
    let share = Percent::pct(100.0 * amount.to_units() / best.total().to_units().max(0.01));
    let longest = best.tasks.iter().max_by(|a, b| a.hours.mean.to_h().total_cmp(&b.hours.mean.to_h()));
    let shared =
        |id: &str| next.tasks.iter().find(|task| task.id == id).map_or(Hours::ZERO, |t| t.hours.mean);
    let slower = longest.and_then(|task| {
        let own = task.hours.mean - shared(&task.id);
        let more = amount.to_units()
            / (prices.hour(task.trade).to_units() * prices.labor_becomes() * own.to_h()).max(1e-9);
        let times = 1.0 + more * own.to_h() / task.hours.mean.to_h();
        (own.to_h() > 0.1 && more < 4.0).then(|| (task.name.clone(), times))
    });
    PriceMargin { amount, share, slower }
}

/// The nearest warranty with which another option would cost least.
fn other_warranty(
    inputs: &OptionInputs<'_>,
    options: &[RepairOption],
    yearly: &[YearlyShare],
    best: &RepairOption,
) -> Option<OtherWarranty> {
    let years = inputs.job.plan.warranty_years;
    let mut terms: Vec<u32> = TERMS.into_iter().filter(|term| *term != years).collect();
    terms.sort_by_key(|term| term.abs_diff(years));
    let cheaper = |term: u32| {
        let cost = |&(at, share): &YearlyShare| {
            (at, with_callbacks(inputs.job, options[at].price_of_work(), share, term))
        };
        let costs: Vec<(usize, Money)> = yearly.iter().map(cost).collect();
        let of_best = costs.iter().find(|(at, _)| options[*at].method == best.method)?.1;
        let (at, least) = costs.into_iter().min_by_key(|(_, cost)| *cost)?;
        (least < of_best - noise(inputs, &options[at], best)).then_some(options[at].method)
    };
    terms.into_iter().find_map(|term| {
        let method = cheaper(term)?;
        Some(OtherWarranty { years: term, longer: term > years, method })
    })
}
