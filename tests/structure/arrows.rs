//! The arrows between modules point one way, and only the modules meant to touch the window or
//! files do.

use std::path::PathBuf;

use super::{code, files, root};

/// The modules, each of which may use only those before it.
const ORDER: [&str; 15] = [
    "measure", "wood", "air", "surface", "survey", "joint", "cause", "repair", "job", "assess", "words",
    "papers", "export", "cli", "app",
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

/// The modules that work results out. Above `assess` their types are shown and none of their functions
/// is called.
const KERNELS: [&str; 6] = ["wood", "air", "survey", "joint", "cause", "repair"];

/// Reading the files of others is no working out.
const READERS: [&str; 5] = ["guess_logger", "read_logger", "read_weather", "is_typical_year", "date_of_hour"];

#[test]
fn window_papers_and_command_line_call_no_kernel() {
    for module in ["words", "papers", "export", "cli", "app"] {
        for (path, code) in code_of(module) {
            for kernel in KERNELS {
                for name in functions(&code, &format!("crate::{kernel}::")) {
                    assert!(READERS.contains(&name.as_str()), "{} calls {kernel}::{name}", path.display());
                }
            }
        }
    }
}

/// The functions that a code takes from a module: names in lower case that no path goes on from.
fn functions(code: &str, from: &str) -> Vec<String> {
    let mut names = Vec::new();
    for (at, _) in code.match_indices(from) {
        let rest = &code[at + from.len()..];
        let items = match rest.strip_prefix('{') {
            Some(list) => list.split('}').next().unwrap_or_default(),
            None => rest
                .split(|c: char| !(c.is_alphanumeric() || c == '_' || c == ':'))
                .next()
                .unwrap_or_default(),
        };
        for item in items.split(',').map(str::trim) {
            let last = item.rsplit("::").next().unwrap_or_default();
            if last.starts_with(|c: char| c.is_lowercase()) && last != "self" {
                names.push(last.to_owned());
            }
        }
    }
    names
}
