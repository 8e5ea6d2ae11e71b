//! The commands that have a name, each once: menus, buttons, search, shortcuts and tests read this table.
//!
//! A command's label is the message `cmd-<id>` of the words' catalogs; its attribute `search` holds
//! everyday words by which it is found as well.

use eframe::egui::{Key, KeyboardShortcut, Modifiers};

use super::command::{Command, Picture, Table};
use super::context::WindowContext;
use super::pick::Purpose;
use super::view::{Tab, Tool};
use crate::measure::Units;

/// The menu that a command stands in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Menu {
    /// Jobs and papers.
    File,
    /// History, search.
    Edit,
    /// What is looked at, and how.
    View,
}

/// A command with a name.
pub struct NamedCommand {
    /// Its stable id.
    pub id: &'static str,
    /// The menu it stands in, if any.
    pub menu: Option<Menu>,
    /// Its keys, if it has any.
    pub keys: Option<KeyboardShortcut>,
    /// Whether it can be done now.
    pub(super) enabled: fn(&WindowContext<'_>) -> bool,
    /// The command.
    pub make: fn() -> Command,
}

const fn key(key: Key) -> Option<KeyboardShortcut> {
    Some(KeyboardShortcut::new(Modifiers::COMMAND, key))
}

const fn shift_key(key: Key) -> Option<KeyboardShortcut> {
    Some(KeyboardShortcut::new(Modifiers::COMMAND.plus(Modifiers::SHIFT), key))
}

const fn always(_: &WindowContext<'_>) -> bool {
    true
}

fn drawn(context: &WindowContext<'_>) -> bool {
    !context.assessment.job.surfaces.is_empty()
}

/// A row of the table.
const fn row(
    id: &'static str,
    menu: Option<Menu>,
    keys: Option<KeyboardShortcut>,
    enabled: fn(&WindowContext<'_>) -> bool,
    make: fn() -> Command,
) -> NamedCommand {
    NamedCommand { id, menu, keys, enabled, make }
}

/// All commands with a name, in the order of the menus.
pub static COMMANDS: [NamedCommand; 52] = [
    row("new", Some(Menu::File), key(Key::N), always, || Command::New),
    row("open", Some(Menu::File), key(Key::O), always, || Command::Pick(Purpose::Open)),
    row("open-demo", Some(Menu::File), None, always, || Command::OpenDemo),
    row("save", Some(Menu::File), key(Key::S), always, || Command::Save),
    row("save-as", Some(Menu::File), shift_key(Key::S), always, || Command::Pick(Purpose::Save)),
    row("papers", Some(Menu::File), key(Key::P), always, || Command::Pick(Purpose::Papers)),
    row("about", Some(Menu::File), None, always, || Command::About),
    row("quit", Some(Menu::File), key(Key::Q), always, || Command::Quit),
    row(
        "undo",
        Some(Menu::Edit),
        key(Key::Z),
        |c| c.session.document.undo_name().is_some(),
        || Command::Undo,
    ),
    row(
        "redo",
        Some(Menu::Edit),
        shift_key(Key::Z),
        |c| c.session.document.redo_name().is_some(),
        || Command::Redo,
    ),
    row("find", Some(Menu::Edit), key(Key::K), always, || Command::Search),
    row("homeowner", Some(Menu::View), key(Key::H), always, || Command::Show(Some(0))),
    row("next-joint", Some(Menu::View), key(Key::J), drawn, || Command::NextJoint),
    row("fit", Some(Menu::View), key(Key::F), drawn, || Command::Fit),
    row("theme", Some(Menu::View), key(Key::D), always, || Command::SwitchTheme),
    row("inches", Some(Menu::View), None, always, || Command::Units(Units::Inches)),
    row("millimeters", Some(Menu::View), None, always, || Command::Units(Units::Millimeters)),
    row("play", Some(Menu::View), None, drawn, || Command::Play),
    row("reference-curve", Some(Menu::View), None, drawn, || Command::ReferenceCurve),
    row("tab-measure", None, None, always, || Command::Tab(Tab::Measure)),
    row("tab-why", None, None, always, || Command::Tab(Tab::Why)),
    row("tab-options", None, None, always, || Command::Tab(Tab::Options)),
    row("tab-price", None, None, always, || Command::Tab(Tab::Price)),
    row("tab-papers", None, None, always, || Command::Tab(Tab::Papers)),
    row("tab-follow-up", None, None, always, || Command::Tab(Tab::FollowUp)),
    row("tab-next-install", None, None, always, || Command::Tab(Tab::NextInstall)),
    row("tab-catalog", None, None, always, || Command::Tab(Tab::Catalog)),
    row("tool-measure", None, None, drawn, || Command::Tool(Tool::Measure)),
    row("tool-shape", None, None, drawn, || Command::Tool(Tool::Shape)),
    row("tool-divider", None, None, drawn, || Command::Tool(Tool::Divider)),
    row("tool-opening", None, None, drawn, || Command::Tool(Tool::Opening)),
    row("tool-photo", None, None, drawn, || Command::Tool(Tool::Photo)),
    row("plan-install", None, None, drawn, || Command::PlanNextInstall),
    row("delivery-record", None, None, always, || Command::Pick(Purpose::Record)),
    row("weather", None, None, always, || Command::Pick(Purpose::Weather)),
    row("logger", None, None, always, || Command::Pick(Purpose::Logger)),
    row("outlines", None, None, always, || Command::Pick(Purpose::Outlines)),
    row("logo", None, None, always, || Command::Pick(Purpose::Logo)),
    row("keep-prices", None, None, always, || Command::KeepPrices),
    row("compare-prices", None, None, always, || Command::OfferMyPrices),
    row("import-prices", None, None, always, || Command::Pick(Purpose::ImportPrices)),
    row("export-prices", None, None, always, || Command::Pick(Purpose::ExportPrices)),
    row("learn", None, None, always, || Command::Pick(Purpose::Finished)),
    row("copy-joints", None, None, drawn, || Command::Copy(Table::Joints)),
    row("copy-year", None, None, drawn, || Command::Copy(Table::Year)),
    row("copy-tasks", None, None, drawn, || Command::Copy(Table::Tasks)),
    row("copy-materials", None, None, drawn, || Command::Copy(Table::Materials)),
    row("copy-surface-picture", None, None, drawn, || Command::CopyPicture(Picture::Surface)),
    row("copy-year-picture", None, None, drawn, || Command::CopyPicture(Picture::Year)),
    row("copy-cuts-picture", None, None, drawn, || Command::CopyPicture(Picture::Cuts)),
    row("reload-templates", None, None, always, || Command::ReadTemplates),
    row("leave-homeowner", None, None, |c| c.view.presentation.page.is_some(), || Command::Show(None)),
];

impl NamedCommand {
    /// The command of this id.
    ///
    /// # Panics
    /// If there is none: ids are written in the code.
    pub fn of(id: &str) -> &'static Self {
        COMMANDS.iter().find(|command| command.id == id).unwrap_or_else(|| panic!("no command {id}"))
    }

    /// The message of its label.
    pub fn message(&self) -> String {
        format!("cmd-{}", self.id)
    }
}

/// The commands that have keys, those with Shift first: Ctrl+S would also take Ctrl+Shift+S.
pub(super) fn with_keys() -> Vec<(&'static NamedCommand, KeyboardShortcut)> {
    let mut all: Vec<_> =
        COMMANDS.iter().filter_map(|command| command.keys.map(|keys| (command, keys))).collect();
    all.sort_by_key(|(_, keys)| !keys.modifiers.shift);
    all
}
