//! The document: what the user entered, its file, its price book, and what is wrong with it.
//!
//! [`Job`] is plain data that serialises as readable RON. [`mod@file`] loads it, mending what it can
//! of a broken file and saying where, and saves it so that a crash leaves the old or the new file
//! whole. [`check`] finds what is wrong with the entries. [`Catalog`] is the data that jobs draw on.

mod book_entry;
mod book_figure;
mod catalog;
mod check;
mod demo;
mod document;
pub mod fields;
pub mod file;
mod json_text;
mod learned_rates;
mod lenient;
mod letterhead;
mod line_ids;
mod otherwise;
mod photos;
mod picture;
mod price_book;
mod price_file;
mod problem;
mod promise;
mod proposal;
mod reading_table;
mod received;
mod ron_text;
mod sanitized;
mod storage;
mod svg_logo;
mod unknown;

pub use book_entry::{EntryFault, EntryFigure};
pub use book_figure::{BookField, BookValue};
pub use catalog::{Catalog, CatalogBoard};
pub use check::{Checked, check};
pub use demo::demo_job;
pub use document::{Job, VERSION};
pub use file::{job_files_in, jobs_in};
pub use learned_rates::{Lessons, RateLearned, Taken, WasteLearned};
pub use letterhead::{Contractor, LetterPart, Logo, LogoError, OwnWords};
pub use otherwise::live_otherwise;
pub use photos::{PhotoFault, photo_folder, photo_in, read_photo};
pub use price_book::{BookList, Difference, Differs, PriceBook};
pub use price_file::{PriceFileError, load_prices, read_prices, save_prices};
pub use problem::{
    BookFault, DateFault, Dated, Fault, FileFault, LayoutFault, Listed, Place, PlanFault, Problem,
    RangeFault, ReadingFault, SectionFault, Severity, Unread,
};
pub use promise::{Promise, TOLD_EVERY, ToldChance, ToldJoint};
pub use proposal::ProposalTerms;
pub use reading_table::{TableFault, TableRule, read_gaps, read_moistures};
pub use received::BoardsReceived;
pub use sanitized::sanitized;
pub use storage::read_whole;
