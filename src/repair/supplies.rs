//! What the catalog knows of what is bought, and of what to watch for.

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::measure::{DateText, Dimension, Hours, Length, Money, Percent, Units};
use crate::named::named;
use crate::wood::Kind;

/// A primer or paint.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Paint {
    /// By what jobs refer to it; it never changes. Empty for an entry of the user's own.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub id: String,
    /// What it is, in general terms.
    pub name: String,
    /// Names it has or had, by which files refer to it too.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub aliases: Vec<String>,
    /// Solids by volume.
    pub solids: Percent,
    /// Dry film of one coat, micrometres.
    pub film: f64,
    /// Share of the paint that reaches the wood by brush and roller.
    pub transfer: Percent,
    /// The same where it is sprayed; `None` for the same share.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub sprayed: Option<Percent>,
    /// Stretch at which its dry film cracks.
    #[serde(default = "cracks_at")]
    pub cracks_at: Percent,
    /// Hours until the next coat.
    pub recoat: Hours,
    /// Can sizes: litres and price, smallest first.
    pub cans: Vec<(f64, Money)>,
    /// The day of those prices.
    #[serde(default)]
    #[schemars(with = "Option<DateText>")]
    pub priced: Option<Date>,
    /// Where the figures are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

named! { Paint }

/// For paints that do not say: that of an interior satin (judgment between published bounds, see
/// `assets/paints.ron`).
const fn cracks_at() -> Percent {
    Percent::pct(35.0)
}

/// What a material's amount goes with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum MaterialPer {
    /// The job.
    Job,
    /// Visits.
    Visit,
    /// Square metres painted.
    PaintedArea,
    /// Square metres covered: the painted area again on the floor below, and where paint is sprayed as much
    /// on the walls; for each time the room is masked.
    CoveredArea,
    /// Square metres of boards.
    BoardedArea,
    /// Metres of free edge around the surfaces, for each time the room is masked.
    OutlineRun,
    /// Metres of new board, cut from the plan's stock lengths.
    BoardRun,
    /// Loose cubic metres of old board.
    BoardVolume,
    /// Sections.
    Section,
    /// Metres of joint treated.
    JointRun,
    /// Metres of joint whose slot is wide enough for tape or backer.
    BackedRun,
    /// Boards handled.
    Board,
    /// Weeks begun in which the crew is on the job.
    Week,
}

impl MaterialPer {
    /// All of them.
    pub const ALL: [Self; 13] = [
        Self::Job,
        Self::Visit,
        Self::PaintedArea,
        Self::CoveredArea,
        Self::BoardedArea,
        Self::OutlineRun,
        Self::BoardRun,
        Self::BoardVolume,
        Self::Section,
        Self::JointRun,
        Self::BackedRun,
        Self::Board,
        Self::Week,
    ];

    /// What its amounts are measured in.
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::Job | Self::Visit | Self::Section | Self::Board | Self::Week => Dimension::Number,
            Self::OutlineRun | Self::BoardRun | Self::JointRun | Self::BackedRun => Dimension::Length,
            Self::PaintedArea | Self::CoveredArea | Self::BoardedArea => Dimension::Area,
            Self::BoardVolume => Dimension::Volume,
        }
    }

    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Job => "job",
            Self::Visit => "visit",
            Self::PaintedArea => "painted_area",
            Self::CoveredArea => "covered_area",
            Self::BoardedArea => "boarded_area",
            Self::OutlineRun => "outline_run",
            Self::BoardRun => "board_run",
            Self::BoardVolume => "board_volume",
            Self::Section => "section",
            Self::JointRun => "joint_run",
            Self::BackedRun => "backed_run",
            Self::Board => "board",
            Self::Week => "week",
        }
    }
}

/// Something bought by the piece.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Material {
    /// Name by which the user's own prices refer to it.
    pub id: String,
    /// What it is.
    pub name: String,
    /// Names it had, by which a price book of old still means it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub aliases: Vec<String>,
    /// Thickness and width, where it is a strip.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub section: Option<(Length, Length)>,
    /// What its amount goes with.
    pub per: MaterialPer,
    /// How much of that one piece is for.
    pub holds: f64,
    /// What is lost of it, on top of what is needed; `None` for nothing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub waste: Option<Percent>,
    /// Price of a piece.
    pub price: Money,
    /// The day of that price.
    #[serde(default)]
    #[schemars(with = "Option<DateText>")]
    pub priced: Option<Date>,
    /// How far to trust it.
    pub kind: Kind,
    /// Where it is from.
    pub source: String,
}

named! { Material }

/// When a caution applies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum CautionWhen {
    /// Always.
    Always,
    /// The house was built before this year, or nobody knows when.
    BuiltBefore(i16),
    /// The same, and the boards may have been caulked before that year too.
    CaulkedBefore(i16),
    /// There is work overhead.
    Overhead,
    /// There is work overhead, or from a ladder or scaffold.
    Ladders,
    /// Boards got wet.
    Wet,
    /// The chosen option lays beads.
    Sealing,
}

/// Whose papers a caution stands on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum ForWhom {
    /// Everyone's.
    #[default]
    Everyone,
    /// The homeowner's.
    Owner,
    /// The crew's.
    Crew,
}

/// A caution.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Caution {
    /// By what other languages refer to it; it never changes.
    pub id: String,
    /// When it applies.
    pub when: CautionWhen,
    /// Whose papers it stands on.
    #[serde(default)]
    pub for_whom: ForWhom,
    /// What it is about.
    pub title: String,
    /// What to heed.
    pub text: String,
    /// The same where the job is in millimeters; empty if the text has no units.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub metric: String,
    /// The rule behind it, with its year.
    pub source: String,
    /// How far to trust the wording.
    pub kind: Kind,
}

impl Caution {
    /// What to heed, in these units.
    pub fn text_in(&self, units: Units) -> &str {
        if units == Units::Millimeters && !self.metric.is_empty() { &self.metric } else { &self.text }
    }

    /// Whether it stands on the homeowner's papers.
    pub fn is_for_owner(&self) -> bool {
        self.for_whom != ForWhom::Crew
    }

    /// Whether it stands on the crew's papers.
    pub fn is_for_crew(&self) -> bool {
        self.for_whom != ForWhom::Owner
    }
}
