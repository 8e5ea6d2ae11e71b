//! The cut through one joint on the day shown: boards, tongue, V and bead, to scale and enlarged.

use eframe::egui::{
    Align, Align2, Button, Color32, FontId, Id, Label, Layout, Mesh, Painter, Pos2, Rect, RichText, Role,
    Sense, Shape, Stroke, StrokeKind, TextWrapMode, Ui, WidgetInfo, pos2, vec2,
};
use geo::{BoundingRect as _, Polygon, TriangulateEarcut as _};

use super::bead_handles::{Scale, bead_handles};
use super::context::WindowContext;
use super::theme::{self, Palette};
use super::time_line;
use super::widgets::fitted;
use crate::assess::{RepairOption, Still};
use crate::joint::{BeadCut, BeadState, Cut};
use crate::measure::Length;
use crate::repair::Outcome;
use crate::words::{Arg, Say as _, Words, owner_page, say, sealing};

/// Points for a meter, at least, where the height allows it: a 3/4 in board is 80 points thick.
const SCALE: f64 = 4200.0;
/// Share of the boards' thickness that is shown close up.
const NEAR: f64 = 0.5;
/// Where it is kept whether the bead is shown close up, and how wide the button is that comes close.
const CLOSE_UP: &str = "bead-close-up";
const CLOSE_UP_WIDTH: f32 = 132.0;
/// Height of a picture of January or August.
const STILL_HEIGHT: f32 = 130.0;
/// The same in the strip of all beads.
const STRIP_HEIGHT: f32 = 84.0;
/// Radius of the ring around the place of a bead that goes first.
const RING: f32 = 6.0;
/// Thickness at which a paint film is drawn, points.
const FILM: f32 = 2.0;
/// Boards are drawn so far to either side.
const REACH: Length = Length::mm(72.0);

pub(super) fn joint_section(ui: &mut Ui, context: &mut WindowContext<'_>) {
    let size = vec2(ui.available_width(), ui.available_height());
    let (response, painter) = ui.allocate_painter(size, Sense::hover());
    let rect = response.rect;
    painter.rect_filled(rect, 6, context.palette.ground);
    let Some((cut, gap)) = cut(context) else {
        response.widget_info(|| WidgetInfo::labeled(Role::Image, true, context.words.text("section-view")));
        return;
    };
    let painter = painter.with_clip_rect(rect);
    let close_up = context.assessment.lays_beads() && is_close_up(ui);
    let scale = paint(&painter, context.palette, (&cut, None), rect, ((40.0, 32.0), close_up));
    if let Some(state) = context.shown_section().filter(|_| close_up) {
        bead_handles(ui, context, &painter, scale, (state, gap));
    }
    let first = cut.bead.as_ref().and_then(BeadCut::goes_first);
    if let Some((at, _)) = first {
        let ring = Stroke::new(1.6, context.palette.ink);
        painter.circle_stroke(scale.at([at.0, at.1]), RING, ring);
    }
    let (words, color) = match &cut.bead {
        Some(bead) => state_of(context, bead),
        None if !context.assessment.lays_beads() => (String::new(), context.palette.soft),
        None if usize::try_from(context.day()).map_or(true, |day| day < context.assessment.seal_day) => {
            (context.words.text("section-before-sealing").into_owned(), context.palette.soft)
        }
        None => (context.words.text("section-not-sealed").into_owned(), context.palette.soft),
    };
    let words = match first {
        Some((_, place)) => {
            let place = Arg::Id(sealing::place_key(place));
            say!(context.words, "section-first", state = &words, place = place)
        }
        None => words,
    };
    let words = hint_of_form(context).filter(|_| close_up).unwrap_or(words);
    let gap = context.words.figures().length(gap);
    let gap = match time_line::name_of_day(context) {
        Some(name) => say!(context.words, "section-gap-named", gap = &gap, name = &name),
        None => gap,
    };
    let room = rect.width() - 20.0;
    let text = |at, align: Align2, words: &str, font, color, size| {
        let galley = fitted(&painter, words, font, color, size);
        let place = align.anchor_size(at, galley.size());
        // Close up, the boards come down to what is said below them.
        painter.rect_filled(place.expand(3.0), 4, context.palette.ground);
        painter.galley(place.min, galley, color);
        place
    };
    let strong = FontId::new(15.0, theme::strong_family());
    let at = rect.left_top() + vec2(10.0, 7.0);
    let left = text(at, Align2::LEFT_TOP, &gap, strong, context.palette.ink, (room, 1));
    let small = theme::note();
    let (at, beside) = (rect.right_top() + vec2(-10.0, 9.0), room - left.width() - 8.0);
    // The homeowner shapes no bead.
    if context.assessment.lays_beads() && context.view.presentation.page.is_none() {
        let button =
            Rect::from_min_max(pos2(at.x - beside.min(CLOSE_UP_WIDTH), at.y - 3.0), at + vec2(3.0, 19.0));
        close_up_button(ui, context, button, close_up);
    } else {
        let title = context.words.text("section-title");
        text(at, Align2::RIGHT_TOP, &title, small, context.palette.soft, (beside, 2));
    }
    let font = theme::note();
    text(rect.left_bottom() + vec2(10.0, -8.0), Align2::LEFT_BOTTOM, &words, font, color, (room, 3));
    let name = say!(context.words, "section-name", gap = &gap, state = &words);
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, &name));
    response.on_hover_text(context.words.text("section-view.hint"));
}

/// How a bead and the paint over it fare, in words and a color.
fn state_of(context: &WindowContext<'_>, bead: &BeadCut) -> (String, Color32) {
    let state = bead.fares.say(context.words);
    match (bead.fares.shows(), bead.fares.holds()) {
        (true, _) => (state, context.palette.error),
        _ if bead.paint_cracked => {
            (say!(context.words, "section-paint-cracked", state = &state), context.palette.error)
        }
        (false, true) => (state, context.palette.good),
        (false, false) => (state, context.palette.warn),
    }
}

/// Whether the bead is shown close up, with handles.
fn is_close_up(ui: &Ui) -> bool {
    ui.data(|data| data.get_temp(Id::unique(CLOSE_UP)).unwrap_or(false))
}

/// Comes close to the bead, to change it, or goes back to the whole joint.
fn close_up_button(ui: &mut Ui, context: &WindowContext<'_>, rect: Rect, close_up: bool) {
    let message = if close_up { "section-whole" } else { "section-shape-bead" };
    let text = RichText::new(context.words.text(message)).small();
    let button = ui.put(rect, Button::new(text).small().wrap_mode(TextWrapMode::Truncate));
    if button.on_hover_text(context.words.text("section-shape-bead.hint")).clicked() {
        ui.data_mut(|data| data.insert_temp(Id::unique(CLOSE_UP), !close_up));
    }
}

/// What speaks against the planned bead, the gravest.
fn hint_of_form(context: &WindowContext<'_>) -> Option<String> {
    let state = context.shown_section()?;
    let section = context.assessment.bead(state)?.section(state.mean_gap_on(context.assessment.seal_day));
    sealing::findings(&section.findings(), context.words).into_iter().next()
}

/// The cut on the day shown, and the gap then.
fn cut(context: &WindowContext<'_>) -> Option<(Cut, Length)> {
    let joint = context.selected().map(|(_, joint)| joint);
    context.assessment.cut(&context.assessment.job, context.shown_section()?, joint, context.day(), REACH)
}

/// The typical joint in January and August once an option is done, side by side.
pub(super) fn season_stills(ui: &mut Ui, context: &WindowContext<'_>, option: &RepairOption) {
    ui.columns(option.stills.len().max(1), |columns| {
        for (ui, still) in columns.iter_mut().zip(&option.stills) {
            let (month, says) = still_texts(context.words, still, context.assessment.advises_against(option));
            let name = say!(context.words, "options-still", month = &month, says = &says);
            picture(ui, context, still, &name, (STILL_HEIGHT, false));
            // Columns fill their width, which would space out the words of a text to fill it too.
            ui.with_layout(Layout::top_down(Align::Min), |ui| {
                ui.strong(month);
                ui.add(Label::new(RichText::new(says).small()).wrap());
            });
        }
    });
}

/// A still in so much room, without words; a screen reader says them.
pub(super) fn paint_still(ui: &mut Ui, context: &WindowContext<'_>, still: &Still, rect: Rect) {
    let painter = ui.painter().with_clip_rect(rect.intersect(ui.clip_rect()));
    painter.rect_filled(rect, 4, context.palette.ground);
    paint(&painter, context.palette, (&still.cut, still.cover), rect, ((8.0, 18.0), false));
    let month = context.words.figures().month(still.date);
    let at = rect.left_bottom() + vec2(5.0, -2.0);
    painter.text(at, Align2::LEFT_BOTTOM, month, theme::note(), context.palette.soft);
}

/// The beads of all options that lay one, in January and August, close up and side by side.
pub(super) fn bead_strip(ui: &mut Ui, context: &WindowContext<'_>) {
    let words = context.words;
    let lays =
        |option: &&RepairOption| matches!(option.outcome, Outcome::Bead { .. }) && !option.stills.is_empty();
    let options: Vec<&RepairOption> = context.assessment.options.iter().filter(lays).collect();
    for option in options {
        ui.add(Label::new(RichText::new(words.called(&option.name)).small().strong()).wrap());
        ui.columns(option.stills.len(), |columns| {
            for (ui, still) in columns.iter_mut().zip(&option.stills) {
                let (month, says) = still_texts(words, still, context.assessment.advises_against(option));
                let option = Arg::Called(&option.name);
                let name = say!(words, "options-bead-still", option = option, month = &month, says = &says);
                picture(ui, context, still, &name, (STRIP_HEIGHT, true));
                let said = say!(words, "options-still", month = &month, says = &says);
                ui.with_layout(Layout::top_down(Align::Min), |ui| {
                    ui.add(Label::new(RichText::new(said).small()).wrap());
                });
            }
        });
    }
}

/// The month of a still, and what is to be seen in it.
fn still_texts(words: &Words, still: &Still, advised_against: bool) -> (String, String) {
    let says = match &still.repaired {
        Some(repaired) => owner_page::repaired(repaired, advised_against, words),
        None => words.figures().length(still.gap),
    };
    (words.figures().month(still.date), says)
}

fn picture(
    ui: &mut Ui,
    context: &WindowContext<'_>,
    still: &Still,
    name: &str,
    (height, close_up): (f32, bool),
) {
    let (response, painter) = ui.allocate_painter(vec2(ui.available_width(), height), Sense::hover());
    let rect = response.rect;
    painter.rect_filled(rect, 6, context.palette.ground);
    let painter = painter.with_clip_rect(rect);
    paint(&painter, context.palette, (&still.cut, still.cover), rect, ((14.0, 10.0), close_up));
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, name));
}

/// The color of a bead by how much of its class it uses: its own up to half of it, then more and more that of
/// doubt, and past all of it where it is seen, that of what is wrong.
fn bead_color(palette: &Palette, fares: BeadState) -> Color32 {
    if fares.shows() {
        return palette.error;
    }
    let share = (fares.used().to_fraction() as f32 - 0.5) / 0.5;
    palette.bead.lerp_to_gamma(palette.warn, share.clamp(0.0, 1.0))
}

/// The paint film over a bead as a line along its face; where it is cracked, it has a break in the middle.
fn paint_film(painter: &Painter, palette: &Palette, bead: &BeadCut, face: &[Pos2]) {
    let film = |points: &[Pos2], color| {
        painter.add(Shape::line(points.to_vec(), Stroke::new(FILM, color)));
    };
    let middle = face.len() / 2;
    if !bead.paint_cracked || face.len() < 3 {
        return film(face, palette.ink);
    }
    let broken = 0.5 * (FILM + (face[middle + 1].x - face[middle - 1].x).abs() * 0.5);
    let lip = |from: Pos2, to: Pos2| to + (from - to).normalized() * broken;
    let (left, right) = (lip(face[0], face[middle]), lip(face[face.len() - 1], face[middle]));
    film(&[&face[..middle], &[left][..]].concat(), palette.error);
    film(&[&[right][..], &face[middle + 1..]].concat(), palette.error);
    // The lips of the crack curl up.
    for (lip, out) in [(left, -1.0), (right, 1.0)] {
        painter.line_segment([lip, lip + vec2(out, -2.0) * FILM], Stroke::new(FILM, palette.error));
    }
}

/// The face is up on screen, with so much room above and below for what is said; close up, only what is near the
/// bead is to be seen.
fn paint(
    painter: &Painter,
    palette: &Palette,
    (cut, cover): (&Cut, Option<geo::Rect>),
    rect: Rect,
    ((above, below), close_up): ((f32, f32), bool),
) -> Scale {
    let top = pos2(rect.center().x, rect.top() + above);
    let thickness = cut.groove.bounding_rect().map_or(0.0, |bounds| bounds.max().y);
    let room = f64::from(rect.height() - above - below).max(20.0);
    let all_of_it = f64::from(rect.width()) / (2.0 * REACH.to_m());
    let whole = SCALE.max(all_of_it).min(room / thickness.max(1e-3));
    let shown = Scale { top, scale: if close_up { room / (NEAR * thickness).max(1e-3) } else { whole } };
    let at = |point| shown.at(point);
    let fill = |shape: &Polygon, color: Color32| {
        let triangles = shape.earcut_triangles_raw();
        let mut mesh = Mesh::default();
        for corner in triangles.vertices {
            mesh.colored_vertex(at(corner), color);
        }
        mesh.indices.extend(triangles.triangle_indices.iter().map(|&index| index as u32));
        painter.add(Shape::mesh(mesh));
    };
    for board in [&cut.groove, &cut.tongue] {
        fill(board, palette.cut);
        let edge = board.exterior().coords().map(|corner| at([corner.x, corner.y])).collect();
        painter.add(Shape::line(edge, Stroke::new(1.4, palette.cut_line)));
    }
    if let Some(bead) = &cut.bead {
        if let Some(behind) = &bead.behind {
            fill(behind, palette.trim);
        }
        fill(&bead.section, bead_color(palette, bead.fares));
        let face: Vec<Pos2> = bead.face().map(|(x, y)| at([x, y])).collect();
        paint_film(painter, palette, bead, &face);
    }
    if let Some(cover) = cover {
        let (low, high) = (at([cover.min().x, cover.min().y]), at([cover.max().x, cover.max().y]));
        painter.rect(
            Rect::from_two_pos(low, high),
            0,
            palette.cut,
            Stroke::new(1.4, palette.cut_line),
            StrokeKind::Inside,
        );
    }
    shown
}
