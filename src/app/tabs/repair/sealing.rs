//! The bead: sealant, day, which joints, its shape, and what becomes of it.

use eframe::egui::{Grid, Ui};

use crate::app::context::WindowContext;
use crate::app::widgets::remark;
use crate::assess::{SealTime, date_after};
use crate::job::fields::{self, At};
use crate::measure::{Length, Percent, date_text, show_date, show_number};
use crate::repair::Scope;
use crate::words::{Say as _, say};

pub(super) fn sealing(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let plan = &context.job.plan;
    Grid::new("sealing").num_columns(2).show(ui, |ui| {
        let names: Vec<&str> =
            context.assessment.catalog.sealants.iter().map(|sealant| sealant.name.as_str()).collect();
        context.pick(ui, &fields::SEALANT, &plan.sealant, &names, |job, name| job.plan.sealant = name);
        let (units, words, visited) = (context.units(), context.words, context.job.visited);
        let not_before = |date| match date < visited {
            true => Err(say!(words, "entry-before-visit", text = &date_text(date, units), visited = visited)),
            false => Ok(date),
        };
        context
            .date(ui, &fields::SEALING_DATE, plan.seal_on, not_before, |job, date| job.plan.seal_on = date);
        let visits = [(false, "choice-visits-one"), (true, "choice-visits-two")];
        context.choice(ui, &fields::TWO_VISITS, plan.two_visits, &visits, |job, two| {
            job.plan.two_visits = two;
        });
        let scopes =
            [(Scope::OpenJoints, "choice-scope-open"), (Scope::EveryBoardJoint, "choice-scope-every")];
        context.choice(ui, &fields::SCOPE, plan.scope, &scopes, |job, scope| job.plan.scope = scope);
        for field in
            [&fields::OPEN_THRESHOLD, &fields::MIN_SEALABLE_GAP, &fields::BEAD_DEPTH, &fields::V_FILL]
        {
            context.field(ui, field, At::ONCE);
        }
    });
    rows(ui, context);
    if let Some(season) = &context.assessment.season {
        let best = season.best_week();
        let best_weeks = SealTime::best(&context.assessment.job, season).say(context.words);
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
