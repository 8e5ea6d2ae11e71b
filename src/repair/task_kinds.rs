//! What the catalog knows of tasks: what their time goes with, whose work they are, what slows them down.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::measure::{Dimension, Minutes, ThreePoint};
use crate::named::named;
use crate::wood::Kind;

/// What a task's time goes with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum TaskPer {
    /// Once a visit.
    Visit,
    /// Once a section.
    Section,
    /// Metres of joint treated.
    JointRun,
    /// Metres of joint that are wide enough to get a bead.
    BeadRun,
    /// Metres of joint whose slot is wide enough for tape or backer.
    BackedRun,
    /// Square metres painted, once.
    PaintedArea,
    /// Square metres painted, times the coats.
    CoatedArea,
    /// Metres of groove between boards, times the coats.
    CoatedGrooves,
    /// Square metres of boards.
    BoardedArea,
    /// Metres of free edge around the surfaces: where two of them meet at a ridge there is none.
    OutlineRun,
    /// Metres of trim: around the surfaces, and along both sides of the boards that part their sections.
    TrimRun,
    /// Metres of board handled.
    BoardRun,
    /// Boards handled.
    Board,
    /// Ends of boards handled that are not square.
    AngledEnd,
    /// Windows, doors and other holes that the boards are fitted around.
    Opening,
    /// Windows and doors of the room that are masked.
    Window,
    /// Lights, vents and the like that are taken down or masked.
    Fixture,
    /// Coats of paint.
    Coat,
    /// Days on which the crew is there.
    Day,
    /// The same, for each of the people.
    PersonDay,
    /// Evenings on which the room is handed back.
    Evening,
    /// Hours that people wait in the room for something to dry.
    Standby,
}

impl TaskPer {
    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Visit => "visit",
            Self::Section => "section",
            Self::JointRun => "joint_run",
            Self::BeadRun => "bead_run",
            Self::BackedRun => "backed_run",
            Self::PaintedArea => "painted_area",
            Self::CoatedArea => "coated_area",
            Self::CoatedGrooves => "coated_grooves",
            Self::BoardedArea => "boarded_area",
            Self::OutlineRun => "outline_run",
            Self::TrimRun => "trim_run",
            Self::BoardRun => "board_run",
            Self::Board => "board",
            Self::AngledEnd => "angled_end",
            Self::Opening => "opening",
            Self::Window => "window",
            Self::Fixture => "fixture",
            Self::Coat => "coat",
            Self::Day => "day",
            Self::PersonDay => "person_day",
            Self::Evening => "evening",
            Self::Standby => "standby",
        }
    }

    /// Whether it is known only once the days are laid out: such tasks are steps of no method.
    pub const fn follows_from_the_days(self) -> bool {
        matches!(self, Self::Day | Self::PersonDay | Self::Evening | Self::Standby)
    }

    /// What its batches are measured in.
    pub const fn dimension(self) -> Dimension {
        match self {
            Self::JointRun
            | Self::BeadRun
            | Self::BackedRun
            | Self::CoatedGrooves
            | Self::OutlineRun
            | Self::TrimRun
            | Self::BoardRun => Dimension::Length,
            Self::PaintedArea | Self::CoatedArea | Self::BoardedArea => Dimension::Area,
            _ => Dimension::Number,
        }
    }
}

/// Whose work a task is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum Trade {
    /// A painter's.
    #[default]
    Painter,
    /// A carpenter's.
    Carpenter,
}

impl Trade {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::Painter, Self::Carpenter];

    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Painter => "painter",
            Self::Carpenter => "carpenter",
        }
    }
}

/// What a task's time goes with besides: how much of it, and the minutes of one person for that.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct AlsoPer {
    /// What the time goes with.
    pub per: TaskPer,
    /// How much of that `minutes` is for.
    pub batch: f64,
    /// Expected minutes of one person for a batch.
    pub minutes: Minutes,
}

/// One thing to do.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Task {
    /// Name by which methods and the user's own rates refer to it.
    pub id: String,
    /// Ids it had while its time went with something else; the user's own methods may still have them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub formerly: Vec<String>,
    /// What is done.
    pub name: String,
    /// The same in a word or two, for the plan of a day; empty where the plan does not name it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub short: Option<String>,
    /// Whose work it is.
    #[serde(default)]
    pub trade: Trade,
    /// What its time goes with.
    pub per: TaskPer,
    /// How much of that `minutes` is for.
    pub batch: f64,
    /// Minutes of one person for a batch.
    pub minutes: ThreePoint,
    /// Expected minutes that it takes besides, however much there is, if there is any.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fixed: Option<Minutes>,
    /// What its time goes with besides.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub also: Option<AlsoPer>,
    /// People it takes at once where long boards are held overhead; nothing for one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub people: Option<u32>,
    /// How far to trust it.
    pub kind: Kind,
    /// Where it is from.
    pub source: String,
}

named! { Task, no aliases }

/// What makes a task slower or quicker than the catalog's minutes take for granted: a ceiling of
/// ordinary height over an empty room, V-groove boards, old sealant that cuts, joints of 1/16 in and
/// more.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Circumstance {
    /// The boards are on walls only.
    Wall,
    /// The work is done from a ladder.
    Ladder,
    /// The work is done from a scaffold.
    Scaffold,
    /// The room is hard to get to or to move in.
    Tight,
    /// The old sealant is hard.
    HardSealant,
    /// The old sealant is soft and sticky.
    SoftSealant,
    /// There is furniture in the room.
    Furnished,
    /// The joints are finer than 1/16 in.
    FineJoints,
    /// Old paint may hold lead, and more of it is disturbed than counts as minor.
    LeadSafe,
    /// The boards have no V to guide a tool.
    NoV,
}

impl Circumstance {
    /// As a key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Wall => "wall",
            Self::Ladder => "ladder",
            Self::Scaffold => "scaffold",
            Self::Tight => "tight",
            Self::HardSealant => "hard_sealant",
            Self::SoftSealant => "soft_sealant",
            Self::Furnished => "furnished",
            Self::FineJoints => "fine_joints",
            Self::LeadSafe => "lead_safe",
            Self::NoV => "no_v",
        }
    }
}

/// How much one circumstance changes the time of some tasks.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Condition {
    /// Which.
    pub when: Circumstance,
    /// In words.
    pub name: String,
    /// The tasks it changes, by id.
    pub tasks: Vec<String>,
    /// Their time is multiplied by this.
    pub times: f64,
    /// How far to trust it.
    pub kind: Kind,
    /// Where it is from.
    pub source: String,
}
