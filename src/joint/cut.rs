//! The cut through a joint: boards, tongue, V, bead and what lies behind it, as shapes to be drawn.

use geo::{LineString, Polygon};

use super::bead::{LaidBead, TONGUE_BELOW};
use crate::bead::{Behind, MovementLimits, Place, PlaceStretch, Section, goes_first};
use crate::measure::{Length, Percent, Span};
use crate::surface::BoardSpec;

/// The tongue lies between these shares of the thickness, from the face.
const TONGUE: (f64, f64) = (TONGUE_BELOW, 0.66);
/// Play between tongue and groove, on each side.
const PLAY: Length = Length::mm(0.25);
/// Depth of the groove behind the tongue.
const GROOVE_SPARE: Length = Length::mm(0.7);
/// A tongue tapers by this much on each side.
const TAPER: Length = Length::mm(0.5);
/// Thickness at which a bond breaker is drawn.
const BREAKER: Length = Length::mm(0.4);
/// Points along the free face of a bead.
const FACE_POINTS: usize = 10;
/// Beads are not followed to where boards are nearer than this share of the gap from touching.
const MOST_CLOSED: f64 = 0.85;
/// A hollow is drawn at most as deep as this share of the bead.
const DEEPEST_HOLLOW: f64 = 0.45;

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
    /// Its section; its face comes first. One that failed where it is seen has let go of the right board.
    pub section: Polygon,
    /// Where it has let go: what is open beside it.
    pub crack: Option<Polygon>,
    /// How wide that is.
    pub open: Length,
    /// The backer or bond breaker behind it, if one was laid.
    pub behind: Option<Polygon>,
    /// How it fares.
    pub fares: BeadState,
    /// Whether the paint film over it is cracked.
    pub paint_cracked: bool,
    /// What it is and how it is deformed.
    form: Box<Deformed>,
}

/// A bead as it was laid, and how it is deformed now.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Deformed {
    laid: Section,
    /// How far it may be moved the way it is moved now, before its first place is past its class; below zero it is
    /// closed.
    limit: Length,
    shape: BeadShape,
    /// Half of the slot's width now, and how deep face and back are hollow, m.
    half: f64,
    hollows: (f64, f64),
}

/// How a bead fares at a width of its joint: the share of its class that it uses at its worst place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum BeadState {
    /// Opened, within its class.
    Pulled(Percent),
    /// Squeezed, within its class.
    Squeezed(Percent),
    /// Opened past its class out of sight: it begins to tear from behind.
    TearsBehind(Percent),
    /// Squeezed past its class out of sight.
    CrushedBehind(Percent),
    /// Opened past its class where it is seen: it splits or lets go.
    Torn(Percent),
    /// Squeezed past its class where it is seen, or so far that it stands proud.
    Out(Percent),
}

impl BeadCut {
    /// The corners of its face, from left to right.
    pub fn face(&self) -> impl Iterator<Item = (f64, f64)> {
        self.section.exterior().coords().take(FACE_POINTS + 1).map(|corner| corner.x_y())
    }

    /// Its place that is past its class before all others when it is moved on, by the solver; on the right side of
    /// two alike. `None` where the boards touch before that, or it has let go already.
    pub fn goes_first(&self) -> Option<((f64, f64), Place)> {
        let Deformed { laid, limit, shape, half, hollows: (face, back) } = *self.form;
        if self.crack.is_some() || -limit > laid.gap * MOST_CLOSED {
            return None;
        }
        let PlaceStretch { place, up, .. } = goes_first(&laid, limit)?;
        let (top, bottom) = (shape.v - shape.filled + face, shape.bottom - back);
        let at = match place {
            Place::FaceMiddle => (0.0, top),
            Place::BackMiddle => (0.0, bottom),
            Place::Core => (0.0, f64::midpoint(top, bottom)),
            _ => (half + up.to_m().max(0.0), shape.v - up.to_m()),
        };
        Some((at, place))
    }
}

impl BeadState {
    /// The worse of two; of two as bad, the first.
    #[must_use]
    pub const fn worse(self, other: Self) -> Self {
        if other.rank() > self.rank() { other } else { self }
    }

    const fn rank(self) -> u8 {
        match self {
            Self::Pulled(_) | Self::Squeezed(_) => 0,
            Self::TearsBehind(_) | Self::CrushedBehind(_) => 1,
            Self::Torn(_) | Self::Out(_) => 2,
        }
    }

    /// The share of its class that it uses at its worst place.
    pub const fn used(self) -> Percent {
        match self {
            Self::Pulled(used)
            | Self::Squeezed(used)
            | Self::TearsBehind(used)
            | Self::CrushedBehind(used)
            | Self::Torn(used)
            | Self::Out(used) => used,
        }
    }

    /// Whether it holds within its class everywhere.
    pub const fn holds(self) -> bool {
        matches!(self, Self::Pulled(..) | Self::Squeezed(..))
    }

    /// Whether it fails where it is seen.
    pub const fn shows(self) -> bool {
        matches!(self, Self::Torn(..) | Self::Out(..))
    }

    /// How a bead with these limits fares when it is opened by this much; closed, below zero.
    pub fn of(limits: &MovementLimits, opened: Length) -> Self {
        let used = |limit: Length| Percent::pct(100.0 * opened.to_m().abs() / limit.to_m().max(1e-9));
        if opened < Length::ZERO {
            let (used, closed) = (used(limits.close_hidden), -opened.to_m());
            match closed {
                _ if closed > limits.close_seen.to_m() => Self::Out(used),
                _ if closed > limits.close_hidden.to_m() => Self::CrushedBehind(used),
                _ => Self::Squeezed(used),
            }
        } else {
            let used = used(limits.open_hidden);
            match opened {
                _ if opened > limits.open_seen => Self::Torn(used),
                _ if opened > limits.open_hidden => Self::TearsBehind(used),
                _ => Self::Pulled(used),
            }
        }
    }
}

/// A bead as it was laid, with what its boards have done since.
#[derive(Debug, Clone, Copy)]
pub struct PlacedBead<'a> {
    /// The bead.
    pub bead: &'a LaidBead,
    /// How far the boards were apart at sealing, over nothing.
    pub gap: Length,
    /// The least and the most that they have been apart since.
    pub been: Span<Length>,
}

impl PlacedBead<'_> {
    /// How it fares where the boards stand `gap` apart and come off a tongue so long, and whether the paint
    /// over it is cracked. What has failed once does not mend by itself.
    pub fn fares(&self, gap: Length, tongue: Option<Length>) -> (BeadState, bool) {
        let limits = self.bead.limits(self.gap);
        let at = |gap: Length| BeadState::of(&limits, gap - self.gap);
        let (least, most) = (self.been.low.min(gap), self.been.high.max(gap));
        let mut fares = at(gap).worse(at(most)).worse(at(least));
        // Boards that came off their tongues are held by nothing, and so is what lies between them.
        // On the day it is laid it is whole.
        let laid_now = (most - self.gap).to_m().abs() < 1e-9;
        if !laid_now && tongue.is_some_and(|tongue| most >= tongue) {
            fares = fares.worse(BeadState::Torn(fares.used().max(Percent::pct(100.0))));
        }
        (fares, fares.shows() || most - self.gap > limits.paint)
    }
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

/// The bead when the boards stand `gap` apart: it sticks to its flanks, keeps its section, and hollows or
/// bulges where it is free. `None` if there was nothing to seal.
fn bead_cut(spec: &BoardSpec, gap: Length, laid: PlacedBead<'_>) -> Option<BeadCut> {
    if laid.gap <= Length::ZERO {
        return None;
    }
    let free_back = laid.bead.design.behind != Behind::Tongue;
    let (limits, opened) = (laid.bead.limits(laid.gap), gap - laid.gap);
    let (fares, paint_cracked) = laid.fares(gap, spec.tongue());
    let v = spec.profile.v_leg().to_m();
    let cured = laid.bead.section(laid.gap).cured();
    // In a reveal the V is cut away; its bead begins where the V ended.
    let shape = BeadShape {
        filled: cured.top.to_m(),
        bottom: v + cured.depth.to_m(),
        v,
        face: cured.face_hollow.to_m(),
        back: cured.back_hollow.to_m(),
    };
    let slot = laid.bead.lay.slot(laid.gap);
    let half = (slot + gap - laid.gap).max(Length::ZERO).to_m() / 2.0;
    let hollows = shape.hollows(slot.to_m() / 2.0, half, free_back);
    let slit = match fares {
        BeadState::Torn(..) if gap > laid.gap => ((gap - laid.gap).to_m() / 2.0).max(0.2 * half),
        // Pressed shut again.
        _ => 0.0,
    };
    let section = polygon(shape.outline(half, hollows, slit));
    let backed = laid.bead.lay.is_backed(slot);
    let behind = backed.then(|| {
        let at = shape.bottom;
        polygon(vec![(-half, at), (half, at), (half, at + BREAKER.to_m()), (-half, at + BREAKER.to_m())])
    });
    let crack = (slit > 0.0).then(|| polygon(shape.crack(half, slit)));
    let limit = if opened < Length::ZERO { -limits.close_hidden } else { limits.open_hidden };
    let form = Box::new(Deformed { laid: laid.bead.section(laid.gap), limit, shape, half, hollows });
    Some(BeadCut { section, crack, open: Length::m(slit), behind, fares, paint_cracked, form })
}

/// Heights of a bead, m: y from the face into the wood.
#[derive(Debug, Clone, Copy, PartialEq)]
struct BeadShape {
    /// Height of the V that is filled.
    filled: f64,
    /// Depth of its back below the face.
    bottom: f64,
    /// Depth of the V.
    v: f64,
    /// How deep its face, and its back, are hollow as laid.
    face: f64,
    back: f64,
}

impl BeadShape {
    fn area(&self, half: f64) -> f64 {
        2.0 * half * (self.bottom - self.v) + self.filled * (2.0 * half + self.filled)
    }

    /// How deep its face and its back are hollow, in the middle, when half of the slot is `half` wide instead
    /// of `laid`: parabolas that keep the area of the section. Below zero they bulge.
    fn hollows(&self, laid: f64, half: f64, free_back: bool) -> (f64, f64) {
        let (height, third) = (self.bottom - self.v + self.filled, 4.0 / 3.0);
        let taken = third * (self.face * (laid + self.filled) + self.back * laid);
        let kept = third * (self.face * (half + self.filled) + self.back * half);
        let widths = third * ((half + self.filled) + if free_back { half } else { 0.0 });
        let more = (self.area(half) - self.area(laid) + taken - kept) / widths.max(1e-9);
        let deepest = DEEPEST_HOLLOW * height;
        let back = if free_back { self.back + more } else { self.back };
        ((self.face + more).clamp(-deepest, 1.5 * deepest), back.clamp(-deepest, deepest))
    }

    fn crack(&self, half: f64, slit: f64) -> Vec<(f64, f64)> {
        let flank = [(half + self.filled, self.v - self.filled), (half, self.v), (half, self.bottom)];
        let beside = flank.iter().rev().map(|(x, y)| ((x - slit).max(0.0), *y));
        flank.into_iter().chain(beside).collect()
    }

    fn outline(&self, half: f64, (face, back): (f64, f64), slit: f64) -> Vec<(f64, f64)> {
        let top = self.v - self.filled;
        let arc = |half_width: f64, y: f64, depth: f64| {
            #[expect(clippy::cast_precision_loss, reason = "a dozen points")]
            (0..=FACE_POINTS).map(move |at| {
                let x = 2.0 * at as f64 / FACE_POINTS as f64 - 1.0;
                (x * half_width, y + depth * (1.0 - x * x))
            })
        };
        let mut corners: Vec<(f64, f64)> = arc(half + self.filled, top, face).collect();
        corners.push((half, self.v));
        corners.extend(arc(half, self.bottom, -back).map(|(x, y)| (-x, y)));
        corners.push((-half, self.v));
        for corner in corners.iter_mut().filter(|corner| corner.0 > 0.0) {
            corner.0 = (corner.0 - slit).max(0.0);
        }
        corners
    }
}

#[cfg(test)]
mod tests {
    use geo::{Area as _, BoundingRect as _};

    use super::*;
    use crate::joint::{BeadForm, BeadLay, JointEdges};

    fn laid(class: f64, lay: BeadLay) -> LaidBead {
        let text = format!(
            "(name: \"\", class: \"\", stretch: {class:?}, squeeze: {class:?}, solids: 100.0, cure: 24.0, packs: [], source: \"\", kind: Assumption)"
        );
        let form = BeadForm {
            v_filled: Percent::pct(50.0),
            in_slot: Length::ZERO,
            hollow: Percent::ZERO,
            least_depth: Length::mm(3.0),
        };
        let design = lay.design(JointEdges::of(&BoardSpec::default()), &form);
        LaidBead::new(lay, design, &ron::from_str(&text).unwrap(), Percent::pct(20.0))
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
        let spec = BoardSpec::default();
        let bead = laid(25.0, BeadLay::Bridge);
        let at = |mm: f64| {
            let gap = Length::mm(2.0);
            let laid = PlacedBead { bead: &bead, gap, been: Span { low: gap, high: gap } };
            Cut::new(&spec, Length::mm(mm), Length::mm(40.0), Some(laid)).bead.unwrap()
        };
        // Half of a 1/8 in V over a gap of 2 mm.
        let filled = 0.5 * 3.175e-3;
        let area = filled * (2e-3 + filled);
        for mm in [1.6, 2.0, 2.4] {
            let bead = at(mm);
            assert!(bead.fares.holds(), "{mm} mm: {:?}", bead.fares);
            assert!((bead.section.unsigned_area() / area - 1.0).abs() < 0.01, "at {mm} mm");
        }
        let torn = at(12.0);
        assert!(torn.fares.shows() && !torn.fares.holds(), "{:?}", torn.fares);
        assert!(torn.section.bounding_rect().unwrap().max().x < 0.006);
        // On the way there it is past its class at the back first.
        let behind = (20..120).map(|tenth| at(f64::from(tenth) / 10.0).fares).find(|fares| !fares.holds());
        assert!(matches!(behind, Some(BeadState::TearsBehind(_))), "{behind:?}");
    }

    #[test]
    fn paint_cracks_past_its_own_limit_and_what_failed_stays_so() {
        let bead = laid(25.0, BeadLay::Bridge);
        let gap = Length::mm(2.0);
        let limits = bead.limits(gap);
        let on = |opened: f64, been: f64| {
            let been = Span { low: gap, high: gap + limits.paint * been };
            PlacedBead { bead: &bead, gap, been }.fares(gap + limits.paint * opened, None)
        };
        assert!(!on(0.9, 0.9).1 && on(1.1, 0.0).1);
        // Closed again in summer, the film stays cracked.
        assert!(on(0.0, 1.1).1 && on(-0.5, 1.1).1);
        let torn = Span { low: gap, high: gap + limits.open_seen * 1.1 };
        let (fares, cracked) = PlacedBead { bead: &bead, gap, been: torn }.fares(gap, None);
        assert!(fares.shows() && cracked, "{fares:?}");
    }
}
