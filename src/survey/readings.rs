//! The readings as they are written down.

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::measure::{DateText, Humidity, Length, Moisture, Percent, Temperature};
use crate::wood::{correct_pin_meter, emc};

/// How a joint failed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize, JsonSchema)]
pub enum Failure {
    /// It was not noted.
    #[default]
    NotNoted,
    /// It has not: the bead is whole, or there never was one.
    Whole,
    /// The sealant lost adhesion on one side.
    LetGoOneSide,
    /// The sealant split in its middle.
    SplitInMiddle,
    /// The paint over it tore.
    PaintTorn,
    /// The sealant was squeezed out.
    SqueezedOut,
}

impl Failure {
    /// All of them, in the order offered.
    pub const ALL: [Self; 6] = [
        Self::NotNoted,
        Self::Whole,
        Self::LetGoOneSide,
        Self::SplitInMiddle,
        Self::PaintTorn,
        Self::SqueezedOut,
    ];

    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::NotNoted => "not_noted",
            Self::Whole => "whole",
            Self::LetGoOneSide => "one_side",
            Self::SplitInMiddle => "split",
            Self::PaintTorn => "paint_torn",
            Self::SqueezedOut => "squeezed_out",
        }
    }
}

/// One gap, measured with a gauge. In files place and width must stand; a reading without them is
/// none.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct GapReading {
    /// Name of the surface.
    pub surface: String,
    /// Label of the joint.
    pub joint: String,
    /// Place: distance from the joint's start, if noted.
    #[serde(default)]
    pub at: Option<Length>,
    /// Width of the gap; nothing for a closed joint, which is a reading too.
    pub width: Length,
    /// When, if not on the day of the visit.
    #[serde(default)]
    #[schemars(with = "Option<DateText>")]
    pub date: Option<Date>,
    /// How the sealant failed there.
    #[serde(default)]
    pub failed: Failure,
    /// The width of which somebody said that it is meant so, where it is unusual.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub confirmed: Option<Length>,
}

/// What the meter was set to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum MeterSetting {
    /// To the boards' own species, or corrected for it.
    #[default]
    ThisSpecies,
    /// To another species.
    OtherSpecies,
    /// Not known.
    Unknown,
}

impl MeterSetting {
    /// All of them, in the order offered.
    pub const ALL: [Self; 3] = [Self::ThisSpecies, Self::OtherSpecies, Self::Unknown];

    /// Its key in message catalogs.
    pub const fn key(self) -> &'static str {
        match self {
            Self::ThisSpecies => "this_species",
            Self::OtherSpecies => "other_species",
            Self::Unknown => "unknown",
        }
    }
}

/// One moisture reading with a pin meter.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct MoistureReading {
    /// Name of the surface.
    pub surface: String,
    /// Name of the section.
    pub section: String,
    /// Which board, in the user's words.
    pub board: String,
    /// What the meter said; nothing while it has not been typed.
    pub reading: Option<Moisture>,
    /// What the meter was set to.
    pub setting: MeterSetting,
    /// Temperature of the wood.
    pub wood: Temperature,
    /// When, if not on the day of the visit.
    #[schemars(with = "Option<DateText>")]
    pub date: Option<Date>,
}

impl Default for MoistureReading {
    fn default() -> Self {
        Self {
            surface: String::new(),
            section: String::new(),
            board: String::new(),
            reading: None,
            setting: MeterSetting::default(),
            wood: Temperature::celsius(20.0),
            date: None,
        }
    }
}

/// Air of the room, read off a hygrometer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct RoomReading {
    /// Temperature.
    pub temperature: Temperature,
    /// Relative humidity; in files a fraction from 0 to 1.
    pub humidity: Humidity,
    /// When, if not on the day of the visit.
    #[schemars(with = "Option<DateText>")]
    pub date: Option<Date>,
}

impl MoistureReading {
    /// What the meter showed, put right for the wood's temperature; `None` while nothing was read.
    pub fn corrected(&self) -> Option<Moisture> {
        Some(correct_pin_meter(self.reading?, self.wood).0)
    }
}

impl RoomReading {
    /// The moisture that wood would settle at in this air.
    pub fn equilibrium(&self) -> Moisture {
        emc(self.temperature, self.humidity)
    }
}

impl Default for RoomReading {
    fn default() -> Self {
        Self { temperature: Temperature::celsius(20.0), humidity: Humidity::pct(40.0), date: None }
    }
}

/// Everything measured.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct Survey {
    /// How well the opening of all joints is to be known: half-width of its 90 % interval.
    pub precision: Percent,
    /// The moisture meter, in the user's words: kind, pins, when it was last checked.
    pub meter: String,
    /// Gaps.
    pub gaps: Vec<GapReading>,
    /// Board moistures.
    pub moistures: Vec<MoistureReading>,
    /// Room air.
    pub rooms: Vec<RoomReading>,
}

impl Default for Survey {
    fn default() -> Self {
        Self {
            precision: Percent::pct(15.0),
            meter: String::new(),
            gaps: Vec::new(),
            moistures: Vec::new(),
            rooms: Vec::new(),
        }
    }
}
