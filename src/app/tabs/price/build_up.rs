//! The price's build-up, and what it may turn out to be.

use eframe::egui::{Align, Align2, Grid, Label, Layout, RichText, ScrollArea, Sense, Stroke, Ui, pos2, vec2};

use super::{AMOUNT, amount};
use crate::app::context::WindowContext;
use crate::app::explain::{self, Why};
use crate::app::theme;
use crate::app::widgets::{fitted, remark};
use crate::assess::RepairOption;
use crate::measure::Money;
use crate::repair::{Charging, MaterialLine, Price, PriceLine, Priced, TaxOn};
use crate::words::{Arg, Say as _, Words, price, say};

/// Room for the names of the lines.
const NAMES: f32 = 150.0;
/// Height of the notes on the price.
const NOTES: f32 = 116.0;
/// How many of them are named beside the price.
const MOVE_IT_MOST: usize = 2;
/// How many drivers of the cost are shown.
const DRIVERS: usize = 6;

/// The build-up, line by line.
pub(super) fn price(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption, made: &Price) {
    let (prices, words) = (&context.job.plan.prices, context.words);
    let widest = (ui.available_width() - NAMES - AMOUNT - 2.0 * ui.spacing().item_spacing.x).max(80.0);
    Grid::new("price").num_columns(3).striped(true).show(ui, |ui| {
        let basis = |ui: &mut Ui, basis: &str| {
            ui.scope(|ui| {
                // However long it is, the amounts and the pane stay where they are.
                ui.set_max_width(widest);
                let shown = RichText::new(basis).small().color(context.palette.soft);
                ui.add(Label::new(shown).truncate());
            });
        };
        // Lines that come to nothing keep their place: a rate that is typed below must not move what stands
        // between it and the table.
        for line in PriceLine::ALL {
            let priced = made.lines.iter().find(|priced| priced.line == line);
            let name = price::line_name(line, prices.charging, words);
            match priced {
                Some(priced) => {
                    let shown = RichText::new(&name);
                    explain::number(ui, context, &name, shown, || made_of(context, option, made, priced));
                }
                None => {
                    let shown = RichText::new(&name).color(context.palette.soft);
                    explain::number(ui, context, &name, shown, || Why::of_nothing(words));
                }
            }
            let (of, total) = (priced.map(|priced| priced.basis.say(words)), made.of(line));
            basis(ui, of.as_deref().unwrap_or_default());
            let ink = if total == Money::ZERO { context.palette.soft } else { context.palette.ink };
            amount(ui, context, total, ink);
            ui.end_row();
        }
        let (low, high) = (Arg::RoughMoney(made.spread.low), Arg::RoughMoney(made.spread.high));
        let share = say!(words, "price-deposit-share", share = prices.deposit);
        for (name, of, total) in [
            ("price-total", say!(words, "price-total-range", low = low, high = high), made.total),
            ("price-deposit", share, made.deposit),
        ] {
            ui.label(words.text(name));
            basis(ui, &of);
            amount(ui, context, total, context.palette.ink);
            ui.end_row();
        }
    });
    let margin = match prices.charging {
        Charging::BuildUp => {
            say!(words, "price-margin", markup = prices.profit, margin = made.margin)
        }
        Charging::ChargeOut => words.text("price-profit-inside").into_owned(),
    };
    let most = option.cost.drivers.iter().take(MOVE_IT_MOST).map(|(driver, _)| driver.say(words));
    let drivers = words.figures().list(&most.collect::<Vec<_>>());
    let all = [margin, say!(words, "price-moved-by", drivers = &drivers)];
    let taken = price::taken_for_granted(context.assessment, option, words);
    notes(ui, context, all.into_iter().chain(taken));
}

/// Notes on the price, in room of their own that scrolls: however many they are, the entries under them stay where
/// they are.
fn notes(ui: &mut Ui, context: &WindowContext<'_>, all: impl Iterator<Item = String>) {
    let size = vec2(ui.available_width(), NOTES);
    ui.allocate_ui_with_layout(size, Layout::top_down(Align::Min), |ui| {
        ui.set_min_height(NOTES);
        ScrollArea::vertical().id_salt("price-notes").auto_shrink(false).max_height(NOTES).show(ui, |ui| {
            for note in all {
                remark(ui, context.palette, note);
            }
        });
    });
}

/// What a line of the price adds up from.
fn made_of(context: &WindowContext<'_>, option: &RepairOption, made: &Price, priced: &Priced) -> Why {
    let (words, figures) = (context.words, context.words.figures());
    let money = |amount: Money| figures.money(amount);
    let sums = |lines: &[PriceLine]| -> Vec<(String, String)> {
        let some = lines.iter().filter(|line| made.of(**line) != Money::ZERO);
        some.map(|line| (line.say(words), money(made.of(*line)))).collect()
    };
    let direct = [PriceLine::Labor, PriceLine::Materials, PriceLine::Equipment];
    let with_overhead = [direct.as_slice(), &[PriceLine::Overhead, PriceLine::Contingency]].concat();
    let lines = match priced.line {
        PriceLine::Labor => price::labor(&context.job.plan.prices, &option.tasks, words),
        PriceLine::Materials => option.materials.iter().map(|line| bought(line, words)).collect(),
        PriceLine::Overhead | PriceLine::Contingency => sums(&direct),
        PriceLine::Profit if context.job.plan.prices.charging == Charging::ChargeOut => sums(&direct[1..]),
        PriceLine::Profit => sums(&with_overhead),
        PriceLine::Equipment | PriceLine::Callbacks => vec![],
        PriceLine::Tax if context.job.plan.prices.tax_on == TaxOn::Materials => sums(&direct[1..2]),
        PriceLine::Minimum | PriceLine::Tax | PriceLine::Rounding => {
            let before = PriceLine::ALL.into_iter().take_while(|line| *line != priced.line);
            sums(&before.collect::<Vec<_>>())
        }
    };
    let how = say!(words, "price-made-of", basis = &priced.basis.say(words), amount = priced.amount);
    Why { how, from: vec![], lines, source: words.text("price-made-of-source").into_owned() }
}

/// A line of the buying list with its packs and their price.
fn bought(line: &MaterialLine, words: &Words) -> (String, String) {
    let pieces = line.pieces + line.on_hand;
    let sum = say!(words, "price-made-of-packs", pieces = pieces, price = line.price, amount = line.amount);
    (line.say(words), sum)
}

/// What labor and materials may turn out to cost, and what drives it.
pub(super) fn spread(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let (words, cost) = (context.words, &option.cost);
    distribution(ui, context, option);
    let [mean, half, eight, nine] =
        [cost.mean, cost.at(0.5), cost.at(0.8), cost.at(0.9)].map(Arg::RoughMoney);
    let trials = context.assessment.catalog.trials;
    remark(
        ui,
        context.palette,
        say!(words, "price-spread", mean = mean, trials = trials, half = half, eight = eight, nine = nine),
    );
    remark(ui, context.palette, words.text("price-spread-common"));
    if let Some(note) = price::no_reserve(context.job, option, words) {
        remark(ui, context.palette, note);
    }
    let most = cost.drivers.first().map_or(1.0, |(_, swing)| swing.to_units());
    for (driver, swing) in cost.drivers.iter().take(DRIVERS) {
        let name = driver.say(words);
        ui.horizontal(|ui| {
            let (place, label) = ui.allocate_exact_size(vec2(200.0, 18.0), Sense::hover());
            let (font, ink) = (theme::note(), context.palette.ink);
            let text = fitted(ui.painter(), &name, font, ink, (place.width(), 1));
            let corner = Align2::LEFT_CENTER.anchor_size(place.left_center(), text.size()).min;
            ui.painter().galley(corner, text, ink);
            label.on_hover_text(&name);
            let (bar, _) = ui.allocate_exact_size(vec2(130.0, 12.0), Sense::hover());
            let width = bar.width() * (swing.to_units() / most) as f32;
            ui.painter().rect_filled(bar.with_max_x(bar.left() + width.max(2.0)), 2, context.palette.accent);
            ui.label(RichText::new(words.figures().rough_money(*swing)).small());
        });
    }
    remark(ui, context.palette, words.text("price-drivers"));
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
    let (painter, figures) = (ui.painter(), context.words.figures());
    let (font, soft) = (theme::note(), context.palette.soft);
    for share in [0.1, 0.5, 0.9_f32] {
        painter.hline(plot.x_range(), y(share), Stroke::new(0.5, context.palette.line));
        let label = figures.percent(f64::from(100.0 * share), 0);
        painter.text(pos2(plot.left() - 4.0, y(share)), Align2::RIGHT_CENTER, label, font.clone(), soft);
    }
    let line: Vec<_> =
        costs.iter().enumerate().map(|(at, cost)| pos2(x(*cost), y(at as f32 / 100.0))).collect();
    painter.line(line, Stroke::new(1.8, context.palette.accent));
    for share in [0.1, 0.5, 0.9] {
        let cost = option.cost.at(share);
        let text = figures.rough_money(cost);
        painter.vline(x(cost), plot.y_range(), Stroke::new(0.5, context.palette.line));
        painter.text(pos2(x(cost), plot.bottom() + 2.0), Align2::CENTER_TOP, text, font.clone(), soft);
    }
}
