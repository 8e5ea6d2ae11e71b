//! What is added to a surface without being drawn: each part starts at a usual place and size, to be
//! changed from there.

use super::edit::free_name;
use super::model::{Divider, DividerKind, Opening, Point, Section, Surface};
use super::pattern::rectangle;
use crate::measure::Length;

impl Surface {
    /// Adds a section over the whole outline, with the boards of the last one and the first free letter
    /// for a name.
    pub fn add_section(&mut self) {
        let taken: Vec<String> = self.sections.iter().map(|section| section.name.clone()).collect();
        let board = self.sections.last().map(|section| section.board.clone()).unwrap_or_default();
        let region = Some(self.outline.clone());
        self.sections.push(Section { name: free_name(&taken), region, board, ..Section::default() });
    }

    /// Adds an opening of 2 by 3 ft, 2 ft from the origin.
    pub fn add_opening(&mut self, name: String) {
        let (width, height) = (Length::feet(2.0), Length::feet(3.0));
        let moved = |point: Point| Point(point.0 + width, point.1 + width);
        let corners = rectangle(width, height).into_iter().map(moved).collect();
        self.openings.push(Opening { name, corners });
    }

    /// Adds an upright divider halfway along the surface, from its foot to its top.
    pub fn add_divider(&mut self, name: String) {
        let farthest = |lengths: &mut dyn Iterator<Item = Length>| lengths.fold(Length::ZERO, Length::max);
        let middle = farthest(&mut self.outline.iter().map(|point| point.0)) / 2.0;
        let top = farthest(&mut self.outline.iter().map(|point| point.1));
        let (from, to) = (Point(middle, Length::ZERO), Point(middle, top));
        let (kind, width) = (DividerKind::Dividing, Divider::USUAL_WIDTH);
        self.dividers.push(Divider { name, kind, from, to, width });
    }
}

/// Adds a corner halfway between the last and the first: the ring keeps its shape. Does nothing to a ring
/// without corners.
pub fn add_corner(ring: &mut Vec<Point>) {
    if let (Some(first), Some(last)) = (ring.first().copied(), ring.last().copied()) {
        ring.push(Point((first.0 + last.0) / 2.0, (first.1 + last.1) / 2.0));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::surface::layout;

    #[test]
    fn a_corner_that_is_added_leaves_the_area_as_it_was() {
        let mut surface = Surface::from_outline("a", &[[0.0, 0.0], [4.0, 0.0], [4.0, 3.0], [0.0, 3.0]]);
        add_corner(&mut surface.outline);
        assert_eq!(surface.outline.len(), 5);
        assert!((layout(&surface).plan_area.to_m2() - 12.0).abs() < 1e-9);
        let mut none = vec![];
        add_corner(&mut none);
        assert!(none.is_empty());
    }

    #[test]
    fn parts_that_are_added_lie_in_the_surface() {
        let mut surface = Surface::from_outline("a", &[[0.0, 0.0], [4.0, 0.0], [4.0, 3.0], [0.0, 3.0]]);
        surface.add_section();
        let names: Vec<&str> = surface.sections.iter().map(|section| section.name.as_str()).collect();
        assert_eq!(names, ["A", "B"]);
        surface.add_divider("d".to_owned());
        surface.add_opening("o".to_owned());
        assert_eq!(
            (surface.dividers[0].from, surface.dividers[0].to),
            (Point::m(2.0, 0.0), Point::m(2.0, 3.0))
        );
        // 2 by 3 ft.
        let before = Surface { openings: vec![], ..surface.clone() };
        let cut_out = layout(&before).plan_area.to_m2() - layout(&surface).plan_area.to_m2();
        assert!((cut_out - 0.6096 * 0.9144).abs() < 1e-9, "{cut_out}");
    }
}
