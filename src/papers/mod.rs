//! What is handed over: the homeowner's letter and the price sheet.
//!
//! A paper is a typst template in `assets/papers`, filled from `data`, with drawings from
//! [`figure`]. Nothing is computed here: every figure comes from the assessment.

mod data;
pub mod figure;
mod typeset;

use crate::assess::Assessment;
use crate::job::Job;

pub(crate) use data::need;
pub use data::{Words, weighed};
pub use typeset::{PageImage, PaperError, Typeset};

/// A kind of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Paper {
    /// What happened and what will be done, for the homeowner.
    Letter,
    /// The build-up of the price, for the contractor or an insurer.
    PriceSheet,
}

impl Paper {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::Letter, Self::PriceSheet];

    /// Its name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Letter => "Homeowner's letter",
            Self::PriceSheet => "Price sheet",
        }
    }

    /// The stem of its file name.
    pub const fn file_stem(self) -> &'static str {
        match self {
            Self::Letter => "letter",
            Self::PriceSheet => "price-sheet",
        }
    }

    const fn template(self) -> &'static str {
        match self {
            Self::Letter => include_str!("../../assets/papers/letter.typ"),
            Self::PriceSheet => include_str!("../../assets/papers/price-sheet.typ"),
        }
    }

    /// Typesets the paper for `job`, whose assessment is `found`.
    ///
    /// # Errors
    /// If the template does not compile: with its line and the reason.
    pub fn typeset(self, job: &Job, found: &Assessment) -> Result<Typeset, PaperError> {
        Typeset::new(self.template(), &data::data(job, found), figure::figures(job, found))
    }
}
