//! How the joints of a section differ from each other, and which of them get measured.
//!
//! Boards of one lot narrow by different amounts, were laid with different gaps, and where paint bonds
//! them, several open at one joint and none at the next. Somebody who measures may rather take the wide
//! joints. None of that is known, so [`SETS`] sets of it are tried, spread evenly.

use std::sync::LazyLock;

use rand::SeedableRng as _;
use rand::seq::SliceRandom as _;
use rand_xoshiro::Xoshiro256PlusPlus;
use statrs::distribution::{ContinuousCDF as _, Normal};

use super::evidence::{below, chosen};

/// Openings of the grid run between these, mm.
const OPENINGS: (f64, f64) = (-4.0, 26.0);
/// Points of the grid.
pub(super) const POINTS: usize = 80;
/// Sets of what joints differ by.
const SETS: u32 = 32;
/// Seed of the order in which their figures are put together.
const ORDER: u64 = 1;
/// Boards in a bonded group at most.
const MOST_BONDED: u32 = 14;
/// Picked joints are taken by their gap and this, mm. Assumption.
pub(super) const PICK: f64 = 0.3;
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

impl Set {
    /// The set at these quantiles, 0 to 1, of each of the nine figures in which sets differ.
    pub fn at(q: impl Fn(i32) -> f64) -> Self {
        let (middle, half) = (q(6), if q(7) < 0.5 { 2.0 } else { (q(7) - 0.5) / 1.5 });
        Self {
            index: 0,
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

    /// All sets: each figure of a set in a layer of its own, in an order that has nothing to do with that of the
    /// others (Latin hypercube sampling).
    pub fn all() -> Vec<Self> {
        let mut random = Xoshiro256PlusPlus::seed_from_u64(ORDER);
        let layers: [Vec<f64>; 9] = std::array::from_fn(|_| {
            let mut layers: Vec<f64> =
                (0..SETS).map(|layer| (f64::from(layer) + 0.5) / f64::from(SETS)).collect();
            layers.shuffle(&mut random);
            layers
        });
        let set = |index: usize| {
            let quantile = |dimension: i32| usize::try_from(dimension).map_or(0.5, |at| layers[at][index]);
            Self { index, ..Self::at(quantile) }
        };
        (0..SETS as usize).map(set).collect()
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
    pub fn sd(self) -> f64 {
        (self.square - self.mean * self.mean).max(0.0).sqrt()
    }
}

/// Which joints get measured.
///
/// Joints are taken one after the other, the wide ones rather: as if each waited for its turn, for a time that is
/// exponential with how much it gets picked, and measuring stopped once so many had theirs. So a wide joint is taken
/// more often than its share, but no joint twice.
#[derive(Debug, Clone, Copy)]
pub(super) struct Picks {
    power: i32,
    rate: f64,
    /// The share of joints that was measured.
    seen: f64,
}

impl Picks {
    /// The chance that a joint that looks this wide, in mm, is passed over.
    pub fn passes(&self, y: f64) -> f64 {
        (-self.rate * (y + PICK).powi(self.power)).exp()
    }

    /// How much rather than another a joint that looks this wide gets measured.
    pub fn takes(&self, y: f64) -> f64 {
        (1.0 - self.passes(y)) / self.seen
    }
}

/// The joint that shows of a group of boards: a gap that is normal and never below nothing.
#[derive(Debug, Clone, Copy)]
struct Group {
    /// How many boards.
    boards: f64,
    /// How many of all joints are such a joint.
    share: f64,
    middle: f64,
    sd: f64,
    /// What readings of it scatter by, the gauge's error included, and the chance that it is shut.
    read_sd: f64,
    shut: f64,
}

impl Group {
    fn new((boards, share): (f64, f64), middle: f64, sd: f64, gauge: f64) -> Self {
        Self { boards, share, middle, sd, read_sd: sd.hypot(gauge), shut: below(-middle / sd) }
    }

    /// The density of reading `y`; `of_shut` is its density where the joint is shut.
    fn density(&self, y: f64, gauge: f64, of_shut: f64) -> f64 {
        let (density, z) = self.normal_at(y, gauge);
        density * above_zero(z) + self.shut * of_shut
    }

    /// The density of reading `y` if the gap were a normal with no end at nothing, and by how many of its
    /// standard deviations the gap then is above nothing, given the reading.
    fn normal_at(&self, y: f64, gauge: f64) -> (f64, f64) {
        let both = self.read_sd;
        let middle = self.middle * gauge * gauge + y * self.sd * self.sd;
        (normal(y, self.middle, both), middle / (both * self.sd * gauge))
    }

    /// The density of reading `y` where the joint is open, and the same times the gap's mean and mean square
    /// given that reading.
    fn moments_at(&self, y: f64, gauge: f64) -> [f64; 3] {
        let (density, z) = self.normal_at(y, gauge);
        let (above, sd) = (above_zero(z), self.sd * gauge / self.read_sd);
        let mean = sd * (z * above + normal(z, 0.0, 1.0));
        [above, mean, sd * (z * mean + sd * above)].map(|moment| density * moment)
    }
}

/// The chance that a normal is above nothing whose mean is `z` standard deviations above it.
fn above_zero(z: f64) -> f64 {
    if z > 6.0 { 1.0 } else { below(z) }
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
                Group::new((n, share / boards), n * opening + set.laid + more, sd, gauge)
            });
            each.collect()
        };
        let showing: f64 = groups.iter().map(|(_, share)| share / boards).sum();
        Self { set, opening, gauge, dry: of(0.0), wet: of(set.wetted.2), never: 1.0 - showing }
    }

    fn groups(&self, wet: bool) -> &[Group] {
        if wet { &self.wet } else { &self.dry }
    }

    /// The gap of one joint in mm, as it dried or wetted: the one after a share `at` of all, which is `z`
    /// standard deviations from the middle of its like. Holds its place at any opening.
    pub fn gap(&self, wet: bool, at: f64, z: f64) -> f64 {
        let mut left = at;
        let own = self.groups(wet).iter().find(|group| {
            left -= group.share;
            left < 0.0
        });
        own.map_or(0.0, |group| (group.middle + z * group.sd).max(0.0))
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

    /// The gap of a joint at which `y` was read, as it dried or wetted. `as_read` is the density of readings that
    /// stand for themselves, whatever the other joints are like.
    pub fn given(&self, y: f64, wet: bool, as_read: f64) -> Moments {
        let (mut sum, mut mean, mut square) =
            (as_read, as_read * y, as_read * (y * y + self.gauge * self.gauge));
        let of_shut = normal(y, 0.0, self.gauge);
        sum += self.never * of_shut;
        for group in self.groups(wet) {
            let [open, of_mean, of_square] = group.moments_at(y, self.gauge);
            sum += group.share * (open + group.shut * of_shut);
            mean += group.share * of_mean;
            square += group.share * of_square;
        }
        Moments { mean: mean / sum, square: square / sum }
    }

    /// Which joints got measured of all of which a share `wet` opened besides because they got wet, where a share
    /// `seen` was.
    pub fn picks(&self, wet: f64, seen: f64) -> Picks {
        let power = self.set.picked;
        let stays = (1.0 - seen).max(1e-3);
        let weights: Vec<(f64, f64)> =
            self.looks(wet).map(|(y, share)| ((y + PICK).powi(power), share)).collect();
        let mean: f64 = weights.iter().map(|(weight, share)| weight * share).sum();
        let mut rate = -stays.ln() / mean;
        // Newton's steps from below: what stays is a convex sum of exponentials.
        for _ in 0..if power == 0 { 0 } else { 6 } {
            let (left, falls) = weights.iter().fold((0.0, 0.0), |(left, falls), (weight, share)| {
                let own = share * (-rate * weight).exp();
                (left + own, falls + weight * own)
            });
            rate += (left - stays).max(0.0) / falls.max(1e-12);
        }
        Picks { power, rate, seen }
    }

    /// How joints look to whoever measures, with the shares of those that look so.
    fn looks(&self, wet: f64) -> impl Iterator<Item = (f64, f64)> {
        let open = [(&self.dry, 1.0 - wet), (&self.wet, wet)].into_iter().flat_map(|(groups, part)| {
            groups.iter().filter(move |_| part > 0.0).flat_map(move |group| {
                let look =
                    move |(z, weight): (f64, f64)| ((group.middle + z * group.read_sd).max(0.0), weight);
                NORMAL.into_iter().map(look).map(move |(y, weight)| (y, part * group.share * weight))
            })
        });
        let shut = NORMAL.into_iter().map(|(z, weight)| ((z * self.gauge).max(0.0), self.never * weight));
        open.chain(shut)
    }

    /// Of the joints that nobody measured where a share `seen` was. `wet` is the share of joints that
    /// opened besides because they got wet.
    pub fn unseen(&self, wet: f64, seen: f64) -> Moments {
        let picks = self.picks(wet, seen);
        let (mut sum, mut mean, mut square) = (0.0, 0.0, 0.0);
        let mut add = |y: f64, share: f64| {
            let share = share * picks.passes(y);
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

    /// One of the joints that nobody measured, drawn by two numbers from 0 to 1: which kind, and how wide for its kind.
    fn unseen_joint(&self, (wet, seen): (f64, f64), kind: f64, width: f64) -> PlausibleJoint {
        let picks = self.picks(wet, seen);
        let kinds = self.dry.iter().map(|group| (group, 1.0 - wet));
        let kinds: Vec<(&Group, f64)> = kinds.chain(self.wet.iter().map(|group| (group, wet))).collect();
        let share = |(group, part): &(&Group, f64)| -> f64 {
            let each = NORMAL
                .iter()
                .map(|(z, weight)| weight * picks.passes((group.middle + z * group.sd).max(0.0)));
            part * group.share * each.sum::<f64>()
        };
        let never = std::iter::once(self.never * picks.passes(0.0));
        let logs: Vec<f64> =
            kinds.iter().map(share).chain(never).map(|share| share.max(1e-300).ln()).collect();
        match kinds.get(chosen(&logs, kind)) {
            Some((group, _)) => {
                let z = Normal::standard().inverse_cdf(width.clamp(1e-3, 1.0 - 1e-3));
                PlausibleJoint { gap: (group.middle + z * group.sd).max(0.0), boards: group.boards }
            }
            None => PlausibleJoint { gap: 0.0, boards: 0.0 },
        }
    }

    /// How many boards open at a joint that reads `y`, on average over what it may be.
    fn boards_behind(&self, y: f64) -> f64 {
        let of_shut = normal(y, 0.0, self.gauge);
        let each =
            self.dry.iter().map(|group| (group.boards, group.share * group.density(y, self.gauge, of_shut)));
        let (boards, all) = each.fold((0.0, self.never * of_shut), |(boards, all), (n, likely)| {
            (boards + n * likely, all + likely)
        });
        boards / all.max(1e-300)
    }
}

/// A joint that nobody measured, as it may be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct PlausibleJoint {
    /// Its gap, mm.
    pub gap: f64,
    /// How many boards open at it: none where its boards are bonded across it.
    pub boards: f64,
}

static ALL: LazyLock<Vec<Set>> = LazyLock::new(Set::all);

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

    /// The joints of its section today; `gauge` is how well gaps are read, mm.
    fn joints(&self, gauge: f64) -> Density<'static> {
        Density::new(&ALL[self.set], self.today, gauge, self.bonded)
    }

    /// One of the joints that nobody measured where a share `seen` was, drawn by two numbers from 0 to 1.
    pub(super) fn unseen_joint(&self, seen: f64, gauge: f64, (kind, width): (f64, f64)) -> PlausibleJoint {
        self.joints(gauge).unseen_joint((self.wet, seen), kind, width)
    }

    /// How many boards open at a joint that reads `gap` mm, on average over what it may be.
    pub(super) fn boards_behind(&self, gap: f64, gauge: f64) -> f64 {
        if self.bonded { self.joints(gauge).boards_behind(gap) } else { 1.0 }
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

#[cfg(test)]
mod tests {
    use super::*;

    /// The gap of a joint given its reading, against a sum over gaps a hundredth of a millimeter apart: Bayes' rule with
    /// nothing worked out beforehand.
    #[test]
    fn a_gap_given_its_reading_is_what_bayes_rule_says() {
        let gauge = 0.2;
        for (set, bonded, y) in [(3, false, 0.0), (3, false, 0.4), (11, true, 0.0), (20, true, 2.0)] {
            let sets = Set::all();
            let density = Density::new(&sets[set], 0.3, gauge, bonded);
            let (mut sum, mut mean) = (0.0, 0.0);
            let mut add = |gap: f64, prior: f64| {
                let weight = prior * normal(y, gap, gauge);
                sum += weight;
                mean += weight * gap;
            };
            add(0.0, density.never + density.dry.iter().map(|group| group.share * group.shut).sum::<f64>());
            for step in 0..2000 {
                let gap = 0.01 * (f64::from(step) + 0.5);
                let each = density.dry.iter().map(|group| group.share * normal(gap, group.middle, group.sd));
                add(gap, 0.01 * each.sum::<f64>());
            }
            let given = density.given(y, false, 0.0);
            assert!((given.mean - mean / sum).abs() < 2e-3, "{} for {}", given.mean, mean / sum);
        }
    }

    /// Where readings are told to stand for themselves, one far from all others does.
    #[test]
    fn a_joint_unlike_the_others_is_as_it_was_read() {
        let sets = Set::all();
        let density = Density::new(&sets[0], 0.3, 0.2, false);
        assert!((density.given(9.0, false, 2e-5).mean - 9.0).abs() < 1e-3);
    }
}
