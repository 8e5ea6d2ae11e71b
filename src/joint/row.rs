//! A row of boards that nails hold and sealant or paint has bonded together.
//!
//! Each board is stiff and narrows by itself; its nails let it slip a little, against a spring. A
//! joint is a spring while its bead or its paint holds, and tears for good past its reach. Boards can
//! touch but not overlap. So boards that are bonded well move as one wide board, and all their
//! movement shows at the joint that tears first: the gaps come sporadically.
//!
//! Without contact the row is a tridiagonal system. Boards in contact are taken together as one, and
//! contacts are made and released until all push and none overlaps (a primal-dual active set, which
//! ends for the M-matrix that a chain of springs is). A torn joint takes no tension, so a drying row
//! falls into runs that are solved on their own; of each the joint that is stretched most beyond its
//! reach tears first, as it does under movement that grows evenly. A tear lets every other joint
//! close a little, so no chain of tears follows from one. `tests/rows.rs` holds both against scipy.
//!
//! Forces are in newtons a millimetre of board length, lengths in millimetres.

use serde::{Deserialize, Serialize};

use crate::wood::Kind;

/// Stiffness of nails, beads and paint, with its source.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Bonding {
    /// Diameter of the nails, mm.
    pub nail_diameter: f64,
    /// Distance of the nails along a board, mm.
    pub nail_spacing: f64,
    /// Modulus of a cured bead, N/mm².
    pub bead_modulus: f64,
    /// Modulus of the paint film over a joint, N/mm².
    pub paint_modulus: f64,
    /// Thickness of the paint film over a joint, mm.
    pub paint_film: f64,
    /// Stretch at which paint over a joint tears, mm.
    pub paint_reach: f64,
    /// Where the figures are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

impl Bonding {
    /// Stiffness of a board's nails in N/mm a millimetre of its length, in wood of `density` kg/m³.
    ///
    /// Slip modulus of nails without pre-drilling, ρ^1.5·d^0.8/30 N/mm (EN 1995-1-1 table 7.1, from
    /// memory).
    pub fn nails(&self, density: f64) -> f64 {
        density.powf(1.5) * self.nail_diameter.powf(0.8) / 30.0 / self.nail_spacing
    }

    /// Stiffness of a bead `width` wide and `depth` deep, millimetres, with the paint over it.
    pub fn joint(&self, width: f64, depth: f64) -> f64 {
        (self.bead_modulus * depth + self.paint_modulus * self.paint_film) / width.max(0.1)
    }
}

/// A board of a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RowBoard {
    /// How much it narrows by itself; negative when it swells.
    pub narrows: f64,
    /// Share of that at its groove edge, towards the board before it.
    pub at_groove: f64,
    /// Share at its tongue edge, towards the board after it.
    pub at_tongue: f64,
    /// Stiffness of its nails; above zero.
    pub nails: f64,
}

/// A joint of a row, between a board and the next.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RowJoint {
    /// Stiffness of what bonds it.
    pub stiffness: f64,
    /// Opening at which that tears.
    pub reach: f64,
    /// How far it can close before the boards touch; not negative.
    pub room: f64,
    /// Whether it is bonded still.
    pub bonded: bool,
}

/// How a row stands.
#[derive(Debug, Clone, PartialEq)]
pub struct RowState {
    /// How far each board slipped on its nails, positive towards the end of the row.
    pub slip: Vec<f64>,
    /// How far each joint opened.
    pub opening: Vec<f64>,
    /// Force with which the boards push at each joint.
    pub contact: Vec<f64>,
}

/// A row of boards and the joints between them, one fewer.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    boards: Vec<RowBoard>,
    joints: Vec<RowJoint>,
}

impl Row {
    /// A row. There must be one joint fewer than boards; what is too much of either is left out.
    pub fn new(mut boards: Vec<RowBoard>, mut joints: Vec<RowJoint>) -> Self {
        boards.truncate(joints.len() + 1);
        joints.truncate(boards.len().saturating_sub(1));
        Self { boards, joints }
    }

    /// The joints with what is torn by now.
    pub fn joints(&self) -> &[RowJoint] {
        &self.joints
    }

    /// What a joint would open if no board slipped.
    fn free_opening(&self, joint: usize) -> f64 {
        let (before, after) = (&self.boards[joint], &self.boards[joint + 1]);
        after.at_groove * after.narrows + before.at_tongue * before.narrows
    }

    /// The balance of nails, bonds and contacts, with what is torn now.
    pub fn balance(&self) -> RowState {
        let mut touching = vec![false; self.joints.len()];
        // Each pass settles at least one contact for good; a few are enough in practice.
        for _ in 0..=self.joints.len() {
            let state = self.solve(0, self.boards.len(), &touching);
            let mut changed = false;
            for (joint, touch) in touching.iter_mut().enumerate() {
                let wanted = if *touch {
                    state.contact[joint] > 0.0
                } else {
                    state.opening[joint] < -self.joints[joint].room - 1e-12
                };
                changed |= wanted != *touch;
                *touch = wanted;
            }
            if !changed {
                return state;
            }
        }
        self.solve(0, self.boards.len(), &touching)
    }

    /// Lets every joint tear that is stretched beyond its reach, as the boards' movement grows from
    /// nothing to what it is. Gives the joints in the order in which their runs came apart.
    pub fn tear(&mut self) -> Vec<usize> {
        let mut torn = Vec::new();
        let none = vec![false; self.joints.len()];
        let mut runs = vec![(0, self.boards.len())];
        while let Some((from, to)) = runs.pop() {
            let state = self.solve(from, to, &none);
            let over = |joint: usize| state.opening[joint - from] / self.joints[joint].reach;
            let worst = (from..to.saturating_sub(1))
                .filter(|&joint| self.joints[joint].bonded)
                .max_by(|&a, &b| over(a).total_cmp(&over(b)));
            if let Some(worst) = worst.filter(|&worst| over(worst) > 1.0) {
                self.joints[worst].bonded = false;
                torn.push(worst);
                runs.push((worst + 1, to));
                runs.push((from, worst + 1));
            }
        }
        torn
    }

    /// Solves the boards `from..to` on their own, those at `touching` joints as one.
    fn solve(&self, from: usize, to: usize, touching: &[bool]) -> RowState {
        let count = to - from;
        // Boards in contact: one unknown, the first one's slip; the others differ by a fixed offset.
        let mut offset = vec![0.0; count];
        let mut heads = Vec::with_capacity(count);
        for at in 0..count {
            if at > 0 && touching[from + at - 1] {
                let joint = from + at - 1;
                offset[at] = offset[at - 1] - self.joints[joint].room - self.free_opening(joint);
            } else {
                heads.push(at);
            }
        }
        let slips = self.solve_groups(from, count, &heads, &offset);
        let mut slip = vec![0.0; count];
        for (group, &head) in heads.iter().enumerate() {
            let end = heads.get(group + 1).copied().unwrap_or(count);
            for at in head..end {
                slip[at] = slips[group] + offset[at];
            }
        }
        self.state(from, slip, touching)
    }

    /// The slip of each group's first board: a tridiagonal system, eliminated from the left.
    fn solve_groups(&self, from: usize, count: usize, heads: &[usize], offset: &[f64]) -> Vec<f64> {
        let spring = |joint: usize| {
            let joint = &self.joints[joint];
            if joint.bonded { joint.stiffness } else { 0.0 }
        };
        let mut eliminated: Vec<(f64, f64)> = Vec::with_capacity(heads.len());
        let (mut left, mut pull_left) = (0.0, 0.0);
        for (group, &head) in heads.iter().enumerate() {
            let end = heads.get(group + 1).copied().unwrap_or(count);
            let mut nails = 0.0;
            let mut load = 0.0;
            for (board, offset) in self.boards[from + head..from + end].iter().zip(&offset[head..end]) {
                nails += board.nails;
                load -= board.nails * offset;
            }
            let (mut right, mut pull_right) = (0.0, 0.0);
            if end < count {
                let joint = from + end - 1;
                right = spring(joint);
                // Tension at equal slips of the two groups' heads.
                pull_right = right * (self.free_opening(joint) - offset[end - 1]);
            }
            // The group's last board is pulled forward by its right joint, its first back by its left.
            load += pull_right - pull_left;
            let before = eliminated.last().copied().unwrap_or((0.0, 0.0));
            let pivot = nails + left + right - left * before.1;
            eliminated.push(((load + left * before.0) / pivot, right / pivot));
            (left, pull_left) = (right, pull_right);
        }
        let mut after = 0.0;
        let mut slips = vec![0.0; heads.len()];
        for (slip, &(load, upper)) in slips.iter_mut().zip(&eliminated).rev() {
            after = load + upper * after;
            *slip = after;
        }
        slips
    }

    /// Openings and contacts that follow from the slips of the boards from `from` on.
    fn state(&self, from: usize, slip: Vec<f64>, touching: &[bool]) -> RowState {
        let joints = slip.len().saturating_sub(1);
        let opening: Vec<f64> =
            (0..joints).map(|at| slip[at + 1] - slip[at] + self.free_opening(from + at)).collect();
        // What a joint carries follows from the balance of the boards before it.
        let mut tension = 0.0;
        let contact = (0..joints)
            .map(|at| {
                let joint = &self.joints[from + at];
                tension += self.boards[from + at].nails * slip[at];
                let bond = if joint.bonded { joint.stiffness * opening[at] } else { 0.0 };
                if touching[from + at] { bond - tension } else { 0.0 }
            })
            .collect();
        RowState { slip, opening, contact }
    }
}
