//! The program from outside: what it prints, what it writes and how it ends.

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

// JSON.

#[test]
fn the_verdict_is_that_of_the_chosen_option() {
    for name in EXAMPLES {
        let report = report(name);
        let options = items(&report["options"]);
        let chosen = options.iter().find(|option| option["chosen"] == Value::Bool(true)).unwrap();
        let verdict = &report["verdict"];
        assert!(["rough", "fairly_sure", "sure"].contains(&text(&verdict["confidence"])), "{verdict}");
        let recommended = &verdict["recommended"];
        assert_eq!(recommended["method"], chosen["method"], "{name}");
        for (of_verdict, of_price) in
            [("total", "total"), ("total_low", "total_low"), ("total_high", "total_high")]
        {
            assert_eq!(recommended[of_verdict], chosen["price"][of_price], "{name}: {of_verdict}");
        }
        let (lasts, fails) = (&recommended["lasts_pct"], &chosen["callback_pct"]);
        let sum = lasts.as_f64().unwrap() + fails.as_f64().unwrap();
        assert!((sum - 100.0).abs() < 0.2, "{name}: {lasts} and {fails}");
    }
}

#[test]
fn an_empty_job_has_a_verdict_that_says_what_is_missing() {
    let folder = TempDir::new().unwrap();
    let path = folder.path().join("empty.ron");
    fs::write(&path, "()").unwrap();
    let printed = on(&path, "assess", &["--json"]);
    let report: Value = serde_json::from_str(out(&printed)).unwrap();
    let verdict = &report["verdict"];
    assert_eq!(verdict["recommended"], Value::Null);
    assert_eq!(text(&verdict["confidence"]), "not_yet");
    assert_eq!(items(&verdict["missing"]).len(), 1);
}

/// Every key of `value` with what it holds, at any depth.
fn keys<'a>(value: &'a Value, found: &mut Vec<(&'a str, &'a Value)>) {
    match value {
        Value::Object(fields) => {
            for (key, value) in fields {
                found.push((key, value));
                keys(value, found);
            }
        }
        Value::Array(items) => items.iter().for_each(|item| keys(item, found)),
        _ => {}
    }
}

#[test]
fn every_key_is_documented() {
    let readme = Path::new(env!("CARGO_MANIFEST_DIR")).join("README.md");
    let readme = fs::read_to_string(readme).unwrap_or_default();
    let mut missing = BTreeSet::new();
    for name in EXAMPLES {
        let report = report(name);
        let mut found = Vec::new();
        keys(&report, &mut found);
        assert!(found.len() > 100, "{name} has {} keys only", found.len());
        let unknown = found.iter().filter(|(key, _)| !readme.contains(&format!("`{key}`")));
        missing.extend(unknown.map(|(key, _)| (*key).to_owned()));
    }
    assert!(missing.is_empty(), "README.md does not tell of {missing:?}");
}

/// Units that end a key or stand before its last word, as in `hours_sd`.
const UNITS: [&str; 9] = ["mm", "m", "m2", "ml", "pct", "c", "hours", "minutes", "days"];
/// Keys of plain counts and factors.
const COUNTS: [&str; 12] = [
    "people",
    "boards",
    "joints",
    "gaps_measured",
    "pieces",
    "more_readings",
    "odds_times",
    "odds_divided_by",
    "format",
    "worlds_tried",
    "effective_worlds",
    "conflicts",
];

fn says_its_unit(key: &str) -> bool {
    COUNTS.contains(&key) || key.split(['_', ' ']).any(|part| UNITS.contains(&part))
}

#[test]
fn every_number_says_its_unit() {
    for name in EXAMPLES {
        let report = report(name);
        let mut found = Vec::new();
        keys(&report, &mut found);
        let numbers = || found.iter().filter(|(_, value)| value.is_number());
        assert!(numbers().count() > 50, "{name}");
        for (key, value) in numbers() {
            assert!(says_its_unit(key), "{name}: {value} of what is `{key}`?");
        }
    }
}

/// An amount in cents: text with two decimals and nothing else.
fn cents(value: &Value) -> i64 {
    let (units, decimals) = text(value).split_once('.').unwrap_or_else(|| panic!("{value} has no cents"));
    assert_eq!(decimals.len(), 2, "{value}");
    format!("{units}{decimals}").parse().unwrap_or_else(|_| panic!("{value} is no amount"))
}

fn sum(price: &Value, keys: &[&str]) -> i64 {
    keys.iter().map(|key| cents(&price[key])).sum()
}

#[test]
fn the_parts_of_a_price_add_up_to_the_cent() {
    for name in EXAMPLES {
        let report = report(name);
        let options = items(&report["options"]);
        assert_eq!(options.len(), 12, "{name}");
        for option in options {
            let price = &option["price"];
            // What can't be done has no price.
            if price.is_null() {
                assert!(option["not_possible"].is_string(), "{name}");
                continue;
            }
            let total = cents(&price["total"]);
            assert!(total > 0 || option["method"] == "nothing", "{name}");
            let lines = ["labour", "materials", "equipment", "overhead", "contingency", "profit", "minimum"];
            assert_eq!(sum(price, &lines) + sum(price, &["tax", "rounding"]), total, "{name}");
            assert_eq!(sum(price, &["contractor", "supplier", "owner"]), total, "{name}");
            assert!((cents(&price["total_low"])..=cents(&price["total_high"])).contains(&total), "{name}");
            let lines = items(&option["materials"]);
            for line in lines {
                let pieces = i64::try_from(line["pieces"].as_u64().unwrap()).unwrap();
                assert_eq!(cents(&line["price"]) * pieces, cents(&line["amount"]), "{name}: {line}");
            }
            let bought: i64 = lines.iter().map(|line| cents(&line["amount"])).sum();
            assert_eq!(bought, cents(&price["materials"]), "{name}");
        }
    }
}

#[test]
fn the_hours_of_the_tasks_are_those_of_the_option() {
    for name in EXAMPLES {
        for option in items(&report(name)["options"]) {
            let hours: f64 = items(&option["tasks"]).iter().map(|task| task["hours"].as_f64().unwrap()).sum();
            let told = option["labour_hours"].as_f64().unwrap();
            // Each is rounded: tasks to a thousandth, their sum to a hundredth.
            assert!((hours - told).abs() < 0.02, "{name}: {hours} and {told}");
        }
    }
}

#[test]
fn one_option_is_chosen() {
    for name in EXAMPLES {
        let report = report(name);
        let chosen = items(&report["options"]).iter().filter(|option| option["chosen"] == Value::Bool(true));
        assert_eq!(chosen.count(), 1, "{name}");
    }
}

// Tables.

type Row = BTreeMap<String, String>;

/// Header and rows of a table.
fn table(text: &str) -> (Vec<String>, Vec<Row>) {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let header = reader.headers().unwrap().iter().map(str::to_owned).collect();
    (header, reader.deserialize().map(Result::unwrap).collect())
}

/// The number in a cell, nothing where it is empty.
fn number(row: &Row, column: &str) -> Option<f64> {
    match row[column].as_str() {
        "" => None,
        cell => {
            let number: f64 = cell.parse().unwrap_or_else(|_| panic!("{column}: “{cell}” is no number"));
            assert!(number.is_finite(), "{column}: {cell}");
            Some(number)
        }
    }
}

#[test]
fn the_table_of_joints_is_that_of_the_report() {
    for name in EXAMPLES {
        let report = report(name);
        let (header, rows) = table(printed(&on(&example(name), "joints", &["--csv"])));
        assert_eq!(header[..4], ["surface", "section", "joint", "kind"], "{name}");
        assert_eq!(Some(rows.len() as u64), report["layout"]["joints"].as_u64(), "{name}");
        let run = |wanted: &dyn Fn(&Row) -> bool| -> f64 {
            let lengths = rows.iter().filter(|row| wanted(row)).filter_map(|row| number(row, "length_mm"));
            lengths.sum::<f64>() / 1000.0
        };
        let kind = |kind: &'static str| move |row: &Row| row["kind"] == kind;
        for (key, found) in [
            ("board_edge_m", run(&kind("board to board"))),
            ("board_end_m", run(&kind("board end"))),
            ("divider_m", run(&kind("board to divider"))),
            ("perimeter_m", run(&kind("perimeter"))),
            ("sealed_m", run(&|row| row["sealed"] == "true")),
        ] {
            let told = report["layout"][key].as_f64().unwrap();
            assert!((found - told).abs() < 1e-3, "{name}: {key} is {told}, the table's {found}");
        }
    }
}

#[test]
fn every_column_of_the_table_of_joints_says_its_unit() {
    let words = ["surface", "section", "joint", "kind", "measured", "sealed", "holds"];
    let (header, rows) = table(printed(&on(&example("tea_room"), "joints", &["--csv"])));
    for column in header.iter().filter(|column| !words.contains(&column.as_str())) {
        assert!(says_its_unit(column), "{column}");
        assert!(rows.iter().filter_map(|row| number(row, column)).count() > 0, "{column} is empty");
    }
    for row in &rows {
        for column in ["measured", "sealed", "holds"] {
            assert!(["true", "false"].contains(&row[column].as_str()), "{column}: {}", row[column]);
        }
        if let (Some(low), Some(high)) = (number(row, "narrowest_mm"), number(row, "widest_mm")) {
            assert!(low <= high, "{row:?}");
        }
    }
}

#[test]
fn the_year_has_a_row_for_each_day_from_the_visit() {
    for name in EXAMPLES {
        let report = report(name);
        let (header, rows) = table(printed(&on(&example(name), "year", &["--csv"])));
        let mut expected = ["date", "indoor_c", "indoor_rh_pct", "emc_pct"].map(str::to_owned).to_vec();
        for section in items(&report["sections"]) {
            let of = format!("{}/{}", text(&section["surface"]), text(&section["section"]));
            let columns = ["moisture_pct", "mean_gap_mm", "gap_low_mm", "gap_high_mm"];
            expected.extend(columns.map(|column| format!("{of} {column}")));
        }
        assert_eq!(header, expected, "{name}");
        assert!(header[1..].iter().all(|column| says_its_unit(column)), "{header:?}");
        assert_eq!(rows.len(), 365, "{name}");
        let mut day: Date = text(&report["visited"]).parse().unwrap();
        for row in &rows {
            assert_eq!(row["date"], day.to_string(), "{name}");
            assert!(header[1..].iter().all(|column| number(row, column).is_some()), "{name}: {row:?}");
            day = day.tomorrow().unwrap();
        }
    }
}

// Papers.

/// Every file below a folder.
fn files_below(folder: &Path) -> BTreeSet<PathBuf> {
    if !folder.exists() {
        return BTreeSet::new();
    }
    let entries = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    entries.flat_map(|path| if path.is_dir() { files_below(&path) } else { [path].into() }).collect()
}

/// The papers of a job by their names in the folder.
fn papers(job: &Path, folder: &Path) -> BTreeMap<String, Vec<u8>> {
    let output = on(job, "papers", &["--out", folder.to_str().unwrap()]);
    let told: Vec<PathBuf> = printed(&output).lines().map(PathBuf::from).collect();
    let written = files_below(folder);
    assert_eq!(told.iter().cloned().collect::<BTreeSet<_>>(), written, "told is not what was written");
    let name = |path: &Path| path.strip_prefix(folder).unwrap().to_string_lossy().replace('\\', "/");
    written.iter().map(|path| (name(path), fs::read(path).unwrap())).collect()
}

/// What wages and profit are is in a folder of its own.
const PAPERS: [&str; 11] = [
    "claim/evidence-sheet.pdf",
    "crew/buying-list.pdf",
    "crew/calendar.ics",
    "crew/crew-card.pdf",
    "crew/follow-up-card.pdf",
    "crew/measuring-sheet.pdf",
    "crew/work-order.pdf",
    "inside/price-sheet.pdf",
    "owner/letter.pdf",
    "owner/owner-page.html",
    "owner/proposal.pdf",
];

#[test]
fn the_papers_are_pdf_and_the_same_each_time() {
    for name in EXAMPLES {
        let folder = TempDir::new().unwrap();
        // The folder is made, and those above it.
        let (first, second) = (folder.path().join("new").join("papers"), folder.path().join("again"));
        let once = papers(&example(name), &first);
        assert_eq!(once.keys().collect::<Vec<_>>(), PAPERS, "{name}");
        for (paper, bytes) in &once {
            let ends: [&[u8]; 2] = match paper.rsplit_once('.').unwrap().1 {
                "html" => [b"<!DOCTYPE html>", b"</html>"],
                "ics" => [b"BEGIN:VCALENDAR\r\n", b"END:VCALENDAR"],
                _ => [b"%PDF", b"%%EOF"],
            };
            assert!(bytes.starts_with(ends[0]), "{name}: {paper}");
            assert!(bytes.trim_ascii_end().ends_with(ends[1]), "{name}: {paper} is cut short");
        }
        let again = papers(&example(name), &second);
        assert!(once == again, "{name}: not the same bytes");
        let over = papers(&example(name), &first);
        assert!(once == over, "{name}: written over, not the same bytes");
    }
}

/// An entry that can't be used holds back what depends on it, with the reason; asked for, drafts are written, each
/// marked.
#[test]
fn papers_that_depend_on_an_error_are_held_back_or_drafts() {
    let folder = TempDir::new().unwrap();
    let job = folder.path().join("broken.ron");
    let text = fs::read_to_string(example("tea_room")).unwrap();
    fs::write(&job, text.replace("width: \"7/64 in\"", "width: \"40 in\"")).unwrap();
    let out_to = |name: &str, more: &[&str]| {
        let folder = folder.path().join(name);
        let output = on(&job, "papers", &[&["--out", folder.to_str().unwrap()], more].concat());
        assert_eq!(output.status.code(), Some(1), "{}", err(&output));
        (err(&output).to_owned(), files_below(&folder))
    };
    let (told, written) = out_to("held", &[]);
    let names: Vec<_> = written.iter().map(|path| path.file_name().unwrap().to_str().unwrap()).collect();
    assert_eq!(names, ["measuring-sheet.pdf"], "{told}");
    assert!(told.contains("Not written: Homeowner’s letter, Proposal") && told.contains("3' 4\""), "{told}");
    let (told, written) = out_to("drafts", &["--draft"]);
    assert_eq!(written.len(), PAPERS.len(), "{told}");
    for path in written.iter().filter(|path| path.extension() == Some(OsStr::new("pdf"))) {
        let text = pdf_extract::extract_text(path).unwrap();
        assert_eq!(text.contains("DRAFT"), !path.ends_with("measuring-sheet.pdf"), "{}", path.display());
    }
    let page = written.iter().find(|path| path.ends_with("owner-page.html")).unwrap();
    assert!(fs::read_to_string(page).unwrap().contains("DRAFT"));
    // What could not be read of a file may be anything.
    fs::write(&job, text.replacen("kind: Slope", "kind: Sloop", 1)).unwrap();
    let (told, written) = out_to("unread", &[]);
    assert!(written.is_empty() && told.contains("Not written"), "{told}");
    assert_eq!(told.matches("“Sloop”").count(), 1, "{told}");
}

/// The calendar has the weeks to seal in and the days to measure again, as the report has them.
#[test]
fn the_calendar_has_the_days_of_the_report() {
    let folder = TempDir::new().unwrap();
    let all = papers(&example("tea_room"), folder.path());
    let calendar = String::from_utf8(all["crew/calendar.ics"].clone()).unwrap().replace("\r\n ", "");
    let report = report("tea_room");
    let compact = |date: &Value| text(date).replace('-', "");
    let (season, section) = (&report["season"], &report["sections"][0]);
    let start = |date: &Value| format!("DTSTART;VALUE=DATE:{}\r\n", compact(date));
    for day in [&season["best_from"], &section["look_again_damp"], &section["look_again_dry"]] {
        assert!(calendar.contains(&start(day)), "{day}: {calendar}");
    }
    let last: Date = text(&season["best_to"]).parse().unwrap();
    let end = last.tomorrow().unwrap().to_string().replace('-', "");
    assert!(calendar.contains(&format!("DTEND;VALUE=DATE:{end}\r\n")), "{calendar}");
    assert_eq!(calendar.matches("BEGIN:VEVENT").count(), 3, "{calendar}");
    assert_eq!(calendar.matches("UID:").count(), 3, "{calendar}");
}

#[test]
fn papers_that_cannot_be_written_are_told() {
    let folder = TempDir::new().unwrap();
    let in_the_way = folder.path().join("file");
    fs::write(&in_the_way, "in the way").unwrap();
    let output = on(&example("tea_room"), "papers", &["--out", in_the_way.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains(in_the_way.to_str().unwrap()), "{}", err(&output));
    assert_eq!(fs::read(&in_the_way).unwrap(), b"in the way");
}

#[test]
fn templates_are_written_used_and_told_about() {
    let folder = TempDir::new().unwrap();
    let templates = folder.path().join("templates");
    let output = run(["templates".as_ref(), "--out".as_ref(), templates.as_os_str()]);
    let paths: Vec<PathBuf> = printed(&output).lines().map(PathBuf::from).collect();
    // Of all but the calendar, and the look.
    assert_eq!(paths.len(), PAPERS.len());
    assert!(paths.iter().all(|path| path.is_file()) && paths.contains(&templates.join("look.typ")));
    let papers = folder.path().join("papers");
    let with = |templates: &Path| {
        let more = ["--out", papers.to_str().unwrap(), "--templates", templates.to_str().unwrap()];
        on(&example("tea_room"), "papers", &more)
    };
    printed(&with(&templates));
    // The built-in template is used where one has a fault, and the command does not end well.
    fs::write(templates.join("letter.typ"), "Fine\n#nonsense").unwrap();
    let output = with(&templates);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains("letter.typ, line 2: "), "{}", err(&output));
    assert_eq!(out(&output).lines().count(), PAPERS.len());
    // A folder that is not there is not taken for an empty one.
    fs::remove_dir_all(&papers).unwrap();
    let missing = folder.path().join("nowhere");
    let output = with(&missing);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains(missing.to_str().unwrap()), "{}", err(&output));
    assert!(out(&output).is_empty() && !papers.exists());
}

// A job from tables.

/// Runs `new` for a job in the folder.
fn new_job(folder: &Path, more: &[&str]) -> Output {
    let job = folder.join("new.ron");
    run([&["new", job.to_str().unwrap()], more].concat())
}

/// A job of sizes and tables is one that the window could have made: it is assessed, and its readings are those of the
/// tables.
#[test]
fn a_job_is_made_of_sizes_and_tables() {
    let folder = TempDir::new().unwrap();
    let table = |name: &str, text: &str| {
        let path = folder.path().join(name);
        fs::write(&path, text).unwrap();
        path.to_str().unwrap().to_owned()
    };
    let gaps = table(
        "gaps.csv",
        "joint,gap,bead\nA 2,7/64,one side\nA 5,1/8,split\nA 9,9/64,\nA 13,3/32,\nA 17,0,whole\n",
    );
    let meter =
        table("meter.csv", "section;board;moisture;wood_temperature\nA;third;8.5;64 F\nA;middle;9;64\n");
    let options = [
        "--size",
        "18' x 9' 6\"",
        "--place",
        "Chicago, IL",
        "--installed",
        "Aug 2025",
        "--visited",
        "2026-02-14",
    ];
    let tables = [
        "--gaps",
        gaps.as_str(),
        "--meter",
        meter.as_str(),
        "--title",
        "New",
        "--face",
        "5-1/8",
        "--built",
        "1994",
    ];
    let output = new_job(folder.path(), &[&options[..], &tables].concat());
    let job = folder.path().join("new.ron");
    // What is worth a warning is told, and no fault.
    assert_eq!(output.status.code(), Some(0), "{}", err(&output));
    assert_eq!(out(&output).trim(), job.to_str().unwrap());
    // Boards as long as the surface are longer than any stock: that is told, and no fault.
    let assessed = on(&job, "assess", &["--json"]);
    assert_eq!(assessed.status.code(), Some(0), "{}", err(&assessed));
    let report: Value = serde_json::from_str(out(&assessed)).unwrap();
    // By hand: 18 ft by 9 ft 6 in are 171 sq ft, 15.886 m²; 114 in of 5-1/8 in boards are 22 whole ones and a rip.
    assert!(
        (report["layout"]["plan_area_m2"].as_f64().unwrap() - 15.886).abs() < 0.001,
        "{}",
        report["layout"]
    );
    assert_eq!(report["layout"]["boards"], 23);
    assert_eq!(report["sections"][0]["gaps_measured"], 5);
    assert_eq!((&report["title"], &report["visited"]), (&Value::from("New"), &Value::from("2026-02-14")));
    assert!(report["causes"]["main"].is_string(), "{}", report["causes"]);
    // What is there is not written over, unless asked.
    let again = new_job(folder.path(), &options);
    assert_eq!(again.status.code(), Some(1));
    assert!(err(&again).contains("--force"), "{}", err(&again));
    let forced = new_job(folder.path(), &[&options[..], &["--force"]].concat());
    assert_eq!(forced.status.code(), Some(0), "{}", err(&forced));
}

/// An outline file gives a surface for each outline, filled with the pattern.
#[test]
fn a_job_is_made_of_an_outline_file() {
    let folder = TempDir::new().unwrap();
    let outline = folder.path().join("room.csv");
    fs::write(&outline, "x (mm),y (mm)\n0,0\n4000,0\n4000,3000\n0,3000\n").unwrap();
    let more =
        ["--outline", outline.to_str().unwrap(), "--units", "mm", "--kind", "wall", "--pattern", "upright"];
    printed(&new_job(folder.path(), &[&more[..], &["--species", "alder-red"]].concat()));
    let text = fs::read_to_string(folder.path().join("new.ron")).unwrap();
    assert!(text.contains("Wall") && text.contains("alder-red") && text.contains("Millimetres"), "{text}");
    let report: Value =
        serde_json::from_str(printed(&on(&folder.path().join("new.ron"), "assess", &["--json"]))).unwrap();
    assert!((report["layout"]["plan_area_m2"].as_f64().unwrap() - 12.0).abs() < 1e-6);
}

/// Every fault is told once, and nothing is written.
#[test]
fn every_fault_of_a_new_job_is_told() {
    let folder = TempDir::new().unwrap();
    let gaps = folder.path().join("gaps.csv");
    fs::write(&gaps, "joint,gap\nA 2,wide\nA 3,1/16\n,1/16\n").unwrap();
    let more = [
        "--size",
        "18 ft",
        "--kind",
        "floor",
        "--place",
        "Springfield",
        "--species",
        "pine-blue",
        "--visited",
        "soon",
    ];
    let output = new_job(folder.path(), &[&more[..], &["--gaps", gaps.to_str().unwrap()]].concat());
    assert_eq!(output.status.code(), Some(1));
    let told = err(&output);
    for part in
        ["“18 ft”", "“floor”", "Springfield", "“pine-blue”", "“soon”", "gaps.csv, line 2", "gaps.csv, line 4"]
    {
        assert!(told.contains(part), "{part}: {told}");
    }
    assert!(!told.contains("line 3") && told.contains("no job was written"), "{told}");
    assert!(!folder.path().join("new.ron").exists());
    // A joint that is not on the drawing is told when the job is there.
    fs::write(&gaps, "joint,gap\nZ 99,1/16\n").unwrap();
    let output = new_job(folder.path(), &["--size", "18 x 9", "--gaps", gaps.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains("Z 99") && folder.path().join("new.ron").exists(), "{}", err(&output));
}

// How it ends.

/// Every way to read a job, with its arguments after the job; papers go to `folder`.
fn commands(folder: &Path) -> [(&'static str, Vec<&str>); 6] {
    [
        ("assess", vec![]),
        ("assess", vec!["--json"]),
        ("check", vec![]),
        ("joints", vec!["--csv"]),
        ("year", vec!["--csv"]),
        ("papers", vec!["--draft", "--out", folder.to_str().unwrap()]),
    ]
}

/// A job file made of the tea room's by `change`, in a folder of its own.
fn changed(change: impl FnOnce(&str) -> String) -> (TempDir, PathBuf) {
    let folder = TempDir::new().unwrap();
    let path = folder.path().join("changed.ron");
    fs::write(&path, change(&fs::read_to_string(example("tea_room")).unwrap())).unwrap();
    (folder, path)
}

#[test]
fn a_job_with_errors_is_worked_out_and_ends_with_1() {
    let (folder, path) = changed(|text| text.replacen("pine-western-white", "Balsa", 1));
    for (command, more) in commands(&folder.path().join("papers")) {
        let output = on(&path, command, &more);
        assert_eq!(output.status.code(), Some(1), "{command} {more:?}: {}", err(&output));
        assert!(!out(&output).is_empty(), "{command} {more:?} prints nothing");
    }
    for command in ["assess", "check"] {
        let words = on(&path, command, &[]);
        assert!(out(&words).contains("error: South slope, section A: Species: “Balsa”"), "{}", out(&words));
    }
}

#[test]
fn a_warning_is_no_error() {
    let (_folder, path) = changed(|text| text.replacen("Some(8.5)", "Some(35.0)", 1));
    let output = on(&path, "check", &[]);
    assert_eq!(output.status.code(), Some(0));
    assert!(out(&output).contains("warning: Moisture reading 1: "), "{}", out(&output));
}

#[test]
fn a_file_read_in_part_says_what_is_left_out_and_ends_with_1() {
    let (folder, path) = changed(|text| text.replacen("width: \"1/8 in\"", "width: \"wide\"", 1));
    let line = fs::read_to_string(&path).unwrap().lines().position(|line| line.contains("wide")).unwrap() + 1;
    for (command, more) in commands(&folder.path().join("papers")) {
        let output = on(&path, command, &more);
        assert_eq!(output.status.code(), Some(1), "{command} {more:?}");
        assert!(err(&output).contains(&format!("line {line}, ")), "{command}: {}", err(&output));
        assert!(!out(&output).is_empty(), "{command} {more:?} prints nothing");
    }
}

#[test]
fn a_file_that_cannot_be_read_is_named_and_ends_with_1() {
    let folder = TempDir::new().unwrap();
    let write = |name: &str, bytes: &[u8]| {
        let path = folder.path().join(name);
        fs::write(&path, bytes).unwrap();
        path
    };
    let newer = write("newer.ron", b"Job(version: 2)");
    let papers = folder.path().join("papers");
    for path in [folder.path().join("none.ron"), write("binary.ron", &[0, 159, 146, 150]), newer] {
        let name = path.file_name().unwrap().to_str().unwrap();
        for (command, more) in commands(&papers) {
            let output = on(&path, command, &more);
            assert_eq!(output.status.code(), Some(1), "{command} {name}");
            assert!(err(&output).contains(name), "{command} {name}: {}", err(&output));
            assert_eq!(out(&output), "", "{command} {name}");
        }
    }
    assert!(!papers.exists(), "papers of nothing were written");
}

#[test]
fn wrong_usage_ends_with_2() {
    let job = example("tea_room");
    let job = job.to_str().unwrap();
    for wrong in [
        vec!["assess"],
        vec!["assess", "--nonsense", job],
        vec!["assess", job, job],
        vec!["check"],
        vec!["joints", job],
        vec!["joints", "--csv"],
        vec!["year", job],
        vec!["papers", job],
        vec!["papers", job, "--out"],
        vec!["--nonsense"],
        vec![job, job],
    ] {
        let output = run(&wrong);
        assert_eq!(output.status.code(), Some(2), "{wrong:?}");
        assert!(err(&output).contains("--help"), "{wrong:?}: {}", err(&output));
        assert_eq!(out(&output), "", "{wrong:?}");
    }
}

#[test]
fn help_names_every_command() {
    let help = run(["--help"]);
    for command in ["assess", "check", "joints", "year", "papers"] {
        assert!(printed(&help).contains(command), "{command}");
    }
    assert!(printed(&run(["--version"])).contains(env!("CARGO_PKG_VERSION")));
}

// Elsewhere there is always a display, and a window would open.
#[cfg(all(unix, not(target_os = "macos")))]
mod without_a_display {
    use super::*;

    #[test]
    fn the_answer_of_the_demo_is_printed() {
        let output = run([""; 0]);
        assert_eq!(output.status.code(), Some(0), "{}", err(&output));
        assert!(err(&output).contains("no display"), "{}", err(&output));
        assert_eq!(out(&output), printed(&on(&example("tea_room"), "assess", &[])));
    }

    #[test]
    fn the_answer_of_the_job_named_is_printed() {
        let output = run([example("porch_room")]);
        assert_eq!(output.status.code(), Some(0), "{}", err(&output));
        assert!(err(&output).contains("no display"), "{}", err(&output));
        assert_eq!(out(&output), printed(&on(&example("porch_room"), "assess", &[])));
        let missing = run(["none.ron"]);
        assert_eq!(missing.status.code(), Some(1));
        assert!(err(&missing).contains("none.ron"), "{}", err(&missing));
        assert_eq!(out(&missing), "");
    }
}

/// Everything for other programs: each file is what its name says.
#[test]
fn a_job_is_exported_whole() {
    let folder = TempDir::new().unwrap();
    let output = on(&example("tea_room"), "export", &["--out", folder.path().to_str().unwrap()]);
    assert!(printed(&output).lines().count() >= 12);
    let read = |name: &str| fs::read(folder.path().join(name)).unwrap();
    let json: Value = serde_json::from_slice(&read("assessment.json")).unwrap();
    assert_eq!(json, report("tea_room"));
    for (table, head) in [("joints.csv", "surface"), ("tasks.csv", "task"), ("materials.csv", "name")] {
        let text = String::from_utf8(read(table)).unwrap();
        assert!(text.starts_with(head) && text.lines().count() > 5, "{table}");
    }
    assert!(read("surface-0.png").starts_with(b"\x89PNG") && read("year.png").len() > 5_000);
    assert!(String::from_utf8(read("surface-1.svg")).unwrap().contains("<svg"));
    // The drawing read again has the outlines of both slopes, 18 by 9-1/2 feet.
    let drawn = gapwright::surface::outlines::read_outlines(
        "drawing.dxf",
        &read("drawing.dxf"),
        gapwright::surface::outlines::FileUnit::Millimeters,
    )
    .unwrap();
    let sides = |ring: &[[f64; 2]]| {
        let span = |at: usize| {
            let values = || ring.iter().map(|point| point[at]);
            values().fold(f64::NEG_INFINITY, f64::max) - values().fold(f64::INFINITY, f64::min)
        };
        (span(0), span(1))
    };
    let slopes = drawn.outlines.iter().filter(|outline| {
        let (width, height) = sides(&outline.ring);
        (width - 5.4864).abs() < 1e-3 && (height - 2.8956).abs() < 1e-3
    });
    assert_eq!(slopes.count(), 2);
}

#[test]
fn a_folder_of_jobs_gives_a_line_each() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("examples");
    let output = on(&folder, "assess", &[]);
    assert_eq!(String::from_utf8_lossy(&output.stderr), "4 of 4 jobs\n");
    let table = String::from_utf8(output.stdout).unwrap();
    let mut reader = csv::Reader::from_reader(table.as_bytes());
    let rows: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
    assert_eq!(rows.len(), 4);
    for row in &rows {
        let name = row[0].trim_end_matches(".ron");
        assert_eq!(Some(&row[1]), report(name)["title"].as_str());
        assert_eq!(Some(&row[7]), report(name)["answer"].as_str());
        // A job about boards to come has nothing to choose from.
        let chosen = items(&report(name)["options"]).iter().find(|o| o["chosen"] == true).cloned();
        assert_eq!(chosen.is_none(), name == "boathouse_delivery");
        let total = chosen.map_or(Value::from(""), |chosen| chosen["price"]["total"].clone());
        assert_eq!(Some(&row[4]), total.as_str());
    }
}

/// What stands in a PDF.
fn pdf(path: &Path) -> String {
    pdf_extract::extract_text_from_mem(&fs::read(path).unwrap()).unwrap()
}

#[test]
fn the_languages_of_the_papers_are_chosen_apart() {
    let folder = TempDir::new().unwrap();
    let job = example(EXAMPLES[0]);
    let to = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    for (owner, crew) in [("en-US", "es-US"), ("es-US", "en-US")] {
        let into = to(owner);
        let chosen = ["--out", &into, "--owner-language", owner, "--crew-language", crew];
        let run = on(&job, "papers", &chosen);
        assert!(run.status.success(), "{}", err(&run));
        let [letter, order] =
            ["owner/letter.pdf", "crew/work-order.pdf"].map(|name| pdf(&Path::new(&into).join(name)));
        assert_eq!(letter.contains("Lo que vimos"), owner == "es-US", "{letter}");
        assert_eq!(letter.contains("What we saw"), owner == "en-US", "{letter}");
        assert_eq!(order.contains("Orden de trabajo"), crew == "es-US", "{order}");
        assert_eq!(order.contains("Work order"), crew == "en-US", "{order}");
        let page = fs::read_to_string(Path::new(&into).join("owner/owner-page.html")).unwrap();
        assert_eq!(page.contains("lang=\"es\""), owner == "es-US");
    }
    let run = on(&job, "papers", &["--out", &to("none"), "--crew-language", "tlh"]);
    assert!(!run.status.success());
    assert!(err(&run).contains("tlh") && err(&run).contains("es-US"), "{}", err(&run));
}
