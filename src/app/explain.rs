//! Where a number comes from: how it is reckoned, from what, and by what source. Any number shown by
//! [`number`] can be asked by clicking it.

use eframe::egui::{Button, Grid, Label, Popup, RichText, Role, Stroke, TextWrapMode, Ui, WidgetInfo, pos2};

use super::context::WindowContext;
use crate::assess::{RepairOption, SectionState};
use crate::measure::{Length, show_number};
use crate::words::Say as _;

/// The answer.
pub(super) struct Why {
    /// How it is reckoned, in a sentence.
    pub how: String,
    /// What goes in: name and value.
    pub from: Vec<(&'static str, String)>,
    /// The source of the method.
    pub source: String,
}

/// A number that can be asked where it comes from.
pub(super) fn number(
    ui: &mut Ui,
    context: &WindowContext<'_>,
    what: &str,
    shown: RichText,
    why: impl FnOnce() -> Why,
) {
    let short = shown.text().chars().count() < 24;
    let mode = if short { TextWrapMode::Extend } else { TextWrapMode::Wrap };
    let button = ui.add(Button::new(shown).frame(false).wrap_mode(mode));
    let name = format!("{what}: where does this come from");
    button.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
    // A dotted line under it says that it can be asked.
    let (left, right, low) = (button.rect.left(), button.rect.right(), button.rect.bottom());
    let dots = eframe::egui::Shape::dotted_line(
        &[pos2(left, low), pos2(right, low)],
        context.palette.soft,
        3.0,
        0.7,
    );
    ui.painter().extend(dots);
    if button.has_focus() {
        ui.painter().rect_stroke(
            button.rect.expand(2.0),
            3,
            Stroke::new(1.4, context.palette.accent),
            eframe::egui::StrokeKind::Outside,
        );
    }
    let palette = context.palette;
    Popup::from_toggle_button_response(&button).width(360.0).show(|ui| {
        let why = why();
        ui.set_width(350.0);
        ui.label(RichText::new(what).strong());
        ui.add(Label::new(why.how).wrap());
        Grid::new("from").num_columns(2).show(ui, |ui| {
            for (name, value) in why.from {
                ui.label(RichText::new(name).small().color(palette.soft));
                ui.add(Label::new(RichText::new(value).small()).wrap());
                ui.end_row();
            }
        });
        ui.add(Label::new(RichText::new(why.source).small().color(palette.soft)).wrap());
    });
    button.on_hover_text("Click: where does this come from?");
}

const HANDBOOK: &str = "USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010)";

/// The mean gap of a section.
pub(super) fn mean_gap(context: &WindowContext<'_>, state: &SectionState) -> Why {
    let units = context.units();
    Why {
        how: "The mean of the joints that were measured, drawn towards the mean of all sections where there are few; ± is its standard error.".to_owned(),
        from: vec![
            ("joints measured", format!("{} of {}", state.gaps.measured, state.gaps.joints)),
            ("scatter from joint to joint", state.gaps.scatter.show(units)),
        ],
        source: "Random effects by group; components of variance as in the NIST/SEMATECH e-Handbook, 7.4.4 (from memory)".to_owned(),
    }
}

/// The boards' moisture at the visit.
pub(super) fn now(context: &WindowContext<'_>, state: &SectionState) -> Why {
    let board = &context.assessment.job.surfaces[state.surface].sections[state.section].board;
    Why {
        how: "The meter's readings put right for the wood's temperature and weighed against what the room's year lets expect.".to_owned(),
        from: vec![
            ("readings", state.now.readings.to_string()),
            ("the room lets expect today", state.expected_now.show()),
            ("species", board.species.clone()),
        ],
        source: format!("{HANDBOOK}; drying by implicit finite volumes, checked against Crank, The Mathematics of Diffusion"),
    }
}

/// The moisture at install, worked back.
pub(super) fn install(context: &WindowContext<'_>, state: &SectionState) -> Why {
    let units = context.units();
    let board = &context.assessment.job.surfaces[state.surface].sections[state.section].board;
    let coefficient =
        context.assessment.catalog.species(&board.species).map_or(0.0, |s| s.coefficient(board.ring_angle));
    Why {
        how: "The moisture from which drying to today's narrows a board by today's gap: ΔD = D · C · (M₂ − M₁) between 6 and 14 %, and by total shrinkage from fibre saturation beyond.".to_owned(),
        from: vec![
            ("gap today", state.gaps.mean.show(units)),
            ("width that shows at a joint, D", state.across.show(units)),
            ("C, for each per cent", show_number(coefficient, 5)),
            ("moisture today", state.now.moisture.mean.show()),
        ],
        source: format!("{HANDBOOK}, eq. 13-2 and Table 13-5"),
    }
}

/// What the room keeps the boards at.
pub(super) fn settled(context: &WindowContext<'_>, state: &SectionState) -> Why {
    let board = &context.assessment.job.surfaces[state.surface].sections[state.section].board;
    let year = context.assessment.year.as_ref();
    let humidity = |pick: fn(f64, f64) -> f64, start: f64| {
        let days = year.iter().flat_map(|year| &year.days);
        show_number(days.map(|air| air.humidity.to_pct()).fold(start, pick), 0)
    };
    Why {
        how: "The driest and wettest of a year after the boards have forgotten how they came: the room's air, day by day, dried through the boards' thickness and coating.".to_owned(),
        from: vec![
            ("humidity of the room", format!("{} to {} %", humidity(f64::min, f64::INFINITY), humidity(f64::max, 0.0))),
            ("thickness", board.thickness.show(context.units())),
            ("mean over the year", state.settled.mean().show()),
        ],
        source: format!("{HANDBOOK}, eq. 4-5 for the equilibrium; the room's air from the climate, file or logger under Survey"),
    }
}

/// The widest gap of the coming year.
pub(super) fn widest(context: &WindowContext<'_>, state: &SectionState) -> Why {
    let (driest, _) = state.settled.extremes();
    let per_cent = |length: Length| length.show(context.units());
    Why {
        how: "Today's gap and what the boards still narrow by until the driest weeks of the coming year."
            .to_owned(),
        from: vec![
            ("gap today", per_cent(state.gaps.mean)),
            ("moisture today", state.now.moisture.mean.show()),
            ("driest of the settled year", driest.show()),
        ],
        source: format!("{HANDBOOK}, eq. 13-2; the days are in the year strip"),
    }
}

/// The chance of a callback.
pub(super) fn chance(context: &WindowContext<'_>, option: &RepairOption) -> Why {
    let plan = &context.assessment.job.plan;
    let capability = &context.assessment.catalog.capability;
    let risk = option.callback.as_ref();
    let pct = |share: f64| show_number(100.0 * share, 1);
    Why {
        how: format!(
            "In so many of {} trials the owner calls within {} years: with {} of the length open, or one gap of {}.",
            show_number(f64::from(context.assessment.catalog.trials), 0),
            plan.warranty_years,
            plan.callback.open_share.show(),
            plan.callback.widest.show(context.units())
        ),
        from: vec![
            (
                "95 % interval",
                risk.map_or_else(String::new, |r| {
                    format!("{} to {} %", pct(r.interval.low), pct(r.interval.high))
                }),
            ),
            (
                "after a quarter and half of them",
                risk.map_or_else(String::new, |r| {
                    format!("{} and {} %", pct(r.converged[0]), pct(r.converged[1]))
                }),
            ),
            ("opens again on average", risk.map_or_else(String::new, |r| r.opens.show_run(context.units()))),
            (
                "drawn",
                "weather of the years, lot of boards, lot of sealant, readings, workmanship".to_owned(),
            ),
            (
                "a bead takes",
                format!("{} times its class ({})", capability.median, capability.kind.say(context.words)),
            ),
        ],
        source: "Monte Carlo with the same draws for every way; Wilson's interval".to_owned(),
    }
}

/// The price with callbacks.
pub(super) fn expected(context: &WindowContext<'_>, option: &RepairOption) -> Why {
    let plan = &context.assessment.job.plan;
    let currency = &plan.prices.currency;
    Why {
        how: "The price, and for each year of the warranty the chance of a callback in it times a visit's share of the price (15 %, assumption) and what opens, at present value.".to_owned(),
        from: vec![
            ("price", option.price.total.show(currency)),
            ("years of warranty", plan.warranty_years.to_string()),
            ("discount rate", plan.discount.show()),
        ],
        source: "Present value: ASTM E917".to_owned(),
    }
}
