//! The chance that the joints open again: Monte Carlo over what nobody knows yet.
//!
//! A trial draws, for the whole job, how its lot of boards moves, how its lot of sealant stretches,
//! how far off the moisture readings are and how dry and damp the years of the warranty turn out; and
//! for each joint one normal number for its boards, its width and the hand that sealed it. A bead
//! fails when its movement passes what it takes; a joint without one shows what the boards give up.
//! The owner calls when too much length is open or one gap is wider than the eye forgives.
//!
//! All options meet the same draws, so that their difference is theirs and not the dice's. The same
//! seed gives the same figures, on any number of cores.

use rand::{RngExt as _, SeedableRng as _};
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;
use rayon::prelude::*;
use serde::{Deserialize, Serialize};
use statrs::distribution::{ContinuousCDF as _, Normal};

use crate::measure::{Length, Percent, Span};
use crate::wood::Kind;

/// Trials that one random sequence serves.
const BATCH: u32 = 250;
/// Years that are drawn one by one; of a longer warranty the driest of these many counts.
const MOST_YEARS: usize = 10;
/// Share of a year's scatter that is the house's own and the same every year. Assumption.
const LASTING: f64 = 0.5;

/// When the owner calls again.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
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
    /// Half of the beads take this many times their class.
    pub median: f64,
    /// Scatter from lot to lot, as a standard deviation of the logarithm.
    pub lot: f64,
    /// Scatter from joint to joint by the hand that seals, likewise.
    pub hand: f64,
    /// Where the figures are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

/// How a section's boards move after the work, as fractions of their width.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Swing {
    /// Most they narrow below the day of the work in the usual year.
    pub narrows: f64,
    /// Most they widen above it.
    pub widens: f64,
    /// Standard deviation of both that the years' weather adds, at the driest and at the dampest.
    pub weather: (f64, f64),
    /// Standard deviation of the narrowing still to come, from the moisture readings' doubt.
    pub reading: f64,
}

/// A joint as a trial sees it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RiskJoint {
    /// Index of its section's [`Swing`].
    pub section: usize,
    /// Its length.
    pub length: Length,
    /// Width of wood whose movement shows at it.
    pub across: Length,
    /// Width of the bead when sealed; `None` without one.
    pub bead: Option<Length>,
    /// Without a bead, the opening from which the joint counts as open: where it was painted over, as
    /// soon as that is seen; where it shows a line by design, not before it is too wide.
    pub open_from: Length,
    /// Scatter of movement over width, as a standard deviation of its logarithm.
    pub scatter: f64,
    /// Scatter of the movement alone, likewise; not above `scatter`.
    pub moves: f64,
    /// Whether it opens again whatever the bead: past the tongue.
    pub lost: bool,
}

/// One way to mend the joints, as the trials see it.
#[derive(Debug, Clone, PartialEq)]
pub struct RiskOption {
    /// How the sections move.
    pub swings: Vec<Swing>,
    /// The joints.
    pub joints: Vec<RiskJoint>,
    /// What the beads take, stretched and squeezed, as fractions of their width.
    pub takes: (f64, f64),
}

/// The chance of a callback.
#[derive(Debug, Clone, PartialEq)]
pub struct Risk {
    /// Share of the trials with a callback.
    pub chance: f64,
    /// Where that share lies with 95 % confidence, were there endless trials (Wilson's interval).
    pub interval: Span<f64>,
    /// The share after a quarter, a half and all of the trials: they should agree.
    pub converged: [f64; 3],
    /// Mean length of joint that opens again.
    pub opens: Length,
    /// The same, counting only the trials with a callback.
    pub opens_if_called: Length,
    /// For each joint the chance that it opens, in the order given.
    pub joints: Vec<f64>,
}

/// What one batch of trials counts.
#[derive(Debug, Clone)]
struct Tally {
    callbacks: u32,
    opens: f64,
    opens_if_called: f64,
    /// Openings of each joint; whole numbers.
    joints: Vec<f32>,
    /// More open length than this brings a callback, m.
    most_open: f32,
}

/// Joints made ready, value by value so that a trial runs through many at a time. A joint opens when
/// the greater of `stretch` and `squeeze`, each with its trial's figure, plus `scatter`·z is above zero.
#[derive(Debug, Clone, Default)]
struct Ready {
    stretch: Vec<f32>,
    squeeze: Vec<f32>,
    scatter: Vec<f32>,
    /// The part of `scatter`·z that is movement, given that the rest is width and hand.
    moves: Vec<f32>,
    length: Vec<f32>,
    /// Logarithm of the width that moves, mm.
    across: Vec<f32>,
    /// 1 for a joint with a bead, for which the lot of sealant counts; else 0.
    sealed: Vec<f32>,
    /// Neighbours that move alike: where they begin and end, and their section.
    runs: Vec<(usize, usize, usize)>,
}

impl Ready {
    fn len(&self) -> usize {
        self.length.len()
    }
}

/// What one trial makes of one section: logarithms of narrowing and widening.
#[derive(Debug, Clone, Copy)]
struct Drawn {
    narrows: f32,
    widens: f32,
}

/// Puts every option through `trials` trials of `years` years with the same draws. Joints of all
/// options must be in the same order to share theirs; options may differ in number of joints.
pub fn risks(
    options: &[RiskOption],
    rule: &CallbackRule,
    capability: &Capability,
    years: u32,
    trials: u32,
    seed: u64,
) -> Vec<Risk> {
    // Options that leave the same behind fare the same, and sections that move alike are one.
    let mut distinct: Vec<RiskOption> = Vec::new();
    let mut which = Vec::with_capacity(options.len());
    for option in options {
        let option = with_distinct_swings(option);
        which.push(distinct.iter().position(|known| *known == option).unwrap_or_else(|| {
            distinct.push(option);
            distinct.len() - 1
        }));
    }
    let options = &distinct;
    let ready: Vec<Ready> = options.iter().map(|option| make_ready(option, capability)).collect();
    let batches: Vec<Vec<Tally>> = (0..trials.div_ceil(BATCH))
        .into_par_iter()
        .map(|batch| {
            let count = BATCH.min(trials - batch * BATCH);
            run_batch(options, &ready, rule, capability, (years, count), seed.wrapping_add(u64::from(batch)))
        })
        .collect();
    which.into_iter().map(|option| summed(&batches, option, trials)).collect()
}

/// The option with every swing once.
fn with_distinct_swings(option: &RiskOption) -> RiskOption {
    let mut swings: Vec<Swing> = Vec::new();
    let places: Vec<usize> = option
        .swings
        .iter()
        .map(|swing| {
            swings.iter().position(|known| known == swing).unwrap_or_else(|| {
                swings.push(*swing);
                swings.len() - 1
            })
        })
        .collect();
    let joints = option.joints.iter().map(|joint| RiskJoint { section: places[joint.section], ..*joint });
    RiskOption { joints: joints.collect(), swings, takes: option.takes }
}

#[expect(clippy::cast_possible_truncation, reason = "single precision is ample for a chance")]
const fn single(value: f64) -> f32 {
    value as f32
}

fn make_ready(option: &RiskOption, capability: &Capability) -> Ready {
    let mut ready = Ready::default();
    for (at, joint) in option.joints.iter().enumerate() {
        let across = joint.across.to_mm().max(1e-6);
        // Movement over what is taken; a joint without a bead takes what nobody sees.
        let ratio = |takes: f64| match joint.bead {
            Some(width) => (across / (width.to_mm().max(1e-3) * takes.max(1e-6) * capability.median)).ln(),
            None => (across / joint.open_from.to_mm().max(1e-3)).ln(),
        };
        let sealed = joint.bead.is_some();
        let hand = if sealed { capability.hand } else { 0.0 };
        let scatter = joint.scatter.hypot(hand);
        ready.stretch.push(if joint.lost { 1e9 } else { single(ratio(option.takes.0)) });
        ready.squeeze.push(if sealed { single(ratio(option.takes.1)) } else { -1e9 });
        ready.scatter.push(single(scatter));
        ready.moves.push(single(joint.moves * joint.moves / scatter.max(1e-9)));
        ready.length.push(single(joint.length.to_m()));
        ready.across.push(single(across.ln()));
        ready.sealed.push(if sealed { 1.0 } else { 0.0 });
        match ready.runs.last_mut().filter(|(_, _, section)| *section == joint.section) {
            Some((_, end, _)) => *end = at + 1,
            None => ready.runs.push((at, at + 1, joint.section)),
        }
    }
    ready
}

fn run_batch(
    options: &[RiskOption],
    ready: &[Ready],
    rule: &CallbackRule,
    capability: &Capability,
    (years, count): (u32, u32),
    seed: u64,
) -> Vec<Tally> {
    let mut random = Xoshiro256PlusPlus::seed_from_u64(seed);
    let most = ready.iter().map(Ready::len).max().unwrap_or(0);
    // The joints' own draws: every trial takes a stretch of one long list, from a place of its own.
    // Each joint's draws are as random as before; trials share some of them at other joints, which
    // matters to nothing that is counted.
    let apart = (8 * most).max(4096);
    let draws: Vec<f32> = (0..apart + most).map(|_| StandardNormal.sample(&mut random)).collect();
    let mut drawn = Vec::new();
    let mut tallies: Vec<Tally> = ready
        .iter()
        .map(|joints| {
            let all: f32 = joints.length.iter().sum();
            let most_open = single(rule.open_share.to_fraction()) * all;
            Tally {
                callbacks: 0,
                opens: 0.0,
                opens_if_called: 0.0,
                joints: vec![0.0; joints.len()],
                most_open,
            }
        })
        .collect();
    let weakest: Vec<(f32, f32)> = ready.iter().map(weakest).collect();
    let years = usize::try_from(years).unwrap_or(MOST_YEARS).clamp(1, MOST_YEARS);
    for _ in 0..count {
        let mut normal = || -> f64 { StandardNormal.sample(&mut random) };
        let house = LASTING.sqrt() * normal();
        let (mut driest, mut dampest) = (f64::NEG_INFINITY, f64::NEG_INFINITY);
        for _ in 0..years {
            let year = house + (1.0 - LASTING).sqrt() * normal();
            (driest, dampest) = (driest.max(-year), dampest.max(year));
        }
        let common = Common {
            driest,
            dampest,
            lot: crate::wood::Species::SCATTER / 2.0 * normal(),
            sealant: capability.lot * normal(),
            reading: normal(),
        };
        let from = random.random_range(0..apart);
        let draws = &draws[from..from + most];
        for (((option, joints), weakest), tally) in options.iter().zip(ready).zip(&weakest).zip(&mut tallies)
        {
            try_once(option, (joints, *weakest), (draws, &mut drawn), &common, rule, tally);
        }
    }
    tallies
}

/// The joint that stretches open first and the one that is squeezed out first, five standard
/// deviations out.
fn weakest(joints: &Ready) -> (f32, f32) {
    let most = |of: &[f32]| {
        let out = of.iter().zip(&joints.scatter).map(|(at, scatter)| at + 5.0 * scatter);
        out.fold(f32::NEG_INFINITY, f32::max)
    };
    (most(&joints.stretch), most(&joints.squeeze))
}

/// What a trial draws for the whole job.
#[derive(Debug, Clone, Copy)]
struct Common {
    /// How much drier than usual the driest year is, and how much damper the dampest, in standard
    /// deviations.
    driest: f64,
    dampest: f64,
    /// Logarithms: how much more the boards move, how much more the sealant takes.
    lot: f64,
    sealant: f64,
    /// How much wetter the boards were than read, in standard deviations.
    reading: f64,
}

fn try_once(
    option: &RiskOption,
    (joints, weakest): (&Ready, (f32, f32)),
    (draws, drawn): (&[f32], &mut Vec<Drawn>),
    common: &Common,
    rule: &CallbackRule,
    tally: &mut Tally,
) {
    let shares = |swing: &Swing| {
        let narrows = swing.narrows + swing.weather.0 * common.driest + swing.reading * common.reading;
        (narrows, swing.widens + swing.weather.1 * common.dampest)
    };
    let log = |share: f64| single(share.max(1e-9).ln() + common.lot);
    let sealant = single(common.sealant);
    // Where not even a joint five deviations out would open, none needs to be looked at.
    let most = option
        .swings
        .iter()
        .map(shares)
        .fold((0.0_f64, 0.0_f64), |most, share| (most.0.max(share.0), most.1.max(share.1)));
    if (weakest.0 + log(most.0)).max(weakest.1 + log(most.1)) <= sealant.min(0.0) {
        return;
    }
    drawn.clear();
    drawn.extend(
        option
            .swings
            .iter()
            .map(shares)
            .map(|(narrows, widens)| Drawn { narrows: log(narrows), widens: log(widens) }),
    );
    let mut opened = Opened::default();
    for &(from, to, section) in &joints.runs {
        opened.run_through(joints, from..to, drawn[section], sealant, draws, &mut tally.joints);
    }
    let (open, widest) = opened.total();
    tally.opens += f64::from(open);
    let too_wide = f64::from(widest) > rule.widest.to_mm().max(1e-6).ln();
    if open > tally.most_open || too_wide {
        tally.callbacks += 1;
        tally.opens_if_called += f64::from(open);
    }
}

/// The greater of two numbers of which none is NaN: processors have an instruction for just that.
#[inline]
const fn greater(a: f32, b: f32) -> f32 {
    if a > b { a } else { b }
}

/// Joints that are looked at together: processors work on so many numbers at once.
const LANES: usize = 8;

/// Taken off the logarithm of a width that does not open.
const SHUT: f32 = 1e6;

/// What opens in a trial, lane by lane.
#[derive(Debug, Clone, Copy)]
struct Opened {
    length: [f32; LANES],
    /// Logarithm of the widest opening, mm.
    widest: [f32; LANES],
}

impl Default for Opened {
    fn default() -> Self {
        Self { length: [0.0; LANES], widest: [-SHUT; LANES] }
    }
}

impl Opened {
    /// Looks at joints that move alike. There are no branches in the loop: whether a joint opens is a
    /// toss, and a branch on it would be guessed wrongly.
    fn run_through(
        &mut self,
        joints: &Ready,
        run: std::ops::Range<usize>,
        drawn: Drawn,
        sealant: f32,
        draws: &[f32],
        counts: &mut [f32],
    ) {
        let [stretch, squeeze, scatter, moves, length, across, sealed] = [
            &joints.stretch,
            &joints.squeeze,
            &joints.scatter,
            &joints.moves,
            &joints.length,
            &joints.across,
            &joints.sealed,
        ]
        .map(|of| &of[run.clone()]);
        let (draws, counts) = (&draws[run.clone()], &mut counts[run]);
        let whole = draws.len() / LANES;
        let parts =
            [stretch, squeeze, scatter, moves, length, across, sealed, draws].map(|of| of.as_chunks().0);
        let some = counts.as_chunks_mut().0;
        for (at, counts) in some.iter_mut().enumerate().take(whole) {
            self.look(parts.map(|of| &of[at]), drawn, sealant, counts);
        }
        // The last few are filled up with joints that never open.
        let rest = whole * LANES;
        let filled = |of: &[f32], with: f32| {
            let mut lanes = [with; LANES];
            lanes[..of.len() - rest].copy_from_slice(&of[rest..]);
            lanes
        };
        let never = f32::NEG_INFINITY;
        let parts = [
            filled(stretch, never),
            filled(squeeze, never),
            filled(scatter, 0.0),
            filled(moves, 0.0),
            filled(length, 0.0),
            filled(across, 0.0),
            filled(sealed, 0.0),
            filled(draws, 0.0),
        ];
        let mut last = [0.0; LANES];
        self.look(parts.each_ref(), drawn, sealant, &mut last);
        for (count, more) in counts[rest..].iter_mut().zip(last) {
            *count += more;
        }
    }

    /// Looks at as many joints as there are lanes.
    #[inline]
    fn look(&mut self, joints: [&[f32; LANES]; 8], drawn: Drawn, sealant: f32, counts: &mut [f32; LANES]) {
        let [stretch, squeeze, scatter, moves, length, across, sealed, draws] = joints;
        // One thing at a time over all lanes: so each becomes a few instructions for all of them.
        let mut opens = [0.0_f32; LANES];
        for lane in 0..LANES {
            let asked = greater(stretch[lane] + drawn.narrows, squeeze[lane] + drawn.widens);
            let over = asked + scatter[lane] * draws[lane] - sealed[lane] * sealant;
            opens[lane] = if over > 0.0 { 1.0 } else { 0.0 };
        }
        for lane in 0..LANES {
            counts[lane] += opens[lane];
        }
        for lane in 0..LANES {
            self.length[lane] += opens[lane] * length[lane];
        }
        for lane in 0..LANES {
            // One that stays shut is narrower than any that opens.
            let wide = across[lane] + drawn.narrows + moves[lane] * draws[lane];
            self.widest[lane] = greater(self.widest[lane], wide + (opens[lane] - 1.0) * SHUT);
        }
    }

    /// Open length in m, and the logarithm of the widest opening.
    fn total(&self) -> (f32, f32) {
        (self.length.iter().sum(), self.widest.iter().copied().fold(-SHUT, f32::max))
    }
}

fn summed(batches: &[Vec<Tally>], option: usize, trials: u32) -> Risk {
    let callbacks =
        |count: usize| -> u32 { batches[..count].iter().map(|batch| batch[option].callbacks).sum() };
    let share = |count: usize| {
        let tried = trials.min(u32::try_from(count).unwrap_or(u32::MAX).saturating_mul(BATCH)).max(1);
        f64::from(callbacks(count)) / f64::from(tried)
    };
    let all = batches.len();
    let chance = share(all);
    let joints = batches.first().map_or(0, |batch| batch[option].joints.len());
    let of_joint = |joint: usize| -> f64 {
        let opened: f64 = batches.iter().map(|batch| f64::from(batch[option].joints[joint])).sum();
        opened / f64::from(trials.max(1))
    };
    let mean = |sum: f64| Length::m(sum / f64::from(trials.max(1)));
    let opens: f64 = batches.iter().map(|batch| batch[option].opens).sum();
    let if_called: f64 = batches.iter().map(|batch| batch[option].opens_if_called).sum();
    Risk {
        chance,
        interval: wilson(chance, f64::from(trials.max(1))),
        converged: [share(all.div_ceil(4)), share(all.div_ceil(2)), chance],
        opens: mean(opens),
        opens_if_called: mean(if_called),
        joints: (0..joints).map(of_joint).collect(),
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
        Capability { median: 1.0, lot: 0.0, hand: 0.0, source: String::new(), kind: Kind::Assumption }
    }

    fn option(bead: Option<Length>, takes: f64, scatter: f64) -> RiskOption {
        let swing = Swing { narrows: 0.01, widens: 0.0, weather: (0.0, 0.0), reading: 0.0 };
        let joint = RiskJoint {
            section: 0,
            length: Length::m(1.0),
            across: Length::mm(100.0),
            bead,
            open_from: Length::mm(0.4),
            scatter,
            moves: scatter,
            lost: false,
        };
        RiskOption { swings: vec![swing], joints: vec![joint], takes: (takes, takes) }
    }

    /// With one joint everything is log-normal, so the chance is a normal's: ln of movement over
    /// capability is ln(1 mm / (2 mm · 0.45)) with the scatter of lot and joint.
    #[test]
    fn one_joint_fails_as_often_as_the_normal_says() {
        let rule = CallbackRule::default();
        let found =
            &risks(&[option(Some(Length::mm(2.0)), 0.45, 0.2)], &rule, &capability(), 2, 40_000, 7)[0];
        let sd = 0.2_f64.hypot(crate::wood::Species::SCATTER / 2.0);
        let exact = Normal::standard().cdf((1.0 / 0.9_f64).ln() / sd);
        assert!((found.chance - exact).abs() < 0.01, "{} against {exact}", found.chance);
        assert!(found.interval.low < exact && exact < found.interval.high);
        assert!((found.joints[0] - found.chance).abs() < 1e-12);
        assert!(found.converged.iter().all(|share| (share - exact).abs() < 0.02));
    }

    #[test]
    fn the_same_seed_gives_the_same_and_a_better_sealant_is_never_worse() {
        let rule = CallbackRule::default();
        let all = [0.25, 0.5, 1.0].map(|takes| option(Some(Length::mm(1.5)), takes, 0.4));
        let found = risks(&all, &rule, &capability(), 2, 2_000, 3);
        assert_eq!(found, risks(&all, &rule, &capability(), 2, 2_000, 3));
        assert!(found[0].chance >= found[1].chance && found[1].chance >= found[2].chance);
        let longer = risks(&all, &rule, &capability(), 10, 2_000, 3);
        assert_eq!(longer.len(), 3);
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
