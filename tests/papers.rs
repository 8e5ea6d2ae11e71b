//! What stands on the papers is what the assessment says, to the cent.

#![allow(clippy::unwrap_used, reason = "a test that cannot get at its data is to fail")]

use gapwright::assess::{Report, assess};
use gapwright::job::{Job, Shelf, file};
use gapwright::measure::{Percent, Units};
use gapwright::papers::{Paper, Papers};
use gapwright::repair::{PriceLine, Shares};
use serde_json::Value;

const EXAMPLES: [&str; 3] = [
    include_str!("../examples/tea_room.ron"),
    include_str!("../examples/stair_hall.ron"),
    include_str!("../examples/porch_room.ron"),
];

fn texts(job: &Job) -> (Vec<String>, Value) {
    let found = assess(job, Shelf::built_in());
    let papers = Paper::ALL.map(|paper| Papers::new(job, &found).typeset(paper).unwrap().text());
    (papers.to_vec(), serde_json::to_value(Report::new(job, &found, &[])).unwrap())
}

/// The amount of a report, `1234.50`, as papers write it.
fn written(amount: &Value, currency: &str) -> String {
    let (units, cents) = amount.as_str().unwrap().split_once('.').unwrap();
    let mut grouped = String::new();
    for (at, digit) in units.chars().enumerate() {
        if at > 0 && (units.len() - at).is_multiple_of(3) {
            grouped.push(',');
        }
        grouped.push(digit);
    }
    format!("{currency}{grouped}.{cents}")
}

/// Without blanks, so that a line break in the paper hides nothing.
fn dense(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace() && !c.is_control()).collect()
}

#[test]
fn every_amount_on_the_papers_is_that_of_the_report() {
    for text in EXAMPLES {
        for units in [Units::Inches, Units::Millimetres] {
            let mut job = file::read(text).unwrap().job;
            job.units = units;
            job.plan.prices.deposit = Percent::pct(30.0);
            job.plan.prices.contingency = Some(Percent::pct(80.0));
            let own = Shares { contractor: Percent::pct(10.0), supplier: Percent::pct(45.0) };
            job.plan.payers.lines.insert(PriceLine::Materials, own);
            let (papers, report) = texts(&job);
            let [letter, sheet] = [0, 1].map(|at| dense(&papers[at]));
            let options = report["options"].as_array().unwrap();
            let chosen = options.iter().find(|option| option["chosen"] == true).unwrap();
            let price = &chosen["price"];
            let currency = price["currency"].as_str().unwrap();
            for key in ["total", "owner", "deposit"] {
                assert!(letter.contains(&written(&price[key], currency)), "{}: letter, {key}", job.title);
            }
            let parts = ["labour", "materials", "overhead", "contingency", "profit", "tax", "total"];
            for key in parts.into_iter().chain(["owner", "contractor", "supplier", "deposit"]) {
                assert!(sheet.contains(&written(&price[key], currency)), "{}: sheet, {key}", job.title);
            }
            for line in chosen["materials"].as_array().unwrap() {
                assert!(sheet.contains(&written(&line["amount"], currency)), "{}: {line}", job.title);
            }
            let days = format!("{}days", chosen["crew_days"]);
            assert!(sheet.contains(&days) && letter.contains(&days), "{}: {days}", job.title);
        }
    }
}
