//! The words and figures that templates place. Keys are documented at the top of each template.

use serde_json::{Value, json};

use super::{Words, site};
use crate::assess::{Assessment, RepairOption, date_after};
use crate::job::{Job, Logo, Severity};
use crate::measure::{Area, Length, Money, Percent, Units, Volume, show_date, show_number};
use crate::repair::{MaterialLine, Need};
use crate::words::causes::chance_as_odds;
use crate::words::{self, Say as _, answer};

/// Everything a template can show.
pub(super) fn data(assessment: &Assessment) -> Value {
    let job = &*assessment.job;
    let chosen = assessment.chosen();
    let words = Words::new(assessment);
    let said = &words::Words::of_job(job);
    json!({
        "paper": match job.units { Units::Inches => "us-letter", Units::Millimeters => "a4" },
        "title": job.title,
        "owner": job.owner,
        "address": job.address,
        "contractor": {
            "name": job.contractor.name,
            "details": job.contractor.details.lines().collect::<Vec<_>>(),
            "signs": job.contractor.signs,
        },
        "date": show_date(job.visited),
        "answer": answer::headline(assessment, said),
        "cause": answer::cause(assessment, said),
        "saw": words.saw,
        "why": words.why,
        "moves": words.moves,
        "plan": words.plan,
        "asks": words.asks,
        "more": words.more,
        "logo": job.contractor.logo.as_ref().map(Logo::file_name),
        "warranty_years": job.plan.warranty_years,
        "cautions": assessment.cautions.iter().map(|c| json!({"title": c.title, "text": c.text, "source": c.source})).collect::<Vec<_>>(),
        "options": weighed(assessment).into_iter().map(|option| compared(job, option, said)).collect::<Vec<_>>(),
        "chosen": chosen.map(|option| priced(job, option, said)),
        "surfaces": job.surfaces.iter().enumerate().map(|(index, surface)| json!({
            "name": surface.name,
            "figure": format!("surface-{index}.svg"),
        })).collect::<Vec<_>>(),
        "groups": site::groups(assessment),
        "sealant": site::sealant(assessment),
        "seals": assessment.bead.is_some(),
        "sealed_on": show_date(date_after(job, assessment.seal_day)),
        "steps": chosen.map_or_else(Vec::new, |option| site::steps(option, said)),
        "shopping": chosen.map_or_else(Vec::new, |option| site::shopping(assessment, option, said)),
        "readings": site::readings(assessment, said),
        "causes": site::odds(assessment, said),
        "again": site::again(assessment),
        "has_year": !assessment.sections.is_empty(),
        "problems": assessment.problems.iter().filter(|p| p.severity != Severity::Note)
            .map(|p| format!("{}: {}", p.place(job, said), p.what(said))).collect::<Vec<_>>(),
        "missing": assessment.answer.missing.iter().map(|entry| answer::missing(assessment, *entry, said)).collect::<Vec<_>>(),
    })
}

/// The chosen way and the three others that cost least with callbacks: more would not be weighed.
pub fn weighed<'a>(assessment: &'a Assessment) -> Vec<&'a RepairOption> {
    let job = &*assessment.job;
    let chosen = assessment.chosen();
    let mut others: Vec<&RepairOption> = assessment
        .options
        .iter()
        .filter(|option| option.method != job.plan.chosen && option.expected.is_some())
        .collect();
    others.sort_by_key(|option| option.expected);
    chosen.into_iter().chain(others.into_iter().take(3)).collect()
}

fn compared(job: &Job, option: &RepairOption, said: &words::Words) -> Value {
    json!({
        "name": option.name,
        "chosen": option.method == job.plan.chosen,
        "price": option.price.total.show(&job.plan.prices.currency),
        "crew_days": option.schedule.crew_days,
        "calendar_days": option.schedule.calendar_days,
        "look": option.look,
        "again": option.callback.as_ref().map_or_else(|| "–".to_owned(), |risk| chance_as_odds(risk.chance, said)),
    })
}

/// A part of the price as a share of it, whole per cents where it is one.
fn share_of(part: Money, total: Money) -> String {
    let share = if total > Money::ZERO { 100.0 * part.to_units() / total.to_units() } else { 0.0 };
    Percent::pct((share * 10.0).round() / 10.0).show()
}

fn priced(job: &Job, option: &RepairOption, said: &words::Words) -> Value {
    let (plan, price) = (&job.plan, &option.price);
    let money = |amount: Money| amount.show(&plan.prices.currency);
    let cost = [10.0, 50.0, 80.0, 90.0]
        .map(|share| (Percent::pct(share).show(), money(option.cost.at(share / 100.0))));
    json!({
        "name": option.name,
        "total": money(price.total),
        "low": money(price.spread.low),
        "high": money(price.spread.high),
        "owner": money(price.owner),
        "contractor": money(price.contractor),
        "supplier": money(price.supplier),
        "contractor_pct": share_of(price.contractor, price.total),
        "supplier_pct": share_of(price.supplier, price.total),
        "owner_pct": share_of(price.owner, price.total),
        "labour_rate": money(plan.prices.hour()),
        "hours": show_number(option.hours.to_h(), 1),
        "crew": plan.crew,
        "crew_days": option.schedule.crew_days,
        "calendar_days": option.schedule.calendar_days,
        "room_out": option.schedule.room_out,
        "deposit": (price.deposit > Money::ZERO).then(|| money(price.deposit)),
        "margin": price.margin.show(),
        "build_up": price.lines.iter().map(|line| json!([
            line.line.say(said), line.basis.say(said), money(line.amount),
        ])).collect::<Vec<_>>(),
        "cost": cost,
        "swings": option.cost.drivers.iter().take(5).map(|(driver, swing)| json!([driver.say(said), money(*swing)])).collect::<Vec<_>>(),
        "cutting": option.cutting.iter().flat_map(|list| &list.patterns).map(|cut| json!([
            plan.stock.lengths.get(cut.stock).map_or_else(String::new, |length| length.show_run(job.units)),
            cut.times,
            cut.pieces.iter().map(|&(length, count)| format!("{count} × {}", Length::m(length).show(job.units))).collect::<Vec<_>>().join(", "),
            Length::m(cut.offcut).show(job.units),
        ])).collect::<Vec<_>>(),
        "tasks": option.tasks.iter().map(|task| json!([
            task.name, show_number(task.batches, 1), show_number(task.minutes.mean(), 0),
            show_number(task.hours.mean.to_h(), 1), task.basis.say(said),
        ])).collect::<Vec<_>>(),
        "materials": option.materials.iter().enumerate().map(|(at, line)| json!([
            line.say(said), needed(&option.materials, at, job.units), line.pieces, money(line.price),
            money(line.amount),
        ])).collect::<Vec<_>>(),
        "schedule": option.schedule.bars.iter().map(|bar| json!({
            "name": bar.step.say(said), "start": bar.start, "end": bar.end, "waiting": bar.is_wait(),
        })).collect::<Vec<_>>(),
    })
}

/// How much of a line is needed. Cans of several sizes share what is needed: it is said once.
pub(crate) fn needed(lines: &[MaterialLine], at: usize, units: Units) -> String {
    let line = &lines[at];
    let before = at.checked_sub(1).map(|before| &lines[before]);
    match before.is_some_and(|before| before.name == line.name && before.need == line.need) {
        true => "with the above".to_owned(),
        false => need(line.need, units),
    }
}

/// An amount that is needed, in the job's units.
fn need(need: Need, units: Units) -> String {
    let cubic_feet = |volume: Volume| format!("{} ft³", show_number(volume.to_m3() / 0.028_316_846_592, 0));
    match need {
        Need::Volume(volume) if volume.to_litres() >= 100.0 => match units {
            Units::Inches => cubic_feet(volume),
            Units::Millimeters => format!("{} m³", show_number(volume.to_m3(), 2)),
        },
        Need::Volume(volume) => volume.show(units),
        Need::Area(area) => Area::show(area, units),
        Need::Run(run) => run.show_run(units),
        Need::Count(number) => show_number(number, 1),
    }
}
