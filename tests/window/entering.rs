//! The window, driven by the names that a screen reader says.
//!
//! - From nothing to a priced letter, by mouse and keyboard.
//! - Every edit can be undone, and looking at fields changes nothing.
//! - Bad entries are told at their place and lose nothing.
//! - Unsaved changes are asked about; an idle window rests.

use std::time::Duration;

use crate::driven::{Window, centre, choose, click, click_first, enter, enter_path, window, window_of};
use eframe::egui::{Event, Key, Modifiers, PointerButton, Pos2, Role, ViewportEvent, ViewportId};
use egui_kittest::Node;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use gapwright::air::IndoorAir;
use gapwright::assess::Advice;
use gapwright::job::demo_job;
use gapwright::job::{Job, file};
use gapwright::measure::{Length, Moisture, Units};
use gapwright::repair::MethodId;

/// A frame may take long on a slow machine: the click and all that is typed after it then come at once.
fn in_one_frame(window: &mut Window, at: Pos2, typed: &str) {
    let press = |pressed| Event::PointerButton {
        pos: at,
        button: PointerButton::Primary,
        pressed,
        modifiers: Modifiers::NONE,
    };
    let enter = Event::Key {
        key: Key::Enter,
        physical_key: None,
        pressed: true,
        repeat: false,
        modifiers: Modifiers::NONE,
    };
    window.hover_at(at);
    window.run();
    let events = &mut window.input_mut().events;
    events.extend([press(true), press(false), Event::Text(typed.to_owned()), enter]);
    window.run_steps(8);
}

#[test]
fn what_is_typed_before_a_field_is_there_goes_into_it() {
    let mut job = demo_job();
    job.survey.moistures.clear();
    job.survey.gaps.clear();
    let mut window = window_of([1400.0, 3300.0], job);
    let add = centre(&window, "Add meter reading");
    in_one_frame(&mut window, add, "9.5");
    let read = &window.state().job().survey.moistures;
    assert_eq!(read[0].reading, Some(Moisture::pct(9.5)));
    let joint = centre(&window, "Joint A 5, no reading");
    in_one_frame(&mut window, joint, "1/8");
    let gaps = &window.state().job().survey.gaps;
    let gaps: Vec<_> = gaps.iter().map(|gap| (gap.joint.as_str(), gap.width)).collect();
    assert_eq!(gaps, [("A 5", Length::inches(0.125))]);
}

/// Enter goes from one meter reading to the next, which is of the section that follows.
#[test]
fn meter_readings_follow_each_other_by_enter() {
    let mut job = demo_job();
    job.survey.moistures.clear();
    let mut window = window_of([1400.0, 3300.0], job);
    click(&mut window, "Add meter reading");
    for typed in ["8.5", "9", "10"] {
        window.event(Event::Text(typed.to_owned()));
        window.run();
        window.key_press(Key::Enter);
        window.run();
    }
    let read = &window.state().job().survey.moistures;
    let read: Vec<_> = read.iter().map(|reading| reading.reading.map(Moisture::to_pct)).collect();
    assert_eq!(read, [Some(8.5), Some(9.0), Some(10.0), None]);
    let read = &window.state().job().survey.moistures;
    assert!(
        read.windows(2).all(|two| (&two[0].surface, &two[0].section) != (&two[1].surface, &two[1].section)),
        "{read:?}"
    );
}

#[test]
fn from_nothing_to_a_priced_letter() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(Job::default());
    assert!(!window.state().assessment().answer.is_complete());

    enter(&mut window, "Width of the new surface", "14' 6");
    enter(&mut window, "Height of the new surface", "11 ft");
    choose(&mut window, "Pattern of the new surface", "Straight run");
    click(&mut window, "Add surface");
    assert_eq!(window.state().job().surfaces[0].outline[2].0, Length::inches(174.0));

    click(&mut window, "Joint A 5, no reading");
    for width in ["1/8", "3/32", "9/64", "0", "5/32"] {
        // Enter goes on to the next joint by itself.
        let field = window.get_by_role_and_label(Role::TextInput, "Gap of the joint");
        field.type_text(width);
        window.run();
        window.key_press(Key::Enter);
        window.run();
    }
    assert_eq!(window.state().job().survey.gaps.len(), 5);
    let joints: std::collections::BTreeSet<_> =
        window.state().job().survey.gaps.iter().map(|gap| gap.joint.clone()).collect();
    assert_eq!(joints.len(), 5, "every gap went to a joint of its own");

    click(&mut window, "Add meter reading");
    enter(&mut window, "Meter reading 1", "9,5");
    enter(&mut window, "Job name", "Stair ceiling");
    enter(&mut window, "Homeowner", "A. Nowhere");
    enter(&mut window, "Boards installed", "2025-06-01");
    assert!(window.state().assessment().answer.is_complete());

    click(&mut window, "Price");
    enter(&mut window, "Contractor pays", "50");
    choose(&mut window, "Timed section", "Ceiling A");
    enter(&mut window, "Timed minutes", "40");
    let found = window.state().assessment();
    let option = found.chosen().unwrap();
    assert!(option.total().to_cents() > 10_000);
    assert!(option.tasks.iter().any(|task| task.basis.is_timed()));

    click(&mut window, "Papers");
    click(&mut window, "Write papers…");
    enter_path(&mut window, "Folder for the papers", folder.path().join("papers").to_str().unwrap(), "Write");
    let letter = std::fs::read(folder.path().join("papers/owner/letter.pdf")).unwrap();
    assert!(letter.starts_with(b"%PDF"));
    let page = std::fs::read_to_string(folder.path().join("papers/owner/owner-page.html")).unwrap();
    assert!(page.starts_with("<!DOCTYPE html>") && page.contains("A. Nowhere"), "{page}");

    window.key_press_modifiers(Modifiers::COMMAND, Key::S);
    window.run();
    let path = folder.path().join("stair");
    enter_path(&mut window, "Save as", path.to_str().unwrap(), "Save");
    let saved = file::load(&path.with_extension("ron")).unwrap();
    assert_eq!(&saved.job, window.state().job());
}

#[test]
fn every_edit_is_a_named_step_that_can_be_undone() {
    let mut window = window(demo_job());
    let before = window.state().job().clone();
    enter(&mut window, "Face width", "6-1/8");
    enter(&mut window, "Job name", "Another");
    click(&mut window, "mm");
    assert_eq!(window.state().job().units, Units::Millimeters);
    assert_eq!(window.state().job().surfaces[0].sections[1].board.face_width, Length::inches(6.125));
    // In what units it is shown is no step.
    click(&mut window, "Undo: Job name");
    assert_eq!(window.state().job().title, before.title);
    assert_eq!(window.state().job().units, Units::Millimeters);
    click(&mut window, "inches");
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    assert_eq!(window.state().job(), &before);
    window.key_press_modifiers(Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
    window.run();
    assert_eq!(window.state().job().surfaces[0].sections[1].board.face_width, Length::inches(6.125));
}

#[test]
fn tabbing_through_every_tab_changes_nothing() {
    let mut window = window(demo_job());
    let before = window.state().job().clone();
    for tab in ["Measure", "Why", "Options", "Price", "Papers", "Follow-up", "Catalog"] {
        click_first(&mut window, tab);
        for _ in 0..140 {
            window.key_press(Key::Tab);
            window.run();
        }
        assert_eq!(window.state().job(), &before, "{tab}");
    }
}

#[test]
fn a_length_in_a_unit_that_does_not_fit_it_is_kept_when_looked_at() {
    let mut job = demo_job();
    // 130 mm is no whole number of 64ths: shown as 5-1/8", it must stay 130 mm.
    job.surfaces[0].sections[0].board.face_width = Length::mm(130.0);
    job.surfaces[0].sections[1].board.face_width = Length::mm(130.0);
    let mut window = window(job);
    window.get_by_role_and_label(Role::TextInput, "Face width").focus();
    window.run();
    window.key_press(Key::Enter);
    window.run();
    assert_eq!(window.state().job().surfaces[0].sections[0].board.face_width, Length::mm(130.0));
}

#[test]
fn a_bad_entry_is_told_at_its_place_and_lost_by_nobody() {
    let mut window = window(demo_job());
    let before = window.state().job().clone();
    enter(&mut window, "Face width", "five");
    assert_eq!(window.state().job(), &before);
    window.get_by_label_contains("“five” is not a length");
    let field = window.get_by_role_and_label(Role::TextInput, "Face width");
    assert_eq!(field.accesskit_node().value().as_deref(), Some("five"));
    enter(&mut window, "Face width", "5");
    assert!(window.query_by_label_contains("“five”").is_none());
    assert_eq!(window.state().job().surfaces[0].sections[0].board.face_width, Length::inches(5.0));
}

#[test]
fn a_bad_gap_stays_at_its_joint() {
    let mut window = window(demo_job());
    window.get_by_label_contains("Joint A 3, about ").click();
    window.run();
    window.get_by_role_and_label(Role::TextInput, "Gap of the joint").type_text("-1/8");
    window.run();
    window.key_press(Key::Enter);
    window.run();
    window.get_by_label_contains("can’t be negative");
    assert!(window.get_all_by_label("Joint A 3").next().is_some(), "the joint is still selected");
}

#[test]
fn another_option_is_chosen_from_the_list_and_the_answer_follows() {
    let mut window = window(demo_job());
    click(&mut window, "Options");
    click(&mut window, "Replace with boards dried to the room");
    assert_eq!(window.state().job().plan.chosen, MethodId::Replace);
    assert!(matches!(window.state().assessment().answer.advice, Advice::Replace { .. }));
}

/// A new job is in the units that were used last, and plans what is recommended until somebody chooses; a way leads
/// back to that.
#[test]
fn a_new_job_plans_what_is_recommended() {
    let mut window = window(demo_job());
    click(&mut window, "mm");
    window.key_press_modifiers(Modifiers::COMMAND, Key::N);
    window.run();
    let job = window.state().job();
    assert!(job.units == Units::Millimeters && job.plan.as_recommended && job.surfaces.is_empty());

    let mut job = demo_job();
    job.plan.as_recommended = true;
    let mut window = crate::driven::window(job);
    let recommended = window.state().job().plan.chosen;
    assert_eq!(Some(recommended), window.state().assessment().choice.as_ref().map(|choice| choice.best));
    assert_ne!(recommended, MethodId::Replace);
    click(&mut window, "Options");
    click(&mut window, "Replace with boards dried to the room");
    assert_ne!(window.state().job().plan.chosen, recommended);
    click(&mut window, "Go with the recommended one");
    assert_eq!(window.state().job().plan.chosen, recommended);
}

/// An option is chosen by a click on any of its lines, not on its name alone.
#[test]
fn a_click_on_the_days_of_an_option_chooses_it() {
    let mut window = window(demo_job());
    click(&mut window, "Options");
    let name = window.get_by_label("Replace with boards dried to the room").rect();
    let under = |node: &Node<'_>| {
        let line = node.rect();
        line.left() < name.right() && line.top() > name.top() && line.top() < name.bottom() + 24.0
    };
    let days = window.get_all_by_label_contains("on site").find(under).unwrap().rect().center();
    assert!(!name.contains(days));
    window.hover_at(days);
    window.drag_at(days);
    window.drop_at(days);
    window.run();
    assert_eq!(window.state().job().plan.chosen, MethodId::Replace);
}

#[test]
fn unsaved_changes_are_asked_about_before_closing_and_before_a_new_job() {
    let mut window = window(demo_job());
    enter(&mut window, "Job name", "Changed");
    window.key_press_modifiers(Modifiers::COMMAND, Key::N);
    window.run();
    window.get_by_label("Save your changes?");
    click(&mut window, "Cancel");
    assert_eq!(window.state().job().title, "Changed");
    window.input_mut().viewports.get_mut(&ViewportId::ROOT).unwrap().events.push(ViewportEvent::Close);
    window.run();
    window.get_by_label("Save your changes?");
    click(&mut window, "Cancel");
    window.key_press_modifiers(Modifiers::COMMAND, Key::N);
    window.run();
    click(&mut window, "Don’t save");
    assert_eq!(window.state().job().title, "");
}

#[test]
fn an_idle_window_asks_for_no_frame() {
    let mut window = window(demo_job());
    let asks_for_none = |window: &mut crate::driven::Window| {
        window.run();
        let output = window.output().viewport_output.get(&ViewportId::ROOT);
        let wait = output.map(|viewport| viewport.repaint_delay);
        assert!(wait.is_some_and(|wait| wait > Duration::from_secs(1)), "{wait:?}");
    };
    asks_for_none(&mut window);
    // Nor while a field waits for what is typed.
    window.get_by_role_and_label(Role::TextInput, "Job name").focus();
    asks_for_none(&mut window);
    window.get_by_role_and_label(Role::TextInput, "Job name").type_text("Stair");
    asks_for_none(&mut window);
}

#[test]
fn a_broken_file_opens_with_what_was_read_and_is_not_saved_over() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("broken.ron");
    let text = file::write(&demo_job()).unwrap().replacen("width: \"7/64 in\"", "width: \"seven\"", 1);
    std::fs::write(&path, &text).unwrap();
    let mut window = window(Job::default());
    window.key_press_modifiers(Modifiers::COMMAND, Key::O);
    window.run();
    enter_path(&mut window, "Job file (.ron or .json)", path.to_str().unwrap(), "Open");
    assert_eq!(window.state().job().surfaces.len(), 2);
    window.get_by_label_contains("couldn’t be read");
    enter(&mut window, "Job name", "Mended");
    window.key_press_modifiers(Modifiers::COMMAND, Key::S);
    window.run();
    window.get_by_label("Save the job");
    assert_eq!(std::fs::read_to_string(&path).unwrap(), text);
}

#[test]
fn what_is_being_typed_is_saved_too() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("typed.ron");
    file::save(&demo_job(), &path).unwrap();
    let mut window = window(Job::default());
    window.key_press_modifiers(Modifiers::COMMAND, Key::O);
    window.run();
    enter_path(&mut window, "Job file (.ron or .json)", path.to_str().unwrap(), "Open");
    window.get_by_role_and_label(Role::TextInput, "Job name").focus();
    window.run();
    window.get_by_role_and_label(Role::TextInput, "Job name").type_text("Typed just now");
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::S);
    window.run();
    assert_eq!(file::load(&path).unwrap().job.title, "Typed just now");
}

#[test]
fn saving_goes_on_with_what_it_stood_in_the_way_of() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("first.ron");
    let mut window = window(demo_job());
    enter(&mut window, "Job name", "First");
    window.key_press_modifiers(Modifiers::COMMAND, Key::N);
    window.run();
    window.get_all_by_role_and_label(Role::Button, "Save").last().unwrap().click();
    window.run();
    // Enter in the path field is as good as its button.
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.get_by_role_and_label(Role::TextInput, "Save as").type_text(path.to_str().unwrap());
    window.run();
    window.key_press(Key::Enter);
    window.run();
    assert_eq!(file::load(&path).unwrap().job.title, "First");
    assert_eq!(window.state().job().title, "", "the new job was opened");
}

#[test]
fn nothing_counts_before_it_is_typed() {
    let mut window = window(Job { plan: gapwright::repair::Plan::default(), ..demo_job() });
    click(&mut window, "Add meter reading");
    let before = window.state().assessment().sections.clone();
    let readings = window.state().job().survey.moistures.len();
    assert_eq!(window.state().job().survey.moistures[readings - 1].reading, None);
    enter(&mut window, &format!("Meter reading {readings}"), "30");
    assert_ne!(window.state().assessment().sections, before);
    click(&mut window, "Price");
    choose(&mut window, "Timed section", "South slope A");
    let found = window.state().assessment();
    let option = found.chosen().unwrap();
    assert!(!option.tasks.iter().any(|task| task.basis.is_timed()));
}

/// A week of readings every hour, the heating having been off.
fn logger_file(folder: &std::path::Path) -> std::path::PathBuf {
    let mut text = "Time,Temperature (°C),Humidity (%)\n".to_owned();
    for hour in 0..168 {
        text += &format!("2026-02-{:02} {:02}:00,18.5,{}.5\n", 1 + hour / 24, hour % 24, 30 + hour % 5);
    }
    let path = folder.join("hall.csv");
    std::fs::write(&path, text).unwrap();
    path
}

#[test]
fn a_logger_is_confirmed_then_read_and_can_be_undone() {
    let folder = tempfile::tempdir().unwrap();
    let path = logger_file(folder.path());
    let mut window = window(demo_job());
    let before = window.state().assessment().year.clone();
    click(&mut window, "Logger file…");
    enter(&mut window, "CSV file", path.to_str().unwrap());
    assert_eq!(window.state().job().logged, None, "nothing is taken before it is confirmed");
    click(&mut window, "Use these readings");
    let logged = window.state().job().logged.clone().unwrap();
    assert_eq!(logged.days.len(), 7);
    let year = window.state().assessment().year.clone().unwrap();
    assert!((year.days[33].temperature.to_celsius() - 18.5).abs() < 0.1, "3 February is the logger's");
    click(&mut window, "Undo: Data logger");
    assert_eq!(window.state().job().logged, None);
    assert_eq!(window.state().assessment().year, before);
}

#[test]
fn a_weather_file_gives_the_year_outdoors_and_a_wrong_one_is_told() {
    let mut window = window(demo_job());
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/numbers/weather/");
    click(&mut window, "Weather file…");
    enter(&mut window, "EPW or TMY3 file", &format!("{folder}README.md"));
    assert!(window.query_by_label_contains("neither an EPW nor a TMY3 weather file").is_some());
    assert!(window.state().job().air.house().is_some());
    // The question stays, with what was typed, until there is a file to read.
    enter(&mut window, "EPW or TMY3 file", &format!("{folder}greensboro.csv"));
    let IndoorAir::FromWeather { weather, house } = &window.state().job().air else {
        panic!("the air is {:?}", window.state().job().air)
    };
    assert_eq!(weather.hours().len(), 8760);
    assert_eq!(Some(house), demo_job().air.house(), "the house stays as it was");
    assert!(window.state().assessment().year.is_some());
}

#[test]
fn the_page_to_start_from_leads_on() {
    let mut window = window(Job::default());
    click(&mut window, "A callback");
    let width = window.get_by_role_and_label(Role::TextInput, "Width of the new surface");
    assert!(width.is_focused());
    click(&mut window, "Look at an example");
    assert_eq!(window.state().job().title, demo_job().title);
    assert!(window.query_by_label("A callback").is_none());
}

#[test]
fn an_inch_typed_for_an_eighth_is_asked_about() {
    let mut job = demo_job();
    job.survey.gaps[1].width = Length::inches(1.0);
    let mut window = window(job);
    let asked = "Did you mean 1/8\"?";
    window.get_by_label_contains(asked);
    click(&mut window, "It’s 1/8\"");
    assert_eq!(window.state().job().survey.gaps[1].width, Length::inches(0.125));
    assert!(window.query_by_label_contains(asked).is_none());
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    assert_eq!(window.state().job().survey.gaps[1].width, Length::inches(1.0));
}
