//! Surfaces: what there is of each, its boards and sections, its outline and what divides it.

mod corners;
mod dividers;
mod new_surface;
mod outline;
mod part;
mod sections;
mod spec;

use eframe::egui::{ComboBox, RichText, Ui};

use self::part::part;
use self::spec::BoardsOf;
use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::fold::fold;
use crate::app::widgets::remark;
use crate::job::fields::{self, At, Each, Field};
use crate::job::{Job, Place};
use crate::surface::pattern::Pattern;
use crate::words::boards::divider_name;
use crate::words::{Arg, Say as _, say};

pub(super) fn boards(ui: &mut Ui, context: &mut WindowContext<'_>) {
    if context.job.surfaces.is_empty() {
        remark(ui, context.palette, context.words.text("boards-begin"));
        new_surface::new_surface(ui, context);
        return;
    }
    let shown = context.view.surface.min(context.job.surfaces.len() - 1);
    // Fields of one surface must not show what was typed for another.
    ui.push_id(shown, |ui| surface(ui, context, shown));
    fold(ui, "another-surface", context.words.text("boards-add-another"), false, |ui| {
        new_surface::new_surface(ui, context);
    });
}

fn surface(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize) {
    let (surface, words) = (&context.job.surfaces[index], context.words);
    head(ui, context, index);
    context.field_problems(ui, &fields::PHOTOS, At::index(index));
    relay(ui, context, index);
    let alike = surface.sections.windows(2).all(|two| two[0].board == two[1].board);
    if let Some(first) = surface.sections.first().filter(|_| alike) {
        let several = surface.sections.len() > 1;
        let title = words.text(if several { "boards-of-all" } else { "boards-title" });
        let here = move |place: &Place| is_section(place, index) && is_board(place);
        part(ui, context, "boards", &title, true, here, |ui, context| {
            spec::spec(ui, context, BoardsOf::Surface(index), &first.board);
        });
    }
    let here = move |place: &Place| is_section(place, index) && !(alike && is_board(place));
    part(ui, context, "sections", &words.text("boards-sections"), false, here, |ui, context| {
        sections::sections(ui, context, index, alike);
    });
    let here = move |place: &Place| {
        let around = |field: &Field| field.each == Each::Surface && *field != fields::PHOTOS;
        on_surface(place, index, |field| around(field) || field.each == Each::Opening)
    };
    part(ui, context, "outline", &words.text("boards-outline"), false, here, |ui, context| {
        outline::outline(ui, context, index);
    });
    let here = move |place: &Place| on_surface(place, index, |field| field.each == Each::Divider);
    part(ui, context, "dividers", &words.text("boards-dividers"), false, here, |ui, context| {
        dividers::dividers(ui, context, index);
    });
}

/// Whether a place is a field of this surface, or of a part of it, for which `is` says so.
fn on_surface(place: &Place, surface: usize, is: impl Fn(&Field) -> bool) -> bool {
    place.field().is_some_and(|(field, at)| at.0 == surface && is(field))
}

fn is_section(place: &Place, surface: usize) -> bool {
    on_surface(place, surface, |field| field.each == Each::Section)
}

/// Whether a place is a field of the boards of a section.
fn is_board(place: &Place) -> bool {
    place.field().is_some_and(|(field, _)| field.path.contains("].board."))
}

/// The surface's name, and how much there is of it.
fn head(ui: &mut Ui, context: &WindowContext<'_>, index: usize) {
    ui.horizontal_wrapped(|ui| {
        ui.heading(&context.job.surfaces[index].name);
        if let Some(laid) = context.assessment.layouts.get(index) {
            let text = say!(
                context.words,
                "boards-summary",
                boards = laid.boards.len(),
                run = Arg::Run(laid.joint_run()),
                area = laid.plan_area
            );
            ui.label(RichText::new(text).small().color(context.palette.soft));
        }
    });
}

/// Lays the boards anew in a usual pattern, or removes the surface.
fn relay(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize) {
    let words = context.words;
    ui.horizontal_wrapped(|ui| {
        ui.label(words.text("boards-pattern-of"));
        let mut chosen = None;
        let combo = ComboBox::from_id_salt("relay").selected_text(words.text("boards-relay-as")).width(190.0);
        let response = combo.show_ui(ui, |ui| {
            for pattern in Pattern::USUAL {
                if ui.selectable_label(false, pattern.say(words)).clicked() {
                    chosen = Some(pattern);
                }
            }
        });
        response.response.accessible_name(words.text("boards-relay"));
        if let Some(pattern) = chosen {
            let read = readings_of(context.job, index);
            if read > 0 {
                context.push(Command::Tell(say!(words, "boards-relaid", count = read)));
            }
            let words = words.clone();
            context.edit("boards-relay", move |job| {
                let Some(surface) = job.surfaces.get_mut(index) else { return };
                let board = surface.sections.first().map(|section| section.board.clone());
                let name = |number| divider_name(&words, number);
                (surface.sections, surface.dividers) =
                    pattern.fill(&surface.outline, &board.unwrap_or_default(), &name);
            });
        }
        if ui.button(words.text("boards-remove-surface")).clicked() {
            let read = readings_of(context.job, index);
            if read > 0 {
                context.push(Command::Tell(say!(words, "boards-removed", count = read)));
            }
            context.edit("boards-remove-surface", move |job: &mut Job| {
                if index < job.surfaces.len() {
                    job.surfaces.remove(index);
                }
            });
            context.push(Command::Surface(0));
        }
    });
}

/// Gaps read on a surface.
fn readings_of(job: &Job, surface: usize) -> usize {
    let name = job.surfaces.get(surface).map(|surface| &surface.name);
    job.survey.gaps.iter().filter(|gap| Some(&gap.surface) == name).count()
}
