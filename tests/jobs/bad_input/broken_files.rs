//! Files with faults in them: what is broken is left out and told of, and the rest is read.

use std::time::Instant;

use gapwright::job::file::Loaded;
use gapwright::job::{Job, Place, Severity, file};
use gapwright::measure::Percent;
use gapwright::surface::{Profile, SurfaceKind};
use gapwright::survey::{Failure, GapReading};

use super::{PATIENCE, TEA_ROOM, assessed, same, tea_room, told, words};

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
    assert!(problem.what(&words()).contains("was left out"), "{what}: {problem:?}");
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
    told(&assessed(&loaded.job), &Place::WholeFile, "“titel” is not known");
    let start = Instant::now();
    let lists = format!("Job(colour: {}{})", "[".repeat(20_000), "]".repeat(20_000));
    assert_eq!(file::read(&lists).unwrap().job.unknown.len(), 1);
    assert!(start.elapsed() < PATIENCE);
}

#[test]
fn each_of_two_faults_is_told_and_nothing_between_them_is_lost() {
    let text = broken(READING, &READING.replace("1/8 in", "wide")).replacen("Some(8.5)", "Some(wet)", 1);
    let loaded = file::read(&text).unwrap();
    let places: Vec<Place> = loaded.problems.iter().map(|problem| problem.place).collect();
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
