//! What the window does with papers: previews, the user's own templates, the logo.

use std::path::{Path, PathBuf};

use eframe::egui::Context;

use super::command::{Command, Edit};
use super::{App, Toast};
use crate::job::{Job, Logo};
use crate::papers::{Paper, Templates};
use crate::words::{Say as _, say, unreadable_file};

impl App {
    /// Takes the user's own templates from this folder.
    pub fn templates_in(&mut self, folder: PathBuf) {
        self.services.templates = Templates::in_folder(folder);
    }

    /// Makes the user a template for a paper, and says where it is.
    pub(super) fn own_template(&mut self, paper: Paper) {
        match self.services.templates.make_own(paper) {
            Ok(Some(path)) => {
                let text = say!(self.words(), "papers-template-made", path = &path.display().to_string());
                self.prompts.toast = Some(Toast::good(text));
            }
            Ok(None) => self.fault(self.words().text("papers-template-no-place").into_owned()),
            Err(error) => self.fault(error.say(&self.words())),
        }
        self.services.previews.forget();
    }

    /// Goes back to the built-in template of a paper.
    pub(super) fn built_in_template(&mut self, paper: Paper) {
        let own = self.services.templates.own(paper);
        match (self.services.templates.put_away(paper), own) {
            (Err(error), _) => self.fault(error.say(&self.words())),
            (Ok(()), Some(path)) => {
                let kept = path.with_extension("typ.old").display().to_string();
                let text = say!(self.words(), "papers-template-kept", path = &kept);
                self.prompts.toast = Some(Toast::good(text));
            }
            (Ok(()), None) => {}
        }
        self.services.previews.forget();
    }

    /// Takes a picture as the contractor's logo.
    pub(super) fn take_logo(&mut self, ctx: &Context, path: &Path) {
        let words = self.words();
        let read = std::fs::metadata(path).and_then(|data| {
            // Larger files are no logos and would hold up the window.
            if data.len() > 20 << 20 {
                Err(std::io::ErrorKind::FileTooLarge.into())
            } else {
                std::fs::read(path)
            }
        });
        let logo = read
            .map_err(|error| unreadable_file(&words, path, &error))
            .and_then(|bytes| Logo::new(&bytes).map_err(|error| error.say(&words)));
        match logo {
            Ok(logo) => {
                let change = move |job: &mut Job| job.contractor.logo = Some(logo);
                self.apply(
                    ctx,
                    Command::Edit(Edit { name: "field-logo".to_owned(), change: Box::new(change) }),
                );
            }
            Err(error) => self.file_fault(error),
        }
    }
}
