//! Drawings for the papers as SVG: the surface with its joints, and the year of one joint.
//!
//! Made for ink on white: gaps are told apart by thickness first, colour second.

use geo::{BoundingRect as _, LineString, MultiPolygon};
use svg::Document;
use svg::node::element::path::Data;
use svg::node::element::{Group, Line, Path, Text};

use crate::assess::{Assessment, SectionState, date_after};
use crate::job::Job;
use crate::measure::{Length, Units, show_number};
use crate::surface::SurfaceLayout;

const INK: &str = "#22303a";
const FAINT: &str = "#c9ced1";
const WOOD: &str = "#f5f1ea";
const GAP: &str = "#b3431e";
const WATER: &str = "#1f6f8b";

/// All figures of a job with the names templates use.
pub(super) fn figures(job: &Job, found: &Assessment) -> Vec<(String, String)> {
    let surfaces =
        (0..found.layouts.len()).map(|index| (format!("surface-{index}.svg"), surface(job, found, index)));
    let mut all: Vec<(String, String)> = surfaces.collect();
    all.push(("year.svg".to_owned(), year(job, found)));
    all
}

/// One surface to scale: boards faint, joints as thick as ten times their gap.
pub fn surface(job: &Job, found: &Assessment, index: usize) -> String {
    const MAGNIFIED: f64 = 10.0;
    let laid = &found.layouts[index];
    let Some(bounds) = laid.face.bounding_rect() else {
        return Document::new().set("viewBox", (0, 0, 10, 1)).to_string();
    };
    let (width, height) = (bounds.width(), bounds.height());
    // Units are millimetres of the room; y runs down on paper.
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
    for state in found.joints.iter().filter(|state| state.surface == index) {
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
            job.units,
            bounds.min().x * 1000.0,
            -bounds.min().y * 1000.0 + margin * 1.7,
            width,
            margin * 1.7,
        ))
        .to_string()
}

fn stroke(from: geo::Coord, to: geo::Coord, colour: &str, thick: f64) -> Line {
    Line::new()
        .set("x1", from.x * 1000.0)
        .set("y1", -from.y * 1000.0)
        .set("x2", to.x * 1000.0)
        .set("y2", -to.y * 1000.0)
        .set("stroke", colour)
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
        // A halo of the ground colour keeps the letter readable over the joints.
        for (colour, width) in [(WOOD, size * 0.25), ("none", 0.0)] {
            group = group.add(
                Text::new(section.name.clone())
                    .set("x", at.x * 1000.0)
                    .set("y", -at.y * 1000.0 + size * 0.35)
                    .set("font-family", "Inter")
                    .set("font-weight", 600)
                    .set("font-size", size)
                    .set("text-anchor", "middle")
                    .set("fill", INK)
                    .set("stroke", colour)
                    .set("stroke-width", width)
                    .set("stroke-linejoin", "round"),
            );
        }
    }
    group
}

/// A bar of a round length, about a quarter of the width.
fn scale_bar(units: Units, x: f64, y: f64, width_m: f64, size: f64) -> Group {
    let quarter = Length::m(width_m / 4.0);
    let nice =
        |value: f64| [1.0, 2.0, 3.0, 5.0, 10.0, 20.0].into_iter().rfind(|n| *n <= value).unwrap_or(0.5);
    let (length, label) = match units {
        Units::Inches => {
            let feet = nice(quarter.to_feet());
            (Length::feet(feet), format!("{} ft", show_number(feet, 1)))
        }
        Units::Millimetres => {
            let metres = nice(quarter.to_m());
            (Length::m(metres), format!("{} m", show_number(metres, 1)))
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

/// The coming year of the section measured most: mean gap over the date, with the time of sealing.
pub fn year(job: &Job, found: &Assessment) -> String {
    const WIDTH: f64 = 520.0;
    const HEIGHT: f64 = 170.0;
    let drawing = Document::new().set("viewBox", (0, 0, WIDTH, HEIGHT));
    let Some(state) =
        found.speaking_section().or_else(|| found.sections.iter().max_by_key(|s| s.gaps.measured))
    else {
        return drawing.to_string();
    };
    let frame = Plot::new(job, found, state, WIDTH, HEIGHT);
    frame.draw(drawing).to_string()
}

struct Plot<'a> {
    job: &'a Job,
    found: &'a Assessment,
    state: &'a SectionState,
    left: f64,
    top: f64,
    width: f64,
    height: f64,
    top_gap: f64,
}

impl<'a> Plot<'a> {
    fn new(job: &'a Job, found: &'a Assessment, state: &'a SectionState, width: f64, height: f64) -> Self {
        let top_gap = (state.year_gap.1 * 1.1).axis_top(job.units).to_mm();
        Self { job, found, state, left: 46.0, top: 18.0, width: width - 96.0, height: height - 44.0, top_gap }
    }

    #[expect(clippy::cast_precision_loss, reason = "days of a year")]
    fn x(&self, day: usize) -> f64 {
        self.left + self.width * day as f64 / 365.0
    }

    fn y(&self, gap_mm: f64) -> f64 {
        self.top + self.height * (1.0 - gap_mm / self.top_gap)
    }

    fn text(x: f64, y: f64, words: &str, anchor: &str, colour: &str) -> Text {
        Text::new(words)
            .set("x", x)
            .set("y", y)
            .set("font-family", "Inter")
            .set("font-size", 8.5)
            .set("text-anchor", anchor)
            .set("fill", colour)
    }

    fn draw(&self, mut drawing: Document) -> Document {
        if let Some(season) = self.found.season.as_ref().filter(|s| s.best.high - s.best.low < 50) {
            let (from, to) = (self.x(season.best.low * 7), self.x((season.best.high * 7 + 7).min(365)));
            let band = svg::node::element::Rectangle::new()
                .set("x", from)
                .set("y", self.top)
                .set("width", to - from)
                .set("height", self.height)
                .set("fill", "#e4eef1");
            drawing = drawing.add(band);
            drawing = drawing.add(Self::text(
                f64::midpoint(from, to),
                self.top - 6.0,
                "best weeks to seal",
                "middle",
                WATER,
            ));
        }
        drawing = self.axes(drawing);
        drawing = drawing.add(self.curve(|day| self.y(self.state.mean_gap_on(day).to_mm()), GAP, 1.8));
        drawing =
            drawing.add(self.curve(|day| self.moisture_y(day), WATER, 1.1).set("stroke-dasharray", "4 2.5"));
        let (y, right) = (self.top - 6.0, self.left + self.width);
        drawing.add(Self::text(right - 100.0, y, "— gap (left)", "start", GAP)).add(Self::text(
            right + 46.0,
            y,
            "- - moisture (right)",
            "end",
            WATER,
        ))
    }

    fn moisture_y(&self, day: usize) -> f64 {
        // From 0 to 20 % over the full height, told apart by its dashes and its own figures.
        self.top + self.height * (1.0 - self.state.motion.moisture[day].to_pct() / 20.0)
    }

    fn curve(&self, y: impl Fn(usize) -> f64, colour: &str, width: f64) -> Path {
        let mut data = Data::new().move_to((self.x(0), y(0)));
        for day in (3..365).step_by(3) {
            data = data.line_to((self.x(day), y(day)));
        }
        Path::new().set("d", data).set("fill", "none").set("stroke", colour).set("stroke-width", width)
    }

    fn axes(&self, mut drawing: Document) -> Document {
        let (right, bottom) = (self.left + self.width, self.top + self.height);
        let steps = 4;
        for step in 0..=steps {
            let gap = self.top_gap * f64::from(step) / f64::from(steps);
            let y = self.y(gap);
            let line = Line::new()
                .set("x1", self.left)
                .set("x2", right)
                .set("y1", y)
                .set("y2", y)
                .set("stroke", FAINT)
                .set("stroke-width", 0.5);
            let label = Length::mm(gap).show(self.job.units);
            drawing = drawing.add(line).add(Self::text(self.left - 4.0, y + 3.0, &label, "end", INK));
            let moisture = format!("{} %", show_number(20.0 * f64::from(step) / f64::from(steps), 0));
            drawing = drawing.add(Self::text(right + 28.0, y + 3.0, &moisture, "end", WATER));
        }
        for (day, name) in self.months() {
            let x = self.x(day);
            let line = Line::new()
                .set("x1", x)
                .set("x2", x)
                .set("y1", self.top)
                .set("y2", bottom)
                .set("stroke", FAINT)
                .set("stroke-width", 0.5);
            drawing = drawing.add(line).add(Self::text(x, bottom + 12.0, &name, "middle", INK));
        }
        drawing
    }

    /// Days of the coming year on which every other month starts, with the month's name.
    fn months(&self) -> Vec<(usize, String)> {
        (0..365)
            .map(|day| (day, date_after(self.job, day)))
            .filter(|(_, date)| date.day() == 1 && date.month() % 2 == 1)
            .map(|(day, date)| (day, date.strftime("%b %Y").to_string()))
            .collect()
    }
}
