//! Parts of a room that fold away, and open by themselves for a field that is led to.

use eframe::egui::collapsing_header::CollapsingState;
use eframe::egui::{AsIdSalt, CollapsingHeader, CollapsingResponse, IdSalt, Ui, WidgetText};

use super::lead;

/// A fold that goes by `salt`, since its title may carry figures that change; `open` at first or not.
///
/// While a field is being led to, folds open so that it is drawn; those that turn out not to hold it
/// close again.
pub(super) fn fold(
    ui: &mut Ui,
    salt: impl AsIdSalt,
    title: impl Into<WidgetText>,
    open: bool,
    show: impl FnOnce(&mut Ui),
) -> CollapsingResponse<()> {
    let salt = IdSalt::new(salt);
    let id = ui.make_persistent_id(salt);
    let sought = lead::is_sought(ui.ctx());
    let was_open = CollapsingState::load_with_default_open(ui.ctx(), id, open).is_open();
    let tried_id = id.with("opened for a field");
    let tried = ui.data(|data| data.get_temp::<()>(tried_id)).is_some();
    if sought && !was_open {
        ui.data_mut(|data| data.insert_temp(tried_id, ()));
    }
    let header = CollapsingHeader::new(title).id_salt(salt).default_open(open);
    let shown = header.open((sought || tried).then_some(true)).show(ui, show);
    let holds_id = id.with("holds the field");
    if sought && (tried || !was_open) && !lead::is_pending(ui.ctx()) {
        ui.data_mut(|data| data.insert_temp(holds_id, ()));
    }
    if tried && !sought {
        let holds = ui.data_mut(|data| {
            data.remove::<()>(tried_id);
            data.remove_temp::<()>(holds_id).is_some()
        });
        let mut state = CollapsingState::load_with_default_open(ui.ctx(), id, open);
        state.set_open(holds);
        state.store(ui.ctx());
    }
    shown
}
