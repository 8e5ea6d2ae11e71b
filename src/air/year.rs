//! A year of indoor air, by hand or from the climate outside.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::places::{MonthOutdoors, PlaceClimate, Site};
use super::psychrometrics::{pressure_of_load, relative_humidity, saturation_pressure, vapor_pressure};
use super::{Air, DAYS, LoggedAir, MONTH_DAYS, Weather};
use crate::measure::{Humidity, Moisture, Temperature, finite};
use crate::named::{find, named};
use crate::wood::{Kind, equilibrium_humidity};

/// Scatter from year to year of a season's outdoor vapour pressure, as a fraction: a season's dew
/// point differs by about 1.2 °C, which is 8 %. Assumption.
const OUTDOOR_SD: f64 = 0.08;

/// What part of the scatter of single months is left in a season's mean: that of three months whose
/// neighbors go together by 0.3, √(3 + 4·0.3 + 2·0.3²)/3. Boards follow the season, not the month.
/// Assumption.
const SEASON_OF_MONTH: f64 = 0.7;

/// How well the house's moisture load is known, g/m³. Assumption.
const LOAD_SD: f64 = 0.6;

/// How well humidities by hand or from one logged year stand for other years, points of relative
/// humidity. Assumption.
const HAND_SD: f64 = 3.0;

/// A place with its typical year outdoors.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Station {
    /// By what jobs refer to it; it never changes.
    #[serde(default)]
    pub id: String,
    /// Place.
    pub name: String,
    /// Names it has or had, by which files refer to it too.
    #[serde(default)]
    pub aliases: Vec<String>,
    /// How far to trust the figures.
    pub kind: Kind,
    /// Where the figures are from.
    pub source: String,
    /// Twelve months from January: dry-bulb temperature in °C, relative humidity in per cent.
    pub months: [(f64, f64); 12],
}

named! { Station }

/// The humidity classes of EN 15026 (annex C, from memory): indoor humidity as a straight line of the
/// day's outdoor temperature between −10 and 20 °C.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum HumidityClass {
    /// Dwellings and offices: 30 to 60 %.
    Normal,
    /// Dwellings with many people: 40 to 70 %.
    High,
}

impl HumidityClass {
    /// Indoor relative humidity when it is `outside` outdoors.
    pub fn humidity(self, outside: Temperature) -> Humidity {
        let least = match self {
            Self::Normal => 30.0,
            Self::High => 40.0,
        };
        Humidity::pct(least + (outside.to_celsius() + 10.0).clamp(0.0, 30.0))
    }
}

/// How the house turns outdoor air into indoor air.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct HouseModel {
    /// The rooms are heated to this.
    pub heat_to: Temperature,
    /// The rooms are cooled to this.
    pub cool_to: Temperature,
    /// Humidity by a class of EN 15026 in place of the moisture load.
    pub class: Option<HumidityClass>,
    /// Water that living in the house adds to its air in winter, grams in a cubic metre.
    #[serde(deserialize_with = "finite")]
    pub moisture_load: f64,
    /// Cooling or a dehumidifier keeps the humidity below this, if there is either.
    pub dehumidified_to: Option<Humidity>,
    /// A humidifier keeps the humidity above this, if there is one.
    pub humidified_to: Option<Humidity>,
}

impl Default for HouseModel {
    /// A lived-in, heated and cooled house: assumptions, for the user to put right.
    fn default() -> Self {
        Self {
            heat_to: Temperature::celsius(20.0),
            cool_to: Temperature::celsius(25.0),
            class: None,
            moisture_load: 3.0,
            dehumidified_to: Some(Humidity::pct(60.0)),
            humidified_to: None,
        }
    }
}

/// What the user says of the room's air.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub enum IndoorAir {
    /// Twelve indoor months from January, entered by hand.
    Monthly([Air; 12]),
    /// Worked out from a place's climate and the house.
    FromClimate {
        /// The [`Station`], by its id.
        station: String,
        /// What the house does to the air.
        house: HouseModel,
    },
    /// Worked out from the climate of any place and the house.
    FromPlace {
        /// The place.
        site: Site,
        /// What the house does to the air.
        house: HouseModel,
    },
    /// Worked out from an hourly weather file and the house.
    FromWeather {
        /// The year outdoors.
        weather: Weather,
        /// What the house does to the air.
        house: HouseModel,
    },
}

impl IndoorAir {
    /// The place whose climate it is, if it is named so.
    pub const fn site(&self) -> Option<&Site> {
        match self {
            Self::FromPlace { site, .. } => Some(site),
            _ => None,
        }
    }

    /// The same, to change.
    pub const fn site_mut(&mut self) -> Option<&mut Site> {
        match self {
            Self::FromPlace { site, .. } => Some(site),
            _ => None,
        }
    }

    /// The house, where one is reckoned with.
    pub const fn house(&self) -> Option<&HouseModel> {
        match self {
            Self::Monthly(_) => None,
            Self::FromClimate { house, .. }
            | Self::FromPlace { house, .. }
            | Self::FromWeather { house, .. } => Some(house),
        }
    }

    /// The house to be changed.
    pub const fn house_mut(&mut self) -> Option<&mut HouseModel> {
        match self {
            Self::Monthly(_) => None,
            Self::FromClimate { house, .. }
            | Self::FromPlace { house, .. }
            | Self::FromWeather { house, .. } => Some(house),
        }
    }
}

impl Default for IndoorAir {
    fn default() -> Self {
        Self::FromClimate { station: "chicago-il".to_owned(), house: HouseModel::default() }
    }
}

/// A year of indoor air: 365 days, from 1 January, repeating.
#[derive(Debug, Clone, PartialEq)]
pub struct IndoorYear {
    /// The days as expected.
    pub days: Vec<Air>,
    /// The same days in a year that is damper by one standard deviation.
    pub wet_year: Vec<Air>,
}

impl IndoorYear {
    /// Works out the year from what the user said, with days that a logger saw in their place.
    /// `None` if it names a station that is not in `stations`, or the program's own table of stations
    /// is damaged.
    pub fn new(air: &IndoorAir, logged: Option<&LoggedAir>, stations: &[Station]) -> Option<Self> {
        let mut year = match air {
            IndoorAir::Monthly(months) => {
                let days = daily(months);
                let wet_year = days.iter().map(|day| damped(*day, HAND_SD)).collect();
                Self { days, wet_year }
            }
            IndoorAir::FromClimate { station, house } => {
                let station = find(stations, station)?;
                let indoors = |wet_year: f64| {
                    daily(&station.months.map(|(t, rh)| {
                        house.indoors(
                            Air { temperature: Temperature::celsius(t), humidity: Humidity::pct(rh) },
                            wet_year,
                        )
                    }))
                };
                Self { days: indoors(0.0), wet_year: indoors(1.0) }
            }
            IndoorAir::FromPlace { site, house } => Self::of_climate(&site.climate().ok()?, house),
            IndoorAir::FromWeather { weather, house } => {
                let indoors = |wet_year: f64| {
                    let hours = weather.hours().chunks(24);
                    hours.map(|day| day_mean(day.iter().map(|hour| house.indoors(*hour, wet_year)))).collect()
                };
                Self { days: indoors(0.0), wet_year: indoors(1.0) }
            }
        };
        if let Some(logged) = logged {
            year.take_over(logged);
        }
        Some(year)
    }

    /// The year in a house in this climate. The vapor pressure outdoors is used as it is.
    pub fn of_climate(climate: &PlaceClimate, house: &HouseModel) -> Self {
        let indoors = |wet_year| daily(&climate.months.map(|month| house.indoors_in_month(&month, wet_year)));
        Self { days: indoors(0.0), wet_year: indoors(1.0) }
    }

    /// Puts a logger's days in place of the model's, and shifts the model's other days by what the
    /// two differ in the mean, vapour pressure and temperature.
    fn take_over(&mut self, logged: &LoggedAir) {
        let seen = logged.by_day_of_year();
        let pairs = || seen.iter().zip(&self.days).filter_map(|(seen, model)| Some(((*seen)?, *model)));
        let count = pairs().count();
        if count == 0 {
            return;
        }
        #[expect(clippy::cast_precision_loss, reason = "at most 365 days")]
        let mean = |value: fn(Air) -> f64| {
            pairs().map(|(seen, model)| value(seen) - value(model)).sum::<f64>() / count as f64
        };
        let warmer = mean(|air| air.temperature.to_celsius());
        let moister = mean(|air| vapor_pressure(air.temperature, air.humidity));
        let shifted = |air: &Air| {
            let temperature = Temperature::celsius(air.temperature.to_celsius() + warmer);
            let pressure = (vapor_pressure(air.temperature, air.humidity) + moister).max(0.0);
            Air { temperature, humidity: relative_humidity(temperature, pressure) }
        };
        let replace = |days: &mut Vec<Air>, wet_year: f64| {
            for (day, seen) in days.iter_mut().zip(&seen) {
                *day = seen.map_or_else(|| shifted(day), |seen| damped(seen, wet_year));
            }
        };
        replace(&mut self.days, 0.0);
        replace(&mut self.wet_year, HAND_SD);
    }

    /// The part of the year's swing of equilibrium moisture that is left if the air is held between 40
    /// and 50 % humidity, 0 to 1.
    pub fn humidity_control_share(&self) -> f64 {
        let swing = |days: &mut dyn Iterator<Item = Air>| {
            let (low, high) = days.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), air| {
                let moisture = air.emc().to_pct();
                (low.min(moisture), high.max(moisture))
            });
            high - low
        };
        let held = |air: &Air| {
            let humidity = air.humidity.max(Humidity::pct(40.0)).min(Humidity::pct(50.0));
            Air { humidity, ..*air }
        };
        let free = swing(&mut self.days.iter().copied());
        let kept = swing(&mut self.days.iter().map(held));
        if free > 0.0 { (kept / free).min(1.0) } else { 1.0 }
    }

    /// The equilibrium moistures of the days.
    pub fn emc(&self) -> Vec<Moisture> {
        self.days.iter().map(Air::emc).collect()
    }
}

/// Air whose humidity is higher by `sd` points of relative humidity.
fn damped(air: Air, sd: f64) -> Air {
    Air { humidity: Humidity::pct((air.humidity.to_pct() + sd).clamp(0.0, 100.0)), ..air }
}

/// The mean of a day's hours as wood feels it: equilibrium moisture is convex in humidity, so the
/// day's humidity is the one that gives the mean of the hours' equilibrium moistures.
fn day_mean(hours: impl Iterator<Item = Air>) -> Air {
    let (mut temperature, mut moisture, mut count) = (0.0, 0.0, 0.0);
    for hour in hours {
        temperature += hour.temperature.to_celsius();
        moisture += hour.emc().to_pct();
        count += 1.0;
    }
    let temperature = Temperature::celsius(temperature / count);
    Air { temperature, humidity: equilibrium_humidity(temperature, Moisture::pct(moisture / count)) }
}

/// The part of the moisture load that stays in the house: all of it up to 0 °C outdoors, none from
/// 20 °C on, when windows stand open (EN ISO 13788 annex A, from memory).
fn closed_windows(outside: Temperature) -> f64 {
    (1.0 - outside.to_celsius() / 20.0).clamp(0.0, 1.0)
}

impl HouseModel {
    /// Indoor air when it is `outside` outdoors, in a year that is damper by `wet_year` standard
    /// deviations.
    ///
    /// The temperature outdoors held between the two set points; the vapour pressure outdoors plus
    /// what living adds, less and less of it as windows are opened, or the class's humidity; held below the cooling's limit and above the
    /// humidifier's.
    pub fn indoors(&self, outside: Air, wet_year: f64) -> Air {
        let outdoors = vapor_pressure(outside.temperature, outside.humidity);
        self.indoors_by_vapor(outside.temperature, outdoors, OUTDOOR_SD * outdoors, wet_year)
    }

    /// Indoor air in a month of a place's climate, likewise. The month's vapor pressure goes in as it
    /// is; its scatter from year to year is the stations' where they have it.
    fn indoors_in_month(&self, month: &MonthOutdoors, wet_year: f64) -> Air {
        let outdoors = month.vapor_pressure;
        let sd = month.vapor_pressure_sd.map_or(OUTDOOR_SD * outdoors, |sd| SEASON_OF_MONTH * sd);
        self.indoors_by_vapor(month.temperature, outdoors, sd, wet_year)
    }

    /// Indoor air by the temperature outdoors and the vapor pressure there, in pascals, which differs
    /// from year to year by `sd`.
    fn indoors_by_vapor(&self, outside: Temperature, outdoors: f64, sd: f64, wet_year: f64) -> Air {
        let inside = outside.max(self.heat_to).min(self.cool_to.max(self.heat_to));
        let saturated = saturation_pressure(inside);
        let load = pressure_of_load(1.0, inside);
        let mut pressure = match self.class {
            Some(class) => class.humidity(outside).to_fraction() * saturated,
            None => outdoors + self.moisture_load * closed_windows(outside) * load,
        };
        pressure = (pressure + wet_year * sd.hypot(LOAD_SD * load)).max(0.0);
        if let Some(limit) = self.dehumidified_to {
            pressure = pressure.min(limit.to_fraction() * saturated);
        }
        if let Some(limit) = self.humidified_to {
            pressure = pressure.max(limit.to_fraction() * saturated);
        }
        Air { temperature: inside, humidity: relative_humidity(inside, pressure) }
    }
}

/// Days from months: the monthly mean stands at mid-month, straight lines between, December
/// running on into January.
#[expect(clippy::cast_precision_loss, reason = "day numbers up to 365")]
fn daily(months: &[Air; 12]) -> Vec<Air> {
    let mut middles = [0.0; 12];
    let mut start = 0.0;
    for (middle, length) in middles.iter_mut().zip(MONTH_DAYS.map(f64::from)) {
        *middle = start + length / 2.0;
        start += length;
    }
    let day_air = |day: usize| {
        let at = day as f64 + 0.5;
        let next = middles.iter().position(|&middle| middle > at).unwrap_or(0);
        let last = (next + 11) % 12;
        let year = DAYS as f64;
        let gap = (middles[next] - middles[last]).rem_euclid(year);
        let part = (at - middles[last]).rem_euclid(year) / gap;
        let mix = |a: f64, b: f64| a + (b - a) * part;
        let (a, b) = (&months[last], &months[next]);
        Air {
            temperature: Temperature::celsius(mix(a.temperature.to_celsius(), b.temperature.to_celsius())),
            humidity: Humidity::fraction(mix(a.humidity.to_fraction(), b.humidity.to_fraction())),
        }
    };
    (0..DAYS).map(day_air).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn air(t: f64, rh: f64) -> Air {
        Air { temperature: Temperature::celsius(t), humidity: Humidity::pct(rh) }
    }

    #[test]
    fn a_steady_year_is_steady_and_mid_months_are_met() {
        let mut months = [air(20.0, 40.0); 12];
        let year = IndoorYear::new(&IndoorAir::Monthly(months), None, &[]).unwrap();
        assert!(year.days.iter().all(|d| (d.humidity.to_pct() - 40.0).abs() < 1e-9));
        months[6] = air(24.0, 60.0);
        let year = IndoorYear::new(&IndoorAir::Monthly(months), None, &[]).unwrap();
        let mid_july = year.days[196]; // noon of 16 July
        assert!((mid_july.humidity.to_pct() - 60.0).abs() < 1e-9);
        assert!((year.days[0].humidity.to_pct() - 40.0).abs() < 1e-9);
    }

    #[test]
    fn the_house_heats_cools_and_limits() {
        let house = HouseModel::default();
        let winter = house.indoors(air(-5.0, 70.0), 0.0);
        assert_eq!(winter.temperature, house.heat_to);
        assert!(winter.humidity.to_pct() < 40.0);
        let summer = house.indoors(air(30.0, 80.0), 0.0);
        assert_eq!(summer.temperature, house.cool_to);
        assert!((summer.humidity.to_pct() - 60.0).abs() < 1e-9);
        let humidified = HouseModel { humidified_to: Some(Humidity::pct(40.0)), ..house };
        let winter = humidified.indoors(air(-5.0, 70.0), 0.0);
        assert!((winter.humidity.to_pct() - 40.0).abs() < 1e-9);
    }

    #[test]
    fn an_unknown_station_gives_no_year() {
        assert_eq!(IndoorYear::new(&IndoorAir::default(), None, &[]), None);
    }
}
