//! Fields of a job's file that this program does not know: kept as they are written, in either format.
//!
//! A field of a RON file that is saved as JSON goes along as text under [`RON_FIELDS`], and the other way
//! round under [`JSON_FIELDS`]; saved as what it was, it stands again where it stood.

use serde_json::{Map, Value};

use super::json_text;

/// Fields of RON in a JSON file, a text for each.
const RON_FIELDS: &str = "unknown_ron";
/// Fields of JSON in a RON file, as the text of an object.
const JSON_FIELDS: &str = "unknown_json";

/// Whether a field is written as in JSON: its name is in quotes.
fn is_json(field: &str) -> bool {
    field.starts_with('"')
}

/// A field as it was cut out of a file, as the fields it stands for.
pub(super) fn read(cut: &str) -> Vec<String> {
    let field = cut.trim().trim_end_matches(',').trim_end().to_owned();
    let carried = if is_json(&field) { carried_ron(&field) } else { carried_json(&field) };
    carried.unwrap_or_else(|| vec![field])
}

fn carried_ron(field: &str) -> Option<Vec<String>> {
    let (name, value) = json_text::field(field)?;
    let list = (name == RON_FIELDS).then_some(value)?;
    list.as_array()?.iter().map(|text| text.as_str().map(str::to_owned)).collect()
}

fn carried_json(field: &str) -> Option<Vec<String>> {
    let text = field.strip_prefix(JSON_FIELDS)?.trim_start().strip_prefix(':')?;
    let object: String = ron::from_str(text.trim()).ok()?;
    let Ok(Value::Object(fields)) = serde_json::from_str(&object) else { return None };
    let written = fields.into_iter().map(|(name, value)| format!("{}: {value}", Value::String(name)));
    Some(written.collect())
}

/// The fields as they are written in RON.
///
/// # Errors
/// If a text cannot be put into RON.
pub(super) fn as_ron(fields: &[String]) -> Result<Vec<String>, ron::Error> {
    let (json, ron): (Vec<&String>, Vec<&String>) = fields.iter().partition(|field| is_json(field));
    let mut written: Vec<String> = ron.into_iter().cloned().collect();
    if !json.is_empty() {
        let object: Map<String, Value> = json.iter().filter_map(|field| json_text::field(field)).collect();
        written.push(format!("{JSON_FIELDS}: {}", ron::to_string(&Value::Object(object).to_string())?));
    }
    Ok(written)
}

/// The fields as they are written in JSON.
pub(super) fn as_json(fields: &[String]) -> Map<String, Value> {
    let (json, ron): (Vec<&String>, Vec<&String>) = fields.iter().partition(|field| is_json(field));
    let mut written: Map<String, Value> = json.iter().filter_map(|field| json_text::field(field)).collect();
    if !ron.is_empty() {
        written.insert(RON_FIELDS.to_owned(), ron.into_iter().cloned().map(Value::String).collect());
    }
    written
}
