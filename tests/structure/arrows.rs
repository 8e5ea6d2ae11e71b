//! The arrows between modules point one way, and only the modules meant to touch the window or
//! files do.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use super::{code, files, root};

/// The modules, each of which may use only those before it.
const ORDER: [&str; 18] = [
    "named", "measure", "bead", "wood", "air", "surface", "survey", "joint", "belief", "ready", "repair",
    "job", "assess", "words", "papers", "export", "cli", "app",
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
const KERNELS: [&str; 7] = ["wood", "air", "survey", "joint", "belief", "ready", "repair"];

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

/// The files of `src/job`, each with those it uses, a folder counting as one.
fn uses_in_job() -> BTreeMap<String, BTreeSet<String>> {
    let folder = root().join("src/job");
    let part = |path: &Path| {
        let inside = path.strip_prefix(&folder).unwrap();
        inside.components().next().unwrap().as_os_str().to_string_lossy().trim_end_matches(".rs").to_owned()
    };
    let counts = |path: &PathBuf| part(path) != "mod" && !path.ends_with("tests.rs");
    let paths: Vec<PathBuf> = files(&folder, "rs").into_iter().filter(counts).collect();
    let parts: BTreeSet<String> = paths.iter().map(|path| part(path)).collect();
    // What `mod.rs` hands on, each name with the part it is from.
    let handed_on = code(&folder.join("mod.rs"));
    let handed_on: Vec<(&str, &str)> = handed_on
        .split("pub use ")
        .skip(1)
        .filter_map(|used| used.split(';').next()?.split_once("::"))
        .flat_map(|(part, names)| words(names).map(move |name| (name, part)))
        .collect();
    let mut uses: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for path in &paths {
        let (own, text) = (part(path), code(path));
        // Above a file of the folder itself stands `job`; above one deeper down, its own folder.
        let top = path.parent() == Some(&folder) || path.ends_with(format!("{own}/mod.rs"));
        let above = ["crate::job::", if top { "super::" } else { "crate::job::" }];
        let used = above.iter().flat_map(|above| text.split(*above).skip(1));
        for used in used {
            // A list in brackets, or one name.
            let names = used.strip_prefix('{').map_or_else(
                || used.split(|c: char| !c.is_alphanumeric() && c != '_').next().unwrap_or_default(),
                |list| list.split('}').next().unwrap_or_default(),
            );
            for name in words(names) {
                let from = handed_on.iter().find(|(known, _)| *known == name).map(|(_, part)| *part);
                let from = from.unwrap_or(name);
                if parts.contains(from) && from != own {
                    uses.entry(own.clone()).or_default().insert(from.to_owned());
                }
            }
        }
    }
    uses
}

/// The identifiers in a text.
fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c: char| !c.is_alphanumeric() && c != '_').filter(|word| !word.is_empty())
}

#[test]
fn files_of_the_job_do_not_use_each_other_in_circles() {
    let mut left = uses_in_job();
    assert!(left["file"].contains("storage") && left["check"].contains("fields"), "{left:?}");
    // Take away whatever uses nothing that is left, until nothing is.
    loop {
        let users: BTreeSet<String> = left.keys().cloned().collect();
        let before = left.len();
        left.retain(|_, used| used.iter().any(|used| users.contains(used)));
        if left.len() == before {
            break;
        }
    }
    assert!(left.is_empty(), "these use each other in a circle, or use such: {left:#?}");
}
