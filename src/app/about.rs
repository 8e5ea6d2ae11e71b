//! What the program is, and under which licenses it and its parts are.

use eframe::egui::{RichText, ScrollArea, TextStyle};

use super::context::WindowContext;
use super::dialog::modal;
use crate::words::say;

/// The libraries with their licenses, a line each: see `tests/structure/licenses.py`.
const LIBRARIES: &str = include_str!("../../assets/licenses.csv");
/// Size of the box, in points: it fits the smallest window.
const WIDTH: f32 = 520.0;
const LIST: f32 = 260.0;
/// Licenses with a comma stand in quotes.
const QUOTE: char = '\u{22}';

/// The box, while it is open.
pub(super) fn about(ui: &eframe::egui::Ui, context: &mut WindowContext<'_>) {
    if !context.view.about {
        return;
    }
    let words = context.words;
    let shown = modal("about", ui.ctx()).show(ui.ctx(), |ui| {
        ui.set_width(WIDTH);
        ui.heading(say!(
            words,
            "about-program",
            version = crate::words::Arg::Name(env!("CARGO_PKG_VERSION"))
        ));
        for message in ["about-license", "about-fonts", "about-climate", "about-places", "about-network"] {
            ui.label(words.text(message));
        }
        ui.add_space(6.0);
        let libraries = LIBRARIES.lines().skip(1);
        ui.label(RichText::new(say!(words, "about-libraries", count = libraries.clone().count())).strong());
        let row = ui.text_style_height(&TextStyle::Small);
        let libraries: Vec<&str> = libraries.collect();
        ScrollArea::vertical().max_height(LIST).auto_shrink(false).show_rows(
            ui,
            row,
            libraries.len(),
            |ui, rows| {
                for library in &libraries[rows] {
                    let mut parts = library.splitn(3, ',');
                    let [name, version, license] = std::array::from_fn(|_| parts.next().unwrap_or_default());
                    ui.label(
                        RichText::new(format!("{name} {version}: {}", license.trim_matches(QUOTE))).small(),
                    );
                }
            },
        );
        ui.add_space(6.0);
        ui.button(words.text("about-close")).clicked()
    });
    if shown.inner || shown.should_close() {
        context.view.about = false;
    }
}
