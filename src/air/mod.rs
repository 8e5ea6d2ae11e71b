//! Air: its water, and the year of it that the boards live in.
//!
//! [`psychrometrics`] holds the relations; [`IndoorAir`] is what the user says of the room and
//! [`IndoorYear`] turns it into 365 days of indoor temperature and humidity.

pub mod psychrometrics;
mod year;

pub use year::{DayAir, HouseModel, IndoorAir, IndoorYear, MonthAir, Station};

/// Days in the model's year.
pub const DAYS: usize = 365;
