//! The odds of the causes with their clues, and what is known of all joints.

use eframe::egui::{Frame, Grid, Label, Margin, ProgressBar, RichText, Role, Ui, WidgetInfo};

use crate::app::context::WindowContext;
use crate::app::widgets::{heading, remark, term};
use crate::assess::{ClueFinding, Diagnosis, MissingEntry};
use crate::belief::Cause;
use crate::job::fields::{self, At};
use crate::survey::NextReading;
use crate::words::causes::{chance_as_percent, explained};
use crate::words::{self, Arg, Say as _, say, why};

/// Width of a bar: the longest name and chance of any language have room beside it in the narrowest pane.
const BAR: f32 = 56.0;

pub(super) fn odds(ui: &mut Ui, context: &WindowContext<'_>, causes: &Diagnosis) {
    let words = context.words;
    heading(ui, &words.text("why-causes"));
    Grid::new("odds").num_columns(3).spacing([12.0, 5.0]).show(ui, |ui| {
        for cause in Cause::ALL {
            chance(ui, context, cause, causes.of(cause));
            ui.end_row();
        }
    });
    remark(ui, context.palette, words.text("why-causes-remark"));
    heading(ui, &words.text("why-clues"));
    for one in &causes.clues {
        clue(ui, context, one);
    }
    if let Some(reading) = context.assessment.settling_reading() {
        let entry = MissingEntry::ForTheCause(reading);
        ui.add(Label::new(words::answer::missing(context.assessment, entry, words)).wrap());
    }
}

/// A cause with its chance, as a figure and as a bar.
fn chance(ui: &mut Ui, context: &WindowContext<'_>, cause: Cause, chance: f64) {
    let (words, palette) = (context.words, context.palette);
    term(ui, &cause.say(words), &explained(cause, words));
    ui.label(RichText::new(chance_as_percent(chance, words)).strong());
    let name = why::cause_chance(cause, chance, words);
    let fill = if chance > 0.5 { palette.accent } else { palette.soft.gamma_multiply(0.6) };
    let bar = ProgressBar::new(chance as f32).desired_width(BAR).desired_height(10.0).fill(fill);
    ui.add(bar.corner_radius(3)).widget_info(|| WidgetInfo::labeled(Role::ProgressIndicator, true, &name));
}

/// A clue, with what it argues for.
fn clue(ui: &mut Ui, context: &WindowContext<'_>, clue: &ClueFinding) {
    let frame = Frame::new().fill(context.palette.raised).corner_radius(6);
    frame.inner_margin(Margin::symmetric(9, 6)).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.add(Label::new(clue.evidence.say(context.words)).wrap());
        for line in why::argues(clue, context.words) {
            ui.add(Label::new(RichText::new(line).small().color(context.palette.soft)).wrap());
        }
    });
}

/// What the readings say of all joints, and how many more are worth taking.
pub(super) fn all_joints(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some(known) = context.assessment.gaps.opening_range() else { return };
    let words = context.words;
    heading(ui, &words.text("why-all-joints"));
    Grid::new("all joints").num_columns(2).show(ui, |ui| {
        term(ui, &words.text("why-opening"), &words.text("why-opening.hint"));
        let (opening, within) = (Arg::SmallArea(known.opening), Arg::SmallArea(known.within));
        let range = say!(words, "why-opening-range", opening = opening, within = within);
        ui.label(RichText::new(range).strong());
        ui.end_row();
        term(ui, &words.text("why-known-to"), &words.text("why-known-to.hint"));
        let share = words.figures().percent(known.share.to_pct(), 0);
        ui.label(say!(words, "why-known-within", share = &share));
        ui.end_row();
        context.field(ui, &fields::PRECISION, At::ONCE);
    });
    let next = next_reading(context, context.assessment.gaps.next);
    ui.add(Label::new(next).wrap());
}

/// How many more gaps are worth measuring, and which first.
fn next_reading(context: &WindowContext<'_>, next: Option<NextReading>) -> String {
    let words = context.words;
    let Some(next) = next else { return say!(words, "why-readings-enough") };
    let joint = &context.assessment.layouts[next.surface].joints[next.joint].label;
    match next.more {
        Some(more) => say!(words, "why-readings-more", more = more, joint = Arg::Joint(joint)),
        None => say!(words, "why-readings-never", joint = Arg::Joint(joint)),
    }
}
