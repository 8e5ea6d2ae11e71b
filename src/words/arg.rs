//! The arguments of messages.

use fluent_bundle::FluentValue;
use jiff::civil::Date;

use super::Figures;
use super::called::filled;
use super::figures::counted;
use crate::measure::{
    Area, Dimension, Hours, Humidity, Length, Minutes, Moisture, Money, Percent, Quantity, Temperature,
    Units, Volume,
};

/// An argument of a message: a figure, a name a person typed, or an id to select by.
#[derive(Debug, Clone, PartialEq)]
pub enum Arg<'a> {
    /// How many: selects the plural form.
    Count(u64),
    /// A bare number with at most so many decimals: selects the plural form, too.
    Number(f64, usize),
    /// What a batch of a task or a piece of a material is for, in SI units.
    Amount(Dimension, f64),
    /// The dry film of a coat of paint, micrometers.
    Film(f64),
    /// A part size or a gap.
    Length(Length),
    /// A total of lengths, in feet or meters.
    Run(Length),
    /// A distance over land, in miles or kilometers.
    Far(Length),
    /// An area.
    Area(Area),
    /// An area of the size of a joint.
    SmallArea(Area),
    /// A volume.
    Volume(Volume),
    /// A share, in whole percent or with one decimal where it matters.
    Percent(Percent),
    /// Water in wood, by weight of the dry wood.
    Moisture(Moisture),
    /// Relative humidity.
    Humidity(Humidity),
    /// A temperature.
    Temperature(Temperature),
    /// Working time in minutes.
    Minutes(Minutes),
    /// Working time in hours.
    Hours(Hours),
    /// An amount to the cent.
    Money(Money),
    /// An amount rounded for a sentence.
    RoughMoney(Money),
    /// A day.
    Date(Date),
    /// A month of a year, of which the day does not matter.
    Month(Date),
    /// A figure of any quantity.
    Quantity(Quantity),
    /// A name that a person typed, a file's path, or text read from a file.
    Name(&'a str),
    /// What the catalog calls something, or says of it: in the language of the words, unless a person worded
    /// it.
    Called(&'a str),
    /// What the layout calls a joint.
    Joint(&'a str),
    /// Names in a list: `A, B, and C`.
    Names(Vec<&'a str>),
    /// An id to select a variant of the message by; never shown.
    Id(&'static str),
}

impl<'a> Arg<'a> {
    /// The units in which figures are shown, to select a variant of the message by.
    pub const fn units(units: Units) -> Self {
        Self::Id(match units {
            Units::Inches => "inches",
            Units::Millimeters => "millimeters",
        })
    }

    /// The argument as the message's formatter takes it.
    pub(super) fn value(&self, figures: &Figures) -> FluentValue<'a> {
        let text = match self {
            // Counts stay numbers, so that plural forms can be selected by them.
            #[expect(clippy::cast_precision_loss, reason = "counts stay far below 2^53")]
            Self::Count(count) => return FluentValue::from(*count as f64),
            Self::Number(value, decimals) => return counted(*value, *decimals),
            Self::Amount(dimension, amount) => figures.amount(*dimension, *amount),
            Self::Film(microns) => figures.film(*microns),
            Self::Name(name) => return FluentValue::String((*name).into()),
            Self::Called(name) => {
                return FluentValue::String(filled(figures.language().called(name), figures));
            }
            Self::Joint(name) => return FluentValue::String(figures.joint(name)),
            Self::Id(id) => return FluentValue::String((*id).into()),
            Self::Length(length) => figures.length_said(*length),
            Self::Run(length) => figures.run(*length),
            Self::Far(length) => figures.far(*length),
            Self::Area(area) => figures.area(*area),
            Self::SmallArea(area) => figures.small_area(*area),
            Self::Volume(volume) => figures.volume(*volume),
            Self::Percent(percent) => figures.percent(percent.to_pct(), 1),
            Self::Moisture(moisture) => figures.percent(moisture.to_pct(), 1),
            Self::Humidity(humidity) => figures.percent(humidity.to_pct(), 0),
            Self::Temperature(temperature) => figures.temperature(*temperature),
            Self::Minutes(minutes) => figures.minutes(*minutes),
            Self::Hours(hours) => figures.hours(*hours),
            Self::Money(money) => figures.money(*money),
            Self::RoughMoney(money) => figures.rough_money(*money),
            Self::Date(date) => figures.date(*date),
            Self::Month(date) => figures.month(*date),
            Self::Quantity(quantity) => figures.quantity(*quantity),
            Self::Names(names) => figures.list(names),
        };
        FluentValue::String(text.into())
    }
}

macro_rules! from {
    ($($type:ty => $variant:ident),+ $(,)?) => {
        $(impl From<$type> for Arg<'_> {
            fn from(value: $type) -> Self {
                Self::$variant(value)
            }
        })+
    };
}

from! {
    Length => Length, Area => Area, Volume => Volume, Percent => Percent, Moisture => Moisture,
    Humidity => Humidity, Temperature => Temperature, Minutes => Minutes, Hours => Hours,
    Money => Money, Date => Date, Quantity => Quantity, u64 => Count,
}

impl From<usize> for Arg<'_> {
    fn from(count: usize) -> Self {
        Self::Count(u64::try_from(count).unwrap_or(u64::MAX))
    }
}

impl From<u32> for Arg<'_> {
    fn from(count: u32) -> Self {
        Self::Count(count.into())
    }
}

impl<'a> From<&'a String> for Arg<'a> {
    fn from(name: &'a String) -> Self {
        Self::Name(name)
    }
}
