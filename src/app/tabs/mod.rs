//! The tabs, one for each question.

mod air_files;
mod boards;
mod catalog;
mod follow_up;
mod measure;
mod next_install;
mod options;
mod papers;
mod place;
mod price;
mod proposal;
mod readings;
mod room;
mod room_year;
mod why;
mod wording;

use eframe::egui::{Frame, Id, Margin, ScrollArea, Ui, vec2};

use super::context::WindowContext;
use super::hold;
use super::theme;
use super::view::Tab;

pub(super) use follow_up::visits;
pub(super) use next_install::{side as next_install_side, strip as next_install_strip};
pub(super) use options::detail as option_detail;
pub(super) use papers::pages;
pub(super) use price::money;
pub(super) use room::MONTHS;

/// The list of a tab, which scrolls by itself.
pub(super) fn tab(ui: &mut Ui, context: &mut WindowContext<'_>, tab: Tab) {
    let asked = context.view.scroll_to.get();
    pane(ui, context, tab.message(), |ui, context| match tab {
        Tab::Measure => measure::measure(ui, context),
        Tab::Why => why::why(ui, context),
        Tab::Options => options::options(ui, context),
        Tab::Price => price::price(ui, context),
        Tab::Papers => papers::papers(ui, context),
        Tab::FollowUp => follow_up::follow_up(ui, context),
        Tab::NextInstall => next_install::next_install(ui, context),
        Tab::Catalog => catalog::catalog(ui, context),
    });
    if asked.is_some() {
        // What was not found is not looked for any longer.
        context.view.scroll_to.set(None);
    }
}

/// A pane of this name, which scrolls by itself and follows the keyboard.
pub(super) fn pane(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    name: &'static str,
    add: impl FnOnce(&mut Ui, &mut WindowContext<'_>),
) {
    let salt = (name, context.session.opened);
    // Sideways too: a table that is wider than its pane must not push the other pane away.
    let area = ScrollArea::both().id_salt(salt).auto_shrink(false);
    hold::show(ui, area, Id::unique(("held", salt)), |ui| {
        let margin = theme::margin() as i8;
        Frame::new().inner_margin(Margin::symmetric(margin, 8)).show(ui, |ui| {
            // As wide as is in sight: what was wider for a frame must not stay so.
            let seen = ui.clip_rect().width() - 2.0 * f32::from(margin);
            ui.set_max_width(ui.available_width().min(seen));
            add(ui, context);
            follow_focus(ui, name);
        });
    });
}

/// Scrolls to what the keyboard has come to, if it lies in the pane of this name.
fn follow_focus(ui: &Ui, pane: &'static str) {
    let focused = ui.memory(|memory| memory.focused());
    let last = Id::unique(("focus", pane));
    let before: Option<Option<Id>> = ui.data(|data| data.get_temp(last));
    if before == Some(focused) {
        return;
    }
    ui.data_mut(|data| data.insert_temp(last, focused));
    let Some(field) = focused.and_then(|id| ui.read_response(id)) else { return };
    let here = ui.layer_id() == field.layer_id && ui.min_rect().expand(4.0).contains(field.rect.center());
    if here && !ui.clip_rect().contains_rect(field.rect) {
        ui.scroll_to_rect(field.rect.expand2(vec2(0.0, 40.0)), None);
    }
}
