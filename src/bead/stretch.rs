//! Stretch at a place of the section.
//!
//! At bonded corners strain has no finite value, so a stretch at a place always means the mean of
//! the largest principal stretch over all sealant that lay within [`REACH`] of it.

use super::model::{Model, State};
use super::shape::{gradient, locate, quadratic, sample};

/// Radius of the means, in meters.
pub(super) const REACH: f64 = 0.25e-3;

/// Size of the cells that the mean is taken over, in meters, and the most of them along a side.
const CELL: f64 = 0.1 * REACH;
const MOST_CELLS: f64 = 200.0;

/// Pieces that an element's side is cut into to measure its length.
const PIECES: f64 = 8.0;
const PIECES_A_SIDE: usize = 8;

/// Mean largest principal stretch of what lay within [`REACH`] of `place`; `along` is the nodes'
/// displacement along the joint, if any.
pub(super) fn local_stretch(model: &Model, state: &State, place: [f64; 2], along: Option<&[f64]>) -> f64 {
    let (mut sum, mut area) = (0.0, 0.0);
    for nodes in &model.mesh.elements {
        let laid = nodes.map(|node| model.mesh.nodes[node]);
        if !may_reach(&laid, place) {
            continue;
        }
        let places = nodes.map(|node| state.places[node]);
        let along = along.map(|along| nodes.map(|node| along[node]));
        let cells = |from: usize, to: usize| {
            let length = (laid[to][0] - laid[from][0]).hypot(laid[to][1] - laid[from][1]);
            (length / CELL).clamp(4.0, MOST_CELLS).ceil()
        };
        let (across, up) = (cells(3, 5), cells(1, 7));
        for (s, t) in middles(across).flat_map(|s| middles(up).map(move |t| (s, t))) {
            let at = locate(&laid, s, t);
            if (at[0] - place[0]).hypot(at[1] - place[1]) > REACH {
                continue;
            }
            let at = sample(&laid, s, t, 4.0 / (across * up));
            let slope = along.map_or([0.0; 2], |along| slope(&at.gradients, &along));
            sum += at.area * principal_stretch(&gradient(&at.gradients, &places), slope);
            area += at.area;
        }
    }
    if area > 0.0 { sum / area } else { 1.0 }
}

/// The middles of this many cells from −1 to 1.
fn middles(cells: f64) -> impl Iterator<Item = f64> {
    let side = 2.0 / cells;
    std::iter::successors(Some(0.5 * side - 1.0), move |middle| Some(middle + side)).take_while(|s| *s < 1.0)
}

fn may_reach(nodes: &[[f64; 2]; 9], place: [f64; 2]) -> bool {
    // Sides may be curved by a little more than their nodes show.
    let margin = 1.2 * REACH;
    (0..2).all(|c| {
        let low = nodes.iter().map(|node| node[c]).fold(f64::INFINITY, f64::min);
        let high = nodes.iter().map(|node| node[c]).fold(f64::NEG_INFINITY, f64::max);
        (low - margin..=high + margin).contains(&place[c])
    })
}

fn slope(gradients: &[[f64; 2]; 9], along: &[f64; 9]) -> [f64; 2] {
    std::array::from_fn(|c| gradients.iter().zip(along).map(|(g, w)| g[c] * w).sum())
}

/// Largest principal stretch where the deformation gradient in the section is `f` and the
/// displacement along the joint has this slope: the root of the largest eigenvalue of `FᵀF`.
pub(super) fn principal_stretch(f: &[[f64; 2]; 2], slope: [f64; 2]) -> f64 {
    let c = |i: usize, j: usize| f[0][i] * f[0][j] + f[1][i] * f[1][j] + slope[i] * slope[j];
    let (xx, yy, xy) = (c(0, 0), c(1, 1), c(0, 1));
    let sliding = slope[0].hypot(slope[1]);
    if sliding < 1e-12 {
        return (0.5 * (xx + yy) + (0.5 * (xx - yy)).hypot(xy)).sqrt();
    }
    let matrix = [[xx, xy, slope[0]], [xy, yy, slope[1]], [slope[0], slope[1], 1.0]];
    largest_eigenvalue(&matrix).sqrt()
}

/// Largest eigenvalue of a symmetric matrix, by the trigonometric solution of its cubic.
fn largest_eigenvalue(m: &[[f64; 3]; 3]) -> f64 {
    let mean = (m[0][0] + m[1][1] + m[2][2]) / 3.0;
    let off = m[0][1].powi(2) + m[0][2].powi(2) + m[1][2].powi(2);
    let on: f64 = (0..3).map(|i| (m[i][i] - mean).powi(2)).sum();
    let radius = ((on + 2.0 * off) / 6.0).sqrt();
    if radius < 1e-300 {
        return mean;
    }
    let b = |i: usize, j: usize| (m[i][j] - if i == j { mean } else { 0.0 }) / radius;
    let determinant = b(0, 0) * (b(1, 1) * b(2, 2) - b(1, 2) * b(2, 1))
        - b(0, 1) * (b(1, 0) * b(2, 2) - b(1, 2) * b(2, 0))
        + b(0, 2) * (b(1, 0) * b(2, 1) - b(1, 1) * b(2, 0));
    let angle = (0.5 * determinant).clamp(-1.0, 1.0).acos() / 3.0;
    mean + 2.0 * radius * angle.cos()
}

/// Mean stretch of a face's line within [`REACH`] of the middle of the joint.
pub(super) fn middle_stretch(model: &Model, state: &State, row: std::ops::Range<usize>) -> f64 {
    let lengths = line_lengths(model, state, row.clone());
    let reached = row.step_by(2).take_while(|&node| model.mesh.nodes[node][0] < -1e-12).count();
    let middle = lengths[reached * PIECES_A_SIDE].0;
    // Linear between the cut pieces.
    let now = |laid: f64| {
        let after = lengths.partition_point(|piece| piece.0 < laid).clamp(1, lengths.len() - 1);
        let (from, to) = (lengths[after - 1], lengths[after]);
        from.1 + (to.1 - from.1) * (laid - from.0) / (to.0 - from.0)
    };
    let end = lengths.last().map_or(0.0, |end| end.0);
    let (from, to) = ((middle - REACH).max(0.0), (middle + REACH).min(end));
    (now(to) - now(from)) / (to - from)
}

/// Mean stretch of a face's line: all of it, and the largest over twice [`REACH`] (of all of it, if it
/// is shorter).
pub(super) fn line_means(model: &Model, state: &State, row: std::ops::Range<usize>) -> (f64, f64) {
    let lengths = line_lengths(model, state, row);
    let whole = lengths.last().copied().unwrap_or((1.0, 1.0));
    let reached = |&(laid, now): &(f64, f64)| {
        let end = lengths.iter().find(|end| end.0 >= laid + 2.0 * REACH)?;
        Some((end.1 - now) / (end.0 - laid))
    };
    let mean = whole.1 / whole.0;
    (mean, lengths.iter().filter_map(reached).reduce(f64::max).unwrap_or(mean))
}

/// Lengths of a face's line from its left end, as laid and now.
fn line_lengths(model: &Model, state: &State, row: std::ops::Range<usize>) -> Vec<(f64, f64)> {
    let mut lengths = vec![(0.0, 0.0)];
    let half = 1.0 / PIECES;
    for first in row.clone().step_by(2).take_while(|first| first + 2 < row.end) {
        for middle in middles(PIECES) {
            let ((from, _), (to, _)) = (quadratic(middle - half), quadratic(middle + half));
            let piece = |places: &[[f64; 2]]| {
                let along = |c: usize| (0..3).map(|i| (to[i] - from[i]) * places[first + i][c]).sum::<f64>();
                along(0).hypot(along(1))
            };
            let (laid, now) = lengths.last().copied().unwrap_or_default();
            lengths.push((laid + piece(&model.mesh.nodes), now + piece(&state.places)));
        }
    }
    lengths
}
