//! The shape of the house: arrows between modules, and words that stand in the catalogs and nowhere else.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

mod arrows;
mod licenses;
mod literals;
mod network;
mod words;

use std::fs;
use std::path::{Path, PathBuf};

/// The checkout.
fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// All files of a folder and those below it that end so.
fn files(folder: &Path, extension: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(files(&path, extension));
        } else if path.extension().is_some_and(|known| known == extension) {
            found.push(path);
        }
    }
    found.sort();
    found
}

/// The code of a source file: without its tests, and without comments.
fn code(path: &Path) -> String {
    let text = fs::read_to_string(path).unwrap();
    let code = text.split("#[cfg(test)]").next().unwrap_or_default();
    let lines = code.lines().filter(|line| !line.trim_start().starts_with("//"));
    lines.collect::<Vec<_>>().join("\n")
}
