//! The price's build-up, and what it may turn out to be.

use eframe::egui::{Align2, FontId, Grid, RichText, Sense, Stroke, Ui, pos2, vec2};

use super::amount_label;
use crate::app::context::WindowContext;
use crate::app::widgets::remark;
use crate::assess::RepairOption;
use crate::job::fields::{self, At};
use crate::measure::{Money, show_number};
use crate::words::Say as _;

/// The build-up, line by line.
pub(super) fn price(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let (prices, price) = (&context.job.plan.prices, &option.price);
    let money = |amount: Money| amount.show(&prices.currency);
    Grid::new("price").num_columns(3).striped(true).show(ui, |ui| {
        let mut row = |name: &str, how: &str, amount: Money| {
            ui.label(name);
            ui.label(RichText::new(how).small().color(context.palette.soft));
            amount_label(ui, money(amount));
            ui.end_row();
        };
        for line in &price.lines {
            row(&line.line.say(context.words), &line.basis.say(context.words), line.amount);
        }
        let between =
            format!("{} to {} four times in five", money(price.spread.low), money(price.spread.high));
        row("Total", &between, price.total);
        if price.deposit > Money::ZERO {
            row("Deposit", &format!("{} of it before work starts", prices.deposit.show()), price.deposit);
        }
    });
    remark(
        ui,
        context.palette,
        format!(
            "A markup of {} on cost is a margin of {} of the price before tax.",
            prices.profit.show(),
            price.margin.show()
        ),
    );
    for field in [&fields::WAGE, &fields::OVERHEAD, &fields::PROFIT, &fields::TAX] {
        context.field_problems(ui, field, At::ONCE);
    }
}

/// What labour and materials may turn out to cost, and what drives it.
pub(super) fn spread(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let currency = &context.job.plan.prices.currency;
    distribution(ui, context, option);
    remark(
        ui,
        context.palette,
        format!(
            "Labour and materials cost {} as expected; in {} trials of the tasks' times, half of whose scatter is the crew's and the room's and the same for all, they stay under {} in half, {} in eight and {} in nine of ten.",
            option.cost.mean.show_rough(currency),
            show_number(f64::from(context.assessment.catalog.trials), 0),
            option.cost.at(0.5).show_rough(currency),
            option.cost.at(0.8).show_rough(currency),
            option.cost.at(0.9).show_rough(currency),
        ),
    );
    let most = option.cost.drivers.first().map_or(1.0, |(_, swing)| swing.to_units());
    for (driver, swing) in option.cost.drivers.iter().take(6) {
        let of = &driver.say(context.words);
        ui.horizontal(|ui| {
            let (name, label) = ui.allocate_exact_size(vec2(190.0, 16.0), Sense::hover());
            let painter = ui.painter().with_clip_rect(name);
            painter.text(
                name.left_center(),
                Align2::LEFT_CENTER,
                of,
                FontId::proportional(11.5),
                context.palette.ink,
            );
            label.on_hover_text(of);
            let (bar, _) = ui.allocate_exact_size(vec2(130.0, 12.0), Sense::hover());
            let width = bar.width() * (swing.to_units() / most) as f32;
            ui.painter().rect_filled(bar.with_max_x(bar.left() + width.max(2.0)), 2, context.palette.accent);
            ui.label(RichText::new(swing.show_rough(currency)).small());
        });
    }
    remark(
        ui,
        context.palette,
        "What drives it: by how much each alone moves the cost between its 10th and its 90th percentile.",
    );
}

/// The share of trials in which the cost stays under an amount, as a rising line.
fn distribution(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width().min(430.0), 92.0), Sense::hover());
    let plot = rect.shrink2(vec2(34.0, 14.0)).translate(vec2(0.0, -4.0));
    let costs = option.cost.percentiles();
    let (Some(first), Some(last)) = (costs.first(), costs.last()) else { return };
    let (low, high) = (first.to_units(), last.to_units().max(first.to_units() + 0.01));
    let x = |cost: Money| plot.left() + plot.width() * ((cost.to_units() - low) / (high - low)) as f32;
    let y = |share: f32| plot.bottom() - plot.height() * share;
    let painter = ui.painter();
    let (font, soft) = (FontId::proportional(10.5), context.palette.soft);
    for share in [0.1, 0.5, 0.9_f32] {
        painter.hline(plot.x_range(), y(share), Stroke::new(0.5, context.palette.line));
        let label = format!("{:.0} %", 100.0 * share);
        painter.text(pos2(plot.left() - 4.0, y(share)), Align2::RIGHT_CENTER, label, font.clone(), soft);
    }
    let line: Vec<_> =
        costs.iter().enumerate().map(|(at, cost)| pos2(x(*cost), y(at as f32 / 100.0))).collect();
    painter.line(line, Stroke::new(1.8, context.palette.accent));
    for share in [0.1, 0.5, 0.9] {
        let cost = option.cost.at(share);
        let text = cost.show_rough(&context.job.plan.prices.currency);
        painter.vline(x(cost), plot.y_range(), Stroke::new(0.5, context.palette.line));
        painter.text(pos2(x(cost), plot.bottom() + 2.0), Align2::CENTER_TOP, text, font.clone(), soft);
    }
}
