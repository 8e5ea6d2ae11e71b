//! A figure of any quantity, as an entry field holds it.

use std::cmp::Ordering;

use super::{
    Angle, EntryError, EntryRule, Hours, Humidity, Length, Minutes, Moisture, Money, Percent, Temperature,
    Units, parse_length, parse_money, parse_number, plain_number,
};

/// Grains a cubic foot of one gram a cubic meter: 15.4324 grains a gram, 35.3147 cubic feet a cubic meter.
pub const GRAINS: f64 = 15.432_358 / 35.314_667;

/// A figure together with what it measures. Two figures compare only if they measure the same.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Quantity {
    /// A bare number.
    Number(f64),
    /// How many.
    Count(u32),
    /// A number of whole days.
    Days(u32),
    /// A number of whole years.
    Years(u32),
    /// A year of the calendar.
    Year(i16),
    /// A part size or a gap.
    Length(Length),
    /// A length of the size of a room: a bare number typed for it is feet where lengths are in inches.
    RoomLength(Length),
    /// A share.
    Percent(Percent),
    /// Water in wood.
    Moisture(Moisture),
    /// Relative humidity.
    Humidity(Humidity),
    /// A temperature.
    Temperature(Temperature),
    /// An angle, in degrees.
    Angle(Angle),
    /// An amount of money.
    Money(Money),
    /// Working time in hours.
    Hours(Hours),
    /// Working time in minutes.
    Minutes(Minutes),
    /// A time of day, in hours since midnight.
    TimeOfDay(Hours),
    /// Water that the house adds to the air, g/m³.
    MoistureLoad(f64),
}

impl PartialOrd for Quantity {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        match (self, other) {
            (Self::Number(a), Self::Number(b)) | (Self::MoistureLoad(a), Self::MoistureLoad(b)) => {
                a.partial_cmp(b)
            }
            (Self::Count(a), Self::Count(b))
            | (Self::Days(a), Self::Days(b))
            | (Self::Years(a), Self::Years(b)) => a.partial_cmp(b),
            (Self::Year(a), Self::Year(b)) => a.partial_cmp(b),
            (Self::Length(a), Self::Length(b)) | (Self::RoomLength(a), Self::RoomLength(b)) => {
                a.partial_cmp(b)
            }
            (Self::Percent(a), Self::Percent(b)) => a.partial_cmp(b),
            (Self::Moisture(a), Self::Moisture(b)) => a.partial_cmp(b),
            (Self::Humidity(a), Self::Humidity(b)) => a.partial_cmp(b),
            (Self::Temperature(a), Self::Temperature(b)) => a.partial_cmp(b),
            (Self::Angle(a), Self::Angle(b)) => a.partial_cmp(b),
            (Self::Money(a), Self::Money(b)) => a.partial_cmp(b),
            (Self::Hours(a), Self::Hours(b)) | (Self::TimeOfDay(a), Self::TimeOfDay(b)) => a.partial_cmp(b),
            (Self::Minutes(a), Self::Minutes(b)) => a.partial_cmp(b),
            _ => None,
        }
    }
}

impl Quantity {
    /// The figure as it stands in an entry field: without its unit where the label names it, and so that
    /// typing it again gives the same.
    pub fn entry_text(self, units: Units) -> String {
        match self {
            Self::Number(value) => plain_number(value, 2),
            Self::MoistureLoad(grams) => match units {
                Units::Inches => plain_number(grams * GRAINS, 2),
                Units::Millimeters => plain_number(grams, 2),
            },
            Self::Count(count) | Self::Days(count) | Self::Years(count) => count.to_string(),
            Self::Year(year) => year.to_string(),
            Self::Length(length) | Self::RoomLength(length) => length.show(units),
            Self::Percent(percent) => plain_number(percent.to_pct(), 2),
            Self::Moisture(moisture) => plain_number(moisture.to_pct(), 1),
            Self::Humidity(humidity) => plain_number(humidity.to_pct(), 1),
            Self::Temperature(temperature) => match units {
                Units::Inches => plain_number(temperature.to_fahrenheit(), 1),
                Units::Millimeters => plain_number(temperature.to_celsius(), 1),
            },
            Self::Angle(angle) => plain_number(angle.to_degrees(), 1),
            Self::Money(money) => money.plain(),
            Self::Hours(hours) => plain_number(hours.to_h(), 2),
            Self::Minutes(minutes) => plain_number(minutes.to_minutes(), 1),
            Self::TimeOfDay(hours) => time_of_day(hours, units),
        }
    }

    /// Reads what was typed for a figure that measures the same as this one.
    ///
    /// # Errors
    /// If the text is no such figure.
    pub fn read_alike(self, text: &str, units: Units) -> Result<Self, EntryError> {
        let number = || parse_number(text);
        Ok(match self {
            Self::Number(_) => Self::Number(number()?),
            Self::MoistureLoad(_) => Self::MoistureLoad(match units {
                Units::Inches => number()? / GRAINS,
                Units::Millimeters => number()?,
            }),
            Self::Count(_) => Self::Count(whole(text)?),
            Self::Days(_) => Self::Days(whole(text)?),
            Self::Years(_) => Self::Years(whole(text)?),
            Self::Year(_) => Self::Year(i16::try_from(whole(text)?).unwrap_or(i16::MAX)),
            Self::Length(_) => Self::Length(parse_length(text, units)?),
            Self::RoomLength(_) => Self::RoomLength(parse_room_length(text, units)?),
            Self::Percent(_) => Self::Percent(Percent::pct(number()?)),
            Self::Moisture(_) => Self::Moisture(Moisture::pct(number()?)),
            Self::Humidity(_) => Self::Humidity(Humidity::pct(number()?)),
            Self::Temperature(_) => Self::Temperature(match units {
                Units::Inches => Temperature::fahrenheit(number()?),
                Units::Millimeters => Temperature::celsius(number()?),
            }),
            Self::Angle(_) => Self::Angle(Angle::degrees(number()?)),
            Self::Money(_) => Self::Money(parse_money(text)?),
            Self::Hours(_) => Self::Hours(Hours::h(parse_minutes(text, 60.0)? / 60.0)),
            Self::TimeOfDay(_) => Self::TimeOfDay(Hours::h(parse_minutes(text, 60.0)? / 60.0)),
            Self::Minutes(_) => Self::Minutes(Minutes::of(parse_minutes(text, 1.0)?)),
        })
    }
}

/// A time of day as it can be typed again: `8:30 AM`, or `8:30` where lengths are metric; plain hours where it
/// is not on a minute.
#[expect(clippy::cast_possible_truncation, reason = "minutes of a day")]
fn time_of_day(hours: Hours, units: Units) -> String {
    let minutes = (hours.to_h() * 60.0).round();
    let on_a_minute = (minutes - hours.to_h() * 60.0).abs() < 1e-6;
    if !on_a_minute || !(0.0..1440.0).contains(&minutes) {
        return plain_number(hours.to_h(), 2);
    }
    let (hour, minute) = (minutes as i32 / 60, minutes as i32 % 60);
    match units {
        Units::Millimeters => format!("{hour}:{minute:02}"),
        Units::Inches => {
            let half = if hour < 12 { "AM" } else { "PM" };
            format!("{}:{minute:02} {half}", (hour + 11) % 12 + 1)
        }
    }
}

/// Reads a span of time or a time of day as minutes: `35`, a bare number, counts `bare` minutes each; `35 min`
/// and `0.6 h` say their unit; `8:30`, `8:30 AM` and `1 pm` are hours since midnight.
fn parse_minutes(text: &str, bare: f64) -> Result<f64, EntryError> {
    let fail = || EntryError::new(text, EntryRule::NotANumber);
    let lower = text.trim().to_lowercase();
    let unit_at = lower.find(char::is_alphabetic).unwrap_or(lower.len());
    let (number, unit) = (lower[..unit_at].trim_end(), lower[unit_at..].trim_end_matches('.'));
    let hours = match number.split_once(':') {
        None => parse_number(number).map_err(|_not_a_number| fail())?,
        Some((hours, minutes)) => {
            let [hours, minutes] = [hours, minutes].map(|part| part.parse::<u32>().ok());
            let minutes = minutes.filter(|minutes| *minutes < 60).ok_or_else(fail)?;
            f64::from(hours.ok_or_else(fail)?) + f64::from(minutes) / 60.0
        }
    };
    let clock = number.contains(':');
    Ok(match unit {
        "" if !clock => hours * bare,
        "" | "h" | "hr" | "hrs" | "hour" | "hours" => hours * 60.0,
        "m" | "min" | "mins" | "minute" | "minutes" if !clock => hours,
        "am" | "a.m" if hours < 13.0 => (hours % 12.0) * 60.0,
        "pm" | "p.m" if hours < 13.0 => (hours % 12.0 + 12.0) * 60.0,
        _ => return Err(fail()),
    })
}

/// Reads a whole number that is not negative.
fn whole(text: &str) -> Result<u32, EntryError> {
    let number = parse_number(text)?;
    if number < 0.0 || number.fract() != 0.0 {
        return Err(EntryError::new(text, EntryRule::NotWhole));
    }
    // Past what a count holds it is out of every range all the same.
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "clamped to the type's range"
    )]
    Ok(number.clamp(0.0, f64::from(u32::MAX)) as u32)
}

/// Reads a length of the size of a room: a bare number is feet where lengths are in inches.
///
/// # Errors
/// If the text is no length.
pub fn parse_room_length(text: &str, units: Units) -> Result<Length, EntryError> {
    match units {
        Units::Inches if parse_number(text).is_ok() => parse_length(&format!("{} ft", text.trim()), units)
            // What is told is what was typed.
            .map_err(|error| EntryError::new(text, error.rule)),
        _ => parse_length(text, units),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn counts_are_whole() {
        let read = |text| Quantity::Count(0).read_alike(text, Units::Inches);
        assert_eq!(read("12"), Ok(Quantity::Count(12)));
        assert_eq!(read("12.0"), Ok(Quantity::Count(12)));
        for text in ["2.5", "-1"] {
            assert_eq!(read(text), Err(EntryError::new(text, EntryRule::NotWhole)));
        }
        assert_eq!(read("9999999999"), Ok(Quantity::Count(u32::MAX)));
    }

    #[test]
    fn times_are_read_with_their_units_and_as_times_of_day() {
        let minutes = |text| Quantity::Minutes(Minutes::ZERO).read_alike(text, Units::Inches);
        for (text, expected) in
            [("35", 35.0), ("35 min", 35.0), ("35min.", 35.0), ("0.5 h", 30.0), ("1:15", 75.0)]
        {
            assert_eq!(minutes(text), Ok(Quantity::Minutes(Minutes::of(expected))), "{text}");
        }
        let hours = |text| Quantity::Hours(Hours::ZERO).read_alike(text, Units::Inches);
        let read =
            [("8", 8.0), ("8 hr", 8.0), ("90 min", 1.5), ("8:30 AM", 8.5), ("1 pm", 13.0), ("12:00 am", 0.0)];
        for (text, expected) in read {
            assert_eq!(hours(text), Ok(Quantity::Hours(Hours::h(expected))), "{text}");
        }
        let told = |hours: f64, units| Quantity::TimeOfDay(Hours::h(hours)).entry_text(units);
        assert_eq!(
            [0.0, 8.0, 12.5, 13.25].map(|h| told(h, Units::Inches)),
            ["12:00 AM", "8:00 AM", "12:30 PM", "1:15 PM"]
        );
        assert_eq!([8.0, 13.25, 7.333].map(|h| told(h, Units::Millimeters)), ["8:00", "13:15", "7.33"]);
        for text in ["8:75", "20 pm", "5 kg", "h", "8:30 min"] {
            assert_eq!(hours(text).unwrap_err().text, text);
        }
    }

    #[test]
    fn a_bare_number_of_a_room_is_feet() {
        assert_eq!(parse_room_length("12.5", Units::Inches), Ok(Length::feet(12.5)));
        assert_eq!(parse_room_length("12 in", Units::Inches), Ok(Length::inches(12.0)));
        assert_eq!(parse_room_length("3000", Units::Millimeters), Ok(Length::mm(3000.0)));
        assert_eq!(parse_room_length("99999", Units::Inches).unwrap_err().text, "99999");
    }
}
