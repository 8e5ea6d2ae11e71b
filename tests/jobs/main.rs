//! Jobs from file to answer: earlier and broken files, impossible entries, repairs, follow-up visits.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

mod afterwards;
mod bad_input;
mod directions;
mod files;
mod loggers;
mod repair;
