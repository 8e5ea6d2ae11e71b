//! Outlines out of a DXF.

use std::collections::BTreeMap;
use std::f64::consts::TAU;

use dxf::entities::{Arc, Circle, Entity, EntityType, LwPolyline, Polyline};
use dxf::enums::Units;
use dxf::{Drawing, Vector};

use super::chain;
use super::pairs::{self, UNREAD};
use super::ring::{Draft, ENDS_MEET, add_arc, add_bulge, circle, distance};
use super::{FileFormat, FileUnit, FormatFault, LeftOut, OutlineError, OutlineRemark, OutlinesRead, Point};

/// Reads the outlines of a drawing. Their names are those of their layers.
pub(super) fn read(text: &str, stem: &str, assume: FileUnit) -> Result<OutlinesRead, OutlineError> {
    let cut = pairs::cut_down(text)?;
    let broken = |error: dxf::DxfError| {
        let fault = FormatFault::Broken { line: None, reason: error.to_string() };
        OutlineError::Unread { format: FileFormat::Dxf, fault }
    };
    let drawing = Drawing::load(&mut cut.dxf.as_bytes()).map_err(broken)?;
    let mut draft = Draft::new(stem);
    let stated = drawing.header.default_drawing_units;
    let from_file = unit_of(stated);
    let unit = from_file.unwrap_or(assume);
    if from_file.is_none() && stated != Units::Unitless {
        draft.remark(OutlineRemark::UnknownUnit(unit));
    }
    let mut sheet = Sheet { stem, meters: unit.meters(), draft, loose: BTreeMap::new() };
    for entity in drawing.entities() {
        sheet.take(entity)?;
    }
    sheet.join_loose()?;
    let mut draft = sheet.draft;
    for (what, count) in UNREAD.into_iter().zip(cut.unread) {
        draft.leave_out(what, count);
    }
    draft.finish(unit, from_file.is_some())
}

const fn unit_of(units: Units) -> Option<FileUnit> {
    match units {
        Units::Millimeters => Some(FileUnit::Millimeters),
        Units::Centimeters => Some(FileUnit::Centimeters),
        Units::Meters => Some(FileUnit::Meters),
        // The surveyors' differ by two in a million.
        Units::Inches | Units::USSurveyInch => Some(FileUnit::Inches),
        Units::Feet | Units::USSurveyFeet => Some(FileUnit::Feet),
        _ => None,
    }
}

/// A drawing as it is read, shape by shape.
struct Sheet<'a> {
    stem: &'a str,
    meters: f64,
    draft: Draft<'a>,
    /// Lines that are not closed, by layer.
    loose: BTreeMap<String, Vec<Vec<Point>>>,
}

/// A corner, and the bulge of the line to the next.
type Corner = (Point, f64);

impl Sheet<'_> {
    fn take(&mut self, entity: &Entity) -> Result<(), OutlineError> {
        let layer = match entity.common.layer.trim() {
            // The layer every drawing has says nothing.
            "" | "0" => self.stem.to_owned(),
            layer => layer.to_owned(),
        };
        if entity.common.is_in_paper_space {
            self.draft.leave_out(LeftOut::OnSheet, 1);
            return Ok(());
        }
        match &entity.specific {
            EntityType::Line(line) => {
                let ends = [&line.p1, &line.p2].map(|p| self.scaled(p.x, p.y));
                self.add_open(layer, ends.to_vec())
            }
            EntityType::LwPolyline(line) => self.add_polyline(layer, line),
            EntityType::Polyline(line) => self.add_old_polyline(layer, line),
            EntityType::Circle(circle) => self.add_circle(&layer, circle),
            EntityType::Arc(arc) => self.add_arc(layer, arc),
            _ => Ok(()),
        }
    }

    fn scaled(&self, x: f64, y: f64) -> Point {
        [x * self.meters, y * self.meters]
    }

    /// Which way up a shape lies: nothing if it stands on edge, which is counted.
    fn side(&mut self, up: &Vector) -> Option<Side> {
        let flat = up.x.hypot(up.y) <= 1e-6 * up.z.abs();
        if !flat {
            self.draft.leave_out(LeftOut::Upright, 1);
        }
        flat.then_some(if up.z < 0.0 { Side::Back } else { Side::Front })
    }

    fn add_polyline(&mut self, layer: String, line: &LwPolyline) -> Result<(), OutlineError> {
        let Some(side) = self.side(&line.extrusion_direction) else { return Ok(()) };
        let corners: Vec<Corner> = line.vertices.iter().map(|v| (self.scaled(v.x, v.y), v.bulge)).collect();
        self.add_corners(layer, &corners, line.is_closed(), side)
    }

    fn add_old_polyline(&mut self, layer: String, line: &Polyline) -> Result<(), OutlineError> {
        if line.is_3d_polygon_mesh() || line.is_polyface_mesh() {
            self.draft.leave_out(LeftOut::Meshes, 1);
            return Ok(());
        }
        let side = if line.is_3d_polyline() { Some(Side::Front) } else { self.side(&line.normal) };
        let Some(side) = side else { return Ok(()) };
        let on_line = line.vertices().filter(|v| !v.is_spline_frame_control_point());
        let corners: Vec<Corner> =
            on_line.map(|v| (self.scaled(v.location.x, v.location.y), v.bulge)).collect();
        self.add_corners(layer, &corners, line.is_closed(), side)
    }

    fn add_corners(
        &mut self,
        layer: String,
        corners: &[Corner],
        closed: bool,
        side: Side,
    ) -> Result<(), OutlineError> {
        let mut points = Vec::with_capacity(corners.len());
        let next = corners.iter().cycle().skip(1);
        for (index, ((from, bulge), (to, _))) in corners.iter().zip(next).enumerate() {
            points.push(*from);
            if closed || index + 1 < corners.len() {
                add_bulge(&mut points, *from, *to, *bulge)?;
            }
        }
        side.turn(&mut points);
        if closed { self.add_ring(&layer, &points) } else { self.add_open(layer, points) }
    }

    fn add_circle(&mut self, layer: &str, shape: &Circle) -> Result<(), OutlineError> {
        let Some(side) = self.side(&shape.normal) else { return Ok(()) };
        let center = self.scaled(shape.center.x, shape.center.y);
        let mut ring = circle(center, shape.radius.abs() * self.meters)?;
        side.turn(&mut ring);
        self.add_ring(layer, &ring)
    }

    fn add_arc(&mut self, layer: String, arc: &Arc) -> Result<(), OutlineError> {
        let Some(side) = self.side(&arc.normal) else { return Ok(()) };
        let center = self.scaled(arc.center.x, arc.center.y);
        let radius = arc.radius.abs() * self.meters;
        let at = |degrees: f64| {
            let (sin, cos) = degrees.to_radians().sin_cos();
            [center[0] + radius * cos, center[1] + radius * sin]
        };
        let (from, to) = (at(arc.start_angle), at(arc.end_angle));
        let mut points = vec![from];
        // From an angle to itself is once round.
        let turn = (arc.end_angle - arc.start_angle).rem_euclid(360.0);
        add_arc(&mut points, center, from, if turn == 0.0 { TAU } else { turn.to_radians() })?;
        points.push(to);
        side.turn(&mut points);
        self.add_open(layer, points)
    }

    fn add_ring(&mut self, layer: &str, ring: &[Point]) -> Result<(), OutlineError> {
        self.draft.count_points(ring.len())?;
        self.draft.add(layer, ring)
    }

    /// Adds a line whose ends may meet all the same.
    fn add_open(&mut self, layer: String, points: Vec<Point>) -> Result<(), OutlineError> {
        if let [ring @ .., last] = &points[..]
            && ring.len() > 2
            && distance(ring[0], *last) <= ENDS_MEET
        {
            return self.add_ring(&layer, ring);
        }
        self.draft.count_points(points.len())?;
        self.loose.entry(layer).or_default().push(points);
        Ok(())
    }

    fn join_loose(&mut self) -> Result<(), OutlineError> {
        for (layer, lines) in std::mem::take(&mut self.loose) {
            let chains = chain::join(lines);
            for ring in chains.rings {
                self.draft.add(&layer, &ring)?;
            }
            self.draft.leave_out(LeftOut::OpenLines, chains.open);
            self.draft.leave_out(LeftOut::BranchedLines, chains.branched);
        }
        Ok(())
    }
}

/// The side a flat shape is seen from.
#[derive(Clone, Copy)]
enum Side {
    Front,
    Back,
}

impl Side {
    /// Places of a shape seen from the back lie mirrored.
    fn turn(self, points: &mut [Point]) {
        if matches!(self, Self::Back) {
            points.iter_mut().for_each(|p| p[0] = -p[0]);
        }
    }
}

#[cfg(test)]
mod tests {
    use std::f64::consts::PI;

    use super::*;

    fn outlines(entities: &str) -> OutlinesRead {
        let text = format!("0\nSECTION\n2\nENTITIES\n{entities}0\nENDSEC\n0\nEOF\n");
        read(&text, "plan", FileUnit::Meters).unwrap()
    }

    #[test]
    fn round_things_are_round() {
        let arc = "0\nARC\n8\n0\n10\n5\n20\n5\n40\n1\n50\n90\n51\n450\n";
        let two = "0\nLWPOLYLINE\n8\nTwo\n70\n1\n10\n0\n20\n0\n42\n1\n10\n2\n20\n0\n42\n1\n";
        let read = outlines(&[arc, two].concat());
        assert_eq!(read.outlines.iter().map(|o| &o.name[..]).collect::<Vec<_>>(), ["plan", "Two"]);
        for (outline, center) in read.outlines.iter().zip([[5.0, 5.0], [1.0, 0.0]]) {
            assert!(outline.ring.len() > 60, "{}", outline.ring.len());
            assert!(outline.ring.iter().all(|p| (distance(*p, center) - 1.0).abs() < 1e-9));
            let round: f64 = outline
                .ring
                .iter()
                .zip(outline.ring.iter().cycle().skip(1))
                .map(|(a, b)| distance(*a, *b))
                .sum();
            assert!((round - 2.0 * PI).abs() < 0.01);
        }
    }

    #[test]
    fn lines_on_different_layers_are_not_joined() {
        let line = |layer, from: [u8; 2], to: [u8; 2]| {
            format!("0\nLINE\n8\n{layer}\n10\n{}\n20\n{}\n11\n{}\n21\n{}\n", from[0], from[1], to[0], to[1])
        };
        let sides = [line("A", [0, 0], [4, 0]), line("A", [4, 0], [4, 3]), line("A", [4, 3], [0, 0])];
        let other = [line("B", [9, 0], [13, 0]), line("B", [13, 0], [13, 3]), line("C", [13, 3], [9, 0])];
        let read = outlines(&[sides.concat(), other.concat()].concat());
        assert_eq!(read.outlines.len(), 1);
        assert_eq!(read.remarks, [OutlineRemark::LeftOut { what: LeftOut::OpenLines, count: 3 }]);
    }
}
