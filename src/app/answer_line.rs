//! The answer: always in sight, three lines of fixed height, with links to what would make it surer.

use eframe::egui::{Align, Label, Layout, Link, Popup, RichText, Stroke, TextStyle, Ui};

use super::command::Command;
use super::context::WindowContext;
use super::glossary;
use super::icon::Icon;
use super::lead::Destination;
use super::next_answer;
use super::theme;
use super::view::{Selected, Tab};
use super::widgets::text_width;
use crate::assess::{Confidence, EntryPlace, MissingEntry, Verdict};
use crate::job::Severity;
use crate::job::fields::{self, At};
use crate::words::{self, say};

/// So many missing entries have room in a small window.
const MOST_MISSING: usize = 3;
/// Height of the second and the third line.
const LINE: f32 = 20.0;

/// The verdict in its fixed room of three lines; `folded` leaves the first.
pub(super) fn answer_line(ui: &mut Ui, context: &mut WindowContext<'_>, folded: bool) {
    if next_answer::is_meant(context) {
        return next_answer::next_answer(ui, context, folded);
    }
    let verdict = context.assessment.verdict();
    ui.horizontal_top(|ui| {
        mark(ui, context, &verdict);
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 4.0;
            let said = words::verdict::first(context.assessment, &verdict, context.words);
            let headline = Label::new(RichText::new(&said).text_style(theme::answer_style())).truncate();
            let headline = ui.add(headline);
            glossary::explain(headline, &said, context.words);
            if folded {
                return;
            }
            // Lines of text, not of buttons, and of one height whatever is in them.
            ui.spacing_mut().interact_size.y = LINE;
            if verdict.recommended.is_some() {
                ui.horizontal(|ui| cost(ui, context, &verdict));
                // What was done is told, not recommended.
                if context.job.done.finished.is_none() {
                    ui.horizontal(|ui| how_sure(ui, context, &verdict));
                }
            } else {
                ui.horizontal_wrapped(|ui| missing(ui, context, &verdict));
            }
        });
    });
}

/// A tick only for what will likely last and is at least fairly sure.
fn mark(ui: &mut Ui, context: &WindowContext<'_>, verdict: &Verdict) {
    let opened = context.assessment.follow_up.iter().any(|visit| visit.found_open());
    let lasts = verdict.recommended.as_ref().map(|recommended| recommended.lasts && !opened);
    let rough = matches!(verdict.confidence, Confidence::Rough(_));
    let (icon, color, says) = match lasts {
        Some(true) if rough => (Icon::Measure, context.palette.soft, "answer-rough"),
        Some(true) => (Icon::Good, context.palette.good, "answer-will-last"),
        Some(false) => (Icon::Warning, context.palette.warn, "answer-will-not-last"),
        None => (Icon::Measure, context.palette.soft, "answer-not-yet"),
    };
    icon.mark(ui, Stroke::new(1.8, color)).on_hover_text(context.words.text(says));
}

/// What it costs and the chance that it lasts; and whether another way costs less.
fn cost(ui: &mut Ui, context: &mut WindowContext<'_>, verdict: &Verdict) {
    let said = words::verdict::second(context.assessment, verdict, context.words);
    let cheaper = verdict.recommended.as_ref().and_then(|recommended| recommended.cheaper);
    let cheaper = cheaper.and_then(|method| context.assessment.option(method));
    at_the_right(ui, |ui| {
        let before = context.words.text("answer-costs-less");
        let width = |text: &str| text_width(ui, text, &TextStyle::Body) + ui.spacing().item_spacing.x;
        let room = ui.available_width() - width(&said) - width(&before);
        if let Some(option) = cheaper.filter(|option| width(&context.words.called(&option.name)) < room) {
            let hint = context.words.text("cmd-tab-options");
            let name = ui.add(link(context, &context.words.called(&option.name))).on_hover_text(hint);
            ui.add(soft(context, &before));
            if name.clicked() {
                context.commands.push(Command::Tab(Tab::Options));
                context.commands.push(Command::ScrollTo(EntryPlace::Options));
            }
        }
        from_the_left(ui, |ui| {
            let label = ui.add(Label::new(said.as_str()).truncate());
            glossary::explain(label, &said, context.words);
        });
    });
}

/// How sure, and why not surer; what would help most, and what else would.
fn how_sure(ui: &mut Ui, context: &mut WindowContext<'_>, verdict: &Verdict) {
    let reason = words::verdict::reason(context.assessment, verdict, context.words);
    let word = words::verdict::confidence(verdict, context.words);
    at_the_right(ui, |ui| {
        others_that_help(ui, context, verdict);
        let width = |text: &str| text_width(ui, text, &TextStyle::Body) + ui.spacing().item_spacing.x;
        // The word of confidence is read whole; what would help stands there as far as there is room for it.
        let room = ui.available_width() - width(&word);
        if let Some(most) = verdict.helps_most {
            let before = context.words.text("verdict-helps-most");
            let link = width(&words::answer::missing(context.assessment, most, context.words));
            let whole = link + width(&before);
            if link < room {
                entry_link(ui, context, most);
            }
            if whole < room {
                ui.add(soft(context, &before));
            }
        }
        from_the_left(ui, |ui| {
            ui.add(Label::new(RichText::new(word).strong()).truncate()).on_hover_text(&reason);
            ui.add(soft(context, &reason)).on_hover_text(&reason);
        });
    });
}

/// What else would make the answer surer, behind a link.
fn others_that_help(ui: &mut Ui, context: &mut WindowContext<'_>, verdict: &Verdict) {
    let missing = context.assessment.answer.missing.iter().copied();
    let others: Vec<MissingEntry> = missing.filter(|entry| Some(*entry) != verdict.helps_most).collect();
    behind_a_link(ui, context, &others);
}

/// More entries, behind a link that tells how many.
fn behind_a_link(ui: &mut Ui, context: &mut WindowContext<'_>, others: &[MissingEntry]) {
    if others.is_empty() {
        return;
    }
    let more = ui.add(link(context, &say!(context.words, "answer-more", count = others.len())));
    Popup::from_toggle_button_response(&more).show(|ui| {
        for entry in others {
            entry_link(ui, context, *entry);
        }
    });
}

/// Lays out from the right end of a line: links that stand there do not move when the text before them
/// grows.
fn at_the_right(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    ui.with_layout(Layout::right_to_left(Align::Center), add);
}

/// What is left of a line, from its left end.
fn from_the_left(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    ui.with_layout(Layout::left_to_right(Align::Center), add);
}

/// What must be entered before there is a recommendation: as much as the two lines have room for, and the rest
/// behind a link.
fn missing(ui: &mut Ui, context: &mut WindowContext<'_>, verdict: &Verdict) {
    ui.label(RichText::new(context.words.text("answer-missing")).color(context.palette.soft));
    let (first, others) = verdict.missing.split_at(verdict.missing.len().min(MOST_MISSING));
    for entry in first {
        entry_link(ui, context, *entry);
    }
    behind_a_link(ui, context, others);
}

/// What is missing, as a link to where it is entered.
fn entry_link(ui: &mut Ui, context: &mut WindowContext<'_>, entry: MissingEntry) {
    let said = words::answer::missing(context.assessment, entry, context.words);
    if ui.add(link(context, &said)).on_hover_text(context.words.text("answer-go")).clicked() {
        go_to(context, entry);
    }
}

fn soft(context: &WindowContext<'_>, text: &str) -> Label {
    Label::new(RichText::new(text).color(context.palette.soft)).truncate()
}

fn link(context: &WindowContext<'_>, text: &str) -> Link {
    Link::new(RichText::new(text).color(context.palette.accent).underline())
}

/// Turns to the tab, and to the joint, where something is entered.
fn go_to(context: &mut WindowContext<'_>, missing: MissingEntry) {
    if matches!(missing, MissingEntry::WrongEntries(_)) {
        return go_to_first_error(context);
    }
    if let MissingEntry::DoubtedGap(doubted) = missing {
        let at = Some(At::index(doubted.index));
        return context.push(Command::GoToField(Destination { field: &fields::GAP_WIDTH, at, item: None }));
    }
    let field = match missing.place() {
        EntryPlace::House => Some(&fields::PLACE),
        EntryPlace::YearBuilt => Some(&fields::YEAR_BUILT),
        _ => None,
    };
    if let Some(field) = field {
        return context.push(Command::GoToField(Destination::any(field)));
    }
    let tab = match missing.place() {
        EntryPlace::TimedSection | EntryPlace::Payers => Tab::Price,
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
