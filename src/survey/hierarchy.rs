//! Readings in groups: what they say of each group, of groups without readings, and of totals.
//!
//! A reading is its group's mean plus scatter of standard deviation σ; the groups' means scatter by
//! τ about a mean of all. σ and τ are not known from a handful of readings, so every pair of a grid
//! is weighed by how well it explains them (the one-way random-effects model, its means integrated
//! out; Gelman et al., *Bayesian Data Analysis*, 3rd ed., section 5.4). What comes out are means
//! with intervals that stay wide while readings are few. τ has the half-Cauchy prior of Gelman
//! (2006), cut off far out, σ a log-normal one about a fraction of the mean, wide enough for three readings to
//! overrule it.

use statrs::statistics::Statistics as _;

/// Scatter expected before any is seen, as a fraction of the mean. Assumption.
const USUAL_SCATTER: f64 = 0.6;
/// How far that may be off, as a standard deviation of its logarithm. Assumption.
const SCATTER_DOUBT: f64 = 0.8;
/// Scatter of groups expected before any is seen, as a fraction of that of readings. Assumption.
const USUAL_BETWEEN: f64 = 0.5;
/// Most scatter of groups that is looked at, over what is usual.
const MOST_BETWEEN: f64 = 4.0;
/// Grid points for each of σ and τ.
const POINTS: u32 = 24;

/// The readings of one group.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
struct Group {
    count: f64,
    mean: f64,
}

/// One pair of the grid, with the mean of all groups that follows.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Node {
    weight: f64,
    within: f64,
    between: f64,
    mean: f64,
    mean_variance: f64,
}

/// What is known of one group.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct GroupEstimate {
    /// Its mean.
    pub mean: f64,
    /// Standard deviation of that mean.
    pub mean_sd: f64,
    /// Scatter of single readings in it.
    pub scatter: f64,
}

/// A linear total over groups: `weight`·(mean of the group) for each, plus the scatter of single
/// members whose squared weights add up to `squares`.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Share {
    /// Weight of the group's mean.
    pub weight: f64,
    /// Sum of the squared weights of its unmeasured members.
    pub squares: f64,
}

/// The readings of all groups, weighed.
#[derive(Debug, Clone, PartialEq)]
pub struct Hierarchy {
    groups: Vec<Group>,
    nodes: Vec<Node>,
}

impl Hierarchy {
    /// From the readings of each group, in any one unit. `finest` is the least scatter there can be,
    /// above zero: the gauge's. `None` without any reading.
    pub fn new(readings: &[Vec<f64>], finest: f64) -> Option<Self> {
        let all: Vec<f64> = readings.iter().flatten().copied().collect();
        if all.is_empty() {
            return None;
        }
        #[expect(clippy::cast_precision_loss, reason = "a count of readings")]
        let count = |own: &[f64]| own.len() as f64;
        let groups: Vec<Group> = readings
            .iter()
            .map(|own| Group { count: count(own), mean: if own.is_empty() { 0.0 } else { own.mean() } })
            .collect();
        let about = |own: &Vec<f64>, mean: f64| own.iter().map(|y| (y - mean).powi(2)).sum::<f64>();
        let squares: f64 = readings.iter().zip(&groups).map(|(own, group)| about(own, group.mean)).sum();
        let usual = (USUAL_SCATTER * (&all).mean().abs()).max(finest);
        let nodes = grid(&groups, squares, usual, finest);
        Some(Self { groups, nodes })
    }

    /// Mean and variance of a group's mean at one pair of the grid, and the part of it that is the
    /// mean of all groups.
    fn at(group: &Group, node: &Node) -> (f64, f64, f64) {
        let own = group.count / (node.within * node.within);
        let common = 1.0 / (node.between * node.between);
        let pull = common / (own + common);
        (group.mean * (1.0 - pull) + node.mean * pull, 1.0 / (own + common), pull)
    }

    /// Mean, and variance with the part that the grid's spread adds, of what `moments` gives at each
    /// pair.
    fn mix(&self, moments: impl Fn(&Node) -> (f64, f64)) -> (f64, f64) {
        let (mut mean, mut square, mut variance) = (0.0, 0.0, 0.0);
        for node in &self.nodes {
            let (m, v) = moments(node);
            mean += node.weight * m;
            square += node.weight * m * m;
            variance += node.weight * v;
        }
        (mean, variance + (square - mean * mean).max(0.0))
    }

    /// What is known of the group of this index, with or without readings of its own.
    pub fn group(&self, index: usize) -> GroupEstimate {
        let group = self.groups.get(index).copied().unwrap_or_default();
        let (mean, variance) = self.mix(|node| {
            let (mean, variance, pull) = Self::at(&group, node);
            (mean, variance + pull * pull * node.mean_variance)
        });
        GroupEstimate { mean, mean_sd: variance.sqrt(), scatter: self.scatter() }
    }

    /// Scatter of single readings about their group's mean.
    pub fn scatter(&self) -> f64 {
        self.mix(|node| (node.within * node.within, 0.0)).0.sqrt()
    }

    /// Scatter of the groups' means.
    pub fn between(&self) -> f64 {
        self.mix(|node| (node.between.min(1e3 * node.within).powi(2), 0.0)).0.sqrt()
    }

    /// Mean and standard deviation of a total over the groups' members nobody measured.
    pub fn total(&self, shares: &[Share]) -> (f64, f64) {
        let (mean, variance) = self.mix(|node| {
            let (mut mean, mut variance, mut common) = (0.0, 0.0, 0.0);
            for (group, share) in self.groups.iter().zip(shares) {
                let (m, v, pull) = Self::at(group, node);
                mean += share.weight * m;
                variance += share.weight * share.weight * v + share.squares * node.within * node.within;
                common += share.weight * pull;
            }
            (mean, variance + common * common * node.mean_variance)
        });
        (mean, variance.sqrt())
    }

    /// The same readings with σ and τ at what they are expected to be, for planning: quick, and its
    /// intervals a little too narrow.
    #[must_use]
    pub fn condensed(&self) -> Self {
        let (within, between) = (self.scatter(), self.between());
        let (mean, mean_variance, _) = mean_of_all(&self.groups, within, between);
        let node = Node { weight: 1.0, within, between, mean, mean_variance };
        Self { groups: self.groups.clone(), nodes: vec![node] }
    }

    /// The same knowledge with one more reading in the group of this index, at its expected value:
    /// for planning what to measure.
    #[must_use]
    pub fn with_one_more(&self, index: usize) -> Self {
        let expected = self.group(index).mean;
        let mut planned = self.clone();
        if let Some(group) = planned.groups.get_mut(index) {
            group.mean = (group.mean * group.count + expected) / (group.count + 1.0);
            group.count += 1.0;
        }
        for node in &mut planned.nodes {
            (node.mean, node.mean_variance, _) = mean_of_all(&planned.groups, node.within, node.between);
        }
        planned
    }
}

/// Mean of all groups, its variance, and the log of what it leaves unexplained.
fn mean_of_all(groups: &[Group], within: f64, between: f64) -> (f64, f64, f64) {
    let seen = || groups.iter().filter(|group| group.count > 0.0);
    let variance = |group: &Group| between * between + within * within / group.count;
    let precision: f64 = seen().map(|group| 1.0 / variance(group)).sum();
    let mean = seen().map(|group| group.mean / variance(group)).sum::<f64>() / precision;
    let misfit: f64 =
        seen().map(|group| (group.mean - mean).powi(2) / variance(group) + variance(group).ln()).sum();
    (mean, 1.0 / precision, -0.5 * (misfit + precision.ln()))
}

/// The grid of σ and τ, each pair weighed by prior and likelihood. `squares` are those of the
/// readings about their groups' means.
fn grid(groups: &[Group], squares: f64, usual: f64, finest: f64) -> Vec<Node> {
    let spare: f64 = groups.iter().map(|group| (group.count - 1.0).max(0.0)).sum();
    let mut nodes = Vec::with_capacity((POINTS * POINTS) as usize);
    for i in 0..POINTS {
        // From a sixteenth to eight times the usual scatter.
        let log_ratio = (f64::from(i) / f64::from(POINTS - 1) * 128.0_f64.ln()) - 16.0_f64.ln();
        let within = (usual * log_ratio.exp()).max(finest);
        let prior = -0.5 * (log_ratio / SCATTER_DOUBT).powi(2);
        let own = -spare * within.ln() - squares / (2.0 * within * within);
        for j in 0..POINTS {
            // Points of equal prior weight, up to where it means nothing any more: gaps cannot be
            // negative, so their means cannot lie endlessly far apart.
            let quantile = (f64::from(j) + 0.5) / f64::from(POINTS);
            let between = USUAL_BETWEEN * usual * (quantile * MOST_BETWEEN.atan()).tan();
            let (mean, mean_variance, fit) = mean_of_all(groups, within, between);
            nodes.push(Node { weight: prior + own + fit, within, between, mean, mean_variance });
        }
    }
    let most = nodes.iter().map(|node| node.weight).fold(f64::NEG_INFINITY, f64::max);
    nodes.iter_mut().for_each(|node| node.weight = (node.weight - most).exp());
    let sum: f64 = nodes.iter().map(|node| node.weight).sum();
    nodes.iter_mut().for_each(|node| node.weight /= sum);
    nodes
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// One-way random effects, NIST/SEMATECH e-Handbook section 7.4.4 (from memory): five batches of
    /// three, variance 1.80 within and 11.71 between batches.
    #[test]
    fn the_components_are_those_of_the_handbook_example() {
        let batches = [
            [74.0, 76.0, 75.0],
            [68.0, 71.0, 72.0],
            [75.0, 77.0, 77.0],
            [72.0, 74.0, 73.0],
            [79.0, 81.0, 79.0],
        ];
        // Counted from 70: the components do not depend on it, what scatter is usual does.
        let counted = batches.map(|batch| batch.map(|value| value - 70.0).to_vec());
        let known = Hierarchy::new(&counted, 0.01).unwrap();
        assert!((known.scatter() / 1.80_f64.sqrt() - 1.0).abs() < 0.25, "{}", known.scatter());
        assert!((known.between() / 11.71_f64.sqrt() - 1.0).abs() < 0.5, "{}", known.between());
        // Batch means drawn towards the mean of all by the classical shrinkage factor.
        let pull = 1.80 / (1.80 + 3.0 * 11.71);
        for (index, batch) in batches.iter().enumerate() {
            let mean = batch.iter().sum::<f64>() / 3.0 - 70.0;
            let expected = mean + pull * (4.866_667 - mean);
            assert!(
                (known.group(index).mean - expected).abs() < 0.25,
                "{index}: {}",
                known.group(index).mean
            );
        }
    }

    #[test]
    fn an_unmeasured_group_is_told_with_less_certainty_and_more_readings_narrow() {
        let known = Hierarchy::new(&[vec![2.0, 2.4, 1.8, 2.2], vec![2.6, 2.9, 2.4], vec![]], 0.2).unwrap();
        assert!(known.group(2).mean_sd > 1.5 * known.group(0).mean_sd);
        assert!((1.9..2.9).contains(&known.group(2).mean));
        let more = known.with_one_more(2);
        assert!(more.group(2).mean_sd < known.group(2).mean_sd);
        assert!((more.group(2).mean - known.group(2).mean).abs() < 0.1);
    }

    #[test]
    fn a_lone_reading_keeps_a_wide_interval() {
        let known = Hierarchy::new(&[vec![2.0]], 0.2).unwrap();
        let group = known.group(0);
        assert!((group.mean - 2.0).abs() < 1e-9 && group.mean_sd > 0.6, "{group:?}");
        assert_eq!(Hierarchy::new(&[vec![], vec![]], 0.2), None);
    }

    proptest! {
        #[test]
        fn nothing_but_numbers_comes_out(
            groups in prop::collection::vec(prop::collection::vec(0.0..30.0_f64, 0..6), 1..6),
        ) {
            if let Some(known) = Hierarchy::new(&groups, 0.2) {
                let all: Vec<f64> = groups.iter().flatten().copied().collect();
                let (low, high) = (all.iter().copied().fold(30.0, f64::min), all.iter().copied().fold(0.0, f64::max));
                for index in 0..groups.len() {
                    let group = known.group(index);
                    prop_assert!(group.mean >= low - 1e-9 && group.mean <= high + 1e-9);
                    prop_assert!(group.mean_sd.is_finite() && group.scatter >= 0.2 - 1e-9);
                }
                let shares = vec![Share { weight: 1.0, squares: 1.0 }; groups.len()];
                let (mean, sd) = known.total(&shares);
                prop_assert!(mean.is_finite() && sd > 0.0);
            }
        }
    }
}
