//! Fields of the readings: gaps, the moisture meter, the room's air.

use super::{COLDEST, HOTTEST, WIDEST_GAP, fields, figure, optional};
use crate::job::fields::Kind;
use crate::measure::{Humidity, Length, Moisture, Percent};

fields! {
    /// How well the opening of all joints is to be known.
    PRECISION = "precision", "survey.precision", Job,
        figure!(job, survey.precision, Percent, Percent::pct(1.0), Percent::pct(100.0), Nearest);
    /// The moisture meter.
    METER = "meter", "survey.meter", Job, Kind::Text;
    /// The joint of a gap reading.
    GAP_JOINT = "gap-joint", "survey.gaps[].joint", Gap, Kind::Choice;
    /// Width of a gap.
    GAP_WIDTH = "gap-width", "survey.gaps[].width", Gap,
        figure!(gap, width, Length, Length::ZERO, WIDEST_GAP, LeaveOut);
    /// When a gap was read.
    GAP_DATE = "gap-date", "survey.gaps[].date", Gap, Kind::Date;
    /// How the bead in a joint failed.
    GAP_FAILURE = "gap-failure", "survey.gaps[].failed", Gap, Kind::Choice;
    /// The width that a gap was said to have when it was asked about.
    GAP_CONFIRMED = "gap-confirmed", "survey.gaps[].confirmed", Gap,
        optional!(gap, confirmed, Length, Length::ZERO, WIDEST_GAP, LeaveOut);
    /// The section of a meter reading.
    METER_SECTION = "meter-section", "survey.moistures[].section", Moisture, Kind::Choice;
    /// The board under the meter.
    METER_BOARD = "meter-board", "survey.moistures[].board", Moisture, Kind::Text;
    /// What the moisture meter shows.
    METER_READING = "meter-reading", "survey.moistures[].reading", Moisture,
        optional!(meter, reading, Moisture, Moisture::ZERO, Moisture::pct(100.0), LeaveOut);
    /// Setting of the meter.
    METER_SETTING = "meter-setting", "survey.moistures[].setting", Moisture, Kind::Choice;
    /// Temperature of the wood under the meter.
    WOOD_TEMPERATURE = "wood-temperature", "survey.moistures[].wood", Moisture,
        figure!(meter, wood, Temperature, COLDEST, HOTTEST, LeaveOut);
    /// When the meter was read.
    METER_DATE = "meter-date", "survey.moistures[].date", Moisture, Kind::Date;
    /// Temperature of the room at a reading.
    ROOM_TEMPERATURE = "room-temperature", "survey.rooms[].temperature", Room,
        figure!(room, temperature, Temperature, COLDEST, HOTTEST, LeaveOut);
    /// Humidity of the room at a reading.
    ROOM_HUMIDITY = "room-humidity", "survey.rooms[].humidity", Room,
        figure!(room, humidity, Humidity, Humidity::ZERO, Humidity::pct(100.0), LeaveOut);
    /// When the room was read.
    ROOM_DATE = "room-date", "survey.rooms[].date", Room, Kind::Date;
}
