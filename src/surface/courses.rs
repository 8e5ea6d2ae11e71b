//! Courses of boards in one section, and the joints between and within them.
//!
//! Everything is computed in the section's own frame, u along the boards and v across, in which
//! courses are horizontal strips. A strip's boards are the clear region cut to it; the joint
//! between two strips is where the line between them has wood on both sides.

use geo::{
    AffineOps as _, AffineTransform, BooleanOps as _, BoundingRect as _, Coord, InteriorPoint as _,
    Intersects as _, Line, LineString, MapCoords as _, MultiPolygon, Polygon, Rect,
};

use super::layout::{Board, Joint, JointKind, SurfaceLayout};
use super::model::Section;
use crate::measure::Length;

/// Pieces smaller than this many square metres are rounding dust, not boards.
const DUST: f64 = 1e-7;
/// A section is not cut into more boards than this.
const MOST_PIECES: f64 = 50_000.0;
/// Distance in metres within which rounding may have parted an edge from the line that it lies in.
const SAME: f64 = 1e-6;
/// Joints shorter than this many metres are rounding dust.
pub(super) const SHORTEST: f64 = 1e-5;

/// A section's clear region in its own frame, and the lines between its courses.
pub(super) struct Frame {
    pub(super) clear: MultiPolygon,
    to_surface: AffineTransform,
    to_frame: AffineTransform,
    /// Across positions of the course lines, the region's two sides included.
    pub(super) lines: Vec<f64>,
}

impl Frame {
    pub(super) fn new(section: &Section, clear: &MultiPolygon, most_courses: f64) -> Self {
        let origin = Coord::zero();
        let degrees = section.direction.to_degrees();
        let to_frame = AffineTransform::rotate(-degrees, origin);
        let turned = clear.affine_transform(&to_frame);
        let lines = course_lines(section, &turned, most_courses);
        let turned = turned.map_coords(|c| Coord { x: c.x, y: snapped(c.y, &lines) });
        let to_surface = AffineTransform::rotate(degrees, origin);
        Self { clear: turned, to_surface, to_frame, lines }
    }

    /// Turns a direction of the surface into the frame's (along, across).
    pub(super) fn turn(&self, direction: Coord) -> Coord {
        self.to_frame.apply(direction)
    }

    /// Width of the course at across position `v`, nothing outside.
    pub(super) fn course_width_at(&self, v: f64) -> f64 {
        let above = self.lines.partition_point(|&line| line <= v);
        match above.checked_sub(1).map(|below| (self.lines.get(below), self.lines.get(above))) {
            Some((Some(low), Some(high))) => high - low,
            _ => 0.0,
        }
    }

    /// Mean length of the section along its boards.
    pub(super) fn mean_length(&self) -> f64 {
        match (self.lines.first(), self.lines.last()) {
            (Some(low), Some(high)) if high > low => geo::Area::unsigned_area(&self.clear) / (high - low),
            _ => 0.0,
        }
    }
}

/// `v`, or the line that it all but lies in: rounding must not lift an edge off a line.
fn snapped(v: f64, lines: &[f64]) -> f64 {
    let next = lines.partition_point(|&line| line < v - SAME);
    lines.get(next).copied().filter(|line| line - v < SAME).unwrap_or(v)
}

fn course_lines(section: &Section, clear: &MultiPolygon, most: f64) -> Vec<f64> {
    let Some(bounds) = clear.bounding_rect() else { return vec![] };
    let (low, high) = (bounds.min().y, bounds.max().y);
    let face = section.board.face_width.to_m();
    if (high - low) / face > most {
        return vec![];
    }
    let start = section.start.to_m();
    let mut lines = vec![low];
    let mut next = low + if start > 0.0 && start < face { start } else { face };
    // A sliver thinner than a tenth of a millimetre is rounding, not a course.
    while next < high - 1e-4 {
        lines.push(next);
        next += face;
    }
    lines.push(high);
    lines
}

/// Adds the section's boards and the joints between and within its courses. Returns the number
/// of courses.
pub(super) fn section_courses(
    index: usize,
    section: &Section,
    frame: &Frame,
    laid: &mut SurfaceLayout,
) -> usize {
    let Some(bounds) = frame.clear.bounding_rect() else { return 0 };
    let courses = frame.lines.len().saturating_sub(1);
    for course in 0..courses {
        let strip = [frame.lines[course], frame.lines[course + 1]];
        let ends = [bounds.min().x, bounds.max().x];
        let cuts = butt_positions(section, course, courses, ends);
        let mut butts = Vec::new();
        for run in pieces(&frame.clear, strip, &[], ends) {
            let mut boards = vec![run.clone()];
            if longer(&run, section.board.longest) {
                // Cut from the section and not from the run: every cut rounds to a grid, so one is
                // better than two.
                boards = pieces(&frame.clear, strip, &cuts, ends);
                boards.retain(|board| board.interior_point().is_some_and(|p| run.intersects(&p)));
                butts.extend(butts_of(&MultiPolygon::new(vec![run]), &cuts));
            }
            for board in boards {
                let run = board.bounding_rect().map_or(0.0, |bounds| bounds.width());
                let face = board.affine_transform(&frame.to_surface);
                laid.boards.push(Board { section: index, course, run: Length::m(run), face });
            }
        }
        add_butts(index, section, frame, course, &butts, &mut laid.joints);
        if course + 1 < courses {
            add_edges(index, section, frame, course, &mut laid.joints);
        }
    }
    courses
}

/// Boards that so many courses of this length would take.
#[expect(clippy::cast_precision_loss, reason = "at most MOST_COURSES")]
fn courses_in_boards(longest: f64, courses: usize, length: f64) -> f64 {
    length / longest * courses as f64
}

/// Whether the section would be cut into more boards than is sensible: a slip in the length, which
/// would only keep everyone waiting.
pub(super) fn too_many_boards(section: &Section, clear: &MultiPolygon, courses: usize) -> bool {
    let frame = Frame::new(section, clear, f64::INFINITY);
    let length = frame.clear.bounding_rect().map_or(0.0, |bounds| bounds.width());
    section
        .board
        .longest
        .is_some_and(|longest| courses_in_boards(longest.to_m(), courses, length) > MOST_PIECES)
}

/// Where a course longer than the longest board is butted, staggered by half a board.
fn butt_positions(section: &Section, course: usize, courses: usize, [left, right]: [f64; 2]) -> Vec<f64> {
    let Some(longest) = section.board.longest.map(Length::to_m) else { return vec![] };
    if longest <= 0.0 || courses_in_boards(longest, courses, right - left) > MOST_PIECES {
        return vec![];
    }
    let mut at = left + if course.is_multiple_of(2) { longest } else { longest / 2.0 };
    let mut cuts = Vec::new();
    while at < right - SHORTEST {
        cuts.push(at);
        at += longest;
    }
    cuts
}

/// The boards of one course: the clear region cut to the strip and at the butts, left to right.
fn pieces(
    clear: &MultiPolygon,
    [low, high]: [f64; 2],
    cuts: &[f64],
    [left, right]: [f64; 2],
) -> Vec<Polygon> {
    let mut found = Vec::new();
    let ends: Vec<f64> = [left - 1.0].iter().chain(cuts).chain(&[right + 1.0]).copied().collect();
    for ends in ends.windows(2) {
        let strip = Rect::new(Coord { x: ends[0], y: low }, Coord { x: ends[1], y: high });
        let cut = clear.intersection(&strip.to_polygon());
        found.extend(cut.into_iter().filter(|piece| geo::Area::unsigned_area(piece) > DUST));
    }
    let start = |piece: &Polygon| piece.bounding_rect().map_or(0.0, |b| b.min().x);
    found.sort_by(|a, b| start(a).total_cmp(&start(b)));
    found
}

/// Joints along the line over `course`.
fn add_edges(index: usize, section: &Section, frame: &Frame, course: usize, joints: &mut Vec<Joint>) {
    let v = frame.lines[course + 1];
    let width = |course: usize| frame.lines[course + 1] - frame.lines[course];
    let fixing = section.board.fixing;
    let moves = fixing.at_tongue() * width(course) + fixing.at_groove() * width(course + 1);
    let spans = wood_on_both_sides(&frame.clear, v);
    for (piece, (left, right)) in spans.into_iter().enumerate() {
        joints.push(Joint {
            label: format!("{} {}{}", section.name, course + 1, letter(piece)),
            section: index,
            kind: JointKind::BoardEdge,
            from: frame.to_surface.apply(Coord { x: left, y: v }),
            to: frame.to_surface.apply(Coord { x: right, y: v }),
            moves_across: Length::m(moves),
            moves_along: Length::ZERO,
        });
    }
}

/// Whether a run of boards is longer than the longest board.
fn longer(run: &Polygon, longest: Option<Length>) -> bool {
    let long = run.bounding_rect().map_or(0.0, |bounds| bounds.width());
    longest.is_some_and(|longest| long > longest.to_m() + SHORTEST)
}

/// Where the wood of a run is cut at `cuts`: from and to, in the section's frame.
fn butts_of(run: &MultiPolygon, cuts: &[f64]) -> Vec<(Coord, Coord)> {
    let upright = swapped(run);
    let at = |cut: f64, v: f64| Coord { x: cut, y: v };
    let of_cut = |&cut: &f64| {
        let spans = wood_on_both_sides(&upright, cut);
        spans.into_iter().map(move |(from, to)| (at(cut, from), at(cut, to)))
    };
    cuts.iter().flat_map(of_cut).collect()
}

/// Adds the butt joints within `course`.
fn add_butts(
    index: usize,
    section: &Section,
    frame: &Frame,
    course: usize,
    butts: &[(Coord, Coord)],
    joints: &mut Vec<Joint>,
) {
    for (number, (from, to)) in butts.iter().enumerate() {
        joints.push(Joint {
            label: format!("{} {} end {}", section.name, course + 1, number + 1),
            section: index,
            kind: JointKind::BoardEnd,
            from: frame.to_surface.apply(*from),
            to: frame.to_surface.apply(*to),
            moves_across: Length::ZERO,
            moves_along: section.board.longest.unwrap_or_default(),
        });
    }
}

/// The region with its two axes swapped, so that a cut across boards is a horizontal line.
fn swapped(region: &MultiPolygon) -> MultiPolygon {
    region.affine_transform(&AffineTransform::new(0.0, 1.0, 0.0, 1.0, 0.0, 0.0))
}

/// `""` for the first piece, then `b`, `c`, … and after `z` the number.
pub(super) fn letter(piece: usize) -> String {
    match u8::try_from(piece) {
        Ok(0) => String::new(),
        Ok(piece @ 1..=25) => char::from(b'a' + piece).to_string(),
        _ => format!(".{}", piece + 1),
    }
}

/// The stretches of the horizontal line at `v` that have the region on both sides, left to right.
///
/// An edge that lies in the line has the region on one side only. Looking just above and just
/// below, by which end of an edge may touch the line, settles that without a tolerance.
fn wood_on_both_sides(region: &MultiPolygon, v: f64) -> Vec<(f64, f64)> {
    let above = inside_spans(region, v, |low, high| low <= v && v < high);
    let below = inside_spans(region, v, |low, high| low < v && v <= high);
    let mut both = Vec::new();
    for &(a, b) in &above {
        for &(c, d) in &below {
            let (left, right) = (a.max(c), b.min(d));
            if right - left > SHORTEST {
                both.push((left, right));
            }
        }
    }
    both
}

/// Even-odd spans of the region along the line at `v`, over the edges that `crosses` accepts by
/// their lower and upper end.
fn inside_spans(region: &MultiPolygon, v: f64, crosses: impl Fn(f64, f64) -> bool) -> Vec<(f64, f64)> {
    let rings = region.iter().flat_map(|p| std::iter::once(p.exterior()).chain(p.interiors()));
    let snapped = |p: Coord| Coord { x: p.x, y: snapped(p.y, &[v]) };
    let mut hits: Vec<f64> = rings
        .flat_map(LineString::lines)
        .map(|line| Line::new(snapped(line.start), snapped(line.end)))
        .filter(|line| crosses(line.start.y.min(line.end.y), line.start.y.max(line.end.y)))
        .map(|line| {
            let part = (v - line.start.y) / (line.end.y - line.start.y);
            line.start.x + part * (line.end.x - line.start.x)
        })
        .collect();
    hits.sort_by(f64::total_cmp);
    hits.chunks_exact(2).map(|pair| (pair[0], pair[1])).collect()
}
