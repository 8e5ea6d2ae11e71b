//! The room as the crew finds it, the crew, and the rates of money.

use std::ops::RangeInclusive;

use eframe::egui::{Grid, Ui};

use super::{edit_plan, money_entry, named};
use crate::app::context::WindowContext;
use crate::app::entry::text_entry;
use crate::app::widgets::{remark, term};
use crate::job::fields::{self, At};
use crate::measure::{Hours, Length, Money, Percent};
use crate::repair::{Height, OldSealant, Plan, RoundTo, TaxOn};

/// A number of the plan: its name, what it means, value, decimals, range, and how it is set.
type Number = (&'static str, &'static str, f64, usize, RangeInclusive<f64>, fn(&mut Plan, f64));

fn numbers(ui: &mut Ui, context: &mut WindowContext<'_>, numbers: impl IntoIterator<Item = Number>) {
    for (name, explanation, value, decimals, range, set) in numbers {
        term(ui, name, explanation);
        if let Some(number) = context.number_entry(ui, name, value, decimals, range, 60.0) {
            edit_plan(context, name, move |plan| set(plan, number));
        }
        ui.end_row();
    }
}

/// One of a few, as radio buttons.
fn choices<T: Copy + PartialEq + 'static>(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    name: &'static str,
    now: T,
    all: &[(T, &str)],
    set: fn(&mut Plan, T),
) {
    ui.horizontal(|ui| {
        for &(choice, words) in all {
            if ui.radio(choice == now, words).clicked() && choice != now {
                edit_plan(context, name, move |plan| set(plan, choice));
            }
        }
    });
    ui.end_row();
}

/// The room as the crew finds it, and the crew.
pub(super) fn crew(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let plan = &context.job.plan;
    let site = &plan.site;
    Grid::new("crew").num_columns(2).show(ui, |ui| {
        term(ui, "Worked from", "Ladder and scaffold slow every task at the boards down.");
        let heights =
            [(Height::Steps, "steps"), (Height::Ladder, "a ladder"), (Height::Scaffold, "a scaffold")];
        choices(ui, context, "Worked from", site.height, &heights, |plan, height| plan.site.height = height);
        term(ui, "Old sealant", "Hard sealant has to be cut twice, soft sealant smears.");
        let kinds =
            [(OldSealant::Cuts, "cuts well"), (OldSealant::Hard, "hard"), (OldSealant::Soft, "soft, sticky")];
        choices(ui, context, "Old sealant", site.old_sealant, &kinds, |plan, kind| {
            plan.site.old_sealant = kind
        });
        ui.label("The room");
        ui.horizontal(|ui| {
            let (mut furnished, mut tight) = (site.furnished, site.tight);
            if ui.checkbox(&mut furnished, "furnished").changed() {
                edit_plan(context, "Furnished room", move |plan| plan.site.furnished = furnished);
            }
            if ui.checkbox(&mut tight, "tight to get to or work in").changed() {
                edit_plan(context, "Tight room", move |plan| plan.site.tight = tight);
            }
        });
        ui.end_row();
        let warranty = "Years within which a callback is yours to mend.";
        numbers(
            ui,
            context,
            [
                ("People", "", f64::from(plan.crew), 0, 1.0..=50.0, |plan, n| plan.crew = n.round() as u32),
                ("Hours a day", "", plan.day.to_h(), 1, 0.5..=16.0, |plan, n| plan.day = Hours::h(n)),
                ("Coats of paint", "", f64::from(plan.coats), 0, 0.0..=10.0, |plan, n| {
                    plan.coats = n.round() as u32;
                }),
                (
                    "Board waste, %",
                    "Share of each new board lost to knots and other defects.",
                    plan.board_waste.to_pct(),
                    0,
                    0.0..=90.0,
                    |plan, n| plan.board_waste = Percent::pct(n),
                ),
                (
                    "Days to acclimate",
                    "Days that new boards lie in the room.",
                    f64::from(plan.acclimation_days),
                    0,
                    0.0..=365.0,
                    |plan, n| plan.acclimation_days = n.round() as u32,
                ),
                ("Years warranted", warranty, f64::from(plan.warranty_years), 0, 0.0..=50.0, |plan, n| {
                    plan.warranty_years = n.round() as u32;
                }),
                (
                    "Callback at open length, %",
                    "The owner calls again with this much of the length open.",
                    plan.callback.open_share.to_pct(),
                    0,
                    0.0..=100.0,
                    |plan, n| plan.callback.open_share = Percent::pct(n),
                ),
            ] as [Number; 7],
        );
        let tiny = || Length::mm(0.05)..=Length::mm(25.4);
        term(ui, "Or one gap of", "The owner calls again with one gap this wide.");
        if let Some(widest) = context.length_entry(ui, "Or one gap of", plan.callback.widest, tiny(), 74.0) {
            edit_plan(context, "Callback gap", move |plan| plan.callback.widest = widest);
        }
        ui.end_row();
        term(ui, "Seen from", "An opening narrower than this nobody sees.");
        if let Some(seen) = context.length_entry(ui, "Seen from", plan.callback.seen_from, tiny(), 74.0) {
            edit_plan(context, "Seen from", move |plan| plan.callback.seen_from = seen);
        }
        ui.end_row();
        ui.label("Works on");
        let days = [(false, "weekdays"), (true, "weekends too")];
        choices(ui, context, "Works on", plan.weekends, &days, |plan, weekends| plan.weekends = weekends);
        let paints: Vec<&str> =
            context.assessment.catalog.paints.iter().map(|paint| paint.name.as_str()).collect();
        ui.label("Primer");
        named(ui, context, "Primer", &plan.primer, &paints, |plan, name| plan.primer = name);
        ui.end_row();
        ui.label("Paint");
        named(ui, context, "Paint", &plan.paint, &paints, |plan, name| plan.paint = name);
        ui.end_row();
    });
    for field in [
        &fields::CREW_SIZE,
        &fields::HOURS_PER_DAY,
        &fields::COATS,
        &fields::ACCLIMATION,
        &fields::WARRANTY,
        &fields::WASTE_FACTOR,
        &fields::CALLBACK_SHARE,
        &fields::CALLBACK_GAP,
        &fields::SMALLEST_VISIBLE_GAP,
        &fields::PRIMER,
        &fields::PAINT,
    ] {
        context.field_problems(ui, field, At::ONCE);
    }
}

/// What hours and things cost, and what comes on top.
pub(super) fn money(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let plan = &context.job.plan;
    let prices = &plan.prices;
    Grid::new("money").num_columns(2).show(ui, |ui| {
        amounts(ui, context, [
            ("Wage, an hour", "What one person is paid for an hour; with no burden below, all that an hour costs the firm.", prices.labor, |plan, amount| plan.prices.labor = amount),
            ("Equipment, a day", "Sprayer, lights, platforms: hire or wear for a day of the crew's work.", prices.equipment, |plan, amount| plan.prices.equipment = amount),
            ("Least charge", "The least the firm comes for, tax not included.", prices.minimum, |plan, amount| plan.prices.minimum = amount),
        ]);
        numbers(ui, context, [
            ("Burden on wages, %", "Taxes, insurance, holidays: what an hour costs the firm beyond the wage.", prices.burden.to_pct(), 1, 0.0..=200.0, |plan, n| plan.prices.burden = Percent::pct(n)),
            ("Overhead, %", "Office, vehicles, idle time: on labour, materials and equipment.", prices.overhead.to_pct(), 1, 0.0..=200.0, |plan, n| plan.prices.overhead = Percent::pct(n)),
            ("Profit, % markup", "On cost. The margin, a share of the price, is smaller and shown with the price.", prices.profit.to_pct(), 1, 0.0..=200.0, |plan, n| plan.prices.profit = Percent::pct(n)),
            ("Tax, %", "", prices.tax.to_pct(), 2, 0.0..=50.0, |plan, n| plan.prices.tax = Percent::pct(n)),
            ("Deposit, %", "Share of the total to be paid before work starts.", prices.deposit.to_pct(), 0, 0.0..=100.0, |plan, n| plan.prices.deposit = Percent::pct(n)),
        ] as [Number; 5]);
        ui.label("Tax on");
        let bases = [(TaxOn::Nothing, "nothing"), (TaxOn::Materials, "materials"), (TaxOn::Everything, "everything")];
        choices(ui, context, "Tax on", prices.tax_on, &bases, |plan, on| plan.prices.tax_on = on);
        term(ui, "Contingency, %", "Put on the price so that the cost is covered with this chance, 50 to 99 %. Empty for none.");
        let share = prices.contingency.map(Percent::to_pct);
        if let Some(share) = context.optional_entry(ui, "Contingency", share, 0, 50.0..=99.0, 60.0) {
            edit_plan(context, "Contingency", move |plan| plan.prices.contingency = share.map(Percent::pct));
        }
        ui.end_row();
        ui.label("Round to");
        let steps = [(RoundTo::Cent, "0.01"), (RoundTo::Unit, "1"), (RoundTo::Five, "5"), (RoundTo::Ten, "10")];
        choices(ui, context, "Round to", prices.round_to, &steps, |plan, step| plan.prices.round_to = step);
        term(ui, "Discount rate, %", "By how much an expense a year from now weighs less than one today.");
        if let Some(rate) = context.number_entry(ui, "Discount rate", plan.discount.to_pct(), 1, 0.0..=50.0, 60.0) {
            edit_plan(context, "Discount rate", move |plan| plan.discount = Percent::pct(rate));
        }
        ui.end_row();
        ui.label("Currency");
        if let Some(currency) = text_entry(ui, "Currency", &prices.currency, 60.0) {
            edit_plan(context, "Currency", move |plan| plan.prices.currency = currency);
        }
        ui.end_row();
    });
    for field in [
        &fields::LABOR_BURDEN,
        &fields::EQUIPMENT,
        &fields::MINIMUM_CHARGE,
        &fields::DEPOSIT,
        &fields::CONTINGENCY,
        &fields::DISCOUNT_RATE,
    ] {
        context.field_problems(ui, field, At::ONCE);
    }
    remark(
        ui,
        context.palette,
        "Taxes on labour and materials differ from place to place: ask whoever keeps your books.",
    );
}

/// An amount of the plan: its name, what it means, value, and how it is set.
type Amount = (&'static str, &'static str, Money, fn(&mut Plan, Money));

fn amounts<const N: usize>(ui: &mut Ui, context: &mut WindowContext<'_>, amounts: [Amount; N]) {
    for (name, explanation, value, set) in amounts {
        term(ui, name, explanation);
        if let Some(amount) = money_entry(ui, name, value) {
            edit_plan(context, name, move |plan| set(plan, amount));
        }
        ui.end_row();
    }
}
