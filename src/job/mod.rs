//! The document: what the user entered, its file, its shelf, and what is wrong with it.
//!
//! [`Job`] is plain data that serialises as readable RON. [`mod@file`] loads it, mending what it can
//! of a broken file and saying where, and saves it so that a crash leaves the old or the new file
//! whole. [`check`] finds what is wrong with the entries. [`Catalog`] is the data that jobs draw on.

mod check;
mod document;
pub mod fields;
pub mod file;
mod letterhead;
mod price_book;
mod problem;
mod lenient;
mod catalog;
mod price_file;
mod sanitized;

pub use check::{Checked, check};
pub use document::{Job, VERSION};
pub use letterhead::{Contractor, LetterPart, Logo, LogoError, OwnWords};
pub use price_book::{CatalogBoard, Difference, EntryFault, EntryFigure, PriceBook};
pub use problem::{
    BookFault, DateFault, Dated, Fault, FileFault, LayoutFault, Listed, Place, PlanFault, Problem, RangeFault,
    ReadingFault, SectionFault, Severity, Unread,
};
pub use catalog::Catalog;
pub use price_file::{RateLearned, PriceFileError, jobs_in, learn_rates, load_prices, read_prices, save_prices};
pub use sanitized::sanitized;
