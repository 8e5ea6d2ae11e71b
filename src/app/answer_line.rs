//! The answer line: always in sight, one plain sentence, and what is still missing, each a link to
//! where it is entered.

use eframe::egui::{Label, Link, RichText, ScrollArea, Stroke, Ui, vec2};

use super::command::Command;
use super::context::WindowContext;
use super::glossary;
use super::icon::Icon;
use super::lead::Destination;
use super::theme;
use super::view::{Selected, Tab};
use crate::assess::{EntryPlace, MissingEntry};
use crate::job::Severity;
use crate::words;

/// The answer in its fixed room; `folded` leaves its first line.
pub(super) fn answer_line(ui: &mut Ui, context: &mut WindowContext<'_>, folded: bool) {
    let answer = &context.assessment.answer;
    ui.horizontal_top(|ui| {
        let (icon, color, says) = match (answer.is_complete(), answer.lasts) {
            (true, true) => (Icon::Good, context.palette.good, "answer-will-last"),
            (true, false) => (Icon::Warning, context.palette.warn, "answer-will-not-last"),
            (false, _) => (Icon::Measure, context.palette.soft, "answer-not-yet"),
        };
        icon.mark(ui, Stroke::new(1.8, color)).on_hover_text(context.words.text(says));
        let all = |ui: &mut Ui, context: &mut WindowContext<'_>| {
            ui.spacing_mut().item_spacing.y = 3.0;
            let said = words::answer::headline(context.assessment, context.words);
            let headline = RichText::new(&said).text_style(theme::answer_style());
            let label = Label::new(headline);
            let headline = ui.add(if folded { label.truncate() } else { label.wrap() });
            glossary::explain(headline, &said, context.words);
            if !folded {
                rest(ui, context);
            }
        };
        // What does not fit in the answer's room scrolls in it; the rooms below never move.
        ScrollArea::vertical().id_salt("answer").auto_shrink(false).show(ui, |ui| {
            ui.vertical(|ui| all(ui, context));
        });
    });
}

/// Why it happened, what would make the answer firmer, and whether another way costs less.
fn rest(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let answer = &context.assessment.answer;
    ui.horizontal_wrapped(|ui| {
        // Rows of text, not of buttons.
        ui.spacing_mut().interact_size.y = 0.0;
        ui.spacing_mut().item_spacing = vec2(4.0, 2.0);
        let soft = |text: &str| Label::new(RichText::new(text).color(context.palette.soft)).wrap();
        let cause = words::answer::cause(context.assessment, context.words);
        if !cause.is_empty() {
            glossary::explain(ui.add(soft(&cause)), &cause, context.words);
        }
        if let Some(option) = words::answer::cheaper(context.assessment) {
            ui.add(soft(&context.words.text("answer-costs-less")));
            if ui.add(link(context, option)).on_hover_text(context.words.text("cmd-tab-options")).clicked() {
                context.commands.push(Command::Tab(Tab::Options));
                context.commands.push(Command::ScrollTo(EntryPlace::Options));
            }
        }
        if !answer.missing.is_empty() {
            let lead = if answer.is_complete() { "answer-more-sure" } else { "answer-missing" };
            ui.add(soft(&context.words.text(lead)));
        }
        for missing in &answer.missing {
            let said = words::answer::missing(context.assessment, *missing, context.words);
            if ui.add(link(context, &said)).on_hover_text(context.words.text("answer-go")).clicked() {
                go_to(context, *missing);
            }
        }
    });
}

fn link(context: &WindowContext<'_>, text: &str) -> Link {
    Link::new(RichText::new(text).color(context.palette.accent).underline())
}

/// Turns to the tab, and to the joint, where something is entered.
fn go_to(context: &mut WindowContext<'_>, missing: MissingEntry) {
    if matches!(missing, MissingEntry::WrongEntries(_)) {
        return go_to_first_error(context);
    }
    let tab = match missing.place() {
        EntryPlace::TimedSection => Tab::Price,
        EntryPlace::Options => Tab::Options,
        _ => Tab::Measure,
    };
    context.push(Command::Tab(tab));
    context.push(match missing.place() {
        EntryPlace::Gaps(surface, section) => {
            let joints = context.assessment.joints.iter();
            let bare = |joint: &&crate::assess::JointState| {
                joint.surface == surface
                    && joint.section == Some(section_at(context, surface, section))
                    && !joint.gap.is_some_and(|gap| gap.measured)
            };
            let joint = joints.filter(bare).find_map(|joint| {
                context
                    .assessment
                    .layouts
                    .get(surface)?
                    .joints
                    .get(joint.joint)
                    .map(|joint| joint.label.clone())
            });
            Command::Select(joint.map(|joint| Selected { surface, joint }))
        }
        place => Command::ScrollTo(place),
    });
}

/// Turns to the first entry marked in red: its tab, its surface, its row.
fn go_to_first_error(context: &mut WindowContext<'_>) {
    let mut errors = context.assessment.problems.iter().filter(|problem| problem.severity == Severity::Error);
    // What is wrong with the file itself stands in the first room.
    context.push(errors.find_map(Destination::of).map_or(Command::Tab(Tab::Measure), Command::GoToField));
    context.push(Command::ScrollTo(EntryPlace::Problems));
}

/// Where a section of a surface stands among those of all surfaces.
fn section_at(context: &WindowContext<'_>, surface: usize, section: usize) -> usize {
    let here = |state: &crate::assess::SectionState| state.surface == surface && state.section == section;
    context.assessment.sections.iter().position(here).unwrap_or(usize::MAX)
}
