//! The buying list, and how new boards are cut.

use eframe::egui::{Grid, Label, RichText, Ui};

use super::{amount_label, edit_plan, read_money};
use crate::app::context::WindowContext;
use crate::app::entry::entry;
use crate::app::widgets::{remark, term};
use crate::assess::RepairOption;
use crate::job::fields::{self, At};
use crate::measure::{Length, parse_length, show_number};
use crate::papers::needed;
use crate::repair::CuttingList;
use crate::words::Say as _;

pub(super) fn materials(ui: &mut Ui, context: &mut WindowContext<'_>, option: &RepairOption) {
    let currency = &context.job.plan.prices.currency;
    Grid::new("materials").num_columns(5).striped(true).show(ui, |ui| {
        for title in ["what", "needed", "buy", "each", "amount"] {
            ui.label(RichText::new(title).small().color(context.palette.soft));
        }
        ui.end_row();
        for (index, line) in option.materials.iter().enumerate() {
            ui.push_id(index, |ui| {
                ui.set_max_width(150.0);
                ui.add(Label::new(RichText::new(line.say(context.words)).small()).wrap())
                    .on_hover_text(line.basis.say(context.words));
            });
            ui.label(RichText::new(needed(&option.materials, index, context.units())).small());
            ui.label(line.pieces.to_string());
            let id = line.id.clone();
            let name = format!("Price: {}", line.say(context.words));
            let typed = ui.push_id(("price", index), |ui| {
                entry(ui, &name, &line.price.plain(), 66.0, |text| match text.trim() {
                    "" => Ok(None),
                    text => read_money(text, context.words).map(Some),
                })
            });
            if let Some(price) = typed.inner {
                edit_plan(context, "Own price", move |plan| match price {
                    Some(price) => {
                        plan.own_prices.insert(id, price);
                    }
                    // Empty: back to the shelf's, for a board also from a price for its run.
                    None => {
                        plan.own_prices.remove(&id);
                        plan.own_prices.remove(id.split(',').next().unwrap_or_default());
                    }
                });
            }
            amount_label(ui, line.amount.show(currency));
            ui.end_row();
        }
    });
    context.field_problems(ui, &fields::OWN_PRICES, At::ONCE);
    remark(ui, context.palette, "Empty a price to go back to the shelf's.");
    if let Some(list) = &option.cutting {
        cutting(ui, context, list);
    }
    if option.buys_boards {
        stock(ui, context);
    }
}

fn cutting(ui: &mut Ui, context: &mut WindowContext<'_>, list: &CuttingList) {
    let units = context.units();
    ui.add_space(6.0);
    ui.label("Cutting list");
    let lengths = &context.job.plan.stock.lengths;
    Grid::new("cutting").num_columns(4).striped(true).show(ui, |ui| {
        for title in ["boards", "of", "cut into", "left over"] {
            ui.label(RichText::new(title).small().color(context.palette.soft));
        }
        ui.end_row();
        for cut in &list.patterns {
            ui.label(cut.times.to_string());
            ui.label(lengths.get(cut.stock).map_or_else(String::new, |length| length.show_run(units)));
            let pieces = cut
                .pieces
                .iter()
                .map(|&(length, count)| format!("{count} × {}", Length::m(length).show(units)));
            let pieces = RichText::new(pieces.collect::<Vec<_>>().join(", ")).small();
            ui.scope(|ui| {
                ui.set_max_width(230.0);
                ui.add(Label::new(pieces).wrap());
            });
            ui.label(RichText::new(Length::m(cut.offcut).show(units)).small());
            ui.end_row();
        }
    });
    let over = 100.0 * (1.0 - list.bound / (list.price as f64).max(1.0));
    remark(
        ui,
        context.palette,
        format!(
            "{} % of what is bought becomes no board: ends, saw cuts, defects and offcuts. No list can be more than {} % cheaper.",
            show_number(100.0 * list.waste, 0),
            show_number(over.max(0.0), 1)
        ),
    );
}

/// The lengths that can be bought.
fn stock(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (units, words) = (context.units(), context.words);
    let stock = &context.job.plan.stock;
    Grid::new("stock").num_columns(2).show(ui, |ui| {
        term(ui, "Stock lengths", "Lengths that boards are sold in, parted by semicolons.");
        let shown: Vec<String> = stock.lengths.iter().map(|length| length.show(units)).collect();
        let typed = entry(ui, "Stock lengths", &shown.join("; "), 230.0, |text| {
            let parts = text.split(';').map(str::trim).filter(|part| !part.is_empty());
            let read = |part| parse_length(part, units).map_err(|error| error.say(words));
            parts.map(read).collect::<Result<Vec<_>, _>>()
        });
        if let Some(lengths) = typed {
            edit_plan(context, "Stock lengths", move |plan| plan.stock.lengths = lengths);
        }
        ui.end_row();
        term(ui, "Saw cut", "Width that each cut of the saw takes.");
        let kerf = context.length_entry(ui, "Saw cut", stock.kerf, Length::ZERO..=Length::mm(20.0), 74.0);
        if let Some(kerf) = kerf {
            edit_plan(context, "Saw cut", move |plan| plan.stock.kerf = kerf);
        }
        ui.end_row();
        term(ui, "Cut off ends", "Cut off every board before it is used, both ends together.");
        let trim =
            context.length_entry(ui, "Cut off ends", stock.end_trim, Length::ZERO..=Length::m(0.5), 74.0);
        if let Some(trim) = trim {
            edit_plan(context, "Cut off ends", move |plan| plan.stock.end_trim = trim);
        }
        ui.end_row();
    });
    for field in [&fields::STOCK_LENGTHS, &fields::KERF, &fields::END_TRIM] {
        context.field_problems(ui, field, At::ONCE);
    }
}
