//! Labels and hints of everything that is entered into a job.

use super::{Arg, Language, Words};
use crate::job::fields::Field;

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
    ("units", Arg::units(words.units()))
}

#[cfg(test)]
mod tests {
    use std::collections::HashSet;

    use super::*;
    use crate::job::fields::FIELDS;
    use crate::measure::Units;

    #[test]
    fn every_field_has_a_label_and_every_label_a_field() {
        let catalog = include_str!("../../assets/words/en-US/fields.ftl");
        let labels = catalog.lines().filter_map(|line| line.strip_prefix("field-")?.split_once(" ="));
        let labels: HashSet<&str> = labels.map(|(id, _)| id).collect();
        let ids: HashSet<&str> = FIELDS.iter().map(|field| field.id).collect();
        assert_eq!(ids.symmetric_difference(&labels).collect::<Vec<_>>(), [&""; 0]);
    }

    #[test]
    fn labels_are_told_apart_and_fit_their_place() {
        for units in [Units::Inches, Units::Millimeters] {
            let words = Words::us_english(units, "$");
            let mut seen = HashSet::new();
            for field in FIELDS.iter() {
                let label = field.label(&words);
                assert!(!label.is_empty() && !label.ends_with('.'), "{label}");
                let hint = field.hint(&words).unwrap_or_default();
                // A hint of one sentence goes without its period.
                assert_eq!(hint.contains(". "), hint.ends_with('.'), "{hint}");
                assert!(!hint.contains(['{', '}']), "{hint}");
                // Two fields of one kind of entry must not go by one name.
                assert!(seen.insert((field.each, label.clone())), "{label} stands twice");
            }
        }
    }
}
