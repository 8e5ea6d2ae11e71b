//! The process is killed at random instants while it saves and keeps unsaved work: the job's file is the
//! old or the new one, whole, and what was typed is lost for five seconds at most.
//!
//! The child that is killed is this test binary itself, told by the environment to play that part.
//! `GAPWRIGHT_KILLS=1000 cargo test --release --test hostile kill::` kills it a thousand times in each test; by
//! default it is a few dozen times and a few.

use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use crate::driven;
use egui_kittest::Harness;
use gapwright::app::App;
use gapwright::job::demo_job;
use gapwright::job::{Job, file};
use rand::{RngExt as _, SeedableRng as _};
use rand_xoshiro::Xoshiro256PlusPlus;
use rayon::prelude::*;

/// The part a child plays, and the folder it plays it in.
const PART: &str = "GAPWRIGHT_KILLED_PART";
const FOLDER: &str = "GAPWRIGHT_KILLED_FOLDER";
/// Unsaved work may be this old when the process dies.
const LOST_AT_MOST: Duration = Duration::from_secs(5);

fn kills(few: usize) -> usize {
    std::env::var("GAPWRIGHT_KILLS").map_or(few, |count| count.parse().unwrap())
}

fn child(part: &str, folder: &Path) -> Child {
    let mut command = Command::new(std::env::current_exe().unwrap());
    command.args(["--exact", "kill::the_part_of_the_child", "--ignored", "--nocapture", "--test-threads=1"]);
    command.env(PART, part).env(FOLDER, folder).stdout(Stdio::piped()).stderr(Stdio::null());
    command.spawn().unwrap()
}

/// Waits until the child says that it has begun.
fn begun(child: &mut Child) -> BufReader<std::process::ChildStdout> {
    let mut lines = BufReader::new(child.stdout.take().unwrap());
    while !next_line(&mut lines).contains("begun") {}
    lines
}

/// The child's next line.
fn next_line(lines: &mut impl BufRead) -> String {
    let mut line = String::new();
    assert!(lines.read_line(&mut line).unwrap() > 0, "the child ended by itself");
    line
}

/// The jobs that the saving child writes in turn: of very different length, and never the same twice.
fn turn(number: usize) -> Job {
    let notes = format!("{number} ").repeat(if number.is_multiple_of(2) { 20_000 } else { 3 });
    Job { title: format!("Job {number}"), notes, ..demo_job() }
}

#[test]
#[ignore = "it is the child that the other tests kill"]
fn the_part_of_the_child() {
    let Some(folder) = std::env::var_os(FOLDER).map(PathBuf::from) else { return };
    match std::env::var(PART).unwrap().as_str() {
        "save" => {
            println!("begun");
            for number in 1.. {
                file::save(&turn(number), &folder.join("job.ron")).unwrap();
                println!("saved");
            }
        }
        "keep" => keep_typing(folder),
        other => panic!("no part {other}"),
    }
}

/// A window in which a title is typed again and again; what was typed is printed with its time.
fn keep_typing(folder: PathBuf) {
    let mut window: driven::Window = Harness::builder().with_size([1000.0, 700.0]).build_eframe(move |cc| {
        let mut app = App::for_test(&cc.egui_ctx, demo_job());
        app.autosave_in(&cc.egui_ctx, folder);
        app
    });
    println!("begun");
    for number in 0.. {
        let title = format!("Title {number}");
        let edit = gapwright::app::Edit {
            name: "Title".to_owned(),
            change: Box::new(move |job: &mut Job| job.title = title),
        };
        let ctx = window.ctx.clone();
        window.state_mut().apply(&ctx, gapwright::app::Command::Edit(edit));
        println!("typed {number}");
        window.step();
        // The pace of someone typing fast.
        std::thread::sleep(Duration::from_millis(50));
    }
}

#[test]
fn a_job_that_was_being_saved_is_the_old_or_the_new_one() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("job.ron");
    file::save(&turn(0), &path).unwrap();
    let mut random = Xoshiro256PlusPlus::seed_from_u64(7);
    let (mut last, mut moved) = (0, 0);
    for kill in 0..kills(60) {
        let mut child = child("save", folder.path());
        let mut lines = begun(&mut child);
        let (start, saves) = (Instant::now(), random.random_range(0..6_u32));
        (0..saves).for_each(|_| drop(next_line(&mut lines)));
        // Nothing tells that a save is half done: into the next one goes a part of the time of the others.
        let each = if saves == 0 { Duration::from_millis(4) } else { start.elapsed() / saves };
        std::thread::sleep(each.mul_f64(random.random()));
        child.kill().unwrap();
        child.wait().unwrap();
        let loaded = file::load(&path).unwrap();
        assert!(loaded.problems.is_empty(), "kill {kill}: {:?}", loaded.problems);
        let number: usize = loaded.job.title.strip_prefix("Job ").unwrap().parse().unwrap();
        assert!(number >= saves as usize, "kill {kill}: {saves} were saved, {number} is there");
        let expected = turn(number);
        assert_eq!((&loaded.job.title, &loaded.job.notes), (&expected.title, &expected.notes), "kill {kill}");
        let backup = folder.path().join("job.ron.bak");
        if backup.exists() {
            assert!(file::load(&backup).unwrap().problems.is_empty(), "kill {kill}: the backup");
        }
        moved += usize::from(number != last);
        last = number;
    }
    assert!(moved > kills(60) / 10, "the child was killed before it saved: {moved}");
    let left = std::fs::read_dir(folder.path()).unwrap().count();
    println!("{} files are left beside the job", left.saturating_sub(2));
}

/// Several children at a time, as they wait most of it.
#[test]
fn unsaved_work_is_whole_and_at_most_five_seconds_old() {
    let at_once = rayon::ThreadPoolBuilder::new().num_threads(8).build().unwrap();
    at_once.install(|| (0..kills(4)).into_par_iter().for_each(kill_while_typing));
}

fn kill_while_typing(kill: usize) {
    let mut random = Xoshiro256PlusPlus::seed_from_u64(kill as u64);
    let folder = tempfile::tempdir().unwrap();
    let mut child = child("keep", folder.path());
    let mut lines = begun(&mut child);
    let until = Instant::now() + Duration::from_millis(random.random_range(5_200..9_000));
    let mut typed = Vec::new();
    // The promise is one of seconds by the clock, so they must pass.
    while Instant::now() < until {
        if next_line(&mut lines).starts_with("typed") {
            typed.push(Instant::now());
        }
    }
    let killed = Instant::now();
    child.kill().unwrap();
    child.wait().unwrap();
    let kept = std::fs::read_dir(folder.path()).unwrap().map(|entry| entry.unwrap().path());
    let kept: Vec<PathBuf> = kept.filter(|path| path.extension().is_some_and(|e| e == "ron")).collect();
    assert_eq!(kept.len(), 1, "kill {kill}: {kept:?}");
    let text = std::fs::read_to_string(&kept[0]).unwrap();
    let at = text.find("Title ").unwrap_or_else(|| panic!("kill {kill}: nothing typed was kept"));
    let number: String = text[at + 6..].chars().take_while(char::is_ascii_digit).collect();
    let number: usize = number.parse().unwrap();
    // The first edit that was not kept is what is lost from.
    let lost = typed.get(number + 1).map_or(Duration::ZERO, |since| killed - *since);
    assert!(lost <= LOST_AT_MOST, "kill {kill}: {lost:?} of typing is lost");
    println!("kill {kill}: {lost:?} lost");
    // What is kept is offered, whole, by the next window.
    let mut next: driven::Window = {
        let folder = folder.path().to_owned();
        Harness::builder().with_size([1000.0, 700.0]).build_eframe(move |cc| {
            let mut app = App::for_test(&cc.egui_ctx, Job::default());
            app.autosave_in(&cc.egui_ctx, folder);
            app
        })
    };
    next.run_steps(3);
    driven::click(&mut next, "Recover");
    assert_eq!(next.state().job().title, format!("Title {number}"));
}
