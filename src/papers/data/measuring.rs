//! The sheet for the ladder: which joints to read first, and where the meter goes.

use serde_json::{Value, json};

use super::length_or_none;
use crate::assess::Assessment;
use crate::words::{Words, say};

/// Meter readings of a section that the sheet has room for.
const METERED: usize = 2;

/// The joints to read first, in order, and the sections whose boards are metered.
pub(super) fn sheet(assessment: &Assessment, words: &Words) -> Value {
    let job = &*assessment.job;
    let order = assessment.reading_order();
    let joints = order.iter().enumerate().filter_map(|(at, &(surface, joint))| {
        let laid = assessment.layouts.get(surface)?.joints.get(joint)?;
        Some(json!([at + 1, job.surfaces.get(surface)?.name, words.joint(&laid.label)]))
    });
    let again = assessment.joints.iter().filter(|state| state.gap.is_some_and(|gap| gap.measured));
    let again = again.map(|state| {
        json!([
            job.surfaces[state.surface].name,
            words.joint(&super::work::laid(assessment, state).label),
            length_or_none(state.gap.map(|gap| gap.gap.mean), words),
        ])
    });
    let sections = job.surfaces.iter().flat_map(|surface| {
        surface
            .sections
            .iter()
            .flat_map(move |section| (0..METERED).map(move |_| json!([surface.name, section.name])))
    });
    let joints: Vec<Value> = joints.collect();
    let count = joints.len();
    json!({
        "joints": joints,
        "again": again.collect::<Vec<_>>(),
        "sections": sections.collect::<Vec<_>>(),
        "first": if count == 0 {
            say!(words, "paper-reading-enough")
        } else {
            say!(words, "paper-reading-first", count = count)
        },
    })
}
