//! Files on a disk: reading a text of bearable size, writing one so that a crash leaves the old or the new
//! file whole.

use std::fs;
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

use super::document::VERSION;

/// No job comes near this; a larger file is something else.
const LARGEST: u64 = 8 * 1024 * 1024;

/// Nor does any table or drawing that a job is made of.
const LARGEST_GIVEN: u64 = 20_000_000;

/// Why a file could not be loaded at all. The sentences for people are made in `words`.
#[derive(Debug, thiserror::Error)]
pub enum LoadError {
    /// The system would not read it.
    #[error("{}: unreadable: {source}", path.display())]
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// It is too large.
    #[error("{}: {megabytes} MB are too large", path.display())]
    TooLarge {
        /// The file.
        path: PathBuf,
        /// Its size.
        megabytes: u64,
    },
    /// It is not text.
    #[error("{}: not text", path.display())]
    NotText {
        /// The file.
        path: PathBuf,
    },
    /// It is a price book.
    #[error("{}: a price book, not a job", path.display())]
    PriceBook {
        /// The file.
        path: PathBuf,
    },
    /// A newer program wrote it.
    #[error("{}: version {found}, newer than {VERSION}", path.display())]
    Newer {
        /// The file.
        path: PathBuf,
        /// Its version.
        found: u32,
    },
}

/// Why a job could not be saved. The file is as it was.
#[derive(Debug, thiserror::Error)]
pub enum SaveError {
    /// The system would not write it.
    #[error("{}: unwritable: {source}", path.display())]
    Unwritable {
        /// The file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// It has no form in the file's format. No job that was typed gets here.
    #[error("not serializable: {0}")]
    Unserializable(#[from] ron::Error),
}

/// A file's text, if it is text and no larger than any job.
pub(super) fn read_text(path: &Path) -> Result<String, LoadError> {
    let unreadable = |source| LoadError::Unreadable { path: path.to_owned(), source };
    let size = fs::metadata(path).map_err(unreadable)?.len();
    if size > LARGEST {
        return Err(LoadError::TooLarge { path: path.to_owned(), megabytes: size / 1_000_000 });
    }
    let bytes = fs::read(path).map_err(unreadable)?;
    String::from_utf8(bytes).map_err(|_invalid| LoadError::NotText { path: path.to_owned() })
}

/// The bytes of a table or a drawing that a job is made of.
///
/// # Errors
/// What the system says, or that the file is larger than any such.
pub fn read_whole(path: &Path) -> io::Result<Vec<u8>> {
    if fs::metadata(path)?.len() > LARGEST_GIVEN {
        return Err(io::ErrorKind::FileTooLarge.into());
    }
    fs::read(path)
}

/// Saves a text: it goes to a temporary file beside the file, is forced to disk, and takes the file's name in
/// one step; the version before is kept beside it as `NAME.bak`.
///
/// # Errors
/// If the system refuses; the file is then as it was.
pub(super) fn save_text(text: &str, path: &Path) -> Result<(), SaveError> {
    write_whole(text.as_bytes(), path, true)
        .map_err(|source| SaveError::Unwritable { path: path.to_owned(), source })
}

/// Writes a file whole or not at all; with `backup`, the version before is kept beside it as `NAME.bak`.
///
/// # Errors
/// If the system refuses; the file is then as it was.
pub fn write_whole(bytes: &[u8], path: &Path, backup: bool) -> io::Result<()> {
    let folder = match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    };
    let mut builder = tempfile::Builder::new();
    builder.prefix(".gapwright-");
    // A new file is as open to others as the user's other files, not private as temporary ones are.
    #[cfg(unix)]
    builder.permissions(std::os::unix::fs::PermissionsExt::from_mode(0o666));
    let mut file = builder.tempfile_in(folder)?;
    file.write_all(bytes)?;
    file.as_file().sync_all()?;
    if let Ok(old) = fs::metadata(path) {
        file.as_file().set_permissions(old.permissions())?;
        if backup {
            keep_backup(path)?;
        }
    }
    file.persist(path)?;
    sync_folder(folder)
}

/// Keeps the present file under its backup name, by a second name for it where the file system
/// can, so that there is no moment without a file of the job's own name.
fn keep_backup(path: &Path) -> io::Result<()> {
    let mut backup = path.as_os_str().to_owned();
    backup.push(".bak");
    let backup = PathBuf::from(backup);
    match fs::remove_file(&backup) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => {
            // Else one would look for what is wrong with the job's own file.
            return Err(io::Error::other(format!("{}: {error}", backup.display())));
        }
        _ => {}
    }
    fs::hard_link(path, &backup).or_else(|_no_links| fs::copy(path, &backup).map(|_bytes| ()))
}

/// Forces the new name itself to disk, where folders can be opened.
#[cfg(unix)]
fn sync_folder(folder: &Path) -> io::Result<()> {
    fs::File::open(folder)?.sync_all()
}

#[cfg(not(unix))]
fn sync_folder(_folder: &Path) -> io::Result<()> {
    Ok(())
}
