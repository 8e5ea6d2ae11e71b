//! Jobs from file to answer: earlier and broken files, impossible entries, repairs, follow-up visits.

mod afterwards;
mod bad_input;
mod directions;
mod files;
mod loggers;
mod repair;
