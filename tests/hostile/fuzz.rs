//! Everything that is read from outside, with damage: read or refused in words, soon and in little
//! memory; and jobs at random, assessed without a panic and without a figure that is none.
//!
//! `GAPWRIGHT_FUZZ=1000000 cargo test --release --test hostile fuzz::` makes a million runs of each reader, and as
//! many assessments; by default it is a few hundred to a few thousand. A run that fails is named by its
//! number: `GAPWRIGHT_FUZZ_FROM=123456` begins there.

use std::time::{Duration, Instant};

use crate::arbitrary::{self, Dice};
use crate::outlines;
use gapwright::air::{guess_logger, read_logger, read_weather};
use gapwright::assess::assess;
use gapwright::export::{Report, joints_csv, tasks_csv, year_csv};
use gapwright::job::{Catalog, Job, Logo, file, read_prices};
use gapwright::measure::{Length, Units, parse_date, parse_length, parse_number};
use gapwright::words::{Words, answer};
use peak_alloc::PeakAlloc;

#[global_allocator]
static MEMORY: PeakAlloc = PeakAlloc;

/// A run that takes longer hangs. Debug builds are some ten times as slow.
const SOON: Duration = Duration::from_secs(if cfg!(debug_assertions) { 10 } else { 1 });
/// No run may need more.
const MEMORY_AT_MOST_MB: f32 = 1000.0;

fn runs(few: u64) -> std::ops::Range<u64> {
    let number = |name| std::env::var(name).ok().map(|text| text.parse::<u64>().unwrap());
    let from = number("GAPWRIGHT_FUZZ_FROM").unwrap_or(0);
    from..from + number("GAPWRIGHT_FUZZ").unwrap_or(few)
}

/// Runs `one` for each number; names the run that takes too long. The machine may pause for other work:
/// only what is too long twice hangs.
fn all_soon(few: u64, mut one: impl FnMut(u64)) {
    let mut slowest = (Duration::ZERO, 0);
    for run in runs(few) {
        let last_words = LastWords(run);
        let mut timed = || {
            let start = Instant::now();
            one(run);
            start.elapsed()
        };
        let mut took = timed();
        if took >= SOON {
            took = took.min(timed());
        }
        slowest = slowest.max((took, run));
        assert!(took < SOON, "run {run} took {took:?}");
        std::mem::forget(last_words);
        if run % 50_000 == 49_999 {
            println!("{} runs; slowest: run {}, {:?}", run + 1, slowest.1, slowest.0);
        }
    }
    let memory = MEMORY.peak_usage_as_mb();
    assert!(memory < MEMORY_AT_MOST_MB, "{memory} MB");
    println!("slowest: run {}, {:?}; most memory {memory:.0} MB", slowest.1, slowest.0);
}

/// Says which run it was when one panics.
struct LastWords(u64);

impl Drop for LastWords {
    fn drop(&mut self) {
        eprintln!("it was run {}: GAPWRIGHT_FUZZ_FROM={}", self.0, self.0);
    }
}

/// Pieces that readers stumble over.
const WORDS: [&str; 44] = [
    "0",
    "1",
    "-",
    ",",
    ";",
    "\n",
    "\"",
    "(",
    ")",
    "[",
    "]",
    "{",
    "}",
    "Some(",
    "None",
    "<",
    "/>",
    "<g>",
    "</g>",
    "&a;",
    "1e999",
    "-1e11",
    "NaN",
    "inf",
    "LINE",
    "ENDSEC",
    "0\nSECTION\n",
    "0\nVERTEX\n",
    "0\nLWPOLYLINE\n",
    "\u{fffd}",
    " transform=\"scale(1e30)\"",
    "1e-300",
    "32767",
    "999999999999",
    "1,5",
    "½",
    "'",
    "''",
    " mm",
    "\t",
    "\r",
    "//",
    "/*",
    "2026-02-30",
];

/// A file with up to six damages.
fn damaged(dice: &mut Dice, seed: &[u8]) -> Vec<u8> {
    let mut bytes = seed.to_vec();
    for _ in 0..=dice.below(6) {
        let at = dice.below(bytes.len() + 1);
        let to = (at + 1 + dice.below(60)).min(bytes.len());
        match dice.below(8) {
            0 => drop(bytes.splice(at..(at + 1).min(bytes.len()), [dice.byte()])),
            1 => drop(bytes.drain(at..to)),
            2 => {
                let piece = bytes[at..to].to_vec();
                let there = dice.below(bytes.len() + 1);
                drop(bytes.splice(there..there, piece));
            }
            3 => drop(bytes.splice(at..at, dice.one_of(&WORDS).bytes())),
            4 => number(dice, &mut bytes),
            5 => line(dice, &mut bytes),
            6 => bytes.truncate(at),
            _ => {
                let piece = bytes[at..to].to_vec();
                let times = 1 + dice.below(200);
                drop(bytes.splice(at..at, piece.repeat(times)));
            }
        }
    }
    bytes
}

/// Another number in the place of one.
fn number(dice: &mut Dice, bytes: &mut Vec<u8>) {
    const NUMBERS: [&str; 12] =
        ["0", "1e119", "1e9", "5000", "-1", "1e12", "1e-300", "32767", "70000", "999999999999", "nan", "1,5"];
    let starts: Vec<usize> = (1..bytes.len())
        .filter(|&at| bytes[at].is_ascii_digit() && !bytes[at - 1].is_ascii_digit())
        .collect();
    if starts.is_empty() {
        return;
    }
    let from = dice.one_of(&starts);
    let length = bytes[from..].iter().take_while(|byte| byte.is_ascii_digit() || **byte == b'.').count();
    bytes.splice(from..from + length, dice.one_of(&NUMBERS).bytes());
}

/// A line copied to another place, or taken out.
fn line(dice: &mut Dice, bytes: &mut Vec<u8>) {
    let lines: Vec<Vec<u8>> = bytes.split_inclusive(|byte| *byte == b'\n').map(<[u8]>::to_vec).collect();
    if lines.is_empty() {
        return;
    }
    let mut lines = lines;
    let taken = lines[dice.below(lines.len())].clone();
    let there = dice.below(lines.len());
    if dice.chance(0.5) {
        lines.insert(there, taken);
    } else {
        lines.remove(there);
    }
    *bytes = lines.concat();
}

fn damaged_text(dice: &mut Dice, seed: &str) -> String {
    String::from_utf8_lossy(&damaged(dice, seed.as_bytes())).into_owned()
}

const JOBS: [&str; 3] = [
    include_str!("../../examples/porch_room.ron"),
    include_str!("../../examples/stair_hall.ron"),
    include_str!("../jobs/files/version-1-first.ron"),
];

#[test]
fn jobs() {
    all_soon(300, |run| {
        let dice = &mut Dice::new(run);
        let seed = dice.one_of(&JOBS);
        let text = damaged_text(dice, seed);
        if let Ok(loaded) = file::read(&text) {
            // What was read can be written and read again.
            let again = file::read(&file::write(&loaded.job).unwrap()).unwrap();
            assert_eq!((again.job, again.problems), (loaded.job, vec![]));
        }
    });
}

#[test]
fn shelves() {
    let seed = include_str!("../jobs/files/shelf.ron");
    all_soon(500, |run| {
        let dice = &mut Dice::new(run);
        if let Err(error) = read_prices(&damaged_text(dice, seed)) {
            assert!(!error.is_empty());
        }
    });
}

#[test]
fn loggers() {
    let seeds = [
        "Date,Time,Temp C,RH %\n05.01.2026,00:00,20.5,33\n05.01.2026,01:00,20.3,34\n05.01.2026,02:00,20.4,35\n"
            .to_owned(),
        (0..200)
            .map(|n| format!("2026-01-{:02} {:02}:00;68,{};4{}\n", 1 + n / 24, n % 24, n % 9, n % 10))
            .collect::<String>(),
        "\"No\",\"Date Time\",\"Room 1 RH\",\"Room 2 RH\"\n1,1/2/2026 1:00 PM,40,41\n2,1/13/2026 2:00 PM,42,43\n"
            .to_owned(),
    ];
    all_soon(2000, |run| {
        let dice = &mut Dice::new(run);
        let seed = dice.one_of(&seeds);
        let text = damaged_text(dice, &seed);
        if let Ok(guess) = guess_logger(&text)
            && let Ok(read) = read_logger(&text, &guess.format)
        {
            for day in &read.logged.days {
                assert!(!format!("{day:?}").contains("NaN"), "{day:?}");
            }
        }
    });
}

/// A year of hours is long: damage is done to a part of it, and to its head.
#[test]
fn weather() {
    let head = "724940,\"SOMEWHERE\",CA,-8.0,37.617,-122.400,2\nDate (MM/DD/YYYY),Time (HH:MM),Dry-bulb (C),RHum (%)\n";
    let hours: String = (0..8760_u32)
        .map(|hour| {
            let (day, of_day) = (hour / 24, hour % 24 + 1);
            let date =
                jiff::civil::date(2001, 1, 1).checked_add(jiff::Span::new().days(i64::from(day))).unwrap();
            format!(
                "{:02}/{:02}/{},{of_day:02}:00,{}.5,{}\n",
                date.month(),
                date.day(),
                date.year(),
                day % 25,
                30 + day % 60
            )
        })
        .collect();
    let epw_head = "LOCATION,Somewhere,CA,USA,TMY3,724940,37.62,-122.40,-8.0,2.0\n";
    assert!(read_weather(&format!("{head}{hours}")).is_ok());
    all_soon(60, |run| {
        let dice = &mut Dice::new(run);
        let cut = dice.below(hours.len());
        let cut = (cut..).find(|at| hours.is_char_boundary(*at)).unwrap();
        let damage = damaged_text(dice, &hours[cut..(cut + 400).min(hours.len())]);
        let (front, back) = (&hours[..cut], &hours[(cut + 400).min(hours.len())..]);
        let head = if dice.chance(0.3) {
            damaged_text(dice, head)
        } else {
            dice.one_of(&[head, epw_head]).to_owned()
        };
        match read_weather(&format!("{head}{front}{damage}{back}")) {
            Ok(read) => {
                for hour in read.weather.hours() {
                    let (temperature, humidity) = (hour.temperature.to_celsius(), hour.humidity.to_pct());
                    assert!((-90.0..=70.0).contains(&temperature), "{hour:?}");
                    assert!((0.0..=100.0).contains(&humidity), "{hour:?}");
                }
            }
            Err(error) => assert!(!error.to_string().is_empty()),
        }
    });
}

#[test]
fn outline_files() {
    all_soon(800, |run| {
        let dice = &mut Dice::new(run);
        let (name, seed) = dice.one_of(&outlines::FILES);
        outlines::read(name, &damaged(dice, seed)).ok();
    });
}

#[test]
fn lengths_numbers_and_dates() {
    let seeds =
        ["5-1/8", "7' 3-1/2\"", "130 mm", "1,5 m", "12 ft 3 in", "3/64", "2026-02-14", "14 Feb 2026", "½"];
    all_soon(20_000, |run| {
        let dice = &mut Dice::new(run);
        let seed = dice.one_of(&seeds);
        let text = damaged_text(dice, seed);
        for units in [Units::Inches, Units::Millimeters] {
            if let Ok(length) = parse_length(&text, units) {
                assert!(length.to_m().is_finite(), "{text}: {length:?}");
                // What is shown of it can be typed again.
                let shown = length.show(units);
                if !shown.contains('<') {
                    assert!(parse_length(&shown, units).is_ok(), "{text}: {shown}");
                }
            }
            assert!(
                parse_date(&text, units).is_ok_and(|date| date.year() > 0)
                    || parse_date(&text, units).is_err()
            );
        }
        assert!(parse_number(&text).map_or(true, f64::is_finite), "{text}");
    });
}

#[test]
fn logos() {
    let svg: &[u8] = br#"<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20"><rect width="9" height="9"/></svg>"#;
    let seeds: [&[u8]; 2] = [svg, include_bytes!("../../assets/icon.png")];
    all_soon(150, |run| {
        let dice = &mut Dice::new(run);
        let seed = dice.one_of(&seeds);
        if let Ok(logo) = Logo::new(&damaged(dice, seed)) {
            assert_eq!(Logo::try_from(String::from(logo.clone())), Ok(logo));
        }
    });
}

/// Jobs at random, and jobs at random with damage: whatever can be read is assessed, and every figure
/// is one. One in ten has as many trials as a user's; the others differ from it in their number alone.
#[test]
fn assessments() {
    let catalog = Catalog::built_in();
    let quick = std::sync::Arc::new(Catalog { trials: 100, ..Catalog::clone(catalog) });
    all_soon(40, |run| {
        let mut job = arbitrary::job(run);
        if run % 3 == 0 {
            let dice = &mut Dice::new(run);
            let text = damaged_text(dice, &file::write(&job).unwrap());
            match file::read(&text) {
                Ok(loaded) => job = loaded.job,
                Err(_newer) => return,
            }
        }
        figures_are_figures(&job, if run.is_multiple_of(10) { catalog } else { &quick });
    });
}

fn figures_are_figures(job: &Job, catalog: &std::sync::Arc<Catalog>) {
    let found = assess(job.clone(), catalog);
    for (laid, surface) in found.layouts.iter().zip(&job.surfaces) {
        assert!(laid.joints.iter().all(|joint| joint.length().to_m().is_finite()), "{}", surface.name);
    }
    for joint in &found.joints {
        let gap = joint.gap.map_or(Length::ZERO, |gap| gap.gap.mean);
        assert!([gap, joint.at_sealing, joint.push].iter().all(|width| width.to_m().is_finite()));
    }
    // JSON has no word for what is no number: it would be null where a figure must be.
    let report = serde_json::to_value(Report::new(&found, &[])).unwrap();
    let schema =
        SCHEMA.with(|schema| schema.iter_errors(&report).map(|error| error.to_string()).collect::<Vec<_>>());
    assert!(schema.is_empty(), "{schema:?}");
    // What a damaged name says is not ours.
    let own = file::write(job).unwrap();
    let speaks_of =
        |text: &str| ["NaN", "inf"].into_iter().find(|word| text.contains(word) && !own.contains(word));
    for table in [joints_csv(&found), year_csv(&found), tasks_csv(&found)] {
        let table = table.unwrap();
        assert_eq!(speaks_of(&table), None, "{table}");
    }
    let words = Words::of_job(job);
    for said in [answer::headline(&found, &words), answer::cause(&found, &words)] {
        assert_eq!(speaks_of(&said), None, "{said}");
    }
}

thread_local! {
    static SCHEMA: jsonschema::Validator = {
        let text = include_str!("../../assets/assessment.schema.json");
        jsonschema::validator_for(&serde_json::from_str(text).unwrap()).unwrap()
    };
}
