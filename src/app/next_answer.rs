//! The answer of a job that is about a next install alone: hang, wait or send back, in the same three lines.

use eframe::egui::{Color32, Id, Label, RichText, Stroke, TextStyle, Ui};

use super::context::WindowContext;
use super::icon::Icon;
use super::theme;
use super::view::Tab;
use super::widgets::working;
use crate::ready::Verdict;
use crate::words::next_install as words_of;

/// So many reasons stand under the headline.
const LINES: usize = 2;

/// Whether the job is about boards to come, with none on the wall; or, of a job about nothing yet, their room
/// is shown.
pub(super) fn is_meant(context: &WindowContext<'_>) -> bool {
    let here = context.view.tab == Tab::NextInstall;
    context.job.surfaces.is_empty() && (here || context.job.next_install.is_some())
}

/// The width that the reasons under the headline last had.
fn width_id() -> Id {
    Id::unique("width of reasons")
}

/// Those reasons that do not stand in whole under the headline.
pub(super) fn not_shown(ui: &Ui, reasons: Vec<String>) -> Vec<String> {
    let width: f32 = ui.data(|data| data.get_temp(width_id())).unwrap_or(0.0);
    let font = TextStyle::Body.resolve(ui.style());
    let fits = |line: &str| {
        ui.painter().layout_no_wrap(line.to_owned(), font.clone(), Color32::PLACEHOLDER).size().x <= width
    };
    let shown = |at: usize, line: &str| at < LINES && fits(line);
    reasons.into_iter().enumerate().filter(|(at, line)| !shown(*at, line)).map(|(_, line)| line).collect()
}

/// Verdict, chances, and the reasons; `folded` leaves the first.
pub(super) fn next_answer(ui: &mut Ui, context: &WindowContext<'_>, folded: bool) {
    let (assessment, words) = (context.assessment, context.words);
    let (Some(found), Some(next)) = (&assessment.next_install, &assessment.job.next_install) else {
        let headline = RichText::new(words_of::missing(assessment, words)).text_style(theme::answer_style());
        ui.add(Label::new(headline).truncate());
        working(ui.painter(), context, ui.max_rect().right_top());
        return;
    };
    let verdict = found.outlook.as_ref().map_or(Verdict::Measure, |outlook| outlook.gate.verdict);
    let (icon, color) = match verdict {
        Verdict::Hang => (Icon::Good, context.palette.good),
        Verdict::Wait | Verdict::Sort => (Icon::Warning, context.palette.warn),
        Verdict::SendBack | Verdict::ChangePlan => (Icon::Warning, context.palette.error),
        Verdict::Measure | Verdict::MeterMore => (Icon::Measure, context.palette.soft),
    };
    let mut lines = words_of::reasons_in_short(found, next, words);
    if verdict == Verdict::Measure {
        lines.extend(words_of::sampling(found, words).into_iter().next());
    }
    let corner = ui.max_rect().right_top();
    ui.horizontal_top(|ui| {
        icon.mark(ui, Stroke::new(1.8, color)).on_hover_text(words_of::verdict(verdict, words));
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 4.0;
            let headline =
                RichText::new(words_of::headline(found, next, words)).text_style(theme::answer_style());
            ui.add(Label::new(headline).truncate());
            ui.data_mut(|data| data.insert_temp(width_id(), ui.available_width()));
            for line in lines.iter().take(if folded { 0 } else { LINES }) {
                ui.add(Label::new(line).truncate()).on_hover_text(line);
            }
        });
    });
    working(ui.painter(), context, corner);
}
