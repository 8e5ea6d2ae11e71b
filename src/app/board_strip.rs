//! A strip of boards as they are seen, with their joints many times as wide, on the day shown: sealed or
//! open, and what became of the beads.

use eframe::egui::{Align2, Color32, Rect, Role, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2};

use super::context::WindowContext;
use super::drawing::MAGNIFIED;
use super::theme;
use super::widgets::fitted;
use crate::assess::{JointState, SectionState};
use crate::joint::BeadState;
use crate::measure::Length;
use crate::surface::JointKind;
use crate::words::{Arg, say};

/// Boards shown at most.
const BOARDS: usize = 12;
/// What stands between the parts of the caption.
const DOT: &str = " · ";
/// Height of a turn of a crack, points.
const CRACK_TURN: f32 = 7.0;
/// Room under the boards for what they are.
const CAPTION: f32 = 18.0;

/// A joint as it is on the day shown.
struct ShownJoint {
    gap: Length,
    /// How its bead fares, if it has one, and whether the paint over it is cracked.
    bead: Option<(BeadState, bool)>,
    selected: bool,
}

/// The strip, as wide as there is room and so high.
pub(super) fn board_strip(ui: &mut Ui, context: &WindowContext<'_>, height: f32) {
    let (rect, response) = ui.allocate_exact_size(vec2(ui.available_width(), height), Sense::hover());
    let Some(state) = context.shown_section() else { return };
    let job = &*context.assessment.job;
    let Some(section) = job.surfaces.get(state.surface).and_then(|s| s.sections.get(state.section)) else {
        return;
    };
    let joints = joints(context, state);
    let painter = ui.painter_at(rect);
    let boards = Rect::from_min_max(rect.min, rect.max - vec2(0.0, CAPTION));
    let pitch = boards.width() / (joints.len() + 1) as f32;
    let scale = f64::from(pitch) / section.board.face_width.to_m().max(1e-3) * f64::from(MAGNIFIED);
    painter.rect(
        boards,
        3,
        context.palette.wood,
        Stroke::new(1.0, context.palette.wood_line),
        eframe::egui::StrokeKind::Inside,
    );
    for (at, joint) in joints.iter().enumerate() {
        let x = boards.left() + pitch * (at + 1) as f32;
        let wide = ((joint.gap.to_m() * scale) as f32).min(pitch * 0.8);
        paint_joint(&painter, context, boards, (x, wide), joint);
    }
    let count = Arg::Number((joints.len() + 1) as f64, 0);
    let times = Arg::Number(MAGNIFIED.into(), 0);
    let caption = say!(context.words, "strip-caption", count = count, section = &section.name, times = times);
    let caption = [caption].into_iter().chain(failed(context, &joints)).collect::<Vec<_>>().join(DOT);
    let galley = fitted(&painter, caption.as_str(), theme::note(), context.palette.soft, (rect.width(), 1));
    let place = Align2::LEFT_BOTTOM.anchor_size(rect.left_bottom(), galley.size());
    painter.galley(place.min, galley, context.palette.soft);
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, &caption));
}

/// What failed: at how many joints the bead is torn or squeezed out, and at how many more the paint is cracked.
fn failed(context: &WindowContext<'_>, joints: &[ShownJoint]) -> Vec<String> {
    let beads = || joints.iter().filter_map(|joint| joint.bead);
    let torn = beads().filter(|(bead, _)| bead.shows()).count();
    let cracked = beads().filter(|(bead, cracked)| *cracked && !bead.shows()).count();
    let torn = (torn > 0).then(|| say!(context.words, "strip-torn", count = torn));
    let cracked = (cracked > 0).then(|| say!(context.words, "strip-paint-cracked", count = cracked));
    torn.into_iter().chain(cracked).collect()
}

/// A joint: a thin line where it is shut, a dark gap where it is open, filled where it is sealed; a crack in
/// the paint over it.
fn paint_joint(
    painter: &eframe::egui::Painter,
    context: &WindowContext<'_>,
    boards: Rect,
    (x, wide): (f32, f32),
    joint: &ShownJoint,
) {
    let palette = context.palette;
    let gap = Rect::from_center_size(pos2(x, boards.center().y), vec2(wide.max(1.0), boards.height() - 2.0));
    let fill: Color32 = match joint.bead {
        Some((bead, _)) if bead.shows() => palette.error,
        Some(_) => palette.bead,
        None => palette.gap_high,
    };
    painter.rect_filled(gap, 0, fill);
    match joint.bead {
        Some((bead, _)) if bead.shows() => {
            // A bead that let go is open beside its middle.
            let slit = Rect::from_center_size(gap.center(), vec2((0.3 * wide).max(1.0), gap.height()));
            painter.rect_filled(slit, 0, palette.void);
        }
        Some((_, true)) => {
            painter.add(crack(gap, Stroke::new(1.2, palette.error)));
        }
        _ => {}
    }
    if joint.selected {
        painter.rect_stroke(
            gap.expand2(vec2(3.0, 0.0)),
            2,
            Stroke::new(1.5, palette.select),
            eframe::egui::StrokeKind::Outside,
        );
    }
}

/// A hairline down the middle of a bead: the paint over it is cracked.
fn crack(gap: Rect, stroke: Stroke) -> Shape {
    let turns = (gap.height() / CRACK_TURN).ceil().max(1.0);
    let reach = (0.2 * gap.width()).clamp(0.6, 2.0);
    let at = |turn: u8| {
        let side = if turn.is_multiple_of(2) { -reach } else { reach };
        pos2(gap.center().x + side, gap.top() + gap.height() * f32::from(turn) / turns)
    };
    Shape::line((0..=turns as u8).map(at).collect(), stroke)
}

/// Joints between boards of the section in their order: around the selected one, else from the first on.
fn joints(context: &WindowContext<'_>, state: &SectionState) -> Vec<ShownJoint> {
    let (assessment, day) = (context.assessment, context.day());
    let of_section = |joint: &&JointState| {
        let own = joint.section.and_then(|at| assessment.sections.get(at));
        let between = |joint: &JointState| {
            let layout = assessment.layouts.get(joint.surface);
            layout
                .and_then(|layout| layout.joints.get(joint.joint))
                .is_some_and(|at| at.kind == JointKind::BoardEdge)
        };
        own.is_some_and(|own| std::ptr::eq(own, state)) && between(joint)
    };
    let all: Vec<&JointState> = assessment.joints.iter().filter(of_section).collect();
    let selected = context.selected().map(|(_, joint)| joint);
    let is_selected = |joint: &JointState| selected.is_some_and(|selected| std::ptr::eq(selected, joint));
    let middle = all.iter().position(|joint| is_selected(joint)).unwrap_or(0);
    let shown = (BOARDS - 1).min(all.len());
    let from = middle.saturating_sub(shown / 2).min(all.len() - shown);
    let of = |joint: &JointState| {
        let gap = assessment.gap_at(state, Some(joint), day).unwrap_or_default();
        let bead = assessment.bead_on(state, Some(joint), day).filter(|_| joint.treated);
        ShownJoint { gap, bead, selected: is_selected(joint) }
    };
    all[from..from + shown].iter().map(|joint| of(joint)).collect()
}
