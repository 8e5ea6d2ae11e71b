//! Trials by the thousand, eight joints at a time, with the widest instructions the processor has.
//!
//! In one trial a joint opens when the logarithm of what is asked of it over what it takes is above
//! zero: the greater of stretch and squeeze, plus the joint's scatter times a normal number of its own,
//! less what the lot of sealant takes more than usual. Every step is an addition, a multiplication or
//! a comparison in singles, done alike on all processors.

use std::ops::Range;
use std::sync::Arc;

use fearless_simd::{Level, dispatch, f32x8, prelude::*};
use rand::{RngExt as _, SeedableRng as _};
use rand_distr::{Distribution as _, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;
use statrs::distribution::{ContinuousCDF as _, Normal};

use super::risk::{CallbackRule, Capability, RiskJoint, RiskOption, SectionMovement};
use crate::measure::Length;

/// Joints that are looked at together.
const LANES: usize = 8;
/// Blocks that go through all trials before the next do: so many stay in the nearest memory.
const TILE: usize = 64;
/// A logarithm that nothing makes up for.
const FAR: f32 = 1e9;

#[expect(clippy::cast_possible_truncation, reason = "single precision is ample for a chance")]
const fn single(value: f64) -> f32 {
    value as f32
}

/// Whether tears that begin behind a bead come through to its face.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tears {
    /// Each plausible world has its own share of the way.
    Unknown,
    /// They stay where they are.
    Stay,
    /// All of them come through.
    ComeThrough,
}

/// What the draws of a job depend on.
#[derive(Debug, Clone, Copy)]
pub(super) struct Draw<'a> {
    /// Whether tears come through.
    pub tears: Tears,
    /// Places for joints.
    pub joints: usize,
    /// Plausible worlds, taken in turn.
    pub worlds: usize,
    /// How sealant scatters.
    pub capability: &'a Capability,
}

/// What is drawn for some trials, before any option is put through them.
#[derive(Debug)]
pub(super) struct Trials {
    /// One long list of normal numbers. Every trial takes a stretch of it for its joints, from a place
    /// of its own. Each joint's draws are as random as if they were its own; trials share some of them
    /// at other joints, which matters to nothing that is counted.
    normals: Vec<f32>,
    trials: Vec<Trial>,
}

/// What a trial draws for the whole job.
#[derive(Debug, Clone, Copy)]
struct Trial {
    /// Where its stretch of the normals begins.
    from: usize,
    /// The world it is in.
    world: usize,
    /// Logarithm of how much more the sealant takes.
    sealant: f64,
    /// How far tears that begin out of sight come through: 0 not at all, 1 all the way.
    through: f64,
    /// Logarithm of how much more paint takes.
    paint: f64,
}

impl Tears {
    /// How far they come through in a world, 0 to 1. Where that is unknown, from one world to the next by
    /// the golden ratio, which spreads them evenly over any number of worlds.
    fn come_through(self, world: usize) -> f64 {
        match self {
            Self::Unknown => spread(world, 0.618_033_988_749_894_9),
            Self::Stay => 0.0,
            Self::ComeThrough => 1.0,
        }
    }
}

#[expect(clippy::cast_precision_loss, reason = "thousands of worlds")]
fn spread(world: usize, step: f64) -> f64 {
    ((world as f64 + 0.5) * step).fract()
}

/// How paint fares in a world, as a normal number, spread likewise by the root of two.
fn paint_of(world: usize) -> f64 {
    Normal::standard().inverse_cdf(spread(world, std::f64::consts::SQRT_2 - 1.0).clamp(1e-3, 1.0 - 1e-3))
}

impl Draw<'_> {
    /// Draws `count` trials, `before` of them having been drawn already; the same seed gives the same.
    pub fn batch(&self, count: u32, before: u32, seed: u64) -> Trials {
        let mut random = Xoshiro256PlusPlus::seed_from_u64(seed);
        let apart = (8 * self.joints).max(4096);
        let normals = (0..apart + self.joints).map(|_| StandardNormal.sample(&mut random)).collect();
        let world = |at: u32| usize::try_from(before + at).unwrap_or(0) % self.worlds;
        let trials = (0..count).map(|at| self.trial(&mut random, apart, world(at))).collect();
        Trials { normals, trials }
    }

    fn trial(&self, random: &mut Xoshiro256PlusPlus, apart: usize, world: usize) -> Trial {
        let normal: f64 = StandardNormal.sample(random);
        Trial {
            world,
            sealant: self.capability.lot * normal,
            through: self.tears.come_through(world),
            paint: self.capability.paint * paint_of(world),
            from: random.random_range(0..apart),
        }
    }
}

/// Eight joints, value by value.
#[derive(Debug, Clone, Copy)]
struct Block {
    /// Logarithm of what a full opening asks over what is taken before that shows, but for what the trial
    /// draws.
    stretch: [f32; LANES],
    /// How much larger that is for a tear that begins out of sight.
    stretch_behind: [f32; LANES],
    /// The same of being squeezed.
    squeeze: [f32; LANES],
    squeeze_behind: [f32; LANES],
    /// The same of the paint over it.
    paint: [f32; LANES],
    /// Scatter of both.
    scatter: [f32; LANES],
    /// The part of the scatter that is movement, given that the rest is width and hand.
    moves: [f32; LANES],
    /// Length, m.
    length: [f32; LANES],
    /// Logarithm of the width that moves, mm.
    across: [f32; LANES],
    /// 1 for a joint with a bead, for which the lot of sealant counts; else 0.
    sealed: [f32; LANES],
}

impl Block {
    /// Joints that never open, to fill a block up.
    const SHUT: Self = Self {
        stretch: [-FAR; LANES],
        stretch_behind: [0.0; LANES],
        squeeze: [-FAR; LANES],
        squeeze_behind: [0.0; LANES],
        paint: [-FAR; LANES],
        scatter: [0.0; LANES],
        moves: [0.0; LANES],
        length: [0.0; LANES],
        across: [0.0; LANES],
        sealed: [0.0; LANES],
    };

    fn put(&mut self, lane: usize, joint: &RiskJoint, capability: &Capability) {
        let across = joint.across.to_mm().max(1e-6);
        // Movement over what is taken, or over what must be open to be seen if that is more.
        let seen = joint.open_from.to_mm().max(1e-3);
        let ratio = |takes: f64| (across / takes.max(seen)).ln();
        let of_bead = |takes: Length| ratio(takes.to_mm() * capability.median);
        let sealed = joint.bead.is_some();
        let hand = if sealed { capability.hand } else { 0.0 };
        let scatter = joint.scatter.hypot(hand);
        self.stretch[lane] = single(ratio(0.0));
        if let Some(bead) = &joint.bead {
            let (open, close) = (of_bead(bead.open_seen), of_bead(bead.close_seen));
            self.stretch[lane] = single(open);
            self.stretch_behind[lane] = single(of_bead(bead.open_hidden) - open);
            self.squeeze[lane] = single(close);
            self.squeeze_behind[lane] = single(of_bead(bead.close_hidden) - close);
            self.paint[lane] = single(ratio(bead.paint.to_mm()));
        }
        if joint.lost {
            self.stretch[lane] = FAR;
        }
        self.scatter[lane] = single(scatter);
        self.moves[lane] = single(joint.moves * joint.moves / scatter.max(1e-9));
        self.length[lane] = single(joint.length.to_m());
        self.across[lane] = single(across.ln());
        self.sealed[lane] = if sealed { 1.0 } else { 0.0 };
    }
}

/// Blocks whose joints move alike, at most [`TILE`] of them.
#[derive(Debug)]
struct Tile {
    blocks: Range<usize>,
    /// Index of their swing.
    swing: usize,
    /// The picture they belong to.
    picture: usize,
    /// The place of their first joint in it.
    first: usize,
}

/// An option made ready for trials.
#[derive(Debug)]
pub(super) struct Ready {
    /// Those of one picture after those of another.
    blocks: Vec<Block>,
    tiles: Vec<Tile>,
    /// Swings, each once.
    swings: Vec<SectionMovement>,
    /// For each picture and joint its place: block times [`LANES`] plus lane.
    places: Vec<Vec<usize>>,
    /// The picture of each world; the first where none is named.
    picture_of: Arc<[usize]>,
    /// Places of the largest picture, those that fill up blocks included.
    largest: usize,
    /// How far stretch, squeeze and paint reach, five standard deviations out, at the weakest joint.
    weakest: (f32, f32, f32),
    /// More open length than this brings a callback, m: by picture.
    most_open: Vec<f32>,
    /// Logarithm of the width of one opening that brings a callback, mm.
    widest: f32,
}

impl Ready {
    /// Lays the joints out in blocks, each section in its own: so the same joint stands at the same
    /// place in every option.
    pub fn new(option: &RiskOption, rule: &CallbackRule, capability: &Capability) -> Self {
        let mut swings: Vec<SectionMovement> = Vec::new();
        let mut blocks: Vec<Block> = Vec::new();
        let mut tiles: Vec<Tile> = Vec::new();
        let mut places: Vec<Vec<usize>> = Vec::with_capacity(option.pictures.len());
        let mut largest = 0;
        for (picture, joints) in option.pictures.iter().enumerate() {
            let begins = blocks.len();
            let mut own = Vec::with_capacity(joints.len());
            for section in joints.chunk_by(|one, next| one.section == next.section) {
                let swing = &option.movements[section[0].section];
                let swing = swings.iter().position(|known| known == swing).unwrap_or_else(|| {
                    swings.push(swing.clone());
                    swings.len() - 1
                });
                for joints in section.chunks(LANES) {
                    let mut block = Block::SHUT;
                    for (lane, joint) in joints.iter().enumerate() {
                        block.put(lane, joint, capability);
                        own.push(blocks.len() * LANES + lane);
                    }
                    let goes_on = |tile: &&mut Tile| {
                        (tile.picture, tile.swing) == (picture, swing) && tile.blocks.len() < TILE
                    };
                    match tiles.last_mut().filter(goes_on) {
                        Some(tile) => tile.blocks.end += 1,
                        None => tiles.push(Tile {
                            blocks: blocks.len()..blocks.len() + 1,
                            swing,
                            picture,
                            first: (blocks.len() - begins) * LANES,
                        }),
                    }
                    blocks.push(block);
                }
            }
            largest = largest.max((blocks.len() - begins) * LANES);
            places.push(own);
        }
        let most = |of: fn(&Block, usize) -> f32| {
            let lanes = blocks.iter().flat_map(|block| (0..LANES).map(move |lane| (block, lane)));
            lanes
                .map(|(block, lane)| of(block, lane) + 5.0 * block.scatter[lane])
                .fold(f32::NEG_INFINITY, f32::max)
        };
        let lengths =
            option.pictures.iter().map(|own| own.iter().map(|joint| joint.length.to_m()).sum::<f64>());
        let most_open = lengths.map(|length| single(rule.open_share.to_fraction() * length)).collect();
        Self {
            weakest: (
                most(|block, lane| block.stretch[lane] + block.stretch_behind[lane]),
                most(|block, lane| block.squeeze[lane] + block.squeeze_behind[lane]),
                most(|block, lane| block.paint[lane]),
            ),
            most_open,
            widest: single(rule.widest.to_mm().max(1e-6).ln()),
            blocks,
            tiles,
            swings,
            places,
            picture_of: Arc::clone(&option.picture_of),
            largest,
        }
    }

    /// Number of plausible worlds.
    pub fn worlds(&self) -> usize {
        self.swings.iter().map(|swing| swing.worlds.len()).max().unwrap_or(0)
    }

    /// Number of joints.
    pub fn joints(&self) -> usize {
        self.places.first().map_or(0, Vec::len)
    }

    /// Number of places, those that fill up blocks included.
    pub const fn places(&self) -> usize {
        self.largest
    }

    /// Puts the option through trials.
    pub fn tried(&self, trials: &Trials) -> Tally {
        let mut asked = Vec::with_capacity(trials.trials.len() * self.swings.len());
        let mut tried: Vec<Tried> =
            trials.trials.iter().filter_map(|trial| self.begun(trial, &mut asked)).collect();
        let mut openings = vec![[0.0; LANES]; self.blocks.len()];
        let level = Level::new();
        for Tile { blocks: at, swing, picture, first } in &self.tiles {
            let (blocks, openings) = (&self.blocks[at.clone()], &mut openings[at.clone()]);
            let normals = &trials.normals[*first..];
            let asked = asked.iter().skip(*swing).step_by(self.swings.len());
            let each = tried.iter_mut().zip(asked).filter(|(one, _)| one.picture == *picture);
            dispatch!(level, simd => each.for_each(|(one, asked)| {
                look(simd, blocks, &normals[one.from..], *asked, openings, one);
            }));
        }
        let called = vec![0; self.worlds()];
        let mut tally = Tally {
            callbacks: 0,
            without_paint: 0,
            opens: 0.0,
            opens_if_called: 0.0,
            called_without_paint: called.clone(),
            called,
            openings,
        };
        for one in &tried {
            let [length, of_beads] = [&one.length, &one.of_beads].map(|lanes| lanes.iter().sum::<f32>());
            let most_open = self.most_open[one.picture];
            let without_paint = u32::from(of_beads > most_open || one.wide_bead);
            tally.without_paint += without_paint;
            tally.called_without_paint[one.world] += without_paint;
            tally.opens += f64::from(length);
            if length > most_open || one.wide {
                tally.callbacks += 1;
                tally.called[one.world] += 1;
                tally.opens_if_called += f64::from(length);
            }
        }
        tally
    }

    /// What a trial asks of each swing; `None` where not even a joint five deviations out would open.
    fn begun(&self, trial: &Trial, asked: &mut Vec<Asked>) -> Option<Tried> {
        let sealant = single(trial.sealant);
        let begins = asked.len();
        let log = |share: f64| single(share.max(1e-9).ln());
        asked.extend(self.swings.iter().map(|swing| {
            let (narrows, widens) = swing.worlds.get(trial.world).copied().unwrap_or_default();
            let (narrows, widens) = (log(narrows), log(widens));
            let (through, paint) = (single(trial.through), single(trial.paint));
            Asked { narrows, widens, sealant, through, paint, widest: self.widest - narrows }
        }));
        let farthest = |asked: &Asked| (self.weakest.0 + asked.narrows).max(self.weakest.1 + asked.widens);
        let holds = |asked: &Asked| {
            farthest(asked) <= sealant.min(0.0) && self.weakest.2 + asked.narrows <= asked.paint
        };
        if asked[begins..].iter().all(holds) {
            asked.truncate(begins);
            return None;
        }
        let (from, world) = (trial.from, trial.world);
        let none = [0.0; LANES];
        let picture = self.picture_of.get(world).copied().unwrap_or(0);
        Some(Tried { from, world, picture, length: none, of_beads: none, wide: false, wide_bead: false })
    }
}

/// What one trial asks of joints that move alike; logarithms.
#[derive(Debug, Clone, Copy)]
struct Asked {
    narrows: f32,
    widens: f32,
    /// How much more than usual the sealant takes.
    sealant: f32,
    /// How far tears come through, 0 to 1.
    through: f32,
    /// How much more than usual paint takes.
    paint: f32,
    /// Openings of a joint whose width and movement come to more than this are too wide.
    widest: f32,
}

/// What has opened so far in a trial.
#[derive(Debug, Clone, Copy)]
struct Tried {
    /// Where its normals begin.
    from: usize,
    /// The world it is in.
    world: usize,
    /// The picture that world has of the joints.
    picture: usize,
    /// Open length, lane by lane, m.
    length: [f32; LANES],
    /// The same of failed beads and bare joints, without sound beads under cracked paint.
    of_beads: [f32; LANES],
    /// Whether one opening is too wide.
    wide: bool,
    /// The same without paint.
    wide_bead: bool,
}

/// Looks at some blocks in one trial. There are no branches in the loop: whether a joint opens is a
/// toss, and a branch on it would be guessed wrongly.
#[inline(always)]
fn look<S: Simd>(
    simd: S,
    blocks: &[Block],
    normals: &[f32],
    asked: Asked,
    openings: &mut [[f32; LANES]],
    tried: &mut Tried,
) {
    let load = |lanes: &[f32; LANES]| f32x8::simd_from(simd, *lanes);
    let all = |value: f32| f32x8::splat(simd, value);
    let (narrows, widens, sealant, widest) =
        (all(asked.narrows), all(asked.widens), all(asked.sealant), all(asked.widest));
    let (through, paint) = (all(asked.through), all(asked.paint));
    let (none, one) = (all(0.0), all(1.0));
    let (mut length, mut of_beads) = (load(&tried.length), load(&tried.of_beads));
    // What is so counts 1, what is not 0: sums and largest ones are faster than masks put together.
    let (mut wide, mut wide_bead) = (none, none);
    for ((block, normals), count) in blocks.iter().zip(normals.as_chunks().0).zip(openings) {
        let normal = load(normals);
        let scattered = load(&block.scatter) * normal;
        let stretch = load(&block.stretch) + load(&block.stretch_behind) * through + narrows;
        let squeeze = load(&block.squeeze) + load(&block.squeeze_behind) * through + widens;
        let fails = (stretch.max(squeeze) + scattered).simd_gt(load(&block.sealed) * sealant);
        let fails = fails.select(one, none);
        let opens = (load(&block.paint) + narrows + scattered).simd_gt(paint).select(one, fails);
        *count = (load(count) + opens).into();
        let run = load(&block.length);
        length += opens * run;
        of_beads += fails * run;
        let is_wide = (load(&block.across) + load(&block.moves) * normal).simd_gt(widest);
        let is_wide = is_wide.select(one, none);
        wide = wide.max(opens * is_wide);
        wide_bead = wide_bead.max(fails * is_wide);
    }
    tried.length = length.into();
    tried.of_beads = of_beads.into();
    let any = |lanes: [f32; LANES]| lanes.iter().any(|lane| *lane > 0.0);
    tried.wide |= any(wide.into());
    tried.wide_bead |= any(wide_bead.into());
}

/// What one batch of trials counts.
#[derive(Debug)]
pub(super) struct Tally {
    /// Trials with a callback.
    pub callbacks: u32,
    /// Those that have one without paint that cracks over sound beads.
    pub without_paint: u32,
    /// Sum of open lengths, m.
    pub opens: f64,
    /// The same of the trials with a callback.
    pub opens_if_called: f64,
    /// Trials with a callback in each world.
    pub called: Vec<u32>,
    /// The same without paint that cracks over sound beads.
    pub called_without_paint: Vec<u32>,
    /// How often each place opened; whole numbers.
    openings: Vec<[f32; LANES]>,
}

impl Tally {
    /// How often a joint opened.
    pub fn openings(&self, ready: &Ready, joint: usize) -> f64 {
        let places = ready.places.iter().map(|own| self.openings.as_flattened()[own[joint]]);
        places.map(f64::from).sum()
    }
}
