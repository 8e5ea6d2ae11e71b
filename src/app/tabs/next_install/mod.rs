//! The Next install room: room and boards; beside them the delivery with its readings, and the papers; under both
//! what follows.
//!
//! Entries stand by themselves, so that none moves because another was typed: what follows from them is at the
//! end of a pane, or in the strip.

mod boards;
mod day;
mod gate;
mod record;
mod watch;
mod ways;

use eframe::egui::{Align, Label, Layout, RichText, Ui, vec2};

use super::room::room_in_short;
use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::frame::NARROW;
use crate::app::next_answer::not_shown;
use crate::app::widgets::{heading, remark, working};
use crate::job::Job;
use crate::ready::Verdict;
use crate::words::{next_install as words_of, say};

/// Room and boards; all of it where there is no room for two panes.
pub(super) fn next_install(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    if context.job.next_install.is_none() {
        return begin(ui, context);
    }
    // Side by side where there is room for it: then neither moves when the other grows.
    if ui.available_width() >= TWO_FORMS {
        ui.columns_const(|[left, right]| {
            heading(left, &words.text("next-room"));
            room_in_short(left, context);
            heading(right, &words.text("next-boards"));
            boards::boards(right, context);
            boards::advice(right, context);
        });
    } else {
        heading(ui, &words.text("next-room"));
        room_in_short(ui, context);
        heading(ui, &words.text("next-boards"));
        boards::boards(ui, context);
        boards::advice(ui, context);
    }
    if ui.ctx().content_rect().width() < NARROW {
        side(ui, context);
    }
}

/// From this width on there is room for two forms beside each other.
const TWO_FORMS: f32 = 880.0;

/// The delivery and its readings; the papers.
pub(crate) fn side(ui: &mut Ui, context: &mut WindowContext<'_>) {
    if context.job.next_install.is_none() {
        return;
    }
    let words = context.words;
    heading(ui, &words.text("next-gate"));
    gate::gate(ui, context);
    heading(ui, &words.text("next-record"));
    record::record(ui, context);
    if let Some(found) = &context.assessment.next_install {
        for line in words_of::sampling(found, words) {
            remark(ui, context.palette, line);
        }
    }
    remark(ui, context.palette, words.text("next-known"));
}

/// The strip under the panes: the verdict with its chances, and the stack's days beside it.
pub(crate) fn strip(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let corner = ui.max_rect().right_top();
    parts(ui, context);
    working(ui.painter(), context, corner);
}

/// Verdict and stack, beside each other where there is room.
fn parts(ui: &mut Ui, context: &mut WindowContext<'_>) {
    if ui.available_width() < NARROW {
        return verdict(ui, context);
    }
    let half = vec2(0.5 * ui.available_width() - 8.0, ui.available_height());
    ui.horizontal_top(|ui| {
        ui.allocate_ui_with_layout(half, Layout::top_down(Align::Min), |ui| {
            super::pane(ui, context, "next-install-verdict", verdict);
        });
        ui.allocate_ui_with_layout(half, Layout::top_down(Align::Min), |ui| {
            super::pane(ui, context, "next-install-stack", watch::watch);
        });
    });
}

/// What to do with the delivery, and the chances behind it; before anything was measured what to hang boards at.
fn verdict(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (words, assessment) = (context.words, context.assessment);
    let (Some(found), Some(next)) = (&assessment.next_install, &assessment.job.next_install) else {
        remark(ui, context.palette, words_of::missing(assessment, words));
        return;
    };
    let outlook = found.outlook.as_ref();
    let tone =
        outlook.map_or(context.palette.ink, |outlook| gate::color(outlook.gate.verdict, context.palette));
    let mut reasons = words_of::reasons_in_short(found, next, words);
    // Of a job that is about nothing else headline and first reasons stand on top of the window.
    if context.job.surfaces.is_empty() {
        reasons = not_shown(ui, reasons);
    } else {
        let headline = RichText::new(words_of::headline(found, next, words)).strong().size(16.0).color(tone);
        ui.add(Label::new(headline).wrap());
    }
    // Where the plan is to be changed, how comes before why.
    let changes = outlook.is_some_and(|outlook| outlook.gate.verdict == Verdict::ChangePlan);
    if changes {
        ways::ways(ui, context, (found, next));
    }
    // It stands there as a list.
    let in_short = words_of::changes_in_short(found, next, words);
    for line in reasons.into_iter().filter(|line| in_short.as_ref() != Some(line)) {
        ui.add(Label::new(line).wrap());
    }
    if !changes {
        ways::ways(ui, context, (found, next));
    }
    for line in words_of::room(found, next, words) {
        ui.add(Label::new(line).wrap());
    }
    if let Some(outlook) = outlook.filter(|outlook| outlook.gate.verdict != Verdict::Measure) {
        for line in words_of::lot(outlook, next, words) {
            remark(ui, context.palette, line);
        }
    }
}

/// Before there is one: what it is for, and how to make one.
fn begin(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    heading(ui, &words.text("tab-next-install"));
    ui.add(Label::new(words.text("next-begin")).wrap());
    if context.job.surfaces.is_empty() {
        if ui.button(words.text("next-begin-here")).clicked() {
            context.edit("next-begin-here", Job::begin_next_install);
        }
    } else {
        if ui.button(words.text("next-begin-new")).clicked() {
            context.push(Command::PlanNextInstall);
        }
        remark(ui, context.palette, say!(words, "next-begin-new.hint"));
    }
}
