//! From a drawn surface to its boards, joints and areas.

use geo::{
    Area as _, BooleanOps as _, Coord, Distance as _, Euclidean, Intersects as _, Line, LineString,
    MultiPolygon, Polygon,
    buffer::{Buffer as _, BufferStyle, LineJoin},
};

use super::boundary::{Source, boundary_joints};
use super::courses::{Frame, section_courses};
use super::model::{Divider, DividerKind, Point, Section, Surface, polygon};
use crate::measure::{Area, Length};

/// What meets at a joint.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum JointKind {
    /// The long edges of two boards.
    BoardEdge,
    /// The ends of two boards: a butt in a course, or sections meeting without a divider.
    BoardEnd,
    /// Boards and a dividing or ridge board.
    Divider,
    /// Boards and the trim, wall or opening around them.
    Perimeter,
}

impl JointKind {
    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::BoardEdge => "board_edge",
            Self::BoardEnd => "board_end",
            Self::Divider => "divider",
            Self::Perimeter => "perimeter",
        }
    }
}

/// One straight joint.
#[derive(Debug, Clone, PartialEq)]
pub struct Joint {
    /// Name by which readings refer to it, unique in the surface: `A 3` lies between the third and
    /// fourth course of section A.
    pub label: String,
    /// Index of the section it belongs to; the first of the two where sections meet.
    pub section: usize,
    /// What meets.
    pub kind: JointKind,
    /// One end, metres.
    pub from: Coord,
    /// Other end, metres.
    pub to: Coord,
    /// Width of wood, measured across the boards, whose movement shows at this joint.
    pub moves_across: Length,
    /// Length of wood, measured along the boards, whose movement shows at this joint.
    pub moves_along: Length,
}

impl Joint {
    /// Its length.
    pub fn length(&self) -> Length {
        let run = self.to - self.from;
        Length::m(run.x.hypot(run.y))
    }

    /// Distance in metres from a point to it.
    pub fn distance_to(&self, point: Coord) -> f64 {
        Euclidean.distance(&Line::new(self.from, self.to), &geo::Point::from(point))
    }

    /// The point half-way along, metres.
    pub fn middle(&self) -> Coord {
        (self.from + self.to) / 2.0
    }
}

/// One board, or one piece of it where an opening cuts it.
#[derive(Debug, Clone, PartialEq)]
pub struct Board {
    /// Index of its section.
    pub section: usize,
    /// Its course, counted across from 0.
    pub course: usize,
    /// Length it is cut to, along its section's direction.
    pub run: Length,
    /// Its visible face, metres.
    pub face: Polygon,
}

/// A section's share of the layout.
#[derive(Debug, Clone, PartialEq)]
pub struct SectionLayout {
    /// What is boarded: the region less trim, dividers and openings, metres.
    pub clear: MultiPolygon,
    /// Number of courses.
    pub courses: usize,
}

impl SectionLayout {
    /// The boarded area.
    pub fn area(&self) -> Area {
        Area::m2(self.clear.unsigned_area())
    }
}

/// Everything that follows from the drawing of one surface.
#[derive(Debug, Clone, PartialEq)]
pub struct SurfaceLayout {
    /// One per section, in order; empty regions where a section has a fault.
    pub sections: Vec<SectionLayout>,
    /// The boards, section by section and course by course.
    pub boards: Vec<Board>,
    /// The joints, section by section.
    pub joints: Vec<Joint>,
    /// The outline less its openings, metres.
    pub face: MultiPolygon,
    /// Face of the dividers, metres.
    pub dividers: Vec<MultiPolygon>,
    /// Plan area: the outline less its openings.
    pub plan_area: Area,
    /// What there is to board: the plan area less trim and dividers.
    pub boardable: Area,
    /// What paint covers: the plan area plus the depth of the V grooves or beads.
    pub painted_area: Area,
    /// Length of the outline.
    pub outline_length: Length,
    /// The part of it at which another surface goes on, over a ridge.
    pub ridge_length: Length,
}

impl SurfaceLayout {
    /// Length of all joints together.
    pub fn joint_run(&self) -> Length {
        self.joints.iter().map(Joint::length).sum()
    }
}

/// Courses past this number are a slip in a width, not a room.
const MOST_COURSES: f64 = 20_000.0;

/// Lays out a surface. Sections that cannot be laid (no area, no width) come out empty; what is
/// wrong with them is told by [`super::faults`]. Lengths and areas are exact to 1e-6 m and m².
pub fn layout(surface: &Surface) -> SurfaceLayout {
    let outline = outline_of(surface);
    // One that lies outside takes nothing away, not even the last digit.
    let openings: Vec<Polygon> = surface
        .openings
        .iter()
        .map(|o| if outline.intersects(&polygon(&o.corners)) { polygon(&o.corners) } else { polygon(&[]) })
        .collect();
    // Openings and dividers may overlap one another: united they cover what either covers.
    let face = outline.difference(&united(&openings));
    let rectangles: Vec<Option<Polygon>> = surface.dividers.iter().map(|d| d.rectangle()).collect();
    let inner = inset(&outline, surface.trim);
    let boarded = {
        let through: Vec<Polygon> =
            surface.dividers.iter().filter_map(|divider| cut_through(divider, &outline)).collect();
        let dividers = united(&through);
        inner.intersection(&face).difference(&dividers)
    };
    let clear: Vec<MultiPolygon> = surface.sections.iter().map(|section| region(section, &boarded)).collect();

    let mut laid = SurfaceLayout {
        sections: vec![],
        boards: vec![],
        joints: vec![],
        face: MultiPolygon::new(vec![]),
        painted_area: Area::ZERO,
        plan_area: Area::m2(face.unsigned_area()),
        boardable: Area::m2(boarded.unsigned_area()),
        outline_length: Length::m(outline.iter().map(ring_length).sum()),
        ridge_length: surface.dividers.iter().filter_map(|divider| along(divider, &outline)).sum(),
        dividers: rectangles
            .iter()
            .map(|r| r.as_ref().map_or_else(|| MultiPolygon::new(vec![]), |r| face.intersection(r)))
            .collect(),
    };
    let sources = sources(surface, &rectangles, &openings, &inner);
    for (index, section) in surface.sections.iter().enumerate() {
        let frame = Frame::new(section, &clear[index], MOST_COURSES);
        let courses = section_courses(index, section, &frame, &mut laid);
        boundary_joints(index, surface, &clear, &sources, &frame, &mut laid.joints);
        laid.sections.push(SectionLayout { clear: clear[index].clone(), courses });
    }
    laid.face = face;
    laid.painted_area = laid.plan_area + developed_extra(surface, &laid.joints);
    laid
}

/// A divider's face as it is cut out: an end that lies on the outline goes a hair beyond it, for in a
/// turned room the two edges meet to rounding only, and a sliver would be left between them.
fn cut_through(divider: &Divider, outline: &MultiPolygon) -> Option<Polygon> {
    const HAIR: f64 = 1e-5;
    let axis = divider.to.coord() - divider.from.coord();
    let length = axis.x.hypot(axis.y);
    let edges = || outline.iter().flat_map(|polygon| polygon.exterior().lines());
    let on_edge = |end: Coord| edges().any(|edge| Euclidean.distance(&edge, &geo::Point::from(end)) < HAIR);
    let beyond = |end: Coord, way: f64| {
        let hair = if on_edge(end) && length > HAIR { axis * (way * HAIR / length) } else { Coord::zero() };
        Point::m(end.x + hair.x, end.y + hair.y)
    };
    let (from, to) = (beyond(divider.from.coord(), -1.0), beyond(divider.to.coord(), 1.0));
    Divider { from, to, ..divider.clone() }.rectangle()
}

/// Length of a ridge that runs along an edge of the outline, half of its width off at most.
fn along(divider: &Divider, outline: &MultiPolygon) -> Option<Length> {
    let ends = [divider.from, divider.to].map(|end| geo::Point::from(end.coord()));
    let near = divider.width.to_m() / 2.0 + 1e-6;
    let mut edges = outline.iter().flat_map(|polygon| polygon.exterior().lines());
    let runs = |edge: Line| ends.iter().all(|end| Euclidean.distance(&edge, end) <= near);
    let on_edge = divider.kind == DividerKind::Ridge && edges.any(runs);
    on_edge.then(|| Length::m(Euclidean.distance(&ends[0], &ends[1])))
}

/// All of `shapes` as one region, whichever way round they are drawn: `geo::unary_union` loses
/// clockwise ones.
fn united<'a>(shapes: impl IntoIterator<Item = &'a Polygon>) -> MultiPolygon {
    shapes.into_iter().fold(MultiPolygon::new(vec![]), |all, shape| all.union(shape))
}

fn outline_of(surface: &Surface) -> MultiPolygon {
    if surface.outline.len() < 3 {
        return MultiPolygon::new(vec![]);
    }
    // The union with nothing mends the winding and a repeated last corner.
    MultiPolygon::new(vec![polygon(&surface.outline)]).union(&MultiPolygon::new(vec![]))
}

/// The outline less the trim around it.
fn inset(outline: &MultiPolygon, trim: Length) -> MultiPolygon {
    if trim <= Length::ZERO {
        return outline.clone();
    }
    // Mitred corners down to very sharp ones, as trim boards are cut.
    outline.buffer_with_style(BufferStyle::new(-trim.to_m()).line_join(LineJoin::Miter(0.1)))
}

fn region(section: &Section, boarded: &MultiPolygon) -> MultiPolygon {
    let sanitized = section.board.face_width > Length::mm(1.0);
    match &section.region {
        _ if !sanitized => MultiPolygon::new(vec![]),
        None => boarded.clone(),
        Some(corners) if corners.len() < 3 => MultiPolygon::new(vec![]),
        Some(corners) => boarded.intersection(&polygon(corners)),
    }
}

/// Everything that boards can end against, in the order in which it claims a boundary.
fn sources(
    surface: &Surface,
    rectangles: &[Option<Polygon>],
    openings: &[Polygon],
    inner: &MultiPolygon,
) -> Vec<Source> {
    let mut sources = Vec::new();
    for (divider, rectangle) in surface.dividers.iter().zip(rectangles) {
        if let Some(rectangle) = rectangle {
            sources.push(Source::new(JointKind::Divider, &divider.name, rectangle.exterior()));
        }
    }
    for (opening, hole) in surface.openings.iter().zip(openings) {
        sources.push(Source::new(JointKind::Perimeter, &opening.name, hole.exterior()));
    }
    let rings = inner.iter().flat_map(|p| std::iter::once(p.exterior()).chain(p.interiors()));
    for (number, line) in rings.flat_map(LineString::lines).enumerate() {
        let edge = LineString::new(vec![line.start, line.end]);
        sources.push(Source::new(JointKind::Perimeter, &format!("side {}", number + 1), &edge));
    }
    sources
}

fn ring_length(polygon: &Polygon) -> f64 {
    polygon.exterior().lines().map(|line| line.dx().hypot(line.dy())).sum()
}

/// Face that lies in V grooves and beads beyond the plan.
fn developed_extra(surface: &Surface, joints: &[Joint]) -> Area {
    let one = |joint: &Joint| {
        let profile = surface.sections[joint.section].board.profile;
        match joint.kind {
            JointKind::BoardEdge => profile.developed_extra().to_m() * joint.length().to_m(),
            _ => 0.0,
        }
    };
    Area::m2(joints.iter().map(one).sum())
}
