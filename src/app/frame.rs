//! The frame of the window: a bar, the answer, and a room for each question.
//!
//! The bar and the answer keep their height whatever is entered. Each room arranges its panes for its
//! question; the dividers between panes can be dragged, and where they were left is remembered.

use eframe::egui::{self, CentralPanel, Frame, Id, Margin, Panel, Pos2, Ui, vec2};

use super::context::WindowContext;
use super::view::Tab;
use super::{
    answer_line, board_strip, drawing, gap_question, joint_bar, joint_section, start_page, tabs, time_line,
    top_bar,
};

/// Room for three lines of the answer.
const ANSWER: f32 = 94.0;
/// Room for one line of it, on a small screen or zoomed in.
const FOLDED_ANSWER: f32 = 36.0;
/// Below this height of the window the answer folds to one line.
const LOW: f32 = 560.0;
/// Below this width a pane beside the main one goes under it.
pub(super) const NARROW: f32 = 760.0;

/// Height of the strip of boards; in a lower room it is left out.
const STRIP: f32 = 62.0;
const WITH_STRIP: f32 = 480.0;
/// Least width of the main pane beside another.
const LEAST_MAIN: f32 = 180.0;

/// Draws the window at work.
pub(super) fn frame(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let palette = context.palette;
    let bar = Frame::new().fill(palette.ground).inner_margin(Margin::symmetric(10, 6));
    Panel::top("top bar").frame(bar).show(ui, |ui| top_bar::top_bar(ui, context));
    let folded = ui.ctx().content_rect().height() < LOW;
    let (height, margin) = if folded { (FOLDED_ANSWER, 4) } else { (ANSWER, 7) };
    let answer = Frame::new().fill(palette.raised).inner_margin(Margin::symmetric(14, margin));
    Panel::top("answer").frame(answer).exact_size(height).show(ui, |ui| {
        answer_line::answer_line(ui, context, folded);
    });
    match context.view.tab {
        Tab::Measure => measure(ui, context),
        Tab::Why => why(ui, context),
        Tab::Options => options(ui, context),
        Tab::Price => price(ui, context),
        Tab::Papers => papers(ui, context),
        Tab::FollowUp => follow_up(ui, context),
        Tab::NextInstall => next_install(ui, context),
        Tab::Catalog => {
            CentralPanel::default().frame(Frame::new().fill(palette.panel)).show(ui, |ui| {
                tabs::tab(ui, context, context.view.tab);
            });
        }
    }
    if context.view.tab != Tab::Measure {
        context.view.canvas.area = None;
    }
}

/// The drawing, large, with the joint at hand under it; beside it what was measured and noted.
fn measure(ui: &mut Ui, context: &mut WindowContext<'_>) {
    side_pane(ui, context, "measure list", 0.42, |ui, context| tabs::tab(ui, context, Tab::Measure));
    let palette = context.palette;
    let joint = Frame::new().fill(palette.panel).inner_margin(Margin::symmetric(10, 5));
    Panel::bottom("joint").frame(joint).show(ui, |ui| joint_bar::joint_bar(ui, context));
    let middle = CentralPanel::default().frame(Frame::new().fill(palette.ground)).show(ui, |ui| {
        if context.job.surfaces.is_empty() && context.assessment.job.surfaces.is_empty() {
            start_page::start_page(ui, context);
        } else {
            drawing::drawing(ui, context);
        }
    });
    context.view.canvas.area = Some(middle.response.rect);
    gap_question::over_drawing(ui, context, middle.response.rect);
}

/// The joint through time; beside it the causes and what speaks for them.
fn why(ui: &mut Ui, context: &mut WindowContext<'_>) {
    side_pane(ui, context, "why list", 0.42, |ui, context| tabs::tab(ui, context, Tab::Why));
    let palette = context.palette;
    let strip = Frame::new().fill(palette.panel).inner_margin(Margin::symmetric(8, 6));
    CentralPanel::default().frame(strip).show(ui, |ui| {
        let height = ui.available_height();
        if height > WITH_STRIP {
            board_strip::board_strip(ui, context, STRIP);
        }
        let section = (height * 0.32).clamp(120.0, 260.0);
        ui.allocate_ui(vec2(ui.available_width(), section), |ui| joint_section::joint_section(ui, context));
        time_line::time_line(ui, context);
    });
}

/// The repairs side by side, and what belongs to the chosen one beside them; under both its time line.
fn options(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let palette = context.palette;
    let strip = Frame::new().fill(palette.panel).inner_margin(Margin::symmetric(8, 6));
    let room = ui.available_height();
    let size = (kept(context, "options time line", 0.3) * room).clamp(150.0, 400.0);
    let shown = Panel::bottom("options time line").frame(strip).resizable(true).default_size(size);
    let shown = shown.size_range(130.0..=(room * 0.6).max(140.0)).show(ui, |ui| {
        ui.horizontal_top(|ui| {
            // Where there is no room for both, the section goes first.
            let section = if ui.available_width() < NARROW { 0.0 } else { 250.0 };
            let size = vec2((ui.available_width() - section - 8.0).max(200.0), ui.available_height());
            ui.allocate_ui_with_layout(size, egui::Layout::top_down(egui::Align::Min), |ui| {
                time_line::time_line(ui, context);
            });
            if section > 0.0 {
                joint_section::joint_section(ui, context);
            }
        });
    });
    let pane = shown.response.rect;
    if is_dragged(ui, |pointer| (pointer.y - pane.top()).abs()) {
        keep(context, "options time line", pane.height() / room);
    }
    if ui.available_width() >= NARROW {
        side_pane(ui, context, "option detail", 0.38, |ui, context| {
            tabs::pane(ui, context, "option detail", tabs::option_detail);
        });
    }
    CentralPanel::default().frame(Frame::new().fill(palette.panel)).show(ui, |ui| {
        tabs::tab(ui, context, Tab::Options);
    });
}

/// The days and the crew; beside them the money, tasks and materials.
fn price(ui: &mut Ui, context: &mut WindowContext<'_>) {
    if ui.available_width() >= NARROW {
        side_pane(ui, context, "price money", 0.5, |ui, context| {
            tabs::pane(ui, context, "price money", tabs::money);
        });
    }
    CentralPanel::default().frame(Frame::new().fill(context.palette.panel)).show(ui, |ui| {
        tabs::tab(ui, context, Tab::Price);
    });
}

/// A page, large; beside it which paper, its template and its wording.
fn papers(ui: &mut Ui, context: &mut WindowContext<'_>) {
    side_pane(ui, context, "papers list", 0.32, |ui, context| tabs::tab(ui, context, Tab::Papers));
    CentralPanel::default().frame(Frame::new().fill(context.palette.ground)).show(ui, |ui| {
        tabs::pane(ui, context, "pages", tabs::pages);
    });
}

/// What the work took; beside it the later visits.
fn follow_up(ui: &mut Ui, context: &mut WindowContext<'_>) {
    if ui.available_width() >= NARROW {
        side_pane(ui, context, "later visits", 0.5, |ui, context| {
            tabs::pane(ui, context, "later visits", tabs::visits);
        });
    }
    CentralPanel::default().frame(Frame::new().fill(context.palette.panel)).show(ui, |ui| {
        tabs::tab(ui, context, Tab::FollowUp);
    });
}

/// Room and boards, the delivery beside them, and under both what follows.
fn next_install(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let there = context.job.next_install.is_some();
    if there {
        let strip = Frame::new().fill(context.palette.raised).inner_margin(Margin::symmetric(8, 4));
        let room = ui.available_height();
        let size = (kept(context, "next install strip", 0.3) * room).clamp(110.0, 400.0);
        let shown = Panel::bottom("next install strip").frame(strip).resizable(true).default_size(size);
        let shown = shown.size_range(80.0..=(room * 0.6).max(100.0)).show(ui, |ui| {
            tabs::next_install_strip(ui, context);
        });
        let pane = shown.response.rect;
        if is_dragged(ui, |pointer| (pointer.y - pane.top()).abs()) {
            keep(context, "next install strip", pane.height() / room);
        }
    }
    if there && ui.available_width() >= NARROW {
        side_pane(ui, context, "next install side", 0.46, |ui, context| {
            tabs::pane(ui, context, "next install side", tabs::next_install_side);
        });
    }
    CentralPanel::default().frame(Frame::new().fill(context.palette.panel)).show(ui, |ui| {
        tabs::tab(ui, context, Tab::NextInstall);
    });
}

/// A pane at the right whose divider can be dragged; `share` of the width until it is.
fn side_pane(
    ui: &mut Ui,
    context: &mut WindowContext<'_>,
    name: &'static str,
    share: f32,
    add: impl FnOnce(&mut Ui, &mut WindowContext<'_>),
) {
    let room = ui.available_width();
    let size = (kept(context, name, share) * room).clamp(404.0, 1100.0).min(room - LEAST_MAIN);
    let pane = Panel::right(name).frame(Frame::new().fill(context.palette.panel)).resizable(true);
    // In a window of another size the pane keeps its share; otherwise it can be dragged.
    let sized = Id::unique(("room beside", name));
    let same = ui.data(|data| data.get_temp::<f32>(sized)).is_none_or(|before| (before - room).abs() < 0.5);
    ui.data_mut(|data| data.insert_temp(sized, room));
    let range = if same { 280.0..=(room - LEAST_MAIN).max(300.0) } else { size..=size };
    let pane = pane.default_size(size).size_range(range);
    let shown = pane.show(ui, |ui| add(ui, context));
    let pane = shown.response.rect;
    if is_dragged(ui, |pointer| (pointer.x - pane.left()).abs()) {
        keep(context, name, pane.width() / room);
    }
}

/// The share of the room at which a pane was left, or `usual`.
fn kept(context: &WindowContext<'_>, name: &str, usual: f32) -> f32 {
    // Sizes in points, which were kept once, are no shares.
    context.view.panes.get(name).copied().filter(|share| (0.0..1.0).contains(share)).unwrap_or(usual)
}

/// Whether a divider is being dragged, by how far the pointer is from it.
fn is_dragged(ui: &Ui, distance: impl Fn(Pos2) -> f32) -> bool {
    let pointer =
        ui.input(|input| input.pointer.interact_pos().filter(|_| input.pointer.is_decidedly_dragging()));
    pointer.is_some_and(|pointer| distance(pointer) < 12.0)
}

/// Notes the share of the room that a pane takes, so that it is alike in a window of another size.
fn keep(context: &mut WindowContext<'_>, name: &'static str, share: f32) {
    context.view.panes.insert(name.to_owned(), (share * 1000.0).round() / 1000.0);
}
