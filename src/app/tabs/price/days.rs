//! The schedule as bars by day.

use eframe::egui::{
    Align, Align2, Grid, Label, Layout, Painter, Rect, RichText, ScrollArea, Sense, Stroke, StrokeKind,
    TextStyle, Ui, pos2, vec2,
};
use jiff::ToSpan as _;
use jiff::civil::Date;

use crate::app::context::WindowContext;
use crate::app::widgets::remark;
use crate::assess::RepairOption;
use crate::repair::{Bar, BarStep, Step, Wait};
use crate::words::{Arg, Say as _, Words, price, say, work};

/// Waits longer than this many days are drawn shorter.
const LONG: f64 = 4.0;
/// As many days as they are drawn for.
const DRAWN: f64 = 1.5;
/// Height of the plan and the chart together.
const HEIGHT: f32 = 330.0;
/// Height of a row.
const ROW: f32 = 18.0;

/// The schedule as bars, with the days over them.
pub(super) fn days(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let (schedule, words) = (&option.schedule, context.words);
    if schedule.bars.is_empty() {
        remark(ui, context.palette, words.text("price-no-schedule"));
        return;
    }
    // However many days and steps there are, what stands below stays where it is.
    ScrollArea::vertical()
        .id_salt("plan")
        .max_height(HEIGHT)
        .min_scrolled_height(HEIGHT)
        .auto_shrink(false)
        .show(ui, |ui| {
            remark(ui, context.palette, price::starts(option, words));
            plan(ui, context, option);
            chart(ui, context, option);
        });
}

/// The steps as bars, with the days over them.
fn chart(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let (schedule, words) = (&option.schedule, context.words);
    let time = Time::new(&schedule.bars, (ui.available_width() * 0.4).clamp(150.0, 310.0));
    // Rows of text, not of buttons.
    let spacing = (ui.spacing().interact_size.y, ui.spacing().item_spacing.y);
    (ui.spacing_mut().interact_size.y, ui.spacing_mut().item_spacing.y) = (ROW, 3.0);
    axis(ui, context, option.starts, &time);
    for (number, step) in option.steps.iter().enumerate() {
        let bars: Vec<&Bar> = schedule.bars.iter().filter(|bar| bar.of_step == number).collect();
        if let Some(name) = name(context, option, step, &bars) {
            row(ui, context, &name, &bars, &time);
        }
    }
    (ui.spacing_mut().interact_size.y, ui.spacing_mut().item_spacing.y) = spacing;
    let closed = say!(words, "price-room-out", days = schedule.room_out);
    remark(ui, context.palette, words.text("price-days-legend"));
    remark(ui, context.palette, closed);
}

/// The days as people plan them: when, who, what.
fn plan(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let (schedule, words) = (&option.schedule, context.words);
    Grid::new("plan").num_columns(2).striped(true).show(ui, |ui| {
        for day in &schedule.days {
            ui.label(work::day_and_people(option.starts, day, words));
            ui.add(Label::new(work::day_work(day, words)).wrap());
            ui.end_row();
        }
    });
    let people = Arg::Number(schedule.person_days.into(), 0);
    remark(ui, context.palette, say!(words, "price-days-total", hours = option.hours, people = people));
    if schedule.needs_helper(context.job.plan.crew) {
        remark(ui, context.palette, words.text("price-helper"));
    }
}

/// What a step's row is called; `None` if it has no row. What takes no time because of what was typed in
/// this room keeps its row, so that nothing below the chart moves while it is typed.
fn name(context: &WindowContext<'_>, option: &RepairOption, step: &Step, bars: &[&Bar]) -> Option<String> {
    match step {
        Step::Do(id) => option
            .tasks
            .iter()
            .find(|task| task.id == *id)
            .map(|task| context.words.called(&task.name).into_owned()),
        Step::Coats(id) if option.tasks.iter().any(|task| task.id == *id) => {
            Some(say!(context.words, "price-bar-coats", coats = context.job.plan.coats))
        }
        Step::Wait(wait) if !bars.is_empty() || *wait == Wait::Acclimation => {
            Some(BarStep::Wait(*wait).say(context.words))
        }
        Step::Coats(_) | Step::Wait(_) => None,
    }
}

/// Days along the chart, long waits drawn short.
struct Time {
    /// Starts and ends of the long waits.
    long: Vec<(f64, f64)>,
    last: f64,
    /// Width of the names beside the bars.
    names: f32,
}

impl Time {
    fn new(bars: &[Bar], names: f32) -> Self {
        let long = bars.iter().filter(|bar| bar.is_wait() && bar.end - bar.start > LONG);
        let long = long.map(|bar| (bar.start, bar.end)).collect();
        Self { long, last: bars.iter().map(|bar| bar.end).fold(1.0, f64::max).ceil(), names }
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

    /// Where a bar is drawn in the row `rect`.
    fn piece(&self, rect: Rect, bar: &Bar) -> Rect {
        let from = self.x(rect, bar.start);
        Rect::from_min_max(
            pos2(from, rect.top() + 3.0),
            pos2(self.x(rect, bar.end).max(from + 2.0), rect.bottom() - 3.0),
        )
    }
}

fn axis(ui: &mut Ui, context: &WindowContext<'_>, first: Date, time: &Time) {
    ui.horizontal(|ui| {
        ui.allocate_exact_size(vec2(time.names, ROW), Sense::hover());
        let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), ROW), Sense::hover());
        let mut free = rect.left();
        for day in 0..time.last as i64 {
            let x = time.x(rect, day as f64);
            // A label needs this many points.
            if x < free || x + 48.0 > rect.right() {
                continue;
            }
            free = x + 56.0;
            let date = first.checked_add(day.days()).unwrap_or(first);
            let text = context.words.figures().short_date(date);
            let (at, font) = (pos2(x, rect.center().y), TextStyle::Small.resolve(ui.style()));
            ui.painter().text(at, Align2::LEFT_CENTER, text, font, context.palette.soft);
        }
    });
}

/// The bars of a step beside its name; the days of each on hover.
fn row(ui: &mut Ui, context: &WindowContext<'_>, name: &str, bars: &[&Bar], time: &Time) {
    ui.horizontal(|ui| {
        ui.allocate_ui_with_layout(vec2(time.names, ROW), Layout::left_to_right(Align::Center), |ui| {
            ui.set_min_width(time.names);
            ui.add(Label::new(RichText::new(name).small()).truncate());
        });
        let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), ROW), Sense::hover());
        for bar in bars {
            draw(ui.painter(), context, bar, rect, time);
        }
        let pointed = response.hover_pos().and_then(|at| {
            bars.iter().find(|bar| time.piece(rect, bar).x_range().expand(2.0).contains(at.x))
        });
        if let Some(bar) = pointed {
            response.on_hover_ui_at_pointer(|ui| {
                ui.label(bar.step.say(context.words));
                ui.label(when(context.words, bar));
            });
        }
    });
}

/// The days of a bar.
fn when(words: &Words, bar: &Bar) -> String {
    let days = bar.days();
    let span = Arg::Id(if days.low == days.high { "one_day" } else { "days" });
    match bar.is_wait() {
        true => say!(words, "price-bar-days-waiting", span = span, from = days.low, to = days.high),
        false => say!(words, "price-bar-days", span = span, from = days.low, to = days.high),
    }
}

fn draw(painter: &Painter, context: &WindowContext<'_>, bar: &Bar, rect: Rect, time: &Time) {
    let piece = time.piece(rect, bar);
    if !bar.is_wait() {
        painter.rect_filled(piece, 2, context.palette.accent);
        return;
    }
    painter.rect_stroke(piece, 2, Stroke::new(1.0, context.palette.soft), StrokeKind::Inside);
    if bar.end - bar.start > LONG {
        let text = say!(context.words, "price-bar-wait", days = Arg::Number(bar.end - bar.start, 0));
        let font = TextStyle::Small.resolve(&painter.ctx().global_style());
        let text = painter.layout_no_wrap(text, font, context.palette.soft);
        if text.size().x < piece.width() - 4.0 {
            painter.galley(piece.center() - text.size() / 2.0, text, context.palette.soft);
        }
    }
}
