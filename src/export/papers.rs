//! All papers as files in a folder: the one way in which command line and window write them.

use std::path::{Path, PathBuf};

use rayon::prelude::*;

use super::calendar::next_reading_calendar;
use super::report::NextInstallReport;
use super::{OutFolder, WriteError};
use crate::assess::Assessment;
use crate::job::Problem;
use crate::papers::{Folder, PAGE_FILE, Paper, PaperError, PaperWords, Papers, record};
use crate::words::{Arg, Say, Words, say};

/// What is written for handing over.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Handed {
    /// A paper, as PDF.
    Paper(Paper),
    /// The homeowner's page, as HTML.
    OwnerPage,
    /// The days to remember, as iCalendar.
    Calendar,
}

impl Handed {
    /// All there is, by what they are.
    fn all() -> Vec<Self> {
        Paper::ALL.into_iter().map(Self::Paper).chain([Self::OwnerPage, Self::Calendar]).collect()
    }

    /// The name of its file.
    pub fn file_name(self) -> String {
        match self {
            Self::Paper(paper) => format!("{}.pdf", paper.file_stem()),
            Self::OwnerPage => PAGE_FILE.to_owned(),
            Self::Calendar => "calendar.ics".to_owned(),
        }
    }

    /// The folder of those it is meant for.
    pub const fn folder(self) -> Folder {
        match self {
            Self::Paper(paper) => paper.folder(),
            Self::OwnerPage => Folder::Owner,
            Self::Calendar => Folder::Crew,
        }
    }

    /// The paper that stands or falls with the same entries.
    const fn like(self) -> Paper {
        match self {
            Self::Paper(paper) => paper,
            Self::OwnerPage => Paper::Letter,
            Self::Calendar => Paper::WorkOrder,
        }
    }

    /// The file, and what is wrong with the user's own template, if the built-in one was used; `None` where there
    /// is nothing to write.
    fn make(self, papers: &Papers, calendar: Option<&str>) -> Result<Option<MadeFile>, PaperError> {
        match self {
            Self::Paper(paper) => {
                let typeset = papers.typeset(paper)?;
                Ok(Some((typeset.pdf()?, typeset.into_fault())))
            }
            Self::OwnerPage => {
                let page = papers.owner_page()?;
                Ok(Some((page.html.into_bytes(), page.fault)))
            }
            Self::Calendar => Ok(calendar.map(|calendar| (calendar.as_bytes().to_vec(), None))),
        }
    }
}

/// A file's bytes, and what is wrong with the user's own template.
type MadeFile = (Vec<u8>, Option<PaperError>);

impl Say for Handed {
    /// Its name.
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Paper(paper) => paper.say(words),
            Self::OwnerPage => say!(words, "paper-name", paper = Arg::Id("owner-page")),
            Self::Calendar => say!(words, "paper-name", paper = Arg::Id("calendar")),
        }
    }
}

/// A paper that was written.
#[derive(Debug)]
pub struct WrittenPaper {
    /// Which.
    pub paper: Handed,
    /// Where it is.
    pub path: PathBuf,
    /// What is wrong with the user's own template, for which the built-in one was used.
    pub fault: Option<PaperError>,
}

impl WrittenPaper {
    /// That the built-in template was used, and why, if it was.
    pub fn fault_text(&self, words: &Words) -> Option<String> {
        let fault = self.fault.as_ref()?.say(words);
        Some(say!(words, "paper-fault-built-in-used", paper = &self.paper.say(words), fault = &fault))
    }
}

/// Why the papers were not written.
#[derive(Debug, thiserror::Error)]
pub enum PapersError {
    /// One could not be made.
    #[error(transparent)]
    Paper(#[from] PaperError),
    /// A file could not be written.
    #[error(transparent)]
    Write(#[from] WriteError),
}

impl Say for PapersError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Paper(error) => error.say(words),
            Self::Write(error) => error.say(words),
        }
    }
}

/// What came of writing the papers.
#[derive(Debug, Default)]
pub struct PapersWritten {
    /// What was written, and where.
    pub written: Vec<WrittenPaper>,
    /// What was held back, each with the reasons, a line for each.
    pub held: Vec<(Handed, Vec<String>)>,
}

impl PapersWritten {
    /// What was not written and why, in lines: those held back for the same reasons together.
    pub fn held_text(&self, words: &Words) -> Vec<String> {
        let mut lines: Vec<String> = Vec::new();
        let mut told: Vec<&[String]> = Vec::new();
        for (_, reasons) in &self.held {
            if told.contains(&reasons.as_slice()) {
                continue;
            }
            told.push(reasons);
            let same = self.held.iter().filter(|(_, other)| other == reasons);
            let names: Vec<String> = same.map(|(paper, _)| paper.say(words)).collect();
            let names = Arg::Names(names.iter().map(String::as_str).collect());
            lines.push(say!(words, "paper-held", papers = names));
            lines.extend(reasons.iter().cloned());
        }
        if !lines.is_empty() {
            lines.push(say!(words, "paper-held-drafts"));
        }
        lines
    }
}

/// How papers are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum DraftPapers {
    /// What cannot be stood for is not written.
    #[default]
    HoldBack,
    /// It is written, and marked on every page.
    Write,
}

/// Writes all papers as PDF, the homeowner's page and the calendar into a folder, which is made if it is not there:
/// each into the folder in it of those it is meant for. Nothing is written if one cannot be made, or if
/// `cancelled` says so before all are made.
///
/// # Errors
/// If a built-in template does not compile, or a folder or a file cannot be written.
pub fn write_papers(
    papers: &Papers,
    calendar: Option<&str>,
    folder: &Path,
    drafts: DraftPapers,
    cancelled: impl Fn() -> bool + Sync,
) -> Result<PapersWritten, PapersError> {
    let is_held = |paper: &Handed| !papers.held_back(paper.like()).is_empty();
    // Before anything came there is nothing to report.
    let is_due = |paper: &Handed| *paper != Handed::Paper(Paper::FollowUpReport) || papers.has_later_visits();
    let (held, wanted): (Vec<Handed>, Vec<Handed>) = Handed::all()
        .into_iter()
        .filter(is_due)
        .partition(|paper| drafts == DraftPapers::HoldBack && is_held(paper));
    let make = |paper: Handed| -> Result<Option<_>, PaperError> {
        if cancelled() {
            return Ok(None);
        }
        Ok(paper.make(papers, calendar)?.map(|(bytes, fault)| (paper, bytes, fault)))
    };
    let made = wanted.into_par_iter().map(make).collect::<Result<Vec<_>, _>>()?;
    if cancelled() {
        return Ok(PapersWritten::default());
    }
    let held = held.into_iter().map(|paper| (paper, papers.held_back(paper.like()).to_vec())).collect();
    let write = |(paper, bytes, fault): (Handed, Vec<u8>, Option<PaperError>)| {
        let into = OutFolder::create(&folder.join(paper.folder().name()))?;
        let path = into.write(&paper.file_name(), &bytes)?;
        Ok(WrittenPaper { paper, path, fault })
    };
    let written = made.into_iter().flatten().map(write).collect::<Result<Vec<_>, PapersError>>()?;
    Ok(PapersWritten { written, held })
}

/// Writes the record of a next install into a folder, which is made if it is not there: record and card as PDF,
/// the figures as JSON, the next reading as a calendar entry. Gives back where each is. `unread` is what could not be read of the job's file.
///
/// # Errors
/// If a template does not compile, or the folder or a file cannot be written.
pub fn write_record(
    assessment: &Assessment,
    unread: &[Problem],
    words: &PaperWords,
    folder: &Path,
) -> Result<Vec<PathBuf>, PapersError> {
    let mut made: Vec<(&str, Vec<u8>)> = record(assessment, unread, words)?;
    if let Some(report) = NextInstallReport::new(assessment) {
        let text = serde_json::to_string_pretty(&report).unwrap_or_default();
        made.push(("delivery-record.json", (text + "\n").into_bytes()));
    }
    if let Some(calendar) = next_reading_calendar(assessment, &words.crew) {
        made.push(("next-reading.ics", calendar.into_bytes()));
    }
    let folder = OutFolder::create(folder)?;
    made.into_iter().map(|(name, bytes)| Ok(folder.write(name, &bytes)?)).collect()
}
