//! Readings, what follows from them, and the odds of the causes.

use serde_json::{Value, json};

use crate::air::{HouseModel, IndoorAir};
use crate::assess::{Assessment, MissingEntry, SectionState};
use crate::belief::Cause;
use crate::job::fields;
use crate::measure::{DayOrMonth, Humidity, Moisture, Money, Percent, Quantity};
use crate::named::name_of;
use crate::papers::photos::PinnedPhoto;
use crate::surface::{BoardSpec, Photo};
use crate::words::{Arg, Say as _, Words, answer, causes, say};

/// A factor of the odds beyond this is given as more than it.
const MOST: f64 = 1000.0;
/// A factor below this is no clue: readings scatter by as much.
const LEAST: f64 = 3.0;

/// Everything that was read in the room.
pub(super) fn readings(assessment: &Assessment, words: &Words) -> Value {
    let (job, figures) = (&*assessment.job, words.figures());
    let gaps = job.survey.gaps.iter().map(|gap| {
        let date = gap.date.unwrap_or(job.visited);
        let width = figures.length(gap.width);
        json!([gap.surface, words.joint(&gap.joint), width, gap.failed.say(words), figures.date(date)])
    });
    let moistures = job.survey.moistures.iter().filter_map(|reading| {
        Some(json!([
            reading.surface,
            reading.section,
            reading.board,
            figures.percent(reading.reading?.to_pct(), 1),
            figures.temperature(reading.wood),
            reading.setting.say(words),
            figures.date(reading.date.unwrap_or(job.visited)),
        ]))
    });
    // In the order of those rows; beside them, so that older templates find the rows as they were.
    let corrected = job.survey.moistures.iter().enumerate().filter_map(|(at, reading)| {
        Some(json!([(at + 1).to_string(), figures.percent(reading.corrected()?.to_pct(), 1)]))
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
        "corrected": corrected.collect::<Vec<_>>(),
        "rooms": rooms.collect::<Vec<_>>(),
        "room_lines": room_lines.collect::<Vec<_>>(),
        "sections": sections.collect::<Vec<_>>(),
        "offset": offset(assessment, words),
        "stamps": stamps(assessment, words),
        "photos": photos(assessment, words),
        "gap_photos": photos_of_gaps(assessment),
    })
}

/// By how much the meter is taken to be off, where any reading says.
fn offset(assessment: &Assessment, words: &Words) -> Option<String> {
    let read = assessment.job.survey.moistures.iter().any(|reading| reading.reading.is_some());
    let offset = assessment.belief.as_ref().filter(|_| read)?.meter_offset;
    let side = if offset.mean < Moisture::ZERO { "low" } else { "high" };
    let off = Moisture::pct(offset.mean.to_pct().abs());
    Some(say!(words, "paper-meter-offset", off = off, side = Arg::Id(side), doubt = offset.sd))
}

/// What the stamps on the boards allow against how wet they were, said once for all sections of which it is the same:
/// the sections, the sentence, and the chance that the boards were above each mark.
fn stamps(assessment: &Assessment, words: &Words) -> Vec<Value> {
    let marks = &assessment.catalog.marks;
    let mut told: Vec<(Vec<String>, String, Vec<[String; 3]>)> = Vec::new();
    for state in assessment.sections.iter().filter(|state| !state.over_marks.is_empty()) {
        let Some(against) = state.against_marks.filter(|_| is_explained(state)) else { continue };
        let sentence = causes::marks(against, marks, words);
        let chances: Vec<[String; 3]> = marks
            .iter()
            .zip(&state.over_marks)
            .map(|(mark, chance)| {
                let most = words.figures().percent(mark.most.to_pct(), 0);
                [mark.name.clone(), most, causes::chance_as_percent(*chance, words)]
            })
            .collect();
        let surface = &assessment.job.surfaces[state.surface];
        let name = say!(
            words,
            "paper-place",
            surface = &surface.name,
            section = &surface.sections[state.section].name
        );
        match told.iter_mut().find(|(_, said, same)| *said == sentence && *same == chances) {
            Some((names, ..)) => names.push(name),
            None => told.push((vec![name], sentence, chances)),
        }
    }
    told.into_iter()
        .map(
            |(names, sentence, chances)| json!({ "places": names, "sentence": sentence, "chances": chances }),
        )
        .collect()
}

/// Whether the gaps of a section can come of drying at all.
fn is_explained(state: &SectionState) -> bool {
    state.origin.is_some_and(|origin| !origin.beyond_drying)
}

/// The photos with their surfaces, each with its number on the map of its surface.
fn numbered(assessment: &Assessment) -> impl Iterator<Item = (usize, usize, &Photo)> {
    let surfaces = assessment.job.surfaces.iter().enumerate();
    surfaces.flat_map(|(surface, drawn)| {
        drawn.photos.iter().enumerate().map(move |(at, photo)| (surface, at + 1, photo))
    })
}

/// The photos by their number on the map: surface, number, what they show, file.
fn photos(assessment: &Assessment, words: &Words) -> Vec<Value> {
    let photo = |(surface, number, photo): (usize, usize, &Photo)| {
        json!([number, assessment.job.surfaces[surface].name, place(photo, words), photo.note, photo.file])
    };
    numbered(assessment).map(photo).collect()
}

/// Where a photo is pinned.
fn place(photo: &Photo, words: &Words) -> String {
    say!(words, "paper-photo-place", x = photo.at.0, y = photo.at.1)
}

/// The same with the readings that each shows, for what is printed of it.
pub(crate) fn pinned_photos(assessment: &Assessment, words: &Words) -> Vec<PinnedPhoto> {
    let job = &assessment.job;
    let pinned = |(surface, number, photo): (usize, usize, &Photo)| {
        let name = &job.surfaces[surface].name;
        let shown = assessment.photographed(surface, photo).into_iter().map(|at| &job.survey.gaps[at]);
        let readings = shown.map(|gap| {
            let date = gap.date.unwrap_or(job.visited);
            say!(words, "paper-photo-joint", joint = Arg::Joint(&gap.joint), gap = gap.width, date = date)
        });
        let told = json!({
            "number": number,
            "surface": name,
            "place": place(photo, words),
            "note": photo.note,
            "file": photo.file,
            "readings": readings.collect::<Vec<_>>(),
            "alt": say!(words, "paper-photo-alt", number = number, surface = name),
        });
        PinnedPhoto { file: photo.file.clone(), told }
    };
    numbered(assessment).map(pinned).collect()
}

/// Of each gap reading the numbers of the photos that show its joint.
fn photos_of_gaps(assessment: &Assessment) -> Vec<String> {
    let mut numbers = vec![Vec::new(); assessment.job.survey.gaps.len()];
    for (surface, number, photo) in numbered(assessment) {
        for reading in assessment.photographed(surface, photo) {
            numbers[reading].push(number.to_string());
        }
    }
    numbers.into_iter().map(|numbers| numbers.join(", ")).collect()
}

/// What was entered of the house, the room and the boards: all that a recheck needs besides the readings.
pub(super) fn inputs(assessment: &Assessment, words: &Words) -> Value {
    let (job, figures) = (&*assessment.job, words.figures());
    let date = |date: DayOrMonth| {
        if date.is_day_known() { figures.date(date.date()) } else { figures.month(date.date()) }
    };
    let unknown = || say!(words, "paper-unknown");
    let text = |text: &str| if text.trim().is_empty() { unknown() } else { text.trim().to_owned() };
    let logger = job.logged.as_ref().map(|logged| {
        let days = u32::try_from(logged.days.len()).unwrap_or(u32::MAX);
        (&fields::LOGGER, say!(words, "paper-input-days", days = days))
    });
    let photos: usize = job.surfaces.iter().map(|surface| surface.photos.len()).sum();
    let photos = u32::try_from(photos).ok().filter(|photos| *photos > 0);
    let lines = [
        (&fields::YEAR_BUILT, job.built.map_or_else(unknown, |year| year.to_string())),
        (&fields::INSTALLED, job.installed.map_or_else(unknown, date)),
        (&fields::VISITED, figures.date(job.visited)),
        (&fields::AIR_SOURCE, air(assessment, words)),
        (&fields::BOARDS_DELIVERY, text(&job.received.delivery)),
        (&fields::GRADE_STAMP, text(&job.received.stamp)),
        (&fields::STORAGE, text(&job.received.storage)),
        (&fields::METER, text(&job.survey.meter)),
    ];
    let house = job.air.house().map_or_else(Vec::new, |house| self::house(house, words));
    let photos = photos.map(|photos| (&fields::PHOTOS, say!(words, "paper-input-photos", photos = photos)));
    let claimed = assessment.chosen().and_then(|option| option.price.as_ref()).map(|price| price.supplier);
    let claimed = claimed.filter(|claimed| *claimed > Money::ZERO).map(|claimed| figures.money(claimed));
    let claimed = claimed.map(|claimed| (words.text("paper-claimed").into_owned(), claimed));
    let lines = lines.into_iter().chain(logger).chain(photos);
    let lines = lines.map(|(field, value)| (field.label(words), value)).chain(house).chain(claimed);
    let boards = job.surfaces.iter().flat_map(|surface| {
        surface.sections.iter().map(move |section| {
            json!([surface.name, section.name, boards(assessment, &section.board, words)])
        })
    });
    json!({
        "lines": lines.map(|(label, value)| json!([label, value])).collect::<Vec<_>>(),
        "boards": boards.collect::<Vec<_>>(),
    })
}

/// What is taken of the house where its air follows from the climate.
fn house(house: &HouseModel, words: &Words) -> Vec<(String, String)> {
    let figures = words.figures();
    let kept = |humidity: Option<Humidity>| match humidity {
        Some(humidity) => figures.percent(humidity.to_pct(), 0),
        None => words.text("paper-none").into_owned(),
    };
    let load = Quantity::MoistureLoad(house.moisture_load);
    let mut lines = vec![
        (fields::HEAT_SETPOINT.label(words), figures.temperature(house.heat_to)),
        (fields::AC_SETPOINT.label(words), figures.temperature(house.cool_to)),
    ];
    if house.class.is_none() {
        lines.push((fields::MOISTURE_LOAD.label(words), figures.quantity(load)));
    }
    lines.push((fields::DEHUMIDIFIER.label(words), kept(house.dehumidified_to)));
    lines.push((fields::HUMIDIFIER.label(words), kept(house.humidified_to)));
    lines
}

/// Where the room's air is from.
fn air(assessment: &Assessment, words: &Words) -> String {
    match &assessment.job.air {
        IndoorAir::Monthly(_) => say!(words, "choice-air-months"),
        IndoorAir::FromWeather { .. } => fields::WEATHER_FILE.label(words),
        IndoorAir::FromClimate { station, .. } => match assessment.presumed_place() {
            Some(place) => say!(words, "paper-input-presumed", place = Arg::Name(place)),
            None => name_of(&assessment.catalog.stations, station).to_owned(),
        },
        IndoorAir::FromPlace { site, .. } => site.name.clone(),
    }
}

/// A section's boards, in one line.
fn boards(assessment: &Assessment, board: &BoardSpec, words: &Words) -> String {
    let (catalog, figures) = (&assessment.catalog, words.figures());
    let paint = catalog.finishes.iter().find(|coating| coating.finish == board.finish);
    say!(
        words,
        "paper-input-boards",
        species = Arg::Called(name_of(&catalog.species, &board.species)),
        face = board.face_width,
        thickness = board.thickness,
        profile = &board.profile.say(words),
        nailing = &board.fixing.say(words),
        backing = &board.behind.say(words),
        paint = Arg::Called(paint.map_or("", |coating| coating.name.as_str())),
        grain = &figures.number(board.ring_angle.to_degrees(), 0)
    )
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

/// A factor of the odds to the two figures that it is good for.
fn rounded(factor: f64) -> Arg<'static> {
    match factor {
        100.0.. => Arg::Number((factor / 10.0).round() * 10.0, 0),
        10.0.. => Arg::Number(factor.round(), 0),
        _ => Arg::Number(factor, 1),
    }
}

/// The odds of the causes and what argues for which; `None` if no gap is known.
pub(super) fn odds(assessment: &Assessment, words: &Words) -> Option<Value> {
    let diagnosis = assessment.causes.as_ref()?;
    let odds = Cause::ALL.into_iter().map(|cause| {
        let chance = diagnosis.of(cause);
        json!([cause.say(words), causes::chance_as_percent(chance, words)])
    });
    let before = Cause::ALL.into_iter();
    let before = before.map(|cause| causes::chance_as_percent(assessment.catalog.causes.of(cause), words));
    let most = || Arg::Number(MOST, 0);
    let tells = |side: &(Cause, f64)| side.1 >= LEAST;
    let argues_for =
        |side: Option<(Cause, f64)>| match side.filter(tells).map(|(cause, by)| (cause.say(words), by)) {
            None => say!(words, "paper-none"),
            Some((cause, MOST..)) => {
                say!(words, "paper-clue-weight-over", cause = &cause, factor = most())
            }
            Some((cause, by)) => say!(words, "paper-clue-weight", cause = &cause, factor = rounded(by)),
        };
    let argues_against = |side: Option<(Cause, f64)>| match side
        .filter(tells)
        .map(|(cause, by)| (cause.say(words), by))
    {
        None => say!(words, "paper-none"),
        Some((cause, MOST..)) => {
            say!(words, "paper-clue-weight-against-over", cause = &cause, factor = most())
        }
        Some((cause, by)) => say!(words, "paper-clue-weight-against", cause = &cause, factor = rounded(by)),
    };
    let clues = diagnosis.clues.iter().map(|clue| {
        let evidence = clue.evidence.say(words);
        json!([evidence, argues_for(clue.argues_for), argues_against(clue.argues_against)])
    });
    // What makes a price firmer settles no cause.
    let next = assessment
        .settling_reading()
        .map(|reading| answer::missing(assessment, MissingEntry::ForTheCause(reading), words));
    Some(json!({
        "odds": odds.collect::<Vec<_>>(),
        "before": before.collect::<Vec<_>>(),
        "clues": clues.collect::<Vec<_>>(),
        "settling": next,
    }))
}
