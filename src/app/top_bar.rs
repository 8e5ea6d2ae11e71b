//! The bar on top: menus, history, units, theme.

use eframe::egui::{Align, Button, Layout, RichText, Ui};

use super::command::Command;
use super::commands::{COMMANDS, Menu, NamedCommand};
use super::context::WindowContext;
use super::icon::Icon;
use super::languages;
use super::view::Tab;
use crate::measure::Units;
use crate::words::{Arg, say};

pub(super) fn top_bar(ui: &mut Ui, context: &mut WindowContext<'_>) {
    ui.horizontal(|ui| {
        menu(ui, context, Menu::File, "menu-file");
        menu(ui, context, Menu::Edit, "menu-edit");
        menu(ui, context, Menu::View, "menu-view");
        ui.separator();
        for (icon, id) in [(Icon::New, "new"), (Icon::Open, "open"), (Icon::Save, "save")] {
            let command = NamedCommand::of(id);
            if icon.button(ui, &context.words.text(&command.message()), true).clicked() {
                context.push((command.make)());
            }
        }
        ui.separator();
        history(ui, context);
        ui.separator();
        title(ui, context);
        ui.separator();
        tabs(ui, context);
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            let theme = NamedCommand::of("theme");
            if Icon::Theme.button(ui, &context.words.text(&theme.message()), true).clicked() {
                context.push((theme.make)());
            }
            units(ui, context);
            ui.separator();
            let homeowner = NamedCommand::of("homeowner");
            if ui.button(context.words.text(&homeowner.message())).clicked() {
                context.push((homeowner.make)());
            }
        });
    });
}

/// The rooms, one for each question.
fn tabs(ui: &mut Ui, context: &mut WindowContext<'_>) {
    for tab in Tab::ALL {
        let text = RichText::new(context.words.text(tab.message())).size(14.5);
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
    ui.label(RichText::new(title).strong());
    let state = match (&context.session.document.path, context.session.document.is_unsaved()) {
        (_, true) => Some("title-unsaved"),
        (Some(_), false) => Some("title-saved"),
        (None, false) => None,
    };
    if let Some(state) = state {
        ui.label(RichText::new(context.words.text(state)).small().weak());
    }
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
