//! All papers as files in a folder: the one way in which command line and window write them.

use std::path::{Path, PathBuf};

use rayon::prelude::*;

use super::{OutFolder, WriteError};
use crate::papers::{Paper, PaperError, Papers};
use crate::words::{Say, Words, say};

/// A paper that was written.
#[derive(Debug)]
pub struct WrittenPaper {
    /// Which.
    pub paper: Paper,
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

/// Writes all papers as PDF into a folder, which is made if it is not there. Nothing is written if one
/// cannot be made, or if `cancelled` says so before all are made.
///
/// # Errors
/// If a built-in template does not compile, or the folder or a file cannot be written.
pub fn write_papers(
    papers: &Papers,
    folder: &Path,
    cancelled: impl Fn() -> bool + Sync,
) -> Result<Vec<WrittenPaper>, PapersError> {
    let make = |paper: Paper| -> Result<Option<_>, PaperError> {
        if cancelled() {
            return Ok(None);
        }
        let typeset = papers.typeset(paper)?;
        Ok(Some((paper, typeset.pdf()?, typeset.into_fault())))
    };
    let made = Paper::ALL.into_par_iter().map(make).collect::<Result<Option<Vec<_>>, _>>()?;
    let Some(made) = made.filter(|_| !cancelled()) else { return Ok(Vec::new()) };
    let folder = OutFolder::create(folder)?;
    let write = |(paper, pdf, fault): (Paper, Vec<u8>, Option<PaperError>)| {
        let path = folder.write(&format!("{}.pdf", paper.file_stem()), &pdf)?;
        Ok(WrittenPaper { paper, path, fault })
    };
    made.into_iter().map(write).collect()
}
