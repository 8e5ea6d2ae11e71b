//! The answer line: always in sight, one plain sentence, and what is still missing, each a link to
//! where it is entered.

use eframe::egui::{Label, Link, RichText, Stroke, Ui, vec2};

use super::command::Command;
use super::context::WindowContext;
use super::glossary;
use super::icon::Icon;
use super::theme;
use super::view::{Selected, Tab};
use crate::assess::{EntryPlace, Missing};

/// Room for two lines of the answer and two of the rest: it does not move the drawing as it grows.
const HEIGHT: f32 = 82.0;

/// Keeps a figure and its per cent sign on one line.
pub(super) fn unbroken(text: &str) -> String {
    text.replace(" %", "\u{a0}%")
}

pub(super) fn answer_line(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let answer = &context.assessment.answer;
    ui.horizontal_top(|ui| {
        // Where the answer once needed more, it keeps it: nothing below jumps to and fro.
        let kept = context.view.answer_height.filter(|(width, _)| *width == ui.available_width());
        ui.set_min_height(kept.map_or(HEIGHT, |(_, height)| height));
        let width = ui.available_width();
        let (icon, color, says) = match (answer.complete, answer.lasts) {
            (true, true) => (Icon::Good, context.palette.good, "What is chosen will likely last."),
            (true, false) => (Icon::Warning, context.palette.warn, "What is chosen will likely not last."),
            (false, _) => (Icon::Measure, context.palette.soft, "Something is still to be entered."),
        };
        icon.mark(ui, Stroke::new(1.8, color)).on_hover_text(says);
        let used = ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 3.0;
            let headline = RichText::new(unbroken(&answer.headline)).text_style(theme::answer_style());
            let headline = ui.add(Label::new(headline).wrap());
            glossary::explain(headline, &answer.headline);
            rest(ui, context);
        });
        let height = used.response.rect.height().max(kept.map_or(HEIGHT, |(_, height)| height));
        context.view.answer_height = Some((width, height));
    });
}

/// Why it happened, what would make the answer firmer, and whether another way costs less.
fn rest(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let answer = &context.assessment.answer;
    ui.horizontal_wrapped(|ui| {
        // Rows of text, not of buttons.
        ui.spacing_mut().interact_size.y = 0.0;
        ui.spacing_mut().item_spacing = vec2(4.0, 2.0);
        let soft = |text: &str| Label::new(RichText::new(unbroken(text)).color(context.palette.soft)).wrap();
        if !answer.cause.is_empty() {
            glossary::explain(ui.add(soft(&answer.cause)), &answer.cause);
        }
        if let Some(way) = &answer.cheaper {
            ui.add(soft("Costs less:"));
            let text = format!("{}.", way.to_lowercase());
            if ui.add(link(context, &text)).on_hover_text("Go to the ways").clicked() {
                context.commands.push(Command::Tab(Tab::Options));
                context.commands.push(Command::ScrollTo(EntryPlace::Ways));
            }
        }
        if !answer.missing.is_empty() {
            ui.add(soft(if answer.complete { "To trust it more:" } else { "Still missing:" }));
        }
        let last = answer.missing.len().saturating_sub(1);
        for (index, missing) in answer.missing.iter().enumerate() {
            let text = format!("{missing}{}", if index == last { "." } else { ";" });
            if ui.add(link(context, &text)).on_hover_text("Go to where it is entered").clicked() {
                go_to(context, missing);
            }
        }
    });
}

fn link(context: &WindowContext<'_>, text: &str) -> Link {
    Link::new(RichText::new(unbroken(text)).color(context.palette.accent).underline())
}

/// Turns to the leaf, and to the joint, where something is entered.
fn go_to(context: &mut WindowContext<'_>, missing: &Missing) {
    let tab = match missing.place {
        EntryPlace::Trial | EntryPlace::Ways => Tab::Options,
        _ => Tab::Measure,
    };
    context.push(Command::Tab(tab));
    context.push(match missing.place {
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

/// Where a section of a surface stands among those of all surfaces.
fn section_at(context: &WindowContext<'_>, surface: usize, section: usize) -> usize {
    let here = |state: &crate::assess::SectionState| state.surface == surface && state.section == section;
    context.assessment.sections.iter().position(here).unwrap_or(usize::MAX)
}
