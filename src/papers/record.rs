//! The papers of a next install: the record of a delivery, and the crew's card.

use super::data;
use super::held_back::HeldBack;
use super::maker::files;
use super::typeset::Typeset;
use super::{PaperError, PaperWords};
use crate::assess::Assessment;
use crate::job::{Problem, Severity};
use crate::words::Words;

/// The record and the card as PDF, each with the name of its file; nothing without a next install. Where entries
/// couldn't be used, or couldn't be read of the job's file (`unread`), every page says that it is a draft.
///
/// # Errors
/// If a template does not compile.
pub fn record(
    assessment: &Assessment,
    unread: &[Problem],
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
            let mut given = data::data(assessment, unread, words);
            mark_draft(&mut given, assessment, unread, words);
            let made = Typeset::new(template, &files(assessment, &given, words));
            let typeset = made.map_err(|error| error.of(std::path::Path::new(name)))?;
            Ok((name, typeset.pdf()?))
        })
        .collect()
}

/// Marks both papers as drafts where an entry of the job couldn't be used.
fn mark_draft(given: &mut serde_json::Value, assessment: &Assessment, unread: &[Problem], words: &Words) {
    let all = unread.iter().chain(&assessment.problems);
    let errors: Vec<Problem> = all.filter(|problem| problem.severity == Severity::Error).cloned().collect();
    if errors.is_empty() {
        return;
    }
    let mark = HeldBack::Errors(errors).mark(assessment, words);
    let names = ["record", "card"].map(|paper| given["next"][paper].as_str().unwrap_or_default().to_owned());
    if let Some(drafts) = given["drafts"].as_object_mut() {
        drafts.extend(names.map(|name| (name, mark.clone().into())));
    }
}
