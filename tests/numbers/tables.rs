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
