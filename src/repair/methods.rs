//! The repair methods: what each leaves at the joints, and its steps.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::joint::BeadLay;
use crate::measure::Percent;

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

    /// Whether a task is one of its steps, by the task's id.
    pub fn does(&self, task: &str) -> bool {
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

    /// The same where there is no old sealant to scrape out.
    pub fn without_scraping(&self) -> Self {
        let steps = self.steps.iter().filter(|step| !matches!(step, Step::Do(id) if id == "scrape"));
        Self { steps: steps.cloned().collect(), ..self.clone() }
    }

    /// Whether it sprays paint.
    pub fn sprays(&self) -> bool {
        self.does("spray_up")
    }

    /// The same painted with brush and roller: no sprayer to set up and flush, and nothing to mask but what
    /// the paint is cut in along.
    #[must_use]
    pub fn brushed(&self) -> Self {
        let steps = self.steps.iter().filter_map(|step| match step {
            Step::Do(id) => match id.as_str() {
                "spray_up" | "mask_windows" => None,
                "mask_edges" => Some(Step::Do("tape_edges".to_owned())),
                "unmask" => Some(Step::Do("pull_tape".to_owned())),
                _ => Some(step.clone()),
            },
            Step::Coats(id) if id == "coat" => Some(Step::Coats("brush_coat".to_owned())),
            Step::Coats(_) | Step::Wait(_) => Some(step.clone()),
        });
        Self { steps: steps.collect(), ..self.clone() }
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
