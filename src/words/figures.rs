//! Figures as people read them: numbers, quantities, money and dates, by language and units.

use std::sync::Arc;

use fluent_bundle::FluentValue;
use fluent_bundle::types::{FluentNumber, FluentNumberOptions};
use icu_calendar::{Date as CalendarDate, Gregorian};
use icu_datetime::fieldsets::{E, M, MD, MDE, T, YM, YMD};
use icu_datetime::input::Time as ClockTime;
use icu_datetime::{FixedCalendarDateTimeFormatter, NoCalendarFormatter};
use icu_decimal::DecimalFormatter;
use icu_list::ListFormatter;
use icu_list::options::{ListFormatterOptions, ListLength};
use jiff::civil::{Date, Time};

use super::Language;
use super::language::{decimal, decimal_formatter};
use crate::measure::{
    Area, DayOrMonth, Dimension, GRAINS, Hours, Length, Minutes, Money, Quantity, Temperature, Units, Volume,
};

/// Square feet of a square meter.
const SQUARE_FEET: f64 = 1.0 / 0.092_903_04;
/// Micrometers of a mil.
const MIL_MICRONS: f64 = 25.4;
/// Milliliters of a US quart.
const QUART_ML: f64 = 3_785.411_784 / 4.0;
/// Cubic meters of a cubic foot.
const CUBIC_FOOT: f64 = 0.028_316_846_592;

/// How figures are shown in a language, in units, with a currency.
#[derive(Clone)]
pub struct Figures {
    units: Units,
    currency: Arc<str>,
    language: &'static Language,
}

/// The formatters of a language, made once: making one costs far more than using it.
pub(super) struct Formatters {
    decimals: Option<DecimalFormatter>,
    lists: Option<ListFormatter>,
    days: Option<FixedCalendarDateTimeFormatter<Gregorian, YMD>>,
    /// The same, the day before the month.
    day_first: Option<FixedCalendarDateTimeFormatter<Gregorian, YMD>>,
    short_days: Option<FixedCalendarDateTimeFormatter<Gregorian, MD>>,
    weekdays: Option<FixedCalendarDateTimeFormatter<Gregorian, E>>,
    days_of_weeks: Option<FixedCalendarDateTimeFormatter<Gregorian, MDE>>,
    months: Option<FixedCalendarDateTimeFormatter<Gregorian, YM>>,
    months_alone: Option<FixedCalendarDateTimeFormatter<Gregorian, M>>,
    short_months: Option<FixedCalendarDateTimeFormatter<Gregorian, YM>>,
    times: Option<NoCalendarFormatter<T>>,
}

impl Formatters {
    /// The formatters of the language of this tag; one that ICU has no data for is `None`, and figures
    /// are then shown plainly.
    pub(super) fn new(tag: &str) -> Self {
        let Ok(locale) = tag.parse::<icu_locale_core::Locale>() else {
            return Self {
                decimals: None,
                lists: None,
                days: None,
                day_first: None,
                short_days: None,
                weekdays: None,
                days_of_weeks: None,
                months: None,
                months_alone: None,
                short_months: None,
                times: None,
            };
        };
        // English has short forms that people write; elsewhere a date in a sentence is written out.
        let english = locale.id.language.as_str() == "en";
        let (whole, month_and_day) =
            if english { (YMD::medium(), MD::medium()) } else { (YMD::long(), MD::long()) };
        // Where people measure in millimeters the day comes first.
        let metric =
            if english { "en-GB".parse().unwrap_or_else(|_| locale.clone()) } else { locale.clone() };
        let lists = ListFormatterOptions::default().with_length(ListLength::Wide);
        Self {
            decimals: decimal_formatter(tag).ok(),
            lists: ListFormatter::try_new_and((&locale).into(), lists).ok(),
            days: FixedCalendarDateTimeFormatter::try_new((&locale).into(), whole).ok(),
            day_first: FixedCalendarDateTimeFormatter::try_new((&metric).into(), whole).ok(),
            short_days: FixedCalendarDateTimeFormatter::try_new((&locale).into(), month_and_day).ok(),
            weekdays: FixedCalendarDateTimeFormatter::try_new((&locale).into(), E::short()).ok(),
            days_of_weeks: FixedCalendarDateTimeFormatter::try_new((&locale).into(), MDE::medium()).ok(),
            months: FixedCalendarDateTimeFormatter::try_new((&locale).into(), YM::long()).ok(),
            months_alone: FixedCalendarDateTimeFormatter::try_new((&locale).into(), M::long()).ok(),
            short_months: FixedCalendarDateTimeFormatter::try_new((&locale).into(), YM::medium()).ok(),
            times: NoCalendarFormatter::try_new((&locale).into(), T::hm()).ok(),
        }
    }
}

impl Figures {
    pub(super) fn new(language: &'static Language, units: Units, currency: &str) -> Self {
        Self { units, currency: currency.into(), language }
    }

    /// Whether figures are shown in the same units, with the same currency.
    pub(super) fn alike(&self, other: &Self) -> bool {
        self.units == other.units && self.currency == other.currency
    }

    /// The language in which figures are shown.
    pub(super) const fn language(&self) -> &'static Language {
        self.language
    }

    /// The units in which figures are shown.
    pub const fn units(&self) -> Units {
        self.units
    }

    /// A number with at most so many decimals, grouped as the language does.
    pub fn number(&self, value: f64, decimals: usize) -> String {
        let formatter = self.language.formatters().decimals.as_ref();
        match (formatter, decimal(value, decimals)) {
            (Some(formatter), Some(decimal)) => formatter.format(&decimal).to_string(),
            _ => format!("{value:.decimals$}"),
        }
    }

    /// A number with at most so many decimals and its unit, by the pattern `unit-<name>` of the catalogs.
    fn with_unit(&self, unit: &'static str, value: f64, decimals: usize) -> String {
        self.language.pattern(unit, &[("number", counted(value, decimals))])
    }

    /// A part size or a gap: inches to the nearest 64th, feet from 3 ft up; or millimeters to the tenth.
    pub fn length(&self, length: Length) -> String {
        match self.units {
            // Fractions and inch marks are the trade's own signs in every language.
            Units::Inches => length.show(Units::Inches),
            Units::Millimeters => self.with_unit("unit-millimeters", length.to_mm(), 1),
        }
    }

    /// The same within a sentence, where a sign for less than the finest mark reads as a word.
    pub fn length_said(&self, length: Length) -> String {
        let shown = self.length(length);
        match shown.strip_prefix('<') {
            Some(least) => {
                self.language.pattern("length-under", &[("length", FluentValue::from(least.to_owned()))])
            }
            None => shown,
        }
    }

    /// A total of lengths in whole feet, or in meters to the tenth.
    pub fn run(&self, length: Length) -> String {
        match self.units {
            Units::Inches => self.with_unit("unit-feet", length.to_feet(), 0),
            Units::Millimeters => self.with_unit("unit-meters", length.to_m(), 1),
        }
    }

    /// The length of a board as a yard sells it: in meters only where that says it all.
    pub fn stock(&self, length: Length) -> String {
        let tenths = 10.0 * length.to_m();
        let whole = (tenths - tenths.round()).abs() < 0.05;
        if self.units == Units::Inches || whole {
            return self.run(length);
        }
        self.with_unit("unit-millimeters", length.to_mm(), 0)
    }

    /// A distance over land in whole miles or kilometers.
    pub fn far(&self, length: Length) -> String {
        match self.units {
            Units::Inches => self.with_unit("unit-miles", length.to_feet() / 5280.0, 0),
            Units::Millimeters => self.with_unit("unit-kilometers", length.to_m() / 1000.0, 0),
        }
    }

    /// Whole square feet, or square meters to the tenth.
    pub fn area(&self, area: Area) -> String {
        match self.units {
            Units::Inches => self.with_unit("unit-square-feet", area.to_m2() * SQUARE_FEET, 0),
            Units::Millimeters => self.with_unit("unit-square-meters", area.to_m2(), 1),
        }
    }

    /// An area of the size of a joint: whole square inches, or whole square centimeters.
    pub fn small_area(&self, area: Area) -> String {
        match self.units {
            Units::Inches => self.with_unit("unit-square-inches", area.to_m2() * SQUARE_FEET * 144.0, 0),
            Units::Millimeters => self.with_unit("unit-square-centimeters", area.to_m2() * 1e4, 0),
        }
    }

    /// US gallons, quarts or fluid ounces, or liters or milliliters, whichever reads better.
    pub fn volume(&self, volume: Volume) -> String {
        let ml = volume.to_ml();
        let quarts = ml / QUART_ML;
        let (unit, value, decimals) = match self.units {
            // Cans hold whole quarts and gallons but for the rounding of the milliliters on their labels.
            Units::Inches if quarts >= 3.99 => ("unit-gallons", quarts / 4.0, 1),
            Units::Inches if quarts >= 0.99 => ("unit-quarts", quarts, 1),
            Units::Inches => ("unit-fluid-ounces", quarts * 32.0, 1),
            Units::Millimeters if ml >= 1000.0 => ("unit-liters", ml / 1000.0, 1),
            Units::Millimeters => ("unit-milliliters", ml, 0),
        };
        self.with_unit(unit, value, decimals)
    }

    /// Solid stuff by its volume: whole cubic feet, or cubic meters to the hundredth.
    pub fn bulk(&self, volume: Volume) -> String {
        match self.units {
            Units::Inches => self.with_unit("unit-cubic-feet", volume.to_m3() / CUBIC_FOOT, 0),
            Units::Millimeters => self.with_unit("unit-cubic-meters", volume.to_m3(), 2),
        }
    }

    /// What a batch or a piece is for: a bare number, or feet, square feet or cubic feet, or meters; with
    /// at most four decimals.
    pub fn amount(&self, dimension: Dimension, amount: f64) -> String {
        let unit = match (dimension, self.units) {
            (Dimension::Number, _) => return self.number(amount, 4),
            (Dimension::Length, Units::Inches) => "unit-feet",
            (Dimension::Area, Units::Inches) => "unit-square-feet",
            (Dimension::Volume, Units::Inches) => "unit-cubic-feet",
            (Dimension::Length, Units::Millimeters) => "unit-meters",
            (Dimension::Area, Units::Millimeters) => "unit-square-meters",
            (Dimension::Volume, Units::Millimeters) => "unit-cubic-meters",
        };
        self.with_unit(unit, amount / dimension.si_of_unit(self.units), 4)
    }

    /// The dry film of a coat of paint by its micrometers: mils, or micrometers.
    pub fn film(&self, microns: f64) -> String {
        match self.units {
            Units::Inches => self.with_unit("unit-mils", microns / MIL_MICRONS, 2),
            Units::Millimeters => self.with_unit("unit-microns", microns, 1),
        }
    }

    /// A share of a hundred with at most so many decimals.
    pub fn percent(&self, percent: f64, decimals: usize) -> String {
        self.with_unit("unit-percent", percent, decimals)
    }

    /// Whole degrees Fahrenheit, or tenths of a degree Celsius.
    pub fn temperature(&self, temperature: Temperature) -> String {
        match self.units {
            Units::Inches => self.with_unit("unit-fahrenheit", temperature.to_fahrenheit(), 0),
            Units::Millimeters => self.with_unit("unit-celsius", temperature.to_celsius(), 1),
        }
    }

    /// Working time in whole minutes, with one decimal below ten.
    pub fn minutes(&self, minutes: Minutes) -> String {
        let decimals = usize::from(minutes.to_minutes() < 10.0);
        self.with_unit("unit-minutes", minutes.to_minutes(), decimals)
    }

    /// Working time in hours to the tenth, or in minutes below one hour.
    pub fn hours(&self, hours: Hours) -> String {
        if hours.to_h() > 0.0 && hours.to_h() < 0.995 {
            return self.with_unit("unit-minutes", hours.to_h() * 60.0, 0);
        }
        self.with_unit("unit-hours", hours.to_h(), 1)
    }

    /// An amount to the cent.
    pub fn money(&self, money: Money) -> String {
        let all = money.to_cents().unsigned_abs();
        let text = format!("{}.{:02}", all / 100, all % 100);
        self.currency_amount(&text, money < Money::ZERO)
    }

    /// An amount rounded to three figures or to whole units: for sentences, not for sums.
    pub fn rough_money(&self, money: Money) -> String {
        let units = money.to_units().abs();
        let step = if units >= 10_000.0 {
            100.0
        } else if units >= 1000.0 {
            10.0
        } else {
            1.0
        };
        let rounded = (units / step).round() * step;
        self.currency_amount(&format!("{rounded:.0}"), money < Money::ZERO && rounded > 0.0)
    }

    fn currency_amount(&self, digits: &str, negative: bool) -> String {
        let formatter = self.language.formatters().decimals.as_ref();
        let number = match (formatter, digits.parse()) {
            (Some(formatter), Ok(decimal)) => formatter.format(&decimal).to_string(),
            _ => digits.to_owned(),
        };
        // A sign is set before the amount, a code of letters such as CHF apart from it.
        let letters = self.currency.chars().next_back().is_some_and(char::is_alphabetic);
        let pattern = match (letters, negative) {
            (false, false) => "money-sign",
            (false, true) => "money-sign-negative",
            (true, false) => "money-code",
            (true, true) => "money-code-negative",
        };
        let currency = self.currency.to_string();
        self.language.pattern(pattern, &[("amount", number.into()), ("currency", currency.into())])
    }

    /// A day: as the language writes it where lengths are in inches, the day before the month with millimeters.
    pub fn date(&self, date: Date) -> String {
        let formatters = self.language.formatters();
        let days = match self.units {
            Units::Inches => &formatters.days,
            Units::Millimeters => &formatters.day_first,
        };
        let shown = days.as_ref().zip(calendar_date(date)).map(|(days, date)| days.format(&date).to_string());
        shown.unwrap_or_else(|| date.to_string())
    }

    /// A day, or a month of which the day is not known, as an entry field shows it and reads it back:
    /// `Aug 14, 2025` or `Aug 2025`.
    pub fn day_or_month(&self, known: DayOrMonth) -> String {
        if known.is_day_known() { self.date(known.date()) } else { self.short_month(known.date()) }
    }

    /// A day of a year that is clear from what stands around it: `May 4`. In words in either units: two numbers
    /// with a dash would read as a range.
    pub fn short_date(&self, date: Date) -> String {
        let days = self.language.formatters().short_days.as_ref().zip(calendar_date(date));
        let shown = days.map(|(days, date)| days.format(&date).to_string());
        shown.unwrap_or_else(|| date.strftime("%m-%d").to_string())
    }

    /// A day of a year with its day of the week: `Mon, May 4`, or `Mon May 4`.
    pub fn weekday(&self, date: Date) -> String {
        let (formatters, day) = (self.language.formatters(), calendar_date(date));
        let shown = match self.units {
            Units::Inches => {
                formatters.days_of_weeks.as_ref().zip(day).map(|(days, day)| days.format(&day).to_string())
            }
            Units::Millimeters => {
                let weekday = formatters.weekdays.as_ref().zip(day);
                weekday.map(|(days, day)| format!("{} {}", days.format(&day), self.short_date(date)))
            }
        };
        shown.unwrap_or_else(|| self.short_date(date))
    }

    /// A month of any year: `August`.
    pub fn month_alone(&self, date: Date) -> String {
        let months = self.language.formatters().months_alone.as_ref();
        let shown = months.zip(calendar_date(date)).map(|(months, date)| months.format(&date).to_string());
        shown.unwrap_or_else(|| date.strftime("%m").to_string())
    }

    /// A month with its year: `August 2025`.
    pub fn month(&self, date: Date) -> String {
        let months = self.language.formatters().months.as_ref();
        let shown = months.zip(calendar_date(date)).map(|(months, date)| months.format(&date).to_string());
        shown.unwrap_or_else(|| date.strftime("%Y-%m").to_string())
    }

    /// A month with its year where room is scarce: `Aug 2025`.
    pub fn short_month(&self, date: Date) -> String {
        let months = self.language.formatters().short_months.as_ref();
        let shown = months.zip(calendar_date(date)).map(|(months, date)| months.format(&date).to_string());
        shown.unwrap_or_else(|| date.strftime("%Y-%m").to_string())
    }

    /// A time of day to the minute, as the language writes it.
    pub fn time(&self, time: Time) -> String {
        let times = self.language.formatters().times.as_ref();
        let shown = times.zip(clock_time(time)).map(|(times, time)| times.format(&time).to_string());
        shown.unwrap_or_else(|| time.strftime("%H:%M").to_string())
    }

    /// The unit that stands after the entry of a quantity, in the form for that quantity; empty where the figure itself has one, or needs
    /// none.
    pub fn unit(&self, quantity: Quantity) -> String {
        let unit = match (quantity, self.units) {
            (
                Quantity::Number(_)
                | Quantity::Count(_)
                | Quantity::Year(_)
                | Quantity::Length(_)
                | Quantity::RoomLength(_)
                | Quantity::TimeOfDay(_),
                _,
            ) => return String::new(),
            (Quantity::Money(_), _) => return self.currency.to_string(),
            (Quantity::Percent(_) | Quantity::Moisture(_) | Quantity::Humidity(_), _) => "unit-percent",
            (Quantity::Days(_), _) => "unit-days",
            (Quantity::Years(_), _) => "unit-years",
            (Quantity::Angle(_), _) => "unit-degrees",
            (Quantity::Hours(_), _) => "unit-hours",
            (Quantity::Minutes(_), _) => "unit-minutes",
            (Quantity::Temperature(_), Units::Inches) => "unit-fahrenheit",
            (Quantity::Temperature(_), Units::Millimeters) => "unit-celsius",
            (Quantity::MoistureLoad(_), Units::Inches) => "unit-grains-per-cubic-foot",
            (Quantity::MoistureLoad(_), Units::Millimeters) => "unit-grams-per-cubic-meter",
        };
        // The form of the unit is that for the figure; the figure itself is left out.
        let value = match quantity {
            Quantity::Days(count) | Quantity::Years(count) => count.into(),
            Quantity::Hours(hours) => hours.to_h(),
            Quantity::Minutes(minutes) => minutes.to_minutes(),
            _ => 0.0,
        };
        self.with_unit(unit, value, 2).replacen(&self.number(value, 2), "", 1).trim().to_owned()
    }

    /// A figure of any quantity with its unit.
    pub fn quantity(&self, quantity: Quantity) -> String {
        match quantity {
            Quantity::Number(value) => self.number(value, 2),
            Quantity::Count(count) => self.number(count.into(), 0),
            Quantity::Days(days) => self.with_unit("unit-days", days.into(), 0),
            // A year of the calendar is no amount: its digits are not grouped.
            Quantity::Year(year) => year.to_string(),
            Quantity::Years(years) => self.with_unit("unit-years", years.into(), 0),
            Quantity::Length(length) | Quantity::RoomLength(length) => self.length(length),
            Quantity::Percent(percent) => self.percent(percent.to_pct(), 2),
            Quantity::Moisture(moisture) => self.percent(moisture.to_pct(), 1),
            Quantity::Humidity(humidity) => self.percent(humidity.to_pct(), 0),
            Quantity::Temperature(temperature) => self.temperature(temperature),
            Quantity::Angle(angle) => self.with_unit("unit-degrees", angle.to_degrees(), 1),
            Quantity::Money(money) => self.money(money),
            Quantity::Hours(hours) => self.with_unit("unit-hours", hours.to_h(), 1),
            Quantity::Minutes(minutes) => self.minutes(minutes),
            Quantity::TimeOfDay(_) => quantity.entry_text(self.units),
            Quantity::MoistureLoad(load) => self.moisture_load(load),
        }
    }

    /// Water that a house adds to its air: grams a cubic meter, or grains a cubic foot.
    pub fn moisture_load(&self, grams: f64) -> String {
        match self.units {
            Units::Inches => self.with_unit("unit-grains-per-cubic-foot", grams * GRAINS, 2),
            Units::Millimeters => self.with_unit("unit-grams-per-cubic-meter", grams, 1),
        }
    }

    /// Names in a list: `A, B, and C`.
    pub fn list(&self, names: &[impl AsRef<str>]) -> String {
        let names = names.iter().map(AsRef::as_ref);
        match &self.language.formatters().lists {
            Some(lists) => lists.format(names).to_string(),
            None => names.collect::<Vec<_>>().join(", "),
        }
    }
}

/// A number as an argument of a message: it selects the plural form, and is shown with at most so many
/// decimals.
pub(super) fn counted<'a>(value: f64, decimals: usize) -> FluentValue<'a> {
    /// From here on a number is no count, and plural rules can't take it.
    const LARGE: f64 = 1e15;
    // What is shown decides the form: 0.999 is shown as 1.
    let shown = decimal(value, decimals).and_then(|decimal| decimal.to_string().parse().ok());
    let value = shown.unwrap_or(value);
    if !value.is_finite() || value.abs() >= LARGE {
        return FluentValue::String(format!("{value:.decimals$}").into());
    }
    let options = FluentNumberOptions { maximum_fraction_digits: Some(decimals), ..Default::default() };
    FluentValue::Number(FluentNumber::new(value, options))
}

fn calendar_date(date: Date) -> Option<CalendarDate<Gregorian>> {
    let (month, day) = (u8::try_from(date.month()).ok()?, u8::try_from(date.day()).ok()?);
    CalendarDate::try_new_gregorian(date.year().into(), month, day).ok()
}

fn clock_time(time: Time) -> Option<ClockTime> {
    let (hour, minute) = (u8::try_from(time.hour()).ok()?, u8::try_from(time.minute()).ok()?);
    ClockTime::try_new(hour, minute, 0, 0).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::parse_month_or_date;
    use jiff::civil::{date, time};

    fn figures(units: Units) -> Figures {
        Figures::new(Language::us_english(), units, "$")
    }

    #[test]
    fn figures_are_those_of_the_us_trade() {
        let inches = figures(Units::Inches);
        assert_eq!(inches.date(date(2026, 2, 14)), "Feb 14, 2026");
        assert_eq!(inches.short_date(date(2026, 5, 4)), "May 4");
        assert_eq!(inches.month(date(2025, 8, 1)), "August 2025");
        assert_eq!(inches.percent(98.04, 1), "98%");
        assert_eq!(inches.rough_money(Money::cents(240_049)), "$2,400");
        assert_eq!(inches.money(Money::cents(-123_456)), "-$1,234.56");
        assert_eq!(inches.run(Length::feet(1200.0)), "1,200 ft");
        assert_eq!(inches.length(Length::inches(7.0 / 64.0)), "7/64\"");
        assert_eq!(inches.list(&["A", "B", "C"]), "A, B, and C");
        assert_eq!(inches.volume(Volume::litres(0.298)), "10.1 fl oz");
        assert_eq!(inches.volume(Volume::litres(0.946)), "1 qt");
        assert_eq!(inches.volume(Volume::litres(3.785)), "1 gal");
        assert_eq!(inches.bulk(Volume::m3(1.0)), "35 cu ft");
        assert_eq!(inches.short_month(date(2025, 8, 1)), "Aug 2025");
        // The blank before AM and PM must not break.
        assert_eq!(inches.time(time(16, 30, 0, 0)).replace('\u{202f}', " "), "4:30 PM");
    }

    #[test]
    fn dates_in_entry_fields_read_back_in_every_language() {
        for language in crate::words::languages() {
            for units in [Units::Inches, Units::Millimeters] {
                let figures = Figures::new(language, units, "$");
                for month in 1..=12 {
                    let day = DayOrMonth::day(date(2025, month, 14));
                    let of_month = DayOrMonth::month(2025, month).expect("it is one");
                    for known in [day, of_month] {
                        let shown = figures.day_or_month(known);
                        let tag = language.tag();
                        assert_eq!(parse_month_or_date(&shown, units), Ok(known), "{shown} ({tag})");
                    }
                }
            }
        }
    }

    #[test]
    fn figures_are_those_of_spanish_in_the_us() {
        let spanish = Language::of("es-US").expect("it is a language");
        let inches = Figures::new(spanish, Units::Inches, "$");
        assert_eq!(inches.date(date(2026, 2, 14)), "14 de febrero de 2026");
        assert_eq!(inches.short_date(date(2026, 10, 18)), "18 de octubre");
        assert_eq!(inches.rough_money(Money::cents(240_049)), "$2,400");
        assert_eq!(inches.percent(98.04, 1), "98%");
        assert_eq!([1.0, 1200.0].map(|feet| inches.run(Length::feet(feet))), ["1 pie", "1,200 pies"]);
        assert_eq!(inches.list(&["A", "B", "C"]), "A, B y C");
    }

    #[test]
    fn one_is_said_in_the_singular_and_every_other_number_in_the_plural() {
        for units in [Units::Inches, Units::Millimeters] {
            let figures = figures(units);
            let days = [0, 1, 2, 21].map(|days| figures.quantity(Quantity::Days(days)));
            assert_eq!(days, ["0 days", "1 day", "2 days", "21 days"]);
            let years = [1, 2, 101].map(|years| figures.quantity(Quantity::Years(years)));
            assert_eq!(years, ["1 year", "2 years", "101 years"]);
            // Abbreviations stay as they are.
            let hours = [0.0, 1.0, 1.5].map(|hours| figures.quantity(Quantity::Hours(Hours::h(hours))));
            assert_eq!(hours, ["0 hr", "1 hr", "1.5 hr"]);
            let beside = [1, 5].map(|count| [Quantity::Days(count), Quantity::Years(count)]);
            assert_eq!(
                beside.map(|both| both.map(|one| figures.unit(one))),
                [["day", "year"], ["days", "years"]]
            );
        }
        let inches = figures(Units::Inches);
        // What is shown decides, not what was rounded away.
        assert_eq!([25.4, 25.401, 38.1].map(|film| inches.film(film)), ["1 mil", "1 mil", "1.5 mils"]);
    }

    #[test]
    fn numbers_of_messages_are_grouped_and_rounded_as_the_language_does() {
        let words = crate::words::Words::us_english(Units::Inches, "$");
        let said = |hours: f64| {
            let rate = Money::cents(5_000);
            crate::words::say!(
                words,
                "price-basis-labor",
                hours = crate::words::Arg::Number(hours, 2),
                rate = rate
            )
        };
        assert_eq!(
            [1.0, 0.999, 0.5, 2.0, 1234.567].map(said),
            [
                "1 hour at $50.00",
                "1 hour at $50.00",
                "0.5 hours at $50.00",
                "2 hours at $50.00",
                "1,234.57 hours at $50.00"
            ]
        );
    }

    #[test]
    fn millimeters_bring_metric_figures_and_the_day_first() {
        let metric = figures(Units::Millimeters);
        assert_eq!(metric.date(date(2026, 2, 14)), "14 Feb 2026");
        assert_eq!(metric.length(Length::mm(2.84)), "2.8 mm");
        assert_eq!(metric.number(-3.0, 1), "-3");
        assert_eq!(metric.volume(Volume::litres(3.785)), "3.8 L");
        assert_eq!(metric.bulk(Volume::m3(1.0)), "1 m³");
        assert_eq!(metric.time(time(16, 30, 0, 0)), "4:30\u{202f}PM");
        let other = Figures::new(Language::us_english(), Units::Millimeters, "CHF");
        assert_eq!(other.money(Money::cents(123_456)), "CHF 1,234.56");
    }
}
