//! What is wrong with a job's entries. Geometry is judged by [`crate::surface::faults`]; here are
//! the entries themselves, and whether they fit together.

mod air;
mod plan;
mod readings;

use std::collections::HashSet;

use super::catalog::Catalog;
use super::document::Job;
use super::problem::{Place, Problem, Severity};
use crate::measure::show_date;
use crate::surface::{Part, SurfaceLayout, faults};

/// Lists everything that is wrong with `job`, whose surfaces are laid out as `layouts`.
pub fn check(job: &Job, catalog: &Catalog, layouts: &[SurfaceLayout]) -> Vec<Problem> {
    let mut problems = Problems(Vec::new());
    surfaces(job, catalog, layouts, &mut problems);
    readings::readings(job, layouts, &mut problems);
    air::air(job, catalog, &mut problems);
    dates(job, &mut problems);
    plan::plan(job, catalog, layouts, &mut problems);
    for field in &job.unknown {
        let name = field.split(':').next().unwrap_or_default().trim();
        let what = format!("“{name}” in the file is not known to this program");
        problems.note(Place::Job("file"), what, "It is kept as it stands; a newer Gapwright may know it");
    }
    problems.0
}

struct Problems(Vec<Problem>);

impl Problems {
    fn error(&mut self, place: Place, what: impl Into<String>, fix: impl Into<String>) {
        self.0.push(Problem::new(Severity::Error, place, what, fix));
    }

    fn warning(&mut self, place: Place, what: impl Into<String>, fix: impl Into<String>) {
        self.0.push(Problem::new(Severity::Warning, place, what, fix));
    }

    fn note(&mut self, place: Place, what: impl Into<String>, fix: impl Into<String>) {
        self.0.push(Problem::new(Severity::Note, place, what, fix));
    }
}

fn surfaces(job: &Job, catalog: &Catalog, layouts: &[SurfaceLayout], problems: &mut Problems) {
    let mut names = HashSet::new();
    for (index, (surface, laid)) in job.surfaces.iter().zip(layouts).enumerate() {
        if !names.insert(&surface.name) {
            problems.error(
                Place::Outline(index),
                format!("There are two surfaces called “{}”", surface.name),
                "Rename one, so that readings know which they belong to",
            );
        }
        for fault in faults(surface, laid, job.units) {
            let place = match fault.part {
                Part::Outline => Place::Outline(index),
                Part::Opening(part) => Place::Opening(index, part),
                Part::Divider(part) => Place::Divider(index, part),
                Part::Section(part) => Place::Section(index, part),
            };
            let severity = if fault.fatal { Severity::Error } else { Severity::Warning };
            problems.0.push(Problem::new(severity, place, fault.what, fault.fix));
        }
        if surface.sections.is_empty() {
            problems.warning(
                Place::Outline(index),
                format!("“{}” has no boards", surface.name),
                "Choose a pattern for it",
            );
        }
        let mut sections = HashSet::new();
        for (number, section) in surface.sections.iter().enumerate() {
            let place = || Place::Section(index, number);
            if !sections.insert(&section.name) {
                problems.error(
                    place(),
                    format!("There are two sections called “{}”", section.name),
                    "Rename one, so that readings know which they belong to",
                );
            }
            if catalog.species(&section.board.species).is_none() {
                problems.error(
                    place(),
                    format!("Species “{}” is not on the shelf", section.board.species),
                    "Choose one from the list",
                );
            }
        }
    }
}

fn dates(job: &Job, problems: &mut Problems) {
    if let Some(installed) = job.installed
        && installed.earliest() > job.visited
    {
        problems.error(
            Place::Job("install date"),
            format!(
                "The boards went up on {}, after the visit on {}",
                show_date(installed.date()),
                show_date(job.visited)
            ),
            "Correct one of the two",
        );
    }
    if let Some(seal) = job.plan.seal_on
        && seal < job.visited
    {
        problems.error(
            Place::Plan("sealing date"),
            format!("{} is before the visit on {}", show_date(seal), show_date(job.visited)),
            "Choose a later day, or leave it to the best weeks",
        );
    }
    if let Some(seal) = job.plan.seal_on
        && seal > super::sanitized::last_sealing(job.visited)
    {
        problems.error(
            Place::Plan("sealing date"),
            format!(
                "{} is more than two years after the visit: nothing is worked out that far",
                show_date(seal)
            ),
            "Choose an earlier day, or leave it to the best weeks",
        );
    }
    if let Some(year) = job.built
        && !(1600..=job.visited.year()).contains(&year)
    {
        problems.error(
            Place::Job("year built"),
            format!("A house built in {year} cannot be"),
            "Type the year, or leave it empty",
        );
    }
}
