//! What a person enters of a next install.

use jiff::ToSpan as _;
use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::boards::Joints;
use super::gate::good_enough;
use super::stack::Stack;
use crate::measure::{DateText, Length, Moisture, Percent, Temperature, Units};
use crate::surface::BoardSpec;
use crate::survey::MeterSetting;
use crate::wood::correct_pin_meter;

/// Days from the delivery on which readings of it are taken: the longest watch.
const WATCHED: i64 = 240;

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
    /// When; the day of the delivery where it is not given.
    #[schemars(with = "Option<DateText>")]
    pub date: Option<Date>,
}

impl BoardReading {
    /// What the meter said, corrected for the wood's temperature; `None` while it has not been typed.
    pub fn corrected(&self) -> Option<Moisture> {
        self.reading.map(|read| correct_pin_meter(read, self.wood).0)
    }
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
    /// The trade name by which their species was found, where several are sold under it.
    pub sold_as: String,
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
    /// The day they were put on stickers, or are to be: before it they lie as `stack` says, or in their wrapper where that
    /// is on stickers. Not given where they lay so from the start, or still don't.
    #[schemars(with = "Option<DateText>")]
    pub opened: Option<Date>,
    /// Readings, those of later days too.
    pub readings: Vec<BoardReading>,
    /// Who measured.
    pub checked_by: String,
    /// The day they were hung.
    #[schemars(with = "Option<DateText>")]
    pub hung: Option<Date>,
}

impl NextInstall {
    /// How deep pins go to read the average of one of its boards.
    pub fn deep_enough(&self) -> Length {
        super::lot::deep_enough(self.boards.thickness)
    }

    /// The wood temperature that readings begin with: about that at which meters read true, a round figure.
    pub const fn preset_wood(units: Units) -> Temperature {
        match units {
            Units::Inches => Temperature::fahrenheit(70.0),
            Units::Millimeters => Temperature::celsius(21.0),
        }
    }

    /// One whose boards came on this day.
    pub fn delivered_on(day: Date) -> Self {
        Self { delivered: Some(day), ..Self::default() }
    }

    /// One that is begun on this day: its boards came, and nobody has said yet what they are.
    pub fn begun_on(day: Date) -> Self {
        let boards = BoardSpec { species: String::new(), ..BoardSpec::default() };
        Self { boards, ..Self::delivered_on(day) }
    }

    /// How many readings are typed.
    pub fn measured(&self) -> usize {
        self.readings.iter().filter(|reading| reading.reading.is_some()).count()
    }

    /// The day the boards came: that of the visit where it is not given.
    pub fn came(&self, visited: Date) -> Date {
        self.delivered.unwrap_or(visited)
    }

    /// The day that a reading counts as: its own; that of the delivery where it has none, or one before it.
    pub fn day_of(&self, reading: &BoardReading, visited: Date) -> Date {
        let came = self.came(visited);
        reading.date.map_or(came, |date| date.max(came))
    }

    /// The last day whose readings still say something of the delivery: a date of another year is a slip.
    pub fn last_day(&self, visited: Date) -> Date {
        let came = self.came(visited);
        came.checked_add(WATCHED.days()).unwrap_or(came)
    }

    /// The day of a reading that is typed on `today`: that day while the boards may still lie there; else that
    /// of the reading before it.
    pub fn day_of_next(&self, visited: Date, today: Date) -> Date {
        let came = self.came(visited);
        match (came..=self.last_day(visited)).contains(&today) {
            true => today,
            false => self.readings.last().map_or(came, |reading| self.day_of(reading, visited)),
        }
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
            sold_as: String::new(),
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
            opened: None,
            readings: Vec::new(),
            checked_by: String::new(),
            hung: None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::date;

    #[test]
    fn a_reading_counts_as_its_day_or_as_that_of_the_delivery() {
        let (came, visited) = (date(2026, 11, 14), date(2026, 11, 20));
        let next = NextInstall::delivered_on(came);
        let on = |date| next.day_of(&BoardReading { date, ..BoardReading::default() }, visited);
        assert_eq!(on(None), came, "files have always meant the delivery by a blank date");
        assert_eq!(on(Some(date(2026, 11, 28))), date(2026, 11, 28));
        assert_eq!(on(Some(date(2026, 11, 1))), came, "nothing was metered before it came");
        let unsaid = NextInstall::default();
        assert_eq!(unsaid.day_of(&BoardReading::default(), visited), visited);
    }

    #[test]
    fn a_reading_that_is_typed_is_of_that_day_while_the_boards_may_lie_there() {
        let (came, visited) = (date(2026, 11, 14), date(2026, 11, 20));
        let mut next = NextInstall::delivered_on(came);
        assert_eq!(next.day_of_next(visited, date(2026, 11, 28)), date(2026, 11, 28));
        assert_eq!(next.day_of_next(visited, came), came);
        assert_eq!(next.day_of_next(visited, date(2026, 11, 1)), came, "before they came");
        assert_eq!(next.day_of_next(visited, date(2028, 3, 1)), came, "long after");
        let later = Some(date(2026, 12, 1));
        next.readings.push(BoardReading { date: later, ..BoardReading::default() });
        assert_eq!(next.day_of_next(visited, date(2028, 3, 1)), date(2026, 12, 1), "as the one before");
    }
}
