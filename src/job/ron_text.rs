//! Jobs as RON.

use super::document::Job;
use super::lenient::{Fault, Format, offset};
use super::problem::Unread;

/// The format that jobs are saved in.
pub(super) const RON: Format = Format { read: attempt, trailing_comma: true };

/// How files are read: a value that may be missing can stand there with or without `Some` around it,
/// as the first files had it and as people write it.
pub(super) fn lenient() -> ron::Options {
    ron::Options::default().with_default_extension(ron::extensions::Extensions::IMPLICIT_SOME)
}

/// The job as text.
///
/// # Errors
/// If the job cannot be put into words.
pub(super) fn write(job: &Job) -> Result<String, ron::Error> {
    let style = ron::ser::PrettyConfig::new().depth_limit(4).struct_names(true);
    Ok(ron::ser::to_string_pretty(job, style)? + "\n")
}

/// The text of a job with fields that this program does not know, as they are written in RON.
pub(super) fn with_fields(mut text: String, fields: &[String]) -> String {
    for field in fields {
        let end = text.rfind(')').unwrap_or(text.len());
        text.insert_str(end, &format!("    {field},\n"));
    }
    text
}

fn attempt(text: &str) -> Result<Job, Fault> {
    lenient().from_str::<Job>(text).map_err(|error| {
        let (line, column) = (error.span.start.line, error.span.start.col);
        Fault { line, column, at: offset(text, line, column), reason: reason(&error.code) }
    })
}

/// What the reader of RON met.
fn reason(error: &ron::Error) -> Unread {
    use ron::Error;
    match error {
        Error::NoSuchStructField { found, .. } => Unread::UnknownField(found.clone()),
        Error::MissingStructField { field, .. } => Unread::MissingField((*field).to_owned()),
        Error::DuplicateStructField { field, .. } => Unread::TwiceField((*field).to_owned()),
        Error::NoSuchEnumVariant { found, .. } => Unread::UnknownChoice(found.clone()),
        Error::Eof | Error::ExpectedStringEnd => Unread::Ends,
        Error::TrailingCharacters => Unread::Trailing,
        Error::ExpectedArray => Unread::Expected("list"),
        Error::ExpectedString => Unread::Expected("text"),
        Error::ExpectedBoolean => Unread::Expected("true-or-false"),
        Error::ExpectedComma => Unread::Expected("comma"),
        Error::ExpectedMapColon => Unread::Expected("colon"),
        Error::ExpectedIdentifier => Unread::Expected("name"),
        Error::ExpectedFloat
        | Error::ExpectedInteger
        | Error::FloatUnderscore
        | Error::IntegerOutOfBounds
        | Error::InvalidIntegerDigit { .. }
        | Error::UnderscoreAtBeginning => Unread::Expected("number"),
        Error::ExpectedArrayEnd
        | Error::ExpectedMapEnd
        | Error::ExpectedOptionEnd
        | Error::ExpectedStructLikeEnd => Unread::Expected("closing-bracket"),
        Error::ExpectedMap
        | Error::ExpectedOption
        | Error::ExpectedStructLike
        | Error::ExpectedNamedStructLike(_) => Unread::Expected("opening-bracket"),
        other => Unread::Other(other.to_string()),
    }
}
