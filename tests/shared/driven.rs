//! A window that is driven by the names that a screen reader says.

#![allow(dead_code, reason = "every program uses a part of it")]

use std::collections::HashMap;

use eframe::egui::{Event, Key, Modifiers, PointerButton, Pos2, Rect, Role, Theme};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::{Harness, Node};
use gapwright::app::App;
use gapwright::job::Job;

pub type Window = Harness<'static, App>;

/// A window so high that nothing has to be scrolled to.
pub fn window(job: Job) -> Window {
    window_of([1280.0, 2900.0], job)
}

/// A window of this size in points.
pub fn window_of(size: [f32; 2], job: Job) -> Window {
    let builder = Harness::builder().with_size(size).with_theme(Theme::Light);
    let mut window = builder.build_eframe(move |cc| App::for_test(&cc.egui_ctx, job));
    window.run();
    window
}

pub fn click(window: &mut Window, name: &str) {
    window.get_by_label(name).click();
    window.run();
}

/// Clicks the first of several of this name, such as a room's in the bar before a tool's of that name.
pub fn click_first(window: &mut Window, name: &str) {
    window.get_all_by_label(name).next().expect("it is there").click();
    window.run();
}

/// Types into the field of this name and leaves it by Enter.
pub fn enter(window: &mut Window, name: &str, text: &str) {
    let field = window.get_by_role_and_label(Role::TextInput, name);
    field.focus();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.get_by_role_and_label(Role::TextInput, name).type_text(text);
    window.run();
    window.key_press(Key::Enter);
    window.run();
}

/// Chooses from the drop-down list of this name.
pub fn choose(window: &mut Window, list: &str, choice: &str) {
    window.get_by_role_and_label(Role::ComboBox, list).click();
    window.run();
    let found = window.get_all_by_label(choice).last();
    // It may be scrolled out of sight.
    found.expect("the choice is in the list").click_accesskit();
    window.run();
}

/// Types a path into the window's own path field.
pub fn enter_path(window: &mut Window, field: &str, path: &str, verb: &str) {
    window.get_by_role_and_label(Role::TextInput, field).focus();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.get_by_role_and_label(Role::TextInput, field).type_text(path);
    window.run();
    // The top bar has a button for saving too; the dialog's comes last.
    window.get_all_by_role_and_label(Role::Button, verb).last().expect("the button is there").click();
    window.run();
}

/// Types into the command search.
pub fn find(window: &mut Window, typed: &str) {
    window.key_press_modifiers(Modifiers::COMMAND, Key::K);
    window.run();
    window.get_by_role_and_label(Role::TextInput, "Find a command").type_text(typed);
    window.run();
}

/// Does the first command found by what is typed.
pub fn command(window: &mut Window, typed: &str) {
    find(window, typed);
    window.key_press(Key::Enter);
    window.run();
}

/// What is in sight of each thing: panes that scroll cut off the rest.
pub fn sight(window: &Window) -> impl Fn(&Node<'_>) -> Rect + use<> {
    let cut: HashMap<_, Rect> = window.ctx.viewport(|viewport| {
        let layers = viewport.prev_pass.widgets.layers();
        let widgets = layers.flat_map(|(_, widgets)| widgets);
        widgets.map(|widget| (widget.id.accesskit_id(), widget.interact_rect)).collect()
    });
    assert!(!cut.is_empty(), "the window was drawn");
    move |node| {
        let (id, _) = node.accesskit_node().locate();
        cut.get(&id).map_or(Rect::NOTHING, |cut| node.rect().intersect(*cut))
    }
}

/// Drags with the left button, in steps as a hand does.
pub fn drag(window: &mut Window, from: Pos2, to: Pos2, modifiers: Modifiers) {
    let button =
        |pos, pressed| Event::PointerButton { pos, button: PointerButton::Primary, pressed, modifiers };
    let tell = |window: &mut Window, event| {
        window.event_modifiers(event, modifiers);
        window.run();
    };
    tell(window, Event::PointerMoved(from));
    tell(window, button(from, true));
    for step in 1_u8..=8 {
        tell(window, Event::PointerMoved(from + (to - from) * (f32::from(step) / 8.0)));
    }
    tell(window, button(to, false));
    window.run();
}

/// The middle of what is called so.
pub fn centre(window: &Window, name: &str) -> Pos2 {
    window.get_by_label_contains(name).rect().center()
}
