//! Why painted, caulked board joints opened, how they will move, and which repair lasts.
//!
//! A carpenter or painter, called back because boards opened at their joints, enters the layout and a few
//! readings. [`assess::assess`] returns the cause, the weeks in which a new bead lasts, the repair options
//! with hours, materials, days and price, and the answer that follows. [`words`] turns all of that into
//! sentences; the window, the papers and the command line only show it.
//!
//! # The map
//!
//! In the order to read them. Each module uses only those above it.
//!
//! | module | idea |
//! |---|---|
//! | [`named`] | how entries of the catalog are named: ids that stay, names that may change |
//! | [`measure`] | lengths, moisture, money: types with units, as people type them |
//! | [`bead`] | a bead of sealant as laid across the V, strained by finite elements; what a class means there |
//! | [`wood`] | equilibrium moisture, shrinkage, meter correction, drying through the thickness |
//! | [`air`] | humidity, places and their climate, weather and logger files, the room's year |
//! | [`surface`] | outlines, sections and patterns, and the boards, joints and areas they give |
//! | [`survey`] | readings, and what a few say of all joints |
//! | [`joint`] | movement through the year, the bead and its limits, the best weeks to seal |
//! | [`belief`] | plausible worlds, weighed by every reading: causes, install, past and future of the boards |
//! | [`ready`] | the next install: how wet boards may be hung, whether a delivery is, when a stack will be |
//! | [`repair`] | tasks, takeoff, schedule, price, the chance of a callback |
//! | [`job`] | the document, its fields, its files, its price book and the catalog, its problems |
//! | [`assess`] | one pure function from a job to everything that follows from it |
//! | [`words`] | results, labels and messages as sentences and figures for people |
//! | [`papers`] | letter, price sheet, work order and the others, typeset |
//! | [`export`] | JSON, CSV and drawings for other programs |
//! | [`cli`] | the command line |
//! | [`app`] | the window |

pub mod air;
pub mod app;
pub mod assess;
pub mod bead;
pub mod belief;
pub mod cli;
pub mod export;
pub mod job;
pub mod joint;
pub mod measure;
pub mod named;
pub mod papers;
pub mod ready;
pub mod repair;
pub mod surface;
pub mod survey;
pub mod wood;
pub mod words;
