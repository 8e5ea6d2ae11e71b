//! The Why room: what opened the joints, with its odds, and section by section.

mod odds;
mod section;

use eframe::egui::{Grid, Label, RichText, Ui};

use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::widgets::{heading, remark};
use crate::job::fields::{self, At};
use crate::words::{self, Arg, say};

pub(super) fn why(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (assessment, words) = (context.assessment, context.words);
    let measured = assessment.sections.iter().any(|state| state.gaps.measured > 0);
    if !measured {
        remark(ui, context.palette, words.text("why-nothing-measured"));
        return;
    }
    heading(ui, &words.text("why-heading"));
    ui.add(Label::new(words::answer::cause(assessment, words)).wrap());
    remark(ui, context.palette, words.text("why-method"));
    if let Some(causes) = &assessment.causes {
        odds::odds(ui, context, causes);
    }
    odds::all_joints(ui, context);
    for state in &assessment.sections {
        section::section(ui, context, state);
    }
    next_install(ui, context);
    marks(ui, context);
}

/// The way to the next install in this room.
fn next_install(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    heading(ui, &words.text("why-next-install"));
    remark(ui, context.palette, words.text("next-begin"));
    if ui.button(words.text("next-begin-new")).on_hover_text(words.text("next-begin-new.hint")).clicked() {
        context.push(Command::PlanNextInstall);
    }
    Grid::new("delivered").num_columns(2).show(ui, |ui| {
        context.field(ui, &fields::DELIVERED_AT, At::ONCE);
    });
}

/// How wet the stamps on lumber allow it to be.
fn marks(ui: &mut Ui, context: &WindowContext<'_>) {
    let words = context.words;
    heading(ui, &words.text("why-marks"));
    Grid::new("marks").num_columns(3).show(ui, |ui| {
        for mark in &context.assessment.catalog.marks {
            ui.label(RichText::new(words.called(&mark.name)).strong());
            ui.label(say!(words, "why-mark-most", most = mark.most));
            let kind = Arg::Id(mark.kind.key());
            let source = say!(words, "why-mark-source", source = Arg::Called(&mark.source), kind = kind);
            ui.add(Label::new(RichText::new(source).small().color(context.palette.soft)).wrap());
            ui.end_row();
        }
    });
}
