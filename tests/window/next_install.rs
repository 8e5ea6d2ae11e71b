//! The Next install room: from a new job to a verdict with eight readings typed one after the other; the record; and
//! the jobs before and after.

use crate::driven::{Window, choose, click, enter, enter_path, window, window_of};
use eframe::egui::{Key, Modifiers, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
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
    // Of boards that nobody has named nothing is said.
    assert!(window.state().assessment().next_install.is_none());
    let asked = "Enter the boards’ species and 8 readings";
    assert!(window.query_all_by_label(asked).next().is_some());
    choose(&mut window, "Species", "Pine, eastern white");
    enter(&mut window, "Face width", "3-1/8");
    enter(&mut window, "Widest gap the owner accepts", "1/8");
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
    // The boards came on the day of the visit, where nobody says otherwise.
    assert_eq!(next.delivered, Some(jiff::civil::date(2026, 10, 12)));

    // Pins and temperature are those of the board before; and one change goes to all of the day.
    enter(&mut window, "Pin depth of board 1", "1/8");
    click(&mut window, "Copy board 1’s temperature and pin depth to all");
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

fn typed(window: &mut Window, field: &str, text: &str, key: Key) {
    window.get_by_role_and_label(Role::TextInput, field).focus();
    window.run();
    window.get_by_role_and_label(Role::TextInput, field).type_text(text);
    window.run();
    window.key_press(key);
    window.run();
}

fn is_focused(window: &Window, field: &str) -> bool {
    window.get_by_role_and_label(Role::TextInput, field).accesskit_node().is_focused()
}

/// However many boards were measured, the field for the next one is in sight after Return; and Return in a row
/// that is filled goes on to the next.
#[test]
fn the_next_reading_stays_in_sight() {
    let mut window = window_of([1280.0, 720.0], delivery());
    click(&mut window, "Next install");
    for number in 0..10 {
        typed(&mut window, "Reading of the next board", &format!("{}", 12 + number % 3), Key::Enter);
        window.run_ok();
        let field = window.get_by_role_and_label(Role::TextInput, "Reading of the next board").rect();
        // The pane ends where the strip under it begins.
        assert!(field.bottom() < 540.0 && field.top() > 140.0, "reading {number}: {field:?}");
        assert!(is_focused(&window, "Reading of the next board"));
    }
}

/// A figure that can't be stays in its field, with the keyboard there; the old one counts no longer.
#[test]
fn what_is_refused_leaves_no_old_reading_behind() {
    let mut window = window(delivery());
    click(&mut window, "Next install");
    typed(&mut window, "Reading of board 3", "115", Key::Tab);
    assert_eq!(window.state().job().next_install.as_ref().unwrap().readings[2].reading, None);
    let counted = |window: &Window| {
        window.state().assessment().next_install.as_ref().unwrap().sampling.unwrap().measured
    };
    assert_eq!(counted(&window), 7);
}

/// A day without its year is the next such day where a day to come is meant.
#[test]
fn a_day_without_its_year_is_the_next_one() {
    let mut window = window(delivery());
    click(&mut window, "Next install");
    let wanted = |window: &Window| window.state().job().next_install.as_ref().unwrap().wanted;
    enter(&mut window, "Hang by", "12/11");
    assert_eq!(wanted(&window), Some(jiff::civil::date(2026, 12, 11)));
    enter(&mut window, "Hang by", "1/15");
    assert_eq!(wanted(&window), Some(jiff::civil::date(2027, 1, 15)));
}

/// Neither place nor joints nor the first reading move the entries of the boards and the delivery.
#[test]
fn entries_stay_where_they_are() {
    let mut window = window_of([1366.0, 768.0], Job::new(jiff::civil::date(2026, 11, 27)));
    click(&mut window, "Next install");
    click(&mut window, "Plan an install");
    let places = |window: &Window| {
        ["Face width", "Hang by", "On stickers since", "Delivered"]
            .map(|field| window.get_by_role_and_label(Role::TextInput, field).rect().left_top())
    };
    let before = places(&window);
    enter(&mut window, "Town, ZIP code, or coordinates", "55401");
    window.run_ok();
    assert_eq!(places(&window), before, "a place");
    typed(&mut window, "Reading of the next board", "12", Key::Enter);
    window.run_ok();
    assert_eq!(places(&window), before, "the first reading");
}

/// Of a new job this room asks for what it needs, and not for boards to be drawn.
#[test]
fn a_new_job_is_asked_for_what_this_room_needs() {
    let mut window = window(Job::new(jiff::civil::date(2026, 11, 27)));
    click(&mut window, "Next install");
    assert!(window.query_by_label("Enter the room, the boards, and 8 readings").is_some());
    assert!(window.query_by_label_contains("Draw the boards").is_none());
}

#[test]
fn a_reading_that_is_typed_is_of_the_day_its_row_shows() {
    let today = jiff::ZonedDateTime::now().date();
    let came = today.yesterday().unwrap();
    let mut job = delivery();
    let next = job.next_install.as_mut().unwrap();
    (next.delivered, next.wanted) = (Some(came), None);
    let mut window = window(job);
    click(&mut window, "Next install");
    let day = |window: &Window, index: usize| {
        let job = window.state().job();
        let next = job.next_install.as_ref().unwrap();
        (next.readings.len(), next.day_of(&next.readings[index], job.visited))
    };
    // What was typed without a day stays the delivery's; what is typed now is of today.
    assert_eq!(day(&window, 0), (8, came));
    typed(&mut window, "Reading of the next board", "12", Key::Enter);
    assert_eq!(day(&window, 8), (9, today));
    // The next one is of the same day as the last one.
    enter(&mut window, "Date of board reading 9", &came.to_string());
    typed(&mut window, "Reading of the next board", "12.5", Key::Enter);
    assert_eq!(day(&window, 9), (10, came));
    click(&mut window, "Start today’s readings");
    typed(&mut window, "Reading of the next board", "11", Key::Enter);
    assert_eq!(day(&window, 10), (11, today));
    // One click makes the last round the delivery's.
    click(&mut window, "Taken at delivery");
    assert_eq!(day(&window, 10), (11, came));
}

/// Boards are sold under names that no table has: they are found by those, and each species that may be meant is offered.
#[test]
fn a_trade_name_finds_the_species_sold_as_that() {
    let mut window = window(Job::new(jiff::civil::date(2026, 11, 27)));
    click(&mut window, "Next install");
    click(&mut window, "Plan an install");
    window.get_by_role_and_label(Role::ComboBox, "Species").click();
    window.run();
    window.get_by_role_and_label(Role::TextInput, "Find in the list").type_text("whitewood");
    window.run();
    let several = "Several species are sold under that name";
    assert!(window.query_by_label_contains(several).is_some());
    for species in ["Pine, eastern white", "Pine, lodgepole", "Spruce, Engelmann"] {
        let offered = format!("{species} (sold as whitewood)");
        assert!(window.query_by_label(&offered).is_some(), "{offered}");
    }
    window.get_by_label("Pine, lodgepole (sold as whitewood)").click_accesskit();
    window.run();
    let next = window.state().job().next_install.clone().unwrap();
    assert_eq!(next.boards.species, "pine-lodgepole");
}

/// Of a room that nobody said where it is nothing is said, whatever was read.
#[test]
fn without_a_town_there_is_no_verdict() {
    let mut window = window(Job::new(jiff::civil::date(2026, 10, 12)));
    click(&mut window, "Next install");
    click(&mut window, "Plan an install");
    choose(&mut window, "Species", "Pine, eastern white");
    typed(&mut window, "Reading of the next board", "12", Key::Enter);
    assert!(window.state().assessment().next_install.is_none());
    assert!(window.query_all_by_label("Enter the room’s town and 7 readings").next().is_some());
    enter(&mut window, "Town, ZIP code, or coordinates", "55401");
    assert!(window.state().assessment().next_install.is_some());
}

/// What would help is tried with a click, and one step takes it back.
#[test]
fn a_change_is_tried_with_a_click_and_taken_back() {
    let mut job = delivery();
    job.plan.callback.widest = Length::inches(0.0625);
    let mut window = window(job.clone());
    click(&mut window, "Next install");
    assert_eq!(verdict(&window), Verdict::ChangePlan);
    window.get_by_label_contains("Try it: accept joints up to 1/8\"").click();
    window.run();
    assert_eq!(window.state().job().plan.callback.widest, Length::inches(0.125));
    assert_eq!(verdict(&window), Verdict::Wait);
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    assert_eq!(window.state().job().plan.callback.widest, job.plan.callback.widest);
}
