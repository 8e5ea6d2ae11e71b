//! What every file from elsewhere must pass before it is read, and counting what is odd in it.

/// More than this is no year of hours and no room's log, in bytes.
const LARGEST: usize = 20_000_000;

/// Why a file cannot be read as text at all.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum TextError {
    /// Nothing in it but blanks.
    #[error("The file is empty. Choose another, or save it once more where it came from")]
    Empty,
    /// Megabytes beyond the limit.
    #[error("The file has {0} MB, but no more than 20 MB are read. Cut it to the time you need")]
    TooLarge(usize),
    /// Signs that no text has.
    #[error("The file is not plain text. Save it as CSV in UTF-8: no workbook, picture or archive is read")]
    Binary,
}

/// The text without its byte order mark.
///
/// # Errors
/// If it is empty, has more than 20 MB, or more than a twentieth of its first 4000 signs are none
/// that text has. A few are let pass: a name may be written in another encoding.
pub(super) fn plain_text(text: &str) -> Result<&str, TextError> {
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
    if text.contains('\0') || odd * 20 > seen { Err(TextError::Binary) } else { Ok(text) }
}

/// How often something was met, and where first.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(super) struct Tally {
    /// How often.
    pub count: u64,
    /// Line of the file where first, from 1.
    pub first: u64,
}

impl Tally {
    /// Counts one more, on this line.
    pub fn add(&mut self, line: u64) {
        if self.count == 0 {
            self.first = line;
        }
        self.count += 1;
    }

    /// Adds the remark that `say` makes of the tally, if there is anything to say.
    pub fn remark(self, remarks: &mut Vec<String>, say: impl FnOnce(Self) -> String) {
        if self.count > 0 {
            remarks.push(say(self));
        }
    }
}

/// `1 hour`, `3 hours`.
pub(super) fn counted(count: impl TryInto<u64> + Copy, what: &str) -> String {
    let count = count.try_into().unwrap_or(u64::MAX);
    let ending = if count == 1 { "" } else { "s" };
    format!("{count} {what}{ending}")
}

/// The first three of `items`, and how many more there are.
pub(super) fn first_few(items: &[String]) -> String {
    match items {
        [first @ .., _] if items.len() > 3 => {
            format!("{} and {} more", first[..3].join(", "), items.len() - 3)
        }
        all => all.join(", "),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_plain_text_passes() {
        assert_eq!(plain_text("\u{feff}a,b\r\n"), Ok("a,b\r\n"));
        assert_eq!(plain_text(" \r\n\t"), Err(TextError::Empty));
        assert_eq!(plain_text("PK\u{3}\u{4}\u{14}\0\u{6}"), Err(TextError::Binary));
        assert_eq!(plain_text(&"\u{fffd}\u{1}a".repeat(50)), Err(TextError::Binary));
        assert_eq!(plain_text(&"a".repeat(20_000_001)), Err(TextError::TooLarge(21)));
        assert!(plain_text("Chambre d'\u{fffd}t\u{fffd}, relev\u{fffd} d'un hygrom\u{fffd}tre; température; humidité; point de rosée; heure du relevé; pièce; remarques").is_ok());
    }

    #[test]
    fn lists_are_cut_short() {
        let items = ["a", "b", "c", "d", "e"].map(str::to_owned);
        assert_eq!(first_few(&items[..3]), "a, b, c");
        assert_eq!(first_few(&items), "a, b, c and 2 more");
        assert_eq!(counted(1_usize, "hour"), "1 hour");
    }
}
