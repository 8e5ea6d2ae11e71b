//! The arrows between modules point one way, and only the modules meant to touch the window or
//! files do.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

use std::fs;
use std::path::{Path, PathBuf};

/// The modules, each of which may use only those before it.
const ORDER: [&str; 14] = [
    "measure", "wood", "air", "surface", "survey", "joint", "cause", "repair", "job", "assess", "words",
    "papers", "export", "app",
];

fn sources(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(sources(&path));
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
    found
}

/// The text of a module's sources without its tests and comments.
fn code(module: &str) -> Vec<(PathBuf, String)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src").join(module);
    let files = sources(&folder).into_iter().map(|path| {
        let text = fs::read_to_string(&path).unwrap();
        let code = text.split("#[cfg(test)]").next().unwrap_or_default();
        let lines: Vec<&str> = code.lines().filter(|line| !line.trim_start().starts_with("//")).collect();
        (path, lines.join("\n"))
    });
    files.collect()
}

#[test]
fn modules_use_only_those_before_them() {
    for (place, module) in ORDER.iter().enumerate() {
        for (path, code) in code(module) {
            for later in &ORDER[place + 1..] {
                let uses = code.contains(&format!("crate::{later}"));
                assert!(!uses, "{} uses {later}, which comes after {module}", path.display());
            }
        }
    }
}

#[test]
fn only_the_window_knows_the_window_and_few_touch_files() {
    for module in ORDER {
        for (path, code) in code(module) {
            let window = code.contains("egui");
            assert!(module == "app" || !window, "{} knows egui", path.display());
            let files = code.contains("std::fs") || code.contains("std::env");
            assert!(
                ["job", "papers", "export", "app"].contains(&module) || !files,
                "{} touches files or the environment",
                path.display()
            );
        }
    }
}
