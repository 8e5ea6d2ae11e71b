//! What is wrong with a job's entries. Geometry is judged by [`crate::surface::faults`]; here are
//! the entries themselves, and whether they fit together.

use std::collections::HashSet;

use jiff::civil::Date;

use super::document::Job;
use super::own_shelf::OwnShelf;
use super::problem::{Place, Problem, Severity};
use super::shelf::Shelf;
use super::usable::{WIDEST_GAP, is_of_a_room};
use crate::air::{HouseModel, IndoorAir};
use crate::measure::{Humidity, Length, Minutes, Moisture, Percent, Temperature, show_date};
use crate::repair::{Plan, Step};
use crate::surface::{Part, SurfaceLayout, faults};
use crate::survey::{GapReading, MoistureReading};

/// Lists everything that is wrong with `job`, whose surfaces are laid out as `layouts`.
pub fn check(job: &Job, shelf: &Shelf, layouts: &[SurfaceLayout]) -> Vec<Problem> {
    let mut found = Findings(Vec::new());
    surfaces(job, shelf, layouts, &mut found);
    gaps(job, layouts, &mut found);
    contradictions(job, &mut found);
    moistures(job, &mut found);
    rooms(job, &mut found);
    air(job, shelf, &mut found);
    dates(job, &mut found);
    plan(job, shelf, layouts, &mut found);
    for field in &job.unknown {
        let name = field.split(':').next().unwrap_or_default().trim();
        let what = format!("“{name}” in the file is not known to this program");
        found.note(Place::Job("file"), what, "It is kept as it stands; a newer Gapwright may know it");
    }
    found.0
}

struct Findings(Vec<Problem>);

impl Findings {
    fn error(&mut self, place: Place, what: impl Into<String>, fix: impl Into<String>) {
        self.0.push(Problem::new(Severity::Error, place, what, fix));
    }

    fn warning(&mut self, place: Place, what: impl Into<String>, fix: impl Into<String>) {
        self.0.push(Problem::new(Severity::Warning, place, what, fix));
    }

    fn note(&mut self, place: Place, what: impl Into<String>, fix: impl Into<String>) {
        self.0.push(Problem::new(Severity::Note, place, what, fix));
    }
}

fn surfaces(job: &Job, shelf: &Shelf, layouts: &[SurfaceLayout], found: &mut Findings) {
    let mut names = HashSet::new();
    for (index, (surface, laid)) in job.surfaces.iter().zip(layouts).enumerate() {
        if !names.insert(&surface.name) {
            found.error(
                Place::Outline(index),
                format!("There are two surfaces called “{}”", surface.name),
                "Rename one, so that readings know which they belong to",
            );
        }
        for fault in faults(surface, laid, job.units) {
            let place = match fault.part {
                Part::Outline => Place::Outline(index),
                Part::Opening(part) => Place::Opening(index, part),
                Part::Divider(part) => Place::Divider(index, part),
                Part::Section(part) => Place::Section(index, part),
            };
            let severity = if fault.fatal { Severity::Error } else { Severity::Warning };
            found.0.push(Problem::new(severity, place, fault.what, fault.fix));
        }
        if surface.sections.is_empty() {
            found.warning(
                Place::Outline(index),
                format!("“{}” has no boards", surface.name),
                "Choose a pattern for it",
            );
        }
        let mut sections = HashSet::new();
        for (number, section) in surface.sections.iter().enumerate() {
            let place = || Place::Section(index, number);
            if !sections.insert(&section.name) {
                found.error(
                    place(),
                    format!("There are two sections called “{}”", section.name),
                    "Rename one, so that readings know which they belong to",
                );
            }
            if shelf.species(&section.board.species).is_none() {
                found.error(
                    place(),
                    format!("Species “{}” is not on the shelf", section.board.species),
                    "Choose one from the list",
                );
            }
        }
    }
}

fn gaps(job: &Job, layouts: &[SurfaceLayout], found: &mut Findings) {
    for (index, gap) in job.survey.gaps.iter().enumerate() {
        let place = || Place::Gap(index);
        let surface = job.surfaces.iter().position(|surface| surface.name == gap.surface);
        let joint = surface.and_then(|on| {
            layouts[on].joints.iter().find(|joint| joint.label == gap.joint).map(|joint| (on, joint))
        });
        let shown = gap.width.show(job.units);
        if gap.width < Length::ZERO {
            found.error(
                place(),
                format!("A gap of {shown} is less than nothing"),
                "Type 0 for a closed joint",
            );
        } else if gap.width > WIDEST_GAP {
            found.error(
                place(),
                format!("A gap of {shown} is wider than 2 in"),
                "Check the figure and its unit",
            );
        }
        match joint {
            None => found.error(
                place(),
                format!("Joint “{}” of “{}” does not exist in this layout", gap.joint, gap.surface),
                "Pick the joint again on the drawing, or take the reading out; it is kept until then",
            ),
            Some((on, joint)) => {
                let tongue = job.surfaces[on].sections[joint.section].board.tongue();
                if let Some(tongue) = tongue.filter(|tongue| gap.width >= *tongue * 0.9) {
                    found.warning(
                        place(),
                        format!(
                            "A gap of {shown} is about as wide as the tongue is long ({})",
                            tongue.show(job.units)
                        ),
                        "The boards may have come apart: this joint wants more than sealant",
                    );
                }
            }
        }
        reading_date(job, gap.date, place(), found);
    }
}

/// Readings of the same thing that cannot both be right.
fn contradictions(job: &Job, found: &mut Findings) {
    let usable = |gap: &GapReading| (Length::ZERO..=WIDEST_GAP).contains(&gap.width);
    for (index, gap) in job.survey.gaps.iter().enumerate().filter(|(_, gap)| usable(gap)) {
        let same = |other: &&GapReading| other.surface == gap.surface && other.joint == gap.joint;
        let before = job.survey.gaps[..index].iter().filter(|other| usable(other)).find(same);
        let Some(before) = before.filter(|other| (other.width - gap.width).to_mm().abs() > 1.6) else {
            continue;
        };
        found.warning(
            Place::Gap(index),
            format!(
                "Joint {} was measured as {} and as {}",
                gap.joint,
                before.width.show(job.units),
                gap.width.show(job.units)
            ),
            "The mean of both counts; measure again and take out the wrong one",
        );
    }
    for (index, reading) in job.survey.moistures.iter().enumerate() {
        let Some(moisture) = reading.reading else { continue };
        let same = |other: &&MoistureReading| {
            other.surface == reading.surface
                && other.section == reading.section
                && other.board == reading.board
        };
        let before = job.survey.moistures[..index].iter().filter(same).find_map(|other| other.reading);
        let Some(before) = before.filter(|other| (*other - moisture).to_pct().abs() > 4.0) else { continue };
        found.warning(
            Place::Moisture(index),
            format!("The same board was read as {} and as {}", before.show(), moisture.show()),
            "The mean of both counts; read again, with the pins along the grain",
        );
    }
    if !(Percent::pct(1.0)..=Percent::pct(100.0)).contains(&job.survey.precision) {
        found.error(
            Place::Job("precision"),
            format!("A precision of {} % is not between 1 and 100 %", job.survey.precision.to_pct()),
            "Type how well the opening of the joints is to be known, such as 15",
        );
    }
}

fn moistures(job: &Job, found: &mut Findings) {
    for (index, reading) in job.survey.moistures.iter().enumerate() {
        let place = || Place::Moisture(index);
        match reading.reading.map(Moisture::to_pct) {
            None => found.note(
                place(),
                "No figure yet",
                "Type what the meter shows; until then it does not count",
            ),
            Some(pct) if !(0.0..=100.0).contains(&pct) => found.error(
                place(),
                format!("A meter reading of {pct} % cannot be"),
                "Type what the meter shows, 6 to 30 % as a rule",
            ),
            Some(pct) if !(6.0..=30.0).contains(&pct) => found.warning(
                place(),
                format!("A pin meter is not to be trusted at {pct} %"),
                "Trust it between 6 and 30 %; weigh and dry a piece if it matters",
            ),
            Some(_) => {}
        }
        temperature(reading.wood, place(), found);
        let known = job.surfaces.iter().any(|surface| {
            surface.name == reading.surface && surface.sections.iter().any(|s| s.name == reading.section)
        });
        if !known {
            found.error(
                place(),
                format!("Section “{}” of “{}” does not exist", reading.section, reading.surface),
                "Choose the section again; until then the reading counts for the whole job",
            );
        }
        reading_date(job, reading.date, place(), found);
    }
}

fn rooms(job: &Job, found: &mut Findings) {
    for (index, reading) in job.survey.rooms.iter().enumerate() {
        temperature(reading.temperature, Place::Room(index), found);
        humidity(reading.humidity, Place::Room(index), found);
        reading_date(job, reading.date, Place::Room(index), found);
    }
}

fn temperature(t: Temperature, place: Place, found: &mut Findings) {
    if !is_of_a_room(t) {
        let what = format!(
            "{} °C ({} °F) is no temperature of a room",
            t.to_celsius().round(),
            t.to_fahrenheit().round()
        );
        found.error(place, what, "Check the figure and its unit");
    }
}

fn humidity(rh: Humidity, place: Place, found: &mut Findings) {
    if !(0.0..=1.0).contains(&rh.to_fraction()) {
        found.error(
            place,
            format!("A relative humidity of {} is not between 0 and 100 %", rh.show()),
            "Type what the hygrometer shows, such as 42",
        );
    }
}

fn reading_date(job: &Job, date: Option<Date>, place: Place, found: &mut Findings) {
    let Some(date) = date else { return };
    if date > job.visited {
        found.error(
            place,
            format!("{} is after the visit on {}", show_date(date), show_date(job.visited)),
            "Correct the date, or the date of the visit",
        );
    } else if job.installed.is_some_and(|installed| date < installed) {
        found.error(
            place,
            format!("{} is before the boards went up", show_date(date)),
            "Correct the date, or the date of the install",
        );
    } else if date.until(job.visited).is_ok_and(|span| span.get_days() > 45) {
        found.note(
            place,
            format!("It was taken on {}, some time before the visit", show_date(date)),
            "It counts as if taken at the visit; measure again if you can",
        );
    }
}

fn air(job: &Job, shelf: &Shelf, found: &mut Findings) {
    match &job.air {
        IndoorAir::Monthly(months) => {
            for month in months {
                temperature(month.temperature, Place::Air("months"), found);
                humidity(month.humidity, Place::Air("months"), found);
            }
        }
        IndoorAir::FromClimate { station, .. } => {
            if !shelf.stations.iter().any(|known| known.name == *station) {
                found.error(
                    Place::Air("place"),
                    format!("There is no climate for “{station}”"),
                    "Choose the place nearest to it from the list, or type twelve months",
                );
            }
        }
        IndoorAir::FromWeather { .. } => {}
    }
    if let Some(house) = job.air.house() {
        self::house(job, house, found);
    }
}

fn house(job: &Job, house: &HouseModel, found: &mut Findings) {
    temperature(house.heat_to, Place::Air("heating"), found);
    temperature(house.cool_to, Place::Air("cooling"), found);
    if house.cool_to < house.heat_to {
        found.error(
            Place::Air("cooling"),
            format!(
                "The house is cooled to {} and heated to {}: that fights itself",
                house.cool_to.show(job.units),
                house.heat_to.show(job.units)
            ),
            "Cool to a higher temperature than you heat to",
        );
    }
    if !(0.0..=20.0).contains(&house.moisture_load) {
        found.error(
            Place::Air("moisture load"),
            format!("A moisture load of {} g/m³ is not between 0 and 20", house.moisture_load),
            "2 to 4 is usual, 6 a damp house",
        );
    }
    for limit in [house.dehumidified_to, house.humidified_to].into_iter().flatten() {
        humidity(limit, Place::Air("humidity limits"), found);
    }
}

fn dates(job: &Job, found: &mut Findings) {
    if let Some(installed) = job.installed
        && installed > job.visited
    {
        found.error(
            Place::Job("install date"),
            format!(
                "The boards went up on {}, after the visit on {}",
                show_date(installed),
                show_date(job.visited)
            ),
            "Correct one of the two",
        );
    }
    if let Some(seal) = job.plan.seal_on
        && seal < job.visited
    {
        found.error(
            Place::Plan("sealing date"),
            format!("{} is before the visit on {}", show_date(seal), show_date(job.visited)),
            "Choose a later day, or leave it to the best weeks",
        );
    }
    if let Some(seal) = job.plan.seal_on
        && seal > super::usable::last_sealing(job.visited)
    {
        found.error(
            Place::Plan("sealing date"),
            format!(
                "{} is more than two years after the visit: nothing is worked out that far",
                show_date(seal)
            ),
            "Choose an earlier day, or leave it to the best weeks",
        );
    }
    if let Some(year) = job.built
        && !(1600..=job.visited.year()).contains(&year)
    {
        found.error(
            Place::Job("year built"),
            format!("A house built in {year} cannot be"),
            "Type the year, or leave it empty",
        );
    }
}

fn plan(job: &Job, shelf: &Shelf, layouts: &[SurfaceLayout], found: &mut Findings) {
    let plan = &job.plan;
    let mut range = |field: &'static str, value: f64, low: f64, high: f64, unit: &str| {
        if !(low..=high).contains(&value) {
            found.error(
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
    range("labour rate", plan.prices.labour.to_units(), 0.0, 10_000.0, "");
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
            found.error(
                Place::Plan(field),
                format!("{} is not above nothing and at most {most}", length.show(job.units)),
                "Correct the figure",
            );
        }
    }
    payers(plan, found);
    stock(job, layouts, found);
    for (field, name, known) in [
        ("sealant", &plan.sealant, shelf.sealant(&plan.sealant).is_some()),
        ("primer", &plan.primer, shelf.paint(&plan.primer).is_some()),
        ("paint", &plan.paint, shelf.paint(&plan.paint).is_some()),
    ] {
        if !known {
            found.error(
                Place::Plan(field),
                format!("“{name}” is not on the shelf"),
                "Choose one from the list",
            );
        }
    }
    own_figures(job, found);
    shelf_figures(job, shelf, found);
    trial(job, found);
}

fn payers(plan: &Plan, found: &mut Findings) {
    let lines = plan.payers.lines.iter().map(|(line, shares)| (line.words(), *shares));
    for (of, shares) in std::iter::once(("the price", plan.payers.overall())).chain(lines) {
        let both = shares.contractor + shares.supplier;
        let least = shares.contractor.min(shares.supplier);
        if least < Percent::ZERO || both > Percent::pct(100.0) {
            found.error(
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
fn stock(job: &Job, layouts: &[SurfaceLayout], found: &mut Findings) {
    let stock = &job.plan.stock;
    let usable = super::usable::SHORTEST_STOCK..=super::usable::LONGEST_STOCK;
    for length in stock.lengths.iter().filter(|length| !usable.contains(length)) {
        found.error(
            Place::Plan("stock lengths"),
            format!("Boards of {} are not sold", length.show(job.units)),
            format!(
                "Stock lengths run from {} to {}",
                usable.start().show(job.units),
                usable.end().show(job.units)
            ),
        );
    }
    let boards = layouts.iter().flat_map(|laid| &laid.boards);
    let longest_board = boards.map(|board| board.run).fold(Length::ZERO, Length::max);
    let longest =
        stock.lengths.iter().copied().filter(|l| usable.contains(l)).fold(Length::ZERO, Length::max);
    let good = longest * (1.0 - job.plan.board_waste.to_fraction()) - stock.end_trim;
    if !stock.lengths.is_empty() && longest_board > good + Length::mm(1.0) {
        found.warning(
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
        found.error(
            Place::Plan("stock lengths"),
            "No stock length is given",
            "Type the lengths boards are sold in; until then nothing that needs new boards can be worked out",
        );
    }
}

fn own_figures(job: &Job, found: &mut Findings) {
    for (id, minutes) in &job.plan.own_minutes {
        if !minutes.is_in_order() || minutes.likely <= 0.0 {
            found.error(
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
            found.error(
                Place::Plan("own prices"),
                format!("Your price for “{id}” is less than nothing"),
                "Type 0 if it costs nothing",
            );
        }
    }
}

/// The shelf's figures that the job goes by: those that cannot be, and prices older than a year.
fn shelf_figures(job: &Job, shelf: &Shelf, found: &mut Findings) {
    for (entry, fault) in job.shelf.iter().flat_map(OwnShelf::faults) {
        found.error(
            Place::Plan("shelf"),
            format!("“{entry}”: {fault}"),
            "Correct it under Shelf; until then the program's own figure is used",
        );
    }
    for method in shelf.methods.iter().filter(|method| method.id.is_own()) {
        let known = |id: &String| shelf.tasks.iter().any(|task| task.id == *id);
        let unknown = method.steps.iter().find_map(|step| match step {
            Step::Do(id) | Step::Coats(id) if !known(id) => Some(id),
            _ => None,
        });
        if let Some(id) = unknown {
            found.error(
                Place::Plan("shelf"),
                format!("“{}” has a step “{id}”, which is no task of the shelf", method.name),
                "Leave the step out, or add such a task; until then it is passed over",
            );
        }
    }
    let old = |priced: Option<Date>| priced.is_some_and(|day| (job.visited - day).get_days() > 366);
    let method = shelf.method(job.plan.chosen);
    let bought = |id: &String| method.is_some_and(|method| method.materials.contains(id));
    let materials =
        shelf.materials.iter().filter(|m| bought(&m.id) && !job.plan.own_prices.contains_key(&m.id));
    let paints = shelf.paints.iter().filter(|p| p.name == job.plan.paint || p.name == job.plan.primer);
    let sealants = shelf.sealants.iter().filter(|s| s.name == job.plan.sealant);
    let names: Vec<&str> = materials
        .filter(|m| old(m.priced))
        .map(|m| m.name.as_str())
        .chain(paints.filter(|p| old(p.priced)).map(|p| p.name.as_str()))
        .chain(sealants.filter(|s| old(s.priced)).map(|s| s.name.as_str()))
        .collect();
    if !names.is_empty() {
        found.note(
            Place::Plan("prices"),
            format!("Older than a year on the day of the visit: the prices of {}", names.join(", ")),
            "Ask for them again and enter them under Shelf",
        );
    }
}

fn trial(job: &Job, found: &mut Findings) {
    let Some(trial) = &job.plan.trial else { return };
    match trial.minutes.map(Minutes::to_minutes) {
        None => found.note(
            Place::Plan("timed section"),
            "The minutes are still to be typed",
            "Until then the start value is used",
        ),
        Some(minutes) if !(0.1..1e5).contains(&minutes) => found.error(
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
        found.error(
            Place::Plan("timed section"),
            format!("Section “{}” of “{}” does not exist", trial.section, trial.surface),
            "Choose the section that was timed; until then the start value is used",
        );
    }
}
