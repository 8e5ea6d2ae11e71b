//! Typical years from files: the published ones against their published means, and files with every
//! fault that has been thought of.

use std::fmt::Write as _;
use std::sync::LazyLock;
use std::time::{Duration, Instant};

use crate::checked::{self, Checked};
use gapwright::air::{
    Air, Gap, Tally, TextError, Weather, WeatherError, WeatherRead, WeatherRemark, read_weather,
};
use gapwright::measure::{Humidity, Temperature, Units};
use gapwright::words::{Say, Words};
use jiff::civil::date;
use proptest::prelude::*;

/// NREL TMY3 data; `weather/README.md` says what was trimmed.
const GREENSBORO: &str = include_str!("weather/greensboro.csv");
const SAND_POINT: &str = include_str!("weather/sand_point.csv");
const PUBLISHED: &str = include_str!("published/climate_monthly_typical_year.csv");

const EPW_HEADER: &str = "LOCATION,GREENSBORO,NC,USA,TMY3,723170,36.1,-79.95,-5.0,273\r\n\
    DESIGN CONDITIONS,0\r\nTYPICAL/EXTREME PERIODS,0\r\nGROUND TEMPERATURES,0\r\n\
    HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\r\nCOMMENTS 1,\"a lone quote\r\nCOMMENTS 2,\r\n\
    DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\r\n";

/// The sound year in both formats.
static EPW: LazyLock<String> = LazyLock::new(|| epw(&hours()));
static TMY3: LazyLock<String> = LazyLock::new(|| tmy3(&hours()));

/// An hour: month, day, hour, temperature, humidity, as a file has them.
type Hour = (i8, i8, u8, String, String);

/// A year with a cold damp winter and a warm dry summer.
fn hours() -> Vec<Hour> {
    let days = date(2001, 1, 1).series(jiff::Span::new().days(1)).take(365);
    let hour = |day: jiff::civil::Date, hour| {
        let summer = (f64::from(day.day_of_year()) / 365.0 * std::f64::consts::TAU).cos();
        (
            day.month(),
            day.day(),
            hour,
            format!("{:.1}", 10.0 - 12.0 * summer),
            format!("{:.0}", 60.0 + 15.0 * summer),
        )
    };
    days.flat_map(|day| (1..=24).map(move |h| hour(day, h))).collect()
}

fn epw(hours: &[Hour]) -> String {
    let mut text = EPW_HEADER.to_owned();
    for (month, day, hour, t, rh) in hours {
        write!(text, "1999,{month},{day},{hour},60,C9C9C9C9*0?9?9?9?9?9?9?9A7A7A7A7A7A7*0E8*0*0,").unwrap();
        write!(text, "{t},1.8,{rh},100100,0,1415,288,0,0,0,0,0,0,0,340,6.7,6,6,20.0,420,9,999999999,0,")
            .unwrap();
        text.push_str("0.0500,0,88,0.000,0.0,0.0\r\n");
    }
    text
}

fn tmy3(hours: &[Hour]) -> String {
    let mut text =
        "1,\"HILL\",NC,-5.0,36.1,-79.9,27\nDate (MM/DD/YYYY),Time (HH:MM),Dry-bulb (C),RHum (%)\n".to_owned();
    for (month, day, hour, t, rh) in hours {
        writeln!(text, "{month:02}/{day:02}/1999,{hour:02}:00,{t},{rh}").unwrap();
    }
    text
}

/// The hours of a TMY3 file.
fn hours_of(text: &str) -> Vec<Hour> {
    let hour = |line: &str| {
        let cells: Vec<&str> = line.split(',').collect();
        let (day, hour) = (cells[0], cells[1]);
        let (t, rh) = (cells[2].to_owned(), cells[3].to_owned());
        (day[..2].parse().unwrap(), day[3..5].parse().unwrap(), hour[..2].parse().unwrap(), t, rh)
    };
    text.lines().skip(2).map(hour).collect()
}

/// What is read of the year after `change`, in both formats, which must be the same.
fn after(change: impl Fn(&mut Vec<Hour>)) -> Result<WeatherRead, WeatherError> {
    let mut hours = hours();
    change(&mut hours);
    let (one, other) = (read_weather(&epw(&hours)), read_weather(&tmy3(&hours)));
    match (&one, &other) {
        (Ok(one), Ok(other)) => assert_eq!(one.weather.hours(), other.weather.hours()),
        (one, other) => assert!(one.is_err() && other.is_err(), "{one:?} and {other:?}"),
    }
    one
}

fn remarks(change: impl Fn(&mut Vec<Hour>)) -> Vec<WeatherRemark> {
    after(change).unwrap().remarks
}

/// What the user is told.
fn said(one: &impl Say) -> String {
    one.say(&Words::us_english(Units::Millimeters, "$"))
}

/// The means as printed, to the last figure: hundredths of a degree, tenths of a per cent.
fn assert_published(city: &str, months: &[Air; 12]) {
    let rows: Vec<Vec<&str>> = PUBLISHED.lines().map(|line| line.split(',').collect()).collect();
    let rows: Vec<&Vec<&str>> = rows.iter().filter(|row| row[1] == city).collect();
    assert_eq!(rows.len(), 12, "{city}");
    for (row, month) in rows.into_iter().zip(months) {
        let (t, rh): (f64, f64) = (row[3].parse().unwrap(), row[4].parse().unwrap());
        let (found_t, found_rh) = (month.temperature.to_celsius(), month.humidity.to_pct());
        assert!((found_t - t).abs() < 0.005 + 1e-9, "{city}, {}: {found_t} and {t}", row[2]);
        assert!((found_rh - rh).abs() < 0.05 + 1e-9, "{city}, {}: {found_rh} and {rh}", row[2]);
    }
}

/// Monthly means of a city's file, temperature and humidity.
fn means(city: &str, months: &[Air; 12]) -> [Vec<(String, f64, f64)>; 2] {
    let rows = PUBLISHED.lines().map(|line| line.split(',').collect::<Vec<_>>());
    let rows: Vec<Vec<&str>> = rows.filter(|row| row[1] == city).collect();
    let one = |column: usize, ours: fn(&Air) -> f64| {
        let of_month = |(row, month): (&Vec<&str>, &Air)| {
            (format!("{city}, {}", row[2]), row[column].parse().unwrap(), ours(month))
        };
        rows.iter().zip(months).map(of_month).collect()
    };
    [one(3, |air| air.temperature.to_celsius()), one(4, |air| air.humidity.to_pct())]
}

#[test]
fn the_page_of_numbers_is_of_these_checks() {
    let (mut warm, mut damp) = (Vec::new(), Vec::new());
    for (city, text) in [("Greensboro", GREENSBORO), ("Sand Point", SAND_POINT)] {
        let [temperatures, humidities] = means(city, &read_weather(text).unwrap().weather.months());
        warm.extend(temperatures);
        damp.extend(humidities);
    }
    let source = "monthly means of the typical-year files, printed to 0.01 °C and 0.1 %";
    let checks = [
        Checked::new("monthly mean temperature, °C", source, 0.005 + 1e-9, warm),
        Checked::new("monthly mean humidity, %", source, 0.05 + 1e-9, damp),
    ];
    checked::page("Weather files", &checks);
}

#[test]
fn published_years_have_their_published_means() {
    for (city, text, place) in [
        ("Greensboro", GREENSBORO, "Greensboro Piedmont Triad Int, NC"),
        ("Sand Point", SAND_POINT, "Sand Point, AK"),
    ] {
        let read = read_weather(text).unwrap();
        assert_eq!((read.weather.place.as_str(), read.remarks), (place, vec![]));
        assert_published(city, &read.weather.months());
        let same = read_weather(&epw(&hours_of(text))).unwrap();
        assert_eq!(same.weather.hours(), read.weather.hours(), "{city} as EPW");
        assert_eq!(same.weather.place, "Greensboro, NC, USA");
    }
    // The first and the last line of the file.
    let read = read_weather(GREENSBORO).unwrap().weather;
    let air = |t, rh| Air { temperature: Temperature::celsius(t), humidity: Humidity::pct(rh) };
    assert_eq!((read.hours()[0], read.hours()[8759]), (air(10.0, 77.0), air(2.2, 89.0)));
}

#[test]
fn a_sound_year_is_read_without_remark() {
    assert_eq!(remarks(|_| {}), []);
    let text = tmy3(&hours());
    let windows = format!("\u{feff}{}", text.replace('\n', "\r\n"));
    assert_eq!(read_weather(&windows).unwrap(), read_weather(&text).unwrap());
}

/// What is done to a sound year.
type Change = fn(&mut Vec<Hour>);

#[test]
fn oddities_are_put_right_and_remarked_on() {
    let filled = |start, hours| WeatherRemark::Filled { hours, longest: Gap { start, hours } };
    // Line 59 of an EPW file is the 51st after its head of 8 lines.
    let line = Tally { count: 1, first: 59 };
    let extreme = WeatherRemark::ExtremeTemperatures { lines: line, limit: Temperature::celsius(60.0) };
    let leap = WeatherRemark::LeapDay(Tally { count: 1, first: 1425 });
    let unread = WeatherRemark::LinesUnread(Tally { count: 1, first: 18 });
    let cases: [(Change, WeatherRemark); 16] = [
        (|h| drop(h.drain(100..103)), filled(100, 3)),
        (|h| drop(h.drain(..1)), filled(0, 1)),
        (|h| h[50].3 = "99.9".to_owned(), filled(50, 1)),
        (|h| h[50].4 = "999".to_owned(), filled(50, 1)),
        (|h| h[50].3 = "-9900".to_owned(), filled(50, 1)),
        (|h| h[50].4 = "-9900".to_owned(), filled(50, 1)),
        (|h| h[50].3 = "n/a".to_owned(), filled(50, 1)),
        (|h| h[50].3 = "61".to_owned(), extreme),
        (|h| h[50].4 = "0".to_owned(), WeatherRemark::DryAir(line)),
        (|h| h[50].4 = "104".to_owned(), WeatherRemark::Fog(line)),
        (|h| h[50].4 = "180".to_owned(), WeatherRemark::WildHumidity(line)),
        (|h| h.insert(51, h[50].clone()), WeatherRemark::RepeatedHours(1)),
        (|h| h.insert(1416, (2, 29, 1, "9".to_owned(), "50".to_owned())), leap),
        (|h| h.rotate_left(181 * 24), WeatherRemark::StartsWith(181 * 24)),
        (|h| h.swap(100, 5000), WeatherRemark::Sorted),
        (|h| h[9].1 = 32, unread),
    ];
    for (change, expected) in cases {
        let found = remarks(change);
        assert!(found.contains(&expected), "{expected:?}: {found:?}");
    }
    let south = epw(&hours()).replace(",36.1,", ",-36.1,");
    assert_eq!(read_weather(&south).unwrap().remarks, [WeatherRemark::South]);
    assert_eq!(remarks(|h| h.iter_mut().for_each(|h| h.2 -= 1)), [WeatherRemark::HoursFromZero]);
}

#[test]
fn remarks_name_the_values_and_the_day() {
    let longest = Gap { start: 33 * 24 + 4, hours: 3 };
    let lines = Tally { count: 2, first: 59 };
    for (remark, expected) in [
        (
            WeatherRemark::Filled { hours: 5, longest },
            "5 hours without usable values were filled in along straight lines. The longest gap is 3 hours, on Feb 3.",
        ),
        (
            WeatherRemark::ExtremeTemperatures { lines, limit: Temperature::celsius(60.0) },
            "2 temperatures below -60°C or above 60°C were treated as missing, starting with line 59.",
        ),
        (
            WeatherRemark::StartsWith(181 * 24),
            "The file starts on Jul 1; its hours were put in calendar order.",
        ),
    ] {
        assert_eq!(said(&remark), expected);
    }
}

#[test]
fn gaps_are_bridged_by_straight_lines_over_the_new_year_too() {
    let read = after(|h| {
        h[8759].3 = "10".to_owned();
        h[1].3 = "11".to_owned();
        h.remove(0);
        for (hour, t) in (200..204).zip(["4.0", "99.9", "99.9", "7.0"]) {
            h[hour - 1].3 = t.to_owned();
        }
    });
    let weather = read.unwrap().weather;
    let at = |hour: usize| weather.hours()[hour].temperature.to_celsius();
    assert_eq!([at(0), at(201), at(202)], [10.5, 5.0, 6.0]);
}

#[test]
fn a_turned_year_is_the_same_year() {
    assert_eq!(after(|h| h.rotate_left(181 * 24)).unwrap().weather, after(|_| {}).unwrap().weather);
    assert_eq!(after(|h| h.reverse()).unwrap().weather, after(|_| {}).unwrap().weather);
}

#[test]
fn too_little_of_a_year_is_refused_with_its_count() {
    let error = |change: Change| after(change).unwrap_err();
    assert!(after(|h| drop(h.drain(300..372))).is_ok());
    assert_eq!(error(|h| drop(h.drain(300..373))), WeatherError::Gap(Gap { start: 300, hours: 73 }));
    let over_new_year = error(|h| {
        h.drain(..40);
        h.truncate(h.len() - 40);
    });
    assert_eq!(over_new_year, WeatherError::Gap(Gap { start: 8720, hours: 80 }));
    let few = error(|h| h.retain(|hour| hour.2 % 8 != 0));
    assert_eq!(few, WeatherError::Incomplete { missing: 1095, unread: Tally::default() });
    let none = error(Vec::clear);
    assert!(said(&none).starts_with("8,760 of the year’s 8,760 hours"), "{}", said(&none));
    let wrong = error(|h| h.iter_mut().for_each(|h| h.0 = 13));
    let unread = Tally { count: 8760, first: 9 };
    assert_eq!(wrong, WeatherError::Incomplete { missing: 8760, unread });
    let said = said(&wrong);
    assert!(said.contains("8,760 lines could not be read as an hour, starting with line 9"), "{said}");
}

#[test]
fn what_is_no_weather_file_is_told_what_would_be() {
    let says = |text: &str, part: &str| {
        let said = said(&read_weather(text).unwrap_err());
        assert!(said.contains(part), "{part}: {said}");
    };
    says("", "The file is empty");
    says("\u{feff} \r\n ", "The file is empty");
    says("PK\u{3}\u{4}\0\0", "not plain text");
    says("time,temp,rh\n1,2,3\n", "starts with “time,temp,rh”");
    says("LOCATION,X\n1999,1,1,1,60\n", "no DATA PERIODS line");
    says(&EPW_HEADER.replace("PERIODS,1,1,Data", "PERIODS,1,4,Data"), "has “4” records an hour");
    says(&tmy3(&[]).replace("RHum (%)", "RHum (frac)"), "no column “RHum (%)”. Its columns are Date");
    says(&tmy3(&[]).replace("Date (", "Day ("), "no column “Date (MM/DD/YYYY)”");
    let huge = "LOCATION,".repeat(2_300_000);
    assert_eq!(read_weather(&huge), Err(WeatherError::Text(TextError::TooLarge(21))));
}

#[test]
fn a_stored_year_is_the_same_to_the_bit() {
    for text in [GREENSBORO, SAND_POINT] {
        let weather = read_weather(text).unwrap().weather;
        let stored = ron::ser::to_string_pretty(&weather, ron::ser::PrettyConfig::default()).unwrap();
        assert_eq!(stored.lines().count(), 365 + 5, "a line a day");
        assert!(stored.len() < 90_000, "{} bytes", stored.len());
        assert_eq!(ron::from_str::<Weather>(&stored).unwrap(), weather);
    }
}

#[test]
fn a_wrong_stored_year_is_refused_with_the_reason() {
    let sound = ron::to_string(&read_weather(GREENSBORO).unwrap().weather).unwrap();
    assert!(sound.contains("\"10 77, 10 80, "), "{}", &sound[..200]);
    let first = |to: &str| sound.replacen("10 77, ", to, 1);
    for (text, reason) in [
        (sound.replacen("\"10 77", "\"10 77\",\"10 77", 1), "has 366 days"),
        (first(""), "day 1 of the weather has 23 hours"),
        (first("10 , "), "day 1 of the weather has the hour “10”"),
        (first("10 nan, "), "“10 nan”"),
        (first("10 101, "), "“10 101”"),
        (first("10 0, "), "“10 0”"),
        (first("inf 77, "), "“inf 77”"),
        (first("-61 77, "), "“-61 77”"),
        (first("10 77 3, "), "“10 77 3”"),
    ] {
        let said = ron::from_str::<Weather>(&text).unwrap_err().to_string();
        assert!(said.contains(reason), "{reason}: {said}");
    }
}

#[test]
fn a_file_is_read_at_once() {
    let text = epw(&hours());
    assert!(text.len() > 1_000_000);
    let start = Instant::now();
    read_weather(&text).unwrap();
    println!("{} bytes in {:?}", text.len(), start.elapsed());
    // Far more than it takes: only to see that it has not become another order of work.
    assert!(start.elapsed() < Duration::from_secs(5));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn no_text_makes_it_panic(text in "\\PC{0,200}", head in 0..3_usize) {
        let head = ["", EPW_HEADER, "1,A,B,0,x,0\nDate (MM/DD/YYYY),Time (HH:MM),Dry-bulb (C),RHum (%)\n"][head];
        let file = head.to_owned() + &text;
        prop_assert!(read_weather(&file).is_err());
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn no_damage_makes_it_panic(at in 0..200_000_usize, put in "[0-9,./\"\n:\\-é]{0,20}", cut in 0..3000_usize, format in 0..2_usize) {
        let mut text = [&*EPW, &*TMY3][format].clone();
        let from = at.min(text.len());
        text.replace_range(from..(from + cut).min(text.len()), &put);
        if let Ok(read) = read_weather(&text) {
            prop_assert_eq!(read.weather.hours().len(), 8760);
            let sensible = |air: &Air| air.temperature.to_celsius().abs() <= 60.0 && (0.0..=1.0).contains(&air.humidity.to_fraction());
            prop_assert!(read.weather.hours().iter().all(sensible));
            read.weather.months();
        }
    }
}
