//! The price and how it is made.

use serde_json::{Value, json};

use super::buying;
use crate::assess::{Assessment, RepairOption};
use crate::measure::{Hours, Length, Money, Percent};
use crate::repair::{Charging, Price, Trade};
use crate::words::{Arg, Say as _, Words, price, say, work};

/// The shares of simulated jobs for which the sheet says what their cost stays under.
const SHARES: [f64; 4] = [0.1, 0.5, 0.8, 0.9];

/// At most this many causes of the cost's spread are named.
const DRIVERS: usize = 5;

/// The chosen option with its price, hours, days and materials; `None` where it cannot be done.
pub(super) fn priced(assessment: &Assessment, option: &RepairOption, words: &Words) -> Option<Value> {
    let price = option.price.as_ref()?;
    let mut all = super::object(amounts(price, assessment.job.plan.prices.charging, words));
    all.extend(super::object(cost(assessment, option, words)));
    all.extend(super::object(work(assessment, option, words)));
    let open = assessment.payers_open().then(|| say!(words, "paper-payers-open"));
    all.insert("payers_open".to_owned(), open.into());
    all.insert("name".to_owned(), words.called(&option.name).into());
    all.insert("assumed".to_owned(), price::taken_for_granted(assessment, option, words).into());
    Some(Value::Object(all))
}

/// The amounts, and who pays them.
fn amounts(price: &Price, charging: Charging, words: &Words) -> Value {
    let figures = words.figures();
    let money = |amount: Money| figures.money(amount);
    let [contractor, supplier, owner] =
        [price.contractor, price.supplier, price.owner].map(|part| share(part, price.total));
    let shown = |share: Percent| figures.percent(share.to_pct(), 1);
    // Templates from before compare with this form.
    let spaced = |share: Percent| format!("{} %", figures.number(share.to_pct(), 1));
    let deposit = (price.deposit > Money::ZERO).then_some(price.deposit);
    json!({
        "total": money(price.total),
        "low": money(price.spread.low),
        "high": money(price.spread.high),
        "range": say!(
            words,
            "paper-price-range",
            low = Arg::RoughMoney(price.spread.low),
            high = Arg::RoughMoney(price.spread.high)
        ),
        "owner": money(price.owner),
        "contractor": money(price.contractor),
        "supplier": money(price.supplier),
        "contractor_share": shown(contractor),
        "supplier_share": shown(supplier),
        "owner_share": shown(owner),
        "contractor_pays": price.contractor != Money::ZERO,
        "supplier_pays": price.supplier != Money::ZERO,
        "contractor_pct": spaced(contractor),
        "supplier_pct": spaced(supplier),
        "owner_pct": spaced(owner),
        "deposit": deposit.map(money),
        "deposit_note": deposit.map(|amount| say!(words, "paper-deposit", amount = amount)),
        "margin": figures.percent(price.margin.to_pct(), 1),
        "margin_note": price::margin(price, charging, words),
        "build_up": price.lines.iter().map(|line| json!([
            price::line_name(line.line, charging, words), line.basis.say(words), money(line.amount),
        ])).collect::<Vec<_>>(),
    })
}

/// A part of the price as a share of it.
fn share(part: Money, total: Money) -> Percent {
    let share = if total > Money::ZERO { 100.0 * part.to_units() / total.to_units() } else { 0.0 };
    Percent::pct((share * 10.0).round() / 10.0)
}

/// What labor and materials may end up costing.
fn cost(assessment: &Assessment, option: &RepairOption, words: &Words) -> Value {
    let figures = words.figures();
    let money = |amount: Money| figures.money(amount);
    let cost = &option.cost;
    let chances = SHARES.map(|share| (figures.percent(100.0 * share, 0), money(cost.at(share))));
    let note = say!(
        words,
        "paper-cost-chances",
        trials = assessment.catalog.trials,
        half = cost.at(0.5),
        eight = cost.at(0.8),
        nine = cost.at(0.9)
    );
    let drivers =
        cost.drivers.iter().take(DRIVERS).map(|(driver, swing)| json!([driver.say(words), money(*swing)]));
    json!({ "cost": chances, "cost_note": note, "swings": drivers.collect::<Vec<_>>() })
}

/// Hours, days, tasks, materials and boards.
fn work(assessment: &Assessment, option: &RepairOption, words: &Words) -> Value {
    let figures = words.figures();
    let plan = &assessment.job.plan;
    let (schedule, money) = (&option.schedule, |amount: Money| figures.money(amount));
    let hours = |hours: Hours| figures.number(hours.to_h(), 1);
    // Not all of the crew may be needed on any day.
    let people = schedule.days.iter().map(|day| day.people).max().unwrap_or(plan.crew);
    let labor = say!(
        words,
        "paper-labor",
        hours = Arg::Number(option.hours.to_h(), 1),
        crew = people,
        days = schedule.crew_days,
        closed = schedule.room_out
    );
    let crew =
        say!(words, "paper-crew", crew = people, days = schedule.crew_days, closed = schedule.room_out);
    let crew = match schedule.needs_helper(plan.crew) {
        true => crew + " " + &words.text("price-helper"),
        false => crew,
    };
    let days = 1..=schedule.calendar_days.clamp(1, 31);
    json!({
        "labour_rate": money(plan.prices.hour(Trade::Painter)),
        "hours": hours(option.hours),
        "labor": labor,
        "crew_line": crew,
        "crew": plan.crew,
        "crew_days": schedule.crew_days,
        "calendar_days": schedule.calendar_days,
        "room_out": schedule.room_out,
        "cutting": cutting(assessment, option, words),
        "tasks": option.tasks.iter().filter(|task| task.hours.mean > Hours::ZERO).map(|task| json!([
            work::name(task, words), figures.number(task.batches, 1), figures.number(task.minutes.mean(), 1),
            hours(task.hours.mean), work::basis(task, words),
        ])).collect::<Vec<_>>(),
        "materials": option.materials.iter().enumerate().map(|(at, line)| json!([
            line.say(words), buying::needed(&option.materials, at, words), line.pieces + line.on_hand,
            money(line.price), money(line.amount),
        ])).collect::<Vec<_>>(),
        "schedule": schedule.bars.iter().map(|bar| json!({
            "name": bar.step.say(words), "start": bar.start, "end": bar.end, "waiting": bar.is_wait(),
        })).collect::<Vec<_>>(),
        "days": days.map(|day| say!(words, "paper-day", day = day)).collect::<Vec<_>>(),
    })
}

/// How the boards are cut: stock length, boards, pieces, what is left over of each.
fn cutting(assessment: &Assessment, option: &RepairOption, words: &Words) -> Vec<Value> {
    let figures = words.figures();
    let stock = &assessment.job.plan.stock.lengths;
    let patterns = option.cutting.iter().flat_map(|list| &list.patterns);
    patterns
        .map(|pattern| {
            let pieces = pattern
                .pieces
                .iter()
                .map(|&(length, count)| say!(words, "paper-cut", count = count, length = Length::m(length)));
            json!([
                stock.get(pattern.stock).map_or_else(String::new, |length| figures.stock(*length)),
                pattern.times,
                pieces.collect::<Vec<_>>().join(", "),
                figures.length(Length::m(pattern.offcut)),
            ])
        })
        .collect()
}
