//! Finding places by what was typed.

use std::cmp::Reverse;
use std::sync::{LazyLock, OnceLock};

use super::coordinates::Coordinates;
use super::format::AssetError;
use super::place::{FindError, Matches, Place, PlaceKind};
use super::spelling::Spellings;
use super::towns::{Fit, Towns};
use super::typed::{Typed, typed};
use super::zips::Zips;
use crate::measure::Length;
use crate::named::spellings;

/// How much a town at home counts above one abroad of as many people. `Birmingham` is first the one in
/// Alabama, but `Paris` is first the one in France.
const HOME: u64 = 20;
/// Choices that an error offers.
const OFFERED: usize = 5;
/// A point east of Greenwich that is this far from any US town may lack its minus sign.
const FAR_FROM_HOME: Length = Length::m(200_000.0);

/// Towns and ZIP codes, to be found by name and number.
#[derive(Debug)]
pub struct Gazetteer {
    towns: Towns,
    zips: Zips,
    spellings: OnceLock<Spellings>,
}

/// Numbers of towns: those of the very name, and those whose names go on.
struct Named {
    exact: Vec<usize>,
    longer: Vec<usize>,
}

impl Named {
    const fn len(&self) -> usize {
        self.exact.len() + self.longer.len()
    }
}

impl Gazetteer {
    /// Unpacks the tables of towns and ZIP codes.
    ///
    /// # Errors
    /// If one of them is damaged or another file.
    pub fn open(towns: &[u8], zips: &[u8]) -> Result<Self, AssetError> {
        let towns = Towns::open(towns)?;
        let zips = Zips::open(zips, &towns)?;
        Ok(Self { towns, zips, spellings: OnceLock::new() })
    }

    /// The tables that come with the program, unpacked when first asked for.
    ///
    /// # Errors
    /// If the program's own tables are damaged.
    pub fn built_in() -> Result<&'static Self, AssetError> {
        static BUILT_IN: LazyLock<Result<Gazetteer, AssetError>> = LazyLock::new(|| {
            Gazetteer::open(
                include_bytes!("../../../assets/climate/towns.bin"),
                include_bytes!("../../../assets/climate/zips.bin"),
            )
        });
        BUILT_IN.as_ref().map_err(|error| *error)
    }

    /// Finds the places that `typed` may mean, the likeliest first, at most `limit` of them.
    ///
    /// It may be a ZIP code or its start, coordinates, or a name or its start; a name may be followed by
    /// its state, region or country, with or without a comma. Capitals, accents, periods and
    /// apostrophes do not matter, nor does `St.` for `Saint`, `Ft.` for `Fort`, `Mt.` for `Mount`.
    ///
    /// Towns of the very name come before those whose names go on; then the more people, the sooner, a
    /// person in the US counting for twenty elsewhere. A point that lies far from the US but in it if
    /// west is meant for east is found both ways, as typed first.
    ///
    /// # Errors
    /// If there is none; the error holds the nearest good choices.
    pub fn find(&self, typed_text: &str, limit: usize) -> Result<Matches, FindError> {
        match typed(typed_text).ok_or(FindError::Nothing)? {
            Typed::Zip { digits, numbers } => {
                let rows = self.zips.within(numbers.clone());
                if rows.is_empty() {
                    let nearest = self.zips.nearest(numbers.start, OFFERED);
                    let nearest = nearest.into_iter().map(|row| self.zip(row)).collect();
                    return Err(FindError::NoSuchZip { digits, nearest });
                }
                let namesakes = usize::from(digits.len() == 5);
                let total = rows.len();
                Ok(Matches { places: rows.take(limit).map(|row| self.zip(row)).collect(), namesakes, total })
            }
            Typed::Point(point) => self.points(point.map_err(FindError::OffTheGlobe)?, limit),
            Typed::Name { name, whereabouts } => self.named(&name, &whereabouts, limit),
        }
    }

    fn named(&self, name: &str, whereabouts: &[String], limit: usize) -> Result<Matches, FindError> {
        let mut found = self.towns_named(name, whereabouts);
        if found.len() == 0 && whereabouts.is_empty() {
            found = self.without_comma(name).unwrap_or(found);
        }
        if found.len() > 0 {
            return Ok(self.matches(&found, limit));
        }
        if !whereabouts.is_empty() {
            let elsewhere = self.towns_named(name, &[]);
            if !elsewhere.exact.is_empty() {
                let elsewhere = Named { longer: Vec::new(), ..elsewhere };
                let Matches { places, total, .. } = self.matches(&elsewhere, OFFERED);
                return Err(FindError::NotThere { elsewhere: places, total });
            }
        }
        Err(FindError::NoSuchTown { close: self.close_spellings(name, whereabouts) })
    }

    /// Towns by name in the region or country said, which is taken at its closest fit: `CA` is
    /// California first, and Canada only if there is no such town in California.
    fn towns_named(&self, name: &str, whereabouts: &[String]) -> Named {
        let mut found = Named { exact: Vec::new(), longer: Vec::new() };
        for fit in [Fit::Code, Fit::Whole, Fit::Start] {
            let lies_there = self.towns.lies_in(whereabouts, fit);
            for name in spellings(name) {
                let (exact, longer) = self.towns.starting_with(&name);
                found.exact.extend(exact.filter(|town| lies_there(*town)));
                found.longer.extend(longer.filter(|town| lies_there(*town)));
            }
            if found.len() > 0 || whereabouts.is_empty() {
                break;
            }
        }
        found
    }

    /// Towns by a name that is followed by its state without a comma.
    fn without_comma(&self, text: &str) -> Option<Named> {
        let cuts = text.match_indices(' ').map(|(at, _)| at).rev().take(3);
        let parted = cuts.map(|at| (&text[..at], [text[at + 1..].to_owned()]));
        let mut found = parted.map(|(name, whereabouts)| self.towns_named(name, &whereabouts));
        found.find(|found| !found.exact.is_empty())
    }

    fn matches(&self, found: &Named, limit: usize) -> Matches {
        let mut towns = self.likeliest(&found.exact, limit);
        towns.extend(self.likeliest(&found.longer, limit - towns.len()));
        Matches {
            places: towns.into_iter().map(|town| self.town(town)).collect(),
            namesakes: found.exact.len(),
            total: found.len(),
        }
    }

    /// At most `limit` of `towns`, the likeliest first.
    fn likeliest(&self, towns: &[usize], limit: usize) -> Vec<usize> {
        let mut ranked: Vec<_> = towns.iter().map(|&town| (Reverse(self.weight(town)), town)).collect();
        if limit < ranked.len() {
            ranked.select_nth_unstable(limit);
            ranked.truncate(limit);
        }
        ranked.sort_unstable();
        ranked.into_iter().map(|(_, town)| town).collect()
    }

    /// How likely a town is meant, against others of its name.
    fn weight(&self, town: usize) -> u64 {
        let at_home = self.towns.country(town).0 == "US";
        // Every town counts something, so that even one without a figure is more likely at home.
        u64::from(self.towns.population(town).max(1)) * if at_home { HOME } else { 1 }
    }

    fn close_spellings(&self, name: &str, whereabouts: &[String]) -> Vec<Place> {
        let spellings = self.spellings.get_or_init(|| Spellings::of(&self.towns));
        let lies_there = self.towns.lies_in(whereabouts, Fit::Start);
        let mut close = spellings.close(name, &self.towns);
        close
            .sort_by_key(|&(distance, town)| (!lies_there(town), distance, Reverse(self.weight(town)), town));
        close.into_iter().take(OFFERED).map(|(_, town)| self.town(town)).collect()
    }

    fn points(&self, point: Coordinates, limit: usize) -> Result<Matches, FindError> {
        let here = self.point(point)?;
        let is_near = |place: &Place| match place.kind {
            PlaceKind::Point { to_town } => place.country == "US" && to_town < FAR_FROM_HOME,
            PlaceKind::Town | PlaceKind::Zip(_) => false,
        };
        let west = point.mirrored_west().map(|west| self.point(west)).transpose()?;
        let west = west.filter(|west| is_near(west) && !is_near(&here));
        let mut places: Vec<Place> = std::iter::once(here).chain(west).collect();
        let total = places.len();
        places.truncate(limit);
        Ok(Matches { places, namesakes: total, total })
    }

    fn point(&self, point: Coordinates) -> Result<Place, FindError> {
        let town = self.towns.nearest(point).ok_or(FindError::Nothing)?;
        let to_town = point.distance(self.towns.coordinates(town));
        Ok(Place { kind: PlaceKind::Point { to_town }, coordinates: point, ..self.town(town) })
    }

    fn zip(&self, row: usize) -> Place {
        let town = self.town(self.zips.town(row));
        Place { kind: PlaceKind::Zip(self.zips.code(row)), coordinates: self.zips.coordinates(row), ..town }
    }

    fn town(&self, town: usize) -> Place {
        let (country, country_name) = self.towns.country(town);
        let population = self.towns.population(town);
        Place {
            kind: PlaceKind::Town,
            town: self.towns.name(town).to_owned(),
            region: self.towns.region_name(town).to_owned(),
            country: country.to_owned(),
            country_name: country_name.to_owned(),
            coordinates: self.towns.coordinates(town),
            population: (population > 0).then_some(population),
        }
    }

    /// The names of all towns in the table's order. For checking that order.
    pub fn town_names(&self) -> impl Iterator<Item = &str> {
        (0..self.towns.len()).map(|town| self.towns.name(town))
    }
}
