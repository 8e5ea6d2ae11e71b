//! The watch: how the stack dries, when it is ready, and what would bring that forward.

use eframe::egui::{
    Align2, Color32, Grid, Label, Mesh, Painter, Pos2, Rect, Role, Sense, Shape, Stroke, Ui, WidgetInfo,
    pos2, vec2,
};

use crate::app::context::WindowContext;
use crate::app::theme;
use crate::app::widgets::band;
use crate::assess::NextInstallFindings;
use crate::measure::{Moisture, Span};
use crate::ready::{NextInstall, Outlook, Verdict, WatchDay};
use crate::words::{next_install as words_of, say};

/// Least and most height of the picture, its most width, height of a line under it, and room in it for the figures beside and below,
/// in points.
const HEIGHT: f32 = 110.0;
const HIGHEST: f32 = 260.0;
const WIDEST: f32 = 1100.0;
const LINE: f32 = 24.0;
const LEFT: f32 = 44.0;
const BELOW: f32 = 18.0;
/// Half the width of the bar on the day the boards are ready.
const BAR: f32 = 5.0;
/// At least so many days are shown, and so many after the day the stack is ready.
const LEAST_DAYS: i64 = 21;
const AFTER: i64 = 7;

/// The stack's days, when it is ready, and what would bring that forward.
pub(super) fn watch(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (words, assessment) = (context.words, context.assessment);
    let (Some(found), Some(next)) = (&assessment.next_install, &assessment.job.next_install) else { return };
    let Some(outlook) = &found.outlook else { return };
    if outlook.gate.verdict == Verdict::Measure {
        return;
    }
    let watched = words_of::is_watched(outlook.gate.verdict);
    let levers = if watched { words_of::levers(found, outlook, words) } else { vec![] };
    // The lines under it stay in sight.
    let under = if watched { LINE * (levers.len() + 1) as f32 } else { 0.0 };
    let height = (ui.available_height() - under).clamp(HEIGHT, HIGHEST);
    picture(ui, context, (found, outlook, next), height);
    if watched {
        Grid::new("levers").num_columns(2).show(ui, |ui| {
            for (name, value) in levers {
                ui.label(format!("{name}:"));
                ui.add(Label::new(value).wrap());
                ui.end_row();
            }
        });
        ui.label(words_of::next_reading(found, outlook, words));
    }
}

/// Where days and moisture lie in the picture.
struct Scale {
    plot: Rect,
    days: f32,
    low: f64,
    high: f64,
}

impl Scale {
    fn new(plot: Rect, days: &[WatchDay], window: Option<Span<Moisture>>) -> Self {
        let all = days.iter().flat_map(|day| [day.moisture[1], day.moisture[2], day.core, day.shell]);
        let all = all.chain(window.into_iter().flat_map(|window| [window.low, window.high]));
        let (low, high) = all.fold((100.0_f64, 0.0_f64), |(low, high), moisture| {
            (low.min(moisture.to_pct()), high.max(moisture.to_pct()))
        });
        let last = days.last().map_or(1, |day| day.day.max(1));
        // Whole per cents at the ends and in the middle.
        let (low, high) = ((low - 0.5).floor().max(0.0), (high + 0.5).ceil());
        let high = if (high - low) % 2.0 > 0.5 { high + 1.0 } else { high };
        Self { plot, days: last as f32, low, high }
    }

    fn at(&self, day: i64, moisture: Moisture) -> Pos2 {
        let up = (moisture.to_pct() - self.low) / (self.high - self.low).max(1.0);
        let along = day as f32 / self.days;
        pos2(
            self.plot.left() + self.plot.width() * along,
            self.plot.bottom() - self.plot.height() * up as f32,
        )
    }
}

/// The stack's moisture from the delivery on: its range, core and shell, what was read, and what it is to come to.
fn picture(
    ui: &mut Ui,
    context: &WindowContext<'_>,
    (found, outlook, next): (&NextInstallFindings, &Outlook, &NextInstall),
    height: f32,
) {
    let words = context.words;
    let range = outlook.hang.map(|hang| hang.range);
    let until = outlook.ready.map_or(found.today + 60, |ready| ready.sure + AFTER);
    let shown = usize::try_from(until.max(found.today + LEAST_DAYS)).unwrap_or(0) + 1;
    let days = &outlook.days[..shown.min(outlook.days.len())];
    let (rect, response) =
        ui.allocate_exact_size(vec2(ui.available_width().min(WIDEST), height), Sense::hover());
    let plot = Rect::from_min_max(rect.min + vec2(LEFT, 6.0), rect.max - vec2(10.0, BELOW));
    let scale = Scale::new(plot, days, range);
    let (first, last) = (&days[0], &days[days.len() - 1]);
    let said = say!(
        words,
        "next-picture",
        from = first.moisture[0],
        to = last.moisture[0],
        date = found.date(last.day)
    );
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, &said));
    response.on_hover_text(&said);
    let painter = ui.painter_at(rect);
    axes(&painter, context, found, rect, &scale);
    painter.add(Shape::mesh(band_of(days, &scale, context.palette.water.gamma_multiply(0.25))));
    let line = |of: &dyn Fn(&WatchDay) -> Moisture| -> Vec<Pos2> {
        days.iter().map(|day| scale.at(day.day, of(day))).collect()
    };
    painter.line(line(&|day| day.moisture[0]), Stroke::new(2.0, context.palette.water));
    for of in [|day: &WatchDay| day.core, |day: &WatchDay| day.shell] {
        let dashes = Shape::dashed_line(&line(&of), Stroke::new(1.0, context.palette.soft), 3.0, 3.0);
        painter.extend(dashes);
    }
    for reading in &next.readings {
        // As the line is: corrected for the wood's temperature.
        let Some(read) = reading.corrected() else { continue };
        let date = next.day_of(reading, context.assessment.job.visited);
        let day = i64::from((date - found.first).get_days());
        let at = scale.at(day, read);
        if plot.expand(3.0).contains(at) {
            painter.circle(at, 3.0, context.palette.raised, Stroke::new(1.4, context.palette.ink));
        }
    }
    // A day to hang them on there is only where that is the verdict; what boards may average holds on that day.
    if let Some(hang) = outlook.hang.filter(|hang| hang.day > found.today) {
        let (low, high) = (scale.at(hang.day, hang.range.low), scale.at(hang.day, hang.range.high));
        painter.vline(low.x, plot.y_range(), Stroke::new(1.5, context.palette.good));
        let bar = Rect::from_two_pos(low, high).expand2(vec2(BAR, 0.0)).intersect(plot);
        painter.rect_filled(bar, 2.0, context.palette.good.gamma_multiply(0.45));
    }
    labels(&painter, context, (found, outlook, days), &scale);
}

/// What strip, line and dashes are.
fn labels(
    painter: &Painter,
    context: &WindowContext<'_>,
    (found, outlook, days): (&NextInstallFindings, &Outlook, &[WatchDay]),
    scale: &Scale,
) {
    let (words, palette, plot) = (context.words, context.palette, scale.plot);
    // On a ground of its own, so that it can be read over a curve.
    let write = |at: Pos2, align: Align2, text: String, color: Color32| {
        let galley = painter.layout_no_wrap(text, theme::note(), color);
        let place = align.anchor_size(at, galley.size());
        // What would run out at the right stands to the left of its place.
        let place = place.translate(vec2((plot.right() - place.right()).min(0.0), 0.0));
        painter.rect_filled(place.expand2(vec2(2.0, 0.0)), 2.0, palette.raised.gamma_multiply(0.8));
        painter.galley(place.min, galley, color);
        place
    };
    if let Some(hang) = outlook.hang.filter(|hang| hang.day > found.today) {
        let date = words.figures().short_date(found.date(hang.day));
        let high = scale.at(hang.day, hang.range.high);
        let ready = write(
            pos2(high.x + 4.0, plot.top()),
            Align2::LEFT_TOP,
            say!(words, "next-picture-ready", date = &date),
            palette.good,
        );
        let at = pos2(high.x + BAR + 4.0, high.y.max(ready.bottom()));
        write(at, Align2::LEFT_TOP, say!(words, "next-picture-strip"), palette.good);
    }
    // In the corner that the stack does not come near; the day's name is at the top.
    let falls =
        days.first().zip(days.last()).is_none_or(|(first, last)| last.moisture[0] < first.moisture[0]);
    let (x, align) = match falls {
        true => (plot.left() + 4.0, Align2::LEFT_BOTTOM),
        false => (plot.right() - 4.0, Align2::RIGHT_BOTTOM),
    };
    write(pos2(x, plot.bottom()), align, say!(words, "next-picture-dashes"), palette.soft);
}

/// Where the mean lies nine times in ten.
fn band_of(days: &[WatchDay], scale: &Scale, color: Color32) -> Mesh {
    let edges = |day: &WatchDay| [2, 1].map(|edge| scale.at(day.day, day.moisture[edge]));
    band(days.iter().map(edges), color)
}

fn axes(
    painter: &Painter,
    context: &WindowContext<'_>,
    found: &NextInstallFindings,
    rect: Rect,
    scale: &Scale,
) {
    let (font, soft, figures) = (theme::note(), context.palette.soft, context.words.figures());
    for moisture in [scale.low, 0.5 * (scale.low + scale.high), scale.high] {
        let y = scale.at(0, Moisture::pct(moisture)).y;
        painter.hline(scale.plot.x_range(), y, Stroke::new(0.7, context.palette.line));
        let text = figures.percent(moisture, 0);
        painter.text(pos2(scale.plot.left() - 6.0, y), Align2::RIGHT_CENTER, text, font.clone(), soft);
    }
    let ends = [(0, Align2::LEFT_BOTTOM), (scale.days as i64, Align2::RIGHT_BOTTOM)];
    for (day, align) in ends {
        let at = pos2(scale.at(day, Moisture::ZERO).x, rect.bottom());
        painter.text(at, align, figures.short_date(found.date(day)), font.clone(), soft);
    }
}
