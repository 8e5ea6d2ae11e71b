//! A surface to be added: its kind, its sides, how its boards run.

use eframe::egui::{Grid, Ui};

use crate::app::command::Command;
use crate::app::context::{WindowContext, read_room};
use crate::app::entry::entry;
use crate::app::lead;
use crate::app::pick::Purpose;
use crate::app::widgets::{choose, term};
use crate::measure::{Length, Quantity};
use crate::surface::pattern::Pattern;
use crate::surface::{NewSurface, SurfaceKind};
use crate::words::Say as _;
use crate::words::boards::divider_name;

/// Width of an entry, in points.
const WIDTH: f32 = 90.0;

pub(super) fn new_surface(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (mut new, words) = (context.view.drafts.surface.clone(), context.words);
    Grid::new("new surface").num_columns(2).show(ui, |ui| {
        ui.label(words.text("field-surface-kind"));
        let kinds = SurfaceKind::ALL.map(|kind| (kind, kind.say(words)));
        if let Some(kind) = choose(ui, &words.text("new-surface-kind"), new.kind, &kinds) {
            new.kind = kind;
        }
        ui.end_row();
        sides(ui, context, &mut new);
        ui.label(words.text("boards-pattern-of"));
        let patterns = Pattern::USUAL.map(|pattern| (pattern, pattern.say(words)));
        if let Some(pattern) = choose(ui, &words.text("new-surface-pattern"), new.pattern, &patterns) {
            new.pattern = pattern;
        }
        ui.end_row();
    });
    context.view.drafts.surface = new.clone();
    let hint = words.text("new-surface-outlines");
    if ui.button(words.text("cmd-outlines")).on_hover_text(hint).clicked() {
        context.push(Command::Pick(Purpose::Outlines));
    }
    if ui.button(words.text("new-surface-add")).clicked() {
        add(context, new);
    }
}

/// The sides of the new surface, a row each.
fn sides(ui: &mut Ui, context: &mut WindowContext<'_>, new: &mut NewSurface) {
    let words = context.words;
    let wall = new.kind == SurfaceKind::Wall;
    ui.label(words.text(if wall { "new-surface-wall-length" } else { "new-surface-width" }));
    if std::mem::take(&mut context.view.drafts.take_size) {
        lead::next_takes_focus(ui.ctx());
    }
    if let Some(Some(width)) = side(ui, context, "new-surface-width-entry", Some(new.width), false) {
        new.width = width;
    }
    ui.end_row();
    ui.label(words.text(if wall { "new-surface-wall-height" } else { "new-surface-depth" }));
    if let Some(Some(height)) = side(ui, context, "new-surface-height-entry", Some(new.height), false) {
        new.height = height;
    }
    ui.end_row();
    if wall {
        term(ui, &words.text("new-surface-right"), &words.text("new-surface-right.hint"));
        if let Some(right) = side(ui, context, "new-surface-right-entry", new.right, true) {
            new.right = right;
        }
        ui.end_row();
    }
}

/// The entry of a side, called by the message `name`; only an optional one may be left empty.
fn side(
    ui: &mut Ui,
    context: &WindowContext<'_>,
    name: &str,
    now: Option<Length>,
    optional: bool,
) -> Option<Option<Length>> {
    let (units, words) = (context.units(), context.words);
    let shown = now.map_or_else(String::new, |side| Quantity::RoomLength(side).entry_text(units));
    entry(ui, &words.text(name), &shown, WIDTH, |text| match text.trim() {
        "" if optional => Ok(None),
        text => read_room(text, units, &NewSurface::SIDES, words).map(Some),
    })
}

/// Adds the surface, with boards like those that were described last, and shows it.
fn add(context: &mut WindowContext<'_>, new: NewSurface) {
    let (index, words) = (context.job.surfaces.len(), context.words.clone());
    context.edit("new-surface-add", move |job| {
        let last = job.surfaces.last().and_then(|surface| surface.sections.last());
        let board = last.map(|section| section.board.clone()).unwrap_or_default();
        let name = job.free_surface_name(&new.kind.say(&words));
        job.surfaces.push(new.draw(name, &board, &|number| divider_name(&words, number)));
    });
    context.push(Command::Surface(index));
}
