//! The letter's sentences, to be worded otherwise.

use eframe::egui::{CollapsingHeader, RichText, Ui};

use crate::app::context::WindowContext;
use crate::app::widgets::{multiline, remark};
use crate::job::{Job, LetterPart, OwnWords, Severity};
use crate::words::{LetterText, Say as _};

pub(super) fn wording(ui: &mut Ui, context: &mut WindowContext<'_>) {
    CollapsingHeader::new("Word it otherwise").show(ui, |ui| {
        remark(
            ui,
            context.palette,
            "A line for each sentence or point. Figures that you type over no longer follow the answer.",
        );
        let drafts = LetterText::drafts(context.assessment, context.words);
        for part in LetterPart::ALL {
            let heading = part.say(context.words);
            let draft = drafts.text(part);
            let own = context.job.wording.iter().find(|own| own.part == part);
            ui.horizontal(|ui| {
                ui.label(RichText::new(&heading).strong());
                if own.is_some() {
                    ui.label(RichText::new("in your words").small().color(context.palette.accent));
                }
                if own.is_some() && ui.button("Take the draft").clicked() {
                    context.edit(format!("Draft: {heading}"), move |job| {
                        job.wording.retain(|own| own.part != part);
                    });
                }
            });
            if own.is_some_and(|own| own.draft != draft) {
                context.problem(
                    ui,
                    Severity::Warning,
                    &format!("The draft has changed since. It now says: {draft}"),
                );
            }
            let shown = own.map_or(&draft, |own| &own.text).clone();
            if let Some(text) = multiline(ui, &heading, &shown) {
                context.edit(format!("Wording: {heading}"), move |job| set(job, part, text, draft));
            }
        }
    });
}

fn set(job: &mut Job, part: LetterPart, text: String, draft: String) {
    job.wording.retain(|own| own.part != part);
    if text != draft {
        job.wording.push(OwnWords { part, text, draft });
    }
}
