//! What the window does with shelves: keep, offer, write, and learn from finished jobs.

use std::path::Path;

use jiff::civil::Date;

use super::App;
use crate::job::{Catalog, Contractor, Job, PriceBook, load_prices, save_prices};
use crate::words::{Say as _, say};

impl App {
    /// Keeps the user's own shelf, and finds it, in this folder.
    pub fn prices_in(&mut self, folder: &Path) {
        self.services.my_prices = Some(folder.join("shelf.ron"));
    }

    /// An empty job with the user's own figures, if there are any.
    pub(super) fn new_job(&mut self, today: Date) -> Job {
        let mut job = Job { units: self.settings.units, ..Job::new(today) };
        match self.services.my_prices.clone().filter(|path| path.exists()).map(|path| load_prices(&path)) {
            Some(Ok(catalog)) => {
                if let Some(prices) = &catalog.prices {
                    job.plan.prices = prices.clone();
                }
                job.contractor = catalog.contractor.clone().unwrap_or_default();
                job.price_book = Some(catalog);
            }
            Some(Err(error)) => self.prompts.pending_fault = Some(error.say(&self.words())),
            None => {}
        }
        job
    }

    /// Before a job is saved for the first time, puts the figures it goes by with it.
    pub(super) fn keep_figures(&mut self) {
        if self.job().price_book.is_none() {
            let own = PriceBook::of(Catalog::built_in(), self.job().visited);
            self.session.document.edit("undo-keep-prices".to_owned(), move |job| job.price_book = Some(own));
            self.reassess();
        }
    }

    fn figures(&self) -> PriceBook {
        let today = jiff::ZonedDateTime::now().date();
        let (prices, contractor) = (&self.job().plan.prices, &self.job().contractor);
        PriceBook {
            prices: Some(prices.clone()),
            contractor: Some(contractor.clone()).filter(|contractor| *contractor != Contractor::default()),
            ..PriceBook::of(&self.session.assessed.catalog, today)
        }
    }

    pub(super) fn export_prices(&mut self, path: &Path) {
        match save_prices(&self.figures(), path) {
            Ok(()) => self.tell(say!(self.words(), "prices-exported", path = &path.display().to_string())),
            Err(error) => self.file_fault(error.say(&self.words())),
        }
    }

    pub(super) fn keep_prices(&mut self) {
        let Some(path) = self.services.my_prices.clone() else {
            self.fault(self.words().text("prices-no-place").into_owned());
            return;
        };
        if let Some(folder) = path.parent() {
            // If it cannot be made, saving says so.
            std::fs::create_dir_all(folder).ok();
        }
        match save_prices(&self.figures(), &path) {
            Ok(()) => self.tell(self.words().text("prices-kept").into_owned()),
            Err(error) => self.fault(error.say(&self.words())),
        }
    }

    pub(super) fn offer_prices(&mut self, path: &Path) {
        match load_prices(path) {
            Ok(catalog) => self.offer(path.display().to_string(), catalog),
            Err(error) => self.file_fault(error.say(&self.words())),
        }
    }

    /// Shows what would change, where it can be taken.
    fn offer(&mut self, from: String, catalog: PriceBook) {
        self.view.drafts.offered = Some((from, catalog));
        self.view.tab = super::Tab::Catalog;
    }

    pub(super) fn offer_my_prices(&mut self) {
        match self.services.my_prices.clone().filter(|path| path.exists()) {
            Some(path) => self.offer_prices(&path),
            None => {
                let today = jiff::ZonedDateTime::now().date();
                let own = PriceBook::of(Catalog::built_in(), today);
                self.offer(self.words().text("prices-from-program").into_owned(), own);
            }
        }
    }

    fn tell(&mut self, text: String) {
        self.prompts.toast = Some(super::Toast::good(text));
    }
}
