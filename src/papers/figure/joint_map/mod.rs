//! The map of a surface: every joint to scale, with numbers by which each is found on site.
//!
//! A map is drawn in points at the size it is placed in, so its labels have the size they are given. Where the
//! joints lie too close for a number each, every second, fifth, tenth … is numbered, and the ends.

mod labels;

use std::collections::HashSet;

use geo::{BoundingRect as _, Coord};
use svg::Document;
use svg::node::element::{Circle, Group, Line, Text};

use self::labels::Label;
use super::{FAINT, GAP, INK, WATER, WOOD};
use crate::assess::{Assessment, JointState};
use crate::measure::Length;
use crate::repair::Outcome;
use crate::surface::{Joint, JointKind, Photo};

/// Millimeters of a point.
const POINT_MM: f64 = 25.4 / 72.0;
/// Widths of a map: one beside another, or alone in its row.
const HALF: f64 = 232.0;
const WHOLE: f64 = 480.0;
/// Heights that a map keeps to, in the same two cases.
const HALF_HEIGHT: f64 = 190.0;
const WHOLE_HEIGHT: f64 = 330.0;
/// Room around the drawing.
const MARGIN: f64 = 5.0;
/// Size of the numbers, and how far apart lines of them are at least.
const NUMBER: f64 = 6.4;
const PITCH: f64 = 7.0;
/// A map in a row of its own is no larger than it takes for lines of numbers this far apart.
const AMPLE: f64 = 8.6;
/// Every so manieth joint may be numbered.
const STEPS: [usize; 8] = [1, 2, 5, 10, 20, 50, 100, 200];

/// What a map is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MapFor {
    /// The crew: which joints are worked on.
    Work,
    /// A claim: which joints were measured, and where photos were taken.
    Evidence,
    /// The ladder: which joints to read first.
    Reading,
}

impl MapFor {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Work, Self::Evidence, Self::Reading];

    /// Its key in names of files and in data of templates.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Work => "work",
            Self::Evidence => "evidence",
            Self::Reading => "reading",
        }
    }
}

/// How a joint is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Mark {
    /// It is not what the map is about.
    Plain,
    /// It is what the map is about.
    Main,
    /// It is worked on but too narrow on the day.
    Narrow,
}

/// The map of one surface.
pub struct JointMap<'a> {
    assessment: &'a Assessment,
    surface: usize,
    purpose: MapFor,
    /// Points of a meter.
    scale: f64,
    /// Its lower left corner, meters.
    low: Coord,
    /// Its upper right corner, meters.
    high: Coord,
    /// Whether it takes a row of its own.
    pub whole: bool,
    /// For each section: every so manieth joint is numbered.
    steps: Vec<usize>,
    first: Vec<usize>,
    /// The joints that are worked on.
    worked_on: HashSet<usize>,
}

impl<'a> JointMap<'a> {
    /// The map of a surface; `None` where there is nothing to draw. It is small if every joint can be
    /// numbered so and there are other surfaces.
    /// `first` are the joints to read first.
    pub fn new(
        assessment: &'a Assessment,
        surface: usize,
        purpose: MapFor,
        first: &[(usize, usize)],
    ) -> Option<Self> {
        let bounds = assessment.layouts.get(surface)?.face.bounding_rect()?;
        let (low, high) = (bounds.min(), bounds.max());
        let first = first.iter().filter(|(of, _)| *of == surface).map(|(_, joint)| *joint).collect();
        let worked_on = assessment.worked_on().filter(|state| state.surface == surface);
        let worked_on = worked_on.map(|state| state.joint).collect();
        let (scale, whole, steps) = (0.0, false, vec![]);
        let mut map = Self { assessment, surface, purpose, scale, low, high, whole, steps, first, worked_on };
        if assessment.layouts.len() > 1 {
            map.fit(HALF, HALF_HEIGHT);
        }
        if map.steps.is_empty() || map.steps.iter().any(|step| *step > 1) {
            map.whole = true;
            map.fit(WHOLE, WHOLE_HEIGHT);
            map.spare_room();
        }
        Some(map)
    }

    /// Its width in millimeters.
    pub fn width_mm(&self) -> f64 {
        self.size().0 * POINT_MM
    }

    /// The largest step by which joints are numbered: 1 where each has its number.
    pub fn step(&self) -> usize {
        self.steps.iter().copied().max().unwrap_or(1)
    }

    fn fit(&mut self, width: f64, height: f64) {
        let across = ((self.high.x - self.low.x).max(1e-6), (self.high.y - self.low.y).max(1e-6));
        self.scale = ((width - 2.0 * MARGIN) / across.0).min((height - 2.0 * MARGIN) / across.1);
        let sections = &self.assessment.job.surfaces[self.surface].sections;
        let step = |face: Length| {
            let pitch = (face.to_m() * self.scale).max(1e-6);
            STEPS.into_iter().find(|step| pitch * f64::from(u32::try_from(*step).unwrap_or(1)) >= PITCH)
        };
        self.steps = sections.iter().map(|section| step(section.board.face_width).unwrap_or(500)).collect();
    }

    /// Makes a map smaller whose numbers would be farther apart than they must be, but not tiny.
    fn spare_room(&mut self) {
        let sections = &self.assessment.job.surfaces[self.surface].sections;
        let faces = sections.iter().map(|section| section.board.face_width.to_m() * self.scale);
        let closest = faces.fold(f64::INFINITY, f64::min);
        if closest.is_finite() && closest > AMPLE {
            self.scale *= (AMPLE / closest).max(0.55);
        }
    }

    /// Width and height in points.
    fn size(&self) -> (f64, f64) {
        let of = |low: f64, high: f64| (high - low) * self.scale + 2.0 * MARGIN;
        (of(self.low.x, self.high.x), of(self.low.y, self.high.y))
    }

    /// A place of the room on the map; y runs down on paper.
    fn at(&self, place: Coord) -> Coord {
        let x = (place.x - self.low.x) * self.scale + MARGIN;
        Coord { x, y: (self.high.y - place.y) * self.scale + MARGIN }
    }

    fn joints(&self) -> &'a [Joint] {
        &self.assessment.layouts[self.surface].joints
    }

    /// How a joint is drawn.
    fn mark(&self, state: &JointState) -> Mark {
        let chosen = self.assessment.chosen();
        match self.purpose {
            MapFor::Reading if self.first.contains(&state.joint) => Mark::Main,
            MapFor::Evidence if state.gap.is_some_and(|gap| gap.measured) => Mark::Main,
            MapFor::Work if self.worked_on.contains(&state.joint) => {
                let seals = chosen.is_some_and(|option| matches!(option.outcome, Outcome::Bead { .. }));
                if seals && !self.assessment.gets_bead(state) { Mark::Narrow } else { Mark::Main }
            }
            MapFor::Reading | MapFor::Evidence | MapFor::Work => Mark::Plain,
        }
    }

    /// The drawing as SVG.
    pub fn draw(&self) -> String {
        let (width, height) = self.size();
        let laid = &self.assessment.layouts[self.surface];
        let mut drawing = Document::new().set("viewBox", (0.0, 0.0, width, height));
        // The face and the dividers are drawn in meters and brought to the map by one transformation.
        let to_map = format!(
            "translate({:.3} {:.3}) scale({:.6})",
            MARGIN - self.low.x * self.scale,
            MARGIN + self.high.y * self.scale,
            self.scale / 1000.0
        );
        let thin = 600.0 / self.scale;
        let mut ground = Group::new().set("transform", to_map).add(
            super::region(&laid.face).set("fill", WOOD).set("stroke", INK).set("stroke-width", 1.5 * thin),
        );
        for divider in &laid.dividers {
            let board = super::region(divider).set("fill", "#e3dccd").set("stroke", INK);
            ground = ground.add(board.set("stroke-width", thin));
        }
        drawing = drawing.add(ground);
        let mut states: Vec<&JointState> =
            self.assessment.joints.iter().filter(|state| state.surface == self.surface).collect();
        states.sort_by_key(|state| self.mark(state) != Mark::Plain);
        for state in &states {
            drawing = drawing.add(self.line(state));
        }
        for label in labels::labels(self, &states, &self.section_letters()) {
            drawing = drawing.add(label.draw());
        }
        if self.purpose == MapFor::Evidence {
            drawing = drawing.add(self.photos());
        }
        drawing.to_string()
    }

    fn line(&self, state: &JointState) -> Line {
        let joint = &self.joints()[state.joint];
        let (from, to) = (self.at(joint.from), self.at(joint.to));
        let (color, thick) = match (self.mark(state), self.purpose) {
            (Mark::Plain, MapFor::Work) => (FAINT, 0.6),
            (Mark::Plain, _) => ("#8d979d", 0.5),
            (Mark::Main, MapFor::Reading) => (WATER, 1.6),
            (Mark::Main, _) => (GAP, 1.3),
            (Mark::Narrow, _) => (GAP, 0.9),
        };
        let line = Line::new().set("x1", round(from.x)).set("y1", round(from.y));
        let line = line.set("x2", round(to.x)).set("y2", round(to.y));
        let line = line.set("stroke", color).set("stroke-width", thick);
        if self.mark(state) == Mark::Narrow { line.set("stroke-dasharray", "3 2") } else { line }
    }

    /// The name of each section in its middle: a label that all others make way for.
    fn section_letters(&self) -> Vec<Label> {
        let laid = &self.assessment.layouts[self.surface];
        let sections = self.assessment.job.surfaces[self.surface].sections.iter().zip(&laid.sections);
        let boxed = sections.filter_map(|(section, part)| Some((section, part.clear.bounding_rect()?)));
        boxed.map(|(section, bounds)| Label::upright(&section.name, self.at(bounds.center()), 13.0)).collect()
    }

    /// Photos as numbered dots, in the order of the surface's list.
    fn photos(&self) -> Group {
        let photos = &self.assessment.job.surfaces[self.surface].photos;
        let dot = |(index, photo): (usize, &Photo)| {
            let at = self.at(Coord { x: photo.at.0.to_m(), y: photo.at.1.to_m() });
            let number = (index + 1).to_string();
            let dot =
                Circle::new().set("cx", round(at.x)).set("cy", round(at.y)).set("r", 6.0).set("fill", WATER);
            let number = Text::new(number).set("x", round(at.x)).set("y", round(at.y + 2.2));
            let number = number.set("font-family", "Inter").set("font-size", 6.0).set("font-weight", 600);
            Group::new().add(dot).add(number.set("text-anchor", "middle").set("fill", "#ffffff"))
        };
        photos.iter().enumerate().map(dot).fold(Group::new(), Group::add)
    }

    /// The number of a joint between boards in its section, from 1: the figure in its label.
    fn number(&self, joint: &Joint) -> Option<usize> {
        let section = &self.assessment.job.surfaces[self.surface].sections.get(joint.section)?.name;
        let rest = joint.label.strip_prefix(section.as_str())?.trim_start();
        let digits: String = rest.chars().take_while(char::is_ascii_digit).collect();
        (joint.kind == JointKind::BoardEdge).then(|| digits.parse().ok()).flatten()
    }
}

/// To a hundredth of a point: no printer is finer.
fn round(value: f64) -> f64 {
    (value * 100.0).round() / 100.0
}
