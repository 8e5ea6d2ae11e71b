//! How to hang the boards: today, or on the day they are ready.

use super::{kind_of_gap, marked, weekday};
use crate::assess::NextInstallFindings;
use crate::measure::{Length, Moisture};
use crate::ready::{DRIEST, HangDay, USUAL_READINGS};
use crate::words::{Arg, Words, say};

/// How to hang the boards, on the day that is spoken of. Those that were metered today were taken in; on a day to
/// come it goes by what boards average then.
pub(super) fn hang(found: &NextInstallFindings, hang: &HangDay, words: &Words) -> Vec<String> {
    if hang.day <= found.today {
        return vec![say!(words, "next-hang-now")];
    }
    let range = || Arg::Id(if hang.range.low <= DRIEST { "at_most" } else { "between" });
    let (low, high, date) = (hang.range.low, hang.range.high, weekday(found, hang.day, words));
    let count = USUAL_READINGS;
    let steps = gap_steps(hang, words);
    let gap = match &steps[..] {
        [(_, gap)] => say!(words, "next-hang-gap", kind = kind_of_gap(*gap), gap = *gap),
        _ => {
            let last = steps.len() - 1;
            let said = steps.iter().enumerate().map(|(at, (from, gap))| {
                let place = match at {
                    0 => "under",
                    _ if at == last => "over",
                    _ => "between",
                };
                let to = steps.get(at + 1).map_or(high, |(from, _)| *from);
                let (place, kind) = (Arg::Id(place), kind_of_gap(*gap));
                say!(words, "next-gap-step", place = place, kind = kind, gap = *gap, low = *from, high = to)
            });
            say!(words, "next-hang-gaps", steps = &words.figures().list(&said.collect::<Vec<_>>()))
        }
    };
    vec![
        say!(words, "next-hang-then", date = &date, count = count, low = low, high = high, range = range()),
        gap,
        say!(words, "next-hang-beside", low = low, high = high, range = range()),
    ]
}

/// The gaps to leave as they are marked on a tape, each with the average from which on it is left, the driest first:
/// the wetter boards are, the less. What is far from what is expected is left out, and so are steps too small to meter.
fn gap_steps(hang: &HangDay, words: &Words) -> Vec<(Moisture, Length)> {
    const FAR: f64 = 2.5;
    const SMALL: f64 = 0.4;
    let marked = |gap: Length| marked(gap, words);
    let near = |average: Moisture| (average - hang.moisture).to_pct().abs() <= FAR;
    let mut steps: Vec<(Moisture, Length)> = Vec::new();
    let mut least: Option<Length> = None;
    let mut before: Option<Moisture> = None;
    for (average, gap) in hang.by_average() {
        let marked = least.map_or(marked(gap), |least| marked(gap).min(least));
        least = Some(marked);
        if !near(average) {
            before = Some(average);
            continue;
        }
        match steps.last() {
            None => steps.push((average, marked)),
            // It changes somewhere between this average and the one before.
            Some((_, last)) if (*last - marked).to_m().abs() > 1e-9 => {
                let since = before.map_or(average, |before| before + (average - before) * 0.5);
                steps.push((since, marked));
            }
            Some(_) => {}
        }
        before = Some(average);
    }
    while let Some(at) = steps.windows(2).skip(1).position(|pair| (pair[1].0 - pair[0].0).to_pct() < SMALL) {
        steps.remove(at + 1);
    }
    if steps.is_empty() {
        steps.push((hang.range.low, marked(hang.gap)));
    }
    steps
}
