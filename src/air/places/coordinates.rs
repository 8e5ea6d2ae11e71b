//! Points on the globe: kept in range, measured, and read as people type them.

use std::fmt;

use geo::{Distance as _, Haversine, Point};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::measure::Length;

/// A point on the globe; always in range.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(try_from = "Typed", into = "Typed")]
pub struct Coordinates {
    latitude: f64,
    longitude: f64,
}

/// Numbers that are no point on the globe.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OutOfRange {
    /// As given; in range if within 90 either way.
    pub latitude: f64,
    /// As given; in range if within 180 either way.
    pub longitude: f64,
    /// The point that the two numbers are in the other order, if that is one.
    pub swapped: Option<Coordinates>,
}

impl fmt::Display for OutOfRange {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "latitude {}, longitude {}", self.latitude, self.longitude)
    }
}

impl Coordinates {
    /// The point `latitude` degrees north and `longitude` degrees east.
    ///
    /// # Errors
    /// If a number is not finite or out of range: 90 for the latitude, 180 for the longitude, either
    /// way.
    pub fn new(latitude: f64, longitude: f64) -> Result<Self, OutOfRange> {
        let within = |latitude: f64, longitude: f64| latitude.abs() <= 90.0 && longitude.abs() <= 180.0;
        if within(latitude, longitude) {
            return Ok(Self { latitude, longitude });
        }
        let swapped =
            within(longitude, latitude).then_some(Self { latitude: longitude, longitude: latitude });
        Err(OutOfRange { latitude, longitude, swapped })
    }

    /// From hundredths of a degree that a table holds; its reader has seen to their range.
    pub(super) fn from_hundredths(latitude: i16, longitude: i16) -> Self {
        Self { latitude: f64::from(latitude) / 100.0, longitude: f64::from(longitude) / 100.0 }
    }

    /// Degrees north, −90 to 90.
    pub const fn latitude(self) -> f64 {
        self.latitude
    }

    /// Degrees east, −180 to 180.
    pub const fn longitude(self) -> f64 {
        self.longitude
    }

    /// The way over the globe, taken as a sphere.
    pub fn distance(self, other: Self) -> Length {
        let point = |at: Self| Point::new(at.longitude, at.latitude);
        Length::m(Haversine.distance(point(self), point(other)))
    }

    /// The point on the same parallel west of Greenwich, if this one is east of it.
    pub(super) fn mirrored_west(self) -> Option<Self> {
        (self.longitude > 0.0).then_some(Self { longitude: -self.longitude, ..self })
    }
}

impl fmt::Display for Coordinates {
    /// Degrees north and east, to 0.0001: `44.98, -93.27`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let rounded = |degrees: f64| (degrees * 1e4).round() / 1e4 + 0.0;
        write!(f, "{}, {}", rounded(self.latitude), rounded(self.longitude))
    }
}

/// The form in files.
#[derive(Serialize, Deserialize, JsonSchema)]
#[serde(rename = "Coordinates")]
struct Typed {
    /// Degrees to the north.
    #[schemars(range(min = -90.0, max = 90.0))]
    latitude: f64,
    /// Degrees to the east.
    #[schemars(range(min = -180.0, max = 180.0))]
    longitude: f64,
}

impl TryFrom<Typed> for Coordinates {
    type Error = OutOfRange;

    fn try_from(typed: Typed) -> Result<Self, OutOfRange> {
        Self::new(typed.latitude, typed.longitude)
    }
}

impl From<Coordinates> for Typed {
    fn from(point: Coordinates) -> Self {
        Self { latitude: point.latitude, longitude: point.longitude }
    }
}

/// A sign in what was typed.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Token {
    Number(f64),
    /// Ends degrees, starts minutes.
    Degree,
    /// N, S, E or W.
    Side(char),
}

/// Reads coordinates as people type or paste them: `44.98, -93.27`; `44.98 N 93.27 W`;
/// `44°58'48"N, 93°16'12"W`; `44,98; -93,27`. `None` if the text is not two angles.
///
/// # Errors
/// If they are two angles that are no point on the globe.
pub(super) fn read(text: &str) -> Option<Result<Coordinates, OutOfRange>> {
    // A semicolon between the numbers means that commas are decimal.
    let text = if text.contains(';') { text.replace(',', ".") } else { text.to_owned() };
    let tokens = tokens(&text)?;
    let [(first, first_side), (second, second_side)] = angles(&tokens)?.try_into().ok()?;
    let lies_across = |side: Option<char>| side.is_some_and(|side| matches!(side, 'e' | 'w'));
    let (latitude, longitude) = match (lies_across(first_side), lies_across(second_side)) {
        (true, false) => (second, first),
        (false, _) if !matches!(second_side, Some('n' | 's')) => (first, second),
        _ => return None,
    };
    Some(Coordinates::new(latitude, longitude))
}

fn tokens(text: &str) -> Option<Vec<Token>> {
    let mut tokens = Vec::new();
    let mut rest = text.trim();
    while let Some(char) = rest.chars().next() {
        let is_number = |c: char| c.is_ascii_digit() || c == '.';
        if is_number(char) || matches!(char, '-' | '+' | '−') {
            let (sign, digits) = match rest.strip_prefix(['-', '−']) {
                Some(digits) => (-1.0, digits),
                None => (1.0, rest.strip_prefix('+').unwrap_or(rest)),
            };
            let digits = digits.trim_start();
            let end = digits.find(|c| !is_number(c)).unwrap_or(digits.len());
            let (number, after) = digits.split_at(end);
            tokens.push(Token::Number(number.parse::<f64>().ok()? * sign));
            rest = after;
            continue;
        }
        match char.to_ascii_lowercase() {
            '°' | 'º' => tokens.push(Token::Degree),
            side @ ('n' | 's' | 'e' | 'w') => tokens.push(Token::Side(side)),
            ',' | ';' | '/' | '\'' | '"' | '′' | '″' | '’' | '”' => {}
            blank if blank.is_whitespace() => {}
            _ => return None,
        }
        rest = &rest[char.len_utf8()..];
    }
    Some(tokens)
}

/// The angles in degrees, negative to the south and west, with their side of the globe if it was said.
fn angles(tokens: &[Token]) -> Option<Vec<(f64, Option<char>)>> {
    let mut starts = starts(tokens);
    if starts.first() != Some(&0) {
        return None;
    }
    starts.push(tokens.len());
    let angle = |ends: &[usize]| {
        let (mut parts, mut side) = (Vec::new(), None);
        for token in &tokens[ends[0]..ends[1]] {
            match *token {
                Token::Number(number) => parts.push(number),
                Token::Side(said) => side = Some(said),
                Token::Degree => {}
            }
        }
        Some((degrees(&parts, side)?, side))
    };
    starts.windows(2).map(angle).collect()
}

/// Where each angle starts: at its side, if that comes first; after the last one's side, if sides are
/// said; at a number with a degree sign; or at every number.
fn starts(tokens: &[Token]) -> Vec<usize> {
    let is_side = |at: usize| matches!(tokens.get(at), Some(Token::Side(_)));
    let all = 0..tokens.len();
    if is_side(0) {
        all.filter(|&at| is_side(at)).collect()
    } else if all.clone().any(is_side) {
        all.filter(|&at| at == 0 || is_side(at - 1)).collect()
    } else if tokens.contains(&Token::Degree) {
        all.filter(|&at| tokens.get(at + 1) == Some(&Token::Degree)).collect()
    } else {
        all.collect()
    }
}

/// Degrees of degrees, minutes and seconds.
fn degrees(parts: &[f64], side: Option<char>) -> Option<f64> {
    let (&whole, smaller) = parts.split_first()?;
    if smaller.len() > 2 || smaller.iter().any(|part| !(0.0..60.0).contains(part)) {
        return None;
    }
    let part = smaller.iter().rfold(0.0, |sum, part| (sum + part) / 60.0);
    let size = whole.abs() + part;
    let negative = whole.is_sign_negative() != matches!(side, Some('s' | 'w'));
    // A side and a minus sign for the same thing: the minus adds nothing.
    let negative = negative || (whole.is_sign_negative() && side.is_some());
    Some(if negative { -size } else { size })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn coordinates_are_read_as_typed() {
        for text in [
            "44.98, -93.27",
            "44.98 -93.27",
            "44.98,-93.27",
            " +44.98 ; −93.27 ",
            "44,98; -93,27",
            "44.98N 93.27W",
            "44.98 n, 93.27 w",
            "N44.98 W93.27",
            "93.27 W, 44.98 N",
            "44.98° -93.27°",
            "44.98°N 93.27°W",
            "N 44.98° W 93.27°",
            "44°58'48\"N 93°16'12\"W",
            "44° 58′ 48″, -93° 16′ 12″",
            "N 44° 58' 48\" W 93° 16' 12\"",
            "44 58 48 N 93 16 12 W",
            "44.98 N, -93.27 W",
        ] {
            let point = read(text).unwrap_or_else(|| panic!("{text}")).unwrap();
            let off = (point.latitude() - 44.98).abs().max((point.longitude() + 93.27).abs());
            assert!(off < 1e-9, "{text}: {point}");
        }
        let south = read("33.87 S 151.21 E").unwrap().unwrap();
        assert_eq!((south.latitude(), south.longitude()), (-33.87, 151.21));
    }

    #[test]
    fn other_things_are_not_coordinates() {
        for text in
            ["", "44.98", "1, 2, 3", "Flagstaff", "100 Mile House", "44.98 N 93.27 N", "E W", "-", "1.2.3 4"]
        {
            assert_eq!(read(text), None, "{text}");
        }
    }

    #[test]
    fn numbers_in_the_wrong_order_come_back_in_the_right_one() {
        let error = read("-93.27, 44.98").unwrap().unwrap_err();
        assert_eq!(error.swapped, Some(Coordinates { latitude: 44.98, longitude: -93.27 }));
        let error = read("95, 200").unwrap().unwrap_err();
        assert_eq!((error.latitude, error.longitude, error.swapped), (95.0, 200.0, None));
        assert!(Coordinates::new(f64::NAN, 0.0).is_err());
        assert!(Coordinates::new(0.0, f64::INFINITY).is_err());
    }

    #[test]
    fn a_degree_of_latitude_is_111_km() {
        let at = |latitude, longitude| Coordinates::new(latitude, longitude).unwrap();
        assert!((at(44.0, -93.0).distance(at(45.0, -93.0)).to_m() - 111_195.0).abs() < 1.0);
        // Across the date line.
        assert!(at(0.0, 179.5).distance(at(0.0, -179.5)).to_m() < 112_000.0);
    }

    #[test]
    fn a_file_with_a_point_off_the_globe_is_refused() {
        let kept: Coordinates = ron::from_str("(latitude: 35.2, longitude: -111.65)").unwrap();
        assert_eq!(ron::from_str::<Coordinates>(&ron::to_string(&kept).unwrap()).unwrap(), kept);
        assert!(ron::from_str::<Coordinates>("(latitude: 95, longitude: 0)").is_err());
        assert!(ron::from_str::<Coordinates>("(latitude: NaN, longitude: 0)").is_err());
    }
}
