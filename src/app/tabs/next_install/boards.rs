//! The boards that are to go up, and what that takes.

use eframe::egui::{Grid, Label, Ui};

use crate::app::context::WindowContext;
use crate::app::widgets::{choose, remark};
use crate::job::fields::{self, At, Field};
use crate::ready::{FinishOrder, Joints, NextInstall};
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

/// The entries, and under them caulk, paint and what makes it easier.
pub(super) fn boards(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (job, words) = (context.job, context.words);
    let Some(next) = &job.next_install else { return };
    Grid::new("next boards").num_columns(2).show(ui, |ui| {
        let catalog = &context.assessment.catalog;
        context.pick(ui, &fields::NEXT_SPECIES, &next.boards.species, &catalog.species, |job, species| {
            if let Some(next) = &mut job.next_install {
                next.boards.species = species;
            }
        });
        for field in [&fields::NEXT_FACE_WIDTH, &fields::NEXT_OVERALL_WIDTH, &fields::NEXT_THICKNESS] {
            context.field(ui, field, At::ONCE);
        }
        context.field(ui, &fields::NEXT_COUNT, At::ONCE);
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
        let orders = FinishOrder::ALL.map(|order| (order, order.say(words)));
        choice(ui, context, &fields::NEXT_FINISHED, next.finished, &orders, |next, order| {
            next.finished = order;
        });
        let joints = Joints::ALL.map(|joints| (joints, joints.say(words)));
        choice(ui, context, &fields::NEXT_JOINTS, next.joints, &joints, |next, joints| next.joints = joints);
        context.field(ui, &fields::NEXT_GAP, At::ONCE);
        context.field(ui, &fields::CALLBACK_GAP, At::ONCE);
        context.field(ui, &fields::NEXT_CHANCE, At::ONCE);
        context.date(ui, &fields::NEXT_WANTED, next.wanted, Ok, |job, date| {
            job.next_install.iter_mut().for_each(|next| next.wanted = date);
        });
    });
    let Some(found) = &context.assessment.next_install else { return };
    for line in words_of::boards(found, &context.assessment.job, context.assessment.sealant_name(), words) {
        ui.add(Label::new(line).wrap());
    }
    for line in words_of::easier(found, words) {
        remark(ui, context.palette, line);
    }
}
