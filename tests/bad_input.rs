//! Broken files, impossible entries and absurd sizes: each is told of at its place, the rest of the
//! job still gives its answer, nothing panics, and saving never loses a file.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::LazyLock;
use std::time::{Duration, Instant};

use gapwright::air::{Air, HouseModel, IndoorAir};
use gapwright::assess::{Assessment, assess};
use gapwright::job::file::{self, LoadError, Loaded, SaveError};
use gapwright::job::{Job, Place, Problem, Severity, Shelf, VERSION};
use gapwright::measure::{
    Angle, Hours, Humidity, Length, Minutes, Moisture, Money, Percent, Temperature, ThreePoint,
};
use gapwright::repair::{MethodId, Plan, PriceLine, Shares};
use gapwright::surface::pattern::rectangle;
use gapwright::surface::{BoardSpec, JointKind, Opening, Point, Profile, Section, SurfaceKind};
use gapwright::survey::{Failure, GapReading, MoistureReading, RoomReading, Survey};
use jiff::civil::date;
use proptest::prelude::*;
use tempfile::TempDir;

const TEA_ROOM: &str = include_str!("../examples/tea_room.ron");

const EXAMPLES: [(&str, &str); 3] = [
    ("tea_room", TEA_ROOM),
    ("stair_hall", include_str!("../examples/stair_hall.ron")),
    ("porch_room", include_str!("../examples/porch_room.ron")),
];

/// The longest that anything may take here, on a busy machine and without optimisation.
const PATIENCE: Duration = Duration::from_secs(60);

/// The tea room as it should be, and what is found of it.
static SOUND: LazyLock<(Job, Assessment)> = LazyLock::new(|| {
    let loaded = file::read(TEA_ROOM).unwrap();
    assert_eq!(loaded.problems, [], "the example itself cannot be read");
    let found = assessed(&loaded.job);
    let errors = found.problems.iter().filter(|problem| problem.severity == Severity::Error);
    assert_eq!(errors.count(), 0, "the example itself has errors");
    (loaded.job, found)
});

fn tea_room() -> Job {
    SOUND.0.clone()
}

fn assessed(job: &Job) -> Assessment {
    assess(job, Shelf::built_in())
}

/// The tea room after `change`, and what is found of it.
fn after(change: impl FnOnce(&mut Job)) -> (Job, Assessment) {
    let mut job = tea_room();
    change(&mut job);
    let found = assessed(&job);
    (job, found)
}

/// The problem at `place` that has `words` in it.
#[track_caller]
fn told<'a>(found: &'a Assessment, place: &Place, words: &str) -> &'a Problem {
    let problem =
        found.problems.iter().find(|problem| problem.place == *place && problem.what.contains(words));
    let problem =
        problem.unwrap_or_else(|| panic!("nothing at {place:?} says “{words}”, only {:#?}", found.problems));
    assert!(!problem.fix.is_empty(), "no way out of “{}”", problem.what);
    problem
}

/// Asserts that what is to come of the sound tea room is unchanged; the past hangs on the install.
#[track_caller]
fn what_comes_stands(found: &Assessment) {
    for (sound, found) in SOUND.1.sections.iter().zip(&found.sections) {
        assert!(found.motion == sound.motion, "section {:?}", (sound.surface, sound.section));
        assert_eq!(found.origin, sound.origin);
    }
}

/// Asserts that all sections but `spoilt` are found to be as in the sound tea room.
#[track_caller]
fn others_stand(found: &Assessment, spoilt: &[(usize, usize)]) {
    for sound in &SOUND.1.sections {
        let at = (sound.surface, sound.section);
        if !spoilt.contains(&at) {
            let found = found.section(at.0, at.1).unwrap_or_else(|| panic!("section {at:?} is lost"));
            // Sections lend each other readings, so a spoilt one shifts the others' means a little.
            assert_eq!(found.gaps.measured, sound.gaps.measured, "section {at:?}");
            let shift = (found.gaps.mean - sound.gaps.mean).to_m().abs();
            assert!(shift < sound.gaps.error_of_mean.to_m(), "section {at:?}: {shift}");
            assert_eq!(found.now, sound.now, "section {at:?}");
            assert!(found.motion == sound.motion, "section {at:?} is not as it was");
        }
    }
}

/// Asserts that a job is as expected, and names the first line of its file that is not.
#[track_caller]
fn same(what: &str, job: &Job, expected: &Job) {
    if job != expected {
        let [found, wanted] = [job, expected].map(|job| file::write(job).unwrap());
        let lines = found.lines().zip(wanted.lines());
        let differ: Vec<_> = lines.filter(|(found, wanted)| found != wanted).take(1).collect();
        panic!("{what}: read and expected differ in {differ:#?}");
    }
}

// Broken files.

/// The line of the tea room's file, from 1, on which `text` first stands.
fn line_of(text: &str) -> usize {
    let at = TEA_ROOM.find(text).unwrap_or_else(|| panic!("“{text}” is not in the example"));
    TEA_ROOM[..at].lines().count()
}

/// The tea room's file with the first `from` made `to`.
fn broken(from: &str, to: &str) -> String {
    assert!(TEA_ROOM.contains(from), "“{from}” is not in the example");
    TEA_ROOM.replacen(from, to, 1)
}

/// Asserts that exactly one thing is told to be left out, on one of `lines`.
#[track_caller]
fn one_left_out(what: &str, loaded: &Loaded, lines: std::ops::RangeInclusive<usize>) {
    let [problem] = loaded.problems.as_slice() else {
        panic!("{what}: one thing is broken, told are {:#?}", loaded.problems);
    };
    let Place::File { line, column } = problem.place else { panic!("{what}: told at {:?}", problem.place) };
    assert!(lines.contains(&line) && column > 0, "{what}: on line {line}, not {lines:?}");
    assert_eq!(problem.severity, Severity::Error, "{what}");
    assert!(problem.what.contains("was left out"), "{what}: {}", problem.what);
}

#[test]
fn a_file_cut_short_anywhere_gives_what_stands_before_the_cut() {
    let whole = tea_room();
    let (surfaces, readings) = (TEA_ROOM.find("survey:").unwrap(), TEA_ROOM.find("gaps: [").unwrap());
    let end = TEA_ROOM.trim_end().len();
    for cut in (0..end).step_by(7).filter(|&cut| TEA_ROOM.is_char_boundary(cut)) {
        let text = &TEA_ROOM[..cut];
        let Loaded { job, problems } = file::read(text).unwrap();
        assert!(!problems.is_empty(), "cut at {cut}, nothing is told");
        if cut >= surfaces {
            assert_eq!(job.surfaces, whole.surfaces, "cut at {cut}");
        }
        let complete = TEA_ROOM[readings..].lines().scan(readings, |start, line| {
            *start += line.len() + 1;
            Some((*start, line))
        });
        let complete =
            complete.take_while(|(end, _)| *end <= cut).filter(|(_, line)| line.contains("joint:"));
        let count = complete.count();
        assert!(job.survey.gaps.len() >= count, "cut at {cut}: {} gaps of {count}", job.survey.gaps.len());
        assert_eq!(job.survey.gaps[..count], whole.survey.gaps[..count], "cut at {cut}");
    }
}

#[test]
fn a_number_cut_in_two_is_not_taken_for_a_whole_one() {
    for (number, of_job) in [
        ("contractor: 60.0", (|job| job.plan.payers.contractor.to_pct()) as fn(&Job) -> f64),
        ("heat_to: 20.0", |job| job.air.house().map_or(f64::NAN, |house| house.heat_to.to_celsius())),
    ] {
        let at = TEA_ROOM.find(number).unwrap();
        let without = of_job(&Job::default());
        for cut in at..=at + number.len() {
            let found = of_job(&file::read(&TEA_ROOM[..cut]).unwrap().job);
            assert!(found.total_cmp(&without).is_eq(), "{}: read as {found}", &TEA_ROOM[at..cut]);
        }
    }
}

/// A reading that is broken, as it stands in the file.
const READING: &str = r#"(surface: "South slope", joint: "A 5", width: "1/8 in", failed: LetGoOneSide),"#;

/// Asserts that a file with [`READING`] made `to` gives all but that reading: at most its failure
/// may be missing, and nothing may be made up.
fn only_the_reading_suffers(what: &str, to: &str) {
    let line = line_of(READING);
    let loaded = file::read(&broken(READING, to)).unwrap();
    let mut expected = tea_room();
    let sound = expected.survey.gaps.remove(1);
    let mut job = loaded.job.clone();
    if let Some(at) = job.survey.gaps.iter().position(|gap| gap.joint == sound.joint) {
        let kept = job.survey.gaps.remove(at);
        let without_failure = GapReading { failed: Failure::default(), ..sound.clone() };
        assert!(kept == sound || kept == without_failure, "{what}: made up {kept:?}");
    }
    same(what, &job, &expected);
    // A bracket or a comma is missed only where the next line starts.
    one_left_out(what, &loaded, line..=line + 1);
    assert_eq!(assessed(&loaded.job).sections.len(), 4, "{what}");
}

#[test]
fn a_broken_reading_is_left_out_and_the_rest_is_read() {
    let with = |from: &str, to: &str| {
        assert!(READING.contains(from));
        READING.replacen(from, to, 1)
    };
    let wide = |to: &str| with(r#""1/8 in""#, to);
    only_the_reading_suffers("a word for a width", &wide(r#""wide""#));
    only_the_reading_suffers("a bare number", &wide("3"));
    only_the_reading_suffers("a length without unit", &wide(r#""1/8""#));
    only_the_reading_suffers("an unknown unit", &wide(r#""1/8 furlong""#));
    only_the_reading_suffers("a huge length", &wide(r#""99999999 m""#));
    only_the_reading_suffers("a length past all numbers", &wide(&format!(r#""{} m""#, "9".repeat(400))));
    only_the_reading_suffers("endless over endless", &wide(&format!(r#""{0}/{0} in""#, "9".repeat(400))));
    only_the_reading_suffers("a width that is NaN", &wide("NaN"));
    only_the_reading_suffers("an unknown variant", &with("LetGoOneSide", "Exploded"));
    only_the_reading_suffers("a misspelt field", &with("width:", "widht:"));
    only_the_reading_suffers("a missing comma", &with(r#""A 5","#, r#""A 5""#));
    only_the_reading_suffers("a missing colon", &with("width:", "width"));
}

#[test]
fn brackets_and_quotes_out_of_balance_spoil_one_line() {
    let with = |from: &str, to: &str| READING.replacen(from, to, 1);
    only_the_reading_suffers("a bracket not closed", &with("),", ","));
    only_the_reading_suffers("a bracket closed twice", &with("),", ")),"));
    only_the_reading_suffers("a bracket closed by another", &with("),", "],"));
    only_the_reading_suffers("a bracket not opened", &with("(", ""));
    only_the_reading_suffers("a bracket opened twice", &with("(", "(("));
    only_the_reading_suffers("a list opened", &with("(", "[("));
    only_the_reading_suffers("a stray quote", &with(r#""A 5""#, r#""A "5""#));
    only_the_reading_suffers("a quote not closed", &with(r#""A 5""#, r#""A 5"#));
    only_the_reading_suffers("a quote not opened", &with(r#""A 5""#, r#"A 5""#));
    only_the_reading_suffers("a quote at the end", &with("),", "),\""));
}

#[test]
fn without_the_comma_between_two_readings_no_other_is_lost() {
    let loaded = file::read(&broken(READING, READING.trim_end_matches(','))).unwrap();
    let all = tea_room().survey.gaps;
    assert_eq!(loaded.job.survey.gaps.last(), all.last());
    assert!(loaded.job.survey.gaps.len() >= all.len() - 2, "{}", loaded.job.survey.gaps.len());
    assert!(loaded.job.survey.gaps.iter().all(|gap| all.contains(gap)));
    let line = line_of(READING);
    one_left_out("a missing comma", &loaded, line..=line + 1);
}

/// Asserts that a file with `from` made `to` gives the tea room after `change`, and says so once.
#[track_caller]
fn left_out(from: &str, to: &str, change: impl FnOnce(&mut Job)) {
    let mut expected = tea_room();
    change(&mut expected);
    let loaded = file::read(&broken(from, to)).unwrap();
    same(to, &loaded.job, &expected);
    one_left_out(to, &loaded, line_of(from)..=line_of(from));
    assert_eq!(assessed(&loaded.job).sections.len(), 4, "{to}");
}

#[test]
fn what_is_no_number_is_left_out() {
    for bad in ["NaN", "inf", "-inf", "1e999", "many", "\"8.5\""] {
        left_out("Some(8.5)", &format!("Some({bad})"), |job| job.survey.moistures[0].reading = None);
        left_out("Some(85.0)", &format!("Some({bad})"), |job| {
            job.plan.trial.as_mut().unwrap().minutes = None;
        });
        left_out("contractor: 60.0", &format!("contractor: {bad}"), |job| {
            job.plan.payers.contractor = Percent::ZERO;
        });
    }
}

#[test]
fn other_broken_entries_are_left_out_by_themselves() {
    left_out("kind: Slope", "kind: Roof", |job| job.surfaces[0].kind = SurfaceKind::default());
    left_out(r#"("18 ft", "9 ft 6 in")"#, r#"("18 fot", "9 ft 6 in")"#, |job| {
        job.surfaces[0].outline.remove(2);
    });
    left_out(r#"VGroove("1/8 in")"#, r#"VGroove("1/8")"#, |job| {
        job.surfaces[0].sections[0].board.profile = Profile::default();
    });
    left_out(r#"Some("2025-08-25")"#, r#"Some("2025-13-25")"#, |job| job.installed = None);
}

/// A slip in a field's name, or what a newer program wrote: it is kept as it stands and told of.
#[test]
fn a_field_that_is_not_known_is_kept_and_told() {
    let loaded = file::read(&broken("title:", "titel:")).unwrap();
    assert_eq!(loaded.problems, vec![]);
    assert_eq!(loaded.job.title, "");
    assert!(loaded.job.unknown[0].starts_with("titel: \"Alder Lane"), "{:?}", loaded.job.unknown);
    told(&assessed(&loaded.job), &Place::Job("file"), "“titel” in the file is not known");
    let start = Instant::now();
    let lists = format!("Job(colour: {}{})", "[".repeat(20_000), "]".repeat(20_000));
    assert_eq!(file::read(&lists).unwrap().job.unknown.len(), 1);
    assert!(start.elapsed() < PATIENCE);
}

#[test]
fn each_of_two_faults_is_told_and_nothing_between_them_is_lost() {
    let text = broken(READING, &READING.replace("1/8 in", "wide")).replacen("Some(8.5)", "Some(wet)", 1);
    let loaded = file::read(&text).unwrap();
    let places: Vec<Place> = loaded.problems.iter().map(|problem| problem.place.clone()).collect();
    let [Place::File { line: first, .. }, Place::File { line: second, .. }] = places.as_slice() else {
        panic!("two things are broken, told are {:#?}", loaded.problems);
    };
    assert_eq!((*first, *second), (line_of(READING), line_of("Some(8.5)")));
    let mut expected = tea_room();
    expected.survey.gaps.remove(1);
    expected.survey.moistures[0].reading = None;
    same("two faults", &loaded.job, &expected);
}

#[test]
fn more_faults_than_can_be_told_do_not_take_the_rest_with_them() {
    let broken_one = READING.replace("1/8 in", "wide");
    let text = broken("gaps: [\n", &format!("gaps: [\n{}", format!("{broken_one}\n").repeat(300)));
    let Loaded { job, problems } = file::read(&text).unwrap();
    assert!(!problems.is_empty() && problems.len() < 300, "{}", problems.len());
    let expected = Job { survey: job.survey.clone(), ..tea_room() };
    same("three hundred faults", &job, &expected);
}

#[test]
fn text_that_is_no_job_is_told_so() {
    let brackets = "(".repeat(100_000);
    let lists = "[".repeat(100_000);
    let closed = format!("{lists}{}", "]".repeat(100_000));
    for (what, text) in [
        ("nothing", String::new()),
        ("blanks", " \n\t\n ".to_owned()),
        ("a comment", "// a job was here\n".to_owned()),
        ("a shopping list", "six eggs, a loaf of bread\nsealant\n".to_owned()),
        ("zeros", "\0".repeat(1000)),
        ("a quote", "\"".to_owned()),
        ("a start", "Job(surfaces: [".to_owned()),
        ("brackets", brackets.clone()),
        ("lists", lists),
        ("closed lists", closed.clone()),
        ("brackets in a job", format!("Job(survey: {brackets}")),
        ("lists in a job", format!("Job(surfaces: {closed})")),
        ("a job and more", format!("Job() {brackets}")),
    ] {
        let start = Instant::now();
        let Loaded { job, problems } = file::read(&text).unwrap();
        assert!(!problems.is_empty(), "{what}: nothing is told");
        assert!(matches!(problems[0].place, Place::File { line: 1.., column: 1.. }), "{what}");
        same(what, &job, &Job::default());
        assert!(start.elapsed() < PATIENCE, "{what}: took {:?}", start.elapsed());
    }
}

#[test]
fn deep_brackets_inside_a_job_spoil_only_their_place() {
    for (open, close) in [("[", "]"), ("(", ")"), ("{", "}"), ("Some(", ")")] {
        let deep = format!("{}{}", open.repeat(100_000), close.repeat(100_000));
        let text = broken("gaps: [\n", &format!("gaps: [\n            {deep},\n"));
        let loaded = file::read(&text).unwrap();
        same(open, &loaded.job, &tea_room());
        let line = line_of("gaps: [") + 1;
        one_left_out(open, &loaded, line..=line);
    }
}

#[test]
fn what_follows_the_job_is_left_out_and_the_job_is_read() {
    let loaded = file::read(&format!("{TEA_ROOM})\nand more\n")).unwrap();
    same("a job and more", &loaded.job, &tea_room());
    assert!(!loaded.problems.is_empty());
}

#[test]
fn a_bare_job_is_a_new_one() {
    for text in ["Job()", "()", "Job(\n)\n", "// nothing yet\nJob(version: 1)"] {
        assert_eq!(file::read(text), Ok(Loaded { job: Job::default(), problems: vec![] }), "{text}");
    }
}

// Files that are not read at all.

fn us_english() -> Words {
    Words::us_english(Units::Inches, "$")
}

/// A folder with one file in it.
fn file_with(bytes: &[u8]) -> (TempDir, PathBuf) {
    let folder = TempDir::new().unwrap();
    let path = folder.path().join("job.ron");
    fs::write(&path, bytes).unwrap();
    (folder, path)
}

/// Why loading was refused, in words that name the file and leave it as it is.
fn refused(bytes: &[u8]) -> (LoadError, String) {
    let (_folder, path) = file_with(bytes);
    let error = file::load(&path).unwrap_err();
    let words = error.say(&us_english());
    assert!(words.contains(&path.display().to_string()), "{words}");
    assert_eq!(fs::read(&path).unwrap(), bytes, "the file was touched");
    (error, words)
}

#[test]
fn a_newer_version_is_refused_with_both_versions() {
    let newer = VERSION + 1;
    let whole = TEA_ROOM.replacen("version: 1,", &format!("version: {newer},"), 1);
    let half = whole[..whole.len() / 2].to_owned();
    let foreign = format!("Job(version: {newer}, seasons: {{1: Wet}}, surfaces: Torus(3))");
    for text in [whole, half, foreign] {
        let (error, words) = refused(text.as_bytes());
        assert!(matches!(error, LoadError::Newer { found, .. } if found == newer), "{words}");
        assert!(words.contains(&format!("version {newer}")), "{words}");
        assert!(words.contains(&format!("up to {VERSION}")), "{words}");
    }
    assert_eq!(file::read("Job(version: 4294967295)"), Err(u32::MAX));
}

#[test]
fn a_shelf_is_no_job_and_says_where_it_belongs() {
    let (error, words) = refused(include_bytes!("files/shelf.ron"));
    assert!(matches!(error, LoadError::PriceBook { .. }) && words.contains("Import"), "{words}");
}

#[test]
fn what_is_too_large_or_no_text_is_refused() {
    let (error, words) = refused(&[0xff, 0xfe, 0x00, 0x80, 0x1b]);
    assert!(matches!(error, LoadError::NotText { .. }), "{words}");
    let (_folder, path) = file_with(b"Job()");
    fs::OpenOptions::new().write(true).open(&path).unwrap().set_len(40_000_000).unwrap();
    let start = Instant::now();
    let error = file::load(&path).unwrap_err();
    assert!(matches!(error, LoadError::TooLarge { megabytes: 40, .. }), "{error}");
    assert!(error.say(&us_english()).contains("40 MB"), "{error}");
    assert!(start.elapsed() < Duration::from_secs(1), "it was read first");
    assert_eq!(fs::metadata(&path).unwrap().len(), 40_000_000);
}

#[test]
fn what_is_not_there_or_a_folder_is_refused() {
    let folder = TempDir::new().unwrap();
    for path in [folder.path().join("none.ron"), folder.path().to_owned()] {
        let error = file::load(&path).unwrap_err();
        assert!(matches!(error, LoadError::Unreadable { .. }), "{error}");
        assert!(error.say(&us_english()).contains(&path.display().to_string()), "{error}");
    }
}

// Saving.

#[test]
fn a_saved_job_loads_as_it_was() {
    for (name, text) in EXAMPLES {
        let job = file::read(text).unwrap().job;
        let (_folder, path) = file_with(b"");
        file::save(&job, &path).unwrap();
        assert_eq!(file::load(&path).unwrap(), Loaded { job, problems: vec![] }, "{name}");
    }
}

fn names_in(folder: &Path) -> Vec<String> {
    let names = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().file_name());
    let mut names: Vec<String> = names.map(|name| name.to_string_lossy().into_owned()).collect();
    names.sort();
    names
}

#[test]
fn the_version_before_is_kept_beside_the_file() {
    let folder = TempDir::new().unwrap();
    let path = folder.path().join("room.ron");
    let jobs = ["first", "second", "third"].map(|title| Job { title: title.to_owned(), ..tea_room() });
    file::save(&jobs[0], &path).unwrap();
    assert_eq!(names_in(folder.path()), ["room.ron"]);
    for pair in jobs.windows(2) {
        file::save(&pair[1], &path).unwrap();
        assert_eq!(file::load(&path).unwrap().job, pair[1]);
        assert_eq!(file::load(&folder.path().join("room.ron.bak")).unwrap().job, pair[0]);
        assert_eq!(names_in(folder.path()), ["room.ron", "room.ron.bak"]);
    }
}

/// Why saving to `path` was refused, in words that name the file.
fn not_saved(path: &Path) -> String {
    let error = file::save(&tea_room(), path).unwrap_err();
    assert!(matches!(error, SaveError::Unwritable { .. }), "{error}");
    let words = error.say(&us_english());
    assert!(words.contains(&path.display().to_string()), "{words}");
    words
}

#[test]
fn saving_into_a_folder_that_is_not_there_says_so() {
    let folder = TempDir::new().unwrap();
    let words = not_saved(&folder.path().join("gone").join("job.ron"));
    assert!(words.contains("another folder"), "{words}");
    assert_eq!(names_in(folder.path()), Vec::<String>::new());
}

#[test]
fn a_save_that_fails_leaves_the_old_file_whole() {
    let (folder, path) = file_with(b"the old file");
    // A folder where the backup belongs stops the save after the new text is written.
    fs::create_dir_all(folder.path().join("job.ron.bak").join("full")).unwrap();
    let words = not_saved(&path);
    assert!(words.contains("old file is unchanged"), "{words}");
    assert_eq!(fs::read(&path).unwrap(), b"the old file");
    assert_eq!(names_in(folder.path()), ["job.ron", "job.ron.bak"], "something was left lying about");
}

#[test]
fn a_folder_of_the_jobs_name_is_not_replaced() {
    let folder = TempDir::new().unwrap();
    let path = folder.path().join("job.ron");
    fs::create_dir_all(path.join("inside")).unwrap();
    not_saved(&path);
    assert_eq!(names_in(&path), ["inside"]);
}

/// A job of figures and words that are hard to write down.
fn awkward() -> Job {
    let title = "“Quoted” \"quoted\" \\ back\tslash, \u{7f} ø 木 👷\nsecond line\r\n// no comment".to_owned();
    let mut job = Job { title, ..tea_room() };
    job.notes = String::new();
    job.surfaces[0].outline[1].0 = Length::m(0.1 + 0.2);
    job.surfaces[0].outline[2].0 = Length::m(-1.0 / 3.0);
    job.surfaces[0].trim = Length::m(1e-12);
    job.surfaces[0].sections[0].direction = Angle::degrees(1.0 / 3.0);
    job.surfaces[0].sections[0].region = None;
    job.surfaces[0].sections[0].board.longest = Some(Length::inches(1000.0 / 3.0));
    job.survey.gaps[0].at = Some(Length::feet(3.0) + Length::inches(1.0 / 64.0));
    job.survey.gaps[0].date = Some(date(2026, 2, 13));
    job.survey.moistures[0].reading = Some(Moisture::pct(1.0 / 7.0));
    job.survey.moistures[0].wood = Temperature::fahrenheit(65.3);
    job.air = IndoorAir::Monthly(std::array::from_fn(|month| Air {
        temperature: Temperature::celsius(20.1 + f64::from(u8::try_from(month).unwrap()) / 7.0),
        humidity: Humidity::pct(100.0 / 3.0),
    }));
    job.plan.seal_on = Some(date(2026, 5, 1));
    job.plan.day = Hours::minutes(455.0);
    job.plan.trial.as_mut().unwrap().minutes = Some(Minutes::of(12.345_678_9));
    job.plan.own_minutes.insert("scrape".into(), ThreePoint { low: 0.1, likely: 1.0 / 3.0, high: 1e5 });
    job.plan.own_prices.insert("a \"b\"".into(), Money::cents(-5));
    job.plan.prices.labour = Money::cents(99_999_999_999_999);
    job.plan.payers.supplier = Percent::pct(f64::MIN_POSITIVE);
    job
}

#[test]
fn what_is_written_reads_back_to_the_last_bit() {
    let examples = EXAMPLES.map(|(_, text)| file::read(text).unwrap().job);
    for job in examples.into_iter().chain([Job::default(), awkward()]) {
        let text = file::write(&job).unwrap();
        let Loaded { job: back, problems } = file::read(&text).unwrap();
        assert_eq!(problems, [], "{text}");
        same("written and read", &back, &job);
        // Debug shows every digit of a number, and the sign of nothing.
        assert!(format!("{back:?}") == format!("{job:?}"), "not to the last bit");
        assert_eq!(file::write(&back).unwrap(), text, "written twice, it differs");
    }
}

// Drawings.

#[test]
fn an_outline_that_crosses_itself_spoils_its_surface_only() {
    let (_, found) = after(|job| job.surfaces[0].outline[3] = Point::m(3.0, -1.0));
    assert_eq!(told(&found, &Place::Outline(0), "crosses itself").severity, Severity::Error);
    others_stand(&found, &[(0, 0), (0, 1)]);
    let (_, found) = after(|job| job.surfaces[0].outline.truncate(2));
    told(&found, &Place::Outline(0), "only 2 corners");
    others_stand(&found, &[(0, 0), (0, 1)]);
    let (_, found) = after(|job| job.surfaces[0].outline.clear());
    told(&found, &Place::Outline(0), "only 0 corners");
    others_stand(&found, &[(0, 0), (0, 1)]);
}

#[test]
fn an_opening_outside_the_outline_is_told_and_takes_nothing_away() {
    let corners = [(30.0, 0.0), (31.0, 0.0), (31.0, 1.0)].map(|(x, y)| Point::m(x, y)).to_vec();
    let name = "skylight".to_owned();
    let (_, found) = after(|job| job.surfaces[0].openings.push(Opening { name, corners }));
    let problem = told(&found, &Place::Opening(0, 0), "“skylight” lies outside");
    assert_eq!(problem.severity, Severity::Warning);
    assert!(found.layouts == SOUND.1.layouts, "the layout is touched");
    assert_eq!(found.answer, SOUND.1.answer);
}

#[test]
fn a_section_without_area_is_told_and_the_others_stand() {
    let corner = |job: &Job| job.surfaces[0].outline[0];
    let (_, found) = after(|job| job.surfaces[0].sections[1].region = Some(vec![corner(job); 4]));
    assert_eq!(told(&found, &Place::Section(0, 1), "no area").severity, Severity::Error);
    others_stand(&found, &[(0, 1)]);
    let outside = [(30.0, 0.0), (31.0, 0.0), (31.0, 1.0)].map(|(x, y)| Point::m(x, y)).to_vec();
    let (_, found) = after(|job| job.surfaces[0].sections[1].region = Some(outside));
    told(&found, &Place::Section(0, 1), "no area");
    others_stand(&found, &[(0, 1)]);
    let (_, found) = after(|job| job.surfaces[0].trim = Length::feet(30.0));
    told(&found, &Place::Section(0, 0), "no area");
    others_stand(&found, &[(0, 0), (0, 1)]);
}

#[test]
fn a_board_wider_than_its_section_is_told_and_laid_once() {
    let (_, found) = after(|job| job.surfaces[0].sections[1].board.face_width = Length::feet(20.0));
    assert_eq!(told(&found, &Place::Section(0, 1), "20' wide").severity, Severity::Warning);
    assert_eq!(found.layouts[0].boards.iter().filter(|board| board.section == 1).count(), 1);
    others_stand(&found, &[(0, 1)]);
    let (_, found) = after(|job| job.surfaces[0].sections[1].board.face_width = Length::ZERO);
    told(&found, &Place::Section(0, 1), "too small for a board");
    others_stand(&found, &[(0, 1)]);
}

#[test]
fn a_corner_far_out_is_drawn_without_a_panic() {
    for far in [900.0, -900.0, 1e-9] {
        let (_, found) = after(|job| job.surfaces[0].outline[0].0 = Length::m(far));
        others_stand(&found, &[(0, 0), (0, 1)]);
    }
}

#[test]
fn names_given_twice_are_told() {
    let (_, found) = after(|job| job.surfaces[1].name = job.surfaces[0].name.clone());
    told(&found, &Place::Outline(1), "two surfaces called “South slope”");
    assert_eq!(found.sections.len(), 4);
    let (_, found) = after(|job| job.surfaces[0].sections[1].name = "A".to_owned());
    told(&found, &Place::Section(0, 1), "two sections called “A”");
    others_stand(&found, &[(0, 0), (0, 1)]);
}

#[test]
fn an_unknown_species_spoils_its_section_only() {
    let (_, found) = after(|job| job.surfaces[0].sections[1].board.species = "Balsa".to_owned());
    let problem = told(&found, &Place::Section(0, 1), "“Balsa”");
    assert_eq!(problem.severity, Severity::Error);
    assert_eq!(found.section(0, 1), None);
    others_stand(&found, &[(0, 1)]);
    assert!(found.answer.complete);
}

// Readings.

#[test]
fn readings_of_what_is_gone_are_kept_and_the_others_used() {
    let (gaps, moistures) = (SOUND.0.survey.gaps.len(), SOUND.0.survey.moistures.len());
    let (job, found) = after(|job| {
        let gap = |surface: &str, joint: &str| GapReading {
            surface: surface.to_owned(),
            joint: joint.to_owned(),
            width: Length::inches(0.5),
            ..GapReading::default()
        };
        job.survey.gaps.extend([gap("South slope", "A 99"), gap("Cellar", "A 2")]);
        let moisture = |surface: &str, section: &str| MoistureReading {
            surface: surface.to_owned(),
            section: section.to_owned(),
            reading: Some(Moisture::pct(28.0)),
            ..MoistureReading::default()
        };
        job.survey.moistures.extend([moisture("South slope", "Z"), moisture("Cellar", "A")]);
    });
    told(&found, &Place::Gap(gaps), "Joint “A 99” of “South slope” does not exist");
    told(&found, &Place::Gap(gaps + 1), "Joint “A 2” of “Cellar” does not exist");
    told(&found, &Place::Moisture(moistures), "Section “Z” of “South slope” does not exist");
    told(&found, &Place::Moisture(moistures + 1), "Section “A” of “Cellar” does not exist");
    others_stand(&found, &[]);
    let written = file::write(&job).unwrap();
    assert_eq!(file::read(&written).unwrap().job, job, "a reading was not kept");
}

#[test]
fn a_section_taken_out_leaves_its_readings_in_the_job() {
    let (job, found) = after(|job| {
        job.surfaces[0].sections.remove(1);
    });
    for (index, gap) in job.survey.gaps.iter().enumerate().filter(|(_, gap)| gap.joint.starts_with("B ")) {
        told(&found, &Place::Gap(index), &gap.joint);
    }
    assert_eq!(job.survey, SOUND.0.survey);
    others_stand(&found, &[(0, 1)]);
}

/// Asserts that the tea room with a reading added by `add` is told of at `place` and found as if it
/// had not been taken.
#[track_caller]
fn does_not_count(place: &Place, words: &str, add: impl FnOnce(&mut Job)) {
    let (_, found) = after(add);
    assert_eq!(told(&found, place, words).severity, Severity::Error);
    others_stand(&found, &[]);
    assert!(found.joints == SOUND.1.joints, "{words}: the joints are touched");
}

#[test]
fn gaps_that_cannot_be_do_not_count() {
    let place = Place::Gap(SOUND.0.survey.gaps.len());
    let add = |width: Length| {
        move |job: &mut Job| {
            let again = GapReading { width, ..job.survey.gaps[0].clone() };
            job.survey.gaps.push(again);
        }
    };
    does_not_count(&place, "less than nothing", add(Length::inches(-0.125)));
    does_not_count(&place, "wider than 2 in", add(Length::feet(3.0)));
    does_not_count(&place, "wider than 2 in", add(Length::m(999.0)));
}

#[test]
fn moistures_that_cannot_be_do_not_count() {
    let place = Place::Moisture(SOUND.0.survey.moistures.len());
    let add = |pct: f64, wood: f64| {
        move |job: &mut Job| {
            let (reading, wood) = (Some(Moisture::pct(pct)), Temperature::celsius(wood));
            let again = MoistureReading { reading, wood, ..job.survey.moistures[0].clone() };
            job.survey.moistures.push(again);
        }
    };
    does_not_count(&place, "130 % cannot be", add(130.0, 18.0));
    does_not_count(&place, "-4 % cannot be", add(-4.0, 18.0));
    does_not_count(&place, "cannot be", add(1e300, 18.0));
    does_not_count(&place, "900 °C", add(9.0, 900.0));
}

#[test]
fn room_air_that_cannot_be_is_told() {
    let place = Place::Room(SOUND.0.survey.rooms.len());
    let add = |celsius: f64, pct: f64| {
        move |job: &mut Job| {
            let (temperature, humidity) = (Temperature::celsius(celsius), Humidity::pct(pct));
            job.survey.rooms.push(RoomReading { temperature, humidity, date: None });
        }
    };
    does_not_count(&place, "humidity of 130 %", add(20.0, 130.0));
    does_not_count(&place, "humidity of −5 %", add(20.0, -5.0));
    does_not_count(&place, "900 °C (1652 °F)", add(900.0, 40.0));
}

#[test]
fn the_year_stays_a_year_whatever_is_typed_of_the_air() {
    let months = |celsius: f64, pct: f64| {
        let mut months = [Air { temperature: Temperature::celsius(20.0), humidity: Humidity::pct(40.0) }; 12];
        months[6] = Air { temperature: Temperature::celsius(celsius), humidity: Humidity::pct(pct) };
        IndoorAir::Monthly(months)
    };
    for (air, words) in [
        (months(20.0, 130.0), "humidity of 130 %"),
        (months(900.0, 40.0), "900 °C"),
        (months(-1e300, 40.0), "no temperature of a room"),
    ] {
        let (_, found) = after(|job| job.air = air);
        told(&found, &Place::Air("months"), words);
        assert_eq!(found.year.as_ref().unwrap().days.len(), 365);
        assert!(found.sections.iter().all(|s| (0.0..40.0).contains(&s.settled.mean().to_pct())), "{words}");
        assert!(found.answer.complete, "{words}");
    }
}

#[test]
fn numbers_at_the_ends_of_their_range_make_no_infinity() {
    let huge = f64::MAX;
    let (_, found) = after(|job| {
        job.air = IndoorAir::Monthly(std::array::from_fn(|month| Air {
            temperature: Temperature::celsius(if month % 2 == 0 { huge } else { -huge }),
            humidity: Humidity::fraction(if month % 3 == 0 { huge } else { -huge }),
        }));
        for surface in &mut job.surfaces {
            for section in &mut surface.sections {
                section.direction = Angle::degrees(huge);
                section.board.ring_angle = Angle::degrees(-huge);
            }
        }
        for (index, reading) in job.survey.moistures.iter_mut().enumerate() {
            reading.reading = Some(Moisture::pct(if index % 2 == 0 { huge } else { -huge }));
            reading.wood = Temperature::celsius(huge);
        }
    });
    told(&found, &Place::Moisture(0), "cannot be");
    told(&found, &Place::Air("months"), "no temperature of a room");
    told(&found, &Place::Section(0, 0), "Ring angle");
    let (_, found) = after(|job| {
        let (plan, huge) = (&mut job.plan, Percent::pct(huge));
        (plan.board_waste, plan.bead.waste, plan.bead.v_filled) = (huge, huge, huge);
        (plan.prices.overhead, plan.prices.profit, plan.prices.tax) = (huge, huge, huge);
        (plan.payers.contractor, plan.payers.supplier) = (huge, huge);
    });
    others_stand(&found, &[]);
    assert_eq!(found.options.len(), MethodId::ALL.len());
}

#[test]
fn a_house_that_cannot_be_is_told() {
    let house = |change: fn(&mut HouseModel)| {
        let (_, found) = after(|job| change(job.air.house_mut().expect("the tea room has a house")));
        assert_eq!(found.sections.len(), 4);
        found
    };
    let found = house(|house| house.heat_to = Temperature::celsius(900.0));
    told(&found, &Place::Air("heating"), "900 °C");
    told(&found, &Place::Air("cooling"), "fights itself");
    let found = house(|house| house.dehumidified_to = Some(Humidity::pct(130.0)));
    told(&found, &Place::Air("humidity limits"), "130 %");
    let found = house(|house| house.moisture_load = -1e300);
    told(&found, &Place::Air("moisture load"), "not between 0 and 20");
    let (_, found) = after(|job| {
        job.air = IndoorAir::FromClimate { station: "Atlantis".to_owned(), house: HouseModel::default() };
    });
    told(&found, &Place::Air("place"), "“Atlantis”");
    assert!(found.layouts == SOUND.1.layouts);
    assert!(found.joints.iter().any(|joint| joint.gap.is_some()));
}

#[test]
fn dates_out_of_order_are_told_and_the_answer_stands() {
    let (_, found) = after(|job| job.installed = Some(date(2027, 1, 1).into()));
    told(&found, &Place::Job("install date"), "1 Jan 2027");
    what_comes_stands(&found);
    let (_, found) = after(|job| job.survey.gaps[0].date = Some(date(2027, 1, 1)));
    told(&found, &Place::Gap(0), "after the visit on 14 Feb 2026");
    others_stand(&found, &[(0, 0)]);
    let (_, found) = after(|job| job.survey.moistures[4].date = Some(date(2020, 1, 1)));
    told(&found, &Place::Moisture(4), "before the boards went up");
    others_stand(&found, &[(1, 1)]);
    let (_, found) = after(|job| job.survey.rooms[0].date = Some(date(2020, 1, 1)));
    told(&found, &Place::Room(0), "before the boards went up");
    others_stand(&found, &[]);
    let (_, found) = after(|job| job.plan.seal_on = Some(date(2026, 1, 1)));
    told(&found, &Place::Plan("sealing date"), "1 Jan 2026 is before the visit");
    assert_eq!(found.answer.headline, SOUND.1.answer.headline, "a day that is past is no plan");
    let (_, found) = after(|job| job.built = Some(2090));
    told(&found, &Place::Job("year built"), "2090");
    others_stand(&found, &[]);
}

#[test]
fn the_ends_of_the_calendar_are_days_like_others() {
    for visited in [jiff::civil::Date::MIN, jiff::civil::Date::MAX] {
        let (_, found) = after(|job| job.visited = visited);
        assert_eq!(found.sections.len(), 4, "{visited}");
        let (_, found) = after(|job| job.installed = Some(visited.into()));
        what_comes_stands(&found);
    }
}

// The plan.

#[test]
fn an_empty_job_says_what_to_do_first() {
    let job = Job::default();
    let found = assessed(&job);
    assert!(!found.answer.complete);
    assert!(found.answer.headline.starts_with("Start with the boards"), "{}", found.answer.headline);
    assert_eq!(found.answer.missing[0].words, "a surface with its size and pattern");
    assert_eq!(found.problems, []);
    assert!(found.options.is_empty() && found.joints.is_empty() && found.season.is_none());
}

#[test]
fn a_job_without_readings_says_what_to_measure() {
    let (_, found) = after(|job| job.survey = Survey::default());
    assert!(!found.answer.complete);
    assert!(found.answer.headline.contains("Measure a few gaps"), "{}", found.answer.headline);
    assert!(found.answer.missing.iter().any(|missing| missing.words.contains("moisture reading")));
}

/// What is found after a change of the plan, which leaves the boards alone and is told at `field`.
#[track_caller]
fn planned(field: &'static str, words: &str, change: impl FnOnce(&mut Job)) -> Assessment {
    let (_, found) = after(change);
    assert_eq!(told(&found, &Place::Plan(field), words).severity, Severity::Error);
    others_stand(&found, &[]);
    assert!(found.answer.missing.iter().any(|missing| missing.words.contains("put right")));
    found
}

#[test]
fn without_crew_or_hours_there_is_a_price_but_no_days() {
    for found in [
        planned("crew", "0 is not between 1 and 50", |job| job.plan.crew = 0),
        planned("working day", "0 h is not between", |job| job.plan.day = Hours::ZERO),
        planned("working day", "-8 h is not between", |job| job.plan.day = Hours::h(-8.0)),
    ] {
        assert_eq!(found.options.len(), MethodId::ALL.len());
        for (option, sound) in found.options.iter().zip(&SOUND.1.options) {
            assert_eq!(option.price.of(PriceLine::Labour), sound.price.of(PriceLine::Labour));
            // Nobody knows for how many days equipment is needed.
            assert_eq!(option.price.of(PriceLine::Equipment), Money::ZERO);
            assert_eq!(option.schedule.crew_days, 0);
        }
        let words = &found.answer.headline;
        assert!(!words.contains(" 0 crew days"), "days that nobody knows are given: {words}");
    }
}

#[test]
fn shares_over_the_whole_are_told_and_still_add_up() {
    let found = planned("who pays", "together 150 %", |job| {
        job.plan.payers.contractor = Percent::pct(80.0);
        job.plan.payers.supplier = Percent::pct(70.0);
    });
    for (option, sound) in found.options.iter().zip(&SOUND.1.options) {
        let price = &option.price;
        assert_eq!(price.contractor + price.supplier + price.owner, price.total);
        assert_eq!(price.total, sound.price.total);
    }
    planned("who pays", "together", |job| job.plan.payers.supplier = Percent::pct(-20.0));
    planned("overhead", "900 % is not between", |job| job.plan.prices.overhead = Percent::pct(900.0));
    planned("tax", "1000 % is not between", |job| job.plan.prices.tax = Percent::pct(1000.0));
    planned("board waste", "is not between", |job| job.plan.board_waste = Percent::pct(1e308));
    planned("sealant waste", "-150 % is not between", |job| job.plan.bead.waste = Percent::pct(-150.0));
}

#[test]
fn a_trial_that_cannot_be_gives_way_to_the_shelf() {
    let basis = |found: &Assessment| {
        let tasks = &found.options[0].tasks;
        tasks.iter().find(|task| task.id == "scrape").unwrap().basis.clone()
    };
    assert!(basis(&SOUND.1).contains("your timed section"));
    let trial = |minutes: f64| {
        move |job: &mut Job| job.plan.trial.as_mut().unwrap().minutes = Some(Minutes::of(minutes))
    };
    for found in [
        planned("timed section", "0 minutes", trial(0.0)),
        planned("timed section", "-85 minutes", trial(-85.0)),
        planned("timed section", "minutes cannot be", trial(1e9)),
        planned("timed section", "Section “Z” of “South slope”", |job| {
            job.plan.trial.as_mut().unwrap().section = "Z".to_owned();
        }),
    ] {
        assert!(!basis(&found).contains("your timed section"), "{}", basis(&found));
        assert!(found.answer.complete);
    }
}

#[test]
fn what_is_not_on_the_shelf_is_told_and_the_boards_are_assessed() {
    for found in [
        planned("sealant", "“Chewing gum”", |job| job.plan.sealant = "Chewing gum".to_owned()),
        planned("primer", "“Milk”", |job| job.plan.primer = "Milk".to_owned()),
        planned("paint", "“Tar”", |job| job.plan.paint = "Tar".to_owned()),
    ] {
        assert!(!found.answer.complete);
        assert!(found.answer.headline.contains("see the problems"), "{}", found.answer.headline);
        assert!(found.joints.iter().any(|joint| joint.treated));
    }
}

#[test]
fn negative_money_is_told_and_never_paid_out() {
    for found in [
        planned("labour rate", "-48 is not between", |job| job.plan.prices.labour = Money::cents(-48_00)),
        planned("own prices", "is less than nothing", |job| {
            let sealant = job.plan.sealant.clone();
            job.plan.own_prices.insert(sealant, Money::cents(-900_000));
        }),
        planned("own prices", "is less than nothing", |job| {
            let paint = job.plan.paint.clone();
            job.plan.own_prices.insert(paint, Money::cents(-900_000));
        }),
        planned("overhead", "-150 % is not between", |job| {
            job.plan.prices.overhead = Percent::pct(-150.0);
        }),
    ] {
        for option in &found.options {
            // Waiting is all labour: without a rate it costs nothing.
            let least = if option.materials.is_empty() { Money::cents(-1) } else { Money::ZERO };
            assert!(option.price.total > least, "the price is {:?}", option.price.total);
        }
        assert!(!found.answer.headline.contains('−'), "{}", found.answer.headline);
    }
}

#[test]
fn own_minutes_out_of_order_give_way_to_the_shelf() {
    for (low, likely, high) in [(5.0, 3.0, 1.0), (0.0, 0.0, 0.0), (-3.0, 1.0, 2.0), (1.0, 2.0, 1e300)] {
        let found = planned("own minutes", "“bead”", |job| {
            job.plan.own_minutes.insert("bead".to_owned(), ThreePoint { low, likely, high });
        });
        assert!(found.options == SOUND.1.options, "{low}, {likely}, {high} are used");
    }
}

// Absurd sizes.

/// What is found of a job, after the program itself has shown in a process of its own that it
/// comes to an end: one that runs away is stopped there and takes nothing with it.
fn in_time(what: &str, job: &Job) -> Assessment {
    let folder = TempDir::new().unwrap();
    let path = folder.path().join("job.ron");
    file::save(job, &path).unwrap();
    let start = Instant::now();
    let mut command = Command::new(env!("CARGO_BIN_EXE_gapwright"));
    command.arg("check").arg(&path).stdout(Stdio::null()).stderr(Stdio::null());
    let mut running = command.spawn().unwrap();
    let status = loop {
        if let Some(status) = running.try_wait().unwrap() {
            break status;
        }
        if start.elapsed() > PATIENCE {
            running.kill().unwrap();
            running.wait().unwrap();
            panic!("{what}: still at it after {PATIENCE:?}");
        }
        std::thread::sleep(Duration::from_millis(20));
    };
    assert!(status.code().is_some_and(|code| code <= 1), "{what}: {status}");
    assessed(job)
}

#[test]
fn absurd_counts_are_told_and_soon_done() {
    for (field, change) in [
        ("coats", (|plan, count| plan.coats = count) as fn(&mut Plan, u32)),
        ("crew", |plan, count| plan.crew = count),
        ("acclimation", |plan, count| plan.acclimation_days = count),
        ("warranty", |plan, count| plan.warranty_years = count),
    ] {
        for count in [4_000_000_000, u32::MAX] {
            let mut job = tea_room();
            change(&mut job.plan, count);
            let found = in_time(field, &job);
            told(&found, &Place::Plan(field), &count.to_string());
            others_stand(&found, &[]);
            assert!(found.answer.complete, "{field}");
        }
    }
}

/// The tea room with its south slope made a plain of 900 m either way, with boards this wide.
fn plain(face_width: Length, longest: Option<Length>) -> Job {
    let mut job = tea_room();
    let side = Length::m(900.0);
    let south = &mut job.surfaces[0];
    let board = BoardSpec { face_width, longest, ..south.sections[0].board.clone() };
    south.outline = rectangle(side, side);
    south.dividers.clear();
    south.sections = vec![Section { board, region: None, ..south.sections[0].clone() }];
    job
}

#[test]
fn boards_past_counting_are_told_and_not_laid() {
    let found = in_time("laths on a plain", &plain(Length::mm(1.2), None));
    told(&found, &Place::Section(0, 0), "more boards than can be drawn");
    others_stand(&found, &[(0, 0), (0, 1)]);
}

#[test]
fn a_plain_of_boards_is_soon_done() {
    let found = in_time("a plain", &plain(Length::inches(5.125), None));
    assert!(found.layouts[0].boards.len() > 6000);
    others_stand(&found, &[(0, 0), (0, 1)]);
    let mut job = plain(Length::inches(5.125), None);
    let minutes = ThreePoint { low: 0.0, likely: 1e6, high: 1e6 };
    job.plan.own_minutes = SOUND.1.options[0].tasks.iter().map(|task| (task.id.clone(), minutes)).collect();
    job.plan.day = Hours::h(0.5);
    in_time("a plain at a million minutes each", &job);
}

#[test]
fn boards_too_short_to_be_are_told() {
    let mut job = tea_room();
    job.surfaces[0].sections[0].board.longest = Some(Length::m(0.1));
    let found = in_time("boards of 10 cm", &job);
    assert!(found.layouts[0].boards.iter().filter(|board| board.section == 0).count() > 400);
    others_stand(&found, &[(0, 0)]);
    let found = in_time("a plain of boards of 10 cm", &plain(Length::inches(5.125), Some(Length::m(0.1))));
    told(&found, &Place::Section(0, 0), "longest");
    for length in [Length::mm(1.0), Length::ZERO, Length::mm(-100.0)] {
        let (_, found) = after(|job| job.surfaces[0].sections[0].board.longest = Some(length));
        told(&found, &Place::Section(0, 0), "longest");
        others_stand(&found, &[]);
    }
}

#[test]
fn ten_thousand_readings_all_count() {
    let mut job = tea_room();
    let edges = SOUND.1.layouts[0].joints.iter().filter(|joint| joint.kind == JointKind::BoardEdge);
    let labels: Vec<&String> = edges.map(|joint| &joint.label).collect();
    let gap = |joint: &&String| GapReading {
        surface: "South slope".to_owned(),
        joint: (*joint).clone(),
        width: Length::inches(0.125),
        ..GapReading::default()
    };
    job.survey.gaps = labels.iter().cycle().take(10_000).map(gap).collect();
    job.survey.moistures = SOUND.0.survey.moistures.iter().cycle().take(10_000).cloned().collect();
    let found = in_time("ten thousand readings", &job);
    let measured = found.joints.iter().filter(|joint| joint.gap.is_some_and(|gap| gap.measured));
    assert_eq!(measured.count(), labels.len());
    let counts: Vec<usize> = found.sections.iter().map(|section| section.now.readings).collect();
    assert_eq!(counts, [4000, 2000, 2000, 2000]);
    assert!((found.sections[0].gaps.mean.to_inches() - 0.125).abs() < 1e-9);
}

// Anything at all.

/// What befalls a slice of a file.
#[derive(Debug, Clone)]
enum Mishap {
    Replaced(String),
    Deleted,
    Doubled,
}

fn mishap() -> impl Strategy<Value = Mishap> {
    prop_oneof![
        2 => "[ -~]{0,12}".prop_map(Mishap::Replaced),
        1 => "[-0-9.]{1,6}|1e308|NaN|None|\"900 m\"|[(){}\\[\\],\"]".prop_map(Mishap::Replaced),
        1 => Just(Mishap::Deleted),
        1 => Just(Mishap::Doubled),
    ]
}

/// `text` after a mishap to `length` characters at the part `at` of it.
fn mutated(text: &str, at: f64, length: usize, mishap: &Mishap) -> String {
    let characters: Vec<char> = text.chars().collect();
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        clippy::cast_precision_loss,
        reason = "an index into a short text"
    )]
    let from = (at * characters.len() as f64) as usize;
    let to = (from + length).min(characters.len());
    let slice: String = characters[from..to].iter().collect();
    let put = match mishap {
        Mishap::Replaced(with) => with.clone(),
        Mishap::Deleted => String::new(),
        Mishap::Doubled => slice.repeat(2),
    };
    let part = |range: &[char]| range.iter().collect::<String>();
    part(&characters[..from]) + &put + &part(&characters[to..])
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 150, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_mishap_panics_or_goes_untold(
        example in 0..3_usize,
        at in 0.0..1.0_f64,
        length in prop_oneof![0..4_usize, 0..60_usize],
        mishap in mishap(),
    ) {
        let text = mutated(EXAMPLES[example].1, at, length, &mishap);
        let Ok(loaded) = file::read(&text) else { return Ok(()) };
        let lenient =
            ron::Options::default().with_default_extension(ron::extensions::Extensions::IMPLICIT_SOME);
        let plainly_read = lenient.from_str::<Job>(&text);
        let untold = loaded.problems.is_empty() && loaded.job.unknown.is_empty();
        prop_assert_eq!(untold, plainly_read.is_ok(), "{}", text);
        let found = assessed(&loaded.job);
        prop_assert_eq!(found.layouts.len(), loaded.job.surfaces.len());
        prop_assert!(!found.answer.headline.is_empty());
    }
}

#[test]
fn paint_that_lets_nothing_through_is_told() {
    let mut shelf = Shelf::built_in().clone();
    for coating in &mut shelf.finishes {
        (coating.face, coating.back) = (Some(0.0), Some(0.0));
    }
    let found = assess(&SOUND.0, &shelf);
    told(&found, &Place::Section(0, 0), "lets nothing through");
    assert!(found.answer.complete && found.sections.len() == 4);
    for state in &found.sections {
        assert!(state.settled.mean().to_pct().is_finite() && state.settled.lag().is_none());
    }
}

#[test]
fn readings_that_contradict_each_other_are_told() {
    let (_, found) = after(|job| {
        let mut again = job.survey.gaps[0].clone();
        again.width = Length::inches(0.5);
        job.survey.gaps.push(again);
    });
    told(&found, &Place::Gap(18), "was measured as 7/64\" and as 1/2\"");
    let (_, found) = after(|job| {
        let mut again = job.survey.moistures[0].clone();
        again.reading = Some(Moisture::pct(20.0));
        job.survey.moistures.push(again);
    });
    told(&found, &Place::Moisture(5), "8.5 % and as 20 %");
}

#[test]
fn boards_too_long_for_any_stock_are_told_and_the_other_ways_stand() {
    let (_, found) = after(|job| job.plan.stock.lengths = vec![Length::feet(6.0)]);
    assert_eq!(
        told(&found, &Place::Plan("stock lengths"), "The longest board is").severity,
        Severity::Warning
    );
    let option = |id| found.options.iter().find(|option| option.method == id).unwrap();
    for id in [MethodId::Replace, MethodId::ManMade] {
        let reason = option(id).not_possible.as_ref().unwrap();
        assert!(reason.contains("no stock length is long enough"), "{reason}");
        assert!(option(id).expected.is_none() && option(id).cutting.is_none());
    }
    assert!(option(MethodId::Reseal).not_possible.is_none());
    planned("stock lengths", "No stock length is given", |job| job.plan.stock.lengths.clear());
    planned("stock lengths", "are not sold", |job| job.plan.stock.lengths.push(Length::m(99.0)));
    planned("saw kerf", "is not between", |job| job.plan.stock.kerf = Length::m(-1.0));
}

#[test]
fn rates_of_money_that_cannot_be_are_told_and_the_price_stands() {
    planned("tax", "300 % is not between", |job| job.plan.prices.tax = Percent::pct(300.0));
    planned("burden", "-5 % is not between", |job| job.plan.prices.burden = Percent::pct(-5.0));
    planned("deposit", "120 % is not between", |job| job.plan.prices.deposit = Percent::pct(120.0));
    planned("contingency", "20 % is not between", |job| {
        job.plan.prices.contingency = Some(Percent::pct(20.0));
    });
    planned("equipment", "-1 is not between", |job| job.plan.prices.equipment = Money::cents(-100));
    planned("least charge", "is not between", |job| job.plan.prices.minimum = Money::cents(-100));
    let shares = Shares { contractor: Percent::pct(70.0), supplier: Percent::pct(60.0) };
    let found = planned("who pays", "Of Materials the contractor bears 70 %", move |job| {
        job.plan.payers.lines.insert(PriceLine::Materials, shares);
    });
    for option in &found.options {
        let price = &option.price;
        assert_eq!(price.contractor + price.supplier + price.owner, price.total);
        assert!(price.owner >= Money::ZERO);
    }
}
