//! Reading the tables of numbers.

use std::collections::BTreeMap;

pub type Row = BTreeMap<String, String>;

pub fn rows(text: &str) -> Vec<Row> {
    csv::Reader::from_reader(text.as_bytes()).deserialize().map(Result::unwrap).collect()
}

/// The number in a column, nothing where the cell is empty.
pub fn number(row: &Row, column: &str) -> Option<f64> {
    match row[column].as_str() {
        "" => None,
        text => Some(text.parse().unwrap()),
    }
}

/// The cells of a table below its head, by position.
pub fn cells(text: &str) -> Vec<Vec<String>> {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    reader.records().map(|row| row.unwrap().iter().map(str::to_owned).collect()).collect()
}

/// Puts the tables of a test into DEVELOPERS.md if asked to. They are not held against it: their last digits differ
/// from processor to processor.
pub fn write_tables(test: &str, tables: &str) {
    const TO: &str = "<!-- to here -->";
    if std::env::var_os("UPDATE_NUMBERS").is_none() {
        return;
    }
    let from = format!("<!-- written by tests/numbers/{test}.rs -->\n\n");
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("DEVELOPERS.md");
    let page = std::fs::read_to_string(&path).unwrap();
    let start = page.find(&from).unwrap() + from.len();
    let end = start + page[start..].find(TO).unwrap();
    std::fs::write(&path, format!("{}{tables}\n{}", &page[..start], &page[end..])).unwrap();
}
