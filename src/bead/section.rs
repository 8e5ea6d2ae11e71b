//! The section of a bead as it is laid: pure geometry, no strain.
//!
//! The joint's slot is `gap` wide with parallel walls. Toward the room the boards' edges are beveled
//! to a V, or left square. The bead fills the V up to a share of its depth, runs `depth` into the
//! slot, is tooled flush or hollow, and sinks as it cures. Here y points to the room from the bottom
//! of the V, x across the joint from its middle.

use serde::{Deserialize, Serialize};

use crate::measure::{Angle, Area, Length, Percent};

/// How the boards' edges meet the face.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum BoardEdge {
    /// A bevel on each board: `leg` is its width measured on the board's face, `angle` the slope of
    /// the bevel down from the face, 20 to 80 degrees; 45 for the common V.
    V {
        /// Width of the bevel on the face of one board.
        leg: Length,
        /// Slope of the bevel from the face.
        angle: Angle,
    },
    /// Square edges: a plain slot.
    Square,
}

/// How the bead's face is finished while it is wet.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Tooling {
    /// Straight from edge to edge.
    Flush,
    /// Hollow: the middle lies this share of the face's width below its edges.
    Concave(Percent),
}

/// What lies behind the bead.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Behind {
    /// Nothing: the back of the bead is free, and may move into the slot.
    Free,
    /// The tongue of one board, to which the bead bonds as a third side.
    Tongue,
    /// The tongue, or anything as hard, under bond-breaker tape: the bead can press on it, not pull.
    Breaker,
    /// Foam backer rod: the back of the bead is round, not bonded, and the foam gives way.
    Rod,
}

/// A bead as it is laid.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Section {
    /// Width of the slot at the time of sealing.
    pub gap: Length,
    /// The boards' edges.
    pub edge: BoardEdge,
    /// Share of the V's depth that the bead covers at its edges, 0 to 100 %. Without effect where the
    /// edges are square.
    pub fill: Percent,
    /// How far the bead reaches into the slot, from the bottom of the V.
    pub depth: Length,
    /// Finish of the face.
    pub tooling: Tooling,
    /// What is behind it.
    pub behind: Behind,
    /// Volume that is left after cure, as a share of the wet volume, over 0 to 100 %.
    pub solids: Percent,
}

/// Rise of a rod's top above its contact with the walls, in slot widths: a round rod 29 % wider than
/// the slot, the middle of the usual 25 to 33 %, that keeps its own radius where it is not held.
const ROD_RISE: f64 = 0.237;

/// The steepest that a face which sinks as it cures meets the boards: over the slope of a bevel; against a
/// slot's wall as it is.
const MOST_SLOPE: f64 = 0.35;
const MOST_SLOT_SLOPE: f64 = 1.0;
/// A face's edges do not draw back beyond this share of their height.
const LEAST_TOP: f64 = 0.2;

impl Section {
    /// A flush bead of 100 % solids, a start for the fields that are not named.
    pub const fn plain(gap: Length, edge: BoardEdge, fill: Percent, depth: Length, behind: Behind) -> Self {
        Self { gap, edge, fill, depth, tooling: Tooling::Flush, behind, solids: Percent::pct(100.0) }
    }

    /// The common V: a 45-degree bevel with this leg.
    pub const fn v(leg: Length) -> BoardEdge {
        BoardEdge::V { leg, angle: Angle::degrees(45.0) }
    }

    /// The cured outline in meters.
    pub(super) fn outline(&self) -> Outline {
        let half_gap = 0.5 * self.gap.to_m();
        let (v_depth, flare) = match self.edge {
            BoardEdge::V { leg, angle } => {
                let slope = angle.to_degrees().to_radians().tan();
                (leg.to_m() * slope, 1.0 / slope)
            }
            BoardEdge::Square => (0.0, 0.0),
        };
        let bottom_rise = if self.behind == Behind::Rod { ROD_RISE * self.gap.to_m() } else { 0.0 };
        let top = v_depth * self.fill.to_fraction();
        let mut outline =
            Outline { half_gap, flare, bottom: -self.depth.to_m(), top, top_sag: 0.0, bottom_rise };
        if let Tooling::Concave(share) = self.tooling {
            outline.top_sag = share.to_fraction() * 2.0 * outline.half_width(top);
        }
        outline.sink(1.0 - self.solids.to_fraction(), self.behind == Behind::Free);
        outline
    }

    /// Area of the cured bead.
    pub fn cured_area(&self) -> Area {
        Area::m2(self.outline().area())
    }

    /// Area of the wet bead: what must be pushed into a run of one meter, as m3 per meter.
    pub fn wet_area(&self) -> Area {
        let wet = Self { solids: Percent::pct(100.0), ..*self };
        Area::m2(wet.outline().area())
    }

    /// Thickness of the cured bead in its middle. Not positive if it sinks through.
    pub fn middle_thickness(&self) -> Length {
        let outline = self.outline();
        Length::m(outline.top - outline.top_sag - outline.bottom - outline.bottom_rise)
    }

    /// The cured bead between the boards.
    pub fn cured(&self) -> CuredBead {
        let outline = self.outline();
        CuredBead {
            top: Length::m(outline.top),
            depth: Length::m(-outline.bottom),
            face_hollow: Length::m(outline.top_sag),
            back_hollow: Length::m(outline.bottom_rise),
        }
    }

    /// Length along which the bead is bonded to one board, slot and bevel together.
    pub fn bond_length(&self) -> Length {
        let outline = self.outline();
        Length::m(outline.top * 1.0_f64.hypot(outline.flare) - outline.bottom)
    }
}

/// A cured bead between the boards. Its faces are parabolas.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CuredBead {
    /// Height of the edges of its face over the bottom of the V.
    pub top: Length,
    /// How far it reaches into the slot.
    pub depth: Length,
    /// How far the middle of its face lies below its edges.
    pub face_hollow: Length,
    /// How far the middle of its back lies above its edges.
    pub back_hollow: Length,
}

/// A section's outline in meters. Free faces are parabolas over the chord between their edges.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Outline {
    /// Half of the slot's width.
    pub half_gap: f64,
    /// Widening of each side per unit of height in the V.
    pub flare: f64,
    /// Height of the back's edges, 0 or less.
    pub bottom: f64,
    /// Height of the face's edges, 0 or more.
    pub top: f64,
    /// How far the middle of the face lies below its edges.
    pub top_sag: f64,
    /// How far the middle of the back lies above its edges.
    pub bottom_rise: f64,
}

impl Outline {
    /// Half of the width between the boards at this height.
    pub fn half_width(&self, y: f64) -> f64 {
        self.half_gap + self.flare * y.max(0.0)
    }

    /// Area of the section.
    pub fn area(&self) -> f64 {
        let slot = -2.0 * self.half_gap * self.bottom;
        let v = self.top * (self.half_gap + self.half_width(self.top));
        let hollows =
            self.half_width(self.top) * self.top_sag + self.half_width(self.bottom) * self.bottom_rise;
        slot + v - hollows * 4.0 / 3.0
    }

    /// Takes this share of the area out of the face and, if it is free, out of the back. Until it sets,
    /// sealant is under the same suction everywhere, so both hollow with the same curvature: as the square
    /// of their width. Edges hold where they stick until the face would meet the boards too flat; then they
    /// draw back. Assumption.
    fn sink(&mut self, lost: f64, free_back: bool) {
        if lost <= 0.0 {
            return;
        }
        let left = (1.0 - lost) * self.area();
        let (face, back) = (self.half_width(self.top), self.half_width(self.bottom));
        let cubes = face.powi(3) + if free_back { back.powi(3) } else { 0.0 };
        // A closed joint without a V has no face to sink, and no bead.
        if cubes <= 0.0 {
            return;
        }
        let curvature = lost * self.area() / (cubes * 4.0 / 3.0);
        self.top_sag += curvature * face.powi(2);
        if free_back {
            self.bottom_rise += curvature * back.powi(2);
        }
        if self.top_sag > self.deepest_sag() {
            self.draw_back(left);
        }
    }

    /// Draws the edges of the face back, its hollow as deep as it can be, until this much area is left. Under
    /// a fifth of their height they hold, and the bead gets shallower instead.
    fn draw_back(&mut self, left: f64) {
        let at = |top: f64| {
            let outline = Self { top, ..*self };
            Self { top_sag: outline.deepest_sag(), ..outline }
        };
        let (mut low, mut high) = (LEAST_TOP * self.top, self.top);
        for _ in 0..50 {
            let middle = f64::midpoint(low, high);
            if at(middle).area() > left { high = middle } else { low = middle }
        }
        *self = at(low);
        self.bottom += (self.area() - left).max(0.0) / (2.0 * self.half_gap);
    }

    /// The deepest that the face can be hollow before it meets the boards too flat.
    pub fn deepest_sag(&self) -> f64 {
        let slope = if self.top > 0.0 { MOST_SLOPE / self.flare } else { MOST_SLOT_SLOPE };
        0.5 * slope * self.half_width(self.top)
    }

    /// Slope of the face at its edges over the slope of the bevel, or over 1 in a slot. At 1 the edge
    /// has thinned to nothing.
    pub fn feather(&self) -> f64 {
        let slope = 2.0 * self.top_sag / self.half_width(self.top);
        if self.top > 0.0 { slope * self.flare } else { 0.0 }
    }
}
