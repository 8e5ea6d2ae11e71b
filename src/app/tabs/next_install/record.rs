//! The record: who measured, when the boards went up, and what is written for others.

use eframe::egui::{Button, Grid, Ui};

use crate::app::command::Command;
use crate::app::context::WindowContext;
use crate::app::pick::Purpose;
use crate::app::widgets::remark;
use crate::job::fields;

pub(super) fn record(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (job, words) = (context.job, context.words);
    let Some(next) = &job.next_install else { return };
    Grid::new("record").num_columns(2).show(ui, |ui| {
        context.line(ui, &fields::CHECKED_BY, &next.checked_by, |job, name| {
            if let Some(next) = &mut job.next_install {
                next.checked_by = name;
            }
        });
        context.date(ui, &fields::HUNG, next.hung, Ok, |job, date| {
            job.next_install.iter_mut().for_each(|next| next.hung = date);
        });
    });
    ui.horizontal_wrapped(|ui| {
        let there = context.assessment.next_install.is_some();
        if ui.add_enabled(there, Button::new(words.text("next-write"))).clicked() {
            context.push(Command::Pick(Purpose::Record));
        }
        if ui.add_enabled(next.hung.is_some(), Button::new(words.text("next-follow-up"))).clicked() {
            context.push(Command::FollowUpInstall);
        }
    });
    remark(ui, context.palette, words.text("next-write.hint"));
}
