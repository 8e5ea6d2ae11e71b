//! What the shelf knows of repairing: methods, tasks, paints, materials, cautions.

use serde::{Deserialize, Serialize};

use crate::measure::{Hours, Money, Percent, ThreePoint};
use crate::wood::Kind;

/// What a task's time goes with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum TaskPer {
    /// Once a visit.
    Visit,
    /// Once a section.
    Section,
    /// Metres of joint treated.
    JointRun,
    /// Square metres painted, once.
    PaintedArea,
    /// Square metres painted, times the coats.
    CoatedArea,
    /// Square metres of boards.
    BoardedArea,
    /// Metres around the surfaces.
    OutlineRun,
}

/// One thing to do.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Task {
    /// Name by which methods and the user's own rates refer to it.
    pub id: String,
    /// What is done.
    pub name: String,
    /// What its time goes with.
    pub per: TaskPer,
    /// How much of that `minutes` is for.
    pub batch: f64,
    /// Minutes of one person for a batch.
    pub minutes: ThreePoint,
    /// How far to trust it.
    pub kind: Kind,
    /// Where it is from.
    pub source: String,
}

/// The methods that can be worked out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum MethodId {
    /// Scrape out and seal again.
    Reseal,
    /// The same, and hold the room's humidity in a band.
    HoldHumidity,
    /// Open the joints to clean lines, tongues painted.
    ShadowLine,
    /// Strips over the joints.
    CoverStrips,
    /// Wood splines glued into the joints.
    Splines,
    /// Pull the same boards and lay them again, with a filler board.
    Relay,
    /// New boards, dried to the room.
    Replace,
    /// New boards of a man-made material.
    ManMade,
    /// Wait for the other season and measure again.
    Wait,
}

impl MethodId {
    /// All of them.
    pub const ALL: [Self; 9] = [
        Self::Reseal,
        Self::HoldHumidity,
        Self::ShadowLine,
        Self::CoverStrips,
        Self::Splines,
        Self::Relay,
        Self::Replace,
        Self::ManMade,
        Self::Wait,
    ];

    /// As a key in files for other programs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Reseal => "reseal",
            Self::HoldHumidity => "hold_humidity",
            Self::ShadowLine => "shadow_line",
            Self::CoverStrips => "cover_strips",
            Self::Splines => "splines",
            Self::Relay => "relay",
            Self::Replace => "replace",
            Self::ManMade => "man_made",
            Self::Wait => "wait",
        }
    }
}

/// What a method leaves behind at the joints, which decides how they move and what shows.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Outcome {
    /// A new bead; with `held` in air between 40 and 50 % humidity.
    Bead {
        /// Whether the room's humidity is held.
        held: bool,
    },
    /// Open lines by design.
    Line,
    /// Joints hidden under strips.
    Covered,
    /// Boards glued to one.
    Glued,
    /// Boards laid tight, which move by this share of what the wood there now does.
    Boards {
        /// The share.
        moves: f64,
    },
    /// Joints as they are.
    Unchanged,
}

/// Something to wait for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Wait {
    /// The primer dries.
    Primer,
    /// The sealant cures.
    Sealant,
    /// The paint may be coated again.
    Recoat,
    /// The new boards come to the room's moisture.
    Acclimation,
}

/// A step of a method.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum Step {
    /// Do the task of this id.
    Do(String),
    /// Do the task of this id once for each coat, waiting between.
    Coats(String),
    /// Wait.
    Wait(Wait),
}

/// A way to mend the joints.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Method {
    /// Which it is.
    pub id: MethodId,
    /// Its name.
    pub name: String,
    /// What it leaves at the joints.
    pub outcome: Outcome,
    /// How it looks afterwards.
    pub look: String,
    /// What it means for those who live there.
    pub upset: String,
    /// What the letter says of it, a sentence or two in the first person plural.
    pub says: String,
    /// Materials besides sealant, primer and paint, by id.
    pub materials: Vec<String>,
    /// Its steps in order.
    pub steps: Vec<Step>,
}

impl Method {
    /// Whether it paints the surface.
    pub fn paints(&self) -> bool {
        self.steps.iter().any(|step| matches!(step, Step::Coats(_)))
    }

    /// Times the crew comes and sets up.
    pub fn visits(&self) -> usize {
        self.steps.iter().filter(|step| matches!(step, Step::Do(id) if id == "travel")).count().max(1)
    }
}

/// A primer or paint.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Paint {
    /// What it is, in general terms.
    pub name: String,
    /// Solids by volume.
    pub solids: Percent,
    /// Dry film of one coat, micrometres.
    pub film: f64,
    /// Share of the paint that reaches the wood.
    pub transfer: Percent,
    /// Hours until the next coat.
    pub recoat: Hours,
    /// Can sizes: litres and price.
    pub cans: Vec<(f64, Money)>,
    /// Where the figures are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

/// What a material's amount goes with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum MaterialPer {
    /// Visits.
    Visit,
    /// Square metres painted.
    PaintedArea,
    /// Square metres covered: the painted area again on the floor below, and as much on the walls.
    CoveredArea,
    /// Square metres of boards.
    BoardedArea,
    /// Metres around the surfaces.
    OutlineRun,
    /// Metres of new board, waste included.
    BoardRun,
    /// Loose cubic metres of old board.
    BoardVolume,
    /// Sections.
    Section,
    /// Metres of joint treated.
    JointRun,
}

/// Something bought by the piece.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Material {
    /// Name by which the user's own prices refer to it.
    pub id: String,
    /// What it is.
    pub name: String,
    /// What its amount goes with.
    pub per: MaterialPer,
    /// How much of that one piece is for.
    pub holds: f64,
    /// Price of a piece.
    pub price: Money,
    /// How far to trust it.
    pub kind: Kind,
    /// Where it is from.
    pub source: String,
}

/// When a caution applies.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum CautionWhen {
    /// Always.
    Always,
    /// The house was built before this year, or nobody knows when.
    BuiltBefore(i16),
    /// There is work overhead.
    Overhead,
}

/// A caution.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Caution {
    /// When it applies.
    pub when: CautionWhen,
    /// What it is about.
    pub title: String,
    /// What to heed.
    pub text: String,
    /// The rule behind it.
    pub source: String,
    /// How far to trust the wording.
    pub kind: Kind,
}
