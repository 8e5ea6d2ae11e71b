//! What holds of every job, held against jobs at random.
//!
//! `PROPTEST_CASES=10000 cargo test --release --test hostile invariants` tries more of them.

use crate::arbitrary::{self, Dice};
use eframe::egui::Context;
use gapwright::app::{App, Command, Edit};
use gapwright::assess::{Assessment, assess};
use gapwright::export::Report;
use gapwright::job::{Catalog, Job, file};
use gapwright::measure::{Angle, Length, Moisture, Percent, Units};
use gapwright::surface::pattern::{Pattern, rectangle};
use gapwright::surface::{BoardSpec, Fixing, JointKind, Point, Section, Surface, SurfaceLayout, layout};
use gapwright::wood::width_change;
use proptest::prelude::*;
use proptest::test_runner::RngSeed;
use serde_json::Value;

fn assessed(job: &Job) -> Assessment {
    assess(job.clone(), Catalog::built_in())
}

fn run(laid: &SurfaceLayout, kind: JointKind) -> f64 {
    laid.joints.iter().filter(|joint| joint.kind == kind).map(|joint| joint.length().to_m()).sum()
}

/// Lengths of all joints by kind, and the areas: what no turning of the drawing changes.
fn totals(laid: &SurfaceLayout) -> Vec<f64> {
    let kinds = [JointKind::BoardEdge, JointKind::BoardEnd, JointKind::Divider, JointKind::Perimeter];
    let runs = kinds.map(|kind| run(laid, kind));
    let boards = u32::try_from(laid.boards.len()).unwrap();
    runs.into_iter().chain([laid.plan_area.to_m2(), f64::from(boards)]).collect()
}

fn near(a: &[f64], b: &[f64], within: f64) -> Result<(), TestCaseError> {
    for (a, b) in a.iter().zip(b) {
        prop_assert!((a - b).abs() <= within * (1.0 + a.abs()), "{a} is not {b}");
    }
    Ok(())
}

/// The surface with every corner, end and direction moved by `way`, which turns by `turn` after
/// mirroring left to right if asked to.
fn moved(surface: &Surface, mirrored: bool, turn: f64, shift: (f64, f64)) -> Surface {
    let (sin, cos) = turn.to_radians().sin_cos();
    let way = |point: &mut Point| {
        let (x, y) = (point.0.to_m(), point.1.to_m());
        let x = if mirrored { -x } else { x };
        *point = Point::m(x * cos - y * sin + shift.0, x * sin + y * cos + shift.1);
    };
    let mut surface = surface.clone();
    surface.outline.iter_mut().for_each(way);
    surface.openings.iter_mut().flat_map(|opening| &mut opening.corners).for_each(way);
    for divider in &mut surface.dividers {
        way(&mut divider.from);
        way(&mut divider.to);
    }
    for section in &mut surface.sections {
        section.region.iter_mut().flatten().for_each(way);
        // Courses are counted from the low side across their direction: mirrored, they still are.
        let degrees = section.direction.to_degrees();
        section.direction = Angle::degrees(if mirrored { -degrees } else { degrees } + turn);
        // Butt joints are counted from one end, and mirroring changes ends.
        section.board.longest = section.board.longest.filter(|_| !mirrored);
    }
    surface
}

/// A report without its words, which speak in the job's units.
fn figures(value: &Value) -> Value {
    match value {
        Value::Object(all) => {
            let figures = all.iter().filter(|(key, value)| !value.is_string() || *key == "total");
            Value::Object(figures.map(|(key, value)| (key.clone(), figures_of(value))).collect())
        }
        other => figures_of(other),
    }
}

fn figures_of(value: &Value) -> Value {
    match value {
        Value::Array(all) => {
            Value::Array(all.iter().filter(|value| !value.is_string()).map(figures).collect())
        }
        Value::Object(_) => figures(value),
        other => other.clone(),
    }
}

/// How many jobs each property tries: a few, the same every time; others where `PROPTEST_CASES` asks for
/// a long run.
fn config() -> ProptestConfig {
    match std::env::var("PROPTEST_CASES") {
        Ok(count) => ProptestConfig { cases: count.parse().unwrap(), ..ProptestConfig::default() },
        Err(_) => ProptestConfig { cases: 12, rng_seed: RngSeed::Fixed(20_261), ..ProptestConfig::default() },
    }
}

proptest! {
    #![proptest_config(config())]

    /// The drier the boards, the wider every joint that is free to open.
    #[test]
    fn more_drying_never_narrows_a_free_joint(seed in any::<u64>()) {
        let found = assessed(&arbitrary::job(seed));
        for joint in found.joints.iter().filter(|joint| joint.gap.is_some() && joint.push <= Length::ZERO) {
            let Some(state) = joint.section.map(|at| &found.sections[at]) else { continue };
            // Where sections meet, boards of two moistures share the joint.
            if found.layouts[joint.surface].joints[joint.joint].kind != JointKind::BoardEdge {
                continue;
            }
            let mut days: Vec<usize> = (0..365).step_by(7).collect();
            days.sort_by(|a, b| state.motion.narrowing[*a].total_cmp(&state.motion.narrowing[*b]));
            let gaps = days.iter().filter_map(|day| found.gap_on(joint, *day)).map(Length::to_mm);
            let gaps: Vec<f64> = gaps.collect();
            prop_assert!(gaps.windows(2).all(|pair| pair[0] <= pair[1] + 1e-9), "{gaps:?}");
        }
    }

    #[test]
    fn a_drier_board_is_a_narrower_one(at in 0_usize..90, ring in 0.0..90.0_f64, from in 4.0..28.0_f64, a in 2.0..35.0_f64, b in 2.0..35.0_f64) {
        let species = &Catalog::built_in().species[at];
        let to = |moisture: f64| {
            width_change(species, Angle::degrees(ring), Moisture::pct(from), Moisture::pct(moisture))
        };
        prop_assert!(to(a.min(b)) <= to(a.max(b)) + 1e-15);
    }

    /// Of a rectangle with boards from edge to edge: what its joints show together is all of the wood.
    #[test]
    fn the_shares_of_the_joints_add_up_to_the_movement(
        width in 0.5..6.0_f64, height in 0.5..4.0_f64, face in 60.0..240.0_f64, fixing in 0_usize..3, upright in any::<bool>()
    ) {
        let fixing = [Fixing::Tongue, Fixing::Middle, Fixing::Groove][fixing];
        let board = BoardSpec { face_width: Length::mm(face), overall_width: Length::mm(face + 6.0), fixing, ..BoardSpec::default() };
        let outline = rectangle(Length::m(width), Length::m(height));
        let direction = Angle::degrees(if upright { 90.0 } else { 0.0 });
        let (sections, dividers) = Pattern::StraightRun { direction }.fill(&outline, &board, &|number| number.to_string());
        let laid = layout(&Surface { outline, sections, dividers, ..Surface::default() });
        let shown: f64 = laid.joints.iter().map(|joint| joint.length().to_m() * joint.moves_across.to_m()).sum();
        let wood: f64 = laid.plan_area.to_m2();
        prop_assert!((shown - wood).abs() < 1e-6 * wood, "{shown} m² of {wood}");
    }

    #[test]
    fn turning_mirroring_and_shifting_changes_no_length(
        seed in any::<u64>(), turn in 0.0..360.0_f64, mirrored in any::<bool>(), x in -9.0..9.0_f64, y in -9.0..9.0_f64
    ) {
        for mut surface in arbitrary::job(seed).surfaces {
            if mirrored {
                surface.sections.iter_mut().for_each(|section| section.board.longest = None);
            }
            let turned = moved(&surface, mirrored, turn, (x, y));
            near(&totals(&layout(&surface)), &totals(&layout(&turned)), 1e-5)?;
        }
    }

    /// Across its boards, with nothing between: the boards' edges stay what they were, and the area too.
    #[test]
    fn splitting_a_section_changes_no_total(width in 1.0..6.0_f64, height in 0.5..4.0_f64, part in 0.2..0.8_f64, face in 60.0..200.0_f64) {
        let board = BoardSpec { face_width: Length::mm(face), overall_width: Length::mm(face + 6.0), ..BoardSpec::default() };
        let outline = rectangle(Length::m(width), Length::m(height));
        let (sections, dividers) = Pattern::USUAL[0].fill(&outline, &board, &|number| number.to_string());
        let whole = Surface { outline, sections, dividers, ..Surface::default() };
        let cut = width * part;
        let half = |name: &str, from: f64, to: f64| {
            let corners = [(from, 0.0), (to, 0.0), (to, height), (from, height)];
            let region = corners.map(|(x, y)| Point::m(x, y)).to_vec();
            Section { name: name.to_owned(), region: Some(region), ..whole.sections[0].clone() }
        };
        let split = Surface { sections: vec![half("A", 0.0, cut), half("B", cut, width)], ..whole.clone() };
        let (before, after) = (layout(&whole), layout(&split));
        let kept = |laid: &SurfaceLayout| {
            vec![run(laid, JointKind::BoardEdge), run(laid, JointKind::Perimeter), laid.plan_area.to_m2()]
        };
        near(&kept(&before), &kept(&after), 1e-6)?;
    }

    #[test]
    fn inches_and_millimetres_give_the_same_figures(seed in any::<u64>()) {
        let mut job = arbitrary::job(seed);
        let [inches, metric] = [Units::Inches, Units::Millimeters].map(|units| {
            job.units = units;
            figures(&serde_json::to_value(Report::new(&assessed(&job), &[])).unwrap())
        });
        prop_assert_eq!(inches, metric);
    }

    /// The draws are common to all ways and all jobs: names and notes change none, nor does another way.
    #[test]
    fn the_same_job_has_the_same_chances(seed in any::<u64>()) {
        let job = arbitrary::job(seed);
        let other = Job { title: "Another".to_owned(), notes: "Noted".to_owned(), ..job.clone() };
        let (a, b) = (assessed(&job), assessed(&other));
        prop_assert_eq!(&a.options, &b.options);
        let mut catalog = Catalog::clone(Catalog::built_in());
        catalog.methods.pop();
        let fewer = assess(job, &std::sync::Arc::new(catalog));
        for option in &fewer.options {
            let with_all = a.options.iter().find(|other| other.method == option.method).unwrap();
            prop_assert_eq!(&option.callback, &with_all.callback);
        }
    }

    #[test]
    fn a_saved_job_is_loaded_as_it_was(seed in any::<u64>()) {
        let job = arbitrary::job(seed);
        let loaded = file::read(&file::write(&job).unwrap()).unwrap();
        prop_assert_eq!(loaded.problems, vec![]);
        prop_assert_eq!(&loaded.job, &job);
        let as_json = file::read(&file::write_json(&job).unwrap()).unwrap();
        prop_assert_eq!(as_json.problems, vec![]);
        prop_assert_eq!(&as_json.job, &job);
        // And so is what it comes to.
        prop_assert_eq!(assessed(&loaded.job).options, assessed(&job).options);
    }
}

proptest! {
    // Every step is assessed, so that a few cases are many jobs.
    #![proptest_config(ProptestConfig { cases: config().cases.div_ceil(6), ..config() })]

    #[test]
    fn undoing_everything_gives_the_job_back_and_redoing_the_last(seed in any::<u64>(), steps in 1_usize..12) {
        let ctx = Context::default();
        let first = arbitrary::job(seed);
        let mut app = App::for_test(&ctx, first.clone());
        let dice = &mut Dice::new(seed);
        for _ in 0..steps {
            edit(&mut app, &ctx, dice);
        }
        let last = app.job().clone();
        for _ in 0..steps {
            app.apply(&ctx, Command::Undo);
        }
        prop_assert_eq!(app.job(), &first);
        for _ in 0..steps {
            app.apply(&ctx, Command::Redo);
        }
        prop_assert_eq!(app.job(), &last);
    }
}

/// A change that a user might make.
fn edit(app: &mut App, ctx: &Context, dice: &mut Dice) {
    let (which, size, at) = (dice.below(8), dice.between(0.5, 4.0), dice.below(50));
    let change = move |job: &mut Job| match which {
        0 => job.title.push_str(" more"),
        1 => job.plan.crew += 1,
        2 => job.surfaces[0].stretch_edge(at % 3, Length::m(size)),
        3 => job.rename_section(0, 0, &format!("Section {at}")),
        4 => job.redraw(0, |surface| surface.trim = Length::mm(size)),
        5 => job.survey.gaps.truncate(at),
        6 => job.plan.discount = Percent::pct(size),
        _ => job.notes = format!("{at}"),
    };
    app.apply(ctx, Command::Edit(Edit { name: "Change".to_owned(), change: Box::new(change) }));
}
