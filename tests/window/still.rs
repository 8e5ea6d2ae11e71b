//! Nothing moves under the pointer because something was entered.
//!
//! - Every field of every room is typed into, well and badly; buttons, fields and lists above it, beside
//!   it and in the other panes stay where they are.
//! - Typing in one pane scrolls no other.
//! - The wheel zooms the drawing about the pointer, and cannot lose the surface.
//! - On a small screen, and zoomed in by four steps, the answer folds to its first line.

use crate::driven::{Window, click, click_first, window, window_of};
use eframe::egui::{
    Event, Key, Modifiers, MouseWheelSource, MouseWheelUnit, Pos2, Rect, Role, TouchPhase, Vec2,
};
use egui_kittest::kittest::{AccessKitNode, NodeT as _, Queryable as _, by};
use gapwright::job::{Job, demo_job, file};

/// What is typed: a figure that most fields take, one that leaves out what it is of, one that hardly any
/// field takes, and no figure at all.
pub const TYPED: [&str; 4] = ["7", "0", "999999", "what"];

/// What can be clicked or typed into.
pub const ROLES: [Role; 8] = [
    Role::Button,
    Role::TextInput,
    Role::MultilineTextInput,
    Role::ComboBox,
    Role::RadioButton,
    Role::CheckBox,
    Role::Link,
    Role::DisclosureTriangle,
];

/// Where each thing is that can be clicked or typed into. What lies in the drawing is left out: the boards
/// are what is being entered.
fn places(window: &Window) -> Vec<(Role, Rect)> {
    let drawing = window.query_by_label("Drawing").map(|node| node.rect());
    let all = window.get_all(by().predicate(|node| ROLES.contains(&node.role())));
    // What is told after a command goes by itself after a while.
    let told = |label: Option<String>| label.as_deref() == Some("Dismiss");
    all.filter(|node| !told(node.accesskit_node().label()))
        .map(|node| (node.accesskit_node().role(), node.rect()))
        .filter(|(_, rect)| !drawing.is_some_and(|drawing| drawing.contains_rect(*rect)))
        .collect()
}

fn fields(window: &Window) -> Vec<(String, Rect)> {
    window
        .query_all_by_role(Role::TextInput)
        .filter(|node| !node.accesskit_node().is_disabled())
        .filter_map(|node| Some((node.accesskit_node().label()?, node.rect())))
        .collect()
}

/// The left edge of the pane at the right, if there is one: its divider is dragged there.
fn divider(window: &Window) -> Option<f32> {
    let splitters = window.query_all_by_role(Role::Splitter);
    splitters
        .map(|node| node.rect())
        .filter(|rect| rect.height() > rect.width())
        .map(|rect| rect.center().x)
        .next()
}

/// Whether something is not to move when `field` is typed into: it stands higher, beside it, or in
/// another pane.
fn must_stay(rect: Rect, field: Rect, divider: Option<f32>) -> bool {
    let other_pane = divider.is_some_and(|x| (rect.center().x < x) != (field.center().x < x));
    other_pane || rect.center().y <= field.bottom()
}

fn is_still_there(place: &(Role, Rect), after: &[(Role, Rect)], time_line: Option<Rect>) -> bool {
    let near = |a: Pos2, b: Pos2| (a - b).length() < 1.0;
    // A link of the answer may go with what it said; nothing stands in its place then.
    let beside = |rect: &Rect| rect.y_range().contains(place.1.center().y) && rect.intersects(place.1);
    if place.0 == Role::Link && !after.iter().any(|(_, rect)| beside(rect)) {
        return true;
    }
    // The name of a day stands over its day on the time line and goes along with it, in its row.
    let along = |rect: &Rect| {
        let moved = Vec2::new(rect.left() - place.1.left(), 0.0);
        near(rect.left_top() - moved, place.1.left_top())
            && near(rect.right_bottom() - moved, place.1.right_bottom())
    };
    if place.0 == Role::Link && time_line.is_some_and(|row| row.intersects(place.1)) {
        return after.iter().any(|(role, rect)| *role == Role::Link && along(rect));
    }
    // A button whose text changes may change its width; where it begins counts.
    after.iter().filter(|(role, _)| *role == place.0).any(|(_, rect)| {
        near(rect.left_top(), place.1.left_top()) || near(rect.right_top(), place.1.right_top())
    })
}

/// Types into each field of the room that is shown; tells what moved.
fn moved_by_typing(window: &mut Window, room: &str, moved: &mut Vec<String>) -> usize {
    let count = fields(window).len();
    for at in 0..count {
        // Where it is now: what was typed before may have offered something above it.
        let Some((name, field)) = fields(window).into_iter().nth(at) else { continue };
        // Long lists are alike: one of the texts each.
        let long = at >= 8;
        for (_, text) in TYPED.into_iter().enumerate().filter(|(turn, _)| !long || at % TYPED.len() == *turn)
        {
            let before = places(window);
            let divider = divider(window);
            let job = window.state().job().clone();
            window.hover_at(field.center());
            window.drag_at(field.center());
            window.drop_at(field.center());
            window.run_ok();
            window.key_press_modifiers(Modifiers::COMMAND, Key::A);
            window.event(Event::Text(text.to_owned()));
            window.run_ok();
            window.key_press(Key::Enter);
            window.run_ok();
            let after = places(window);
            // With the row of names over it.
            let chart = window.query_all_by_label("Timeline").next();
            let time_line = chart.map(|node| node.rect().expand2(Vec2::new(0.0, 24.0)));
            for place in before.iter().filter(|(_, rect)| must_stay(*rect, field, divider)) {
                if !is_still_there(place, &after, time_line) {
                    moved.push(format!("{room}: “{text}” in {name} at {field:?}: {place:?} moved"));
                }
            }
            as_it_was(window, &job);
        }
    }
    count
}

/// Takes back what was entered, for the next entry.
pub fn as_it_was(window: &mut Window, job: &Job) {
    window.key_press(Key::Escape);
    window.run_ok();
    for _ in 0..4 {
        if window.state().job() == job {
            break;
        }
        window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
        window.run_ok();
    }
    assert!(window.state().job() == job, "all is as it was");
    // What is wrong with the job is told a frame after the edit.
    window.run_ok();
    window.run_ok();
}

/// Opens what is folded away, all that there is at first.
pub fn open_folds(window: &mut Window) {
    let folds = window.query_all_by_role(Role::DisclosureTriangle);
    let closed = folds.filter(|node| node.accesskit_node().data().is_expanded() != Some(true));
    let names: Vec<String> = closed.filter_map(|node| node.accesskit_node().label()).collect();
    for name in names {
        let fold = window.query_all_by_role_and_label(Role::DisclosureTriangle, &name).next();
        fold.expect("it is there").click_accesskit();
        window.run_ok();
    }
}

/// A test for each room, so that they run side by side.
macro_rules! nothing_moves {
    ($($test:ident: $room:literal;)*) => {
        const ROOMS: &[&str] = &[$($room),*];
        $(
            #[test]
            fn $test() {
                nothing_moves_because_of_an_entry_in($room);
            }
        )*
    };
}

nothing_moves! {
    nothing_under_the_pointer_moves_in_measure: "Measure";
    nothing_under_the_pointer_moves_in_why: "Why";
    nothing_under_the_pointer_moves_in_options: "Options";
    nothing_under_the_pointer_moves_in_price: "Price";
    nothing_under_the_pointer_moves_in_papers: "Papers";
    nothing_under_the_pointer_moves_in_follow_up: "Follow-up";
    nothing_under_the_pointer_moves_in_next_install: "Next install";
    nothing_under_the_pointer_moves_in_catalog: "Catalog";
}

fn nothing_moves_because_of_an_entry_in(room: &str) {
    // So wide that the bar has room for all it can hold.
    let delivery = || file::read(include_str!("../../examples/boathouse_delivery.ron")).unwrap().job;
    let job = if room == "Next install" { delivery() } else { demo_job() };
    let mut window = window_of([1400.0, 3300.0], job);
    click_first(&mut window, room);
    open_folds(&mut window);
    if room == "Catalog" {
        // Its figures are those of the entry that is picked.
        click(&mut window, "Masking film, roll");
    }
    let mut moved = Vec::new();
    let count = moved_by_typing(&mut window, room, &mut moved);
    assert!(count > 0 || matches!(room, "Why" | "Papers"), "{room} has no field");
    assert!(moved.is_empty(), "{} things moved:\n{}", moved.len(), moved.join("\n"));
}

#[test]
fn typing_in_one_pane_scrolls_no_other() {
    // So low that each pane scrolls.
    let mut window = window_of([1024.0, 700.0], demo_job());
    let still = |window: &Window| {
        let x = divider(window).expect("Measure has a pane at the right");
        let left = places(window).into_iter().filter(|(_, rect)| rect.center().x < x);
        left.map(|(_, rect)| rect).collect::<Vec<_>>()
    };
    let before = still(&window);
    assert!(before.len() > 10, "{}", before.len());
    let mut seen = Vec::new();
    for (name, _) in fields(&window) {
        window.query_all_by_role_and_label(Role::TextInput, &name).next().expect("it is there").focus();
        window.run_ok();
        let rect = window.get(by().role(Role::TextInput).predicate(is_focused)).rect();
        assert!(rect.top() >= 0.0 && rect.bottom() <= 700.0, "what is typed into is in sight: {rect:?}");
        seen.push(rect.top());
        window.event(Event::Text("7".to_owned()));
        window.run_ok();
        window.key_press(Key::Escape);
        window.run_ok();
        assert_eq!(still(&window), before, "{name}");
    }
    assert!(seen.len() > 15, "{} fields were come to", seen.len());
}

#[test]
fn units_and_theme_are_no_change_of_the_job() {
    let mut window = window(demo_job());
    click(&mut window, "mm");
    click(&mut window, "Switch between light and dark");
    assert_eq!(window.state().job().units, gapwright::measure::Units::Millimeters);
    // Nothing to take back, and nothing to ask about.
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    assert_eq!(window.state().job().units, gapwright::measure::Units::Millimeters);
    window.key_press_modifiers(Modifiers::COMMAND, Key::N);
    window.run();
    assert!(window.query_by_label("Save your changes?").is_none());
    assert_eq!(window.state().job().title, Job::default().title, "the new job is open");
}

fn is_focused(node: &AccessKitNode<'_>) -> bool {
    node.is_focused()
}

fn wheel(window: &mut Window, at: Pos2, notches: f32) {
    window.hover_at(at);
    window.event(Event::MouseWheel {
        unit: MouseWheelUnit::Line,
        delta: Vec2::new(0.0, notches),
        modifiers: Modifiers::NONE,
        phase: TouchPhase::Move,
        source: MouseWheelSource::Unknown,
    });
    // The wheel runs out smoothly.
    for _ in 0..8 {
        window.run_ok();
    }
}

#[test]
fn the_wheel_zooms_at_the_pointer() {
    let mut window = window_of([1366.0, 768.0], demo_job());
    // By the small button in the drawing: hovering a joint tells its name as well.
    let joint = |window: &Window, name: &str| window.get(by().role(Role::Button).label_contains(name)).rect();
    let before = joint(&window, "Joint A 5,");
    let far = joint(&window, "Joint A 2,");
    wheel(&mut window, before.center(), 3.0);
    let after = joint(&window, "Joint A 5,");
    let moved = joint(&window, "Joint A 2,");
    assert!((after.center() - before.center()).length() < 2.0, "{before:?} to {after:?}");
    assert!((moved.center() - far.center()).length() > 10.0, "it was zoomed: {far:?} to {moved:?}");
}

#[test]
fn the_wheel_cannot_lose_the_surface() {
    let mut window = window_of([1366.0, 768.0], demo_job());
    let drawing = window.get_by_label("Drawing").rect();
    let corner = drawing.left_top() + Vec2::splat(12.0);
    let other = drawing.right_bottom() - Vec2::splat(12.0);
    for (at, notches) in [(corner, 0.0), (corner, 60.0), (other, 25.0), (other, 80.0), (corner, 4.0)] {
        wheel(&mut window, at, notches);
        // Far out again, where all joints have their places.
        wheel(&mut window, corner, -90.0);
        let joints = window.query_all_by_label_contains("Joint ").map(|node| node.rect());
        let all = joints.reduce(Rect::union).expect("the joints are there");
        let seen = all.intersect(drawing);
        assert!(seen.width() > 20.0 && seen.height() > 20.0, "{notches}: {all:?} in {drawing:?}");
    }
}

#[test]
fn four_steps_of_zoom_fold_the_answer_and_scroll_the_panes() {
    // 1024 by 700 pixels at 140% leave so many points.
    let mut window = window_of([1024.0 / 1.4, 700.0 / 1.4], demo_job());
    for room in ROOMS {
        click_first(&mut window, room);
        let first = window.get_by_label_contains("Reseal between ").rect();
        assert!(first.bottom() < 102.0, "{room}: {first:?}");
        assert!(
            window.query_by_label_contains(" chance it lasts through").is_none(),
            "{room}: the answer is not folded"
        );
        for (role, rect) in places(&window) {
            // What is scrolled out lies below, never beside.
            let inside = rect.right() <= 1024.0 / 1.4 + 1.0 && rect.left() >= -1.0;
            assert!(inside, "{room}: {role:?} at {rect:?} is cut off");
        }
    }
    // At full size all three lines are there.
    let window = window_of([1024.0, 700.0], demo_job());
    assert!(window.query_by_label_contains(" chance it lasts through").is_some());
    assert!(window.query_by_label_contains("don’t agree").is_some());
}
