//! Jobs from file to answer: earlier and broken files, impossible entries, repairs, follow-up visits.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

mod afterwards;
mod bad_input;
mod bead_designs;
mod believing;
mod directions;
mod files;
mod ids;
mod json;
mod loggers;
mod repair;

/// The examples, each with its name.
const EXAMPLES: [(&str, &str); 4] = [
    ("tea_room", include_str!("../../examples/tea_room.ron")),
    ("stair_hall", include_str!("../../examples/stair_hall.ron")),
    ("porch_room", include_str!("../../examples/porch_room.ron")),
    ("boathouse_delivery", include_str!("../../examples/boathouse_delivery.ron")),
];
