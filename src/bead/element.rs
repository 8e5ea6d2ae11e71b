//! One nine-node quadrilateral with a linear pressure inside (Q2/P1, unmapped): the pair that is
//! stable for incompressible solids in two dimensions.
//!
//! Material: incompressible neo-Hookean in plane strain, with unit shear modulus,
//!
//! W = ½ (F:F − 2) − (J − 1) + p (J − 1) − p² / 2κ + γ (J − 1 − ln J).
//!
//! In two dimensions J is bilinear in the nodes' places, so all but the last term is integrated once,
//! as laid: its forces and stiffness at any deformation are small matrices times places and pressures,
//! exactly as quadrature would have them.
//!
//! The last term is nothing where J is 1. A linear pressure holds only means of J, and next to a
//! bonded corner, where strain has no finite value, J would wander off inside an element and turn it
//! inside out; the term holds it back point by point ("grad-div" stabilization, with a barrier).

use super::shape::{Sample, determinant, gradient, sample};

/// Bulk over shear modulus. Rubbers and sealants have about 1000 to 10 000; here it only has to be
/// large enough not to matter.
pub(super) const BULK: f64 = 1e4;

/// The weight γ of the term that holds J point by point: stiff enough that corners keep their shape,
/// soft enough that bending is not locked.
const HOLD: f64 = 10.0;
/// Below this J the barrier goes on as a parabola, so that a Newton step past it can come back.
const BARRIER: f64 = 0.05;

/// An element's integrals over its shape as laid.
#[derive(Debug, Clone)]
pub(super) struct Element {
    /// ∫ ∇Na · ∇Nb.
    pub laplace: [[f64; 9]; 9],
    /// ∫ ψk (Na,x Nb,y − Na,y Nb,x) for the three pressure functions ψ.
    skew: [[[f64; 9]; 9]; 3],
    /// ∫ ψk.
    volume: [f64; 3],
    /// ∫ ψk ψl.
    mass: [[f64; 3]; 3],
    /// κ times the inverse of `mass`.
    stiff: [[f64; 3]; 3],
    /// Quadrature points, at which J is held.
    points: [Sample; 9],
}

/// Forces and stiffness of an element with its pressures condensed out. Entry 2a + c belongs to
/// component c of node a.
#[derive(Debug, Clone)]
pub(super) struct Condensed {
    /// Stiffness, symmetric.
    pub stiffness: [[f64; 18]; 18],
    /// Forces of the element on its nodes, with the effect of the pressures' change.
    pub force: [f64; 18],
    /// Forces of the element on its nodes at the pressures as they are.
    pub internal: [f64; 18],
}

const GAUSS: [(f64, f64); 3] =
    [(-0.774_596_669_241_483_4, 5.0 / 9.0), (0.0, 8.0 / 9.0), (0.774_596_669_241_483_4, 5.0 / 9.0)];

impl Element {
    /// Integrates over the element with these nodes.
    pub fn new(nodes: &[[f64; 2]; 9]) -> Self {
        let center = nodes[4];
        let size = (nodes[8][0] - nodes[0][0]).hypot(nodes[8][1] - nodes[0][1]);
        let mut element = Self {
            laplace: [[0.0; 9]; 9],
            skew: [[[0.0; 9]; 9]; 3],
            volume: [0.0; 3],
            mass: [[0.0; 3]; 3],
            stiff: [[0.0; 3]; 3],
            points: [Sample { gradients: [[0.0; 2]; 9], place: [0.0; 2], area: 0.0 }; 9],
        };
        for (i, &(t, weight_t)) in GAUSS.iter().enumerate() {
            for (j, &(s, weight_s)) in GAUSS.iter().enumerate() {
                let at = sample(nodes, s, t, weight_s * weight_t);
                let psi = [1.0, (at.place[0] - center[0]) / size, (at.place[1] - center[1]) / size];
                element.add(&at, psi);
                element.points[3 * i + j] = at;
            }
        }
        element.stiff = inverse(&element.mass).map(|row| row.map(|entry| entry * BULK));
        element
    }

    fn add(&mut self, at: &Sample, psi: [f64; 3]) {
        for (a, ga) in at.gradients.iter().enumerate() {
            for (b, gb) in at.gradients.iter().enumerate() {
                self.laplace[a][b] += at.area * (ga[0] * gb[0] + ga[1] * gb[1]);
                let cross = at.area * (ga[0] * gb[1] - ga[1] * gb[0]);
                for (skew, psi) in self.skew.iter_mut().zip(psi) {
                    skew[a][b] += psi * cross;
                }
            }
        }
        for k in 0..3 {
            self.volume[k] += at.area * psi[k];
            for l in 0..3 {
                self.mass[k][l] += at.area * psi[k] * psi[l];
            }
        }
    }

    /// Gradient of ∫ ψk J with respect to the nodes' places, for each k.
    fn volume_gradients(&self, places: &[[f64; 2]; 9]) -> [[f64; 18]; 3] {
        let mut gradients = [[0.0; 18]; 3];
        for (gradient, skew) in gradients.iter_mut().zip(&self.skew) {
            for (a, row) in skew.iter().enumerate() {
                let (mut along_x, mut along_y) = (0.0, 0.0);
                for (entry, place) in row.iter().zip(places) {
                    along_x += entry * place[1];
                    along_y -= entry * place[0];
                }
                gradient[2 * a] = along_x;
                gradient[2 * a + 1] = along_y;
            }
        }
        gradients
    }

    /// ∫ ψk (J − 1 − p/κ): how far the pressures' condition is from met.
    fn volume_errors(&self, gradients: &[[f64; 18]; 3], places: &[[f64; 2]; 9], p: &[f64; 3]) -> [f64; 3] {
        std::array::from_fn(|k| {
            let places = places.as_flattened();
            // J is of degree two in the places, so its integral is half of gradient times place.
            let grown: f64 = gradients[k].iter().zip(places).map(|(g, x)| 0.5 * g * x).sum();
            let given: f64 = self.mass[k].iter().zip(p).map(|(m, p)| m * p).sum::<f64>() / BULK;
            grown - self.volume[k] - given
        })
    }

    /// Forces and stiffness with the nodes at `places` and pressures `p`.
    pub fn condensed(&self, places: &[[f64; 2]; 9], p: &[f64; 3]) -> Condensed {
        let gradients = self.volume_gradients(places);
        let errors = self.volume_errors(&gradients, places, p);
        let pressure_step = times(&self.stiff, &errors);
        let mut out = Condensed { stiffness: [[0.0; 18]; 18], force: [0.0; 18], internal: [0.0; 18] };
        let weights = [p[0] - 1.0, p[1], p[2]];
        for a in 0..9 {
            for (b, place) in places.iter().enumerate() {
                let spread = self.laplace[a][b];
                let skew: f64 = (0..3).map(|k| weights[k] * self.skew[k][a][b]).sum();
                out.stiffness[2 * a][2 * b] = spread;
                out.stiffness[2 * a + 1][2 * b + 1] = spread;
                out.stiffness[2 * a][2 * b + 1] = skew;
                out.stiffness[2 * a + 1][2 * b] = -skew;
                out.internal[2 * a] += spread * place[0] + skew * place[1];
                out.internal[2 * a + 1] += spread * place[1] - skew * place[0];
            }
        }
        self.hold(places, &mut out);
        out.force = out.internal;
        for (k, gradient) in gradients.iter().enumerate() {
            let stiff: [f64; 18] =
                std::array::from_fn(|j| (0..3).map(|l| self.stiff[k][l] * gradients[l][j]).sum());
            for (i, along) in gradient.iter().enumerate() {
                out.force[i] += along * pressure_step[k];
                for (entry, stiff) in out.stiffness[i].iter_mut().zip(&stiff) {
                    *entry += along * stiff;
                }
            }
        }
        out
    }

    /// Adds what holds J at the quadrature points.
    fn hold(&self, places: &[[f64; 2]; 9], out: &mut Condensed) {
        for point in &self.points {
            let f = gradient(&point.gradients, places);
            let (first, second) = hold_slopes(determinant(&f));
            let (first, second) = (point.area * first, point.area * second);
            let mut change = [0.0; 18];
            for (a, g) in point.gradients.iter().enumerate() {
                change[2 * a] = f[1][1] * g[0] - f[1][0] * g[1];
                change[2 * a + 1] = f[0][0] * g[1] - f[0][1] * g[0];
            }
            for (a, ga) in point.gradients.iter().enumerate() {
                for (b, gb) in point.gradients.iter().enumerate() {
                    let cross = first * (ga[0] * gb[1] - ga[1] * gb[0]);
                    out.stiffness[2 * a][2 * b + 1] += cross;
                    out.stiffness[2 * a + 1][2 * b] -= cross;
                }
            }
            for i in 0..18 {
                out.internal[i] += first * change[i];
                let scaled = second * change[i];
                for (entry, change) in out.stiffness[i].iter_mut().zip(&change) {
                    *entry += scaled * change;
                }
            }
        }
    }

    /// Change of the pressures that goes with the nodes' `step` from `places`.
    pub fn pressure_step(&self, places: &[[f64; 2]; 9], p: &[f64; 3], step: &[[f64; 2]; 9]) -> [f64; 3] {
        let gradients = self.volume_gradients(places);
        let mut errors = self.volume_errors(&gradients, places, p);
        for (error, gradient) in errors.iter_mut().zip(&gradients) {
            *error += gradient.iter().zip(step.as_flattened()).map(|(g, s)| g * s).sum::<f64>();
        }
        times(&self.stiff, &errors)
    }

    /// Stored energy, over the shear modulus, per unit length of bead, in an equilibrium.
    #[cfg(test)]
    pub fn energy(&self, places: &[[f64; 2]; 9], p: &[f64; 3]) -> f64 {
        let gradients = self.volume_gradients(places);
        let grown = self.volume_errors(&gradients, places, &[0.0; 3]);
        let mut energy = -self.volume[0] - grown[0];
        for (a, row) in self.laplace.iter().enumerate() {
            for (b, entry) in row.iter().enumerate() {
                energy += 0.5 * entry * (places[a][0] * places[b][0] + places[a][1] * places[b][1]);
            }
        }
        let squeezed: f64 = (0..3).map(|k| p[k] * times(&self.mass, p)[k]).sum();
        let held = self.points.iter().map(|point| {
            let ratio = determinant(&gradient(&point.gradients, places));
            HOLD * point.area * (ratio - 1.0 - ratio.ln())
        });
        energy + 0.5 * squeezed / BULK + held.sum::<f64>()
    }

    /// The smallest J at the element's quadrature points.
    pub fn least_volume_ratio(&self, places: &[[f64; 2]; 9]) -> f64 {
        let ratios = self.points.iter().map(|point| determinant(&gradient(&point.gradients, places)));
        ratios.fold(f64::INFINITY, f64::min)
    }
}

/// First and second derivative of γ (J − 1 − ln J), which below [`BARRIER`] goes on as a parabola.
fn hold_slopes(ratio: f64) -> (f64, f64) {
    let at = ratio.max(BARRIER);
    let second = HOLD / (at * at);
    (HOLD * (1.0 - 1.0 / at) + second * (ratio - at), second)
}

fn times(matrix: &[[f64; 3]; 3], vector: &[f64; 3]) -> [f64; 3] {
    matrix.map(|row| row.iter().zip(vector).map(|(m, v)| m * v).sum())
}

fn inverse(m: &[[f64; 3]; 3]) -> [[f64; 3]; 3] {
    // Cofactors by cyclic indices carry their own sign.
    let cofactor = |i: usize, j: usize| {
        let (i1, i2, j1, j2) = ((i + 1) % 3, (i + 2) % 3, (j + 1) % 3, (j + 2) % 3);
        m[i1][j1] * m[i2][j2] - m[i1][j2] * m[i2][j1]
    };
    let determinant: f64 = (0..3).map(|j| m[0][j] * cofactor(0, j)).sum();
    std::array::from_fn(|i| std::array::from_fn(|j| cofactor(j, i) / determinant))
}
