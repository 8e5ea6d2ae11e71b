//! For the homeowner who looks on: large, calm, a page at a time, and no prices unless asked for.

use eframe::egui::{
    Align, CentralPanel, Frame, Key, Label, Layout, Margin, Panel, RichText, ScrollArea, Ui, vec2,
};

use super::command::Command;
use super::context::WindowContext;
use super::{drawing, theme, time_line};
use crate::assess::RepairOption;
use crate::papers::compared_options;
use crate::words::LetterText;
use crate::words::causes::chance_as_odds;

/// The pages.
const PAGES: [&str; 4] = ["What happened", "The year", "The ways", "The plan"];
/// Surfaces drawn one under the other; more would be too small to see.
const MOST_DRAWN: usize = 3;
/// Size of the text.
const TEXT: f32 = 20.0;

/// Shows the page; replaces everything else in the window.
pub(super) fn presentation(ui: &mut Ui, context: &mut WindowContext<'_>) {
    keys(ui, context);
    let page = context.view.presentation.page.unwrap_or(0).min(PAGES.len() - 1);
    let bar = Frame::new().fill(context.palette.ground).inner_margin(Margin::symmetric(28, 14));
    Panel::top("show bar").frame(bar).show(ui, |ui| pages(ui, context, page));
    let letter = LetterText::new(context.assessment, context.words);
    let sheet = Frame::new().fill(context.palette.panel).inner_margin(Margin::symmetric(44, 26));
    CentralPanel::default().frame(sheet).show(ui, |ui| match page {
        0 => happened(ui, context, &letter),
        1 => year(ui, context, &letter),
        2 => ways(ui, context),
        _ => plan(ui, context, &letter),
    });
}

fn keys(ui: &Ui, context: &mut WindowContext<'_>) {
    let page = context.view.presentation.page.unwrap_or(0);
    let pressed = |key| ui.input(|input| input.key_pressed(key));
    if pressed(Key::Escape) {
        context.push(Command::Show(None));
    } else if (pressed(Key::ArrowRight) || pressed(Key::PageDown)) && page + 1 < PAGES.len() {
        context.push(Command::Show(Some(page + 1)));
    } else if (pressed(Key::ArrowLeft) || pressed(Key::PageUp)) && page > 0 {
        context.push(Command::Show(Some(page - 1)));
    }
}

fn pages(ui: &mut Ui, context: &mut WindowContext<'_>, page: usize) {
    ui.horizontal(|ui| {
        for (at, name) in PAGES.into_iter().enumerate() {
            if ui.selectable_label(at == page, RichText::new(name).size(16.0)).clicked() {
                context.push(Command::Show(Some(at)));
            }
        }
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            if ui.button("Back to work").on_hover_text("Esc").clicked() {
                context.push(Command::Show(None));
            }
            ui.checkbox(&mut context.view.presentation.prices, "prices");
        });
    });
}

/// Sentences, large.
fn say(ui: &mut Ui, sentences: &[String]) {
    for sentence in sentences {
        ui.add(Label::new(RichText::new(sentence).size(TEXT)).wrap());
        ui.add_space(8.0);
    }
}

fn title(ui: &mut Ui, text: &str) {
    ui.label(RichText::new(text).size(30.0).family(theme::strong_family()));
    ui.add_space(10.0);
}

/// Words at the left, a picture at the right.
fn beside(ui: &mut Ui, words: impl FnOnce(&mut Ui), picture: impl FnOnce(&mut Ui)) {
    let height = ui.available_height();
    ui.horizontal_top(|ui| {
        let width = (ui.available_width() * 0.46).max(320.0);
        ui.allocate_ui_with_layout(vec2(width, height), Layout::top_down(Align::Min), |ui| {
            ScrollArea::vertical().auto_shrink(false).show(ui, words);
        });
        ui.add_space(24.0);
        let rest = vec2(ui.available_width(), height);
        ui.allocate_ui_with_layout(rest, Layout::top_down(Align::Min), picture);
    });
}

fn happened(ui: &mut Ui, context: &mut WindowContext<'_>, letter: &LetterText) {
    let told = |ui: &mut Ui| {
        title(ui, "What happened");
        say(ui, &letter.saw);
        say(ui, &letter.why);
    };
    beside(ui, told, |ui| {
        let surfaces = context.assessment.job.surfaces.len().min(MOST_DRAWN);
        let height = ui.available_height() / surfaces.max(1) as f32 - 24.0;
        for (index, surface) in context.assessment.job.surfaces.iter().take(surfaces).enumerate() {
            ui.label(RichText::new(&surface.name).size(14.0).color(context.palette.soft));
            let size = vec2(ui.available_width(), height);
            ui.allocate_ui_with_layout(size, Layout::top_down(Align::Min), |ui| {
                drawing::still(ui, context, index);
            });
        }
    });
}

fn year(ui: &mut Ui, context: &mut WindowContext<'_>, letter: &LetterText) {
    title(ui, "How it goes through the year");
    say(ui, &letter.moves);
    time_line::time_line(ui, context);
}

fn ways(ui: &mut Ui, context: &mut WindowContext<'_>) {
    title(ui, "What can be done");
    let options = compared_options(context.assessment);
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        ui.columns(2, |columns| {
            for (at, option) in options.into_iter().enumerate() {
                way(&mut columns[at % 2], context, option);
            }
        });
    });
}

fn way(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let chosen = option.method == context.assessment.job.plan.chosen;
    let edge = if chosen { context.palette.accent } else { context.palette.line };
    let card = Frame::new()
        .fill(context.palette.raised)
        .stroke((if chosen { 2.5 } else { 1.0 }, edge))
        .corner_radius(10)
        .inner_margin(18);
    card.show(ui, |ui| {
        ui.set_width(ui.available_width());
        if chosen {
            ui.label(RichText::new("what we propose").size(14.0).color(context.palette.accent));
        }
        ui.add(Label::new(RichText::new(&option.name).size(TEXT).family(theme::strong_family())).wrap());
        let again = option.callback.as_ref().map_or_else(String::new, |risk| {
            let years = context.assessment.job.plan.warranty_years.max(1);
            let within = if years == 1 { "a year".to_owned() } else { format!("{years} years") };
            format!("Another callback within {within}: {}.", chance_as_odds(risk.chance, context.words))
        });
        let days = option.schedule.room_out;
        let days = format!("The room is closed for {days} {}.", if days == 1 { "day" } else { "days" });
        let lines =
            [format!("Afterwards: {}.", option.look), format!("Meanwhile: {}.", option.upset), again, days];
        for line in lines.iter().filter(|line| !line.is_empty()) {
            ui.add(Label::new(RichText::new(line).size(16.0)).wrap());
        }
        if context.view.presentation.prices {
            let price = option.price.total.show(&context.assessment.job.plan.prices.currency);
            ui.label(RichText::new(price).size(TEXT));
        }
    });
    ui.add_space(12.0);
}

/// The one caution that is the homeowner's: what this is not.
fn remark(ui: &mut Ui, context: &WindowContext<'_>) {
    let words = "This is an estimate from a few readings. It does not say that the building is safe or sound; local codes and licensed trades come first.";
    ui.add(Label::new(RichText::new(words).size(14.0).color(context.palette.soft)).wrap());
}

fn plan(ui: &mut Ui, context: &WindowContext<'_>, letter: &LetterText) {
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        title(ui, "What we will do");
        say(ui, &letter.plan);
        if context.view.presentation.prices
            && let Some(option) = context.assessment.chosen()
        {
            let money =
                |amount: crate::measure::Money| amount.show(&context.assessment.job.plan.prices.currency);
            say(
                ui,
                &[format!("It costs {}; you pay {}.", money(option.price.total), money(option.price.owner))],
            );
        }
        ui.add_space(8.0);
        title(ui, "What we ask of you");
        say(ui, &letter.asks);
        remark(ui, context);
    });
}
