//! Pictures of the leaves, light and dark, at scale 1 and 2, by a software renderer.
//!
//! They need a Vulkan driver; `.ci/run` installs one and runs them with
//! `cargo test --test pictures -- --ignored`. After a wanted change of the look:
//! `UPDATE_SNAPSHOTS=1 cargo test --test pictures -- --ignored`.

use eframe::egui::{Key, Modifiers, Theme};
use egui_kittest::kittest::Queryable as _;
use egui_kittest::{Harness, SnapshotResults};
use gapwright::app::App;
use gapwright::job::demo_job;

const LEAVES: [&str; 6] = ["Survey", "Cause", "Repair", "Papers", "Afterwards", "Shelf"];

#[test]
#[ignore = "needs a Vulkan driver; .ci/run installs one"]
fn leaves_look_as_they_did() {
    let mut results = SnapshotResults::new();
    for (theme, name) in [(Theme::Light, "light"), (Theme::Dark, "dark")] {
        for scale in [1.0, 2.0] {
            // At scale 2 one leaf tells whether everything scales; four would only cost space.
            let tabs = if scale > 1.0 { &["Repair"][..] } else { &LEAVES };
            let mut window = Harness::builder()
                .with_size([1280.0, 720.0])
                .with_pixels_per_point(scale)
                .wgpu()
                .build_eframe(|cc| App::for_test(&cc.egui_ctx, demo_job()));
            window.ctx.set_theme(theme);
            for tab in tabs {
                window.get_by_label(tab).click();
                window.run();
                window.remove_cursor();
                window.run();
                results.add(window.try_snapshot(format!("{}-{name}-{scale}", tab.to_lowercase())));
            }
            if scale > 1.0 {
                continue;
            }
            window.get_by_label("Shape").click();
            window.run();
            window.remove_cursor();
            window.run();
            results.add(window.try_snapshot(format!("shape-{name}")));
            window.key_press_modifiers(Modifiers::COMMAND, Key::H);
            window.run();
            results.add(window.try_snapshot(format!("homeowner-{name}")));
        }
    }
}
