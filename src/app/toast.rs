//! What the window tells after a command: over the drawing's lower edge, so that nothing moves, until
//! the next command or until it is put away.

use std::time::{Duration, Instant};

use eframe::egui::{
    Align2, Area, Color32, Context, Frame, Id, Label, Margin, Order, Rect, RichText, Stroke, Ui, vec2,
};

use super::icon::Icon;
use super::theme;
use crate::words::Words;

/// A person has read good news in this time; it goes by itself. Bad news stays.
const READ: Duration = Duration::from_secs(10);

/// A message to the user.
#[derive(Debug, Clone)]
pub(super) struct Toast {
    text: String,
    /// Whether something went wrong.
    fault: bool,
    since: Instant,
}

impl Toast {
    /// Something was done.
    pub fn good(text: String) -> Self {
        Self { text, fault: false, since: Instant::now() }
    }

    /// Something went wrong.
    pub fn fault(text: String) -> Self {
        Self { fault: true, ..Self::good(text) }
    }
}

/// Shows the message at the foot of `over`; returns whether it was dismissed.
pub(super) fn toast(ctx: &Context, words: &Words, toast: &Toast, over: Rect) -> bool {
    let palette = theme::palette(ctx);
    let (icon, color) = if toast.fault { (Icon::Warning, palette.error) } else { (Icon::Good, palette.good) };
    if !toast.fault {
        let left = READ.saturating_sub(toast.since.elapsed());
        if left.is_zero() {
            return true;
        }
        ctx.request_repaint_after(left);
    }
    bubble(ctx, over, color, |ui| {
        icon.mark(ui, Stroke::new(1.6, color));
        ui.vertical(|ui| {
            ui.set_max_width((ui.available_width() - 36.0).max(200.0));
            ui.add(Label::new(RichText::new(&toast.text).color(color)).wrap());
        });
        Icon::Remove.button(ui, &words.text("dismiss"), true).clicked()
    })
}

/// Shows what takes its time; returns whether it was canceled.
pub(super) fn lasting(ctx: &Context, words: &Words, text: &str, over: Rect) -> bool {
    bubble(ctx, over, theme::palette(ctx).accent, |ui| {
        ui.label(text);
        ui.button(words.text("cancel")).clicked()
    })
}

fn bubble(ctx: &Context, over: Rect, edge: Color32, add: impl FnOnce(&mut Ui) -> bool) -> bool {
    let palette = theme::palette(ctx);
    let mut asked = false;
    let foot = over.center_bottom() - vec2(0.0, 30.0);
    let area = Area::new(Id::unique("toast")).order(Order::Foreground).pivot(Align2::CENTER_BOTTOM);
    area.fixed_pos(foot).show(ctx, |ui| {
        let frame = Frame::popup(ui.style()).stroke(Stroke::new(1.5, edge));
        frame.fill(palette.raised).inner_margin(Margin::symmetric(12, 8)).show(ui, |ui| {
            ui.horizontal_top(|ui| {
                ui.set_max_width((over.width() - 60.0).max(280.0));
                asked = add(ui);
            });
        });
    });
    asked
}
