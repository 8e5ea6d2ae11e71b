//! A typical year outdoors, day by day, with how it differs from year to year.

use super::places::MonthOutdoors;
use super::psychrometrics::vapor_pressure;
use super::year::between_months;
use super::{Air, Weather};
use crate::measure::Temperature;

/// What part of the scatter of single months is left in the mean of two whose weather goes together by
/// 0.3: √((1 + 0.3)/2). Boards follow a spell of weeks, not the day. Assumption.
const SPELL_OF_MONTH: f64 = 0.8;
/// Scatter from year to year of a season's vapor pressure where no station says it, as a fraction: a
/// season's dew point differs by about 1.2 °C, which is 8%. Assumption.
const USUAL_SD: f64 = 0.08;

/// A day outdoors.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OutdoorDay {
    /// Mean temperature.
    pub temperature: Temperature,
    /// Mean vapor pressure, Pa.
    pub vapor_pressure: f64,
    /// By how much the mean vapor pressure of two months about the day differs from year to year, standard deviation in Pa.
    pub vapor_pressure_sd: f64,
}

/// The 365 days of a typical year outdoors, from January 1.
#[derive(Debug, Clone, PartialEq)]
pub struct OutdoorYear {
    /// The days.
    pub days: Vec<OutdoorDay>,
}

impl OutdoorYear {
    /// From the months of a climate, whose vapor pressure goes in as it is.
    pub fn of_months(months: &[MonthOutdoors; 12]) -> Self {
        let sd = |month: &MonthOutdoors| {
            month.vapor_pressure_sd.map_or(USUAL_SD * month.vapor_pressure, |sd| SPELL_OF_MONTH * sd)
        };
        let days = between_months(|month, next, part| {
            let mix = |a: f64, b: f64| a + (b - a) * part;
            let (a, b) = (&months[month], &months[next]);
            OutdoorDay {
                temperature: Temperature::celsius(mix(
                    a.temperature.to_celsius(),
                    b.temperature.to_celsius(),
                )),
                vapor_pressure: mix(a.vapor_pressure, b.vapor_pressure),
                vapor_pressure_sd: mix(sd(a), sd(b)),
            }
        });
        Self { days }
    }

    /// From months of air.
    pub fn of_air(months: &[Air; 12]) -> Self {
        Self::of_months(&months.map(|air| MonthOutdoors {
            temperature: air.temperature,
            vapor_pressure: vapor_pressure(air.temperature, air.humidity),
            daily_range: None,
            temperature_sd: None,
            vapor_pressure_sd: None,
        }))
    }

    /// From the hours of a weather file.
    pub fn of_weather(weather: &Weather) -> Self {
        #[expect(clippy::cast_precision_loss, reason = "24 hours")]
        let mean = |day: &[Air], value: fn(&Air) -> f64| {
            day.iter().map(value).sum::<f64>() / day.len().max(1) as f64
        };
        let of_day = |day: &[Air]| {
            let pressure = mean(day, |hour| vapor_pressure(hour.temperature, hour.humidity));
            OutdoorDay {
                temperature: Temperature::celsius(mean(day, |hour| hour.temperature.to_celsius())),
                vapor_pressure: pressure,
                vapor_pressure_sd: USUAL_SD * pressure,
            }
        };
        Self { days: weather.hours().chunks(24).map(of_day).collect() }
    }
}
