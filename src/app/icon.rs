//! The window's own icons, drawn as strokes in a unit square.

use std::f32::consts::{FRAC_PI_2, PI, TAU};

use eframe::egui::{Button, Painter, Pos2, Rect, Response, Sense, Shape, Stroke, Ui, pos2, vec2};

/// An icon.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Icon {
    /// An arrow bending back.
    Undo,
    /// An arrow bending forward.
    Redo,
    /// Half sun, half moon.
    Theme,
    /// A frame around everything.
    Fit,
    /// A cross.
    Remove,
    /// An arrow up.
    Up,
    /// A triangle to the right.
    Play,
    /// Two bars.
    Pause,
    /// A curve and its shadow.
    ReferenceCurve,
    /// A camera.
    Photo,
    /// A triangle with a mark.
    Warning,
    /// A tick.
    Good,
    /// A rule with its marks.
    Measure,
}

impl Icon {
    /// Strokes in a unit square, y down.
    fn strokes(self) -> Vec<Vec<Pos2>> {
        let line = |points: &[(f32, f32)]| points.iter().map(|&(x, y)| pos2(x, y)).collect::<Vec<_>>();
        let arc = |context: f32, cy: f32, r: f32, from: f32, to: f32| -> Vec<Pos2> {
            (0..=14)
                .map(|step| {
                    let angle = from + (to - from) * step as f32 / 14.0;
                    pos2(context + r * angle.cos(), cy + r * angle.sin())
                })
                .collect()
        };
        match self {
            Self::Play => vec![line(&[(0.28, 0.16), (0.8, 0.5), (0.28, 0.84), (0.28, 0.16)])],
            Self::Photo => vec![
                line(&[(0.08, 0.3), (0.3, 0.3), (0.38, 0.18), (0.62, 0.18), (0.7, 0.3), (0.92, 0.3)]),
                line(&[(0.92, 0.3), (0.92, 0.82), (0.08, 0.82), (0.08, 0.3)]),
                arc(0.5, 0.55, 0.17, 0.0, TAU),
            ],
            Self::Measure => vec![
                line(&[(0.06, 0.34), (0.94, 0.34), (0.94, 0.68), (0.06, 0.68), (0.06, 0.34)]),
                line(&[(0.28, 0.34), (0.28, 0.5)]),
                line(&[(0.5, 0.34), (0.5, 0.56)]),
                line(&[(0.72, 0.34), (0.72, 0.5)]),
            ],
            Self::Pause => vec![line(&[(0.34, 0.18), (0.34, 0.82)]), line(&[(0.66, 0.18), (0.66, 0.82)])],
            Self::ReferenceCurve => vec![
                line(&[(0.08, 0.6), (0.3, 0.3), (0.55, 0.5), (0.9, 0.16)]),
                line(&[(0.08, 0.86), (0.2, 0.7)]),
                line(&[(0.3, 0.58), (0.42, 0.68)]),
                line(&[(0.55, 0.78), (0.68, 0.64)]),
                line(&[(0.78, 0.54), (0.9, 0.42)]),
            ],
            Self::Up => {
                vec![line(&[(0.24, 0.42), (0.5, 0.16), (0.76, 0.42)]), line(&[(0.5, 0.16), (0.5, 0.86)])]
            }
            Self::Undo => vec![
                line(&[(0.34, 0.16), (0.12, 0.36), (0.34, 0.56)]),
                line(&[(0.12, 0.36), (0.6, 0.36)]),
                arc(0.6, 0.6, 0.24, -FRAC_PI_2, FRAC_PI_2),
                line(&[(0.6, 0.84), (0.3, 0.84)]),
            ],
            Self::Redo => vec![
                line(&[(0.66, 0.16), (0.88, 0.36), (0.66, 0.56)]),
                line(&[(0.88, 0.36), (0.4, 0.36)]),
                arc(0.4, 0.6, 0.24, -FRAC_PI_2, -FRAC_PI_2 - PI),
                line(&[(0.4, 0.84), (0.7, 0.84)]),
            ],
            Self::Theme => vec![
                arc(0.5, 0.5, 0.36, 0.0, TAU),
                line(&[(0.5, 0.14), (0.5, 0.86)]),
                line(&[(0.6, 0.3), (0.6, 0.7)]),
                line(&[(0.7, 0.34), (0.7, 0.66)]),
            ],
            Self::Fit => vec![
                line(&[(0.12, 0.35), (0.12, 0.12), (0.35, 0.12)]),
                line(&[(0.65, 0.12), (0.88, 0.12), (0.88, 0.35)]),
                line(&[(0.88, 0.65), (0.88, 0.88), (0.65, 0.88)]),
                line(&[(0.35, 0.88), (0.12, 0.88), (0.12, 0.65)]),
            ],
            Self::Remove => vec![line(&[(0.25, 0.25), (0.75, 0.75)]), line(&[(0.75, 0.25), (0.25, 0.75)])],
            Self::Warning => vec![
                line(&[(0.5, 0.12), (0.92, 0.86), (0.08, 0.86), (0.5, 0.12)]),
                line(&[(0.5, 0.38), (0.5, 0.6)]),
                line(&[(0.5, 0.71), (0.5, 0.74)]),
            ],
            Self::Good => vec![line(&[(0.15, 0.55), (0.4, 0.8), (0.85, 0.22)])],
        }
    }

    /// Paints the icon into `rect`.
    pub fn paint(self, painter: &Painter, rect: Rect, stroke: Stroke) {
        for points in self.strokes() {
            let points = points.into_iter().map(|p| rect.min + vec2(p.x * rect.width(), p.y * rect.height()));
            painter.add(Shape::line(points.collect(), stroke));
        }
    }

    /// A small mark in a line of text.
    pub fn mark(self, ui: &mut Ui, stroke: Stroke) -> Response {
        let (rect, response) = ui.allocate_exact_size(vec2(14.0, 16.0), Sense::hover());
        self.paint(ui.painter(), Rect::from_center_size(rect.center(), vec2(13.0, 13.0)), stroke);
        response
    }

    /// A button with this icon; `name` is its tooltip and what screen readers say.
    pub fn button(self, ui: &mut Ui, name: &str, enabled: bool) -> Response {
        let button = Button::new("").min_size(vec2(28.0, 26.0));
        let response = ui.add_enabled(enabled, button).on_hover_text(name).on_disabled_hover_text(name);
        let role = eframe::egui::Role::Button;
        response.widget_info(|| eframe::egui::WidgetInfo::labeled(role, enabled, name));
        let ink = ui.style().interact(&response).fg_stroke.color;
        let ink = if enabled { ink } else { ink.gamma_multiply(0.35) };
        let square = Rect::from_center_size(response.rect.center(), vec2(15.0, 15.0));
        self.paint(ui.painter(), square, Stroke::new(1.5, ink));
        response
    }
}
