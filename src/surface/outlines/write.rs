//! Rings and lines into a DXF.

use dxf::entities::{Entity, EntityType, Line, LwPolyline};
use dxf::enums::{AcadVersion, Units};
use dxf::{Drawing, LwPolylineVertex, Point as Place};

use super::{OutlineError, Point, ShapeRule};

/// How DXF says that nothing shines through. Without it the library writes a value that has no
/// meaning.
const OPAQUE: i32 = 0x0200_00ff;

/// A shape to be written, in meters with y upwards.
#[derive(Debug, Clone, PartialEq)]
pub enum Shape {
    /// A closed line through these corners; the first is not repeated.
    Ring(Vec<[f64; 2]>),
    /// A straight line between two points.
    Line([f64; 2], [f64; 2]),
}

/// Writes shapes by layer as an ASCII DXF in millimeters, in the version of 2007: the first with
/// names in UTF-8.
///
/// Signs a layer's name may not have are written as `_`.
///
/// # Errors
/// If a ring has fewer than three corners, or a coordinate is no number or beyond all measure.
pub fn write_dxf(layers: &[(&str, Vec<Shape>)]) -> Result<Vec<u8>, OutlineError> {
    let mut drawing = Drawing::new();
    drawing.header.version = AcadVersion::R2007;
    drawing.header.default_drawing_units = Units::Millimeters;
    for (layer, shapes) in layers {
        let name = layer_name(layer);
        for shape in shapes {
            let mut entity = Entity::new(specific(shape, layer)?);
            entity.common.layer.clone_from(&name);
            entity.common.transparency = OPAQUE;
            drawing.add_entity(entity);
        }
    }
    let mut bytes = Vec::new();
    drawing.save(&mut bytes).map_err(|error| OutlineError::Unwritten(error.to_string()))?;
    Ok(bytes)
}

fn specific(shape: &Shape, layer: &str) -> Result<EntityType, OutlineError> {
    let refused = |rule| OutlineError::NoShape { layer: layer.to_owned(), rule };
    let written = |point: &Point| {
        let [x, y] = point.map(|c| c * 1000.0);
        let measurable = x.abs() <= 1e12 && y.abs() <= 1e12;
        measurable.then_some((x, y)).ok_or_else(|| refused(ShapeRule::Measurable))
    };
    match shape {
        Shape::Ring(ring) if ring.len() < 3 => Err(refused(ShapeRule::Corners)),
        Shape::Ring(ring) => {
            let corner = |p| written(p).map(|(x, y)| LwPolylineVertex { x, y, ..Default::default() });
            let vertices = ring.iter().map(corner).collect::<Result<_, _>>()?;
            let mut line = LwPolyline { vertices, ..Default::default() };
            line.set_is_closed(true);
            Ok(EntityType::LwPolyline(line))
        }
        Shape::Line(from, to) => {
            let ((x1, y1), (x2, y2)) = (written(from)?, written(to)?);
            Ok(EntityType::Line(Line::new(Place::new(x1, y1, 0.0), Place::new(x2, y2, 0.0))))
        }
    }
}

/// The name as a layer may have it.
fn layer_name(name: &str) -> String {
    let allowed = |c: char| !c.is_control() && !"<>/\\\":;?*|=,`^".contains(c);
    let name: String = name.trim().chars().take(200).map(|c| if allowed(c) { c } else { '_' }).collect();
    if name.is_empty() { "0".to_owned() } else { name }
}
