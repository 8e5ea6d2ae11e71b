//! Everything a person reads: results, labels and messages as sentences, in one language at a time.
//!
//! Below this module nothing writes a sentence: kernels, the job and the assessment hand over numbers,
//! names that a person typed, and enums. Here each of them finds its message in the catalogs under
//! `assets/words/<language>/`, which are in Project Fluent's format, one file a subject. A message's
//! arguments are [`Arg`]s: counts, quantities, dates, names, and ids to select by. Never a phrase that
//! was put together elsewhere, so that a translator meets whole sentences.
//!
//! [`Words`] is a language together with the units and the currency in which figures are shown;
//! [`Say`] is what can be said in words. Log lines, JSON and CSV do not go through a chosen language:
//! they are US English, whatever the language of the window or the papers.

mod air_files;
pub mod answer;
mod arg;
pub mod bead_designs;
pub mod boards;
mod called;
pub mod causes;
mod entry;
mod fields;
mod figures;
mod files;
pub mod follow_up;
mod household;
mod joints;
mod labels;
mod language;
mod letter;
pub mod next_install;
pub mod options;
mod outlines;
pub mod owner_page;
pub mod places;
pub mod price;
pub mod price_book;
mod problems;
pub mod proposal;
mod reading_table;
pub mod sealing;
pub mod verdict;
pub mod why;
pub mod work;

pub use arg::Arg;
pub use figures::Figures;
pub use files::{learned_rate_source, photo_fault, photo_not_printed, unreadable_file, unwritable_file};
pub use language::{Language, languages};
pub use letter::LetterText;

use std::borrow::Cow;

use fluent_bundle::FluentArgs;

use crate::job::Job;
use crate::measure::Units;

/// Something that can be said in a sentence, a label or a word.
pub trait Say {
    /// What it says in these words.
    fn say(&self, words: &Words) -> String;
}

/// A language with the units and the currency in which figures are shown.
#[derive(Clone)]
pub struct Words {
    language: &'static Language,
    figures: Figures,
}

impl PartialEq for Words {
    /// Whether both say everything alike.
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.language, other.language) && self.figures.alike(&other.figures)
    }
}

impl Words {
    /// Words of `language`; lengths and the rest in `units`, money with `currency` in front.
    pub fn new(language: &'static Language, units: Units, currency: &str) -> Self {
        Self { language, figures: Figures::new(language, units, currency) }
    }

    /// US English, which every other language falls back on.
    pub fn us_english(units: Units, currency: &str) -> Self {
        Self::new(Language::us_english(), units, currency)
    }

    /// US English with the units and the currency of a job.
    pub fn of_job(job: &Job) -> Self {
        Self::us_english(job.units, &job.plan.prices.currency)
    }

    /// The language.
    pub const fn language(&self) -> &'static Language {
        self.language
    }

    /// How figures are shown.
    pub const fn figures(&self) -> &Figures {
        &self.figures
    }

    /// The units in which figures are shown.
    pub const fn units(&self) -> Units {
        self.figures.units()
    }

    /// The message `id`, or the attribute of a message, as in `crew-size.hint`. A message that is not in
    /// the catalogs shows as its id; the tests see to it that there is none.
    pub fn text(&self, id: &str) -> Cow<'static, str> {
        self.language.text(id, None)
    }

    /// The message `id`, if there is one: for messages that are optional, such as hints.
    pub fn optional(&self, id: &str) -> Option<Cow<'static, str>> {
        self.language.has(id).then(|| self.text(id))
    }

    /// All messages without arguments whose ids begin with `prefix`, each with its id: what a template
    /// may pick from. In this language, or in US English where it lacks one.
    pub fn plain_texts(
        &self,
        prefix: &'static str,
    ) -> impl Iterator<Item = (&'static str, Cow<'static, str>)> {
        Language::us_english().plain_ids(prefix).map(|id| (id, self.text(id)))
    }

    /// The message `id` with its arguments, each by its name.
    pub fn text_with(&self, id: &str, arguments: &[(&'static str, Arg<'_>)]) -> String {
        let mut values = FluentArgs::with_capacity(arguments.len());
        for (name, argument) in arguments {
            values.set(*name, argument.value(&self.figures));
        }
        self.language.text(id, Some(&values)).into_owned()
    }
}

/// Says a message: `say!(words, "open-joints", count = 3, width = gap)`. The id must be a literal, so
/// that a test can find every message that is used.
macro_rules! say {
    ($words:expr, $id:literal $(,)?) => {
        $words.text($id).into_owned()
    };
    ($words:expr, $id:literal, $($name:ident = $value:expr),+ $(,)?) => {
        $words.text_with($id, &[$((stringify!($name), $crate::words::Arg::from($value))),+])
    };
}
pub(crate) use say;
