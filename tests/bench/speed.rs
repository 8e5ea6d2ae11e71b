//! How fast the main job is: `cargo bench`.
//!
//! `assess demo` is the time from an edit to a new answer; `assess 5000 joints` the same for a
//! surface far larger than a room; `letter` the typesetting of the homeowner's letter.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use gapwright::app::demo_job;
use gapwright::assess::assess;
use gapwright::job::{Job, Shelf};
use gapwright::measure::{Angle, Length};
use gapwright::papers::Paper;
use gapwright::surface::pattern::{Pattern, rectangle};
use gapwright::surface::{BoardSpec, Surface};
use gapwright::survey::GapReading;

/// A hall whose boards meet at 5 000 joints.
fn hall() -> Job {
    let outline = rectangle(Length::m(60.0), Length::m(65.0));
    let board = BoardSpec { longest: Some(Length::m(5.5)), ..BoardSpec::default() };
    let (sections, dividers) = Pattern::StraightRun { direction: Angle::ZERO }.fill(&outline, &board);
    let surface = Surface { name: "Hall".into(), outline, sections, dividers, ..Surface::default() };
    let mut job = Job { surfaces: vec![surface], ..Job::default() };
    for course in [3, 90, 200, 310, 420] {
        job.survey.gaps.push(GapReading {
            surface: "Hall".into(),
            joint: format!("A {course}"),
            width: Length::mm(2.5),
            ..GapReading::default()
        });
    }
    job
}

fn speed(criterion: &mut Criterion) {
    let shelf = Shelf::built_in();
    let demo = demo_job();
    criterion.bench_function("assess demo", |b| b.iter(|| assess(black_box(&demo), shelf)));
    let hall = hall();
    let joints = assess(&hall, shelf).joints.len();
    let mut slow = criterion.benchmark_group("large");
    slow.sample_size(10);
    slow.bench_function(format!("assess {joints} joints"), |b| b.iter(|| assess(black_box(&hall), shelf)));
    slow.finish();
    let found = assess(&demo, shelf);
    criterion.bench_function("letter", |b| {
        b.iter(|| Paper::Letter.typeset(black_box(&demo), &found).map(|letter| letter.pdf()));
    });
}

criterion_group!(benches, speed);
criterion_main!(benches);
