//! While there is too little to go on, nothing is recommended anywhere, and what is missing is named.

use crate::driven::{Window, click, click_first, window};
use egui_kittest::kittest::Queryable as _;
use gapwright::job::{Job, demo_job};

/// Whatever stands for a recommendation.
const RECOMMENDED: [&str; 4] =
    ["This repair will likely last.", "The one to choose", "As good as each other", "What we propose"];

fn recommends(window: &Window) -> Vec<&'static str> {
    RECOMMENDED.into_iter().filter(|mark| window.query_all_by_label(mark).count() > 0).collect()
}

#[test]
fn a_new_job_recommends_nothing_in_any_room_and_names_what_is_missing() {
    let mut one_gap = demo_job();
    one_gap.survey.gaps.truncate(1);
    let mut unmeasured = demo_job();
    unmeasured.survey.gaps.clear();
    let cases = [
        (Job::default(), "Add a surface with its size and pattern"),
        (unmeasured, "Measure 3 more gaps"),
        (one_gap, "Measure 2 more gaps"),
    ];
    for (job, missing) in cases {
        let mut window = window(job);
        for room in ["Measure", "Why", "Options", "Price", "Papers", "Follow-up"] {
            click_first(&mut window, room);
            assert_eq!(recommends(&window), [""; 0], "{room}, {missing}");
            assert!(window.query_all_by_label_contains(missing).count() > 0, "{room}: {missing}");
        }
        click(&mut window, "For the homeowner");
        click(&mut window, "Options");
        assert_eq!(recommends(&window), [""; 0], "to the homeowner, {missing}");
    }
}

#[test]
fn the_demo_has_a_recommendation_where_it_is_due() {
    let mut window = window(demo_job());
    click_first(&mut window, "Options");
    assert!(!recommends(&window).is_empty());
}
