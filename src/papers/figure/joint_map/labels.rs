//! Which joints of a map bear their number, and where it stands, so that no two cover each other.

use geo::Coord;
use svg::node::element::{Group, Rectangle, Text};

use super::super::{GAP, INK, WATER, WOOD};
use super::{JointMap, MapFor, Mark, NUMBER, round};
use crate::assess::JointState;

/// Width of a letter as a share of its size, about.
const LETTER: f64 = 0.6;
/// Where along a joint its number may stand, as shares of its length from its start.
const SPOTS: [f64; 7] = [0.0, 1.0, 0.5, 0.25, 0.75, 0.12, 0.88];

/// A number on the map.
pub(super) struct Label {
    text: String,
    /// Its middle, points.
    at: Coord,
    /// The direction it runs in: a unit vector that never points left.
    along: Coord,
    size: f64,
    color: &'static str,
    bold: bool,
}

impl Label {
    /// A level label.
    pub(super) fn upright(text: &str, at: Coord, size: f64) -> Self {
        Self { text: text.to_owned(), at, along: Coord { x: 1.0, y: 0.0 }, size, color: INK, bold: true }
    }

    /// Half of its length and of its height, points.
    fn reach(&self) -> (f64, f64) {
        #[expect(clippy::cast_precision_loss, reason = "letters of a label")]
        let letters = self.text.chars().count() as f64;
        (letters * LETTER * self.size / 2.0 + 0.8, self.size * 0.5)
    }

    /// Whether it covers part of another: two turned rectangles are apart if an axis of either parts them.
    fn covers(&self, other: &Self) -> bool {
        let between = other.at - self.at;
        let across = |along: Coord| Coord { x: -along.y, y: along.x };
        let axes = [self.along, across(self.along), other.along, across(other.along)];
        let spread = |label: &Self, axis: Coord| {
            let (long, high) = label.reach();
            long * dot(label.along, axis).abs() + high * dot(across(label.along), axis).abs()
        };
        axes.into_iter().all(|axis| dot(between, axis).abs() < spread(self, axis) + spread(other, axis))
    }

    pub(super) fn draw(&self) -> Group {
        let turn = self.along.y.atan2(self.along.x).to_degrees();
        let (long, high) = self.reach();
        // A ground in the color of the wood keeps the number readable over the joint.
        let ground = Rectangle::new()
            .set("x", round(self.at.x - long))
            .set("y", round(self.at.y - high))
            .set("width", round(2.0 * long))
            .set("height", round(2.0 * high))
            .set("fill", WOOD);
        let text = Text::new(self.text.clone())
            .set("x", round(self.at.x))
            .set("y", round(self.at.y + self.size * 0.36))
            .set("font-family", "Inter")
            .set("font-weight", if self.bold { 600 } else { 400 })
            .set("font-size", self.size)
            .set("text-anchor", "middle")
            .set("fill", self.color);
        let group = Group::new().add(ground).add(text);
        if turn == 0.0 {
            return group;
        }
        group.set("transform", format!("rotate({turn:.2} {:.2} {:.2})", self.at.x, self.at.y))
    }
}

/// The labels of a map after those that are there: first of the joints that it is about and that must be found,
/// then of the ends of each section, then of every so manieth.
pub(super) fn labels(map: &JointMap<'_>, states: &[&JointState], there: &[Label]) -> Vec<Label> {
    let mut placed: Vec<Label> =
        there.iter().map(|label| Label { text: label.text.clone(), ..*label }).collect();
    let mut wanted: Vec<(u8, usize, &JointState)> =
        states.iter().filter_map(|state| Some((rank(map, state)?, state.joint, *state))).collect();
    wanted.sort_by_key(|(rank, joint, _)| (*rank, *joint));
    for (_, _, state) in wanted {
        if let Some(label) = place(map, state, &placed) {
            placed.push(label);
        }
    }
    placed
}

/// How soon a joint gets its number; `None` if it gets none.
fn rank(map: &JointMap<'_>, state: &JointState) -> Option<u8> {
    let joint = &map.joints()[state.joint];
    let (main, number) = (map.mark(state) != Mark::Plain, map.number(joint));
    // Those read or to be read are few, and each is named elsewhere.
    if main && (map.purpose != MapFor::Work || number.is_none()) {
        return Some(0);
    }
    let number = number?;
    let numbers = || map.joints().iter().filter(|other| other.section == joint.section);
    let last = numbers().filter_map(|other| map.number(other)).max();
    if number == 1 || Some(number) == last {
        return Some(1);
    }
    let step = map.steps.get(joint.section).copied().unwrap_or(1);
    number.is_multiple_of(step).then_some(2)
}

/// The first spot along the joint at which its number covers no other.
fn place(map: &JointMap<'_>, state: &JointState, placed: &[Label]) -> Option<Label> {
    let joint = &map.joints()[state.joint];
    let (from, to) = (map.at(joint.from), map.at(joint.to));
    let run = to - from;
    let length = run.x.hypot(run.y).max(1e-6);
    let along = run / length;
    let left = along.x < -1e-9 || (along.x.abs() <= 1e-9 && along.y > 0.0);
    let main = map.mark(state) != Mark::Plain;
    let color = match map.purpose {
        MapFor::Reading if main => WATER,
        MapFor::Evidence if main => GAP,
        MapFor::Reading | MapFor::Evidence | MapFor::Work => INK,
    };
    let bold = main && map.purpose != MapFor::Work;
    let mut label = Label {
        text: joint.label.clone(),
        at: from,
        along: if left { along * -1.0 } else { along },
        size: NUMBER,
        color,
        bold,
    };
    let inset = label.reach().0 + 1.5;
    SPOTS.into_iter().find_map(|spot| {
        // A joint shorter than its number bears it in its middle.
        let by = if length > 2.0 * inset { inset + spot * (length - 2.0 * inset) } else { length / 2.0 };
        label.at = from + along * by;
        let free = placed.iter().all(|other| !label.covers(other));
        free.then(|| Label { text: label.text.clone(), ..label })
    })
}

fn dot(a: Coord, b: Coord) -> f64 {
    a.x * b.x + a.y * b.y
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::assess::assess;
    use crate::job::{Catalog, demo_job};
    use crate::measure::Length;

    fn label(x: f64, y: f64, turned: bool) -> Label {
        let along = if turned { Coord { x: 0.0, y: -1.0 } } else { Coord { x: 1.0, y: 0.0 } };
        Label { along, ..Label::upright("A 12", Coord { x, y }, 10.0) }
    }

    /// By hand: four letters of 10 points are 24 + 1.6 long and 10 high.
    #[test]
    fn labels_that_touch_cover_each_other() {
        let first = label(0.0, 0.0, false);
        assert!(first.covers(&label(25.0, 0.0, false)) && !first.covers(&label(26.0, 0.0, false)));
        assert!(first.covers(&label(0.0, 9.9, false)) && !first.covers(&label(0.0, 10.1, false)));
        assert!(first.covers(&label(17.0, 0.0, true)) && !first.covers(&label(18.0, 0.0, true)));
    }

    /// However many boards there are: no number covers another, the ends have theirs, and what was measured.
    #[test]
    fn dense_joints_are_numbered_sparsely_and_the_measured_always() {
        for (face, sparse) in [(5.125, false), (1.5, true)] {
            let mut job = demo_job();
            for section in job.surfaces.iter_mut().flat_map(|surface| &mut surface.sections) {
                section.board.face_width = Length::inches(face);
            }
            let found = assess(job, Catalog::built_in());
            for purpose in MapFor::ALL {
                let map = JointMap::new(&found, 0, purpose, &found.reading_order()).unwrap();
                let states: Vec<&JointState> =
                    found.joints.iter().filter(|state| state.surface == 0).collect();
                let labels = labels(&map, &states, &map.section_letters());
                for (at, one) in labels.iter().enumerate() {
                    let other = labels[..at].iter().find(|other| one.covers(other));
                    assert!(other.is_none(), "{purpose:?}: {} covers {}", one.text, other.unwrap().text);
                }
                let has = |wanted: &str| labels.iter().any(|label| label.text == wanted);
                assert!(has("A 1") && has("B 1"), "{purpose:?}");
                assert_eq!(map.step() > 1, sparse, "{purpose:?}");
                if purpose == MapFor::Evidence {
                    for gap in found.job.survey.gaps.iter().filter(|gap| gap.surface == "South slope") {
                        assert!(has(&gap.joint), "{} has no number", gap.joint);
                    }
                }
            }
        }
    }
}
