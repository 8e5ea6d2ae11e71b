//! Other prices, or rates learned from finished jobs, before they are taken.

use eframe::egui::{Grid, Label, RichText, Ui};

use super::edit;
use crate::app::context::WindowContext;
use crate::app::widgets::{columns, remark};
use crate::job::{BookValue, Differs, Lessons, PriceBook};
use crate::words::{Say as _, learned_rate_source, say};

/// Differences are listed up to here.
const MOST: usize = 40;

pub(super) fn offers(ui: &mut Ui, context: &mut WindowContext<'_>) {
    catalog(ui, context);
    rates(ui, context);
}

fn catalog(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    let Some((from, offered)) = context.view.drafts.offered.clone() else { return };
    let differences = PriceBook::of(&context.assessment.catalog, context.job.visited).differences(&offered);
    ui.group(|ui| {
        ui.label(say!(words, "offer-from", from = &from));
        if differences.is_empty() {
            remark(ui, context.palette, words.text("offer-same"));
        }
        Grid::new("differences").num_columns(4).striped(true).show(ui, |ui| {
            for difference in differences.iter().take(MOST) {
                let figure = |figure: &Option<BookValue>| match figure {
                    Some(figure) => figure.say(words),
                    None => words.text("offer-none").into_owned(),
                };
                let entry =
                    |there: bool| words.text(if there { "offer-entry" } else { "offer-none" }).into_owned();
                let [field, now, then] = match &difference.what {
                    Differs::Entry { is_now } => [String::new(), entry(*is_now), entry(!is_now)],
                    Differs::Figure { field, now, then } => [field.say(words), figure(now), figure(then)],
                };
                for text in [&*words.called(&difference.entry), &field, &now, &then] {
                    ui.scope(|ui| {
                        ui.set_max_width(104.0);
                        ui.add(Label::new(RichText::new(text).small()).wrap());
                    });
                }
                ui.end_row();
            }
        });
        if differences.len() > MOST {
            remark(ui, context.palette, say!(words, "offer-more", count = differences.len() - MOST));
        }
        ui.horizontal_wrapped(|ui| {
            let any = !differences.is_empty();
            if ui.add_enabled(any, eframe::egui::Button::new(words.text("offer-take"))).clicked() {
                context.edit("offer-take", move |job| job.price_book = Some(offered));
                context.view.drafts.offered = None;
            }
            if ui.button(words.text("offer-leave")).clicked() {
                context.view.drafts.offered = None;
            }
        });
    });
}

/// What is lost of each material, by the catalog and by the finished jobs.
fn waste(ui: &mut Ui, context: &WindowContext<'_>, learned: &Lessons) {
    let (words, figures) = (context.words, context.words.figures());
    Grid::new("learned-waste").num_columns(4).striped(true).show(ui, |ui| {
        let titles = [
            "learned-column-material",
            "learned-column-waste-start",
            "learned-column-waste-yours",
            "learned-column-jobs",
        ];
        columns(ui, context.palette, words, &titles);
        for one in &learned.waste {
            ui.label(RichText::new(words.called(&one.name)).small());
            ui.label(figures.percent(one.start.to_pct(), 0));
            ui.label(figures.percent(one.waste.to_pct(), 0));
            ui.label(one.jobs.to_string());
            ui.end_row();
        }
    });
}

fn rates(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let (words, figures) = (context.words, context.words.figures());
    let Some((jobs, learned)) = context.view.drafts.learned.clone() else { return };
    ui.group(|ui| {
        ui.label(say!(words, "learned-jobs", count = jobs));
        if !learned.rates.is_empty() {
            Grid::new("learned").num_columns(5).striped(true).show(ui, |ui| {
                for title in [
                    "learned-column-task",
                    "learned-column-start",
                    "learned-column-yours",
                    "learned-column-jobs",
                    "learned-column-weight",
                ] {
                    ui.label(RichText::new(words.text(title)).small().color(context.palette.soft));
                }
                ui.end_row();
                for rate in &learned.rates {
                    ui.scope(|ui| {
                        ui.set_max_width(190.0);
                        ui.add(Label::new(RichText::new(words.called(&rate.name)).small()).wrap());
                    });
                    ui.label(figures.number(rate.start.mean(), 1));
                    ui.label(figures.number(rate.learned.minutes.likely, 1));
                    ui.label(rate.learned.jobs.to_string());
                    ui.label(figures.percent(100.0 * rate.learned.weight, 0));
                    ui.end_row();
                }
            });
        }
        if !learned.waste.is_empty() {
            waste(ui, context, &learned);
        }
        ui.horizontal_wrapped(|ui| {
            let any = !learned.is_empty();
            if ui.add_enabled(any, eframe::egui::Button::new(words.text("learned-use"))).clicked() {
                let words = context.words.clone();
                let source = move |jobs| learned_rate_source(&words, jobs);
                edit(context, "learned-use", move |own| own.take(&learned, source));
                context.view.drafts.learned = None;
            }
            if ui.button(words.text("learned-leave")).clicked() {
                context.view.drafts.learned = None;
            }
        });
    });
}
