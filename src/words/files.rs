//! Why a job, a price book, a logo or another file could not be read or written.

use std::io::{self, ErrorKind};
use std::path::Path;

use super::{Arg, Say, Words, say};
use crate::job::file::{LoadError, SaveError};
use crate::job::{LogoError, PhotoFault, PriceFileError, VERSION};

/// Why the system did not read a file.
pub fn unreadable_file(words: &Words, path: &Path, error: &io::Error) -> String {
    let (cause, system) = (Arg::Id(cause(error)), error.to_string());
    say!(words, "file-unreadable", path = &shown(path), cause = cause, system = &system)
}

/// Why the system did not write a file. What was there before is unchanged.
pub fn unwritable_file(words: &Words, path: &Path, error: &io::Error) -> String {
    let (cause, system) = (Arg::Id(cause(error)), error.to_string());
    say!(words, "file-unwritable", path = &shown(path), cause = cause, system = &system)
}

/// Why a photo can't be had.
pub fn photo_fault(words: &Words, path: &Path, fault: &PhotoFault) -> String {
    let path_shown = &shown(path);
    match fault {
        PhotoFault::Unreadable(error) => unreadable_file(words, path, error),
        PhotoFault::TooLarge { megabytes, limit } => {
            say!(words, "file-photo-too-large", path = path_shown, megabytes = *megabytes, limit = *limit)
        }
        PhotoFault::Pixels => say!(words, "file-photo-pixels", path = path_shown),
        PhotoFault::Name | PhotoFault::Kind => say!(words, "file-photo-kind", path = path_shown),
    }
}

/// Why a photo of the job is not on a paper, in a line that names its file and the way out. Where the folder lies is
/// nothing to tell on a paper.
pub fn photo_not_printed(words: &Words, file: &str, fault: &PhotoFault) -> String {
    let file = Arg::Name(file);
    match fault {
        PhotoFault::Name => say!(words, "paper-photo-fault-name", file = file),
        PhotoFault::Unreadable(error) => {
            let (cause, system) = (Arg::Id(cause(error)), error.to_string());
            say!(words, "paper-photo-fault-unreadable", file = file, cause = cause, system = &system)
        }
        PhotoFault::TooLarge { megabytes, limit } => {
            say!(words, "paper-photo-fault-large", file = file, megabytes = *megabytes, limit = *limit)
        }
        PhotoFault::Pixels => say!(words, "paper-photo-fault-pixels", file = file),
        PhotoFault::Kind => say!(words, "paper-photo-fault-kind", file = file),
    }
}

/// What kept the system from it, as far as there is something to say that helps.
fn cause(error: &io::Error) -> &'static str {
    match error.kind() {
        ErrorKind::NotFound | ErrorKind::NotADirectory => "missing",
        ErrorKind::PermissionDenied => "denied",
        ErrorKind::IsADirectory => "folder",
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded => "full",
        ErrorKind::ReadOnlyFilesystem => "read-only",
        _ => "other",
    }
}

fn shown(path: &Path) -> String {
    path.display().to_string()
}

impl Say for LoadError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Unreadable { path, source } => unreadable_file(words, path, source),
            Self::TooLarge { path, megabytes } => {
                say!(words, "file-too-large", path = &shown(path), megabytes = *megabytes)
            }
            Self::NotText { path } => say!(words, "file-not-text", path = &shown(path)),
            Self::PriceBook { path } => say!(words, "file-price-book", path = &shown(path)),
            Self::Newer { path, found } => {
                say!(words, "file-newer", path = &shown(path), found = *found, known = VERSION)
            }
        }
    }
}

impl Say for SaveError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Unwritable { path, source } => unwritable_file(words, path, source),
            Self::Unserializable(error) => {
                say!(words, "file-unserializable", reason = &error.to_string())
            }
        }
    }
}

impl Say for PriceFileError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::File(error) => error.say(words),
            Self::NotAPriceBook { path, reason } => {
                say!(words, "file-not-a-price-book", path = &shown(path), reason = reason)
            }
        }
    }
}

impl Say for LogoError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Kind => say!(words, "file-logo-kind"),
            Self::Size { kilobytes, limit } => {
                say!(words, "file-logo-size", kilobytes = *kilobytes, limit = *limit)
            }
            Self::Text => say!(words, "file-logo-text"),
        }
    }
}

/// Where a task's time is from that so many finished jobs teach.
pub fn learned_rate_source(words: &Words, jobs: usize) -> String {
    say!(words, "file-learned-rate", count = jobs)
}
