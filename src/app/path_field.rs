//! The field in which a path is typed where the system has no file dialog. What is wrong with the path is told
//! under the field, which stays open with what was typed; where the path leads is told while it is typed.

use std::path::{Path, PathBuf};

use eframe::egui::{Context, Key, Label, RichText, ScrollArea, TextEdit, Ui, vec2};

use super::App;
use super::command::Command;
use super::dialog::{buttons, modal};
use super::entry::select_all;
use super::pick::{Form, Purpose};
use super::theme;
use crate::words::{Words, say};

/// Width of the question, and height of what is told under the field: whatever it is, no button moves.
const WIDTH: f32 = 500.0;
const TOLD: f32 = 54.0;

/// A path that is asked for.
#[derive(Debug, Clone)]
pub(super) struct PathQuestion {
    purpose: Purpose,
    text: String,
    /// What is wrong with it, once it was tried.
    fault: Option<String>,
    /// A file that is there, and would be written over if the same path is taken again.
    replaces: Option<PathBuf>,
}

impl PathQuestion {
    /// Asks, with the path that is likely meant to begin with.
    pub fn new(purpose: Purpose, start: &Path) -> Self {
        // A path from the folder that the program happens to run in says little.
        let start = std::path::absolute(start).unwrap_or_else(|_| start.to_owned());
        Self { purpose, text: start.display().to_string(), fault: None, replaces: None }
    }

    /// Asks again for what turned out wrong.
    pub fn refused(self, fault: String) -> Self {
        Self { fault: Some(fault), ..self }
    }

    /// The path that what is typed stands for; `None` while nothing is.
    fn path(&self) -> Option<PathBuf> {
        let typed = self.text.trim().trim_matches('"');
        let home = typed.strip_prefix('~').filter(|rest| rest.is_empty() || rest.starts_with('/'));
        let path = match home.and_then(|rest| Some(std::env::home_dir()?.join(rest.trim_start_matches('/'))))
        {
            Some(path) => path,
            None => std::path::absolute(typed).ok()?,
        };
        (!typed.is_empty()).then(|| self.purpose.target(path))
    }

    /// What is wrong with a path that is there to be seen before it is used; `own` is the file of the job.
    fn wrong(&self, path: &Path, own: Option<&Path>, words: &Words) -> Option<String> {
        let shown = &path.display().to_string();
        let folder = path.parent().filter(|folder| !folder.is_dir());
        match self.purpose.form() {
            Form::Folder if path.is_file() => Some(say!(words, "path-is-file", path = shown)),
            Form::Folder => None,
            _ if path.is_dir() => Some(say!(words, "path-is-folder", path = shown)),
            Form::OpenFile if !path.exists() => Some(say!(words, "path-no-file", path = shown)),
            Form::SaveFile if folder.is_some() => {
                let folder = folder.unwrap_or(path).display().to_string();
                Some(say!(words, "path-no-folder", path = &folder))
            }
            Form::SaveFile
                if path.exists() && own != Some(path) && self.replaces.as_deref() != Some(path) =>
            {
                let button = words.text(&format!("{}.button", self.purpose.message())).into_owned();
                Some(say!(words, "path-is-there", path = shown, button = &button))
            }
            _ => None,
        }
    }
}

impl App {
    /// Shows the question; returns it if it stays open.
    pub(super) fn path_ui(
        &mut self,
        ctx: &Context,
        mut asked: PathQuestion,
        commands: &mut Vec<Command>,
    ) -> Option<PathQuestion> {
        let words = self.words();
        let message = asked.purpose.message();
        let mut done = None;
        let modal = modal("path", ctx).show(ctx, |ui| {
            ui.set_width(WIDTH.min(ctx.content_rect().width() - 60.0));
            ui.heading(words.text(message));
            ui.label(RichText::new(words.text("pick-by-typing")).weak());
            if field(ui, &words, &mut asked) {
                done = Some(true);
            }
            told(ui, &words, &asked);
            buttons(ui, |ui| {
                if ui.button(words.text(&format!("{message}.button"))).clicked() {
                    done = Some(true);
                }
                if ui.button(words.text("cancel")).clicked() {
                    done = Some(false);
                }
            });
        });
        match done {
            Some(true) => self.take_path(asked, &words, commands),
            None if !modal.should_close() => Some(asked),
            _ => {
                // Not saved after all: nothing is to go on.
                self.prompts.after_save = None;
                None
            }
        }
    }

    /// Uses the path, or asks again with what is wrong with it.
    fn take_path(
        &mut self,
        asked: PathQuestion,
        words: &Words,
        commands: &mut Vec<Command>,
    ) -> Option<PathQuestion> {
        let Some(path) = asked.path() else {
            return Some(asked.refused(words.text("path-none").into_owned()));
        };
        let own = self.session.document.path.as_deref();
        if let Some(wrong) = asked.wrong(&path, own, words) {
            return Some(PathQuestion { replaces: Some(path), ..asked.refused(wrong) });
        }
        commands.push(asked.purpose.command(path));
        self.prompts.tried = Some(PathQuestion { fault: None, ..asked });
        None
    }

    /// Tells what is wrong with a file: in the field in which its path was typed, else over the drawing.
    pub(super) fn file_fault(&mut self, text: String) {
        match self.prompts.tried.take() {
            Some(asked) => self.prompts.dialog = Some(super::Dialog::Path(asked.refused(text))),
            None => self.fault(text),
        }
    }
}

/// The field, under its label and as wide as the question; whether the path in it was taken by Enter.
fn field(ui: &mut Ui, words: &Words, asked: &mut PathQuestion) -> bool {
    let label = ui.label(words.text(&format!("{}.field", asked.purpose.message())));
    let field = TextEdit::singleline(&mut asked.text).desired_width(f32::INFINITY);
    let field = ui.add(field).labelled_by(label.id);
    if field.changed() {
        asked.fault = None;
    }
    let entered = field.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
    if entered || ui.memory(|memory| memory.focused().is_none()) {
        field.request_focus();
    }
    if field.gained_focus() {
        select_all(ui, field.id, &asked.text);
    }
    entered
}

/// What is wrong with the path, else where it leads.
fn told(ui: &mut Ui, words: &Words, asked: &PathQuestion) {
    let palette = theme::palette(ui);
    let (text, color) = match (&asked.fault, asked.path()) {
        (Some(fault), _) => (fault.clone(), palette.error),
        (None, Some(path)) => {
            (say!(words, "path-leads-to", path = &path.display().to_string()), palette.soft)
        }
        (None, None) => (words.text("path-none").into_owned(), palette.soft),
    };
    ui.allocate_ui(vec2(ui.available_width(), TOLD), |ui| {
        ui.set_min_height(TOLD);
        ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
            ui.add(Label::new(RichText::new(text).small().color(color)).wrap());
        });
    });
}
