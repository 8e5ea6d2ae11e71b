//! What tries to break the program: damaged files, random jobs, kills, full and vanished drives.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

#[path = "../shared/driven.rs"]
mod driven;

mod arbitrary;
mod drives;
mod fuzz;
mod invariants;
mod kill;
mod outlines;
mod outlines_garbage;
