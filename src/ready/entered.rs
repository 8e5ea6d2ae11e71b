//! What a person enters of a next install.

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::boards::Joints;
use super::gate::good_enough;
use super::stack::Stack;
use crate::measure::{DateText, Length, Moisture, Percent, Temperature};
use crate::surface::BoardSpec;
use crate::survey::MeterSetting;

/// A board of the delivery under the meter.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct BoardReading {
    /// Which board, in the user's words.
    pub board: String,
    /// What the meter said; nothing while it has not been typed.
    pub reading: Option<Moisture>,
    /// Temperature of the wood.
    pub wood: Temperature,
    /// How deep the pins went.
    pub pins: Length,
    /// When, if not on the day of the delivery.
    #[schemars(with = "Option<DateText>")]
    pub date: Option<Date>,
}

impl Default for BoardReading {
    /// A board at the temperature at which meters read true, pins a quarter of a 3/4 in board deep.
    fn default() -> Self {
        Self {
            board: String::new(),
            reading: None,
            wood: Temperature::celsius(21.0),
            pins: Length::inches(0.1875),
            date: None,
        }
    }
}

/// Boards that are to go up in the job's room, and their delivery.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(default, deny_unknown_fields)]
pub struct NextInstall {
    /// The boards.
    pub boards: BoardSpec,
    /// How many of them.
    pub count: u32,
    /// Whether their joints stay open or are caulked.
    pub joints: Joints,
    /// Chance asked for that no joint opens beyond the owner's rule.
    pub chance: Percent,
    /// The gap to leave; as recommended where it is not given.
    pub gap: Option<Length>,
    /// The day they are wanted.
    #[schemars(with = "Option<DateText>")]
    pub wanted: Option<Date>,
    /// Who delivered them.
    pub supplier: String,
    /// When; the day of the visit where it is not given.
    #[schemars(with = "Option<DateText>")]
    pub delivered: Option<Date>,
    /// The most moisture that stamp or delivery note promised.
    pub promised: Option<Moisture>,
    /// What the meter was set to.
    pub setting: MeterSetting,
    /// How they lie.
    pub stack: Stack,
    /// Readings, those of later days too.
    pub readings: Vec<BoardReading>,
    /// Who measured.
    pub checked_by: String,
    /// The day they were hung.
    #[schemars(with = "Option<DateText>")]
    pub hung: Option<Date>,
}

impl NextInstall {
    /// One whose boards came on this day.
    pub fn delivered_on(day: Date) -> Self {
        Self { delivered: Some(day), ..Self::default() }
    }

    /// Whether a chance is short of the one asked for by more than chances are known.
    pub fn asks_more_than(&self, chance: f64) -> bool {
        chance < good_enough(self.chance.to_fraction())
    }
}

impl Default for NextInstall {
    fn default() -> Self {
        Self {
            boards: BoardSpec::default(),
            count: 40,
            joints: Joints::default(),
            chance: Percent::pct(95.0),
            gap: None,
            wanted: None,
            supplier: String::new(),
            delivered: None,
            promised: None,
            setting: MeterSetting::default(),
            stack: Stack::default(),
            readings: Vec::new(),
            checked_by: String::new(),
            hung: None,
        }
    }
}
