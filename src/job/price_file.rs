//! A user's own price book in a file.

use std::path::{Path, PathBuf};

use super::price_book::PriceBook;
use super::ron_text::lenient;
use super::storage::{LoadError, SaveError, read_text, save_text};

/// Why a price book cannot be read. The sentences for people are made in `words`.
#[derive(Debug, thiserror::Error)]
pub enum PriceFileError {
    /// The file cannot be read at all.
    #[error(transparent)]
    File(#[from] LoadError),
    /// It is no price book.
    #[error("{}: not a price book: {reason}", path.display())]
    NotAPriceBook {
        /// The file.
        path: PathBuf,
        /// Line, column and what the reader of the format says of it, in its own technical English.
        reason: String,
    },
}

/// Loads a price book.
///
/// # Errors
/// If the file cannot be read or is no price book.
pub fn load_prices(path: &Path) -> Result<PriceBook, PriceFileError> {
    let text = read_text(path)?;
    read_prices(&text).map_err(|reason| PriceFileError::NotAPriceBook { path: path.to_owned(), reason })
}

/// Reads a price book from text.
///
/// # Errors
/// Line, column and what is wrong.
pub fn read_prices(text: &str) -> Result<PriceBook, String> {
    lenient().from_str(text).map_err(|error| error.to_string())
}

/// Saves a price book, whole or not at all.
///
/// # Errors
/// If the system refuses; the file is then as it was.
pub fn save_prices(prices: &PriceBook, path: &Path) -> Result<(), SaveError> {
    let style = ron::ser::PrettyConfig::new().depth_limit(2);
    let text = ron::ser::to_string_pretty(prices, style)? + "\n";
    save_text(&text, path)
}
