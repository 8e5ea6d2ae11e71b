//! What is expected before anything is measured, each figure with its unit, source and kind.

use serde::{Deserialize, Serialize};

use crate::wood::Kind;

/// A quantity nobody measured: where it is expected, and how far it may be off.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Prior {
    /// The middle of what is expected.
    pub middle: f64,
    /// Standard deviation; where the unit is a factor, of its logarithm.
    pub sd: f64,
    /// Its unit.
    pub unit: String,
    /// Where the figures are from.
    pub source: String,
    /// How far to trust them.
    pub kind: Kind,
}

/// Everything a plausible world draws, and how well gauges read.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Priors {
    /// Offset that all readings with one meter share, in per cent moisture.
    pub meter_offset: Prior,
    /// The same where the meter was set to another species, or nobody knows to which.
    pub loose_meter_offset: Prior,
    /// Scatter of single readings.
    pub meter_reading: Prior,
    /// A hygrometer's error, in points of relative humidity.
    pub hygrometer: Prior,
    /// How far a day's humidity in a room is from its month's.
    pub day_humidity: Prior,
    /// How far what people do moves a room's humidity from one spell of weeks to another, in points.
    pub spell_humidity: Prior,
    /// What living adds to the air when it is cold outside, in g/m³.
    pub winter_excess: Prior,
    /// The same when it is warm.
    pub summer_excess: Prior,
    /// The winter excess where the job gives one.
    pub stated_excess: Prior,
    /// Rooms are as warm as their set points, give or take, in °C.
    pub room_temperature: Prior,
    /// Humidity that cooling keeps a room below, in per cent.
    pub cooled_humidity: Prior,
    /// The same where the job gives it.
    pub stated_humidity: Prior,
    /// Humidities of a year by hand, of a class, or of logged days, for other years.
    pub hand_humidity: Prior,
    /// Permeance of a coating, as a factor.
    pub permeance: Prior,
    /// Diffusivity of a lot's wood, as a factor.
    pub diffusivity: Prior,
    /// How open the back is to air, against a free cavity, where nobody said.
    pub unknown_back: Prior,
    /// The same of boards that lie tight.
    pub tight_back: Prior,
    /// How far boards dried for the room are from its mean.
    pub right_install: Prior,
    /// How much a lot shrinks against its species, as a factor.
    pub lot_shrinkage: Prior,
    /// What the rings' angle does to that where it is not known.
    pub ring_shrinkage: Prior,
    /// How far a board's moisture is from its section's mean.
    pub piece_moisture: Prior,
    /// How well a gap gauge reads, in mm.
    pub gap_gauge: Prior,
}
