//! What is wrong with the air of the room and the house.

use super::Problems;
use crate::air::{HouseModel, IndoorAir};
use crate::job::catalog::Catalog;
use crate::job::document::Job;
use crate::job::problem::Place;
use crate::job::sanitized::is_of_a_room;
use crate::measure::{Humidity, Temperature};

pub(super) fn air(job: &Job, catalog: &Catalog, problems: &mut Problems) {
    match &job.air {
        IndoorAir::Monthly(months) => {
            for month in months {
                temperature(month.temperature, Place::Air("months"), problems);
                humidity(month.humidity, Place::Air("months"), problems);
            }
        }
        IndoorAir::FromClimate { station, .. } => {
            if !catalog.stations.iter().any(|known| known.name == *station) {
                problems.error(
                    Place::Air("place"),
                    format!("There is no climate for “{station}”"),
                    "Choose the place nearest to it from the list, or type twelve months",
                );
            }
        }
        IndoorAir::FromWeather { .. } => {}
    }
    if let Some(house) = job.air.house() {
        self::house(job, house, problems);
    }
}

fn house(job: &Job, house: &HouseModel, problems: &mut Problems) {
    temperature(house.heat_to, Place::Air("heating"), problems);
    temperature(house.cool_to, Place::Air("cooling"), problems);
    if house.cool_to < house.heat_to {
        problems.error(
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
        problems.error(
            Place::Air("moisture load"),
            format!("A moisture load of {} g/m³ is not between 0 and 20", house.moisture_load),
            "2 to 4 is usual, 6 a damp house",
        );
    }
    for limit in [house.dehumidified_to, house.humidified_to].into_iter().flatten() {
        humidity(limit, Place::Air("humidity limits"), problems);
    }
}

pub(super) fn temperature(t: Temperature, place: Place, problems: &mut Problems) {
    if !is_of_a_room(t) {
        let what = format!(
            "{} °C ({} °F) is no temperature of a room",
            t.to_celsius().round(),
            t.to_fahrenheit().round()
        );
        problems.error(place, what, "Check the figure and its unit");
    }
}

pub(super) fn humidity(rh: Humidity, place: Place, problems: &mut Problems) {
    if !(0.0..=1.0).contains(&rh.to_fraction()) {
        problems.error(
            place,
            format!("A relative humidity of {} is not between 0 and 100 %", rh.show()),
            "Type what the hygrometer shows, such as 42",
        );
    }
}
