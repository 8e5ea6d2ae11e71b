//! What can go wrong with papers and their templates.

use std::io;
use std::path::PathBuf;

use crate::words::{Arg, Say, Words, say, unreadable_file, unwritable_file};

/// Why a paper could not be made, or was not made by the user's own template.
#[derive(Debug, thiserror::Error)]
pub enum PaperError {
    /// The folder to take templates from is not there.
    #[error("no folder of templates at {}", .0.display())]
    NoFolder(PathBuf),
    /// A template does not compile.
    #[error("{}, line {line:?}: {reason}", .file.display())]
    Template {
        /// The template's file, or the name of a built-in one.
        file: PathBuf,
        /// Line of it, from 1; `None` if the fault has no place.
        line: Option<usize>,
        /// What the typesetter says, in US English.
        reason: String,
    },
    /// The typesetter made no page of it.
    #[error("{} has no page", .0.display())]
    NoPage(PathBuf),
    /// A template is larger than any is.
    #[error("{} has {size} kB of at most {most}", .file.display())]
    TemplateTooLarge {
        /// Its file.
        file: PathBuf,
        /// Its size, kB.
        size: u64,
        /// The largest there may be, kB.
        most: u64,
    },
    /// A template's file cannot be read as text.
    #[error("{} cannot be read: {error}", .file.display())]
    TemplateUnreadable {
        /// Its file.
        file: PathBuf,
        /// What the system says.
        #[source]
        error: io::Error,
    },
    /// The typesetter cannot write the PDF.
    #[error("no PDF: {0}")]
    Pdf(String),
    /// A template cannot be written or moved.
    #[error("{} cannot be written: {error}", .path.display())]
    Unwritable {
        /// Its file.
        path: PathBuf,
        /// What the system says.
        #[source]
        error: io::Error,
    },
}

impl PaperError {
    /// The same without a line: the fault is of the file as a whole.
    pub(super) fn without_line(self) -> Self {
        match self {
            Self::Template { file, reason, .. } => Self::Template { file, line: None, reason },
            other => other,
        }
    }
}

impl Say for PaperError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::NoFolder(path) => {
                say!(words, "paper-fault-no-folder", path = Arg::Name(&path.to_string_lossy()))
            }
            Self::Template { file, line: Some(line), reason } => say!(
                words,
                "paper-fault-template",
                file = Arg::Name(&file.to_string_lossy()),
                line = *line,
                reason = reason
            ),
            Self::Template { file, line: None, reason } => say!(
                words,
                "paper-fault-template-no-line",
                file = Arg::Name(&file.to_string_lossy()),
                reason = reason
            ),
            Self::NoPage(file) => {
                say!(words, "paper-fault-no-page", file = Arg::Name(&file.to_string_lossy()))
            }
            Self::TemplateTooLarge { file, size, most } => say!(
                words,
                "paper-fault-template-size",
                file = Arg::Name(&file.to_string_lossy()),
                size = *size,
                most = *most
            ),
            Self::TemplateUnreadable { file, error } => unreadable_file(words, file, error),
            Self::Pdf(reason) => say!(words, "paper-fault-pdf", reason = reason),
            Self::Unwritable { path, error } => unwritable_file(words, path, error),
        }
    }
}
