//! What the record of a delivery and the crew's card say.

use serde_json::{Value, json};

use crate::assess::Assessment;
use crate::named::name_of;
use crate::ready::Verdict;
use crate::words::{Arg, Say as _, Words, next_install as words_of, say};

/// More readings than this do not fit the record.
const MOST: usize = 60;

/// Texts and figures of a next install; null without one.
pub(super) fn next_install(assessment: &Assessment, words: &Words) -> Value {
    let job = &*assessment.job;
    let (Some(found), Some(next)) = (&assessment.next_install, &job.next_install) else { return Value::Null };
    let figures = words.figures();
    let rows = next.readings.iter().filter(|reading| reading.reading.is_some()).take(MOST).enumerate();
    let rows = rows.map(|(index, reading)| {
        json!([
            (index + 1).to_string(),
            reading.board,
            reading.reading.map(|moisture| figures.percent(moisture.to_pct(), 1)),
            figures.temperature(reading.wood),
            figures.length(reading.pins),
            figures.date(reading.date.unwrap_or(found.first)),
        ])
    });
    let outlook = found.outlook.as_ref();
    let measured = outlook.filter(|outlook| outlook.gate.verdict != Verdict::Measure);
    let waits = measured.filter(|outlook| outlook.gate.verdict != Verdict::Hang);
    let none = || say!(words, "paper-none");
    let facts = [
        (say!(words, "next-paper-supplier"), next.supplier.clone()),
        (say!(words, "next-paper-delivered"), figures.date(found.first)),
        (
            say!(words, "next-paper-promised"),
            next.promised.map_or_else(none, |most| figures.percent(most.to_pct(), 1)),
        ),
        (
            say!(words, "next-paper-boards"),
            say!(
                words,
                "next-paper-boards-value",
                count = next.count,
                width = next.boards.face_width,
                thickness = next.boards.thickness,
                species = Arg::Called(name_of(&assessment.catalog.species, &next.boards.species))
            ),
        ),
        (say!(words, "next-paper-meter"), next.setting.say(words)),
        (
            say!(words, "next-paper-stack"),
            say!(
                words,
                "next-paper-stack-value",
                piling = &next.stack.piling.say(words),
                kept = &next.stack.kept.say(words)
            ),
        ),
        (say!(words, "next-paper-measured-by"), next.checked_by.clone()),
    ];
    let columns = [
        say!(words, "next-column-number"),
        say!(words, "next-column-board"),
        say!(words, "next-paper-reading"),
        say!(words, "next-paper-wood"),
        say!(words, "next-column-pins"),
        say!(words, "next-column-date"),
    ];
    json!({
        "record": say!(words, "next-paper-record"),
        "card": say!(words, "next-paper-card"),
        "headline": words_of::headline(found, words),
        "hang": measured.is_some_and(|outlook| outlook.gate.verdict == Verdict::Hang),
        "chances": measured.map_or_else(Vec::new, |outlook| {
            words_of::chances(&outlook.gate, next, found.rule, words)
        }),
        "lot": measured.map_or_else(Vec::new, |outlook| words_of::lot(outlook, next, words)),
        "room": words_of::room(found, next, words),
        "boards": words_of::boards(found, job, assessment.sealant_name(), words),
        "ready": waits.map_or_else(Vec::new, |outlook| words_of::ready(found, outlook, words)),
        "levers": waits.map_or_else(Vec::new, |outlook| words_of::levers(found, outlook, words)),
        "again": waits.map(|outlook| words_of::next_reading(found, outlook, words)),
        "sampling": words_of::sampling(found, words),
        "known": say!(words, "next-known"),
        "facts": facts.iter().map(|(what, value)| json!([what, value])).collect::<Vec<_>>(),
        "facts_heading": say!(words, "next-paper-delivery"),
        "room_heading": say!(words, "next-room"),
        "readings_heading": say!(words, "next-paper-readings"),
        "verdict_heading": say!(words, "next-paper-verdict"),
        "stack_heading": say!(words, "next-watch"),
        "columns": columns,
        "readings": rows.collect::<Vec<_>>(),
        "blanks": say!(words, "next-paper-blanks"),
        "signs": [say!(words, "next-paper-sign-measured"), say!(words, "next-paper-sign-received")],
        "steps": [
            say!(words, "next-card-stickers"),
            say!(words, "next-card-where"),
            say!(words, "next-card-pins"),
            say!(words, "next-card-type"),
            say!(words, "next-card-hang"),
        ],
    })
}
