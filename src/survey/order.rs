//! The joints to read first, in the order in which each tells most.

use super::gaps::{
    GAUGE_SD, NextReading, farthest_from_measured, mean_length, measured_joints, most_telling, one_measured,
    sample, sections_of, unmeasured_share,
};
use super::hierarchy::{Hierarchy, Share};
use super::readings::Survey;
use crate::surface::{JointKind, Surface, SurfaceLayout};

/// So many joints of each section are read where nothing was read yet: enough to see how much they differ.
const OF_EACH: usize = 3;
/// More than this nobody reads at a time.
const MOST: usize = 24;

/// The joints to read first: surface and joint by their indices. Each is in the section in which one more reading
/// narrows the opening most, as far as can be from those read before. Where nothing was read yet the sections take
/// turns. Empty once the precision asked for is reached, which is what `next` says.
pub fn reading_order(
    surfaces: &[Surface],
    layouts: &[SurfaceLayout],
    survey: &Survey,
    next: Option<NextReading>,
) -> Vec<(usize, usize)> {
    let mut measured = measured_joints(surfaces, layouts, survey);
    let sections = sections_of(layouts);
    let readings: Vec<Vec<f64>> =
        sections.iter().map(|place| sample(layouts, &measured, *place, JointKind::BoardEdge)).collect();
    let mut planned = Hierarchy::new(&readings, GAUGE_SD.to_m()).map(|known| known.condensed());
    let wanted = match (&planned, next) {
        (None, _) => OF_EACH * sections.len(),
        (Some(_), None) => 0,
        (Some(_), Some(next)) => next.more.unwrap_or(MOST),
    };
    let mut shares: Vec<Share> =
        sections.iter().map(|place| unmeasured_share(layouts, &measured, *place)).collect();
    let mut order = Vec::new();
    for turn in 0..wanted.min(MOST) {
        let section = match &planned {
            Some(planned) => most_telling(layouts, &sections, planned, &shares),
            None => Some(turn % sections.len().max(1)),
        };
        let Some(at) = section else { break };
        let Some(&place) = sections.get(at) else { break };
        if let Some(joint) = farthest_from_measured(layouts, &measured, place) {
            measured[place.0][joint] = Some(0.0);
            order.push((place.0, joint));
        }
        planned = planned.map(|planned| planned.with_one_more(at));
        shares[at] = one_measured(shares[at], mean_length(layouts, place));
    }
    order
}
