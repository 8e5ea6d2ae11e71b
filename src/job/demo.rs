//! The demo job.

use super::document::Job;
use super::file;

/// The demo: the tea room of the Alder Lane boathouse. Its people, prices and readings are invented.
///
/// # Panics
/// Never: the demo is part of the program and read in its tests.
pub fn demo_job() -> Job {
    let text = include_str!("../../examples/tea_room.ron");
    file::read(text).unwrap_or_else(|version| panic!("the demo is of version {version}")).job
}
