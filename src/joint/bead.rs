//! What a joint asks of the bead in it, and what a bead takes as it is laid.

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::bead::{
    BeadDesign, Behind, BoardEdge, Endurance, LEAST_TAPE, MovementLimits, SealantClass, Section, Tooling,
};
use crate::measure::{Area, DateText, Hours, Length, Money, Percent, Volume};
use crate::named::named;
use crate::surface::BoardSpec;
use crate::wood::Kind;

/// A sealant of the catalog.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Sealant {
    /// By what jobs refer to it; it never changes. Empty for an entry of the user's own.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub id: String,
    /// What it is, in general terms.
    pub name: String,
    /// Names it has or had, by which files refer to it too.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub aliases: Vec<String>,
    /// Its class and standard, in words.
    pub class: String,
    /// How far its class's test bead was opened, per cent of its width.
    pub stretch: Percent,
    /// How far it was closed, likewise.
    pub squeeze: Percent,
    /// Solids by volume: a cured bead is this share of the wet one.
    pub solids: Percent,
    /// Hours before it may be painted.
    pub cure: Hours,
    /// Packs it is sold in, smallest first.
    pub packs: Vec<Pack>,
    /// The day of their prices.
    #[serde(default)]
    #[schemars(with = "Option<DateText>")]
    pub priced: Option<Date>,
    /// Where class and limits are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

named! { Sealant }

/// A pack of sealant.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Pack {
    /// What it is: cartridge, sausage.
    pub name: String,
    /// What it holds.
    pub holds: Volume,
    /// Its price.
    pub price: Money,
}

impl Sealant {
    /// What ranks classes: the movement it takes both ways, per cent.
    pub const fn class_size(&self) -> f64 {
        self.stretch.to_pct() + self.squeeze.to_pct()
    }

    /// Whether it sinks so much as it cures that a second bead goes over the first.
    pub fn takes_second_bead(&self) -> bool {
        self.solids < DOES_NOT_SINK
    }

    /// What a second bead takes of the sealant of the first: what that lost as it cured.
    pub fn second_bead(&self) -> Percent {
        if self.takes_second_bead() { Percent::pct(100.0) - self.solids } else { Percent::ZERO }
    }

    /// Volume left in the end over the wet volume that was laid first. A second bead fills up what the first
    /// lost, and loses as large a share of that.
    pub fn left_after_cure(&self) -> Percent {
        let lost = 1.0 - self.solids.to_fraction();
        Percent::pct(100.0 * (1.0 - if self.takes_second_bead() { lost * lost } else { lost }))
    }
}

/// A sealant with at least this share of solids does not sink as it cures. Assumption.
const DOES_NOT_SINK: Percent = Percent::pct(95.0);

/// How a bead is laid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize, JsonSchema)]
pub enum BeadLay {
    /// Across the V from flank to flank, the slot left empty; where there is no V, as deep in the slot as
    /// the plan has it. A slot wide enough gets backer, so that the bead does not fall in.
    #[default]
    Bridge,
    /// Pushed in until it meets the tongue, which it sticks to.
    OnTongue,
    /// In a joint that was cut to a square reveal, over bond-breaker tape.
    Reveal,
}

/// The form of the bead that a job plans, whatever joint it is laid in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BeadForm {
    /// Share of the V's depth that is filled, at the edges of the bead's face.
    pub v_filled: Percent,
    /// How far a bead across a V reaches into the slot below it.
    pub in_slot: Length,
    /// How far the middle of the face lies below its edges, as a share of the face's width; none is flush.
    pub hollow: Percent,
    /// How deep a bead lies in the slot where no V holds it.
    pub least_depth: Length,
}

impl BeadForm {
    /// The least of a V that is filled: less is a film rather than a bead.
    pub const LEAST_FILL: Percent = Percent::pct(20.0);
    /// The most hollow a face is tooled: hollower, its edges on a 45-degree bevel are a feather that rubs off.
    pub const MOST_HOLLOW: Percent = Percent::pct(8.0);
}

/// Width of the reveal that joints are cut to: the least that guides give for a joint (see
/// [`crate::bead::GUIDE_WIDTH`]).
pub const REVEAL: Length = crate::bead::GUIDE_WIDTH;

/// The boards' edges at a joint.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointEdges {
    /// Leg of the V; zero for square edges.
    pub v_leg: Length,
    /// How far the tongue lies below the face.
    pub tongue_below: Length,
}

impl JointEdges {
    /// Those of a board.
    pub fn of(board: &BoardSpec) -> Self {
        Self { v_leg: board.profile.v_leg(), tongue_below: board.thickness * TONGUE_BELOW }
    }

    /// How far it is from the bottom of the V down to the tongue.
    pub fn slot_to_tongue(&self) -> Length {
        (self.tongue_below - self.v_leg).max(LEAST_LAYER)
    }
}

/// The tongue begins at this share of the thickness, from the face.
pub(super) const TONGUE_BELOW: f64 = 0.36;
/// The thinnest layer of sealant between a V and the tongue.
const LEAST_LAYER: Length = Length::mm(0.5);

impl BeadLay {
    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Bridge => "bridge",
            Self::OnTongue => "on_tongue",
            Self::Reveal => "reveal",
        }
    }

    /// The bead between these edges, before it cures.
    pub fn design(self, edges: JointEdges, form: &BeadForm) -> BeadDesign {
        let has_v = edges.v_leg > Length::ZERO;
        let edge = if has_v { Section::v(edges.v_leg) } else { BoardEdge::Square };
        let to_tongue = edges.slot_to_tongue();
        let (edge, depth, behind) = match self {
            // A bead that reaches the tongue sticks to it.
            Self::Bridge if has_v && form.in_slot >= to_tongue => (edge, to_tongue, Behind::Tongue),
            Self::Bridge if has_v => (edge, form.in_slot, Behind::Free),
            Self::Bridge => (edge, form.least_depth.min(to_tongue), Behind::Free),
            Self::OnTongue => (edge, to_tongue, Behind::Tongue),
            Self::Reveal => (BoardEdge::Square, form.least_depth, Behind::Breaker),
        };
        let tooling = match form.hollow > Percent::ZERO {
            true => Tooling::Concave(form.hollow),
            false => Tooling::Flush,
        };
        BeadDesign { edge, fill: form.v_filled, depth, behind, tooling, solids: Percent::pct(100.0) }
    }

    /// Width of the slot when it is sealed, where the boards are this far apart.
    pub fn slot(self, gap: Length) -> Length {
        match self {
            Self::Bridge | Self::OnTongue => gap,
            Self::Reveal => gap.max(REVEAL),
        }
    }

    /// Whether a slot of this width gets backer or tape.
    pub fn is_backed(self, slot: Length) -> bool {
        match self {
            Self::OnTongue => false,
            Self::Bridge | Self::Reveal => slot >= LEAST_TAPE,
        }
    }

    /// Area of sealant that runs into a slot of this width below the bead where nothing backs it: as deep as
    /// the slot is wide, at most down to the tongue. Assumption; it takes sealant and holds nothing.
    pub fn runs_in(self, slot: Length, edges: JointEdges) -> Area {
        if self != Self::Bridge || edges.v_leg <= Length::ZERO || self.is_backed(slot) {
            return Area::ZERO;
        }
        let to_tongue = (edges.tongue_below - edges.v_leg).max(LEAST_LAYER);
        Area::m2(slot.to_m().max(0.0) * slot.min(to_tongue).to_m().max(0.0))
    }
}

/// A sealant in a bead as it is laid: how far it may be moved.
#[derive(Debug, Clone, PartialEq)]
pub struct LaidBead {
    /// How it is laid.
    pub lay: BeadLay,
    /// Its section but for the gap.
    pub design: BeadDesign,
    endurance: Endurance,
}

impl LaidBead {
    /// A bead of `sealant`, which sinks as it cures, with a paint film on it that cracks at the stretch `paint`.
    pub fn new(lay: BeadLay, design: BeadDesign, sealant: &Sealant, paint: Percent) -> Self {
        let class = SealantClass { id: "", open: sealant.stretch, close: sealant.squeeze };
        let design = BeadDesign { solids: sealant.left_after_cure(), ..design };
        Self { lay, design, endurance: Endurance::new(&design, &class, paint) }
    }

    /// Its section in a joint of this gap.
    pub fn section(&self, gap: Length) -> Section {
        self.design.section(self.lay.slot(gap))
    }

    /// How far it may be moved when the boards are `gap` apart at sealing.
    ///
    /// Cut wider, a joint has more room at its face alone: behind it the boards meet as before.
    pub fn limits(&self, gap: Length) -> MovementLimits {
        self.endurance.at(self.lay.slot(gap), gap)
    }

    /// Its mean width and its thickness in the middle, in a joint of this gap.
    pub fn mean_size(&self, gap: Length) -> (Length, Length) {
        let section = self.section(gap);
        let thick = section.middle_thickness();
        (Length::m(section.cured_area().to_m2() / thick.to_m().max(1e-6)), thick)
    }

    /// By what power of the gap at sealing the opening grows that it takes.
    pub fn grows_with_gap(&self, gap: Length) -> f64 {
        if self.lay == BeadLay::Reveal && gap < REVEAL { 0.0 } else { self.endurance.grows_with_gap(gap) }
    }

    /// The share of its class that it uses at its worst place, seen or not: 1 is all of it.
    pub fn used(&self, demand: &Demand) -> f64 {
        demand.use_of(&self.limits(demand.sealed).sliding(demand.slides()))
    }

    /// Whether it stays within its class at every place.
    pub fn takes(&self, demand: &Demand) -> bool {
        self.used(demand) <= 1.0
    }
}

/// What one joint asks of its bead.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Demand {
    /// Width of the gap when sealed.
    pub sealed: Length,
    /// Most it is opened, in per cent of that width.
    pub stretch: Percent,
    /// Most it is closed, likewise; 100 % is a closed joint.
    pub squeeze: Percent,
    /// How far its two sides slide along each other, likewise.
    pub shear: Percent,
}

/// The demand on a bead sealed at width `sealed` in a joint that later runs from `narrowest` to
/// `widest` while its sides slide by `slide`. `None` if there was no gap to seal.
pub fn demand(sealed: Length, narrowest: Length, widest: Length, slide: Length) -> Option<Demand> {
    if sealed <= Length::ZERO {
        return None;
    }
    let share = |change: Length| Percent::pct((100.0 * change.to_m() / sealed.to_m()).max(0.0));
    let (stretch, squeeze) = (share(widest - sealed), share(sealed - narrowest));
    Some(Demand { sealed, stretch, squeeze, shear: share(slide) })
}

impl Demand {
    /// How far the joint opens at most beyond its width at sealing.
    pub fn opens(&self) -> Length {
        self.sealed * self.stretch.to_fraction()
    }

    /// How far it closes at most.
    pub fn closes(&self) -> Length {
        self.sealed * self.squeeze.to_fraction()
    }

    /// How far its sides slide at most.
    pub fn slides(&self) -> Length {
        self.sealed * self.shear.to_fraction()
    }

    /// The share of a bead's class that this uses at its worst place, seen or not: 1 is all of it.
    pub fn use_of(&self, limits: &MovementLimits) -> f64 {
        let share = |moved: Length, limit: Length| moved.to_m() / limit.to_m().max(1e-9);
        share(self.opens(), limits.open_hidden).max(share(self.closes(), limits.close_hidden))
    }

    /// The demand where the boards keep only this share of their movement.
    #[must_use]
    pub fn times(self, share: f64) -> Self {
        let part = |asked: Percent| Percent::pct(asked.to_pct() * share);
        Self {
            stretch: part(self.stretch),
            squeeze: part(self.squeeze),
            shear: part(self.shear),
            sealed: self.sealed,
        }
    }
}
