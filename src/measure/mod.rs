//! Quantities with their units in the type, and the way people write and read them.
//!
//! Inside, everything is SI (meters, square meters, cubic meters, degrees Celsius) except money,
//! which is whole cents, and wood moisture and shares, which are percent because that is what the
//! trade and its tables use. No quantity is ever NaN or infinite: the parsers and the file reader
//! refuse such values, so everything behind them may compare and sort without a second thought.
//!
//! Entry text is never rewritten: [`parse_length`] reads it, [`Length::show`] shows a value, and
//! the window only reads back what a person has really changed.

mod date;
mod dimension;
mod entry;
mod error;
mod length;
mod money;
mod number;
mod quantity;

pub use date::{DateText, DayOrMonth, YearMeant, day_of_year, parse_date, parse_day, parse_month_or_date};
pub use dimension::Dimension;
pub use entry::{GRAINS, Quantity, parse_room_length};
pub use error::{EntryError, EntryRule};
pub use length::{Length, parse_length};
pub use money::{Money, parse_money};
pub use number::{bisect, parse_number, plain_number, show_number};
pub use quantity::{
    Angle, Area, Estimate, Hours, Humidity, Minutes, Moisture, Percent, Span, Temperature, ThreePoint,
    Volume, finite,
};

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The units a job is typed and shown in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum Units {
    /// Feet, inches and 64ths; degrees Fahrenheit; US gallons and fluid ounces.
    #[default]
    Inches,
    /// Millimeters and meters; degrees Celsius; liters.
    #[serde(rename = "Millimetres", alias = "Millimeters")]
    Millimeters,
}
