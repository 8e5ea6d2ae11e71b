//! The coming year of a joint as a plot: its mean gap, the boards' moisture, the weeks to seal in.

use svg::Document;
use svg::node::element::path::Data;
use svg::node::element::{Line, Path};

use super::{FAINT, GAP, INK, WATER, label};
use crate::assess::{Assessment, SectionState, date_after};
use crate::measure::Length;
use crate::words::{Words, say};

/// The coming year of the section measured most: mean gap over the date, with the time of sealing.
pub fn year(assessment: &Assessment, words: &Words) -> String {
    const WIDTH: f64 = 520.0;
    const HEIGHT: f64 = 170.0;
    let drawing = Document::new().set("viewBox", (0, 0, WIDTH, HEIGHT));
    let Some(state) = assessment.typical_section() else { return drawing.to_string() };
    let frame = Plot::new(assessment, state, words, WIDTH, HEIGHT);
    frame.draw(drawing).to_string()
}

struct Plot<'a> {
    words: &'a Words,
    assessment: &'a Assessment,
    state: &'a SectionState,
    left: f64,
    top: f64,
    width: f64,
    height: f64,
    top_gap: f64,
}

impl<'a> Plot<'a> {
    fn new(
        assessment: &'a Assessment,
        state: &'a SectionState,
        words: &'a Words,
        width: f64,
        height: f64,
    ) -> Self {
        let top_gap = (state.year_gap.1 * 1.1).axis_top(words.units()).to_mm();
        let (width, height) = (width - 96.0, height - 44.0);
        Self { words, assessment, state, left: 46.0, top: 18.0, width, height, top_gap }
    }

    #[expect(clippy::cast_precision_loss, reason = "days of a year")]
    fn x(&self, day: usize) -> f64 {
        self.left + self.width * day as f64 / 365.0
    }

    fn y(&self, gap_mm: f64) -> f64 {
        self.top + self.height * (1.0 - gap_mm / self.top_gap)
    }

    fn draw(&self, mut drawing: Document) -> Document {
        let season = self.assessment.season.as_ref().filter(|_| self.assessment.lays_beads());
        if let Some(season) = season.filter(|season| season.best.high - season.best.low < 50) {
            let (from, to) = (self.x(season.best.low * 7), self.x((season.best.high * 7 + 7).min(365)));
            let band = svg::node::element::Rectangle::new()
                .set("x", from)
                .set("y", self.top)
                .set("width", to - from)
                .set("height", self.height)
                .set("fill", "#e4eef1");
            drawing = drawing.add(band);
            let best = say!(self.words, "figure-best-weeks");
            drawing = drawing.add(label(f64::midpoint(from, to), self.top - 6.0, &best, "middle", WATER));
        }
        drawing = self.axes(drawing);
        drawing = drawing.add(self.curve(|day| self.y(self.state.mean_gap_on(day).to_mm()), GAP, 1.8));
        drawing =
            drawing.add(self.curve(|day| self.moisture_y(day), WATER, 1.1).set("stroke-dasharray", "4 2.5"));
        let (y, right) = (self.top - 6.0, self.left + self.width);
        let (gap, moisture) = (say!(self.words, "figure-gap"), say!(self.words, "figure-moisture"));
        drawing.add(label(right - 100.0, y, &gap, "start", GAP)).add(label(
            right + 46.0,
            y,
            &moisture,
            "end",
            WATER,
        ))
    }

    fn moisture_y(&self, day: usize) -> f64 {
        // From 0 to 20% over the full height; its dashes and its own scale set it apart.
        self.top + self.height * (1.0 - self.state.motion.moisture[day].to_pct() / 20.0)
    }

    fn curve(&self, y: impl Fn(usize) -> f64, color: &str, width: f64) -> Path {
        let mut data = Data::new().move_to((self.x(0), y(0)));
        for day in (3..365).step_by(3) {
            data = data.line_to((self.x(day), y(day)));
        }
        Path::new().set("d", data).set("fill", "none").set("stroke", color).set("stroke-width", width)
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
            let gap = self.words.figures().length(Length::mm(gap));
            drawing = drawing.add(line).add(label(self.left - 4.0, y + 3.0, &gap, "end", INK));
            let moisture = self.words.figures().percent(20.0 * f64::from(step) / f64::from(steps), 0);
            drawing = drawing.add(label(right + 28.0, y + 3.0, &moisture, "end", WATER));
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
            drawing = drawing.add(line).add(label(x, bottom + 12.0, &name, "middle", INK));
        }
        drawing
    }

    /// Days of the coming year on which every other month starts, with the month's name.
    fn months(&self) -> Vec<(usize, String)> {
        (0..365)
            .map(|day| (day, date_after(&self.assessment.job, day)))
            .filter(|(_, date)| date.day() == 1 && date.month() % 2 == 1)
            .map(|(day, date)| (day, self.words.figures().short_month(date)))
            .collect()
    }
}
