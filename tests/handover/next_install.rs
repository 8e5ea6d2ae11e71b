//! The next install from outside: what `ready` prints and writes, and that its papers say what its JSON says.

use std::fs;
use std::path::Path;
use std::process::Command;

use gapwright::assess::assess;
use gapwright::job::{Catalog, file};
use gapwright::measure::Units;
use gapwright::papers::{PaperWords, record};
use serde_json::Value;

const DELIVERY: &str = include_str!("../../examples/boathouse_delivery.ron");

fn ready(more: &[&str]) -> (Option<i32>, String) {
    let job = Path::new(env!("CARGO_MANIFEST_DIR")).join("examples/boathouse_delivery.ron");
    let mut command = Command::new(env!("CARGO_BIN_EXE_gapwright"));
    command.arg("ready").arg(job).args(more).env_remove("DISPLAY").env_remove("WAYLAND_DISPLAY");
    let output = command.output().unwrap();
    assert!(output.stderr.is_empty(), "{}", String::from_utf8_lossy(&output.stderr));
    (output.status.code(), String::from_utf8(output.stdout).unwrap())
}

#[test]
fn the_command_says_what_the_json_says() {
    let (code, said) = ready(&[]);
    assert_eq!(code, Some(0));
    let (_, json) = ready(&["--json"]);
    let report: Value = serde_json::from_str(&json).unwrap();
    assert!(said.contains(report["headline"].as_str().unwrap()), "{said}");
    let delivery = &report["delivery"];
    let [hang, opens, wait] =
        ["hang_chance_pct", "opens_chance_pct", "wait_chance_pct"].map(|key| delivery[key].as_f64().unwrap());
    assert!((0.0..=100.0).contains(&hang) && hang <= wait + 1e-9 && opens <= 100.0, "{delivery}");
    assert_eq!(delivery["measured"], 8);
    assert_eq!(delivery["delivered"], "2026-10-12");
    let days = delivery["days"].as_array().unwrap();
    assert!(days.len() > 100 && days[0]["date"] == "2026-10-12");
}

#[test]
fn a_job_without_one_says_so() {
    let job = Path::new(env!("CARGO_MANIFEST_DIR")).join("examples/porch_room.ron");
    let output = Command::new(env!("CARGO_BIN_EXE_gapwright")).arg("ready").arg(job).output().unwrap();
    assert_eq!(output.status.code(), Some(1));
    assert!(String::from_utf8_lossy(&output.stderr).contains("no next install"));
}

/// RFC 5545: lines end in CRLF and have at most 75 octets; an event has a UID, a stamp and a start.
#[test]
fn record_card_json_and_calendar_are_written() {
    let folder = tempfile::tempdir().unwrap();
    let (code, _) = ready(&["--out", folder.path().to_str().unwrap()]);
    assert_eq!(code, Some(0));
    let calendar = fs::read_to_string(folder.path().join("next-reading.ics")).unwrap();
    assert!(calendar.starts_with("BEGIN:VCALENDAR\r\n") && calendar.ends_with("END:VCALENDAR\r\n"));
    assert!(calendar.split("\r\n").all(|line| line.len() <= 75 && !line.contains('\n')), "{calendar}");
    let report: Value =
        serde_json::from_slice(&fs::read(folder.path().join("delivery-record.json")).unwrap()).unwrap();
    let day = report["delivery"]["measure_next"].as_str().unwrap().replace('-', "");
    for line in
        [format!("DTSTART;VALUE=DATE:{day}"), "BEGIN:VEVENT".into(), "SUMMARY:Meter the boards".into()]
    {
        assert!(calendar.contains(&line), "{line} is not in {calendar}");
    }
    for line in ["UID:", "DTSTAMP:"] {
        assert_eq!(calendar.lines().filter(|l| l.starts_with(line)).count(), 1);
    }
}

/// The card is one page, and every reading stands on the record, in both units.
#[test]
fn the_papers_hold_the_readings_and_the_card_is_one_page() {
    for units in [Units::Inches, Units::Millimeters] {
        let mut job = file::read(DELIVERY).unwrap().job;
        job.units = units;
        let found = assess(job.clone(), Catalog::built_in());
        let papers = record(&found, &PaperWords::us_english(&job)).unwrap();
        let text = |at: usize| pdf_extract::extract_text_from_mem(&papers[at].1).unwrap();
        let pages = |at: usize| pdf_extract::extract_text_from_mem_by_pages(&papers[at].1).unwrap().len();
        assert_eq!((papers[1].0, pages(1)), ("delivery-card.pdf", 1));
        assert!(pages(0) <= 2, "{} pages", pages(0));
        let record = text(0);
        for reading in &job.next_install.as_ref().unwrap().readings {
            let shown = format!("{:.1}", reading.reading.unwrap().to_pct());
            let shown = shown.trim_end_matches(".0");
            assert!(record.contains(shown), "{shown} is not in {record}");
        }
        assert!(record.contains("Fennimore Lumber Yard") && record.contains("R. Marlow"));
    }
}
