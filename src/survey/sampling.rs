//! How many boards of a delivery to measure, and what the answer then is worth.

use statrs::distribution::{Binomial, DiscreteCDF as _};

/// A single sampling plan by attributes: measure `boards`, take the delivery if at most `may_fail`
/// of them are out of limits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SamplingPlan {
    /// Boards to measure.
    pub boards: u32,
    /// How many of them may be out of limits.
    pub may_fail: u32,
    /// Risk that a good delivery is sent back.
    pub turned_away: f64,
    /// Risk that a bad delivery is taken.
    pub let_in: f64,
    /// What counts as good and as bad, and the risks that were borne.
    pub risks: SamplingRisks,
}

/// What a delivery must be to count as good and as bad, and the risks that are borne.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SamplingRisks {
    /// Share of boards out of limits in a good delivery.
    pub good: f64,
    /// Share in a bad one; above `good`.
    pub bad: f64,
    /// Most that a good one may be turned away with.
    pub turned_away: f64,
    /// Most that a bad one may be let in with.
    pub let_in: f64,
}

impl Default for SamplingRisks {
    /// One board in twenty is good enough, one in four is not; the usual risks.
    fn default() -> Self {
        Self { good: 0.05, bad: 0.25, turned_away: 0.05, let_in: 0.10 }
    }
}

/// Probability that a plan takes a delivery with this share of boards out of limits (binomial).
pub fn accepts(boards: u32, may_fail: u32, share: f64) -> f64 {
    Binomial::new(share.clamp(0.0, 1.0), u64::from(boards)).map_or(0.0, |lot| lot.cdf(u64::from(may_fail)))
}

/// The plan with fewest boards that keeps both risks. `None` if 500 boards would not do.
pub fn sampling_plan(risks: &SamplingRisks) -> Option<SamplingPlan> {
    (1..=500).find_map(|boards| {
        // The more may fail, the fewer good deliveries are turned away: the first that suits decides.
        let may_fail = (0..boards).find(|&c| 1.0 - accepts(boards, c, risks.good) <= risks.turned_away)?;
        let let_in = accepts(boards, may_fail, risks.bad);
        (let_in <= risks.let_in).then(|| SamplingPlan {
            boards,
            may_fail,
            turned_away: 1.0 - accepts(boards, may_fail, risks.good),
            let_in,
            risks: *risks,
        })
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// No plan with fewer boards keeps both risks, whatever it lets fail.
    #[test]
    fn the_plan_is_the_smallest() {
        let risks = SamplingRisks::default();
        let plan = sampling_plan(&risks).unwrap();
        assert!(plan.turned_away <= 0.05 && plan.let_in <= 0.10);
        let keeps = |boards: u32, c: u32| {
            1.0 - accepts(boards, c, risks.good) <= risks.turned_away
                && accepts(boards, c, risks.bad) <= risks.let_in
        };
        assert!(keeps(plan.boards, plan.may_fail));
        assert!((1..plan.boards).all(|boards| (0..boards).all(|c| !keeps(boards, c))));
    }
}
