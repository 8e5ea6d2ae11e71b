//! The room as the crew finds it, the crew, and the pricing.

use eframe::egui::{Grid, Ui};

use crate::app::context::WindowContext;
use crate::app::widgets::remark;
use crate::job::fields::{self, At};
use crate::repair::{Height, OldSealant, RoundTo, TaxOn};

/// The room as the crew finds it, and the crew.
pub(super) fn crew(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let plan = &context.job.plan;
    let site = &plan.site;
    Grid::new("crew").num_columns(2).show(ui, |ui| {
        let heights = [
            (Height::Steps, "choice-access-steps"),
            (Height::Ladder, "choice-access-ladder"),
            (Height::Scaffold, "choice-access-scaffold"),
        ];
        context.choice(ui, &fields::ACCESS, site.height, &heights, |job, height| {
            job.plan.site.height = height;
        });
        let caulk = [
            (OldSealant::Cuts, "choice-old-caulk-cuts"),
            (OldSealant::Hard, "choice-old-caulk-hard"),
            (OldSealant::Soft, "choice-old-caulk-soft"),
        ];
        context.choice(ui, &fields::OLD_CAULK, site.old_sealant, &caulk, |job, caulk| {
            job.plan.site.old_sealant = caulk;
        });
        room_state(ui, context);
        for field in [
            &fields::CREW_SIZE,
            &fields::HOURS_PER_DAY,
            &fields::COATS,
            &fields::WASTE_FACTOR,
            &fields::ACCLIMATION,
            &fields::WARRANTY,
            &fields::CALLBACK_SHARE,
            &fields::CALLBACK_GAP,
            &fields::SMALLEST_VISIBLE_GAP,
        ] {
            context.field(ui, field, At::ONCE);
        }
        let days = [(false, "choice-workdays-weekdays"), (true, "choice-workdays-weekends")];
        context.choice(ui, &fields::WORKDAYS, plan.weekends, &days, |job, on| job.plan.weekends = on);
        let paints = &context.assessment.catalog.paints;
        context.pick(ui, &fields::PRIMER, &plan.primer, paints, |job, id| job.plan.primer = id);
        context.pick(ui, &fields::PAINT, &plan.paint, paints, |job, id| job.plan.paint = id);
    });
}

/// Whether the room is furnished, and tight to work in.
fn room_state(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let site = &context.job.plan.site;
    context.row(ui, &fields::ROOM_STATE, |context, ui, _| {
        let (mut furnished, mut tight) = (site.furnished, site.tight);
        if ui.checkbox(&mut furnished, context.words.text("choice-room-furnished")).changed() {
            context.edit("choice-room-furnished", move |job| job.plan.site.furnished = furnished);
        }
        if ui.checkbox(&mut tight, context.words.text("choice-room-tight")).changed() {
            context.edit("choice-room-tight", move |job| job.plan.site.tight = tight);
        }
    });
}

/// What hours and things cost, and what comes on top.
pub(super) fn money(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let prices = &context.job.plan.prices;
    Grid::new("money").num_columns(2).show(ui, |ui| {
        for field in [
            &fields::WAGE,
            &fields::LABOR_BURDEN,
            &fields::EQUIPMENT,
            &fields::OVERHEAD,
            &fields::PROFIT,
            &fields::CONTINGENCY,
            &fields::MINIMUM_CHARGE,
            &fields::TAX,
        ] {
            context.field(ui, field, At::ONCE);
        }
        let bases = [
            (TaxOn::Nothing, "choice-tax-on-nothing"),
            (TaxOn::Materials, "choice-tax-on-materials"),
            (TaxOn::Everything, "choice-tax-on-everything"),
        ];
        context.choice(ui, &fields::TAX_ON, prices.tax_on, &bases, |job, on| job.plan.prices.tax_on = on);
        context.field(ui, &fields::DEPOSIT, At::ONCE);
        let steps = [
            (RoundTo::Cent, "choice-round-to-cent"),
            (RoundTo::Unit, "choice-round-to-unit"),
            (RoundTo::Five, "choice-round-to-five"),
            (RoundTo::Ten, "choice-round-to-ten"),
        ];
        context.choice(ui, &fields::ROUND_TO, prices.round_to, &steps, |job, step| {
            job.plan.prices.round_to = step;
        });
        context.field(ui, &fields::DISCOUNT_RATE, At::ONCE);
        context.line(ui, &fields::CURRENCY, &prices.currency, |job, sign| job.plan.prices.currency = sign);
    });
    remark(ui, context.palette, context.words.text("price-tax-remark"));
}
