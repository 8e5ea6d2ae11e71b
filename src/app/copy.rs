//! Tables and pictures to the clipboard.

use eframe::egui::{ColorImage, Context};

use super::command::{Picture, Table};
use super::{App, Toast};
use crate::papers::{figure, picture};
use crate::words::{Say as _, say};

impl App {
    /// Puts a table on the clipboard, as CSV.
    pub(super) fn copy(&mut self, ctx: &Context, table: Table) {
        use crate::export::{joints_csv, materials_csv, tasks_csv, year_csv};
        let assessment = &*self.session.assessed;
        let text = match table {
            Table::Joints => joints_csv(assessment),
            Table::Year => year_csv(assessment),
            Table::Tasks => tasks_csv(assessment),
            Table::Materials => materials_csv(assessment),
        };
        match text {
            Ok(text) => {
                let lines = text.lines().count();
                ctx.copy_text(text);
                self.prompts.toast = Some(Toast::good(say!(self.words(), "copied-lines", count = lines)));
            }
            Err(error) => self.fault(error.to_string()),
        }
    }

    /// Puts a picture on the clipboard, as the papers have it.
    pub(super) fn copy_picture(&mut self, ctx: &Context, which: Picture) {
        let assessment = &*self.session.assessed;
        let (name, svg) = match which {
            Picture::Surface if self.view.surface < assessment.layouts.len() => {
                ("surface.svg", figure::surface(assessment, self.view.surface, &self.words()))
            }
            Picture::Surface => return self.fault(self.words().text("copy-no-surface").into_owned()),
            Picture::Year => ("year.svg", figure::year(assessment, &self.words())),
            Picture::Cuts => ("cuts.svg", figure::cuts(assessment, &self.words())),
        };
        match picture(name, &svg) {
            Ok(page) => {
                let size = [page.width, page.height];
                ctx.copy_image(ColorImage::from_rgba_premultiplied(size, &page.rgba));
                let text = say!(self.words(), "copied-picture", width = size[0], height = size[1]);
                self.prompts.toast = Some(Toast::good(text));
            }
            Err(error) => self.fault(error.say(&self.words())),
        }
    }
}
