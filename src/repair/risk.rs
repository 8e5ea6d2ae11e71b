//! The chance that the joints open again: Monte Carlo over what nobody knows yet.
//!
//! A trial takes one of the plausible worlds, with the movement that the boards make in it and its picture of the joints, and draws how
//! the job's lot of sealant stretches; and for each joint one normal number for its boards, its width and the hand that sealed it. A bead
//! fails when its movement passes what it takes: somewhere between where that shows at once and where a
//! tear begins out of sight, as far as such tears come through in that world. Paint over it cracks by
//! itself. A joint without a bead shows what the boards give up.
//! The owner calls when too much length is open or one gap is wider than the eye forgives.
//!
//! All options meet the same draws, so that their difference is theirs and not the dice's. The same
//! seed gives the same figures, on any number of cores.

use std::sync::Arc;

use rayon::prelude::*;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use statrs::distribution::{Beta, ContinuousCDF as _, Normal};

use super::trials::{Draw, Ready, Tally, Tears};
use crate::bead::MovementLimits;
use crate::measure::{Length, Percent, Span};
use crate::wood::Kind;

/// Trials that one random sequence serves.
const BATCH: u32 = 500;

/// When the owner calls again.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct CallbackRule {
    /// With this share of the joint length open.
    pub open_share: Percent,
    /// Or with one gap this wide.
    pub widest: Length,
    /// An opening is seen from this width on.
    pub seen_from: Length,
}

impl Default for CallbackRule {
    /// Assumptions, for the user to put right.
    fn default() -> Self {
        Self {
            open_share: Percent::pct(10.0),
            widest: Length::inches(1.0 / 16.0),
            seen_from: Length::inches(1.0 / 64.0),
        }
    }
}

/// What a bead takes beyond its class, and how that scatters; with its source.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Capability {
    /// Half of the beads take this many times their class, when new and undisturbed.
    pub median: f64,
    /// What a bead loses for good that moves while it cures.
    pub cure_loss: Percent,
    /// What it loses a year by set and fatigue.
    pub yearly_loss: Percent,
    /// Scatter from lot to lot, as a standard deviation of the logarithm.
    pub lot: f64,
    /// Scatter from joint to joint by the hand that seals, likewise.
    pub hand: f64,
    /// Doubt of the stretch at which a paint film cracks, likewise.
    pub paint: f64,
    /// Where the figures are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

impl Capability {
    /// What beads take that have cured in joints that move, and served for so many years.
    #[must_use]
    pub fn after(&self, years: u32) -> Self {
        let kept = |loss: Percent| 1.0 - loss.to_fraction();
        let aged = kept(self.yearly_loss).powi(i32::try_from(years).unwrap_or(i32::MAX));
        Self { median: self.median * kept(self.cure_loss) * aged, ..self.clone() }
    }
}

/// How a section's boards move after the work in every plausible world, as fractions of their width.
#[derive(Debug, Clone, PartialEq)]
pub struct SectionMovement {
    /// By world: most they narrow below the day of the work, and most they widen above it. All sections
    /// of a job have the same worlds in the same order.
    pub worlds: Arc<[(f64, f64)]>,
}

/// A joint as a trial sees it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RiskJoint {
    /// Index of its section's [`SectionMovement`].
    pub section: usize,
    /// Its length.
    pub length: Length,
    /// Width of wood whose movement shows at it.
    pub across: Length,
    /// How far its bead may be moved within its class; `None` without one.
    pub bead: Option<MovementLimits>,
    /// The opening from which the joint counts as open: with a bead that failed, or where it was painted
    /// over, as soon as that is seen; where it shows a line by design, not before it is too wide.
    pub open_from: Length,
    /// Scatter of movement over width, as a standard deviation of its logarithm.
    pub scatter: f64,
    /// Scatter of the movement alone, likewise; not above `scatter`.
    pub moves: f64,
    /// Whether it opens again whatever the bead: past the tongue.
    pub lost: bool,
}

/// A repair option, as the trials see it.
#[derive(Debug, Clone, PartialEq)]
pub struct RiskOption {
    /// How the sections move, by section.
    pub movements: Vec<SectionMovement>,
    /// The joints as the worlds see them that have this picture of them: the same joints in the same order in each.
    pub pictures: Vec<Vec<RiskJoint>>,
    /// The picture of each world; the first where none is named.
    pub picture_of: Arc<[usize]>,
}

impl RiskOption {
    /// One whose joints are alike in all worlds.
    pub fn alike(movements: Vec<SectionMovement>, joints: Vec<RiskJoint>) -> Self {
        Self { movements, pictures: vec![joints], picture_of: Arc::from([]) }
    }

    /// The joints of the first picture.
    pub fn joints(&self) -> &[RiskJoint] {
        self.pictures.first().map_or(&[], Vec::as_slice)
    }
}

/// The chance of a callback.
#[derive(Debug, Clone, PartialEq)]
pub struct Risk {
    /// Share of the trials with a callback.
    pub chance: f64,
    /// Where the chance lies nine times in ten, by what is not known of this house and these boards:
    /// each plausible world has a chance of its own.
    pub interval: Span<f64>,
    /// The share of the trials with a callback for which paint that cracks over a sound bead is not
    /// needed.
    pub without_paint: f64,
    /// Where that lies nine times in ten, as `interval`.
    pub without_paint_interval: Span<f64>,
    /// The share after a quarter, a half and all of the trials: they should agree.
    pub converged: [f64; 3],
    /// Mean length of joint that opens again.
    pub opens: Length,
    /// The same, counting only the trials with a callback.
    pub opens_if_called: Length,
    /// For each joint the chance that it opens, in the order given.
    pub joints: Vec<f64>,
}

/// Puts every option through `trials` trials with the same draws, each in one of the plausible worlds. Joints of all
/// options must be in the same order to share theirs; options may differ in number of joints.
pub fn risks(
    options: &[RiskOption],
    rule: &CallbackRule,
    capability: &Capability,
    tears: Tears,
    trials: u32,
    seed: u64,
) -> Vec<Risk> {
    // Options that leave the same behind fare the same.
    let mut distinct: Vec<&RiskOption> = Vec::new();
    let mut which = Vec::with_capacity(options.len());
    for option in options {
        which.push(distinct.iter().position(|known| *known == option).unwrap_or_else(|| {
            distinct.push(option);
            distinct.len() - 1
        }));
    }
    let ready: Vec<Ready> = distinct.iter().map(|option| Ready::new(option, rule, capability)).collect();
    let worlds = ready.iter().map(Ready::worlds).max().unwrap_or(1).max(1);
    let draw = Draw { tears, joints: ready.iter().map(Ready::places).max().unwrap_or(0), worlds, capability };
    let batches: Vec<Vec<Tally>> = (0..trials.div_ceil(BATCH))
        .into_par_iter()
        .map(|batch| {
            let count = BATCH.min(trials - batch * BATCH);
            let trials = draw.batch(count, batch * BATCH, seed.wrapping_add(u64::from(batch)));
            ready.iter().map(|option| option.tried(&trials)).collect()
        })
        .collect();
    which.into_iter().map(|option| summed(&ready[option], &batches, option, trials)).collect()
}

fn summed(ready: &Ready, batches: &[Vec<Tally>], option: usize, trials: u32) -> Risk {
    let callbacks =
        |count: usize| -> u32 { batches[..count].iter().map(|batch| batch[option].callbacks).sum() };
    let share = |count: usize| {
        let tried = trials.min(u32::try_from(count).unwrap_or(u32::MAX).saturating_mul(BATCH)).max(1);
        f64::from(callbacks(count)) / f64::from(tried)
    };
    let all = batches.len();
    let chance = share(all);
    let of_joint = |joint: usize| -> f64 {
        let opened: f64 = batches.iter().map(|batch| batch[option].openings(ready, joint)).sum();
        opened / f64::from(trials.max(1))
    };
    let mean = |sum: f64| Length::m(sum / f64::from(trials.max(1)));
    let opens: f64 = batches.iter().map(|batch| batch[option].opens).sum();
    let if_called: f64 = batches.iter().map(|batch| batch[option].opens_if_called).sum();
    let worlds = by_world(batches, trials, |batch| &batch[option].called);
    let sound = by_world(batches, trials, |batch| &batch[option].called_without_paint);
    let without: u32 = batches.iter().map(|batch| batch[option].without_paint).sum();
    let without_paint = f64::from(without) / f64::from(trials.max(1));
    Risk {
        chance,
        interval: interval(chance, &worlds, trials),
        without_paint,
        without_paint_interval: interval(without_paint, &sound, trials),
        converged: [share(all.div_ceil(4)), share(all.div_ceil(2)), chance],
        opens: mean(opens),
        opens_if_called: mean(if_called),
        joints: (0..ready.joints()).map(of_joint).collect(),
    }
}

/// Trials and callbacks in each world, as `of` counts them in a batch.
fn by_world(batches: &[Vec<Tally>], trials: u32, of: impl Fn(&[Tally]) -> &[u32]) -> Vec<(f64, f64)> {
    let Some(first) = batches.first() else { return vec![] };
    let mut called = vec![0_u32; of(first).len()];
    for batch in batches {
        for (sum, more) in called.iter_mut().zip(of(batch)) {
            *sum += more;
        }
    }
    let worlds = u32::try_from(called.len()).unwrap_or(1).max(1);
    let tried = |world: usize| {
        let extra = u32::try_from(world).unwrap_or(0) < trials % worlds;
        f64::from(trials / worlds + u32::from(extra))
    };
    called.into_iter().enumerate().map(|(world, called)| (tried(world), f64::from(called))).collect()
}

/// Where the chance lies nine times in ten over the worlds. Their chances are taken as beta distributed,
/// with what their shares scatter by beyond the dice; where they do not, the dice's own interval is left.
fn interval(chance: f64, worlds: &[(f64, f64)], trials: u32) -> Span<f64> {
    let dice = wilson(chance, f64::from(trials.max(1)));
    let tried: Vec<&(f64, f64)> = worlds.iter().filter(|(tried, _)| *tried >= 2.0).collect();
    if tried.len() < 20 || chance <= 0.0 || chance >= 1.0 {
        return dice;
    }
    #[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
    let count = tried.len() as f64;
    let share = |(tried, called): &(f64, f64)| called / tried;
    let scatter = tried.iter().map(|world| (share(world) - chance).powi(2)).sum::<f64>() / count;
    let by_dice =
        tried.iter().map(|world| share(world) * (1.0 - share(world)) / (world.0 - 1.0)).sum::<f64>() / count;
    let between = (scatter - by_dice).clamp(0.0, 0.98 * chance * (1.0 - chance));
    if between <= 1e-6 {
        return dice;
    }
    let strength = chance * (1.0 - chance) / between - 1.0;
    match Beta::new(chance * strength, (1.0 - chance) * strength) {
        Ok(beta) => {
            Span { low: beta.inverse_cdf(0.05).min(dice.low), high: beta.inverse_cdf(0.95).max(dice.high) }
        }
        Err(_) => dice,
    }
}

/// Wilson's 95 % interval of a share `p` seen in `n` trials.
pub fn wilson(p: f64, n: f64) -> Span<f64> {
    let z = Normal::standard().inverse_cdf(0.975);
    let square = z * z;
    let middle = (p + square / (2.0 * n)) / (1.0 + square / n);
    let reach = z * (p * (1.0 - p) / n + square / (4.0 * n * n)).sqrt() / (1.0 + square / n);
    Span { low: (middle - reach).max(0.0), high: (middle + reach).min(1.0) }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn capability() -> Capability {
        Capability {
            median: 1.0,
            cure_loss: Percent::ZERO,
            yearly_loss: Percent::ZERO,
            lot: 0.0,
            hand: 0.0,
            paint: 0.0,
            source: String::new(),
            kind: Kind::Assumption,
        }
    }

    /// A joint that moves by 1 mm.
    fn option(bead: Option<MovementLimits>, scatter: f64) -> RiskOption {
        let swing = SectionMovement { worlds: [(0.01, 0.0)].into() };
        let joint = RiskJoint {
            section: 0,
            length: Length::m(1.0),
            across: Length::mm(100.0),
            bead,
            open_from: Length::mm(0.1),
            scatter,
            moves: scatter,
            lost: false,
        };
        RiskOption::alike(vec![swing], vec![joint])
    }

    fn breaks_at(mm: f64) -> Option<MovementLimits> {
        Some(MovementLimits::breaks_at(Length::mm(mm)))
    }

    /// With one joint everything is log-normal, so the chance is a normal's: ln of movement over
    /// capability is ln(1 mm / 0.9 mm) with the scatter of lot and joint.
    #[test]
    fn one_joint_fails_as_often_as_the_normal_says() {
        let rule = CallbackRule::default();
        let found =
            &risks(&[option(breaks_at(0.9), 0.2)], &rule, &capability(), Tears::Unknown, 40_000, 7)[0];
        let sd = 0.2_f64;
        let exact = Normal::standard().cdf((1.0 / 0.9_f64).ln() / sd);
        assert!((found.chance - exact).abs() < 0.01, "{} against {exact}", found.chance);
        assert!(found.interval.low < exact && exact < found.interval.high);
        assert!((found.joints[0] - found.chance).abs() < 1e-12);
        assert!(found.converged.iter().all(|share| (share - exact).abs() < 0.02));
    }

    /// Where nobody knows whether tears come through, the logarithm of what is taken is spread evenly
    /// between both bounds.
    #[test]
    fn tears_come_through_evenly_between_the_bounds() {
        let limits = MovementLimits { open_hidden: Length::mm(0.5), ..breaks_at(2.0).unwrap() };
        let mut of_worlds = option(Some(limits), 0.01);
        of_worlds.movements = vec![SectionMovement { worlds: vec![(0.01, 0.0); 500].into() }];
        let chance = |tears| {
            let options = std::slice::from_ref(&of_worlds);
            risks(options, &CallbackRule::default(), &capability(), tears, 20_000, 7)[0].chance
        };
        // 1 mm lies in the middle between 0.5 and 2 mm.
        assert!((chance(Tears::Unknown) - 0.5).abs() < 0.02);
        assert!(chance(Tears::Stay) < 0.001 && chance(Tears::ComeThrough) > 0.999);
    }

    #[test]
    fn paint_cracks_over_a_bead_that_holds() {
        let limits = MovementLimits { paint: Length::mm(0.5), ..breaks_at(5.0).unwrap() };
        let found = &risks(
            &[option(Some(limits), 0.1)],
            &CallbackRule::default(),
            &capability(),
            Tears::Unknown,
            2_000,
            7,
        )[0];
        assert!(found.chance > 0.99 && found.without_paint < 0.01, "{found:?}");
        // What is too fine to be seen is no callback.
        let mut unseen = option(Some(limits), 0.1);
        unseen.pictures[0][0].open_from = Length::mm(2.0);
        assert!(
            risks(&[unseen], &CallbackRule::default(), &capability(), Tears::Unknown, 2_000, 7)[0].chance
                < 0.01
        );
    }

    /// Two pictures of a joint that each has half of the worlds: one breaks in all of its worlds, one in none.
    #[test]
    fn each_world_has_its_picture_of_the_joints() {
        let [weak, strong] = [0.1, 10.0].map(|mm| option(breaks_at(mm), 0.01).pictures.remove(0));
        let movements = vec![SectionMovement { worlds: vec![(0.01, 0.0); 10].into() }];
        let picture_of = (0..10).map(|world| world % 2).collect();
        let both = RiskOption { movements, pictures: vec![weak, strong], picture_of };
        let found = &risks(&[both], &CallbackRule::default(), &capability(), Tears::Unknown, 2_000, 7)[0];
        assert!((found.chance - 0.5).abs() < 1e-9 && (found.joints[0] - 0.5).abs() < 1e-9, "{found:?}");
        assert!((found.opens.to_m() - 0.5).abs() < 1e-6 && (found.opens_if_called.to_m() - 0.5).abs() < 1e-6);
    }

    #[test]
    fn the_same_seed_gives_the_same_and_a_better_sealant_is_never_worse() {
        let rule = CallbackRule::default();
        let all = [0.5, 0.9, 1.5].map(|mm| option(breaks_at(mm), 0.4));
        let found = risks(&all, &rule, &capability(), Tears::Unknown, 2_000, 3);
        assert_eq!(found, risks(&all, &rule, &capability(), Tears::Unknown, 2_000, 3));
        assert!(found[0].chance >= found[1].chance && found[1].chance >= found[2].chance);
    }

    /// Wilson's interval for 4 of 20, 95 %: 0.0807 to 0.4160 (Newcombe 1998 gives the method; the
    /// figures are from memory).
    #[test]
    fn the_interval_is_wilsons() {
        let interval = wilson(0.2, 20.0);
        assert!(
            (interval.low - 0.0807).abs() < 5e-4 && (interval.high - 0.4160).abs() < 5e-4,
            "{interval:?}"
        );
    }
}
