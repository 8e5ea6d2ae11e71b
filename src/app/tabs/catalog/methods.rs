//! Repair options of the user's own, made of tasks.

use eframe::egui::{ComboBox, Grid, Ui};

use super::edit;
use crate::app::context::WindowContext;
use crate::app::entry::text_entry;
use crate::app::fold::fold;
use crate::app::icon::Icon;
use crate::app::widgets::remark;
use crate::job::PriceBook;
use crate::job::fields::{self, At, Item};
use crate::joint::BeadLay;
use crate::repair::{MethodId, Outcome, RepairMethod, Step, Wait};
use crate::words::{Arg, Say as _, say};

/// What a repair can leave at the joints.
const OUTCOMES: [Outcome; 9] = [
    Outcome::Bead { held: false, lay: BeadLay::Bridge },
    Outcome::Bead { held: false, lay: BeadLay::OnTongue },
    Outcome::Bead { held: false, lay: BeadLay::Reveal },
    Outcome::Bead { held: true, lay: BeadLay::Bridge },
    Outcome::Line,
    Outcome::Covered,
    Outcome::Glued,
    Outcome::Boards { moves: 1.0 },
    Outcome::Unchanged,
];

const WAITS: [(Wait, &str); 5] = [
    (Wait::Primer, "own-wait-primer"),
    (Wait::Sealant, "own-wait-sealant"),
    (Wait::Recoat, "own-wait-paint"),
    (Wait::Acclimation, "own-wait-acclimation"),
    (Wait::Season, "own-wait-season"),
];

pub(super) fn methods(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let own: Vec<&RepairMethod> =
        context.assessment.catalog.methods.iter().filter(|method| method.id.is_own()).collect();
    if own.is_empty() {
        remark(ui, context.palette, context.words.text("own-none"));
    }
    for method in &own {
        fold(ui, method.id.key(), &method.name, false, |ui| {
            let item = Item::Id(method.name.clone());
            context.reach(ui, &fields::BOOK_METHODS, At::ONCE, Some(&item));
            own_method(ui, context, method);
        });
    }
    let free = (1..=u8::MAX).find(|number| !own.iter().any(|method| method.id == MethodId::Own(*number)));
    if let (Some(number), true) = (free, ui.button(context.words.text("own-add")).clicked())
        && let Some(chosen) = context.assessment.catalog.method(context.job.plan.chosen)
    {
        let method = RepairMethod {
            id: MethodId::Own(number),
            name: say!(context.words, "own-name", name = Arg::Called(&chosen.name)),
            says: if chosen.says.is_empty() {
                format!("{}.", context.words.called(&chosen.name))
            } else {
                chosen.says.clone()
            },
            ..chosen.clone()
        };
        edit(context, "own-add", move |own| own.methods.push(method));
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

fn own_method(ui: &mut Ui, context: &mut WindowContext<'_>, method: &RepairMethod) {
    let id = method.id;
    Grid::new("method").num_columns(2).show(ui, |ui| {
        /// A text of a repair: the message of its label, value, and how it is set.
        type Text<'a> = (&'static str, &'a str, fn(&mut RepairMethod, String));
        let texts: [Text<'_>; 4] = [
            ("own-field-name", &method.name, |m, text| m.name = text),
            ("own-field-look", &method.look, |m, text| m.look = text),
            ("own-field-living", &method.upset, |m, text| m.upset = text),
            ("own-field-letter", &method.says, |m, text| m.says = text),
        ];
        for (message, value, set) in texts {
            let label = context.words.text(message);
            ui.label(label.as_ref());
            if let Some(text) = text_entry(ui, &label, &context.words.called(value), 250.0) {
                change(context, id, message, move |method| set(method, text));
            }
            ui.end_row();
        }
        ui.label(context.words.text("own-leaves"));
        let shown = method.outcome.say(context.words);
        let combo = ComboBox::from_id_salt("outcome").selected_text(shown).width(250.0);
        let response = combo.show_ui(ui, |ui| {
            for outcome in OUTCOMES {
                if ui.selectable_label(outcome == method.outcome, outcome.say(context.words)).clicked() {
                    change(context, id, "own-leaves", move |method| method.outcome = outcome);
                }
            }
        });
        response.response.accessible_name(context.words.text("own-leaves"));
        ui.end_row();
    });
    steps(ui, context, method);
    fold(ui, "own-materials", context.words.text("own-materials"), false, |ui| {
        for material in &context.assessment.catalog.materials {
            let mut used = method.materials.contains(&material.id);
            if ui.checkbox(&mut used, context.words.called(&material.name)).changed() {
                let name = material.id.clone();
                change(context, id, "own-materials", move |method| {
                    method.materials.retain(|known| *known != name);
                    if used {
                        method.materials.push(name);
                    }
                });
            }
        }
    });
    if ui.button(context.words.text("own-remove")).clicked() {
        context.edit("own-remove", move |job| {
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
            .map_or_else(|| id.to_owned(), |task| context.words.called(&task.name).into_owned())
    };
    match step {
        Step::Do(id) => task(id),
        Step::Coats(id) => say!(context.words, "own-step-coats", task = &task(id)),
        Step::Wait(wait) => {
            let known = WAITS.iter().find(|(known, _)| known == wait);
            known.map_or_else(String::new, |(_, message)| context.words.text(message).into_owned())
        }
    }
}

fn steps(ui: &mut Ui, context: &mut WindowContext<'_>, method: &RepairMethod) {
    let id = method.id;
    for (at, step) in method.steps.iter().enumerate() {
        ui.push_id(("step", at), |ui| {
            ui.horizontal(|ui| {
                let step = step_words(context, step);
                if Icon::Up
                    .button(ui, &say!(context.words, "own-step-earlier", step = &step), at > 0)
                    .clicked()
                {
                    change(context, id, "undo-move-step", move |method| {
                        if at > 0 && at < method.steps.len() {
                            method.steps.swap(at - 1, at);
                        }
                    });
                }
                if Icon::Remove
                    .button(ui, &say!(context.words, "own-step-remove", step = &step), true)
                    .clicked()
                {
                    change(context, id, "undo-remove-step", move |method| {
                        if at < method.steps.len() {
                            method.steps.remove(at);
                        }
                    });
                }
                ui.label(format!("{}. {step}", at + 1));
            });
        });
    }
    let combo =
        ComboBox::from_id_salt("add step").selected_text(context.words.text("own-step-add")).width(250.0);
    let response = combo.show_ui(ui, |ui| {
        let tasks = context.assessment.catalog.tasks.iter().map(|task| match task.id.as_str() {
            "coat" => Step::Coats(task.id.clone()),
            _ => Step::Do(task.id.clone()),
        });
        for step in tasks.chain(WAITS.map(|(wait, _)| Step::Wait(wait))) {
            if ui.selectable_label(false, step_words(context, &step)).clicked() {
                change(context, id, "undo-add-step", move |method| method.steps.push(step));
            }
        }
    });
    response.response.accessible_name(context.words.text("undo-add-step"));
}
