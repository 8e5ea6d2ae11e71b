//! Sections through a typical joint: as installed, at the visit, and in the middle of each coming season,
//! with the bead of the chosen option from its sealing on. Drawn at actual size when set [`WIDTH`] mm wide.

use geo::Polygon;
use jiff::civil::Date;
use svg::Document;
use svg::node::element::path::Data;
use svg::node::element::{Circle, Group, Path};

use super::{FAINT, GAP, INK, WATER, WOOD, label};
use crate::assess::{Assessment, JointState, SectionState};
use crate::joint::{BeadCut, BeadState, Cut};
use crate::measure::Length;
use crate::words::{Words, say};

/// Width of the row of cuts, mm on paper and in the room.
pub const WIDTH: f64 = 162.0;
/// Cuts in the row.
const CUTS: usize = 6;
/// Units of the figure for a millimeter: points, so that labels have the size they are given.
const UNIT: f64 = 72.0 / 25.4;
/// Boards are drawn so far to either side of the joint.
const REACH: Length = Length::mm(11.5);
/// The bead by itself is drawn with so much of the boards to either side, and so deep.
const BEAD_REACH: Length = Length::mm(7.75);
const BEAD_HEIGHT: Length = Length::mm(8.5);
/// Radius of the ring around the place of a bead that goes first, mm.
const RING: f64 = 0.45;
/// Room for the labels under a cut, mm.
const LABELS: f64 = 15.0;
/// Thickest board that is drawn whole.
const THICKEST: Length = Length::mm(40.0);

/// The row of cuts; empty where no gap is known.
pub fn cuts(assessment: &Assessment, words: &Words) -> String {
    let job = &*assessment.job;
    let Some(state) = assessment.typical_section() else {
        return Document::new().set("viewBox", (0, 0, 10, 1)).to_string();
    };
    let thickness = job.surfaces[state.surface].sections[state.section].board.thickness;
    let height = thickness.min(THICKEST).to_mm() + LABELS;
    let against = assessment.chosen().is_some_and(|option| assessment.advises_against(option));
    let mut drawing = Document::new().set("viewBox", (0.0, 0.0, WIDTH * UNIT, height * UNIT));
    for (index, panel) in panels(assessment, state, words).into_iter().enumerate() {
        #[expect(clippy::cast_precision_loss, reason = "six of them")]
        let middle = WIDTH * (index as f64 + 0.5) / CUTS as f64;
        drawing = drawing.add(panel.draw(middle, height, against, words));
    }
    drawing.to_string()
}

/// The bead of a typical joint as it is laid, four times actual size; empty where none is laid.
pub fn bead(assessment: &Assessment) -> String {
    bead_at(assessment, assessment.typical_section(), None)
}

/// The same in the middle one of the sealed joints of a section.
pub fn bead_of_section(assessment: &Assessment, section: usize) -> String {
    let joints = assessment.sealed_joints(section);
    let Some(joint) = joints.get(joints.len() / 2) else { return bead_at(assessment, None, None) };
    bead_at(assessment, assessment.sections.get(section), Some(joint))
}

/// The bead in a joint of a section, else in its mean one, on the day of sealing.
fn bead_at(assessment: &Assessment, state: Option<&SectionState>, joint: Option<&JointState>) -> String {
    let nothing = || Document::new().set("viewBox", (0, 0, 10, 1)).to_string();
    let Some(state) = state else { return nothing() };
    let laid = i64::try_from(assessment.seal_day)
        .ok()
        .and_then(|day| assessment.cut(&assessment.job, state, joint, day, BEAD_REACH));
    let Some((cut, _)) = laid.filter(|(cut, _)| cut.bead.is_some()) else { return nothing() };
    let (width, height) = (BEAD_REACH.to_mm() * 2.0, BEAD_HEIGHT.to_mm());
    let middle = BEAD_REACH.to_mm();
    let mut drawing = Document::new().set("viewBox", (0.0, 0.0, width * UNIT, height * UNIT));
    for shape in shapes(&cut, middle, 0.2) {
        drawing = drawing.add(shape);
    }
    if let Some(((across, down), _)) = cut.bead.as_ref().and_then(BeadCut::goes_first) {
        let at = |meters: f64| 1000.0 * meters * UNIT;
        let ring = Circle::new()
            .set("cx", middle * UNIT + at(across))
            .set("cy", at(down) + 1.0)
            .set("r", RING * UNIT);
        drawing = drawing.add(ring.set("fill", "none").set("stroke", INK).set("stroke-width", 0.5));
    }
    drawing.to_string()
}

/// One section with its labels.
struct Panel {
    when: String,
    gap: String,
    fares: Option<BeadState>,
    cut: Cut,
}

fn panels(assessment: &Assessment, state: &SectionState, words: &Words) -> Vec<Panel> {
    let job = &*assessment.job;
    let spec = &job.surfaces[state.surface].sections[state.section].board;
    let installed = Panel {
        when: say!(words, "figure-as-installed"),
        gap: say!(words, "figure-closed"),
        fares: None,
        cut: Cut::new(spec, Length::ZERO, REACH, None),
    };
    let figures = words.figures();
    let today = [(figures.date(job.visited), 0)];
    let seasons = mid_seasons(job.visited);
    let days = today.into_iter().chain(seasons.into_iter().map(|(date, day)| (figures.month(date), day)));
    let mut before: Option<BeadState> = None;
    let on = days.filter_map(|(when, day)| {
        let (mut cut, gap) = assessment.cut(job, state, None, day, REACH)?;
        // What has failed does not mend by itself.
        let fares =
            cut.bead.as_ref().map(|bead| before.map_or(bead.fares, |before| bead.fares.worse(before)));
        before = fares.or(before);
        if let (Some(bead), Some(fares)) = (&mut cut.bead, fares) {
            bead.fares = fares;
        }
        Some(Panel { when, gap: figures.length(gap), fares, cut })
    });
    std::iter::once(installed).chain(on).collect()
}

/// The middle of each of the four seasons that come next, with days from the visit.
fn mid_seasons(visited: Date) -> Vec<(Date, i64)> {
    let year = visited.year();
    let middles = [1, 4, 7, 10].map(|month| move |year| Date::new(year, month, 15));
    let all = (year..=year.saturating_add(1)).flat_map(|year| middles.map(|middle| middle(year)));
    all.flatten()
        .filter_map(|date| {
            let days = visited.until(date).ok()?.get_days();
            Some((date, Some(i64::from(days)).filter(|days| *days > 0)?))
        })
        .take(4)
        .collect()
}

impl Panel {
    /// Drawn with its joint at `middle` mm from the left. Of a repair that is advised against, a bead that holds
    /// is told as this one.
    fn draw(&self, middle: f64, height: f64, advised_against: bool, words: &Words) -> Group {
        let mut group = Group::new();
        for shape in shapes(&self.cut, middle, 0.5) {
            group = group.add(shape);
        }
        let (at, foot) = (middle * UNIT, (height - LABELS) * UNIT);
        let (bead, color) = match self.fares {
            None => (String::new(), INK),
            Some(BeadState::TearsBehind(..) | BeadState::CrushedBehind(..)) => {
                (say!(words, "figure-bead-tears-behind"), INK)
            }
            Some(BeadState::Torn(..)) => (say!(words, "figure-bead-torn"), GAP),
            Some(BeadState::Out(..)) => (say!(words, "figure-bead-squeezed-out"), GAP),
            Some(_) if advised_against => (say!(words, "figure-bead-holds-here"), WATER),
            Some(_) => (say!(words, "figure-bead-holds"), WATER),
        };
        group
            .add(label(at, foot + 12.0, &self.when, "middle", INK))
            .add(label(at, foot + 24.0, &self.gap, "middle", INK).set("font-weight", 600))
            .add(label(at, foot + 36.0, &bead, "middle", color))
    }
}

/// Boards, what is behind the bead, and the bead, in the order in which they are drawn.
fn shapes(cut: &Cut, middle: f64, line: f64) -> Vec<Path> {
    let boards = [&cut.groove, &cut.tongue].map(|board| {
        let outline = path(board, middle).set("fill", WOOD).set("stroke", INK).set("stroke-width", line);
        outline.set("stroke-linejoin", "round")
    });
    let behind = cut.bead.iter().filter_map(|bead| bead.behind.as_ref());
    let behind = behind.map(|shape| path(shape, middle).set("fill", FAINT));
    let beads = cut.bead.iter().map(|bead| {
        let color = if bead.fares.shows() { GAP } else { WATER };
        path(&bead.section, middle).set("fill", color)
    });
    boards.into_iter().chain(behind).chain(beads).collect()
}

fn path(shape: &Polygon, middle: f64) -> Path {
    let at = |x: f64, y: f64| (UNIT * (1000.0 * x + middle), UNIT * 1000.0 * y + 1.0);
    let mut data = Data::new();
    for (index, corner) in shape.exterior().coords().enumerate() {
        let at = at(corner.x, corner.y);
        data = if index == 0 { data.move_to(at) } else { data.line_to(at) };
    }
    Path::new().set("d", data.close())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_seasons_to_come_follow_the_visit() {
        let visited = Date::constant(2026, 2, 14);
        let months: Vec<i8> = mid_seasons(visited).iter().map(|(date, _)| date.month()).collect();
        assert_eq!(months, [4, 7, 10, 1]);
        assert_eq!(mid_seasons(visited)[0].1, 60);
        // The visit itself is not a season to come.
        assert_eq!(mid_seasons(Date::constant(2026, 4, 15))[0].0, Date::constant(2026, 7, 15));
    }
}
