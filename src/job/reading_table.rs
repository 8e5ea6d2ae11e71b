//! Readings out of a table another program made: gaps and moisture as CSV, or as JSON in the form of job files.
//!
//! A CSV has a line of headings; columns may stand in any order, and those that are not known are left alone. Lengths,
//! temperatures and dates are read as they are typed in the window.

use std::collections::HashMap;

use csv::StringRecord;
use jiff::civil::Date;

use crate::measure::{
    EntryError, EntryRule, Moisture, Quantity, Temperature, Units, parse_date, parse_length, parse_number,
};
use crate::survey::{Failure, GapReading, MeterSetting, MoistureReading};

/// A row that cannot be used, or a table.
#[derive(Debug, Clone, PartialEq)]
pub struct TableFault {
    /// The line of the file, from 1.
    pub line: usize,
    /// What is wrong.
    pub what: TableRule,
}

/// What a table or a row can be wrong by.
#[derive(Debug, Clone, PartialEq)]
pub enum TableRule {
    /// The headings lack this column.
    NoColumn(&'static str),
    /// The row has nothing in this column.
    Empty(&'static str),
    /// What stands in this column is no such figure or date.
    Entry(&'static str, EntryError),
    /// What stands in this column is none of these.
    Choice {
        /// The column.
        column: &'static str,
        /// What stands there.
        text: String,
        /// What may stand there.
        choices: Vec<&'static str>,
    },
    /// It is no CSV or no JSON, for this reason.
    Form(String),
}

/// A table's rows with the places of its columns.
struct Table {
    columns: HashMap<String, usize>,
    rows: Vec<(usize, StringRecord)>,
}

impl Table {
    fn read(text: &str) -> Result<Self, TableFault> {
        let text = text.trim_start_matches('\u{feff}');
        let separator = if text.lines().next().is_some_and(|line| line.contains(';')) { b';' } else { b',' };
        let mut reader = csv::ReaderBuilder::new()
            .delimiter(separator)
            .flexible(true)
            .trim(csv::Trim::All)
            .from_reader(text.as_bytes());
        let form = |error: &csv::Error| TableFault {
            line: error.position().map_or(1, |at| usize::try_from(at.line()).unwrap_or(usize::MAX)),
            what: TableRule::Form(error.to_string()),
        };
        let heads = reader.headers().map_err(|error| form(&error))?.clone();
        let named = heads.iter().enumerate();
        let columns =
            named.map(|(at, head)| (head.to_ascii_lowercase().replace([' ', '-'], "_"), at)).collect();
        let mut rows = Vec::new();
        for record in reader.records() {
            let record = record.map_err(|error| form(&error))?;
            let line = record.position().map_or(0, |at| usize::try_from(at.line()).unwrap_or(usize::MAX));
            // Spreadsheets fill up with empty rows.
            if record.iter().any(|cell| !cell.is_empty()) {
                rows.push((line, record));
            }
        }
        Ok(Self { columns, rows })
    }

    /// The table, if it has these columns.
    fn with(text: &str, needed: &[&'static str]) -> Result<Self, Vec<TableFault>> {
        let table = Self::read(text).map_err(|fault| vec![fault])?;
        let missing = needed.iter().filter(|column| !table.columns.contains_key(**column));
        let missing: Vec<TableFault> =
            missing.map(|column| TableFault { line: 1, what: TableRule::NoColumn(column) }).collect();
        if missing.is_empty() { Ok(table) } else { Err(missing) }
    }

    /// Every row as a reading, or what is wrong with each that is none.
    fn readings<T>(&self, one: impl Fn(&Row<'_>) -> Result<T, TableRule>) -> Result<Vec<T>, Vec<TableFault>> {
        let (mut good, mut bad) = (Vec::new(), Vec::new());
        for (line, record) in &self.rows {
            match one(&Row { table: self, record }) {
                Ok(reading) => good.push(reading),
                Err(what) => bad.push(TableFault { line: *line, what }),
            }
        }
        if bad.is_empty() { Ok(good) } else { Err(bad) }
    }
}

/// A row of a table.
struct Row<'a> {
    table: &'a Table,
    record: &'a StringRecord,
}

impl Row<'_> {
    /// What stands in a column; nothing where it is empty or not there.
    fn get(&self, column: &'static str) -> &str {
        self.table.columns.get(column).and_then(|at| self.record.get(*at)).unwrap_or_default()
    }

    fn needed(&self, column: &'static str) -> Result<&str, TableRule> {
        Some(self.get(column)).filter(|text| !text.is_empty()).ok_or(TableRule::Empty(column))
    }

    /// What stands in a column, else `usual`, which may be nothing only where there is no choice.
    fn named(&self, column: &'static str, usual: &str) -> Result<String, TableRule> {
        let text = if self.get(column).is_empty() { usual } else { self.get(column) };
        if text.is_empty() { Err(TableRule::Empty(column)) } else { Ok(text.to_owned()) }
    }

    fn date(&self, units: Units) -> Result<Option<Date>, TableRule> {
        let text = self.get("date");
        if text.is_empty() {
            return Ok(None);
        }
        parse_date(text, units).map(Some).map_err(|error| TableRule::Entry("date", error))
    }

    /// One of a few by its key; `usual` where the column is empty.
    fn choice<T: Copy>(
        &self,
        column: &'static str,
        all: &[T],
        key: impl Fn(T) -> &'static str,
        usual: T,
    ) -> Result<T, TableRule> {
        let text = self.get(column).to_ascii_lowercase().replace([' ', '-'], "_");
        if text.is_empty() {
            return Ok(usual);
        }
        all.iter().copied().find(|one| key(*one) == text).ok_or_else(|| TableRule::Choice {
            column,
            text: self.get(column).to_owned(),
            choices: all.iter().map(|one| key(*one)).collect(),
        })
    }
}

/// Gap readings out of a CSV with the columns `joint` and `gap`, and as wanted `surface`, `bead`, `date`, `at`.
/// `surface` is what a row without one is of; empty where there are several.
///
/// # Errors
/// What is wrong with each row that is no reading, or with the table.
pub fn read_gaps(text: &str, surface: &str, units: Units) -> Result<Vec<GapReading>, Vec<TableFault>> {
    if is_json(text) {
        return from_json(text);
    }
    let length = |column: &'static str, text: &str| {
        parse_length(text, units).map_err(|error| TableRule::Entry(column, error))
    };
    Table::with(text, &["joint", "gap"])?.readings(|row| {
        Ok(GapReading {
            surface: row.named("surface", surface)?,
            joint: row.needed("joint")?.to_owned(),
            at: Some(row.get("at"))
                .filter(|text| !text.is_empty())
                .map(|text| length("at", text))
                .transpose()?,
            width: length("gap", row.needed("gap")?)?,
            date: row.date(units)?,
            failed: row.choice("bead", &Failure::ALL, Failure::key, Failure::NotNoted)?,
            confirmed: None,
        })
    })
}

/// Meter readings out of a CSV with the columns `section` and `moisture`, in percent, and as wanted `surface`,
/// `board`, `wood_temperature`, `setting`, `date`.
///
/// # Errors
/// What is wrong with each row that is no reading, or with the table.
pub fn read_moistures(
    text: &str,
    surface: &str,
    units: Units,
) -> Result<Vec<MoistureReading>, Vec<TableFault>> {
    if is_json(text) {
        return from_json(text);
    }
    let usual = MoistureReading::default();
    Table::with(text, &["section", "moisture"])?.readings(|row| {
        let moisture = parse_number(row.needed("moisture")?.trim_end_matches('%').trim_end());
        Ok(MoistureReading {
            surface: row.named("surface", surface)?,
            section: row.needed("section")?.to_owned(),
            board: row.get("board").to_owned(),
            reading: Some(Moisture::pct(moisture.map_err(|error| TableRule::Entry("moisture", error))?)),
            setting: row.choice("setting", &MeterSetting::ALL, MeterSetting::key, usual.setting)?,
            wood: match row.get("wood_temperature") {
                "" => usual.wood,
                text => {
                    temperature(text, units).map_err(|error| TableRule::Entry("wood_temperature", error))?
                }
            },
            date: row.date(units)?,
        })
    })
}

/// A temperature: a bare number in the job's units, or with its unit, `64 F` or `18 °C`.
fn temperature(text: &str, units: Units) -> Result<Temperature, EntryError> {
    let number =
        text.trim().trim_end_matches(['F', 'C', 'f', 'c']).trim_end().trim_end_matches('°').trim_end();
    let units = match text.trim().chars().last() {
        Some('F' | 'f') => Units::Inches,
        Some('C' | 'c') => Units::Millimeters,
        _ => units,
    };
    match Quantity::Temperature(Temperature::celsius(0.0)).read_alike(number, units)? {
        Quantity::Temperature(temperature) => Ok(temperature),
        _ => Err(EntryError::new(text, EntryRule::NotANumber)),
    }
}

fn is_json(text: &str) -> bool {
    text.trim_start_matches('\u{feff}').trim_start().starts_with('[')
}

fn from_json<T: serde::de::DeserializeOwned>(text: &str) -> Result<Vec<T>, Vec<TableFault>> {
    serde_json::from_str(text.trim_start_matches('\u{feff}'))
        .map_err(|error| vec![TableFault { line: error.line(), what: TableRule::Form(error.to_string()) }])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::Length;

    #[test]
    fn gaps_are_read_as_they_are_typed() {
        let text = "Joint;Gap;bead;Date;note\r\nA 2;3/32;one side;2/14/2026;x\r\n;;;;\r\nA 5;0;whole;;\r\n";
        let gaps = read_gaps(text, "Ceiling", Units::Inches).unwrap();
        assert_eq!(gaps.len(), 2);
        assert_eq!((gaps[0].surface.as_str(), gaps[0].joint.as_str()), ("Ceiling", "A 2"));
        assert_eq!(gaps[0].width, Length::inches(3.0 / 32.0));
        assert_eq!(gaps[0].failed, Failure::LetGoOneSide);
        assert_eq!(gaps[0].date, Some(jiff::civil::date(2026, 2, 14)));
        assert_eq!((gaps[1].width, gaps[1].failed, gaps[1].date), (Length::ZERO, Failure::Whole, None));
    }

    /// By hand: 64 °F is 17.78 °C.
    #[test]
    fn temperatures_may_say_their_unit() {
        let text = "section,moisture,wood temperature,setting\nA,8.5%,64 F,other_species\nB,9,18,";
        let read = read_moistures(text, "Ceiling", Units::Millimeters).unwrap();
        assert!((read[0].wood.to_celsius() - 17.778).abs() < 1e-3, "{:?}", read[0].wood);
        assert_eq!(read[0].reading, Some(Moisture::pct(8.5)));
        assert_eq!(read[0].setting, MeterSetting::OtherSpecies);
        assert!((read[1].wood.to_celsius() - 18.0).abs() < 1e-9);
    }

    /// Every row that is wrong is told, with its line; none is taken then.
    #[test]
    fn each_fault_is_told_once_with_its_line() {
        let text = "surface,joint,gap,bead\n,A 1,1/16,\nWall,,1/16,\nWall,A 2,wide,\nWall,A 3,1/16,gone\n";
        let faults = read_gaps(text, "", Units::Inches).unwrap_err();
        let lines: Vec<usize> = faults.iter().map(|fault| fault.line).collect();
        assert_eq!(lines, [2, 3, 4, 5]);
        assert_eq!(faults[0].what, TableRule::Empty("surface"));
        assert_eq!(faults[1].what, TableRule::Empty("joint"));
        assert!(matches!(&faults[2].what, TableRule::Entry("gap", error) if error.text == "wide"));
        assert!(matches!(&faults[3].what, TableRule::Choice { text, .. } if text == "gone"));
        let none = read_gaps("joint,width\nA 1,1/16", "", Units::Inches).unwrap_err();
        assert_eq!(none, [TableFault { line: 1, what: TableRule::NoColumn("gap") }]);
    }

    #[test]
    fn json_is_read_in_the_form_of_job_files() {
        let text = r#"[{"surface": "Wall", "joint": "A 1", "width": "1/16 in", "failed": "PaintTorn"}]"#;
        let gaps = read_gaps(text, "", Units::Millimeters).unwrap();
        assert_eq!((gaps[0].width, gaps[0].failed), (Length::inches(1.0 / 16.0), Failure::PaintTorn));
        let broken = read_gaps("[{\"surface\": \"Wall\",\n\"joint\": 3}]", "", Units::Inches).unwrap_err();
        assert!(matches!(broken[..], [TableFault { line: 2, what: TableRule::Form(_) }]), "{broken:?}");
    }
}
