//! Saving: what is written reads back to the last bit, and a save that fails loses nothing.

use std::fs;
use std::path::Path;

use gapwright::air::{Air, IndoorAir};
use gapwright::job::file::{Loaded, SaveError};
use gapwright::job::{Job, file};
use gapwright::measure::{
    Angle, Hours, Humidity, Length, Minutes, Moisture, Money, Percent, Temperature, ThreePoint,
};
use jiff::civil::date;
use tempfile::TempDir;

use super::{EXAMPLES, file_with, said, same, tea_room};

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
    let words = said(&error);
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
    job.plan.prices.labor = Money::cents(99_999_999_999_999);
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
