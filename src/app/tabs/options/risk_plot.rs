//! The chance of a callback by price, a dot for each option.

use eframe::egui::{Align2, Color32, Painter, Pos2, Rect, Sense, Stroke, Ui, pos2, vec2};

use crate::app::context::WindowContext;
use crate::app::theme;
use crate::app::widgets::fitted;
use crate::assess::{Choice, RepairOption};
use crate::measure::Money;
use crate::repair::MethodId;
use crate::words::causes::percent;
use crate::words::{Arg, Words, say};

/// Room for the figures beside and under the plot.
const LEFT: f32 = 44.0;
const BELOW: f32 = 18.0;

/// The plot, with the options that no other beats joined by a line.
///
/// `numbers` are the options in the order of the list above, by which dots are numbered.
pub(super) fn risk_plot(ui: &mut Ui, context: &WindowContext<'_>, choice: &Choice, numbers: &[MethodId]) {
    let listed = numbers.iter().enumerate();
    let options: Vec<(usize, &RepairOption)> = listed
        .filter_map(|(at, method)| Some((at, context.assessment.option(*method)?)))
        .filter(|(_, option)| option.expected.is_some() && option.callback.is_some())
        .collect();
    let most = options.iter().map(|(_, option)| option.total().to_units()).fold(0.0, f64::max);
    if most <= 0.0 {
        return;
    }
    let (rect, response) =
        ui.allocate_exact_size(vec2(ui.available_width().min(640.0), 168.0), Sense::hover());
    let plot = Rect::from_min_max(rect.min + vec2(LEFT, 26.0), rect.max - vec2(16.0, BELOW));
    let place = |option: &RepairOption| {
        let chance = option.callback.as_ref().map_or(0.0, |risk| risk.chance);
        let right = option.total().to_units() / (1.05 * most);
        pos2(plot.left() + plot.width() * right as f32, plot.bottom() - plot.height() * chance as f32)
    };
    let painter = ui.painter_at(rect);
    axes(&painter, context, rect, plot, most);
    let front: Vec<Pos2> = choice
        .front
        .iter()
        .filter_map(|method| options.iter().find(|(_, option)| option.method == *method))
        .map(|(_, option)| place(option))
        .collect();
    painter.line(front, Stroke::new(1.2, context.palette.good));
    let mut labels: Vec<Rect> = Vec::new();
    for (at, option) in &options {
        dot(&painter, context, choice, place(option), *at, option, &mut labels);
    }
    hover(&response, &options, place, context.words);
    let words = context.words;
    let name = |(at, option): &(usize, &RepairOption)| {
        say!(words, "options-name", number = at + 1, option = Arg::Called(&option.name))
    };
    let names: Vec<String> = options.iter().map(name).collect();
    response.widget_info(|| {
        let names = names.iter().map(String::as_str).collect();
        let said = say!(words, "options-plot", options = Arg::Names(names));
        eframe::egui::WidgetInfo::labeled(eframe::egui::Role::Image, true, said)
    });
    crate::app::widgets::remark(ui, context.palette, words.text("options-plot-legend"));
}

fn axes(painter: &Painter, context: &WindowContext<'_>, rect: Rect, plot: Rect, most: f64) {
    let (font, soft) = (theme::note(), context.palette.soft);
    let (words, figures) = (context.words, context.words.figures());
    let title = fitted(painter, words.text("options-plot-title"), font.clone(), soft, (rect.width(), 1));
    painter.galley(rect.min, title, soft);
    for share in [0.0, 0.5, 1.0_f32] {
        let y = plot.bottom() - plot.height() * share;
        painter.hline(plot.x_range(), y, Stroke::new(0.5, context.palette.line));
        let text = figures.percent(f64::from(100.0 * share), 0);
        painter.text(pos2(plot.left() - 5.0, y), Align2::RIGHT_CENTER, text, font.clone(), soft);
    }
    for share in [0.0, 0.5, 1.0] {
        let x = plot.left() + plot.width() * (share / 1.05) as f32;
        let text = figures.rough_money(Money::cents(100).times(most * share));
        painter.text(pos2(x, plot.bottom() + 3.0), Align2::CENTER_TOP, text, font.clone(), soft);
    }
}

/// An option as a dot with its number in the list; the number goes where no other stands.
fn dot(
    painter: &Painter,
    context: &WindowContext<'_>,
    choice: &Choice,
    at: Pos2,
    number: usize,
    option: &RepairOption,
    labels: &mut Vec<Rect>,
) {
    let on_front = choice.front.contains(&option.method);
    let color: Color32 = if on_front { context.palette.good } else { context.palette.soft };
    if on_front {
        painter.circle_filled(at, 4.0, color);
    } else {
        painter.circle_stroke(at, 3.5, Stroke::new(1.3, color));
    }
    if choice.best == option.method {
        painter.circle_stroke(at, 7.5, Stroke::new(1.5, context.palette.good));
    }
    let sides = [
        vec2(10.0, -8.0),
        vec2(-10.0, -8.0),
        vec2(10.0, 8.0),
        vec2(-10.0, 8.0),
        vec2(0.0, -15.0),
        vec2(20.0, -8.0),
    ];
    let label = |side| Rect::from_center_size(at + side, vec2(13.0, 12.0));
    let free =
        sides.into_iter().map(label).find(|label| !labels.iter().any(|other| other.intersects(*label)));
    let label = free.unwrap_or_else(|| label(sides[0]));
    labels.push(label);
    let text = (number + 1).to_string();
    painter.text(label.center(), Align2::CENTER_CENTER, text, theme::note(), context.palette.ink);
}

/// Says which options are under the pointer.
fn hover(
    response: &eframe::egui::Response,
    options: &[(usize, &RepairOption)],
    place: impl Fn(&RepairOption) -> Pos2,
    words: &Words,
) {
    let Some(pointer) = response.hover_pos() else { return };
    let near = options.iter().filter(|(_, option)| place(option).distance(pointer) < 12.0);
    let lines: Vec<String> = near
        .map(|(at, option)| {
            let chance = option.callback.as_ref().map_or(0.0, |risk| risk.chance);
            let (number, (band, percent)) = (at + 1, percent(chance));
            let option = Arg::Called(&option.name);
            say!(
                words,
                "options-plot-point",
                number = number,
                option = option,
                band = band,
                percent = percent
            )
        })
        .collect();
    if !lines.is_empty() {
        response.clone().on_hover_text(lines.join("\n"));
    }
}
