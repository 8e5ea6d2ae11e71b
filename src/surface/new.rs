//! A surface described by its size and a pattern, before there is a drawing of it.

use std::ops::RangeInclusive;

use super::model::{BoardSpec, Surface, SurfaceKind};
use super::pattern::{Pattern, raked, rectangle};
use crate::measure::Length;

/// A surface to be: its bounding sides and how its boards run.
#[derive(Debug, Clone, PartialEq)]
pub struct NewSurface {
    /// What it is.
    pub kind: SurfaceKind,
    /// Width, or length of a wall.
    pub width: Length,
    /// Height of a wall at its left end, or depth of a ceiling.
    pub height: Length,
    /// Height of a wall at its right end, if its top edge rakes.
    pub right: Option<Length>,
    /// How its boards run.
    pub pattern: Pattern,
}

impl Default for NewSurface {
    /// A small flat ceiling in a straight run.
    fn default() -> Self {
        Self {
            kind: SurfaceKind::Ceiling,
            width: Length::feet(12.0),
            height: Length::feet(10.0),
            right: None,
            pattern: Pattern::USUAL[0],
        }
    }
}

impl NewSurface {
    /// How long its sides can be: no board is narrower, no room longer.
    pub const SIDES: RangeInclusive<Length> = Length::inches(2.0)..=Length::feet(330.0);

    /// The surface under this name, filled with `board`; dividers are named as by [`Pattern::fill`].
    pub fn draw(&self, name: String, board: &BoardSpec, divider_name: &dyn Fn(usize) -> String) -> Surface {
        let outline = match self.right {
            Some(right) if self.kind == SurfaceKind::Wall => raked(self.width, self.height, right),
            _ => rectangle(self.width, self.height),
        };
        let (sections, dividers) = self.pattern.fill(&outline, board, divider_name);
        Surface { name, kind: self.kind, outline, sections, dividers, ..Surface::default() }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::surface::layout;

    #[test]
    fn only_a_wall_rakes_and_its_area_is_that_of_the_trapezoid() {
        let right = Some(Length::m(2.0));
        let size =
            NewSurface { width: Length::m(3.0), height: Length::m(1.0), right, ..NewSurface::default() };
        let area = |kind| {
            let surface = NewSurface { kind, ..size.clone() };
            layout(&surface.draw(String::new(), &BoardSpec::default(), &|number| number.to_string()))
                .plan_area
                .to_m2()
        };
        assert!((area(SurfaceKind::Ceiling) - 3.0).abs() < 1e-9);
        assert!((area(SurfaceKind::Wall) - 4.5).abs() < 1e-9);
    }
}
