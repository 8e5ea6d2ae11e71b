//! The boards that are to go up, and the chance that their joints stay as they should.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use statrs::function::erf::erfc;

use super::movement::Movement;
use super::stack::StackFigures;
use crate::measure::{Angle, Length, Moisture};
use crate::surface::Fixing;
use crate::wood::{Species, shrinkage, width_change};

/// What becomes of the joints.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum Joints {
    /// They stay open: a shadow line.
    #[default]
    Open,
    /// They are caulked.
    Sealed,
}

impl Joints {
    /// All of them, in the order offered.
    pub const ALL: [Self; 2] = [Self::Open, Self::Sealed];

    /// As a key, to select a message by.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Open => "open",
            Self::Sealed => "sealed",
        }
    }

    /// The other way.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Open => Self::Sealed,
            Self::Sealed => Self::Open,
        }
    }
}

/// Boards that are to go up, as their joints see them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlannedBoards<'a> {
    /// Their species.
    pub species: &'a Species,
    /// Their growth rings' angle to the face.
    pub ring: Angle,
    /// Their width that shows.
    pub width: Length,
    /// Where they are nailed.
    pub fixing: Fixing,
    /// How many joints there will be between them.
    pub count: usize,
    /// What becomes of the joints.
    pub joints: Joints,
    /// No joint may open wider.
    pub rule: Length,
    /// The chance asked for that none does, 0 to 1.
    pub asked: f64,
}

/// Chances of an install.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Chances {
    /// That no joint opens beyond the rule and the boards don't buckle.
    pub holds: f64,
    /// That some joint opens beyond the rule.
    pub opens: f64,
    /// That the boards buckle.
    pub buckles: f64,
}

/// Probability that a standard normal number is below `z`.
pub(super) fn below(z: f64) -> f64 {
    0.5 * erfc(-z * std::f64::consts::FRAC_1_SQRT_2)
}

impl PlannedBoards<'_> {
    /// Shares of a board's movement that show at its two edges. Boards nailed at both edges pull anyway:
    /// nails give or the wood splits.
    fn shares(&self) -> (f64, f64) {
        match (self.fixing.at_groove(), self.fixing.at_tongue()) {
            (groove, tongue) if groove + tongue > 0.0 => (groove, tongue),
            _ => (0.5, 0.5),
        }
    }

    /// The chances in one world: boards that are `moisture` wet on average and differ by `spread`, both
    /// per cent, are hung with `gap` at each joint; the lot shrinks by the factor `lot` against its
    /// species and the room takes them from `extremes.0` to `extremes.1` per cent.
    pub fn in_world(
        &self,
        (moisture, spread): (f64, f64),
        lot: f64,
        extremes: (f64, f64),
        gap: Length,
        figures: &StackFigures,
    ) -> Chances {
        let (groove, tongue) = self.shares();
        let across = self.width.to_mm() * (groove + tongue);
        // A joint takes its movement from one board or half each from two that differ.
        let apart = self.width.to_mm() * groove.hypot(tongue);
        let (hung, dry) = (Moisture::pct(moisture), Moisture::pct(extremes.0.min(moisture)));
        let damp = Moisture::pct(extremes.1.max(moisture));
        let opened = lot * shrinkage(self.species, self.ring, hung, dry);
        let swollen = lot * width_change(self.species, self.ring, hung, damp);
        let point = lot * self.species.coefficient(self.ring);
        let wood = spread.hypot(figures.piece_in_room.sd) * point;
        let differs = |moves: f64| apart * wood.hypot(figures.piece_shrinkage.sd * moves);
        let limit = match self.joints {
            Joints::Open => self.rule.to_mm() - gap.to_mm(),
            Joints::Sealed => self.rule.to_mm(),
        };
        let scatter = differs(opened).hypot(WORKMANSHIP);
        let one = below((limit - across * opened) / scatter);
        #[expect(clippy::cast_precision_loss, reason = "a count of joints")]
        let count = self.count.max(1) as f64;
        let all = one.powf(count);
        // Boards buckle together: what counts is the row's mean swelling against what its joints give.
        let share = |pct: f64| self.width.to_mm() * pct / 100.0;
        let row = (differs(swollen) / count.sqrt()).hypot(share(figures.gives_way.sd));
        let room = gap.to_mm() + share(figures.gives_way.middle);
        let lies = below((room - across * swollen) / row);
        Chances { holds: all * lies, opens: 1.0 - all, buckles: 1.0 - lies }
    }

    /// The chances over all worlds, boards being as `wet(world)` says: mean and spread, per cent.
    pub fn chances(
        &self,
        worlds: &Movement,
        gap: Length,
        figures: &StackFigures,
        wet: impl Fn(usize) -> (f64, f64),
    ) -> Chances {
        self.weighed(worlds, gap, figures, wet, |_| 1.0)
    }

    /// The same where worlds count as `weight(world)` says.
    pub(super) fn weighed(
        &self,
        worlds: &Movement,
        gap: Length,
        figures: &StackFigures,
        wet: impl Fn(usize) -> (f64, f64),
        weight: impl Fn(usize) -> f64,
    ) -> Chances {
        let (mut sum, mut all) = (Chances::default(), 0.0);
        for (world, (lot, extremes)) in worlds.lot.iter().zip(&worlds.extremes).enumerate() {
            let weight = weight(world);
            // What counts for nothing need not be worked out.
            if weight > 0.0 {
                let own = self.in_world(wet(world), *lot, *extremes, gap, figures);
                sum.holds += weight * own.holds;
                sum.opens += weight * own.opens;
                sum.buckles += weight * own.buckles;
                all += weight;
            }
        }
        let all = if all > 0.0 { all } else { 1.0 };
        Chances { holds: sum.holds / all, opens: sum.opens / all, buckles: sum.buckles / all }
    }
}

/// How joints of one row differ when they are hung, mm. Assumption.
const WORKMANSHIP: f64 = 0.1;
