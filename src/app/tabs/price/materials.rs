//! The buying list, and how new boards are cut.

use eframe::egui::{Grid, Label, RichText, Ui};

use super::amount;
use crate::app::context::WindowContext;
use crate::app::entry::entry;
use crate::app::field::read_listed;
use crate::app::widgets::{columns, remark};
use crate::assess::RepairOption;
use crate::job::fields::{self, At, Figures, Item};
use crate::measure::{Length, Percent, Quantity, Units};
use crate::papers::needed;
use crate::repair::{CutPattern, CuttingList, MaterialLine};
use crate::words::{Arg, Say as _, Words, say};

pub(super) fn materials(ui: &mut Ui, context: &mut WindowContext<'_>, option: &RepairOption) {
    let words = context.words;
    Grid::new("materials").num_columns(6).striped(true).show(ui, |ui| {
        columns(
            ui,
            context.palette,
            words,
            &[
                "price-materials-column-what",
                "price-materials-column-needed",
                "price-materials-column-on-hand",
                "price-materials-column-buy",
                "price-materials-column-each",
                "price-materials-column-amount",
            ],
        );
        for (index, line) in option.offered.iter().enumerate() {
            let needed = needed(&option.offered, index, words);
            row(ui, context, index, line, &needed);
            ui.end_row();
        }
    });
    context.field_problems(ui, &fields::OWN_PRICES, At::ONCE);
    context.field_problems(ui, &fields::ON_HAND, At::ONCE);
    remark(ui, context.palette, words.text("price-materials-remark"));
    if let Some(list) = &option.cutting {
        cutting(ui, context, list);
    }
    if option.buys_boards {
        stock(ui, context);
    }
}

/// A line of the buying list, with its price.
fn row(ui: &mut Ui, context: &mut WindowContext<'_>, index: usize, line: &MaterialLine, needed: &str) {
    let words = context.words;
    let label = line.say(words);
    ui.push_id(index, |ui| {
        ui.set_max_width(150.0);
        ui.add(Label::new(RichText::new(&label).small()).wrap()).on_hover_text(line.basis.say(words));
    });
    ui.label(RichText::new(needed).small());
    on_hand(ui, context, line, &label);
    ui.label(line.pieces.to_string());
    let name = say!(words, "price-own-price", material = &label);
    let now = Some(Quantity::Money(line.price));
    let item = Item::Id(line.id.clone());
    let typed = ui.push_id(("price", line.id.as_str()), |ui| {
        context.listed_figure(ui, &fields::OWN_PRICES, (At::ONCE, &item), now, &name)
    });
    if let Some(typed) = typed.inner {
        let id = line.id.clone();
        let price = match typed {
            Some(Quantity::Money(price)) => Some(price),
            _ => None,
        };
        context.edit("field-own-prices", move |job| job.plan.set_own_price(&id, price));
    }
    if line.pieces + line.on_hand > 0 {
        amount(ui, context, line.amount, context.palette.ink);
    } else {
        let nothing = words.text("price-materials-not-bought");
        ui.label(RichText::new(nothing).small().color(context.palette.soft));
    }
}

/// How many pieces are there already.
fn on_hand(ui: &mut Ui, context: &mut WindowContext<'_>, line: &MaterialLine, label: &str) {
    let name = say!(context.words, "price-on-hand", material = Arg::Name(label));
    let now = context.job.plan.on_hand.get(&line.id).copied().map(Quantity::Count);
    let item = Item::Id(line.id.clone());
    let typed = ui.push_id(("on hand", line.id.as_str()), |ui| {
        context.listed_figure(ui, &fields::ON_HAND, (At::ONCE, &item), now, &name)
    });
    if let Some(typed) = typed.inner {
        let id = line.id.clone();
        context.edit("field-on-hand", move |job| match typed {
            Some(Quantity::Count(pieces)) if pieces > 0 => {
                job.plan.on_hand.insert(id, pieces);
            }
            _ => {
                job.plan.on_hand.remove(&id);
            }
        });
    }
}

fn cutting(ui: &mut Ui, context: &mut WindowContext<'_>, list: &CuttingList) {
    let words = context.words;
    ui.add_space(6.0);
    ui.label(words.text("price-cutting"));
    Grid::new("cutting").num_columns(4).striped(true).show(ui, |ui| {
        columns(
            ui,
            context.palette,
            words,
            &[
                "price-cutting-column-boards",
                "price-cutting-column-stock",
                "price-cutting-column-pieces",
                "price-cutting-column-offcut",
            ],
        );
        for cut in &list.patterns {
            board(ui, context, cut);
            ui.end_row();
        }
    });
    let whole = |share: f64| Percent::pct((100.0 * share).round());
    let (waste, cheaper) = (whole(list.waste), Percent::pct(100.0 * list.could_save()));
    remark(ui, context.palette, say!(words, "price-cutting-waste", waste = waste, cheaper = cheaper));
}

/// How boards are cut that are cut alike.
fn board(ui: &mut Ui, context: &WindowContext<'_>, cut: &CutPattern) {
    let (words, figures) = (context.words, context.words.figures());
    ui.label(cut.times.to_string());
    let stock = context.assessment.job.plan.stock.lengths.get(cut.stock);
    ui.label(stock.map_or_else(String::new, |length| figures.run(*length)));
    let piece = |&(length, count): &(f64, usize)| {
        say!(words, "price-cutting-piece", count = count, length = Length::m(length))
    };
    let pieces = figures.list(&cut.pieces.iter().map(piece).collect::<Vec<_>>());
    ui.scope(|ui| {
        ui.set_max_width(230.0);
        ui.add(Label::new(RichText::new(pieces).small()).wrap());
    });
    ui.label(RichText::new(figures.length(Length::m(cut.offcut))).small());
}

/// The lengths that can be bought, and what the saw takes.
fn stock(ui: &mut Ui, context: &mut WindowContext<'_>) {
    Grid::new("stock").num_columns(2).show(ui, |ui| {
        context.row(ui, &fields::STOCK_LENGTHS, stock_lengths);
        context.field(ui, &fields::KERF, At::ONCE);
        context.field(ui, &fields::END_TRIM, At::ONCE);
    });
}

fn stock_lengths(context: &mut WindowContext<'_>, ui: &mut Ui, label: &str) {
    let Some(figures) = fields::STOCK_LENGTHS.figures() else { return };
    let (units, words) = (context.units(), context.words);
    let lengths = context.job.plan.stock.lengths.iter();
    let shown: Vec<String> = lengths.map(|length| Quantity::RoomLength(*length).entry_text(units)).collect();
    let typed = entry(ui, label, &shown.join("; "), 230.0, |text| read_lengths(figures, text, units, words));
    if let Some(lengths) = typed {
        context.edit("field-stock-lengths", move |job| job.plan.stock.lengths = lengths);
    }
}

/// Reads lengths separated by semicolons.
fn read_lengths(figures: &Figures, text: &str, units: Units, words: &Words) -> Result<Vec<Length>, String> {
    let parts = text.split(';').map(str::trim).filter(|part| !part.is_empty());
    let read = |part| match read_listed(figures, part, units, words)? {
        Quantity::RoomLength(length) => Ok(Some(length)),
        _ => Ok(None),
    };
    parts.filter_map(|part| read(part).transpose()).collect()
}
