//! What the words of the trade mean, told where a word is pointed at: the messages `glossary-…`.

use std::borrow::Cow;

use eframe::egui::{Label, Response, RichText};

use crate::words::Words;

/// A word of the trade.
pub(super) struct Term {
    /// The forms in which it is found in a text, its name first.
    pub forms: Vec<String>,
    /// What it means.
    pub meaning: Cow<'static, str>,
}

/// All words of the trade in a language.
pub(super) fn all(words: &Words) -> Vec<Term> {
    let ids = words.language().ids().filter(|id| id.starts_with("glossary-"));
    ids.map(|id| Term {
        forms: words.text(&format!("{id}.forms")).split('|').map(|form| form.trim().to_owned()).collect(),
        meaning: words.text(id),
    })
    .collect()
}

/// The words that stand in a text, with the form that stands there.
fn within(text: &str, words: &Words) -> Vec<(String, Term)> {
    let text = text.to_lowercase();
    let terms = all(words).into_iter().filter_map(|term| {
        let form = term.forms.iter().find(|form| stands_in(&text, &form.to_lowercase()))?.clone();
        Some((form, term))
    });
    terms.collect()
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
pub(super) fn explain(response: Response, text: &str, words: &Words) -> Response {
    if !response.hovered() {
        return response;
    }
    let terms = within(text, words);
    if terms.is_empty() {
        return response;
    }
    response.on_hover_ui(|ui| {
        ui.set_max_width(380.0);
        for (form, term) in terms {
            ui.label(RichText::new(form).strong());
            ui.add(Label::new(term.meaning.as_ref()).wrap());
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::Units;

    #[test]
    fn words_are_found_in_a_sentence_but_not_within_others() {
        let words = Words::us_english(Units::Inches, "$");
        let names = |text| within(text, &words).into_iter().map(|(form, _)| form).collect::<Vec<_>>();
        assert_eq!(names("The beads hold on their tongue"), ["bead", "tongue"]);
        assert_eq!(names("instead of it"), [""; 0]);
        assert_eq!(names("Hybrid, paintable, class 50: a callback"), ["callback", "class 50"]);
        assert_eq!(names("class 500"), [""; 0]);
    }
}
