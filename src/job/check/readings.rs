//! What is wrong with the readings: what cannot be, what contradicts, what belongs to nothing drawn.

use jiff::civil::Date;

use super::Problems;
use super::air::{humidity, temperature};
use crate::job::document::Job;
use crate::job::problem::Place;
use crate::job::sanitized::WIDEST_GAP;
use crate::measure::{Length, Moisture, Percent, show_date};
use crate::surface::SurfaceLayout;
use crate::survey::{GapReading, MoistureReading};

pub(super) fn readings(job: &Job, layouts: &[SurfaceLayout], problems: &mut Problems) {
    gaps(job, layouts, problems);
    contradictions(job, problems);
    moistures(job, problems);
    rooms(job, problems);
}

fn gaps(job: &Job, layouts: &[SurfaceLayout], problems: &mut Problems) {
    for (index, gap) in job.survey.gaps.iter().enumerate() {
        let place = || Place::Gap(index);
        let surface = job.surfaces.iter().position(|surface| surface.name == gap.surface);
        let joint = surface.and_then(|on| {
            layouts[on].joints.iter().find(|joint| joint.label == gap.joint).map(|joint| (on, joint))
        });
        let shown = gap.width.show(job.units);
        if gap.width < Length::ZERO {
            problems.error(
                place(),
                format!("A gap of {shown} is less than nothing"),
                "Type 0 for a closed joint",
            );
        } else if gap.width > WIDEST_GAP {
            problems.error(
                place(),
                format!("A gap of {shown} is wider than 2 in"),
                "Check the figure and its unit",
            );
        }
        match joint {
            None => problems.error(
                place(),
                format!("Joint “{}” of “{}” does not exist in this layout", gap.joint, gap.surface),
                "Pick the joint again on the drawing, or take the reading out; it is kept until then",
            ),
            Some((on, joint)) => {
                let tongue = job.surfaces[on].sections[joint.section].board.tongue();
                if let Some(tongue) = tongue.filter(|tongue| gap.width >= *tongue * 0.9) {
                    problems.warning(
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
        reading_date(job, gap.date, place(), problems);
    }
}

/// Readings of the same thing that cannot both be right.
fn contradictions(job: &Job, problems: &mut Problems) {
    let sanitized = |gap: &GapReading| (Length::ZERO..=WIDEST_GAP).contains(&gap.width);
    for (index, gap) in job.survey.gaps.iter().enumerate().filter(|(_, gap)| sanitized(gap)) {
        let same = |other: &&GapReading| other.surface == gap.surface && other.joint == gap.joint;
        let before = job.survey.gaps[..index].iter().filter(|other| sanitized(other)).find(same);
        let Some(before) = before.filter(|other| (other.width - gap.width).to_mm().abs() > 1.6) else {
            continue;
        };
        problems.warning(
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
        problems.warning(
            Place::Moisture(index),
            format!("The same board was read as {} and as {}", before.show(), moisture.show()),
            "The mean of both counts; read again, with the pins along the grain",
        );
    }
    if !(Percent::pct(1.0)..=Percent::pct(100.0)).contains(&job.survey.precision) {
        problems.error(
            Place::Job("precision"),
            format!("A precision of {} % is not between 1 and 100 %", job.survey.precision.to_pct()),
            "Type how well the opening of the joints is to be known, such as 15",
        );
    }
}

fn moistures(job: &Job, problems: &mut Problems) {
    for (index, reading) in job.survey.moistures.iter().enumerate() {
        let place = || Place::Moisture(index);
        match reading.reading.map(Moisture::to_pct) {
            None => problems.note(
                place(),
                "No figure yet",
                "Type what the meter shows; until then it does not count",
            ),
            Some(pct) if !(0.0..=100.0).contains(&pct) => problems.error(
                place(),
                format!("A meter reading of {pct} % cannot be"),
                "Type what the meter shows, 6 to 30 % as a rule",
            ),
            Some(pct) if !(6.0..=30.0).contains(&pct) => problems.warning(
                place(),
                format!("A pin meter is not to be trusted at {pct} %"),
                "Trust it between 6 and 30 %; weigh and dry a piece if it matters",
            ),
            Some(_) => {}
        }
        temperature(reading.wood, place(), problems);
        let known = job.surfaces.iter().any(|surface| {
            surface.name == reading.surface && surface.sections.iter().any(|s| s.name == reading.section)
        });
        if !known {
            problems.error(
                place(),
                format!("Section “{}” of “{}” does not exist", reading.section, reading.surface),
                "Choose the section again; until then the reading counts for the whole job",
            );
        }
        reading_date(job, reading.date, place(), problems);
    }
}

fn rooms(job: &Job, problems: &mut Problems) {
    for (index, reading) in job.survey.rooms.iter().enumerate() {
        temperature(reading.temperature, Place::Room(index), problems);
        humidity(reading.humidity, Place::Room(index), problems);
        reading_date(job, reading.date, Place::Room(index), problems);
    }
}

fn reading_date(job: &Job, date: Option<Date>, place: Place, problems: &mut Problems) {
    let Some(date) = date else { return };
    if date > job.visited {
        problems.error(
            place,
            format!("{} is after the visit on {}", show_date(date), show_date(job.visited)),
            "Correct the date, or the date of the visit",
        );
    } else if job.installed.is_some_and(|installed| date < installed.earliest()) {
        problems.error(
            place,
            format!("{} is before the boards went up", show_date(date)),
            "Correct the date, or the date of the install",
        );
    } else if date.until(job.visited).is_ok_and(|span| span.get_days() > 45) {
        problems.note(
            place,
            format!("It was taken on {}, some time before the visit", show_date(date)),
            "It counts as if taken at the visit; measure again if you can",
        );
    }
}
