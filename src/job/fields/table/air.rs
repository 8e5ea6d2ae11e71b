//! Fields of the room's air through the year.

use super::{COLDEST, HOTTEST, fields, figure, optional};
use crate::job::fields::Kind;
use crate::measure::{Humidity, Length};

fields! {
    /// Where the room's year comes from: a climate, a weather file, or twelve months by hand.
    AIR_SOURCE = "air-source", "air", Job, Kind::Choice;
    /// Whose weather the house stands in.
    PLACE = "place", "air.FromClimate|FromPlace.station|site", Job, Kind::Catalog;
    /// How high a place lies: the climate's stations may lie much lower or higher.
    ELEVATION = "elevation", "air.FromPlace.site.elevation_m", Job,
        optional!(site, elevation, RoomLength, Length::m(-500.0), Length::m(6000.0), LeaveOut);
    /// The hours of a weather file.
    WEATHER_FILE = "weather-file", "air.FromWeather.weather", Job, Kind::File;
    /// Heat setpoint.
    HEAT_SETPOINT = "heat-setpoint", "air.FromClimate|FromPlace|FromWeather.house.heat_to", Job,
        figure!(house, heat_to, Temperature, COLDEST, HOTTEST, Nearest);
    /// AC setpoint.
    AC_SETPOINT = "ac-setpoint", "air.FromClimate|FromPlace|FromWeather.house.cool_to", Job,
        figure!(house, cool_to, Temperature, COLDEST, HOTTEST, Nearest);
    /// What sets the humidity indoors.
    HUMIDITY_BY = "humidity-by", "air.FromClimate|FromPlace|FromWeather.house.class", Job, Kind::Choice;
    /// Water that people add to the air.
    MOISTURE_LOAD = "moisture-load", "air.FromClimate|FromPlace|FromWeather.house.moisture_load", Job,
        figure!(house, moisture_load, MoistureLoad, 0.0, 20.0, Nearest);
    /// Humidity that a dehumidifier keeps.
    DEHUMIDIFIER = "dehumidifier", "air.FromClimate|FromPlace|FromWeather.house.dehumidified_to", Job,
        optional!(house, dehumidified_to, Humidity, Humidity::ZERO, Humidity::pct(100.0), Nearest);
    /// Humidity that a humidifier keeps.
    HUMIDIFIER = "humidifier", "air.FromClimate|FromPlace|FromWeather.house.humidified_to", Job,
        optional!(house, humidified_to, Humidity, Humidity::ZERO, Humidity::pct(100.0), Nearest);
    /// Temperature of a month.
    MONTH_TEMPERATURE = "month-temperature", "air.Monthly[].temperature", Month,
        figure!(month, temperature, Temperature, COLDEST, HOTTEST, Nearest);
    /// Humidity of a month.
    MONTH_HUMIDITY = "month-humidity", "air.Monthly[].humidity", Month,
        figure!(month, humidity, Humidity, Humidity::ZERO, Humidity::pct(100.0), Nearest);
    /// A logger's days.
    LOGGER = "logger", "logged", Job, Kind::File;
}
