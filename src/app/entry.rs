//! Entry fields that never change a value by being looked at.
//!
//! A field shows a value's text. What is typed is kept as text until Enter or leaving the field;
//! only text that differs from what was shown is read. Text that cannot be read stays in the field
//! with the reason under it, and the value stays what it was. Esc goes back to the value.

use eframe::egui::text::CCursorRange;
use eframe::egui::{
    Area, Context, Event, Frame, Id, Key, Label, Margin, Order, Rect, Response, RichText, Stroke, StrokeKind,
    TextEdit, Ui, Widget as _, pos2, vec2,
};

use serde::{Deserialize, Serialize};

use super::{lead, theme};

/// Least width of what is told about a field, in points.
const ERROR_WIDTH: f32 = 170.0;

/// What a field keeps between frames while its text is not the value's.
#[derive(Debug, Clone, Default)]
struct Typed {
    text: String,
    shown: String,
    error: Option<String>,
    /// Whether something was refused since the field was come to.
    refused: bool,
}

/// A one-line field called `name` (what a screen reader says) that shows `shown`. Returns what was
/// read from changed text.
pub fn entry<T>(
    ui: &mut Ui,
    name: &str,
    shown: &str,
    width: f32,
    read: impl FnOnce(&str) -> Result<T, String>,
) -> Option<T> {
    let id = ui.make_persistent_id(("entry", name));
    entry_with_id(ui, id, name, shown, width, read).value
}

/// What came of a field in this frame.
pub struct Entered<T> {
    /// The field.
    pub response: Response,
    /// What was read, if changed text was just read.
    pub value: Option<T>,
    /// Whether text was just found unreadable.
    pub refused: bool,
    /// Whether a new value is being typed.
    pub begun: bool,
}

/// [`entry`] with a given id, so that focus can be asked for.
pub fn entry_with_id<T>(
    ui: &mut Ui,
    id: Id,
    name: &str,
    shown: &str,
    width: f32,
    read: impl FnOnce(&str) -> Result<T, String>,
) -> Entered<T> {
    entry_for(ui, (id, id), name, (shown, ""), width, read)
}

/// [`entry_with_id`] that serves several values in turn, each with a slot of its own: what was refused
/// for one stays with it. Where nothing stands in it, `hint` tells what counts instead.
pub fn entry_for<T>(
    ui: &mut Ui,
    (id, slot): (Id, Id),
    name: &str,
    (shown, hint): (&str, &str),
    width: f32,
    read: impl FnOnce(&str) -> Result<T, String>,
) -> Entered<T> {
    let kept: Option<Typed> = ui.data(|data| data.get_temp(slot));
    let mut typed = kept.clone().unwrap_or_else(|| Typed {
        text: shown.to_owned(),
        shown: shown.to_owned(),
        error: None,
        refused: false,
    });
    let palette = theme::palette(ui);
    let mut field = TextEdit::singleline(&mut typed.text)
        .id(id)
        .desired_width(width)
        .hint_text(hint)
        // A cell of a table would offer less.
        .min_size(vec2(width, 0.0));
    if typed.error.is_some() {
        field = field.text_color(palette.error);
    }
    let response = field.ui(ui).accessible_name(name);
    if let Some(error) = &typed.error {
        tell_error(ui, &response, error);
    }

    lead::take_focus(&response);
    // Begun is what was typed since the field was come to: it is not to be typed over.
    let begun = typed.error.is_none() && typed.text != typed.shown;
    if response.gained_focus() && !begun {
        // Typing replaces what was there, however the field was come to.
        select_all(ui, id, &typed.text);
    }
    let cancelled = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Escape));
    let (mut value, mut refused) = (None, false);
    if cancelled {
        forget_slot(ui.ctx(), slot);
    } else if response.lost_focus() {
        // Once something was refused the old value may be gone: then it is a new one.
        let untouched = !typed.refused && typed.text.trim() == typed.shown.trim();
        if untouched || typed.text.trim() == shown.trim() {
            forget_slot(ui.ctx(), slot);
        } else {
            match read(&typed.text) {
                Ok(read) => {
                    forget_slot(ui.ctx(), slot);
                    value = Some(read);
                }
                Err(error) => {
                    refused = true;
                    typed.error = Some(error);
                    typed.refused = true;
                    let mut all = refusals(ui.ctx());
                    all.retain(|(of, _)| *of != slot);
                    all.push((slot, name.to_owned()));
                    ui.data_mut(|data| {
                        data.insert_temp(slot, typed);
                        data.insert_temp(refusals_id(), all);
                    });
                }
            }
        }
    } else if response.has_focus() {
        let typing =
            (typed.text != typed.shown).then(|| Typing { field: name.to_owned(), text: typed.text.clone() });
        ui.data_mut(|data| data.insert_temp(typing_id(), typing));
        if response.changed() {
            typed.error = None;
        }
        ui.data_mut(|data| data.insert_temp(slot, typed));
    } else if typed.error.is_none() && kept.is_some() {
        ui.data_mut(|data| data.remove::<Typed>(slot));
    }
    Entered { response, value, refused, begun }
}

/// Tells what is wrong with a field, beside it where there is room and else under it. It floats: the
/// rows below stay where a hand is about to click.
fn tell_error(ui: &Ui, field: &Response, error: &str) {
    if !ui.clip_rect().intersects(field.rect) {
        return;
    }
    let palette = theme::palette(ui);
    let beside = ui.clip_rect().right() - field.rect.right() - 16.0;
    let (at, width) = if beside >= ERROR_WIDTH {
        (field.rect.right_top() + vec2(6.0, 0.0), beside)
    } else {
        let left = field.rect.left().min(ui.clip_rect().right() - ERROR_WIDTH - 16.0);
        (pos2(left, field.rect.bottom() + 2.0), ERROR_WIDTH)
    };
    let edge = Stroke::new(1.5, palette.error);
    ui.painter().rect_stroke(field.rect, 5, edge, StrokeKind::Inside);
    let note = field.id.with("error");
    let covered: Option<Rect> = ui.data(|data| data.get_temp(note));
    if covered.is_some_and(|covered| in_the_way(ui, field, covered)) {
        return;
    }
    let area = Area::new(note).order(Order::Middle).interactable(false).fixed_pos(at);
    let shown = area.constrain(false).show(ui, |ui| {
        ui.set_clip_rect(ui.clip_rect());
        let frame =
            Frame::new().fill(palette.raised).stroke(Stroke::new(1.0, palette.error)).corner_radius(5);
        frame.inner_margin(Margin::symmetric(7, 3)).show(ui, |ui| {
            ui.set_max_width(width.min(230.0) - 14.0);
            let text = RichText::new(error).small().color(palette.error);
            ui.add(Label::new(text).wrap().selectable(false));
        });
    });
    ui.data_mut(|data| data.insert_temp(note, shown.response.rect));
}

/// Whether something under a note is being worked on: then the note gives way.
fn in_the_way(ui: &Ui, field: &Response, note: Rect) -> bool {
    let pointed = ui.input(|input| input.pointer.hover_pos()).is_some_and(|at| note.contains(at));
    let focused = ui.memory(|memory| memory.focused()).filter(|id| *id != field.id);
    let worked_on =
        focused.and_then(|id| ui.read_response(id)).is_some_and(|other| other.rect.intersects(note));
    pointed || worked_on
}

/// What was typed in this frame.
pub fn typed_text(ctx: &Context) -> String {
    let text = |event: &Event| if let Event::Text(text) = event { Some(text.clone()) } else { None };
    ctx.input(|input| input.events.iter().filter_map(text).collect())
}

/// Selects the text of a field.
pub fn select_all(ctx: &Context, id: Id, text: &str) {
    let mut state = TextEdit::load_state(ctx, id).unwrap_or_default();
    state.cursor.set_char_range(Some(CCursorRange::select_all_str(text)));
    state.store(ctx, id);
}

fn typing_id() -> Id {
    Id::unique("a field holds changed text")
}

/// Whether the focused field holds text that is not its value's: then undo is the field's own.
pub fn is_typing(ctx: &Context) -> bool {
    ctx.text_edit_focused()
        && ctx.data(|data| data.get_temp(typing_id())).is_none_or(|typing: Option<Typing>| typing.is_some())
}

/// What is being typed and was not read yet.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Typing {
    /// What the field is called.
    pub field: String,
    /// What stands in it.
    pub text: String,
}

/// What is being typed in the focused field, if it differs from its value.
pub fn typing(ctx: &Context) -> Option<Typing> {
    ctx.text_edit_focused()
        .then(|| ctx.data(|data| data.get_temp::<Option<Typing>>(typing_id())))
        .flatten()
        .flatten()
}

/// Leaves the focused field, so that what was typed is read in this frame.
pub fn leave_field(ctx: &Context) {
    ctx.memory_mut(|memory| {
        if let Some(id) = memory.focused() {
            memory.surrender_focus(id);
        }
    });
}

/// Fields with text that could not be read.
type Refusals = Vec<(Id, String)>;

fn refusals_id() -> Id {
    Id::unique("refused entries")
}

fn refusals(ctx: &Context) -> Refusals {
    ctx.data(|data| data.get_temp(refusals_id())).unwrap_or_default()
}

fn forget_slot(ctx: &Context, slot: Id) {
    let mut all = refusals(ctx);
    all.retain(|(of, _)| *of != slot);
    ctx.data_mut(|data| {
        data.remove::<Typed>(slot);
        data.insert_temp(refusals_id(), all);
    });
}

/// The names of the fields, shown or not, in which text stands that could not be read.
pub fn refused(ctx: &Context) -> Vec<String> {
    refusals(ctx).into_iter().map(|(_, name)| name).collect()
}

/// Forgets unread text, when another job is opened.
pub fn forget(ctx: &Context) {
    ctx.data_mut(|data| {
        data.remove_by_type::<Typed>();
        data.remove_by_type::<Refusals>();
    });
}

/// A field for plain text.
pub fn text_entry(ui: &mut Ui, name: &str, shown: &str, width: f32) -> Option<String> {
    entry(ui, name, shown, width, |text| Ok(text.trim().to_owned()))
}
