//! What is wrong with the plan: figures out of range, what is not on the shelf, stock and payers.

use jiff::civil::Date;

use super::Problems;
use crate::job::catalog::Catalog;
use crate::job::document::Job;
use crate::job::price_book::PriceBook;
use crate::job::problem::Place;
use crate::job::sanitized;
use crate::measure::{Length, Minutes, Percent};
use crate::repair::{Plan, Step};
use crate::surface::SurfaceLayout;

pub(super) fn plan(job: &Job, catalog: &Catalog, layouts: &[SurfaceLayout], problems: &mut Problems) {
    let plan = &job.plan;
    let mut range = |field: &'static str, value: f64, low: f64, high: f64, unit: &str| {
        if !(low..=high).contains(&value) {
            problems.error(
                Place::Plan(field),
                format!("{value}{unit} is not between {low} and {high}{unit}"),
                format!("Correct the figure; until then {}{unit} is reckoned with", value.clamp(low, high)),
            );
        }
    };
    let pct = |percent: Percent| percent.to_pct();
    range("moisture at delivery", plan.delivered_at.to_pct(), 2.0, 60.0, " %");
    range("discount", pct(plan.discount), 0.0, 50.0, " %");
    range("callback", pct(plan.callback.open_share), 0.0, 100.0, " %");
    range("crew", plan.crew.into(), 1.0, 50.0, "");
    range("working day", plan.day.to_h(), 0.5, 16.0, " h");
    range("coats", plan.coats.into(), 0.0, 10.0, "");
    range("acclimation", plan.acclimation_days.into(), 0.0, 365.0, " days");
    range("warranty", plan.warranty_years.into(), 0.0, 50.0, " years");
    range("labour rate", plan.prices.labor.to_units(), 0.0, 10_000.0, "");
    range("overhead", pct(plan.prices.overhead), 0.0, 200.0, " %");
    range("profit", pct(plan.prices.profit), 0.0, 200.0, " %");
    range("tax", pct(plan.prices.tax), 0.0, 50.0, " %");
    range("board waste", pct(plan.board_waste), 0.0, 90.0, " %");
    range("burden", pct(plan.prices.burden), 0.0, 200.0, " %");
    range("equipment", plan.prices.equipment.to_units(), 0.0, 10_000.0, "");
    range("least charge", plan.prices.minimum.to_units(), 0.0, 10_000.0, "");
    range("deposit", pct(plan.prices.deposit), 0.0, 100.0, " %");
    if let Some(share) = plan.prices.contingency {
        range("contingency", pct(share), 50.0, 99.0, " %");
    }
    range("saw kerf", plan.stock.kerf.to_mm(), 0.0, 20.0, " mm");
    range("end trim", plan.stock.end_trim.to_mm(), 0.0, 500.0, " mm");
    range("V filled", pct(plan.bead.v_filled), 0.0, 100.0, " %");
    range("sealant waste", pct(plan.bead.waste), 0.0, 200.0, " %");
    for (field, length) in [
        ("bead depth", plan.bead.least_depth),
        ("open from", plan.open_from),
        ("narrowest gap", plan.narrowest),
        ("callback", plan.callback.widest),
        ("callback", plan.callback.seen_from),
    ] {
        if !(Length::mm(0.05)..=Length::mm(25.4)).contains(&length) {
            let most = Length::mm(25.4).show(job.units);
            problems.error(
                Place::Plan(field),
                format!("{} is not above nothing and at most {most}", length.show(job.units)),
                "Correct the figure",
            );
        }
    }
    payers(plan, problems);
    stock(job, layouts, problems);
    for (field, name, known) in [
        ("sealant", &plan.sealant, catalog.sealant(&plan.sealant).is_some()),
        ("primer", &plan.primer, catalog.paint(&plan.primer).is_some()),
        ("paint", &plan.paint, catalog.paint(&plan.paint).is_some()),
    ] {
        if !known {
            problems.error(
                Place::Plan(field),
                format!("“{name}” is not on the shelf"),
                "Choose one from the list",
            );
        }
    }
    own_figures(job, problems);
    catalog_figures(job, catalog, problems);
    trial(job, problems);
}

fn payers(plan: &Plan, problems: &mut Problems) {
    let lines = plan.payers.lines.iter().map(|(line, shares)| (line.key(), *shares));
    for (of, shares) in std::iter::once(("the price", plan.payers.overall())).chain(lines) {
        let both = shares.contractor + shares.supplier;
        let least = shares.contractor.min(shares.supplier);
        if least < Percent::ZERO || both > Percent::pct(100.0) {
            problems.error(
                Place::Plan("who pays"),
                format!(
                    "Of {of} the contractor bears {} and the supplier {}: together {}",
                    shares.contractor.show(),
                    shares.supplier.show(),
                    both.show()
                ),
                "Bring the two between 0 and 100 %; the owner bears the rest",
            );
        }
    }
}

/// Boards to buy must be long enough for the longest course.
fn stock(job: &Job, layouts: &[SurfaceLayout], problems: &mut Problems) {
    let stock = &job.plan.stock;
    let sanitized = sanitized::SHORTEST_STOCK..=sanitized::LONGEST_STOCK;
    for length in stock.lengths.iter().filter(|length| !sanitized.contains(length)) {
        problems.error(
            Place::Plan("stock lengths"),
            format!("Boards of {} are not sold", length.show(job.units)),
            format!(
                "Stock lengths run from {} to {}",
                sanitized.start().show(job.units),
                sanitized.end().show(job.units)
            ),
        );
    }
    let boards = layouts.iter().flat_map(|laid| &laid.boards);
    let longest_board = boards.map(|board| board.run).fold(Length::ZERO, Length::max);
    let longest =
        stock.lengths.iter().copied().filter(|l| sanitized.contains(l)).fold(Length::ZERO, Length::max);
    let good = longest * (1.0 - job.plan.board_waste.to_fraction()) - stock.end_trim;
    if !stock.lengths.is_empty() && longest_board > good + Length::mm(1.0) {
        problems.warning(
            Place::Plan("stock lengths"),
            format!(
                "The longest board is {}, and of the longest stock of {} no more than {} is good after ends and defects",
                longest_board.show(job.units),
                longest.show(job.units),
                good.show(job.units)
            ),
            "Add a longer stock length, or give the section a longest board; until then new boards cannot be worked out",
        );
    }
    if stock.lengths.is_empty() {
        problems.error(
            Place::Plan("stock lengths"),
            "No stock length is given",
            "Type the lengths boards are sold in; until then nothing that needs new boards can be worked out",
        );
    }
}

fn own_figures(job: &Job, problems: &mut Problems) {
    for (id, minutes) in &job.plan.own_minutes {
        if !minutes.is_in_order() || minutes.likely <= 0.0 {
            problems.error(
                Place::Plan("own minutes"),
                format!(
                    "Your minutes for “{id}” ({}, {}, {}) do not rise from least to most above 0",
                    minutes.low, minutes.likely, minutes.high
                ),
                "Put them in order; until then the shelf's are used",
            );
        }
    }
    for (id, price) in &job.plan.own_prices {
        if price.to_cents() < 0 {
            problems.error(
                Place::Plan("own prices"),
                format!("Your price for “{id}” is less than nothing"),
                "Type 0 if it costs nothing",
            );
        }
    }
}

/// The shelf's figures that the job goes by: those that cannot be, and prices older than a year.
fn catalog_figures(job: &Job, catalog: &Catalog, problems: &mut Problems) {
    for (entry, fault) in job.price_book.iter().flat_map(PriceBook::faults) {
        problems.error(
            Place::Plan("shelf"),
            format!("“{entry}”: {fault}"),
            "Correct it under Shelf; until then the program's own figure is used",
        );
    }
    for method in catalog.methods.iter().filter(|method| method.id.is_own()) {
        let known = |id: &String| catalog.tasks.iter().any(|task| task.id == *id);
        let unknown = method.steps.iter().find_map(|step| match step {
            Step::Do(id) | Step::Coats(id) if !known(id) => Some(id),
            _ => None,
        });
        if let Some(id) = unknown {
            problems.error(
                Place::Plan("shelf"),
                format!("“{}” has a step “{id}”, which is no task of the shelf", method.name),
                "Leave the step out, or add such a task; until then it is passed over",
            );
        }
    }
    let old = |priced: Option<Date>| priced.is_some_and(|day| (job.visited - day).get_days() > 366);
    let method = catalog.method(job.plan.chosen);
    let bought = |id: &String| method.is_some_and(|method| method.materials.contains(id));
    let materials =
        catalog.materials.iter().filter(|m| bought(&m.id) && !job.plan.own_prices.contains_key(&m.id));
    let paints = catalog.paints.iter().filter(|p| p.name == job.plan.paint || p.name == job.plan.primer);
    let sealants = catalog.sealants.iter().filter(|s| s.name == job.plan.sealant);
    let names: Vec<&str> = materials
        .filter(|m| old(m.priced))
        .map(|m| m.name.as_str())
        .chain(paints.filter(|p| old(p.priced)).map(|p| p.name.as_str()))
        .chain(sealants.filter(|s| old(s.priced)).map(|s| s.name.as_str()))
        .collect();
    if !names.is_empty() {
        problems.note(
            Place::Plan("prices"),
            format!("Older than a year on the day of the visit: the prices of {}", names.join(", ")),
            "Ask for them again and enter them under Shelf",
        );
    }
}

fn trial(job: &Job, problems: &mut Problems) {
    let Some(trial) = &job.plan.trial else { return };
    match trial.minutes.map(Minutes::to_minutes) {
        None => problems.note(
            Place::Plan("timed section"),
            "The minutes are still to be typed",
            "Until then the start value is used",
        ),
        Some(minutes) if !(0.1..1e5).contains(&minutes) => problems.error(
            Place::Plan("timed section"),
            format!("{minutes} minutes cannot be for a timed section"),
            "Type the minutes it took one person; until then the start value is used",
        ),
        Some(_) => {}
    }
    let known = job.surfaces.iter().any(|surface| {
        surface.name == trial.surface && surface.sections.iter().any(|s| s.name == trial.section)
    });
    if !known {
        problems.error(
            Place::Plan("timed section"),
            format!("Section “{}” of “{}” does not exist", trial.section, trial.surface),
            "Choose the section that was timed; until then the start value is used",
        );
    }
}
