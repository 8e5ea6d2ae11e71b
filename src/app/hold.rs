//! Keeps the field under the pointer where it is while rows come and go above it.
//!
//! What is typed into one field may bring a message or further fields, when the hand is already on its way
//! to the next one. A pane then scrolls by as much as its content grew or shrank above the field under the
//! pointer; where it cannot scroll so far, it gets that much room at its end until the pointer leaves it.

use eframe::egui::scroll_area::ScrollAreaOutput;
use eframe::egui::{Id, LayerId, Rect, Response, ScrollArea, Ui};

/// By less than this nothing counts as moved, points.
const STILL: f32 = 0.5;

/// What a pane keeps from pass to pass.
#[derive(Debug, Clone, Copy, Default)]
struct Held {
    /// The field under the pointer, and how far below the top of the content it stands.
    field: Option<(Id, f32)>,
    /// Room over the content, and under it.
    above: f32,
    below: f32,
    /// Where the pane is to be scrolled to in the next pass.
    offset: Option<f32>,
}

/// A field that was drawn under the pointer, or is held.
#[derive(Debug, Clone, Copy)]
struct Seen {
    id: Id,
    layer: LayerId,
    rect: Rect,
}

/// Those of a pass.
#[derive(Debug, Clone, Default)]
struct SeenFields {
    pass: u64,
    fields: Vec<Seen>,
}

fn seen_id() -> Id {
    Id::unique("fields under the pointer")
}

fn held_field_id() -> Id {
    Id::unique("the field that is held in its place")
}

/// Notes a field that was drawn, if it is one to be held.
pub(super) fn note(field: &Response) {
    let ctx = &field.ctx;
    let held = || ctx.data(|data| data.get_temp::<Id>(held_field_id())) == Some(field.id);
    if !field.contains_pointer() && !held() {
        return;
    }
    let (pass, seen) =
        (ctx.cumulative_pass_nr(), Seen { id: field.id, layer: field.layer_id, rect: field.rect });
    ctx.data_mut(|data| {
        let all = data.get_temp_mut_or_default::<SeenFields>(seen_id());
        if all.pass != pass {
            *all = SeenFields { pass, fields: Vec::new() };
        }
        all.fields.push(seen);
    });
}

/// Shows a pane that scrolls and holds the field under the pointer; `pane` is what it is known by.
pub(super) fn show(ui: &mut Ui, area: ScrollArea, pane: Id, add: impl FnOnce(&mut Ui)) {
    let held: Held = ui.data(|data| data.get_temp(pane)).unwrap_or_default();
    let area = match held.offset {
        Some(offset) => area.vertical_scroll_offset(offset),
        None => area,
    };
    let shown = area.show(ui, |ui| {
        ui.add_space(held.above);
        let top = ui.cursor().top();
        add(ui);
        if held.below > 0.0 {
            ui.add_space(held.below);
        }
        top
    });
    let next = held.after(ui, &shown);
    ui.data_mut(|data| {
        data.insert_temp(pane, next);
        match (held.field, next.field) {
            (_, Some((field, _))) => {
                data.insert_temp(held_field_id(), field);
            }
            // Another pane may hold one by now.
            (Some((field, _)), None) if data.get_temp(held_field_id()) == Some(field) => {
                data.remove::<Id>(held_field_id());
            }
            _ => {}
        }
    });
}

impl Held {
    /// What is kept after a pass: scrolled on if the field under the pointer would move.
    fn after(self, ui: &Ui, shown: &ScrollAreaOutput<f32>) -> Self {
        let (pane, top) = (shown.inner_rect, shown.inner);
        let offset = pane.top() - (top - self.above);
        let most = shown.content_size.y - pane.height();
        let seen = seen_in(ui, pane);
        let pointer = ui.input(|input| input.pointer.latest_pos());
        let moved = self.field.and_then(|(id, stood)| {
            let field = seen.iter().find(|seen| seen.id == id)?;
            Some((id, field.rect.top() - top, field.rect.top() - top - stood))
        });
        if let Some((id, stands, by)) = moved.filter(|(.., by)| by.abs() > STILL) {
            ui.request_discard("the field under the pointer is held");
            return Self { field: Some((id, stands)), ..self }.scrolled(offset + by, most);
        }
        let pointer = pointer.filter(|at| pane.contains(*at));
        let under = seen.iter().find(|seen| pointer.is_some_and(|at| seen.rect.contains(at)));
        let held = Self { field: under.map(|seen| (seen.id, seen.rect.top() - top)), offset: None, ..self };
        match moved {
            // What went below it lets a pane scroll less far.
            Some(_) if under.is_some() && offset > most.max(0.0) + STILL => held.scrolled(offset, most),
            _ if pointer.is_none() => held.let_go(ui, offset),
            _ => held.trimmed(offset, most),
        }
    }

    /// Scrolled to an offset, with room made where the content does not reach so far.
    fn scrolled(self, offset: f32, most: f32) -> Self {
        let above = (-offset).max(0.0);
        let (offset, most) = (offset + above, most + above);
        let below = if offset > 0.0 { (offset - most).max(0.0) } else { 0.0 };
        Self { above: self.above + above, below: self.below + below, offset: Some(offset), ..self }
    }

    /// Without the room that was made.
    fn let_go(self, ui: &Ui, offset: f32) -> Self {
        if self.above == 0.0 && self.below == 0.0 {
            return self;
        }
        ui.request_repaint();
        Self { above: 0.0, below: 0.0, offset: Some((offset - self.above).max(0.0)), ..self }
    }

    /// Without the part of that room that is scrolled out of sight.
    fn trimmed(self, offset: f32, most: f32) -> Self {
        let above = self.above.min(offset.max(0.0));
        let below = self.below.min((most - offset).max(0.0));
        let offset = (above > 0.0).then_some(offset - above);
        Self { above: self.above - above, below: self.below - below, offset, ..self }
    }
}

/// The fields of this pass that lie in a pane.
fn seen_in(ui: &Ui, pane: Rect) -> Vec<Seen> {
    let (pass, layer) = (ui.ctx().cumulative_pass_nr(), ui.layer_id());
    let seen = ui.data(|data| data.get_temp::<SeenFields>(seen_id())).filter(|seen| seen.pass == pass);
    let inside = |seen: &Seen| seen.layer == layer && pane.x_range().contains(seen.rect.center().x);
    seen.map_or_else(Vec::new, |seen| seen.fields.into_iter().filter(inside).collect())
}
