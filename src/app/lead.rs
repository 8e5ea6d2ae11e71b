//! Leading to an entry: a problem, or a field that was searched for, brings the keyboard to the place where
//! it is entered, in the right row of the right list.
//!
//! What is sought waits until its entry is drawn. Whoever draws an entry says which one it is by
//! [`reach`]; the next widget that can take the keyboard then takes it by [`take_focus`].

use eframe::egui::{Align, Context, Id, Response};

use super::hold;
use crate::job::fields::{At, Field, Item};
use crate::job::{Place, Problem};

/// An entry to lead to.
#[derive(Debug, Clone, PartialEq)]
pub struct Destination {
    /// The field it is of.
    pub field: &'static Field,
    /// Which of the field's entries; `None` for the first that is drawn.
    pub at: Option<At>,
    /// The item of the entry's list, where it is one.
    pub item: Option<Item>,
}

impl Destination {
    /// Any entry of a field.
    pub const fn any(field: &'static Field) -> Self {
        Self { field, at: None, item: None }
    }

    /// The entry that a problem is about; `None` if it is about the file.
    pub fn of(problem: &Problem) -> Option<Self> {
        let (field, at) = problem.place.field()?;
        Some(Self { field, at: Some(at), item: problem.fault.item() })
    }

    /// Whether an entry is the one: of this field, with this item if it is one of a list, at a place for
    /// which `here` says so.
    fn is(&self, field: &'static Field, item: Option<&Item>, here: impl Fn(&Place) -> bool) -> bool {
        let items_fit = self.item.as_ref().zip(item).is_none_or(|(sought, item)| sought == item);
        self.field == field && items_fit && self.at.is_none_or(|at| here(&Place::Field(field, at)))
    }
}

/// What is sought, and the pass since which it is.
#[derive(Debug, Clone)]
struct Sought {
    destination: Destination,
    since: u64,
}

fn sought_id() -> Id {
    Id::unique("an entry is to take the keyboard")
}

/// An entry that is drawn next and is to take the keyboard.
#[derive(Debug, Clone, Copy, Default)]
struct Reached {
    /// Whether it was led to from afar, and is to stand in the middle then.
    far: bool,
}

fn expected_id() -> Id {
    Id::unique("a new entry is to take the keyboard")
}

fn reached_id() -> Id {
    Id::unique("the entry that is to take the keyboard is drawn next")
}

/// Gives the keyboard to an entry, once it is drawn.
pub(super) fn seek(ctx: &Context, destination: Destination) {
    let since = ctx.cumulative_pass_nr();
    ctx.data_mut(|data| data.insert_temp(sought_id(), Sought { destination, since }));
}

/// Whether an entry is to take the keyboard but has not been drawn yet. What is drawn nowhere is given up
/// after some passes.
pub(super) fn is_sought(ctx: &Context) -> bool {
    /// Folds within folds have opened by then.
    const PASSES: u64 = 6;
    let now = ctx.cumulative_pass_nr();
    let sought: Option<Sought> = ctx.data(|data| data.get_temp(sought_id()));
    let sought = sought.is_some_and(|sought| now < sought.since + PASSES);
    if sought {
        ctx.request_repaint();
    } else {
        ctx.data_mut(|data| data.remove::<Sought>(sought_id()));
    }
    sought
}

/// Whether an entry is still to take the keyboard, be it drawn next or nobody knows where.
pub(super) fn is_pending(ctx: &Context) -> bool {
    ctx.data(|data| {
        data.get_temp::<Sought>(sought_id()).is_some() || data.get_temp::<Reached>(reached_id()).is_some()
    })
}

/// Whether any entry is about to take the keyboard: one that is sought, or a new one.
pub(super) fn is_coming(ctx: &Context) -> bool {
    let expected = ctx.data(|data| data.get_temp::<(&'static str, At)>(expected_id()).is_some());
    expected || is_pending(ctx)
}

/// Says that what is drawn next is an entry of `field`, of this item if it is one of a list, at a place for
/// which `here` says so. Whether it is the one that is sought.
pub(super) fn reach(
    ctx: &Context,
    field: &'static Field,
    item: Option<&Item>,
    here: impl Fn(&Place) -> bool,
) -> bool {
    if is_expected(ctx, field, &here) {
        next_takes_focus(ctx);
        return true;
    }
    let sought: Option<Sought> = ctx.data(|data| data.get_temp(sought_id()));
    let reached = sought.is_some_and(|sought| sought.destination.is(field, item, here));
    if reached {
        ctx.data_mut(|data| {
            data.remove::<Sought>(sought_id());
            data.insert_temp(reached_id(), Reached { far: true });
        });
    }
    reached
}

/// Gives the keyboard to the entry that is drawn next.
pub(super) fn next_takes_focus(ctx: &Context) {
    ctx.data_mut(|data| data.insert_temp(reached_id(), Reached { far: false }));
}

/// Has the entry of this field and place take the keyboard once it is drawn where it stands: nothing is opened to find
/// it, and a pane scrolls no farther than it has to.
pub(super) fn expect(ctx: &Context, field: &'static Field, at: At) {
    ctx.data_mut(|data| data.insert_temp(expected_id(), (field.id, at)));
}

/// Whether this is the entry that is expected; it is expected no longer then.
fn is_expected(ctx: &Context, field: &'static Field, here: impl Fn(&Place) -> bool) -> bool {
    let expected: Option<(&'static str, At)> = ctx.data(|data| data.get_temp(expected_id()));
    let found = expected.is_some_and(|(id, at)| id == field.id && here(&Place::Field(field, at)));
    if found {
        ctx.data_mut(|data| data.remove::<(&'static str, At)>(expected_id()));
    }
    found
}

/// Gives the keyboard to this widget if it is drawn for the entry that is sought.
pub(super) fn take_focus(widget: &Response) {
    hold::note(widget);
    if let Some(Reached { far }) = widget.ctx.data_mut(|data| data.remove_temp(reached_id())) {
        widget.request_focus();
        widget.scroll_to_me(far.then_some(Align::Center));
    }
}

/// Says that nothing that can take the keyboard was drawn for the entry.
pub(super) fn pass_by(ctx: &Context) {
    ctx.data_mut(|data| data.remove::<Reached>(reached_id()));
}
