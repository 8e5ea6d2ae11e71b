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

/// What begins like a formula is text to a spreadsheet, in every table and whatever it begins with (the list of signs:
/// OWASP, CSV injection, from memory).
#[test]
fn no_name_is_a_formula() {
    const SIGNS: [&str; 8] = ["=", "+", "-", "@", "\\t", "\\r", "\\n", "＝"];
    let folder = TempDir::new().unwrap();
    let text = fs::read_to_string(example("tea_room")).unwrap();
    for sign in SIGNS {
        let name = format!("{sign}HYPERLINK(1)");
        let named = text
            .replace("\"South slope\"", &format!("\"{name}\""))
            .replace("title: \"", &format!("title: \"{name}"));
        assert_eq!(named.matches(&name).count(), text.matches("\"South slope\"").count() + 1, "{sign}");
        let jobs = folder.path().join("jobs");
        fs::create_dir_all(&jobs).unwrap();
        let job = jobs.join("=1.ron");
        fs::write(&job, named).unwrap();
        let written = folder.path().join("out");
        printed(&on(&job, "export", &["--out", written.to_str().unwrap()]));
        let mut tables: Vec<(String, String)> = ["joints", "year", "tasks", "materials"]
            .map(|table| {
                (table.to_owned(), fs::read_to_string(written.join(format!("{table}.csv"))).unwrap())
            })
            .into();
        tables.push(("folder".to_owned(), out(&on(&jobs, "assess", &[])).to_owned()));
        for (table, text) in tables {
            let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(text.as_bytes());
            let cells: Vec<String> = reader
                .records()
                .flat_map(|row| row.unwrap().iter().map(str::to_owned).collect::<Vec<_>>())
                .collect();
            let bad = |cell: &&String| {
                // A number may be below nothing; text that begins so may not.
                cell.starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝']) && cell.parse::<f64>().is_err()
            };
            assert_eq!(cells.iter().find(bad), None, "{table}");
            if ["joints", "folder"].contains(&&*table) {
                assert!(
                    cells.iter().any(|cell| cell.starts_with('\'') && cell.contains("HYPERLINK")),
                    "{table}"
                );
            }
        }
    }
}
