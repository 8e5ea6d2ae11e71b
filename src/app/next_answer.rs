//! The answer of a job that is about a next install alone: hang, wait or send back, in the same three lines.

use eframe::egui::{Label, RichText, Stroke, Ui};

use super::context::WindowContext;
use super::icon::Icon;
use super::theme;
use crate::ready::Verdict;
use crate::words::next_install as words_of;

/// Whether the job is about boards to come, with none on the wall.
pub(super) fn is_meant(context: &WindowContext<'_>) -> bool {
    context.job.surfaces.is_empty() && context.job.next_install.is_some()
}

/// Verdict, chances, and when the stack is ready or what to hang the boards at; `folded` leaves the first.
pub(super) fn next_answer(ui: &mut Ui, context: &WindowContext<'_>, folded: bool) {
    let (assessment, words) = (context.assessment, context.words);
    let (Some(found), Some(next)) = (&assessment.next_install, &assessment.job.next_install) else {
        ui.add(Label::new(words.text("next-incomplete")).truncate());
        return;
    };
    let verdict = found.outlook.as_ref().map_or(Verdict::Measure, |outlook| outlook.gate.verdict);
    let (icon, color) = match verdict {
        Verdict::Hang => (Icon::Good, context.palette.good),
        Verdict::Wait => (Icon::Warning, context.palette.warn),
        Verdict::SendBack | Verdict::ChangePlan => (Icon::Warning, context.palette.error),
        Verdict::Measure => (Icon::Measure, context.palette.soft),
    };
    let mut lines = Vec::new();
    if let Some(outlook) = found.outlook.as_ref().filter(|_| verdict != Verdict::Measure) {
        lines.extend(words_of::chances(&outlook.gate, next, found.rule, words).into_iter().next());
        if matches!(verdict, Verdict::Wait | Verdict::SendBack) {
            lines.extend(words_of::ready(found, outlook, words).into_iter().next());
        }
    }
    lines.push(words_of::window(&found.window, next, words));
    ui.horizontal_top(|ui| {
        icon.mark(ui, Stroke::new(1.8, color)).on_hover_text(words_of::verdict(verdict, words));
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 4.0;
            let headline = RichText::new(words_of::headline(found, words)).text_style(theme::answer_style());
            ui.add(Label::new(headline).truncate());
            for line in lines.iter().take(if folded { 0 } else { 2 }) {
                ui.add(Label::new(line).truncate()).on_hover_text(line);
            }
        });
    });
}
