//! A field stays under the pointer whatever an entry elsewhere adds or takes away.
//!
//! In every room, a field is typed into while the pointer rests on another one. Left by Enter or by a click
//! on that other one, the form may gain and lose rows; the field under the pointer stays where it is, and a
//! click lands in it.

use crate::driven::{Window, click, click_first, enter, sight, window_of};
use crate::still::{TYPED, as_it_was, open_folds};
use eframe::egui::{Event, Key, Modifiers, Pos2, Rect, Role};
use egui_kittest::Node;
use egui_kittest::kittest::{AccessKitNode, NodeT as _, Queryable as _, by};
use gapwright::job::{Job, demo_job, file};

/// The windows: one that scrolls, and one that shows a room as a whole; with the most fields that are typed into
/// in it: lists of prices and tasks are alike, and each entry that counts is an assessment.
const WINDOWS: [([f32; 2], usize); 2] = [([1024.0, 700.0], 16), ([1400.0, 3300.0], 8)];

/// Fields that can be typed into.
fn inputs(window: &Window) -> impl Iterator<Item = Node<'_>> {
    let all = window.query_all_by_role(Role::TextInput);
    all.filter(|node| !node.accesskit_node().is_disabled())
}

/// Fields in a window: their names and places.
fn fields(window: &Window) -> Vec<(String, Rect)> {
    inputs(window).filter_map(|node| Some((node.accesskit_node().label()?, node.rect()))).collect()
}

fn field_at(window: &Window, at: Pos2) -> Option<(String, Rect)> {
    fields(window).into_iter().find(|(_, rect)| rect.contains(at))
}

fn focused(window: &Window) -> Option<Rect> {
    let is_focused = |node: &AccessKitNode<'_>| node.is_focused();
    Some(window.query(by().role(Role::TextInput).predicate(is_focused))?.rect())
}

/// The fields on which a hand may rest while another is typed into: the next one below, one farther down,
/// and the next one above.
fn rests(window: &Window, typed: Rect) -> Vec<Rect> {
    let sight = sight(window);
    let near = |rect: &Rect| (rect.left() - typed.left()).abs() < 260.0;
    let whole = inputs(window).filter(|node| sight(node).expand(0.5).contains_rect(node.rect()));
    let all: Vec<Rect> = whole.map(|node| node.rect()).filter(near).collect();
    let below: Vec<Rect> = all.iter().filter(|rect| rect.top() > typed.bottom()).copied().collect();
    let above = all.iter().rfind(|rect| rect.bottom() < typed.top()).copied();
    below.first().copied().into_iter().chain(below.get(6).copied()).chain(above).collect()
}

/// Types into the field at `index` while the pointer rests on another; tells what moved.
fn moved(window: &mut Window, (index, text): (usize, &str), turn: usize) -> Option<String> {
    let node = inputs(window).nth(index)?;
    let name = node.accesskit_node().label()?;
    node.focus();
    window.run_ok();
    let rests = rests(window, focused(window)?);
    let rect = *rests.get(turn / 2 % rests.len().max(1))?;
    let at = rect.left_center().lerp(rect.right_center(), 0.3);
    window.hover_at(at);
    window.run_ok();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.event(Event::Text(text.to_owned()));
    window.run_ok();
    let (other, before) = field_at(window, at)?;
    let clicks = turn % 2 == 1;
    if clicks {
        // A click is short: a few frames, not until all has come to rest.
        window.drag_at(at);
        window.step();
        window.drop_at(at);
    } else {
        window.key_press(Key::Enter);
    }
    for _ in 0..4 {
        window.run_ok();
    }
    let after = field_at(window, at);
    let stays = after
        .as_ref()
        .is_some_and(|(name, rect)| *name == other && (rect.left_top() - before.left_top()).length() < 1.0);
    let here = format!("“{text}” in {name}: {other} at {before:?}");
    if !stays {
        let now = fields(window).into_iter().find(|(name, _)| *name == other).map(|(_, rect)| rect);
        return Some(format!("{here} became {after:?}; it is at {now:?}"));
    }
    let landed = focused(window).is_some_and(|rect| rect.contains(at));
    (clicks && !landed).then(|| format!("{here}: the click went to {:?}", focused(window)))
}

fn nothing_moves_away_in(room: &str) {
    let mut all = Vec::new();
    for (size, most) in WINDOWS {
        let delivery = || file::read(include_str!("../../examples/boathouse_delivery.ron")).unwrap().job;
        let job = if room == "Next install" { delivery() } else { demo_job() };
        let mut window = window_of(size, job);
        click_first(&mut window, room);
        open_folds(&mut window);
        if room == "Catalog" {
            click(&mut window, "Masking film, roll");
        }
        let count = fields(&window).len();
        let every = count.div_ceil(most).max(1);
        for (turn, index) in (0..count).step_by(every).enumerate() {
            let (job, text) = (window.state().job().clone(), TYPED[turn % TYPED.len()]);
            // Enter and a click take turns with each of the texts.
            let told = moved(&mut window, (index, text), turn + turn / TYPED.len());
            all.extend(told.map(|told| format!("{room}, {} high: {told}", size[1])));
            as_it_was(&mut window, &job);
        }
    }
    assert!(all.is_empty(), "{} fields moved away:\n{}", all.len(), all.join("\n"));
}

/// A town brings its elevation and its climate along; both have their room before.
#[test]
fn naming_a_town_moves_no_field() {
    let mut job = demo_job();
    job.air = Job::new(job.visited).air;
    let mut window = window_of([1400.0, 3300.0], job);
    click_first(&mut window, "Measure");
    let before = fields(&window);
    enter(&mut window, "Town, ZIP code, or coordinates", "Duluth, MN");
    for _ in 0..4 {
        window.run_ok();
    }
    let after = fields(&window);
    assert_eq!(after.len(), before.len() + 1, "the elevation can be typed now");
    for (name, rect) in before {
        let stays = |(of, now): &(String, Rect)| *of == name && now.min == rect.min;
        assert!(after.iter().any(stays), "{name} moved from {rect:?}");
    }
}

/// The first reading of the hygrometer says what wood comes to in it, on a line that was there before.
#[test]
fn the_first_hygrometer_reading_moves_no_field() {
    for width in [1024.0, 1400.0] {
        let mut job = demo_job();
        job.survey.rooms.clear();
        let mut window = window_of([width, 3600.0], job);
        click_first(&mut window, "Measure");
        let before = fields(&window);
        enter(&mut window, "Room humidity 1", "38");
        window.run();
        assert_eq!(window.state().job().survey.rooms.len(), 1);
        for (name, rect) in before {
            let stays = |(of, now): &(String, Rect)| *of == name && now.min == rect.min;
            assert!(fields(&window).iter().any(stays), "{name} moved from {rect:?}");
        }
    }
}

/// The button for another meter reading stays where it is, and leads through the sections one by one.
#[test]
fn another_meter_reading_is_added_at_the_same_place() {
    let mut job = demo_job();
    job.survey.moistures.clear();
    let sections: Vec<String> = job.surfaces[0].sections.iter().map(|section| section.name.clone()).collect();
    assert!(sections.len() > 1);
    let mut window = window_of([1400.0, 3300.0], job);
    click_first(&mut window, "Measure");
    let before = window.get_by_label("Add meter reading").rect();
    for count in 1..=sections.len() {
        click(&mut window, "Add meter reading");
        assert_eq!(window.get_by_label("Add meter reading").rect(), before, "after {count}");
    }
    let read = window.state().job().survey.moistures.iter().map(|reading| reading.section.clone());
    assert_eq!(read.take(sections.len()).collect::<Vec<_>>(), sections);
}

/// A test for each room, so that they run side by side.
macro_rules! stays_under_the_pointer {
    ($($test:ident: $room:literal;)*) => {
        $(
            #[test]
            fn $test() {
                nothing_moves_away_in($room);
            }
        )*
    };
}

stays_under_the_pointer! {
    a_field_stays_under_the_pointer_in_measure: "Measure";
    a_field_stays_under_the_pointer_in_options: "Options";
    a_field_stays_under_the_pointer_in_price: "Price";
    a_field_stays_under_the_pointer_in_follow_up: "Follow-up";
    a_field_stays_under_the_pointer_in_next_install: "Next install";
    a_field_stays_under_the_pointer_in_catalog: "Catalog";
}
