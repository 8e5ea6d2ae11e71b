//! What works beside the window: previews, photos, work in the background, autosave, file dialogs.

use std::path::PathBuf;

use eframe::egui::Context;

use super::autosave::Autosave;
use super::background::Background;
use super::dialog::NativeDialogs;
use super::photos::Photos;
use super::preview::Previews;
use crate::papers::Templates;

/// The helpers of the window.
pub(super) struct Services {
    /// Work that may take a while.
    pub background: Background,
    /// Papers typeset for the window.
    pub previews: Previews,
    /// Photos that were read.
    pub photos: Photos,
    /// Where the papers' templates are from.
    pub templates: Templates,
    /// The user's own prices; `None` where the system has no place for them, and in tests.
    pub my_prices: Option<PathBuf>,
    /// Keeps unsaved work; not in tests of the window.
    pub autosave: Option<Autosave>,
    /// The system's file dialogs; not in tests.
    pub dialogs: Option<NativeDialogs>,
}

impl Services {
    /// Services on threads of their own, or at once for tests.
    pub fn new(threads: bool, ctx: &Context) -> Self {
        Self {
            background: Background::new(threads, ctx),
            previews: Previews::new(threads, ctx),
            photos: Photos::default(),
            templates: Templates::default(),
            my_prices: None,
            autosave: None,
            dialogs: None,
        }
    }
}
