//! What to measure again, what is forecast for then, and what came of it.

use serde_json::{Value, json};

use super::{length_or_none, work::laid};
use crate::assess::{Assessment, LaterReading, date_after};
use crate::repair::Outcome;
use crate::words::causes::chance_as_percent;
use crate::words::{Arg, Words, follow_up, say};

/// More joints than this do not fit the card.
const MOST: usize = 24;

/// The joints to measure again, with what is forecast for the most humid and the driest weeks.
pub(super) fn again(assessment: &Assessment, words: &Words) -> Value {
    let (job, figures) = (&*assessment.job, words.figures());
    let days = assessment.look_again();
    let Some((humid, dry)) = days else { return json!({ "joints": [] }) };
    let measured = assessment.joints.iter().filter(|joint| joint.gap.is_some_and(|gap| gap.measured));
    // Over a joint that is sealed nothing is forecast to be seen.
    let outcome = assessment.chosen().map(|option| option.outcome);
    let hides = matches!(
        outcome,
        Some(Outcome::Bead { .. } | Outcome::Covered | Outcome::Glued | Outcome::Boards { .. })
    );
    let sealed = job.done.finished.is_some() && hides;
    let rows = measured.take(MOST).map(|state| {
        json!([
            job.surfaces[state.surface].name,
            words.joint(&laid(assessment, state).label),
            state.gap.map(|gap| figures.length(gap.gap.mean)),
            length_or_none(assessment.gap_on(state, humid).filter(|_| !sealed), words),
            length_or_none(assessment.gap_on(state, dry).filter(|_| !sealed), words),
        ])
    });
    let [humid, dry] = [humid, dry].map(|day| date_after(job, day));
    let when = match job.done.finished {
        Some(finished) => {
            let at = Arg::Id(match outcome {
                Some(Outcome::Bead { .. }) => "bead",
                Some(Outcome::Covered) => "strip",
                _ => "joint",
            });
            say!(words, "paper-look-again-done", finished = finished, at = at, humid = humid, dry = dry)
        }
        None => say!(words, "paper-look-again", humid = humid, dry = dry),
    };
    json!({
        "joints": rows.collect::<Vec<_>>(),
        "when": when,
        "note": if assessment.lays_beads() {
            say!(words, "paper-forecast-note")
        } else if hides {
            say!(words, "paper-forecast-note-work")
        } else {
            say!(words, "paper-forecast-note-open")
        },
        "damp": figures.date(humid),
        "dry": figures.date(dry),
        "finished": job.done.finished.map(|date| figures.date(date)),
    })
}

/// What was told when the papers were written, and what later visits found.
pub(super) fn came(assessment: &Assessment, words: &Words) -> Value {
    let visits = assessment.follow_up.iter().filter(|visit| !visit.readings.is_empty());
    let visits = visits.map(|visit| {
        let rows: Vec<Value> = visit.readings.iter().map(|reading| row(assessment, reading, words)).collect();
        let on = words.figures().date(visit.on);
        json!({
            "title": say!(words, "paper-later-visit", on = &on),
            "after": visit.after_work,
            "words": follow_up::for_owner(assessment, visit, words),
            "rows": rows,
        })
    });
    let last = assessment.follow_up.iter().map(|visit| visit.on).max().unwrap_or(assessment.job.visited);
    json!({
        "date": words.figures().date(last),
        "told": follow_up::told(assessment, words),
        "visits": visits.collect::<Vec<_>>(),
    })
}

/// One joint looked at again: where, then, told, now, and whether it came so.
fn row(assessment: &Assessment, reading: &LaterReading, words: &Words) -> Value {
    let figures = words.figures();
    let mut gaps = assessment.job.survey.gaps.iter();
    let first = gaps.find(|gap| gap.surface == reading.surface && gap.joint == reading.joint);
    let told = match (reading.forecast, reading.chance) {
        (Some((_, band)), _) => say!(words, "paper-told-between", low = band.low, high = band.high),
        (None, Some(chance)) => chance_as_percent(chance, words),
        (None, None) => words.text("paper-none").into_owned(),
    };
    let inside = reading.inside().map_or_else(String::new, |inside| {
        words.text(if inside { "visit-inside" } else { "visit-outside" }).into_owned()
    });
    json!([
        reading.surface,
        words.joint(&reading.joint),
        length_or_none(first.map(|gap| gap.width), words),
        told,
        figures.length(reading.width),
        inside,
    ])
}
