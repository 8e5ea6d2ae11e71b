//! Which reading a photo shows: that of the measured joint nearest to the place where it is pinned.

use super::Assessment;
use crate::measure::Length;
use crate::surface::{Photo, SurfaceLayout};

/// A photo pinned farther than about a board from a joint does not show it.
const NEAR: Length = Length::mm(150.0);

impl Assessment {
    /// The gap readings, by their place in the job's list, of the measured joint that a photo of a surface shows;
    /// none if no measured joint is near.
    pub fn photographed(&self, surface: usize, photo: &Photo) -> Vec<usize> {
        let (Some(drawn), Some(laid)) = (self.job.surfaces.get(surface), self.layouts.get(surface)) else {
            return Vec::new();
        };
        let readings = self.job.survey.gaps.iter().enumerate().filter(|(_, gap)| gap.surface == drawn.name);
        let measured: Vec<(usize, &str)> = readings.map(|(at, gap)| (at, gap.joint.as_str())).collect();
        let Some(nearest) = nearest(laid, photo, &measured) else { return Vec::new() };
        measured.into_iter().filter(|(_, joint)| *joint == nearest).map(|(at, _)| at).collect()
    }
}

/// The name of the joint among those measured that is nearest to a photo, if it is near.
fn nearest<'a>(laid: &'a SurfaceLayout, photo: &Photo, measured: &[(usize, &str)]) -> Option<&'a str> {
    let joints = laid.joints.iter().filter(|joint| measured.iter().any(|(_, label)| *label == joint.label));
    let away = joints.map(|joint| (joint.distance_to(photo.at.coord()), joint));
    let near = away.filter(|(distance, _)| *distance <= NEAR.to_m());
    near.min_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, joint)| joint.label.as_str())
}
