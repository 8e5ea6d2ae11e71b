//! A part of the list that can be folded away.

use eframe::egui::Ui;

use crate::app::context::WindowContext;
use crate::app::fold::fold;
use crate::job::Place;

/// A part under a title. While it is folded away, what is wrong at the places for which `here` says so
/// stands under the title.
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
        context.problems(ui, here);
    }
}
