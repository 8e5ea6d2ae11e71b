//! What stands in the drawing's place while nothing is drawn: the ways to begin.

use eframe::egui::text::LayoutJob;
use eframe::egui::{Align, Button, FontId, Layout, ScrollArea, TextFormat, Ui, vec2};

use super::command::Command;
use super::context::WindowContext;
use super::pick::Purpose;
use super::theme;
use super::widgets::heading;

/// Width of a choice at most, and its height.
const CHOICE: (f32, f32) = (440.0, 60.0);
/// Files opened lately that are listed.
const RECENT: usize = 4;

pub(super) fn start_page(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let words = context.words;
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        let width = CHOICE.0.min(ui.available_width() - 48.0);
        let left = ((ui.available_width() - width) / 2.0).max(0.0);
        ui.add_space((ui.available_height() * 0.12).max(8.0));
        ui.horizontal_top(|ui| {
            ui.add_space(left);
            ui.allocate_ui_with_layout(vec2(width, 0.0), Layout::top_down(Align::Min), |ui| {
                heading(ui, &words.text("start-heading"));
                ui.add_space(4.0);
                if choice(ui, context, "start-callback", width) {
                    context.view.drafts.take_size = true;
                }
                if choice(ui, context, "start-next-install", width) {
                    context.push(Command::PlanNextInstall);
                }
                if choice(ui, context, "start-open", width) {
                    context.push(Command::Pick(Purpose::Open));
                }
                if choice(ui, context, "start-demo", width) {
                    context.push(Command::OpenDemo);
                }
                recent(ui, context);
            });
        });
    });
}

/// A way to begin, with what it is for; whether it was chosen.
fn choice(ui: &mut Ui, context: &WindowContext<'_>, message: &str, width: f32) -> bool {
    let (words, palette) = (context.words, context.palette);
    let title = words.text(message);
    let mut text = LayoutJob::default();
    text.wrap.max_width = width - 24.0;
    let strong = TextFormat::simple(FontId::new(16.0, theme::strong_family()), palette.ink);
    text.append(&title, 0.0, strong);
    text.append("\n", 0.0, TextFormat::default());
    text.append(
        &words.text(&format!("{message}.hint")),
        0.0,
        TextFormat::simple(theme::note(), palette.soft),
    );
    let button = Button::new(text).min_size(vec2(width, CHOICE.1));
    let clicked = ui.add(button).accessible_name(title).clicked();
    ui.add_space(4.0);
    clicked
}

/// Files opened lately.
fn recent(ui: &mut Ui, context: &mut WindowContext<'_>) {
    if context.settings.recent.is_empty() {
        return;
    }
    heading(ui, &context.words.text("menu-recent"));
    for path in context.settings.recent.iter().take(RECENT) {
        let name = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
        if ui.link(name).on_hover_text(path.display().to_string()).clicked() {
            context.commands.push(Command::OpenPath(path.clone()));
        }
    }
}
