//! Plans, rates and prices that cannot be: told of, and what does not hang on them stands.

use gapwright::assess::Assessment;
use gapwright::job::{Job, Place, Severity};
use gapwright::measure::{Hours, Length, Minutes, Money, Percent, ThreePoint};
use gapwright::repair::{MethodId, PriceLine, Shares};
use gapwright::survey::Survey;

use super::{SOUND, after, assessed, others_stand, told};

#[test]
fn an_empty_job_says_what_to_do_first() {
    let job = Job::default();
    let found = assessed(&job);
    assert!(!found.answer.complete);
    assert!(found.answer.headline.starts_with("Start with the boards"), "{}", found.answer.headline);
    assert_eq!(found.answer.missing[0].words, "a surface with its size and pattern");
    assert_eq!(found.problems, []);
    assert!(found.options.is_empty() && found.joints.is_empty() && found.season.is_none());
}

#[test]
fn a_job_without_readings_says_what_to_measure() {
    let (_, found) = after(|job| job.survey = Survey::default());
    assert!(!found.answer.complete);
    assert!(found.answer.headline.contains("Measure a few gaps"), "{}", found.answer.headline);
    assert!(found.answer.missing.iter().any(|missing| missing.words.contains("moisture reading")));
}

/// What is found after a change of the plan, which leaves the boards alone and is told at `field`.
#[track_caller]
fn planned(field: &'static str, words: &str, change: impl FnOnce(&mut Job)) -> Assessment {
    let (_, found) = after(change);
    assert_eq!(told(&found, &Place::Plan(field), words).severity, Severity::Error);
    others_stand(&found, &[]);
    assert!(found.answer.missing.iter().any(|missing| missing.words.contains("put right")));
    found
}

#[test]
fn without_crew_or_hours_there_is_a_price_but_no_days() {
    for found in [
        planned("crew", "0 is not between 1 and 50", |job| job.plan.crew = 0),
        planned("working day", "0 h is not between", |job| job.plan.day = Hours::ZERO),
        planned("working day", "-8 h is not between", |job| job.plan.day = Hours::h(-8.0)),
    ] {
        assert_eq!(found.options.len(), MethodId::ALL.len());
        for (option, sound) in found.options.iter().zip(&SOUND.1.options) {
            assert_eq!(option.price.of(PriceLine::Labour), sound.price.of(PriceLine::Labour));
            // Nobody knows for how many days equipment is needed.
            assert_eq!(option.price.of(PriceLine::Equipment), Money::ZERO);
            assert_eq!(option.schedule.crew_days, 0);
        }
        let words = &found.answer.headline;
        assert!(!words.contains(" 0 crew days"), "days that nobody knows are given: {words}");
    }
}

#[test]
fn shares_over_the_whole_are_told_and_still_add_up() {
    let found = planned("who pays", "together 150 %", |job| {
        job.plan.payers.contractor = Percent::pct(80.0);
        job.plan.payers.supplier = Percent::pct(70.0);
    });
    for (option, sound) in found.options.iter().zip(&SOUND.1.options) {
        let price = &option.price;
        assert_eq!(price.contractor + price.supplier + price.owner, price.total);
        assert_eq!(price.total, sound.price.total);
    }
    planned("who pays", "together", |job| job.plan.payers.supplier = Percent::pct(-20.0));
    planned("overhead", "900 % is not between", |job| job.plan.prices.overhead = Percent::pct(900.0));
    planned("tax", "1000 % is not between", |job| job.plan.prices.tax = Percent::pct(1000.0));
    planned("board waste", "is not between", |job| job.plan.board_waste = Percent::pct(1e308));
    planned("sealant waste", "-150 % is not between", |job| job.plan.bead.waste = Percent::pct(-150.0));
}

#[test]
fn a_trial_that_cannot_be_gives_way_to_the_shelf() {
    let basis = |found: &Assessment| {
        let tasks = &found.options[0].tasks;
        tasks.iter().find(|task| task.id == "scrape").unwrap().basis.clone()
    };
    assert!(basis(&SOUND.1).contains("your timed section"));
    let trial = |minutes: f64| {
        move |job: &mut Job| job.plan.trial.as_mut().unwrap().minutes = Some(Minutes::of(minutes))
    };
    for found in [
        planned("timed section", "0 minutes", trial(0.0)),
        planned("timed section", "-85 minutes", trial(-85.0)),
        planned("timed section", "minutes cannot be", trial(1e9)),
        planned("timed section", "Section “Z” of “South slope”", |job| {
            job.plan.trial.as_mut().unwrap().section = "Z".to_owned();
        }),
    ] {
        assert!(!basis(&found).contains("your timed section"), "{}", basis(&found));
        assert!(found.answer.complete);
    }
}

#[test]
fn what_is_not_on_the_shelf_is_told_and_the_boards_are_assessed() {
    for found in [
        planned("sealant", "“Chewing gum”", |job| job.plan.sealant = "Chewing gum".to_owned()),
        planned("primer", "“Milk”", |job| job.plan.primer = "Milk".to_owned()),
        planned("paint", "“Tar”", |job| job.plan.paint = "Tar".to_owned()),
    ] {
        assert!(!found.answer.complete);
        assert!(found.answer.headline.contains("see the problems"), "{}", found.answer.headline);
        assert!(found.joints.iter().any(|joint| joint.treated));
    }
}

#[test]
fn negative_money_is_told_and_never_paid_out() {
    for found in [
        planned("labour rate", "-48 is not between", |job| job.plan.prices.labour = Money::cents(-48_00)),
        planned("own prices", "is less than nothing", |job| {
            let sealant = job.plan.sealant.clone();
            job.plan.own_prices.insert(sealant, Money::cents(-900_000));
        }),
        planned("own prices", "is less than nothing", |job| {
            let paint = job.plan.paint.clone();
            job.plan.own_prices.insert(paint, Money::cents(-900_000));
        }),
        planned("overhead", "-150 % is not between", |job| {
            job.plan.prices.overhead = Percent::pct(-150.0);
        }),
    ] {
        for option in &found.options {
            // Waiting is all labour: without a rate it costs nothing.
            let least = if option.materials.is_empty() { Money::cents(-1) } else { Money::ZERO };
            assert!(option.price.total > least, "the price is {:?}", option.price.total);
        }
        assert!(!found.answer.headline.contains('−'), "{}", found.answer.headline);
    }
}

#[test]
fn own_minutes_out_of_order_give_way_to_the_shelf() {
    for (low, likely, high) in [(5.0, 3.0, 1.0), (0.0, 0.0, 0.0), (-3.0, 1.0, 2.0), (1.0, 2.0, 1e300)] {
        let found = planned("own minutes", "“bead”", |job| {
            job.plan.own_minutes.insert("bead".to_owned(), ThreePoint { low, likely, high });
        });
        assert!(found.options == SOUND.1.options, "{low}, {likely}, {high} are used");
    }
}

#[test]
fn boards_too_long_for_any_stock_are_told_and_the_other_ways_stand() {
    let (_, found) = after(|job| job.plan.stock.lengths = vec![Length::feet(6.0)]);
    assert_eq!(
        told(&found, &Place::Plan("stock lengths"), "The longest board is").severity,
        Severity::Warning
    );
    let option = |id| found.options.iter().find(|option| option.method == id).unwrap();
    for id in [MethodId::Replace, MethodId::ManMade] {
        let reason = option(id).not_possible.as_ref().unwrap();
        assert!(reason.contains("no stock length is long enough"), "{reason}");
        assert!(option(id).expected.is_none() && option(id).cutting.is_none());
    }
    assert!(option(MethodId::Reseal).not_possible.is_none());
    planned("stock lengths", "No stock length is given", |job| job.plan.stock.lengths.clear());
    planned("stock lengths", "are not sold", |job| job.plan.stock.lengths.push(Length::m(99.0)));
    planned("saw kerf", "is not between", |job| job.plan.stock.kerf = Length::m(-1.0));
}

#[test]
fn rates_of_money_that_cannot_be_are_told_and_the_price_stands() {
    planned("tax", "300 % is not between", |job| job.plan.prices.tax = Percent::pct(300.0));
    planned("burden", "-5 % is not between", |job| job.plan.prices.burden = Percent::pct(-5.0));
    planned("deposit", "120 % is not between", |job| job.plan.prices.deposit = Percent::pct(120.0));
    planned("contingency", "20 % is not between", |job| {
        job.plan.prices.contingency = Some(Percent::pct(20.0));
    });
    planned("equipment", "-1 is not between", |job| job.plan.prices.equipment = Money::cents(-100));
    planned("least charge", "is not between", |job| job.plan.prices.minimum = Money::cents(-100));
    let shares = Shares { contractor: Percent::pct(70.0), supplier: Percent::pct(60.0) };
    let found = planned("who pays", "Of Materials the contractor bears 70 %", move |job| {
        job.plan.payers.lines.insert(PriceLine::Materials, shares);
    });
    for option in &found.options {
        let price = &option.price;
        assert_eq!(price.contractor + price.supplier + price.owner, price.total);
        assert!(price.owner >= Money::ZERO);
    }
}
