//! Why a file cannot be read, or not be written.

/// Why the outlines of a file cannot be read or written.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum OutlineError {
    /// Its ending is none of those known.
    #[error("“{0}” is of no kind that is read. Choose a drawing as .dxf or .svg, or corners as .csv")]
    Kind(String),
    /// Nothing in it but blanks.
    #[error("The file is empty. Choose another, or save it once more where it came from")]
    Empty,
    /// Megabytes beyond the limit.
    #[error("The file has {0} MB, but no more than 20 MB are read. Save only the outlines of the rooms")]
    TooLarge(usize),
    /// It is no text.
    #[error("The file {what}. {way}")]
    NotText {
        /// What it is instead.
        what: &'static str,
        /// What to do.
        way: &'static str,
    },
    /// Something in one line is not as it must be.
    #[error("Line {line}: “{found}” {rule}. {way}")]
    Line {
        /// The line, from 1.
        line: usize,
        /// What is there.
        found: String,
        /// What it goes against.
        rule: &'static str,
        /// What to do.
        way: &'static str,
    },
    /// More corners than are read.
    #[error(
        "The file has more than {most} corners. Keep only the outlines of the rooms in it",
        most = super::MOST_POINTS
    )]
    TooManyPoints,
    /// More outlines than are read.
    #[error(
        "The file has more than {most} outlines. Keep only those of the rooms in it",
        most = super::MOST_OUTLINES
    )]
    TooManyOutlines,
    /// Nothing is left that could be a room. The notes say what there was.
    #[error("There is no closed outline in the file{why}. Draw each room as one closed line", why = because(.0))]
    NoOutline(Vec<String>),
    /// The library for the format gave up.
    #[error("The file cannot be read: {0}. Save it once more as {1}, or give the corners as .csv")]
    Unread(String, &'static str),
    /// A shape cannot be written.
    #[error("A shape on layer “{layer}” cannot be written: {rule}. Leave it out, or mend it first")]
    NoShape {
        /// Its layer.
        layer: String,
        /// What it goes against.
        rule: &'static str,
    },
    /// The library for the format would not write.
    #[error("The drawing cannot be written: {0}. Nothing was saved")]
    Unwritten(String),
}

impl OutlineError {
    /// An error in one line, with no more of what was found there than fits a message.
    pub(super) fn line(line: usize, found: &str, rule: &'static str, way: &'static str) -> Self {
        let mut short: String = found.trim().chars().take(40).filter(|c| !c.is_control()).collect();
        if found.trim().chars().count() > 40 {
            short.push('…');
        }
        Self::Line { line, found: short, rule, way }
    }
}

/// The notes as the end of a sentence.
fn because(notes: &[String]) -> String {
    if notes.is_empty() { String::new() } else { format!(": {}", notes.join("; ")) }
}
