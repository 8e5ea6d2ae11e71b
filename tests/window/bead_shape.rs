//! The planned bead, shaped in the joint section and by the design of the program.

use eframe::egui::{Key, Modifiers, vec2};
use egui_kittest::kittest::Queryable as _;
use gapwright::job::{Job, demo_job};
use gapwright::measure::{Length, Percent};
use gapwright::repair::MethodId;

use crate::driven::{Window, centre, click, click_first, drag, window};

/// The demo in the Options room, resealed, its bead close up.
fn close_up() -> Window {
    let mut job = demo_job();
    job.plan.chosen = MethodId::Reseal;
    let mut window = window(job);
    click_first(&mut window, "Options");
    click(&mut window, "Shape the bead");
    window
}

fn form(window: &Window) -> gapwright::joint::BeadForm {
    window.state().job().plan.bead.form()
}

#[test]
fn the_bead_is_shaped_by_keys_and_the_chance_follows() {
    let mut window = close_up();
    let before = window.state().job().clone();
    let chance = |window: &Window| {
        let callback = window.state().assessment().option(MethodId::Reseal).unwrap().callback.clone();
        callback.unwrap().chance
    };
    let (fill, first) = (form(&window).v_filled, chance(&window));
    window.get_by_label_contains("V fill: ").focus();
    window.run();
    for _ in 0..5 {
        window.key_press(Key::ArrowUp);
        window.run();
    }
    assert_eq!(form(&window).v_filled, fill + Percent::pct(25.0));
    assert!((chance(&window) - first).abs() > 0.001, "a fuller V makes no difference: {first}");
    for _ in 0..5 {
        click(&mut window, "Undo: V fill");
    }
    assert_eq!(window.state().job(), &before);
}

#[test]
fn the_bead_is_dragged_into_the_slot_and_hollow_within_what_can_be_laid() {
    let mut window = close_up();
    let before = window.state().job().clone();
    let at = centre(&window, "Bead below the V: ");
    drag(&mut window, at, at + vec2(0.0, 14.0), Modifiers::NONE);
    let deep = form(&window).in_slot;
    let steps = deep.to_inches() * 64.0;
    assert!(deep > Length::ZERO && (steps - steps.round()).abs() < 1e-9, "{deep:?}");
    click(&mut window, "Undo: Bead below the V");
    assert_eq!(window.state().job(), &before, "the whole drag is one step");
    let at = centre(&window, "Tooled hollow: ");
    drag(&mut window, at, at + vec2(0.0, 500.0), Modifiers::NONE);
    assert_eq!(form(&window).hollow, gapwright::joint::BeadForm::MOST_HOLLOW);
}

#[test]
fn what_a_finger_cannot_reach_is_said() {
    let mut window = close_up();
    window.get_by_label_contains("V fill: ").focus();
    window.run();
    for _ in 0..6 {
        window.key_press(Key::ArrowDown);
        window.run();
    }
    assert_eq!(form(&window).v_filled, Percent::pct(20.0));
    assert!(window.query_all_by_label_contains("A fingertip only reaches").next().is_some());
}

#[test]
fn the_designed_bead_is_taken_over_and_taken_back() {
    let mut job: Job = demo_job();
    (job.plan.chosen, job.plan.bead.v_filled) = (MethodId::Reseal, Percent::pct(20.0));
    let mut window = window(job.clone());
    click_first(&mut window, "Options");
    click(&mut window, "Design the bead");
    window.get_all_by_label("Use this bead").next().unwrap().click();
    window.run();
    let best = window.state().assessment().bead_designs[0].clone();
    let planned = window.state().job().plan.sealant.clone();
    let catalog = &window.state().assessment().catalog;
    let of = best.sealants.iter().find(|of| catalog.sealants[of.sealant].id == planned).unwrap();
    assert_eq!(form(&window), of.best.form);
    assert!(form(&window).v_filled > Percent::pct(20.0));
    click(&mut window, "Undo: Use this bead");
    assert_eq!(window.state().job(), &job);
}
