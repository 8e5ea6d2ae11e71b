//! A problem leads to the entry it is about: to the right row of the right list, in the right room, on the
//! right surface, through folds that were closed.

use crate::driven::{Window, click, click_first, enter, find, window};
use eframe::egui::{Key, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use gapwright::job::{Job, PriceBook, Severity, demo_job};
use gapwright::measure::{Length, Money, Percent, ThreePoint};
use gapwright::repair::{PriceLine, Shares};
use gapwright::survey::{LaterGap, LaterVisit};

/// What the widget that has the keyboard is called and holds.
fn focused(window: &Window) -> (String, String) {
    let nodes = window.root().children_recursive();
    let node = nodes.map(|node| node.accesskit_node()).find(|node| node.is_focused());
    let node = node.expect("something has the keyboard");
    (node.label().unwrap_or_default(), node.value().unwrap_or_default())
}

/// A window of the demo with one entry that cannot be, gone to by the link of the answer.
fn led(spoil: impl FnOnce(&mut Job)) -> Window {
    let mut job = demo_job();
    spoil(&mut job);
    let mut window = window(job);
    let problems = &window.state().assessment().problems;
    let errors: Vec<_> = problems.iter().filter(|problem| problem.severity == Severity::Error).collect();
    assert_eq!(errors.len(), 1, "{errors:?}");
    // The link is in another room than most of the entries.
    click_first(&mut window, "Papers");
    window.get_by_label("Fix 1 entry, marked in red").click();
    window.run();
    window
}

#[track_caller]
fn leads(spoil: impl FnOnce(&mut Job), name: &str) {
    assert_eq!(focused(&led(spoil)).0, name);
}

#[test]
fn to_the_row_of_a_reading() {
    leads(|job| job.survey.gaps[2].width = Length::inches(40.0), "Gap reading 3");
    leads(|job| job.survey.gaps[1].joint = "Z 9".into(), "Gap reading 2");
    let late = jiff::civil::date(2026, 12, 31);
    leads(|job| job.survey.gaps[1].date = Some(late), "Date of gap reading 2");
    leads(
        |job| job.survey.moistures[1].reading = Some(gapwright::measure::Moisture::pct(300.0)),
        "Meter reading 2",
    );
    leads(|job| job.survey.moistures[2].section = "Z".into(), "Section of meter reading 3");
    // The day has no entry of its own in that list.
    leads(|job| job.survey.moistures[1].date = Some(late), "Meter reading 2");
}

#[test]
fn to_a_section_of_another_surface_through_three_folds() {
    let job = demo_job();
    assert!(job.surfaces.len() > 1 && job.surfaces[1].sections.len() > 1);
    let short = |job: &mut Job| job.surfaces[1].sections[1].board.longest = Some(Length::inches(2.0));
    let (name, value) = focused(&led(short));
    // Every section has an entry of this name: only this one holds the figure.
    assert_eq!(name, "Max length");
    assert!(value.starts_with('2'), "{value}");
}

#[test]
fn to_the_line_of_a_task_a_material_or_a_payer() {
    let rate = ThreePoint { low: 9.0, likely: 5.0, high: 12.0 };
    let task = |job: &mut Job| {
        job.plan.own_minutes.insert("bead".into(), rate);
    };
    leads(task, "Minutes: Run the bead");
    let material = |job: &mut Job| {
        job.plan.own_prices.insert("tape".into(), Money::cents(-100));
    };
    assert_eq!(focused(&led(material)).0, "Price: Masking tape, roll");
    let payers = |job: &mut Job| {
        let all = Shares { contractor: Percent::pct(80.0), supplier: Percent::pct(70.0) };
        let half = Shares { contractor: Percent::pct(50.0), supplier: Percent::pct(50.0) };
        job.plan.payers.lines = [(PriceLine::Labor, half), (PriceLine::Materials, all)].into();
    };
    leads(payers, "Contractor’s share: Materials");
}

#[test]
fn to_a_later_visit_and_to_what_the_work_took() {
    let gap = |joint: &str, inches: f64| LaterGap {
        surface: "South slope".into(),
        joint: joint.into(),
        width: Some(Length::inches(inches)),
    };
    let visits = |job: &mut Job| {
        let on = |month| jiff::civil::date(2026, month, 1);
        job.later = vec![
            LaterVisit { on: on(6), gaps: vec![gap("A 2", 0.1)] },
            LaterVisit { on: on(8), gaps: vec![gap("A 2", 0.1), gap("A 5", 40.0)] },
        ];
    };
    leads(visits, "Gap later: South slope A 5");
    let hours = |job: &mut Job| {
        job.done.hours.insert("tool".into(), gapwright::measure::Hours::h(-3.0));
    };
    leads(hours, "Actual hours: Tool and wipe the bead");
}

#[test]
fn to_an_entry_of_the_catalog() {
    let book = |job: &mut Job| {
        let mut own = PriceBook::of(gapwright::job::Catalog::built_in(), job.visited);
        own.materials[1].price = Money::cents(-5);
        job.price_book = Some(own);
    };
    let window = led(book);
    assert_eq!(focused(&window).0, "One piece covers");
    // The entry is open, and its neighbors are not.
    assert_eq!(open_entries(&window), ["Masking tape, roll"]);
}

/// The entries of the catalog whose figures are in sight.
fn open_entries(window: &Window) -> Vec<String> {
    let folds = window.query_all_by_role(Role::DisclosureTriangle).map(|node| node.accesskit_node());
    let open = folds.filter(|node| node.data().is_expanded() == Some(true)).filter_map(|node| node.label());
    let mut open: Vec<String> = open.collect();
    open.retain(|name| name != "Other materials");
    let prices = window.query_all_by_role_and_label(Role::TextInput, "Price of one piece");
    assert_eq!(prices.count(), open.len());
    open
}

#[test]
fn what_was_opened_for_an_earlier_lead_closes() {
    let mut job = demo_job();
    let mut own = PriceBook::of(gapwright::job::Catalog::built_in(), job.visited);
    for wrong in [1, 3] {
        own.materials[wrong].price = Money::cents(-5);
    }
    job.price_book = Some(own);
    let mut window = window(job);
    let go = |window: &mut Window, link: &str| {
        click_first(window, "Papers");
        window.get_by_label(link).click();
        window.run();
    };
    go(&mut window, "Fix 2 entries, marked in red");
    assert_eq!(open_entries(&window), ["Masking tape, roll"]);
    enter(&mut window, "Price of one piece", "7");
    // What was opened by hand stays.
    click(&mut window, "Masking film, roll");
    go(&mut window, "Fix 1 entry, marked in red");
    assert_eq!(open_entries(&window), ["Masking film, roll", "Rags, bags, respirator cartridges"]);
}

#[test]
fn the_search_leads_to_fields_of_lists_too() {
    let mut window = window(demo_job());
    for (field, name) in [
        ("Edit: Gap date", "Date of gap reading 1"),
        ("Edit: Wood temperature", "Wood temperature 1"),
        ("Edit: Old caulk", "cuts clean"),
        ("Edit: Primer", "Primer"),
    ] {
        find(&mut window, field.trim_start_matches("Edit: "));
        window.key_press(Key::Enter);
        window.run();
        assert_eq!(focused(&window).0, name);
    }
}

/// How boards came is found by what people call it, before the part of the work that a callback does not have.
#[test]
fn how_boards_came_is_found_in_a_callback() {
    let mut window = window(demo_job());
    for (typed, name) in [
        ("delivered", "Delivery of the boards"),
        ("kiln", "Grade stamp"),
        ("acclimated", "Boards stored"),
        ("city", "Town, ZIP code, or coordinates"),
    ] {
        find(&mut window, typed);
        window.key_press(Key::Enter);
        window.run();
        assert_eq!(focused(&window).0, name, "{typed}");
    }
}

/// A new meter row takes the keyboard where it stands: no fold opens on the way, not even for a frame.
#[test]
fn a_new_meter_row_opens_no_fold() {
    let mut window = window(demo_job());
    let open = |window: &Window| {
        let folds = window.query_all_by_role(Role::DisclosureTriangle);
        folds.filter(|node| node.accesskit_node().data().is_expanded() == Some(true)).count()
    };
    let before = open(&window);
    window.get_by_label("Add meter reading").click();
    for _ in 0..8 {
        window.step();
        assert_eq!(open(&window), before, "a fold was opened to look for the row");
    }
    window.run();
    assert_eq!(focused(&window).0, "Meter reading 6");
}
