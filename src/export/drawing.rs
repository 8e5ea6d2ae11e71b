//! The drawing as DXF.

use super::ExportError;
use crate::assess::Assessment;
use crate::surface::outlines::{Shape, write_dxf};

/// Boards, joints and outlines, a layer for each kind and surface; surfaces stand side by side.
pub(super) fn drawing(assessment: &Assessment) -> Result<Vec<u8>, ExportError> {
    let job = &assessment.job;
    let mut layers: Vec<(String, Vec<Shape>)> = Vec::new();
    let mut right = 0.0;
    for (surface, laid) in job.surfaces.iter().zip(&assessment.layouts) {
        let outline: Vec<[f64; 2]> =
            surface.outline.iter().map(|corner| [corner.0.to_m(), corner.1.to_m()]).collect();
        let low = outline.iter().map(|[x, _]| *x).fold(f64::INFINITY, f64::min);
        let high = outline.iter().map(|[x, _]| *x).fold(f64::NEG_INFINITY, f64::max);
        let beside = |[x, y]: [f64; 2]| [x - low + right, y];
        let ring = |points: Vec<[f64; 2]>| Shape::Ring(points.into_iter().map(beside).collect());
        let boards = laid.boards.iter().map(|board| {
            let corners: Vec<[f64; 2]> = board.face.exterior().coords().map(|c| [c.x, c.y]).collect();
            ring(corners[..corners.len().saturating_sub(1)].to_vec())
        });
        let joints = laid
            .joints
            .iter()
            .map(|joint| Shape::Line(beside([joint.from.x, joint.from.y]), beside([joint.to.x, joint.to.y])));
        layers.push((format!("{} boards", surface.name), boards.collect()));
        layers.push((format!("{} joints", surface.name), joints.collect()));
        layers.push((surface.name.clone(), vec![ring(outline)]));
        right += (high - low).max(0.0) + 1.0;
    }
    let layers: Vec<(&str, Vec<Shape>)> =
        layers.iter().map(|(name, shapes)| (name.as_str(), shapes.clone())).collect();
    write_dxf(&layers).map_err(|error| ExportError::Drawing(error.to_string()))
}
