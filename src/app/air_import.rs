//! Reading weather files and loggers into the job.

use std::path::Path;
use std::sync::Arc;

use crate::air::{LoggerGuess, LoggerRead, WeatherRead, guess_logger, read_logger, read_weather};

/// Largest file that is opened, as the readers have it: 20 MB.
const MOST_BYTES: u64 = 20 << 20;

/// A logger's file whose layout is to be confirmed.
#[derive(Debug, Clone, PartialEq)]
pub struct LoggerImport {
    /// Name of the file.
    pub name: String,
    /// Its text.
    pub text: Arc<str>,
    /// How it seems to be laid out, as the user has put it right.
    pub guess: LoggerGuess,
}

/// Reads a file's text; bytes that are no UTF-8 are shown as such, for the readers to judge.
fn text_of(path: &Path) -> Result<String, String> {
    let told = |error: &dyn std::fmt::Display| format!("“{}” cannot be read: {error}.", path.display());
    let size = std::fs::metadata(path).map_err(|error| told(&error))?.len();
    if size > MOST_BYTES {
        return Err(told(&format!("it has {} MB, but at most 20 are read", size >> 20)));
    }
    let bytes = std::fs::read(path).map_err(|error| told(&error))?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

pub(super) fn name_of(path: &Path) -> String {
    path.file_name().map_or_else(String::new, |name| name.to_string_lossy().into_owned())
}

/// The year in the weather file at `path`.
pub(super) fn weather_in(path: &Path) -> Result<WeatherRead, String> {
    text_of(path).and_then(|text| read_weather(&text).map_err(|error| format!("{error}.")))
}

/// How the logger's file at `path` is laid out, to be confirmed.
pub(super) fn guess_in(path: &Path) -> Result<LoggerImport, String> {
    let text = text_of(path)?;
    let guess = guess_logger(&text).map_err(|error| format!("{error}."))?;
    Ok(LoggerImport { name: name_of(path), text: text.into(), guess })
}

/// A logger's readings, as confirmed.
pub(super) fn read(import: &LoggerImport) -> Result<LoggerRead, String> {
    read_logger(&import.text, &import.guess.format).map_err(|error| format!("{error}."))
}
