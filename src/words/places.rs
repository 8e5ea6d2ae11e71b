//! Finding a place, and what its climate is worth.

use super::{Arg, Say, Words, say};
use crate::air::places::{Caution, FindError, Place, PlaceClimate};
use crate::measure::Length;

/// Stations that are named.
const NAMED: usize = 2;

impl Say for FindError {
    fn say(&self, words: &Words) -> String {
        match self {
            Self::Nothing => say!(words, "place-nothing-typed"),
            Self::NoSuchZip { digits, .. } => say!(words, "place-no-such-zip", digits = digits),
            Self::NoSuchTown { .. } | Self::NotThere { .. } => String::new(),
            Self::OffTheGlobe(_) => say!(words, "place-off-the-globe"),
            Self::Tables(_) => say!(words, "place-tables-damaged"),
        }
    }
}

/// Why nothing was found by `typed`, as the lead to the choices that go with it.
pub fn not_found(error: &FindError, typed: &str, words: &Words) -> String {
    match error {
        FindError::NoSuchTown { close } if close.is_empty() => {
            say!(words, "place-no-town-at-all", text = Arg::Name(typed))
        }
        FindError::NoSuchTown { .. } => say!(words, "place-no-such-town", text = Arg::Name(typed)),
        FindError::NotThere { total, .. } => say!(words, "place-elsewhere", total = *total),
        other => other.say(words),
    }
}

/// The nearest good choices where nothing was found.
pub fn choices(error: FindError) -> Vec<Place> {
    match error {
        FindError::NoSuchZip { nearest: places, .. }
        | FindError::NoSuchTown { close: places }
        | FindError::NotThere { elsewhere: places, .. } => places,
        FindError::Nothing | FindError::OffTheGlobe(_) | FindError::Tables(_) => Vec::new(),
    }
}

/// A place to choose: its name, and how many people live there, to tell namesakes apart.
pub fn choice(place: &Place, words: &Words) -> String {
    match place.population {
        Some(people) => {
            let label = place.label();
            say!(words, "place-population", place = &label, people = people)
        }
        None => place.label(),
    }
}

/// What stations the climate is from, and what it is worth.
pub fn provenance(climate: &PlaceClimate, words: &Words) -> Vec<String> {
    let mut lines = Vec::new();
    if let Some(nearest) = climate.stations.first() {
        let names = climate.stations.iter().take(NAMED).map(|used| used.station.name.as_str()).collect();
        lines.push(say!(
            words,
            "place-stations",
            stations = Arg::Names(names),
            distance = Arg::Far(nearest.distance)
        ));
    }
    lines.extend(climate.cautions.iter().filter_map(|caution| match *caution {
        Caution::FarFromStations { nearest } => Some(say!(words, "place-far", distance = Arg::Far(nearest))),
        Caution::FarAboveStations { above } if above < Length::ZERO => {
            Some(say!(words, "place-below", height = Arg::Run(-above)))
        }
        Caution::FarAboveStations { above } => Some(say!(words, "place-above", height = Arg::Run(above))),
        Caution::HeightUnknown { lowest, highest } => {
            let (lowest, highest) = (Arg::Run(lowest), Arg::Run(highest));
            Some(say!(words, "place-height-unknown", lowest = lowest, highest = highest))
        }
        // Nothing a person could do about it.
        Caution::NoDailyRange | Caution::NoYearToYear => None,
    }));
    lines
}
