//! The window, driven by the names that a screen reader says.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

#[path = "../shared/driven.rs"]
mod driven;
#[path = "../shared/made_up.rs"]
mod made_up_language;

mod bead_shape;
mod commands;
mod entering;
mod leading;
mod made_up;
mod next_install;
mod still;
mod tools;
