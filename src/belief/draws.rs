//! What plausible worlds are drawn from.
//!
//! Everything that nobody measured exactly is a standard normal number here, and becomes what it stands
//! for in [`super::world`]; so what is expected of a world has the same simple density in every job. The
//! first worlds are drawn as expected. Where the readings leave too few of them, more are drawn where
//! the first ones fit, as a normal with their mean and covariance, and all are weighed by the density of
//! the mixture they come from (Veach and Guibas 1995, the balance heuristic; Cappé and others 2004,
//! population Monte Carlo; both from memory).

use faer::{Mat, Side};
use rand::SeedableRng as _;
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;

/// What part of a fitted batch is drawn as expected all the same, so that no world weighs too much.
const AS_EXPECTED: f64 = 0.15;
/// By how much a fitted normal is wider than what it was fitted to.
const WIDER: f64 = 1.3;

/// Draws of worlds: standard normal numbers, and whether the boards came wet.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Draws {
    /// Numbers of each world.
    pub dims: usize,
    z: Vec<f64>,
    wet: Vec<bool>,
    /// How often boards are expected to come wet.
    wet_share: f64,
    batches: Vec<Batch>,
}

/// Where a batch was drawn from.
#[derive(Debug, Clone, PartialEq)]
struct Batch {
    count: f64,
    wet_share: f64,
    /// Of right and of wet boards; `None` where nothing was fitted.
    fitted: Option<[Fit; 2]>,
}

/// A normal fitted to worlds.
#[derive(Debug, Clone, PartialEq)]
struct Fit {
    mean: Vec<f64>,
    /// Lower triangle of Cholesky's factor of the covariance, by rows.
    factor: Vec<Vec<f64>>,
    log_determinant: f64,
}

impl Draws {
    /// The first `count` worlds, as expected.
    pub fn expected(dims: usize, count: usize, wet_share: f64, seed: u64) -> Self {
        let mut draws = Self { dims, z: Vec::new(), wet: Vec::new(), wet_share, batches: Vec::new() };
        draws.batch(count, wet_share, None, seed);
        draws
    }

    /// Number of worlds.
    pub fn len(&self) -> usize {
        self.wet.len()
    }

    /// The numbers of a world.
    pub fn of(&self, world: usize) -> &[f64] {
        &self.z[world * self.dims..(world + 1) * self.dims]
    }

    /// Whether a world's boards came wetter than its room ever keeps them.
    pub fn is_wet(&self, world: usize) -> bool {
        self.wet[world]
    }

    /// Draws `count` more where `weights` say that worlds fit.
    pub fn refine(&mut self, weights: &[f64], count: usize, seed: u64) {
        let of_label = |wet: bool| {
            let own = (0..self.len()).filter(|&at| self.wet[at] == wet);
            own.map(|at| (at, weights[at])).collect::<Vec<_>>()
        };
        let (right, wet) = (of_label(false), of_label(true));
        let sum = |own: &[(usize, f64)]| own.iter().map(|(_, weight)| weight).sum::<f64>();
        let share = sum(&wet) / (sum(&wet) + sum(&right)).max(f64::MIN_POSITIVE);
        let fitted = [self.fit(&right), self.fit(&wet)];
        self.batch(count, share.clamp(0.15, 0.85), Some(fitted), seed);
    }

    #[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
    fn batch(&mut self, count: usize, wet_share: f64, fitted: Option<[Fit; 2]>, seed: u64) {
        let mut random = Xoshiro256PlusPlus::seed_from_u64(seed);
        let mut of_kind = [0.0; 2];
        for at in 0..count {
            let wet = is_due(at as f64, wet_share);
            let plain: Vec<f64> = (0..self.dims).map(|_| StandardNormal.sample(&mut random)).collect();
            // Counted for right and for wet boards apart: the corrections rely on this share of either.
            let nth = &mut of_kind[usize::from(wet)];
            let as_expected = is_due(*nth, AS_EXPECTED);
            *nth += 1.0;
            match fitted.as_ref().filter(|_| !as_expected) {
                Some(fits) => self.z.extend(fits[usize::from(wet)].place(&plain)),
                None => self.z.extend(plain),
            }
            self.wet.push(wet);
        }
        self.batches.push(Batch { count: count as f64, wet_share, fitted });
    }

    /// Logarithm of how much likelier each world is as expected than as it was drawn.
    pub fn log_corrections(&self) -> Vec<f64> {
        let all: f64 = self.batches.iter().map(|batch| batch.count).sum();
        (0..self.len())
            .map(|world| {
                let (z, wet) = (self.of(world), self.wet[world]);
                let plain = log_standard(z);
                let share = |wet_share: f64| if wet { wet_share } else { 1.0 - wet_share };
                let drawn: f64 = self
                    .batches
                    .iter()
                    .map(|batch| {
                        let ratio = batch.fitted.as_ref().map_or(1.0, |fits| {
                            let fit = (fits[usize::from(wet)].log_density(z) - plain).exp();
                            AS_EXPECTED + (1.0 - AS_EXPECTED) * fit
                        });
                        batch.count / all * share(batch.wet_share) * ratio
                    })
                    .sum();
                share(self.wet_share).max(1e-12).ln() - drawn.max(f64::MIN_POSITIVE).ln()
            })
            .collect()
    }

    /// A normal about where worlds fit; as expected where next to none does.
    #[expect(clippy::cast_precision_loss, reason = "a score of numbers")]
    fn fit(&self, own: &[(usize, f64)]) -> Fit {
        let dims = self.dims;
        let sum: f64 = own.iter().map(|(_, weight)| weight).sum();
        let squares: f64 = own.iter().map(|(_, weight)| weight * weight).sum();
        if sum <= 0.0 || sum * sum < 2.0 * squares {
            return Fit::expected(dims);
        }
        let effective = sum * sum / squares;
        let mut mean = vec![0.0; dims];
        for (world, weight) in own {
            for (mean, z) in mean.iter_mut().zip(self.of(*world)) {
                *mean += weight / sum * z;
            }
        }
        let mut covariance = vec![vec![0.0; dims]; dims];
        for (world, weight) in own {
            let z = self.of(*world);
            for row in 0..dims {
                for column in 0..=row {
                    covariance[row][column] +=
                        weight / sum * (z[row] - mean[row]) * (z[column] - mean[column]);
                }
            }
        }
        // With few worlds the covariance is drawn to what is expected.
        let trust = effective / (effective + 1.5 * dims as f64);
        for (row, values) in covariance.iter_mut().enumerate() {
            for (column, value) in values.iter_mut().enumerate() {
                let expected = if row == column { 1.0 } else { 0.0 };
                *value = WIDER * (trust * *value + (1.0 - trust) * 0.5 * expected) + 0.02 * expected;
            }
        }
        Fit::new(mean, &covariance).unwrap_or_else(|| Fit::expected(dims))
    }
}

/// Whether the draw of this number is one of those that make up a share of all, spread evenly.
fn is_due(nth: f64, share: f64) -> bool {
    ((nth + 1.0) * share).floor() > (nth * share).floor()
}

fn log_standard(z: &[f64]) -> f64 {
    -0.5 * z.iter().map(|z| z * z).sum::<f64>()
}

impl Fit {
    fn expected(dims: usize) -> Self {
        let factor = (0..dims).map(|row| (0..=row).map(|at| if at == row { 1.0 } else { 0.0 }).collect());
        Self { mean: vec![0.0; dims], factor: factor.collect(), log_determinant: 0.0 }
    }

    /// From the lower triangle of a covariance; `None` if it is none.
    fn new(mean: Vec<f64>, covariance: &[Vec<f64>]) -> Option<Self> {
        let dims = mean.len();
        let full = Mat::from_fn(dims, dims, |row, column| {
            if row >= column { covariance[row][column] } else { covariance[column][row] }
        });
        let llt = full.llt(Side::Lower).ok()?;
        let lower = llt.L();
        let factor: Vec<Vec<f64>> =
            (0..dims).map(|row| (0..=row).map(|column| lower[(row, column)]).collect()).collect();
        let log_determinant = factor.iter().map(|row| row.last().map_or(0.0, |d| d.ln())).sum();
        Some(Self { mean, factor, log_determinant })
    }

    /// Where standard normal numbers lie in this normal.
    fn place(&self, plain: &[f64]) -> Vec<f64> {
        let row = |(row, mean): (&Vec<f64>, &f64)| {
            mean + row.iter().zip(plain).map(|(factor, plain)| factor * plain).sum::<f64>()
        };
        self.factor.iter().zip(&self.mean).map(row).collect()
    }

    /// Logarithm of the density, but for the constant that a standard normal has too.
    fn log_density(&self, z: &[f64]) -> f64 {
        let mut plain: Vec<f64> = Vec::with_capacity(z.len());
        for (at, row) in self.factor.iter().enumerate() {
            let before: f64 = row.iter().zip(&plain).map(|(factor, plain)| factor * plain).sum();
            plain.push((z[at] - self.mean[at] - before) / row[at]);
        }
        log_standard(&plain) - self.log_determinant
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const PULLED_TO: f64 = 2.0;

    /// A normal likelihood of the first number alone, a standard deviation of 1/2 wide, and far likelier for wet
    /// boards.
    fn likelihood(draws: &Draws, world: usize) -> f64 {
        let wet = if draws.is_wet(world) { 20.0 } else { 1.0 };
        wet * (-0.5 * ((draws.of(world)[0] - PULLED_TO) / 0.5).powi(2)).exp()
    }

    /// Draws that were refined three times, with how much likelier each is as expected than as it was drawn.
    fn refined() -> (Draws, Vec<f64>) {
        let mut draws = Draws::expected(4, 3072, 0.5, 1);
        for seed in [2, 3, 4] {
            let corrections = draws.log_corrections();
            let each = corrections.iter().enumerate();
            let weights: Vec<f64> = each.map(|(world, log)| likelihood(&draws, world) * log.exp()).collect();
            draws.refine(&weights, 2048, seed);
        }
        let ratios = draws.log_corrections().into_iter().map(f64::exp).collect();
        (draws, ratios)
    }

    fn mean(weights: &[f64], of: impl Fn(usize) -> f64) -> f64 {
        let sum: f64 = weights.iter().sum();
        weights.iter().enumerate().map(|(world, weight)| weight * of(world)).sum::<f64>() / sum
    }

    fn one_if(is: bool) -> f64 {
        if is { 1.0 } else { 0.0 }
    }

    /// Corrected, they are as expected again: half of them wet, every number a standard normal, and as many of them
    /// far from where the refined ones were drawn as there should be (three quarters of a normal are below 0.674).
    #[test]
    fn corrected_draws_are_as_expected() {
        let (draws, ratios) = refined();
        for wet in [false, true] {
            let own: Vec<f64> = ratios
                .iter()
                .enumerate()
                .map(|(at, ratio)| ratio * one_if(draws.is_wet(at) == wet))
                .collect();
            let below = mean(&own, |world| one_if(draws.of(world)[0] < 0.674_489_75));
            assert!((below - 0.75).abs() < 0.015, "wet {wet}: {below}");
            let square = mean(&own, |world| draws.of(world)[0].powi(2));
            assert!((square - 1.0).abs() < 0.1, "wet {wet}: {square}");
        }
        let wet = mean(&ratios, |world| one_if(draws.is_wet(world)));
        assert!((wet - 0.5).abs() < 0.02, "{wet}");
    }

    /// Weighed, they give the posterior worked out by hand: precisions 1 and 4 add up to 5, so the mean is 8/5 and the
    /// variance 1/5; of the boards 20 in 21 are wet.
    #[test]
    fn weighed_draws_give_the_posterior() {
        let (draws, ratios) = refined();
        let weights: Vec<f64> =
            ratios.iter().enumerate().map(|(world, ratio)| ratio * likelihood(&draws, world)).collect();
        let first = mean(&weights, |world| draws.of(world)[0]);
        let variance = mean(&weights, |world| (draws.of(world)[0] - 1.6).powi(2));
        let wet = mean(&weights, |world| one_if(draws.is_wet(world)));
        assert!((first - 1.6).abs() < 0.015, "{first}");
        assert!((variance - 0.2).abs() < 0.01, "{variance}");
        assert!((wet - 20.0 / 21.0).abs() < 0.005, "{wet}");
    }
}
