//! How far a bead may be moved before it fails, by the gap it was laid in.
//!
//! A bead has two limits. Where it is seen, on its face and at its edges, it fails when the local stretch
//! there passes what the class's test bead shows. Out of sight, at the back or at the tongue, strain is
//! larger and passes it sooner: there it begins to tear, unseen. How far such a tear works its way to the
//! face nobody has measured in the open literature, so both limits are kept, as bounds: tears that stay
//! where they are, and tears that come through. A bead bonded to the tongue tears off it first, and then
//! works on as one with nothing behind it.
//!
//! Boards that slide along their joint strain the bead too. Stretch across and shear along it add up as strains
//! at right angles do: of what it may be opened, the square of the share of sliding is used up
//! ([`MovementLimits::sliding`]).
//!
//! A bead that is squeezed by half of its mean width stands proud of the boards. It cannot be squeezed by
//! more than the gap: then the boards touch.

use super::class::{SealantClass, test_stretch};
use super::curves::{Curve, Strains, curves};
use super::design::BeadDesign;
use super::grid::QuickStrain;
use super::section::BoardEdge;
use crate::measure::{Length, Percent};

/// How far a bead may be moved before it fails.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MovementLimits {
    /// Opening at which it fails where it is seen.
    pub open_seen: Length,
    /// Opening at which it begins to tear out of sight; not above `open_seen`.
    pub open_hidden: Length,
    /// Closing at which it fails where it is seen, or stands proud.
    pub close_seen: Length,
    /// Closing at which it is overstrained out of sight; not above `close_seen`.
    pub close_hidden: Length,
    /// Opening at which a paint film over it cracks.
    pub paint: Length,
    /// Sliding of the boards along the joint at which it fails where it is seen.
    pub slide_seen: Length,
    /// The same out of sight; not above `slide_seen`.
    pub slide_hidden: Length,
}

/// The limits of a bead for every gap it may be laid in.
#[derive(Debug, Clone, PartialEq)]
pub struct Endurance {
    /// Logarithms of the gaps at which there is a bead that can be strained, m, rising.
    gaps: Vec<f64>,
    /// Logarithms of the limits, m.
    limits: Vec<[f64; LIMITS]>,
    square: bool,
}

const LIMITS: usize = 7;
/// Share of an opening that is left to a bead which sliding alone overstrains: next to nothing.
const LEAST_LEFT: f64 = 1e-3;
/// A limit that nothing reaches.
const NEVER: Length = Length::m(1e3);

impl Endurance {
    /// Of a bead whose sealant has this class, with a paint film on it that takes `paint` of stretch.
    pub fn new(design: &BeadDesign, class: &SealantClass, paint: Percent) -> Self {
        let (gaps, limits) =
            curves(design).iter().map(|curve| (curve.gap, curve.limits(class, paint))).unzip();
        Self { gaps, limits, square: matches!(design.edge, BoardEdge::Square) }
    }

    /// The limits when laid in this gap, between boards that meet when they have closed by `room`. Between
    /// the gaps that are kept, and beyond them, movement goes with a power of the gap; under the smallest
    /// gap the V alone decides how far a bead may be opened.
    pub fn at(&self, gap: Length, room: Length) -> MovementLimits {
        let gap = gap.to_m().max(1e-6).ln();
        let [first, .., last] = self.gaps[..] else { return MovementLimits::none() };
        let kept = gap.clamp(first, last);
        let after = self.gaps.partition_point(|node| *node < kept).clamp(1, self.gaps.len() - 1);
        let share = (kept - self.gaps[after - 1]) / (self.gaps[after] - self.gaps[after - 1]);
        let (low, high) = (&self.limits[after - 1], &self.limits[after]);
        let beyond = gap - kept;
        let in_v = beyond < 0.0 && !self.square;
        let at = |limit: usize, closing: bool| {
            let between = low[limit] + share * (high[limit] - low[limit]);
            Length::m((between + if in_v && !closing { 0.0 } else { beyond }).exp())
        };
        let room = room.max(Length::mm(1e-6));
        MovementLimits {
            open_seen: at(0, false),
            open_hidden: at(1, false),
            close_seen: until_closed(at(2, true), room),
            close_hidden: until_closed(at(3, true), room),
            paint: at(4, false),
            slide_seen: at(5, false),
            slide_hidden: at(6, false),
        }
    }

    /// By what power of the gap the limits of opening grow, at this gap.
    pub fn grows_with_gap(&self, gap: Length) -> f64 {
        let step = 1.1_f64;
        let middle = |gap: Length| self.at(gap, gap).opening().to_m().ln();
        (middle(gap * step) - middle(gap * (1.0 / step))) / (2.0 * step.ln())
    }
}

impl MovementLimits {
    const fn none() -> Self {
        Self {
            open_seen: Length::ZERO,
            open_hidden: Length::ZERO,
            close_seen: Length::ZERO,
            close_hidden: Length::ZERO,
            paint: Length::ZERO,
            slide_seen: Length::ZERO,
            slide_hidden: Length::ZERO,
        }
    }

    /// One that breaks at this opening, seen at once, and takes any closing.
    pub const fn breaks_at(open: Length) -> Self {
        Self {
            open_seen: open,
            open_hidden: open,
            close_seen: NEVER,
            close_hidden: NEVER,
            paint: NEVER,
            slide_seen: NEVER,
            slide_hidden: NEVER,
        }
    }

    /// What is left of the limits of opening while the boards slide along the joint by this much.
    ///
    /// A stretch by e and a shear by g at right angles to it have the largest principal strain
    /// e/2 + √(e²/4 + g²/4), which reaches L at e = L − g²/(4L): of what stretch alone may be, the square of
    /// g over the 2 L of shear alone is used up. Exact for small strains. A squeezed bead is strained at
    /// right angles to both, so what it may be closed stays.
    #[must_use]
    pub fn sliding(self, slide: Length) -> Self {
        let left = |limit: Length| {
            let share = slide.to_m() / limit.to_m().max(1e-12);
            (1.0 - share * share).max(LEAST_LEFT)
        };
        let (seen, hidden) = (left(self.slide_seen), left(self.slide_hidden));
        let open_seen = self.open_seen * seen;
        // The film's own limit of sliding is to the bead's as its limit of opening is.
        let of_film = self.slide_seen * (self.paint.to_m() / self.open_seen.to_m().max(1e-12));
        Self {
            open_seen,
            open_hidden: (self.open_hidden * hidden).min(open_seen),
            paint: self.paint * left(of_film),
            ..self
        }
    }

    /// Opening it takes in the middle between both bounds.
    pub fn opening(&self) -> Length {
        middle(self.open_seen, self.open_hidden)
    }

    /// Closing it takes in the middle between both bounds.
    pub fn closing(&self) -> Length {
        middle(self.close_seen, self.close_hidden)
    }
}

fn middle(one: Length, other: Length) -> Length {
    Length::m((one.to_m() * other.to_m()).sqrt())
}

/// A closing that is taken, where the boards touch when `gap` is closed: what comes near it, or passes
/// it, is never reached.
fn until_closed(closing: Length, gap: Length) -> Length {
    let share = closing.to_m() / gap.to_m();
    let left = 1.0 - share.powi(4);
    if left > 1e-6 { Length::m((closing.to_m() / left).min(NEVER.to_m())) } else { NEVER }
}

impl Curve {
    /// Logarithms of the limits, m, by class.
    fn limits(&self, class: &SealantClass, paint: Percent) -> [f64; LIMITS] {
        let open = test_stretch(class.open.to_fraction());
        let close = test_stretch(-class.close.to_fraction());
        let largest = |strain: &QuickStrain| strain.largest;
        // A bead bonded to the tongue tears off it first.
        let hidden = |free: &Strains, on_tongue: &Strains| {
            let alone = reaches(free, largest, open);
            if on_tongue.is_empty() { alone } else { alone.min(reaches(on_tongue, largest, open)) }
        };
        let open_seen = reaches(&self.opened, QuickStrain::seen, open);
        let open_hidden = hidden(&self.opened, &self.opened_on_tongue);
        let slide_seen = reaches(&self.slid, QuickStrain::seen, open);
        let slide_hidden = hidden(&self.slid, &self.slid_on_tongue);
        let proud = (0.5 * self.mean_width).ln();
        let close_seen = reaches(&self.closed, QuickStrain::seen, close).min(proud);
        let close_hidden = reaches(&self.closed, largest, close);
        let paint = reaches(&self.opened, QuickStrain::seen, 1.0 + paint.to_fraction());
        [
            open_seen,
            open_hidden.min(open_seen),
            close_seen,
            close_hidden.min(close_seen),
            paint,
            slide_seen,
            slide_hidden.min(slide_seen),
        ]
    }
}

/// Logarithm of the movement, m, at which a stretch is reached, given what small and growing movements
/// bring. Strain goes with a power of movement between them and beyond the last; with movement itself
/// before the first.
fn reaches(strains: &Strains, of: impl Fn(&QuickStrain) -> f64, stretch: f64) -> f64 {
    let logarithm = |value: f64| value.max(1e-9).ln();
    let wanted = logarithm(stretch - 1.0);
    let at: Vec<(f64, f64)> = strains
        .iter()
        .map(|(open, strain)| (logarithm(open.to_m().abs()), logarithm(of(strain) - 1.0)))
        .collect();
    let Some(&(first_move, first)) = at.first() else { return logarithm(0.0) };
    if wanted <= first || at.len() < 2 {
        return first_move + wanted - first;
    }
    let passes = at.windows(2).find(|pair| pair[1].1 >= wanted);
    let pair = passes.unwrap_or(&at[at.len() - 2..]);
    let slope = ((pair[1].1 - pair[0].1) / (pair[1].0 - pair[0].0)).max(0.3);
    pair[0].0 + (wanted - pair[0].1) / slope
}
