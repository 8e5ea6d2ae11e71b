//! Reading weather files and loggers into the job.

use std::path::Path;
use std::sync::Arc;

use super::App;
use super::command::{Command, Edit};
use crate::air::{IndoorAir, LoggerGuess, guess_logger, read_logger, read_weather};

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

fn name_of(path: &Path) -> String {
    path.file_name().map_or_else(String::new, |name| name.to_string_lossy().into_owned())
}

impl App {
    /// Takes the weather of the file in `path` for the job's, with the house as it is.
    pub(super) fn take_weather(&mut self, ctx: &eframe::egui::Context, path: &Path) {
        let read = text_of(path).and_then(|text| read_weather(&text).map_err(|error| format!("{error}.")));
        match read {
            Ok(read) => {
                self.view.air_remarks = read.remarks;
                let weather = read.weather;
                let change = move |job: &mut crate::job::Job| {
                    let house = job.air.house().cloned().unwrap_or_default();
                    job.air = IndoorAir::FromWeather { weather, house };
                };
                let edit = Edit { name: "Weather file".to_owned(), change: Box::new(change) };
                self.apply(ctx, Command::Edit(edit));
            }
            Err(error) => self.fault(error),
        }
    }

    /// Works out how the logger's file in `path` is laid out, to be confirmed under Survey.
    pub(super) fn ask_about_logger(&mut self, path: &Path) {
        let guessed = text_of(path).and_then(|text| {
            let guess = guess_logger(&text).map_err(|error| format!("{error}."))?;
            Ok(LoggerImport { name: name_of(path), text: text.into(), guess })
        });
        match guessed {
            Ok(import) => self.view.logger = Some(import),
            Err(error) => self.fault(error),
        }
    }

    /// Reads a logger's file as confirmed.
    pub(super) fn take_logger(&mut self, ctx: &eframe::egui::Context, import: LoggerImport) {
        match read_logger(&import.text, &import.guess.format) {
            Ok(read) => {
                self.view.air_remarks = read.remarks;
                let mut logged = read.logged;
                if logged.name.is_empty() {
                    logged.name = import.name;
                }
                let change = move |job: &mut crate::job::Job| job.logged = Some(logged);
                let edit = Edit { name: "Logger's readings".to_owned(), change: Box::new(change) };
                self.apply(ctx, Command::Edit(edit));
            }
            Err(error) => {
                self.fault(format!("{error}."));
                self.view.logger = Some(import);
            }
        }
    }
}
