//! Changes to a drawn surface: moving corners, setting an edge's length, parting sections.

use std::collections::BTreeSet;
use std::ops::RangeInclusive;

use geo::{
    Area as _, BooleanOps as _, BoundingRect as _, Coord, Distance as _, Euclidean, Line, LineString,
    MultiPolygon, Polygon,
};

use super::model::{BoardSpec, Divider, Point, Section, Surface, polygon};
use super::pattern::{Pattern, section_name};
use crate::measure::Length;

/// Corners this close together, in metres, are one corner of several parts.
const SAME: f64 = 5e-4;
/// A part cut off a section that is smaller than this many square metres is dust.
const DUST: f64 = 1e-4;

impl Surface {
    /// How long an edge of an outline can be made: a jog at the least, and no room is longer.
    pub const EDGES: RangeInclusive<Length> = Length::inches(0.375)..=Length::feet(330.0);

    /// A surface of this name with boards of the usual kind along an outline given in metres.
    pub fn from_outline(name: &str, ring: &[[f64; 2]]) -> Self {
        let outline: Vec<Point> = ring.iter().map(|[x, y]| Point::m(*x, *y)).collect();
        // A straight run has no dividers to name.
        let (sections, dividers) =
            Pattern::USUAL[0].fill(&outline, &BoardSpec::default(), &|_number| String::new());
        Self { name: name.to_owned(), outline, sections, dividers, ..Self::default() }
    }

    /// Every corner and end that is drawn: outline, openings, regions of sections, dividers.
    fn points_mut(&mut self) -> impl Iterator<Item = &mut Point> {
        let openings = self.openings.iter_mut().flat_map(|opening| &mut opening.corners);
        let regions = self.sections.iter_mut().filter_map(|section| section.region.as_mut()).flatten();
        let ends = self.dividers.iter_mut().flat_map(|divider| [&mut divider.from, &mut divider.to]);
        let photos = self.photos.iter_mut().map(|photo| &mut photo.at);
        let windows = &mut self.windows;
        self.outline.iter_mut().chain(windows).chain(openings).chain(regions).chain(ends).chain(photos)
    }

    /// The edges of the outline, from the first corner on.
    pub fn edges(&self) -> Vec<[Point; 2]> {
        let next = self.outline.iter().cycle().skip(1);
        self.outline.iter().zip(next).map(|(from, to)| [*from, *to]).collect()
    }

    /// Indices of the edges whose walls have windows.
    pub fn window_edges(&self) -> BTreeSet<usize> {
        let edges = self.edges();
        let lines = || edges.iter().map(|[from, to]| Line::new(from.coord(), to.coord())).enumerate();
        let nearest = |at: &Point| {
            let apart = |line: &Line| Euclidean.distance(line, &geo::Point::from(at.coord()));
            lines().min_by(|(_, a), (_, b)| apart(a).total_cmp(&apart(b))).map(|(edge, _)| edge)
        };
        self.windows.iter().filter_map(nearest).collect()
    }

    /// Notes whether the wall at an edge of the outline has windows.
    pub fn set_window_edge(&mut self, edge: usize, windows: bool) {
        let mut with = self.window_edges();
        if windows {
            with.insert(edge);
        } else {
            with.remove(&edge);
        }
        let middle = |[from, to]: [Point; 2]| Point((from.0 + to.0) / 2.0, (from.1 + to.1) / 2.0);
        let edges = self.edges();
        self.windows = with.into_iter().filter_map(|edge| edges.get(edge).copied().map(middle)).collect();
    }

    /// All corners and ends, for aligning with them.
    pub fn points(&self) -> Vec<Point> {
        // The one list of what there is stands above.
        self.clone().points_mut().map(|point| *point).collect()
    }

    /// Moves the corner at `from`, and every other that lies on it, to `to`.
    pub fn move_point(&mut self, from: Point, to: Point) {
        for point in self.points_mut().filter(|point| is_same(**point, from)) {
            *point = to;
        }
    }

    /// Gives the outline's edge from corner `edge` to the next a length: everything beyond its middle,
    /// in its direction, moves along. So a rectangle stays one, and sections and openings keep their
    /// distance from the edge they are nearer to. Where not all edges are square to it, only its far
    /// end moves. Does nothing without such an edge.
    pub fn stretch_edge(&mut self, edge: usize, length: Length) {
        let count = self.outline.len();
        let (Some(&from), Some(&to)) = (self.outline.get(edge), self.outline.get((edge + 1) % count.max(1)))
        else {
            return;
        };
        let (from, to) = (from.coord(), to.coord());
        let run = to - from;
        let now = run.x.hypot(run.y);
        if now < SAME {
            return;
        }
        let along = run / now;
        // In a room that is square to this edge all beyond its middle moves; else only its far end does.
        let square = self.outline.iter().zip(self.outline.iter().cycle().skip(1)).all(|(a, b)| {
            let edge = b.coord() - a.coord();
            let (level, upright) = (edge.x * along.y - edge.y * along.x, edge.x * along.x + edge.y * along.y);
            level.abs() < SAME || upright.abs() < SAME
        });
        if !square {
            let end = from + along * length.to_m();
            self.move_point(Point::m(to.x, to.y), Point::m(end.x, end.y));
            return;
        }
        let middle = (from + to) / 2.0;
        let more = along * (length.to_m() - now);
        for point in self.points_mut() {
            let at = point.coord();
            let beyond = (at - middle).x * along.x + (at - middle).y * along.y;
            // What lies on the middle itself, such as a divider, moves half as far.
            let share = if beyond > SAME {
                1.0
            } else if beyond < -SAME {
                0.0
            } else {
                0.5
            };
            *point = Point::m(at.x + share * more.x, at.y + share * more.y);
        }
    }

    /// Puts a corner on the outline's edge from corner `edge` to the next.
    pub fn insert_corner(&mut self, edge: usize, at: Point) {
        if edge < self.outline.len() {
            self.outline.insert(edge + 1, at);
        }
    }

    /// Parts the sections that `divider` crosses from side to side, along its line, and adds it. The
    /// largest piece keeps its section's name.
    pub fn part_along(&mut self, divider: Divider) {
        let outline = polygon(&self.outline);
        let mut parted = Vec::with_capacity(self.sections.len() + 1);
        let mut taken: Vec<String> = self.sections.iter().map(|section| section.name.clone()).collect();
        for section in std::mem::take(&mut self.sections) {
            let region = section.region.as_ref().map_or_else(|| outline.clone(), |region| polygon(region));
            let pieces = cut(&region, &divider);
            if pieces.len() < 2 {
                parted.push(section);
                continue;
            }
            for (at, piece) in pieces.iter().enumerate() {
                let mut part = Section { region: Some(corners(piece)), ..section.clone() };
                if at > 0 {
                    part.name = free_name(&taken);
                    taken.push(part.name.clone());
                }
                parted.push(part);
            }
        }
        self.sections = parted;
        self.dividers.push(divider);
    }
}

fn is_same(a: Point, b: Point) -> bool {
    let apart = a.coord() - b.coord();
    apart.x.hypot(apart.y) < SAME
}

/// The first name of sections that is not taken.
pub(super) fn free_name(taken: &[String]) -> String {
    (0..).map(section_name).find(|name| !taken.contains(name)).unwrap_or_default()
}

fn corners(piece: &Polygon) -> Vec<Point> {
    let ring = piece.exterior();
    // The last coordinate repeats the first.
    ring.coords().take(ring.0.len().saturating_sub(1)).map(|c| Point::m(c.x, c.y)).collect()
}

/// The pieces of a region to both sides of a divider's line, largest first; the region alone if the
/// divider ends inside it.
fn cut(region: &Polygon, divider: &Divider) -> Vec<Polygon> {
    let (from, to) = (divider.from.coord(), divider.to.coord());
    let run = to - from;
    let length = run.x.hypot(run.y);
    let Some(bounds) = region.bounding_rect().filter(|_| length > SAME) else { return vec![region.clone()] };
    let (along, reach) = (run / length, 4.0 * (bounds.width() + bounds.height()) + length);
    let across = Coord { x: -along.y, y: along.x };
    let half = |side: f64| {
        let (start, end) = (from - along * reach, to + along * reach);
        let ring = vec![start, end, end + across * (side * reach), start + across * (side * reach)];
        MultiPolygon::new(vec![Polygon::new(LineString::new(ring), vec![])])
    };
    // Parts of the line outside the divider itself must not lie in the region.
    let region = MultiPolygon::new(vec![region.clone()]);
    let line = |a: Coord, b: Coord| {
        let width = across * 1e-4;
        let ring = vec![a - width, b - width, b + width, a + width];
        MultiPolygon::new(vec![Polygon::new(LineString::new(ring), vec![])])
    };
    let slack = along * (divider.width.to_m() / 2.0 + 1e-3);
    let outside = [line(from - along * reach, from - slack), line(to + slack, to + along * reach)];
    let ends_inside = outside.iter().any(|part| part.intersection(&region).unsigned_area() > 1e-7);
    if ends_inside {
        return region.0;
    }
    let mut pieces: Vec<Polygon> =
        [1.0, -1.0].iter().flat_map(|side| region.intersection(&half(*side)).0).collect();
    pieces.retain(|piece| piece.unsigned_area() > DUST);
    pieces.sort_by(|a, b| b.unsigned_area().total_cmp(&a.unsigned_area()));
    pieces
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::surface::layout;
    use crate::surface::pattern::rectangle;

    fn room() -> Surface {
        let outline = rectangle(Length::m(4.0), Length::m(3.0));
        let (sections, dividers) =
            Pattern::USUAL[3].fill(&outline, &BoardSpec::default(), &|number| number.to_string());
        Surface { name: "Ceiling".into(), outline, sections, dividers, ..Surface::default() }
    }

    #[test]
    fn a_corner_takes_along_what_lies_on_it() {
        let mut surface = room();
        surface.move_point(Point::m(4.0, 3.0), Point::m(4.5, 3.2));
        assert_eq!(surface.outline[2], Point::m(4.5, 3.2));
        let region = surface.sections[2].region.as_ref().expect("a quarter");
        assert_eq!(region[0], Point::m(4.5, 3.2));
    }

    #[test]
    fn a_longer_edge_leaves_a_rectangle_and_its_quarters() {
        let mut surface = room();
        surface.stretch_edge(0, Length::m(5.0));
        assert_eq!(surface.outline, rectangle(Length::m(5.0), Length::m(3.0)));
        // The upright divider stays in the middle.
        assert_eq!(surface.dividers[0].from, Point::m(2.5, 0.0));
        surface.stretch_edge(99, Length::m(1.0));
        assert!((layout(&surface).plan_area.to_m2() - 15.0).abs() < 1e-9);
    }

    #[test]
    fn a_divider_from_side_to_side_parts_a_section_and_one_that_ends_inside_does_not() {
        let outline = rectangle(Length::m(4.0), Length::m(3.0));
        let (sections, _) =
            Pattern::USUAL[0].fill(&outline, &BoardSpec::default(), &|number| number.to_string());
        let mut surface = Surface { outline, sections, ..Surface::default() };
        let width = Length::mm(90.0);
        let divider = |x: f64, top: f64| Divider {
            from: Point::m(x, 0.0),
            to: Point::m(x, top),
            width,
            ..Divider::default()
        };
        surface.part_along(divider(1.0, 2.0));
        assert_eq!((surface.sections.len(), surface.dividers.len()), (1, 1));
        surface.part_along(divider(3.0, 3.0));
        let names: Vec<&str> = surface.sections.iter().map(|section| section.name.as_str()).collect();
        assert_eq!(names, ["A", "B"]);
        let areas: Vec<f64> = surface
            .sections
            .iter()
            .map(|section| polygon(section.region.as_ref().expect("a part")).unsigned_area())
            .collect();
        assert!((areas[0] - 9.0).abs() < 1e-6 && (areas[1] - 3.0).abs() < 1e-6, "{areas:?}");
    }
}
