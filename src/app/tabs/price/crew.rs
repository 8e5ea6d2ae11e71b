//! The room as the crew finds it, the crew, and the pricing.

use eframe::egui::{Grid, Ui};

use crate::app::context::WindowContext;
use crate::app::fold::fold;
use crate::app::widgets::remark;
use crate::job::fields::{self, At, Field};
use crate::repair::{Charging, Height, LeadPaint, OldSealant, Painting, RoundTo, TaxOn};

/// The room as the crew finds it, and the crew.
pub(super) fn crew(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let plan = &context.job.plan;
    let site = &plan.site;
    Grid::new("crew").num_columns(2).show(ui, |ui| {
        let heights = [
            (Height::ByDrawing, "choice-access-by-drawing"),
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
            (OldSealant::Missing, "choice-old-caulk-none"),
        ];
        context.choice(ui, &fields::OLD_CAULK, site.old_sealant, &caulk, |job, caulk| {
            job.plan.site.old_sealant = caulk;
        });
        room_state(ui, context);
        for field in [
            &fields::CREW_SIZE,
            &fields::HOURS_PER_DAY,
            &fields::START_TIME,
            &fields::LEAD_DAYS,
            &fields::ORDER_DAYS,
            &fields::LUNCH,
            &fields::STAY_LATE,
            &fields::WINDOWS,
            &fields::FIXTURES,
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
        let painting = [
            (Painting::Quicker, "choice-painting-quicker"),
            (Painting::Sprayed, "choice-painting-sprayed"),
            (Painting::Brushed, "choice-painting-brushed"),
            (Painting::JointsOnly, "choice-painting-joints"),
        ];
        context.choice(ui, &fields::PAINTING, plan.painting, &painting, |job, way| job.plan.painting = way);
        let days = [(false, "choice-workdays-weekdays"), (true, "choice-workdays-weekends")];
        context.choice(ui, &fields::WORKDAYS, plan.weekends, &days, |job, on| job.plan.weekends = on);
        let evenings = [(false, "choice-evenings-kept"), (true, "choice-evenings-back")];
        context.choice(ui, &fields::EVENINGS, site.handed_back, &evenings, |job, back| {
            job.plan.site.handed_back = back;
        });
        let lead = [(LeadPaint::ByAge, "choice-lead-by-age"), (LeadPaint::TestedFree, "choice-lead-free")];
        context.choice(ui, &fields::LEAD_PAINT, site.lead, &lead, |job, lead| job.plan.site.lead = lead);
        let guns = [(false, "choice-guns-one"), (true, "choice-guns-two")];
        context.choice(ui, &fields::GUNS, plan.two_guns, &guns, |job, two| job.plan.two_guns = two);
        let paints = &context.assessment.catalog.paints;
        context.pick(ui, &fields::PRIMER, &plan.primer, paints, |job, id| job.plan.primer = id);
        context.pick(ui, &fields::PAINT, &plan.paint, paints, |job, id| job.plan.paint = id);
        context.line(ui, &fields::COLOR, &plan.color, |job, text| job.plan.color = text);
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
        let ways = [
            (Charging::BuildUp, "choice-charging-build-up"),
            (Charging::ChargeOut, "choice-charging-charge-out"),
        ];
        context.choice(ui, &fields::CHARGING, prices.charging, &ways, |job, way| {
            job.plan.prices.charging = way;
        });
        let (used, _) = rates(prices.charging);
        let always = [&fields::EQUIPMENT, &fields::CONTINGENCY, &fields::MINIMUM_CHARGE, &fields::TAX];
        for field in used.iter().copied().chain(always) {
            context.field(ui, field, At::ONCE);
        }
        let bases = [
            (TaxOn::Nothing, "choice-tax-on-nothing"),
            (TaxOn::Materials, "choice-tax-on-materials"),
            (TaxOn::Everything, "choice-tax-on-everything"),
        ];
        context.choice(ui, &fields::TAX_ON, prices.tax_on, &bases, |job, on| job.plan.prices.tax_on = on);
        let callbacks = [(false, "choice-callbacks-out"), (true, "choice-callbacks-in")];
        context.choice(ui, &fields::ADD_CALLBACKS, prices.add_callbacks, &callbacks, |job, add| {
            job.plan.prices.add_callbacks = add;
        });
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
    let title = context.words.text("price-unused-rates-heading");
    fold(ui, "unused-rates", title, false, |ui| {
        Grid::new("unused-rates").num_columns(2).show(ui, |ui| {
            for field in rates(prices.charging).1 {
                context.field(ui, field, At::ONCE);
            }
        });
    });
}

/// The rates that count with a way to charge, and those that don't.
fn rates(charging: Charging) -> (&'static [&'static Field], &'static [&'static Field]) {
    static BUILD_UP: [&Field; 5] =
        [&fields::WAGE, &fields::CARPENTER_WAGE, &fields::LABOR_BURDEN, &fields::OVERHEAD, &fields::PROFIT];
    static CHARGE_OUT: [&Field; 2] = [&fields::CHARGE_OUT, &fields::MATERIAL_MARKUP];
    match charging {
        Charging::BuildUp => (&BUILD_UP, &CHARGE_OUT),
        Charging::ChargeOut => (&CHARGE_OUT, &BUILD_UP),
    }
}
