//! Readings that contradict the rest, as problems at their entries.

use super::beliefs::Beliefs;
use crate::belief::Doubted;
use crate::job::fields::{self, At};
use crate::job::{Job, Place, Problem, ReadingFault};

/// What does not fit, the farthest off first.
pub(super) fn conflicts(job: &Job, beliefs: Option<&Beliefs>) -> Vec<Problem> {
    let Some(beliefs) = beliefs else { return vec![] };
    let problem = |doubted: Doubted| match doubted {
        Doubted::Meter { section, says, expected } => {
            let known = beliefs.sections.get(section)?;
            let surface = job.surfaces.get(known.surface)?;
            let name = &surface.sections.get(known.section)?.name;
            let own = |reading: &crate::survey::MoistureReading| {
                reading.surface == surface.name && reading.section == *name && reading.reading.is_some()
            };
            let index = job.survey.moistures.iter().position(own)?;
            let fault = ReadingFault::MeterUnlikeRest { says, low: expected.low, high: expected.high };
            Some(Problem::new(Place::Field(&fields::METER_READING, At::index(index)), fault))
        }
        Doubted::Room { reading, says, expected } => {
            let fault = ReadingFault::NotThisRoom { reading: says, low: expected.low, high: expected.high };
            Some(Problem::new(Place::Field(&fields::ROOM_HUMIDITY, At::index(reading)), fault))
        }
    };
    beliefs.belief.conflicts.iter().filter_map(|conflict| problem(conflict.reading)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::assess::assess;
    use crate::job::{Catalog, demo_job};
    use crate::measure::{Humidity, Moisture};

    #[test]
    fn a_hygrometer_that_the_room_cannot_show_is_told_and_one_that_it_can_is_not() {
        let told = |humidity: f64| {
            let mut job = demo_job();
            // Its boards would not let the room be as dry as rooms can be.
            job.survey.moistures.clear();
            job.survey.rooms[0].humidity = Humidity::pct(humidity);
            let found = assess(job, Catalog::built_in());
            found.problems.iter().any(|problem| problem.place.is(&fields::ROOM_HUMIDITY, At::index(0)))
        };
        // A heated house near Chicago in February: 20 to 40% is everyday, 80% a bathroom.
        for everyday in [20.0, 30.0, 40.0] {
            assert!(!told(everyday), "{everyday}");
        }
        assert!(told(80.0));
    }

    #[test]
    fn a_meter_far_from_what_the_room_allows_is_told() {
        let told = |pct: f64| {
            let mut job = demo_job();
            for reading in &mut job.survey.moistures {
                reading.reading = Some(Moisture::pct(pct));
            }
            let found = assess(job, Catalog::built_in());
            found.problems.iter().any(|problem| {
                problem.place.field().is_some_and(|(field, _)| *field == fields::METER_READING)
            })
        };
        assert!(!told(8.0));
        assert!(told(14.0));
    }
}
