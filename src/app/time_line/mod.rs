//! The time line: the gap from the install, over the visit and the sealing, to two years ahead, with its
//! range and what was measured; on demand the boards' moisture and the room's humidity under it. Drag
//! through it, step by key or let it play, and the drawing, the strip of boards and the joint section follow.

mod charts;
mod curves;
mod events;

use std::time::Duration;

use eframe::egui::{self, EventFilter, Key, Label, Response, RichText, TextStyle, Ui};

use self::curves::Curves;
use super::command::Command;
use super::context::WindowContext;
use super::icon::Icon;
use super::theme;
use super::widgets::text_width;
use crate::assess::{JointState, SectionState, date_on};
use crate::measure::Length;
use crate::words::say;

/// Days ahead that are shown.
const AHEAD: i64 = 730;
/// Days back that are shown at most.
const BACK: i64 = 400;
/// Every how many days a curve has a point.
const STEP: usize = 3;
/// Frames in which everything plays once: about twelve seconds.
const FRAMES: i64 = 360;
/// Time between them.
const FRAME: Duration = Duration::from_millis(33);
/// So many days from a day that has a name, a day is called by it: days run past in steps while they play.
const NEXT_TO: i64 = 3;
/// Space between what stands in the row over the charts.
const BETWEEN: f32 = 8.0;
/// Days of a step by key.
const KEY_STEP: i64 = 7;

pub(super) fn time_line(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some(state) = context.shown_section() else {
        ui.vertical_centered(|ui| {
            ui.add_space(60.0);
            ui.label(RichText::new(context.words.text("time-line-empty")).color(context.palette.soft));
        });
        return;
    };
    let curves = Curves::new(context, state);
    play(ui, context, &curves);
    header(ui, context, state);
    let (response, picked) = charts::charts(ui, context, &curves);
    let picked = picked.map(|day| day.round() as i64);
    let picked = picked.or_else(|| step_by_key(ui, &response, context.day()));
    if let Some(day) = picked.map(|day| day.clamp(curves.start, AHEAD)).filter(|day| *day != context.day()) {
        context.push(Command::Day(day));
    }
}

/// Lets the days run while they play, over and over.
fn play(ui: &Ui, context: &mut WindowContext<'_>, curves: &Curves) {
    if !context.view.time.playing {
        return;
    }
    let next = context.day() + ((AHEAD - curves.start) / FRAMES).max(1);
    context.push(Command::Day(if next > AHEAD { curves.start } else { next }));
    ui.ctx().request_repaint_after(FRAME);
}

/// The day to turn to by the arrow keys, while the time line has the keyboard.
fn step_by_key(ui: &Ui, response: &Response, day: i64) -> Option<i64> {
    if response.clicked() || response.dragged() {
        response.request_focus();
    }
    if !response.has_focus() {
        return None;
    }
    let keys = EventFilter { horizontal_arrows: true, ..EventFilter::default() };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, keys));
    let pressed = |key| ui.input(|input| input.key_pressed(key));
    match (pressed(Key::ArrowLeft), pressed(Key::ArrowRight)) {
        (true, false) => Some(day - KEY_STEP),
        (false, true) => Some(day + KEY_STEP),
        _ => None,
    }
}

/// Buttons, whose gap it is, and what it is on the day shown.
fn header(ui: &mut Ui, context: &mut WindowContext<'_>, state: &SectionState) {
    let words = context.words;
    ui.horizontal(|ui| {
        // The buttons first: they stay where they are while the date runs.
        let play = if context.view.time.playing { Icon::Pause } else { Icon::Play };
        if play.button(ui, &words.text("cmd-play"), true).clicked() {
            context.push(Command::Play);
        }
        // The homeowner sees the gap and nothing to set.
        let at_work = context.view.presentation.page.is_none();
        if at_work {
            workshop(ui, context);
        }
        let date = date_on(&context.assessment.job, context.day());
        let gap = shown_section_gap(context, state);
        let day = say!(words, "time-line-day", date = date, gap = &gap);
        if at_work {
            // Where there is no room for both, the day goes before whose gap it is.
            let left = ui.available_width() - text_width(ui, &day, &TextStyle::Body) - 2.0 * BETWEEN;
            let name = RichText::new(name(context, state)).strong();
            ui.scope(|ui| {
                ui.set_max_width(left.max(0.0));
                ui.add(Label::new(name).truncate());
            });
        }
        ui.add(Label::new(day).truncate());
    });
}

/// What is set at work: the curve that is kept, and moisture and humidity.
fn workshop(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    let kept = context.view.time.reference.is_some();
    let reference = if kept { "time-line-clear-reference" } else { "time-line-keep-reference" };
    if Icon::ReferenceCurve.button(ui, &words.text(reference), true).clicked() {
        context.push(Command::ReferenceCurve);
    }
    let more = ui.selectable_label(context.view.time.with_air, words.text("time-line-with-air"));
    if more.on_hover_text(words.text("time-line-with-air.hint")).clicked() {
        context.view.time.with_air ^= true;
    }
}

/// Keeps the gap's curve as it is now, or lets a kept one go.
pub(super) fn keep_reference_curve(ctx: &egui::Context, app: &mut super::App) {
    if app.view.time.reference.take().is_some() {
        return;
    }
    let words = app.words();
    let mut commands = Vec::new();
    let context = app.context(theme::palette(ctx), &words, &mut commands);
    let Some(state) = context.shown_section() else { return };
    let curves = Curves::new(&context, state);
    let reference_curve =
        super::view::ReferenceCurve { name: name(&context, state), gap: curves.gap, limits: curves.limits };
    app.view.time.reference = Some(reference_curve);
}

/// Whose gap is told.
fn name(context: &WindowContext<'_>, state: &SectionState) -> String {
    match &context.view.selection.joint {
        Some(selected) => say!(context.words, "joint-bar-joint", joint = &selected.joint),
        None => {
            let section = &context.assessment.job.surfaces[state.surface].sections[state.section];
            say!(context.words, "time-line-section", section = &section.name)
        }
    }
}

/// What the day shown is called, if the story turns on it or on a day next to it.
pub(super) fn name_of_day(context: &WindowContext<'_>) -> Option<String> {
    let state = context.shown_section()?;
    let joint = context.selected().map(|(_, joint)| joint);
    let story = context.assessment.story(state, joint);
    let day = context.day();
    let stops = charts::stops(&story, is_known(state, joint)).into_iter();
    let near = stops.filter_map(|(stop, message)| Some(((stop? - day).abs(), message)));
    let (_, message) = near.filter(|(far, _)| *far <= NEXT_TO).min_by_key(|(far, _)| *far)?;
    Some(context.words.text(message).into_owned())
}

/// Whether any reading says how wide the gap of a joint is, or that of a section on average.
fn is_known(state: &SectionState, joint: Option<&JointState>) -> bool {
    match joint {
        Some(joint) => joint.gap.is_some(),
        None => state.gaps.measured > 0 || state.gaps.mean > Length::ZERO,
    }
}

/// The gap on the day shown, in words.
fn shown_section_gap(context: &WindowContext<'_>, state: &SectionState) -> String {
    let words = context.words;
    let joint = context.selected().map(|(_, joint)| joint);
    let gap = context.assessment.gap_at(state, joint, context.day());
    let Some(gap) = gap.filter(|_| is_known(state, joint)) else {
        return words.text("time-line-no-reading").into_owned();
    };
    match joint.and_then(|joint| joint.gap) {
        Some(estimated) if !estimated.measured => say!(words, "time-line-about", gap = gap),
        _ => words.figures().length(gap),
    }
}
