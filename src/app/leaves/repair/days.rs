//! The schedule as bars by day.

use eframe::egui::{Align2, FontId, Painter, Rect, Sense, Stroke, StrokeKind, Ui, pos2, vec2};
use jiff::ToSpan as _;
use jiff::civil::Date;

use crate::app::context::Cx;
use crate::app::leaves::remark;
use crate::assess::{RepairOption, date_after};
use crate::measure::show_date;
use crate::repair::{Bar, Outcome};

/// Width of the names beside the bars.
const NAMES: f32 = 168.0;

/// The schedule as bars, with the days over them.
pub(super) fn days(ui: &mut Ui, cx: &Cx<'_>, option: &RepairOption) {
    let schedule = &option.schedule;
    if schedule.bars.is_empty() {
        remark(ui, cx, "Without a crew and a working day there is no schedule.");
        return;
    }
    let last = schedule.bars.iter().map(|bar| bar.end).fold(1.0, f64::max).ceil();
    axis(ui, cx, first_day(cx, option), last);
    for bar in &schedule.bars {
        one(ui, cx, bar, last);
    }
    let out = match schedule.room_out {
        0 => "The room stays in use.".to_owned(),
        1 => "The room cannot be used on 1 day.".to_owned(),
        days => format!("The room cannot be used on {days} days."),
    };
    remark(ui, cx, format!("Filled: the crew works. Outlined: waiting for something to dry or cure. {out}"));
}

/// The day on which the schedule begins.
fn first_day(cx: &Cx<'_>, option: &RepairOption) -> Date {
    let plan = &cx.assessed.plan;
    let seals = matches!(option.outcome, Outcome::Bead { .. }) && !plan.two_visits;
    let mut day = date_after(cx.assessed, if seals { cx.found.seal_day } else { 0 });
    while !plan.weekends && day.weekday().to_monday_zero_offset() > 4 {
        day = day.checked_add(1.days()).unwrap_or(day);
    }
    day
}

fn axis(ui: &mut Ui, cx: &Cx<'_>, first: Date, last: f64) {
    ui.horizontal(|ui| {
        ui.allocate_exact_size(vec2(NAMES, 16.0), Sense::hover());
        let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), 16.0), Sense::hover());
        // A label needs this many points.
        let every = (last * 52.0 / f64::from(rect.width())).ceil().max(1.0);
        let mut day = 0.0;
        while day < last {
            let x = rect.left() + rect.width() * (day / last) as f32;
            let date = first.checked_add((day as i64).days()).unwrap_or(first);
            let shown = show_date(date);
            let text = shown.rsplit_once(' ').map_or(shown.as_str(), |(day, _)| day);
            let font = FontId::proportional(10.5);
            ui.painter().text(pos2(x, rect.center().y), Align2::LEFT_CENTER, text, font, cx.palette.soft);
            day += every;
        }
    });
}

fn one(ui: &mut Ui, cx: &Cx<'_>, bar: &Bar, last: f64) {
    ui.horizontal(|ui| {
        let (name, label) = ui.allocate_exact_size(vec2(NAMES, 16.0), Sense::hover());
        let painter = ui.painter().with_clip_rect(name);
        let font = FontId::proportional(11.5);
        painter.text(name.left_center(), Align2::LEFT_CENTER, &bar.name, font, cx.palette.ink);
        label.on_hover_text(&bar.name);
        let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), 14.0), Sense::hover());
        draw(ui.painter(), cx, bar, rect, last);
        response.on_hover_text(format!(
            "{}: day {} to day {}{}",
            bar.name,
            bar.start.floor() + 1.0,
            bar.end.floor() + 1.0,
            if bar.waiting { ", waiting" } else { "" }
        ));
    });
}

fn draw(painter: &Painter, cx: &Cx<'_>, bar: &Bar, rect: Rect, last: f64) {
    let x = |day: f64| rect.left() + rect.width() * (day / last).clamp(0.0, 1.0) as f32;
    let piece = Rect::from_min_max(
        pos2(x(bar.start), rect.top() + 2.0),
        pos2(x(bar.end).max(x(bar.start) + 2.0), rect.bottom() - 2.0),
    );
    if bar.waiting {
        painter.rect_stroke(piece, 2, Stroke::new(1.0, cx.palette.soft), StrokeKind::Inside);
    } else {
        painter.rect_filled(piece, 2, cx.palette.accent);
    }
}
