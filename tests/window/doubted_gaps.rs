//! A gap that was likely meant otherwise than it was typed is asked about where it was typed. Nothing waits for
//! the answer, and until it is given the answer line says that the gap counts as typed.

use crate::driven::{Window, click, window};
use eframe::egui::{Key, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _, by};
use gapwright::job::demo_job;
use gapwright::measure::Length;

const TOLD: &str = "One gap is very wide. It counts as typed until you say which it is.";

/// Types an inch into a joint that has no reading, and Enter.
fn with_an_inch() -> Window {
    let mut window = window(demo_job());
    window.get(by().role(Role::Button).label_contains("Joint A 4,")).click();
    window.run();
    let field = window.get_by_role_and_label(Role::TextInput, "Gap of the joint");
    field.type_text("1");
    window.run();
    window.key_press(Key::Enter);
    window.run();
    window
}

fn width(window: &Window) -> Length {
    let gaps = &window.state().job().survey.gaps;
    gaps.iter().rfind(|gap| gap.joint == "A 4").expect("it was typed").width
}

#[test]
fn the_question_stops_nothing_and_the_answer_line_tells_what_counts() {
    let mut window = with_an_inch();
    assert_eq!(width(&window), Length::inches(1.0));
    // The keyboard is at the next joint already.
    let field = window.get_by_role_and_label(Role::TextInput, "Gap of the joint");
    assert!(field.accesskit_node().is_focused());
    assert!(window.query_by_label_contains(TOLD).is_some());
    // Over the drawing, beside the entry, and nowhere else.
    assert_eq!(window.query_all_by_label("Joint A 4: 1\" is very wide. Did you mean 1/8\"?").count(), 1);
    field.type_text("3/32");
    window.run();
    window.key_press(Key::Enter);
    window.run();
    assert_eq!(window.state().job().survey.gaps.len(), demo_job().survey.gaps.len() + 2);
}

#[test]
fn either_answer_settles_it_and_can_be_taken_back() {
    let mut window = with_an_inch();
    click(&mut window, "It’s 1/8\"");
    assert_eq!(width(&window), Length::inches(0.125));
    assert!(window.query_by_label_contains("Did you mean").is_none());
    click(&mut window, "Undo: Gap");
    assert_eq!(width(&window), Length::inches(1.0));
    click(&mut window, "It’s 1\"");
    assert_eq!(width(&window), Length::inches(1.0));
    assert!(window.query_by_label_contains("Did you mean").is_none());
    assert!(window.query_by_label_contains(TOLD).is_none());
}
