//! The cut through a joint: boards, tongue, V, bead and what lies behind it, as shapes to be drawn.

use geo::{LineString, Polygon};

use super::bead::{Sealant, demand};
use crate::measure::{Length, Percent};
use crate::surface::BoardSpec;

/// The tongue lies between these shares of the thickness, from the face.
const TONGUE: (f64, f64) = (0.36, 0.66);
/// Play between tongue and groove, on each side.
const PLAY: Length = Length::mm(0.25);
/// Depth of the groove behind the tongue.
const GROOVE_SPARE: Length = Length::mm(0.7);
/// A tongue tapers by this much on each side.
const TAPER: Length = Length::mm(0.5);
/// Thickness at which a bond breaker is drawn.
const BREAKER: Length = Length::mm(0.4);
/// A bead is drawn at most so much thicker or thinner than it was laid.
const THINS: (f64, f64) = (0.4, 1.6);

/// A cut through a joint between two boards. Metres: x from the middle of the joint to the right, y
/// from the face into the wood.
#[derive(Debug, Clone, PartialEq)]
pub struct Cut {
    /// The board at the left, with its tongue.
    pub tongue: Polygon,
    /// The board at the right, with its groove.
    pub groove: Polygon,
    /// The bead, if the joint is sealed.
    pub bead: Option<BeadCut>,
}

/// A bead in its joint.
#[derive(Debug, Clone, PartialEq)]
pub struct BeadCut {
    /// Its section. A torn one has let go of the right board.
    pub section: Polygon,
    /// The backer or bond breaker behind it, if one was laid.
    pub behind: Option<Polygon>,
    /// How it fares.
    pub fares: BeadState,
}

/// How a bead fares at a width of its joint: what it is asked, and what it takes, both as shares of its
/// width when it was laid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum BeadState {
    /// Stretched, within what it takes.
    Pulled(Percent, Percent),
    /// Squeezed, within what it takes.
    Squeezed(Percent, Percent),
    /// Stretched by more than it takes.
    Torn(Percent, Percent),
    /// Squeezed by more than it takes.
    Out(Percent, Percent),
}

impl BeadState {
    /// Whether it holds.
    pub const fn holds(self) -> bool {
        matches!(self, Self::Pulled(..) | Self::Squeezed(..))
    }
}

/// A bead as it was laid.
#[derive(Debug, Clone, Copy)]
pub struct PlacedBead<'a> {
    /// The sealant, as it takes movement with or without something behind it.
    pub sealant: &'a Sealant,
    /// Width of the joint at sealing, over nothing.
    pub width: Length,
    /// Depth of the bead.
    pub depth: Length,
    /// Whether a backer or bond breaker lies behind it.
    pub breaker: bool,
}

impl Cut {
    /// The cut through a joint of boards like `spec` that stands open by `gap`, the boards drawn
    /// `reach` to either side. Without a tongue the edges are straight.
    pub fn new(spec: &BoardSpec, gap: Length, reach: Length, laid: Option<PlacedBead<'_>>) -> Self {
        let half = gap.max(Length::ZERO).to_m() / 2.0;
        let (thick, v, reach) = (spec.thickness.to_m(), spec.profile.v_leg().to_m(), reach.to_m());
        let tongue = spec.tongue().unwrap_or_default().to_m();
        let (high, low) = (thick * TONGUE.0, thick * TONGUE.1);
        let taper = TAPER.to_m().min((low - high) / 4.0);
        let mut left = vec![(-reach, 0.0), (-half - v, 0.0), (-half, v)];
        let mut right = vec![(reach, 0.0), (half + v, 0.0), (half, v)];
        if tongue > 0.0 {
            let end = tongue - half;
            left.extend([(-half, high), (end, high + taper), (end, low - taper), (-half, low)]);
            let (play, deep) = (PLAY.to_m(), half + tongue + GROOVE_SPARE.to_m());
            right.extend([(half, high - play), (deep, high - play), (deep, low + play), (half, low + play)]);
        }
        left.extend([(-half, thick), (-reach, thick)]);
        right.extend([(half, thick), (reach, thick)]);
        Self {
            tongue: polygon(left),
            groove: polygon(right),
            bead: laid.and_then(|laid| bead_cut(spec, gap, laid)),
        }
    }
}

fn polygon(points: Vec<(f64, f64)>) -> Polygon {
    Polygon::new(LineString::from(points), vec![])
}

fn rectangle(x: (f64, f64), y: (f64, f64)) -> Polygon {
    polygon(vec![(x.0, y.0), (x.1, y.0), (x.1, y.1), (x.0, y.1)])
}

fn bead_cut(spec: &BoardSpec, gap: Length, laid: PlacedBead<'_>) -> Option<BeadCut> {
    let fares = fares(laid.sealant, laid.width, gap)?;
    // The bead keeps its section: narrower it bulges, wider it thins.
    let thins = if gap > Length::ZERO { laid.width.to_m() / gap.to_m() } else { THINS.1 };
    let depth = laid.depth.to_m() * thins.clamp(THINS.0, THINS.1);
    let (half, face) = (gap.max(Length::ZERO).to_m() / 2.0, 0.7 * spec.profile.v_leg().to_m());
    let back = (face + depth).min(spec.thickness.to_m());
    let slit = match fares {
        BeadState::Torn(..) => ((gap - laid.width).to_m() / 2.0).max(2.0 * half * 0.1),
        _ => 0.0,
    };
    let behind = laid.breaker.then(|| {
        let laid_back = (face + laid.depth.to_m()).max(back);
        rectangle((-half, half), (laid_back, laid_back + BREAKER.to_m()))
    });
    Some(BeadCut { section: rectangle((-half, half - slit), (face, back)), behind, fares })
}

/// How a bead laid at the width `sealed` fares at the width `gap`; `None` if there was nothing to seal.
pub fn fares(sealant: &Sealant, sealed: Length, gap: Length) -> Option<BeadState> {
    let asked = demand(sealed, gap, gap, Length::ZERO)?;
    Some(if asked.stretch > sealant.stretch {
        BeadState::Torn(asked.stretch, sealant.stretch)
    } else if asked.squeeze > sealant.squeeze {
        BeadState::Out(asked.squeeze, sealant.squeeze)
    } else if asked.stretch > asked.squeeze {
        BeadState::Pulled(asked.stretch, sealant.stretch)
    } else {
        BeadState::Squeezed(asked.squeeze, sealant.squeeze)
    })
}

#[cfg(test)]
mod tests {
    use geo::{Area as _, BoundingRect as _};

    use super::*;

    fn sealant(class: f64) -> Sealant {
        let text = format!(
            "(name: \"\", class: \"\", stretch: {class:?}, squeeze: {class:?}, solids: 98.0, cure: 24.0, packs: [], source: \"\", kind: Assumption)"
        );
        ron::from_str(&text).unwrap()
    }

    #[test]
    fn the_boards_stand_the_gap_apart_and_the_tongue_bridges_it() {
        let spec = BoardSpec::default();
        let cut = Cut::new(&spec, Length::mm(3.0), Length::mm(40.0), None);
        let right = cut.groove.bounding_rect().unwrap();
        assert!((right.min().x - 0.0015).abs() < 1e-12);
        let left = cut.tongue.bounding_rect().unwrap();
        // The tongue of 1/4 in reaches past the middle by what the gap leaves of it.
        assert!((left.max().x - (0.00635 - 0.0015)).abs() < 1e-9);
        // What the groove takes out of a board is more than the tongue that goes in.
        let wood = |p: &Polygon| p.unsigned_area();
        assert!(wood(&cut.groove) < wood(&cut.tongue));
    }

    #[test]
    fn a_bead_keeps_its_section_until_it_tears() {
        let (spec, class) = (BoardSpec::default(), sealant(25.0));
        let at = |mm: f64| {
            let laid =
                PlacedBead { sealant: &class, width: Length::mm(2.0), depth: Length::mm(3.0), breaker: true };
            Cut::new(&spec, Length::mm(mm), Length::mm(40.0), Some(laid)).bead.unwrap()
        };
        for mm in [1.6, 2.0, 2.4] {
            let bead = at(mm);
            assert!(bead.fares.holds());
            assert!((bead.section.unsigned_area() - 6e-6).abs() < 1e-12, "at {mm} mm");
        }
        let torn = at(3.0);
        assert_eq!(torn.fares, BeadState::Torn(Percent::pct(50.0), Percent::pct(25.0)));
        assert!(torn.section.bounding_rect().unwrap().max().x < 0.0015);
        assert!(!at(1.0).fares.holds());
    }
}
