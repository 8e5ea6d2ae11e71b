//! The schedule as bars by day.

use eframe::egui::{
    Align, Align2, FontId, Label, Layout, Painter, Rect, RichText, Sense, Stroke, StrokeKind, Ui, pos2, vec2,
};
use jiff::ToSpan as _;
use jiff::civil::Date;

use crate::app::context::WindowContext;
use crate::app::widgets::remark;
use crate::assess::RepairOption;
use crate::repair::Bar;
use crate::words::{Arg, Say as _, say};

/// Waits longer than this many days are drawn shorter.
const LONG: f64 = 4.0;
/// As many days as they are drawn for.
const DRAWN: f64 = 1.5;
/// Width of the names beside the bars.
const NAMES: f32 = 168.0;

/// The schedule as bars, with the days over them.
pub(super) fn days(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let (schedule, words) = (&option.schedule, context.words);
    if schedule.bars.is_empty() {
        remark(ui, context.palette, words.text("price-no-schedule"));
        return;
    }
    let time = Time::new(&schedule.bars);
    axis(ui, context, option.starts, &time);
    for bar in &schedule.bars {
        row(ui, context, bar, &time);
    }
    let closed = say!(words, "price-room-out", days = schedule.room_out);
    remark(ui, context.palette, words.text("price-days-legend"));
    remark(ui, context.palette, closed);
}

/// Days along the chart, long waits drawn short.
struct Time {
    /// Starts and ends of the long waits.
    long: Vec<(f64, f64)>,
    last: f64,
}

impl Time {
    fn new(bars: &[Bar]) -> Self {
        let long = bars.iter().filter(|bar| bar.is_wait() && bar.end - bar.start > LONG);
        let long = long.map(|bar| (bar.start, bar.end)).collect();
        Self { long, last: bars.iter().map(|bar| bar.end).fold(1.0, f64::max).ceil() }
    }

    /// Where a day lies, in days as they are drawn.
    fn drawn(&self, day: f64) -> f64 {
        let saved = self.long.iter().map(|(start, end)| {
            let inside = ((day - start) / (end - start)).clamp(0.0, 1.0);
            inside * (end - start - DRAWN)
        });
        day - saved.sum::<f64>()
    }

    fn x(&self, rect: Rect, day: f64) -> f32 {
        rect.left() + rect.width() * (self.drawn(day) / self.drawn(self.last)).clamp(0.0, 1.0) as f32
    }
}

fn axis(ui: &mut Ui, context: &WindowContext<'_>, first: Date, time: &Time) {
    ui.horizontal(|ui| {
        ui.allocate_exact_size(vec2(NAMES, 16.0), Sense::hover());
        let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), 16.0), Sense::hover());
        let mut free = rect.left();
        for day in 0..time.last as i64 {
            let x = time.x(rect, day as f64);
            // A label needs this many points.
            if x < free || x + 44.0 > rect.right() {
                continue;
            }
            free = x + 50.0;
            let date = first.checked_add(day.days()).unwrap_or(first);
            let text = context.words.figures().short_date(date);
            let (at, font) = (pos2(x, rect.center().y), FontId::proportional(10.5));
            ui.painter().text(at, Align2::LEFT_CENTER, text, font, context.palette.soft);
        }
    });
}

/// A bar with its name, and its days on hover.
fn row(ui: &mut Ui, context: &WindowContext<'_>, bar: &Bar, time: &Time) {
    let (words, days) = (context.words, bar.days());
    let span = Arg::Id(if days.low == days.high { "one_day" } else { "days" });
    let when = match bar.is_wait() {
        true => say!(words, "price-bar-days-waiting", span = span, from = days.low, to = days.high),
        false => say!(words, "price-bar-days", span = span, from = days.low, to = days.high),
    };
    ui.horizontal(|ui| {
        ui.allocate_ui_with_layout(vec2(NAMES, 16.0), Layout::left_to_right(Align::Center), |ui| {
            ui.set_min_width(NAMES);
            ui.add(Label::new(RichText::new(bar.step.say(words)).size(11.5)).truncate());
        });
        let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), 14.0), Sense::hover());
        draw(ui.painter(), context, bar, rect, time);
        response.on_hover_text(when);
    });
}

fn draw(painter: &Painter, context: &WindowContext<'_>, bar: &Bar, rect: Rect, time: &Time) {
    let x = |day: f64| time.x(rect, day);
    let piece = Rect::from_min_max(
        pos2(x(bar.start), rect.top() + 2.0),
        pos2(x(bar.end).max(x(bar.start) + 2.0), rect.bottom() - 2.0),
    );
    if bar.is_wait() {
        painter.rect_stroke(piece, 2, Stroke::new(1.0, context.palette.soft), StrokeKind::Inside);
        if bar.end - bar.start > LONG {
            let text = say!(context.words, "price-bar-wait", days = Arg::Number(bar.end - bar.start, 0));
            let font = FontId::proportional(9.5);
            painter.text(piece.center(), Align2::CENTER_CENTER, text, font, context.palette.soft);
        }
    } else {
        painter.rect_filled(piece, 2, context.palette.accent);
    }
}
