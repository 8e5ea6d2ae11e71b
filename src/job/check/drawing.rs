//! Surfaces, what is drawn on them, and the boards of their sections.

use std::collections::HashSet;

use super::{Checked, Problems};
use crate::job::fields::{self, At, Field};
use crate::job::problem::{Fault, LayoutFault, Listed};
use crate::job::sanitized::widest_profile;
use crate::measure::Length;
use crate::surface::{FaultKind, Part, Profile, Surface, faults};

pub(super) fn drawing(job: &Checked<'_>, problems: &mut Problems) {
    let mut names = HashSet::new();
    for (index, (surface, laid)) in job.sanitized.surfaces.iter().zip(job.layouts).enumerate() {
        let at = At::index(index);
        if !names.insert(&surface.name) {
            problems.at(&fields::SURFACE_NAME, at, LayoutFault::SameSurface { name: surface.name.clone() });
        }
        for fault in faults(surface, laid) {
            let (field, at) = match &fault.kind {
                FaultKind::TwoJointsAlike { label } => name_in(index, surface, label),
                kind => place(index, fault.part, kind),
            };
            problems.at(field, at, Fault::Drawing(fault.kind));
        }
        if surface.sections.is_empty() {
            problems.at(&fields::OUTLINE, at, LayoutFault::NoBoards { surface: surface.name.clone() });
        }
        sections(job, index, problems);
    }
}

/// The name that makes joints be called `label`: that of the board or opening they lie along, or else their
/// section's.
fn name_in(index: usize, surface: &Surface, label: &str) -> (&'static Field, At) {
    let along = |name: &str| label.strip_suffix(name).is_some_and(|before| before.ends_with(' '));
    let found = |place: Option<usize>, field| place.map(|part| (field, At(index, part)));
    found(surface.dividers.iter().rposition(|divider| along(&divider.name)), &fields::DIVIDER_NAME)
        .or_else(|| {
            let place = surface.openings.iter().rposition(|opening| along(&opening.name));
            found(place, &fields::OPENING_NAME)
        })
        .or_else(|| {
            let of = |name: &str| label.strip_prefix(name).is_some_and(|rest| rest.starts_with(' '));
            found(surface.sections.iter().rposition(|section| of(&section.name)), &fields::SECTION_NAME)
        })
        .unwrap_or((&fields::OUTLINE, At::index(index)))
}

/// The field that a fault of a drawing leads to.
const fn place(surface: usize, part: Part, kind: &FaultKind) -> (&'static Field, At) {
    match part {
        Part::Outline => (&fields::OUTLINE, At::index(surface)),
        Part::Opening(index) => (&fields::OPENING, At(surface, index)),
        Part::Divider(index) => (&fields::DIVIDER, At(surface, index)),
        Part::Section(index) => {
            let field = match kind {
                FaultKind::TooManyBoards { .. } | FaultKind::NarrowerThanABoard { .. } => &fields::FACE_WIDTH,
                FaultKind::TooManyPieces { .. } => &fields::MAX_LENGTH,
                FaultKind::NoTongue { .. } => &fields::OVERALL_WIDTH,
                _ => &fields::REGION,
            };
            (field, At(surface, index))
        }
    }
}

fn sections(job: &Checked<'_>, surface: usize, problems: &mut Problems) {
    let mut names = HashSet::new();
    let entered = job.entered.surfaces[surface].sections.iter();
    for (index, (section, mended)) in entered.zip(&job.sanitized.surfaces[surface].sections).enumerate() {
        let at = At(surface, index);
        if !names.insert(&section.name) {
            problems.at(&fields::SECTION_NAME, at, LayoutFault::SameSection { name: section.name.clone() });
        }
        let board = &section.board;
        if job.catalog.species(&board.species).is_none() {
            let (listed, name) = (Listed::Species, board.species.clone());
            problems.at(&fields::SPECIES, at, Fault::NotInCatalog { listed, name });
        }
        let used = widest_profile(&mended.board);
        let holds = |size: Length| {
            let figure = fields::PROFILE_SIZE.figure();
            figure.is_none_or(|figure| figure.holds(crate::measure::Quantity::Length(size)))
        };
        match board.profile {
            // One that is out of its range is reported as that.
            Profile::VGroove(size) | Profile::Bead(size) if size > used && holds(size) => {
                problems.at(&fields::PROFILE_SIZE, at, LayoutFault::ProfileTooWide { size, used });
            }
            _ => {}
        }
    }
}
