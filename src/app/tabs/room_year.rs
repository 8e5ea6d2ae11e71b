//! The room's air through the year, as a small picture: humidity by day, the band of damper and drier
//! years, and what the hygrometer read.

use eframe::egui::{
    Align2, Color32, Painter, Pos2, Rect, Role, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2,
};

use crate::air::{Air, IndoorYear};
use crate::app::context::WindowContext;
use crate::app::theme;
use crate::app::widgets::band;
use crate::measure::{Humidity, day_of_year};
use crate::words::say;

/// Height of the picture, and room in it for the figures beside and below, in points.
const HEIGHT: f32 = 96.0;
const LEFT: f32 = 40.0;
const BELOW: f32 = 18.0;
/// Days in a month, on the average.
const MONTH: f32 = 365.0 / 12.0;

/// The picture; its room alone where the year is not known.
pub(super) fn room_year(ui: &mut Ui, context: &WindowContext<'_>) {
    let size = vec2(ui.available_width().min(460.0), HEIGHT);
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
    let Some(year) = &context.assessment.year else { return };
    let (low, high) = range(&year.days);
    let (low, high) = (Humidity::pct(low), Humidity::pct(high));
    response.widget_info(|| {
        WidgetInfo::labeled(Role::Image, true, say!(context.words, "room-year", low = low, high = high))
    });
    let plot = Rect::from_min_max(rect.min + vec2(LEFT, 6.0), rect.max - vec2(8.0, BELOW));
    // 0 to 80% holds every room that people live in.
    let place = |day: f32, humidity: f64| {
        let up = (humidity / 80.0).clamp(0.0, 1.0) as f32;
        pos2(plot.left() + plot.width() * day / 365.0, plot.bottom() - plot.height() * up)
    };
    let painter = ui.painter_at(rect);
    axes(&painter, context, rect, plot, &place);
    let curve = |days: &[Air]| -> Vec<Pos2> {
        days.iter().enumerate().map(|(day, air)| place(day as f32, air.humidity.to_pct())).collect()
    };
    painter.add(Shape::mesh(band_of(year, &place, context.palette.air.gamma_multiply(0.3))));
    painter.line(curve(&year.days), Stroke::new(2.0, context.palette.water));
    for reading in &context.job.survey.rooms {
        let day = day_of_year(reading.date.unwrap_or(context.job.visited)) as f32;
        let at = place(day, reading.humidity.to_pct());
        painter.circle(at, 4.0, context.palette.raised, Stroke::new(1.8, context.palette.ink));
    }
    response.on_hover_text(say!(context.words, "room-year", low = low, high = high));
}

/// The least and the greatest humidity of the days, percent.
fn range(days: &[Air]) -> (f64, f64) {
    days.iter().fold((100.0, 0.0), |(low, high), air| {
        let humidity = air.humidity.to_pct();
        (humidity.min(low), humidity.max(high))
    })
}

/// Where the humidity lies nine times in ten.
fn band_of(year: &IndoorYear, place: &impl Fn(f32, f64) -> Pos2, color: Color32) -> eframe::egui::Mesh {
    let edges = year.range.iter().enumerate();
    band(
        edges.map(|(day, range)| [range.high, range.low].map(|edge| place(day as f32, edge.to_pct()))),
        color,
    )
}

fn axes(
    painter: &Painter,
    context: &WindowContext<'_>,
    rect: Rect,
    plot: Rect,
    place: &impl Fn(f32, f64) -> Pos2,
) {
    let (font, soft) = (theme::note(), context.palette.soft);
    let figures = context.words.figures();
    for percent in [0.0, 40.0, 80.0] {
        let y = place(0.0, percent).y;
        painter.hline(plot.x_range(), y, Stroke::new(0.7, context.palette.line));
        let text = figures.percent(percent, 0);
        painter.text(pos2(plot.left() - 6.0, y), Align2::RIGHT_CENTER, text, font.clone(), soft);
    }
    for (month, message) in super::room::MONTHS.iter().enumerate().step_by(2) {
        let x = place(MONTH * (month as f32 + 0.5), 0.0).x;
        let text = context.words.text(message);
        painter.text(pos2(x, rect.bottom()), Align2::CENTER_BOTTOM, text, font.clone(), soft);
    }
}
