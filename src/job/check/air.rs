//! What is wrong with the air of the room and the house.

use super::Findings;
use crate::air::{HouseModel, IndoorAir};
use crate::job::document::Job;
use crate::job::problem::Place;
use crate::job::shelf::Shelf;
use crate::job::usable::is_of_a_room;
use crate::measure::{Humidity, Temperature};

pub(super) fn air(job: &Job, shelf: &Shelf, found: &mut Findings) {
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
        IndoorAir::FromPlace { site, .. } => {
            if site.climate().is_err() {
                found.error(
                    Place::Air("place"),
                    format!(
                        "The climate of “{}” can't be read: the program's own table is damaged",
                        site.name
                    ),
                    "Install the program again, or type twelve months",
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

pub(super) fn temperature(t: Temperature, place: Place, found: &mut Findings) {
    if !is_of_a_room(t) {
        let what = format!(
            "{} °C ({} °F) is no temperature of a room",
            t.to_celsius().round(),
            t.to_fahrenheit().round()
        );
        found.error(place, what, "Check the figure and its unit");
    }
}

pub(super) fn humidity(rh: Humidity, place: Place, found: &mut Findings) {
    if !(0.0..=1.0).contains(&rh.to_fraction()) {
        found.error(
            place,
            format!("A relative humidity of {} is not between 0 and 100 %", rh.show()),
            "Type what the hygrometer shows, such as 42",
        );
    }
}
