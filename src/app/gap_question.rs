//! The question about a gap that was likely meant otherwise than it was typed. It stops nothing: the reading
//! counts as it was typed until it is answered.

use eframe::egui::{Align2, Area, Frame, Id, Label, Order, Rect, RichText, Ui, vec2};

use super::context::WindowContext;
use super::view::Tool;
use crate::job::Job;
use crate::measure::Length;
use crate::survey::{DoubtedGap, GapReading};
use crate::words::{Arg, say};

/// Space between the question and the edge of the drawing.
const EDGE: f32 = 10.0;
/// Most width of the question over the drawing.
const WIDTH: f32 = 460.0;

/// Asks about one gap over the lower edge of the drawing, next to where gaps are typed.
pub(super) fn over_drawing(ui: &Ui, context: &mut WindowContext<'_>, drawing: Rect) {
    let Some(doubted) = asked(context).filter(|_| context.view.canvas.tool == Tool::Measure) else { return };
    let frame = Frame::new().fill(context.palette.raised).stroke((1.5, context.palette.warn));
    let area = Area::new(Id::unique("gap question")).order(Order::Middle).pivot(Align2::LEFT_BOTTOM);
    area.fixed_pos(drawing.left_bottom() + vec2(EDGE, -EDGE)).constrain(false).show(ui, |ui| {
        ui.set_max_width((drawing.width() - 4.0 * EDGE).min(WIDTH));
        frame.corner_radius(6).inner_margin(8).show(ui, |ui| question(ui, context, doubted));
    });
}

/// The gap to ask about: that of the selected joint, else the one typed last.
fn asked(context: &WindowContext<'_>) -> Option<DoubtedGap> {
    let of = |(index, reading): (usize, &GapReading)| DoubtedGap::of(index, reading, context.units());
    let doubted = || context.job.survey.gaps.iter().enumerate().filter_map(of);
    let selected = context.view.selection.joint.as_ref();
    let is_selected = |doubted: &DoubtedGap| {
        let reading = &context.job.survey.gaps[doubted.index];
        selected.is_some_and(|selected| {
            let surface = context.job.surfaces.get(selected.surface);
            selected.joint == reading.joint && surface.is_some_and(|at| at.name == reading.surface)
        })
    };
    doubted().find(is_selected).or_else(|| doubted().next_back())
}

/// The question with its two answers.
fn question(ui: &mut Ui, context: &mut WindowContext<'_>, doubted: DoubtedGap) {
    let words = context.words;
    let DoubtedGap { index, typed, meant } = doubted;
    let Some(reading) = context.job.survey.gaps.get(index) else { return };
    let said = say!(words, "gap-meant", joint = Arg::Joint(&reading.joint), typed = typed, meant = meant);
    ui.horizontal_wrapped(|ui| {
        ui.add(Label::new(RichText::new(said).color(context.palette.warn)).wrap());
        let mut answer = |ui: &mut Ui, text: String, change: fn(&mut GapReading, Length), width: Length| {
            if ui.button(text).clicked() {
                context.edit("undo-gap", move |job: &mut Job| {
                    if let Some(gap) = job.survey.gaps.get_mut(index) {
                        change(gap, width);
                    }
                });
            }
        };
        answer(ui, say!(words, "gap-is", width = meant), |gap, width| gap.width = width, meant);
        answer(ui, say!(words, "gap-is", width = typed), |gap, width| gap.confirmed = Some(width), typed);
    });
}
