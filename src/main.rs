//! Arguments in, window or files out.

use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::atomic::{AtomicUsize, Ordering};

use clap::{Parser, Subcommand};
use gapwright::app;
use gapwright::assess::{Assessment, assess, rates_taken};
use gapwright::export::{
    OutFolder, Report, WriteError, export, joints_csv, report_schema, write_papers, year_csv,
};
use gapwright::job::{
    Catalog, Job, PriceBook, Problem, Severity, demo_job, file, jobs_in, learn_rates, save_prices,
};
use gapwright::measure::Units;
use gapwright::papers::{PaperWords, Papers, Templates};
use gapwright::words::{Say as _, Words, answer, command_line, learned_rate_source, unreadable_file};
use rayon::prelude::*;

/// Why painted, caulked board joints opened, how they will move, and which repair lasts.
#[derive(Parser)]
#[command(version, about, args_conflicts_with_subcommands = true)]
struct Arguments {
    /// Job to open in the window; the demo if none is named.
    job: Option<PathBuf>,
    #[command(subcommand)]
    command: Option<Command>,
}

#[derive(Subcommand)]
enum Command {
    /// Print the answer.
    Assess {
        /// Job file, or a folder of them: then a table with a line for each.
        job: PathBuf,
        /// Print the whole assessment as JSON.
        #[arg(long)]
        json: bool,
    },
    /// List what is wrong with a job.
    Check {
        /// Job file.
        job: PathBuf,
    },
    /// Print every joint: length, gap, movement, demand on the bead.
    Joints {
        /// Job file.
        job: PathBuf,
        /// As CSV, the only form there is.
        #[arg(long, required = true)]
        csv: bool,
    },
    /// Print the coming year day by day: air, moisture, gaps.
    Year {
        /// Job file.
        job: PathBuf,
        /// As CSV, the only form there is.
        #[arg(long, required = true)]
        csv: bool,
    },
    /// Write everything for other programs: JSON, CSV, SVG, PNG, DXF.
    Export {
        /// Job file.
        job: PathBuf,
        /// Folder to write to; made if it is not there.
        #[arg(long)]
        out: PathBuf,
    },
    /// Learn rates from the finished jobs in a folder.
    Rates {
        /// Folder of job files.
        folder: PathBuf,
        /// Write a shelf with these rates to this file.
        #[arg(long)]
        catalog: Option<PathBuf>,
    },
    /// Write the papers as PDF.
    Papers {
        /// Job file.
        job: PathBuf,
        /// Folder to write them to; made if it is not there.
        #[arg(long)]
        out: PathBuf,
        /// Folder with templates of your own; papers that have none there are made by the built-in ones.
        #[arg(long)]
        templates: Option<PathBuf>,
    },
    /// Print the JSON Schema of `assess --json`.
    Schema,
    /// Write the built-in templates of the papers, to be changed.
    Templates {
        /// Folder to write them to; templates that are there are left as they are.
        #[arg(long)]
        out: PathBuf,
    },
}

/// The job has errors, or could not be read.
const FAULTY: u8 = 1;

fn main() -> ExitCode {
    app::start_log();
    tracing::debug!("started");
    let arguments = Arguments::parse();
    let result = match arguments.command {
        None => open_window(arguments.job),
        Some(command) => run(command),
    };
    match result {
        Ok(code) => code,
        Err(message) => {
            eprintln!("gapwright: {message}");
            ExitCode::from(FAULTY)
        }
    }
}

/// The words of the command line, where there is no job to say its units.
fn words() -> Words {
    Words::us_english(Units::default(), "$")
}

fn run(command: Command) -> Result<ExitCode, String> {
    match command {
        Command::Export { job, out } => {
            let opened = Opened::load(&job)?;
            let words = opened.words();
            let files = export(&opened.assessment).map_err(|error| error.say(&words))?;
            write_files(&out, files, &words)?;
            Ok(opened.status())
        }
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
            Ok(opened.status())
        }
        Command::Check { job } => {
            let opened = Opened::load(&job)?;
            let lines = opened.problems().map(|problem| opened.line(problem) + "\n");
            let all: String = lines.collect();
            let none = command_line::no_problems(&opened.words()) + "\n";
            print(if all.is_empty() { &none } else { &all })?;
            Ok(opened.status())
        }
        Command::Joints { job, csv: _ } => {
            let opened = Opened::load(&job)?;
            print(&joints_csv(&opened.assessment).map_err(|error| error.to_string())?)?;
            Ok(opened.status())
        }
        Command::Year { job, csv: _ } => {
            let opened = Opened::load(&job)?;
            print(&year_csv(&opened.assessment).map_err(|error| error.to_string())?)?;
            Ok(opened.status())
        }
        Command::Rates { folder, catalog } => rates(&folder, catalog.as_deref()),
        Command::Papers { job, out, templates } => {
            let opened = Opened::load(&job)?;
            let good = write_all_papers(&opened, &out, templates)?;
            Ok(if good { opened.status() } else { ExitCode::from(FAULTY) })
        }
        Command::Schema => {
            print(&report_schema().map_err(|error| error.to_string())?)?;
            Ok(ExitCode::SUCCESS)
        }
        Command::Templates { out } => {
            for path in Templates::write_all(&out).map_err(|error| error.say(&words()))? {
                print(&format!("{}\n", path.display()))?;
            }
            Ok(ExitCode::SUCCESS)
        }
    }
}

/// Assesses every job of a folder, side by side, and prints a table.
fn assess_folder(folder: &Path) -> Result<ExitCode, String> {
    let jobs = jobs_in(folder).map_err(|error| unreadable_file(&words(), folder, &error))?;
    let (done, said) = (AtomicUsize::new(0), words());
    let line = |(path, job): &(PathBuf, Job)| {
        let assessment = assess(job.clone(), Catalog::built_in());
        let count = done.fetch_add(1, Ordering::Relaxed) + 1;
        if count.is_multiple_of(10) || count == jobs.len() {
            eprintln!("{}", command_line::progress(&said, count, jobs.len()));
        }
        let chosen = assessment.chosen();
        let errors = assessment.problems.iter().filter(|problem| problem.severity == Severity::Error).count();
        let name = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
        [
            name,
            job.title.clone(),
            assessment.causes.as_ref().map_or_else(String::new, |causes| causes.main().0.key().to_owned()),
            chosen.map_or_else(String::new, |option| option.method.key()),
            chosen.map_or_else(String::new, |option| option.price.total.plain()),
            assessment.cheapest_with_callbacks().map_or_else(String::new, |option| option.method.key()),
            errors.to_string(),
            answer::headline(&assessment, &Words::of_job(job)),
        ]
    };
    let lines: Vec<_> = jobs.par_iter().map(line).collect();
    let mut table = csv::Writer::from_writer(vec![]);
    let heads = ["file", "title", "cause", "chosen", "price", "least_with_callbacks", "errors", "answer"];
    let written =
        table.write_record(heads).and_then(|()| lines.iter().try_for_each(|line| table.write_record(line)));
    written.map_err(|error| error.to_string())?;
    let bytes = table.into_inner().map_err(|error| error.to_string())?;
    print(&String::from_utf8_lossy(&bytes))?;
    let faulty = lines.iter().any(|line| line[6] != "0");
    Ok(if faulty { ExitCode::from(FAULTY) } else { ExitCode::SUCCESS })
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

fn rates(folder: &Path, out: Option<&Path>) -> Result<ExitCode, String> {
    let catalog = Catalog::built_in();
    let jobs = jobs_in(folder).map_err(|error| unreadable_file(&words(), folder, &error))?;
    let taken: Vec<_> =
        jobs.iter().map(|(_, job)| rates_taken(job, catalog)).filter(|rates| !rates.is_empty()).collect();
    let learned = learn_rates(catalog, &taken);
    let said = words();
    print(&(command_line::finished_jobs(&said, taken.len(), jobs.len()) + "\n"))?;
    for rate in &learned {
        print(&(command_line::learned_rate(&said, rate) + "\n"))?;
    }
    if let Some(path) = out {
        let mut own = PriceBook::of(catalog, jiff::ZonedDateTime::now().date());
        own.take_rates(&learned, |jobs| learned_rate_source(&said, jobs));
        save_prices(&own, path).map_err(|error| error.say(&said))?;
    }
    Ok(ExitCode::SUCCESS)
}

/// Writes all papers; returns whether all templates were good.
fn write_all_papers(opened: &Opened, out: &Path, folder: Option<PathBuf>) -> Result<bool, String> {
    let words = PaperWords::us_english(&opened.job);
    let templates = folder.map(Templates::in_existing_folder).transpose();
    let templates = templates.map_err(|error| error.say(&words.owner))?.unwrap_or_default();
    let papers = Papers::with(&opened.assessment, templates, &words);
    let written = write_papers(&papers, out, || false).map_err(|error| error.say(&words.owner))?;
    for paper in &written {
        if let Some(fault) = paper.fault_text(&words.owner) {
            eprintln!("{fault}");
        }
        print(&format!("{}\n", paper.path.display()))?;
    }
    Ok(written.iter().all(|paper| paper.fault.is_none()))
}

/// Prints to standard output. A reader that hangs up early, such as `head`, is no fault.
fn print(text: &str) -> Result<(), String> {
    match std::io::stdout().write_all(text.as_bytes()) {
        Err(error) if error.kind() != std::io::ErrorKind::BrokenPipe => Err(error.to_string()),
        _ => Ok(()),
    }
}

/// A job with its assessment and what could not be read of it.
struct Opened {
    job: Job,
    assessment: Assessment,
    unread: Vec<Problem>,
}

impl Opened {
    fn load(path: &Path) -> Result<Self, String> {
        let loaded = file::load(path).map_err(|error| error.say(&words()))?;
        let assessment = assess(loaded.job.clone(), Catalog::built_in());
        let opened = Self { job: loaded.job, assessment, unread: loaded.problems };
        for problem in &opened.unread {
            eprintln!("{}", opened.line(problem));
        }
        Ok(opened)
    }

    /// A problem in a line.
    fn line(&self, problem: &Problem) -> String {
        problem.line(&self.job, &self.words())
    }

    fn problems(&self) -> impl Iterator<Item = &Problem> {
        self.unread.iter().chain(&self.assessment.problems)
    }

    fn status(&self) -> ExitCode {
        match self.problems().any(|problem| problem.severity == Severity::Error) {
            true => ExitCode::from(FAULTY),
            false => ExitCode::SUCCESS,
        }
    }

    /// US English in the job's units.
    fn words(&self) -> Words {
        Words::of_job(&self.job)
    }

    fn answer(&self) -> String {
        let (assessment, words) = (&self.assessment, &self.words());
        let mut lines = vec![
            self.job.title.clone(),
            answer::headline(assessment, words),
            answer::cause(assessment, words),
        ];
        let missing = assessment.answer.missing.iter();
        lines.extend(missing.map(|entry| format!("- {}", answer::missing(assessment, *entry, words))));
        lines.extend(self.assessment.problems.iter().map(|problem| self.line(problem)));
        lines.retain(|line| !line.is_empty());
        lines.join("\n") + "\n"
    }
}

/// Opens the window. Without a display it says so and prints the answer instead.
fn open_window(path: Option<PathBuf>) -> Result<ExitCode, String> {
    if app::has_display() {
        app::run(path).map_err(|error| command_line::no_window(&words(), &error.to_string()))?;
        return Ok(ExitCode::SUCCESS);
    }
    eprintln!("gapwright: {}", command_line::no_display(&words()));
    let opened = match path {
        Some(path) => Opened::load(&path)?,
        None => {
            let job = demo_job();
            let assessment = assess(job.clone(), Catalog::built_in());
            Opened { job, assessment, unread: vec![] }
        }
    };
    print(&opened.answer())?;
    Ok(opened.status())
}
