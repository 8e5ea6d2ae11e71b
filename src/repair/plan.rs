//! What the user decides about the repair.

use std::collections::BTreeMap;

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::methods::MethodId;
use super::prices::Prices;
use super::risk::CallbackRule;
use crate::joint::BeadForm;
use crate::measure::{DateText, Hours, Length, Minutes, Moisture, Money, Percent, ThreePoint};

/// Which joints are sealed again.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum Scope {
    /// Those found or estimated open.
    #[default]
    OpenJoints,
    /// Every joint between boards, and every other joint found open.
    EveryBoardJoint,
}

/// A section scraped out against the clock.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
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
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct BeadShape {
    /// How deep a bead lies in the slot where no V holds it: between square edges, and in a reveal.
    pub least_depth: Length,
    /// Share of the V's depth that is filled; the rest stays visible.
    pub v_filled: Percent,
    /// How far a bead across a V reaches into the slot below it.
    pub in_slot: Length,
    /// How far the middle of its face lies below its edges, as a share of the face's width: 0 is flush.
    pub hollow: Percent,
    /// Sealant lost in nozzles, wiping and the end of each cartridge.
    pub waste: Percent,
}

impl Default for BeadShape {
    fn default() -> Self {
        Self {
            least_depth: Length::inches(0.125),
            v_filled: Percent::pct(50.0),
            in_slot: Length::ZERO,
            hollow: Percent::ZERO,
            waste: Percent::pct(15.0),
        }
    }
}

impl BeadShape {
    /// The form of the bead alone.
    pub const fn form(&self) -> BeadForm {
        let Self { least_depth, v_filled, in_slot, hollow, .. } = *self;
        BeadForm { v_filled, in_slot, hollow, least_depth }
    }
}

/// How high the work is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum Height {
    /// As the drawing says: a ladder under a slope and on a high wall, else a step platform.
    #[default]
    ByDrawing,
    /// Within reach from the floor or a step platform.
    Steps,
    /// From a ladder.
    Ladder,
    /// From a scaffold.
    Scaffold,
}

/// How paint goes on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum Painting {
    /// Whichever takes fewer hours here, masking and cleaning up included; where few of the joints are sealed, at
    /// those alone.
    #[default]
    Quicker,
    /// Sprayed and back-brushed.
    Sprayed,
    /// With brush and roller.
    Brushed,
    /// With a brush, at the joints that are sealed alone.
    JointsOnly,
}

/// What the old sealant is like to cut out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum OldSealant {
    /// It cuts.
    #[default]
    Cuts,
    /// It is hard and chips.
    Hard,
    /// It is soft and smears.
    Soft,
    /// There is none.
    Missing,
}

/// What is known of lead in the old paint.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum LeadPaint {
    /// Nothing: the year the house was built decides.
    #[default]
    ByAge,
    /// A certified test found none.
    TestedFree,
}

/// What the crew finds in the room.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Site {
    /// How high the work is.
    pub height: Height,
    /// What the old sealant is like.
    pub old_sealant: OldSealant,
    /// Whether there is furniture in the room.
    pub furnished: bool,
    /// Whether the room is hard to get to or to move in.
    pub tight: bool,
    /// Windows and doors that are masked before spraying. Left out: those that are drawn, or three.
    #[serde(skip_serializing_if = "Option::is_none", deserialize_with = "plain", serialize_with = "plainly")]
    #[schemars(with = "u32")]
    pub windows: Option<u32>,
    /// Lights, vents, fans and the like that are taken down or masked. Left out: two.
    #[serde(skip_serializing_if = "Option::is_none", deserialize_with = "plain", serialize_with = "plainly")]
    #[schemars(with = "u32")]
    pub fixtures: Option<u32>,
    /// Whether the room is handed back every evening.
    pub handed_back: bool,
    /// What is known of lead in the old paint.
    pub lead: LeadPaint,
}

/// Windows and doors of a room in whose drawing there are none. Assumption.
pub const ASSUMED_WINDOWS: u32 = 3;
/// Lights and vents of a room of which nobody said how many there are. Assumption.
pub const ASSUMED_FIXTURES: u32 = 2;

/// A count that a file has as it is, or not at all.
fn plain<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Option<u32>, D::Error> {
    u32::deserialize(deserializer).map(Some)
}

#[expect(clippy::ref_option, reason = "the form that serde calls")]
fn plainly<S: Serializer>(count: &Option<u32>, serializer: S) -> Result<S::Ok, S::Error> {
    count.unwrap_or_default().serialize(serializer)
}

/// How new boards are bought and cut.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Stock {
    /// Lengths to be had.
    pub lengths: Vec<Length>,
    /// Lost in each cut.
    pub kerf: Length,
    /// Cut off a board before it is used, both ends together.
    pub end_trim: Length,
}

impl Default for Stock {
    fn default() -> Self {
        Self {
            lengths: [8.0, 10.0, 12.0, 14.0, 16.0].map(|feet| Length::inches(12.0 * feet)).to_vec(),
            kerf: Length::inches(0.125),
            end_trim: Length::inches(1.0),
        }
    }
}

/// A line of the price's build-up.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
pub enum PriceLine {
    /// Wages with the labor burden.
    #[serde(rename = "Labour")]
    Labor,
    /// What is bought.
    Materials,
    /// What is hired or worn.
    Equipment,
    /// Overhead.
    Overhead,
    /// What covers work that turns out to cost more than expected.
    Contingency,
    /// Profit.
    Profit,
    /// Callbacks to be expected within the warranty.
    Callbacks,
    /// What is missing to the minimum charge.
    Minimum,
    /// Tax.
    Tax,
    /// Rounding of the total.
    Rounding,
}

impl PriceLine {
    /// All of them, in the order of the build-up.
    pub const ALL: [Self; 10] = [
        Self::Labor,
        Self::Materials,
        Self::Equipment,
        Self::Overhead,
        Self::Contingency,
        Self::Profit,
        Self::Callbacks,
        Self::Minimum,
        Self::Tax,
        Self::Rounding,
    ];

    /// Its key in files for other programs and in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Labor => "labour",
            Self::Materials => "materials",
            Self::Equipment => "equipment",
            Self::Overhead => "overhead",
            Self::Contingency => "contingency",
            Self::Callbacks => "callbacks",
            Self::Profit => "profit",
            Self::Minimum => "minimum",
            Self::Tax => "tax",
            Self::Rounding => "rounding",
        }
    }
}

/// What two of the three payers bear; the owner bears the rest.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Shares {
    /// The contractor's share.
    pub contractor: Percent,
    /// The supplier's share.
    pub supplier: Percent,
}

impl Shares {
    /// The owner's share: the rest, which is negative if the others' add up to more than 100 %.
    pub fn owner(&self) -> Percent {
        Percent::pct(100.0) - self.contractor - self.supplier
    }
}

/// Who bears which share of the price.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Payers {
    /// The contractor's share.
    pub contractor: Percent,
    /// The supplier's share.
    pub supplier: Percent,
    /// Lines of the price that are shared otherwise.
    pub lines: BTreeMap<PriceLine, Shares>,
    /// Whether it was said that the owner pays all; shares of the others say by themselves who pays.
    pub agreed: bool,
}

impl Payers {
    /// The shares of every line that has none of its own.
    pub const fn overall(&self) -> Shares {
        Shares { contractor: self.contractor, supplier: self.supplier }
    }

    /// Whether nobody has said yet who pays: then the owner's whole is no more than a preset.
    pub fn are_open(&self) -> bool {
        *self == Self::default()
    }

    /// The shares of a line.
    pub fn of(&self, line: PriceLine) -> Shares {
        self.lines.get(&line).copied().unwrap_or(self.overall())
    }
}

/// What the user decides about the repair.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Plan {
    /// The method the papers speak of.
    pub chosen: MethodId,
    /// Whether that is whichever is recommended: in a new job until somebody chooses one.
    pub as_recommended: bool,
    /// Sealant, by its id in the catalog, or by a name it has or had there.
    pub sealant: String,
    /// Primer, by its id in the catalog, or by a name it has or had there.
    pub primer: String,
    /// Paint, by its id in the catalog, or by a name it has or had there.
    pub paint: String,
    /// The paint's color, in the user's words.
    pub color: String,
    /// Coats of paint.
    pub coats: u32,
    /// How paint goes on.
    pub painting: Painting,
    /// Which joints are sealed.
    pub scope: Scope,
    /// A joint at least this wide is open.
    pub open_from: Length,
    /// A gap narrower than this cannot be filled.
    pub narrowest: Length,
    /// First day of the sealing, or `None` for the best week.
    #[schemars(with = "Option<DateText>")]
    pub seal_on: Option<Date>,
    /// The bead.
    pub bead: BeadShape,
    /// People in the crew.
    pub crew: u32,
    /// Hours of a day that each is paid for, the drive included.
    pub day: Hours,
    /// Hour of the day at which they are there.
    pub starts: Hours,
    /// Workdays from the visit until the crew can come.
    pub lead_days: u32,
    /// Workdays from the visit until boards that are ordered have come.
    pub order_days: u32,
    /// Lunch break, which is not paid.
    pub lunch: Minutes,
    /// Hours by which they stay late rather than come back.
    pub stays_late: Hours,
    /// Moisture at which new boards are delivered.
    pub delivered_at: Moisture,
    /// Days that new boards lie in the room.
    pub acclimation_days: u32,
    /// Spare boards, as a share of the new boards that are needed.
    pub board_waste: Percent,
    /// How new boards are bought and cut.
    pub stock: Stock,
    /// Whether joints are opened and primed now and sealed on a second visit in the best weeks.
    pub two_visits: bool,
    /// Whether the crew works on Saturdays and Sundays too.
    pub weekends: bool,
    /// Whether packs for more than one caulking gun may be mixed.
    pub two_guns: bool,
    /// What the crew finds in the room.
    pub site: Site,
    /// A timed section, if one was scraped.
    pub trial: Option<Trial>,
    /// Whether the time that the timed section took is charged.
    pub charge_timed: bool,
    /// Rates of money.
    pub prices: Prices,
    /// The user's own minutes for tasks, by task id, in place of the catalog's.
    pub own_minutes: BTreeMap<String, ThreePoint>,
    /// The user's own prices, by the id of a line of the buying list.
    pub own_prices: BTreeMap<String, Money>,
    /// Pieces that are there already, in the van or left over, by the id of a line of the buying list.
    pub on_hand: BTreeMap<String, u32>,
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
    /// Chooses a method, whichever is recommended.
    pub const fn choose(&mut self, method: MethodId) {
        self.chosen = method;
        self.as_recommended = false;
    }
}

impl Default for Plan {
    fn default() -> Self {
        Self {
            chosen: MethodId::Reseal,
            as_recommended: false,
            sealant: "hybrid-50".to_owned(),
            primer: "stain-blocking-primer".to_owned(),
            paint: "interior-satin-sprayed".to_owned(),
            color: String::new(),
            coats: 2,
            painting: Painting::default(),
            scope: Scope::default(),
            open_from: Length::inches(1.0 / 64.0),
            narrowest: Length::inches(1.0 / 32.0),
            seal_on: None,
            bead: BeadShape::default(),
            crew: 2,
            day: Hours::h(8.0),
            starts: Hours::h(8.0),
            lead_days: 5,
            order_days: 10,
            lunch: Minutes::of(30.0),
            stays_late: Hours::h(1.0),
            delivered_at: Moisture::pct(12.0),
            acclimation_days: 14,
            board_waste: Percent::pct(8.0),
            stock: Stock::default(),
            two_visits: false,
            weekends: false,
            two_guns: false,
            site: Site::default(),
            trial: None,
            charge_timed: true,
            prices: Prices::default(),
            own_minutes: BTreeMap::new(),
            own_prices: BTreeMap::new(),
            on_hand: BTreeMap::new(),
            payers: Payers::default(),
            warranty_years: 2,
            discount: Percent::pct(5.0),
            callback: CallbackRule::default(),
        }
    }
}
