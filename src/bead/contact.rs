//! Frictionless contact of the bead's free faces with what they may press on: a taped tongue behind,
//! a bevel beside, the slot's walls below. A penalty on the depth of penetration, which sets in
//! smoothly, so that points on the verge of touching do not make Newton's method go back and forth.

use super::mesh::Mesh;
use super::section::{Behind, Outline};
use super::shape::quadratic;

/// Which board an obstacle moves with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Carrier {
    Left,
    Right,
}

/// One side of an element that may touch a straight obstacle.
#[derive(Debug, Clone)]
pub(super) struct Contact {
    /// The element, by index.
    pub element: usize,
    /// The three nodes of the side, as places in the element's list.
    side: [usize; 3],
    /// Length of the side that each of its points stands for, as laid, with the points' shape functions.
    points: [(f64, [f64; 3]); 3],
    /// A point of the obstacle as laid.
    at: [f64; 2],
    /// Normal of the obstacle, away from its inside.
    normal: [f64; 2],
    carrier: Carrier,
}

/// Penalty over the shear modulus, per meter, once it has set in.
const PENALTY: f64 = 2e6;
/// Depth over which it sets in, in meters. Sealant pressed on with its shear modulus goes in by 2 µm.
const ONSET: f64 = 3e-6;

/// Energy of the penalty over the shear modulus per unit area, and its first and second derivative,
/// at this clearance.
fn penalty(clear: f64) -> (f64, f64, f64) {
    let deep = (-clear).max(0.0);
    if deep < ONSET {
        let stiff = PENALTY / ONSET;
        return (stiff * deep.powi(3) / 6.0, -0.5 * stiff * deep * deep, stiff * deep);
    }
    let (start, slope) = (PENALTY * ONSET * ONSET / 6.0, 0.5 * PENALTY * ONSET);
    let more = deep - ONSET;
    (start + slope * more + 0.5 * PENALTY * more * more, -slope - PENALTY * more, PENALTY)
}

/// What is beyond the face's edges on either board.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Beyond {
    /// The bevel or wall goes on in the same direction as the bonded part's widening in the V.
    Bevel,
    /// The face of the board.
    Face,
}

impl Contact {
    /// All sides that may touch something. Those with bevels and walls matter only while the joint is
    /// squeezed: a pulled bead draws away from them.
    pub fn all(mesh: &Mesh, outline: &Outline, behind: Behind, beyond: Beyond, squeezed: bool) -> Vec<Self> {
        let mut contacts = Vec::new();
        let across = mesh.columns / 2;
        let count = mesh.elements.len();
        let bonded = mesh.bonded_back().last();
        for column in 0..across {
            let back = (column, [0, 1, 2]);
            let face = (count - across + column, [6, 7, 8]);
            let released = |(element, side): (usize, [usize; 3])| {
                bonded.is_some_and(|end| mesh.elements[element][side[0]] >= end)
            };
            let right = mesh.nodes[mesh.elements[back.0][1]][0] >= 0.0;
            match behind {
                Behind::Breaker => {
                    contacts.push(Self::new(mesh, back, [0.0, outline.bottom], [0.0, 1.0], Carrier::Left));
                }
                // Only the strip at the moving board's corner is free to slide on the tongue.
                Behind::Tongue if released(back) => {
                    contacts.push(Self::new(mesh, back, [0.0, outline.bottom], [0.0, 1.0], Carrier::Left));
                }
                Behind::Free | Behind::Rod if squeezed => {
                    contacts.push(beside(mesh, back, [outline.half_gap, outline.bottom], 0.0, right));
                }
                Behind::Tongue | Behind::Free | Behind::Rod => {}
            }
            if !squeezed {
                continue;
            }
            if mesh.nodes[0][0] == 0.0 {
                // In a half model the other half is an obstacle to a face that folds.
                for side in [back, face] {
                    contacts.push(Self::new(mesh, side, [0.0; 2], [1.0, 0.0], Carrier::Left));
                }
            }
            match beyond {
                Beyond::Bevel => {
                    let edge = [outline.half_width(outline.top), outline.top];
                    contacts.push(beside(mesh, face, edge, outline.flare, right));
                }
                Beyond::Face if outline.top_sag <= 0.0 => {
                    contacts.push(Self::new(mesh, face, [0.0, outline.top], [0.0, 1.0], Carrier::Left));
                }
                Beyond::Face => {}
            }
        }
        contacts
    }

    fn new(
        mesh: &Mesh,
        (element, side): (usize, [usize; 3]),
        at: [f64; 2],
        normal: [f64; 2],
        carrier: Carrier,
    ) -> Self {
        let nodes = side.map(|i| mesh.nodes[mesh.elements[element][i]]);
        let root = 0.6_f64.sqrt();
        let points = [(-root, 5.0 / 9.0), (0.0, 8.0 / 9.0), (root, 5.0 / 9.0)].map(|(s, weight)| {
            let (shape, slope) = quadratic(s);
            let along = |c: usize| (0..3).map(|i| slope[i] * nodes[i][c]).sum::<f64>();
            (weight * along(0).hypot(along(1)), shape)
        });
        Self { element, side, points, at, normal, carrier }
    }

    /// Adds the obstacle's push to the element's forces and stiffness, with the right board moved by
    /// `moved`. Returns the force on the right board if the obstacle is part of it.
    pub fn add(
        &self,
        places: &[[f64; 2]; 9],
        moved: [f64; 2],
        force: &mut [f64; 18],
        stiffness: &mut [[f64; 18]; 18],
    ) -> [f64; 2] {
        let moved = if self.carrier == Carrier::Right { moved } else { [0.0; 2] };
        let mut on_board = [0.0; 2];
        for (length, shape) in &self.points {
            let mut clear = 0.0;
            for c in 0..2 {
                let x: f64 = (0..3).map(|i| shape[i] * places[self.side[i]][c]).sum();
                clear += self.normal[c] * (x - self.at[c] - moved[c]);
            }
            if clear >= 0.0 {
                continue;
            }
            let (_, push, stiff) = penalty(clear);
            let (push, stiff) = (push * length, stiff * length);
            for i in 0..6 {
                let (a, c) = (self.side[i / 2], i % 2);
                let weight = shape[i / 2] * self.normal[c];
                force[2 * a + c] += push * weight;
                for j in 0..6 {
                    let (b, d) = (self.side[j / 2], j % 2);
                    stiffness[2 * a + c][2 * b + d] += stiff * weight * shape[j / 2] * self.normal[d];
                }
            }
            if self.carrier == Carrier::Right {
                for (on_board, normal) in on_board.iter_mut().zip(self.normal) {
                    *on_board -= push * normal;
                }
            }
        }
        on_board
    }

    /// Energy stored in the penalty.
    #[cfg(test)]
    pub fn energy(&self, places: &[[f64; 2]; 9], moved: [f64; 2]) -> f64 {
        let moved = if self.carrier == Carrier::Right { moved } else { [0.0; 2] };
        let at_point = |(length, shape): &(f64, [f64; 3])| {
            let clear = |c: usize| {
                let x: f64 = (0..3).map(|i| shape[i] * places[self.side[i]][c]).sum();
                self.normal[c] * (x - self.at[c] - moved[c])
            };
            length * penalty(clear(0) + clear(1)).0
        };
        self.points.iter().map(at_point).sum()
    }
}

/// The bevel or wall of the board on this side of the joint.
fn beside(mesh: &Mesh, side: (usize, [usize; 3]), edge: [f64; 2], flare: f64, right: bool) -> Contact {
    let long = 1.0_f64.hypot(flare);
    let inward = if right { -1.0 } else { 1.0 };
    let carrier = if right { Carrier::Right } else { Carrier::Left };
    Contact::new(mesh, side, [-inward * edge[0], edge[1]], [inward / long, flare / long], carrier)
}
