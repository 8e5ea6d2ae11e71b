//! Drawings for the papers as SVG: the surface with its joints, the year of one joint, and cuts
//! through it.
//!
//! Made for ink on white: gaps differ by thickness first, by color second. Labels are the messages of
//! `figures-on-paper.ftl`.

mod cuts;
mod joint_map;
mod picture;
mod year;

use geo::{BoundingRect as _, LineString, MultiPolygon};
use svg::Document;
use svg::node::element::path::Data;
use svg::node::element::{Group, Line, Path, Text};

pub use cuts::cuts;
pub use cuts::{bead, bead_of_section};
pub use joint_map::{JointMap, MapFor};
pub use picture::picture;
pub use year::year;

use crate::assess::Assessment;
use crate::job::Job;
use crate::measure::{Length, Units};
use crate::surface::SurfaceLayout;
use crate::words::{Figures, Words};

const INK: &str = "#22303a";
const FAINT: &str = "#c9ced1";
const WOOD: &str = "#f5f1ea";
const GAP: &str = "#b3431e";
const WATER: &str = "#1f6f8b";

/// All figures of a job with the names templates use.
pub(crate) fn figures(assessment: &Assessment, words: &Words) -> Vec<(String, String)> {
    let surfaces = (0..assessment.layouts.len())
        .map(|index| (format!("surface-{index}.svg"), surface(assessment, index, words)));
    let mut all: Vec<(String, String)> = surfaces.collect();
    all.push(("cuts.svg".to_owned(), cuts(assessment, words)));
    all.push(("bead.svg".to_owned(), bead(assessment)));
    let beads = (0..assessment.sections.len()).map(|at| (bead_name(at), bead_of_section(assessment, at)));
    all.extend(beads);
    all.push(("year.svg".to_owned(), year(assessment, words)));
    all
}

/// The name of the file of a section's bead.
pub(crate) fn bead_name(section: usize) -> String {
    format!("bead-{}.svg", section + 1)
}

/// The maps of all surfaces with the names templates use.
pub(crate) fn maps(assessment: &Assessment) -> Vec<(String, String)> {
    let first = assessment.reading_order();
    let of = |purpose: MapFor| {
        let map = |index| {
            Some((map_name(purpose, index), JointMap::new(assessment, index, purpose, &first)?.draw()))
        };
        (0..assessment.layouts.len()).filter_map(map).collect::<Vec<_>>()
    };
    MapFor::ALL.into_iter().flat_map(of).collect()
}

/// The name of a map's file.
pub(crate) fn map_name(purpose: MapFor, surface: usize) -> String {
    format!("map-{}-{surface}.svg", purpose.key())
}

/// One surface to scale: boards faint, joints as thick as ten times their gap.
pub fn surface(assessment: &Assessment, index: usize, words: &Words) -> String {
    const MAGNIFIED: f64 = 10.0;
    let job = &*assessment.job;
    let laid = &assessment.layouts[index];
    let Some(bounds) = laid.face.bounding_rect() else {
        return Document::new().set("viewBox", (0, 0, 10, 1)).to_string();
    };
    let (width, height) = (bounds.width(), bounds.height());
    // Units are millimeters of the room; y runs down on paper.
    let margin = 0.03 * width.max(height) * 1000.0;
    let (left, top) = (bounds.min().x * 1000.0 - margin, -bounds.max().y * 1000.0 - margin);
    let scale_room = margin * 2.2;
    let size = (width * 1000.0 + 2.0 * margin, height * 1000.0 + 2.0 * margin + scale_room);
    let thin = width.max(height) * 1.2;
    let mut drawing = Document::new().set("viewBox", (left, top, size.0, size.1));
    drawing =
        drawing.add(region(&laid.face).set("fill", WOOD).set("stroke", INK).set("stroke-width", 3.0 * thin));
    for joint in &laid.joints {
        drawing = drawing.add(stroke(joint.from, joint.to, FAINT, thin));
    }
    for divider in &laid.dividers {
        drawing =
            drawing.add(region(divider).set("fill", "#e3dccd").set("stroke", INK).set("stroke-width", thin));
    }
    for state in assessment.joints.iter().filter(|state| state.surface == index) {
        let Some(gap) = state.gap.filter(|gap| gap.gap.mean >= job.plan.open_from) else { continue };
        let joint = &laid.joints[state.joint];
        let thick = (gap.gap.mean.to_mm() * MAGNIFIED).max(2.0 * thin);
        // Measured joints are solid, estimated ones lighter.
        let line = stroke(joint.from, joint.to, GAP, thick)
            .set("stroke-opacity", if gap.measured { 1.0 } else { 0.38 });
        drawing = drawing.add(line);
    }
    drawing = drawing.add(section_names(job, laid, index, width.max(height) * 1000.0 * 0.035));
    drawing
        .add(scale_bar(
            words.figures(),
            bounds.min().x * 1000.0,
            -bounds.min().y * 1000.0 + margin * 1.7,
            width,
            margin * 1.7,
        ))
        .to_string()
}

fn stroke(from: geo::Coord, to: geo::Coord, color: &str, thick: f64) -> Line {
    Line::new()
        .set("x1", from.x * 1000.0)
        .set("y1", -from.y * 1000.0)
        .set("x2", to.x * 1000.0)
        .set("y2", -to.y * 1000.0)
        .set("stroke", color)
        .set("stroke-width", thick)
}

fn region(region: &MultiPolygon) -> Path {
    let mut data = Data::new();
    let rings = region.iter().flat_map(|p| std::iter::once(p.exterior()).chain(p.interiors()));
    for ring in rings {
        data = ring_path(data, ring);
    }
    Path::new().set("d", data).set("fill-rule", "evenodd")
}

fn ring_path(mut data: Data, ring: &LineString) -> Data {
    for (index, corner) in ring.coords().enumerate() {
        let at = (corner.x * 1000.0, -corner.y * 1000.0);
        data = if index == 0 { data.move_to(at) } else { data.line_to(at) };
    }
    data.close()
}

fn section_names(job: &Job, laid: &SurfaceLayout, index: usize, size: f64) -> Group {
    let mut group = Group::new();
    for (section, part) in job.surfaces[index].sections.iter().zip(&laid.sections) {
        let Some(bounds) = part.clear.bounding_rect() else { continue };
        let at = bounds.center();
        // A halo of the background color keeps the letter readable over the joints.
        for (color, width) in [(WOOD, size * 0.25), ("none", 0.0)] {
            group = group.add(
                Text::new(section.name.clone())
                    .set("x", at.x * 1000.0)
                    .set("y", -at.y * 1000.0 + size * 0.35)
                    .set("font-family", "Inter")
                    .set("font-weight", 600)
                    .set("font-size", size)
                    .set("text-anchor", "middle")
                    .set("fill", INK)
                    .set("stroke", color)
                    .set("stroke-width", width)
                    .set("stroke-linejoin", "round"),
            );
        }
    }
    group
}

/// A bar of a round length, about a quarter of the width.
fn scale_bar(figures: &Figures, x: f64, y: f64, width_m: f64, size: f64) -> Group {
    let quarter = Length::m(width_m / 4.0);
    let round = |value: f64| [1.0, 2.0, 3.0, 5.0, 10.0, 20.0].into_iter().rfind(|n| *n <= value);
    let (length, label) = match (figures.units(), round(quarter.to_feet()), round(quarter.to_m())) {
        (Units::Inches, Some(feet), _) => (Length::feet(feet), figures.run(Length::feet(feet))),
        (Units::Inches, None, _) => (Length::feet(0.5), figures.length(Length::feet(0.5))),
        (Units::Millimeters, _, meters) => {
            let length = Length::m(meters.unwrap_or(0.5));
            (length, figures.run(length))
        }
    };
    let end = x + length.to_mm();
    let bar = Path::new()
        .set(
            "d",
            Data::new()
                .move_to((x, y - size * 0.2))
                .line_to((x, y))
                .line_to((end, y))
                .line_to((end, y - size * 0.2)),
        )
        .set("fill", "none")
        .set("stroke", INK)
        .set("stroke-width", size * 0.05);
    let label = Text::new(label)
        .set("x", end + size * 0.3)
        .set("y", y)
        .set("font-family", "Inter")
        .set("font-size", size * 0.6)
        .set("fill", INK);
    Group::new().add(bar).add(label)
}

/// A small label in a figure.
fn label(x: f64, y: f64, text: &str, anchor: &str, color: &str) -> Text {
    Text::new(text)
        .set("x", x)
        .set("y", y)
        .set("font-family", "Inter")
        .set("font-size", 8.5)
        .set("text-anchor", anchor)
        .set("fill", color)
}
