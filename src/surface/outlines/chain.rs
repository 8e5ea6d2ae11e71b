//! Loose lines into rings: those whose ends meet, two at every corner.

use std::collections::{BTreeSet, HashMap};

use super::Point;
use super::ring::{ENDS_MEET, distance};

/// What came of the loose lines on one layer.
#[derive(Debug, Default, PartialEq)]
pub(super) struct Chains {
    /// The rings they make, closed implicitly.
    pub rings: Vec<Vec<Point>>,
    /// How many lines lead nowhere.
    pub open: usize,
    /// How many lines meet two others at one end, so that it is not clear what they outline.
    pub branched: usize,
}

/// Loose lines, each with the numbers of the corners where it starts and ends.
struct Net {
    lines: Vec<(Vec<Point>, [usize; 2])>,
    /// The lines still in, at every corner.
    corners: Vec<Vec<usize>>,
}

/// Joins lines at ends that lie within half a millimetre.
pub(super) fn join(lines: Vec<Vec<Point>>) -> Chains {
    let mut chains = Chains::default();
    let mut net = Net { lines: Vec::new(), corners: Vec::new() };
    let mut corners = Corners::default();
    let mut straight = BTreeSet::new();
    for mut line in lines {
        let [first, .., last] = line[..] else { continue };
        let ends = [corners.number(first), corners.number(last)];
        if ends[0] == ends[1] {
            line.pop();
            if line.len() > 2 {
                chains.rings.push(line);
            }
        } else if line.len() > 2 || straight.insert([ends[0].min(ends[1]), ends[0].max(ends[1])]) {
            // A straight line drawn twice counts once.
            net.lines.push((line, ends));
        }
    }
    net.corners = vec![Vec::new(); corners.count];
    for (index, (_, ends)) in net.lines.iter().enumerate() {
        ends.iter().for_each(|&end| net.corners[end].push(index));
    }
    chains.open = net.drop_loose_ends();
    net.collect(&mut chains);
    chains
}

impl Net {
    /// Takes out lines that lead nowhere, one after the other, and counts them.
    fn drop_loose_ends(&mut self) -> usize {
        let mut dropped = 0;
        let mut ends: Vec<usize> = (0..self.corners.len()).collect();
        while let Some(end) = ends.pop() {
            let &[line] = &self.corners[end][..] else { continue };
            dropped += 1;
            for corner in self.lines[line].1 {
                self.corners[corner].retain(|&other| other != line);
                ends.push(corner);
            }
        }
        dropped
    }

    /// Follows the lines that are left: once round is a ring, anything else is branched.
    fn collect(&self, chains: &mut Chains) {
        let mut seen = vec![false; self.corners.len()];
        for start in 0..self.corners.len() {
            let connected = self.connected(start, &mut seen);
            if connected.iter().any(|&corner| self.corners[corner].len() > 2) {
                let ends: usize = connected.iter().map(|&corner| self.corners[corner].len()).sum();
                chains.branched += ends / 2;
            } else if !connected.is_empty() {
                chains.rings.push(self.ring(start));
            }
        }
    }

    /// The corners not yet seen that can be reached from this one.
    fn connected(&self, start: usize, seen: &mut [bool]) -> Vec<usize> {
        let mut reached = Vec::new();
        let mut next = vec![start];
        while let Some(corner) = next.pop() {
            if seen[corner] || self.corners[corner].is_empty() {
                continue;
            }
            seen[corner] = true;
            reached.push(corner);
            next.extend(self.corners[corner].iter().flat_map(|&line| self.lines[line].1));
        }
        reached
    }

    /// Once round from this corner. Two lines meet at every corner on the way.
    fn ring(&self, start: usize) -> Vec<Point> {
        let mut ring = Vec::new();
        let (mut corner, mut came) = (start, None);
        while let Some(&line) = self.corners[corner].iter().find(|&&line| Some(line) != came) {
            let (points, ends) = &self.lines[line];
            let whole = points.len() - 1;
            if ends[0] == corner {
                ring.extend(&points[..whole]);
                corner = ends[1];
            } else {
                ring.extend(points[1..].iter().rev());
                corner = ends[0];
            }
            came = Some(line);
            if corner == start {
                break;
            }
        }
        ring
    }
}

/// Numbers for places, the same for those that meet.
#[derive(Default)]
struct Corners {
    cells: HashMap<[u64; 2], Vec<(Point, usize)>>,
    count: usize,
}

impl Corners {
    /// The number of the corner here, a new one if none is near.
    fn number(&mut self, point: Point) -> usize {
        let cell = point.map(|c| (c / ENDS_MEET).floor());
        for dx in [0.0, -1.0, 1.0] {
            for dy in [0.0, -1.0, 1.0] {
                let near = self.cells.get(&key([cell[0] + dx, cell[1] + dy])).into_iter().flatten();
                if let Some((_, number)) = near.into_iter().find(|(p, _)| distance(*p, point) <= ENDS_MEET) {
                    return *number;
                }
            }
        }
        self.cells.entry(key(cell)).or_default().push((point, self.count));
        self.count += 1;
        self.count - 1
    }
}

/// Whole numbers as a key. Adding zero makes one zero of the two.
fn key(cell: Point) -> [u64; 2] {
    cell.map(|c| (c + 0.0).to_bits())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(points: &[[f64; 2]]) -> Vec<Point> {
        points.to_vec()
    }

    #[test]
    fn lines_in_any_order_and_direction_make_a_ring() {
        let chains = join(vec![
            line(&[[0.0, 0.0], [4.0, 0.0]]),
            line(&[[0.0, 3.0], [0.0003, -0.0003]]),
            line(&[[4.0, 3.0], [4.0, 0.0004]]),
            line(&[[4.0, 3.0], [0.0, 3.0]]),
            line(&[[4.0, 0.0], [0.0, 0.0]]),
        ]);
        assert_eq!((chains.rings.len(), chains.open, chains.branched), (1, 0, 0));
        assert_eq!(chains.rings[0].len(), 4);
    }

    #[test]
    fn a_tail_is_dropped_and_a_gap_is_open() {
        let mut lines = vec![
            line(&[[0.0, 0.0], [4.0, 0.0]]),
            line(&[[4.0, 0.0], [4.0, 3.0]]),
            line(&[[4.0, 3.0], [0.0, 0.0]]),
            line(&[[4.0, 3.0], [5.0, 5.0]]),
            line(&[[5.0, 5.0], [6.0, 5.0]]),
        ];
        let chains = join(lines.clone());
        assert_eq!((chains.rings.len(), chains.open, chains.branched), (1, 2, 0));
        lines[2] = line(&[[4.0, 3.0], [0.0, 0.0006]]);
        assert_eq!(join(lines), Chains { rings: vec![], open: 5, branched: 0 });
    }

    #[test]
    fn two_rooms_with_one_wall_are_not_told_apart() {
        let corners = [[0.0, 0.0], [4.0, 0.0], [8.0, 0.0], [8.0, 3.0], [4.0, 3.0], [0.0, 3.0]];
        let mut lines: Vec<_> = (0..6).map(|i| line(&[corners[i], corners[(i + 1) % 6]])).collect();
        lines.push(line(&[corners[1], corners[4]]));
        assert_eq!(join(lines), Chains { rings: vec![], open: 0, branched: 7 });
    }

    #[test]
    fn an_arc_and_its_chord_make_a_ring() {
        let arc = line(&[[0.0, 0.0], [1.0, 1.0], [2.0, 0.0]]);
        let chains = join(vec![arc.clone(), line(&[[2.0, 0.0], [0.0, 0.0]])]);
        assert_eq!(chains.rings, [arc]);
    }
}
