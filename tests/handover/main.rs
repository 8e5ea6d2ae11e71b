//! What leaves the program: the papers, the JSON and tables, and the command line.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

mod command_line;
mod languages;
mod next_install;
mod owner_page;
mod papers;
mod photos;
mod templates;
