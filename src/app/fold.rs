//! Parts of a room that fold away, and open by themselves for a field that is led to.

use eframe::egui::collapsing_header::CollapsingState;
use eframe::egui::{AsIdSalt, CollapsingHeader, CollapsingResponse, Id, IdSalt, Ui, WidgetText};

use super::lead;

/// A fold that goes by `salt`, since its title may carry figures that change; `open` at first or not.
///
/// While a field is being led to, folds open so that it is drawn; those that turn out not to hold it
/// close again, and so do those that were opened for a field that was led to before.
pub(super) fn fold(
    ui: &mut Ui,
    salt: impl AsIdSalt,
    title: impl Into<WidgetText>,
    open: bool,
    show: impl FnOnce(&mut Ui),
) -> CollapsingResponse<()> {
    let salt = IdSalt::new(salt);
    let id = ui.make_persistent_id(salt);
    let [tried_id, holds_id, led_id] =
        ["lead-tries", "lead-ends-here", "lead-opened"].map(|mark| id.with(mark));
    let is_marked = |ui: &Ui, mark: Id| ui.data(|data| data.get_temp::<()>(mark)).is_some();
    let sought = lead::is_sought(ui.ctx());
    // The header keeps its state under an id of its own making, known once it was drawn.
    let state_id = id.with("header-state");
    let known: Option<Id> = ui.data(|data| data.get_temp(state_id));
    let state = known.and_then(|known| CollapsingState::load(ui.ctx(), known));
    let was_open = state.map_or(open, |state| state.is_open()) && !is_marked(ui, led_id);
    let tried = is_marked(ui, tried_id);
    if sought && !was_open {
        ui.data_mut(|data| data.insert_temp(tried_id, ()));
    }
    if sought || tried {
        // What was opened in vain is not to stay open until the pointer moves.
        ui.request_repaint();
    }
    let header = CollapsingHeader::new(title).id_salt(salt).default_open(open);
    let shown = header.open((sought || tried).then_some(true)).show(ui, show);
    ui.data_mut(|data| data.insert_temp(state_id, shown.header_response.id));
    if shown.header_response.clicked() {
        // From now on it is as somebody wants it.
        ui.data_mut(|data| data.remove::<()>(led_id));
    }
    if sought && (tried || !was_open) && !lead::is_pending(ui.ctx()) {
        ui.data_mut(|data| data.insert_temp(holds_id, ()));
    }
    if tried && !sought {
        let holds = ui.data_mut(|data| {
            data.remove::<()>(tried_id);
            data.remove::<()>(led_id);
            data.remove_temp::<()>(holds_id).is_some()
        });
        if holds {
            ui.data_mut(|data| data.insert_temp(led_id, ()));
        }
        let header = shown.header_response.id;
        let mut state = CollapsingState::load_with_default_open(ui.ctx(), header, open);
        state.set_open(holds);
        state.store(ui.ctx());
    }
    shown
}
