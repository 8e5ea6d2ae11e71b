//! Questions: unsaved changes, and where a file is.
//!
//! The system's own file dialog is asked first, off the window's thread. Where none can be had it
//! answers at once with nothing, just as if it had been cancelled; a quick nothing therefore opens
//! a field in the window in which the path can be typed.

use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, channel};
use std::time::{Duration, Instant};

use eframe::egui::{
    Align, Context, Frame, Id, Key, Layout, Margin, Modal, RichText, TextEdit, Ui, ViewportCommand,
};

use super::command::Command;
use super::entry::select_all;
use super::autosave::Lost;
use super::{After, App};

/// A person needs longer than this to cancel a dialog.
const TOO_QUICK: Duration = Duration::from_millis(600);

/// What a path is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Purpose {
    Open,
    Save,
    Papers,
    Weather,
    Logger,
    ImportPrices,
    ExportPrices,
    Finished,
    Photo,
    Outlines,
    Logo,
}

impl Purpose {
    const fn title(self) -> &'static str {
        match self {
            Self::Open => "Open a job",
            Self::Save => "Save the job",
            Self::Papers => "Write the papers",
            Self::Weather => "Read a weather file",
            Self::Logger => "Read a logger's file",
            Self::ImportPrices => "Read a shelf",
            Self::ExportPrices => "Write the shelf",
            Self::Finished => "Learn from finished jobs",
            Self::Photo => "Pin a photo",
            Self::Logo => "Choose a logo",
            Self::Outlines => "Take outlines from a file",
        }
    }

    const fn label(self) -> &'static str {
        match self {
            Self::Open => "Job file (.ron)",
            Self::Save => "Save to",
            Self::Papers => "Folder for the PDFs",
            Self::Weather => "EPW or TMY3 file",
            Self::Logger => "CSV file",
            Self::ImportPrices | Self::ExportPrices => "Shelf file (.ron)",
            Self::Finished => "Folder of job files",
            Self::Photo => "JPEG or PNG file",
            Self::Logo => "PNG, JPEG or SVG file",
            Self::Outlines => "DXF, SVG or CSV file",
        }
    }

    const fn verb(self) -> &'static str {
        match self {
            Self::Open => "Open",
            Self::Save => "Save",
            Self::Papers | Self::ExportPrices => "Write",
            Self::Weather
            | Self::Logger
            | Self::ImportPrices
            | Self::Finished
            | Self::Outlines
            | Self::Logo => "Read",
            Self::Photo => "Pin",
        }
    }

    fn command(self, path: PathBuf) -> Command {
        match self {
            Self::Open => Command::OpenPath(path),
            Self::Save => Command::SavePath(with_extension(path)),
            Self::Papers => Command::WritePapersTo(path),
            Self::Weather => Command::TakeWeather(path),
            Self::Logger => Command::AskLogger(path),
            Self::ImportPrices => Command::OfferPrices(path),
            Self::ExportPrices => Command::ExportPricesTo(with_extension(path)),
            Self::Finished => Command::LearnFrom(path),
            Self::Photo => Command::TakePhoto(path),
            Self::Logo => Command::TakeLogo(path),
            Self::Outlines => Command::TakeOutlines(path),
        }
    }
}

/// A job's file ends in `.ron`, whatever was typed.
fn with_extension(path: PathBuf) -> PathBuf {
    if path.extension().is_some() { path } else { path.with_extension("ron") }
}

/// A question in the window.
pub(super) enum Dialog {
    /// What to do with unsaved changes before this; before closing if it is `None`.
    Unsaved(Option<Command>),
    /// Where a file is.
    Path { purpose: Purpose, text: String },
    /// What to do with unsaved work of windows that did not close.
    Lost(Vec<Lost>),
    /// Whether to save over a file that someone else changed.
    Changed(PathBuf),
}

impl Dialog {
    pub(super) fn path(purpose: Purpose, start: &Path) -> Self {
        Self::Path { purpose, text: start.display().to_string() }
    }
}

/// The system's file dialogs.
pub(super) struct NativeDialogs {
    ctx: Context,
    open: Option<(Purpose, Instant, Receiver<Option<PathBuf>>)>,
}

impl NativeDialogs {
    pub(super) const fn new(ctx: Context) -> Self {
        Self { ctx, open: None }
    }

    /// Opens the dialog; the answer comes from [`Self::outcome`]. One at a time.
    pub(super) fn ask(&mut self, purpose: Purpose, start: &Path) {
        if self.open.is_some() {
            return;
        }
        let (sender, receiver) = channel();
        let mut dialog = rfd::AsyncFileDialog::new().set_title(purpose.title());
        if let Some(folder) = start.parent().filter(|folder| folder.is_dir()) {
            dialog = dialog.set_directory(folder);
        }
        let name = start.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
        let ctx = self.ctx.clone();
        let wait = move || {
            let handle = match purpose {
                Purpose::Open => pollster::block_on(dialog.add_filter("Gapwright job", &["ron"]).pick_file()),
                Purpose::Save => {
                    let named = dialog.add_filter("Gapwright job", &["ron"]).set_file_name(name);
                    pollster::block_on(named.save_file())
                }
                Purpose::Papers | Purpose::Finished => pollster::block_on(dialog.pick_folder()),
                Purpose::Outlines => {
                    pollster::block_on(dialog.add_filter("Outlines", &["dxf", "svg", "csv"]).pick_file())
                }
                Purpose::Logo => {
                    pollster::block_on(dialog.add_filter("Logo", &["png", "jpg", "jpeg", "svg"]).pick_file())
                }
                Purpose::Photo => {
                    pollster::block_on(dialog.add_filter("Photo", &["jpg", "jpeg", "png"]).pick_file())
                }
                Purpose::ImportPrices => {
                    pollster::block_on(dialog.add_filter("Gapwright shelf", &["ron"]).pick_file())
                }
                Purpose::ExportPrices => {
                    let named = dialog.add_filter("Gapwright shelf", &["ron"]).set_file_name("shelf.ron");
                    pollster::block_on(named.save_file())
                }
                Purpose::Weather => {
                    pollster::block_on(dialog.add_filter("Weather", &["epw", "csv"]).pick_file())
                }
                Purpose::Logger => {
                    pollster::block_on(dialog.add_filter("Readings", &["csv", "txt", "tsv"]).pick_file())
                }
            };
            sender.send(handle.map(|handle| handle.path().to_owned())).ok();
            ctx.request_repaint();
        };
        match std::thread::Builder::new().name("file dialog".to_owned()).spawn(wait) {
            Ok(_running) => self.open = Some((purpose, Instant::now(), receiver)),
            Err(error) => tracing::error!("no thread for the file dialog: {error}"),
        }
    }

    /// What came of the dialog: a command, or the purpose if no dialog could be had.
    pub(super) fn outcome(&mut self) -> Option<Result<Command, Purpose>> {
        let (purpose, since, receiver) = self.open.as_ref()?;
        let answer = receiver.try_recv().ok()?;
        let (purpose, quick) = (*purpose, since.elapsed() < TOO_QUICK);
        self.open = None;
        match answer {
            Some(path) => Some(Ok(purpose.command(path))),
            None if quick => Some(Err(purpose)),
            None => None,
        }
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
            Dialog::Path { purpose, text } => {
                let open = path_ui(ctx, purpose, text, commands);
                if open.is_none() && commands.is_empty() {
                    // Not saved after all: nothing is to go on.
                    self.after_save = None;
                }
                open
            }
        }
    }

    fn lost_ui(&mut self, ctx: &Context, mut lost: Vec<Lost>) -> Option<Dialog> {
        let mut choice = None;
        modal("lost", ctx).show(ctx, |ui| {
            ui.set_width(440.0);
            ui.heading("Unsaved work was found");
            ui.label("A window did not close as it should. What was typed in it is kept:");
            for (at, lost) in lost.iter().enumerate() {
                ui.separator();
                ui.horizontal(|ui| {
                    let title = if lost.job.title.is_empty() { "New job" } else { &lost.job.title };
                    ui.label(RichText::new(title).strong());
                    let when = lost.when.and_then(|when| jiff::Timestamp::try_from(when).ok());
                    let when = when.map(|when| jiff::ZonedDateTime::new(when, jiff::tz::TimeZone::system()));
                    let when = when.map(|when| when.strftime("%d %b %H:%M").to_string());
                    ui.label(RichText::new(when.unwrap_or_default()).small().weak());
                });
                ui.horizontal(|ui| {
                    if ui.button("Recover").clicked() {
                        choice = Some((at, true));
                    }
                    let held = {
                        let count = |number: usize, one: &str| {
                            format!("{number} {one}{}", if number == 1 { "" } else { "s" })
                        };
                        let (surfaces, gaps) = (lost.job.surfaces.len(), lost.job.survey.gaps.len());
                        format!("{}, {}", count(surfaces, "surface"), count(gaps, "gap"))
                    };
                    ui.label(RichText::new(held).small().weak());
                    ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                        // Asked for twice: what is deleted is gone.
                        let sure = ui.make_persistent_id(("sure", at));
                        if ui.data(|data| data.get_temp::<bool>(sure)).is_some() {
                            if ui.button("Delete for good").clicked() {
                                choice = Some((at, false));
                            }
                        } else if ui.button("Delete…").clicked() {
                            ui.data_mut(|data| data.insert_temp(sure, true));
                        }
                    });
                });
            }
            buttons(ui, |ui| {
                if ui.button("Ask again next time").clicked() {
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
        let mut choice = None;
        let modal = modal("changed", ctx).show(ctx, |ui| {
            ui.set_width(420.0);
            ui.heading("The file has changed");
            ui.label(format!("Someone else changed “{}” since it was opened here.", path.display()));
            buttons(ui, |ui| {
                for verb in ["Save under another name", "Save over it", "Open theirs", "Cancel"] {
                    if ui.button(verb).clicked() {
                        choice = Some(verb);
                    }
                }
            });
        });
        match choice {
            Some("Save over it") => self.save_now(ctx, &path),
            Some("Save under another name") => commands.push(Command::SaveAs),
            // Asks first: what was typed here would go.
            Some("Open theirs") => commands.push(Command::OpenPath(path)),
            Some(_) => self.after_save = None,
            None if modal.should_close() => self.after_save = None,
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
        let mut choice = None;
        let modal = modal("unsaved", ctx).show(ctx, |ui| {
            ui.set_width(380.0);
            ui.heading("Keep the changes?");
            ui.label("The job has changes that are not saved.");
            buttons(ui, |ui| {
                if ui.button("Save").clicked() {
                    choice = Some("save");
                }
                if ui.button("Discard").clicked() {
                    choice = Some("discard");
                }
                if ui.button("Cancel").clicked() {
                    choice = Some("cancel");
                }
            });
        });
        match choice {
            Some("save") => {
                self.after_save = Some(then.map_or(After::Close, After::Do));
                commands.push(Command::Save);
                None
            }
            Some("discard") => {
                match then {
                    Some(command) => self.leave_now(ctx, command),
                    None => {
                        self.closing = true;
                        ctx.send_viewport_cmd(ViewportCommand::Close);
                    }
                }
                // Another question may have come of it.
                self.dialog.take()
            }
            Some(_) => None,
            None if modal.should_close() => None,
            None => Some(Dialog::Unsaved(then)),
        }
    }
}

fn path_ui(ctx: &Context, purpose: Purpose, mut text: String, commands: &mut Vec<Command>) -> Option<Dialog> {
    let mut done = None;
    let modal = modal("path", ctx).show(ctx, |ui| {
        ui.set_width(440.0);
        ui.heading(purpose.title());
        ui.label(RichText::new("No file dialog answered; type the path.").weak());
        ui.horizontal(|ui| {
            let label = ui.label(purpose.label());
            let field =
                ui.add(TextEdit::singleline(&mut text).desired_width(f32::INFINITY)).labelled_by(label.id);
            if field.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter)) {
                done = Some(true);
            } else if ui.memory(|memory| memory.focused().is_none()) {
                field.request_focus();
            }
            if field.gained_focus() {
                select_all(ui, field.id, &text);
            }
        });
        buttons(ui, |ui| {
            if ui.button(purpose.verb()).clicked() {
                done = Some(true);
            }
            if ui.button("Cancel").clicked() {
                done = Some(false);
            }
        });
    });
    match done {
        Some(true) if !text.trim().is_empty() => {
            commands.push(purpose.command(PathBuf::from(text.trim())));
            None
        }
        Some(false) => None,
        _ if modal.should_close() => None,
        _ => Some(Dialog::Path { purpose, text }),
    }
}

/// A question with room around it.
pub(super) fn modal(name: &'static str, ctx: &Context) -> Modal {
    Modal::new(Id::unique(name)).frame(Frame::popup(&ctx.global_style()).inner_margin(Margin::same(16)))
}

fn buttons(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    ui.add_space(6.0);
    ui.with_layout(Layout::right_to_left(Align::Center), add);
}
