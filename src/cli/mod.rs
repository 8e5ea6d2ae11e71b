//! The command line: the same answers as the window, in words, JSON, CSV and files.
//!
//! Exit status: 0 done; 1 a job has errors or could not be read; 2 wrong usage. What goes wrong is told
//! once, on standard error.

mod arguments;
mod bead;
mod folder;
mod new_job;
mod opened;

use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use arguments::{Arguments, Command, PaperLanguages};
use folder::{assess_folder, rates};
use opened::{Opened, file_name, job_files, plain_words};

use crate::export::{
    DraftPapers, NextInstallReport, OutFolder, Report, WriteError, export, job_calendar, job_schema,
    joints_csv, report_schema, write_papers, write_record, year_csv,
};
use crate::job::{Job, demo_job, file, photo_folder};
use crate::papers::{Folder, PaperWords, Papers, Templates};
use crate::words::{Arg, Language, Say as _, Words, languages, next_install, say};

/// What the process came to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Outcome {
    /// All was done.
    Good,
    /// A job has errors, or could not be read.
    Faulty,
}

/// Opens the window on a job, or on the demo if none is named.
pub type OpenWindow = fn(Option<PathBuf>) -> Result<(), String>;

/// Runs the command that the arguments of the process name. Without one it opens the window; `window`
/// is `None` where there is no display: then the answer is printed instead.
pub fn run(window: Option<OpenWindow>) -> ExitCode {
    let arguments = Arguments::read(&plain_words());
    let outcome = match arguments.command {
        None => open(arguments.job, window),
        Some(command) => carry_out(command),
    };
    match outcome {
        Ok(Outcome::Good) => ExitCode::SUCCESS,
        Ok(Outcome::Faulty) => ExitCode::FAILURE,
        Err(message) => {
            eprintln!("gapwright: {message}");
            ExitCode::FAILURE
        }
    }
}

fn open(job: Option<PathBuf>, window: Option<OpenWindow>) -> Result<Outcome, String> {
    let words = plain_words();
    if let Some(window) = window {
        let opened = window(job);
        opened.map_err(|error| say!(words, "command-line-no-window", error = &error))?;
        return Ok(Outcome::Good);
    }
    eprintln!("gapwright: {}", words.text("command-line-no-display"));
    let opened = match job {
        Some(path) => Opened::load(&path)?,
        None => Opened::of(demo_job()),
    };
    print(&opened.answer())?;
    Ok(judged(&opened))
}

fn carry_out(command: Command) -> Result<Outcome, String> {
    match command {
        Command::Assess { job, json: false } if job.is_dir() => assess_folder(&job),
        Command::Assess { job, json } => {
            let opened = Opened::load(&job)?;
            if json {
                let report = Report::new(&opened.assessment, &opened.unread);
                let text = serde_json::to_string_pretty(&report).map_err(|error| error.to_string())?;
                print(&(text + "\n"))?;
            } else {
                print(&opened.answer())?;
            }
            Ok(judged(&opened))
        }
        Command::Bead(bead) => {
            let (printed, good) = bead.run().map_err(|error| error.to_string())?;
            print(&printed)?;
            Ok(if good { Outcome::Good } else { Outcome::Faulty })
        }
        Command::New(new) => new.run(),
        Command::Check { job } => each(&job, check),
        Command::Joints(table) => table_of(&table.job, |opened| joints_csv(&opened.assessment)),
        Command::Year(table) => table_of(&table.job, |opened| year_csv(&opened.assessment)),
        Command::Export { job, out } => {
            let opened = Opened::load(&job)?;
            let words = opened.words();
            let files = export(&opened.assessment).map_err(|error| error.say(&words))?;
            write_files(&out, files, &words)?;
            Ok(judged(&opened))
        }
        Command::Ready { job, json, out, languages } => {
            ready(&Opened::load(&job)?, json, out.as_deref(), &languages)
        }
        Command::Rates { folder, prices } => rates(&folder, prices.as_deref()),
        Command::Papers { job, out, templates, languages, draft, keep } => {
            let said = |error: crate::papers::PaperError| error.say(&plain_words());
            let templates = templates.map(Templates::in_existing_folder).transpose().map_err(said)?;
            let templates = templates.unwrap_or_default();
            each(&job, |path, opened, several| {
                let folder = if several { folder_of(&out, path) } else { out.clone() };
                let drafts = if draft { DraftPapers::Write } else { DraftPapers::HoldBack };
                let by = (templates.clone(), photo_folder(path));
                let outcome = papers(opened, &folder, by, &languages, drafts)?;
                if keep {
                    keep_promise(path, opened)?;
                }
                Ok(outcome)
            })
        }
        Command::Schema { job } => {
            let schema = if job { job_schema() } else { report_schema() };
            print(&schema.map_err(|error| error.to_string())?)?;
            Ok(Outcome::Good)
        }
        Command::Templates { out } => {
            for path in Templates::write_all(&out).map_err(|error| error.say(&plain_words()))? {
                print(&format!("{}\n", path.display()))?;
            }
            Ok(Outcome::Good)
        }
    }
}

/// What there is to say of a job's next install.
fn ready(
    opened: &Opened,
    json: bool,
    out: Option<&Path>,
    languages: &PaperLanguages,
) -> Result<Outcome, String> {
    let (assessment, words) = (&opened.assessment, opened.words());
    let Some(found) = assessment.next_install.as_deref() else {
        return Err(match assessment.job.next_install.is_none() {
            true => words.text("command-line-no-install").into_owned(),
            false => next_install::missing(assessment, &words),
        });
    };
    if let Some(folder) = out {
        delivery_papers(opened, &paper_words(&assessment.job, languages)?, folder)?;
    } else if json {
        let report = NextInstallReport::new(assessment);
        print(&(serde_json::to_string_pretty(&report).map_err(|error| error.to_string())? + "\n"))?;
    } else {
        let mut lines = vec![assessment.job.title.clone()];
        lines.extend(next_install::lines(found, &assessment.job, assessment.sealant_name(), &words));
        lines.extend(assessment.problems.iter().map(|problem| opened.line(problem)));
        print(&(lines.join("\n") + "\n"))?;
    }
    Ok(judged(opened))
}

/// Does the same with a job, or with every job of a folder. In a folder a job that cannot be read is
/// told, and the others go on.
fn each(
    path: &Path,
    act: impl Fn(&Path, &Opened, bool) -> Result<Outcome, String>,
) -> Result<Outcome, String> {
    if !path.is_dir() {
        return act(path, &Opened::load(path)?, false);
    }
    let mut outcome = Outcome::Good;
    for path in job_files(path)? {
        let one = Opened::load(&path).and_then(|opened| act(&path, &opened, true));
        match one {
            Ok(Outcome::Good) => {}
            Ok(Outcome::Faulty) => outcome = Outcome::Faulty,
            Err(message) => {
                eprintln!("{message}");
                outcome = Outcome::Faulty;
            }
        }
    }
    Ok(outcome)
}

/// Lists what is wrong with a job; in a folder, under the name of its file.
fn check(path: &Path, opened: &Opened, several: bool) -> Result<Outcome, String> {
    let mut lines: Vec<String> = opened.problems().map(|problem| opened.line(problem)).collect();
    if lines.is_empty() {
        lines.push(opened.words().text("command-line-no-problems").into_owned());
    }
    if several {
        let name = file_name(path);
        lines.insert(0, say!(opened.words(), "command-line-file", name = Arg::Name(&name)));
    }
    print(&(lines.join("\n") + "\n"))?;
    Ok(judged(opened))
}

fn table_of(path: &Path, table: impl Fn(&Opened) -> Result<String, csv::Error>) -> Result<Outcome, String> {
    let opened = Opened::load(path)?;
    print(&table(&opened).map_err(|error| error.to_string())?)?;
    Ok(judged(&opened))
}

/// The words of the papers, in the languages of these tags.
fn paper_words(job: &Job, chosen: &PaperLanguages) -> Result<PaperWords, String> {
    let words = |tag: &Option<String>| match tag {
        None => Ok(Words::of_job(job)),
        Some(tag) => match Language::of(tag) {
            Some(language) => Ok(Words::new(language, job.units, &job.plan.prices.currency)),
            None => {
                let known = languages().iter().map(Language::tag).collect();
                let known = Arg::Names(known);
                Err(say!(plain_words(), "command-line-no-language", tag = tag, known = known))
            }
        },
    };
    Ok(PaperWords { owner: words(&chosen.owner_language)?, crew: words(&chosen.crew_language)? })
}

/// Writes the record of a delivery and what goes with it.
fn delivery_papers(opened: &Opened, words: &PaperWords, out: &Path) -> Result<(), String> {
    let written = write_record(&opened.assessment, &opened.unread, words, out);
    for path in written.map_err(|error| error.say(&words.owner))? {
        print(&format!("{}\n", path.display()))?;
    }
    Ok(())
}

/// The folder for the papers of one job of several: in the chosen one, whatever the job's file is called, and none
/// that another job's papers go to.
fn folder_of(out: &Path, job: &Path) -> PathBuf {
    let name = job.file_name().unwrap_or_default();
    let stem = job.file_stem().unwrap_or_default();
    let is_up = stem.to_string_lossy().chars().all(|c| c == '.');
    let other = if job.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("json")) {
        "ron"
    } else {
        "json"
    };
    out.join(if is_up || job.with_extension(other).exists() { name } else { stem })
}

/// Writes all papers, and of a next install its record. What is held back is told with the reason; so is a template
/// of the user's own with a fault, for which the built-in one stands in.
fn papers(
    opened: &Opened,
    out: &Path,
    (templates, photos): (Templates, PathBuf),
    languages: &PaperLanguages,
    drafts: DraftPapers,
) -> Result<Outcome, String> {
    let assessment = &opened.assessment;
    let words = paper_words(&assessment.job, languages)?;
    // A job that is about boards to come alone has no other papers.
    let mut good = true;
    if !assessment.is_delivery_only() {
        let papers =
            Papers::of_file(assessment, &opened.unread, templates, &words).with_photos_in(Some(photos));
        let calendar = job_calendar(assessment, &words.crew);
        let all = write_papers(&papers, calendar.as_deref(), out, drafts, || false);
        let all = all.map_err(|error| error.say(&words.owner))?;
        for paper in &all.written {
            if let Some(fault) = paper.fault_text(&words.owner) {
                eprintln!("{fault}");
            }
            print(&format!("{}\n", paper.path.display()))?;
        }
        // What could not be read was told when the file was opened.
        let told: Vec<String> = opened.unread.iter().map(|problem| opened.line(problem)).collect();
        for line in all.held_text(&words.owner).iter().filter(|line| !told.contains(line)) {
            eprintln!("{line}");
        }
        good = all.held.is_empty() && all.written.iter().all(|paper| paper.fault.is_none());
    }
    if assessment.next_install.is_some() {
        delivery_papers(opened, &words, &out.join(Folder::Crew.name()))?;
    }
    Ok(if good { judged(opened) } else { Outcome::Faulty })
}

/// Keeps what the papers told in the job's file, to hold later visits against. What could not be read of the file
/// would be lost with it, so then nothing is kept.
fn keep_promise(path: &Path, opened: &Opened) -> Result<(), String> {
    let Some(promise) = opened.assessment.promise().filter(|_| opened.unread.is_empty()) else {
        eprintln!("{}", opened.words().text("command-line-nothing-kept"));
        return Ok(());
    };
    let job = Job { promise: Some(promise), ..Job::clone(&opened.assessment.job) };
    file::save(&job, path).map_err(|error| error.say(&opened.words()))
}

/// Writes files to a folder and prints where each is.
fn write_files(out: &Path, files: Vec<(String, Vec<u8>)>, words: &Words) -> Result<(), String> {
    let said = |error: WriteError| error.say(words);
    let folder = OutFolder::create(out).map_err(said)?;
    for (name, bytes) in files {
        let path = folder.write(&name, &bytes).map_err(said)?;
        print(&format!("{}\n", path.display()))?;
    }
    Ok(())
}

fn judged(opened: &Opened) -> Outcome {
    if opened.errors() > 0 { Outcome::Faulty } else { Outcome::Good }
}

/// Prints to standard output. A reader that hangs up early, such as `head`, is no fault.
fn print(text: &str) -> Result<(), String> {
    match std::io::stdout().write_all(text.as_bytes()) {
        Err(error) if error.kind() != std::io::ErrorKind::BrokenPipe => Err(error.to_string()),
        _ => Ok(()),
    }
}
