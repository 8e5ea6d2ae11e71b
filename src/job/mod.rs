//! The document: what the user entered, its file, its shelf, and what is wrong with it.
//!
//! [`Job`] is plain data that serialises as readable RON. [`mod@file`] loads it, mending what it can
//! of a broken file and saying where, and saves it so that a crash leaves the old or the new file
//! whole. [`check`] finds what is wrong with the entries. [`Shelf`] is the data that jobs draw on.

mod check;
mod document;
pub mod file;
mod letterhead;
mod own_shelf;
mod problem;
mod salvage;
mod shelf;
mod shelf_file;
mod usable;

pub use check::check;
pub use document::{Job, VERSION};
pub use letterhead::{Contractor, LetterPart, Logo, LogoError, OwnWords};
pub use own_shelf::{Difference, OwnShelf, ShelfBoard};
pub use problem::{Place, Problem, Severity};
pub use shelf::Shelf;
pub use shelf_file::{RateLearned, ShelfError, jobs_in, learn_rates, load_shelf, read_shelf, save_shelf};
pub use usable::usable;
