//! Papers: what comes out, previewed.

use std::sync::Arc;

use eframe::egui::{
    ColorImage, Context, Image, RichText, ScrollArea, Sense, TextureHandle, TextureOptions, Ui,
};

use super::{heading, remark, wording};
use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::dialog::modal;
use crate::job::{Job, Severity};
use crate::papers::{PageImage, Paper};

/// The paper that was typeset last, as textures.
#[derive(Default)]
pub(in crate::app) struct Preview {
    asked: Option<(Paper, Arc<Job>)>,
    shown: Option<Paper>,
    pages: Vec<TextureHandle>,
    error: Option<String>,
}

/// The pages of a paper as pictures, and what is wrong with the user's own template, if it is.
pub(in crate::app) struct Pages {
    /// The pages.
    pub images: Vec<PageImage>,
    /// The fault, told while the built-in template stands in.
    pub fault: Option<String>,
}

impl Preview {
    /// Whether the paper for this job has not been asked for yet.
    pub fn wants(&self, paper: Paper, job: &Arc<Job>) -> bool {
        self.asked.as_ref().is_none_or(|(known, of)| *known != paper || !Arc::ptr_eq(of, job))
    }

    /// Notes what was asked for.
    pub fn asked(&mut self, paper: Paper, job: Arc<Job>) {
        self.asked = Some((paper, job));
    }

    /// Has the paper typeset anew.
    pub fn forget(&mut self) {
        self.asked = None;
    }

    /// Takes a typeset paper. One that is not the one asked for last came too late.
    pub fn take(&mut self, ctx: &Context, paper: Paper, job: &Arc<Job>, pages: Result<Pages, String>) {
        if self.wants(paper, job) {
            return;
        }
        match pages {
            Ok(pages) => {
                let texture = |(index, page): (usize, PageImage)| {
                    let image = ColorImage::from_rgba_premultiplied([page.width, page.height], &page.rgba);
                    ctx.load_texture(format!("page {index}"), image, TextureOptions::LINEAR)
                };
                self.pages = pages.images.into_iter().enumerate().map(texture).collect();
                self.error = pages.fault;
            }
            Err(error) => self.error = Some(error),
        }
        self.shown = Some(paper);
    }
}

pub(super) fn papers(ui: &mut Ui, context: &mut WindowContext<'_>) {
    ui.horizontal_wrapped(|ui| {
        for (index, paper) in Paper::ALL.into_iter().enumerate() {
            if ui.selectable_label(context.view.paper == index, paper.name()).clicked() {
                context.view.paper = index;
            }
        }
    });
    ui.horizontal(|ui| {
        if ui.button("Write the PDFs…").clicked() {
            context.push(Command::WritePapers);
        }
        if let Some(folder) = &context.settings.papers
            && ui.button("Write again").on_hover_text(folder.display().to_string()).clicked()
        {
            context.commands.push(Command::WritePapersTo(folder.clone()));
        }
    });
    let wanted = Paper::ALL[context.view.paper.min(Paper::ALL.len() - 1)];
    template(ui, context, wanted);
    if let Some(error) = &context.preview.error {
        context.problem(ui, Severity::Error, &format!("{error}. The built-in template stands in."));
    }
    if wanted == Paper::Letter {
        wording::wording(ui, context);
    }
    if context.preview.shown != Some(wanted) {
        ui.label(RichText::new("Setting type…").color(context.palette.soft));
        return;
    }
    let pages = context.preview.pages.len();
    for (index, page) in context.preview.pages.iter().enumerate() {
        let width = ui.available_width() - 2.0;
        let name = format!("{}, page {} of {pages}", wanted.name(), index + 1);
        let small = ui.add(Image::new(page).max_width(width).alt_text(&name).sense(Sense::CLICK));
        if small.on_hover_text("Click to read it").clicked() {
            context.view.page = Some(index);
        }
        ui.add_space(8.0);
    }
    read_page(ui, context);
    heading(ui, "What they are made of");
    remark(
        ui,
        context,
        "Every figure comes from the answer on the other leaves. Names, addresses and the logo are under Survey, The job.",
    );
}

/// A page, large enough to be read.
fn read_page(ui: &Ui, context: &mut WindowContext<'_>) {
    let Some(page) = context.view.page.and_then(|index| context.preview.pages.get(index)) else { return };
    let room = ui.ctx().content_rect().size();
    let window = modal("page", ui.ctx()).show(ui.ctx(), |ui| {
        ScrollArea::vertical().max_height(room.y - 120.0).show(ui, |ui| {
            ui.add(Image::new(page).max_width((room.x - 120.0).min(page.size_vec2().x)));
        });
        ui.button("Back").clicked()
    });
    if window.inner || window.should_close() {
        context.view.page = None;
    }
}

/// Whose template the paper is made by.
fn template(ui: &mut Ui, context: &mut WindowContext<'_>, paper: Paper) {
    let own = context.templates.own(paper);
    ui.horizontal_wrapped(|ui| match &own {
        None => {
            let button = ui.button("Change the template…");
            let words = "Lays a copy of the template beside your settings, for a text editor.";
            if button.on_hover_text(words).clicked() {
                context.push(Command::OwnTemplate(paper));
            }
        }
        Some(path) => {
            ui.label("By your own template").on_hover_text(path.display().to_string());
            if ui.button("Read it again").clicked() {
                context.push(Command::ReadTemplates);
            }
            let back = ui.button("Back to the built-in one");
            if back.on_hover_text("Yours is kept beside it, ending in .old").clicked() {
                context.push(Command::BuiltInTemplate(paper));
            }
        }
    });
}
