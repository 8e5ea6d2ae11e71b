//! The towns, sorted by their folded name.

use std::ops::Range;
use std::sync::OnceLock;

use super::coordinates::Coordinates;
use super::format::{AssetError, Damaged, Lines, Sections, Table, open};
use crate::named::fold;

/// Towns and the regions they lie in.
#[derive(Debug)]
pub(super) struct Towns {
    names: Lines,
    /// Code, name, and other names it goes by.
    countries: Vec<Vec<String>>,
    regions: Vec<Region>,
    /// What each region and its country are called, folded; worked out when first asked for.
    called: OnceLock<Vec<Called>>,
    region: Vec<u16>,
    latitude: Vec<i16>,
    longitude: Vec<i16>,
    population: Vec<u16>,
}

/// A state, province or the like, with its country.
#[derive(Debug)]
struct Region {
    /// Empty if the towns of a country have no region.
    name: String,
    /// Its short form, such as `MN`; empty if there is none.
    code: String,
    /// The number of its country.
    country: usize,
}

/// What a region and its country are called, folded.
#[derive(Debug)]
struct Called {
    code: String,
    /// The region's name and code, the country's code and all its names.
    all: Vec<String>,
}

/// How well what was said of a town's whereabouts must fit, the closest fit first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Fit {
    /// It is a state's or province's short form.
    Code,
    /// It is the name of a region, or a country's code or name.
    Whole,
    /// A name or code starts so.
    Start,
}

impl Called {
    fn of(region: &Region, countries: &[Vec<String>]) -> Self {
        let names = countries[region.country].iter().chain([&region.name, &region.code]);
        Self { code: fold(&region.code), all: names.map(|name| fold(name)).collect() }
    }

    /// Whether `said`, folded, may stand for the region or its country.
    fn fits(&self, said: &str, fit: Fit) -> bool {
        match fit {
            Fit::Code => self.code == said,
            Fit::Whole => self.all.iter().any(|name| name == said),
            Fit::Start => self.all.iter().any(|name| name.starts_with(said)),
        }
    }
}

impl Towns {
    /// Unpacks the table.
    pub fn open(file: &[u8]) -> Result<Self, AssetError> {
        open(file, Table::Towns, Self::read)
    }

    fn read(sections: &mut Sections<'_>) -> Result<Self, Damaged> {
        let names = sections.lines()?;
        let countries: Vec<Vec<String>> =
            sections.lines()?.iter().map(|line| line.split('\t').map(str::to_owned).collect()).collect();
        if countries.iter().any(|country| country.len() < 2) {
            return Err(Damaged);
        }
        let mut regions = Vec::new();
        for line in sections.lines()?.iter() {
            regions.push(region(line, &countries).ok_or(Damaged)?);
        }
        let region = sections.places_of(regions.len())?;
        let latitude = sections.latitudes()?;
        let longitude = sections.longitudes()?;
        let population = sections.pairs()?;
        let count = names.len();
        let has_all = [region.len(), latitude.len(), longitude.len(), population.len()] == [count; 4];
        if !has_all || population.iter().max().is_some_and(|most| *most > LARGEST_POPULATION) {
            return Err(Damaged);
        }
        let called = OnceLock::new();
        Ok(Self { names, countries, regions, called, region, latitude, longitude, population })
    }

    /// How many there are.
    pub const fn len(&self) -> usize {
        self.names.len()
    }

    /// The name of the town of this number, from 0.
    pub fn name(&self, town: usize) -> &str {
        self.names.get(town)
    }

    fn region(&self, town: usize) -> &Region {
        &self.regions[usize::from(self.region[town])]
    }

    /// A town's state or province: the short form if it has one, else the name; empty if there is none.
    pub fn region_name(&self, town: usize) -> &str {
        let region = self.region(town);
        if region.code.is_empty() { &region.name } else { &region.code }
    }

    /// The code and the name of a town's country.
    pub fn country(&self, town: usize) -> (&str, &str) {
        let country = &self.countries[self.region(town).country];
        (&country[0], &country[1])
    }

    /// Where a town is, in hundredths of a degree north and east.
    pub fn hundredths(&self, town: usize) -> (i16, i16) {
        (self.latitude[town], self.longitude[town])
    }

    /// Where a town is.
    pub fn coordinates(&self, town: usize) -> Coordinates {
        let (latitude, longitude) = self.hundredths(town);
        Coordinates::from_hundredths(latitude, longitude)
    }

    /// How many people live there, to three digits; 0 if the table does not say.
    pub fn population(&self, town: usize) -> u32 {
        let stored = u32::from(self.population[town]);
        stored % 1_000 * 10_u32.pow(stored / 1_000)
    }

    /// The towns whose folded name is `folded`, and those whose name goes on after it.
    pub fn starting_with(&self, folded: &str) -> (Range<usize>, Range<usize>) {
        let bound = |before: &dyn Fn(&str) -> bool| {
            let (mut low, mut high) = (0, self.len());
            while low < high {
                let middle = usize::midpoint(low, high);
                if before(&fold(self.name(middle))) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            low
        };
        let start = bound(&|name| name < folded);
        let same = bound(&|name| name <= folded);
        let end = bound(&|name| name <= folded || name.starts_with(folded));
        (start..same, same..end)
    }

    /// Which regions fit everything that was said of the town's whereabouts; the index is the region's.
    fn fitting(&self, said: &[String], fit: Fit) -> Vec<bool> {
        let called = self
            .called
            .get_or_init(|| self.regions.iter().map(|region| Called::of(region, &self.countries)).collect());
        called.iter().map(|called| said.iter().all(|said| called.fits(said, fit))).collect()
    }

    /// A test of towns for lying where `said` says.
    pub fn lies_in(&self, said: &[String], fit: Fit) -> impl Fn(usize) -> bool {
        let regions = if said.is_empty() { Vec::new() } else { self.fitting(said, fit) };
        move |town| regions.is_empty() || regions[usize::from(self.region[town])]
    }

    /// The town nearest to a point.
    pub fn nearest(&self, point: Coordinates) -> Option<usize> {
        // The squared distance on a map that is true around the point: as good as the globe's for the
        // nearest, and quickly worked out.
        let parallel = point.latitude().to_radians().cos();
        let rough = |town: usize| {
            let (latitude, longitude) = self.hundredths(town);
            let north = f64::from(latitude) / 100.0 - point.latitude();
            let east = (f64::from(longitude) / 100.0 - point.longitude()).abs();
            let east = east.min(360.0 - east) * parallel;
            north * north + east * east
        };
        (0..self.len())
            .map(|town| (rough(town), town))
            .min_by(|a, b| a.0.total_cmp(&b.0))
            .map(|(_, town)| town)
    }
}

/// The largest population that there can be: 999 million, in the table's form.
const LARGEST_POPULATION: u16 = 6_999;

/// Reads a line of the table's regions; `None` if it is none, or of no country.
fn region(line: &str, countries: &[Vec<String>]) -> Option<Region> {
    let mut parts = line.split('\t');
    let (code, name, short) = (parts.next()?, parts.next()?, parts.next()?);
    // The countries are sorted by their codes.
    let country =
        countries.binary_search_by(|country| country.first().map(String::as_str).cmp(&Some(code))).ok()?;
    Some(Region { name: name.to_owned(), code: short.to_owned(), country })
}
