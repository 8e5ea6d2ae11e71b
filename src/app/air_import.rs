//! Reading weather files and loggers into the job.

use std::io;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use crate::air::{
    LoggerError, LoggerGuess, LoggerRead, LoggerRemark, TextError, WeatherError, WeatherRead, WeatherRemark,
    guess_logger, read_logger, read_weather,
};
use crate::words::{Say, Words, unreadable_file};

/// Largest file that is opened, as the readers have it: 20 MB.
const MOST_BYTES: u64 = 20_000_000;

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

/// Why a weather file or a logger's file could not be taken.
#[derive(Debug)]
pub(super) enum ImportError {
    /// The system would not read it.
    Unreadable(PathBuf, io::Error),
    /// It is too large.
    Text(TextError),
    /// It gives no year.
    Weather(WeatherError),
    /// It gives no days.
    Logger(LoggerError),
}

impl Say for ImportError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Unreadable(path, error) => unreadable_file(words, path, error),
            Self::Text(error) => error.say(words),
            Self::Weather(error) => error.say(words),
            Self::Logger(error) => error.say(words),
        }
    }
}

/// What was odd about a weather file or a logger's file.
#[derive(Debug, Clone, PartialEq)]
pub enum AirRemark {
    /// About a weather file.
    Weather(WeatherRemark),
    /// About a logger's file.
    Logger(LoggerRemark),
}

impl Say for AirRemark {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Weather(remark) => remark.say(words),
            Self::Logger(remark) => remark.say(words),
        }
    }
}

/// Reads a file's text; bytes that are no UTF-8 are shown as such, for the readers to judge.
fn text_of(path: &Path) -> Result<String, ImportError> {
    let unreadable = |error| ImportError::Unreadable(path.to_owned(), error);
    let size = std::fs::metadata(path).map_err(unreadable)?.len();
    if size > MOST_BYTES {
        let megabytes = usize::try_from(size.div_ceil(1_000_000)).unwrap_or(usize::MAX);
        return Err(ImportError::Text(TextError::TooLarge(megabytes)));
    }
    let bytes = std::fs::read(path).map_err(unreadable)?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

pub(super) fn name_of(path: &Path) -> String {
    path.file_name().map_or_else(String::new, |name| name.to_string_lossy().into_owned())
}

/// The year in the weather file at `path`. A place without a name is called by the file.
pub(super) fn weather_in(path: &Path) -> Result<WeatherRead, ImportError> {
    let mut read = read_weather(&text_of(path)?).map_err(ImportError::Weather)?;
    if read.weather.place.is_empty() {
        read.weather.place = name_of(path);
    }
    Ok(read)
}

/// How the logger's file at `path` is laid out, to be confirmed.
pub(super) fn guess_in(path: &Path) -> Result<LoggerImport, ImportError> {
    let text = text_of(path)?;
    let guess = guess_logger(&text).map_err(ImportError::Logger)?;
    Ok(LoggerImport { name: name_of(path), text: text.into(), guess })
}

/// A logger's readings, as confirmed. A room without a name is called by the file.
pub(super) fn read(import: &LoggerImport) -> Result<LoggerRead, ImportError> {
    let mut read = read_logger(&import.text, &import.guess.format).map_err(ImportError::Logger)?;
    if read.logged.name.is_empty() {
        read.logged.name.clone_from(&import.name);
    }
    Ok(read)
}
