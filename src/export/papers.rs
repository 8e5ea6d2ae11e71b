//! All papers as files in a folder: the one way in which command line and window write them.

use std::path::{Path, PathBuf};

use rayon::prelude::*;

use super::calendar::next_reading_calendar;
use super::report::NextInstallReport;
use super::{OutFolder, WriteError};
use crate::assess::Assessment;
use crate::papers::{PAGE_FILE, Paper, PaperError, PaperWords, Papers, record};
use crate::words::{Arg, Say, Words, say};

/// What is written for handing over.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Handed {
    /// A paper, as PDF.
    Paper(Paper),
    /// The homeowner's page, as HTML.
    OwnerPage,
}

impl Handed {
    /// All there is, the page last.
    fn all() -> Vec<Self> {
        Paper::ALL.into_iter().map(Self::Paper).chain([Self::OwnerPage]).collect()
    }

    /// The name of its file.
    pub fn file_name(self) -> String {
        match self {
            Self::Paper(paper) => format!("{}.pdf", paper.file_stem()),
            Self::OwnerPage => PAGE_FILE.to_owned(),
        }
    }

    /// The file, and what is wrong with the user's own template, if the built-in one was used.
    fn make(self, papers: &Papers) -> Result<(Vec<u8>, Option<PaperError>), PaperError> {
        match self {
            Self::Paper(paper) => {
                let typeset = papers.typeset(paper)?;
                Ok((typeset.pdf()?, typeset.into_fault()))
            }
            Self::OwnerPage => {
                let page = papers.owner_page()?;
                Ok((page.html.into_bytes(), page.fault))
            }
        }
    }
}

impl Say for Handed {
    /// Its name.
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Paper(paper) => paper.say(words),
            Self::OwnerPage => say!(words, "paper-name", paper = Arg::Id("owner-page")),
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

/// Writes all papers as PDF, and the homeowner's page, into a folder, which is made if it is not there. Nothing is written if one
/// cannot be made, or if `cancelled` says so before all are made.
///
/// # Errors
/// If a built-in template does not compile, or the folder or a file cannot be written.
pub fn write_papers(
    papers: &Papers,
    folder: &Path,
    cancelled: impl Fn() -> bool + Sync,
) -> Result<Vec<WrittenPaper>, PapersError> {
    let make = |paper: Handed| -> Result<Option<_>, PaperError> {
        if cancelled() {
            return Ok(None);
        }
        let (bytes, fault) = paper.make(papers)?;
        Ok(Some((paper, bytes, fault)))
    };
    let made = Handed::all().into_par_iter().map(make).collect::<Result<Option<Vec<_>>, _>>()?;
    let Some(made) = made.filter(|_| !cancelled()) else { return Ok(Vec::new()) };
    let folder = OutFolder::create(folder)?;
    let write = |(paper, bytes, fault): (Handed, Vec<u8>, Option<PaperError>)| {
        let path = folder.write(&paper.file_name(), &bytes)?;
        Ok(WrittenPaper { paper, path, fault })
    };
    made.into_iter().map(write).collect()
}

/// Writes the record of a next install into a folder, which is made if it is not there: record and card as PDF,
/// the figures as JSON, the next reading as a calendar entry. Gives back where each is.
///
/// # Errors
/// If a template does not compile, or the folder or a file cannot be written.
pub fn write_record(
    assessment: &Assessment,
    words: &PaperWords,
    folder: &Path,
) -> Result<Vec<PathBuf>, PapersError> {
    let mut made: Vec<(&str, Vec<u8>)> = record(assessment, words)?;
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
