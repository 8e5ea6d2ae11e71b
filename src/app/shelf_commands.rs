//! What the window does with shelves: keep, offer, write, and learn from finished jobs.

use std::path::{Path, PathBuf};

use jiff::civil::Date;

use super::{APP_ID, App};
use crate::job::{Contractor, Job, OwnShelf, Shelf, load_shelf, save_shelf};

/// Where the user's own shelf is kept; `None` where the system has no place for it.
fn my_shelf_path() -> Option<PathBuf> {
    Some(eframe::storage_dir(APP_ID)?.join("shelf.ron"))
}

impl App {
    /// An empty job with the user's own figures, if there are any.
    pub(super) fn new_job(&mut self, today: Date) -> Job {
        let mut job = Job::new(today);
        // Tests have no shelf but the program's.
        let path = my_shelf_path().filter(|path| self.natives.is_some() && path.exists());
        match path.map(|path| load_shelf(&path)) {
            Some(Ok(shelf)) => {
                if let Some(prices) = &shelf.prices {
                    job.plan.prices = prices.clone();
                }
                job.contractor = shelf.contractor.clone().unwrap_or_default();
                job.shelf = Some(shelf);
            }
            Some(Err(error)) => self.pending_fault = Some(error.to_string()),
            None => {}
        }
        job
    }

    /// Before a job is saved for the first time, puts the figures it goes by with it.
    pub(super) fn keep_figures(&mut self) {
        if self.job().shelf.is_none() {
            let own = OwnShelf::of(Shelf::built_in(), self.job().visited);
            self.document.edit("Keep the figures with the job".to_owned(), move |job| job.shelf = Some(own));
            self.reassess();
        }
    }

    fn figures(&self) -> OwnShelf {
        let today = jiff::ZonedDateTime::now().date();
        let (prices, contractor) = (&self.job().plan.prices, &self.job().contractor);
        OwnShelf {
            prices: Some(prices.clone()),
            contractor: Some(contractor.clone()).filter(|contractor| *contractor != Contractor::default()),
            ..OwnShelf::of(&self.shelf, today)
        }
    }

    pub(super) fn export_shelf(&mut self, path: &Path) {
        match save_shelf(&self.figures(), path) {
            Ok(()) => self.tell(format!("The figures are in {}", path.display())),
            Err(error) => self.fault(error.to_string()),
        }
    }

    pub(super) fn keep_shelf(&mut self) {
        let Some(path) = my_shelf_path() else {
            self.fault(
                "This system has no place for a shelf of your own. Export it to a file instead".to_owned(),
            );
            return;
        };
        if let Some(folder) = path.parent() {
            // If it cannot be made, saving says so.
            std::fs::create_dir_all(folder).ok();
        }
        match save_shelf(&self.figures(), &path) {
            Ok(()) => self.tell("New jobs start with these figures".to_owned()),
            Err(error) => self.fault(error.to_string()),
        }
    }

    pub(super) fn offer_shelf(&mut self, path: &Path) {
        match load_shelf(path) {
            Ok(shelf) => self.view.offered = Some((path.display().to_string(), shelf)),
            Err(error) => self.fault(error.to_string()),
        }
    }

    pub(super) fn offer_my_shelf(&mut self) {
        match my_shelf_path().filter(|path| path.exists()) {
            Some(path) => self.offer_shelf(&path),
            None => {
                let today = jiff::ZonedDateTime::now().date();
                let own = OwnShelf::of(Shelf::built_in(), today);
                self.view.offered = Some(("the program".to_owned(), own));
            }
        }
    }

    fn tell(&mut self, text: String) {
        self.notice = Some(super::Notice::good(text));
    }
}
