//! What joints are called.
//!
//! A joint's name is a key by which readings refer to it, made by the layout out of the names that a person
//! gave and a few words of US English. In other languages only these words are said otherwise.

use std::borrow::Cow;

use super::{Figures, Language, Words};

impl Words {
    /// The name of a joint in these words.
    pub fn joint<'a>(&self, name: &'a str) -> Cow<'a, str> {
        self.figures.joint(name)
    }
}

impl Figures {
    /// The name of a joint in the language of the figures.
    pub(super) fn joint<'a>(&self, name: &'a str) -> Cow<'a, str> {
        let language = self.language();
        if std::ptr::eq(language, Language::us_english()) {
            return Cow::Borrowed(name);
        }
        // Pieces of a joint have a letter behind its name.
        let piece = name.rsplit_once(' ').filter(|(_, last)| is_letter(last));
        let whole = piece.map_or(name, |(whole, _)| whole);
        match (said(whole, language), piece) {
            (Some(whole), Some((_, letter))) => Cow::Owned(format!("{whole} {letter}")),
            (Some(whole), None) => Cow::Owned(whole),
            (None, _) => Cow::Borrowed(name),
        }
    }
}

/// The name of a joint that has words of US English in it; `None` if it has none.
fn said(name: &str, language: &'static Language) -> Option<String> {
    let (before, last) = name.rsplit_once(' ')?;
    if last == "edge" {
        return Some(language.pattern("joint-edge", &[("section", before.into())]));
    }
    let (first, middle) = before.rsplit_once(' ')?;
    let (first, other) = (first.into(), last.into());
    match middle {
        "end" if is_number(last) => {
            Some(language.pattern("joint-end", &[("joint", first), ("number", other)]))
        }
        "side" if is_number(last) => {
            Some(language.pattern("joint-side", &[("section", first), ("number", other)]))
        }
        "to" => Some(language.pattern("joint-between", &[("section", first), ("other", other)])),
        _ => None,
    }
}

fn is_number(text: &str) -> bool {
    !text.is_empty() && text.chars().all(|c| c.is_ascii_digit())
}

fn is_letter(text: &str) -> bool {
    text.len() == 1 && text.chars().all(|c| c.is_ascii_lowercase())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::Units;

    #[test]
    fn only_the_words_of_the_layout_are_said_otherwise() {
        let spanish = Language::of("es-US").expect("it is a language");
        let said = |name: &str| Words::new(spanish, Units::Inches, "$").joint(name).into_owned();
        assert_eq!(said("A 9"), "A 9");
        assert_eq!(said("North 12b"), "North 12b");
        assert_eq!(said("A 9 end 2"), "A 9 punta 2");
        assert_eq!(said("A side 3"), "A lado 3");
        assert_eq!(said("A side 3 b"), "A lado 3 b");
        assert_eq!(said("North edge"), "North borde");
        assert_eq!(said("A to B"), "A con B");
        assert_eq!(said("A window 1"), "A window 1");
        let words = Words::us_english(Units::Inches, "$");
        assert_eq!(words.joint("A 9 end 2"), "A 9 end 2");
    }
}
