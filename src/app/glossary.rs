//! What the words of the trade mean, from `assets/words.ron`: told where a word is pointed at.

use std::sync::LazyLock;

use eframe::egui::{Label, Response, RichText};
use serde::Deserialize;

/// A word with its other forms, and what it means.
#[derive(Debug, Clone, Deserialize)]
pub(super) struct Word(Vec<String>, String);

impl Word {
    /// Its name.
    pub fn name(&self) -> &str {
        self.0.first().map_or("", String::as_str)
    }

    /// All its forms.
    pub fn forms(&self) -> &[String] {
        &self.0
    }

    /// What it means.
    pub fn meaning(&self) -> &str {
        &self.1
    }
}

static WORDS: LazyLock<Vec<Word>> = LazyLock::new(|| {
    let text = include_str!("../../assets/words.ron");
    ron::from_str(text).unwrap_or_else(|error| panic!("assets/words.ron: {error}"))
});

/// All words.
pub(super) fn all() -> &'static [Word] {
    &WORDS
}

/// The words that stand in a text, with the form that stands there.
fn within(text: &str) -> Vec<(&'static str, &'static Word)> {
    let text = text.to_lowercase();
    WORDS
        .iter()
        .filter_map(|word| {
            let form = word.0.iter().find(|form| stands_in(&text, &form.to_lowercase()))?;
            Some((form.as_str(), word))
        })
        .collect()
}

/// Whether a word stands in a text by itself, not within a longer word; a plural counts.
fn stands_in(text: &str, word: &str) -> bool {
    text.match_indices(word).any(|(at, _)| {
        let before = text[..at].chars().next_back();
        let after = &text[at + word.len()..];
        let after = after.strip_prefix('s').unwrap_or(after).chars().next();
        !before.is_some_and(char::is_alphanumeric) && !after.is_some_and(char::is_alphanumeric)
    })
}

/// Explains the words of the trade that stand in `text` when `response` is pointed at.
pub(super) fn explain(response: Response, text: &str) -> Response {
    if !response.hovered() {
        return response;
    }
    let assessment = within(text);
    if assessment.is_empty() {
        return response;
    }
    response.on_hover_ui(|ui| {
        ui.set_max_width(380.0);
        for (form, word) in assessment {
            ui.label(RichText::new(form).strong());
            ui.add(Label::new(word.meaning()).wrap());
        }
    })
}

#[cfg(test)]
mod tests {
    use super::within;

    #[test]
    fn words_are_found_in_a_sentence_but_not_within_others() {
        let names = |text| within(text).into_iter().map(|(form, _)| form).collect::<Vec<_>>();
        assert_eq!(names("The beads hold on their tongue"), ["bead", "tongue"]);
        assert_eq!(names("instead of it"), [""; 0]);
        assert_eq!(names("Hybrid, paintable, class 50: a callback"), ["callback", "class 50"]);
        assert_eq!(names("class 500"), [""; 0]);
    }
}
