//! What the user decides about the repair.

use std::collections::BTreeMap;

use jiff::civil::Date;
use serde::{Deserialize, Serialize};

use super::catalogue::MethodId;
use super::risk::CallbackRule;
use crate::measure::{Hours, Length, Minutes, Moisture, Money, Percent, ThreePoint};

/// Which joints are sealed again.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Scope {
    /// Those found or estimated open.
    #[default]
    OpenJoints,
    /// Every joint between boards, and every other joint found open.
    EveryBoardJoint,
}

/// What tax falls on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum TaxOn {
    /// Nothing.
    Nothing,
    /// What is bought.
    #[default]
    Materials,
    /// The whole price.
    Everything,
}

/// A section scraped out against the clock.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Trial {
    /// Name of its surface.
    pub surface: String,
    /// Name of the section.
    pub section: String,
    /// Minutes of one person it took; nothing while they have not been typed.
    pub minutes: Option<Minutes>,
}

/// How the bead sits in the joint.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct BeadShape {
    /// The bead is as deep as the gap is wide, but at least this.
    pub least_depth: Length,
    /// Share of the V's section that is filled; the rest stays visible.
    pub v_filled: Percent,
    /// Whether a backer or a bond breaker keeps the bead off the tongue behind it. A bead bonded on
    /// three sides cannot give.
    pub bond_breaker: bool,
    /// Sealant lost in nozzles, wiping and the end of each cartridge.
    pub waste: Percent,
}

impl Default for BeadShape {
    fn default() -> Self {
        Self {
            least_depth: Length::inches(0.125),
            v_filled: Percent::pct(25.0),
            bond_breaker: true,
            waste: Percent::pct(15.0),
        }
    }
}

/// Share of its class that a bead keeps if the tongue behind it is a third bonded side. Assumption:
/// guides only say that it must not be.
const THREE_SIDED_KEEPS: Percent = Percent::pct(50.0);

impl BeadShape {
    /// Share of its class that a bead so laid keeps.
    pub const fn keeps(&self) -> Percent {
        if self.bond_breaker { Percent::pct(100.0) } else { THREE_SIDED_KEEPS }
    }
}

/// Rates that make a price of hours and materials.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Prices {
    /// Sign or letters of the currency.
    pub currency: String,
    /// An hour of one person with everything it costs the firm: wage, taxes, insurance.
    pub labour: Money,
    /// Overhead on labour and materials.
    pub overhead: Percent,
    /// Profit on all of that: a markup on cost, not a margin of the price.
    pub profit: Percent,
    /// Sales tax.
    pub tax: Percent,
    /// What the tax falls on.
    pub tax_on: TaxOn,
}

impl Default for Prices {
    fn default() -> Self {
        Self {
            currency: "$".to_owned(),
            labour: Money::cents(48_00),
            overhead: Percent::pct(18.0),
            profit: Percent::pct(12.0),
            tax: Percent::pct(7.0),
            tax_on: TaxOn::Materials,
        }
    }
}

/// Who bears which share of the price. The owner bears what the others do not.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Payers {
    /// The contractor's share.
    pub contractor: Percent,
    /// The supplier's share.
    pub supplier: Percent,
}

impl Payers {
    /// The owner's share: the rest, which is negative if the others' add up to more than 100 %.
    pub fn owner(&self) -> Percent {
        Percent::pct(100.0) - self.contractor - self.supplier
    }
}

/// What the user decides about the repair.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Plan {
    /// The method the papers speak of.
    pub chosen: MethodId,
    /// Sealant, by its name in the shelf.
    pub sealant: String,
    /// Primer, by its name in the shelf.
    pub primer: String,
    /// Paint, by its name in the shelf.
    pub paint: String,
    /// Coats of paint.
    pub coats: u32,
    /// Which joints are sealed.
    pub scope: Scope,
    /// A joint at least this wide is open.
    pub open_from: Length,
    /// A gap narrower than this cannot be filled.
    pub narrowest: Length,
    /// First day of the sealing, or `None` for the best week.
    pub seal_on: Option<Date>,
    /// The bead.
    pub bead: BeadShape,
    /// People in the crew.
    pub crew: u32,
    /// Hours they work in a day.
    pub day: Hours,
    /// Moisture at which new boards are delivered.
    pub delivered_at: Moisture,
    /// Days that new boards lie in the room.
    pub acclimation_days: u32,
    /// Share of new board lost to ends and defects.
    pub board_waste: Percent,
    /// A timed section, if one was scraped.
    pub trial: Option<Trial>,
    /// Rates of money.
    pub prices: Prices,
    /// The user's own minutes for tasks, by task id, in place of the shelf's.
    pub own_minutes: BTreeMap<String, ThreePoint>,
    /// The user's own prices, by material id or by the name of sealant or paint (its largest can).
    pub own_prices: BTreeMap<String, Money>,
    /// Who pays.
    pub payers: Payers,
    /// Years the repair is warranted.
    pub warranty_years: u32,
    /// Yearly rate at which a later expense is worth less than one today.
    pub discount: Percent,
    /// When the owner calls again.
    pub callback: CallbackRule,
}

impl Plan {
    /// The coats that are reckoned with: more than ten are a slip of the finger.
    pub fn usable_coats(&self) -> u32 {
        self.coats.min(10)
    }
}

impl Default for Plan {
    fn default() -> Self {
        Self {
            chosen: MethodId::Reseal,
            sealant: "Hybrid, paintable, class 50".to_owned(),
            primer: "Stain-blocking primer".to_owned(),
            paint: "Interior acrylic satin, sprayed".to_owned(),
            coats: 2,
            scope: Scope::default(),
            open_from: Length::inches(1.0 / 64.0),
            narrowest: Length::inches(1.0 / 32.0),
            seal_on: None,
            bead: BeadShape::default(),
            crew: 2,
            day: Hours::h(8.0),
            delivered_at: Moisture::pct(12.0),
            acclimation_days: 14,
            board_waste: Percent::pct(12.0),
            trial: None,
            prices: Prices::default(),
            own_minutes: BTreeMap::new(),
            own_prices: BTreeMap::new(),
            payers: Payers::default(),
            warranty_years: 2,
            discount: Percent::pct(5.0),
            callback: CallbackRule::default(),
        }
    }
}
