//! Who pays: by share of the whole, or line by line.

use eframe::egui::{Checkbox, ComboBox, Grid, Ui};

use super::amount;
use crate::app::context::WindowContext;
use crate::app::icon::Icon;
use crate::app::lead;
use crate::app::widgets::{columns, remark, term};
use crate::assess::EntryPlace;
use crate::job::fields::{self, At, Item};
use crate::measure::{Money, Quantity};
use crate::repair::{Charging, Payer, Payers, Price, PriceLine, Shares};
use crate::words::{Arg, Say as _, say};

pub(super) fn payers(ui: &mut Ui, context: &mut WindowContext<'_>, price: &Price) {
    let (plan, words) = (&context.job.plan, context.words);
    context.scroll_if_requested(ui, EntryPlace::Payers);
    Grid::new("payers").num_columns(3).show(ui, |ui| {
        let shares =
            [(&fields::CONTRACTOR_SHARE, price.contractor), (&fields::SUPPLIER_SHARE, price.supplier)];
        for (field, part) in shares {
            let label = field.label(words);
            term(ui, &label, &field.hint(words).unwrap_or_default());
            ui.horizontal(|ui| {
                context.figure(ui, field, At::ONCE, &label);
                ui.label(words.figures().unit(Quantity::Percent(plan.payers.contractor)));
            });
            amount(ui, context, part, context.palette.ink);
            ui.end_row();
        }
        ui.label(words.text("price-homeowner-pays"));
        ui.label(words.figures().percent(plan.payers.overall().owner().to_pct(), 1));
        amount(ui, context, price.owner, context.palette.ink);
        ui.end_row();
    });
    agreed(ui, context);
    lines(ui, context, price);
    if context.assessment.payers_open() {
        remark(ui, context.palette, words.text("price-payers-open"));
    }
    for field in [&fields::CONTRACTOR_SHARE, &fields::SUPPLIER_SHARE, &fields::LINE_SPLIT] {
        context.field_problems(ui, field, At::ONCE);
    }
    if price.contractor > Money::ZERO {
        remark(ui, context.palette, say!(words, "price-courtesy", amount = price.contractor));
        if plan.prices.charging == Charging::BuildUp {
            let (collected, cost) = (price.collected(), price.cost());
            let left = collected - cost;
            let (result, amount) = match left < Money::ZERO {
                true => ("loss", Money::ZERO - left),
                false => ("gain", left),
            };
            let text = say!(
                words,
                "price-courtesy-result",
                collected = collected,
                cost = cost,
                result = Arg::Id(result),
                amount = amount
            );
            remark(ui, context.palette, text);
        }
    }
}

/// Whether it was said that the homeowner pays all. Shares of others say so by themselves.
fn agreed(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (payers, field) = (&context.job.plan.payers, &fields::PAYERS_AGREED);
    let preset = Payers { agreed: payers.agreed, ..Payers::default() } == *payers;
    let (label, hint) = (field.label(context.words), field.hint(context.words));
    context.reach(ui, field, At::ONCE, None);
    let mut said = preset && payers.agreed;
    let check = ui.add_enabled(preset, Checkbox::new(&mut said, label.as_str()));
    lead::take_focus(&check);
    if check.on_hover_text(hint.unwrap_or_default()).changed() {
        context.edit("field-payers-agreed", move |job| job.plan.payers.agreed = said);
    }
}

/// Lines of the price that are split differently.
fn lines(ui: &mut Ui, context: &mut WindowContext<'_>, price: &Price) {
    let (split, words) = (&context.job.plan.payers.lines, context.words);
    if !split.is_empty() {
        Grid::new("payers by line").num_columns(4).show(ui, |ui| {
            let titles = [
                "price-split-column-line",
                "price-split-column-contractor",
                "price-split-column-supplier",
                "",
            ];
            columns(ui, context.palette, words, &titles);
            for (&line, shares) in split {
                ui.label(line.say(words));
                for payer in Payer::ALL {
                    share(ui, context, line, payer, shares);
                }
                let remove = say!(words, "price-split-remove", line = Arg::Id(line.key()));
                if Icon::Remove.button(ui, &remove, true).clicked() {
                    context.edit("field-line-split", move |job| {
                        job.plan.payers.lines.remove(&line);
                    });
                }
                ui.end_row();
            }
        });
    }
    let whole = price.lines.iter().map(|priced| priced.line).filter(|line| !split.contains_key(line));
    let add = words.text("price-split-add");
    let combo = ComboBox::from_id_salt("line").selected_text(add.as_ref()).width(170.0);
    let response = combo.show_ui(ui, |ui| {
        for line in whole {
            if ui.selectable_label(false, line.say(words)).clicked() {
                context.edit("field-line-split", move |job| job.plan.payers.split(line));
            }
        }
    });
    response.response.accessible_name(add.as_ref());
}

/// A payer's share of a line.
fn share(ui: &mut Ui, context: &mut WindowContext<'_>, line: PriceLine, payer: Payer, shares: &Shares) {
    let (who, what) = (Arg::Id(payer.key()), Arg::Id(line.key()));
    let name = say!(context.words, "price-split-share", payer = who, line = what);
    let now = Quantity::Percent(shares.of(payer));
    let item = Item::Line(line);
    let typed = context.listed_figure(ui, &fields::LINE_SPLIT, (At::ONCE, &item), Some(now), &name);
    if let Some(Some(Quantity::Percent(share))) = typed {
        context.edit("field-line-split", move |job| job.plan.payers.set_share(line, payer, share));
    }
}
