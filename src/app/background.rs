//! Tasks that may take a while and must not hold up the window: reading files of weather and loggers,
//! writing the papers, learning from finished jobs. One at a time, shown when it takes long, and canceled
//! when asked.

use std::io;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, Instant};

use eframe::egui::Context;

use super::air_import::{self, AirRemark, ImportError, LoggerImport};
use super::command::{Command, Edit};
use super::session::assess_job;
use super::worker::Worker;
use super::{App, Toast};
use crate::air::{IndoorAir, LoggerRead, WeatherRead};
use crate::assess::Assessment;
use crate::assess::taken;
use crate::export::{DraftPapers, Handed, job_calendar, write_papers, write_record};
use crate::job::{Catalog, Job, Lessons, Problem, Promise, Taken, jobs_in};
use crate::papers::{Folder, Paper, PaperWords, Papers, Templates};
use crate::words::{Say, Words, say, unreadable_file};

/// A task that takes longer is shown, with a button to cancel it.
const LONG: Duration = Duration::from_millis(400);

/// What is to be done.
pub(super) enum BackgroundTask {
    ReadWeather(PathBuf),
    GuessLogger(PathBuf),
    ReadLogger(Box<LoggerImport>),
    /// Into a folder; with the folder of the job's photos, if it has a file.
    WritePapers(PathBuf, Option<PathBuf>, Arc<Job>, Vec<Problem>, Templates, PaperWords, DraftPapers),
    WriteRecord(PathBuf, Arc<Job>, Vec<Problem>, PaperWords),
    Learn(PathBuf),
}

impl Say for BackgroundTask {
    /// What is shown while it lasts.
    fn say(&self, words: &Words) -> String {
        let name = air_import::name_of;
        match self {
            Self::ReadWeather(path) | Self::GuessLogger(path) => {
                say!(words, "task-read-file", name = &name(path))
            }
            Self::ReadLogger(import) => say!(words, "task-read-file", name = &import.name),
            Self::WritePapers(..) | Self::WriteRecord(..) => say!(words, "task-write-papers"),
            Self::Learn(folder) => say!(words, "task-read-jobs", name = &name(folder)),
        }
    }
}

/// What came of it.
pub(super) enum Outcome {
    Weather(Result<WeatherRead, ImportError>),
    Guess(Result<LoggerImport, ImportError>),
    Logger(Box<LoggerImport>, Result<LoggerRead, ImportError>),
    Papers(PathBuf, Result<PapersMade, String>),
    Learned(PathBuf, io::Result<(usize, Lessons)>),
}

/// What came of writing papers.
pub(super) struct PapersMade {
    /// What was held back, and what is wrong with the user's own templates.
    faults: Vec<String>,
    /// What the papers tell, where a repair is offered in them.
    promise: Option<Promise>,
}

/// The task under way.
pub(super) struct Background {
    worker: Worker<(u64, BackgroundTask), (u64, Outcome)>,
    /// The number of the task whose outcome is wanted; the outcome of another is dropped.
    wanted: Arc<AtomicU64>,
    now: Option<(String, Instant)>,
    /// The job it is for, by its number among those opened.
    job: u64,
}

impl Background {
    /// Tasks done on a thread of their own, or at once for tests.
    pub fn new(threads: bool, ctx: &Context) -> Self {
        let wanted = Arc::<AtomicU64>::default();
        let known = Arc::clone(&wanted);
        let worker = Worker::new(threads, "background", ctx, move |task| run(task, &known));
        Self { worker, wanted, now: None, job: 0 }
    }

    fn ask(&mut self, task: BackgroundTask, words: &Words) {
        let number = self.wanted.fetch_add(1, Ordering::SeqCst) + 1;
        self.now = Some((task.say(words), Instant::now()));
        self.worker.ask((number, task));
    }

    fn outcome(&mut self) -> Option<Outcome> {
        let (number, outcome) = self.worker.latest()?;
        (number == self.wanted.load(Ordering::SeqCst)).then(|| {
            self.now = None;
            outcome
        })
    }

    /// What is shown of a task that takes long.
    pub fn shown(&self, ctx: &Context) -> Option<&str> {
        let (text, since) = self.now.as_ref()?;
        let left = LONG.saturating_sub(since.elapsed());
        if left > Duration::ZERO {
            ctx.request_repaint_after(left);
            return None;
        }
        Some(text)
    }

    /// Cancels the task: what still comes of it is dropped.
    pub fn cancel(&mut self) {
        self.wanted.fetch_add(1, Ordering::SeqCst);
        self.now = None;
    }
}

/// Runs a task; the worker's work.
fn run((number, task): (u64, BackgroundTask), wanted: &AtomicU64) -> (u64, Outcome) {
    let canceled = || wanted.load(Ordering::SeqCst) != number;
    let outcome = match task {
        BackgroundTask::ReadWeather(path) => Outcome::Weather(air_import::weather_in(&path)),
        BackgroundTask::GuessLogger(path) => Outcome::Guess(air_import::guess_in(&path)),
        BackgroundTask::ReadLogger(import) => {
            let read = air_import::read(&import);
            Outcome::Logger(import, read)
        }
        BackgroundTask::WritePapers(folder, photos, job, unread, templates, words, drafts) => {
            let assessment = assess_job(job);
            let papers = Papers::of_file(&assessment, &unread, templates, &words).with_photos_in(photos);
            let written = papers_to(&folder, (&assessment, &unread), &papers, &words, drafts, canceled);
            Outcome::Papers(folder, written)
        }
        BackgroundTask::WriteRecord(folder, job, unread, words) => {
            let written = write_record(&assess_job(job), &unread, &words, &folder);
            let written = written.map(|_| PapersMade { faults: Vec::new(), promise: None });
            let written = written.map_err(|error| error.say(&words.owner));
            Outcome::Papers(folder, written)
        }
        BackgroundTask::Learn(folder) => {
            let learned = learn(&folder);
            Outcome::Learned(folder, learned)
        }
    };
    (number, outcome)
}

/// Writes all papers, or those of a delivery.
fn papers_to(
    folder: &Path,
    (assessment, unread): (&Assessment, &[Problem]),
    papers: &Papers,
    words: &PaperWords,
    drafts: DraftPapers,
    canceled: impl Fn() -> bool + Sync,
) -> Result<PapersMade, String> {
    if assessment.is_delivery_only() {
        return write_record(assessment, unread, words, &folder.join(Folder::Crew.name()))
            .map(|_| PapersMade { faults: Vec::new(), promise: None })
            .map_err(|error| error.say(&words.owner));
    }
    let calendar = job_calendar(assessment, &words.crew);
    let all = write_papers(papers, calendar.as_deref(), folder, drafts, canceled);
    let all = all.map_err(|error| error.say(&words.owner))?;
    let faults = all.written.iter().filter_map(|paper| paper.fault_text(&words.owner));
    let faults = all.held_text(&words.owner).into_iter().chain(faults).collect();
    let offered = all.written.iter().any(|paper| paper.paper == Handed::Paper(Paper::Letter));
    let promise = offered.then(|| assessment.promise()).flatten();
    Ok(PapersMade { faults, promise })
}

fn learn(folder: &Path) -> io::Result<(usize, Lessons)> {
    let jobs = jobs_in(folder)?;
    let catalog = Catalog::built_in();
    let taken: Vec<Taken> =
        jobs.iter().map(|(_, job)| taken(job, catalog)).filter(|taken| !taken.is_empty()).collect();
    Ok((taken.len(), Lessons::of(catalog, &taken)))
}

impl App {
    /// Has a task done.
    pub(super) fn send(&mut self, task: BackgroundTask) {
        let words = self.words();
        self.services.background.job = self.session.opened;
        self.services.background.ask(task, &words);
    }

    /// Takes what came of a task.
    pub(super) fn take_background(&mut self, ctx: &Context) {
        let Some(outcome) = self.services.background.outcome() else { return };
        // What was read for a job that is no longer open is not another one's.
        if self.services.background.job != self.session.opened && !matches!(outcome, Outcome::Papers(..)) {
            return;
        }
        let words = self.words();
        let taken = match outcome {
            Outcome::Weather(Ok(read)) => {
                self.take_weather(ctx, read);
                Ok(())
            }
            Outcome::Guess(Ok(import)) => {
                self.view.drafts.logger = Some(import);
                Ok(())
            }
            Outcome::Logger(_, Ok(read)) => {
                self.take_logger(ctx, read);
                Ok(())
            }
            Outcome::Weather(Err(error)) | Outcome::Guess(Err(error)) => Err(error.say(&words)),
            Outcome::Logger(import, Err(error)) => {
                // Its layout can be put right and tried again.
                self.view.drafts.logger = Some(*import);
                Err(error.say(&words))
            }
            Outcome::Learned(folder, learned) => learned
                .map(|learned| self.view.drafts.learned = Some(learned))
                .map_err(|error| unreadable_file(&words, &folder, &error)),
            Outcome::Papers(folder, written) => self.papers_written(ctx, folder, written),
        };
        if let Err(error) = taken {
            self.file_fault(error);
        }
    }

    fn take_weather(&mut self, ctx: &Context, read: WeatherRead) {
        self.view.drafts.air_remarks = read.remarks.into_iter().map(AirRemark::Weather).collect();
        let weather = read.weather;
        self.edit(ctx, "field-weather-file", move |job| {
            let house = job.air.house().cloned().unwrap_or_default();
            job.air = IndoorAir::FromWeather { weather, house };
        });
    }

    fn take_logger(&mut self, ctx: &Context, read: LoggerRead) {
        self.view.drafts.air_remarks = read.remarks.into_iter().map(AirRemark::Logger).collect();
        let logged = read.logged;
        self.edit(ctx, "field-logger", move |job| job.logged = Some(logged));
    }

    fn edit(&mut self, ctx: &Context, name: &str, change: impl FnOnce(&mut Job) + 'static) {
        self.apply(ctx, Command::Edit(Edit { name: name.to_owned(), change: Box::new(change) }));
    }

    fn papers_written(
        &mut self,
        ctx: &Context,
        folder: PathBuf,
        written: Result<PapersMade, String>,
    ) -> Result<(), String> {
        let PapersMade { faults, promise } = written?;
        // Of another job that was opened meanwhile nothing was told.
        if self.services.background.job == self.session.opened
            && promise.is_some()
            && promise != self.session.job().promise
        {
            self.edit(ctx, "undo-promise", |job| job.promise = promise);
        }
        let text = say!(self.words(), "papers-written", path = &folder.display().to_string());
        self.settings.papers = Some(folder);
        match faults.as_slice() {
            [] => self.prompts.toast = Some(Toast::good(text)),
            faults => self.fault([&[text], faults].concat().join(" ")),
        }
        Ok(())
    }
}
