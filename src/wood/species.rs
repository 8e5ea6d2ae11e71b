//! Species and what the tables say of their shrinkage.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::measure::{Angle, Moisture, Span};
use crate::named::Named;

/// How far a value can be trusted, by where it comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum Kind {
    /// Printed in the named source.
    Published,
    /// From the named source, but quoted from memory and not looked up.
    FromMemory,
    /// Trade knowledge with no published source.
    CommonPractice,
    /// Ours, to be replaced by the user's own figure.
    Assumption,
}

impl Kind {
    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Published => "published",
            Self::FromMemory => "from_memory",
            Self::CommonPractice => "common_practice",
            Self::Assumption => "assumption",
        }
    }
}

/// Width change per per cent of moisture between 6 and 14 %, as a fraction of the width.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Coefficients {
    /// Quarter-sawn: `C_R`.
    pub radial: f64,
    /// Flat-sawn: `C_T`.
    pub tangential: f64,
    /// How far to trust them.
    pub kind: Kind,
    /// Where they are printed.
    pub source: String,
}

/// Shrinkage from green to oven-dry, in per cent of the green width.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct TotalShrinkage {
    /// Quarter-sawn: `S_R`.
    pub radial: f64,
    /// Flat-sawn: `S_T`.
    pub tangential: f64,
    /// How far to trust it.
    pub kind: Kind,
    /// Where it is printed.
    pub source: String,
}

/// One species. At least one of the two tables knows it; the other follows from
/// C = (S/f) / (100 − S (f − 10)/f), with f the moisture under which shrinkage starts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Species {
    /// By what jobs refer to it; it never changes.
    #[serde(default)]
    pub id: String,
    /// Name as the handbook prints it.
    pub name: String,
    /// Names it has or had, by which files refer to it too.
    #[serde(default)]
    pub aliases: Vec<String>,
    /// Trade names in the US under which it is sold, besides its name. Several species may share one.
    #[serde(default)]
    pub sold_as: Vec<String>,
    /// Whether it is a softwood: only their lumber bears moisture stamps.
    #[serde(default)]
    pub softwood: bool,
    /// Oven-dry mass over the mass of water in the volume at 12 % moisture (Wood Handbook
    /// Table 5-3, from memory).
    pub specific_gravity: f64,
    /// Coefficients for 6 to 14 %.
    pub coefficients: Option<Coefficients>,
    /// Total shrinkage.
    pub shrinkage: Option<TotalShrinkage>,
    /// The moisture in per cent under which the width starts to shrink.
    pub shrinks_below: f64,
}

impl Named for Species {
    fn id(&self) -> &str {
        &self.id
    }

    fn name(&self) -> &str {
        &self.name
    }

    fn aliases(&self) -> &[String] {
        &self.aliases
    }

    fn sold_as(&self) -> &[String] {
        &self.sold_as
    }

    fn moves(&self) -> f64 {
        self.coefficient(Angle::ZERO)
    }
}

/// Where a ring angle lies between the two cuts.
pub(super) fn between(radial: f64, tangential: f64, ring: Angle) -> f64 {
    let cos2 = ring.to_radians().cos().powi(2);
    tangential * cos2 + radial * (1.0 - cos2)
}

impl Species {
    /// The band over which [`Species::coefficient`] holds: 6 to 14 %.
    pub const COEFFICIENT_BAND: Span<Moisture> = Span { low: Moisture::pct(6.0), high: Moisture::pct(14.0) };

    /// Board-to-board coefficient of variation of shrinkage: about 15 % (Wood Handbook ch. 4,
    /// from memory).
    pub const SCATTER: f64 = 0.15;

    /// Width change per per cent of moisture, 6 to 14 %, for growth rings at `ring` to the face: 0
    /// flat-sawn, 90 quarter-sawn. Fraction of the width.
    pub fn coefficient(&self, ring: Angle) -> f64 {
        match (&self.coefficients, &self.shrinkage) {
            (Some(c), _) => between(c.radial, c.tangential, ring),
            (None, Some(s)) => {
                let (s, f) = (between(s.radial, s.tangential, ring), self.shrinks_below);
                s / f / (100.0 - s * (f - 10.0) / f)
            }
            (None, None) => 0.0,
        }
    }

    /// Shrinkage from green to oven-dry for growth rings at `ring`, in per cent of the green width.
    ///
    /// Worked out from the coefficient where there is one, even if the shrinkage is printed too: a
    /// handful of species have the two tables disagree, and movement must not jump where one
    /// relation hands over to the other.
    pub fn total_shrinkage(&self, ring: Angle) -> f64 {
        match (&self.coefficients, &self.shrinkage) {
            (Some(c), _) => {
                let (c, f) = (between(c.radial, c.tangential, ring), self.shrinks_below);
                100.0 * c * f / (1.0 + c * (f - 10.0))
            }
            (None, Some(s)) => between(s.radial, s.tangential, ring),
            (None, None) => 0.0,
        }
    }

    /// Oven-dry mass of a cubic metre of the wood, kg/m³.
    pub fn density(&self) -> f64 {
        1000.0 * self.specific_gravity
    }

    /// Where the value behind [`Species::coefficient`] comes from; `None` without a table.
    pub fn source(&self) -> Option<CoefficientSource<'_>> {
        match (&self.coefficients, &self.shrinkage) {
            (Some(c), _) => Some(CoefficientSource { worked_out: false, source: &c.source, kind: c.kind }),
            (None, Some(s)) => Some(CoefficientSource { worked_out: true, source: &s.source, kind: s.kind }),
            (None, None) => None,
        }
    }
}

/// Where a species' coefficient comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CoefficientSource<'a> {
    /// Whether it is worked out from the shrinkage there, rather than printed.
    pub worked_out: bool,
    /// Where it is printed.
    pub source: &'a str,
    /// How far to trust it.
    pub kind: Kind,
}
