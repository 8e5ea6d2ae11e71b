//! Quantities with their units in the type, and the way people write and read them.
//!
//! Inside, everything is SI (metres, square metres, cubic metres, degrees Celsius) except money,
//! which is whole cents, and wood moisture and shares, which are per cent because that is what the
//! trade and its tables use. No quantity is ever NaN or infinite: the parsers and the file reader
//! refuse such values, so everything behind them may compare and sort without a second thought.
//!
//! Entry text is never rewritten: [`parse_length`] reads it, [`Length::show`] shows a value, and
//! the window only reads back what a person has really changed.

mod date;
mod entry;
mod length;
mod money;
mod number;
mod quantity;

pub use date::{day_of_year, parse_date, show_date};
pub use entry::{GRAINS, Quantity, parse_room_length};
pub use length::{Length, parse_length};
pub use money::{Money, parse_money};
pub use number::{bisect, parse_number, plain_number, show_number};
pub use quantity::{
    Angle, Area, Estimate, Hours, Humidity, Minutes, Moisture, Percent, Span, Temperature, ThreePoint,
    Volume, finite,
};

use serde::{Deserialize, Serialize};

/// The units a job is typed and shown in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
pub enum Units {
    /// Feet, inches and 64ths; degrees Fahrenheit; US gallons and fluid ounces.
    #[default]
    Inches,
    /// Millimetres and metres; degrees Celsius; litres.
    #[serde(rename = "Millimetres")]
    Millimeters,
}

/// Why an entry could not be read: the text, the rule it broke and a form that works.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("“{text}” {rule}. {hint}")]
pub struct EntryError {
    /// What was typed.
    pub text: String,
    /// What is wrong with it, as the end of a sentence that starts with the text.
    pub rule: String,
    /// What to type instead.
    pub hint: String,
}

impl EntryError {
    /// An error about `text`, which breaks `rule`; `hint` says what would work.
    pub fn new(text: &str, rule: impl Into<String>, hint: impl Into<String>) -> Self {
        Self { text: text.trim().chars().take(60).collect(), rule: rule.into(), hint: hint.into() }
    }
}
