//! What a person typed, told apart: a ZIP code, coordinates, or a name with its whereabouts.

use std::ops::Range;

use super::coordinates::{self, Coordinates, OutOfRange};
use crate::named::fold;

/// What was typed.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Typed {
    /// ZIP codes: one, or all that start as typed so far.
    Zip {
        /// The digits typed.
        digits: String,
        /// The numbers they may become.
        numbers: Range<u32>,
    },
    /// A point, or what is none.
    Point(Result<Coordinates, OutOfRange>),
    /// A name.
    Name {
        /// The name, folded.
        name: String,
        /// What follows its commas, folded; without empty parts.
        whereabouts: Vec<String>,
    },
}

/// Tells apart what was typed; `None` if there is nothing in it to find a place by.
pub(super) fn typed(text: &str) -> Option<Typed> {
    if let Some(zip) = zip(text) {
        return Some(zip);
    }
    if let Some(point) = coordinates::read(text) {
        return Some(Typed::Point(point));
    }
    let mut parts = text.split(',').map(fold).filter(|part| !part.is_empty());
    let name = parts.next()?;
    Some(Typed::Name { name, whereabouts: parts.collect() })
}

/// A ZIP code, alone or after the name of its town; with or without the four digits that may follow it.
fn zip(text: &str) -> Option<Typed> {
    let last = text.split([' ', ',', '\t']).rfind(|word| !word.is_empty())?;
    let alone = text.trim() == last;
    let (digits, more) = last.split_once('-').unwrap_or((last, ""));
    let all_digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    if !all_digits(digits) || !all_digits(more) || more.len() > 4 || digits.is_empty() {
        return None;
    }
    // Nine digits are a code and its four more, without the dash.
    let digits = if digits.len() == 9 { &digits[..5] } else { digits };
    let is_whole = digits.len() == 5;
    let after_name = text.contains(|char: char| char.is_alphabetic()) && is_whole;
    if !alone && !after_name {
        return None;
    }
    let missing = u32::try_from(5_usize.saturating_sub(digits.len())).ok()?;
    let step = 10_u32.pow(missing);
    let start = digits.get(..digits.len().min(5))?.parse::<u32>().ok()? * step;
    let numbers = if digits.len() > 5 { start..start } else { start..start + step };
    Some(Typed::Zip { digits: digits.to_owned(), numbers })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn zip_of(digits: &str, numbers: Range<u32>) -> Option<Typed> {
        Some(Typed::Zip { digits: digits.to_owned(), numbers })
    }

    #[test]
    fn zip_codes_are_told_from_other_numbers() {
        for text in ["55401", " 55401 ", "55401-1234", "554011234", "Minneapolis, MN 55401", "MN 55401-1234"]
        {
            assert_eq!(typed(text), zip_of("55401", 55401..55402), "{text}");
        }
        assert_eq!(typed("554"), zip_of("554", 55400..55500));
        assert_eq!(typed("0"), zip_of("0", 0..10_000));
        assert_eq!(typed("554011"), zip_of("554011", 55401..55401));
        assert!(matches!(typed("44.98, -93.27"), Some(Typed::Point(Ok(_)))));
        assert!(matches!(typed("45 -93"), Some(Typed::Point(Ok(_)))));
        assert!(matches!(typed("45, 12345"), Some(Typed::Point(Err(_)))));
        assert!(matches!(typed("Township 12"), Some(Typed::Name { .. })));
    }

    #[test]
    fn names_part_at_commas() {
        let name = |name: &str, whereabouts: &[&str]| {
            let whereabouts = whereabouts.iter().map(|&part| part.to_owned()).collect();
            Some(Typed::Name { name: name.to_owned(), whereabouts })
        };
        assert_eq!(typed("Flagstaff, AZ"), name("flagstaff", &["az"]));
        assert_eq!(typed("Munich,Bavaria, Germany"), name("munich", &["bavaria", "germany"]));
        assert_eq!(typed("Washington, D.C."), name("washington", &["dc"]));
        assert_eq!(typed("Flagstaff,"), name("flagstaff", &[]));
        assert_eq!(typed(" , ,"), None);
        assert_eq!(typed("东京"), None);
    }
}
