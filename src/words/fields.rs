//! Labels and hints of everything that is entered into a job.

use super::{Arg, Language, Words};
use crate::job::fields::Field;
use crate::measure::Units;

impl Field {
    /// What it is called, without its unit.
    pub fn label(&self, words: &Words) -> String {
        words.text_with(&format!("field-{}", self.id), &[units(words)])
    }

    /// What there is to know of it, where the label does not say it all.
    pub fn hint(&self, words: &Words) -> Option<String> {
        let id = format!("field-{}.hint", self.id);
        // A hint that another language lacks is said in the language it falls back on.
        let known = words.language().has(&id) || Language::us_english().has(&id);
        known.then(|| words.text_with(&id, &[units(words)]))
    }
}

/// The units in which figures are shown, for hints that name one.
fn units(words: &Words) -> (&'static str, Arg<'static>) {
    let key = match words.units() {
        Units::Inches => "inches",
        Units::Millimeters => "millimeters",
    };
    ("units", Arg::Id(key))
}
