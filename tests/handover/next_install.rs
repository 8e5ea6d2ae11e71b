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
    // The day they are wanted has its answer, in a line.
    assert!(matches!(delivery["wanted_answer"].as_str(), Some("yes" | "close" | "no")), "{delivery}");
    assert!(said.contains("Can they go up on Nov 16?"), "{said}");
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
    // One reading on the way, and the day on which they go up.
    let day = |of: &Value| of.as_str().unwrap().replace('-', "");
    let reading = day(&report["delivery"]["measure_next"]);
    let hang = day(&report["delivery"]["hang"]["on"]);
    for (day, summary) in [(reading, "Meter the boards"), (hang, "Meter 8 boards\\, then hang")] {
        let events = calendar.split("BEGIN:VEVENT").skip(1);
        let own: Vec<&str> = events.filter(|event| event.contains(&format!("SUMMARY:{summary}"))).collect();
        assert_eq!(own.len(), 1, "{summary} in {calendar}");
        assert!(own[0].contains(&format!("DTSTART;VALUE=DATE:{day}")), "{day} is not in {}", own[0]);
    }
    for line in ["UID:", "DTSTAMP:"] {
        assert_eq!(calendar.lines().filter(|l| l.starts_with(line)).count(), 2);
    }
}

/// What `ready` prints of the example with these readings.
fn said(readings: &[f64], change: impl FnOnce(&mut gapwright::job::Job)) -> Vec<String> {
    let mut job = file::read(DELIVERY).unwrap().job;
    let next = job.next_install.as_mut().unwrap();
    let like = next.readings[0].clone();
    let one = |pct: &f64| gapwright::ready::BoardReading {
        reading: Some(gapwright::measure::Moisture::pct(*pct)),
        ..like.clone()
    };
    next.readings = readings.iter().map(one).collect();
    change(&mut job);
    let found = assess(job.clone(), Catalog::built_in());
    let words = gapwright::words::Words::of_job(&job);
    let next = found.next_install.as_ref().unwrap();
    gapwright::words::next_install::lines(next, &found.job, found.sealant_name(), &words)
}

/// One gap is told for these boards, and dates only where they will be ready.
#[test]
fn one_gap_is_told_and_no_date_where_there_is_none() {
    for readings in [[14.0; 8], [8.0; 8], [5.0; 8]] {
        let lines = said(&readings, |_| {});
        let text = lines.join("\n");
        let told = |line: &&String| {
            line.to_lowercase().contains("at each joint") || line.to_lowercase().contains("hang them tight")
        };
        assert_eq!(lines.iter().filter(told).count(), 1, "{text}");
        assert!(!text.contains("earliest") && !text.contains(", 2026"), "{text}");
    }
    let tight = |job: &mut gapwright::job::Job| {
        job.plan.callback.widest = gapwright::measure::Length::inches(1.0 / 32.0);
    };
    let text = said(&[14.0; 8], tight).join("\n");
    assert!(text.starts_with("Change the plan"), "{text}");
    assert!(!text.contains("From ") && !text.contains("Meter again"), "{text}");
    let mixed = said(&[8.0, 18.0, 8.0, 18.0, 8.0, 18.0, 8.0, 18.0], |_| {});
    assert!(mixed[0].starts_with("Sort them"), "{mixed:?}");
    let wet = said(&[18.0; 8], |_| {});
    assert!(wet[0].starts_with("Send them back") && wet[0].contains("15%"), "{wet:?}");
    assert!(!wet.iter().any(|line| line.starts_with("On ") || line.contains("Leave ")), "{wet:?}");
}

/// In millimeters no inches are told, and one temperature.
#[test]
fn millimeters_tell_no_inches() {
    let lines = said(&[14.0; 8], |job| job.units = Units::Millimeters).join("\n");
    assert!(!lines.contains('"') && !lines.contains("°F"), "{lines}");
}

/// Of a job about a delivery alone, `papers` writes the delivery's, and no letter about nothing.
#[test]
fn papers_of_a_delivery_are_those_of_the_delivery() {
    let folder = tempfile::tempdir().unwrap();
    let job = Path::new(env!("CARGO_MANIFEST_DIR")).join("examples/boathouse_delivery.ron");
    let mut command = Command::new(env!("CARGO_BIN_EXE_gapwright"));
    command.arg("papers").arg(job).arg("--out").arg(folder.path());
    let output = command.output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let mut names: Vec<String> = fs::read_dir(folder.path().join("crew"))
        .unwrap()
        .map(|entry| entry.unwrap().file_name().to_string_lossy().into_owned())
        .collect();
    names.sort();
    assert_eq!(
        names,
        ["delivery-card.pdf", "delivery-record.json", "delivery-record.pdf", "next-reading.ics"]
    );
}

/// The card is one page, and every reading stands on the record, in both units.
#[test]
fn the_papers_hold_the_readings_and_the_card_is_one_page() {
    for units in [Units::Inches, Units::Millimeters] {
        let mut job = file::read(DELIVERY).unwrap().job;
        job.units = units;
        let found = assess(job.clone(), Catalog::built_in());
        let papers = record(&found, &[], &PaperWords::us_english(&job)).unwrap();
        let text = |at: usize| pdf_extract::extract_text_from_mem(&papers[at].1).unwrap();
        let pages = |at: usize| pdf_extract::extract_text_from_mem_by_pages(&papers[at].1).unwrap().len();
        assert_eq!((papers[1].0, pages(1)), ("delivery-card.pdf", 1));
        assert_eq!(pages(0), 1, "the record fits a page");
        let record = text(0);
        for reading in &job.next_install.as_ref().unwrap().readings {
            let shown = format!("{:.1}", reading.reading.unwrap().to_pct());
            let shown = shown.trim_end_matches(".0");
            assert!(record.contains(shown), "{shown} is not in {record}");
        }
        assert!(record.contains("Fennimore Lumber Yard") && record.contains("R. Marlow"));
    }
}

/// A line of the file that couldn't be read marks both papers of a delivery as drafts; without one neither is.
#[test]
fn papers_of_a_delivery_whose_file_lost_a_line_are_drafts() {
    let broken = DELIVERY.replacen("reading: Some(13.5)", "reading: Some(\"wet\")", 1);
    assert_ne!(broken, DELIVERY);
    for (text, lost) in [(DELIVERY, false), (broken.as_str(), true)] {
        let loaded = file::read(text).unwrap();
        assert_eq!(!loaded.problems.is_empty(), lost);
        let found = assess(loaded.job.clone(), Catalog::built_in());
        for (name, pdf) in record(&found, &loaded.problems, &PaperWords::us_english(&loaded.job)).unwrap() {
            let text = pdf_extract::extract_text_from_mem(&pdf).unwrap();
            assert_eq!(text.contains("DRAFT"), lost, "{name}: {text}");
        }
    }
}
