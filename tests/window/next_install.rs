//! The Next install room: from a new job to a verdict with eight readings typed one after the other; the record; and
//! the jobs before and after.

use crate::driven::{Window, click, enter, enter_path, window};
use eframe::egui::{Key, Role};
use egui_kittest::kittest::Queryable as _;
use gapwright::job::{Job, demo_job, file};
use gapwright::measure::{Length, Moisture};
use gapwright::ready::Verdict;

fn delivery() -> Job {
    file::read(include_str!("../../examples/boathouse_delivery.ron")).unwrap().job
}

fn verdict(window: &Window) -> Verdict {
    let found = window.state().assessment().next_install.as_ref().unwrap();
    found.outlook.as_ref().unwrap().gate.verdict
}

#[test]
fn eight_readings_typed_one_after_the_other_give_a_verdict() {
    let mut window = window(Job::new(jiff::civil::date(2026, 10, 12)));
    click(&mut window, "Next install");
    click(&mut window, "Plan an install");
    enter(&mut window, "Town, ZIP code, or coordinates", "Minneapolis, MN");
    enter(&mut window, "Face width", "3-1/8");
    enter(&mut window, "Callback at any gap over", "1/8");
    assert_eq!(verdict(&window), Verdict::Measure);
    let typed = [21.0, 22.5, 20.0, 23.0, 21.5, 22.0, 24.0, 20.5];
    // The keyboard stays in one field, whatever the number of boards.
    window.get_by_role_and_label(Role::TextInput, "Reading of the next board").focus();
    window.run();
    for reading in typed {
        window
            .get_by_role_and_label(Role::TextInput, "Reading of the next board")
            .type_text(&reading.to_string());
        window.run();
        window.key_press(Key::Enter);
        window.run();
    }
    let next = window.state().job().next_install.clone().unwrap();
    let read: Vec<f64> = next.readings.iter().map(|board| board.reading.unwrap().to_pct()).collect();
    assert_eq!(read, typed);
    assert!(matches!(verdict(&window), Verdict::Wait | Verdict::SendBack));

    // Pins and temperature are those of the board before; and one change goes to all of the day.
    enter(&mut window, "Pin depth of board 1", "1/8");
    click(&mut window, "Same temperature and pins for all");
    let next = window.state().job().next_install.clone().unwrap();
    assert!(next.readings.iter().all(|board| board.pins == Length::inches(0.125)));
}

#[test]
fn what_can_not_be_read_stays_in_the_field_and_adds_no_board() {
    let mut window = window(delivery());
    click(&mut window, "Next install");
    let field = window.get_by_role_and_label(Role::TextInput, "Reading of the next board");
    field.focus();
    field.type_text("wet");
    window.run();
    window.key_press(Key::Enter);
    window.run();
    assert_eq!(window.state().job().next_install.as_ref().unwrap().readings.len(), 8);
}

#[test]
fn the_record_is_written_for_others() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(delivery());
    click(&mut window, "Next install");
    click(&mut window, "Write the record…");
    let path = folder.path().join("record");
    enter_path(&mut window, "Folder for the record", path.to_str().unwrap(), "Write");
    for name in ["delivery-record.pdf", "delivery-card.pdf", "delivery-record.json", "next-reading.ics"] {
        assert!(path.join(name).is_file(), "{name}");
    }
}

#[test]
fn one_click_goes_from_a_callback_to_the_next_install_and_on_to_its_follow_up() {
    let callback = demo_job();
    let mut window = window(callback.clone());
    click(&mut window, "Next install");
    click(&mut window, "Plan the next install in this room");
    let job = window.state().job().clone();
    let next = job.next_install.clone().unwrap();
    assert!(job.surfaces.is_empty() && job.survey.gaps.is_empty());
    assert_eq!(job.air, callback.air);
    assert_eq!(next.boards, callback.surfaces[0].sections[0].board);

    let mut done = delivery();
    let next = done.next_install.as_mut().unwrap();
    next.hung = Some(jiff::civil::date(2026, 11, 16));
    next.readings.iter_mut().for_each(|board| board.reading = Some(Moisture::pct(9.0)));
    let follow = done.follow_up_of_install(jiff::civil::date(2027, 2, 1)).unwrap();
    assert_eq!(follow.installed, Some(jiff::civil::date(2026, 11, 16).into()));
    let found = gapwright::assess::assess(follow, gapwright::job::Catalog::built_in());
    let joints = found.layouts[0].joints.iter();
    let between = joints.filter(|joint| joint.kind == gapwright::surface::JointKind::BoardEdge).count();
    assert_eq!(between, 39, "forty boards have 39 joints between them");
}
