//! The three examples against plain importance sampling in numpy: `sampler.py`, whose physics, sums and random
//! numbers are its own, wrote `sampler.json`.

use std::fmt::Write as _;

use gapwright::assess::assess;
use gapwright::belief::{Belief, COUNT, Cause};
use gapwright::job::{Catalog, file};
use serde_json::Value;

const SAMPLED: &str = include_str!("sampler.json");
/// Standard errors within which both must agree.
const ERRORS: f64 = 3.0;

fn example(name: &str) -> &'static str {
    match name {
        "tea_room" => include_str!("../../../examples/tea_room.ron"),
        "stair_hall" => include_str!("../../../examples/stair_hall.ron"),
        "porch_room" => include_str!("../../../examples/porch_room.ron"),
        _ => panic!("{name} is no example"),
    }
}

/// What is believed, under the names of `sampler.json`: each with how far off it may be because only so many
/// worlds count, one standard error.
#[expect(clippy::cast_precision_loss, reason = "hundreds of worlds")]
fn believed(belief: &Belief) -> Vec<(&'static str, f64, f64)> {
    let error_of_mean = |sd: f64, worlds: f64| sd / worlds.sqrt();
    let error_of_sd = |sd: f64, worlds: f64| sd / (2.0 * worlds).sqrt();
    // The moistures are those of the worlds that were run on, a sample of all that count.
    let all = belief.effective;
    let run_on = 1.0 / (1.0 / all + 1.0 / COUNT as f64);
    let offset = belief.meter_offset;
    let (offset, offset_sd) = (offset.mean.to_pct(), offset.sd.to_pct());
    let came = &belief.courses[0].installed;
    let installed = came.iter().sum::<f64>() / came.len() as f64;
    let squares = came.iter().map(|came| (came - installed).powi(2)).sum::<f64>();
    let installed_sd = (squares / came.len() as f64).sqrt();
    let now = belief.courses[0].on(0);
    let (now, now_sd) = (now.mean.to_pct(), now.sd.to_pct());
    let mut found = vec![
        ("meter_offset", offset, error_of_mean(offset_sd, all)),
        ("meter_offset_sd", offset_sd, error_of_sd(offset_sd, all)),
        ("installed", installed, error_of_mean(installed_sd, run_on)),
        ("installed_sd", installed_sd, error_of_sd(installed_sd, run_on)),
        ("moisture_now", now, error_of_mean(now_sd, run_on)),
        ("moisture_now_sd", now_sd, error_of_sd(now_sd, run_on)),
    ];
    found.extend(Cause::ALL.map(|cause| {
        let chance = belief.of(cause);
        (cause.key(), chance, error_of_mean((chance * (1.0 - chance)).sqrt(), all))
    }));
    found
}

#[test]
fn the_examples_are_believed_as_an_importance_sampler_has_them() {
    let sampled: Vec<Value> = serde_json::from_str(SAMPLED).unwrap();
    let mut table =
        String::from("| example | what | ours | sampled | apart, standard errors |\n|---|---|---|---|---|\n");
    let mut most = 0.0_f64;
    for sampled in &sampled {
        let name = sampled["example"].as_str().unwrap();
        assert!(
            sampled["effective"].as_f64().unwrap() >= 1000.0,
            "{name}: too few worlds count in the sampler"
        );
        let found = assess(file::read(example(name)).unwrap().job, Catalog::built_in());
        for (what, ours, error) in believed(found.belief.as_ref().unwrap()) {
            let [theirs, their_error] = [0, 1].map(|at| sampled["found"][what][at].as_f64().unwrap());
            let apart = (ours - theirs) / error.hypot(their_error);
            most = most.max(apart.abs());
            writeln!(table, "| {name} | `{what}` | {ours:.3} | {theirs:.3} | {apart:+.1} |").unwrap();
        }
    }
    println!("{table}");
    assert!(most < ERRORS, "{table}");
}
