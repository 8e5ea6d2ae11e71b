//! How far a bead may be moved before it fails, by the gap it was laid in.
//!
//! A bead has two limits. Where it is seen, on its face and at its edges, it fails when the local stretch
//! there passes what the class's test bead shows. Out of sight, at the back or at the tongue, strain is
//! larger and passes it sooner: there it begins to tear, unseen. How far such a tear works its way to the
//! face nobody has measured in the open literature, so both limits are kept, as bounds: tears that stay
//! where they are, and tears that come through. A bead bonded to the tongue tears off it first, and then
//! works on as one with nothing behind it.
//!
//! A bead that is squeezed by half of its mean width stands proud of the boards. It cannot be squeezed by
//! more than the gap: then the boards touch.

use super::class::{SealantClass, test_stretch};
use super::grid::{Family, GAPS, LEGS, QuickStrain, SQUARE_DEPTHS, SQUARE_GAPS};
use super::section::{Behind, BoardEdge, Section};
use super::table::Table;
use crate::measure::{Length, Percent};

/// A bead but for the gap it is laid in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BeadDesign {
    /// The boards' edges. V's of another slope, or beyond 1/16 to 1/4 in, are taken as the nearest that
    /// are tabulated, filled as high.
    pub edge: BoardEdge,
    /// Share of the V's depth that is filled, 20 to 100 %; the nearest of these otherwise.
    pub fill: Percent,
    /// How far it reaches into the slot. More than twice the gap counts as twice: what is deeper is not
    /// felt at the face.
    pub depth: Length,
    /// What lies behind it.
    pub behind: Behind,
}

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

const LIMITS: usize = 5;
/// Gaps at which the limits of a V are kept.
const NODES: u32 = 12;
/// A limit that nothing reaches.
const NEVER: Length = Length::m(1e3);

impl Endurance {
    /// Of a bead whose sealant has this class, with a paint film on it that takes `paint` of stretch.
    pub fn new(design: &BeadDesign, class: &SealantClass, paint: Percent) -> Self {
        let table = Table::shipped();
        let shape = Shape::of(design);
        let at = |gap: f64| Some((gap, shape.limits(table, gap.exp(), class, paint)?));
        let (gaps, limits) = shape.gaps().into_iter().filter_map(at).unzip();
        Self { gaps, limits, square: matches!(shape.edge, BoardEdge::Square) }
    }

    /// The limits when laid in this gap. Between the gaps that are kept, and beyond them, movement goes
    /// with a power of the gap; under the smallest gap the V alone decides how far a bead may be opened.
    pub fn at(&self, gap: Length) -> MovementLimits {
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
        let gap = Length::m(gap.exp());
        MovementLimits {
            open_seen: at(0, false),
            open_hidden: at(1, false),
            close_seen: until_closed(at(2, true), gap),
            close_hidden: until_closed(at(3, true), gap),
            paint: at(4, false),
        }
    }

    /// By what power of the gap the limits of opening grow, at this gap.
    pub fn grows_with_gap(&self, gap: Length) -> f64 {
        let step = 1.1_f64;
        let middle = |gap: Length| self.at(gap).opening().to_m().ln();
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
        }
    }

    /// One that breaks at this opening, seen at once, and takes any closing.
    pub const fn breaks_at(open: Length) -> Self {
        Self { open_seen: open, open_hidden: open, close_seen: NEVER, close_hidden: NEVER, paint: NEVER }
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

/// A design as it is tabulated.
#[derive(Debug, Clone, Copy)]
struct Shape {
    edge: BoardEdge,
    fill: Percent,
    depth: Length,
    behind: Behind,
}

impl Shape {
    fn of(design: &BeadDesign) -> Self {
        // A rod gives way and a breaker does not hold: while they are pulled, both are as nothing.
        let behind = if design.behind == Behind::Rod { Behind::Free } else { design.behind };
        let BoardEdge::V { leg, angle } = design.edge else {
            return Self { edge: BoardEdge::Square, fill: Percent::ZERO, depth: design.depth, behind };
        };
        let slope = angle.to_degrees().to_radians().tan();
        let filled = leg.to_m() * slope * design.fill.to_fraction();
        let leg = leg.to_inches().clamp(LEGS[0], LEGS[LEGS.len() - 1]);
        let fill = (filled / Length::inches(leg).to_m()).clamp(0.2, 1.0);
        let edge = Section::v(Length::inches(leg));
        Self { edge, fill: Percent::pct(100.0 * fill), depth: design.depth, behind }
    }

    /// Logarithms of the gaps to keep limits at, m.
    fn gaps(&self) -> Vec<f64> {
        match self.edge {
            BoardEdge::V { leg, .. } => {
                let (low, high) = (GAPS[0].ln(), GAPS[GAPS.len() - 1].ln());
                let at = |node: u32| low + (high - low) * f64::from(node) / f64::from(NODES - 1);
                (0..NODES).map(|node| leg.to_m().ln() + at(node)).collect()
            }
            BoardEdge::Square => SQUARE_GAPS.iter().map(|gap| Length::inches(*gap).to_m().ln()).collect(),
        }
    }

    fn section(&self, gap: f64, behind: Behind) -> Section {
        let deepest = 2.0;
        let shallowest = if matches!(self.edge, BoardEdge::Square) { SQUARE_DEPTHS[0] } else { 0.0 };
        let depth = Length::m(self.depth.to_m().clamp(shallowest * gap, deepest * gap));
        Section::plain(Length::m(gap), self.edge, self.fill, depth, behind)
    }

    /// Logarithms of the limits at a gap, m; `None` where it is too shallow for a bead.
    fn limits(&self, table: &Table, gap: f64, class: &SealantClass, paint: Percent) -> Option<[f64; LIMITS]> {
        let free = self.section(gap, Behind::Free);
        let opened = table.strains(&free, Family::PulledFree);
        let closed = match self.behind {
            Behind::Free | Behind::Rod => table.strains(&free, Family::SqueezedFree),
            Behind::Tongue | Behind::Breaker => {
                table.strains(&self.section(gap, self.behind), Family::SqueezedOnTongue)
            }
        };
        if opened.is_empty() || closed.is_empty() {
            return None;
        }
        let open = test_stretch(class.open.to_fraction());
        let close = test_stretch(-class.close.to_fraction());
        let open_seen = reaches(&opened, QuickStrain::seen, open);
        let mut open_hidden = reaches(&opened, |strain| strain.largest, open);
        if self.behind == Behind::Tongue {
            let held = table.strains(&self.section(gap, self.behind), Family::PulledOnTongue);
            open_hidden = open_hidden.min(reaches(&held, |strain| strain.largest, open));
        }
        let proud = (0.5 * self.mean_width(gap)).ln();
        let close_seen = reaches(&closed, QuickStrain::seen, close).min(proud);
        let close_hidden = reaches(&closed, |strain| strain.largest, close);
        let paint = reaches(&opened, QuickStrain::seen, 1.0 + paint.to_fraction());
        Some([open_seen, open_hidden.min(open_seen), close_seen, close_hidden.min(close_seen), paint])
    }

    /// Mean width between the boards over the height that is filled, m.
    fn mean_width(&self, gap: f64) -> f64 {
        match self.edge {
            BoardEdge::V { leg, .. } => gap + leg.to_m() * self.fill.to_fraction(),
            BoardEdge::Square => gap,
        }
    }
}

/// Logarithm of the movement, m, at which a stretch is reached, given what small and growing movements
/// bring. Strain goes with a power of movement between them and beyond the last; with movement itself
/// before the first.
fn reaches(strains: &[(Length, QuickStrain)], of: impl Fn(&QuickStrain) -> f64, stretch: f64) -> f64 {
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
