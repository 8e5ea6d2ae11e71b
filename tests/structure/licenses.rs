//! The licenses of the libraries that the program is built from.

use super::root;

#[test]
fn every_library_told_of_is_one_of_ours_with_its_license() {
    let lock = std::fs::read_to_string(root().join("Cargo.lock")).unwrap();
    let mut rows = csv::Reader::from_path(root().join("assets/licenses.csv")).unwrap();
    let rows: Vec<csv::StringRecord> = rows.records().map(Result::unwrap).collect();
    assert!(rows.len() > 300, "{} libraries: run tests/structure/licenses.py", rows.len());
    for row in &rows {
        let locked = format!("name = \"{}\"\nversion = \"{}\"\n", &row[0], &row[1]);
        assert!(lock.contains(&locked), "{} {}: run tests/structure/licenses.py", &row[0], &row[1]);
        assert!(!row[2].is_empty(), "{} has no license", &row[0]);
    }
    // What the manifest names is among them.
    let manifest = std::fs::read_to_string(root().join("Cargo.toml")).unwrap();
    let own = manifest.split("[dependencies]").nth(1).unwrap().split("[dev-dependencies]").next().unwrap();
    let names = own.lines().filter_map(|line| line.split_once(" = ").map(|(name, _)| name.trim()));
    for name in names.filter(|name| name.chars().all(|c| c.is_alphanumeric() || "-_".contains(c))) {
        assert!(rows.iter().any(|row| row[0] == *name), "{name}: run tests/structure/licenses.py");
    }
}
