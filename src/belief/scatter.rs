//! How the joints of a section differ from each other, and which of them get measured.
//!
//! Boards of one lot narrow by different amounts, were laid with different gaps, and where paint bonds
//! them, several open at one joint and none at the next. Somebody who measures may rather take the wide
//! joints. None of that is known, so [`SETS`] sets of it are tried, spread evenly by a low-discrepancy
//! sequence.

use std::sync::LazyLock;

use super::evidence::below;

/// Openings of the grid run between these, mm.
const OPENINGS: (f64, f64) = (-4.0, 26.0);
/// Points of the grid.
pub(super) const POINTS: usize = 80;
/// Sets of what joints differ by.
const SETS: u32 = 32;
/// Boards in a bonded group at most.
const MOST_BONDED: u32 = 14;
/// Picked joints are taken by their gap and this, mm. Assumption.
const PICK: f64 = 0.3;
/// How much joints of a wetted part differ, a share of what they opened besides. Assumption.
const WETTED_SCATTER: f64 = 0.35;
/// Points and shares that stand for a standard normal (Gauss and Hermite).
const NORMAL: [(f64, f64); 5] = [
    (-2.856_970, 0.011_257_4),
    (-1.355_626, 0.222_075_9),
    (0.0, 0.533_333_4),
    (1.355_626, 0.222_075_9),
    (2.856_970, 0.011_257_4),
];

/// What joints of a section differ by, in one set.
#[derive(Debug, Clone)]
pub(super) struct Set {
    /// Its number.
    pub index: usize,
    /// Scatter in proportion to the opening, and whatever the opening, mm.
    pub relative: f64,
    pub fixed: f64,
    /// Gap left when the boards were laid, mm.
    pub laid: f64,
    /// Boards in a group on average, and whether groups are much alike.
    pub group: f64,
    alike: bool,
    /// With which power of its width a joint gets measured rather than another: 0 by chance, 2 where
    /// only the wide ones are looked at.
    pub picked: i32,
    /// Wetted part along the row, and by how much more it opened, mm.
    pub wetted: (f64, f64, f64),
}

/// The additive-recurrence sequence of Roberts (2018) in nine dimensions: quantile `dimension` of
/// set `index`.
fn quantile(index: u32, dimension: i32) -> f64 {
    // The positive root of x^10 = x + 1.
    const ROOT: f64 = 1.075_766_066_086_837_1;
    (0.5 + f64::from(index + 1) * ROOT.powi(-(dimension + 1))).fract().clamp(1e-6, 1.0 - 1e-6)
}

impl Set {
    fn new(index: u32) -> Self {
        let q = |dimension| quantile(index, dimension);
        let (middle, half) = (q(6), if q(7) < 0.5 { 2.0 } else { (q(7) - 0.5) / 1.5 });
        Self {
            index: index as usize,
            relative: 0.08 + 0.3 * q(0),
            fixed: 0.05 + 0.4 * q(1) * q(1),
            laid: -0.15 * (1.0 - q(2)).ln(),
            group: 1.8 + 6.2 * q(3) * q(3),
            alike: q(4) < 0.5,
            // Half of the people measure as it comes.
            picked: match q(5) {
                ..0.5 => 0,
                ..0.875 => 1,
                _ => 2,
            },
            // Half of the wettings take the whole section.
            wetted: (middle - half, middle + half, 0.5 + 5.5 * q(8)),
        }
    }

    /// All sets.
    pub fn all() -> Vec<Self> {
        (0..SETS).map(Self::new).collect()
    }

    /// Share of the row that was wetted.
    pub fn wet_share(&self) -> f64 {
        (self.wetted.1.min(1.0) - self.wetted.0.max(0.0)).max(0.0)
    }

    /// How often a bonded group that shows at a joint has this many boards.
    fn share(&self, boards: u32) -> f64 {
        let n = f64::from(boards);
        if self.alike {
            let z = (n - self.group) / 0.9;
            (-0.5 * z * z).exp()
        } else {
            (1.0 - 1.0 / self.group).powf(n - 1.0)
        }
    }
}

/// The density of a normal at `x`.
fn normal(x: f64, mean: f64, sd: f64) -> f64 {
    let z = (x - mean) / sd;
    (-0.5 * z * z).exp() * 0.398_942_280_401_432_7 / sd
}

/// Mean and mean square of a gap that is normal and never below nothing.
fn moments_of_open(group: &Group) -> Moments {
    let Group { middle, sd, shut, .. } = *group;
    let mean = middle * (1.0 - shut) + sd * sd * normal(0.0, middle, sd);
    Moments { mean, square: middle * mean + sd * sd * (1.0 - shut) }
}

/// Mean and mean square of the gaps of some joints, mm and mm².
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct Moments {
    pub mean: f64,
    pub square: f64,
}

impl Moments {
    /// Of joints of which a share `other` are these others.
    pub fn with(self, other: Self, share: f64) -> Self {
        Self {
            mean: self.mean + share * (other.mean - self.mean),
            square: self.square + share * (other.square - self.square),
        }
    }

    /// The mean of what a gap gets measured by, for this power of it.
    fn picked_by(self, power: i32) -> f64 {
        match power {
            0 => 1.0,
            1 => self.mean + PICK,
            _ => self.square + 2.0 * PICK * self.mean + PICK * PICK,
        }
    }

    pub fn sd(self) -> f64 {
        (self.square - self.mean * self.mean).max(0.0).sqrt()
    }
}

/// The joint that shows of a group of boards: a gap that is normal and never below nothing.
#[derive(Debug, Clone, Copy)]
struct Group {
    /// How many of all joints are such a joint.
    share: f64,
    middle: f64,
    sd: f64,
    /// What readings of it scatter by, the gauge's error included, and the chance that it is shut.
    read_sd: f64,
    shut: f64,
}

impl Group {
    fn new(share: f64, middle: f64, sd: f64, gauge: f64) -> Self {
        Self { share, middle, sd, read_sd: sd.hypot(gauge), shut: below(-middle / sd) }
    }

    /// The density of reading `y`; `of_shut` is its density where the joint is shut.
    fn density(&self, y: f64, gauge: f64, of_shut: f64) -> f64 {
        let both = self.read_sd;
        let open = normal(y, self.middle, both);
        // Given the reading, the chance that the gap is above nothing.
        let middle = (self.middle * gauge * gauge + y * self.sd * self.sd) / (both * self.sd * gauge);
        let above = if middle > 6.0 { 1.0 } else { below(middle) };
        open * above + self.shut * of_shut
    }
}

/// How the gaps of a section's joints are spread, for one set and opening.
pub(super) struct Density<'a> {
    pub set: &'a Set,
    pub opening: f64,
    gauge: f64,
    /// The joints that show, of the boards as they dried and of the wetted part.
    dry: Vec<Group>,
    wet: Vec<Group>,
    /// Share of joints that never open, because their boards are bonded.
    never: f64,
}

impl<'a> Density<'a> {
    pub fn new(set: &'a Set, opening: f64, gauge: f64, bonded: bool) -> Self {
        let groups: Vec<(f64, f64)> = if bonded {
            let all: f64 = (1..=MOST_BONDED).map(|n| set.share(n)).sum();
            let shares = (1..=MOST_BONDED).map(|n| (f64::from(n), set.share(n) / all));
            shares.filter(|(_, share)| *share > 0.01).collect()
        } else {
            vec![(1.0, 1.0)]
        };
        let boards: f64 = groups.iter().map(|(n, share)| n * share).sum();
        let of = |more: f64| -> Vec<Group> {
            let each = groups.iter().map(|&(n, share)| {
                let relative = n * (set.relative * opening).powi(2);
                let sd = (relative + set.fixed * set.fixed + (WETTED_SCATTER * more).powi(2)).sqrt();
                Group::new(share / boards, n * opening + set.laid + more, sd, gauge)
            });
            each.collect()
        };
        let showing: f64 = groups.iter().map(|(_, share)| share / boards).sum();
        Self { set, opening, gauge, dry: of(0.0), wet: of(set.wetted.2), never: 1.0 - showing }
    }

    fn groups(&self, wet: bool) -> &[Group] {
        if wet { &self.wet } else { &self.dry }
    }

    /// Of the gaps of all joints, as they dried or wetted.
    pub fn moments(&self, wet: bool) -> Moments {
        let each = self.groups(wet).iter().map(|group| (group.share, moments_of_open(group)));
        each.fold(Moments::default(), |sum, (share, own)| Moments {
            mean: sum.mean + share * own.mean,
            square: sum.square + share * own.square,
        })
    }

    /// The density of a reading at a joint as it dried or wetted, if it was taken as it came.
    pub fn of(&self, y: f64, wet: bool) -> f64 {
        let of_shut = normal(y, 0.0, self.gauge);
        let each = self.groups(wet).iter();
        let shows: f64 = each.map(|group| group.share * group.density(y, self.gauge, of_shut)).sum();
        shows + self.never * of_shut
    }

    /// How much rather than another a joint this wide gets measured, where all joints are like this.
    pub fn picks(&self, y: f64, all: Moments) -> f64 {
        (y + PICK).powi(self.set.picked) / all.picked_by(self.set.picked)
    }

    /// Of the joints that nobody measured where a share `seen` was. `wet` is the share of joints that
    /// opened besides because they got wet.
    ///
    /// Joints are taken one after the other; after so many each is still there with a chance that falls
    /// exponentially with how much it gets picked.
    pub fn unseen(&self, wet: f64, seen: f64) -> Moments {
        let all = self.moments(false).with(self.moments(true), wet);
        let rate = -(1.0 - seen).max(1e-3).ln() / all.picked_by(self.set.picked);
        let stays = |y: f64| (-rate * (y + PICK).powi(self.set.picked)).exp();
        let (mut sum, mut mean, mut square) = (0.0, 0.0, 0.0);
        let mut add = |y: f64, share: f64| {
            let share = share * stays(y);
            sum += share;
            mean += share * y;
            square += share * y * y;
        };
        for (groups, part) in [(&self.dry, 1.0 - wet), (&self.wet, wet)] {
            for group in groups.iter().filter(|_| part > 0.0) {
                for (z, weight) in NORMAL {
                    add((group.middle + z * group.sd).max(0.0), part * group.share * weight);
                }
            }
        }
        add(0.0, self.never);
        let sum = sum.max(1e-300);
        Moments { mean: mean / sum, square: square / sum }
    }
}

/// Mean gap by opening at the points of the grid: as boards dry, and of the wetted ones.
type Curve = [[f64; POINTS]; 2];

/// The curves of all sets, without and with bonded groups.
static CURVES: LazyLock<Vec<[Curve; 2]>> = LazyLock::new(|| {
    let of = |set: &Set| {
        [false, true].map(|bonded| {
            [false, true].map(|wet| {
                std::array::from_fn(|point| {
                    Density::new(set, opening_of(point), 1.0, bonded).moments(wet).mean
                })
            })
        })
    };
    Set::all().iter().map(of).collect()
});

/// How the mean gap of a section's joints goes with how far its boards have opened, in one world.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Opening {
    pub(super) set: usize,
    pub(super) bonded: bool,
    /// Share of the joints that got wet.
    pub(super) wet: f64,
    /// The section's own opening today, mm.
    pub(super) today: f64,
}

impl Opening {
    fn mean(&self, opening: f64) -> f64 {
        let (below, share) = place_of(opening);
        let curves = &CURVES[self.set][usize::from(self.bonded)];
        let at = |curve: &[f64; POINTS]| curve[below] + (curve[below + 1] - curve[below]) * share;
        let dry = at(&curves[0]);
        if self.wet > 0.0 { dry + self.wet * (at(&curves[1]) - dry) } else { dry }
    }

    /// How much the mean gap changes when every board opens by `moved` mm more.
    pub fn change(&self, moved: f64) -> f64 {
        self.mean(self.today + moved) - self.mean(self.today)
    }
}

/// Points of the grid lie closer where openings are small.
#[expect(clippy::cast_precision_loss, reason = "a hundred points")]
pub(super) fn opening_of(point: usize) -> f64 {
    let low = -(-OPENINGS.0).sqrt();
    let root = low + (OPENINGS.1.sqrt() - low) * point as f64 / (POINTS - 1) as f64;
    root * root.abs()
}

/// The last point that is not after an opening, and how far the opening is on the way to the next.
#[expect(
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "held to the grid"
)]
pub(super) fn place_of(opening: f64) -> (usize, f64) {
    let low = -(-OPENINGS.0).sqrt();
    let root = opening.signum() * opening.abs().sqrt();
    let at = (root - low) / (OPENINGS.1.sqrt() - low) * (POINTS - 1) as f64;
    let at = at.clamp(0.0, (POINTS - 1) as f64 - 1e-9);
    (at as usize, at.fract())
}
