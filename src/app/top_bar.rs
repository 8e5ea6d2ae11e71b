//! The bar on top: file, history, units, theme.

use eframe::egui::{Align, Button, Layout, RichText, Ui};

use super::command::{Command, SHORTCUTS};
use super::context::WindowContext;
use super::icon::Icon;
use crate::measure::Units;

pub(super) fn top_bar(ui: &mut Ui, context: &mut WindowContext<'_>) {
    ui.horizontal(|ui| {
        file_menu(ui, context);
        for (icon, name, command) in [
            (Icon::New, "New job", Command::New),
            (Icon::Open, "Open a job", Command::Open),
            (Icon::Save, "Save", Command::Save),
        ] {
            if icon.button(ui, name, true).clicked() {
                context.push(command);
            }
        }
        ui.separator();
        history(ui, context);
        ui.separator();
        title(ui, context);
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            if Icon::Theme.button(ui, "Switch light and dark", true).clicked() {
                context.push(Command::SwitchTheme);
            }
            units(ui, context);
        });
    });
}

fn file_menu(ui: &mut Ui, context: &mut WindowContext<'_>) {
    ui.menu_button("File", |ui| {
        ui.set_min_width(240.0);
        const ORDER: [&str; 6] =
            ["New job", "Open a job", "Save", "Save under another name", "Write the papers", "Undo"];
        let mut listed = SHORTCUTS.to_vec();
        // Shortcuts are matched longest first; a menu is read from the usual first.
        listed.sort_by_key(|(name, ..)| ORDER.iter().position(|known| known == name).unwrap_or(ORDER.len()));
        for (name, shortcut, make) in listed {
            let keys = ui.ctx().format_shortcut(&shortcut);
            if ui.add(Button::new(name).shortcut_text(keys)).clicked() {
                context.push(make());
            }
        }
        ui.separator();
        if ui.button("Open the demo").clicked() {
            context.push(Command::OpenDemo);
        }
        if !context.settings.recent.is_empty() {
            ui.separator();
            ui.label(RichText::new("Recent").small().weak());
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
    let name = |verb: &str, step: Option<&str>| match step {
        Some(step) => format!("{verb}: {step}"),
        None => verb.to_owned(),
    };
    let undo = context.document.undo_name();
    if Icon::Undo.button(ui, &name("Undo", undo), undo.is_some()).clicked() {
        context.push(Command::Undo);
    }
    let redo = context.document.redo_name();
    if Icon::Redo.button(ui, &name("Redo", redo), redo.is_some()).clicked() {
        context.push(Command::Redo);
    }
}

fn title(ui: &mut Ui, context: &WindowContext<'_>) {
    let title = if context.job.title.is_empty() { "New job" } else { &context.job.title };
    ui.label(RichText::new(title).strong());
    let state = match (&context.document.path, context.document.is_unsaved()) {
        (_, true) => "not saved",
        (Some(_), false) => "saved",
        (None, false) => "",
    };
    ui.label(RichText::new(state).small().weak());
}

fn units(ui: &mut Ui, context: &mut WindowContext<'_>) {
    for (units, name) in [(Units::Millimeters, "mm"), (Units::Inches, "inches")] {
        let on = context.job.units == units;
        if ui.selectable_label(on, name).clicked() && !on {
            context.edit("Units", move |job| job.units = units);
        }
    }
}
