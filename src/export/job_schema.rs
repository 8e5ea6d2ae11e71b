//! The JSON Schema of job files in JSON, for editors and other programs that write jobs.
//!
//! Its shape comes from the types of the job. Titles, hints and ranges come from the table of fields and its
//! labels, put in at each field's place, so that the schema asks for what the window asks for.

use schemars::schema_for;
use serde_json::{Map, Number, Value, json};

use crate::job::fields::{self, FIELDS, Field, Figure, Kind};
use crate::job::{Catalog, Job};
use crate::measure::{Quantity, Units};
use crate::named::Named;
use crate::words::{Words, say};

/// The JSON Schema (draft 2020-12) of a job's file in JSON, indented, with a line feed at its end.
///
/// A figure out of its range does not keep to the schema; the program still reads it, says so, and works
/// with the nearest that can be or without it.
///
/// # Errors
/// Never in practice: a schema is plain JSON.
pub fn job_schema() -> serde_json::Result<String> {
    let mut schema = schema_for!(Job).to_value();
    let words = Words::us_english(Units::Inches, "$");
    for field in FIELDS.iter() {
        let said = said_of(field, &words);
        for place in places(&schema, field.path) {
            if let Some(Value::Object(at)) = schema.pointer_mut(&place) {
                add(at, &said);
            }
        }
    }
    Ok(serde_json::to_string_pretty(&schema)? + "\n")
}

/// Sentences in a line; a hint of one sentence comes without its period.
fn joined(sentences: &[String]) -> String {
    let ended = sentences.iter().map(|sentence| format!("{}.", sentence.trim_end_matches('.')));
    ended.collect::<Vec<_>>().join(" ")
}

/// What the table of fields says of one, as keywords of a schema.
fn said_of(field: &Field, words: &Words) -> Map<String, Value> {
    let mut said = Map::new();
    said.insert("title".to_owned(), field.label(words).into());
    let mut sentences: Vec<String> = field.hint(words).into_iter().collect();
    let range = |low, high| say!(words, "schema-range", low = low, high = high);
    match &field.kind {
        Kind::Figure(figure) => match bounds(figure) {
            Some((low, high)) => {
                said.insert("minimum".to_owned(), low.into());
                said.insert("maximum".to_owned(), high.into());
            }
            None => sentences.push(range(figure.low, figure.high)),
        },
        Kind::Figures(figures) => sentences.push(range(figures.low, figures.high)),
        Kind::Catalog => {
            said.insert("examples".to_owned(), ids(field).into());
        }
        Kind::Text | Kind::Date | Kind::Choice | Kind::File | Kind::List => {}
    }
    if !sentences.is_empty() {
        said.insert("description".to_owned(), joined(&sentences).into());
    }
    said
}

/// Puts keywords into a part of the schema; a description goes after the one that is there.
fn add(at: &mut Map<String, Value>, said: &Map<String, Value>) {
    // A place may be found by its coordinates too: ids stand where text stands.
    let text = at.get("type").is_some_and(|kind| kind == "string");
    for (key, value) in said.iter().filter(|(key, _)| text || *key != "examples") {
        let before = at.get(key).and_then(Value::as_str).filter(|_| key == "description");
        let both = before.zip(value.as_str()).map(|(before, value)| {
            let stop = if before.ends_with(['.', '!', '?']) { "" } else { "." };
            format!("{before}{stop} {value}").into()
        });
        at.insert(key.clone(), both.unwrap_or_else(|| value.clone()));
    }
}

/// The range of a figure as numbers of the file; `None` if the file has it as text.
fn bounds(figure: &Figure) -> Option<(Number, Number)> {
    number(figure.low).zip(number(figure.high))
}

/// A figure as the number that stands in the file; `None` if text stands there.
fn number(figure: Quantity) -> Option<Number> {
    match figure {
        Quantity::Count(whole) | Quantity::Days(whole) | Quantity::Years(whole) => Some(whole.into()),
        Quantity::Year(year) => Some(year.into()),
        Quantity::Number(value) | Quantity::MoistureLoad(value) => Number::from_f64(value),
        Quantity::Percent(percent) => Number::from_f64(percent.to_pct()),
        Quantity::Moisture(moisture) => Number::from_f64(moisture.to_pct()),
        Quantity::Humidity(humidity) => Number::from_f64(humidity.to_fraction()),
        Quantity::Temperature(temperature) => Number::from_f64(temperature.to_celsius()),
        Quantity::Angle(angle) => Number::from_f64(angle.to_degrees()),
        Quantity::Hours(hours) | Quantity::TimeOfDay(hours) => Number::from_f64(hours.to_h()),
        Quantity::Minutes(minutes) => Number::from_f64(minutes.to_minutes()),
        Quantity::Length(_) | Quantity::RoomLength(_) | Quantity::Money(_) => None,
    }
}

/// Ids of the catalog's entries that a field may name; an entry of the user's own may be named too.
fn ids(field: &Field) -> Vec<Value> {
    fn of<T: Named>(entries: &[T]) -> Vec<Value> {
        entries.iter().map(|entry| json!(entry.id())).collect()
    }
    let catalog = Catalog::built_in();
    match field {
        _ if *field == fields::SPECIES => of(&catalog.species),
        _ if *field == fields::PLACE => of(&catalog.stations),
        _ if *field == fields::SEALANT => of(&catalog.sealants),
        _ => of(&catalog.paints),
    }
}

/// Where the parts of a schema stand that a field's path means, as JSON pointers.
fn places(schema: &Value, path: &str) -> Vec<String> {
    let mut places = vec![String::new()];
    for step in path.split('.') {
        let (names, list) = step.strip_suffix("[]").map_or((step, false), |names| (names, true));
        let found = places.iter().flat_map(|place| {
            names.split('|').flat_map(|name| inside(schema, place, &format!("properties/{name}")))
        });
        places = found.collect();
        if list {
            places = places.iter().flat_map(|place| inside(schema, place, "items")).collect();
        }
    }
    places.sort();
    places.dedup();
    places
}

/// Where `keyword` stands in a part of the schema, in what it refers to, or in one of its choices.
fn inside(schema: &Value, place: &str, keyword: &str) -> Vec<String> {
    let Some(part) = schema.pointer(place) else { return vec![] };
    let own = format!("{place}/{keyword}");
    let mut found: Vec<String> = schema.pointer(&own).map(|_| own).into_iter().collect();
    if let Some(referred) = part.get("$ref").and_then(Value::as_str).and_then(|to| to.strip_prefix('#')) {
        found.extend(inside(schema, referred, keyword));
    }
    for choice in ["oneOf", "anyOf", "allOf"] {
        let count = part.get(choice).and_then(Value::as_array).map_or(0, Vec::len);
        found.extend((0..count).flat_map(|at| inside(schema, &format!("{place}/{choice}/{at}"), keyword)));
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_field_has_its_place_and_no_two_ranges_meet_there() {
        let schema = schema_for!(Job).to_value();
        let mut ranges: Vec<(String, &Field)> = Vec::new();
        for field in FIELDS.iter() {
            let places = places(&schema, field.path);
            assert!(!places.is_empty(), "{} has no place at {}", field.id, field.path);
            for place in places {
                let other = ranges.iter().find(|(known, _)| *known == place);
                // Boards stand in sections and in a next install: what can be is alike for both.
                let alike = other.is_none_or(|(_, other)| match (other.figure(), field.figure()) {
                    (Some(other), Some(own)) => (other.low, other.high) == (own.low, own.high),
                    (None, None) => true,
                    _ => false,
                });
                assert!(alike, "{} and {:?} stand at {place}", field.id, other.map(|(_, o)| o.id));
                ranges.push((place, field));
            }
        }
    }

    /// The schema allows just what the table of fields allows: a number at either end, none beyond it.
    #[test]
    fn ranges_and_labels_stand_in_the_schema() {
        let schema: Value = serde_json::from_str(&job_schema().expect("a schema")).expect("JSON");
        let at = |path: &str| {
            let places = places(&schema, path);
            schema.pointer(&places[0]).cloned().expect("a place that was found")
        };
        let crew = at("plan.crew");
        assert_eq!((&crew["minimum"], &crew["maximum"]), (&json!(1), &json!(50)));
        let humidity = at("survey.rooms[].humidity");
        assert_eq!((&humidity["minimum"], &humidity["maximum"]), (&json!(0.0), &json!(1.0)));
        let heat = at("air.FromClimate|FromPlace|FromWeather.house.heat_to");
        assert_eq!((&heat["minimum"], &heat["maximum"]), (&json!(-30.0), &json!(60.0)));
        let face = at("surfaces[].sections[].board.face_width");
        assert!(face["description"].as_str().is_some_and(|said| said.contains("1/4")), "{face}");
        assert!(face.get("minimum").is_none());
        let sealant = at("plan.sealant");
        assert!(sealant["examples"].as_array().is_some_and(|ids| ids.contains(&json!("hybrid-50"))));
        assert_eq!(sealant["title"], "Sealant");
    }
}
