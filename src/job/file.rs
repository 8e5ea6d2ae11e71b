//! Job files: loading what can be read, saving without ever losing the old file.

use std::fs;
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

use serde::Deserialize;

use super::document::{Job, VERSION};
use super::lenient;
use super::price_file::read_prices;
use super::problem::{Place, Problem, Severity};

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
    let (mut job, mut cuts) = lenient::read(text);
    // Whatever it was written by, in memory it is of the present form.
    job.version = VERSION;
    // What a newer program or a hand has added is kept, and written again.
    let kept = cuts.extract_if(.., |cut| cut.unknown.is_some()).filter_map(|cut| cut.unknown);
    job.unknown = kept.map(|field| field.trim().trim_end_matches(',').trim_end().to_owned()).collect();
    let problem = |cut: lenient::Cut| {
        let place = Place::File { line: cut.line, column: cut.column };
        let what = format!("{}; “{}” was left out", cut.reason, cut.text);
        Problem::new(Severity::Error, place, what, "Enter it again, or mend the file and open it again")
    };
    Ok(Loaded { job, problems: cuts.into_iter().map(problem).collect() })
}

/// How files are read: a value that may be missing can stand there with or without `Some` around it,
/// as the first files had it and as people write it.
pub(super) fn lenient() -> ron::Options {
    ron::Options::default().with_default_extension(ron::extensions::Extensions::IMPLICIT_SOME)
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
    if let Ok(head) = lenient().from_str::<Head>(text) {
        return head.version;
    }
    // A broken file may still say it, in the first line that starts with the word.
    let line = text.lines().find_map(|line| line.trim().strip_prefix("version:"));
    line.and_then(|rest| rest.trim().trim_end_matches(',').parse().ok()).unwrap_or(VERSION)
}

/// The job as the text of its file.
///
/// # Errors
/// If the job cannot be serialized.
pub fn write(job: &Job) -> Result<String, SaveError> {
    let style = ron::ser::PrettyConfig::new().depth_limit(4).struct_names(true);
    let mut text = ron::ser::to_string_pretty(&Job { version: VERSION, ..job.clone() }, style)?;
    for field in &job.unknown {
        let end = text.rfind(')').unwrap_or(text.len());
        text.insert_str(end, &format!("    {field},\n"));
    }
    Ok(text + "\n")
}

/// Saves a job. The text goes to a temporary file beside it, is forced to disk, and takes the
/// file's name in one step; the version before is kept beside it as `NAME.bak`.
///
/// # Errors
/// If the system refuses; the file is then as it was.
pub fn save(job: &Job, path: &Path) -> Result<(), SaveError> {
    let text = write(job)?;
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
