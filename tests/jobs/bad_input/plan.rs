//! Plans, rates and prices that cannot be: told of, and what does not hang on them stands.

use gapwright::assess::{Advice, Assessment, FirstStep, MissingEntry, NotPossible};
use gapwright::job::fields::{self, At, Field};
use gapwright::job::{Job, Severity};
use gapwright::measure::{Hours, Length, Minutes, Money, Percent, ThreePoint};
use gapwright::repair::{MethodId, PriceLine, Shares};
use gapwright::survey::Survey;

use super::{SOUND, after, assessed, headline, others_stand, told_at};

#[test]
fn an_empty_job_says_what_to_do_first() {
    let job = Job::default();
    let found = assessed(&job);
    assert!(!found.answer.is_complete());
    assert_eq!(found.answer.advice, Advice::NothingYet(FirstStep::DrawBoards));
    assert_eq!(found.answer.missing[0], MissingEntry::Surface);
    assert!(headline(&found).starts_with("Start with the boards"), "{}", headline(&found));
    assert_eq!(found.problems, []);
    assert!(found.options.is_empty() && found.joints.is_empty() && found.season.is_none());
}

#[test]
fn a_job_without_readings_says_what_to_measure() {
    let (_, found) = after(|job| job.survey = Survey::default());
    assert!(!found.answer.is_complete());
    assert_eq!(found.answer.advice, Advice::NothingYet(FirstStep::MeasureGaps));
    assert!(found.answer.missing.contains(&MissingEntry::Moisture));
}

/// What is found after a change of the plan, which leaves the boards alone and is told at `field`.
#[track_caller]
fn planned(field: &'static Field, text: &str, change: impl FnOnce(&mut Job)) -> Assessment {
    let (_, found) = after(change);
    assert_eq!(told_at(&found, field, At::ONCE, text).severity, Severity::Error);
    others_stand(&found, &[]);
    assert!(found.answer.missing.contains(&MissingEntry::WrongEntries(1)), "{:?}", found.answer.missing);
    found
}

/// What a message says is used in place of a figure is what the repair is worked out with.
#[test]
fn without_crew_or_hours_the_repair_is_worked_out_with_what_is_said() {
    let with = |change: fn(&mut Job)| after(change).1.options;
    let one = with(|job| job.plan.crew = 1);
    assert!(one[0].schedule.crew_days > SOUND.1.options[0].schedule.crew_days);
    assert_eq!(planned(&fields::CREW_SIZE, "1 is used", |job| job.plan.crew = 0).options, one);
    let half = with(|job| job.plan.day = Hours::h(0.5));
    for day in [Hours::ZERO, Hours::h(-8.0)] {
        let found = planned(&fields::HOURS_PER_DAY, "0.5 hr is used", |job| job.plan.day = day);
        assert_eq!(found.options, half);
    }
}

#[test]
fn shares_over_the_whole_are_told_and_still_add_up() {
    let found = planned(&fields::SUPPLIER_SHARE, "the supplier’s share is 20%", |job| {
        job.plan.payers.contractor = Percent::pct(80.0);
        job.plan.payers.supplier = Percent::pct(70.0);
    });
    for (option, sound) in found.options.iter().zip(&SOUND.1.options) {
        let Some(price) = &option.price else { continue };
        assert_eq!(price.contractor + price.supplier + price.owner, price.total);
        assert_eq!(price.total, sound.total());
    }
    planned(&fields::SUPPLIER_SHARE, "-20% is not between 0% and 100%", |job| {
        job.plan.payers.supplier = Percent::pct(-20.0);
    });
    planned(&fields::OVERHEAD, "900% is not between 0% and 200%", |job| {
        job.plan.prices.overhead = Percent::pct(900.0);
    });
    planned(&fields::TAX, "1,000% is not between 0% and 50%", |job| {
        job.plan.prices.tax = Percent::pct(1000.0);
    });
    planned(&fields::WASTE_FACTOR, "90% is used", |job| job.plan.board_waste = Percent::pct(1e308));
    planned(&fields::SEALANT_WASTE, "-150% is not between", |job| job.plan.bead.waste = Percent::pct(-150.0));
}

#[test]
fn a_trial_that_cannot_be_gives_way_to_the_shelf() {
    let timed = |found: &Assessment| {
        let tasks = &found.options[0].tasks;
        tasks.iter().find(|task| task.id == "scrape").unwrap().basis.is_timed()
    };
    assert!(timed(&SOUND.1));
    let trial = |minutes: f64| {
        move |job: &mut Job| job.plan.trial.as_mut().unwrap().minutes = Some(Minutes::of(minutes))
    };
    for found in [
        planned(&fields::TIMED_MINUTES, "0 min is not between", trial(0.0)),
        planned(&fields::TIMED_MINUTES, "it is not used", trial(-85.0)),
        planned(&fields::TIMED_MINUTES, "it is not used", trial(1e9)),
        planned(&fields::TIMED_SECTION, "no section “Z” on “South slope”", |job| {
            job.plan.trial.as_mut().unwrap().section = "Z".to_owned();
        }),
    ] {
        assert!(!timed(&found));
        assert!(found.answer.is_complete());
    }
}

#[test]
fn what_is_not_on_the_shelf_is_told_and_the_boards_are_assessed() {
    for found in [
        planned(&fields::SEALANT, "“Chewing gum”", |job| job.plan.sealant = "Chewing gum".to_owned()),
        planned(&fields::PRIMER, "“Milk”", |job| job.plan.primer = "Milk".to_owned()),
        planned(&fields::PAINT, "“Tar”", |job| job.plan.paint = "Tar".to_owned()),
    ] {
        assert!(!found.answer.is_complete());
        assert_eq!(found.answer.advice, Advice::NothingYet(FirstStep::FixProblems));
        assert!(found.joints.iter().any(|joint| joint.treated));
    }
}

#[test]
fn negative_money_is_told_and_never_paid_out() {
    for found in [
        planned(&fields::WAGE, "-$48.00 is not between $0.00 and $10,000.00", |job| {
            job.plan.prices.labor = Money::cents(-48_00);
        }),
        planned(&fields::OWN_PRICES, "-$9,000.00 is not between", |job| {
            let sealant = job.plan.sealant.clone();
            job.plan.own_prices.insert(sealant, Money::cents(-900_000));
        }),
        planned(&fields::OWN_PRICES, "-$9,000.00 is not between", |job| {
            let paint = job.plan.paint.clone();
            job.plan.own_prices.insert(paint, Money::cents(-900_000));
        }),
        planned(&fields::OVERHEAD, "-150% is not between", |job| {
            job.plan.prices.overhead = Percent::pct(-150.0);
        }),
    ] {
        for option in &found.options {
            // Waiting is all labour: without a rate it costs nothing.
            let least = if option.materials.is_empty() { Money::cents(-1) } else { Money::ZERO };
            assert!(option.total() > least, "the price is {:?}", option.total());
        }
        let words = headline(&found);
        assert!(!words.contains('−') && !words.contains("-$"), "{words}");
    }
}

#[test]
fn own_minutes_out_of_order_give_way_to_the_shelf() {
    for (low, likely, high) in [(5.0, 3.0, 1.0), (0.0, 0.0, 0.0), (-3.0, 1.0, 2.0), (1.0, 2.0, 1e300)] {
        let found = planned(&fields::OWN_MINUTES, "“Run the bead”", |job| {
            job.plan.own_minutes.insert("bead".to_owned(), ThreePoint { low, likely, high });
        });
        assert!(found.options == SOUND.1.options, "{low}, {likely}, {high} are used");
    }
}

#[test]
fn boards_too_long_for_any_stock_are_told_and_the_other_ways_stand() {
    let (_, found) = after(|job| job.plan.stock.lengths = vec![Length::feet(6.0)]);
    assert_eq!(
        told_at(&found, &fields::STOCK_LENGTHS, At::ONCE, "The longest board is").severity,
        Severity::Warning
    );
    let option = |id| found.options.iter().find(|option| option.method == id).unwrap();
    for id in [MethodId::Replace, MethodId::ManMade] {
        assert!(matches!(option(id).not_possible, Some(NotPossible::StockTooShort { .. })));
        // What cannot be done has no price at all.
        assert!(option(id).price.is_none() && option(id).expected.is_none() && option(id).cutting.is_none());
    }
    assert!(option(MethodId::Reseal).not_possible.is_none());
    planned(&fields::STOCK_LENGTHS, "no stock lengths", |job| job.plan.stock.lengths.clear());
    planned(&fields::STOCK_LENGTHS, "is not between 12\" and 50'", |job| {
        job.plan.stock.lengths.push(Length::m(99.0));
    });
    planned(&fields::KERF, "0\" is used", |job| job.plan.stock.kerf = Length::m(-1.0));
}

#[test]
fn rates_of_money_that_cannot_be_are_told_and_the_price_stands() {
    planned(&fields::TAX, "300% is not between", |job| job.plan.prices.tax = Percent::pct(300.0));
    planned(&fields::LABOR_BURDEN, "-5% is not between", |job| job.plan.prices.burden = Percent::pct(-5.0));
    planned(&fields::DEPOSIT, "100% is used", |job| job.plan.prices.deposit = Percent::pct(120.0));
    planned(&fields::CONTINGENCY, "50% is used", |job| {
        job.plan.prices.contingency = Some(Percent::pct(20.0));
    });
    planned(&fields::EQUIPMENT, "-$1.00 is not between", |job| {
        job.plan.prices.equipment = Money::cents(-100);
    });
    planned(&fields::MINIMUM_CHARGE, "$0.00 is used", |job| job.plan.prices.minimum = Money::cents(-100));
    let shares = Shares { contractor: Percent::pct(70.0), supplier: Percent::pct(60.0) };
    let found = planned(&fields::LINE_SPLIT, "Materials: the contractor’s 70%", move |job| {
        job.plan.payers.lines.insert(PriceLine::Materials, shares);
    });
    for option in &found.options {
        let Some(price) = &option.price else { continue };
        assert_eq!(price.contractor + price.supplier + price.owner, price.total);
        assert!(price.owner >= Money::ZERO);
    }
}
