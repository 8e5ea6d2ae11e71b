//! A made-up language: every word of the catalogs accented and a third longer.

#![allow(dead_code, reason = "every program uses a part of it")]
#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

use std::path::{Path, PathBuf};

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use gapwright::words::Language;

pub fn assets() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("assets")
}

pub fn files(folder: &Path, ending: &str) -> Vec<String> {
    let files = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    let of_kind = files.filter(|path| path.extension().is_some_and(|kind| kind == ending));
    of_kind.map(|path| std::fs::read_to_string(path).unwrap()).collect()
}

/// A text of the catalogs in the language.
pub fn made_up_text(text: &str) -> String {
    let mut made = String::new();
    let mut letters = 0;
    for c in text.chars().chain(['\0']) {
        if c.is_alphabetic() {
            letters += 1;
        } else {
            made.extend(std::iter::repeat_n('ø', letters / 3));
            letters = 0;
        }
        let at = "aeiouyAEIOUY".chars().position(|plain| plain == c);
        made.extend(at.map_or(Some(c), |at| "áéíóúýÁÉÍÓÚÝ".chars().nth(at)).filter(|c| *c != '\0'));
    }
    made
}

fn make_up(pattern: &mut Pattern<String>) {
    for element in &mut pattern.elements {
        match element {
            PatternElement::TextElement { value } => *value = made_up_text(value),
            PatternElement::Placeable { expression } => make_up_expression(expression),
        }
    }
}

fn make_up_expression(expression: &mut Expression<String>) {
    match expression {
        Expression::Select { variants, .. } => variants.iter_mut().for_each(|one| make_up(&mut one.value)),
        Expression::Inline(InlineExpression::Placeable { expression }) => make_up_expression(expression),
        Expression::Inline(_) => {}
    }
}

fn made_up_catalog(text: String) -> String {
    let mut catalog = fluent_syntax::parser::parse(text).unwrap();
    for entry in &mut catalog.body {
        let (value, attributes) = match entry {
            Entry::Message(message) => (message.value.as_mut(), &mut message.attributes),
            Entry::Term(term) => (Some(&mut term.value), &mut term.attributes),
            _ => continue,
        };
        value
            .into_iter()
            .chain(attributes.iter_mut().map(|attribute| &mut attribute.value))
            .for_each(make_up);
    }
    fluent_syntax::serializer::serialize(&catalog)
}

/// The language, which lasts as long as the program.
pub fn made_up() -> &'static Language {
    let catalogs = files(&assets().join("words/en-US"), "ftl").into_iter().map(made_up_catalog);
    Box::leak(Box::new(Language::new("en-US", catalogs).unwrap()))
}
