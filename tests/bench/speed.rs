//! How fast the main job is: `cargo bench`.
//!
//! `after a price` and `after a reading` are the times from an edit of the demo to a new answer: no belief
//! follows from a price, so it stands; every reading weighs all worlds anew. `assess 5000 joints` is the
//! same for a surface far larger than a room; `letter` the typesetting of the homeowner's letter. `drying`,
//! `trials` and `row` are the kernels; `peers.py` beside this file runs the same drying and trials in
//! scipy and numpy and prints the ratios.

use std::f64::consts::TAU;
use std::hint::black_box;
use std::time::Instant;

use criterion::{Criterion, criterion_group, criterion_main};
use egui_kittest::Harness;
use gapwright::air::psychrometrics::{saturation_pressure, vapor_pressure};
use gapwright::app::App;
use gapwright::assess::assess;
use gapwright::bead::MovementLimits;
use gapwright::job::demo_job;
use gapwright::job::{Catalog, Job};
use gapwright::joint::{Row, RowBoard, RowJoint};
use gapwright::measure::{Angle, Humidity, Length, Money, Temperature};
use gapwright::papers::{Paper, Papers};
use gapwright::repair::{CallbackRule, RiskJoint, RiskOption, SectionMovement, Tears, risks};
use gapwright::surface::pattern::{Pattern, rectangle};
use gapwright::surface::{BoardSpec, Surface, layout};
use gapwright::survey::GapReading;
use gapwright::wood::drying::{Drying, Exposure, Panel, Wood, transfer};
use serde::Deserialize;

/// A hall whose boards meet at 5 000 joints.
fn hall() -> Job {
    let outline = rectangle(Length::m(60.0), Length::m(65.0));
    let board = BoardSpec { longest: Some(Length::m(5.5)), ..BoardSpec::default() };
    let (sections, dividers) =
        Pattern::StraightRun { direction: Angle::ZERO }.fill(&outline, &board, &|number| number.to_string());
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

/// Two years at steps of 6 h through 20 cells: a painted 19 mm board with an open back.
fn drying(criterion: &mut Criterion) {
    let panel = Panel {
        thickness: Length::mm(19.0),
        density: 380.0,
        transfer: [transfer(2e-8, Some(5.0)), transfer(1e-8, None)],
    };
    let air = |step: u32| {
        let day = 240.0 + (f64::from(step) + 0.5) / 4.0;
        let t = Temperature::celsius(20.0 + 2.5 * (TAU * (day - 110.0) / 365.0).sin());
        let rh = Humidity::fraction(0.42 + 0.14 * (TAU * (day - 130.0) / 365.0).sin());
        Exposure {
            celsius: t.to_celsius(),
            saturation: saturation_pressure(t),
            vapour: vapor_pressure(t, rh),
        }
    };
    criterion.bench_function("drying", |b| {
        b.iter(|| {
            let mut board = Drying::uniform(Wood, black_box(panel), 20, 0.17);
            (0..2920).for_each(|step| {
                board.step(air(step), 21_600.0);
            });
            board.mean()
        });
    });
}

/// 10 000 trials on 2 000 joints.
fn trials(criterion: &mut Criterion) {
    let joint = |at: u32| RiskJoint {
        section: (at / 500) as usize,
        length: Length::m(2.7),
        across: Length::mm(130.0),
        bead: Some(MovementLimits::breaks_at(Length::mm(0.5 + f64::from(at % 37) / 24.0))),
        open_from: Length::mm(0.4),
        scatter: 0.3,
        moves: 0.17,
        lost: false,
    };
    let swing =
        SectionMovement { worlds: (0..512).map(|at| (0.007 + 4e-6 * f64::from(at), 0.004)).collect() };
    let option = RiskOption::alike(vec![swing; 4], (0..2000).map(joint).collect());
    let (rule, capability) = (CallbackRule::default(), &Catalog::built_in().capability);
    criterion.bench_function("trials", |b| {
        b.iter(|| {
            risks(black_box(std::slice::from_ref(&option)), &rule, capability, Tears::Unknown, 10_000, 1)
        });
    });
}

/// A row of 5 000 boards that tears, then finds its balance.
fn row(criterion: &mut Criterion) {
    let board = RowBoard { narrows: 1.0, at_groove: 1.0, at_tongue: 0.0, nails: 1.0 };
    let joint = |at: u32| RowJoint {
        stiffness: 5.0,
        reach: 0.05 + 0.002 * f64::from(at * 7919 % 101),
        room: 0.5,
        bonded: true,
    };
    let row = Row::new(vec![board; 5000], (0..4999).map(joint).collect());
    criterion.bench_function("row", |b| {
        b.iter(|| {
            let mut row = black_box(&row).clone();
            row.tear();
            row.balance()
        });
    });
}

fn speed(criterion: &mut Criterion) {
    let catalog = Catalog::built_in();
    let demo = demo_job();
    // Another price or another reading every time, so that nothing of the last answer stands that should not.
    let mut priced = demo.clone();
    criterion.bench_function("after a price", |b| {
        b.iter(|| {
            priced.plan.prices.labor = priced.plan.prices.labor + Money::cents(1);
            assess(black_box(&priced).clone(), catalog)
        });
    });
    let mut read = demo.clone();
    criterion.bench_function("after a reading", |b| {
        b.iter(|| {
            let gap = &mut read.survey.gaps[0].width;
            *gap = *gap + Length::mm(1e-4);
            assess(black_box(&read).clone(), catalog)
        });
    });
    let hall = hall();
    let joints = assess(hall.clone(), catalog).joints.len();
    let mut slow = criterion.benchmark_group("large");
    slow.sample_size(10);
    slow.bench_function(format!("assess {joints} joints"), |b| {
        b.iter(|| assess(black_box(&hall).clone(), catalog));
    });
    slow.finish();
    let found = assess(demo.clone(), catalog);
    criterion.bench_function("letter", |b| {
        b.iter(|| Papers::new(black_box(&found)).typeset(Paper::Letter).map(|letter| letter.pdf()));
    });
    // As after an edit: another price every time, so that nothing is remembered from the last.
    let mut edited = demo;
    criterion.bench_function("all papers after an edit", |b| {
        b.iter(|| {
            edited.plan.prices.labor = edited.plan.prices.labor + Money::cents(1);
            let found = assess(edited.clone(), catalog);
            let papers = Papers::new(&found);
            Paper::ALL.map(|paper| papers.typeset(paper).and_then(|paper| paper.pdf()).map(|pdf| pdf.len()))
        });
    });
    criterion.bench_function("preview of the letter after an edit", |b| {
        b.iter(|| {
            edited.plan.prices.labor = edited.plan.prices.labor + Money::cents(1);
            let found = assess(edited.clone(), catalog);
            Papers::new(&found).typeset(Paper::Letter).map(|letter| letter.images(1.5).len())
        });
    });
}

/// A frame of the window with 5 753 joints on the screen: widgets, drawing, names for screen readers, and
/// the triangles that go to the graphics card.
fn frame(criterion: &mut Criterion) {
    let hall = hall();
    let mut window = Harness::builder()
        .with_size([1280.0, 720.0])
        .build_eframe(move |cc| App::for_test(&cc.egui_ctx, hall));
    window.run();
    criterion.bench_function("frame 5753 joints", |b| {
        // The frame's shapes go to the tessellator without a copy; only the test's window keeps its own.
        b.iter_custom(|frames| {
            (0..frames)
                .map(|_| {
                    let start = Instant::now();
                    window.step();
                    let drawn = start.elapsed();
                    let (shapes, scale) = (window.output().shapes.clone(), window.output().pixels_per_point);
                    let start = Instant::now();
                    black_box(window.ctx.tessellate(shapes, scale));
                    drawn + start.elapsed()
                })
                .sum()
        });
    });
}

/// The surfaces that `tests/numbers/layout/oracle.py` lays out too, all of them.
fn layouts(criterion: &mut Criterion) {
    #[derive(Deserialize)]
    struct Case {
        surface: Surface,
    }
    let cases: Vec<Case> =
        serde_json::from_str(include_str!("../numbers/layout/oracle.json")).expect("the oracle's surfaces");
    criterion.bench_function("layout", |b| {
        b.iter(|| cases.iter().map(|case| layout(black_box(&case.surface)).joints.len()).sum::<usize>());
    });
}

/// How the work grows: boards of a surface, joints, trials, years.
fn growth(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("growth");
    group.sample_size(10);
    for side in [4.0, 8.0, 16.0, 32.0] {
        let outline = rectangle(Length::m(side), Length::m(side));
        let (sections, dividers) =
            Pattern::USUAL[1].fill(&outline, &BoardSpec::default(), &|number| number.to_string());
        let surface = Surface { name: "Hall".into(), outline, sections, dividers, ..Surface::default() };
        let boards = layout(&surface).boards.len();
        group
            .bench_function(format!("layout of {boards} boards"), |b| b.iter(|| layout(black_box(&surface))));
        let mut job = Job { surfaces: vec![surface], ..Job::default() };
        let first = layout(&job.surfaces[0]).joints[boards / 2].label.clone();
        job.survey.gaps.push(GapReading {
            surface: "Hall".into(),
            joint: first,
            width: Length::mm(2.5),
            ..GapReading::default()
        });
        let joints = assess(job.clone(), Catalog::built_in()).joints.len();
        group.bench_function(format!("assessment of {joints} joints"), |b| {
            b.iter(|| assess(black_box(&job).clone(), Catalog::built_in()));
        });
    }
    for years in [1, 2, 5, 10] {
        let mut job = demo_job();
        job.plan.warranty_years = years;
        group.bench_function(format!("assessment with a warranty of {years} years"), |b| {
            b.iter(|| assess(black_box(&job).clone(), Catalog::built_in()));
        });
    }
    group.finish();
}

criterion_group!(benches, drying, trials, row, layouts, speed, frame, growth);
criterion_main!(benches);
