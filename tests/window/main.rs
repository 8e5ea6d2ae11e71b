//! The window, driven by the names that a screen reader says.

#[path = "../shared/driven.rs"]
mod driven;

mod commands;
mod entering;
mod tools;
