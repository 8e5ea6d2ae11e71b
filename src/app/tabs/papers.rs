//! Papers: what comes out, previewed.

use eframe::egui::{Image, RichText, ScrollArea, Sense, Ui};

use super::{proposal, wording};
use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::dialog::modal;
use crate::app::pick::Purpose;
use crate::app::widgets::{heading, remark};
use crate::job::Severity;
use crate::papers::Paper;
use crate::words::{Say as _, say};

pub(super) fn papers(ui: &mut Ui, context: &mut WindowContext<'_>) {
    ui.horizontal_wrapped(|ui| {
        for (index, paper) in Paper::ALL.into_iter().enumerate() {
            if ui.selectable_label(context.view.papers.index == index, paper.say(context.words)).clicked() {
                context.view.papers.index = index;
            }
        }
    });
    ui.horizontal_wrapped(|ui| {
        if ui.button(context.words.text("papers-write")).clicked() {
            context.push(Command::Pick(Purpose::Papers));
        }
        if let Some(folder) = &context.settings.papers
            && ui
                .button(context.words.text("papers-write-again"))
                .on_hover_text(folder.display().to_string())
                .clicked()
        {
            context.commands.push(Command::WritePapersTo(folder.clone()));
        }
        let drafts = context.words.text("papers-drafts");
        ui.checkbox(&mut context.view.papers.drafts, drafts)
            .on_hover_text(context.words.text("papers-drafts.hint"));
    });
    let wanted = Paper::ALL[context.view.papers.index.min(Paper::ALL.len() - 1)];
    template(ui, context, wanted);
    if let Some(error) = &context.services.previews.error {
        context.problem(ui, Severity::Error, error);
    }
    if wanted == Paper::Letter {
        wording::wording(ui, context);
    }
    proposal::terms(ui, context);
    heading(ui, &context.words.text("papers-figures"));
    remark(ui, context.palette, context.words.text("papers-figures-from"));
}

/// The pages of the paper that is looked at.
pub(in crate::app) fn pages(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let wanted = Paper::ALL[context.view.papers.index.min(Paper::ALL.len() - 1)];
    if context.services.previews.shown != Some(wanted) {
        ui.label(RichText::new(context.words.text("papers-typesetting")).color(context.palette.soft));
        return;
    }
    let pages = context.services.previews.pages.len();
    for (index, page) in context.services.previews.pages.iter().enumerate() {
        let width = ui.available_width() - 2.0;
        let paper = wanted.say(context.words);
        let name = say!(context.words, "papers-page", paper = &paper, page = index + 1, pages = pages);
        let small = ui.add(Image::new(page).max_width(width).alt_text(&name).sense(Sense::CLICK));
        if small.on_hover_text(context.words.text("papers-enlarge")).clicked() {
            context.view.papers.page = Some(index);
        }
        ui.add_space(8.0);
    }
    read_page(ui, context);
}

/// A page, large enough to be read.
fn read_page(ui: &Ui, context: &mut WindowContext<'_>) {
    let Some(page) = context.view.papers.page.and_then(|index| context.services.previews.pages.get(index))
    else {
        return;
    };
    let room = ui.ctx().content_rect().size();
    let window = modal("page", ui.ctx()).show(ui.ctx(), |ui| {
        ScrollArea::vertical().max_height(room.y - 120.0).show(ui, |ui| {
            ui.add(Image::new(page).max_width((room.x - 120.0).min(page.size_vec2().x)));
        });
        ui.button(context.words.text("close")).clicked()
    });
    if window.inner || window.should_close() {
        context.view.papers.page = None;
    }
}

/// Whose template the paper is made by.
fn template(ui: &mut Ui, context: &mut WindowContext<'_>, paper: Paper) {
    let (own, words) = (context.services.templates.own(paper), context.words);
    let button = |ui: &mut Ui, message: &str, hint: &str| {
        ui.button(words.text(message)).on_hover_text(words.text(hint)).clicked()
    };
    ui.horizontal_wrapped(|ui| match &own {
        None => {
            if button(ui, "papers-template-edit", "papers-template-edit.hint") {
                context.push(Command::OwnTemplate(paper));
            }
        }
        Some(path) => {
            ui.label(words.text("papers-template-own")).on_hover_text(path.display().to_string());
            if ui.button(words.text("papers-template-reload")).clicked() {
                context.push(Command::ReadTemplates);
            }
            if button(ui, "papers-template-built-in", "papers-template-built-in.hint") {
                context.push(Command::BuiltInTemplate(paper));
            }
        }
    });
}
