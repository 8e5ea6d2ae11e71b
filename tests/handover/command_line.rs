//! The program from outside: what it prints, what it writes and how it ends.

mod endings;
mod json;
mod new_job;
mod papers;
mod tables;

use std::collections::{BTreeMap, BTreeSet};
use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use jiff::civil::Date;
use serde_json::Value;
use tempfile::TempDir;

const EXAMPLES: [&str; 3] = ["tea_room", "stair_hall", "porch_room"];

fn example(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("examples").join(name).with_extension("ron")
}

/// Runs the program without a display.
fn run<A: AsRef<OsStr>>(arguments: impl IntoIterator<Item = A>) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_gapwright"));
    command.args(arguments).env_remove("DISPLAY").env_remove("WAYLAND_DISPLAY").env_remove("RUST_LOG");
    command.output().unwrap()
}

/// Runs a command of the program on a job.
fn on(job: &Path, command: &str, more: &[&str]) -> Output {
    let arguments = [command.as_ref(), job.as_os_str()];
    run(arguments.into_iter().chain(more.iter().map(OsStr::new)))
}

fn out(output: &Output) -> &str {
    std::str::from_utf8(&output.stdout).unwrap()
}

fn err(output: &Output) -> &str {
    std::str::from_utf8(&output.stderr).unwrap()
}

/// Asserts that the program is done, with nothing to complain of, and gives what it printed.
#[track_caller]
fn printed(output: &Output) -> &str {
    assert_eq!(output.status.code(), Some(0), "{}: {}{}", output.status, out(output), err(output));
    assert_eq!(err(output), "", "it complains");
    out(output)
}

fn report(name: &str) -> Value {
    serde_json::from_str(printed(&on(&example(name), "assess", &["--json"]))).unwrap()
}

fn items(value: &Value) -> &[Value] {
    value.as_array().unwrap()
}

fn text(value: &Value) -> &str {
    value.as_str().unwrap_or_else(|| panic!("{value} is no text"))
}

// Words.

#[test]
fn assess_prints_title_verdict_and_cause() {
    for name in EXAMPLES {
        let report = report(name);
        let words = on(&example(name), "assess", &[]);
        let lines: Vec<&str> = printed(&words).lines().collect();
        assert_eq!(lines[0], text(&report["title"]), "{name}");
        let verdict: Vec<&str> = items(&report["verdict"]["lines"]).iter().map(text).collect();
        assert_eq!(lines[1..=verdict.len()], verdict, "{name}");
        assert_eq!(lines[verdict.len() + 1], text(&report["cause"]), "{name}");
        assert_eq!(report["complete"], Value::Bool(true), "{name}");
        for problem in items(&report["problems"]) {
            let what = text(&problem["what"]);
            assert!(lines.iter().any(|line| line.contains(what)), "{name}: “{what}” is not printed");
        }
        for missing in items(&report["missing"]) {
            assert!(out(&words).contains(text(missing)), "{name}: {missing} is not printed");
        }
    }
}

#[test]
fn check_prints_a_line_for_each_problem() {
    for name in EXAMPLES {
        let (checked, report) = (on(&example(name), "check", &[]), report(name));
        let problems = items(&report["problems"]);
        if problems.is_empty() {
            assert_eq!(printed(&checked), "No problems found.\n", "{name}");
            continue;
        }
        let lines: Vec<&str> = printed(&checked).lines().collect();
        assert_eq!(lines.len(), problems.len(), "{name}");
        for (line, problem) in lines.iter().zip(problems) {
            let expected = ["severity", "place", "what", "fix"].map(|key| text(&problem[key]));
            let [severity, place, what, fix] = expected;
            assert_eq!(*line, format!("{severity}: {place}: {what} {fix}"), "{name}");
        }
    }
}
