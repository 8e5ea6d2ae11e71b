//! What is wrong with a drawing, in words that a person can act on.

use std::collections::HashSet;

use geo::{Area as _, BooleanOps as _, BoundingRect as _, Intersects as _, MultiPolygon, Validation as _};

use super::courses::too_many_boards;
use super::layout::{SectionLayout, SurfaceLayout};
use super::model::{Divider, Point, Section, Surface, polygon};
use crate::measure::{Area, Length, Units};

/// The part of a surface that a fault is in.
#[derive(Debug, Clone, PartialEq, Eq)]
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
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fault {
    /// Where.
    pub part: Part,
    /// Whether the part could not be used at all.
    pub fatal: bool,
    /// The value and the rule it breaks.
    pub what: String,
    /// The way out.
    pub fix: String,
}

/// Areas below this many square metres are nothing.
const NO_AREA: f64 = 1e-6;

/// Lists what is wrong with `surface`, whose layout is `laid`.
pub fn faults(surface: &Surface, laid: &SurfaceLayout, units: Units) -> Vec<Fault> {
    let mut found = Vec::new();
    let mut add = |part, fatal, what: String, fix: &str| {
        found.push(Fault { part, fatal, what, fix: fix.to_owned() });
    };
    if let Some(what) = ring_fault(&surface.outline) {
        add(Part::Outline, true, what, "Give at least three corners, in order around the edge");
    }
    let outline = polygon(&surface.outline);
    for (index, opening) in surface.openings.iter().enumerate() {
        let hole = polygon(&opening.corners);
        if let Some(what) = ring_fault(&opening.corners) {
            add(Part::Opening(index), true, what, "Give its corners in order");
        } else if !outline.intersects(&hole) {
            let what = format!("Opening “{}” lies outside the outline", opening.name);
            add(Part::Opening(index), false, what, "Move it inside, or take it out");
        }
    }
    for (index, divider) in surface.dividers.iter().enumerate() {
        let gone = laid.dividers.get(index).is_none_or(|face| face.unsigned_area() < NO_AREA);
        if gone {
            let what = format!("Divider “{}” covers nothing of the surface", divider.name);
            add(Part::Divider(index), false, what, "Give it a width and two ends inside the outline");
        } else if let Some(section) = ends_inside(divider, laid) {
            let section = &surface.sections[section].name;
            let what = format!("Divider “{}” ends inside section “{section}”", divider.name);
            add(
                Part::Divider(index),
                false,
                what,
                "It parts nothing there: drag its end to the edge or to another divider",
            );
        }
    }
    found.extend(section_faults(surface, laid, units));
    found.extend(bare(laid, units));
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

/// Part of the surface that no section boards; where a section could not be laid, that is told instead.
fn bare(laid: &SurfaceLayout, units: Units) -> Option<Fault> {
    const SEEN: Area = Area::m2(0.05);
    let areas = || laid.sections.iter().map(SectionLayout::area);
    let left = laid.boardable - areas().sum();
    let all_laid = !laid.sections.is_empty() && areas().all(|area| area.to_m2() >= NO_AREA);
    (all_laid && left > SEEN).then(|| Fault {
        part: Part::Outline,
        fatal: false,
        what: format!("{} of the surface belongs to no section and has no boards", left.show(units)),
        fix: "Move the corners of the sections beside it, or cut it out as an opening".to_owned(),
    })
}

/// Joints that share a label, so that a reading could mean either.
fn twice_named(laid: &SurfaceLayout) -> Option<Fault> {
    let mut seen = HashSet::new();
    let twice = laid.joints.iter().find(|joint| !seen.insert(&joint.label))?;
    Some(Fault {
        part: Part::Outline,
        fatal: true,
        what: format!("Two joints would both be called “{}”", twice.label),
        fix: "Rename the section, divider or opening that makes them alike; give it letters, not a number"
            .to_owned(),
    })
}

fn ring_fault(corners: &[Point]) -> Option<String> {
    let shape = polygon(corners);
    if corners.len() < 3 {
        Some(format!("There are only {} corners", corners.len()))
    } else if shape.unsigned_area() < NO_AREA {
        Some("The corners enclose no area".to_owned())
    } else if !shape.is_valid() {
        Some("The edge crosses itself".to_owned())
    } else {
        None
    }
}

fn section_faults(surface: &Surface, laid: &SurfaceLayout, units: Units) -> Vec<Fault> {
    let mut found = Vec::new();
    for (index, section) in surface.sections.iter().enumerate() {
        let mut add = |fatal, what: String, fix: &str| {
            found.push(Fault { part: Part::Section(index), fatal, what, fix: fix.to_owned() });
        };
        if let Some(what) = section.region.as_deref().and_then(ring_fault) {
            add(true, what, "Give at least three corners, in order around the edge");
            continue;
        }
        board_faults(section, units, &mut add);
        let Some(part) = laid.sections.get(index) else { continue };
        if part.area().to_m2() < NO_AREA {
            add(
                true,
                format!("Section “{}” has no area to board", section.name),
                "Draw its region inside the outline, clear of dividers and openings",
            );
            continue;
        }
        if part.courses == 0 {
            add(
                true,
                format!("Section “{}” would need more boards than can be drawn", section.name),
                "Check the face width",
            );
        }
        if too_many_boards(section, &part.clear, part.courses) {
            let longest = section.board.longest.unwrap_or_default().show(units);
            add(
                false,
                format!("A longest board of {longest} makes more boards than can be drawn"),
                "Type the stock length, or leave it empty; courses are laid whole until then",
            );
        }
        if let Some(width) = narrower_than_a_board(section, &part.clear) {
            let what = format!(
                "The boards of section “{}” are {} wide, the section only {}",
                section.name,
                section.board.face_width.show(units),
                width.show(units)
            );
            add(false, what, "Check the face width and the direction; one ripped board is laid");
        }
    }
    found.extend(overlaps(surface, laid));
    found
}

fn board_faults(section: &Section, units: Units, add: &mut impl FnMut(bool, String, &str)) {
    let board = &section.board;
    let shown = |length: Length| length.show(units);
    if board.face_width <= Length::mm(1.0) {
        add(
            true,
            format!("Face width {} is too small for a board", shown(board.face_width)),
            "Type the width that shows, such as 5-1/8 in",
        );
    }
    if board.overall_width < board.face_width {
        let what = format!(
            "Overall width {} is less than the face width {}",
            shown(board.overall_width),
            shown(board.face_width)
        );
        add(false, what, "The overall width includes the tongue");
    }
    if board.thickness <= Length::ZERO || board.thickness > Length::mm(150.0) {
        add(
            false,
            format!("Thickness {} is not that of a board", shown(board.thickness)),
            "Type it, such as 3/4 in",
        );
    }
    if board.longest.is_some_and(|longest| longest < Length::m(0.1)) {
        let what =
            format!("A longest board of {} is too short to lay", shown(board.longest.unwrap_or_default()));
        add(false, what, "Type the stock length, or leave it empty; courses are laid whole until then");
    }
    let v = board.profile.v_leg();
    if v < Length::ZERO || v * 2.0 > board.face_width {
        add(
            false,
            format!("A V with legs of {} does not fit the board", shown(v)),
            "Type the leg of one chamfer, such as 1/8 in",
        );
    }
    if !(0.0..=90.0).contains(&board.ring_angle.to_degrees()) {
        add(
            false,
            format!("Ring angle {}° is not between 0 and 90", board.ring_angle.to_degrees()),
            "0 is flat-sawn, 90 quarter-sawn",
        );
    }
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
        for (other, b) in laid.sections.iter().enumerate().skip(index + 1) {
            if a.clear.intersection(&b.clear).unsigned_area() > 1e-4 {
                found.push(Fault {
                    part: Part::Section(other),
                    fatal: false,
                    what: format!(
                        "Section “{}” overlaps section “{}”: boards there are counted twice",
                        surface.sections[other].name, surface.sections[index].name
                    ),
                    fix: "Move a corner of one of them".to_owned(),
                });
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
        let (sections, dividers) = pattern.fill(&outline, &BoardSpec::default());
        Surface { outline, sections, dividers, ..Surface::default() }
    }

    fn told(surface: &Surface) -> Vec<(Part, String)> {
        let found = faults(surface, &layout(surface), Units::Millimeters);
        found.into_iter().map(|fault| (fault.part, fault.what)).collect()
    }

    #[test]
    fn a_divider_that_ends_inside_a_section_is_told() {
        let mut surface = quarters();
        assert_eq!(told(&surface), []);
        surface.dividers.truncate(1);
        surface.sections.truncate(1);
        surface.sections[0].region = None;
        assert_eq!(told(&surface), []);
        let divider = &mut surface.dividers[0];
        divider.to.0 = (divider.from.0 + divider.to.0) / 2.0;
        divider.to.1 = (divider.from.1 + divider.to.1) / 2.0;
        let (part, what) = told(&surface).pop().expect("a fault");
        assert_eq!(part, Part::Divider(0));
        assert!(what.ends_with(&format!("ends inside section “{}”", surface.sections[0].name)), "{what}");
    }

    #[test]
    fn a_part_without_boards_is_told_with_its_area() {
        let mut surface = quarters();
        // The quarter of the first corner loses that corner: a triangle of 0.5 by 0.5 m stays bare.
        let region = surface.sections[0].region.as_mut().expect("a quarter");
        let corner = region.iter().position(|at| *at == Point::m(0.0, 0.0)).expect("the corner");
        region.splice(corner..=corner, [Point::m(0.0, 0.5), Point::m(0.5, 0.0)]);
        assert_eq!(
            told(&surface),
            [(Part::Outline, "0.1 m² of the surface belongs to no section and has no boards".to_owned())]
        );
    }
}
