//! Money: whole cents, so that totals add up to what is printed.

use std::borrow::Cow;
use std::iter::Sum;
use std::ops::{Add, Sub};

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

use super::{EntryError, EntryRule};

/// An amount of money in whole cents of the job's currency. In files it is text: `12.50`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub struct Money(i64);

/// Twelve digits are as much as is read: amounts below this one.
const LIMIT: Money = Money(1_000_000_000_000 * 100);

impl Money {
    /// Nothing.
    pub const ZERO: Self = Self(0);

    /// Makes an amount from cents.
    pub const fn cents(cents: i64) -> Self {
        Self(cents)
    }

    /// The amount in cents.
    pub const fn to_cents(self) -> i64 {
        self.0
    }

    /// The amount in whole units of the currency, for ratios and plots only.
    #[expect(clippy::cast_precision_loss, reason = "amounts stay far below 2^53 cents")]
    pub const fn to_units(self) -> f64 {
        self.0 as f64 / 100.0
    }

    /// This amount `factor` times, rounded half away from zero to a cent. Amounts past 10^15
    /// units are held there: no job reaches them.
    #[must_use]
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_precision_loss,
        reason = "clamped well inside i64"
    )]
    pub fn times(self, factor: f64) -> Self {
        Self((self.0 as f64 * factor).round().clamp(-1e17, 1e17) as i64)
    }

    /// The nearest whole multiple of `step` cents, halves away from zero. `step` is at least 1.
    #[must_use]
    pub const fn rounded_to(self, step: i64) -> Self {
        let half = if self.0 < 0 { -step / 2 } else { step / 2 };
        Self((self.0 + half) / step * step)
    }

    /// Shows `$1 234.50` with the currency in front.
    pub fn show(self, currency: &str) -> String {
        let sign = if self.0 < 0 { "−" } else { "" };
        let (units, cents) = (self.0.unsigned_abs() / 100, self.0.unsigned_abs() % 100);
        format!("{sign}{currency}{}.{cents:02}", with_thousands(units))
    }

    /// The amount as it can be typed again: `1234.50`.
    pub fn plain(self) -> String {
        let sign = if self.0 < 0 { "-" } else { "" };
        let all = self.0.unsigned_abs();
        format!("{sign}{}.{:02}", all / 100, all % 100)
    }
}

fn with_thousands(units: u64) -> String {
    group(&units.to_string())
}

/// Money is grouped by commas, as price lists are.
fn group(digits: &str) -> String {
    let mut shown = String::with_capacity(digits.len() + 4);
    for (index, digit) in digits.chars().enumerate() {
        if index > 0 && (digits.len() - index).is_multiple_of(3) {
            shown.push(',');
        }
        shown.push(digit);
    }
    shown
}

impl Add for Money {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}

impl Sub for Money {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0))
    }
}

impl Sum for Money {
    fn sum<I: Iterator<Item = Self>>(items: I) -> Self {
        items.fold(Self::ZERO, Add::add)
    }
}

impl Serialize for Money {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let sign = if self.0 < 0 { "-" } else { "" };
        let all = self.0.unsigned_abs();
        serializer.serialize_str(&format!("{sign}{}.{:02}", all / 100, all % 100))
    }
}

impl<'de> Deserialize<'de> for Money {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        parse_money(&String::deserialize(deserializer)?).map_err(de::Error::custom)
    }
}

impl JsonSchema for Money {
    fn schema_name() -> Cow<'static, str> {
        "Money".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "type": "string",
            "description": "An amount of money without its currency, such as 12.50",
            "pattern": "[0-9]",
        })
    }
}

/// Reads an amount: `12`, `12.50`, `12,50`, `$1,234.50`, `1.234,50`, `1 234.50`.
///
/// The last point or comma is the decimal sign when one or two digits follow it; any other is
/// taken to part thousands, and then three digits must follow it.
///
/// # Errors
/// If the text is not an amount, or one of a million million or more.
pub fn parse_money(text: &str) -> Result<Money, EntryError> {
    let fail = |rule| EntryError::new(text, rule);
    // A currency may stand before or after, never in the middle.
    let amount = text.trim_matches(|c: char| c.is_alphabetic() || c.is_whitespace() || "$€£¥/".contains(c));
    let kept: String = amount.chars().filter(|c| !c.is_whitespace() && *c != '\'').collect();
    let (negative, digits) = match kept.strip_prefix(['-', '−']) {
        Some(rest) => (true, rest),
        None => (false, kept.as_str()),
    };
    let (whole, cents) = match digits.rfind(['.', ',']) {
        Some(at) if digits.len() - at <= 3 => (&digits[..at], &digits[at + 1..]),
        _ => (digits, ""),
    };
    let mut groups = whole.split(['.', ',']);
    let first = groups.next().unwrap_or_default();
    let rest: Vec<&str> = groups.collect();
    let grouped = rest.is_empty() || (first.len() <= 3 && rest.iter().all(|group| group.len() == 3));
    let joined = format!("{first}{}", rest.concat());
    let numeric = |part: &str| part.bytes().all(|b| b.is_ascii_digit());
    if joined.is_empty() && cents.is_empty() || !grouped || !numeric(&joined) || !numeric(cents) {
        return Err(fail(EntryRule::NotAnAmount));
    }
    if joined.len() > 12 {
        return Err(fail(EntryRule::AmountTooLarge { limit: LIMIT }));
    }
    let all = format!("{joined}{cents:0<2}").parse::<i64>();
    let all = all.map_err(|_parse| fail(EntryRule::NotAnAmount))?;
    Ok(Money(if negative { -all } else { all }))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn amounts_are_read_in_the_usual_forms() {
        for (text, cents) in [
            ("12", 1200),
            ("12.5", 1250),
            ("62/hr", 6200),
            ("$62 per hour", 6200),
            ("12,50", 1250),
            ("$1,234.50", 123_450),
            ("1.234,50 €", 123_450),
            ("1 234.50", 123_450),
            ("1,234", 123_400),
            ("-3.10", -310),
        ] {
            assert_eq!(parse_money(text), Ok(Money::cents(cents)), "{text}");
        }
        for text in ["", "abc", "1.2.3", "12,3456", "1e9", "99999999999999", "1.2345"] {
            assert!(parse_money(text).is_err(), "{text}");
        }
        assert_eq!(parse_money("1e9").unwrap_err().rule, EntryRule::NotAnAmount);
        let beyond = parse_money("1000000000000").unwrap_err().rule;
        assert_eq!(beyond, EntryRule::AmountTooLarge { limit: LIMIT });
        assert!(parse_money("999999999999").is_ok_and(|most| most < LIMIT));
    }

    #[test]
    fn amounts_are_shown_to_the_cent() {
        assert_eq!(Money::cents(123_450).show("$"), "$1,234.50");
        assert_eq!(Money::cents(-5).show("$"), "−$0.05");
    }

    #[test]
    fn amounts_are_rounded_to_a_step() {
        for (cents, step, rounded) in
            [(1249, 500, 1000), (1250, 500, 1500), (1251, 500, 1500), (-1250, 500, -1500), (77, 1, 77)]
        {
            assert_eq!(Money::cents(cents).rounded_to(step), Money::cents(rounded));
        }
    }

    #[test]
    fn a_share_is_rounded_to_the_cent() {
        assert_eq!(Money::cents(1001).times(0.5), Money::cents(501));
        assert_eq!(Money::cents(i64::MAX).times(1e9), Money::cents(100_000_000_000_000_000));
    }
}
