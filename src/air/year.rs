//! A year of indoor air, by hand or from the climate outside.

use serde::{Deserialize, Serialize};

use super::DAYS;
use super::psychrometrics::{pressure_of_load, relative_humidity, saturation_pressure, vapour_pressure};
use crate::measure::{Humidity, Moisture, Temperature, finite};
use crate::wood::{Kind, emc};

/// Mean air of a month.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct MonthAir {
    /// Temperature.
    pub temperature: Temperature,
    /// Relative humidity; in files a fraction from 0 to 1.
    pub humidity: Humidity,
}

/// A place with its typical year outdoors.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Station {
    /// Place.
    pub name: String,
    /// How far to trust the figures.
    pub kind: Kind,
    /// Where the figures are from.
    pub source: String,
    /// Twelve months from January: dry-bulb temperature in °C, relative humidity in per cent.
    pub months: [(f64, f64); 12],
}

/// How the house turns outdoor air into indoor air.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct HouseModel {
    /// The rooms are heated to this.
    pub heat_to: Temperature,
    /// The rooms are cooled to this.
    pub cool_to: Temperature,
    /// Water that living in the house adds to its air, grams in a cubic metre.
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
            moisture_load: 3.0,
            dehumidified_to: Some(Humidity::pct(60.0)),
            humidified_to: None,
        }
    }
}

/// What the user says of the room's air.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub enum IndoorAir {
    /// Twelve indoor months from January, entered by hand.
    Monthly([MonthAir; 12]),
    /// Worked out from a place's climate and the house.
    FromClimate {
        /// Name of the [`Station`].
        station: String,
        /// What the house does to the air.
        house: HouseModel,
    },
}

impl Default for IndoorAir {
    fn default() -> Self {
        Self::FromClimate { station: "Chicago, IL".to_owned(), house: HouseModel::default() }
    }
}

/// Indoor air of one day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayAir {
    /// Mean temperature.
    pub temperature: Temperature,
    /// Mean relative humidity.
    pub humidity: Humidity,
}

impl DayAir {
    /// The moisture that boards would come to if this day lasted.
    pub fn emc(&self) -> Moisture {
        emc(self.temperature, self.humidity)
    }
}

/// A year of indoor air: 365 days, from 1 January, repeating.
#[derive(Debug, Clone, PartialEq)]
pub struct IndoorYear {
    /// The days.
    pub days: Vec<DayAir>,
}

impl IndoorYear {
    /// Works out the year from what the user said. `None` if it names a station that is not in
    /// `stations`.
    pub fn new(air: &IndoorAir, stations: &[Station]) -> Option<Self> {
        let months = match air {
            IndoorAir::Monthly(months) => *months,
            IndoorAir::FromClimate { station, house } => {
                let station = stations.iter().find(|known| known.name == *station)?;
                station.months.map(|(t, rh)| house.indoors(Temperature::celsius(t), Humidity::pct(rh)))
            }
        };
        Some(Self { days: daily(&months) })
    }
}

impl HouseModel {
    /// Indoor air when it is `outside` outdoors at humidity `rh`.
    ///
    /// The vapour pressure outdoors plus what living adds, held below the cooling's limit and
    /// above the humidifier's; the temperature outdoors held between the two set points.
    pub fn indoors(&self, outside: Temperature, rh: Humidity) -> MonthAir {
        let inside = outside.max(self.heat_to).min(self.cool_to.max(self.heat_to));
        let mut pressure = vapour_pressure(outside, rh) + pressure_of_load(self.moisture_load, inside);
        let saturated = saturation_pressure(inside);
        if let Some(limit) = self.dehumidified_to {
            pressure = pressure.min(limit.to_fraction() * saturated);
        }
        if let Some(limit) = self.humidified_to {
            pressure = pressure.max(limit.to_fraction() * saturated);
        }
        MonthAir { temperature: inside, humidity: relative_humidity(inside, pressure) }
    }
}

/// Days from months: the monthly mean stands at mid-month, straight lines between, December
/// running on into January.
#[expect(clippy::cast_precision_loss, reason = "day numbers up to 365")]
fn daily(months: &[MonthAir; 12]) -> Vec<DayAir> {
    const LENGTHS: [f64; 12] = [31.0, 28.0, 31.0, 30.0, 31.0, 30.0, 31.0, 31.0, 30.0, 31.0, 30.0, 31.0];
    let mut middles = [0.0; 12];
    let mut start = 0.0;
    for (middle, length) in middles.iter_mut().zip(LENGTHS) {
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
        DayAir {
            temperature: Temperature::celsius(mix(a.temperature.to_celsius(), b.temperature.to_celsius())),
            humidity: Humidity::fraction(mix(a.humidity.to_fraction(), b.humidity.to_fraction())),
        }
    };
    (0..DAYS).map(day_air).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn month(t: f64, rh: f64) -> MonthAir {
        MonthAir { temperature: Temperature::celsius(t), humidity: Humidity::pct(rh) }
    }

    #[test]
    fn a_steady_year_is_steady_and_mid_months_are_met() {
        let mut months = [month(20.0, 40.0); 12];
        let year = IndoorYear::new(&IndoorAir::Monthly(months), &[]).unwrap();
        assert!(year.days.iter().all(|d| (d.humidity.to_pct() - 40.0).abs() < 1e-9));
        months[6] = month(24.0, 60.0);
        let year = IndoorYear::new(&IndoorAir::Monthly(months), &[]).unwrap();
        let mid_july = year.days[196]; // noon of 16 July
        assert!((mid_july.humidity.to_pct() - 60.0).abs() < 1e-9);
        assert!((year.days[0].humidity.to_pct() - 40.0).abs() < 1e-9);
    }

    #[test]
    fn the_house_heats_cools_and_limits() {
        let house = HouseModel::default();
        let winter = house.indoors(Temperature::celsius(-5.0), Humidity::pct(70.0));
        assert_eq!(winter.temperature, house.heat_to);
        assert!(winter.humidity.to_pct() < 40.0);
        let summer = house.indoors(Temperature::celsius(30.0), Humidity::pct(80.0));
        assert_eq!(summer.temperature, house.cool_to);
        assert!((summer.humidity.to_pct() - 60.0).abs() < 1e-9);
        let humidified = HouseModel { humidified_to: Some(Humidity::pct(40.0)), ..house };
        let winter = humidified.indoors(Temperature::celsius(-5.0), Humidity::pct(70.0));
        assert!((winter.humidity.to_pct() - 40.0).abs() < 1e-9);
    }

    #[test]
    fn an_unknown_station_gives_no_year() {
        assert_eq!(IndoorYear::new(&IndoorAir::default(), &[]), None);
    }
}
