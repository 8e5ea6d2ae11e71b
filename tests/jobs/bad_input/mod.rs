//! Broken files, impossible entries and absurd sizes: each is told of at its place, the rest of the
//! job still gives its answer, nothing panics, and saving never loses a file.

mod air_and_dates;
mod broken_files;
mod drawings;
mod mishaps;
mod plan;
mod readings;
mod refused_files;
mod saving;
mod sizes;

use std::fs;
use std::path::PathBuf;
use std::sync::LazyLock;
use std::time::Duration;

use gapwright::assess::{Assessment, SectionState, assess};
use gapwright::job::fields::{At, Field};
use gapwright::job::{Catalog, Job, Place, Problem, Severity, file};
use gapwright::measure::Units;
use gapwright::words::{Say, Words, answer};
use tempfile::TempDir;

use super::EXAMPLES;

const TEA_ROOM: &str = include_str!("../../../examples/tea_room.ron");

/// The longest that anything may take here, on a busy machine and without optimisation.
const PATIENCE: Duration = Duration::from_secs(60);

/// What the user is told.
fn said(error: &impl Say) -> String {
    error.say(&Words::us_english(Units::Inches, "$"))
}

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
    assess(job.clone(), Catalog::built_in())
}

/// The answer as a person reads it.
fn headline(found: &Assessment) -> String {
    answer::headline(found, &Words::of_job(&found.job))
}

/// The tea room after `change`, and what is found of it.
fn after(change: impl FnOnce(&mut Job)) -> (Job, Assessment) {
    let mut job = tea_room();
    change(&mut job);
    let found = assessed(&job);
    (job, found)
}

/// The words of the examples: US English in inches.
fn words() -> Words {
    Words::us_english(Units::Inches, "$")
}

/// The problem at `place` that has `text` in what it says is wrong and what to do.
#[track_caller]
fn told<'a>(found: &'a Assessment, place: &Place, text: &str) -> &'a Problem {
    let words = words();
    let says = |problem: &&Problem| problem.place == *place && problem.say(&words).contains(text);
    let problem = found.problems.iter().find(says).unwrap_or_else(|| {
        let all: Vec<_> = found.problems.iter().map(|problem| problem.line(&found.job, &words)).collect();
        panic!("nothing at {place:?} says “{text}”, only {all:#?}")
    });
    assert!(!problem.fix(&words).is_empty(), "no way out of “{text}”");
    problem
}

/// [`told`] of an entry of a field.
#[track_caller]
fn told_at<'a>(found: &'a Assessment, field: &'static Field, at: At, text: &str) -> &'a Problem {
    told(found, &Place::Field(field, at), text)
}

/// Asserts that what is to come of the sound tea room is unchanged; the past hangs on the install.
#[track_caller]
fn what_comes_stands(found: &Assessment) {
    for (sound, found) in SOUND.1.sections.iter().zip(&found.sections) {
        moves_alike(sound, found);
        assert_eq!(found.origin.is_some(), sound.origin.is_some());
    }
}

/// Asserts that a section's boards move as they did, to a quarter of a percent of their width: all readings
/// weigh one set of worlds, so what is spoilt elsewhere shifts them a little.
#[track_caller]
fn moves_alike(sound: &SectionState, found: &SectionState) {
    let pairs = sound.motion.narrowing.iter().zip(&found.motion.narrowing);
    let off = pairs.map(|(sound, found)| (sound - found).abs()).fold(0.0, f64::max);
    assert!(off < 2.5e-3, "section {:?}: {off}", (sound.surface, sound.section));
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
            assert_eq!(found.now.readings, sound.now.readings, "section {at:?}");
            let drier = (found.now.moisture.mean - sound.now.moisture.mean).to_pct().abs();
            assert!(drier < 0.5, "section {at:?}: {drier}");
            moves_alike(sound, found);
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

/// A folder with one file in it.
fn file_with(bytes: &[u8]) -> (TempDir, PathBuf) {
    let folder = TempDir::new().unwrap();
    let path = folder.path().join("job.ron");
    fs::write(&path, bytes).unwrap();
    (folder, path)
}
