//! The homeowner's pages: large, calm, one at a time, and no prices unless asked for.

use eframe::egui::{
    Align, CentralPanel, Frame, Key, Label, Layout, Margin, Panel, Rect, RichText, ScrollArea, Sense, Ui,
    vec2,
};

use super::command::Command;
use super::context::WindowContext;
use super::{board_strip, drawing, joint_section, theme, time_line};
use crate::assess::RepairOption;
use crate::job::LetterPart;
use crate::papers::compared_options;
use crate::words::owner_page::what_it_means;
use crate::words::{LetterText, Say as _, say};

/// Messages of the pages' names.
const PAGES: [&str; 4] = ["homeowner-happened", "homeowner-year", "homeowner-options", "homeowner-plan"];
/// Options on the table at once; more would not be weighed but given up on.
const MOST_OPTIONS: usize = 3;
/// From this width on they stand side by side.
const CARDS_WIDTH: f32 = 820.0;
/// Height of the joint's pictures on a card.
const CARD_PICTURE: f32 = 96.0;
/// Surfaces drawn one under the other; more would be too small to see.
const MOST_DRAWN: usize = 3;
/// Sizes of titles, text, what an option means, and side remarks, in a window of ordinary width.
const TITLE: f32 = 30.0;
const TEXT: f32 = 20.0;
const DETAIL: f32 = 16.0;
const REMARK: f32 = 14.0;
/// The width of such a window; in a wider one all is as much larger, to be read from across a table.
const ORDINARY: f32 = 1280.0;
/// Most by which it grows.
const LARGEST: f32 = 1.8;

/// Heights from which the joint is drawn over its time line, and the strip of boards as well.
const WITH_JOINT: f32 = 320.0;
const WITH_STRIP: f32 = 420.0;

/// A size of text, as large as the window lets it be.
fn sized(ui: &Ui, size: f32) -> f32 {
    size * (ui.ctx().content_rect().width() / ORDINARY).clamp(1.0, LARGEST)
}

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
        2 => options(ui, context),
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
    ui.horizontal_wrapped(|ui| {
        for (at, message) in PAGES.into_iter().enumerate() {
            let name = RichText::new(context.words.text(message)).size(16.0);
            if ui.selectable_label(at == page, name).clicked() {
                context.push(Command::Show(Some(at)));
            }
        }
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            let back = ui.button(context.words.text("cmd-leave-homeowner"));
            if back.on_hover_text(context.words.text("homeowner-leave-key")).clicked() {
                context.push(Command::Show(None));
            }
            let prices = context.words.text("homeowner-prices");
            ui.checkbox(&mut context.view.presentation.prices, prices);
        });
    });
}

/// Sentences, large.
fn sentences(ui: &mut Ui, all: &[String]) {
    for sentence in all {
        ui.add(Label::new(RichText::new(sentence).size(sized(ui, TEXT))).wrap());
        ui.add_space(8.0);
    }
}

fn title(ui: &mut Ui, text: &str) {
    ui.label(RichText::new(text).size(sized(ui, TITLE)).family(theme::strong_family()));
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
    let words = context.words;
    let text = |ui: &mut Ui| {
        title(ui, &words.text("homeowner-happened"));
        sentences(ui, &letter.saw);
        sentences(ui, &letter.why);
    };
    beside(ui, text, |ui| {
        let surfaces = context.assessment.job.surfaces.len().min(MOST_DRAWN);
        let height = ui.available_height() / surfaces.max(1) as f32 - 24.0;
        for (index, surface) in context.assessment.job.surfaces.iter().take(surfaces).enumerate() {
            ui.label(RichText::new(&surface.name).size(sized(ui, REMARK)).color(context.palette.soft));
            let size = vec2(ui.available_width(), height);
            ui.allocate_ui_with_layout(size, Layout::top_down(Align::Min), |ui| {
                drawing::still(ui, context, index);
            });
        }
    });
}

fn year(ui: &mut Ui, context: &mut WindowContext<'_>, letter: &LetterText) {
    title(ui, &context.words.text("homeowner-year-title"));
    sentences(ui, &letter.moves);
    let height = ui.available_height();
    if height > WITH_JOINT {
        ui.allocate_ui(vec2(ui.available_width(), 0.3 * height), |ui| {
            joint_section::joint_section(ui, context);
        });
    }
    if height > WITH_STRIP {
        board_strip::board_strip(ui, context, 0.14 * height);
    }
    time_line::time_line(ui, context);
}

fn options(ui: &mut Ui, context: &mut WindowContext<'_>) {
    title(ui, &context.words.text("homeowner-options-title"));
    let options: Vec<_> = compared_options(context.assessment).into_iter().take(MOST_OPTIONS).collect();
    let side_by_side = if ui.available_width() < CARDS_WIDTH { 1 } else { options.len().max(1) };
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        ui.columns(side_by_side, |columns| {
            for (at, option) in options.into_iter().enumerate() {
                card(&mut columns[at % side_by_side], context, option);
            }
        });
    });
}

/// A repair option.
fn card(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let recommended = context.assessment.verdict().recommended;
    let chosen = recommended.is_some_and(|recommended| recommended.method == option.method);
    let edge = if chosen { context.palette.accent } else { context.palette.line };
    let card = Frame::new()
        .fill(context.palette.raised)
        .stroke((if chosen { 2.5 } else { 1.0 }, edge))
        .corner_radius(10)
        .inner_margin(18);
    // Columns fill their width, which would space out the letters of a text to fill it too.
    let text = Layout::top_down(Align::Min);
    let lines = |ui: &mut Ui| {
        ui.set_width(ui.available_width());
        if chosen {
            let proposed = RichText::new(context.words.text("homeowner-proposed")).size(sized(ui, REMARK));
            ui.label(proposed.color(context.palette.accent));
        }
        if context.assessment.advises_against(option) {
            let against = match option.not_possible {
                Some(reason) => reason.say(context.words),
                None => context.words.text("homeowner-against").into_owned(),
            };
            let against = RichText::new(against).size(sized(ui, DETAIL));
            ui.label(against.color(context.palette.warn));
        }
        let name = RichText::new(context.words.called(&option.name))
            .size(sized(ui, TEXT))
            .family(theme::strong_family());
        ui.add(Label::new(name).wrap());
        pictures(ui, context, option);
        for line in what_it_means(context.assessment, option, context.words) {
            ui.add(Label::new(RichText::new(line).size(sized(ui, DETAIL))).wrap());
        }
        if context.view.presentation.prices
            && let Some(price) = &option.price
        {
            let price = context.words.figures().money(price.total);
            ui.label(RichText::new(price).size(sized(ui, TEXT)));
        }
    };
    card.show(ui, |ui| ui.with_layout(text, lines));
    ui.add_space(12.0);
}

/// The joint in January and August once the option is done.
fn pictures(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    let (rect, _) =
        ui.allocate_exact_size(vec2(ui.available_width(), sized(ui, CARD_PICTURE)), Sense::hover());
    let width = (rect.width() - 6.0) / 2.0;
    for (at, still) in option.stills.iter().take(2).enumerate() {
        let corner = rect.left_top() + vec2(at as f32 * (width + 6.0), 0.0);
        joint_section::paint_still(
            ui,
            context,
            still,
            Rect::from_min_size(corner, vec2(width, rect.height())),
        );
    }
}

fn plan(ui: &mut Ui, context: &WindowContext<'_>, letter: &LetterText) {
    let words = context.words;
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        title(ui, &LetterPart::Plan.say(words));
        sentences(ui, &letter.plan);
        if context.view.presentation.prices
            && let Some(price) = context.assessment.chosen().and_then(|option| option.price.as_ref())
        {
            let (total, owner) = (price.total, price.owner);
            let cost = if owner == total {
                say!(words, "homeowner-cost-all", total = total)
            } else {
                say!(words, "homeowner-cost", total = total, owner = owner)
            };
            sentences(ui, &[cost]);
        }
        ui.add_space(8.0);
        title(ui, &LetterPart::Asks.say(words));
        sentences(ui, &letter.asks);
        // The one caution that is the homeowner's: what this is not.
        let caution = RichText::new(words.text("homeowner-caution")).size(sized(ui, REMARK));
        ui.add(Label::new(caution.color(context.palette.soft)).wrap());
    });
}
