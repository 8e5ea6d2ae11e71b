//! The arrows between modules point one way, and only the modules meant to touch the window or
//! files do.

use std::path::PathBuf;

use super::{code, files, root};

/// The modules, each of which may use only those before it.
const ORDER: [&str; 14] = [
    "measure", "wood", "air", "surface", "survey", "joint", "cause", "repair", "job", "assess", "words",
    "papers", "export", "app",
];

/// The files of a module with their code.
fn code_of(module: &str) -> Vec<(PathBuf, String)> {
    let folder = root().join("src").join(module);
    files(&folder, "rs").into_iter().map(|path| (path.clone(), code(&path))).collect()
}

#[test]
fn modules_use_only_those_before_them() {
    for (place, module) in ORDER.iter().enumerate() {
        for (path, code) in code_of(module) {
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
        for (path, code) in code_of(module) {
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
