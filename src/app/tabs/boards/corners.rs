//! Corners and ends in lists, to be typed.

use eframe::egui::{Grid, RichText, Ui};

use crate::app::context::WindowContext;
use crate::app::icon::Icon;
use crate::job::Job;
use crate::job::fields::{At, Field, Item};
use crate::measure::{Length, Quantity};
use crate::surface::{Point, add_corner};
use crate::words::{Arg, say};

/// What the corners are of.
#[derive(Debug, Clone, Copy)]
pub(super) enum Ring<'a> {
    /// The outline of the surface.
    Outline,
    /// A window or door.
    Opening(&'a str),
    /// A section.
    Section(&'a str),
}

impl<'a> Ring<'a> {
    /// What messages take: an id to select by, and the name.
    const fn arguments(self) -> (Arg<'a>, Arg<'a>) {
        match self {
            Self::Outline => (Arg::Id("outline"), Arg::Name("")),
            Self::Opening(name) => (Arg::Id("opening"), Arg::Name(name)),
            Self::Section(name) => (Arg::Id("section"), Arg::Name(name)),
        }
    }
}

/// A list of corners, each to be typed, added after and removed. `field` is what they are entries of, and
/// `reach` finds them in a job.
pub(super) fn corners(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    field: &'static Field,
    at: At,
    ring: Ring<'_>,
    points: &[Point],
    reach: impl Fn(&mut Job) -> Option<&mut Vec<Point>> + Copy + 'static,
) {
    let words = context.words;
    Grid::new((field.id, at)).num_columns(4).show(ui, |ui| {
        let head = |text: &str| RichText::new(text).small();
        let corner = ui.label(head(&words.text("corners-column-corner")));
        corner.on_hover_text(words.text("field-outline.hint"));
        ui.label(head(&words.text("corners-column-right")));
        ui.label(head(&words.text("corners-column-up")));
        ui.end_row();
        for (index, point) in points.iter().enumerate() {
            let number = index + 1;
            ui.label(words.figures().number(number as f64, 0));
            let (of, name) = ring.arguments();
            let right = say!(words, "corners-right", ring = of, name = name, number = number);
            let (of, name) = ring.arguments();
            let up = say!(words, "corners-up", ring = of, name = name, number = number);
            if let Some(moved) = point_entry(ui, context, (field, at, number), *point, [&right, &up]) {
                context.edit("undo-move-corner", move |job| {
                    if let Some(corner) = reach(job).and_then(|points| points.get_mut(index)) {
                        *corner = moved;
                    }
                });
            }
            remove(ui, context, ring, index, points.len() > 3, reach);
            ui.end_row();
        }
    });
    context.field_problems(ui, field, at);
    let (of, name) = ring.arguments();
    if ui.button(say!(words, "corners-add", ring = of, name = name)).clicked() {
        context.edit("undo-add-corner", move |job| {
            if let Some(points) = reach(job) {
                add_corner(points);
            }
        });
    }
}

/// The button that takes a corner away.
fn remove(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    ring: Ring<'_>,
    index: usize,
    enabled: bool,
    reach: impl Fn(&mut Job) -> Option<&mut Vec<Point>> + Copy + 'static,
) {
    let (of, name) = ring.arguments();
    let said = say!(context.words, "corners-remove", ring = of, name = name, number = index + 1);
    if Icon::Remove.button(ui, &said, enabled).clicked() {
        context.edit("undo-remove-corner", move |job| {
            if let Some(points) = reach(job)
                && index < points.len()
            {
                points.remove(index);
            }
        });
    }
}

/// The entries of a point's two coordinates, each by its name; the point as typed. It is the point of this
/// number, from 1, of the entry `at` of `field`.
pub(super) fn point_entry(
    ui: &mut Ui,
    context: &WindowContext<'_>,
    (field, at, number): (&'static Field, At, usize),
    now: Point,
    names: [&str; 2],
) -> Option<Point> {
    let item = Item::Number(number);
    let mut coordinate = |length: Length, name: &str| match context.listed_figure(
        ui,
        field,
        (at, &item),
        Some(Quantity::RoomLength(length)),
        name,
    ) {
        Some(Some(Quantity::RoomLength(typed))) => Some(typed),
        _ => None,
    };
    let (right, up) = (coordinate(now.0, names[0]), coordinate(now.1, names[1]));
    (right.is_some() || up.is_some()).then(|| Point(right.unwrap_or(now.0), up.unwrap_or(now.1)))
}
