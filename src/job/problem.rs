//! What is wrong with a job, as data: where, what, and the way out.

use super::document::Job;
use super::fields::{At, Field};

/// How much a problem matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// Worth knowing.
    Note,
    /// The answer stands, but on doubtful ground.
    Warning,
    /// An entry could not be used.
    Error,
}

impl Severity {
    /// In a word.
    pub const fn words(self) -> &'static str {
        match self {
            Self::Note => "note",
            Self::Warning => "warning",
            Self::Error => "error",
        }
    }
}

/// The entry a problem is about. Indices point into the job's lists.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Place {
    /// A place in the file.
    File {
        /// Line from 1.
        line: usize,
        /// Column from 1.
        column: usize,
    },
    /// The job as a whole, or the named field of it.
    Job(&'static str),
    /// An entry of a field.
    Field(&'static Field, At),
    /// A surface's outline.
    Outline(usize),
    /// An opening of a surface.
    Opening(usize, usize),
    /// A divider of a surface.
    Divider(usize, usize),
    /// A section of a surface.
    Section(usize, usize),
    /// A gap reading.
    Gap(usize),
    /// A moisture reading.
    Moisture(usize),
    /// A room reading.
    Room(usize),
    /// The named field of the room's air.
    Air(&'static str),
    /// The named field of the plan.
    Plan(&'static str),
}

impl Place {
    /// The place in words, with the names the user gave.
    pub fn words(&self, job: &Job) -> String {
        let surface = |index: usize| {
            job.surfaces.get(index).map_or_else(|| format!("surface {}", index + 1), |s| s.name.clone())
        };
        let part = |on: usize, kind: &str, name: Option<&str>, index: usize| match name {
            Some(name) => format!("{}, {kind} {name}", surface(on)),
            None => format!("{}, {kind} {}", surface(on), index + 1),
        };
        match *self {
            Self::File { line, column } => format!("file, line {line}, column {column}"),
            Self::Job(field) => field.to_owned(),
            Self::Field(field, _) => field.id.to_owned(),
            Self::Outline(on) => format!("{}, outline", surface(on)),
            Self::Opening(on, index) => {
                let found = job.surfaces.get(on).and_then(|s| s.openings.get(index));
                part(on, "opening", found.map(|o| o.name.as_str()), index)
            }
            Self::Divider(on, index) => {
                let found = job.surfaces.get(on).and_then(|s| s.dividers.get(index));
                part(on, "divider", found.map(|d| d.name.as_str()), index)
            }
            Self::Section(on, index) => {
                let found = job.surfaces.get(on).and_then(|s| s.sections.get(index));
                part(on, "section", found.map(|s| s.name.as_str()), index)
            }
            Self::Gap(index) => match job.survey.gaps.get(index) {
                Some(gap) => format!("gap reading {} ({} {})", index + 1, gap.surface, gap.joint),
                None => format!("gap reading {}", index + 1),
            },
            Self::Moisture(index) => format!("moisture reading {}", index + 1),
            Self::Room(index) => format!("room reading {}", index + 1),
            Self::Air(field) => format!("room air, {field}"),
            Self::Plan(field) => format!("repair, {field}"),
        }
    }
}

/// Something wrong with a job.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// How much it matters.
    pub severity: Severity,
    /// Where.
    pub place: Place,
    /// The value and the rule it breaks, a sentence without its full stop.
    pub what: String,
    /// The way out, likewise.
    pub fix: String,
}

impl Problem {
    /// A problem of the given weight.
    pub fn new(severity: Severity, place: Place, what: impl Into<String>, fix: impl Into<String>) -> Self {
        Self { severity, place, what: what.into(), fix: fix.into() }
    }

    /// The whole problem in a line.
    pub fn words(&self, job: &Job) -> String {
        format!("{}: {}: {}. {}.", self.severity.words(), self.place.words(job), self.what, self.fix)
    }
}
