//! Why painted, caulked board joints opened, how they will move, and which repair lasts.
//!
//! A carpenter or painter called back because boards opened at their joints enters the layout and
//! a handful of readings; [`assess::assess`] gives back the cause, the season in which a new bead
//! lasts, the repair options with hours, materials, days and price, and what the answer is. Words make
//! sentences of it; the window, the papers and the command line only show what it found.
//!
//! # The map
//!
//! In the order to read them; each uses only those above it.
//!
//! | module | idea |
//! |---|---|
//! | [`named`] | what entries of the catalog are called: ids that stay, names that may change |
//! | [`measure`] | lengths, moisture, money: types with units, as people type them |
//! | [`wood`] | equilibrium moisture, shrinkage, meter correction, drying through the thickness |
//! | [`air`] | water in air, places, and the year of it indoors |
//! | [`surface`] | outlines, sections and patterns; boards, joints and areas out of them |
//! | [`survey`] | readings, and what a few say of all joints |
//! | [`joint`] | movement through the year, the bead and its limits, the week to seal in |
//! | [`cause`] | why joints opened: the odds of each cause, the moisture at install |
//! | [`repair`] | tasks, take-off, schedule, price, the chance of a callback |
//! | [`job`] | the document, its fields, its file, the catalog, what is wrong with it |
//! | [`assess`] | one pure function from job to everything that follows |
//! | [`words`] | results, labels and messages as sentences and figures for people |
//! | [`papers`] | letter, price sheet, work order and the others, typeset |
//! | [`export`] | JSON, CSV and drawings for other programs |
//! | [`cli`] | the command line |
//! | [`app`] | the window |

pub mod air;
pub mod app;
pub mod assess;
pub mod cause;
pub mod cli;
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
