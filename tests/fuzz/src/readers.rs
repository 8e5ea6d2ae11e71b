//! The readers, and what must hold of whatever they read.

use std::sync::{Arc, OnceLock};

use gapwright::air::{guess_logger, read_logger, read_weather};
use gapwright::assess::{Assessment, assess};
use gapwright::export::{Report, joints_csv, year_csv};
use gapwright::job::{Catalog, Job, demo_job, file, read_gaps, read_moistures, read_prices};
use gapwright::measure::{Units, parse_date, parse_length, parse_number};
use gapwright::papers::{Paper, PaperWords, Papers, Templates};
use gapwright::surface::outlines::{FileUnit, read_outlines};

/// What is done with the bytes of a file.
pub type Reader = fn(&[u8]);

/// The reader of this name.
pub fn named(name: &str) -> Reader {
    match name {
        "job" => job,
        "prices" => prices,
        "logger" => logger,
        "weather" => weather,
        "dxf" => |bytes| outlines("a.dxf", bytes),
        "svg" => |bytes| outlines("a.svg", bytes),
        "corners" => |bytes| outlines("a.csv", bytes),
        "tables" => tables,
        "entries" => entries,
        "template" => template,
        "page" => page,
        "assessed" => assessed,
        other => panic!("no reader is called {other}"),
    }
}

fn text(bytes: &[u8]) -> std::borrow::Cow<'_, str> {
    String::from_utf8_lossy(bytes)
}

/// What was read can be written and read again, in both formats.
fn job(bytes: &[u8]) {
    if let Ok(loaded) = file::read(&text(bytes)) {
        let written = file::write(&loaded.job).expect("a job can be written");
        assert_eq!(file::read(&written).expect("it was written").job, loaded.job);
        let written = file::write_json(&loaded.job).expect("a job can be written");
        assert_eq!(file::read(&written).expect("it was written").job, loaded.job);
    }
}

fn prices(bytes: &[u8]) {
    if let Err(error) = read_prices(&text(bytes)) {
        assert!(!error.is_empty());
    }
}

fn logger(bytes: &[u8]) {
    let text = text(bytes);
    let Ok(guess) = guess_logger(&text) else { return };
    if let Ok(read) = read_logger(&text, &guess.format) {
        assert!(!format!("{:?}", read.logged.days).contains("NaN"));
    }
}

/// A year of hours is long: the bytes are its head and its first lines, and the hours go on from there.
fn weather(bytes: &[u8]) {
    static HOURS: OnceLock<String> = OnceLock::new();
    let hours = HOURS.get_or_init(|| {
        (0..8760).map(|hour| format!("01/{:02}/2001,{:02}:00,1.5,40\n", 1 + hour / 24 % 28, hour % 24 + 1)).collect()
    });
    let text = text(bytes) + "\n" + hours.as_str();
    if let Ok(read) = read_weather(&text) {
        for hour in read.weather.hours() {
            assert!((0.0..=1.0).contains(&hour.humidity.to_fraction()), "{hour:?}");
        }
    }
}

fn outlines(name: &str, bytes: &[u8]) {
    if let Ok(read) = read_outlines(name, bytes, FileUnit::Millimeters) {
        assert!(read.outlines.iter().all(|outline| outline.ring.len() >= 3));
        assert!(read.outlines.iter().flat_map(|o| &o.ring).flatten().all(|c| c.is_finite()));
    }
}

fn tables(bytes: &[u8]) {
    let text = text(bytes);
    for units in [Units::Inches, Units::Millimeters] {
        let _ = read_gaps(&text, "Wall", units);
        let _ = read_moistures(&text, "Wall", units);
    }
}

fn entries(bytes: &[u8]) {
    let text = text(bytes);
    for units in [Units::Inches, Units::Millimeters] {
        if let Ok(length) = parse_length(&text, units) {
            assert!(length.to_m().is_finite());
        }
        let _ = parse_date(&text, units);
    }
    assert!(parse_number(&text).map_or(true, f64::is_finite));
}

fn demo() -> &'static Assessment {
    static DEMO: OnceLock<Assessment> = OnceLock::new();
    DEMO.get_or_init(|| assess(demo_job(), Catalog::built_in()))
}

/// A template of the user's own, as a file with this name: the paper is made by it or by the built-in one.
fn own(name: &str, bytes: &[u8], made: impl Fn(&Papers)) {
    thread_local! {
        static FOLDER: tempfile::TempDir = tempfile::tempdir().expect("a folder");
    }
    FOLDER.with(|folder| {
        std::fs::write(folder.path().join(name), bytes).expect("a file");
        let words = PaperWords::us_english(&demo().job);
        made(&Papers::with(demo(), Templates::in_folder(folder.path()), &words));
    });
}

fn template(bytes: &[u8]) {
    own("crew-card.typ", bytes, |papers| {
        papers.typeset(Paper::CrewCard).expect("the built-in one stands in");
    });
}

fn page(bytes: &[u8]) {
    own("owner-page.html", bytes, |papers| {
        papers.owner_page().expect("the built-in one stands in");
    });
}

/// Jobs that can be read, all the way: no figure is none, and the letter can be typeset.
fn assessed(bytes: &[u8]) {
    static QUICK: OnceLock<Arc<Catalog>> = OnceLock::new();
    let quick = QUICK.get_or_init(|| Arc::new(Catalog { trials: 50, ..Catalog::clone(Catalog::built_in()) }));
    let Ok(loaded) = file::read(&text(bytes)) else { return };
    let own = format!("{:?}", loaded.job);
    let found = assess(Job::clone(&loaded.job), quick);
    let report = serde_json::to_string(&Report::new(&found, &loaded.problems)).expect("it can be written");
    let tables = [joints_csv(&found), year_csv(&found)].map(|table| table.expect("it can be written"));
    for said in [report].iter().chain(&tables) {
        assert!(own.contains("NaN") || !said.contains("NaN"), "a figure is none");
    }
    Papers::new(&found).typeset(Paper::Letter).expect("the built-in template compiles");
}
