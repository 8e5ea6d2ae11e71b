//! The boards that are to go up, and what there is to advise.

use std::sync::Arc;

use eframe::egui::{ComboBox, Grid, Ui};

use super::day::date_row;
use crate::app::context::WindowContext;
use crate::app::field::PICK_WIDTH;
use crate::app::fold::fold;
use crate::app::lead;
use crate::app::widgets::{choose, closes, names, remark};
use crate::job::fields::{self, At, Field};
use crate::measure::YearMeant;
use crate::named::{Named as _, position};
use crate::ready::{Joints, NextInstall};
use crate::surface::{Behind, Fixing};
use crate::words::{Say as _, next_install as words_of};

/// A choice of a few as a row.
pub(super) fn choice<T: Copy + PartialEq + 'static>(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    field: &'static Field,
    now: T,
    choices: &[(T, String)],
    set: fn(&mut NextInstall, T),
) {
    context.row(ui, field, |context, ui, label| {
        if let Some(chosen) = choose(ui, label, now, choices) {
            context.edit(format!("field-{}", field.id), move |job| {
                job.next_install.iter_mut().for_each(|next| set(next, chosen));
            });
        }
    });
}

/// What decides: which boards, how many, by when, and how wide a joint may open.
pub(super) fn boards(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let job = context.job;
    let Some(next) = &job.next_install else { return };
    Grid::new("next boards").num_columns(2).show(ui, |ui| {
        species(ui, context, next);
        for field in [&fields::NEXT_FACE_WIDTH, &fields::NEXT_THICKNESS, &fields::NEXT_COUNT] {
            context.field(ui, field, At::ONCE);
        }
        let from = YearMeant::NextFrom(job.visited);
        date_row(ui, context, &fields::NEXT_WANTED, next.wanted, from, |next, date| next.wanted = date);
        let joints = Joints::ALL.map(|joints| (joints, joints.say(context.words)));
        choice(ui, context, &fields::NEXT_JOINTS, next.joints, &joints, |next, joints| next.joints = joints);
        context.field(ui, &fields::CALLBACK_GAP, At::ONCE);
    });
    remark(
        ui,
        context.palette,
        words_of::assumed_of_boards(next, &context.assessment.catalog, context.words),
    );
    let title = context.words.text("next-boards-more");
    fold(ui, "next-boards-more", title, false, |ui| more(ui, context, next));
}

/// The species; found by a trade name, that name goes with it.
fn species(ui: &mut Ui, context: &mut WindowContext<'_>, next: &NextInstall) {
    context.row(ui, &fields::NEXT_SPECIES, |context, ui, label| {
        let (words, catalog) = (context.words, Arc::clone(&context.assessment.catalog));
        let now = &next.boards.species;
        let shown = match (now.as_str(), next.sold_as.as_str()) {
            ("", _) => words.text("list-choose").into_owned(),
            (now, "") => words.name_of(&catalog.species, now).into_owned(),
            (now, sold_as) => words_of::sold_as(&words.name_of(&catalog.species, now), sold_as, words),
        };
        let combo = ComboBox::from_id_salt(fields::NEXT_SPECIES.id)
            .selected_text(shown)
            .width(PICK_WIDTH.min(ui.available_width()))
            .close_behavior(closes(catalog.species.len()))
            .truncate();
        let present = position(&catalog.species, now);
        let response = combo.show_ui(ui, |ui| {
            if let Some(found) = names(ui, words, &catalog.species, present) {
                let key = catalog.species[found.place].key().to_owned();
                context.edit("field-next-species", move |job| {
                    if let Some(next) = &mut job.next_install {
                        next.boards.species.clone_from(&key);
                        next.sold_as = found.sold_as.unwrap_or_default();
                    }
                });
            }
        });
        lead::take_focus(&response.response.accessible_name(label));
    });
}

/// What is usually as it is assumed.
fn more(ui: &mut Ui, context: &mut WindowContext<'_>, next: &NextInstall) {
    let words = context.words;
    Grid::new("more of next boards").num_columns(2).show(ui, |ui| {
        let catalog = &context.assessment.catalog;
        context.line(ui, &fields::NEXT_SOLD_AS, &next.sold_as, |job, name| {
            job.next_install.iter_mut().for_each(|next| next.sold_as.clone_from(&name));
        });
        context.field(ui, &fields::NEXT_OVERALL_WIDTH, At::ONCE);
        context.field(ui, &fields::NEXT_LENGTH, At::ONCE);
        let profiles = next.boards.profile.alternatives().map(|profile| (profile, profile.say(words)));
        choice(ui, context, &fields::NEXT_PROFILE_KIND, next.boards.profile, &profiles, |next, profile| {
            next.boards.profile = profile;
        });
        if next.boards.profile.size().is_some() {
            context.field(ui, &fields::NEXT_PROFILE_SIZE, At::ONCE);
        }
        context.field(ui, &fields::NEXT_GRAIN, At::ONCE);
        let fixings = Fixing::ALL.map(|fixing| (fixing, fixing.say(words)));
        choice(ui, context, &fields::NEXT_NAILING, next.boards.fixing, &fixings, |next, fixing| {
            next.boards.fixing = fixing;
        });
        let behinds = Behind::ALL.map(|behind| (behind, behind.say(words)));
        choice(ui, context, &fields::NEXT_BACKING, next.boards.behind, &behinds, |next, behind| {
            next.boards.behind = behind;
        });
        let finishes: Vec<_> = catalog
            .finishes
            .iter()
            .map(|coating| (coating.finish, context.words.called(&coating.name).into_owned()))
            .collect();
        choice(ui, context, &fields::NEXT_FINISH, next.boards.finish, &finishes, |next, finish| {
            next.boards.finish = finish;
        });
        context.field(ui, &fields::NEXT_GAP, At::ONCE);
        context.field(ui, &fields::NEXT_CHANCE, At::ONCE);
    });
}

/// Caulk and paint.
pub(super) fn advice(ui: &mut Ui, context: &WindowContext<'_>) {
    let (assessment, words) = (context.assessment, context.words);
    let (Some(found), Some(next)) = (&assessment.next_install, &assessment.job.next_install) else { return };
    for line in words_of::boards(found, next, assessment.sealant_name(), words) {
        remark(ui, context.palette, line);
    }
}
