//! Questions: unsaved changes, and where a file is.
//!
//! The system's own file dialog is asked first, off the window's thread. Where none can be had it
//! answers at once with nothing, just as if it had been cancelled; a quick nothing therefore opens
//! a field in the window in which the path can be typed.

use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, channel};
use std::time::{Duration, Instant};

use eframe::egui::{Align, Context, Frame, Id, Layout, Margin, Modal, RichText, Ui, ViewportCommand};

use super::autosave::Lost;
use super::command::Command;
use super::path_field::PathQuestion;
use super::pick::{Form, Purpose};
use super::{After, App};
use crate::words::{Words, say};

/// A person needs longer than this to cancel a dialog.
const TOO_QUICK: Duration = Duration::from_millis(600);

/// A question in the window.
pub(super) enum Dialog {
    /// What to do with unsaved changes before this; before closing if it is `None`.
    Unsaved(Option<Command>),
    /// Where a file is.
    Path(PathQuestion),
    /// What to do with unsaved work of windows that did not close.
    Lost(Vec<Lost>),
    /// Whether to save over a file that someone else changed.
    Changed(PathBuf),
}

impl Dialog {
    pub(super) fn path(purpose: Purpose, start: &Path) -> Self {
        Self::Path(PathQuestion::new(purpose, start))
    }
}

/// The system's file dialogs.
pub(super) struct NativeDialogs {
    ctx: Context,
    open: Option<(Purpose, Receiver<Answer>)>,
}

/// What came of a dialog of the system, and how soon.
struct Answer {
    path: Option<PathBuf>,
    took: Duration,
}

impl NativeDialogs {
    pub(super) const fn new(ctx: Context) -> Self {
        Self { ctx, open: None }
    }

    /// Opens the dialog; the answer comes from [`Self::outcome`]. One at a time.
    pub(super) fn ask(&mut self, purpose: Purpose, start: &Path, words: &Words) {
        if self.open.is_some() {
            return;
        }
        let (sender, receiver) = channel();
        let message = purpose.message();
        let mut dialog = rfd::AsyncFileDialog::new().set_title(words.text(message));
        if let Some(folder) = start.parent().filter(|folder| folder.is_dir()) {
            dialog = dialog.set_directory(folder);
        }
        if !purpose.extensions().is_empty() {
            dialog = dialog.add_filter(words.text(&format!("{message}.kind")), purpose.extensions());
        }
        let name = start.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
        let ctx = self.ctx.clone();
        let wait = move || {
            let asked = Instant::now();
            let handle = match purpose.form() {
                Form::OpenFile => pollster::block_on(dialog.pick_file()),
                Form::SaveFile => pollster::block_on(dialog.set_file_name(name).save_file()),
                Form::Folder => pollster::block_on(dialog.pick_folder()),
            };
            // Timed here: the window may look for the answer long after it came.
            let path = handle.map(|handle| handle.path().to_owned());
            sender.send(Answer { path, took: asked.elapsed() }).ok();
            ctx.request_repaint();
        };
        match std::thread::Builder::new().name("file dialog".to_owned()).spawn(wait) {
            Ok(_running) => self.open = Some((purpose, receiver)),
            Err(error) => tracing::error!("no thread for the file dialog: {error}"),
        }
    }

    /// What came of the dialog: a command, or the purpose if no dialog could be had.
    pub(super) fn outcome(&mut self) -> Option<Result<Command, Purpose>> {
        let (purpose, receiver) = self.open.as_ref()?;
        let (purpose, answer) = (*purpose, receiver.try_recv().ok()?);
        self.open = None;
        outcome(purpose, answer)
    }
}

fn outcome(purpose: Purpose, answer: Answer) -> Option<Result<Command, Purpose>> {
    match answer.path {
        Some(path) => Some(Ok(purpose.command(path))),
        None if answer.took < TOO_QUICK => Some(Err(purpose)),
        None => None,
    }
}

impl App {
    /// Shows a question; returns it if it stays open.
    pub(super) fn dialog_ui(
        &mut self,
        ctx: &Context,
        dialog: Dialog,
        commands: &mut Vec<Command>,
    ) -> Option<Dialog> {
        match dialog {
            Dialog::Unsaved(then) => self.unsaved_ui(ctx, then, commands),
            Dialog::Lost(lost) => self.lost_ui(ctx, lost),
            Dialog::Changed(path) => self.changed_ui(ctx, path, commands),
            Dialog::Path(asked) => self.path_ui(ctx, asked, commands).map(Dialog::Path),
        }
    }

    fn lost_ui(&mut self, ctx: &Context, mut lost: Vec<Lost>) -> Option<Dialog> {
        let words = self.words();
        let mut choice = None;
        modal("lost", ctx).show(ctx, |ui| {
            ui.set_width(440.0);
            ui.heading(words.text("lost-title"));
            ui.label(words.text("lost-text"));
            for (at, lost) in lost.iter().enumerate() {
                ui.separator();
                ui.horizontal(|ui| {
                    let untitled = words.text("title-new-job");
                    let title = if lost.job.title.is_empty() { &untitled } else { lost.job.title.as_str() };
                    ui.label(RichText::new(title).strong());
                    let when = lost.when.and_then(|when| jiff::Timestamp::try_from(when).ok());
                    let when = when.map(|when| jiff::ZonedDateTime::new(when, jiff::tz::TimeZone::system()));
                    let when = when.map(|when| {
                        format!("{} {}", words.figures().date(when.date()), when.strftime("%H:%M"))
                    });
                    ui.label(RichText::new(when.unwrap_or_default()).small().weak());
                });
                ui.horizontal(|ui| {
                    if ui.button(words.text("lost-recover")).clicked() {
                        choice = Some((at, true));
                    }
                    let (surfaces, gaps) = (lost.job.surfaces.len(), lost.job.survey.gaps.len());
                    let holds = match &lost.job.next_install {
                        Some(next) => say!(words, "lost-holds-install", readings = next.readings.len()),
                        None => say!(words, "lost-holds", surfaces = surfaces, gaps = gaps),
                    };
                    ui.label(RichText::new(holds).small().weak());
                    ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                        // Asked for twice: what is deleted is gone.
                        let sure = ui.make_persistent_id(("sure", at));
                        if ui.data(|data| data.get_temp::<bool>(sure)).is_some() {
                            if ui.button(words.text("lost-delete-now")).clicked() {
                                choice = Some((at, false));
                            }
                        } else if ui.button(words.text("lost-delete")).clicked() {
                            ui.data_mut(|data| data.insert_temp(sure, true));
                        }
                    });
                });
            }
            buttons(ui, |ui| {
                if ui.button(words.text("lost-later")).clicked() {
                    choice = Some((usize::MAX, false));
                }
            });
        });
        match choice {
            None => Some(Dialog::Lost(lost)),
            Some((usize::MAX, _)) => None,
            Some((at, true)) => {
                let taken = lost.remove(at);
                self.recover(&taken);
                None
            }
            Some((at, false)) => {
                lost.remove(at).forget();
                (!lost.is_empty()).then_some(Dialog::Lost(lost))
            }
        }
    }

    fn changed_ui(&mut self, ctx: &Context, path: PathBuf, commands: &mut Vec<Command>) -> Option<Dialog> {
        let words = self.words();
        let mut choice = None;
        let modal = modal("changed", ctx).show(ctx, |ui| {
            ui.set_width(420.0);
            ui.heading(words.text("changed-title"));
            ui.label(say!(words, "changed-text", path = &path.display().to_string()));
            buttons(ui, |ui| {
                for message in ["cmd-save-as", "changed-overwrite", "changed-open-theirs", "cancel"] {
                    if ui.button(words.text(message)).clicked() {
                        choice = Some(message);
                    }
                }
            });
        });
        match choice {
            Some("changed-overwrite") => self.save_now(ctx, &path),
            Some("cmd-save-as") => commands.push(Command::Pick(Purpose::Save)),
            // Asks first: what was typed here would go.
            Some("changed-open-theirs") => commands.push(Command::OpenPath(path)),
            Some(_) => self.prompts.after_save = None,
            None if modal.should_close() => self.prompts.after_save = None,
            None => return Some(Dialog::Changed(path)),
        }
        None
    }

    fn unsaved_ui(
        &mut self,
        ctx: &Context,
        then: Option<Command>,
        commands: &mut Vec<Command>,
    ) -> Option<Dialog> {
        let words = self.words();
        let mut choice = None;
        let modal = modal("unsaved", ctx).show(ctx, |ui| {
            ui.set_width(380.0);
            ui.heading(words.text("unsaved-title"));
            ui.label(words.text("unsaved-text"));
            buttons(ui, |ui| {
                if ui.button(words.text("cmd-save")).clicked() {
                    choice = Some("save");
                }
                if ui.button(words.text("unsaved-discard")).clicked() {
                    choice = Some("discard");
                }
                if ui.button(words.text("cancel")).clicked() {
                    choice = Some("cancel");
                }
            });
        });
        match choice {
            Some("save") => {
                self.prompts.after_save = Some(then.map_or(After::Close, After::Do));
                commands.push(Command::Save);
                None
            }
            Some("discard") => {
                match then {
                    Some(command) => self.leave_now(ctx, command),
                    None => {
                        self.window.closing = true;
                        ctx.send_viewport_cmd(ViewportCommand::Close);
                    }
                }
                // Another question may have come of it.
                self.prompts.dialog.take()
            }
            Some(_) => None,
            None if modal.should_close() => None,
            None => Some(Dialog::Unsaved(then)),
        }
    }
}

/// A question with room around it.
pub(super) fn modal(name: &'static str, ctx: &Context) -> Modal {
    Modal::new(Id::unique(name)).frame(Frame::popup(&ctx.global_style()).inner_margin(Margin::same(16)))
}

/// The buttons that answer a question.
pub(super) fn buttons(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    ui.add_space(6.0);
    ui.with_layout(Layout::right_to_left(Align::Center), add);
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Where no dialog can be had the path is asked for in the window, however late the window gets to hear of it.
    #[test]
    fn a_dialog_that_answers_at_once_with_nothing_is_none() {
        let answer = |milliseconds| Answer { path: None, took: Duration::from_millis(milliseconds) };
        assert!(matches!(outcome(Purpose::Save, answer(20)), Some(Err(Purpose::Save))));
        assert!(outcome(Purpose::Save, answer(2000)).is_none());

        let (sender, receiver) = channel();
        let mut dialogs = NativeDialogs { ctx: Context::default(), open: Some((Purpose::Papers, receiver)) };
        sender.send(answer(20)).unwrap();
        std::thread::sleep(TOO_QUICK + Duration::from_millis(50));
        assert!(matches!(dialogs.outcome(), Some(Err(Purpose::Papers))));
    }
}
