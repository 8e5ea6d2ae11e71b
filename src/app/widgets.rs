//! Small pieces that every tab is made of.

use std::sync::Arc;

use eframe::egui::text::LayoutJob;
use eframe::egui::{
    Color32, ComboBox, FontId, Galley, Label, Mesh, Painter, Pos2, Response, RichText, TextEdit, TextStyle,
    Ui,
};

use super::lead;
use super::theme::Palette;
use crate::words::Words;

/// Width of a drop-down list, and the most height it opens to, in points.
const CHOICE_WIDTH: f32 = 200.0;
const CHOICE_HEIGHT: f32 = 320.0;

/// A heading with space over it.
pub(super) fn heading(ui: &mut Ui, text: &str) {
    ui.add_space(8.0);
    ui.heading(text);
}

/// Lesser text that wraps.
pub(super) fn remark(ui: &mut Ui, palette: &Palette, text: impl Into<String>) -> Response {
    ui.add(Label::new(RichText::new(text).small().color(palette.soft)).wrap())
}

/// The heads of a table's columns by their messages, with their hints on hover; a column without a
/// message has no head.
pub(super) fn columns(ui: &mut Ui, palette: &Palette, words: &Words, messages: &[&str]) {
    for message in messages {
        let title = if message.is_empty() { "".into() } else { words.text(message) };
        let label = ui.label(RichText::new(title).small().color(palette.soft));
        if let Some(hint) = words.optional(&format!("{message}.hint")) {
            label.on_hover_text(hint);
        }
    }
    ui.end_row();
}

/// Painted text that keeps to a width: it goes on in further rows, up to `rows`, and ends in an ellipsis
/// where they are full. Whoever paints it offers the whole text on hover.
pub(super) fn fitted(
    painter: &Painter,
    text: impl Into<String>,
    font: FontId,
    color: Color32,
    (width, rows): (f32, usize),
) -> Arc<Galley> {
    let mut job = LayoutJob::simple(text.into(), font, color, width.max(0.0));
    (job.wrap.max_rows, job.wrap.break_anywhere) = (rows, rows == 1);
    painter.layout_job(job)
}

/// How wide a text of a style is in one row.
pub(super) fn text_width(ui: &Ui, text: &str, style: &TextStyle) -> f32 {
    let font = style.resolve(ui.style());
    ui.painter().layout_no_wrap(text.to_owned(), font, Color32::PLACEHOLDER).size().x
}

/// A label with an explanation on hover, in the first column of a form.
pub(super) fn term(ui: &mut Ui, text: &str, explanation: &str) {
    let label = ui.label(text);
    if !explanation.is_empty() {
        label.on_hover_text(explanation);
    }
}

/// A drop-down list called `name` with `now` chosen; what was newly chosen.
pub(super) fn choose<T: Copy + PartialEq>(
    ui: &mut Ui,
    name: &str,
    now: T,
    choices: &[(T, String)],
) -> Option<T> {
    let shown = choices.iter().find(|(choice, _)| *choice == now).map_or("", |(_, label)| label);
    let mut chosen = None;
    let combo = ComboBox::from_id_salt(name)
        .selected_text(shown)
        .width(CHOICE_WIDTH.min(ui.available_width()))
        .height(CHOICE_HEIGHT)
        .truncate();
    let response = combo.show_ui(ui, |ui| {
        for (choice, label) in choices {
            if ui.selectable_label(*choice == now, label).clicked() {
                chosen = Some(*choice);
            }
        }
    });
    lead::take_focus(&response.response.accessible_name(name));
    chosen.filter(|choice| *choice != now)
}

/// A field of several lines called `name`; what was typed, when it is left.
pub(super) fn multiline(ui: &mut Ui, name: &str, shown: &str) -> Option<String> {
    let id = ui.make_persistent_id(("multiline", name));
    let mut text: String = ui.data(|data| data.get_temp(id)).unwrap_or_else(|| shown.to_owned());
    let field = TextEdit::multiline(&mut text).desired_rows(3).desired_width(f32::INFINITY);
    let response = ui.add(field).accessible_name(name);
    lead::take_focus(&response);
    if response.has_focus() {
        ui.data_mut(|data| data.insert_temp(id, text));
        return None;
    }
    ui.data_mut(|data| data.remove::<String>(id));
    (response.lost_focus() && text != shown).then_some(text)
}

/// What lies between two curves, given as the pairs of points where each of them runs.
pub(super) fn band(edges: impl Iterator<Item = [Pos2; 2]>, color: Color32) -> Mesh {
    let mut mesh = Mesh::default();
    for (at, points) in edges.enumerate() {
        let first = mesh.vertices.len() as u32;
        for point in points {
            mesh.colored_vertex(point, color);
        }
        if at > 0 {
            mesh.add_triangle(first - 2, first - 1, first);
            mesh.add_triangle(first - 1, first, first + 1);
        }
    }
    mesh
}
