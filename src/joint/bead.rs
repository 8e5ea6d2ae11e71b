//! What a joint asks of the sealant in it.

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::measure::{DateText, Hours, Length, Money, Percent, Volume};
use crate::named::named;
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
    /// How far a bead may be stretched, per cent of its width when sealed.
    pub stretch: Percent,
    /// How far it may be squeezed, per cent of its width when sealed.
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

/// What one joint asks of its bead, in per cent of the width at sealing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Demand {
    /// Most it is stretched, sliding included.
    pub stretch: Percent,
    /// Most it is squeezed; 100 % is a closed joint.
    pub squeeze: Percent,
    /// How far its two sides slide along each other.
    pub shear: Percent,
}

/// The demand on a bead sealed at width `sealed` in a joint that later runs from `narrowest` to
/// `widest` while its sides slide by `slide`. `None` if there was no gap to seal.
///
/// A bead that slides is stretched along its slant, to √(W² + d²): the limit of shear is the class
/// held against that.
pub fn demand(sealed: Length, narrowest: Length, widest: Length, slide: Length) -> Option<Demand> {
    if sealed <= Length::ZERO {
        return None;
    }
    let share = |change: Length| Percent::pct((100.0 * change.to_m() / sealed.to_m()).max(0.0));
    let slant = Length::m(widest.max(sealed).to_m().hypot(slide.to_m()));
    Some(Demand { stretch: share(slant - sealed), squeeze: share(sealed - narrowest), shear: share(slide) })
}

/// Share of its class that a bead keeps if the tongue behind it is a third bonded side. Assumption:
/// guides only say that it must not be.
const THREE_SIDED_KEEPS: Percent = Percent::pct(50.0);

impl Demand {
    /// The demand where the boards keep only this share of their movement.
    #[must_use]
    pub fn times(self, share: f64) -> Self {
        let part = |asked: Percent| Percent::pct(asked.to_pct() * share);
        Self { stretch: part(self.stretch), squeeze: part(self.squeeze), shear: part(self.shear) }
    }
}

impl Sealant {
    /// The sealant as it is in a bead with or without a backer or bond breaker behind it.
    pub fn over(&self, breaker: bool) -> Self {
        self.keeping(if breaker { Percent::pct(100.0) } else { THREE_SIDED_KEEPS })
    }

    /// Whether the sealant takes this demand.
    pub fn takes(&self, demand: Demand) -> bool {
        demand.stretch <= self.stretch && demand.squeeze <= self.squeeze
    }

    /// The sealant where it keeps only this share of its class, such as over a third bonded side.
    #[must_use]
    pub fn keeping(&self, share: Percent) -> Self {
        let kept = |limit: Percent| Percent::pct(limit.to_pct() * share.to_fraction());
        Self { stretch: kept(self.stretch), squeeze: kept(self.squeeze), ..self.clone() }
    }
}

/// The lowest class among `sealants` that takes this demand, as its index.
pub fn smallest_class(sealants: &[Sealant], demand: Demand) -> Option<usize> {
    let taking = (0..sealants.len()).filter(|&at| sealants[at].takes(demand));
    taking.min_by(|&a, &b| {
        let class = |at: usize| sealants[at].stretch.to_pct() + sealants[at].squeeze.to_pct();
        class(a).total_cmp(&class(b))
    })
}

/// The least width at which a joint must be sealed for a class that allows `class` per cent
/// either way, if it moves by `movement` in all and is open by the fraction `open` of that when
/// sealed: W = M·max(f, 1 − f)/S.
pub fn required_width(movement: Length, open: f64, class: Percent) -> Length {
    movement * (open.max(1.0 - open) / class.to_fraction())
}
