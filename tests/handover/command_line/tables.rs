//! The tables of `joints` and `year`.

use super::json::says_its_unit;
use super::*;

type Row = BTreeMap<String, String>;

/// Header and rows of a table.
fn table(text: &str) -> (Vec<String>, Vec<Row>) {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let header = reader.headers().unwrap().iter().map(str::to_owned).collect();
    (header, reader.deserialize().map(Result::unwrap).collect())
}

/// The number in a cell, nothing where it is empty.
fn number(row: &Row, column: &str) -> Option<f64> {
    match row[column].as_str() {
        "" => None,
        cell => {
            let number: f64 = cell.parse().unwrap_or_else(|_| panic!("{column}: “{cell}” is no number"));
            assert!(number.is_finite(), "{column}: {cell}");
            Some(number)
        }
    }
}

#[test]
fn the_table_of_joints_is_that_of_the_report() {
    for name in EXAMPLES {
        let report = report(name);
        let (header, rows) = table(printed(&on(&example(name), "joints", &["--csv"])));
        assert_eq!(header[..4], ["surface", "section", "joint", "kind"], "{name}");
        assert_eq!(Some(rows.len() as u64), report["layout"]["joints"].as_u64(), "{name}");
        let run = |wanted: &dyn Fn(&Row) -> bool| -> f64 {
            let lengths = rows.iter().filter(|row| wanted(row)).filter_map(|row| number(row, "length_mm"));
            lengths.sum::<f64>() / 1000.0
        };
        let kind = |kind: &'static str| move |row: &Row| row["kind"] == kind;
        for (key, found) in [
            ("board_edge_m", run(&kind("board to board"))),
            ("board_end_m", run(&kind("board end"))),
            ("divider_m", run(&kind("board to divider"))),
            ("perimeter_m", run(&kind("perimeter"))),
            ("sealed_m", run(&|row| row["sealed"] == "true")),
        ] {
            let told = report["layout"][key].as_f64().unwrap();
            assert!((found - told).abs() < 1e-3, "{name}: {key} is {told}, the table's {found}");
        }
    }
}

#[test]
fn every_column_of_the_table_of_joints_says_its_unit() {
    let words = ["surface", "section", "joint", "kind", "measured", "sealed", "holds"];
    let (header, rows) = table(printed(&on(&example("tea_room"), "joints", &["--csv"])));
    for column in header.iter().filter(|column| !words.contains(&column.as_str())) {
        assert!(says_its_unit(column), "{column}");
        assert!(rows.iter().filter_map(|row| number(row, column)).count() > 0, "{column} is empty");
    }
    for row in &rows {
        for column in ["measured", "sealed", "holds"] {
            assert!(["true", "false"].contains(&row[column].as_str()), "{column}: {}", row[column]);
        }
        if let (Some(low), Some(high)) = (number(row, "narrowest_mm"), number(row, "widest_mm")) {
            assert!(low <= high, "{row:?}");
        }
    }
}

#[test]
fn the_year_has_a_row_for_each_day_from_the_visit() {
    for name in EXAMPLES {
        let report = report(name);
        let (header, rows) = table(printed(&on(&example(name), "year", &["--csv"])));
        let mut expected = ["date", "indoor_c", "indoor_rh_pct", "emc_pct"].map(str::to_owned).to_vec();
        for section in items(&report["sections"]) {
            let of = format!("{}/{}", text(&section["surface"]), text(&section["section"]));
            let columns = ["moisture_pct", "mean_gap_mm", "gap_low_mm", "gap_high_mm"];
            expected.extend(columns.map(|column| format!("{of} {column}")));
        }
        assert_eq!(header, expected, "{name}");
        assert!(header[1..].iter().all(|column| says_its_unit(column)), "{header:?}");
        assert_eq!(rows.len(), 365, "{name}");
        let mut day: Date = text(&report["visited"]).parse().unwrap();
        for row in &rows {
            assert_eq!(row["date"], day.to_string(), "{name}");
            assert!(header[1..].iter().all(|column| number(row, column).is_some()), "{name}: {row:?}");
            day = day.tomorrow().unwrap();
        }
    }
}

/// A name that begins like a formula is text to a spreadsheet.
#[test]
fn no_name_is_a_formula() {
    let folder = TempDir::new().unwrap();
    let job = folder.path().join("job.ron");
    let text = fs::read_to_string(example("tea_room")).unwrap();
    let named = text.replace("\"South slope\"", "\"=HYPERLINK(1)\"");
    assert_ne!(named, text);
    fs::write(&job, named).unwrap();
    for command in ["joints", "year"] {
        let output = on(&job, command, &["--csv"]);
        let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(out(&output).as_bytes());
        let cells: Vec<String> = reader
            .records()
            .flat_map(|row| row.unwrap().iter().map(str::to_owned).collect::<Vec<_>>())
            .collect();
        assert!(cells.iter().any(|cell| cell.starts_with("'=HYPERLINK")), "{command}");
        assert!(!cells.iter().any(|cell| cell.starts_with(['=', '@', '+'])), "{command}");
    }
}
