//! What a job's readings do to what is believed: more of them tell more, none of them flips it, and what
//! contradicts the rest is told.

use gapwright::assess::{Assessment, assess};
use gapwright::belief::{Cause, Doubted};
use gapwright::job::{Catalog, Job, demo_job, file};
use gapwright::measure::Humidity;
use serde_json::{Value, json};

/// A ceiling of pine, twelve feet by ten, with one section for each list of gaps: joint and width.
fn ceiling(sections: &[&[(usize, &str)]]) -> Value {
    let surface = |at: usize| {
        json!({
            "name": format!("Ceiling {at}"),
            "outline": [["0 in", "0 in"], ["12 ft", "0 in"], ["12 ft", "10 ft"], ["0 in", "10 ft"]],
            "sections": [{"name": "A", "board": {"species": "pine-eastern-white"}}],
        })
    };
    let surfaces: Vec<Value> = (0..sections.len()).map(surface).collect();
    let gaps: Vec<Value> = sections
        .iter()
        .enumerate()
        .flat_map(|(at, gaps)| {
            gaps.iter().map(move |(joint, width)| {
                json!({"surface": format!("Ceiling {at}"), "joint": format!("A {joint}"), "width": width})
            })
        })
        .collect();
    json!({
        "installed": "2025-02-10",
        "visited": "2026-02-14",
        "surfaces": surfaces,
        "survey": {"gaps": gaps, "moistures": []},
        "air": {"FromClimate": {"station": "chicago-il", "house": {}}},
    })
}

fn with_meter(mut job: Value, surface: usize, readings: &[f64]) -> Value {
    let own = job["survey"]["moistures"].as_array_mut().unwrap();
    own.extend(
        readings.iter().map(
            |reading| json!({"surface": format!("Ceiling {surface}"), "section": "A", "reading": reading}),
        ),
    );
    job
}

fn read(job: &Value) -> Job {
    let read = file::read(&job.to_string()).unwrap();
    assert!(read.problems.is_empty(), "{:?}", read.problems);
    read.job
}

fn found(job: &Value) -> Assessment {
    assess(read(job), Catalog::built_in())
}

fn chance(found: &Assessment, cause: Cause) -> f64 {
    found.causes.as_ref().unwrap().of(cause)
}

fn lasts(found: &Assessment) -> f64 {
    1.0 - found.chosen().unwrap().callback.as_ref().unwrap().chance
}

const EVEN: &[(usize, &str)] =
    &[(3, "5/64 in"), (7, "3/32 in"), (11, "3/32 in"), (15, "5/64 in"), (19, "7/64 in")];

/// Three wide joints among closed ones are boards that stick together, and no leak.
#[test]
fn closed_joints_between_wide_ones_are_bonded_boards() {
    let mut gaps = vec![(6, "9/32 in"), (12, "1/4 in"), (18, "5/16 in")];
    gaps.extend([2, 4, 8, 10, 14, 16, 20].map(|joint| (joint, "0 in")));
    let found = found(&with_meter(ceiling(&[&gaps]), 0, &[6.5, 6.8]));
    let [bonded, leak] = [Cause::BondedGroups, Cause::WettedAndDried].map(|cause| chance(&found, cause));
    assert!(bonded > 0.7 && leak < 0.15, "bonded {bonded}, leak {leak}");
}

/// What all readings of one meter are off by does not wear away by reading again.
#[test]
fn the_same_reading_again_tells_little_more() {
    let of = |copies: usize| {
        chance(&found(&with_meter(ceiling(&[EVEN]), 0, &vec![8.0; copies])), Cause::WetAtInstall)
    };
    let (one, dozen) = (of(1), of(12));
    assert!((one - dozen).abs() < 0.15, "{one} by one reading, {dozen} by twelve");
}

/// Boards that went up damp three weeks ago still dry; nothing leaks.
#[test]
fn damp_boards_of_three_weeks_are_no_leak() {
    let gaps: &[(usize, &str)] = &[(3, "3/64 in"), (8, "3/64 in"), (13, "1/32 in"), (18, "3/64 in")];
    let mut job = with_meter(ceiling(&[gaps]), 0, &[11.0, 11.5, 10.5]);
    job["installed"] = json!("2026-01-24");
    let found = found(&job);
    let [wet, leak] = [Cause::WetAtInstall, Cause::WettedAndDried].map(|cause| chance(&found, cause));
    assert!(wet > 0.5 && leak < 0.15, "wet at install {wet}, leak {leak}");
    assert!(!found.sections[0].is_wetted());
}

/// A leak in one section wets no other.
#[test]
fn a_leak_in_one_section_wets_no_other() {
    let wide: &[(usize, &str)] = &[(5, "5/32 in"), (9, "3/16 in"), (13, "11/64 in"), (17, "5/32 in")];
    let tight: &[(usize, &str)] = &[(4, "1/64 in"), (8, "1/64 in"), (12, "0 in"), (16, "1/64 in")];
    let found = found(&with_meter(ceiling(&[tight, wide]), 1, &[19.0, 18.0, 20.0]));
    assert!(found.sections[1].is_wetted() && !found.sections[0].is_wetted());
    let now = found.sections[0].now.moisture.mean.to_pct();
    assert!(now < 10.0, "the dry section is taken to be at {now}%");
}

/// A hygrometer moves what is believed of the room, and one that cannot be right is told.
#[test]
fn the_hygrometer_counts_and_an_odd_one_is_told() {
    let at = |humidity: f64| {
        let mut job = demo_job();
        job.survey.rooms[0].humidity = Humidity::pct(humidity);
        assess(job, Catalog::built_in())
    };
    let [dry, usual, damp] = [20.0, 35.0, 80.0].map(at);
    let settled = |found: &Assessment| found.sections[0].settled.extremes().0.to_pct();
    assert!(settled(&dry) < settled(&usual), "{} and {}", settled(&dry), settled(&usual));
    let told = |found: &Assessment| {
        let conflicts = &found.belief.as_ref().unwrap().conflicts;
        conflicts.iter().any(|conflict| matches!(conflict.reading, Doubted::Room { .. }))
    };
    assert!(told(&damp) && !told(&usual));
}

/// A tenth of a millimeter, or a step of the gauge, is no cliff.
#[test]
fn a_step_of_the_gauge_moves_nothing_far() {
    let with = |width: &str| {
        let mut gaps = vec![(6, "6 mm"), (12, "5.5 mm"), (18, "6.5 mm")];
        gaps.extend([2, 4, 8, 10, 14, 16, 20].map(|joint| (joint, width)));
        found(&ceiling(&[&gaps]))
    };
    let [a, b] = [with("0.10 mm"), with("0.11 mm")].map(|found| chance(&found, Cause::BondedGroups));
    assert!((a - b).abs() < 0.05, "{a} and {b}");
    let with = |width: &str| {
        let mut gaps = EVEN.to_vec();
        gaps[2].1 = width;
        found(&ceiling(&[&gaps]))
    };
    let [a, b] = [with("3/32 in"), with("7/64 in")];
    assert!((lasts(&a) - lasts(&b)).abs() < 0.12, "{} and {}", lasts(&a), lasts(&b));
}

/// Whatever the order in which readings were typed, they say the same.
#[test]
fn the_order_of_entries_does_not_count() {
    let mut job = demo_job();
    let as_typed = assess(job.clone(), Catalog::built_in());
    job.survey.gaps.reverse();
    job.survey.moistures.reverse();
    let reversed = assess(job, Catalog::built_in());
    for cause in Cause::ALL {
        let [a, b] = [&as_typed, &reversed].map(|found| chance(found, cause));
        assert!((a - b).abs() < 1e-6, "{cause:?}: {a} and {b}");
    }
    let [a, b] = [&as_typed, &reversed].map(|found| found.sections[0].gaps.mean.to_mm());
    assert!((a - b).abs() < 0.02, "{a} and {b}");
}

/// A small gap where a bead let go takes the headline from no boards that went up wet.
#[test]
fn let_go_beads_do_not_hide_wet_boards() {
    let mut job =
        ceiling(&[&[(3, "5/32 in"), (7, "3/16 in"), (11, "11/64 in"), (15, "5/32 in"), (19, "3/16 in")]]);
    for gap in job["survey"]["gaps"].as_array_mut().unwrap() {
        gap["failed"] = json!("LetGoOneSide");
    }
    let found = found(&job);
    assert!(chance(&found, Cause::WetAtInstall) > 0.9);
    assert_eq!(found.causes.as_ref().unwrap().main().0, Cause::WetAtInstall);
}

/// One reading says little, and is not made to say more.
#[test]
fn one_reading_gives_no_answer() {
    let found = found(&ceiling(&[&[(6, "1/8 in")]]));
    assert_eq!(found.verdict().recommended, None);
    let interval = found.sections[0].origin.unwrap().interval;
    assert!(interval.high.to_pct() - interval.low.to_pct() > 3.0, "{interval:?}");
}
