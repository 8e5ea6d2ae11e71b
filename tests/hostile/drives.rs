//! Drives that are full, may not be written to, or go away: the window says so, what was typed stays in
//! it, the job's file stays whole, and saving elsewhere works.
//!
//! Where the machine lets a program mount drives of its own (Linux with user namespaces) the drives are
//! real ones, as big as a few files; the child that meets them is this test binary itself. A limit on
//! the size of files and a folder that is taken away stand in for them everywhere.

#![cfg(unix)]
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use crate::driven::{enter, enter_path, window};
use eframe::egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable as _;
use gapwright::job::demo_job;
use gapwright::job::file::LoadError;
use gapwright::job::{Job, file};
use gapwright::measure::Units;
use gapwright::words::{Say as _, Words};

/// The part a child plays, and the folder it plays it in.
const PART: &str = "GAPWRIGHT_DRIVE_PART";
const FOLDER: &str = "GAPWRIGHT_DRIVE_FOLDER";

/// Runs this binary as a child by way of `program`, which gets `arguments` and then the child's command.
fn child(program: &str, arguments: &[&str], part: &str, folder: &Path) -> Output {
    let mut command = Command::new(program);
    command.args(arguments).arg(std::env::current_exe().unwrap());
    command.args([
        "--exact",
        "drives::the_part_of_the_child",
        "--ignored",
        "--nocapture",
        "--test-threads=1",
    ]);
    command.env(PART, part).env(FOLDER, folder).output().unwrap()
}

/// Asks for a name space of the child's own, in which it may mount.
const UNSHARE: [&str; 3] = ["--user", "--map-root-user", "--mount"];

fn on_a_drive(part: &str) {
    let tried =
        Command::new("unshare").args(UNSHARE).args(["mount", "-t", "tmpfs", "drive", "/mnt"]).output();
    if !tried.is_ok_and(|output| output.status.success()) {
        println!("not run: this machine lets no program mount a drive");
        return;
    }
    let folder = tempfile::tempdir().unwrap();
    let output = child("unshare", &UNSHARE, part, folder.path());
    assert!(
        output.status.success(),
        "{}{}",
        String::from_utf8_lossy(&output.stdout),
        String::from_utf8_lossy(&output.stderr)
    );
}

fn run(program: &str, arguments: &[&str], on: &Path) {
    assert!(Command::new(program).args(arguments).arg(on).status().unwrap().success(), "{program}");
}

#[test]
#[ignore = "it is the child that the other tests start"]
fn the_part_of_the_child() {
    let Some(folder) = std::env::var_os(FOLDER).map(PathBuf::from) else { return };
    let drive = folder.join("drive");
    std::fs::create_dir_all(&drive).unwrap();
    let small = ["-t", "tmpfs", "-o", "size=64k", "drive"];
    match std::env::var(PART).unwrap().as_str() {
        "full" => {
            run("mount", &small, &drive);
            told_and_saved_elsewhere(&folder, &drive, || {
                std::fs::write(drive.join("filler"), vec![0; 1 << 20]).unwrap_err();
            });
            assert_eq!(file::load(&drive.join("job.ron")).unwrap().job, demo_job());
            assert_eq!(std::fs::read_dir(&drive).unwrap().count(), 2, "something was left lying about");
        }
        "read-only" => {
            run("mount", &small, &drive);
            told_and_saved_elsewhere(&folder, &drive, || run("mount", &["-o", "remount,ro"], &drive));
            assert_eq!(file::load(&drive.join("job.ron")).unwrap().job, demo_job());
        }
        "gone" => {
            run("mount", &small, &drive);
            let share = drive.join("share");
            std::fs::create_dir(&share).unwrap();
            run("mount", &small, &share);
            told_and_saved_elsewhere(&folder, &share, || {
                run("umount", &["--lazy"], &share);
                run("mount", &["-o", "remount,ro"], &drive);
            });
        }
        "no room for a file" => {
            let long = Job { notes: "so it goes on ".repeat(4000), ..demo_job() };
            let error = file::save(&long, &folder.join("job.ron")).unwrap_err();
            println!("{}", error.say(&Words::us_english(Units::Inches, "$")));
        }
        other => panic!("no part {other}"),
    }
}

/// Opens a job from the drive, types, lets the mishap happen and saves.
fn told_and_saved_elsewhere(folder: &Path, drive: &Path, mishap: impl FnOnce()) {
    let path = drive.join("job.ron");
    file::save(&demo_job(), &path).unwrap();
    let mut window = window(Job::default());
    window.key_press_modifiers(Modifiers::COMMAND, Key::O);
    window.run();
    enter_path(&mut window, "Job file (.ron or .json)", path.to_str().unwrap(), "Open");
    enter(&mut window, "Job name", "Typed before it happened");
    mishap();
    window.key_press_modifiers(Modifiers::COMMAND, Key::S);
    window.run();
    window.get_by_label_contains("can’t be saved");
    enter(&mut window, "Job name", "Typed after it happened");
    let elsewhere = folder.join("elsewhere.ron");
    window.key_press_modifiers(Modifiers::COMMAND | Modifiers::SHIFT, Key::S);
    window.run();
    enter_path(&mut window, "Save as", elsewhere.to_str().unwrap(), "Save");
    let saved = file::load(&elsewhere).unwrap().job;
    assert_eq!(&saved, window.state().job());
    assert_eq!((saved.title.as_str(), &saved.survey), ("Typed after it happened", &demo_job().survey));
}

#[test]
fn a_full_drive_is_told_and_the_old_file_is_whole() {
    on_a_drive("full");
}

#[test]
fn a_drive_that_may_not_be_written_to_is_told() {
    on_a_drive("read-only");
}

#[test]
fn a_drive_that_went_away_is_told() {
    on_a_drive("gone");
}

/// A file that may grow no further stands in for a full disk: the system's answer is much the same.
#[test]
fn a_file_that_may_not_grow_is_told_and_the_old_job_is_whole() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("job.ron");
    file::save(&demo_job(), &path).unwrap();
    let before = std::fs::read(&path).unwrap();
    // Blocks of 512 bytes; the child's job is far longer than 16 kB.
    let limited = ["-c", "trap '' XFSZ; ulimit -f 32; exec \"$0\" \"$@\""];
    let output = child("sh", &limited, "no room for a file", folder.path());
    let said = String::from_utf8_lossy(&output.stdout);
    assert!(said.contains("can’t be saved") && said.contains("The old file is unchanged"), "{said}");
    assert_eq!(std::fs::read(&path).unwrap(), before);
    // `drive` is the child's.
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 2, "something was left lying about");
}

/// A folder that is gone, as a drive that went away.
#[test]
fn a_folder_that_vanished_is_told() {
    let folder = tempfile::tempdir().unwrap();
    let drive = folder.path().join("drive");
    std::fs::create_dir(&drive).unwrap();
    told_and_saved_elsewhere(folder.path(), &drive, || std::fs::remove_dir_all(&drive).unwrap());
    let error = file::load(&drive.join("job.ron")).unwrap_err();
    assert!(matches!(error, LoadError::Unreadable { .. }), "{error}");
}
