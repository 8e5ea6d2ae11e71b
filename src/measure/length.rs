//! Lengths: typed the way people write them, kept exactly, shown in 64ths or millimeters.

use std::borrow::Cow;
use std::iter::Sum;
use std::ops::{Add, Div, Mul, Neg, Sub};

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::quantity::quantity;
use super::{EntryError, EntryRule, Units, show_number};

const INCH: f64 = 0.0254;
/// Nothing in a room is longer than this: more is a slip of the finger.
const LONGEST: Length = Length::m(1000.0);

quantity! {
    /// A length, in meters. In files it is text with its unit: `5-1/8 in`, `130 mm`.
    Length, m, to_m
}

impl Length {
    /// Makes a length from millimeters.
    pub const fn mm(millimeters: f64) -> Self {
        Self::m(millimeters / 1000.0)
    }

    /// Makes a length from inches.
    pub const fn inches(inches: f64) -> Self {
        Self::m(inches * INCH)
    }

    /// Makes a length from feet.
    pub const fn feet(feet: f64) -> Self {
        Self::inches(feet * 12.0)
    }

    /// The length in millimeters.
    pub const fn to_mm(self) -> f64 {
        self.to_m() * 1000.0
    }

    /// The length in inches.
    pub const fn to_inches(self) -> f64 {
        self.to_m() / INCH
    }

    /// The length in feet.
    pub const fn to_feet(self) -> f64 {
        self.to_inches() / 12.0
    }

    /// Shows a part size or a gap: inches to the nearest 64th with the fraction reduced, feet from
    /// 3 ft up; or millimeters to the tenth. What is no room any more, from 100 m up, is in meters.
    pub fn show(self, units: Units) -> String {
        match units {
            Units::Inches => self.show_inches(),
            Units::Millimeters if self.to_m().abs() >= 100.0 => format!("{} m", show_number(self.to_m(), 1)),
            Units::Millimeters => format!("{} mm", show_number(self.to_mm(), 1)),
        }
    }

    /// A round length at or over this one whose quarters are round too: for the axis of a plot.
    /// A quarter of a 16th of an inch at least, and at most a meter.
    #[must_use]
    pub fn axis_top(self, units: Units) -> Self {
        let tops: &[Self] = match units {
            Units::Inches => {
                &[0.0625, 0.125, 0.1875, 0.25, 0.375, 0.5, 0.75, 1.0, 2.0, 4.0, 8.0].map(Self::inches)
            }
            Units::Millimeters => {
                &[0.8, 1.2, 2.0, 4.0, 6.0, 8.0, 12.0, 20.0, 40.0, 100.0, 200.0].map(Self::mm)
            }
        };
        tops.iter().copied().find(|top| *top >= self).unwrap_or(Self::m(1.0))
    }

    fn show_inches(self) -> String {
        let sign = if self.to_m() < 0.0 { "−" } else { "" };
        let inches = self.to_inches().abs();
        // Below half a 64th the fraction would read 0, which is not what was measured.
        if inches > 1e-9 && inches < 0.5 / 64.0 {
            return format!("{sign}<1/64\"");
        }
        let (feet, inches) = split_64ths(inches);
        match (feet, inches.as_str()) {
            (0, _) if self.to_m() == 0.0 => "0\"".to_owned(),
            (0, inches) => format!("{sign}{inches}\""),
            (feet, "0") => format!("{sign}{feet}'"),
            (feet, inches) => format!("{sign}{feet}' {inches}\""),
        }
    }

    /// The text for files: the shortest form that reads back to the very same value.
    fn to_file(self) -> String {
        let inches = self.to_inches();
        let sixty_fourths = (inches * 64.0).round();
        if (0.0..64e6).contains(&sixty_fourths) {
            let (feet, part) = split_64ths(inches);
            let text = match (feet, part.as_str()) {
                (0, part) => format!("{part} in"),
                (feet, "0") => format!("{feet} ft"),
                (feet, part) => format!("{feet} ft {part} in"),
            };
            if parse_length(&text, Units::Inches) == Ok(self) {
                return text;
            }
        }
        let text = format!("{} mm", (self.to_mm() * 1e4).round() / 1e4);
        match parse_length(&text, Units::Millimeters) {
            Ok(same) if same == self => text,
            _ => format!("{} m", self.to_m()),
        }
    }
}

/// Whole feet (from 36 in up) and the rest as `5-1/8`, rounded to 64ths. Takes no negatives.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a length is far below 2^64 sixty-fourths and not negative here"
)]
fn split_64ths(inches: f64) -> (u64, String) {
    let all = (inches * 64.0).round() as u64;
    let feet = if all >= 36 * 64 { all / (12 * 64) } else { 0 };
    let rest = all - feet * 12 * 64;
    let (whole, part) = (rest / 64, rest % 64);
    let text = if part == 0 {
        whole.to_string()
    } else {
        let shift = part.trailing_zeros();
        let fraction = format!("{}/{}", part >> shift, 64 >> shift);
        if whole == 0 { fraction } else { format!("{whole}-{fraction}") }
    };
    (feet, text)
}

impl Serialize for Length {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.to_file())
    }
}

impl<'de> Deserialize<'de> for Length {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        // In a file the unit is written out; a bare number would depend on who reads it.
        if !text.contains(|c: char| c.is_alphabetic() || c == '"' || c == '\'') {
            return Err(de::Error::custom(EntryError::new(&text, EntryRule::UnitMissing)));
        }
        parse_length(&text, Units::Millimeters).map_err(de::Error::custom)
    }
}

impl JsonSchema for Length {
    fn schema_name() -> Cow<'static, str> {
        "Length".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "type": "string",
            "description": "A length with its unit, such as 5-1/8 in, 7 ft 3-1/2 in, or 130 mm",
            "pattern": "[A-Za-z\"']",
        })
    }
}

/// Reads a length as people write it: `5-1/8`, `5 1/8"`, `7' 3-1/2"`, `7 ft 3`, `130`, `130 mm`,
/// `13 cm`, `3.3 m`, `3/32`, with a decimal point or a decimal comma.
///
/// A bare number is in inches or millimeters after `units`; a bare number after feet is inches.
///
/// # Errors
/// If the text is not a length, mixes systems, or is longer than a kilometer.
pub fn parse_length(text: &str, units: Units) -> Result<Length, EntryError> {
    let fail = |rule| EntryError::new(text, rule);
    let tokens = tokenize(text).ok_or_else(|| fail(EntryRule::NotALength))?;
    let (negative, tokens) = match tokens.split_first() {
        Some((Token::Dash, rest)) => (true, rest),
        _ => (false, tokens.as_slice()),
    };
    if tokens.is_empty() {
        return Err(fail(EntryRule::NotALength));
    }
    let meters = sum_of_terms(tokens, units).map_err(fail)?;
    // Endless figures come out as no number at all, which is not within anything either.
    if !(0.0..=LONGEST.to_m()).contains(&meters) {
        return Err(fail(EntryRule::LengthTooLong { limit: LONGEST }));
    }
    Ok(Length::m(if negative { -meters } else { meters }))
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Token {
    Number(f64),
    Slash,
    Dash,
    Unit(Unit),
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Unit {
    Feet,
    Inches,
    Millimeters,
    Centimeters,
    Meters,
}

fn tokenize(text: &str) -> Option<Vec<Token>> {
    let mut tokens = Vec::new();
    // Digits are shown in groups, parted by a thin space.
    let text = text.replace(['\u{2009}', '\u{202f}'], "");
    let mut rest = text.trim();
    while let Some(first) = rest.chars().next() {
        let end_of = |keep: fn(char) -> bool| rest.find(|c| !keep(c)).unwrap_or(rest.len());
        let used = match first {
            '0'..='9' | '.' | ',' => {
                let end = end_of(|c| c.is_ascii_digit() || c == '.' || c == ',');
                let value: f64 = rest[..end].replace(',', ".").parse().ok()?;
                tokens.push(Token::Number(value));
                end
            }
            '/' | '⁄' => {
                tokens.push(Token::Slash);
                first.len_utf8()
            }
            '-' | '−' | '–' => {
                tokens.push(Token::Dash);
                first.len_utf8()
            }
            '\'' if rest.starts_with("''") => {
                tokens.push(Token::Unit(Unit::Inches));
                2
            }
            '\'' | '′' | '’' => {
                tokens.push(Token::Unit(Unit::Feet));
                first.len_utf8()
            }
            '"' | '″' | '”' => {
                tokens.push(Token::Unit(Unit::Inches));
                first.len_utf8()
            }
            c if c.is_alphabetic() => {
                let end = end_of(char::is_alphabetic);
                tokens.push(Token::Unit(unit_word(&rest[..end].to_lowercase())?));
                end
            }
            c if c.is_whitespace() => c.len_utf8(),
            _ => return None,
        };
        rest = &rest[used..];
    }
    Some(tokens)
}

fn unit_word(word: &str) -> Option<Unit> {
    Some(match word {
        "ft" | "feet" | "foot" => Unit::Feet,
        "in" | "inch" | "inches" => Unit::Inches,
        "mm" => Unit::Millimeters,
        "cm" => Unit::Centimeters,
        "m" => Unit::Meters,
        _ => return None,
    })
}

/// Adds up `number unit` terms, largest unit first. The error is the rule that was broken.
fn sum_of_terms(mut tokens: &[Token], units: Units) -> Result<f64, EntryRule> {
    // Feet and inches are summed as inches first so that the conversion rounds only once.
    let (mut inches, mut meters) = (0.0, 0.0);
    let mut before: Option<Unit> = None;
    while !tokens.is_empty() {
        if before.is_some() && tokens.first() == Some(&Token::Dash) {
            tokens = &tokens[1..]; // 7'-3 1/2": the dash only joins
        }
        let (value, rest) = mixed_number(tokens)?;
        let (unit, rest) = match rest.split_first() {
            Some((&Token::Unit(unit), rest)) => (unit, rest),
            _ if before == Some(Unit::Feet) => (Unit::Inches, rest),
            _ if before.is_some() => return Err(EntryRule::NumberWithoutUnit),
            _ if units == Units::Inches => (Unit::Inches, rest),
            _ => (Unit::Millimeters, rest),
        };
        match (before, unit) {
            (None, _) | (Some(Unit::Feet), Unit::Inches) => {}
            _ => return Err(EntryRule::NotOneLength),
        }
        match unit {
            Unit::Feet => inches += value * 12.0,
            Unit::Inches => inches += value,
            Unit::Millimeters => meters += value / 1000.0,
            Unit::Centimeters => meters += value / 100.0,
            Unit::Meters => meters += value,
        }
        before = Some(unit);
        tokens = rest;
    }
    Ok(inches * INCH + meters)
}

/// Reads `5`, `1/8`, `5-1/8` or `5 1/8` from the front.
fn mixed_number(tokens: &[Token]) -> Result<(f64, &[Token]), EntryRule> {
    use Token::{Dash, Number, Slash};
    let fraction = |top: f64, bottom: f64| {
        if bottom == 0.0 { Err(EntryRule::ZeroDenominator) } else { Ok(top / bottom) }
    };
    match tokens {
        [Number(top), Slash, Number(bottom), rest @ ..] => Ok((fraction(*top, *bottom)?, rest)),
        [Number(whole), Dash, Number(top), Slash, Number(bottom), rest @ ..]
        | [Number(whole), Number(top), Slash, Number(bottom), rest @ ..] => {
            Ok((whole + fraction(*top, *bottom)?, rest))
        }
        [Number(value), rest @ ..] => Ok((*value, rest)),
        _ => Err(EntryRule::NotALength),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn inches(text: &str) -> f64 {
        parse_length(text, Units::Inches).unwrap().to_inches()
    }

    #[test]
    fn lengths_are_read_as_people_write_them() {
        for (text, expected) in [
            ("5-1/8", 5.125),
            ("5 1/8\"", 5.125),
            ("7' 3-1/2\"", 87.5),
            ("7'-3 1/2\"", 87.5),
            ("7 ft 3", 87.0),
            ("7'", 84.0),
            ("3/32", 0.09375),
            ("2,5", 2.5),
            (".5", 0.5),
            ("-1/4", -0.25),
            ("130 mm", 130.0 / 25.4),
            ("13cm", 130.0 / 25.4),
            ("0.13 m", 130.0 / 25.4),
        ] {
            assert!((inches(text) - expected).abs() < 1e-12, "{text}");
        }
        assert_eq!(parse_length("130", Units::Millimeters), Ok(Length::mm(130.0)));
    }

    #[test]
    fn what_is_no_length_is_refused_with_the_text_and_the_rule() {
        for (text, rule) in [
            ("", EntryRule::NotALength),
            ("abc", EntryRule::NotALength),
            ("5-", EntryRule::NotALength),
            ("1/8/2", EntryRule::NotALength),
            ("nan", EntryRule::NotALength),
            ("inf", EntryRule::NotALength),
            ("1/0", EntryRule::ZeroDenominator),
            ("5 mm 3", EntryRule::NumberWithoutUnit),
            ("5 mm 3 in", EntryRule::NotOneLength),
            ("3 4", EntryRule::NumberWithoutUnit),
            ("5 ft 2 ft", EntryRule::NotOneLength),
            ("9999999", EntryRule::LengthTooLong { limit: Length::m(1000.0) }),
        ] {
            assert_eq!(parse_length(text, Units::Inches), Err(EntryError::new(text, rule)));
        }
    }

    #[test]
    fn inches_are_shown_in_reduced_64ths() {
        for (value, shown) in [
            (5.125, "5-1/8\""),
            (0.125, "1/8\""),
            (87.5, "7' 3-1/2\""),
            (84.0, "7'"),
            (0.0, "0\""),
            (35.0, "35\""),
            (0.001, "<1/64\""),
            (11.999, "12\""),
            (-0.25, "−1/4\""),
        ] {
            assert_eq!(Length::inches(value).show(Units::Inches), shown);
        }
        assert_eq!(Length::mm(3.175).show(Units::Millimeters), "3.2 mm");
    }

    proptest! {
        #[test]
        fn a_length_survives_its_file_bit_for_bit(meters in -900.0..900.0_f64) {
            let length = Length::m(meters);
            prop_assert_eq!(parse_length(&length.to_file(), Units::Inches), Ok(length));
        }

        #[test]
        fn sixty_fourths_show_and_read_back_exactly(count in 0..64_000_u32) {
            let length = parse_length(&format!("{count}/64"), Units::Inches).unwrap();
            prop_assert_eq!(parse_length(&length.show(Units::Inches), Units::Inches), Ok(length));
        }

        #[test]
        fn any_text_is_read_or_refused_without_a_panic(text in ".{0,24}") {
            if let Ok(length) = parse_length(&text, Units::Inches) {
                prop_assert!(length.to_m().is_finite());
            }
        }
    }
}
