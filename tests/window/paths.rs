//! Where the system has no file dialog, a path is typed: what is wrong with it is told in the question, which
//! stays, and the keyboard does all of it.

use crate::driven::{enter_path, window};
use eframe::egui::{Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use gapwright::job::{Job, demo_job, file};

const OPEN: &str = "Job file (.ron or .json)";

fn press(window: &mut crate::driven::Window, modifiers: Modifiers, key: Key) {
    window.key_press_modifiers(modifiers, key);
    window.run();
}

/// Types over what stands in the field that has the keyboard, and presses Enter.
fn type_over(window: &mut crate::driven::Window, field: &str, text: &str) {
    press(window, Modifiers::COMMAND, Key::A);
    press(window, Modifiers::NONE, Key::Delete);
    window.get_by_role_and_label(Role::TextInput, field).type_text(text);
    window.run();
    press(window, Modifiers::NONE, Key::Enter);
}

#[test]
fn a_mistyped_path_is_put_right_where_it_stands_by_keyboard_alone() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("there.ron");
    file::save(&demo_job(), &path).unwrap();
    let mut window = window(Job::default());
    press(&mut window, Modifiers::COMMAND, Key::O);
    let field = window.get_by_role_and_label(Role::TextInput, OPEN);
    assert!(field.accesskit_node().is_focused(), "the keyboard is in the field at once");
    let buttons =
        |window: &crate::driven::Window| window.get_by_role_and_label(Role::Button, "Cancel").rect();
    let before = buttons(&window);
    for (typed, told) in [("", "Type a path."), ("nowhere.ron", "There’s no file "), (".", " is a folder.")]
    {
        let typed =
            if typed.is_empty() { String::new() } else { folder.path().join(typed).display().to_string() };
        type_over(&mut window, OPEN, &typed);
        assert!(window.query_by_label_contains(told).is_some(), "{told}");
        let field = window.get_by_role_and_label(Role::TextInput, OPEN);
        assert_eq!(field.accesskit_node().value().unwrap_or_default(), typed, "what was typed stays");
        assert!(field.accesskit_node().is_focused());
        assert_eq!(buttons(&window), before, "nothing moves");
    }
    // A job that a newer program wrote.
    let newer = folder.path().join("newer.ron");
    std::fs::write(&newer, "(version: 9999)").unwrap();
    type_over(&mut window, OPEN, newer.to_str().unwrap());
    let asked = window.query_by_role_and_label(Role::TextInput, OPEN);
    assert!(asked.is_some(), "what can’t be read is asked for again");
    type_over(&mut window, OPEN, path.to_str().unwrap());
    assert_eq!(window.state().job(), &demo_job());
    assert!(window.query_by_role_and_label(Role::TextInput, OPEN).is_none());
}

#[test]
fn saving_tells_where_to_and_asks_before_it_replaces_a_file() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("stair.ron");
    std::fs::write(&path, "somebody else’s").unwrap();
    let mut window = window(demo_job());
    press(&mut window, Modifiers::COMMAND, Key::S);
    let bare = folder.path().join("stair");
    press(&mut window, Modifiers::COMMAND, Key::A);
    window.get_by_role_and_label(Role::TextInput, "Save as").type_text(bare.to_str().unwrap());
    window.run();
    // The ending is told before it is used.
    window.get_by_label_contains(&format!("Full path: {}", path.display()));
    press(&mut window, Modifiers::NONE, Key::Enter);
    window.get_by_label_contains("is already there.");
    assert_eq!(std::fs::read_to_string(&path).unwrap(), "somebody else’s");
    press(&mut window, Modifiers::NONE, Key::Enter);
    // All of the job, and the figures it was priced with besides.
    let saved = file::load(&path).unwrap().job;
    assert!(saved.price_book.is_some());
    assert_eq!(saved, Job { price_book: saved.price_book.clone(), ..demo_job() });
    assert_eq!(&saved, window.state().job());

    press(&mut window, Modifiers::COMMAND | Modifiers::SHIFT, Key::S);
    let nowhere = folder.path().join("no/such/stair.ron");
    enter_path(&mut window, "Save as", nowhere.to_str().unwrap(), "Save");
    window.get_by_label_contains("There’s no folder ");
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert!(window.query_by_role_and_label(Role::TextInput, "Save as").is_none(), "Esc cancels");
}
