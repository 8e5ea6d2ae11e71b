//! Joints where a section ends: against dividers, openings, trim and other sections.

use geo::{Coord, Line, LineString, MultiPolygon};

use super::courses::{Frame, SHORTEST, letter};
use super::layout::{Joint, JointKind};
use super::model::{Fixing, Surface};
use crate::measure::Length;

/// Distance in metres within which two edges count as the same line.
const SAME_LINE: f64 = 1e-5;

/// Something with straight edges that boards can end against.
pub(super) struct Source {
    kind: JointKind,
    name: String,
    lines: Vec<Line>,
}

impl Source {
    pub(super) fn new(kind: JointKind, name: &str, ring: &LineString) -> Self {
        Self { kind, name: name.to_owned(), lines: ring.lines().collect() }
    }
}

/// A stretch of a section's boundary and what it ends against.
struct Stretch {
    kind: JointKind,
    name: String,
    line: Line,
    /// The section on the other side, where two sections meet.
    other: Option<usize>,
}

/// Adds the boundary joints of section `index`. Where two sections meet, the first of them gets
/// the joint.
pub(super) fn boundary_joints(
    index: usize,
    surface: &Surface,
    clear: &[MultiPolygon],
    sources: &[Source],
    frame: &Frame,
    joints: &mut Vec<Joint>,
) {
    let mut seen: Vec<String> = Vec::new();
    for stretch in merged(stretches(index, surface, clear, sources)) {
        if stretch.other.is_some_and(|other| other < index) {
            continue;
        }
        let section = &surface.sections[index];
        let name = format!("{} {}", section.name, stretch.name);
        let piece = seen.iter().filter(|known| **known == name).count();
        let (mut across, mut along) = movement(section.board.fixing, frame, stretch.line);
        if let Some(other) = stretch.other {
            let section = &surface.sections[other];
            let frame = Frame::new(section, &clear[other], f64::INFINITY);
            let (more_across, more_along) = movement(section.board.fixing, &frame, flipped(stretch.line));
            across += more_across;
            along += more_along;
        }
        joints.push(Joint {
            label: if piece == 0 { name.clone() } else { format!("{name} {}", letter(piece)) },
            section: index,
            kind: stretch.kind,
            from: stretch.line.start,
            to: stretch.line.end,
            moves_across: Length::m(across),
            moves_along: Length::m(along),
        });
        seen.push(name);
    }
}

fn flipped(line: Line) -> Line {
    Line::new(line.end, line.start)
}

/// Splits the boundary of section `index` by what lies on its other side.
fn stretches(index: usize, surface: &Surface, clear: &[MultiPolygon], sources: &[Source]) -> Vec<Stretch> {
    let mut found = Vec::new();
    for edge in edges(&clear[index]) {
        let mut open = vec![(0.0, 1.0)];
        let mut claim = |kind, name: &str, other, line: &Line| {
            let Some(overlap) = overlap(&edge, line) else { return };
            for (from, to) in take(&mut open, overlap) {
                let line = Line::new(at(&edge, from), at(&edge, to));
                found.push(Stretch { kind, name: name.to_owned(), line, other });
            }
        };
        for source in sources.iter().filter(|s| s.kind == JointKind::Divider) {
            source.lines.iter().for_each(|line| claim(source.kind, &source.name, None, line));
        }
        for (other, region) in clear.iter().enumerate().filter(|(other, _)| *other != index) {
            let name = format!("to {}", surface.sections[other].name);
            for line in edges(region) {
                claim(JointKind::BoardEnd, &name, Some(other), &line);
            }
        }
        for source in sources.iter().filter(|s| s.kind != JointKind::Divider) {
            source.lines.iter().for_each(|line| claim(source.kind, &source.name, None, line));
        }
        for (from, to) in open {
            let line = Line::new(at(&edge, from), at(&edge, to));
            found.push(Stretch { kind: JointKind::Perimeter, name: "edge".to_owned(), line, other: None });
        }
    }
    found.retain(|stretch| length(&stretch.line) > SHORTEST);
    found
}

fn edges(region: &MultiPolygon) -> impl Iterator<Item = Line> + '_ {
    region.iter().flat_map(|p| std::iter::once(p.exterior()).chain(p.interiors())).flat_map(LineString::lines)
}

fn at(line: &Line, part: f64) -> Coord {
    line.start + line.delta() * part
}

fn length(line: &Line) -> f64 {
    line.dx().hypot(line.dy())
}

/// The part of `edge` that `line` lies on, as fractions of the edge.
fn overlap(edge: &Line, line: &Line) -> Option<(f64, f64)> {
    let size = length(edge);
    if size < SHORTEST {
        return None;
    }
    let axis = edge.delta() / size;
    let off = |p: Coord| ((p - edge.start).x * axis.y - (p - edge.start).y * axis.x).abs();
    if off(line.start) > SAME_LINE || off(line.end) > SAME_LINE {
        return None;
    }
    let along = |p: Coord| ((p - edge.start).x * axis.x + (p - edge.start).y * axis.y) / size;
    let (a, b) = (along(line.start), along(line.end));
    // Ends that all but meet are made to: rounding must not leave slivers between neighbours.
    let snap = |t: f64| {
        if t.abs() * size < SAME_LINE {
            0.0
        } else if (t - 1.0).abs() * size < SAME_LINE {
            1.0
        } else {
            t
        }
    };
    let (from, to) = (snap(a.min(b)).max(0.0), snap(a.max(b)).min(1.0));
    ((to - from) * size > SAME_LINE).then_some((from, to))
}

/// Takes `(from, to)` out of the open intervals and returns what was still open of it.
fn take(open: &mut Vec<(f64, f64)>, (from, to): (f64, f64)) -> Vec<(f64, f64)> {
    let mut taken = Vec::new();
    let mut left = Vec::new();
    for &(a, b) in open.iter() {
        let (low, high) = (a.max(from), b.min(to));
        if high <= low {
            left.push((a, b));
            continue;
        }
        taken.push((low, high));
        left.extend([(a, low), (high, b)].into_iter().filter(|(a, b)| b > a));
    }
    *open = left;
    taken
}

/// Joins stretches that run on in one line against the same thing.
fn merged(stretches: Vec<Stretch>) -> Vec<Stretch> {
    let mut joined: Vec<Stretch> = Vec::new();
    'next: for stretch in stretches {
        for known in &mut joined {
            let same = known.name == stretch.name && known.kind == stretch.kind;
            if same && let Some(line) = run_on(&known.line, &stretch.line) {
                known.line = line;
                continue 'next;
            }
        }
        joined.push(stretch);
    }
    joined
}

/// The line through both, if `b` goes on where `a` ends or leads up to where it starts.
fn run_on(a: &Line, b: &Line) -> Option<Line> {
    let near = |p: Coord, q: Coord| (p - q).x.hypot((p - q).y) < SAME_LINE;
    let cross = a.dx() * b.dy() - a.dy() * b.dx();
    // The same way too: a sharp spike runs out and back in one line.
    let onward = a.dx() * b.dx() + a.dy() * b.dy() > 0.0;
    if cross.abs() > SAME_LINE * (length(a) + length(b)) || !onward {
        return None;
    }
    if near(a.end, b.start) {
        Some(Line::new(a.start, b.end))
    } else if near(b.end, a.start) {
        Some(Line::new(b.start, a.end))
    } else {
        None
    }
}

/// Width across and length along the boards whose movement shows at a boundary.
///
/// `line` runs with the section on its left, as exterior rings do. The outward normal's share
/// across the boards takes the course there by its fixing; its share along takes half a board.
fn movement(fixing: Fixing, frame: &Frame, line: Line) -> (f64, f64) {
    let size = length(&line);
    let outward = frame.turn(Coord { x: line.dy() / size, y: -line.dx() / size });
    let middle = frame.turn((line.start + line.end) / 2.0);
    let share = if outward.y > 0.0 { fixing.at_tongue() } else { fixing.at_groove() };
    // Just inside, so that the outermost course is found on its own side of the line.
    let width = frame.course_width_at(middle.y - outward.y * 1e-4);
    (share * width * outward.y.abs(), frame.mean_length() / 2.0 * outward.x.abs())
}
