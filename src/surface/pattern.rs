//! Makers of the usual patterns. What they make are ordinary sections and dividers.

use geo::BoundingRect as _;

use super::model::{BoardSpec, Divider, DividerKind, Point, Section, polygon};
use crate::measure::{Angle, Length};

/// A pattern to fill an outline with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Pattern {
    /// All boards one way, at `direction`.
    StraightRun {
        /// Direction of the boards.
        direction: Angle,
    },
    /// Four triangles that meet on the diagonals, boards along the outer edges.
    QuartersOnDiagonals,
    /// Four quarters parted by crossing dividers, boards at 45° towards the middle.
    QuartersAtDividers {
        /// Width of the dividing boards.
        divider: Length,
    },
    /// Upright stripes whose boards rise and fall in turn.
    Chevron {
        /// Number of stripes.
        stripes: usize,
        /// Rise of the boards over the horizontal.
        rise: Angle,
    },
    /// Upright boards, as on a wall.
    Wainscot,
}

impl Pattern {
    /// The patterns with their usual settings, in the order offered.
    pub const USUAL: [Self; 6] = [
        Self::StraightRun { direction: Angle::ZERO },
        Self::StraightRun { direction: Angle::degrees(45.0) },
        Self::QuartersOnDiagonals,
        Self::QuartersAtDividers { divider: Divider::USUAL_WIDTH },
        Self::Chevron { stripes: 2, rise: Angle::degrees(45.0) },
        Self::Wainscot,
    ];

    /// As a key, to select a message by. A straight run is `diagonal` at any angle but level.
    pub const fn key(self) -> &'static str {
        match self {
            Self::StraightRun { direction } if direction.to_degrees() == 0.0 => "straight",
            Self::StraightRun { .. } => "diagonal",
            Self::QuartersOnDiagonals => "quarters",
            Self::QuartersAtDividers { .. } => "quarters_at_dividers",
            Self::Chevron { .. } => "chevron",
            Self::Wainscot => "upright",
        }
    }

    /// The sections and dividers that fill `outline` with `board` in this pattern. Sections are named by
    /// [`section_name`], dividers by `divider_name`, which is given their number from 0. Nothing for an
    /// outline without corners.
    pub fn fill(
        self,
        outline: &[Point],
        board: &BoardSpec,
        divider_name: &dyn Fn(usize) -> String,
    ) -> (Vec<Section>, Vec<Divider>) {
        let Some(bounds) = polygon(outline).bounding_rect() else { return (vec![], vec![]) };
        let (low, high) = (bounds.min(), bounds.max());
        let middle = (low + high) / 2.0;
        let section = |number: usize, region: Option<Vec<Point>>, degrees: f64| Section {
            name: section_name(number),
            region,
            board: board.clone(),
            direction: Angle::degrees(degrees),
            start: Length::ZERO,
        };
        let corner = [
            Point::m(low.x, low.y),
            Point::m(high.x, low.y),
            Point::m(high.x, high.y),
            Point::m(low.x, high.y),
        ];
        let center = Point::m(middle.x, middle.y);
        match self {
            Self::StraightRun { direction } => (vec![section(0, None, direction.to_degrees())], vec![]),
            Self::Wainscot => (vec![section(0, None, 90.0)], vec![]),
            Self::QuartersOnDiagonals => {
                let triangle = |n: usize| Some(vec![corner[n], corner[(n + 1) % 4], center]);
                let degrees = [0.0, 90.0, 0.0, 90.0];
                ((0..4).map(|n| section(n, triangle(n), degrees[n])).collect(), vec![])
            }
            Self::QuartersAtDividers { divider } => {
                let quarter = |n: usize| {
                    let far = corner[n];
                    vec![far, Point(center.0, far.1), center, Point(far.0, center.1)]
                };
                let degrees = [45.0, 135.0, 45.0, 135.0];
                let sections = (0..4).map(|n| section(n, Some(quarter(n)), degrees[n])).collect();
                let board = |number, from, to| Divider {
                    name: divider_name(number),
                    kind: DividerKind::Dividing,
                    from,
                    to,
                    width: divider,
                };
                let upright = board(0, Point(center.0, corner[0].1), Point(center.0, corner[2].1));
                let level = board(1, Point(corner[0].0, center.1), Point(corner[1].0, center.1));
                (sections, vec![upright, level])
            }
            Self::Chevron { stripes, rise } => {
                let stripes = stripes.clamp(1, 200);
                #[expect(clippy::cast_precision_loss, reason = "at most 200 stripes")]
                let x = |n: usize| low.x + (high.x - low.x) * n as f64 / stripes as f64;
                let stripe = |n: usize| {
                    vec![
                        Point::m(x(n), low.y),
                        Point::m(x(n + 1), low.y),
                        Point::m(x(n + 1), high.y),
                        Point::m(x(n), high.y),
                    ]
                };
                let up = rise.to_degrees();
                let degrees = |n: usize| if n.is_multiple_of(2) { up } else { 180.0 - up };
                ((0..stripes).map(|n| section(n, Some(stripe(n)), degrees(n))).collect(), vec![])
            }
        }
    }
}

/// `A` to `Z`, then `A2`, `B2`, ….
pub fn section_name(number: usize) -> String {
    let letter = char::from(b'A' + u8::try_from(number % 26).unwrap_or(0));
    match number / 26 {
        0 => letter.to_string(),
        round => format!("{letter}{}", round + 1),
    }
}

/// A rectangle from the origin.
pub fn rectangle(width: Length, height: Length) -> Vec<Point> {
    let zero = Length::ZERO;
    vec![Point(zero, zero), Point(width, zero), Point(width, height), Point(zero, height)]
}

/// A wall whose top edge rakes from `left` to `right` high.
pub fn raked(width: Length, left: Length, right: Length) -> Vec<Point> {
    let zero = Length::ZERO;
    vec![Point(zero, zero), Point(width, zero), Point(width, right), Point(zero, left)]
}
