//! Rings: arcs into straight pieces, cleaning, and counting what is no outline.

use std::collections::BTreeSet;
use std::f64::consts::{FRAC_PI_4, TAU};

use super::{
    FileUnit, LeftOut, MOST_OUTLINES, MOST_POINTS, Outline, OutlineError, OutlineRemark, OutlinesRead, Point,
};

/// How far a straight piece may lie from the curve it stands for, in meters.
pub(super) const CHORD_ERROR: f64 = 0.001;

/// Ends nearer than this meet, in meters.
pub(super) const ENDS_MEET: f64 = 0.0005;

/// Points nearer than this are one, in meters.
const SAME_POINT: f64 = 1e-5;

/// A smaller ring is no room, in square meters.
const SMALLEST: f64 = 1e-4;

/// Nothing farther from the origin is read, in meters. Even map coordinates are nearer.
const FARTHEST: f64 = 1e8;

/// Longer names are cut, in letters.
const LONGEST_NAME: usize = 60;

/// Outlines as they are found.
pub(super) struct Draft<'a> {
    /// The name of an outline that has none of its own.
    stem: &'a str,
    outlines: Vec<Outline>,
    names: BTreeSet<String>,
    points: usize,
    left_out: Vec<(LeftOut, usize)>,
    remarks: Vec<OutlineRemark>,
}

impl<'a> Draft<'a> {
    pub(super) const fn new(stem: &'a str) -> Self {
        Self {
            stem,
            outlines: Vec::new(),
            names: BTreeSet::new(),
            points: 0,
            left_out: Vec::new(),
            remarks: Vec::new(),
        }
    }

    /// Counts corners that were read, whether or not they end up in an outline.
    pub(super) fn count_points(&mut self, points: usize) -> Result<(), OutlineError> {
        self.points = self.points.saturating_add(points);
        if self.points > MOST_POINTS { Err(OutlineError::TooManyPoints) } else { Ok(()) }
    }

    /// Takes in a closed ring, if it can be a room.
    pub(super) fn add(&mut self, name: &str, ring: &[Point]) -> Result<(), OutlineError> {
        if !ring.iter().all(|p| in_reach(*p)) {
            self.leave_out(LeftOut::FarShapes, 1);
            return Ok(());
        }
        let ring = cleaned(ring);
        if ring.len() < 3 || area(&ring).abs() <= SMALLEST {
            self.leave_out(LeftOut::SmallShapes, 1);
            return Ok(());
        }
        if self.outlines.len() == MOST_OUTLINES {
            return Err(OutlineError::TooManyOutlines);
        }
        let name = self.unlike_others(name);
        self.outlines.push(Outline { name, ring });
        Ok(())
    }

    /// Counts what was left out.
    pub(super) fn leave_out(&mut self, what: LeftOut, count: usize) {
        match self.left_out.iter_mut().find(|(known, _)| *known == what) {
            Some((_, known)) => *known += count,
            None => self.left_out.push((what, count)),
        }
    }

    pub(super) fn remark(&mut self, remark: OutlineRemark) {
        self.remarks.push(remark);
    }

    /// What was read, if there is an outline in it.
    pub(super) fn finish(self, unit: FileUnit, unit_from_file: bool) -> Result<OutlinesRead, OutlineError> {
        let mut remarks = self.remarks;
        let left_out = self.left_out.into_iter().filter(|(_, count)| *count > 0);
        remarks.extend(left_out.map(|(what, count)| OutlineRemark::LeftOut { what, count }));
        if self.outlines.is_empty() {
            return Err(OutlineError::NoOutline(remarks));
        }
        Ok(OutlinesRead { outlines: self.outlines, unit, unit_from_file, remarks })
    }

    /// The name without odd signs, and with a number if there is one like it.
    fn unlike_others(&mut self, name: &str) -> String {
        let plain = [name, self.stem].map(plain_name).into_iter().find(|plain| !plain.is_empty());
        let plain = plain.unwrap_or_default();
        let mut unlike = plain.clone();
        for number in 2.. {
            if self.names.insert(unlike.clone()) {
                break;
            }
            unlike = format!("{plain} {number}");
        }
        unlike
    }
}

/// A name without odd characters and needless blanks, cut short.
pub(super) fn plain_name(name: &str) -> String {
    let plain = name.split(|c: char| c.is_whitespace() || c.is_control()).filter(|w| !w.is_empty());
    plain.collect::<Vec<_>>().join(" ").chars().take(LONGEST_NAME).collect()
}

pub(super) fn in_reach(point: Point) -> bool {
    // Not a number is in no range.
    point.iter().all(|c| (-FARTHEST..=FARTHEST).contains(c))
}

pub(super) fn distance(a: Point, b: Point) -> f64 {
    (b[0] - a[0]).hypot(b[1] - a[1])
}

/// The area in square meters, positive if the ring runs anticlockwise.
fn area(ring: &[Point]) -> f64 {
    let Some(&[ox, oy]) = ring.first() else { return 0.0 };
    let next = ring.iter().cycle().skip(1);
    let cross = |(a, b): (&Point, &Point)| (a[0] - ox) * (b[1] - oy) - (b[0] - ox) * (a[1] - oy);
    ring.iter().zip(next).map(cross).sum::<f64>() / 2.0
}

/// The ring without repeated points and without spikes: corners from which the line goes back the
/// way it came.
fn cleaned(ring: &[Point]) -> Vec<Point> {
    let mut clean: Vec<Point> = Vec::with_capacity(ring.len());
    for &point in ring {
        while let [.., before, last] = clean[..]
            && (is_spike(before, last, point) || distance(last, point) < SAME_POINT)
        {
            clean.pop();
        }
        if clean.last().is_none_or(|&last| distance(last, point) >= SAME_POINT) {
            clean.push(point);
        }
    }
    // Where the ring closes, the same from both sides.
    let mut first = 0;
    while let [head, second, .., before, last] = clean[first..] {
        if distance(last, head) < SAME_POINT || is_spike(before, last, head) {
            clean.pop();
        } else if is_spike(last, head, second) {
            first += 1;
        } else {
            break;
        }
    }
    clean.split_off(first)
}

/// Whether the line from `a` over `b` to `c` turns back on itself at `b`.
fn is_spike(a: Point, b: Point, c: Point) -> bool {
    let (out, back) = ([b[0] - a[0], b[1] - a[1]], [c[0] - b[0], c[1] - b[1]]);
    let dot = out[0] * back[0] + out[1] * back[1];
    let cross = out[0] * back[1] - out[1] * back[0];
    dot < 0.0 && cross.abs() <= SAME_POINT * distance(a, b).max(distance(b, c))
}

/// Adds the points of an arc around `center` that starts at `from` and turns by `sweep` radians,
/// without its two ends.
pub(super) fn add_arc(
    ring: &mut Vec<Point>,
    center: Point,
    from: Point,
    sweep: f64,
) -> Result<(), OutlineError> {
    let radius = distance(center, from);
    let widest = 4.0 * (CHORD_ERROR / (2.0 * radius)).min(1.0).sqrt().asin();
    let pieces = (sweep.abs() / widest.min(FRAC_PI_4)).ceil();
    if pieces > 20_000.0 {
        return Err(OutlineError::TooManyPoints);
    }
    let (x, y) = (from[0] - center[0], from[1] - center[1]);
    let mut piece = 1_u32;
    while f64::from(piece) < pieces {
        let (sin, cos) = (sweep * f64::from(piece) / pieces).sin_cos();
        ring.push([center[0] + x * cos - y * sin, center[1] + x * sin + y * cos]);
        piece += 1;
    }
    if ring.len() > MOST_POINTS { Err(OutlineError::TooManyPoints) } else { Ok(()) }
}

/// Adds the points between `from` and `to` on an arc with this bulge: the tangent of a quarter of
/// the angle it turns by, as DXF has it.
pub(super) fn add_bulge(
    ring: &mut Vec<Point>,
    from: Point,
    to: Point,
    bulge: f64,
) -> Result<(), OutlineError> {
    let rise = bulge.abs() * distance(from, to) / 2.0;
    if rise < CHORD_ERROR / 10.0 {
        return Ok(());
    }
    // From the middle of the chord to the center, as a share of the chord turned left.
    let share = (1.0 - bulge * bulge) / (4.0 * bulge);
    let center = [
        f64::midpoint(from[0], to[0]) - share * (to[1] - from[1]),
        f64::midpoint(from[1], to[1]) + share * (to[0] - from[0]),
    ];
    add_arc(ring, center, from, 4.0 * bulge.atan())
}

/// A circle as a ring.
pub(super) fn circle(center: Point, radius: f64) -> Result<Vec<Point>, OutlineError> {
    let from = [center[0] + radius, center[1]];
    let mut ring = vec![from];
    add_arc(&mut ring, center, from, TAU)?;
    Ok(ring)
}

#[cfg(test)]
mod tests {
    use std::f64::consts::PI;

    use super::*;

    #[test]
    fn a_square_with_spikes_and_repeats_is_a_square() {
        let ring = [
            [0.0, 0.0],
            [0.0, 0.0],
            [2.0, 0.0],
            [3.0, 0.0],
            [2.0, 0.0],
            [2.0, 2.0],
            [1.0, 2.0],
            [1.0, 3.0],
            [1.0, 2.0],
            [0.0, 2.0],
            [0.0, -1.0],
            [0.0, 0.0],
        ];
        let clean = cleaned(&ring);
        assert_eq!(area(&clean), 4.0);
        // The corner at (1, 2) lies on a straight side: it does no harm and stays.
        assert_eq!(clean, [[0.0, 0.0], [2.0, 0.0], [2.0, 2.0], [1.0, 2.0], [0.0, 2.0]]);
    }

    #[test]
    fn a_spike_at_the_first_corner_goes() {
        let clean = cleaned(&[[-1.0, 0.0], [2.0, 0.0], [2.0, 2.0], [0.0, 2.0], [0.0, 0.0]]);
        assert_eq!(clean, [[2.0, 0.0], [2.0, 2.0], [0.0, 2.0], [0.0, 0.0]]);
    }

    #[test]
    fn nothing_but_a_spike_leaves_no_ring() {
        assert!(cleaned(&[[0.0, 0.0], [1.0, 0.0], [2.0, 0.0], [1.0, 0.0]]).len() < 3);
        assert!(cleaned(&[[1.0, 1.0]; 5]).len() < 3);
        assert!(cleaned(&[]).is_empty());
    }

    #[test]
    fn arcs_keep_to_the_chord_error() {
        for radius in [0.01, 0.5, 3.0, 40.0] {
            let ring = circle([7.0, -2.0], radius).unwrap();
            for (a, b) in ring.iter().zip(ring.iter().cycle().skip(1)) {
                let middle = [f64::midpoint(a[0], b[0]), f64::midpoint(a[1], b[1])];
                assert!(radius - distance(middle, [7.0, -2.0]) <= CHORD_ERROR * 1.001, "{radius}");
            }
        }
    }

    #[test]
    fn a_bulge_of_one_is_a_half_circle_to_the_right() {
        let mut ring = vec![[0.0, 0.0]];
        add_bulge(&mut ring, [0.0, 0.0], [2.0, 0.0], 1.0).unwrap();
        ring.push([2.0, 0.0]);
        assert!((area(&ring) - PI / 2.0).abs() < 0.004);
        assert!(ring.iter().all(|p| p[1] <= 1e-9), "anticlockwise from left to right runs below");
    }

    #[test]
    fn arcs_without_end_are_refused() {
        assert_eq!(circle([0.0, 0.0], 1e12), Err(OutlineError::TooManyPoints));
    }
}
