//! Air: its water, and the year of it that the boards live in.
//!
//! [`psychrometrics`] holds the relations. [`IndoorAir`] is what the user says of the room and
//! [`IndoorYear`] turns it into 365 days of indoor temperature and humidity; [`read_weather`] reads
//! the hours outdoors from a weather file, [`read_logger`] the room's own readings. [`places`] knows the
//! climate of every town.

mod file_text;
mod household;
mod logger;
mod outdoors;
pub mod places;
pub mod psychrometrics;
mod weather;
mod year;

pub use file_text::{Tally, TextError};
pub use household::{Household, HumidifierFigures, SummerAir, SummerFigures, WinterAir, WinterFigures};
pub use logger::{
    DateOrder, LoggedAir, LoggedDay, LoggerDoubt, LoggerError, LoggerFormat, LoggerGuess, LoggerRead,
    LoggerRemark, Room, guess_logger, read_logger,
};
pub use outdoors::{OutdoorDay, OutdoorYear};
pub use weather::{
    Gap, HOURS, Weather, WeatherError, WeatherRead, WeatherRemark, date_of_hour, read_weather,
};
pub use year::{HouseModel, HumidityClass, IndoorAir, IndoorYear, PRESUMED_STATION, Station, daily};

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::measure::{Humidity, Moisture, Temperature};
use crate::wood::emc;

/// Days in the model's year.
pub const DAYS: usize = 365;

/// Days of its months from January.
const MONTH_DAYS: [u8; 12] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/// Air: the mean of an hour, a day or a month.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Air {
    /// Temperature.
    pub temperature: Temperature,
    /// Relative humidity; in files a fraction from 0 to 1.
    pub humidity: Humidity,
}

impl Air {
    /// The moisture that boards would come to if this air lasted.
    pub fn emc(&self) -> Moisture {
        emc(self.temperature, self.humidity)
    }
}
