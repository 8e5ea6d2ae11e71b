//! What the catalog knows of repairing: methods, tasks, paints, materials, cautions.

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::joint::BeadLay;
use crate::measure::{DateText, Dimension, Hours, Length, Minutes, Money, Percent, ThreePoint};
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
    /// Metres of joint whose slot is wide enough for tape or backer.
    BackedRun,
    /// Square metres painted, once.
    PaintedArea,
    /// Square metres painted, times the coats.
    CoatedArea,
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
            Self::BackedRun => "backed_run",
            Self::PaintedArea => "painted_area",
            Self::CoatedArea => "coated_area",
            Self::BoardedArea => "boarded_area",
            Self::OutlineRun => "outline_run",
            Self::TrimRun => "trim_run",
            Self::BoardRun => "board_run",
            Self::Board => "board",
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
            Self::JointRun | Self::BackedRun | Self::OutlineRun | Self::TrimRun | Self::BoardRun => {
                Dimension::Length
            }
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

/// The methods that can be worked out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum MethodId {
    /// Scrape out and seal again across the V, the slot left empty.
    Reseal,
    /// Scrape out and seal again, pushed in to the tongue.
    ResealOnTongue,
    /// Cut the joints to a reveal that takes a proper bead over tape.
    Reveal,
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
    /// Leave the joints as they are.
    Nothing,
    /// Wait for the other season and measure again.
    Wait,
    /// One of the user's own, by its number.
    Own(u8),
}

impl MethodId {
    /// Those that come with the program.
    pub const ALL: [Self; 12] = [
        Self::Reseal,
        Self::ResealOnTongue,
        Self::Reveal,
        Self::HoldHumidity,
        Self::ShadowLine,
        Self::CoverStrips,
        Self::Splines,
        Self::Relay,
        Self::Replace,
        Self::ManMade,
        Self::Nothing,
        Self::Wait,
    ];

    /// Whether it is one of the user's own.
    pub const fn is_own(self) -> bool {
        matches!(self, Self::Own(_))
    }

    /// As a key in files for other programs.
    pub fn key(self) -> String {
        let key = match self {
            Self::Own(number) => return format!("own_{number}"),
            Self::Reseal => "reseal",
            Self::ResealOnTongue => "reseal_on_tongue",
            Self::Reveal => "reveal",
            Self::HoldHumidity => "hold_humidity",
            Self::ShadowLine => "shadow_line",
            Self::CoverStrips => "cover_strips",
            Self::Splines => "splines",
            Self::Relay => "relay",
            Self::Replace => "replace",
            Self::ManMade => "man_made",
            Self::Nothing => "nothing",
            Self::Wait => "wait",
        };
        key.to_owned()
    }
}

/// What a method leaves behind at the joints, which decides how they move and what shows.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(from = "OutcomeText")]
pub enum Outcome {
    /// A new bead; with `held` in air between 40 and 50 % humidity.
    Bead {
        /// Whether the room's humidity is held.
        held: bool,
        /// How it is laid.
        lay: BeadLay,
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

/// An outcome as files have it. Those of old say of a bead only whether a breaker lies behind it.
#[derive(Deserialize, JsonSchema)]
enum OutcomeText {
    Bead {
        held: bool,
        #[serde(default)]
        lay: BeadLay,
        #[serde(default = "yes")]
        breaker: bool,
    },
    Line,
    Covered,
    Glued,
    Boards {
        moves: f64,
    },
    Unchanged,
}

const fn yes() -> bool {
    true
}

impl From<OutcomeText> for Outcome {
    fn from(text: OutcomeText) -> Self {
        match text {
            OutcomeText::Bead { held, lay, breaker } => {
                Self::Bead { held, lay: if breaker { lay } else { BeadLay::OnTongue } }
            }
            OutcomeText::Line => Self::Line,
            OutcomeText::Covered => Self::Covered,
            OutcomeText::Glued => Self::Glued,
            OutcomeText::Boards { moves } => Self::Boards { moves },
            OutcomeText::Unchanged => Self::Unchanged,
        }
    }
}

/// Something to wait for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum Wait {
    /// The primer dries.
    Primer,
    /// The sealant cures.
    Sealant,
    /// The paint may be coated again.
    Recoat,
    /// The new boards come to the room's moisture.
    Acclimation,
    /// The weeks come in which to seal.
    Season,
}

impl Wait {
    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Primer => "primer",
            Self::Sealant => "sealant",
            Self::Recoat => "recoat",
            Self::Acclimation => "acclimation",
            Self::Season => "season",
        }
    }
}

/// A step of a method.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub enum Step {
    /// Do the task of this id.
    Do(String),
    /// Do the task of this id once for each coat, waiting between.
    Coats(String),
    /// Wait.
    Wait(Wait),
}

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
    /// The boards have no V to guide a tool.
    NoV,
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

/// A repair method.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(rename = "Method")]
pub struct RepairMethod {
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
    /// The chance a year of what the joints' movement does not tell: a strip that splits, a nail that pops;
    /// where humidity is held, that it is not.
    #[serde(default)]
    pub lapses: Percent,
    /// Materials other than sealant, primer and paint, by id.
    pub materials: Vec<String>,
    /// Its steps in order.
    pub steps: Vec<Step>,
}

/// Tasks by which the room is masked.
const MASKS: [&str; 4] = ["protect", "mask_edges", "mask_windows", "mask_fixtures"];
/// Tasks that break painted surfaces.
const DISTURBS: [&str; 7] = ["scrape", "scuff", "widen", "dress", "splines", "take_down", "take_down_whole"];

impl RepairMethod {
    /// The same with two visits: joints are opened and primed now, sealed when the season comes.
    /// `None` if it lays no bead or waits for the season as it is.
    pub fn in_two_visits(&self) -> Option<Self> {
        if self.waits_for_season() {
            return None;
        }
        let bead = self.steps.iter().position(|step| matches!(step, Step::Do(id) if id == "bead"))?;
        let task = |id: &str| Step::Do(id.to_owned());
        let masking =
            self.steps.iter().filter(|step| matches!(step, Step::Do(id) if MASKS.contains(&id.as_str())));
        let unmask = self.does("unmask").then(|| task("unmask"));
        let between =
            unmask.into_iter().chain([task("clean"), Step::Wait(Wait::Season)]).chain(masking.cloned());
        let mut steps = self.steps.clone();
        let between: Vec<Step> = between.collect();
        steps.splice(bead..bead, between);
        Some(Self { steps, ..self.clone() })
    }

    /// Whether it waits for the weeks to seal in.
    pub fn waits_for_season(&self) -> bool {
        self.steps.contains(&Step::Wait(Wait::Season))
    }

    fn does(&self, task: &str) -> bool {
        self.steps.iter().any(|step| matches!(step, Step::Do(id) if id == task))
    }

    /// Times the room is masked.
    pub fn maskings(&self) -> usize {
        self.steps.iter().filter(|step| matches!(step, Step::Do(id) if id == "protect")).count()
    }

    /// Whether it paints the surface.
    pub fn paints(&self) -> bool {
        self.steps.iter().any(|step| matches!(step, Step::Coats(_)))
    }

    /// Times the crew comes for a stretch of days, with weeks between them.
    pub fn visits(&self) -> usize {
        let apart = |step: &&Step| matches!(step, Step::Wait(Wait::Season | Wait::Acclimation));
        1 + self.steps.iter().filter(apart).count()
    }

    /// The same without a second bead: what hardly shrinks as it cures does not sink.
    pub fn without_second_bead(&self) -> Self {
        let second = |step: &Step| matches!(step, Step::Do(id) if id == "second_bead");
        let Some(at) = self.steps.iter().position(second) else { return self.clone() };
        let mut steps = self.steps.clone();
        // The wait before it goes with it; the one after it is the bead's own.
        let with_its_wait = at > 0 && steps[at - 1] == Step::Wait(Wait::Sealant);
        steps.drain(at - usize::from(with_its_wait)..=at);
        Self { steps, ..self.clone() }
    }

    /// The same done lead-safe: containment after each masking, the cleaning check before each cleanup.
    pub fn lead_safe(&self) -> Self {
        let task = |id: &str| Step::Do(id.to_owned());
        let steps = self.steps.iter().flat_map(|step| match step {
            Step::Do(id) if id == "protect" => vec![step.clone(), task("lead_contain")],
            Step::Do(id) if id == "clean" => vec![task("lead_clean"), step.clone()],
            _ => vec![step.clone()],
        });
        let mut materials = self.materials.clone();
        materials.push("lead_set".to_owned());
        Self { steps: steps.collect(), materials, ..self.clone() }
    }

    /// The same from a scaffold, which is put up once the room is covered and is paid for by the week.
    #[must_use]
    pub fn from_scaffold(&self) -> Self {
        let mut materials = self.materials.clone();
        materials.push("scaffold_hire".to_owned());
        Self { materials, ..self.beside_covering(None, Some("scaffold")) }
    }

    /// The same in a furnished room: what stands in it is moved before it is covered.
    #[must_use]
    pub fn among_furniture(&self) -> Self {
        self.beside_covering(Some("furniture"), None)
    }

    /// The same with a task before or after each time the floor is covered.
    fn beside_covering(&self, before: Option<&str>, after: Option<&str>) -> Self {
        let task = |id: &str| Step::Do(id.to_owned());
        let steps = self.steps.iter().flat_map(|step| match step {
            Step::Do(id) if id == "protect" => {
                before.map(task).into_iter().chain([step.clone()]).chain(after.map(task)).collect()
            }
            _ => vec![step.clone()],
        });
        Self { steps: steps.collect(), ..self.clone() }
    }

    /// Whether it breaks painted surfaces: scrapes, sands or takes boards down.
    pub fn disturbs_paint(&self) -> bool {
        DISTURBS.iter().any(|task| self.does(task))
    }
}

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
    /// Share of the paint that reaches the wood.
    pub transfer: Percent,
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
    /// Square metres covered: the painted area again on the floor below, and as much on the walls; for
    /// each time the room is masked.
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
