//! The papers of a next install: the record of a delivery, and the crew's card.

use super::data;
use super::maker::files;
use super::typeset::Typeset;
use super::{PaperError, PaperWords};
use crate::assess::Assessment;

/// The record and the card as PDF, each with the name of its file; nothing without a next install.
///
/// # Errors
/// If a template does not compile.
pub fn record(
    assessment: &Assessment,
    words: &PaperWords,
) -> Result<Vec<(&'static str, Vec<u8>)>, PaperError> {
    if assessment.next_install.is_none() {
        return Ok(Vec::new());
    }
    let papers = [
        ("delivery-record.pdf", include_str!("../../assets/papers/delivery-record.typ"), &words.owner),
        ("delivery-card.pdf", include_str!("../../assets/papers/delivery-card.typ"), &words.crew),
    ];
    papers
        .into_iter()
        .map(|(name, template, words)| {
            let made = Typeset::new(template, &files(assessment, &data::data(assessment, &[], words), words));
            let typeset = made.map_err(|error| error.of(std::path::Path::new(name)))?;
            Ok((name, typeset.pdf()?))
        })
        .collect()
}
