//! The window: the answer on top, and a tab for each question.
//!
//! [`App`] owns the document, the view and the workers. Each frame draws from shared references
//! and collects [`Command`]s; after it they are applied, one by one, in [`App::apply`]. The job is
//! assessed on a worker thread, always the newest one; what is drawn is the last assessment
//! together with the job it was made from, so the two always fit.

#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    clippy::cast_possible_wrap,
    reason = "points and pixels: the window computes nothing that is kept"
)]

mod about;
mod air_import;
mod answer_line;
mod apply;
mod autosave;
mod background;
mod bead_handles;
mod board_strip;
mod catalog_commands;
mod command;
pub mod commands;
mod context;
mod copy;
mod dialog;
mod document;
mod drawing;
mod entry;
mod explain;
mod field;
mod field_place;
mod files;
mod fold;
mod frame;
mod gap_question;
mod glossary;
mod hold;
mod icon;
mod joint_bar;
mod joint_section;
mod keys;
mod languages;
mod lead;
mod next_answer;
mod outlines;
mod paper_commands;
mod path_field;
mod photos;
pub mod pick;
mod presentation;
mod preview;
mod search;
mod services;
mod session;
mod start_page;
mod tabs;
mod theme;
mod time_line;
mod toast;
mod top_bar;
mod view;
mod widgets;
mod worker;

use std::path::{Path, PathBuf};

use eframe::egui::{self, CentralPanel, Context, Frame, Theme, Ui};

use autosave::Autosave;
pub use command::{Command, Edit};
use context::WindowContext;
use dialog::{Dialog, NativeDialogs};
use document::Document;
use languages::Languages;
use path_field::PathQuestion;
use photos::Photos;
use services::Services;
use session::Session;
use toast::Toast;
use view::{Settings, Tab, View};

use crate::assess::Assessment;
use crate::job::{Job, photo_folder};
use crate::papers::{Paper, Templates};
use crate::words::{Language, Words};

/// Name of the program for the desktop.
const APP_ID: &str = "org.gapwright.Gapwright";

/// What an unsaved job stood in the way of.
enum After {
    Close,
    Do(Command),
}

/// What the window asks and says, and what waits for the answer.
#[derive(Default)]
struct Prompts {
    /// The question that is asked.
    dialog: Option<Dialog>,
    /// The path that was typed and is being used.
    tried: Option<PathQuestion>,
    /// The message that is shown.
    toast: Option<Toast>,
    /// What to go on with once the job is saved.
    after_save: Option<After>,
    /// What went wrong while a new job was made, to be said once it is shown.
    pending_fault: Option<String>,
}

/// What the window itself is up to, frame by frame.
struct WindowState {
    /// Frames so far, the first few of them.
    frames: u8,
    /// A command that waits until the field in use has been left and read.
    pending: Option<Command>,
    /// Whether it is to close without asking again.
    closing: bool,
    /// Whether it had the keyboard in the last frame.
    focused: bool,
}

/// The window.
pub struct App {
    session: Session,
    languages: Languages,
    services: Services,
    view: View,
    settings: Settings,
    prompts: Prompts,
    window: WindowState,
}

/// Starts the log. `RUST_LOG` chooses what is written, to standard error.
pub fn start_log() {
    use tracing_subscriber::EnvFilter;
    let filter = EnvFilter::try_from_default_env().unwrap_or_else(|_unset| EnvFilter::new("error"));
    tracing_subscriber::fmt().with_env_filter(filter).with_writer(std::io::stderr).init();
}

/// Whether there is a display to open a window on.
pub fn has_display() -> bool {
    let set = |name: &str| std::env::var_os(name).is_some_and(|value| !value.is_empty());
    !cfg!(all(unix, not(target_os = "macos"))) || set("DISPLAY") || set("WAYLAND_DISPLAY")
}

/// Opens the window on the job in `path`, or on the page to start from.
///
/// # Errors
/// If the system gives no window.
pub fn run(path: Option<PathBuf>) -> eframe::Result {
    let icon = eframe::icon_data::from_png_bytes(include_bytes!("../../assets/icon.png"));
    let mut viewport = egui::ViewportBuilder::default()
        .with_app_id(APP_ID)
        .with_title("Gapwright")
        .with_inner_size([1280.0, 720.0])
        .with_min_inner_size([1000.0, 620.0])
        .with_drag_and_drop(true);
    if let Ok(icon) = icon {
        viewport = viewport.with_icon(icon);
    }
    let options = eframe::NativeOptions { viewport, ..Default::default() };
    // While the system gets a window ready, tables and words are read on another core; it may as well not be.
    std::thread::Builder::new().name("warm up".to_owned()).spawn(session::warm_up).ok();
    eframe::run_native(APP_ID, options, Box::new(move |cc| Ok(Box::new(App::new(cc, path.as_deref())))))
}

impl App {
    /// The window's state with workers on threads.
    pub fn new(cc: &eframe::CreationContext<'_>, path: Option<&Path>) -> Self {
        let settings: Settings =
            cc.storage.and_then(|storage| eframe::get_value(storage, "settings")).unwrap_or_default();
        let ctx = &cc.egui_ctx;
        let mut app = Self::with(ctx, settings, true);
        app.services.dialogs = Some(NativeDialogs::new(ctx.clone()));
        app.services.photos = Photos::start(ctx.clone());
        if let Some(folder) = eframe::storage_dir(APP_ID) {
            app.services.templates = Templates::in_folder(folder.join("papers"));
            app.prices_in(&folder);
            app.autosave_in(ctx, folder.join("recovery"));
        }
        match path {
            Some(path) => app.open(path),
            None => app.begin(),
        }
        app
    }

    /// The window's state for tests: everything is computed at once, no dialog of the system is
    /// ever opened, and `job` is open.
    pub fn for_test(ctx: &Context, job: Job) -> Self {
        let mut app = Self::with(ctx, Settings::default(), false);
        app.replace(Document::new(job, None, vec![]));
        app
    }

    /// Keeps unsaved work in `folder`, and offers what a window left there that did not close.
    pub fn autosave_in(&mut self, ctx: &Context, folder: PathBuf) {
        let autosave = Autosave::new(folder, ctx.clone());
        let lost = autosave.lost();
        if !lost.is_empty() {
            self.prompts.dialog = Some(Dialog::Lost(lost));
        }
        self.services.autosave = Some(autosave);
    }

    /// The window's state, its work done on threads of their own or at once.
    fn with(ctx: &Context, settings: Settings, threads: bool) -> Self {
        theme::apply(ctx);
        ctx.add_plugin(keys::OneStepAFrame::default());
        ctx.set_theme(if settings.dark { Theme::Dark } else { Theme::Light });
        // Ctrl+Q is ours, so that it asks about unsaved changes.
        ctx.options_mut(|options| options.quit_shortcuts.clear());
        Self {
            session: Session::new(Document::new(Job::default(), None, vec![]), threads, ctx),
            languages: Languages::of(&settings.languages),
            services: Services::new(threads, ctx),
            view: View { tab: settings.tab, panes: settings.panes.clone(), ..View::default() },
            settings,
            prompts: Prompts::default(),
            window: WindowState { frames: 0, pending: None, closing: false, focused: true },
        }
    }

    /// Speaks one language in the window and on paper: for tests of a language.
    pub fn speak(&mut self, language: &'static Language) {
        self.languages = Languages::all(language);
        self.services.previews.forget();
    }

    /// The open job.
    pub fn job(&self) -> &Job {
        self.session.document.job()
    }

    /// The words of the window, in the units and the currency of the job.
    fn words(&self) -> Words {
        self.languages.window_words(self.session.job())
    }

    /// The last assessment.
    pub fn assessment(&self) -> &Assessment {
        &self.session.assessed
    }

    fn fault(&mut self, text: String) {
        self.prompts.toast = Some(Toast::fault(text));
    }

    fn reassess(&mut self) {
        // While the window opens, the processor is its own: the first answer waits for the first frame.
        if self.services.dialogs.is_none() || self.window.frames >= 2 {
            self.session.reassess();
        }
    }

    fn take_results(&mut self, ctx: &Context) {
        self.session.take_assessment();
        self.take_background(ctx);
        self.services.previews.take(ctx);
        if let Some(outcome) = self.services.dialogs.as_mut().and_then(NativeDialogs::outcome) {
            match outcome {
                Ok(command) => self.apply(ctx, command),
                // No dialog could be had, or it was cancelled: the field in the window remains.
                Err(purpose) => {
                    self.prompts.dialog = Some(Dialog::path(purpose, &self.start_path(purpose)));
                }
            }
        }
        if self.view.tab == Tab::Papers {
            let wanted = Paper::ALL[self.view.papers.index.min(Paper::ALL.len() - 1)];
            let words = self.languages.paper_words(&self.session.assessed.job);
            let (session, templates) = (&self.session, &self.services.templates);
            let unread = &session.document.unread;
            let photos = session.document.path.as_deref().map(photo_folder);
            self.services.previews.want(wanted, &session.assessed, unread, photos, templates, &words);
        }
    }

    fn shortcuts(&mut self, ctx: &Context) {
        if self.prompts.dialog.is_some() {
            return;
        }
        for (command, keys) in commands::with_keys() {
            // While a field is typed in, undo and redo are the field's own.
            let step = matches!(command.id, "undo" | "redo");
            if step && entry::is_typing(ctx) {
                continue;
            }
            if ctx.input_mut(|input| input.consume_shortcut(&keys)) {
                // What is being typed is read before anything is done with the job.
                entry::leave_field(ctx);
                self.window.pending = Some((command.make)());
            }
        }
        let dropped: Option<PathBuf> =
            ctx.input(|input| input.raw.dropped_files.first().map(|file| file.path().to_owned()));
        if let Some(path) = dropped {
            self.apply(ctx, command::for_dropped(path));
        }
    }

    /// What the parts of the window are given.
    fn context<'a>(
        &'a mut self,
        palette: &'static theme::Palette,
        words: &'a Words,
        commands: &'a mut Vec<Command>,
    ) -> WindowContext<'a> {
        WindowContext {
            job: self.session.job(),
            assessment: &self.session.assessed,
            session: &self.session,
            services: &self.services,
            settings: &self.settings,
            languages: &self.languages,
            words,
            palette,
            view: &mut self.view,
            commands,
        }
    }

    fn draw(&mut self, ui: &mut Ui) -> Vec<Command> {
        let mut commands = Vec::new();
        let palette = theme::palette(ui);
        let words = match self.view.presentation.page {
            None => self.words(),
            // The homeowner reads along.
            Some(_) => self.languages.paper_words(self.session.job()).owner,
        };
        let mut context = self.context(palette, &words, &mut commands);
        search::search(ui, &mut context);
        about::about(ui, &mut context);
        if context.view.presentation.page.is_some() {
            presentation::presentation(ui, &mut context);
            return commands;
        }
        frame::frame(ui, &mut context);
        commands
    }
}

impl eframe::App for App {
    fn logic(&mut self, ctx: &Context, frame: &mut eframe::Frame) {
        if let Some(seconds) = frame.info().cpu_usage {
            tracing::trace!("last frame took {:.2} ms", seconds * 1000.0);
        }
        if self.window.frames < 2 {
            self.window.frames += 1;
            ctx.request_repaint();
            if self.window.frames == 2 {
                self.reassess();
            }
        }
        self.guard_close(ctx);
        self.take_results(ctx);
        self.note_change(ctx);
        self.services.photos.look(ctx);
        let document = &self.session.document;
        let kept = self.services.autosave.as_mut().and_then(|autosave| autosave.look(ctx, document));
        if let Some(fault) = kept {
            tracing::error!("autosave: {fault}");
            self.fault(self.words().text("autosave-failed").into_owned());
        }
    }

    fn on_exit(&mut self, _gl: Option<&eframe::glow::Context>) {
        if let Some(autosave) = &self.services.autosave {
            autosave.done();
        }
    }

    fn ui(&mut self, ui: &mut Ui, _frame: &mut eframe::Frame) {
        let ctx = ui.ctx().clone();
        self.shortcuts(&ctx);
        // What an edit in a test or a shortcut computed at once is shown in the same frame.
        self.take_results(&ctx);
        if !self.session.ready {
            let ground = Frame::new().fill(theme::palette(ui).ground);
            CentralPanel::default().frame(ground).show(ui, |_ui| ());
            return;
        }
        let mut commands = self.draw(ui);
        if !commands.is_empty() || self.window.pending.is_some() {
            // What goes wrong from now on is not the path's fault.
            self.prompts.tried = None;
        }
        if let Some(dialog) = self.prompts.dialog.take() {
            self.prompts.dialog = self.dialog_ui(&ctx, dialog, &mut commands);
        }
        theme::focus_ring(&ctx);
        let over = self
            .view
            .canvas
            .area
            .filter(|_| self.view.presentation.page.is_none())
            .unwrap_or(ctx.content_rect());
        let words = self.words();
        let dismissed =
            self.prompts.toast.as_ref().is_some_and(|shown| toast::toast(&ctx, &words, shown, over));
        let lasting = self.services.background.shown(&ctx).map(str::to_owned);
        if lasting.is_some_and(|text| toast::lasting(&ctx, &words, &text, over)) {
            self.services.background.cancel();
        }
        if dismissed || !commands.is_empty() {
            self.prompts.toast = None;
        }
        commands.extend(self.window.pending.take());
        for command in commands {
            self.apply(&ctx, command);
            ctx.request_repaint();
        }
    }

    fn persist_egui_memory(&self) -> bool {
        // Scroll positions and plot bounds of one job mean nothing to the next.
        false
    }

    fn save(&mut self, storage: &mut dyn eframe::Storage) {
        self.settings.panes.clone_from(&self.view.panes);
        eframe::set_value(storage, "settings", &self.settings);
    }
}
