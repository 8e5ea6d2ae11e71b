//! Jobs as JSON, for other programs: the same fields by the same names as in RON, choices with a value as
//! an object with one field.

use serde_json::{Map, Value};

use super::document::Job;
use super::lenient::{Fault, Format};
use super::problem::Unread;

/// The format that other programs read.
pub(super) const JSON: Format = Format { read: attempt, trailing_comma: false };

/// Whether a text is JSON: no job in RON begins with such a bracket.
pub(super) fn is_json(text: &str) -> bool {
    text.trim_start().starts_with('{')
}

/// The job as text, with fields that this program does not know, each by its name.
///
/// # Errors
/// If the job cannot be put into words.
pub(super) fn write(job: &Job, fields: Map<String, Value>) -> Result<String, serde_json::Error> {
    let mut value = serde_json::to_value(job)?;
    if let Value::Object(all) = &mut value {
        all.extend(fields);
    }
    Ok(serde_json::to_string_pretty(&value)? + "\n")
}

/// A field as it is written in a file: its name and its value.
pub(super) fn field(text: &str) -> Option<(String, Value)> {
    let Ok(Value::Object(fields)) = serde_json::from_str(&format!("{{{text}}}")) else { return None };
    fields.into_iter().next()
}

fn attempt(text: &str) -> Result<Job, Fault> {
    serde_json::from_str(text).map_err(|error| {
        let (line, column) = (error.line().max(1), error.column().max(1));
        // Columns are counted in bytes, up to and with the one that was read last.
        let start: usize = text.split_inclusive('\n').take(line - 1).map(str::len).sum();
        let at = text.floor_char_boundary((start + column - 1).min(text.len()));
        let column = 1 + text[start.min(at)..at].chars().count();
        Fault { line, column, at, reason: reason(&error) }
    })
}

/// What the reader of JSON met.
fn reason(error: &serde_json::Error) -> Unread {
    let text = error.to_string();
    let place = text.rfind(" at line ");
    let text = &text[..place.unwrap_or(text.len())];
    // The reader gives no more than a sentence; names stand in it between backticks.
    let about = |start: &str| text.strip_prefix(start)?.split('`').next().map(str::to_owned);
    let named = about("unknown field `")
        .map(Unread::UnknownField)
        .or_else(|| about("missing field `").map(Unread::MissingField))
        .or_else(|| about("duplicate field `").map(Unread::TwiceField))
        .or_else(|| about("unknown variant `").map(Unread::UnknownChoice));
    match named {
        Some(named) => named,
        None if error.is_eof() => Unread::Ends,
        None if text == "trailing characters" => Unread::Trailing,
        None => Unread::Other(text.to_owned()),
    }
}
