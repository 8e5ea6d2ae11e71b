//! The window, driven by the names that a screen reader says.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

#[path = "../shared/driven.rs"]
mod driven;
#[path = "../shared/made_up.rs"]
mod made_up_language;

mod bead_shape;
mod commands;
mod crowded;
mod doubted_gaps;
mod entering;
mod leading;
mod living_joint;
mod made_up;
mod next_install;
mod nothing_yet;
mod paths;
mod still;
mod tools;
mod under_the_pointer;
