//! With little room, in longer words and in both units, nothing that can be read, clicked or typed into lies over
//! another such thing or beyond the edge of the window.

use crate::driven::{Window, click_first, sight, window_of};
use crate::made_up_language::made_up;
use crate::still::ROLES;
use eframe::egui::{Rect, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _, by};
use gapwright::job::{Job, demo_job, file};
use gapwright::measure::Units;
use gapwright::words::{Language, Words};

/// The messages of the names of the rooms.
const ROOMS: [&str; 8] = [
    "tab-measure",
    "tab-why",
    "tab-options",
    "tab-price",
    "tab-papers",
    "tab-follow-up",
    "tab-next-install",
    "tab-catalog",
];

/// Things may touch, and letters reach out a little.
const TOUCH: f32 = 3.0;

/// Something in sight: what it is, what is seen of it, and how wide it is as a whole.
struct Thing {
    name: String,
    seen: Rect,
    whole: Rect,
}

/// What is in sight; what is scrolled out of it lies over nothing.
fn things(window: &Window, drawing: &str) -> Vec<Thing> {
    let drawing = window.query_by_label(drawing).map(|node| node.rect());
    let sight = sight(window);
    let all =
        window.get_all(by().predicate(|node| ROLES.contains(&node.role()) || node.role() == Role::Label));
    let things = all.filter_map(|node| {
        let accessible = node.accesskit_node();
        let name = accessible.label().or_else(|| accessible.value()).unwrap_or_default();
        let name = (!name.is_empty()).then(|| format!("{:?} “{name}”", accessible.role()))?;
        Some(Thing { name, seen: sight(&node), whole: node.rect() })
    });
    things
        .filter(|thing| thing.seen.is_positive())
        .filter(|thing| !drawing.is_some_and(|drawing| drawing.contains_rect(thing.whole)))
        .collect()
}

/// What lies over something else, and what lies beyond the edge.
fn crowded(window: &Window, width: f32, drawing: &str) -> Vec<String> {
    let things = things(window, drawing);
    assert!(things.len() > 20, "{} things are in sight", things.len());
    let mut told = Vec::new();
    for (at, Thing { name, seen, whole }) in things.iter().enumerate() {
        if whole.left() < -TOUCH || whole.right() > width + TOUCH {
            told.push(format!("{name} at {whole:?} is beyond the edge"));
        }
        for Thing { name: other, seen: over, .. } in &things[at + 1..] {
            let shared = seen.intersect(*over);
            // The text of a button is a part of it.
            let part = seen.contains_rect(*over) || over.contains_rect(*seen);
            if shared.width() > TOUCH && shared.height() > TOUCH && !part {
                told.push(format!("{name} at {seen:?} and {other} at {over:?}"));
            }
        }
    }
    told
}

/// Looks at every room of one job that has something in each.
fn nothing_is_crowded(zoom: f32, units: Units, language: &'static Language) {
    let (width, height) = (1024.0 / zoom, 3300.0);
    let delivery = file::read(include_str!("../../examples/boathouse_delivery.ron")).unwrap().job;
    let words = Words::new(language, units, "$");
    let mut window =
        window_of([width, height], Job { units, next_install: delivery.next_install, ..demo_job() });
    window.state_mut().speak(language);
    window.run();
    let mut told = Vec::new();
    for room in ROOMS {
        let name = words.text(room);
        click_first(&mut window, &name);
        let crowded = crowded(&window, width, &words.text("drawing"));
        told.extend(crowded.into_iter().map(|told| format!("{name}: {told}")));
    }
    assert!(told.is_empty(), "{} at {zoom} times:\n{}", told.len(), told.join("\n"));
}

#[test]
fn nothing_is_crowded_in_inches() {
    for zoom in [1.0, 1.4] {
        nothing_is_crowded(zoom, Units::Inches, Language::us_english());
    }
}

#[test]
#[ignore = "the Why room is some 40 points too wide in Spanish and millimeters at 1024: to be mended"]
fn nothing_is_crowded_in_spanish_and_millimeters() {
    let spanish = Language::of("es-US").expect("it is part of the program");
    nothing_is_crowded(1.0, Units::Millimeters, spanish);
}

#[test]
fn nothing_is_crowded_in_longer_words() {
    nothing_is_crowded(1.0, Units::Inches, made_up());
}
