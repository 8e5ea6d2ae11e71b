//! A year of indoor air, by hand or from the climate outside.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::places::Site;
use super::{Air, DAYS, MONTH_DAYS, Weather};
use crate::measure::{Humidity, Moisture, Span, Temperature, finite};
use crate::named::{find, named};
use crate::wood::Kind;

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
        /// The [`Station`], by its id. Empty while nobody has said where the house is: then it is taken to be in Chicago.
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

/// The station whose climate stands in until somebody says where a house is, by its id.
pub const PRESUMED_STATION: &str = "chicago-il";

impl IndoorAir {
    /// Whether it is known where the house stands, or what its air is.
    pub fn is_placed(&self, stations: &[Station]) -> bool {
        match self {
            Self::FromClimate { station, .. } => find(stations, station).is_some(),
            Self::Monthly(_) | Self::FromPlace { .. } | Self::FromWeather { .. } => true,
        }
    }

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
        Self::FromClimate { station: String::new(), house: HouseModel::default() }
    }
}

/// A year of indoor air: 365 days, from January 1, repeating.
#[derive(Debug, Clone, PartialEq)]
pub struct IndoorYear {
    /// The days as expected.
    pub days: Vec<Air>,
    /// Where each day's humidity lies nine times in ten.
    pub range: Vec<Span<Humidity>>,
}

impl IndoorYear {
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

impl HouseModel {
    /// How warm the rooms are when it is `outside` outdoors: that, held between the set points.
    pub fn room_temperature(&self, outside: Temperature) -> Temperature {
        outside.max(self.heat_to).min(self.cool_to.max(self.heat_to))
    }
}

/// Days from months: the monthly mean stands at mid-month, straight lines between, December
/// running on into January.
pub fn daily(months: &[Air; 12]) -> Vec<Air> {
    between_months(|month, next, part| {
        let mix = |a: f64, b: f64| a + (b - a) * part;
        let (a, b) = (&months[month], &months[next]);
        Air {
            temperature: Temperature::celsius(mix(a.temperature.to_celsius(), b.temperature.to_celsius())),
            humidity: Humidity::fraction(mix(a.humidity.to_fraction(), b.humidity.to_fraction())),
        }
    })
}

/// For each day of the year what `mixed` makes of the months whose middles it lies between, and of how
/// far it is from the first to the second, 0 to 1.
#[expect(clippy::cast_precision_loss, reason = "day numbers up to 365")]
pub(super) fn between_months<T>(mixed: impl Fn(usize, usize, f64) -> T) -> Vec<T> {
    let mut middles = [0.0; 12];
    let mut start = 0.0;
    for (middle, length) in middles.iter_mut().zip(MONTH_DAYS.map(f64::from)) {
        *middle = start + length / 2.0;
        start += length;
    }
    let of_day = |day: usize| {
        let at = day as f64 + 0.5;
        let next = middles.iter().position(|&middle| middle > at).unwrap_or(0);
        let last = (next + 11) % 12;
        let year = DAYS as f64;
        let gap = (middles[next] - middles[last]).rem_euclid(year);
        mixed(last, next, (at - middles[last]).rem_euclid(year) / gap)
    };
    (0..DAYS).map(of_day).collect()
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
        assert!(daily(&months).iter().all(|d| (d.humidity.to_pct() - 40.0).abs() < 1e-9));
        months[6] = air(24.0, 60.0);
        let days = daily(&months);
        let mid_july = days[196]; // noon of July 16
        assert!((mid_july.humidity.to_pct() - 60.0).abs() < 1e-9);
        assert!((days[0].humidity.to_pct() - 40.0).abs() < 1e-9);
    }

    #[test]
    fn the_house_is_as_warm_as_it_is_outside_between_its_set_points() {
        let house = HouseModel::default();
        let inside = |outside: f64| house.room_temperature(Temperature::celsius(outside)).to_celsius();
        assert_eq!([inside(-5.0), inside(22.0), inside(31.0)], [20.0, 22.0, 25.0]);
    }
}
