//! Hygrometer readings that the room, as it was described, could not have given.

use crate::air::IndoorYear;
use crate::job::fields::{self, At};
use crate::job::{Catalog, Job, Place, Problem, ReadingFault};
use crate::measure::{Humidity, day_of_year};

/// A reading farther from what is expected than so many standard deviations does not fit: one in eighty
/// would by chance.
const FARTHEST: f64 = 2.5;

/// The readings of the room's air that do not fit its year, each with what would.
pub(super) fn room_problems(job: &Job, catalog: &Catalog, year: Option<&IndoorYear>) -> Vec<Problem> {
    let Some(year) = year else { return vec![] };
    let unlike = |(index, reading): (usize, &crate::survey::RoomReading)| {
        let day = day_of_year(reading.date.unwrap_or(job.visited));
        let (mean, sd) = catalog.household.expected_reading(year, day)?;
        let (low, high) = ((mean - FARTHEST * sd).max(0.0), (mean + FARTHEST * sd).min(100.0));
        let fault = ReadingFault::NotThisRoom {
            reading: reading.humidity,
            low: Humidity::pct(low),
            high: Humidity::pct(high),
        };
        let fits = (low..=high).contains(&reading.humidity.to_pct());
        (!fits).then(|| Problem::new(Place::Field(&fields::ROOM_HUMIDITY, At::index(index)), fault))
    };
    job.survey.rooms.iter().enumerate().filter_map(unlike).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::assess::assess;
    use crate::job::demo_job;

    fn told(humidity: f64) -> bool {
        let mut job = demo_job();
        job.survey.rooms[0].humidity = Humidity::pct(humidity);
        let found = assess(job, Catalog::built_in());
        found.problems.iter().any(|problem| problem.place.is(&fields::ROOM_HUMIDITY, At::index(0)))
    }

    #[test]
    fn a_reading_that_the_room_cannot_give_is_told_and_one_that_it_can_is_not() {
        // A heated house near Chicago in February: 20 to 45% is everyday, 75% a bathroom.
        for everyday in [22.0, 33.0, 44.0] {
            assert!(!told(everyday), "{everyday}");
        }
        assert!(told(75.0));
    }
}
