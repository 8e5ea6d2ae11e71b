//! Fields of the surfaces, what is drawn on them, and the boards of their sections.

use super::{FARTHEST, fields, figure, optional};
use crate::job::fields::{Figure, Figures, Item, Kind, Mending, access};
use crate::measure::{Angle, Length, Quantity};
use crate::surface::{Point, Profile};

/// More than any board is wide, and any trim.
const WIDEST_BOARD: Length = Length::feet(6.0);

/// Corners or ends of a drawing, each of which must be in reach. The list of points is found by `$part`.
macro_rules! points {
    ($part:ident) => {
        Kind::Figures(Figures {
            low: Quantity::RoomLength(Length::feet(-3000.0)),
            high: Quantity::RoomLength(FARTHEST),
            mending: Mending::Nearest,
            most: usize::MAX,
            read: |job, at| access::$part::read(job, at).map_or_else(Vec::new, |points| coordinates(points)),
            mend: |job, at, _, mend| {
                let points = access::$part::write(job, at);
                points.into_iter().flatten().for_each(|point| mend_point(point, mend));
            },
        })
    };
}

fn coordinates(points: &[Point]) -> Vec<(Item, Quantity)> {
    let both = |(index, point): (usize, &Point)| {
        [point.0, point.1].map(|length| (Item::Number(index + 1), Quantity::RoomLength(length)))
    };
    points.iter().enumerate().flat_map(both).collect()
}

fn mend_point(point: &mut Point, mend: &dyn Fn(Quantity) -> Option<Quantity>) {
    for length in [&mut point.0, &mut point.1] {
        if let Some(Quantity::RoomLength(mended)) = mend(Quantity::RoomLength(*length)) {
            *length = mended;
        }
    }
}

/// The two ends of a divider.
const ENDS: Figures = Figures {
    low: Quantity::RoomLength(Length::feet(-3000.0)),
    high: Quantity::RoomLength(FARTHEST),
    mending: Mending::Nearest,
    most: usize::MAX,
    read: |job, at| {
        let divider = access::divider::read(job, at);
        divider.map_or_else(Vec::new, |divider| coordinates(&[divider.from, divider.to]))
    },
    mend: |job, at, _, mend| {
        if let Some(divider) = access::divider::write(job, at) {
            mend_point(&mut divider.from, mend);
            mend_point(&mut divider.to, mend);
        }
    },
};

/// The size of an edge profile: the leg of a V, or the width of a bead. A square edge has none.
const PROFILE_FIGURE: Figure = Figure {
    low: Quantity::Length(Length::ZERO),
    high: Quantity::Length(Length::inches(4.0)),
    mending: Mending::Nearest,
    optional: false,
    read: |job, at| match access::board::read(job, at)?.profile {
        Profile::Square => None,
        Profile::VGroove(size) | Profile::Bead(size) => Some(Quantity::Length(size)),
    },
    write: |job, at, value| {
        let profile = access::board::write(job, at).map(|board| &mut board.profile);
        if let (Some(Profile::VGroove(size) | Profile::Bead(size)), Some(Quantity::Length(value))) =
            (profile, value)
        {
            *size = value;
        }
    },
};

fields! {
    /// Name of a surface.
    SURFACE_NAME = "surface-name", "surfaces[].name", Surface, Kind::Text;
    /// Ceiling, slope or wall.
    SURFACE_KIND = "surface-kind", "surfaces[].kind", Surface, Kind::Choice;
    /// Corners of a surface.
    OUTLINE = "outline", "surfaces[].outline", Surface, points!(outline);
    /// Width of the trim around a surface.
    TRIM = "trim", "surfaces[].trim", Surface,
        figure!(surface, trim, Length, Length::ZERO, Length::feet(33.0), Nearest);
    /// Name of a window, door or skylight.
    OPENING_NAME = "opening-name", "surfaces[].openings[].name", Opening, Kind::Text;
    /// Corners of a window, door or skylight.
    OPENING = "opening", "surfaces[].openings[].corners", Opening, points!(opening);
    /// Name of a divider.
    DIVIDER_NAME = "divider-name", "surfaces[].dividers[].name", Divider, Kind::Text;
    /// Whether it is a ridge or parts a plane.
    DIVIDER_KIND = "divider-kind", "surfaces[].dividers[].kind", Divider, Kind::Choice;
    /// Ends of a divider.
    DIVIDER = "divider", "surfaces[].dividers[].from|to", Divider, Kind::Figures(ENDS);
    /// Width of a divider.
    DIVIDER_WIDTH = "divider-width", "surfaces[].dividers[].width", Divider,
        figure!(divider, width, Length, Length::ZERO, Length::feet(33.0), Nearest);
    /// Name of a section.
    SECTION_NAME = "section-name", "surfaces[].sections[].name", Section, Kind::Text;
    /// Corners of a section, where it is not all of its surface.
    REGION = "region", "surfaces[].sections[].region", Section, points!(region);
    /// Species of the boards.
    SPECIES = "species", "surfaces[].sections[].board.species", Section, Kind::Catalog;
    /// Thickness of a board.
    THICKNESS = "thickness", "surfaces[].sections[].board.thickness", Section,
        figure!(board, thickness, Length, Length::inches(0.0625), Length::inches(6.0), Nearest);
    /// Width of a board with its tongue.
    OVERALL_WIDTH = "overall-width", "surfaces[].sections[].board.overall_width", Section,
        figure!(board, overall_width, Length, Length::ZERO, WIDEST_BOARD, Nearest);
    /// Width of a board that shows.
    FACE_WIDTH = "face-width", "surfaces[].sections[].board.face_width", Section,
        figure!(board, face_width, Length, Length::inches(0.25), WIDEST_BOARD, Nearest);
    /// Edge profile.
    PROFILE = "profile", "surfaces[].sections[].board.profile", Section, Kind::Choice;
    /// Leg of the V, or width of the bead.
    PROFILE_SIZE = "profile-size", "surfaces[].sections[].board.profile.VGroove|Bead", Section, Kind::Figure(PROFILE_FIGURE);
    /// Angle of the growth rings to the face.
    GRAIN = "grain", "surfaces[].sections[].board.ring_angle", Section,
        figure!(board, ring_angle, Angle, Angle::ZERO, Angle::degrees(90.0), Nearest);
    /// Where boards are nailed.
    NAILING = "nailing", "surfaces[].sections[].board.fixing", Section, Kind::Choice;
    /// Paint on face and back.
    FINISH = "finish", "surfaces[].sections[].board.finish", Section, Kind::Choice;
    /// What is behind the boards.
    BACKING = "backing", "surfaces[].sections[].board.behind", Section, Kind::Choice;
    /// Longest board.
    MAX_LENGTH = "max-length", "surfaces[].sections[].board.longest", Section,
        optional!(board, longest, RoomLength, Length::inches(3.0), Length::feet(100.0), LeaveOut);
    /// Direction in which boards run.
    DIRECTION = "direction", "surfaces[].sections[].direction", Section,
        figure!(section, direction, Angle, Angle::degrees(-360.0), Angle::degrees(360.0), Nearest);
    /// Width of the first board.
    STARTER_RIP = "starter-rip", "surfaces[].sections[].start", Section,
        figure!(section, start, Length, Length::ZERO, WIDEST_BOARD, Nearest);
    /// Photos pinned to a surface.
    PHOTOS = "photos", "surfaces[].photos", Surface, Kind::List;
    /// Where north is on the drawing of a surface.
    NORTH = "north", "surfaces[].north", Surface,
        optional!(surface, north, Angle, Angle::ZERO, Angle::degrees(360.0), LeaveOut);
    /// Walls with windows along a surface.
    WINDOW_WALLS = "window-walls", "surfaces[].windows", Surface, Kind::List;
}
