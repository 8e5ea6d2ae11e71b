//! Jobs as JSON: nothing is lost on the way there and back, and broken files are read as far as they go.

use gapwright::export::job_schema;
use gapwright::job::{Catalog, Fault, FileFault, Job, Place, PriceBook, Unread, file, jobs_in};
use gapwright::measure::{Moisture, Money, Percent};
use gapwright::repair::{MethodId, PriceLine, Shares};
use serde_json::Value;

use super::EXAMPLES;

fn read(text: &str) -> file::Loaded {
    file::read(text).unwrap()
}

#[test]
fn a_job_goes_to_json_and_back_as_it_was() {
    for (name, text) in EXAMPLES {
        let loaded = read(text);
        let ron = file::write(&loaded.job).unwrap();
        let json = file::write_json(&loaded.job).unwrap();
        let back = read(&json);
        assert_eq!(back, loaded, "{name}");
        assert_eq!(file::write(&back.job).unwrap(), ron, "{name}");
        assert_eq!(file::write_json(&back.job).unwrap(), json, "{name}");
    }
}

/// Choices with and without values, maps by choices and by ids, a price book, and what is empty.
#[test]
fn every_kind_of_value_survives() {
    let mut job = read(EXAMPLES[0].1).job;
    job.plan.chosen = MethodId::Own(3);
    job.plan.own_prices.insert("hybrid-50, cartridge".into(), Money::cents(-1_05));
    let shares = Shares { contractor: Percent::pct(33.3), supplier: Percent::pct(0.1 + 0.2) };
    job.plan.payers.lines.insert(PriceLine::Labor, shares);
    job.price_book = Some(PriceBook::of(Catalog::built_in(), job.visited));
    job.notes = "“quotes” \"and\" \\ lines\n\t\u{1F528}".into();
    let back = read(&file::write_json(&job).unwrap());
    assert_eq!(back.problems, vec![]);
    assert_eq!(back.job, job);
}

#[test]
fn numbers_come_back_to_the_last_bit() {
    let mut dice = 0x9e37_79b9_7f4a_7c15_u64;
    let mut job = Job::default();
    let mut numbers = vec![0.1 + 0.2, 1.0 / 3.0, 5e-324, f64::MAX, -0.0, 122.416_799_999_999_98];
    for _ in 0..2_000 {
        // xorshift64: any pattern of bits.
        dice ^= dice << 13;
        dice ^= dice >> 7;
        dice ^= dice << 17;
        numbers.push(f64::from_bits(dice));
    }
    for number in numbers.into_iter().filter(|number| number.is_finite()) {
        job.plan.delivered_at = Moisture::pct(number);
        let text = file::write_json(&job).unwrap();
        let back = read(&text).job.plan.delivered_at.to_pct();
        assert_eq!(back.to_bits(), number.to_bits(), "{number} came back as {back}");
    }
}

/// The text of the tea room as JSON.
fn tea_room() -> String {
    file::write_json(&read(EXAMPLES[0].1).job).unwrap()
}

/// The same with the first `from` made `to`.
fn changed(from: &str, to: &str) -> String {
    let text = tea_room();
    assert!(text.contains(from), "“{from}” is not in {text}");
    text.replacen(from, to, 1)
}

#[test]
fn what_is_broken_is_told_with_its_place_and_the_rest_is_read() {
    let whole = read(EXAMPLES[0].1).job;
    for (from, to, reason) in [
        ("\"width\": \"7/64 in\"", "\"width\": \"7/64\"", None),
        ("\"width\": \"7/64 in\"", "\"wide\": \"7/64 in\"", Some(Unread::UnknownField("wide".into()))),
        ("\"failed\": \"LetGoOneSide\"", "\"failed\": \"Rust\"", Some(Unread::UnknownChoice("Rust".into()))),
        ("\"crew\": 2,", "\"crew\": 2, \"crew\": 3,", Some(Unread::TwiceField("crew".into()))),
    ] {
        let text = changed(from, to);
        let loaded = read(&text);
        let [problem] = loaded.problems.as_slice() else { panic!("{to}: {:?}", loaded.problems) };
        let Fault::File(FileFault::LeftOut { reason: met, .. }) = &problem.fault else {
            panic!("{problem:?}")
        };
        assert!(reason.as_ref().is_none_or(|reason| reason == met), "{to}: {met:?}");
        let line = 1 + text[..text.find(to).unwrap()].matches('\n').count();
        let Place::File { line: told, .. } = problem.place else { panic!("{problem:?}") };
        assert!(told.abs_diff(line) <= 1, "{to}: told on line {told}, stands on {line}");
        assert_eq!(loaded.job.surfaces, whole.surfaces, "{to}");
        assert!(loaded.job.survey.gaps.len() + 1 >= whole.survey.gaps.len(), "{to}");
        assert_eq!(loaded.job.survey.moistures, whole.survey.moistures, "{to}");
    }
    let text = tea_room();
    let half = read(&text[..text.find("\"moistures\"").unwrap()]);
    assert!(!half.problems.is_empty());
    assert_eq!(half.job.survey.gaps, whole.survey.gaps);
}

#[test]
fn a_newer_job_is_refused_as_json_too() {
    assert_eq!(file::read(&changed("\"version\": 1", "\"version\": 2")), Err(2));
}

/// Fields that are not known stay through both formats and back, as they were.
#[test]
fn what_is_not_known_is_kept() {
    let text =
        changed("{\n", "{\n  \"color\": {\"a\": [1, 2.5, null], \"b: c\": \"d\"},\n  \"flag\": true,\n");
    let from_json = read(&text);
    assert_eq!(from_json.problems, vec![]);
    assert_eq!(from_json.job.unknown.len(), 2, "{:?}", from_json.job.unknown);
    let through_ron = read(&file::write(&from_json.job).unwrap());
    assert_eq!(through_ron.problems, vec![]);
    for job in [&from_json.job, &through_ron.job] {
        let written: Value = serde_json::from_str(&file::write_json(job).unwrap()).unwrap();
        assert_eq!(written["color"], serde_json::json!({"a": [1, 2.5, null], "b: c": "d"}));
        assert_eq!(written["flag"], Value::Bool(true));
    }
    let ron = EXAMPLES[0].1.replacen("    title:", "    idea: Some(Thing(x: 1.5)),\n    title:", 1);
    let from_ron = read(&ron);
    assert_eq!(from_ron.job.unknown, ["idea: Some(Thing(x: 1.5))"]);
    let through_json = read(&file::write_json(&from_ron.job).unwrap());
    assert_eq!(through_json, from_ron);
    assert!(file::write(&through_json.job).unwrap().contains("idea: Some(Thing(x: 1.5))"));
}

#[test]
fn a_folder_of_jobs_may_hold_both() {
    let folder = tempfile::tempdir().unwrap();
    let [tea, stair, porch, _] = EXAMPLES.map(|(_, text)| read(text).job);
    file::save(&tea, &folder.path().join("b.json")).unwrap();
    file::save(&stair, &folder.path().join("a.ron")).unwrap();
    file::save(&porch, &folder.path().join("c.JSON")).unwrap();
    std::fs::write(folder.path().join("d.txt"), "no job").unwrap();
    let text = std::fs::read_to_string(folder.path().join("b.json")).unwrap();
    assert!(text.starts_with('{') && serde_json::from_str::<Value>(&text).is_ok());
    let jobs = jobs_in(folder.path()).unwrap();
    let read: Vec<Job> = jobs.into_iter().map(|(_, job)| job).collect();
    assert_eq!(read, [stair, tea, porch]);
}

/// The published schema of job files.
fn schema() -> String {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/assets/job.schema.json");
    std::fs::read_to_string(path).unwrap()
}

#[test]
fn the_published_schema_of_jobs_is_that_of_the_types_and_fields() {
    let now = job_schema().unwrap();
    assert_eq!(schema(), now, "write it anew: gapwright schema --job > assets/job.schema.json");
}

/// The examples, an empty job and one with a price book keep to the schema; a slip of the pen does not.
#[test]
fn jobs_keep_to_the_schema_and_slips_do_not() {
    let schema = jsonschema::validator_for(&serde_json::from_str(&job_schema().unwrap()).unwrap()).unwrap();
    let mut priced = read(EXAMPLES[1].1).job;
    priced.price_book = Some(PriceBook::of(Catalog::built_in(), priced.visited));
    let jobs = EXAMPLES.iter().map(|(_, text)| read(text).job).chain([Job::default(), priced]);
    for job in jobs {
        let value: Value = serde_json::from_str(&file::write_json(&job).unwrap()).unwrap();
        let faults: Vec<String> =
            schema.iter_errors(&value).map(|error| format!("{}: {error}", error.instance_path())).collect();
        assert!(faults.is_empty(), "{}: {faults:#?}", job.title);
    }
    let tea = serde_json::to_value(read(EXAMPLES[0].1).job).unwrap();
    for (place, wrong) in [
        ("/plan/crew", Value::from(0)),
        ("/plan/crew", Value::from(2.5)),
        ("/plan/delivered_at", Value::from(61.0)),
        ("/air/FromClimate/house/heat_to", Value::from(-31.0)),
        ("/survey/gaps/0/width", Value::from(2.8)),
        ("/survey/gaps/0/width", Value::from("7/64")),
        ("/survey/gaps/0/failed", Value::from("Rust")),
        ("/visited", Value::from(20_260_214)),
        ("/surfaces/0/sections/0/board/profile", serde_json::json!({"Groove": "1/8 in"})),
    ] {
        let mut job = tea.clone();
        *job.pointer_mut(place).unwrap() = wrong;
        assert!(!schema.is_valid(&job), "{place} may be {}", job.pointer(place).unwrap());
    }
    let mut job = tea;
    job["plan"]["crew_size"] = Value::from(3);
    assert!(!schema.is_valid(&job), "a field that is not there is taken");
}
