//! Readings of what is gone, or that cannot be: told of, and not counted.

use gapwright::job::{Job, Place, Severity, file};
use gapwright::measure::{Humidity, Length, Moisture, Temperature};
use gapwright::survey::{GapReading, MoistureReading, RoomReading};

use super::{SOUND, after, others_stand, told};

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
    told(&found, &Place::Gap(gaps), "Joint “A 99” of “South slope” does not exist");
    told(&found, &Place::Gap(gaps + 1), "Joint “A 2” of “Cellar” does not exist");
    told(&found, &Place::Moisture(moistures), "Section “Z” of “South slope” does not exist");
    told(&found, &Place::Moisture(moistures + 1), "Section “A” of “Cellar” does not exist");
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
        told(&found, &Place::Gap(index), &gap.joint);
    }
    assert_eq!(job.survey, SOUND.0.survey);
    others_stand(&found, &[(0, 1)]);
}

/// Asserts that the tea room with a reading added by `add` is told of at `place` and found as if it
/// had not been taken.
#[track_caller]
fn does_not_count(place: &Place, words: &str, add: impl FnOnce(&mut Job)) {
    let (_, found) = after(add);
    assert_eq!(told(&found, place, words).severity, Severity::Error);
    others_stand(&found, &[]);
    assert!(found.joints == SOUND.1.joints, "{words}: the joints are touched");
}

#[test]
fn gaps_that_cannot_be_do_not_count() {
    let place = Place::Gap(SOUND.0.survey.gaps.len());
    let add = |width: Length| {
        move |job: &mut Job| {
            let again = GapReading { width, ..job.survey.gaps[0].clone() };
            job.survey.gaps.push(again);
        }
    };
    does_not_count(&place, "less than nothing", add(Length::inches(-0.125)));
    does_not_count(&place, "wider than 2 in", add(Length::feet(3.0)));
    does_not_count(&place, "wider than 2 in", add(Length::m(999.0)));
}

#[test]
fn moistures_that_cannot_be_do_not_count() {
    let place = Place::Moisture(SOUND.0.survey.moistures.len());
    let add = |pct: f64, wood: f64| {
        move |job: &mut Job| {
            let (reading, wood) = (Some(Moisture::pct(pct)), Temperature::celsius(wood));
            let again = MoistureReading { reading, wood, ..job.survey.moistures[0].clone() };
            job.survey.moistures.push(again);
        }
    };
    does_not_count(&place, "130 % cannot be", add(130.0, 18.0));
    does_not_count(&place, "-4 % cannot be", add(-4.0, 18.0));
    does_not_count(&place, "cannot be", add(1e300, 18.0));
    does_not_count(&place, "900 °C", add(9.0, 900.0));
}

#[test]
fn room_air_that_cannot_be_is_told() {
    let place = Place::Room(SOUND.0.survey.rooms.len());
    let add = |celsius: f64, pct: f64| {
        move |job: &mut Job| {
            let (temperature, humidity) = (Temperature::celsius(celsius), Humidity::pct(pct));
            job.survey.rooms.push(RoomReading { temperature, humidity, date: None });
        }
    };
    does_not_count(&place, "humidity of 130 %", add(20.0, 130.0));
    does_not_count(&place, "humidity of −5 %", add(20.0, -5.0));
    does_not_count(&place, "900 °C (1652 °F)", add(900.0, 40.0));
}

#[test]
fn readings_that_contradict_each_other_are_told() {
    let (_, found) = after(|job| {
        let mut again = job.survey.gaps[0].clone();
        again.width = Length::inches(0.5);
        job.survey.gaps.push(again);
    });
    told(&found, &Place::Gap(18), "was measured as 7/64\" and as 1/2\"");
    let (_, found) = after(|job| {
        let mut again = job.survey.moistures[0].clone();
        again.reading = Some(Moisture::pct(20.0));
        job.survey.moistures.push(again);
    });
    told(&found, &Place::Moisture(5), "8.5 % and as 20 %");
}
