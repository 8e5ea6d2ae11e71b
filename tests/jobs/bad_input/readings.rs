//! Readings of what is gone, or that cannot be: told of, and not counted.

use gapwright::job::fields::{self, At, Field};
use gapwright::job::{Job, Severity, file};
use gapwright::measure::{Humidity, Length, Moisture, Temperature};
use gapwright::surface::Fixing;
use gapwright::survey::{GapReading, MoistureReading, RoomReading};

use super::{SOUND, after, others_stand, told_at, words};

#[test]
fn readings_of_what_is_gone_are_kept_and_the_others_used() {
    let (gaps, moistures) = (SOUND.0.survey.gaps.len(), SOUND.0.survey.moistures.len());
    let (job, found) = after(|job| {
        let gap = |surface: &str, joint: &str| GapReading {
            surface: surface.to_owned(),
            joint: joint.to_owned(),
            width: Length::inches(0.5),
            ..GapReading::default()
        };
        job.survey.gaps.extend([gap("South slope", "A 99"), gap("Cellar", "A 2")]);
        let moisture = |surface: &str, section: &str| MoistureReading {
            surface: surface.to_owned(),
            section: section.to_owned(),
            reading: Some(Moisture::pct(28.0)),
            ..MoistureReading::default()
        };
        job.survey.moistures.extend([moisture("South slope", "Z"), moisture("Cellar", "A")]);
    });
    told_at(&found, &fields::GAP_JOINT, At::index(gaps), "no joint “A 99” on “South slope”");
    told_at(&found, &fields::GAP_JOINT, At::index(gaps + 1), "no joint “A 2” on “Cellar”");
    told_at(&found, &fields::METER_SECTION, At::index(moistures), "no section “Z” on “South slope”");
    told_at(&found, &fields::METER_SECTION, At::index(moistures + 1), "no section “A” on “Cellar”");
    others_stand(&found, &[]);
    let written = file::write(&job).unwrap();
    assert_eq!(file::read(&written).unwrap().job, job, "a reading was not kept");
}

#[test]
fn a_section_taken_out_leaves_its_readings_in_the_job() {
    let (job, found) = after(|job| {
        job.surfaces[0].sections.remove(1);
    });
    for (index, gap) in job.survey.gaps.iter().enumerate().filter(|(_, gap)| gap.joint.starts_with("B ")) {
        told_at(&found, &fields::GAP_JOINT, At::index(index), &gap.joint);
    }
    assert_eq!(job.survey, SOUND.0.survey);
    others_stand(&found, &[(0, 1)]);
}

/// Asserts that the tea room with a reading added by `add` is told of at `place` and found as if it
/// had not been taken.
#[track_caller]
fn does_not_count((field, index): (&'static Field, usize), text: &str, add: impl FnOnce(&mut Job)) {
    let (_, found) = after(add);
    let problem = told_at(&found, field, At::index(index), text);
    assert_eq!(problem.severity, Severity::Error);
    assert!(problem.fix(&words()).contains("it is not used"), "{text}");
    others_stand(&found, &[]);
    assert!(found.joints == SOUND.1.joints, "{text}: the joints are touched");
}

#[test]
fn gaps_that_cannot_be_do_not_count() {
    let place = (&fields::GAP_WIDTH, SOUND.0.survey.gaps.len());
    let add = |width: Length| {
        move |job: &mut Job| {
            let again = GapReading { width, ..job.survey.gaps[0].clone() };
            job.survey.gaps.push(again);
        }
    };
    does_not_count(place, "−1/8\" is not between 0\" and 2\"", add(Length::inches(-0.125)));
    does_not_count(place, "3' is not between", add(Length::feet(3.0)));
    does_not_count(place, "is not between", add(Length::m(999.0)));
}

#[test]
fn moistures_that_cannot_be_do_not_count() {
    let index = SOUND.0.survey.moistures.len();
    let place = (&fields::METER_READING, index);
    let add = |pct: f64, wood: f64| {
        move |job: &mut Job| {
            let (reading, wood) = (Some(Moisture::pct(pct)), Temperature::celsius(wood));
            let again = MoistureReading { reading, wood, ..job.survey.moistures[0].clone() };
            job.survey.moistures.push(again);
        }
    };
    does_not_count(place, "130% is not between 0% and 100%", add(130.0, 18.0));
    does_not_count(place, "-4% is not between", add(-4.0, 18.0));
    does_not_count(place, "is not between", add(1e300, 18.0));
    does_not_count((&fields::WOOD_TEMPERATURE, index), "1,652°F", add(9.0, 900.0));
}

#[test]
fn room_air_that_cannot_be_is_told() {
    let index = SOUND.0.survey.rooms.len();
    let humidity = (&fields::ROOM_HUMIDITY, index);
    let add = |celsius: f64, pct: f64| {
        move |job: &mut Job| {
            let (temperature, humidity) = (Temperature::celsius(celsius), Humidity::pct(pct));
            job.survey.rooms.push(RoomReading { temperature, humidity, date: None });
        }
    };
    does_not_count(humidity, "130% is not between", add(20.0, 130.0));
    does_not_count(humidity, "-5% is not between", add(20.0, -5.0));
    does_not_count((&fields::ROOM_TEMPERATURE, index), "1,652°F", add(900.0, 40.0));
}

#[test]
fn readings_that_contradict_each_other_are_told() {
    let (_, found) = after(|job| {
        let mut again = job.survey.gaps[0].clone();
        again.width = Length::inches(0.5);
        job.survey.gaps.push(again);
    });
    told_at(&found, &fields::GAP_WIDTH, At::index(18), "was measured as 7/64\" and as 1/2\"");
    let (_, found) = after(|job| {
        let mut again = job.survey.moistures[0].clone();
        again.reading = Some(Moisture::pct(20.0));
        job.survey.moistures.push(again);
    });
    told_at(&found, &fields::METER_READING, At::index(5), "8.5% and as 20%");
}

/// Gaps between boards that nothing lets move contradict the nailing; several gaps of nothing, the callback.
#[test]
fn readings_that_contradict_the_drawing_are_told_as_that() {
    let (_, found) = after(|job| job.surfaces[0].sections[0].board.fixing = Fixing::BothEdges);
    let at = SOUND.0.survey.gaps.iter().position(|gap| gap.width > Length::ZERO).unwrap();
    let told = told_at(&found, &fields::GAP_WIDTH, At::index(at), "nailed at both edges");
    assert_eq!(told.severity, Severity::Warning);
    let (_, found) = after(|job| job.survey.gaps.iter_mut().for_each(|gap| gap.width = Length::ZERO));
    told_at(&found, &fields::GAP_WIDTH, At::index(0), "no joint has opened");
}
