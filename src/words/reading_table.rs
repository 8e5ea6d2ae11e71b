//! What is wrong with a table of readings.

use super::{Arg, Say, Words, say};
use crate::job::{TableFault, TableRule};

impl TableFault {
    /// The fault with the name of the file and the line.
    pub fn line(&self, file: &str, words: &Words) -> String {
        say!(
            words,
            "reading-table-line",
            file = Arg::Name(file),
            line = &self.line.to_string(),
            what = &self.what.say(words)
        )
    }
}

impl Say for TableRule {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::NoColumn(column) => say!(words, "reading-table-no-column", column = Arg::Name(column)),
            Self::Empty(column) => say!(words, "reading-table-empty", column = Arg::Name(column)),
            Self::Entry(column, error) => {
                say!(words, "reading-table-entry", column = Arg::Name(column), what = &error.say(words))
            }
            Self::Choice { column, text, choices } => say!(
                words,
                "reading-table-choice",
                column = Arg::Name(column),
                text = Arg::Name(text),
                choices = &choices.join(", ")
            ),
            Self::Form(reason) => say!(words, "reading-table-form", reason = reason),
        }
    }
}
