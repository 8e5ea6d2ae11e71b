//! The bar on top: file, history, units, theme.

use eframe::egui::{Align, Button, Layout, RichText, Ui};

use super::command::{Command, SHORTCUTS};
use super::context::Cx;
use super::icon::Icon;
use crate::measure::Units;

pub(super) fn top_bar(ui: &mut Ui, cx: &mut Cx<'_>) {
    ui.horizontal(|ui| {
        file_menu(ui, cx);
        for (icon, name, command) in [
            (Icon::New, "New job", Command::New),
            (Icon::Open, "Open a job", Command::Open),
            (Icon::Save, "Save", Command::Save),
        ] {
            if icon.button(ui, name, true).clicked() {
                cx.push(command);
            }
        }
        ui.separator();
        history(ui, cx);
        ui.separator();
        title(ui, cx);
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            if Icon::Theme.button(ui, "Switch light and dark", true).clicked() {
                cx.push(Command::SwitchTheme);
            }
            units(ui, cx);
        });
    });
}

fn file_menu(ui: &mut Ui, cx: &mut Cx<'_>) {
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
                cx.push(make());
            }
        }
        ui.separator();
        if ui.button("Open the demo").clicked() {
            cx.push(Command::OpenDemo);
        }
        if !cx.settings.recent.is_empty() {
            ui.separator();
            ui.label(RichText::new("Recent").small().weak());
            for path in &cx.settings.recent {
                let name =
                    path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
                if ui.button(name).on_hover_text(path.display().to_string()).clicked() {
                    cx.commands.push(Command::OpenPath(path.clone()));
                }
            }
        }
    });
}

fn history(ui: &mut Ui, cx: &mut Cx<'_>) {
    let name = |verb: &str, step: Option<&str>| match step {
        Some(step) => format!("{verb}: {step}"),
        None => verb.to_owned(),
    };
    let undo = cx.document.undo_name();
    if Icon::Undo.button(ui, &name("Undo", undo), undo.is_some()).clicked() {
        cx.push(Command::Undo);
    }
    let redo = cx.document.redo_name();
    if Icon::Redo.button(ui, &name("Redo", redo), redo.is_some()).clicked() {
        cx.push(Command::Redo);
    }
}

fn title(ui: &mut Ui, cx: &Cx<'_>) {
    let title = if cx.job.title.is_empty() { "New job" } else { &cx.job.title };
    ui.label(RichText::new(title).strong());
    let state = match (&cx.document.path, cx.document.is_unsaved()) {
        (_, true) => "not saved",
        (Some(_), false) => "saved",
        (None, false) => "",
    };
    ui.label(RichText::new(state).small().weak());
}

fn units(ui: &mut Ui, cx: &mut Cx<'_>) {
    for (units, name) in [(Units::Millimetres, "mm"), (Units::Inches, "inches")] {
        let on = cx.job.units == units;
        if ui.selectable_label(on, name).clicked() && !on {
            cx.edit("Units", move |job| job.units = units);
        }
    }
}
