//! Absurd counts and sizes: told of, and soon done.

use std::io;
use std::process::{Command, Stdio};
use std::sync::mpsc;

use gapwright::assess::Assessment;
use gapwright::job::fields::{self, At, Field};
use gapwright::job::{Job, file};
use gapwright::measure::{Hours, Length, ThreePoint};
use gapwright::repair::Plan;
use gapwright::surface::pattern::rectangle;
use gapwright::surface::{BoardSpec, JointKind, Section};
use gapwright::survey::GapReading;
use tempfile::TempDir;

use super::{PATIENCE, SOUND, after, assessed, others_stand, tea_room, told_at};

/// What is found of a job, after the program itself has shown in a process of its own that it
/// comes to an end: one that runs away is stopped there and takes nothing with it.
fn in_time(what: &str, job: &Job) -> Assessment {
    let folder = TempDir::new().unwrap();
    let path = folder.path().join("job.ron");
    file::save(job, &path).unwrap();
    let mut command = Command::new(env!("CARGO_BIN_EXE_gapwright"));
    command.arg("check").arg(&path).stdout(Stdio::piped()).stderr(Stdio::null());
    let mut running = command.spawn().unwrap();
    // What it prints ends when it does; reading it also keeps the pipe from filling up.
    let mut printed = running.stdout.take().unwrap();
    let (ended, end) = mpsc::channel();
    let waits = std::thread::Builder::new().name(what.to_owned());
    waits.spawn(move || ended.send(io::copy(&mut printed, &mut io::sink()))).unwrap();
    if end.recv_timeout(PATIENCE).is_err() {
        running.kill().unwrap();
        running.wait().unwrap();
        panic!("{what}: still at it after {PATIENCE:?}");
    }
    let status = running.wait().unwrap();
    assert!(status.code().is_some_and(|code| code <= 1), "{what}: {status}");
    assessed(job)
}

#[test]
fn absurd_counts_are_told_and_soon_done() {
    for (field, change) in [
        (&fields::COATS, (|plan, count| plan.coats = count) as fn(&mut Plan, u32)),
        (&fields::CREW_SIZE, |plan, count| plan.crew = count),
        (&fields::ACCLIMATION, |plan, count| plan.acclimation_days = count),
        (&fields::WARRANTY, |plan, count| plan.warranty_years = count),
    ] as [(&'static Field, fn(&mut Plan, u32)); 4]
    {
        for count in [4_000_000_000, u32::MAX] {
            let mut job = tea_room();
            change(&mut job.plan, count);
            let found = in_time(field.id, &job);
            told_at(&found, field, At::ONCE, "4,");
            others_stand(&found, &[]);
            assert!(found.answer.is_complete(), "{}", field.id);
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
    told_at(&found, &fields::FACE_WIDTH, At(0, 0), "more boards than can be drawn");
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
    told_at(&found, &fields::MAX_LENGTH, At(0, 0), "every run is one board");
    for length in [Length::mm(1.0), Length::ZERO, Length::mm(-100.0)] {
        let (_, found) = after(|job| job.surfaces[0].sections[0].board.longest = Some(length));
        told_at(&found, &fields::MAX_LENGTH, At(0, 0), "it is not used");
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
    // What a gauge can't tell apart.
    let mean = found.sections[0].gaps.mean.to_inches();
    assert!((mean - 0.125).abs() < 1.0 / 128.0, "{mean}");
}
