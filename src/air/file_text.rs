//! What every file from elsewhere must pass before it is read, and counting what is odd in it.

use std::borrow::Cow;

/// More than this is no year of hours and no room's log, in bytes.
const LARGEST: usize = 20_000_000;

/// Why a file cannot be read as text at all.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum TextError {
    /// Nothing in it but blanks.
    #[error("an empty file")]
    Empty,
    /// Megabytes, more than the 20 that are read.
    #[error("a file of {0} MB")]
    TooLarge(usize),
    /// Characters that no text has.
    #[error("not plain text")]
    Binary,
}

/// The text without its byte order mark, every line ending in `\n` alone, so that lines are counted alike.
///
/// # Errors
/// If it is empty, has more than 20 MB, or more than a twentieth of its first 4000 characters are none
/// that text has. A few are let pass: a name may be written in another encoding.
pub(super) fn plain_text(text: &str) -> Result<Cow<'_, str>, TextError> {
    let text = text.trim_start_matches('\u{feff}');
    if text.len() > LARGEST {
        return Err(TextError::TooLarge(text.len().div_ceil(1_000_000)));
    }
    if text.trim().is_empty() {
        return Err(TextError::Empty);
    }
    let no_text = |c: &char| *c == '\u{fffd}' || c.is_control() && !c.is_whitespace();
    let (seen, odd) =
        text.chars().take(4000).fold((0, 0), |(seen, odd), c| (seen + 1, odd + usize::from(no_text(&c))));
    if text.contains('\0') || odd * 20 > seen {
        return Err(TextError::Binary);
    }
    Ok(if text.contains('\r') { text.replace("\r\n", "\n").replace('\r', "\n").into() } else { text.into() })
}

/// How many lines of a file something was met in, and where first.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Tally {
    /// How many lines.
    pub count: u64,
    /// The first of them, from 1.
    pub first: u64,
}

impl Tally {
    /// Counts one more, on this line.
    pub(super) const fn add(&mut self, line: u64) {
        if self.count == 0 {
            self.first = line;
        }
        self.count += 1;
    }

    /// Itself, unless nothing was met.
    pub(super) fn any(self) -> Option<Self> {
        (self.count > 0).then_some(self)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_plain_text_passes() {
        assert_eq!(plain_text("\u{feff}a,b\r\n"), Ok("a,b\n".into()));
        assert_eq!(plain_text(" \r\n\t"), Err(TextError::Empty));
        assert_eq!(plain_text("PK\u{3}\u{4}\u{14}\0\u{6}"), Err(TextError::Binary));
        assert_eq!(plain_text(&"\u{fffd}\u{1}a".repeat(50)), Err(TextError::Binary));
        assert_eq!(plain_text(&"a".repeat(20_000_001)), Err(TextError::TooLarge(21)));
        assert!(plain_text("Chambre d'\u{fffd}t\u{fffd}, relev\u{fffd} d'un hygrom\u{fffd}tre; température; humidité; point de rosée; heure du relevé; pièce; remarques").is_ok());
    }
}
