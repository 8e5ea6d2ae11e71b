//! What the program believes of 200 houses whose truth is known.
//!
//! `belief/houses.py` made them, with physics and scatter of its own: another house, isotherm, diffusivity
//! and drying scheme, weather that never repeats, groups of boards of any size, joints picked because they
//! looked wide. It shares no more with the program than the rates at which causes are expected. The script
//! makes as many more as one likes, and `belief/score.py` puts any of them to the program.

use std::fmt::Write as _;
use std::sync::Arc;

use gapwright::assess::{Assessment, assess};
use gapwright::belief::Cause;
use gapwright::job::{Catalog, Job, file};
use rayon::prelude::*;
use serde_json::Value;
use statrs::statistics::Statistics as _;

const HOUSES: &str = include_str!("belief/houses.jsonl");
/// Days ahead of the visit, after the visit itself.
const AHEAD: [usize; 3] = [60, 180, 360];

/// One forecast of a section's mean gap, mm.
struct Forecast {
    /// Index in [`AHEAD`].
    ahead: usize,
    /// Change since the visit: said, said without meter readings, and true.
    change: f64,
    without_meter: f64,
    truth: f64,
    /// Whether the range holds the true gap, and how wide it is.
    holds: bool,
    width: f64,
    /// By how much the mean gap of all joints is off today.
    level: f64,
    /// The same of the mean of the joints that were measured.
    of_measured: f64,
    /// Whether there were meter readings to leave out.
    metered: bool,
}

/// What one house showed.
struct House {
    forecasts: Vec<Forecast>,
    /// By section: the interval of the install moisture and the truth.
    installs: Vec<(f64, f64, f64)>,
    /// By cause the chance given and whether it played a part.
    causes: Vec<(f64, bool)>,
    effective: f64,
}

fn said(job: Job, catalog: &Arc<Catalog>) -> Assessment {
    assess(job, catalog)
}

fn house(line: &str, catalog: &Arc<Catalog>) -> House {
    let entry: Value = serde_json::from_str(line).unwrap();
    let job = file::read(&entry["job"].to_string()).unwrap().job;
    let truth = &entry["truth"];
    let mut bare = job.clone();
    bare.survey.moistures.clear();
    let metered = !job.survey.moistures.is_empty();
    let found = said(job.clone(), catalog);
    let without = metered.then(|| said(bare, catalog));
    let without = without.as_ref().unwrap_or(&found);
    let mut forecasts = Vec::new();
    let mut installs = Vec::new();
    let sections = truth["sections"].as_array().unwrap();
    for (at, section) in sections.iter().enumerate() {
        let (state, bare) = (&found.sections[at], &without.sections[at]);
        let gaps: Vec<f64> =
            section["mean_gap_mm"].as_array().unwrap().iter().map(|gap| gap.as_f64().unwrap()).collect();
        let surface = section["surface"].as_str().unwrap();
        let own = job.survey.gaps.iter().filter(|gap| gap.surface == surface);
        let widths: Vec<f64> = own.map(|gap| gap.width.to_mm()).collect();
        // Where none was measured, those of the whole job stand for it.
        let all = || job.survey.gaps.iter().map(|gap| gap.width.to_mm()).mean();
        let measured = if widths.is_empty() { all() } else { widths.mean() };
        if state.gaps.mean.to_mm() > 0.0 {
            forecasts.extend(AHEAD.iter().enumerate().map(|(ahead, &day)| {
                let band = state.mean_gap_band(day);
                let gap = gaps[ahead + 1];
                Forecast {
                    ahead,
                    change: (state.mean_gap_on(day) - state.mean_gap_on(0)).to_mm(),
                    without_meter: (bare.mean_gap_on(day) - bare.mean_gap_on(0)).to_mm(),
                    truth: gap - gaps[0],
                    holds: band.low.to_mm() <= gap && gap <= band.high.to_mm(),
                    width: (band.high - band.low).to_mm(),
                    level: state.gaps.mean.to_mm() - gaps[0],
                    of_measured: measured - gaps[0],
                    metered,
                }
            }));
        }
        if let Some(origin) = state.origin {
            let (low, high) = (origin.interval.low.to_pct(), origin.interval.high.to_pct());
            installs.push((low, high, section["install_pct"].as_f64().unwrap()));
        }
    }
    let true_causes: Vec<&str> =
        truth["causes"].as_array().unwrap().iter().map(|cause| cause.as_str().unwrap()).collect();
    let causes = found.causes.as_ref().map_or_else(Vec::new, |causes| {
        Cause::ALL.map(|cause| (causes.of(cause), true_causes.contains(&cause.key()))).to_vec()
    });
    House { forecasts, installs, causes, effective: found.belief.as_ref().unwrap().effective }
}

#[expect(clippy::cast_precision_loss, reason = "hundreds of forecasts")]
fn rms<'a>(of: impl Iterator<Item = &'a Forecast>, error: fn(&Forecast) -> f64) -> f64 {
    let squares: Vec<f64> = of.map(|forecast| error(forecast).powi(2)).collect();
    (squares.iter().sum::<f64>() / squares.len() as f64).sqrt()
}

#[expect(clippy::cast_precision_loss, reason = "hundreds of forecasts")]
fn share(of: impl Iterator<Item = bool>) -> f64 {
    let (mut yes, mut all) = (0_usize, 0_usize);
    for is in of {
        all += 1;
        yes += usize::from(is);
    }
    yes as f64 / all.max(1) as f64
}

#[test]
fn houses_of_known_truth_are_believed_rightly() {
    // The chance of a callback is not looked at here, so few trials do.
    let catalog = Arc::new(Catalog { trials: 100, ..(**Catalog::built_in()).clone() });
    let houses: Vec<House> =
        HOUSES.lines().collect::<Vec<_>>().par_iter().map(|line| house(line, &catalog)).collect();
    let tables = [forecasts(&houses), installs(&houses), causes(&houses), reliability(&houses)].join("\n");
    println!("{tables}");
    crate::tables::write_tables("houses", &tables);
    let enough = share(houses.iter().map(|house| house.effective >= 400.0));
    assert!(enough >= 0.99, "400 worlds count in {enough} of the houses");
}

/// The forecasts of how the mean gap changes, with their ranges.
#[expect(clippy::cast_precision_loss, reason = "hundreds of forecasts")]
fn forecasts(houses: &[House]) -> String {
    let forecasts: Vec<&Forecast> = houses.iter().flat_map(|house| &house.forecasts).collect();
    let mut table = String::from(
        "| days after the visit | rms error of the change, mm | of “no change” | without meter readings | where a meter was read | the same without it | true gap in the range | its mean width, mm |\n|---|---|---|---|---|---|---|---|\n",
    );
    for (ahead, days) in AHEAD.iter().enumerate() {
        let own = || forecasts.iter().copied().filter(|f| f.ahead == ahead);
        let metered = || own().filter(|f| f.metered);
        let ours = rms(own(), |f| f.change - f.truth);
        let none = rms(own(), |f| f.truth);
        let bare = rms(own(), |f| f.without_meter - f.truth);
        let with = rms(metered(), |f| f.change - f.truth);
        let without = rms(metered(), |f| f.without_meter - f.truth);
        let holds = share(own().map(|f| f.holds));
        let width = own().map(|f| f.width).sum::<f64>() / own().count() as f64;
        writeln!(
            table,
            "| {days} | {ours:.3} | {none:.3} | {bare:.3} | {with:.3} | {without:.3} | {:.0}% | {width:.2} |",
            100.0 * holds
        )
        .unwrap();
        // It is to hold nine in ten; of 400 a few fall to either side on another processor.
        assert!((0.8..=0.97).contains(&holds), "{days} days: the range holds {holds}");
        assert!(ours < 0.95 * none, "{days} days: {ours} against no change {none}");
        assert!(with < without, "{days} days: {with} with the meter, {without} without");
    }
    let today = forecasts.iter().copied().filter(|f| f.ahead == 0);
    let (level, of_measured) = (rms(today.clone(), |f| f.level), rms(today, |f| f.of_measured));
    writeln!(
        table,
        "\nThe mean gap of all joints on the day of the visit is {level:.2} mm off (rms); the mean of those measured, {of_measured:.2} mm."
    )
    .unwrap();
    assert!(level < of_measured);
    table
}

/// The moisture at install.
fn installs(houses: &[House]) -> String {
    let installs: Vec<&(f64, f64, f64)> = houses.iter().flat_map(|house| &house.installs).collect();
    let holds = share(installs.iter().map(|(low, high, truth)| low <= truth && truth <= high));
    assert!((0.82..=0.97).contains(&holds), "install moisture: {holds}");
    format!(
        "The moisture at install lies in its range in {:.0}% of {} sections.\n",
        100.0 * holds,
        installs.len()
    )
}

/// How well the odds of each cause tell.
#[expect(clippy::cast_precision_loss, reason = "hundreds of houses")]
fn causes(houses: &[House]) -> String {
    let mut table = String::from(
        "| cause | mean chance given | true | Brier score | of the bare rate |\n|---|---|---|---|---|\n",
    );
    for (at, cause) in Cause::ALL.iter().enumerate() {
        let own: Vec<(f64, bool)> = houses.iter().filter_map(|house| house.causes.get(at).copied()).collect();
        let count = own.len() as f64;
        let mean = own.iter().map(|(chance, _)| chance).sum::<f64>() / count;
        let truth = |is: bool| if is { 1.0 } else { 0.0 };
        let brier = own.iter().map(|(chance, is)| (chance - truth(*is)).powi(2)).sum::<f64>() / count;
        let true_share = share(own.iter().map(|(_, is)| *is));
        let bare = true_share * (1.0 - true_share);
        let [mean, is] = [mean, true_share].map(|share| 100.0 * share);
        writeln!(table, "| `{}` | {mean:.0}% | {is:.0}% | {brier:.3} | {bare:.3} |", cause.key()).unwrap();
        assert!(brier < bare, "{}: Brier {brier} against {bare} of the bare rate", cause.key());
    }
    table
}

/// How often a cause that is given such a chance plays a part.
#[expect(clippy::cast_precision_loss, reason = "hundreds of houses")]
fn reliability(houses: &[House]) -> String {
    let mut table = String::from("| chance given | times | mean of it | true |\n|---|---|---|---|\n");
    let all: Vec<(f64, bool)> = houses.iter().flat_map(|house| house.causes.clone()).collect();
    for (low, high) in [(0.0, 0.1), (0.1, 0.3), (0.3, 0.5), (0.5, 0.7), (0.7, 0.9), (0.9, 1.01)] {
        let own: Vec<&(f64, bool)> = all.iter().filter(|(p, _)| (low..high).contains(p)).collect();
        let mean = own.iter().map(|(p, _)| p).sum::<f64>() / own.len().max(1) as f64;
        let is = share(own.iter().map(|(_, is)| *is));
        let [low, high, mean, is] = [low, f64::min(high, 1.0), mean, is].map(|share| 100.0 * share);
        writeln!(table, "| {low:.0} to {high:.0}% | {} | {mean:.0}% | {is:.0}% |", own.len()).unwrap();
    }
    table
}
