//! What is known of one section: its gap, the moisture of its boards then, now and to come.

use eframe::egui::{Frame, Grid, Label, Margin, RichText, Ui};

use crate::app::context::WindowContext;
use crate::app::explain::{self, Why};
use crate::app::widgets::{heading, term};
use crate::assess::SectionState;
use crate::job::fields::{At, Each};
use crate::words::{self, Say as _, say, why};

/// Where a figure of a section comes from.
type Explanation = fn(&WindowContext<'_>, &SectionState) -> Why;

pub(super) fn section(ui: &mut Ui, context: &WindowContext<'_>, state: &SectionState) {
    let (assessment, words) = (context.assessment, context.words);
    let Some(surface) = assessment.job.surfaces.get(state.surface) else { return };
    let Some(section) = surface.sections.get(state.section) else { return };
    heading(ui, &say!(words, "why-section", surface = &surface.name, section = &section.name));
    Frame::new().fill(context.palette.raised).corner_radius(6).inner_margin(Margin::same(9)).show(ui, |ui| {
        ui.set_width(ui.available_width());
        Grid::new(("section", state.surface, state.section)).num_columns(2).show(ui, |ui| {
            today(ui, context, state);
            to_come(ui, context, state);
        });
        let explained = state.origin.is_some_and(|origin| !origin.beyond_drying);
        if let Some(against) = state.against_marks.filter(|_| explained) {
            let marks = &assessment.catalog.marks;
            ui.add(Label::new(words::causes::marks(against, marks, words)).wrap());
        }
    });
    context.entry_problems(ui, Each::Section, At(state.surface, state.section));
}

/// The gap and the boards, today and when they were installed.
fn today(ui: &mut Ui, context: &WindowContext<'_>, state: &SectionState) {
    let (words, gaps) = (context.words, &state.gaps);
    let mean = say!(
        words,
        "why-mean-gap-value",
        mean = gaps.mean,
        error = gaps.error_of_mean,
        measured = gaps.measured,
        joints = gaps.joints
    );
    let row = Row { context, state };
    row.show(ui, ["why-mean-gap", "why-mean-gap.hint"], mean, Some(explain::mean_gap));
    let now = why::boards_today(state, words);
    row.show(ui, ["why-boards-today", "why-boards-today.hint"], now, Some(explain::now));
    if let Some(then) = why::boards_at_install(state, words) {
        let ids = ["why-boards-at-install", "why-boards-at-install.hint"];
        row.show(ui, ids, then, Some(explain::install));
    }
}

/// What the room does to the boards and their gap.
fn to_come(ui: &mut Ui, context: &WindowContext<'_>, state: &SectionState) {
    let words = context.words;
    let row = Row { context, state };
    let (driest, wettest) = state.settled.extremes();
    let range = say!(words, "why-room-range-value", driest = driest, wettest = wettest);
    row.show(ui, ["why-room-range", "why-room-range.hint"], range, Some(explain::settled));
    let closes = state.closing(&context.assessment.job).say(words);
    row.show(ui, ["why-closes", "why-closes.hint"], closes, None);
    row.show(ui, ["why-drying", "why-drying.hint"], why::drying(state, words), None);
    let lag = match state.settled.lag() {
        Some(days) => say!(words, "why-lag-value", days = days.round().max(0.0) as u32),
        None => say!(words, "why-lag-none"),
    };
    row.show(ui, ["why-lag", "why-lag.hint"], lag, None);
    let widest = words.figures().length(state.year_gap.1);
    row.show(ui, ["why-widest", "why-widest.hint"], widest, Some(explain::widest));
}

/// Rows of a section's figures.
#[derive(Clone, Copy)]
struct Row<'a, 'b> {
    context: &'a WindowContext<'b>,
    state: &'a SectionState,
}

impl Row<'_, '_> {
    /// A figure with the messages of its label and hint, which says where it comes from if asked.
    fn show(self, ui: &mut Ui, ids: [&str; 2], value: String, explanation: Option<Explanation>) {
        let Self { context, state } = self;
        let [label, hint] = ids.map(|id| context.words.text(id));
        term(ui, &label, &hint);
        let shown = RichText::new(value).strong();
        match explanation {
            Some(explain) => explain::number(ui, context, &label, shown, || explain(context, state)),
            None => {
                ui.add(Label::new(shown).wrap());
            }
        }
        ui.end_row();
    }
}
