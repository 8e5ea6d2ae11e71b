//! The bead: sealant, day, which joints, its shape, and what becomes of it.

use eframe::egui::{Grid, Ui};

use super::{edit_plan, named};
use crate::app::context::WindowContext;
use crate::app::entry::entry;
use crate::app::widgets::{remark, term};
use crate::assess::date_after;
use crate::job::fields::{self, At};
use crate::measure::{Length, Percent, parse_date, show_date, show_number};
use crate::repair::Scope;

pub(super) fn sealing(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let plan = &context.job.plan;
    Grid::new("sealing").num_columns(2).show(ui, |ui| {
        term(
            ui,
            "Sealant",
            "Its class is the per cent of the width at sealing by which the joint may open or close.",
        );
        named(
            ui,
            context,
            "Sealant",
            &plan.sealant,
            &context.assessment.catalog.sealants.iter().map(|s| s.name.as_str()).collect::<Vec<_>>(),
            |plan, name| plan.sealant = name,
        );
        ui.end_row();
        term(ui, "Seal on", "The first day of sealing. Leave empty for the best weeks.");
        let (units, visited) = (context.units(), context.job.visited);
        let shown = plan.seal_on.map_or_else(String::new, show_date);
        let date = entry(ui, "Seal on", &shown, 110.0, |text| match text.trim() {
            "" => Ok(None),
            text => match parse_date(text, units).map_err(|error| error.to_string())? {
                date if date < visited => {
                    Err(format!("{} is before the visit on {}", show_date(date), show_date(visited)))
                }
                date => Ok(Some(date)),
            },
        });
        if let Some(date) = date {
            edit_plan(context, "Sealing date", move |plan| plan.seal_on = date);
        }
        ui.end_row();
        term(
            ui,
            "Visits",
            "In two visits the joints are opened and primed now and sealed when the best weeks come.",
        );
        let mut two = plan.two_visits;
        if ui.checkbox(&mut two, "open now, seal in the best weeks").changed() {
            edit_plan(context, "Two visits", move |plan| plan.two_visits = two);
        }
        ui.end_row();
        ui.label("Joints");
        let scope = plan.scope;
        ui.horizontal(|ui| {
            for (choice, words) in
                [(Scope::OpenJoints, "the open ones"), (Scope::EveryBoardJoint, "every board joint")]
            {
                if ui.radio(scope == choice, words).clicked() && scope != choice {
                    edit_plan(context, "Which joints", move |plan| plan.scope = choice);
                }
            }
        });
        ui.end_row();
        let tiny = Length::mm(0.05)..=Length::mm(25.4);
        term(ui, "Open from", "A joint at least this wide is counted as open.");
        if let Some(width) = context.length_entry(ui, "Open from", plan.open_from, tiny.clone(), 74.0) {
            edit_plan(context, "Open from", move |plan| plan.open_from = width);
        }
        ui.end_row();
        term(ui, "Can be filled from", "A narrower gap leaves sealant nothing to hold to.");
        if let Some(width) =
            context.length_entry(ui, "Can be filled from", plan.narrowest, tiny.clone(), 74.0)
        {
            edit_plan(context, "Narrowest gap", move |plan| plan.narrowest = width);
        }
        ui.end_row();
        term(ui, "Bead at least", "Depth of the bead: as deep as the gap is wide, but at least this.");
        if let Some(depth) = context.length_entry(ui, "Bead at least", plan.bead.least_depth, tiny, 74.0) {
            edit_plan(context, "Bead depth", move |plan| plan.bead.least_depth = depth);
        }
        ui.end_row();
        term(ui, "V filled, %", "Share of the V's section that sealant fills; the rest stays visible.");
        if let Some(pct) =
            context.number_entry(ui, "V filled", plan.bead.v_filled.to_pct(), 0, 0.0..=100.0, 50.0)
        {
            edit_plan(context, "V filled", move |plan| plan.bead.v_filled = Percent::pct(pct));
        }
        ui.end_row();
    });
    for field in [
        &fields::SEALANT,
        &fields::SEALING_DATE,
        &fields::BEAD_DEPTH,
        &fields::V_FILL,
        &fields::SEALANT_WASTE,
        &fields::OPEN_THRESHOLD,
        &fields::MIN_SEALABLE_GAP,
    ] {
        context.field_problems(ui, field, At::ONCE);
    }
    rows(ui, context);
    if let Some(season) = &context.assessment.season {
        let best = season.best_week();
        let best_weeks =
            crate::assess::window_words(&context.assessment.job, season.best, season.weeks.len());
        let mut words = format!(
            "Best: {best_weeks}; {} % of the length holds then. Reckoned for {}.",
            show_number((season.share(best) * 100.0).floor(), 0),
            show_date(date_after(&context.assessment.job, context.assessment.seal_day)),
        );
        if let Some(typical) = best.typical {
            words.push_str(&format!(
                " A typical bead is then pulled {} % and squeezed {} %.",
                show_number(typical.stretch.to_pct(), 0),
                show_number(typical.squeeze.to_pct(), 0)
            ));
        }
        if season.never > Length::ZERO {
            let never = season.never.show_run(context.units());
            words.push_str(&format!(" {never} is too narrow to seal in any week."));
        }
        if let Some(asked) = selected_words(context) {
            words.push_str(&asked);
        }
        remark(ui, context.palette, words);
    }
    remark(
        ui,
        context.palette,
        "Sealing guides speak of joints from 1/4 in up with a backer behind; joints between interior boards are narrower, and the tongue behind the bead holds it too. Take the shares as a guide, not a warranty.",
    );
}

/// What the selected joint asks of a bead put in on the day reckoned with, and the lowest class that
/// takes it.
fn selected_words(context: &WindowContext<'_>) -> Option<String> {
    let (_, state) = context.selected()?;
    let demand = state.demand?;
    let label = &context.view.selection.joint.as_ref()?.joint;
    let pct = |share: Percent| show_number(share.to_pct(), 0);
    let class = match state.smallest_class.and_then(|at| context.assessment.catalog.sealants.get(at)) {
        Some(sealant) => format!("the lowest class that takes it: {}", sealant.name),
        None => "no sealant on the shelf takes it".to_owned(),
    };
    Some(format!(
        " {label} is pulled {} %, squeezed {} %, its sides slide {} %; {class}.",
        pct(demand.stretch),
        pct(demand.squeeze),
        pct(demand.shear)
    ))
}

/// What becomes of each section's row of sealed boards.
fn rows(ui: &mut Ui, context: &WindowContext<'_>) {
    let told = context.assessment.sections.iter().zip(&context.assessment.rows);
    let words: Vec<String> = told
        .filter_map(|(state, row)| {
            let row = (*row)?;
            let name = &context.assessment.job.surfaces.get(state.surface)?.sections.get(state.section)?.name;
            let torn = row.torn.to_fraction() * row.joints as f64;
            let widest = if torn < 0.5 {
                String::new()
            } else {
                format!(", the widest to {}", row.widest.show(context.units()))
            };
            Some(format!("{name}: {} of {}{widest}", show_number(torn, 0), row.joints))
        })
        .collect();
    if !words.is_empty() {
        remark(
            ui,
            context.palette,
            format!(
                "Sealed joints that tear again when the row of boards moves as far as it will, section {}.",
                words.join("; ")
            ),
        );
    }
}
