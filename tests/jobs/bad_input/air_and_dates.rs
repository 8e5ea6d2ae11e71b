//! Room air, houses, paint and dates that cannot be: told of, and the year stays a year.

use gapwright::air::{Air, HouseModel, IndoorAir};
use gapwright::assess::assess;
use gapwright::job::Catalog;
use gapwright::job::fields::{self, At};
use gapwright::measure::{Angle, Humidity, Moisture, Percent, Temperature};
use gapwright::repair::MethodId;
use jiff::civil::date;

use super::{SOUND, after, others_stand, told_at, what_comes_stands};

#[test]
fn the_year_stays_a_year_whatever_is_typed_of_the_air() {
    let months = |celsius: f64, pct: f64| {
        let mut months = [Air { temperature: Temperature::celsius(20.0), humidity: Humidity::pct(40.0) }; 12];
        months[6] = Air { temperature: Temperature::celsius(celsius), humidity: Humidity::pct(pct) };
        IndoorAir::Monthly(months)
    };
    for (air, field, words) in [
        (months(20.0, 130.0), &fields::MONTH_HUMIDITY, "130% is not between 0% and 100%"),
        (months(900.0, 40.0), &fields::MONTH_TEMPERATURE, "1,652°F is not between -22°F and 140°F"),
        (months(-1e300, 40.0), &fields::MONTH_TEMPERATURE, "-22°F is used"),
    ] {
        let (_, found) = after(|job| job.air = air);
        told_at(&found, field, At::index(6), words);
        assert_eq!(found.year.as_ref().unwrap().days.len(), 365);
        assert!(found.sections.iter().all(|s| (0.0..40.0).contains(&s.settled.mean().to_pct())), "{words}");
        assert!(found.answer.is_complete(), "{words}");
    }
}

#[test]
fn numbers_at_the_ends_of_their_range_make_no_infinity() {
    let huge = f64::MAX;
    let (_, found) = after(|job| {
        job.air = IndoorAir::Monthly(std::array::from_fn(|month| Air {
            temperature: Temperature::celsius(if month % 2 == 0 { huge } else { -huge }),
            humidity: Humidity::fraction(if month % 3 == 0 { huge } else { -huge }),
        }));
        for surface in &mut job.surfaces {
            for section in &mut surface.sections {
                section.direction = Angle::degrees(huge);
                section.board.ring_angle = Angle::degrees(-huge);
            }
        }
        for (index, reading) in job.survey.moistures.iter_mut().enumerate() {
            reading.reading = Some(Moisture::pct(if index % 2 == 0 { huge } else { -huge }));
            reading.wood = Temperature::celsius(huge);
        }
    });
    told_at(&found, &fields::METER_READING, At::index(0), "it is not used");
    told_at(&found, &fields::MONTH_TEMPERATURE, At::index(0), "140°F is used");
    told_at(&found, &fields::GRAIN, At(0, 0), "0° is used");
    let (_, found) = after(|job| {
        let (plan, huge) = (&mut job.plan, Percent::pct(huge));
        (plan.board_waste, plan.bead.waste, plan.bead.v_filled) = (huge, huge, huge);
        (plan.prices.overhead, plan.prices.profit, plan.prices.tax) = (huge, huge, huge);
        (plan.payers.contractor, plan.payers.supplier) = (huge, huge);
    });
    others_stand(&found, &[]);
    assert_eq!(found.options.len(), MethodId::ALL.len());
}

#[test]
fn a_house_that_cannot_be_is_told() {
    let house = |change: fn(&mut HouseModel)| {
        let (_, found) = after(|job| change(job.air.house_mut().expect("the tea room has a house")));
        assert_eq!(found.sections.len(), 4);
        found
    };
    let found = house(|house| house.heat_to = Temperature::celsius(900.0));
    told_at(&found, &fields::HEAT_SETPOINT, At::ONCE, "1,652°F");
    told_at(&found, &fields::AC_SETPOINT, At::ONCE, "the room stays at 140°F");
    let found = house(|house| house.dehumidified_to = Some(Humidity::pct(130.0)));
    told_at(&found, &fields::DEHUMIDIFIER, At::ONCE, "130%");
    let found = house(|house| house.moisture_load = -1e300);
    told_at(&found, &fields::MOISTURE_LOAD, At::ONCE, "is not between 0 gr/cu ft and");
    let (_, found) = after(|job| {
        job.air = IndoorAir::FromClimate { station: "Atlantis".to_owned(), house: HouseModel::default() };
    });
    told_at(&found, &fields::PLACE, At::ONCE, "“Atlantis”");
    assert!(found.layouts == SOUND.1.layouts);
    assert!(found.joints.iter().any(|joint| joint.gap.is_some()));
}

#[test]
fn dates_out_of_order_are_told_and_the_answer_stands() {
    let (_, found) = after(|job| job.installed = Some(date(2027, 1, 1).into()));
    told_at(&found, &fields::INSTALLED, At::ONCE, "Jan 1, 2027 is after the visit on Feb 14, 2026");
    what_comes_stands(&found);
    let (_, found) = after(|job| job.survey.gaps[0].date = Some(date(2027, 1, 1)));
    told_at(&found, &fields::GAP_DATE, At::index(0), "after the visit on Feb 14, 2026");
    others_stand(&found, &[(0, 0)]);
    let (_, found) = after(|job| job.survey.moistures[4].date = Some(date(2020, 1, 1)));
    told_at(&found, &fields::METER_DATE, At::index(4), "before the boards were installed");
    others_stand(&found, &[(1, 1)]);
    let (_, found) = after(|job| job.survey.rooms[0].date = Some(date(2020, 1, 1)));
    told_at(&found, &fields::ROOM_DATE, At::index(0), "before the boards were installed");
    others_stand(&found, &[]);
    let (_, found) = after(|job| job.plan.seal_on = Some(date(2026, 1, 1)));
    told_at(&found, &fields::SEALING_DATE, At::ONCE, "Jan 1, 2026 is before the visit");
    assert_eq!(found.answer.when, SOUND.1.answer.when, "a day that is past is no plan");
    let (_, found) = after(|job| job.built = Some(2090));
    told_at(&found, &fields::YEAR_BUILT, At::ONCE, "2090 is after the visit");
    others_stand(&found, &[]);
}

#[test]
fn the_ends_of_the_calendar_are_days_like_others() {
    for visited in [jiff::civil::Date::MIN, jiff::civil::Date::MAX] {
        let (_, found) = after(|job| job.visited = visited);
        assert_eq!(found.sections.len(), 4, "{visited}");
        let (_, found) = after(|job| job.installed = Some(visited.into()));
        what_comes_stands(&found);
    }
}

#[test]
fn paint_that_lets_nothing_through_is_told() {
    let mut catalog = Catalog::clone(Catalog::built_in());
    for coating in &mut catalog.finishes {
        (coating.face, coating.back) = (Some(0.0), Some(0.0));
    }
    let found = assess(SOUND.0.clone(), &std::sync::Arc::new(catalog));
    told_at(&found, &fields::FINISH, At(0, 0), "lets no moisture through");
    assert!(found.answer.is_complete() && found.sections.len() == 4);
    for state in &found.sections {
        assert!(state.settled.mean().to_pct().is_finite() && state.settled.lag().is_none());
    }
}
