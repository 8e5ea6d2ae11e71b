//! Plain numbers as people type and read them.

use super::{EntryError, EntryRule};

/// Reads a number with a decimal point or a decimal comma.
///
/// # Errors
/// If the text is no number, or not a finite one.
pub fn parse_number(text: &str) -> Result<f64, EntryError> {
    let plain = text.trim().trim_end_matches('%').trim_end().replace(',', ".");
    let all_number_signs = plain.bytes().all(|b| b.is_ascii_digit() || b"+-.".contains(&b));
    match plain.parse::<f64>() {
        // `parse` also takes "inf", "nan" and "1e5", which nobody means to type here.
        Ok(value) if value.is_finite() && all_number_signs => Ok(value),
        _ => Err(EntryError::new(text, EntryRule::NotANumber)),
    }
}

/// Shows a number with at most `decimals` decimals and no trailing zeros, thousands apart by a
/// thin space from 10 000 on.
pub fn show_number(value: f64, decimals: usize) -> String {
    // A half goes up, also where its last bits fell a little short of it.
    let value = value + 1e-9_f64.copysign(value);
    let text = format!("{value:.decimals$}");
    let text = match text.contains('.') {
        true => text.trim_end_matches('0').trim_end_matches('.'),
        false => text.as_str(),
    };
    let (whole, rest) = text.split_once('.').map_or((text, None), |(w, r)| (w, Some(r)));
    let digits = whole.trim_start_matches('-');
    let mut shown = String::with_capacity(text.len() + 4);
    if whole.starts_with('-') && text != "-0" {
        shown.push('−');
    }
    for (index, digit) in digits.chars().enumerate() {
        if digits.len() > 4 && index > 0 && (digits.len() - index) % 3 == 0 {
            shown.push('\u{2009}');
        }
        shown.push(digit);
    }
    if let Some(rest) = rest {
        shown.push('.');
        shown.push_str(rest);
    }
    shown
}

/// A number with at most `decimals` decimals, as it can be typed again: no grouping, a plain minus.
pub fn plain_number(value: f64, decimals: usize) -> String {
    show_number(value, decimals).replace('\u{2009}', "").replace('−', "-")
}

/// The point between `low` and `high`, to `within`, up to which `before` holds and after which it
/// does not. By bisection; `before` must change once.
pub fn bisect(mut low: f64, mut high: f64, within: f64, before: impl Fn(f64) -> bool) -> f64 {
    while high - low > within {
        let middle = f64::midpoint(low, high);
        if before(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    f64::midpoint(low, high)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_decimal_signs_are_read() {
        assert_eq!(parse_number("12.5").unwrap(), 12.5);
        assert_eq!(parse_number(" 12,5 % ").unwrap(), 12.5);
    }

    #[test]
    fn words_and_wild_numbers_are_refused() {
        for text in ["", "nan", "inf", "1e9", "twelve", "1.2.3", "9".repeat(400).as_str()] {
            assert_eq!(parse_number(text).unwrap_err().rule, EntryRule::NotANumber, "{text}");
        }
    }

    #[test]
    fn numbers_are_shown_without_needless_digits() {
        assert_eq!(show_number(12.50, 2), "12.5");
        assert_eq!(show_number(-0.001, 1), "0");
        assert_eq!(show_number(12_345.6, 0), "12\u{2009}346");
        assert_eq!(show_number(-3.0, 1), "−3");
        assert_eq!(show_number(100.0, 0), "100");
    }
}
