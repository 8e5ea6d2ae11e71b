//! Where meters lie on the screen, and how a surface is looked at: zoomed about the pointer, and never out
//! of sight.

use eframe::egui::{Pos2, Rect, Vec2, vec2};
use geo::Coord;

use crate::app::view::Camera;

/// Room left around a surface that is shown whole, in points.
const MARGIN: Vec2 = vec2(46.0, 34.0);
/// The least and the most zoom over showing all of a surface.
const ZOOM: (f32, f32) = (0.5, 80.0);
/// So much of the drawing's room that a surface could take, by width and by height, it may leave empty.
const LEFT_EMPTY: f32 = 0.35;

/// Where meters lie on the screen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Sheet {
    /// Where the surface's origin lies.
    pub origin: Pos2,
    /// Points in a meter.
    pub scale: f32,
}

impl Sheet {
    /// The bounds fitted into a rectangle of the screen, as the camera looks at them.
    pub fn fit(rect: Rect, bounds: geo::Rect, camera: Camera) -> Self {
        let scale = scale_of_all(rect, bounds) * camera.zoom;
        let centre = bounds.center();
        let offset = vec2(centre.x as f32 * scale, -(centre.y as f32) * scale);
        Self { origin: rect.center() + camera.shift - offset, scale }
    }

    /// The place in meters under a point of the screen.
    pub fn meters(&self, at: Pos2) -> Coord {
        let from = (at - self.origin) / self.scale;
        Coord { x: f64::from(from.x), y: -f64::from(from.y) }
    }

    /// The point of the screen at which a place in meters lies.
    pub fn at(&self, point: Coord) -> Pos2 {
        self.origin + vec2(point.x as f32 * self.scale, -(point.y as f32) * self.scale)
    }
}

/// Points in a meter where all of a surface is shown.
fn scale_of_all(rect: Rect, bounds: geo::Rect) -> f32 {
    let room = rect.shrink2(MARGIN);
    let (width, height) = (bounds.width().max(1e-3) as f32, bounds.height().max(1e-3) as f32);
    (room.width() / width).min(room.height() / height).max(0.1)
}

impl Camera {
    /// Zoomed by a factor, so that what lies at `pointer`, counted from the middle of the drawing, stays
    /// where it is.
    pub(super) fn zoomed(self, factor: f32, pointer: Vec2) -> Self {
        let zoom = (self.zoom * factor).clamp(ZOOM.0, ZOOM.1);
        let from_middle = pointer - self.shift;
        Self { zoom, shift: self.shift + from_middle * (1.0 - zoom / self.zoom) }
    }
}

/// The camera, shifted no farther than leaves a part of the surface in sight.
pub(super) fn in_sight(camera: Camera, rect: Rect, bounds: geo::Rect) -> Camera {
    let scale = scale_of_all(rect, bounds) * camera.zoom;
    let size = vec2(bounds.width() as f32, bounds.height() as f32) * scale;
    let most = |room: f32, size: f32| 0.5 * (room - size).abs() + LEFT_EMPTY * room.min(size);
    let most = vec2(most(rect.width(), size.x), most(rect.height(), size.y));
    Camera { shift: camera.shift.clamp(-most, most), ..camera }
}

#[cfg(test)]
mod tests {
    use eframe::egui::pos2;

    use super::*;

    const SCREEN: Rect = Rect { min: pos2(10.0, 100.0), max: pos2(810.0, 600.0) };

    fn bounds() -> geo::Rect {
        geo::Rect::new(Coord { x: 0.0, y: 0.0 }, Coord { x: 4.2, y: 2.4 })
    }

    #[test]
    fn what_is_under_the_pointer_stays_there_while_zooming() {
        let mut camera = Camera::default();
        let pointer = pos2(260.0, 210.0);
        let under = Sheet::fit(SCREEN, bounds(), camera).meters(pointer);
        for factor in [1.3, 1.7, 2.0, 0.8, 0.6] {
            camera = in_sight(camera.zoomed(factor, pointer - SCREEN.center()), SCREEN, bounds());
            let now = Sheet::fit(SCREEN, bounds(), camera).at(under);
            assert!((now - pointer).length() < 0.05, "{factor}: {now:?}");
        }
    }

    #[test]
    fn the_surface_never_leaves_the_screen() {
        // Dragged and zoomed out at one corner and in at another, as far as it goes.
        let mut camera = Camera::default();
        for step in 0..400_u16 {
            let corner = if step % 2 == 0 { SCREEN.left_top() } else { SCREEN.right_bottom() };
            let factor = if step % 7 < 4 { 1.5 } else { 0.5 };
            camera = camera.zoomed(factor, corner - SCREEN.center());
            camera.shift += vec2(900.0, -700.0) * if step % 90 < 45 { 1.0 } else { -1.0 };
            camera = in_sight(camera, SCREEN, bounds());
            let sheet = Sheet::fit(SCREEN, bounds(), camera);
            let shown =
                Rect::from_two_pos(sheet.at(Coord { x: 0.0, y: 0.0 }), sheet.at(Coord { x: 4.2, y: 2.4 }));
            let seen = shown.intersect(SCREEN);
            let most = shown.size().min(SCREEN.size());
            assert!(seen.width() > 0.6 * most.x && seen.height() > 0.6 * most.y, "{step}: {shown:?}");
        }
    }
}
