//! Small pieces that every tab is made of.

use std::borrow::Cow;
use std::sync::Arc;

use eframe::egui::text::LayoutJob;
use eframe::egui::{
    Align2, Color32, ComboBox, FontId, Galley, Key, Label, Mesh, Painter, PopupCloseBehavior, Pos2, Response,
    RichText, ScrollArea, TextEdit, TextStyle, Ui, vec2,
};

use super::context::WindowContext;
use super::lead;
use super::theme;
use super::theme::Palette;
use crate::named::{Named, fold, trade_name};
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

/// So many names can be looked through; a longer list is searched by typing.
const LOOKED_THROUGH: usize = 12;
/// Height of the names of a longer one, in points.
const LIST_HEIGHT: f32 = 320.0;

/// The names of a drop-down list of entries, `present` the one chosen now; what is clicked. A long list is in the order
/// of the names and has a field to type part of a name in, or a trade name, and Enter takes the first that is found.
/// Such a list must close on a click outside only: see [`closes`].
pub(super) fn names<T: Named>(
    ui: &mut Ui,
    words: &Words,
    entries: &[T],
    present: Option<usize>,
) -> Option<Found> {
    let names: Vec<Cow<'_, str>> = entries.iter().map(|entry| words.called(entry.name())).collect();
    let mut chosen = None;
    let id = ui.scope_id().with("typed");
    // What was typed is for as long as the list is open.
    let now = ui.ctx().cumulative_pass_nr();
    let before: Option<(u64, String)> = ui.data(|data| data.get_temp(id));
    let mut typed = before.filter(|(pass, _)| pass + 1 >= now).map_or_else(String::new, |(_, typed)| typed);
    if names.len() > LOOKED_THROUGH {
        let field = TextEdit::singleline(&mut typed).hint_text(words.text("list-search.hint"));
        let field = ui.add(field.desired_width(f32::INFINITY));
        let field = field.accessible_name(words.text("list-search"));
        if !field.lost_focus() {
            field.request_focus();
        }
    }
    let wanted = fold(&typed);
    let mut found = found(&names, entries, &wanted);
    // Only once what was typed is one trade name, and no name of a species.
    let first = found.first().and_then(|found| found.sold_as.as_ref());
    let shared =
        first.is_some() && found.len() > 1 && found.iter().all(|found| found.sold_as.as_ref() == first);
    let entered = !wanted.is_empty() && ui.input(|input| input.key_pressed(Key::Enter));
    let mut list = |ui: &mut Ui| {
        if shared {
            // The list's own layout would spread the words to both edges.
            ui.vertical(|ui| {
                ui.add(Label::new(RichText::new(words.text("list-sold-as-several")).small()).wrap());
            });
        }
        for Found { place, sold_as } in &found {
            // What Enter takes is marked while something is typed.
            let marked = if wanted.is_empty() { present == Some(*place) } else { found[0].place == *place };
            let name = match sold_as {
                Some(sold_as) => crate::words::next_install::sold_as(&names[*place], sold_as, words),
                None => names[*place].to_string(),
            };
            if ui.selectable_label(marked, name).clicked() {
                chosen = Some(*place);
            }
        }
        if found.is_empty() {
            ui.label(words.text("list-search-none"));
        }
    };
    if names.len() > LOOKED_THROUGH {
        // As high with one name found as with all, and the field stays in sight.
        ScrollArea::vertical()
            .min_scrolled_height(LIST_HEIGHT)
            .max_height(LIST_HEIGHT)
            .auto_shrink(false)
            .show(ui, list);
    } else {
        list(ui);
    }
    if entered {
        chosen = chosen.or_else(|| found.first().map(|found| found.place));
    }
    ui.data_mut(|data| data.insert_temp(id, (now, typed)));
    let chosen = found.iter().position(|found| chosen == Some(found.place))?;
    ui.close();
    Some(found.swap_remove(chosen))
}

/// An entry of a list that fits what was typed.
pub(super) struct Found {
    /// Its place in the list.
    pub place: usize,
    /// The trade name by which it was found, where its own name does not say it.
    pub sold_as: Option<String>,
}

/// The entries in whose name all of what was typed is found, first those with a word that begins so; then those that
/// are sold under such a name, first those that move the most.
fn found<T: Named>(names: &[Cow<'_, str>], entries: &[T], wanted: &str) -> Vec<Found> {
    let rank = |name: &str| {
        let name = fold(name);
        let all = |fits: &dyn Fn(&str) -> bool| wanted.split_whitespace().all(fits);
        let begins =
            |typed: &str| name.split(|c: char| !c.is_alphanumeric()).any(|word| word.starts_with(typed));
        if all(&begins) { Some(0) } else { all(&|typed| name.contains(typed)).then_some(1) }
    };
    let one = |(place, name): (usize, &Cow<'_, str>)| match rank(name) {
        Some(rank) => Some((rank, Found { place, sold_as: None })),
        None => {
            let sold_as = trade_name(entries[place].sold_as(), wanted)?.to_owned();
            Some((2, Found { place, sold_as: Some(sold_as) }))
        }
    };
    let mut ranked: Vec<(u8, Found)> = names.iter().enumerate().filter_map(one).collect();
    // A short list is in an order of its own.
    if names.len() > LOOKED_THROUGH {
        ranked.sort_by_cached_key(|(_, found)| fold(&names[found.place]));
    }
    let still = |found: &Found| if found.sold_as.is_some() { -entries[found.place].moves() } else { 0.0 };
    ranked.sort_by(|(a, x), (b, y)| a.cmp(b).then(still(x).total_cmp(&still(y))));
    ranked.into_iter().map(|(_, found)| found).collect()
}

/// When a list of so many names closes.
pub(super) const fn closes(count: usize) -> PopupCloseBehavior {
    if count > LOOKED_THROUGH {
        PopupCloseBehavior::CloseOnClickOutside
    } else {
        PopupCloseBehavior::CloseOnClick
    }
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

/// Says, to the left of and under a point, that what is shown is still being worked out. It is painted, since a label
/// that comes and goes would move what is under the pointer.
pub(super) fn working(painter: &Painter, context: &WindowContext<'_>, at: Pos2) {
    if !context.session.is_busy() {
        return;
    }
    let words = context.words.text("drawing-working").into_owned();
    let galley = painter.layout_no_wrap(words, theme::note(), context.palette.soft);
    let place = Align2::RIGHT_TOP.anchor_size(at, galley.size());
    // On a ground of its own: figures may stand under it.
    painter.rect_filled(place.expand2(vec2(4.0, 1.0)), 3.0, context.palette.raised);
    painter.galley(place.min, galley, context.palette.soft);
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
