//! The names of the days that the story turns on, over the chart; a click on one turns to its day.

use eframe::egui::{Align2, Color32, CursorIcon, Rect, Role, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

use crate::app::theme;

/// Space between two names.
const BETWEEN: f32 = 10.0;

/// A day with its name.
pub(super) struct Event {
    /// Where it is on the screen, points.
    pub x: f32,
    /// Days from the visit.
    pub day: i64,
    /// What it is called.
    pub name: String,
    /// The color of its line.
    pub color: Color32,
}

/// Writes the names into `row`, each over its day but clear of the others, with a tick down to the day. The day
/// whose name was clicked.
pub(super) fn events(ui: &Ui, row: Rect, mut events: Vec<Event>) -> Option<i64> {
    events.sort_by(|a, b| a.x.total_cmp(&b.x));
    let font = theme::note();
    let galleys: Vec<_> = events
        .iter()
        .map(|event| ui.painter().layout_no_wrap(event.name.clone(), font.clone(), event.color))
        .collect();
    let widths: Vec<f32> = galleys.iter().map(|galley| galley.size().x).collect();
    let days: Vec<f32> = events.iter().map(|event| event.x).collect();
    let middles = middles(&days, &widths, (row.left(), row.right()))?;
    let mut picked = None;
    for ((event, galley), middle) in events.iter().zip(galleys).zip(middles) {
        let place = Align2::CENTER_TOP.anchor_size(pos2(middle, row.top()), galley.size());
        ui.painter().galley(place.min, galley, event.color);
        let id = ui.scope_id().with(("event", event.name.as_str()));
        let stop = ui.interact(place.expand2(vec2(2.0, 1.0)), id, Sense::click());
        stop.widget_info(|| WidgetInfo::labeled(Role::Link, true, event.name.as_str()));
        let stop = stop.on_hover_cursor(CursorIcon::PointingHand);
        if stop.hovered() || stop.has_focus() {
            ui.painter().hline(place.x_range(), place.bottom() - 1.0, Stroke::new(1.0, event.color));
        }
        if stop.clicked() {
            picked = Some(event.day);
        }
        let tick = [pos2(middle, row.bottom() - 4.0), pos2(event.x, row.bottom())];
        ui.painter().line_segment(tick, Stroke::new(1.0, event.color));
    }
    picked
}

/// The middles of names of these widths over these days, in order: within the row, off each other, and each
/// as near to its day as the ones before it let it be. `None` where the row has no room for all.
fn middles(days: &[f32], widths: &[f32], (left, right): (f32, f32)) -> Option<Vec<f32>> {
    let mut ends = left - BETWEEN;
    let mut middles = Vec::with_capacity(days.len());
    for (day, width) in days.iter().zip(widths) {
        let middle = day.max(ends + BETWEEN + width / 2.0);
        middles.push(middle);
        ends = middle + width / 2.0;
    }
    // What was pushed out at the right pushes back.
    let mut begins = right + BETWEEN;
    for (middle, width) in middles.iter_mut().zip(widths).rev() {
        *middle = middle.min(begins - BETWEEN - width / 2.0);
        begins = *middle - width / 2.0;
    }
    (begins >= left - 0.5).then_some(middles)
}

#[cfg(test)]
mod tests {
    use super::middles;

    #[test]
    fn names_keep_clear_of_each_other_and_inside() {
        let widths = [50.0, 40.0, 40.0, 60.0];
        for days in [[0.0, 5.0, 10.0, 300.0], [100.0, 290.0, 295.0, 300.0], [20.0, 90.0, 180.0, 260.0]] {
            let at = middles(&days, &widths, (0.0, 300.0)).expect("there is room");
            let edges: Vec<_> = at.iter().zip(widths).map(|(x, w)| (x - w / 2.0, x + w / 2.0)).collect();
            assert!(edges[0].0 >= 0.0 && edges[3].1 <= 300.0, "{edges:?}");
            assert!(edges.windows(2).all(|pair| pair[1].0 - pair[0].1 >= 9.99), "{edges:?}");
        }
        // Where there is room each stands over its day.
        assert_eq!(middles(&[50.0, 150.0], &[20.0, 20.0], (0.0, 300.0)), Some(vec![50.0, 150.0]));
        assert_eq!(middles(&[50.0, 60.0], &[200.0, 200.0], (0.0, 300.0)), None);
    }
}
