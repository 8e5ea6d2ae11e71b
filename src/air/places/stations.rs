//! The weather stations and their monthly means.

use std::ops::RangeInclusive;
use std::sync::LazyLock;

use super::coordinates::Coordinates;
use super::format::{AssetError, Damaged, Lines, Sections, Table, Varints, open};
use crate::measure::{Length, Temperature};

/// A month outdoors: means over many years.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MonthOutdoors {
    /// Mean temperature.
    pub temperature: Temperature,
    /// Mean pressure of the water vapor in the air, in pascals.
    pub vapor_pressure: f64,
    /// The mean of daily high less daily low, in °C; `None` if no station near has it.
    pub daily_range: Option<f64>,
    /// By how much the month's mean temperature differs from year to year, standard deviation in °C;
    /// `None` if no station near has it.
    pub temperature_sd: Option<f64>,
    /// Likewise the month's mean vapor pressure, in pascals.
    pub vapor_pressure_sd: Option<f64>,
}

/// Where a station's means are from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StationSource {
    /// The monthly means it reported, 2003 to 2021.
    Climat,
    /// A typical year's hours, brought in line with the reports of the stations around it.
    AdjustedTypicalYear,
}

/// A weather station.
#[derive(Debug, Clone, PartialEq)]
pub struct ClimateStation {
    /// Its name, as the weather service writes it.
    pub name: String,
    /// Its number: WMO's for reported means, USAF's for typical years.
    pub number: u32,
    /// State or province; empty if the table has none.
    pub region: String,
    /// ISO code of two letters.
    pub country: String,
    /// Where it stands, to 0.01 degree.
    pub coordinates: Coordinates,
    /// Height above the sea.
    pub elevation: Length,
    /// The smallest number of years behind any month's mean.
    pub years: u32,
    /// Where its means are from.
    pub source: StationSource,
    /// Its own months from January.
    pub months: [MonthOutdoors; 12],
}

/// All stations.
#[derive(Debug)]
pub struct Stations {
    names: Lines,
    /// Country and region.
    regions: Vec<(String, String)>,
    rows: Vec<Row>,
}

/// Twelve months of something that may be unknown.
type Months = [Option<i16>; 12];

/// A station's row of the table.
#[derive(Debug)]
pub(super) struct Row {
    region: u16,
    number: u32,
    is_climat: bool,
    years: u8,
    pub coordinates: Coordinates,
    /// In m.
    pub elevation: i16,
    /// In 0.1 °C.
    pub temperature: Months,
    /// In Pa; above zero.
    pub vapor: Months,
    /// In 0.1 °C.
    pub daily_range: Months,
    /// In 0.1 °C.
    pub temperature_sd: Months,
    /// In Pa.
    pub vapor_sd: Months,
}

impl Row {
    /// A month from January, 0 to 11, as the table has it.
    fn month(&self, at: usize) -> MonthOutdoors {
        let pascals = |months: Months| months[at].map(f64::from);
        MonthOutdoors {
            // There are no gaps in the first two.
            temperature: Temperature::celsius(tenths(self.temperature[at]).unwrap_or_default()),
            vapor_pressure: pascals(self.vapor).unwrap_or_default(),
            daily_range: tenths(self.daily_range[at]),
            temperature_sd: tenths(self.temperature_sd[at]),
            vapor_pressure_sd: pascals(self.vapor_sd),
        }
    }
}

/// Degrees of a tenth of a degree each.
pub(super) fn tenths(value: Option<i16>) -> Option<f64> {
    value.map(|value| f64::from(value) / 10.0)
}

impl Stations {
    /// Unpacks the table.
    ///
    /// # Errors
    /// If it is damaged or another file.
    pub fn open(file: &[u8]) -> Result<Self, AssetError> {
        open(file, Table::Stations, Self::read)
    }

    /// The table that comes with the program, unpacked when first asked for.
    ///
    /// # Errors
    /// If the program's own table is damaged.
    pub fn built_in() -> Result<&'static Self, AssetError> {
        static BUILT_IN: LazyLock<Result<Stations, AssetError>> =
            LazyLock::new(|| Stations::open(include_bytes!("../../../assets/climate/stations.bin")));
        BUILT_IN.as_ref().map_err(|error| *error)
    }

    /// All stations, in the table's order.
    pub fn iter(&self) -> impl Iterator<Item = ClimateStation> {
        (0..self.rows.len()).map(|station| self.station(station))
    }

    /// Rows by number.
    pub(super) fn rows(&self) -> &[Row] {
        &self.rows
    }

    /// The station of a row that there is.
    pub(super) fn station(&self, number: usize) -> ClimateStation {
        let row = &self.rows[number];
        let (country, region) = &self.regions[usize::from(row.region)];
        ClimateStation {
            name: self.names.get(number).to_owned(),
            number: row.number,
            region: region.clone(),
            country: country.clone(),
            coordinates: row.coordinates,
            elevation: Length::m(f64::from(row.elevation)),
            years: u32::from(row.years),
            source: if row.is_climat { StationSource::Climat } else { StationSource::AdjustedTypicalYear },
            months: std::array::from_fn(|month| row.month(month)),
        }
    }

    fn read(sections: &mut Sections<'_>) -> Result<Self, Damaged> {
        let names = sections.lines()?;
        let regions: Vec<(String, String)> = sections
            .lines()?
            .iter()
            .map(|line| {
                line.split_once('\t').map(|(country, region)| (country.to_owned(), region.to_owned()))
            })
            .collect::<Option<_>>()
            .ok_or(Damaged)?;
        let region = sections.places_of(regions.len())?;
        let number = sections.triples()?;
        let is_climat = sections.bytes()?;
        let years = sections.bytes()?;
        let latitude = sections.latitudes()?;
        let longitude = sections.longitudes()?;
        let elevation = sections.signed(-500..=9_000)?;
        let count = names.len();
        let counts = [
            region.len(),
            number.len(),
            is_climat.len(),
            years.len(),
            latitude.len(),
            longitude.len(),
            elevation.len(),
        ];
        if counts.iter().any(|other| *other != count) {
            return Err(Damaged);
        }
        let section = sections.bytes()?;
        let mut numbers = Varints::new(&section);
        let temperature = block(count, || months(&mut numbers, ALL, -1_000..=700))?;
        let vapor = block(count, || months(&mut numbers, ALL, 1..=10_000))?;
        let daily_range = block(count, || gappy(&mut numbers, 0..=500))?;
        let temperature_sd = block(count, || gappy(&mut numbers, 0..=500))?;
        let vapor_sd = block(count, || gappy(&mut numbers, 0..=10_000))?;
        numbers.end()?;
        let row = |at: usize| Row {
            region: region[at],
            number: number[at],
            is_climat: is_climat[at] == 1,
            years: years[at],
            coordinates: Coordinates::from_hundredths(latitude[at], longitude[at]),
            elevation: elevation[at],
            temperature: temperature[at],
            vapor: vapor[at],
            daily_range: daily_range[at],
            temperature_sd: temperature_sd[at],
            vapor_sd: vapor_sd[at],
        };
        Ok(Self { names, regions, rows: (0..count).map(row).collect() })
    }
}

/// The months of all stations, each read by `read`.
fn block(count: usize, mut read: impl FnMut() -> Result<Months, Damaged>) -> Result<Vec<Months>, Damaged> {
    (0..count).map(|_station| read()).collect()
}

/// The months of a block without gaps.
const ALL: u32 = 0xfff;

/// Twelve months that may have gaps.
fn gappy(numbers: &mut Varints<'_>, range: RangeInclusive<i32>) -> Result<Months, Damaged> {
    let there = numbers.unsigned()?;
    if there > ALL { Err(Damaged) } else { months(numbers, there, range) }
}

/// The months whose bit is set in `there`, each stored less the one before it.
fn months(numbers: &mut Varints<'_>, there: u32, range: RangeInclusive<i32>) -> Result<Months, Damaged> {
    let mut months = [None; 12];
    let mut last = 0_i32;
    for (month, value) in months.iter_mut().enumerate() {
        if there >> month & 1 == 1 {
            last = last.checked_add(numbers.signed()?).filter(|next| range.contains(next)).ok_or(Damaged)?;
            *value = i16::try_from(last).ok();
        }
    }
    Ok(months)
}
