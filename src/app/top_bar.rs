//! The bar on top: menus, history, units, theme.

use eframe::egui::{Align, Button, Label, Layout, RichText, TextStyle, Ui, vec2};

use super::command::Command;
use super::commands::{COMMANDS, Menu, NamedCommand};
use super::context::WindowContext;
use super::icon::Icon;
use super::languages;
use super::view::Tab;
use super::widgets::text_width;
use crate::measure::Units;
use crate::words::{Arg, say};

/// Most room for the title.
const TITLE: f32 = 96.0;
/// Size of the rooms' names, and in a window so narrow that they would need a second row.
const ROOMS: f32 = 14.0;
const NARROW_ROOMS: f32 = 13.0;
/// Below this width they are so small.
const NARROW: f32 = 840.0;
/// Least room for the units and the theme behind the button for the homeowner; they are in the menus too.
const EXTRAS: f32 = 165.0;
/// The title is left out of a narrower window.
const TITLED: f32 = 1440.0;
/// Undo and redo are left to the menu and the keyboard in a narrower window.
const WITH_HISTORY: f32 = 940.0;

pub(super) fn top_bar(ui: &mut Ui, context: &mut WindowContext<'_>) {
    // What a narrow window or a language of long words leaves no room for goes on in a second row.
    ui.horizontal_wrapped(|ui| {
        menu(ui, context, Menu::File, "menu-file");
        menu(ui, context, Menu::Edit, "menu-edit");
        menu(ui, context, Menu::View, "menu-view");
        let width = ui.ctx().content_rect().width();
        if width >= WITH_HISTORY {
            history(ui, context);
        }
        if width >= TITLED {
            title(ui, context);
        }
        if width >= WITH_HISTORY {
            state(ui, context);
            ui.separator();
        }
        tabs(ui, context);
        let homeowner = NamedCommand::of("homeowner");
        let text = context.words.text(&homeowner.message());
        let padding = 2.0 * ui.spacing().button_padding.x;
        if ui.available_size_before_wrap().x < text_width(ui, &text, &TextStyle::Button) + padding {
            ui.end_row();
        }
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            if ui.button(text).clicked() {
                context.push((homeowner.make)());
            }
            if ui.available_width() < EXTRAS {
                return;
            }
            let theme = NamedCommand::of("theme");
            if Icon::Theme.button(ui, &context.words.text(&theme.message()), true).clicked() {
                context.push((theme.make)());
            }
            units(ui, context);
        });
    });
}

/// The rooms, one for each question.
fn tabs(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let size = if ui.ctx().content_rect().width() < NARROW { NARROW_ROOMS } else { ROOMS };
    for tab in Tab::ALL {
        let text = RichText::new(context.words.text(tab.message())).size(size);
        if ui.selectable_label(context.view.tab == tab, text).clicked() {
            context.push(Command::Tab(tab));
        }
    }
}

fn menu(ui: &mut Ui, context: &mut WindowContext<'_>, menu: Menu, title: &str) {
    ui.menu_button(context.words.text(title), |ui| {
        ui.set_min_width(240.0);
        for command in COMMANDS.iter().filter(|command| command.menu == Some(menu)) {
            let mut button = Button::new(context.words.text(&command.message()));
            if let Some(keys) = command.keys {
                button = button.shortcut_text(ui.ctx().format_shortcut(&keys));
            }
            if ui.add_enabled((command.enabled)(context), button).clicked() {
                context.push((command.make)());
            }
        }
        if menu == Menu::View {
            languages::menu(ui, context);
        }
        if menu == Menu::File && !context.settings.recent.is_empty() {
            ui.separator();
            ui.label(RichText::new(context.words.text("menu-recent")).small().weak());
            for path in &context.settings.recent {
                let name =
                    path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
                if ui.button(name).on_hover_text(path.display().to_string()).clicked() {
                    context.commands.push(Command::OpenPath(path.clone()));
                }
            }
        }
    });
}

fn history(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    let undo = context.session.document.undo_name();
    let name = match undo {
        Some(step) => say!(words, "title-undo", step = Arg::Name(&words.text(step))),
        None => words.text("cmd-undo").into_owned(),
    };
    if Icon::Undo.button(ui, &name, undo.is_some()).clicked() {
        context.push(Command::Undo);
    }
    let redo = context.session.document.redo_name();
    let name = match redo {
        Some(step) => say!(words, "title-redo", step = Arg::Name(&words.text(step))),
        None => words.text("cmd-redo").into_owned(),
    };
    if Icon::Redo.button(ui, &name, redo.is_some()).clicked() {
        context.push(Command::Redo);
    }
}

fn title(ui: &mut Ui, context: &WindowContext<'_>) {
    let untitled = context.words.text("title-new-job");
    let title = if context.job.title.is_empty() { &untitled } else { context.job.title.as_str() };
    let label = Label::new(RichText::new(title).strong()).truncate();
    ui.allocate_ui_with_layout(
        vec2(TITLE, ui.available_height()),
        Layout::left_to_right(Align::Center),
        |ui| {
            ui.set_min_width(TITLE);
            ui.add(label).on_hover_text(title);
        },
    );
}

/// Whether the job is saved.
fn state(ui: &mut Ui, context: &WindowContext<'_>) {
    let state = match (&context.session.document.path, context.session.document.is_unsaved()) {
        (_, true) => Some("title-unsaved"),
        (Some(_), false) => Some("title-saved"),
        (None, false) => None,
    };
    // Room for either, whether it is said or not: the rooms beside it stay where they are.
    let room = |state| text_width(ui, &context.words.text(state), &TextStyle::Small);
    let room = room("title-unsaved").max(room("title-saved")).ceil() + 2.0;
    ui.allocate_ui_with_layout(
        vec2(room, ui.available_height()),
        Layout::left_to_right(Align::Center),
        |ui| {
            ui.set_min_width(room);
            if let Some(state) = state {
                ui.add(Label::new(RichText::new(context.words.text(state)).small().weak()).extend());
            }
        },
    );
}

fn units(ui: &mut Ui, context: &mut WindowContext<'_>) {
    for (units, name, id) in
        [(Units::Millimeters, "units-millimeters", "millimeters"), (Units::Inches, "units-inches", "inches")]
    {
        let on = context.job.units == units;
        if ui.selectable_label(on, context.words.text(name)).clicked() && !on {
            context.push((NamedCommand::of(id).make)());
        }
    }
}
