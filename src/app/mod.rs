//! The window: an answer line, the drawing with its year strip, and four leaves.
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

mod air_import;
mod answer_line;
mod command;
mod context;
mod copy;
mod dialog;
mod document;
mod drawing;
mod entry;
mod field;
mod background;
mod files;
mod icon;
mod joint_bar;
mod joint_section;
mod autosave;
mod keys;
mod tabs;
mod theme;
mod toast;
mod outlines;
mod paper_commands;
mod photos;
mod search;
mod catalog_commands;
mod presentation;
mod top_bar;
mod view;
mod explain;
mod glossary;
mod worker;
mod year_strip;

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Instant;

use eframe::egui::{self, CentralPanel, Context, Frame, Panel, Theme, Ui, ViewportCommand};

pub use command::{Command, Edit};
use context::WindowContext;
use dialog::{Dialog, Purpose};
use document::Document;
use background::{BackgroundTask, Background};
use autosave::Autosave;
use toast::Toast;
use view::{Tab, Settings, View};
use worker::Worker;

use crate::assess::{Assessment, EntryPlace, assess};
use crate::job::{Job, Catalog, file};
use crate::papers::{Paper, Templates};
use crate::words::Words;

/// Name of the program for the desktop.
const APP_ID: &str = "org.gapwright.Gapwright";

/// An assessment, which holds the job it was made from.
type Assessed = Arc<Assessment>;

/// What the preview is made from, and what comes out.
type PreviewInput = (Paper, Assessed, Templates);
type PreviewOutput = (Paper, Arc<Job>, Result<tabs::Pages, String>);

/// What an unsaved job stood in the way of.
enum After {
    Close,
    Do(Command),
}

/// The window.
pub struct App {
    document: Document,
    assessed: Assessed,
    /// Frames so far, the first few of them.
    frames: u8,
    /// Whether the first answer has come; before it nothing is drawn that would only jump.
    ready: bool,
    assessing: Worker<Arc<Job>, Assessed>,
    background: Background,
    previewing: Worker<PreviewInput, PreviewOutput>,
    /// Where the papers' templates are from.
    templates: Templates,
    /// The user's own shelf; `None` where the system has no place for it, and in tests.
    my_prices: Option<PathBuf>,
    preview: tabs::Preview,
    view: View,
    settings: Settings,
    dialog: Option<Dialog>,
    toast: Option<Toast>,
    /// A command that waits until the field in use has been left and read.
    pending: Option<Command>,
    /// What to go on with once the job is saved.
    after_save: Option<After>,
    /// Counts the jobs opened, so that lists scroll from their top in each.
    opened: u64,
    closing: bool,
    natives: Option<dialog::NativeDialogs>,
    /// Keeps unsaved work; not in tests of the window.
    autosave: Option<Autosave>,
    photos: photos::Photos,
    /// What went wrong while a new job was made, to be told once it is shown.
    pending_fault: Option<String>,
    /// Whether the window had the keyboard in the last frame.
    focused: bool,
}

/// The demo: the tea room of the Alder Lane boathouse.
///
/// # Panics
/// Never: the demo is part of the program and read in its tests.
pub fn demo_job() -> Job {
    let text = include_str!("../../examples/tea_room.ron");
    file::read(text).unwrap_or_else(|version| panic!("the demo is of version {version}")).job
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

/// Opens the window on the job in `path`, or on the demo.
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
    eframe::run_native(APP_ID, options, Box::new(move |cc| Ok(Box::new(App::new(cc, path.as_deref())))))
}

impl App {
    /// The window's state with workers on threads.
    pub fn new(cc: &eframe::CreationContext<'_>, path: Option<&Path>) -> Self {
        let settings: Settings =
            cc.storage.and_then(|storage| eframe::get_value(storage, "settings")).unwrap_or_default();
        let ctx = &cc.egui_ctx;
        let mut app = Self::with(ctx, settings, true);
        app.natives = Some(dialog::NativeDialogs::new(ctx.clone()));
        app.photos = photos::Photos::start(ctx.clone());
        if let Some(folder) = eframe::storage_dir(APP_ID) {
            app.templates = Templates::in_folder(folder.join("papers"));
            app.prices_in(&folder);
            app.autosave_in(ctx, folder.join("recovery"));
        }
        if let Some(path) = path {
            app.open(path);
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
            self.dialog = Some(Dialog::Lost(lost));
        }
        self.autosave = Some(autosave);
    }

    /// The window's state, its work done on threads of their own or at once.
    fn with(ctx: &Context, settings: Settings, threads: bool) -> Self {
        theme::apply(ctx);
        ctx.add_plugin(keys::OneStepAFrame::default());
        ctx.set_theme(if settings.dark { Theme::Dark } else { Theme::Light });
        // Ctrl+Q is ours, so that it asks about unsaved changes.
        ctx.options_mut(|options| options.quit_shortcuts.clear());
        let document = Document::new(demo_job(), None, vec![]);
        // The first answer is worked out while the window opens.
        let assessed = assess_job(Arc::default());
        Self {
            document,
            assessed,
            ready: false,
            frames: 0,
            assessing: Worker::new(threads, "assess", ctx, assess_job),
            background: Background::new(threads, ctx),
            previewing: Worker::new(threads, "preview", ctx, paper_commands::preview),
            templates: Templates::default(),
            my_prices: None,
            preview: tabs::Preview::default(),
            view: View { tab: settings.tab, ..View::default() },
            settings,
            dialog: None,
            toast: None,
            pending: None,
            after_save: None,
            opened: 0,
            closing: false,
            natives: None,
            autosave: None,
            photos: photos::Photos::default(),
            pending_fault: None,
            focused: true,
        }
    }

    /// The open job.
    pub fn job(&self) -> &Job {
        self.document.job()
    }

    /// The words of the window, in the units and the currency of the job.
    fn words(&self) -> Words {
        let job = self.document.job();
        Words::us_english(job.units, &job.plan.prices.currency)
    }

    /// The last assessment.
    pub fn assessment(&self) -> &Assessment {
        &self.assessed
    }

    /// Applies a command. The one place where anything changes.
    pub fn apply(&mut self, ctx: &Context, command: Command) {
        match command {
            Command::Edit(edit) => {
                if self.document.edit(edit.name, edit.change) {
                    self.reassess();
                }
            }
            Command::Undo => {
                self.document.undo();
                self.reassess();
            }
            Command::Redo => {
                self.document.redo();
                self.reassess();
            }
            Command::New => self.leave(ctx, Command::New),
            // What is unsaved is asked about once there is something to open.
            Command::Open => self.ask_path(Purpose::Open),
            Command::OpenPath(path) => self.leave(ctx, Command::OpenPath(path)),
            Command::OpenDemo => self.leave(ctx, Command::OpenDemo),
            Command::Quit => ctx.send_viewport_cmd(ViewportCommand::Close),
            Command::Save => match self.document.path.clone() {
                Some(path) => self.save(ctx, &path),
                None => self.ask_path(Purpose::Save),
            },
            Command::SaveAs => self.ask_path(Purpose::Save),
            Command::SavePath(path) => self.save(ctx, &path),
            Command::ChooseWeather => self.ask_path(Purpose::Weather),
            Command::TakeWeather(path) => self.send(BackgroundTask::ReadWeather(path)),
            Command::ChooseLogger => self.ask_path(Purpose::Logger),
            Command::AskLogger(path) => self.send(BackgroundTask::GuessLogger(path)),
            Command::TakeLogger(import) => self.send(BackgroundTask::ReadLogger(import)),
            Command::ExportPrices => self.ask_path(Purpose::ExportPrices),
            Command::ExportPricesTo(path) => self.export_prices(&path),
            Command::ImportPrices => self.ask_path(Purpose::ImportPrices),
            Command::OfferPrices(path) => self.offer_prices(&path),
            Command::OfferMyPrices => self.offer_my_prices(),
            Command::KeepPrices => self.keep_prices(),
            Command::ChooseFinished => self.ask_path(Purpose::Finished),
            Command::LearnFrom(folder) => self.send(BackgroundTask::Learn(folder)),
            Command::WritePapers => self.ask_path(Purpose::Papers),
            Command::WritePapersTo(folder) => {
                let (job, templates) = (Arc::clone(self.document.job()), self.templates.clone());
                self.send(BackgroundTask::WritePapers(folder, job, templates));
            }
            Command::SwitchTheme => {
                self.settings.dark = !self.settings.dark;
                ctx.set_theme(if self.settings.dark { Theme::Dark } else { Theme::Light });
            }
            Command::Tab(tab) => {
                self.view.tab = tab;
                self.settings.tab = tab;
            }
            Command::Surface(surface) => {
                self.view.surface = surface;
                self.view.selected = None;
                self.view.multi_selection.clear();
                (self.view.drag, self.view.typed_edge) = (None, None);
            }
            Command::Select(selected) => {
                self.view.focus_gap = selected.is_some();
                if let Some(selected) = &selected {
                    self.view.surface = selected.surface;
                }
                self.view.selected = selected;
                self.view.multi_selection.clear();
            }
            Command::SelectMore(joints) => self.multi_selection(joints),
            Command::SelectMarquee(joints) => {
                (self.view.selected, self.view.multi_selection) = (None, Vec::new());
                self.multi_selection(joints);
            }
            Command::NextJoint => {
                let next = joint_bar::next_to_measure(&self.assessed, self.document.job(), &self.view);
                self.apply(ctx, Command::Select(next));
            }
            Command::Tool(tool) => {
                self.view.tool = tool;
                (self.view.drag, self.view.typed_edge) = (None, None);
            }
            Command::Day(day) => self.view.day = day,
            Command::Show(page) => {
                if self.view.show.is_none() {
                    // As it was found, and without prices, however it was looked at before.
                    (self.view.day, self.view.playing, self.view.show_prices) = (0, false, false);
                }
                self.view.show = page;
                // A joint at hand is the workshop's business.
                (self.view.selected, self.view.multi_selection) = (None, Vec::new());
            }
            Command::Copy(table) => self.copy(ctx, table),
            Command::CopyPicture(picture) => self.copy_picture(ctx, picture),
            Command::ChooseOutlines => self.ask_path(Purpose::Outlines),
            Command::TakeOutlines(path) => self.take_outlines(ctx, &path),
            Command::ChoosePhoto(at) => {
                self.view.photo_at = Some(at);
                self.ask_path(Purpose::Photo);
            }
            Command::TakePhoto(path) => {
                let at = self.view.photo_at.take().unwrap_or_else(|| self.middle());
                self.take_photo(ctx, &path, self.view.surface, at);
            }
            Command::WantPhoto(path) => self.photos.want(path),
            Command::ScrollTo(place) => {
                if place == EntryPlace::Dates {
                    entry::focus_named(ctx, "Boards went up");
                }
                self.view.scroll_to.set(Some(place));
                // What is looked at is drawn in the next frame.
                ctx.request_repaint();
            }
            Command::Tell(text) => self.toast = Some(Toast::good(text)),
            Command::OwnTemplate(paper) => self.own_template(paper),
            Command::BuiltInTemplate(paper) => self.built_in_template(paper),
            Command::ReadTemplates => self.preview.forget(),
            Command::ChooseLogo => self.ask_path(Purpose::Logo),
            Command::TakeLogo(path) => self.take_logo(ctx, &path),
            Command::Search => self.view.search = Some((String::new(), 0)),
            Command::Play => self.view.playing = !self.view.playing,
            Command::ReferenceCurve => year_strip::keep_reference_curve(ctx, self),
            Command::Fit => {
                self.view.cameras.remove(&self.view.surface);
            }
        }
    }

    /// The middle of the selected joint, else of the surface shown.
    fn middle(&self) -> crate::surface::Point {
        use geo::BoundingRect as _;
        let laid = self.assessed.layouts.get(self.view.surface);
        let selected = self.view.selected.as_ref().and_then(|selected| {
            laid?.joints.iter().find(|joint| joint.label == selected.joint).map(crate::surface::Joint::middle)
        });
        let bounds = laid.and_then(|laid| laid.face.bounding_rect());
        let middle = selected.or_else(|| bounds.map(|bounds| bounds.center())).unwrap_or_default();
        crate::surface::Point::m(middle.x, middle.y)
    }

    /// Takes joints in with the selected one, or lets a single one go.
    fn multi_selection(&mut self, joints: Vec<String>) {
        let view = &mut self.view;
        let single = joints.len() == 1;
        for joint in joints {
            let selected = view.selected.as_ref().is_some_and(|selected| selected.joint == joint);
            if view.selected.is_none() {
                view.selected = Some(view::Selected { surface: view.surface, joint });
            } else if let (true, Some(at)) = (single, view.multi_selection.iter().position(|known| *known == joint)) {
                view.multi_selection.remove(at);
            } else if !selected && !view.multi_selection.contains(&joint) {
                view.multi_selection.push(joint);
            }
        }
        view.focus_gap = view.selected.is_some();
    }

    fn fault(&mut self, text: String) {
        self.toast = Some(Toast::fault(text));
    }

    fn reassess(&mut self) {
        // While the window opens, the processor is its own: the first answer waits for the first frame.
        if self.natives.is_some() && self.frames < 2 {
            return;
        }
        self.assessing.ask(Arc::clone(self.document.job()));
    }

    fn take_results(&mut self, ctx: &Context) {
        if let Some(assessed) = self.assessing.latest() {
            self.assessed = assessed;
            self.ready = true;
        }
        self.take_background(ctx);
        if let Some((paper, job, pages)) = self.previewing.latest() {
            self.preview.take(ctx, paper, &job, pages);
        }
        if let Some(outcome) = self.natives.as_mut().and_then(dialog::NativeDialogs::outcome) {
            match outcome {
                Ok(command) => self.apply(ctx, command),
                // No dialog could be had, or it was cancelled: the field in the window remains.
                Err(purpose) => self.dialog = Some(Dialog::path(purpose, &self.start_path(purpose))),
            }
        }
        let wanted = Paper::ALL[self.view.paper.min(Paper::ALL.len() - 1)];
        if self.view.tab == Tab::Papers && self.preview.wants(wanted, &self.assessed.job) {
            self.preview.asked(wanted, Arc::clone(&self.assessed.job));
            self.previewing.ask((wanted, self.assessed.clone(), self.templates.clone()));
        }
    }

    fn shortcuts(&mut self, ctx: &Context) {
        if self.dialog.is_some() {
            return;
        }
        for (name, shortcut, make) in command::SHORTCUTS {
            // While a field is typed in, undo and redo are the field's own.
            let step = name == "Undo" || name == "Redo";
            if step && entry::is_typing(ctx) {
                continue;
            }
            if ctx.input_mut(|input| input.consume_shortcut(&shortcut)) {
                // What is being typed is read before anything is done with the job.
                entry::leave_field(ctx);
                self.pending = Some(make());
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
            job: self.document.job(),
            assessment: &self.assessed,
            catalog: &self.assessed.catalog,
            words,
            document: &self.document,
            settings: &self.settings,
            photos: &self.photos,
            templates: &self.templates,
            palette,
            view: &mut self.view,
            preview: &self.preview,
            busy: self.assessing.is_busy(),
            opened: self.opened,
            commands,
        }
    }

    fn draw(&mut self, ui: &mut Ui) -> Vec<Command> {
        let mut commands = Vec::new();
        let palette = theme::palette(ui);
        let words = self.words();
        let mut context = self.context(palette, &words, &mut commands);
        search::search(ui, &mut context);
        if context.view.show.is_some() {
            presentation::presentation(ui, &mut context);
            return commands;
        }
        let bar = Frame::new().fill(palette.ground).inner_margin(egui::Margin::symmetric(10, 6));
        Panel::top("top bar").frame(bar).show(ui, |ui| top_bar::top_bar(ui, &mut context));
        let answer = Frame::new().fill(palette.raised).inner_margin(egui::Margin::symmetric(14, 9));
        Panel::top("answer").frame(answer).show(ui, |ui| answer_line::answer_line(ui, &mut context));
        let tab = Frame::new().fill(palette.panel).inner_margin(egui::Margin::same(0));
        // Zoomed in, or on a small screen, the leaf and the strip make room for the drawing.
        let small = ui.ctx().content_rect().width() < 980.0;
        let least = if small { 360.0 } else { 480.0 };
        Panel::right("leaf").frame(tab).resizable(true).default_size(least).size_range(least..=680.0).show(
            ui,
            |ui| {
                tabs::tabs(ui, &mut context);
            },
        );
        let strip = Frame::new().fill(palette.panel).inner_margin(egui::Margin::symmetric(8, 6));
        Panel::bottom("year").frame(strip).exact_size(if small { 150.0 } else { 196.0 }).show(ui, |ui| {
            ui.horizontal_top(|ui| {
                // Where there is no room for both, the strip goes first.
                let section = if ui.available_width() < 560.0 { 0.0 } else { 236.0 };
                let width = (ui.available_width() - section - 8.0).max(200.0);
                let size = egui::vec2(width, ui.available_height());
                ui.allocate_ui_with_layout(size, egui::Layout::top_down(egui::Align::Min), |ui| {
                    year_strip::year_strip(ui, &mut context);
                });
                if section > 0.0 {
                    joint_section::joint_section(ui, &mut context);
                }
            });
        });
        let joint = Frame::new().fill(palette.panel).inner_margin(egui::Margin::symmetric(10, 5));
        Panel::bottom("joint").frame(joint).show(ui, |ui| joint_bar::joint_bar(ui, &mut context));
        let middle = CentralPanel::default().frame(Frame::new().fill(palette.ground)).show(ui, |ui| {
            drawing::drawing(ui, &mut context);
        });
        context.view.middle = Some(middle.response.rect);
        commands
    }
}

/// Assesses a job; the worker's work.
fn assess_job(job: Arc<Job>) -> Assessed {
    let start = Instant::now();
    let assessment = Arc::new(assess(job, Catalog::built_in()));
    tracing::debug!("assessed in {:?}", start.elapsed());
    assessment
}

impl eframe::App for App {
    fn logic(&mut self, ctx: &Context, frame: &mut eframe::Frame) {
        if let Some(seconds) = frame.info().cpu_usage {
            tracing::trace!("last frame took {:.2} ms", seconds * 1000.0);
        }
        if self.frames < 2 {
            self.frames += 1;
            ctx.request_repaint();
            if self.frames == 2 {
                self.reassess();
            }
        }
        self.guard_close(ctx);
        self.take_results(ctx);
        self.note_change(ctx);
        self.photos.look(ctx);
        let document = &self.document;
        let kept = self.autosave.as_mut().and_then(|autosave| autosave.look(ctx, document));
        if let Some(fault) = kept {
            self.fault(format!("Unsaved work cannot be kept safe: {fault}. Save the job soon."));
        }
    }

    fn on_exit(&mut self, _gl: Option<&eframe::glow::Context>) {
        if let Some(autosave) = &self.autosave {
            autosave.done();
        }
    }

    fn ui(&mut self, ui: &mut Ui, _frame: &mut eframe::Frame) {
        let ctx = ui.ctx().clone();
        self.shortcuts(&ctx);
        // What an edit in a test or a shortcut computed at once is shown in the same frame.
        self.take_results(&ctx);
        if !self.ready {
            let ground = Frame::new().fill(theme::palette(ui).ground);
            CentralPanel::default().frame(ground).show(ui, |_ui| ());
            return;
        }
        let mut commands = self.draw(ui);
        if let Some(dialog) = self.dialog.take() {
            self.dialog = self.dialog_ui(&ctx, dialog, &mut commands);
        }
        theme::focus_ring(&ctx);
        let over = self.view.middle.filter(|_| self.view.show.is_none()).unwrap_or(ctx.content_rect());
        let away = self.toast.as_ref().is_some_and(|told| toast::toast(&ctx, told, over));
        let lasting = self.background.told(&ctx).map(str::to_owned);
        if lasting.is_some_and(|told| toast::lasting(&ctx, &told, over)) {
            self.background.cancel();
        }
        if away || !commands.is_empty() {
            self.toast = None;
        }
        commands.extend(self.pending.take());
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
        eframe::set_value(storage, "settings", &self.settings);
    }
}
