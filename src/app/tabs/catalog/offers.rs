//! Another shelf, or rates learned from finished jobs, before they are taken.

use eframe::egui::{Grid, Label, RichText, Ui};

use super::edit;
use crate::app::context::WindowContext;
use crate::app::widgets::remark;
use crate::job::PriceBook;
use crate::measure::show_number;
use crate::words::learned_rate_source;

/// Differences are listed up to here.
const MOST: usize = 40;

pub(super) fn offers(ui: &mut Ui, context: &mut WindowContext<'_>) {
    catalog(ui, context);
    rates(ui, context);
}

fn catalog(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some((from, offered)) = context.view.drafts.offered.clone() else { return };
    let differences = PriceBook::of(&context.assessment.catalog, context.job.visited).differences(&offered);
    ui.group(|ui| {
        ui.label(format!("Figures of {from}"));
        if differences.is_empty() {
            remark(ui, context.palette, "They are the same as the job's.");
        }
        Grid::new("differences").num_columns(4).striped(true).show(ui, |ui| {
            for difference in differences.iter().take(MOST) {
                for text in [&difference.entry, &difference.field, &difference.now, &difference.then] {
                    ui.scope(|ui| {
                        ui.set_max_width(104.0);
                        ui.add(Label::new(RichText::new(text).small()).wrap());
                    });
                }
                ui.end_row();
            }
        });
        if differences.len() > MOST {
            remark(ui, context.palette, format!("and {} more", differences.len() - MOST));
        }
        ui.horizontal(|ui| {
            let any = !differences.is_empty();
            if ui.add_enabled(any, eframe::egui::Button::new("Take these figures")).clicked() {
                context.edit("Take another shelf", move |job| job.price_book = Some(offered));
                context.view.drafts.offered = None;
            }
            if ui.button("Leave the job as it is").clicked() {
                context.view.drafts.offered = None;
            }
        });
    });
}

fn rates(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let Some((jobs, learned)) = context.view.drafts.learned.clone() else { return };
    ui.group(|ui| {
        ui.label(match jobs {
            0 => "No job there says what its work took: enter hours under Afterwards".to_owned(),
            1 => "From 1 finished job".to_owned(),
            jobs => format!("From {jobs} finished jobs"),
        });
        if !learned.is_empty() {
            Grid::new("learned").num_columns(5).striped(true).show(ui, |ui| {
                for title in ["task", "start, min", "yours, min", "jobs", "their weight"] {
                    ui.label(RichText::new(title).small().color(context.palette.soft));
                }
                ui.end_row();
                for rate in &learned {
                    ui.scope(|ui| {
                        ui.set_max_width(190.0);
                        ui.add(Label::new(RichText::new(&rate.name).small()).wrap());
                    });
                    ui.label(show_number(rate.start.mean(), 1));
                    ui.label(show_number(rate.learned.minutes.likely, 1));
                    ui.label(rate.learned.jobs.to_string());
                    ui.label(format!("{} %", show_number(100.0 * rate.learned.weight, 0)));
                    ui.end_row();
                }
            });
        }
        ui.horizontal(|ui| {
            let any = !learned.is_empty();
            if ui.add_enabled(any, eframe::egui::Button::new("Use these rates")).clicked() {
                let words = context.words.clone();
                let source = move |jobs| learned_rate_source(&words, jobs);
                edit(context, "Use learned rates", move |own| own.take_rates(&learned, source));
                context.view.drafts.learned = None;
            }
            if ui.button("Leave the rates as they are").clicked() {
                context.view.drafts.learned = None;
            }
        });
    });
}
