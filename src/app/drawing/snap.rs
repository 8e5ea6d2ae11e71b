//! Where a dragged point comes to lie: on another corner, in line with one, or on the grid.

use geo::Coord;

use crate::measure::{Length, Units};

/// A point held by what is near it.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Snapped {
    /// Where it lies, metres.
    pub at: Coord,
    /// The corners it is in line with.
    pub guides: Vec<Coord>,
}

/// The step of the grid that is at least `least` metres, in round units.
pub(super) fn grid_step(units: Units, least: f64) -> f64 {
    let steps: &[Length] = match units {
        Units::Inches => &[
            Length::inches(0.125),
            Length::inches(0.5),
            Length::inches(1.0),
            Length::inches(6.0),
            Length::inches(12.0),
        ],
        Units::Millimeters => {
            &[Length::mm(1.0), Length::mm(5.0), Length::mm(10.0), Length::mm(50.0), Length::mm(100.0)]
        }
    };
    let fits = steps.iter().map(|step| step.to_m()).find(|step| *step >= least);
    fits.unwrap_or_else(|| steps.last().map_or(0.1, |step| step.to_m()))
}

/// Holds `point` by the `others` within `reach` metres, else by a grid of `step`. With a `start`, as for
/// a line that is being drawn, it is also held level, upright and at 45° to that.
pub(super) fn snap(point: Coord, others: &[Coord], start: Option<Coord>, reach: f64, step: f64) -> Snapped {
    let apart = |a: Coord, b: Coord| (a.x - b.x).hypot(a.y - b.y);
    let nearest = others.iter().copied().min_by(|a, b| apart(*a, point).total_cmp(&apart(*b, point)));
    if let Some(corner) = nearest.filter(|corner| apart(*corner, point) <= reach) {
        return Snapped { at: corner, guides: vec![corner] };
    }
    let on_grid = |value: f64| (value / step).round() * step;
    let mut held = Snapped { at: Coord { x: on_grid(point.x), y: on_grid(point.y) }, guides: vec![] };
    if let Some(start) = start {
        let run = point - start;
        let (x, y) = (run.x.abs(), run.y.abs());
        if (x - y).abs() <= reach && x.max(y) > 3.0 * reach {
            let side = on_grid((x + y) / 2.0);
            let turned = Coord { x: side.copysign(run.x), y: side.copysign(run.y) };
            return Snapped { at: start + turned, guides: vec![start] };
        }
    }
    let candidates = || others.iter().copied().chain(start);
    let closest = |far: fn(Coord, Coord) -> f64| {
        let near = candidates().min_by(|a, b| far(*a, point).total_cmp(&far(*b, point)));
        near.filter(|corner| far(*corner, point) <= reach)
    };
    if let Some(corner) = closest(|a, b| (a.x - b.x).abs()) {
        held.at.x = corner.x;
        held.guides.push(corner);
    }
    if let Some(corner) = closest(|a, b| (a.y - b.y).abs()) {
        held.at.y = corner.y;
        held.guides.push(corner);
    }
    held
}

#[cfg(test)]
mod tests {
    use super::*;

    const fn at(x: f64, y: f64) -> Coord {
        Coord { x, y }
    }

    #[test]
    fn a_point_goes_to_a_corner_then_in_line_then_to_the_grid() {
        let others = [at(4.0, 3.0)];
        let held = |x, y| snap(at(x, y), &others, None, 0.05, 0.1).at;
        assert_eq!(held(4.03, 2.98), at(4.0, 3.0));
        let in_line = held(4.03, 1.52);
        assert!((in_line.x - 4.0).abs() < 1e-12 && (in_line.y - 1.5).abs() < 1e-12);
        let free = held(2.26, 1.44);
        assert!((free.x - 2.3).abs() < 1e-12 && (free.y - 1.4).abs() < 1e-12);
    }

    #[test]
    fn a_line_is_held_upright_and_at_half_a_right_angle() {
        let start = at(1.03, 0.0);
        let upright = snap(at(1.05, 2.51), &[], Some(start), 0.05, 0.1);
        assert!((upright.at.x - 1.03).abs() < 1e-12);
        let slant = snap(at(2.05, 1.0), &[], Some(start), 0.05, 0.1).at - start;
        assert!((slant.x - slant.y).abs() < 1e-12 && slant.x > 0.9);
    }

    #[test]
    fn the_grid_is_round_in_either_unit() {
        assert!((grid_step(Units::Millimeters, 0.007) - 0.01).abs() < 1e-12);
        assert!((grid_step(Units::Inches, 0.02) - 0.0254).abs() < 1e-12);
        assert!((grid_step(Units::Inches, 9.0) - 0.3048).abs() < 1e-12);
    }
}
