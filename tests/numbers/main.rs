//! Figures against what others published, worked out by hand, or computed with other libraries.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

mod amounts;
mod bead;
mod belief;
mod by_hand;
mod checked;
mod climate;
mod computed;
mod cutting;
mod drying;
mod houses;
mod houses_repaired;
mod layout;
mod outlines;
mod priced_days;
mod priced_rooms;
mod published;
mod ready;
mod real_house;
mod rows;
mod tables;
mod weather_files;
mod wood;
