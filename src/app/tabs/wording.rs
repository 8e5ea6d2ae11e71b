//! The letter's sentences, to be put into the contractor's own words.

use eframe::egui::{RichText, Ui};

use crate::app::context::WindowContext;
use crate::app::fold::fold;
use crate::app::widgets::{multiline, remark};
use crate::job::fields;
use crate::job::{Job, LetterPart, OwnWords, Severity};
use crate::words::{LetterText, Say as _};

pub(super) fn wording(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    fold(ui, "wording", words.text("wording-edit"), false, |ui| {
        remark(ui, context.palette, fields::WORDING.hint(words).unwrap_or_default());
        let letter = context.languages.paper_words(context.job).owner;
        let drafts = LetterText::drafts(context.assessment, &letter);
        for part in LetterPart::ALL {
            one(ui, context, part, &part.say(&letter), drafts.text(part));
        }
    });
}

/// A part of the letter: its heading, and its sentences in a field, both in the letter's language.
fn one(ui: &mut Ui, context: &mut WindowContext<'_>, part: LetterPart, heading: &str, draft: String) {
    let words = context.words;
    let own = context.job.wording.iter().find(|own| own.part == part);
    ui.horizontal_wrapped(|ui| {
        ui.label(RichText::new(heading).strong());
        if own.is_none() {
            return;
        }
        let mark = RichText::new(words.text("wording-own")).small();
        ui.label(mark.color(context.palette.accent));
        if ui.button(words.text("wording-restore")).clicked() {
            context.edit("wording-restore", move |job| job.wording.retain(|own| own.part != part));
        }
    });
    if own.is_some_and(|own| own.draft != draft) {
        let changed = words.text("wording-draft-changed");
        context.problem(ui, Severity::Warning, &[&changed, draft.as_str()].join(" "));
    }
    let shown = own.map_or(&draft, |own| &own.text).clone();
    if let Some(text) = multiline(ui, heading, &shown) {
        context.edit("field-wording", move |job| set(job, part, text, draft));
    }
}

fn set(job: &mut Job, part: LetterPart, text: String, draft: String) {
    job.wording.retain(|own| own.part != part);
    if text != draft {
        job.wording.push(OwnWords { part, text, draft });
    }
}
