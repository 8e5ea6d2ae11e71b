//! What is said beside a field about what was typed in it.

use super::{Arg, Say, Words, say};
use crate::measure::{EntryError, EntryRule, Units};

impl Say for EntryError {
    fn say(&self, words: &Words) -> String {
        let text = &self.text;
        let units = Arg::Id(units_id(words.units()));
        if text.is_empty() {
            return say!(words, "entry-empty", wanted = Arg::Id(wanted(self.rule)), units = units);
        }
        match self.rule {
            EntryRule::NotALength => say!(words, "entry-not-a-length", text = text),
            EntryRule::ZeroDenominator => say!(words, "entry-zero-denominator", text = text),
            EntryRule::NumberWithoutUnit => say!(words, "entry-number-without-unit", text = text),
            EntryRule::NotOneLength => say!(words, "entry-not-one-length", text = text),
            EntryRule::LengthTooLong { limit } => {
                say!(words, "entry-length-too-long", text = text, limit = Arg::Run(limit))
            }
            EntryRule::UnitMissing => say!(words, "entry-unit-missing", text = text),
            EntryRule::NotAnAmount => say!(words, "entry-not-an-amount", text = text),
            EntryRule::AmountTooLarge { limit } => {
                say!(words, "entry-amount-too-large", text = text, limit = Arg::RoughMoney(limit))
            }
            EntryRule::NotANumber => say!(words, "entry-not-a-number", text = text),
            EntryRule::NotWhole => say!(words, "entry-not-whole", text = text),
            EntryRule::NotADate => say!(words, "entry-not-a-date", text = text, units = units),
            EntryRule::DayMissing => say!(words, "entry-day-missing", text = text, units = units),
            EntryRule::NotADateOrMonth => {
                say!(words, "entry-not-a-date-or-month", text = text, units = units)
            }
            EntryRule::YearOutOfRange { first, last } => {
                // A year is no count: its digits are not grouped.
                let (first, last) = (first.to_string(), last.to_string());
                say!(words, "entry-year-out-of-range", text = text, first = &first, last = &last)
            }
        }
    }
}

/// What a field wants that was left empty.
const fn wanted(rule: EntryRule) -> &'static str {
    match rule {
        EntryRule::NotALength
        | EntryRule::ZeroDenominator
        | EntryRule::NumberWithoutUnit
        | EntryRule::NotOneLength
        | EntryRule::LengthTooLong { .. }
        | EntryRule::UnitMissing => "length",
        EntryRule::NotAnAmount | EntryRule::AmountTooLarge { .. } => "amount",
        EntryRule::NotANumber | EntryRule::NotWhole => "number",
        EntryRule::NotADate
        | EntryRule::DayMissing
        | EntryRule::NotADateOrMonth
        | EntryRule::YearOutOfRange { .. } => "date",
    }
}

const fn units_id(units: Units) -> &'static str {
    match units {
        Units::Inches => "inches",
        Units::Millimeters => "millimeters",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{parse_date, parse_length, parse_money, parse_month_or_date, parse_number};

    const INCHES: Units = Units::Inches;

    #[test]
    fn errors_name_the_value_the_rule_and_the_way_out() {
        let words = Words::us_english(INCHES, "$");
        let refused = |error: Option<EntryError>| error.map(|error| error.say(&words)).unwrap_or_default();
        for (said, parts) in [
            (refused(parse_length("5-", INCHES).err()), ["“5-”", "not a length", "5-1/8"]),
            (refused(parse_length("1/0", INCHES).err()), ["“1/0”", "by zero", "3/32"]),
            (refused(parse_length("5 mm 3", INCHES).err()), ["“5 mm 3”", "without a unit", "7 ft 3 in"]),
            (refused(parse_length("9 miles", INCHES).err()), ["“9 miles”", "not a length", "130 mm"]),
            (refused(parse_length("4000 ft", INCHES).err()), ["“4000 ft”", "3,281 ft", "Check"]),
            (refused(parse_money("1.2.3").err()), ["“1.2.3”", "not an amount", "12.50"]),
            (refused(parse_money("1000000000000").err()), ["must be below", "$1,000,000,000,000", "Check"]),
            (refused(parse_number("twelve").err()), ["“twelve”", "not a number", "12.5"]),
            (refused(parse_date("14.2.2026", INCHES).err()), ["“14.2.2026”", "not a date", "Feb 14, 2026"]),
            (refused(parse_date("1066-10-14", INCHES).err()), ["“1066-10-14”", "1900 to 2199", "Type"]),
            (refused(parse_date("Aug 2025", INCHES).err()), ["“Aug 2025”", "without a day", "Feb 14, 2026"]),
            (refused(parse_month_or_date("fall", INCHES).err()), ["“fall”", "not a date", "like Aug 2025"]),
            (refused(parse_date("", INCHES).err()), ["can’t be left empty", "Type a date", "2/14/2026"]),
        ] {
            for part in parts {
                assert!(said.contains(part), "{part}: {said}");
            }
        }
    }

    #[test]
    fn dates_are_asked_for_as_they_are_read() {
        let words = Words::us_english(Units::Millimeters, "$");
        let said = parse_date("soon", Units::Millimeters).map_err(|error| error.say(&words));
        assert_eq!(said, Err("“soon” is not a date. Type it like 2026-02-14 or 14.2.2026.".to_owned()));
    }
}
