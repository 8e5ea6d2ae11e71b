//! Readings: what contradicts, what belongs to nothing drawn, what is doubtful. Readings that are out of
//! their range do not count, and nothing further is said of them.

use jiff::civil::Date;

use super::{Checked, Problems};
use crate::job::fields::{self, At, Field};
use crate::job::problem::{Dated, ReadingFault};
use crate::measure::{Length, Moisture, Quantity};
use crate::surface::{Fixing, JointKind, Surface};
use crate::survey::{GapReading, MoistureReading};

/// Readings of a joint that are farther apart than this, mm, cannot both be right.
const GAPS_APART: f64 = 1.6;
/// Readings of a board that are farther apart than this, percent, cannot both be right.
const MOISTURES_APART: f64 = 4.0;
/// A pin meter is to be trusted from here on: below, its readings drown in its noise.
const METER_LOW: Moisture = Moisture::pct(6.0);
/// A pin meter is to be trusted up to here: near the fiber saturation point it levels off.
const METER_HIGH: Moisture = Moisture::pct(30.0);
/// From so many closed gaps on nothing is taken to have opened.
const SEVERAL: usize = 3;
/// Readings older than this many days may no longer be of the day of the visit.
const LONG_BEFORE: i32 = 45;

pub(super) fn readings(job: &Checked<'_>, problems: &mut Problems) {
    for (index, gap) in job.entered.survey.gaps.iter().enumerate() {
        self::gap(job, index, gap, problems);
        dated(job, gap.date, (&fields::GAP_DATE, index), problems);
    }
    all_closed(job, problems);
    for (index, reading) in job.entered.survey.moistures.iter().enumerate() {
        moisture(job, index, reading, problems);
        dated(job, reading.date, (&fields::METER_DATE, index), problems);
    }
    for (index, reading) in job.entered.survey.rooms.iter().enumerate() {
        dated(job, reading.date, (&fields::ROOM_DATE, index), problems);
    }
}

fn holds(field: &Field, quantity: Quantity) -> bool {
    field.figure().is_none_or(|figure| figure.holds(quantity))
}

fn counts(gap: &GapReading) -> bool {
    holds(&fields::GAP_WIDTH, Quantity::Length(gap.width))
}

fn gap(job: &Checked<'_>, index: usize, gap: &GapReading, problems: &mut Problems) {
    let at = At::index(index);
    let surfaces = &job.sanitized.surfaces;
    let surface = surfaces.iter().position(|surface| surface.name == gap.surface);
    let joint = surface
        .and_then(|of| Some((of, job.layouts[of].joints.iter().find(|joint| joint.label == gap.joint)?)));
    let Some((surface, joint)) = joint else {
        let (surface, joint) = (gap.surface.clone(), gap.joint.clone());
        problems.at(&fields::GAP_JOINT, at, ReadingFault::NoSuchJoint { surface, joint });
        return;
    };
    if !counts(gap) {
        return;
    }
    let board = &surfaces[surface].sections[joint.section].board;
    let open = gap.width >= job.sanitized.plan.open_from && gap.width > Length::ZERO;
    if open && joint.kind == JointKind::BoardEdge && board.fixing == Fixing::BothEdges {
        let (joint, width) = (gap.joint.clone(), gap.width);
        problems.at(&fields::GAP_WIDTH, at, ReadingFault::OpenBetweenFixed { joint, width });
    }
    let tongue = board.tongue();
    if let Some(tongue) = tongue.filter(|tongue| gap.width >= *tongue * 0.9) {
        problems.at(&fields::GAP_WIDTH, at, ReadingFault::NearTongue { width: gap.width, tongue });
    }
    let same =
        |other: &&GapReading| other.surface == gap.surface && other.joint == gap.joint && counts(other);
    if let Some(earlier) = job.entered.survey.gaps[..index].iter().find(same)
        && (earlier.width - gap.width).to_mm().abs() > GAPS_APART
    {
        let (earlier, later, joint) = (earlier.width, gap.width, gap.joint.clone());
        problems.at(&fields::GAP_WIDTH, at, ReadingFault::GapsDiffer { joint, earlier, later });
    }
}

/// Several gaps, none of which is open.
fn all_closed(job: &Checked<'_>, problems: &mut Problems) {
    let gaps: Vec<&GapReading> = job.entered.survey.gaps.iter().filter(|gap| counts(gap)).collect();
    if gaps.len() >= SEVERAL && gaps.iter().all(|gap| gap.width <= Length::ZERO) {
        problems.at(&fields::GAP_WIDTH, At::index(0), ReadingFault::AllClosed { count: gaps.len() });
    }
}

fn moisture(job: &Checked<'_>, index: usize, reading: &MoistureReading, problems: &mut Problems) {
    let at = At::index(index);
    if !has_section(&job.sanitized.surfaces, &reading.surface, &reading.section) {
        let (surface, section) = (reading.surface.clone(), reading.section.clone());
        problems.at(&fields::METER_SECTION, at, ReadingFault::NoSuchSection { surface, section });
    }
    let Some(moisture) = reading.reading else {
        problems.at(&fields::METER_READING, at, ReadingFault::NoReading);
        return;
    };
    if !holds(&fields::METER_READING, Quantity::Moisture(moisture)) {
        return;
    }
    if !(METER_LOW..=METER_HIGH).contains(&moisture) {
        let fault = ReadingFault::MeterUnsure { reading: moisture, low: METER_LOW, high: METER_HIGH };
        problems.at(&fields::METER_READING, at, fault);
    }
    let same = |other: &&MoistureReading| {
        other.surface == reading.surface && other.section == reading.section && other.board == reading.board
    };
    let earlier = job.entered.survey.moistures[..index].iter().filter(same).find_map(|other| other.reading);
    if let Some(earlier) = earlier.filter(|earlier| (*earlier - moisture).to_pct().abs() > MOISTURES_APART) {
        problems.at(&fields::METER_READING, at, ReadingFault::MoisturesDiffer { earlier, later: moisture });
    }
}

/// Whether there is a section of this name.
pub(super) fn has_section(surfaces: &[Surface], surface: &str, section: &str) -> bool {
    let of = surfaces.iter().filter(|known| known.name == surface);
    of.flat_map(|surface| &surface.sections).any(|known| known.name == section)
}

fn dated(
    job: &Checked<'_>,
    date: Option<Date>,
    (field, index): (&'static Field, usize),
    problems: &mut Problems,
) {
    let Some(date) = date else { return };
    let visited = job.entered.visited;
    let installed = job.sanitized.installed.filter(|installed| date < installed.earliest());
    let dated = match (date.until(visited), installed) {
        _ if date > visited => Dated::AfterVisit(visited),
        (_, Some(installed)) => Dated::BeforeInstall(installed),
        (Ok(span), _) if span.get_days() > LONG_BEFORE => {
            Dated::DaysBefore(u32::try_from(span.get_days()).unwrap_or(0))
        }
        _ => return,
    };
    problems.at(field, At::index(index), ReadingFault::ReadingDated { dated, date });
}
