//! What a joint asks of the sealant in it.

use serde::{Deserialize, Serialize};

use crate::measure::{Hours, Length, Money, Percent, Volume};
use crate::wood::Kind;

/// A sealant on the shelf.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Sealant {
    /// What it is, in general terms.
    pub name: String,
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
    /// Contents of a cartridge.
    pub cartridge: Volume,
    /// Price of a cartridge.
    pub price: Money,
    /// Where class and limits are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

/// What one joint asks of its bead, in per cent of the width at sealing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Demand {
    /// Most it is stretched.
    pub stretch: Percent,
    /// Most it is squeezed; 100 % is a closed joint.
    pub squeeze: Percent,
}

/// The demand on a bead sealed at width `sealed` in a joint that later runs from `narrowest` to
/// `widest`. `None` if there was no gap to seal.
pub fn demand(sealed: Length, narrowest: Length, widest: Length) -> Option<Demand> {
    if sealed <= Length::ZERO {
        return None;
    }
    let share = |change: Length| Percent::pct((100.0 * change.to_m() / sealed.to_m()).max(0.0));
    Some(Demand { stretch: share(widest - sealed), squeeze: share(sealed - narrowest) })
}

impl Sealant {
    /// Whether the sealant takes this demand.
    pub fn takes(&self, demand: Demand) -> bool {
        demand.stretch <= self.stretch && demand.squeeze <= self.squeeze
    }
}

/// The least width at which a joint must be sealed for a class that allows `class` per cent
/// either way, if it moves by `movement` in all and is open by the fraction `open` of that when
/// sealed: W = M·max(f, 1 − f)/S.
pub fn required_width(movement: Length, open: f64, class: Percent) -> Length {
    movement * (open.max(1.0 - open) / class.to_fraction())
}
