//! What the window does with papers: previews, templates of the user's own, the logo.

use std::path::{Path, PathBuf};

use eframe::egui::Context;

use super::command::{Command, Edit};
use super::{App, Toast};
use crate::job::{Job, Logo};
use crate::papers::{Paper, Templates};
use crate::words::{Say as _, unreadable_file};

impl App {
    /// Takes templates of the user's own from this folder.
    pub fn templates_in(&mut self, folder: PathBuf) {
        self.services.templates = Templates::in_folder(folder);
    }

    /// Lays out a template of the user's own for a paper, and says where it is.
    pub(super) fn own_template(&mut self, paper: Paper) {
        match self.services.templates.make_own(paper) {
            Ok(Some(path)) => {
                let text = format!(
                    "The template is in {}. Change it with any text editor; what can stand in it is told at its top.",
                    path.display()
                );
                self.prompts.toast = Some(Toast::good(text));
            }
            Ok(None) => self.fault("This system has no place for templates of your own".to_owned()),
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
                let text = format!("Yours is kept as {}", path.with_extension("typ.old").display());
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
                self.apply(ctx, Command::Edit(Edit { name: "Logo".to_owned(), change: Box::new(change) }));
            }
            Err(error) => self.fault(error),
        }
    }
}
