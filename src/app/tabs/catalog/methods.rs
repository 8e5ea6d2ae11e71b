//! Ways of the user's own, made of tasks.

use eframe::egui::{CollapsingHeader, ComboBox, Grid, Ui};

use super::edit;
use crate::app::context::WindowContext;
use crate::app::entry::text_entry;
use crate::app::icon::Icon;
use crate::app::widgets::remark;
use crate::job::PriceBook;
use crate::repair::{MethodId, Outcome, RepairMethod, Step, Wait};

/// What a way can leave at the joints, in words.
const OUTCOMES: [(Outcome, &str); 8] = [
    (Outcome::Bead { held: false, breaker: true }, "a bead over a bond breaker"),
    (Outcome::Bead { held: false, breaker: false }, "a bead on the tongue"),
    (Outcome::Bead { held: true, breaker: true }, "a bead in a room held at 40 to 50 %"),
    (Outcome::Line, "open lines by design"),
    (Outcome::Covered, "strips over the joints"),
    (Outcome::Glued, "boards glued to one"),
    (Outcome::Boards { moves: 1.0 }, "boards laid tight, dried to the room"),
    (Outcome::Unchanged, "the joints as they are"),
];

const WAITS: [(Wait, &str); 5] = [
    (Wait::Primer, "wait for the primer"),
    (Wait::Sealant, "wait for the sealant"),
    (Wait::Recoat, "wait for the paint"),
    (Wait::Acclimation, "wait for boards to come to the room"),
    (Wait::Season, "wait for the weeks to seal in"),
];

pub(super) fn methods(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let own: Vec<&RepairMethod> =
        context.assessment.catalog.methods.iter().filter(|method| method.id.is_own()).collect();
    if own.is_empty() {
        remark(ui, context.palette, "None yet. Start from the way chosen under Repair and change its steps.");
    }
    for method in &own {
        CollapsingHeader::new(&method.name).id_salt(method.id.key()).show(ui, |ui| way(ui, context, method));
    }
    let free = (1..=u8::MAX).find(|number| !own.iter().any(|method| method.id == MethodId::Own(*number)));
    if let (Some(number), true) = (free, ui.button("Add a way like the chosen one").clicked())
        && let Some(chosen) = context.assessment.catalog.method(context.job.plan.chosen)
    {
        let method = RepairMethod {
            id: MethodId::Own(number),
            name: format!("{} (mine)", chosen.name),
            says: if chosen.says.is_empty() { format!("{}.", chosen.name) } else { chosen.says.clone() },
            ..chosen.clone()
        };
        edit(context, "Add a way", move |own| own.methods.push(method));
    }
}

fn change(
    context: &mut WindowContext<'_>,
    id: MethodId,
    name: &str,
    set: impl FnOnce(&mut RepairMethod) + 'static,
) {
    edit(context, name, move |own: &mut PriceBook| {
        if let Some(method) = own.methods.iter_mut().find(|method| method.id == id) {
            set(method);
        }
    });
}

fn way(ui: &mut Ui, context: &mut WindowContext<'_>, method: &RepairMethod) {
    let id = method.id;
    Grid::new("way").num_columns(2).show(ui, |ui| {
        /// A text of a way: its label, value, and how it is set.
        type Text<'a> = (&'static str, &'a str, fn(&mut RepairMethod, String));
        let texts: [Text<'_>; 4] = [
            ("Name of the way", &method.name, |m, text| m.name = text),
            ("Looks afterwards", &method.look, |m, text| m.look = text),
            ("For those who live there", &method.upset, |m, text| m.upset = text),
            ("The letter says", &method.says, |m, text| m.says = text),
        ];
        for (label, value, set) in texts {
            ui.label(label);
            if let Some(text) = text_entry(ui, label, value, 250.0) {
                change(context, id, label, move |method| set(method, text));
            }
            ui.end_row();
        }
        ui.label("Leaves");
        let known = OUTCOMES.iter().find(|(outcome, _)| *outcome == method.outcome);
        let shown = known.map_or("boards that move less", |(_, words)| words);
        let combo = ComboBox::from_id_salt("outcome").selected_text(shown).width(250.0);
        let response = combo.show_ui(ui, |ui| {
            for (outcome, words) in OUTCOMES {
                if ui.selectable_label(outcome == method.outcome, words).clicked() {
                    change(context, id, "What a way leaves", move |method| method.outcome = outcome);
                }
            }
        });
        response.response.accessible_name("What the way leaves");
        ui.end_row();
    });
    steps(ui, context, method);
    CollapsingHeader::new("Materials besides sealant and paint").show(ui, |ui| {
        for material in &context.assessment.catalog.materials {
            let mut used = method.materials.contains(&material.id);
            if ui.checkbox(&mut used, &material.name).changed() {
                let name = material.id.clone();
                change(context, id, "Material of a way", move |method| {
                    method.materials.retain(|known| *known != name);
                    if used {
                        method.materials.push(name);
                    }
                });
            }
        }
    });
    if ui.button("Remove this way").clicked() {
        context.edit("Remove a way", move |job| {
            if let Some(own) = &mut job.price_book {
                own.methods.retain(|method| method.id != id);
            }
            if job.plan.chosen == id {
                job.plan.chosen = MethodId::Reseal;
            }
        });
    }
}

/// A step in words.
fn step_words(context: &WindowContext<'_>, step: &Step) -> String {
    let task = |id: &str| {
        context
            .assessment
            .catalog
            .tasks
            .iter()
            .find(|task| task.id == id)
            .map_or_else(|| id.to_owned(), |task| task.name.clone())
    };
    match step {
        Step::Do(id) => task(id),
        Step::Coats(id) => format!("{} (and wait after each)", task(id)),
        Step::Wait(wait) => {
            WAITS.iter().find(|(known, _)| known == wait).map_or("wait", |(_, words)| words).to_owned()
        }
    }
}

fn steps(ui: &mut Ui, context: &mut WindowContext<'_>, method: &RepairMethod) {
    let id = method.id;
    for (at, step) in method.steps.iter().enumerate() {
        ui.push_id(("step", at), |ui| {
            ui.horizontal(|ui| {
                let words = step_words(context, step);
                if Icon::Up.button(ui, &format!("Earlier: {words}"), at > 0).clicked() {
                    change(context, id, "Move a step", move |method| {
                        if at > 0 && at < method.steps.len() {
                            method.steps.swap(at - 1, at);
                        }
                    });
                }
                if Icon::Remove.button(ui, &format!("Leave out: {words}"), true).clicked() {
                    change(context, id, "Leave out a step", move |method| {
                        if at < method.steps.len() {
                            method.steps.remove(at);
                        }
                    });
                }
                ui.label(format!("{}. {words}", at + 1));
            });
        });
    }
    let combo = ComboBox::from_id_salt("add step").selected_text("Add a step…").width(250.0);
    let response = combo.show_ui(ui, |ui| {
        let tasks = context.assessment.catalog.tasks.iter().map(|task| match task.id.as_str() {
            "coat" => Step::Coats(task.id.clone()),
            _ => Step::Do(task.id.clone()),
        });
        for step in tasks.chain(WAITS.map(|(wait, _)| Step::Wait(wait))) {
            if ui.selectable_label(false, step_words(context, &step)).clicked() {
                change(context, id, "Add a step", move |method| method.steps.push(step));
            }
        }
    });
    response.response.accessible_name("Add a step");
}
