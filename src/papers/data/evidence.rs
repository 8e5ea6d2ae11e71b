//! Readings, what follows from them, and the odds of the causes.

use serde_json::{Value, json};

use crate::assess::{Assessment, MissingEntry, SectionState};
use crate::belief::Cause;
use crate::measure::Percent;
use crate::words::{Arg, Say as _, Words, answer, causes, say};

/// A factor of the odds beyond this is given as more than it.
const MOST: f64 = 1000.0;

/// Everything that was read in the room.
pub(super) fn readings(assessment: &Assessment, words: &Words) -> Value {
    let (job, figures) = (&*assessment.job, words.figures());
    let gaps = job.survey.gaps.iter().map(|gap| {
        let date = gap.date.unwrap_or(job.visited);
        let width = figures.length(gap.width);
        json!([gap.surface, gap.joint, width, gap.failed.say(words), figures.date(date)])
    });
    let moistures = job.survey.moistures.iter().filter_map(|reading| {
        Some(json!([
            reading.surface,
            reading.section,
            reading.board,
            figures.percent(reading.reading?.to_pct(), 1),
            figures.temperature(reading.wood),
        ]))
    });
    let rooms = job.survey.rooms.iter();
    let room_lines = rooms.clone().map(|room| {
        say!(words, "paper-room-reading", temperature = room.temperature, humidity = room.humidity)
    });
    let rooms = rooms.map(|room| {
        let humidity = figures.percent(100.0 * room.humidity.to_fraction(), 0);
        json!([figures.temperature(room.temperature), humidity])
    });
    let sections = assessment.sections.iter().map(|state| section(assessment, state, words));
    json!({
        "gaps": gaps.collect::<Vec<_>>(),
        "moistures": moistures.collect::<Vec<_>>(),
        "rooms": rooms.collect::<Vec<_>>(),
        "room_lines": room_lines.collect::<Vec<_>>(),
        "sections": sections.collect::<Vec<_>>(),
    })
}

/// What the readings of a section come to.
fn section(assessment: &Assessment, state: &SectionState, words: &Words) -> Value {
    let job = &*assessment.job;
    let surface = &job.surfaces[state.surface];
    let section = &surface.sections[state.section];
    let origin = state.origin.filter(|origin| !origin.beyond_drying).map(|origin| {
        let (low, high) = (origin.interval.low.to_pct().round(), origin.interval.high.to_pct().round());
        say!(
            words,
            "paper-moisture-range",
            moisture = origin.moisture,
            low = Arg::Number(low, 0),
            high = Percent::pct(high)
        )
    });
    let readings = assessment.meter_readings(state);
    let stamps = state.against_marks.map(|against| causes::marks(against, &assessment.catalog.marks, words));
    json!([
        surface.name,
        section.name,
        say!(words, "paper-plus-minus", mean = state.gaps.mean, error = state.gaps.error_of_mean),
        say!(words, "paper-measured-of", measured = state.gaps.measured, joints = state.gaps.joints),
        say!(words, "paper-moisture-readings", moisture = state.now.moisture.mean, readings = readings),
        origin.unwrap_or_else(|| say!(words, "paper-none")),
        words.figures().percent(state.settled.mean().to_pct(), 1),
        stamps.unwrap_or_default(),
    ])
}

/// The odds of the causes and what argues for which; `None` if no gap is known.
pub(super) fn odds(assessment: &Assessment, words: &Words) -> Option<Value> {
    let diagnosis = assessment.causes.as_ref()?;
    let odds = Cause::ALL.into_iter().map(|cause| {
        let chance = diagnosis.of(cause);
        json!([
            cause.say(words),
            causes::chance_as_odds(chance, words),
            causes::chance_as_percent(chance, words),
        ])
    });
    let side = |side: Option<(Cause, f64)>| match side {
        None => say!(words, "paper-none"),
        Some((cause, factor)) => {
            let cause = cause.say(words);
            if factor > MOST {
                say!(words, "paper-clue-weight-over", cause = &cause, factor = Arg::Number(MOST, 0))
            } else {
                say!(words, "paper-clue-weight", cause = &cause, factor = Arg::Number(factor, 1))
            }
        }
    };
    let clues = diagnosis
        .clues
        .iter()
        .map(|clue| json!([clue.evidence.say(words), side(clue.argues_for), side(clue.argues_against)]));
    let next = diagnosis
        .most_informative
        .map(|reading| answer::missing(assessment, MissingEntry::ForTheCause(reading), words));
    Some(json!({
        "odds": odds.collect::<Vec<_>>(),
        "clues": clues.collect::<Vec<_>>(),
        "settling": next,
    }))
}
