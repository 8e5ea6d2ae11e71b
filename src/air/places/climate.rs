//! A place's months outdoors, from the stations around it.
//!
//! The four nearest stations are weighed by 1/(*d* + 5 km)², brought to the place's height: temperature
//! falls by 5 °C a km, vapor pressure by a factor e every 2.7 km. Vapor pressure is averaged by its
//! logarithm. Taken from all other stations this way, the means of a US station come out within 7% of
//! its vapor pressure and 0.9 °C (root mean square; `assets/climate/README.md`).

use super::coordinates::Coordinates;
use super::stations::{ClimateStation, MonthOutdoors, Row, Stations, tenths};
use crate::measure::{Length, Temperature};

/// How many stations are used.
const USED: usize = 4;
/// No station is taken for nearer than this: within it, one is as good as another.
const NEAR: f64 = 5_000.0;
/// How much colder it is a meter higher, °C. In summer in the US 0.003 to 0.0035.
const LAPSE: f64 = 0.005;
/// Vapor pressure falls by a factor e over this height, in m.
const VAPOR_HEIGHT: f64 = 2_700.0;
/// Nobody builds lower or higher; heights are held to this, in m.
const HEIGHTS: [f64; 2] = [-500.0, 9_000.0];

/// Farther than this from every station the climate is a guess.
const FAR: Length = Length::m(300_000.0);
/// Farther than this above or below the stations, what heights do to the climate is uncertain by as much
/// as everything else.
const FAR_ABOVE: Length = Length::m(600.0);
/// If the stations' own heights differ by more, the place's height matters.
const HEIGHTS_DIFFER: Length = Length::m(300.0);

/// A station that a climate was worked out from.
#[derive(Debug, Clone, PartialEq)]
pub struct UsedStation {
    /// The station.
    pub station: ClimateStation,
    /// The way to it.
    pub distance: Length,
    /// How much higher than the station the place is; `None` if nobody said how high it is.
    pub above: Option<Length>,
    /// What part it has in the result, 0 to 1.
    pub weight: f64,
}

/// What makes a place's climate less certain than others.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Caution {
    /// The nearest station is over 300 km away.
    FarFromStations {
        /// How far.
        nearest: Length,
    },
    /// The place is over 600 m above or below the stations.
    FarAboveStations {
        /// How much higher it is than they are in the mean; negative if it is lower.
        above: Length,
    },
    /// Nobody said how high the place is, and the stations' heights differ by over 300 m.
    HeightUnknown {
        /// The lowest station's height.
        lowest: Length,
        /// The highest station's height.
        highest: Length,
    },
    /// No station near says how much the temperature changes in a day, for some month.
    NoDailyRange,
    /// No station near says how much vapor pressure or temperature differ from year to year, for some month.
    NoYearToYear,
}

/// A place's climate.
#[derive(Debug, Clone, PartialEq)]
pub struct PlaceClimate {
    /// Its months from January.
    pub months: [MonthOutdoors; 12],
    /// The stations it is from, the nearest first.
    pub stations: Vec<UsedStation>,
    /// What to be careful about.
    pub cautions: Vec<Caution>,
}

/// A station to be used, with what it counts.
struct Weighed<'a> {
    number: usize,
    row: &'a Row,
    distance: Length,
    weight: f64,
    /// How much higher the place is, in m.
    above: f64,
}

impl Stations {
    /// The climate of a point. Without an elevation it is taken to lie as high as the stations in the
    /// mean.
    ///
    /// `None` only for a table without stations.
    pub fn climate(&self, point: Coordinates, elevation: Option<Length>) -> Option<PlaceClimate> {
        self.climate_by(point, elevation, |_| true)
    }

    /// The climate of a point by those stations only that `may_use` allows. To leave one out and see how
    /// well the others stand for it.
    pub fn climate_by(
        &self,
        point: Coordinates,
        elevation: Option<Length>,
        may_use: impl Fn(&ClimateStation) -> bool,
    ) -> Option<PlaceClimate> {
        let used = self.weighed(point, elevation, may_use);
        let months = months(&used)?;
        let cautions = cautions(&used, elevation, &months);
        let stations = used
            .iter()
            .map(|used| UsedStation {
                station: self.station(used.number),
                distance: used.distance,
                above: elevation.map(|_| Length::m(used.above)),
                weight: used.weight,
            })
            .collect();
        Some(PlaceClimate { months, stations, cautions })
    }

    fn weighed(
        &self,
        point: Coordinates,
        elevation: Option<Length>,
        may_use: impl Fn(&ClimateStation) -> bool,
    ) -> Vec<Weighed<'_>> {
        let by_distance = |row: &Row| point.distance(row.coordinates).to_m();
        let mut near: Vec<(f64, usize)> =
            self.rows().iter().enumerate().map(|(number, row)| (by_distance(row), number)).collect();
        near.sort_unstable_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)));
        let allowed = near.into_iter().filter(|(_, number)| may_use(&self.station(*number)));
        let chosen: Vec<(f64, usize)> = allowed.take(USED).collect();
        let weight = |distance: f64| (distance + NEAR).powi(-2);
        let total: f64 = chosen.iter().map(|(distance, _)| weight(*distance)).sum();
        let weighed = chosen.into_iter().map(|(distance, number)| {
            let row = &self.rows()[number];
            let height = |height: Length| height.to_m().clamp(HEIGHTS[0], HEIGHTS[1]);
            Weighed {
                number,
                row,
                distance: Length::m(distance),
                weight: weight(distance) / total,
                above: elevation.map_or(0.0, |at| height(at) - f64::from(row.elevation)),
            }
        });
        weighed.collect()
    }
}

/// The weighted mean of what the stations that have it say; `None` if none has.
fn mean(used: &[Weighed<'_>], value: impl Fn(&Weighed<'_>) -> Option<f64>) -> Option<f64> {
    let (sum, weight) = used.iter().fold((0.0, 0.0), |(sum, weight), station| match value(station) {
        Some(value) => (sum + station.weight * value, weight + station.weight),
        None => (sum, weight),
    });
    (weight > 0.0).then(|| sum / weight)
}

fn months(used: &[Weighed<'_>]) -> Option<[MonthOutdoors; 12]> {
    let month = |at: usize| {
        let temperature =
            mean(used, |station| Some(tenths(station.row.temperature[at])? - LAPSE * station.above))?;
        let ln_vapor = mean(used, |station| {
            Some(f64::from(station.row.vapor[at]?).ln() - station.above / VAPOR_HEIGHT)
        })?;
        let vapor_pressure = ln_vapor.exp();
        // As a share of the pressure it differs least from place to place.
        let vapor_share = mean(used, |station| {
            Some(f64::from(station.row.vapor_sd[at]?) / f64::from(station.row.vapor[at]?))
        });
        Some(MonthOutdoors {
            temperature: Temperature::celsius(temperature),
            vapor_pressure,
            daily_range: mean(used, |station| tenths(station.row.daily_range[at])),
            temperature_sd: mean(used, |station| tenths(station.row.temperature_sd[at])),
            vapor_pressure_sd: vapor_share.map(|share| share * vapor_pressure),
        })
    };
    let months: Vec<MonthOutdoors> = (0..12).map(month).collect::<Option<_>>()?;
    months.try_into().ok()
}

fn cautions(used: &[Weighed<'_>], elevation: Option<Length>, months: &[MonthOutdoors; 12]) -> Vec<Caution> {
    let mut cautions = Vec::new();
    if let Some(nearest) = used.first().map(|station| station.distance).filter(|nearest| *nearest > FAR) {
        cautions.push(Caution::FarFromStations { nearest });
    }
    let above = Length::m(used.iter().map(|station| station.weight * station.above).sum());
    if above.to_m().abs() > FAR_ABOVE.to_m() {
        cautions.push(Caution::FarAboveStations { above });
    }
    let heights = used.iter().map(|station| station.row.elevation);
    if let (None, Some(lowest), Some(highest)) = (elevation, heights.clone().min(), heights.max()) {
        let [lowest, highest] = [lowest, highest].map(|height| Length::m(f64::from(height)));
        if highest - lowest > HEIGHTS_DIFFER {
            cautions.push(Caution::HeightUnknown { lowest, highest });
        }
    }
    if months.iter().any(|month| month.daily_range.is_none()) {
        cautions.push(Caution::NoDailyRange);
    }
    if months.iter().any(|month| month.temperature_sd.is_none() || month.vapor_pressure_sd.is_none()) {
        cautions.push(Caution::NoYearToYear);
    }
    cautions
}
