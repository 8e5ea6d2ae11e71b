//! Opening, saving and leaving jobs, without ever losing one.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use eframe::egui::{Context, ViewportCommand};

use super::command::Command;
use super::dialog::Dialog;
use super::document::Document;
use super::path_field::PathQuestion;
use super::pick::Purpose;
use super::view::{Tab, View};
use super::{After, App, Toast, autosave, entry};
use crate::job::{Job, demo_job, file};
use crate::words::{Say as _, say};

impl App {
    /// Does what would lose unsaved changes, or asks first.
    pub(super) fn leave(&mut self, ctx: &Context, command: Command) {
        if self.session.document.is_unsaved() {
            self.prompts.dialog = Some(Dialog::Unsaved(Some(command)));
        } else {
            self.leave_now(ctx, command);
        }
    }

    pub(super) fn leave_now(&mut self, ctx: &Context, command: Command) {
        entry::forget(ctx);
        match command {
            Command::New => self.begin(),
            Command::PlanNextInstall => {
                let today = jiff::ZonedDateTime::now().date();
                let job = self.session.job().next_install_here(today);
                self.replace(Document::new(job, None, vec![]));
                self.view.tab = Tab::NextInstall;
            }
            Command::FollowUpInstall => {
                let today = jiff::ZonedDateTime::now().date();
                if let Some(job) = self.session.job().follow_up_of_install(today) {
                    self.replace(Document::new(job, None, vec![]));
                    self.view.tab = Tab::Measure;
                }
            }
            Command::OpenDemo => self.replace(Document::new(demo_job(), None, vec![])),
            Command::OpenPath(path) => self.open(&path),
            _ => {}
        }
    }

    /// Opens an empty job, with the user's own prices.
    pub(super) fn begin(&mut self) {
        let today = jiff::ZonedDateTime::now().date();
        let job = self.new_job(today);
        self.replace(Document::new(job, None, vec![]));
        if let Some(fault) = self.prompts.pending_fault.take() {
            self.fault(fault);
        }
        self.view.tab = Tab::Measure;
    }

    pub(super) fn open(&mut self, path: &Path) {
        match file::load(path) {
            Ok(loaded) => {
                let partly = !loaded.problems.is_empty();
                self.replace(Document::new(loaded.job, Some(path.to_owned()), loaded.problems));
                self.settings.remember(path);
                self.note_open(path);
                if partly {
                    let text = say!(self.words(), "file-partly-read", path = &path.display().to_string());
                    self.fault(text);
                }
            }
            Err(error) => {
                if self.services.dialogs.is_none() || !path.exists() {
                    // A path that was mistyped is put right, not typed again.
                    self.prompts.tried = Some(PathQuestion::new(Purpose::Open, path));
                }
                self.file_fault(error.say(&self.words()));
            }
        }
    }

    /// Takes up unsaved work of a window that did not close.
    pub(super) fn recover(&mut self, lost: &autosave::Lost) {
        let saved = lost.path.as_deref().and_then(|path| file::load(path).ok());
        let saved = saved.map_or_else(Job::default, |loaded| loaded.job);
        self.replace(Document::recovered(lost.job.clone(), lost.path.clone(), saved));
        if let Some(path) = &lost.path {
            self.note_open(path);
        }
        if let Some(typing) = &lost.typing {
            let text = say!(self.words(), "file-was-typing", text = &typing.text, field = &typing.field);
            self.prompts.toast = Some(Toast::fault(text));
        }
        lost.forget();
    }

    /// Tells if another window has the file open, too.
    fn note_open(&mut self, path: &Path) {
        if self.services.autosave.as_mut().is_some_and(|autosave| autosave.opened(path)) {
            let text = say!(self.words(), "file-open-twice", path = &path.display().to_string());
            self.fault(text);
        }
    }

    /// Tells if the file changed while the window was not looked at.
    pub(super) fn note_change(&mut self, ctx: &Context) {
        let focused = ctx.input(|input| input.focused);
        let returned = focused && !std::mem::replace(&mut self.window.focused, focused);
        let Some(path) = self.session.document.path.clone().filter(|_| returned) else { return };
        if self.services.autosave.as_ref().is_some_and(|autosave| autosave.changed_meanwhile(&path)) {
            let text = say!(self.words(), "file-changed", path = &path.display().to_string());
            self.fault(text);
        }
    }

    pub(super) fn replace(&mut self, document: Document) {
        let tab = self.view.tab.for_job(document.job());
        self.session.document = document;
        if let Some(autosave) = &mut self.services.autosave {
            autosave.closed();
        }
        self.view = View { tab, panes: self.view.panes.clone(), ..View::default() };
        self.prompts.toast = None;
        self.session.opened += 1;
        // The next job's papers belong in a folder of its own.
        self.settings.papers = None;
        self.reassess();
    }

    /// Saves, unless someone else changed the file meanwhile: then it asks.
    pub(super) fn save(&mut self, ctx: &Context, path: &Path) {
        let own = self.session.document.path.as_deref() == Some(path);
        if own && self.services.autosave.as_ref().is_some_and(|autosave| autosave.changed_meanwhile(path)) {
            self.prompts.dialog = Some(Dialog::Changed(path.to_owned()));
        } else {
            self.save_now(ctx, path);
        }
    }

    pub(super) fn save_now(&mut self, ctx: &Context, path: &Path) {
        self.keep_figures();
        let job = Arc::clone(self.session.job());
        match file::save(&job, path) {
            Ok(()) => {
                self.session.document.mark_saved(job, path.to_owned());
                self.settings.remember(path);
                if let Some(autosave) = &mut self.services.autosave {
                    autosave.opened(path);
                }
                let text = say!(self.words(), "file-saved", path = &path.display().to_string());
                self.prompts.toast = Some(Toast::good(text));
                match self.prompts.after_save.take() {
                    Some(After::Close) => ctx.send_viewport_cmd(ViewportCommand::Close),
                    Some(After::Do(command)) => self.leave_now(ctx, command),
                    None => {}
                }
            }
            Err(error) => {
                if self.prompts.tried.is_none() {
                    self.prompts.after_save = None;
                }
                self.file_fault(error.say(&self.words()));
            }
        }
    }

    pub(super) fn ask_path(&mut self, purpose: Purpose) {
        let (start, words) = (self.start_path(purpose), self.words());
        match &mut self.services.dialogs {
            Some(dialogs) => dialogs.ask(purpose, &start, &words),
            None => self.prompts.dialog = Some(Dialog::path(purpose, &start)),
        }
    }

    pub(super) fn start_path(&self, purpose: Purpose) -> PathBuf {
        let title = if self.job().title.is_empty() { "job" } else { &self.job().title };
        let mut stem: String = title.chars().map(|c| if c.is_alphanumeric() { c } else { '_' }).collect();
        // Boards to come for a house that had a callback: not over its file.
        if self.job().next_install.is_some() && self.job().surfaces.is_empty() {
            stem.push_str("_boards");
        }
        match purpose {
            Purpose::Photo => PathBuf::from("photo.jpg"),
            Purpose::Logo => PathBuf::from("logo.png"),
            Purpose::Outlines => PathBuf::from("rooms.dxf"),
            Purpose::ExportPrices | Purpose::ImportPrices => PathBuf::from("prices.ron"),
            Purpose::Finished => {
                let folder = self.session.document.path.as_deref().and_then(Path::parent);
                folder.map_or_else(|| PathBuf::from("."), Path::to_owned)
            }
            Purpose::Papers | Purpose::Record => {
                self.settings.papers.clone().unwrap_or_else(|| PathBuf::from("papers"))
            }
            _ => self
                .session
                .document
                .path
                .clone()
                .unwrap_or_else(|| PathBuf::from(stem).with_extension("ron")),
        }
    }

    /// Keeps the window open while there is something to lose.
    pub(super) fn guard_close(&mut self, ctx: &Context) {
        let asked = ctx.input(|input| input.viewport().close_requested());
        if !asked || self.window.closing {
            return;
        }
        if entry::is_typing(ctx) {
            // What is being typed is read first; then closing is tried again.
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
            entry::leave_field(ctx);
            self.window.pending = Some(Command::Quit);
            ctx.request_repaint();
        } else if self.session.document.is_unsaved() {
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
            self.prompts.dialog = Some(Dialog::Unsaved(None));
        }
    }
}
