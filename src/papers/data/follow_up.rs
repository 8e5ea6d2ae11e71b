//! What to measure again, and what is forecast for then.

use serde_json::{Value, json};

use super::{length_or_none, work::laid};
use crate::assess::{Assessment, date_after};
use crate::words::{Words, say};

/// More joints than this do not fit the card.
const MOST: usize = 24;

/// The joints to measure again, with what is forecast for the most humid and the driest weeks.
pub(super) fn again(assessment: &Assessment, words: &Words) -> Value {
    let (job, figures) = (&*assessment.job, words.figures());
    let days = assessment.look_again();
    let Some((humid, dry)) = days else { return json!({ "joints": [] }) };
    let measured = assessment.joints.iter().filter(|joint| joint.gap.is_some_and(|gap| gap.measured));
    let rows = measured.take(MOST).map(|state| {
        json!([
            job.surfaces[state.surface].name,
            words.joint(&laid(assessment, state).label),
            state.gap.map(|gap| figures.length(gap.gap.mean)),
            length_or_none(assessment.gap_on(state, humid), words),
            length_or_none(assessment.gap_on(state, dry), words),
        ])
    });
    let [humid, dry] = [humid, dry].map(|day| date_after(job, day));
    let when = match job.done.finished {
        Some(finished) => {
            say!(words, "paper-look-again-done", finished = finished, humid = humid, dry = dry)
        }
        None => say!(words, "paper-look-again", humid = humid, dry = dry),
    };
    json!({
        "joints": rows.collect::<Vec<_>>(),
        "when": when,
        "note": if assessment.lays_beads() {
            say!(words, "paper-forecast-note")
        } else {
            say!(words, "paper-forecast-note-open")
        },
        "damp": figures.date(humid),
        "dry": figures.date(dry),
        "finished": job.done.finished.map(|date| figures.date(date)),
    })
}
