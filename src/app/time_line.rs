//! The time line: humidity, board moisture and gap over the time from the install to two years
//! ahead, with the best weeks, the day of sealing and today. Drag through it and the drawing and
//! the joint section follow.
//!
//! The three curves have scales of their own, so all are drawn from 0 to 1: the gap over the axis
//! on the left, moisture (0 to 20 %) and humidity (0 to 100 %) over the axis on the right.

use eframe::egui::{self, Label, RichText, Stroke, TextStyle, Ui};
use egui_plot::{
    AxisHints, FilledArea, GridMark, HPlacement, HoverPosition, Line, LineStyle, Plot, PlotPoint, PlotPoints,
    Span, Text, VLine,
};

use super::command::Command;
use super::context::WindowContext;
use super::icon::Icon;
use super::theme;
use super::widgets::text_width;
use crate::assess::{SectionState, age, date_after, visit_day};
use crate::measure::Length;
use crate::words::say;

/// Days ahead that are shown.
const AHEAD: i64 = 730;
/// Days that go by in a frame while they play.
const DAYS_A_FRAME: i64 = 3;
/// Days back that are shown at most.
const BACK: i64 = 400;
/// Top of the moisture scale, per cent.
const MOISTURE_TOP: f64 = 20.0;
/// Every how many days a curve has a point.
const STEP: usize = 3;

pub(super) fn time_line(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some(state) = context.shown_section() else {
        ui.vertical_centered(|ui| {
            ui.add_space(60.0);
            ui.label(RichText::new(context.words.text("time-line-empty")).color(context.palette.soft));
        });
        return;
    };
    let curves = Curves::new(context, state);
    play(ui, context);
    let day = context.view.time.day;
    let response = plot(ui, context, &curves, state);
    if let Some(picked) = response {
        let picked = (picked.round() as i64).clamp(0, AHEAD);
        if picked != day {
            context.push(Command::Day(picked));
        }
    }
}

/// Lets the days run while they play.
fn play(ui: &Ui, context: &mut WindowContext<'_>) {
    if !context.view.time.playing {
        return;
    }
    let next = context.view.time.day + DAYS_A_FRAME;
    if next > AHEAD {
        context.view.time.playing = false;
    }
    context.push(Command::Day(next.min(AHEAD)));
    ui.ctx().request_repaint_after(std::time::Duration::from_millis(33));
}

/// Keeps the gap's curve as it is now, or lets a kept one go.
pub(super) fn keep_reference_curve(ctx: &egui::Context, app: &mut super::App) {
    if app.view.time.reference.take().is_some() {
        return;
    }
    let words = app.words();
    let mut commands = Vec::new();
    let context = app.context(theme::palette(ctx), &words, &mut commands);
    let Some(state) = context.shown_section() else { return };
    let curves = Curves::new(&context, state);
    let scale = curves.top_gap;
    let reference_curve = super::view::ReferenceCurve {
        name: name(&context, state),
        gap: curves.gap.iter().map(|[day, gap]| [*day, gap * scale]).collect(),
        limits: curves.limits.map(|(day, low, high)| (day, low * scale, high * scale)),
    };
    app.view.time.reference = Some(reference_curve);
}

/// Whose gap is told.
fn name(context: &WindowContext<'_>, state: &SectionState) -> String {
    match &context.view.selection.joint {
        Some(selected) => say!(context.words, "joint-bar-joint", joint = &selected.joint),
        None => {
            let section = &context.assessment.job.surfaces[state.surface].sections[state.section];
            say!(context.words, "time-line-section", section = &section.name)
        }
    }
}

/// The curves as plot points.
struct Curves {
    gap: Vec<[f64; 2]>,
    band: (Vec<f64>, Vec<f64>, Vec<f64>),
    moisture: Vec<[f64; 2]>,
    humidity: Vec<[f64; 2]>,
    /// Humidity nine years in ten: days, low and high.
    air_band: (Vec<f64>, Vec<f64>, Vec<f64>),
    /// Day of sealing, and the gaps between which the bead holds.
    limits: Option<(f64, f64, f64)>,
    top_gap: f64,
    start: i64,
    /// Whether any reading says how wide the gap is.
    known: bool,
}

impl Curves {
    fn new(context: &WindowContext<'_>, state: &SectionState) -> Self {
        let job = &*context.assessment.job;
        let visit = visit_day(job);
        let age = age(job);
        let start = -age.unwrap_or(0).min(BACK);
        // A selected joint tells its own gap, else the section its mean.
        let selected = context.selected().map(|(_, joint)| *joint);
        let gap_on = |day: usize| match &selected {
            Some(joint) => context.assessment.gap_on(joint, day).unwrap_or_default().to_mm(),
            None => state.mean_gap_on(day).to_mm(),
        };
        let band_on = |day: usize| match &selected {
            Some(joint) => context.assessment.gap_band_on(joint, day).unwrap_or_default(),
            None => state.mean_gap_band(day),
        };
        let ahead: Vec<usize> = (0..=AHEAD as usize).step_by(STEP).collect();
        let gaps: Vec<f64> = ahead.iter().map(|&day| gap_on(day)).collect();
        let bands: Vec<_> = ahead.iter().map(|&day| band_on(day)).collect();
        let limits = limits(context, state, &gap_on);
        let reference_curve = context
            .view
            .time
            .reference
            .iter()
            .flat_map(|reference_curve| &reference_curve.gap)
            .map(|[_, gap]| *gap);
        let highs = bands.iter().map(|band| band.high.to_mm());
        let widest = gaps.iter().copied().chain(reference_curve).chain(highs).fold(0.0, f64::max);
        let top_gap = (Length::mm(widest) * 1.05).axis_top(context.units()).to_mm();
        let days: Vec<f64> = ahead.iter().map(|&day| day as f64).collect();
        let moisture = |day: i64| state.moisture_on(visit, day).to_pct() / MOISTURE_TOP;
        let humidity = |day: i64| {
            let index = (visit + day).rem_euclid(365) as usize;
            context
                .assessment
                .year
                .as_ref()
                .and_then(|year| year.days.get(index))
                .map_or(0.0, |air| air.humidity.to_fraction())
        };
        let humidity_band = |day: i64| {
            let index = (visit + day).rem_euclid(365) as usize;
            let year = context.assessment.year.as_ref();
            year.and_then(|year| year.range.get(index))
                .map_or([0.0; 2], |range| [range.low.to_fraction(), range.high.to_fraction()])
        };
        let all = || (start..=AHEAD).step_by(STEP);
        Self {
            band: (
                days.clone(),
                bands.iter().map(|band| band.low.to_mm() / top_gap).collect(),
                bands.iter().map(|band| band.high.to_mm() / top_gap).collect(),
            ),
            gap: days.iter().zip(&gaps).map(|(&day, gap)| [day, gap / top_gap]).collect(),
            moisture: all().map(|day| [day as f64, moisture(day)]).collect(),
            humidity: all().map(|day| [day as f64, humidity(day)]).collect(),
            air_band: (
                all().map(|day| day as f64).collect(),
                all().map(|day| humidity_band(day)[0]).collect(),
                all().map(|day| humidity_band(day)[1]).collect(),
            ),
            limits: limits.map(|(day, low, high)| (day, low / top_gap, high / top_gap)),
            top_gap,
            start,
            known: match &selected {
                Some(joint) => joint.gap.is_some(),
                None => state.gaps.mean > Length::ZERO || state.gaps.measured > 0,
            },
        }
    }
}

/// The day of sealing, and the gaps in mm between which a bead put in then stays within its class; `None`
/// where none is.
fn limits(
    context: &WindowContext<'_>,
    state: &SectionState,
    gap_on: &impl Fn(usize) -> f64,
) -> Option<(f64, f64, f64)> {
    let bead = context.assessment.bead(state)?;
    let sealed = gap_on(context.assessment.seal_day);
    let fills = sealed >= context.assessment.job.plan.narrowest.to_mm();
    fills.then(|| {
        let limits = bead.limits(Length::mm(sealed));
        let low = sealed - limits.close_hidden.to_mm();
        (context.assessment.seal_day as f64, low.max(0.0), sealed + limits.open_hidden.to_mm())
    })
}

/// Draws the plot; returns where it was clicked or dragged to.
fn plot(ui: &mut Ui, context: &mut WindowContext<'_>, curves: &Curves, state: &SectionState) -> Option<f64> {
    let mut asked = None;
    let job = &*context.assessment.job;
    let palette = context.palette;
    let (units, top_gap) = (context.units(), curves.top_gap);
    let name = name(context, state);
    ui.horizontal(|ui| {
        // The buttons first: they stay where they are while the date runs.
        let play = if context.view.time.playing { Icon::Pause } else { Icon::Play };
        if play.button(ui, &context.words.text("cmd-play"), true).clicked() {
            asked = Some(Command::Play);
        }
        let kept = context.view.time.reference.is_some();
        let reference = if kept { "time-line-clear-reference" } else { "time-line-keep-reference" };
        if Icon::ReferenceCurve.button(ui, &context.words.text(reference), true).clicked() {
            asked = Some(Command::ReferenceCurve);
        }
        ui.add(Label::new(RichText::new(name).strong()).truncate());
        let shown = date_after(job, context.day());
        let gap = shown_section_gap(context, state);
        let day = say!(context.words, "time-line-day", date = shown, gap = &gap);
        ui.add(Label::new(day).truncate());
        legend(ui, context);
    });
    let (start_date, start) = (job.clone(), curves.start);
    let hover_date = job.clone();
    let (figures, moisture_figures) = (context.words.figures().clone(), context.words.figures().clone());
    let every = if ui.available_width() < 420.0 { 6 } else { 3 };
    let gap_axis = AxisHints::new_y()
        .formatter(move |mark: GridMark, _range: &_| Length::mm(mark.value * top_gap).show(units))
        .tick_label_color(palette.gap_high)
        .min_thickness(38.0);
    let right_axis = AxisHints::new_y()
        .placement(HPlacement::Right)
        .formatter(move |mark: GridMark, _range: &_| moisture_figures.percent(mark.value * MOISTURE_TOP, 0))
        .tick_label_color(palette.water)
        .min_thickness(34.0);
    // Bounds are remembered by this name, and another job has another past.
    let plot = Plot::new(("time line", curves.start))
        .height(ui.available_height())
        .allow_zoom(false)
        .allow_drag(false)
        .allow_scroll(false)
        .allow_boxed_zoom(false)
        .allow_double_click_reset(false)
        .show_grid([true, true])
        .grid_color(palette.line)
        .include_y(0.0)
        .include_y(1.0)
        .default_x_bounds(curves.start as f64, AHEAD as f64)
        .x_grid_spacer(move |_input| month_marks(&start_date, start, every))
        .y_grid_spacer(|_input| {
            (0..=4).map(|n| GridMark { value: f64::from(n) / 4.0, step_size: 0.25 }).collect()
        })
        .custom_x_axes(vec![
            AxisHints::new_x()
                .label_spacing(egui::Rangef::new(20.0, 34.0))
                .tick_label_font(theme::note())
                .formatter(month_name(job)),
        ])
        .custom_y_axes(vec![gap_axis, right_axis])
        .label_formatter(move |at: &HoverPosition<'_>| {
            let position = match at {
                HoverPosition::NearDataPoint { position, .. } | HoverPosition::Elsewhere { position } => {
                    position
                }
            };
            let day = position.x.round();
            (day >= 0.0).then(|| figures.date(date_after(&hover_date, day as usize)))
        });
    let response = plot.show(ui, |plot| {
        if let Some(season) = context.assessment.season.as_ref().filter(|s| s.best.high - s.best.low < 50) {
            let weeks = (season.best.low * 7) as f64..=((season.best.high + 1) * 7) as f64;
            let span = Span::new("", weeks).axis(egui_plot::Axis::X).border_width(0.0);
            plot.span(span.fill(palette.good.gamma_multiply(0.2)));
        }
        let (days, low, high) = &curves.band;
        if curves.known {
            let area = FilledArea::new("nine in ten", days, low, high);
            plot.add(area.fill_color(palette.gap_high.gamma_multiply(0.18)));
        }
        let (days, low, high) = &curves.air_band;
        plot.add(
            FilledArea::new("nine years in ten", days, low, high)
                .fill_color(palette.air.gamma_multiply(0.12)),
        );
        let humidity = Line::new("humidity", points(&curves.humidity));
        plot.line(humidity.color(palette.air).width(1.0).style(LineStyle::dotted_dense()));
        let moisture = Line::new("moisture", points(&curves.moisture));
        plot.line(moisture.color(palette.water).width(1.5).style(LineStyle::dashed_dense()));
        if curves.known {
            plot.line(Line::new("gap", points(&curves.gap)).color(palette.gap_high).width(2.2));
        }
        paint_reference_curve(plot, context, top_gap);
        paint_limits(plot, context, curves);
        plot.vline(VLine::new("visit", 0.0).color(palette.soft).width(1.0));
        plot.vline(VLine::new("sealing", context.assessment.seal_day as f64).color(palette.good).width(1.5));
        plot.vline(VLine::new("shown", context.day() as f64).stroke(Stroke::new(2.0, palette.accent)));
        let pressed = plot.response().is_pointer_button_down_on() || plot.response().clicked();
        if pressed { plot.pointer_coordinate().map(|at| at.x) } else { None }
    });
    let name = context.words.text("time-line");
    response
        .response
        .widget_info(|| egui::WidgetInfo::labeled(egui::Role::GraphicsObject, true, name.as_ref()));
    let inner = response.inner;
    context.commands.extend(asked);
    inner
}

/// The gaps between which the bead holds, each a line with its name.
fn paint_limits(plot: &mut egui_plot::PlotUi<'_>, context: &WindowContext<'_>, curves: &Curves) {
    let Some((from, low, high)) = curves.limits else { return };
    let color = context.palette.good;
    for (message, limit) in [("time-line-squeezed", low), ("time-line-torn", high)] {
        let line = Line::new(message, points(&[[from, limit], [AHEAD as f64, limit]]));
        plot.line(line.color(color).width(1.0).style(LineStyle::dashed_loose()));
    }
    // A row of text and a little air, on the scale of the plot.
    let row = f64::from(theme::note().size + 6.0) * plot.transform().dvalue_dpos()[1].abs();
    let bounds = plot.plot_bounds();
    let (bottom, top) = (bounds.min()[1], bounds.max()[1]);
    let before_the_edge = AHEAD as f64 - 8.0 * plot.transform().dvalue_dpos()[0].abs();
    let places = label_places((low, high), row, (bottom, top));
    for (message, middle) in ["time-line-squeezed", "time-line-torn"].into_iter().zip(places) {
        let words = RichText::new(context.words.text(message).as_ref()).small().color(color);
        let at = PlotPoint::new(before_the_edge, middle);
        plot.text(Text::new("", at, words).anchor(egui::Align2::RIGHT_CENTER));
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
fn paint_reference_curve(plot: &mut egui_plot::PlotUi<'_>, context: &WindowContext<'_>, top_gap: f64) {
    let Some(reference_curve) = &context.view.time.reference else { return };
    let color = context.palette.soft;
    let gap: Vec<[f64; 2]> = reference_curve.gap.iter().map(|[day, gap]| [*day, gap / top_gap]).collect();
    let at = gap.get(gap.len() / 8).copied().unwrap_or_default();
    plot.line(Line::new("kept", points(&gap)).color(color).width(1.6));
    let name = say!(context.words, "time-line-kept", name = &reference_curve.name);
    let name = RichText::new(name).small().color(color);
    plot.text(Text::new("", PlotPoint::new(at[0], at[1]), name).anchor(egui::Align2::LEFT_BOTTOM));
    if let Some((from, low, high)) = reference_curve.limits {
        for limit in [low, high] {
            let ends = [[from, limit / top_gap], [AHEAD as f64, limit / top_gap]];
            let line = Line::new("kept limits", points(&ends));
            plot.line(line.color(color).width(0.8).style(LineStyle::dashed_loose()));
        }
    }
}

/// What the lines are, each with a sample of itself.
fn legend(ui: &mut Ui, context: &WindowContext<'_>) {
    let palette = context.palette;
    let samples: [(&str, egui::Color32, f32, f32); 3] = [
        ("time-line-gap", palette.gap_high, 2.2, 0.0),
        ("time-line-moisture", palette.water, 1.5, 5.0),
        ("time-line-humidity", palette.air, 1.2, 2.0),
    ];
    let words = context.words;
    let between = ui.spacing().item_spacing.x;
    let width_of = |message: &str, sample: f32| {
        text_width(ui, &words.text(message), &TextStyle::Small) + sample + 2.0 * between
    };
    let curves: f32 = samples.iter().map(|(message, ..)| width_of(message, 16.0)).sum();
    let weeks = width_of("time-line-best-weeks", 18.0);
    // Either all of it or none: the axes say it too.
    if ui.available_width() < curves {
        return;
    }
    for (message, color, width, dash) in samples {
        let (rect, _) = ui.allocate_exact_size(egui::vec2(16.0, 14.0), egui::Sense::hover());
        let ends = [rect.left_center(), rect.right_center()];
        let stroke = Stroke::new(width, color);
        if dash > 0.0 {
            ui.painter().extend(egui::Shape::dashed_line(&ends, stroke, dash, dash));
        } else {
            ui.painter().line_segment(ends, stroke);
        }
        let shown = ui.label(RichText::new(context.words.text(message)).small());
        if message == "time-line-humidity" {
            shown.on_hover_text(context.words.text("time-line-humidity.hint"));
        }
    }
    let narrow =
        context.assessment.season.as_ref().is_some_and(|season| season.best.high - season.best.low < 50);
    if narrow && ui.available_width() > weeks {
        ui.add_space(4.0);
        let (rect, _) = ui.allocate_exact_size(egui::vec2(14.0, 12.0), egui::Sense::hover());
        ui.painter().rect_filled(rect, 2, palette.good.gamma_multiply(0.3));
        ui.label(RichText::new(context.words.text("time-line-best-weeks")).small());
    }
}

fn points(points: &[[f64; 2]]) -> PlotPoints<'static> {
    PlotPoints::from(points.to_vec())
}

/// The gap on the day shown, in words.
fn shown_section_gap(context: &WindowContext<'_>, state: &SectionState) -> String {
    let words = context.words;
    match context.selected() {
        Some((_, joint)) => match (context.assessment.gap_on(joint, context.day()), joint.gap) {
            (Some(gap), Some(known)) if known.measured => words.figures().length(gap),
            (Some(gap), Some(_)) => say!(words, "time-line-about", gap = gap),
            _ => words.text("time-line-no-reading").into_owned(),
        },
        None if state.gaps.measured == 0 && state.gaps.mean == Length::ZERO => {
            words.text("time-line-no-reading").into_owned()
        }
        None => words.figures().length(state.mean_gap_on(context.day())),
    }
}

/// Grid marks on the first of each `every`th month, January among them.
fn month_marks(job: &crate::job::Job, start: i64, every: i8) -> Vec<GridMark> {
    use jiff::ToSpan as _;
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

fn month_name(job: &crate::job::Job) -> impl Fn(GridMark, &std::ops::RangeInclusive<f64>) -> String + use<> {
    use jiff::ToSpan as _;
    let visited = job.visited;
    move |mark, _range| {
        let day = (mark.value.round() as i32).days();
        visited.checked_add(day).map_or_else(|_| String::new(), |date| date.strftime("%b %y").to_string())
    }
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
