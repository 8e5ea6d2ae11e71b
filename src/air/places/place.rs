//! What a search finds, and what it says if it finds nothing.

use super::coordinates::{Coordinates, OutOfRange};
use super::format::AssetError;
use super::site::Site;
use crate::measure::Length;

/// A place that was found.
#[derive(Debug, Clone, PartialEq)]
pub struct Place {
    /// What it was found by.
    pub kind: PlaceKind,
    /// The town; for a point the nearest one.
    pub town: String,
    /// Its state as two letters, in Canada likewise; elsewhere the name of its region. Empty if it has none.
    pub region: String,
    /// Its country by the ISO code of two letters.
    pub country: String,
    /// Its country by name.
    pub country_name: String,
    /// Where it is.
    pub coordinates: Coordinates,
    /// How many people live in the town, to three digits, if that is known.
    pub population: Option<u32>,
}

/// What a place was found by.
#[derive(Debug, Clone, PartialEq)]
pub enum PlaceKind {
    /// The town's name.
    Town,
    /// This ZIP code.
    Zip(String),
    /// Coordinates.
    Point {
        /// The way to the town named.
        to_town: Length,
    },
}

impl Place {
    /// What the place is called in full: `Flagstaff, AZ`, `Minneapolis, MN 55401`, `Munich, Bavaria,
    /// Germany`, or coordinates. The same whenever the same place is found.
    pub fn label(&self) -> String {
        if matches!(self.kind, PlaceKind::Point { .. }) {
            return self.coordinates.to_string();
        }
        let mut label = self.town.clone();
        let country = if self.country == "US" { "" } else { self.country_name.as_str() };
        for part in [self.region.as_str(), country] {
            if !part.is_empty() {
                label.push_str(", ");
                label.push_str(part);
            }
        }
        if let PlaceKind::Zip(code) = &self.kind {
            label.push(' ');
            label.push_str(code);
        }
        label
    }

    /// What a job keeps of the place. The tables say nothing of heights: `elevation` is what the user
    /// says of it.
    pub fn site(&self, elevation: Option<Length>) -> Site {
        Site { name: self.label(), coordinates: self.coordinates, elevation }
    }
}

/// What was found, the likeliest first.
#[derive(Debug, Clone, PartialEq)]
pub struct Matches {
    /// The places, no more than were asked for.
    pub places: Vec<Place>,
    /// How many are named exactly as typed; they come first.
    pub namesakes: usize,
    /// How many there are in all.
    pub total: usize,
}

impl Matches {
    /// The place, if what was typed means just one: the only one of the name, or the only one at all.
    pub fn only(&self) -> Option<&Place> {
        let is_one = self.namesakes == 1 || self.total == 1;
        self.places.first().filter(|_place| is_one)
    }
}

/// Why nothing was found, with the nearest good choices.
#[derive(Debug, Clone, PartialEq)]
pub enum FindError {
    /// Nothing to find a place by was typed.
    Nothing,
    /// There is no such ZIP code.
    NoSuchZip {
        /// The digits typed.
        digits: String,
        /// ZIP codes that there are, the nearest by number first.
        nearest: Vec<Place>,
    },
    /// No town has that name or starts so.
    NoSuchTown {
        /// Towns spelled much like it, the closest and largest first; may be empty.
        close: Vec<Place>,
    },
    /// There are towns of that name, but none where it was said to be.
    NotThere {
        /// Those elsewhere, the likeliest first.
        elsewhere: Vec<Place>,
        /// How many there are in all.
        total: usize,
    },
    /// The coordinates are not on the globe.
    OffTheGlobe(OutOfRange),
    /// The tables cannot be used.
    Tables(AssetError),
}

impl From<AssetError> for FindError {
    fn from(error: AssetError) -> Self {
        Self::Tables(error)
    }
}
