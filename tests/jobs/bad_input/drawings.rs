//! Outlines, openings, sections and boards that cannot be: each spoils its own place only.

use gapwright::job::fields::{self, At};
use gapwright::job::{Job, Severity};
use gapwright::measure::{Angle, Length};
use gapwright::surface::{Opening, Point};

use super::{SOUND, after, others_stand, told_at};

#[test]
fn an_outline_that_crosses_itself_spoils_its_surface_only() {
    let (_, found) = after(|job| job.surfaces[0].outline[3] = Point::m(3.0, -1.0));
    assert_eq!(told_at(&found, &fields::OUTLINE, At::index(0), "crosses itself").severity, Severity::Error);
    others_stand(&found, &[(0, 0), (0, 1)]);
    let (_, found) = after(|job| job.surfaces[0].outline.truncate(2));
    told_at(&found, &fields::OUTLINE, At::index(0), "only 2 corners");
    others_stand(&found, &[(0, 0), (0, 1)]);
    let (_, found) = after(|job| job.surfaces[0].outline.clear());
    told_at(&found, &fields::OUTLINE, At::index(0), "no corners");
    others_stand(&found, &[(0, 0), (0, 1)]);
}

#[test]
fn an_opening_outside_the_outline_is_told_and_takes_nothing_away() {
    let corners = [(30.0, 0.0), (31.0, 0.0), (31.0, 1.0)].map(|(x, y)| Point::m(x, y)).to_vec();
    let name = "skylight".to_owned();
    let (_, found) = after(|job| job.surfaces[0].openings.push(Opening { name, corners }));
    let problem = told_at(&found, &fields::OPENING, At(0, 0), "“skylight” lies outside");
    assert_eq!(problem.severity, Severity::Warning);
    assert!(found.layouts == SOUND.1.layouts, "the layout is touched");
    assert_eq!(found.answer, SOUND.1.answer);
}

#[test]
fn a_section_without_area_is_told_and_the_others_stand() {
    let corner = |job: &Job| job.surfaces[0].outline[0];
    let (_, found) = after(|job| job.surfaces[0].sections[1].region = Some(vec![corner(job); 4]));
    assert_eq!(told_at(&found, &fields::REGION, At(0, 1), "no area").severity, Severity::Error);
    others_stand(&found, &[(0, 1)]);
    let outside = [(30.0, 0.0), (31.0, 0.0), (31.0, 1.0)].map(|(x, y)| Point::m(x, y)).to_vec();
    let (_, found) = after(|job| job.surfaces[0].sections[1].region = Some(outside));
    told_at(&found, &fields::REGION, At(0, 1), "no area");
    others_stand(&found, &[(0, 1)]);
    let (_, found) = after(|job| job.surfaces[0].trim = Length::feet(30.0));
    told_at(&found, &fields::REGION, At(0, 0), "no area");
    others_stand(&found, &[(0, 0), (0, 1)]);
}

#[test]
fn a_board_wider_than_its_section_is_told_and_laid_once() {
    let strip = [(9.2, 0.0), (10.2, 0.0), (10.2, 9.5), (9.2, 9.5)];
    let (_, found) = after(|job| {
        let section = &mut job.surfaces[0].sections[1];
        section.board.face_width = Length::feet(6.0);
        section.direction = Angle::degrees(90.0);
        section.region = Some(strip.map(|(x, y)| Point(Length::feet(x), Length::feet(y))).to_vec());
    });
    let problem = told_at(&found, &fields::FACE_WIDTH, At(0, 1), "less than one board of 6'");
    assert_eq!(problem.severity, Severity::Warning);
    assert_eq!(found.layouts[0].boards.iter().filter(|board| board.section == 1).count(), 1);
    others_stand(&found, &[(0, 1)]);
}

/// What a message says is used is what the boards are laid with.
#[test]
fn boards_of_no_width_are_told_and_laid_as_is_said() {
    let laid_with = |face_width: Length| {
        let (_, found) = after(|job| job.surfaces[0].sections[1].board.face_width = face_width);
        others_stand(&found, &[(0, 1)]);
        found
    };
    for (width, text) in [(Length::ZERO, "1/4\" is used"), (Length::feet(20.0), "6' is used")] {
        let found = laid_with(width);
        told_at(&found, &fields::FACE_WIDTH, At(0, 1), text);
        let used = if width == Length::ZERO { Length::inches(0.25) } else { Length::feet(6.0) };
        assert_eq!(found.layouts, laid_with(used).layouts);
    }
}

#[test]
fn a_corner_far_out_is_drawn_without_a_panic() {
    for far in [900.0, -900.0, 1e-9] {
        let (_, found) = after(|job| job.surfaces[0].outline[0].0 = Length::m(far));
        others_stand(&found, &[(0, 0), (0, 1)]);
    }
    let (_, found) = after(|job| job.surfaces[0].outline[0].0 = Length::feet(-4000.0));
    told_at(&found, &fields::OUTLINE, At::index(0), "−4000' is not between");
}

#[test]
fn names_given_twice_are_told() {
    let (_, found) = after(|job| job.surfaces[1].name = job.surfaces[0].name.clone());
    told_at(&found, &fields::SURFACE_NAME, At::index(1), "Two surfaces are called “South slope”");
    assert_eq!(found.sections.len(), 4);
    let (_, found) = after(|job| job.surfaces[0].sections[1].name = "A".to_owned());
    told_at(&found, &fields::SECTION_NAME, At(0, 1), "Two sections are called “A”");
    others_stand(&found, &[(0, 0), (0, 1)]);
}

#[test]
fn an_unknown_species_spoils_its_section_only() {
    let (_, found) = after(|job| job.surfaces[0].sections[1].board.species = "Balsa".to_owned());
    let problem = told_at(&found, &fields::SPECIES, At(0, 1), "“Balsa”");
    assert_eq!(problem.severity, Severity::Error);
    assert_eq!(found.section(0, 1), None);
    others_stand(&found, &[(0, 1)]);
    assert!(found.answer.is_complete());
}
