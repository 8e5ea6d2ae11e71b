//! Corners out of a CSV table: `x, y` or `outline, x, y`, with or without a line of headings.

use std::collections::HashMap;

use csv::StringRecord;

use super::ring::Draft;
use super::{FileFormat, FileUnit, FormatFault, LineRule, OutlineError, OutlinesRead, Point};

/// Numbers beyond this are no lengths in any unit.
const GREATEST: f64 = 1e12;

/// Longer lines are no rows, in bytes.
const LONGEST: usize = 2_000;

/// Which column holds what.
struct Columns {
    name: Option<usize>,
    x: usize,
    y: usize,
    /// The unit in the headings, such as in `x (mm)`.
    unit: Option<FileUnit>,
}

/// One row, and where it is from.
struct Row {
    record: StringRecord,
    line: usize,
    separator: u8,
}

/// Reads the outlines of a table. One without a column of names is called `stem`.
pub(super) fn read(text: &str, stem: &str, assume: FileUnit) -> Result<OutlinesRead, OutlineError> {
    let mut separator = None;
    let mut draft = Draft::new(stem);
    let mut outlines: Vec<(String, Vec<Point>)> = Vec::new();
    let mut known: HashMap<String, usize> = HashMap::new();
    let mut columns: Option<Columns> = None;
    for (line, text) in (1..).zip(text.lines()) {
        // Spreadsheets fill up with empty rows, and some put a line such as `sep=;` first.
        if text.chars().all(|c| c.is_whitespace() || ",;\"".contains(c)) || is_hint(text) {
            continue;
        }
        let separator = *separator.get_or_insert_with(|| separator_of(text));
        let row = Row::new(text, line, separator)?;
        if columns.is_none() {
            let (found, heading) = row.columns()?;
            columns = Some(found);
            if heading {
                continue;
            }
        }
        let Some(columns) = &columns else { continue };
        draft.count_points(1)?;
        let corner = row.corner(columns)?;
        let name = columns.name.and_then(|at| row.record.get(at)).unwrap_or(stem);
        let index = *known.entry(name.to_owned()).or_insert(outlines.len());
        if index == outlines.len() {
            outlines.push((name.to_owned(), Vec::new()));
        }
        outlines[index].1.push(corner);
    }
    let from_file = columns.and_then(|columns| columns.unit);
    let unit = from_file.unwrap_or(assume);
    for (name, corners) in outlines {
        let ring: Vec<Point> = corners.iter().map(|c| c.map(|v| v * unit.meters())).collect();
        draft.add(&name, &ring)?;
    }
    draft.finish(unit, from_file.is_some())
}

fn is_hint(line: &str) -> bool {
    line.get(..4).is_some_and(|start| start.eq_ignore_ascii_case("sep="))
}

/// What separates the columns, by the first row.
fn separator_of(first: &str) -> u8 {
    [b';', b'\t'].into_iter().find(|sign| first.as_bytes().contains(sign)).unwrap_or(b',')
}

impl Row {
    /// The fields of a line. No name has a line break in it, so every line is a row.
    fn new(text: &str, line: usize, separator: u8) -> Result<Self, OutlineError> {
        if text.len() > LONGEST {
            return Err(OutlineError::line(line, text, LineRule::RowTooLong));
        }
        let mut record = StringRecord::new();
        csv::ReaderBuilder::new()
            .delimiter(separator)
            .has_headers(false)
            .trim(csv::Trim::All)
            .buffer_capacity(LONGEST)
            .from_reader(text.as_bytes())
            .read_record(&mut record)
            .map_err(|error| {
                let fault = FormatFault::Broken { line: Some(line), reason: error.to_string() };
                OutlineError::Unread { format: FileFormat::Csv, fault }
            })?;
        Ok(Self { record, line, separator })
    }

    /// What the columns hold by this row, the first, and whether it is their headings.
    fn columns(&self) -> Result<(Columns, bool), OutlineError> {
        let first = &self.record;
        let filled = (1..=first.len()).rfind(|&count| !first[count - 1].is_empty()).unwrap_or(0);
        let (name, x, y) = match filled {
            2 => (None, 0, 1),
            3 => (Some(0), 1, 2),
            _ => return Err(self.error(LineRule::Columns)),
        };
        let plain = Columns { name, x, y, unit: None };
        if first[x].is_empty() || [x, y].iter().any(|&c| self.number(&first[c]).is_some()) {
            return Ok((plain, false));
        }
        let place = |sign| {
            let find = |(index, field)| Some((index, heading_unit(field, sign)?));
            first.iter().enumerate().find_map(find)
        };
        let (Some((x, x_unit)), Some((y, y_unit))) = (place('x'), place('y')) else {
            return Ok((plain, true));
        };
        if x_unit != y_unit {
            return Err(self.error(LineRule::OneUnit));
        }
        let name = (0..filled).find(|index| ![x, y].contains(index));
        Ok((Columns { name, x, y, unit: x_unit }, true))
    }

    fn corner(&self, columns: &Columns) -> Result<Point, OutlineError> {
        let last = columns.x.max(columns.y).max(columns.name.unwrap_or(0));
        if self.record.iter().skip(last + 1).any(|field| !field.is_empty()) {
            return Err(self.error(LineRule::SameColumns));
        }
        let read = |column| {
            let field = self.record.get(column).unwrap_or_default();
            self.number(field).ok_or_else(|| OutlineError::line(self.line, field, LineRule::Coordinate))
        };
        Ok([read(columns.x)?, read(columns.y)?])
    }

    /// A number with a decimal point, or a comma where commas do not separate the columns.
    fn number(&self, field: &str) -> Option<f64> {
        let plain = if self.separator == b',' { field.to_owned() } else { field.replace(',', ".") };
        // `parse` also takes "inf" and "nan".
        let value: f64 = plain.trim().parse().ok()?;
        (value.abs() <= GREATEST).then_some(value)
    }

    fn error(&self, rule: LineRule) -> OutlineError {
        let shown = self.record.iter().take(8).collect::<Vec<_>>().join(" | ");
        OutlineError::line(self.line, &shown, rule)
    }
}

/// The unit in a heading for `sign`, such as `x`, `X (mm)` or `x_mm`; nothing if it is another.
fn heading_unit(heading: &str, sign: char) -> Option<Option<FileUnit>> {
    let rest = heading.to_ascii_lowercase();
    let rest = rest.strip_prefix(sign)?.trim_matches(|c: char| !c.is_alphanumeric());
    if rest.is_empty() { Some(None) } else { FileUnit::of_sign(rest).map(Some) }
}

#[cfg(test)]
mod tests {
    use super::*;

    const MM: FileUnit = FileUnit::Millimeters;

    fn refusal(text: &str) -> OutlineError {
        read(text, "room", MM).unwrap_err()
    }

    fn wrong(line: usize, found: &str, rule: LineRule) -> OutlineError {
        OutlineError::Line { line, found: found.to_owned(), rule }
    }

    #[test]
    fn decimal_commas_need_another_separator() {
        let read = read("x;y\n0;0\n1500,5;0\n1500,5;2000\n", "room", MM).unwrap();
        assert_eq!(read.outlines[0].ring[1], [1.5005, 0.0]);
        assert_eq!(refusal("0,0,0,0\n1,5,0,0\n"), wrong(1, "0 | 0 | 0 | 0", LineRule::Columns));
    }

    #[test]
    fn headings_may_change_the_order_and_give_the_unit() {
        let read = read("Y [cm]\tx_cm\tRoom\n0\t0\thall\n0\t400\thall\n300\t400\thall\n", "f", MM).unwrap();
        assert_eq!((read.unit, read.unit_from_file), (FileUnit::Centimeters, true));
        assert_eq!(read.outlines[0].name, "hall");
        assert_eq!(read.outlines[0].ring, [[0.0, 0.0], [4.0, 0.0], [4.0, 3.0]]);
        assert_eq!(refusal("x (mm),y (cm)\n1,2"), wrong(1, "x (mm) | y (cm)", LineRule::OneUnit));
    }

    #[test]
    fn empty_rows_and_old_line_ends_do_no_harm() {
        let read =
            super::super::read_outlines("a.csv", b"x,y\r,\r0,0\r4,0\r\r4,3\r,,", FileUnit::Meters).unwrap();
        assert_eq!(read.outlines[0].ring, [[0.0, 0.0], [4.0, 0.0], [4.0, 3.0]]);
    }

    #[test]
    fn errors_name_the_line() {
        let coordinate = LineRule::Coordinate;
        assert_eq!(refusal("sep=,\n\nx,y\n0,0\n\n10,ten\n"), wrong(6, "ten", coordinate));
        assert_eq!(refusal("x,y\r\n0,0\r\n10 mm,5\r\n"), wrong(3, "10 mm", coordinate));
        assert_eq!(refusal("x,y\n0,0\n1,2,3\n"), wrong(3, "1 | 2 | 3", LineRule::SameColumns));
        assert_eq!(refusal("x,y\n0,0\n1\n"), wrong(3, "", coordinate));
        assert_eq!(refusal("0,inf\n"), wrong(1, "inf", coordinate));
    }
}
