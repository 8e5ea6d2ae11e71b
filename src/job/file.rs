//! Job files: loading what can be read, saving without ever losing the old file.

use std::fs;
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

use serde::Deserialize;

use super::document::{Job, VERSION};
use super::json_text::{self, JSON, is_json};
use super::lenient;
use super::price_file::read_prices;
use super::problem::{FileFault, Place, Problem};
use super::ron_text::{self, RON, lenient};
use super::unknown;

/// No job comes near this; a larger file is something else.
const LARGEST: u64 = 8 * 1024 * 1024;

/// A job that was loaded, with what could not be.
#[derive(Debug, Clone, PartialEq)]
pub struct Loaded {
    /// The job.
    pub job: Job,
    /// What could not be read, with its place in the file. If there is any, saving over the file
    /// would lose it.
    pub problems: Vec<Problem>,
}

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

/// Loads a job.
///
/// A broken file gives what can be read of it and a list of what was left out.
///
/// # Errors
/// If nothing can be read: no such file, no text, too large, a price book, or from a newer program.
pub fn load(path: &Path) -> Result<Loaded, LoadError> {
    let text = read_text(path)?;
    if read_prices(&text).is_ok_and(|catalog| catalog.taken.is_some()) {
        return Err(LoadError::PriceBook { path: path.to_owned() });
    }
    read(&text).map_err(|found| LoadError::Newer { path: path.to_owned(), found })
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

/// Reads a job from text.
///
/// # Errors
/// The version, if it is newer than [`VERSION`].
pub fn read(text: &str) -> Result<Loaded, u32> {
    let found = version(text);
    if found > VERSION {
        return Err(found);
    }
    let format = if is_json(text) { &JSON } else { &RON };
    let (mut job, mut cuts) = lenient::read(text, format);
    // Whatever it was written by, in memory it is of the present form.
    job.version = VERSION;
    // What a newer program or a hand has added is kept, and written again.
    let kept = cuts.extract_if(.., |cut| cut.unknown.is_some()).filter_map(|cut| cut.unknown);
    job.unknown = kept.flat_map(|field| unknown::read(&field)).collect();
    let problem = |cut: lenient::Cut| {
        let place = Place::File { line: cut.line, column: cut.column };
        Problem::new(place, FileFault::LeftOut { reason: cut.reason, text: cut.text })
    };
    Ok(Loaded { job, problems: cuts.into_iter().map(problem).collect() })
}

/// The version a text says it is of; the present one if it does not say.
fn version(text: &str) -> u32 {
    #[derive(Deserialize)]
    #[serde(rename = "Job", default)]
    struct Head {
        version: u32,
    }
    impl Default for Head {
        fn default() -> Self {
            Self { version: VERSION }
        }
    }
    let head = if is_json(text) { serde_json::from_str(text).ok() } else { lenient().from_str(text).ok() };
    if let Some(Head { version }) = head {
        return version;
    }
    // A broken file may still say it, in the first line that starts with the word.
    let said = |line: &str| {
        let rest = line.trim().strip_prefix("version").or_else(|| line.trim().strip_prefix("\"version\""));
        rest.and_then(|rest| rest.trim_start().strip_prefix(':')).map(str::to_owned)
    };
    text.lines()
        .find_map(said)
        .and_then(|rest| rest.trim().trim_end_matches(',').parse().ok())
        .unwrap_or(VERSION)
}

/// The job as the text of its file, in RON.
///
/// # Errors
/// If the job cannot be serialized.
pub fn write(job: &Job) -> Result<String, SaveError> {
    let text = ron_text::write(&Job { version: VERSION, ..job.clone() })?;
    Ok(ron_text::with_fields(text, &unknown::as_ron(&job.unknown)?))
}

/// The job as the text of its file, in JSON.
///
/// # Errors
/// If the job cannot be put into words.
pub fn write_json(job: &Job) -> Result<String, SaveError> {
    let written = json_text::write(&Job { version: VERSION, ..job.clone() }, unknown::as_json(&job.unknown));
    written.map_err(|error| SaveError::Unserializable(ron::Error::Message(error.to_string())))
}

/// Saves a job. The text goes to a temporary file beside it, is forced to disk, and takes the
/// file's name in one step; the version before is kept beside it as `NAME.bak`. A name that ends in
/// `.json` is written as JSON, any other as RON.
///
/// # Errors
/// If the system refuses; the file is then as it was.
pub fn save(job: &Job, path: &Path) -> Result<(), SaveError> {
    let json = path.extension().is_some_and(|extension| extension.eq_ignore_ascii_case("json"));
    let text = if json { write_json(job)? } else { write(job)? };
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
        Err(error) if error.kind() != io::ErrorKind::NotFound => return Err(error),
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
