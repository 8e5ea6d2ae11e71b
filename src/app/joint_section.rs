//! The cut through one joint on the day shown: boards, tongue, V and bead, to scale and enlarged.

use eframe::egui::{
    Align2, Color32, FontId, Painter, Pos2, Rect, Role, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2,
};

use super::context::Cx;
use super::look;
use crate::joint::demand;
use crate::measure::{Length, Percent, show_number};
use crate::surface::BoardSpec;

/// Points for a metre: a 3/4 in board is 80 points thick.
const SCALE: f32 = 4200.0;

pub(super) fn joint_section(ui: &mut Ui, cx: &mut Cx<'_>) {
    let size = vec2(ui.available_width(), ui.available_height());
    let (response, painter) = ui.allocate_painter(size, Sense::hover());
    let rect = response.rect;
    painter.rect_filled(rect, 6, cx.palette.ground);
    let Some((spec, gap, sealed)) = cut(cx) else {
        response.widget_info(|| WidgetInfo::labeled(Role::Image, true, "Joint section"));
        return;
    };
    let now = sealed.filter(|_| cx.day() >= cx.found.seal_day);
    let centre = pos2(rect.center().x, rect.top() + 46.0);
    paint_boards(&painter.with_clip_rect(rect), cx, &spec, gap, centre);
    let words = match now {
        Some(sealed) => bead(&painter.with_clip_rect(rect), cx, &spec, gap, sealed, centre),
        None => ("before sealing".to_owned(), cx.palette.soft),
    };
    let font = FontId::new(15.0, look::strong_family());
    painter.text(
        rect.left_top() + vec2(10.0, 7.0),
        Align2::LEFT_TOP,
        gap.show(cx.units()),
        font,
        cx.palette.ink,
    );
    let title = "cut through the joint";
    painter.text(
        rect.right_top() + vec2(-10.0, 9.0),
        Align2::RIGHT_TOP,
        title,
        FontId::proportional(11.0),
        cx.palette.soft,
    );
    painter.text(
        rect.left_bottom() + vec2(10.0, -8.0),
        Align2::LEFT_BOTTOM,
        &words.0,
        FontId::proportional(12.0),
        words.1,
    );
    let name = format!("Joint section: gap {}, {}", gap.show(cx.units()), words.0);
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, &name));
    response.on_hover_text("The cut through the joint on the day shown in the year strip, to scale.");
}

/// The boards, the gap on the day shown, and the gap on the day of sealing.
fn cut(cx: &Cx<'_>) -> Option<(BoardSpec, Length, Option<Length>)> {
    let state = cx.told_section()?;
    let spec = cx.assessed.surfaces.get(state.surface)?.sections.get(state.section)?.board.clone();
    let on = |day: usize| match cx.selected() {
        Some((_, joint)) => cx.found.gap_on(joint, day),
        None => Some(state.mean_gap_on(day)),
    };
    let sealed = on(cx.found.seal_day).filter(|gap| *gap >= cx.assessed.plan.narrowest);
    Some((spec, on(cx.day())?, sealed))
}

fn px(length: Length) -> f32 {
    length.to_m() as f32 * SCALE
}

/// The face is up on screen: `top` is the middle of the joint on the face.
fn paint_boards(painter: &Painter, cx: &Cx<'_>, spec: &BoardSpec, gap: Length, top: Pos2) {
    let (thick, v) = (px(spec.thickness).clamp(20.0, 110.0), px(spec.profile.v_leg()));
    let half = px(gap).max(0.0) / 2.0;
    let tongue = px(spec.tongue().unwrap_or_default()).clamp(0.0, 80.0);
    let (high, low) = (top.y + thick * 0.36, top.y + thick * 0.66);
    let reach = 300.0;
    let edge = Stroke::new(1.2, cx.palette.wood_line);
    let at = |x: f32, y: f32| pos2(top.x + x, y);
    // The left board carries the tongue; its fill is drawn in convex parts.
    let fill = |points: Vec<Pos2>| painter.add(Shape::convex_polygon(points, cx.palette.wood, Stroke::NONE));
    let (left, right) = (-half, half);
    fill(vec![
        at(-reach, top.y),
        at(left - v, top.y),
        at(left, top.y + v),
        at(left, top.y + thick),
        at(-reach, top.y + thick),
    ]);
    fill(vec![at(left, high), at(left + tongue, high + 2.0), at(left + tongue, low - 2.0), at(left, low)]);
    painter.add(Shape::line(
        vec![
            at(-reach, top.y),
            at(left - v, top.y),
            at(left, top.y + v),
            at(left, high),
            at(left + tongue, high + 2.0),
            at(left + tongue, low - 2.0),
            at(left, low),
            at(left, top.y + thick),
            at(-reach, top.y + thick),
        ],
        edge,
    ));
    // The right board, with its groove.
    let depth = tongue + 3.0;
    fill(vec![
        at(right + v, top.y),
        at(reach, top.y),
        at(reach, high - 1.0),
        at(right, high - 1.0),
        at(right, top.y + v),
    ]);
    fill(vec![
        at(right + depth, high - 1.0),
        at(reach, high - 1.0),
        at(reach, low + 1.0),
        at(right + depth, low + 1.0),
    ]);
    fill(vec![
        at(right, low + 1.0),
        at(reach, low + 1.0),
        at(reach, top.y + thick),
        at(right, top.y + thick),
    ]);
    // The tongue lies over what the groove's fill covered.
    painter.add(Shape::line(
        vec![
            at(reach, top.y),
            at(right + v, top.y),
            at(right, top.y + v),
            at(right, high - 1.0),
            at(right + depth, high - 1.0),
            at(right + depth, low + 1.0),
            at(right, low + 1.0),
            at(right, top.y + thick),
            at(reach, top.y + thick),
        ],
        edge,
    ));
}

/// Paints the bead and says how it fares.
fn bead(
    painter: &Painter,
    cx: &Cx<'_>,
    spec: &BoardSpec,
    gap: Length,
    sealed: Length,
    top: Pos2,
) -> (String, Color32) {
    let Some(sealant) = cx.shelf.sealant(&cx.assessed.plan.sealant) else {
        return (String::new(), cx.palette.soft);
    };
    let sealant = sealant.over(cx.shelf.breaker(&cx.assessed.plan));
    let asked = demand(sealed, gap, gap, Length::ZERO);
    let holds = asked.is_some_and(|asked| sealant.takes(asked));
    let pull = asked.map_or(Percent::ZERO, |asked| asked.stretch);
    let squeeze = asked.map_or(Percent::ZERO, |asked| asked.squeeze);
    let v = px(spec.profile.v_leg());
    let half = px(gap) / 2.0;
    // The bead keeps its section: narrower it bulges, wider it thins.
    let depth = px(sealed.max(cx.assessed.plan.bead.least_depth));
    let thin = if gap > Length::ZERO { (sealed.to_m() / gap.to_m()) as f32 } else { 2.0 };
    let depth = depth * thin.clamp(0.4, 1.6);
    let (face, back) = (top.y + v * 0.7, top.y + v * 0.7 + depth);
    let colour = if holds { cx.palette.bead } else { cx.palette.error };
    let torn = pull > sealant.stretch;
    let slit = if torn { (px(gap - sealed) / 2.0).max(1.5) } else { 0.0 };
    let part = |from: f32, to: f32| {
        let rect = Rect::from_min_max(pos2(top.x + from, face), pos2(top.x + to, back));
        painter.rect_filled(rect, 1, colour);
    };
    // A torn bead has let go of the right-hand board.
    part(-half, half - slit);
    let words = if torn {
        format!("pulled {} %, torn: takes {}", show_number(pull.to_pct(), 0), sealant.stretch.show())
    } else if squeeze > sealant.squeeze {
        format!("squeezed {} %, out: takes {}", show_number(squeeze.to_pct(), 0), sealant.squeeze.show())
    } else if pull > squeeze {
        format!("bead pulled {} % of {}", show_number(pull.to_pct(), 0), sealant.stretch.show())
    } else {
        format!("bead squeezed {} % of {}", show_number(squeeze.to_pct(), 0), sealant.squeeze.show())
    };
    (words, if holds { cx.palette.good } else { cx.palette.error })
}
