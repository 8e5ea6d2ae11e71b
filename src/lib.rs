//! Why painted, caulked board joints opened, how they will move, and which repair lasts.
//!
//! A carpenter or painter called back because boards opened at their joints enters the layout and
//! a handful of readings; [`assess::assess`] gives back the cause, the season in which a new bead
//! lasts, the repair options with hours, materials, days and price, and the answer that sums it
//! up. The window, the papers and the command line only show what it found.
//!
//! # The map
//!
//! In the order to read them; each uses only those above it.
//!
//! | module | idea |
//! |---|---|
//! | [`named`] | what entries of the catalog are called: ids that stay, names that may change |
//! | [`measure`] | lengths, moisture, money: types with units, as people type and read them |
//! | [`wood`] | equilibrium moisture, shrinkage, meter correction |
//! | [`air`] | water in air, and the year of it indoors |
//! | [`surface`] | outlines, sections and patterns; boards, joints and areas out of them |
//! | [`survey`] | readings, and what a few say of all joints |
//! | [`joint`] | movement through the year, the bead and its limits, the week to seal in |
//! | [`cause`] | the moisture at install, worked back |
//! | [`repair`] | tasks, take-off, schedule, price |
//! | [`job`] | the document, its file, its shelf, what is wrong with it |
//! | [`assess`] | one pure function from job to answer, all of it data |
//! | [`words`] | that answer in sentences, labels and figures for people |
//! | [`papers`] | letter and price sheet, typeset |
//! | [`export`] | JSON, tables, pictures and drawings for other programs |
//! | [`app`] | the window |

pub mod air;
pub mod app;
pub mod assess;
pub mod cause;
pub mod export;
pub mod job;
pub mod joint;
pub mod measure;
pub mod named;
pub mod papers;
pub mod repair;
pub mod surface;
pub mod survey;
pub mod wood;
pub mod words;
