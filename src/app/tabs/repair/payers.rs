//! Who pays: by share of the whole, or line by line.

use eframe::egui::{ComboBox, Grid, RichText, Ui};

use super::{amount_label, edit_plan};
use crate::app::context::WindowContext;
use crate::app::icon::Icon;
use crate::app::widgets::remark;
use crate::assess::RepairOption;
use crate::job::fields::{self, At};
use crate::measure::{Money, Percent};
use crate::repair::{Plan, PriceLine, Shares};
use crate::words::Say as _;

pub(super) fn payers(ui: &mut Ui, context: &mut WindowContext<'_>, option: &RepairOption) {
    let (plan, price) = (&context.job.plan, &option.price);
    let money = |amount: Money| amount.show(&plan.prices.currency);
    Grid::new("payers").num_columns(3).show(ui, |ui| {
        for (who, amount) in [("Contractor", price.contractor), ("Supplier", price.supplier)] {
            ui.label(format!("{who}, %"));
            share_entry(ui, context, who, None, plan.payers.overall());
            amount_label(ui, money(amount));
            ui.end_row();
        }
        ui.label("Owner");
        ui.label(plan.payers.overall().owner().show());
        amount_label(ui, money(price.owner));
        ui.end_row();
    });
    lines(ui, context, option);
    for field in [&fields::CONTRACTOR_SHARE, &fields::SUPPLIER_SHARE, &fields::LINE_SPLIT] {
        context.field_problems(ui, field, At::ONCE);
    }
    if price.contractor > Money::ZERO {
        remark(
            ui,
            context.palette,
            format!(
                "The letter names {} as borne by you: that is your goodwill in money.",
                money(price.contractor)
            ),
        );
    }
}

/// Lines that are shared otherwise.
fn lines(ui: &mut Ui, context: &mut WindowContext<'_>, option: &RepairOption) {
    let payers = &context.job.plan.payers;
    if !payers.lines.is_empty() {
        Grid::new("payers by line").num_columns(4).show(ui, |ui| {
            for title in ["line", "contractor, %", "supplier, %", ""] {
                ui.label(RichText::new(title).small().color(context.palette.soft));
            }
            ui.end_row();
            for (&line, &shares) in &payers.lines {
                ui.label(line.say(context.words));
                share_entry(ui, context, "Contractor", Some(line), shares);
                share_entry(ui, context, "Supplier", Some(line), shares);
                if Icon::Remove
                    .button(
                        ui,
                        &format!("Share {} as the rest", line.say(context.words).to_lowercase()),
                        true,
                    )
                    .clicked()
                {
                    edit_plan(context, "Who pays a line", move |plan| {
                        plan.payers.lines.remove(&line);
                    });
                }
                ui.end_row();
            }
        });
    }
    let free =
        option.price.lines.iter().map(|priced| priced.line).filter(|line| !payers.lines.contains_key(line));
    let free: Vec<PriceLine> = free.collect();
    let combo = ComboBox::from_id_salt("line").selected_text("Share a line otherwise").width(170.0);
    let response = combo.show_ui(ui, |ui| {
        for line in free {
            if ui.selectable_label(false, line.say(context.words)).clicked() {
                edit_plan(context, "Who pays a line", move |plan| {
                    plan.payers.lines.insert(line, plan.payers.overall());
                });
            }
        }
    });
    response.response.accessible_name("Share a line otherwise");
}

/// A share that leaves the other payer's room.
fn share_entry(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    who: &str,
    line: Option<PriceLine>,
    shares: Shares,
) {
    let contractor = who == "Contractor";
    let (share, other) = match contractor {
        true => (shares.contractor, shares.supplier),
        false => (shares.supplier, shares.contractor),
    };
    let name = match line {
        Some(line) => format!("{who}'s share of {}", line.say(context.words).to_lowercase()),
        None => format!("{who}'s share"),
    };
    let range = 0.0..=(100.0 - other.to_pct()).max(0.0);
    if let Some(pct) = context.number_entry(ui, &name, share.to_pct(), 1, range, 50.0) {
        edit_plan(context, &name, move |plan| set(plan, line, contractor, Percent::pct(pct)));
    }
}

fn set(plan: &mut Plan, line: Option<PriceLine>, contractor: bool, share: Percent) {
    let payers = &mut plan.payers;
    let overall = payers.overall();
    match (line, contractor) {
        (None, true) => payers.contractor = share,
        (None, false) => payers.supplier = share,
        (Some(line), true) => payers.lines.entry(line).or_insert(overall).contractor = share,
        (Some(line), false) => payers.lines.entry(line).or_insert(overall).supplier = share,
    }
}
