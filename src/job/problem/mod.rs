//! What is wrong with a job, as data: where, what, and how much it matters. What it says is up to `words`.

mod entry;
mod fault;
mod whole;

pub use entry::{DateFault, Dated, FileFault, RangeFault, ReadingFault, Unread};
pub use fault::{Fault, Listed};
pub use whole::{BookFault, LayoutFault, PlanFault, SectionFault};

use super::fields::{At, Field};

/// How much a problem matters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// Worth knowing.
    Note,
    /// The answer stands, but on doubtful ground.
    Warning,
    /// An entry could not be used as it stands.
    Error,
}

impl Severity {
    /// As a key: in JSON, and to select a message by.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Note => "note",
            Self::Warning => "warning",
            Self::Error => "error",
        }
    }
}

/// What a problem is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// A place in the text of the job's file.
    File {
        /// Line from 1.
        line: usize,
        /// Column from 1.
        column: usize,
    },
    /// The file as a whole.
    WholeFile,
    /// An entry of a field. Indices point into the lists of the job as it was entered.
    Field(&'static Field, At),
}

impl Place {
    /// The entry of a field that stands once in a job.
    pub const fn once(field: &'static Field) -> Self {
        Self::Field(field, At::ONCE)
    }

    /// The field, where it is one.
    pub const fn field(&self) -> Option<(&'static Field, At)> {
        match self {
            Self::Field(field, at) => Some((field, *at)),
            Self::File { .. } | Self::WholeFile => None,
        }
    }

    /// Whether it is the entry `at` of `field`.
    pub fn is(&self, field: &Field, at: At) -> bool {
        self.field() == Some((field, at))
    }
}

/// Something wrong with a job.
#[derive(Debug, Clone, PartialEq)]
pub struct Problem {
    /// How much it matters.
    pub severity: Severity,
    /// Where.
    pub place: Place,
    /// The value, the rule it breaks, and what is done about it.
    pub fault: Fault,
}

impl Problem {
    /// A fault at a place, of the weight that it has.
    pub fn new(place: Place, fault: impl Into<Fault>) -> Self {
        let fault = fault.into();
        Self { severity: fault.severity(), place, fault }
    }
}
