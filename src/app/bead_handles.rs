//! Handles on the planned bead in the joint section: how far the V is filled, how far the bead reaches into the
//! slot, how hollow it is tooled. Dragging one, or the arrow keys on it, changes the same entry that its field
//! does.

use eframe::egui::{
    Id, Key, Painter, Pos2, Rect, Response, Sense, Shape, Stroke, Ui, Vec2, WidgetInfo, pos2, vec2,
};

use super::context::WindowContext;
use super::theme;
use crate::assess::SectionState;
use crate::job::Job;
use crate::job::fields::{self, At, Field};
use crate::joint::{BeadForm, BeadLay, JointEdges};
use crate::measure::{Length, Percent, Quantity, Units};
use crate::words::say;

/// How the joint lies on the screen.
#[derive(Clone, Copy)]
pub(super) struct Scale {
    /// The middle of the joint at the boards' face.
    pub top: Pos2,
    /// Points for a meter.
    pub scale: f64,
}

impl Scale {
    pub fn at(self, [x, y]: [f64; 2]) -> Pos2 {
        self.top + vec2((x * self.scale) as f32, (y * self.scale) as f32)
    }
}

/// What a handle changes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
enum Handle {
    Fill,
    InSlot,
    Depth,
    Hollow,
}

/// The planned bead in the slot that is shown, before it cures.
#[derive(Clone, Copy)]
struct Plan {
    lay: BeadLay,
    edges: JointEdges,
    form: BeadForm,
    /// Half of the slot's width, m.
    half: f64,
}

impl Handle {
    const fn field(self) -> &'static Field {
        match self {
            Self::Fill => &fields::V_FILL,
            Self::InSlot => &fields::BEAD_IN_SLOT,
            Self::Depth => &fields::BEAD_DEPTH,
            Self::Hollow => &fields::BEAD_HOLLOW,
        }
    }

    fn get(self, form: &BeadForm) -> Quantity {
        match self {
            Self::Fill => Quantity::Percent(form.v_filled),
            Self::InSlot => Quantity::Length(form.in_slot),
            Self::Depth => Quantity::Length(form.least_depth),
            Self::Hollow => Quantity::Percent(form.hollow),
        }
    }

    /// The form with this handle's figure, in its unit, within what can be laid.
    fn set(self, plan: &Plan, figure: f64) -> BeadForm {
        let form = plan.form;
        let share = |low: Percent, high: Percent| Percent::pct(figure.clamp(low.to_pct(), high.to_pct()));
        let within = |low: Length, high: Length| Length::m(figure.clamp(low.to_m(), high.to_m()));
        match self {
            Self::Fill => BeadForm { v_filled: share(BeadForm::LEAST_FILL, Percent::pct(100.0)), ..form },
            Self::InSlot => BeadForm { in_slot: within(Length::ZERO, plan.edges.slot_to_tongue()), ..form },
            Self::Depth => BeadForm { least_depth: within(Length::mm(0.5), MOST_DEPTH), ..form },
            Self::Hollow => BeadForm { hollow: share(Percent::ZERO, BeadForm::MOST_HOLLOW), ..form },
        }
    }

    fn figure(self, form: &BeadForm) -> f64 {
        match self {
            Self::Fill => form.v_filled.to_pct(),
            Self::InSlot => form.in_slot.to_m(),
            Self::Depth => form.least_depth.to_m(),
            Self::Hollow => form.hollow.to_pct(),
        }
    }

    /// What it moves by.
    fn step(self, units: Units) -> f64 {
        match (self, units) {
            (Self::Fill, _) => 5.0,
            (Self::Hollow, _) => 1.0,
            (_, Units::Inches) => Length::inches(1.0 / 64.0).to_m(),
            (_, Units::Millimeters) => Length::mm(0.5).to_m(),
        }
    }

    /// Whether its figure grows upward.
    const fn grows_up(self) -> bool {
        matches!(self, Self::Fill)
    }
}

/// The deepest that a bead is dragged into a reveal or between square edges.
const MOST_DEPTH: Length = Length::inches(0.5);
/// Size of a handle, and of what can be taken hold of.
const SIZE: f32 = 8.0;
const HOLD: f32 = 16.0;

impl Plan {
    fn has_v(&self) -> bool {
        self.edges.v_leg > Length::ZERO && self.lay != BeadLay::Reveal
    }

    fn handles(&self) -> Vec<Handle> {
        let mut handles = vec![Handle::Hollow];
        if self.has_v() {
            handles.push(Handle::Fill);
        }
        match self.lay {
            BeadLay::Bridge if self.has_v() => handles.push(Handle::InSlot),
            BeadLay::Bridge | BeadLay::Reveal => handles.push(Handle::Depth),
            BeadLay::OnTongue => {}
        }
        handles
    }

    /// Height of the V that is filled, m.
    fn filled(&self) -> f64 {
        if self.has_v() { self.edges.v_leg.to_m() * self.form.v_filled.to_fraction() } else { 0.0 }
    }

    /// Depth of the face's edges and of the back below the boards' face, m.
    fn face_and_back(&self) -> (f64, f64) {
        let v = self.edges.v_leg.to_m();
        let depth = self.lay.design(self.edges, &self.form).depth.to_m();
        (v - self.filled(), v + depth)
    }

    /// Half of the face's width, m.
    fn half_face(&self) -> f64 {
        self.half + self.filled()
    }

    fn sag(&self) -> f64 {
        2.0 * self.half_face() * self.form.hollow.to_fraction()
    }

    fn place(&self, handle: Handle) -> [f64; 2] {
        let (face, back) = self.face_and_back();
        match handle {
            Handle::Fill => [self.half_face(), face],
            Handle::Hollow => [0.0, face + self.sag()],
            Handle::InSlot | Handle::Depth => [0.0, back],
        }
    }

    /// The form after a handle was dragged to this depth below the boards' face, m.
    fn dragged(&self, handle: Handle, depth: f64, units: Units) -> BeadForm {
        let v = self.edges.v_leg.to_m();
        let figure = match handle {
            Handle::Fill => 100.0 * (1.0 - depth / v.max(1e-9)),
            Handle::InSlot | Handle::Depth => depth - v,
            Handle::Hollow => 100.0 * (depth - self.face_and_back().0) / (2.0 * self.half_face()),
        };
        let step = handle.step(units);
        handle.set(self, (figure / step).round() * step)
    }

    /// Its outline as laid.
    fn outline(&self) -> Vec<[f64; 2]> {
        let ((face, back), v) = (self.face_and_back(), self.edges.v_leg.to_m());
        let (wide, sag) = (self.half_face(), self.sag());
        let arc = (-8..=8).map(|at| {
            let x = f64::from(at) / 8.0;
            [x * wide, face + sag * (1.0 - x * x)]
        });
        arc.chain([[self.half, v], [self.half, back], [-self.half, back], [-self.half, v], [-wide, face]])
            .collect()
    }
}

/// Draws the planned bead as laid in a slot this wide, with its handles.
pub(super) fn bead_handles(
    ui: &Ui,
    context: &mut WindowContext<'_>,
    painter: &Painter,
    scale: Scale,
    (state, gap): (&SectionState, Length),
) {
    let Some(mut plan) = planned(context, state, gap) else { return };
    let key = Id::unique("bead-as-dragged");
    let kept: Option<BeadForm> = ui.data(|data| data.get_temp(key));
    let at_rest = plan;
    plan.form = kept.unwrap_or(plan.form);
    let outline: Vec<Pos2> = plan.outline().into_iter().map(|at| scale.at(at)).collect();
    painter.extend(Shape::dashed_line(&outline, Stroke::new(1.2, context.palette.accent), 4.0, 3.0));
    for handle in plan.handles() {
        let at = scale.at(plan.place(handle));
        let rect = Rect::from_center_size(at, Vec2::splat(HOLD));
        let response = ui.interact(rect, Id::unique(("bead-handle-id", handle)), Sense::click_and_drag());
        let figure = context.words.figures().quantity(handle.get(&plan.form));
        let name =
            say!(context.words, "bead-handle", name = &handle.field().label(context.words), figure = &figure);
        response.widget_info(|| WidgetInfo::slider(true, handle.figure(&plan.form), &name));
        if response.clicked() || response.drag_started() {
            response.request_focus();
        }
        if response.dragged() {
            let moved = f64::from(response.total_drag_delta().unwrap_or_default().y) / scale.scale;
            let form = at_rest.dragged(handle, at_rest.place(handle)[1] + moved, context.units());
            ui.data_mut(|data| data.insert_temp(key, form));
        }
        let done =
            if response.drag_stopped() { kept } else { stepped(ui, context, &response, handle, &plan) };
        if response.drag_stopped() {
            ui.data_mut(|data| data.remove::<BeadForm>(key));
        }
        if let Some(form) = done {
            put(context, handle, &form);
        }
        paint_handle(painter, context, &response, at, &figure);
        response.on_hover_text(name);
    }
}

/// The planned bead in a slot as wide as the boards of a section are apart. `None` where none is laid.
fn planned(context: &WindowContext<'_>, state: &SectionState, gap: Length) -> Option<Plan> {
    if !context.assessment.lays_beads() {
        return None;
    }
    let board = &context.job.surfaces.get(state.surface)?.sections.get(state.section)?.board;
    let lay = context.assessment.catalog.lay(&context.job.plan);
    let half = 0.5 * lay.slot(gap).to_m();
    Some(Plan { lay, edges: JointEdges::of(board), form: context.job.plan.bead.form(), half })
}

/// The form after an arrow key on a handle.
fn stepped(
    ui: &Ui,
    context: &WindowContext<'_>,
    response: &Response,
    handle: Handle,
    plan: &Plan,
) -> Option<BeadForm> {
    if !response.has_focus() {
        return None;
    }
    ui.memory_mut(|memory| {
        let filter = eframe::egui::EventFilter { vertical_arrows: true, ..Default::default() };
        memory.set_focus_lock_filter(response.id, filter);
    });
    let pressed = |key| ui.input(|input| input.key_pressed(key));
    let up = f64::from(i8::from(pressed(Key::ArrowUp)) - i8::from(pressed(Key::ArrowDown)));
    let by = if handle.grows_up() { up } else { -up } * handle.step(context.units());
    (by != 0.0).then(|| handle.set(plan, handle.figure(&plan.form) + by))
}

/// Changes the entry that a handle is of.
fn put(context: &mut WindowContext<'_>, handle: Handle, form: &BeadForm) {
    let field = handle.field();
    let (Some(figure), value) = (field.figure(), handle.get(form)) else { return };
    if handle.get(&context.job.plan.bead.form()) == value {
        return;
    }
    context
        .edit(format!("field-{}", field.id), move |job: &mut Job| (figure.write)(job, At::ONCE, Some(value)));
}

fn paint_handle(painter: &Painter, context: &WindowContext<'_>, response: &Response, at: Pos2, figure: &str) {
    let palette = context.palette;
    let lit = response.hovered() || response.has_focus() || response.dragged();
    let fill = if lit { palette.accent } else { palette.raised };
    let size = if lit { SIZE + 2.0 } else { SIZE };
    let square = Rect::from_center_size(at, Vec2::splat(size));
    painter.rect(square, 2, fill, Stroke::new(1.4, palette.accent), eframe::egui::StrokeKind::Inside);
    if response.dragged() || response.has_focus() {
        let beside = pos2(at.x + SIZE + 4.0, at.y);
        painter.text(beside, eframe::egui::Align2::LEFT_CENTER, figure, theme::note(), palette.ink);
    }
}
