//! From the job's entries to what is known ([`crate::belief`]), and back to its sections.

use std::sync::{Arc, Mutex, PoisonError};

use jiff::civil::Date;
use statrs::statistics::Statistics as _;

use super::sections::{age, visit_day};
use crate::air::IndoorYear;
use crate::belief::{
    Belief, BuildUp, Evidence, GapEvidence, LaterGaps, MeterEvidence, RoomEvidence, SectionEvidence, believe,
    usual_year,
};
use crate::job::{Catalog, Job};
use crate::measure::{Length, Span};
use crate::surface::{Finish, JointKind, SurfaceLayout};
use crate::survey::{Failure, GapReading, LaterVisit, MeterSetting};

/// What is believed of a job, with the sections it speaks of.
#[derive(Debug)]
pub(super) struct Beliefs {
    /// What follows from the readings.
    pub belief: Arc<Belief>,
    /// The sections whose boards are known, by surface and section, each with its build-up's index.
    pub sections: Vec<KnownSection>,
    /// The build-ups.
    pub build_ups: Vec<BuildUp>,
    /// Widths of the joints between boards that were measured.
    pub widths: Vec<Length>,
}

/// A section whose boards are known.
#[derive(Debug, Clone, Copy)]
pub(super) struct KnownSection {
    /// Index of its surface.
    pub surface: usize,
    /// Its index on that surface.
    pub section: usize,
    /// Index of its build-up.
    pub build_up: usize,
}

/// Which readings are taken in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Readings {
    /// All there are.
    All,
    /// Those of the first visit and before it.
    FirstVisit,
}

/// What was believed last, with all of the job and of the catalog that it followed from.
struct Remembered {
    job: Job,
    catalog: Arc<Catalog>,
    beliefs: Option<Arc<Beliefs>>,
}

/// Most edits are of prices and the like, which no belief follows from: what was believed last still
/// stands then, and is not worked out again.
static LAST: Mutex<Option<Remembered>> = Mutex::new(None);

/// The parts of a job that beliefs follow from, the others left as in a new one.
fn told(job: &Job) -> Job {
    Job {
        surfaces: job.surfaces.clone(),
        survey: job.survey.clone(),
        air: job.air.clone(),
        logged: job.logged.clone(),
        installed: job.installed,
        visited: job.visited,
        done: job.done.clone(),
        later: job.later.clone(),
        ..Job::default()
    }
}

/// Weighs the worlds by all that the job says; `catalog` is the one without the job's own prices and
/// rates, in which the worlds have no part. `None` without boards or a room.
pub(super) fn beliefs(job: &Job, catalog: &Arc<Catalog>, layouts: &[SurfaceLayout]) -> Option<Arc<Beliefs>> {
    let told = told(job);
    // Whoever panicked with the lock in hand left either the old or the new one.
    let last = || LAST.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(known) = &*last()
        && Arc::ptr_eq(&known.catalog, catalog)
        && known.job == told
    {
        return known.beliefs.clone();
    }
    let beliefs = weighed(&told, catalog, layouts, Readings::All).map(Arc::new);
    *last() = Some(Remembered { job: told, catalog: Arc::clone(catalog), beliefs: beliefs.clone() });
    beliefs
}

/// Weighs the worlds by these readings.
pub(super) fn weighed(
    job: &Job,
    catalog: &Catalog,
    layouts: &[SurfaceLayout],
    readings: Readings,
) -> Option<Beliefs> {
    let (sections, build_ups) = known_sections(job, catalog);
    let evidence: Vec<SectionEvidence<'_>> = sections
        .iter()
        .filter_map(|known| section_evidence(job, catalog, &layouts[known.surface], *known, readings))
        .collect();
    if evidence.len() < sections.len() {
        return None;
    }
    let rooms: Vec<RoomEvidence> = job
        .survey
        .rooms
        .iter()
        .map(|reading| RoomEvidence { day: days_from_visit(job, reading.date), humidity: reading.humidity })
        .collect();
    let known = Evidence {
        air: &job.air,
        logged: job.logged.as_ref(),
        stations: &catalog.stations,
        visit: visit_day(job),
        age: age(job),
        build_ups: &build_ups,
        sections: &evidence,
        rooms: &rooms,
    };
    let belief = believe(&known, &catalog.causes, &catalog.priors)?;
    let widths = evidence.iter().flat_map(|section| &section.gaps).map(|gap| gap.width).collect();
    Some(Beliefs { belief: Arc::new(belief), sections, build_ups, widths })
}

/// The room's usual year, by everything known.
pub(super) fn room_year(job: &Job, catalog: &Catalog, beliefs: Option<&Beliefs>) -> Option<IndoorYear> {
    if let Some(Beliefs { belief, .. }) = beliefs {
        return Some(IndoorYear { days: belief.year.clone(), range: belief.humidity.clone() });
    }
    let days = usual_year(&job.air, job.logged.as_ref(), &catalog.stations, &catalog.priors)?;
    let range = days.iter().map(|day| Span { low: day.humidity, high: day.humidity }).collect();
    Some(IndoorYear { days, range })
}

/// The sections whose species and coating are in the catalog, and the distinct build-ups they are of.
fn known_sections(job: &Job, catalog: &Catalog) -> (Vec<KnownSection>, Vec<BuildUp>) {
    let (mut sections, mut build_ups): (Vec<KnownSection>, Vec<BuildUp>) = (Vec::new(), Vec::new());
    let mut names: Vec<(&str, Finish)> = Vec::new();
    for (surface, of_surface) in job.surfaces.iter().enumerate() {
        for (section, of_section) in of_surface.sections.iter().enumerate() {
            let board = &of_section.board;
            let (Some(species), Some(coating)) =
                (catalog.species(&board.species), catalog.coating(board.finish))
            else {
                continue;
            };
            let own = BuildUp {
                // Boards thinner than a millimeter count as one.
                thickness: board.thickness.max(Length::mm(1.0)),
                density: species.density(),
                coating: coating.clone(),
                films: catalog.films.clone(),
                behind: board.behind,
            };
            let name = (species.name.as_str(), board.finish);
            let same = |at: &usize| build_ups[*at] == own && names[*at] == name;
            let build_up = (0..build_ups.len()).find(same).unwrap_or_else(|| {
                build_ups.push(own);
                names.push(name);
                build_ups.len() - 1
            });
            sections.push(KnownSection { surface, section, build_up });
        }
    }
    (sections, build_ups)
}

/// Days from the visit to the day of a reading; none if it was taken on the visit. A date before the
/// install, or without one before the visit, is a slip: the reading counts as the visit's.
fn days_from_visit(job: &Job, date: Option<Date>) -> i64 {
    let days = date.map_or(0, |date| i64::from((date - job.visited).get_days()));
    if days < -age(job).unwrap_or(0) { 0 } else { days }
}

fn section_evidence<'a>(
    job: &Job,
    catalog: &'a Catalog,
    laid: &SurfaceLayout,
    known: KnownSection,
    readings: Readings,
) -> Option<SectionEvidence<'a>> {
    let surface = &job.surfaces[known.surface];
    let section = &surface.sections[known.section];
    let board = &section.board;
    // Readings of a name that two sections bear are those of the first, and count once.
    let named_before =
        |section: &crate::surface::Section| section.name == surface.sections[known.section].name;
    let is_read = !surface.sections[..known.section].iter().any(named_before);
    let edges: Vec<&str> = laid
        .joints
        .iter()
        .filter(|joint| joint.section == known.section && joint.kind == JointKind::BoardEdge)
        .map(|joint| joint.label.as_str())
        .collect();
    let across = board.face_width * (board.fixing.at_groove() + board.fixing.at_tongue());
    // Boards held at both edges do not move a joint: their gaps say nothing of moisture.
    let moves = across > Length::ZERO;
    let meter = job
        .survey
        .moistures
        .iter()
        .filter(|reading| is_read && reading.surface == surface.name && reading.section == section.name);
    let meter = meter.filter_map(|reading| {
        let moisture = reading.corrected()?;
        Some(MeterEvidence {
            pct: moisture.to_pct(),
            set_to_species: reading.setting == MeterSetting::ThisSpecies,
            day: days_from_visit(job, reading.date),
        })
    });
    let later = job.later.iter().filter(|_| is_read && moves && readings == Readings::All);
    Some(SectionEvidence {
        species: catalog.species(&board.species)?,
        ring: board.ring_angle,
        across,
        build_up: known.build_up,
        joints: edges.len(),
        gaps: if is_read && moves { gaps(job, &surface.name, &edges) } else { Vec::new() },
        meter: meter.collect(),
        later: later.filter_map(|visit| later_gaps(job, visit, &surface.name, &edges)).collect(),
    })
}

/// The joints of a section that were measured. A joint that was read twice is still one joint.
fn gaps(job: &Job, surface: &str, edges: &[&str]) -> Vec<GapEvidence> {
    #[expect(clippy::cast_precision_loss, reason = "a count of joints")]
    let along = |at: usize| (at as f64 + 0.5) / edges.len() as f64;
    let of_joint = |(at, label): (usize, &&str)| {
        let own: Vec<&GapReading> = job
            .survey
            .gaps
            .iter()
            .filter(|gap| gap.surface == surface && gap.joint == **label && gap.width >= Length::ZERO)
            .collect();
        let widths: Vec<f64> = own.iter().map(|gap| gap.width.to_m()).collect();
        let noted = own.iter().map(|gap| gap.failed).rfind(|failed| *failed != Failure::NotNoted);
        (!own.is_empty()).then(|| GapEvidence {
            place: along(at),
            width: Length::m(widths.mean()),
            failed: noted.unwrap_or_default(),
        })
    };
    edges.iter().enumerate().filter_map(of_joint).collect()
}

/// How the joints of a section that were measured at the visit had changed by a later one, before
/// anything was done to them.
fn later_gaps(job: &Job, visit: &LaterVisit, surface: &str, edges: &[&str]) -> Option<LaterGaps> {
    let day = i64::from((visit.on - job.visited).get_days());
    if day <= 0 || job.done.finished.is_some_and(|finished| visit.on > finished) {
        return None;
    }
    let mean = |widths: Vec<f64>| (!widths.is_empty()).then(|| widths.mean());
    let then = |label: &str| {
        let own = job.survey.gaps.iter().filter(|gap| gap.surface == surface && gap.joint == label);
        mean(own.map(|gap| gap.width.to_m()).collect())
    };
    let later = |label: &str| {
        let own = visit.gaps.iter().filter(|gap| gap.surface == surface && gap.joint == label);
        mean(own.filter_map(|gap| gap.width).map(Length::to_m).collect())
    };
    let changes: Vec<f64> = edges.iter().filter_map(|label| Some(later(label)? - then(label)?)).collect();
    (!changes.is_empty()).then(|| LaterGaps {
        day,
        joints: changes.len(),
        change: Length::m(changes.iter().mean()),
    })
}
