//! What the window does with shelves: keep, offer, write, and learn from finished jobs.

use std::path::Path;

use jiff::civil::Date;

use super::App;
use crate::job::{Contractor, Job, OwnShelf, Shelf, load_shelf, save_shelf};

impl App {
    /// Keeps the user's own shelf, and finds it, in this folder.
    pub fn shelf_in(&mut self, folder: &Path) {
        self.my_shelf = Some(folder.join("shelf.ron"));
    }

    /// An empty job with the user's own figures, if there are any.
    pub(super) fn new_job(&mut self, today: Date) -> Job {
        let mut job = Job::new(today);
        match self.my_shelf.clone().filter(|path| path.exists()).map(|path| load_shelf(&path)) {
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
        let Some(path) = self.my_shelf.clone() else {
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
            Ok(shelf) => self.offer(path.display().to_string(), shelf),
            Err(error) => self.fault(error.to_string()),
        }
    }

    /// Shows what would change, where it can be taken.
    fn offer(&mut self, from: String, shelf: OwnShelf) {
        self.view.offered = Some((from, shelf));
        self.view.leaf = super::Leaf::Shelf;
    }

    pub(super) fn offer_my_shelf(&mut self) {
        match self.my_shelf.clone().filter(|path| path.exists()) {
            Some(path) => self.offer_shelf(&path),
            None => {
                let today = jiff::ZonedDateTime::now().date();
                let own = OwnShelf::of(Shelf::built_in(), today);
                self.offer("the program".to_owned(), own);
            }
        }
    }

    fn tell(&mut self, text: String) {
        self.notice = Some(super::Notice::good(text));
    }
}
