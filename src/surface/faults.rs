//! What is wrong with a drawing.

use std::collections::HashSet;

use geo::{Area as _, BooleanOps as _, BoundingRect as _, Intersects as _, MultiPolygon, Validation as _};

use super::courses::too_many_boards;
use super::layout::{SectionLayout, SurfaceLayout};
use super::model::{Divider, Point, Section, Surface, polygon};
use crate::measure::{Area, Length};

/// The part of a surface that a fault is in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    /// The outline.
    Outline,
    /// The opening of this index.
    Opening(usize),
    /// The divider of this index.
    Divider(usize),
    /// The section of this index.
    Section(usize),
}

/// Something wrong with a drawing.
#[derive(Debug, Clone, PartialEq)]
pub struct Fault {
    /// Where.
    pub part: Part,
    /// What.
    pub kind: FaultKind,
}

/// What can be wrong with a drawing. Names are those that the user gave.
#[derive(Debug, Clone, PartialEq)]
pub enum FaultKind {
    /// The edge has fewer than three corners.
    TooFewCorners {
        /// How many it has.
        corners: usize,
    },
    /// The corners enclose no area.
    NoArea,
    /// The edge crosses itself.
    CrossesItself,
    /// The opening lies outside the outline.
    OpeningOutside {
        /// Its name.
        name: String,
    },
    /// The divider covers nothing of the surface.
    DividerOutside {
        /// Its name.
        name: String,
    },
    /// The divider ends where boards go on.
    DividerEndsInside {
        /// Its name.
        name: String,
        /// The section it ends in.
        section: String,
    },
    /// Part of the surface belongs to no section.
    Bare {
        /// How much of it.
        area: Area,
    },
    /// Two joints would have the same label.
    TwoJointsAlike {
        /// The label.
        label: String,
    },
    /// Nothing of the section is left to board.
    NothingToBoard {
        /// Its name.
        section: String,
    },
    /// The section would take more boards than are laid.
    TooManyBoards {
        /// Its name.
        section: String,
    },
    /// The longest board would make more boards than are laid.
    TooManyPieces {
        /// That length.
        longest: Length,
    },
    /// The section is narrower than one board.
    NarrowerThanABoard {
        /// Its name.
        section: String,
        /// Width of its boards.
        face: Length,
        /// Its extent across them.
        width: Length,
    },
    /// The overall width of the boards is less than their face.
    NoTongue {
        /// The overall width.
        overall: Length,
        /// The face width.
        face: Length,
    },
    /// Two sections overlap.
    Overlap {
        /// The later one.
        section: String,
        /// The earlier one.
        other: String,
    },
}

impl FaultKind {
    /// Whether the part could not be used at all.
    pub const fn is_fatal(&self) -> bool {
        match self {
            Self::TooFewCorners { .. }
            | Self::NoArea
            | Self::CrossesItself
            | Self::TwoJointsAlike { .. }
            | Self::NothingToBoard { .. }
            | Self::TooManyBoards { .. } => true,
            Self::OpeningOutside { .. }
            | Self::DividerOutside { .. }
            | Self::DividerEndsInside { .. }
            | Self::Bare { .. }
            | Self::TooManyPieces { .. }
            | Self::NarrowerThanABoard { .. }
            | Self::NoTongue { .. }
            | Self::Overlap { .. } => false,
        }
    }
}

/// Areas below this many square meters are nothing.
const NO_AREA: f64 = 1e-6;

/// Lists what is wrong with `surface`, whose layout is `laid`.
pub fn faults(surface: &Surface, laid: &SurfaceLayout) -> Vec<Fault> {
    let mut found = Vec::new();
    let mut add = |part, kind| found.push(Fault { part, kind });
    if let Some(kind) = ring_fault(&surface.outline) {
        add(Part::Outline, kind);
    }
    let outline = polygon(&surface.outline);
    for (index, opening) in surface.openings.iter().enumerate() {
        let hole = polygon(&opening.corners);
        if let Some(kind) = ring_fault(&opening.corners) {
            add(Part::Opening(index), kind);
        } else if !outline.intersects(&hole) {
            add(Part::Opening(index), FaultKind::OpeningOutside { name: opening.name.clone() });
        }
    }
    for (index, divider) in surface.dividers.iter().enumerate() {
        let name = divider.name.clone();
        if laid.dividers.get(index).is_none_or(|face| face.unsigned_area() < NO_AREA) {
            add(Part::Divider(index), FaultKind::DividerOutside { name });
        } else if let Some(section) = ends_inside(divider, laid) {
            let section = surface.sections[section].name.clone();
            add(Part::Divider(index), FaultKind::DividerEndsInside { name, section });
        }
    }
    for (index, section) in surface.sections.iter().enumerate() {
        let part = Part::Section(index);
        found.extend(
            section_faults(section, laid.sections.get(index)).into_iter().map(|kind| Fault { part, kind }),
        );
    }
    found.extend(overlaps(surface, laid));
    found.extend(bare(laid));
    found.extend(twice_named(laid));
    found
}

/// The section that boards go on in past an end of a divider.
fn ends_inside(divider: &Divider, laid: &SurfaceLayout) -> Option<usize> {
    const BEYOND: f64 = 0.01;
    let (from, to) = (divider.from.coord(), divider.to.coord());
    let axis = to - from;
    let beyond = axis * (BEYOND / axis.x.hypot(axis.y));
    laid.sections
        .iter()
        .position(|section| [from - beyond, to + beyond].iter().any(|end| section.clear.intersects(end)))
}

/// Part of the surface that no section boards; where a section could not be laid, that is the fault instead.
fn bare(laid: &SurfaceLayout) -> Option<Fault> {
    const SEEN: Area = Area::m2(0.05);
    let areas = || laid.sections.iter().map(SectionLayout::area);
    let area = laid.boardable - areas().sum();
    let all_laid = !laid.sections.is_empty() && areas().all(|area| area.to_m2() >= NO_AREA);
    (all_laid && area > SEEN).then_some(Fault { part: Part::Outline, kind: FaultKind::Bare { area } })
}

/// Joints that share a label, so that a reading could mean either.
fn twice_named(laid: &SurfaceLayout) -> Option<Fault> {
    let mut seen = HashSet::new();
    let twice = laid.joints.iter().find(|joint| !seen.insert(&joint.label))?;
    let kind = FaultKind::TwoJointsAlike { label: twice.label.clone() };
    Some(Fault { part: Part::Outline, kind })
}

fn ring_fault(corners: &[Point]) -> Option<FaultKind> {
    let shape = polygon(corners);
    if corners.len() < 3 {
        Some(FaultKind::TooFewCorners { corners: corners.len() })
    } else if shape.unsigned_area() < NO_AREA {
        Some(FaultKind::NoArea)
    } else if !shape.is_valid() {
        Some(FaultKind::CrossesItself)
    } else {
        None
    }
}

fn section_faults(section: &Section, laid: Option<&SectionLayout>) -> Vec<FaultKind> {
    if let Some(kind) = section.region.as_deref().and_then(ring_fault) {
        return vec![kind];
    }
    let mut found = Vec::new();
    let board = &section.board;
    let (overall, face) = (board.overall_width, board.face_width);
    if overall < face {
        found.push(FaultKind::NoTongue { overall, face });
    }
    let Some(laid) = laid else { return found };
    let name = section.name.clone();
    if laid.area().to_m2() < NO_AREA {
        found.push(FaultKind::NothingToBoard { section: name });
        return found;
    }
    if laid.courses == 0 {
        found.push(FaultKind::TooManyBoards { section: name.clone() });
    }
    if too_many_boards(section, &laid.clear, laid.courses) {
        found.push(FaultKind::TooManyPieces { longest: board.longest.unwrap_or_default() });
    }
    if let Some(width) = narrower_than_a_board(section, &laid.clear) {
        found.push(FaultKind::NarrowerThanABoard { section: name, face, width });
    }
    found
}

/// The section's extent across its boards, if less than one board.
fn narrower_than_a_board(section: &Section, clear: &MultiPolygon) -> Option<Length> {
    let frame = super::courses::Frame::new(section, clear, f64::INFINITY);
    let bounds = frame.clear.bounding_rect()?;
    let across = Length::m(bounds.height());
    (across + Length::mm(0.1) < section.board.face_width).then_some(across)
}

fn overlaps(surface: &Surface, laid: &SurfaceLayout) -> Vec<Fault> {
    let mut found = Vec::new();
    for (index, a) in laid.sections.iter().enumerate() {
        for (later, b) in laid.sections.iter().enumerate().skip(index + 1) {
            if a.clear.intersection(&b.clear).unsigned_area() > 1e-4 {
                let name = |at: usize| surface.sections[at].name.clone();
                let kind = FaultKind::Overlap { section: name(later), other: name(index) };
                found.push(Fault { part: Part::Section(later), kind });
            }
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::surface::pattern::{Pattern, rectangle};
    use crate::surface::{BoardSpec, layout};

    /// A ceiling of 4 by 3 m in quarters, without a fault.
    fn quarters() -> Surface {
        let outline = rectangle(Length::m(4.0), Length::m(3.0));
        let pattern = Pattern::QuartersAtDividers { divider: Length::mm(90.0) };
        let (sections, dividers) =
            pattern.fill(&outline, &BoardSpec::default(), &|number| format!("divider {number}"));
        Surface { outline, sections, dividers, ..Surface::default() }
    }

    fn found(surface: &Surface) -> Vec<Fault> {
        faults(surface, &layout(surface))
    }

    #[test]
    fn a_divider_that_ends_inside_a_section_is_found() {
        let mut surface = quarters();
        assert_eq!(found(&surface), []);
        surface.dividers.truncate(1);
        surface.sections.truncate(1);
        surface.sections[0].region = None;
        assert_eq!(found(&surface), []);
        let divider = &mut surface.dividers[0];
        divider.to.0 = (divider.from.0 + divider.to.0) / 2.0;
        divider.to.1 = (divider.from.1 + divider.to.1) / 2.0;
        let (name, section) = (divider.name.clone(), surface.sections[0].name.clone());
        let kind = FaultKind::DividerEndsInside { name, section };
        assert_eq!(found(&surface).pop(), Some(Fault { part: Part::Divider(0), kind }));
    }

    #[test]
    fn a_part_without_boards_is_found_with_its_area() {
        let mut surface = quarters();
        // The quarter of the first corner loses that corner: a triangle of 0.5 by 0.5 m stays bare.
        let region = surface.sections[0].region.as_mut().expect("a quarter");
        let corner = region.iter().position(|at| *at == Point::m(0.0, 0.0)).expect("the corner");
        region.splice(corner..=corner, [Point::m(0.0, 0.5), Point::m(0.5, 0.0)]);
        let [Fault { part: Part::Outline, kind: FaultKind::Bare { area } }] = found(&surface)[..] else {
            panic!("{:?}", found(&surface));
        };
        assert!((area.to_m2() - 0.125).abs() < 1e-6, "{area:?}");
    }
}
