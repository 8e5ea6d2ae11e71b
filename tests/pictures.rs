//! Pictures of the rooms, light and dark, at scale 1 and 2, by a software renderer.
//!
//! They need a Vulkan driver; `.ci/run` installs one and runs them with
//! `cargo test --test pictures -- --ignored`. After a wanted change of the look:
//! `UPDATE_SNAPSHOTS=1 cargo test --test pictures -- --ignored`.

#[path = "shared/made_up.rs"]
mod made_up;

use std::path::{Path, PathBuf};

use eframe::egui::{Key, Modifiers, Theme};
use egui_kittest::kittest::Queryable as _;
use egui_kittest::{Harness, SnapshotOptions, SnapshotResults};
use gapwright::app::App;
use gapwright::assess::assess;
use gapwright::job::{Catalog, Job, demo_job};
use gapwright::measure::Units;
use gapwright::papers::{Paper, PaperWords, Papers, Templates};
use gapwright::words::{Language, Words};

const ROOMS: [&str; 7] = ["Measure", "Why", "Options", "Price", "Papers", "Follow-up", "Catalog"];

/// How a picture is held against the one that was kept. Processors round differently, which may put the
/// edge of a thin line one pixel over: as many pixels as that takes may differ, of the million each picture
/// has.
fn nearly() -> SnapshotOptions {
    SnapshotOptions::new().max_failed_pixels(64)
}

#[test]
#[ignore = "needs a Vulkan driver; .ci/run installs one"]
fn rooms_look_as_they_did() {
    let mut results = SnapshotResults::new();
    for (theme, name) in [(Theme::Light, "light"), (Theme::Dark, "dark")] {
        for scale in [1.0, 2.0] {
            // At scale 2 one room tells whether everything scales; more would only cost space.
            let tabs = if scale > 1.0 { &["Options"][..] } else { &ROOMS };
            let mut window = Harness::builder()
                .with_size([1280.0, 720.0])
                .with_pixels_per_point(scale)
                .wgpu()
                .build_eframe(|cc| App::for_test(&cc.egui_ctx, demo_job()));
            window.ctx.set_theme(theme);
            for tab in tabs {
                // The bar comes first; a tool or a heading may be called the same.
                window.get_all_by_label(tab).next().expect("the room is in the bar").click();
                window.run();
                window.remove_cursor();
                window.run();
                results.add(
                    window.try_snapshot_options(format!("{}-{name}-{scale}", tab.to_lowercase()), &nearly()),
                );
            }
            if scale > 1.0 {
                continue;
            }
            window.get_all_by_label(ROOMS[0]).next().expect("the room is in the bar").click();
            window.run();
            window.get_by_label("Shape").click();
            window.run();
            window.remove_cursor();
            window.run();
            results.add(window.try_snapshot_options(format!("shape-{name}"), &nearly()));
            window.key_press_modifiers(Modifiers::COMMAND, Key::H);
            window.run();
            results.add(window.try_snapshot_options(format!("homeowner-{name}"), &nearly()));
        }
    }
}

/// The beads of the options that lay one, as they are in January and in August, close up and one below the
/// other.
#[test]
#[ignore = "needs a Vulkan driver; .ci/run installs one"]
fn beads_look_as_they_did() {
    let mut results = SnapshotResults::new();
    for (theme, name) in [(Theme::Light, "light"), (Theme::Dark, "dark")] {
        let mut window = Harness::builder()
            .with_size([1280.0, 2300.0])
            .wgpu()
            .build_eframe(|cc| App::for_test(&cc.egui_ctx, demo_job()));
        window.ctx.set_theme(theme);
        window.get_all_by_label("Options").next().expect("the room is in the bar").click();
        window.run();
        for fold in ["All beads in January and August", "Design the bead"] {
            window.get_by_label(fold).click();
            window.run();
        }
        window.get_by_label("Shape the bead").click();
        window.run();
        window.remove_cursor();
        window.run();
        results.add(window.try_snapshot_options(format!("beads-{name}"), &nearly()));
    }
}

/// Where pictures to be looked at go: the folder that `GAPWRIGHT_PICTURES` names, else among cargo's own
/// temporary files.
fn folder() -> PathBuf {
    let folder = std::env::var_os("GAPWRIGHT_PICTURES")
        .map_or_else(|| Path::new(env!("CARGO_TARGET_TMPDIR")).join("made-up"), PathBuf::from);
    std::fs::create_dir_all(&folder).expect("the folder can be made");
    folder
}

/// Typesets every paper in the made-up language, in inches and in millimeters, to be looked at likewise.
#[test]
#[ignore = "writes papers to look at"]
fn papers_in_the_made_up_language() {
    let (folder, language) = (folder(), made_up::made_up());
    for (units, name) in [(Units::Inches, "inches"), (Units::Millimeters, "millimeters")] {
        let found = assess(Job { units, ..demo_job() }, Catalog::built_in());
        let words = || Words::new(language, units, "$");
        let words = PaperWords { owner: words(), crew: words() };
        let papers = Papers::with(&found, Templates::default(), &words);
        for paper in Paper::ALL {
            let pdf = papers.typeset(paper).and_then(|typeset| typeset.pdf()).expect("it is typeset");
            let path = folder.join(format!("{}-{name}.pdf", paper.file_stem()));
            std::fs::write(path, pdf).expect("the paper can be written");
        }
    }
}

/// Draws every room in the made-up language, in a small window and a usual one, to be looked at for text
/// that is cut off or lies over other text.
#[test]
#[ignore = "needs a Vulkan driver; .ci/run installs one"]
fn rooms_in_the_made_up_language() {
    let (folder, language) = (folder(), made_up::made_up());
    for (width, height) in [(1024.0, 700.0), (1366.0, 768.0)] {
        let mut window = Harness::builder()
            .with_size([width, height])
            .wgpu()
            .build_eframe(|cc| App::for_test(&cc.egui_ctx, demo_job()));
        window.ctx.set_theme(Theme::Light);
        window.state_mut().speak(language);
        window.run();
        let draw = |window: &mut Harness<'_, App>, name: &str| {
            window.remove_cursor();
            window.run();
            let picture = window.render().expect("it is drawn");
            let path = folder.join(format!("{width}-{}.png", name.to_lowercase()));
            picture.save(path).expect("the picture can be written");
        };
        for tab in ROOMS {
            let bar = made_up::made_up_text(tab);
            window.get_all_by_label(&bar).next().expect("the room is in the bar").click();
            window.run();
            draw(&mut window, tab);
        }
        window.key_press_modifiers(Modifiers::COMMAND, Key::H);
        window.run();
        for page in 1..=4 {
            draw(&mut window, &format!("homeowner-{page}"));
            window.key_press(Key::ArrowRight);
            window.run();
        }
    }
}

/// Draws every room as a small window shows it at each of four steps of zoom, light in inches and dark in Spanish and
/// millimeters, to be looked at likewise.
#[test]
#[ignore = "needs a Vulkan driver; .ci/run installs one"]
fn rooms_with_little_room() {
    let folder = folder();
    let spanish = Language::of("es-US").expect("it is part of the program");
    for step in 0..=4_u8 {
        let zoom = 1.0 + f32::from(step) / 10.0;
        for (theme, units, language) in [
            (Theme::Light, Units::Inches, Language::us_english()),
            (Theme::Dark, Units::Millimeters, spanish),
        ] {
            let mut window = Harness::builder()
                .with_size([1024.0 / zoom, 700.0 / zoom])
                .with_pixels_per_point(zoom)
                .wgpu()
                .build_eframe(|cc| App::for_test(&cc.egui_ctx, Job { units, ..demo_job() }));
            window.ctx.set_theme(theme);
            window.state_mut().speak(language);
            window.run();
            let words = Words::new(language, units, "$");
            for (at, room) in ROOMS.into_iter().enumerate() {
                let message = format!("tab-{}", room.to_lowercase());
                let name = words.text(&message);
                window.get_all_by_label(&name).next().expect("the room is in the bar").click();
                window.run();
                window.remove_cursor();
                window.run();
                let picture = window.render().expect("it is drawn");
                let path = folder.join(format!("{}-{at}-{room}-{step}.png", language.tag()));
                picture.save(path).expect("the picture can be written");
            }
        }
    }
}
