//! What helps boards that can't do as they are planned, each with a button to plan it so.

use std::sync::Arc;

use eframe::egui::{Grid, Label, Ui};

use crate::app::context::WindowContext;
use crate::assess::NextInstallFindings;
use crate::ready::{Change, NextInstall};
use crate::words::{next_install as words_of, say};

/// The changes that help; nothing where none has to.
pub(super) fn ways(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    (found, next): (&NextInstallFindings, &NextInstall),
) {
    if !words_of::tells_ways(found) || found.easier.is_empty() {
        return;
    }
    let words = context.words;
    ui.strong(words_of::ways_heading(found, next, words));
    Grid::new("ways").num_columns(2).show(ui, |ui| {
        for easier in &found.easier {
            let way = words_of::way(found, next, easier, words);
            // Boards that lie there don't get narrower.
            if matches!(easier.change, Change::Width(_)) && next.measured() > 0 {
                ui.label("");
                ui.add(Label::new(way).wrap());
                ui.end_row();
                continue;
            }
            let button = ui.button(words.text("next-way-try")).on_hover_text(words.text("next-way-try.hint"));
            if button.accessible_name(say!(words, "next-way-try-named", way = &way)).clicked() {
                let (change, catalog) = (easier.change, Arc::clone(&context.assessment.catalog));
                context.edit("next-way-try", move |job| job.plan_otherwise(change, &catalog.household));
            }
            ui.add(Label::new(way).wrap());
            ui.end_row();
        }
    });
}
