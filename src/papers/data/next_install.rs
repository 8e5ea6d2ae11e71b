//! What the record of a delivery and the crew's card say.

use serde_json::{Value, json};

use crate::air::{IndoorAir, SummerAir};
use crate::assess::Assessment;
use crate::named::name_of;
use crate::ready::{NextInstall, Verdict};
pub(super) use crate::words::next_install::title;
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
            figures.date(next.day_of(reading, job.visited)),
        ])
    });
    let outlook = found.outlook.as_ref();
    let verdict = outlook.map_or(Verdict::Measure, |outlook| outlook.gate.verdict);
    let measured = outlook.filter(|_| verdict != Verdict::Measure);
    let watched = outlook.filter(|_| words_of::is_watched(verdict));
    let texts = |facts: Vec<(String, String)>| -> Vec<Value> {
        facts
            .iter()
            .filter(|(_, value)| !value.is_empty())
            .map(|(what, value)| json!([what, value]))
            .collect()
    };
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
        "headline": words_of::headline(found, next, words),
        "hang": verdict == Verdict::Hang,
        "watched": !matches!(verdict, Verdict::Hang | Verdict::SendBack),
        "reasons": words_of::reasons(found, next, words),
        "card_reasons": words_of::card_reasons(found, next, words),
        "lot": measured.map_or_else(Vec::new, |outlook| words_of::lot(outlook, next, words)),
        "presets": words_of::presets(next, words),
        "room": words_of::room(found, next, words),
        "boards": words_of::boards(found, next, assessment.sealant_name(), words),
        "levers": watched.map_or_else(Vec::new, |outlook| words_of::levers(found, outlook, words)),
        "again": watched.map(|outlook| words_of::next_reading(found, outlook, words)),
        "sampling": words_of::sampling(found, words),
        "known": watched.map(|_| say!(words, "next-known")),
        "facts": texts(delivery_facts(assessment, next, words)),
        "card_facts": texts(card_facts(assessment, next, words)),
        "facts_heading": say!(words, "next-paper-delivery"),
        "room_facts": texts(room_facts(assessment, words)),
        "room_heading": say!(words, "next-room"),
        "planned": [say!(words, "next-paper-planned"), words_of::planned(next, &assessment.catalog, words)],
        "readings_heading": say!(words, "next-paper-readings"),
        "stack_heading": say!(words, "next-watch"),
        "columns": columns,
        "readings": rows.collect::<Vec<_>>(),
        "blanks": say!(words, "next-paper-blanks"),
        "blank_facts": [say!(words, "next-column-date"), say!(words, "next-paper-meter")],
        "blank_columns": [
            say!(words, "next-paper-blank-board"),
            say!(words, "next-paper-blank-reading"),
            say!(words, "next-paper-wood"),
        ],
        "signs": [say!(words, "next-paper-sign-measured"), say!(words, "next-paper-sign-received")],
        "steps": words_of::steps(found, next, words),
    })
}

/// What the crew needs to know of the boards: which, how many, and how deep the pins go.
fn card_facts(assessment: &Assessment, next: &NextInstall, words: &Words) -> Vec<(String, String)> {
    let told = [say!(words, "next-paper-species"), say!(words, "next-paper-boards")];
    let facts = delivery_facts(assessment, next, words).into_iter().filter(|(what, _)| told.contains(what));
    let pins = (say!(words, "next-column-pins"), words.figures().length(next.deep_enough()));
    facts.chain([pins]).collect()
}

/// The delivery and its boards: what, and the value; empty where nothing was entered.
fn delivery_facts(assessment: &Assessment, next: &NextInstall, words: &Words) -> Vec<(String, String)> {
    let figures = words.figures();
    let species = &next.boards.species;
    let species = assessment.catalog.species(species).map_or(species, |species| &species.name);
    let species = words.called(species);
    // What was found by a trade name is taken for one of several.
    let species = match next.sold_as.trim() {
        "" => species.into_owned(),
        sold_as => say!(
            words,
            "next-paper-species-sold",
            species = Arg::Name(&species),
            sold_as = Arg::Name(sold_as)
        ),
    };
    let boards = say!(
        words,
        "next-paper-boards-value",
        count = next.count,
        width = next.boards.face_width,
        thickness = next.boards.thickness
    );
    let date = |date: Option<jiff::civil::Date>| date.map(|day| figures.date(day)).unwrap_or_default();
    vec![
        (say!(words, "next-paper-supplier"), next.supplier.clone()),
        (say!(words, "next-paper-delivered"), figures.date(next.came(assessment.job.visited))),
        (
            say!(words, "next-paper-promised"),
            next.promised.map(|most| figures.percent(most.to_pct(), 1)).unwrap_or_default(),
        ),
        (say!(words, "next-paper-species"), species),
        (say!(words, "next-paper-boards"), boards),
        (say!(words, "next-paper-joints"), next.joints.say(words)),
        (say!(words, "next-paper-wanted"), date(next.wanted)),
        (say!(words, "next-paper-meter"), next.setting.say(words)),
        (say!(words, "next-paper-stack"), words_of::stack(next, words)),
        (say!(words, "next-paper-measured-by"), next.checked_by.clone()),
    ]
}

/// The room: its place, and its air when it was measured.
fn room_facts(assessment: &Assessment, words: &Words) -> Vec<(String, String)> {
    let job = &*assessment.job;
    let figures = words.figures();
    let place = match &job.air {
        IndoorAir::FromClimate { station, .. } => name_of(&assessment.catalog.stations, station).to_owned(),
        IndoorAir::FromPlace { site, .. } => site.name.clone(),
        IndoorAir::FromWeather { weather, .. } => weather.place.clone(),
        IndoorAir::Monthly(_) => String::new(),
    };
    let air = job.survey.rooms.last().map(|reading| {
        let (temperature, humidity) = (reading.temperature, reading.humidity);
        say!(words, "next-paper-air-value", temperature = temperature, humidity = humidity)
    });
    let house = job.air.house();
    let heated = house.map(|house| figures.temperature(house.heat_to)).unwrap_or_default();
    let household = &assessment.catalog.household;
    let winter = house.and_then(|house| household.winter_of(house)).map(|air| air.say(words));
    let summer = house.map(|house| match household.summer_of(house) {
        SummerAir::NotCooled => say!(words, "next-paper-not-cooled"),
        air => air.say(words),
    });
    let humidifier = house.map(|house| match house.humidified_to {
        Some(_) => words.text("room-humidifier-runs"),
        None => words.text("room-humidifier-none"),
    });
    vec![
        (say!(words, "next-room-place"), place),
        (say!(words, "next-paper-house"), heated),
        (say!(words, "room-winter"), winter.unwrap_or_default()),
        (say!(words, "room-humidifier"), humidifier.unwrap_or_default().into_owned()),
        (say!(words, "room-summer"), summer.unwrap_or_default()),
        (say!(words, "next-paper-air"), air.unwrap_or_default()),
    ]
}
