//! The ways to mend the joints, side by side: enough of them are possible, each is judged by what it
//! is, and callbacks follow what the user says. Which way is best is in `directions.rs`.

use gapwright::assess::{Assessment, NotPossible, assess};
use gapwright::job::demo_job;
use gapwright::job::{Catalog, Job, file};
use gapwright::measure::{Humidity, Percent};
use gapwright::repair::{BarStep, MethodId, Painting};

fn after(change: impl FnOnce(&mut Job)) -> Assessment {
    let mut job = demo_job();
    change(&mut job);
    assess(job, Catalog::built_in())
}

fn chance(found: &Assessment, method: MethodId) -> f64 {
    let option = found.options.iter().find(|option| option.method == method).unwrap();
    option.callback.as_ref().unwrap().chance
}

#[test]
fn every_example_has_at_least_six_possible_ways() {
    for text in [
        include_str!("../../examples/tea_room.ron"),
        include_str!("../../examples/stair_hall.ron"),
        include_str!("../../examples/porch_room.ron"),
    ] {
        let found = assess(file::read(text).unwrap().job, Catalog::built_in());
        let possible = found.options.iter().filter(|option| option.not_possible.is_none());
        assert!(possible.count() >= 6);
        assert!(found.options.iter().all(|option| !option.look.is_empty() && !option.name.is_empty()));
    }
}

#[test]
fn a_longer_warranty_brings_more_callbacks() {
    let [one, ten] = [1, 10].map(|years| after(|job| job.plan.warranty_years = years));
    assert!(chance(&ten, MethodId::Reseal) > chance(&one, MethodId::Reseal));
    assert!(chance(&ten, MethodId::Relay) > chance(&one, MethodId::Relay));
}

/// A room that nobody heats by the hygrometer moves its joints more than one that is held.
#[test]
fn a_wild_room_brings_more_callbacks_than_a_held_one() {
    let steady = after(|job| {
        let house = job.air.house_mut().unwrap();
        (house.humidified_to, house.dehumidified_to) = (Some(Humidity::pct(42.0)), Some(Humidity::pct(48.0)));
    });
    let wild = after(|job| {
        let house = job.air.house_mut().unwrap();
        (house.dehumidified_to, house.moisture_load) = (None, 1.0);
    });
    let bead = |found: &Assessment| {
        let option = found.options.iter().find(|option| option.method == MethodId::Reseal).unwrap();
        option.callback.as_ref().unwrap().without_paint
    };
    assert!(bead(&steady) < 0.02, "{}", bead(&steady));
    assert!(chance(&wild, MethodId::Reseal) > chance(&steady, MethodId::Reseal) + 0.3);
}

#[test]
fn what_is_not_possible_says_why() {
    let found = after(|job| job.survey.gaps.iter_mut().for_each(|gap| gap.width = gap.width / 20.0));
    let splines = found.options.iter().find(|option| option.method == MethodId::Splines).unwrap();
    let reason = splines.not_possible.unwrap();
    let expected = matches!(reason, NotPossible::TooFineForSpline { .. } | NotPossible::NoOpenJoints);
    assert!(expected, "{reason:?}");
    assert!(splines.callback.is_none() && splines.expected.is_none());
}

/// The chosen callback rule decides: an owner who forgives nothing calls more often.
#[test]
fn a_stricter_owner_calls_more_often() {
    let strict = after(|job| job.plan.callback.open_share = Percent::pct(1.0));
    let easy = after(|job| job.plan.callback.open_share = Percent::pct(40.0));
    assert!(chance(&strict, MethodId::Reseal) > chance(&easy, MethodId::Reseal) + 0.2);
}

/// In two visits the first is at once and the second on the day of sealing; appliances are bought once,
/// film for both maskings, and the room is free in between.
#[test]
fn two_visits_part_the_work_at_the_day_of_sealing() {
    // Sprayed both times: a brush needs less film, and may be the quicker way in one of the two.
    let one = after(|job| job.plan.painting = Painting::Sprayed);
    let two = after(|job| (job.plan.two_visits, job.plan.painting) = (true, Painting::Sprayed));
    let option = |found: &Assessment, id| found.options.iter().find(|o| o.method == id).unwrap().clone();
    let pieces = |found: &Assessment, id, name: &str| {
        option(found, id).materials.iter().find(|line| line.name.starts_with(name)).unwrap().pieces
    };
    assert_eq!(pieces(&two, MethodId::HoldHumidity, "Humidifier"), 1);
    assert!(pieces(&two, MethodId::Reseal, "Masking film") > pieces(&one, MethodId::Reseal, "Masking film"));
    let (one, two_visits) =
        (option(&one, MethodId::Reseal).schedule, option(&two, MethodId::Reseal).schedule);
    let bead =
        two_visits.bars.iter().find(|bar| bar.step == BarStep::Task("Run the bead".to_owned())).unwrap();
    // 14 Feb 2026 is a Saturday: work begins on Monday, two days later.
    let seal_day = f64::from(u32::try_from(two.seal_day).unwrap()) - 2.0;
    assert!(bead.start >= seal_day && bead.start < seal_day + 3.0, "{} against {seal_day}", bead.start);
    assert!(two_visits.calendar_days > one.calendar_days + 25, "{two_visits:?} {one:?}");
    assert!(two_visits.room_out < one.room_out + 6, "{} {}", two_visits.room_out, one.room_out);
    assert_eq!(option(&two, MethodId::Relay).schedule, option(&after(|_| ()), MethodId::Relay).schedule);
}

/// Each bead is judged as it is laid: down to the tongue it is overstrained on more than across the V.
#[test]
fn a_bead_holds_by_what_is_behind_it_and_not_by_what_is_chosen() {
    let holds = |found: &Assessment, id| {
        found.options.iter().find(|option| option.method == id).unwrap().holds.unwrap()
    };
    for chosen in [MethodId::Reseal, MethodId::ResealOnTongue, MethodId::Replace] {
        let found = after(|job| job.plan.chosen = chosen);
        assert!(holds(&found, MethodId::Reseal) > holds(&found, MethodId::ResealOnTongue) + 0.2);
        assert!(holds(&found, MethodId::HoldHumidity) >= holds(&found, MethodId::Reseal));
    }
}

/// What a callback costs is what is open when it comes: never more than doing all of it again.
#[test]
fn callbacks_cost_no_more_than_the_work_each_year() {
    let found = after(|job| job.plan.discount = Percent::ZERO);
    for option in &found.options {
        let (Some(expected), Some(risk)) = (option.expected, &option.callback) else { continue };
        let each_year = (expected.to_units() / option.total().to_units() - 1.0) / 2.0;
        assert!((0.0..=1.0).contains(&each_year), "{}", option.name);
        assert!(risk.opens_if_called <= risk.opens, "{}", option.name);
    }
}

/// What was believed last is kept over edits of prices; it is never taken for what another job's readings
/// say.
#[test]
fn nothing_is_remembered_of_another_job() {
    let narrower = |job: &mut Job| job.survey.gaps[0].width = job.survey.gaps[0].width / 2.0;
    let (first, other) = (after(|_| ()), after(narrower));
    assert_ne!(first.belief, other.belief);
    assert_eq!((after(|_| ()), after(narrower)), (first.clone(), other));
    let dearer = after(|job| job.plan.prices.tax = Percent::pct(20.0));
    assert_eq!(dearer.belief, first.belief);
    assert_ne!(dearer.options, first.options);
}

/// Options are compared side by side: which of them is chosen changes no price, no day and no chance of any.
#[test]
fn choosing_an_option_changes_no_figure_of_another() {
    let figures = |method: MethodId| {
        let mut job = demo_job();
        job.plan.chosen = method;
        let found = assess(job, Catalog::built_in());
        let figures = found.options.iter().map(|option| {
            let chance = option.callback.as_ref().map(|risk| risk.chance);
            (option.method, option.total(), option.starts, chance)
        });
        figures.collect::<Vec<_>>()
    };
    let usual = figures(MethodId::Reseal);
    assert!(usual.len() > 5);
    for (method, ..) in &usual {
        assert_eq!(figures(*method), usual, "{method:?} chosen");
    }
}
