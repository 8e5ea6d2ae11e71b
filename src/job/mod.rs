//! The document: what the user entered, its file, its shelf, and what is wrong with it.
//!
//! [`Job`] is plain data that serialises as readable RON. [`mod@file`] loads it, mending what it can
//! of a broken file and saying where, and saves it so that a crash leaves the old or the new file
//! whole. [`check`] finds what is wrong with the entries. [`Catalog`] is the data that jobs draw on.

mod catalog;
mod check;
mod demo;
mod document;
pub mod fields;
pub mod file;
mod json_text;
mod lenient;
mod letterhead;
mod price_book;
mod price_file;
mod problem;
mod ron_text;
mod sanitized;
mod unknown;

pub use catalog::Catalog;
pub use check::{Checked, check};
pub use demo::demo_job;
pub use document::{Job, VERSION};
pub use letterhead::{Contractor, LetterPart, Logo, LogoError, OwnWords};
pub use price_book::{CatalogBoard, Difference, EntryFault, EntryFigure, PriceBook};
pub use price_file::{
    PriceFileError, RateLearned, job_files_in, jobs_in, learn_rates, load_prices, read_prices, save_prices,
};
pub use problem::{
    BookFault, DateFault, Dated, Fault, FileFault, LayoutFault, Listed, Place, PlanFault, Problem,
    RangeFault, ReadingFault, SectionFault, Severity, Unread,
};
pub use sanitized::sanitized;
