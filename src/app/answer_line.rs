//! The answer line: always in sight, one plain sentence, and what is still missing.

use eframe::egui::{Label, RichText, Stroke, Ui};

use super::context::Cx;
use super::icon::Icon;
use super::look;

/// Keeps a figure and its per cent sign on one line.
pub(super) fn unbroken(text: &str) -> String {
    text.replace(" %", "\u{a0}%")
}

pub(super) fn answer_line(ui: &mut Ui, cx: &Cx<'_>, notice: Option<(&str, bool)>) {
    let answer = &cx.found.answer;
    ui.horizontal_top(|ui| {
        // Room for two lines, so that the drawing does not jump when the answer grows.
        ui.set_min_height(58.0);
        let (icon, colour) = match (answer.complete, answer.missing.is_empty()) {
            (true, true) => (Icon::Good, cx.palette.good),
            (true, false) => (Icon::Warning, cx.palette.warn),
            (false, _) => (Icon::Warning, cx.palette.soft),
        };
        icon.mark(ui, Stroke::new(1.8, colour));
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 3.0;
            let headline = RichText::new(unbroken(&answer.headline)).text_style(look::answer_style());
            ui.add(Label::new(headline).wrap()).on_hover_text("The answer so far. It follows every entry.");
            let mut rest = answer.cause.clone();
            if !answer.missing.is_empty() {
                let colon = if answer.complete { "To trust it more" } else { "Still missing" };
                rest.push_str(&format!(
                    "{}{colon}: {}.",
                    if rest.is_empty() { "" } else { " " },
                    answer.missing.join("; ")
                ));
            }
            if !rest.is_empty() {
                ui.add(Label::new(RichText::new(unbroken(&rest)).color(cx.palette.soft)).wrap());
            }
            if let Some((notice, fault)) = notice {
                let colour = if fault { cx.palette.error } else { cx.palette.good };
                ui.add(Label::new(RichText::new(notice).color(colour)).wrap());
            }
        });
    });
}
