//! The charts: the gap, and under it the boards' moisture and the room's humidity, over the same days. Each
//! has one axis.

use eframe::egui::{self, Align2, Rangef, Response, RichText, Sense, Stroke, Ui, vec2};
use egui_plot::{
    AxisHints, FilledArea, GridMark, HoverPosition, Line, LineStyle, Plot, PlotPoint, PlotPoints, PlotUi,
    Points, Span, Text, VLine,
};
use jiff::ToSpan as _;

use super::curves::{Band, Curves};
use super::events::{Event, events};
use super::{AHEAD, BACK};
use crate::app::context::WindowContext;
use crate::app::tabs::MONTHS;
use crate::app::theme;
use crate::assess::{Story, date_on};
use crate::job::Job;
use crate::measure::Length;
use crate::words::say;

/// Height of the row of names over the gap.
const EVENTS: f32 = 20.0;
/// Room for the figures at the left, so that the days of all charts stand under each other.
const AXIS: f32 = 46.0;
/// From this width on every third month is named, not every sixth.
const ROOMY: f32 = 640.0;
/// Space between the lines of a grid at which their figures begin to show, and show fully.
const TICKS: Rangef = Rangef { min: 12.0, max: 18.0 };
/// A chart is not less high than this.
const LEAST: f32 = 56.0;
/// Below this height a chart has half as many grid lines.
const LOW: f32 = 150.0;
/// Share of the height that the gap keeps where moisture and humidity are shown.
const GAP_SHARE: f32 = 0.52;
/// Top of the moisture scale, per cent.
const MOISTURE_TOP: f64 = 20.0;

/// Draws them; comes to the gap's chart and the day that was picked in any of them.
pub(super) fn charts(ui: &mut Ui, context: &WindowContext<'_>, curves: &Curves) -> (Response, Option<f64>) {
    let room = ui.available_height() - EVENTS - ui.spacing().item_spacing.y;
    let with_air =
        context.view.time.with_air && context.view.presentation.page.is_none() && room > 3.2 * LEAST;
    let height = if with_air { room * GAP_SHARE } else { room };
    let (row, _) = ui.allocate_exact_size(vec2(ui.available_width(), EVENTS), Sense::hover());
    let (units, top) = (context.units(), curves.top_gap);
    let axis = AxisHints::new_y()
        .formatter(move |mark: GridMark, _: &_| Length::mm(mark.value).show(units))
        .tick_label_color(context.palette.gap_high)
        .label_spacing(TICKS)
        .min_thickness(AXIS);
    let every = if ui.available_width() < ROOMY { 6 } else { 3 };
    let plot = plot("gap-line", context, curves, (top, !with_air, height), every).height(height.max(LEAST));
    let shown = plot.custom_y_axes(vec![axis]).show(ui, |plot| {
        keep_heights(plot, top);
        season(plot, context);
        paint_gap(plot, context, curves);
        days(plot, context, curves);
        paint_measured(plot, context, curves);
        picked(plot)
    });
    let transform = shown.transform;
    let at = |day: i64| transform.position_from_point(&PlotPoint::new(day as f64, 0.0)).x;
    let named = named_days(context, curves);
    let stop =
        events(ui, row, named.map(|(day, name, color)| Event { x: at(day), day, name, color }).collect());
    let name = context.words.text("time-line");
    shown.response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::GraphicsObject, true, name.as_ref()));
    let mut day = shown.inner.or(stop.map(|day| day as f64));
    if with_air {
        let height = ((room - height) / 2.0 - ui.spacing().item_spacing.y).max(LEAST);
        let palette = context.palette;
        let moisture = Lesser {
            id: "moisture-line",
            of: "time-line-moisture",
            top: MOISTURE_TOP,
            last: false,
            colors: (palette.water, palette.water),
        };
        day = day.or(moisture.show(ui, context, curves, (&curves.moisture, None), height));
        let humidity = Lesser {
            id: "humidity-line",
            of: "time-line-humidity",
            top: 100.0,
            last: true,
            colors: (palette.air, palette.soft),
        };
        let band = Some(&curves.humidity_band);
        day = day.or(humidity.show(ui, context, curves, (&curves.humidity, band), height));
    }
    (shown.response, day)
}

/// A chart of per cents under the gap.
struct Lesser {
    /// By which its bounds are kept.
    id: &'static str,
    /// The message of what it is of.
    of: &'static str,
    /// Top of its scale.
    top: f64,
    /// Whether the months stand under it.
    last: bool,
    /// The color of its line, and that of its figures.
    colors: (egui::Color32, egui::Color32),
}

impl Lesser {
    /// Draws the line, and its range over the years where it has one; comes to the day that was picked.
    fn show(
        &self,
        ui: &mut Ui,
        context: &WindowContext<'_>,
        curves: &Curves,
        (line, band): (&[[f64; 2]], Option<&Band>),
        height: f32,
    ) -> Option<f64> {
        let every = if ui.available_width() < ROOMY { 6 } else { 3 };
        let plot = plot(self.id, context, curves, (self.top, self.last, height), every).height(height);
        let shown = plot.custom_y_axes(vec![per_cent(context, self.colors.1)]).show(ui, |plot| {
            keep_heights(plot, self.top);
            if let Some((days, low, high)) = band {
                let area = FilledArea::new("nine years in ten", days, low, high);
                plot.add(area.fill_color(self.colors.0.gamma_multiply(0.2)));
            }
            let line = Line::new(self.id, PlotPoints::from(line.to_vec()));
            plot.line(line.color(self.colors.0).width(1.8));
            days(plot, context, curves);
            name_in_corner(plot, context, self.of, curves);
            picked(plot)
        });
        shown.inner
    }
}

fn per_cent(context: &WindowContext<'_>, color: egui::Color32) -> AxisHints<'static> {
    let figures = context.words.figures().clone();
    AxisHints::new_y()
        .formatter(move |mark: GridMark, _: &_| figures.percent(mark.value, 0))
        .tick_label_color(color)
        .label_spacing(TICKS)
        .min_thickness(AXIS)
}

/// A chart over all days from 0 to `top`, so high, with the months under it if it is the last one.
fn plot(
    name: &'static str,
    context: &WindowContext<'_>,
    curves: &Curves,
    (top, last, height): (f64, bool, f32),
    every: i8,
) -> Plot<'static> {
    let job = std::sync::Arc::clone(&context.assessment.job);
    let (hover_job, figures, start) =
        (std::sync::Arc::clone(&job), context.words.figures().clone(), curves.start);
    let months = MONTHS.map(|month| context.words.text(month).into_owned());
    let visited = job.visited;
    let month_name = move |mark: GridMark, _: &_| {
        let date = visited.checked_add((mark.value.round() as i32).days());
        date.map_or_else(
            |_| String::new(),
            |date| {
                format!(
                    "{} {:02}",
                    months[usize::from(date.month().unsigned_abs()) - 1],
                    date.year().rem_euclid(100)
                )
            },
        )
    };
    let axis = AxisHints::new_x()
        .label_spacing(Rangef::new(20.0, 34.0))
        .tick_label_font(theme::note())
        .formatter(month_name);
    // Bounds are remembered by this name, and another job has another past.
    Plot::new((name, curves.start))
        .allow_zoom(false)
        .allow_drag(false)
        .allow_scroll(false)
        .allow_boxed_zoom(false)
        .allow_double_click_reset(false)
        .show_grid([true, true])
        .grid_color(context.palette.line)
        .default_x_bounds(curves.start as f64, AHEAD as f64)
        .x_grid_spacer(move |_| month_marks(&job, start, every))
        .y_grid_spacer(move |_| {
            let steps = if height < LOW { 2 } else { 4 };
            let step = top / f64::from(steps);
            (0..=steps).map(|n| GridMark { value: step * f64::from(n), step_size: step }).collect()
        })
        .custom_x_axes(if last { vec![axis] } else { vec![] })
        .label_formatter(move |at: &HoverPosition<'_>| {
            let (HoverPosition::NearDataPoint { position, .. } | HoverPosition::Elsewhere { position }) = at;
            Some(figures.date(date_on(&hover_job, position.x.round() as i64)))
        })
}

/// Heights from 0 to `top`, with a little air. They do not follow from what is drawn: words at the upper edge would push
/// it higher with every frame.
fn keep_heights(plot: &mut PlotUi<'_>, top: f64) {
    plot.set_plot_bounds_y(-0.04 * top..=1.08 * top);
}

/// The day under the pointer while it is pressed.
fn picked(plot: &PlotUi<'_>) -> Option<f64> {
    let pressed = plot.response().is_pointer_button_down_on() || plot.response().clicked();
    if pressed { plot.pointer_coordinate().map(|at| at.x) } else { None }
}

/// What a lesser chart is of, in its corner.
fn name_in_corner(plot: &mut PlotUi<'_>, context: &WindowContext<'_>, message: &str, curves: &Curves) {
    let bounds = plot.plot_bounds();
    let (right, down) = (plot.transform().dvalue_dpos()[0], plot.transform().dvalue_dpos()[1]);
    let at = PlotPoint::new(curves.start as f64 + 6.0 * right, bounds.max()[1] + 3.0 * down);
    let words = RichText::new(context.words.text(message).as_ref()).small().color(context.palette.soft);
    plot.text(Text::new("", at, words).anchor(Align2::LEFT_TOP));
}

/// The weeks in which a bead lasts longest.
fn season(plot: &mut PlotUi<'_>, context: &WindowContext<'_>) {
    let season = context.assessment.season.as_ref();
    let Some(season) = season.filter(|season| season.best.high - season.best.low < 50) else { return };
    let weeks = (season.best.low * 7) as f64..=((season.best.high + 1) * 7) as f64;
    let middle = 0.5 * (weeks.start() + weeks.end());
    let span = Span::new("", weeks).axis(egui_plot::Axis::X).border_width(0.0);
    plot.span(span.fill(context.palette.good.gamma_multiply(0.16)));
    let words = RichText::new(context.words.text("time-line-best-weeks").as_ref()).small();
    let (bounds, down) = (plot.plot_bounds(), plot.transform().dvalue_dpos()[1]);
    let at = PlotPoint::new(middle, bounds.max()[1] + 3.0 * down);
    plot.text(Text::new("", at, words.color(context.palette.good)).anchor(Align2::CENTER_TOP));
}

/// The gap with its range, the kept curve, and what the bead takes.
fn paint_gap(plot: &mut PlotUi<'_>, context: &WindowContext<'_>, curves: &Curves) {
    let ink = context.palette.gap_high;
    if curves.known {
        let (days, low, high) = &curves.gap_band;
        let area = FilledArea::new("nine in ten", days, low, high);
        plot.add(area.fill_color(ink.gamma_multiply(0.16)));
        plot.line(Line::new("gap", PlotPoints::from(curves.gap.clone())).color(ink).width(2.2));
    }
    paint_reference_curve(plot, context);
    paint_limits(plot, context, curves);
}

/// What was measured, each a dot with its range.
fn paint_measured(plot: &mut PlotUi<'_>, context: &WindowContext<'_>, curves: &Curves) {
    for measured in &curves.measured {
        let day = measured.day as f64;
        let whisker = vec![[day, measured.range.low.to_mm()], [day, measured.range.high.to_mm()]];
        plot.line(Line::new("", PlotPoints::from(whisker)).color(context.palette.ink).width(2.4));
        let dot = Points::new("", PlotPoints::from(vec![[day, measured.gap.to_mm()]]));
        plot.points(dot.radius(4.0).color(context.palette.ink));
    }
}

/// Lines on the days that the story turns on, and on the day shown.
fn days(plot: &mut PlotUi<'_>, context: &WindowContext<'_>, curves: &Curves) {
    for (day, name, color) in named_days(context, curves) {
        plot.vline(VLine::new(name, day as f64).color(color).width(1.2));
    }
    let shown = Stroke::new(2.0, context.palette.accent);
    plot.vline(VLine::new("shown", context.day() as f64).stroke(shown));
}

/// The days that the story turns on, with their names and the colors of their lines.
fn named_days(
    context: &WindowContext<'_>,
    curves: &Curves,
) -> impl Iterator<Item = (i64, String, egui::Color32)> {
    let palette = context.palette;
    let seen = curves.start..=AHEAD;
    stops(&curves.story, curves.known)
        .into_iter()
        .zip([palette.soft, palette.ink, palette.good, palette.gap_high])
        .filter_map(move |((day, message), color)| {
            let day = day.filter(|day| seen.contains(day))?;
            Some((day, context.words.text(message).into_owned(), color))
        })
        .collect::<Vec<_>>()
        .into_iter()
}

/// The days that a story turns on, with the messages of their names.
pub(super) const fn stops(story: &Story, known: bool) -> [(Option<i64>, &'static str); 4] {
    [
        (story.installed, "time-line-installed"),
        (Some(0), "time-line-today"),
        (story.sealed, "time-line-sealed"),
        (if known { Some(story.widest) } else { None }, "time-line-widest"),
    ]
}

/// The gaps between which the bead holds, each a line with its name.
fn paint_limits(plot: &mut PlotUi<'_>, context: &WindowContext<'_>, curves: &Curves) {
    let Some((from, low, high)) = curves.limits else { return };
    let color = context.palette.good;
    // A row of text and a little air, on the scale of the plot.
    let row = f64::from(theme::note().size + 6.0) * plot.transform().dvalue_dpos()[1].abs();
    let (bottom, top) = (plot.plot_bounds().min()[1], plot.plot_bounds().max()[1]);
    let before_the_edge = AHEAD as f64 - 8.0 * plot.transform().dvalue_dpos()[0].abs();
    let places = label_places((low, high), row, (bottom, top));
    for ((message, limit), middle) in
        [("time-line-squeezed", low), ("time-line-torn", high)].into_iter().zip(places)
    {
        // A limit far above all gaps would flatten them, and one at nothing is never passed.
        if limit > top || limit <= 0.0 {
            continue;
        }
        let line = Line::new(message, PlotPoints::from(vec![[from, limit], [AHEAD as f64, limit]]));
        plot.line(line.color(color).width(1.0).style(LineStyle::dashed_loose()));
        let words = RichText::new(context.words.text(message).as_ref()).small().color(color);
        let at = PlotPoint::new(before_the_edge, middle);
        plot.text(Text::new("", at, words).anchor(Align2::RIGHT_CENTER));
    }
}

/// The middles of the names of a lower and a higher limit, each `row` high: the lower one's under its line
/// and the higher one's over it, but within the plot and off each other.
fn label_places((low, high): (f64, f64), row: f64, (bottom, top): (f64, f64)) -> [f64; 2] {
    let half = row / 2.0;
    let inside = |middle: f64| middle.min(top - half).max(bottom + half);
    let lower = if low - row >= bottom { low - half } else { inside(low + half) };
    let higher = if high + row <= top { high + half } else { inside(high - half) };
    match higher - lower < row {
        false => [lower, higher],
        true if lower + 1.5 * row <= top => [lower, lower + row],
        true => [inside(higher - row), higher],
    }
}

/// The curve that was kept, paler than the one of now.
fn paint_reference_curve(plot: &mut PlotUi<'_>, context: &WindowContext<'_>) {
    let Some(kept) = &context.view.time.reference else { return };
    let color = context.palette.soft;
    let at = kept.gap.get(kept.gap.len() / 2).copied().unwrap_or_default();
    plot.line(Line::new("kept", PlotPoints::from(kept.gap.clone())).color(color).width(1.6));
    let name = RichText::new(say!(context.words, "time-line-kept", name = &kept.name)).small().color(color);
    plot.text(Text::new("", PlotPoint::new(at[0], at[1]), name).anchor(Align2::LEFT_BOTTOM));
    if let Some((from, low, high)) = kept.limits {
        for limit in [low, high] {
            let ends = PlotPoints::from(vec![[from, limit], [AHEAD as f64, limit]]);
            plot.line(
                Line::new("kept limits", ends).color(color).width(0.8).style(LineStyle::dashed_loose()),
            );
        }
    }
}

/// Grid marks on the first of each `every`th month, January among them.
fn month_marks(job: &Job, start: i64, every: i8) -> Vec<GridMark> {
    let first = job.visited.checked_sub((BACK as i32).days()).unwrap_or(job.visited);
    let mut month = first.first_of_month();
    let mut marks = Vec::new();
    for _ in 0..48 {
        if let Ok(span) = job.visited.until(month)
            && month.month() % every == 1
            && (start..=AHEAD).contains(&i64::from(span.get_days()))
        {
            marks.push(GridMark { value: f64::from(span.get_days()), step_size: 91.0 });
        }
        match month.checked_add(1.month()) {
            Ok(next) => month = next,
            Err(_) => break,
        }
    }
    marks
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_of_limits_stay_in_the_plot_and_off_each_other() {
        let row = 0.1;
        for low in 0..=24 {
            for high in low..=24 {
                let (low, high) = (f64::from(low) / 20.0 - 0.1, f64::from(high) / 20.0 - 0.1);
                let [lower, higher] = label_places((low, high), row, (0.0, 1.0));
                assert!(higher - lower > row - 1e-9, "{low} {high}: {lower} {higher}");
                assert!(lower > 0.05 - 1e-9 && higher < 0.95 + 1e-9, "{low} {high}: {lower} {higher}");
            }
        }
        // Where there is room, each is on the side of its line where the bead does not hold.
        assert_eq!(label_places((0.3, 0.7), 0.1, (0.0, 1.0)), [0.25, 0.75]);
    }
}
