//! The maps of the joints, and what stands under them.

use serde_json::{Map, Value, json};

use crate::assess::Assessment;
use crate::papers::figure::{JointMap, MapFor, map_name};
use crate::words::{Words, say};

/// For each purpose the maps of all surfaces, each with its width and what is to be said of its numbers.
pub(super) fn maps(assessment: &Assessment, words: &Words) -> Map<String, Value> {
    let first = assessment.reading_order();
    let of = |purpose: MapFor| -> Vec<Value> {
        let surfaces = assessment.job.surfaces.iter().enumerate();
        let one = |(index, surface): (usize, &crate::surface::Surface)| {
            let map = JointMap::new(assessment, index, purpose, &first)?;
            let step = u32::try_from(map.step()).unwrap_or(u32::MAX);
            Some(json!({
                "name": surface.name,
                "figure": map_name(purpose, index),
                "alt": say!(words, "paper-surface-map", surface = &surface.name),
                "whole": map.whole,
                "width_mm": map.width_mm(),
                "note": (step > 1).then(|| say!(words, "paper-map-every", step = step)),
            }))
        };
        surfaces.filter_map(one).collect()
    };
    MapFor::ALL.into_iter().map(|purpose| (purpose.key().to_owned(), of(purpose).into())).collect()
}
