//! The shape functions of a nine-node quadrilateral, and what follows from them at a point.

/// A point where strain is sampled: the gradients of the nine shape functions there.
#[derive(Debug, Clone, Copy)]
pub(super) struct Sample {
    /// Gradients with respect to the place as laid, 1/m.
    pub gradients: [[f64; 2]; 9],
    /// Place as laid, m.
    pub place: [f64; 2],
    /// Area that the sample stands for, m².
    pub area: f64,
}

/// The three quadratic functions on −1 to 1 and their slopes.
pub(super) fn quadratic(s: f64) -> ([f64; 3], [f64; 3]) {
    ([0.5 * s * (s - 1.0), 1.0 - s * s, 0.5 * s * (s + 1.0)], [s - 0.5, -2.0 * s, s + 0.5])
}

/// Deformation gradient where the shape functions have these gradients.
pub(super) fn gradient(gradients: &[[f64; 2]; 9], places: &[[f64; 2]; 9]) -> [[f64; 2]; 2] {
    let mut f = [[0.0; 2]; 2];
    for (g, x) in gradients.iter().zip(places) {
        for i in 0..2 {
            f[i][0] += x[i] * g[0];
            f[i][1] += x[i] * g[1];
        }
    }
    f
}

pub(super) fn determinant(f: &[[f64; 2]; 2]) -> f64 {
    f[0][0] * f[1][1] - f[0][1] * f[1][0]
}

/// The point at (s, t) of the unit square.
pub(super) fn locate(nodes: &[[f64; 2]; 9], s: f64, t: f64) -> [f64; 2] {
    let ((n_s, _), (n_t, _)) = (quadratic(s), quadratic(t));
    let mut place = [0.0; 2];
    for (a, node) in nodes.iter().enumerate() {
        let shape = n_s[a % 3] * n_t[a / 3];
        place[0] += shape * node[0];
        place[1] += shape * node[1];
    }
    place
}

/// The shape functions' gradients at (s, t) of the unit square, with `weight` times the square's
/// stretch as area.
pub(super) fn sample(nodes: &[[f64; 2]; 9], s: f64, t: f64, weight: f64) -> Sample {
    let ((n_s, d_s), (n_t, d_t)) = (quadratic(s), quadratic(t));
    let mut place = [0.0; 2];
    let mut jacobian = [[0.0; 2]; 2];
    let slopes: [[f64; 2]; 9] = std::array::from_fn(|a| {
        let (i, j) = (a % 3, a / 3);
        [d_s[i] * n_t[j], n_s[i] * d_t[j]]
    });
    for (a, node) in nodes.iter().enumerate() {
        for c in 0..2 {
            place[c] += n_s[a % 3] * n_t[a / 3] * node[c];
            jacobian[c][0] += node[c] * slopes[a][0];
            jacobian[c][1] += node[c] * slopes[a][1];
        }
    }
    let ratio = determinant(&jacobian);
    let gradients = slopes.map(|slope| {
        [
            (jacobian[1][1] * slope[0] - jacobian[1][0] * slope[1]) / ratio,
            (jacobian[0][0] * slope[1] - jacobian[0][1] * slope[0]) / ratio,
        ]
    });
    Sample { gradients, place, area: ratio * weight }
}
