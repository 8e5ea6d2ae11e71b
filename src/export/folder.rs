//! The one writer of files to a folder.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use crate::words::{Say, Words, say};

/// A folder that files are written to.
#[derive(Debug)]
pub struct OutFolder {
    path: PathBuf,
}

/// Why a folder or file cannot be written.
#[derive(Debug, thiserror::Error)]
pub enum WriteError {
    /// The folder cannot be made.
    #[error("can't make the folder {}: {error}", path.display())]
    Folder {
        /// Its path.
        path: PathBuf,
        /// What the system says.
        #[source]
        error: io::Error,
    },
    /// A file in it cannot be written.
    #[error("can't write {}: {error}", path.display())]
    File {
        /// Its path.
        path: PathBuf,
        /// What the system says.
        #[source]
        error: io::Error,
    },
}

impl Say for WriteError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Folder { path, error } => {
                let (path, reason) = (path.display().to_string(), error.to_string());
                say!(words, "export-folder-failed", path = &path, reason = &reason)
            }
            Self::File { path, error } => {
                let (path, reason) = (path.display().to_string(), error.to_string());
                say!(words, "export-file-failed", path = &path, reason = &reason)
            }
        }
    }
}

impl OutFolder {
    /// The folder at this path; it and those above it are made if they are not there.
    ///
    /// # Errors
    /// If it cannot be made, or something else is in its place.
    pub fn create(path: &Path) -> Result<Self, WriteError> {
        let made = fs::create_dir_all(path);
        made.map_err(|error| WriteError::Folder { path: path.to_owned(), error })?;
        Ok(Self { path: path.to_owned() })
    }

    /// Writes a file, over one that is there, and gives its path.
    ///
    /// # Errors
    /// If it cannot be written.
    pub fn write(&self, name: &str, bytes: &[u8]) -> Result<PathBuf, WriteError> {
        let path = self.path.join(name);
        match fs::write(&path, bytes) {
            Ok(()) => Ok(path),
            Err(error) => Err(WriteError::File { path, error }),
        }
    }
}
