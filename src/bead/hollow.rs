//! What hollow faces and backs add to the strain of a bead: a coarser grid over the same axes as [`super::grid`].
//!
//! Kept is by how much the logarithms of strain over movement differ from those of the flush bead between the
//! same edges. That depends little on size, so there are few of each axis.

use super::grid::{
    DEPTHS, FAMILIES, FILLS, Family, GAPS, LEGS, Logarithms, OUTPUTS, Point, PointShape, SQUARE_DEPTHS,
    SQUARE_GAPS, logarithms,
};
use super::section::{BoardEdge, Outline, Section};
use super::stencil::picked;

/// The places on the axes of the grid that are kept.
const LEGS_KEPT: [usize; 2] = [1, 3];
const GAPS_KEPT: [usize; 4] = [0, 2, 4, 6];
const FILLS_KEPT: [usize; 3] = [0, 2, 4];
const DEPTHS_KEPT: [usize; 4] = [0, 2, 4, 5];
const SQUARE_GAPS_KEPT: [usize; 3] = [3, 5, 7];
const SQUARE_DEPTHS_KEPT: [usize; 4] = [0, 1, 2, 3];
/// Beads up to so hollow are taken from the table, by as much more of what it holds.
pub(super) const MOST_HOLLOW: f64 = 1.5;
/// Share of the height of a bead, at its edges, that a hollow of 1 is deep.
const OF_HEIGHT: f64 = 0.17;

const V_SHAPES: usize = LEGS_KEPT.len() * GAPS_KEPT.len() * FILLS_KEPT.len() * DEPTHS_KEPT.len();
const SHAPES: usize = V_SHAPES + SQUARE_GAPS_KEPT.len() * SQUARE_DEPTHS_KEPT.len();
/// Each shape has a hollow face over a flat back, and over a hollow one.
const HOLLOWS: usize = 2;
/// Hollow beads of the grid.
pub(super) const HOLLOW_SECTIONS: usize = FAMILIES.len() * SHAPES * HOLLOWS;

/// How hollow a bead is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Hollow {
    /// Depth of the face's hollow over [`unit`].
    pub face: f64,
    /// Curvature of the back over that of the face, 0 to 1.
    pub back: f64,
}

/// Depth of the face's hollow that counts as 1.
fn unit(outline: &Outline) -> f64 {
    (OF_HEIGHT * (outline.top - outline.bottom)).min(outline.deepest_sag())
}

/// Height of the back where it is curved as the face is.
fn same_curvature(outline: &Outline) -> f64 {
    outline.top_sag * (outline.half_width(outline.bottom) / outline.half_width(outline.top)).powi(2)
}

impl Hollow {
    pub fn of(outline: &Outline) -> Self {
        let unit = unit(outline).max(1e-9);
        let like_face = same_curvature(outline);
        let back = if like_face > 0.0 { (outline.bottom_rise / like_face).clamp(0.0, 1.0) } else { 0.0 };
        Self { face: outline.top_sag / unit, back }
    }
}

/// A hollow bead of the grid.
#[derive(Debug, Clone, Copy)]
pub(super) struct HollowPoint {
    family: usize,
    /// Place among the shapes.
    shape: usize,
    hollow_back: bool,
}

impl HollowPoint {
    pub fn at(index: usize) -> Self {
        let (rest, hollow) = (index / HOLLOWS, index % HOLLOWS);
        Self { family: rest / SHAPES, shape: rest % SHAPES, hollow_back: hollow == 1 }
    }

    fn index(self) -> usize {
        (self.family * SHAPES + self.shape) * HOLLOWS + usize::from(self.hollow_back)
    }

    /// The flush bead between the same edges.
    pub fn flush(self) -> Point {
        let shape = match self.shape.checked_sub(V_SHAPES) {
            None => {
                let (rest, depth) = (self.shape / DEPTHS_KEPT.len(), self.shape % DEPTHS_KEPT.len());
                let (rest, fill) = (rest / FILLS_KEPT.len(), rest % FILLS_KEPT.len());
                let (leg, gap) = (rest / GAPS_KEPT.len(), rest % GAPS_KEPT.len());
                PointShape::V {
                    leg: LEGS_KEPT[leg],
                    gap: GAPS_KEPT[gap],
                    fill: FILLS_KEPT[fill],
                    depth: DEPTHS_KEPT[depth],
                }
            }
            Some(square) => PointShape::Square {
                gap: SQUARE_GAPS_KEPT[square / SQUARE_DEPTHS_KEPT.len()],
                depth: SQUARE_DEPTHS_KEPT[square % SQUARE_DEPTHS_KEPT.len()],
            },
        };
        Point { family: self.family, shape }
    }

    /// By how much its logarithms differ from those of the flush bead, which are given. Where it has no
    /// equilibrium, as much as at a smaller movement, else nothing.
    pub fn solve(self, flush: &Logarithms) -> Logarithms {
        let section = self.flush().section();
        let mut outline = section.outline();
        outline.top_sag = unit(&outline);
        if self.hollow_back {
            outline.bottom_rise = same_curvature(&outline);
        }
        let mut found = logarithms(&section, &outline, FAMILIES[self.family]);
        let mut before = [0.0; OUTPUTS];
        for (found, flush) in found.iter_mut().zip(flush) {
            for ((found, flush), before) in found.iter_mut().zip(flush).zip(before) {
                let more = *found - flush;
                *found = if more.is_finite() { more } else { before };
            }
            before = *found;
        }
        found
    }
}

/// Places among the shapes around a flush section, with their weights; beyond the shapes that are kept, the
/// nearest.
fn shapes(section: &Section) -> Vec<(usize, f64)> {
    let depth_over_gap = section.depth.to_m() / section.gap.to_m();
    match section.edge {
        BoardEdge::V { leg, .. } => {
            let legs = picked(&LEGS, &LEGS_KEPT, leg.to_inches(), f64::ln);
            let gaps = picked(&GAPS, &GAPS_KEPT, section.gap.to_m() / leg.to_m(), f64::ln);
            let fills = picked(&FILLS, &FILLS_KEPT, section.fill.to_fraction(), |x| x);
            let depths = picked(&DEPTHS, &DEPTHS_KEPT, depth_over_gap, |x| (x + 0.15).ln());
            let all = itertools::iproduct!(legs, gaps, fills, depths);
            all.map(|((leg, a), (gap, b), (fill, c), (depth, d))| {
                let at =
                    ((leg * GAPS_KEPT.len() + gap) * FILLS_KEPT.len() + fill) * DEPTHS_KEPT.len() + depth;
                (at, a * b * c * d)
            })
            .collect()
        }
        BoardEdge::Square => {
            let gaps = picked(&SQUARE_GAPS, &SQUARE_GAPS_KEPT, section.gap.to_inches(), f64::ln);
            let depths = picked(&SQUARE_DEPTHS, &SQUARE_DEPTHS_KEPT, depth_over_gap, f64::ln);
            let all = itertools::iproduct!(gaps, depths);
            all.map(|((gap, a), (depth, b))| (V_SHAPES + gap * SQUARE_DEPTHS_KEPT.len() + depth, a * b))
                .collect()
        }
    }
}

/// The hollow beads of the grid around a section that is flush but for `hollow`, with their weights.
pub(super) fn points(section: &Section, family: Family, hollow: Hollow) -> Vec<(usize, f64)> {
    let Some(family) = FAMILIES.iter().position(|of| *of == family) else { return vec![] };
    if hollow.face <= 0.0 {
        return vec![];
    }
    let share = hollow.face.min(MOST_HOLLOW);
    let mut points = Vec::new();
    for (shape, of_shape) in shapes(section) {
        for (hollow_back, of_back) in [(false, 1.0 - hollow.back), (true, hollow.back)] {
            let point = HollowPoint { family, shape, hollow_back };
            points.push((point.index(), of_shape * share * of_back));
        }
    }
    points
}
