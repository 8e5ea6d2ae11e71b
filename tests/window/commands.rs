//! Commands of the window that are neither drawing nor entering: found by their names, and by what they
//! leave behind.

use crate::driven::{Window, click, click_first, command, enter, enter_path, find, window};
use eframe::egui::{Event, Key, Modifiers, OutputCommand, Role, Theme, ViewportCommand};
use egui_kittest::kittest::{AccessKitNode, NodeT as _, Queryable as _, by};
use gapwright::job::Job;
use gapwright::job::demo_job;

#[test]
fn the_theme_is_switched_by_button_key_and_name() {
    let mut window = window(Job::default());
    assert_eq!(window.ctx.theme(), Theme::Light);
    click(&mut window, "Switch between light and dark");
    assert_eq!(window.ctx.theme(), Theme::Dark);
    window.key_press_modifiers(Modifiers::COMMAND, Key::D);
    window.run();
    assert_eq!(window.ctx.theme(), Theme::Light);
    command(&mut window, "light dark");
    assert_eq!(window.ctx.theme(), Theme::Dark);
}

#[test]
fn all_of_a_surface_is_shown_again() {
    let mut window = window(demo_job());
    let whole = window.get_by_label_contains("Joint A 3,").rect();
    let middle = window.get_by_label("Drawing").rect().center();
    window.hover_at(middle);
    window.event(Event::Zoom(2.0));
    window.run();
    let close = window.get_by_label_contains("Joint A 3,").rect();
    assert!(close.center().distance(whole.center()) > 1.0, "zoomed: {whole:?} {close:?}");
    click(&mut window, "Show the whole surface");
    assert_eq!(window.get_by_label_contains("Joint A 3,").rect(), whole);
}

#[test]
fn the_demo_opens_from_the_menu_and_asks_about_what_is_unsaved() {
    let mut window = window(Job::default());
    enter(&mut window, "Job name", "Something else");
    click(&mut window, "File");
    click(&mut window, "Open the demo job");
    click(&mut window, "Cancel");
    assert_eq!(window.state().job().title, "Something else");
    command(&mut window, "open demo");
    click(&mut window, "Don’t save");
    assert_eq!(window.state().job(), &demo_job());
}

#[test]
fn quitting_closes_a_saved_job_and_asks_about_another() {
    let closes = |window: &Window| {
        let output = window.output();
        let commands = output.viewport_output.values().flat_map(|viewport| &viewport.commands);
        commands.filter(|command| **command == ViewportCommand::Close).count()
    };
    let mut window = window(demo_job());
    let (key, modifiers) = (Key::Q, Modifiers::COMMAND);
    let press = Event::Key { key, physical_key: None, pressed: true, repeat: false, modifiers };
    window.input_mut().events.push(press);
    let mut closed = 0;
    for _ in 0..4 {
        window.step();
        closed += closes(&window);
    }
    assert!(closed > 0);
}

#[test]
fn what_is_missing_leads_to_where_it_is_entered() {
    let mut job = demo_job();
    job.survey.gaps.retain(|gap| gap.surface != "North slope");
    job.survey.moistures.clear();
    job.plan.trial = None;
    let mut window = window(job);
    // What helps most stands in the answer; the rest is behind "2 more".
    let go_to = |window: &mut Window, text: &str| {
        if window.query_by_label_contains(text).is_none() {
            let ends = |node: &AccessKitNode<'_>| node.label().is_some_and(|label| label.ends_with(" more"));
            window.get(by().role(Role::Link).predicate(ends)).click_accesskit();
            window.run();
        }
        window.get_by_label_contains(text).click_accesskit();
        window.run();
    };
    go_to(&mut window, "a moisture reading of the boards");
    assert!(window.query_by_label("Moisture of the boards").is_some());
    go_to(&mut window, "3 more gaps in North slope, section C");
    // The first joint of that section is at hand, its field ready to be typed into.
    let field = window.get_by_role_and_label(Role::TextInput, "Gap of the joint");
    assert!(field.accesskit_node().is_focused());
    assert!(window.query_all_by_label_contains("Joint C 1").next().is_some());
    go_to(&mut window, "Time one section");
    assert!(window.query_all_by_label("Timed section").next().is_some());
}

#[test]
fn pictures_are_copied() {
    let mut window = window(demo_job());
    for typed in ["copy drawing picture", "copy year picture", "joint sections picture"] {
        find(&mut window, typed);
        // One event a frame, so that what each puts out is seen.
        window.key_down(Key::Enter);
        let mut copied = None;
        for _ in 0..4 {
            window.step();
            let commands = &window.output().platform_output.commands;
            copied = copied.or(commands.iter().find_map(|command| match command {
                OutputCommand::CopyImage(image) => Some(image.size),
                _ => None,
            }));
        }
        let [width, height] = copied.unwrap_or_default();
        assert!(width > 1000 && height > 200, "{typed}: {width} by {height}");
        window.run();
        click(&mut window, "Dismiss");
    }
}

#[test]
fn a_word_of_the_trade_is_explained() {
    let mut window = window(demo_job());
    command(&mut window, "what is backer");
    assert!(window.query_by_label_contains("A soft foam cord").is_some());
}

#[test]
fn walls_with_windows_are_marked_and_follow_their_corners() {
    let mut window = window(demo_job());
    click(&mut window, "Outline, trim, windows, and doors");
    click(&mut window, "edge 2");
    let marked = |window: &Window| window.state().job().surfaces[0].window_edges();
    assert_eq!(marked(&window).into_iter().collect::<Vec<_>>(), [1]);
    enter(&mut window, "Outline, corner 3, right", "20 ft");
    assert_eq!(marked(&window).into_iter().collect::<Vec<_>>(), [1]);
    click(&mut window, "edge 2");
    assert!(marked(&window).is_empty());
}

#[test]
fn the_letter_is_worded_otherwise_and_says_when_the_draft_has_changed() {
    let mut window = window(demo_job());
    click(&mut window, "Papers");
    click(&mut window, "Edit wording");
    let field = || (Role::MultilineTextInput, "What happened");
    window.get_by_role_and_label(field().0, field().1).focus();
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    window.get_by_role_and_label(field().0, field().1).type_text("We put them up too wet.");
    window.run();
    click(&mut window, "Why");
    let own = &window.state().job().wording;
    assert_eq!((own.len(), own[0].text.as_str()), (1, "We put them up too wet."));
    assert!(own[0].draft.contains("gives off moisture"));
    click(&mut window, "Papers");
    assert!(window.query_by_label_contains("The draft has changed since").is_none());
    click_first(&mut window, "Measure");
    enter(&mut window, "Face width", "4-1/8 in");
    click(&mut window, "Papers");
    assert!(window.query_by_label_contains("The draft has changed since").is_some());
    click(&mut window, "Restore draft");
    assert!(window.state().job().wording.is_empty());
}

#[test]
fn a_template_of_ones_own_is_used_told_about_and_put_away() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(demo_job());
    window.state_mut().templates_in(folder.path().to_owned());
    click(&mut window, "Papers");
    click(&mut window, "Edit template…");
    let path = folder.path().join("letter.typ");
    assert!(std::fs::read_to_string(&path).unwrap().contains("= #d.headings.saw"));
    std::fs::write(&path, "= Mine\n#nonsense()\n").unwrap();
    click(&mut window, "Reload");
    assert!(window.query_by_label_contains("letter.typ, line 2: unknown variable").is_some());
    // The built-in one stands in.
    assert!(window.query_by_label_contains("page 1 of 2").is_some());
    std::fs::write(&path, "= Mine\n").unwrap();
    click(&mut window, "Reload");
    assert!(window.query_by_label_contains("page 1 of 1").is_some());
    click(&mut window, "Use built-in template");
    assert!(window.query_by_label_contains("page 1 of 2").is_some());
    assert!(!path.exists() && folder.path().join("letter.typ.old").exists());
}

#[test]
fn a_logo_is_chosen_and_what_is_none_is_told() {
    let folder = tempfile::tempdir().unwrap();
    let (good, bad) = (folder.path().join("logo.svg"), folder.path().join("logo.png"));
    let svg = r#"<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20"><rect width="40" height="20"/></svg>"#;
    std::fs::write(&good, svg).unwrap();
    std::fs::write(&bad, "no picture").unwrap();
    let mut window = window(demo_job());
    click(&mut window, "Company address, logo, and notes");
    window.get_by_label("Choose a logo…").scroll_to_me();
    window.run();
    click(&mut window, "Choose a logo…");
    enter_path(&mut window, "PNG, JPEG, or SVG file", bad.to_str().unwrap(), "Choose");
    // It is told where the path was typed, which can be put right there.
    assert!(window.query_by_label_contains("is not a PNG, JPEG, or SVG picture").is_some());
    enter_path(&mut window, "PNG, JPEG, or SVG file", good.to_str().unwrap(), "Choose");
    assert!(window.state().job().contractor.logo.is_some());
    click(&mut window, "Papers");
    assert!(window.query_by_label_contains("page 1 of 2").is_some());
    click(&mut window, "Undo: Logo");
    assert!(window.state().job().contractor.logo.is_none());
}

#[test]
fn figures_are_kept_for_new_jobs_and_compared_with_later() {
    let folder = tempfile::tempdir().unwrap();
    let mut window = window(demo_job());
    command(&mut window, "keep prices");
    assert!(window.query_by_label_contains("no folder for your own prices").is_some());
    window.state_mut().prices_in(folder.path());
    command(&mut window, "keep prices");
    assert!(folder.path().join("shelf.ron").exists());
    let rate = window.state().job().plan.prices.labor;
    window.key_press_modifiers(Modifiers::COMMAND, Key::N);
    window.run();
    // A new job starts with the prices and the letterhead.
    assert_eq!(window.state().job().plan.prices.labor, rate);
    assert_eq!(window.state().job().contractor, demo_job().contractor);
    command(&mut window, "compare prices");
    assert!(window.query_all_by_label_contains("shelf.ron").next().is_some());
}
