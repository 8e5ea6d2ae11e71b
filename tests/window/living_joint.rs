//! The living joint: the days its story turns on are named and can be turned to, and what the picture shows of
//! bead and paint is what the assessment says of that day.

use std::cmp::Reverse;

use crate::driven::{Window, click, click_first, window};
use eframe::egui::{Key, Role};
use egui_kittest::kittest::{NodeT as _, Queryable as _, by};
use gapwright::job::{Job, demo_job};
use jiff::civil::date;

const CRACKED: &str = "The paint over it is cracked.";

/// What the picture of the joint is called.
fn picture(window: &Window) -> String {
    let node = window.get(by().role(Role::Image).label_contains("Joint section: "));
    node.accesskit_node().label().expect("it has a name")
}

fn at_why(job: Job) -> Window {
    let mut window = window(job);
    click_first(&mut window, "Why");
    window
}

#[test]
fn the_days_of_the_story_are_named_and_turned_to() {
    let mut window = at_why(demo_job());
    for name in ["installed", "sealed", "widest week", "visit"] {
        click(&mut window, name);
        assert!(picture(&window).contains(name), "{name}: {}", picture(&window));
    }
    // By keyboard as well.
    window.get_by_role_and_label(Role::Link, "sealed").focus();
    window.run();
    window.key_press(Key::Enter);
    window.run();
    assert!(picture(&window).contains("sealed"), "{}", picture(&window));
}

#[test]
fn cracked_paint_is_shown_when_the_assessment_says_so_and_stays_cracked() {
    // Sealed at the end of the humid season, with the joints near their narrowest, and of the dry one.
    let mut seen = Vec::new();
    for sealed in [date(2026, 9, 10), date(2027, 2, 20)] {
        let mut job = demo_job();
        job.plan.seal_on = Some(sealed);
        let mut window = at_why(job);
        for name in ["sealed", "widest week"] {
            click(&mut window, name);
            let found = window.state().assessment();
            // What is shown while no joint is selected: the section of the first surface with most readings.
            let here = found.sections.iter().filter(|state| state.surface == 0);
            let state = here.max_by_key(|state| (state.gaps.measured, Reverse(state.section))).expect("one");
            let story = found.story(state, None);
            let day = if name == "sealed" { story.sealed.expect("it is sealed") } else { story.widest };
            let (bead, cracked) = found.bead_on(state, None, day).expect("there is a bead");
            let shows = picture(&window).contains(CRACKED);
            assert_eq!(shows, cracked && !bead.shows(), "{sealed} {name}: {}", picture(&window));
            seen.push(cracked);
            // Whatever the boards do after that, nothing mends.
            let after = (day..700).step_by(21).map(|day| found.bead_on(state, None, day).expect("so").1);
            assert!(!cracked || after.into_iter().all(|cracked| cracked));
        }
    }
    assert!(seen.contains(&true) && seen.contains(&false), "{seen:?}");
}
