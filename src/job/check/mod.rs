//! What is wrong with a job's entries: each out of its range, by the table of fields; and then whether they
//! fit together, a file for each subject. Whatever a problem says is used in place of an entry is what the
//! sanitized job has there.

mod book;
mod dates;
mod drawing;
mod plan;
mod ranges;
mod readings;

use super::catalog::Catalog;
use super::document::Job;
use super::fields::{self, At, Field};
use super::problem::{Fault, FileFault, Listed, Place, Problem};
use crate::air::IndoorAir;
use crate::surface::SurfaceLayout;

/// What entries are checked with.
#[derive(Debug, Clone, Copy)]
pub struct Checked<'a> {
    /// The job as it was entered.
    pub entered: &'a Job,
    /// The same after [`super::sanitized()`].
    pub sanitized: &'a Job,
    /// The catalog with the job's own figures.
    pub catalog: &'a Catalog,
    /// The layout of each surface of the sanitized job.
    pub layouts: &'a [SurfaceLayout],
}

/// Lists everything that is wrong with a job.
pub fn check(job: &Checked<'_>) -> Vec<Problem> {
    let mut problems = Problems(Vec::new());
    ranges::ranges(job, &mut problems);
    drawing::drawing(job, &mut problems);
    readings::readings(job, &mut problems);
    air(job, &mut problems);
    next_species(job, &mut problems);
    dates::dates(job, &mut problems);
    plan::plan(job, &mut problems);
    book::book(job, &mut problems);
    for field in &job.entered.unknown {
        let name = field.split(':').next().unwrap_or_default().trim().trim_matches('"').to_owned();
        problems.0.push(Problem::new(Place::WholeFile, FileFault::UnknownEntry { name }));
    }
    problems.0
}

/// The problems found so far.
struct Problems(Vec<Problem>);

impl Problems {
    fn at(&mut self, field: &'static Field, at: At, fault: impl Into<Fault>) {
        self.0.push(Problem::new(Place::Field(field, at), fault));
    }

    fn once(&mut self, field: &'static Field, fault: impl Into<Fault>) {
        self.at(field, At::ONCE, fault);
    }
}

/// The species of boards to come; while nobody has said it, nothing is wrong with it.
fn next_species(job: &Checked<'_>, problems: &mut Problems) {
    let next = job.entered.next_install.as_ref();
    if let Some(name) = next.map(|next| &next.boards.species).filter(|name| !name.is_empty())
        && job.catalog.species(name).is_none()
    {
        let listed = Listed::Species;
        problems.once(&fields::NEXT_SPECIES, Fault::NotInCatalog { listed, name: name.clone() });
    }
}

/// The air of the room and the house.
fn air(job: &Checked<'_>, problems: &mut Problems) {
    if let IndoorAir::FromClimate { station, .. } = &job.entered.air
        // A place that nobody named is asked for by the answer.
        && !station.is_empty()
        && job.catalog.station(station).is_none()
    {
        let listed = Listed::Place;
        problems.once(&fields::PLACE, Fault::NotInCatalog { listed, name: station.clone() });
    }
    if let IndoorAir::FromPlace { site, .. } = &job.entered.air
        && site.climate().is_err()
    {
        problems.once(&fields::PLACE, Fault::ClimateUnreadable { place: site.name.clone() });
    }
    if let Some(house) = job.sanitized.air.house()
        && house.cool_to < house.heat_to
    {
        let fault = Fault::CoolsBelowHeat { cool: house.cool_to, heat: house.heat_to };
        problems.once(&fields::AC_SETPOINT, fault);
    }
}
