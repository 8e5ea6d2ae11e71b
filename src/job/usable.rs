//! The job as it is reckoned with: what cannot be is left out or held to what can.
//!
//! [`super::check`] tells the user about every such value; the document itself keeps what was
//! entered. Lists keep their order and surfaces their indices, so that results fit the document.

use jiff::ToSpan as _;
use jiff::civil::Date;

use super::document::Job;
use crate::air::IndoorAir;
use crate::measure::{Angle, Hours, Humidity, Length, Minutes, Moisture, Money, Percent, Temperature};
use crate::repair::{Plan, Shares};
use crate::surface::{Point, Profile, Surface};

/// Widest gap that is taken for a joint's.
pub(super) const WIDEST_GAP: Length = Length::inches(2.0);
/// Farthest corner of any room.
const FARTHEST: Length = Length::m(1000.0);

/// A copy of `job` in which every value can be.
pub fn usable(job: &Job) -> Job {
    let mut job = job.clone();
    job.survey.gaps.retain(|gap| (Length::ZERO..=WIDEST_GAP).contains(&gap.width));
    for visit in &mut job.later {
        visit.gaps.retain(|gap| gap.width.is_none_or(|width| (Length::ZERO..=WIDEST_GAP).contains(&width)));
    }
    job.done.hours.retain(|_, hours| (0.0..=100_000.0).contains(&hours.to_h()));
    for reading in &mut job.survey.moistures {
        let possible = |m: &Moisture| (0.0..=100.0).contains(&m.to_pct());
        let warm = is_of_a_room(reading.wood);
        reading.reading = reading.reading.filter(|m| warm && possible(m));
    }
    for surface in &mut job.surfaces {
        hold_surface(surface);
    }
    job.survey.precision = job.survey.precision.max(Percent::pct(1.0)).min(Percent::pct(100.0));
    hold_air(&mut job.air);
    job.plan.seal_on =
        job.plan.seal_on.filter(|date| (job.visited..=last_sealing(job.visited)).contains(date));
    hold_plan(&mut job.plan);
    job
}

/// Whether a temperature can be that of a room.
pub(super) fn is_of_a_room(t: Temperature) -> bool {
    (-30.0..=60.0).contains(&t.to_celsius())
}

/// The last day on which sealing is worked out: a full year after it must still be known.
pub(super) fn last_sealing(visited: Date) -> Date {
    visited.checked_add(730.days()).unwrap_or(visited)
}

fn between(value: Length, low: Length, high: Length) -> Length {
    value.max(low).min(high)
}

fn hold_point(point: &mut Point) {
    *point = Point(between(point.0, -FARTHEST, FARTHEST), between(point.1, -FARTHEST, FARTHEST));
}

fn hold_surface(surface: &mut Surface) {
    let regions = surface.sections.iter_mut().filter_map(|section| section.region.as_mut());
    let openings = surface.openings.iter_mut().map(|opening| &mut opening.corners);
    for corners in regions.chain(openings).chain([&mut surface.outline]) {
        corners.iter_mut().for_each(hold_point);
    }
    surface.trim = between(surface.trim, Length::ZERO, Length::m(10.0));
    for divider in &mut surface.dividers {
        hold_point(&mut divider.from);
        hold_point(&mut divider.to);
        divider.width = between(divider.width, Length::ZERO, Length::m(10.0));
    }
    for section in &mut surface.sections {
        section.direction = Angle::degrees(section.direction.to_degrees() % 360.0);
        section.start = between(section.start, Length::ZERO, FARTHEST);
        let board = &mut section.board;
        board.face_width = between(board.face_width, Length::ZERO, FARTHEST);
        board.overall_width = between(board.overall_width, Length::ZERO, FARTHEST);
        board.thickness = between(board.thickness, Length::ZERO, Length::mm(150.0));
        board.ring_angle = board.ring_angle.max(Angle::ZERO).min(Angle::degrees(90.0));
        let half = board.face_width / 2.0;
        board.profile = match board.profile {
            Profile::Square => Profile::Square,
            Profile::VGroove(leg) => Profile::VGroove(between(leg, Length::ZERO, half)),
            Profile::Bead(width) => Profile::Bead(between(width, Length::ZERO, half)),
        };
    }
}

fn hold_air(air: &mut IndoorAir) {
    let room = |t: Temperature| t.max(Temperature::celsius(-30.0)).min(Temperature::celsius(60.0));
    let humid = |rh: Humidity| rh.max(Humidity::ZERO).min(Humidity::pct(100.0));
    match air {
        IndoorAir::Monthly(months) => {
            for month in months {
                month.temperature = room(month.temperature);
                month.humidity = humid(month.humidity);
            }
        }
        IndoorAir::FromClimate { house, .. }
        | IndoorAir::FromPlace { house, .. }
        | IndoorAir::FromWeather { house, .. } => {
            house.heat_to = room(house.heat_to);
            house.cool_to = room(house.cool_to);
            house.moisture_load = house.moisture_load.clamp(0.0, 20.0);
            house.dehumidified_to = house.dehumidified_to.map(humid);
            house.humidified_to = house.humidified_to.map(humid);
        }
    }
}

/// Stock shorter or longer than this is a slip.
pub(super) const SHORTEST_STOCK: Length = Length::m(0.3);
/// Likewise.
pub(super) const LONGEST_STOCK: Length = Length::m(15.0);

fn hold_shares(shares: &mut Shares) {
    shares.contractor = shares.contractor.max(Percent::ZERO).min(Percent::pct(100.0));
    let rest = Percent::pct(100.0) - shares.contractor;
    shares.supplier = shares.supplier.max(Percent::ZERO).min(rest);
}

fn hold_plan(plan: &mut Plan) {
    let pct = |value: Percent, most: f64| value.max(Percent::ZERO).min(Percent::pct(most));
    let money = |value: Money| value.max(Money::ZERO).min(Money::cents(1_000_000));
    let (thin, thick) = (Length::mm(0.05), Length::mm(25.4));
    plan.crew = plan.crew.min(50);
    plan.day = plan.day.max(Hours::ZERO).min(Hours::h(16.0));
    plan.coats = plan.coats.min(10);
    plan.acclimation_days = plan.acclimation_days.min(365);
    plan.warranty_years = plan.warranty_years.min(50);
    plan.discount = pct(plan.discount, 50.0);
    plan.delivered_at = plan.delivered_at.max(Moisture::pct(2.0)).min(Moisture::pct(60.0));
    plan.callback.open_share = pct(plan.callback.open_share, 100.0);
    plan.callback.widest = between(plan.callback.widest, thin, thick);
    plan.callback.seen_from = between(plan.callback.seen_from, thin, thick);
    plan.board_waste = pct(plan.board_waste, 90.0);
    plan.open_from = between(plan.open_from, thin, thick);
    plan.narrowest = between(plan.narrowest, thin, thick);
    plan.bead.least_depth = between(plan.bead.least_depth, thin, thick);
    plan.bead.v_filled = pct(plan.bead.v_filled, 100.0);
    plan.bead.waste = pct(plan.bead.waste, 200.0);
    plan.prices.labour = money(plan.prices.labour);
    plan.prices.overhead = pct(plan.prices.overhead, 200.0);
    plan.prices.profit = pct(plan.prices.profit, 200.0);
    plan.prices.tax = pct(plan.prices.tax, 50.0);
    plan.prices.burden = pct(plan.prices.burden, 200.0);
    plan.prices.equipment = money(plan.prices.equipment);
    plan.prices.minimum = money(plan.prices.minimum);
    plan.prices.contingency = plan.prices.contingency.map(|share| pct(share, 99.0).max(Percent::pct(50.0)));
    plan.prices.deposit = pct(plan.prices.deposit, 100.0);
    let mut overall = plan.payers.overall();
    hold_shares(&mut overall);
    (plan.payers.contractor, plan.payers.supplier) = (overall.contractor, overall.supplier);
    plan.payers.lines.values_mut().for_each(hold_shares);
    plan.stock.lengths.retain(|length| (SHORTEST_STOCK..=LONGEST_STOCK).contains(length));
    plan.stock.lengths.truncate(20);
    plan.stock.kerf = between(plan.stock.kerf, Length::ZERO, Length::mm(20.0));
    plan.stock.end_trim = between(plan.stock.end_trim, Length::ZERO, Length::m(0.5));
    plan.own_minutes.retain(|_, minutes| minutes.is_in_order() && minutes.likely > 0.0);
    plan.own_prices.retain(|_, price| *price >= Money::ZERO);
    let timed = |minutes: &Minutes| (0.1..1e5).contains(&minutes.to_minutes());
    if let Some(trial) = &mut plan.trial {
        trial.minutes = trial.minutes.filter(timed);
    }
}
