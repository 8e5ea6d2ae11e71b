//! A part of the list that can be folded away.

use eframe::egui::{Align, Label, Layout, Rect, Response, RichText, Stroke, Ui, UiBuilder, pos2, vec2};

use crate::app::context::WindowContext;
use crate::app::fold::fold;
use crate::app::icon::Icon;
use crate::assess::EntryPlace;
use crate::job::{Place, Problem, Severity};
use crate::words::Say as _;

/// A part under a title. While it is folded away, what is wrong at the places for which `here` says so is
/// told beside the title: in its row, so that a reading that is typed below moves nothing.
pub(super) fn part(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    salt: &str,
    title: &str,
    open: bool,
    here: impl Fn(&Place) -> bool,
    add: impl FnOnce(&mut Ui, &mut WindowContext<'_>),
) {
    let shown = fold(ui, salt, title, open, |ui| add(ui, context));
    if shown.body_response.is_none() {
        let problems = context.assessment.problems.iter().filter(|problem| here(&problem.place));
        beside(ui, context, &shown.header_response, &problems.collect::<Vec<_>>());
    }
}

/// Problems in one line beside a title, the worst of them in words and all of them on hover.
fn beside(ui: &mut Ui, context: &WindowContext<'_>, title: &Response, problems: &[&Problem]) {
    let Some(worst) = problems.iter().max_by_key(|problem| problem.severity) else { return };
    if worst.severity == Severity::Error {
        context.scroll_if_requested(ui, EntryPlace::Problems);
    }
    let room = Rect::from_min_max(
        title.rect.right_top() + vec2(12.0, 0.0),
        pos2(ui.max_rect().right(), title.rect.bottom()),
    );
    let color = context.severity_color(worst.severity);
    let all: Vec<String> = problems.iter().map(|problem| problem.say(context.words)).collect();
    let layout = Layout::left_to_right(Align::Center);
    // A child that takes no room of its own.
    let mut row = ui.new_child(UiBuilder::new().id_salt(title.id).max_rect(room).layout(layout));
    let hover = all.join("\n\n");
    Icon::Warning.mark(&mut row, Stroke::new(1.3, color)).on_hover_text(&hover);
    let text = RichText::new(worst.say(context.words)).small().color(color);
    // The label's own hint would tell one of them.
    let label = Label::new(text).truncate().show_tooltip_when_elided(false);
    row.add(label).on_hover_text(hover);
}
