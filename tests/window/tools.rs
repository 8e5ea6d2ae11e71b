//! What can be done in the window besides entering: drawing, finding commands, showing the homeowner,
//! the shelf, what comes afterwards.

use crate::driven::{Window, centre, choose, click, command, drag, enter, enter_path, window};
use eframe::egui::{Event, Key, Modifiers, PointerButton, Pos2, Role, vec2};
use egui_kittest::kittest::Queryable as _;
use gapwright::job::demo_job;
use gapwright::job::{Job, file, load_prices};
use gapwright::measure::{Hours, Length, Money};
use gapwright::repair::{MethodId, PriceLine};
use gapwright::surface::Point;

#[test]
fn a_corner_is_dragged_and_the_step_can_be_undone() {
    let mut window = window(demo_job());
    let before = window.state().job().clone();
    click(&mut window, "Shape");
    let corner = centre(&window, "Corner 3 of the outline");
    drag(&mut window, corner, corner - vec2(60.0, 0.0), Modifiers::NONE);
    let moved = window.state().job().surfaces[0].outline[2];
    assert!(moved.0 < before.surfaces[0].outline[2].0 && moved.1 == before.surfaces[0].outline[2].1);
    // What lay on the corner went along.
    let region = window.state().job().surfaces[0].sections[1].region.clone().unwrap();
    assert!(region.contains(&moved));
    click(&mut window, "Undo: Move corner");
    assert_eq!(window.state().job(), &before);
}

#[test]
fn a_corner_is_moved_and_taken_away_by_keys() {
    let mut window = window(demo_job());
    click(&mut window, "Shape");
    window.get_by_label_contains("Corner 3 of the outline").focus();
    window.run();
    window.key_press(Key::ArrowUp);
    window.run();
    let moved = window.state().job().surfaces[0].outline[2];
    assert!(moved.1 > demo_job().surfaces[0].outline[2].1);
    window.get_by_label_contains("Corner 3 of the outline").focus();
    window.run();
    window.key_press(Key::Delete);
    window.run();
    assert_eq!(window.state().job().surfaces[0].outline.len(), 3);
}

#[test]
fn the_length_of_an_edge_is_typed() {
    let mut window = window(demo_job());
    click(&mut window, "Shape");
    window.get_by_label_contains("Edge 1, 18'").click();
    window.run();
    let field = window.get_by_role_and_label(Role::TextInput, "Length of edge 1");
    field.focus();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.get_by_role_and_label(Role::TextInput, "Length of edge 1").type_text("20 ft");
    window.run();
    window.key_press(Key::Enter);
    window.run();
    let outline = &window.state().job().surfaces[0].outline;
    assert_eq!((outline[1].0, outline[2].0), (Length::feet(20.0), Length::feet(20.0)));
}

#[test]
fn a_divider_that_is_drawn_parts_a_section_and_an_opening_is_cut_out() {
    let mut job = demo_job();
    job.surfaces[0].dividers.clear();
    job.surfaces[0].sections.truncate(1);
    job.surfaces[0].sections[0].region = None;
    let mut window = window(job);
    let canvas = window.get_by_label("Drawing").rect();
    click(&mut window, "Shape");
    let [low, high] =
        ["Corner 1 of the outline", "Corner 3 of the outline"].map(|name| centre(&window, name));
    assert!(canvas.contains(low) && canvas.contains(high));
    click(&mut window, "Trim break");
    let x = low.x + (high.x - low.x) / 3.0;
    drag(&mut window, Pos2::new(x, low.y), Pos2::new(x, high.y), Modifiers::NONE);
    let surface = window.state().job().surfaces[0].clone();
    assert_eq!((surface.sections.len(), surface.dividers.len()), (2, 1));
    click(&mut window, "Window/door");
    let inside = Pos2::new(x + 40.0, (low.y + high.y) / 2.0);
    drag(&mut window, inside, inside + vec2(50.0, 40.0), Modifiers::NONE);
    assert_eq!(window.state().job().surfaces[0].openings.len(), 1);
    assert!(window.state().assessment().layouts[0].plan_area < gapwright::measure::Area::m2(15.9));
}

#[test]
fn joints_in_a_rope_are_set_together() {
    let mut window = window(demo_job());
    let [first, last] = ["Joint A 3,", "Joint A 6,"].map(|name| centre(&window, name));
    drag(&mut window, first + vec2(-30.0, 6.0), last + vec2(30.0, -6.0), Modifiers::SHIFT);
    let field = window.get_by_role_and_label(Role::TextInput, "Gap of the joint");
    field.focus();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.get_by_role_and_label(Role::TextInput, "Gap of the joint").type_text("1/16");
    window.run();
    window.key_press(Key::Enter);
    window.run();
    let gaps = &window.state().job().survey.gaps;
    for joint in ["A 3", "A 4", "A 5", "A 6"] {
        let gap = gaps.iter().rfind(|gap| gap.surface == "South slope" && gap.joint == joint).unwrap();
        assert_eq!(gap.width, Length::inches(0.0625), "{joint}");
    }
    click(&mut window, "Undo: Gap");
    assert_eq!(window.state().job(), &demo_job());
}

#[test]
fn every_command_is_found_by_its_name() {
    let mut window = window(demo_job());
    for (typed, label) in [
        ("go to catalog", "Prices and rates of this job"),
        ("go to follow-up", "Later visits"),
        ("go to why", "Why the joints opened"),
        ("go to papers", "Write papers…"),
        ("go to options", "Repair options"),
        ("go to measure", "Add meter reading"),
    ] {
        command(&mut window, typed);
        assert!(window.query_all_by_label(label).next().is_some(), "{typed}");
    }
    command(&mut window, "show north");
    assert!(window.query_by_label_contains("Joint C 2,").is_some());
    command(&mut window, "joint c 7");
    assert!(window.query_all_by_label("Joint C 7").next().is_some());
    command(&mut window, "use millimeters");
    assert_eq!(window.state().job().units, gapwright::measure::Units::Millimeters);
    command(&mut window, "use inches");
    assert_eq!(window.state().job(), &demo_job());
    command(&mut window, "tool shape");
    assert!(window.query_by_label_contains("Corner 1 of the outline").is_some());
    for typed in ["import prices", "learn from", "weather file", "logger", "open job", "save as"] {
        command(&mut window, typed);
        window.get_by_label("Cancel").click();
        window.run();
    }
    command(&mut window, "nothing of this name");
    window.get_by_label("Nothing found. Try another word.");
    window.key_press(Key::Escape);
    window.run();
    assert_eq!(window.state().job(), &demo_job());
}

#[test]
fn the_homeowner_sees_pages_and_prices_only_if_asked() {
    let mut window = window(demo_job());
    let total = window.state().assessment().chosen().unwrap().total().show("$");
    window.key_press_modifiers(Modifiers::COMMAND, Key::H);
    window.run();
    assert!(window.query_all_by_label("What happened").count() == 2);
    window.key_press(Key::ArrowRight);
    window.run();
    window.get_by_label("How your joints move over the year");
    window.key_press(Key::ArrowRight);
    window.run();
    window.get_by_label("What can be done");
    assert!(window.query_by_label_contains(&total).is_none());
    click(&mut window, "Show prices");
    assert!(window.query_all_by_label_contains(&total).next().is_some());
    window.key_press(Key::ArrowRight);
    window.run();
    window.get_by_label("What we ask of you");
    window.key_press(Key::Escape);
    window.run();
    assert!(window.query_all_by_label("Measure").next().is_some());
    assert_eq!(window.state().job(), &demo_job());
}

#[test]
fn a_number_says_where_it_comes_from() {
    let mut window = window(demo_job());
    click(&mut window, "Why");
    let asked = "Boards at install: where does this come from?";
    window.get_all_by_label(asked).next().unwrap().click();
    window.run();
    assert!(window.query_all_by_label_contains("ΔD = D · C").next().is_some());
    assert!(window.query_all_by_label_contains("eq. 13-2").next().is_some());
}

/// The total on the screen, with its lines, is the assessment's to the cent.
#[test]
fn the_price_on_the_screen_is_that_of_the_assessment() {
    let mut window = window(demo_job());
    click(&mut window, "Price");
    let price = window.state().assessment().chosen().unwrap().price.clone().unwrap();
    window.get_by_label(&format!("Reseal across the joint: {}", price.total.show("$")));
    for line in &price.lines {
        let amount = line.amount.show("$");
        assert!(window.query_all_by_label(&amount).next().is_some(), "{}: {amount}", line.line.key());
    }
    assert_eq!(price.lines.iter().map(|line| line.amount).sum::<Money>(), price.total);
}

#[test]
fn a_line_of_the_price_is_split_differently() {
    let mut window = window(demo_job());
    click(&mut window, "Price");
    choose(&mut window, "Split a line differently", "Labor");
    enter(&mut window, "Contractor’s share: Labor", "0");
    enter(&mut window, "Supplier’s share: Labor", "100");
    let shares = window.state().job().plan.payers.of(PriceLine::Labor);
    assert!((shares.supplier.to_pct() - 100.0).abs() < 1e-9 && shares.contractor.to_pct() == 0.0);
    enter(&mut window, "Supplier’s share: Labor", "130");
    assert!(window.query_by_label_contains("“130” is not between 0% and 100%").is_some());
}

#[test]
fn a_price_is_changed_on_the_shelf_and_the_shelf_exported_and_imported() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("mine.ron");
    let mut window = window(demo_job());
    click(&mut window, "Catalog");
    click(&mut window, "Other materials");
    click(&mut window, "Masking film, roll");
    enter(&mut window, "Price of one piece", "20,50");
    let own = window.state().job().price_book.clone().unwrap();
    let film = own.materials.iter().find(|material| material.id == "film").unwrap();
    assert_eq!(film.price, Money::cents(2050));
    click(&mut window, "Export prices…");
    enter_path(&mut window, "Price file (.ron)", path.to_str().unwrap(), "Export");
    assert_eq!(load_prices(&path).unwrap().materials, own.materials);
    // In another job the difference is shown before anything changes.
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    assert_eq!(window.state().job(), &demo_job());
    click(&mut window, "Import prices…");
    enter_path(&mut window, "Price file (.ron)", path.to_str().unwrap(), "Import");
    assert!(window.query_all_by_label("$20.50").next().is_some());
    assert_eq!(window.state().job(), &demo_job());
    click(&mut window, "Use these prices");
    assert_eq!(window.state().job().price_book.as_ref().unwrap().materials, own.materials);
    click(&mut window, "Undo: Use these prices");
    assert_eq!(window.state().job(), &demo_job());
}

#[test]
fn a_way_of_ones_own_is_made_changed_and_chosen() {
    let mut window = window(demo_job());
    click(&mut window, "Catalog");
    click(&mut window, "Your own repair options");
    click(&mut window, "Add an option like the selected one");
    click(&mut window, "Reseal across the joint (mine)");
    enter(&mut window, "Option name", "Quick reseal");
    click(&mut window, "Remove: Scuff and dust");
    let own = window.state().job().price_book.clone().unwrap();
    assert_eq!(own.methods[0].name, "Quick reseal");
    click(&mut window, "Options");
    // The answer may speak of it too.
    window.get_by_role_and_label(Role::RadioButton, "Quick reseal").click();
    window.run();
    assert_eq!(window.state().job().plan.chosen, MethodId::Own(1));
    let found = window.state().assessment();
    let price = |id| found.options.iter().find(|option| option.method == id).unwrap().total();
    assert!(price(MethodId::Own(1)) < price(MethodId::Reseal));
}

#[test]
fn hours_and_later_gaps_are_written_down() {
    let mut window = window(demo_job());
    click(&mut window, "Follow-up");
    enter(&mut window, "Actual hours: Scrape out the old caulk", "6,5");
    let taken = window.state().job().done.hours.get("scrape").copied();
    assert_eq!(taken, Some(Hours::h(6.5)));
    click(&mut window, "Add visit");
    enter(&mut window, "Date of visit 1", "2026-06-01");
    choose(&mut window, "Joint to measure again", "South slope A 2");
    assert_eq!(window.state().job().later[0].gaps[0].width, None);
    window.get_by_role_and_label(Role::TextInput, "Gap later: South slope A 2");
    enter(&mut window, "Gap later: South slope A 2", "3/32");
    assert_eq!(window.state().job().later[0].gaps[0].width, Some(Length::inches(3.0 / 32.0)));
    assert!(window.query_by_label_contains("in the forecast range").is_some());
}

#[test]
fn what_a_crash_left_is_offered_and_recovered() {
    let folder = tempfile::tempdir().unwrap();
    let lost = Job { title: "Almost lost".to_owned(), ..demo_job() };
    let text = format!("(path:None,job:{:?})", file::write(&lost).unwrap());
    std::fs::write(folder.path().join("1-1.ron"), text).unwrap();
    let mut window = window(Job::default());
    let ctx = window.ctx.clone();
    window.state_mut().autosave_in(&ctx, folder.path().to_owned());
    window.run();
    window.get_by_label("Unsaved work found");
    click(&mut window, "Recover");
    assert_eq!(window.state().job().title, "Almost lost");
    assert!(window.query_by_label("not saved").is_some());
    let left = std::fs::read_dir(folder.path()).unwrap().filter_map(Result::ok);
    assert!(!left.into_iter().any(|entry| entry.file_name() == "1-1.ron"));
}

#[test]
fn a_file_changed_by_someone_else_is_not_saved_over_unasked() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("shared.ron");
    file::save(&demo_job(), &path).unwrap();
    let mut window = window(Job::default());
    let ctx = window.ctx.clone();
    window.state_mut().autosave_in(&ctx, folder.path().join("kept"));
    window.key_press_modifiers(Modifiers::COMMAND, Key::O);
    window.run();
    enter_path(&mut window, "Job file (.ron or .json)", path.to_str().unwrap(), "Open");
    enter(&mut window, "Job name", "Mine");
    let theirs = Job { title: "A much longer title by someone else".to_owned(), ..demo_job() };
    file::save(&theirs, &path).unwrap();
    window.key_press_modifiers(Modifiers::COMMAND, Key::S);
    window.run();
    window.get_by_label("The file has changed");
    click(&mut window, "Cancel");
    assert_eq!(file::load(&path).unwrap().job.title, theirs.title);
    window.key_press_modifiers(Modifiers::COMMAND, Key::S);
    window.run();
    click(&mut window, "Save over it");
    assert_eq!(file::load(&path).unwrap().job.title, "Mine");
}

#[test]
fn a_photo_is_pinned_where_it_was_taken_once_the_job_has_a_file() {
    let folder = tempfile::tempdir().unwrap();
    let photo = folder.path().join("crack.png");
    image::RgbaImage::from_pixel(8, 6, image::Rgba([120, 90, 60, 255])).save(&photo).unwrap();
    let path = folder.path().join("job.ron");
    let mut window = window(demo_job());
    click(&mut window, "Photo");
    let at = window.get_by_label("Drawing").rect().center();
    window.event(Event::PointerMoved(at));
    let button = |pressed| Event::PointerButton {
        pos: at,
        button: PointerButton::Primary,
        pressed,
        modifiers: Modifiers::NONE,
    };
    window.event(button(true));
    window.event(button(false));
    window.run();
    enter_path(&mut window, "JPEG or PNG file", photo.to_str().unwrap(), "Pin");
    window.get_by_label_contains("Save the job first");
    window.key_press_modifiers(Modifiers::COMMAND, Key::S);
    window.run();
    enter_path(&mut window, "Save as", path.to_str().unwrap(), "Save");
    window.event(button(true));
    window.event(button(false));
    window.run();
    enter_path(&mut window, "JPEG or PNG file", photo.to_str().unwrap(), "Pin");
    let pinned = window.state().job().surfaces[0].photos.clone();
    assert_eq!(pinned.len(), 1);
    assert!(folder.path().join("job.photos").join(&pinned[0].file).exists());
    assert_ne!(pinned[0].at, Point::default());
    window.get_by_label("Photo 1").click();
    window.run();
    enter(&mut window, "Note on the photo", "By the skylight");
    assert_eq!(window.state().job().surfaces[0].photos[0].note, "By the skylight");
    click(&mut window, "Unpin");
    assert!(window.state().job().surfaces[0].photos.is_empty());
}

#[test]
fn the_years_play_over_and_over_until_they_are_stopped() {
    let mut window = window(demo_job());
    click(&mut window, "Why");
    window.get_by_label("Play the year").click();
    let mut came_round = false;
    for _ in 0..400 {
        window.step();
        came_round |= window.query_by_label_contains("Aug 25, 2025: ").is_some();
    }
    assert!(came_round, "after the last day comes that of the install");
    window.get_by_label("Play the year").click();
    // It comes to rest.
    window.run();
}

/// Readings stay where they were taken when a divider renames the joints.
#[test]
fn a_divider_leaves_readings_at_their_place() {
    let mut job = demo_job();
    job.surfaces.truncate(1);
    job.surfaces[0].dividers.clear();
    job.surfaces[0].sections.truncate(1);
    job.surfaces[0].sections[0].region = None;
    job.survey
        .gaps
        .retain(|gap| gap.surface == "South slope" && gap.joint.starts_with("A ") && gap.joint != "A ridge");
    let places = |window: &Window| {
        let laid = &window.state().assessment().layouts[0];
        let gaps = &window.state().job().survey.gaps;
        let place = |gap: &gapwright::survey::GapReading| {
            laid.joints.iter().find(|joint| joint.label == gap.joint).unwrap().middle().y
        };
        gaps.iter().map(place).collect::<Vec<f64>>()
    };
    let mut window = window(job);
    let before = places(&window);
    click(&mut window, "Shape");
    let [low, high] =
        ["Corner 1 of the outline", "Corner 3 of the outline"].map(|name| centre(&window, name));
    click(&mut window, "Trim break");
    let y = low.y + 0.6 * (high.y - low.y);
    drag(&mut window, Pos2::new(low.x, y), Pos2::new(high.x, y), Modifiers::NONE);
    assert_eq!(window.state().job().surfaces[0].sections.len(), 2);
    let after = places(&window);
    assert_eq!(before.len(), after.len());
    for (before, after) in before.iter().zip(after) {
        assert!((before - after).abs() < 0.14, "{before} m is now {after} m up");
    }
}

/// Typed in one go, as on a slow machine, each gap goes to its own joint.
#[test]
fn gaps_typed_ahead_are_not_lost() {
    let mut job = demo_job();
    job.survey.gaps.clear();
    let mut window = window(job);
    click(&mut window, "Next joint to measure");
    let key = |pressed| Event::Key {
        key: Key::Enter,
        physical_key: None,
        pressed,
        repeat: false,
        modifiers: Modifiers::NONE,
    };
    // Two figures in one frame, then some that end with Enter and the first letter of the next.
    for typed in ["1/8\n1/4\n3", "/64\n5", "/32\n1", "/16\n"] {
        for (at, piece) in typed.split('\n').enumerate() {
            if at > 0 {
                window.event(key(true));
                window.event(key(false));
            }
            if !piece.is_empty() {
                window.event(Event::Text(piece.to_owned()));
            }
        }
        window.run();
    }
    let widths: Vec<String> = window
        .state()
        .job()
        .survey
        .gaps
        .iter()
        .map(|gap| gap.width.show(gapwright::measure::Units::Inches))
        .collect();
    assert_eq!(widths, ["1/8\"", "1/4\"", "3/64\"", "5/32\"", "1/16\""]);
}

#[test]
fn tables_are_copied_and_north_is_marked() {
    let mut window = window(demo_job());
    for (typed, head) in [
        ("copy joints", "surface"),
        ("copy year", "date"),
        ("copy tasks", "task"),
        ("copy materials", "name"),
    ] {
        command(&mut window, typed);
        assert!(window.query_by_label_contains("lines copied").is_some(), "{typed}: {head}");
    }
    click(&mut window, "Outline, trim, windows, and doors");
    enter(&mut window, "North", "90");
    let north = window.state().job().surfaces[0].north.unwrap();
    assert!((north.to_degrees() - 90.0).abs() < 1e-9);
}
